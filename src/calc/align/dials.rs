//! Dial readings round the clock: total readings, closure, bar sag.

use super::{distance, metres};
use crate::Result;
use crate::error::within;
use crate::units::Length;

#[cfg(any(doc, test))]
use crate::Error;

/// Four readings of one dial carried round a rim or face, seen from the movable machine towards the stationary one.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Clock {
    /// At 12 o'clock; nought when the dial is set there.
    pub top: Length,
    /// At 3 o'clock.
    pub right: Length,
    /// At 6 o'clock.
    pub bottom: Length,
    /// At 9 o'clock.
    pub left: Length,
}

impl Clock {
    /// Reading across the vertical plane: bottom less top.
    ///
    /// # Formula
    /// `TIR_v = bottom − top`
    ///
    /// # Source
    /// Common practice, no source.
    pub fn vertical(&self) -> Length {
        self.bottom - self.top
    }

    /// Reading across the horizontal plane: left less right, so that it bears to 3 o'clock as the vertical bears to up.
    ///
    /// # Formula
    /// `TIR_h = left − right`
    ///
    /// # Source
    /// Common practice, no source.
    pub fn horizontal(&self) -> Length {
        self.left - self.right
    }

    /// How far the four readings are from closing; it should be no more than a division or two of the dial.
    ///
    /// # Formula
    /// `(top + bottom) − (left + right)`
    ///
    /// # Source
    /// Geometry of a round rim; common practice, no source. Bar sag cancels: it gives twice its amount to each sum.
    pub fn closure(&self) -> Length {
        self.top + self.bottom - self.left - self.right
    }

    /// Rim readings as they would be with a bar that does not sag.
    ///
    /// The sag is how far the dial's end of the bar hangs down, positive; half of what [`bar_sag`] takes from the test bar.
    /// Sag of a face dial is small and left out.
    ///
    /// # Formula
    /// `bottom + 2 s`, `right + s`, `left + s`, top unchanged (set to nought there).
    ///
    /// # Source
    /// Geometry: a hanging dial is pushed in by s at the top and drops away by s at the bottom; common practice, no source.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] when the sag is negative or a reading is not sound.
    ///
    /// # Example
    /// Bottom +10 and sides +5 thousandths with a sag of 3 become +16 and +8:
    /// ```
    /// use drivecourse_calc::{align::dials::Clock, units::*};
    /// let mil = |value: f64| Length::new::<length::inch>(value / 1000.0);
    /// let read = Clock { top: mil(0.0), right: mil(5.0), bottom: mil(10.0), left: mil(5.0) };
    /// let true_readings = read.without_sag(mil(3.0))?;
    /// approx::assert_abs_diff_eq!(true_readings.bottom.value, mil(16.0).value, epsilon = 1e-12);
    /// approx::assert_abs_diff_eq!(true_readings.left.value, mil(8.0).value, epsilon = 1e-12);
    /// # Ok::<(), drivecourse_calc::Error>(())
    /// ```
    ///
    /// Trap: taking the sag away instead of adding it, or once instead of twice at the bottom.
    pub fn without_sag(&self, sag: Length) -> Result<Self> {
        let s = metres(within("bar sag", sag.value, 0.0, 0.1)?);
        for reading in [self.top, self.right, self.bottom, self.left] {
            distance("dial reading", reading)?;
        }
        Ok(Self { top: self.top, right: self.right + s, bottom: self.bottom + 2.0 * s, left: self.left + s })
    }
}

/// Sag of the bar from a trial on a stiff straight pipe: set to nought at the top, read at the bottom (negative).
///
/// # Formula
/// `s = −reading / 2`
///
/// # Source
/// Geometry, as [`Clock::without_sag`]; common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] when the reading is positive: the dial was set at the bottom, or it is not sag.
pub fn bar_sag(trial_bottom: Length) -> Result<Length> {
    Ok(metres(-0.5 * within("trial reading", trial_bottom.value, -0.2, 0.0)?))
}

/// Offset of two centre lines from a rim reading, as an amount.
///
/// # Formula
/// `offset = TIR / 2`
///
/// # Source
/// Geometry of a circle swept off centre; common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] when the reading is not sound.
///
/// Trap: the whole reading taken as the offset.
pub fn offset(tir: Length) -> Result<Length> {
    Ok(metres(0.5 * distance("rim reading", tir)?))
}

/// The two parts of a runout trial: how much of a gap belongs to the coupling and how much to the alignment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Parts {
    /// Part that turns with the shafts: runout of the hub.
    pub runout: Length,
    /// Part that stays: misalignment.
    pub misalignment: Length,
}

