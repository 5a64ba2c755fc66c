//! The arguments of the commands that show machines and practise on them: types only, as in `cli.rs`.

use std::path::PathBuf;

use clap::Args;

use crate::cli::{Module, Units};
use crate::usage::seed;

/// Options of `look`.
#[derive(Debug, Args)]
pub(crate) struct Look {
    /// Name of a drive family; without it, the families are listed
    pub(crate) family: Option<String>,
    /// The machine's number: the same number is the same machine, everywhere
    #[arg(long, default_value_t = 1, allow_negative_numbers = true, value_parser = seed)]
    pub(crate) seed: u64,
    /// Units to show; without it, those that the module names, else si
    #[arg(long, value_enum)]
    pub(crate) units: Option<Units>,
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
    /// The first machine with this name in the family's table, from the seed on
    #[arg(long, value_name = "NAME", conflicts_with = "spread")]
    pub(crate) machine: Option<String>,
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
    /// Only this topic, such as chain; a name that is none lists them all
    #[arg(long)]
    pub(crate) topic: Option<String>,
    /// Only this item
    #[arg(long)]
    pub(crate) item: Option<String>,
    /// Only machines of this family
    #[arg(long)]
    pub(crate) family: Option<String>,
    /// Where the numbers start; the same seed gives the same questions
    #[arg(long, default_value_t = 1, allow_negative_numbers = true, value_parser = seed)]
    pub(crate) seed: u64,
    /// How many questions
    #[arg(long, default_value_t = 5, value_parser = clap::value_parser!(u32).range(1..))]
    pub(crate) count: u32,
    /// Units to show; without it, those that the module names, else si
    #[arg(long, value_enum)]
    pub(crate) units: Option<Units>,
    #[command(flatten)]
    pub(crate) module: Module,
}

/// Options of `solve`.
#[derive(Debug, Args)]
#[command(after_help = "Example:  drivecourse solve load.overhung drive.output_torque=\"4500 in-lbf\" \\
            chain.pitch_dia_small=\"5.98 in\" load.connection_factor=1 \\
            load.location_factor=1 load.service_factor=1.25

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
    /// List quantities and methods; with a word, those that match it. What has no method, or only one that is marked, is given and never asked
    #[arg(long, value_name = "WORD", num_args = 0..=1, default_missing_value = "")]
    pub(crate) list: Option<String>,
    /// Print JSON, for programs
    #[arg(long)]
    pub(crate) json: bool,
}
