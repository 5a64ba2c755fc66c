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
//! wrong = [ # besides the registry's; `at` may name a step on the way, from which the error is carried on
//!   { gives = "chain.slack_tension / 2", says = "That is the pull on one side plate." },
//! ]
//! ```
//!
//! What a skill is called may stand in any file of items; one without a name is called by its word, with spaces for hyphens:
//!
//! ```toml
//! [skills]
//! chain-tension = "pull in the chain"
//! ```
//!
//! A part asks for a quantity (`ask`), for the right order of steps (`order`), or for one of some
//! statements (`pick`). A later part may list an earlier part's quantity under `from`: it is then
//! worked out from the learner's own answer. `read = "mount.rise_1"` asks for a reading off the face of
//! its instrument, which the item's figure shows; its value is not among the givens.
//!
//! Parts that ask for judgement offer statements which the program finds out from the machine ([`Judge`]):
//!
//! ```toml
//! [[item.part]]
//! text = "Which fault explains all the readings?"
//! diagnose = ["chain.movement", "oil.cold_level", "mount.rise_1"]   # readings, numbers only
//! also = ["oil.low_mark", "oil.high_mark"]                          # shown besides
//! weigh = ["mount.worst_rise"]                                      # worked out from what is shown, and weighed too
//! among = ["tight-chain", "low-oil", "soft-foot"]                   # of these faults; else of all
//!
//! [[item.part]]
//! text = "One figure on this sheet is wrong. Which one?"
//! odd = ["chain.sag", "chain.sag_pressed", "chain.movement"]
//! also = ["chain.span"]                                             # known to be right
//!
//! [[item.part]]
//! text = "Accept, adjust or stop?"
//! from = ["heat.ambient", "heat.housing", "heat.rise_limit", "heat.sump_limit"]
//! decide = [
//!   { on = "heat.verdict", when = "not passed, find the cause", call = "adjust", reason = "The rise is above its limit" },
//!   { on = "heat.verdict", when = "stop and find out why", call = "stop", reason = "The housing is too hot" },
//! ]
//! [[item.part]]
//! text = "What decides it?"
//! reason = true                                                     # for the decision before it
//! ```

mod part;
mod read;
mod wrong;

use core::ops::Range;
use std::collections::BTreeMap;
use std::sync::Arc;

use drivecourse_machine::amount;
#[cfg(not(wordless))]
use drivecourse_machine::language::Message;
use drivecourse_machine::packed;
use drivecourse_machine::packed::{Packed, Reader as Unpacker};
use drivecourse_machine::{Case, Problem, QuantityId, RelationId, System, messages, read_toml, schema};
use schemars::JsonSchema;
use serde::Deserialize;
use toml::{Spanned, Value as Toml};

use crate::judge::Judge;
use crate::mend::quoted;
use part::PartFile;
use read::Reader;
pub use wrong::OwnTurn;

/// Items: questions that can be asked about many machines.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(title = "Items")]
pub(crate) struct File {
    /// The items of this file.
    #[serde(default)]
    item: Vec<ItemFile>,
    /// What skills are called in reports, by the word that items have: "chain-sag" = "sag of the chain". A skill that is
    /// not here is called by its word.
    #[serde(default)]
    #[schemars(with = "BTreeMap<String, String>")]
    skills: BTreeMap<String, Spanned<String>>,
}

/// A question that can be asked about many machines.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct ItemFile {
    /// Unique name: letters, figures and hyphens.
    #[schemars(with = "String", regex(pattern = "^[A-Za-z0-9-]+$"))]
    id: Spanned<String>,
    /// Topic it belongs to.
    #[schemars(with = "schema::TopicName")]
    topic: Spanned<String>,
    /// Skill it practises: your own word; exams may ask for it.
    #[schemars(with = "String")]
    skill: Spanned<String>,
    /// As a heading.
    title: String,
    /// What the learner stands in front of; {machine} and {name.of-a-quantity} are filled in.
    #[schemars(with = "String")]
    text: Spanned<String>,
    /// Picture to draw from the machine.
    #[schemars(with = "Option<String>")]
    figure: Option<Spanned<String>>,
    /// Whether missing it fails a paper.
    #[serde(default)]
    safety: bool,
    /// Families it may be asked about; every one that fits, if left out.
    #[serde(default)]
    #[schemars(with = "Vec<String>")]
    families: Vec<Spanned<String>>,
    /// Faults of which the machine must have one; "none" stands for a sound machine.
    #[serde(default)]
    #[schemars(with = "Vec<String>")]
    faults: Vec<Spanned<String>>,
    /// Bounds on the machine that keep the question sensible.
    #[serde(default)]
    when: Vec<WhenFile>,
    /// What is asked, part by part.
    part: Vec<PartFile>,
}

/// A bound on the machine.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct WhenFile {
    /// The quantity that is bounded.
    #[schemars(with = "schema::QuantityName")]
    quantity: Spanned<String>,
    /// Least value.
    #[schemars(with = "Option<schema::PlainValue>")]
    at_least: Option<Spanned<Toml>>,
    /// Largest value.
    #[schemars(with = "Option<schema::PlainValue>")]
    at_most: Option<Spanned<Toml>>,
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

messages! { pub(crate) SAYS {
    BELOW = "problem-item-below", "{quantity} is {value}, and at least {bound} is allowed";
    ABOVE = "problem-item-above", "{quantity} is {value}, and at most {bound} is allowed";
    NO_SKILL_NAME = "problem-item-no-skill-name", "The skill {skill} has an empty name.";
    SKILL_NAME = "problem-item-skill-name", "Write what reports call it, or take the line out.";
} }

