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
        // feet at −600 and −200 mm rise 0.05 and 0.09 mm, those at 300 and 800 mm 0.22 and 0.18 mm
        let stationary = Line { offset: mm(0.11), slope: plain(0.0001) };
        let movable = Line { offset: mm(0.244), slope: plain(-0.000_08) };
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
    }

    #[test]
    fn nonsense_is_refused() {
        let bad = growth(inches(-1.0), STEEL, fahrenheit(50.0));
        assert!(matches!(bad, Err(Error::OutOfRange { input: "length", .. })));
        assert!(growth(inches(1.0), STEEL, fahrenheit(f64::NAN)).is_err());
        assert!(cold_target(&Line { offset: mm(f64::NAN), slope: plain(0.0) }, &Line::default()).is_err());
    }
}
