//! Reference durations printed for each whole decibel.
//!
//! # Source
//! OSHA, 29 CFR 1910.95 Appendix A, Table G-16A. Two official copies print 21.1 and 21.2 h for 83 dB; the formula gives 21.11.

use crate::units::{Time, time::hour};

/// Level of the first row, dBA.
pub const FIRST: u32 = 80;

/// Hours for 80, 81, 82 ... 130 dBA.
#[rustfmt::skip]
pub const HOURS: [f64; 51] = [
    32.0, 27.9, 24.3, 21.1, 18.4, 16.0, 13.9, 12.1, 10.6, 9.2,
    8.0, 7.0, 6.1, 5.3, 4.6, 4.0, 3.5, 3.0, 2.6, 2.3,
    2.0, 1.7, 1.5, 1.3, 1.1, 1.0, 0.87, 0.76, 0.66, 0.57,
    0.5, 0.44, 0.38, 0.33, 0.29, 0.25, 0.22, 0.19, 0.16, 0.14,
    0.125, 0.11, 0.095, 0.082, 0.072, 0.063, 0.054, 0.047, 0.041, 0.036,
    0.031,
];

/// Printed reference duration for a whole number of dBA, `None` outside the table.
///
/// # Example
/// ```
/// use drivecourse_calc::{noise::reference_durations::printed, units::time::hour};
/// assert_eq!(printed(95).map(|t| t.get::<hour>().round()), Some(4.0));
/// assert_eq!(printed(79), None);
/// ```
pub fn printed(decibels: u32) -> Option<Time> {
    let row = decibels.checked_sub(FIRST)?;
    HOURS.get(usize::try_from(row).ok()?).map(|&hours| Time::new::<hour>(hours))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::noise::{Level, exposure};

    /// Every row is the formula at its printed place: tenths from 1 h on, hundredths down to 0.11 h, then thousandths.
    #[test]
    fn the_table_is_the_formula_rounded() {
        for (row, &hours) in HOURS.iter().enumerate() {
            let level = Level::db(f64::from(FIRST) + row as f64);
            let computed = exposure::reference_duration(&exposure::OSHA, level).unwrap().get::<hour>();
            let half = match hours {
                h if h >= 1.0 => 0.05,
                h if h >= 0.11 => 0.005,
                _ => 0.0005,
            };
            // 125 dBA is just 0.0625 h, printed 0.063: an exact half
            approx::assert_abs_diff_eq!(computed, hours, epsilon = half * (1.0 + 1e-9));
        }
        assert_eq!(printed(130), Some(Time::new::<hour>(0.031)));
        assert_eq!(printed(131), None);
    }
}
