//! Kinematic viscosity at any temperature, from two readings: the straight line of ASTM D341.

use super::{kelvins, square_mm, viscosity_of};
use crate::error::{positive, within};
use crate::units::{KinematicViscosity, Temperature};
use crate::{Result, math};

#[cfg(any(doc, test))]
use crate::Error;

/// Which form of the viscosity term is used.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// `Z = ν + 0.7`: good from 2 mm²/s up, where the rest is below a thousandth.
    Short,
    /// `Z = ν + 0.7 + exp(−1.47 − 1.84 ν − 0.51 ν²)`: for thinner oils too, down to 0.21 mm²/s (limit from memory).
    /// The published way back from Z is an approximation, good to 0.3 %.
    Full,
}

impl Form {
    /// Least viscosity, mm²/s.
    const fn least(self) -> f64 {
        match self {
            Self::Short => 2.0,
            Self::Full => 0.21,
        }
    }

    /// Z of a viscosity in mm²/s.
    fn term(self, v: f64) -> f64 {
        match self {
            Self::Short => v + 0.7,
            Self::Full => v + 0.7 + math::exp(-1.47 - 1.84 * v - 0.51 * v * v),
        }
    }

    /// Viscosity in mm²/s of a Z.
    fn viscosity(self, z: f64) -> f64 {
        let x = z - 0.7;
        match self {
            Self::Short => x,
            Self::Full => x - math::exp(-0.7487 - 3.295 * x + 0.6119 * x * x - 0.3193 * x * x * x),
        }
    }
}

/// Thickest oil worked with, mm²/s: the end of the standard's range (from memory).
const THICKEST: f64 = 2e7;

/// Coldest and hottest temperatures worked with, K (−100 to 400 °C): no oil stays an oil beyond.
const COLDEST: f64 = 173.15;
const HOTTEST: f64 = 673.15;

/// The viscosity of one oil over temperature: a straight line of log log Z over log T.
///
/// # Formula
/// `log₁₀ log₁₀ Z = A − B log₁₀ T`, with T in kelvin, ν in mm²/s and Z by [`Form`]; back from Z in the full form:
/// `ν = (Z − 0.7) − exp(−0.7487 − 3.295 (Z − 0.7) + 0.6119 (Z − 0.7)² − 0.3193 (Z − 0.7)³)`
///
/// # Source
/// ASTM D341 (as quoted on a reference page); short form after Walther.
///
/// Valid between and near the two readings of a liquid oil; not below its pour point.
///
/// # Example
/// 32 mm²/s at 40 °C and 5.4 mm²/s at 100 °C, sought at 80 °C (published answer 8.5 mm²/s):
/// ```
/// use drivecourse_calc::{oil::viscosity::{Curve, Form}, units::*};
/// let cst = KinematicViscosity::new::<kinematic_viscosity::centistokes>;
/// let celsius = Temperature::new::<thermodynamic_temperature::degree_celsius>;
/// let oil = Curve::through((celsius(40.0), cst(32.0)), (celsius(100.0), cst(5.4)), Form::Short)?;
/// approx::assert_abs_diff_eq!(oil.at(celsius(80.0))?.get::<kinematic_viscosity::centistokes>(), 8.5, epsilon = 0.05);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: a straight line between the two readings gives 14 mm²/s instead of 8.5; degrees Celsius in place of kelvin
/// bend the curve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Curve {
    a: f64,
    b: f64,
    form: Form,
}

impl Curve {
    /// The curve through two readings, in either order.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] when a viscosity is outside the range of the form, a temperature outside −100 to 400 °C,
    /// the temperatures are equal, or the hotter reading is not the thinner one.
    pub fn through(
        first: (Temperature, KinematicViscosity),
        second: (Temperature, KinematicViscosity),
        form: Form,
    ) -> Result<Self> {
        let (cold, hot) = if first.0 <= second.0 { (first, second) } else { (second, first) };
        let (x1, x2) = (log_temperature(cold.0)?, log_temperature(hot.0)?);
        positive("temperature difference", hot.0.value - cold.0.value)?;
        let (v1, v2) = (in_range(cold.1, form)?, in_range(hot.1, form)?);
        // At least a millionth thinner: a flat line has no inverse.
        within("viscosity at the hotter reading", hot.1.value, 0.0, cold.1.value * (1.0 - 1e-6))?;
        let (y1, y2) = (double_log(form.term(v1)), double_log(form.term(v2)));
        let b = (y1 - y2) / (x2 - x1);
        Ok(Self { a: y1 + b * x1, b, form })
    }

