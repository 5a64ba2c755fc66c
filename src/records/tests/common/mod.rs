//! Graded papers made up for the tests.

#![allow(dead_code)]

use drivecourse_quiz::grade::{GradedPaper, GradedPart, GradedQuestion, outcome};
use drivecourse_quiz::{Code, Person, Verdict};
use drivecourse_records::{Date, Sitting};

pub(crate) fn date(text: &str) -> Date {
    Date::read(text).unwrap()
}

/// A sitting of the exam `exam`, passed with 70 %, good for twelve months.
pub(crate) fn sitting(exam: &str, sat: &str) -> Sitting {
    Sitting {
        digest: format!("digest of {exam} {sat}"),
        exam: exam.into(),
        title: format!("The {exam}"),
        pass: 0.7,
        months: Some(12),
        language: None,
        sat: date(sat),
        recorded: date(sat),
        correction: None,
        renamed: Vec::new(),
    }
}

/// A paper whose questions of one part are right where `right` has a `1`, wrong for a known reason where it has a `w`,
/// else blank. The first question is about safety; two marks each; items in turn over two families.
pub(crate) fn paper(number: u64, id: &str, name: &str, right: &str) -> GradedPaper {
    let questions: Vec<GradedQuestion> =
        right.chars().enumerate().map(|(place, c)| question(number, place, c)).collect();
    let earned = questions.iter().map(|q| q.earned).sum();
    let of = questions.iter().map(|q| q.of).sum();
    let safety_missed: Vec<usize> =
        questions.iter().filter(|q| q.safety && q.earned < q.of).map(|q| q.number).collect();
    let out = outcome(!right.is_empty(), earned, of, 0.7, &safety_missed);
    GradedPaper {
        candidate: Person {
            id: id.into(),
            name: name.into(),
            group: Some("day".into()),
            units: None,
            large_print: false,
        },
        code: Code::new(number),
        sitting: 1,
        present: !right.is_empty(),
        earned,
        of,
        share: out.share,
        passed: out.passed,
        safety_missed,
        says: out.says,
        skills: Vec::new(),
        questions,
    }
}

fn question(number: u64, place: usize, c: char) -> GradedQuestion {
    let right = c == '1';
    let wrong = c == 'w';
    let earned = if right { 2 } else { 0 };
    GradedQuestion {
        number: place + 1,
        item: format!("item-{place}"),
        family: if (number + place as u64).is_multiple_of(2) { "belt" } else { "mixer" }.into(),
        title: format!("Item {place}"),
        topic: "chain".into(),
        skill: if place == 0 { "safe-work" } else { ["sag", "length"][place % 2] }.into(),
        safety: place == 0,
        earned,
        of: 2,
        parts: vec![GradedPart {
            part: 'a',
            asked: "How much?".into(),
            answer: if right {
                "1 mm"
            } else if wrong {
                "8 mm"
            } else {
                ""
            }
            .into(),
            steps: String::new(),
            verdict: if right {
                Verdict::Right
            } else if wrong {
                Verdict::Wrong
            } else {
                Verdict::Blank
            },
            earned,
            of: 2,
            read_as: if right {
                "1 mm"
            } else if wrong {
                "8 mm"
            } else {
                ""
            }
            .into(),
            may_mean: String::new(),
            expected: "1 mm".into(),
            tolerance: "± 0.1 mm".into(),
            says: if wrong { "You left out the 8." } else { "" }.into(),
            causes: if wrong { vec!["sag: missing eighth".into()] } else { Vec::new() },
            because: if wrong { "You left out the 8." } else { "" }.into(),
        }],
    }
}
