//! A setting: an item made ready for one family and one system of units, from which questions are drawn.

mod harmless;
pub(crate) mod told;
mod wants;

use std::sync::{Arc, OnceLock};

use drivecourse_machine::chance::{Stream, derive};
use drivecourse_machine::told;
use drivecourse_machine::{
    Case, NoPath, Path, PathChoice, Plan, QuantityId, Registry, Stated, System, amount, messages,
};

pub use crate::difficulty::difficulty_of;
use crate::difficulty::{PICK_DIFFICULTY, order_difficulty, path_difficulty};
use crate::item::{Ask, Item, PartSpec, fill};
use crate::judge;
use crate::predict;
use crate::question::{Body, Key, Part, Question, keys, reading};
use crate::twin::twins;
pub use harmless::Harmless;
use wants::Wants;

/// Most accepted ways to one answer that are followed.
const MOST_PATHS: usize = 6;

/// An item made ready for one family and one system of units: its paths are found once.
#[derive(Debug, Clone)]
pub struct Setting<'a> {
    /// What is asked.
    pub item: &'a Item,
    /// About which machines.
    pub plan: &'a Plan,
    /// In which units.
    pub system: System,
    /// Accepted ways to each part's answer; empty for parts that ask for no quantity.
    pub paths: Vec<Vec<Path>>,
    harmless: OnceLock<Harmless>,
    judged: Vec<judge::Ready>,
    faults: Vec<Option<Vec<usize>>>,
    wants: Wants,
    /// What the answers' steps give and the family says by itself.
    told: Vec<QuantityId>,
    /// For each quantity, whether the question shows it or it can be worked out from what the question shows.
    within_reach: Arc<[bool]>,
}

messages! { pub(crate) SAYS {
    NOT_DRAWN = "problem-machine-not-drawn", "no machine was drawn";
    AND = "problem-machine-and", "and";
    NO_RESULT = "problem-machine-no-result", "no machine has a result for every calculation";
    NO_RESULT_WITH = "problem-machine-no-result-with", "no machine with the fault {fault} has a result for every calculation";
    NOT_KEPT = "problem-machine-not-kept", "no machine keeps the item's bounds; at the nearest, {nearest}";
    NOT_KEPT_WITH = "problem-machine-not-kept-with", "no machine with the fault {fault} keeps the item's bounds; at the nearest, {nearest}";
    THIS_NOT_KEPT = "problem-machine-this-not-kept", "this machine does not keep the item's bounds: {bound}";
    OTHER_FAULT = "problem-machine-other-fault", "this machine has not the fault the item wants";
    STEP_FAILS = "problem-machine-step-fails", "a step of part {part} has no result: {why}";
    SAYS_OTHERWISE = "problem-machine-says-otherwise", "the family itself says that {quantity} is {own}, where part {part} would have {found} worked out of what it shows";
    NO_FACE = "problem-machine-no-face", "{quantity} cannot be shown on its face";
} }

/// Why an item cannot be put about a family.
#[derive(Debug, Clone, PartialEq)]
pub enum Unsettled {
    /// The family does not determine these quantities that the item shows.
    NotDetermined(Vec<QuantityId>),
    /// What part `part` shows does not determine what it asks.
    NoPath {
        /// Which part, counted from 0.
        part: usize,
        /// What is missing.
        missing: NoPath,
    },
    /// The family has none of the faults the item wants.
    NoFault,
    /// No machine of the family fits the item's bounds.
    NoMachine(String),
}

