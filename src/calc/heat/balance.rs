//! Heat balance of a gear unit: what it loses, how warm that makes it, and what power it can carry without getting too hot.

use crate::error::{positive, within};
use crate::load::torque::usable_efficiency;
use crate::units::{
    Power, Ratio, TemperatureRise, ThermalConductance, power, ratio, temperature_interval, thermal_conductance,
};
use crate::{Error, Result};

/// Power a unit turns into heat.
///
/// # Formula
/// `P_loss = P (1 − η)`, `P` the power that goes in.
///
/// # Source
/// Conservation of energy.
///
/// # Errors
/// [`Error::OutOfRange`] unless the power is greater than nought and the efficiency is in (0, 1].
///
/// # Example
/// 20 hp through an efficiency of 0.952:
/// ```
/// use drivecourse_calc::{heat::balance::loss, units::*};
/// let heat = loss(Power::new::<power::horsepower>(20.0), Ratio::new::<ratio::ratio>(0.952))?;
/// approx::assert_abs_diff_eq!(heat.get::<power::horsepower>(), 0.96, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn loss(input: Power, efficiency: Ratio) -> Result<Power> {
    Ok(watts(positive("power", input.value)? * (1.0 - usable_efficiency(efficiency)?)))
}

/// Rise over ambient at which a unit gives off as much heat as it makes.
///
/// # Formula
/// `ΔT = P_loss / (h A)`, `h A` the thermal conductance from housing to air.
///
/// # Source
/// Newton's law of cooling at steady state.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative loss or a conductance not greater than nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{heat::balance::steady_rise, units::*};
/// let conductance = ThermalConductance::new::<thermal_conductance::watt_per_kelvin>(18.0);
/// let rise = steady_rise(Power::new::<power::watt>(720.0), conductance)?;
/// assert_eq!(rise.get::<temperature_interval::kelvin>(), 40.0);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn steady_rise(loss: Power, conductance: ThermalConductance) -> Result<TemperatureRise> {
    let heat = within("loss", loss.value, 0.0, f64::MAX)?;
    Ok(kelvins(heat / positive("thermal conductance", conductance.value)?))
}

/// Heat a unit gives off at a rise over ambient: the inverse of [`steady_rise`].
///
/// # Formula
/// `P_loss = h A ΔT`
///
/// # Source
/// As [`steady_rise`].
///
/// # Errors
/// [`Error::OutOfRange`] for a negative rise or a conductance not greater than nought.
pub fn heat_given_off(conductance: ThermalConductance, rise: TemperatureRise) -> Result<Power> {
    let dt = within("rise", rise.value, 0.0, f64::MAX)?;
    Ok(watts(positive("thermal conductance", conductance.value)? * dt))
}

/// Thermal conductance from housing to air, from a known loss and the settled rise it makes.
///
/// # Formula
/// `h A = P_loss / ΔT`
///
/// # Source
/// As [`steady_rise`].
///
/// # Errors
/// [`Error::OutOfRange`] unless loss and rise are greater than nought.
///
/// Dirt on the housing, a missing fan or a cover over the unit lowers it.
pub fn conductance(loss: Power, rise: TemperatureRise) -> Result<ThermalConductance> {
    let value = positive("loss", loss.value)? / positive("rise", rise.value)?;
    Ok(ThermalConductance::new::<thermal_conductance::watt_per_kelvin>(value))
}

/// Efficiency that explains a settled rise at a power input.
///
/// # Formula
/// `η = 1 − h A ΔT / P`
///
/// # Source
/// [`loss`] and [`steady_rise`] together.
///
/// # Errors
/// [`Error::OutOfRange`] as those; [`Error::NoSolution`] when more heat leaves than power goes in.
pub fn efficiency_from_rise(input: Power, conductance: ThermalConductance, rise: TemperatureRise) -> Result<Ratio> {
    let efficiency = 1.0 - heat_given_off(conductance, rise)?.value / positive("power", input.value)?;
    if efficiency > 0.0 { Ok(plain(efficiency)) } else { Err(Error::none("efficiency")) }
}

