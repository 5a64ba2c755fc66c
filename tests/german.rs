//! German in one run: answers as people write them, and what authors and assessors are told.

#![allow(clippy::unwrap_used, reason = "a test stops where it goes wrong")]

mod built_in;

use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Once;

use drivecourse_course::words::{ENGLISH, Files, Words};
use drivecourse_machine::amount::{Wanted, read};
use drivecourse_machine::language::{self, Language};
use drivecourse_machine::{Kind, Problem, Unit};
use drivecourse_quiz::seal::Secret;
use drivecourse_quiz::{Ask, Bank, Blueprint, Draw, Exam, Manifest, Responses, Roster, Used, read_items};
use drivecourse_records::{Date, Error, Reason, Store};

fn files(code: &str) -> Files {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("theme/words").join(code);
    let paths = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    paths.map(|path| (path.display().to_string(), std::fs::read_to_string(&path).unwrap())).collect()
}

/// From here on German is spoken, and what has no German is marked.
fn speak_german() {
    static ONCE: Once = Once::new();
    ONCE.call_once(|| {
        let words = Words::read("de", &[&files("de")], &[&files(ENGLISH)], true).unwrap();
        language::speak(Language::new("de", words.decimal_mark(), words.texts(), true)).unwrap();
    });
}

#[test]
fn answers_are_read_as_they_are_written_in_german() {
    speak_german();
    for (text, kind, shown, read_as) in [
        ("37 Grad", Kind::Temperature, "°C", "37 °C"),
        ("81 Grad", Kind::Temperature, "°F", "81 °F"),
        ("37,5 Grad C", Kind::Temperature, "°F", "37,5 °C"),
        ("37 Grad Celsius", Kind::TemperatureRise, "°C", "37 °C"),
        ("30 Grad", Kind::Angle, "°", "30°"),
        ("83 Minuten", Kind::Time, "min", "83 min"),
        ("83 minutes", Kind::Time, "min", "83 min"),
        ("1 Stunde und 23 Minuten", Kind::Time, "min", "83 min"),
        ("5 Millimeter", Kind::Length, "mm", "5 mm"),
        ("7/16 Zoll", Kind::Length, "in", "7/16 in"),
        ("1450 Umdrehungen pro Minute", Kind::Speed, "r/min", "1450 r/min"),
        ("4,5 Millimeter pro Sekunde", Kind::Velocity, "mm/s", "4,5 mm/s"),
        ("4 Prozent", Kind::Ratio, "%", "4 %"),
        ("zwölf", Kind::Count, "", "12"),
        ("neunzehn Zähne", Kind::Count, "", "19"),
    ] {
        let wanted = Wanted::new(kind).on_scale_of(Unit::find(kind, shown).unwrap()).as_spoken();
        let amount = read(text, &wanted).unwrap_or_else(|error| panic!("{text}: {error}"));
        assert_eq!(amount.as_read().replace('\u{a0}', " "), read_as, "{text}");
    }
    for (text, kind, says) in [
        ("37 Grad", Kind::Temperature, "welche Grad gemeint sind"),
        ("zwölf Millimeter", Kind::Length, "Schreiben Sie sie in Ziffern"),
        ("5 Minuten", Kind::Length, "Mit min ist es eine Zeit"),
        ("5", Kind::Length, "Die Einheit fehlt"),
    ] {
        let said = read(text, &Wanted::new(kind).as_spoken()).unwrap_err().to_string();
        assert!(said.contains(says) && !said.contains('⟦'), "{text}: {said}");
    }
    // A file says the same whatever is spoken.
    assert!(read("5 Minuten", &Wanted::new(Kind::Time)).is_err());
}

/// Some of `problems` says this, and nothing of them is English still.
fn told(problems: &[Problem], says: &[&str]) {
    let all: Vec<String> = problems.iter().map(ToString::to_string).collect();
    let all = all.join("\n");
    assert!(!all.contains('⟦'), "{all}");
    for words in says {
        assert!(all.contains(words), "{words}: {all}");
    }
}

