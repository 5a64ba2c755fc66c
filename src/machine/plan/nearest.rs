//! Where no machine keeps every limit: the one that came nearest, so that its author sees it whole.

use std::collections::BTreeSet;

use super::{CannotDraw, Case, MOST_ATTEMPTS, Plan};
use crate::amount;
use crate::chance::{Stream, derive};
use crate::family::{Draw, Limit};
use crate::messages;
use crate::problem::refusal_of;
use crate::registry::{QuantityId, Registry, RelationId};
use crate::relation::{Given, work};

messages! { pub(crate) SAYS {
    FOLLOWS = "problem-nearest-follows", "There it follows from {values}.";
    OWN = "problem-nearest-own", "Of what this family's file says, there goes into it: {values}.";
    MEND_OWN = "problem-nearest-mend-own", "Mend this value, or what it is held against ({inputs}).";
    MEND_IT = "problem-nearest-mend-it", "Mend this value.";
    ALSO = "problem-nearest-also", "Besides, {limit}.";
    REFUSED = "problem-nearest-refused", "“{relation}” ({id}) had none: {why}. It follows from {values}.";
} }

/// Values to start from that are still told one by one.
const MOST_STARTS: usize = 8;

/// A limit that a machine breaks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Short {
    /// Which: a place in the family's limits.
    pub limit: usize,
    /// How far beyond it the machine is (SI), more than nothing.
    pub by: f64,
}

/// A machine that was not kept.
#[derive(Debug, Clone, PartialEq)]
pub struct Nearest {
    /// The machine; NaN where a calculation had no result.
    pub case: Case,
    /// The limits that it breaks, in the family's order.
    pub breaks: Vec<Short>,
    /// The first calculation that had no result, and why.
    pub refused: Option<(RelationId, String)>,
    /// Which of its inputs was refused, where it is one.
    pub at_fault: Option<QuantityId>,
}

impl Nearest {
    /// What makes it better or worse than another, in this order: whether every calculation has a result, how many limits
    /// it breaks, and how far it is beyond them, each as a share of its bound.
    fn distance(&self, limits: &[Limit]) -> (bool, usize, f64) {
        let share = |short: &Short| {
            let limit = &limits[short.limit];
            let value = self.case.values[limit.quantity.index()];
            let bound = if value < limit.at_least { limit.at_least } else { limit.at_most };
            short.by / if bound == 0.0 { 1.0 } else { bound.abs() }
        };
        (self.refused.is_some(), self.breaks.len(), self.breaks.iter().map(share).sum())
    }
}

impl Plan {
    /// Of the attempts at the machine of `seed`, the one that comes nearest to keeping every limit, the first of those alike:
    /// what [`Plan::draw_with`] refuses, as it would be. `rejected` of its case is the place of the attempt.
    pub fn nearest(&self, seed: u64, faults: Option<&[usize]>) -> Nearest {
        let faults = faults.map_or_else(|| self.pick_faults(&mut Stream::new(seed, "faults")), <[usize]>::to_vec);
        let mut best = self.try_whole(seed, 0, &faults);
        for attempt in 1..MOST_ATTEMPTS {
            let tried = self.try_whole(seed, attempt, &faults);
            if tried.distance(&self.family.limits) < best.distance(&self.family.limits) {
                best = tried;
            }
        }
        best
    }

    /// Adds to why a machine could not be drawn what the value at fault follows from, at the machine that came nearest.
    pub fn explain(&self, mut error: CannotDraw) -> CannotDraw {
        let (seed, faults) = &*error.tried;
        let nearest = self.nearest(*seed, Some(faults));
        let values = |of: &[QuantityId]| {
            let written = |id: &QuantityId| {
                let value = nearest.case.values[id.index()];
                format!("{} {}", id.get().id, amount::write_exact(id.get(), value, self.family.told_in))
            };
            of.iter().map(written).collect::<Vec<_>>().join(", ")
        };
        let (from, shown, more) = match (error.limit, &nearest.refused) {
            (Some(limit), _) => {
                let from = vec![self.family.limits[limit].quantity];
                let shown = self.starts(&from);
                let more = told!(FOLLOWS, "values" = values(&shown));
                (from, shown, more)
            }
            (None, Some((by, why))) => {
                let relation = by.get().relation;
                let inputs: Vec<_> = by.get().inputs().collect();
                // What the author wrote goes into it as it stands.
                let refused = nearest.at_fault.map_or_else(|| inputs.clone(), |id| vec![id]);
                error.span = refused.iter().find_map(|id| self.family.place(*id, None));
                let shown = if error.span.is_some() { inputs.clone() } else { self.starts(&inputs) };
                let more = told!(
                    REFUSED,
                    "relation" = relation.title,
                    "id" = relation.id,
                    "why" = why,
                    "values" = values(&shown)
                );
                (inputs, shown, more)
            }
            (None, None) => return error,
        };
        error.because = format!("{} {more}", error.because).into();
        // Of all that goes into it, what the author wrote is what the author can mend: what is fixed before what is drawn.
        let mut own = self.all_starts(&from);
        own.retain(|id| self.family.place(*id, None).is_some());
        let of_another = error.limit.is_none_or(|limit| !self.family.limits[limit].of.is_empty());
        let fixed =
            |id: &&QuantityId| self.family.roots.iter().any(|root| root.0 == **id && matches!(root.1, Draw::Fixed(_)));
        let fixed: Vec<_> = own.iter().filter(fixed).collect();
        if let ([one], true) = (fixed.as_slice(), of_another) {
            error.span = self.family.place(**one, None);
            let held = |id: &QuantityId| self.inputs(*id).map(|input| input.get().id).collect::<Vec<_>>().join(", ");
            error.mend = match error.limit {
                Some(limit) => told!(MEND_OWN, "inputs" = held(&self.family.limits[limit].quantity)).into(),
                None => told!(MEND_IT).into(),
            };
        }
        if !matches!(fixed.as_slice(), [_]) {
            error.column = self.column_at_fault(&from, nearest.at_fault);
        }
        own.retain(|id| !shown.contains(id));
        if !own.is_empty() && own.len() <= MOST_STARTS {
            error.because = format!("{} {}", error.because, told!(OWN, "values" = values(&own))).into();
        }
        // What else that machine breaks would otherwise come to light only when this is mended.
        for short in nearest.breaks.iter().filter(|short| error.limit.is_some_and(|limit| limit != short.limit)) {
            let value = nearest.case.values[self.family.limits[short.limit].quantity.index()];
            error.because =
                format!("{} {}", error.because, told!(ALSO, "limit" = self.beyond(short.limit, value))).into();
        }
        error
    }

