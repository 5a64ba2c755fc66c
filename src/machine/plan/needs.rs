//! What some quantities of a machine wait for, so that no more of it need be worked out.

use core::ops::Range;

use super::{Plan, Step, share};
use crate::registry::{QuantityId, Registry};

/// What some quantities of a family wait for beyond its limits: made by [`Plan::needs`].
#[derive(Debug, Clone)]
pub struct Needs {
    /// Places among the plan's steps, in order.
    pub(super) steps: Vec<u16>,
    /// For each of the plan's topics, whether its roots are drawn.
    pub(super) topics: Vec<bool>,
}

impl Needs {
    /// The same with the roots of `other` drawn too, so that [`Plan::work_out`] can go on to it.
    #[must_use]
    pub fn with_roots_of(mut self, other: &Self) -> Self {
        self.topics.iter_mut().zip(&other.topics).for_each(|(drawn, other)| *drawn |= other);
        self
    }
}

impl Plan {
    /// What `quantities` wait for, for drawing machines of which only these are wanted.
    pub fn needs(&self, quantities: impl Iterator<Item = QuantityId>) -> Needs {
        let limited = self.family.limits.iter().map(|limit| limit.quantity);
        let (needed, mut wanted) = waited_for(&self.steps, &self.at, quantities.chain(limited));
        for (id, of) in self.family.draws().filter_map(share) {
            wanted[of.index()] |= wanted[id.index()];
        }
        let drawn = |roots: &Range<usize>| self.family.roots[roots.clone()].iter().any(|(id, _)| wanted[id.index()]);
        Needs {
            steps: (self.guarded..self.steps.len()).filter(|step| needed[*step]).map(|step| step as u16).collect(),
            topics: self.topics.iter().map(|(_, roots)| drawn(roots)).collect(),
        }
    }
}

/// For each of `steps`, whether one of `quantities` waits for it; and for each quantity.
pub(super) fn waited_for(
    steps: &[Step],
    at: &[u16],
    quantities: impl Iterator<Item = QuantityId>,
) -> (Vec<bool>, Vec<bool>) {
    let mut wanted = vec![false; Registry::get().len()];
    quantities.for_each(|id| wanted[id.index()] = true);
    let mut waited: Vec<bool> = Vec::with_capacity(steps.len());
    for step in steps.iter().rev() {
        let needed = wanted[usize::from(step.gives)];
        if needed {
            at[step.from as usize..step.to as usize].iter().for_each(|input| wanted[usize::from(*input)] = true);
        }
        waited.push(needed);
    }
    waited.reverse();
    (waited, wanted)
}
