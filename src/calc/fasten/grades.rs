//! Strength of bolts: SAE J429 grades (inch) and ISO 898-1 property classes (metric).
//!
//! # Source
//! **SAE J429**: R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Table 8-9.
//! **ISO 898-1**: least values of the 1999 edition (as quoted on a reference page); class 8.8 up to and with 16 mm: from
//! memory. Nominal values (class number × 100, × 0.9 and the like) are not the standard's proof stresses.

use super::inches;
use crate::error::within;
use crate::units::{Length, Pressure};
use crate::{Error, Result};
use core::marker::PhantomData;

/// Which family of grades a bolt is marked in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Family {
    /// SAE J429, radial lines on the head.
    Sae,
    /// ISO 898-1, two numbers with a point.
    Iso,
}

/// Strength of one grade over one range of diameters, both ends included.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Strength {
    /// Family of grades.
    pub family: Family,
    /// Grade as marked (`"5"`, `"8.8"`).
    pub grade: &'static str,
    /// Least diameter of the row.
    pub from: Length,
    /// Greatest diameter of the row.
    pub to: Length,
    /// Proof stress: what the bolt bears without lasting stretch.
    pub proof: Pressure,
    /// Least tensile strength.
    pub tensile: Pressure,
    /// Least yield stress, `None` where the list at hand has none.
    pub yielding: Option<Pressure>,
}

/// Every row; of two rows of one grade the smaller sizes come first.
pub static ALL: [Strength; 18] = [
    sae("1", [0.25, 1.5], [33.0, 60.0, 36.0]),
    sae("2", [0.25, 0.75], [55.0, 74.0, 57.0]),
    sae("2", [0.875, 1.5], [33.0, 60.0, 36.0]),
    sae("4", [0.25, 1.5], [65.0, 115.0, 100.0]),
    sae("5", [0.25, 1.0], [85.0, 120.0, 92.0]),
    sae("5", [1.125, 1.5], [74.0, 105.0, 81.0]),
    sae("5.2", [0.25, 1.0], [85.0, 120.0, 92.0]),
    sae("7", [0.25, 1.5], [105.0, 133.0, 115.0]),
    sae("8", [0.25, 1.5], [120.0, 150.0, 130.0]),
    sae("8.2", [0.25, 1.0], [120.0, 150.0, 130.0]),
    iso("4.6", [5.0, 100.0], [225.0, 400.0]),
    iso("4.8", [1.6, 16.0], [310.0, 420.0]),
    iso("5.8", [5.0, 24.0], [380.0, 520.0]),
    iso("8.8", [1.6, 16.0], [580.0, 800.0]),
    // The size that splits the class belongs to the row above, so this one starts a hair past 16 mm.
    iso("8.8", [16.000_001, 72.0], [600.0, 830.0]),
    iso("9.8", [1.6, 16.0], [650.0, 900.0]),
    iso("10.9", [5.0, 100.0], [830.0, 1040.0]),
    iso("12.9", [1.6, 100.0], [970.0, 1220.0]),
];

/// Strength of a grade at a diameter.
///
/// # Source
/// SAE J429; ISO 898-1: see the module.
///
/// # Errors
/// * [`Error::NoSolution`] when the family has no such grade.
/// * [`Error::OutOfRange`] when the grade is not made in that diameter, or falls between two rows.
///
/// # Example
/// An M20 bolt of class 8.8 has 600 MPa, an M12 one 580 MPa:
/// ```
/// use drivecourse_calc::{fasten::grades::*, units::*};
/// let proof = |mm| strength(Family::Iso, "8.8", Length::new::<length::millimeter>(mm)).map(|row| row.proof);
/// assert_eq!(proof(20.0)?.get::<pressure::megapascal>().round(), 600.0);
/// assert_eq!(proof(12.0)?.get::<pressure::megapascal>().round(), 580.0);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: SAE grade 8 and ISO class 8.8 are not the same steel; 8.8 is near grade 5, grade 8 near 10.9.
pub fn strength(family: Family, grade: &str, diameter: Length) -> Result<&'static Strength> {
    let rows = || ALL.iter().filter(|row| row.family == family && row.grade == grade);
    // a hair of room, so that a size typed in another unit still meets the end of its row
    let slack = 1e-9;
    let d = diameter.value;
    if let Some(row) = rows().find(|row| d >= row.from.value - slack && d <= row.to.value + slack) {
        return Ok(row);
    }
    let (first, last) = (rows().next(), rows().next_back());
    let (Some(first), Some(last)) = (first, last) else { return Err(Error::none("bolt grade")) };
    within("bolt diameter", d, first.from.value, last.to.value)?;
    // inside the grade's sizes, but between two rows: name the lower one
    Err(Error::outside("bolt diameter", d, first.from.value, first.to.value))
}

