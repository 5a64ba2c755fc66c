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
//!   { on = "heat.verdict", when = "watch it", call = "adjust", reason = "The housing is warmer than usual" },
//!   { on = "heat.verdict", when = "stop and find out why", call = "stop", reason = "The housing is too hot" },
//! ]
//! [[item.part]]
//! text = "What decides it?"
//! reason = true                                                     # for the decision before it
//! ```

use core::ops::Range;
mod part;
mod wrong;

use std::collections::BTreeMap;
use std::sync::Arc;

use drivecourse_machine::amount::{self, Wanted};
use drivecourse_machine::packed;
use drivecourse_machine::packed::{Packed, Reader as Unpacker};
use drivecourse_machine::registry::nearest;
use drivecourse_machine::told;
use drivecourse_machine::{Case, Kind, Problem, QuantityId, Registry, RelationId, System, read_toml, schema, topics};
use schemars::JsonSchema;
use serde::Deserialize;
use toml::{Spanned, Value as Toml};

use crate::judge::Judge;
use part::PartFile;
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
        let (end, bound) = if value < self.at_least { ("at least", self.at_least) } else { ("at most", self.at_most) };
        let [value, bound] = [value, bound].map(|value| amount::write_exact(quantity, value, System::Si));
        format!("{} is {value}, and {end} {bound} is allowed", quantity.id)
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
    pub(crate) fn shows(&self) -> impl Iterator<Item = QuantityId> + '_ {
        let (shown, also, judge) = match &self.ask {
            Ask::Quantity { from, also, .. } => (&from[..], &also[..], None),
            Ask::Read(asked) => (core::slice::from_ref(asked), &[][..], None),
            Ask::Judge(judge) => (&[][..], &[][..], Some(judge)),
            Ask::Order { .. } | Ask::Pick { .. } => (&[][..], &[][..], None),
        };
        shown.iter().chain(also).copied().chain(judge.into_iter().flat_map(Judge::shown))
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

/// Reads a file of items.
///
/// # Errors
/// Every [`Problem`] found, in one pass.
pub fn read_items(text: &str) -> Result<Vec<Item>, Vec<Problem>> {
    let file: File = read_toml(text)?;
    let mut reader = Reader { problems: Vec::new(), seen: BTreeMap::new() };
    let items: Vec<Item> = file.item.into_iter().filter_map(|item| reader.item(item)).collect();
    for (skill, name) in file.skills.iter().filter(|(_, name)| name.get_ref().trim().is_empty()) {
        let mend = "Write what reports call it, or take the line out.";
        reader.say(name.span(), told!("The skill {skill:?} has an empty name."), mend);
    }
    if reader.problems.is_empty() { Ok(items) } else { Err(reader.problems) }
}

/// The names that an items' file gives to skills, by the skill, each with where it stands; none where the file cannot be read,
/// which [`read_items`] tells of.
pub fn read_skills(text: &str) -> BTreeMap<String, Spanned<String>> {
    read_toml::<File>(text).map_or_else(|_| BTreeMap::new(), |file| file.skills)
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
mod tests;
