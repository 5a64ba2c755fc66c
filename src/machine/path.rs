//! Paths through the graph: from what is given to what is asked.

use crate::registry::{QuantityId, Registry, RelationId, askable};

/// The steps from givens to the asked quantity, each needing only givens and earlier steps.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Path {
    /// Relations in order; the last one gives what was asked. Empty when it was given.
    pub steps: Vec<RelationId>,
    /// What was asked.
    pub asked: QuantityId,
}

/// Why there is no path.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NoPath {
    /// What was asked.
    pub asked: QuantityId,
    /// For each relation that could give it: what is still missing. Empty when nothing gives it.
    pub missing: Vec<(RelationId, Vec<QuantityId>)>,
}

/// What a path may use.
#[derive(Debug, Clone, Default)]
pub struct Choice {
    /// Relations that must not be used.
    pub without: Vec<RelationId>,
    /// Relations that are taken for what they give, whatever the alternatives.
    pub by: Vec<RelationId>,
}

impl Choice {
    fn allows(&self, relation: RelationId) -> bool {
        let linked = relation.get();
        askable(linked.relation)
            && !self.without.contains(&relation)
            && (self.by.contains(&relation) || !self.by.iter().any(|by| by.get().gives == linked.gives))
    }
}

impl Path {
    /// The shortest path from `given` to `asked`: fewest steps, preferred relations first.
    ///
    /// # Errors
    /// [`NoPath`] with what is missing.
    pub fn find(given: &[QuantityId], asked: QuantityId, choice: &Choice) -> Result<Self, NoPath> {
        let registry = Registry::get();
        let (cost, by) = reach(given, choice);
        if cost[asked.index()].is_none() {
            let missing = (registry.giving(asked).iter())
                .filter(|id| choice.allows(**id))
                .map(|id| (*id, id.get().inputs().filter(|input| cost[input.index()].is_none()).collect()))
                .collect();
            return Err(NoPath { asked, missing });
        }
        let mut steps = Vec::new();
        collect(asked, &by, &mut steps);
        Ok(Self { steps, asked })
    }

    /// For each quantity, whether it is among `given` or can be worked out from them.
    pub fn within_reach(given: &[QuantityId]) -> Vec<bool> {
        reach(given, &Choice::default()).0.into_iter().map(|cost| cost.is_some()).collect()
    }

    /// The shortest path and up to `most - 1` others that come by another accepted method.
    ///
    /// # Errors
    /// As [`Path::find`].
    pub fn find_all(
        given: &[QuantityId],
        asked: QuantityId,
        choice: &Choice,
        most: usize,
    ) -> Result<Vec<Self>, NoPath> {
        let first = Self::find(given, asked, choice)?;
        let mut paths = vec![first];
        let mut next = 0;
        while next < paths.len() && paths.len() < most {
            for step in paths[next].steps.clone() {
                // Where nothing else gives it, there is no other way round this step.
                let giving = Registry::get().giving(step.get().gives);
                if giving.iter().filter(|relation| choice.allows(**relation)).count() < 2 {
                    continue;
                }
                let mut other = choice.clone();
                other.without.push(step);
                if let Ok(path) = Self::find(given, asked, &other)
                    && paths.len() < most
                    && !paths.contains(&path)
                {
                    paths.push(path);
                }
            }
            next += 1;
        }
        Ok(paths)
    }

    /// Works the steps out in place: `values` holds the givens and receives every result.
    ///
    /// # Errors
    /// The calculation's own, with the step that failed.
    pub fn run(&self, values: &mut [f64]) -> Result<f64, (RelationId, drivecourse_calc::Error)> {
        for &step in &self.steps {
            let linked = step.get();
            values[linked.gives.index()] = linked.eval(values).map_err(|error| (step, error))?;
        }
        Ok(values[self.asked.index()])
    }

    /// The givens that the steps really use, in order of first use.
    pub fn uses(&self) -> Vec<QuantityId> {
        let mut made = Vec::new();
        let mut used = Vec::new();
        for step in &self.steps {
            let linked = step.get();
            for input in linked.inputs() {
                if !made.contains(&input) && !used.contains(&input) {
                    used.push(input);
                }
            }
            made.push(linked.gives);
        }
        if self.steps.is_empty() {
            used.push(self.asked);
        }
        used
    }

    /// Every quantity that the steps and their wrong turns use or give, and what is asked; some of them more than once.
    pub fn mentions(&self) -> impl Iterator<Item = QuantityId> + '_ {
        let steps = self.steps.iter().map(|step| step.get());
        let mentioned = steps.flat_map(|linked| {
            let turns = linked.turns_at.iter().flatten().map(|at| QuantityId(*at));
            linked.inputs().chain(turns).chain([linked.gives])
        });
        mentioned.chain([self.asked])
    }
}

/// Cheapest cost of every quantity from `given`, and the relation it is reached by.
fn reach(given: &[QuantityId], choice: &Choice) -> (Vec<Option<u32>>, Vec<Option<RelationId>>) {
    let registry = Registry::get();
    let mut cost: Vec<Option<u32>> = vec![None; registry.len()];
    let mut by: Vec<Option<RelationId>> = vec![None; registry.len()];
    for id in given {
        cost[id.index()] = Some(0);
    }
    // Costs only fall and are bounded below, so this ends; the graph is small enough to sweep.
    loop {
        let mut changed = false;
        for linked in registry.relations() {
            if !choice.allows(linked.id) || given.contains(&linked.gives) {
                continue;
            }
            let inputs: Option<u32> =
                linked.at.iter().try_fold(0_u32, |sum, &at| Some(sum.saturating_add(cost[usize::from(at)]?)));
            let Some(inputs) = inputs else { continue };
            // A step costs far more than a preference, so a longer path never wins on rank alone.
            let total = inputs.saturating_add(100 + u32::from(linked.relation.rank));
            let slot = &mut cost[linked.gives.index()];
            if slot.is_none_or(|old| total < old) {
                *slot = Some(total);
                by[linked.gives.index()] = Some(linked.id);
                changed = true;
            }
        }
        if !changed {
            return (cost, by);
        }
    }
}

fn collect(asked: QuantityId, by: &[Option<RelationId>], steps: &mut Vec<RelationId>) {
    if let Some(relation) = by[asked.index()]
        && !steps.contains(&relation)
    {
        for input in relation.get().inputs() {
            collect(input, by, steps);
        }
        steps.push(relation);
    }
}
