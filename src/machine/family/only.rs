//! What a variation needs of the family that it is like, where it is about some topics only.

use super::{Asked, Draw, Family, Limit};
use crate::plan;
use crate::registry::{QuantityId, Registry};
use crate::topics::DRIVE;

impl Family {
    /// This family for questions about `topics` and the drive itself alone: what neither their quantities nor those that are
    /// `named` follow from is left out, with the columns of the table. A limit stays where its quantity still follows, a fault where all that it
    /// changes and all that shows it is there.
    pub(super) fn only(&self, topics: &[&str], named: impl Fn(QuantityId) -> bool) -> Self {
        let registry = Registry::get();
        let mut known = vec![false; registry.len()];
        let starts = self.roots.iter().map(|(id, _)| *id);
        let columns = self.pool.first().into_iter().flatten().map(|(id, _)| *id);
        starts.chain(columns).for_each(|id| known[id.index()] = true);
        let steps = plan::follow(&mut known);
        let asked = |id: &QuantityId| topics.contains(&id.get().topic()) || id.get().topic() == DRIVE || named(*id);
        let mut needed = vec![false; registry.len()];
        registry.quantities().filter(|id| known[id.index()] && asked(id)).for_each(|id| needed[id.index()] = true);
        // Each step comes after those that it builds on.
        for (gives, from) in steps.iter().rev() {
            if needed[gives.index()] {
                from.iter().for_each(|id| needed[id.index()] = true);
            }
        }
        for (id, draw) in self.draws() {
            if let (Draw::Share { of, .. } | Draw::ShareAmong { of, .. }, true) = (draw, needed[id.index()]) {
                needed[of.index()] = true;
            }
        }
        let is = |id: &QuantityId| needed[id.index()];
        let mut out = self.clone();
        out.roots.retain(|(id, _)| is(id));
        out.pool.iter_mut().for_each(|row| row.retain(|(id, _)| is(id)));
        out.pool.retain(|row| !row.is_empty());
        if out.pool.is_empty() {
            out.machines.clear();
        }
        let mut follows = vec![false; registry.len()];
        let columns = out.pool.first().into_iter().flatten().map(|(id, _)| *id);
        out.roots.iter().map(|(id, _)| *id).chain(columns).for_each(|id| follows[id.index()] = true);
        plan::follow(&mut follows);
        let shows = |id: &QuantityId| follows[id.index()];
        out.stated = self.stated.iter().filter(|stated| is(&stated.quantity)).cloned().collect();
        let limits_of = |fault: usize| self.limits.iter().filter(move |limit| limit.asked == Asked::Fault(fault));
        let mut places = Vec::new();
        out.faults.clear();
        for (place, fault) in self.faults.iter().enumerate() {
            let stays =
                fault.draws.iter().all(|(id, _)| is(id)) && limits_of(place).all(|limit| shows(&limit.quantity));
            places.push(stays.then_some(out.faults.len()));
            out.faults.extend(stays.then(|| fault.clone()));
        }
        let moved = |limit: &Limit| {
            let asked = limit.asked.moved(|fault| places[fault])?;
            Some(Limit { asked, ..limit.clone() }).filter(|limit| shows(&limit.quantity))
        };
        out.limits = self.limits.iter().filter_map(moved).collect();
        out
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn built_in(id: &str) -> Family {
        Family::read(id, include_str!("../../../scenarios/families/quarry-conveyor.toml")).unwrap()
    }

    #[test]
    fn a_topic_needs_less_than_the_whole_machine() {
        let whole = built_in("quarry-conveyor");
        let names = |family: &Family| family.pool[0].iter().map(|(id, _)| id.get().id).collect::<Vec<_>>();
        let chain = whole.only(&["chain"], |_| false);
        assert!(names(&chain).contains(&"chain.teeth_large") && names(&chain).len() < 12, "{:?}", names(&chain));
        assert!(chain.roots.len() * 2 < whole.roots.len());
        assert!(chain.faults.iter().any(|fault| fault.id == "tight-chain"));
        assert!(!chain.faults.iter().any(|fault| fault.id.contains("oil")));
        // What is left is a whole family, and its machines are those of the other, as far as they go.
        let (plan, other) = (plan::Plan::new(chain).unwrap(), plan::Plan::new(whole).unwrap());
        let drawn = |plan: &plan::Plan, name: &str| {
            let case = plan.draw_with(7, Some(&[])).unwrap();
            case.values[Registry::get().find(name).unwrap().index()]
        };
        assert!(drawn(&plan, "chain.sag") > 0.0 && drawn(&plan, "oil.cold_level").is_nan());
        assert!(drawn(&other, "oil.cold_level") > 0.0);
        let pressed = Registry::get().find("load.verdict").unwrap();
        let wider = other.family.only(&["chain"], |id| id == pressed);
        assert!(names(&wider).contains(&"load.rating_middle"), "{:?}", names(&wider));
    }
}
