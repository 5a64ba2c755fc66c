//! What `check` finds in the items: each is put about every family that it may be about, in both sets of units.

use std::collections::{BTreeMap, BTreeSet};

use drivecourse_course::portray::PICTURES;
use drivecourse_machine::registry::nearest;
use drivecourse_machine::{
    Path, Plan, Problem, QuantityId, Registry, System, did_you_mean, did_you_mean_as, messages, quoted,
};
use drivecourse_quiz::explain::{cause_name, part_letter, sentence};
use drivecourse_quiz::paper::why;
use drivecourse_quiz::predict::Cause;
use drivecourse_quiz::{Ask, Bank, Item, Setting, read_items, read_skills};

use crate::bank;
use crate::check::{Check, THERE_ARE};
use crate::check_found::{About, Found};

messages! { pub(crate) SAYS {
    NO_FAMILY = "check-no-family", "The item {item} names a family that is not there: {name}.";
    NO_PICTURE = "check-no-picture", "There is no picture called {name}.";
    NO_FAULT = "check-no-fault", "No family has a fault called {name}.";
    NO_FAULT_MEND = "check-no-fault-mend", "`drivecourse look FAMILY` shows what may be wrong with its machines.";
    ALL_FAMILIES = "check-all-families", "all families";
    NO_DIFFERENCE = "check-no-difference", "{item} ({part}): with most machines “{cause}” makes no difference, and with those it is not diagnosed, in {families}";
    PLACE = "check-place", "{item} ({part}) in {families}";
    ALIKE = "check-alike", "{item} ({part}): with most machines “{one}” and “{other}” cannot be told apart in {families}";
    ALIKE_OWN = "check-alike-own", "{item} ({part}): with most machines these {count} wrong turns come to one answer, in {families}:";
    ALIKE_OWN_MEND = "check-alike-own-mend", "There is nothing to do: whoever gives it is told two of them, and which of them it was nobody can say.";
    IDLE_TURN = "check-idle-turn", "This wrong turn never gives an answer of its own: it comes to the right one, or needs what no family determines.";
    IDLE_TURN_MEND = "check-idle-turn-mend", "Mend its expression, or take it out.";
    UNSEEN = "check-unseen", "This wrong turn needs {ids}, which the question neither shows nor lets anybody work out.";
    UNSEEN_MEND = "check-unseen-mend", "Nobody comes to its number who does not know that by heart. Write it with what the question shows, {shown}; or show it, in the part: also = [{also}]";
    NEVER_ASKED = "check-never-asked", "No family fits the item {item}: it is never asked. {reasons}.";
    NEVER_ASKED_MEND = "check-never-asked-mend", "Ask from quantities that a family determines, or let a family determine these.";
    DO_NOT_FIT = "check-do-not-fit", "The item {item} names families that do not fit it. {reasons}.";
    DO_NOT_FIT_MEND = "check-do-not-fit-mend", "Take them out of its families, or mend the family.";
    OTHER_TOPIC = "check-other-topic", "The item {item} is of the topic {topic}, and nothing that it shows or asks is: it asks for {asked}.";
    OTHER_TOPIC_MEND = "check-other-topic-mend", "Write topic = {topic}, or mend what it asks for. If it is meant so, leave it.";
    NO_SUCH_SKILL = "check-no-such-skill", "This names a skill that no item has: {skill}.";
} }

/// For each pair of wrong turns of a part that cannot be told apart, by their names, in which families.
type Pairs = BTreeMap<(usize, String, String), Vec<String>>;

/// Wrong turns of a part of which each comes to the answer of another one.
struct Together {
    part: usize,
    names: BTreeSet<String>,
    at: Vec<String>,
}

