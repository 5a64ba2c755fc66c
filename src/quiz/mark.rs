//! Marking: what a written answer earns, and what it says about the person.

use drivecourse_machine::amount::{self, Amount, ReadError};
use drivecourse_machine::{Kind, QuantityId, Unit};

use crate::explain;
use crate::marking::{Marking, Written};
use crate::predict::{self, Cause};
use crate::question::{Body, Key, Part, Question, keys};

/// Rounding to two figures moves an answer by no more than this share of it.
const COARSE: f64 = 0.05;

/// How an answer turned out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Verdict {
    /// Right.
    Right,
    /// Right from the person's own earlier number: the error was carried, not made again.
    Carried,
    /// Some of the marks: a near miss, or right results on the way to a wrong answer.
    Partial,
    /// Wrong.
    Wrong,
    /// The unit belongs to another kind of quantity.
    WrongUnit,
    /// It could not be read.
    Unreadable,
    /// Nothing was written.
    Blank,
}

impl Verdict {
    /// Its name in tables: `right`, `wrong-unit` ...
    pub fn name(self) -> &'static str {
        match self {
            Self::Right => "right",
            Self::Carried => "carried",
            Self::Partial => "partial",
            Self::Wrong => "wrong",
            Self::WrongUnit => "wrong-unit",
            Self::Unreadable => "unreadable",
            Self::Blank => "blank",
        }
    }
}

/// What one answer earns.
#[derive(Debug, Clone, PartialEq)]
pub struct Mark {
    /// How it turned out.
    pub verdict: Verdict,
    /// Marks earned.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
    /// How it was understood (`11.1 mm`); empty if it was not.
    pub read_as: String,
    /// Why it is wrong, most likely first; empty when it is right or nothing is recognised.
    pub causes: Vec<Cause>,
    /// One or two sentences to the person.
    pub says: String,
}

/// A readable answer.
#[derive(Debug, Clone, PartialEq)]
pub enum Answer {
    /// A number with its unit, or the place of a choice.
    Value {
        /// In the SI unit of the kind.
        base: f64,
        /// As written.
        written: f64,
        /// The unit written or meant.
        unit: &'static Unit,
        /// How it was understood.
        read_as: String,
        /// All that was read of an amount; nothing of a choice.
        amount: Option<Amount>,
    },
    /// An order of the steps shown.
    Order(Vec<usize>),
    /// One of the statements shown.
    Pick(usize),
}

/// Reads an answer to `part`, units as `marking` has them; `None` where nothing was written.
///
/// # Errors
/// [`ReadError`], a sentence to the person.
pub fn read(part: &Part, question: &Question, text: &str, marking: &Marking) -> Result<Option<Answer>, ReadError> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let answer = match &part.body {
        Body::Quantity { asked, .. } => {
            let quantity = asked.get();
            if quantity.kind == Kind::Choice {
                let place = amount::read_choice(text, quantity.labels)?;
                let unit = quantity.unit(question.system);
                let read_as = quantity.labels[place].to_owned();
                Answer::Value { base: place as f64, written: place as f64, unit, read_as, amount: None }
            } else {
                let read = amount::read(text, &marking.wanted(*asked, question.system))?;
                let read_as = read.as_read();
                let (base, written, unit) = (read.base, read.written, read.unit);
                Answer::Value { base, written, unit, read_as, amount: Some(read) }
            }
        }
        Body::Order { shown, .. } => Answer::Order(amount::read_order(text, shown.len())?),
        Body::Pick { shown, .. } => {
            let options: Vec<&str> = shown.iter().map(String::as_str).collect();
            Answer::Pick(amount::read_choice(text, &options).or_else(|error| lettered(text, &options).ok_or(error))?)
        }
    };
    Ok(Some(answer))
}

/// How an answer was understood: `11.1 mm`, `B A C`, the statement itself.
pub fn read_as(part: &Part, answer: &Answer) -> String {
    match (answer, &part.body) {
        (Answer::Value { read_as, .. }, _) => read_as.clone(),
        (Answer::Order(given), _) => {
            given.iter().map(|place| crate::letter(*place).to_string()).collect::<Vec<_>>().join(" ")
        }
        (Answer::Pick(given), Body::Pick { shown, .. }) => shown.get(*given).cloned().unwrap_or_default(),
        (Answer::Pick(_), _) => String::new(),
    }
}

