//! How long oil lasts when it runs hot: the ten-degree rule.

use super::kelvins;
use crate::error::{positive, within};
use crate::heat::rise::rise;
use crate::units::{Ratio, Temperature, TemperatureRise, Time, ratio, time};
use crate::{Result, math};
use core::marker::PhantomData;

#[cfg(any(doc, test))]
use crate::Error;

/// Rise that halves the life of oil: 10 °C (18 °F).
///
/// # Source
/// Common practice; J. Fitch, *Practicing Oil Analysis* (as quoted).
pub const HALVING: TemperatureRise = TemperatureRise { dimension: PhantomData, units: PhantomData, value: 10.0 };

/// Share of its base life that oil keeps at a temperature.
///
/// # Formula
/// `f = 2^(−(T − T_b)/10 °C)` above the base temperature T_b; 1 at and below it, where the rule claims nothing.
///
/// # Source
/// As [`HALVING`]. A rule of thumb, disputed for modern base stocks; the base is quoted as 60 or 75 °C.
///
/// # Errors
/// [`Error::OutOfRange`] when a temperature is not −50 to 250 °C.
///
/// # Example
/// 18 °F above the base halves the life:
/// ```
/// use drivecourse_calc::{oil::life::life_share, units::*};
/// let fahrenheit = Temperature::new::<thermodynamic_temperature::degree_fahrenheit>;
/// approx::assert_abs_diff_eq!(life_share(fahrenheit(158.0), fahrenheit(140.0))?.value, 0.5, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: scaling in proportion (20 °C over is a quarter of the life, not none of it).
pub fn life_share(temperature: Temperature, base: Temperature) -> Result<Ratio> {
    for t in [temperature, base] {
        within("oil temperature", t.value, 223.15, 523.15)?;
    }
    let over = rise(temperature, base).value.max(0.0);
    Ok(Ratio::new::<ratio::ratio>(math::pow(2.0, -over / HALVING.value)))
}

/// Life of oil at a temperature, from its life at or below the base temperature.
///
/// # Formula
/// `t = t_b · f`, with f by [`life_share`].
///
/// # Source
/// As [`life_share`].
///
/// # Errors
/// As [`life_share`], and unless the base life is greater than nought.
pub fn oil_life(base_life: Time, temperature: Temperature, base: Temperature) -> Result<Time> {
    let t = positive("base life", base_life.value)?;
    Ok(Time::new::<time::second>(t * life_share(temperature, base)?.value))
}

/// Hottest temperature at which oil keeps a share of its base life: the inverse of [`life_share`].
///
/// # Formula
/// `T = T_b − 10 °C · log₂ f`
///
/// # Source
/// As [`life_share`].
///
/// # Errors
/// [`Error::OutOfRange`] unless the share is a thousandth to one and the base −50 to 250 °C.
pub fn hottest_for(share: Ratio, base: Temperature) -> Result<Temperature> {
    let f = within("share of the life", share.value, 1e-3, 1.0)?;
    let b = within("oil temperature", base.value, 223.15, 523.15)?;
    Ok(kelvins(b - HALVING.value * math::ln(f) / core::f64::consts::LN_2))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::thermodynamic_temperature::degree_celsius;
    use crate::units::time::hour;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn celsius(value: f64) -> Temperature {
        Temperature::new::<degree_celsius>(value)
    }

    /// J. Fitch's rule, arithmetic: +30 °C an eighth, +10 °C a half, +5 °C 0.7071.
    #[test]
    fn published_shares() {
        for (over, share) in
            [(30.0, 0.125), (10.0, 0.5), (5.0, core::f64::consts::FRAC_1_SQRT_2), (0.0, 1.0), (-20.0, 1.0)]
        {
            assert_abs_diff_eq!(life_share(celsius(60.0 + over), celsius(60.0)).unwrap().value, share, epsilon = 5e-5);
        }
    }

    #[test]
    fn lives_and_round_trip() {
        let life = oil_life(Time::new::<hour>(8000.0), celsius(80.0), celsius(60.0)).unwrap();
        assert_relative_eq!(life.get::<hour>(), 2000.0, max_relative = 1e-9);
        for share in [1.0, 0.7, 0.5, 0.01] {
            let hottest = hottest_for(Ratio::new::<ratio::ratio>(share), celsius(60.0)).unwrap();
            assert_relative_eq!(life_share(hottest, celsius(60.0)).unwrap().value, share, max_relative = 1e-9);
        }
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(matches!(life_share(celsius(300.0), celsius(60.0)), Err(Error::OutOfRange { .. })));
        assert!(life_share(celsius(f64::NAN), celsius(60.0)).is_err());
        assert!(oil_life(Time::default(), celsius(60.0), celsius(60.0)).is_err());
        assert!(hottest_for(Ratio::new::<ratio::ratio>(0.0), celsius(60.0)).is_err());
    }
}
