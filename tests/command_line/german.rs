//! A course and papers in German, whole.

use std::path::Path;

use crate::exam::{csv, fill, graded, parts, rows};
use crate::words::between;
use crate::{Place, tree};

/// A module in German with the one chapter, and an exam about its topic.
pub(crate) fn german(place: &Place) {
    place
        .write("werk/module.toml", "title = \"Antriebe im Werk\"\ndescription = \"Ein Kapitel.\"\nlanguage = \"de\"\n");
    place.write("werk/book/SUMMARY.md", "# Inhalt\n\n- [Betriebstemperatur](temperature.md)\n");
    place.write("pruefung.toml", EXAM);
    place.write("gruppe.csv", "id,name,units\nA1,Jürgen Müller,si\nA2,Käthe Groß,us\n");
}

/// About warm-up temperature, which is all in German.
pub(crate) const EXAM: &str = include_str!("german-exam.toml");

/// The words of a page that a person sees or hears, without markup and scripts.
fn seen(page: &str) -> String {
    let mut out = String::new();
    let mut rest = page;
    while let Some((text, tag)) = rest.split_once('<') {
        out.push_str(text);
        out.push(' ');
        for attribute in ["aria-label=\"", "alt=\"", "title=\""] {
            let end = tag.find('>').unwrap_or(tag.len());
            between(&tag[..end], attribute, "\"").iter().for_each(|words| out.push_str(words));
        }
        let skipped = ["script", "style"].iter().find(|name| tag.starts_with(*name));
        let close = skipped.map_or_else(|| ">".to_owned(), |name| format!("</{name}>"));
        rest = tag.split_once(&close).map_or("", |(_, rest)| rest);
    }
    out + rest
}

/// Words that are English and nothing else; names of items, such as `heat-of-the-unit`, are no words.
fn english_in(text: &str) -> Vec<&str> {
    let english = [
        "the",
        "of",
        "and",
        "you",
        "your",
        "with",
        "is",
        "are",
        "not",
        "which",
        "from",
        "to",
        "mark",
        "marks",
        "answer",
        "answers",
        "papers",
        "question",
        "questions",
        "results",
        "there",
        "yet",
        "nothing",
        "what",
        "how",
        "only",
        "without",
        "cannot",
        "folder",
        "default",
        "possible",
        "options",
        "usage",
        "print",
    ];
    let words = text.split(|c: char| !c.is_alphabetic() && c != '-');
    words.filter(|word| english.contains(&word.to_lowercase().as_str())).collect()
}

/// What was printed holds no English and no mark of what is not translated, and names of files aside no dots in numbers.
pub(crate) fn said_in_german(said: &str) {
    assert!(!said.contains('⟦'), "{said}");
    let file = |word: &&str| word.contains('/') || word.ends_with(".csv") || word.ends_with(".json");
    let said: Vec<&str> = said.split_whitespace().filter(|word| !file(word)).collect();
    let said = said.join(" ");
    assert_eq!(english_in(&said), Vec::<&str>::new(), "{said}");
}

/// No page of `folder` has a word of English in it, and each says that it is German.
pub(crate) fn in_german(folder: &Path) -> usize {
    let mut pages = 0;
    for (path, bytes) in tree(folder).iter().filter(|(path, _)| path.extension().is_some_and(|e| e == "html")) {
        let page = String::from_utf8(bytes.clone()).unwrap();
        let path = path.display();
        assert!(page.contains("<html lang=\"de\""), "{path}");
        let untranslated = between(&page, "⟦", "⟧");
        assert!(untranslated.is_empty(), "{path}: {untranslated:?}");
        let text = seen(&page);
        let found = english_in(&text);
        assert!(found.is_empty(), "{path}: {found:?}");
        pages += 1;
    }
    pages
}

#[test]
fn a_course_is_german_from_the_bar_to_the_sources() {
    let place = Place::new();
    german(&place);
    place.run(&["build", "--module", "werk", "--mark-untranslated", "--out", "kurs"]).done();
    assert_eq!(in_german(&place.path("kurs")), 4, "chapter, first page, contents, whole course");
    let page = place.text("kurs/temperature.html");
    for words in ["<p class=\"box-word\">Vorsicht</p>", "Übung: ", "Antwort und Lösungsweg", "Hergeleitet", "0,9"] {
        assert!(page.contains(words), "{words}");
    }
    // What the calculation in the browser says goes along with the course.
    let live = tree(&place.path("kurs/live"));
    let words = live.iter().find(|(path, _)| path.to_string_lossy().starts_with("words-")).unwrap();
    let words = String::from_utf8(words.1.clone()).unwrap();
    assert!(words.contains("Die Einheit fehlt") && !words.contains("The unit is missing"));
    let frame =
        tree(&place.path("kurs")).into_iter().find(|(path, _)| path.to_string_lossy().starts_with("book-")).unwrap();
    assert!(String::from_utf8(frame.1).unwrap().contains("\"script-check\": \"Prüfen\""));

    // The whole course in German has its list in German, and says which chapters are English still.
    place.run(&["build", "--language", "de", "--out", "ganz"]).done();
    let chain = place.text("ganz/chain.html");
    assert!(chain.contains("noch nicht übersetzt") && chain.contains("Betriebstemperatur"), "{chain}");
    assert!(!place.text("ganz/temperature.html").contains("noch nicht übersetzt"));
}

