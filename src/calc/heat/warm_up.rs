//! Warm-up of a gear unit: the curve, the run-in peak, and where three readings say it will settle.

use super::rise::rise;
use crate::error::{positive, within};
use crate::units::{Temperature, TemperatureRise, Time, temperature_interval, time};
use crate::{Error, Result, math};
use core::f64::consts::E;
use core::marker::PhantomData;

/// How a unit warms up after a cold start at constant load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WarmUp {
    /// Ambient temperature, where the curve starts.
    pub ambient: Temperature,
    /// Rise over ambient at which the unit settles.
    pub settled_rise: TemperatureRise,
    /// Time constant τ: after it 63 % of the rise is there, after three of them 95 %.
    pub time_constant: Time,
    /// Extra warmth of the first hours, while seals and teeth bed in; it falls back by itself.
    pub run_in: Option<RunIn>,
}

/// Extra rise of a new unit: climbs to `height` at `at`, then dies away.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RunIn {
    /// Largest extra rise.
    pub height: TemperatureRise,
    /// Time after the start at which the extra rise is largest.
    pub at: Time,
}

/// The top of a warm-up curve that later falls back.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Peak {
    /// Time after the start.
    pub time: Time,
    /// Temperature reached.
    pub temperature: Temperature,
}

impl WarmUp {
    /// Temperature at `time` after the start.
    ///
    /// # Formula
    /// `T(t) = Tₐ + ΔT (1 − e^(−t/τ)) + A (t/τₚ) e^(1 − t/τₚ)`, the last term only with a run-in peak of height `A` at `τₚ`.
    ///
    /// # Source
    /// First-order heating of one thermal mass (Newton's law of cooling). The run-in term is this project's own model, no source:
    /// it starts at nought, is largest (`A`) at `τₚ`, and dies away, which is how a healthy new unit behaves.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a negative time or run-in height, or a time constant or peak time not greater than nought.
    ///
    /// # Example
    /// 60 K of rise from 20 °C with a time constant of an hour, read after half an hour:
    /// ```
    /// use drivecourse_calc::{heat::warm_up::WarmUp, units::*};
    /// use thermodynamic_temperature::degree_celsius;
    /// let unit = WarmUp {
    ///     ambient: Temperature::new::<degree_celsius>(20.0),
    ///     settled_rise: TemperatureRise::new::<temperature_interval::kelvin>(60.0),
    ///     time_constant: Time::new::<time::minute>(60.0),
    ///     run_in: None,
    /// };
    /// let reading = unit.at(Time::new::<time::minute>(30.0))?;
    /// approx::assert_abs_diff_eq!(reading.get::<degree_celsius>(), 43.6082, epsilon = 5e-5);
    /// # Ok::<(), drivecourse_calc::Error>(())
    /// ```
    ///
    /// Traps: a short early peak alone is no fault; stopping the readings before the curve is flat.
    pub fn at(&self, time: Time) -> Result<Temperature> {
        let t = within("time", time.value, 0.0, f64::MAX)?;
        let tau = positive("time constant", self.time_constant.value)?;
        let mut over_ambient = -self.settled_rise.value * math::expm1(-t / tau);
        if let Some((height, at)) = self.run_in_term()? {
            over_ambient += height * (t / at) * math::exp(1.0 - t / at);
        }
        Ok(self.ambient + kelvins(over_ambient))
    }

    /// Temperature at which the unit settles; a run-in peak does not change it.
    ///
    /// # Formula
    /// `T∞ = Tₐ + ΔT`
    ///
    /// # Source
    /// As [`WarmUp::at`].
    pub fn settled(&self) -> Temperature {
        super::rise::surface(self.ambient, self.settled_rise)
    }

