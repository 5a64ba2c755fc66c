//! `papers`: the same papers again, different ones under another secret, and nothing given away.

use serde_json::Value;

use crate::exam::{graded, make, parts, roster};
use crate::{Place, plain, tree};

/// The figures in a secret file: all of them, and each group.
fn figures(secret: &str) -> Vec<String> {
    let line = secret.lines().nth(1).unwrap();
    let groups = line.split_whitespace().map(str::to_owned);
    groups.chain([line.to_owned(), line.replace(' ', "")]).collect()
}

#[test]
fn papers_come_again_byte_for_byte_and_only_under_the_same_secret() {
    let place = Place::new();
    let made = make(&place, "exam");
    assert!(made.err.contains("made a new secret in secret"), "{}", made.err);
    let said = made.done();
    for named in ["exam/papers", "exam/keys", "exam/exam.json", "exam/responses.csv"] {
        assert!(said.contains(named) && place.path(named).exists(), "{said}");
    }
    let first = tree(&place.path("exam"));
    assert_eq!(first.keys().filter(|path| path.starts_with("papers")).count(), 14);
    assert_eq!(first.keys().filter(|path| path.starts_with("keys")).count(), 14);

    let other = Place::new();
    other.write("secret", place.text("secret"));
    assert!(!make(&other, "deep/er").err.contains("secret"), "it has one");
    assert!(first == tree(&other.path("deep/er")), "the same secret, roster and exam: the same bytes");

    let stranger = Place::new();
    make(&stranger, "exam").done();
    let record = |place: &Place| serde_json::from_str::<Value>(&place.text("exam/exam.json")).unwrap();
    let (ours, theirs) = (record(&place), record(&stranger));
    for (ours, theirs) in ours["papers"].as_array().unwrap().iter().zip(theirs["papers"].as_array().unwrap()) {
        assert_eq!(ours["candidate"], theirs["candidate"]);
        for field in ["code", "digest", "questions"] {
            assert_ne!(ours[field], theirs[field], "{field}");
        }
    }

    // A second run never touches an exam that was printed.
    make(&place, "exam").refused(&["exam", "holds an exam already", "--out"]);
    assert!(first == tree(&place.path("exam")));

    // A resit repeats no machine.
    let resit = ["papers", "--roster", "roster.csv", "--secret", "secret", "--sitting", "2", "--after", "exam"];
    place.run(&[&resit[..], &["--out", "resit"]].concat()).done();
    let cases = |file: &str| -> Vec<String> {
        let record: Value = serde_json::from_str(&place.text(file)).unwrap();
        let papers = record["papers"].as_array().unwrap().clone();
        papers
            .iter()
            .flat_map(|paper| paper["questions"].as_array().unwrap().clone())
            .map(|q| q["case"].to_string())
            .collect()
    };
    let before = cases("exam/exam.json");
    assert!(cases("resit/exam.json").iter().all(|case| !before.contains(case)));
}

#[test]
fn the_secret_stays_secret() {
    let place = Place::new();
    let made = make(&place, "exam");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        let mode = std::fs::metadata(place.path("secret")).unwrap().permissions().mode();
        assert_eq!(mode & 0o777, 0o600);
    }
    let figures = figures(&place.text("secret"));
    let graded = place.run(&["grade", "exam", "exam/responses.csv", "--json"]);
    let damaged = place.text("secret").replacen(&figures[0], "0000000000000000", 1);
    place.write("damaged", damaged);
    let refused = place.run(&["papers", "--roster", "roster.csv", "--secret", "damaged", "--out", "never"]);
    assert!(refused.err.contains("damaged"), "{}", refused.err);
    assert!(place.is_empty("never"));
    let mut texts = vec![made.out, made.err, graded.out, graded.err, refused.out, refused.err];
    texts.extend(tree(&place.path("exam")).values().map(|bytes| String::from_utf8_lossy(bytes).into_owned()));
    assert!(texts.len() > 40);
    for text in texts {
        let text = text.to_lowercase();
        assert!(figures.iter().all(|figures| !text.contains(figures.as_str())));
    }
}

#[test]
fn a_paper_gives_nothing_away() {
    let place = Place::new();
    make(&place, "exam").done();
    let graded = graded(&place, &["exam", "exam/responses.csv"]);
    let record: Value = serde_json::from_str(&place.text("exam/exam.json")).unwrap();
    let papers = record["papers"].as_array().unwrap();
    let mut compared = 0;
    for paper in papers {
        let (id, code) = (paper["candidate"]["id"].as_str().unwrap(), paper["code"].as_str().unwrap());
        for folder in ["papers", "screen"] {
            let html = place.text(&format!("exam/{folder}/{id}-{code}.html"));
            compared += gives_nothing_away(&record, paper, &graded, &html);
        }
    }
    assert!(compared > 80, "only {compared} answers were looked for");
}

