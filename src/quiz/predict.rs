//! The wrong answers a question foresees, and what each of them says about the person.

use drivecourse_machine::{Conversion, Face, Kind, QuantityId, Registry, RelationId, Slip, System, Unit};

use crate::item::OwnTurn;
use crate::question::Key;
use crate::tolerance;

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
    /// A wrong turn of the item's author.
    Own {
        /// What it says.
        says: String,
    },
    /// An instrument was misread.
    Misread(Slip),
    /// A machine that must stop was called fit to run.
    StopAccepted,
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

    /// Whether it is a wrong turn of the item's author.
    pub fn is_own(&self) -> bool {
        matches!(self.cause, Cause::Own { .. })
    }

    /// Whether `other` has the same answer, so that nobody can say which of the two it was.
    pub fn is_same(&self, other: &Self) -> bool {
        (self.value - other.value).abs() <= 0.2 * self.tolerance + 1e-12 * self.value.abs()
    }

    /// Whether it cannot be told from `other`.
    pub fn is_like(&self, other: &Self) -> bool {
        (self.value - other.value).abs() <= self.tolerance.max(other.tolerance)
    }
}

/// Takes out what the author's own wrong turns say already, in other words: of those with one answer, only they are told.
/// For numbers; of choices [`wrong_turns`] sees to it.
pub(crate) fn own_alone(predicted: &mut Vec<Predicted>) {
    let own: Vec<_> = predicted.iter().filter(|wrong| wrong.is_own()).cloned().collect();
    predicted.retain(|wrong| wrong.is_own() || !own.iter().any(|own| own.is_same(wrong)));
}

/// Every wrong turn on the way of `key`, each carried to the end: the registry's, values put into a formula in the
/// wrong unit, and the author's `own`. `truth` supplies what a wrong turn needs beyond the givens. Of the registry's turns only
/// those are foreseen whose every value is `within_reach` of what the question shows, and whose units are those of `system`:
/// nobody takes a number that is nowhere to be seen. What an author writes is taken as it stands.
///
/// Two that give the same number are both kept: they differ in other cases. See `own_alone`.
pub fn wrong_turns(key: &Key, own: &[OwnTurn], truth: &[f64], within_reach: &[bool], system: System) -> Vec<Predicted> {
    let mut out = Vec::new();
    let seeing = Registry::get().seeing(system);
    // What a wrong turn looks up beyond the givens, a person would see too.
    let look_up = |known: &mut [f64], at: usize| {
        if known[at].is_nan() {
            let seen = seeing[at].see(truth[at]);
            known[at] = if seen.is_nan() { truth[at] } else { seen };
        }
    };
    let mut known = key.values.clone();
    let mut carry = Carry { key, values: key.values.clone(), system };
    let choice = key.path.asked.get().kind == Kind::Choice;
    for (place, step) in key.path.steps.iter().enumerate() {
        let linked = step.get();
        let mut mine = Vec::new();
        for turn in own.iter().filter(|turn| turn.at == linked.gives) {
            turn.gives.inputs().iter().for_each(|id| look_up(&mut known, id.index()));
            mine.extend(turn.gives.value(&known, system).map(|wrong| (wrong, turn)));
        }
        // A choice has few answers, and different mistakes come to one: there a step that goes wrong alike tells them.
        let said = |wrong: f64| choice && mine.iter().any(|(own, _)| (own - wrong).abs() <= 1e-9 * own.abs());
        for (turn, wrong) in linked.turns().iter().enumerate() {
            let needs = || linked.turns_at[turn].iter().map(|at| usize::from(*at));
            if wrong.only.is_some_and(|only| only != system)
                || !needs().all(|at| !key.values[at].is_nan() || within_reach[at])
            {
                continue;
            }
            needs().for_each(|at| look_up(&mut known, at));
            if let Some(wrong) = linked.eval_turn(turn, &known).filter(|wrong| !said(*wrong)) {
                out.extend(carry.on(place, wrong, Cause::Turn { relation: *step, turn }));
            }
        }
        for (wrong, turn) in &mine {
            out.extend(carry.on(place, *wrong, Cause::Own { says: turn.says.clone() }));
        }
        for Conversion { quantity, shown, wanted } in linked.conversions(system).iter().copied() {
            let right = known[quantity.index()];
            known[quantity.index()] = wanted.to_base(shown.from_base(right));
            let wrong = linked.eval(&known);
            known[quantity.index()] = right;
            if let Ok(wrong) = wrong
                && !said(wrong)
            {
                out.extend(carry.on(place, wrong, Cause::Unconverted { relation: *step, quantity, shown, wanted }));
            }
        }
    }
    out
}

