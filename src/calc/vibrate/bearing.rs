//! Frequencies of a damaged rolling bearing.

use core::f64::consts::FRAC_PI_2;

use super::plain;
use crate::error::{positive, within};
use crate::units::{Angle, Length, Ratio};
use crate::{Result, math};
use core::marker::PhantomData;

#[cfg(any(doc, test))]
use crate::Error;

/// How far a real bearing may run from theory, to either side: 3 %, because the elements slide a little (mostly 1 to 3 % below).
///
/// # Source
/// Common practice, no source.
pub const WATCHED_BAND: Ratio = Ratio { dimension: PhantomData, units: PhantomData, value: 0.03 };

/// The inside of a rolling bearing whose outer ring stands still.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Geometry {
    /// Balls or rollers in one row.
    pub elements: u32,
    /// Diameter of one ball or roller.
    pub element_diameter: Length,
    /// Pitch diameter: of the circle through the centres of the elements.
    pub pitch_diameter: Length,
    /// Contact angle: nought for a deep-groove or cylindrical bearing under radial load.
    pub contact_angle: Angle,
}

/// Defect orders: frequencies over the shaft's.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Orders {
    /// Fundamental train: one turn of the cage (FTF).
    pub cage: Ratio,
    /// Elements that pass a spot on the outer ring (BPFO).
    pub outer: Ratio,
    /// Elements that pass a spot on the inner ring (BPFI).
    pub inner: Ratio,
    /// One spin of an element (BSF).
    pub spin: Ratio,
    /// Strikes of a spot on an element, which meets both rings in each spin: twice the spin. Some tables print it as "rolling
    /// element".
    pub element: Ratio,
}

/// Defect orders of a bearing whose inner ring turns.
///
/// # Formula
/// With `k = (d/D) cos α`: `FTF = ½ (1 − k)`, `BPFO = ½ n (1 − k)`, `BPFI = ½ n (1 + k)`, `BSF = (D / 2d)(1 − k²)`; the rolling
/// element strikes at `2 BSF`.
///
/// # Source
/// Kinematics of pure rolling; checked against the Case Western Reserve University bearing data.
///
/// # Errors
/// [`Error::OutOfRange`] unless the elements are 3 to 1000, the diameters greater than nought, the element smaller than the pitch
/// diameter, and the contact angle from nought to below 90°.
///
/// # Example
/// Nine balls of 0.3126 in on 1.537 in:
/// ```
/// use drivecourse_calc::{vibrate::bearing::{Geometry, orders}, units::*};
/// let bearing = Geometry {
///     elements: 9,
///     element_diameter: Length::new::<length::inch>(0.3126),
///     pitch_diameter: Length::new::<length::inch>(1.537),
///     contact_angle: Angle::new::<angle::degree>(0.0),
/// };
/// approx::assert_abs_diff_eq!(orders(&bearing)?.outer.value, 3.5848, epsilon = 1e-4);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: outer and inner changed over; the ball spin taken for the rolling-element order, which is twice it.
pub fn orders(bearing: &Geometry) -> Result<Orders> {
    let n = within("rolling elements", f64::from(bearing.elements), 3.0, 1000.0)?;
    let pitch = positive("pitch diameter", bearing.pitch_diameter.value)?;
    let d = positive("element diameter", bearing.element_diameter.value)?;
    within("element diameter", d, f64::MIN_POSITIVE, pitch.next_down())?;
    let angle = within("contact angle", bearing.contact_angle.value, 0.0, FRAC_PI_2.next_down())?;
    let k = d / pitch * math::cos(angle);
    let spin = pitch / (2.0 * d) * (1.0 - k) * (1.0 + k);
    Ok(Orders {
        cage: plain(0.5 * (1.0 - k)),
        outer: plain(0.5 * n * (1.0 - k)),
        inner: plain(0.5 * n * (1.0 + k)),
        spin: plain(spin),
        element: plain(2.0 * spin),
    })
}

