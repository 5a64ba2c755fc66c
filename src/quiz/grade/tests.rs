use super::*;
use crate::mark::mark;
use crate::paper::tests::{BLUEPRINT, bank, draw};
use crate::response::{Template, template};
use drivecourse_machine::System;

/// The template of `papers`, filled in by `answer`.
fn filled(papers: &[Paper], mut answer: impl FnMut(&Paper, usize, usize) -> String) -> String {
    let mut lines = vec!["paper;question;part;answer".to_owned()];
    for paper in papers {
        for (place, placed) in paper.questions.iter().enumerate() {
            for part in 0..placed.question.parts.len() {
                let text = answer(paper, place, part).replace('"', "\"\"");
                lines.push(format!("{};{};{};\"{text}\"", paper.code, place + 1, part_letter(part)));
            }
        }
    }
    lines.join("\n")
}

fn key(paper: &Paper, place: usize, part: usize) -> String {
    let question = &paper.questions[place].question;
    question.parts[part].right_answer(question.system)
}

fn graded(exam: &Exam, settings: &Settings, csv: &str) -> Graded {
    let mut responses = Responses::new(exam);
    responses.add("answers.csv", csv.as_bytes());
    assert_eq!(responses.notices, []);
    grade(exam, settings, &responses, 2).unwrap()
}

#[test]
fn the_key_gets_every_mark_and_blanks_get_none() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let (exam, papers) = draw(&bank, &blueprint, 12, 1);
    let settings = exam.settings(&bank);
    let all = graded(&exam, &settings, &filled(&papers, key));
    for (paper, graded) in papers.iter().zip(&all.candidates) {
        assert_eq!((graded.earned, graded.of), (paper.marks, paper.marks), "{graded:#?}");
        assert!(graded.passed && graded.safety_missed.is_empty() && graded.says.starts_with("Passed"));
        let skills: u32 = graded.skills.iter().map(|skill| skill.earned).sum();
        assert_eq!(skills, graded.earned);
    }
    assert!(all.items.iter().all(|item| item.facility == 1.0 && item.discrimination.is_none()));
    let none = graded(&exam, &settings, &filled(&papers, |_, _, _| " ".into()));
    assert!(none.candidates.iter().all(|paper| paper.earned == 0 && !paper.passed && !paper.present));
    assert!(none.candidates[0].questions[0].parts.iter().all(|part| part.verdict == Verdict::Blank));
    assert_eq!(none.causes, []);
}

#[test]
fn an_untouched_template_is_nothing_handed_in() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let (exam, papers) = draw(&bank, &blueprint, 2, 1);
    let settings = exam.settings(&bank);
    let untouched = graded(&exam, &settings, &template(&papers));
    assert!(untouched.candidates.iter().all(|paper| !paper.present && paper.says == "Nothing was handed in."));
    let all = graded(&exam, &settings, &filled(&papers[..1], |_, _, _| "-1".into()));
    assert!(all.candidates[0].present && !all.candidates[1].present);
    assert_eq!(all.candidates[1].says, "Nothing was handed in.");
    assert_eq!(all.items.iter().map(|item| item.asked).sum::<usize>(), 5, "absent papers do not count");
    let mut template = Template::new(false);
    template.add(&papers[0]);
    assert_eq!(template.finish(), crate::response::template(&papers[..1]));
}

#[test]
fn a_missed_safety_question_fails_the_paper_whatever_the_score() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let (exam, papers) = draw(&bank, &blueprint, 12, 1);
    let settings = exam.settings(&bank);
    let miss = |paper: &Paper, place: usize, part: usize| {
        if paper.questions[place].item.safety { String::new() } else { key(paper, place, part) }
    };
    for paper in graded(&exam, &settings, &filled(&papers, miss)).candidates {
        assert!(paper.share >= 0.7 && !paper.passed, "{}", paper.says);
        assert_eq!(paper.safety_missed, [5]);
        assert!(paper.says.contains("Safety question 5 missed; this alone decides"), "{}", paper.says);
    }
}

