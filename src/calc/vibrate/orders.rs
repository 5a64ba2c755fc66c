//! Frequencies that shafts, gear meshes and chains make.

use core::f64::consts::TAU;

use super::hz;
use crate::Result;
use crate::error::{positive, within};
use crate::units::{AngularVelocity, Frequency, angular_velocity::radian_per_second};

#[cfg(any(doc, test))]
use crate::Error;

/// Most teeth accepted on one gear or sprocket, and most links in a chain.
pub const MOST_TEETH: u32 = 10_000;

/// Frequency of one turn of a shaft: unbalance shows there, misalignment at twice and three times it as well.
///
/// # Formula
/// `f = n / 60` (n in rev/min); `f = ω / 2π`.
///
/// # Source
/// The definition.
///
/// # Errors
/// [`Error::OutOfRange`] unless the speed is greater than nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{vibrate::orders::shaft_frequency, units::*};
/// let speed = AngularVelocity::new::<angular_velocity::revolution_per_minute>(1750.0);
/// approx::assert_abs_diff_eq!(shaft_frequency(speed)?.get::<frequency::hertz>(), 29.17, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn shaft_frequency(speed: AngularVelocity) -> Result<Frequency> {
    Ok(hz(positive("speed", speed.value)? / TAU))
}

/// Speed of the shaft that turns at a frequency: the inverse of [`shaft_frequency`].
///
/// # Formula
/// `n = 60 f`
///
/// # Source
/// The definition.
///
/// # Errors
/// [`Error::OutOfRange`] unless the frequency is greater than nought.
pub fn speed_of(frequency: Frequency) -> Result<AngularVelocity> {
    Ok(AngularVelocity::new::<radian_per_second>(positive("frequency", frequency.value)? * TAU))
}

/// Frequency at which teeth meet: of a gear mesh, or of chain rollers that seat on a sprocket (roller pass).
///
/// # Formula
/// `f_m = z n / 60`, z and n of the *same* shaft; a worm counts its starts.
///
/// # Source
/// W. C. Foiles, *Gear Frequencies Using the Euclidean Algorithm*.
///
/// # Errors
/// [`Error::OutOfRange`] unless the speed is greater than nought and the teeth are 1 to [`MOST_TEETH`].
///
/// # Example
/// 24 teeth at 1500 rev/min: 600 Hz.
/// ```
/// use drivecourse_calc::{vibrate::orders::mesh_frequency, units::*};
/// let speed = AngularVelocity::new::<angular_velocity::revolution_per_minute>(1500.0);
/// let mesh = mesh_frequency(speed, 24)?;
/// approx::assert_abs_diff_eq!(mesh.get::<frequency::hertz>(), 600.0, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the teeth of one gear with the speed of the other.
pub fn mesh_frequency(speed: AngularVelocity, teeth: u32) -> Result<Frequency> {
    Ok(hz(shaft_frequency(speed)?.value * count("tooth count", teeth)?))
}

/// Frequency at which one link of a chain comes round: a stiff link or a damaged roller shows there.
///
/// # Formula
/// `f_c = z n / (60 L)`, L the links of the whole chain.
///
/// # Source
/// Kinematics: one pitch passes for each tooth.
///
/// # Errors
/// [`Error::OutOfRange`] unless the speed is greater than nought and teeth and links are 1 to [`MOST_TEETH`].
///
/// # Example
/// 17 teeth at 100 rev/min on 102 links: the chain comes round every 3.6 s.
/// ```
/// use drivecourse_calc::{vibrate::orders::chain_loop_frequency, units::*};
/// let speed = AngularVelocity::new::<angular_velocity::revolution_per_minute>(100.0);
/// let loops = chain_loop_frequency(speed, 17, 102)?;
/// approx::assert_abs_diff_eq!(1.0 / loops.get::<frequency::hertz>(), 3.6, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn chain_loop_frequency(speed: AngularVelocity, teeth: u32, links: u32) -> Result<Frequency> {
    Ok(hz(mesh_frequency(speed, teeth)?.value / count("links", links)?))
}

/// One pair of gears, or of sprockets, in the order of the power.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stage {
    /// Teeth on the driving side (starts of a worm).
    pub driver: u32,
    /// Teeth on the driven side.
    pub driven: u32,
}