#[test]
fn german_papers_are_answered_with_commas_and_come_out_the_same_again() {
    let place = Place::new();
    german(&place);
    let make = |out: &str| {
        let command =
            ["papers", "--exam", "pruefung.toml", "--roster", "gruppe.csv", "--secret", "verborgen", "--out", out];
        place.run(&[&command[..], &["--screen", "--plant", "Werk", "--mark-untranslated"]].concat()).done();
        tree(&place.path(out))
    };
    let first = make("eins");
    assert!(first == make("zwei"), "the same secret and roster give the same bytes");
    assert_eq!(in_german(&place.path("eins")), 6, "papers, screens, keys");
    let record: serde_json::Value = serde_json::from_str(&place.text("eins/exam.json")).unwrap();
    assert_eq!(record["language"]["tag"], "de");
    assert_eq!(record["language"]["words"].as_str().map(str::len), Some(64));

    let blank = graded(&place, &["eins", "eins/responses.csv", "--out", "leer"]);
    let mut answers = rows(&place.text("eins/responses.csv"));
    fill(&mut answers, &blank);
    let decimals = answers.iter().filter(|row| row.answer.contains(',')).count();
    assert!(decimals > 2, "{decimals} answers with a decimal comma");
    assert!(
        !answers
            .iter()
            .any(|row| row.answer.chars().any(|c| c == '.') && row.answer.starts_with(|c: char| c.is_ascii_digit()))
    );
    place.write("antworten.csv", csv(&answers));
    let full = graded(&place, &["eins", "antworten.csv"]);
    for (code, number, part) in parts(&full) {
        assert_eq!(part["verdict"], "right", "{code}, {number}: {part:#}");
    }
    for paper in full["candidates"].as_array().unwrap() {
        assert_eq!(paper["earned"], paper["of"]);
        assert!(paper["says"].as_str().unwrap().starts_with("Bestanden: "), "{}", paper["says"]);
    }
    assert_eq!(in_german(&place.path("eins/results")), 3, "results of the class and of two people");
    let said = place.run(&["grade", "eins", "antworten.csv"]).done();
    assert!(said.contains("100,0 %"), "{said}");
    // Tables and records keep the names that statistics are made by.
    let table = place.text("eins/results/parts.csv");
    assert!(table.contains("safe-warm-up") || table.contains("right"), "{table}");

    // In another language the papers are not those that were printed.
    place
        .run(&["grade", "eins", "antworten.csv", "--language", "en"])
        .refused(&["the language or its words", "nothing was graded"]);
}

#[test]
fn papers_of_every_topic_are_german() {
    let place = Place::new();
    let topics: Vec<_> = drivecourse_machine::topics::ALL.iter().map(|topic| topic.id).collect();
    let rows: Vec<_> = topics.iter().map(|topic| format!("[[row]]\ntopic = \"{topic}\"\ncount = 5\n")).collect();
    let head =
        "title = \"Alles\"\nlanguage = \"de\"\nminutes = 90\npass = \"70 %\"\nband = \"50 %\"\nno_safety = true\n";
    place.write("alles.toml", format!("{head}{}", rows.join("\n")));
    place.write("gruppe.csv", "id,name,units\nA1,Jürgen Müller,si\nA2,Käthe Groß,us\nA3,Anton Lang,si\n");
    let papers = ["papers", "--exam", "alles.toml", "--roster", "gruppe.csv", "--secret", "geheim", "--out", "aus"];
    let said = place.run(&[&papers[..], &["--screen", "--mark-untranslated"]].concat()).done();
    assert!(said.lines().any(|line| line.starts_with("alle ") && line.ends_with(" sind übersetzt")), "{said}");
    let mut pages = 0;
    for (path, bytes) in
        tree(&place.path("aus")).iter().filter(|(path, _)| path.extension().is_some_and(|e| e == "html"))
    {
        let page = String::from_utf8(bytes.clone()).unwrap();
        let untranslated = between(&page, "⟦", "⟧");
        assert!(untranslated.is_empty(), "{}: {untranslated:?}", path.display());
        // The list of sources aside, which names books as they are called.
        let text = seen(&page);
        let told = ["You ", " your ", " which "].iter().filter(|word| text.contains(*word)).collect::<Vec<_>>();
        assert!(told.is_empty(), "{}: {told:?}", path.display());
        pages += 1;
    }
    assert_eq!(pages, 9, "papers, screens, keys");
}
