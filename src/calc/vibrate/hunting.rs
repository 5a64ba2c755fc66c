//! How often the same two teeth meet: hunting tooth and assembly phase.
//!
//! # Source
//! W. C. Foiles, *Gear Frequencies Using the Euclidean Algorithm*.

use super::hz;
use super::orders::count;
use crate::Result;
use crate::error::positive;
use crate::units::Frequency;

#[cfg(any(doc, test))]
use crate::Error;

/// Assembly phases of a pair: the greatest number that divides both tooth counts.
///
/// # Formula
/// `N_A = gcd(z₁, z₂)`
///
/// # Source
/// W. C. Foiles, *Gear Frequencies Using the Euclidean Algorithm*.
///
/// # Errors
/// [`Error::OutOfRange`] unless both tooth counts are 1 to [`MOST_TEETH`](super::orders::MOST_TEETH).
///
/// With one phase every tooth meets every other (a hunting pair), and wear spreads evenly.
pub fn assembly_phases(z1: u32, z2: u32) -> Result<u32> {
    count("tooth count", z1)?;
    count("tooth count", z2)?;
    let (mut a, mut b) = (z1, z2);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    Ok(a)
}

/// Frequency at which the same two teeth meet again.
///
/// # Formula
/// `f_h = f_m N_A / (z₁ z₂)`, f_m the mesh frequency, N_A the assembly phases.
///
/// # Source
/// W. C. Foiles, *Gear Frequencies Using the Euclidean Algorithm*.
///
/// # Errors
/// [`Error::OutOfRange`] unless the mesh frequency is greater than nought and both counts are as for [`assembly_phases`].
///
/// # Example
/// 24 and 71 teeth, 600 Hz of mesh:
/// ```
/// use drivecourse_calc::{vibrate::hunting::hunting_tooth_frequency, units::*};
/// let hunting = hunting_tooth_frequency(Frequency::new::<frequency::hertz>(600.0), 24, 71)?;
/// approx::assert_abs_diff_eq!(hunting.get::<frequency::hertz>(), 0.3521, epsilon = 5e-5);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the greatest common divisor times the pinion's turns, which some lists print.
pub fn hunting_tooth_frequency(mesh: Frequency, z1: u32, z2: u32) -> Result<Frequency> {
    let phases = f64::from(assembly_phases(z1, z2)?);
    Ok(hz(positive("mesh frequency", mesh.value)? * phases / (f64::from(z1) * f64::from(z2))))
}

/// Frequency of the assembly phase: wear of a pair that was put together in another phase shows there.
///
/// # Formula
/// `f_a = f_m / N_A`
///
/// # Source
/// W. C. Foiles, *Gear Frequencies Using the Euclidean Algorithm*.
///
/// # Errors
/// As [`hunting_tooth_frequency`].
pub fn assembly_phase_frequency(mesh: Frequency, z1: u32, z2: u32) -> Result<Frequency> {
    Ok(hz(positive("mesh frequency", mesh.value)? / f64::from(assembly_phases(z1, z2)?)))
}

/// Turns of the first and of the second gear until the same two teeth meet again.
///
/// # Formula
/// `z₂ / N_A` turns of the first and `z₁ / N_A` of the second.
///
/// # Source
/// The least common multiple of the tooth counts, over each of them.
///
/// # Errors
/// As [`assembly_phases`].
///
/// # Example
/// ```
/// use drivecourse_calc::vibrate::hunting::turns_to_repeat;
/// assert_eq!(turns_to_repeat(24, 71)?, (71, 24));
/// assert_eq!(turns_to_repeat(24, 84)?, (7, 2));
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn turns_to_repeat(z1: u32, z2: u32) -> Result<(u32, u32)> {
    let phases = assembly_phases(z1, z2)?;
    Ok((z2 / phases, z1 / phases))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::frequency::cycle_per_minute;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn cpm(value: f64) -> Frequency {
        Frequency::new::<cycle_per_minute>(value)
    }

    #[test]
    fn published_pairs() {
        // a numerical-software reference page: 8 and 42 teeth, mesh 160: assembly phase 80 (1e-4)
        let phase = assembly_phase_frequency(cpm(160.0), 8, 42).unwrap();
        assert_abs_diff_eq!(phase.get::<cycle_per_minute>(), 80.0, epsilon = 1e-4);
        // 24 and 84 teeth, mesh 48 000 cpm: 12 phases, 285.7 cpm (computed from the formula of Foiles)
        assert_eq!(assembly_phases(24, 84), Ok(12));
        let hunting = hunting_tooth_frequency(cpm(48_000.0), 24, 84).unwrap();
        assert_abs_diff_eq!(hunting.get::<cycle_per_minute>(), 285.7, epsilon = 0.05);
        // 24 and 71 teeth at 600 Hz: 0.3521 Hz (from memory)
        assert_abs_diff_eq!(hunting_tooth_frequency(hz(600.0), 24, 71).unwrap().value, 0.3521, epsilon = 5e-5);
        // 23 and 67 teeth, pinion at 30 Hz: 0.448 Hz, not 30 (a glossary that prints 30 is wrong)
        assert_abs_diff_eq!(hunting_tooth_frequency(hz(690.0), 23, 67).unwrap().value, 0.448, epsilon = 5e-4);
    }

    #[test]
    fn identities() {
        for (z1, z2) in [(17, 71), (24, 84), (20, 20), (1, 40), (18, 27)] {
            let mesh = hz(311.0);
            let (turns, other) = turns_to_repeat(z1, z2).unwrap();
            assert_eq!(turns * z1, other * z2, "the same teeth have passed on both sides");
            let hunting = hunting_tooth_frequency(mesh, z1, z2).unwrap().value;
            assert_relative_eq!(hunting * f64::from(turns), mesh.value / f64::from(z1), max_relative = 1e-14);
            assert_eq!(assembly_phases(z1, z2), assembly_phases(z2, z1));
        }
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(matches!(assembly_phases(0, 4), Err(Error::OutOfRange { input: "tooth count", .. })));
        assert!(turns_to_repeat(4, 0).is_err());
        assert!(hunting_tooth_frequency(hz(0.0), 20, 30).is_err());
        assert!(assembly_phase_frequency(hz(f64::NAN), 20, 30).is_err());
    }
}
