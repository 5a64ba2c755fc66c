//! What `check` finds in wrong turns: some that make no difference, that cannot be told apart, that never give an answer of
//! their own, or that need what nobody who is asked can know.

use std::collections::{BTreeMap, BTreeSet};

use drivecourse_machine::{Path, Plan, Problem, QuantityId, Registry, System, messages, quoted};
use drivecourse_quiz::explain::{cause_name, part_letter, sentence};
use drivecourse_quiz::paper::why;
use drivecourse_quiz::predict::Cause;
use drivecourse_quiz::{Ask, Bank, Body, Item, Question, Setting};

use crate::check::Check;
use crate::check_found::{About, Found};

messages! { pub(crate) SAYS {
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
} }

/// What came of an item put about every family that it may be about, in both sets of units.
#[derive(Default)]
pub(crate) struct Tried<'a> {
    /// Why it does not fit, of each family that it does not.
    pub(crate) reasons: BTreeMap<&'a String, String>,
    /// The families that it fits.
    pub(crate) fits: BTreeSet<&'a String>,
    /// In how many families and units it can be asked.
    settled: usize,
    /// What it shows or asks, where it can be asked.
    shown: BTreeSet<QuantityId>,
    /// The author's own wrong turns that are foreseen, by part and by what they say.
    useful: BTreeSet<(usize, String)>,
    /// Wrong turns that make no difference, by part and name, and where.
    dropped: BTreeMap<(usize, String), Vec<String>>,
    alike: Pairs,
    /// What people are told of each that cannot be told apart from another, by its name.
    sentences: BTreeMap<String, String>,
}

impl<'a> Tried<'a> {
    /// Puts `item` about the families of `bank`.
    pub(crate) fn of(bank: &'a Bank, item: &Item) -> Self {
        let named = |plan: &&Plan| item.families.is_empty() || item.families.contains(&plan.family.id);
        let mut tried = Self::default();
        for plan in bank.plans.iter().filter(named) {
            for system in System::ALL {
                let made = Setting::new(item, plan, system).and_then(|setting| {
                    let question = setting.question(0)?;
                    Ok((setting, question))
                });
                match made {
                    Ok((setting, question)) => tried.add(item, plan, system, &setting, &question),
                    Err(error) => {
                        tried.reasons.entry(&plan.family.id).or_insert_with(|| why(&error));
                    }
                }
            }
        }
        tried
    }

    fn add(&mut self, item: &Item, plan: &'a Plan, system: System, setting: &Setting<'_>, question: &Question) {
        self.fits.insert(&plan.family.id);
        if self.settled == 0 {
            self.shown = shown(item, question);
        }
        self.settled += 1;
        self.useful.extend(own_turns(question));
        let at = format!("{} ({})", plan.family.id, system.code());
        for (part, causes) in setting.harmless().dropped.iter().enumerate() {
            for cause in causes {
                self.dropped.entry((part, cause_name(cause))).or_default().push(at.clone());
            }
        }
        for (part, pairs) in setting.harmless().alike.iter().enumerate() {
            for (one, two) in pairs {
                for cause in [one, two] {
                    self.sentences.entry(cause_name(cause)).or_insert_with(|| sentence(cause));
                }
                self.alike.entry((part, cause_name(one), cause_name(two))).or_default().push(at.clone());
            }
        }
    }

    /// Where a wrong turn is so: `all families`, or each with its units.
    fn places(&self, at: &[String]) -> String {
        if at.len() == self.settled { ALL_FAMILIES.text().to_owned() } else { at.join(", ") }
    }
}

impl Check<'_> {
    /// Looks at the wrong turns of an item that was `tried`.
    pub(crate) fn turns(&mut self, path: &str, text: &str, item: &Item, tried: &Tried<'_>) {
        self.harmless(path, text, item, tried);
        for (index, part) in item.parts.iter().enumerate().filter(|_| tried.settled > 0) {
            for turn in part.wrong.iter().filter(|turn| !tried.useful.contains(&(index, turn.says.clone()))) {
                self.say(path, text, Problem::at(turn.span.clone(), IDLE_TURN.text(), IDLE_TURN_MEND.text()));
            }
        }
        self.unseen(path, text, item, &tried.shown);
    }

    /// Tells of wrong turns that make no difference or cannot be told apart.
    fn harmless(&mut self, path: &str, text: &str, item: &Item, tried: &Tried<'_>) {
        let told = |part: usize, turns: Vec<String>, at: &[String]| {
            let (part, at) = (part_letter(part).to_string(), tried.places(at));
            let words = [("item", &*item.id), ("part", &part), ("families", &at)];
            let what = match turns.as_slice() {
                [one, other] => ALIKE.say(&[&words[..], &[("one", one), ("other", other)]].concat()),
                causes => NO_DIFFERENCE.say(&[&words[..], &[("cause", &causes.concat())]].concat()),
            };
            (what, About { turns, place: PLACE.say(&words), own: self.assets.is_own(path), lines: Vec::new() })
        };
        let dropped = tried.dropped.iter().map(|((part, cause), at)| told(*part, vec![cause.clone()], at));
        // Of an author's own question they are told as people are; of the program's, by their names, each pair once.
        let is_own = self.assets.is_module() && self.assets.is_own(path);
        let together = if is_own { together(&tried.alike) } else { Vec::new() };
        let alike = tried.alike.iter().filter(|_| !is_own);
        let alike = alike.map(|((part, one, two), at)| told(*part, vec![one.clone(), two.clone()], at));
        for (what, about) in dropped.chain(alike).collect::<Vec<_>>() {
            let note = self.placed(path, text, Problem::at(item.span.clone(), what, ""));
            self.notes.push(Found { about: Some(about), ..note });
        }
        for Together { part, names, at } in together {
            let says: BTreeSet<_> = names.iter().filter_map(|name| tried.sentences.get(name)).cloned().collect();
            // Told in the same words, they need not be told apart.
            if says.len() < 2 {
                continue;
            }
            let (letter, count, at) = (part_letter(part).to_string(), says.len().to_string(), tried.places(&at));
            let words = [("item", &*item.id), ("part", &letter), ("count", &count), ("families", &at)];
            let lines: Vec<_> = says.iter().map(|says| format!("- {says}")).collect();
            let what = format!("{}\n{}", ALIKE_OWN.say(&words), lines.join("\n"));
            let note = self.placed(path, text, Problem::at(item.span.clone(), what, ALIKE_OWN_MEND.text()));
            let about = About { turns: names.into_iter().collect(), place: PLACE.say(&words), own: true, lines };
            self.notes.push(Found { about: Some(about), ..note });
        }
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
}

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

/// What `question` shows or asks, in its parts and in its words.
fn shown(item: &Item, question: &Question) -> BTreeSet<QuantityId> {
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

/// The author's own wrong turns that `question` foresees, by part and by what they say.
fn own_turns(question: &Question) -> Vec<(usize, String)> {
    let mut out = Vec::new();
    for (index, part) in question.parts.iter().enumerate() {
        if let Body::Quantity { predicted, .. } = &part.body {
            for wrong in predicted {
                if let Cause::Own { says } = &wrong.cause {
                    out.push((index, says.clone()));
                }
            }
        }
    }
    out
}
