//! Power, load and current of a three-phase motor.

use super::plain;
use crate::Result;
use crate::error::{positive, within};
use crate::load::torque::usable_efficiency;
use crate::units::{ElectricCurrent, ElectricPotential, Power, Ratio, electric_current::ampere, power::watt};

#[cfg(any(doc, test))]
use crate::Error;

/// √3: line-to-line voltage over phase voltage of a balanced three-phase supply.
const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// Electrical readings of a running motor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Supply {
    /// Line-to-line voltage, mean of the three.
    pub voltage: ElectricPotential,
    /// Line current, mean of the three.
    pub current: ElectricCurrent,
    /// Power factor cos φ at this load.
    pub power_factor: Ratio,
}

/// Electrical power that a motor draws.
///
/// # Formula
/// `P₁ = √3 V I cos φ`
///
/// # Source
/// US Department of Energy, fact sheet *Determining Electric Motor Load and Efficiency*, equation 1.
///
/// # Errors
/// [`Error::OutOfRange`] unless voltage and current are greater than nought and the power factor is in (0, 1].
///
/// # Example
/// ```
/// use drivecourse_calc::{start_up::motor::{Supply, input_power}, units::*};
/// let drawn = input_power(&Supply {
///     voltage: ElectricPotential::new::<electric_potential::volt>(400.0),
///     current: ElectricCurrent::new::<electric_current::ampere>(10.0),
///     power_factor: Ratio::new::<ratio::ratio>(0.8),
/// })?;
/// approx::assert_abs_diff_eq!(drawn.get::<power::kilowatt>(), 5.54, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: √3 left out; the power factor left out; the phase voltage put in for the line voltage.
pub fn input_power(supply: &Supply) -> Result<Power> {
    let (v, i) = (positive("voltage", supply.voltage.value)?, positive("current", supply.current.value)?);
    Ok(Power::new::<watt>(SQRT_3 * v * i * usable_power_factor(supply.power_factor)?))
}

/// Line current that a motor draws for a shaft power: the inverse of [`input_power`], less what the motor loses.
///
/// # Formula
/// `I = P / (√3 V cos φ η)`
///
/// # Source
/// As [`input_power`]; definition of efficiency.
///
/// # Errors
/// [`Error::OutOfRange`] unless power and voltage are greater than nought, and power factor and efficiency in (0, 1].
pub fn current_for(
    shaft: Power,
    voltage: ElectricPotential,
    power_factor: Ratio,
    efficiency: Ratio,
) -> Result<ElectricCurrent> {
    let (p, v) = (positive("power", shaft.value)?, positive("voltage", voltage.value)?);
    let drawn = p / usable_efficiency(efficiency)?;
    Ok(ElectricCurrent::new::<ampere>(drawn / (SQRT_3 * v * usable_power_factor(power_factor)?)))
}

/// Share of the rated power that the shaft gives.
///
/// # Formula
/// `x = P / P_r`
///
/// # Source
/// The definition.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative power or a rated power not greater than nought.
pub fn load_share(shaft: Power, rated: Power) -> Result<Ratio> {
    Ok(plain(within("power", shaft.value, 0.0, f64::MAX)? / positive("rated power", rated.value)?))
}

/// Current over the full-load current of the nameplate.
///
/// # Formula
/// `r = I / I_f`
///
/// # Source
/// The definition. Above 1 (or above the service factor, where the nameplate gives one) the motor is overloaded.
///
/// # Errors
/// [`Error::OutOfRange`] unless both currents are greater than nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{start_up::motor::full_load_current_ratio, units::*};
/// let amps = ElectricCurrent::new::<electric_current::ampere>;
/// approx::assert_abs_diff_eq!(full_load_current_ratio(amps(11.2), amps(14.0))?.value, 0.8, epsilon = 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: read as the load. An unloaded motor draws a quarter to a half of its full-load current (small ones more, from memory),
/// so under about half load the ratio says little: see [`load_from_current`].
pub fn full_load_current_ratio(current: ElectricCurrent, full_load: ElectricCurrent) -> Result<Ratio> {
    Ok(plain(positive("current", current.value)? / positive("full-load current", full_load.value)?))
}

