//! The arguments of the commands for the course: types only, as in `cli.rs`.

use std::path::PathBuf;

use clap::Args;

use crate::cli::{Module, Units};

/// Options of `demo`.
#[derive(Debug, Args)]
pub(crate) struct Demo {
    /// Folder to make; an earlier demonstration there is replaced
    #[arg(long, value_name = "FOLDER", default_value = "drivecourse-demo")]
    pub(crate) out: PathBuf,
}

/// Options of `build`.
#[derive(Debug, Args)]
pub(crate) struct Build {
    /// Folder for the pages; an earlier build there is replaced
    #[arg(long, value_name = "FOLDER", default_value = "course")]
    pub(crate) out: PathBuf,
    /// Units that pages show first; readers can switch. Without it, those that the module names, else both
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
    /// Units that pages show first; readers can switch. Without it, those that the module names, else both
    #[arg(long, value_enum)]
    pub(crate) units: Option<Units>,
    #[command(flatten)]
    pub(crate) module: Module,
}
