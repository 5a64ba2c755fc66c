//! Chain sprockets in one plane: offset and twist by straightedge, shafts parallel by two centre readings.
//!
//! The straightedge lies across the faces of both sprockets; four gaps are felt between it and the faces, two on each
//! sprocket, at equal distances either side of its centre. Where it touches, the gap is nought. It lies level to find
//! twist in plan; upright, it finds a leaning shaft the same way. Both faces must be the same distance from
//! their sprocket's mid-plane, else take the difference off the offset.

use super::{distance, metres, plain};
use crate::error::{positive, within};
use crate::units::{Angle, Length, Ratio, angle::radian};
use crate::{Result, math};

#[cfg(any(doc, test))]
use crate::Error;

/// The four gaps and where they were felt, in order along the straightedge from the reference sprocket to the other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gaps {
    /// On the reference sprocket (the one that stays): at its far rim, then at the rim next to the other sprocket.
    pub reference: [Length; 2],
    /// On the other sprocket: at the rim next to the reference, then at its far rim.
    pub other: [Length; 2],
    /// Distance between the two points on the reference sprocket.
    pub reference_chord: Length,
    /// Distance between the two points on the other sprocket.
    pub other_chord: Length,
    /// Centre distance of the sprockets.
    pub centres: Length,
}

/// How the other sprocket stands to the reference one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Faces {
    /// How far its centre lies behind the plane of the reference face (away from the straightedge), positive behind.
    pub offset: Length,
    /// Angle between the two faces, positive when the far rim of the other sprocket lies farther behind.
    pub twist: Angle,
}

/// Offset and twist of the other sprocket from the four gaps.
///
/// # Formula
/// With reference gaps g₁ g₂ over chord c₁, other gaps g₃ g₄ over chord c₂ and centres C: slope of the reference
/// `m₁ = (g₂ − g₁)/c₁`, of the other `m₂ = (g₄ − g₃)/c₂`; `offset = (g₃ + g₄)/2 − (g₁ + g₂)/2 − m₁ C`;
/// `twist = atan m₂ − atan m₁`.
///
/// # Source
/// Geometry: two straight lines; common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] unless the gaps are 0 to 0.1 m, the chords greater than nought, and the centre distance at least
/// half the sum of the chords.
///
/// # Example
/// Touching the reference all along, 0.5 mm at the near rim and 1.5 mm at the far rim of the other, 200 mm apart:
/// ```
/// use drivecourse_calc::{align::sprockets::{Gaps, faces}, units::*};
/// let mm = Length::new::<length::millimeter>;
/// let found = faces(&Gaps {
///     reference: [mm(0.0), mm(0.0)],
///     other: [mm(0.5), mm(1.5)],
///     reference_chord: mm(100.0),
///     other_chord: mm(200.0),
///     centres: mm(600.0),
/// })?;
/// approx::assert_abs_diff_eq!(found.offset.get::<length::millimeter>(), 1.0, epsilon = 1e-12);
/// approx::assert_abs_diff_eq!(found.twist.get::<angle::degree>(), 0.286, epsilon = 0.0005);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: unequal gaps on one sprocket taken as offset: they are twist, and sliding the sprocket cannot cure it.
pub fn faces(gaps: &Gaps) -> Result<Faces> {
    let gap = |input, value: Length| within(input, value.value, 0.0, 0.1);
    let [g1, g2] = gaps.reference;
    let [g3, g4] = gaps.other;
    let (g1, g2) = (gap("reference gap", g1)?, gap("reference gap", g2)?);
    let (g3, g4) = (gap("gap at the other sprocket", g3)?, gap("gap at the other sprocket", g4)?);
    let (c1, c2) =
        (positive("reference chord", gaps.reference_chord.value)?, positive("other chord", gaps.other_chord.value)?);
    let c = within("centre distance", gaps.centres.value, 0.5 * (c1 + c2), super::FARTHEST)?;
    let (m1, m2) = ((g2 - g1) / c1, (g4 - g3) / c2);
    Ok(Faces {
        offset: metres(0.5 * (g3 + g4) - 0.5 * (g1 + g2) - m1 * c),
        twist: Angle::new::<radian>(math::atan(m2) - math::atan(m1)),
    })
}

/// How much two shafts run apart, from centre distances measured at two places along them.
///
/// # Formula
/// `m = (C₂ − C₁) / a`, where a is the distance along the shafts between the two places; positive: apart at the second.
///
/// # Source
/// Geometry; common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] unless the lengths are greater than nought.
///
/// # Example
/// 600.0 and 600.9 mm, 300 mm apart: 3 mm per metre.
/// ```
/// use drivecourse_calc::{align::sprockets::out_of_parallel, units::*};
/// let mm = Length::new::<length::millimeter>;
/// let m = out_of_parallel(mm(600.0), mm(600.9), mm(300.0))?;
/// approx::assert_abs_diff_eq!(m.get::<ratio::per_mille>(), 3.0, epsilon = 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: measuring over the shafts' outsides at one place and centres at the other; both must be taken alike.
pub fn out_of_parallel(first: Length, second: Length, apart: Length) -> Result<Ratio> {
    let (c1, c2) = (positive("centre distance", first.value)?, positive("centre distance", second.value)?);
    Ok(plain((distance("centre distance", metres(c2))? - c1) / positive("distance along the shaft", apart.value)?))
}