/// Share of the rated load by proportion from the current, corrected for the voltage.
///
/// # Formula
/// `x = (I / I_f) (V / V_r)`
///
/// # Source
/// US Department of Energy, fact sheet *Determining Electric Motor Load and Efficiency*, line-current method
/// (equation from memory).
///
/// # Errors
/// [`Error::OutOfRange`] unless all four are greater than nought.
///
/// The current follows the load roughly in proportion down to about half load; below, the magnetising current hides it
/// (same fact sheet, wording from memory).
pub fn load_by_proportion(
    current: ElectricCurrent,
    full_load: ElectricCurrent,
    voltage: ElectricPotential,
    rated_voltage: ElectricPotential,
) -> Result<Ratio> {
    let v = positive("voltage", voltage.value)? / positive("rated voltage", rated_voltage.value)?;
    Ok(plain(full_load_current_ratio(current, full_load)?.value * v))
}

/// Share of the rated load from the current, the no-load current taken out.
///
/// # Formula
/// `x = √((I² − I₀²) / (I_f² − I₀²))`, I₀ the no-load current: it magnetises the motor and stands at right angles to the current
/// that makes the torque, so the two add as the sides of a right-angled triangle.
///
/// # Source
/// Phasor sum of magnetising and load current, the losses at no load left out (from memory).
///
/// # Errors
/// [`Error::OutOfRange`] unless `0 < I₀ < I_f` and the current is at least I₀.
///
/// # Example
/// A motor of 10 A at full load and 4 A unloaded draws 6 A: not 60 % of the load but half.
/// ```
/// use drivecourse_calc::{start_up::motor::load_from_current, units::*};
/// let amps = ElectricCurrent::new::<electric_current::ampere>;
/// let share = load_from_current(amps(6.0), amps(10.0), amps(4.0))?;
/// approx::assert_abs_diff_eq!(share.value, 0.488, epsilon = 0.0005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn load_from_current(
    current: ElectricCurrent,
    full_load: ElectricCurrent,
    no_load: ElectricCurrent,
) -> Result<Ratio> {
    let (full, idle) = currents(full_load, no_load)?;
    let i = within("current", current.value, idle, f64::MAX)?;
    Ok(plain(((i - idle) * (i + idle) / ((full - idle) * (full + idle))).sqrt()))
}

/// Current at a share of the rated load: the inverse of [`load_from_current`].
///
/// # Formula
/// `I = √(I₀² + x² (I_f² − I₀²))`
///
/// # Source
/// As [`load_from_current`].
///
/// # Errors
/// [`Error::OutOfRange`] unless `0 < I₀ < I_f` and the share is not negative.
pub fn current_at_load(
    load_share: Ratio,
    full_load: ElectricCurrent,
    no_load: ElectricCurrent,
) -> Result<ElectricCurrent> {
    let (full, idle) = currents(full_load, no_load)?;
    let x = within("load share", load_share.value, 0.0, f64::MAX)?;
    Ok(ElectricCurrent::new::<ampere>((idle * idle + x * x * (full - idle) * (full + idle)).sqrt()))
}

fn usable_power_factor(power_factor: Ratio) -> Result<f64> {
    within("power factor", power_factor.value, f64::MIN_POSITIVE, 1.0)
}

