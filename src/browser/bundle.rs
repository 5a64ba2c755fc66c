//! What a course hands to the browser.

use std::collections::BTreeMap;

use drivecourse_machine::language::{self, Message};
use drivecourse_machine::packed;
use drivecourse_machine::packed::{Packed, Reader};
use drivecourse_machine::words::{self, Words};
use drivecourse_machine::{Family, Plan};
use drivecourse_quiz::explain::{skill_id, skill_name};
use drivecourse_quiz::{Bank, Item};

/// The words, families, items and chapters of a course, packed as text: the words for the pictures, all of it for the practice.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Bundle {
    words: String,
    bank: String,
}

/// A chapter of a course.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Chapter {
    /// Its title.
    pub title: String,
    /// The items that its cards ask about, in order.
    pub items: Vec<String>,
}

packed!(Chapter { title, items });

impl Bundle {
    /// Packs a bank and the chapters of its course, in their order.
    #[must_use]
    pub fn pack(bank: &Bank, chapters: &[Chapter]) -> Self {
        let mut out = Self { words: String::new(), bank: String::new() };
        Words::of_registry(messages(), skills(bank)).pack(&mut out.words);
        let families: Vec<Family> = bank.plans.iter().map(|plan| plan.family.clone()).collect();
        families.pack(&mut out.bank);
        bank.items.pack(&mut out.bank);
        chapters.to_vec().pack(&mut out.bank);
        out
    }

    /// The words: what the drawing module is opened with.
    #[must_use]
    pub fn words(&self) -> &str {
        &self.words
    }

    /// The families, items and chapters: with the words before them, what the practice module is opened with.
    #[must_use]
    pub fn bank(&self) -> &str {
        &self.bank
    }
}

/// Everything that is said in the browser beside the registry's words.
fn messages() -> Vec<Message> {
    [crate::messages(), language::messages(), drivecourse_quiz::messages(), drivecourse_course::messages()].concat()
}

/// What skills are called, where that is not what their ids say.
fn skills(bank: &Bank) -> BTreeMap<String, String> {
    let named = |item: &Item| {
        (item.skill != skill_name(&item.skill).replace(' ', "-"))
            .then(|| (skill_id(&item.skill), skill_name(&item.skill)))
    };
    bank.items.iter().filter_map(named).collect()
}

/// What a page hears when its parts do not belong together.
const OTHER: &str = "This page and its calculation are not of one version; load the page again.";

/// Takes on the words alone, without any relation's calculation.
#[cfg_attr(all(target_arch = "wasm32", not(feature = "pictures")), allow(dead_code))]
pub(crate) fn learn_words(text: &str) -> Result<(), String> {
    words::learn(Reader::new(text).read::<Words>().ok_or(OTHER)?);
    Ok(())
}

/// The bank and the chapters in a text of words, families, items and chapters.
#[cfg_attr(all(target_arch = "wasm32", feature = "pictures"), allow(dead_code))]
pub(crate) fn open_bank(text: &str) -> Result<(Bank, Vec<Chapter>), String> {
    let mut from = Reader::new(text);
    // The words must be in place before anything asks for the registry.
    words::learn(from.read::<Words>().ok_or(OTHER)?);
    let families = from.read::<Vec<Family>>().ok_or(OTHER)?;
    let items = from.read::<Vec<Item>>().ok_or(OTHER)?;
    let chapters = from.read().filter(|_| from.is_done()).ok_or(OTHER)?;
    let plans: Result<Vec<_>, _> = families.into_iter().map(Plan::new).collect();
    Ok((Bank { plans: plans.map_err(|_| "A drive family of this course cannot be used.")?, items }, chapters))
}
