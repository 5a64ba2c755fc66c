//! The sprocket: diameters, ratio, chain speed and the uneven run that a polygon gives.

use core::f64::consts::{PI, TAU};

use super::{metres, not_negative, plain, positive_length, teeth};
use crate::Result;
use crate::math::{sin, tan};
use crate::units::{
    AngularVelocity, Length, Ratio, Velocity, angular_velocity::radian_per_second, velocity::meter_per_second,
};

/// Pitch diameter: the circle through the pin centres of the chain wrapped on the sprocket.
///
/// # Formula
/// D = p / sin(180°/z), where p is the chain pitch and z the tooth count.
///
/// # Source
/// ASME B29.1; R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, roller chain.
///
/// # Errors
/// A pitch not above nought; a tooth count outside [`FEWEST_TEETH`](super::FEWEST_TEETH)..=[`MOST_TEETH`](super::MOST_TEETH).
///
/// # Example
/// ```
/// use drivecourse_calc::{chain::sprocket::pitch_diameter, units::{Length, length::millimeter}};
/// let d = pitch_diameter(Length::new::<millimeter>(38.1), 25)?;
/// assert!((d.get::<millimeter>() - 303.99).abs() < 0.01);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn pitch_diameter(pitch: Length, z: u32) -> Result<Length> {
    let p = positive_length("chain pitch", pitch)?;
    Ok(metres(p / sin(PI / teeth(z)?)))
}

/// Outside diameter of a turned sprocket, over the tooth tips.
///
/// # Formula
/// OD = p (0.6 + cot(180°/z))
///
/// # Source
/// ASME B29.1, approximate outside diameter.
///
/// # Errors
/// As [`pitch_diameter`].
pub fn outside_diameter(pitch: Length, z: u32) -> Result<Length> {
    let p = positive_length("chain pitch", pitch)?;
    Ok(metres(p * (0.6 + 1.0 / tan(PI / teeth(z)?))))
}

/// Chordal variation as the drop of the chain's radius between tooth and gap, a share of the pitch radius.
///
/// [`chordal_variation_range`] is the other definition; the two differ by about one part in a hundred.
///
/// # Formula
/// 1 − cos(180°/z)
///
/// # Source
/// Geometry of a polygon in its circle.
///
/// # Errors
/// A tooth count out of range.
pub fn chordal_variation_radius(z: u32) -> Result<Ratio> {
    // 1 − cos x = 2 sin²(x/2), which keeps its digits for many teeth
    let half = sin(0.5 * PI / teeth(z)?);
    Ok(plain(2.0 * half * half))
}

/// Chordal variation as the greatest less the smallest chain speed, over the mean speed.
///
/// # Formula
/// ΔV/V = (π/z) (1/sin(180°/z) − 1/tan(180°/z))
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Eq. 17-31 (equation number from memory).
///
/// # Errors
/// A tooth count out of range.
pub fn chordal_variation_range(z: u32) -> Result<Ratio> {
    // 1/sin x − 1/tan x = tan(x/2)
    let x = PI / teeth(z)?;
    Ok(plain(x * tan(0.5 * x)))
}

/// Speed ratio of the drive: turns of the driver for one turn of the driven sprocket.
///
/// # Formula
/// i = z₂ / z₁, where z₁ drives and z₂ is driven.
///
/// # Errors
/// A tooth count out of range.
pub fn ratio(driver: u32, driven: u32) -> Result<Ratio> {
    Ok(plain(teeth(driven)? / teeth(driver)?))
}

/// Speed of the driven sprocket.
///
/// # Formula
/// n₂ = n₁ z₁ / z₂
///
/// # Errors
/// A negative speed; a tooth count out of range.
pub fn driven_speed(speed: AngularVelocity, driver: u32, driven: u32) -> Result<AngularVelocity> {
    let omega = not_negative("speed", speed.value)?;
    Ok(AngularVelocity::new::<radian_per_second>(omega / ratio(driver, driven)?.value))
}

