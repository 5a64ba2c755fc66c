//! Items as they are written, read.

use core::ops::Range;
use std::collections::BTreeMap;

use drivecourse_machine::amount::{self, Unstated};
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{
    Kind, Problem, QuantityId, Registry, RelationId, did_you_mean, did_you_mean_as, line_number, messages, topics,
};
use toml::{Spanned, Value as Toml};

use super::{Item, ItemFile, When, WhenFile, placeholders};
use crate::mend::{NO_TOPIC, OTHER_ID, TOPICS, quoted};

messages! { pub(crate) SAYS {
    NO_QUANTITY = "problem-item-no-quantity", "There is no quantity called {name}.";
    QUANTITIES = "problem-item-quantities", "`drivecourse solve --list` names every quantity.";
    BAD_ID = "problem-item-bad-id", "An item's id is made of letters, figures and hyphens.";
    AN_ID = "problem-item-an-id", "Write, for example, {example}.";
    NO_PART = "problem-item-no-part", "This item has no part, so it asks nothing.";
    ADD_PART = "problem-item-add-part", "Add an {part}.";
    NO_POSSIBILITY = "problem-item-no-possibility", "{text} is none of the possibilities of {quantity}.";
    UNREADABLE = "problem-item-unreadable", "{text} cannot be read: {why}";
    TAKES = "problem-item-takes", "It takes {kind}.";
    NO_METHOD = "problem-item-no-method", "There is no method called {name}.";
    NO_PLACE = "problem-item-no-place", "{name} stands for nothing.";
    OPEN_PLACE = "problem-item-open-place", "A curly bracket is not closed: {text}";
    CLOSE_PLACE = "problem-item-close-place", "Write {name}. What is to be filled in stands between two curly brackets; leave out one that is meant otherwise.";
    TWO_ITEMS_AT = "problem-item-two-items-at", "There are two items called {name}; the other one stands in line {line}.";
    PLACES = "problem-item-places", "Use {machine} or the name of a quantity.";
} }

pub(super) struct Reader<'t> {
    /// The file.
    pub(super) text: &'t str,
    pub(super) problems: Vec<Problem>,
    /// The items met, each with its place in bytes.
    pub(super) seen: BTreeMap<String, usize>,
}

impl Reader<'_> {
    pub(super) fn say(&mut self, span: Range<usize>, what: impl Into<String>, mend: impl Into<String>) {
        self.problems.push(Problem::at(span, what, mend));
    }

    pub(super) fn quantity(&mut self, name: &Spanned<String>) -> Option<QuantityId> {
        let registry = Registry::get();
        let found = registry.find(name.get_ref());
        if found.is_none() {
            let mend = registry.suggestion(name.get_ref()).map_or_else(|| QUANTITIES.text().to_owned(), did_you_mean);
            self.say(name.span(), NO_QUANTITY.say(&[("name", &quoted(name.get_ref()))]), mend);
        }
        found
    }

    pub(super) fn item(&mut self, file: ItemFile) -> Option<Item> {
        let before = self.problems.len();
        let id = file.id.get_ref();
        match self.seen.get(id) {
            Some(first) => {
                let line = line_number(self.text, *first).to_string();
                let what = TWO_ITEMS_AT.say(&[("name", &quoted(id)), ("line", &line)]);
                self.say(file.id.span(), what, OTHER_ID.text());
            }
            None => _ = self.seen.insert(id.clone(), file.id.span().start),
        }
        if !file.id.get_ref().chars().all(|c| c.is_ascii_alphanumeric() || c == '-') || file.id.get_ref().is_empty() {
            self.say(file.id.span(), BAD_ID.text(), AN_ID.say(&[("example", "slack-tension")]));
        }
        if !topics::ALL.iter().any(|topic| topic.id == file.topic.get_ref()) {
            let names: Vec<_> = topics::ALL.iter().map(|topic| topic.id).collect();
            self.say(
                file.topic.span(),
                NO_TOPIC.say(&[("name", &quoted(file.topic.get_ref()))]),
                TOPICS.say(&[("names", &names.join(", "))]),
            );
        }
        if file.part.is_empty() {
            self.say(file.id.span(), NO_PART.text(), ADD_PART.say(&[("part", "[[item.part]]")]));
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
                let found = amount::stated_choice(quantity.get(), &text);
                if found.is_none() {
                    self.say(
                        value.span(),
                        NO_POSSIBILITY.say(&[("text", &quoted(&text)), ("quantity", quantity.get().id)]),
                        amount::choices_of(quantity.get(), &text),
                    );
                }
                return found.map(|index| index as f64);
            }
            match amount::stated(&text, quantity.get().kind, Some(quantity.get())) {
                Ok(base) => Some(base),
                Err(Unstated { why, mend }) => {
                    self.say(
                        value.span(),
                        UNREADABLE.say(&[("text", &quoted(&text)), ("why", &why)]),
                        mend.unwrap_or_else(|| TAKES.say(&[("kind", quantity.get().kind.name())])),
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
            let known = registry.relations().iter().map(|linked| linked.relation.id);
            let mend = nearest(name.get_ref(), known).map_or_else(String::new, did_you_mean);
            self.say(name.span(), NO_METHOD.say(&[("name", &quoted(name.get_ref()))]), mend);
        }
        found
    }

    pub(super) fn placeholders(&mut self, text: &Spanned<String>) {
        for rest in text.get_ref().split('{').skip(1).filter(|rest| !rest.contains('}')) {
            let word: String = rest.chars().take_while(|c| !c.is_whitespace()).collect();
            let known = word == "machine" || Registry::get().find(&word).is_some();
            let name = format!("{{{}}}", if known { &word } else { "machine" });
            let said = format!("{{{word}");
            self.say(text.span(), OPEN_PLACE.say(&[("text", &said)]), CLOSE_PLACE.say(&[("name", &name)]));
        }
        for name in placeholders(text.get_ref()) {
            if name != "machine" && Registry::get().find(name).is_none() {
                let mend = Registry::get().suggestion(name).map_or_else(
                    || PLACES.say(&[("machine", "{machine}")]),
                    |near| did_you_mean_as(&format!("{{{near}}}")),
                );
                self.say(text.span(), NO_PLACE.say(&[("name", &format!("{{{name}}}"))]), mend);
            }
        }
    }
}
