//! `demo`: the main job on the built-in course, from chapters to a graded class.

use std::path::Path;
use std::sync::Arc;

use anyhow::{Context, Result, bail};
use drivecourse_course::book::Units;
use drivecourse_course::pages::Pages;
use drivecourse_machine::chance::Stream;
use drivecourse_machine::language::Message;
use drivecourse_machine::messages;
use drivecourse_quiz::simulate::{Habit, answers};
use drivecourse_quiz::{Bank, Exam, Graded, Secret, Used};
use drivecourse_records::{Date, Store};
use serde::Deserialize;

use crate::assets::Assets;
use crate::{bank, cli, course, files, grade, papers, record, report, words};

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

/// What the simulated apprentices hand in.
const ANSWERS: &str = "responses-handed-in.json";
const ANSWERS_IN: &str = "exam/responses-handed-in.json";

/// The records of the demonstration.
const RECORDS: &str = "records.sqlite";

/// Name of the file that says a demonstration may be replaced.
const MARKER: &str = ".drivecourse-demo";
const MARKER_TEXT: &str =
    "The demonstration beside this file is replaced by the next one. Keep nothing in its folders.\n";

#[derive(Deserialize)]
struct Plant {
    name: String,
    exam: String,
    roster: String,
    sat: Date,
}

pub(crate) fn run(options: &cli::Demo, speech: &cli::Speech) -> Result<()> {
    let assets = words::begin_built_in(speech)?;
    let bank = bank::load(&assets)?;
    let plant = assets.scenarios.get("plant.toml").context(NO_PLANT.text())?;
    let plant: Plant = toml::from_str(std::str::from_utf8(plant)?)?;
    let out = &options.out;
    check_folder(out)?;
    let (chapters, exam, graded) = files::fill(out, MARKER, |fresh| make(&assets, &bank, &plant, fresh))?;
    tell(out, chapters, &exam, &graded)
}

/// Refuses a folder with files in it that no demonstration put there.
fn check_folder(out: &Path) -> Result<()> {
    if out.join(MARKER).is_file() {
        return Ok(());
    }
    let mut inside = match std::fs::read_dir(out) {
        Ok(entries) => entries,
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => return Ok(()),
        Err(_) if out.ancestors().any(Path::is_file) => {
            bail!(IS_A_FILE.say(&[("folder", &out.display().to_string())]))
        }
        Err(error) => return Err(error).with_context(|| CANNOT_LOOK.say(&[("folder", &out.display().to_string())])),
    };
    if inside.next().is_some() {
        bail!(HOLDS_FILES.say(&[("folder", &out.display().to_string())]));
    }
    Ok(())
}

/// The course, the papers, the answers and the results, in `folder`.
fn make(assets: &Assets, bank: &Bank, plant: &Plant, folder: &Path) -> Result<(usize, Exam, Graded)> {
    let pages = course::pages(assets)?;
    let built = course::build(assets, bank.clone(), &folder.join("course"), Units::Both, None)?;
    for warning in &built.warnings {
        eprintln!("drivecourse: {warning}");
    }

    let exam_folder = folder.join("exam");
    let written = papers::blueprint(assets, &plant.exam)?;
    let order = papers::Order {
        plant: plant.name.clone(),
        exam: written.name.clone(),
        written,
        people: papers::roster(assets, &plant.roster)?.people,
        sitting: 1,
        date: None,
        print: papers::Print::default(),
        press: None,
        screen: true,
        words: Arc::clone(&assets.words),
        spoken: words::spoken(assets),
    };
    let scenario = papers::scenario_digest(&assets.scenarios);
    let exam = order.make(bank, &pages, &scenario, Secret::new(SECRET), Used::new(), &exam_folder)?.exam;

    let filled = respond(bank, &exam)?;
    files::write(&exam_folder.join(ANSWERS), filled.as_bytes())?;
    let grade::Judged { graded, notices, .. } =
        grade::judge(bank, &exam, &scenario, &[(ANSWERS.to_owned(), filled.into_bytes())])?;
    let remarks = notices.iter().map(ToString::to_string).collect();
    grade::write(&graded, &pages, &plant.name, None, remarks, &exam_folder.join("results"))?;
    keep(&exam, &graded, &pages, plant, folder)?;
    files::write(&folder.join(MARKER), MARKER_TEXT.as_bytes())?;
    Ok((built.chapters, exam, graded))
}

