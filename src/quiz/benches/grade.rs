//! How many responses a second are read, marked and diagnosed, and how many questions drawn.

#![allow(missing_docs, clippy::unwrap_used)]
#![allow(clippy::disallowed_methods, reason = "it measures time")]

#[path = "../../../tests/built_in/mod.rs"]
mod built_in;

use std::hint::black_box;
use std::time::Instant;

use drivecourse_machine::System;
use drivecourse_machine::chance::Stream;
use drivecourse_quiz::simulate::{Habit, answers};
use drivecourse_quiz::{Verdict, mark};

fn main() {
    let bank = built_in::bank();
    let start = Instant::now();
    let settings = bank.settings(System::Us, |_, _| true);
    println!("{} settings made ready in {:.2} s", settings.len(), start.elapsed().as_secs_f64());
    let start = Instant::now();
    let questions: Vec<_> =
        (0..10).flat_map(|seed| settings.iter().map(move |setting| setting.question(seed).unwrap())).collect();
    println!("{:.0} questions a second", questions.len() as f64 / start.elapsed().as_secs_f64());
    // A class of habits: most right, some with a foreseen wrong turn, some with a slip, some blank.
    let habits = [
        Habit::Careful,
        Habit::Careful,
        Habit::RoundsOnTheWay,
        Habit::Careless(0.5),
        Habit::NeverConverts,
        Habit::LosesThePoint(0.4),
        Habit::RunsOutOfTime(0.2),
    ];
    let mut stream = Stream::new(1, "bench");
    let written: Vec<(usize, Vec<String>)> = (questions.iter().enumerate())
        .flat_map(|(index, question)| habits.iter().map(move |habit| (index, question, habit)))
        .map(|(index, question, habit)| (index, answers(question, habit, &mut stream)))
        .collect();
    let responses: usize = written.iter().map(|(_, texts)| texts.len()).sum();
    let mut rates = Vec::new();
    let mut wrong = 0;
    for _ in 0..9 {
        let start = Instant::now();
        wrong = 0;
        for (index, texts) in &written {
            let texts: Vec<&str> = texts.iter().map(String::as_str).collect();
            let marks = mark(&questions[*index], black_box(&texts));
            wrong += marks.iter().filter(|mark| mark.verdict == Verdict::Wrong).count();
            black_box(&marks);
        }
        rates.push(responses as f64 / start.elapsed().as_secs_f64());
    }
    rates.sort_by(f64::total_cmp);
    println!("{responses} responses, {wrong} of them wrong: {:.0} a second (median of 9)", rates[4]);
}
