//! `grade`: what is handed in, what it earns, and what is refused.

use serde_json::{Value, json};

use crate::exam::{Row, csv, expected, fill, graded, make, parts, rows, small};
use crate::{Place, plain, tree};

#[test]
fn right_answers_earn_all_marks_from_csv_and_json() {
    let place = Place::new();
    make(&place, "exam").done();
    let mut answers = rows(&place.text("exam/responses.csv"));
    let blank = graded(&place, &["exam", "exam/responses.csv", "--out", "blank"]);
    assert!(parts(&blank).iter().all(|(_, _, part)| part["verdict"] == "blank" && part["earned"] == 0));
    fill(&mut answers, &blank);
    assert!(answers.iter().all(|row| !row.answer.is_empty()), "the response file has a row for every part");

    place.write("filled.csv", csv(&answers));
    let full = graded(&place, &["exam", "filled.csv"]);
    for (code, number, part) in parts(&full) {
        assert_eq!(part["verdict"], "right", "paper {code}, question {number}: {part:#}");
        assert_eq!(part["earned"], part["of"]);
    }
    for paper in full["candidates"].as_array().unwrap() {
        assert_eq!((&paper["passed"], &paper["earned"]), (&json!(true), &paper["of"]), "{}", paper["says"]);
    }
    for name in ["results.html", "results.json", "candidates.csv", "parts.csv"] {
        assert!(place.text(&format!("exam/results/{name}")).len() > 200, "{name}");
    }
    assert_eq!(tree(&place.path("exam/results/candidates")).len(), 14);
    assert_eq!(serde_json::from_str::<Value>(&place.text("exam/results/results.json")).unwrap(), full);
    let table = place.text("exam/results/candidates.csv");
    assert_eq!(table.lines().count(), 15, "{table}");

    // Again, and from JSON: the same bytes.
    let first = tree(&place.path("exam/results"));
    let said = place.run(&["grade", "exam", "filled.csv"]).done();
    assert!(said.contains("Ada Brenn") && said.contains("exam/results/results.html"), "{said}");
    assert!(first == tree(&place.path("exam/results")));
    let list: Vec<_> = (answers.iter())
        .map(|row| json!({"paper": row.paper, "question": row.question, "part": row.part, "answer": row.answer}))
        .collect();
    place.write("filled.json", Value::from(list).to_string());
    place.run(&["grade", "exam/exam.json", "filled.json", "--out", "from-json"]).done();
    assert!(first == tree(&place.path("from-json")));
}

/// Ada's and Bo's rows of the small exam, answered right.
fn answered(place: &Place) -> Vec<Row> {
    let mut answers = rows(&place.text("exam/responses.csv"));
    fill(&mut answers, &graded(place, &["exam", "exam/responses.csv", "--module", "plant", "--out", "blank"]));
    answers
}

fn small_graded(place: &Place, answers: &[Row]) -> Value {
    place.write("filled.csv", csv(answers));
    graded(place, &["exam", "filled.csv", "--module", "plant"])
}

