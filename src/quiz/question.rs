//! A question: an item put about one machine, with its key and the wrong answers it foresees.

use drivecourse_machine::chance::{Stream, derive};
use drivecourse_machine::{Case, Kind, NoPath, Path, PathChoice, Plan, QuantityId, Registry, System, amount};

use crate::item::{Ask, Item, PartSpec, fill};
use crate::letter;
use crate::predict::{self, Cause, Predicted};
use crate::tolerance;

/// Most accepted ways to one answer that are followed.
const MOST_PATHS: usize = 6;
/// How many machines are tried for discriminating numbers before the least bad one is taken.
const MOST_TRIES: u64 = 60;
/// Tries after which two wrong turns with the same answer are put up with.
const PAIR_TRIES: u64 = 12;

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
    /// For each part, the wrong turns that stay inside the tolerance over the whole family: they
    /// are no wrong turns here.
    pub dropped: Vec<Vec<Cause>>,
    /// For each part, pairs of wrong turns whose answers cannot be told apart over the whole family.
    twins: Vec<Vec<(Cause, Cause)>>,
    faults: Vec<Option<Vec<usize>>>,
}

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

/// One accepted answer to a part.
#[derive(Debug, Clone, PartialEq)]
pub struct Key {
    /// The way there.
    pub path: Path,
    /// The answer (SI), worked out from what is shown.
    pub value: f64,
    /// How far off an answer may be (SI).
    pub tolerance: f64,
    /// Every value on the way.
    pub values: Vec<f64>,
}

/// One part of a question.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    /// The question in words.
    pub text: String,
    /// Shown for this part, with values (SI) as shown; those not needed come last.
    pub givens: Vec<(QuantityId, f64)>,
    /// Earlier parts it builds on: the quantity and the part's place.
    pub carried: Vec<(QuantityId, usize)>,
    /// Marks for a right answer.
    pub marks: u32,
    /// Steps, unit changes, tables and inverse steps on the way: what papers are balanced on.
    pub difficulty: f64,
    /// What is asked, and the key to it.
    pub body: Body,
}

/// What a part asks, and the key to it.
#[derive(Debug, Clone, PartialEq)]
pub enum Body {
    /// The value of a quantity.
    Quantity {
        /// Which.
        asked: QuantityId,
        /// Accepted answers, the usual method first.
        keys: Vec<Key>,
        /// Foreseen wrong answers.
        predicted: Vec<Predicted>,
    },
    /// The right order of the steps shown.
    Order {
        /// The steps as shown.
        shown: Vec<String>,
        /// Places of `shown` in the right order.
        right: Vec<usize>,
        /// Why.
        because: String,
    },
    /// One of the statements shown.
    Pick {
        /// The statements as shown.
        shown: Vec<String>,
        /// Place of the right one.
        right: usize,
        /// Why.
        because: String,
    },
}

/// An item put about one machine.
#[derive(Debug, Clone, PartialEq)]
pub struct Question {
    /// The item's id.
    pub item: String,
    /// The family's id.
    pub family: String,
    /// The seed that gives the question again.
    pub seed: u64,
    /// In which units.
    pub system: System,
    /// The hidden machine.
    pub case: Case,
    /// What a person gets to see of it (SI), NaN where nothing is seen.
    pub seen: Vec<f64>,
    /// What the learner stands in front of.
    pub text: String,
    /// The parts.
    pub parts: Vec<Part>,
}

