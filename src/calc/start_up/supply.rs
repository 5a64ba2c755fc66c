//! The three phases of the supply: their mean, and how unequal they are.

use super::plain;
use crate::Result;
use crate::error::positive;
use crate::units::{
    ElectricCurrent, ElectricPotential, Ratio, electric_current::ampere, electric_potential::volt, ratio,
};
use core::marker::PhantomData;

#[cfg(any(doc, test))]
use crate::Error;

/// Voltage unbalance from which a motor must give less than its rated power: 1 %.
///
/// # Source
/// NEMA MG 1 (from memory).
pub const UNBALANCE_LIMIT: Ratio = Ratio { dimension: PhantomData, units: PhantomData, value: 0.01 };

/// Mean of the three line-to-line voltages.
///
/// # Formula
/// `V = (V₁ + V₂ + V₃) / 3`
///
/// # Source
/// US Department of Energy, fact sheet *Determining Electric Motor Load and Efficiency*.
///
/// # Errors
/// [`Error::OutOfRange`] unless every voltage is greater than nought.
pub fn mean_voltage(phases: [ElectricPotential; 3]) -> Result<ElectricPotential> {
    Ok(ElectricPotential::new::<volt>(mean("voltage", phases.map(|v| v.value))?))
}

/// Mean of the three line currents.
///
/// # Formula
/// `I = (I₁ + I₂ + I₃) / 3`
///
/// # Source
/// As [`mean_voltage`].
///
/// # Errors
/// [`Error::OutOfRange`] unless every current is greater than nought: a phase without current is a fault, not a reading.
pub fn mean_current(phases: [ElectricCurrent; 3]) -> Result<ElectricCurrent> {
    Ok(ElectricCurrent::new::<ampere>(mean("current", phases.map(|i| i.value))?))
}

/// Voltage unbalance.
///
/// # Formula
/// `u = max |V_k − V| / V`, V the mean of the three.
///
/// # Source
/// NEMA MG 1, definition of voltage unbalance (from memory).
///
/// # Errors
/// As [`mean_voltage`].
///
/// # Example
/// ```
/// use drivecourse_calc::{start_up::supply::voltage_unbalance, units::*};
/// let unbalance = voltage_unbalance([460.0, 467.0, 450.0].map(ElectricPotential::new::<electric_potential::volt>))?;
/// approx::assert_abs_diff_eq!(unbalance.get::<ratio::percent>(), 1.96, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: largest minus smallest over the mean, which is up to twice as much.
pub fn voltage_unbalance(phases: [ElectricPotential; 3]) -> Result<Ratio> {
    unbalance("voltage", phases.map(|v| v.value))
}

/// Current unbalance, formed as the voltage unbalance is.
///
/// # Formula
/// `u = max |I_k − I| / I`
///
/// # Source
/// As [`voltage_unbalance`]. A voltage unbalance makes a current unbalance several times as large (from memory).
///
/// # Errors
/// As [`mean_current`].
pub fn current_unbalance(phases: [ElectricCurrent; 3]) -> Result<Ratio> {
    unbalance("current", phases.map(|i| i.value))
}

fn mean(input: &'static str, phases: [f64; 3]) -> Result<f64> {
    let mut sum = 0.0;
    for phase in phases {
        sum += positive(input, phase)?;
    }
    positive(input, sum / 3.0)
}

fn unbalance(input: &'static str, phases: [f64; 3]) -> Result<Ratio> {
    let mean = mean(input, phases)?;
    Ok(plain(phases.iter().map(|phase| (phase - mean).abs()).fold(0.0, f64::max) / mean))
}

/// Whether a voltage unbalance is past [`UNBALANCE_LIMIT`].
pub fn is_unbalanced(unbalance: Ratio) -> bool {
    unbalance.get::<ratio::ratio>() > UNBALANCE_LIMIT.value
}

/// Share of its plate voltage by which a motor's supply may lie off it: 10 %.
///
/// # Source
/// NEMA MG 1 (from memory). Other rules allow less; the plate or the maker goes first.
pub const VOLTAGE_LIMIT: Ratio = Ratio { dimension: PhantomData, units: PhantomData, value: 0.1 };

