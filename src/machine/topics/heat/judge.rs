//! Rise over ambient and what is thought of it.

use drivecourse_calc::heat::rise::{rise, surface};
use drivecourse_calc::heat::warm_up::SETTLED_CHANGE;
use drivecourse_calc::units::{Temperature, TemperatureRise, thermodynamic_temperature};

use super::{DIFFERENCE, c_as_rise, f_as_rise, thirty_two, zero_c, zero_f};
use crate::relation::{Relation, relation};
use crate::source::Source::CommonPractice;
use crate::typed::Choice;

pub(super) const VERDICTS: &[&str] = &["acceptable", "not passed, find the cause", "stop and find out why"];
pub(super) const PEAK_VERDICTS: &[&str] =
    &["run-in peak, no fault", "no peak, ordinary warm-up", "settled above what is allowed, a fault"];

const ACCEPTABLE: Choice = Choice(0);
const NOT_PASSED: Choice = Choice(1);
const STOP: Choice = Choice(2);

const RUN_IN: Choice = Choice(0);
const NO_PEAK: Choice = Choice(1);
const ABOVE: Choice = Choice(2);

fn verdict(over: TemperatureRise, rise_limit: TemperatureRise, housing: Temperature, sump: Temperature) -> Choice {
    if housing > sump {
        STOP
    } else if over > rise_limit {
        NOT_PASSED
    } else {
        ACCEPTABLE
    }
}

/// Judged by where it settles; a peak is one when it stands out by more than settled readings wander.
fn peak_verdict(peak: Temperature, settled: Temperature, allowed: Temperature) -> Choice {
    if settled > allowed {
        ABOVE
    } else if rise(peak, settled) > SETTLED_CHANGE {
        RUN_IN
    } else {
        NO_PEAK
    }
}

/// About where a hand is taken off the housing (common practice, no source).
fn too_hot_to_hold() -> Temperature {
    Temperature::new::<thermodynamic_temperature::degree_celsius>(60.0)
}

fn lower(a: Temperature, b: Temperature) -> Temperature {
    if a < b { a } else { b }
}

