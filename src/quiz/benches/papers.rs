//! Sealed papers for a large class: 10 000 papers of 20 questions from the built-in scenarios, in a stream.

#![allow(missing_docs, clippy::unwrap_used)]
#![allow(clippy::disallowed_methods, reason = "it measures time")]

#[path = "../../../tests/built_in/mod.rs"]
mod built_in;

use std::time::Instant;

use drivecourse_quiz::{Blueprint, Draw, Exam, Person, Secret, Used};

const BLUEPRINT: &str = r#"
title = "Bench"
minutes = 120
pass = "70 %"
band = "10 %"
[[row]]
topic = "mount"
count = 4
[[row]]
topic = "chain"
count = 6
[[row]]
topic = "load"
count = 4
[[row]]
topic = "heat"
count = 4
[[row]]
skill = "safe-work"
count = 2
safety_only = true
"#;

fn main() {
    let bank = built_in::bank();
    let blueprint = Blueprint::read(BLUEPRINT).unwrap();
    let person = |number: usize| Person {
        id: format!("p{number}"),
        name: format!("Person {number}"),
        group: None,
        units: None,
        large_print: false,
    };
    let people: Vec<Person> = (0..10_000).map(person).collect();
    let secret = Secret::new([7; 32]);
    for threads in [1, 2] {
        let start = Instant::now();
        let mut draw = Draw::new(&bank, &blueprint, "bench", secret.clone(), &people, Used::new()).unwrap();
        let mut exam = Exam::new("bench", "", &secret, blueprint.clone());
        draw.papers(&people, 1, threads, |paper| exam.push(&paper)).unwrap();
        let time = start.elapsed().as_secs_f64();
        println!("10 000 papers of 20 questions on {threads} threads: {time:.1} s, {:.0} papers/s", 1e4 / time);
    }
}
