//! Typical ranges for the zone boundaries of machines without limits of their own, such as drives of up to 15 kW.
//!
//! # Source
//! ISO 20816-1:2016, Table C.1 and Annex C.2 (as transcribed by others; the ranges also in an instrument manual that quotes
//! ISO 10816-1). r.m.s. velocity on non-rotating parts. They are ranges: maker and user agree the value within them.

use super::zone::Limits;
use crate::Result;
use crate::error::positive;
use crate::math;
use crate::units::{Power, Ratio, Velocity, ratio, velocity::millimeter_per_second};

#[cfg(doc)]
use crate::Error;

/// Steps from which the boundaries are taken, mm/s r.m.s.
pub const LADDER_MM_S: [f64; 14] = [0.28, 0.45, 0.71, 1.12, 1.8, 2.8, 4.5, 7.1, 9.3, 11.2, 14.7, 18.0, 28.0, 45.0];

/// Range of the A/B boundary, mm/s r.m.s.
pub const A_B_MM_S: (f64, f64) = (0.71, 4.5);

/// Range of the B/C boundary, mm/s r.m.s.
pub const B_C_MM_S: (f64, f64) = (1.8, 9.3);

/// Range of the C/D boundary, mm/s r.m.s.
pub const C_D_MM_S: (f64, f64) = (4.5, 14.7);

/// B/C and C/D boundaries over the A/B boundary, where only that one is agreed.
pub const FACTORS: (f64, f64) = (2.56, 6.4);

/// Limits for a small machine: the low end of every range.
///
/// # Source
/// ISO 10816-1, machines of up to 15 kW (class I): from memory; the values are the low ends of ISO 20816-1, Table C.1.
///
/// # Example
/// ```
/// use drivecourse_calc::{vibrate::{general_limits::small_machine, zone::Zone}, units::*};
/// let reading = Velocity::new::<velocity::inch_per_second>(0.10); // r.m.s.
/// assert_eq!(small_machine().zone(reading)?, Zone::C);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn small_machine() -> Limits<Velocity> {
    Limits { a_b: mm_s(A_B_MM_S.0), b_c: mm_s(B_C_MM_S.0), c_d: mm_s(C_D_MM_S.0) }
}

/// Level of a sound machine over that of the largest machine of its size class.
///
/// # Formula
/// `(P / P₀)^(ln 1.6 / ln 5)`, P₀ 15 kW up to 15 kW and 75 kW above; at most 1.
///
/// # Source
/// ISO 10816-1, size classes I (up to 15 kW) and II (up to 75 kW), whose limits rise 1.6-fold for five-fold power: from memory. That
/// levels follow the power within a class as well: common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] unless the power is greater than nought.
///
/// # Example
/// A fifth of 15 kW:
/// ```
/// use drivecourse_calc::{vibrate::general_limits::size_share, units::*};
/// let share = size_share(Power::new::<power::kilowatt>(3.0))?;
/// approx::assert_abs_diff_eq!(share.value, 1.0 / 1.6, epsilon = 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn size_share(rated: Power) -> Result<Ratio> {
    const SMALL: f64 = 15_000.0;
    const MEDIUM: f64 = 75_000.0;
    let p = positive("rated power", rated.value)?;
    let largest = if p <= SMALL { SMALL } else { MEDIUM };
    let exponent = math::ln(1.6) / math::ln(5.0);
    Ok(Ratio::new::<ratio::ratio>(math::pow(p / largest, exponent).min(1.0)))
}

fn mm_s(value: f64) -> Velocity {
    Velocity::new::<millimeter_per_second>(value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    #[test]
    fn a_smaller_machine_runs_more_quietly() {
        use crate::units::power::kilowatt;
        let share = |kw: f64| size_share(Power::new::<kilowatt>(kw)).unwrap().value;
        approx::assert_relative_eq!(share(15.0), 1.0);
        approx::assert_relative_eq!(share(75.0), 1.0);
        approx::assert_relative_eq!(share(30.0) / share(18.5), share(12.0) / share(7.4), max_relative = 1e-12);
        // A level in mm/s goes on across 15 kW, where the limit takes a step of 2.8 / 1.8.
        let (below, above) = (share(15.0) * 1.8, share(15.001) * 2.8);
        assert!((above / below - 1.0).abs() < 0.03, "{below} {above}");
        assert!(share(0.55) < share(3.0) && share(3.0) < share(15.0));
        assert_eq!(share(500.0), 1.0);
        assert!(size_share(Power::new::<kilowatt>(0.0)).is_err());
        assert!(size_share(Power::new::<kilowatt>(f64::NAN)).is_err());
    }

    #[test]
    fn ranges_are_rungs_of_the_ladder() {
        for (low, high) in [A_B_MM_S, B_C_MM_S, C_D_MM_S] {
            assert!(LADDER_MM_S.contains(&low) && LADDER_MM_S.contains(&high) && low < high);
        }
        assert!(LADDER_MM_S.windows(2).all(|pair| pair[0] < pair[1]));
    }

    #[test]
    fn the_factors_give_the_low_ends_of_the_ranges() {
        // 0.71 × (1, 2.56, 6.4) is 0.71, 1.8, 4.5: printed to two digits
        for (factor, printed) in [(FACTORS.0, B_C_MM_S.0), (FACTORS.1, C_D_MM_S.0)] {
            assert_relative_eq!(0.71 * factor, printed, epsilon = 0.05);
        }
    }
}
