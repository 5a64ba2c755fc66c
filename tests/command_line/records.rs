//! `record`, `report`, `override`, `forget`: what was graded is kept, once, and what is read from it.

use serde_json::Value;

use crate::exam::{csv, fill, graded, rows, small};
use crate::{Place, plain, tree};

/// Ada's and Bo's small exam, graded: Ada right, Bo wrong in (b).
fn taken() -> (Place, Vec<crate::exam::Row>) {
    let place = Place::new();
    small(&place);
    let mut answers = rows(&place.text("exam/responses.csv"));
    fill(&mut answers, &graded(&place, &["exam", "exam/responses.csv", "--module", "plant", "--out", "blank"]));
    let (number, unit) = answers[3].answer.split_once(' ').unwrap();
    answers[3].answer = format!("{} {unit}", 10.0 * number.replace(',', "").parse::<f64>().unwrap());
    grade(&place, &answers);
    (place, answers)
}

fn grade(place: &Place, answers: &[crate::exam::Row]) {
    place.write("filled.csv", csv(answers));
    place.run(&["grade", "exam", "filled.csv", "--module", "plant"]).done();
}

fn json(place: &Place, arguments: &[&str]) -> Value {
    let all = [&["report"], arguments, &["--records", "kept", "--json"]].concat();
    serde_json::from_str(&place.run(&all).done()).unwrap()
}

const ON: &[&str] = &["record", "exam", "--records", "kept", "--on", "2026-03-02"];

#[test]
fn an_exam_is_recorded_once_and_corrected_with_a_reason() {
    let (place, mut answers) = taken();
    assert!(place.run(ON).done().contains("2 recorded, 0 corrected, 0 there already"));
    let first = std::fs::read(place.path("kept")).unwrap();
    assert!(place.run(ON).done().contains("0 recorded, 0 corrected, 2 there already"));
    assert!(first == std::fs::read(place.path("kept")).unwrap(), "not a byte has changed");

    // Bo's mended answer comes late: it does not count without a reason, and counts once with one.
    let wrong = answers.clone();
    fill(&mut answers, &graded(&place, &["exam", "filled.csv", "--module", "plant", "--out", "blank"]));
    grade(&place, &answers);
    let ran = place.run(ON);
    assert!(ran.err.contains("Bo Carrow") && ran.err.contains("--correction"), "{}", ran.err);
    assert!(ran.out.contains("1 there already, 1 not taken"), "{}", ran.out);
    ran.refused(&["drivecourse: 1 paper was not recorded"]);
    place.run(&[ON, &["--correction", "typed in wrongly"]].concat()).misused("--by");
    let corrected = [ON, &["--correction", "typed in wrongly", "--by", "Gil Farrow"]].concat();
    assert!(place.run(&corrected).done().contains("0 recorded, 1 corrected, 1 there already"));
    assert!(place.run(&corrected).done().contains("0 corrected, 2 there already"));
    grade(&place, &wrong);
    // These are in the records, and a correction has taken their place: there is nothing to be done.
    let ran = place.run(ON);
    assert!(ran.err.contains("before a correction") && ran.code == 0, "{}", ran.err);
    let answer = json(&place, &["answer", &answers[3].paper, "1", "b"]);
    let revisions = answer["revisions"].as_array().unwrap();
    assert_eq!((revisions.len(), &revisions[0]["earned"], &revisions[1]["earned"]), (2, &0.into(), &2.into()));
    assert_eq!((&answer["counts"], &revisions[1]["by"]), (&2.into(), &"Gil Farrow".into()));
    assert!(revisions[0]["says"].as_str().unwrap().contains("decimal point"));
}

