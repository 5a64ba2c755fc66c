//! Infrared thermometer readings: what the surface really has, and what the instrument shows.
//!
//! The model is the grey body with total radiation, in the fourth power of the absolute temperature. A handheld instrument
//! sees only a band of wavelengths, so real figures differ somewhat: measure on a patch of matt paint or tape, or check
//! against a contact thermometer ([`actual_emissivity`]).

use crate::error::{positive, within};
use crate::units::{Ratio, Temperature, ratio, thermodynamic_temperature};
use crate::{Error, Result};

/// What stands between a surface and the reading of its temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct View {
    /// Emissivity set on the instrument.
    pub set: Ratio,
    /// Emissivity of the surface.
    pub actual: Ratio,
    /// Temperature of what mirrors in the surface (usually the ambient).
    pub reflected: Temperature,
}

/// True temperature of a surface from an instrument's reading.
///
/// # Formula
/// `ε_set T_read⁴ + (1 − ε_set) T_refl⁴ = ε T⁴ + (1 − ε) T_refl⁴`, temperatures absolute, solved for `T`. The instrument takes the
/// reflected temperature into account and only the emissivity is set wrongly.
///
/// # Source
/// Stefan-Boltzmann law with reflection of a grey, opaque surface (from memory).
///
/// # Errors
/// [`Error::OutOfRange`] for an emissivity outside (0, 1] or a temperature not above absolute zero; [`Error::NoSolution`] when no
/// temperature explains the reading.
///
/// # Example
/// Bare metal of emissivity 0.6 in a shop at 20 °C, instrument set to 0.95, reading 60 °C; the metal is hotter than it looks:
/// ```
/// use drivecourse_calc::{heat::infrared::*, units::*};
/// use thermodynamic_temperature::degree_celsius;
/// let (plain, celsius) = (Ratio::new::<ratio::ratio>, Temperature::new::<degree_celsius>);
/// let view = View { set: plain(0.95), actual: plain(0.6), reflected: celsius(20.0) };
/// let surface = true_temperature(&view, celsius(60.0))?;
/// approx::assert_abs_diff_eq!(surface.get::<degree_celsius>(), 77.95, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: degrees Celsius in the fourth power; forgetting the reflected part; dividing the reading by the emissivity.
pub fn true_temperature(view: &View, reading: Temperature) -> Result<Temperature> {
    let (set, actual, reflected) = view.checked()?;
    swap_emissivity("surface temperature", reading, set, actual, reflected)
}

/// What the instrument shows of a surface: the inverse of [`true_temperature`].
///
/// # Formula
/// As [`true_temperature`], solved for `T_read`.
///
/// # Source
/// As [`true_temperature`].
///
/// # Errors
/// As [`true_temperature`].
pub fn instrument_reading(view: &View, surface: Temperature) -> Result<Temperature> {
    let (set, actual, reflected) = view.checked()?;
    swap_emissivity("instrument reading", surface, actual, set, reflected)
}

/// Emissivity of a surface whose true temperature a contact thermometer gave; `view.actual` is not used.
///
/// # Formula
/// `ε = ε_set (T_read⁴ − T_refl⁴) / (T⁴ − T_refl⁴)`
///
/// # Source
/// As [`true_temperature`].
///
/// # Errors
/// [`Error::OutOfRange`] for a set emissivity outside (0, 1] or a temperature not above absolute zero; [`Error::NoSolution`] when the
/// readings give no emissivity in (0, 1], as when surface and surroundings are equally warm.
pub fn actual_emissivity(
    set: Ratio,
    reflected: Temperature,
    reading: Temperature,
    surface: Temperature,
) -> Result<Ratio> {
    let base = fourth_power("reflected temperature", reflected)?;
    let seen = emissivity("set emissivity", set)? * (fourth_power("reading", reading)? - base);
    let value = seen / (fourth_power("surface temperature", surface)? - base);
    if value > 0.0 && value <= 1.0 + 1e-12 {
        Ok(Ratio::new::<ratio::ratio>(value.min(1.0)))
    } else {
        Err(Error::none("emissivity"))
    }
}

impl View {
    /// Both emissivities, and the reflected temperature to the fourth power.
    fn checked(&self) -> Result<(f64, f64, f64)> {
        Ok((
            emissivity("set emissivity", self.set)?,
            emissivity("actual emissivity", self.actual)?,
            fourth_power("reflected temperature", self.reflected)?,
        ))
    }
}

/// Temperature that radiates with emissivity `to` as much as `temperature` does with `from`, reflection included.
fn swap_emissivity(
    sought: &'static str,
    temperature: Temperature,
    from: f64,
    to: f64,
    reflected: f64,
) -> Result<Temperature> {
    // ε₂ T₂⁴ = ε₁ T₁⁴ + (ε₂ − ε₁) T_refl⁴
    let fourth = (from * fourth_power("temperature", temperature)? + (to - from) * reflected) / to;
    if fourth > 0.0 && fourth.is_finite() {
        Ok(Temperature::new::<thermodynamic_temperature::kelvin>(fourth.sqrt().sqrt()))
    } else {
        Err(Error::none(sought))
    }
}

