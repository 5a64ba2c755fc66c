//! Tightening order: crosswise and in stages.

use super::{newton_metres, ratio_of};
use crate::Result;
use crate::error::{positive, within};
use crate::units::{Ratio, Torque};

#[cfg(any(doc, test))]
use crate::Error;

/// Fewest and most bolts of a pattern.
const FEWEST: usize = 3;
const MOST: usize = 200;

/// A crosswise order for bolts numbered 1 to n round a circle.
///
/// # Formula
/// Even n: bolts go in opposite pairs; each new pair starts at the bolt farthest from all tight ones, then from the last
/// one. Odd n: each next bolt lies half a circle on, as near as the count allows.
///
/// # Source
/// Common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] unless n is 3 to 200.
///
/// # Example
/// ```
/// use drivecourse_calc::fasten::order::star;
/// assert_eq!(star(4)?, [1, 3, 2, 4]);
/// assert_eq!(star(8)?, [1, 5, 3, 7, 2, 6, 4, 8]);
/// assert_eq!(star(5)?, [1, 3, 5, 2, 4]);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: going round in a circle; it cocks the hub or the base and loosens the first bolt.
pub fn star(bolts: usize) -> Result<Vec<usize>> {
    let n = count(bolts)?;
    if n % 2 == 1 {
        // (n − 1)/2 and n share no factor, so every bolt is met once.
        return Ok((0..n).map(|i| i * (n / 2) % n + 1).collect());
    }
    let mut order = vec![0, n / 2];
    let mut tight = vec![false; n];
    (tight[0], tight[n / 2]) = (true, true);
    while order.len() < n {
        let last = order[order.len() - 1];
        let room = |place: usize| {
            let nearest = (0..n).filter(|&i| tight[i]).map(|i| apart(n, i, place)).min().unwrap_or(n);
            (nearest, apart(n, last, place))
        };
        // the first of the best: `max_by_key` would take the last
        let next = (0..n).filter(|&i| !tight[i]).rev().max_by_key(|&i| room(i));
        let Some(next) = next else { break };
        for bolt in [next, (next + n / 2) % n] {
            tight[bolt] = true;
            order.push(bolt);
        }
    }
    Ok(order.into_iter().map(|bolt| bolt + 1).collect())
}

/// Shares of the final torque for the usual rounds: about a third, two thirds, all of it, and once more in a circle.
///
/// # Source
/// Common practice, no source.
pub const USUAL_ROUNDS: [Ratio; 4] = [ratio_of(0.3), ratio_of(0.7), ratio_of(1.0), ratio_of(1.0)];

/// One step of a plan: this bolt to this torque.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// Round, counted from 1.
    pub round: usize,
    /// Bolt number.
    pub bolt: usize,
    /// Torque to set the wrench to.
    pub torque: Torque,
}

/// Every step of tightening in rounds: each round in the crosswise order, the last one (when it repeats the full torque)
/// round the circle as a check.
///
/// # Formula
/// `T_r = f_r T`, with f_r the share of round r.
///
/// # Source
/// Common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] unless the order is not empty, the torque is greater than nought, and the shares (1 to 10 of
/// them) rise, each above 0 and at most 1, and end with 1.
pub fn rounds(order: &[usize], target: Torque, shares: &[Ratio]) -> Result<Vec<Step>> {
    count(order.len())?;
    let t = positive("torque", target.value)?;
    within("number of rounds", shares.len() as f64, 1.0, 10.0)?;
    let mut least = f64::MIN_POSITIVE;
    for (i, share) in shares.iter().enumerate() {
        // the last round must reach the whole torque
        least = if i + 1 == shares.len() { 1.0 } else { least };
        least = within("share of the torque", share.value, least, 1.0)?;
    }
    let mut round_the_circle = order.to_vec();
    round_the_circle.sort_unstable();
    let last = shares.len() - 1;
    let repeats = last > 0 && shares[last - 1].value == shares[last].value;
    let mut steps = Vec::with_capacity(order.len() * shares.len());
    for (i, share) in shares.iter().enumerate() {
        let bolts = if i == last && repeats { &round_the_circle } else { order };
        steps.extend(bolts.iter().map(|&bolt| Step { round: i + 1, bolt, torque: newton_metres(share.value * t) }));
    }
    Ok(steps)
}

/// Steps round a circle of n between two places, the shorter way.
fn apart(n: usize, a: usize, b: usize) -> usize {
    let way = a.abs_diff(b);
    way.min(n - way)
}

fn count(bolts: usize) -> Result<usize> {
    within("number of bolts", bolts as f64, FEWEST as f64, MOST as f64)?;
    Ok(bolts)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fasten::plain;
    use crate::units::torque::pound_force_foot;
    use approx::assert_relative_eq;

    /// Even n: the bolts at places 1 and 2, 3 and 4, ... are opposite each other, and from six bolts on no pair begins
    /// beside the bolt just tightened. Odd n: each next bolt is one of the two nearest to opposite.
    #[test]
    fn every_star_goes_across() {
        for n in FEWEST..=MOST {
            let order = star(n).unwrap();
            let mut sorted = order.clone();
            sorted.sort_unstable();
            assert!(sorted.into_iter().eq(1..=n), "every bolt once: {order:?}");
            for (i, pair) in order.windows(2).enumerate() {
                let far = apart(n, pair[0], pair[1]);
                let across = n % 2 == 1 || i % 2 == 0;
                assert!(!across || far == n / 2, "{n} bolts, place {}: {order:?}", i + 2);
                assert!(n < 6 || far >= 2, "{n} bolts, place {}: {order:?}", i + 2);
            }
        }
        assert_eq!(star(6).unwrap(), [1, 4, 2, 5, 3, 6]);
        // by hand: quarters first
        assert_eq!(star(12).unwrap()[..4], [1, 7, 4, 10]);
        assert_eq!(star(16).unwrap()[..8], [1, 9, 5, 13, 3, 11, 7, 15]);
    }

    #[test]
    fn stages_rise_to_the_whole_torque() {
        let target = Torque::new::<pound_force_foot>(100.0);
        let order = star(4).unwrap();
        let steps = rounds(&order, target, &USUAL_ROUNDS).unwrap();
        assert_eq!(steps.len(), 16);
        for (i, step) in steps.iter().enumerate() {
            assert_eq!(step.round, i / 4 + 1);
            let share = [30.0, 70.0, 100.0, 100.0][i / 4];
            assert_relative_eq!(step.torque.get::<pound_force_foot>(), share, max_relative = 1e-12);
        }
        let bolts = |round| steps.iter().filter(|s| s.round == round).map(|s| s.bolt).collect::<Vec<_>>();
        assert_eq!((bolts(1), bolts(4)), (order.clone(), vec![1, 2, 3, 4]));
        assert_eq!(rounds(&order, target, &[plain(1.0)]).unwrap().len(), 4);
    }

    #[test]
    fn nonsense_is_refused() {
        let target = Torque::new::<pound_force_foot>(100.0);
        for shares in [&[][..], &[0.5], &[0.7, 0.3, 1.0], &[0.0, 1.0], &[f64::NAN, 1.0], &[0.5, 1.2]] {
            let shares: Vec<_> = shares.iter().copied().map(plain).collect();
            assert!(matches!(rounds(&[1, 3, 2, 4], target, &shares), Err(Error::OutOfRange { .. })));
        }
        assert!(rounds(&[], target, &[plain(1.0)]).is_err());
        assert!(matches!(star(2), Err(Error::OutOfRange { input: "number of bolts", .. })));
        assert!(star(201).is_err());
    }
}
