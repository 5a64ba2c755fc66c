//! Oil level in a sump: between the marks, hot and cold.
//!
//! A reducer has a pair of marks for each mounting position, because the same oil stands at another height when the
//! housing lies another way. Each position is a [`Sump`] of its own; the oil is the same volume in all of them.

use super::expansion::growth;
use crate::Result;
use crate::error::{positive, within};
use crate::units::{Area, Length, TemperatureCoefficient, TemperatureRise, Volume, length, volume};

#[cfg(any(doc, test))]
use crate::Error;

/// The sump in one mounting position: level is measured upwards from a datum such as the drain plug.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sump {
    /// Free plan area of the oil surface between the marks (housing less gears), taken as constant.
    pub area: Area,
    /// Volume that fills the sump up to the datum.
    pub below_datum: Volume,
    /// Level of the low mark.
    pub low_mark: Length,
    /// Level of the high mark.
    pub high_mark: Length,
}

/// How a level stands to the marks; a level on a mark counts as between them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stand {
    /// Under the low mark: gears and bearings run dry.
    Low,
    /// Between the marks.
    Between,
    /// Over the high mark: churning, heat, leaks.
    High,
}

impl Sump {
    /// Level that a volume of oil stands at.
    ///
    /// # Formula
    /// `h = (V − V₀) / A`, where V₀ is the volume below the datum.
    ///
    /// # Source
    /// Geometry of an upright prism.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] when the sump has no area or its marks are upside down, or the oil does not reach the datum.
    pub fn level(&self, oil: Volume) -> Result<Length> {
        let area = self.sound()?;
        let v = within("oil volume", oil.value, self.below_datum.value, f64::MAX)?;
        Ok(metres((v - self.below_datum.value) / area))
    }

    /// Volume of oil that stands at a level: the inverse of [`level`](Self::level).
    ///
    /// # Formula
    /// `V = V₀ + A h`
    ///
    /// # Source
    /// As [`level`](Self::level).
    ///
    /// # Errors
    /// [`Error::OutOfRange`] as [`level`](Self::level), and for a negative level.
    pub fn volume(&self, level: Length) -> Result<Volume> {
        let area = self.sound()?;
        let h = within("oil level", level.value, 0.0, f64::MAX)?;
        Ok(cubic_metres(self.below_datum.value + area * h))
    }

    /// Level after the oil has warmed (or cooled, with a negative rise).
    ///
    /// # Formula
    /// `h₂ = h₁ + (V₀ + A h₁) β ΔT / A`: all the oil expands, also that below the datum.
    ///
    /// # Source
    /// Definition of β and geometry. The housing's own growth, about a twentieth of the oil's, and oil thrown up by the
    /// gears are left out: read the level at standstill, after the oil has run down.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] as [`volume`](Self::volume) and [`expanded`](super::expansion::expanded).
    ///
    /// # Example
    /// 12 litres over 0.06 m² rise by 7 mm when warmed by 50 °C:
    /// ```
    /// use drivecourse_calc::{oil::{expansion::RULE_OF_THUMB, level::Sump}, units::*};
    /// let mm = Length::new::<length::millimeter>;
    /// let sump = Sump {
    ///     area: Area::new::<area::square_meter>(0.06),
    ///     below_datum: Volume::new::<volume::liter>(0.0),
    ///     low_mark: mm(190.0),
    ///     high_mark: mm(210.0),
    /// };
    /// let rise = TemperatureRise::new::<temperature_interval::kelvin>(50.0);
    /// let hot = sump.warmed(mm(200.0), RULE_OF_THUMB, rise)?;
    /// approx::assert_abs_diff_eq!(hot.get::<length::millimeter>(), 207.0, epsilon = 1e-9);
    /// # Ok::<(), drivecourse_calc::Error>(())
    /// ```
    ///
    /// Trap: filling a hot sump to the mark leaves it low when it has cooled.
    pub fn warmed(&self, level: Length, beta: TemperatureCoefficient, rise: TemperatureRise) -> Result<Length> {
        let swollen = self.volume(level)?.value * growth(beta, rise)?;
        self.level(cubic_metres(swollen))
    }

    /// Oil to add (negative: to drain) to bring a level to a target, both at the same temperature.
    ///
    /// # Formula
    /// `ΔV = A (h_target − h)`
    ///
    /// # Source
    /// As [`level`](Self::level).
    ///
    /// # Errors
    /// [`Error::OutOfRange`] as [`volume`](Self::volume).
    pub fn top_up(&self, level: Length, target: Length) -> Result<Volume> {
        Ok(self.volume(target)? - self.volume(level)?)
    }

    /// How a level stands to the marks of this position, at the temperature the marks are meant for (most are cold marks).
    ///
    /// # Errors
    /// [`Error::OutOfRange`] as [`volume`](Self::volume).
    ///
    /// Trap: the marks of another mounting position.
    pub fn stand(&self, level: Length) -> Result<Stand> {
        self.volume(level)?;
        Ok(if level < self.low_mark {
            Stand::Low
        } else if level > self.high_mark {
            Stand::High
        } else {
            Stand::Between
        })
    }

