//! Noise: levels together, the machine without its surroundings, and what a day of it does to an ear.

mod rules;

use drivecourse_calc::Error;
use drivecourse_calc::noise::Level;
use drivecourse_calc::noise::background::source;
use drivecourse_calc::noise::exposure::{
    Durations, NIOSH, OSHA, Spell, dose, level_for, reference_duration, standing, time_weighted_average,
};
use drivecourse_calc::noise::level::{mean, shaken, sum};
use drivecourse_calc::units::{Ratio, Time, Velocity, ratio, time};

use crate::instrument::Figures::{Places, Significant};
use crate::instrument::Instrument::SoundMeter;
use crate::quantity::Quantity;
use crate::relation::{Relation, relation};
use crate::source::Source::{self, Derived};
use crate::typed::Choice;
use crate::unit::Kind;

const fn read(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Level, name).read(SoundMeter)
}

const fn hours(id: &'static str, symbol: &'static str, name: &'static str) -> Quantity {
    Quantity::new(id, symbol, Kind::Time, name).shown("h", Significant(3), "h", Significant(3))
}

/// By how much the vibration has risen for the ear: what is added to it counts as on the largest drive of the size class.
fn risen(over_settled: Ratio, size: Ratio) -> Ratio {
    let (v, k) = (over_settled.value, size.value);
    Ratio::new::<ratio::ratio>((1.0 + k * k * (v * v - 1.0)).sqrt())
}

pub(super) const QUANTITIES: &[Quantity] = &[
    read("noise.source_1", "L_1", "sound level of the first machine alone"),
    read("noise.source_2", "L_2", "sound level of the second machine alone"),
    read("noise.source_3", "L_3", "sound level of the third machine alone"),
    Quantity::new("noise.sum_two", "L_12", Kind::Level, "sound level of the first two machines together"),
    Quantity::new("noise.sum_three", "L_123", Kind::Level, "sound level of all three machines together"),
    Quantity::new("noise.quiet", "L_q", Kind::Level, "sound level of the drive alone when it had settled"),
    read("noise.running", "L_on", "sound level with the drive running"),
    read("noise.stopped", "L_off", "sound level with the drive stopped"),
    Quantity::new("noise.drive", "L_d", Kind::Level, "sound level of the drive alone"),
    read("noise.level_a", "L_A", "sound level at the first place of work"),
    hours("noise.time_a", "C_A", "time spent at the first place of work").plate(),
    hours("noise.reference_a", "T_A", "reference duration of the first place's level"),
    read("noise.level_b", "L_B", "sound level at the second place of work"),
    hours("noise.time_b", "C_B", "time spent at the second place of work").plate(),
    hours("noise.reference_b", "T_B", "reference duration of the second place's level"),
    Quantity::new("noise.dose", "D", Kind::Ratio, "noise dose of the day").shown("%", Places(1), "%", Places(1)),
    Quantity::choice("noise.dose_verdict", "", "verdict on the day's dose", STANDINGS),
    Quantity::new(
        "noise.level_allowed",
        "L_max",
        Kind::Level,
        "level that may last the time at the first place of work",
    ),
    Quantity::new("noise.average", "L_TWA", Kind::Level, "time-weighted average level of the day"),
    hours("noise.niosh_a", "T_rA", "time that the first place's level may last by the recommended rule"),
    hours("noise.niosh_b", "T_rB", "time that the second place's level may last by the recommended rule"),
    Quantity::new("noise.niosh_dose", "D_r", Kind::Ratio, "noise dose of the day by the recommended rule").shown(
        "%",
        Places(1),
        "%",
        Places(1),
    ),
    Quantity::new("noise.niosh_average", "L_r", Kind::Level, "time-weighted average level by the recommended rule"),
    Quantity::new("noise.equal_count", "m_e", Kind::Count, "number of machines like the first one").plate(),
    Quantity::new("noise.equal_sum", "L_e", Kind::Level, "sound level of these machines together"),
    Quantity::new(
        "noise.drive_by_standard",
        "L_s",
        Kind::Level,
        "sound level of the drive alone by the standard's rule",
    ),
    Quantity::choice("noise.drive_quality", "", "what the level of the drive alone is worth", rules::BOUNDS),
];

