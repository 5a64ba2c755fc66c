//! The items and families that fit together, made ready once.

use std::collections::BTreeMap;

use drivecourse_machine::{QuantityId, System, messages};

use crate::bank::Bank;
use crate::setting::{Setting, Unsettled};

/// An item ready for one family and one set of units.
#[derive(Debug, Clone)]
pub struct Ready<'a> {
    /// Draws its questions.
    pub setting: Setting<'a>,
    /// The difficulty of every question it draws.
    pub difficulty: f64,
}

type Place = (usize, usize, System);

/// The items of a bank made ready for its families, each once, when first asked for.
#[derive(Debug, Clone)]
pub struct Settings<'a> {
    /// What they were made from.
    pub bank: &'a Bank,
    made: BTreeMap<Place, Result<Ready<'a>, Unsettled>>,
}

impl<'a> Settings<'a> {
    /// None yet.
    pub fn new(bank: &'a Bank) -> Self {
        Self { bank, made: BTreeMap::new() }
    }

    /// Makes the item at `item` ready for the family at `plan`, unless that was done before.
    ///
    /// # Errors
    /// [`Unsettled`]: why they do not fit together.
    pub fn settle(&mut self, item: usize, plan: usize, system: System) -> Result<&Ready<'a>, &Unsettled> {
        let bank = self.bank;
        let made = self.made.entry((item, plan, system)).or_insert_with(|| {
            let setting = Setting::new(&bank.items[item], &bank.plans[plan], system)?;
            // The difficulty rests on the path alone: any question shows it.
            let difficulty = setting.question(0)?.difficulty();
            Ok(Ready { setting, difficulty })
        });
        made.as_ref()
    }

    /// What [`Settings::settle`] made, if it did.
    pub fn get(&self, item: usize, plan: usize, system: System) -> Option<&Ready<'a>> {
        self.made.get(&(item, plan, system))?.as_ref().ok()
    }
}

messages! { pub(crate) SAYS {
    NOT_DETERMINED = "problem-fit-not-determined", "the family does not determine {quantities}";
    NOT_ENOUGH = "problem-fit-not-enough", "part {part} does not show enough for {asked}: {lacking} is missing";
    NOTHING_GIVES = "problem-fit-nothing-gives", "nothing gives {asked}, which part {part} asks for";
    NO_FAULT = "problem-fit-no-fault", "the family has none of the faults the item wants";
} }

/// Why an item and a family do not fit together, as a sentence.
pub fn why(unsettled: &Unsettled) -> String {
    let names = |ids: &[QuantityId]| ids.iter().map(|id| id.get().id).collect::<Vec<_>>().join(", ");
    match unsettled {
        Unsettled::NotDetermined(ids) => NOT_DETERMINED.say(&[("quantities", &names(ids))]),
        Unsettled::NoPath { part, missing } => {
            let asked = missing.asked.get().id;
            let part = (part + 1).to_string();
            match missing.missing.iter().min_by_key(|(_, lacking)| lacking.len()) {
                Some((_, lacking)) => {
                    let lacking = names(lacking);
                    NOT_ENOUGH.say(&[("part", &*part), ("asked", asked), ("lacking", &lacking)])
                }
                None => NOTHING_GIVES.say(&[("asked", asked), ("part", &part)]),
            }
        }
        Unsettled::NoFault => NO_FAULT.text().into(),
        Unsettled::NoMachine(because) => because.trim_end_matches('.').to_owned(),
    }
}
