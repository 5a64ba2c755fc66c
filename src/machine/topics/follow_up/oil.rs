//! Oil changes: by running hours or by the calendar, whichever comes first.

use drivecourse_calc::Error;
use drivecourse_calc::follow_up::oil_change::{HOT, Interval, USUAL, interval, is_due, time_to_change};
use drivecourse_calc::units::{Ratio, Temperature, Time};

use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice, Derived};
use crate::typed::Choice;

const MANUAL: Source = Source::published("US Army, TM 5-3895-374-24-2", "lubrication of a gear unit, p. 3-1280");

/// Hours of a day.
const DAY: f64 = 24.0 * 3600.0;

fn change(running: Time, calendar: Time, share: Ratio) -> Result<Time, Error> {
    time_to_change(&Interval { running, calendar }, share)
}

fn due(running: Time, calendar: Time, run: Time, elapsed: Time) -> Result<Choice, Error> {
    is_due(&Interval { running, calendar }, run, elapsed).map(|due| Choice(u16::from(due)))
}

fn part(hours: Time) -> Ratio {
    Ratio { dimension: core::marker::PhantomData, units: core::marker::PhantomData, value: hours.value / DAY }
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "follow.run_share/hours a day": "Share of the time that the drive runs",
        "follow.run_share": Ratio = part(hours),
        from { hours: Time = "follow.hours_a_day" },
        formula ["s[] = hours[h] / 24"],
        source Derived("a day has 24 h"),
        turns {
            "standing": part(hours) * 0.0 + (Ratio::from(1.0) - part(hours)) => "You gave the share of the time that it stands.";
            "of a shift": part(hours) * 3.0 => "You took it of a shift of 8 h; the calendar counts all 24.";
        },
    },
    relation! {
        "follow.first_change/first of two clocks": "When the oil of a new unit is changed first",
        "follow.first_change": Time = change(running, calendar, share),
        from {
            running: Time = "follow.first_running", calendar: Time = "follow.first_calendar",
            share: Ratio = "follow.run_share",
        },
        formula ["t[d] = min(calendar[d], running[d] / share[])"],
        source Derived("whichever comes first"),
        turns {
            "running hours on the calendar": running.min(calendar) => "You took running hours for hours of the calendar; the drive does not run all the time.";
            "later of the two": running / share.max(Ratio::from(1e-6)) + calendar - change(running, calendar, share)? => "You took the later of the two; whichever comes first counts.";
            "running hours alone": running / share => "You went by the running hours alone; the calendar may be quicker, for oil ages while it stands, too.";
            "calendar alone": calendar => "You went by the calendar alone; the running hours may be used up sooner.";
            "multiplied": running * share => "You multiplied by the share; a drive that runs less takes longer to reach its running hours.";
            "usual change" with { later: Time = "follow.usual_running" }: later / share => "You took the hours of the later changes; the first one comes much sooner and carries the wear of the run-in away.";
        },
    }
    .limits("the maker's figures go first; 500 running hours or four weeks are common practice"),
    relation! {
        "follow.usual_calendar/sump temperature": "Calendar time between later oil changes",
        "follow.usual_calendar": Time = interval(sump).map(|both| both.calendar),
        from { sump: Temperature = "heat.housing" },
        formula [],
        source MANUAL,
        turns {
            "hot for any": HOT.1 => "You took the interval of a hot sump; it holds over 93 °C (200 °F).";
            "shortest": HOT.0 => "You took one month; that is for the hottest sumps.";
            "usual for any": USUAL.calendar => "You took six months for any temperature; a hot sump is changed sooner.";
        },
    }
    .method("Six months, or three months where the sump settles above 93 °C (200 °F). Six months are 182.6 days.")
    .lookup(),
    relation! {
        "follow.next_change/first of two clocks": "When the oil is changed after that",
        "follow.next_change": Time = change(running, calendar, share),
        from {
            running: Time = "follow.usual_running", calendar: Time = "follow.usual_calendar",
            share: Ratio = "follow.run_share",
        },
        formula ["t[d] = min(calendar[d], running[d] / share[])"],
        source MANUAL,
        turns {
            "running hours on the calendar": running.min(calendar) => "You took running hours for hours of the calendar; the drive does not run all the time.";
            "later of the two": running / share + calendar - change(running, calendar, share)? => "You took the later of the two; whichever comes first counts.";
            "multiplied": running * share => "You multiplied by the share; a drive that runs less takes longer to reach its running hours.";
            "first change" with { r: Time = "follow.first_running", c: Time = "follow.first_calendar" }: change(r, c, share) => "You took the figures of the first change; the later ones are farther apart.";
        },
    },
    relation! {
        "follow.oil_hours/hours a day": "Running hours since the oil went in",
        "follow.oil_hours": Time = days * share.value,
        from { days: Time = "follow.oil_days", share: Ratio = "follow.run_share" },
        formula ["t[h] = 24 * days[d] * share[]"],
        source Derived("a day has 24 h"),
        turns {
            "calendar hours": days => "You gave the hours of the calendar; the drive runs only its share of them.";
            "divided": days / share => "You divided by the share; it runs less than the calendar, so multiply.";
        },
    },
    relation! {
        "follow.change_verdict/either clock": "Verdict on the first oil change",
        "follow.change_verdict": Choice = due(running, calendar, run, elapsed),
        from {
            running: Time = "follow.first_running", calendar: Time = "follow.first_calendar",
            run: Time = "follow.oil_hours", elapsed: Time = "follow.oil_days",
        },
        formula [],
        source CommonPractice,
        turns {
            "both clocks": Choice(u16::from(run >= running && elapsed >= calendar)) => "You waited for both clocks; the first that runs out counts.";
            "running hours alone": Choice(u16::from(run >= running)) => "You went by the running hours alone; the calendar has its say, too.";
            "calendar alone": Choice(u16::from(elapsed >= calendar)) => "You went by the calendar alone; the running hours have their say, too.";
            "calendar hours as running": Choice(u16::from(elapsed >= running || elapsed >= calendar)) => "You counted the hours of the calendar as running hours.";
            "usual change" with { later: Time = "follow.usual_running" }: Choice(u16::from(run >= later)) => "You held it against the hours of the later changes; the first one comes much sooner.";
        },
    }
    .method("Due as soon as either the running time or the calendar time since the oil went in is used up."),
];
