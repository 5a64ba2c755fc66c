//! The noise of the place taken out of a reading of the machine.

use super::Level;
use crate::Result;
use crate::error::within;
use crate::math;

#[cfg(any(doc, test))]
use crate::Error;

/// Difference above which the background counts for nothing, dB.
///
/// # Source
/// ISO 3744:2010, 8.2.3 (as quoted).
pub const NONE_ABOVE: f64 = 15.0;

/// Difference below which no correction is good enough, dB.
///
/// # Source
/// ISO 3744:2010, 8.2.3, engineering grade (from memory).
pub const BOUND_BELOW: f64 = 6.0;

/// Correction used below [`BOUND_BELOW`], dB.
///
/// # Source
/// ISO 3744:2010, 8.2.3 (from memory): the correction at 6 dB, 1.26 dB, rounded up.
pub const LARGEST: f64 = 1.3;

/// A level of the machine alone.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corrected {
    /// The level.
    pub level: Level,
    /// Correction taken off the reading, dB.
    pub correction: f64,
    /// Whether the level is only an upper bound, because the background was too close.
    pub upper_bound: bool,
}

/// Background correction by the formula alone, dB, for a reading that stands `difference` above the background.
///
/// # Formula
/// `K₁ = −10 lg (1 − 10^(−0.1 ΔL))`
///
/// # Source
/// ISO 3744:2010, 8.2.3 (as quoted).
///
/// # Errors
/// [`Error::OutOfRange`] unless the difference is above nought and at most 350 dB.
///
/// # Example
/// ```
/// use drivecourse_calc::noise::background::correction;
/// approx::assert_abs_diff_eq!(correction(10.0)?, 0.46, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn correction(difference_db: f64) -> Result<f64> {
    let d = within("difference of levels", difference_db, f64::MIN_POSITIVE, 350.0)?;
    // 1 − 10^(−d/10) without losing the digits of a small d
    Ok(-10.0 * math::log10(-math::expm1(-d * core::f64::consts::LN_10 / 10.0)))
}

/// Level of the source alone by the formula, whatever the difference: the inverse of adding two levels.
///
/// # Formula
/// `L = L_on − K₁(L_on − L_off)`
///
/// # Source
/// D. R. Raichel, *The Science and Applications of Acoustics*.
///
/// # Errors
/// [`Error::OutOfRange`] unless the level with the machine running is above the one without.
///
/// # Example
/// 93 dB running, 85 dB stopped: 92 dB.
/// ```
/// use drivecourse_calc::noise::{Level, background::source};
/// let alone = source(Level::db(93.0), Level::db(85.0))?;
/// approx::assert_abs_diff_eq!(alone.in_db(), 92.0, epsilon = 0.5);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: subtracting the decibels: 93 − 85 = 8.
pub fn source(running: Level, stopped: Level) -> Result<Level> {
    let (on, off) = (running.checked()?, stopped.checked()?);
    Ok(Level::db(on - correction(on - off)?))
}

/// Level of the machine alone, by the rules of the standard.
///
/// # Formula
/// `ΔL > 15 dB`: no correction; `6 dB ≤ ΔL ≤ 15 dB`: [`correction`]; `ΔL < 6 dB`: 1.3 dB, and the result is an upper bound.
///
/// # Source
/// ISO 3744:2010, 8.2.3, engineering grade (first part as quoted, the bound from memory).
///
/// # Errors
/// [`Error::OutOfRange`] when the machine reads less than the background, or a level is outside −100 to 250 dB.
///
/// # Example
/// ```
/// use drivecourse_calc::noise::{Level, background::machine_alone};
/// let close = machine_alone(Level::db(84.0), Level::db(80.0))?;
/// assert!(close.upper_bound);
/// approx::assert_abs_diff_eq!(close.level.in_db(), 82.7, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn machine_alone(running: Level, stopped: Level) -> Result<Corrected> {
    let (on, off) = (running.checked()?, stopped.checked()?);
    // 86.3 − 80.3 must be 6 dB and not a hair below
    let difference = within("difference of levels", ((on - off) * 1e9).round() / 1e9, 0.0, f64::MAX)?;
    let upper_bound = difference < BOUND_BELOW;
    let correction = if difference > NONE_ABOVE {
        0.0
    } else if upper_bound {
        LARGEST
    } else {
        correction(difference)?
    };
    Ok(Corrected { level: Level::db(on - correction), correction, upper_bound })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::noise::level::sum;
    use approx::assert_abs_diff_eq;

    #[test]
    fn published_corrections() {
        // ECMA TR/107 names 0,46 and 1,26 dB; that they belong to 10 and 6 dB follows from the formula of ISO 3744
        assert_abs_diff_eq!(correction(6.0).unwrap(), 1.26, epsilon = 0.005);
        assert_abs_diff_eq!(correction(10.0).unwrap(), 0.46, epsilon = 0.005);
        // D. R. Raichel, Example Problem 4, p. 51: 93 dB on, 85 dB off: 92 dB
        assert_abs_diff_eq!(source(Level::db(93.0), Level::db(85.0)).unwrap().in_db(), 92.0, epsilon = 0.5);
        // a decibel addition sheet (common practice): what to take off the total, differences 1 to 15 dB
        let printed = [6.9, 4.3, 3.0, 2.2, 1.7, 1.3, 1.0, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.2, 0.1];
        for (i, printed) in printed.into_iter().enumerate() {
            assert_abs_diff_eq!(correction(1.0 + i as f64).unwrap(), printed, epsilon = 0.05);
        }
    }

    #[test]
    fn rules_of_the_standard() {
        let rule = |difference: f64| machine_alone(Level::db(80.0 + difference), Level::db(80.0)).unwrap();
        // nought only above 15 dB: at 15 the formula still gives 0.140
        assert_abs_diff_eq!(rule(15.0).correction, 0.140, epsilon = 5e-4);
        assert_eq!(rule(15.1).correction, 0.0);
        assert!(!rule(6.0).upper_bound && rule(6.0).correction > 1.25);
        for tenths in 0..1000 {
            let off = f64::from(tenths) / 10.0;
            let on = f64::from(tenths + 60) / 10.0;
            assert!(!machine_alone(Level::db(on), Level::db(off)).unwrap().upper_bound, "{on} and {off} dB");
        }
        for close in [5.9, 3.0, 0.0] {
            assert!(rule(close).upper_bound);
            assert_eq!(rule(close).correction, 1.3);
        }
    }

    #[test]
    fn taking_out_undoes_adding() {
        for (machine, place) in [(88.0, 80.0), (80.0, 80.0), (70.0, 85.0)] {
            let both = sum(&[Level::db(machine), Level::db(place)]).unwrap();
            assert_abs_diff_eq!(source(both, Level::db(place)).unwrap().in_db(), machine, epsilon = 1e-9);
        }
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(matches!(correction(0.0), Err(Error::OutOfRange { input: "difference of levels", .. })));
        assert!(source(Level::db(80.0), Level::db(80.0)).is_err());
        assert!(machine_alone(Level::db(79.0), Level::db(80.0)).is_err());
        assert!(machine_alone(Level::db(f64::NAN), Level::db(80.0)).is_err());
    }
}
