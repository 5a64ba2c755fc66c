//! Follow-up: the calendar of checks, and a baseline with its limits.

use drivecourse_calc::follow_up::check_ages::Check;
use drivecourse_calc::units::{Time, time};
use drivecourse_machine::{Registry, Typed};

use super::{Board, PortrayError};
use crate::figures::{Across, BaselineChart, Calendar, CalendarRow, Figure, Logged};

const SETTLED: [&str; 4] = ["follow.rise_1", "follow.rise_2", "follow.rise_3", "follow.rise_4"];
const LATER: [&str; 2] = ["follow.rise_5", "follow.rise_6"];

/// Each check with its name, and where its last and next age stand.
const CHECKS: [(&str, Check, &str, &str); 5] = [
    ("temperature, vibration, noise", Check::Temperature, "follow.reading_last", "follow.reading_due"),
    ("oil level", Check::OilLevel, "follow.level_last", "follow.level_due"),
    ("bolts", Check::Bolts, "follow.bolts_last", "follow.bolts_due"),
    ("chain", Check::ChainTension, "follow.chain_last", "follow.chain_due"),
    ("soft foot", Check::SoftFoot, "follow.foot_last", "follow.foot_due"),
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
            title: "A settled rise and its limits".into(),
            value_name: format!("Rise over ambient, {}", unit.symbol),
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
            name: name.into(),
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
            title: "When each check is due".into(),
            rows: rows.into(),
            now: now.map(|(age, label)| (age, format!("now {label}"))),
        }
        .draw(),
    )
}
