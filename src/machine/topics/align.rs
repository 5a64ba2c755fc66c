//! Alignment: sprockets by straightedge, shafts by rim and face or reverse indicators, thermal growth.
//!
//! Signs are those of [`drivecourse_calc::align`]: the movable machine's shaft high, or towards 3 o'clock seen from it,
//! counts positive; a move raises the feet or takes them towards 3 o'clock; a plunger pushed in reads positive. Every
//! rim and face dial is set to nought at 12 o'clock.

mod face;
mod feet;
mod growth;
mod parallel;
mod readings;
mod reverse;
mod rim;
mod runout;
mod sprockets;

use drivecourse_calc::align::Line;
use drivecourse_calc::align::rim_face::{Face, Hub, SetUp};
use drivecourse_calc::units::Length;

use crate::instrument::Figures::{Places, Significant};
use crate::instrument::Instrument::{Caliper, Dial, Feeler, Scale, Tape, Thermometer};
use crate::quantity::Quantity;
use crate::relation::Relation;
use crate::source::Source::{self, Derived};
use crate::typed::{Choice, Slope, Typed};
use crate::unit::Kind;

const CIRCLE: Source = Derived("geometry of a circle swept off centre");
const TRIANGLES: Source = Derived("geometry of similar triangles");
const SEEN: &str =
    "seen from the movable machine towards the stationary one; the stationary hub is the measuring plane";
const LOCKED: &str = "with the drive isolated, locked out and proved dead before a shaft is turned by hand";

/// A small length, as a dial or a shim shows it.
const fn small(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Length, name).shown("mm", Places(2), "in", Places(3))
}

/// A small length that is worked out or kept hidden.
const fn fine(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Length, name).shown("mm", Places(3), "in", Places(4))
}

/// A distance along the shafts.
const fn along(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Length, name).read(Tape)
}

/// An angle between shafts, as a slope.
const fn slope(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Slope, name).shown("mm/m", Places(2), "mil/in", Places(2))
}

