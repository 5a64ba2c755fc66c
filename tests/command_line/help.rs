//! Help and usage errors: in German to the last word, and in English what clap says.

use crate::Place;
use crate::german::{german, said_in_german};

/// Every command, and every command below one.
const COMMANDS: [&[&str]; 24] = [
    &[],
    &["demo"],
    &["build"],
    &["serve"],
    &["papers"],
    &["grade"],
    &["enter"],
    &["record"],
    &["report"],
    &["report", "person"],
    &["report", "class"],
    &["report", "items"],
    &["report", "due"],
    &["report", "answer"],
    &["override"],
    &["forget"],
    &["look"],
    &["practise"],
    &["solve"],
    &["new"],
    &["check"],
    &["schema"],
    &["words"],
    &["manual"],
];

/// What a person reads of a help text or of a usage error: without names of commands and what is quoted.
fn told(help: &str) -> String {
    // The only text that shows the marks.
    let plain = help.replace("⟦ und ⟧", "");
    let mut out = String::new();
    for line in plain.lines().filter(|line| !line.starts_with("Aufruf: ")) {
        let named = line.strip_prefix("  ").filter(|rest| rest.starts_with(|c: char| c.is_ascii_lowercase()));
        out.push_str(named.map_or(line, |rest| rest.split_once(' ').map_or("", |(_, rest)| rest)));
        out.push('\n');
    }
    // Names are quoted as they are typed.
    out.split(['`', '„', '“']).step_by(2).collect::<Vec<_>>().join(" ")
}

#[test]
fn help_is_in_german_to_the_last_word() {
    let place = Place::new();
    // That there is no command besides is seen from the English help.
    let english = place.run(&["--help"]).done();
    let named = english.lines().filter(|line| line.starts_with("  ") && line.as_bytes()[2].is_ascii_lowercase());
    assert_eq!(named.count(), COMMANDS.iter().filter(|command| command.len() == 1).count() + 1, "{english}");
    for command in COMMANDS {
        for flag in ["--help", "-h"] {
            let ran = place.run(&[command, &[flag, "--language", "de", "--mark-untranslated"]].concat());
            let help = ran.done();
            assert!(help.contains("Aufruf: drivecourse") && help.contains("Optionen:"), "{help}");
            said_in_german(&told(&help));
        }
        // Wherever the language stands, and by the command `help`.
        let long = place.run(&[command, &["--help", "--language=de"]].concat()).done();
        assert_eq!(place.run(&[&["--language", "de"], command, &["--help"]].concat()).done(), long);
        if let [command] = command {
            assert_eq!(place.run(&["help", command, "--language", "de"]).done(), long);
        }
        assert!(!place.run(&[command, &["--help"]].concat()).done().contains("Aufruf"), "{command:?}");
    }
    // Without arguments the program shows its help and fails; in a module's folder, in the module's language.
    place.write("module.toml", "title = \"Werk\"\ndescription = \"Eigenes.\"\nlanguage = \"de\"\n");
    let ran = place.run(&[]);
    assert_eq!((ran.code, ran.out.as_str()), (2, ""));
    assert!(ran.err.contains("Aufruf: drivecourse"), "{}", ran.err);
    assert!(place.run(&["--help", "--language", "en"]).done().contains("Usage: drivecourse"));
}

#[test]
fn help_says_all_that_its_list_of_words_holds() {
    let place = Place::new();
    place.run(&["words", "--out", "plant/theme/words/en-GB/all.ftl"]).done();
    // A translation may stand in other lines: defaults and choices are part of it there.
    let words = |text: &str| {
        let mut words: Vec<String> = text.split_whitespace().map(str::to_owned).collect();
        words.sort();
        words
    };
    for command in COMMANDS {
        for flag in ["--help", "-h"] {
            let plain = place.run(&[command, &[flag]].concat()).done();
            let said = [command, &[flag, "--module", "plant", "--language", "en-GB", "--mark-untranslated"]].concat();
            assert_eq!(words(&place.run(&said).done()), words(&plain), "{command:?} {flag}");
        }
    }
}

