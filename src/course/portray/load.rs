//! The output shaft with its load and reactions.

use super::{Board, PortrayError};
use crate::figures::{Figure, ShaftLoad};

/// Where the load stands, in bearing spans, when the place is asked.
const NOMINAL_OVERHANG: f64 = 0.4;

pub(super) fn shaft_load(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let bearings = board.need("load.bearing_span")?;
    let nominal = board.asks("load.sprocket_distance") || board.asks("load.bearing_span");
    let overhang = if nominal { NOMINAL_OVERHANG * bearings } else { board.need("load.sprocket_distance")? };
    let (near, far) = (board.need("load.reaction_near")?, board.need("load.reaction_far")?);
    let told = |quantity| board.tells(quantity);
    // The running load alone is what some questions show.
    let load = if told("load.overhung") && !told("load.total") && !board.asks("load.total") {
        "load.overhung"
    } else {
        "load.total"
    };
    let reactions = told("load.reaction_near") && told("load.reaction_far");
    board.finish(
        ShaftLoad {
            id: board.id(),
            bearings,
            overhang,
            nominal,
            // The far bearing holds the shaft's tail down: it pulls the same way as the load.
            load: -board.need(load)?,
            near,
            far: -far,
            bearings_label: board.label("load.bearing_span"),
            overhang_label: board.label("load.sprocket_distance"),
            load_label: board.label(load),
            near_label: board.label("load.reaction_near").filter(|_| reactions),
            far_label: board.label("load.reaction_far").filter(|_| reactions),
            moment_label: board.label("load.moment").filter(|_| board.solved()),
            reactions,
            moment: board.solved(),
        }
        .draw(),
    )
}
