//! Speed of a three-phase induction motor: synchronous speed, slip, and slip with load.

use core::f64::consts::TAU;

use super::plain;
use crate::error::{positive, within};
use crate::units::{AngularVelocity, Frequency, Ratio, angular_velocity::radian_per_second};
use crate::{Error, Result};

/// Most poles accepted: slower motors exist only with a gear unit or a converter (from memory).
pub const MOST_POLES: u32 = 96;

/// Largest load share for which slip is still taken as proportional to load (from memory).
pub const MOST_LOAD: f64 = 1.5;

/// Speed of the turning field, which the rotor can approach but not reach.
///
/// # Formula
/// `n_s = 120 f / p` (n in rev/min, f in Hz, p poles); `ω_s = 4π f / p`.
///
/// # Source
/// B. L. Theraja, A. K. Theraja, *A Textbook of Electrical Technology*, chapter 34 (title from memory).
///
/// # Errors
/// [`Error::OutOfRange`] unless the frequency is greater than nought and the poles are 2 to [`MOST_POLES`];
/// [`Error::NoSolution`] for an odd number of poles.
///
/// # Example
/// ```
/// use drivecourse_calc::{start_up::speed::synchronous_speed, units::*};
/// let speed = synchronous_speed(Frequency::new::<frequency::hertz>(60.0), 4)?;
/// let rpm = speed.get::<angular_velocity::revolution_per_minute>();
/// approx::assert_relative_eq!(rpm, 1800.0, max_relative = 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: pairs of poles put in for poles, which doubles the answer.
pub fn synchronous_speed(supply: Frequency, poles: u32) -> Result<AngularVelocity> {
    let f = positive("frequency", supply.value)?;
    let p = within("poles", f64::from(poles), 2.0, f64::from(MOST_POLES))?;
    if poles % 2 == 1 {
        return Err(Error::none("pair of poles"));
    }
    Ok(rad_s(2.0 * TAU * f / p))
}

/// Poles of a motor, from its nameplate speed.
///
/// # Formula
/// The largest even p with `120 f / p` not below the nameplate speed.
///
/// # Source
/// The definition of [`synchronous_speed`]: a motor runs just below its synchronous speed.
///
/// # Errors
/// [`Error::OutOfRange`] unless frequency and speed are greater than nought; [`Error::NoSolution`] when the speed is above that
/// of two poles or asks for more than [`MOST_POLES`].
///
/// # Example
/// ```
/// use drivecourse_calc::{start_up::speed::poles, units::*};
/// let nameplate = AngularVelocity::new::<angular_velocity::revolution_per_minute>(1170.0);
/// assert_eq!(poles(Frequency::new::<frequency::hertz>(60.0), nameplate)?, 6);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn poles(supply: Frequency, nameplate: AngularVelocity) -> Result<u32> {
    let f = positive("frequency", supply.value)?;
    let n = positive("speed", nameplate.value)?;
    // a nameplate at just the synchronous speed must not fall off by the last bit
    let pairs = (TAU * f / n * (1.0 + 1e-12)).floor();
    if (1.0..=f64::from(MOST_POLES / 2)).contains(&pairs) {
        // a small whole number: the conversion is exact
        Ok(2 * pairs as u32)
    } else {
        Err(Error::none("number of poles"))
    }
}

/// Slip: the share by which a motor turns slower than its field.
///
/// # Formula
/// `s = (n_s − n) / n_s`
///
/// # Source
/// As [`synchronous_speed`].
///
/// # Errors
/// [`Error::OutOfRange`] unless the synchronous speed is greater than nought and the speed is between nought and it.
///
/// # Example
/// ```
/// use drivecourse_calc::{start_up::speed::slip, units::*};
/// let rpm = AngularVelocity::new::<angular_velocity::revolution_per_minute>;
/// approx::assert_abs_diff_eq!(slip(rpm(1800.0), rpm(1750.0))?.get::<ratio::percent>(), 2.78, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: dividing by the shaft speed instead of the synchronous speed.
pub fn slip(synchronous: AngularVelocity, shaft: AngularVelocity) -> Result<Ratio> {
    let ns = positive("synchronous speed", synchronous.value)?;
    Ok(plain((ns - within("speed", shaft.value, 0.0, ns)?) / ns))
}