impl When {
    /// Whether `case` keeps the bound.
    pub fn holds(&self, case: &Case) -> bool {
        (self.at_least..=self.at_most).contains(&case.values[self.quantity.index()])
    }

    /// How far `value` (SI) lies beyond the bound.
    pub(crate) fn beyond(&self, value: f64) -> f64 {
        (self.at_least - value).max(value - self.at_most)
    }

    /// A `value` (SI) beyond the bound, and the bound, in words: `heat.rise is 41.2 °C, and at most 40 °C is allowed`.
    pub(crate) fn says_of(&self, value: f64) -> String {
        let quantity = self.quantity.get();
        let (says, bound) = if value < self.at_least { (BELOW, self.at_least) } else { (ABOVE, self.at_most) };
        let [value, bound] = [value, bound].map(|value| amount::write_exact(quantity, value, System::Si));
        says.say(&[("quantity", quantity.id), ("value", &value), ("bound", &bound)])
    }
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
    /// A reading off the face of the quantity's instrument.
    Read(QuantityId),
    /// A judgement from what the machine shows.
    Judge(Judge),
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
    /// Wrong turns of the author's own, besides those of the registry.
    pub wrong: Arc<[OwnTurn]>,
}

impl PartSpec {
    /// What the machine must have for it: everything shown, and what is read off a face.
    pub(crate) fn shows(&self) -> Vec<QuantityId> {
        let (shown, also) = match &self.ask {
            Ask::Quantity { from, also, .. } => (&from[..], &also[..]),
            Ask::Read(asked) => (core::slice::from_ref(asked), &[][..]),
            Ask::Judge(judge) => judge.shown_and_also(),
            Ask::Order { .. } | Ask::Pick { .. } => (&[][..], &[][..]),
        };
        [shown, also].concat()
    }

    /// What is read off a face, if that is asked.
    pub(crate) fn read(&self) -> Option<QuantityId> {
        if let Ask::Read(asked) = self.ask { Some(asked) } else { None }
    }
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
    /// Where it names its picture, families and faults, in bytes.
    pub named: Vec<(String, Range<usize>)>,
}

impl Item {
    /// Where the item names its picture, a family or a fault; where it stands itself, if it does not.
    pub fn place(&self, name: &str) -> Range<usize> {
        self.named.iter().find(|(known, _)| known == name).map_or_else(|| self.span.clone(), |(_, span)| span.clone())
    }
}

impl Item {
    /// The quantities that it asks for or has read, each once.
    pub fn asks(&self) -> Vec<QuantityId> {
        let mut asks: Vec<_> = (self.parts.iter())
            .filter_map(|part| match part.ask {
                Ask::Quantity { asked, .. } | Ask::Read(asked) => Some(asked),
                _ => None,
            })
            .collect();
        asks.sort_unstable();
        asks.dedup();
        asks
    }

    /// What it is worth.
    pub fn marks(&self) -> u32 {
        self.parts.iter().map(|part| part.marks).sum()
    }
}

packed!(Item { id, topic, skill, title, text, figure, safety, families, faults, when, parts } without span, named);
packed!(When { quantity, at_least, at_most });
packed!(PartSpec { text, ask, marks, hints, wrong });

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
            Self::Read(asked) => (3_u8, *asked).pack(out),
            Self::Judge(judge) => {
                4_u8.pack(out);
                judge.pack(out);
            }
        }
    }

    fn unpack(from: &mut Unpacker<'_>) -> Self {
        match u8::unpack(from) {
            0 => {
                let (asked, (from, (also, by))) = Packed::unpack(from);
                Self::Quantity { asked, from, also, by }
            }
            1 => {
                let (steps, because) = Packed::unpack(from);
                Self::Order { steps, because }
            }
            3 => Self::Read(Packed::unpack(from)),
            4 => Self::Judge(Packed::unpack(from)),
            _ => {
                let (options, (right, because)) = Packed::unpack(from);
                Self::Pick { options, right, because }
            }
        }
    }
}

/// What is told the author of items.
#[cfg(not(wordless))]
pub(crate) fn author_messages() -> Vec<Message> {
    [SAYS, part::SAYS, read::SAYS, wrong::SAYS].concat()
}

/// Reads a file of items.
///
/// # Errors
/// Every [`Problem`] found, in one pass.
pub fn read_items(text: &str) -> Result<Vec<Item>, Vec<Problem>> {
    let file: File = read_toml(text)?;
    let mut reader = Reader { text, problems: Vec::new(), seen: BTreeMap::new() };
    let items: Vec<Item> = file.item.into_iter().filter_map(|item| reader.item(item)).collect();
    for (skill, name) in file.skills.iter().filter(|(_, name)| name.get_ref().trim().is_empty()) {
        reader.say(name.span(), NO_SKILL_NAME.say(&[("skill", &quoted(skill))]), SKILL_NAME.text());
    }
    if reader.problems.is_empty() { Ok(items) } else { Err(reader.problems) }
}

/// The names that an items' file gives to skills, by the skill, each with where it stands; none where the file cannot be read,
/// which [`read_items`] tells of.
pub fn read_skills(text: &str) -> BTreeMap<String, Spanned<String>> {
    read_toml::<File>(text).map_or_else(|_| BTreeMap::new(), |file| file.skills)
}

/// The names in curly brackets.
pub(crate) fn placeholders(text: &str) -> impl Iterator<Item = &str> {
    text.split('{').skip(1).filter_map(|rest| rest.split_once('}').map(|(name, _)| name))
}

/// `text` with every name in curly brackets replaced by what `word` makes of it.
pub(crate) fn fill(text: &str, word: &mut dyn FnMut(&str) -> Option<String>) -> String {
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
mod tests;