#[test]
fn slips_are_named_and_charged_once() {
    let place = Place::new();
    small(&place);
    let mut answers = answered(&place);
    // Ada loses the decimal point in (a) and goes on rightly from there; `solve` works out what (b) is then.
    let (number, unit) = answers[0].answer.split_once(' ').unwrap();
    let speed = format!("{} {unit}", 10.0 * number.parse::<f64>().unwrap());
    let asked = rows(&place.text("exam/responses.csv"))[1].asked.clone();
    let givens: Vec<_> = asked.split('|').collect();
    let (power, efficiency) = (plain(givens[1]), plain(givens[2]));
    let solved = place.run(&[
        "solve",
        "drive.output_torque",
        &format!("drive.power={power}"),
        &format!("drive.efficiency={efficiency}"),
        &format!("drive.output_speed={speed}"),
        "--json",
    ]);
    let solved: Value = serde_json::from_str(&solved.done()).unwrap();
    answers[0].answer = speed;
    answers[1].answer = solved["asked"]["shown"].as_str().unwrap().to_owned();
    // Bo writes a length for a speed, and nothing for the torque.
    answers[2].answer = "12 mm".into();
    answers[3].answer = String::new();
    let graded = small_graded(&place, &answers);
    let parts: Vec<_> = parts(&graded).into_iter().map(|(_, _, part)| part).collect();
    assert_eq!((&parts[0]["verdict"], &parts[0]["earned"]), (&json!("wrong"), &json!(0)));
    let says = parts[0]["says"].as_str().unwrap();
    assert!(says.contains("decimal point") && says.contains("10 times too large"), "{says}");
    assert_eq!((&parts[1]["verdict"], &parts[1]["earned"]), (&json!("carried"), &json!(2)));
    assert!(parts[1]["says"].as_str().unwrap().contains("(a)"));
    assert_eq!((&parts[2]["verdict"], &parts[2]["earned"]), (&json!("wrong-unit"), &json!(0)));
    assert!(parts[2]["says"].as_str().unwrap().contains("mm"), "{}", parts[2]["says"]);
    assert_eq!((&parts[3]["verdict"], &parts[3]["earned"]), (&json!("blank"), &json!(0)));
    let candidates = &graded["candidates"];
    assert_eq!((&candidates[0]["earned"], &candidates[0]["passed"]), (&json!(2), &json!(true)));
    assert_eq!((&candidates[1]["earned"], &candidates[1]["passed"]), (&json!(0), &json!(false)));
    let sheet = tree(&place.path("exam/results/candidates"));
    let sheet = sheet.iter().find(|(path, _)| path.to_string_lossy().starts_with("a1-")).unwrap().1;
    assert!(String::from_utf8_lossy(sheet).contains("10 times too large"), "the sheet says what went wrong");
    assert!(place.text("exam/results/results.html").contains("Ada Brenn"));
}

#[test]
fn odd_rows_are_noticed_with_their_line() {
    let place = Place::new();
    small(&place);
    let answers = answered(&place);
    let code = &answers[0].paper;
    let swapped: String = [&code[1..2], &code[..1], &code[2..]].concat();
    let mut odd = answers.clone();
    odd.push(Row { paper: swapped, ..answers[0].clone() });
    odd.push(Row { paper: "hello".into(), ..answers[0].clone() });
    odd.push(Row { question: "9".into(), ..answers[0].clone() });
    odd.push(Row { part: "z".into(), ..answers[0].clone() });
    odd.push(Row { candidate: "Bo Carrow".into(), ..answers[0].clone() });
    odd.push(answers[0].clone());
    odd.push(Row { answer: String::new(), ..answers[0].clone() });
    odd.push(Row { answer: "1 r/min".into(), ..answers[0].clone() });
    place.write("odd.csv", csv(&odd));
    let ran = place.run(&["grade", "exam", "odd.csv", "--module", "plant"]);
    let lines: Vec<_> = ran.err.lines().collect();
    let wanted = [
        ("odd.csv:6:", format!("Was {code} meant?")),
        ("odd.csv:7:", "no paper code".into()),
        ("odd.csv:8:", "questions 1 to 1".into()),
        ("odd.csv:9:", "parts a to b".into()),
        ("odd.csv:10:", "Bo Carrow".into()),
        ("odd.csv:11:", "counts once".into()),
        ("odd.csv:12:", "that answer stands".into()),
        ("odd.csv:13:", "\"1 r/min\" counts".into()),
    ];
    assert_eq!(lines.len(), wanted.len(), "{}", ran.err);
    for (line, (at, says)) in lines.iter().zip(wanted) {
        assert!(line.starts_with(at) && line.contains(&says), "{at} {says}: {line}");
    }
    ran.done();
}