const STANDINGS: &[&str] = &["under the action level", "action level reached", "over the most allowed"];

const LEVELS: Source = Derived("sound energies add; a level is ten times the logarithm of an energy");
const OSHA_A: Source = Source::published("29 CFR 1910.95", "Appendix A");

fn db(value: f64) -> Level {
    Level::db(value)
}

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

fn reference(level: Level) -> Result<Time, Error> {
    reference_duration(&OSHA, level)
}

/// Dose of two spells.
fn of(level_a: Level, time_a: Time, level_b: Level, time_b: Time) -> Result<Ratio, Error> {
    let day = [Spell { level: level_a, duration: time_a }, Spell { level: level_b, duration: time_b }];
    dose(&OSHA, &day, Durations::Formula)
}

/// Where a dose stands.
fn stands(dose: Ratio) -> Result<Choice, Error> {
    Ok(Choice(standing(dose)? as u16))
}

fn average(dose: Ratio) -> Result<Level, Error> {
    time_weighted_average(&OSHA, dose)
}

pub(super) const RELATIONS: &[&[Relation]] = &[OWN, rules::RELATIONS];

const OWN: &[Relation] = &[
    relation! {
        "noise.sum_two/energies": "Level of two machines together",
        "noise.sum_two": Level = sum(&[a, b]),
        from { a: Level = "noise.source_1", b: Level = "noise.source_2" },
        formula ["L = 10 * log10(10^(a / 10) + 10^(b / 10))"],
        source LEVELS,
        turns {
            "decibels added": db(a.in_db() + b.in_db()) => "You added the decibels; add the energies, so that two equal levels make 3 dB more.";
            "mean": mean(&[a, b]) => "You took the mean; two machines together are louder than either.";
            "plain mean": db((a.in_db() + b.in_db()) / 2.0) => "You took the mean of the decibels; two machines together are louder than either.";
            "3 added": db(a.in_db().max(b.in_db()) + 3.0) => "You added 3 dB to the louder; that holds for two equal levels only.";
            "6 added": db(a.in_db().max(b.in_db()) + 6.0) => "You added 6 dB, as for doubled pressures; energies of separate machines add.";
            "factor 20": db(20.0 * libm::log10(libm::pow(10.0, a.in_db() / 20.0) + libm::pow(10.0, b.in_db() / 20.0))) => "You added pressures, with 20 for 10; separate machines add as energies.";
        },
    },
    relation! {
        "noise.sum_three/energies": "Level of three machines together",
        "noise.sum_three": Level = sum(&[a, b, c]),
        from { a: Level = "noise.source_1", b: Level = "noise.source_2", c: Level = "noise.source_3" },
        formula ["L = 10 * log10(10^(a / 10) + 10^(b / 10) + 10^(c / 10))"],
        source LEVELS,
        turns {
            "decibels added": db(a.in_db() + b.in_db() + c.in_db()) => "You added the decibels; add the energies.";
            "mean": mean(&[a, b, c]) => "You divided the energy by three, which is the mean; together they are louder than any of them.";
            "plain mean": db((a.in_db() + b.in_db() + c.in_db()) / 3.0) => "You took the mean of the decibels; together they are louder than any of them.";
            "third left out": sum(&[a, b]) => "You left out the third machine.";
        },
    },
    relation! {
        "noise.drive/background": "Level of the drive without its surroundings",
        "noise.drive": Level = source(on, off),
        from { on: Level = "noise.running", off: Level = "noise.stopped" },
        formula ["L = 10 * log10(10^(on / 10) - 10^(off / 10))"],
        source Source::published("D. R. Raichel, The Science and Applications of Acoustics (title from memory)", "Example Problem 4, p. 51"),
        turns {
            "decibels taken off": db(on.in_db() - off.in_db()) => "You took the decibels off one another; take the energies off.";
            "energies added": sum(&[on, off]) => "You added the background; it is in the reading already and has to come out.";
            "not corrected": on => "You left the background in; within 15 dB of the reading it counts.";
            "mean": db((on.in_db() + off.in_db()) / 2.0) => "You took the mean of the two readings; take the energies off one another.";
        },
    }
    .limits("running at least 6 dB over stopped, or the result is an upper bound only; over 15 dB no correction"),
    relation! {
        "noise.running/vibration": "Level with the drive running",
        "noise.running": Level = sum(&[shaken(quiet, risen(v / base, k))?, off]),
        from {
            quiet: Level = "noise.quiet", v: Velocity = "vibrate.velocity", base: Velocity = "vibrate.settled",
            k: Ratio = "vibrate.size", off: Level = "noise.stopped",
        },
        formula ["L = 10 * log10(10^(quiet / 10) * (1 + k[]^2 * ((v / base)^2 - 1)) + 10^(off / 10))"],
        source Derived("radiated energy goes with the square of the vibration velocity; energies add; what a fault adds is taken to sound as loud on a small drive as on a large one"),
        turns {},
    }
    .model(),
    relation! {
        "noise.level_a/beside the drive": "Level at the first place of work, beside the running drive",
        "noise.level_a": Level = on,
        from { on: Level = "noise.running" },
        formula ["L = on"],
        source Derived("the first place of work is beside the drive"),
        turns {},
    }
    .model(),
    relation! {
        "noise.reference_a/exchange": "Time that the first place's level may last",
        "noise.reference_a": Time = reference(l),
        from { l: Level = "noise.level_a" },
        formula ["T[h] = 8 / 2^((l - 90) / 5)"],
        source OSHA_A,
        turns {
            "3 dB and 85": reference_duration(&NIOSH, l) => "You used 85 dB and a halving every 3 dB, which is another rule; this one has 90 dB and 5 dB.";
            "halving every 3": reference_duration(&drivecourse_calc::noise::exposure::Rule { exchange: NIOSH.exchange, ..OSHA }, l) => "You halved the time every 3 dB; this rule halves it every 5 dB.";
            "turned over": reference(db(2.0 * OSHA.criterion - l.in_db())) => "You turned the rule over; a louder place allows less time.";
            "in proportion": Time::new::<time::hour>(8.0 * OSHA.criterion / l.in_db()) => "You took the time in proportion to the decibels; it halves every 5 dB.";
        },
    },
    relation! {
        "noise.reference_b/exchange": "Time that the second place's level may last",
        "noise.reference_b": Time = reference(l),
        from { l: Level = "noise.level_b" },
        formula ["T[h] = 8 / 2^((l - 90) / 5)"],
        source OSHA_A,
        turns {
            "3 dB and 85": reference_duration(&NIOSH, l) => "You used 85 dB and a halving every 3 dB, which is another rule; this one has 90 dB and 5 dB.";
            "halving every 3": reference_duration(&drivecourse_calc::noise::exposure::Rule { exchange: NIOSH.exchange, ..OSHA }, l) => "You halved the time every 3 dB; this rule halves it every 5 dB.";
            "turned over": reference(db(2.0 * OSHA.criterion - l.in_db())) => "You turned the rule over; a louder place allows less time.";
            "in proportion": Time::new::<time::hour>(8.0 * OSHA.criterion / l.in_db()) => "You took the time in proportion to the decibels; it halves every 5 dB.";
        },
    },
    relation! {
        "noise.dose/two spells": "Noise dose of two spells",
        "noise.dose": Ratio = of(la, ca, lb, cb),
        from {
            la: Level = "noise.level_a", ca: Time = "noise.time_a", lb: Level = "noise.level_b", cb: Time = "noise.time_b",
        },
        formula [],
        source OSHA_A,
        turns {
            "one spell": of(la, ca, lb, cb * 0.0) => "You left out the second spell; every spell of the day counts.";
            "spells swapped": of(la, cb, lb, ca) => "You put the times to the wrong levels.";
            "turned over" with { ta: Time = "noise.reference_a", tb: Time = "noise.reference_b" }: plain((ta / ca + tb / cb).value) => "You divided the allowed time by the time spent; turn it over.";
            "averaged": of(la, ca, lb, cb).map(|d| d / 2.0) => "You took the mean of the two shares; add them.";
            "times over times" with { ta: Time = "noise.reference_a", tb: Time = "noise.reference_b" }: plain(((ca + cb) / (ta + tb)).value) => "You added the times before dividing; divide each spell by its own reference duration.";
        },
    }
    .method("each spell's time over the reference duration of its level, added; levels under 80 dB count nothing")
    .limits("half a dose is the action level; a whole dose the most allowed"),
    relation! {
        "noise.dose_verdict/action level": "Verdict on the day's dose",
        "noise.dose_verdict": Choice = stands(d),
        from { d: Ratio = "noise.dose" },
        formula [],
        source Source::published("29 CFR 1910.95", "(b) and (c)(1)"),
        turns {
            "one place only" with { ca: Time = "noise.time_a", ta: Time = "noise.reference_a" }: stands(ca / ta) => "You judged the first place alone; the whole day counts.";
            "action as most": Choice(if d.value > drivecourse_calc::noise::exposure::ACTION_DOSE { 2 } else { 0 }) => "You took half a dose for the most allowed; half a dose begins the action, and a whole one is the most.";
            "most as action": Choice(u16::from(d.value > 1.0)) => "You let the action begin at a whole dose; it begins at half of one.";
        },
    }
    .method("under 50 % no action; from 50 % hearing conservation; over 100 % the noise or the time must come down")
    .limits("without hearing protection; other countries and sites have stricter rules, and those go first"),
    relation! {
        "noise.level_allowed/exchange": "Level that may last the time at the first place of work",
        "noise.level_allowed": Level = level_for(&OSHA, t),
        from { t: Time = "noise.time_a" },
        formula ["L = 90 + 5 * ln(8 / t[h]) / ln(2)"],
        source OSHA_A,
        turns {
            "3 dB and 85": level_for(&NIOSH, t) => "You used 85 dB and a halving every 3 dB, which is another rule; this one has 90 dB and 5 dB.";
            "halving every 3": level_for(&drivecourse_calc::noise::exposure::Rule { exchange: NIOSH.exchange, ..OSHA }, t) => "You halved the time every 3 dB; this rule halves it every 5 dB.";
            "turned over": level_for(&OSHA, t).map(|l| db(2.0 * OSHA.criterion - l.in_db())) => "You took decibels off for a shorter time; a shorter time allows more.";
            "logarithm to ten": db(OSHA.criterion + OSHA.exchange * libm::log10(8.0 / t.get::<time::hour>())) => "You used the logarithm to ten; one halving of the time is 5 dB, and halvings are counted to the base of two.";
            "day of 8 hours": db(OSHA.criterion) => "You gave the level for 8 hours; a shorter time allows more, a longer one less.";
        },
    }
    .limits("one place alone; the rest of the day adds its share")
    .inverse(),
    relation! {
        "noise.average/dose": "Time-weighted average from the dose",
        "noise.average": Level = average(d),
        from { d: Ratio = "noise.dose" },
        formula ["L = 16.61 * log10(d[]) + 90"],
        source OSHA_A,
        turns {
            "10 for 16.61": db(10.0 * libm::log10(d.value) + OSHA.criterion) => "You multiplied by 10; with a halving every 5 dB the factor is 16.61.";
            "per cent": average(d * 100.0) => "You put the percentage in; use it as a share, 100 % being 1.";
            "85 for 90": average(d).map(|l| db(l.in_db() - OSHA.criterion + NIOSH.criterion)) => "You added 85; this rule starts from 90 dB.";
            "90 left out": average(d).map(|l| db(l.in_db() - OSHA.criterion)) => "You left out the 90 dB.";
            "natural logarithm": db(OSHA.average_factor * libm::log(d.value) + OSHA.criterion) => "You used the natural logarithm; the formula takes that to base ten.";
        },
    }
    .limits("over an eight-hour day"),
];
