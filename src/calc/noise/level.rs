//! Levels in decibels: they add as energies, not as numbers.

use crate::error::{positive, within};
use crate::units::Ratio;
use crate::{Error, Result, math};

/// A sound level. The weighting (A for ears) is that of the instrument, and the same in everything added together.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Level(f64);

impl Level {
    /// A level from its number of decibels.
    pub const fn db(decibels: f64) -> Self {
        Self(decibels)
    }

    /// Its number of decibels.
    pub const fn in_db(self) -> f64 {
        self.0
    }

    /// Its number of decibels, refused outside −100 to 250 dB: nothing on a shop floor lies there.
    pub(super) fn checked(self) -> Result<f64> {
        within("sound level", self.0, -100.0, 250.0)
    }
}

/// Level of sources that sound together.
///
/// # Formula
/// `L = 10 lg Σ 10^(Lᵢ/10)`
///
/// # Source
/// Sum of energies of independent sources; D. R. Raichel, *The Science and Applications of Acoustics*.
///
/// # Errors
/// [`Error::OutOfRange`] for a level outside −100 to 250 dB; [`Error::NoSolution`] without any.
///
/// # Example
/// ```
/// use drivecourse_calc::noise::level::{Level, sum};
/// let both = sum(&[Level::db(90.0), Level::db(90.0)])?;
/// approx::assert_abs_diff_eq!(both.in_db(), 93.0, epsilon = 0.05);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: adding the decibels: 90 and 90 are 93, not 180.
pub fn sum(levels: &[Level]) -> Result<Level> {
    added(levels, 1.0)
}

/// Mean level of readings: of places round a machine, or of equal times.
///
/// # Formula
/// `L = 10 lg (Σ 10^(Lᵢ/10) / n)`
///
/// # Source
/// Mean of energies.
///
/// # Errors
/// As [`sum`].
///
/// # Example
/// ```
/// use drivecourse_calc::noise::level::{Level, mean};
/// let mean = mean(&[96.0, 100.0, 90.0, 97.0].map(Level::db))?;
/// approx::assert_abs_diff_eq!(mean.in_db(), 97.0, epsilon = 0.5);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the mean of the numbers, which is too low.
pub fn mean(levels: &[Level]) -> Result<Level> {
    added(levels, levels.len() as f64)
}

/// Level of `count` equal sources together.
///
/// # Formula
/// `L = L₁ + 10 lg n`
///
/// # Source
/// As [`sum`].
///
/// # Errors
/// [`Error::OutOfRange`] for a level outside −100 to 250 dB or no source at all.
pub fn equal_sources(one: Level, count: u32) -> Result<Level> {
    let n = within("sources", f64::from(count), 1.0, f64::MAX)?;
    Ok(Level(one.checked()? + 10.0 * math::log10(n)))
}

/// Level of a machine that vibrates `times` as strongly as when it had `level`.
///
/// # Formula
/// `L = L₀ + 20 lg r`
///
/// # Source
/// Derived: radiated sound energy goes with the square of the surface's velocity, so twice the vibration is 6 dB.
///
/// # Errors
/// [`Error::OutOfRange`] for a level outside −100 to 250 dB, or a ratio not greater than nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{noise::level::{Level, shaken}, units::*};
/// let louder = shaken(Level::db(80.0), Ratio::new::<ratio::ratio>(2.0))?;
/// approx::assert_abs_diff_eq!(louder.in_db(), 86.02, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn shaken(level: Level, times: Ratio) -> Result<Level> {
    Ok(Level(level.checked()? + 20.0 * math::log10(positive("ratio of the vibration", times.value)?)))
}

/// Energy sum over `parts`, as a level. Taken from the loudest, so that nothing overflows.
fn added(levels: &[Level], parts: f64) -> Result<Level> {
    let mut loudest = f64::NEG_INFINITY;
    for level in levels {
        loudest = loudest.max(level.checked()?);
    }
    if levels.is_empty() {
        return Err(Error::none("level"));
    }
    let energy: f64 = levels.iter().map(|level| math::pow(10.0, (level.0 - loudest) / 10.0)).sum();
    Ok(Level(loudest + 10.0 * math::log10(energy / parts)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq;

    fn total(levels: &[f64]) -> f64 {
        sum(&levels.iter().map(|&db| Level::db(db)).collect::<Vec<_>>()).unwrap().in_db()
    }

    /// Worked sums in circulation (common practice), each to half its last printed place.
    #[test]
    fn published_sums() {
        for (levels, printed, half) in [
            (&[62.0, 73.0][..], 73.3, 0.05),
            (&[90.0, 90.0], 93.0, 0.5),
            (&[80.0, 80.0], 83.0, 0.5),
            (&[84.0, 79.0], 85.2, 0.05),
            (&[90.0, 95.0, 88.0], 96.8, 0.05),
            (&[75.0, 80.0], 81.2, 0.05),
        ] {
            assert_abs_diff_eq!(total(levels), printed, epsilon = half);
        }
        // the mean of four is printed as 97
        let mean = mean(&[96.0, 100.0, 90.0, 97.0].map(Level::db)).unwrap();
        assert_abs_diff_eq!(mean.in_db(), 97.0, epsilon = 0.5);
    }

    /// A decibel addition sheet (common practice): what to add to the higher for a difference of 0 to 15 dB.
    #[test]
    fn published_addition_table() {
        let printed = [3.0, 2.5, 2.1, 1.8, 1.5, 1.2, 1.0, 0.8, 0.6, 0.5, 0.4, 0.3, 0.3, 0.2, 0.2, 0.1];
        for (d, printed) in printed.into_iter().enumerate() {
            let d = d as f64;
            assert_abs_diff_eq!(total(&[70.0, 70.0 - d]), 70.0 + printed, epsilon = 0.05);
        }
    }

    #[test]
    fn identities() {
        assert_abs_diff_eq!(total(&[71.3]), 71.3, epsilon = 1e-12);
        assert_abs_diff_eq!(total(&[total(&[80.0, 75.0]), 70.0]), total(&[70.0, 80.0, 75.0]), epsilon = 1e-12);
        let four = equal_sources(Level::db(80.0), 4).unwrap().in_db();
        assert_abs_diff_eq!(four, total(&[80.0; 4]), epsilon = 1e-12);
        assert_abs_diff_eq!(four, 86.02, epsilon = 0.005);
        assert_abs_diff_eq!(mean(&[Level::db(80.0); 7]).unwrap().in_db(), 80.0, epsilon = 1e-12);
    }

    #[test]
    fn nonsense_is_refused() {
        assert_eq!(sum(&[]), Err(Error::none("level")));
        assert!(mean(&[]).is_err());
        assert!(matches!(sum(&[Level::db(f64::NAN)]), Err(Error::OutOfRange { input: "sound level", .. })));
        assert!(sum(&[Level::db(400.0)]).is_err() && equal_sources(Level::db(80.0), 0).is_err());
    }
}
