//! Items: what is asked, from what, in which words.
//!
//! A file of items is TOML:
//!
//! ```toml
//! [[item]]
//! id = "slack-tension"
//! topic = "chain"
//! skill = "chain-tension"
//! title = "Tension from sag"
//! text = "A straightedge lies across the two sprockets of the {machine}."
//! figure = "drive-side"
//!
//! [[item.part]]
//! text = "How hard does the slack strand pull?"
//! ask = "chain.slack_tension"
//! from = ["chain.mass", "chain.span", "chain.sag", "chain.incline"]
//! ```
//!
//! A part asks for a quantity (`ask`), for the right order of steps (`order`), or for one of some
//! statements (`pick`). A later part may list an earlier part's quantity under `from`: it is then
//! worked out from the learner's own answer.

use core::ops::Range;
use std::collections::BTreeMap;

use drivecourse_machine::amount::{self, Wanted};
use drivecourse_machine::packed;
use drivecourse_machine::packed::{Packed, Reader as Unpacker};
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Kind, Problem, QuantityId, Registry, RelationId, topics};
use serde::Deserialize;
use toml::{Spanned, Value as Toml};

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    #[serde(default)]
    item: Vec<ItemFile>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct ItemFile {
    id: Spanned<String>,
    topic: Spanned<String>,
    skill: Spanned<String>,
    title: String,
    text: Spanned<String>,
    figure: Option<Spanned<String>>,
    #[serde(default)]
    safety: bool,
    #[serde(default)]
    families: Vec<Spanned<String>>,
    #[serde(default)]
    faults: Vec<Spanned<String>>,
    #[serde(default)]
    when: Vec<WhenFile>,
    part: Vec<PartFile>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct WhenFile {
    quantity: Spanned<String>,
    at_least: Option<Spanned<Toml>>,
    at_most: Option<Spanned<Toml>>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct PartFile {
    text: Spanned<String>,
    ask: Option<Spanned<String>>,
    #[serde(default)]
    from: Vec<Spanned<String>>,
    #[serde(default)]
    also: Vec<Spanned<String>>,
    #[serde(default)]
    by: Vec<Spanned<String>>,
    order: Option<Spanned<Vec<String>>>,
    pick: Option<Spanned<Vec<String>>>,
    right: Option<Spanned<usize>>,
    #[serde(default)]
    because: String,
    marks: Option<Spanned<u32>>,
    #[serde(default)]
    hints: Vec<String>,
}

/// A bound on the hidden machine that keeps a question sensible.
#[derive(Debug, Clone, PartialEq)]
pub struct When {
    /// Which quantity.
    pub quantity: QuantityId,
    /// Least value (SI).
    pub at_least: f64,
    /// Largest value (SI).
    pub at_most: f64,
}

/// What a part asks for.
#[derive(Debug, Clone, PartialEq)]
pub enum Ask {
    /// The value of a quantity.
    Quantity {
        /// Which.
        asked: QuantityId,
        /// From what.
        from: Vec<QuantityId>,
        /// Shown besides, though not needed.
        also: Vec<QuantityId>,
        /// Methods that the question names; none leaves every accepted method open.
        by: Vec<RelationId>,
    },
    /// The right order of steps.
    Order {
        /// The steps, in the right order.
        steps: Vec<String>,
        /// Why this order.
        because: String,
    },
    /// One statement of some.
    Pick {
        /// The statements.
        options: Vec<String>,
        /// Place of the right one.
        right: usize,
        /// Why.
        because: String,
    },
}

/// One part of an item.
#[derive(Debug, Clone, PartialEq)]
pub struct PartSpec {
    /// The question, with `{machine}` and `{quantity}` to be filled in.
    pub text: String,
    /// What it asks for.
    pub ask: Ask,
    /// Marks for a right answer.
    pub marks: u32,
    /// Hints, one step at a time, before those the worked solution gives by itself.
    pub hints: Vec<String>,
}

/// An item: a question that can be asked about many machines.
#[derive(Debug, Clone, PartialEq)]
pub struct Item {
    /// Unique name.
    pub id: String,
    /// Topic of the registry.
    pub topic: String,
    /// Which skill it practises.
    pub skill: String,
    /// As a heading.
    pub title: String,
    /// What the learner stands in front of, with `{machine}` and `{quantity}` to be filled in.
    pub text: String,
    /// Picture to draw from the case.
    pub figure: Option<String>,
    /// Whether missing it fails a paper.
    pub safety: bool,
    /// Families it may use; empty for every family that determines what it needs.
    pub families: Vec<String>,
    /// Faults the machine must have, one of these; `none` stands for a healthy machine. Empty for any machine.
    pub faults: Vec<String>,
    /// Bounds on the machine.
    pub when: Vec<When>,
    /// The parts, at least one.
    pub parts: Vec<PartSpec>,
    /// Where the item stands in its file, in bytes.
    pub span: Range<usize>,
}

packed!(Item { id, topic, skill, title, text, figure, safety, families, faults, when, parts } without span);
packed!(When { quantity, at_least, at_most });
packed!(PartSpec { text, ask, marks, hints });

impl Packed for Ask {
    fn pack(&self, out: &mut String) {
        match self {
            Self::Quantity { asked, from, also, by } => {
                (0_u8, (*asked, (from.clone(), (also.clone(), by.clone())))).pack(out);
            }
            Self::Order { steps, because } => (1_u8, (steps.clone(), because.clone())).pack(out),
            Self::Pick { options, right, because } => {
                (2_u8, (options.clone(), (*right, because.clone()))).pack(out);
            }
        }
    }

    fn unpack(from: &mut Unpacker<'_>) -> Option<Self> {
        Some(match u8::unpack(from)? {
            0 => {
                let (asked, (from, (also, by))) = Packed::unpack(from)?;
                Self::Quantity { asked, from, also, by }
            }
            1 => {
                let (steps, because) = Packed::unpack(from)?;
                Self::Order { steps, because }
            }
            _ => {
                let (options, (right, because)) = Packed::unpack(from)?;
                Self::Pick { options, right, because }
            }
        })
    }
}

/// Reads a file of items.
///
/// # Errors
/// Every [`Problem`] found, in one pass.
pub fn read_items(text: &str) -> Result<Vec<Item>, Vec<Problem>> {
    let file: File = toml::from_str(text).map_err(|error| vec![Problem::toml(&error)])?;
    let mut reader = Reader { problems: Vec::new(), seen: BTreeMap::new() };
    let items: Vec<Item> = file.item.into_iter().filter_map(|item| reader.item(item)).collect();
    if reader.problems.is_empty() { Ok(items) } else { Err(reader.problems) }
}

struct Reader {
    problems: Vec<Problem>,
    seen: BTreeMap<String, ()>,
}

impl Reader {
    fn say(&mut self, span: Range<usize>, what: impl Into<String>, mend: impl Into<String>) {
        self.problems.push(Problem::at(span, what, mend));
    }

    fn quantity(&mut self, name: &Spanned<String>) -> Option<QuantityId> {
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

    fn item(&mut self, file: ItemFile) -> Option<Item> {
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
        let mut asked = Vec::new();
        let parts = file.part.into_iter().filter_map(|part| self.part(part, &mut asked)).collect();
        (self.problems.len() == before).then(|| Item {
            span: file.id.span(),
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
                return quantity.get().choices.iter().position(|choice| *choice == text).map(|index| index as f64);
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

    fn part(&mut self, part: PartFile, asked: &mut Vec<QuantityId>) -> Option<PartSpec> {
        self.placeholders(&part.text);
        let kinds = [part.ask.is_some(), part.order.is_some(), part.pick.is_some()];
        if kinds.iter().filter(|kind| **kind).count() != 1 {
            self.say(part.text.span(), "A part asks in exactly one way.", "Give it one of `ask`, `order` and `pick`.");
            return None;
        }
        let ask = if let Some(name) = &part.ask {
            let before = self.problems.len();
            let quantity = self.quantity(name);
            let from: Vec<_> = part.from.iter().filter_map(|name| self.quantity(name)).collect();
            let also: Vec<_> = part.also.iter().filter_map(|name| self.quantity(name)).collect();
            let by: Vec<_> = part.by.iter().filter_map(|name| self.relation(name)).collect();
            if self.problems.len() > before {
                return None;
            }
            let quantity = quantity?;
            if from.contains(&quantity) {
                self.say(
                    name.span(),
                    "The part asks for what it gives away.",
                    "Take the asked quantity out of `from`.",
                );
            }
            asked.push(quantity);
            Ask::Quantity { asked: quantity, from, also, by }
        } else if let Some(order) = part.order {
            if order.get_ref().len() < 3 || order.get_ref().len() > 12 {
                self.say(order.span(), "An ordering needs between 3 and 12 steps.", "Add or join steps.");
                return None;
            }
            Ask::Order { steps: order.into_inner(), because: part.because }
        } else {
            let pick = part.pick?;
            let count = pick.get_ref().len();
            let right = part.right.as_ref().map_or(0, |right| *right.get_ref());
            if count < 2 || right == 0 || right > count {
                let span = part.right.map_or(pick.span(), |right| right.span());
                self.say(
                    span,
                    "`right` must be the number of the right statement, counted from 1.",
                    format!("Write right = 1 to {}.", count.max(2)),
                );
                return None;
            }
            Ask::Pick { options: pick.into_inner(), right: right - 1, because: part.because }
        };
        let marks = match part.marks {
            Some(marks) if *marks.get_ref() == 0 || *marks.get_ref() > 20 => {
                self.say(marks.span(), "A part earns between 1 and 20 marks.", "Write marks = 2, say.");
                1
            }
            Some(marks) => marks.into_inner(),
            None => 1,
        };
        Some(PartSpec { text: part.text.into_inner(), ask, marks, hints: part.hints })
    }

    fn relation(&mut self, name: &Spanned<String>) -> Option<RelationId> {
        let registry = Registry::get();
        let found = registry.relation(name.get_ref()).map(|linked| linked.id);
        if found.is_none() {
            let near = nearest(name.get_ref(), registry.relations().iter().map(|linked| linked.relation.id));
            let mend = near.map_or_else(String::new, |near| format!("Did you mean {near:?}?"));
            self.say(name.span(), format!("There is no method called {:?}.", name.get_ref()), mend);
        }
        found
    }

    fn placeholders(&mut self, text: &Spanned<String>) {
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

/// The names in curly brackets.
pub(crate) fn placeholders(text: &str) -> impl Iterator<Item = &str> {
    text.split('{').skip(1).filter_map(|rest| rest.split_once('}').map(|(name, _)| name))
}

/// `text` with every name in curly brackets replaced by what `word` makes of it.
pub(crate) fn fill(text: &str, word: impl Fn(&str) -> Option<String>) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some((before, after)) = rest.split_once('{') {
        out.push_str(before);
        match after.split_once('}') {
            Some((name, tail)) => {
                match word(name) {
                    Some(word) => out.push_str(&word),
                    None => out.push_str(&format!("{{{name}}}")),
                }
                rest = tail;
            }
            None => {
                out.push('{');
                rest = after;
            }
        }
    }
    out.push_str(rest);
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    const GOOD: &str = r#"
[[item]]
id = "twist"
topic = "mount"
skill = "soft-foot"
title = "Twist of a base"
text = "The {machine} stands on four pads."
[[item.part]]
text = "What is the twist?"
ask = "mount.twist"
from = ["mount.height_1", "mount.height_2", "mount.height_3", "mount.height_4"]
[[item.part]]
text = "In which order?"
order = ["lock out", "try the start", "measure"]
"#;

    #[test]
    fn a_good_file_is_read() {
        let items = read_items(GOOD).unwrap();
        assert_eq!(items[0].parts.len(), 2);
        assert_eq!(items[0].parts[0].marks, 1);
    }

    #[test]
    fn problems_name_their_place() {
        for (from, to, line, what) in [
            ("mount.twist\"", "mount.twits\"", 10, "no quantity"),
            ("{machine}", "{engine}", 7, "stands for nothing"),
            ("topic = \"mount\"", "topic = \"mound\"", 4, "no topic"),
            ("id = \"twist\"", "id = \"twist twice\"", 3, "letters"),
            ("order = [\"lock out\", ", "order = [", 14, "between 3 and 12"),
            ("order = ", "hint = ", 14, "not valid"),
        ] {
            let text = GOOD.replacen(from, to, 1);
            let problems = read_items(&text).unwrap_err();
            assert_eq!(
                problems[0].line_column(&text).map(|(line, _)| line),
                Some(line),
                "{from} -> {to}: {problems:?}"
            );
            assert!(problems[0].what.contains(what), "{problems:?}");
        }
    }

    #[test]
    fn fill_replaces_what_it_knows() {
        assert_eq!(fill("{a} and {b} {", |name| (name == "a").then(|| "1".into())), "1 and {b} {");
    }
}