/// Looks through one page that a candidate receives; how many answers were looked for.
fn gives_nothing_away(record: &Value, paper: &Value, graded: &Value, html: &str) -> usize {
    let (id, code) = (paper["candidate"]["id"].as_str().unwrap(), paper["code"].as_str().unwrap());
    let papers = record["papers"].as_array().unwrap();
    let mut compared = 0;
    assert!(html.contains(code) && html.contains(paper["candidate"]["name"].as_str().unwrap()));
    assert!(html.contains("Invented Mill"));
    let mut secrets = vec![
        record["scenario"].as_str().unwrap().to_owned(),
        record["key_check"].as_str().unwrap().to_owned(),
        paper["digest"].as_str().unwrap().to_owned(),
    ];
    for question in paper["questions"].as_array().unwrap() {
        for field in ["seed", "case"] {
            let figures = question[field].as_str().unwrap();
            secrets.push(figures.to_owned());
            secrets.push(u64::from_str_radix(figures, 16).unwrap().to_string());
        }
        secrets.push(format!("\"{}\"", question["family"].as_str().unwrap()));
    }
    for other in papers.iter().filter(|other| other["code"] != paper["code"]) {
        secrets.push(other["code"].as_str().unwrap().to_owned());
        secrets.push(other["candidate"]["name"].as_str().unwrap().to_owned());
    }
    let lower = html.to_lowercase();
    for secret in secrets {
        assert!(!lower.contains(&secret.to_lowercase()), "{id}'s paper holds {secret}");
    }
    // Numbers stand on a paper as the time allowed, as givens, in the words of a question (a limit, a list of leaves), as
    // what to choose from and as axes of a picture; an answer may equal one of those by chance, but
    // nowhere else may one stand.
    let shown = plain(&without(&without(html, "<table class=\"givens\"", "</table>"), "<svg", "</svg>"));
    let mut rest = shown.clone();
    for (from, to) in [
        ("<dl class=\"title-block\"", "</dl>"),
        ("<div class=\"question-head\"", "</div>"),
        ("<div class=\"part-head\"", "</div>"),
        ("<ul class=\"choices", "</ul>"),
        ("<div class=\"choose", "</div>"),
    ] {
        rest = without(&rest, from, to);
    }
    for (_, _, part) in parts(graded).iter().filter(|(of, _, _)| of == code) {
        let expected = plain(part["expected"].as_str().unwrap());
        if !expected.ends_with(|c: char| c.is_ascii_digit()) && expected.starts_with(|c: char| c.is_ascii_digit()) {
            compared += 1;
            assert!(!rest.contains(&expected), "{id}'s paper says {expected}");
        }
        if expected.len() > 6 && expected.split(' ').all(|word| word.len() == 1) {
            assert!(!shown.contains(&expected), "{id}'s paper shows the order {expected}");
        }
    }
    compared
}

/// The text without what stands between `from` and `to`.
fn without(text: &str, from: &str, to: &str) -> String {
    let mut out = String::new();
    let mut rest = text;
    while let Some(start) = rest.find(from) {
        out.push_str(&rest[..start]);
        rest = rest[start..].split_once(to).map_or("", |(_, after)| after);
    }
    out + rest
}

#[test]
fn what_stands_in_the_way_is_said_and_nothing_is_left_behind() {
    let place = Place::new();
    place.write("roster.csv", roster());
    place.write("file", "keep");
    place.write("secret", "drivecourse secret 1\nnot figures\n");
    let papers = |roster: &str, secret: &str, out: &str, more: &[&str]| {
        place.run(&[&["papers", "--roster", roster, "--secret", secret, "--out", out], more].concat())
    };
    papers("roster.csv", "secret", "exam", &[]).refused(&["secret", "damaged", "64 hexadecimal figures"]);
    papers("roster.csv", "roster.csv", "exam", &[]).refused(&["roster.csv", "not a secret file"]);
    papers("rooster.csv", "new", "exam", &[]).refused(&["no file rooster.csv", "tarn-ridge.csv"]);
    papers("roster.csv", "new", "exam", &["--exam", "last"]).refused(&["no file last", "first-check.toml"]);
    papers("roster.csv", "new", "exam", &["--after", "gone"]).refused(&["gone is no exam folder", "exam.json"]);
    papers("roster.csv", "new", "exam", &["--module", "gone"]).refused(&["no folder gone", "--module"]);
    for (name, secret) in [("exam", "new"), ("exam.json", "new")] {
        assert!(place.is_empty(name) && !place.path(secret).exists());
    }
    papers("roster.csv", "file/secret", "exam", &[]).refused(&["file is a file", "choose another folder"]);
    papers("roster.csv", "new", "file/exam", &[]).refused(&["file is a file", "choose another folder"]);
    assert_eq!(place.text("file"), "keep");
    assert!(!place.path("exam").exists());
}