/// What runs in one stage.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StageRun {
    /// Speed of the driving shaft.
    pub driver_speed: AngularVelocity,
    /// Frequency of the mesh (the same from either gear).
    pub mesh: Frequency,
    /// Speed of the driven shaft.
    pub driven_speed: AngularVelocity,
}

/// Speeds and mesh frequencies through the stages of a gear unit.
///
/// # Formula
/// `f_m = z₁ n₁ / 60`, `n₂ = n₁ z₁ / z₂`, stage by stage.
///
/// # Source
/// Kinematics; R. S. Khurmi, J. K. Gupta, *Theory of Machines*, chapter 13.
///
/// # Errors
/// [`Error::OutOfRange`] unless the speed is greater than nought and every tooth count is 1 to [`MOST_TEETH`].
///
/// # Example
/// 975 rev/min through 20/50, 25/75 and 26/65 comes out at 52 rev/min:
/// ```
/// use drivecourse_calc::{vibrate::orders::{Stage, through}, units::*};
/// let rpm = AngularVelocity::new::<angular_velocity::revolution_per_minute>;
/// let stages = [(20, 50), (25, 75), (26, 65)].map(|(driver, driven)| Stage { driver, driven });
/// let last = through(rpm(975.0), &stages)?[2];
/// approx::assert_relative_eq!(last.driven_speed.value, rpm(52.0).value, max_relative = 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the input speed used in every stage.
pub fn through(input: AngularVelocity, stages: &[Stage]) -> Result<Vec<StageRun>> {
    let mut speed = input;
    stages
        .iter()
        .map(|stage| {
            let mesh = mesh_frequency(speed, stage.driver)?;
            let driven_speed = speed_of(hz(mesh.value / count("tooth count", stage.driven)?))?;
            let run = StageRun { driver_speed: speed, mesh, driven_speed };
            speed = driven_speed;
            Ok(run)
        })
        .collect()
}