/// Whoever wrote no unit has earned nothing so far: the assessor is told of each, and what can be done.
#[test]
fn answers_that_cannot_be_read_are_named_with_what_to_do() {
    let place = Place::new();
    small(&place);
    let mut answers = answered(&place);
    let code = answers[0].paper.clone();
    answers[0].answer = "fast".into();
    answers[3].answer = "12".into();
    place.write("filled.csv", csv(&answers));
    let ran = place.run(&["grade", "exam", "filled.csv", "--module", "plant"]);
    for part in [
        "2 answers could not be read",
        &format!("Paper {code}, Ada Brenn, question 1 (a): “fast” could not be read. "),
        "Bo Carrow, question 1 (b): “12” could not be read. The unit is missing: write a number and its unit",
        "drivecourse enter",
        "--correction",
        "drivecourse override",
    ] {
        assert!(ran.err.contains(part), "{part}: {}", ran.err);
    }
    ran.done();
    let page = place.text("exam/results/results.html");
    assert!(page.contains("Bo Carrow, question 1 (b): “12” could not be read."), "the class's page says so too");
    answers[0].answer = String::new();
    answers[3].answer = "12 mm".into();
    place.write("filled.csv", csv(&answers));
    let ran = place.run(&["grade", "exam", "filled.csv", "--module", "plant"]);
    assert!(ran.err.contains("1 answer could not be read") && ran.err.contains("“12 mm”"), "{}", ran.err);
}

/// A right answer with a mark that people read in two ways: `1.250` for 1250, `63,100` for 63.1.
fn marked_otherwise(expected: &str) -> String {
    let (number, unit) = expected.rsplit_once(' ').unwrap();
    let number: f64 = number.replace(' ', "").parse().unwrap();
    if number < 1000.0 {
        return format!("{number:.3} {unit}").replace('.', ",");
    }
    format!("{}.{:03} {unit}", number as u64 / 1000, number as u64 % 1000)
}

/// What is wrong as it was read and right as it may be meant is told beside what could not be read, and keeps its mark.
#[test]
fn answers_that_may_be_meant_otherwise_are_named_with_both_readings() {
    let place = Place::new();
    small(&place);
    let right = answered(&place);
    let mut answers = right.clone();
    let code = answers[0].paper.clone();
    answers[0].answer = marked_otherwise(&right[0].answer);
    answers[1].answer = "1 N·m".into();
    answers[2].answer = marked_otherwise(&right[2].answer);
    answers[3].answer = "12".into();
    let all = small_graded(&place, &answers);
    let told: Vec<_> = parts(&all).iter().map(|(_, _, part)| plain(part["may_mean"].as_str().unwrap_or(""))).collect();
    assert!(!told[0].is_empty() && !told[2].is_empty() && told[1].is_empty() && told[3].is_empty(), "{told:?}");
    assert_eq!((&parts(&all)[0].2["verdict"], &parts(&all)[0].2["earned"]), (&json!("wrong"), &json!(0)));
    let ran = place.run(&["grade", "exam", "filled.csv", "--module", "plant"]);
    let err = plain(&ran.err);
    for part in [
        "drivecourse: 1 answer could not be read, and earned nothing so far:",
        "drivecourse: 2 answers are wrong as they were read, and would be right as they may be meant; their marks stand so far:",
        &format!("  Paper {code}, Ada Brenn, question 1 (a): “{}” was read as ", answers[0].answer),
        &format!(", which is wrong; meant as {} it would be right.", told[0]),
        "Bo Carrow, question 1 (a): ",
    ] {
        assert!(err.contains(part), "{part}: {err}");
    }
    assert_eq!(err.matches("drivecourse override").count(), 1, "what can be done is said once: {err}");
    ran.done();
    let page = plain(&place.text("exam/results/results.html"));
    assert!(page.contains(&format!("meant as {} it would be right.", told[0])), "the class's page says so too");
    // With the answers as they are right, and wrong ones that are wrong either way, there is nothing to settle.
    answers[0].answer = right[0].answer.clone();
    answers[2].answer = format!("9{}", marked_otherwise(&right[2].answer));
    answers[3].answer = right[3].answer.clone();
    place.write("filled.csv", csv(&answers));
    let ran = place.run(&["grade", "exam", "filled.csv", "--module", "plant"]);
    assert_eq!(ran.err, "", "{}", ran.err);
}

