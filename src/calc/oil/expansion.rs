//! Volume of oil with temperature: the shop-floor coefficient, and the petroleum measurement tables.

use crate::error::{positive, within};
use crate::heat::rise::rise;
use crate::units::{
    MassDensity, Ratio, Temperature, TemperatureCoefficient, TemperatureRise, Volume, ratio, temperature_coefficient,
    temperature_interval, volume,
};
use crate::{Result, math};
use core::marker::PhantomData;

#[cfg(any(doc, test))]
use crate::Error;

/// Expansion of mineral oil for quick sums: 0.0007 per °C (0.0004 per °F). Common practice, no source.
pub const RULE_OF_THUMB: TemperatureCoefficient =
    TemperatureCoefficient { dimension: PhantomData, units: PhantomData, value: 0.000_7 };

/// K₁ of the lubricating-oil group, kg/m³ per °F (API MPMS chapter 11.1; ASTM D1250-04).
const K1_PER_FAHRENHEIT: f64 = 0.348_78;

/// Reference temperature of the tables: 60 °F, in K.
const SIXTY_FAHRENHEIT: f64 = (60.0 + 459.67) * 5.0 / 9.0;

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

/// Volume at 60 °F over volume at the oil's temperature, of a lubricating oil.
///
/// # Formula
/// `CTL = exp(−α₆₀ ΔT (1 + 0.8 α₆₀ ΔT))`, where ΔT = T − 60 °F.
///
/// # Source
/// As [`coefficient`].
///
/// # Errors
/// [`Error::OutOfRange`] when the density is outside the group or the temperature not −50 to 150 °C (from memory).
pub fn volume_correction(density_60: MassDensity, temperature: Temperature) -> Result<Ratio> {
    let alpha = coefficient(density_60)?.value;
    let t = within("temperature", temperature.value, 223.15, 423.15)?;
    let x = alpha * (t - SIXTY_FAHRENHEIT);
    Ok(Ratio::new::<ratio::ratio>(math::exp(-x * (1.0 + 0.8 * x))))
}

/// Volume of a lubricating oil at a second temperature, from its volume at a first.
///
/// # Formula
/// `V₂ = V₁ CTL(T₁) / CTL(T₂)`
///
/// # Source
/// As [`coefficient`].
///
/// # Errors
/// As [`volume_correction`], and unless the volume is greater than nought.
pub fn volume_at(first: Volume, from: Temperature, to: Temperature, density_60: MassDensity) -> Result<Volume> {
    let v = positive("volume", first.value)?;
    Ok(cubic_metres(v * volume_correction(density_60, from)?.value / volume_correction(density_60, to)?.value))
}

/// Mean coefficient β that takes the volume of [`volume_at`] between two temperatures: what `1 + β ΔT` should use.
///
/// # Formula
/// `β = (CTL(T₁)/CTL(T₂) − 1) / (T₂ − T₁)`
///
/// # Source
/// As [`coefficient`].
///
/// # Errors
/// As [`volume_correction`], and when the temperatures are equal.
pub fn mean_coefficient(density_60: MassDensity, from: Temperature, to: Temperature) -> Result<TemperatureCoefficient> {
    let span = rise(to, from);
    positive("temperature difference", span.get::<temperature_interval::kelvin>().abs())?;
    let gain = volume_correction(density_60, from)?.value / volume_correction(density_60, to)?.value - 1.0;
    Ok(TemperatureCoefficient::new::<temperature_coefficient::per_kelvin>(gain / span.value))
}

fn cubic_metres(value: f64) -> Volume {
    Volume::new::<volume::cubic_meter>(value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::mass_density::{kilogram_per_cubic_meter, pound_per_gallon};
    use crate::units::thermodynamic_temperature::{degree_celsius, degree_fahrenheit};
    use crate::units::volume::liter;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn density(value: f64) -> MassDensity {
        MassDensity::new::<kilogram_per_cubic_meter>(value)
    }
    /// So many degrees Celsius above 60 °F.
    fn above(value: f64) -> Temperature {
        Temperature::new::<degree_celsius>(140.0 / 9.0 + value)
    }

    /// API MPMS 11.1 formula, worked by hand from its constants: (ρ, °C over 60 °F, CTL).
    #[test]
    fn corrections() {
        assert_abs_diff_eq!(coefficient(density(900.0)).unwrap().value, 6.976e-4, epsilon = 5e-8);
        for (rho, dt, ctl) in [(900.0, 45.0, 0.968_33), (900.0, 65.0, 0.954_10), (880.0, 60.0, 0.956_70)] {
            assert_abs_diff_eq!(volume_correction(density(rho), above(dt)).unwrap().value, ctl, epsilon = 5e-6);
        }
        // 0.34878 per °F is 0.6278 per °C: both constants are published
        assert_abs_diff_eq!(coefficient(density(1000.0)).unwrap().value * 1000.0, 0.6278, epsilon = 5e-5);
        let sixty = Temperature::new::<degree_fahrenheit>(60.0);
        assert_abs_diff_eq!(volume_correction(density(900.0), sixty).unwrap().value, 1.0, epsilon = 1e-12);
    }

    /// The volumes that go with them: 1.03270 and 1.0481 times.
    #[test]
    fn volumes() {
        let litre = Volume::new::<liter>(1.0);
        for (dt, gain, places) in [(45.0, 1.032_70, 5e-6), (65.0, 1.0481, 5e-5)] {
            let hot = volume_at(litre, above(0.0), above(dt), density(900.0)).unwrap();
            assert_abs_diff_eq!(hot.get::<liter>(), gain, epsilon = places);
            let back = volume_at(hot, above(dt), above(0.0), density(900.0)).unwrap();
            assert_relative_eq!(back.value, litre.value, max_relative = 1e-14);
        }
    }

    /// Common practice: 0.0007 per °C, 0.0004 per °F; agrees with the tables at 900 kg/m³ to two figures.
    #[test]
    fn rule_of_thumb_agrees_with_the_tables() {
        let fifty = TemperatureRise::new::<temperature_interval::kelvin>(50.0);
        let simple = expanded(Volume::new::<liter>(10.0), RULE_OF_THUMB, fifty).unwrap();
        let tables = volume_at(Volume::new::<liter>(10.0), above(0.0), above(50.0), density(900.0)).unwrap();
        assert_abs_diff_eq!(simple.get::<liter>(), 10.35, epsilon = 1e-12);
        assert_abs_diff_eq!(tables.get::<liter>(), 10.35, epsilon = 0.02);
        assert_abs_diff_eq!(RULE_OF_THUMB.value / 1.8, 0.0004, epsilon = 5e-5);
        let beta = mean_coefficient(density(900.0), above(0.0), above(50.0)).unwrap();
        let same = expanded(Volume::new::<liter>(10.0), beta, fifty).unwrap();
        assert_relative_eq!(same.value, tables.value, max_relative = 1e-12);
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
        assert!(volume_correction(density(900.0), above(200.0)).is_err());
        assert!(expanded(Volume::new::<liter>(0.0), RULE_OF_THUMB, TemperatureRise::default()).is_err());
        assert!(mean_coefficient(density(900.0), above(3.0), above(3.0)).is_err());
        assert!(volume_correction(density(900.0), above(f64::NAN)).is_err());
    }
}
