//! Feet from above, one foot's corners, a shim pack.

use drivecourse_calc::mount::{inch_leaves, metric_leaves, shim_pack as pack};
use drivecourse_calc::units::{Length, length};
use drivecourse_machine::amount::{number, with_unit};
use drivecourse_machine::{Figures, Kind, Typed, Unit};

use super::{Board, PortrayError};
use crate::figures::{Figure, Foot, FootCorners, FootPlan, Leaf, ShimPack};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    PAD = "feet-reading-pad", "pad {value}";
    RISE = "feet-reading-rise", "rise {value}";
    ANGLED = "feet-reading-angled", "Angled foot";
} }

const HEIGHTS: [&str; 4] = ["mount.height_1", "mount.height_2", "mount.height_3", "mount.height_4"];
const RISES: [&str; 4] = ["mount.rise_1", "mount.rise_2", "mount.rise_3", "mount.rise_4"];
const CORNERS: [&str; 4] = ["mount.corner_1", "mount.corner_2", "mount.corner_3", "mount.corner_4"];

pub(super) fn foot_plan(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let (length, width) = (board.need("mount.along")?, board.need("mount.across")?);
    // The registry's choice counts the feet from 0; 4 says that all of them touch.
    let loose = board.value("mount.loose_foot").filter(|_| board.tells("mount.loose_foot")).map(|foot| foot as usize);
    let mut feet: [Foot; 4] = Default::default();
    for (place, foot) in feet.iter_mut().enumerate() {
        foot.carries = loose.is_some_and(|loose| loose != place);
        if loose == Some(place) {
            foot.gap = board.label("mount.gap");
        }
        // One kind of reading at a time: the pads' heights, or the dial's rises.
        let told = [(PAD, HEIGHTS), (RISE, RISES)]
            .into_iter()
            .find(|(_, ids)| ids.iter().any(|id| board.tells(id) || board.asks(id)));
        if let Some((word, ids)) = told {
            foot.reading = board.label(ids[place]).map(|label| word.say(&[("value", &label)]));
        }
    }
    let weight = board.value("mount.weight_along").zip(board.value("mount.weight_across"));
    board.finish(
        FootPlan {
            id: board.id(),
            length,
            width,
            feet,
            weight: weight.filter(|_| board.tells("mount.weight_along")),
            diagonals: true,
            length_label: board.label("mount.along"),
            width_label: board.label("mount.across"),
        }
        .draw(),
    )
}

pub(super) fn foot_corners(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let mut gaps = [0.0; 4];
    for (gap, corner) in gaps.iter_mut().zip(CORNERS) {
        *gap = board.need(corner)?;
    }
    board.finish(
        FootCorners {
            id: board.id(),
            name: ANGLED.text().into(),
            length: board.need("mount.foot_length")?,
            width: board.need("mount.foot_width")?,
            gaps,
            gap_labels: CORNERS.map(|corner| board.label(corner)),
            length_label: board.label("mount.foot_length"),
            width_label: board.label("mount.foot_width"),
            side_view: board.solved(),
        }
        .draw(),
    )
}

pub(super) fn shim_pack(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let gap = board.need("mount.gap")?;
    let mut leaves = Vec::new();
    if board.solved() {
        let limit = Length::from_base(board.need("mount.gap_limit")?);
        let most = board.need("mount.shim_most")? as usize;
        // The choices of `mount.shim_stock`, in order.
        let (stock, inch) = match board.need("mount.shim_stock")? {
            0.0 => (metric_leaves().to_vec(), false),
            _ => (inch_leaves().to_vec(), true),
        };
        let pack = board.calculated(pack(Length::from_base(gap), &stock, limit, most))?;
        leaves = pack
            .leaves()
            .iter()
            .map(|leaf| Leaf { thickness: leaf.base(), label: Some(marked(*leaf, inch)) })
            .collect();
    }
    board.finish(
        ShimPack {
            id: board.id(),
            gap,
            leaves,
            gap_label: board.label("mount.gap"),
            pack_label: board.label("mount.shim_total").filter(|_| board.solved()),
        }
        .draw(),
    )
}

/// A leaf as its own marking says: inch leaves in inches, metric ones in millimetres.
fn marked(leaf: Length, inch: bool) -> String {
    let (value, symbol) =
        if inch { (leaf.get::<length::inch>(), "in") } else { (leaf.get::<length::millimeter>(), "mm") };
    let text = number(value, Figures::Places(3));
    Unit::find(Kind::Length, symbol).map_or_else(|| text.clone(), |unit| with_unit(&text, unit))
}
