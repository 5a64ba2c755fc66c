use std::path::Path;

use super::model::*;
use super::*;

const HOSTILE: &str = "Ann \"<script>alert(1)</script>\" O'Neil & \u{202E}Co\u{2066}";

fn pages() -> Pages {
    let theme = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../theme");
    let files = ["pages", "css"].into_iter().flat_map(|inside| std::fs::read_dir(theme.join(inside)).unwrap());
    let template = |entry: std::io::Result<std::fs::DirEntry>| {
        let path = entry.unwrap().path();
        let inside = path.strip_prefix(&theme).unwrap().to_string_lossy().replace('\\', "/");
        Some((template_name(&inside)?.to_owned(), std::fs::read_to_string(&path).unwrap()))
    };
    let templates = files.filter_map(template).collect();
    Pages::new(&templates, &crate::words::tests::english()).unwrap()
}

fn lines(text: &[&str]) -> Vec<String> {
    text.iter().map(|t| (*t).to_string()).collect()
}

fn head(candidate: &str) -> Head {
    Head {
        // A hostile candidate comes from a hostile plant.
        plant: if candidate == HOSTILE { HOSTILE.into() } else { "Northgate Grain & Feed".into() },
        exam: "Drive check, part one".into(),
        candidate: candidate.into(),
        code: "K7QD-22MF".into(),
        date: Some("12 May 2026".into()),
    }
}

fn givens() -> Vec<Given> {
    let given = |name: &str, symbol: &str, value: &str, also: Option<&str>| Given {
        name: name.into(),
        symbol: symbol.into(),
        value: value.into(),
        also: also.map(Into::into),
    };
    vec![
        given("Centre distance", "C", "32.0 in", Some("813 mm")),
        given("Teeth of the small sprocket", "N₁", "17", None),
        given("Oil", "", "ISO VG 220", None),
    ]
}

fn paper(candidate: &str) -> Paper {
    let part = |label: &str, prompt: &str, unit: &str, choices: &[&str], room| Part {
        label: label.into(),
        prompt: prompt.into(),
        unit: unit.into(),
        hint: if unit.is_empty() { String::new() } else { "to one decimal place".into() },
        marks: if room > 4 { "2".into() } else { "1".into() },
        choices: lines(choices),
        room,
        way: label == "c",
    };
    let question = |number| {
        Question {
        number,
        title: "Sag of the slack strand".into(),
        story: lines(&["A chain drive was set up on Monday. Before start-up the fitter checks the slack strand at mid span."]),
        givens: givens(),
        figure: (number == 1).then(|| {
            Trusted::made_by_us(
                "<figure><svg viewBox=\"0 0 400 100\" width=\"400\" role=\"img\" aria-label=\"A chain drive\"><g fill=\"none\" \
                 stroke=\"#000\"><circle cx=\"60\" cy=\"50\" r=\"24\"/><circle cx=\"330\" cy=\"50\" r=\"40\"/><path d=\"M60 26 330 \
                 10M60 74q140 30 270 16\"/></g></svg><figcaption>The drive seen from the reducer side.</figcaption></figure>",
            )
        }),
        parts: vec![
            part("a", "How far should the strand give at mid span?", "mm", &[], 5),
            part("b", "What must be done before the guard comes off?", "", &["Isolate and lock out", "Slow the motor down"], 0),
            part("c", "What is the smallest acceptable value?", "mm", &[], 3),
        ],
    }
    };
    Paper {
        head: head(candidate),
        time: Some("60 minutes".into()),
        marks: "12".into(),
        cautions: lines(&[
            "Isolate and lock out the drive and verify zero energy before you touch it.",
            "Refit every guard before start-up. Local codes and your site's licensed people come first.",
        ]),
        policy: lines(&["Show the numbers you used: a slip carried on from an earlier part is marked once only."]),
        questions: vec![question(1), question(2), question(3)],
        large: false,
    }
}