/// How far to move a foot or bearing to swing a shaft parallel, by its distance from the one that stays.
///
/// # Formula
/// `move = −m x`; negative: towards the other shaft.
///
/// # Source
/// As [`out_of_parallel`].
///
/// # Errors
/// [`Error::OutOfRange`] unless the slope is −1 to 1 and the distance is sound.
pub fn swing(out_of_parallel: Ratio, from_pivot: Length) -> Result<Length> {
    let m = within("slope", out_of_parallel.value, -1.0, 1.0)?;
    Ok(metres(-m * distance("distance from the pivot", from_pivot)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::angle::degree;
    use crate::units::length::{inch, millimeter};
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }
    fn gaps(reference: [f64; 2], other: [f64; 2]) -> Gaps {
        Gaps {
            reference: reference.map(mm),
            other: other.map(mm),
            reference_chord: mm(120.0),
            other_chord: mm(300.0),
            centres: mm(900.0),
        }
    }

    /// Independent way: put both faces by coordinates, lay a straightedge at any slope, feel the gaps.
    #[test]
    fn any_lay_of_the_straightedge_finds_the_same_faces() {
        let (offset, lean) = (0.8e-3, 0.002_f64);
        // reference face: the line y = 0; other face: through (0.9, offset) with slope `lean`, y positive behind
        let face = |x: f64| if x < 0.2 { 0.0 } else { offset + lean * (x - 0.9) };
        let places = [-0.06, 0.06, 0.75, 1.05];
        for tilt in [0.0, 0.0005, -0.0012] {
            // the straightedge y = tilt x − room, its room chosen so that no gap is negative
            let room = places.iter().map(|&x| tilt * x - face(x)).fold(f64::MIN, f64::max);
            let g = places.map(|x| metres((face(x) - tilt * x + room).max(0.0)));
            let found =
                faces(&Gaps { reference: [g[0], g[1]], other: [g[2], g[3]], ..gaps([0.0; 2], [0.0; 2]) }).unwrap();
            assert_relative_eq!(found.offset.value, offset, max_relative = 1e-9);
            // the gaps are felt square to the faces, not to the straightedge: no more than (0.0032)³/3 apart
            assert_abs_diff_eq!(found.twist.value, lean, epsilon = 1.1e-8);
        }
    }

    #[test]
    fn offset_and_twist_are_told_apart() {
        let slid = faces(&gaps([0.0, 0.0], [1.0, 1.0])).unwrap();
        assert_eq!((slid.offset, slid.twist), (mm(1.0), Angle::default()));
        let twisted = faces(&gaps([0.0, 0.0], [0.0, 2.0])).unwrap();
        assert_abs_diff_eq!(twisted.offset.get::<millimeter>(), 1.0, epsilon = 1e-12);
        assert_abs_diff_eq!(twisted.twist.get::<degree>(), (2.0_f64 / 300.0).to_degrees(), epsilon = 1e-4);
        // the straightedge rocked on the reference: touching at its near rim, both gaps on the other nought
        let rocked = faces(&gaps([0.3, 0.0], [0.0, 0.0])).unwrap();
        assert!(rocked.twist.value > 0.0 && rocked.offset.value > 0.0);
    }

    #[test]
    fn in_inches() {
        let inches = Length::new::<inch>;
        let found = faces(&Gaps {
            reference: [inches(0.0); 2],
            other: [inches(1.0 / 64.0), inches(3.0 / 64.0)],
            reference_chord: inches(4.0),
            other_chord: inches(8.0),
            centres: inches(24.0),
        });
        assert_relative_eq!(found.unwrap().offset.get::<inch>(), 1.0 / 32.0, max_relative = 1e-12);
    }

    #[test]
    fn swung_parallel() {
        let m = out_of_parallel(mm(600.0), mm(600.9), mm(300.0)).unwrap();
        let by = swing(m, mm(300.0)).unwrap();
        assert_relative_eq!((mm(600.9) + by).get::<millimeter>(), 600.0, max_relative = 1e-12);
        assert_eq!(out_of_parallel(mm(600.0), mm(600.0), mm(300.0)), Ok(plain(0.0)));
    }

    #[test]
    fn nonsense_is_refused() {
        let bad = faces(&gaps([0.0, 0.0], [-0.1, 0.0]));
        assert!(matches!(bad, Err(Error::OutOfRange { input: "gap at the other sprocket", .. })));
        let close = Gaps { centres: mm(200.0), ..gaps([0.0; 2], [0.0; 2]) };
        assert!(matches!(faces(&close), Err(Error::OutOfRange { input: "centre distance", .. })));
        assert!(faces(&Gaps { other_chord: mm(0.0), ..gaps([0.0; 2], [0.0; 2]) }).is_err());
        assert!(out_of_parallel(mm(600.0), mm(600.9), mm(0.0)).is_err());
        assert!(swing(plain(f64::NAN), mm(1.0)).is_err());
    }
}
