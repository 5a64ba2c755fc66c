//! Permissible exposures: hours a day at a level, without ear protection.
//!
//! # Source
//! OSHA, 29 CFR 1910.95, Table G-16 (from memory).

use super::Level;
use crate::units::{Time, time::hour};

/// Rows: (level in dBA, hours a day). The last stands for a quarter of an hour or less.
pub const TABLE: [(f64, f64); 9] = [
    (90.0, 8.0),
    (92.0, 6.0),
    (95.0, 4.0),
    (97.0, 3.0),
    (100.0, 2.0),
    (102.0, 1.5),
    (105.0, 1.0),
    (110.0, 0.5),
    (115.0, 0.25),
];

/// Hours a day that the table allows at a level: those of the next row at or above it; `None` above the last row, where it allows
/// nothing, and below the first, where it sets no limit, `Some` of the whole day.
///
/// # Example
/// ```
/// use drivecourse_calc::{noise::{Level, permissible_durations::allowed}, units::time::hour};
/// let hours = |db| allowed(Level::db(db)).map(|t| t.get::<hour>().round());
/// assert_eq!((hours(94.0), hours(116.0)), (Some(4.0), None));
/// ```
pub fn allowed(level: Level) -> Option<Time> {
    if level.in_db() < TABLE[0].0 {
        return Some(Time::new::<hour>(24.0));
    }
    TABLE.iter().find(|(row, _)| level.in_db() <= *row).map(|&(_, hours)| Time::new::<hour>(hours))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::noise::exposure::{OSHA, reference_duration};
    use approx::assert_relative_eq;

    #[test]
    fn the_table_is_the_formula_in_round_numbers() {
        for (level, hours) in TABLE {
            let computed = reference_duration(&OSHA, Level::db(level)).unwrap().get::<hour>();
            // 6 for 6.06, 3 for 3.03, 1.5 for 1.52
            assert_relative_eq!(computed, hours, max_relative = 0.016);
            assert_eq!(allowed(Level::db(level)), Some(Time::new::<hour>(hours)));
        }
    }

    #[test]
    fn between_and_beyond_the_rows() {
        let hours = |db: f64| allowed(Level::db(db)).map(|t| t.get::<hour>());
        assert_eq!(hours(89.9), Some(24.0));
        assert_eq!(hours(90.5), hours(92.0));
        assert_eq!(hours(115.1), None);
        assert_eq!(hours(f64::NAN), None);
    }
}
