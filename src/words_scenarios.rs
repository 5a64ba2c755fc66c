//! The words of families and items under the ids of their messages.

use std::collections::{BTreeMap, BTreeSet};

use anyhow::Result;
use drivecourse_machine::language::{slug, translated};
use drivecourse_machine::{Family, Plan};
use drivecourse_quiz::explain::part_letter;
use drivecourse_quiz::{Ask, Bank, Item, Judge, Placed, read_items};
use serde::Deserialize;

use crate::assets::Assets;
use crate::files;
use crate::words::is_native;
use crate::words_list::Entry;

/// Families and items that a module's author wrote in the language spoken, by their messages: they need no translation.
#[derive(Debug, Default)]
pub(crate) struct Native(BTreeSet<String>);

impl Native {
    /// Those of `assets`, where the language `code` is spoken.
    pub(crate) fn of(assets: &Assets, code: &str) -> Self {
        let mut out = BTreeSet::new();
        let own = assets.scenarios.iter().filter(|(path, _)| assets.is_own(&format!("scenarios/{path}")));
        for (path, bytes) in own.filter(|_| is_native(assets, code)) {
            if let Some(name) = path.strip_prefix("families/").and_then(|name| name.strip_suffix(".toml")) {
                out.insert(family_id(name));
            } else if path.starts_with("items/") {
                // Whatever is wrong in the file is told of where the bank is read.
                let items = read_items(&String::from_utf8_lossy(bytes)).unwrap_or_default();
                out.extend(items.iter().map(|item| item_id(&item.id)));
            }
        }
        Self(out)
    }

    /// Whether the text `id` is one of theirs.
    pub(crate) fn has_message(&self, id: &str) -> bool {
        self.0.contains(id.split('.').next().unwrap_or_default())
    }
}

fn item_id(item: &str) -> String {
    format!("item-{}", slug(item))
}

fn family_id(family: &str) -> String {
    format!("family-{}", slug(family))
}

/// The messages of what a question on a paper shows: item, family, faults, quantities, relations.
pub(crate) fn shown(placed: &Placed) -> BTreeSet<String> {
    let mut out = BTreeSet::from([item_id(&placed.item.id), family_id(&placed.plan.family.id)]);
    out.extend(placed.plan.family.faults.iter().map(|fault| format!("fault-{}", slug(&fault.id))));
    let mut quantities = BTreeSet::new();
    for part in &placed.question.parts {
        quantities.extend(part.givens.iter().chain(part.asked().map(|id| (id, 0.0)).as_ref()).map(|given| given.0));
        for step in part.key().into_iter().flat_map(|key| &key.path.steps) {
            let linked = step.get();
            quantities.extend(linked.inputs().chain([linked.gives]));
            out.insert(format!("relation-{}", slug(linked.relation.id)));
        }
    }
    out.extend(quantities.into_iter().map(|id| format!("quantity-{}", slug(id.get().id))));
    out
}

/// The message that is the title of an exam, by its short name.
pub(crate) fn exam_id(name: &str) -> String {
    format!("exam-{}", slug(name))
}

/// The titles of the exams that a module has, or the program.
pub(crate) fn of_exams(assets: &Assets) -> Result<Vec<Entry>> {
    #[derive(Deserialize)]
    struct Titled {
        title: Option<String>,
    }
    let mut out = Vec::new();
    for (path, bytes) in &assets.scenarios {
        let Some(name) = path.strip_prefix("exams/").and_then(|name| name.strip_suffix(".toml")) else { continue };
        let text = files::text(&assets.shown(&format!("scenarios/{path}")), bytes.clone())?;
        // Whatever is wrong in it is told of where papers are drawn from it.
        if let Ok(Titled { title: Some(title) }) = toml::from_str(&text) {
            out.push(Entry::new(exam_id(name), title));
        }
    }
    Ok(out)
}

/// The messages whose words a module has otherwise than the program: what the program has of them in another language is a
/// translation of other words. Files are looked at as they are written, for nothing may name a quantity before the language is
/// known; whatever is wrong in them is told of where they are read.
pub(crate) fn reworded(assets: &Assets) -> Result<BTreeSet<String>> {
    let (program, own) = (written(&Assets::load(None)?), written(assets));
    let other = own.into_iter().filter(|(id, words)| program.get(id).is_some_and(|program| program != words));
    Ok(other.map(|(id, _)| id).collect())
}

/// What exams, families, their faults and items say, by their messages.
fn written(assets: &Assets) -> BTreeMap<String, Vec<String>> {
    let mut out = BTreeMap::new();
    let files = assets.scenarios.iter().filter(|(path, _)| !path.ends_with("@standard"));
    for (path, bytes) in files {
        let table = std::str::from_utf8(bytes).ok().and_then(|text| text.parse::<toml::Table>().ok());
        let (Some((folder, name)), Some(table)) = (path.split_once('/'), table) else { continue };
        let name = name.trim_end_matches(".toml");
        let said = |table: &toml::Table, keys: &[&str]| -> Vec<String> {
            keys.iter().filter_map(|key| Some(table.get(*key)?.as_str()?.to_owned())).collect()
        };
        let tables = |key: &str| {
            let list = table.get(key).and_then(toml::Value::as_array);
            list.into_iter().flatten().filter_map(|each| Some((each.get("id")?.as_str()?, each.as_table()?)))
        };
        match folder {
            "exams" => drop(out.insert(exam_id(name), said(&table, &["title"]))),
            "families" => {
                out.insert(family_id(name), said(&table, &["name", "about"]));
                for (id, fault) in tables("fault") {
                    out.insert(format!("fault-{}", slug(id)), said(fault, &["name"]));
                }
            }
            "items" => out.extend(tables("item").map(|(id, item)| {
                let mut words = Vec::new();
                texts(&toml::Value::Table(item.clone()), &mut words);
                (item_id(id), words)
            })),
            _ => {}
        }
    }
    out
}

/// Every text inside `value`, in its order.
fn texts(value: &toml::Value, out: &mut Vec<String>) {
    match value {
        toml::Value::String(text) => out.push(text.clone()),
        toml::Value::Array(list) => list.iter().for_each(|each| texts(each, out)),
        toml::Value::Table(table) => table.values().for_each(|each| texts(each, out)),
        _ => {}
    }
}

/// Shows `visit` every text of `item` with its id; it may put another in its place.
fn each_of_item(item: &mut Item, visit: &mut dyn FnMut(String, &mut String)) {
    let id = item_id(&item.id);
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
    let id = family_id(&family.id);
    visit(id.clone(), &mut family.name);
    visit(format!("{id}.about"), &mut family.about);
    for fault in &mut family.faults {
        // Families have the same fault in common.
        visit(format!("fault-{}", slug(&fault.id)), &mut fault.name);
    }
}

/// Says `bank` in the language spoken; of what is `native` no translation is expected.
pub(crate) fn translate(bank: &mut Bank, native: &Native) {
    let mut visit = |id: String, text: &mut String| {
        let said = translated(&id, text, !native.has_message(&id));
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
