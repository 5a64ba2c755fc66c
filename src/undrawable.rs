//! Machines of a family that can never be drawn: which sort or row of its table, and why.

use drivecourse_machine::chance::derive;
use drivecourse_machine::{CannotDraw, Plan, messages};

messages! { pub(crate) SAYS {
    ROW = "check-row", "row {row} of its table";
    AS_NAMED = "check-as-named", "as {name}, {wanted}";
} }

/// Seeds with which a machine of one sort is tried for before it is said that none can be drawn.
const TRIES: u64 = 5;

/// Of each sort of machine that the family has, a sound one, one with each fault, and the one in each row of its table, why
/// none can be drawn where none can. What keeps sound machines from being drawn keeps the others too, and is all that is told.
pub(crate) fn sorts(plan: &Plan) -> Vec<CannotDraw> {
    if let Some(error) = sound(plan) {
        return vec![error];
    }
    let faults = (0..plan.family.faults.len()).filter_map(|fault| sort(plan, &[fault])).collect::<Vec<_>>();
    if faults.is_empty() { rows(plan) } else { faults }
}

/// Why no sound machine can be drawn, if none can and the family has any.
pub(crate) fn sound(plan: &Plan) -> Option<CannotDraw> {
    if plan.family.healthy > 0.0 || plan.family.faults.is_empty() { sort(plan, &[]) } else { None }
}

/// Of each row of a table of machines, why it can never be drawn: a machine of the plant that no apprentice would meet.
fn rows(plan: &Plan) -> Vec<CannotDraw> {
    let rows = plan.family.pool.iter().enumerate().filter(|_| plan.family.pool.len() > 1);
    let alone = |(place, row): (usize, &Vec<_>)| {
        let name = plan.family.machines.get(place);
        let mut family = plan.family.clone();
        (family.pool, family.machines) = (vec![row.clone()], name.cloned().into_iter().collect());
        let mut error = sound(&Plan::new(family).ok()?)?;
        let row = || ROW.say(&[("row", &(place + 1).to_string())]);
        error.wanted = AS_NAMED.say(&[("name", &name.map_or_else(row, Clone::clone)), ("wanted", &error.wanted)]);
        error.row = Some(place);
        Some(error)
    };
    rows.filter_map(alone).collect()
}

/// Why a machine with these faults cannot be drawn, where none can.
fn sort(plan: &Plan, faults: &[usize]) -> Option<CannotDraw> {
    let mut last = None;
    for seed in 0..TRIES {
        match plan.draw_with(derive(0xc4ed, seed), Some(faults)) {
            Ok(_) => return None,
            Err(error) => last = Some(error),
        }
    }
    last.map(|error| plan.explain(error))
}