impl<'a> Setting<'a> {
    /// Makes `item` ready for the machines of `plan`.
    ///
    /// # Errors
    /// [`Unsettled`]: what the family or the item lacks.
    pub fn new(item: &'a Item, plan: &'a Plan, system: System) -> Result<Self, Unsettled> {
        let (mut paths, mut judged) = (Vec::new(), Vec::new());
        let mut asked_before: Vec<QuantityId> = Vec::new();
        for (index, part) in item.parts.iter().enumerate() {
            let lacking: Vec<_> =
                part.shows().into_iter().filter(|id| !asked_before.contains(id) && !plan.determines(*id)).collect();
            if !lacking.is_empty() {
                return Err(Unsettled::NotDetermined(lacking));
            }
            judged.push(match &part.ask {
                Ask::Judge(judge) => judge::ready(judge, plan, index)?,
                _ => judge::Ready::Plain,
            });
            let Ask::Quantity { asked, from, by, .. } = &part.ask else {
                asked_before.extend(part.read());
                paths.push(Vec::new());
                continue;
            };
            let choice = PathChoice { by: by.clone(), ..PathChoice::default() };
            let mut found = Path::find_all(from, *asked, &choice, MOST_PATHS)
                .map_err(|missing| Unsettled::NoPath { part: index, missing })?;
            // A method that the question does not use up its givens for is a short cut, not a second method.
            let needed = found[0].uses();
            found.retain(|path| needed.iter().filter(|id| from.contains(id)).all(|id| path.uses().contains(id)));
            paths.push(found);
            asked_before.push(*asked);
        }
        let faults = faults(item, plan)?;
        let wants = Wants::new(item, plan, &paths, &judged);
        let mut told = Vec::new();
        paths.iter().for_each(|paths| told::told(plan, paths, &mut told));
        judged.iter().for_each(|judged| told::told(plan, judged.paths(), &mut told));
        let within_reach = Path::within_reach(&shown(item)).into();
        let harmless = OnceLock::new();
        let setting = Self { item, plan, system, paths, harmless, judged, faults, wants, told, within_reach };
        // One machine must fit; what the rest of the family does is found out when it matters.
        let fits = setting.samples().next().is_some();
        if fits { Ok(setting) } else { setting.attempt(0, 0).map(|_| setting) }
    }

    /// The same in `system`: all that has been made ready but what depends on the units.
    #[must_use]
    pub fn in_system(&self, system: System) -> Self {
        Self { system, harmless: OnceLock::new(), ..self.clone() }
    }

    /// The question of `seed`: the same on every platform. Numbers in which a wrong turn would
    /// still land inside the tolerance are drawn again.
    ///
    /// # Errors
    /// [`Unsettled::NoMachine`] where the family has no machine that fits.
    pub fn question(&self, seed: u64) -> Result<Question, Unsettled> {
        let mut questions = twins(&[self], seed)?;
        // One setting gives one question.
        questions.pop().ok_or_else(|| Unsettled::NoMachine(told!("{}", NOT_DRAWN.text())))
    }

    /// One machine, whatever its numbers; `seed` only names the question.
    pub(crate) fn attempt(&self, machine: u64, seed: u64) -> Result<Question, Unsettled> {
        self.ask(self.machine(machine)?, machine, seed)
    }

    /// A machine that keeps the item's bounds, the same in both systems of units, worked out as far as the question
    /// looks at it; [`Self::complete`] works out the rest.
    pub(crate) fn machine(&self, machine: u64) -> Result<Case, Unsettled> {
        let mut stream = Stream::new(machine, "question");
        let faults = &self.faults[stream.below(self.faults.len())];
        // Of each bound, the value beyond it that came nearest.
        let mut nearest: Vec<Option<f64>> = vec![None; self.item.when.len()];
        for again in 0..200 {
            let drawn = self.plan.draw_needed(derive(machine, again), faults.as_deref(), &self.wants.bounds);
            let mut drawn = drawn.map_err(|error| Unsettled::NoMachine(told!("{error}")))?;
            if self.keeps_bounds(&drawn) && self.plan.work_out(&mut drawn, &self.wants.question) {
                return Ok(drawn);
            }
            let broken = self.item.when.iter().zip(&mut nearest).filter(|(when, _)| !when.holds(&drawn));
            for (when, nearest) in broken.filter(|_| cfg!(not(wordless))) {
                let value = drawn.values[when.quantity.index()];
                if nearest.is_none_or(|nearest| when.beyond(value) < when.beyond(nearest)) {
                    *nearest = Some(value);
                }
            }
        }
        Err(Unsettled::NoMachine(self.why_none(&nearest, faults.as_deref().unwrap_or_default())))
    }

