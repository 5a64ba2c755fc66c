//! How the items did.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::GradedPaper;
use crate::mark::Verdict;

/// How often something was met.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Count {
    /// What: a cause's short name.
    pub name: String,
    /// How often.
    pub count: usize,
}

/// How one item did over all papers that were handed in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ItemStatistics {
    /// The item.
    pub item: String,
    /// How often it was asked.
    pub asked: usize,
    /// Mean share of its marks that was earned, 0 to 1.
    pub facility: f64,
    /// Correlation of the share earned here with the share earned in the rest of the paper (product
    /// moment); nothing for fewer than three, or where all did alike.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub discrimination: Option<f64>,
    /// Parts left blank.
    pub blank: usize,
    /// Parts credited from an earlier error.
    pub carried: usize,
    /// Parts that could not be read, or bore a unit of another kind.
    pub unread: usize,
    /// What went wrong, most frequent first.
    pub causes: Vec<Count>,
}

#[derive(Debug, Default)]
struct Sums {
    /// Share here, share in the rest of the paper.
    pairs: Vec<(f64, f64)>,
    blank: usize,
    carried: usize,
    unread: usize,
    causes: BTreeMap<String, usize>,
}

/// Grows paper by paper.
#[derive(Debug, Default)]
pub(super) struct Statistics {
    items: BTreeMap<String, Sums>,
}

impl Statistics {
    pub(super) fn add(&mut self, paper: &GradedPaper) {
        if !paper.present {
            return;
        }
        for question in &paper.questions {
            let sums = self.items.entry(question.item.clone()).or_default();
            let share = |earned: u32, of: u32| if of == 0 { 0.0 } else { f64::from(earned) / f64::from(of) };
            let rest = share(paper.earned - question.earned, paper.of - question.of);
            sums.pairs.push((share(question.earned, question.of), rest));
            for part in &question.parts {
                match part.verdict {
                    Verdict::Blank => sums.blank += 1,
                    Verdict::Carried => sums.carried += 1,
                    Verdict::Unreadable | Verdict::WrongUnit => sums.unread += 1,
                    Verdict::Right | Verdict::Partial | Verdict::Wrong => {}
                }
                // The likeliest cause only: one slip is counted once.
                if let Some(cause) = part.causes.first() {
                    *sums.causes.entry(cause.clone()).or_default() += 1;
                }
            }
        }
    }

    pub(super) fn finish(self) -> (Vec<ItemStatistics>, Vec<Count>) {
        let mut all: BTreeMap<String, usize> = BTreeMap::new();
        let items = (self.items.into_iter())
            .map(|(item, sums)| {
                for (cause, count) in &sums.causes {
                    *all.entry(cause.clone()).or_default() += count;
                }
                ItemStatistics {
                    item,
                    asked: sums.pairs.len(),
                    facility: mean(sums.pairs.iter().map(|pair| pair.0)),
                    discrimination: correlation(&sums.pairs),
                    blank: sums.blank,
                    carried: sums.carried,
                    unread: sums.unread,
                    causes: ranked(sums.causes),
                }
            })
            .collect();
        (items, ranked(all))
    }
}

/// Most frequent first, then by name.
pub fn ranked(counts: BTreeMap<String, usize>) -> Vec<Count> {
    let mut out: Vec<Count> = counts.into_iter().map(|(name, count)| Count { name, count }).collect();
    out.sort_by(|a, b| b.count.cmp(&a.count).then_with(|| a.name.cmp(&b.name)));
    out
}

/// The mean; nought of nothing.
pub fn mean(values: impl ExactSizeIterator<Item = f64>) -> f64 {
    let count = values.len();
    if count == 0 { 0.0 } else { values.sum::<f64>() / count as f64 }
}

/// Pearson's correlation; nothing for fewer than three pairs, or where one side is all alike.
pub fn correlation(pairs: &[(f64, f64)]) -> Option<f64> {
    if pairs.len() < 3 {
        return None;
    }
    let (x, y) = (mean(pairs.iter().map(|pair| pair.0)), mean(pairs.iter().map(|pair| pair.1)));
    let sum = |part: fn(f64, f64) -> f64| pairs.iter().map(|pair| part(pair.0 - x, pair.1 - y)).sum::<f64>();
    let (xx, yy, xy) = (sum(|x, _| x * x), sum(|_, y| y * y), sum(|x, y| x * y));
    (xx > 1e-12 && yy > 1e-12).then(|| xy / (xx * yy).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn correlation_is_pearsons() {
        // Worked by hand: deviations (-1, -1), (0, 2), (1, -1): products 1 + 0 - 1 = 0.
        assert_eq!(correlation(&[(0.0, 0.0), (1.0, 3.0), (2.0, 0.0)]), Some(0.0));
        approx::assert_relative_eq!(correlation(&[(0.0, 1.0), (1.0, 3.0), (2.0, 5.0)]).unwrap(), 1.0);
        // Deviations (-1, -1), (0, 0), (1, 1) against (-1, 0, 1) bent: 3 / sqrt(2 * 14/3).
        let bent = correlation(&[(0.0, 1.0), (1.0, 2.0), (2.0, 4.0)]).unwrap();
        approx::assert_relative_eq!(bent, 3.0 / (2.0_f64 * 14.0 / 3.0).sqrt(), max_relative = 1e-12);
        assert_eq!(correlation(&[(1.0, 1.0), (1.0, 2.0), (1.0, 3.0)]), None);
        assert_eq!(correlation(&[(0.0, 1.0), (1.0, 2.0)]), None);
    }
}
