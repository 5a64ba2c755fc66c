//! Thermal growth, and where a shaft must stand cold to run true when warm.

use super::{Line, distance, metres, plain};
use crate::Result;
use crate::error::within;
use crate::units::{Length, TemperatureCoefficient, TemperatureRise};
use core::marker::PhantomData;

#[cfg(any(doc, test))]
use crate::Error;

/// Expansion of cast iron, 5.9 millionths per °F (10.6 per °C): *Maintenance Technology*, "Understanding Shaft Alignment:
/// Thermal Growth", January 2003.
pub const CAST_IRON: TemperatureCoefficient = per_fahrenheit(5.9e-6);

/// Expansion of steel, 6.3 millionths per °F (11.3 per °C). Common practice, no source.
pub const STEEL: TemperatureCoefficient = per_fahrenheit(6.3e-6);

/// Expansion of steel as one textbook has it, 6.5 millionths per °F (11.7 per °C): T. H. Wentzell, *Machine Design*, App. 8.
pub const STEEL_WENTZELL: TemperatureCoefficient = per_fahrenheit(6.5e-6);

/// Growth of a part by a rise in temperature (negative when it cools).
///
/// # Formula
/// `ΔL = α L ΔT`
///
/// # Source
/// Definition of the coefficient; T. H. Wentzell, *Machine Design*.
///
/// # Errors
/// [`Error::OutOfRange`] unless the length is 0 to 1000 m, α is 0 to 10⁻⁴ per K and the rise −300 to 1000 K.
///
/// # Example
/// 15 in of cast iron from 70 to 120 °F:
/// ```
/// use drivecourse_calc::{align::growth::{CAST_IRON, growth}, units::*};
/// let rise = TemperatureRise::new::<temperature_interval::degree_fahrenheit>(50.0);
/// let up = growth(Length::new::<length::inch>(15.0), CAST_IRON, rise)?;
/// approx::assert_abs_diff_eq!(up.get::<length::inch>(), 0.0044, epsilon = 0.0001);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: a rise in °F with a coefficient per °C comes out 1.8 times too large.
pub fn growth(length: Length, alpha: TemperatureCoefficient, rise: TemperatureRise) -> Result<Length> {
    let l = within("length", length.value, 0.0, super::FARTHEST)?;
    let a = within("expansion coefficient", alpha.value, 0.0, 1e-4)?;
    Ok(metres(a * l * within("temperature rise", rise.value, -300.0, 1000.0)?))
}

/// Rise that makes a part grow by an amount: the inverse of [`growth`].
///
/// # Formula
/// `ΔT = ΔL / (α L)`
///
/// # Source
/// As [`growth`].
///
/// # Errors
/// [`Error::OutOfRange`] unless length and coefficient are greater than nought and the growth is sound.
pub fn rise_for(growth: Length, length: Length, alpha: TemperatureCoefficient) -> Result<TemperatureRise> {
    let l = within("length", length.value, f64::MIN_POSITIVE, super::FARTHEST)?;
    let a = within("expansion coefficient", alpha.value, 1e-12, 1e-4)?;
    let dl = distance("growth", growth)?;
    Ok(TemperatureRise::new::<crate::units::temperature_interval::kelvin>(dl / (a * l)))
}

/// Growth of a shaft's centre line from the growth at its front and rear feet, at their distances from the measuring plane.
///
/// # Formula
/// The line through both growths: equal growths only lift it, unequal ones tilt it too.
///
/// # Source
/// Geometry.
///
/// # Errors
/// [`Error::OutOfRange`] when the two feet stand at the same place. The stationary machine's feet lie at negative
/// distances; give the smaller (more negative) first.
pub fn growth_line(first: (Length, Length), second: (Length, Length)) -> Result<Line> {
    Line::through(first, second)
}

/// Where the movable shaft must stand cold, relative to the stationary one, to stand in line when both are warm.
///
/// # Formula
/// `target = growth of the stationary line − growth of the movable line`, offset and slope alike: the machine that grows
/// more is set low. Use it with [`Line::moves_to`].
///
/// # Source
/// Geometry; common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] when an offset or slope is not sound.
pub fn cold_target(stationary: &Line, movable: &Line) -> Result<Line> {
    let offset = distance("growth", stationary.offset)? - distance("growth", movable.offset)?;
    let slope = within("slope", stationary.slope.value, -1.0, 1.0)? - within("slope", movable.slope.value, -1.0, 1.0)?;
    Ok(Line { offset: metres(offset), slope: plain(slope) })
}

