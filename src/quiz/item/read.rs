//! Items as they are written, read.

use core::ops::Range;
use std::collections::BTreeMap;

use drivecourse_machine::amount::{self, Wanted};
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Kind, Problem, QuantityId, Registry, RelationId, topics};
use toml::{Spanned, Value as Toml};

use super::{Item, ItemFile, When, WhenFile, placeholders};

pub(super) struct Reader {
    pub(super) problems: Vec<Problem>,
    pub(super) seen: BTreeMap<String, ()>,
}

impl Reader {
    pub(super) fn say(&mut self, span: Range<usize>, what: impl Into<String>, mend: impl Into<String>) {
        self.problems.push(Problem::at(span, what, mend));
    }

    pub(super) fn quantity(&mut self, name: &Spanned<String>) -> Option<QuantityId> {
        let registry = Registry::get();
        let found = registry.find(name.get_ref());
        if found.is_none() {
            let mend = registry.suggestion(name.get_ref()).map_or_else(
                || "`drivecourse solve --list` names every quantity.".to_owned(),
                |near| format!("Did you mean {near:?}?"),
            );
            self.say(name.span(), format!("There is no quantity called {:?}.", name.get_ref()), mend);
        }
        found
    }

    pub(super) fn item(&mut self, file: ItemFile) -> Option<Item> {
        let before = self.problems.len();
        if self.seen.insert(file.id.get_ref().clone(), ()).is_some() {
            self.say(
                file.id.span(),
                format!("There are two items called {:?}.", file.id.get_ref()),
                "Give one of them another id.",
            );
        }
        if !file.id.get_ref().chars().all(|c| c.is_ascii_alphanumeric() || c == '-') || file.id.get_ref().is_empty() {
            self.say(
                file.id.span(),
                "An item's id is made of letters, figures and hyphens.",
                "Write, for example, slack-tension.",
            );
        }
        if !topics::ALL.iter().any(|topic| topic.id == file.topic.get_ref()) {
            let names: Vec<_> = topics::ALL.iter().map(|topic| topic.id).collect();
            self.say(
                file.topic.span(),
                format!("There is no topic called {:?}.", file.topic.get_ref()),
                format!("The topics are {}.", names.join(", ")),
            );
        }
        if file.part.is_empty() {
            self.say(file.id.span(), "This item has no part, so it asks nothing.", "Add an [[item.part]].");
        }
        self.placeholders(&file.text);
        let when = file.when.iter().filter_map(|when| self.when(when)).collect();
        let mut parts = Vec::new();
        for part in file.part {
            parts.extend(self.part(part, &parts));
        }
        (self.problems.len() == before).then(|| Item {
            span: file.id.span(),
            named: (file.figure.iter().chain(&file.families).chain(&file.faults))
                .map(|name| (name.get_ref().clone(), name.span()))
                .collect(),
            id: file.id.into_inner(),
            topic: file.topic.into_inner(),
            skill: file.skill.into_inner(),
            title: file.title,
            text: file.text.into_inner(),
            figure: file.figure.map(Spanned::into_inner),
            safety: file.safety,
            families: file.families.into_iter().map(Spanned::into_inner).collect(),
            faults: file.faults.into_iter().map(Spanned::into_inner).collect(),
            when,
            parts,
        })
    }

    fn when(&mut self, when: &WhenFile) -> Option<When> {
        let quantity = self.quantity(&when.quantity)?;
        let mut bound = |value: &Option<Spanned<Toml>>, open: f64| -> Option<f64> {
            let Some(value) = value else { return Some(open) };
            let text = match value.get_ref() {
                Toml::String(text) => text.clone(),
                other => other.to_string(),
            };
            if quantity.get().kind == Kind::Choice {
                let choices = quantity.get().choices;
                let found = choices.iter().position(|choice| *choice == text);
                if found.is_none() {
                    self.say(
                        value.span(),
                        format!("{text:?} is none of the possibilities of {}.", quantity.get().id),
                        amount::choices_of(quantity.get(), &text),
                    );
                }
                return found.map(|index| index as f64);
            }
            match amount::read(&text, &Wanted::new(quantity.get().kind)) {
                Ok(read) => Some(read.base),
                Err(error) => {
                    self.say(
                        value.span(),
                        format!("{text:?} cannot be read: {error}"),
                        format!("It takes {}.", quantity.get().kind.name()),
                    );
                    None
                }
            }
        };
        Some(When {
            quantity,
            at_least: bound(&when.at_least, f64::NEG_INFINITY)?,
            at_most: bound(&when.at_most, f64::INFINITY)?,
        })
    }

    pub(super) fn relation(&mut self, name: &Spanned<String>) -> Option<RelationId> {
        let registry = Registry::get();
        let found = registry.relation(name.get_ref()).map(|linked| linked.id);
        if found.is_none() {
            let near = nearest(name.get_ref(), registry.relations().iter().map(|linked| linked.relation.id));
            let mend = near.map_or_else(String::new, |near| format!("Did you mean {near:?}?"));
            self.say(name.span(), format!("There is no method called {:?}.", name.get_ref()), mend);
        }
        found
    }

    pub(super) fn placeholders(&mut self, text: &Spanned<String>) {
        for name in placeholders(text.get_ref()) {
            if name != "machine" && Registry::get().find(name).is_none() {
                let mend = Registry::get().suggestion(name).map_or_else(
                    || "Use {machine} or the name of a quantity.".to_owned(),
                    |near| format!("Did you mean {{{near}}}?"),
                );
                self.say(text.span(), format!("{{{name}}} stands for nothing."), mend);
            }
        }
    }
}
