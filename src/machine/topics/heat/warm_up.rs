//! The warm-up curve: the readings it gives, and how long it takes.

use core::f64::consts::LN_10;
use drivecourse_calc::Error;

use drivecourse_calc::heat::rise::{rise, surface};
use drivecourse_calc::heat::warm_up::{RunIn, WarmUp, time_to_within};
use drivecourse_calc::units::{Temperature, TemperatureRise, Time};

use super::{FIRST_ORDER, c_as_rise, f_as_rise, zero_c, zero_f};
use crate::Source;
use crate::relation::{Relation, relation};
use crate::source::Source::Derived;

const RUN_IN: Source =
    Derived("first-order heating of one mass; the run-in part is this course's own model, no source");

/// A run-in height of nought means that there is no peak.
fn curve(a: Temperature, d: TemperatureRise, tau: Time, height: TemperatureRise, at: Time) -> WarmUp {
    let run_in = (height.value != 0.0).then_some(RunIn { height, at });
    WarmUp { ambient: a, settled_rise: d, time_constant: tau, run_in }
}

/// A unit already run in.
fn plain(a: Temperature, d: TemperatureRise, tau: Time) -> WarmUp {
    WarmUp { ambient: a, settled_rise: d, time_constant: tau, run_in: None }
}

/// The top of the curve: the early peak, or where it settles if that is higher or there is none.
fn highest(unit: &WarmUp) -> Result<Temperature, Error> {
    let settled = unit.settled();
    match unit.early_peak() {
        Ok(peak) if peak.temperature > settled => Ok(peak.temperature),
        Ok(_) | Err(Error::NoSolution { .. }) => Ok(settled),
        Err(error) => Err(error),
    }
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "heat.time_2/one interval on": "Time of reading 2",
        "heat.time_2": Time = t + dt,
        from { t: Time = "heat.first_time", dt: Time = "heat.interval" },
        formula ["t = t + dt"],
        source Derived("equal spacing"),
        turns {
            "interval only": dt => "You gave the interval; reading 2 comes one interval after reading 1.";
            "two intervals": t + dt * 2.0 => "You went two intervals on; that is reading 3.";
        },
    },
    relation! {
        "heat.time_3/two intervals on": "Time of reading 3",
        "heat.time_3": Time = t + dt * 2.0,
        from { t: Time = "heat.first_time", dt: Time = "heat.interval" },
        formula ["t = t + 2 * dt"],
        source Derived("equal spacing"),
        turns {
            "one interval": t + dt => "You went one interval on; reading 3 comes two intervals after reading 1.";
            "three intervals": t + dt * 3.0 => "You went three intervals on; between three readings there are two intervals.";
            "start forgotten": dt * 2.0 => "You counted from reading 1; the time counts from the start.";
        },
    },
    relation! {
        "heat.reading_1/warm-up curve": "Temperature at reading 1",
        "heat.reading_1": Temperature = curve(a, d, tau, height, at).at(t),
        from {
            a: Temperature = "heat.ambient", d: TemperatureRise = "heat.settled_rise", tau: Time = "heat.time_constant",
            height: TemperatureRise = "heat.peak_height", at: Time = "heat.peak_time", t: Time = "heat.first_time",
        },
        formula ["T = a + d * (1 - exp(-t / tau)) + height * (t / at) * exp(1 - t / at)"],
        source RUN_IN,
        turns {},
    }
    .model(),
    relation! {
        "heat.reading_2/warm-up curve": "Temperature at reading 2",
        "heat.reading_2": Temperature = curve(a, d, tau, height, at).at(t),
        from {
            a: Temperature = "heat.ambient", d: TemperatureRise = "heat.settled_rise", tau: Time = "heat.time_constant",
            height: TemperatureRise = "heat.peak_height", at: Time = "heat.peak_time", t: Time = "heat.time_2",
        },
        formula ["T = a + d * (1 - exp(-t / tau)) + height * (t / at) * exp(1 - t / at)"],
        source RUN_IN,
        turns {},
    }
    .model(),
    relation! {
        "heat.reading_3/warm-up curve": "Temperature at reading 3",
        "heat.reading_3": Temperature = curve(a, d, tau, height, at).at(t),
        from {
            a: Temperature = "heat.ambient", d: TemperatureRise = "heat.settled_rise", tau: Time = "heat.time_constant",
            height: TemperatureRise = "heat.peak_height", at: Time = "heat.peak_time", t: Time = "heat.time_3",
        },
        formula ["T = a + d * (1 - exp(-t / tau)) + height * (t / at) * exp(1 - t / at)"],
        source RUN_IN,
        turns {},
    }
    .model(),
    relation! {
        "heat.peak_reading/top of the curve": "Highest reading of the warm-up",
        "heat.peak_reading": Temperature = highest(&curve(a, d, tau, height, at)),
        from {
            a: Temperature = "heat.ambient", d: TemperatureRise = "heat.settled_rise", tau: Time = "heat.time_constant",
            height: TemperatureRise = "heat.peak_height", at: Time = "heat.peak_time",
        },
        formula [],
        source RUN_IN,
        turns {},
    }
    .method("The first maximum of the warm-up curve with its run-in peak, found by halving; where it settles, if that is higher or there is no peak.")
    .model(),
    relation! {
        "heat.warm/warm-up curve": "Temperature some time after a cold start",
        "heat.warm": Temperature = plain(a, d, tau).at(t),
        from {
            a: Temperature = "heat.ambient", d: TemperatureRise = "heat.settled_rise", tau: Time = "heat.time_constant",
            t: Time = "heat.asked_time",
        },
        formula ["T = a + d * (1 - exp(-t / tau))"],
        source FIRST_ORDER,
        turns {
            "straight line": surface(a, d * (t / tau)) => "You let the temperature climb in a straight line; it climbs ever more slowly.";
            "what is left": surface(a, d - rise(plain(a, d, tau).at(t)?, a)) => "You used e^(−t/τ) itself; that share of the rise is still to come, and 1 less it is there.";
            "ambient left out" in Si: plain(zero_c(), d, tau).at(t) => "You gave the rise so far as a temperature; add the ambient.";
            "ambient left out, °F" in Us: plain(zero_f(), d, tau).at(t) => "You gave the rise so far as a temperature; add the ambient.";
            "temperature for rise" in Si with { s: Temperature = "heat.settled" }: plain(a, c_as_rise(s), tau).at(t) => "You put the settled temperature where the settled rise belongs; the ambient then counts twice.";
            "temperature for rise, °F" in Us with { s: Temperature = "heat.settled" }: plain(a, f_as_rise(s), tau).at(t) => "You put the settled temperature where the settled rise belongs; the ambient then counts twice.";
            "upside down": plain(a, d, t).at(tau) => "You put the time constant over the time; the exponent is minus time over time constant.";
            "settled already": surface(a, d) => "You took it as settled; at that time it is still on its way.";
        },
    }
    .limits("constant load from a cold start, a unit already run in; 63 % of the rise after one time constant, 95 % after three"),
    relation! {
        "heat.warm_up_time/from cold": "Time from a cold start until the unit has settled",
        "heat.warm_up_time": Time = time_to_within(d, m, tau),
        from {
            d: TemperatureRise = "heat.settled_rise", m: TemperatureRise = "heat.margin_wanted",
            tau: Time = "heat.time_constant",
        },
        formula ["t = max(0, tau * ln(d / m))"],
        source FIRST_ORDER,
        turns {
            "one time constant": tau => "You gave one time constant; only 63 % of the rise is there by then.";
            "three time constants": tau * 3.0 => "You gave three time constants; 95 % of the rise is there, and the distance left is more than the margin.";
            "common logarithm": time_to_within(d, m, tau / LN_10) => "You used the logarithm to base 10; the natural one, ln, belongs here.";
            "Celsius reading" in Si with { s: Temperature = "heat.settled" }: time_to_within(c_as_rise(s), m, tau) => "You used the settled temperature; what dies away is the distance from ambient, the rise.";
            "Fahrenheit reading" in Us with { s: Temperature = "heat.settled" }: time_to_within(f_as_rise(s), m, tau) => "You used the settled temperature; what dies away is the distance from ambient, the rise.";
            "no logarithm": tau * (d / m) => "You left the logarithm out; the time is the time constant times ln of the ratio.";
        },
    }
    .limits("it comes ever closer and never quite arrives, so a margin must be named"),
];
