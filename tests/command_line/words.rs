//! Another language: every word is there, a course and papers in German, and what a translator is given.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use drivecourse_course::words::{ENGLISH, Files, Words};

use crate::exam::{csv, fill, graded, parts, rows};
use crate::german::{EXAM, german, in_german, said_in_german};
use crate::{Place, plain, tree};

fn theme() -> BTreeMap<String, String> {
    let files = tree(&Path::new(env!("CARGO_MANIFEST_DIR")).join("theme"));
    let text = |(path, bytes): (std::path::PathBuf, Vec<u8>)| {
        Some((path.to_string_lossy().replace('\\', "/"), String::from_utf8(bytes).ok()?))
    };
    files.into_iter().filter_map(text).collect()
}

/// The words of a language's own files.
fn words_of(code: &str) -> Words {
    let inside = format!("words/{code}/");
    let files: Files = theme().into_iter().filter(|(path, _)| path.starts_with(&inside)).collect();
    Words::read(ENGLISH, &[], &[&files], false).unwrap()
}

/// Everything that `drivecourse words` lists, read as a translator's file is.
fn listed(place: &Place) -> Words {
    place.run(&["words", "--out", "all.ftl"]).done();
    let files = Files::from([("all.ftl".to_owned(), place.text("all.ftl"))]);
    Words::read(ENGLISH, &[], &[&files], false).unwrap()
}

/// What stands between `before` and `after` in `text`, each time.
pub(crate) fn between<'t>(text: &'t str, before: &str, after: &str) -> Vec<&'t str> {
    text.split(before).skip(1).filter_map(|rest| Some(rest.split_once(after)?.0)).collect()
}

/// The ids that templates, scripts and the program ask for.
fn asked() -> BTreeSet<String> {
    let mut ids = BTreeSet::new();
    let mut take = |found: Vec<&str>| ids.extend(found.into_iter().map(str::to_owned));
    for (path, text) in theme() {
        if path.starts_with("pages/") {
            take(between(&text, "word(id=\"", "\""));
        } else if path.ends_with(".hbs") {
            take(between(&text, "[[", "]]"));
        } else if path.starts_with("scripts/") || path.starts_with("print/") {
            take(between(&text, "say(\"", "\""));
        }
    }
    ids
}

#[test]
fn every_word_is_there_in_both_languages_and_none_is_left_over() {
    let place = Place::new();
    let (english, german, all) = (words_of("en"), words_of("de"), listed(&place));
    let asked = asked();
    assert!(asked.len() > 150, "{}", asked.len());
    for id in &asked {
        assert!(english.places().contains_key(id), "{id} is asked for and not there");
    }
    // What the program itself asks for, by parts of its ids.
    let by_program = ["decimal-mark", "course-", "frame-", "bundle-", "paper-minutes", "script-verdict-"];
    let scripts =
        std::fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("theme/scripts/progress.js")).unwrap();
    for id in english.places().keys() {
        let used = asked.contains(id) || by_program.iter().any(|start| id.starts_with(start)) || scripts.contains(id);
        assert!(used, "{id} is there and nobody asks for it");
        assert!(german.places().contains_key(id), "{id} is not there in German");
    }
    for (id, places) in german.places() {
        let known = all.places().get(id).unwrap_or_else(|| panic!("{id} is there in German only"));
        assert_eq!(known.names, places.names, "{id} fills in other places in German");
        // What code says has no variants, in any language.
        assert!(places.plain || english.places().contains_key(id), "{id} has variants");
    }
    // All of it is translated: what pages, papers and answers say, every quantity, relation and item.
    let missing = place.run(&["words", "--missing", "--language", "de"]).done();
    assert!(missing.starts_with("# 0 von ") && missing.contains(" Texten sind nicht übersetzt."), "{missing}");
    place.run(&["words", "--missing"]).refused(&["say which language"]);
    place.run(&["build", "--language", "fr"]).refused(&["there are no words for \"fr\"", "theme/words/fr"]);
}

#[test]
fn a_word_that_no_id_holds_is_told_with_what_is_like_it() {
    let place = Place::new();
    for (word, mend) in [
        ("unraed", "did you mean \"unread\"?"),
        ("grade-unraed", "did you mean \"grade-unread\"?"),
        ("grade-what-to-doo", "did you mean \"grade-what-to-do\"?"),
        ("quite-another-thing", "`drivecourse words` lists them all"),
    ] {
        let told = format!("no text has {word:?} in its id; {mend}");
        place.run(&["words", "--only", word]).refused(&[&told]);
        place.run(&["words", "--missing", "--language", "de", "--only", word]).refused(&["Kennung"]);
    }
    // What pages say is listed with the rest, and with all its lines.
    let said = place.run(&["words", "--only", "decimal-mark"]).done();
    assert!(said.contains("# theme/words/en/") && said.contains("\ndecimal-mark ="), "{said}");
    assert!(place.run(&["words", "--only", "grade-unread-one"]).done().contains("grade-unread-one = 1 answer"));
}

