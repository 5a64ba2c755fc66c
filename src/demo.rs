//! `demo`: the main job on the built-in course, from chapters to a graded class.

use std::path::Path;

use anyhow::{Context, Result};
use drivecourse_course::book::Units;
use drivecourse_machine::chance::Stream;
use drivecourse_quiz::simulate::{Habit, answers};
use drivecourse_quiz::{Bank, Exam, Graded, Secret, Used};
use serde::Deserialize;

use crate::assets::Assets;
use crate::{bank, cli, course, files, grade, papers};

/// Habits of the simulated apprentices, in turn along the roster.
const HABITS: [(&str, Habit); 14] = [
    ("careful", Habit::Careful),
    ("rounds on the way", Habit::RoundsOnTheWay),
    ("takes the radius for the diameter", Habit::WrongTurn("load.overhung/torque", "radius")),
    ("careful", Habit::Careful),
    ("careless now and then", Habit::Careless(0.25)),
    ("never changes units", Habit::NeverConverts),
    ("careful", Habit::Careful),
    ("careless often", Habit::Careless(0.6)),
    ("rounds on the way", Habit::RoundsOnTheWay),
    ("loses the decimal point", Habit::LosesThePoint(0.3)),
    ("careful", Habit::Careful),
    ("runs out of time", Habit::RunsOutOfTime(0.35)),
    ("careless now and then", Habit::Careless(0.15)),
    ("writes the other system's numbers", Habit::OtherUnits),
];

/// The demonstration's secret is public, so that everyone gets the same papers; a real one is made by `papers`.
const SECRET: [u8; 32] = *b"the demonstration keeps none....";

#[derive(Deserialize)]
struct Plant {
    name: String,
    exam: String,
    roster: String,
}

pub(crate) fn run(options: &cli::Demo) -> Result<()> {
    let assets = Assets::load(None)?;
    let bank = bank::load(&assets)?;
    let plant = assets.scenarios.get("plant.toml").context("the built-in plant is missing")?;
    let plant: Plant = toml::from_str(std::str::from_utf8(plant)?)?;
    let out = &options.out;
    let pages = course::pages(&assets)?;
    let built = course::build(&assets, bank.clone(), &out.join("course"), Units::Both, None)?;
    for warning in &built.warnings {
        eprintln!("drivecourse: {warning}");
    }

    let exam_folder = out.join("exam");
    let (name, blueprint) = papers::blueprint(&assets, &plant.exam)?;
    let order = papers::Order {
        plant: plant.name.clone(),
        exam: name,
        blueprint,
        people: papers::roster(&assets, &plant.roster)?.people,
        sitting: 1,
        date: None,
    };
    let scenario = papers::scenario_digest(&assets.scenarios);
    let made = order.make(&bank, &pages, &scenario, Secret::new(SECRET), Used::new(), &exam_folder)?;

    let filled = respond(&bank, &made.exam)?;
    let responses = exam_folder.join("responses-handed-in.json");
    files::write(&responses, filled.as_bytes())?;
    let (graded, notices) =
        grade::judge(&bank, &made.exam, &scenario, &[(responses.display().to_string(), filled.into_bytes())])?;
    let results = exam_folder.join("results");
    grade::write(&graded, &pages, &plant.name, None, notices.iter().map(ToString::to_string).collect(), &results)?;
    tell(out, built.chapters, &made.exam, &graded);
    Ok(())
}

/// What the simulated apprentices hand in, as a JSON response file.
fn respond(bank: &Bank, exam: &Exam) -> Result<String> {
    let settings = exam.settings(bank);
    let mut rows = Vec::new();
    for (place, record) in exam.papers.iter().enumerate() {
        let paper = exam.paper(record, &settings)?;
        let (_, habit) = &HABITS[place % HABITS.len()];
        let mut stream = Stream::new(place as u64, "simulated apprentice");
        for (question, placed) in paper.questions.iter().enumerate() {
            for (part, answer) in answers(&placed.question, habit, &mut stream).into_iter().enumerate() {
                rows.push(serde_json::json!({
                    "paper": record.code.to_string(),
                    "candidate": record.candidate.name,
                    "question": question + 1,
                    "part": drivecourse_quiz::explain::part_letter(part).to_string(),
                    "answer": answer,
                }));
            }
        }
    }
    Ok(serde_json::to_string_pretty(&rows)?)
}

fn tell(out: &Path, chapters: usize, exam: &Exam, graded: &Graded) {
    let passed = graded.candidates.iter().filter(|paper| paper.passed).count();
    let show = |inside: &str| out.join(inside).display().to_string();
    println!("The main job, done once on an invented plant:\n");
    println!("  course   {chapters} chapters with practice        {}", show("course/index.html"));
    println!(
        "  papers   {} different papers, {} questions each  {}",
        exam.papers.len(),
        exam.blueprint.questions(),
        show("exam/papers")
    );
    println!("  keys     worked steps, for the assessor       {}", show("exam/keys"));
    println!("  answers  by simulated apprentices             {}", show("exam/responses-handed-in.json"));
    println!(
        "  results  {passed} of {} passed                      {}",
        graded.candidates.len(),
        show("exam/results/results.html")
    );
    println!("\nWhat went wrong most often:");
    for count in graded.causes.iter().take(3) {
        println!("  {:>3} times  {}", count.count, count.name);
    }
    println!("\nOpen first: {}", show("course/index.html"));
}
