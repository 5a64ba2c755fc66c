//! Trends: a fitted line or exponential, and the time left until it meets a limit.

use super::Measured;
use crate::error::{positive, within};
use crate::units::{Ratio, Time, time::second};
use crate::{Error, Result, math};
use core::marker::PhantomData;

/// A reading and when it was taken, on any clock (running hours, days since start).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dated<Q> {
    /// When.
    pub at: Time,
    /// What was read.
    pub value: Q,
}

/// How a quantity grows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shape {
    /// By equal amounts in equal times.
    Line,
    /// By equal shares in equal times: usual as a defect spreads.
    Exponential,
}

/// A trend through readings of one quantity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trend<Q> {
    quantity: PhantomData<Q>,
    shape: Shape,
    /// Mean time, s: the line turns round it, so no digits are lost far from time nought.
    middle: f64,
    /// Value there (its logarithm for an exponential), SI.
    level: f64,
    /// Growth of the same for a second.
    slope: f64,
}

/// The line or exponential that fits readings best.
///
/// # Formula
/// Line `y = a + b t` with `b = Σ(t − t̄)(y − ȳ) / Σ(t − t̄)²`, `a = ȳ − b t̄`. Exponential `y = A e^(b t)`: the same line through
/// `ln y`.
///
/// # Source
/// Least squares; checked against NIST Statistical Reference Datasets, Norris.
///
/// # Errors
/// [`Error::OutOfRange`] for fewer than two readings, a value that is not finite, or one not greater than nought under an
/// exponential; [`Error::NoSolution`] when all were taken at one time.
///
/// # Example
/// ```
/// use drivecourse_calc::{vibrate::trend::{Dated, Shape, fit}, units::*};
/// let mm_s = Velocity::new::<velocity::millimeter_per_second>;
/// let readings = [(0.0, 1.2), (7.0, 1.4), (14.0, 1.6)]
///     .map(|(days, value)| Dated { at: Time::new::<time::day>(days), value: mm_s(value) });
/// let trend = fit(&readings, Shape::Line)?;
/// let days = trend.time_to(mm_s(2.8), readings[2].at)?.get::<time::day>();
/// approx::assert_abs_diff_eq!(days, 42.0, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: a line through only the first and the last reading; readings of the run-in, which fall.
pub fn fit<Q: Measured>(readings: &[Dated<Q>], shape: Shape) -> Result<Trend<Q>> {
    let n = within("readings", readings.len() as f64, 2.0, f64::MAX)?;
    let mut points = Vec::with_capacity(readings.len());
    for reading in readings {
        let t = within("time", reading.at.value, f64::MIN, f64::MAX)?;
        let y = within("reading", reading.value.si(), f64::MIN, f64::MAX)?;
        points.push((t, scale(shape, "reading", y)?));
    }
    let middle = points.iter().map(|(t, _)| t).sum::<f64>() / n;
    let level = points.iter().map(|(_, y)| y).sum::<f64>() / n;
    let spread: f64 = points.iter().map(|(t, _)| (t - middle) * (t - middle)).sum();
    let product: f64 = points.iter().map(|(t, y)| (t - middle) * (y - level)).sum();
    if spread > 0.0 && spread.is_finite() {
        Ok(Trend { quantity: PhantomData, shape, middle, level, slope: product / spread })
    } else {
        Err(Error::none("trend"))
    }
}

impl<Q: Measured> Trend<Q> {
    /// Whether it grows at all.
    pub fn is_rising(&self) -> bool {
        self.slope > 0.0
    }

    /// Value of the trend at a time.
    ///
    /// # Formula
    /// `a + b t`, or `A e^(b t)`.
    ///
    /// # Source
    /// As [`fit`].
    pub fn at(&self, time: Time) -> Q {
        let y = self.level + self.slope * (time.value - self.middle);
        Q::from_si(match self.shape {
            Shape::Line => y,
            Shape::Exponential => math::exp(y),
        })
    }

    /// Time from `now` until the trend meets a limit; nought when it is there already.
    ///
    /// # Formula
    /// `(limit − a)/b − now` for a line, `ln(limit/A)/b − now` for an exponential.
    ///
    /// # Source
    /// As [`fit`]. An estimate: the further it reaches beyond the readings, the less it is worth.
    ///
    /// # Errors
    /// [`Error::NoSolution`] when the trend is level or falling; [`Error::OutOfRange`] for a time or limit that is not finite, or a
    /// limit not greater than nought under an exponential.
    ///
    /// Trap: counted from the first reading instead of from now.
    pub fn time_to(&self, limit: Q, now: Time) -> Result<Time> {
        let now = within("time", now.value, f64::MIN, f64::MAX)?;
        let y = scale(self.shape, "limit", within("limit", limit.si(), f64::MIN, f64::MAX)?)?;
        if !self.is_rising() {
            return Err(Error::none("time to the limit"));
        }
        let left = self.middle - now + (y - self.level) / self.slope;
        Ok(Time::new::<second>(left.max(0.0)))
    }

    /// Time in which an exponential doubles.
    ///
    /// # Formula
    /// `ln 2 / b`
    ///
    /// # Source
    /// As [`fit`].
    ///
    /// # Errors
    /// [`Error::NoSolution`] for a line, or when it is level or falling.
    pub fn doubling_time(&self) -> Result<Time> {
        if self.shape == Shape::Exponential && self.is_rising() {
            Ok(Time::new::<second>(core::f64::consts::LN_2 / self.slope))
        } else {
            Err(Error::none("doubling time"))
        }
    }
}

/// What the line is fitted to: the value, or its logarithm.
/// Value on the way from a settled level to the one now, growing by equal shares in equal times.
///
/// # Formula
/// `v(t) = v₀ (v₁ / v₀)^(t / T)`, v₁ the value at the time T.
///
/// # Source
/// Exponential growth through two points.
///
/// # Errors
/// [`Error::OutOfRange`] unless both values and the part of the time are greater than nought or it lies beyond a thousand.
pub fn on_the_way<Q: Measured>(settled: Q, now: Q, part: Ratio) -> Result<Q> {
    let (from, to) = (positive("settled value", settled.si())?, positive("value now", now.si())?);
    let part = within("part of the time", part.value, 0.0, 1000.0)?;
    Ok(Q::from_si(from * math::pow(to / from, part)))
}

fn scale(shape: Shape, input: &'static str, value: f64) -> Result<f64> {
    match shape {
        Shape::Line => Ok(value),
        Shape::Exponential => Ok(math::ln(positive(input, value)?)),
    }
}

#[cfg(test)]
mod tests;
