use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use drivecourse_machine::{Family, System};
use drivecourse_quiz::{Body, Setting, about, read_items, twins};

use super::*;
use crate::book::{Assets, Options, build};
use crate::card::{Sheet, key_model, paper_model};
use crate::pages::model::Head;
use crate::portray::{Portrait, PortrayError};

mod plant;

const ITEMS: &str = include_str!("tests/items.toml");
const FAMILY: &str = include_str!("tests/grain-elevator.toml");
const DRIVE_ITEMS: &str = include_str!("tests/drive-items.toml");
const DRIVE_FAMILY: &str = include_str!("tests/quarry-drive.toml");
const DRIVE: &str = include_str!("tests/drive.md");
const CHAPTER: &str = include_str!("tests/feet.md");
const REFERENCE: &str = include_str!("tests/reference.md");

fn read(folder: &Path, prefix: &str) -> BTreeMap<String, Vec<u8>> {
    let mut out = BTreeMap::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let name = format!("{prefix}{}", path.file_name().unwrap().to_string_lossy());
        if path.is_dir() {
            out.extend(read(&path, &format!("{name}/")));
        } else {
            out.insert(name, fs::read(&path).unwrap());
        }
    }
    out
}

fn theme() -> BTreeMap<String, Vec<u8>> {
    read(&Path::new(env!("CARGO_MANIFEST_DIR")).join("../../theme"), "")
}

fn pages() -> Pages {
    let templates = theme()
        .into_iter()
        .filter_map(|(name, bytes)| {
            Some((crate::pages::template_name(&name)?.to_owned(), String::from_utf8(bytes).unwrap()))
        })
        .collect();
    Pages::new(&templates, &crate::words::tests::english()).unwrap()
}

fn data() -> CourseData {
    with(&[ITEMS], &[("grain-elevator", FAMILY)])
}

/// The small course and a machine with chain, load and heat.
fn whole_drive() -> CourseData {
    with(&[ITEMS, DRIVE_ITEMS], &[("grain-elevator", FAMILY), ("quarry-conveyor", DRIVE_FAMILY)])
}

fn with(items: &[&str], families: &[(&str, &str)]) -> CourseData {
    let items = items.iter().flat_map(|text| read_items(text).unwrap_or_else(|problems| panic!("{problems:?}")));
    let plan = |(id, text): &(&str, &str)| {
        let family = Family::read(id, text).unwrap_or_else(|problems| panic!("{problems:?}"));
        Plan::new(family).unwrap_or_else(|problems| panic!("{problems:?}"))
    };
    CourseData { items: items.collect(), plans: families.iter().map(plan).collect(), pages: pages() }
}

