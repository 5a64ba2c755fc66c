//! Capacity: pull, design power, power rating, safety on the breaking load, and lubrication by speed.

use super::sizes::Build;
use super::{not_negative, plain, positive_length, teeth};
use crate::error::{positive, within};
use crate::math::pow;
use crate::units::{
    AngularVelocity, Force, Length, Power, Ratio, Velocity, angular_velocity::revolution_per_minute, force::newton,
    power::watt,
};
use crate::{Error, Result};

/// One mechanical horsepower in watts: 550 ft·lbf/s, exact from the pound, the foot and standard gravity.
pub const HORSEPOWER: f64 = 550.0 * 0.304_8 * 0.453_592_37 * crate::math::STANDARD_GRAVITY;

/// Metres in an inch, exact.
const INCH: f64 = 0.025_4;

/// Fastest sprocket accepted by the rating formulas, in rev/min (no small chain is listed faster; from memory).
const MOST_SPEED: f64 = 10_000.0;

/// Which limit sets the power rating.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Governs {
    /// Fatigue of the link plates: low speed.
    LinkPlate,
    /// Impact fatigue of rollers and bushings: high speed.
    RollerBushing,
}

/// Power rating of one strand, and what limits it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rating {
    /// The lower of the two limits.
    pub power: Power,
    /// The limit that is the lower one.
    pub governs: Governs,
}

/// Way of lubricating a chain, in rising order of demand.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Lubrication {
    /// By brush, can or drip feed.
    ManualOrDrip,
    /// Oil bath or slinger disc in a closed case.
    Bath,
    /// Pumped oil stream.
    Stream,
}

/// Capacity of several strands over that of one: (strands, factor).
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Table 17-23. Seven strands are not listed.
pub const STRAND_FACTORS: [(u32, f64); 7] = [(1, 1.0), (2, 1.7), (3, 2.5), (4, 3.3), (5, 3.9), (6, 4.6), (8, 6.0)];

/// Chain speed up to which each way of lubrication serves: (pitch in inches, manual or drip, bath), ft/min.
///
/// # Source
/// Common practice, no source; the 3/8 in row from memory.
pub const LUBRICATION_SPEEDS: [(f64, f64, f64); 9] = [
    (0.375, 370.0, 2850.0),
    (0.5, 300.0, 2300.0),
    (0.625, 250.0, 2000.0),
    (0.75, 220.0, 1800.0),
    (1.0, 170.0, 1500.0),
    (1.25, 150.0, 1300.0),
    (1.5, 130.0, 1200.0),
    (1.75, 115.0, 1100.0),
    (2.0, 100.0, 1000.0),
];

/// Pull in the working strand.
///
/// # Formula
/// F = P / v; in customary units F = 33 000 hp/v (lbf, ft/min).
///
/// # Source
/// The definition of power.
///
/// # Errors
/// A negative power, a chain speed not above nought.
pub fn chain_pull(power: Power, velocity: Velocity) -> Result<Force> {
    let p = not_negative("power", power.value)?;
    Ok(Force::new::<newton>(p / positive("chain speed", velocity.value)?))
}

/// Power for which one strand is chosen.
///
/// # Formula
/// P_d = P Kₛ / (K₁ K₂), where Kₛ is the service factor, K₁ the [`strand_factor`] and K₂ the tooth factor.
/// K₂ belongs with rating tables printed for 17 teeth; with [`rating`], which takes the true tooth count, it is 1.
///
/// # Source
/// V. B. Bhandari, *Design of Machine Elements*, ch. 14; R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical
/// Engineering Design*, Ex 17-5.
///
/// # Errors
/// A negative power, a factor not above nought.
pub fn design_power(power: Power, service: Ratio, strands: Ratio, tooth: Ratio) -> Result<Power> {
    let p = not_negative("power", power.value)? * positive("service factor", service.value)?;
    let k = positive("strand factor", strands.value)? * positive("tooth factor", tooth.value)?;
    Ok(Power::new::<watt>(p / k))
}

/// Capacity factor of a chain with several strands.
///
/// # Source
/// [`STRAND_FACTORS`].
///
/// # Errors
/// [`Error::NoSolution`] for a number of strands that the table does not list.
pub fn strand_factor(strands: u32) -> Result<Ratio> {
    let listed = STRAND_FACTORS.iter().find(|(n, _)| *n == strands);
    listed.map(|&(_, k)| plain(k)).ok_or(Error::none("strand factor"))
}

