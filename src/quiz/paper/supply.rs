//! What a bank can give to the rows of a blueprint, and why it cannot.

use std::collections::BTreeSet;

use drivecourse_machine::chance::Stream;
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Problem, System};

use super::pick::{Pool, Pools};
use super::settings::{Settings, why};
use crate::bank::Bank;
use crate::blueprint::{Blueprint, Pick, Row};
use crate::item::Item;

/// A candidate item of a row: where it stands in the bank, and the families it fits.
#[derive(Debug, Clone)]
pub(super) struct Candidate {
    pub(super) item: usize,
    pub(super) plans: Vec<usize>,
}

/// What one set of units can give.
#[derive(Debug, Clone)]
pub(super) struct Supply {
    pub(super) candidates: Vec<Candidate>,
    pub(super) pools: Pools,
}

/// No paper lies in the band: the row whose items differ most is at fault.
pub(super) fn out_of_reach(blueprint: &Blueprint, pools: &Pools, nearest: f64) -> Problem {
    let widest = pools.widest();
    Problem::at(
        blueprint.rows[widest].span.clone(),
        format!(
            "No paper comes within {:.1} % of the mean difficulty {:.1}: the nearest has {nearest:.1}, and the items \
             of this row differ most.",
            blueprint.band * 100.0,
            pools.target
        ),
        "Take more from this row, give the bank items of a difficulty between, or widen `band`.",
    )
}

/// The places of the families that the blueprint allows.
pub(super) fn families(bank: &Bank, blueprint: &Blueprint, problems: &mut Vec<Problem>) -> Vec<usize> {
    let Some(names) = &blueprint.families else { return (0..bank.plans.len()).collect() };
    let mut out = Vec::new();
    for (place, name) in names.iter().enumerate() {
        match bank.plan_place(name) {
            Some(plan) if !out.contains(&plan) => out.push(plan),
            Some(_) => {}
            None => {
                let ids = bank.plans.iter().map(|plan| plan.family.id.as_str());
                let mend = suggest(name, ids, "family");
                let what = format!("There is no family called {name:?}.");
                problems.push(match blueprint.family_spans.get(place) {
                    Some(span) => Problem::at(span.clone(), what, mend),
                    None => Problem::whole(what, mend),
                });
            }
        }
    }
    out.sort_unstable();
    out
}

fn suggest<'n>(name: &str, names: impl Iterator<Item = &'n str>, what: &str) -> String {
    nearest(name, names).map_or_else(
        || format!("`drivecourse check --all` lists every {what}."),
        |near| format!("Did you mean {near:?}?"),
    )
}

/// Why no item of the bank answers to the row, if none does.
pub(super) fn unknown(bank: &Bank, row: &Row) -> Option<Problem> {
    if bank.items.iter().any(|item| row.takes(item)) {
        return None;
    }
    let bare = Row { marks: None, safety_only: false, ..row.clone() };
    let named: Vec<&Item> = bank.items.iter().filter(|item| bare.takes(item)).collect();
    if named.is_empty() {
        let (name, names): (_, Vec<&str>) = match &row.pick {
            Pick::Topic(name) => (name, bank.items.iter().map(|item| item.topic.as_str()).collect()),
            Pick::Skill(name) => (name, bank.items.iter().map(|item| item.skill.as_str()).collect()),
            Pick::Item(name) => (name, bank.items.iter().map(|item| item.id.as_str()).collect()),
        };
        let mend = suggest(name, names.into_iter(), "item");
        return Some(Problem::at(row.span.clone(), format!("The bank has nothing of the {}.", row.pick), mend));
    }
    let wanted = match (row.safety_only, row.marks) {
        (true, Some(marks)) => format!("a safety question worth {marks}"),
        (true, None) => "a safety question".into(),
        (false, marks) => format!("worth {}", marks.unwrap_or_default()),
    };
    let has: BTreeSet<u32> = named.iter().map(|item| item.parts.iter().map(|part| part.marks).sum()).collect();
    let has: Vec<String> = has.iter().map(u32::to_string).collect();
    Some(Problem::at(
        row.span.clone(),
        format!("The {} has {} in the bank, but none is {wanted}.", row.pick, count(named.len(), "item")),
        format!(
            "They are worth {} marks; {} of them are safety questions.",
            has.join(", "),
            named.iter().filter(|item| item.safety).count()
        ),
    ))
}

