//! When each check falls due: intervals that grow with the age of the drive.

use drivecourse_calc::Error;
use drivecourse_calc::follow_up::check_ages::Check;
use drivecourse_calc::follow_up::schedule::{expanding_ages, next_due, time_left};
use drivecourse_calc::units::{Ratio, Time};

use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};

const SERIES: crate::Source = Derived("sum of a geometric series; growing intervals are common practice, no source");

/// The ages listed for a check, and its last one repeated far enough for every turn.
fn listed(check: Check, upto: Time) -> Result<Vec<Time>, Error> {
    let mut ages = vec![Time::default()];
    while ages[ages.len() - 1] <= upto {
        ages.push(next_due(check, ages[ages.len() - 1])?);
    }
    Ok(ages)
}

/// The row of the plan that a check at `last` belongs to.
fn before(check: Check, last: Time) -> Result<Time, Error> {
    let ages = listed(check, last)?;
    Ok(ages[ages.len() - 2])
}

fn after_next(check: Check, last: Time) -> Result<Time, Error> {
    next_due(check, next_due(check, last)?)
}

/// The plan's interval counted from the last check instead of from the row it belongs to.
fn shifted(check: Check, last: Time) -> Result<Time, Error> {
    Ok(last + (next_due(check, last)? - before(check, last)?))
}

/// How many of the five are due at an age.
fn due(now: Time, ages: [Time; 5]) -> u32 {
    ages.iter().filter(|age| **age <= now).count() as u32
}

/// The age at the `number`-th check.
fn age(first: Time, factor: Ratio, number: u32) -> Result<Time, Error> {
    let ages = expanding_ages(first, factor, number)?;
    ages.last().copied().ok_or(Error::none("check"))
}

