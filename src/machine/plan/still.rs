//! What does not change from one question about a machine to the next.

use super::Plan;
use crate::family::Draw;
use crate::registry::{QuantityId, Registry};

impl Plan {
    /// Whether `quantity` comes from the family's pool or table of machines, and no fault of it draws that anew.
    pub fn tabled(&self, quantity: QuantityId) -> bool {
        self.family.pool.first().is_some_and(|row| row.iter().any(|(id, _)| *id == quantity)) && !self.redrawn(quantity)
    }

    /// Whether the family fixes `quantity`, and no fault of it draws that anew.
    pub fn fixes(&self, quantity: QuantityId) -> bool {
        let fixed = |(id, draw): &(QuantityId, Draw)| *id == quantity && matches!(draw, Draw::Fixed(_));
        self.family.roots.iter().any(fixed) && !self.redrawn(quantity)
    }

    /// For each quantity, whether a machine's row alone says what it is: all that it follows from is fixed,
    /// in the table, or of the build of a machine that has a name.
    pub fn still(&self) -> Vec<bool> {
        let built = |id: QuantityId| id.get().built && !self.family.machines.is_empty() && !self.redrawn(id);
        let starts = |id: QuantityId| self.tabled(id) || self.fixes(id) || built(id);
        let mut still: Vec<bool> = Registry::get().quantities().map(starts).collect();
        for step in &self.steps {
            still[usize::from(step.gives)] =
                self.at[step.from as usize..step.to as usize].iter().all(|at| still[usize::from(*at)]);
        }
        still
    }

    pub(super) fn redrawn(&self, quantity: QuantityId) -> bool {
        self.family.faults.iter().any(|fault| fault.draws.iter().any(|(drawn, _)| *drawn == quantity))
    }
}
