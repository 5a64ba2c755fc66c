//! ISO 3448 grades: the band of a grade, the grade of a sample, and the grade to choose.

use drivecourse_calc::Error;
use drivecourse_calc::oil::choice::{thinnest_grade, viscosity_at};
use drivecourse_calc::oil::grade::{self, Grade, Place, place};
use drivecourse_calc::units::{KinematicViscosity, Ratio, Temperature, kinematic_viscosity};

use crate::Source;
use crate::relation::{Relation, relation};
use crate::source::Source::CommonPractice;
use crate::typed::Choice;

/// The grades of the calculation crate, in its order; a test holds the two together.
pub(super) const GRADES: &[&str] = &[
    "ISO VG 2",
    "ISO VG 3",
    "ISO VG 5",
    "ISO VG 7",
    "ISO VG 10",
    "ISO VG 15",
    "ISO VG 22",
    "ISO VG 32",
    "ISO VG 46",
    "ISO VG 68",
    "ISO VG 100",
    "ISO VG 150",
    "ISO VG 220",
    "ISO VG 320",
    "ISO VG 460",
    "ISO VG 680",
    "ISO VG 1000",
    "ISO VG 1500",
    "ISO VG 2200",
    "ISO VG 3200",
];

/// The same, and that an oil may belong to none.
pub(super) const SAMPLE_GRADES: &[&str] = &[
    "ISO VG 2",
    "ISO VG 3",
    "ISO VG 5",
    "ISO VG 7",
    "ISO VG 10",
    "ISO VG 15",
    "ISO VG 22",
    "ISO VG 32",
    "ISO VG 46",
    "ISO VG 68",
    "ISO VG 100",
    "ISO VG 150",
    "ISO VG 220",
    "ISO VG 320",
    "ISO VG 460",
    "ISO VG 680",
    "ISO VG 1000",
    "ISO VG 1500",
    "ISO VG 2200",
    "ISO VG 3200",
    "no grade",
];

const NO_GRADE: usize = SAMPLE_GRADES.len() - 1;

pub(super) const VERDICTS: &[&str] = &["right grade", "too thin", "too thick", "no grade"];

const ISO_3448: Source = Source::published("ISO 3448", "grades, limits 10 % either side of the middle");

/// The grade of a choice.
pub(super) fn graded(choice: Choice) -> Result<&'static Grade, Error> {
    grade::ALL.get(usize::from(choice.0)).ok_or(Error::none("viscosity grade"))
}

fn choice(place: usize) -> Choice {
    // There are far fewer than 65 536 grades.
    Choice(u16::try_from(place).unwrap_or(u16::MAX))
}

fn at(grade: &Grade) -> Choice {
    choice(grade::ALL.iter().position(|other| other == grade).unwrap_or(NO_GRADE))
}

/// The grade of an oil by its viscosity at 40 °C, or none.
fn graded_sample(v: KinematicViscosity) -> Result<Choice, Error> {
    Ok(match place(v)? {
        Place::In(grade) => at(grade),
        Place::Between(..) => choice(NO_GRADE),
    })
}

/// The first grade whose middle is as large as `v`: the label read as if the oil ran at 40 °C.
fn label_from(v: KinematicViscosity) -> Result<Choice, Error> {
    let found = grade::ALL.iter().find(|grade| grade.middle() >= v);
    found.map(at).ok_or(Error::none("viscosity grade"))
}

/// The grade whose middle is nearest to `v`: every oil forced into a grade.
fn nearest(v: KinematicViscosity) -> Choice {
    let distance = |grade: &Grade| (grade.middle() - v).abs().value;
    let found = grade::ALL.iter().enumerate().min_by(|a, b| distance(a.1).total_cmp(&distance(b.1)));
    choice(found.map_or(NO_GRADE, |(index, _)| index))
}

/// The next grade thinner.
fn thinner(grade: &Grade) -> Choice {
    choice(usize::from(at(grade).0).saturating_sub(1))
}

fn against(sample: Choice, plate: Choice) -> Choice {
    Choice(if usize::from(sample.0) == NO_GRADE {
        3
    } else {
        match sample.0.cmp(&plate.0) {
            core::cmp::Ordering::Equal => 0,
            core::cmp::Ordering::Less => 1,
            core::cmp::Ordering::Greater => 2,
        }
    })
}

