//! Baseline from settled readings, alarm, trip, and what counts as a change.

use super::Measured;
use super::zone::Limits;
use crate::error::{positive, within};
use crate::{Error, Result};

/// Share of the B/C boundary that an alarm stands above the baseline, and beyond which a change is significant.
///
/// # Source
/// ISO 10816-3, clauses 5.3 and 5.4 (as quoted).
pub const SHARE: f64 = 0.25;

/// Most that an alarm may be, over the B/C boundary, and a trip, over the C/D boundary.
///
/// # Source
/// ISO 10816-3, clause 5.4 (as quoted).
pub const CAP: f64 = 1.25;

/// Fewest settled readings for a baseline (common practice, no source).
pub const FEWEST_SETTLED: usize = 3;

/// Alarm setting from the baseline.
///
/// # Formula
/// `alarm = baseline + 0.25 B/C`, at most `1.25 B/C`.
///
/// # Source
/// ISO 10816-3, clause 5.4 (as quoted). No standard gives an alarm as a multiple of the baseline.
///
/// # Errors
/// [`Error::OutOfRange`] for a baseline that is negative or not finite, or a boundary not greater than nought.
///
/// # Example
/// Baseline 0.8 mm/s, B/C 4.5 mm/s:
/// ```
/// use drivecourse_calc::{vibrate::{alarm::alarm, machine_limits::{Group, Support, limits}}, units::*};
/// let mm_s = Velocity::new::<velocity::millimeter_per_second>;
/// let limits = limits(Group::Two, Support::Flexible).velocity();
/// let set = alarm(mm_s(0.8), &limits)?;
/// approx::assert_abs_diff_eq!(set.get::<velocity::millimeter_per_second>(), 1.925, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the start-up reading taken as the baseline.
pub fn alarm<Q: Measured>(baseline: Q, limits: &Limits<Q>) -> Result<Q> {
    let base = within("baseline", baseline.si(), 0.0, f64::MAX)?;
    let b_c = positive("B/C limit", limits.b_c.si())?;
    Ok(Q::from_si((base + SHARE * b_c).min(CAP * b_c)))
}

/// Most that a trip may be set to.
///
/// # Formula
/// `trip ≤ 1.25 C/D`
///
/// # Source
/// ISO 10816-3, clause 5.4 (as quoted).
///
/// # Errors
/// [`Error::OutOfRange`] for a boundary not greater than nought.
pub fn highest_trip<Q: Measured>(limits: &Limits<Q>) -> Result<Q> {
    Ok(Q::from_si(CAP * positive("C/D limit", limits.c_d.si())?))
}

/// Whether a reading differs significantly from the baseline, up or down: a fall may be a loosened part just as a rise may.
///
/// # Formula
/// `|reading − baseline| > 0.25 B/C`
///
/// # Source
/// ISO 10816-3, clause 5.3 (as quoted).
///
/// # Errors
/// [`Error::OutOfRange`] for a value that is negative or not finite, or a boundary not greater than nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{vibrate::{alarm::is_significant, machine_limits::{Group, Support, limits}}, units::*};
/// let mm_s = Velocity::new::<velocity::millimeter_per_second>;
/// let limits = limits(Group::Two, Support::Rigid).velocity(); // 0.25 × 2.8 = 0.7 mm/s
/// assert!(is_significant(mm_s(1.3), mm_s(0.5), &limits)?);
/// assert!(!is_significant(mm_s(1.3), mm_s(1.9), &limits)?);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn is_significant<Q: Measured>(baseline: Q, reading: Q, limits: &Limits<Q>) -> Result<bool> {
    let base = within("baseline", baseline.si(), 0.0, f64::MAX)?;
    let now = within("reading", reading.si(), 0.0, f64::MAX)?;
    let band = SHARE * positive("B/C limit", limits.b_c.si())?;
    // a change of just the band must not pass it by its last bit
    Ok((now - base).abs() > band * (1.0 + 1e-12))
}

/// Place (from nought) of the first reading from which on all lie within a band of each other.
///
/// # Formula
/// The earliest i with `max(x_i …) − min(x_i …) ≤ band`.
///
/// # Source
/// Common practice, no source: a baseline is taken after run-in, at steady speed, load and temperature.
///
/// # Errors
/// [`Error::OutOfRange`] for a reading or band that is negative or not finite; [`Error::NotSettling`] when fewer than
/// [`FEWEST_SETTLED`] readings agree at the end.
pub fn settled_from<Q: Measured>(readings: &[Q], band: Q) -> Result<usize> {
    let band = within("band", band.si(), 0.0, f64::MAX)? * (1.0 + 1e-12);
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    for reading in readings {
        within("reading", reading.si(), 0.0, f64::MAX)?;
    }
    let agreeing = readings
        .iter()
        .rev()
        .take_while(|reading| {
            (low, high) = (low.min(reading.si()), high.max(reading.si()));
            high - low <= band
        })
        .count();
    if agreeing < FEWEST_SETTLED { Err(Error::NotSettling) } else { Ok(readings.len() - agreeing) }
}

