//! What the program says about an answer: to the person, in a sentence or two.

#[cfg(not(wordless))]
use std::collections::BTreeMap;
#[cfg(not(wordless))]
use std::sync::{PoisonError, RwLock};

use drivecourse_machine::amount::{SPACE, number, with_unit};
#[cfg(not(wordless))]
use drivecourse_machine::language::Message;
use drivecourse_machine::language::{slug, translated};
use drivecourse_machine::{Figures, Registry, Unit, messages};

use crate::letter;
use crate::predict::Cause;
use crate::question::{Body, Part, Question};

messages! { pub(crate) SAYS {
    BLANK = "explain-blank", "No answer was written.";
    RIGHT = "explain-right", "Right.";
    MARK = "explain-mark", "1 mark";
    MARKS = "explain-marks", "{count} marks";
    MISQUOTED = "explain-misquoted", "It is quoted with too few or too many figures, which costs {marks}.";
    NEAR = "explain-near", "Near, but not within what rounding allows: {marks} of {of}. Look at how you rounded on the way.";
    WAY = "explain-way", "Of the results on the way {found} of {of} are right, which earns {marks}.";
    CARRIED = "explain-carried", "Right from your own answer to {parts}: the slip there is not charged twice.";
    AND = "explain-and", "and";
    OR_ELSE = "explain-or-else", "Or else:";
    WRONG_CHOICE = "explain-wrong-choice", "Work the numbers through again and hold them against the limit.";
    CLOSE_LARGE = "explain-close-large", "Close, but too large: look at how you rounded on the way.";
    CLOSE_SMALL = "explain-close-small", "Close, but too small: look at how you rounded on the way.";
    TOO_LARGE = "explain-too-large", "The answer is too large. Open the steps and compare them with yours, one at a time.";
    TOO_SMALL = "explain-too-small", "The answer is too small. Open the steps and compare them with yours, one at a time.";
    UNCONVERTED = "explain-unconverted", "You put “{quantity}” into the formula in the wrong unit ({shown}): it wants {wanted}.";
    STOPPED = "explain-stopped", "You gave the {quantity}; that is a step on the way, not what was asked.";
    OTHER_UNIT = "explain-other-unit", "The number would be right with another unit ({unit}): check the one you wrote.";
    WRONG_WAY = "explain-wrong-way", "You changed the unit ({unit}) the wrong way round: multiply where you divided.";
    POINT_LARGE = "explain-point-large", "The decimal point is out of place: your answer is {factor} times too large.";
    POINT_SMALL = "explain-point-small", "The decimal point is out of place: your answer is {factor} times too small.";
    SIGN = "explain-sign", "The sign is the wrong way round.";
    STOP_ACCEPTED = "explain-stop-accepted", "A machine that must stop was called fit to run.";
    PLAIN_NUMBER = "explain-plain-number", "a plain number";
    FIRST_STEP = "explain-first-step", "The first step is not “{step}”.";
    NEXT_STEP = "explain-next-step", "After “{before}” does not come “{step}”.";
    WRONG = "explain-wrong", "Not right.";
} }

pub(crate) fn blank() -> String {
    BLANK.text().into()
}

/// What was said of an answer when it was marked, in the language spoken now where it is a sentence with nothing filled
/// in: records keep the words of the day.
#[cfg(not(wordless))]
pub fn said_again(says: &str) -> &str {
    let plain = |message: &&Message| message.english == says && !says.contains('{');
    SAYS.iter().find(plain).map_or(says, |message| message.text())
}

/// That an answer is not right, where no verdict beside it says so.
#[cfg(not(wordless))]
pub fn not_right() -> &'static str {
    WRONG.text()
}

pub(crate) fn right(_text: &str) -> String {
    RIGHT.text().into()
}

fn marks(count: u32) -> String {
    if count == 1 { MARK.text().into() } else { MARKS.say(&[("count", &count.to_string())]) }
}

pub(crate) fn misquoted(says: &str, cost: u32) -> String {
    format!("{says} {}", MISQUOTED.say(&[("marks", &marks(cost))]))
}

