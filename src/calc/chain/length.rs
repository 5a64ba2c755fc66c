//! The loop: how many pitches it takes, which centre distance a chain of whole links gives, span and wrap.
//!
//! Two methods stand side by side. The three-term formula is what handbooks print; the exact one adds
//! the wrapped arcs (in teeth) and the two straight tangents. They differ by less than 0.06 pitch for
//! the ratios used in practice (21/63 teeth at 39.4 pitches: 0.003; 25/96 at 30 pitches: 0.053).

use core::f64::consts::{PI, TAU};

use super::sprocket::pitch_diameter;
use super::{metres, plain, positive_length, radians, teeth};
use crate::error::within;
use crate::math::asin;
use crate::units::{Angle, Length, Ratio};
use crate::{Error, Result};

/// Centre distance usually chosen, least and most, in pitches (common practice, no source).
pub const USUAL_CENTRES: (f64, f64) = (30.0, 50.0);

/// Greatest centre distance without an idler or guide, in pitches (common practice, no source).
pub const MOST_CENTRES: f64 = 80.0;

/// Least wrap on the smaller sprocket, in degrees (common practice, no source).
pub const LEAST_WRAP: f64 = 120.0;

/// Pitches by which a length may lie above an even number and still count as that number (common practice, no source).
///
/// The centres on a drawing are rounded, and two formulas of the length differ by as much (see above); the take-up gives the
/// rest. A length that reads 98.0 is 98 whichever figures stand behind it.
pub const OVER_LET_GO: f64 = 0.05;

/// What the last bits of a length are worth, in pitches: 98.05 as it is written has none more.
const LAST_BITS: f64 = 1e-9;

/// Most links accepted in one chain: a bound on the number that is stored, no trade limit.
const MOST_LINKS: f64 = 1e6;

/// Which of the two strands is meant, seen from the side.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Strand {
    /// The strand above the line of centres.
    Upper,
    /// The strand below the line of centres.
    Lower,
}

/// Pitch radii and the other numbers that every exact formula needs, in pitches.
struct Loop {
    z1: f64,
    z2: f64,
    r1: f64,
    r2: f64,
}

impl Loop {
    fn new(pitch: Length, z1: u32, z2: u32) -> Result<Self> {
        let p = positive_length("chain pitch", pitch)?;
        let radius = |z| Ok(0.5 * pitch_diameter(pitch, z)?.value / p);
        Ok(Self { z1: teeth(z1)?, z2: teeth(z2)?, r1: radius(z1)?, r2: radius(z2)? })
    }

    /// L/p for the centre distance `c` in pitches.
    fn pitches(&self, c: f64) -> f64 {
        let (dr, mean) = (self.r2 - self.r1, 0.5 * (self.z1 + self.z2));
        // L/p = 2 (C/p) cos α + (z₁+z₂)/2 + (z₂−z₁) α/π
        2.0 * (c * c - dr * dr).sqrt() + mean + (self.z2 - self.z1) * asin(dr / c) / PI
    }

    /// d(L/p)/d(C/p) at `c`.
    fn slope(&self, c: f64) -> f64 {
        let dr = self.r2 - self.r1;
        let k = (self.z2 - self.z1) / TAU;
        2.0 * (c - k * dr / c) / (c * c - dr * dr).sqrt()
    }

    fn touching(&self) -> f64 {
        self.r1 + self.r2
    }
}

