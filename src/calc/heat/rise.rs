//! Rise over ambient, and the limits it is judged by.

use crate::units::{Temperature, TemperatureRise, temperature_interval};
use core::marker::PhantomData;

/// Rise over ambient accepted on a gear unit's housing: 100 °F (55.6 K). Common practice, no source.
pub const ACCEPTABLE_RISE: TemperatureRise = fahrenheit_rise(100.0);

/// Lower end of the usual surface temperature of a running unit: 100 °F (37.8 °C). Common practice, no source.
pub const USUAL_SURFACE_LOW: Temperature = fahrenheit(100.0);

/// Upper end of the usual surface temperature of a running unit: 130 °F (54.4 °C). Common practice, no source.
pub const USUAL_SURFACE_HIGH: Temperature = fahrenheit(130.0);

/// Surface temperature that is a worry when sustained: 200 °F (93.3 °C). Common practice, no source.
///
/// A short run-in peak is judged by where the temperature settles, not by the peak alone.
pub const SUSTAINED_WORRY: Temperature = fahrenheit(200.0);

/// Rise from one temperature to another: the difference of two temperatures, which the units crate lacks.
///
/// # Formula
/// `ΔT = T − Tₐ`. A difference of 1 °C is one of 1.8 °F; the 32 plays no part.
///
/// # Source
/// Definition; factors for temperature intervals: NIST SP 811, appendix B.
///
/// # Example
/// A housing at 170 °F in a shop at 70 °F is 100 °F (55.6 K) over ambient, just acceptable:
/// ```
/// use drivecourse_calc::{heat::rise::*, units::*};
/// let fahrenheit = Temperature::new::<thermodynamic_temperature::degree_fahrenheit>;
/// let rise = rise(fahrenheit(170.0), fahrenheit(70.0));
/// approx::assert_abs_diff_eq!(rise.get::<temperature_interval::degree_fahrenheit>(), 100.0, epsilon = 1e-9);
/// approx::assert_abs_diff_eq!(rise.get::<temperature_interval::kelvin>(), 55.56, epsilon = 0.005);
/// ```
///
/// A surface colder than ambient gives a negative rise. Trap: turning a 100 °F rise into 37.8 °C with the formula for readings.
pub fn rise(surface: Temperature, ambient: Temperature) -> TemperatureRise {
    TemperatureRise::new::<temperature_interval::kelvin>(surface.value - ambient.value)
}

/// Surface temperature of a housing that runs `rise` over `ambient`: the inverse of [`rise()`].
///
/// # Formula
/// `T = Tₐ + ΔT`. The rise hardly changes with ambient, so the same unit on a hotter day runs hotter by as much.
///
/// # Source
/// Definition.
pub fn surface(ambient: Temperature, rise: TemperatureRise) -> Temperature {
    ambient + rise
}

/// A rise in degrees Fahrenheit, for constants (`new` of the units crate is not `const`).
const fn fahrenheit_rise(degrees: f64) -> TemperatureRise {
    TemperatureRise { dimension: PhantomData, units: PhantomData, value: degrees * 5.0 / 9.0 }
}

/// A reading in degrees Fahrenheit, for constants.
const fn fahrenheit(degrees: f64) -> Temperature {
    Temperature { dimension: PhantomData, units: PhantomData, value: (degrees + 459.67) * 5.0 / 9.0 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::thermodynamic_temperature::{degree_celsius, degree_fahrenheit};
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn celsius(value: f64) -> Temperature {
        Temperature::new::<degree_celsius>(value)
    }

    #[test]
    fn published_intervals() {
        // NIST SP 811, appendix B: 1 °F interval is 0.555 555 6 K (7 figures); so 45 K is 81 °F and 18 °F is 10 K
        let one = TemperatureRise::new::<temperature_interval::degree_fahrenheit>(1.0);
        assert_abs_diff_eq!(one.value, 0.555_555_6, epsilon = 5e-8);
        let up = rise(celsius(65.0), celsius(20.0));
        assert_abs_diff_eq!(up.get::<temperature_interval::degree_fahrenheit>(), 81.0, epsilon = 1e-9);
        let up = rise(Temperature::new::<degree_fahrenheit>(88.0), Temperature::new::<degree_fahrenheit>(70.0));
        assert_abs_diff_eq!(up.value, 10.0, epsilon = 1e-9);
    }

    #[test]
    fn limits_in_both_systems() {
        // arithmetic, to the printed place: 55.556 K; 37.78, 54.44, 93.333 °C
        assert_abs_diff_eq!(ACCEPTABLE_RISE.value, 55.556, epsilon = 0.0005);
        assert_abs_diff_eq!(USUAL_SURFACE_LOW.get::<degree_celsius>(), 37.78, epsilon = 0.005);
        assert_abs_diff_eq!(USUAL_SURFACE_HIGH.get::<degree_celsius>(), 54.44, epsilon = 0.005);
        assert_abs_diff_eq!(SUSTAINED_WORRY.get::<degree_celsius>(), 93.333, epsilon = 0.0005);
        // and the constants are what the units crate makes of the same degrees
        let by_crate = Temperature::new::<degree_fahrenheit>(200.0);
        assert_relative_eq!(SUSTAINED_WORRY.value, by_crate.value, max_relative = 1e-15);
        let by_crate = TemperatureRise::new::<temperature_interval::degree_fahrenheit>(100.0);
        assert_relative_eq!(ACCEPTABLE_RISE.value, by_crate.value, max_relative = 1e-15);
    }

    #[test]
    fn rise_and_surface_undo_each_other() {
        for (t, a) in [(71.0, 24.0), (-5.0, 10.0), (40.0, 40.0)] {
            let back = surface(celsius(a), rise(celsius(t), celsius(a)));
            assert_relative_eq!(back.value, celsius(t).value, max_relative = 1e-15);
        }
    }
}