/// The results in records of their own, and the reports that a training manager reads.
fn keep(exam: &Exam, graded: &Graded, pages: &Pages, plant: &Plant, folder: &Path) -> Result<()> {
    let mut store = Store::open(&folder.join(RECORDS))?;
    record::take(&mut store, record::sitting(exam, plant.sat, plant.sat), graded, folder)?;
    report::write_all(&store, pages, plant.sat, &folder.join("reports"))
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

messages! { pub(crate) SAYS {
    DONE_ONCE = "demo-done-once", "The main job, done once on an invented plant:";
    COURSE = "demo-course", "course";
    CHAPTERS = "demo-chapters", "{count} chapters with practice";
    PAPERS = "demo-papers", "papers";
    DIFFERENT = "demo-different", "{papers} different papers of {questions} questions";
    ON_SCREEN = "demo-on-screen", "the same, to answer on a screen";
    KEYS = "demo-keys", "keys";
    WORKED = "demo-worked", "worked steps, for the assessor";
    HANDED_IN = "demo-answers", "answers";
    SIMULATED = "demo-simulated", "by simulated apprentices";
    RESULTS = "demo-results", "results";
    PASSED = "demo-passed", "{passed} of {papers} passed";
    KEPT = "demo-records", "records";
    ADDED_TO = "demo-added-to", "each attempt, only ever added to";
    REPORTS = "demo-reports", "reports";
    WHO_IS_READY = "demo-who-is-ready", "who is ready, who must not work alone yet";
    GOOD_ONES = "demo-good-ones", "which questions are good ones";
    WRONG_MOST = "demo-wrong-most", "What went wrong most often:";
    ONCE = "demo-once", "once";
    TIMES = "demo-times", "{count} times";
    OPEN_FIRST = "demo-open-first", "Open first: {file}";
} }

messages! { pub(crate) ERRORS {
    NO_PLANT = "error-no-plant", "the built-in plant is missing";
    IS_A_FILE = "error-demo-is-a-file", "{folder} is a file or lies in one; name a new folder with --out";
    CANNOT_LOOK = "error-cannot-look-into", "cannot look into {folder}";
    HOLDS_FILES = "error-demo-holds-files", "{folder} holds files that no demonstration put there; nothing was changed; name a new folder with --out";
} }

fn tell(out: &Path, chapters: usize, exam: &Exam, graded: &Graded) -> Result<()> {
    let passed = graded.candidates.iter().filter(|paper| paper.passed).count();
    let show = |inside: &str| out.join(inside).display().to_string();
    let (papers, questions) = (exam.papers.len().to_string(), exam.blueprint.questions().to_string());
    let (passed, chapters, none) = (passed.to_string(), chapters.to_string(), "");
    let how = |message: Message| message.text().to_owned();
    let lines = [
        (COURSE.text(), CHAPTERS.say(&[("count", &chapters)]), "course/index.html"),
        (PAPERS.text(), DIFFERENT.say(&[("papers", &papers), ("questions", &questions)]), "exam/papers"),
        (none, how(ON_SCREEN), "exam/screen"),
        (KEYS.text(), how(WORKED), "exam/keys"),
        (HANDED_IN.text(), how(SIMULATED), ANSWERS_IN),
        (RESULTS.text(), PASSED.say(&[("passed", &passed), ("papers", &papers)]), "exam/results/results.html"),
        (KEPT.text(), how(ADDED_TO), RECORDS),
        (REPORTS.text(), how(WHO_IS_READY), "reports/class.html"),
        (none, how(GOOD_ONES), "reports/items.html"),
    ];
    let wide = |texts: &mut dyn Iterator<Item = &str>| 1 + texts.map(|text| text.chars().count()).max().unwrap_or(0);
    let (first, second) = (wide(&mut lines.iter().map(|line| line.0)), wide(&mut lines.iter().map(|line| &*line.1)));
    files::say(format!("{}\n", DONE_ONCE.text()))?;
    for (what, how, inside) in &lines {
        files::say(format!("  {what:<first$} {how:<second$} {}", show(inside)))?;
    }
    files::say(format!("\n{}", WRONG_MOST.text()))?;
    for count in graded.causes.iter().take(3) {
        let times = if count.count == 1 { how(ONCE) } else { TIMES.say(&[("count", &count.count.to_string())]) };
        files::say(format!("  {times:<8} {}", in_words(graded, &count.name)))?;
    }
    files::say(format!("\n{}", OPEN_FIRST.say(&[("file", &show("course/index.html"))])))
}

/// What was said of a cause where it was met; tables know it by its short name.
fn in_words<'a>(graded: &'a Graded, cause: &'a str) -> &'a str {
    let mut parts = graded.candidates.iter().flat_map(|paper| &paper.questions).flat_map(|question| &question.parts);
    parts.find(|part| part.causes.first().is_some_and(|first| first == cause)).map_or(cause, |part| &part.because)
}
