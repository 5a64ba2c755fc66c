//! The bank of a module's families and items, or a report of everything wrong with them.

use anyhow::{Result, anyhow, bail};
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Plan, System, did_you_mean, messages, quoted};
use drivecourse_quiz::{Bank, FileProblem, Manifest};

use crate::assets::{Assets, Files, MANIFEST};
use crate::own_family::Own;

use crate::words;
use crate::words_scenarios::{Native, translate};
use crate::{check, cli, undrawable};

messages! { pub(crate) SAYS {
    NO_FAMILY = "bank-no-family", "there is no family {name}";
    MEANT_PROGRAM = "bank-meant-program", "did you mean {name}, a family of the program?";
    THERE_ARE = "bank-there-are", "there are: {names}";
    THERE_ARE_BOTH = "bank-there-are-both", "the module has {names}; the program has {program}";
    OF_PROGRAM = "bank-of-program", "{name} is a family of the program, and this module does not ask about it; \
        `drivecourse look {family}` shows it; to ask about it, write it into module.toml: [reuse] families = [{name}]";
    MEND_NEAR_PROGRAM = "bank-mend-near-program", "Did you mean {name}, a family of the program?";
    MEND_THERE_ARE_BOTH = "bank-mend-there-are-both", "The module has {names}; the program has {program}.";
    MEND_OF_PROGRAM = "bank-mend-of-program", "It is a family of the program, and this module does not ask about it. \
        Write into module.toml, under [reuse]:\nfamilies = [{name}]";
} }

messages! { pub(crate) ERRORS {
    CANNOT_BE_USED = "error-scenarios", "the scenarios cannot be used:\n{problems}";
} }

/// Reads every family and item; all problems are reported in one pass.
pub(crate) fn load(assets: &Assets) -> Result<Bank> {
    sound(read(assets))
}

/// As [`load`], also where no machine can be drawn of a family: to look at what is wrong with it.
pub(crate) fn load_undrawn(assets: &Assets) -> Result<Bank> {
    sound(read_as(assets, false))
}

fn sound((bank, problems): (Bank, Vec<FileProblem>)) -> Result<Bank> {
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
    read_as(assets, true)
}

/// As [`read`]; a machine of each family is only tried for where they `must_draw`.
fn read_as(assets: &Assets, must_draw: bool) -> (Bank, Vec<FileProblem>) {
    let standard = standard(assets);
    let (mut bank, mut problems) = Bank::read_over(by_path(&assets.scenarios), &standard);
    translate(&mut bank, &Native::of(assets, assets.words.code()));
    for problem in &mut problems {
        let file = assets.shown(&format!("scenarios/{}", problem.file));
        // A report begins with its file.
        if let Some(rest) = problem.report.strip_prefix(&problem.file) {
            problem.report = format!("{file}{rest}");
        }
        problem.file = file;
    }
    for plan in bank.plans.iter().filter(|_| must_draw) {
        if let Err(error) = plan.draw(1) {
            let broadest = undrawable::sound(plan).unwrap_or_else(|| plan.explain(error));
            let own = Own::of(assets, &bank, &standard, plan);
            problems.push(undrawable::tell_of(assets, &own, broadest));
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

/// Whether the family `id` was written in the module.
pub(crate) fn is_own(assets: &Assets, id: &str) -> bool {
    assets.is_own(&format!("scenarios/families/{id}.toml"))
}

/// The family called `id` among those that questions are asked about.
///
/// # Errors
/// As [`no_family`]; of a family of the program that the module has not taken over, how that is done.
pub(crate) fn plan<'b>(assets: &Assets, bank: &'b Bank, id: &str) -> Result<&'b Plan> {
    if let Some(place) = bank.plan_place(id) {
        return Ok(&bank.plans[place]);
    }
    let all = for_chapters(assets, bank.clone());
    if all.plan_place(id).is_some() {
        return Err(anyhow!(OF_PROGRAM.say(&[("name", &format!("{id:?}")), ("family", id)])));
    }
    Err(no_family(assets, &all, id))
}

/// How to mend the name `id` in a file, of a family that questions are not asked about: which was meant, or which there are.
pub(crate) fn other_family(assets: &Assets, bank: &Bank, id: &str) -> String {
    let all = for_chapters(assets, bank.clone());
    if all.plan_place(id).is_some() {
        return MEND_OF_PROGRAM.say(&[("name", &format!("{id:?}"))]);
    }
    let own = || bank.plans.iter().map(|plan| plan.family.id.as_str());
    let program = || all.plans.iter().map(|plan| plan.family.id.as_str()).filter(|id| bank.plan_place(id).is_none());
    if let Some(near) = nearest(id, own().chain(program())) {
        return match bank.plan_place(near) {
            Some(_) => did_you_mean(near),
            None => MEND_NEAR_PROGRAM.say(&[("name", &quoted(near))]),
        };
    }
    let listed = |names: &mut dyn Iterator<Item = &str>| names.collect::<Vec<_>>().join(", ");
    match (listed(&mut own()), listed(&mut program())) {
        (names, none) | (none, names) if none.is_empty() => check::THERE_ARE.say(&[("names", &names)]),
        (names, program) => MEND_THERE_ARE_BOTH.say(&[("names", &names), ("program", &program)]),
    }
}

/// That there is no family `id`: which was meant, or which there are, and whose.
pub(crate) fn no_family(assets: &Assets, all: &Bank, id: &str) -> anyhow::Error {
    let ids = all.plans.iter().map(|plan| plan.family.id.as_str());
    let of_program = |id: &str| assets.is_module() && !is_own(assets, id);
    let mend = match nearest(id, ids.clone()) {
        Some(near) => {
            let says = if of_program(near) { MEANT_PROGRAM } else { words::MEANT };
            says.say(&[("name", &format!("{near:?}"))])
        }
        None => {
            let (program, own): (Vec<&str>, Vec<&str>) = ids.partition(|id| of_program(id));
            match (own.is_empty(), program.is_empty()) {
                (false, false) => THERE_ARE_BOTH.say(&[("names", &own.join(", ")), ("program", &program.join(", "))]),
                _ => THERE_ARE.say(&[("names", &[own, program].concat().join(", "))]),
            }
        }
    };
    anyhow!("{}; {mend}", NO_FAMILY.say(&[("name", &format!("{id:?}"))]))
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

/// The units to show: those that are asked for, else those that the module names.
pub(crate) fn units(assets: &Assets, asked: Option<cli::Units>) -> Option<System> {
    asked.map(System::from).or_else(|| manifest(assets).ok()?.units)
}

/// The plant's name that the module has; empty for none.
pub(crate) fn plant(assets: &Assets) -> String {
    manifest(assets).map_or_else(|_| String::new(), |manifest| manifest.plant)
}

fn text(assets: &Assets) -> String {
    assets.manifest.as_deref().map_or_else(String::new, |bytes| String::from_utf8_lossy(bytes).into_owned())
}

/// What the program has besides the module's own.
pub(crate) fn standard(assets: &Assets) -> Bank {
    // The built-in files are sound: a test reads them all.
    let mut bank = Bank::read(by_path(&assets.standard)).0;
    translate(&mut bank, &Native::default());
    bank
}

fn by_path(files: &Files) -> impl Iterator<Item = (&str, &[u8])> {
    files.iter().map(|(path, bytes)| (path.as_str(), bytes.as_slice()))
}