    /// Plan area in m², once the sump makes sense.
    fn sound(&self) -> Result<f64> {
        within("volume below the datum", self.below_datum.value, 0.0, f64::MAX)?;
        within("low mark", self.low_mark.value, 0.0, self.high_mark.value)?;
        positive("plan area", self.area.value)
    }
}

/// Change of level from a change of volume.
///
/// # Formula
/// `Δh = ΔV / A`
///
/// # Source
/// Geometry.
///
/// # Errors
/// [`Error::OutOfRange`] unless the area is greater than nought and the volume a number.
pub fn level_change(volume: Volume, area: Area) -> Result<Length> {
    let v = within("volume", volume.value, -f64::MAX, f64::MAX)?;
    Ok(metres(v / positive("plan area", area.value)?))
}

fn metres(value: f64) -> Length {
    Length::new::<length::meter>(value)
}

fn cubic_metres(value: f64) -> Volume {
    Volume::new::<volume::cubic_meter>(value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::oil::expansion::{RULE_OF_THUMB, expanded};
    use crate::units::{area, length::inch, length::millimeter, temperature_interval, volume::gallon, volume::liter};
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }
    fn sump() -> Sump {
        Sump {
            area: Area::new::<area::square_meter>(0.06),
            below_datum: Volume::new::<liter>(3.0),
            low_mark: mm(140.0),
            high_mark: mm(160.0),
        }
    }
    fn kelvin(value: f64) -> TemperatureRise {
        TemperatureRise::new::<temperature_interval::kelvin>(value)
    }

    #[test]
    fn a_us_gallon_over_a_square_foot() {
        // 231 in³ by definition of the gallon, over 144 in²
        let up = level_change(Volume::new::<gallon>(1.0), Area::new::<area::square_foot>(1.0)).unwrap();
        assert_relative_eq!(up.get::<inch>(), 231.0 / 144.0, max_relative = 1e-6);
    }

    #[test]
    fn level_and_volume_undo_each_other() {
        let oil = sump().volume(mm(150.0)).unwrap();
        assert_abs_diff_eq!(oil.get::<liter>(), 12.0, epsilon = 1e-12);
        assert_relative_eq!(sump().level(oil).unwrap().value, 0.150, max_relative = 1e-12);
    }

    #[test]
    fn warming_is_expansion_over_the_area() {
        let hot = sump().warmed(mm(150.0), RULE_OF_THUMB, kelvin(50.0)).unwrap();
        let gain =
            expanded(Volume::new::<liter>(12.0), RULE_OF_THUMB, kelvin(50.0)).unwrap() - Volume::new::<liter>(12.0);
        let step = level_change(gain, sump().area).unwrap();
        assert_relative_eq!((hot - mm(150.0)).value, step.value, max_relative = 1e-9);
        assert_abs_diff_eq!(hot.get::<millimeter>(), 157.0, epsilon = 1e-9);
        assert!(sump().warmed(mm(150.0), RULE_OF_THUMB, kelvin(-50.0)).unwrap() < mm(150.0));
    }

    #[test]
    fn topped_up_hot_stands_low_when_cold() {
        // filled to the low mark at 50 °C over the cold reading
        let hot = sump().low_mark;
        let beta = RULE_OF_THUMB;
        let cold = sump().volume(hot).unwrap().value / growth(beta, kelvin(50.0)).unwrap();
        let cold = sump().level(cubic_metres(cold)).unwrap();
        assert_eq!(sump().stand(hot), Ok(Stand::Between));
        assert_eq!(sump().stand(cold), Ok(Stand::Low));
    }

    #[test]
    fn marks_and_top_up() {
        for (level, stand) in
            [(139.9, Stand::Low), (140.0, Stand::Between), (160.0, Stand::Between), (160.1, Stand::High)]
        {
            assert_eq!(sump().stand(mm(level)), Ok(stand));
        }
        let add = sump().top_up(mm(130.0), mm(150.0)).unwrap();
        assert_abs_diff_eq!(add.get::<liter>(), 1.2, epsilon = 1e-12);
        assert!(sump().top_up(mm(170.0), mm(150.0)).unwrap().value < 0.0);
    }

    #[test]
    fn another_position_reads_another_level() {
        // the same 12 litres in a housing on its side: wider, shallower
        let side = Sump { area: Area::new::<area::square_meter>(0.12), ..sump() };
        let oil = sump().volume(mm(150.0)).unwrap();
        assert_eq!(side.stand(side.level(oil).unwrap()), Ok(Stand::Low));
    }

    #[test]
    fn nonsense_is_refused() {
        let upside_down = Sump { low_mark: mm(170.0), ..sump() };
        assert!(matches!(
            upside_down.level(Volume::new::<liter>(9.0)),
            Err(Error::OutOfRange { input: "low mark", .. })
        ));
        let dry = sump().level(Volume::new::<liter>(2.9));
        assert!(matches!(dry, Err(Error::OutOfRange { input: "oil volume", .. })));
        assert!(sump().stand(mm(f64::NAN)).is_err() && sump().stand(mm(-1.0)).is_err());
        assert!(level_change(Volume::new::<liter>(1.0), Area::new::<area::square_meter>(0.0)).is_err());
    }
}