/// Greatest power a unit can take in without exceeding an allowed rise: its thermal limit.
///
/// # Formula
/// `P_th = h A ΔT_allowed / (1 − η)`
///
/// # Source
/// [`loss`] and [`steady_rise`] together.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative rise, a conductance not greater than nought, or an efficiency outside (0, 1);
/// [`Error::NoSolution`] at an efficiency of 1, which has no thermal limit.
///
/// # Example
/// 18 W/K, 55.6 K allowed, efficiency 0.94:
/// ```
/// use drivecourse_calc::{heat::{balance::thermal_limit, rise::ACCEPTABLE_RISE}, units::*};
/// let conductance = ThermalConductance::new::<thermal_conductance::watt_per_kelvin>(18.0);
/// let limit = thermal_limit(conductance, ACCEPTABLE_RISE, Ratio::new::<ratio::ratio>(0.94))?;
/// approx::assert_abs_diff_eq!(limit.get::<power::kilowatt>(), 16.667, epsilon = 0.0005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// On a hot day the rise allowed is the limit temperature less the ambient: the thermal limit falls with it.
pub fn thermal_limit(
    conductance: ThermalConductance,
    allowed_rise: TemperatureRise,
    efficiency: Ratio,
) -> Result<Power> {
    let lost_share = 1.0 - usable_efficiency(efficiency)?;
    let heat = heat_given_off(conductance, allowed_rise)?.value;
    if lost_share > 0.0 { Ok(watts(heat / lost_share)) } else { Err(Error::none("thermal limit")) }
}

/// Settled rise at another load, from the rise at a known one.
///
/// # Formula
/// `ΔT₂ = ΔT₁ (f + (1 − f) P₂ / P₁)`, with `f` the share of the known loss that does not depend on load (oil churning, seals).
/// With `f` = 0 the rise goes in proportion to the load.
///
/// # Source
/// [`steady_rise`] with a loss in two parts; the split is common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative rise or load, a known load not greater than nought, or a share outside 0 to 1.
///
/// # Example
/// 40 K at 10 kW, a quarter of the loss fixed, now at 5 kW:
/// ```
/// use drivecourse_calc::{heat::balance::rise_at_load, units::*};
/// let (kw, kelvins) = (Power::new::<power::kilowatt>, TemperatureRise::new::<temperature_interval::kelvin>);
/// let rise = rise_at_load(kelvins(40.0), kw(10.0), kw(5.0), Ratio::new::<ratio::ratio>(0.25))?;
/// assert_eq!(rise.get::<temperature_interval::kelvin>(), 25.0);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// The rise stays as ambient changes: add it to the new ambient with [`surface`](super::rise::surface).
pub fn rise_at_load(
    known_rise: TemperatureRise,
    known_load: Power,
    load: Power,
    fixed_share: Ratio,
) -> Result<TemperatureRise> {
    let dt = within("rise", known_rise.value, 0.0, f64::MAX)?;
    let f = within("fixed share", fixed_share.value, 0.0, 1.0)?;
    let times = within("load", load.value, 0.0, f64::MAX)? / positive("known load", known_load.value)?;
    Ok(kelvins(dt * (f + (1.0 - f) * times)))
}

fn watts(value: f64) -> Power {
    Power::new::<power::watt>(value)
}

