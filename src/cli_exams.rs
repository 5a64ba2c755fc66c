//! The arguments of the commands for exams: types only, as in `cli.rs`.

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use crate::cli::Module;

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
    /// Plant to print on the papers [default: the module's]
    #[arg(long)]
    pub(crate) plant: Option<String>,
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

/// The size of a printed sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum SheetSize {
    /// 210 mm by 297 mm
    A4,
    /// 8.5 in by 11 in
    Letter,
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

/// Options of `enter`.
#[derive(Debug, Args)]
#[command(after_help = "While typing:
  -      leave blank
  <      back
  @3b    go to 3 (b)
  ?      show the question
  !text  take the text as it stands
  q      stop

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
