//! Any quantity from givens, with the steps.

use crate::path::{Choice, NoPath, Path};
use crate::registry::{QuantityId, Registry, RelationId};
use crate::unit::System;
use crate::working::Working;

/// A quantity worked out from givens.
#[derive(Debug, Clone)]
pub struct Solution {
    /// What was asked.
    pub asked: QuantityId,
    /// Its value (SI).
    pub value: f64,
    /// The way there.
    pub path: Path,
    /// Written out.
    pub working: Working,
    /// Every value known at the end, givens included; NaN where unknown.
    pub values: Vec<f64>,
}

/// Two ways to the same quantity that do not agree.
#[derive(Debug, Clone, PartialEq)]
pub struct Disagreement {
    /// Which quantity.
    pub quantity: QuantityId,
    /// What it was given as (SI).
    pub given: f64,
    /// What the other givens make of it (SI).
    pub worked: f64,
    /// The last relation on the way to the worked value.
    pub by: RelationId,
    /// The givens the worked value rests on.
    pub from: Vec<QuantityId>,
}

/// Why there is no answer.
#[derive(Debug, Clone)]
pub enum Unsolved {
    /// The givens do not determine it.
    Missing(NoPath),
    /// A step has no result.
    Failed(RelationId, drivecourse_calc::Error),
}

/// Works out `asked` from `givens` (SI values) by the shortest path that `choice` allows.
///
/// # Errors
/// [`Unsolved`]: what is missing, or which step has no result and why.
///
/// # Example
/// ```
/// use drivecourse_machine::{PathChoice, Registry, System, solve::solve};
/// let find = |name| Registry::get().find(name).unwrap();
/// let heights = [("mount.height_1", 0.2e-3), ("mount.height_2", 0.0), ("mount.height_3", 0.1e-3), ("mount.height_4", 0.0)];
/// let givens: Vec<_> = heights.iter().map(|(name, value)| (find(name), *value)).collect();
/// let solution = solve(&givens, find("mount.twist"), &PathChoice::default(), System::Si).unwrap();
/// assert!((solution.value - 0.3e-3).abs() < 1e-12);
/// ```
pub fn solve(
    givens: &[(QuantityId, f64)],
    asked: QuantityId,
    choice: &Choice,
    system: System,
) -> Result<Solution, Unsolved> {
    let known: Vec<QuantityId> = givens.iter().map(|(id, _)| *id).filter(|id| *id != asked).collect();
    let path = Path::find(&known, asked, choice).map_err(Unsolved::Missing)?;
    let mut values = vec![f64::NAN; Registry::get().len()];
    for (id, value) in givens {
        values[id.index()] = *value;
    }
    let value = path.run(&mut values).map_err(|(step, error)| Unsolved::Failed(step, error))?;
    let working = Working::write(&path, &values, system);
    Ok(Solution { asked, value, path, working, values })
}

/// Givens that contradict the others by more than `tolerance` (relative) and their reading step.
///
/// Each given is left out in turn and worked out from the rest; what cannot be worked out is free.
pub fn contradictions(givens: &[(QuantityId, f64)], tolerance: f64, system: System) -> Vec<Disagreement> {
    let mut out = Vec::new();
    for &(quantity, given) in givens {
        let rest: Vec<_> = givens.iter().copied().filter(|(id, _)| *id != quantity).collect();
        let Ok(solution) = solve(&rest, quantity, &Choice::default(), system) else { continue };
        let Some(&by) = solution.path.steps.last() else { continue };
        let allowed = tolerance * given.abs().max(solution.value.abs())
            + 2.0 * Registry::get().seeing(system)[quantity.index()].half_step();
        if (given - solution.value).abs() > allowed {
            out.push(Disagreement { quantity, given, worked: solution.value, by, from: solution.path.uses() });
        }
    }
    out
}
