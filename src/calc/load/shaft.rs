//! Stress in a round, solid shaft: bending, torsion, shear, and three ways to combine them.
//!
//! These are nominal stresses. A keyway, shoulder or press fit multiplies them (stress concentration), and a turning shaft
//! sees full reversal of the bending: compare with an endurance limit, not with the tensile strength.

use crate::error::{positive, within};
use crate::units::{Force, Length, Pressure, Torque, length, pressure, torque};
use crate::{Result, math};
use core::f64::consts::PI;

#[cfg(any(doc, test))]
use crate::Error;

/// Bending moment at the near bearing of a load that hangs `overhang` outside it.
///
/// # Formula
/// `M = F x`
///
/// # Source
/// Statics.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative load or overhang.
pub fn bending_moment(load: Force, overhang: Length) -> Result<Torque> {
    let f = within("load", load.value, 0.0, f64::MAX)?;
    Ok(newton_metres(f * within("overhang", overhang.value, 0.0, f64::MAX)?))
}

/// Bending moment under a load that stands between two bearings, `from_bearing` from one of them.
///
/// # Formula
/// `M = F a (L − a) / L`; in the middle `F L / 4`.
///
/// # Source
/// Statics; T. H. Wentzell, *Machine Design*, Example 4.4, p. 71.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative load, a span not greater than nought, or a place outside the span.
pub fn bending_moment_between(load: Force, span: Length, from_bearing: Length) -> Result<Torque> {
    let f = within("load", load.value, 0.0, f64::MAX)?;
    let l = positive("bearing span", span.value)?;
    let a = within("load location", from_bearing.value, 0.0, l)?;
    Ok(newton_metres(f * a * (l - a) / l))
}

/// Bending stress at the surface of a round shaft.
///
/// # Formula
/// `σ = 32 M / (π d³)`
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design* (from memory); beam theory.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative moment or a diameter not greater than nought.
///
/// # Example
/// 1890 lb·in in a 1.25 in shaft:
/// ```
/// use drivecourse_calc::{load::shaft::bending_stress, units::*};
/// let moment = Torque::new::<torque::pound_force_inch>(1890.0);
/// let stress = bending_stress(moment, Length::new::<length::inch>(1.25))?;
/// approx::assert_abs_diff_eq!(stress.get::<pressure::pound_force_per_square_inch>(), 9857.0, epsilon = 1.0);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the diameter goes in with its third power; a 10 % error becomes more than 30 %.
pub fn bending_stress(moment: Torque, diameter: Length) -> Result<Pressure> {
    let m = within("bending moment", moment.value, 0.0, f64::MAX)?;
    Ok(pascals(m / section_modulus(diameter)?))
}

/// Torsional shear stress at the surface of a round shaft.
///
/// # Formula
/// `τ = 16 T / (π d³)`
///
/// # Source
/// As [`bending_stress`].
///
/// # Errors
/// [`Error::OutOfRange`] for a negative torque or a diameter not greater than nought.
pub fn torsion_stress(torque: Torque, diameter: Length) -> Result<Pressure> {
    let t = within("torque", torque.value, 0.0, f64::MAX)?;
    Ok(pascals(0.5 * t / section_modulus(diameter)?))
}

/// Equivalent stress of bending and torsion after von Mises (distortion energy): compare with a tensile limit.
///
/// # Formula
/// `σ_v = √(σ² + 3 τ²)`
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, distortion-energy theory (from memory).
///
/// # Errors
/// [`Error::OutOfRange`] for a negative stress.
///
/// # Example
/// ```
/// use drivecourse_calc::{load::shaft::equivalent_stress, units::*};
/// let mpa = Pressure::new::<pressure::megapascal>;
/// let stress = equivalent_stress(mpa(60.0), mpa(40.0))?;
/// approx::assert_abs_diff_eq!(stress.get::<pressure::megapascal>(), 91.65, epsilon = 0.005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the three combined stresses differ; name the one used.
pub fn equivalent_stress(bending: Pressure, torsion: Pressure) -> Result<Pressure> {
    let (sigma, tau) = stresses(bending, torsion)?;
    Ok(pascals((sigma * sigma + 3.0 * tau * tau).sqrt()))
}

