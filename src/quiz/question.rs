//! A question: an item put about one machine, with its key and the wrong answers it foresees.

use std::sync::Arc;

use drivecourse_machine::face::feeler_leaves;
use drivecourse_machine::{
    Case, Face, Kind, Known, Path, QuantityId, Registry, Stated, System, Working, amount, messages,
};

use crate::item::OwnTurn;
use crate::letter;
use crate::predict::{self, Cause, Predicted};
use crate::setting::Harmless;
use crate::tolerance;

messages! { pub(crate) SAYS {
    MACHINE = "question-machine", "Machine {name}.";
} }

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
    /// Wrong turns of the item's author.
    pub own: Arc<[OwnTurn]>,
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
        /// What speaks against each of them, empty for the right one; none where the author names but one reason.
        against: Vec<String>,
        /// Place of the one that would put people in danger: a machine called fit that must stop.
        grave: Option<usize>,
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
    /// The machine's own name, where it comes from a table that names it. It is public: what is wrong is drawn, and stands
    /// in no table.
    pub machine: Option<String>,
    /// What the learner stands in front of.
    pub text: String,
    /// The parts.
    pub parts: Vec<Part>,
    /// Values that are the plant's own, with where they stand.
    pub stated: Arc<[Stated]>,
    /// For each quantity, whether the question shows it or it can be worked out from what the question shows.
    pub within_reach: Arc<[bool]>,
}

/// `value` of `quantity` (SI) with the figures that it is shown with.
pub(crate) fn rounded(quantity: QuantityId, value: f64, system: System) -> f64 {
    let unit = quantity.get().unit(system);
    unit.to_base(quantity.get().display(system).figures.round(unit.from_base(value)))
}

/// The key by every path, the first one first; paths without a result are left out, unless it is the first.
pub(crate) fn keys(
    paths: &[Path],
    values: &[f64],
    carried: &[(QuantityId, usize)],
    system: System,
) -> Result<Vec<Key>, drivecourse_calc::Error> {
    let mut keys = Vec::with_capacity(paths.len());
    for path in paths {
        let mut values = values.to_vec();
        match path.run(&mut values) {
            Ok(value) if value.is_finite() => {
                let tolerance = tolerance::of(path, &values, carried, system);
                keys.push(Key { path: path.clone(), value, tolerance, values });
            }
            Ok(_) if keys.is_empty() => {
                return Err(drivecourse_calc::Error::none("answer"));
            }
            Err((_, error)) if keys.is_empty() => return Err(error),
            _ => {}
        }
    }
    Ok(keys)
}