/// An exam of one item, without a safety question.
fn exam_of(place: &Place, item: &str) {
    let text =
        format!("title = \"x\"\nminutes = 10\npass = \"70 %\"\nno_safety = true\n\n[[row]]\nitem = \"{item}\"\n");
    place.write(&format!("plant/scenarios/exams/{item}.toml"), text);
}

#[test]
fn a_short_table_is_told_with_what_helps_and_keys_name_the_machine() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,heat"]).done();
    let people: String = (0..12).map(|i| format!("p{i},Person {}\n", char::from(b'A' + i))).collect();
    place.write("plant/scenarios/rosters/many.csv", format!("id,name\n{people}"));
    let make = |item: &str, language: &str| {
        exam_of(&place, item);
        let out = format!("{item}-{language}");
        let papers = ["papers", "--module", "plant", "--exam", item, "--roster", "many", "--secret", "secret"];
        let ran = place.run(&[&papers[..], &["--out", &out, "--language", language]].concat());
        assert_eq!(ran.code, 0, "{}", ran.err);
        let all = |folder: &str| {
            let files = std::fs::read_dir(place.path(&format!("{out}/{folder}"))).unwrap();
            let mut files: Vec<_> = files.map(|file| std::fs::read_to_string(file.unwrap().path()).unwrap()).collect();
            files.sort();
            files
        };
        (plain(&ran.err), all("papers"), all("keys"))
    };
    let (said, papers, keys) = make("sprocket-diameters", "en");
    for part in [
        "of the 12 papers that ask sprocket-diameters have the same numbers",
        "Nothing that it is asked from differs between two cases of one machine",
        "from the table of our-drive come chain.size, chain.teeth_small",
        "vary under [draw]",
        "ask items of other skills",
        "Nothing needs doing unless these sit within sight of each other: Person ",
    ] {
        assert!(said.contains(part), "{part}: {said}");
    }
    // Two of them at least stand together, by their names.
    let people = said.split_once("sight of each other: ").unwrap().1.split_once(". Part them").unwrap().0;
    let groups = people.trim_end_matches(" ...").split("; ");
    assert!(groups.clone().count() > 0 && groups.clone().all(|group| group.matches("Person ").count() > 1), "{people}");
    assert!(!said.contains("more rows"), "a plant has the machines that it has: {said}");
    // Parts of these ask for more than three figures.
    assert!(papers.iter().all(|paper| paper.contains("to 0.") && !paper.contains("Three figures")));
    assert!(keys.iter().all(|key| key.contains("Machine: Storage conveyor drive, SC-0")), "{}", keys[0]);
    let (said, ..) = make("sprocket-diameters", "de");
    assert!(said.contains("aus der Tabelle von our-drive kommen chain.size"), "{said}");

    // The author's words for a wrong turn stand on the key, not the program's beside them.
    let pull = "[[item]]\nid = \"pull\"\ntopic = \"chain\"\nskill = \"x\"\ntitle = \"x\"\ntext = \"x\"\n[[item.part]]\ntext = \"x?\"\n\
                ask = \"chain.slack_tension\"\nfrom = [\"chain.mass\", \"chain.span\", \"chain.sag\", \"chain.strand_incline\"]\n\
                wrong = [{ gives = \"chain.slack_tension * 8\", says = \"The eighth is ours.\" }]\n";
    place.write("plant/scenarios/items/pull.toml", pull);
    let (_, _, keys) = make("pull", "en");
    assert!(keys.iter().all(|key| key.contains("The eighth is ours.") && !key.contains("You forgot the 8 under")));

    let (said, papers, keys) = make("our-rise", "en");
    assert!(!said.contains("from the table"), "readings are not in it: {said}");
    assert!(papers.iter().all(|paper| paper.contains("Three figures are enough")));
    for key in keys {
        assert!(key.contains("That is the temperature of the housing itself"), "{key}");
    }
}