/// `C: statement`, as the key itself is written; nothing where letter and statement disagree.
fn lettered(text: &str, options: &[&str]) -> Option<usize> {
    let (letter, statement) = text.split_once(':')?;
    let place = amount::read_choice(letter, options).ok().filter(|_| letter.trim().chars().count() == 1)?;
    (amount::read_choice(statement, options) == Ok(place)).then_some(place)
}

/// Marks the answers to all parts of `question`, in order; what is missing at the end counts as blank.
///
/// A part that builds on an earlier one is marked again from the person's own earlier number
/// when it does not fit the key: an error is charged once.
pub fn mark(question: &Question, answers: &[&str]) -> Vec<Mark> {
    let written: Vec<Written> = answers.iter().map(|answer| Written { answer, steps: "" }).collect();
    mark_by(question, &written, &Marking::default())
}

/// [`mark()`], with what `marking` says of near misses, figures, units and results on the way.
pub fn mark_by(question: &Question, answers: &[Written], marking: &Marking) -> Vec<Mark> {
    let mut own: Vec<Option<f64>> = Vec::with_capacity(question.parts.len());
    let mut marks = Vec::with_capacity(question.parts.len());
    for (index, part) in question.parts.iter().enumerate() {
        let written = answers.get(index).copied().unwrap_or_default();
        let (mark, value) = mark_part(question, part, written, &own, marking);
        own.push(value);
        marks.push(mark);
    }
    marks
}

fn mark_part(
    question: &Question,
    part: &Part,
    Written { answer: text, steps }: Written,
    own: &[Option<f64>],
    marking: &Marking,
) -> (Mark, Option<f64>) {
    let mark = |verdict, earned, read_as: &str, causes: Vec<Cause>, says: String| Mark {
        verdict,
        earned,
        of: part.marks,
        read_as: read_as.to_owned(),
        causes,
        says,
    };
    let answer = match read(part, question, text, marking) {
        Ok(None) => return (mark(Verdict::Blank, 0, "", Vec::new(), explain::blank()), None),
        Ok(Some(answer)) => answer,
        Err(error) => {
            let verdict =
                if matches!(error, ReadError::WrongKind { .. }) { Verdict::WrongUnit } else { Verdict::Unreadable };
            return (mark(verdict, 0, "", Vec::new(), error.to_string()), None);
        }
    };
    match (&answer, &part.body) {
        (Answer::Value { base, written, unit, read_as, amount }, Body::Quantity { asked, keys, predicted }) => {
            let value = Some(*base);
            let quoted = |verdict, earned: u32, says: String| {
                let left = amount.map_or(earned, |read| marking.quoted(*asked, &read, question.system, earned));
                let says = if left < earned { explain::misquoted(&says, earned - left) } else { says };
                mark(verdict, left, read_as, Vec::new(), says)
            };
            if keys.iter().any(|key| fits(key, *base)) {
                return (quoted(Verdict::Right, part.marks, explain::right(text)), value);
            }
            let again = from_own(question, part, own);
            if let Some(again) = &again
                && again.iter().any(|key| fits(key, *base))
            {
                return (quoted(Verdict::Carried, part.marks, explain::carried(part)), value);
            }
            // Diagnose against the person's own earlier number where there is one.
            let mut causes = match &again {
                None => foreseen(predicted, *base),
                Some(again) => foreseen(&foreseen_again(question, part, again), *base),
            };
            if causes.is_empty() && again.is_some() {
                causes = foreseen(predicted, *base);
            }
            if causes.is_empty() && asked.get().kind != Kind::Choice {
                let against = again.as_ref().map_or(&keys[0], |again| &again[0]);
                causes.extend(predict::slip(against, *written, unit, *base));
            }
            let right = again.as_ref().unwrap_or(keys);
            // What is right and rounded to two figures is no wrong turn, whatever else comes near it.
            if amount.is_some_and(|read| {
                read.figures < 3 && (right[0].value - base).abs() <= (0.5 * read.step()).min(COARSE * base.abs())
            }) {
                causes.clear();
            }
            let mut says = explain::wrong(question, part, *base, &causes);
            // The first choice of every verdict is that all is well.
            if *base == 0.0 && asked.get().is_stop(right[0].value) {
                says = explain::stop_accepted(&says);
                causes.push(Cause::StopAccepted);
            }
            if causes.is_empty() {
                // Near the person's own result, or near the key.
                let near = marking.near(right, *base, part.marks).max(marking.near(keys, *base, part.marks));
                if near > 0 {
                    return (quoted(Verdict::Partial, near, explain::near(near, part.marks)), value);
                }
            }
            let (earned, found, of) = marking.way(right, steps, question.system, part.marks);
            if earned > 0 {
                let says = explain::way(&says, earned, found, of);
                return (mark(Verdict::Partial, earned, read_as, causes, says), value);
            }
            (mark(Verdict::Wrong, 0, read_as, causes, says), value)
        }
        (Answer::Order(given), Body::Order { right, .. }) => {
            let verdict = if given == right { Verdict::Right } else { Verdict::Wrong };
            let says = if given == right { explain::right(text) } else { explain::wrong_order(part, given) };
            (
                mark(verdict, if given == right { part.marks } else { 0 }, &read_as(part, &answer), Vec::new(), says),
                None,
            )
        }
        (Answer::Pick(given), Body::Pick { shown, right, .. }) if given == right => {
            (mark(Verdict::Right, part.marks, &read_as(part, &answer), Vec::new(), explain::right(text)), None)
        }
        (Answer::Pick(given), Body::Pick { shown, grave, against, because, .. }) => {
            let says = explain::wrong_pick(against.get(*given).filter(|says| !says.is_empty()).unwrap_or(because));
            let causes = if *grave == Some(*given) { vec![Cause::StopAccepted] } else { Vec::new() };
            (mark(Verdict::Wrong, 0, &shown[*given], causes, says), None)
        }
        // `read` gives the answer that belongs to the part's body.
        _ => (mark(Verdict::Unreadable, 0, "", Vec::new(), String::new()), None),
    }
}