/// A count as a real number, refused outside 1..=[`MOST_TEETH`].
pub(super) fn count(input: &'static str, count: u32) -> Result<f64> {
    within(input, f64::from(count), 1.0, f64::from(MOST_TEETH))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::load::torque::{output_torque, power};
    use crate::units::{
        Ratio, Torque, angular_velocity::revolution_per_minute, frequency::cycle_per_minute, power::horsepower,
        ratio::ratio, torque::pound_force_inch,
    };
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn rpm(value: f64) -> AngularVelocity {
        AngularVelocity::new::<revolution_per_minute>(value)
    }
    fn run(input: f64, stages: &[(u32, u32)]) -> Vec<StageRun> {
        let stages: Vec<_> = stages.iter().map(|&(driver, driven)| Stage { driver, driven }).collect();
        through(rpm(input), &stages).unwrap()
    }
    fn out(input: f64, stages: &[(u32, u32)]) -> f64 {
        run(input, stages).last().unwrap().driven_speed.get::<revolution_per_minute>()
    }

    #[test]
    fn published_meshes() {
        // common practice: 24 teeth at 1500 rev/min: 36 000 cpm, 600 Hz; 20 teeth at 300 rev/min: 6000 cpm, 100 Hz
        for (z, n, cpm, printed) in [(24, 1500.0, 36_000.0, 600.0), (20, 300.0, 6000.0, 100.0)] {
            let mesh = mesh_frequency(rpm(n), z).unwrap();
            assert_abs_diff_eq!(mesh.value, printed, epsilon = 1e-9);
            assert_relative_eq!(mesh.get::<cycle_per_minute>(), cpm, max_relative = 1e-12);
        }
        // common practice: 24 teeth at 2000 rev/min drive 84: 571.4 rev/min (0.05), mesh 48 000 cpm
        let stage = run(2000.0, &[(24, 84)])[0];
        assert_abs_diff_eq!(stage.driven_speed.get::<revolution_per_minute>(), 571.4, epsilon = 0.05);
        assert_relative_eq!(stage.mesh.get::<cycle_per_minute>(), 48_000.0, max_relative = 1e-12);
        // a numerical-software reference page: 8 teeth at 20 turns drive 42: 3.8095 turns (1e-4), mesh 160
        let stage = run(20.0, &[(8, 42)])[0];
        assert_abs_diff_eq!(stage.driven_speed.get::<revolution_per_minute>(), 3.8095, epsilon = 1e-4);
        assert_relative_eq!(stage.mesh.get::<cycle_per_minute>(), 160.0, max_relative = 1e-12);
    }

    #[test]
    fn published_trains() {
        // T. H. Wentzell, Machine Design, Ex. 11.1, p. 217: 400 rev/min; 200 lb·in become 1800, 11.43 hp at both ends (0.01:
        // half the last place, and 63 000 in the book for 63 025)
        assert_abs_diff_eq!(out(3600.0, &[(20, 60), (20, 60)]), 400.0, epsilon = 0.01);
        let lossless = Ratio::new::<ratio>(1.0);
        let (t1, i) = (Torque::new::<pound_force_inch>(200.0), Ratio::new::<ratio>(3600.0 / 400.0));
        let t2 = output_torque(t1, i, lossless).unwrap();
        assert_abs_diff_eq!(t2.get::<pound_force_inch>(), 1800.0, epsilon = 0.01);
        for (t, n) in [(t1, 3600.0), (t2, 400.0)] {
            assert_abs_diff_eq!(power(t, rpm(n)).unwrap().get::<horsepower>(), 11.43, epsilon = 0.01);
        }
        // the same, Ex. 11.2, p. 219, an idler: 307.69 rev/min (0.01)
        assert_abs_diff_eq!(out(3000.0, &[(20, 65), (20, 22), (22, 60)]), 307.69, epsilon = 0.01);
        let i = Ratio::new::<ratio>(3000.0 / out(3000.0, &[(20, 65), (20, 22), (22, 60)]));
        assert_abs_diff_eq!(i.value, 9.75, epsilon = 0.005);
        let t2 = output_torque(Torque::new::<pound_force_inch>(10.0), i, lossless).unwrap();
        assert_abs_diff_eq!(t2.get::<pound_force_inch>(), 97.50, epsilon = 0.01);
        // R. S. Khurmi, J. K. Gupta, Theory of Machines, Ex. 13.1, p. 432: 52 rev/min
        assert_abs_diff_eq!(out(975.0, &[(20, 50), (25, 75), (26, 65)]), 52.0, epsilon = 1e-9);
        // the same, Ex. 13.2, p. 433: 38 and 114 teeth, 360 and 120 rev/min
        assert_abs_diff_eq!(out(360.0, &[(38, 114)]), 120.0, epsilon = 1e-9);
    }

    #[test]
    fn the_mesh_is_the_same_from_either_gear() {
        let pairs = [(17, 71), (19, 83), (15, 45)];
        for (stage, (z1, z2)) in run(1475.0, &pairs).into_iter().zip(pairs) {
            assert_relative_eq!(mesh_frequency(stage.driver_speed, z1).unwrap().value, stage.mesh.value);
            let other = mesh_frequency(stage.driven_speed, z2).unwrap().value;
            assert_relative_eq!(other, stage.mesh.value, max_relative = 1e-14);
        }
        assert_eq!(through(rpm(1.0), &[]), Ok(vec![]));
    }

    #[test]
    fn a_chain_comes_round_alike_from_either_sprocket() {
        let driver = chain_loop_frequency(rpm(87.5), 19, 120).unwrap();
        let driven = chain_loop_frequency(rpm(87.5 * 19.0 / 57.0), 57, 120).unwrap();
        assert_relative_eq!(driver.value, driven.value, max_relative = 1e-14);
        // links and time of a turn: 120 links at 19 a turn
        assert_relative_eq!(
            shaft_frequency(rpm(87.5)).unwrap().value / driver.value,
            120.0 / 19.0,
            max_relative = 1e-14
        );
        assert_relative_eq!(speed_of(shaft_frequency(rpm(87.5)).unwrap()).unwrap().value, rpm(87.5).value);
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(matches!(mesh_frequency(rpm(1.0), 0), Err(Error::OutOfRange { input: "tooth count", .. })));
        assert!(matches!(chain_loop_frequency(rpm(1.0), 17, 0), Err(Error::OutOfRange { input: "links", .. })));
        assert!(shaft_frequency(rpm(0.0)).is_err() && speed_of(hz(f64::NAN)).is_err());
        assert!(through(rpm(1.0), &[Stage { driver: 20, driven: 0 }]).is_err());
    }
}