/// Chain length in pitches by the three-term formula.
///
/// # Formula
/// L/p = 2C/p + (z₁+z₂)/2 + ((z₂−z₁)/2π)² p/C
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, roller chain;
/// V. B. Bhandari, *Design of Machine Elements*, ch. 14.
///
/// # Errors
/// Centre distance or pitch not above nought; sprockets that would touch; a tooth count out of range.
///
/// # Example
/// ```
/// use drivecourse_calc::{chain::length::*, units::{Length, length::millimeter}};
/// let mm = Length::new::<millimeter>;
/// let length = length_in_pitches(mm(500.0), mm(12.7), 21, 63)?;
/// assert!((length.value - 121.875_097).abs() < 1e-5);
/// assert_eq!(even_links(length)?, 122);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn length_in_pitches(centres: Length, pitch: Length, z1: u32, z2: u32) -> Result<Ratio> {
    let c = centres_in_pitches(centres, pitch, &Loop::new(pitch, z1, z2)?)?;
    let (z1, z2) = (teeth(z1)?, teeth(z2)?);
    let k = (z2 - z1) / TAU;
    Ok(plain(2.0 * c + 0.5 * (z1 + z2) + k * k / c))
}

/// Chain length in pitches by exact geometry: wrapped arcs counted in teeth, and two tangents.
///
/// # Formula
/// L/p = 2(C/p) cos α + z₂(½ + α/π) + z₁(½ − α/π), where sin α = (R₂−R₁)/C and R is the pitch radius.
///
/// # Source
/// Geometry (common tangents of two circles).
///
/// # Errors
/// As [`length_in_pitches`].
pub fn length_exact(centres: Length, pitch: Length, z1: u32, z2: u32) -> Result<Ratio> {
    let drive = Loop::new(pitch, z1, z2)?;
    Ok(plain(drive.pitches(centres_in_pitches(centres, pitch, &drive)?)))
}

/// Length of the taut loop that the sprockets ask for, exact: [`length_exact`] times the nominal pitch.
///
/// # Formula
/// L = (L/p) p
///
/// # Errors
/// As [`length_in_pitches`].
pub fn loop_length(centres: Length, pitch: Length, z1: u32, z2: u32) -> Result<Length> {
    Ok(length_exact(centres, pitch, z1, z2)? * pitch)
}

/// Number of links to fit: the length in pitches rounded up to an even number, at least 2.
///
/// An odd number needs an offset link, which is weaker. A length at most [`OVER_LET_GO`] above an even number is that number:
/// the next one would set the shafts a whole pitch farther apart.
///
/// # Formula
/// X = 2 ⌈(L/p − 0.05) / 2⌉
///
/// # Source
/// Even number preferred: R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, roller chain. What is let go:
/// common practice, no source.
///
/// # Errors
/// A length not above nought or beyond a million pitches.
pub fn even_links(length: Ratio) -> Result<u32> {
    let length = within("chain length", length.value, f64::MIN_POSITIVE, MOST_LINKS)?;
    let pairs = (0.5 * (length - OVER_LET_GO - LAST_BITS)).ceil().max(1.0);
    // whole and at most MOST_LINKS, so the conversion loses nothing
    Ok(2 * pairs as u32)
}

/// Centre distance at which a chain of `links` is taut, by the inverse of the three-term formula.
///
/// # Formula
/// C = (p/4) (−A + √(A² − 8((z₂−z₁)/2π)²)), where A = (z₁+z₂)/2 − L/p.
///
/// # Source
/// As [`length_in_pitches`].
///
/// # Errors
/// A pitch or tooth count out of range; [`Error::NoSolution`] when the chain is too short for the sprockets.
pub fn centres_for_links(links: u32, pitch: Length, z1: u32, z2: u32) -> Result<Length> {
    let drive = Loop::new(pitch, z1, z2)?;
    let a = 0.5 * (drive.z1 + drive.z2) - f64::from(links);
    let k = (drive.z2 - drive.z1) / TAU;
    let c = 0.25 * (-a + (a * a - 8.0 * k * k).sqrt());
    // a negative number under the root gives NaN, which is not "above" either
    if c > drive.touching() { Ok(pitch * c) } else { Err(too_short()) }
}

