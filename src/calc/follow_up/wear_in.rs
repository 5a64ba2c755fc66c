//! How a new chain stretches: fast while its pins and bushings bed in, then slowly and evenly.
//!
//! # Source
//! That a new chain stretches soonest in its first hours is common practice, no source; the curve is this project's own model.

use crate::error::{positive, within};
use crate::units::{Ratio, Time, ratio::ratio, time::second};
use crate::{Result, math};

#[cfg(any(doc, test))]
use crate::Error;

/// A chain's wear: bedding in and steady.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WearIn {
    /// Elongation that bedding in adds in the end.
    pub bedding: Ratio,
    /// Time constant of bedding in: after it 63 % of that is there.
    pub time_constant: Time,
    /// Elongation that steady wear adds in `steady_time`.
    pub steady: Ratio,
    /// Time in which steady wear adds `steady`.
    pub steady_time: Time,
}

impl WearIn {
    /// Elongation after a running time.
    ///
    /// # Formula
    /// `e(t) = e_b (1 − e^(−t/τ)) + e_s t / t_s`
    ///
    /// # Source
    /// This project's own model, no source.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a negative time or elongation, or a time constant or steady time not greater than nought.
    ///
    /// # Example
    /// ```
    /// use drivecourse_calc::{follow_up::wear_in::WearIn, units::*};
    /// let percent = Ratio::new::<ratio::percent>;
    /// let hours = Time::new::<time::hour>;
    /// let chain = WearIn { bedding: percent(0.1), time_constant: hours(20.0), steady: percent(3.0), steady_time: hours(15_000.0) };
    /// approx::assert_abs_diff_eq!(chain.elongation(hours(100.0))?.get::<ratio::percent>(), 0.119, epsilon = 0.0005);
    /// # Ok::<(), drivecourse_calc::Error>(())
    /// ```
    pub fn elongation(&self, running: Time) -> Result<Ratio> {
        let t = within("running time", running.value, 0.0, f64::MAX)?;
        let (bedding, tau, rate) = self.numbers()?;
        Ok(Ratio::new::<ratio>(rate * t - bedding * math::expm1(-t / tau)))
    }

    /// Running time until an elongation is reached.
    ///
    /// # Formula
    /// Root of `e(t) = e`, found by halving between nought and `e t_s / e_s`.
    ///
    /// # Source
    /// As [`WearIn::elongation`].
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a negative elongation, or without steady wear; [`Error::NoSolution`] when no time fits the numbers.
    pub fn time_to(&self, elongation: Ratio) -> Result<Time> {
        let e = within("elongation", elongation.value, 0.0, 1.0)?;
        let (bedding, tau, rate) = self.numbers()?;
        let latest = e / positive("steady wear", rate)?;
        let over = |t: f64| rate * t - bedding * math::expm1(-t / tau) - e;
        // without bedding the latest time is the answer, which rounding may put a hair below the elongation
        let end = latest * (1.0 + 1e-12);
        Ok(Time::new::<second>(math::root("running time", 0.0, end, over)?))
    }

    /// Bedding, time constant in seconds, steady wear for a second.
    fn numbers(&self) -> Result<(f64, f64, f64)> {
        let bedding = within("bedding", self.bedding.value, 0.0, 1.0)?;
        let steady = within("steady wear", self.steady.value, 0.0, 1.0)?;
        let tau = positive("time constant", self.time_constant.value)?;
        Ok((bedding, tau, steady / positive("steady time", self.steady_time.value)?))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{ratio::percent, time::hour};
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn chain() -> WearIn {
        WearIn {
            bedding: Ratio::new::<percent>(0.1),
            time_constant: Time::new::<hour>(20.0),
            steady: Ratio::new::<percent>(3.0),
            steady_time: Time::new::<hour>(15_000.0),
        }
    }
    fn at(hours: f64) -> f64 {
        chain().elongation(Time::new::<hour>(hours)).unwrap().get::<percent>()
    }

    #[test]
    fn it_starts_at_nought_fast_and_ends_even() {
        assert_eq!(at(0.0), 0.0);
        assert!(at(8.0) > at(108.0) - at(100.0));
        // long after bedding in: the line, raised by the bedding
        assert_abs_diff_eq!(at(5000.0), 0.1 + 1.0, epsilon = 1e-9);
        // after one time constant 63.2 % of the bedding
        assert_abs_diff_eq!(at(20.0), 0.0632 + 0.004, epsilon = 5e-5);
    }

    #[test]
    fn round_trip() {
        for hours in [0.0, 3.0, 40.0, 2000.0, 14_000.0] {
            let e = chain().elongation(Time::new::<hour>(hours)).unwrap();
            assert_relative_eq!(chain().time_to(e).unwrap().get::<hour>(), hours, max_relative = 1e-6);
        }
        let plain = WearIn { bedding: Ratio::default(), ..chain() };
        let t = plain.time_to(Ratio::new::<percent>(3.0)).unwrap();
        assert_relative_eq!(t.get::<hour>(), 15_000.0, max_relative = 1e-9);
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(chain().elongation(Time::new::<hour>(-1.0)).is_err());
        let still = WearIn { steady: Ratio::default(), ..chain() };
        assert!(matches!(
            still.time_to(Ratio::new::<percent>(1.0)),
            Err(Error::OutOfRange { input: "steady wear", .. })
        ));
        assert!(WearIn { time_constant: Time::default(), ..chain() }.elongation(Time::new::<hour>(1.0)).is_err());
        assert!(chain().time_to(Ratio::new::<percent>(-1.0)).is_err());
    }
}
