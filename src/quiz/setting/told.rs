//! What a family says of a quantity by itself, held against what a question would have worked out of it.
//!
//! A plant may fix what a rule of the trade gives otherwise: a window of its own, a factor from its own list. A question
//! that has that quantity worked out by the rule would count the plant's own value as wrong, so it is not put.

use drivecourse_machine::{Case, Draw, Known, Path, Plan, QuantityId, System, amount};

use crate::tolerance;

/// Of what the steps of `paths` give, what the family of `plan` says by itself: plates and limits that are fixed for all its
/// machines or stand in their table, and whatever it states with a source. What is fixed of the hidden machine alone is seen
/// through readings only.
pub(super) fn told<'a>(plan: &Plan, paths: impl Iterator<Item = &'a Path>) -> Vec<QuantityId> {
    let fixed = |(id, draw): &(QuantityId, Draw)| matches!(draw, Draw::Fixed(_)).then_some(*id);
    let says: Vec<_> = (plan.family.roots.iter().filter_map(fixed))
        .chain(plan.family.pool.iter().take(1).flatten().map(|(id, _)| *id))
        .collect();
    let mut told: Vec<_> = paths.flat_map(|path| &path.steps).map(|step| step.get().gives).collect();
    let stated = |id: QuantityId| plan.family.stated.iter().any(|stated| stated.quantity == id);
    told.retain(|gives| says.contains(gives) && (gives.get().known == Known::Plate || stated(*gives)));
    told.sort_unstable();
    told.dedup();
    told
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
    let results = path.steps.iter().map(|step| step.get().gives).enumerate();
    let differs = |place: usize, gives: QuantityId| {
        let (found, has) = (values[gives.index()], case.values[gives.index()]);
        let off = (found - has).abs();
        if off <= 1e-9 * has.abs() {
            return false;
        }
        // What would be right all the same is no other value.
        let so_far = Path { steps: path.steps[..=place].to_vec(), asked: gives };
        off > tolerance::of(&so_far, values, carried, system)
    };
    let mut results = results.filter(|(_, gives)| told.contains(gives));
    results.find(|(place, gives)| differs(*place, *gives)).map(|(_, gives)| gives)
}

/// Both values of `quantity` in words: what the machine `case` has, and what was worked out.
pub(super) fn both(quantity: QuantityId, values: &[f64], (case, system): (&Case, System)) -> [String; 2] {
    [&case.values, values].map(|values: &[f64]| amount::write(quantity.get(), values[quantity.index()], system))
}
