//! The arguments: types only. Their comments are the help text.

use std::path::{Path, PathBuf};

use clap::{Args, Parser, Subcommand, ValueEnum};
use drivecourse_machine::System;

use crate::assets::MANIFEST;
pub(crate) use crate::author::{Manual, New, Schema, Sort, Words};
use drivecourse_records::{Date, NoDate};

/// Teach people to commission geared, chain-driven machines: drive cases, a course to practise
/// with, a different paper for every apprentice, and grading that says what went wrong.
#[derive(Debug, Parser)]
#[command(name = "drivecourse", version, propagate_version = true, max_term_width = 100)]
#[command(after_help = "Start with:  drivecourse demo")]
pub(crate) struct Arguments {
    #[command(subcommand)]
    pub(crate) command: Command,
}

/// What to do.
#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// Do the main job once on an invented plant: course, papers, answers, results
    Demo(Demo),
    /// Build the course: a folder of pages for a phone, a screen or a web host
    Build(Build),
    /// Show the course on this machine and build it again whenever a file of the module changes
    Serve(Serve),
    /// Draw a different sealed paper for everyone on a roster, with keys and a response file
    Papers(Papers),
    /// Grade responses: marks, what went wrong, results as pages, CSV and JSON
    Grade(Grade),
    /// Type in answers from paper, each read back at once; stops and goes on where it was
    Enter(Enter),
    /// Take graded exams into the records; repeating it changes nothing
    Record(Record),
    /// Report from the records: a person, the class, items, who is due, one answer in an appeal
    Report(Report),
    /// Change a recorded mark with a reason; the original stays on record
    Override(Override),
    /// Take one person's data out of the records on request; totals are kept
    Forget(Forget),
    /// Show one drive case whole: what is seen, what is hidden, what is wrong with it
    Look(Look),
    /// Practise in the terminal: question, answer, what went wrong, steps
    Practise(Practise),
    /// Work out any quantity from what is given, with the steps
    Solve(Solve),
    /// Make a small module of your own: course, drives, questions, exam, roster, all explained in the files
    New(New),
    /// Read a module's families, items, exams, rosters and chapters, and report every problem in one pass
    Check(Check),
    /// Print the JSON Schema of a kind of file, for editors that complete and check as you type
    Schema(Schema),
    /// Print every text that people read, with its id: what a translator works on
    Words(Words),
    /// Make the manual: a page for each job, to open in a browser
    Manual(Manual),
}

impl Command {
    /// The module that the command is about, if it is about one.
    pub(crate) fn module(&self) -> Option<&Module> {
        match self {
            Self::Build(options) => Some(&options.module),
            Self::Serve(options) => Some(&options.module),
            Self::Papers(options) => Some(&options.module),
            Self::Grade(options) => Some(&options.module),
            Self::Enter(options) => Some(&options.module),
            Self::Report(options) => Some(&options.of.common().module),
            Self::Look(options) => Some(&options.module),
            Self::Practise(options) => Some(&options.module),
            Self::Check(options) => Some(&options.module),
            Self::Words(options) => Some(&options.module),
            Self::Demo(_)
            | Self::Record(_)
            | Self::Override(_)
            | Self::Forget(_)
            | Self::Solve(_)
            | Self::New(_)
            | Self::Schema(_)
            | Self::Manual(_) => None,
        }
    }
}

/// Where the course, families and items come from.
#[derive(Debug, Clone, Args)]
pub(crate) struct Module {
    /// Folder of a module of your own (book, scenarios, theme); what it lacks comes from the program
    /// [default: this folder, if it holds module.toml]
    #[arg(long, value_name = "FOLDER")]
    module: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) speech: Speech,
}

/// What is spoken.
#[derive(Debug, Clone, Args)]
pub(crate) struct Speech {
    /// Language of everything people read, such as de [default: the exam's, the module's, or en]
    #[arg(long, value_name = "TAG")]
    pub(crate) language: Option<String>,
    /// With another language: put ⟦ and ⟧ round every text that is not translated
    #[arg(long)]
    pub(crate) mark_untranslated: bool,
}

impl Module {
    /// The module's folder: the one named, else the one that the program is called in, if it holds a `module.toml`.
    pub(crate) fn folder(&self) -> Option<PathBuf> {
        let here = || Path::new(MANIFEST).is_file().then(|| PathBuf::from("."));
        self.module.clone().or_else(here)
    }

    /// Says on standard error that the module of this folder is used, where nobody named it.
    pub(crate) fn announce(&self) {
        if self.module.is_none() && self.folder().is_some() {
            eprintln!("drivecourse: this folder holds {MANIFEST}, so its module is used (as with --module .)");
        }
    }
}

/// Which units to show.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Units {
    /// Millimetres, newtons, kilowatts, degrees Celsius
    Si,
    /// Inches, pounds, horsepower, degrees Fahrenheit
    Us,
}

