//! A spectrum: the overall value of its lines, and which part a line belongs to.

use super::Measured;
use crate::error::{positive, within};
use crate::units::{Frequency, Ratio};
use crate::{Error, Result};

/// Overall r.m.s. value of lines at different frequencies.
///
/// # Formula
/// `v = √(Σ vᵢ²)`, every line r.m.s.
///
/// # Source
/// Mean square of a sum of sines: the products of sines of different frequencies have a mean of nought.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative line or one that is not finite; [`Error::NoSolution`] without any.
///
/// # Example
/// ```
/// use drivecourse_calc::{vibrate::spectrum::overall, units::*};
/// let mm_s = Velocity::new::<velocity::millimeter_per_second>;
/// let all = overall(&[mm_s(3.0), mm_s(4.0)])?;
/// approx::assert_abs_diff_eq!(all.get::<velocity::millimeter_per_second>(), 5.0, epsilon = 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the lines added as plain numbers.
pub fn overall<Q: Measured>(lines: &[Q]) -> Result<Q> {
    if lines.is_empty() {
        return Err(Error::none("overall value"));
    }
    let mut squares = 0.0;
    for line in lines {
        let v = within("line", line.si(), 0.0, f64::MAX.sqrt())?;
        squares += v * v;
    }
    Ok(Q::from_si(within("sum of squares", squares, 0.0, f64::MAX)?.sqrt()))
}

/// Which of the frequencies that the parts make a line belongs to: the nearest one within `band` of it, counted from 0.
///
/// # Formula
/// least `|f / fᵢ − 1|`, if it is at most the band.
///
/// # Source
/// Common practice, no source; see [`super::bearing::WATCHED_BAND`].
///
/// # Errors
/// [`Error::OutOfRange`] unless every frequency is greater than nought and the band is not negative.
///
/// # Example
/// ```
/// use drivecourse_calc::{vibrate::{bearing::WATCHED_BAND, spectrum::belongs_to}, units::*};
/// let hz = Frequency::new::<frequency::hertz>;
/// let parts = [hz(24.3), hz(48.6), hz(486.0)];
/// assert_eq!(belongs_to(hz(48.5), &parts, WATCHED_BAND)?, Some(1));
/// assert_eq!(belongs_to(hz(100.0), &parts, WATCHED_BAND)?, None);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn belongs_to(line: Frequency, parts: &[Frequency], band: Ratio) -> Result<Option<usize>> {
    let f = positive("frequency of the line", line.value)?;
    let band = within("band", band.value, 0.0, f64::MAX)?;
    let mut nearest: Option<(f64, usize)> = None;
    for (place, part) in parts.iter().enumerate() {
        let off = (f / positive("frequency of a part", part.value)? - 1.0).abs();
        if off <= band && nearest.is_none_or(|(least, _)| off < least) {
            nearest = Some((off, place));
        }
    }
    Ok(nearest.map(|(_, place)| place))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{Velocity, frequency::hertz, ratio::percent, velocity::millimeter_per_second};
    use approx::assert_relative_eq;

    fn mm_s(value: f64) -> Velocity {
        Velocity::new::<millimeter_per_second>(value)
    }

    fn hz(value: f64) -> Frequency {
        Frequency::new::<hertz>(value)
    }

    #[test]
    fn squares_add() {
        let all = overall(&[2.0, 3.0, 6.0].map(mm_s)).unwrap();
        assert_relative_eq!(all.get::<millimeter_per_second>(), 7.0, max_relative = 1e-12);
        assert_eq!(overall(&[mm_s(1.5), mm_s(0.0)]).unwrap(), mm_s(1.5));
        assert!(overall::<Velocity>(&[]).is_err());
        for bad in [-1.0, f64::NAN, f64::INFINITY] {
            assert!(overall(&[mm_s(bad)]).is_err(), "{bad}");
        }
    }

    #[test]
    fn the_nearest_part_within_the_band_has_the_line() {
        let parts = [28.4, 29.5, 59.0].map(hz);
        let band = Ratio::new::<percent>(3.0);
        assert_eq!(belongs_to(hz(28.9), &parts, band).unwrap(), Some(0));
        assert_eq!(belongs_to(hz(29.0), &parts, band).unwrap(), Some(1));
        assert_eq!(belongs_to(hz(58.0), &parts, band).unwrap(), Some(2));
        assert_eq!(belongs_to(hz(40.0), &parts, band).unwrap(), None);
        assert!(belongs_to(hz(0.0), &parts, band).is_err() && belongs_to(hz(1.0), &[hz(f64::NAN)], band).is_err());
    }
}
