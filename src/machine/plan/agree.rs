//! Fixed values held against what a relation makes of other fixed ones: the machine has what is fixed, and a question
//! would work out the other.

use super::placed;
use crate::family::{Draw, Family, written};
use crate::messages;
use crate::problem::Problem;
use crate::registry::{QuantityId, Registry};
use crate::unit::Kind;

messages! { pub(crate) SAYS {
    DISAGREES = "problem-plan-disagrees", "{name} is fixed to {value} here, but follows as {worked} from {inputs} ({relation}).";
    DISAGREES_MEND = "problem-plan-disagrees-mend", "Take it out, or mend what it follows from. Where it is a value of your plant's own, say where it stands:\n{line}";
} }

/// What a plate or a catalogue may round away: two figures.
const ROUNDED: f64 = 0.05;

/// The values under `[fixed]`, without a source of their own, that a relation makes otherwise of other values that are
/// fixed or in the table of machines, whichever of its machines is drawn.
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
    let own = family.roots.iter().filter_map(|(id, draw)| match draw {
        // What another family's file fixes is told of there.
        Draw::Fixed(value) => Some((*id, *value, family.place(*id, None)?)),
        _ => None,
    });
    let common = own.filter(|(id, ..)| !family.stated.iter().any(|stated| stated.quantity == *id));
    let mut problems = Vec::new();
    for (id, value, place) in common {
        let Some((by, worked)) = Registry::get().giving(id).iter().find_map(|by| {
            let known = |values: &&Vec<f64>| by.get().inputs().all(|input| !values[input.index()].is_nan());
            let machines = machines.iter().map(|values| Some(values).filter(known));
            let worked: Option<Vec<f64>> = machines.map(|values| by.get().eval(values?).ok()).collect();
            let worked = worked.filter(|worked| worked.iter().all(|worked| are_apart(id, value, *worked)))?;
            Some((by, *worked.first()?))
        }) else {
            continue;
        };
        let inputs: Vec<_> = by.get().inputs().map(|input| input.get().id).collect();
        let line =
            format!("\"{}\" = {{ value = \"{}\", source = \"...\" }}", id.get().id, written(id, value, family.told_in));
        problems.push(placed(
            Some(place),
            told!(
                DISAGREES,
                "name" = id.get().id,
                "value" = written(id, value, family.told_in),
                "worked" = written(id, worked, family.told_in),
                "inputs" = inputs.join(", "),
                "relation" = by.get().relation.id,
            ),
            told!(DISAGREES_MEND, "line" = line),
        ));
    }
    problems
}

/// Whether two values of a quantity are further apart than rounding makes them.
fn are_apart(id: QuantityId, one: f64, other: f64) -> bool {
    match id.get().kind {
        Kind::Choice | Kind::Count => one != other,
        // A thermometer's nought is a matter of its scale.
        Kind::Temperature => (one - other).abs() > 1.0,
        _ => other.is_finite() && (one - other).abs() > ROUNDED * one.abs().max(other.abs()),
    }
}
