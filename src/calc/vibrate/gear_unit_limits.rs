//! Ratings of gear units: zone boundaries by class, which is an input (the maker or the contract names it).
//!
//! # Source
//! ISO 20816-9:2020, Tables 3 and 5 and Figures A.1 and A.2 (as transcribed by others). Which machines belong to which class was
//! not seen, so nothing here guesses it. The ratings of shaft displacement and of true-peak acceleration are left out: the first want
//! probes in plain bearings, the second a meter that drives of this size are not read with.

use super::zone::Limits;
use super::{Measured, plain};
use crate::error::positive;
use crate::units::{Frequency, Ratio, Velocity, velocity::millimeter_per_second};
use crate::{Error, Result, math};

/// Steps of every rating: a rating is named after its B/C boundary, and its neighbours are A/B and C/D.
pub const RUNGS: [f64; 12] = [2.0, 3.15, 5.0, 8.0, 12.5, 20.0, 31.5, 50.0, 80.0, 125.0, 200.0, 315.0];

/// Housing velocity ratings (r.m.s.), mm/s.
pub const VELOCITY_RATINGS: [f64; 5] = [3.15, 5.0, 8.0, 12.5, 20.0];

/// Class of a gear unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Class {
    /// Class I.
    I,
    /// Class II.
    II,
    /// Class III (its subclass a: epicyclic units, as quoted).
    III,
    /// Class IV.
    IV,
}

/// Subclass of a gear unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Subclass {
    /// Subclass a.
    A,
    /// Subclass b, low power.
    BLowPower,
    /// Subclass b, high power.
    BHighPower,
}

/// One row of Table 5.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Class.
    pub class: Class,
    /// Subclass.
    pub subclass: Subclass,
    /// Housing velocity rating, mm/s r.m.s.
    pub velocity_rating: f64,
}

/// Table 5.
pub static TABLE: [Row; 12] = [
    row(Class::I, Subclass::A, 3.15),
    row(Class::I, Subclass::BLowPower, 3.15),
    row(Class::I, Subclass::BHighPower, 5.0),
    row(Class::II, Subclass::A, 5.0),
    row(Class::II, Subclass::BLowPower, 5.0),
    row(Class::II, Subclass::BHighPower, 8.0),
    row(Class::III, Subclass::A, 8.0),
    row(Class::III, Subclass::BLowPower, 8.0),
    row(Class::III, Subclass::BHighPower, 12.5),
    row(Class::IV, Subclass::A, 20.0),
    row(Class::IV, Subclass::BLowPower, 12.5),
    row(Class::IV, Subclass::BHighPower, 20.0),
];

const fn row(class: Class, subclass: Subclass, velocity_rating: f64) -> Row {
    Row { class, subclass, velocity_rating }
}

/// The row of a class and subclass.
pub fn ratings(class: Class, subclass: Subclass) -> &'static Row {
    let first = 3 * match class {
        Class::I => 0,
        Class::II => 1,
        Class::III => 2,
        Class::IV => 3,
    };
    let within = match subclass {
        Subclass::A => 0,
        Subclass::BLowPower => 1,
        Subclass::BHighPower => 2,
    };
    &TABLE[first + within]
}

/// Boundaries of a housing velocity rating (mm/s): r.m.s.
///
/// # Errors
/// [`Error::NoSolution`] when the standard has no such rating.
///
/// # Example
/// ```
/// use drivecourse_calc::{vibrate::{gear_unit_limits::*, zone::Zone}, units::*};
/// let limits = velocity_limits(ratings(Class::III, Subclass::A).velocity_rating)?;
/// assert_eq!(limits.zone(Velocity::new::<velocity::millimeter_per_second>(6.0))?, Zone::B);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn velocity_limits(rating: f64) -> Result<Limits<Velocity>> {
    let none = Error::none("rating");
    if !VELOCITY_RATINGS.contains(&rating) {
        return Err(none);
    }
    let neighbours = RUNGS.windows(3).find(|three| three[1] == rating).ok_or(none)?;
    let mm_s = |rung: usize| Velocity::new::<millimeter_per_second>(neighbours[rung]);
    Limits::new(mm_s(0), mm_s(1), mm_s(2))
}

/// Largest reading with which a unit is normally accepted.
///
/// # Formula
/// `1.25 A/B`
///
/// # Source
/// ISO 20816-9:2020, clause 8.3.
pub fn acceptance_limit<Q: Measured>(limits: &Limits<Q>) -> Q {
    Q::from_si(1.25 * limits.a_b.si())
}