/// Shaft speed at a share of full load, slip taken as proportional to load.
///
/// # Formula
/// `n = n_s − x (n_s − n_f)`, x the load over the rated load, n_f the full-load speed on the nameplate.
///
/// # Source
/// US Department of Energy, fact sheet *Determining Electric Motor Load and Efficiency*, slip method
/// (equation from memory).
///
/// # Errors
/// [`Error::OutOfRange`] unless `0 < n_f < n_s` and the load share is 0 to [`MOST_LOAD`].
///
/// # Example
/// ```
/// use drivecourse_calc::{start_up::speed::speed_at_load, units::*};
/// let rpm = AngularVelocity::new::<angular_velocity::revolution_per_minute>;
/// let speed = speed_at_load(rpm(1800.0), rpm(1750.0), Ratio::new::<ratio::percent>(60.0))?;
/// approx::assert_relative_eq!(speed.value, rpm(1770.0).value, max_relative = 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn speed_at_load(
    synchronous: AngularVelocity,
    full_load: AngularVelocity,
    load_share: Ratio,
) -> Result<AngularVelocity> {
    let (ns, full_slip) = full_load_slip(synchronous, full_load)?;
    Ok(rad_s(ns - within("load share", load_share.value, 0.0, MOST_LOAD)? * full_slip))
}

/// Share of the rated load that a speed reading shows: the inverse of [`speed_at_load`].
///
/// # Formula
/// `x = (n_s − n) / (n_s − n_f)`
///
/// # Source
/// As [`speed_at_load`].
///
/// # Errors
/// [`Error::OutOfRange`] unless `0 < n_f < n_s` and the speed shows a load share of 0 to [`MOST_LOAD`].
///
/// # Example
/// 1800 rev/min synchronous, 1750 on the nameplate, 1770 read: 60 % of the load.
/// ```
/// use drivecourse_calc::{start_up::speed::load_from_speed, units::*};
/// let rpm = AngularVelocity::new::<angular_velocity::revolution_per_minute>;
/// let load = load_from_speed(rpm(1800.0), rpm(1750.0), rpm(1770.0))?;
/// approx::assert_abs_diff_eq!(load.get::<ratio::percent>(), 60.0, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// An estimate only: the nameplate speed is rounded and the slip of a sound motor may differ by a tenth to a fifth from it
/// (from memory). Trap: speed over full-load speed, which is close to 1 at any load.
pub fn load_from_speed(
    synchronous: AngularVelocity,
    full_load: AngularVelocity,
    measured: AngularVelocity,
) -> Result<Ratio> {
    let (ns, full_slip) = full_load_slip(synchronous, full_load)?;
    let n = within("speed", measured.value, ns - MOST_LOAD * full_slip, ns)?;
    Ok(plain((ns - n) / full_slip))
}

/// Synchronous speed, and full-load slip as a speed.
fn full_load_slip(synchronous: AngularVelocity, full_load: AngularVelocity) -> Result<(f64, f64)> {
    let ns = positive("synchronous speed", synchronous.value)?;
    let full = within("full-load speed", full_load.value, f64::MIN_POSITIVE, ns.next_down())?;
    Ok((ns, ns - full))
}