pub(crate) fn near(earned: u32, of: u32) -> String {
    NEAR.say(&[("marks", &marks(earned)), ("of", &of.to_string())])
}

pub(crate) fn way(says: &str, earned: u32, found: usize, of: usize) -> String {
    let (found, of) = (found.to_string(), of.to_string());
    format!("{says} {}", WAY.say(&[("found", &found), ("of", &of), ("marks", &marks(earned))]))
}

pub(crate) fn carried(part: &Part) -> String {
    CARRIED.say(&[("parts", &earlier_parts(part))])
}

/// The earlier parts that a part builds on: `(a) and (b)`.
pub fn earlier_parts(part: &Part) -> String {
    let from: Vec<String> = part.carried.iter().map(|(_, earlier)| format!("({})", part_letter(*earlier))).collect();
    from.join(&format!(" {} ", AND.text()))
}

/// The message that names the skill `skill`.
pub fn skill_id(skill: &str) -> String {
    format!("skill-{}", slug(skill))
}

/// What an author calls a skill.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SkillName {
    /// In the author's words.
    pub name: String,
    /// Whether they are in the language spoken, and so go before a translation.
    pub native: bool,
}

/// What skills are called, by the skill: what items' files say.
#[cfg(not(wordless))]
static NAMED: RwLock<BTreeMap<String, SkillName>> = RwLock::new(BTreeMap::new());

/// Takes on what skills are called, in place of what was taken on before.
#[cfg(not(wordless))]
pub fn name_skills(names: BTreeMap<String, SkillName>) {
    // A map that is only ever replaced whole is whole after a panic elsewhere, too.
    *NAMED.write().unwrap_or_else(PoisonError::into_inner) = names;
}

/// A skill as its author calls it: by its name, or else by its word with spaces for hyphens.
#[cfg(not(wordless))]
pub fn skill_as_written(skill: &str) -> String {
    let named = NAMED.read().unwrap_or_else(PoisonError::into_inner);
    named.get(skill).map_or_else(|| skill.replace('-', " "), |named| named.name.clone())
}

/// A skill as people are told it: the course has handed over its name.
#[cfg(wordless)]
pub fn skill_name(skill: &str) -> String {
    translated(&skill_id(skill), &skill.replace('-', " "), false).into_owned()
}

/// A skill as people are told it.
#[cfg(not(wordless))]
pub fn skill_name(skill: &str) -> String {
    let written = skill_as_written(skill);
    let named = NAMED.read().unwrap_or_else(PoisonError::into_inner);
    match named.get(skill) {
        Some(named) if named.native => written,
        _ => translated(&skill_id(skill), &written, false).into_owned(),
    }
}

/// `says`, and that a machine was called fit to run that must stop.
pub(crate) fn stop_accepted(says: &str) -> String {
    format!("{says} {}", STOP_ACCEPTED.text())
}

/// How parts are named: a, b, c ...
pub fn part_letter(index: usize) -> char {
    letter(index).to_ascii_lowercase()
}

pub(crate) fn wrong(question: &Question, part: &Part, base: f64, causes: &[Cause]) -> String {
    match causes {
        [] => unknown(question, part, base),
        [cause] => sentence(cause),
        [first, others @ ..] => {
            let first = sentence(first);
            // Two wrong turns may be told in the same words.
            match others.iter().map(sentence).find(|other| *other != first) {
                Some(other) => format!("{first} {} {other}", OR_ELSE.text()),
                None => first,
            }
        }
    }
}

/// Nothing is recognised: at least say which way it is off, without giving the answer away.
fn unknown(question: &Question, part: &Part, base: f64) -> String {
    let Body::Quantity { asked, keys, .. } = &part.body else { return String::new() };
    if asked.get().choices.len() > 1 {
        return WRONG_CHOICE.text().into();
    }
    let key = keys[0].value;
    let close = (base - key).abs() <= 4.0 * keys[0].tolerance;
    let _ = question;
    let says = match (close, base > key) {
        (true, true) => CLOSE_LARGE,
        (true, false) => CLOSE_SMALL,
        (false, true) => TOO_LARGE,
        (false, false) => TOO_SMALL,
    };
    says.text().into()
}