pub(super) const QUANTITIES: &[Quantity] = &[
    // Sprockets by straightedge.
    small("align.sprocket_offset", "e_s", "offset of the sprocket behind the reference sprocket"),
    Quantity::new("align.twist", "θ_s", Kind::Angle, "twist of the sprocket against the reference sprocket").shown(
        "°",
        Places(2),
        "°",
        Places(2),
    ),
    Quantity::new(
        "align.reference_chord",
        "c_1",
        Kind::Length,
        "distance between the points felt on the reference sprocket",
    )
    .read(Scale),
    Quantity::new("align.other_chord", "c_2", Kind::Length, "distance between the points felt on the other sprocket")
        .read(Scale),
    small("align.gap_1", "g_1", "gap at the reference sprocket's far rim").read(Feeler),
    small("align.gap_2", "g_2", "gap at the reference sprocket's near rim").read(Feeler),
    small("align.gap_3", "g_3", "gap at the other sprocket's near rim").read(Feeler),
    small("align.gap_4", "g_4", "gap at the other sprocket's far rim").read(Feeler),
    small("align.sprocket_offset_limit", "e_max", "largest offset allowed between the sprockets").plate(),
    Quantity::new("align.twist_limit", "θ_max", Kind::Angle, "largest twist allowed between the sprockets")
        .shown("°", Places(2), "°", Places(2))
        .plate(),
    Quantity::choice("align.sprocket_verdict", "", "verdict on the sprockets", sprockets::VERDICTS),
    along("align.apart", "a", "distance along the shafts between the two places measured").built(),
    Quantity::new("align.centres_near", "C_1", Kind::Length, "centre distance at the sprockets").read(Caliper),
    Quantity::new("align.centres_far", "C_2", Kind::Length, "centre distance farther behind").read(Caliper),
    slope("align.parallel", "m_p", "how much the shafts run apart behind the sprockets"),
    along("align.pivot", "x_p", "distance of the bearing to be moved from the one that stays").built(),
    small("align.swing", "u_p", "move of the bearing that swings the shaft parallel"),
    // Shafts: how they stand, and where the feet are.
    fine("align.offset_v", "y_v", "vertical offset at the measuring plane"),
    slope("align.angle_v", "m_v", "vertical angle between the shafts"),
    fine("align.offset_h", "y_h", "horizontal offset at the measuring plane"),
    slope("align.angle_h", "m_h", "horizontal angle between the shafts"),
    along("align.front", "x_f", "distance of the front feet from the measuring plane").built(),
    along("align.feet_apart", "x_d", "distance between front and rear feet of the movable machine").built(),
    along("align.rear", "x_r", "distance of the rear feet from the measuring plane"),
    // Dial readings.
    small("align.trial", "b_t", "reading at the bottom of the bar's trial on a stiff pipe").read(Dial),
    fine("align.sag", "s_b", "sag of the indicator bar"),
    along("align.circle", "D_f", "diameter of the face dial's circle").built(),
    small("align.rim_right", "R_3", "rim reading at 3 o'clock").read(Dial),
    small("align.rim_bottom", "R_6", "rim reading at 6 o'clock").read(Dial),
    small("align.rim_left", "R_9", "rim reading at 9 o'clock").read(Dial),
    small("align.face_right", "F_3", "face reading at 3 o'clock").read(Dial),
    small("align.face_bottom", "F_6", "face reading at 6 o'clock").read(Dial),
    small("align.face_left", "F_9", "face reading at 9 o'clock").read(Dial),
    small("align.rim_v", "R_v", "rim reading across the vertical, free of sag"),
    small("align.rim_h", "R_h", "rim reading across the horizontal"),
    small("align.face_h", "F_h", "face reading across the horizontal"),
    along("align.dials_apart", "c_d", "distance between the two rim dials"),
    small("align.own_right", "S_3", "movable hub's rim reading at 3 o'clock").read(Dial),
    small("align.own_bottom", "S_6", "movable hub's rim reading at 6 o'clock").read(Dial),
    small("align.own_left", "S_9", "movable hub's rim reading at 9 o'clock").read(Dial),
    small("align.own_v", "S_v", "movable hub's rim reading across the vertical, free of sag"),
    small("align.own_h", "S_h", "movable hub's rim reading across the horizontal"),
    fine("align.far_v", "y_v2", "vertical offset at the movable hub"),
    fine("align.far_h", "y_h2", "horizontal offset at the movable hub"),
    // Runout told from misalignment.
    small("align.runout", "r_h", "runout of the hub's face"),
    small("align.gap_before", "G_1", "net gap between the hubs before turning").read(Feeler),
    small("align.gap_after", "G_2", "net gap between the hubs after half a turn of both shafts").read(Feeler),
    small("align.gap_standing", "G_m", "net gap that belongs to the alignment"),
    // What to do, and what is thought of it.
    small("align.move_front_v", "u_fv", "vertical move of the front feet that brings the shafts in line"),
    small("align.move_rear_v", "u_rv", "vertical move of the rear feet that brings the shafts in line"),
    small("align.move_front_h", "u_fh", "sideways move of the front feet that brings the shafts in line"),
    small("align.move_rear_h", "u_rh", "sideways move of the rear feet that brings the shafts in line"),
    Quantity::choice("align.way_front_h", "", "which way the front feet go", feet::SIDEWAYS),
    Quantity::choice("align.way_rear_h", "", "which way the rear feet go", feet::SIDEWAYS),
    small("align.offset_limit", "y_max", "largest offset allowed at the measuring plane").plate(),
    slope("align.angle_limit", "m_max", "largest angle allowed between the shafts").plate(),
    Quantity::choice("align.verdict_v", "", "verdict on the vertical alignment", feet::VERDICTS),
    Quantity::choice("align.verdict_h", "", "verdict on the horizontal alignment", feet::VERDICTS),
    // Thermal growth.
    Quantity::new("align.motor_expansion", "α_m", Kind::Expansion, "expansion coefficient of the motor's frame")
        .shown("µm/(m·°C)", Significant(3), "µin/(in·°F)", Significant(2))
        .plate()
        .built(),
    Quantity::new("align.reducer_expansion", "α_r", Kind::Expansion, "expansion coefficient of the reducer's housing")
        .shown("µm/(m·°C)", Significant(3), "µin/(in·°F)", Significant(2))
        .plate(),
    Quantity::new("align.motor_height", "H_m", Kind::Length, "height of the motor shaft above its feet")
        .shown("mm", Places(0), "in", Places(2))
        .plate(),
    Quantity::new("align.reducer_height", "H_r", Kind::Length, "height of the reducer's shaft above its feet")
        .shown("mm", Places(0), "in", Places(2))
        .plate()
        .built(),
    Quantity::new(
        "align.front_rise",
        "D_mf",
        Kind::TemperatureRise,
        "rise of the motor over ambient at its front feet",
    ),
    Quantity::new("align.rear_rise", "D_mr", Kind::TemperatureRise, "rise of the motor over ambient at its rear feet"),
    Quantity::new("align.front_warm", "T_mf", Kind::Temperature, "warm temperature of the motor at its front feet")
        .read(Thermometer),
    Quantity::new("align.rear_warm", "T_mr", Kind::Temperature, "warm temperature of the motor at its rear feet")
        .read(Thermometer),
    fine("align.growth_front", "δ_f", "growth of the motor at its front feet"),
    fine("align.growth_rear", "δ_r", "growth of the motor at its rear feet"),
    fine("align.growth_reducer", "δ_g", "growth of the reducer's shaft"),
    fine("align.target_front", "k_f", "cold target of the motor's shaft over the front feet"),
    fine("align.target_rear", "k_r", "cold target of the motor's shaft over the rear feet"),
    small("align.shim_front", "h_f", "change of shims under the front feet"),
    small("align.shim_rear", "h_r", "change of shims under the rear feet"),
    small("align.shim_least", "h_min", "thinnest shim change worth making").plate(),
    Quantity::choice("align.way_front_v", "", "what to do with the shims under the front feet", feet::SHIMS),
    Quantity::choice("align.way_rear_v", "", "what to do with the shims under the rear feet", feet::SHIMS),
];

/// The movable shaft's line in one plane.
fn line(offset: Length, slope: Slope) -> Line {
    Line { offset, slope: slope.0 }
}

/// Rim and face dials on the front of the stationary hub, the bracket on the movable shaft.
fn set_up(circle: Length) -> SetUp {
    SetUp { hub: Hub::Stationary, face: Face::Front, circle }
}

/// Amounts that differ by less than a nanometre, or slopes by a millionth of a millimetre per metre, are equal.
const ROUNDING: f64 = 1e-9;

/// Whether `found`, of either sign, is above `limit`; what lies right on the limit meets it.
fn above<T: Typed>(found: T, limit: T) -> bool {
    found.base().abs() > limit.base() + ROUNDING
}

/// The first of three choices for more than `least`, the second for less than minus it, the third in between.
fn way(amount: Length, least: Length) -> Choice {
    match (above(amount, least), amount.value > 0.0) {
        (false, _) => Choice(2),
        (true, positive) => Choice(u16::from(!positive)),
    }
}

pub(super) const RELATIONS: &[&[Relation]] = &[
    sprockets::RELATIONS,
    parallel::RELATIONS,
    readings::RELATIONS,
    rim::RELATIONS,
    face::RELATIONS,
    reverse::RELATIONS,
    runout::RELATIONS,
    feet::RELATIONS,
    growth::RELATIONS,
];