/// Carries a wrong step on to the end of the path.
struct Carry<'a> {
    key: &'a Key,
    /// The key's values, always put back after use.
    values: Vec<f64>,
    system: System,
}

impl Carry<'_> {
    /// The answer when step `place` gives `wrong`; `None` where a later step has no result, and
    /// where a choice comes out right all the same.
    fn on(&mut self, place: usize, wrong: f64, cause: Cause) -> Option<Predicted> {
        let steps = &self.key.path.steps[place..];
        self.values[steps[0].get().gives.index()] = wrong;
        let mut whole = true;
        for step in &steps[1..] {
            let linked = step.get();
            match linked.eval(&self.values) {
                Ok(value) => self.values[linked.gives.index()] = value,
                Err(_) => whole = false,
            }
        }
        let value = self.values[self.key.path.asked.index()];
        for step in steps {
            let gives = step.get().gives.index();
            self.values[gives] = self.key.values[gives];
        }
        let right = self.key.value;
        if !whole || !value.is_finite() || (value == right && self.key.tolerance == 0.0) {
            return None;
        }
        let scale = if right == 0.0 { 1.0 } else { (value / right).abs().min(1e3) };
        // A small wrong answer keeps at least the rounding of itself.
        let asked = self.key.path.asked.index();
        let rounding = if self.key.tolerance > 0.0 { tolerance::last_figure(asked, value, self.system) } else { 0.0 };
        Some(Predicted { value, tolerance: (self.key.tolerance * scale).max(rounding), cause })
    }
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

/// The ways people misread `seen` (SI), which is read off `face`.
pub fn misread(face: Face, asked: QuantityId, seen: f64, system: System) -> Vec<Predicted> {
    let unit = asked.get().unit(system);
    let shown = unit.from_base(seen);
    // A quarter of a division: nearer than that to a wrong mark is that mark.
    let tolerance = 0.25 * face.division(system, shown) * unit.size().abs();
    let wrong = face.misreadings(system, shown).into_iter();
    wrong
        .map(|wrong| Predicted { value: unit.to_base(wrong.value), tolerance, cause: Cause::Misread(wrong.slip) })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Setting;
    use crate::question::Body;

    /// Over every built-in item: whoever has a paper in °C before them is not told of °F, and the other way round.
    #[test]
    fn no_wrong_turn_takes_the_units_of_the_other_papers() {
        let bank = crate::built_in::bank();
        for system in System::ALL {
            let (mut own, mut other) = (0, 0);
            for item in &bank.items {
                let mut settings = bank.plans.iter().filter_map(|plan| Setting::new(item, plan, system).ok());
                let Some(question) = settings.find_map(|setting| setting.question(1).ok()) else { continue };
                for part in &question.parts {
                    let Body::Quantity { predicted, .. } = &part.body else { continue };
                    let only = predicted.iter().filter_map(|wrong| match wrong.cause {
                        Cause::Turn { relation, turn } => relation.get().turns()[turn].only,
                        _ => None,
                    });
                    only.for_each(|only| if only == system { own += 1 } else { other += 1 });
                }
            }
            assert!(own > 10, "{own} wrong turns of its own units in {system:?}");
            assert_eq!(other, 0, "in {system:?}");
        }
    }
}
