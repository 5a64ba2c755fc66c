//! How sure it is that a skill sits, and when it should come back.
//!
//! **How sure.** The share of such questions that a person gets right is not known; the answers tell about it. Before
//! the first answer every share is as likely as any other; after them it follows a beta distribution with the right
//! answers plus one and the wrong answers plus one (A. Gelman et al., *Bayesian Data Analysis*, 3rd ed., section 2.1).
//! Old answers count less: half after [`HALF_LIFE`] days, a quarter after twice that (a power prior: J. G. Ibrahim and
//! M.-H. Chen, "Power prior distributions for regression models", *Statistical Science* 15 (2000), 46-60). A right answer
//! after a hint counts half. A skill *sits* when it is at least [`SITS`] likely that four of five are right.
//!
//! **When.** Boxes as S. Leitner describes (*So lernt man lernen*, 1972): a right answer without a hint, given when the
//! skill is due, moves it one box on; a wrong one moves it back to the first. Each box waits twice as long as the one
//! before: 1, 2, 4, 8, 16 and 32 days (the doubling is common practice, no source).

use crate::mark::{Mark, Verdict};

/// Days after which an answer counts half.
pub const HALF_LIFE: f64 = 30.0;
/// The share of right answers that is asked about.
pub const WANTED: f64 = 0.8;
/// How sure that share must be for a skill to sit.
pub const SITS: f64 = 0.8;
/// Days that the boxes wait.
const WAITS: [f64; 6] = [1.0, 2.0, 4.0, 8.0, 16.0, 32.0];

/// One answer to a question of a skill: the first one to a case, given before its solution was opened.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Answered {
    /// When, in days from any fixed day.
    pub at: f64,
    /// Whether it was right.
    pub right: bool,
    /// Whether a hint was opened before.
    pub hinted: bool,
}

/// Where a person stands with one skill.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Standing {
    /// The most likely middle of the share of right answers.
    pub share: f64,
    /// How sure it is that at least [`WANTED`] are right.
    pub sure: f64,
    /// When it should come back, in days from the same day; nothing before the first answer.
    pub due: Option<f64>,
}

/// Whether a first try at all parts of a question counts, and as what: a wrong part makes it wrong; it is right when
/// every part is; what is only begun, or cannot be read, does not count yet.
#[must_use]
pub fn counts(marks: &[Mark]) -> Option<bool> {
    let wrong = marks.iter().any(|mark| matches!(mark.verdict, Verdict::Wrong | Verdict::WrongUnit));
    let right = marks.iter().all(|mark| matches!(mark.verdict, Verdict::Right | Verdict::Carried));
    if wrong { Some(false) } else { right.then_some(true) }
}

/// What is best done with a skill now, the most pressing first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Turn {
    /// Its time has come.
    Due,
    /// It was begun and does not sit yet.
    Unsure,
    /// It was never asked.
    New,
    /// It sits, and its time is still to come.
    Later,
}

impl Standing {
    /// Where `answers`, in the order they were given, leave a person at `now`.
    #[must_use]
    pub fn of(answers: &[Answered], now: f64) -> Self {
        let (mut right, mut wrong) = (1.0, 1.0);
        let (mut level, mut due) = (0, None);
        for answer in answers {
            let age = (now - answer.at).max(0.0);
            let weight = libm::exp(-age / HALF_LIFE * core::f64::consts::LN_2);
            if answer.right {
                right += if answer.hinted { 0.5 * weight } else { weight };
            } else {
                wrong += weight;
            }
            let ripe = due.is_none_or(|due| answer.at >= due);
            match (answer.right, answer.hinted) {
                (false, _) => level = 0,
                (true, false) if ripe && due.is_some() => level = (level + 1).min(WAITS.len() - 1),
                (true, _) => {}
            }
            if ripe || !answer.right {
                due = Some(answer.at + WAITS[level]);
            }
        }
        Self { share: right / (right + wrong), sure: above(right, wrong, WANTED), due }
    }

