//! One foot on its pad: feeler readings at its four corners.

use super::{ROUNDING, finite, height_change, slope, twist};
use crate::Result;
use crate::error::positive;
use crate::units::{Length, Ratio};

/// How one foot meets its pad, by [`FootPlane::fit`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Fit {
    /// Nothing above the limit: the foot sits.
    Sits,
    /// An even gap: plain shims fill it.
    Parallel,
    /// An angled foot: plain shims leave a wedge; the foot or the pad is machined, or a stepped or tapered shim is cut.
    Wedge,
    /// Corners that lie in no plane: dirt, a burr or a bent foot, to be cleaned or mended before any shim.
    Uneven,
}

/// Best plane through the gaps at the four corners of one foot, by [`corner_plane`].
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct FootPlane {
    /// Gap at the middle of the foot, the mean of the four.
    pub mean: Length,
    /// Growth of the gap per length from corner one towards corner two (dimensionless).
    pub slope_along: Ratio,
    /// Growth of the gap per width from corner one towards corner four (dimensionless).
    pub slope_across: Ratio,
    /// Distance of every corner from the best plane, not below nought; the four are alike.
    pub residual: Length,
    /// Growth of the gap over the whole length of the foot, with its sign.
    pub wedge_along: Length,
    /// Growth of the gap over the whole width of the foot, with its sign.
    pub wedge_across: Length,
}

impl FootPlane {
    /// Largest difference of gap between two corners of the best plane, as a length: what a plain shim leaves open.
    ///
    /// # Formula
    /// `|dl| + |dw|`, where `dl` and `dw` are the growth of the gap over the length and over the width; the largest
    /// lies between two corners of a diagonal.
    ///
    /// # Source
    /// Geometry of a plane.
    pub fn wedge(&self) -> Length {
        self.wedge_along.abs() + self.wedge_across.abs()
    }

    /// How far any one corner stands off the plane through the other three, as a length.
    ///
    /// # Formula
    /// `4 r`, where `r` is the residual.
    ///
    /// # Source
    /// Geometry, see [`corner_plane`].
    pub fn warp(&self) -> Length {
        4.0 * self.residual
    }

    /// Tells a wedge from an even gap and from a foot that is bent or dirty, the worst first.
    ///
    /// # Formula
    /// Uneven when the [warp](Self::warp) is above the limit; else a wedge when the [wedge](Self::wedge) is; else
    /// parallel when the mean gap is; else the foot sits.
    ///
    /// # Source
    /// Common practice, no source (a usual limit is 0.05 mm, 0.002 in).
    pub fn fit(&self, limit: Length) -> Fit {
        // A reading that lies right on the limit meets it.
        let limit = limit + ROUNDING;
        if self.warp() > limit {
            Fit::Uneven
        } else if self.wedge() > limit {
            Fit::Wedge
        } else if self.mean > limit {
            Fit::Parallel
        } else {
            Fit::Sits
        }
    }
}

/// Least-squares plane through the feeler readings at the four corners of one foot: lengths and slopes.
///
/// The corners run clockwise seen from above, as the feet of the frame do: one to two along the length, one to four
/// across the width.
///
/// # Formula
/// With `g1..g4` the readings, `l` the length and `w` the width of the foot, the normal equations give
/// * mean `(g1 + g2 + g3 + g4) / 4`
/// * slope along `((g2 + g3) - (g1 + g4)) / (2 l)`
/// * slope across `((g3 + g4) - (g1 + g2)) / (2 w)`
/// * residual `|(g1 + g3) - (g2 + g4)| / 4`: each corner is off by this much, the two diagonals to opposite sides.
///
/// # Source
/// Method of least squares, solved for the four corners of a rectangle.
///
/// # Errors
/// [`crate::Error::OutOfRange`] when the length or width is not greater than nought or a reading is not finite.
///
/// # Example
/// Readings of 0.10, 0.22, 0.22 and 0.10 mm round a foot 80 mm long: a wedge of 0.12 mm, which plain shims cannot fill.
/// ```
/// use drivecourse_calc::mount::{Fit, corner_plane};
/// use drivecourse_calc::units::{Length, length::millimeter};
///
/// let readings = [0.10, 0.22, 0.22, 0.10].map(Length::new::<millimeter>);
/// let plane = corner_plane(readings, Length::new::<millimeter>(80.0), Length::new::<millimeter>(60.0))?;
/// assert!((plane.mean.get::<millimeter>() - 0.16).abs() < 1e-12);
/// assert!((plane.slope_along.value - 0.0015).abs() < 1e-12);
/// assert!((plane.wedge().get::<millimeter>() - 0.12).abs() < 1e-12);
/// assert_eq!(plane.fit(Length::new::<millimeter>(0.05)), Fit::Wedge);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn corner_plane(readings: [Length; 4], foot_length: Length, foot_width: Length) -> Result<FootPlane> {
    for reading in readings {
        finite("corner reading", reading)?;
    }
    positive("foot length", foot_length.value)?;
    positive("foot width", foot_width.value)?;
    let [g1, g2, g3, g4] = readings;
    let slope_along = slope(0.5 * ((g2 + g3) - (g1 + g4)), foot_length)?;
    let slope_across = slope(0.5 * ((g3 + g4) - (g1 + g2)), foot_width)?;
    Ok(FootPlane {
        mean: 0.25 * (g1 + g2 + g3 + g4),
        slope_along,
        slope_across,
        residual: 0.25 * twist(readings).abs(),
        wedge_along: height_change(slope_along, foot_length),
        wedge_across: height_change(slope_across, foot_width),
    })
}