/// Tells runout from misalignment by turning both shafts half a turn together and measuring the same gap again.
///
/// # Formula
/// With the net gap (one side less the other) before g₁ and after g₂: misalignment `(g₁ + g₂)/2`, runout `(g₁ − g₂)/2`.
///
/// # Source
/// Geometry: runout turns with the shaft, misalignment does not; common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] when a gap is not sound.
pub fn runout_parts(before: Length, after: Length) -> Result<Parts> {
    let (g1, g2) = (distance("gap", before)?, distance("gap", after)?);
    Ok(Parts { runout: metres(0.5 * (g1 - g2)), misalignment: metres(0.5 * (g1 + g2)) })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::length::{inch, micrometer, millimeter};
    use approx::assert_abs_diff_eq;

    fn inches(value: f64) -> Length {
        Length::new::<inch>(value)
    }
    fn clock(top: f64, right: f64, bottom: f64, left: f64) -> Clock {
        let mil = |value: f64| inches(value / 1000.0);
        Clock { top: mil(top), right: mil(right), bottom: mil(bottom), left: mil(left) }
    }
    fn mils(value: Length) -> f64 {
        value.get::<inch>() * 1000.0
    }

    /// H. P. Bloch, F. K. Geitner (handbook, title not seen), p. 186: 0/+0.160 in with a sag of 0.004 in is +0.168 in;
    /// a pump handbook: bottom +10, sides +5, sag 3 mils: +16, +8, so 8 mils of offset.
    #[test]
    fn published_sag_corrections() {
        let corrected = clock(0.0, 80.0, 160.0, 80.0).without_sag(inches(0.004)).unwrap();
        assert_abs_diff_eq!(mils(corrected.vertical()), 168.0, epsilon = 1e-9);
        let corrected = clock(0.0, 5.0, 10.0, 5.0).without_sag(inches(0.003)).unwrap();
        assert_abs_diff_eq!(mils(corrected.bottom), 16.0, epsilon = 1e-9);
        assert_abs_diff_eq!(mils(corrected.right), 8.0, epsilon = 1e-9);
        assert_abs_diff_eq!(mils(offset(corrected.vertical()).unwrap()), 8.0, epsilon = 1e-9);
    }

    /// Published slides in 0.01 mm: bottom +12, trial −6: true reading +18, offset 0.09 mm.
    #[test]
    fn published_trial_reading() {
        let hundredths = |value: f64| Length::new::<micrometer>(10.0 * value);
        let sag = bar_sag(hundredths(-6.0)).unwrap();
        let read = Clock { bottom: hundredths(12.0), ..Clock::default() };
        let corrected = read.without_sag(sag).unwrap();
        assert_abs_diff_eq!(corrected.bottom.value, hundredths(18.0).value, epsilon = 1e-12);
        assert_abs_diff_eq!(offset(corrected.vertical()).unwrap().get::<millimeter>(), 0.09, epsilon = 1e-9);
    }

    #[test]
    fn closure_is_blind_to_sag_and_to_where_the_dial_was_set() {
        let read = clock(0.0, 5.0, 10.0, 5.0);
        assert_abs_diff_eq!(read.closure().value, 0.0, epsilon = 1e-15);
        assert_abs_diff_eq!(read.without_sag(inches(0.003)).unwrap().closure().value, 0.0, epsilon = 1e-15);
        let elsewhere = clock(7.0, 12.0, 17.0, 12.0);
        assert_abs_diff_eq!(elsewhere.closure().value, 0.0, epsilon = 1e-15);
        assert_abs_diff_eq!(elsewhere.vertical().value, read.vertical().value, epsilon = 1e-15);
        // a bumped bracket does not close
        assert_abs_diff_eq!(mils(clock(0.0, 5.0, 10.0, 8.0).closure()), -3.0, epsilon = 1e-9);
    }

    /// Common practice: gap moves side, runout only; stays, misalignment only; else the mean and half the difference.
    #[test]
    fn runout_trial() {
        for (before, after, runout, misalignment) in
            [(6.0, -6.0, 6.0, 0.0), (6.0, 6.0, 0.0, 6.0), (6.0, 4.0, 1.0, 5.0), (6.0, -2.0, 4.0, 2.0)]
        {
            let parts = runout_parts(inches(before), inches(after)).unwrap();
            assert_abs_diff_eq!(parts.runout.get::<inch>(), runout, epsilon = 1e-12);
            assert_abs_diff_eq!(parts.misalignment.get::<inch>(), misalignment, epsilon = 1e-12);
        }
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(matches!(bar_sag(inches(0.006)), Err(Error::OutOfRange { input: "trial reading", .. })));
        assert!(clock(0.0, 1.0, 2.0, 1.0).without_sag(inches(-0.001)).is_err());
        assert!(clock(0.0, f64::NAN, 2.0, 1.0).without_sag(inches(0.001)).is_err());
        assert!(offset(inches(f64::NAN)).is_err() && runout_parts(inches(0.0), inches(f64::INFINITY)).is_err());
    }
}