#[test]
fn a_mark_is_changed_and_an_appeal_shows_it() {
    let (place, answers) = taken();
    place.run(ON).done();
    let code = &answers[3].paper;
    let change = |marks: &str, reason: &str| {
        let order = ["override", code, "1", "b", marks, "--reason", reason, "--by", "Gil Farrow"];
        place.run(&[&order[..], &["--records", "kept", "--on", "2026-03-05"]].concat())
    };
    change("3", "x").refused(&["at most 2 marks"]);
    change("1", " ").refused(&["needs a reason"]);
    assert!(change("1", "the method is shown").done().contains("1 of 2 now, 0 before"));
    assert!(change("1", "the method is shown").done().contains("nothing was changed"));
    let told = place.run(&["report", "answer", code, "1", "b", "--records", "kept"]).done();
    for part in ["Read as", "Expected", "Accepted", "Why", "decimal point", "Gil Farrow", "counts 1 of 2 now", "0 of 2"]
    {
        assert!(told.contains(part), "{part}: {told}");
    }
    let bo = json(&place, &["person", "b2", "--as-of", "2026-04-01"]);
    assert_eq!((&bo["papers"][0]["earned"], &bo["papers"][0]["changed"]), (&2.into(), &1.into()));
    assert_eq!(bo["standings"][0]["state"], "ready", "two of three marks pass, with 60 % needed");
    let spaced = code.to_lowercase().replace('-', " ");
    assert_eq!(json(&place, &["answer", &spaced, "1", "b"])["counts"], 1, "a code as people write it");
    place.run(&["report", "answer", "7KQ4M", "1", "--records", "kept"]).refused(&["no paper code"]);
    place.run(&["report", "answer", code, "1", "z", "--records", "kept"]).refused(&["no question 1 (z)"]);
}

#[test]
fn reports_come_as_text_page_table_and_json_the_same_each_time() {
    let (place, _) = taken();
    place.mend("exam/exam.json", "\"no_safety\": true", "\"no_safety\": true,\n    \"months\": 12");
    place.run(&["grade", "exam", "filled.csv", "--module", "plant"]).done();
    place.run(ON).done();
    let reports: [&[&str]; 5] = [
        &["class"],
        &["items", "--item", "two-steps"],
        &["due", "--within", "1"],
        &["person", "a1"],
        &["person", "b2"],
    ];
    for out in ["once", "twice"] {
        for report in reports {
            let all = [&["report"], report, &["--records", "kept", "--as-of", "2027-02-15", "--out", out]].concat();
            let ran = place.run(&all);
            assert!(ran.err.contains(&format!("written to {out}/")), "{}", ran.err);
            assert!(ran.done().lines().count() > 3);
        }
    }
    assert!(tree(&place.path("once")) == tree(&place.path("twice")));
    assert_eq!(tree(&place.path("once")).len(), 15);
    let due = place.text("once/due.csv");
    assert!(due.contains("Ada Brenn") && due.contains("2027-03-02") && !due.contains("Bo Carrow"), "{due}");
    let class = place.text("once/class.html");
    assert!(class.find("Must not work alone yet").unwrap() < class.find("Bo Carrow").unwrap());
    assert!(class.contains("<svg") && class.contains("decimal point"));
    // A yes that rests on one paper says so, on pages, in the terminal and in tables.
    assert!(class.contains("yes, on 1 paper (2 answers)") && class.contains("One paper alone is little to go by."));
    assert!(due.contains("person,name,group,exam,state,alone,papers,answers,sat,"), "{due}");
    assert!(due.contains(",yes,1,2,"), "{due}");
    let told = |day: &str, language: &str| {
        let all = ["report", "class", "--records", "kept", "--as-of", day, "--language", language];
        place.run(&all).done()
    };
    assert!(told("2027-02-15", "en").contains("yes, on 1 paper (2 answers)"));
    assert!(told("2027-02-15", "de").contains("ja, nach 1 Blatt (2 Antworten)"));
    assert!(!told("2027-03-03", "en").contains("little to go by"), "where nobody may, nothing is said of it");
    let items = json(&place, &["items"]);
    assert_eq!((&items["items"][0]["asked"], &items["exams"][0]["papers"]), (&2.into(), &2.into()));
    // Ada's pass lapses; on the last day it still holds.
    for (day, state) in [("2026-12-01", "ready"), ("2027-03-02", "due"), ("2027-03-03", "lapsed")] {
        assert_eq!(json(&place, &["person", "a1", "--as-of", day])["standings"][0]["state"], state, "{day}");
    }
}

