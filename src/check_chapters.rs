//! What `check` finds in chapters: every block is filled in. Where one of the program's own chapters cannot be, a value of the
//! module's family is behind it, and that is where it is told.

use std::collections::{BTreeMap, BTreeSet};

use drivecourse_course::expand::{self, CourseData, Expander};
use drivecourse_course::links;
use drivecourse_course::pages::Pages;
use drivecourse_machine::{Plan, Problem, QuantityId, Registry, System, messages};
use drivecourse_quiz::paper::why;
use drivecourse_quiz::{Bank, Item, Setting};

use crate::check::Check;
use crate::check_verdicts::each_alone;
use crate::own_family::Own;
use crate::{bank, course};

messages! { pub(crate) SAYS {
    NO_TEMPLATE = "check-no-template", "A page template cannot be used: {error}";
    STANDS_IN = "check-stands-in", "Machines of the program stand in for yours in questions of this chapter: {items}.";
    STANDS_IN_OF = "check-stands-in-of", "{items} ({why})";
    STANDS_IN_WHY = "check-stands-in-why", "{family}: {why}";
    ONLY_FOR = "check-stands-in-only", "only for {families}";
    STANDS_IN_MEND = "check-stands-in-mend", "Where you know what is lacking, add it to your family or its table. Else leave it: the questions are right, and their machines are not your plant's.";
    NOT_ASKED = "check-chapters-not-filled", "What chapters ask or show does not go with {id}: {why} ({places})";
    NOT_ASKED_MEND = "check-chapters-not-filled-mend", "Mend this value, or its unit.";
} }

/// Places of chapters that are still told one by one.
const MOST_PLACES: usize = 6;

/// Why `item` can be put about no family of `bank`; `None` where it can be.
fn unfit(bank: &Bank, item: &Item) -> Option<String> {
    let named = |plan: &&Plan| item.families.is_empty() || item.families.contains(&plan.family.id);
    let mut reasons = Vec::new();
    for plan in bank.plans.iter().filter(named) {
        match Setting::new(item, plan, System::Si) {
            Ok(_) => return None,
            Err(error) => reasons.push(STANDS_IN_WHY.say(&[("family", &plan.family.id), ("why", &why(&error))])),
        }
    }
    if reasons.is_empty() {
        reasons.push(ONLY_FOR.say(&[("families", &item.families.join(", "))]));
    }
    Some(reasons.join("; "))
}

/// A block of a chapter that cannot be filled in.
struct Empty {
    path: String,
    text: String,
    problem: Problem,
}

impl Empty {
    /// Whether both are the same block.
    fn is(&self, other: &Self) -> bool {
        self.path == other.path && self.problem.span == other.problem.span
    }

    /// The chapter that it stands in.
    fn chapter(&self) -> (String, String) {
        (self.path.clone(), self.text.clone())
    }
}

