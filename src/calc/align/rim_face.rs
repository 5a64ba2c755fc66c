//! Rim and face: one dial on the rim gives the offset, one on the face gives the slope.

use super::{Line, distance, metres, plain};
use crate::Result;
use crate::error::within;
use crate::units::Length;

#[cfg(any(doc, test))]
use crate::Error;

/// Whose hub the dials read. The bracket is clamped to the other shaft.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hub {
    /// The stationary hub; the movable shaft carries the bracket.
    Stationary,
    /// The movable hub; the stationary shaft carries the bracket.
    Movable,
}

/// Which side of the hub the face dial touches.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Face {
    /// The side that looks at the other hub.
    Front,
    /// The side away from the other hub, reached round the rim.
    Back,
}

/// How the dials stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SetUp {
    /// Hub that is read.
    pub hub: Hub,
    /// Side of it that the face dial touches.
    pub face: Face,
    /// Diameter of the circle on which the face dial travels.
    pub circle: Length,
}

/// Position of the movable shaft in one plane from a rim and a face reading, both bottom less top (or left less right).
///
/// The rim dial stands in the measuring plane, and the readings are free of bar sag, see
/// [`Clock::without_sag`](super::dials::Clock::without_sag).
///
/// # Formula
/// Read on the stationary hub's front: `offset = R/2`, `slope = −F/D`; on the movable hub the rim turns its sign
/// (`offset = −R/2`), on the back the face does (`slope = +F/D`). R is the rim reading, F the face reading, D the
/// diameter of the face dial's circle. The feet then move by `F x/D − R/2`, x their distance from the measuring plane.
///
/// # Source
/// Geometry of similar triangles; the foot formulas agree with those in common use (common practice, no source).
///
/// # Errors
/// [`Error::OutOfRange`] unless the circle is greater than nought and the readings are smaller than it.
///
/// # Example
/// A gap 0.012 in wider at the top on a 5 in circle, feet 30 in apart: the rear feet come up 0.072 in more than the front.
/// ```
/// use drivecourse_calc::{align::rim_face::*, units::*};
/// let inch = Length::new::<length::inch>;
/// let set_up = SetUp { hub: Hub::Stationary, face: Face::Front, circle: inch(5.0) };
/// // gap wider at the top: the plunger comes out there, so bottom less top is positive
/// let line = position(inch(0.0), inch(0.012), &set_up)?;
/// let moves = line.moves(inch(10.0), inch(40.0))?;
/// approx::assert_abs_diff_eq!((moves.rear - moves.front).get::<length::inch>(), 0.072, epsilon = 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: the whole rim reading taken as offset; the circle's radius in place of its diameter; the sign of the wrong hub.
pub fn position(rim: Length, face: Length, set_up: &SetUp) -> Result<Line> {
    let d = within("dial circle", set_up.circle.value, 1e-3, 10.0)?;
    let r = distance("rim reading", rim)?;
    let f = within("face reading", face.value, -d, d)?;
    let rim_sign = match set_up.hub {
        Hub::Stationary => 1.0,
        Hub::Movable => -1.0,
    };
    let face_sign = match set_up.face {
        Face::Front => -1.0,
        Face::Back => 1.0,
    };
    Ok(Line { offset: metres(rim_sign * 0.5 * r), slope: plain(face_sign * f / d) })
}