    /// Why there was no machine with these faults: of each bound, the value that came nearest.
    fn why_none(&self, nearest: &[Option<f64>], faults: &[usize]) -> String {
        if cfg!(wordless) {
            return String::new();
        }
        let told = self.item.when.iter().zip(nearest).filter_map(|(when, value)| Some(when.says_of((*value)?)));
        let told: Vec<_> = told.collect();
        let named = faults.iter().map(|fault| format!("{:?}", self.plan.family.faults[*fault].id));
        let named = named.collect::<Vec<_>>().join(&format!(" {} ", AND.text()));
        let says = match (told.is_empty(), named.is_empty()) {
            (true, true) => NO_RESULT,
            (true, false) => NO_RESULT_WITH,
            (false, true) => NOT_KEPT,
            (false, false) => NOT_KEPT_WITH,
        };
        says.say(&[("fault", &named), ("nearest", &told.join("; "))])
    }

    /// Works out the rest of the machine that `question` is about; whether every calculation has a result.
    pub(crate) fn complete(&self, question: &mut Question) -> bool {
        self.plan.complete(&mut question.case)
    }

    /// Whether `case` is a machine that the item may be asked about.
    pub(crate) fn suits(&self, case: &Case) -> Result<(), Unsettled> {
        if let Some(broken) = self.item.when.iter().find(|when| !when.holds(case)) {
            return Err(Unsettled::NoMachine(told!(
                "{}",
                THIS_NOT_KEPT.say(&[("bound", &broken.says_of(case.values[broken.quantity.index()]))])
            )));
        }
        // A machine with a second fault besides the one wanted will do; one without any will not.
        let has = |wanted: &Vec<usize>| {
            wanted.is_empty() == case.faults.is_empty() && wanted.iter().all(|fault| case.faults.contains(fault))
        };
        if !self.faults.iter().any(|faults| faults.as_ref().is_none_or(has)) {
            return Err(Unsettled::NoMachine(told!("{}", OTHER_FAULT.text())));
        }
        Ok(())
    }

    fn keeps_bounds(&self, case: &Case) -> bool {
        self.item.when.iter().all(|when| when.holds(case))
    }

    /// What is asked about `case`, which [`Self::machine`] drew for `machine`.
    pub(crate) fn ask(&self, case: Case, machine: u64, seed: u64) -> Result<Question, Unsettled> {
        let mut stream = Stream::new(machine, "shuffle");
        let mut question = Question {
            item: self.item.id.clone(),
            family: self.plan.family.id.clone(),
            seed,
            system: self.system,
            machine: None,
            text: self.item.text.clone(),
            parts: Vec::new(),
            stated: self.stated(&case),
            within_reach: self.within_reach.clone(),
            case,
        };
        for (index, part) in self.item.parts.iter().enumerate() {
            let part = self.part(index, part, &question, &mut stream)?;
            question.parts.push(part);
        }
        Ok(question)
    }

    /// What the plant says with a source of its own of the machine `case`: a fault that draws it anew takes it away.
    fn stated(&self, case: &Case) -> Arc<[Stated]> {
        let family = &self.plan.family;
        let redrawn = |stated: &Stated| {
            let mut draws = case.faults.iter().flat_map(|fault| &family.faults[*fault].draws);
            draws.any(|(drawn, _)| *drawn == stated.quantity)
        };
        let mut kept = family.stated.to_vec();
        kept.retain(|stated| !redrawn(stated));
        kept.into()
    }