    /// The early peak of the whole curve: the first time it stops climbing and turns back.
    ///
    /// # Formula
    /// First root of `dT/dt = (ΔT/τ) e^(−t/τ) + (A/τₚ)(1 − t/τₚ) e^(1 − t/τₚ)`, found by halving. Times `e^(t/τ)` it falls steadily
    /// from `τₚ` on, either without end or as far as `τₚ + 1/(1/τₚ − 1/τ)`: that brackets the root.
    ///
    /// # Source
    /// As [`WarmUp::at`].
    ///
    /// # Errors
    /// [`Error::OutOfRange`] as [`WarmUp::at`] and for a settled rise not greater than nought; [`Error::NoSolution`] when the run-in
    /// term is absent or too weak to turn the curve.
    pub fn early_peak(&self) -> Result<Peak> {
        let tau = positive("time constant", self.time_constant.value)?;
        let settled = positive("settled rise", self.settled_rise.value)?;
        let sought = "run-in peak";
        let Some((height, at)) = self.run_in_term()?.filter(|(height, _)| *height > 0.0) else {
            return Err(Error::none(sought));
        };
        let faster = 1.0 / at - 1.0 / tau;
        let slope = |t: f64| settled / tau + height * E / at * (1.0 - t / at) * math::exp(-t * faster);
        let latest = if faster > 0.0 {
            at + 1.0 / faster
        } else {
            // e^(−t·faster) is at least 1 here, so the second term outweighs the first from this time on
            at * (1.0 + settled * at / (tau * height * E))
        };
        let t = Time::new::<time::second>(math::root(sought, at, latest, slope)?);
        Ok(Peak { time: t, temperature: self.at(t)? })
    }

    /// Height in kelvins and time in seconds of the run-in term.
    fn run_in_term(&self) -> Result<Option<(f64, f64)>> {
        self.run_in
            .map(|run_in| {
                let height = within("run-in height", run_in.height.value, 0.0, f64::MAX)?;
                Ok((height, positive("run-in time", run_in.at.value)?))
            })
            .transpose()
    }
}

/// Temperature at which a unit will settle, from three readings equally spaced in time.
///
/// # Formula
/// `T∞ = (T₂² − T₁ T₃) / (2 T₂ − T₁ − T₃)`, computed as `T₃ + (T₃ − T₂)² / ((T₂ − T₁) − (T₃ − T₂))` so that nothing is lost.
///
/// # Source
/// Aitken's Δ² formula; exact for a first-order curve.
///
/// # Errors
/// [`Error::NotSettling`] unless both steps have one sign and the second is the smaller.
///
/// # Example
/// ```
/// use drivecourse_calc::{heat::warm_up::settled_from_three, units::*};
/// use thermodynamic_temperature::degree_celsius;
/// let readings = [20.0, 43.6082, 57.9272].map(Temperature::new::<degree_celsius>);
/// let settled = settled_from_three(readings)?;
/// approx::assert_abs_diff_eq!(settled.get::<degree_celsius>(), 80.0, epsilon = 1e-3);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Readings rounded to a degree need wide spacing: the rounding is multiplied the more, the less the steps differ. Traps: carrying
/// the last step on in a straight line; readings during a run-in peak.
pub fn settled_from_three(readings: [Temperature; 3]) -> Result<Temperature> {
    let (first, second) = settling_steps(readings)?;
    Ok(readings[2] + kelvins(aitken_remainder(first, second)))
}

/// Time constant of the warm-up, from three readings `interval` apart.
///
/// # Formula
/// `τ = Δt / ln((T₂ − T₁) / (T₃ − T₂))`
///
/// # Source
/// First-order curve, as [`WarmUp::at`].
///
/// # Errors
/// [`Error::NotSettling`] as [`settled_from_three`]; [`Error::OutOfRange`] for an interval not greater than nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{heat::warm_up::time_constant_from_three, units::*};
/// use thermodynamic_temperature::degree_celsius;
/// let readings = [20.0, 43.6082, 57.9272].map(Temperature::new::<degree_celsius>);
/// let tau = time_constant_from_three(readings, Time::new::<time::minute>(30.0))?;
/// approx::assert_abs_diff_eq!(tau.get::<time::minute>(), 60.0, epsilon = 1e-3);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn time_constant_from_three(readings: [Temperature; 3], interval: Time) -> Result<Time> {
    let (first, second) = settling_steps(readings)?;
    time_constant(kelvins(first), kelvins(second), interval)
}

/// Time constant of anything that dies away exponentially, from its size now and `interval` later: distances from the settled
/// temperature, or steps between readings.
///
/// # Formula
/// `τ = Δt / ln(g₁ / g₂)`
///
/// # Source
/// Newton's law of cooling.
///
/// # Errors
/// [`Error::NotSettling`] unless both have one sign and the later is the smaller; [`Error::OutOfRange`] for an interval not greater
/// than nought.
///
/// # Example
/// From 300 °F to 200 °F in 3 minutes in a kitchen at 70 °F: a rate of 0.190 18 per minute:
/// ```
/// use drivecourse_calc::{heat::warm_up::time_constant, units::*};
/// let gap = TemperatureRise::new::<temperature_interval::degree_fahrenheit>;
/// let tau = time_constant(gap(230.0), gap(130.0), Time::new::<time::minute>(3.0))?;
/// approx::assert_abs_diff_eq!(1.0 / tau.get::<time::minute>(), 0.19018, epsilon = 5e-6);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn time_constant(gap: TemperatureRise, later_gap: TemperatureRise, interval: Time) -> Result<Time> {
    let dt = positive("interval", interval.value)?;
    check_shrinking(gap.value, later_gap.value)?;
    Ok(seconds(dt / math::ln(gap.value / later_gap.value)))
}