/// The rim and the face reading that a position gives: the inverse of [`position`].
///
/// # Formula
/// As [`position`], solved for R and F.
///
/// # Source
/// As [`position`].
///
/// # Errors
/// [`Error::OutOfRange`] unless the circle is greater than nought and the position sound.
pub fn readings(line: &Line, set_up: &SetUp) -> Result<(Length, Length)> {
    // Both signs are their own inverses: one unit of reading tells the factor.
    let unit = position(metres(2.0), set_up.circle, set_up)?;
    let rim = distance("offset", line.offset)? * 2.0 / unit.offset.value;
    let face = within("slope", line.slope.value, -1.0, 1.0)? * set_up.circle.value / unit.slope.value;
    Ok((metres(rim), metres(face)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::length::{inch, millimeter};
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }
    const WAYS: [(Hub, Face); 4] = [
        (Hub::Stationary, Face::Front),
        (Hub::Stationary, Face::Back),
        (Hub::Movable, Face::Front),
        (Hub::Movable, Face::Back),
    ];

    /// Places a movable shaft by coordinates and measures with dials in the plane, to first order: an independent way.
    /// Returns the (rim, face) readings, bottom less top.
    fn measured(line: &Line, hub: Hub, face: Face, circle: f64) -> (f64, f64) {
        let (y, m, radius) = (line.offset.value, line.slope.value, circle / 2.0);
        // along = +1 points at the movable machine. A plunger pushed in reads positive.
        let read = |side: f64| {
            // height of the bracket's axis over the axis of the hub that is read
            let carrier_high = if hub == Hub::Stationary { y } else { -y };
            // a dial above its hub is pulled off by a high carrier; one below is pushed on
            let rim = -side * carrier_high;
            // a shaft that rises towards its feet leans its top towards the stationary machine by m × height
            let lean = -m * side * radius;
            // the dial touches a front face pointing away from its own shaft, a back face towards it
            let (dial, touched, front) = match hub {
                Hub::Stationary => (lean, 0.0, -1.0), // dial on the movable shaft, front is towards −along
                Hub::Movable => (0.0, lean, 1.0),
            };
            let towards = if face == Face::Front { front } else { -front };
            (rim, (dial - touched) * towards)
        };
        let (top, bottom) = (read(1.0), read(-1.0));
        (bottom.0 - top.0, bottom.1 - top.1)
    }

    #[test]
    fn every_way_of_reading_finds_the_shaft() {
        for (hub, face) in WAYS {
            for (offset, slope) in [(0.12, 0.0005), (-0.3, 0.002), (0.0, -0.001), (0.25, 0.0)] {
                let line = Line { offset: mm(offset), slope: plain(slope) };
                let set_up = SetUp { hub, face, circle: mm(180.0) };
                let (rim, face_reading) = measured(&line, hub, face, 0.180);
                let found = position(metres(rim), metres(face_reading), &set_up).unwrap();
                assert_abs_diff_eq!(found.offset.value, line.offset.value, epsilon = 1e-15);
                assert_abs_diff_eq!(found.slope.value, line.slope.value, epsilon = 1e-15);
                let (r, f) = readings(&line, &set_up).unwrap();
                assert_abs_diff_eq!(r.value, rim, epsilon = 1e-15);
                assert_abs_diff_eq!(f.value, face_reading, epsilon = 1e-15);
            }
        }
    }

    /// The foot formulas in common use (dials on the stationary hub's front, bracket on the motor, set at the top):
    /// F = bf B/D − br/2, R = bf A/D − br/2, positive = raise.
    #[test]
    fn common_foot_formulas() {
        let (br, bf, d, b, a) = (0.20, -0.08, 150.0, 220.0, 640.0);
        let set_up = SetUp { hub: Hub::Stationary, face: Face::Front, circle: mm(d) };
        let moves = position(mm(br), mm(bf), &set_up).unwrap().moves(mm(b), mm(a)).unwrap();
        assert_relative_eq!(moves.front.get::<millimeter>(), bf * b / d - br / 2.0, max_relative = 1e-12);
        assert_relative_eq!(moves.rear.get::<millimeter>(), bf * a / d - br / 2.0, max_relative = 1e-12);
    }

    /// Start-up practice for a motor: face circle 5 in, feet 30 in apart, net gap 0.012 in at the top: 0.072 in under
    /// each rear foot. The same answer whichever way the dials stand.
    #[test]
    fn published_face_angle() {
        let inches = Length::new::<inch>;
        for (hub, face) in WAYS {
            let set_up = SetUp { hub, face, circle: inches(5.0) };
            let low_at_the_rear = Line { offset: inches(0.0), slope: plain(-0.012 / 5.0) };
            let (rim, reading) = readings(&low_at_the_rear, &set_up).unwrap();
            let moves = position(rim, reading, &set_up).unwrap().moves(inches(0.0), inches(30.0)).unwrap();
            assert_abs_diff_eq!(moves.rear.get::<inch>(), 0.072, epsilon = 1e-12);
            assert_abs_diff_eq!(moves.front.get::<inch>(), 0.0, epsilon = 1e-12);
        }
    }

    #[test]
    fn nonsense_is_refused() {
        let set_up = |circle| SetUp { hub: Hub::Movable, face: Face::Front, circle: mm(circle) };
        let none = position(mm(0.1), mm(0.1), &set_up(0.0));
        assert!(matches!(none, Err(Error::OutOfRange { input: "dial circle", .. })));
        assert!(position(mm(0.1), mm(200.0), &set_up(100.0)).is_err());
        assert!(position(mm(f64::NAN), mm(0.1), &set_up(100.0)).is_err());
        assert!(readings(&Line { offset: mm(0.0), slope: plain(f64::NAN) }, &set_up(100.0)).is_err());
    }
}