/// Baseline: the mean of the readings after the machine has settled; those of the run-in before are left out.
///
/// # Formula
/// Mean of the readings from [`settled_from`] on.
///
/// # Source
/// As [`settled_from`].
///
/// # Errors
/// As [`settled_from`].
///
/// # Example
/// ```
/// use drivecourse_calc::{vibrate::alarm::baseline, units::*};
/// let mm_s = Velocity::new::<velocity::millimeter_per_second>;
/// let readings = [2.9, 1.9, 1.3, 1.2, 1.4, 1.3].map(mm_s);
/// let base = baseline(&readings, mm_s(0.3))?;
/// approx::assert_abs_diff_eq!(base.get::<velocity::millimeter_per_second>(), 1.3, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: the first reading after start; the mean of all readings, run-in and all.
pub fn baseline<Q: Measured>(readings: &[Q], band: Q) -> Result<Q> {
    let settled = &readings[settled_from(readings, band)?..];
    let sum: f64 = settled.iter().map(|reading| reading.si()).sum();
    Ok(Q::from_si(sum / settled.len() as f64))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{Velocity, velocity::millimeter_per_second};
    use crate::vibrate::machine_limits::{Group, Support, limits};
    use approx::assert_abs_diff_eq;

    fn mm_s(value: f64) -> Velocity {
        Velocity::new::<millimeter_per_second>(value)
    }
    fn of(value: Velocity) -> f64 {
        value.get::<millimeter_per_second>()
    }

    /// An engineering article that quotes ISO 10816-3: baseline 0.8, B/C 4.5: alarm 1.925 mm/s; and the cap, by its rule.
    #[test]
    fn published_alarm() {
        let limits = limits(Group::Two, Support::Flexible).velocity(); // B/C 4.5, C/D 7.1
        assert_abs_diff_eq!(of(alarm(mm_s(0.8), &limits).unwrap()), 1.925, epsilon = 5e-4);
        assert_abs_diff_eq!(of(alarm(mm_s(5.0), &limits).unwrap()), 5.625, epsilon = 1e-9);
        assert_abs_diff_eq!(of(highest_trip(&limits).unwrap()), 8.875, epsilon = 1e-9);
    }

    #[test]
    fn change_counts_both_ways_and_the_edge_is_not_past_it() {
        let limits = limits(Group::Two, Support::Rigid).velocity(); // 0.25 × 2.8 = 0.7
        for (reading, significant) in [(0.59, true), (0.6, false), (1.3, false), (2.0, false), (2.01, true)] {
            assert_eq!(is_significant(mm_s(1.3), mm_s(reading), &limits), Ok(significant), "{reading}");
        }
    }

    #[test]
    fn a_baseline_leaves_the_run_in_out() {
        let readings = [3.4, 2.2, 1.6, 1.2, 1.1, 1.3, 1.2].map(mm_s);
        assert_eq!(settled_from(&readings, mm_s(0.25)), Ok(3));
        assert_abs_diff_eq!(of(baseline(&readings, mm_s(0.25)).unwrap()), 1.2, epsilon = 1e-12);
        // steady from the first: all count
        let steady = [1.0, 1.1, 1.2].map(mm_s);
        assert_eq!(settled_from(&steady, mm_s(0.2)), Ok(0));
        assert_abs_diff_eq!(of(baseline(&steady, mm_s(0.2)).unwrap()), 1.1, epsilon = 1e-12);
    }

    #[test]
    fn nonsense_is_refused() {
        let rising = [1.0, 1.4, 1.9, 2.5].map(mm_s);
        assert_eq!(baseline(&rising, mm_s(0.3)), Err(Error::NotSettling));
        assert_eq!(baseline::<Velocity>(&[], mm_s(0.3)), Err(Error::NotSettling));
        assert_eq!(baseline(&[mm_s(1.0); 2], mm_s(0.3)), Err(Error::NotSettling));
        assert!(matches!(
            settled_from(&[mm_s(1.0), mm_s(-1.0), mm_s(1.0)], mm_s(0.1)),
            Err(Error::OutOfRange { input: "reading", .. })
        ));
        let limits = limits(Group::Two, Support::Rigid).velocity();
        assert!(alarm(mm_s(-0.1), &limits).is_err());
        assert!(is_significant(mm_s(1.0), mm_s(f64::NAN), &limits).is_err());
    }
}