/// Defect orders when only the number of elements is known.
///
/// # Formula
/// `FTF ≈ 0.4`, `BPFO ≈ 0.4 n`, `BPFI ≈ 0.6 n`, `BSF ≈ 0.23 n` below ten elements, else `0.18 n`.
///
/// # Source
/// Common practice, no source; good to about 20 %.
///
/// # Errors
/// [`Error::OutOfRange`] unless the elements are 3 to 1000.
pub fn quick_orders(elements: u32) -> Result<Orders> {
    let n = within("rolling elements", f64::from(elements), 3.0, 1000.0)?;
    let spin = n * if elements < 10 { 0.23 } else { 0.18 };
    Ok(Orders {
        cage: plain(0.4),
        outer: plain(0.4 * n),
        inner: plain(0.6 * n),
        spin: plain(spin),
        element: plain(2.0 * spin),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{
        angle::degree,
        length::{inch, millimeter},
    };
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn inches(elements: u32, element: f64, pitch: f64) -> Geometry {
        Geometry {
            elements,
            element_diameter: Length::new::<inch>(element),
            pitch_diameter: Length::new::<inch>(pitch),
            contact_angle: Angle::new::<degree>(0.0),
        }
    }

    /// Case Western Reserve University bearing data (geometry from memory); its "rolling element" is twice the spin.
    #[test]
    fn published_orders() {
        // the pitch of the second is given to 0.001 in only: half of that moves its rings by 4e-4 and its element by more
        for (bearing, printed, tolerance) in [
            (inches(9, 0.3126, 1.537), [0.39828, 3.5848, 5.4152, 4.7135], 1e-4),
            (inches(8, 0.2656, 1.122), [0.3817, 3.0530, 4.9469, 3.9874], 4e-4),
        ] {
            let found = orders(&bearing).unwrap();
            for (value, printed) in [found.cage, found.outer, found.inner, found.element].into_iter().zip(printed) {
                assert_abs_diff_eq!(value.value, printed, epsilon = tolerance);
            }
            assert_relative_eq!(found.element.value, 2.0 * found.spin.value);
        }
    }

    /// The same table, two bearings without geometry: FTF, BSF, BPFO, BPFI to three places. Eliminating k ties them together.
    #[test]
    fn a_published_table_keeps_the_identities() {
        for (n, cage, outer, inner) in [(9.0, 0.397, 3.574, 5.426), (10.0, 0.408, 4.078, 5.922)] {
            assert_abs_diff_eq!(outer, n * cage, epsilon = 0.006);
            assert_abs_diff_eq!(outer + inner, n, epsilon = 0.006);
            // a bearing of that k gives the printed rings again
            let bearing = inches(n as u32, 1.0 - 2.0 * cage, 1.0);
            let found = orders(&bearing).unwrap();
            assert_abs_diff_eq!(found.outer.value, outer, epsilon = 0.006);
            assert_abs_diff_eq!(found.inner.value, inner, epsilon = 0.006);
        }
        // and its spin, printed 2.328 and 2.620
        for (k, printed) in [(1.0 - 2.0 * 0.397, 2.328), (1.0 - 2.0 * 0.408, 2.620)] {
            // k is known to ±0.001 only, and the spin goes about with 1/k: 0.6 %
            let spin = orders(&inches(9, k, 1.0)).unwrap().spin.value;
            assert_relative_eq!(spin, printed, max_relative = 0.006);
        }
    }

    #[test]
    fn published_frequencies() {
        // common practice: n = 8, d = 10, D = 50, 1800 rev/min: 12, 96, 144, 72 Hz
        let bearing = Geometry {
            elements: 8,
            element_diameter: Length::new::<millimeter>(10.0),
            pitch_diameter: Length::new::<millimeter>(50.0),
            contact_angle: Angle::new::<degree>(0.0),
        };
        let o = orders(&bearing).unwrap();
        for (order, printed) in [(o.cage, 12.0), (o.outer, 96.0), (o.inner, 144.0), (o.spin, 72.0), (o.element, 144.0)]
        {
            assert_abs_diff_eq!(order.value * 1800.0 / 60.0, printed, epsilon = 1e-9);
        }
    }

    #[test]
    fn identities() {
        for (n, d, angle) in [(7, 0.2, 0.0), (12, 0.31, 15.0), (16, 0.12, 40.0)] {
            let bearing = Geometry { contact_angle: Angle::new::<degree>(angle), ..inches(n, d, 1.0) };
            let o = orders(&bearing).unwrap();
            let n = f64::from(n);
            assert_relative_eq!(o.outer.value + o.inner.value, n, max_relative = 1e-12);
            assert_relative_eq!(o.outer.value, n * o.cage.value, max_relative = 1e-12);
            assert_relative_eq!(o.inner.value, n * (1.0 - o.cage.value), max_relative = 1e-12);
            assert!(o.cage.value < 0.5);
        }
    }

    #[test]
    fn quick_estimates_are_within_a_fifth() {
        for bearing in [inches(9, 0.3126, 1.537), inches(8, 0.2656, 1.122)] {
            let (exact, quick) = (orders(&bearing).unwrap(), quick_orders(bearing.elements).unwrap());
            for (a, b) in [(exact.cage, quick.cage), (exact.outer, quick.outer), (exact.inner, quick.inner)] {
                assert_relative_eq!(a.value, b.value, max_relative = 0.2);
            }
            assert_relative_eq!(exact.spin.value, quick.spin.value, max_relative = 0.2);
        }
        assert_abs_diff_eq!(quick_orders(10).unwrap().spin.value, 1.8, epsilon = 1e-12);
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(matches!(orders(&inches(2, 0.2, 1.0)), Err(Error::OutOfRange { input: "rolling elements", .. })));
        assert!(matches!(orders(&inches(9, 1.0, 1.0)), Err(Error::OutOfRange { input: "element diameter", .. })));
        assert!(orders(&inches(9, 0.2, f64::NAN)).is_err());
        let steep = Geometry { contact_angle: Angle::new::<degree>(90.0), ..inches(9, 0.2, 1.0) };
        assert!(matches!(orders(&steep), Err(Error::OutOfRange { input: "contact angle", .. })));
        assert!(quick_orders(0).is_err());
    }
}