impl<'a> Setting<'a> {
    /// Makes `item` ready for the machines of `plan`.
    ///
    /// # Errors
    /// [`Unsettled`]: what the family or the item lacks.
    pub fn new(item: &'a Item, plan: &'a Plan, system: System) -> Result<Self, Unsettled> {
        let mut paths = Vec::new();
        let mut asked_before: Vec<QuantityId> = Vec::new();
        for (index, part) in item.parts.iter().enumerate() {
            let Ask::Quantity { asked, from, also, by } = &part.ask else {
                paths.push(Vec::new());
                continue;
            };
            let shown = from.iter().chain(also).copied().filter(|id| !asked_before.contains(id));
            let lacking: Vec<_> = shown.filter(|id| !plan.determines(*id)).collect();
            if !lacking.is_empty() {
                return Err(Unsettled::NotDetermined(lacking));
            }
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
        let (dropped, twins) = (vec![Vec::new(); item.parts.len()], vec![Vec::new(); item.parts.len()]);
        let mut setting = Self { item, plan, system, paths, dropped, twins, faults };
        setting.drop_harmless_turns()?;
        Ok(setting)
    }

    /// The question of `seed`: the same on every platform. Numbers in which a wrong turn would
    /// still land inside the tolerance are drawn again.
    ///
    /// # Errors
    /// [`Unsettled::NoMachine`] where the family has no machine that fits.
    pub fn question(&self, seed: u64) -> Result<Question, Unsettled> {
        let mut best: Option<(u32, Question)> = None;
        let mut last = None;
        for attempt in 0..MOST_TRIES {
            let question = match self.attempt(derive(seed, attempt), seed) {
                Ok(question) => question,
                Err(error) => {
                    last = Some(error);
                    continue;
                }
            };
            let (inside, pairs) = question.blurred(&self.twins);
            if inside == 0 && (pairs == 0 || attempt >= PAIR_TRIES) {
                return Ok(self.put_in_words(question));
            }
            let penalty = inside * 100 + pairs;
            if best.as_ref().is_none_or(|(least, _)| penalty < *least) {
                best = Some((penalty, question));
            }
        }
        match best {
            // What stays inside even in the best numbers is no wrong turn for this question.
            Some((_, mut question)) => {
                question.drop_inside();
                Ok(self.put_in_words(question))
            }
            None => Err(last.unwrap_or_else(|| Unsettled::NoMachine("no machine was drawn".into()))),
        }
    }

    /// One machine, whatever its numbers; `seed` only names the question.
    fn attempt(&self, machine: u64, seed: u64) -> Result<Question, Unsettled> {
        let mut stream = Stream::new(machine, "question");
        let faults = &self.faults[stream.below(self.faults.len())];
        let mut case = None;
        for again in 0..200 {
            let drawn = self.plan.draw_with(derive(machine, again), faults.as_deref());
            let drawn = drawn.map_err(|error| Unsettled::NoMachine(error.to_string()))?;
            let fits = |when: &crate::item::When| {
                let value = drawn.values[when.quantity.index()];
                value >= when.at_least && value <= when.at_most
            };
            if self.item.when.iter().all(fits) {
                case = Some(drawn);
                break;
            }
        }
        let case = case.ok_or_else(|| {
            let names: Vec<_> = self.item.when.iter().map(|when| when.quantity.get().id).collect();
            Unsettled::NoMachine(format!("no machine keeps the item's bounds on {}", names.join(", ")))
        })?;
        let seen = case.seen(self.system);
        let mut question = Question {
            item: self.item.id.clone(),
            family: self.plan.family.id.clone(),
            seed,
            system: self.system,
            text: self.item.text.clone(),
            parts: Vec::new(),
            case,
            seen,
        };
        for (index, part) in self.item.parts.iter().enumerate() {
            let part = self.part(index, part, &question, &mut stream)?;
            question.parts.push(part);
        }
        Ok(question)
    }

    /// Fills in every `{machine}` and `{quantity}`: done once, for the numbers that are kept.
    fn put_in_words(&self, mut question: Question) -> Question {
        let words = |text: &str, question: &Question| {
            fill(text, |name| {
                if name == "machine" {
                    return Some(self.plan.family.name.clone());
                }
                let id = Registry::get().find(name)?;
                Some(amount::write(id.get(), question.shown(id), self.system))
            })
        };
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

    fn part(&self, index: usize, spec: &PartSpec, question: &Question, stream: &mut Stream) -> Result<Part, Unsettled> {
        let mut part = Part {
            text: spec.text.clone(),
            givens: Vec::new(),
            carried: Vec::new(),
            marks: spec.marks,
            difficulty: 1.0,
            body: Body::Pick { shown: Vec::new(), right: 0, because: String::new() },
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
                let keys = keys(&self.paths[index], &values, self.system).map_err(|error| {
                    Unsettled::NoMachine(format!("a step of part {} has no result: {error}", index + 1))
                })?;
                let mut predicted = predict::wrong_turns(&keys[0], &question.case.values, self.system);
                predicted.retain(|wrong| !self.dropped[index].contains(&wrong.cause));
                part.difficulty = difficulty(&self.paths[index][0], self.system);
                part.body = Body::Quantity { asked: *asked, keys, predicted };
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
                part.difficulty = 0.5 * steps.len() as f64;
                part.body = Body::Order { shown, right, because: because.clone() };
            }
            Ask::Pick { options, right, because } => {
                let mut places: Vec<usize> = (0..options.len()).collect();
                stream.shuffle(&mut places);
                let shown = places.iter().map(|place| options[*place].clone()).collect();
                let right = places.iter().position(|place| place == right).unwrap_or(*right);
                part.body = Body::Pick { shown, right, because: because.clone() };
            }
        }
        Ok(part)
    }

    /// Finds the wrong turns that stay inside the tolerance in nearly every machine of the family,
    /// and the pairs of them that nearly always give the same answer.
    fn drop_harmless_turns(&mut self) -> Result<(), Unsettled> {
        const SAMPLES: u64 = 24;
        let mut counts = vec![Counts::default(); self.item.parts.len()];
        let (mut drawn, mut last) = (0, None);
        for sample in 0..SAMPLES {
            let seed = derive(0x5e77_1e5e_77ee, sample);
            match self.attempt(seed, seed) {
                Ok(question) => {
                    drawn += 1;
                    question.parts.iter().zip(&mut counts).for_each(|(part, counts)| counts.add(part));
                }
                Err(error) => last = Some(error),
            }
        }
        if drawn == 0 {
            return Err(last.unwrap_or_else(|| Unsettled::NoMachine("no machine was drawn".into())));
        }
        for (index, counts) in counts.into_iter().enumerate() {
            // Four in five: what is left then is found in a few draws.
            let mostly = |(times, of): (u32, u32)| times * 5 > of * 4;
            self.twins[index] = counts.alike.into_iter().filter(|(_, n)| mostly(*n)).map(|(pair, _)| pair).collect();
            self.dropped[index] =
                counts.inside.into_iter().filter(|(_, n)| mostly(*n)).map(|(cause, _)| cause).collect();
        }
        Ok(())
    }
}

/// How often each wrong turn lay inside the tolerance, and each pair was alike, of how many times.
#[derive(Debug, Clone, Default)]
struct Counts {
    inside: Vec<(Cause, (u32, u32))>,
    alike: Vec<((Cause, Cause), (u32, u32))>,
}

impl Counts {
    fn add(&mut self, part: &Part) {
        fn note<T: PartialEq>(list: &mut Vec<(T, (u32, u32))>, what: T, hit: bool) {
            let place = list.iter().position(|(other, _)| *other == what).unwrap_or_else(|| {
                list.push((what, (0, 0)));
                list.len() - 1
            });
            let (times, of) = &mut list[place].1;
            *times += u32::from(hit);
            *of += 1;
        }
        let Body::Quantity { keys, predicted, .. } = &part.body else { return };
        for (index, wrong) in predicted.iter().enumerate() {
            note(&mut self.inside, wrong.cause.clone(), wrong.is_inside(keys));
            for other in &predicted[..index] {
                note(&mut self.alike, (other.cause.clone(), wrong.cause.clone()), other.is_like(wrong));
            }
        }
    }
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

/// The key by every path, the first one first; paths without a result are left out, unless it is the first.
pub(crate) fn keys(paths: &[Path], values: &[f64], system: System) -> Result<Vec<Key>, drivecourse_calc::Error> {
    let mut keys = Vec::with_capacity(paths.len());
    for path in paths {
        let mut values = values.to_vec();
        match path.run(&mut values) {
            Ok(value) if value.is_finite() => {
                let tolerance = tolerance::of(path, &values, system);
                keys.push(Key { path: path.clone(), value, tolerance, values });
            }
            Ok(_) if keys.is_empty() => {
                return Err(drivecourse_calc::Error::NoSolution { sought: "answer" });
            }
            Err((_, error)) if keys.is_empty() => return Err(error),
            _ => {}
        }
    }
    Ok(keys)
}

/// Steps, and besides them half a point for each change of unit and one for each table or inverse step.
fn difficulty(path: &Path, system: System) -> f64 {
    let mut sum = 0.0;
    for step in &path.steps {
        let linked = step.get();
        sum += 1.0;
        sum += f64::from(u8::from(linked.relation.lookup)) + f64::from(u8::from(linked.relation.inverse));
        sum += 0.5 * linked.conversions(system).len() as f64;
    }
    sum.max(0.5)
}

impl Part {
    /// The quantity it asks for, if it asks for one.
    pub fn asked(&self) -> Option<QuantityId> {
        match &self.body {
            Body::Quantity { asked, .. } => Some(*asked),
            _ => None,
        }
    }

