//! Bolts: preload, the torque that gives it, stretch and turn, and what an outside load adds.

use super::thread::Form;
use super::{metres, newton_metres, newtons, pascals, plain, ratio_of};
use crate::error::{positive, within};
use crate::units::{Angle, Area, Force, Length, Pressure, Ratio, Torque, angle::revolution, area::square_meter};
use crate::{Result, math};

#[cfg(any(doc, test))]
use crate::Error;

/// Share of the proof load aimed at in bolts that will be taken out again: three quarters.
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design* (from memory); common practice.
pub const REUSED_SHARE: Ratio = ratio_of(0.75);

/// Preload of a bolt.
///
/// # Formula
/// `F = f S_p A_t`, f the share of the proof load ([`REUSED_SHARE`]), S_p proof stress, A_t tensile stress area.
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, chapter 8.
///
/// # Errors
/// [`Error::OutOfRange`] unless stress and area are greater than nought and the share is above 0 and at most 1.
pub fn preload(proof: Pressure, area: Area, share: Ratio) -> Result<Force> {
    let f = within("share of proof", share.value, f64::MIN_POSITIVE, 1.0)?;
    Ok(newtons(f * positive("proof stress", proof.value)? * positive("stress area", area.value)?))
}

/// Torque that gives a preload.
///
/// # Formula
/// `T = K D F`, K the nut factor (see [`nut_factors`](super::nut_factors)), D the nominal diameter.
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, chapter 8; T. H. Wentzell, *Machine Design*.
///
/// # Errors
/// [`Error::OutOfRange`] unless the preload and diameter are greater than nought and K is 0.05 to 0.5.
///
/// # Example
/// ¾-10, grade 5 at 0.85 of proof, K 0.2 (T. H. Wentzell, *Machine Design*, Example 6.1, p. 120: 3619.73 lb·in):
/// ```
/// use drivecourse_calc::{fasten::bolt::*, units::*};
/// let proof = Pressure::new::<pressure::pound_force_per_square_inch>(85_000.0);
/// let area = Area::new::<area::square_inch>(0.334);
/// let pull = preload(proof, area, Ratio::new::<ratio::ratio>(0.85))?;
/// let t = torque(pull, Length::new::<length::inch>(0.75), Ratio::new::<ratio::ratio>(0.2))?;
/// approx::assert_abs_diff_eq!(t.get::<torque::pound_force_inch>(), 3619.73, epsilon = 0.01);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: the dry torque on a lubricated bolt pulls a third too hard; the radius in place of the diameter.
pub fn torque(preload: Force, diameter: Length, k: Ratio) -> Result<Torque> {
    Ok(newton_metres(positive("preload", preload.value)? * lever(diameter, k)?))
}

/// Preload that a torque gives: the inverse of [`torque()`].
///
/// # Formula
/// `F = T / (K D)`
///
/// # Source
/// As [`torque()`].
///
/// # Errors
/// As [`torque()`], for the torque.
pub fn preload_from_torque(torque: Torque, diameter: Length, k: Ratio) -> Result<Force> {
    Ok(newtons(positive("torque", torque.value)? / lever(diameter, k)?))
}

/// Stress in the thread from the pull alone.
///
/// # Formula
/// `σ = F / A_t`
///
/// # Source
/// As [`preload`].
///
/// # Errors
/// [`Error::OutOfRange`] unless pull and area are greater than nought.
pub fn stress(pull: Force, area: Area) -> Result<Pressure> {
    Ok(pascals(positive("bolt pull", pull.value)? / positive("stress area", area.value)?))
}

/// Stress area that a pull needs: the inverse of [`stress`].
///
/// # Formula
/// `A_t ≥ F / S`
///
/// # Source
/// R. L. Mott, *Machine Elements in Mechanical Design*, chapter 19.
///
/// # Errors
/// [`Error::OutOfRange`] unless pull and stress are greater than nought.
pub fn area_needed(pull: Force, allowed: Pressure) -> Result<Area> {
    Ok(Area::new::<square_meter>(positive("bolt pull", pull.value)? / positive("allowed stress", allowed.value)?))
}

/// Stretch of the bolt over its grip.
///
/// # Formula
/// `δ = F L / (A E)`
///
/// # Source
/// T. H. Wentzell, *Machine Design*, Example 6.2, p. 121 (with the stress area over the whole grip).
///
/// # Errors
/// [`Error::OutOfRange`] unless every value is greater than nought.
pub fn stretch(preload: Force, grip: Length, area: Area, elasticity: Pressure) -> Result<Length> {
    let work = positive("preload", preload.value)? * positive("grip", grip.value)?;
    Ok(metres(work / (positive("stress area", area.value)? * positive("elasticity", elasticity.value)?)))
}

/// Turn of the nut past snug that stretches the bolt by an amount, the joint taken as rigid.
///
/// # Formula
/// `θ = 360° δ / P`
///
/// # Source
/// T. H. Wentzell, *Machine Design*, Example 6.2, p. 121.
///
/// # Errors
/// [`Error::OutOfRange`] unless stretch and pitch are greater than nought.
pub fn turn(stretch: Length, pitch: Length) -> Result<Angle> {
    Ok(Angle::new::<revolution>(positive("stretch", stretch.value)? / positive("pitch", pitch.value)?))
}

/// Pull in a bolt under an outside load, while the joint stays closed.
///
/// # Formula
/// `F_b = C P + F_i`
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, 9th ed., Example 8-3, p. 439.
///
/// # Errors
/// [`Error::OutOfRange`] unless the preload is greater than nought, the share 0 to 1, and the load not negative and too
/// small to part the joint (`(1 − C) P ≤ F_i`).
pub fn pull_under_load(preload: Force, load: Force, share: Ratio) -> Result<Force> {
    let (fi, c) = (positive("preload", preload.value)?, within("bolt share", share.value, 0.0, 1.0)?);
    let parting = if c < 1.0 { fi / (1.0 - c) } else { f64::MAX };
    Ok(newtons(c * within("outside load", load.value, 0.0, parting)? + fi))
}

/// Nut factor K from the friction of thread and bearing face.
///
/// # Formula
/// `K = d_m/(2 d) · (tan λ + f sec α)/(1 − f tan λ sec α) + 0.625 f_c`, with d_m the pitch diameter, `tan λ = P/(π d_m)`,
/// α = 30°, f the thread's coefficient and f_c the bearing face's (mean collar diameter 1.25 d).
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, chapter 8.
///
/// # Errors
/// [`Error::OutOfRange`] unless the coefficients are 0 to 0.5 and the thread is sound.
pub fn nut_factor(diameter: Length, pitch: Length, thread_friction: Ratio, face_friction: Ratio) -> Result<Ratio> {
    super::thread::stress_area(Form::Metric, diameter, pitch)?; // refuses what is no thread
    let (d, p) = (diameter.value, pitch.value);
    let f = within("thread friction", thread_friction.value, 0.0, 0.5)?;
    let fc = within("face friction", face_friction.value, 0.0, 0.5)?;
    let dm = d - 0.649_519 * p;
    let tan_lead = p / (core::f64::consts::PI * dm);
    let sec = 1.0 / math::cos(core::f64::consts::FRAC_PI_6);
    Ok(plain(dm / (2.0 * d) * (tan_lead + f * sec) / (1.0 - f * tan_lead * sec) + 0.625 * fc))
}

/// `K D` in metres, for a sound nut factor and diameter.
fn lever(diameter: Length, k: Ratio) -> Result<f64> {
    Ok(within("nut factor", k.value, 0.05, 0.5)? * positive("bolt diameter", diameter.value)?)
}

#[cfg(test)]
mod tests;
