//! The words of families and items under the ids of their messages.

use drivecourse_machine::language::{slug, translated};
use drivecourse_machine::{Family, Plan};
use drivecourse_quiz::explain::part_letter;
use drivecourse_quiz::{Ask, Bank, Item, Judge};

use crate::words::Entry;

/// Shows `visit` every text of `item` with its id; it may put another in its place.
fn each_of_item(item: &mut Item, visit: &mut dyn FnMut(String, &mut String)) {
    let id = format!("item-{}", slug(&item.id));
    visit(id.clone(), &mut item.title);
    visit(format!("{id}.text"), &mut item.text);
    for (place, part) in item.parts.iter_mut().enumerate() {
        let letter = part_letter(place);
        let mut tell = |what: &str, text: &mut String| visit(format!("{id}.{letter}{what}"), text);
        let mut list = |what: &str, texts: &mut [String]| {
            texts.iter_mut().enumerate().for_each(|(place, text)| tell(&format!("-{what}-{}", place + 1), text));
        };
        list("hint", &mut part.hints);
        match &mut part.ask {
            Ask::Order { steps, .. } => list("step", steps),
            Ask::Pick { options, .. } => list("option", options),
            Ask::Judge(Judge::Decide { findings, .. }) => {
                for (place, finding) in findings.iter_mut().enumerate() {
                    tell(&format!("-finding-{}", place + 1), &mut finding.reason);
                }
            }
            _ => {}
        }
        match &mut part.ask {
            Ask::Order { because, .. } | Ask::Pick { because, .. } => tell("-because", because),
            Ask::Judge(
                Judge::Diagnose { because, .. }
                | Judge::Odd { because, .. }
                | Judge::Decide { because, .. }
                | Judge::Reason { because },
            ) => tell("-because", because),
            Ask::Quantity { .. } | Ask::Read(_) => {}
        }
        if !part.wrong.is_empty() {
            let mut wrong = part.wrong.to_vec();
            for (place, turn) in wrong.iter_mut().enumerate() {
                tell(&format!("-wrong-{}", place + 1), &mut turn.says);
            }
            part.wrong = wrong.into();
        }
        tell("", &mut part.text);
    }
}

/// The same of `family`.
fn each_of_family(family: &mut Family, visit: &mut dyn FnMut(String, &mut String)) {
    let id = format!("family-{}", slug(&family.id));
    visit(id.clone(), &mut family.name);
    visit(format!("{id}.about"), &mut family.about);
    for fault in &mut family.faults {
        // Families have the same fault in common.
        visit(format!("fault-{}", slug(&fault.id)), &mut fault.name);
    }
}

/// Says `bank` in the language spoken; `expected` tells that the program itself should have the words.
pub(crate) fn translate(bank: &mut Bank, expected: bool) {
    let mut visit = |id: String, text: &mut String| {
        let said = translated(&id, text, expected);
        // A place of an item is named after its quantity, whose dot an id of Fluent cannot have.
        let mut said = said.into_owned();
        for name in places(text) {
            said = said.replace(&format!("{{{}}}", name.replace('.', "-")), &format!("{{{name}}}"));
        }
        *text = said;
    };
    bank.items.iter_mut().for_each(|item| each_of_item(item, &mut visit));
    bank.plans.iter_mut().for_each(|plan| each_of_family(&mut plan.family, &mut visit));
}

/// The names in curly brackets.
fn places(text: &str) -> Vec<String> {
    text.split('{').skip(1).filter_map(|rest| Some(rest.split_once('}')?.0.to_owned())).collect()
}

pub(crate) fn of_items(bank: &Bank) -> Vec<Entry> {
    let mut out = Vec::new();
    for item in &bank.items {
        each_of_item(&mut item.clone(), &mut |id, text| {
            if !text.is_empty() {
                out.push(Entry::new(id, text.as_str()));
            }
        });
    }
    out
}

pub(crate) fn of_families(bank: &Bank) -> Vec<Entry> {
    let mut out: Vec<Entry> = Vec::new();
    for Plan { family, .. } in &bank.plans {
        each_of_family(&mut family.clone(), &mut |id, text| {
            if !text.is_empty() && !out.iter().any(|entry| entry.id == id) {
                out.push(Entry::new(id, text.as_str()));
            }
        });
    }
    out.sort_by_key(|entry| entry.id.starts_with("fault-"));
    out
}