fn count(number: usize, what: &str) -> String {
    if number == 1 { format!("1 {what}") } else { format!("{number} {what}s") }
}

/// Whether all that the row can take are safety questions.
pub(super) fn is_safe(bank: &Bank, row: &Row) -> bool {
    bank.items.iter().filter(|item| row.takes(item)).all(|item| item.safety)
}

/// The rows with what they can take in `system`.
pub(super) fn supply(
    settings: &mut Settings,
    blueprint: &Blueprint,
    plans: &[usize],
    system: System,
    problems: &mut Vec<Problem>,
) -> Option<Supply> {
    let bank = settings.bank;
    let before = problems.len();
    let mut candidates: Vec<Candidate> = Vec::new();
    let mut difficulty = Vec::new();
    let mut pools = Vec::new();
    for row in &blueprint.rows {
        let mut from = Vec::new();
        let mut reasons: Vec<String> = Vec::new();
        for (item, spec) in bank.items.iter().enumerate().filter(|(_, item)| row.takes(item)) {
            let parts = spec.parts.len() as u32;
            if let Some(weight) = row.weight.filter(|weight| *weight < parts) {
                reasons.push(format!("{:?} has {parts} parts, which {weight} marks cannot be shared among", spec.id));
                continue;
            }
            let fitting =
                |difficulty: f64| row.difficulty.is_none_or(|(least, most)| least <= difficulty && difficulty <= most);
            let too = |difficulty: f64| format!("{:?} has a difficulty of {difficulty:.1}", spec.id);
            if let Some(known) = candidates.iter().position(|candidate| candidate.item == item) {
                match fitting(difficulty[known]) {
                    true => from.push(known),
                    false => reasons.push(too(difficulty[known])),
                }
                continue;
            }
            let mut fits = Vec::new();
            for plan in plans.iter().copied() {
                let family = &bank.plans[plan].family.id;
                if !spec.families.is_empty() && !spec.families.contains(family) {
                    continue;
                }
                match settings.settle(item, plan, system) {
                    Ok(ready) => {
                        if fits.is_empty() {
                            difficulty.push(ready.difficulty);
                        }
                        fits.push(plan);
                    }
                    Err(error) => reasons.push(format!("{:?} about {family:?}: {}", spec.id, why(error))),
                }
            }
            if !fits.is_empty() {
                // A candidate that another row may take still.
                let place = candidates.len();
                candidates.push(Candidate { item, plans: fits });
                match fitting(difficulty[place]) {
                    true => from.push(place),
                    false => reasons.push(too(difficulty[place])),
                }
            }
        }
        if from.is_empty() {
            let more = if reasons.len() > 3 { format!("; and {} more", reasons.len() - 3) } else { String::new() };
            let mend = match reasons.as_slice() {
                [] => "The items name families that this exam does not allow.".into(),
                _ => format!("{}{more}.", reasons[..reasons.len().min(3)].join("; ")),
            };
            problems.push(Problem::at(
                row.span.clone(),
                format!("Nothing of the {} fits a family of this exam in {} units.", row.pick, system.code()),
                mend,
            ));
        }
        pools.push(Pool { count: row.count as usize, from });
    }
    if problems.len() > before {
        return None;
    }
    let pools = Pools::new(pools, difficulty, blueprint.band);
    if let Err(nearest) = pools.pick(&mut Stream::new(0, "trial paper")) {
        problems.push(out_of_reach(blueprint, &pools, nearest));
        return None;
    }
    Some(Supply { candidates, pools })
}
