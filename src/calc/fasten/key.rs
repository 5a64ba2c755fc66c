//! Keys: the force they carry, their stress, and the length they need.

use super::{metres, newtons, pascals};
use crate::Result;
use crate::error::{positive, within};
use crate::units::{Force, Length, Pressure, Ratio, Torque};

#[cfg(any(doc, test))]
use crate::Error;

/// Force on a key at the surface of the shaft.
///
/// # Formula
/// `F = 2 T / D`, D the shaft's diameter.
///
/// # Source
/// Statics; R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Example 7-6.
///
/// # Errors
/// [`Error::OutOfRange`] unless torque and diameter are greater than nought.
///
/// Trap: the diameter used as the lever: half the force, and half the stress.
pub fn force(torque: Torque, shaft: Length) -> Result<Force> {
    Ok(newtons(2.0 * positive("torque", torque.value)? / positive("shaft diameter", shaft.value)?))
}

/// Shear stress in a key.
///
/// # Formula
/// `τ = 2 T / (D W L)`, W the key's width and L its working length (without round ends).
///
/// # Source
/// R. L. Mott, *Machine Elements in Mechanical Design*, pp. 499-500.
///
/// # Errors
/// [`Error::OutOfRange`] unless every value is greater than nought.
///
/// # Example
/// 180 lb·in on a ½ in shaft, key ⅛ in square and ½ in long:
/// ```
/// use drivecourse_calc::{fasten::key::shear_stress, units::*};
/// let inch = Length::new::<length::inch>;
/// let torque = Torque::new::<torque::pound_force_inch>(180.0);
/// let tau = shear_stress(torque, inch(0.5), inch(0.125), inch(0.5))?;
/// approx::assert_relative_eq!(tau.get::<pressure::pound_force_per_square_inch>(), 11_520.0, max_relative = 1e-6);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn shear_stress(torque: Torque, shaft: Length, width: Length, length: Length) -> Result<Pressure> {
    let area = positive("key width", width.value)? * positive("key length", length.value)?;
    Ok(pascals(force(torque, shaft)?.value / area))
}

/// Bearing stress between key and keyway, each holding half the key's height.
///
/// # Formula
/// `σ = 4 T / (D H L)`, H the key's height.
///
/// # Source
/// R. L. Mott, *Machine Elements in Mechanical Design*, pp. 499-500.
///
/// # Errors
/// [`Error::OutOfRange`] unless every value is greater than nought.
///
/// Trap: the whole height in place of half of it. A metric key stands deeper in the shaft than in the hub: for the hub use
/// twice the depth it really bears on as H.
pub fn bearing_stress(torque: Torque, shaft: Length, height: Length, length: Length) -> Result<Pressure> {
    let area = 0.5 * positive("key height", height.value)? * positive("key length", length.value)?;
    Ok(pascals(force(torque, shaft)?.value / area))
}

/// Key length that keeps shear within the strength over the factor of safety.
///
/// # Formula
/// `L = 2 T N / (D W S_s)`, N the factor of safety and S_s the strength in shear (half the tensile or yield strength by
/// maximum shear stress, 0.577 of it by distortion energy).
///
/// # Source
/// As [`shear_stress`]; T. H. Wentzell, *Machine Design*, Example 15.1, p. 332.
///
/// # Errors
/// [`Error::OutOfRange`] unless every value is greater than nought and the factor is at least 1.
pub fn length_for_shear(
    torque: Torque,
    shaft: Length,
    width: Length,
    strength: Pressure,
    factor: Ratio,
) -> Result<Length> {
    let per_length = positive("key width", width.value)? * allowed(strength, factor)?;
    Ok(metres(force(torque, shaft)?.value / per_length))
}

/// Key length that keeps bearing within the strength of the weakest of shaft, key and hub over the factor of safety.
///
/// # Formula
/// `L = 4 T N / (D H S_c)`, S_c the strength in compression (usually the yield strength).
///
/// # Source
/// As [`bearing_stress`]; T. H. Wentzell, *Machine Design*, Example 15.1, p. 332.
///
/// # Errors
/// As [`length_for_shear`].
pub fn length_for_bearing(
    torque: Torque,
    shaft: Length,
    height: Length,
    strength: Pressure,
    factor: Ratio,
) -> Result<Length> {
    let per_length = 0.5 * positive("key height", height.value)? * allowed(strength, factor)?;
    Ok(metres(force(torque, shaft)?.value / per_length))
}

