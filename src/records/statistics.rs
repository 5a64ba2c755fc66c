//! Statistics of items and tests.
//!
//! Shares of marks stand for item scores, so that a question of one mark and one of five weigh alike; where a formula
//! wants right or wrong, a question is right when it earned all its marks.

use drivecourse_quiz::grade::{correlation, mean};

/// Half the width of a 95 % interval in standard deviations of the normal distribution.
const Z95: f64 = 1.959_963_984_540_054;

/// The mean of squared deviations, with **n** as divisor.
///
/// # Source
/// The divisor Kuder and Richardson (1937) use for both the items' p q and the variance of totals; with n - 1 under the
/// total alone the coefficient comes out larger.
pub fn variance(values: &[f64]) -> f64 {
    let middle = mean(values.iter().copied());
    mean(values.iter().map(|value| (value - middle) * (value - middle)))
}

/// Reliability of a test from the scores of each person (a row each, as long as the first).
///
/// For scores of 0 and 1 it is the KR-20 of Kuder and Richardson. `None` for fewer than two items or people, or where
/// all totals are alike.
///
/// # Formula
/// α = k / (k - 1) × (1 - Σ s²ᵢ / s²), every variance with divisor n
///
/// # Source
/// Cronbach, L. J. (1951), *Coefficient alpha and the internal structure of tests*, Psychometrika 16; Kuder, G. F. and
/// Richardson, M. W. (1937), *The theory of the estimation of test reliability*, Psychometrika 2.
pub fn alpha(people: &[Vec<f64>]) -> Option<f64> {
    let items = people.first()?.len();
    if items < 2 || people.len() < 2 {
        return None;
    }
    let totals: Vec<f64> = people.iter().map(|scores| scores.iter().sum()).collect();
    let total = variance(&totals);
    let column = |item: usize| people.iter().map(|scores| scores.get(item).copied().unwrap_or(0.0)).collect::<Vec<_>>();
    let sum: f64 = (0..items).map(|item| variance(&column(item))).sum();
    let count = items as f64;
    (total > 1e-12).then(|| count / (count - 1.0) * (1.0 - sum / total))
}

/// Correlation of each item with the total of the others (corrected, so that an item does not vouch for itself); with
/// scores of 0 and 1 this is the corrected point-biserial correlation.
///
/// # Source
/// Henrysson, S. (1963), *Correction of item-total correlations in item analysis*, Psychometrika 28, for the idea of
/// taking the item out.
pub fn corrected(people: &[Vec<f64>]) -> Vec<Option<f64>> {
    let items = people.first().map_or(0, Vec::len);
    let totals: Vec<f64> = people.iter().map(|scores| scores.iter().sum()).collect();
    let pairs = |item: usize| -> Vec<(f64, f64)> {
        let score = |scores: &Vec<f64>| scores.get(item).copied().unwrap_or(0.0);
        people.iter().zip(&totals).map(|(scores, total)| (score(scores), total - score(scores))).collect()
    };
    (0..items).map(|item| correlation(&pairs(item))).collect()
}

/// 95 % interval for a share of which `hits` of `of` were seen.
///
/// # Formula
/// (p + z²/2n ± z √(p(1-p)/n + z²/4n²)) / (1 + z²/n)
///
/// # Source
/// Wilson, E. B. (1927), *Probable inference*, Journal of the American Statistical Association 22; method 3 in
/// Newcombe, R. G. (1998), Statistics in Medicine 17.
pub fn interval(hits: usize, of: usize) -> Option<(f64, f64)> {
    if of == 0 {
        return None;
    }
    let (n, p) = (of as f64, hits as f64 / of as f64);
    let square = Z95 * Z95 / n;
    let middle = p + square / 2.0;
    let half = Z95 * (p * (1.0 - p) / n + square / (4.0 * n)).sqrt();
    Some((((middle - half) / (1.0 + square)).max(0.0), ((middle + half) / (1.0 + square)).min(1.0)))
}