impl From<Units> for System {
    fn from(units: Units) -> Self {
        match units {
            Units::Si => Self::Si,
            Units::Us => Self::Us,
        }
    }
}

/// The size of a printed sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum SheetSize {
    /// 210 mm by 297 mm
    A4,
    /// 8.5 in by 11 in
    Letter,
}

/// Options of `demo`.
#[derive(Debug, Args)]
pub(crate) struct Demo {
    /// Folder to make; an earlier demonstration there is replaced
    #[arg(long, value_name = "FOLDER", default_value = "drivecourse-demo")]
    pub(crate) out: PathBuf,
    #[command(flatten)]
    pub(crate) speech: Speech,
}

/// Options of `build`.
#[derive(Debug, Args)]
pub(crate) struct Build {
    /// Folder for the pages; an earlier build there is replaced
    #[arg(long, value_name = "FOLDER", default_value = "course")]
    pub(crate) out: PathBuf,
    /// Units that pages show first; readers can switch. Without it, both are shown
    #[arg(long, value_enum)]
    pub(crate) units: Option<Units>,
    #[command(flatten)]
    pub(crate) module: Module,
}

/// Options of `serve`.
#[derive(Debug, Clone, Args)]
pub(crate) struct Serve {
    /// Port on 127.0.0.1; 0 takes any that is free
    #[arg(long, default_value_t = 8021)]
    pub(crate) port: u16,
    /// Units that pages show first; readers can switch. Without it, both are shown
    #[arg(long, value_enum)]
    pub(crate) units: Option<Units>,
    #[command(flatten)]
    pub(crate) module: Module,
}

/// Options of `papers`.
#[derive(Debug, Args)]
pub(crate) struct Papers {
    /// The exam: a name in scenarios/exams, or a file
    #[arg(long, value_name = "EXAM", default_value = "first-check")]
    pub(crate) exam: String,
    /// Who sits it: a name in scenarios/rosters, or a CSV or TOML file
    #[arg(long, value_name = "ROSTER")]
    pub(crate) roster: String,
    /// The assessor's secret file; it is made if it is not there
    #[arg(long, value_name = "FILE")]
    pub(crate) secret: PathBuf,
    /// Folder for the exam: papers, keys, record, response file
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: PathBuf,
    /// Name of this exam; the same name, secret and roster give the same papers [default: the blueprint's]
    #[arg(long)]
    pub(crate) name: Option<String>,
    /// Plant to print on the papers
    #[arg(long, default_value = "")]
    pub(crate) plant: String,
    /// Date to print on the papers, as it should read
    #[arg(long)]
    pub(crate) date: Option<String>,
    /// Which sitting: 1, and 2 or more for resits
    #[arg(long, default_value_t = 1, value_parser = clap::value_parser!(u32).range(1..=99))]
    pub(crate) sitting: u32,
    /// Large print: letters half as large again
    #[arg(long)]
    pub(crate) large_print: bool,
    /// All papers in one file, and all keys in another, to print at one go
    #[arg(long)]
    pub(crate) one_file: bool,
    /// Make each file of papers and keys as PDF as well (needs a program built with `--features pdf`)
    #[arg(long)]
    pub(crate) pdf: bool,
    /// With --pdf: the size of a sheet; pages printed from a browser take the printer's
    #[arg(long, value_enum, default_value = "a4", requires = "pdf")]
    pub(crate) sheet: SheetSize,
    /// Make a page for each candidate to answer on a screen as well, in the folder `screen`
    #[arg(long)]
    pub(crate) screen: bool,
    /// Exam folders whose machines must not come again
    #[arg(long, value_name = "FOLDER")]
    pub(crate) after: Vec<PathBuf>,
    /// The records, to be warned of paper codes that another exam in them has already
    #[arg(long, value_name = "FILE")]
    pub(crate) records: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) module: Module,
}

/// Options of `grade`.
#[derive(Debug, Args)]
pub(crate) struct Grade {
    /// The exam folder that `papers` made
    pub(crate) exam: PathBuf,
    /// Response files, CSV or JSON
    #[arg(required = true)]
    pub(crate) responses: Vec<PathBuf>,
    /// Folder for the results [default: results, in the exam folder]
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: Option<PathBuf>,
    /// Plant to print on the results [default: the papers']
    #[arg(long)]
    pub(crate) plant: Option<String>,
    /// Date to print on the results, as it should read [default: the papers']
    #[arg(long)]
    pub(crate) date: Option<String>,
    /// Print JSON, for programs
    #[arg(long)]
    pub(crate) json: bool,
    #[command(flatten)]
    pub(crate) module: Module,
}

