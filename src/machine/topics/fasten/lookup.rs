//! What tables say of a bolt: size, stress area, proof stress, nut factor.

use core::f64::consts::FRAC_PI_4;

use drivecourse_calc::Error;
use drivecourse_calc::fasten::grades::{self, Family, Strength};
use drivecourse_calc::fasten::nut_factors::{DRY, LUBRICATED, SHIGLEY};
use drivecourse_calc::fasten::thread_sizes::{self, Series, Thread};
use drivecourse_calc::units::{Area, Length, Pressure, Ratio, pressure};

use crate::relation::{Relation, relation};
use crate::source::Source;
use crate::source::Source::CommonPractice;
use crate::typed::Choice;

const DIAMETERS: Source = Source::published("ANSI B1.1 and ISO 261", "nominal diameters");
const PITCHES: Source =
    Source::published("ANSI B1.1 and ISO 261", "threads per inch and coarse pitches (metric ones from memory)");
const AREAS: Source = Source::published(
    "R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design; ISO 898-1",
    "Table 8-2; stress area of the thread",
);
const STRENGTHS: Source =
    Source::published("SAE J429; ISO 898-1:1999", "proof stress (class 8.8 up to 16 mm from memory)");

/// The threads as they are written, in the calculation's own order.
pub(super) const THREADS: [&str; thread_sizes::ALL.len()] = {
    let mut names = [""; thread_sizes::ALL.len()];
    let mut at = 0;
    while at < names.len() {
        names[at] = thread_sizes::ALL[at].designation;
        at += 1;
    }
    names
};

/// Grades of SAE J429 and classes of ISO 898-1. The order is stored in files by index: append, never reorder.
pub(super) const GRADES: &[&str] = &[
    "grade 1",
    "grade 2",
    "grade 4",
    "grade 5",
    "grade 5.2",
    "grade 7",
    "grade 8",
    "grade 8.2",
    "class 4.6",
    "class 4.8",
    "class 5.8",
    "class 8.8",
    "class 9.8",
    "class 10.9",
    "class 12.9",
];

const NO_GRADE: Error = Error::none("bolt grade");

pub(super) fn thread(choice: Choice) -> Result<&'static Thread, Error> {
    thread_sizes::ALL.get(usize::from(choice.0)).ok_or(Error::none("thread"))
}

/// The family of grades and the mark on the head.
fn mark(grade: Choice) -> Result<(Family, &'static str), Error> {
    let label = GRADES.get(usize::from(grade.0)).ok_or(NO_GRADE)?;
    let sae = label.strip_prefix("grade ").map(|mark| (Family::Sae, mark));
    sae.or_else(|| label.strip_prefix("class ").map(|mark| (Family::Iso, mark))).ok_or(NO_GRADE)
}

/// Strength of a bolt; inch threads are made in grades, metric ones in classes, and anything else is refused.
pub(super) fn strength(size: Choice, grade: Choice) -> Result<&'static Strength, Error> {
    let (thread, (family, mark)) = (thread(size)?, mark(grade)?);
    let metric = thread.series == Series::MetricCoarse;
    if metric != (family == Family::Iso) {
        return Err(NO_GRADE);
    }
    grades::strength(family, mark, thread.diameter)
}

/// Proof stress of the grade of the other family whose mark looks alike.
fn look_alike(size: Choice, grade: Choice) -> Result<Pressure, Error> {
    let (family, other) = match mark(grade)? {
        (Family::Sae, "5" | "5.2") => (Family::Iso, "5.8"),
        (Family::Sae, "8" | "8.2") => (Family::Iso, "8.8"),
        (Family::Sae, "4") => (Family::Iso, "4.8"),
        (Family::Iso, "4.6" | "4.8") => (Family::Sae, "4"),
        (Family::Iso, "5.8") => (Family::Sae, "5"),
        (Family::Iso, "8.8") => (Family::Sae, "8"),
        _ => return Err(NO_GRADE),
    };
    Ok(grades::strength(family, other, thread(size)?.diameter)?.proof)
}