fn emissivity(input: &'static str, value: Ratio) -> Result<f64> {
    within(input, value.value, f64::MIN_POSITIVE, 1.0)
}

/// Fourth power of an absolute temperature, in K⁴.
fn fourth_power(input: &'static str, temperature: Temperature) -> Result<f64> {
    let squared = positive(input, temperature.value)? * temperature.value;
    Ok(squared * squared)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::thermodynamic_temperature::{degree_celsius, kelvin};
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn celsius(value: f64) -> Temperature {
        Temperature::new::<degree_celsius>(value)
    }
    fn plain(value: f64) -> Ratio {
        Ratio::new::<ratio::ratio>(value)
    }
    fn view(set: f64, actual: f64, reflected: f64) -> View {
        View { set: plain(set), actual: plain(actual), reflected: celsius(reflected) }
    }

    #[test]
    fn both_sides_radiate_alike() {
        // independent: radiosity in W/m² with the Stefan-Boltzmann constant (5.670 374 419e-8, CODATA 2018) on both sides
        let sigma = 5.670_374_419e-8;
        let fourth = |t: f64| t * t * t * t;
        let radiosity = |e: f64, t: f64, r: f64| sigma * (e * fourth(t) + (1.0 - e) * fourth(r));
        for (set, actual, refl, read) in [(0.95, 0.6, 20.0, 60.0), (0.95, 0.3, 25.0, 41.0), (0.8, 0.97, 35.0, 90.0)] {
            let surface = true_temperature(&view(set, actual, refl), celsius(read)).unwrap();
            let seen = radiosity(set, read + 273.15, refl + 273.15);
            assert_relative_eq!(radiosity(actual, surface.value, refl + 273.15), seen, max_relative = 1e-12);
        }
    }

    #[test]
    fn hand_worked_case_in_whole_kelvins() {
        // by hand: 300 K reflected, surface 400 K of emissivity 0.5, set to 1:
        // 0.5 × 2.56e10 + 0.5 × 0.81e10 = 1.685e10 K⁴, fourth root 360.29 K
        let v = View { set: plain(1.0), actual: plain(0.5), reflected: Temperature::new::<kelvin>(300.0) };
        let shown = instrument_reading(&v, Temperature::new::<kelvin>(400.0)).unwrap();
        assert_relative_eq!(shown.value * shown.value * shown.value * shown.value, 1.685e10, max_relative = 1e-12);
        assert_abs_diff_eq!(shown.value, 360.29, epsilon = 0.005);
    }

    #[test]
    fn nothing_to_correct() {
        // right emissivity, or a surface as warm as its surroundings: the reading is true
        let right = true_temperature(&view(0.7, 0.7, 18.0), celsius(64.0)).unwrap();
        assert_relative_eq!(right.value, celsius(64.0).value, max_relative = 1e-14);
        let same = true_temperature(&view(0.95, 0.2, 22.0), celsius(22.0)).unwrap();
        assert_relative_eq!(same.value, celsius(22.0).value, max_relative = 1e-14);
    }

    #[test]
    fn shiny_metal_reads_low() {
        let shown = instrument_reading(&view(0.95, 0.3, 20.0), celsius(90.0)).unwrap();
        assert!(shown < celsius(90.0) && shown > celsius(20.0));
        // and in a cold sky's reflection it reads lower still
        let outdoors = instrument_reading(&view(0.95, 0.3, -20.0), celsius(90.0)).unwrap();
        assert!(outdoors < shown);
    }

    #[test]
    fn round_trips() {
        for (set, actual, refl, t) in [(0.95, 0.6, 20.0, 80.0), (0.95, 0.25, 30.0, 110.0), (0.6, 0.95, 5.0, 45.0)] {
            let v = view(set, actual, refl);
            let shown = instrument_reading(&v, celsius(t)).unwrap();
            assert_relative_eq!(true_temperature(&v, shown).unwrap().value, celsius(t).value, max_relative = 1e-14);
            let e = actual_emissivity(v.set, v.reflected, shown, celsius(t)).unwrap();
            assert_relative_eq!(e.value, actual, max_relative = 1e-11);
        }
    }

    #[test]
    fn what_has_no_answer_is_refused() {
        let zero = true_temperature(&view(0.95, 0.0, 20.0), celsius(60.0));
        assert!(matches!(zero, Err(Error::OutOfRange { input: "actual emissivity", .. })));
        assert!(true_temperature(&view(1.1, 0.5, 20.0), celsius(60.0)).is_err());
        assert!(true_temperature(&view(0.95, 0.5, -273.15), celsius(60.0)).is_err());
        // far colder than what mirrors in it: no surface explains the reading
        let cold = true_temperature(&view(0.95, 0.1, 100.0), celsius(-150.0));
        assert_eq!(cold, Err(Error::none("surface temperature")));
        let same = actual_emissivity(plain(0.95), celsius(20.0), celsius(20.0), celsius(20.0));
        assert_eq!(same, Err(Error::none("emissivity")));
        let over = actual_emissivity(plain(0.95), celsius(20.0), celsius(90.0), celsius(60.0));
        assert_eq!(over, Err(Error::none("emissivity")));
    }
}
