//! What a bank can give to the rows of a blueprint, and why it cannot.

use std::collections::BTreeSet;

use drivecourse_machine::chance::Stream;
use drivecourse_machine::language::Message;
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Problem, System, did_you_mean, language, messages};

use super::pick::{Pool, Pools};
use super::settings::{Settings, why};
use crate::bank::Bank;
use crate::blueprint::{Blueprint, Pick, Row};
use crate::item::Item;
use crate::mend::{NO_FAMILY, quoted};

messages! { pub(crate) SAYS {
    OUT_OF_REACH = "problem-draw-out-of-reach", "No paper comes within {band} % of the mean difficulty {mean}: the nearest has {nearest}, and the items of this row differ most.";
    WIDEN_BAND = "problem-draw-widen-band", "Take more from this row, give the bank items of a difficulty between, or widen `band`.";
    FAMILIES = "problem-draw-families", "`drivecourse check --all` lists every family.";
    ITEMS = "problem-draw-items", "`drivecourse check --all` lists every item.";
    NOTHING_OF = "problem-draw-nothing-of", "The bank has nothing of the {pick}.";
    ONE_BUT_NONE = "problem-draw-one-but-none", "The {pick} has 1 item in the bank, but none is {wanted}.";
    SOME_BUT_NONE = "problem-draw-some-but-none", "The {pick} has {count} items in the bank, but none is {wanted}.";
    SAFETY_WORTH = "problem-draw-safety-worth", "a safety question worth {marks}";
    SAFETY = "problem-draw-safety", "a safety question";
    WORTH = "problem-draw-worth", "worth {marks}";
    THEY_ARE = "problem-draw-they-are", "They are worth {marks} marks; {safe} of them are safety questions.";
    NO_WEIGHT_ONE = "problem-draw-no-weight-one", "{item} has {parts} parts, which 1 mark cannot be shared among";
    NO_WEIGHT = "problem-draw-no-weight", "{item} has {parts} parts, which {weight} marks cannot be shared among";
    DIFFICULTY_IS = "problem-draw-difficulty-is", "{item} has a difficulty of {difficulty}";
    NO_FIT = "problem-draw-no-fit", "{item} about {family}: {why}";
    OTHER_FAMILIES = "problem-draw-other-families", "The items name families that this exam does not allow.";
    AND_MORE = "problem-draw-and-more", "and {count} more";
    NOTHING_FITS = "problem-draw-nothing-fits", "Nothing of the {pick} fits a family of this exam in {units} units.";
} }

/// A number to one decimal, as the language writes it.
fn tenths(value: f64) -> String {
    language::with_decimal_mark(format!("{value:.1}"))
}

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

/// How many items `row` may take about the families at `plans`.
pub(super) fn fitting(
    settings: &mut Settings<'_>,
    (blueprint, row): (&Blueprint, &Row),
    plans: &[usize],
    system: System,
) -> usize {
    let bank = settings.bank;
    let mut fits = |item: usize, spec: &Item| {
        let known = |plan: &&usize| spec.families.is_empty() || spec.families.contains(&bank.plans[**plan].family.id);
        let mut about = plans.iter().filter(known);
        let difficulty = about.find_map(|plan| settings.settle(item, *plan, system).ok().map(|ready| ready.difficulty));
        difficulty
            .is_some_and(|difficulty| row.difficulty.is_none_or(|(least, most)| (least..=most).contains(&difficulty)))
    };
    let taken = bank.items.iter().enumerate().filter(|(_, spec)| blueprint.takes(row, spec));
    let taken = taken.filter(|(_, spec)| row.weight.is_none_or(|weight| weight as usize >= spec.parts.len()));
    taken.filter(|(item, spec)| fits(*item, spec)).count()
}

