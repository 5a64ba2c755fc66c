//! Vibration: where it comes from, how large it is, and what it asks for.

mod amplitude;
mod bearing;
mod follow;
mod hunting;
mod orders;
mod settled;
mod severity;
mod spectrum;
mod unit_class;

use crate::instrument::Figures::{Places, Significant};
use crate::instrument::Instrument::{Analyser, DisplacementMeter, VibrationMeter};
use crate::quantity::Quantity;
use crate::relation::Relation;
use crate::unit::Kind;

const fn frequency(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Frequency, name)
}

const fn order(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name).shown("", Significant(4), "", Significant(4))
}

const fn dimension(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Length, name).shown("mm", Places(2), "in", Places(4)).plate()
}

const fn severity(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Velocity, name).shown("mm/s", Places(2), "in/s", Places(4))
}

const fn reading(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Velocity, name).read(VibrationMeter)
}

/// A plain number of the hidden machine, never shown.
const fn hidden(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name)
}

const fn days(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Time, name).shown("d", Significant(3), "d", Significant(3))
}

pub(super) const QUANTITIES: &[Quantity] = &[
    // Where it comes from.
    frequency("vibrate.motor_frequency", "f_m", "shaft frequency of the motor"),
    frequency("vibrate.output_frequency", "f_o", "shaft frequency of the reducer's output shaft"),
    Quantity::new(
        "vibrate.pinion_teeth",
        "z_p",
        Kind::Count,
        "number of teeth of the pinion on the reducer's input shaft",
    )
    .plate(),
    Quantity::new("vibrate.gear_teeth", "z_g", Kind::Count, "number of teeth of the gear that the pinion drives")
        .plate(),
    frequency("vibrate.mesh", "f_z", "mesh frequency of the first gear stage"),
    Quantity::new("vibrate.gear_speed", "n_g", Kind::Speed, "speed of the gear that the pinion drives"),
    frequency("vibrate.chain_pass", "f_r", "frequency at which rollers seat on the small sprocket"),
    frequency("vibrate.chain_loop", "f_c", "frequency at which one link of the chain comes round"),
    // Bearing of the output shaft.
    Quantity::new("vibrate.elements", "N_b", Kind::Count, "number of rolling elements").plate().built(),
    dimension("vibrate.element_dia", "d_b", "diameter of the rolling elements").built(),
    dimension("vibrate.bearing_pitch_dia", "D_b", "pitch diameter of the bearing").built(),
    Quantity::new("vibrate.contact_angle", "α_b", Kind::Angle, "contact angle of the bearing")
        .shown("°", Places(0), "°", Places(0))
        .plate()
        .built(),
    order("vibrate.order_cage", "o_c", "turns of the cage for each turn of the shaft"),
    order("vibrate.order_outer", "o_o", "elements that pass a spot of the outer ring for each turn of the shaft"),
    order("vibrate.order_inner", "o_i", "elements that pass a spot of the inner ring for each turn of the shaft"),
    order("vibrate.order_spin", "o_s", "turns of a rolling element about itself for each turn of the shaft"),
    frequency("vibrate.cage", "f_cage", "cage frequency of the bearing"),
    frequency("vibrate.outer", "f_outer", "outer-ring frequency of the bearing"),
    frequency("vibrate.inner", "f_inner", "inner-ring frequency of the bearing"),
    frequency("vibrate.spin", "f_spin", "spin frequency of the rolling elements"),
    frequency(
        "vibrate.outer_quick",
        "f_oq",
        "outer-ring frequency of the bearing, estimated from its number of elements",
    ),
    frequency(
        "vibrate.inner_quick",
        "f_iq",
        "inner-ring frequency of the bearing, estimated from its number of elements",
    ),
    // Lines of the spectrum.
    reading("vibrate.line_motor", "v_1m", "line at the motor's shaft frequency, r.m.s."),
    reading("vibrate.line_double", "v_2m", "line at twice the motor's shaft frequency, r.m.s."),
    reading("vibrate.line_output", "v_1o", "line at the output shaft's frequency, r.m.s."),
    reading("vibrate.line_chain", "v_r", "line at the frequency at which rollers seat, r.m.s."),
    reading("vibrate.line_mesh", "v_z", "line at the mesh frequency, r.m.s."),
    reading("vibrate.line_bearing", "v_or", "line at the bearing's outer-ring frequency, r.m.s."),
    reading("vibrate.rest", "v_x", "everything between the lines, r.m.s."),
    Quantity::new("vibrate.peak_frequency", "f_max", Kind::Frequency, "frequency of the strongest line").read(Analyser),
    Quantity::choice("vibrate.peak_part", "", "where the strongest line comes from", spectrum::PARTS),
    // One sine.
    frequency("vibrate.tone", "f", "frequency of the one vibration looked at").plate(),
    Quantity::new("vibrate.displacement", "d_pp", Kind::Length, "displacement, peak to peak, of the one vibration")
        .read(DisplacementMeter),
    severity("vibrate.velocity_peak", "v_p", "velocity, peak, of the one vibration"),
    severity("vibrate.velocity_rms", "v_rms", "velocity, r.m.s., of the one vibration"),
    Quantity::new("vibrate.acceleration", "a_p", Kind::Acceleration, "acceleration, peak, of the one vibration"),
    // How severe.
    Quantity::choice(
        "vibrate.group",
        "",
        "group of the machine by its plate power",
        &["over 300 kW", "over 15 kW to 300 kW", "up to 15 kW"],
    ),
    Quantity::choice(
        "vibrate.motor_group",
        "",
        "group of the electric motor by the height of its shaft",
        &["315 mm and over", "160 mm up to 315 mm", "under 160 mm"],
    ),
    Quantity::choice("vibrate.support", "", "support of the machine", &["rigid", "flexible"]),
    severity("vibrate.limit_ab", "L_AB", "limit between zones A and B"),
    severity("vibrate.limit_bc", "L_BC", "limit between zones B and C"),
    severity("vibrate.limit_cd", "L_CD", "limit between zones C and D"),
    reading("vibrate.velocity", "v", "vibration velocity of the bearing housing now, r.m.s."),
    Quantity::new("vibrate.limit_share", "x_v", Kind::Ratio, "share of the limit between zones B and C in use").shown(
        "%",
        Significant(3),
        "%",
        Significant(3),
    ),
    Quantity::choice("vibrate.zone", "", "severity zone", &["A", "B", "C", "D"]),
    // How it goes on.
    reading("vibrate.first", "v_0", "vibration velocity at the first start, r.m.s."),
    reading("vibrate.reading_1", "v_1", "first vibration reading after settling, r.m.s."),
    reading("vibrate.reading_2", "v_2", "second vibration reading after settling, r.m.s."),
    reading("vibrate.reading_3", "v_3", "third vibration reading after settling, r.m.s."),
    reading("vibrate.reading_4", "v_4", "fourth vibration reading after settling, r.m.s."),
    severity("vibrate.baseline", "v_b", "baseline of the vibration velocity, r.m.s."),
    Quantity::new("vibrate.run_in_fall", "r_v", Kind::Ratio, "fall of the vibration while the machine ran in").shown(
        "%",
        Significant(3),
        "%",
        Significant(3),
    ),
    severity("vibrate.alarm", "v_al", "alarm setting, r.m.s."),
    severity("vibrate.trip", "v_tr", "highest trip setting, r.m.s."),
    Quantity::choice("vibrate.alarm_verdict", "", "verdict on the reading now against alarm and trip", follow::CALLS),
    Quantity::choice(
        "vibrate.change_verdict",
        "",
        "verdict on the change from the baseline",
        &["not significant", "significant"],
    ),
    Quantity::new("vibrate.mean_range", "R_v", Kind::Velocity, "mean moving range of the readings").shown(
        "mm/s",
        Places(3),
        "in/s",
        Places(5),
    ),
    severity("vibrate.control_upper", "UCL", "upper control limit, r.m.s."),
    severity("vibrate.control_lower", "LCL", "lower control limit, r.m.s."),
    Quantity::choice(
        "vibrate.control_verdict",
        "",
        "verdict on the reading now against the control limits",
        &["in control", "signal"],
    ),
    days("vibrate.day_1", "t_1", "day of the first trend reading").plate(),
    days("vibrate.day_2", "t_2", "day of the second trend reading").plate(),
    days("vibrate.day_3", "t_3", "day of the third trend reading").plate(),
    reading("vibrate.trend_1", "y_1", "first trend reading, r.m.s."),
    reading("vibrate.trend_2", "y_2", "second trend reading, r.m.s."),
    reading("vibrate.trend_3", "y_3", "third trend reading, r.m.s."),
    days(
        "vibrate.days_left",
        "t_L",
        "time from the third trend reading to the limit between zones B and C, by a straight line",
    ),
    days(
        "vibrate.days_left_growing",
        "t_E",
        "time from the third trend reading to the limit between zones B and C, by exponential growth",
    ),
    days("vibrate.doubling", "t_d", "time in which the trend readings double, by exponential growth"),
    // The hidden machine: each line of the settled drive, were it the largest of its size class, as a share of the
    // limit between zones B and C, what has grown since, and how far each reading is off.
    hidden("vibrate.share_motor", "c_1m", "share of the line at the motor's shaft frequency"),
    hidden("vibrate.share_double", "c_2m", "share of the line at twice the motor's shaft frequency"),
    hidden("vibrate.share_output", "c_1o", "share of the line at the output shaft's frequency"),
    hidden("vibrate.share_chain", "c_r", "share of the line at the frequency at which rollers seat"),
    hidden("vibrate.share_mesh", "c_z", "share of the line at the mesh frequency"),
    hidden("vibrate.share_bearing", "c_b", "share of the line at the bearing's outer-ring frequency"),
    hidden("vibrate.share_rest", "c_x", "share of everything between the lines"),
    hidden("vibrate.grown_mesh", "q_z", "growth of the line at the mesh frequency"),
    hidden("vibrate.grown_bearing", "q_b", "growth of the line at the bearing's outer-ring frequency"),
    hidden("vibrate.bearing_slip", "s_b", "slip of the rolling elements"),
    hidden("vibrate.run_in", "q_0", "excess of the vibration at the first start"),
    hidden("vibrate.scatter_1", "e_1v", "scatter of the first settled reading"),
    hidden("vibrate.scatter_2", "e_2v", "scatter of the second settled reading"),
    hidden("vibrate.scatter_3", "e_3v", "scatter of the third settled reading"),
    hidden("vibrate.scatter_4", "e_4v", "scatter of the fourth settled reading"),
    severity("vibrate.settled_motor", "v_1m0", "settled line at the motor's shaft frequency"),
    severity("vibrate.settled_double", "v_2m0", "settled line at twice the motor's shaft frequency"),
    severity("vibrate.settled_output", "v_1o0", "settled line at the output shaft's frequency"),
    severity("vibrate.settled_mesh", "v_z0", "settled line at the mesh frequency"),
    severity("vibrate.settled_bearing", "v_or0", "settled line at the bearing's outer-ring frequency"),
    severity("vibrate.settled", "v_s", "vibration velocity when the drive had settled"),
    hidden("vibrate.size", "k_P", "level of a sound drive of this power over that of the largest of its size class"),
    // How often the same teeth meet.
    Quantity::new("vibrate.phases", "N_A", Kind::Count, "assembly phases of the first gear pair"),
    Quantity::new(
        "vibrate.pinion_repeat",
        "m_p",
        Kind::Count,
        "number of turns of the pinion until the same two teeth meet again",
    ),
    Quantity::new(
        "vibrate.gear_repeat",
        "m_g",
        Kind::Count,
        "number of turns of the gear until the same two teeth meet again",
    ),
    frequency("vibrate.hunting", "f_h", "hunting-tooth frequency of the first gear pair"),
    frequency("vibrate.phase_frequency", "f_A", "assembly-phase frequency of the first gear pair"),
    // The gear unit's own class.
    Quantity::choice("vibrate.unit_class", "", "class of the gear unit", unit_class::CLASSES).plate().built(),
    Quantity::choice("vibrate.unit_subclass", "", "subclass of the gear unit", unit_class::SUBCLASSES).plate().built(),
    severity("vibrate.unit_rating", "L_R", "velocity rating of the gear unit, r.m.s."),
    severity("vibrate.unit_ab", "L_uAB", "limit between zones A and B of the gear unit"),
    severity("vibrate.unit_cd", "L_uCD", "limit between zones C and D of the gear unit"),
    severity(
        "vibrate.unit_line_limit",
        "L_f",
        "largest velocity allowed the gear unit at the frequency of the one vibration, r.m.s.",
    ),
    Quantity::choice("vibrate.unit_zone", "", "severity zone of the gear unit", &["A", "B", "C", "D"]),
    severity("vibrate.unit_acceptance", "L_acc", "largest reading with which the gear unit is accepted"),
    Quantity::choice("vibrate.unit_verdict", "", "verdict on accepting the gear unit", &["accepted", "not accepted"]),
];

pub(super) const RELATIONS: &[&[Relation]] = &[
    orders::RELATIONS,
    bearing::RELATIONS,
    spectrum::RELATIONS,
    amplitude::RELATIONS,
    severity::RELATIONS,
    follow::RELATIONS,
    settled::RELATIONS,
    hunting::RELATIONS,
    unit_class::RELATIONS,
];