/// Diameters in inches; proof, tensile and yield in kpsi.
const fn sae(grade: &'static str, sizes: [f64; 2], kpsi: [f64; 3]) -> Strength {
    /// Thousand pounds-force per square inch, in pascals.
    const KPSI: f64 = 0.453_592_37 * crate::math::STANDARD_GRAVITY / (super::INCH * super::INCH) * 1e3;
    Strength {
        family: Family::Sae,
        grade,
        from: inches(sizes[0]),
        to: inches(sizes[1]),
        proof: stress(kpsi[0] * KPSI),
        tensile: stress(kpsi[1] * KPSI),
        yielding: Some(stress(kpsi[2] * KPSI)),
    }
}

/// Diameters in mm; proof and tensile in MPa.
const fn iso(grade: &'static str, sizes: [f64; 2], mpa: [f64; 2]) -> Strength {
    Strength {
        family: Family::Iso,
        grade,
        from: super::millimetres(sizes[0]),
        to: super::millimetres(sizes[1]),
        proof: stress(mpa[0] * 1e6),
        tensile: stress(mpa[1] * 1e6),
        yielding: None,
    }
}

const fn stress(value: f64) -> Pressure {
    Pressure { dimension: PhantomData, units: PhantomData, value }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::length::{inch, millimeter};
    use crate::units::pressure::{megapascal, pound_force_per_square_inch};
    use approx::assert_relative_eq;

    fn proof_kpsi(grade: &str, size: f64) -> f64 {
        let row = strength(Family::Sae, grade, Length::new::<inch>(size)).unwrap();
        row.proof.get::<pound_force_per_square_inch>() / 1e3
    }
    fn proof_mpa(class: &str, size: f64) -> f64 {
        strength(Family::Iso, class, Length::new::<millimeter>(size)).unwrap().proof.get::<megapascal>()
    }

    /// Steps of SAE J429 by size, kpsi.
    #[test]
    fn sae_steps() {
        for (grade, size, proof) in [
            ("2", 0.75, 55.0),
            ("2", 0.875, 33.0),
            ("5", 1.0, 85.0),
            ("5", 1.125, 74.0),
            ("8", 0.25, 120.0),
            ("8", 1.5, 120.0),
            ("7", 1.0, 105.0),
        ] {
            assert_relative_eq!(proof_kpsi(grade, size), proof, max_relative = 1e-6);
        }
        let none = strength(Family::Sae, "5", Length::new::<inch>(1.0625));
        assert!(matches!(none, Err(Error::OutOfRange { input: "bolt diameter", .. })));
        assert!(strength(Family::Sae, "5.2", Length::new::<inch>(1.25)).is_err());
    }

    /// ISO 898-1: class 8.8 steps after 16 mm; M16 still has 580 MPa.
    #[test]
    fn iso_steps() {
        for (class, size, proof) in [
            ("8.8", 10.0, 580.0),
            ("8.8", 16.0, 580.0),
            ("8.8", 18.0, 600.0),
            ("10.9", 20.0, 830.0),
            ("12.9", 12.0, 970.0),
            ("4.6", 16.0, 225.0),
            ("9.8", 16.0, 650.0),
        ] {
            assert_relative_eq!(proof_mpa(class, size), proof, max_relative = 1e-12);
        }
        assert!(strength(Family::Iso, "9.8", Length::new::<millimeter>(20.0)).is_err());
        assert_eq!(strength(Family::Iso, "5", Length::new::<millimeter>(20.0)), Err(Error::none("bolt grade")));
        assert!(strength(Family::Iso, "8.8", Length::new::<millimeter>(f64::NAN)).is_err());
    }

    /// The class says tensile and yield; proof stays under yield, which stays under tensile.
    #[test]
    fn rows_are_sound() {
        for row in &ALL {
            assert!(row.from < row.to && row.proof < row.tensile, "{row:?}");
            assert!(row.yielding.is_none_or(|y| row.proof < y && y < row.tensile), "{row:?}");
            if row.family == Family::Iso {
                let (hundreds, tenths) = row.grade.split_once('.').unwrap();
                let nominal = hundreds.parse::<f64>().unwrap() * 100.0;
                let nominal_yield = nominal * tenths.parse::<f64>().unwrap() / 10.0;
                let least = row.tensile.get::<megapascal>();
                assert!(least >= nominal && least <= nominal * 1.06, "{row:?}");
                let share = row.proof.get::<megapascal>() / nominal_yield;
                assert!((0.88..=0.97).contains(&share), "{row:?}");
            }
        }
    }
}