#[test]
fn a_number_that_could_be_two_is_read_by_the_language() {
    let place = Place::new();
    german(&place);
    let exam = EXAM.replace("topic = \"heat\"\ncount = 12", "item = \"heat-of-the-unit\"\ncount = 1");
    place.write("pruefung.toml", exam);
    place.write("gruppe.csv", "id,name,units\nA1,Jürgen Müller,si\n");
    place
        .run(&["papers", "--exam", "pruefung.toml", "--roster", "gruppe.csv", "--secret", "geheim", "--out", "eins"])
        .done();
    let answered = |answer: &str| {
        let mut answers = rows(&place.text("eins/responses.csv"));
        answers[0].answer = answer.to_owned();
        place.write("antworten.csv", csv(&answers));
        let graded = graded(&place, &["eins", "antworten.csv", "--out", "aus"]);
        parts(&graded)[0].2["read_as"].as_str().unwrap().replace(['\u{a0}', '\u{202f}'], " ")
    };
    // A comma parts decimals; a point before three figures parts thousands, and what was read is said on the result.
    for (written, read) in [
        ("1,5 kW", "1,5 kW"),
        ("1.5 kW", "1,5 kW"),
        ("1.500 W", "1500 W"),
        ("1,500 kW", "1,500 kW"),
        ("1.234,5 W", "1234,5 W"),
        ("12 500 W", "12 500 W"),
    ] {
        assert_eq!(answered(written), read, "{written}");
    }
    assert_eq!(answered("elf kW"), "");
}

#[test]
fn what_a_translator_is_given_says_what_the_program_says() {
    let place = Place::new();
    place.run(&["words", "--out", "plant/theme/words/en-GB/all.ftl"]).done();
    place.run(&["build", "--out", "plain"]).done();
    place.run(&["build", "--module", "plant", "--language", "en-GB", "--mark-untranslated", "--out", "said"]).done();
    let named = |text: &str| {
        let text = text.replace("lang=\"en-GB\"", "lang=\"en\"");
        // Names of files with a digest of what they hold.
        text.split(['"', ' ']).filter(|word| !word.contains(".js")).collect::<Vec<_>>().join(" ")
    };
    let (plain, said) = (tree(&place.path("plain")), tree(&place.path("said")));
    let mut pages = 0;
    for (path, bytes) in plain.iter().filter(|(path, _)| path.extension().is_some_and(|e| e == "html")) {
        let text = |bytes: &[u8]| named(std::str::from_utf8(bytes).unwrap());
        assert!(text(bytes) == text(&said[path]), "{}", path.display());
        pages += 1;
    }
    assert!(pages > 15);
}

#[test]
fn faults_in_a_file_of_words_are_told_with_their_line() {
    let place = Place::new();
    place.write("plant/theme/words/de/eigene.ftl", "paper-plant = Werk\nhier fehlt etwas\n");
    place
        .run(&["build", "--module", "plant", "--language", "de"])
        .refused(&["plant/theme/words/de/eigene.ftl:2", "no message of Fluent"]);
    place.write("plant/theme/words/de/eigene.ftl", "paper-plant = Werk\npaper-plant = Betrieb\n");
    place.run(&["build", "--module", "plant", "--language", "de"]).refused(&["eigene.ftl:2", "stands twice"]);
    // A module's own files lie over the built-in ones, message by message.
    place.write("plant/theme/words/de/eigene.ftl", "frame-contents = Kapitel\n");
    place.run(&["build", "--module", "plant", "--language", "de", "--out", "kurs"]).done();
    assert!(place.text("kurs/toc.html").contains("<h1>Kapitel</h1>"));
    assert!(place.run(&["build", "--language", "d?"]).err.contains("no tag of a language"));
}

