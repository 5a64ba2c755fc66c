//! Reverse indicators: a rim reading at each hub, with no face to read.

use super::{Line, distance, metres};
use crate::Result;
use crate::error::positive;
use crate::units::Length;

#[cfg(any(doc, test))]
use crate::Error;

/// Position of the movable shaft in one plane from two rim readings, each bottom less top (or left less right).
///
/// The measuring plane is the stationary hub's. The readings are free of bar sag, see
/// [`Clock::without_sag`](super::dials::Clock::without_sag).
///
/// # Formula
/// At the stationary hub `y₁ = R_s / 2`, at the movable hub `y₂ = −R_m / 2`; slope `(y₂ − y₁)/c`, where R_s is read on the
/// stationary hub with the bracket on the movable shaft, R_m on the movable hub with the bracket on the stationary
/// shaft, and c is the distance between the two dials.
///
/// # Source
/// Geometry of similar triangles; common practice, no source.
///
/// # Errors
/// [`Error::OutOfRange`] unless the distance between the dials is greater than nought and the readings are sound.
///
/// # Example
/// A movable shaft 0.10 mm high all along reads +0.20 mm on the stationary hub and −0.20 mm on its own:
/// ```
/// use drivecourse_calc::{align::reverse::position, units::*};
/// let mm = Length::new::<length::millimeter>;
/// let line = position(mm(0.20), mm(-0.20), mm(150.0))?;
/// let moves = line.moves(mm(400.0), mm(900.0))?;
/// approx::assert_abs_diff_eq!(moves.front.get::<length::millimeter>(), -0.10, epsilon = 1e-12);
/// approx::assert_abs_diff_eq!(moves.rear.get::<length::millimeter>(), -0.10, epsilon = 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: readings not halved; the second reading's sign not turned, which makes an offset look like an angle.
pub fn position(on_stationary: Length, on_movable: Length, dials_apart: Length) -> Result<Line> {
    let y1 = 0.5 * distance("reading on the stationary hub", on_stationary)?;
    let y2 = -0.5 * distance("reading on the movable hub", on_movable)?;
    Line::through((metres(0.0), metres(y1)), (dials_apart, metres(y2)))
}

/// The two rim readings that a position gives, stationary hub first: the inverse of [`position`].
///
/// # Formula
/// `R_s = 2 y(0)`, `R_m = −2 y(c)`
///
/// # Source
/// As [`position`].
///
/// # Errors
/// [`Error::OutOfRange`] unless the distance between the dials is greater than nought and the position is sound.
pub fn readings(line: &Line, dials_apart: Length) -> Result<(Length, Length)> {
    positive("distance between the dials", distance("distance between the dials", dials_apart)?)?;
    let far = distance("offset at the movable hub", line.at(dials_apart))?;
    Ok((metres(2.0 * distance("offset", line.offset)?), metres(-2.0 * far)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::align::plain;
    use crate::align::rim_face::{self, Face, Hub, SetUp};
    use crate::units::length::inch;
    use approx::assert_abs_diff_eq;

    fn inches(value: f64) -> Length {
        Length::new::<inch>(value)
    }

    #[test]
    fn agrees_with_rim_and_face() {
        for (offset, slope) in [(0.005, 0.001), (-0.012, 0.0004), (0.0, -0.002)] {
            let line = Line { offset: inches(offset), slope: plain(slope) };
            let (s, m) = readings(&line, inches(6.0)).unwrap();
            let by_reverse = position(s, m, inches(6.0)).unwrap().moves(inches(14.0), inches(38.0)).unwrap();
            let set_up = SetUp { hub: Hub::Stationary, face: Face::Front, circle: inches(7.0) };
            let (rim, face) = rim_face::readings(&line, &set_up).unwrap();
            assert_eq!(rim, s, "both read the stationary rim from the movable shaft");
            let by_face = rim_face::position(rim, face, &set_up).unwrap().moves(inches(14.0), inches(38.0)).unwrap();
            assert_abs_diff_eq!(by_reverse.front.value, by_face.front.value, epsilon = 1e-15);
            assert_abs_diff_eq!(by_reverse.rear.value, by_face.rear.value, epsilon = 1e-15);
        }
    }

    /// By hand: +0.010 and −0.022 in, dials 8 in apart: y = 0.005 and 0.011, slope 0.00075; feet at 20 and 44 in are
    /// 0.020 and 0.038 in high, so take that out.
    #[test]
    fn by_hand() {
        let line = position(inches(0.010), inches(-0.022), inches(8.0)).unwrap();
        assert_abs_diff_eq!(line.slope.value, 0.000_75, epsilon = 1e-12);
        let moves = line.moves(inches(20.0), inches(44.0)).unwrap();
        assert_abs_diff_eq!(moves.front.get::<inch>(), -0.020, epsilon = 1e-12);
        assert_abs_diff_eq!(moves.rear.get::<inch>(), -0.038, epsilon = 1e-12);
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(matches!(position(inches(0.0), inches(0.0), inches(0.0)), Err(Error::OutOfRange { .. })));
        assert!(position(inches(f64::NAN), inches(0.0), inches(6.0)).is_err());
        assert!(readings(&Line::default(), inches(0.0)).is_err());
    }
}
