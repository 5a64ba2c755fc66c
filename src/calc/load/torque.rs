//! Torque, power and speed, and how a gear reducer changes them.

use crate::Result;
use crate::error::{positive, within};
use crate::units::{AngularVelocity, Power, Ratio, Torque, angular_velocity, power, torque};

#[cfg(any(doc, test))]
use crate::Error;

/// Torque that carries `power` at `speed`.
///
/// # Formula
/// `T = P / ω`; with the units of the shop floor `T[lb·in] = 63 025 HP / n` and `T[N·m] = 9 549 kW / n` (n in rev/min).
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design* (63 025 form); 9 549.3 is 60 000/2π.
/// Some books round to 63 000 or 9 550: up to 0.04 % apart.
///
/// # Errors
/// [`Error::OutOfRange`] unless power and speed are greater than nought.
///
/// # Example
/// 5 kW at 1500 rev/min:
/// ```
/// use drivecourse_calc::{load::torque::torque, units::*};
/// let power = Power::new::<power::kilowatt>(5.0);
/// let speed = AngularVelocity::new::<angular_velocity::revolution_per_minute>(1500.0);
/// let t = torque(power, speed)?;
/// approx::assert_abs_diff_eq!(t.get::<torque::newton_meter>(), 31.83, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the speed is that of the shaft whose torque is sought, not the motor's.
pub fn torque(power: Power, speed: AngularVelocity) -> Result<Torque> {
    let (p, omega) = (positive("power", power.value)?, positive("speed", speed.value)?);
    Ok(newton_metres(p / omega))
}

/// Power that `torque` carries at `speed`.
///
/// # Formula
/// `P = T ω`
///
/// # Source
/// As [`torque()`].
///
/// # Errors
/// [`Error::OutOfRange`] unless torque and speed are greater than nought.
pub fn power(torque: Torque, speed: AngularVelocity) -> Result<Power> {
    let (t, omega) = (positive("torque", torque.value)?, positive("speed", speed.value)?);
    Ok(Power::new::<power::watt>(t * omega))
}

/// Speed at which `torque` carries `power`.
///
/// # Formula
/// `ω = P / T`
///
/// # Source
/// As [`torque()`].
///
/// # Errors
/// [`Error::OutOfRange`] unless power and torque are greater than nought.
pub fn speed(power: Power, torque: Torque) -> Result<AngularVelocity> {
    let (p, t) = (positive("power", power.value)?, positive("torque", torque.value)?);
    Ok(radians_per_second(p / t))
}

/// Torque on the output shaft of a reducer of speed ratio `ratio` (input speed over output speed).
///
/// # Formula
/// `T₂ = T₁ i η`
///
/// # Source
/// Conservation of energy; T. H. Wentzell, *Machine Design*, Example 11.4, p. 236 (without loss).
///
/// # Errors
/// [`Error::OutOfRange`] unless torque and ratio are greater than nought and the efficiency is in (0, 1].
///
/// # Example
/// 27.39 lb·in through 24 over 10 teeth, losses left out (the source prints 65.74 lb·in):
/// ```
/// use drivecourse_calc::{load::torque::output_torque, units::*};
/// let input = Torque::new::<torque::pound_force_inch>(27.39);
/// let output = output_torque(input, Ratio::new::<ratio::ratio>(2.4), Ratio::new::<ratio::ratio>(1.0))?;
/// approx::assert_abs_diff_eq!(output.get::<torque::pound_force_inch>(), 65.74, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn output_torque(input: Torque, ratio: Ratio, efficiency: Ratio) -> Result<Torque> {
    Ok(newton_metres(positive("torque", input.value)? * torque_gain(ratio, efficiency)?))
}

/// Torque on the input shaft of a reducer that must give `output`: the inverse of [`output_torque`].
///
/// # Formula
/// `T₁ = T₂ / (i η)`
///
/// # Source
/// As [`output_torque`].
///
/// # Errors
/// As [`output_torque`].
pub fn input_torque(output: Torque, ratio: Ratio, efficiency: Ratio) -> Result<Torque> {
    Ok(newton_metres(positive("torque", output.value)? / torque_gain(ratio, efficiency)?))
}

