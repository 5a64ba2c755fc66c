//! Volume of oil with temperature: the shop-floor coefficient, and the petroleum measurement tables.

use crate::Result;
use crate::error::{positive, within};
use crate::units::{MassDensity, TemperatureCoefficient, TemperatureRise, Volume, temperature_coefficient, volume};
use core::marker::PhantomData;

#[cfg(any(doc, test))]
use crate::Error;

/// Expansion of mineral oil for quick sums: 0.0007 per °C (0.0004 per °F). Common practice, no source.
pub const RULE_OF_THUMB: TemperatureCoefficient =
    TemperatureCoefficient { dimension: PhantomData, units: PhantomData, value: 0.000_7 };

/// K₁ of the lubricating-oil group, kg/m³ per °F (API MPMS chapter 11.1; ASTM D1250-04).
const K1_PER_FAHRENHEIT: f64 = 0.348_78;

/// Volume of oil after a rise in temperature, by a constant coefficient.
///
/// # Formula
/// `V = V₀ (1 + β ΔT)`
///
/// # Source
/// Definition of the coefficient; its value as [`RULE_OF_THUMB`] or from [`coefficient`].
///
/// # Errors
/// [`Error::OutOfRange`] unless the volume is greater than nought, β is 0 to 0.002 per K and the rise −200 to 200 K.
///
/// # Example
/// 10 litres warmed by 50 °C gain 0.35 litre:
/// ```
/// use drivecourse_calc::{oil::expansion::{RULE_OF_THUMB, expanded}, units::*};
/// let rise = TemperatureRise::new::<temperature_interval::kelvin>(50.0);
/// let hot = expanded(Volume::new::<volume::liter>(10.0), RULE_OF_THUMB, rise)?;
/// approx::assert_abs_diff_eq!(hot.get::<volume::liter>(), 10.35, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: a rise in °F with the coefficient per °C gains 1.8 times too much.
pub fn expanded(cold: Volume, beta: TemperatureCoefficient, rise: TemperatureRise) -> Result<Volume> {
    Ok(cubic_metres(positive("volume", cold.value)? * growth(beta, rise)?))
}

/// Factor `1 + β ΔT` by which oil swells.
pub(crate) fn growth(beta: TemperatureCoefficient, rise: TemperatureRise) -> Result<f64> {
    let b = within("expansion coefficient", beta.value, 0.0, 0.002)?;
    Ok(1.0 + b * within("temperature rise", rise.value, -200.0, 200.0)?)
}

/// Expansion coefficient of a lubricating oil at 60 °F, from its density there.
///
/// # Formula
/// `α₆₀ = K₁ / ρ₆₀`, K₁ = 0.348 78 kg/m³ per °F, which is 0.627 80 kg/m³ per °C.
///
/// # Source
/// API MPMS chapter 11.1 / ASTM D1250-04, lubricating-oil group (as quoted on a reference page).
///
/// # Errors
/// [`Error::OutOfRange`] unless the density is 800.9 to 1163.5 kg/m³ (limits of the group, from memory).
pub fn coefficient(density_60: MassDensity) -> Result<TemperatureCoefficient> {
    let rho = within("density", density_60.value, 800.9, 1163.5)?;
    Ok(TemperatureCoefficient::new::<temperature_coefficient::per_kelvin>(1.8 * K1_PER_FAHRENHEIT / rho))
}

fn cubic_metres(value: f64) -> Volume {
    Volume::new::<volume::cubic_meter>(value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::mass_density::{kilogram_per_cubic_meter, pound_per_gallon};
    use crate::units::temperature_interval;
    use crate::units::volume::liter;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn density(value: f64) -> MassDensity {
        MassDensity::new::<kilogram_per_cubic_meter>(value)
    }

    /// API MPMS 11.1 formula, worked by hand from its constants.
    #[test]
    fn coefficients() {
        assert_abs_diff_eq!(coefficient(density(900.0)).unwrap().value, 6.976e-4, epsilon = 5e-8);
        // 0.34878 per °F is 0.6278 per °C: both constants are published
        assert_abs_diff_eq!(coefficient(density(1000.0)).unwrap().value * 1000.0, 0.6278, epsilon = 5e-5);
    }

    /// Common practice: 0.0007 per °C, 0.0004 per °F; agrees with the formula at 900 kg/m³ to two figures.
    #[test]
    fn rule_of_thumb_agrees_with_the_tables() {
        let fifty = TemperatureRise::new::<temperature_interval::kelvin>(50.0);
        let simple = expanded(Volume::new::<liter>(10.0), RULE_OF_THUMB, fifty).unwrap();
        let tables = expanded(Volume::new::<liter>(10.0), coefficient(density(900.0)).unwrap(), fifty).unwrap();
        assert_abs_diff_eq!(simple.get::<liter>(), 10.35, epsilon = 1e-12);
        assert_abs_diff_eq!(tables.get::<liter>(), 10.35, epsilon = 0.02);
        assert_abs_diff_eq!(RULE_OF_THUMB.value / 1.8, 0.0004, epsilon = 5e-5);
    }

    #[test]
    fn both_unit_systems() {
        // 7.51 lb per US gallon is 900 kg/m³ to three figures
        let us = coefficient(MassDensity::new::<pound_per_gallon>(7.511)).unwrap();
        assert_relative_eq!(us.value, coefficient(density(900.0)).unwrap().value, max_relative = 1e-3);
    }

    #[test]
    fn what_has_no_answer_is_refused() {
        assert!(matches!(coefficient(density(750.0)), Err(Error::OutOfRange { input: "density", .. })));
        assert!(expanded(Volume::new::<liter>(0.0), RULE_OF_THUMB, TemperatureRise::default()).is_err());
    }
}
