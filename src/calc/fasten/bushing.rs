//! Taper bushings: how far they draw up, how hard they grip, and whether the screws pulled evenly.
//!
//! A split bushing with a tapered outside is pulled into a tapered hub by screws; it closes on the shaft as it goes in.
//! Faces must be clean; oil on the taper makes the same torque draw it in too far. A kind with a flange keeps a gap between
//! flange and hub when tight: a closed gap means that the flange, not the taper, carries the screws.
//!
//! # Source
//! All of it is geometry and common practice, no source. The torque and gap to keep are the maker's.

use super::{bolt, metres, newtons, plain};
use crate::Result;
use crate::error::{positive, within};
use crate::units::{Force, Length, Ratio, Torque};

#[cfg(any(doc, test))]
use crate::Error;

/// Most and fewest screws or readings taken.
const MOST: usize = 24;

/// How much the bore closes as the bushing draws in, the slit and the cone taken as perfect: free play first, grip after.
///
/// # Formula
/// `Δd = k x`, x the draw and k the taper on the diameter (1:16 and the like).
///
/// # Source
/// Geometry of a cone.
///
/// # Errors
/// [`Error::OutOfRange`] when the draw is negative or the taper not between 0 and 1.
pub fn closing(draw: Length, taper: Ratio) -> Result<Length> {
    Ok(metres(within("draw", draw.value, 0.0, 1.0)? * cone(taper)?))
}

/// Draw that takes up a clearance of the bore over the shaft: the inverse of [`closing`].
///
/// # Formula
/// `x = Δd / k`
///
/// # Source
/// As [`closing`].
///
/// # Errors
/// [`Error::OutOfRange`] when the clearance is negative or the taper not between 0 and 1.
///
/// # Example
/// 0.004 in of clearance on a 1 in 16 taper takes 0.064 in of draw:
/// ```
/// use drivecourse_calc::{fasten::bushing::draw_for, units::*};
/// let inch = Length::new::<length::inch>;
/// let draw = draw_for(inch(0.004), Ratio::new::<ratio::ratio>(1.0 / 16.0))?;
/// approx::assert_abs_diff_eq!(draw.get::<length::inch>(), 0.064, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn draw_for(clearance: Length, taper: Ratio) -> Result<Length> {
    Ok(metres(within("clearance", clearance.value, 0.0, 0.1)? / cone(taper)?))
}

/// Gap left between flange and hub after drawing up.
///
/// # Formula
/// `g = g₀ − x`
///
/// # Source
/// Geometry.
///
/// # Errors
/// [`Error::OutOfRange`] when the draw is negative or would close the gap: the flange bottoms, the taper does not grip.
pub fn gap_left(loose_gap: Length, draw: Length) -> Result<Length> {
    let g = positive("gap", loose_gap.value)?;
    // a thousandth of the gap at the very least must stay
    Ok(metres(g - within("draw", draw.value, 0.0, g * 0.999)?))
}

/// Total pull of the screws that draw the bushing in.
///
/// # Formula
/// `F = n T / (K D)`, by [`preload_from_torque`](bolt::preload_from_torque) for each of n screws.
///
/// # Source
/// As [`bolt::torque`].
///
/// # Errors
/// As [`bolt::torque`], and unless there are 1 to 24 screws.
pub fn screw_pull(screws: usize, torque: Torque, diameter: Length, k: Ratio) -> Result<Force> {
    let n = within("number of screws", screws as f64, 1.0, MOST as f64)?;
    Ok(newtons(n * bolt::preload_from_torque(torque, diameter, k)?.value))
}

/// Face runout that an unevenly drawn flange leaves at a rim, from the gaps felt round the flange.
///
/// # Formula
/// `r = (g_max − g_min) D_rim / D_flange`: a tilted flange tilts the hub with it.
///
/// # Source
/// Geometry (similar triangles).
///
/// # Errors
/// [`Error::OutOfRange`] unless there are 2 to 24 gaps, none negative, and the diameters are greater than nought.
///
/// Trap: a small difference at the flange is a large one at the sprocket's rim.
pub fn rim_wobble(gaps: &[Length], flange: Length, rim: Length) -> Result<Length> {
    within("number of gaps", gaps.len() as f64, 2.0, MOST as f64)?;
    let ratio = positive("rim diameter", rim.value)? / positive("flange diameter", flange.value)?;
    let (mut low, mut high) = (f64::MAX, 0.0_f64);
    for gap in gaps {
        let g = within("gap", gap.value, 0.0, 1.0)?;
        (low, high) = (low.min(g), high.max(g));
    }
    Ok(metres((high - low) * ratio))
}

