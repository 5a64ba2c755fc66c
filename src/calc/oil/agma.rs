//! The older AGMA lubricant numbers and the ISO 3448 grades they stand for.
//!
//! # Source
//! ANSI/AGMA 9005-D94, viscosity ranges for AGMA lubricants. Later editions name ISO grades directly (from memory).
//! Numbers 8A and the older compounded 7 and 8 hold 3 to 10 % of fatty oil, for worm gears. Above number 9 the ISO grade
//! stands in brackets there: 3200 is a grade of ISO 3448:1992 (from memory), 4600 and 6800 are not.

use super::viscosity_of;
use crate::units::KinematicViscosity;

/// Temperature at which a lubricant number's range is stated.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StatedAt {
    /// 40 °C, as ISO grades.
    Forty,
    /// 100 °C.
    Hundred,
}

/// One AGMA lubricant number.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct AgmaNumber {
    /// The number as written, without the letters EP, S or Comp (`"8A"`).
    pub number: &'static str,
    /// Number of the ISO grade it stands for, if there is one.
    pub grade: Option<u32>,
    /// Whether it comes as an oil with extreme-pressure additives (`5EP`).
    pub extreme_pressure: bool,
    /// Whether it comes as a synthetic oil (`5S`).
    pub synthetic: bool,
    /// Temperature of its range.
    pub stated_at: StatedAt,
    limits: [f64; 2],
}

impl AgmaNumber {
    /// Least and greatest viscosity at the temperature of [`stated_at`](Self::stated_at).
    pub fn limits(&self) -> (KinematicViscosity, KinematicViscosity) {
        (viscosity_of(self.limits[0]), viscosity_of(self.limits[1]))
    }
}

/// Every number, thinnest first.
pub static ALL: [AgmaNumber; 15] = [
    at_40("0", Some(32), [28.8, 35.2], false, true),
    at_40("1", Some(46), [41.4, 50.6], false, true),
    at_40("2", Some(68), [61.2, 74.8], true, true),
    at_40("3", Some(100), [90.0, 110.0], true, true),
    at_40("4", Some(150), [135.0, 165.0], true, true),
    at_40("5", Some(220), [198.0, 242.0], true, true),
    at_40("6", Some(320), [288.0, 352.0], true, true),
    at_40("7", Some(460), [414.0, 506.0], true, true),
    at_40("8", Some(680), [612.0, 748.0], true, true),
    at_40("8A", Some(1000), [900.0, 1100.0], true, false),
    at_40("9", Some(1500), [1350.0, 1650.0], true, true),
    at_40("10", Some(3200), [2880.0, 3520.0], true, true),
    at_40("11", None, [4140.0, 5060.0], true, true),
    at_40("12", None, [6120.0, 7480.0], true, true),
    AgmaNumber {
        number: "13",
        grade: None,
        extreme_pressure: true,
        synthetic: false,
        stated_at: StatedAt::Hundred,
        limits: [190.0, 220.0],
    },
];

const fn at_40(number: &'static str, grade: Option<u32>, limits: [f64; 2], ep: bool, synthetic: bool) -> AgmaNumber {
    AgmaNumber { number, grade, extreme_pressure: ep, synthetic, stated_at: StatedAt::Forty, limits }
}

/// The entry for a number, with or without its letters (`"5"`, `"5EP"`, `"5 EP"`, `"7 Comp"`, `"5S"`).
///
/// `None` for an unknown number, or a kind of oil the number does not come as.
///
/// # Example
/// ```
/// let oil = drivecourse_calc::oil::agma::by_number("5EP").unwrap();
/// assert_eq!(oil.grade, Some(220));
/// ```
pub fn by_number(written: &str) -> Option<&'static AgmaNumber> {
    let written = written.trim();
    let digits = written.find(|c: char| !c.is_ascii_digit()).unwrap_or(written.len());
    // "8A" is a number of its own, so the letter A belongs to it.
    let end = if written[digits..].starts_with('A') { digits + 1 } else { digits };
    let entry = ALL.iter().find(|entry| entry.number == &written[..end])?;
    let known = match written[end..].trim() {
        "" => true,
        "EP" => entry.extreme_pressure,
        "S" => entry.synthetic,
        "Comp" => ["7", "8", "8A"].contains(&entry.number),
        _ => false,
    };
    known.then_some(entry)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::oil::grade;
    use approx::assert_relative_eq;

    /// The printed ranges are those of the ISO grade named beside them.
    #[test]
    fn ranges_are_those_of_the_grade() {
        for entry in &ALL {
            let Some(number) = entry.grade else { continue };
            let grade = grade::by_number(number).unwrap();
            let (least, greatest) = entry.limits();
            assert_relative_eq!(least.value, grade.least().value, max_relative = 1e-12);
            assert_relative_eq!(greatest.value, grade.greatest().value, max_relative = 1e-12);
        }
    }

    /// 11 and 12 follow the rule of 10 % either side of 4600 and 6800; 13 is stated at 100 °C instead.
    #[test]
    fn thickest_numbers() {
        for (number, middle) in [("11", 4600.0), ("12", 6800.0)] {
            let entry = by_number(number).unwrap();
            assert_relative_eq!(entry.limits[0], 0.9 * middle, max_relative = 1e-12);
            assert_relative_eq!(entry.limits[1], 1.1 * middle, max_relative = 1e-12);
            assert_eq!(entry.grade, None);
        }
        let last = by_number("13").unwrap();
        assert_eq!((last.stated_at, last.grade), (StatedAt::Hundred, None));
    }

    /// A second published list of the same numbers: 1 to 8 stand for VG 46 to 680.
    #[test]
    fn second_list() {
        for (number, vg) in (1..=8).zip([46, 68, 100, 150, 220, 320, 460, 680]) {
            assert_eq!(by_number(&number.to_string()).unwrap().grade, Some(vg));
        }
    }

    #[test]
    fn letters_are_read() {
        for written in ["7", "7EP", " 7 Comp ", "7S", "7 EP"] {
            assert_eq!(by_number(written).unwrap().grade, Some(460), "{written}");
        }
        assert_eq!(by_number("8A").unwrap().grade, Some(1000));
        assert_eq!(by_number("8A EP").unwrap().grade, Some(1000));
        for written in ["", "14", "1EP", "8AS", "5 Comp", "EP", "5x", "é"] {
            assert_eq!(by_number(written), None, "{written}");
        }
    }
}
