//! A simulated class of 500 whose ability and wrong turns are known: what of that the records give back.

#![allow(clippy::unwrap_used)]

#[path = "../../../tests/built_in/mod.rs"]
mod built_in;

use std::collections::BTreeMap;

use drivecourse_machine::chance::Stream;
use drivecourse_machine::{Kind, System};
use drivecourse_quiz::explain::{cause_name, part_letter};
use drivecourse_quiz::grade::grade_each;
use drivecourse_quiz::simulate::written;
use drivecourse_quiz::{Blueprint, Body, Draw, Exam, Part, Person, Question, Responses, Secret, Used, letter};
use drivecourse_records::report::ItemFilter;
use drivecourse_records::statistics::rank_correlation;
use drivecourse_records::{Date, Filter, Sitting, Store};

const PEOPLE: usize = 500;

/// What a person of this ability writes for a part, and the wrong turn taken, if any.
fn answer(question: &Question, part: &Part, ability: f64, stream: &mut Stream) -> (String, Option<String>) {
    let (luck, choice) = (stream.unit(), stream.unit());
    let fails = luck > ability;
    match &part.body {
        Body::Quantity { asked, keys, predicted } => {
            // The commoner of the foreseen wrong turns is taken more often; a choice answered wrongly has no cause.
            let turn = if choice < 0.6 { 0 } else { (choice * predicted.len() as f64) as usize };
            let wrong = predicted.get(turn).filter(|_| fails && asked.get().kind != Kind::Choice);
            let value = wrong.map_or(keys[0].value, |wrong| wrong.value);
            let cause = wrong.map(|wrong| cause_name(&wrong.cause));
            if fails && wrong.is_none() {
                return (String::new(), None);
            }
            (written(*asked, value, question.system, false), cause)
        }
        Body::Order { right, .. } => {
            let mut order = right.clone();
            if fails {
                order.swap(0, 1);
            }
            (order.iter().map(|place| letter(*place).to_string()).collect::<Vec<_>>().join(" "), None)
        }
        Body::Pick { shown, right, .. } => {
            let place = if fails { (right + 1) % shown.len() } else { *right };
            (letter(place).to_string(), None)
        }
    }
}

#[test]
fn ability_and_common_wrong_turns_are_found_again() {
    let bank = built_in::bank();
    let blueprint = std::fs::read_to_string(built_in::scenarios().join("exams/first-check.toml")).unwrap();
    let blueprint = Blueprint::read(&blueprint).unwrap();
    let people: Vec<Person> = (0..PEOPLE)
        .map(|n| Person {
            id: format!("s{n:03}"),
            name: format!("Person {n}"),
            group: None,
            units: Some(if n % 2 == 0 { System::Si } else { System::Us }),
            large_print: false,
        })
        .collect();
    let secret = Secret::new([9; 32]);
    let mut exam = Exam::new("simulated", "scenario", &secret, blueprint.clone());
    let mut draw = Draw::new(&bank, &blueprint, "simulated", secret, &people, Used::new()).unwrap();
    let mut stream = Stream::new(11, "simulated class");
    let (mut abilities, mut truth) = (Vec::new(), BTreeMap::<String, usize>::new());
    let mut table = String::from("paper;question;part;answer\n");
    draw.papers(&people, 1, 2, |paper| {
        let ability = 0.2 + 0.8 * stream.unit();
        abilities.push((paper.candidate.id.clone(), ability));
        for (place, placed) in paper.questions.iter().enumerate() {
            for (index, part) in placed.question.parts.iter().enumerate() {
                let (text, cause) = answer(&placed.question, part, ability, &mut stream);
                *truth.entry(cause.clone().unwrap_or_default()).or_default() += usize::from(cause.is_some());
                let text = text.replace('"', "\"\"");
                table.push_str(&format!("{};{};{};\"{text}\"\n", paper.code, place + 1, part_letter(index)));
            }
        }
        exam.push(&paper);
    })
    .unwrap();
    truth.remove("");

    let mut store = Store::in_memory().unwrap();
    let mut responses = Responses::new(&exam);
    responses.add("class.csv", table.as_bytes());
    let day = Date::read("2026-03-02").unwrap();
    let sitting = Sitting {
        digest: "simulated".into(),
        exam: exam.id.clone(),
        title: blueprint.title.clone(),
        pass: blueprint.pass,
        months: blueprint.months,
        language: None,
        sat: day,
        recorded: day,
        correction: None,
        renamed: Vec::new(),
    };
    let mut import = store.import(sitting).unwrap();
    grade_each(&exam, &exam.settings(&bank), &responses, 2, |paper| {
        import.paper(&paper).unwrap();
    })
    .unwrap();
    import.finish().unwrap();

    let shares: BTreeMap<String, f64> =
        store.all_papers(&Filter::default()).unwrap().into_iter().map(|paper| (paper.person, paper.share)).collect();
    let (known, found): (Vec<f64>, Vec<f64>) = abilities.iter().map(|(id, ability)| (*ability, shares[id])).unzip();
    let ranks = rank_correlation(&known, &found).unwrap();

    let report = store.items(&Filter::default(), &ItemFilter::default()).unwrap();
    let mut recovered: BTreeMap<&str, usize> = BTreeMap::new();
    for cause in report.items.iter().flat_map(|item| &item.causes) {
        *recovered.entry(&cause.name).or_default() += cause.times;
    }
    let mut common: Vec<(&String, &usize)> = truth.iter().collect();
    common.sort_by(|a, b| b.1.cmp(a.1).then(a.0.cmp(b.0)));
    let times = |name: &str| recovered.get(name).copied().unwrap_or(0);
    let (made, hit): (usize, usize) =
        common.iter().take(20).fold((0, 0), |sum, (name, count)| (sum.0 + **count, sum.1 + times(name).min(**count)));
    let (true_counts, counts): (Vec<f64>, Vec<f64>) =
        truth.iter().map(|(name, count)| (*count as f64, times(name) as f64)).unzip();
    let turns = rank_correlation(&true_counts, &counts).unwrap();
    let exam = &report.exams[0];
    println!("rank correlation of ability and marks: {ranks:.3}");
    println!("twenty commonest wrong turns: {made} made, {hit} recognised as such");
    println!("rank correlation of wrong turns made and recognised, over {}: {turns:.3}", truth.len());
    println!("alpha {:.3}, KR-20 {:.3}, mean {:.3}", exam.alpha.unwrap(), exam.kr20.unwrap(), exam.mean);
    assert!(ranks > 0.85, "{ranks}");
    assert!(hit * 10 >= made * 9, "{hit} of {made}");
    assert!(turns > 0.9, "{turns}");
    assert!(exam.alpha.unwrap() > 0.6);
    // With ability known to matter for every item, no much-asked item goes against the rest.
    let odd = report.items.iter().filter(|item| item.asked > 60 && item.discrimination.is_none_or(|r| r < 0.0)).count();
    assert_eq!(odd, 0);
}