/// Greatest shear stress of bending and torsion (Tresca): compare with a shear limit.
///
/// # Formula
/// `τ_max = √((σ/2)² + τ²)`
///
/// # Source
/// Mohr's circle; Shigley, maximum-shear-stress theory (from memory).
///
/// # Errors
/// [`Error::OutOfRange`] for a negative stress.
pub fn maximum_shear_stress(bending: Pressure, torsion: Pressure) -> Result<Pressure> {
    let (sigma, tau) = stresses(bending, torsion)?;
    Ok(pascals((0.25 * sigma * sigma + tau * tau).sqrt()))
}

/// Greatest normal stress of bending and torsion (principal stress): what some textbooks call the combined stress.
///
/// # Formula
/// `σ₁ = σ/2 + √((σ/2)² + τ²)`
///
/// # Source
/// Mohr's circle; T. H. Wentzell, *Machine Design*, Example 4.4, p. 71.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative stress.
pub fn maximum_normal_stress(bending: Pressure, torsion: Pressure) -> Result<Pressure> {
    Ok(0.5 * bending + maximum_shear_stress(bending, torsion)?)
}

/// Smallest shaft diameter that keeps the [`equivalent_stress`] at `allowed`.
///
/// # Formula
/// `d = ∛(32 √(M² + ¾ T²) / (π σ))`
///
/// # Source
/// [`equivalent_stress`], [`bending_stress`] and [`torsion_stress`] solved for the diameter.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative moment or torque, both nought, or an allowed stress not greater than nought.
pub fn smallest_diameter(moment: Torque, torque: Torque, allowed: Pressure) -> Result<Length> {
    let m = within("bending moment", moment.value, 0.0, f64::MAX)?;
    let t = within("torque", torque.value, 0.0, f64::MAX)?;
    let combined = positive("combined moment", (m * m + 0.75 * t * t).sqrt())?;
    let cube = 32.0 * combined / (PI * positive("allowed stress", allowed.value)?);
    Ok(Length::new::<length::meter>(math::pow(cube, 1.0 / 3.0)))
}

/// Section modulus in bending, `π d³ / 32`, in m³; twice that in torsion.
fn section_modulus(diameter: Length) -> Result<f64> {
    let d = positive("shaft diameter", diameter.value)?;
    Ok(PI * d * d * d / 32.0)
}

/// Both stresses in pascals, neither negative.
fn stresses(bending: Pressure, torsion: Pressure) -> Result<(f64, f64)> {
    Ok((
        within("bending stress", bending.value, 0.0, f64::MAX)?,
        within("torsion stress", torsion.value, 0.0, f64::MAX)?,
    ))
}

fn newton_metres(value: f64) -> Torque {
    Torque::new::<torque::newton_meter>(value)
}

