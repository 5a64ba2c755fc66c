//! What the chapters say by hand must agree with the registry and with one another.

#![allow(clippy::unwrap_used, reason = "a test stops where it goes wrong")]

use std::path::Path;

use drivecourse_calc::follow_up::check_ages::Check;
use drivecourse_machine::{Known, Registry, System};

fn chapter(name: &str) -> String {
    std::fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("book").join(name)).unwrap()
}

/// Rows of the tables of a chapter, cell by cell.
fn rows(text: &str) -> Vec<Vec<&str>> {
    text.lines()
        .filter(|line| line.starts_with('|'))
        .map(|line| line.trim_matches('|').split('|').map(str::trim).collect())
        .collect()
}

#[test]
fn the_page_of_instruments_gives_the_steps_that_readings_are_rounded_to() {
    let text = chapter("instruments.md");
    let rows = rows(&text);
    let mut missing = Vec::new();
    for id in Registry::get().quantities() {
        let Known::Read(instrument) = id.get().known else { continue };
        let written = |system| {
            let step = instrument.step(system);
            let number = match step.step {
                size if size == 1.0 / 16.0 => "1/16".to_owned(),
                size if size == 1.0 / 32.0 => "1/32".to_owned(),
                size if size == 1.0 / 64.0 => "1/64".to_owned(),
                size => size.to_string(),
            };
            format!("{number} {}", step.unit).replace(" °", if step.unit == "°" { "°" } else { " °" })
        };
        let steps = [written(System::Si), written(System::Us)];
        let said = rows.iter().any(|row| {
            row.len() == 3
                && row[0].contains(instrument.name())
                && row[1].contains(&steps[0])
                && row[2].contains(&steps[1])
        });
        if !said && !missing.contains(&(instrument.name(), steps.clone())) {
            missing.push((instrument.name(), steps));
        }
    }
    assert!(missing.is_empty(), "instruments.md has no row for {missing:?}");
}

#[test]
fn the_plan_of_checks_is_the_one_that_questions_are_marked_by() {
    let text = chapter("following-up.md");
    let rows = rows(&text);
    for (word, check) in [
        ("temperature", Check::Temperature),
        ("oil level", Check::OilLevel),
        ("chain sag", Check::ChainTension),
        ("base bolts", Check::Bolts),
        ("soft foot", Check::SoftFoot),
    ] {
        let row = rows.iter().find(|row| row[0].starts_with(word)).unwrap_or_else(|| panic!("no row for {word}"));
        let mut ages = Vec::new();
        for part in row[1].split(';') {
            let (numbers, unit) = part.trim().rsplit_once(' ').unwrap();
            let hours = match unit {
                "h" => 1.0,
                "days" => 24.0,
                "weeks" => 168.0,
                other => panic!("{word}: {other}?"),
            };
            ages.extend(numbers.split(", ").map(|number| number.parse::<f64>().unwrap() * hours));
        }
        assert_eq!(ages, check.ages_in_hours(), "{word}");
        assert_eq!(row[2] == "locked out", check.needs_lock_out(), "{word}");
    }
}

#[test]
fn the_glossary_is_in_order_and_leads_to_chapters() {
    let text = chapter("glossary.md");
    let mut last = String::new();
    let mut words = 0;
    for line in text.lines().filter(|line| line.starts_with("**")) {
        let word = line[2..].split_once("**").unwrap().0.to_lowercase();
        assert!(word > last, "{word} stands after {last}");
        assert!(line.ends_with('.'), "{word}: no full stop");
        for link in line.split("](").skip(1) {
            let file = link.split_once(')').unwrap().0;
            assert!(!chapter(file).is_empty() && chapter("SUMMARY.md").contains(file), "{word}: {file}");
        }
        last = word;
        words += 1;
    }
    assert!(words > 90, "{words}");
}