/// Options of `look`.
#[derive(Debug, Args)]
pub(crate) struct Look {
    /// Name of a drive family; without it, the families are listed
    pub(crate) family: Option<String>,
    /// The machine's number: the same number is the same machine, everywhere
    #[arg(long, default_value_t = 1, allow_negative_numbers = true)]
    pub(crate) seed: u64,
    /// Units to show
    #[arg(long, value_enum, default_value = "si")]
    pub(crate) units: Units,
    /// Show how each quantity follows from those before it
    #[arg(long)]
    pub(crate) paths: bool,
    /// Folder for every picture that can be drawn of the machine, as SVG
    #[arg(long, value_name = "FOLDER")]
    pub(crate) figures: Option<PathBuf>,
    /// Show only the quantities of this topic, such as chain
    #[arg(long, value_name = "TOPIC")]
    pub(crate) topic: Option<String>,
    /// A machine with this fault, by its id; twice for two faults; none for a machine with nothing wrong
    #[arg(long, value_name = "FAULT", conflicts_with = "spread")]
    pub(crate) fault: Vec<String>,
    /// Draw so many machines and chart how each quantity is spread
    #[arg(long, value_name = "MACHINES", value_parser = clap::value_parser!(u32).range(2..=100_000), conflicts_with_all = ["figures", "paths"])]
    pub(crate) spread: Option<u32>,
    /// With --spread: the charts as a page
    #[arg(long, value_name = "FILE", requires = "spread")]
    pub(crate) page: Option<PathBuf>,
    /// Print JSON, for programs
    #[arg(long)]
    pub(crate) json: bool,
    #[command(flatten)]
    pub(crate) module: Module,
}

/// Options of `practise`.
#[derive(Debug, Args)]
pub(crate) struct Practise {
    /// Only this topic: mount, drive, chain, load, heat
    #[arg(long)]
    pub(crate) topic: Option<String>,
    /// Only this item
    #[arg(long)]
    pub(crate) item: Option<String>,
    /// Only machines of this family
    #[arg(long)]
    pub(crate) family: Option<String>,
    /// Where the numbers start; the same seed gives the same questions
    #[arg(long, default_value_t = 1, allow_negative_numbers = true)]
    pub(crate) seed: u64,
    /// How many questions
    #[arg(long, default_value_t = 5, value_parser = clap::value_parser!(u32).range(1..))]
    pub(crate) count: u32,
    /// Units to show
    #[arg(long, value_enum, default_value = "si")]
    pub(crate) units: Units,
    #[command(flatten)]
    pub(crate) module: Module,
}

/// Options of `check`.
#[derive(Debug, Args)]
pub(crate) struct Check {
    /// List the items too, and what is no fault: wrong turns that make no difference, wasteful families
    #[arg(long)]
    pub(crate) all: bool,
    /// Print JSON, for programs
    #[arg(long)]
    pub(crate) json: bool,
    #[command(flatten)]
    pub(crate) module: Module,
}

/// Options of `solve`.
#[derive(Debug, Args)]
#[command(after_help = "Example:  drivecourse solve load.overhung drive.output_torque=\"4500 in-lbf\" \\
            chain.pitch_dia_small=\"5.98 in\" load.connection_factor=1 load.location_factor=1 load.service_factor=1.25

A name may be cut to its last part where that is clear: overhung, wear, span.")]
pub(crate) struct Solve {
    /// The quantity wanted, such as load.overhung
    pub(crate) quantity: Option<String>,
    /// What is given: name=value, with its unit
    #[arg(value_name = "NAME=VALUE")]
    pub(crate) givens: Vec<String>,
    /// A method to use, where there are several (see --list)
    #[arg(long, value_name = "METHOD")]
    pub(crate) by: Vec<String>,
    /// Units to show
    #[arg(long, value_enum)]
    pub(crate) units: Option<Units>,
    /// List quantities and methods; with a word, those that match it
    #[arg(long, value_name = "WORD", num_args = 0..=1, default_missing_value = "")]
    pub(crate) list: Option<String>,
    /// Print JSON, for programs
    #[arg(long)]
    pub(crate) json: bool,
    #[command(flatten)]
    pub(crate) speech: Speech,
}

/// A day as it is written: 2026-11-25.
fn day(text: &str) -> Result<Date, NoDate> {
    Date::read(text)
}

/// Options of `enter`.
#[derive(Debug, Args)]
#[command(after_help = "While typing:  - leave blank   < back   @3b go to 3 (b)   ? show the question   \
            !text take it as it stands   q stop

Everything is saved after each answer.")]
pub(crate) struct Enter {
    /// The exam folder that `papers` made
    pub(crate) exam: PathBuf,
    /// The response file, CSV [default: responses.csv, in the exam folder]
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) module: Module,
}

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
        /// The person's id on the roster
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

impl ReportOf {
    /// What every report is asked with.
    pub(crate) fn common(&self) -> &Reporting {
        match self {
            Self::Person { common, .. }
            | Self::Class { common, .. }
            | Self::Items { common, .. }
            | Self::Due { common, .. }
            | Self::Answer { common, .. } => common,
        }
    }
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