#[test]
fn what_is_wrong_with_a_command_is_told_in_german() {
    let place = Place::new();
    let usage: [(&[&str], &[&str]); 11] = [
        (&["frobnicate"], &["den Befehl „frobnicate“ gibt es nicht"]),
        (&["papres"], &["Hinweis: einen ähnlichen Befehl gibt es: „papers“"]),
        (&["look", "--fualt", "x"], &["die Angabe „--fualt“ gibt es hier nicht", "„--fault“"]),
        (&["papers"], &["diese Angaben fehlen:\n  --roster <LISTE>\n  --secret <DATEI>", "Aufruf: drivecourse papers"]),
        (&["look", "--units", "metric"], &["„metric“ ist kein Wert für „--units <EINHEITEN>“\n  [möglich: si, us]"]),
        (&["look", "--seed", "x"], &["„x“ ist kein Wert", "eine ganze Zahl von 0 bis 18446744073709551615"]),
        (&["practise", "--count", "99999999999999999999"], &["zu groß"]),
        (&["look", "--spread", "1"], &["1 liegt nicht zwischen 2 und 100000"]),
        (&["look", "--fault", "a", "--spread", "5"], &["geht nicht zusammen mit „--spread <MASCHINEN>“"]),
        (&["practise", "--count"], &["braucht einen Wert"]),
        (&["forget", "A1", "--json", "--records", "x"], &["die Angabe „--json“ gibt es hier nicht"]),
    ];
    for (arguments, says) in usage {
        let ran = place.run(&[arguments, &["--language", "de", "--mark-untranslated"]].concat());
        assert_eq!((ran.code, ran.out.as_str()), (2, ""), "{arguments:?}: {}", ran.err);
        for part in says.iter().chain(&["Fehler: ", "Mehr dazu sagt „--help“."]) {
            assert!(ran.err.contains(part), "{part}: {}", ran.err);
        }
        said_in_german(&told(&ran.err));
        // In English clap itself speaks, save for numbers.
        assert!(place.run(arguments).err.starts_with("error: "), "{arguments:?}");
    }
    place.write("exam/nothing", "");
    place.write("voll/nothing", "");
    let refused: [(&[&str], &str); 12] = [
        (&["papers", "--roster", "fehlt.csv", "--secret", "s", "--out", "o"], "eine Datei fehlt.csv gibt es nicht"),
        (&["papers", "--exam", "fehlt", "--roster", "r", "--secret", "s", "--out", "o"], "keine Prüfung heißt so"),
        (&["grade", "exam", "antworten.csv"], "exam ist kein Ordner einer Prüfung: exam.json fehlt darin"),
        (&["enter", "exam"], "exam.json fehlt darin"),
        (&["record", "exam", "--records", "r.db"], "exam.json fehlt darin"),
        (&["look", "--module", "fehlt"], "den Ordner fehlt gibt es nicht"),
        (&["check", "--module", "exam"], "exam ist kein Modul"),
        (&["look", "mixer", "--topic", "haet"], "war \"heat\" gemeint?"),
        (&["new", "neu", "--topic", "haet"], "ein Thema \"haet\" gibt es nicht"),
        (&["new", "voll"], "voll ist schon da und nicht leer"),
        (&["solve", "load.overhung", "nix"], "\"nix\" ist keine Angabe"),
        (&["schema"], "eine Art von Datei nennen"),
    ];
    for (arguments, says) in refused {
        let ran = place.run(&[arguments, &["--language", "de", "--mark-untranslated"]].concat());
        said_in_german(&told(&ran.err));
        ran.refused(&[says]);
        assert!(!place.run(arguments).err.contains(says), "{arguments:?}");
    }
    // What module.toml says holds before anything else is read.
    place.write("module.toml", "title = \"Werk\"\ndescription = \"Eigenes.\"\nlanguage = \"de\"\n");
    place.run(&["grade", "exam", "antworten.csv"]).refused(&["kein Ordner einer Prüfung", "in diesem Ordner liegt"]);
    place.run(&["record", "exam", "--records", "r.db"]).refused(&["kein Ordner einer Prüfung"]);
    place.run(&["grade", "exam", "a.csv", "--language", "en"]).refused(&["is no exam folder"]);
}

/// English, too, says what is wanted, and not what a number reader tells a programmer.
#[test]
fn numbers_that_are_none_are_told_in_plain_words() {
    let place = Place::new();
    let seed = "a seed is a whole number from 0 to 18446744073709551615; the same seed draws the same numbers again";
    for (arguments, because) in [
        (&["look", "mixer", "--seed", "x"][..], seed),
        (&["look", "mixer", "--seed", "-1"], seed),
        (&["look", "mixer", "--seed", "1.5"], seed),
        (&["look", "mixer", "--seed", "18446744073709551616"], seed),
        (&["practise", "--seed="], seed),
        (&["practise", "--count", "few"], "that is no whole number, such as 3"),
        (&["look", "mixer", "--spread", "99999999999999999999"], "the number is too large or too small"),
        (&["report", "due", "--within="], "no number is written"),
    ] {
        let ran = place.run(arguments);
        assert_eq!((ran.code, ran.out.as_str()), (2, ""), "{arguments:?}");
        let first = ran.err.lines().next().unwrap();
        assert!(first.starts_with("error: invalid value '") && first.ends_with(because), "{arguments:?}: {}", ran.err);
        assert!(ran.err.contains("For more information, try '--help'."), "{}", ran.err);
    }
    assert!(place.run(&["look", "mixer", "--seed", "18446744073709551615"]).done().contains("18446744073709551615"));
}

#[test]
fn what_check_finds_is_english_for_programs() {
    let place = Place::new();
    german(&place);
    place.write("werk/scenarios/exams/kaputt.toml", [0xff, b'\n']);
    let ran = place.run(&["check", "--module", "werk"]);
    assert!(
        ran.out.contains("ist kein Text in UTF-8; bitte") && ran.err.contains("1 Fehler wurde gefunden"),
        "{}",
        ran.out
    );
    let json = place.run(&["check", "--module", "werk", "--json"]);
    assert!(json.out.contains("\"what\": \"The file is not UTF-8 text.\""), "{}", json.out);
    assert!(json.err.contains("1 problem was found"), "{}", json.err);
}

#[test]
fn help_for_a_new_module_names_every_topic() {
    let help = Place::new().run(&["new", "--help"]).done();
    let words: Vec<&str> = help.split(|c: char| !c.is_alphabetic()).collect();
    for topic in drivecourse_machine::topics::ALL {
        assert!(words.contains(&topic.id), "{}: {help}", topic.id);
    }
}
