//! Pictures of start-up and vibration, from a family and items of the course itself.

use drivecourse_machine::{Family, Plan};
use drivecourse_quiz::{Bank, Setting};

use super::*;

const FAMILY: &str = include_str!("../../../scenarios/families/quarry-conveyor.toml");
const START: &str = include_str!("../../../scenarios/items/start.toml");
const VIBRATE: &str = include_str!("../../../scenarios/items/vibrate.toml");

fn bank() -> Bank {
    let files =
        [("families/quarry-conveyor.toml", FAMILY), ("items/start.toml", START), ("items/vibrate.toml", VIBRATE)];
    let (bank, problems) = Bank::read(files.map(|(path, text)| (path, text.as_bytes())));
    assert!(problems.is_empty());
    bank
}

fn questions(item: &str, seeds: u64) -> Vec<Question> {
    let bank = bank();
    let item = bank.items.iter().find(|other| other.id == item).unwrap();
    let mut questions = Vec::new();
    for system in System::ALL {
        let setting = Setting::new(item, &bank.plans[0], system).unwrap();
        questions.extend((0..seeds).map(|seed| setting.question(seed).unwrap()));
    }
    questions
}

#[test]
fn every_picture_is_drawn_of_every_kind_of_machine() {
    let plan = Plan::new(Family::read("quarry-conveyor", FAMILY).unwrap()).unwrap();
    for fault in 0..plan.family.faults.len() {
        let case = plan.draw_with(3, Some(&[fault])).unwrap();
        for name in PICTURES.into_iter().filter(|name| !matches!(*name, "shim-pack" | "foot-corners")) {
            for system in System::ALL {
                let figure = Portrait::of_case("x", &case, system).draw(name);
                let figure = figure.unwrap_or_else(|error| panic!("{name}, {}: {error}", plan.family.faults[fault].id));
                assert!(!figure.table.is_empty() && !figure.svg.contains("NaN"), "{name}");
            }
        }
    }
}

#[test]
fn a_spectrum_names_its_lines_only_in_the_solution() {
    for question in questions("vibrate-which-part", 12) {
        let asked = Portrait::of_question("a", &question).draw("spectrum").unwrap();
        let solved = Portrait::of_solution("a", &question).draw("spectrum").unwrap();
        for name in ["motor", "chain", "gear mesh", "bearing"] {
            assert!(!asked.svg.contains(&format!(">{name}</text>")), "{name}");
            assert!(solved.svg.contains(&format!(">{name}</text>")), "{name}");
        }
        // The strongest line is told by its frequency, and nothing else is.
        let told = asked.table.iter().map(|(name, _)| name.as_str()).collect::<Vec<_>>();
        assert_eq!(told, ["Strongest line"]);
        assert!(solved.table.len() > 3);
        let unit = if question.system == System::Si { "Hz" } else { "cpm" };
        assert!(asked.svg.contains(&format!("Frequency, {unit}")));
    }
}

#[test]
fn a_zone_is_pointed_out_only_in_the_solution() {
    for question in questions("vibrate-zone", 12) {
        let asked = Portrait::of_question("a", &question).draw("vibration-zones").unwrap();
        let solved = Portrait::of_solution("a", &question).draw("vibration-zones").unwrap();
        assert!(!asked.description.contains("arrow") && solved.description.contains("arrow"));
        assert_eq!(solved.table.len(), 4, "three limits and the reading");
    }
    // Where the limits themselves are asked they are neither written nor to scale.
    for question in questions("vibrate-limits", 4) {
        let asked = Portrait::of_question("a", &question).draw("vibration-zones").unwrap();
        assert!(asked.table.iter().all(|(_, label)| label == "?"), "{:?}", asked.table);
    }
}

#[test]
fn powers_are_asked_for_by_question_marks() {
    for question in questions("start-power-chain", 12) {
        let asked = Portrait::of_question("a", &question).draw("power-chain").unwrap();
        let solved = Portrait::of_solution("a", &question).draw("power-chain").unwrap();
        for part in &question.parts[..2] {
            let answer = part.right_answer(question.system);
            assert!(!asked.svg.contains(&answer), "{answer}");
            assert!(solved.svg.contains(&answer.replace(' ', "\u{a0}")) || solved.svg.contains(&answer), "{answer}");
        }
        assert_eq!(asked.table.iter().filter(|(_, label)| label == "?").count(), 2);
        assert!(solved.table.iter().all(|(_, label)| !label.contains('?')));
    }
}
