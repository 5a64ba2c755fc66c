//! The chain drive from the side.

use super::{Board, PortrayError};
use crate::figures::{DriveSide, Figure, Turning};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    TEETH = "drive-side-teeth-teeth", "{count}\u{a0}teeth";
} }

/// Nominal drive where a number must not show in the drawing: centres in pitches, teeth, sag as a part of the centres.
const NOMINAL_CENTRES: f64 = 36.0;
const NOMINAL_TEETH: [f64; 2] = [19.0, 42.0];
const NOMINAL_SAG: f64 = 0.06;
const NOMINAL_INCLINE: f64 = 0.35;

pub(super) fn drive_side(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let pitch = board.need("chain.pitch")?;
    let small = board.drawn("chain.teeth_small", NOMINAL_TEETH[0])?;
    let large = board.drawn("chain.teeth_large", NOMINAL_TEETH[1])?;
    // The centres follow from the span and the other way round, so both are hidden with either.
    let hide_centres = board.asks("chain.centres") || board.asks("chain.span");
    let centres = if hide_centres { NOMINAL_CENTRES * pitch } else { board.need("chain.centres")? };
    let sag = board.value("chain.sag").filter(|_| board.tells("chain.sag"));
    let hidden = ["chain.teeth_small", "chain.teeth_large", "chain.incline"].into_iter().any(|size| board.asks(size));
    let incline = match board.value("chain.incline") {
        Some(_) if board.asks("chain.incline") => NOMINAL_INCLINE,
        Some(incline) => incline,
        None => 0.0,
    };
    let teeth = |quantity| board.label(quantity).map(|teeth| TEETH.say(&[("count", &teeth)]));
    board.finish(
        DriveSide {
            id: board.id(),
            driver_teeth: whole(small),
            driven_teeth: whole(large),
            pitch,
            centres,
            incline: incline.to_degrees(),
            sag: sag.unwrap_or(NOMINAL_SAG * centres),
            nominal: sag.is_none() || hide_centres || hidden,
            turning: Turning::Anticlockwise,
            straightedge: board.tells("chain.sag") || board.asks("chain.sag"),
            name_strands: true,
            driver_label: teeth("chain.teeth_small"),
            driven_label: teeth("chain.teeth_large"),
            centres_label: board.label("chain.centres"),
            span_label: board.label("chain.span"),
            sag_label: board.label("chain.sag"),
            incline_label: board.label("chain.incline").filter(|_| incline != 0.0),
        }
        .draw(),
    )
}

/// A number of teeth; the figure refuses what is far off.
fn whole(teeth: f64) -> u32 {
    teeth.round() as u32
}