/// Speed of the output shaft of a reducer of speed ratio `ratio` (input speed over output speed); losses leave it alone.
///
/// # Formula
/// `ω₂ = ω₁ / i`
///
/// # Source
/// Kinematics; T. H. Wentzell, *Machine Design*, Example 11.4, p. 236.
///
/// # Errors
/// [`Error::OutOfRange`] unless speed and ratio are greater than nought.
///
/// Trap: multiplying instead of dividing turns a reducer into an increaser.
pub fn output_speed(input: AngularVelocity, ratio: Ratio) -> Result<AngularVelocity> {
    Ok(radians_per_second(positive("speed", input.value)? / positive("ratio", ratio.value)?))
}

/// Power that leaves a machine of the given efficiency.
///
/// # Formula
/// `P₂ = P₁ η`
///
/// # Source
/// Definition of efficiency.
///
/// # Errors
/// [`Error::OutOfRange`] unless the power is greater than nought and the efficiency is in (0, 1].
pub fn output_power(input: Power, efficiency: Ratio) -> Result<Power> {
    Ok(Power::new::<power::watt>(positive("power", input.value)? * usable_efficiency(efficiency)?))
}

/// Factor between input and output torque, `i η`.
fn torque_gain(ratio: Ratio, efficiency: Ratio) -> Result<f64> {
    Ok(positive("ratio", ratio.value)? * usable_efficiency(efficiency)?)
}

/// An efficiency that passes power at all: greater than nought, at most one.
pub(crate) fn usable_efficiency(efficiency: Ratio) -> Result<f64> {
    within("efficiency", efficiency.value, f64::MIN_POSITIVE, 1.0)
}

fn newton_metres(value: f64) -> Torque {
    Torque::new::<torque::newton_meter>(value)
}

