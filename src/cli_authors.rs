//! The arguments of the commands for authors: types only, as in `cli.rs`.

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use crate::cli::{Module, Units};

/// Options of `new`.
#[derive(Debug, Args)]
pub(crate) struct New {
    /// Folder to make
    pub(crate) folder: PathBuf,
    /// Topics, some of drive, mount, oil, align, fasten, chain, load, start, heat, vibrate, noise, follow, with commas
    /// between them and no blanks; the words of a chapter do too, "overhung load" in quotation marks: each brings its chapter and its columns in the table of machines [default: mount,chain,load,heat]
    #[arg(long, value_name = "TOPICS", value_delimiter = ',')]
    pub(crate) topic: Vec<String>,
    /// The program's family that your drive is a variation of; `drivecourse look` lists them
    #[arg(long, value_name = "FAMILY", default_value = "quarry-conveyor")]
    pub(crate) like: String,
    /// The units of your plates: the table, limits and exam begin in them
    #[arg(long, value_enum, default_value = "si")]
    pub(crate) units: Units,
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

/// A kind of file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Sort {
    /// Drive families: scenarios/families/*.toml
    Family,
    /// Items: scenarios/items/*.toml
    Item,
    /// Exams: scenarios/exams/*.toml
    Exam,
    /// Rosters: scenarios/rosters/*.toml
    Roster,
    /// A module's own settings: module.toml
    Module,
}

/// Options of `schema`.
#[derive(Debug, Args)]
pub(crate) struct Schema {
    /// The kind of file
    #[arg(value_enum, value_name = "KIND")]
    pub(crate) sort: Option<Sort>,
    /// Folder to write into; without a kind, all of them
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: Option<PathBuf>,
}

/// Options of `manual`.
#[derive(Debug, Args)]
pub(crate) struct Manual {
    /// Folder for the pages; an earlier manual there is replaced
    #[arg(long, value_name = "FOLDER", default_value = "manual")]
    pub(crate) out: PathBuf,
}

/// Options of `words`.
#[derive(Debug, Args)]
pub(crate) struct Words {
    /// Only what the language has no text for
    #[arg(long)]
    pub(crate) missing: bool,
    /// Only texts whose id holds this word, such as heat
    #[arg(long, value_name = "WORD")]
    pub(crate) only: Option<String>,
    /// File to write, rather than the terminal
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) module: Module,
}
