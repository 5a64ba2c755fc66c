//! What a blocked breather does: the air shut in with the oil cannot leave when it warms.
//!
//! Caution: let a sealed housing cool, and crack a plug slowly, before it is opened.

use crate::Result;
use crate::error::{positive, within};
use crate::units::{Pressure, Temperature, Volume, pressure};
use core::marker::PhantomData;

#[cfg(any(doc, test))]
use crate::Error;

/// Standard atmosphere, 101 325 Pa (14.696 psi), exact by definition.
pub const STANDARD_ATMOSPHERE: Pressure = Pressure { dimension: PhantomData, units: PhantomData, value: 101_325.0 };

/// Absolute pressure of shut-in air after warming at constant volume.
///
/// # Formula
/// `p₂ = p₁ T₂ / T₁`, pressures and temperatures absolute.
///
/// # Source
/// Gay-Lussac's law for a perfect gas; any physics textbook.
///
/// # Errors
/// [`Error::OutOfRange`] unless pressure and temperatures are above absolute nought.
pub fn sealed_pressure(start: Pressure, cold: Temperature, hot: Temperature) -> Result<Pressure> {
    let p = positive("pressure", start.value)?;
    Ok(pascals(p * positive("temperature", hot.value)? / positive("temperature", cold.value)?))
}

/// Gauge pressure in a housing shut at atmospheric pressure and then warmed.
///
/// # Formula
/// `p_g = p_atm (T₂ / T₁ − 1)`, temperatures in kelvin (or degrees Rankine).
///
/// # Source
/// As [`sealed_pressure`].
///
/// # Errors
/// As [`sealed_pressure`].
///
/// # Example
/// Shut at 20 °C and warmed to 80 °C at sea level, about 0.21 bar (3 psi), enough to push oil past a lip seal:
/// ```
/// use drivecourse_calc::{oil::breather::{STANDARD_ATMOSPHERE, gauge_rise}, units::*};
/// let celsius = Temperature::new::<thermodynamic_temperature::degree_celsius>;
/// let gauge = gauge_rise(STANDARD_ATMOSPHERE, celsius(20.0), celsius(80.0))?;
/// approx::assert_abs_diff_eq!(gauge.get::<pressure::bar>(), 0.207, epsilon = 0.0005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: degrees Celsius make the pressure four times the atmosphere; degrees Fahrenheit, more than twice.
pub fn gauge_rise(atmosphere: Pressure, cold: Temperature, hot: Temperature) -> Result<Pressure> {
    Ok(sealed_pressure(atmosphere, cold, hot)? - atmosphere)
}

/// Gauge pressure as [`gauge_rise`], with the air squeezed as well by the oil's own expansion.
///
/// # Formula
/// `p_g = p_atm (T₂ / T₁ · V / (V − ΔV) − 1)`, where V is the cold air space and ΔV the growth of the oil.
///
/// # Source
/// Perfect-gas law; any physics textbook.
///
/// # Errors
/// As [`sealed_pressure`], and unless the air space is greater than nought and than the growth of the oil.
pub fn gauge_rise_with_oil(
    atmosphere: Pressure,
    cold: Temperature,
    hot: Temperature,
    air: Volume,
    oil_growth: Volume,
) -> Result<Pressure> {
    let v = positive("air space", air.value)?;
    let dv = within("growth of the oil", oil_growth.value, -f64::MAX, v * (1.0 - 1e-9))?;
    let p = sealed_pressure(atmosphere, cold, hot)?.value * v / (v - dv);
    Ok(pascals(p) - atmosphere)
}

fn pascals(value: f64) -> Pressure {
    Pressure::new::<pressure::pascal>(value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::pressure::{bar, pound_force_per_square_inch};
    use crate::units::thermodynamic_temperature::{degree_celsius, degree_fahrenheit, degree_rankine};
    use crate::units::volume::liter;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn celsius(value: f64) -> Temperature {
        Temperature::new::<degree_celsius>(value)
    }

    /// By hand with Rankine temperatures: 14.696 psi (639.67/529.67 − 1) = 3.052 psi from 70 to 180 °F.
    #[test]
    fn by_hand_in_us_units() {
        let (cold, hot) = (Temperature::new::<degree_fahrenheit>(70.0), Temperature::new::<degree_fahrenheit>(180.0));
        let gauge = gauge_rise(STANDARD_ATMOSPHERE, cold, hot).unwrap();
        assert_abs_diff_eq!(gauge.get::<pound_force_per_square_inch>(), 3.052, epsilon = 0.0005);
        assert_abs_diff_eq!(STANDARD_ATMOSPHERE.get::<pound_force_per_square_inch>(), 14.696, epsilon = 0.0005);
        let (cold, hot) = (Temperature::new::<degree_rankine>(529.67), Temperature::new::<degree_rankine>(639.67));
        let same = gauge_rise(STANDARD_ATMOSPHERE, cold, hot).unwrap();
        assert_relative_eq!(gauge.value, same.value, max_relative = 1e-9);
    }

    #[test]
    fn doubling_the_kelvins_doubles_the_pressure() {
        let p = sealed_pressure(Pressure::new::<bar>(1.0), celsius(20.0), celsius(313.15)).unwrap();
        assert_relative_eq!(p.get::<bar>(), 2.0, max_relative = 1e-12);
        let back = sealed_pressure(p, celsius(313.15), celsius(20.0)).unwrap();
        assert_relative_eq!(back.get::<bar>(), 1.0, max_relative = 1e-12);
        // cooled again it pulls: a vacuum that draws in dirt and water
        assert!(gauge_rise(STANDARD_ATMOSPHERE, celsius(60.0), celsius(20.0)).unwrap().value < 0.0);
    }

    #[test]
    fn expanding_oil_adds_to_it() {
        let litres = Volume::new::<liter>;
        let rise = |dv| gauge_rise_with_oil(STANDARD_ATMOSPHERE, celsius(20.0), celsius(80.0), litres(5.0), litres(dv));
        let alone = gauge_rise(STANDARD_ATMOSPHERE, celsius(20.0), celsius(80.0)).unwrap();
        assert_relative_eq!(rise(0.0).unwrap().value, alone.value, max_relative = 1e-12);
        // half the air space gone: absolute pressure doubles on top
        let half = rise(2.5).unwrap() + STANDARD_ATMOSPHERE;
        assert_relative_eq!(half.value, 2.0 * (alone + STANDARD_ATMOSPHERE).value, max_relative = 1e-12);
        assert!(matches!(rise(5.0), Err(Error::OutOfRange { input: "growth of the oil", .. })));
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(sealed_pressure(pascals(0.0), celsius(20.0), celsius(30.0)).is_err());
        assert!(sealed_pressure(STANDARD_ATMOSPHERE, celsius(-274.0), celsius(30.0)).is_err());
        assert!(gauge_rise(STANDARD_ATMOSPHERE, celsius(20.0), celsius(f64::NAN)).is_err());
    }
}