/// Proof stress of the neighbour a bolt is mixed up with when its head is misread.
pub(super) fn neighbour(size: Choice, grade: Choice, stronger: bool) -> Result<Pressure, Error> {
    let (family, mark) = mark(grade)?;
    let common: &[&str] = match family {
        Family::Sae => &["2", "5", "8"],
        Family::Iso => &["4.6", "8.8", "10.9", "12.9"],
    };
    let at = common.iter().position(|other| *other == mark).ok_or(NO_GRADE)?;
    let other = if stronger { Some(at + 1) } else { at.checked_sub(1) };
    let other = other.and_then(|at| common.get(at)).ok_or(NO_GRADE)?;
    Ok(grades::strength(family, other, thread(size)?.diameter)?.proof)
}

/// Proof stress of the same grade's row for the other sizes.
fn other_row(size: Choice, grade: Choice) -> Result<Pressure, Error> {
    let right = strength(size, grade)?;
    let other = |row: &&Strength| row.family == right.family && row.grade == right.grade && *row != right;
    grades::ALL.iter().find(other).map(|row| row.proof).ok_or(NO_GRADE)
}

/// What the two numbers of a class multiply to: the nominal yield strength.
fn class_product(grade: Choice) -> Result<Pressure, Error> {
    let (family, mark) = mark(grade)?;
    let (first, second) = mark.split_once('.').filter(|_| family == Family::Iso).ok_or(NO_GRADE)?;
    let number = |text: &str| crate::decimal::value(text, 0).ok_or(NO_GRADE);
    Ok(Pressure::new::<pressure::megapascal>(number(first)? * number(second)? * 10.0))
}

pub(super) fn whole_area(size: Choice) -> Result<Area, Error> {
    let d = thread(size)?.diameter;
    Ok(d * d * FRAC_PI_4)
}

/// The unified thread of the same diameter and the other series.
fn fine_for_coarse(size: Choice) -> Result<&'static Thread, Error> {
    let own = thread(size)?;
    let twin = |other: &&Thread| {
        other.diameter == own.diameter && other.series != own.series && own.series != Series::MetricCoarse
    };
    thread_sizes::ALL.iter().find(twin).ok_or(Error::none("thread"))
}

/// Section at the bottom of the thread (minor diameter d − 1.0825 P of the basic profile).
fn root_area(size: Choice) -> Result<Area, Error> {
    let thread = thread(size)?;
    let d = thread.diameter - thread.pitch * 1.082_5;
    Ok(d * d * FRAC_PI_4)
}

pub(super) fn factor(lubrication: Choice) -> Result<Ratio, Error> {
    match lubrication.0 {
        0 => Ok(DRY),
        1 => Ok(LUBRICATED),
        other => Err(Error::outside("lubrication", f64::from(other), 0.0, 1.0)),
    }
}