/// The wrong turns of `pairs` that hang together, by part.
fn together(pairs: &Pairs) -> Vec<Together> {
    let mut out: Vec<Together> = Vec::new();
    for ((part, one, two), at) in pairs {
        let mut whole = Together { part: *part, names: BTreeSet::from([one.clone(), two.clone()]), at: at.clone() };
        let (met, apart): (Vec<_>, Vec<_>) =
            out.into_iter().partition(|it| it.part == *part && !it.names.is_disjoint(&whole.names));
        for it in met {
            whole.names.extend(it.names);
            whole.at.extend(it.at);
        }
        whole.at.sort_unstable();
        whole.at.dedup();
        out = apart;
        out.push(whole);
    }
    out
}

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
        let topic_of = |id: QuantityId| id.get().id.split('.').next().unwrap_or_default();
        let (mut met, mut asks) = (BTreeSet::new(), Vec::new());
        for part in &item.parts {
            // What a judgement rests on is many things.
            let Ask::Quantity { asked, from, also, .. } = &part.ask else { return };
            asks.push(*asked);
            met.extend(from.iter().chain(also).chain([asked]).map(|id| topic_of(*id)));
        }
        let Some(first) = asks.first().filter(|_| !met.contains(item.topic.as_str())) else { return };
        let what =
            OTHER_TOPIC.say(&[("item", &quoted(&item.id)), ("topic", &quoted(&item.topic)), ("asked", first.get().id)]);
        let mend = OTHER_TOPIC_MEND.say(&[("topic", &quoted(topic_of(*first)))]);
        self.notice(path, text, Problem::at(item.span.clone(), what, mend));
    }

    /// Whether an own wrong turn needs what nobody who is asked can know: neither is it `shown`, nor does it follow from that.
    fn unseen(&mut self, path: &str, text: &str, item: &Item, shown: &BTreeSet<QuantityId>) {
        let known: Vec<_> = shown.iter().copied().collect();
        let within = Path::within_reach(&known);
        for (part, turn) in item.parts.iter().flat_map(|part| part.wrong.iter().map(move |turn| (part, turn))) {
            let inputs = turn.gives.inputs().iter();
            let unseen: Vec<&str> = inputs.filter(|id| !within[id.index()]).map(|id| id.get().id).collect();
            let Ask::Quantity { from, also, .. } = &part.ask else { continue };
            if shown.is_empty() || unseen.is_empty() {
                continue;
            }
            let shows: Vec<_> = from.iter().chain(also).map(|id| id.get().id).collect();
            let also: Vec<_> = also.iter().map(|id| id.get().id).chain(unseen.iter().copied()).map(quoted).collect();
            let what = UNSEEN.say(&[("ids", &unseen.join(", "))]);
            let mend = UNSEEN_MEND.say(&[("shown", &shows.join(", ")), ("also", &also.join(", "))]);
            self.notice(path, text, Problem::at(turn.span.clone(), what, mend));
        }
    }

    fn item(&mut self, bank: &Bank, path: &str, text: &str, item: &Item) {
        let unknown = item.families.iter().filter(|name| bank.plan_place(name).is_none());
        for family in unknown.clone() {
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
        if !self.assets.is_module() || self.assets.is_own(path) {
            self.topic(path, text, item);
        }
        let faults = || bank.plans.iter().flat_map(|plan| &plan.family.faults).map(|fault| fault.id.as_str());
        for fault in item.faults.iter().filter(|name| *name != "none" && !faults().any(|known| known == *name)) {
            let mend = nearest(fault, faults()).map_or_else(|| NO_FAULT_MEND.text().to_owned(), did_you_mean);
            let what = NO_FAULT.say(&[("name", &format!("{fault:?}"))]);
            self.say(path, text, Problem::at(item.place(fault), what, mend));
        }
        let named = |plan: &&Plan| item.families.is_empty() || item.families.contains(&plan.family.id);
        let plans: Vec<&Plan> = bank.plans.iter().filter(named).collect();
        let (mut reasons, mut fits) = (BTreeMap::new(), BTreeSet::new());
        let mut dropped: BTreeMap<(usize, String), Vec<String>> = BTreeMap::new();
        let mut alike = Pairs::new();
        let mut sentences: BTreeMap<String, String> = BTreeMap::new();
        let mut useful: BTreeSet<(usize, String)> = BTreeSet::new();
        let (mut settled, mut seen) = (0, None);
        for plan in &plans {
            for system in System::ALL {
                let made = Setting::new(item, plan, system).and_then(|setting| {
                    let question = setting.question(0)?;
                    Ok((setting, question))
                });
                match made {
                    Ok((setting, question)) => {
                        fits.insert(&plan.family.id);
                        settled += 1;
                        useful.extend(own_turns(&question));
                        seen.get_or_insert_with(|| shown(item, &question));
                        for (part, causes) in setting.harmless().dropped.iter().enumerate() {
                            for cause in causes {
                                let at = format!("{} ({})", plan.family.id, system.code());
                                dropped.entry((part, cause_name(cause))).or_default().push(at);
                            }
                        }
                        for (part, pairs) in setting.harmless().alike.iter().enumerate() {
                            for (one, two) in pairs {
                                for cause in [one, two] {
                                    sentences.entry(cause_name(cause)).or_insert_with(|| sentence(cause));
                                }
                                let at = format!("{} ({})", plan.family.id, system.code());
                                alike.entry((part, cause_name(one), cause_name(two))).or_default().push(at);
                            }
                        }
                    }
                    Err(error) => {
                        reasons.entry(&plan.family.id).or_insert_with(|| why(&error));
                    }
                }
            }
        }
        let places = |places: Vec<String>| {
            if places.len() == settled { ALL_FAMILIES.text().to_owned() } else { places.join(", ") }
        };
        let told = |part: usize, turns: Vec<String>, at: Vec<String>| {
            let (part, at) = (part_letter(part).to_string(), places(at));
            let words = [("item", &*item.id), ("part", &part), ("families", &at)];
            let what = match turns.as_slice() {
                [one, other] => ALIKE.say(&[&words[..], &[("one", one), ("other", other)]].concat()),
                causes => NO_DIFFERENCE.say(&[&words[..], &[("cause", &causes.concat())]].concat()),
            };
            (what, About { turns, place: PLACE.say(&words), own: self.assets.is_own(path), lines: Vec::new() })
        };
        let dropped = dropped.into_iter().map(|((part, cause), at)| told(part, vec![cause], at));
        // Of an author's own question they are told as people are; of the program's, by their names, each pair once.
        let is_own = self.assets.is_module() && self.assets.is_own(path);
        let together = if is_own { together(&alike) } else { Vec::new() };
        let alike = alike.into_iter().filter(|_| !is_own).map(|((part, one, two), at)| told(part, vec![one, two], at));
        for (what, about) in dropped.chain(alike).collect::<Vec<_>>() {
            let note = self.placed(path, text, Problem::at(item.span.clone(), what, ""));
            self.notes.push(Found { about: Some(about), ..note });
        }
        for Together { part, names, at } in together {
            let says: BTreeSet<_> = names.iter().filter_map(|name| sentences.get(name)).cloned().collect();
            // Told in the same words, they need not be told apart.
            if says.len() < 2 {
                continue;
            }
            let (letter, count, at) = (part_letter(part).to_string(), says.len().to_string(), places(at));
            let words = [("item", &*item.id), ("part", &letter), ("count", &count), ("families", &at)];
            let lines: Vec<_> = says.iter().map(|says| format!("- {says}")).collect();
            let what = format!("{}\n{}", ALIKE_OWN.say(&words), lines.join("\n"));
            let note = self.placed(path, text, Problem::at(item.span.clone(), what, ALIKE_OWN_MEND.text()));
            let about = About { turns: names.into_iter().collect(), place: PLACE.say(&words), own: true, lines };
            self.notes.push(Found { about: Some(about), ..note });
        }
        for (index, part) in item.parts.iter().enumerate().filter(|_| settled > 0) {
            for turn in part.wrong.iter().filter(|turn| !useful.contains(&(index, turn.says.clone()))) {
                self.say(path, text, Problem::at(turn.span.clone(), IDLE_TURN.text(), IDLE_TURN_MEND.text()));
            }
        }
        self.unseen(path, text, item, &seen.unwrap_or_default());
        let span = || item.span.clone();
        let list = |reasons: &BTreeMap<&String, String>| {
            reasons.iter().map(|(family, reason)| format!("{family}: {reason}")).collect::<Vec<_>>().join("; ")
        };
        // Of one that is only for families that are not there, that has been said.
        if fits.is_empty() && unknown.count() < item.families.len().max(1) {
            let what = NEVER_ASKED.say(&[("item", &format!("{:?}", item.id)), ("reasons", &list(&reasons))]);
            let mend = NEVER_ASKED_MEND.text();
            // The program's own items are there to be taken or left.
            if !self.assets.is_module() || self.assets.is_own(path) {
                self.say(path, text, Problem::at(span(), what, mend));
            } else {
                self.note(path, text, Problem::at(span(), what, mend));
            }
        } else if !item.families.is_empty() && !reasons.is_empty() {
            let what = DO_NOT_FIT.say(&[("item", &format!("{:?}", item.id)), ("reasons", &list(&reasons))]);
            self.say(path, text, Problem::at(span(), what, DO_NOT_FIT_MEND.text()));
        }
    }
}