/// No paper lies in the band: the row whose items differ most is at fault.
pub(super) fn out_of_reach(blueprint: &Blueprint, pools: &Pools, nearest: f64) -> Problem {
    let widest = pools.widest();
    Problem::at(
        blueprint.rows[widest].span.clone(),
        OUT_OF_REACH.say(&[
            ("band", &tenths(blueprint.band * 100.0)),
            ("mean", &tenths(pools.target)),
            ("nearest", &tenths(nearest)),
        ]),
        WIDEN_BAND.text(),
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
                let mend = suggest(name, ids, FAMILIES);
                let what = NO_FAMILY.say(&[("name", &quoted(name))]);
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

fn suggest<'n>(name: &str, names: impl Iterator<Item = &'n str>, lists: Message) -> String {
    nearest(name, names).map_or_else(|| lists.text().to_owned(), did_you_mean)
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
        let mend = suggest(name, names.into_iter(), ITEMS);
        let what = NOTHING_OF.say(&[("pick", &row.pick.to_string())]);
        return Some(Problem::at(row.span.clone(), what, mend));
    }
    let wanted = match (row.safety_only, row.marks) {
        (true, Some(marks)) => SAFETY_WORTH.say(&[("marks", &marks.to_string())]),
        (true, None) => SAFETY.text().into(),
        (false, marks) => WORTH.say(&[("marks", &marks.unwrap_or_default().to_string())]),
    };
    let has: BTreeSet<u32> = named.iter().map(|item| item.parts.iter().map(|part| part.marks).sum()).collect();
    let has: Vec<String> = has.iter().map(u32::to_string).collect();
    let safe = named.iter().filter(|item| item.safety).count();
    Some(Problem::at(
        row.span.clone(),
        if named.len() == 1 { ONE_BUT_NONE } else { SOME_BUT_NONE }.say(&[
            ("pick", &row.pick.to_string()),
            ("count", &named.len().to_string()),
            ("wanted", &wanted),
        ]),
        THEY_ARE.say(&[("marks", &has.join(", ")), ("safe", &safe.to_string())]),
    ))
}

/// Whether all that the row can take are safety questions.
pub(super) fn is_safe(bank: &Bank, blueprint: &Blueprint, row: &Row) -> bool {
    bank.items.iter().filter(|item| blueprint.takes(row, item)).all(|item| item.safety)
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
        for (item, spec) in bank.items.iter().enumerate().filter(|(_, item)| blueprint.takes(row, item)) {
            let parts = spec.parts.len() as u32;
            if let Some(weight) = row.weight.filter(|weight| *weight < parts) {
                let says = if weight == 1 { NO_WEIGHT_ONE } else { NO_WEIGHT };
                let (parts, weight) = (parts.to_string(), weight.to_string());
                reasons.push(says.say(&[("item", &quoted(&spec.id)), ("parts", &parts), ("weight", &weight)]));
                continue;
            }
            let fitting =
                |difficulty: f64| row.difficulty.is_none_or(|(least, most)| least <= difficulty && difficulty <= most);
            let too = |difficulty: f64| {
                DIFFICULTY_IS.say(&[("item", &quoted(&spec.id)), ("difficulty", &tenths(difficulty))])
            };
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
                    Err(error) => reasons.push(NO_FIT.say(&[
                        ("item", &quoted(&spec.id)),
                        ("family", &quoted(family)),
                        ("why", &why(error)),
                    ])),
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
            const MOST: usize = 3;
            let more = match reasons.len().saturating_sub(MOST) {
                0 => String::new(),
                more => format!("; {}", AND_MORE.say(&[("count", &more.to_string())])),
            };
            let mend = match reasons.as_slice() {
                [] => OTHER_FAMILIES.text().into(),
                _ => format!("{}{more}.", reasons[..reasons.len().min(MOST)].join("; ")),
            };
            problems.push(Problem::at(
                row.span.clone(),
                NOTHING_FITS.say(&[("pick", &row.pick.to_string()), ("units", system.code())]),
                mend,
            ));
        }
        pools.push(Pool { count: row.count as usize, from });
    }
    if problems.len() > before {
        return None;
    }
    let asks = candidates.iter().map(|candidate| bank.items[candidate.item].asks()).collect();
    let pools = Pools::new(pools, difficulty, blueprint.band).asking(asks);
    if let Err(nearest) = pools.pick(&mut Stream::new(0, "trial paper")) {
        problems.push(out_of_reach(blueprint, &pools, nearest));
        return None;
    }
    Some(Supply { candidates, pools })
}