/// A coefficient per degree Fahrenheit, for constants.
const fn per_fahrenheit(value: f64) -> TemperatureCoefficient {
    TemperatureCoefficient { dimension: PhantomData, units: PhantomData, value: value * 1.8 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::length::{inch, millimeter};
    use crate::units::temperature_interval::{degree_fahrenheit, kelvin};
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn inches(value: f64) -> Length {
        Length::new::<inch>(value)
    }
    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }
    fn fahrenheit(value: f64) -> TemperatureRise {
        TemperatureRise::new::<degree_fahrenheit>(value)
    }

    /// *Maintenance Technology*, January 2003: 15 in, 70 to 120 °F, 5.9e-6: 0.0044 in. A bearing bore of 3.9362 in,
    /// 70 to 250 °F, 6.3e-6: 0.0044 in (0.00446, cut off).
    #[test]
    fn published_growths() {
        let up = growth(inches(15.0), CAST_IRON, fahrenheit(50.0)).unwrap();
        assert_abs_diff_eq!(up.get::<inch>(), 0.0044, epsilon = 0.0001);
        let up = growth(inches(3.9362), STEEL, fahrenheit(180.0)).unwrap();
        assert_abs_diff_eq!(up.get::<inch>(), 0.0044, epsilon = 0.0001);
    }

    /// T. H. Wentzell, *Machine Design*, Example 6.3, p. 122: 0.01204 in over 5 in at 6.5e-6 takes 370.46 °F.
    #[test]
    fn published_rise() {
        let rise = rise_for(inches(0.012_04), inches(5.0), STEEL_WENTZELL).unwrap();
        assert_abs_diff_eq!(rise.get::<degree_fahrenheit>(), 370.46, epsilon = 0.01);
        let back = growth(inches(5.0), STEEL_WENTZELL, rise).unwrap();
        assert_relative_eq!(back.get::<inch>(), 0.012_04, max_relative = 1e-12);
    }

    #[test]
    fn both_unit_systems() {
        // 0.5 m of cast iron warmed by 40 K: 10.62e-6 × 0.5 × 40 = 0.2124 mm
        let up = growth(mm(500.0), CAST_IRON, TemperatureRise::new::<kelvin>(40.0)).unwrap();
        assert_relative_eq!(up.get::<millimeter>(), 0.2124, max_relative = 1e-12);
        let same = growth(mm(500.0), CAST_IRON, fahrenheit(72.0)).unwrap();
        assert_relative_eq!(same.value, up.value, max_relative = 1e-12);
    }

    #[test]
    fn set_cold_it_runs_true_warm() {
        let stationary = growth_line((mm(-600.0), mm(0.05)), (mm(-200.0), mm(0.09))).unwrap();
        let movable = growth_line((mm(300.0), mm(0.22)), (mm(800.0), mm(0.18))).unwrap();
        let target = cold_target(&stationary, &movable).unwrap();
        for x in [0.0, 150.0, 300.0, 800.0] {
            let warm = target.at(mm(x)) + movable.at(mm(x)) - stationary.at(mm(x));
            assert_abs_diff_eq!(warm.value, 0.0, epsilon = 1e-15);
        }
        // from any cold position the moves lead to the target
        let now = Line { offset: mm(0.3), slope: plain(-0.0004) };
        let moves = now.moves_to(&target, mm(300.0), mm(800.0)).unwrap();
        assert_relative_eq!((now.at(mm(800.0)) + moves.rear).value, target.at(mm(800.0)).value, max_relative = 1e-12);
        // the one that grows more stands low
        assert!(cold_target(&Line::default(), &movable).unwrap().at(mm(300.0)) < mm(0.0));
        let equal = growth_line((mm(300.0), mm(0.2)), (mm(800.0), mm(0.2))).unwrap();
        assert_eq!(equal.slope, plain(0.0), "equal growth at both feet only lifts");
    }

    #[test]
    fn nonsense_is_refused() {
        let bad = growth(inches(-1.0), STEEL, fahrenheit(50.0));
        assert!(matches!(bad, Err(Error::OutOfRange { input: "length", .. })));
        assert!(growth(inches(1.0), STEEL, fahrenheit(f64::NAN)).is_err());
        assert!(rise_for(inches(0.01), inches(0.0), STEEL).is_err());
        assert!(cold_target(&Line { offset: mm(f64::NAN), slope: plain(0.0) }, &Line::default()).is_err());
        assert!(growth_line((mm(1.0), mm(0.0)), (mm(1.0), mm(0.1))).is_err());
    }
}
