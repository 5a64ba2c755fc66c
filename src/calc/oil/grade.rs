//! The ISO 3448 viscosity grades.
//!
//! # Source
//! ISO 3448 (also ASTM D2422, BS 4231): mid-point at 40 °C, limits 10 % either side. VG 2200 and 3200 come with its
//! 1992 edition: from memory.
//!
//! Two traps: the mid-points of VG 2, 3, 5 and 7 are 2.2, 3.2, 4.6 and 6.8 mm²/s, not the grade number; and the bands
//! do not touch, so a measured viscosity can belong to no grade (55 mm²/s lies between VG 46 and VG 68).

use super::{square_mm, viscosity_of};
use crate::Result;
use crate::error::positive;
use crate::units::KinematicViscosity;

#[cfg(any(doc, test))]
use crate::Error;

/// One viscosity grade.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Grade {
    number: u32,
    /// Mid-point in tenths of mm²/s: whole numbers keep the limits exact in decimals.
    tenths: u32,
}

impl Grade {
    /// Number of the grade (220 for ISO VG 220).
    pub const fn number(&self) -> u32 {
        self.number
    }

    /// Viscosity in the middle of the band, at 40 °C.
    pub fn middle(&self) -> KinematicViscosity {
        viscosity_of(f64::from(self.tenths) / 10.0)
    }

    /// Least viscosity of the band at 40 °C, 10 % under the middle; it belongs to the grade.
    pub fn least(&self) -> KinematicViscosity {
        viscosity_of(self.least_mm())
    }

    /// Greatest viscosity of the band at 40 °C, 10 % over the middle; it belongs to the grade.
    pub fn greatest(&self) -> KinematicViscosity {
        viscosity_of(self.greatest_mm())
    }

    /// Whether an oil of this viscosity at 40 °C belongs to the grade, both limits included.
    pub fn holds(&self, at_40: KinematicViscosity) -> bool {
        let value = square_mm(at_40);
        value >= self.least_mm() && value <= self.greatest_mm()
    }

    fn least_mm(&self) -> f64 {
        f64::from(self.tenths * 9) / 100.0
    }

    fn greatest_mm(&self) -> f64 {
        f64::from(self.tenths * 11) / 100.0
    }
}

/// Every grade, thinnest first.
pub static ALL: [Grade; 20] = [
    grade(2, 22),
    grade(3, 32),
    grade(5, 46),
    grade(7, 68),
    grade(10, 100),
    grade(15, 150),
    grade(22, 220),
    grade(32, 320),
    grade(46, 460),
    grade(68, 680),
    grade(100, 1000),
    grade(150, 1500),
    grade(220, 2200),
    grade(320, 3200),
    grade(460, 4600),
    grade(680, 6800),
    grade(1000, 10_000),
    grade(1500, 15_000),
    grade(2200, 22_000),
    grade(3200, 32_000),
];

const fn grade(number: u32, tenths: u32) -> Grade {
    Grade { number, tenths }
}

/// The grade of this number, `None` when the standard has none.
pub fn by_number(number: u32) -> Option<&'static Grade> {
    ALL.iter().find(|grade| grade.number == number)
}

/// Where a viscosity stands among the grades.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// In the band of this grade.
    In(&'static Grade),
    /// In no band: above the first grade and below the second (`None` past either end of the table).
    Between(Option<&'static Grade>, Option<&'static Grade>),
}