fn expanded(text: &str) -> String {
    Expander::new(data()).chapter("mount/feet.md", text).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn block(word: &str, toml: &str) -> String {
    format!("# Feet\n\n```{word}\n{toml}\n```\n")
}

/// Line and column of every problem, with what is said.
fn problems(text: &str) -> Vec<(usize, usize, String)> {
    let problems = Expander::new(data()).chapter("mount/feet.md", text).unwrap_err();
    let placed = |problem: &Problem| {
        let (line, column) = problem.line_column(text).unwrap();
        (line, column, problem.to_string())
    };
    problems.iter().map(placed).collect()
}

/// `html` without the hints and answers that are folded away; the fold round a whole question hides nothing of these.
fn unfolded(html: &str) -> String {
    let mut out = String::new();
    let mut rest = html;
    while let Some((before, after)) = rest.split_once("<details") {
        out.push_str(before);
        if after.starts_with(" class=\"question\"") {
            rest = after;
            continue;
        }
        // Hints and answers hold no further details.
        rest = after.split_once("</details>").unwrap().1;
    }
    out + rest
}

/// Whether `number` stands in `html` as a whole number, not as the end of a longer or a negative one.
fn stands_in(html: &str, number: &str) -> bool {
    html.match_indices(number)
        .any(|(at, _)| !html[..at].ends_with(|c: char| c.is_ascii_digit() || matches!(c, '.' | '−' | '\u{202f}')))
}

fn check_well_formed(html: &str) {
    // Void elements are the only ones that HTML does not close; cards have none.
    let mut reader = quick_xml::Reader::from_str(html);
    reader.config_mut().check_end_names = true;
    loop {
        match reader.read_event() {
            Ok(quick_xml::events::Event::Eof) => return,
            Ok(_) => {}
            Err(error) => panic!("{error} at {} of {html}", reader.buffer_position()),
        }
    }
}

fn ids(html: &str) -> Vec<&str> {
    html.split(" id=\"").skip(1).map(|rest| rest.split('"').next().unwrap()).collect()
}

/// The usual options, in English.
fn options() -> Options {
    Options { words: crate::words::tests::english(), ..Options::default() }
}

#[test]
fn every_directive_becomes_well_formed_html() {
    for text in [CHAPTER, REFERENCE] {
        let html = expanded(text);
        assert!(!html.contains("```"), "{html}");
        for part in html.split("\n\n").filter(|part| part.starts_with('<')) {
            check_well_formed(part);
        }
        let mut all = ids(&html);
        let count = all.len();
        all.sort_unstable();
        all.dedup();
        assert_eq!(all.len(), count, "an id stands twice");
    }
    let html = expanded(CHAPTER);
    for wanted in [
        "data-item=\"soft-foot-gap\"",
        "data-family=\"grain-elevator\"",
        "data-seed=\"",
        "<div class=\"units-si\" data-system=\"si\">",
        "<div class=\"units-us\" data-system=\"us\">",
        "Worked example: ",
        "Check yourself",
        "The values in the picture",
        "<math display=\"block\">",
    ] {
        assert!(html.contains(wanted), "{wanted}");
    }
    let html = expanded(REFERENCE);
    for wanted in ["Common practice, no source", "Derived", "dial indicator", "You halved the gap"] {
        assert!(html.to_lowercase().contains(&wanted.to_lowercase()), "{wanted}");
    }
}

#[test]
fn the_same_bytes_twice_and_other_places_other_machines() {
    assert_eq!(expanded(CHAPTER), expanded(CHAPTER));
    let card = block("practice", "item = \"soft-foot-gap\"");
    let seed = |html: &str| html.split("data-seed=\"").nth(1).unwrap().split('"').next().unwrap().to_owned();
    let expander = Expander::new(data());
    assert_ne!(seed(&expander.chapter("a.md", &card).unwrap()), seed(&expander.chapter("b.md", &card).unwrap()));
    assert_eq!(seed(&expanded(&block("practice", "item = \"soft-foot-gap\"\nseed = 77"))), "77");
}

#[test]
fn both_systems_show_one_machine() {
    let data = whole_drive();
    for item in &data.items {
        let plan = if item.topic == "mount" { &data.plans[0] } else { &data.plans[1] };
        let settings = System::ALL.map(|system| Setting::new(item, plan, system).unwrap());
        for seed in 0..6 {
            let both = twins(&[&settings[0], &settings[1]], seed).unwrap();
            assert_eq!(both[0].case.seed, both[1].case.seed, "{}", item.id);
            let alone = twins(&[&settings[1]], seed).unwrap();
            assert_eq!(alone[0].case.seed, settings[1].question(seed).unwrap().case.seed, "{}", item.id);
        }
    }
}

#[test]
fn no_answer_stands_outside_the_folds() {
    let data = data();
    let mut checked = 0;
    for item in &data.items {
        for seed in 0..12 {
            let html = expanded(&block("practice", &format!("item = \"{}\"\nseed = {seed}", item.id)));
            let open = unfolded(&html);
            let settings = System::ALL.map(|system| Setting::new(item, &data.plans[0], system).unwrap());
            for question in twins(&[&settings[0], &settings[1]], seed).unwrap() {
                let system = question.system;
                for part in &question.parts {
                    let Some(key) = part.key() else { continue };
                    let answer = part.right_answer(system);
                    let given =
                        question.parts.iter().any(|other| {
                            other.givens.iter().any(|(id, value)| {
                                drivecourse_machine::amount::write(id.get(), *value, system) == answer
                            }) || other.options().contains(&answer)
                        });
                    // Another reading may happen to be the same number, and a choice must be listed.
                    if !given && key.path.asked.get().kind != drivecourse_machine::Kind::Count {
                        assert!(!stands_in(&open, &answer), "{} shows {answer} (seed {seed}):\n{open}", item.id);
                        assert!(stands_in(&html, &answer), "{} lacks {answer} (seed {seed})", item.id);
                        checked += 1;
                    }
                }
            }
        }
    }
    assert!(checked > 40, "only {checked} answers were looked for");
}

#[test]
fn problems_name_line_and_column() {
    for (word, toml, line, column, said) in [
        ("practice", "item = \"soft-foot-gab\"", 4, 8, "Did you mean \"soft-foot-gap\"?"),
        ("practice", "item = \"zebra\"", 4, 8, "no item called \"zebra\""),
        ("practice", "item = \"soft-foot-gap\"\nfamily = \"grain-elevatr\"", 5, 10, "Did you mean \"grain-elevator\"?"),
        ("practice", "item = \"soft-foot-gap\"\nfamili = \"x\"", 5, 1, "Nothing here is called"),
        ("practice", "item = \"soft-foot-gap\"\nseed = -1", 5, 8, "but a whole number, nought or more"),
        ("practice", "item = \"soft-foot-gap\"\nunits = \"metric\"", 5, 9, "none of the possibilities"),
        ("practice", "item = ", 4, 8, "not valid"),
        ("practice", "", 3, 1, "This lacks"),
        ("worked", "seed = 4", 3, 1, "This lacks"),
        ("practise", "item = \"soft-foot-gap\"", 3, 1, "Did you mean \"practice\"?"),
        ("figure", "name = \"foot-plam\"", 4, 8, "Did you mean \"foot-plan\"?"),
        ("figure", "name = \"drive-side\"", 4, 8, "needs chain.pitch"),
        ("formulas", "topic = \"mound\"", 4, 9, "Did you mean \"mount\"?"),
        ("formulas", "", 3, 1, "does not say"),
        (
            "mistakes",
            "relations = [\n  \"mount.twist/diagonals\",\n  \"mount.twist/diagonal\",\n]",
            6,
            3,
            "Did you mean",
        ),
        ("self-check", "items = [\"soft-foot-gap\", \"leveling\"]", 4, 27, "no item called"),
        ("self-check", "items = []", 4, 9, "asks nothing"),
        ("one-machine", "family = \"grain-elevator\"\nseed = 4\nitems = []", 6, 9, "Nothing is asked"),
        ("one-machine", "family = \"grain-elevator\"\nitems = [\"soft-foot-gap\"]", 3, 1, "This lacks"),
        ("one-machine", "family = \"grain-elevator\"\nseed = 4\nitems = [\"gap\"]", 6, 10, "no item called"),
        ("one-machine", "family = \"grain\"\nseed = 4\nitems = [\"soft-foot-gap\"]", 4, 10, "no family called"),
        ("quantities", "topic = \"mount\"\nextra = 1", 5, 1, "Nothing here is called"),
    ] {
        let found = problems(&block(word, toml));
        assert_eq!(found.len(), 1, "{word} {toml}: {found:?}");
        assert_eq!((found[0].0, found[0].1), (line, column), "{word} {toml}: {found:?}");
        assert!(found[0].2.contains(said), "{word} {toml}: {found:?}");
    }
}

#[test]
fn every_problem_of_a_chapter_is_told_and_text_keeps_its_place() {
    let text = "# Åéß\r\n\r\n- a list\r\n\r\n  ```practice\r\n  item = \"soft-foot-gap\"\r\n  ```\r\n\r\nText.\r\n\r\n~~~~ worked\r\nitem = \"none\"\r\n~~~~\r\n";
    let found = problems(text);
    assert_eq!((found[0].0, found[1].0, found[1].1), (5, 12, 8), "{found:?}");
    assert!(found[0].2.contains("inside a list"));
    let plain = "# A\n\n```text\nitem = 1\n```\n\n    practice\n";
    assert_eq!(expanded(plain), plain);
    let unclosed = "```practice\nitem = \"soft-foot-gap\"\n";
    assert!(problems(unclosed)[0].2.contains("not closed"));
}

#[test]
fn hostile_words_stay_words() {
    let mut data = data();
    data.items[0].title = "<script>alert(1)</script> & \"x\"".into();
    data.items[0].text = "One.\n\n\n<img src=x onerror=alert(1)>\n\n# Two".into();
    let text = block("practice", &format!("item = \"{}\"", data.items[0].id));
    let html = Expander::new(data).chapter("a.md", &text).unwrap();
    assert!(!html.contains("<script") && !html.contains("<img"), "{html}");
    let card = html.split("\n\n").find(|part| part.starts_with('<')).unwrap();
    assert!(card.trim_end().ends_with("</section>"), "a blank line must not end the card early");
    check_well_formed(card);
}

#[test]
fn headings_follow_the_one_above() {
    let card = "```practice\nitem = \"soft-foot-gap\"\n```\n";
    assert!(expanded(&format!("# A\n\n{card}")).contains("<h2 id"));
    assert!(expanded(&format!("# A\n\n## B\n\n### C\n\n{card}")).contains("<h4 id"));
}

#[test]
fn the_style_sheet_has_the_drawings_rules() {
    let css = String::from_utf8(theme().remove("css/course.css").unwrap()).unwrap();
    assert!(css.contains(crate::figures::STYLE));
}

fn sample() -> Assets {
    let chapters = [
        ("SUMMARY.md", "# Summary\n\n- [Feet](mount/feet.md)\n- [Reference](reference.md)\n- [Drive](drive.md)\n"),
        ("drive.md", DRIVE),
        ("mount/feet.md", CHAPTER),
        ("reference.md", REFERENCE),
    ];
    Assets {
        chapters: chapters.iter().map(|(name, text)| ((*name).to_owned(), text.as_bytes().to_vec())).collect(),
        theme: theme(),
    }
}

#[test]
fn a_real_book_is_built_and_its_problems_are_told() {
    let home = tempfile::tempdir().unwrap();
    let (one, two) = (home.path().join("one"), home.path().join("two"));
    for out in [&one, &two] {
        let built = build(&sample(), out, vec![Box::new(Expander::new(whole_drive()))], &options()).unwrap();
        assert_eq!(built.warnings, Vec::<String>::new());
    }
    assert_eq!(read(&one, ""), read(&two, ""));
    let page = fs::read_to_string(one.join("mount/feet.html")).unwrap();
    assert!(page.contains("data-item=\"soft-foot-gap\"") && page.contains("</math>") && !page.contains("&lt;div"));
    let whole = fs::read_to_string(one.join("print.html")).unwrap();
    let mut all = ids(&whole);
    let count = all.len();
    all.sort_unstable();
    all.dedup();
    assert_eq!(all.len(), count, "ids are unique in the whole course");
    if let Ok(keep) = std::env::var("DRIVECOURSE_KEEP_COURSE") {
        build(&sample(), Path::new(&keep), vec![Box::new(Expander::new(whole_drive()))], &options()).unwrap();
    }

    let mut assets = sample();
    let broken = CHAPTER.replacen("item = \"soft-foot-gap\"", "item = \"soft-foot-gab\"", 1);
    let line = broken.lines().position(|line| line.contains("gab")).unwrap() + 1;
    assets.chapters.insert("mount/feet.md".into(), broken.into_bytes());
    let error = build(&assets, &two, vec![Box::new(Expander::new(whole_drive()))], &options()).unwrap_err().to_string();
    assert!(error.contains(&format!("mount/feet.md:{line}:8: There is no item")), "{error}");
    assert!(error.contains("Did you mean \"soft-foot-gap\"?"), "{error}");
}

#[test]
fn pictures_hide_what_is_asked_and_show_what_is_solved() {
    let data = data();
    let item = data.items.iter().find(|item| item.id == "soft-foot-gap").unwrap();
    for system in System::ALL {
        let question = Setting::new(item, &data.plans[0], system).unwrap().question(5).unwrap();
        let asked = Portrait::of_question("a", &question).draw("foot-plan").unwrap();
        let solved = Portrait::of_solution("a", &question).draw("foot-plan").unwrap();
        assert!(!asked.description.contains("carry") && !asked.svg.contains("gap "), "{}", asked.svg);
        assert!(solved.description.contains("carry"), "{}", solved.description);
        assert!(solved.table.iter().any(|(name, _)| name.ends_with("gap")), "{:?}", solved.table);
        assert_eq!(asked.table.iter().filter(|(name, _)| name.ends_with("reading")).count(), 4);
    }
    let case = data.plans[0].draw(3).unwrap();
    let portrait = Portrait::of_case("x", &case, System::Si);
    for name in ["foot-plan", "foot-corners", "shim-pack"] {
        assert!(portrait.draw(name).unwrap().svg.starts_with("<svg"), "{name}");
    }
    for name in ["drive-side", "shaft-load", "warm-up", "straightedge", "bolt-pattern", "key-section"] {
        assert!(matches!(portrait.draw(name), Err(PortrayError::Missing { .. })), "{name}");
    }
    assert!(matches!(portrait.draw("dials"), Err(PortrayError::NothingShown { .. })));
    assert!(portrait.draw("foot-plam").unwrap_err().to_string().contains("did you mean \"foot-plan\""));
}

#[test]
fn pictures_of_whole_drives_keep_the_answer() {
    let data = whole_drive();
    let plan = &data.plans[1];
    for item in data.items.iter().filter(|item| item.topic != "mount") {
        let name = item.figure.as_deref().unwrap();
        for system in System::ALL {
            let setting = Setting::new(item, plan, system).unwrap_or_else(|error| panic!("{}: {error:?}", item.id));
            for seed in 0..8 {
                let question = setting.question(seed).unwrap();
                let asked = Portrait::of_question("a", &question).draw(name).unwrap();
                let solved = Portrait::of_solution("a", &question).draw(name).unwrap();
                assert!(!asked.svg.contains("?<") || asked.table.iter().any(|(_, label)| label == "?"));
                for part in &question.parts {
                    let answer = part.right_answer(system);
                    assert!(!stands_in(&asked.svg, &answer), "{} shows {answer}", item.id);
                }
                assert!(solved.table.len() >= asked.table.len());
                assert!(solved.table.iter().all(|(_, label)| label != "?"));
            }
        }
    }
    let gap = Registry::get().find("mount.gap").unwrap();
    let case = (0..50).map(|seed| plan.draw(seed).unwrap()).find(|case| case.values[gap.index()] > 2e-4).unwrap();
    // This family has neither supply nor vibration; their pictures are drawn in `portray/tests.rs`.
    for name in &PICTURES[..6] {
        for system in System::ALL {
            match Portrait::of_case("x", &case, system).draw(name) {
                // This drive has no sight glass and no vibration meter.
                Err(PortrayError::NoReading { picture }) => {
                    assert!(["sight-glass", "vibration-meter"].contains(&picture))
                }
                drawn => assert!(drawn.is_ok_and(|figure| !figure.table.is_empty()), "{name}"),
            }
        }
    }
}

#[test]
fn papers_keys_and_results_come_from_questions() {
    let data = data();
    let questions: Vec<_> = (data.items.iter())
        .map(|item| Setting::new(item, &data.plans[0], System::Us).unwrap().question(8).unwrap())
        .collect();
    let family = data.plans[0].family.name.as_str();
    let sheets: Vec<Sheet<'_>> =
        data.items.iter().zip(&questions).map(|(item, question)| Sheet { item, question, family }).collect();
    let head = Head {
        plant: "Northgate Grain & Feed".into(),
        exam: "Drive check".into(),
        candidate: "Ann Example".into(),
        code: "K7QD-22MF".into(),
        date: None,
    };
    let paper = paper_model(head.clone(), &sheets, None, Vec::new(), Vec::new()).unwrap();
    let key = key_model(head.clone(), &sheets, "sample".into());
    assert_eq!(paper.marks, key.marks);
    assert_eq!(paper.questions.len(), data.items.len());
    let pages = pages();
    let paper_html = pages.render("paper.html", &paper).unwrap();
    let key_html = pages.render("key.html", &key).unwrap();
    for part in questions.iter().flat_map(|question| &question.parts) {
        let text = part.right_answer(System::Us).replace('\'', "’").replace('"', "&quot;");
        assert!(key_html.contains(&text), "{text}");
    }
    // Why the order of the steps, and the choice, is right.
    let because = questions.iter().flat_map(|question| &question.parts).filter_map(|part| match &part.body {
        Body::Order { because, .. } | Body::Pick { because, .. } => Some(because),
        Body::Quantity { .. } => None,
    });
    let because: Vec<_> = because.filter(|because| !because.is_empty()).collect();
    assert!(!because.is_empty() && because.iter().all(|because| key_html.contains(because.as_str())), "{because:?}");
    assert!(paper_html.contains("<svg") && key_html.contains("common practice, no source"));
}

#[test]
fn several_items_about_one_machine() {
    let (items, plans) = (data().items, data().plans);
    let settings: Vec<_> = items.iter().filter_map(|item| Setting::new(item, &plans[0], System::Si).ok()).collect();
    let suits = |seed: &u64| about(&settings.iter().collect::<Vec<_>>(), &plans[0].draw(*seed).unwrap(), 3).is_ok();
    let seed = (0..1000).find(suits).unwrap();
    let names: Vec<String> = settings.iter().map(|setting| format!("{:?}", setting.item.id)).collect();
    let toml = |seed| format!("family = \"grain-elevator\"\nseed = {seed}\nitems = [{}]", names.join(", "));
    let text = block("one-machine", &toml(seed));
    let html = expanded(&text);
    assert_eq!(html.matches("<section").count(), items.len());
    // Each says which machine it is about, for a browser to mark answers to it.
    for place in 0..items.len() {
        assert!(html.contains(&format!("data-seed=\"{seed}:{place}\"")), "{place}");
    }
    assert_eq!(html, expanded(&text));
    html.split("\n\n").filter(|card| card.starts_with("<section")).for_each(check_well_formed);
    // What the questions show of the machine is what is seen of that one machine.
    let case = plans[0].draw(seed).unwrap();
    let mut compared = 0;
    for setting in &settings {
        let question = &about(&[setting], &case, 3).unwrap()[0];
        for (id, value) in question.parts.iter().flat_map(|part| &part.givens) {
            let written = drivecourse_machine::amount::write(id.get(), question.shown(*id), System::Si);
            assert_eq!(question.shown(*id), *value);
            assert!(html.contains(written.as_str()), "{written}");
            compared += 1;
        }
    }
    assert!(compared > 5);
    let other = (0..1000).find(|seed| !suits(seed)).unwrap();
    let found = problems(&block("one-machine", &toml(other)));
    assert!(found[0].0 == 6 && found[0].2.contains("this machine does not keep"), "{found:?}");
}