    /// The constant A.
    pub const fn a(&self) -> f64 {
        self.a
    }

    /// The slope B.
    pub const fn b(&self) -> f64 {
        self.b
    }

    /// Viscosity at a temperature.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] when the temperature is outside −100 to 400 °C or the viscosity outside the form's range.
    pub fn at(&self, temperature: Temperature) -> Result<KinematicViscosity> {
        let y = self.a - self.b * log_temperature(temperature)?;
        let v = self.form.viscosity(math::pow(10.0, math::pow(10.0, y)));
        // a hair of room, so that a reading at the very end of the range comes back
        within("viscosity", v / super::SQUARE_MM, self.form.least() * 0.999e-6, THICKEST * 1.001e-6)?;
        Ok(viscosity_of(v))
    }

    /// Temperature at which the oil has a viscosity: the inverse of [`at`](Self::at).
    ///
    /// # Errors
    /// [`Error::OutOfRange`] when the viscosity is outside the form's range, or met only outside −100 to 400 °C.
    pub fn temperature(&self, viscosity: KinematicViscosity) -> Result<Temperature> {
        let v = in_range(viscosity, self.form)?;
        let t = math::pow(10.0, (self.a - double_log(self.form.term(v))) / self.b);
        Ok(kelvins(within("temperature", t, COLDEST, HOTTEST)?))
    }
}

fn log_temperature(temperature: Temperature) -> Result<f64> {
    Ok(math::log10(within("temperature", temperature.value, COLDEST, HOTTEST)?))
}

fn double_log(z: f64) -> f64 {
    math::log10(math::log10(z))
}

