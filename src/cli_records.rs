//! The arguments of the commands for the records: types only, as in `cli.rs`.

use std::path::PathBuf;

use clap::{Args, Subcommand};
use drivecourse_records::{Date, NoDate};

use crate::cli::Module;

/// Options of `record`.
#[derive(Debug, Args)]
#[command(
    after_help = "Answers or marks that differ from recorded ones (a late file, a mended slip) are not taken without
--correction and --by; then they are a new row, and the earlier ones stay."
)]
pub(crate) struct Record {
    /// Exam folders that `grade` has graded
    #[arg(required = true, value_name = "EXAM")]
    pub(crate) exams: Vec<PathBuf>,
    /// The records; the file is made if it is not there
    #[arg(long, value_name = "FILE")]
    pub(crate) records: PathBuf,
    /// Folder of the results, where it is not the exam folder's own
    #[arg(long, value_name = "FOLDER")]
    pub(crate) results: Option<PathBuf>,
    /// Day of the exam, such as 2026-11-25 [default: today]
    #[arg(long, value_name = "DATE", value_parser = day)]
    pub(crate) on: Option<Date>,
    /// Why other answers or marks than recorded shall count
    #[arg(long, value_name = "REASON", requires = "by")]
    pub(crate) correction: Option<String>,
    /// Who decides that
    #[arg(long, value_name = "NAME", requires = "correction")]
    pub(crate) by: Option<String>,
    /// Id of a person who has another name now
    #[arg(long, value_name = "ID")]
    pub(crate) renamed: Vec<String>,
}

/// Options of `override`.
#[derive(Debug, Args)]
pub(crate) struct Override {
    /// The paper's code
    pub(crate) code: String,
    /// The question's number
    pub(crate) question: usize,
    /// The part's letter
    pub(crate) part: char,
    /// Marks that shall count
    pub(crate) marks: u32,
    /// Which exam, where several in the records have the code: its short name, or the beginning of its digest
    #[arg(long)]
    pub(crate) exam: Option<String>,
    /// Why
    #[arg(long)]
    pub(crate) reason: String,
    /// Who decides
    #[arg(long, value_name = "NAME")]
    pub(crate) by: String,
    /// Day of the decision [default: today]
    #[arg(long, value_name = "DATE", value_parser = day)]
    pub(crate) on: Option<Date>,
    /// The records
    #[arg(long, value_name = "FILE")]
    pub(crate) records: PathBuf,
}

/// Options of `forget`.
#[derive(Debug, Args)]
pub(crate) struct Forget {
    /// The person's id on the roster
    pub(crate) person: String,
    /// The records
    #[arg(long, value_name = "FILE")]
    pub(crate) records: PathBuf,
    /// Yes, for good
    #[arg(long)]
    pub(crate) yes: bool,
}

/// Options of `report`.
#[derive(Debug, Args)]
pub(crate) struct Report {
    #[command(subcommand)]
    pub(crate) of: ReportOf,
}

/// What to report on.
#[derive(Debug, Subcommand)]
pub(crate) enum ReportOf {
    /// One person: papers, skills, trend, what to practise
    Person {
        /// The person's id on the roster, or the whole name
        id: String,
        #[command(flatten)]
        common: Reporting,
    },
    /// The class: who is ready, who must not work alone yet, what it is weak at
    Class {
        #[command(flatten)]
        only: Only,
        #[command(flatten)]
        common: Reporting,
    },
    /// Items: difficulty, discrimination, wrong turns, variants; how reliable each exam is
    Items {
        /// Only this item
        #[arg(long)]
        item: Option<String>,
        /// Only questions about this family of machines
        #[arg(long)]
        family: Option<String>,
        #[command(flatten)]
        only: Only,
        #[command(flatten)]
        common: Reporting,
    },
    /// Who is due for a new paper: competence that has lapsed or soon will
    Due {
        #[command(flatten)]
        only: Only,
        #[command(flatten)]
        common: Reporting,
    },
    /// One answer in an appeal: how it was read, what was expected, why the mark
    Answer {
        /// The paper's code
        code: String,
        /// The question's number
        question: usize,
        /// The part's letter
        #[arg(default_value_t = 'a')]
        part: char,
        /// Which exam, where several in the records have the code: its short name, or the beginning of its digest
        #[arg(long)]
        exam: Option<String>,
        #[command(flatten)]
        common: Reporting,
    },
}

/// Whose papers.
#[derive(Debug, Args)]
pub(crate) struct Only {
    /// Only this group of the roster
    #[arg(long)]
    pub(crate) group: Option<String>,
    /// Only this exam, by its short name
    #[arg(long)]
    pub(crate) exam: Option<String>,
}

/// From where, as of when, to where.
#[derive(Debug, Args)]
pub(crate) struct Reporting {
    /// The records
    #[arg(long, value_name = "FILE")]
    pub(crate) records: PathBuf,
    /// The day to report for [default: today]
    #[arg(long, value_name = "DATE", value_parser = day)]
    pub(crate) as_of: Option<Date>,
    /// How many months ahead a lapse counts as soon
    #[arg(long, value_name = "MONTHS", default_value_t = 2, value_parser = clap::value_parser!(u32).range(..=120))]
    pub(crate) within: u32,
    /// Folder for the report as a page to print, CSV and JSON
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: Option<PathBuf>,
    /// Print JSON, for programs
    #[arg(long)]
    pub(crate) json: bool,
    #[command(flatten)]
    pub(crate) module: Module,
}

/// A day as it is written: 2026-11-25.
fn day(text: &str) -> Result<Date, NoDate> {
    Date::read(text)
}