/// The place of an oil of this viscosity at 40 °C among the grades; "in no grade" is an answer.
///
/// # Formula
/// `0.9 ν_mid ≤ ν₄₀ ≤ 1.1 ν_mid`
///
/// # Source
/// ISO 3448.
///
/// # Errors
/// [`Error::OutOfRange`] unless the viscosity is greater than nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{oil::grade::{Place, place, by_number}, units::*};
/// let cst = KinematicViscosity::new::<kinematic_viscosity::centistokes>;
/// assert_eq!(place(cst(236.0))?, Place::In(by_number(220).unwrap()));
/// assert_eq!(place(cst(55.0))?, Place::Between(by_number(46), by_number(68)));
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn place(at_40: KinematicViscosity) -> Result<Place> {
    positive("viscosity", at_40.value)?;
    let value = square_mm(at_40);
    // Bands rise and never overlap: the first whose upper limit is not passed either holds the value or lies above it.
    let above = ALL.iter().position(|grade| value <= grade.greatest_mm());
    Ok(match above {
        Some(i) if value >= ALL[i].least_mm() => Place::In(&ALL[i]),
        Some(i) => Place::Between(i.checked_sub(1).map(|below| &ALL[below]), Some(&ALL[i])),
        None => Place::Between(ALL.last(), None),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::kinematic_viscosity::{centistokes, square_meter_per_second, square_millimeter_per_second};
    use approx::assert_relative_eq;

    fn cst(value: f64) -> KinematicViscosity {
        KinematicViscosity::new::<square_millimeter_per_second>(value)
    }

    /// ISO 3448, printed limits: (grade, least, middle, greatest), mm²/s at 40 °C.
    const PRINTED: [(u32, f64, f64, f64); 20] = [
        (2, 1.98, 2.2, 2.42),
        (3, 2.88, 3.2, 3.52),
        (5, 4.14, 4.6, 5.06),
        (7, 6.12, 6.8, 7.48),
        (10, 9.00, 10.0, 11.0),
        (15, 13.5, 15.0, 16.5),
        (22, 19.8, 22.0, 24.2),
        (32, 28.8, 32.0, 35.2),
        (46, 41.4, 46.0, 50.6),
        (68, 61.2, 68.0, 74.8),
        (100, 90.0, 100.0, 110.0),
        (150, 135.0, 150.0, 165.0),
        (220, 198.0, 220.0, 242.0),
        (320, 288.0, 320.0, 352.0),
        (460, 414.0, 460.0, 506.0),
        (680, 612.0, 680.0, 748.0),
        (1000, 900.0, 1000.0, 1100.0),
        (1500, 1350.0, 1500.0, 1650.0),
        (2200, 1980.0, 2200.0, 2420.0),
        (3200, 2880.0, 3200.0, 3520.0),
    ];

    #[test]
    fn every_printed_limit() {
        assert_eq!(PRINTED.len(), ALL.len());
        for ((number, least, middle, greatest), grade) in PRINTED.into_iter().zip(&ALL) {
            assert_eq!(by_number(number), Some(grade));
            for (printed, value) in [(least, grade.least()), (middle, grade.middle()), (greatest, grade.greatest())] {
                assert_relative_eq!(value.get::<centistokes>(), printed, max_relative = 1e-14);
                assert_eq!(place(cst(printed)), Ok(Place::In(grade)), "limits belong to the grade: {printed}");
                // the same number through the base unit must not fall off the edge
                let same = KinematicViscosity::new::<square_meter_per_second>(printed * 1e-6);
                assert!(grade.holds(same) && grade.holds(value));
            }
            assert!(!grade.holds(cst(least * 0.9999)) && !grade.holds(cst(greatest * 1.0001)));
        }
    }

    #[test]
    fn gaps_belong_to_no_grade() {
        assert_eq!(place(cst(55.0)), Ok(Place::Between(by_number(46), by_number(68))));
        assert_eq!(place(cst(38.0)), Ok(Place::Between(by_number(32), by_number(46))));
        assert_eq!(place(cst(1.0)), Ok(Place::Between(None, by_number(2))));
        assert_eq!(place(cst(4000.0)), Ok(Place::Between(by_number(3200), None)));
        assert_eq!(place(cst(2.0)), Ok(Place::In(by_number(2).unwrap())), "2.0 is in VG 2, though not its middle");
        for pair in ALL.windows(2) {
            assert!(pair[0].greatest_mm() < pair[1].least_mm());
            let gap = 0.5 * (pair[0].greatest_mm() + pair[1].least_mm());
            assert_eq!(place(cst(gap)), Ok(Place::Between(Some(&pair[0]), Some(&pair[1]))));
        }
    }

    #[test]
    fn low_grades_are_not_named_after_their_middle() {
        for grade in &ALL {
            let same = grade.tenths == 10 * grade.number();
            assert_eq!(same, grade.number() >= 10, "VG {}", grade.number());
        }
    }

    #[test]
    fn nonsense_is_refused() {
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert!(matches!(place(cst(bad)), Err(Error::OutOfRange { input: "viscosity", .. })));
        }
        assert_eq!(by_number(0), None);
    }
}