    /// Names the machine, and fills in every `{machine}` and `{quantity}`: done once, for the numbers that are kept.
    pub(crate) fn put_in_words(&self, mut question: Question) -> Question {
        let words = |text: &str, question: &Question| {
            fill(text, &mut |name| {
                if name == "machine" {
                    return Some(self.plan.family.name.clone());
                }
                let id = Registry::get().find(name)?;
                Some(amount::write(id.get(), question.shown(id), self.system))
            })
        };
        question.machine = self.plan.machine_name(&question.case).map(str::to_owned);
        question.text = words(&question.text, &question);
        for index in 0..question.parts.len() {
            let text = words(&question.parts[index].text, &question);
            let shown = match &question.parts[index].body {
                Body::Order { shown, .. } | Body::Pick { shown, .. } => {
                    shown.iter().map(|text| words(text, &question)).collect()
                }
                Body::Quantity { .. } => Vec::new(),
            };
            let part = &mut question.parts[index];
            part.text = text;
            if let Body::Order { shown: kept, .. } | Body::Pick { shown: kept, .. } = &mut part.body {
                *kept = shown;
            }
        }
        question
    }

    fn says_otherwise(&self, part: usize, quantity: QuantityId, values: &[f64], case: &Case) -> Unsettled {
        if cfg!(wordless) {
            return Unsettled::NoMachine(String::new());
        }
        let [own, found] = told::both(quantity, values, (case, self.system));
        let part = (part + 1).to_string();
        let words = [("quantity", quantity.get().id), ("own", &own), ("found", &found), ("part", &part)];
        Unsettled::NoMachine(told!("{}", SAYS_OTHERWISE.say(&words)))
    }

    fn part(&self, index: usize, spec: &PartSpec, question: &Question, stream: &mut Stream) -> Result<Part, Unsettled> {
        let mut part = Part {
            text: spec.text.clone(),
            givens: Vec::new(),
            carried: Vec::new(),
            own: spec.wrong.clone(),
            marks: spec.marks,
            difficulty: PICK_DIFFICULTY,
            body: Body::Order { shown: Vec::new(), right: Vec::new(), because: String::new() },
        };
        match &spec.ask {
            Ask::Quantity { asked, from, also, .. } => {
                for id in from.iter().chain(also) {
                    let earlier = question.parts.iter().position(|part| part.asked() == Some(*id));
                    match earlier {
                        Some(earlier) => part.carried.push((*id, earlier)),
                        None => part.givens.push((*id, question.shown(*id))),
                    }
                }
                let mut values = vec![f64::NAN; Registry::get().len()];
                for (id, value) in &part.givens {
                    values[id.index()] = *value;
                }
                for (id, earlier) in &part.carried {
                    values[id.index()] = question.parts[*earlier].key().map_or(f64::NAN, |key| key.value);
                }
                let mut keys = keys(&self.paths[index], &values, &part.carried, self.system).map_err(|error| {
                    let part = index + 1;
                    Unsettled::NoMachine(told!(
                        "{}",
                        STEP_FAILS.say(&[("part", &part.to_string()), ("why", &error.to_string())])
                    ))
                })?;
                let otherwise = |key: &Key| {
                    let about = (&question.case, self.system);
                    told::otherwise(&key.path, &key.values, &part.carried, &self.told, about)
                };
                if let Some(quantity) = otherwise(&keys[0]) {
                    return Err(self.says_otherwise(index, quantity, &keys[0].values, &question.case));
                }
                keys.retain(|key| otherwise(key).is_none());
                let (truth, reach) = (&question.case.values, &self.within_reach);
                let predicted = predict::wrong_turns(&keys[0], &spec.wrong, truth, reach, self.system);
                part.difficulty = path_difficulty(&self.paths[index][0], self.system);
                part.body = Body::Quantity { asked: *asked, keys, predicted };
            }
            Ask::Read(asked) => {
                part.body = reading(*asked, question)
                    .ok_or_else(|| Unsettled::NoMachine(told!("{}", NO_FACE.say(&[("quantity", asked.get().id)]))))?;
            }
            Ask::Judge(judge) => {
                let spec = (judge, &self.judged[index]);
                let before = index.checked_sub(1).and_then(|before| match &self.item.parts[before].ask {
                    Ask::Judge(judge) => Some((judge, &self.judged[before])),
                    _ => None,
                });
                let put = judge::put(self.plan, spec, before, question, stream.bits())?;
                for path in self.judged[index].paths() {
                    let mut values = vec![f64::NAN; question.case.values.len()];
                    put.givens.iter().for_each(|(id, value)| values[id.index()] = *value);
                    let about = (&question.case, self.system);
                    // A way without a result has been refused, or is not gone here.
                    if path.run(&mut values).is_ok()
                        && let Some(quantity) = told::otherwise(path, &values, &[], &self.told, about)
                    {
                        return Err(self.says_otherwise(index, quantity, &values, &question.case));
                    }
                }
                (part.givens, part.body, part.difficulty) = (put.givens, put.body, put.difficulty);
            }
            Ask::Order { steps, because } => {
                let mut places: Vec<usize> = (0..steps.len()).collect();
                // Never show the answer itself.
                while places.is_sorted() {
                    stream.shuffle(&mut places);
                }
                let shown = places.iter().map(|place| steps[*place].clone()).collect();
                let right = (0..steps.len())
                    .map(|step| places.iter().position(|place| *place == step).unwrap_or(step))
                    .collect();
                part.difficulty = order_difficulty(steps);
                part.body = Body::Order { shown, right, because: because.clone() };
            }
            Ask::Pick { options, right, because } => {
                let mut places: Vec<usize> = (0..options.len()).collect();
                stream.shuffle(&mut places);
                let shown = places.iter().map(|place| options[*place].clone()).collect();
                let right = places.iter().position(|place| place == right).unwrap_or(*right);
                part.body = Body::Pick { shown, right, against: Vec::new(), grave: None, because: because.clone() };
            }
        }
        Ok(part)
    }