fn higher(a: Temperature, b: Temperature) -> Temperature {
    if a < b { b } else { a }
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "heat.rise/over ambient": "Rise of the housing over ambient",
        "heat.rise": TemperatureRise = rise(t, a),
        from { t: Temperature = "heat.housing", a: Temperature = "heat.ambient" },
        formula ["D = t - a"],
        source DIFFERENCE,
        turns {
            "Celsius reading" in Si: c_as_rise(t) => "You gave the housing temperature itself; a rise is counted from ambient, so take the ambient off.";
            "Fahrenheit reading" in Us: f_as_rise(t) => "You gave the housing temperature itself; a rise is counted from ambient, so take the ambient off.";
            "32 added" in Us: rise(t, a) + thirty_two() => "You added 32 to a difference; the 32 belongs to readings only and falls out of a difference.";
            "32 taken off" in Us: rise(t, a) - thirty_two() => "You took 32 off a difference, as if it were a reading; a difference of 1.8 °F is one of 1 °C and that is all.";
            "Fahrenheit read as Celsius" in Us: rise(t, a) * 3.24 => "You multiplied by 1.8 where you should have divided; a rise is a smaller number in °C than in °F.";
            "Celsius read as Fahrenheit" in Si: rise(t, a) / 3.24 => "You divided by 1.8 where you should have multiplied; a rise is a larger number in °F than in °C.";
            "stopped too early" with { r: Temperature = "heat.reading_3" }: rise(r, a) => "You used the last warm-up reading; the rise counts once the temperature has settled.";
            "turned round": rise(a, t) => "You took the housing off the ambient; the rise is housing less ambient.";
            "added" in Si: c_as_rise(t) + c_as_rise(a) => "You added the two temperatures; the rise is their difference.";
            "added in °F" in Us: f_as_rise(t) + f_as_rise(a) => "You added the two temperatures; the rise is their difference.";
        },
    }
    .limits("both read at the same time, ambient in the shade beside the unit"),
    relation! {
        "heat.allowed/lower of two": "Highest temperature allowed at this ambient",
        "heat.allowed": Temperature = lower(sump, surface(a, limit)),
        from {
            a: Temperature = "heat.ambient", limit: TemperatureRise = "heat.rise_limit",
            sump: Temperature = "heat.sump_limit",
        },
        formula ["T = min(sump, a + limit)"],
        source CommonPractice,
        turns {
            "higher of two": higher(sump, surface(a, limit)) => "You took the higher of the two limits; both must hold, so the lower one rules.";
            "rise as reading, °C" in Si: zero_c() + limit => "You took the rise limit for a temperature; it counts from ambient, so add the ambient.";
            "rise as reading, °F" in Us: zero_f() + limit => "You took the rise limit for a temperature; it counts from ambient, so add the ambient.";
            "32 taken off" in Us: lower(sump, surface(a, limit - thirty_two())) => "You took 32 off the rise limit as if it were a reading; a difference of 1.8 °F is one of 1 °C and that is all.";
            "ambient taken off": surface(a, -limit) => "You took the rise limit off the ambient; add it.";
        },
    }
    .limits("the lower rules; usual are 200 °F (93 °C) sustained and 100 °F (56 °C) over ambient"),
    relation! {
        "heat.allowed_rise/from allowed temperature": "Largest rise allowed at this ambient",
        "heat.allowed_rise": TemperatureRise = rise(allowed, a),
        from { allowed: Temperature = "heat.allowed", a: Temperature = "heat.ambient" },
        formula ["D = allowed - a"],
        source DIFFERENCE,
        turns {
            "Celsius reading" in Si: c_as_rise(allowed) => "You gave the allowed temperature itself; take the ambient off to get the rise.";
            "Fahrenheit reading" in Us: f_as_rise(allowed) => "You gave the allowed temperature itself; take the ambient off to get the rise.";
            "rise limit on a hot day" with { limit: TemperatureRise = "heat.rise_limit" }: limit => "You used the rise limit as it stands; on a hot day the sump limit leaves less rise than that.";
            "32 taken off" in Us: rise(allowed, a) - thirty_two() => "You took 32 off a difference, as if it were a reading.";
            "32 added" in Us: rise(allowed, a) + thirty_two() => "You added 32 to a difference; the 32 belongs to readings only.";
        },
    },
    relation! {
        "heat.verdict/rise and sump limit": "Verdict on the settled temperature",
        "heat.verdict": Choice = verdict(over, limit, t, sump),
        from {
            over: TemperatureRise = "heat.rise", limit: TemperatureRise = "heat.rise_limit",
            t: Temperature = "heat.housing", sump: Temperature = "heat.sump_limit",
        },
        formula [],
        source CommonPractice,
        turns {
            "Celsius reading" in Si: verdict(c_as_rise(t), limit, t, sump) => "You held the housing temperature itself against the rise limit; only the rise over ambient may be held against it.";
            "Fahrenheit reading" in Us: verdict(f_as_rise(t), limit, t, sump) => "You held the housing temperature itself against the rise limit; only the rise over ambient may be held against it.";
            "sump limit only": verdict(limit, limit, t, sump) => "You looked at the temperature only; the rise over ambient has a limit of its own.";
            "rise limit only": verdict(over, limit, sump, sump) => "You looked at the rise only; above the sump limit the unit is stopped whatever the ambient.";
            "limit as a reading" in Si: verdict(over, limit - thirty_two(), t, sump) => "You converted the rise limit with the 32 of the Fahrenheit scale; 100 °F of rise are 56 °C, not 38 °C.";
            "stopped for the rise": if over > limit { STOP } else { verdict(over, limit, t, sump) } => "You stopped the unit for its rise alone; below the sump limit it is not passed, and is watched only while the cause is sought without delay.";
            "stopped too early" with { r: Temperature = "heat.reading_3", a: Temperature = "heat.ambient" }: verdict(rise(r, a), limit, r, sump) => "You judged the last warm-up reading; the verdict is on the settled temperature.";
            "peak judged" with { p: Temperature = "heat.peak_reading", a: Temperature = "heat.ambient" }: verdict(rise(p, a), limit, p, sump) => "You judged the highest reading of the warm-up; a run-in peak falls back, and the verdict is on the settled temperature.";
            "hand test": if t > too_hot_to_hold() { STOP } else { ACCEPTABLE } => "You called it too hot because a hand cannot stay on it; that happens at about 60 °C (140 °F), well inside the limits.";
        },
    }
    .method("Above the sump limit: stop and find out why. Otherwise, above the rise limit: not passed, find the cause. Otherwise acceptable. A value on the limit passes.")
    .limits("settled temperature, not one met while warming up; usual limits are 100 °F (56 °C) over ambient and 200 °F (93 °C) sustained"),
    relation! {
        "heat.peak_verdict/where it settles": "Verdict on the highest reading of the warm-up",
        "heat.peak_verdict": Choice = peak_verdict(peak, t, allowed),
        from {
            peak: Temperature = "heat.peak_reading", t: Temperature = "heat.housing",
            allowed: Temperature = "heat.allowed",
        },
        formula [],
        source CommonPractice,
        turns {
            "peak judged": if peak > allowed { ABOVE } else { peak_verdict(peak, t, allowed) } => "You judged the unit by its early peak; a new unit that falls back and settles inside the limit has no fault.";
            "any peak a fault": if rise(peak, t) > SETTLED_CHANGE { ABOVE } else { NO_PEAK } => "You called the run-in peak a fault; seals and teeth bed in during the first hours, and what counts is where it settles.";
            "any peak excused": if rise(peak, t) > SETTLED_CHANGE { RUN_IN } else { peak_verdict(peak, t, allowed) } => "You let it pass because it fell back from a peak; where it settled is still above the limit.";
            "hot but steady": if rise(peak, t) > SETTLED_CHANGE { RUN_IN } else { NO_PEAK } => "You asked only whether there was a peak; hold the settled temperature against the limit first.";
        },
    }
    .method("Settled above the allowed temperature: a fault. Otherwise, if the highest reading stood more than 2 °C (3.6 °F) above where it settled: a run-in peak, no fault. Otherwise an ordinary warm-up.")
    .limits("a short early peak alone is no fault; one that does not fall back is"),
];