#[test]
fn a_letter_and_a_statement_that_disagree_earn_nothing() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let (_, papers) = draw(&bank, &blueprint, 12, 1);
    let placed = papers.iter().flat_map(|paper| &paper.questions).find(|placed| placed.item.id == "run-bare").unwrap();
    let right = placed.question.parts[0].right_answer(System::Si);
    assert_eq!(mark(&placed.question, &[&right])[0].verdict, Verdict::Right);
    let other = if right.starts_with('A') { "B" } else { "A" };
    assert_eq!(mark(&placed.question, &[&format!("{other}{}", &right[1..])])[0].verdict, Verdict::Unreadable);
}

#[test]
fn wrong_turns_are_named_and_carried_errors_credited() {
    let row = ("skill = \"soft-foot\"\ncount = 2", "item = \"twist-gap\"\ncount = 1");
    let (bank, blueprint) = (bank(), Blueprint::read(&BLUEPRINT.replacen(row.0, row.1, 1)).unwrap());
    let (exam, papers) = draw(&bank, &blueprint, 40, 1);
    let settings = exam.settings(&bank);
    // The twist is halved; everything after is right from there.
    let halved = |paper: &Paper, place: usize, part: usize| {
        let question = &paper.questions[place].question;
        let half = |part: usize| question.parts[part].key().unwrap().value / 2.0;
        match (question.item.as_str(), part) {
            ("twist-gap", 0) => format!("{:.5} mm", half(0) * 1e3),
            ("twist-gap", 1) => format!("{:.5} mm", half(0).abs() * 1e3),
            _ => key(paper, place, part),
        }
    };
    let all = graded(&exam, &settings, &filled(&papers, halved));
    let questions: Vec<&GradedQuestion> =
        all.candidates.iter().flat_map(|paper| &paper.questions).filter(|q| q.item == "twist-gap").collect();
    assert!(questions.len() > 10);
    for question in &questions {
        assert_eq!(question.parts[0].verdict, Verdict::Wrong);
        assert_eq!(question.parts[0].causes, ["mount.twist/diagonals: halved"]);
        assert!(question.parts[0].says.contains("halved"), "{}", question.parts[0].says);
        assert_eq!((question.parts[1].verdict, question.parts[1].earned), (Verdict::Carried, 1));
        assert!(question.parts[1].says.contains("not charged twice"));
        assert_eq!((question.earned, question.of), (2, 4));
    }
    assert_eq!(all.causes[0].name, "mount.twist/diagonals: halved");
    assert_eq!(all.causes[0].count, questions.len());
    let item = all.items.iter().find(|item| item.item == "twist-gap").unwrap();
    assert_eq!((item.facility, item.carried), (0.5, questions.len()));
}

#[test]
fn exports_are_the_same_bytes_and_neutral_to_spreadsheets() {
    let (bank, blueprint) = (bank(), Blueprint::read(BLUEPRINT).unwrap());
    let (exam, papers) = draw(&bank, &blueprint, 12, 1);
    let settings = exam.settings(&bank);
    let csv = filled(&papers, |_, _, _| "=HYPERLINK(\"x\")".into());
    let (first, second) = (graded(&exam, &settings, &csv), graded(&exam, &settings, &csv));
    assert_eq!(parts_csv(&first), parts_csv(&second));
    assert_eq!(first.json(), second.json());
    assert!(!parts_csv(&first).contains(",=") && !parts_csv(&first).contains(",\"="));
    assert!(parts_csv(&first).contains("\"'=HYPERLINK"));
    assert_eq!(candidates_csv(&first).lines().count(), 13);
    let json: serde_json::Value = serde_json::from_str(&first.json()).unwrap();
    assert_eq!(json["candidates"][0]["questions"][0]["parts"][0]["verdict"], "unreadable");
    assert_eq!(json["candidates"].as_array().unwrap().len(), 12);
}
