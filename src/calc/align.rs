//! Alignment: two shafts in line, or two sprockets in one plane.
//!
//! * [`sprockets`]: chain sprockets by straightedge, parallel shafts by two centre readings
//! * [`dials`]: dial readings round the clock, their closure, bar sag
//! * [`rim_face`]: rim and face
//! * [`reverse`]: reverse indicators
//! * [`growth`]: thermal growth and the cold target
//!
//! Caution: isolate, lock out and verify zero energy before a guard comes off or a shaft is turned by hand.
//!
//! # Signs
//! One machine is **stationary**, the other **movable** and put right at its feet. Distances along the shafts are
//! measured from the **measuring plane** (where the first dial stands) towards the movable machine's feet. A [`Line`]
//! is the movable shaft's centre line as it stands over the extended stationary one:
//!
//! * vertical plane: positive is **up**, so a positive offset means the movable shaft is high;
//! * horizontal plane: positive is towards **3 o'clock**, seen from the movable machine towards the stationary one.
//!
//! A [`FeetMoves`] is what to do: positive raises the feet (add shims) or moves them towards 3 o'clock.
//! A dial reads positive when its plunger is pushed in.

pub mod dials;
pub mod growth;
pub mod reverse;
pub mod rim_face;
pub mod sprockets;

use crate::Result;
use crate::error::{positive, within};
use crate::units::{Length, Ratio, length::meter, ratio::ratio as unit_ratio};

#[cfg(any(doc, test))]
use crate::Error;

/// Longest distance worked with, m.
const FARTHEST: f64 = 1000.0;

/// A shaft's centre line in one plane, relative to another's: see the module's signs.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Line {
    /// Offset in the measuring plane.
    pub offset: Length,
    /// Change of offset per length towards the feet.
    pub slope: Ratio,
}

/// What to do at the movable machine's feet: both front feet by `front`, both rear feet by `rear`.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct FeetMoves {
    /// Move of the front feet, those nearer the coupling.
    pub front: Length,
    /// Move of the rear feet.
    pub rear: Length,
}

impl Line {
    /// The line through two offsets at two distances from the measuring plane.
    ///
    /// # Formula
    /// `m = (y₂ − y₁) / (x₂ − x₁)`, offset `y₁ − m x₁`
    ///
    /// # Source
    /// Geometry (similar triangles).
    ///
    /// # Errors
    /// [`Error::OutOfRange`] when the second distance is not greater than the first, or a number is not sound.
    pub fn through(first: (Length, Length), second: (Length, Length)) -> Result<Self> {
        let (x1, x2) = (distance("first distance", first.0)?, distance("second distance", second.0)?);
        let (y1, y2) = (distance("offset", first.1)?, distance("offset", second.1)?);
        let m = (y2 - y1) / positive("distance between the offsets", x2 - x1)?;
        Ok(Self { offset: metres(y1 - m * x1), slope: plain(m) })
    }

    /// Offset at a distance from the measuring plane.
    ///
    /// # Formula
    /// `y = y₀ + m x`
    ///
    /// # Source
    /// As [`through`](Self::through).
    pub fn at(&self, distance: Length) -> Length {
        self.offset + self.slope * distance
    }

    /// Moves of the feet that bring this line onto the stationary shaft.
    ///
    /// # Formula
    /// `move = −(y₀ + m x)` at the front and at the rear feet.
    ///
    /// # Source
    /// As [`through`](Self::through).
    ///
    /// # Errors
    /// [`Error::OutOfRange`] unless the rear feet are farther away than the front feet.
    ///
    /// No relation uses it: published alignments print the moves of the feet, and positions are checked by them.
    pub fn moves(&self, front: Length, rear: Length) -> Result<FeetMoves> {
        self.moves_to(&Self::default(), front, rear)
    }

    /// Moves of the feet that bring this line onto a target line, such as the cold target of [`growth`].
    ///
    /// # Formula
    /// `move = target − line` at the front and at the rear feet.
    ///
    /// # Source
    /// As [`through`](Self::through).
    ///
    /// # Errors
    /// As [`moves`](Self::moves).
    pub fn moves_to(&self, target: &Self, front: Length, rear: Length) -> Result<FeetMoves> {
        let f = distance("front feet", front)?;
        positive("distance between the feet", distance("rear feet", rear)? - f)?;
        distance("offset", self.offset - target.offset)?;
        within("slope", (self.slope - target.slope).value, -1.0, 1.0)?;
        Ok(FeetMoves { front: target.at(front) - self.at(front), rear: target.at(rear) - self.at(rear) })
    }
}

fn metres(value: f64) -> Length {
    Length::new::<meter>(value)
}

fn plain(value: f64) -> Ratio {
    Ratio::new::<unit_ratio>(value)
}

/// A length in metres of either sign, sound and not absurd.
fn distance(input: &'static str, value: Length) -> Result<f64> {
    within(input, value.value, -FARTHEST, FARTHEST)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::length::millimeter;
    use approx::assert_relative_eq;

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }

    #[test]
    fn line_and_moves() {
        let line = Line::through((mm(0.0), mm(0.10)), (mm(200.0), mm(0.30))).unwrap();
        assert_relative_eq!(line.at(mm(500.0)).get::<millimeter>(), 0.60, max_relative = 1e-12);
        let moves = line.moves(mm(300.0), mm(700.0)).unwrap();
        assert_relative_eq!(moves.front.get::<millimeter>(), -0.40, max_relative = 1e-12);
        assert_relative_eq!(moves.rear.get::<millimeter>(), -0.80, max_relative = 1e-12);
        // after the moves the line lies on the other shaft
        let after =
            Line::through((mm(300.0), line.at(mm(300.0)) + moves.front), (mm(700.0), line.at(mm(700.0)) + moves.rear));
        let after = after.unwrap();
        assert!(after.offset.value.abs() < 1e-15 && after.slope.value.abs() < 1e-15);
    }

    #[test]
    fn nonsense_is_refused() {
        let line = Line { offset: mm(0.1), slope: plain(1e-3) };
        assert!(matches!(
            line.moves(mm(300.0), mm(300.0)),
            Err(Error::OutOfRange { input: "distance between the feet", .. })
        ));
        assert!(line.moves(mm(f64::NAN), mm(300.0)).is_err());
        assert!(Line { slope: plain(f64::NAN), ..line }.moves(mm(1.0), mm(2.0)).is_err());
        assert!(Line::through((mm(1.0), mm(0.0)), (mm(1.0), mm(1.0))).is_err());
    }
}