#[test]
fn faults_of_exams_rosters_and_items_are_told_in_german() {
    speak_german();
    let exam = "title = \" \"\nminutes = 0\npass = 70\nunits = \"metric\"\nmonths = 0\nfamilies = []\ncautions = [\"\"]\n\
                [marking]\nunit = \"shall\"\nfigures = { least = 4, most = 3 }\npartial = { within = 0.5, earns = 0.5 }\n\
                [[row]]\ntopic = \"mound\"\ncount = 0\nweight = 0\nmarks = 0\ndifficulty = [5, 2]\n\
                [[row]]\ntopic = \"mount\"\nskill = \"x\"\ncount = 1\n[[row]]\nskill = \"x\"\n";
    let says =
        ["eine Zeile Text", "Schreiben Sie etwa pass = \"70 %\" oder pass = 0.7.", "kein Einheitensystem", "gemeint?"];
    let problems = Blueprint::read(exam).unwrap_err();
    told(&problems, &says);
    assert_eq!(problems.len(), 17, "{problems:#?}");
    let roster = "id,name,group,units,print\na1,Ada,,,\nA1,Bo,,,\na3,ADA,,,\na/4,Cy,,,\na5,\"\",,,\na6,Di,,metric,huge\na7,Ed,,,,x\n";
    told(
        &Roster::read_csv(roster).unwrap_err(),
        &["Zwei Personen heißen \"ADA\"", "keine Schriftgröße", "mehr Zellen"],
    );
    told(&Roster::read_csv("nam\nx\n").unwrap_err(), &["fehlt die Spalte \"id\"", "Ist \"nam\" damit gemeint?"]);
    told(&Roster::read_csv("id,name\n").unwrap_err(), &["nennt niemanden"]);
    let item = |parts: &str| {
        let head = "[[item]]\nid = \"a b\"\ntopic = \"mound\"\nskill = \"s\"\ntitle = \"t\"\ntext = \"{engine}\"\n";
        read_items(&format!("{head}{parts}")).unwrap_err()
    };
    told(&item("part = []\n"), &["Ein Thema \"mound\" gibt es nicht.", "{engine} steht für nichts.", "keinen Teil"]);
    let parts = "[[item.part]]\ntext = \"t\"\n[[item.part]]\ntext = \"t\"\norder = [\"a\", \"A\", \"b\"]\n\
                 [[item.part]]\ntext = \"t\"\npick = [\"a\", \"b\"]\nright = 3\nmarks = 99\n[[item.part]]\ntext = \"t\"\n\
                 ask = \"chain.sag\"\nfrom = [\"chain.sag\"]\nwrong = [{ gives = \"chain.sag * 2\", says = \"\" }]\n\
                 [[item.part]]\ntext = \"t\"\nread = \"mount.twist\"\n[[item.part]]\ntext = \"t\"\nreason = true\n\
                 [[item.part]]\ntext = \"t\"\ndecide = []\n[[item.part]]\ntext = \"t\"\nodd = [\"chain.sag\"]\n\
                 [[item.part]]\ntext = \"t\"\ndiagnose = [\"chain.sag\"]\n";
    told(
        &item(parts),
        &["Dieser Schritt lautet wie Schritt 1", "right = 1 bis 2", "Ein Fehler ohne Worte", "Zeigen Sie mindestens"],
    );
}

