//! Grades as tables for spreadsheets.

use std::collections::BTreeSet;

use super::Graded;
use crate::response::table::Writer;

/// A row for each part of each paper.
pub fn parts_csv(graded: &Graded) -> String {
    let mut out = Writer::new(&[
        "paper",
        "candidate",
        "name",
        "question",
        "part",
        "item",
        "skill",
        "answer",
        "read_as",
        "verdict",
        "earned",
        "of",
        "expected",
        "tolerance",
        "says",
        "causes",
    ]);
    for paper in &graded.candidates {
        for question in &paper.questions {
            for part in &question.parts {
                out.row(&[
                    &paper.code.to_string(),
                    &paper.candidate.id,
                    &paper.candidate.name,
                    &question.number.to_string(),
                    &part.part.to_string(),
                    &question.item,
                    &question.skill,
                    &part.answer,
                    &part.read_as,
                    part.verdict.name(),
                    &part.earned.to_string(),
                    &part.of.to_string(),
                    &part.expected,
                    &part.tolerance,
                    &part.says,
                    &part.causes.join("; "),
                ]);
            }
        }
    }
    out.finish()
}

/// A row for each paper, with a column for each skill.
pub fn candidates_csv(graded: &Graded) -> String {
    let skills: BTreeSet<&str> =
        graded.candidates.iter().flat_map(|paper| &paper.skills).map(|mark| mark.skill.as_str()).collect();
    let mut headings = vec![
        "candidate",
        "name",
        "group",
        "paper",
        "sitting",
        "present",
        "earned",
        "of",
        "share",
        "passed",
        "safety_missed",
        "says",
    ];
    headings.extend(&skills);
    let mut out = Writer::new(&headings);
    let yes = |yes: bool| if yes { "yes" } else { "no" }.to_owned();
    for paper in &graded.candidates {
        let missed: Vec<String> = paper.safety_missed.iter().map(usize::to_string).collect();
        let mut row = vec![
            paper.candidate.id.clone(),
            paper.candidate.name.clone(),
            paper.candidate.group.clone().unwrap_or_default(),
            paper.code.to_string(),
            paper.sitting.to_string(),
            yes(paper.present),
            paper.earned.to_string(),
            paper.of.to_string(),
            format!("{:.4}", paper.share),
            yes(paper.passed),
            missed.join(" "),
            paper.says.clone(),
        ];
        row.extend(skills.iter().map(|skill| {
            let mark = paper.skills.iter().find(|mark| mark.skill == *skill);
            // Not 3/4: a spreadsheet makes a date of it.
            mark.map_or_else(String::new, |mark| format!("{} of {}", mark.earned, mark.of))
        }));
        out.row(&row);
    }
    out.finish()
}
