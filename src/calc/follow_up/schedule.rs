//! What is due next, from the age of the drive at the last check.

use super::check_ages::Check;
use crate::error::{positive, within};
use crate::units::{Ratio, Time, time::hour};
use crate::{Error, Result};

/// Most checks that [`expanding_ages`] lists.
pub const MOST_CHECKS: u32 = 1000;

/// Age at which a check falls due next, from the age at which it was last made (nought: not yet).
///
/// # Formula
/// The first age of the check's table after the last check; past its end, its last interval is repeated.
///
/// # Source
/// Common practice, no source: see [`check_ages`](super::check_ages).
///
/// # Errors
/// [`Error::OutOfRange`] for an age that is negative or over 100 years.
///
/// # Example
/// ```
/// use drivecourse_calc::{follow_up::{check_ages::Check, schedule::next_due}, units::{Time, time}};
/// let due = next_due(Check::ChainTension, Time::new::<time::hour>(9.0))?;
/// approx::assert_abs_diff_eq!(due.get::<time::day>(), 1.0, epsilon = 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn next_due(check: Check, last_check: Time) -> Result<Time> {
    let last = within("age", last_check.get::<hour>(), 0.0, 100.0 * 365.25 * 24.0)?;
    let ages = check.ages_in_hours();
    // a check made at just its age must not fall due at once through the last bit
    let done = last * (1.0 + 1e-12);
    let due = match (ages.iter().find(|&&age| age > done), ages) {
        (Some(&age), _) => age,
        (None, [.., before, end]) => {
            let step = end - before;
            end + step * (((done - end) / step).floor() + 1.0)
        }
        (None, _) => return Err(Error::none("next check")),
    };
    Ok(Time::new::<hour>(due))
}

/// Time left until a check is due; nought when it is overdue.
///
/// # Formula
/// `next due − age now`, at least nought.
///
/// # Source
/// As [`next_due`].
///
/// # Errors
/// [`Error::OutOfRange`] as [`next_due`], or when the drive is younger than at its last check.
pub fn time_left(check: Check, last_check: Time, now: Time) -> Result<Time> {
    within("age", now.value, last_check.value, f64::MAX)?;
    let left = next_due(check, last_check)?.value - now.value;
    Ok(Time::new::<crate::units::time::second>(left.max(0.0)))
}

/// Whether a check should have been made by now.
///
/// # Errors
/// As [`time_left`].
///
/// # Example
/// ```
/// use drivecourse_calc::{follow_up::{check_ages::Check, schedule::is_due}, units::{Time, time}};
/// let (start, shift) = (Time::new::<time::hour>(0.0), Time::new::<time::hour>(8.0));
/// assert!(is_due(Check::Bolts, start, shift)?);
/// assert!(!is_due(Check::SoftFoot, start, shift)?);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn is_due(check: Check, last_check: Time, now: Time) -> Result<bool> {
    Ok(time_left(check, last_check, now)?.value <= 0.0)
}

/// Ages of checks whose intervals grow by one factor.
///
/// # Formula
/// `t_k = t₁ (r^k − 1)/(r − 1)`: intervals t₁, t₁ r, t₁ r² ...; `k t₁` for r = 1.
///
/// # Source
/// Sum of a geometric series; growing intervals are common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] unless the first interval is greater than nought, the factor 1 to 10 and the count at most
/// [`MOST_CHECKS`]; also when an age is no longer finite.
///
/// # Example
/// From 8 h, doubling: 8, 24, 56 h.
/// ```
/// use drivecourse_calc::{follow_up::schedule::expanding_ages, units::*};
/// let first = Time::new::<time::hour>(8.0);
/// let ages = expanding_ages(first, Ratio::new::<ratio::ratio>(2.0), 3)?;
/// approx::assert_abs_diff_eq!(ages[2].get::<time::hour>(), 56.0, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the intervals read as ages.
pub fn expanding_ages(first: Time, factor: Ratio, count: u32) -> Result<Vec<Time>> {
    let mut interval = positive("first interval", first.value)?;
    let r = within("factor", factor.value, 1.0, 10.0)?;
    within("checks", f64::from(count), 0.0, f64::from(MOST_CHECKS))?;
    let mut age = 0.0;
    (0..count)
        .map(|_| {
            age = within("age", age + interval, 0.0, f64::MAX)?;
            interval *= r;
            Ok(Time::new::<crate::units::time::second>(age))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::ratio::ratio;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn h(value: f64) -> Time {
        Time::new::<hour>(value)
    }
    fn due(check: Check, last: f64) -> f64 {
        next_due(check, h(last)).unwrap().get::<hour>()
    }

    #[test]
    fn the_table_is_walked_from_end_to_end_and_on() {
        for check in Check::ALL {
            let mut age = 0.0;
            for &listed in check.ages_in_hours() {
                age = due(check, age);
                assert_abs_diff_eq!(age, listed, epsilon = 1e-9);
            }
            // beyond, the last interval repeats for ever
            let ages = check.ages_in_hours();
            let step = ages[ages.len() - 1] - ages[ages.len() - 2];
            for _ in 0..40 {
                let next = due(check, age);
                assert_relative_eq!(next - age, step, max_relative = 1e-9);
                age = next;
            }
        }
        // a late check does not shift the plan
        assert_abs_diff_eq!(due(Check::Bolts, 100.0), 168.0, epsilon = 1e-9);
    }

    #[test]
    fn due_or_not() {
        let left = |now: f64| time_left(Check::Bolts, h(8.0), h(now)).unwrap().get::<hour>();
        assert_abs_diff_eq!(left(60.0), 12.0, epsilon = 1e-9);
        assert_eq!(left(80.0), 0.0);
        assert_eq!(is_due(Check::Bolts, h(8.0), h(71.9)), Ok(false));
        assert_eq!(is_due(Check::Bolts, h(8.0), h(72.0)), Ok(true));
    }

    #[test]
    fn expanding_ages_are_the_series() {
        let ages = expanding_ages(h(4.0), Ratio::new::<ratio>(1.5), 8).unwrap();
        let mut power = 1.0;
        for age in &ages {
            power *= 1.5;
            assert_relative_eq!(age.get::<hour>(), 4.0 * (power - 1.0) / 0.5, max_relative = 1e-12);
        }
        let even = expanding_ages(h(24.0), Ratio::new::<ratio>(1.0), 3).unwrap();
        assert_abs_diff_eq!(even[2].get::<hour>(), 72.0, epsilon = 1e-9);
        assert_eq!(expanding_ages(h(1.0), Ratio::new::<ratio>(2.0), 0), Ok(vec![]));
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(matches!(next_due(Check::Noise, h(-1.0)), Err(Error::OutOfRange { input: "age", .. })));
        assert!(next_due(Check::Noise, h(f64::NAN)).is_err());
        assert!(time_left(Check::Noise, h(9.0), h(8.0)).is_err());
        assert!(expanding_ages(h(0.0), Ratio::new::<ratio>(2.0), 3).is_err());
        assert!(expanding_ages(h(1.0), Ratio::new::<ratio>(0.5), 3).is_err());
        assert!(expanding_ages(h(1.0), Ratio::new::<ratio>(10.0), 1000).is_err(), "no longer finite");
        assert!(expanding_ages(h(1.0), Ratio::new::<ratio>(2.0), 1001).is_err());
    }
}
