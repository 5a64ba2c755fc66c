//! Machines that are not kept: how often a family's limits reject one, and what is said when none is left.

use core::fmt;

use super::{MOST_ATTEMPTS, Plan};
use crate::problem::Problem;

/// Why no machine of a family could be drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct CannotDraw {
    /// The family.
    pub family: String,
    /// What most attempts failed on, as a sentence.
    pub because: String,
    /// Where in the family's file, if one limit is at fault.
    pub span: Option<core::ops::Range<usize>>,
}

impl fmt::Display for CannotDraw {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "No machine of the family \"{}\" could be drawn in {MOST_ATTEMPTS} attempts. {}",
            self.family, self.because
        )
    }
}

impl core::error::Error for CannotDraw {}

impl From<CannotDraw> for Problem {
    fn from(error: CannotDraw) -> Self {
        Self {
            span: error.span.clone(),
            what: error.to_string(),
            mend: "Widen the limit, or narrow the draws that break it.".into(),
        }
    }
}

/// How often machines of a family are drawn again, and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Rejections {
    /// Machines kept.
    pub kept: u32,
    /// For each limit of the family, how many attempts broke it first.
    pub broken: Vec<u32>,
    /// How many attempts a calculation had no result for.
    pub refused: u32,
}

impl Rejections {
    /// Machines rejected for each one kept.
    pub fn rate(&self) -> f64 {
        let rejected: u32 = self.broken.iter().sum::<u32>() + self.refused;
        f64::from(rejected) / f64::from(self.kept.max(1))
    }

    /// The place of the limit that rejects most; `None` where it is calculations without a result.
    pub fn worst(&self) -> Option<usize> {
        let most = (0..self.broken.len()).max_by_key(|place| (self.broken[*place], core::cmp::Reverse(*place)))?;
        (self.broken[most] >= self.refused).then_some(most)
    }
}

impl Plan {
    /// What most attempts failed on: `broken` counts them by limit, and at its end those a calculation refused.
    pub(super) fn cannot(&self, broken: &[u32]) -> CannotDraw {
        let worst = (0..broken.len()).max_by_key(|index| (broken[*index], core::cmp::Reverse(*index))).unwrap_or(0);
        let share = |count: u32| f64::from(count) / f64::from(MOST_ATTEMPTS) * 100.0;
        let (because, span) = match self.family.limits.get(worst) {
            Some(limit) => {
                let why = match limit.reason() {
                    reason if reason.is_empty() => reason,
                    reason => format!(" ({reason})"),
                };
                (
                    format!(
                        "{:.0} % of them broke the limit on {}{why}.",
                        share(broken[worst]),
                        limit.quantity.get().id
                    ),
                    Some(limit.span.clone()),
                )
            }
            None => (
                format!(
                    "In {:.0} % of them a calculation had no result: the draws reach outside what the formulas hold for.",
                    share(broken[worst])
                ),
                None,
            ),
        };
        CannotDraw { family: self.family.id.clone(), because, span }
    }
}