#[test]
fn commands_and_reports_speak_the_language_of_the_exam() {
    let place = Place::new();
    german(&place);
    let papers = ["papers", "--exam", "pruefung.toml", "--roster", "gruppe.csv", "--secret", "geheim", "--out", "eins"];
    let ran = place.run(&[&papers[..], &["--screen", "--mark-untranslated"]].concat());
    assert!(ran.err.contains("neues Geheimnis"), "{}", ran.err);
    let said = ran.done();
    assert!(said.contains("Blätter in eins/papers: 2, mit je 14 Aufgaben"), "{said}");
    assert!(said.lines().any(|line| line.starts_with("alle ") && line.ends_with(" sind übersetzt")), "{said}");
    said_in_german(&said);

    // Jürgen answers everything right, Käthe the first half of it.
    let mut answers = rows(&place.text("eins/responses.csv"));
    fill(&mut answers, &graded(&place, &["eins", "eins/responses.csv", "--mark-untranslated", "--out", "leer"]));
    let half = answers.len() * 3 / 4;
    answers[half..].iter_mut().for_each(|row| row.answer = "1".into());
    place.write("antworten.csv", csv(&answers));
    said_in_german(&place.run(&["grade", "eins", "antworten.csv", "--mark-untranslated"]).done());
    let code = answers[0].paper.clone();
    let typed = format!("{code}\n?\n-\n@99\n<\n3 Bananen\n!3 Bananen\nq\n\n");
    let entered = place.run_with(&["enter", "eins", "--mark-untranslated", "--out", "getippt.csv"], typed.as_bytes());
    let entered = entered.done();
    assert!(entered.contains("1 Antwort aufgenommen") && entered.contains("Blattnummer:"), "{entered}");
    said_in_german(&entered);

    // What was wrong with a file is told in German too, and stands so among the remarks on the results.
    let slips =
        format!("paper,question,part,answer\nAAAAA-AAAAA,1,a,3\nxx,1,a,3\n{code},99,a,3\n{code},1,z,3\n{code},1,a,9\n");
    place.write("mehr.csv", slips);
    let ran = place.run(&["grade", "eins", "antworten.csv", "mehr.csv", "--out", "noch", "--mark-untranslated"]);
    for notice in ["mehr.csv:2: ", "ist keine Blattnummer", "keine \"99\"", "keinen \"z\"", "zählt, "] {
        assert!(ran.err.contains(notice), "{notice}: {}", ran.err);
    }
    said_in_german(&ran.err);
    said_in_german(&ran.done());
    assert!(place.text("noch/results.html").contains("mehr.csv:4: "));
    assert_eq!(in_german(&place.path("noch")), 3);

    let recorded = place.run(&["record", "eins", "--records", "kept", "--on", "2026-03-02"]).done();
    assert!(recorded.starts_with("eins: 2 verbucht, "), "{recorded}");
    said_in_german(&recorded);
    let last = answers.last().unwrap();
    let changed = ["override", &code, "1", "a", "0", "--reason", "abgeschrieben", "--by", "G. Falke"];
    let changed = place.run(&[&changed[..], &["--records", "kept", "--on", "2026-03-05"]].concat()).done();
    assert!(changed.starts_with(&format!("Aufgabe 1 (a) des Blatts {code}: jetzt 0 von ")), "{changed}");
    said_in_german(&changed);
    let asked = place.run(&["forget", "A2", "--records", "kept"]);
    said_in_german(&asked.err);
    asked.refused(&["Käthe Groß (A2)", "allen Blättern (1)", "--yes"]);
    let reports: [&[&str]; 6] = [
        &["class"],
        &["items"],
        &["due", "--within", "24"],
        &["person", "A1"],
        &["person", "A2"],
        &["answer", &last.paper, &last.question, &last.part],
    ];
    for report in reports {
        let all = [&["report"], report, &["--records", "kept", "--as-of", "2026-04-01", "--out", "aus"]].concat();
        let ran = place.run(&[&all[..], &["--mark-untranslated"]].concat());
        assert!(ran.err.contains("geschrieben nach aus/"), "{}", ran.err);
        said_in_german(&ran.done());
    }
    assert_eq!(in_german(&place.path("aus")), 6);
    let person = place.text("aus/person-A2.html");
    for words in ["Käthe Groß", "Stand 01.04.2026.", "02.03.2026", "Fertigkeit", "bestanden ab 70 %"] {
        assert!(person.contains(words), "{words}: {person}");
    }
    // Tables keep the names that spreadsheets go by; another language is there for the asking.
    let table = place.text("aus/class.csv");
    assert!(table.starts_with("\u{feff}person,") || table.starts_with("person,"), "{table}");
    assert!(table.contains(",not passed,no,0,0,2026-03-02"), "{table}");
    let english =
        place.run(&["report", "class", "--records", "kept", "--language", "en", "--as-of", "2026-04-01"]).done();
    assert!(english.contains("As of 2026-04-01.") && english.contains("Must not work alone yet"), "{english}");

    // Records of an exam in English stay as they were: nothing is noted of its language.
    place.run(&["demo", "--language", "de", "--out", "vorfuehrung"]).done();
    let told = place.run(&["report", "due", "--records", "vorfuehrung/records.sqlite", "--as-of", "2027-03-01"]).done();
    assert!(told.contains("bereit, läuft bald ab") && told.contains("02.03.2027"), "{told}");
}

