//! What of a machine a question looks at: most machines that are tried for discriminating numbers are not kept, so no
//! more of them is worked out than that.

use drivecourse_machine::{Needs, Path, Plan, QuantityId};

use crate::item::{Ask, Item};
use crate::judge;

/// What of a machine an item looks at, in two steps.
#[derive(Debug, Clone)]
pub(super) struct Wants {
    /// What decides whether the item may be asked about it.
    pub(super) bounds: Needs,
    /// What the question, its answers and its wrong turns use.
    pub(super) question: Needs,
}

impl Wants {
    /// Of `item` about machines of `plan`, answered by `paths`; `judged` is what was made ready for its judgements.
    pub(super) fn new(item: &Item, plan: &Plan, paths: &[Vec<Path>], judged: &[judge::Ready]) -> Self {
        let mut used: Vec<QuantityId> = item.when.iter().map(|when| when.quantity).collect();
        let bounds = plan.needs(used.iter().copied());
        for part in &item.parts {
            used.extend(part.shows());
            if let Ask::Quantity { asked, .. } = &part.ask {
                used.push(*asked);
            }
            used.extend(part.wrong.iter().flat_map(|turn| turn.gives.inputs().iter().copied()));
        }
        let ways = paths.iter().flatten().chain(judged.iter().flat_map(judge::Ready::paths));
        used.extend(ways.flat_map(Path::mentions));
        let question = plan.needs(used.into_iter());
        Self { bounds: bounds.with_roots_of(&question), question }
    }
}

#[cfg(test)]
mod tests {
    use drivecourse_machine::System;

    use crate::Setting;

    /// Over every built-in item and family: a question about a machine that is worked out only as far as it looks is the
    /// question about the whole machine, and the whole machine is the one that its seed gives.
    #[test]
    fn nothing_that_a_question_looks_at_is_left_out() {
        let bank = crate::built_in::bank();
        let mut asked = 0;
        for item in &bank.items {
            for plan in &bank.plans {
                let Ok(setting) = Setting::new(item, plan, System::Us) else { continue };
                for seed in [1, 2] {
                    let Ok(part) = setting.attempt(seed, seed) else { continue };
                    let whole = plan.draw_with(part.case.seed, Some(&part.case.faults)).unwrap();
                    let mut completed = part.clone();
                    if !setting.complete(&mut completed) {
                        continue;
                    }
                    asked += 1;
                    // NaN is unlike itself; written out, it is alike.
                    assert_eq!(format!("{:?}", completed.case), format!("{whole:?}"), "{} {}", item.id, plan.family.id);
                    let again = setting.ask(whole, seed, seed).unwrap();
                    assert_eq!(format!("{:?}", again.parts), format!("{:?}", part.parts), "{}", item.id);
                }
            }
        }
        assert!(asked > 1_000, "{asked} questions compared");
    }
}
