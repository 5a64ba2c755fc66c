//! Roller chain drives: sprockets, chain length, sag, tension, take-up, wear and capacity.
//!
//! One file a question:
//!
//! * [`sprocket`]: diameters, ratio, chain speed, chordal variation
//! * [`length`]: how many pitches, which centre distance, free span, wrap
//! * [`sag`]: sag allowance, sag and slack length, hand movement at mid-span
//! * [`tension`]: the pull of a hanging strand, by the parabola
//! * [`catenary`]: the same, and the slack length, by the exact curve
//! * [`take_up`]: what moving the sprockets apart does to the slack
//! * [`wear`]: elongation, its limit, and the slack it adds
//! * [`capacity`]: pull, design power, rating, safety, lubrication
//! * [`sizes`]: the standard chains
//!
//! # Sag, movement, slack
//! Three readings are easily mixed up, so each has its own name throughout:
//! the **sag** hangs below the straight line between the points where the strand leaves the sprockets,
//! under its own weight; the **pressed sag** is the depth to which a hand presses the strand below that
//! line; the **movement** is the whole travel of mid-span, pressed one way and then pulled the other.
//! The **excess** is the length of the strand less the straight line: the slack itself.

pub mod capacity;
pub mod catenary;
pub mod length;
pub mod sag;
pub mod sizes;
pub mod sprocket;
pub mod take_up;
pub mod tension;
pub mod wear;

use crate::Result;
use crate::error::{positive, within};
use crate::units::{Angle, Length, Ratio, angle::radian, length::meter, ratio::ratio as unit_ratio};

/// Fewest teeth accepted on a sprocket: fewer cannot seat a roller chain (from memory).
pub const FEWEST_TEETH: u32 = 6;

/// Most teeth accepted on a sprocket; ISO 606 sprockets run to 150 (from memory), the rest is room.
pub const MOST_TEETH: u32 = 250;

fn metres(value: f64) -> Length {
    Length::new::<meter>(value)
}

fn radians(value: f64) -> Angle {
    Angle::new::<radian>(value)
}

fn plain(value: f64) -> Ratio {
    Ratio::new::<unit_ratio>(value)
}

/// The tooth count as a real number, refused outside [`FEWEST_TEETH`]..=[`MOST_TEETH`].
fn teeth(count: u32) -> Result<f64> {
    within("tooth count", f64::from(count), f64::from(FEWEST_TEETH), f64::from(MOST_TEETH))
}

/// A length in metres that must be greater than nought.
fn positive_length(input: &'static str, value: Length) -> Result<f64> {
    positive(input, value.value)
}

/// A quantity's SI value, nought allowed.
fn not_negative(input: &'static str, value: f64) -> Result<f64> {
    within(input, value, 0.0, f64::MAX)
}