    /// What is best done with it at `now`.
    #[must_use]
    pub fn turn(&self, now: f64) -> Turn {
        match self.due {
            None => Turn::New,
            Some(due) if due <= now => Turn::Due,
            Some(_) if self.sure < SITS => Turn::Unsure,
            Some(_) => Turn::Later,
        }
    }
}

/// The probability that a quantity with a beta distribution of `a` and `b` (both at least 1) lies above `x`, by
/// Simpson's rule on the density.
fn above(a: f64, b: f64, x: f64) -> f64 {
    // The density's height at its top, so that many answers do not make everything vanish.
    let top = if a + b > 2.0 { (a - 1.0) / (a + b - 2.0) } else { 0.5 };
    let log = |x: f64, power: f64| if power == 0.0 { 0.0 } else { power * libm::log(x) };
    let highest = log(top, a - 1.0) + log(1.0 - top, b - 1.0);
    let density = |x: f64| libm::exp(log(x, a - 1.0) + log(1.0 - x, b - 1.0) - highest);
    let area = |from: f64, to: f64| {
        const PARTS: u32 = 200;
        let step = (to - from) / f64::from(PARTS);
        let weighted = |place: u32| {
            let weight = if place == 0 || place == PARTS { 1.0 } else { f64::from(2 + 2 * (place % 2)) };
            weight * density(from + step * f64::from(place))
        };
        (0..=PARTS).map(weighted).sum::<f64>() * step / 3.0
    };
    let (below, above) = (area(0.0, x), area(x, 1.0));
    (above / (below + above)).clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn answers(rights: &[(f64, bool)]) -> Vec<Answered> {
        rights.iter().map(|(at, right)| Answered { at: *at, right: *right, hinted: false }).collect()
    }

    #[test]
    fn the_beta_distribution_is_summed_as_the_binomial_one() {
        // For whole numbers, what lies above x is a sum of the binomial distribution (DLMF 8.17.5).
        let binomial = |n: u32, k: u32, x: f64| -> f64 {
            let choose = (1..=k).fold(1.0, |c, i| c * f64::from(n - k + i) / f64::from(i));
            choose * libm::pow(x, f64::from(k)) * libm::pow(1.0 - x, f64::from(n - k))
        };
        for (a, b) in [(1, 1), (2, 1), (1, 4), (7, 2), (30, 9), (120, 35)] {
            let n = a + b - 1;
            let exact: f64 = (0..a).map(|k| binomial(n, k, WANTED)).sum();
            approx::assert_abs_diff_eq!(above(f64::from(a), f64::from(b), WANTED), exact, epsilon = 2e-5);
        }
    }

    #[test]
    fn seven_right_answers_sit_and_fade() {
        let seven = answers(&[(0.0, true); 7]);
        assert!(Standing::of(&seven[..6], 0.0).sure < SITS);
        let now = Standing::of(&seven, 0.0);
        approx::assert_abs_diff_eq!(now.sure, 1.0 - libm::pow(0.8, 8.0), epsilon = 1e-6);
        assert!(now.sure >= SITS && now.turn(0.5) == Turn::Later && now.turn(1.5) == Turn::Due);
        assert!(Standing::of(&seven, 60.0).sure < 0.6);
        assert_eq!(Standing::of(&[], 0.0).turn(0.0), Turn::New);
    }

    #[test]
    fn boxes_wait_twice_as_long_and_start_again() {
        let due = |list: &[(f64, bool)]| Standing::of(&answers(list), 0.0).due.unwrap();
        assert_eq!(due(&[(0.0, true)]), 1.0);
        assert_eq!(due(&[(0.0, true), (0.1, true)]), 1.0, "not before it is due");
        assert_eq!(due(&[(0.0, true), (1.0, true)]), 3.0);
        assert_eq!(due(&[(0.0, true), (1.0, true), (5.0, true)]), 9.0);
        assert_eq!(due(&[(0.0, true), (1.0, true), (5.0, true), (6.0, false)]), 7.0);
        let hinted =
            [Answered { at: 0.0, right: true, hinted: false }, Answered { at: 2.0, right: true, hinted: true }];
        assert_eq!(Standing::of(&hinted, 2.0).due, Some(3.0));
    }
}
