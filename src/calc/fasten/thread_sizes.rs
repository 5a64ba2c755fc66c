//! Threads of base bolts and screws: UNC, UNF, metric coarse.
//!
//! # Source
//! Unified: R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Table 8-2 (from ANSI B1.1-1974);
//! 1⅛ and 1⅜ in from other copies of the same standard. Metric coarse pitches: ISO 261 (from memory).
//!
//! Areas are computed, not tabled; the printed ones are in the tests.

use super::thread::{Form, stress_area};
use super::{inches, millimetres};
use crate::Result;
use crate::units::{Area, Length};

/// Series of threads.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Series {
    /// Unified coarse.
    Unc,
    /// Unified fine.
    Unf,
    /// ISO metric coarse.
    MetricCoarse,
}

/// One thread.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Thread {
    /// Written size (`"3/4-10"`, `"M20"`).
    pub designation: &'static str,
    /// Series it belongs to.
    pub series: Series,
    /// Nominal (major) diameter.
    pub diameter: Length,
    /// Pitch.
    pub pitch: Length,
}

impl Thread {
    /// Tensile stress area, by [`stress_area`].
    ///
    /// # Errors
    /// None for the threads of [`ALL`].
    pub fn stress_area(&self) -> Result<Area> {
        let form = match self.series {
            Series::Unc | Series::Unf => Form::Unified,
            Series::MetricCoarse => Form::Metric,
        };
        stress_area(form, self.diameter, self.pitch)
    }
}

/// Every thread. The order is stored in files by index: append, never reorder.
pub static ALL: [Thread; 41] = [
    unc("1/4-20", 0.25, 20.0),
    unc("5/16-18", 0.3125, 18.0),
    unc("3/8-16", 0.375, 16.0),
    unc("7/16-14", 0.4375, 14.0),
    unc("1/2-13", 0.5, 13.0),
    unc("9/16-12", 0.5625, 12.0),
    unc("5/8-11", 0.625, 11.0),
    unc("3/4-10", 0.75, 10.0),
    unc("7/8-9", 0.875, 9.0),
    unc("1-8", 1.0, 8.0),
    unc("1 1/8-7", 1.125, 7.0),
    unc("1 1/4-7", 1.25, 7.0),
    unc("1 1/2-6", 1.5, 6.0),
    unf("1/4-28", 0.25, 28.0),
    unf("5/16-24", 0.3125, 24.0),
    unf("3/8-24", 0.375, 24.0),
    unf("7/16-20", 0.4375, 20.0),
    unf("1/2-20", 0.5, 20.0),
    unf("9/16-18", 0.5625, 18.0),
    unf("5/8-18", 0.625, 18.0),
    unf("3/4-16", 0.75, 16.0),
    unf("7/8-14", 0.875, 14.0),
    unf("1-12", 1.0, 12.0),
    unf("1 1/8-12", 1.125, 12.0),
    unf("1 1/4-12", 1.25, 12.0),
    unf("1 3/8-12", 1.375, 12.0),
    unf("1 1/2-12", 1.5, 12.0),
    metric("M5", 5.0, 0.8),
    metric("M6", 6.0, 1.0),
    metric("M8", 8.0, 1.25),
    metric("M10", 10.0, 1.5),
    metric("M12", 12.0, 1.75),
    metric("M14", 14.0, 2.0),
    metric("M16", 16.0, 2.0),
    metric("M18", 18.0, 2.5),
    metric("M20", 20.0, 2.5),
    metric("M22", 22.0, 2.5),
    metric("M24", 24.0, 3.0),
    metric("M27", 27.0, 3.0),
    metric("M30", 30.0, 3.5),
    metric("M36", 36.0, 4.0),
];

/// The thread of this designation, `None` when it is not in the table.
///
/// # Example
/// ```
/// use drivecourse_calc::{fasten::thread_sizes::by_designation, units::area::square_inch};
/// let area = by_designation("3/4-10").unwrap().stress_area()?;
/// approx::assert_abs_diff_eq!(area.get::<square_inch>(), 0.334, epsilon = 0.0005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn by_designation(designation: &str) -> Option<&'static Thread> {
    ALL.iter().find(|thread| thread.designation == designation)
}