#[test]
fn a_person_is_forgotten_on_request() {
    let (place, _) = taken();
    place.run(ON).done();
    let forget = ["forget", "b2", "--records", "kept"];
    place.run(&forget).refused(&["Bo Carrow", "all papers (1)", "--yes"]);
    let before = json(&place, &["class", "--as-of", "2026-04-01"]);
    let said = place.run(&[&forget[..], &["--yes"]].concat()).done();
    assert!(said.contains("1 papers, 2 answers") && said.contains("not touched"), "{said}");
    place.run(&["forget", "b2", "--records", "kept", "--yes"]).refused(&["nobody", "b2"]);
    let after = json(&place, &["class", "--as-of", "2026-04-01"]);
    for total in ["papers", "handed_in", "passed", "earned", "of"] {
        assert_eq!(before["totals"][0][total], after["totals"][0][total], "{total}");
    }
    assert_eq!(after["standings"].as_array().unwrap().len(), 1);
    let bytes = std::fs::read(place.path("kept")).unwrap();
    assert!(!bytes.windows(9).any(|window| window == b"Bo Carrow"));
    let ran = place.run(ON);
    assert!(ran.err.contains("taken out on request"), "{}", ran.err);
    ran.done();
    assert!(!std::fs::read(place.path("kept")).unwrap().windows(9).any(|window| window == b"Bo Carrow"));
}

#[test]
fn what_is_no_result_or_no_records_is_refused() {
    let (place, _) = taken();
    place.run(&["record", "nowhere", "--records", "kept"]).refused(&["nowhere is no exam folder"]);
    place
        .run(&["record", "exam", "--results", "gone", "--records", "kept"])
        .refused(&["not graded", "drivecourse grade"]);
    place.run(&["record", "exam", "--records", "kept", "--on", "2.3.2026"]).misused("2026-11-25");
    place.run(&["report", "class", "--records", "gone"]).refused(&["no records file gone"]);
    place.write("letter", "Dear reader, this is not a file of records, but a letter of some length.");
    place.run(&["report", "class", "--records", "letter"]).refused(&["letter is no records file"]);
    place.run(&["record", "exam", "--records", "letter"]).refused(&["letter is no records file"]);
    assert!(place.text("letter").starts_with("Dear"));
    let sound = place.text("exam/results/results.json");
    for (from, to) in [("\"earned\": 3", "\"earned\": 2"), ("\"exam\": \"small\"", "\"exam\": \"other\""), ("{", "[")] {
        place.write("exam/results/results.json", sound.replacen(from, to, 1));
        place.run(ON).refused(&["results.json", "grade again"]);
    }
    assert!(!place.path("kept").exists(), "nothing was made");
    place.write("exam/results/results.json", sound);
    place.run(ON).done();
    place.run(&["report", "person", "zz", "--records", "kept"]).refused(&["nobody", "zz"]);
    place.run(&["report", "person", "b3", "--records", "kept"]).refused(&["\"b3\"", "near it: b2 (Bo Carrow)"]);
    place.run(&["report", "person", "Ada", "--records", "kept"]).refused(&["near it: a1 (Ada Brenn)"]);
    place.run(&["report", "person", "b2", "--records", "kept", "--as-of", "2026-01-01"]).refused(&["b2", "but later"]);
    // The whole name of one person will do.
    let by_id = place.run(&["report", "person", "b2", "--records", "kept"]).done();
    assert_eq!(by_id, place.run(&["report", "person", "bo  carrow", "--records", "kept"]).done());
}

#[test]
fn people_of_one_name_are_asked_for_by_their_ids() {
    let place = Place::new();
    small(&place);
    // On one roster names differ; on two of them they need not.
    for (roster, people) in [("one", "c1,Cy Dunmore\nann,Bea Lunt\n"), ("two", "c2,Cy Dunmore\nd4,Ann\n")] {
        place.write(&format!("{roster}.csv"), format!("id,name\n{people}"));
        let file = format!("{roster}.csv");
        let papers = ["papers", "--module", "plant", "--exam", "small", "--roster", &file, "--secret", "hidden"];
        place.run(&[&papers[..], &["--out", roster]].concat()).done();
        place.run(&["grade", roster, &format!("{roster}/responses.csv"), "--module", "plant"]).done();
        place.run(&["record", roster, "--records", "kept", "--on", "2026-03-02"]).done();
    }
    let report = |who: &str| place.run(&["report", "person", who, "--records", "kept"]);
    report("Cy Dunmore").refused(&["2 people in the records are called \"Cy Dunmore\": c1, c2;"]);
    // An id goes before a name.
    assert!(report("ann").done().starts_with("Bea Lunt") && report("Ann").done().starts_with("Ann (d4"));
}

