//! What `check` finds in the items: each is put about every family that it may be about, in both sets of units.

use std::collections::{BTreeMap, BTreeSet};

use drivecourse_course::portray::PICTURES;
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Problem, did_you_mean, did_you_mean_as, messages, quoted};
use drivecourse_quiz::{Ask, Bank, Item, read_items, read_skills};

use crate::bank;
use crate::check::{Check, THERE_ARE};
use crate::check_turns::Tried;

messages! { pub(crate) SAYS {
    NO_FAMILY = "check-no-family", "The item {item} names a family that is not there: {name}.";
    NO_PICTURE = "check-no-picture", "There is no picture called {name}.";
    NO_FAULT = "check-no-fault", "No family has a fault called {name}.";
    NO_FAULT_MEND = "check-no-fault-mend", "`drivecourse look FAMILY` shows what may be wrong with its machines.";
    NEVER_ASKED = "check-never-asked", "No family fits the item {item}: it is never asked. {reasons}.";
    NEVER_ASKED_MEND = "check-never-asked-mend", "Ask from quantities that a family determines, or let a family determine these.";
    DO_NOT_FIT = "check-do-not-fit", "The item {item} names families that do not fit it. {reasons}.";
    DO_NOT_FIT_MEND = "check-do-not-fit-mend", "Take them out of its families, or mend the family.";
    OTHER_TOPIC = "check-other-topic", "The item {item} is of the topic {topic}, and nothing that it shows or asks is: it asks for {asked}.";
    OTHER_TOPIC_MEND = "check-other-topic-mend", "Write topic = {topic}, or mend what it asks for. If it is meant so, leave it.";
    NO_SUCH_SKILL = "check-no-such-skill", "This names a skill that no item has: {skill}.";
} }

impl Check<'_> {
    /// Names of skills that no item has. A skill without a name is called by its word, and that is no fault.
    pub(crate) fn skills(&mut self, bank: &Bank) {
        let all = bank::for_chapters(self.assets, bank.clone());
        for (path, text) in self.texts("items/", ".toml").into_iter().filter(|(path, _)| self.assets.is_own(path)) {
            for (skill, name) in read_skills(&text) {
                let known = || all.items.iter().map(|item| item.skill.as_str());
                if known().any(|known| known == skill) {
                    continue;
                }
                let mend = nearest(&skill, known()).map_or_else(String::new, did_you_mean_as);
                let problem = Problem::at(name.span(), NO_SUCH_SKILL.say(&[("skill", &skill)]), mend);
                self.say(&path, &text, problem);
            }
        }
    }

    /// Puts every item about every family, in both sets of units.
    pub(crate) fn items(&mut self, bank: &Bank) {
        for (path, text) in self.texts("items/", ".toml") {
            // The bank was read from the same text without a problem.
            for item in read_items(&text).unwrap_or_default() {
                self.item(bank, &path, &text, &item);
            }
        }
    }

    /// Whether an item asks about its topic: exams take it for that.
    fn topic(&mut self, path: &str, text: &str, item: &Item) {
        let (mut met, mut asks) = (BTreeSet::new(), Vec::new());
        for part in &item.parts {
            // What a judgement rests on is many things.
            let Ask::Quantity { asked, from, also, .. } = &part.ask else { return };
            asks.push(*asked);
            met.extend(from.iter().chain(also).chain([asked]).map(|id| id.get().topic()));
        }
        let Some(first) = asks.first().filter(|_| !met.contains(item.topic.as_str())) else { return };
        let what =
            OTHER_TOPIC.say(&[("item", &quoted(&item.id)), ("topic", &quoted(&item.topic)), ("asked", first.get().id)]);
        let mend = OTHER_TOPIC_MEND.say(&[("topic", &quoted(first.get().topic()))]);
        self.notice(path, text, Problem::at(item.span.clone(), what, mend));
    }

    fn item(&mut self, bank: &Bank, path: &str, text: &str, item: &Item) {
        self.names(bank, path, text, item);
        if !self.assets.is_module() || self.assets.is_own(path) {
            self.topic(path, text, item);
        }
        let tried = Tried::of(bank, item);
        self.turns(path, text, item, &tried);
        self.fits(bank, path, text, item, &tried);
    }

    /// Whether the families, the picture and the faults that an item names are there.
    fn names(&mut self, bank: &Bank, path: &str, text: &str, item: &Item) {
        for family in unknown(bank, item) {
            let what = NO_FAMILY.say(&[("item", &format!("{:?}", item.id)), ("name", &format!("{family:?}"))]);
            let mend = bank::other_family(self.assets, bank, family);
            self.say(path, text, Problem::at(item.place(family), what, mend));
        }
        if let Some(figure) = &item.figure
            && let Err(mend) = picture(figure)
        {
            let what = NO_PICTURE.say(&[("name", &format!("{figure:?}"))]);
            self.say(path, text, Problem::at(item.place(figure), what, mend));
        }
        let faults = || bank.plans.iter().flat_map(|plan| &plan.family.faults).map(|fault| fault.id.as_str());
        for fault in item.faults.iter().filter(|name| *name != "none" && !faults().any(|known| known == *name)) {
            let mend = nearest(fault, faults()).map_or_else(|| NO_FAULT_MEND.text().to_owned(), did_you_mean);
            let what = NO_FAULT.say(&[("name", &format!("{fault:?}"))]);
            self.say(path, text, Problem::at(item.place(fault), what, mend));
        }
    }

    /// Whether an item is ever asked, and of the families that it names itself.
    fn fits(&mut self, bank: &Bank, path: &str, text: &str, item: &Item, tried: &Tried<'_>) {
        let list = |reasons: &BTreeMap<&String, String>| {
            reasons.iter().map(|(family, reason)| format!("{family}: {reason}")).collect::<Vec<_>>().join("; ")
        };
        // Of one that is only for families that are not there, that has been said.
        if tried.fits.is_empty() && unknown(bank, item).count() < item.families.len().max(1) {
            let what = NEVER_ASKED.say(&[("item", &format!("{:?}", item.id)), ("reasons", &list(&tried.reasons))]);
            let mend = NEVER_ASKED_MEND.text();
            // The program's own items are there to be taken or left.
            if !self.assets.is_module() || self.assets.is_own(path) {
                self.say(path, text, Problem::at(item.span.clone(), what, mend));
            } else {
                self.note(path, text, Problem::at(item.span.clone(), what, mend));
            }
        } else if !item.families.is_empty() && !tried.reasons.is_empty() {
            let what = DO_NOT_FIT.say(&[("item", &format!("{:?}", item.id)), ("reasons", &list(&tried.reasons))]);
            self.say(path, text, Problem::at(item.span.clone(), what, DO_NOT_FIT_MEND.text()));
        }
    }
}

/// The families that an item names and that are not there.
fn unknown<'i>(bank: &Bank, item: &'i Item) -> impl Iterator<Item = &'i String> {
    item.families.iter().filter(|name| bank.plan_place(name).is_none())
}

/// Whether there is such a picture; if not, how to mend its name. The part behind a space says which reading it shows.
fn picture(name: &str) -> Result<(), String> {
    let name = name.split(' ').next().unwrap_or_default();
    if PICTURES.contains(&name) {
        return Ok(());
    }
    Err(match nearest(name, PICTURES.into_iter()) {
        Some(near) => did_you_mean(near),
        None => THERE_ARE.say(&[("names", &PICTURES.join(", "))]),
    })
}
