//! The arguments: types only. Their comments are the help text. Those of each command are in the `cli_` files beside this one.

use std::path::{Path, PathBuf};
use std::sync::Once;

use clap::{Args, Parser, Subcommand, ValueEnum};
use drivecourse_machine::{System, messages};

use crate::assets::MANIFEST;
pub(crate) use crate::cli_authors::{Check, Manual, New, Schema, Sort, Words};
pub(crate) use crate::cli_courses::{Build, Demo, Serve};
pub(crate) use crate::cli_exams::{Enter, Grade, Papers, SheetSize};
pub(crate) use crate::cli_machines::{Look, Practise, Solve};
pub(crate) use crate::cli_records::{Forget, Only, Override, Record, Report, ReportOf, Reporting};

/// Teach people to commission geared, chain-driven machines: drive cases, a course to practise
/// with, a different paper for every apprentice, and grading that says what went wrong.
#[derive(Debug, Parser)]
#[command(name = "drivecourse", version, propagate_version = true, max_term_width = 100)]
#[command(after_help = "Start with:  drivecourse demo")]
pub(crate) struct Arguments {
    #[command(flatten)]
    pub(crate) speech: Speech,
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

/// Where the course, families and items come from.
#[derive(Debug, Clone, Args)]
pub(crate) struct Module {
    /// Folder of a module of your own (book, scenarios, theme); what it lacks comes from the program
    /// [default: this folder, if it holds module.toml]
    #[arg(long, value_name = "FOLDER")]
    module: Option<PathBuf>,
}

/// What is spoken.
#[derive(Debug, Clone, Default, Args)]
pub(crate) struct Speech {
    /// Language of everything people read, such as de [default: the exam's, the module's, or en]
    #[arg(long, value_name = "TAG", global = true, display_order = 900)]
    pub(crate) language: Option<String>,
    /// With another language: put ⟦ and ⟧ round every text that is not translated
    #[arg(long, global = true, display_order = 900)]
    pub(crate) mark_untranslated: bool,
}

messages! { pub(crate) SAYS {
    MODULE_HERE = "module-here", "this folder holds {file}, so its module is used (as with --module .)";
} }

impl Module {
    /// The one in `folder`, or where none is named in the folder that the program is called in.
    pub(crate) fn new(folder: Option<PathBuf>) -> Self {
        Self { module: folder }
    }

    /// The module's folder: the one named, else the one that the program is called in, if it holds a `module.toml`.
    pub(crate) fn folder(&self) -> Option<PathBuf> {
        let here = || Path::new(MANIFEST).is_file().then(|| PathBuf::from("."));
        self.module.clone().or_else(here)
    }

    /// Says once on standard error that the module of this folder is used, where nobody named it.
    pub(crate) fn announce(&self) {
        static SAID: Once = Once::new();
        if self.module.is_none() && self.folder().is_some() {
            SAID.call_once(|| eprintln!("drivecourse: {}", MODULE_HERE.say(&[("file", MANIFEST)])));
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
