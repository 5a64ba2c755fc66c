//! Mounting: how a four-footed frame sits on its base, what lies under each foot, and the shims that cure it.
//!
//! * the frame: [`twist`], [`seat`], [`gap`], [`gap_left`], [`rise_on_loosening`], [`worst_rise`]
//! * one foot: [`corner_plane`]
//! * shims: [`shim_pack`] from a stock list such as [`metric_leaves`] or [`inch_leaves`]
//! * levelness: [`slope`], [`height_change`]
//!
//! A machined, flat base is the right cure; shims are second best and hold only while the bolts stay tight,
//! so the feet are checked again after run-in.

mod angled;
mod foot;
mod frame;
mod shim;

pub use angled::{Fit, FootPlane, corner_plane};
pub use foot::Foot;
pub use frame::{Seat, gap, gap_left, rise_on_loosening, seat, twist, worst_rise};
pub use shim::{MOST_LEAVES, MOST_STOCK, Pack, inch_leaves, metric_leaves, shim_pack};

use crate::error::positive;
use crate::units::{Length, Ratio};
use crate::{Error, Result};
use core::marker::PhantomData;

/// One nanometre: a difference of heights below it is rounding in the last digits, not unevenness.
const ROUNDING: Length = Length { dimension: PhantomData, units: PhantomData, value: 1e-9 };

/// Change of height over a run of base at a given slope, as a length with the sign of the slope.
///
/// # Formula
/// `h = s l`, where `s` is the slope as rise per run (0.15 mm/m is 0.000 15) and `l` the run.
///
/// # Source
/// Definition of slope.
///
/// # Example
/// A face open by 0.012 in across 5 in, carried over 30 in between bolts, asks for 0.072 in under each rear foot
/// (worked example of an open-drive chiller start-up manual, p. 213).
/// ```
/// use drivecourse_calc::mount::{height_change, slope};
/// use drivecourse_calc::units::{Length, length::inch};
///
/// let face = slope(Length::new::<inch>(0.012), Length::new::<inch>(5.0))?;
/// let shim = height_change(face, Length::new::<inch>(30.0));
/// assert!((shim.get::<inch>() - 0.072).abs() < 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn height_change(slope: Ratio, run: Length) -> Length {
    slope * run
}

/// Slope as rise per run (dimensionless) from a change of height over a run.
///
/// # Formula
/// `s = h / l`, where `h` is the change of height and `l` the run it was read over.
///
/// # Source
/// Definition of slope.
///
/// # Errors
/// [`Error::OutOfRange`] when the run is not greater than nought or the change of height is not finite.
pub fn slope(height_change: Length, run: Length) -> Result<Ratio> {
    finite("height change", height_change)?;
    positive("run", run.value)?;
    Ok(height_change / run)
}

/// Gives a reading back when it is a finite number, an [`Error::OutOfRange`] otherwise.
fn finite(input: &'static str, reading: Length) -> Result<Length> {
    if reading.value.is_finite() { Ok(reading) } else { Err(Error::outside(input, reading.value, f64::MIN, f64::MAX)) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::length::{inch, meter, micrometer};

    /// A small repeatable source of numbers for the tests below (Knuth's MMIX constants).
    pub(super) struct Numbers(pub(super) u64);

    impl Numbers {
        /// The next number of 0..1.
        pub(super) fn unit(&mut self) -> f64 {
            self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (self.0 >> 11) as f64 / (1u64 << 53) as f64
        }

        /// The next number of `low..high`.
        pub(super) fn between(&mut self, low: f64, high: f64) -> f64 {
            low + (high - low) * self.unit()
        }

        /// The next whole number of `0..below`.
        pub(super) fn below(&mut self, below: usize) -> usize {
            (self.unit() * below as f64) as usize
        }
    }

    /// Solves three linear equations by Cramer's rule: the tests' oracle for planes and moments.
    pub(super) fn solve3(m: [[f64; 3]; 3], right: [f64; 3]) -> [f64; 3] {
        let det = |m: [[f64; 3]; 3]| {
            m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
                + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0])
        };
        core::array::from_fn(|column| {
            let mut swapped = m;
            for (row, value) in swapped.iter_mut().zip(right) {
                row[column] = value;
            }
            det(swapped) / det(m)
        })
    }

    /// Base flatness 0.15 mm/m and 0.0018 in/ft name the same slope to the digits printed (reference figures, soft foot).
    #[test]
    fn flatness_in_both_unit_systems() {
        let metric = slope(Length::new::<micrometer>(150.0), Length::new::<meter>(1.0)).unwrap();
        let inches = slope(Length::new::<inch>(0.0018), Length::new::<inch>(12.0)).unwrap();
        approx::assert_relative_eq!(metric.value, inches.value, max_relative = 1e-12);
    }

    #[test]
    fn slope_and_height_undo_each_other() {
        let mut numbers = Numbers(7);
        for _ in 0..2000 {
            let height = Length::new::<meter>(numbers.between(-0.01, 0.01));
            let run = Length::new::<meter>(numbers.between(0.05, 5.0));
            let back = height_change(slope(height, run).unwrap(), run);
            approx::assert_relative_eq!(back.value, height.value, max_relative = 1e-14);
        }
    }

    #[test]
    fn a_slope_needs_a_run() {
        let height = Length::new::<meter>(0.001);
        for run in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert!(matches!(slope(height, Length::new::<meter>(run)), Err(Error::OutOfRange { input: "run", .. })));
        }
        assert!(slope(Length::new::<meter>(f64::NAN), height).is_err());
    }
}
