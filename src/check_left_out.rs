//! What `check` finds in faults that a family leaves out: one that its machines could have.

use drivecourse_machine::{Plan, Problem, quoted};
use serde::Deserialize;
use toml::Spanned;

use crate::check::Check;
use crate::check_families::{LEFT_OUT, LEFT_OUT_MEND, WASTEFUL, rejections};
use crate::check_verdicts::{shown_by, verdicts};
use crate::own_family::Own;
use crate::undrawable;

/// The faults that the family in `text` leaves out, each with its place.
pub(crate) fn named(text: &str) -> Vec<Spanned<String>> {
    #[derive(Deserialize)]
    struct Head {
        #[serde(default)]
        without: Vec<Spanned<String>>,
    }
    toml::from_str::<Head>(text).map_or_else(|_| Vec::new(), |head| head.without)
}

impl Check<'_> {
    /// Looks for faults left out that are no longer in the way: an author leaves one out because a value kept it from being
    /// drawn or seen, mends the value, and nobody ever meets the fault again.
    pub(crate) fn left_out(&mut self, own: &Own<'_>) {
        let Some(pattern) = own.pattern else { return };
        for left_out in named(&own.text) {
            let id = left_out.get_ref();
            let Some(usual) = pattern.family.faults.iter().position(|fault| fault.id == *id) else { continue };
            let with = own.plan.family.with_fault(&pattern.family, usual);
            let Some(plan) = with.and_then(|family| Plan::new(family).ok()) else { continue };
            let place = plan.family.faults.len() - 1;
            let verdicts = verdicts();
            let shown = shown_by(pattern, usual, &verdicts).into_iter().filter(|id| plan.determines(*id));
            let hides = || shown.count() > 0 && shown_by(&plan, place, &verdicts).is_empty();
            let is_rare = || rejections(&plan).rate() > WASTEFUL;
            if undrawable::sort(&plan, &[place]).is_some() || hides() || is_rare() {
                continue;
            }
            let name = &pattern.family.faults[usual].name;
            let what = LEFT_OUT.say(&[("fault", &quoted(id)), ("name", name)]);
            self.note(&own.path, &own.text, Problem::at(left_out.span(), what, LEFT_OUT_MEND.text()));
        }
    }
}
