//! Follow-up: the calendar of checks, and a baseline with its limits.

use drivecourse_calc::follow_up::check_ages::Check;
use drivecourse_calc::units::{Time, time};
use drivecourse_machine::{Registry, Typed};

use super::{Board, PortrayError};
use crate::figures::{Across, BaselineChart, Calendar, CalendarRow, Figure, Logged};
use drivecourse_machine::language::Message;
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    TEMPERATURE = "follow-pictures-temperature", "temperature, vibration, noise";
    OIL = "follow-pictures-oil", "oil level";
    BOLTS = "follow-pictures-bolts", "bolts";
    CHAIN = "follow-pictures-chain", "chain";
    FOOT = "follow-pictures-foot", "soft foot";
    BASELINE = "follow-pictures-baseline", "A settled rise and its limits";
    RISE = "follow-pictures-rise", "Rise over ambient, {unit}";
    DUE = "follow-pictures-due", "When each check is due";
    NOW = "follow-pictures-now", "now {age}";
} }

const SETTLED: [&str; 4] = ["follow.rise_1", "follow.rise_2", "follow.rise_3", "follow.rise_4"];
const LATER: [&str; 2] = ["follow.rise_5", "follow.rise_6"];

/// Each check with its name, and where its last and next age stand.
const CHECKS: [(Message, Check, &str, &str); 5] = [
    (TEMPERATURE, Check::Temperature, "follow.reading_last", "follow.reading_due"),
    (OIL, Check::OilLevel, "follow.level_last", "follow.level_due"),
    (BOLTS, Check::Bolts, "follow.bolts_last", "follow.bolts_due"),
    (CHAIN, Check::ChainTension, "follow.chain_last", "follow.chain_due"),
    (FOOT, Check::SoftFoot, "follow.foot_last", "follow.foot_due"),
];

pub(super) fn baseline_chart(board: &Board<'_>) -> Result<Figure, PortrayError> {
    let missing = PortrayError::Missing { picture: board.picture, quantity: SETTLED[0] };
    let unit = Registry::get().find(SETTLED[0]).map(|id| id.get().unit(board.system())).ok_or(missing)?;
    let logged = |quantity: &&str| Logged {
        value: board.value(quantity).filter(|_| board.tells(quantity)).map(|base| unit.from_base(base)),
        label: board.label(quantity).filter(|_| board.tells(quantity)),
    };
    let (settled, mut later) =
        (SETTLED.iter().map(logged).collect::<Vec<_>>(), Vec::from_iter(LATER.iter().map(logged)));
    if settled.iter().chain(&later).all(|reading| reading.value.is_none()) {
        // Where the machine has readings, it is the question that does not show them.
        board.need(SETTLED[0])?;
        return Err(PortrayError::NothingShown { picture: board.picture, quantity: SETTLED[0] });
    }
    if later.iter().all(|reading| reading.value.is_none()) {
        later.clear();
    }
    let across = |quantity: &str| {
        let value = board.value(quantity).filter(|_| board.tells(quantity))?;
        Some(Across { value: unit.from_base(value), label: board.label(quantity)? })
    };
    board.finish(
        BaselineChart {
            id: board.id(),
            title: BASELINE.text().into(),
            value_name: RISE.say(&[("unit", unit.symbol)]),
            settled,
            later,
            mean: across("follow.rise_mean"),
            upper: across("follow.rise_upper"),
            lower: across("follow.rise_lower"),
        }
        .draw(),
    )
}

pub(super) fn calendar(board: &Board<'_>) -> Result<Figure, PortrayError> {
    board.need("follow.age")?;
    let hours = |quantity: &str| board.value(quantity).map(|base| Time::from_base(base).get::<time::hour>());
    let rows = CHECKS.map(|(name, check, last, next)| {
        CalendarRow {
            name: name.text().into(),
            ages: check.ages_in_hours().to_vec(),
            locked_out: check.needs_lock_out(),
            // Filled marks would show the next age where that is asked.
            last: hours(last).filter(|_| board.tells(last) && !board.asks(next)),
            last_label: board.label(last),
            next_label: board.label(next),
        }
    });
    let now = hours("follow.age").zip(board.label("follow.age").filter(|_| board.tells("follow.age")));
    board.finish(
        Calendar {
            id: board.id(),
            title: DUE.text().into(),
            rows: rows.into(),
            now: now.map(|(age, label)| (age, NOW.say(&[("age", &label)]))),
        }
        .draw(),
    )
}