    /// The usual method's key, if it asks for a quantity.
    pub fn key(&self) -> Option<&Key> {
        match &self.body {
            Body::Quantity { keys, .. } => keys.first(),
            _ => None,
        }
    }

    /// Statements or steps to choose from, as shown; the labels of a choice; empty for a number.
    pub fn options(&self) -> Vec<String> {
        match &self.body {
            Body::Quantity { asked, .. } => asked.get().choices.iter().map(|choice| (*choice).to_owned()).collect(),
            Body::Order { shown, .. } | Body::Pick { shown, .. } => shown.clone(),
        }
    }

    /// The right answer as a person would write it.
    pub fn right_answer(&self, system: System) -> String {
        match &self.body {
            Body::Quantity { asked, keys, .. } => amount::write(asked.get(), keys[0].value, system),
            Body::Order { right, .. } => {
                right.iter().map(|place| letter(*place).to_string()).collect::<Vec<_>>().join(" ")
            }
            Body::Pick { shown, right, .. } => format!("{}: {}", letter(*right), shown[*right]),
        }
    }
}

impl Question {
    /// The value of `quantity` as it is shown: seen, or worked out and rounded as usual.
    pub fn shown(&self, quantity: QuantityId) -> f64 {
        let seen = self.seen[quantity.index()];
        if !seen.is_nan() {
            return seen;
        }
        let value = self.case.values[quantity.index()];
        if quantity.get().kind == Kind::Choice {
            return value;
        }
        let unit = quantity.get().unit(self.system);
        unit.to_base(quantity.get().display(self.system).figures.round(unit.from_base(value)))
    }