/// The same name, secret and roster give the same codes, whatever the papers ask.
#[test]
fn two_exams_with_the_same_codes_are_told_apart() {
    let (place, answers) = taken();
    place.run(ON).done();
    let code = &answers[3].paper;
    place.mend("plant/scenarios/exams/small.toml", "60 %", "90 %");
    let made = ["papers", "--module", "plant", "--exam", "small", "--roster", "two.csv", "--secret", "secret"];
    let ran = place.run(&[&made[..], &["--out", "second", "--records", "kept"]].concat());
    for part in ["Two steps (small)", code, "--name"] {
        assert!(ran.err.contains(part), "{part}: {}", ran.err);
    }
    ran.done();
    let other = place.run(&[&made[..], &["--out", "third", "--records", "kept", "--name", "autumn"]].concat());
    assert!(!other.err.contains("these codes"), "{}", other.err);
    other.done();
    place.run(&[&made[..], &["--out", "fourth", "--records", "gone"]].concat()).refused(&["no records file gone"]);

    place.run(&["grade", "second", "filled.csv", "--module", "plant"]).done();
    let first = json(&place, &["answer", code, "1", "b"]);
    let ran = place.run(&["record", "second", "--records", "kept", "--on", "2026-11-25"]);
    assert!(ran.err.contains("these codes too") && ran.err.contains("--exam"), "{}", ran.err);
    assert!(ran.done().contains("2 recorded, 0 corrected, 0 there already"), "nothing of the first is taken over");

    // A code alone is refused, with what each exam is called; so is what names neither.
    let refusal = place.run(&["report", "answer", code, "1", "b", "--records", "kept"]);
    let digests: Vec<String> =
        refusal.err.split("--exam ").skip(1).map(|rest| rest.split(' ').next().unwrap().to_owned()).collect();
    assert_eq!(digests.len(), 2, "{}", refusal.err);
    refusal.refused(&["several exams", "sat on 2026-03-02", "sat on 2026-11-25"]);
    let change = |exam: &[&str]| {
        let order = ["override", code, "1", "b", "2", "--reason", "x", "--by", "Gil Farrow", "--records", "kept"];
        place.run(&[&order[..], exam].concat())
    };
    change(&[]).refused(&["several exams"]);
    change(&["--exam", "small"]).refused(&["several exams"]);
    change(&["--exam", "spring"]).refused(&["no exam \"spring\"", &digests[0], &digests[1]]);
    assert!(change(&["--exam", &digests[1]]).done().contains("2 of 2 now, 0 before"));
    let told = |digest: &str| json(&place, &["answer", code, "1", "b", "--exam", digest]);
    assert_eq!(told(&digests[0]), first, "the first exam stands as it was");
    assert_eq!(told(&digests[1])["counts"], 2);

    // A report over both says which is which.
    let class = place.run(&["report", "class", "--records", "kept", "--as-of", "2026-12-01"]).done();
    for title in ["Two steps (2026-03-02)", "Two steps (2026-11-25)"] {
        assert!(class.contains(title), "{title}: {class}");
    }
    let class = place.run(&["report", "class", "--records", "kept", "--as-of", "2026-04-01"]).done();
    assert!(class.contains("Two steps") && !class.contains("Two steps ("), "{class}");
}

#[test]
fn a_report_on_items_from_before_any_exam_says_what_there_is() {
    let (place, _) = taken();
    place.run(ON).done();
    let told = place.run(&["report", "items", "--records", "kept", "--as-of", "2026-01-01"]).done();
    assert!(told.contains("No paper was handed in by then; there are 2, the first of 2026-03-02."), "{told}");
    assert!(!told.contains("Discrimination"), "no empty tables: {told}");
    let told = place.run(&["report", "items", "--records", "kept", "--exam", "other", "--as-of", "2026-01-01"]).done();
    assert!(told.contains("No paper of that group or exam"), "{told}");
}

