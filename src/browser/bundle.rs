//! What a course hands to the browser.

use drivecourse_machine::words::Said;
use drivecourse_machine::{Family, Plan, words};
use drivecourse_quiz::{Bank, Item};
use serde::{Deserialize, Serialize};

/// The items, families and sentences of a course.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Bundle {
    /// What is said about the relations, in the order of the registry.
    words: Vec<Said>,
    families: Vec<Family>,
    items: Vec<Item>,
}

impl Bundle {
    /// Packs a bank.
    #[must_use]
    pub fn pack(bank: &Bank) -> Self {
        Self {
            words: words::said(),
            families: bank.plans.iter().map(|plan| plan.family.clone()).collect(),
            items: bank.items.clone(),
        }
    }

    /// As JSON, for a page's script.
    #[must_use]
    pub fn to_json(&self) -> String {
        // Only maps with odd keys and failing writers cannot be written, and there are none.
        serde_json::to_string(self).unwrap_or_default()
    }

    /// The bank again, with the sentences in place.
    ///
    /// # Errors
    /// A sentence where a bundle comes from another version.
    pub(crate) fn unpack(json: &str) -> Result<Bank, String> {
        #[derive(Deserialize)]
        struct First {
            words: Vec<Said>,
        }
        #[derive(Deserialize)]
        struct Rest {
            families: Vec<Family>,
            items: Vec<Item>,
        }
        let other = |_| "This page and its calculation are not of one version; load the page again.".to_owned();
        // The sentences must be in place before anything asks for the registry.
        let First { words } = serde_json::from_str(json).map_err(other)?;
        words::learn(words);
        let Rest { families, items } = serde_json::from_str(json).map_err(other)?;
        let plans = families.into_iter().map(Plan::new).collect::<Result<Vec<_>, _>>();
        let plans = plans.map_err(|_| "A drive family of this course cannot be used.".to_owned())?;
        Bank::new(items, plans).map_err(|_| "Two items or families of this course have one name.".to_owned())
    }
}