/// Centre distance at which a chain of `links` is taut, by exact geometry.
///
/// # Formula
/// [`length_exact`] solved for C. L(C) rises and is convex, and at C = p·links/2 it lies above the wanted
/// length, so Newton's steps from there come down to the root without ever passing it: no bracket is needed.
///
/// # Source
/// Geometry.
///
/// # Errors
/// As [`centres_for_links`].
pub fn centres_for_links_exact(links: u32, pitch: Length, z1: u32, z2: u32) -> Result<Length> {
    let drive = Loop::new(pitch, z1, z2)?;
    let wanted = f64::from(links);
    let low = drive.touching();
    if wanted <= drive.pitches(low) {
        return Err(too_short());
    }
    let mut c = 0.5 * wanted;
    // about five steps are used; the bound only makes the end certain
    for _ in 0..50 {
        let next = (c - (drive.pitches(c) - wanted) / drive.slope(c)).max(low);
        if next >= c {
            break;
        }
        c = next;
    }
    Ok(pitch * c)
}

/// Free span: length of the straight strand between the points where it leaves the sprockets.
///
/// # Formula
/// L = √(C² − (R₂−R₁)²), where R is half the pitch diameter.
///
/// # Source
/// Geometry.
///
/// # Errors
/// A diameter not above nought; a centre distance at which the pitch circles touch.
pub fn free_span(centres: Length, d1: Length, d2: Length) -> Result<Length> {
    let (c, dr) = centres_and_step(centres, d1, d2)?;
    Ok(metres((c * c - dr * dr).sqrt()))
}

/// Angle between a strand and the line of centres, never negative.
///
/// # Formula
/// α = asin(|R₂−R₁| / C)
///
/// # Errors
/// As [`free_span`].
pub fn tangent_angle(centres: Length, d1: Length, d2: Length) -> Result<Angle> {
    let (c, dr) = centres_and_step(centres, d1, d2)?;
    Ok(radians(asin(dr.abs() / c)))
}

/// Incline of one strand to the level, positive when it climbs towards the larger sprocket.
///
/// # Formula
/// θ = β + α for the upper strand, β − α for the lower, where β is the climb of the line of centres
/// towards the larger sprocket and α the [`tangent_angle`].
///
/// # Source
/// Geometry.
pub fn strand_incline(centre_line: Angle, tangent: Angle, strand: Strand) -> Angle {
    match strand {
        Strand::Upper => centre_line + tangent,
        Strand::Lower => centre_line - tangent,
    }
}

/// Wrap of the chain round the smaller sprocket.
///
/// # Formula
/// 180° − 2 asin(|D₂−D₁| / 2C)
///
/// # Source
/// Geometry. See [`LEAST_WRAP`].
///
/// # Errors
/// As [`free_span`].
pub fn wrap_small(centres: Length, d1: Length, d2: Length) -> Result<Angle> {
    Ok(radians(PI) - 2.0 * tangent_angle(centres, d1, d2)?)
}

/// Wrap of the chain round the larger sprocket.
///
/// # Formula
/// 180° + 2 asin(|D₂−D₁| / 2C)
///
/// # Source
/// Geometry.
///
/// # Errors
/// As [`free_span`].
pub fn wrap_large(centres: Length, d1: Length, d2: Length) -> Result<Angle> {
    Ok(radians(PI) + 2.0 * tangent_angle(centres, d1, d2)?)
}

fn too_short() -> Error {
    Error::none("centre distance")
}

/// C/p, refused when the pitch circles would touch.
fn centres_in_pitches(centres: Length, pitch: Length, drive: &Loop) -> Result<f64> {
    let least = drive.touching() * pitch.value;
    Ok(within("centre distance", centres.value, least, f64::MAX)? / pitch.value)
}

/// C and R₂−R₁ in metres, refused when the pitch circles would touch.
fn centres_and_step(centres: Length, d1: Length, d2: Length) -> Result<(f64, f64)> {
    let r1 = 0.5 * positive_length("pitch diameter", d1)?;
    let r2 = 0.5 * positive_length("pitch diameter", d2)?;
    Ok((within("centre distance", centres.value, r1 + r2, f64::MAX)?, r2 - r1))
}

#[cfg(test)]
#[path = "length_tests.rs"]
mod tests;