/// The other of the two states.
pub(super) fn other_state(lubrication: Choice) -> Choice {
    Choice(1 - lubrication.0.min(1))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "fasten.bolt_dia/thread": "Nominal diameter of the bolt",
        "fasten.bolt_dia": Length = thread(size).map(|thread| thread.diameter),
        from { size: Choice = "fasten.thread" },
        formula [],
        source DIAMETERS,
        turns {
            "radius": thread(size).map(|thread| thread.diameter / 2.0) => "You gave the radius; the nominal diameter is the size that the thread is called by.";
            "across flats": thread(size).map(|thread| thread.diameter * 1.5) => "You gave the width across the flats of the head; the bolt is called by the diameter over its thread.";
            "pitch": thread(size).map(|thread| thread.pitch) => "You gave the pitch; the diameter is the first figure of the thread's name.";
        },
    }
    .lookup()
    .method("The first figure of the thread's name: 3/4-10 is 3/4 in, M20 is 20 mm."),
    relation! {
        "fasten.pitch/thread": "Pitch of the bolt's thread",
        "fasten.pitch": Length = thread(size).map(|thread| thread.pitch),
        from { size: Choice = "fasten.thread" },
        formula [],
        source PITCHES,
        turns {
            "other series": fine_for_coarse(size).map(|thread| thread.pitch) => "You took the pitch of the other series; coarse and fine threads of one diameter have different pitches.";
            "double thread": thread(size).map(|thread| thread.pitch * 2.0) => "You took two pitches; a bolt has a single thread and moves on one pitch a turn.";
        },
    }
    .lookup()
    .method("An inch thread's name ends in its threads per inch: the pitch is one inch over it. A metric coarse pitch is looked up."),
    relation! {
        "fasten.stress_area/thread": "Tensile stress area of the bolt",
        "fasten.stress_area": Area = thread(size)?.stress_area(),
        from { size: Choice = "fasten.thread" },
        formula [],
        source AREAS,
        turns {
            "whole area": whole_area(size) => "You took the whole area of the shank; the thread is cut out of it, so use the tensile stress area.";
            "root area": root_area(size) => "You took the area at the bottom of the thread; the tensile stress area is somewhat greater.";
            "radius": thread(size)?.stress_area().map(|area| area / 4.0) => "You put the radius where the formula wants the diameter, so the area came out a quarter.";
            "other series": fine_for_coarse(size)?.stress_area() => "You took the other series; a fine thread has more area than a coarse one of the same diameter.";
        },
    }
    .lookup()
    .method("Look the thread up, or work out π/4 (d − 0.9743 P)² for inch threads and π/4 (d − 0.9382 P)² for metric ones."),
    relation! {
        "fasten.proof/grade": "Proof stress of the bolt",
        "fasten.proof": Pressure = strength(size, grade).map(|row| row.proof),
        from { grade: Choice = "fasten.grade", size: Choice = "fasten.thread" },
        formula [],
        source STRENGTHS,
        turns {
            "tensile strength": strength(size, grade).map(|row| row.tensile) => "You took the tensile strength, at which the bolt breaks; the proof stress is what it bears without lasting stretch.";
            "yield strength": strength(size, grade)?.yielding.ok_or(NO_GRADE) => "You took the yield strength; the proof stress stands in a column of its own and is lower.";
            "nominal yield of the class": class_product(grade) => "You multiplied the two numbers of the class; that is the nominal yield strength, and the proof stress is lower.";
            "other family": look_alike(size, grade) => "You mixed up inch grades and metric classes; grade 8 and class 8.8 are not the same steel.";
            "stronger bolt": neighbour(size, grade, true) => "You read the proof stress of a stronger bolt; check the marks on the head against the table.";
            "weaker bolt": neighbour(size, grade, false) => "You read the proof stress of a weaker bolt; check the marks on the head against the table.";
            "row of other sizes": other_row(size, grade) => "You took the row for other sizes; the same grade is weaker or stronger by its diameter.";
        },
    }
    .lookup()
    .method("Look up the mark on the head and the row for the bolt's diameter, in the column of the proof stress.")
    .limits("inch threads carry grades, metric threads carry property classes; an unmarked bolt is taken as the lowest"),
    relation! {
        "fasten.nut_factor/lubrication": "Nut factor of the bolt as it is fitted",
        "fasten.nut_factor": Ratio = factor(state),
        from { state: Choice = "fasten.lubrication" },
        formula [],
        source CommonPractice,
        turns {
            "other state": factor(other_state(state)) => "You took the nut factor of the other state; a lubricated bolt needs less torque for the same pull than a dry one.";
            "unplated black bolt": SHIGLEY[0].k => "You took the nut factor of an unplated black bolt, 0.30; the two values used here are 0.20 dry and 0.15 lubricated.";
        },
    }
    .lookup()
    .method("0.20 for a dry bolt, 0.15 for a lubricated one.")
    .limits("friction scatters by a quarter either way; a maker's own value goes first"),
];
