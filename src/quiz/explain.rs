//! What the program says about an answer: to the person, in a sentence or two.

use drivecourse_machine::amount::{SPACE, number, with_unit};
use drivecourse_machine::{Figures, Registry, Unit};

use crate::letter;
use crate::predict::Cause;
use crate::question::{Body, Part, Question};

pub(crate) fn blank() -> String {
    "No answer was written.".into()
}

pub(crate) fn right(_text: &str) -> String {
    "Right.".into()
}

fn marks(count: u32) -> String {
    if count == 1 { "1 mark".into() } else { format!("{count} marks") }
}

pub(crate) fn misquoted(says: &str, cost: u32) -> String {
    format!("{says} It is quoted with too few or too many figures, which costs {}.", marks(cost))
}

pub(crate) fn near(earned: u32, of: u32) -> String {
    format!("Near, but not within what rounding allows: {} of {of}. Look at how you rounded on the way.", marks(earned))
}

pub(crate) fn way(says: &str, earned: u32, found: usize, of: usize) -> String {
    format!("{says} Of the results on the way {found} of {of} are right, which earns {}.", marks(earned))
}

pub(crate) fn carried(part: &Part) -> String {
    let from: Vec<String> = part.carried.iter().map(|(_, earlier)| format!("({})", part_letter(*earlier))).collect();
    format!("Right from your own answer to {}: the slip there is not charged twice.", from.join(" and "))
}

/// How parts are named: a, b, c ...
pub fn part_letter(index: usize) -> char {
    letter(index).to_ascii_lowercase()
}

pub(crate) fn wrong(question: &Question, part: &Part, base: f64, causes: &[Cause]) -> String {
    match causes {
        [] => unknown(question, part, base),
        [cause] => sentence(cause),
        [first, second, ..] => format!("{} Or else: {}", sentence(first), sentence(second)),
    }
}

/// Nothing is recognised: at least say which way it is off, without giving the answer away.
fn unknown(question: &Question, part: &Part, base: f64) -> String {
    let Body::Quantity { asked, keys, .. } = &part.body else { return String::new() };
    if asked.get().choices.len() > 1 {
        return "Not right. Work the numbers through again and hold them against the limit.".into();
    }
    let key = keys[0].value;
    let way = if base > key { "too large" } else { "too small" };
    let close = (base - key).abs() <= 4.0 * keys[0].tolerance;
    let _ = question;
    if close {
        format!("Close, but {way}: look at how you rounded on the way.")
    } else {
        format!("Not right: the answer is {way}. Open the steps and compare them with yours, one at a time.")
    }
}

/// What a cause says.
pub fn sentence(cause: &Cause) -> String {
    match cause {
        Cause::Turn { relation, turn } => relation.get().turns()[*turn].says.to_owned(),
        Cause::Own { says } => says.clone(),
        Cause::Unconverted { quantity, shown, wanted, .. } => format!(
            "You put the {} into the formula in {} where it wants {}.",
            quantity.get().name,
            unit_name(shown),
            unit_name(wanted)
        ),
        Cause::Stopped(quantity) => {
            format!("You gave the {}; that is a step on the way, not what was asked.", quantity.get().name)
        }
        Cause::OtherUnit(unit) => {
            format!("The number would be right in {}: check the unit you wrote.", unit_name(unit))
        }
        Cause::WrongWay(unit) => {
            format!("You changed from or to {} the wrong way round: multiply where you divided.", unit_name(unit))
        }
        Cause::DecimalPoint(places) => {
            let way = if *places > 0 { "large" } else { "small" };
            let factor = number(libm::pow(10.0, f64::from(places.abs())), Figures::Places(0));
            format!("The decimal point is out of place: your answer is {factor} times too {way}.")
        }
        Cause::Sign => "The sign is the wrong way round.".into(),
        Cause::Misread(slip) => slip.says().to_owned(),
        Cause::StopAccepted => "A machine that must stop was called fit to run.".into(),
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

pub(crate) fn wrong_order(part: &Part, given: &[usize]) -> String {
    let Body::Order { shown, right, because } = &part.body else { return String::new() };
    let first = given.iter().zip(right).position(|(given, right)| given != right).unwrap_or(0);
    let mut out = if first == 0 {
        format!("The first step is not “{}”.", shown[given[0]])
    } else {
        format!("After “{}” does not come “{}”.", shown[given[first - 1]], shown[given[first]])
    };
    if !because.is_empty() {
        out.push(' ');
        out.push_str(because);
    }
    out
}

pub(crate) fn wrong_pick(because: &str) -> String {
    if because.is_empty() { "Not right.".into() } else { format!("Not right. {because}") }
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
