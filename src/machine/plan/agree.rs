//! Fixed values held against what a relation makes of other fixed ones: the machine has what is fixed, and a question
//! would work out the other.

use super::placed;
use crate::family::{Draw, Family, fixed_line, written};
use crate::messages;
use crate::problem::Problem;
use crate::registry::{QuantityId, Registry};
use crate::unit::Kind;

messages! { pub(crate) SAYS {
    DISAGREES = "problem-plan-disagrees", "{name} is fixed to {value} here, but follows as {worked} from {inputs} ({relation}).";
    OTHERWISE = "problem-plan-otherwise", "{name} stays {value}, as in the family that this one is like, but follows as {worked} from {inputs} ({relation}).";
    OTHERWISE_MEND = "problem-plan-otherwise-mend", "Write what goes with it under [fixed] too:\n{line}";
    DISAGREES_MEND = "problem-plan-disagrees-mend", "Take it out, or mend what it follows from. Where it is a value of your plant's own, say where it stands:\n{line}";
} }

/// What a plate or a catalogue may round away: two figures.
const ROUNDED: f64 = 0.05;

/// The values under `[fixed]`, without a source of their own, that a relation makes otherwise of other values that are
/// fixed or in the table of machines, whichever of its machines is drawn; and those of the family that this one is like, where
/// it is a value of the author's own that makes them otherwise.
pub(super) fn disagreements(family: &Family) -> Vec<Problem> {
    let mut fixed = vec![f64::NAN; Registry::get().len()];
    for (id, draw) in &family.roots {
        if let Draw::Fixed(value) = draw {
            fixed[id.index()] = *value;
        }
    }
    let mut machines = vec![fixed; family.pool.len().max(1)];
    for (values, row) in machines.iter_mut().zip(&family.pool) {
        row.iter().for_each(|(id, value)| values[id.index()] = *value);
    }
    let fixed = family.roots.iter().filter_map(|(id, draw)| match draw {
        Draw::Fixed(value) => Some((*id, *value)),
        _ => None,
    });
    let own_fixed: Vec<_> =
        fixed.clone().filter(|(id, _)| family.place(*id, None).is_some()).map(|(id, _)| id).collect();
    let common = fixed.filter(|(id, _)| !family.stated.iter().any(|stated| stated.quantity == *id));
    let mut problems = Vec::new();
    for (id, value) in common {
        let own = family.place(id, None);
        let Some((by, worked)) = Registry::get().giving(id).iter().find_map(|by| {
            // What another family's file fixes, and nothing here changes, is told of there.
            if own.is_none() && !by.get().inputs().any(|input| own_fixed.contains(&input)) {
                return None;
            }
            let known = |values: &&Vec<f64>| by.get().inputs().all(|input| !values[input.index()].is_nan());
            let machines = machines.iter().map(|values| Some(values).filter(known));
            let worked: Option<Vec<f64>> = machines.map(|values| by.get().eval(values?).ok()).collect();
            let worked = worked.filter(|worked| worked.iter().all(|worked| are_apart(id, value, *worked)))?;
            Some((by, *worked.first()?))
        }) else {
            continue;
        };
        let inputs: Vec<_> = by.get().inputs().map(|input| input.get().id).collect();
        let written = |value| written(id, value, family.told_in);
        let is_own = own.is_some();
        let says = if is_own { DISAGREES } else { OTHERWISE };
        let what = told!(
            says,
            "name" = id.get().id,
            "value" = written(value),
            "worked" = written(worked),
            "inputs" = inputs.join(", "),
            "relation" = by.get().relation.id,
        );
        let mend = match is_own {
            true => {
                let line = format!("\"{}\" = {{ value = \"{}\", source = \"...\" }}", id.get().id, written(value));
                told!(DISAGREES_MEND, "line" = line)
            }
            false => told!(OTHERWISE_MEND, "line" = fixed_line(id, worked, family.told_in)),
        };
        let place = own.or_else(|| {
            let inputs = by.get().inputs().filter(|input| own_fixed.contains(input));
            inputs.filter_map(|input| family.place(input, None)).next()
        });
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
