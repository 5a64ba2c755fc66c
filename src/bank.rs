//! The bank of a module's families and items, or a report of everything wrong with them.

use anyhow::{Result, bail};
use drivecourse_machine::{CannotDraw, Plan, Problem, messages};
use drivecourse_quiz::{Bank, FileProblem, Manifest};

use crate::assets::{Assets, Files, MANIFEST};
use crate::words::{self, Native};

messages! { pub(crate) ERRORS {
    CANNOT_BE_USED = "error-scenarios", "the scenarios cannot be used:\n{problems}";
} }

/// Reads every family and item; all problems are reported in one pass.
pub(crate) fn load(assets: &Assets) -> Result<Bank> {
    let (bank, problems) = read(assets);
    if problems.is_empty() {
        return Ok(bank);
    }
    let report: Vec<_> = problems.iter().map(|problem| problem.report.as_str()).collect();
    bail!(CANNOT_BE_USED.say(&[("problems", &report.join("\n"))]))
}

/// What can be read of the families and items, and every problem, each in a file as a person finds it.
///
/// A family from which no machine can be drawn is a problem too: whatever asks of it would try for a long time.
pub(crate) fn read(assets: &Assets) -> (Bank, Vec<FileProblem>) {
    let standard = standard(assets);
    let (mut bank, mut problems) = Bank::read_over(by_path(&assets.scenarios), &standard);
    words::translate(&mut bank, &Native::of(assets, assets.words.code()));
    for problem in &mut problems {
        let file = assets.shown(&format!("scenarios/{}", problem.file));
        // A report begins with its file.
        if let Some(rest) = problem.report.strip_prefix(&problem.file) {
            problem.report = format!("{file}{rest}");
        }
        problem.file = file;
    }
    for plan in &bank.plans {
        if let Err(error) = plan.draw(1) {
            problems.push(cannot_draw(assets, plan, error));
        }
    }
    match manifest(assets) {
        Err(found) => problems.extend(found),
        Ok(manifest) => {
            let (file, text) = (assets.shown(MANIFEST), text(assets));
            let unknown = manifest.reuse(&mut bank, &standard).into_iter();
            problems.extend(unknown.map(|problem| FileProblem {
                report: problem.report(&file, &text),
                file: file.clone(),
                problem,
            }));
        }
    }
    (bank, problems)
}

/// Why no machine of a family could be drawn, at the limit in its file.
pub(crate) fn cannot_draw(assets: &Assets, plan: &Plan, error: CannotDraw) -> FileProblem {
    let path = format!("families/{}.toml", plan.family.id);
    let text = assets.scenarios.get(&path).map_or("".into(), |bytes| String::from_utf8_lossy(bytes));
    let file = assets.shown(&format!("scenarios/{path}"));
    let mut problem = Problem::from(error);
    // A family of the program that is reused does not lie in the module.
    problem.span = problem.span.filter(|span| span.end <= text.len());
    FileProblem { report: problem.report(&file, &text), file, problem }
}

/// What a chapter may name: the module's families and items first, then what else the program has.
pub(crate) fn for_chapters(assets: &Assets, mut bank: Bank) -> Bank {
    let standard = standard(assets);
    for item in standard.items {
        if bank.item_place(&item.id).is_none() {
            bank.items.push(item);
        }
    }
    for plan in standard.plans {
        if bank.plan_place(&plan.family.id).is_none() {
            bank.plans.push(plan);
        }
    }
    bank
}

/// The module's own settings; the usual ones where it has none.
///
/// # Errors
/// Every problem in its file.
pub(crate) fn manifest(assets: &Assets) -> Result<Manifest, Vec<FileProblem>> {
    let file = assets.shown(MANIFEST);
    let text = text(assets);
    Manifest::read(&text).map_err(|problems| {
        let told = problems.into_iter();
        told.map(|problem| FileProblem { report: problem.report(&file, &text), file: file.clone(), problem }).collect()
    })
}

fn text(assets: &Assets) -> String {
    assets.manifest.as_deref().map_or_else(String::new, |bytes| String::from_utf8_lossy(bytes).into_owned())
}

/// What the program has besides the module's own.
fn standard(assets: &Assets) -> Bank {
    // The built-in files are sound: a test reads them all.
    let mut bank = Bank::read(by_path(&assets.standard)).0;
    words::translate(&mut bank, &Native::default());
    bank
}

fn by_path(files: &Files) -> impl Iterator<Item = (&str, &[u8])> {
    files.iter().map(|(path, bytes)| (path.as_str(), bytes.as_slice()))
}
