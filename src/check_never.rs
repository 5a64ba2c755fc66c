//! What `check` finds in limits of an author's own: a verdict that no machine comes to, and that machines of the family theirs
//! is like come to now and then.

use std::collections::BTreeSet;

use drivecourse_machine::chance::derive;
use drivecourse_machine::{Case, Plan, Problem, QuantityId, messages};
use drivecourse_quiz::Bank;

use crate::check::Check;
use crate::check_verdicts::verdicts;
use crate::own_family::{Own, inputs};

messages! { pub(crate) SAYS {
    NEVER = "check-never", "On no machine of this family is {id} (“{name}”) at “{verdict}”; of those of {family} {share} in 100 are. It is judged by {input}.";
    NEVER_BY = "check-never-by", "On no machine of this family is {id} (“{name}”) at “{verdict}”; of those of {family} {share} in 100 are. It is judged by {input}, {value} here.";
    PROGRAM = "check-never-program", "the program's own families";
    NEVER_MEND = "check-never-mend", "If your limit is meant so, leave it. If not, mend its value or its unit.";
} }

/// Machines drawn of a family to see which verdicts they come to.
const MACHINES: u64 = 150;

/// One out of so many machines with a verdict makes it one to be met.
const MET_OUT_OF: usize = 50;

impl Check<'_> {
    /// Looks for verdicts that a value in the family's file puts out of reach; of those in `told` it is said already.
    pub(crate) fn never(&mut self, own: &Own<'_>, standard: &Bank, told: &BTreeSet<QuantityId>) {
        let named = |id: &QuantityId| inputs(own.plan, *id).into_iter().any(|input| own.names(input));
        let judged: Vec<_> = verdicts().into_iter().filter(|id| !told.contains(id) && named(id)).collect();
        if judged.is_empty() {
            return;
        }
        let patterns: Vec<&Plan> = own.pattern.map_or_else(|| standard.plans.iter().collect(), |pattern| vec![pattern]);
        let cases = machines(own.plan, &judged);
        // What a fault makes that this family does not have is not to be met in it.
        let has = |plan: &Plan, case: &Case| {
            let known =
                |fault: &usize| own.plan.family.faults.iter().any(|own| own.id == plan.family.faults[*fault].id);
            case.faults.iter().all(known)
        };
        let mut usual = Vec::new();
        for plan in patterns {
            usual.extend(machines(plan, &judged).into_iter().filter(|case| has(plan, case)));
        }
        for id in judged {
            let comes_to = |cases: &[Case], verdict: usize| {
                cases.iter().filter(|case| case.value(id) == Some(verdict as f64)).count()
            };
            let met: Vec<_> = usual.iter().filter(|case| case.value(id).is_some()).collect();
            for (verdict, label) in id.get().labels.iter().enumerate() {
                let count = comes_to(&usual, verdict);
                if cases.is_empty() || count == 0 || count * MET_OUT_OF < met.len() || comes_to(&cases, verdict) > 0 {
                    continue;
                }
                let mends = |plan: &Plan| comes_to(&machines(plan, &[id]), verdict) > 0;
                // What is further off than the limits of the verdict itself is no limit.
                let Some(input) = own.cause(&[id], mends).filter(|input| inputs(own.plan, id).contains(input)) else {
                    continue;
                };
                let value = own.fixed(input);
                let what = if value.is_some() { NEVER_BY } else { NEVER }.say(&[
                    ("id", id.get().id),
                    ("name", id.get().name),
                    ("verdict", label),
                    ("family", own.pattern.map_or_else(|| PROGRAM.text(), |pattern| pattern.family.id.as_str())),
                    ("share", &format!("{:.0}", 100.0 * count as f64 / met.len() as f64)),
                    ("input", input.get().id),
                    ("value", &value.unwrap_or_default()),
                ]);
                let problem = Problem { span: own.span(input), what, mend: NEVER_MEND.text().to_owned() };
                self.notice(&own.path, &own.text, problem);
            }
        }
    }
}

/// Some machines of a family, faults as they come, always the same ones, worked out as far as `verdicts` need.
fn machines(plan: &Plan, verdicts: &[QuantityId]) -> Vec<Case> {
    let needs = plan.needs(verdicts.iter().copied());
    let seeds = (0..MACHINES).map(|seed| derive(0xc4ef_0001, seed));
    seeds.filter_map(|seed| plan.draw_needed(seed, None, &needs).ok()).collect()
}
