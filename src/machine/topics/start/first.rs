//! The first start: which way the shafts turn, and whether the drive may be started at all.

use drivecourse_calc::Error;
use drivecourse_calc::start_up::rotation::{Way, through};

use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice, Derived};
use crate::typed::Choice;

pub(super) const WAYS: &[&str] = &["clockwise", "anticlockwise"];
pub(super) const PHASES: &[&str] = &["right", "two swapped"];
pub(super) const ROTATION: &[&str] = &["right way round", "wrong way round"];
pub(super) const GUARDS: &[&str] = &["all fastened", "one missing"];
pub(super) const READY: &[&str] = &["may be started", "not to be started"];

const GEARS: Source = Derived("two gears that roll on one another turn opposite ways");
const SAME_SIDE: &str = "parallel shafts; both seen from the sprocket's side";
/// The right one of every verdict here: guards fastened, oil between the marks, right way round.
const FINE: Choice = Choice(0);

fn way(choice: Choice) -> Way {
    if choice == FINE { Way::Clockwise } else { Way::Anticlockwise }
}

fn chosen(way: Way) -> Choice {
    Choice(u16::from(way == Way::Anticlockwise))
}

fn geared(wanted: Choice, stages: u32) -> Result<Choice, Error> {
    through(way(wanted), stages).map(chosen)
}

fn other(choice: Choice) -> Choice {
    chosen(way(choice).reversed())
}

fn same(one: Choice, two: Choice) -> Choice {
    Choice(u16::from(one != two))
}

/// Only when everything is fine.
fn ready<const N: usize>(states: [Choice; N]) -> Choice {
    Choice(u16::from(states.iter().any(|state| *state != FINE)))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "start.motor_way/stages": "Way the motor must turn",
        "start.motor_way": Choice = geared(w, k),
        from { w: Choice = "start.wanted_way", k: u32 = "drive.stages" },
        formula [],
        source GEARS,
        turns {
            "gears left out": w => "You let the way pass through the gears unchanged; every pair of gears turns it round, and only an even number of stages leaves it as it was.";
            "turned round once": other(w) => "You turned the way round once for the whole reducer; every pair of gears turns it round.";
            "one stage too few": geared(w, k.saturating_sub(1).max(1)) => "You counted one pair of gears too few; every stage is a pair.";
        },
    }
    .method("turn the way round once for every stage: an odd number of stages turns it round, an even number leaves it")
    .limits(SAME_SIDE),
    relation! {
        "start.bumped_way/phases": "Way the motor turns with its lines so connected",
        "start.bumped_way": Choice = if p == FINE { m } else { other(m) },
        from { m: Choice = "start.motor_way", p: Choice = "start.phases" },
        formula [],
        source CommonPractice,
        turns {},
    }
    .method("two swapped supply lines turn a three-phase motor round")
    .model(),
    relation! {
        "start.rotation_verdict/bump": "Verdict on the rotation",
        "start.rotation_verdict": Choice = same(b, m),
        from { b: Choice = "start.bumped_way", m: Choice = "start.motor_way" },
        formula [],
        source CommonPractice,
        turns {
            "output shaft" with { w: Choice = "start.wanted_way" }: same(b, w) => "You held the motor against the way the output shaft must turn; between them are the gears.";
            "seen from the other side": same(other(b), m) => "You looked from the other side; seen from there every shaft turns the other way.";
        },
    }
    .method("the motor's way at the bump held against the way it must turn")
    .limits(SAME_SIDE),
    relation! {
        "start.ready_verdict/guards, oil and rotation": "Verdict on the first start under load",
        "start.ready_verdict": Choice = ready([g, o, r]),
        from {
            g: Choice = "start.guards", o: Choice = "oil.level_verdict", r: Choice = "start.rotation_verdict",
        },
        formula [],
        source CommonPractice,
        turns {
            "guards left out": ready([o, r]) => "You left the guards out; nothing is started with a guard missing, not for a minute.";
            "oil left out": ready([g, r]) => "You left the oil out; a reducer that starts without its oil is spoilt in minutes, and an overfull one runs hot.";
            "rotation left out": ready([g, o]) => "You left the rotation out; the wrong way round breaks a backstop, or moves the load where nobody expects it.";
        },
    }
    .method("started only if all three are right: guards all fastened, oil between the marks, right way round")
    .limits("people clear and told besides, locks off by those who put them on; whoever is in charge gives the word"),
];