#[test]
fn machines_solutions_and_practice_are_told_in_german() {
    let place = Place::new();
    let practised = ["practise", "--language", "de", "--topic", "heat", "--mark-untranslated"];
    let practised = place.run_with(&practised, "?\n?\n?\n?\n?\n?\n1\n=\n-\n-\n-\n-\n-\n-\n".as_bytes()).done();
    assert!(practised.contains("Die Antwort ist") && practised.contains("ausgelassen"), "{practised}");
    said_in_german(&practised);
    let given = ["solve", "heat.rise", "heat.housing=61,6 °C", "heat.ambient=20,6 °C", "--language", "de"];
    let solved = place.run(&[&given[..], &["--mark-untranslated"]].concat()).done();
    assert!(solved.starts_with("Gegeben") && plain(&solved).contains("ΔT = 41 °C"), "{solved}");
    said_in_german(&solved);
    let look = ["look", "mixer", "--language", "de"];
    let told = place.run(&[&look[..], &["--paths"]].concat()).done();
    for words in ["Maschine 1", "Was ihr fehlt: ", "abgelesen", "Wie es folgt"] {
        assert!(told.contains(words), "{words}: {told}");
    }
    let spread = place.run(&[&look[..], &["--spread", "9", "--page", "streuung.html"]].concat()).done();
    assert!(spread.contains("9 Maschinen") && spread.contains("dasselbe als Seite in streuung.html"), "{spread}");
    let page = place.text("streuung.html");
    assert!(page.contains("<html lang=\"de\">") && page.contains("Zu jeder Zahl: "), "{page}");
}

#[test]
fn what_an_author_wrote_in_english_only_is_counted_and_marked() {
    let place = Place::new();
    crate::exam::small(&place);
    place.write("plant/book/SUMMARY.md", "# Contents\n\n- [Ours](ours.md)\n");
    place.write("plant/book/ours.md", "# Our own drive\n\nWords.\n");
    let title = "Zwei Schritte";
    let draw = |out: &str, more: &[&str]| {
        let usual = ["papers", "--module", "plant", "--exam", "small", "--roster", "two.csv", "--secret", "secret"];
        place.run(&[&usual[..], &["--out", out, "--language", "de", "--mark-untranslated"], more].concat()).done()
    };
    let count = |said: &str| -> usize {
        let line = said.lines().find(|line| line.contains("Texte")).unwrap();
        if line.starts_with("alle") { 0 } else { line.split(' ').next().unwrap().parse().unwrap() }
    };
    let said = draw("eins", &[]);
    assert!(said.contains("nicht übersetzt") && count(&said) > 3, "{said}");
    let paper = || {
        let all = tree(&place.path("eins/papers"));
        String::from_utf8(all.values().next().unwrap().clone()).unwrap()
    };
    let marked = paper().matches('⟦').count();
    assert!(marked > 2, "{}", paper());
    place.run(&["build", "--module", "plant", "--language", "de", "--mark-untranslated", "--out", "kurs"]).done();
    assert!(place.text("kurs/ours.html").contains("⟦Our own drive⟧"));
    place.run(&["build", "--module", "plant", "--language", "de", "--out", "kurs"]).done();
    assert!(!place.text("kurs/ours.html").contains('⟦'));

    // A translation takes the mark away and is one fewer that lacks.
    place.write("plant/theme/words/de/eigene.ftl", format!("item-two-steps = {title}\n"));
    let again = draw("zwei", &[]);
    assert_eq!(count(&again) + 1, count(&said), "{again}");

    // Where the author says that the module is German, what stands there is German.
    place.write("plant/module.toml", "title = \"Werk\"\ndescription = \"Eigenes.\"\nlanguage = \"de\"\n");
    let native = draw("drei", &[]);
    assert!(count(&native) < count(&again), "{native}");
    place.run(&["build", "--module", "plant", "--mark-untranslated", "--out", "kurs"]).done();
    assert!(!place.text("kurs/ours.html").contains("⟦Our own drive⟧"));

    // English needs no count.
    let english = ["papers", "--roster", "two.csv", "--secret", "secret", "--out", "vier"];
    assert!(!place.run(&english).done().contains("translated"));
}