/// Power that the link plates of one strand bear.
///
/// Newer tables of the standard do not follow this formula; it is the textbook one (ANSI B29.1-1975 ratings).
/// For the metric B series, whose plates differ, take it as an estimate.
///
/// # Formula
/// H₁ = 0.004 z^1.08 n^0.9 p^(3 − 0.07p) hp, z teeth of the smaller sprocket, n in rev/min, p in inches
/// (0.0022 for the light build).
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Eq. 17-32 (number from memory).
///
/// # Errors
/// A pitch not above nought, a tooth count or speed out of range.
pub fn rating_link_plate(pitch: Length, z: u32, speed: AngularVelocity, build: Build) -> Result<Power> {
    let (p, z, n) = rating_inputs(pitch, z, speed)?;
    let k = match build {
        Build::Light => 0.0022,
        Build::Rollerless | Build::Standard => 0.004,
    };
    Ok(Power::new::<watt>(HORSEPOWER * k * pow(z, 1.08) * pow(n, 0.9) * pow(p, 3.0 - 0.07 * p)))
}

/// Power that the rollers and bushings of one strand bear.
///
/// # Formula
/// H₂ = 1000 Kᵣ z^1.5 p^0.8 / n^1.5 hp; Kᵣ 29 without rollers (No. 25 and 35), 3.4 light (No. 41), else 17.
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Eq. 17-33 (number from memory);
/// edition as [`rating_link_plate`].
///
/// # Errors
/// As [`rating_link_plate`].
pub fn rating_roller_bushing(pitch: Length, z: u32, speed: AngularVelocity, build: Build) -> Result<Power> {
    let (p, z, n) = rating_inputs(pitch, z, speed)?;
    let kr = match build {
        Build::Rollerless => 29.0,
        Build::Light => 3.4,
        Build::Standard => 17.0,
    };
    Ok(Power::new::<watt>(HORSEPOWER * 1000.0 * kr * pow(z, 1.5) * pow(p, 0.8) / pow(n, 1.5)))
}

/// Power rating of one strand: the lower of link plates, and rollers and bushings.
///
/// # Source
/// As [`rating_link_plate`].
///
/// # Errors
/// As [`rating_link_plate`].
///
/// # Example
/// ```
/// use drivecourse_calc::{chain::{capacity::*, sizes::by_designation}, units::*};
/// let chain = by_designation("40").ok_or("no such chain")?;
/// let speed = AngularVelocity::new::<angular_velocity::revolution_per_minute>(1000.0);
/// let rating = rating(chain.pitch, 17, speed, chain.build)?;
/// assert_eq!(rating.governs, Governs::LinkPlate);
/// assert!((rating.power.get::<power::horsepower>() - 5.48).abs() < 0.005);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn rating(pitch: Length, z: u32, speed: AngularVelocity, build: Build) -> Result<Rating> {
    let plate = rating_link_plate(pitch, z, speed, build)?;
    let roller = rating_roller_bushing(pitch, z, speed, build)?;
    Ok(if roller < plate {
        Rating { power: roller, governs: Governs::RollerBushing }
    } else {
        Rating { power: plate, governs: Governs::LinkPlate }
    })
}

/// Safety on the breaking load.
///
/// # Formula
/// breaking load / pull
///
/// # Source
/// V. B. Bhandari, *Design of Machine Elements*, ch. 14. Common practice asks for at least 6 with press-fit links,
/// 9 with a slip-fit or offset link.
///
/// # Errors
/// A load or pull not above nought.
pub fn safety_factor(breaking_load: Force, pull: Force) -> Result<Ratio> {
    Ok(plain(positive("breaking load", breaking_load.value)? / positive("pull", pull.value)?))
}

/// Least demanding way of lubrication that serves a chain at its speed.
///
/// A pitch between two rows goes with the larger one, the safe side.
///
/// # Source
/// [`LUBRICATION_SPEEDS`].
///
/// # Errors
/// A pitch not above nought or beyond 2 in, a negative speed.
pub fn lubrication(pitch: Length, velocity: Velocity) -> Result<Lubrication> {
    let [.., (largest, _, _)] = LUBRICATION_SPEEDS;
    // a hair of room, so that 12.7 mm finds the half-inch row
    let p = within("chain pitch", pitch.value, f64::MIN_POSITIVE, largest * INCH * (1.0 + 1e-9))? / INCH;
    let v = not_negative("chain speed", velocity.value)? * 60.0 / (12.0 * INCH);
    let row = LUBRICATION_SPEEDS.iter().find(|(row, _, _)| p <= row * (1.0 + 1e-9));
    let &(_, manual, bath) = row.ok_or(Error::none("lubrication"))?;
    Ok(match v {
        v if v <= manual => Lubrication::ManualOrDrip,
        v if v <= bath => Lubrication::Bath,
        _ => Lubrication::Stream,
    })
}

/// Pitch in inches, teeth, and speed in rev/min: what the rating formulas are written in.
fn rating_inputs(pitch: Length, z: u32, speed: AngularVelocity) -> Result<(f64, f64, f64)> {
    let rpm = AngularVelocity::new::<revolution_per_minute>(1.0).value;
    let p = positive_length("chain pitch", pitch)? / INCH;
    let omega = within("speed", speed.value, f64::MIN_POSITIVE, MOST_SPEED * rpm)?;
    Ok((p, teeth(z)?, omega / rpm))
}

#[cfg(test)]
#[path = "capacity_tests.rs"]
mod tests;