fn currents(full_load: ElectricCurrent, no_load: ElectricCurrent) -> Result<(f64, f64)> {
    let full = positive("full-load current", full_load.value)?;
    Ok((full, within("no-load current", no_load.value, f64::MIN_POSITIVE, full.next_down())?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{
        electric_potential::volt,
        power::{horsepower, kilowatt},
    };
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn amps(value: f64) -> ElectricCurrent {
        ElectricCurrent::new::<ampere>(value)
    }
    fn volts(value: f64) -> ElectricPotential {
        ElectricPotential::new::<volt>(value)
    }

    /// A. Emadi (ed.), *Energy-Efficient Electric Motors*, Examples 1.1 and 1.2 (title from memory): 230 V, 7 A, power factor
    /// 0.8, 2.5 hp (746 W each) at the shaft: 365 W are lost. The book has cut the input to four digits: 1 W.
    #[test]
    fn published_loss() {
        let supply = Supply { voltage: volts(230.0), current: amps(7.0), power_factor: plain(0.8) };
        let lost = input_power(&supply).unwrap().get::<watt>() - 2.5 * 746.0;
        assert_abs_diff_eq!(lost, 365.0, epsilon = 1.0);
    }

    #[test]
    fn the_horsepower_form_is_the_same() {
        // 1.732 V I cosφ η / 746, the form of the handbooks: their constants are rounded to about 2 in 10 000
        let supply = Supply { voltage: volts(460.0), current: amps(20.0), power_factor: plain(0.85) };
        let hp = 0.9 * input_power(&supply).unwrap().get::<horsepower>();
        assert_relative_eq!(hp, 1.732 * 460.0 * 20.0 * 0.85 * 0.9 / 746.0, max_relative = 5e-4);
    }

    #[test]
    fn round_trips() {
        let supply = Supply { voltage: volts(400.0), current: amps(15.3), power_factor: plain(0.83) };
        let shaft = 0.9 * input_power(&supply).unwrap();
        let back = current_for(shaft, supply.voltage, supply.power_factor, plain(0.9)).unwrap();
        assert_relative_eq!(back.value, 15.3, max_relative = 1e-14);
        for x in [0.0, 0.1, 0.5, 1.0, 1.2] {
            let i = current_at_load(plain(x), amps(10.0), amps(4.0)).unwrap();
            assert_abs_diff_eq!(load_from_current(i, amps(10.0), amps(4.0)).unwrap().value, x, epsilon = 1e-7);
        }
    }

    #[test]
    fn current_hides_a_small_load() {
        let share = |i: f64| load_from_current(amps(i), amps(10.0), amps(4.0)).unwrap().value;
        assert_eq!((share(4.0), share(10.0)), (0.0, 1.0));
        // by proportion an idle motor seems to carry 40 %
        let seeming = load_by_proportion(amps(4.0), amps(10.0), volts(460.0), volts(460.0)).unwrap();
        assert_abs_diff_eq!(seeming.value, 0.4, epsilon = 1e-12);
        // more volts, less current for the same load
        let seeming = load_by_proportion(amps(8.0), amps(10.0), volts(483.0), volts(460.0)).unwrap();
        assert_abs_diff_eq!(seeming.value, 0.84, epsilon = 1e-12);
    }

    #[test]
    fn nonsense_is_refused() {
        let good = Supply { voltage: volts(400.0), current: amps(10.0), power_factor: plain(0.8) };
        let refused = |supply: Supply, input: &str| match input_power(&supply) {
            Err(Error::OutOfRange { input: named, .. }) => named == input,
            _ => false,
        };
        assert!(refused(Supply { voltage: volts(0.0), ..good }, "voltage"));
        assert!(refused(Supply { current: amps(f64::NAN), ..good }, "current"));
        assert!(refused(Supply { power_factor: plain(1.01), ..good }, "power factor"));
        assert!(current_for(Power::new::<kilowatt>(1.0), volts(400.0), plain(0.8), plain(0.0)).is_err());
        assert!(load_from_current(amps(3.0), amps(10.0), amps(4.0)).is_err(), "less than unloaded");
        assert!(load_from_current(amps(8.0), amps(4.0), amps(4.0)).is_err());
        assert!(load_share(Power::new::<watt>(-1.0), Power::new::<watt>(1.0)).is_err());
    }
}
