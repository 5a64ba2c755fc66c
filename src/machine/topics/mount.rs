//! Mounting: soft foot, angled feet, shim packs, levelness.

mod angled;
mod frame;
mod level;
mod shim;

use drivecourse_calc::units::Length;
use drivecourse_calc::units::length::{foot, meter};

use crate::instrument::Figures::Places;
use crate::instrument::Instrument::{Dial, Feeler, Level, Scale, Tape};
use crate::quantity::Quantity;
use crate::relation::Relation;
use crate::typed::{Choice, Typed};
use crate::unit::Kind;

const FEET: &[&str] = &["foot 1", "foot 2", "foot 3", "foot 4", "none"];

const fn small(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Length, name).shown("mm", Places(2), "in", Places(3))
}

pub(super) const QUANTITIES: &[Quantity] = &[
    Quantity::new("mount.along", "a", Kind::Length, "distance between feet along the shaft").read(Tape),
    Quantity::new("mount.across", "b", Kind::Length, "distance between feet across the shaft").read(Tape),
    small("mount.height_1", "e_1", "height of the pad under foot 1").read(Dial),
    small("mount.height_2", "e_2", "height of the pad under foot 2").read(Dial),
    small("mount.height_3", "e_3", "height of the pad under foot 3").read(Dial),
    small("mount.height_4", "e_4", "height of the pad under foot 4").read(Dial),
    Quantity::new(
        "mount.weight_along",
        "x_w",
        Kind::Length,
        "distance of the weight's line from foot 1 along the shaft",
    )
    .shown("mm", Places(0), "in", Places(1))
    .plate(),
    Quantity::new(
        "mount.weight_across",
        "y_w",
        Kind::Length,
        "distance of the weight's line from foot 1 across the shaft",
    )
    .shown("mm", Places(0), "in", Places(1))
    .plate(),
    small("mount.twist", "t", "twist of the base"),
    Quantity::choice("mount.loose_foot", "", "foot that does not touch", FEET),
    Quantity::choice("mount.rocked_foot", "", "foot that opens when the frame is rocked", FEET),
    small("mount.gap", "g", "gap under the loose foot").read(Feeler),
    // A limit of 0.06 mm is 0.0024 in, not 0.002.
    small("mount.gap_limit", "g_max", "largest gap allowed under a foot")
        .shown("mm", Places(2), "in", Places(4))
        .plate(),
    Quantity::choice("mount.gap_verdict", "", "verdict on the gap", &["within the limit", "shim or machine it"]),
    Quantity::choice("mount.shim_stock", "", "shim leaves in stock", &["metric leaves", "inch leaves"]).plate(),
    Quantity::new("mount.shim_most", "m_max", Kind::Count, "most leaves allowed in a pack").plate(),
    Quantity::new("mount.shim_leaves", "m", Kind::Count, "number of leaves in the pack"),
    small("mount.shim_total", "s", "thickness of the shim pack"),
    small("mount.gap_left", "g_left", "gap left after shimming"),
    small("mount.rise_1", "r_1", "dial rise on loosening foot 1").read(Dial),
    small("mount.rise_2", "r_2", "dial rise on loosening foot 2").read(Dial),
    small("mount.rise_3", "r_3", "dial rise on loosening foot 3").read(Dial),
    small("mount.rise_4", "r_4", "dial rise on loosening foot 4").read(Dial),
    small("mount.worst_rise", "r_max", "largest dial rise of the four feet"),
    Quantity::new("mount.foot_length", "u", Kind::Length, "length of the foot along the shaft").read(Scale),
    Quantity::new("mount.foot_width", "v", Kind::Length, "width of the foot across the shaft").read(Scale),
    small("mount.corner_1", "c_1", "gap at corner 1 of the angled foot").read(Feeler),
    small("mount.corner_2", "c_2", "gap at corner 2 of the angled foot").read(Feeler),
    small("mount.corner_3", "c_3", "gap at corner 3 of the angled foot").read(Feeler),
    small("mount.corner_4", "c_4", "gap at corner 4 of the angled foot").read(Feeler),
    small("mount.corner_mean", "c_m", "gap at the middle of the angled foot"),
    Quantity::new("mount.slope_along", "φ_u", Kind::Slope, "slope of the foot along the shaft"),
    Quantity::new("mount.slope_across", "φ_v", Kind::Slope, "slope of the foot across the shaft"),
    small("mount.wedge", "w_g", "wedge from corner to corner of the foot"),
    small("mount.corner_residual", "q", "misfit of each corner from a flat foot").shown(
        "mm",
        Places(3),
        "in",
        Places(4),
    ),
    Quantity::choice(
        "mount.foot_fit",
        "",
        "fit of the angled foot",
        &["sits flat", "parallel gap", "wedge", "bent foot or dirt"],
    ),
    Quantity::new("mount.level", "φ", Kind::Slope, "slope of the base shown by the level").read(Level),
    Quantity::new("mount.level_run", "l", Kind::Length, "length of the base levelled").read(Tape).built(),
    small("mount.height_change", "h", "height change over the base"),
    Quantity::new("mount.level_limit", "φ_max", Kind::Slope, "largest slope allowed for the oil level").plate(),
    Quantity::choice("mount.level_verdict", "", "verdict on the level", &["level enough", "level it again"]),
];

/// Heights that differ by less than a nanometre, slopes by a millionth of a millimetre per metre, are equal: the rest
/// is rounding in the last digits.
const ROUNDING: f64 = 1e-9;

/// The second of two verdicts when `found` is above `limit`; what lies right on the limit meets it.
fn above<T: Typed>(found: T, limit: T) -> Choice {
    Choice(u16::from(found.base() > limit.base() + ROUNDING))
}

/// What a person divides by who forgets the run of a slope in mm/m.
fn one_metre() -> Length {
    Length::new::<meter>(1.0)
}

/// What a person divides by who forgets the run of a slope in in/ft.
fn one_foot() -> Length {
    Length::new::<foot>(1.0)
}

pub(super) const RELATIONS: &[&[Relation]] = &[frame::RELATIONS, shim::RELATIONS, angled::RELATIONS, level::RELATIONS];
