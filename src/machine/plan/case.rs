//! A machine drawn from a family.

use crate::registry::{QuantityId, Registry};
use crate::unit::System;

/// One hidden machine.
#[derive(Debug, Clone, PartialEq)]
pub struct Case {
    /// The seed that gives it again.
    pub seed: u64,
    /// How many machines of this seed broke a limit before this one.
    pub rejected: u32,
    /// What is wrong with it: places in the family's faults.
    pub faults: Vec<usize>,
    /// The true value of every quantity (SI), NaN where the family does not determine it.
    pub values: Vec<f64>,
}

impl Case {
    /// The true value of `quantity`, if the family determines it.
    pub fn value(&self, quantity: QuantityId) -> Option<f64> {
        Some(self.values[quantity.index()]).filter(|value| !value.is_nan())
    }

    /// What a person gets to see in `system`: instruments read to their steps, plates as printed;
    /// NaN for everything that must be worked out.
    pub fn seen(&self, system: System) -> Vec<f64> {
        let registry = Registry::get();
        self.values.iter().zip(registry.seeing(system)).map(|(value, seeing)| seeing.see(*value)).collect()
    }
}