/// What `question` shows or asks, in its parts and in its words.
fn shown(item: &Item, question: &drivecourse_quiz::Question) -> BTreeSet<QuantityId> {
    let texts = core::iter::once(&item.text).chain(item.parts.iter().map(|part| &part.text));
    let named = texts.flat_map(|text| text.split('{').skip(1)).filter_map(|rest| rest.split('}').next());
    let mut out: BTreeSet<QuantityId> = named.filter_map(|name| Registry::get().find(name)).collect();
    for (part, asked) in question.parts.iter().zip(&item.parts) {
        out.extend(part.givens.iter().map(|(id, _)| *id));
        match asked.ask {
            Ask::Quantity { asked, .. } | Ask::Read(asked) => out.extend([asked]),
            _ => {}
        }
    }
    out
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

/// The author's own wrong turns that `question` foresees, by part and by what they say.
fn own_turns(question: &drivecourse_quiz::Question) -> Vec<(usize, String)> {
    let mut out = Vec::new();
    for (index, part) in question.parts.iter().enumerate() {
        if let drivecourse_quiz::Body::Quantity { predicted, .. } = &part.body {
            for wrong in predicted {
                if let Cause::Own { says } = &wrong.cause {
                    out.push((index, says.clone()));
                }
            }
        }
    }
    out
}