fn pascals(value: f64) -> Pressure {
    Pressure::new::<pressure::pascal>(value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::load::{overhung::running_pull, torque::torque};
    use crate::units::{
        AngularVelocity, Power, angular_velocity::revolution_per_minute, force::pound_force, length::inch,
        power::horsepower, pressure::pound_force_per_square_inch as psi, torque::pound_force_inch,
    };
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn inches(value: f64) -> Length {
        Length::new::<inch>(value)
    }
    fn shaft_torque(hp: f64, rpm: f64) -> Torque {
        torque(Power::new::<horsepower>(hp), AngularVelocity::new::<revolution_per_minute>(rpm)).unwrap()
    }

    #[test]
    fn published_chain_shaft() {
        // Wentzell, Ex. 4.4, p. 71: 20 hp, 500 rev/min, 8 in sprocket midway between bearings 12 in apart on a 1.25 in
        // shaft: 13 142.28 psi with the 63 000 form, so 0.05 %
        let t = shaft_torque(20.0, 500.0);
        let f = running_pull(t, inches(8.0)).unwrap();
        let m = bending_moment_between(f, inches(12.0), inches(6.0)).unwrap();
        let d = inches(1.25);
        let combined = maximum_normal_stress(bending_stress(m, d).unwrap(), torsion_stress(t, d).unwrap()).unwrap();
        assert_relative_eq!(combined.get::<psi>(), 13_142.28, max_relative = 5e-4);
    }

    #[test]
    fn published_moment_at_mid_span() {
        // Wentzell, Ex. 17.1, p. 379: 95.78 lb midway in 15 in: 359.16 lb·in, to 0.02 (0.005 lb × 3.75 in)
        let m = bending_moment_between(Force::new::<pound_force>(95.78), inches(15.0), inches(7.5)).unwrap();
        assert_abs_diff_eq!(m.get::<pound_force_inch>(), 359.16, epsilon = 0.02);
    }

    #[test]
    fn bending_stress_balances_the_moment() {
        // independent: integrate y σ(y) over the round section; it must give the moment back
        let (d, n) = (0.05_f64, 200_000);
        let sigma = bending_stress(newton_metres(800.0), Length::new::<length::meter>(d)).unwrap().value;
        let (r, h) = (0.5 * d, d / f64::from(n));
        let moment: f64 = (0..n)
            .map(|i| {
                let y = -r + (f64::from(i) + 0.5) * h;
                y * sigma * (y / r) * 2.0 * (r * r - y * y).sqrt() * h
            })
            .sum();
        assert_relative_eq!(moment, 800.0, max_relative = 1e-6);
        // and torsion: rings of ρ τ(ρ)
        let tau = torsion_stress(newton_metres(800.0), Length::new::<length::meter>(d)).unwrap().value;
        let torque: f64 = (0..n)
            .map(|i| {
                let rho = (f64::from(i) + 0.5) * 0.5 * h;
                rho * tau * (rho / r) * 2.0 * PI * rho * 0.5 * h
            })
            .sum();
        assert_relative_eq!(torque, 800.0, max_relative = 1e-6);
    }

    #[test]
    fn combined_stresses_agree_with_a_turned_cut() {
        // independent: turn a cut through the surface in small steps and take the largest normal and shear stress on it
        let (sigma, tau) = (60e6, 40e6);
        let (mut normal, mut shear) = (0.0_f64, 0.0_f64);
        for i in 0..36_000 {
            let a = f64::from(i) * PI / 36_000.0;
            let (s, c) = (math::sin(2.0 * a), math::cos(2.0 * a));
            normal = normal.max(0.5 * sigma * (1.0 + c) + tau * s);
            shear = shear.max(-0.5 * sigma * s + tau * c);
        }
        let (b, t) = (pascals(sigma), pascals(tau));
        assert_relative_eq!(maximum_normal_stress(b, t).unwrap().value, normal, max_relative = 1e-7);
        assert_relative_eq!(maximum_shear_stress(b, t).unwrap().value, shear, max_relative = 1e-7);
        // von Mises from the two principal stresses: σ₁² − σ₁σ₂ + σ₂²
        let (s1, s2) = (normal, sigma - normal);
        let mises = (s1 * s1 - s1 * s2 + s2 * s2).sqrt();
        assert_relative_eq!(equivalent_stress(b, t).unwrap().value, mises, max_relative = 1e-7);
    }

    #[test]
    fn moment_is_the_same_from_either_bearing() {
        let (f, l, a) = (Force::new::<pound_force>(630.0), inches(12.0), inches(4.5));
        let one = bending_moment_between(f, l, a).unwrap();
        assert_relative_eq!(one.value, bending_moment_between(f, l, l - a).unwrap().value, max_relative = 1e-14);
        assert_relative_eq!(bending_moment(f, a).unwrap().get::<pound_force_inch>(), 2835.0, max_relative = 1e-6);
    }

    #[test]
    fn smallest_diameter_reaches_the_limit() {
        let (m, t, limit) = (newton_metres(420.0), newton_metres(610.0), pascals(55e6));
        let d = smallest_diameter(m, t, limit).unwrap();
        let back = equivalent_stress(bending_stress(m, d).unwrap(), torsion_stress(t, d).unwrap()).unwrap();
        assert_relative_eq!(back.value, limit.value, max_relative = 1e-13);
    }

    #[test]
    fn what_has_no_answer_is_refused() {
        let (m, f) = (newton_metres(1.0), Force::new::<pound_force>(1.0));
        let thin = bending_stress(m, inches(0.0));
        assert!(matches!(thin, Err(Error::OutOfRange { input: "shaft diameter", .. })));
        assert!(torsion_stress(newton_metres(-1.0), inches(1.0)).is_err());
        assert!(bending_moment(f, inches(-1.0)).is_err());
        assert!(bending_moment_between(f, inches(12.0), inches(12.1)).is_err());
        assert!(equivalent_stress(pascals(-1.0), pascals(0.0)).is_err());
        assert!(maximum_normal_stress(pascals(0.0), pascals(-1.0)).is_err());
        assert!(smallest_diameter(newton_metres(0.0), newton_metres(0.0), pascals(1.0)).is_err());
    }
}