/// Voltage off the plate, as a share of the plate voltage; below nought when it is low.
///
/// # Formula
/// `e = V / V_n − 1`
///
/// # Source
/// The definition.
///
/// # Errors
/// [`Error::OutOfRange`] unless both voltages are greater than nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{start_up::supply::off_the_plate, units::*};
/// let volts = ElectricPotential::new::<electric_potential::volt>;
/// approx::assert_abs_diff_eq!(off_the_plate(volts(437.0), volts(460.0))?.get::<ratio::percent>(), -5.0, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn off_the_plate(voltage: ElectricPotential, plate: ElectricPotential) -> Result<Ratio> {
    Ok(plain(positive("voltage", voltage.value)? / positive("plate voltage", plate.value)? - 1.0))
}

/// Whether a voltage lies further off the plate than [`VOLTAGE_LIMIT`], up or down.
pub fn is_off_the_plate(off: Ratio) -> bool {
    // A hair of room, since a share worked out from printed volts ends in a binary digit.
    off.value.abs() > VOLTAGE_LIMIT.value * (1.0 + 1e-9)
}

/// Currents off their mean, as shares of it, that unequal voltages between the lines make.
///
/// # Formula
/// `e₁ = k ((V₁ + V₃) / 2V − 1)`, line 1 lying between V₁ (lines 1 and 2) and V₃ (lines 3 and 1), V the mean, and so on round.
///
/// # Source
/// Common practice, no source: the currents are several times as unequal as the voltages, by a factor k of 6 to 10. How they lie
/// among the lines is a simple picture: a line follows the two voltages it takes part in.
///
/// # Errors
/// As [`mean_voltage`]; [`Error::OutOfRange`] for a factor that is negative.
pub fn currents_off_the_mean(phases: [ElectricPotential; 3], factor: Ratio) -> Result<[Ratio; 3]> {
    let k = crate::error::within("factor", factor.value, 0.0, 1e3)?;
    let mean = mean_voltage(phases)?.value;
    let off = |one: usize, two: usize| plain(k * ((phases[one].value + phases[two].value) / (2.0 * mean) - 1.0));
    Ok([off(0, 2), off(0, 1), off(1, 2)])
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq;

    #[test]
    fn means() {
        let volts = mean_voltage([467.0, 473.0, 469.0].map(ElectricPotential::new::<volt>)).unwrap();
        assert_abs_diff_eq!(volts.value, 1409.0 / 3.0, epsilon = 1e-9);
        let amps = mean_current([36.0, 38.0, 37.0].map(ElectricCurrent::new::<ampere>)).unwrap();
        assert_abs_diff_eq!(amps.value, 37.0, epsilon = 1e-12);
    }

    #[test]
    fn equal_phases_are_balanced_and_a_dead_one_is_refused() {
        let even = [400.0; 3].map(ElectricPotential::new::<volt>);
        let unbalance = voltage_unbalance(even).unwrap();
        assert_eq!(unbalance.value, 0.0);
        assert!(!is_unbalanced(unbalance) && !is_unbalanced(UNBALANCE_LIMIT) && is_unbalanced(plain(0.0101)));
        let dead = [10.0, 10.0, 0.0].map(ElectricCurrent::new::<ampere>);
        assert!(matches!(current_unbalance(dead), Err(Error::OutOfRange { input: "current", .. })));
        let amps = [33.0, 30.0, 27.0].map(ElectricCurrent::new::<ampere>);
        assert_abs_diff_eq!(current_unbalance(amps).unwrap().value, 0.1, epsilon = 1e-12);
    }

    #[test]
    fn off_the_plate_counts_both_ways() {
        let volts = ElectricPotential::new::<volt>;
        assert!(!is_off_the_plate(off_the_plate(volts(360.0), volts(400.0)).unwrap()));
        assert!(is_off_the_plate(off_the_plate(volts(359.0), volts(400.0)).unwrap()));
        assert!(is_off_the_plate(off_the_plate(volts(441.0), volts(400.0)).unwrap()));
        assert!(off_the_plate(volts(400.0), volts(0.0)).is_err());
    }

    #[test]
    fn currents_off_the_mean_add_up_to_nought() {
        let off = currents_off_the_mean([400.0, 388.0, 400.0].map(ElectricPotential::new::<volt>), plain(8.0)).unwrap();
        assert_abs_diff_eq!(off.iter().map(|e| e.value).sum::<f64>(), 0.0, epsilon = 1e-12);
        // V = 396: line 1 lies between two voltages of 400.
        assert_abs_diff_eq!(off[0].value, 8.0 * 4.0 / 396.0, epsilon = 1e-12);
        assert_abs_diff_eq!(off[1].value, -8.0 * 2.0 / 396.0, epsilon = 1e-12);
    }
}