/// A reading off the face of its instrument: right to half a division; `None` where the face cannot show it, or shows it
/// without anything to be read.
pub(crate) fn reading(asked: QuantityId, question: &Question) -> Option<Body> {
    let Known::Read(instrument) = asked.get().known else { return None };
    let face = Face::of(instrument)?;
    let (value, unit) = (question.shown(asked), asked.get().unit(question.system));
    let shown = unit.from_base(value);
    // One leaf alone has the answer marked on it: there is nothing to read.
    if face == Face::Feeler && feeler_leaves(question.system, shown).is_none_or(|leaves| leaves.len() < 2) {
        return None;
    }
    let mut values = vec![f64::NAN; question.case.values.len()];
    values[asked.index()] = value;
    let key = Key {
        path: Path { steps: Vec::new(), asked },
        value,
        tolerance: 0.5 * face.division(question.system, shown) * unit.size().abs(),
        values,
    };
    let predicted = predict::misread(face, asked, value, question.system);
    Some(Body::Quantity { asked, keys: vec![key], predicted })
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
            Body::Quantity { asked, .. } => asked.get().labels.iter().map(|choice| (*choice).to_owned()).collect(),
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
    /// Which machine of the table it is about, as a sentence; `None` where no table names it.
    pub fn machine_says(&self) -> Option<String> {
        self.machine.as_ref().map(|name| MACHINE.say(&[("name", name)]))
    }

    /// The value of `quantity` as it is shown: seen, or worked out and rounded as usual.
    pub fn shown(&self, quantity: QuantityId) -> f64 {
        let value = self.case.values[quantity.index()];
        let seen = Registry::get().seeing(self.system)[quantity.index()].see(value);
        if !seen.is_nan() {
            return seen;
        }
        if quantity.get().kind == Kind::Choice {
            return value;
        }
        rounded(quantity, value, self.system)
    }

    /// What the plant says of `quantity` with a source of its own, if it does and it is this `value` (SI).
    pub fn stated(&self, quantity: QuantityId, value: f64) -> Option<&Stated> {
        let own = self.shown(quantity);
        self.stated.iter().find(|stated| stated.quantity == quantity && (own - value).abs() <= 1e-9 * own.abs())
    }

    /// The worked solution of `key`, with the plant's own sources beside its own values.
    pub fn working(&self, key: &Key) -> Working {
        Working::write(&key.path, &key.values, self.system).with(&key.values, |id, value| self.stated(id, value))
    }

    /// Marks that can be earned.
    pub fn marks(&self) -> u32 {
        self.parts.iter().map(|part| part.marks).sum()
    }

    /// The sum of the parts' difficulties.
    pub fn difficulty(&self) -> f64 {
        self.parts.iter().map(|part| part.difficulty).sum()
    }

    /// Makes the question worth `weight` marks, shared out among its parts as theirs are, at least one each: whole
    /// marks first, what is left by the largest remainders, the earliest part first.
    pub fn weigh(&mut self, weight: u32) {
        let (all, parts) = (self.marks().max(1), self.parts.len() as u32);
        let spare = weight.saturating_sub(parts);
        let mut left = spare;
        let mut rests = Vec::with_capacity(self.parts.len());
        for (place, part) in self.parts.iter_mut().enumerate() {
            let share = spare * part.marks;
            rests.push((share % all, place));
            left -= share / all;
            part.marks = 1 + share / all;
        }
        rests.sort_by(|a, b| b.0.cmp(&a.0).then(a.1.cmp(&b.1)));
        rests.iter().take(left as usize).for_each(|(_, place)| self.parts[*place].marks += 1);
    }

    /// How many wrong turns land inside the tolerance, and how many pairs cannot be told apart;
    /// `harmless` ones do not count.
    pub(crate) fn blurred(&self, harmless: Option<&Harmless>) -> (u32, u32) {
        let (mut inside, mut pairs) = (0, 0);
        for (place, part) in self.parts.iter().enumerate() {
            let Body::Quantity { asked, keys, predicted } = &part.body else { continue };
            if asked.get().kind == Kind::Choice {
                continue;
            }
            let dropped = |cause: &Cause| harmless.is_some_and(|harmless| harmless.dropped[place].contains(cause));
            let alike = |a: &Cause, b: &Cause| {
                harmless.is_some_and(|harmless| harmless.alike[place].iter().any(|(one, two)| one == a && two == b))
            };
            for (index, wrong) in predicted.iter().enumerate().filter(|(_, wrong)| !dropped(&wrong.cause)) {
                inside += u32::from(wrong.is_inside(keys));
                let others = predicted[..index].iter().filter(|other| !dropped(&other.cause));
                let same = others.filter(|other| other.is_like(wrong) && !alike(&other.cause, &wrong.cause));
                pairs += same.count() as u32;
            }
        }
        (inside, pairs)
    }

    /// Takes out the wrong turns that would earn the mark, for here they are none, and those that a wrong turn of the
    /// author's own says already.
    pub(crate) fn drop_idle(&mut self) {
        for part in &mut self.parts {
            if let Body::Quantity { asked, keys, predicted } = &mut part.body
                && asked.get().kind != Kind::Choice
            {
                predicted.retain(|wrong| !wrong.is_inside(keys));
                predict::own_alone(predicted);
            }
        }
    }
}
