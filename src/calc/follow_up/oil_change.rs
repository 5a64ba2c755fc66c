//! When the oil is changed: after so many running hours or so much time, whichever comes first.

use crate::Result;
use crate::error::{positive, within};
use crate::heat::rise::SUSTAINED_WORRY;
use crate::units::{Ratio, Temperature, Time, time::hour};
use core::marker::PhantomData;

#[cfg(any(doc, test))]
use crate::Error;

/// An interval that ends with the first of two clocks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Interval {
    /// Running time.
    pub running: Time,
    /// Calendar time.
    pub calendar: Time,
}

const HOUR: f64 = 3600.0;
const MONTH: f64 = 365.25 / 12.0 * 24.0 * HOUR;

const fn seconds(value: f64) -> Time {
    Time { dimension: PhantomData, units: PhantomData, value }
}

/// First change, which carries the wear of the run-in away: 500 running hours or four weeks.
///
/// # Source
/// Common practice, no source.
pub const FIRST: Interval = Interval { running: seconds(500.0 * HOUR), calendar: seconds(28.0 * 24.0 * HOUR) };

/// Usual change: 2500 running hours or six months.
///
/// # Source
/// US Army, TM 5-3895-374-24-2, lubrication of a gear unit.
pub const USUAL: Interval = Interval { running: seconds(2500.0 * HOUR), calendar: seconds(6.0 * MONTH) };

/// Shortest and longest calendar interval for a sump that stays over 200 °F (93 °C): one and three months.
///
/// # Source
/// US Army, TM 5-3895-374-24-2, p. 3-1280.
pub const HOT: (Time, Time) = (seconds(MONTH), seconds(3.0 * MONTH));

/// Interval after the first change, by the temperature at which the sump settles.
///
/// # Formula
/// [`USUAL`]; over 200 °F (93 °C) its calendar time is cut to three months ([`HOT`], the longer end).
///
/// # Source
/// As [`USUAL`] and [`HOT`].
///
/// # Errors
/// [`Error::OutOfRange`] unless the temperature is −50 to 250 °C.
///
/// # Example
/// ```
/// use drivecourse_calc::{follow_up::oil_change::{USUAL, interval}, units::*};
/// let warm = Temperature::new::<thermodynamic_temperature::degree_fahrenheit>(160.0);
/// assert_eq!(interval(warm)?, USUAL);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn interval(sump: Temperature) -> Result<Interval> {
    let t = within("sump temperature", sump.value, 223.15, 523.15)?;
    Ok(if t > SUSTAINED_WORRY.value { Interval { calendar: HOT.1, ..USUAL } } else { USUAL })
}

/// Calendar time from a change to the next, for a drive that runs a share of the time.
///
/// # Formula
/// `min(calendar, running / share)`
///
/// # Source
/// "Whichever comes first", as [`USUAL`].
///
/// # Errors
/// [`Error::OutOfRange`] unless the share is in (0, 1] and both times are greater than nought.
///
/// # Example
/// A drive that runs 16 h a day reaches 500 h after 31 days: the four weeks come first.
/// ```
/// use drivecourse_calc::{follow_up::oil_change::{FIRST, time_to_change}, units::*};
/// let due = time_to_change(&FIRST, Ratio::new::<ratio::ratio>(16.0 / 24.0))?;
/// approx::assert_abs_diff_eq!(due.get::<time::day>(), 28.0, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: running hours read as calendar hours.
pub fn time_to_change(interval: &Interval, running_share: Ratio) -> Result<Time> {
    let share = within("running share", running_share.value, f64::MIN_POSITIVE, 1.0)?;
    let running = positive("running time", interval.running.value)? / share;
    Ok(seconds(running.min(positive("calendar time", interval.calendar.value)?)))
}

/// Whether oil is due for its change.
///
/// # Formula
/// Running time or calendar time since the last change has reached the interval.
///
/// # Source
/// As [`USUAL`].
///
/// # Errors
/// [`Error::OutOfRange`] for a negative running time or one longer than the calendar time.
pub fn is_due(interval: &Interval, running: Time, calendar: Time) -> Result<bool> {
    let elapsed = within("calendar time", calendar.get::<hour>(), 0.0, f64::MAX)?;
    let run = within("running time", running.get::<hour>(), 0.0, elapsed)?;
    Ok(run >= interval.running.get::<hour>() || elapsed >= interval.calendar.get::<hour>())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{ratio::ratio, thermodynamic_temperature::degree_fahrenheit, time::day};
    use approx::assert_abs_diff_eq;

    fn after(interval: &Interval, share: f64) -> f64 {
        time_to_change(interval, Ratio::new::<ratio>(share)).unwrap().get::<day>()
    }
    fn days(value: f64) -> Time {
        Time::new::<day>(value)
    }

    #[test]
    fn whichever_comes_first() {
        // day and night: 500 h are 20.8 days; one shift: the four weeks come first
        assert_abs_diff_eq!(after(&FIRST, 1.0), 500.0 / 24.0, epsilon = 1e-9);
        assert_abs_diff_eq!(after(&FIRST, 1.0 / 3.0), 28.0, epsilon = 1e-9);
        // US Army, TM 5-3895-374-24-2: 2500 h or 6 months
        assert_abs_diff_eq!(after(&USUAL, 1.0), 2500.0 / 24.0, epsilon = 1e-9);
        assert_abs_diff_eq!(after(&USUAL, 0.25), 182.625, epsilon = 1e-9);
    }

    #[test]
    fn a_hot_sump_is_changed_sooner() {
        let at = |f: f64| interval(Temperature::new::<degree_fahrenheit>(f)).unwrap();
        assert_eq!(at(199.0), USUAL);
        assert_eq!(at(201.0).calendar, HOT.1);
        assert!(after(&at(220.0), 0.1) < after(&USUAL, 0.1));
    }

    #[test]
    fn due_by_either_clock() {
        assert_eq!(is_due(&FIRST, days(10.0), days(27.9)), Ok(false));
        assert_eq!(is_due(&FIRST, days(10.0), days(28.0)), Ok(true));
        assert_eq!(is_due(&FIRST, days(500.0 / 24.0), days(21.0)), Ok(true));
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(time_to_change(&FIRST, Ratio::new::<ratio>(0.0)).is_err());
        assert!(time_to_change(&FIRST, Ratio::new::<ratio>(1.01)).is_err());
        assert!(matches!(is_due(&FIRST, days(3.0), days(2.0)), Err(Error::OutOfRange { input: "running time", .. })));
        assert!(interval(Temperature::new::<degree_fahrenheit>(f64::NAN)).is_err());
    }
}
