//! Papers to print: large, all in one file, with the marking policy that the blueprint chose.

use std::collections::BTreeSet;

use crate::exam::{expected, graded, parts, rows, small};
use crate::{Place, tree};

const ROSTER: &str = "id,name,units,print\na1,Ada Brenn,si,\nb2,Bo Carrow,us,usual\nc3,Cy Dunmore,si,large\n";

/// Every value of the attribute `id`.
fn ids(html: &str) -> Vec<&str> {
    html.split(" id=\"").skip(1).filter_map(|rest| rest.split('"').next()).collect()
}

fn papers(place: &Place, out: &str, more: &[&str]) {
    place.write("three.csv", ROSTER);
    let made = ["papers", "--roster", "three.csv", "--secret", "secret", "--out", out];
    place.run(&[&made[..], more].concat()).done();
}

#[test]
fn all_papers_go_into_one_file_with_their_codes_on_every_page() {
    let place = Place::new();
    papers(&place, "each", &[]);
    papers(&place, "one", &["--one-file"]);
    assert_eq!(place.text("each/exam.json"), place.text("one/exam.json"), "printing changes no paper");
    let names: Vec<_> = tree(&place.path("one")).into_keys().map(|path| path.display().to_string()).collect();
    assert_eq!(
        names,
        ["exam.json", "keys/keys.html", "papers/papers-large-print.html", "papers/papers.html", "responses.csv"]
    );
    let (usual, large) = (place.text("one/papers/papers.html"), place.text("one/papers/papers-large-print.html"));
    assert!(!usual.contains("class=\"large\"") && large.contains("<html lang=\"en\" class=\"large\">"));
    for (path, bytes) in tree(&place.path("each/papers")) {
        let single = String::from_utf8(bytes).unwrap();
        let name = path.display().to_string();
        let code = &name[3..14];
        let bundle = if name.starts_with("c3") { &large } else { &usual };
        assert_eq!(single.contains("class=\"large\""), name.starts_with("c3"));
        assert!(bundle.contains(&format!("content: \"Paper {code}\"")), "{code} has a foot of its own");
        let body = |html: &str| html.split("<main").nth(1).unwrap().split("</main>").next().unwrap().to_owned();
        let body = body(&single);
        assert!(bundle.contains(body.trim_start_matches('>').trim()), "{name}: the same paper");
    }
    for html in [&usual, &large, &place.text("one/keys/keys.html")] {
        let all = ids(html);
        assert_eq!(all.iter().collect::<BTreeSet<_>>().len(), all.len(), "no id stands twice");
    }
    assert_eq!((usual.matches("<main").count(), large.matches("<main").count()), (2, 1));
    papers(&place, "all-large", &["--one-file", "--large-print"]);
    assert!(!place.path("all-large/papers/papers.html").exists());
    assert_eq!(place.text("all-large/papers/papers-large-print.html").matches("<main").count(), 3);
}