fn rad_s(value: f64) -> AngularVelocity {
    AngularVelocity::new::<radian_per_second>(value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{angular_velocity::revolution_per_minute, frequency::hertz, ratio::percent};
    use approx::assert_abs_diff_eq;

    fn rpm(value: f64) -> AngularVelocity {
        AngularVelocity::new::<revolution_per_minute>(value)
    }
    fn hz(value: f64) -> Frequency {
        Frequency::new::<hertz>(value)
    }
    fn turns(speed: AngularVelocity) -> f64 {
        speed.get::<revolution_per_minute>()
    }

    /// B. L. Theraja, A. K. Theraja, *A Textbook of Electrical Technology*, chapter 34, pp. 1255-1256 (title from
    /// memory).
    #[test]
    fn published_speeds() {
        // Ex. 34.1: 50 Hz, 290 rev/min, field at 300: 20 poles, slip 3.33 %
        assert_eq!(poles(hz(50.0), rpm(290.0)), Ok(20));
        assert_abs_diff_eq!(slip(rpm(300.0), rpm(290.0)).unwrap().get::<percent>(), 3.33, epsilon = 0.005);
        // Ex. 34.2: 6 poles at 50 Hz: 1000 rev/min
        assert_abs_diff_eq!(turns(synchronous_speed(hz(50.0), 6).unwrap()), 1000.0, epsilon = 1e-9);
        // Ex. 34.3 and 34.4: 4 poles, 1500 rev/min; at 1440 the slip is 0.04
        let field = synchronous_speed(hz(50.0), 4).unwrap();
        assert_abs_diff_eq!(turns(field), 1500.0, epsilon = 1e-9);
        assert_abs_diff_eq!(slip(field, rpm(1440.0)).unwrap().value, 0.04, epsilon = 1e-12);
        // Ex. 34.5: a 12-pole generator at 500 rev/min feeds 8 poles; at 727.5 rev/min the slip is 0.03
        let field = synchronous_speed(hz(12.0 * 500.0 / 120.0), 8).unwrap();
        assert_abs_diff_eq!(slip(field, rpm(727.5)).unwrap().value, 0.03, epsilon = 1e-12);
    }

    /// US Department of Energy, *Determining Electric Motor Load and Efficiency*, slip example (figures from memory):
    /// 1800 synchronous, 1750 nameplate, 1770 measured, 25 hp: 60 %, 15 hp.
    #[test]
    fn published_load_from_slip() {
        let load = load_from_speed(rpm(1800.0), rpm(1750.0), rpm(1770.0)).unwrap();
        assert_abs_diff_eq!(load.value * 25.0, 15.0, epsilon = 1e-9);
    }

    #[test]
    fn round_trips() {
        let (field, full) = (rpm(1500.0), rpm(1455.0));
        for share in [0.0, 0.25, 0.8, 1.0, 1.4] {
            let n = speed_at_load(field, full, plain(share)).unwrap();
            assert_abs_diff_eq!(load_from_speed(field, full, n).unwrap().value, share, epsilon = 1e-12);
        }
        for p in (2..=MOST_POLES).step_by(2) {
            for f in [50.0, 60.0] {
                let field = synchronous_speed(hz(f), p).unwrap();
                assert_eq!(poles(hz(f), field), Ok(p));
                assert_eq!(poles(hz(f), field * 0.99), Ok(p));
            }
        }
    }

    #[test]
    fn nonsense_is_refused() {
        assert_eq!(synchronous_speed(hz(60.0), 3), Err(Error::none("pair of poles")));
        assert!(matches!(synchronous_speed(hz(60.0), 0), Err(Error::OutOfRange { input: "poles", .. })));
        assert!(synchronous_speed(hz(f64::NAN), 4).is_err());
        assert!(poles(hz(60.0), rpm(3601.0)).is_err() && poles(hz(60.0), rpm(1.0)).is_err());
        assert!(slip(rpm(1500.0), rpm(1501.0)).is_err(), "faster than its field: driven, not driving");
        assert!(speed_at_load(rpm(1500.0), rpm(1500.0), plain(0.5)).is_err());
        assert!(load_from_speed(rpm(1500.0), rpm(1455.0), rpm(1400.0)).is_err(), "past the straight part of the curve");
    }
}