#[test]
fn what_cannot_be_drawn_graded_or_recorded_is_told_in_german() {
    speak_german();
    let secret = Secret::new([7; 32]);
    let blueprint =
        "title = \"Fahrt\"\nminutes = 9\npass = \"70 %\"\nfamilies = [\"x\"]\n[[row]]\ntopic = \"mount\"\ncount = 2\n";
    let (blueprint, bank) = (Blueprint::read(blueprint).unwrap(), Bank::default());
    let problems = Draw::new(&bank, &blueprint, "spring", secret.clone(), &[], Used::new()).unwrap_err();
    told(&problems, &["Eine Familie \"x\" gibt es nicht.", "Die Sammlung hat nichts dazu: Thema \"mount\"."]);
    let unsafe_rows = Blueprint { families: None, rows: Vec::new(), ..blueprint.clone() };
    told(
        &Draw::new(&bank, &unsafe_rows, "spring", secret.clone(), &[], Used::new()).unwrap_err(),
        &["Kein Posten sorgt dafür"],
    );
    assert_eq!(bank.item("x").unwrap_err(), "eine Aufgabe \"x\" gibt es nicht; es gibt: ");
    let manifest = Manifest::read("[reuse]\nitems = [\"x\"]\nfamilies = [\"y\"]\n").unwrap();
    told(&manifest.reuse(&mut Bank::default(), &bank), &["Das Programm hat keine Familie \"y\"."]);
    told(&[Exam::read("{\"format\": 99}").unwrap_err()], &["Prüfungsakte hat das Format 99"]);
    let exam = Exam::new("spring", "0", &secret, blueprint);
    let mut responses = Responses::new(&exam);
    responses.add(
        "a.json",
        b"[3, {\"answers\": 7}, {\"steps\": {}, \"answer\": \"1\"}, {\"paper\": {}, \"answer\": \"1\"}]",
    );
    responses.add("b.json", b"{}");
    let notices: Vec<_> = responses.notices.iter().map(|notice| notice.says.as_str()).collect();
    assert!(
        notices.len() == 5 && notices.iter().all(|says| says.contains("ausgelassen") || says.contains("übernommen"))
    );
    let secret = Secret::read("nothing").unwrap_err().to_string();
    assert!(secret.contains("keine Datei mit einem Geheimnis"), "{secret}");

    let store = Store::in_memory().unwrap();
    let missing = Store::existing(Path::new("no-such-file")).unwrap_err();
    assert_eq!(missing.to_string(), "die Aufzeichnungen no-such-file gibt es nicht");
    assert!(Date::read("2026-02-30").unwrap_err().to_string().contains("kein Tag des Kalenders"));
    assert!(Reason::new("", "x").unwrap_err().to_string().contains("braucht einen Grund"));
    let person = store.person("x", Date::read("2026-02-03").unwrap(), 1).unwrap_err();
    assert_eq!(person.to_string(), "bis 03.02.2026 hat niemand in den Aufzeichnungen die Kennung \"x\"");
    assert!(matches!(person, Error::Refused(_)));
}

/// How many times as long as the longest wrong statement the right one may be.
const LONGER: f64 = 1.25;
/// How much of the mean length of all statements the right one has at least.
const SHORTER: f64 = 0.6;
/// In what share of the parts a guess by length alone (always the longest, always the second longest, ...) may be right.
const BY_LENGTH: f64 = 0.4;

#[test]
fn the_length_of_a_statement_does_not_tell_whether_it_is_right() {
    let bank = built_in::bank();
    let german = Words::read("de", &[&files("de")], &[&files(ENGLISH)], true).unwrap().texts();
    let mut offending = Vec::new();
    for language in [ENGLISH, "de"] {
        // How many statements are longer than the right one: the parts where it is so many.
        let mut places: BTreeMap<usize, Vec<String>> = BTreeMap::new();
        for item in &bank.items {
            for (letter, part) in ('a'..).zip(&item.parts) {
                let Ask::Pick { options, right, .. } = &part.ask else { continue };
                let part = format!("{language} {} {letter}", item.id);
                let length = |(place, english): (usize, &String)| match language {
                    ENGLISH => english.chars().count(),
                    _ => {
                        let id = format!("item-{}.{letter}-option-{}", item.id, place + 1);
                        german.get(&id).unwrap_or_else(|| panic!("{id} has no German")).chars().count()
                    }
                };
                let lengths: Vec<usize> = options.iter().enumerate().map(length).collect();
                let (long, all) = (lengths[*right], lengths.iter().sum::<usize>() as f64);
                let wrong = lengths.iter().enumerate().filter(|(place, _)| place != right).map(|(_, length)| *length);
                let longest = wrong.max().unwrap();
                if long as f64 > LONGER * longest as f64 {
                    offending.push(format!("{part}: right has {long} characters, the longest wrong one {longest}"));
                }
                if (long as f64) < SHORTER * all / lengths.len() as f64 {
                    offending.push(format!("{part}: right has {long} characters of {lengths:?}"));
                }
                // Statements of one length tell nothing.
                if lengths.iter().any(|length| *length != long) {
                    places.entry(lengths.iter().filter(|length| **length > long).count()).or_default().push(part);
                }
            }
        }
        let count: usize = places.values().map(Vec::len).sum();
        assert!(count > 50, "{language}: only {count} parts ask for a statement");
        for (longer, parts) in places {
            if parts.len() as f64 > BY_LENGTH * count as f64 {
                let share = format!("{} of {count} parts have {longer} statements longer than the right", parts.len());
                offending.push(format!("{language}: {share}: {}", parts.join(", ")));
            }
        }
    }
    assert!(offending.is_empty(), "{}", offending.join("\n"));
}