fn kelvins(value: f64) -> TemperatureRise {
    TemperatureRise::new::<temperature_interval::kelvin>(value)
}

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::heat::rise::rise;
    use crate::load::torque::output_power;
    use crate::units::{Temperature, power::horsepower, thermodynamic_temperature::degree_fahrenheit};
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    /// W/K in one Btu/(h °R): 1055.056 J a Btu (International Table), 3600 s, 5/9 K.
    const BTU_PER_HOUR_RANKINE: f64 = 1055.056 / 3600.0 * 1.8;

    fn watts_per_kelvin(value: f64) -> ThermalConductance {
        ThermalConductance::new::<thermal_conductance::watt_per_kelvin>(value)
    }

    #[test]
    fn published_gearbox_balance() {
        // textbook problem: 20 hp in, hA 35 Btu/(h °R), 110 °F in 40 °F: 2450 Btu/h lost, efficiency 0.9519, 19.04 hp out
        // (inputs published, answers recomputed; 3 figures)
        let fahrenheit = Temperature::new::<degree_fahrenheit>;
        let (ha, dt) = (watts_per_kelvin(35.0 * BTU_PER_HOUR_RANKINE), rise(fahrenheit(110.0), fahrenheit(40.0)));
        let heat = heat_given_off(ha, dt).unwrap();
        assert_abs_diff_eq!(heat.value * 3600.0 / 1055.056, 2450.0, epsilon = 1e-6);
        let input = Power::new::<horsepower>(20.0);
        let eta = efficiency_from_rise(input, ha, dt).unwrap();
        assert_abs_diff_eq!(eta.value, 0.9519, epsilon = 5e-5);
        assert_abs_diff_eq!(output_power(input, eta).unwrap().get::<horsepower>(), 19.04, epsilon = 0.005);
        assert_relative_eq!(loss(input, eta).unwrap().value, heat.value, max_relative = 1e-12);
    }

    #[test]
    fn published_heat_loss() {
        // textbook problem: 24 hp in, 10 hp out: 14 hp, which is 9.90 Btu/s (2 figures)
        let heat = loss(Power::new::<horsepower>(24.0), plain(10.0 / 24.0)).unwrap();
        assert_abs_diff_eq!(heat.get::<horsepower>(), 14.0, epsilon = 1e-9);
        assert_abs_diff_eq!(heat.value / 1055.056, 9.90, epsilon = 0.05);
    }

    #[test]
    fn round_trips() {
        let (ha, heat, eta) = (watts_per_kelvin(18.0), watts(720.0), plain(0.94));
        let dt = steady_rise(heat, ha).unwrap();
        assert_relative_eq!(heat_given_off(ha, dt).unwrap().value, heat.value, max_relative = 1e-15);
        assert_relative_eq!(conductance(heat, dt).unwrap().value, ha.value, max_relative = 1e-15);
        // at its thermal limit the unit settles at just the allowed rise, with just its efficiency
        let limit = thermal_limit(ha, kelvins(55.0), eta).unwrap();
        let settled = steady_rise(loss(limit, eta).unwrap(), ha).unwrap();
        assert_relative_eq!(settled.value, 55.0, max_relative = 1e-13);
        assert_relative_eq!(efficiency_from_rise(limit, ha, settled).unwrap().value, eta.value, max_relative = 1e-13);
    }

    #[test]
    fn rise_follows_the_load() {
        // with no fixed share it is the heat balance at a constant efficiency
        let (ha, eta) = (watts_per_kelvin(18.0), plain(0.94));
        let at = |p: f64| steady_rise(loss(watts(p), eta).unwrap(), ha).unwrap();
        let scaled = rise_at_load(at(8000.0), watts(8000.0), watts(11_000.0), plain(0.0)).unwrap();
        assert_relative_eq!(scaled.value, at(11_000.0).value, max_relative = 1e-13);
        // at the known load nothing changes; at none the fixed share is left; at all fixed nothing changes ever
        let rise = |load: f64, f: f64| rise_at_load(kelvins(40.0), watts(8000.0), watts(load), plain(f)).unwrap().value;
        assert_abs_diff_eq!(rise(8000.0, 0.3), 40.0, epsilon = 1e-12);
        assert_abs_diff_eq!(rise(0.0, 0.3), 12.0, epsilon = 1e-12);
        assert_abs_diff_eq!(rise(20_000.0, 1.0), 40.0, epsilon = 1e-12);
    }

    #[test]
    fn what_has_no_answer_is_refused() {
        let (ha, dt) = (watts_per_kelvin(18.0), kelvins(50.0));
        assert_eq!(thermal_limit(ha, dt, plain(1.0)), Err(Error::none("thermal limit")));
        assert_eq!(efficiency_from_rise(watts(900.0), ha, dt), Err(Error::none("efficiency")));
        assert!(matches!(loss(watts(1.0), plain(1.1)), Err(Error::OutOfRange { input: "efficiency", .. })));
        assert!(steady_rise(watts(1.0), watts_per_kelvin(0.0)).is_err());
        assert!(heat_given_off(ha, kelvins(-1.0)).is_err());
        assert!(conductance(watts(1.0), kelvins(0.0)).is_err());
        assert!(rise_at_load(dt, watts(0.0), watts(1.0), plain(0.0)).is_err());
        assert!(rise_at_load(dt, watts(1.0), watts(1.0), plain(1.1)).is_err());
    }
}
