//! Bolts round a circle; a key in its shaft and hub.

use drivecourse_calc::fasten::order::star;

use drivecourse_machine::messages;

use super::{Board, PortrayError};
use crate::figures::{BoltPattern, Figure, KeySection};

messages! { pub(super) SAYS {
    KEY = "figure-key-width", "key {width}";
    KEYWAY = "figure-keyway-width", "keyway {width}";
} }

pub(super) fn bolt_pattern(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let bolts = board.need("fasten.bolts")? as u32;
    let order = if board.solved() {
        let whole = board.calculated(star(bolts as usize))?;
        // A solution shows the way to what was asked, a machine the whole order.
        let shown = board.value("fasten.turn_place").filter(|_| !board.whole());
        whole.into_iter().take(shown.map_or(usize::MAX, |place| place as usize)).map(|bolt| bolt as u32).collect()
    } else {
        Vec::new()
    };
    board.finish(
        BoltPattern {
            id: board.id(),
            bolts,
            order,
            bolts_label: board.label("fasten.bolts"),
            place_label: board.label("fasten.turn_place").filter(|_| !board.whole()),
            bolt_label: board.label("fasten.bolt_at_place").filter(|_| !board.whole()),
        }
        .draw(),
    )
}

pub(super) fn key_section(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let shaft = board.need("load.shaft_diameter")?;
    // What the table says is told before what was measured.
    let measured = board.tells("fasten.key_found") && !board.tells("fasten.key_width");
    let width = if measured {
        board.label("fasten.key_found").map(|label| KEY.say(&[("width", &label)]))
    } else {
        board.label("fasten.key_width")
    };
    // Where the size has to be looked up, a quarter and a sixth of the shaft: near the table and no row of it.
    let hidden = !board.solved() && !measured;
    let drawn = |quantity, share: f64| if hidden { Ok(share * shaft) } else { board.need(quantity) };
    board.finish(
        KeySection {
            id: board.id(),
            shaft,
            width: drawn("fasten.key_width", 0.25)?,
            height: drawn("fasten.key_height", 1.0 / 6.0)?,
            shaft_label: board.label("load.shaft_diameter"),
            width_label: width,
            keyway_label: board
                .label("fasten.keyway")
                .filter(|_| measured)
                .map(|label| KEYWAY.say(&[("width", &label)])),
            height_label: board.label("fasten.key_height"),
            length_label: board.label("fasten.key_length"),
        }
        .draw(),
    )
}