/// Time from now until the temperature is within `margin` of where it settles.
///
/// # Formula
/// `t = τ ln(|T∞ − T| / margin)`; nought when it is there already.
///
/// # Source
/// Newton's law of cooling. It comes ever closer and never arrives: a margin must be named.
///
/// # Errors
/// [`Error::OutOfRange`] for a margin or time constant not greater than nought, or a distance that is not finite.
///
/// # Example
/// 230 °F away, rate 0.190 18 per minute, to within 1 °F:
/// ```
/// use drivecourse_calc::{heat::warm_up::time_to_within, units::*};
/// let gap = TemperatureRise::new::<temperature_interval::degree_fahrenheit>;
/// let tau = Time::new::<time::minute>(1.0 / 0.19018);
/// let wait = time_to_within(gap(230.0), gap(1.0), tau)?;
/// approx::assert_abs_diff_eq!(wait.get::<time::minute>(), 28.59, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn time_to_within(distance: TemperatureRise, margin: TemperatureRise, time_constant: Time) -> Result<Time> {
    let gap = within("distance from settled", distance.value, f64::MIN, f64::MAX)?.abs();
    let margin = positive("margin", margin.value)?;
    let tau = positive("time constant", time_constant.value)?;
    Ok(seconds(if gap <= margin { 0.0 } else { tau * math::ln(gap / margin) }))
}

/// Time between the readings that [`is_settled`] judges: 30 minutes.
pub const SETTLED_INTERVAL: Time = Time { dimension: PhantomData, units: PhantomData, value: 1800.0 };

/// Greatest change over the readings that [`is_settled`] passes: 2 K (3.6 °F).
pub const SETTLED_CHANGE: TemperatureRise = TemperatureRise { dimension: PhantomData, units: PhantomData, value: 2.0 };

/// Whether three successive readings, 30 minutes apart, show a settled temperature.
///
/// # Formula
/// Largest minus smallest at most 2 K (3.6 °F), and not still rising (`T₁ < T₂ < T₃`).
///
/// # Source
/// UL 1004-1, 2nd edition (2012), clause 32.2: written for motors, used here as a criterion only.
///
/// # Example
/// ```
/// use drivecourse_calc::{heat::warm_up::is_settled, units::*};
/// let celsius = Temperature::new::<thermodynamic_temperature::degree_celsius>;
/// assert!(is_settled([71.0, 72.0, 72.0].map(celsius)));
/// assert!(!is_settled([71.0, 72.0, 73.0].map(celsius))); // still rising
/// ```
pub fn is_settled(readings: [Temperature; 3]) -> bool {
    let [a, b, c] = readings;
    let steps = [rise(b, a).value, rise(c, b).value, rise(c, a).value];
    let still_rising = steps[0] > 0.0 && steps[1] > 0.0;
    // a reading of 2 K in degrees leaves a rounding crumb once it is in kelvins
    steps.iter().all(|step| step.abs() <= SETTLED_CHANGE.value + 1e-9) && !still_rising
}

/// The two steps between three readings, when they settle.
fn settling_steps([t1, t2, t3]: [Temperature; 3]) -> Result<(f64, f64)> {
    let (first, second) = (rise(t2, t1).value, rise(t3, t2).value);
    check_shrinking(first, second)?;
    Ok((first, second))
}

/// Passes two values of one sign, the later one the smaller (and neither nought nor NaN).
fn check_shrinking(first: f64, second: f64) -> Result<()> {
    let one_sign = (first > 0.0 && second > 0.0) || (first < 0.0 && second < 0.0);
    if one_sign && first.is_finite() && second.abs() < first.abs() { Ok(()) } else { Err(Error::NotSettling) }
}

/// What Aitken's formula adds to the last of three values with these two steps.
fn aitken_remainder(first: f64, second: f64) -> f64 {
    second * second / (first - second)
}

fn kelvins(value: f64) -> TemperatureRise {
    TemperatureRise::new::<temperature_interval::kelvin>(value)
}

fn seconds(value: f64) -> Time {
    Time::new::<time::second>(value)
}

#[cfg(test)]
mod tests;
