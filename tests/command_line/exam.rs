//! Exams for the tests: a roster of fourteen, a module with one item, and its answers.

use serde_json::Value;

use crate::{Place, Ran, plain};

/// Fourteen invented people, half of them in each system of units, one as the blueprint has it.
pub(crate) fn roster() -> String {
    let mut out = String::from("id,name,group,units\n");
    let names = "Ada Brenn,Bo Carrow,Cy Dunmore,Di Eskel,Ed Farrant,Flo Garnow,Gus Hallick,Hal Inskip,Ida Jorrit,\
                 Jo Kessary,Kit Lorne,Lou Mabbot,May Norrick,Ned Orchard";
    for (place, name) in names.split(',').enumerate() {
        let units = ["si", "us"][place % 2];
        out.push_str(&format!("p{:02},{name},{},{}\n", place + 1, "day", if place == 13 { "" } else { units }));
    }
    out
}

/// Makes the exam `folder` of the built-in course.
pub(crate) fn make(place: &Place, folder: &str) -> Ran {
    place.write("roster.csv", roster());
    place.run(&[
        "papers",
        "--roster",
        "roster.csv",
        "--secret",
        "secret",
        "--out",
        folder,
        "--plant",
        "Invented Mill",
        "--screen",
    ])
}

/// An answer of the response file.
#[derive(Debug, Clone)]
pub(crate) struct Row {
    pub(crate) paper: String,
    pub(crate) candidate: String,
    pub(crate) question: String,
    pub(crate) part: String,
    pub(crate) asked: String,
    pub(crate) answer: String,
}

/// The rows of a response file; none has a line break in it.
pub(crate) fn rows(text: &str) -> Vec<Row> {
    text.trim_start_matches('\u{feff}')
        .lines()
        .skip(1)
        .map(|line| {
            let mut cells = vec![String::new()];
            let mut quoted = false;
            for c in line.trim_end_matches('\r').chars() {
                match c {
                    // A doubled mark closes and opens again; the mark itself is of no matter here.
                    '"' => quoted = !quoted,
                    ',' if !quoted => cells.push(String::new()),
                    _ => cells.last_mut().unwrap().push(c),
                }
            }
            let [paper, candidate, question, part, asked, answer] = cells.try_into().unwrap();
            Row { paper, candidate, question, part, asked, answer }
        })
        .collect()
}

/// A response file with these rows, quoted throughout as some spreadsheets do.
pub(crate) fn csv(rows: &[Row]) -> String {
    let mut out = String::from("paper,candidate,question,part,asked,answer\r\n");
    for row in rows {
        let cells = [&row.paper, &row.candidate, &row.question, &row.part, &row.asked, &row.answer];
        let cells: Vec<_> = cells.iter().map(|cell| format!("\"{}\"", cell.replace('"', "\"\""))).collect();
        out.push_str(&format!("{}\r\n", cells.join(",")));
    }
    out
}

/// Grades and reads the JSON.
pub(crate) fn graded(place: &Place, arguments: &[&str]) -> Value {
    let all: Vec<&str> = ["grade"].iter().chain(arguments).chain(&["--json"]).copied().collect();
    serde_json::from_str(&place.run(&all).done()).unwrap()
}

/// Every graded part with its paper's code and the number of its question.
pub(crate) fn parts(graded: &Value) -> Vec<(String, String, &Value)> {
    let mut out = Vec::new();
    for paper in graded["candidates"].as_array().unwrap() {
        for question in paper["questions"].as_array().unwrap() {
            for part in question["parts"].as_array().unwrap() {
                out.push((paper["code"].as_str().unwrap().into(), question["number"].to_string(), part));
            }
        }
    }
    out
}

/// Fills every row with the right answer.
pub(crate) fn fill(rows: &mut [Row], graded: &Value) {
    for (code, number, part) in parts(graded) {
        let row = rows
            .iter_mut()
            .find(|row| row.paper == code && row.question == number && row.part == part["part"].as_str().unwrap());
        row.unwrap().answer = expected(part);
    }
}

/// The right answer as an apprentice writes it: of a choice among statements, the letter.
pub(crate) fn expected(part: &Value) -> String {
    let expected = plain(part["expected"].as_str().unwrap());
    match expected.split_once(": ") {
        Some((letter, _)) if letter.len() == 1 => letter.to_owned(),
        _ => expected,
    }
}

/// A module with one item of two parts, the second from the answer to the first; an exam `small` of it, for two people.
pub(crate) fn small(place: &Place) {
    place.module("plant");
    std::fs::remove_dir_all(place.path("plant/scenarios/items")).unwrap();
    place.write("plant/scenarios/items/steps.toml", ITEM);
    place.write("plant/scenarios/exams/small.toml", EXAM);
    place.write("two.csv", "id,name,units\na1,Ada Brenn,si\nb2,Bo Carrow,si\n");
    let made = ["papers", "--module", "plant", "--exam", "small", "--roster", "two.csv"];
    place.run(&[&made[..], &["--secret", "secret", "--out", "exam"]].concat()).done();
}

const ITEM: &str = r#"
[[item]]
id = "two-steps"
topic = "drive"
skill = "steps"
title = "Two steps"
text = "The {machine} runs."

[[item.part]]
text = "How fast does the output shaft turn? |{drive.motor_speed}|{drive.ratio}|"
ask = "drive.output_speed"
from = ["drive.motor_speed", "drive.ratio"]

[[item.part]]
text = "What torque stands on the output shaft? |{drive.power}|{drive.efficiency}|"
ask = "drive.output_torque"
from = ["drive.power", "drive.efficiency", "drive.output_speed"]
marks = 2
"#;

const EXAM: &str = r#"
title = "Two steps"
minutes = 10
pass = "60 %"
units = "si"
no_safety = true

[[row]]
skill = "steps"
count = 1
"#;