/// Whether `base` (SI) is right as the answer to `part`, or right from the person's `own` earlier answers.
pub(crate) fn is_right(question: &Question, part: &Part, base: f64, own: &[Option<f64>]) -> bool {
    let Body::Quantity { keys, .. } = &part.body else { return false };
    let fitting = |keys: &[Key]| keys.iter().any(|key| fits(key, base));
    fitting(keys) || from_own(question, part, own).is_some_and(|again| fitting(&again))
}

fn fits(key: &Key, base: f64) -> bool {
    // A hair above the tolerance still counts: the last bit of a conversion must not cost a mark.
    (base - key.value).abs() <= key.tolerance * (1.0 + 1e-9) + 1e-12 * key.value.abs()
}

/// The keys worked out again from the person's own earlier answers, where they differ from the keys'.
fn from_own(question: &Question, part: &Part, own: &[Option<f64>]) -> Option<Vec<Key>> {
    let Body::Quantity { keys: usual, .. } = &part.body else { return None };
    let mut values = usual[0].values.clone();
    let mut changed = false;
    for (id, earlier) in &part.carried {
        if let Some(value) = own[*earlier]
            && value != values[id.index()]
        {
            values[id.index()] = value;
            changed = true;
        }
    }
    if !changed {
        return None;
    }
    let paths: Vec<_> = usual.iter().map(|key| key.path.clone()).collect();
    keys(&paths, &values, &part.carried, question.system).ok().filter(|keys| !keys.is_empty())
}

/// The wrong answers foreseen from the person's own earlier number: those that differ from what is right from it.
fn foreseen_again(question: &Question, part: &Part, again: &[Key]) -> Vec<predict::Predicted> {
    let mut predicted =
        predict::wrong_turns(&again[0], &part.own, &question.case.values, &question.within_reach, question.system);
    predicted.retain(|wrong| !wrong.is_inside(again));
    if again[0].path.asked.get().kind != Kind::Choice {
        predict::own_alone(&mut predicted);
    }
    predicted
}

/// The foreseen wrong answers that `base` may be: those that cannot be told from the nearest, the author's own before the
/// others.
fn foreseen(predicted: &[predict::Predicted], base: f64) -> Vec<Cause> {
    let mut hits: Vec<_> = (predicted.iter())
        .map(|wrong| ((wrong.value - base).abs(), wrong))
        .filter(|(off, wrong)| *off <= wrong.tolerance + 1e-12 * wrong.value.abs())
        .collect();
    hits.sort_by(|a, b| a.0.total_cmp(&b.0));
    let Some(&(_, nearest)) = hits.first() else { return Vec::new() };
    hits.retain(|(_, wrong)| nearest.is_same(wrong));
    hits.sort_by_key(|(_, wrong)| !wrong.is_own());
    hits.into_iter().map(|(_, wrong)| wrong.cause.clone()).collect()
}

/// The quantities a part's answer rests on that the person worked out before, with their parts.
pub fn builds_on(part: &Part) -> impl Iterator<Item = (QuantityId, usize)> + '_ {
    part.carried.iter().copied()
}