/// Share of a velocity rating allowed at one frequency of the spectrum.
///
/// # Formula
/// 1 from 45 to 1590 Hz; `(f/45)^0.7` below and `(1590/f)^0.7` above (14 dB a decade).
///
/// # Source
/// ISO 20816-9:2020, Figure A.2.
///
/// # Errors
/// [`Error::OutOfRange`] unless the frequency is greater than nought.
pub fn velocity_share(frequency: Frequency) -> Result<Ratio> {
    let f = positive("frequency", frequency.value)?;
    let off = (f / 45.0).min(1590.0 / f).min(1.0);
    Ok(plain(math::pow(off, 14.0 / 20.0)))
}

/// Share of a displacement rating allowed at one frequency of the spectrum.
///
/// # Formula
/// 1 up to 50 Hz; `(50/f)^0.5` above (10 dB a decade).
///
/// # Source
/// ISO 20816-9:2020, Figure A.1.
///
/// # Errors
/// [`Error::OutOfRange`] unless the frequency is greater than nought.
pub fn displacement_share(frequency: Frequency) -> Result<Ratio> {
    let f = positive("frequency", frequency.value)?;
    Ok(plain((50.0 / f).min(1.0).sqrt()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::frequency::hertz;
    use crate::vibrate::zone::Zone;
    use approx::assert_abs_diff_eq;

    fn mm_s(value: f64) -> Velocity {
        Velocity::new::<millimeter_per_second>(value)
    }
    fn hz(value: f64) -> Frequency {
        Frequency::new::<hertz>(value)
    }

    /// ISO 20816-9:2020, Table 3, as transcribed.
    #[test]
    fn every_printed_rating() {
        let velocity = [
            (3.15, [2.0, 3.15, 5.0]),
            (5.0, [3.15, 5.0, 8.0]),
            (8.0, [5.0, 8.0, 12.5]),
            (12.5, [8.0, 12.5, 20.0]),
            (20.0, [12.5, 20.0, 31.5]),
        ];
        for (rating, printed) in velocity {
            let l = velocity_limits(rating).unwrap();
            for (value, printed) in [l.a_b, l.b_c, l.c_d].into_iter().zip(printed) {
                assert_abs_diff_eq!(value.get::<millimeter_per_second>(), printed, epsilon = 1e-9);
            }
        }
    }

    /// ISO 20816-9:2020, Table 5, as transcribed: every rating of it exists, and each pair is there once.
    #[test]
    fn every_class_has_its_row() {
        for class in [Class::I, Class::II, Class::III, Class::IV] {
            for subclass in [Subclass::A, Subclass::BLowPower, Subclass::BHighPower] {
                let row = ratings(class, subclass);
                assert_eq!((row.class, row.subclass), (class, subclass));
                assert!(velocity_limits(row.velocity_rating).is_ok());
            }
        }
        assert_eq!(ratings(Class::IV, Subclass::A).velocity_rating, 20.0);
        assert_eq!(ratings(Class::IV, Subclass::BLowPower).velocity_rating, 12.5);
        assert_eq!(ratings(Class::II, Subclass::BHighPower).velocity_rating, 8.0);
    }

    /// Checks that come with the copied tables.
    #[test]
    fn published_checks() {
        let limits = velocity_limits(ratings(Class::III, Subclass::A).velocity_rating).unwrap();
        for (reading, zone) in [(4.0, Zone::A), (6.0, Zone::B), (10.0, Zone::C), (20.0, Zone::D)] {
            assert_eq!(limits.zone(mm_s(reading)), Ok(zone));
        }
        let five = velocity_limits(5.0).unwrap();
        let ceiling = acceptance_limit(&five);
        assert_abs_diff_eq!(ceiling.get::<millimeter_per_second>(), 3.9375, epsilon = 1e-12);
        assert_eq!(five.zone(ceiling), Ok(Zone::B));
        assert_abs_diff_eq!(5.0 * velocity_share(hz(4.5)).unwrap().value, 0.99763, epsilon = 5e-6);
    }

    #[test]
    fn curves_are_flat_inside_and_fall_outside() {
        for f in [45.0, 100.0, 1590.0] {
            assert_eq!(velocity_share(hz(f)).unwrap().value, 1.0);
        }
        // 14 dB and 10 dB a decade
        assert_abs_diff_eq!(velocity_share(hz(15_900.0)).unwrap().value, 0.199526, epsilon = 1e-6);
        assert_eq!(displacement_share(hz(50.0)).unwrap().value, 1.0);
        assert_abs_diff_eq!(displacement_share(hz(500.0)).unwrap().value, 0.316228, epsilon = 1e-6);
    }

    #[test]
    fn nonsense_is_refused() {
        assert_eq!(velocity_limits(2.0), Err(Error::none("rating")));
        assert!(velocity_limits(f64::NAN).is_err());
        assert!(velocity_share(hz(0.0)).is_err() && displacement_share(hz(-1.0)).is_err());
    }
}
