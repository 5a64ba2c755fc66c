//! A straightedge across the sprockets; dials on the coupling.

use super::{Board, PortrayError};
use crate::figures::{Dials, Figure, Straightedge, Sweep};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    REDUCER_RIM = "dials-sweep-reducer-rim", "Reducer hub, rim";
    REDUCER_FACE = "dials-sweep-reducer-face", "Reducer hub, face";
    MOTOR_RIM = "dials-sweep-motor-rim", "Motor hub, rim";
} }

const GAPS: [&str; 4] = ["align.gap_1", "align.gap_2", "align.gap_3", "align.gap_4"];
const RIM: [&str; 3] = ["align.rim_right", "align.rim_bottom", "align.rim_left"];
const FACE: [&str; 3] = ["align.face_right", "align.face_bottom", "align.face_left"];
const OWN: [&str; 3] = ["align.own_right", "align.own_bottom", "align.own_left"];

pub(super) fn straightedge(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let mut gaps = [0.0; 4];
    for (gap, id) in gaps.iter_mut().zip(GAPS) {
        *gap = board.need(id)?;
    }
    board.finish(
        Straightedge {
            id: board.id(),
            gaps,
            gap_labels: GAPS.map(|id| board.label(id)),
            reference_label: board.label("align.reference_chord"),
            other_label: board.label("align.other_chord"),
            centres_label: board.label("chain.centres"),
            offset_label: board.label("align.sprocket_offset"),
            twist_label: board.label("align.twist"),
        }
        .draw(),
    )
}

pub(super) fn dials(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let told = |ids: [&str; 3]| ids.iter().any(|id| board.tells(id) || board.asks(id));
    let mut sweeps = Vec::new();
    for (name, ids) in [(REDUCER_RIM, RIM), (REDUCER_FACE, FACE), (MOTOR_RIM, OWN)] {
        if told(ids) {
            let [right, bottom, left] = ids.map(|id| board.label(id));
            sweeps.push(Sweep { name: name.text().into(), readings: [Some("0".into()), right, bottom, left] });
        }
    }
    if sweeps.is_empty() {
        return Err(PortrayError::NothingShown { picture: board.picture, quantity: "align.rim_bottom" });
    }
    board.finish(
        Dials {
            id: board.id(),
            sweeps,
            face: told(FACE),
            reverse: told(OWN),
            circle_label: board.label("align.circle"),
            apart_label: board.label("align.dials_apart"),
            front_label: board.label("align.front"),
            rear_label: board.label("align.rear"),
            trial_label: board.label("align.trial"),
        }
        .draw(),
    )
}
