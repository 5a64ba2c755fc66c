//! What a family says of a quantity by itself, held against what a question would have worked out of it.
//!
//! A plant may fix what a rule of the trade gives otherwise: a window of its own, a factor from its own list. A question
//! that has that quantity worked out by the rule would count the plant's own value as wrong, so it is not put.

use drivecourse_machine::{Case, Draw, Known, Path, Plan, QuantityId, System, amount};

use crate::tolerance;

/// Adds to `told`, of what the steps of `paths` give, what the family of `plan` says by itself: plates and limits that are
/// fixed for all its machines or stand in their table, and whatever it states with a source. What is fixed of the hidden
/// machine alone is seen through readings only.
pub(super) fn told(plan: &Plan, paths: &[Path], told: &mut Vec<QuantityId>) {
    let family = &plan.family;
    for step in paths.iter().flat_map(|path| &path.steps) {
        let gives = step.get().gives;
        let fixed = || family.roots.iter().any(|(id, draw)| *id == gives && matches!(draw, Draw::Fixed(_)));
        let tabled = || family.pool.first().is_some_and(|row| row.iter().any(|(id, _)| *id == gives));
        let seen = || gives.get().known == Known::Plate || family.stated.iter().any(|stated| stated.quantity == gives);
        if !told.contains(&gives) && seen() && (fixed() || tabled()) {
            told.push(gives);
        }
    }
}

/// The first step of `path` whose result in `values` is another value than the machine `case` has of what is `told` of it;
/// `carried` are the inputs taken from earlier parts.
pub(crate) fn otherwise(
    path: &Path,
    values: &[f64],
    carried: &[(QuantityId, usize)],
    told: &[QuantityId],
    (case, system): (&Case, System),
) -> Option<QuantityId> {
    for (place, step) in path.steps.iter().enumerate() {
        let gives = step.get().gives;
        let (found, has) = (values[gives.index()], case.values[gives.index()]);
        let off = (found - has).abs();
        if off <= 1e-9 * has.abs() || !told.contains(&gives) {
            continue;
        }
        // What would be right all the same is no other value.
        let so_far = Path { steps: path.steps[..=place].to_vec(), asked: gives };
        if off > tolerance::of(&so_far, values, carried, system) {
            return Some(gives);
        }
    }
    None
}

/// Both values of `quantity` in words: what the machine `case` has, and what was worked out.
pub(super) fn both(quantity: QuantityId, values: &[f64], (case, system): (&Case, System)) -> [String; 2] {
    [&case.values, values].map(|values: &[f64]| amount::write(quantity.get(), values[quantity.index()], system))
}