fn in_range(viscosity: KinematicViscosity, form: Form) -> Result<f64> {
    let v = square_mm(viscosity);
    if v >= form.least() && v <= THICKEST {
        return Ok(v);
    }
    within("viscosity", viscosity.value, form.least() / super::SQUARE_MM, THICKEST / super::SQUARE_MM)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::kinematic_viscosity::centistokes;
    use crate::units::thermodynamic_temperature::degree_celsius;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn cst(value: f64) -> KinematicViscosity {
        KinematicViscosity::new::<centistokes>(value)
    }
    fn celsius(value: f64) -> Temperature {
        Temperature::new::<degree_celsius>(value)
    }
    fn published(form: Form) -> Curve {
        Curve::through((celsius(40.0), cst(32.0)), (celsius(100.0), cst(5.4)), form).unwrap()
    }

    /// A worksheet quoting ASTM D341 prints A = 9.5259, B = 3.7449 and 8.5 mm²/s at 80 °C, with T = t + 273.
    #[test]
    fn published_line() {
        // the same sheet's kelvins, rebuilt by taking 0.15 K off every temperature
        let short = |t: f64| kelvins(t + 273.0);
        let oil = Curve::through((short(40.0), cst(32.0)), (short(100.0), cst(5.4)), Form::Short).unwrap();
        assert_abs_diff_eq!(oil.a(), 9.5259, epsilon = 5e-5);
        assert_abs_diff_eq!(oil.b(), 3.7449, epsilon = 5e-5);
        assert_abs_diff_eq!(oil.at(short(80.0)).unwrap().get::<centistokes>(), 8.5, epsilon = 0.05);
        // with 273.15, recomputed independently: 9.53082, 3.74658, 8.5332
        let oil = published(Form::Short);
        assert_abs_diff_eq!(oil.a(), 9.53082, epsilon = 1e-5);
        assert_abs_diff_eq!(oil.b(), 3.74658, epsilon = 1e-5);
        assert_abs_diff_eq!(oil.at(celsius(80.0)).unwrap().get::<centistokes>(), 8.5332, epsilon = 1e-4);
    }

    #[test]
    fn readings_come_back() {
        let oil = published(Form::Short);
        for (t, v) in [(40.0, 32.0), (100.0, 5.4)] {
            assert_relative_eq!(oil.at(celsius(t)).unwrap().get::<centistokes>(), v, max_relative = 1e-9);
            assert_abs_diff_eq!(oil.temperature(cst(v)).unwrap().get::<degree_celsius>(), t, epsilon = 1e-9);
        }
    }

    /// ASTM D341: above 2 mm²/s the extra term is negligible; 10 mm²/s gives Z = 10.7000.
    #[test]
    fn both_forms_agree_on_gear_oils() {
        assert_abs_diff_eq!(Form::Full.term(10.0), 10.7, epsilon = 5e-5);
        assert!(Form::Full.term(2.0) - Form::Short.term(2.0) < 1e-3);
        for t in (-20..=120).step_by(10) {
            let t = celsius(f64::from(t));
            let (short, full) = (published(Form::Short).at(t).unwrap(), published(Form::Full).at(t).unwrap());
            assert_relative_eq!(short.value, full.value, max_relative = 1e-3);
        }
    }

    /// The published way back from Z is an approximation: how good it is, measured here.
    #[test]
    fn full_form_round_trip() {
        let mut v = 0.21;
        while v < 1e5 {
            assert_relative_eq!(Form::Full.viscosity(Form::Full.term(v)), v, max_relative = 3e-3);
            v *= 1.05;
        }
        let thin = Curve::through((celsius(40.0), cst(1.2)), (celsius(100.0), cst(0.6)), Form::Full).unwrap();
        assert_relative_eq!(thin.at(celsius(40.0)).unwrap().get::<centistokes>(), 1.2, max_relative = 2e-3);
        assert_relative_eq!(thin.at(celsius(100.0)).unwrap().get::<centistokes>(), 0.6, max_relative = 2e-3);
    }

    #[test]
    fn falls_with_temperature_and_order_does_not_matter() {
        let oil = published(Form::Short);
        let swapped = Curve::through((celsius(100.0), cst(5.4)), (celsius(40.0), cst(32.0)), Form::Short);
        assert_eq!(swapped, Ok(oil));
        let mut last = f64::MAX;
        for t in -10..=110 {
            let v = oil.at(celsius(f64::from(t))).unwrap().value;
            assert!(v < last);
            last = v;
        }
    }

    #[test]
    fn what_has_no_answer_is_refused() {
        let through = |t1, v1, t2, v2, form| Curve::through((celsius(t1), cst(v1)), (celsius(t2), cst(v2)), form);
        let refused = |result: Result<Curve>| match result {
            Err(Error::OutOfRange { input, .. }) => input,
            other => panic!("{other:?}"),
        };
        assert_eq!(refused(through(40.0, 32.0, 40.0, 5.4, Form::Short)), "temperature difference");
        assert_eq!(refused(through(40.0, 5.4, 100.0, 32.0, Form::Short)), "viscosity at the hotter reading");
        assert_eq!(refused(through(40.0, 32.0, 100.0, 1.9, Form::Short)), "viscosity");
        assert!(through(40.0, 32.0, 100.0, 1.9, Form::Full).is_ok());
        assert_eq!(refused(through(f64::NAN, 32.0, 100.0, 5.4, Form::Full)), "temperature");
        assert_eq!(refused(through(40.0, f64::NAN, 100.0, 5.4, Form::Full)), "viscosity");
        let oil = published(Form::Short);
        assert!(oil.at(celsius(-110.0)).is_err() && oil.at(celsius(300.0)).is_err());
        assert!(oil.temperature(cst(1.0)).is_err() && oil.temperature(cst(3e7)).is_err());
        let flat = through(40.0, 32.0, 100.0, 31.9, Form::Short).unwrap();
        assert!(matches!(flat.temperature(cst(2.0)), Err(Error::OutOfRange { input: "temperature", .. })));
    }
}
