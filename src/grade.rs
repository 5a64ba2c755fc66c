//! `grade`: responses in, marks with reasons out.

use std::io::Write as _;
use std::path::Path;

use anyhow::{Result, bail};
use drivecourse_course::card::{candidate_result, class_results, otherwise, unread};
use drivecourse_course::pages::Pages;
use drivecourse_course::pages::model::Head;
use drivecourse_machine::messages;
use drivecourse_quiz::grade::{candidates_csv, parts_csv};
use drivecourse_quiz::{Bank, Exam, Graded, Notice, Responses, grade};

use crate::course::pages;
use crate::terminal::clean;
use crate::{bank, cli, files, papers, words};

messages! { pub(crate) SAYS {
    RESULTS_IN = "grade-results-in", "results in {folder}; open {file}";
    UNREAD_ONE = "grade-unread-one", "1 answer could not be read, and earned nothing so far:";
    UNREAD_MORE = "grade-unread-more", "{count} answers could not be read, and earned nothing so far:";
    OTHERWISE_ONE = "grade-otherwise-one", "1 answer is wrong as it was read, and would be right as it may be meant; its mark stands so far:";
    OTHERWISE_MORE = "grade-otherwise-more", "{count} answers are wrong as they were read, and would be right as they may be meant; their marks stand so far:";
    /// What an assessor can do about answers that could not be read, or may be meant otherwise.
    WHAT_TO_DO = "grade-what-to-do", "Look at the sheets. What was copied wrongly, mend with `drivecourse enter` and grade again; once it is recorded, record it\nagain with --correction. What stands so on the sheet and is worth marks, settle with `drivecourse override`.";
} }

messages! { pub(crate) ERRORS {
    /// Why papers in another language may not come out as they were printed.
    OTHER_WORDS = "error-other-words", "the language or its words are not those the papers were made with";
    NO_ANSWERS = "error-no-answers", "there are no answers to any paper of this exam in what was handed in; nothing was written";
    NOT_GRADED = "error-not-graded", "nothing was graded:\n{mismatches}";
    NOT_GRADED_CHANGED = "error-not-graded-changed", "nothing was graded:\n{mismatches}\nThe families or items have changed since the papers were made.";
} }

pub(crate) fn run(options: &cli::Grade, speech: &cli::Speech) -> Result<()> {
    let (exam, assets) = words::begin_exam(&options.module, speech, &options.exam)?;
    let bank = bank::load(&assets)?;
    let mut inputs = Vec::new();
    for path in &options.responses {
        let bytes = files::read(path)?;
        inputs.push((path.display().to_string(), bytes));
    }
    let Judged { graded, nothing, notices } = judge(&bank, &exam, &papers::scenario_digest(&assets.scenarios), &inputs)
        .map_err(
            |error| if exam.language == words::spoken(&assets) { error } else { error.context(OTHER_WORDS.text()) },
        )?;
    for notice in &notices {
        eprintln!("{}", clean(&notice.to_string()));
    }
    if nothing {
        bail!(NO_ANSWERS.text());
    }
    let told = [(unread(&graded), UNREAD_ONE, UNREAD_MORE), (otherwise(&graded), OTHERWISE_ONE, OTHERWISE_MORE)];
    for (answers, one, more) in told.iter().filter(|(answers, ..)| !answers.is_empty()) {
        let said = if answers.len() == 1 { one } else { more };
        eprintln!("drivecourse: {}", said.say(&[("count", &answers.len().to_string())]));
        answers.iter().for_each(|line| eprintln!("  {}", clean(line)));
    }
    if told.iter().any(|(answers, ..)| !answers.is_empty()) {
        WHAT_TO_DO.text().lines().for_each(|line| eprintln!("  {line}"));
    }
    // The exam may be named by its record.
    let folder = if options.exam.is_file() { options.exam.parent().unwrap_or(Path::new("")) } else { &options.exam };
    let out = options.out.clone().unwrap_or_else(|| folder.join("results"));
    let remarks = notices.iter().filter(|notice| notice.lost).map(ToString::to_string).collect();
    // Papers may be older than what the module calls its plant.
    let of_papers = Some(exam.plant.clone()).filter(|plant| !plant.is_empty());
    let plant = options.plant.clone().or(of_papers).unwrap_or_else(|| bank::plant(&assets));
    let date = options.date.clone().or_else(|| exam.date.clone());
    write(&graded, &pages(&assets)?, &plant, date, remarks, &out)?;
    let mut stdout = std::io::stdout().lock();
    if options.json {
        stdout.write_all(graded.json().as_bytes())?;
        return Ok(());
    }
    for paper in &graded.candidates {
        writeln!(stdout, "{}  {:<24} {}", paper.code, clean(&paper.candidate.name), paper.says)?;
    }
    let (folder, file) = (out.display().to_string(), out.join("results.html").display().to_string());
    writeln!(stdout, "\n{}", RESULTS_IN.say(&[("folder", &folder), ("file", &file)]))?;
    Ok(())
}

/// What was handed in, graded.
pub(crate) struct Judged {
    pub(crate) graded: Graded,
    /// Whether it has not as much as a blank row of any paper.
    nothing: bool,
    /// What was noticed on the way.
    pub(crate) notices: Vec<Notice>,
}

/// Grades what was handed in; nothing is graded against other numbers than those printed.
pub(crate) fn judge(bank: &Bank, exam: &Exam, scenario: &str, inputs: &[(String, Vec<u8>)]) -> Result<Judged> {
    let settings = exam.settings(bank);
    let mut responses = Responses::new(exam);
    for (name, bytes) in inputs {
        responses.add(name, bytes);
    }
    match grade(exam, &settings, &responses, papers::threads()) {
        Ok(graded) => Ok(Judged { graded, nothing: responses.is_empty(), notices: responses.notices }),
        Err(mismatches) => {
            let lines: Vec<_> = mismatches.iter().take(5).map(ToString::to_string).collect();
            let said = if scenario == exam.scenario { NOT_GRADED } else { NOT_GRADED_CHANGED };
            bail!(said.say(&[("mismatches", &lines.join("\n"))]))
        }
    }
}

/// Writes the summary, a sheet for each candidate, and the tables.
pub(crate) fn write(
    graded: &Graded,
    pages: &Pages,
    plant: &str,
    date: Option<String>,
    remarks: Vec<String>,
    out: &Path,
) -> Result<()> {
    for paper in &graded.candidates {
        let head = Head {
            plant: plant.to_owned(),
            exam: graded.title.clone(),
            candidate: paper.candidate.name.clone(),
            code: paper.code.to_string(),
            date: date.clone(),
        };
        let html = pages.render("candidate.html", &candidate_result(head, paper))?;
        files::write(
            &out.join("candidates").join(format!("{}-{}.html", paper.candidate.id, paper.code)),
            html.as_bytes(),
        )?;
    }
    let class = class_results(plant, date, graded, remarks);
    files::write(&out.join("results.html"), pages.render("results.html", &class)?.as_bytes())?;
    files::write(&out.join("candidates.csv"), candidates_csv(graded).as_bytes())?;
    files::write(&out.join("parts.csv"), parts_csv(graded).as_bytes())?;
    files::write(&out.join("results.json"), graded.json().as_bytes())
}