/// The interval before the `number`-th check.
fn interval(first: Time, factor: Ratio, number: u32) -> Result<Time, Error> {
    let ages = expanding_ages(first, factor, number)?;
    match ages[..] {
        [.., before, last] => Ok(last - before),
        [only] => Ok(only),
        [] => Err(Error::none("check")),
    }
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "follow.reading_due/plan": "Age at which the next readings are due",
        "follow.reading_due": Time = next_due(Check::Temperature, last),
        from { last: Time = "follow.reading_last" },
        formula [],
        source CommonPractice,
        turns {
            "counted from the last check": shifted(Check::Temperature, last) => "You added the interval to the age at the last check; the plan goes by the age of the drive, and a late check does not shift it.";
            "one row on": after_next(Check::Temperature, last) => "You went one row too far in the plan; the first age after the last check is the one.";
            "row of the last": before(Check::Temperature, last) => "You gave the row that the last check belonged to; the next one is due at the age after it.";
            "another check's plan": next_due(Check::ChainTension, last) => "You read the plan of the chain; every check has its own.";
        },
    }
    .method("The first age in the plan after the last check: 1 h, 2 h, 4 h, 8 h, 1 day, 3 days, 1 week, 2 weeks, 4 weeks and 8 weeks, counted from the first start; after that its last interval repeats.")
    .lookup(),
    relation! {
        "follow.level_due/plan": "Age at which the next oil level check is due",
        "follow.level_due": Time = next_due(Check::OilLevel, last),
        from { last: Time = "follow.level_last" },
        formula [],
        source CommonPractice,
        turns {
            "counted from the last check": shifted(Check::OilLevel, last) => "You added the interval to the age at the last check; the plan goes by the age of the drive, and a late check does not shift it.";
            "one row on": after_next(Check::OilLevel, last) => "You went one row too far in the plan; the first age after the last check is the one.";
            "row of the last": before(Check::OilLevel, last) => "You gave the row that the last check belonged to; the next one is due at the age after it.";
            "another check's plan": next_due(Check::SoftFoot, last) => "You read the plan of soft foot; every check has its own.";
        },
    }
    .method("The first age in the plan after the last check: 8 h, 1 day, 3 days, 1 week, 2 weeks and 4 weeks, counted from the first start; after that its last interval repeats.")
    .lookup(),
    relation! {
        "follow.bolts_due/plan": "Age at which the next bolt check is due",
        "follow.bolts_due": Time = next_due(Check::Bolts, last),
        from { last: Time = "follow.bolts_last" },
        formula [],
        source CommonPractice,
        turns {
            "counted from the last check": shifted(Check::Bolts, last) => "You added the interval to the age at the last check; the plan goes by the age of the drive, and a late check does not shift it.";
            "one row on": after_next(Check::Bolts, last) => "You went one row too far in the plan; the first age after the last check is the one.";
            "row of the last": before(Check::Bolts, last) => "You gave the row that the last check belonged to; the next one is due at the age after it.";
            "another check's plan": next_due(Check::ChainTension, last) => "You read the plan of the chain; every check has its own.";
        },
    }
    .method("The first age in the plan after the last check: 8 h, 3 days, 1 week, 4 weeks and 12 weeks, counted from the first start; after that its last interval repeats.")
    .lookup(),
    relation! {
        "follow.chain_due/plan": "Age at which the next chain check is due",
        "follow.chain_due": Time = next_due(Check::ChainTension, last),
        from { last: Time = "follow.chain_last" },
        formula [],
        source CommonPractice,
        turns {
            "counted from the last check": shifted(Check::ChainTension, last) => "You added the interval to the age at the last check; the plan goes by the age of the drive, and a late check does not shift it.";
            "one row on": after_next(Check::ChainTension, last) => "You went one row too far in the plan; the first age after the last check is the one.";
            "row of the last": before(Check::ChainTension, last) => "You gave the row that the last check belonged to; the next one is due at the age after it.";
            "another check's plan": next_due(Check::Bolts, last) => "You read the plan of the bolts; every check has its own.";
        },
    }
    .method("The first age in the plan after the last check: 8 h, 1 day, 3 days, 1 week, 2 weeks, 4 weeks and 8 weeks, counted from the first start; after that its last interval repeats.")
    .lookup(),
    relation! {
        "follow.foot_due/plan": "Age at which the next soft-foot check is due",
        "follow.foot_due": Time = next_due(Check::SoftFoot, last),
        from { last: Time = "follow.foot_last" },
        formula [],
        source CommonPractice,
        turns {
            "counted from the last check": shifted(Check::SoftFoot, last) => "You added the interval to the age at the last check; the plan goes by the age of the drive, and a late check does not shift it.";
            "one row on": after_next(Check::SoftFoot, last) => "You went one row too far in the plan; the first age after the last check is the one.";
            "row of the last": before(Check::SoftFoot, last) => "You gave the row that the last check belonged to; the next one is due at the age after it.";
            "another check's plan": next_due(Check::ChainTension, last) => "You read the plan of the chain; every check has its own.";
        },
    }
    .method("The first age in the plan after the last check: 3 days, 2 weeks, 8 weeks and 26 weeks, counted from the first start; after that its last interval repeats.")
    .lookup(),
    relation! {
        "follow.due_count/ages": "How many of the five checks are due now",
        "follow.due_count": u32 = due(now, [reading, level, bolts, chain, foot]),
        from {
            now: Time = "follow.age", reading: Time = "follow.reading_due", level: Time = "follow.level_due",
            bolts: Time = "follow.bolts_due", chain: Time = "follow.chain_due", foot: Time = "follow.foot_due",
        },
        formula [],
        source CommonPractice,
        turns {
            "those not due": 5 - due(now, [reading, level, bolts, chain, foot]) => "You counted the checks that are not due yet.";
            "readings left out": due(now, [now * 2.0, level, bolts, chain, foot]) => "You left the readings out; temperature, vibration and noise are a check, too.";
            "soft foot left out": due(now, [reading, level, bolts, chain, now * 2.0]) => "You left soft foot out; it has a row of its own in the plan.";
        },
    }
    .method("A check is due when the drive has reached the age at which its next one is due."),
    relation! {
        "follow.chain_left/plan": "Time left until the next chain check",
        "follow.chain_left": Time = time_left(Check::ChainTension, last, now),
        from { last: Time = "follow.chain_last", now: Time = "follow.age" },
        formula [],
        source CommonPractice,
        turns {
            "age when due": next_due(Check::ChainTension, last) => "You gave the age at which it is due; what is left is that less the age now.";
            "from the last check": next_due(Check::ChainTension, last).map(|due| due - last) => "You took the age at the last check off; the drive has run on since.";
            "since the last check": now - last => "You gave the time since the last check.";
            "counted from the last check": shifted(Check::ChainTension, last).map(|due| due - now) => "You added the interval to the age at the last check; the plan goes by the age of the drive.";
        },
    }
    .method("The age at which the next chain check is due, less the age now; nought when it is overdue.")
    .lookup(),
    relation! {
        "follow.interval/growing": "Interval before a check",
        "follow.interval": Time = interval(first, factor, number),
        from { first: Time = "follow.first_interval", factor: Ratio = "follow.growth", number: u32 = "follow.number" },
        formula ["i = first * factor^(number - 1)"],
        source SERIES,
        turns {
            "one too many": interval(first, factor, number + 1) => "You let the interval grow once too often; the first check comes after the first interval as it is.";
            "one too few": interval(first, factor, number.saturating_sub(1).max(1)) => "You let the interval grow once too seldom.";
            "not growing": first => "You gave the first interval; each one after it is longer by the factor.";
            "added": first * (1.0 + (factor.value - 1.0) * f64::from(number - 1)) => "You let it grow by the same step each time; each interval is the one before it times the factor.";
            "age": age(first, factor, number) => "You gave the age at the check; the interval before it is asked.";
        },
    },
    relation! {
        "follow.check_age/series": "Age at a check when the intervals grow",
        "follow.check_age": Time = age(first, factor, number),
        from { first: Time = "follow.first_interval", factor: Ratio = "follow.growth", number: u32 = "follow.number" },
        formula ["t = first * (factor^number - 1) / (factor - 1)"],
        source SERIES,
        turns {
            "interval for age": interval(first, factor, number) => "You gave the interval before that check; the age is all intervals up to it together.";
            "even intervals": first * f64::from(number) => "You kept the intervals equal; each one is the one before it times the factor.";
            "one check on": age(first, factor, number + 1) => "You counted one check too many.";
            "one check back": age(first, factor, number.saturating_sub(1).max(1)) => "You counted one check too few.";
            "power only": first * drivecourse_calc::math::pow(factor.value, f64::from(number)) => "You multiplied the first interval up and did not add the intervals before.";
        },
    }
    .limits("a factor greater than 1"),
];
