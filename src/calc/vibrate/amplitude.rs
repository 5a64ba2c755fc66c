//! Amplitudes of one sine: displacement, velocity and acceleration, peak, peak-to-peak and r.m.s.
//!
//! All of it holds for a single frequency only. An overall reading of many frequencies cannot be turned from one quantity or
//! detector into another.

use core::f64::consts::{FRAC_1_SQRT_2, TAU};

use super::Measured;
use crate::Result;
use crate::error::{positive, within};
use crate::units::{Acceleration, Frequency, Length, Velocity};

#[cfg(any(doc, test))]
use crate::Error;

/// What of the swing is named.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Detector {
    /// From the middle to one end.
    Peak,
    /// From end to end: usual for displacement.
    PeakToPeak,
    /// Root mean square: usual for velocity.
    Rms,
}

impl Detector {
    /// What this detector shows for a sine of peak 1: 1, 2 or 1/√2.
    pub const fn of_unit_peak(self) -> f64 {
        match self {
            Self::Peak => 1.0,
            Self::PeakToPeak => 2.0,
            Self::Rms => FRAC_1_SQRT_2,
        }
    }
}

/// An amplitude that knows its detector.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Amplitude<Q> {
    /// What the instrument shows.
    pub value: Q,
    /// Of which part of the swing.
    pub detector: Detector,
}

impl<Q: Measured> Amplitude<Q> {
    /// An amplitude named as peak.
    pub const fn peak(value: Q) -> Self {
        Self { value, detector: Detector::Peak }
    }

    /// An amplitude named as peak-to-peak.
    pub const fn peak_to_peak(value: Q) -> Self {
        Self { value, detector: Detector::PeakToPeak }
    }

    /// An amplitude named as r.m.s.
    pub const fn rms(value: Q) -> Self {
        Self { value, detector: Detector::Rms }
    }

    /// The same sine by another detector.
    ///
    /// # Formula
    /// r.m.s. = peak / √2 (0.707 peak, 0.354 peak-to-peak); peak-to-peak = 2 peak (2.828 r.m.s.).
    ///
    /// # Source
    /// Mean square of a sine.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for an amplitude that is negative or not finite.
    ///
    /// # Example
    /// ```
    /// use drivecourse_calc::{vibrate::amplitude::{Amplitude, Detector}, units::*};
    /// let swing = Amplitude::rms(Velocity::new::<velocity::millimeter_per_second>(2.8)).by(Detector::Peak)?;
    /// approx::assert_abs_diff_eq!(swing.value.get::<velocity::millimeter_per_second>(), 3.96, epsilon = 0.005);
    /// # Ok::<(), drivecourse_calc::Error>(())
    /// ```
    ///
    /// Trap: doubling an r.m.s. value for peak-to-peak.
    pub fn by(self, detector: Detector) -> Result<Self> {
        let value = size(self.value)?;
        let factor = detector.of_unit_peak() / self.detector.of_unit_peak();
        Ok(Self { value: Q::from_si(value * factor), detector })
    }
}

/// Velocity of a sine from its displacement, by the same detector.
///
/// # Formula
/// `v = 2π f d`
///
/// # Source
/// Derivative of a sine.
///
/// # Errors
/// [`Error::OutOfRange`] for an amplitude that is negative or not finite, or a frequency not greater than nought.
///
/// # Example
/// 2 mil peak-to-peak at 30 Hz: 0.1885 in/s peak.
/// ```
/// use drivecourse_calc::{vibrate::amplitude::{Amplitude, Detector, velocity_from_displacement}, units::*};
/// let displacement = Amplitude::peak_to_peak(Length::new::<length::mil>(2.0));
/// let velocity = velocity_from_displacement(displacement, Frequency::new::<frequency::hertz>(30.0))?;
/// let peak = velocity.by(Detector::Peak)?.value.get::<velocity::inch_per_second>();
/// approx::assert_abs_diff_eq!(peak, 0.18850, epsilon = 5e-6);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: the speed in rev/min for the frequency in Hz; a mil (thousandth of an inch) for a millimetre.
pub fn velocity_from_displacement(
    displacement: Amplitude<Length>,
    frequency: Frequency,
) -> Result<Amplitude<Velocity>> {
    scaled(displacement, omega(frequency)?)
}

/// Displacement of a sine from its velocity: the inverse of [`velocity_from_displacement`].
///
/// # Formula
/// `d = v / 2π f`
///
/// # Source
/// As [`velocity_from_displacement`].
///
/// # Errors
/// As [`velocity_from_displacement`].
pub fn displacement_from_velocity(velocity: Amplitude<Velocity>, frequency: Frequency) -> Result<Amplitude<Length>> {
    scaled(velocity, 1.0 / omega(frequency)?)
}

/// Acceleration of a sine from its velocity, by the same detector.
///
/// # Formula
/// `a = 2π f v`
///
/// # Source
/// As [`velocity_from_displacement`].
///
/// # Errors
/// As [`velocity_from_displacement`].
pub fn acceleration_from_velocity(
    velocity: Amplitude<Velocity>,
    frequency: Frequency,
) -> Result<Amplitude<Acceleration>> {
    scaled(velocity, omega(frequency)?)
}

/// Velocity of a sine from its acceleration: the inverse of [`acceleration_from_velocity`].
///
/// # Formula
/// `v = a / 2π f`
///
/// # Source
/// As [`velocity_from_displacement`].
///
/// # Errors
/// As [`velocity_from_displacement`].
pub fn velocity_from_acceleration(
    acceleration: Amplitude<Acceleration>,
    frequency: Frequency,
) -> Result<Amplitude<Velocity>> {
    scaled(acceleration, 1.0 / omega(frequency)?)
}

/// Acceleration of a sine from its displacement, by the same detector.
///
/// # Formula
/// `a = (2π f)² d`
///
/// # Source
/// As [`velocity_from_displacement`].
///
/// # Errors
/// As [`velocity_from_displacement`].
///
/// Trap: the frequency not squared.
pub fn acceleration_from_displacement(
    displacement: Amplitude<Length>,
    frequency: Frequency,
) -> Result<Amplitude<Acceleration>> {
    acceleration_from_velocity(velocity_from_displacement(displacement, frequency)?, frequency)
}

/// Displacement of a sine from its acceleration: the inverse of [`acceleration_from_displacement`].
///
/// # Formula
/// `d = a / (2π f)²`
///
/// # Source
/// As [`velocity_from_displacement`].
///
/// # Errors
/// As [`velocity_from_displacement`].
pub fn displacement_from_acceleration(
    acceleration: Amplitude<Acceleration>,
    frequency: Frequency,
) -> Result<Amplitude<Length>> {
    displacement_from_velocity(velocity_from_acceleration(acceleration, frequency)?, frequency)
}

fn omega(frequency: Frequency) -> Result<f64> {
    Ok(TAU * positive("frequency", frequency.value)?)
}

fn size<Q: Measured>(value: Q) -> Result<f64> {
    within("amplitude", value.si(), 0.0, f64::MAX)
}

fn scaled<P: Measured, Q: Measured>(amplitude: Amplitude<P>, factor: f64) -> Result<Amplitude<Q>> {
    Ok(Amplitude { value: Q::from_si(size(amplitude.value)? * factor), detector: amplitude.detector })
}

#[cfg(test)]
mod tests;