/// What a cause says.
pub fn sentence(cause: &Cause) -> String {
    match cause {
        Cause::Turn { relation, turn } => relation.get().turns()[*turn].says.to_owned(),
        Cause::Own { says } => says.clone(),
        Cause::Unconverted { quantity, shown, wanted, .. } => UNCONVERTED.say(&[
            ("quantity", quantity.get().name),
            ("shown", unit_said(shown)),
            ("wanted", unit_said(wanted)),
        ]),
        Cause::Stopped(quantity) => STOPPED.say(&[("quantity", quantity.get().name)]),
        Cause::OtherUnit(unit) => OTHER_UNIT.say(&[("unit", unit_said(unit))]),
        Cause::WrongWay(unit) => WRONG_WAY.say(&[("unit", unit_said(unit))]),
        Cause::DecimalPoint(places) => {
            let says = if *places > 0 { POINT_LARGE } else { POINT_SMALL };
            let factor = number(libm::pow(10.0, f64::from(places.abs())), Figures::Places(0));
            says.say(&[("factor", &factor)])
        }
        Cause::Sign => SIGN.text().into(),
        Cause::Misread(slip) => slip.says().to_owned(),
        Cause::StopAccepted => STOP_ACCEPTED.text().into(),
    }
}

/// A cause's short name for tables and statistics: `chain.slack_tension/parabola: missing eighth`.
pub fn cause_name(cause: &Cause) -> String {
    match cause {
        Cause::Turn { relation, turn } => {
            let linked = relation.get();
            format!("{}: {}", linked.relation.id, linked.turns()[*turn].id)
        }
        Cause::Own { says } => format!("own: {says}"),
        Cause::Unconverted { quantity, shown, wanted, .. } => {
            format!("{} left in {} for {}", quantity.get().id, unit_name(shown), unit_name(wanted))
        }
        Cause::Stopped(quantity) => format!("stopped at {}", quantity.get().id),
        Cause::OtherUnit(unit) => format!("unit, right in {}", unit_name(unit)),
        Cause::WrongWay(unit) => format!("unit changed the wrong way, {}", unit_name(unit)),
        Cause::DecimalPoint(places) => format!("decimal point, {places:+}"),
        Cause::Sign => "sign".into(),
        Cause::Misread(slip) => format!("misread: {}", slip.id()),
        Cause::StopAccepted => "stop called accept".into(),
    }
}

fn unit_name(unit: &Unit) -> &'static str {
    if unit.is_bare() { "a plain number" } else { unit.symbol }
}

/// A unit as the person is told of it.
fn unit_said(unit: &Unit) -> &'static str {
    if unit.is_bare() { PLAIN_NUMBER.text() } else { unit.said() }
}

pub(crate) fn wrong_order(part: &Part, given: &[usize]) -> String {
    let Body::Order { shown, right, because } = &part.body else { return String::new() };
    let first = given.iter().zip(right).position(|(given, right)| given != right).unwrap_or(0);
    let mut out = if first == 0 {
        FIRST_STEP.say(&[("step", &shown[given[0]])])
    } else {
        NEXT_STEP.say(&[("before", &shown[given[first - 1]]), ("step", &shown[given[first]])])
    };
    if !because.is_empty() {
        out.push(' ');
        out.push_str(because);
    }
    out
}

pub(crate) fn wrong_pick(because: &str) -> String {
    // That it is not right is the verdict already.
    if because.is_empty() { WRONG.text().into() } else { because.into() }
}

/// The tolerance of a part as a person reads it: `± 12 N`; empty for choices and counts.
pub fn tolerance(question: &Question, part: &Part) -> String {
    let Some(key) = part.key() else { return String::new() };
    if key.tolerance == 0.0 {
        return String::new();
    }
    let unit = Registry::get().seeing(question.system)[key.path.asked.index()].unit();
    let size = key.tolerance / unit.size().abs();
    format!("±{SPACE}{}", with_unit(&number(size, Figures::Significant(2)), unit))
}
