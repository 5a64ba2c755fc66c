//! A grade for the viscosity that a drive needs at its running temperature.

use super::grade::{self, Grade};
use super::index;
use crate::error::{positive, within};
use crate::units::{KinematicViscosity, Ratio, Temperature};
use crate::{Error, Result};

/// Viscosity of a grade's middle at a temperature, for an oil of the given viscosity index.
///
/// # Formula
/// ASTM D341 through the grade's middle at 40 °C and the viscosity at 100 °C that its index implies (ASTM D2270).
///
/// # Source
/// ISO 3448, ASTM D2270, ASTM D341.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NoSolution`] when the index is not 0 to 400, the grade is too thin for the index to
/// be defined, or the temperature lies outside what the oil's curve covers.
pub fn viscosity_at(grade: &Grade, index: Ratio, temperature: Temperature) -> Result<KinematicViscosity> {
    index::curve(grade.middle(), index)?.at(temperature)
}

/// Thinnest grade that is at least as thick as wanted at the running temperature.
///
/// # Formula
/// The first grade with `ν(T) ≥ ν_wanted`, where ν(T) is [`viscosity_at`] the running temperature.
///
/// # Source
/// Common practice, no source, for taking the thinnest grade that serves; the viscosities as [`viscosity_at`].
///
/// # Errors
/// * [`Error::OutOfRange`] unless the viscosity wanted is greater than nought and the index is 0 to 400.
/// * [`Error::NoSolution`] when the thickest grade is still too thin.
///
/// # Example
/// ```
/// use drivecourse_calc::{oil::choice::thinnest_grade, units::*};
/// let wanted = KinematicViscosity::new::<kinematic_viscosity::centistokes>(40.0);
/// let sump = Temperature::new::<thermodynamic_temperature::degree_fahrenheit>(176.0); // 80 °C
/// let grade = thinnest_grade(wanted, sump, Ratio::new::<ratio::ratio>(95.0))?;
/// assert_eq!(grade.number(), 320);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: reading the 40 mm²/s off the grades as if the sump ran at 40 °C gives VG 46, seven times too thin.
pub fn thinnest_grade(wanted: KinematicViscosity, running: Temperature, index: Ratio) -> Result<&'static Grade> {
    positive("viscosity", wanted.value)?;
    within("viscosity index", index.value, 0.0, 400.0)?;
    within("running temperature", running.value, 233.15, 473.15)?;
    // A grade too thin for its curve to be drawn is too thin to be chosen.
    grade::ALL
        .iter()
        .find(|grade| viscosity_at(grade, index, running).is_ok_and(|viscosity| viscosity >= wanted))
        .ok_or(Error::none("viscosity grade"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::oil::{forty_celsius, viscosity_of};
    use crate::units::kinematic_viscosity::centistokes;
    use crate::units::ratio::ratio;
    use crate::units::thermodynamic_temperature::degree_celsius;
    use approx::assert_relative_eq;

    fn celsius(value: f64) -> Temperature {
        Temperature::new::<degree_celsius>(value)
    }
    fn plain(value: f64) -> Ratio {
        Ratio::new::<ratio>(value)
    }

    #[test]
    fn at_forty_the_grade_is_its_middle() {
        for grade in &grade::ALL[4..] {
            let viscosity = viscosity_at(grade, plain(95.0), forty_celsius()).unwrap();
            assert_relative_eq!(viscosity.value, grade.middle().value, max_relative = 1e-9);
            let chosen =
                thinnest_grade(viscosity_of(grade.middle().get::<centistokes>() * 0.999), forty_celsius(), plain(95.0));
            assert_eq!(chosen, Ok(grade));
        }
    }

    #[test]
    fn hotter_needs_thicker_and_a_better_index_needs_less() {
        let wanted = viscosity_of(30.0);
        let number = |t: f64, vi: f64| thinnest_grade(wanted, celsius(t), plain(vi)).unwrap().number();
        let numbers: Vec<_> = [40.0, 50.0, 60.0, 70.0, 80.0, 90.0].map(|t| number(t, 95.0)).into();
        assert!(numbers.is_sorted() && numbers[0] == 32 && numbers[5] > 220, "{numbers:?}");
        assert!(number(90.0, 160.0) < number(90.0, 60.0));
    }

    #[test]
    fn what_cannot_be_met_is_said() {
        let none = thinnest_grade(viscosity_of(5000.0), celsius(80.0), plain(95.0));
        assert_eq!(none, Err(Error::none("viscosity grade")));
        assert!(thinnest_grade(viscosity_of(0.0), celsius(80.0), plain(95.0)).is_err());
        assert!(thinnest_grade(viscosity_of(20.0), celsius(80.0), plain(-1.0)).is_err());
        assert!(thinnest_grade(viscosity_of(20.0), celsius(f64::NAN), plain(95.0)).is_err());
    }
}