/// How unlikely it is that groups with `(hits, of)` each differ as much as they do if all are equally hard: chi-square
/// of a table of two columns, and the probability of so large a value. `None` where there is nothing to compare.
///
/// # Source
/// Pearson, K. (1900), Philosophical Magazine 50. The approximation is rough where fewer than five are expected in a
/// cell, and `rough` says so.
pub fn alike(groups: &[(usize, usize)]) -> Option<Alike> {
    let groups: Vec<(f64, f64)> =
        groups.iter().filter(|(_, of)| *of > 0).map(|(hits, of)| (*hits as f64, *of as f64)).collect();
    let (hits, all) = groups.iter().fold((0.0, 0.0), |sum, group| (sum.0 + group.0, sum.1 + group.1));
    let share = hits / all;
    if groups.len() < 2 || hits == 0.0 || hits == all {
        return None;
    }
    let mut square = 0.0;
    let mut rough = false;
    for (hits, of) in &groups {
        for (seen, expected) in [(*hits, of * share), (of - hits, of * (1.0 - share))] {
            square += (seen - expected) * (seen - expected) / expected;
            rough |= expected < 5.0;
        }
    }
    let freedom = groups.len() - 1;
    Some(Alike { square, freedom, probability: upper_gamma(freedom as f64 / 2.0, square / 2.0), rough })
}

/// A comparison of groups.
#[derive(Debug, Clone, Copy, PartialEq, serde::Serialize)]
pub struct Alike {
    /// Chi-square.
    pub square: f64,
    /// Degrees of freedom.
    pub freedom: usize,
    /// Probability of so large a value if all groups are alike.
    pub probability: f64,
    /// Whether too few were seen for the approximation to be good.
    pub rough: bool,
}

/// The regularised upper incomplete gamma function Q(a, x): by its series below x = a + 1, above by its continued
/// fraction (modified Lentz method).
///
/// # Source
/// Abramowitz, M. and Stegun, I. A. (1964), *Handbook of Mathematical Functions*, 6.5.29 and 6.5.31.
fn upper_gamma(a: f64, x: f64) -> f64 {
    if x <= 0.0 {
        return 1.0;
    }
    let front = libm::exp(a * libm::log(x) - x - libm::lgamma(a));
    if x < a + 1.0 {
        let (mut term, mut sum, mut step) = (1.0 / a, 1.0 / a, a);
        for _ in 0..10_000 {
            step += 1.0;
            term *= x / step;
            sum += term;
            if term < sum * 1e-16 {
                break;
            }
        }
        return (1.0 - front * sum).clamp(0.0, 1.0);
    }
    const TINY: f64 = 1e-300;
    let mut b = x + 1.0 - a;
    let (mut c, mut d) = (1.0 / TINY, 1.0 / b);
    let mut out = d;
    for step in 1..10_000 {
        let number = -f64::from(step) * (f64::from(step) - a);
        b += 2.0;
        let nonzero = |value: f64| if value.abs() < TINY { TINY } else { value };
        d = 1.0 / nonzero(number * d + b);
        c = nonzero(b + number / c);
        out *= d * c;
        if (d * c - 1.0).abs() < 1e-15 {
            break;
        }
    }
    (front * out).clamp(0.0, 1.0)
}

/// Ranks from 1, ties sharing the mean of theirs.
pub fn ranks(values: &[f64]) -> Vec<f64> {
    let mut order: Vec<usize> = (0..values.len()).collect();
    order.sort_by(|a, b| values[*a].total_cmp(&values[*b]));
    let mut out = vec![0.0; values.len()];
    let mut start = 0;
    while start < order.len() {
        let same = order[start..].iter().take_while(|place| values[**place] == values[order[start]]).count();
        let rank = start as f64 + (same as f64 + 1.0) / 2.0;
        order[start..start + same].iter().for_each(|place| out[*place] = rank);
        start += same;
    }
    out
}

/// Correlation of the ranks of two lists of one length.
///
/// # Source
/// Spearman, C. (1904), *The proof and measurement of association between two things*, American Journal of Psychology 15.
pub fn rank_correlation(a: &[f64], b: &[f64]) -> Option<f64> {
    correlation(&ranks(a).into_iter().zip(ranks(b)).collect::<Vec<_>>())
}

#[cfg(test)]
mod tests;
