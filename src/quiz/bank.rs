//! The families and items of a module, read and checked together.

use std::collections::BTreeMap;

use drivecourse_machine::language::Message;
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Family, Plan, Problem, System, line_number, messages};

use crate::item::{Item, read_items};
use crate::mend::{OTHER_ID, TWO_ITEMS, quoted};
use crate::response::decode;
use crate::setting::Setting;

messages! { pub(crate) SAYS {
    TWO_FAMILIES = "problem-bank-two-families", "There are two families called {name}.";
    NO_UTF_8 = "problem-bank-no-utf-8", "Line {line} is not UTF-8 text.";
    SAVE_UTF_8 = "problem-bank-save-utf-8", "Save the file as UTF-8.";
    OTHER_FILE = "problem-bank-other-file", "There is another item called {name}, in {file}, line {line}.";
    NO_FAMILY = "problem-bank-no-family", "there is no family {name}{hint}";
    NO_ITEM = "problem-bank-no-item", "there is no item {name}{hint}";
    CIRCLE = "problem-bank-circle", "Nothing can be taken over in a circle: {way}.";
    /// Between the families of a circle.
    IS_LIKE = "problem-bank-is-like", "is like";
    NO_LIKE = "problem-bank-no-like", "Let one of them say everything itself, without `like`.";
    NEAR = "problem-bank-near", "; did you mean {near}?";
    KNOWN = "problem-bank-known", "; there are: {names}";
    KNOWN_AND_MORE = "problem-bank-known-and-more", "; there are: {names} and {count} more";
} }

/// Families ready to draw from, and the items to ask about them.
#[derive(Debug, Clone, Default)]
pub struct Bank {
    /// Families, in the order of their names.
    pub plans: Vec<Plan>,
    /// Items, in the order of their files.
    pub items: Vec<Item>,
}

/// Something wrong in one of a module's files, ready to print.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FileProblem {
    /// Path inside the scenarios, such as `items/chain.toml`.
    pub file: String,
    /// What and where.
    pub problem: Problem,
    /// As a person reads it: place, sentence, the line with a pointer, the mend.
    pub report: String,
}

impl Bank {
    /// A bank of these items and families.
    ///
    /// # Errors
    /// A [`Problem`] for each id that stands twice.
    pub fn new(items: Vec<Item>, plans: Vec<Plan>) -> Result<Self, Vec<Problem>> {
        let twice = |says: Message, ids: Vec<&str>| -> Vec<Problem> {
            let again = ids.iter().enumerate().filter(|(place, id)| ids[..*place].contains(id));
            again.map(|(_, id)| Problem::whole(says.say(&[("name", &quoted(id))]), OTHER_ID.text())).collect()
        };
        let mut problems = twice(TWO_ITEMS, items.iter().map(|item| item.id.as_str()).collect());
        problems.extend(twice(TWO_FAMILIES, plans.iter().map(|plan| plan.family.id.as_str()).collect()));
        if problems.is_empty() { Ok(Self { plans, items }) } else { Err(problems) }
    }

    /// The place of the item called `id`.
    pub fn item_place(&self, id: &str) -> Option<usize> {
        self.items.iter().position(|item| item.id == id)
    }

    /// The place of the family called `id`.
    pub fn plan_place(&self, id: &str) -> Option<usize> {
        self.plans.iter().position(|plan| plan.family.id == id)
    }