const fn unc(designation: &'static str, diameter: f64, per_inch: f64) -> Thread {
    Thread { designation, series: Series::Unc, diameter: inches(diameter), pitch: inches(1.0 / per_inch) }
}

const fn unf(designation: &'static str, diameter: f64, per_inch: f64) -> Thread {
    Thread { designation, series: Series::Unf, diameter: inches(diameter), pitch: inches(1.0 / per_inch) }
}

const fn metric(designation: &'static str, diameter: f64, pitch: f64) -> Thread {
    Thread { designation, series: Series::MetricCoarse, diameter: millimetres(diameter), pitch: millimetres(pitch) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::area::{square_inch, square_millimeter};
    use crate::units::length::inch;
    use approx::assert_abs_diff_eq;

    fn in_series(series: Series) -> Vec<&'static Thread> {
        ALL.iter().filter(|thread| thread.series == series).collect()
    }

    /// *Shigley's* Table 8-2 and copies of ANSI B1.1, in²: half a unit of the last printed figure.
    #[test]
    fn printed_inch_areas() {
        let unc = [0.0318, 0.0524, 0.0775, 0.1063, 0.1419, 0.182, 0.226, 0.334, 0.462, 0.606, 0.763, 0.969, 1.405];
        let unf =
            [0.0364, 0.0580, 0.0878, 0.1187, 0.1599, 0.203, 0.256, 0.373, 0.509, 0.663, 0.856, 1.073, 1.315, 1.581];
        for (series, printed) in [(Series::Unc, unc.as_slice()), (Series::Unf, unf.as_slice())] {
            let threads = in_series(series);
            assert_eq!(threads.len(), printed.len());
            for (thread, &area) in threads.iter().zip(printed) {
                let unit = if area < 0.16 { 0.000_1 } else { 0.001 };
                // Two are printed cut off: the formula of the table's own note gives 0.05807 and 0.15995. A whole unit there.
                let cut_off = ["5/16-24", "1/2-20"].contains(&thread.designation);
                let units = if cut_off { 1.0 } else { 0.5 };
                assert_abs_diff_eq!(thread.stress_area().unwrap().get::<square_inch>(), area, epsilon = units * unit);
            }
        }
    }

    /// ISO 898-1, nominal stress areas, mm² (from memory), to the printed place.
    #[test]
    fn printed_metric_areas() {
        let printed = [14.2, 20.1, 36.6, 58.0, 84.3, 115.0, 157.0, 192.0, 245.0, 303.0, 353.0, 459.0, 561.0, 817.0];
        for (thread, area) in in_series(Series::MetricCoarse).into_iter().zip(printed) {
            let half_unit = if area < 100.0 { 0.05 } else { 0.5 };
            assert_abs_diff_eq!(thread.stress_area().unwrap().get::<square_millimeter>(), area, epsilon = half_unit);
        }
    }

    #[test]
    fn designations_tell_the_size() {
        for thread in &ALL {
            assert_eq!(by_designation(thread.designation), Some(thread));
            if let Some(digits) = thread.designation.strip_prefix('M') {
                assert_abs_diff_eq!(thread.diameter.value, digits.parse::<f64>().unwrap() * 1e-3, epsilon = 1e-12);
                continue;
            }
            let (size, per_inch) = thread.designation.split_once('-').unwrap();
            let value: f64 = size
                .split(' ')
                .map(|part| match part.split_once('/') {
                    Some((over, under)) => over.parse::<f64>().unwrap() / under.parse::<f64>().unwrap(),
                    None => part.parse().unwrap(),
                })
                .sum();
            assert_abs_diff_eq!(thread.diameter.get::<inch>(), value, epsilon = 1e-9);
            assert_abs_diff_eq!(1.0 / thread.pitch.get::<inch>(), per_inch.parse::<f64>().unwrap(), epsilon = 1e-9);
        }
        assert_eq!(by_designation("M7"), None);
    }
}
