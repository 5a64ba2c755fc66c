//! The wrong answers a question foresees, and what each of them says about the person.

use drivecourse_machine::formula::Formula;
use drivecourse_machine::{Kind, Linked, QuantityId, Registry, RelationId, System, Unit};

use crate::question::Key;

/// Why an answer is wrong.
#[derive(Debug, Clone, PartialEq)]
pub enum Cause {
    /// A step was done in a way people get it wrong.
    Turn {
        /// Which step.
        relation: RelationId,
        /// Which of its wrong turns.
        turn: usize,
    },
    /// A value was put into a formula without changing its unit first.
    Unconverted {
        /// Which step.
        relation: RelationId,
        /// Which value.
        quantity: QuantityId,
        /// The unit it was shown in.
        shown: &'static Unit,
        /// The unit the formula wants.
        wanted: &'static Unit,
    },
    /// A value on the way was given for the answer.
    Stopped(QuantityId),
    /// The number is right in another unit than the one written.
    OtherUnit(&'static Unit),
    /// The unit was changed the wrong way round.
    WrongWay(&'static Unit),
    /// The decimal point is off by so many places (positive: the answer is too large).
    DecimalPoint(i32),
    /// The sign is the wrong way round.
    Sign,
}

/// A wrong answer that was foreseen.
#[derive(Debug, Clone, PartialEq)]
pub struct Predicted {
    /// The answer (SI).
    pub value: f64,
    /// How far an answer that comes this way may lie from it (SI).
    pub tolerance: f64,
    /// What it says.
    pub cause: Cause,
}

impl Predicted {
    /// Whether it would earn the mark, or be mistaken for a right answer.
    pub fn is_inside(&self, keys: &[Key]) -> bool {
        keys.iter().any(|key| (self.value - key.value).abs() <= key.tolerance + self.tolerance)
    }

    /// Whether it cannot be told from `other`.
    pub fn is_like(&self, other: &Self) -> bool {
        (self.value - other.value).abs() <= self.tolerance.max(other.tolerance)
    }
}

/// Every wrong turn on the way of `key`, each carried to the end: the registry's own, and values
/// put into a formula in the wrong unit. `truth` supplies what a wrong turn needs beyond the givens.
///
/// Two that give the same answer are both kept: they differ in other cases.
pub fn wrong_turns(key: &Key, truth: &[f64], system: System) -> Vec<Predicted> {
    let mut out = Vec::new();
    // What a wrong turn looks up beyond the givens, a person would see too.
    let seeing = Registry::get().seeing(system);
    let mut known = key.values.clone();
    for (index, value) in known.iter_mut().enumerate() {
        if value.is_nan() {
            let seen = seeing[index].see(truth[index]);
            *value = if seen.is_nan() { truth[index] } else { seen };
        }
    }
    for (place, step) in key.path.steps.iter().enumerate() {
        let linked = step.get();
        for turn in 0..linked.turns().len() {
            if let Some(wrong) = linked.eval_turn(turn, &known) {
                push(&mut out, key, place, wrong, Cause::Turn { relation: *step, turn });
            }
        }
        for (quantity, shown, wanted) in conversions(linked, system) {
            let mut values = key.values.clone();
            let base = values[quantity.index()];
            values[quantity.index()] = wanted.to_base(shown.from_base(base));
            if let Ok(wrong) = linked.eval(&values) {
                push(&mut out, key, place, wrong, Cause::Unconverted { relation: *step, quantity, shown, wanted });
            }
        }
    }
    out
}

/// Carries `wrong`, the result of step `place`, to the end of the path.
fn push(out: &mut Vec<Predicted>, key: &Key, place: usize, wrong: f64, cause: Cause) {
    let mut values = key.values.clone();
    values[key.path.steps[place].get().gives.index()] = wrong;
    for step in &key.path.steps[place + 1..] {
        let linked = step.get();
        match linked.eval(&values) {
            Ok(value) => values[linked.gives.index()] = value,
            Err(_) => return,
        }
    }
    let value = values[key.path.asked.index()];
    if value.is_finite() && value != key.value {
        let tolerance = match key.value {
            0.0 => key.tolerance,
            right => key.tolerance * (value / right).abs().min(1e3),
        };
        // A small wrong answer keeps at least a three-figure rounding of itself.
        out.push(Predicted {
            value,
            tolerance: tolerance.max(0.005 * value.abs() * f64::from(u8::from(key.tolerance > 0.0))),
            cause,
        });
    }
}

/// The inputs of a step whose unit must be changed before they enter its formula in `system`.
pub fn conversions(
    linked: &'static Linked,
    system: System,
) -> impl Iterator<Item = (QuantityId, &'static Unit, &'static Unit)> {
    let names = linked.formula(system).map(Formula::names_of_body).unwrap_or_default();
    let seeing = Registry::get().seeing(system);
    names.into_iter().filter_map(move |(name, wanted)| {
        let index = linked.relation.args.iter().position(|arg| arg.name == name)?;
        let quantity = linked.inputs().nth(index)?;
        let shown = seeing[quantity.index()].unit();
        let wanted = Unit::find(quantity.get().kind, wanted?)?;
        (shown != wanted && quantity.get().kind != Kind::Choice).then_some((quantity, shown, wanted))
    })
}

/// What can go wrong with any answer, whatever the way: a value on the way, another unit, the
/// decimal point, the sign. `written` is the number in `unit`, `base` the same in SI.
pub fn slip(key: &Key, written: f64, unit: &'static Unit, base: f64) -> Option<Cause> {
    let near = |value: f64| (value - key.value).abs() <= key.tolerance;
    let kind = key.path.asked.get().kind;
    if near(-base) && !near(base) {
        return Some(Cause::Sign);
    }
    for step in &key.path.steps {
        let linked = step.get();
        for id in linked.inputs().chain([linked.gives]) {
            let value = key.values[id.index()];
            let close = (base - value).abs() <= 0.005 * value.abs();
            if id != key.path.asked && id.get().kind == kind && close && value != 0.0 && !near(base) {
                return Some(Cause::Stopped(id));
            }
        }
    }
    for other in drivecourse_machine::unit::UNITS.iter().filter(|other| other.kind == kind && *other != unit) {
        if near(other.to_base(written)) {
            return Some(Cause::OtherUnit(other));
        }
    }
    if kind != Kind::Temperature {
        for other in drivecourse_machine::unit::UNITS.iter().filter(|other| other.kind == kind && *other != unit) {
            let factor = unit.size() / other.size();
            // Multiplied where dividing was wanted: off by the factor twice over.
            if factor != 1.0 && (near(base * factor * factor) || near(base / (factor * factor))) {
                return Some(Cause::WrongWay(other));
            }
        }
        for places in [1, -1, 2, -2, 3, -3] {
            if near(base / ten_to(places)) {
                return Some(Cause::DecimalPoint(places));
            }
        }
    }
    None
}

fn ten_to(places: i32) -> f64 {
    const POWERS: [f64; 4] = [1.0, 10.0, 100.0, 1000.0];
    let power = POWERS[places.unsigned_abs().min(3) as usize];
    if places < 0 { 1.0 / power } else { power }
}
