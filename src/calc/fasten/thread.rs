//! Tensile stress area of a screw thread: the section that carries the pull.

use crate::Result;
use crate::error::within;
use crate::units::{Area, Length, area::square_meter};
use core::f64::consts::FRAC_PI_4;

#[cfg(any(doc, test))]
use crate::Error;

/// Which standard the thread is cut to; their root shapes differ, and so do their stress areas.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// Unified inch thread (UNC, UNF).
    Unified,
    /// ISO metric thread.
    Metric,
}

impl Form {
    /// Pitches that the stress diameter lies under the nominal one.
    const fn depth(self) -> f64 {
        match self {
            Self::Unified => 0.9743,
            Self::Metric => 0.9382,
        }
    }
}

/// Tensile stress area of a thread.
///
/// # Formula
/// Unified `A_t = π/4 (d − 0.9743 P)²`; metric `A_s = π/4 (d − 0.9382 P)²`; d nominal diameter, P pitch (1 in / threads
/// per inch).
///
/// # Source
/// Metric: ISO 898-1. Unified: R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Table 8-2, note:
/// the mean of pitch diameter d − 0.649519 P and minor diameter d − 1.299038 P (ANSI B1.1).
///
/// # Errors
/// [`Error::OutOfRange`] unless the diameter is 1 to 200 mm and the pitch is greater than nought and at most a third of it.
///
/// # Example
/// M16 with its coarse pitch of 2 mm has 157 mm²:
/// ```
/// use drivecourse_calc::{fasten::thread::*, units::*};
/// let mm = Length::new::<length::millimeter>;
/// let area = stress_area(Form::Metric, mm(16.0), mm(2.0))?;
/// approx::assert_abs_diff_eq!(area.get::<area::square_millimeter>(), 157.0, epsilon = 0.5);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the area of the shank is a quarter to a third too much.
pub fn stress_area(form: Form, diameter: Length, pitch: Length) -> Result<Area> {
    let d = within("thread diameter", diameter.value, 0.001, 0.2)?;
    let p = within("pitch", pitch.value, f64::MIN_POSITIVE, d / 3.0)?;
    let stress_diameter = d - form.depth() * p;
    Ok(Area::new::<square_meter>(FRAC_PI_4 * stress_diameter * stress_diameter))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::length::{inch, millimeter};
    use approx::assert_relative_eq;

    #[test]
    fn constants_are_the_thread_geometry() {
        // H is the height of the sharp triangle. Unified: mean of d − 3/4 H and d − 3/2 H; metric: of d − 3/4 H and d − 17/12 H
        let h = 3.0_f64.sqrt() / 2.0;
        assert_relative_eq!(Form::Unified.depth(), 0.5 * (0.75 + 1.5) * h, max_relative = 1e-4);
        assert_relative_eq!(Form::Metric.depth(), 0.5 * (0.75 + 17.0 / 12.0) * h, max_relative = 1e-4);
    }

    #[test]
    fn nonsense_is_refused() {
        let mm = Length::new::<millimeter>;
        let none = stress_area(Form::Metric, mm(0.0), mm(1.0));
        assert!(matches!(none, Err(Error::OutOfRange { input: "thread diameter", .. })));
        assert!(stress_area(Form::Metric, mm(10.0), mm(0.0)).is_err());
        assert!(stress_area(Form::Unified, Length::new::<inch>(0.5), Length::new::<inch>(0.5)).is_err());
        assert!(stress_area(Form::Unified, mm(f64::NAN), mm(1.0)).is_err());
    }
}
