//! Fixed values held against what a relation makes of other fixed ones: the machine has what is fixed, and a question
//! would work out the other.

use super::placed;
use crate::family::{Draw, Family, fixed_line, written};
use crate::problem::Problem;
use crate::registry::{QuantityId, Registry};
use crate::unit::Kind;
use crate::{Linked, messages};

messages! { pub(crate) SAYS {
    DISAGREES = "problem-plan-disagrees", "{name} is fixed to {value} here, but follows as {worked} from {inputs} ({relation}).";
    OTHERWISE = "problem-plan-otherwise", "{name} stays {value}, as in the family that this one is like, but follows as {worked} from {inputs} ({relation}).";
    OTHERWISE_MEND = "problem-plan-otherwise-mend", "Write what goes with it under [fixed] too:\n{line}";
    DISAGREES_MEND = "problem-plan-disagrees-mend", "Take it out, or mend what it follows from. Where it is a value of your plant's own, say where it stands:\n{line}";
} }

/// What a plate or a catalogue may round away: two figures.
const ROUNDED: f64 = 0.05;

/// A value that a family fixes, beside what a relation makes of others that it fixes or that stand in its table of machines.
pub struct Otherwise {
    /// Which quantity.
    pub id: QuantityId,
    /// What the family fixes it to (SI).
    pub fixed: f64,
    /// The relation that gives it.
    pub by: &'static Linked,
    /// What that makes of it (SI), for each machine in the order of the table; once in a family without one.
    pub worked: Vec<f64>,
}

/// Of every value that `family` fixes and that is no limit with a source of its own, every relation that gives it from others
/// which are fixed or in the table, whether it gives the same or not.
pub fn fixed_otherwise(family: &Family) -> Vec<Otherwise> {
    let fixed: Vec<(QuantityId, f64)> = family
        .roots
        .iter()
        .filter_map(|(id, draw)| match draw {
            Draw::Fixed(value) => Some((*id, *value)),
            _ => None,
        })
        .collect();
    let mut machines = vec![vec![f64::NAN; Registry::get().len()]; family.pool.len().max(1)];
    for (place, values) in machines.iter_mut().enumerate() {
        let row = family.pool.get(place).into_iter().flatten();
        fixed.iter().chain(row).for_each(|(id, value)| values[id.index()] = *value);
    }
    let mut found = Vec::new();
    for (id, fixed) in fixed {
        if family.stated.iter().any(|stated| stated.quantity == id) {
            continue;
        }
        for by in Registry::get().giving(id).iter().map(|by| by.get()) {
            let known = |values: &Vec<f64>| by.inputs().all(|input| !values[input.index()].is_nan());
            let worked: Option<Vec<f64>> =
                machines.iter().map(|values| by.eval(values).ok().filter(|_| known(values))).collect();
            found.extend(worked.map(|worked| Otherwise { id, fixed, by, worked }));
        }
    }
    found
}

/// The values under `[fixed]`, without a source of their own, that a relation makes otherwise of other values that are
/// fixed or in the table of machines, whichever of its machines is drawn; and those of the family that this one is like, where
/// it is a value of the author's own that makes them otherwise.
pub(super) fn disagreements(family: &Family) -> Vec<Problem> {
    let is_own = |id: QuantityId| {
        family.place(id, None).is_some()
            && family.roots.iter().any(|(root, draw)| *root == id && matches!(draw, Draw::Fixed(_)))
    };
    let mut problems: Vec<Problem> = Vec::new();
    let mut told = None;
    for Otherwise { id, fixed, by, worked } in fixed_otherwise(family) {
        let own = family.place(id, None);
        // What another family's file fixes, and nothing here changes, is told of there.
        let concerns = own.is_some() || by.inputs().any(is_own);
        // One relation that tells is enough.
        if told == Some(id) || !concerns || !worked.iter().all(|worked| are_apart(id, fixed, *worked)) {
            continue;
        }
        told = Some(id);
        let Some(worked) = worked.first() else { continue };
        let inputs: Vec<_> = by.inputs().map(|input| input.get().id).collect();
        let written = |value| written(id, value, family.told_in);
        let says = if own.is_some() { DISAGREES } else { OTHERWISE };
        let what = told!(
            says,
            "name" = id.get().id,
            "value" = written(fixed),
            "worked" = written(*worked),
            "inputs" = inputs.join(", "),
            "relation" = by.relation.id,
        );
        let mend = match own.is_some() {
            true => {
                let line = format!("\"{}\" = {{ value = \"{}\", source = \"...\" }}", id.get().id, written(fixed));
                told!(DISAGREES_MEND, "line" = line)
            }
            false => told!(OTHERWISE_MEND, "line" = fixed_line(id, *worked, family.told_in)),
        };
        let place =
            own.or_else(|| by.inputs().filter(|input| is_own(*input)).find_map(|input| family.place(input, None)));
        problems.push(placed(place, what, mend));
    }
    problems
}

/// Whether two values of a quantity are further apart than rounding makes them.
fn are_apart(id: QuantityId, one: f64, other: f64) -> bool {
    match id.get().kind {
        Kind::Choice | Kind::Count => one != other,
        _ => other.is_finite() && (one - other).abs() > rounded_away(id, one, other),
    }
}

/// By how much (SI) two values of one quantity may differ by what a plate or a catalogue rounds away.
pub fn rounded_away(id: QuantityId, one: f64, other: f64) -> f64 {
    match id.get().kind {
        // A thermometer's nought is a matter of its scale.
        Kind::Temperature => 1.0,
        _ => ROUNDED * one.abs().max(other.abs()),
    }
}
