//! The bank of a module's families and items, or a report of everything wrong with them.

use anyhow::{Result, bail};
use drivecourse_quiz::Bank;

use crate::assets::Assets;

/// Reads every family and item; all problems are reported in one pass.
pub(crate) fn load(assets: &Assets) -> Result<Bank> {
    let files = assets.scenarios.iter().map(|(path, bytes)| (path.as_str(), bytes.as_slice()));
    let (bank, problems) = Bank::read(files);
    if problems.is_empty() {
        return Ok(bank);
    }
    let report: Vec<_> = problems.iter().map(|problem| format!("scenarios/{}", problem.report)).collect();
    bail!("the scenarios cannot be used:\n{}", report.join("\n"))
}