fn ten() -> KinematicViscosity {
    KinematicViscosity::new::<kinematic_viscosity::centistokes>(10.0)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "oil.band_least/ISO 3448": "Least viscosity of a grade",
        "oil.band_least": KinematicViscosity = graded(g).map(Grade::least),
        from { g: Choice = "oil.plate_grade" },
        formula [],
        source ISO_3448,
        turns {
            "the number itself": graded(g).map(Grade::middle) => "You gave the middle of the band; a grade reaches 10 % under it.";
            "5 %": graded(g).map(|grade| grade.middle() * 0.95) => "You took 5 % off; a grade reaches 10 % under its middle.";
            "10 mm²/s": graded(g).map(|grade| grade.middle() - ten()) => "You took 10 mm²/s (10 cSt) off; it is 10 per cent of the middle.";
            "the greatest": graded(g).map(Grade::greatest) => "You gave the upper end of the band; the lower one is asked.";
            "divided by 1.1": graded(g).map(|grade| grade.middle() / 1.1) => "You divided by 1.1; ten per cent under is 0.9 times the middle.";
        },
    }
    .method("Ten per cent under the middle of the band, which is the grade's number (2.2, 3.2, 4.6 and 6.8 for VG 2, 3, 5 and 7).")
    .limits("at 40 °C (104 °F); the end belongs to the grade; VG 2200 and 3200 are from memory")
    .lookup(),
    relation! {
        "oil.band_most/ISO 3448": "Greatest viscosity of a grade",
        "oil.band_most": KinematicViscosity = graded(g).map(Grade::greatest),
        from { g: Choice = "oil.plate_grade" },
        formula [],
        source ISO_3448,
        turns {
            "the number itself": graded(g).map(Grade::middle) => "You gave the middle of the band; a grade reaches 10 % over it.";
            "5 %": graded(g).map(|grade| grade.middle() * 1.05) => "You added 5 %; a grade reaches 10 % over its middle.";
            "10 mm²/s": graded(g).map(|grade| grade.middle() + ten()) => "You added 10 mm²/s (10 cSt); it is 10 per cent of the middle.";
            "the least": graded(g).map(Grade::least) => "You gave the lower end of the band; the upper one is asked.";
        },
    }
    .method("Ten per cent over the middle of the band, which is the grade's number (2.2, 3.2, 4.6 and 6.8 for VG 2, 3, 5 and 7).")
    .limits("at 40 °C (104 °F); the end belongs to the grade; VG 2200 and 3200 are from memory")
    .lookup(),
    relation! {
        "oil.sample_grade/ISO 3448": "Grade of a sample",
        "oil.sample_grade": Choice = graded_sample(v),
        from { v: KinematicViscosity = "oil.sample_40" },
        formula [],
        source ISO_3448,
        turns {
            "nearest": nearest(v) => "You took the nearest grade; the bands do not touch, and what lies between two of them belongs to none.";
            "rounded up": label_from(v) => "You took the first grade whose number is as large; a grade reaches 10 % either side of its number.";
            "at 100 °C" with { v100: KinematicViscosity = "oil.sample_100" }: nearest(v100) => "You looked up the viscosity at 100 °C (212 °F); grades go by the viscosity at 40 °C (104 °F).";
            "at running temperature" with { vt: KinematicViscosity = "oil.running" }: nearest(vt) => "You looked up the viscosity at running temperature; grades go by the viscosity at 40 °C (104 °F).";
        },
    }
    .method("The grade whose band, 10 % either side of its number, holds the viscosity at 40 °C (104 °F); no grade if none does.")
    .limits("the bands do not touch: an oil may belong to no grade")
    .lookup(),
    relation! {
        "oil.grade_verdict/plate": "Verdict on the oil that was filled",
        "oil.grade_verdict": Choice = against(s, p),
        from { s: Choice = "oil.sample_grade", p: Choice = "oil.plate_grade" },
        formula [],
        source CommonPractice,
        turns {
            "nearest grade" with { v: KinematicViscosity = "oil.sample_40" }: against(nearest(v), p) => "You forced the sample into the nearest grade; it belongs to none.";
            "running temperature" with { v: KinematicViscosity = "oil.running" }: against(nearest(v), p) => "You held the viscosity at running temperature against the plate's grade; grades go by 40 °C (104 °F).";
            "turned round": against(p, s) => "You mixed up thin and thick; the larger number is the thicker oil.";
        },
    }
    .method("Compare the grade of the sample with the grade on the plate; a sample in no band is no grade.")
    .limits("the plate or the manual rules; an oil in no band may be a mixture, or have changed in use"),
    relation! {
        "oil.chosen_grade/thinnest that serves": "Grade for a running temperature",
        "oil.chosen_grade": Choice = thinnest_grade(v, t, vi).map(at),
        from {
            v: KinematicViscosity = "oil.wanted_least", t: Temperature = "heat.housing", vi: Ratio = "oil.index",
        },
        formula [],
        source CommonPractice,
        turns {
            "at 40 °C": label_from(v) => "You chose as if the oil ran at 40 °C (104 °F); the viscosity is wanted at running temperature, where the oil is much thinner than its number.";
            "one too thin": thinnest_grade(v, t, vi).map(thinner) => "You took the next grade thinner; at running temperature it does not reach the least viscosity.";
            "ambient" with { a: Temperature = "heat.ambient" }: thinnest_grade(v, a, vi).map(at) => "You chose for the ambient temperature; the oil runs as warm as the housing.";
            "index 0": thinnest_grade(v, t, vi * 0.0).map(at) => "You chose for the steepest oil there is, index 0; take the line of the index on the data sheet.";
            "at 100 °C": grade::ALL.iter().find(|grade| viscosity_at(grade, vi, super::celsius(100.0)).is_ok_and(|at_100| at_100 >= v)).map(at).ok_or(Error::none("viscosity grade")) => "You chose as if the oil ran at 100 °C (212 °F); it does not run that hot.";
        },
    }
    .method("On the viscosity chart, the line of each grade at the oil's index, read at running temperature: the first grade that is still as thick as wanted.")
    .limits("the maker's table goes first; check that the oil still flows at the coldest start")
    .question()
    .lookup(),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_choices_are_the_grades_of_the_calculation() {
        let names: Vec<_> = grade::ALL.iter().map(|grade| format!("ISO VG {}", grade.number())).collect();
        assert_eq!(GRADES, names);
        assert_eq!(SAMPLE_GRADES.split_last(), Some((&"no grade", GRADES)));
        for index in 0..GRADES.len() {
            assert_eq!(at(graded(choice(index)).unwrap()), choice(index));
        }
        assert!(graded(choice(NO_GRADE)).is_err());
    }
}