    /// Reads `families/*.toml` and `items/*.toml` among `files` (path and bytes, in order of path);
    /// whatever can be read, and every problem met.
    pub fn read<'a>(files: impl IntoIterator<Item = (&'a str, &'a [u8])>) -> (Self, Vec<FileProblem>) {
        Self::read_over(files, &Self::default())
    }

    /// As [`Self::read`]; a family may also be like one of `standard`.
    pub fn read_over<'a>(
        files: impl IntoIterator<Item = (&'a str, &'a [u8])>,
        standard: &Self,
    ) -> (Self, Vec<FileProblem>) {
        let files: BTreeMap<&str, &[u8]> = files.into_iter().collect();
        let mut bank = Self::default();
        let mut found = Vec::new();
        let mut waiting = Vec::new();
        // Where each item stands: its file, what is in that, and the place in it.
        let mut places: BTreeMap<String, (&str, &str, usize)> = BTreeMap::new();
        for (&path, &bytes) in &files {
            let Some(name) = path.strip_suffix(".toml") else { continue };
            if !name.starts_with("families/") && !name.starts_with("items/") {
                continue;
            }
            let text = match std::str::from_utf8(bytes) {
                Ok(text) => text,
                Err(error) => {
                    let line = line_number(bytes, error.valid_up_to()).to_string();
                    let problem = Problem::whole(NO_UTF_8.say(&[("line", &line)]), SAVE_UTF_8.text());
                    found.push(FileProblem { file: path.into(), report: problem.report(path, ""), problem });
                    continue;
                }
            };
            let mut tell = |problems: Vec<Problem>| {
                for problem in problems {
                    found.push(FileProblem { file: path.into(), report: problem.report(path, text), problem });
                }
            };
            match name.strip_prefix("families/") {
                Some(id) => waiting.push((path, id.to_owned(), text)),
                None => match read_items(text) {
                    Ok(items) => {
                        for item in items {
                            let here = (path, text, item.span.start);
                            let (first, text, at) = *places.entry(item.id.clone()).or_insert(here);
                            if (first, at) != (path, item.span.start) {
                                let (file, line) = (format!("scenarios/{first}"), line_number(text, at).to_string());
                                let words = [("name", &*quoted(&item.id)), ("file", &file), ("line", &line)];
                                let what = OTHER_FILE.say(&words);
                                tell(vec![Problem::at(item.span.clone(), what, OTHER_ID.text())]);
                            }
                            bank.items.push(item);
                        }
                    }
                    Err(problems) => tell(problems),
                },
            }
        }
        bank.read_families(waiting, &files, standard, &mut found);
        found.sort_by(|a, b| a.file.cmp(&b.file));
        (bank, found)
    }

    /// Reads families (path, id and text), each after the one it is like.
    fn read_families(
        &mut self,
        mut waiting: Vec<(&str, String, &str)>,
        files: &BTreeMap<&str, &[u8]>,
        standard: &Self,
        found: &mut Vec<FileProblem>,
    ) {
        let table = |name: &str| files.get(format!("families/{name}").as_str()).map(|bytes| decode(bytes).0);
        while !waiting.is_empty() {
            let blocked = |text: &str| {
                Family::likeness(text).is_some_and(|like| waiting.iter().any(|(_, other, _)| other == like.get_ref()))
            };
            let free: Vec<bool> =
                waiting.iter().map(|(_, id, text)| !blocked(text) || is_own(id, text, standard)).collect();
            if !free.contains(&true) {
                tell_circles(&waiting, found);
                break;
            }
            let mut free = free.into_iter();
            let (now, later) = waiting.into_iter().partition(|_| free.next().unwrap_or(true));
            waiting = later;
            let now: Vec<(&str, String, &str)> = now;
            for (path, id, text) in now {
                let mut tell = |file: &str, text: &str, problem: Problem| {
                    found.push(FileProblem { file: file.into(), report: problem.report(file, text), problem });
                };
                let known = self.plans.iter().filter(|plan| plan.family.id != id).chain(&standard.plans);
                let known: Vec<&Family> = known.map(|plan| &plan.family).collect();
                let family = match Family::read_whole(&id, text, &known, table) {
                    Ok(family) => family,
                    Err(problems) => {
                        for problem in problems {
                            match problem.table {
                                None => tell(path, text, problem.problem),
                                Some(name) => tell(
                                    &format!("families/{name}"),
                                    &table(&name).unwrap_or_default(),
                                    problem.problem,
                                ),
                            }
                        }
                        continue;
                    }
                };
                match Plan::new(family) {
                    Ok(plan) => self.plans.push(plan),
                    Err(problems) => problems.into_iter().for_each(|problem| tell(path, text, problem)),
                }
            }
        }
        self.plans.sort_by(|a, b| a.family.id.cmp(&b.family.id));
    }

    /// The family called `id`.
    ///
    /// # Errors
    /// A sentence that names what is near, or what there is.
    pub fn plan(&self, id: &str) -> Result<&Plan, String> {
        let found = self.plans.iter().find(|plan| plan.family.id == id);
        found.ok_or_else(|| {
            let hint = hint(id, self.plans.iter().map(|plan| plan.family.id.as_str()));
            NO_FAMILY.say(&[("name", &quoted(id)), ("hint", &hint)])
        })
    }

    /// The item called `id`.
    ///
    /// # Errors
    /// A sentence that names what is near, or what there is.
    pub fn item(&self, id: &str) -> Result<&Item, String> {
        let found = self.items.iter().find(|item| item.id == id);
        found.ok_or_else(|| {
            let hint = hint(id, self.items.iter().map(|item| item.id.as_str()));
            NO_ITEM.say(&[("name", &quoted(id)), ("hint", &hint)])
        })
    }

    /// Every wanted item with every family it settles on, in `system`.
    pub fn settings(&self, system: System, wanted: impl Fn(&Item, &Plan) -> bool) -> Vec<Setting<'_>> {
        let mut out = Vec::new();
        for item in &self.items {
            for plan in &self.plans {
                let allowed = item.families.is_empty() || item.families.contains(&plan.family.id);
                if allowed
                    && wanted(item, plan)
                    && let Ok(setting) = Setting::new(item, plan, system)
                {
                    out.push(setting);
                }
            }
        }
        out
    }
}