/// Mean speed of the chain: one pitch passes for each tooth.
///
/// # Formula
/// v = z p n, where n is in turns a time.
///
/// # Source
/// The definition; textbooks print v = N p n / 12 (ft/min, inches, rev/min).
///
/// # Errors
/// A pitch not above nought, a negative speed, a tooth count out of range.
pub fn chain_velocity(pitch: Length, z: u32, speed: AngularVelocity) -> Result<Velocity> {
    let p = positive_length("chain pitch", pitch)?;
    let omega = not_negative("speed", speed.value)?;
    Ok(Velocity::new::<meter_per_second>(teeth(z)? * p * omega / TAU))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::angular_velocity::revolution_per_minute as rpm;
    use crate::units::length::{inch, meter, millimeter};
    use crate::units::ratio::percent;
    use crate::units::velocity::foot_per_minute;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    /// N, PD/p, OD/p, both chordal variations in %. Exact mathematics, printed to the last digit shown;
    /// the 25-tooth diameters also stand in a printed unit-pitch table (ANSI/ASME B29.1M: 7.979, 8.516).
    const UNIT_PITCH: [(u32, f64, f64, f64, f64); 11] = [
        (11, 3.5495, 4.0057, 4.051, 4.106),
        (13, 4.1786, 4.6572, 2.906, 2.934),
        (15, 4.8097, 5.3046, 2.185, 2.201),
        (17, 5.4422, 5.9495, 1.703, 1.712),
        (19, 6.0755, 6.5927, 1.364, 1.370),
        (21, 6.7095, 7.2346, 1.117, 1.121),
        (25, 7.9787, 8.5158, 0.789, 0.791),
        (34, 10.8380, 11.3917, 0.427, 0.427),
        (40, 12.7455, 13.3062, 0.308, 0.309),
        (60, 19.1073, 19.6811, 0.137, 0.137),
        (80, 25.4713, 26.0517, 0.077, 0.077),
    ];

    #[test]
    fn unit_pitch_table() {
        let p = Length::new::<meter>(1.0);
        for (z, pd, od, drop, range) in UNIT_PITCH {
            assert_abs_diff_eq!(pitch_diameter(p, z).unwrap().value, pd, epsilon = 0.000_051);
            assert_abs_diff_eq!(outside_diameter(p, z).unwrap().value, od, epsilon = 0.000_051);
            assert_abs_diff_eq!(chordal_variation_radius(z).unwrap().get::<percent>(), drop, epsilon = 0.000_51);
            assert_abs_diff_eq!(chordal_variation_range(z).unwrap().get::<percent>(), range, epsilon = 0.000_51);
        }
    }

    /// No. 120 chain, 25 teeth, from a printed unit-pitch table: PD 303.99 mm, OD 324.46 mm.
    #[test]
    fn sprocket_from_a_unit_pitch_table() {
        let p = Length::new::<millimeter>(38.1);
        assert_abs_diff_eq!(pitch_diameter(p, 25).unwrap().get::<millimeter>(), 303.99, epsilon = 0.01);
        assert_abs_diff_eq!(outside_diameter(p, 25).unwrap().get::<millimeter>(), 324.46, epsilon = 0.01);
    }

    /// V. B. Bhandari, *Design of Machine Elements*, Ex 14.6 (open companion notebook): 127.816092, 485.228971 mm.
    #[test]
    fn textbook_pitch_diameters() {
        let p = Length::new::<millimeter>(19.05);
        assert_relative_eq!(pitch_diameter(p, 21).unwrap().get::<millimeter>(), 127.816_092, max_relative = 1e-8);
        assert_relative_eq!(pitch_diameter(p, 80).unwrap().get::<millimeter>(), 485.228_971, max_relative = 1e-8);
    }

    /// Chordal variation by walking one tooth's arc: the chain line's speed is proportional to its lever arm.
    #[test]
    fn chordal_variation_by_simulation() {
        let z = 17_u32;
        let step = TAU / f64::from(z);
        let steps = 20_000;
        let arm = |k: i32| crate::math::cos(-0.5 * step + step * f64::from(k) / f64::from(steps));
        let arms: Vec<f64> = (0..=steps).map(arm).collect();
        let (low, high) = arms.iter().fold((f64::MAX, 0.0_f64), |(l, h), &a| (l.min(a), h.max(a)));
        let mean = arms.windows(2).map(|w| 0.5 * (w[0] + w[1])).sum::<f64>() / f64::from(steps);
        assert_relative_eq!(chordal_variation_radius(z).unwrap().value, (high - low) / high, max_relative = 1e-9);
        assert_relative_eq!(chordal_variation_range(z).unwrap().value, (high - low) / mean, max_relative = 1e-6);
    }

    /// T. H. Wentzell, *Machine Design*, Ex 14.4: 12 and 24 teeth, 1800 rev/min, 0.5 in: 900 rev/min, 900.00 ft/min.
    #[test]
    fn textbook_speeds() {
        let n = AngularVelocity::new::<rpm>(1800.0);
        assert_relative_eq!(driven_speed(n, 12, 24).unwrap().get::<rpm>(), 900.0, max_relative = 1e-12);
        assert_relative_eq!(ratio(12, 24).unwrap().value, 2.0);
        let v = chain_velocity(Length::new::<inch>(0.5), 12, n).unwrap();
        assert_abs_diff_eq!(v.get::<foot_per_minute>(), 900.00, epsilon = 0.005);
    }

    /// A published table of no named author, 12 teeth at 100 rev/min.
    #[test]
    fn printed_chain_speeds() {
        let n = AngularVelocity::new::<rpm>(100.0);
        for (p, v) in [(0.375, 37.5), (0.5, 50.0), (0.625, 62.5), (0.75, 75.0)] {
            let speed = chain_velocity(Length::new::<inch>(p), 12, n).unwrap();
            assert_relative_eq!(speed.get::<foot_per_minute>(), v, max_relative = 1e-6);
        }
    }

    #[test]
    fn properties() {
        let p = Length::new::<millimeter>(12.7);
        let mut before = f64::MAX;
        for z in 9..=super::super::MOST_TEETH {
            let pd = pitch_diameter(p, z).unwrap();
            assert!(outside_diameter(p, z).unwrap() > pd);
            let over_circle = pd.value / (p.value * f64::from(z) / PI);
            assert!(over_circle > 1.0 && over_circle < before);
            before = over_circle;
        }
    }

    #[test]
    fn bad_input_is_refused() {
        let p = Length::new::<millimeter>(12.7);
        assert!(pitch_diameter(p, 5).is_err() && pitch_diameter(p, 251).is_err());
        assert!(pitch_diameter(-p, 17).is_err() && outside_diameter(p * f64::NAN, 17).is_err());
        assert!(ratio(17, 0).is_err());
        assert!(driven_speed(AngularVelocity::new::<rpm>(-1.0), 17, 34).is_err());
    }
}