/// Section of a key.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Section {
    /// Width, across the keyway.
    pub width: Length,
    /// Height, out of the shaft.
    pub height: Length,
}

/// What a key may bear.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// Strength in shear.
    pub shear: Pressure,
    /// Strength in bearing of the weakest part.
    pub bearing: Pressure,
    /// Factor of safety: about 3, common practice (R. L. Mott, *Machine Elements in Mechanical Design*, p. 500).
    pub factor: Ratio,
}

/// Longest key worth fitting on a shaft: a longer one does not share the load.
///
/// # Formula
/// `L ≤ 1.5 D`
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, chapter 7.
///
/// # Errors
/// [`Error::OutOfRange`] unless the diameter is greater than nought.
pub fn longest(shaft: Length) -> Result<Length> {
    Ok(metres(1.5 * positive("shaft diameter", shaft.value)?))
}

/// Strength over the factor of safety, Pa.
fn allowed(strength: Pressure, factor: Ratio) -> Result<f64> {
    Ok(positive("strength", strength.value)? / within("factor of safety", factor.value, 1.0, 100.0)?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fasten::plain;
    use crate::load::torque::torque;
    use crate::units::angular_velocity::revolution_per_minute;
    use crate::units::force::pound_force;
    use crate::units::length::{inch, millimeter};
    use crate::units::power::{kilowatt, watt};
    use crate::units::pressure::{megapascal, pound_force_per_square_inch};
    use crate::units::torque::pound_force_inch;
    use crate::units::{AngularVelocity, Power};
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn inches(value: f64) -> Length {
        Length::new::<inch>(value)
    }
    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }
    fn psi(value: f64) -> Pressure {
        Pressure::new::<pound_force_per_square_inch>(value)
    }
    fn mpa(value: f64) -> Pressure {
        Pressure::new::<megapascal>(value)
    }
    fn lb_in(value: f64) -> Torque {
        Torque::new::<pound_force_inch>(value)
    }
    fn carried(kw: f64, rpm: f64) -> Torque {
        torque(Power::new::<kilowatt>(kw), AngularVelocity::new::<revolution_per_minute>(rpm)).unwrap()
    }

    /// T. H. Wentzell, *Machine Design*, Example 15.1, p. 332: 180 lb·in, ½ in shaft, ⅛ in square key, Su 61 000 psi (half
    /// in shear), Sc 51 000 psi, factor 2.5: 0.47 in for shear; 0.56 in for bearing, which is 0.5647 cut off.
    #[test]
    fn wentzell_example() {
        let key = Section { width: inches(0.125), height: inches(0.125) };
        let limits = Limits { shear: psi(0.5 * 61_000.0), bearing: psi(51_000.0), factor: plain(2.5) };
        let shear = length_for_shear(lb_in(180.0), inches(0.5), key.width, limits.shear, limits.factor).unwrap();
        assert_abs_diff_eq!(shear.get::<inch>(), 0.47, epsilon = 0.005);
        let bearing = length_for_bearing(lb_in(180.0), inches(0.5), key.height, limits.bearing, limits.factor).unwrap();
        assert_abs_diff_eq!(bearing.get::<inch>(), 0.56, epsilon = 0.005);
    }

    /// *Shigley's*, Example 7-6 (from memory): 5850 lbf at 1 7/16 in, ⅜ in square, Sy 65 kpsi, factor 2.8:
    /// 1.16 in for shear (0.577 Sy), 1.34 in for crushing.
    #[test]
    fn shigley_example() {
        let (shaft, side) = (inches(1.4375), inches(0.375));
        let t = lb_in(5850.0 * 1.4375 / 2.0);
        assert_relative_eq!(force(t, shaft).unwrap().get::<pound_force>(), 5850.0, max_relative = 1e-6);
        let shear = length_for_shear(t, shaft, side, psi(0.577 * 65_000.0), plain(2.8)).unwrap();
        assert_abs_diff_eq!(shear.get::<inch>(), 1.16, epsilon = 0.01);
        let crushing = length_for_bearing(t, shaft, side, psi(65_000.0), plain(2.8)).unwrap();
        assert_abs_diff_eq!(crushing.get::<inch>(), 1.34, epsilon = 0.01);
    }

    /// U. C. Jindal, *Machine Design*, Example 14-4, p. 403: 12 kW × 1.25 at 300 rev/min, d 40, L 70 mm, τ 50, σ 100 MPa:
    /// width and height 6.82 mm, taken as 7.
    #[test]
    fn jindal_square_key() {
        let t = carried(12.0 * 1.25, 300.0);
        let tau = shear_stress(t, mm(40.0), mm(7.0), mm(70.0)).unwrap();
        assert_abs_diff_eq!(tau.get::<megapascal>() * 7.0 / 50.0, 6.82, epsilon = 0.005);
        let sigma = bearing_stress(t, mm(40.0), mm(7.0), mm(70.0)).unwrap();
        assert_abs_diff_eq!(sigma.get::<megapascal>() * 7.0 / 100.0, 6.82, epsilon = 0.005);
        assert!(tau < mpa(50.0) && sigma < mpa(100.0), "7 mm is enough");
    }

    /// Jindal, Example 14-3, p. 402: 40 kW at 360 rev/min, d 50, two 12 mm square keys set on edge (√2), Sy 380 MPa,
    /// factor 3: 17 mm for shear (0.577 Sy); 19.74 mm for bearing (the book's 19.85 is an integer-division slip).
    #[test]
    fn jindal_keys_on_edge() {
        let each = 0.5 * carried(40.0, 360.0);
        let across = mm(12.0 * core::f64::consts::SQRT_2);
        let shear = length_for_shear(each, mm(50.0), across, mpa(0.577 * 380.0), plain(3.0)).unwrap();
        assert_abs_diff_eq!(shear.get::<millimeter>(), 17.0, epsilon = 0.5);
        assert_abs_diff_eq!(shear.get::<millimeter>(), 17.11, epsilon = 0.01);
        let bearing = length_for_bearing(each, mm(50.0), across, mpa(380.0), plain(3.0)).unwrap();
        assert_abs_diff_eq!(bearing.get::<millimeter>(), 19.74, epsilon = 0.005);
    }

    #[test]
    fn needed_length_meets_its_own_limits() {
        let t = torque(Power::new::<watt>(5500.0), AngularVelocity::new::<revolution_per_minute>(70.0)).unwrap();
        let key = Section { width: mm(14.0), height: mm(9.0) };
        let limits = Limits { shear: mpa(200.0), bearing: mpa(350.0), factor: plain(3.0) };
        let length = length_for_bearing(t, mm(48.0), key.height, limits.bearing, limits.factor).unwrap();
        let tau = shear_stress(t, mm(48.0), key.width, length).unwrap() * 3.0;
        let sigma = bearing_stress(t, mm(48.0), key.height, length).unwrap() * 3.0;
        assert_relative_eq!(sigma.value, limits.bearing.value, max_relative = 1e-12);
        assert!(tau < limits.shear && length < longest(mm(48.0)).unwrap());
        // a square key of one steel: bearing at Sy and shear at half of it need the same length
        let square = Section { width: mm(12.0), height: mm(12.0) };
        let alike = Limits { shear: mpa(150.0), bearing: mpa(300.0), factor: plain(3.0) };
        let by_bearing = length_for_bearing(t, mm(48.0), square.height, alike.bearing, alike.factor).unwrap();
        let by_shear = length_for_shear(t, mm(48.0), square.width, alike.shear, alike.factor).unwrap();
        assert_relative_eq!(by_bearing.value, by_shear.value, max_relative = 1e-12);
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(matches!(force(lb_in(0.0), inches(1.0)), Err(Error::OutOfRange { input: "torque", .. })));
        assert!(shear_stress(lb_in(1.0), inches(1.0), inches(0.0), inches(1.0)).is_err());
        assert!(bearing_stress(lb_in(1.0), inches(1.0), inches(1.0), inches(f64::NAN)).is_err());
        let weak = length_for_shear(lb_in(1.0), inches(1.0), inches(0.1), psi(1000.0), plain(0.5));
        assert!(matches!(weak, Err(Error::OutOfRange { input: "factor of safety", .. })));
        assert!(longest(inches(0.0)).is_err());
    }
}