/// Whether the family `id` is like the standard one of its own name, which it takes the place of.
fn is_own(id: &str, text: &str, standard: &Bank) -> bool {
    Family::likeness(text).is_some_and(|like| like.get_ref() == id) && standard.plan_place(id).is_some()
}

/// Says of each family (path, id and text), none of which can be read before another, what it is like in the end.
fn tell_circles(waiting: &[(&str, String, &str)], found: &mut Vec<FileProblem>) {
    for (path, id, text) in waiting {
        let Some(like) = Family::likeness(text) else { continue };
        let mut way = vec![id.as_str()];
        let mut next = Some(like.get_ref().clone());
        // Each is like another that waits, so that the way ends where it comes to a family again.
        while let Some((_, other, text)) = next.and_then(|next| waiting.iter().find(|(_, other, _)| *other == next)) {
            way.push(other);
            if way[..way.len() - 1].contains(&other.as_str()) {
                break;
            }
            next = Family::likeness(text).map(|like| like.into_inner());
        }
        let way: Vec<String> = way.iter().map(|id| format!("{id:?}")).collect();
        let problem = Problem::at(
            like.span(),
            CIRCLE.say(&[("way", &way.join(&format!(" {} ", IS_LIKE.text())))]),
            NO_LIKE.text(),
        );
        found.push(FileProblem { file: (*path).into(), report: problem.report(path, text), problem });
    }
}

/// `; did you mean ...?`, or the list of what there is, as far as it can be read at a glance.
pub fn hint<'a>(word: &str, names: impl Iterator<Item = &'a str> + Clone) -> String {
    match nearest(word, names.clone()) {
        Some(near) => NEAR.say(&[("near", &quoted(near))]),
        None => {
            const MOST: usize = 12;
            let shown = names.clone().take(MOST).collect::<Vec<_>>().join(", ");
            match names.count().saturating_sub(MOST) {
                0 => KNOWN.say(&[("names", &shown)]),
                more => KNOWN_AND_MORE.say(&[("names", &shown), ("count", &more.to_string())]),
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_family_is_read_after_the_one_it_is_like() {
        let old = "name = \"Old\"\n[fixed]\n\"mount.shim_most\" = 4\n";
        let files = [
            ("families/a.toml", "name = \"A\"\nlike = \"b\"\n"),
            ("families/b.toml", "name = \"B\"\nlike = \"c\"\n"),
            ("families/c.toml", old),
        ];
        let (bank, problems) = Bank::read(files.map(|(path, text)| (path, text.as_bytes())));
        assert!(problems.is_empty(), "{problems:?}");
        assert_eq!(bank.plans.iter().map(|plan| plan.family.id.as_str()).collect::<Vec<_>>(), ["a", "b", "c"]);
        assert!(bank.plans.iter().all(|plan| plan.family.roots.len() == 1));

        let own = [("families/a.toml", "name = \"A\"\nlike = \"a\"\n")];
        let circle = [("families/a.toml", files[0].1), ("families/b.toml", "name = \"B\"\nlike = \"a\"\n")];
        // The last of these stands outside the circle, and cannot be read either.
        let beside = [circle[0], circle[1], ("families/c.toml", "name = \"C\"\nlike = \"a\"\n")];
        for (files, ways) in [
            (&own[..], &[r#""a" is like "a"."#][..]),
            (&circle, &[r#""a" is like "b" is like "a"."#, r#""b" is like "a" is like "b"."#]),
            (
                &beside,
                &[
                    r#""a" is like "b" is like "a"."#,
                    r#""b" is like "a" is like "b"."#,
                    r#""c" is like "a" is like "b" is like "a"."#,
                ],
            ),
        ] {
            let (bank, problems) = Bank::read(files.iter().map(|(path, text)| (*path, text.as_bytes())));
            assert!(bank.plans.is_empty());
            assert_eq!(problems.len(), files.len());
            for ((problem, (path, _)), way) in problems.iter().zip(files).zip(ways) {
                assert!(problem.report.contains(&format!("{path}:2:8: ")), "{}", problem.report);
                assert!(problem.problem.what.ends_with(&format!("in a circle: {way}")), "{}", problem.report);
            }
        }
    }
}
