//! A million responses marked and stored: how long, and how much memory at most.
//!
//! `cargo run --release -p drivecourse-records --example million [RESPONSES] [FILE]`
//!
//! Exams of two thousand papers each, one after another, as they come in practice: papers drawn, answered, made again,
//! marked, and recorded in a file, each exam in one transaction.

#![allow(clippy::disallowed_methods, reason = "it measures time")]

#[path = "../../../tests/built_in/mod.rs"]
mod built_in;

use std::path::PathBuf;
use std::time::{Duration, Instant};

use drivecourse_machine::chance::Stream;
use drivecourse_quiz::explain::part_letter;
use drivecourse_quiz::grade::grade_each;
use drivecourse_quiz::simulate::{Habit, answers};
use drivecourse_quiz::{Bank, Blueprint, Draw, Exam, Person, Responses, Secret, Used};
use drivecourse_records::{Date, Sitting, Store};

type Failure = Box<dyn std::error::Error>;

/// Papers of one exam.
const CLASS: usize = 2_000;

fn main() -> Result<(), Failure> {
    let mut arguments = std::env::args().skip(1);
    let wanted: usize = arguments.next().map_or(Ok(1_000_000), |text| text.parse())?;
    let file: PathBuf = arguments.next().map_or_else(|| std::env::temp_dir().join("million.records"), PathBuf::from);
    if file.exists() {
        return Err(format!("{} is there already", file.display()).into());
    }
    let bank = built_in::bank();
    let text = std::fs::read_to_string(built_in::scenarios().join("exams/first-check.toml"))?;
    let blueprint = Blueprint::read(&text).map_err(|problems| format!("{problems:?}"))?;
    let day = Date::read("2026-03-02")?;
    let mut store = Store::open(&file)?;
    let (mut stored, mut exams) = (0, 0);
    let (mut made, mut marked) = (Duration::ZERO, Duration::ZERO);
    while stored < wanted {
        let start = Instant::now();
        let name = format!("million-{exams}");
        let (exam, table) = sit(&bank, &blueprint, &name)?;
        made += start.elapsed();
        let start = Instant::now();
        let mut responses = Responses::new(&exam);
        responses.add("answers.csv", table.as_bytes());
        drop(table);
        let mut import = store.import(Sitting {
            digest: name.clone(),
            exam: name,
            title: blueprint.title.clone(),
            pass: blueprint.pass,
            months: None,
            language: None,
            sat: day,
            recorded: day,
            correction: None,
            renamed: Vec::new(),
        })?;
        let mut failed = None;
        grade_each(&exam, &exam.settings(&bank), &responses, 2, |paper| {
            stored += paper.questions.iter().map(|question| question.parts.len()).sum::<usize>();
            failed = failed.take().or(import.paper(&paper).err());
        })
        .map_err(|mismatches| format!("{mismatches:?}"))?;
        if let Some(error) = failed {
            return Err(error.into());
        }
        import.finish()?;
        marked += start.elapsed();
        exams += 1;
    }
    store.check()?;
    println!("{stored} responses of {exams} exams of {CLASS} papers");
    println!(
        "drawing and answering {:.0} s; reading, marking and storing {:.0} s",
        made.as_secs_f64(),
        marked.as_secs_f64()
    );
    println!("{:.0} responses a second", stored as f64 / marked.as_secs_f64());
    println!("file {} MB, peak memory {} MB", std::fs::metadata(&file)?.len() / 1_000_000, peak()?);
    Ok(())
}

/// An exam drawn, and what a class of careless people answers.
fn sit(bank: &Bank, blueprint: &Blueprint, name: &str) -> Result<(Exam, String), Failure> {
    let people: Vec<Person> = (0..CLASS)
        .map(|n| Person {
            id: format!("m{n}"),
            name: format!("Person {n}"),
            group: None,
            units: None,
            large_print: false,
        })
        .collect();
    let secret = Secret::new([7; 32]);
    let mut exam = Exam::new(name, "scenario", &secret, blueprint.clone());
    let mut draw =
        Draw::new(bank, blueprint, name, secret, &people, Used::new()).map_err(|problems| format!("{problems:?}"))?;
    let mut table = String::from("paper;question;part;answer\n");
    let mut stream = Stream::new(3, name);
    draw.papers(&people, 1, 2, |paper| {
        for (place, placed) in paper.questions.iter().enumerate() {
            for (part, text) in answers(&placed.question, &Habit::Careless(0.3), &mut stream).into_iter().enumerate() {
                let text = text.replace('"', "\"\"");
                table.push_str(&format!("{};{};{};\"{text}\"\n", paper.code, place + 1, part_letter(part)));
            }
        }
        exam.push(&paper);
    })
    .map_err(|problem| problem.to_string())?;
    Ok((exam, table))
}

/// Most memory held at one time, in MB, as Linux counts it.
fn peak() -> Result<u64, Failure> {
    let status = std::fs::read_to_string("/proc/self/status")?;
    let line = status.lines().find(|line| line.starts_with("VmHWM")).ok_or("no peak is known here")?;
    let kilobytes: u64 = line.split_whitespace().nth(1).ok_or("no peak is known here")?.parse()?;
    Ok(kilobytes / 1000)
}
