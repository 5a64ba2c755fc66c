//! The bank of a module's families and items, or a report of everything wrong with them.

use anyhow::{Result, bail};
use drivecourse_machine::Problem;
use drivecourse_quiz::{Bank, FileProblem};

use crate::assets::Assets;

/// Reads every family and item; all problems are reported in one pass.
pub(crate) fn load(assets: &Assets) -> Result<Bank> {
    let (bank, problems) = read(assets);
    if problems.is_empty() {
        return Ok(bank);
    }
    let report: Vec<_> = problems.iter().map(|problem| problem.report.as_str()).collect();
    bail!("the scenarios cannot be used:\n{}", report.join("\n"))
}

/// What can be read of the families and items, and every problem, each in a file as a person finds it.
///
/// A family from which no machine can be drawn is a problem too: whatever asks of it would try for a long time.
pub(crate) fn read(assets: &Assets) -> (Bank, Vec<FileProblem>) {
    let files = assets.scenarios.iter().map(|(path, bytes)| (path.as_str(), bytes.as_slice()));
    let (bank, mut problems) = Bank::read(files);
    for problem in &mut problems {
        let file = assets.shown(&format!("scenarios/{}", problem.file));
        // A report begins with its file.
        if let Some(rest) = problem.report.strip_prefix(&problem.file) {
            problem.report = format!("{file}{rest}");
        }
        problem.file = file;
    }
    for plan in &bank.plans {
        let Err(error) = plan.draw(1) else { continue };
        let path = format!("families/{}.toml", plan.family.id);
        let text = assets.scenarios.get(&path).map_or("".into(), |bytes| String::from_utf8_lossy(bytes));
        let file = assets.shown(&format!("scenarios/{path}"));
        let problem = Problem::from(error);
        problems.push(FileProblem { report: problem.report(&file, &text), file, problem });
    }
    (bank, problems)
}
