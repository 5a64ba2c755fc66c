//! Pull of a slack strand from its sag, by the parabola, level or inclined.

use super::{metres, positive_length};
use crate::Result;
use crate::error::{positive, within};
use crate::math::{STANDARD_GRAVITY, cos};
use crate::units::{Angle, Force, Length, LinearMassDensity, angle::degree, force::newton};

/// Steepest strand, in degrees from the level, for which a sag still tells a pull: beyond it less than a
/// tenth of the weight lies across the strand (our own limit).
pub const STEEPEST_INCLINE: f64 = 85.0;

/// Pull along the strand at mid-span, by the parabola; on a level strand its horizontal pull.
///
/// Both ends of the strand pull on their shafts with this force, so a slack strand that is drawn too tight
/// loads the bearings on its own. It holds within 0.2 % up to a sag of 2 % of the span.
///
/// # Formula
/// H = w L² / (8 δ), where w = m g cos θ is the weight per length across the strand (mass per length m, standard
/// gravity g, incline θ to the level), L the free span, δ the sag measured square to the straight line.
///
/// # Source
/// Parabolic cable T₀ = w L²/(8 h): engineering mechanics textbooks (A. K. Tayal, *Engineering Mechanics*, ch. 10).
///
/// # Errors
/// A mass, span or sag not above nought; an incline beyond ±[`STEEPEST_INCLINE`].
///
/// # Example
/// ```
/// use drivecourse_calc::{chain::tension::horizontal_tension, units::*};
/// let pull = horizontal_tension(
///     LinearMassDensity::new::<linear_mass_density::kilogram_per_meter>(2.5),
///     Length::new::<length::meter>(1.0),
///     Length::new::<length::meter>(0.04),
///     Angle::new::<angle::degree>(0.0),
/// )?;
/// assert!((pull.get::<force::newton>() - 76.6).abs() < 0.05);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn horizontal_tension(mass: LinearMassDensity, span: Length, sag: Length, incline: Angle) -> Result<Force> {
    let w = weight_per_length(mass, incline)?;
    let (span, sag) = (positive_length("span", span)?, positive_length("sag", sag)?);
    Ok(Force::new::<newton>(w * span * span / (8.0 * sag)))
}

/// Sag at which the strand pulls with `horizontal` at mid-span, the inverse of [`horizontal_tension`].
///
/// # Formula
/// δ = w L² / (8 H)
///
/// # Errors
/// A mass, span or pull not above nought; an incline beyond ±[`STEEPEST_INCLINE`].
pub fn sag_from_tension(mass: LinearMassDensity, span: Length, horizontal: Force, incline: Angle) -> Result<Length> {
    let w = weight_per_length(mass, incline)?;
    let (span, pull) = (positive_length("span", span)?, positive("pull", horizontal.value)?);
    Ok(metres(w * span * span / (8.0 * pull)))
}

/// Weight per length across a strand at `incline`, in N/m.
pub(super) fn weight_per_length(mass: LinearMassDensity, incline: Angle) -> Result<f64> {
    let m = positive("mass per length", mass.value)?;
    let steepest = Angle::new::<degree>(STEEPEST_INCLINE).value;
    Ok(m * STANDARD_GRAVITY * cos(within("incline", incline.value, -steepest, steepest)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::linear_mass_density::kilogram_per_meter;
    use approx::assert_relative_eq;

    /// A mass per length that weighs `w` N/m under standard gravity: the printed examples take other values of g.
    fn weighing(w: f64) -> LinearMassDensity {
        LinearMassDensity::new::<kilogram_per_meter>(w / STANDARD_GRAVITY)
    }

    fn level() -> Angle {
        Angle::default()
    }

    /// A. K. Tayal, *Engineering Mechanics*, Ex 10.5: span 30 m, 3 N/m, greatest pull 400 N: sag 0.849141 m.
    #[test]
    fn parabola_sag_from_the_pull_at_the_support() {
        let (mass, span) = (weighing(3.0), metres(30.0));
        // The support carries half the weight besides the pull of mid-span.
        let h = Force::new::<newton>((400.0_f64 * 400.0 - 45.0 * 45.0).sqrt());
        let sag = sag_from_tension(mass, span, h, level()).unwrap();
        assert_relative_eq!(sag.value, 0.849_141, max_relative = 1e-5);
    }

    /// The same, Ex 10.3: 75 kg/m (g 9.81), low point 2 m below and 8 m from one end, 12 m from the other:
    /// T0 11.772 kN, greatest pull 14.715 kN. Each side is half of a level parabola.
    #[test]
    fn parabola_with_unequal_supports_as_two_halves() {
        let mass = weighing(75.0 * 9.81);
        let t0 = horizontal_tension(mass, metres(16.0), metres(2.0), level()).unwrap();
        assert_relative_eq!(t0.value, 11_772.0, max_relative = 1e-5);
        let half = 12.0 * 75.0 * 9.81;
        let greatest = (t0.value * t0.value + half * half).sqrt();
        assert_relative_eq!(greatest, 14_715.0, max_relative = 1e-5);
    }

    /// Balance of moments about the support, on one half of the strand, with its weight in small pieces.
    #[test]
    fn moments_balance_on_an_inclined_strand() {
        let (m, span, sag, theta) = (1.5_f64, 0.9_f64, 0.03_f64, 35.0_f64);
        let incline = Angle::new::<degree>(theta);
        let mass = LinearMassDensity::new::<kilogram_per_meter>(m);
        let pull = horizontal_tension(mass, metres(span), metres(sag), incline).unwrap();
        let pieces = 1000;
        let dx = 0.5 * span / f64::from(pieces);
        let across = m * 9.806_65 * crate::math::cos(theta * core::f64::consts::PI / 180.0);
        let moment: f64 = (0..pieces).map(|k| across * dx * (f64::from(k) + 0.5) * dx).sum();
        assert_relative_eq!(pull.value * sag, moment, max_relative = 1e-9);
    }

    #[test]
    fn bad_input_is_refused() {
        let m = weighing(10.0);
        assert!(horizontal_tension(m, metres(1.0), metres(0.0), level()).is_err());
        assert!(horizontal_tension(-m, metres(1.0), metres(0.1), level()).is_err());
        assert!(horizontal_tension(m, metres(1.0), metres(0.1), Angle::new::<degree>(90.0)).is_err());
        assert!(sag_from_tension(m, metres(1.0), Force::new::<newton>(0.0), level()).is_err());
    }
}