fn key(candidate: &str) -> Key {
    let part = |label: &str| KeyPart {
        label: label.into(),
        prompt: "How far should the strand give at mid span?".into(),
        answer: "16.3 mm".into(),
        also: Some("0.64 in".into()),
        tolerance: "± 0.4 mm".into(),
        marks: "2".into(),
        steps: vec![Step {
            what: "Sag is a part of the centre distance".into(),
            symbols: Trusted::made_by_us("<math><mi>f</mi><mo>=</mo><mi>s</mi><mi>C</mi></math>"),
            numbers: Trusted::made_by_us("<math><mi>f</mi><mo>=</mo><mn>0.02</mn><mo>·</mo><mn>813</mn></math>"),
            result: "16.3 mm".into(),
            source: "common practice, no source".into(),
        }],
        because: String::new(),
        wrong_turns: vec![WrongTurn { answer: "8.1 mm".into(), sentence: "Half the sag was given.".into() }],
    };
    Key {
        head: head(candidate),
        marks: "12".into(),
        made_with: "0.1.0, questions 3".into(),
        questions: vec![KeyQuestion {
            number: 1,
            title: "Sag of the slack strand".into(),
            machine: "Storage conveyor drive, K-1".into(),
            givens: givens(),
            parts: vec![part("a"), part("b")],
        }],
    }
}

fn results(candidate: &str) -> Results {
    let row = |name: &str, mark: &str| ResultRow {
        name: name.into(),
        code: "K7QD-22MF".into(),
        marks: lines(&[mark, "3", "4"]),
        total: "11 of 12".into(),
        outcome: "Pass".into(),
    };
    Results {
        plant: head(candidate).plant,
        exam: "Drive check, part one".into(),
        date: None,
        columns: lines(&["Q1 of 4", "Q2 of 4", "Q3 of 4"]),
        candidates: vec![row(candidate, "4"), row("Bo Lindqvist", "2")],
        faults: vec![Fault {
            sentence: "Half the sag was given.".into(),
            place: "Q1 a".into(),
            candidates: lines(&[candidate, "Bo Lindqvist"]),
        }],
        practice: vec![Practice { candidate: candidate.into(), topics: lines(&["chain sag", "soft foot"]) }],
        remarks: lines(&["One paper was not handed in."]),
    }
}

fn result(candidate: &str) -> CandidateResult {
    let part = |answer: &str, diagnosis: &[&str]| PartResult {
        place: "1 a".into(),
        asked: "Sag at mid span".into(),
        answer: answer.into(),
        expected: "16.3 mm".into(),
        marks: "1 of 2".into(),
        diagnosis: lines(diagnosis),
    };
    CandidateResult {
        head: head(candidate),
        earned: "9".into(),
        marks: "12".into(),
        outcome: "Pass".into(),
        parts: vec![part("8.1 mm <b>", &["You gave half the sag. The whole movement is asked."]), part("", &[])],
        practice: lines(&["chain sag"]),
        cautions: lines(&["You left out locking out before the guard came off."]),
    }
}

/// A report whose every text is `text`.
fn report(text: &str) -> Report {
    Report {
        title: text.into(),
        foot: text.into(),
        about: lines(&[text]),
        cautions: lines(&[text]),
        sections: vec![ReportSection {
            heading: text.into(),
            lines: lines(&[text]),
            figure: Some(Trusted::made_by_us("<svg></svg>")),
            headings: lines(&[text, text]),
            rows: vec![lines(&[text, text])],
        }],
    }
}

/// Two papers in one file.
fn bundle(candidate: &str) -> Bundle {
    let sheet = |_| BundleSheet {
        exam: "Drive check, part one".into(),
        candidate: candidate.into(),
        code: "K7QD-22MF".into(),
        body: Trusted::made_by_us(pages().render("paper-body.html", &paper(candidate)).unwrap()),
    };
    Bundle { title: candidate.into(), large: true, several: true, sheets: (0..2).map(sheet).collect() }
}