/// What each question of a paper says of its machine, and the table of what it gives.
fn machines(paper: &str) -> Vec<(String, Vec<(String, String)>)> {
    let paper = plain(paper);
    let between = |text: &str, from: &str, to: &str| {
        text.split_once(from).and_then(|(_, rest)| rest.split_once(to)).map(|(found, _)| found.to_owned())
    };
    let mut out = Vec::new();
    for question in paper.split("<section class=\"question\"").skip(1) {
        let first = between(question, "<p>", "</p>").unwrap();
        let table = between(question, "<table class=\"givens\"", "</table>").unwrap_or_default();
        let rows = table.split("<tr>").filter_map(|row| {
            let name = between(row, "<th scope=\"row\">", "</th>")?;
            Some((
                name,
                between(row, "<td class=\"number\">", " <span class=\"also-within\">")
                    .or_else(|| between(row, "<td class=\"number\">", "</td>"))?,
            ))
        });
        out.push((first, rows.collect()));
    }
    out
}

/// A secret that is none: papers drawn under it are the same each time.
const OPEN: &str =
    "drivecourse secret 1\n793fc09bb82bb020 04eff0a6adb70e7d f463d97f6451d21f b397e4839c8271cf\ncheck 8c5c346d\n";

#[test]
fn a_machine_that_comes_again_says_that_it_is_another_day() {
    let place = Place::new();
    place.run(&["new", "plant", "--topic", "chain,load,heat,start"]).done();
    place.write("secret", OPEN);
    // The full-load current on a plate follows here from a power factor that is drawn.
    let plates = ["start-current-verdict", "start-load-by-current"].map(|item| format!("[[row]]\nitem = \"{item}\"\n"));
    let head = "title = \"x\"\nminutes = 10\npass = \"70 %\"\nno_safety = true\n";
    place.write("plant/scenarios/exams/plates.toml", format!("{head}{}", plates.concat()));
    let table = place.text("plant/scenarios/families/our-drive.csv");
    let draw = |exam: &str, rows: usize| {
        let kept: Vec<&str> = table.lines().take(1 + rows).collect();
        place.write("plant/scenarios/families/our-drive.csv", kept.join("\n") + "\n");
        let out = format!("{exam}-{rows}");
        let papers = ["papers", "--module", "plant", "--exam", exam, "--roster", "first-group"];
        place.run(&[&papers[..], &["--secret", "secret", "--out", &out]].concat()).done();
        let papers = std::fs::read_dir(place.path(&format!("{out}/papers"))).unwrap();
        papers.map(|file| machines(&std::fs::read_to_string(file.unwrap().path()).unwrap())).collect::<Vec<_>>()
    };
    let (mut days, mut firsts) = (0, 0);
    for questions in [draw("first-check", 1), draw("first-check", 2)].concat() {
        assert!(questions.len() > 6, "{questions:?}");
        for (place, (first, givens)) in questions.iter().enumerate() {
            let name = first.split(['.', ' ']).find(|word| word.starts_with("SC-")).unwrap();
            let before: Vec<_> = questions[..place].iter().filter(|(first, _)| first.contains(name)).collect();
            let again = first.starts_with(&format!("Machine {name} again, but "));
            assert!(again || *first == format!("Machine {name}."), "{first}");
            // Once a table of numbers has been seen, every other one of the machine says that it is not of that day.
            let seen = before.iter().any(|(_, givens)| !givens.is_empty());
            assert!(again || givens.is_empty() || !seen, "{first} {givens:?} after {before:?}");
            assert!(!again || !before.is_empty(), "{first}");
            days += usize::from(first.contains("on another day"));
            firsts += usize::from(!again);
        }
    }
    assert!(days > 10 && firsts >= 9, "{days} {firsts}");

    // No day changes a plate.
    for questions in draw("plates", 1) {
        let [(first, before), (second, after)] = &questions[..] else { panic!("{questions:?}") };
        let plate = |givens: &[(String, String)]| {
            let mut rows = givens.iter().filter(|(name, _)| name.starts_with("Full-load current"));
            rows.next().unwrap().1.clone()
        };
        assert!(first == "Machine SC-01." && plate(before) != plate(after), "{questions:?}");
        assert_eq!(second, "Machine SC-01 again, but with other figures: those here hold for this question alone.");
    }
}