    /// Marks that can be earned.
    pub fn marks(&self) -> u32 {
        self.parts.iter().map(|part| part.marks).sum()
    }

    /// The sum of the parts' difficulties.
    pub fn difficulty(&self) -> f64 {
        self.parts.iter().map(|part| part.difficulty).sum()
    }

    /// How many wrong turns land inside the tolerance, and how many pairs cannot be told apart.
    fn blurred(&self, twins: &[Vec<(Cause, Cause)>]) -> (u32, u32) {
        let (mut inside, mut pairs) = (0, 0);
        for (part, twins) in self.parts.iter().zip(twins) {
            let Body::Quantity { asked, keys, predicted } = &part.body else { continue };
            if asked.get().kind == Kind::Choice {
                continue;
            }
            for (index, wrong) in predicted.iter().enumerate() {
                inside += u32::from(wrong.is_inside(keys));
                let twin = |other: &&Predicted| !twins.iter().any(|(a, b)| *a == other.cause && *b == wrong.cause);
                pairs += predicted[..index].iter().filter(|other| other.is_like(wrong)).filter(twin).count() as u32;
            }
        }
        (inside, pairs)
    }

    fn drop_inside(&mut self) {
        for part in &mut self.parts {
            if let Body::Quantity { asked, keys, predicted } = &mut part.body
                && asked.get().kind != Kind::Choice
            {
                predicted.retain(|wrong| !wrong.is_inside(keys));
            }
        }
    }
}