impl Check<'_> {
    /// Expands every block of every chapter; where the scenarios are not `sound`, only reads them. What the program's own
    /// chapters show of families that cannot be drawn is the families' fault.
    pub(crate) fn chapters(&mut self, bank: &Bank, sound: bool, families_are_sound: bool) {
        if !sound {
            for (path, text) in self.texts("book", ".md") {
                expand::unreadable(&text).into_iter().for_each(|problem| self.say(&path, &text, problem));
            }
            return;
        }
        let mut texts = self.texts("book", ".md");
        if !families_are_sound && self.assets.is_module() {
            texts.retain(|(path, _)| self.assets.is_own(path));
        }
        let all = bank::for_chapters(self.assets, bank.clone());
        let mut empty = match self.fill(&all, &texts) {
            Ok(empty) => empty,
            Err(what) => {
                self.say("theme/pages", "", Problem::whole(what, ""));
                return;
            }
        };
        if self.assets.is_module() && empty.iter().any(|empty| !self.assets.is_own(&empty.path)) {
            self.behind_chapters(bank, &all, &mut empty);
        }
        if self.assets.is_module() && families_are_sound && !bank.plans.is_empty() {
            self.stand_ins(bank, &all, &texts);
        }
        empty.into_iter().for_each(|Empty { path, text, problem }| self.say(&path, &text, problem));
    }

    /// Notes of each chapter of the course for which questions no family of the module's does, and why.
    fn stand_ins(&mut self, bank: &Bank, all: &Bank, texts: &[(String, String)]) {
        let Some((_, list)) = texts.iter().find(|(path, _)| path == "book/SUMMARY.md") else { return };
        let listed: BTreeSet<String> = links::links(list, "SUMMARY.md").into_iter().map(|link| link.path).collect();
        let mut known: BTreeMap<String, Option<String>> = BTreeMap::new();
        for (path, text) in texts {
            if !path.strip_prefix("book/").is_some_and(|path| listed.contains(path)) {
                continue;
            }
            // What one lacks, others mostly lack too.
            let mut lacking: Vec<(String, Vec<String>)> = Vec::new();
            let mut met = BTreeSet::new();
            for id in expand::of_any_family(text).into_iter().filter(|id| met.insert(id.clone())) {
                let Some(item) = all.item_place(&id).map(|place| &all.items[place]) else { continue };
                let why = known.entry(id.clone()).or_insert_with(|| unfit(bank, item)).clone();
                let Some(why) = why else { continue };
                match lacking.iter_mut().find(|(other, _)| *other == why) {
                    Some((_, items)) => items.push(id),
                    None => lacking.push((why, vec![id])),
                }
            }
            if lacking.is_empty() {
                continue;
            }
            let told =
                lacking.iter().map(|(why, items)| STANDS_IN_OF.say(&[("items", &items.join(", ")), ("why", why)]));
            let told = told.collect::<Vec<_>>().join("; ");
            let what = STANDS_IN.say(&[("items", &told)]);
            self.note(path, text, Problem::whole(what, STANDS_IN_MEND.text()));
        }
    }

    /// The blocks of these chapters that cannot be filled in from `all`.
    fn fill(&self, all: &Bank, texts: &[(String, String)]) -> Result<Vec<Empty>, String> {
        let pages: Pages =
            course::pages(self.assets).map_err(|error| NO_TEMPLATE.say(&[("error", &format!("{error:#}"))]))?;
        let expander = Expander::new(CourseData { items: all.items.clone(), plans: all.plans.clone(), pages });
        let mut empty = Vec::new();
        for (path, text) in texts {
            let name = path.strip_prefix("book/").unwrap_or(path);
            let problems = expander.chapter(name, text).err().into_iter().flatten();
            empty.extend(problems.map(|problem| Empty { path: path.clone(), text: text.clone(), problem }));
        }
        Ok(empty)
    }

    /// As [`Self::fill`], with `plan` in the place of the family of that name.
    fn fill_with(&self, all: &Bank, plan: &Plan, texts: &[(String, String)]) -> Vec<Empty> {
        let mut all = all.clone();
        all.plans.iter_mut().filter(|other| other.family.id == plan.family.id).for_each(|other| other.clone_from(plan));
        self.fill(&all, texts).unwrap_or_default()
    }

    /// Tells of a value of a family's file or table that keeps blocks of the program's chapters `empty` and, put back to what it
    /// is in the family that theirs is like, fills them; takes out what is told so.
    fn behind_chapters(&mut self, bank: &Bank, all: &Bank, empty: &mut Vec<Empty>) {
        let standard = bank::standard(self.assets);
        for plan in bank.plans.iter().filter(|plan| bank::is_own(self.assets, &plan.family.id)) {
            let Some(first) = empty.iter().find(|empty| !self.assets.is_own(&empty.path)) else { return };
            let own = Own::of(self.assets, bank, &standard, plan);
            let is_empty = |block: &Empty, plan: &Plan| {
                self.fill_with(all, plan, &[block.chapter()]).iter().any(|empty| empty.is(block))
            };
            let of: Vec<QuantityId> = Registry::get().quantities().filter(|id| plan.determines(*id)).collect();
            let behind = own.behind(&of, |id| own.gives(id), |usual| !is_empty(first, usual));
            let [id] = behind.as_slice() else { continue };
            let Some(usual) = own.with_usual(*id) else { continue };
            let mut texts: Vec<_> = empty.iter().map(Empty::chapter).collect();
            texts.dedup();
            let left = self.fill_with(all, &usual, &texts);
            let (kept, told): (Vec<Empty>, Vec<Empty>) =
                empty.drain(..).partition(|empty| left.iter().any(|left| left.is(empty)));
            *empty = kept;
            // One of them at least is filled: the first.
            let Some(first) = told.first() else { continue };
            let machine = each_alone(plan).find(|(_, alone)| is_empty(first, alone)).map(|(name, _)| name);
            let (path, text, span) = own.place(self.assets, *id, machine);
            let what =
                NOT_ASKED.say(&[("id", id.get().id), ("why", &first.problem.what), ("places", &self.places(&told))]);
            self.say(&path, &text, Problem { span, what, mend: NOT_ASKED_MEND.text().into() });
        }
    }

    /// Where these blocks stand, as far as that can be read in one line.
    fn places(&self, blocks: &[Empty]) -> String {
        let place = |block: &Empty| {
            let line = block.problem.line_column(&block.text).map_or(1, |(line, _)| line);
            format!("{}:{line}", self.assets.shown(&block.path))
        };
        let more = (blocks.len() > MOST_PLACES).then(|| "…".to_owned());
        blocks.iter().take(MOST_PLACES).map(place).chain(more).collect::<Vec<_>>().join(", ")
    }
}
