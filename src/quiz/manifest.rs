//! A module's own settings: its title, and what it takes over from the program.
//!
//! ```toml
//! title = "Chain drives at our plant"
//! description = "What our apprentices must show before they check a drive beside somebody."
//! plant = "North shed"                           # printed on papers and results, unless a command says otherwise
//! language = "en"                               # of everything people read; left out: English
//! units = "us"                                  # shown unless a command says otherwise; or "si"
//!
//! [reuse]
//! items = ["chain", "safe-work", "dial-rises"]   # topics, skills, or single items of the program
//! families = ["mixer"]                           # families of the program that exams may ask about
//! ```
//!
//! Chapters need no line here: those that the module's `SUMMARY.md` lists come from the module where it has them, else
//! from the program. What such a chapter names comes along with it, for the chapter alone.

use core::ops::Range;

use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Plan, Problem, System, did_you_mean, messages, read_toml};
use schemars::JsonSchema;
use serde::Deserialize;
use toml::Spanned;

use crate::bank::Bank;
use crate::mend::{quoted, units_called};

messages! { pub(crate) SAYS {
    NO_SUCH = "problem-module-no-such", "The program has no topic, skill or item called {name}.";
    NO_FAMILY = "problem-module-no-family", "The program has no family called {name}.";
    LISTS = "problem-module-lists", "`drivecourse check --all` lists the program's items, `drivecourse look` its families.";
} }

/// A module: its title, and what it takes over from the program.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(title = "Module")]
pub(crate) struct File {
    /// Name of the course, at the top of every page.
    #[serde(default)]
    title: String,
    /// One sentence about the course.
    #[serde(default)]
    description: String,
    /// Name of the plant, printed on papers and results unless a command is told otherwise.
    #[serde(default)]
    plant: String,
    /// The language of everything people read, such as "de"; English, if left out.
    language: Option<String>,
    /// The units that machines, practice and chapters are shown in, "si" or "us", unless a command is told otherwise.
    #[schemars(with = "Option<String>")]
    units: Option<Spanned<String>>,
    /// What exams may ask besides the module's own.
    #[serde(default)]
    reuse: ReuseFile,
}

/// What is taken over from the program.
#[derive(Debug, Default, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct ReuseFile {
    /// Topics, skills, or single items.
    #[serde(default)]
    #[schemars(with = "Vec<String>")]
    items: Vec<Spanned<String>>,
    /// Families.
    #[serde(default)]
    #[schemars(with = "Vec<String>")]
    families: Vec<Spanned<String>>,
}

/// A module's own settings.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Manifest {
    /// Name of the course; empty for the usual one.
    pub title: String,
    /// One sentence about it; empty for the usual one.
    pub description: String,
    /// Name of the plant, printed on papers and results; empty for none.
    pub plant: String,
    /// Its language, if it names one.
    pub language: Option<String>,
    /// The units to show, if it names any.
    pub units: Option<System>,
    items: Vec<(String, Range<usize>)>,
    families: Vec<(String, Range<usize>)>,
}

impl Manifest {
    /// Reads `module.toml`.
    ///
    /// # Errors
    /// Every [`Problem`] found, in one pass.
    pub fn read(text: &str) -> Result<Self, Vec<Problem>> {
        let file: File = read_toml(text)?;
        let units = match file.units {
            Some(units) => Some(units_called(units.get_ref(), units.span()).map_err(|problem| vec![problem])?),
            None => None,
        };
        let named = |names: Vec<Spanned<String>>| {
            names.into_iter().map(|name| (name.get_ref().clone(), name.span())).collect::<Vec<_>>()
        };
        let (items, families) = (named(file.reuse.items), named(file.reuse.families));
        let File { title, description, plant, language, .. } = file;
        Ok(Self { title, description, plant: plant.trim().to_owned(), language, units, items, families })
    }

    /// Whether anything is taken over.
    pub fn reuses(&self) -> bool {
        !self.items.is_empty() || !self.families.is_empty()
    }

    /// Adds to `bank` what is taken over from `standard`; what the module has itself under the same name stays.
    pub fn reuse(&self, bank: &mut Bank, standard: &Bank) -> Vec<Problem> {
        let mut problems = Vec::new();
        for (name, span) in &self.items {
            let mut found = standard
                .items
                .iter()
                .filter(|item| item.topic == *name || item.skill == *name || item.id == *name)
                .peekable();
            if found.peek().is_none() {
                let names = standard.items.iter().flat_map(|item| [&*item.topic, &*item.skill, &*item.id]);
                let what = NO_SUCH.say(&[("name", &quoted(name))]);
                problems.push(Problem::at(span.clone(), what, mend(name, names)));
            }
            for item in found {
                if bank.item_place(&item.id).is_none() {
                    bank.items.push(item.clone());
                }
            }
        }
        for (name, span) in &self.families {
            let find = |plan: &&Plan| plan.family.id == *name;
            match standard.plans.iter().find(find) {
                Some(plan) if bank.plan_place(name).is_none() => bank.plans.push(plan.clone()),
                Some(_) => {}
                None => {
                    let names = standard.plans.iter().map(|plan| plan.family.id.as_str());
                    let what = NO_FAMILY.say(&[("name", &quoted(name))]);
                    problems.push(Problem::at(span.clone(), what, mend(name, names)));
                }
            }
        }
        bank.plans.sort_by(|a, b| a.family.id.cmp(&b.family.id));
        problems
    }
}

fn mend<'n>(name: &str, names: impl Iterator<Item = &'n str>) -> String {
    nearest(name, names).map_or_else(|| LISTS.text().to_owned(), did_you_mean)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn items_and_families_are_taken_over_once() {
        let item = |id: &str, skill: &str| {
            format!(
                "[[item]]\nid = {id:?}\ntopic = \"mount\"\nskill = {skill:?}\ntitle = \"t\"\ntext = \"t\"\n[[item.part]]\n\
                 text = \"t\"\npick = [\"a\", \"b\"]\nright = 1\n"
            )
        };
        let read = |text: String| crate::read_items(&text).unwrap();
        let standard = Bank { items: read(item("one", "x") + &item("two", "x") + &item("three", "y")), plans: vec![] };
        let mut bank = Bank { items: read(item("two", "own")), plans: vec![] };
        let text = "[reuse]\nitems = [\"x\", \"thre\", \"three\"]\nfamilies = [\"mixer\"]\n";
        let problems = Manifest::read(text).unwrap().reuse(&mut bank, &standard);
        assert_eq!(bank.items.iter().map(|item| item.id.as_str()).collect::<Vec<_>>(), ["two", "one", "three"]);
        assert_eq!(bank.items[0].skill, "own", "the module's own goes before the program's");
        assert_eq!(problems.len(), 2);
        assert_eq!(problems[0].line_column(text), Some((2, 15)));
        assert!(problems[0].mend.contains("three"), "{problems:?}");
        assert_eq!(Manifest::read("titel = \"x\"\n").unwrap_err()[0].line_column("titel"), Some((1, 1)));
    }
}