    /// Up to a dozen of the family's sample machines, those that fit the item.
    fn samples(&self) -> impl Iterator<Item = Question> + '_ {
        const SAMPLES: usize = 12;
        let cases = self.plan.samples().iter().filter(|case| {
            let fault = |faults: &Option<Vec<usize>>| faults.as_ref().is_none_or(|faults| *faults == case.faults);
            self.faults.iter().any(fault) && self.keeps_bounds(case)
        });
        cases.filter_map(|case| self.ask(case.clone(), case.seed, case.seed).ok()).take(SAMPLES)
    }

    /// [`Self::samples`], and where too few of them fit, machines drawn to fit.
    fn enough_samples(&self) -> Vec<Question> {
        const FEWEST: usize = 4;
        let mut found: Vec<_> = self.samples().collect();
        for sample in found.len()..FEWEST {
            let seed = derive(0x5e77_1e5e_77ee, sample as u64);
            found.extend(self.attempt(seed, seed));
        }
        found
    }

    /// The wrong turns that stay inside the tolerance in nearly every machine of the family, and the
    /// pairs of them that nearly always give the same answer: found at first need, then kept.
    pub fn harmless(&self) -> &Harmless {
        self.harmless.get_or_init(|| Harmless::over(self.item.parts.len(), &self.enough_samples()))
    }
}

/// Everything that `item` shows of a machine: givens, what is read off a face, and what stands in its words.
fn shown(item: &Item) -> Vec<QuantityId> {
    let mut shown = Vec::new();
    for part in &item.parts {
        shown.extend(part.shows());
    }
    let mut named = |text: &str| {
        fill(text, &mut |name| {
            shown.extend(Registry::get().find(name));
            None
        });
    };
    named(&item.text);
    item.parts.iter().for_each(|part| named(&part.text));
    shown
}

/// The fault sets an item may draw: `None` leaves it to the family.
fn faults(item: &Item, plan: &Plan) -> Result<Vec<Option<Vec<usize>>>, Unsettled> {
    if item.faults.is_empty() {
        return Ok(vec![None]);
    }
    let sets: Vec<_> = (item.faults.iter())
        .filter_map(|wanted| match wanted.as_str() {
            "none" => Some(Some(Vec::new())),
            name => plan.family.faults.iter().position(|fault| fault.id == name).map(|place| Some(vec![place])),
        })
        .collect();
    if sets.is_empty() { Err(Unsettled::NoFault) } else { Ok(sets) }
}