/// The pages about one candidate, each under its template's name.
fn all(candidate: &str) -> [(&'static str, String); 6] {
    let pages = pages();
    [
        ("paper.html", pages.render("paper.html", &paper(candidate)).unwrap()),
        ("key.html", pages.render("key.html", &key(candidate)).unwrap()),
        ("results.html", pages.render("results.html", &results(candidate)).unwrap()),
        ("candidate.html", pages.render("candidate.html", &result(candidate)).unwrap()),
        ("report.html", pages.render("report.html", &report(candidate)).unwrap()),
        ("bundle.html", pages.render("bundle.html", &bundle(candidate)).unwrap()),
    ]
}

#[test]
fn every_page_renders_with_its_facts() {
    let [(_, paper), (_, key), (_, results), (_, candidate), (_, report), (_, bundle)] = all("Ann Carver");
    assert!(paper.contains("How far should the strand give at mid span?"));
    assert!(paper.contains("content: \"Paper K7QD-22MF\""));
    assert!(paper.find("<h2 id=\"p-K7QD-22MF-caution\">").unwrap() < paper.find("How this paper is marked").unwrap());
    assert!(paper.find("How this paper is marked").unwrap() < paper.find("Question 1").unwrap());
    assert!(paper.contains("<circle cx=\"60\""), "a trusted drawing goes in as it is");
    assert!(!paper.contains("16.3"), "no answer stands on a paper");
    assert_eq!(paper.matches("Results on the way").count(), 3, "one line for each part that asks for them");
    assert!(
        key.contains("accepted ± 0.4\u{a0}mm")
            && key.contains("Half the sag was given.")
            && key.contains("<mn>813</mn>")
    );
    assert!(results.contains("<td class=\"number\">2</td>") && results.contains("chain sag; soft foot"));
    assert!(candidate.contains("9 of 12") && candidate.contains("Your answer: none"));
    assert!(report.contains("<svg></svg>") && report.matches("Ann Carver").count() > 8);
    assert!(bundle.contains("<html lang=\"en\" class=\"large\">") && bundle.matches("<main class=").count() == 2);
    assert!(bundle.contains(".s2 { page: s2; }") && bundle.matches("content: \"Paper K7QD-22MF\"").count() == 2);
    if let Ok(keep) = std::env::var("DRIVECOURSE_KEEP_PAGES") {
        for (name, html) in all("Ann Carver") {
            std::fs::write(Path::new(&keep).join(name), html).unwrap();
        }
    }
}

#[test]
fn hostile_names_come_out_escaped() {
    for (name, html) in all(HOSTILE) {
        assert!(!html.contains("<script"), "{name}");
        assert!(!html.contains('\u{202E}') && !html.contains('\u{2066}'), "{name}: no mark may turn the text around");
        assert!(html.contains("&lt;script&gt;"), "{name}");
        assert!(html.contains("O’Neil &amp; Co"), "{name}");
        let style = &html[html.find("<style>").unwrap()..html.find("</style>").unwrap()];
        assert!(
            style.contains("\\22 \\3c script\\3e alert(1)\\3c \\2f script\\3e \\22  O\\27 Neil \\26  Co"),
            "{name}: {style}"
        );
        assert_eq!(html.matches("</style>").count(), 1, "{name}");
    }
    let answer = pages().render("candidate.html", &result("Ann Carver")).unwrap();
    assert!(answer.contains("8.1\u{a0}mm &lt;b&gt;"));
}

#[test]
fn the_same_data_gives_the_same_page() {
    assert_eq!(all("Ann Carver"), all("Ann Carver"));
}

#[test]
fn faults_say_what_is_missing() {
    let broken = BTreeMap::from([("a.html".to_string(), "{{ nobody }}".to_string())]);
    let error =
        Pages::new(&broken, &Arc::default()).unwrap().render("a.html", &BTreeMap::from([("some", 1)])).unwrap_err();
    assert!(error.to_string().contains("a.html") && error.to_string().contains("nobody"), "{error}");
    let error = pages().render("none.html", &BTreeMap::from([("some", 1)])).unwrap_err();
    assert!(error.to_string().contains("none.html"), "{error}");
    let syntax = BTreeMap::from([("a.html".to_string(), "{% if %}".to_string())]);
    assert!(Pages::new(&syntax, &Arc::default()).unwrap_err().to_string().contains("cannot be read"));
    let lost = BTreeMap::from([("a.html".to_string(), "{% include \"b.html\" %}".to_string())]);
    assert!(Pages::new(&lost, &Arc::default()).is_err());
}