/// Names and answers with markup, formulas, marks of direction and pictures come out harmless everywhere.
#[test]
fn hostile_names_and_answers_come_out_harmless() {
    let place = Place::new();
    small(&place);
    let names = [
        "=HYPERLINK(\"x\",\"y\")",
        "<script>alert(1)</script>",
        "@SUM(A1)",
        "+44 \u{1f642} Zoë",
        "-Ada | calc",
        "محمد",
    ];
    let mut roster = String::from("id,name,units\n");
    for (place, name) in names.iter().enumerate() {
        roster.push_str(&format!("h{place},\"{}\",si\n", name.replace('"', "\"\"")));
    }
    place.write("two.csv", roster);
    let made = ["papers", "--module", "plant", "--exam", "small", "--roster", "two.csv", "--secret", "secret"];
    place.run(&[&made[..], &["--out", "odd"]].concat()).done();
    let mut answers = rows(&place.text("odd/responses.csv"));
    assert_eq!(answers.len(), 12);
    let nasty = [
        "=1+1",
        "<img src=x onerror=alert(1)>",
        "\u{1b}[2J\u{1b}]0;x\u{7}",
        "\u{202e}mm 21",
        "@x",
        "+\t-",
        "🙂 mm",
        "'=2",
    ];
    for (row, text) in answers.iter_mut().zip(nasty.iter().cycle()) {
        row.candidate = String::new();
        row.answer = (*text).to_owned();
    }
    answers.push(crate::exam::Row { candidate: "\u{1b}[31mred\u{202e}".into(), ..answers[0].clone() });
    place.write("nasty.csv", csv(&answers));
    let mut said = vec![place.run(&["grade", "odd", "nasty.csv", "--module", "plant"])];
    said.push(place.run(&["record", "odd", "--records", "kept", "--on", "2026-03-02"]));
    for report in ["class", "items", "due"] {
        said.push(place.run(&["report", report, "--records", "kept", "--as-of", "2026-03-02", "--out", "reports"]));
    }
    for row in &answers[..12] {
        let answer = ["report", "answer", &row.paper, "1", &row.part, "--records", "kept", "--out", "reports"];
        said.push(place.run(&answers_of(&answer)));
    }
    for person in 0..names.len() {
        let id = format!("h{person}");
        said.push(place.run(&[
            "report",
            "person",
            &id,
            "--records",
            "kept",
            "--as-of",
            "2026-03-02",
            "--out",
            "reports",
        ]));
    }
    for ran in said {
        for text in [&ran.out, &ran.err] {
            let steers = text.chars().find(|c| (c.is_control() && *c != '\n') || matches!(c, '\u{202a}'..='\u{202e}'));
            assert_eq!(steers, None, "{text:?}");
        }
        ran.done();
    }
    let mut looked = 0;
    for folder in ["reports", "odd"] {
        for (path, bytes) in tree(&place.path(folder)) {
            let text = String::from_utf8(bytes).unwrap();
            match path.extension().and_then(|ending| ending.to_str()) {
                Some("html") => {
                    assert!(!text.contains("<script") && !text.contains("<img"), "{}", path.display());
                    assert!(!text.contains(['\u{202e}', '\u{1b}', '\u{7}']), "{}", path.display());
                }
                Some("csv") => {
                    for cell in cells(&text) {
                        let first = cell.trim_start_matches(' ').chars().next();
                        assert!(!matches!(first, Some('=' | '+' | '-' | '@' | '\t')), "{}: {cell:?}", path.display());
                    }
                }
                _ => continue,
            }
            looked += 1;
        }
    }
    assert!(looked > 40, "{looked}");
    assert!(plain(&place.text("reports/class.html")).contains("&lt;script&gt;alert(1)&lt;/script&gt;"));
    assert!(place.text("reports/class.csv").contains("'=HYPERLINK"));
}

fn answers_of<'a>(arguments: &[&'a str]) -> Vec<&'a str> {
    arguments.to_vec()
}

/// Every cell of a table.
fn cells(text: &str) -> Vec<String> {
    let mut cells = vec![String::new()];
    let mut quoted = false;
    for c in text.trim_start_matches('\u{feff}').chars() {
        match c {
            '"' => quoted = !quoted,
            ',' | '\n' | '\r' if !quoted => cells.push(String::new()),
            _ => cells.last_mut().unwrap().push(c),
        }
    }
    cells
}