#[cfg(test)]
mod tests {
    use super::super::Foot;
    use super::super::tests::{Numbers, solve3};
    use super::*;
    use crate::Error;
    use crate::units::length::millimeter;

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }

    fn fit(readings: [f64; 4]) -> Fit {
        corner_plane(readings.map(mm), mm(80.0), mm(60.0)).unwrap().fit(mm(0.05))
    }

    #[test]
    fn plane_agrees_with_the_normal_equations() {
        let mut numbers = Numbers(11);
        for _ in 0..3000 {
            let readings = [0; 4].map(|_| mm(numbers.between(0.0, 1.5)));
            let (length, width) = (mm(numbers.between(20.0, 300.0)), mm(numbers.between(20.0, 300.0)));
            let mut normal = [[0.0; 3]; 3];
            let mut right = [0.0; 3];
            for foot in Foot::ALL {
                let (x, y) = foot.position(length, width);
                let row = [1.0, x.get::<millimeter>(), y.get::<millimeter>()];
                for i in 0..3 {
                    right[i] += row[i] * readings[foot.index()].get::<millimeter>();
                    for j in 0..3 {
                        normal[i][j] += row[i] * row[j];
                    }
                }
            }
            let [at_corner, along, across] = solve3(normal, right);
            let plane = corner_plane(readings, length, width).unwrap();
            approx::assert_abs_diff_eq!(plane.slope_along.value, along, epsilon = 1e-12);
            approx::assert_abs_diff_eq!(plane.slope_across.value, across, epsilon = 1e-12);
            let fitted = Foot::ALL.map(|foot| {
                let (x, y) = foot.position(length, width);
                at_corner + along * x.get::<millimeter>() + across * y.get::<millimeter>()
            });
            approx::assert_abs_diff_eq!(
                plane.mean.get::<millimeter>(),
                fitted.iter().sum::<f64>() / 4.0,
                epsilon = 1e-10
            );
            for foot in Foot::ALL {
                let off = (readings[foot.index()].get::<millimeter>() - fitted[foot.index()]).abs();
                approx::assert_abs_diff_eq!(plane.residual.get::<millimeter>(), off, epsilon = 1e-10);
            }
            let largest =
                fitted.iter().fold(f64::MIN, |a, b| a.max(*b)) - fitted.iter().fold(f64::MAX, |a, b| a.min(*b));
            approx::assert_abs_diff_eq!(plane.wedge().get::<millimeter>(), largest, epsilon = 1e-10);
        }
    }

    #[test]
    fn wedge_parallel_gap_and_bent_foot_are_told_apart() {
        assert_eq!(fit([0.0, 0.02, 0.01, 0.0]), Fit::Sits);
        assert_eq!(fit([0.30, 0.32, 0.31, 0.30]), Fit::Parallel);
        assert_eq!(fit([0.0, 0.12, 0.12, 0.0]), Fit::Wedge);
        // The same mean as an even gap of 0.06 mm: averaging the corners would hide the wedge.
        assert_eq!(fit([0.0, 0.06, 0.12, 0.06]), Fit::Wedge);
        // Right on the limit, though 0.12 - 0.07 is a little more than 0.05 in binary.
        assert_eq!(fit([0.07, 0.12, 0.12, 0.07]), Fit::Parallel);
        assert_eq!(fit([0.05; 4]), Fit::Sits);
        // One corner held up by dirt.
        assert_eq!(fit([0.0, 0.0, 0.20, 0.0]), Fit::Uneven);
        // Two corners of a diagonal bent up.
        assert_eq!(fit([0.1, 0.0, 0.1, 0.0]), Fit::Uneven);
    }

    #[test]
    fn a_foot_needs_a_length_a_width_and_readings() {
        let readings = [mm(0.1); 4];
        let refused = |result: Result<FootPlane>| match result {
            Err(Error::OutOfRange { input, .. }) => input,
            other => panic!("{other:?}"),
        };
        assert_eq!(refused(corner_plane(readings, mm(0.0), mm(60.0))), "foot length");
        assert_eq!(refused(corner_plane(readings, mm(80.0), mm(-1.0))), "foot width");
        assert_eq!(refused(corner_plane([mm(f64::INFINITY); 4], mm(80.0), mm(60.0))), "corner reading");
    }
}