/// Screw torque lost after the first run, as a share of what was set: what retorquing is there to find.
///
/// # Formula
/// `s = (T_set − T_found) / T_set`; negative when the screw was found tighter.
///
/// # Source
/// Common practice, no source: retorque after the first run, screw by screw in the crosswise order.
///
/// # Errors
/// [`Error::OutOfRange`] unless the torque set is greater than nought and the one found is not negative.
pub fn torque_lost(set: Torque, found: Torque) -> Result<Ratio> {
    let (s, f) = (positive("torque set", set.value)?, within("torque found", found.value, 0.0, f64::MAX)?);
    Ok(plain((s - f) / s))
}

/// A taper on the diameter, as a number.
fn cone(taper: Ratio) -> Result<f64> {
    within("taper", taper.value, 1e-4, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::force::kilonewton;
    use crate::units::length::millimeter;
    use crate::units::torque::newton_meter;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }
    fn nm(value: f64) -> Torque {
        Torque::new::<newton_meter>(value)
    }

    #[test]
    fn draw_and_closing_undo_each_other() {
        for taper in [1.0 / 16.0, 0.0625 / 2.0, 1.0 / 12.0] {
            let draw = draw_for(mm(0.1), plain(taper)).unwrap();
            assert_relative_eq!(closing(draw, plain(taper)).unwrap().value, 1e-4, max_relative = 1e-12);
        }
        // by hand: 3 mm along a cone of 1 in 12 is 0.25 mm
        assert_relative_eq!(
            closing(mm(3.0), plain(1.0 / 12.0)).unwrap().get::<millimeter>(),
            0.25,
            max_relative = 1e-12
        );
    }

    #[test]
    fn a_closed_gap_is_refused() {
        assert_relative_eq!(gap_left(mm(6.0), mm(4.0)).unwrap().get::<millimeter>(), 2.0, max_relative = 1e-12);
        for draw in [6.0, 7.0, -0.1] {
            assert!(matches!(gap_left(mm(6.0), mm(draw)), Err(Error::OutOfRange { input: "draw", .. })));
        }
    }

    #[test]
    fn screws_pull_together() {
        // by hand: 30 N·m on an 8 mm dry screw is 30/(0.2 × 0.008) = 18.75 kN; three of them 56.25 kN
        let pull = screw_pull(3, nm(30.0), mm(8.0), plain(0.2)).unwrap();
        assert_relative_eq!(pull.get::<kilonewton>(), 56.25, max_relative = 1e-12);
        // an oiled taper or thread: the same torque draws a third harder
        let oiled = screw_pull(3, nm(30.0), mm(8.0), plain(0.15)).unwrap();
        assert_relative_eq!((oiled / pull).value, 4.0 / 3.0, max_relative = 1e-12);
    }

    #[test]
    fn wobble_and_loss() {
        // 0.1 mm at a 100 mm flange is 0.4 mm at a 400 mm rim
        let wobble = rim_wobble(&[mm(2.0), mm(2.1), mm(2.05)], mm(100.0), mm(400.0)).unwrap();
        assert_abs_diff_eq!(wobble.get::<millimeter>(), 0.4, epsilon = 1e-12);
        assert_relative_eq!(torque_lost(nm(30.0), nm(24.0)).unwrap().value, 0.2, max_relative = 1e-12);
        assert!(torque_lost(nm(30.0), nm(31.0)).unwrap().value < 0.0);
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(closing(mm(-1.0), plain(0.1)).is_err() && draw_for(mm(0.1), plain(0.0)).is_err());
        assert!(screw_pull(0, nm(30.0), mm(8.0), plain(0.2)).is_err());
        assert!(rim_wobble(&[mm(1.0), mm(-1.0)], mm(100.0), mm(400.0)).is_err());
        assert!(torque_lost(nm(0.0), nm(1.0)).is_err());
    }
}