#[test]
fn results_name_the_plant_and_date_of_the_papers() {
    let place = Place::new();
    small(&place);
    let headed = |folder: &str, more: &[&str]| {
        let made = ["papers", "--module", "plant", "--exam", "small", "--roster", "two.csv", "--secret", "secret"];
        place.run(&[&made[..], &["--out", folder], more].concat()).done();
        place.run(&["grade", folder, "exam/responses.csv", "--module", "plant"])
    };
    headed("headed", &["--plant", "Invented Mill", "--date", "25 November"]).done();
    for page in ["headed/results/results.html".to_owned(), first_sheet(&place, "headed")] {
        let text = place.text(&page);
        assert!(text.contains("Invented Mill") && text.contains("25 November"), "{page}");
    }
    let again =
        ["grade", "headed", "exam/responses.csv", "--module", "plant", "--plant", "Other Mill", "--date", "May"];
    place.run(&again).done();
    let text = place.text("headed/results/results.html");
    assert!(text.contains("Other Mill") && !text.contains("Invented Mill") && !text.contains("25 November"), "{text}");
}

/// The page of the first candidate.
fn first_sheet(place: &Place, exam: &str) -> String {
    let inside = tree(&place.path(&format!("{exam}/results/candidates")));
    format!("{exam}/results/candidates/{}", inside.keys().next().unwrap().display())
}

#[test]
fn nothing_is_graded_against_other_numbers_and_no_old_results_are_lost() {
    let place = Place::new();
    small(&place);
    let answers = answered(&place);
    let full = small_graded(&place, &answers);
    assert!(parts(&full).iter().all(|(_, _, part)| part["verdict"] == "right"));
    assert!(parts(&full).iter().all(|(_, _, part)| !expected(part).is_empty()));
    let before = tree(&place.path("exam"));
    let grade = |file: &str| place.run(&["grade", "exam", file, "--module", "plant"]);

    // Files from which nothing can be taken.
    place.write("broken.json", "{");
    grade("broken.json").refused(&["broken.json:1", "no answers"]);
    place.write("headless.csv", "a,b\n1,2\n");
    grade("headless.csv").refused(&["headless.csv:1", "paper,question,part,answer", "no answers"]);
    grade("gone.csv").refused(&["no file gone.csv"]);
    place.run(&["grade", "nowhere", "filled.csv"]).refused(&["nowhere is no exam folder"]);

    // The built-in items are not those of the exam.
    place.run(&["grade", "exam", "filled.csv"]).refused(&["nothing was graded", "two-steps", "changed"]);
    let item = "plant/scenarios/items/steps.toml";
    place.mend(item, "How fast", "At what speed");
    grade("filled.csv").refused(&["nothing was graded", "Ada Brenn", "not the paper that was printed", "have changed"]);
    place.mend(item, "At what speed", "How fast");
    place.mend("exam/exam.json", "\"digest\":\"", "\"digest\":\"0");
    grade("filled.csv").refused(&["not the paper that was printed"]);
    place.mend("exam/exam.json", "\"digest\":\"0", "\"digest\":\"");
    place.mend("exam/exam.json", "\"format\": 1", "\"format\": 9");
    grade("filled.csv").refused(&["exam/exam.json", "format 9", "version"]);
    place.mend("exam/exam.json", "\"format\": 9", "\"format\": 1");
    assert!(before == tree(&place.path("exam")), "the earlier results stand");
    grade("filled.csv").done();
}