fn radians_per_second(value: f64) -> AngularVelocity {
    AngularVelocity::new::<angular_velocity::radian_per_second>(value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{angular_velocity::revolution_per_minute, power::horsepower, ratio, torque::pound_force_inch};
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn hp(value: f64) -> Power {
        Power::new::<horsepower>(value)
    }
    fn rpm(value: f64) -> AngularVelocity {
        AngularVelocity::new::<revolution_per_minute>(value)
    }
    fn lb_in(value: f64) -> Torque {
        Torque::new::<pound_force_inch>(value)
    }
    fn plain(value: f64) -> Ratio {
        Ratio::new::<ratio::ratio>(value)
    }

    #[test]
    fn the_shop_floor_constants_are_the_definition() {
        // 33 000 ft·lbf/min × 12 in/ft / 2π = 63 025.36, by derivation; the units crate carries hp and lbf to 7 digits
        let unit = torque(hp(1.0), rpm(1.0)).unwrap().get::<pound_force_inch>();
        assert_relative_eq!(unit, 33_000.0 * 12.0 / core::f64::consts::TAU, max_relative = 1e-6);
        let unit = torque(Power::new::<power::kilowatt>(1.0), rpm(1.0)).unwrap().value;
        assert_relative_eq!(unit, 60_000.0 / core::f64::consts::TAU, max_relative = 1e-12);
    }

    #[test]
    fn published_torques() {
        // T. H. Wentzell, Machine Design (63 000 form, so 0.04 % low): (hp, rev/min, lb·in, tolerance)
        for (p, n, printed, tolerance) in [
            (5.0, 1750.0, 180.00, 0.1),    // Ex. 15.1, p. 332
            (1.5, 3450.0, 27.39, 0.03),    // Ex. 11.4, p. 236
            (3.0, 3450.0, 54.78, 0.03),    // Ex. 12.7, p. 270
            (50.0, 300.0, 10_500.0, 5.25), // Ex. 4.3, p. 68 (0.05 %)
        ] {
            let t = torque(hp(p), rpm(n)).unwrap();
            assert_abs_diff_eq!(t.get::<pound_force_inch>(), printed, epsilon = tolerance);
        }
        // derivation 60 000/2π, printed to 0.01: 5 kW at 1500 and 750 rev/min
        let five = Power::new::<power::kilowatt>(5.0);
        let slow = torque(five, rpm(750.0)).unwrap();
        assert_abs_diff_eq!(slow.value, 63.66, epsilon = 0.005);
        let fast = torque(five, rpm(1500.0)).unwrap();
        assert_abs_diff_eq!(fast.get::<torque::pound_force_foot>(), 23.48, epsilon = 0.005);
    }

    #[test]
    fn published_powers() {
        // Wentzell, Ex. 16.1, p. 358: 378 lb·in at 2000 rev/min is 12.00 hp
        assert_abs_diff_eq!(power(lb_in(378.0), rpm(2000.0)).unwrap().get::<horsepower>(), 12.00, epsilon = 0.01);
    }

    #[test]
    fn published_reductions() {
        // Wentzell, Ex. 11.4, p. 236: 24/10 teeth after 3450 rev/min and 1.5 hp
        let t = output_torque(torque(hp(1.5), rpm(3450.0)).unwrap(), plain(2.4), plain(1.0)).unwrap();
        assert_abs_diff_eq!(t.get::<pound_force_inch>(), 65.74, epsilon = 0.03);
        let n = output_speed(rpm(3450.0), plain(2.4)).unwrap();
        assert_abs_diff_eq!(n.get::<revolution_per_minute>(), 1437.50, epsilon = 0.005);
        // Wentzell, Ex. 11.1, p. 217: twice 60/20 after 3600 rev/min and 200 lb·in; 11.43 hp at both ends
        let nine = plain(9.0);
        let (t, n) = (output_torque(lb_in(200.0), nine, plain(1.0)).unwrap(), output_speed(rpm(3600.0), nine).unwrap());
        assert_abs_diff_eq!(t.get::<pound_force_inch>(), 1800.0, epsilon = 1e-6);
        assert_abs_diff_eq!(n.get::<revolution_per_minute>(), 400.0, epsilon = 1e-9);
        assert_abs_diff_eq!(power(t, n).unwrap().get::<horsepower>(), 11.43, epsilon = 0.01);
        assert_abs_diff_eq!(power(lb_in(200.0), rpm(3600.0)).unwrap().get::<horsepower>(), 11.43, epsilon = 0.01);
    }

    #[test]
    fn power_is_kept_but_for_the_loss() {
        let (t, n, i, eta) = (lb_in(180.0), rpm(1750.0), plain(24.6), plain(0.94));
        let out = power(output_torque(t, i, eta).unwrap(), output_speed(n, i).unwrap()).unwrap();
        let expected = output_power(power(t, n).unwrap(), eta).unwrap();
        assert_relative_eq!(out.value, expected.value, max_relative = 1e-14);
    }

    #[test]
    fn round_trips() {
        let (p, n, i, eta) = (hp(7.5), rpm(68.0), plain(25.7), plain(0.95));
        let t = torque(p, n).unwrap();
        assert_relative_eq!(power(t, n).unwrap().value, p.value, max_relative = 1e-14);
        assert_relative_eq!(speed(p, t).unwrap().value, n.value, max_relative = 1e-14);
        let back = input_torque(output_torque(t, i, eta).unwrap(), i, eta).unwrap();
        assert_relative_eq!(back.value, t.value, max_relative = 1e-14);
    }

    #[test]
    fn what_has_no_answer_is_refused() {
        assert!(matches!(torque(hp(5.0), rpm(0.0)), Err(Error::OutOfRange { input: "speed", .. })));
        assert!(matches!(power(lb_in(f64::NAN), rpm(1.0)), Err(Error::OutOfRange { input: "torque", .. })));
        let gained = output_torque(lb_in(1.0), plain(2.0), plain(1.01));
        assert!(matches!(gained, Err(Error::OutOfRange { input: "efficiency", .. })));
        assert!(output_speed(rpm(1.0), plain(0.0)).is_err() && output_power(hp(1.0), plain(0.0)).is_err());
        assert!(speed(hp(1.0), lb_in(0.0)).is_err() && input_torque(lb_in(1.0), plain(-1.0), plain(1.0)).is_err());
    }
}
