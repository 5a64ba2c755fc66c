//! Follow-up and sign-off: what is due, how it runs in, and the decision on the whole machine.

mod decide;
mod due;
mod oil;
mod sign;
mod watch;
mod wear_in;

use crate::instrument::Figures::{Places, Significant};
use crate::instrument::Instrument::Scale;
use crate::quantity::Quantity;
use crate::relation::Relation;
use crate::unit::Kind;

const fn hours(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Time, name).shown("h", Places(0), "h", Places(0))
}

const fn days(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Time, name).shown("d", Significant(3), "d", Significant(3))
}

const fn share(id: &'static str, symbol: &'static str, name: &'static str, figures: u8) -> Quantity {
    Quantity::new(id, symbol, Kind::Ratio, name).shown("%", Significant(figures), "%", Significant(figures))
}

const fn length(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Length, name).shown("mm", Significant(3), "in", Significant(3))
}

const fn rise(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::TemperatureRise, name)
}

const fn decision(id: &'static str, name: &'static str) -> Quantity {
    Quantity::choice(id, "", name, decide::DECISIONS)
}

pub(super) const QUANTITIES: &[Quantity] = &[
    // The decision.
    decision("follow.base", "decision on the base"),
    decision("follow.oil", "decision on the oil"),
    decision("follow.chain", "decision on the chain"),
    decision("follow.load", "decision on the shaft load"),
    decision("follow.lie", "decision on the alignment"),
    decision("follow.bolts", "decision on bolts, key and bushing"),
    decision("follow.heat", "decision on the temperature"),
    decision("follow.vibration", "decision on the vibration"),
    decision("follow.motor", "decision on the motor and its supply"),
    decision("follow.standstill", "decision on the checks at standstill"),
    decision("follow.running", "decision on the readings while running"),
    decision("follow.decision", "decision on the whole machine"),
    // Who signs.
    Quantity::choice("follow.person", "", "person who wants to sign", sign::PEOPLE).plate(),
    Quantity::choice(
        "follow.licence",
        "",
        "whether local law asks for a licence",
        &["no licence asked", "licence asked"],
    )
    .plate(),
    Quantity::choice("follow.hindrance", "", "what stands in the way of the signature", sign::HINDRANCES),
    // What is due.
    hours("follow.age", "t_now", "age of the drive now").plate(),
    hours("follow.reading_last", "t_r", "age at the last temperature, vibration and noise readings").plate(),
    hours("follow.level_last", "t_l", "age at the last oil level check").plate(),
    hours("follow.bolts_last", "t_b", "age at the last bolt check").plate(),
    hours("follow.chain_last", "t_c", "age at the last chain check").plate(),
    hours("follow.foot_last", "t_f", "age at the last soft-foot check").plate(),
    hours("follow.reading_due", "d_r", "age at which the next readings are due"),
    hours("follow.level_due", "d_l", "age at which the next oil level check is due"),
    hours("follow.bolts_due", "d_b", "age at which the next bolt check is due"),
    hours("follow.chain_due", "d_c", "age at which the next chain check is due"),
    hours("follow.foot_due", "d_f", "age at which the next soft-foot check is due"),
    Quantity::new("follow.due_count", "m_due", Kind::Count, "number of the five checks that are due now"),
    hours("follow.chain_left", "t_left", "time left until the next chain check"),
    hours("follow.first_interval", "i_1", "first interval between checks").plate(),
    Quantity::new("follow.growth", "r_i", Kind::Ratio, "factor by which each interval grows")
        .shown("", Places(1), "", Places(1))
        .plate(),
    Quantity::new("follow.number", "k", Kind::Count, "number of the check, counted from the first").plate(),
    hours("follow.interval", "i_k", "interval before that check"),
    hours("follow.check_age", "t_k", "age at which that check is due"),
    // Oil changes.
    hours("follow.hours_a_day", "h_d", "hours that the drive runs in a day of 24 h").plate(),
    share("follow.run_share", "s_d", "share of the time that the drive runs", 3),
    hours("follow.first_running", "t_1r", "running time allowed before the first oil change").plate(),
    days("follow.first_calendar", "t_1c", "calendar time allowed before the first oil change")
        .shown("d", Places(0), "d", Places(0))
        .plate(),
    days("follow.first_change", "d_1", "calendar days from the start to the first oil change"),
    hours("follow.usual_running", "t_ur", "running time allowed between later oil changes").plate(),
    days("follow.usual_calendar", "t_uc", "calendar time allowed between later oil changes"),
    days("follow.next_change", "d_2", "calendar days from the first oil change to the next"),
    days("follow.oil_days", "t_oc", "calendar days since the oil went in")
        .shown("d", Places(0), "d", Places(0))
        .plate(),
    hours("follow.oil_hours", "t_or", "running hours since the oil went in").plate(),
    Quantity::choice("follow.change_verdict", "", "verdict on the first oil change", &["not due yet", "due"]),
    // Wear-in of a new chain.
    share("follow.bedding", "ε_b", "elongation that bedding in adds in the end", 2).plate(),
    hours("follow.bedding_time", "τ_b", "time constant of bedding in").plate(),
    share("follow.steady", "ε_s", "elongation that steady wear adds in 1000 h", 2).plate(),
    hours("follow.run", "t_w", "running time of the new chain").plate(),
    share("follow.wear_in", "ε_w", "elongation of the new chain after that time", 3),
    length("follow.growth_in", "ΔX_w", "growth of the whole chain in that time"),
    length("follow.excess_in", "e_n", "slack length of the chain after that time"),
    length("follow.sag_in", "δ_n", "sag below the straightedge after that time").set_with(Scale),
    hours("follow.time_1", "t_m1", "running time at the first elongation measured after bedding in").plate(),
    hours("follow.time_2", "t_m2", "running time at the second elongation measured after bedding in").plate(),
    share("follow.wear_1", "ε_1", "first elongation measured after bedding in", 3).plate(),
    share("follow.wear_2", "ε_2", "second elongation measured after bedding in", 3).plate(),
    hours("follow.chain_hours", "t_lim", "running time from the second measurement to the wear limit").shown(
        "h",
        Significant(3),
        "h",
        Significant(3),
    ),
    // A settled rise, watched.
    share("follow.scatter_1", "x_1", "first settled rise over the true one", 4),
    share("follow.scatter_2", "x_2", "second settled rise over the true one", 4),
    share("follow.scatter_3", "x_3", "third settled rise over the true one", 4),
    share("follow.scatter_4", "x_4", "fourth settled rise over the true one", 4),
    share("follow.scatter_5", "x_5", "first later rise over the true one", 4),
    share("follow.scatter_6", "x_6", "second later rise over the true one", 4),
    rise("follow.rise_1", "r_1", "first settled rise in the log").plate(),
    rise("follow.rise_2", "r_2", "second settled rise in the log").plate(),
    rise("follow.rise_3", "r_3", "third settled rise in the log").plate(),
    rise("follow.rise_4", "r_4", "fourth settled rise in the log").plate(),
    rise("follow.rise_5", "r_5", "first later rise in the log").plate(),
    rise("follow.rise_6", "r_6", "second later rise in the log").plate(),
    rise("follow.rise_mean", "r_m", "baseline of the rise").shown("°C", Places(2), "°F", Places(2)),
    rise("follow.rise_range", "R_r", "mean moving range of the settled rises").shown("°C", Places(2), "°F", Places(2)),
    rise("follow.rise_upper", "U_r", "upper control limit of the rise"),
    rise("follow.rise_lower", "L_r", "lower control limit of the rise"),
    Quantity::choice(
        "follow.rise_verdict",
        "",
        "verdict on the latest rise against the control limits",
        &["in control", "signal"],
    ),
    Quantity::new("follow.weight", "λ", Kind::Ratio, "weight of the newest reading in the weighted mean")
        .shown("", Places(2), "", Places(2))
        .plate(),
    rise("follow.weighted", "z_2", "weighted mean of the rise after the two later readings").shown(
        "°C",
        Places(2),
        "°F",
        Places(2),
    ),
    Quantity::new("follow.width", "k_z", Kind::Ratio, "width of the weighted mean's limits in standard deviations")
        .shown("", Places(1), "", Places(1))
        .plate(),
    rise("follow.weighted_upper", "U_z", "upper limit of the weighted mean, after many readings").shown(
        "°C",
        Places(2),
        "°F",
        Places(2),
    ),
    Quantity::choice("follow.weighted_verdict", "", "verdict on the weighted mean", &["in control", "signal"]),
];

pub(super) const RELATIONS: &[&[Relation]] =
    &[decide::RELATIONS, sign::RELATIONS, due::RELATIONS, oil::RELATIONS, wear_in::RELATIONS, watch::RELATIONS];
