//! Three readings: where the unit will settle, and when.

use core::f64::consts::LN_10;

use drivecourse_calc::heat::rise::rise;
use drivecourse_calc::heat::warm_up::{
    SETTLED_CHANGE, is_settled, settled_from_three, time_constant, time_constant_from_three, time_to_within,
};
use drivecourse_calc::units::{Temperature, TemperatureRise, Time};

use super::{DIFFERENCE, FIRST_ORDER, c_as_rise, f_as_rise, thirty_two, zero_c, zero_f};
use crate::Source;
use crate::relation::{Relation, relation};
use crate::source::Source::Derived;
use crate::typed::Choice;

pub(super) const SETTLING: &[&str] =
    &["settled", "still rising, but it will settle", "falling back after a peak", "not settling yet"];

const SETTLED: Choice = Choice(0);
const RISING: Choice = Choice(1);
const FALLING: Choice = Choice(2);
const NOT_YET: Choice = Choice(3);

const THREE_POINTS: Source = Derived("Aitken's delta-squared formula, exact for a first-order curve");

fn settling([a, b, c]: [Temperature; 3]) -> Choice {
    if is_settled([a, b, c]) {
        SETTLED
    } else if c < a || c < b {
        FALLING
    } else if rise(c, b) < rise(b, a) {
        RISING
    } else {
        NOT_YET
    }
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "heat.settled_foretold/three readings": "Where the temperature will settle",
        "heat.settled_foretold": Temperature = settled_from_three([t1, t2, t3]),
        from {
            t1: Temperature = "heat.reading_1", t2: Temperature = "heat.reading_2", t3: Temperature = "heat.reading_3",
        },
        formula ["T = t3 + (t3 - t2)^2 / ((t2 - t1) - (t3 - t2))"],
        source THREE_POINTS,
        turns {
            "last reading": t3 => "You took the last reading as settled; the readings are still climbing.";
            "one more step": t3 + rise(t3, t2) => "You carried the last step on in a straight line; each step is smaller than the one before, and there are more of them to come.";
            "two more steps": t3 + rise(t3, t2) * 2.0 => "You carried the last step on in a straight line; each step is smaller than the one before.";
            "from the middle": t2 + rise(settled_from_three([t1, t2, t3])?, t3) => "You added the rest to reading 2; it counts from reading 3.";
            "first step below": t3 + rise(t3, t2) * (rise(t3, t2) / rise(t2, t1)) => "You divided by the first step; divide by the difference of the two steps.";
            "rest only, °C" in Si: zero_c() + rise(settled_from_three([t1, t2, t3])?, t3) => "You gave what is still to come; add it to reading 3.";
            "rest only, °F" in Us: zero_f() + rise(settled_from_three([t1, t2, t3])?, t3) => "You gave what is still to come; add it to reading 3.";
        },
    }
    .limits("equal spacing; both steps of one sign and the second clearly the smaller, otherwise it is not settling yet; not during a run-in peak")
    .question(),
    relation! {
        "heat.rise_foretold/over ambient": "Settled rise foretold",
        "heat.rise_foretold": TemperatureRise = rise(t, a),
        from { t: Temperature = "heat.settled_foretold", a: Temperature = "heat.ambient" },
        formula ["D = t - a"],
        source DIFFERENCE,
        turns {
            "Celsius reading" in Si: c_as_rise(t) => "You gave the temperature itself; take the ambient off to get the rise.";
            "Fahrenheit reading" in Us: f_as_rise(t) => "You gave the temperature itself; take the ambient off to get the rise.";
            "last reading" with { t3: Temperature = "heat.reading_3" }: rise(t3, a) => "You stopped at the last reading; the rise is counted to where the unit will settle.";
            "from reading 1" with { t1: Temperature = "heat.reading_1" }: rise(t, t1) => "You counted from reading 1; the rise is counted from ambient.";
            "32 added" in Us: rise(t, a) + thirty_two() => "You added 32 to a difference; the 32 belongs to readings only.";
            "32 taken off" in Us: rise(t, a) - thirty_two() => "You took 32 off a difference, as if it were a reading.";
        },
    }
    .question(),
    relation! {
        "heat.time_constant_foretold/three readings": "Time constant from three readings",
        "heat.time_constant_foretold": Time = time_constant_from_three([t1, t2, t3], dt),
        from {
            t1: Temperature = "heat.reading_1", t2: Temperature = "heat.reading_2", t3: Temperature = "heat.reading_3",
            dt: Time = "heat.interval",
        },
        formula ["tau = dt / ln((t2 - t1) / (t3 - t2))"],
        source FIRST_ORDER,
        turns {
            "common logarithm": time_constant_from_three([t1, t2, t3], dt * LN_10) => "You used the logarithm to base 10; the natural one, ln, belongs here.";
            "whole time": time_constant_from_three([t1, t2, t3], dt * 2.0) => "You used the time from reading 1 to reading 3; the spacing of two neighbours belongs here.";
            "steps upside down": time_constant_from_three([t1, t2, t3], dt).map(|tau| -tau) => "You divided the later step by the earlier one, which makes the logarithm negative; put the earlier step on top.";
            "no logarithm": dt / (rise(t2, t1) / rise(t3, t2)) => "You divided the time by the ratio of the steps; the logarithm of that ratio belongs below.";
            "readings for steps" in Si: time_constant(c_as_rise(t3), c_as_rise(t2), dt) => "You took the ratio of two readings; the ratio of the two steps belongs here.";
            "readings for steps, °F" in Us: time_constant(f_as_rise(t3), f_as_rise(t2), dt) => "You took the ratio of two readings; the ratio of the two steps belongs here.";
            "multiplied": dt * (dt / time_constant_from_three([t1, t2, t3], dt)?) => "You multiplied by the logarithm; divide by it.";
        },
    }
    .limits("equal spacing; both steps of one sign and the second clearly the smaller")
    .question(),
    relation! {
        "heat.time_constant_foretold/settled temperature known": "Time constant from two readings and where it settled",
        "heat.time_constant_foretold": Time = time_constant(rise(s, t1), rise(s, t2), dt),
        from {
            t1: Temperature = "heat.reading_1", t2: Temperature = "heat.reading_2", s: Temperature = "heat.housing",
            dt: Time = "heat.interval",
        },
        formula ["tau = dt / ln((s - t1) / (s - t2))"],
        source FIRST_ORDER,
        turns {
            "common logarithm": time_constant(rise(s, t1), rise(s, t2), dt * LN_10) => "You used the logarithm to base 10; the natural one, ln, belongs here.";
            "over ambient" with { a: Temperature = "heat.ambient" }: time_constant(rise(t2, a), rise(t1, a), dt) => "You used the rises over ambient; what dies away is the distance from where it settles.";
            "readings" in Si: time_constant(c_as_rise(t2), c_as_rise(t1), dt) => "You took the ratio of two readings; the distances from where it settles belong here.";
            "readings, °F" in Us: time_constant(f_as_rise(t2), f_as_rise(t1), dt) => "You took the ratio of two readings; the distances from where it settles belong here.";
            "no logarithm": dt / (rise(s, t1) / rise(s, t2)) => "You divided the time by the ratio of the distances; its logarithm belongs below.";
        },
    }
    .limits("both readings clearly away from where it settles; not during a run-in peak")
    .question()
    .rank(5),
    relation! {
        "heat.settling/three readings": "What the three readings say",
        "heat.settling": Choice = settling([t1, t2, t3]),
        from {
            t1: Temperature = "heat.reading_1", t2: Temperature = "heat.reading_2", t3: Temperature = "heat.reading_3",
        },
        formula [],
        source Source::published("UL 1004-1", "2nd edition (2012), clause 32.2, written for motors, used here as a criterion only"),
        turns {
            "last step only": if rise(t3, t2) <= SETTLED_CHANGE && t3 >= t2 { SETTLED } else { settling([t1, t2, t3]) } => "You looked at the last step only; all three readings must lie within 2 °C (3.6 °F) and must not keep rising.";
            "small but rising": if rise(t3, t1) <= SETTLED_CHANGE && t3 >= t1 { SETTLED } else { settling([t1, t2, t3]) } => "You called it settled because the change is small; as long as every reading is higher than the one before, it is still rising.";
            "any rise will settle": if t3 > t2 { RISING } else { settling([t1, t2, t3]) } => "You took it that it will settle; the second step must be smaller than the first, and it is not.";
            "any rise runs away": if t3 > t2 { NOT_YET } else { settling([t1, t2, t3]) } => "You took every rise for one without end; the steps are shrinking, so the readings say where it will settle.";
            "fall taken as settled": if t3 < t2 { SETTLED } else { settling([t1, t2, t3]) } => "You took the fall for the end of the warm-up; it falls back from a peak and must be read until it is flat.";
            "fall not looked at": if t3 < t2 { NOT_YET } else { settling([t1, t2, t3]) } => "You overlooked that the temperature is coming down; it is past a peak and falling back.";
        },
    }
    .method("All three within 2 °C (3.6 °F) and not each higher than the one before: settled. Otherwise, the last lower than an earlier one: falling back after a peak. Otherwise, the second step smaller than the first: still rising, but it will settle. Otherwise: not settling yet.")
    .limits("readings 30 minutes apart")
    .question(),
    relation! {
        "heat.time_to_settle/from reading 3": "Time from reading 3 until the unit has settled",
        "heat.time_to_settle": Time = time_to_within(rise(s, t3), m, tau),
        from {
            s: Temperature = "heat.settled_foretold", t3: Temperature = "heat.reading_3",
            tau: Time = "heat.time_constant_foretold", m: TemperatureRise = "heat.margin_wanted",
        },
        formula ["t = max(0, tau * ln(abs(s - t3) / m))"],
        source FIRST_ORDER,
        turns {
            "straight line" with { t2: Temperature = "heat.reading_2", dt: Time = "heat.interval" }: dt * (rise(s, t3) / rise(t3, t2)) => "You let the last step go on in a straight line; it climbs ever more slowly, so it takes longer.";
            "one time constant": tau => "You gave one time constant; it leaves 37 % of the distance.";
            "three time constants": tau * 3.0 => "You gave three time constants; the time goes by how far it still is and by the margin.";
            "common logarithm": time_to_within(rise(s, t3), m, tau / LN_10) => "You used the logarithm to base 10; the natural one, ln, belongs here.";
            "from ambient" with { a: Temperature = "heat.ambient" }: time_to_within(rise(s, a), m, tau) => "You counted from ambient; reading 3 is already part of the way.";
            "rise so far" with { a: Temperature = "heat.ambient" }: time_to_within(rise(t3, a), m, tau) => "You used the rise so far; the distance still to go belongs here.";
            "Celsius reading" in Si: time_to_within(c_as_rise(s), m, tau) => "You used the settled temperature itself; the distance still to go belongs here.";
            "Fahrenheit reading" in Us: time_to_within(f_as_rise(s), m, tau) => "You used the settled temperature itself; the distance still to go belongs here.";
            "no logarithm": tau * (rise(s, t3) / m) => "You left the logarithm out; the time is the time constant times ln of the ratio.";
        },
    }
    .limits("it comes ever closer and never quite arrives, so a margin must be named")
    .question(),
];
