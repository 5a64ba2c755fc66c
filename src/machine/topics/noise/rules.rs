//! Further rules: the recommended exchange of 3 dB, equal machines, and the background by the standard.

use drivecourse_calc::Error;
use drivecourse_calc::noise::background::{LARGEST, machine_alone, source};
use drivecourse_calc::noise::exposure::{
    Durations, NIOSH, OSHA, Rule, Spell, dose, reference_duration, time_weighted_average,
};
use drivecourse_calc::noise::level::{Level, equal_sources};
use drivecourse_calc::units::{Ratio, Time};

use crate::relation::{Relation, relation};
use crate::source::Source::{self, Derived};
use crate::typed::Choice;

pub(super) const BOUNDS: &[&str] = &["a level", "an upper bound only"];

const CRITERIA: Source =
    Source::published("NIOSH, Criteria for a Recommended Standard: Occupational Noise Exposure", "as quoted");
const BACKGROUND: Source = Source::published("ISO 3744:2010", "8.2.3 (as quoted; the bound from memory)");

fn db(value: f64) -> Level {
    Level::db(value)
}

fn of(rule: &Rule, spells: [(Level, Time); 2]) -> Result<Ratio, Error> {
    dose(rule, &spells.map(|(level, duration)| Spell { level, duration }), Durations::Formula)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "noise.niosh_a/exchange": "Time that the first place's level may last by the recommended rule",
        "noise.niosh_a": Time = reference_duration(&NIOSH, l),
        from { l: Level = "noise.level_a" },
        formula ["T[h] = 8 / 2^((l - 85) / 3)"],
        source CRITERIA,
        turns {
            "5 dB and 90": reference_duration(&OSHA, l) => "You used 90 dB and a halving every 5 dB, which is the rule of the law; the recommended one has 85 dB and 3 dB.";
            "halving every 5": reference_duration(&Rule { exchange: OSHA.exchange, ..NIOSH }, l) => "You halved the time every 5 dB; this rule halves it every 3 dB.";
            "from 90": reference_duration(&Rule { criterion: OSHA.criterion, ..NIOSH }, l) => "You started from 90 dB; this rule allows 85 dB for eight hours.";
            "turned over": reference_duration(&NIOSH, db(2.0 * NIOSH.criterion - l.in_db())) => "You turned the rule over; a louder place allows less time.";
        },
    },
    relation! {
        "noise.niosh_b/exchange": "Time that the second place's level may last by the recommended rule",
        "noise.niosh_b": Time = reference_duration(&NIOSH, l),
        from { l: Level = "noise.level_b" },
        formula ["T[h] = 8 / 2^((l - 85) / 3)"],
        source CRITERIA,
        turns {
            "5 dB and 90": reference_duration(&OSHA, l) => "You used 90 dB and a halving every 5 dB, which is the rule of the law; the recommended one has 85 dB and 3 dB.";
            "halving every 5": reference_duration(&Rule { exchange: OSHA.exchange, ..NIOSH }, l) => "You halved the time every 5 dB; this rule halves it every 3 dB.";
            "from 90": reference_duration(&Rule { criterion: OSHA.criterion, ..NIOSH }, l) => "You started from 90 dB; this rule allows 85 dB for eight hours.";
        },
    },
    relation! {
        "noise.niosh_dose/two spells": "Noise dose of two spells by the recommended rule",
        "noise.niosh_dose": Ratio = of(&NIOSH, [(la, ca), (lb, cb)]),
        from {
            la: Level = "noise.level_a", ca: Time = "noise.time_a", lb: Level = "noise.level_b", cb: Time = "noise.time_b",
        },
        formula [],
        source CRITERIA,
        turns {
            "rule of the law": of(&OSHA, [(la, ca), (lb, cb)]) => "You used the rule of the law, 90 dB and 5 dB; the recommended one has 85 dB and 3 dB and comes out stricter.";
            "one spell": of(&NIOSH, [(la, ca), (lb, cb * 0.0)]) => "You left out the second spell; every spell of the day counts.";
            "spells swapped": of(&NIOSH, [(la, cb), (lb, ca)]) => "You put the times to the wrong levels.";
            "averaged": of(&NIOSH, [(la, ca), (lb, cb)]).map(|d| d / 2.0) => "You took the mean of the two shares; add them.";
        },
    }
    .method("each spell's time over the time its level may last by 85 dB and 3 dB, added; levels under 80 dB count nothing")
    .limits("a whole dose is the most recommended"),
    relation! {
        "noise.niosh_average/dose": "Time-weighted average by the recommended rule",
        "noise.niosh_average": Level = time_weighted_average(&NIOSH, d),
        from { d: Ratio = "noise.niosh_dose" },
        formula ["L = 10 * log10(d[]) + 85"],
        source CRITERIA,
        turns {
            "16.61 for 10": db(OSHA.average_factor * libm::log10(d.value) + NIOSH.criterion) => "You multiplied by 16.61; with a halving every 3 dB the factor is 10.";
            "90 for 85": time_weighted_average(&NIOSH, d).map(|l| db(l.in_db() - NIOSH.criterion + OSHA.criterion)) => "You added 90; this rule starts from 85 dB.";
            "rule of the law": time_weighted_average(&OSHA, d) => "You used the formula of the law's rule with this rule's dose; a dose and its average belong to one rule.";
            "natural logarithm": db(NIOSH.average_factor * libm::log(d.value) + NIOSH.criterion) => "You used the natural logarithm; the formula takes that to base ten.";
        },
    }
    .limits("over an eight-hour day"),
    relation! {
        "noise.equal_sum/count": "Level of some equal machines together",
        "noise.equal_sum": Level = equal_sources(one, count),
        from { one: Level = "noise.source_1", count: u32 = "noise.equal_count" },
        formula ["L = one + 10 * log10(count)"],
        source Derived("sound energies add; a level is ten times the logarithm of an energy"),
        turns {
            "multiplied": db(one.in_db() * f64::from(count)) => "You multiplied the decibels; multiply the energies, so that two equal machines make 3 dB more.";
            "3 dB each": db(one.in_db() + 3.0 * f64::from(count - 1)) => "You added 3 dB for every further machine; 3 dB come with each doubling of their number.";
            "20 for 10": db(one.in_db() + 20.0 * libm::log10(f64::from(count))) => "You put 20 before the logarithm, as for pressures; separate machines add as energies.";
            "the same": one => "You gave the level of one; together they are louder.";
        },
    },
    relation! {
        "noise.drive_by_standard/rule": "Level of the drive alone by the standard's rule",
        "noise.drive_by_standard": Level = machine_alone(on, off).map(|found| found.level),
        from { on: Level = "noise.running", off: Level = "noise.stopped" },
        formula [],
        source BACKGROUND,
        turns {
            "decibels taken off": db(on.in_db() - off.in_db()) => "You took the decibels off one another; take the energies off.";
            "not corrected": on => "You left the background in; within 15 dB of the reading it counts.";
            "largest always": db(on.in_db() - LARGEST) => "You took 1.3 dB off whatever the difference; that is for differences below 6 dB.";
            "energies below the bound": source(on, off) => "You took the energies off one another although they lie within 6 dB; the standard stops at 1.3 dB there.";
        },
    }
    .method("Difference over 15 dB: no correction. From 6 to 15 dB: energies taken off one another. Below 6 dB: 1.3 dB off, and the result is an upper bound only."),
    relation! {
        "noise.drive_quality/difference": "What the level of the drive alone is worth",
        "noise.drive_quality": Choice = machine_alone(on, off).map(|found| Choice(u16::from(found.upper_bound))),
        from { on: Level = "noise.running", off: Level = "noise.stopped" },
        formula [],
        source BACKGROUND,
        turns {
            "15 for 6": Choice(u16::from(on.in_db() - off.in_db() <= 15.0)) => "You drew the line at 15 dB; down to 6 dB the background can be taken out.";
            "always good": Choice(0) => "You called it a level although the background is within 6 dB; then it is an upper bound only.";
        },
    }
    .method("An upper bound only where running is less than 6 dB over stopped."),
];