    /// The one column of the family's own table that these follow from, or that was refused, if there is one alone.
    fn column_at_fault(&self, of: &[QuantityId], refused: Option<QuantityId>) -> Option<QuantityId> {
        let table = self.family.table.as_ref()?;
        let is_column = |id: &QuantityId| table.columns.iter().any(|(column, _)| column == id);
        let starts: Vec<_> = self.all_starts(of).into_iter().filter(is_column).collect();
        let alone = if let [one] = starts.as_slice() { Some(*one) } else { None };
        // Of several, the only one that goes into it at once.
        let at_once: Vec<_> = of.iter().flat_map(|id| self.inputs(*id)).filter(is_column).collect();
        let at_once = if let [one] = at_once.as_slice() { Some(*one) } else { None };
        refused.filter(is_column).or(alone).or(at_once)
    }

    /// What is drawn or fixed and these follow from; where that is too much to be read, these themselves, or of a single one
    /// what it follows from at once.
    pub fn starts(&self, of: &[QuantityId]) -> Vec<QuantityId> {
        let starts = self.all_starts(of);
        if starts.len() <= MOST_STARTS {
            return starts;
        }
        match of {
            [one] => self.inputs(*one).collect(),
            several => several.to_vec(),
        }
    }

    /// What is drawn or fixed and these follow from.
    fn all_starts(&self, of: &[QuantityId]) -> Vec<QuantityId> {
        let (mut all, mut waiting) = (BTreeSet::new(), of.to_vec());
        while let Some(id) = waiting.pop() {
            if all.insert(id) {
                waiting.extend(self.inputs(id));
                let share = |(drawn, draw): &(QuantityId, Draw)| match draw {
                    Draw::Share { of, .. } | Draw::ShareAmong { of, .. } if *drawn == id => Some(*of),
                    _ => None,
                };
                waiting.extend(self.family.roots.iter().filter_map(share));
            }
        }
        all.into_iter().filter(|id| self.inputs(*id).next().is_none()).collect()
    }

    /// What `id` follows from at once; nothing where it is drawn or fixed.
    fn inputs(&self, id: QuantityId) -> impl Iterator<Item = QuantityId> {
        let step = self.steps.iter().find(|step| step.gives == id.0);
        let at = step.map_or(&[][..], |step| &self.at[step.from as usize..step.to as usize]);
        at.iter().map(|input| QuantityId(*input))
    }

    /// One attempt, gone through to its end whatever it breaks.
    fn try_whole(&self, seed: u64, attempt: u32, faults: &[usize]) -> Nearest {
        let values = vec![f64::NAN; Registry::get().len()];
        let mut case = Case { seed, rejected: attempt, faults: faults.to_vec(), values };
        self.draw_roots(derive(seed, u64::from(attempt)), None, None, &mut case);
        let (mut refused, mut at_fault) = (None, None);
        for step in &self.steps {
            let at = &self.at[step.from as usize..step.to as usize];
            // What follows from what has no result has none either, and is no refusal of its own.
            if at.iter().any(|input| case.values[usize::from(*input)].is_nan()) {
                continue;
            }
            match work(step.eval, &Given { values: &case.values, at }) {
                Ok(value) => case.values[usize::from(step.gives)] = value,
                Err(error) if refused.is_none() => {
                    let inputs: Vec<_> = at.iter().map(|at| (QuantityId(*at), case.values[usize::from(*at)])).collect();
                    let (why, input) = refusal_of(&error, &inputs, self.family.told_in);
                    (refused, at_fault) = (Some((step.by, why)), input);
                }
                Err(_) => {}
            }
        }
        let breaks = (self.family.limits.iter().enumerate())
            .filter(|(_, limit)| limit.is_asked(faults))
            .map(|(place, limit)| Short { limit: place, by: limit.beyond(case.values[limit.quantity.index()]) })
            .filter(|short| short.by > 0.0)
            .collect();
        Nearest { case, breaks, refused, at_fault }
    }
}