#[cfg(test)]
mod tests {
    use super::*;

    /// The two verdicts look at one limit: whoever is told not to pass a unit or to stop it is not told that its peak was no
    /// fault, and the other way round.
    #[test]
    fn a_unit_is_at_fault_by_its_peak_where_it_is_not_acceptable_as_settled() {
        let celsius = |value: f64| Temperature::new::<thermodynamic_temperature::degree_celsius>(value);
        let limit = rise(celsius(55.5), celsius(0.0));
        let mut seen = std::collections::BTreeSet::new();
        for (ambient, settled) in (-20..50).flat_map(|ambient| (0..130).map(move |settled| (ambient, settled))) {
            let (a, t, sump) = (celsius(f64::from(ambient)), celsius(f64::from(settled)), celsius(93.25));
            let settled = verdict(rise(t, a), limit, t, sump);
            for peak in [0.0, 5.0] {
                let peak = peak_verdict(
                    celsius(t.get::<thermodynamic_temperature::degree_celsius>() + peak),
                    t,
                    lower(sump, surface(a, limit)),
                );
                assert_eq!(peak == ABOVE, settled != ACCEPTABLE, "{a:?} {t:?}");
                seen.insert((settled.0, peak.0));
            }
        }
        assert_eq!(seen.len(), 4, "{seen:?}");
    }
}