#[test]
fn the_policy_of_the_blueprint_stands_on_the_paper_and_is_what_is_marked() {
    let place = Place::new();
    small(&place);
    let exam = "plant/scenarios/exams/small.toml";
    let marking = "months = 6\n[marking]\nmethod = \"50 %\"\npartial = { within = 3, earns = \"50 %\" }\nunit = \"may\"\n\n[[row]]\nweight = 6";
    place.mend(exam, "[[row]]", marking);
    let made = ["papers", "--module", "plant", "--exam", "small", "--roster", "two.csv", "--secret", "secret"];
    place.run(&[&made[..], &["--out", "rules", "--screen"]].concat()).done();
    let papers = tree(&place.path("rules/papers"));
    let paper = String::from_utf8(papers.into_values().next().unwrap()).unwrap();
    for part in
        ["3 times as far off earns 50\u{a0}%", "up to 50\u{a0}% of the marks", "without a unit is read", "<dd>6</dd>"]
    {
        assert!(paper.contains(part), "{part}");
    }
    assert!(place.text("rules/responses.csv").starts_with("\u{feff}paper,candidate,question,part,asked,steps,answer"));
    let grade = |file: &str| graded(&place, &["rules", file, "--module", "plant"]);
    let keys = grade("rules/responses.csv");
    let code = rows_with_steps(&place)[0].clone();
    let key: Vec<String> = parts(&keys).iter().map(|(_, _, part)| expected(part)).collect();
    // A number alone is read in the printed unit; one 0.4 % off is near.
    let bare = key[0].split(' ').next().unwrap().replace(',', "");
    let near = |share: f64| format!("{:.6}", bare.parse::<f64>().unwrap() * share);
    place.write("r.csv", format!("paper,question,part,answer\n{code},1,a,{bare}\n"));
    let marks = |graded: &serde_json::Value| {
        let part = parts(graded)[0].2.clone();
        (part["verdict"].as_str().unwrap().to_owned(), part["earned"].as_u64().unwrap())
    };
    let right = marks(&grade("r.csv"));
    assert_eq!(right.0, "right");
    let mut seen = BTreeSet::new();
    for thousandth in 0..40 {
        let text = near(1.0 + f64::from(thousandth) / 1000.0);
        place.write("r.csv", format!("paper,question,part,answer\n{code},1,a,{text}\n"));
        let (verdict, earned) = marks(&grade("r.csv"));
        assert_eq!(
            earned,
            match verdict.as_str() {
                "right" => right.1,
                "partial" => right.1 / 2,
                _ => 0,
            }
        );
        seen.insert(verdict);
    }
    assert!(seen.contains("partial") && seen.contains("wrong"), "{seen:?}");
}

/// The code of each row of the exam with a column of steps.
fn rows_with_steps(place: &Place) -> Vec<String> {
    place.text("rules/responses.csv").lines().skip(1).map(|line| line[..11].to_owned()).collect()
}

#[test]
fn what_is_typed_in_goes_with_results_on_the_way() {
    let place = Place::new();
    small(&place);
    let exam = "plant/scenarios/exams/small.toml";
    place.mend(exam, "[[row]]", "[marking]\nmethod = \"50 %\"\n\n[[row]]");
    // One part whose way takes two steps.
    place.mend(
        "plant/scenarios/items/steps.toml",
        "from = [\"drive.power\", \"drive.efficiency\", \"drive.output_speed\"]",
        "from = [\"drive.power\", \"drive.efficiency\", \"drive.motor_speed\", \"drive.ratio\"]",
    );
    place.mend(
        "plant/scenarios/items/steps.toml",
        "ask = \"drive.output_speed\"",
        "ask = \"drive.output_speed\"\nmarks = 2",
    );
    let made = ["papers", "--module", "plant", "--exam", "small", "--roster", "two.csv", "--secret", "secret"];
    place.run(&[&made[..], &["--out", "rules"]].concat()).done();
    let code = rows_with_steps(&place)[0].clone();
    let keys = graded(&place, &["rules", "rules/responses.csv", "--module", "plant"]);
    let speed = expected(parts(&keys)[0].2);
    let typed = format!("{code}\n-\n3 N·m\n{speed}\n");
    let said = place.run_with(&["enter", "rules", "--module", "plant"], typed.as_bytes()).done();
    assert!(said.contains("results on the way"), "{said}");
    let all = graded(&place, &["rules", "rules/responses.csv", "--module", "plant"]);
    let part = parts(&all)[1].2.clone();
    assert_eq!((part["verdict"].as_str(), part["earned"].as_u64()), (Some("partial"), Some(1)), "{part:#}");
    assert_eq!(part["steps"].as_str(), Some(speed.as_str()));
    assert!(
        rows(&place.text("exam/responses.csv")).iter().all(|row| row.answer.is_empty()),
        "the other exam is untouched"
    );
}
