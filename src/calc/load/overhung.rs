//! Overhung load: the pull of a chain, gear or belt on a shaft end, and where on the shaft it is allowed.
//!
//! Here lie the connection factors too. They are **not standardised**: the published lists disagree, so each is
//! kept as data under a plain name, and whoever prints an overhung load prints the list or the factor used.

use crate::error::{positive, within};
use crate::units::{Angle, Force, Length, Ratio, Torque, force, length, ratio};
use crate::{Error, Result, math};

/// What sits on the shaft end.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum DriveElement {
    /// A sprocket with roller chain.
    Chain {
        /// Teeth of the sprocket on this shaft.
        teeth: u32,
    },
    /// A gear or pinion.
    Gear {
        /// Teeth of the gear on this shaft.
        teeth: u32,
    },
    /// A pulley with a toothed (timing) belt.
    ToothedBelt,
    /// A sheave with V-belts.
    VBelt,
    /// A pulley with a flat belt.
    FlatBelt,
}

/// A published list of connection factors.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum FactorList {
    /// Chain 1.00, gear 1.25, toothed belt 1.25, V-belt 1.50, flat belt 2.50 (common practice, no source).
    A,
    /// As list A, without toothed belts (common practice, no source).
    B,
    /// Chain and gear 1.0, toothed belt 1.5, V-belt 2.5, flat belt 3.5 (common practice, no source).
    C,
    /// Chain and gear by teeth, toothed belt 2.00 to 2.50, V-belt 1.75, flat belt 2.50 (common practice, no source).
    /// Its entries of 1.00 for 20 chain teeth and 17 gear teeth upwards are from memory.
    D,
    /// Chain and gear by teeth, toothed belt 1.30, V-belt 1.5 to 2.0, flat belt 2.0 to 3.0 (common practice, no source).
    E,
    /// Chain 1.0 and V-belt 1.5: R. L. Mott, *Machine Elements in Mechanical Design*, chapter 12; flat belt 2.0 from memory.
    Textbook,
}

/// Smallest and largest factor a list allows; the two are equal where the list gives one value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FactorRange {
    /// Smallest factor.
    pub low: Ratio,
    /// Largest factor.
    pub high: Ratio,
}

/// Connection factor of a drive element in a list: how much greater the shaft load is than the running pull.
///
/// # Source
/// See each [`FactorList`]: common practice, no source, except [`FactorList::Textbook`].
///
/// # Errors
/// [`Error::OutOfRange`] for a sprocket or gear without teeth; [`Error::NoSolution`] when the list does not cover
/// the element.
///
/// # Example
/// ```
/// use drivecourse_calc::{load::overhung::*, units::ratio};
/// let factor = connection_factor(FactorList::E, DriveElement::Chain { teeth: 17 })?;
/// assert_eq!(factor.low.get::<ratio::ratio>(), 1.30);
/// assert_eq!(factor.low, factor.high);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn connection_factor(list: FactorList, element: DriveElement) -> Result<FactorRange> {
    use DriveElement as El;
    use FactorList as List;
    if let El::Chain { teeth } | El::Gear { teeth } = element {
        positive("teeth", f64::from(teeth))?;
    }
    let (low, high) = match (list, element) {
        (List::A | List::B | List::C | List::Textbook, El::Chain { .. }) => (1.0, 1.0),
        (List::A | List::B, El::Gear { .. }) => (1.25, 1.25),
        (List::A, El::ToothedBelt) => (1.25, 1.25),
        (List::A | List::B | List::Textbook, El::VBelt) => (1.5, 1.5),
        (List::A | List::B | List::D, El::FlatBelt) => (2.5, 2.5),
        (List::C, El::Gear { .. }) => (1.0, 1.0),
        (List::C, El::ToothedBelt) => (1.5, 1.5),
        (List::C, El::VBelt) => (2.5, 2.5),
        (List::C, El::FlatBelt) => (3.5, 3.5),
        (List::D | List::E, El::Chain { teeth: ..13 }) => (1.4, 1.4),
        (List::D, El::Chain { teeth: 13..20 }) => (1.25, 1.25),
        (List::E, El::Chain { teeth: 13..20 }) => (1.3, 1.3),
        (List::D | List::E, El::Chain { .. }) => (1.0, 1.0),
        (List::D | List::E, El::Gear { teeth: ..17 }) => (1.15, 1.15),
        (List::D | List::E, El::Gear { .. }) => (1.0, 1.0),
        (List::D, El::ToothedBelt) => (2.0, 2.5),
        (List::D, El::VBelt) => (1.75, 1.75),
        (List::E, El::ToothedBelt) => (1.3, 1.3),
        (List::E, El::VBelt) => (1.5, 2.0),
        (List::E, El::FlatBelt) => (2.0, 3.0),
        (List::Textbook, El::FlatBelt) => (2.0, 2.0),
        (List::B, El::ToothedBelt) | (List::Textbook, El::Gear { .. } | El::ToothedBelt) => {
            return Err(Error::none("connection factor"));
        }
    };
    Ok(FactorRange { low: Ratio::new::<ratio::ratio>(low), high: Ratio::new::<ratio::ratio>(high) })
}

/// Location factor of a load on a shaft end rated at its middle: 1 up to the middle, growing towards the tip.
///
/// # Formula
/// `Lf = max(1, 2 L / Ls)`, with `L` from the shoulder to the load and `Ls` the length of the shaft end.
///
/// # Source
/// Common practice, no source. [`allowable_load`] is the better-founded way where the bearing span is known;
/// use one or the other, never both.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative `from_shoulder` or a `shaft_end` not greater than nought.
pub fn location_factor(from_shoulder: Length, shaft_end: Length) -> Result<Ratio> {
    let l = within("distance from shoulder", from_shoulder.value, 0.0, f64::MAX)?;
    let ls = positive("shaft end length", shaft_end.value)?;
    Ok(Ratio::new::<ratio::ratio>((2.0 * l / ls).max(1.0)))
}

/// Running pull at the pitch circle of a sprocket, gear or pulley.
///
/// # Formula
/// `F = 2 T / D`
///
/// # Source
/// Definition of torque; T. H. Wentzell, *Machine Design*, Example 17.1, p. 379.
///
/// # Errors
/// [`Error::OutOfRange`] unless torque and pitch diameter are greater than nought.
pub fn running_pull(torque: Torque, pitch_diameter: Length) -> Result<Force> {
    Ok(newtons(2.0 * positive("torque", torque.value)? / positive("pitch diameter", pitch_diameter.value)?))
}

/// Overhung load of a drive element on a shaft that carries `torque`, in newtons inside.
///
/// # Formula
/// `OHL = 2 T K Lf Sf / D`; with the units of the shop floor `126 000 HP K Lf Sf / (n D)` lbf (n in rev/min, D in inches)
/// and `2000 T[N·m] K Lf Sf / D[mm]` N. `K` connection factor, `Lf` location factor, `Sf` service factor.
///
/// # Source
/// Common practice, no source. (126 000 is 2 × 63 000; the exact constant is 126 051, 0.04 % more.)
///
/// # Errors
/// [`Error::OutOfRange`] unless every input is greater than nought.
///
/// # Example
/// 4076 lb·in on a 10 in sprocket, every factor 1 (printed: 815 lb):
/// ```
/// use drivecourse_calc::{load::overhung::overhung_load, units::*};
/// let torque = Torque::new::<torque::pound_force_inch>(4076.0);
/// let diameter = Length::new::<length::inch>(10.0);
/// let one = Ratio::new::<ratio::ratio>(1.0);
/// let load = overhung_load(torque, diameter, one, one, one)?;
/// approx::assert_abs_diff_eq!(load.get::<force::pound_force>(), 815.0, epsilon = 0.5);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Traps: the radius where the diameter belongs; a factor left out; the motor's torque instead of this shaft's.
pub fn overhung_load(
    torque: Torque,
    pitch_diameter: Length,
    connection: Ratio,
    location: Ratio,
    service: Ratio,
) -> Result<Force> {
    Ok(running_pull(torque, pitch_diameter)? * load_factor(connection, location, service)?)
}

/// Smallest pitch diameter that keeps the overhung load at `allowed`: the inverse of [`overhung_load`].
///
/// # Formula
/// `D = 2 T K Lf Sf / F`
///
/// # Source
/// As [`overhung_load`].
///
/// # Errors
/// [`Error::OutOfRange`] unless every input is greater than nought.
pub fn smallest_pitch_diameter(
    torque: Torque,
    allowed: Force,
    connection: Ratio,
    location: Ratio,
    service: Ratio,
) -> Result<Length> {
    let moment = 2.0 * positive("torque", torque.value)? * load_factor(connection, location, service)?;
    Ok(metres(moment / positive("allowed load", allowed.value)?))
}

/// Product of the three load factors.
fn load_factor(connection: Ratio, location: Ratio, service: Ratio) -> Result<f64> {
    Ok(positive("connection factor", connection.value)?
        * positive("location factor", location.value)?
        * positive("service factor", service.value)?)
}

/// Load on the shaft when the slack strand is not slack: the running load and the set tension of both strands.
///
/// # Formula
/// `F_total = F + 2 H`. The slack strand pulls with the tension `H` that its sag gives it. The torque needs a difference
/// `F` between the strands, so the tight one pulls with `F + H`; both pull the shaft the same way.
///
/// # Source
/// Statics of two strands taken as parallel; that a chain's small angle may be ignored: R. L. Mott, *Machine Elements in
/// Mechanical Design*, p. 538. For the angle see [`strand_resultant`].
///
/// # Errors
/// [`Error::OutOfRange`] for a negative load or tension.
///
/// # Example
/// 3000 N of running pull and a chain set so tight that it hangs with 900 N:
/// ```
/// use drivecourse_calc::{load::overhung::with_slack_tension, units::*};
/// let (pull, tension) = (Force::new::<force::newton>(3000.0), Force::new::<force::newton>(900.0));
/// assert_eq!(with_slack_tension(pull, tension)?.get::<force::newton>(), 4800.0);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// A connection factor above 1 for chain already holds some slack pull and tooth impact: adding `2 H` of a rightly sagging
/// chain to it errs on the safe side by little.
pub fn with_slack_tension(running_load: Force, slack_tension: Force) -> Result<Force> {
    let f = within("running load", running_load.value, 0.0, f64::MAX)?;
    let h = within("slack tension", slack_tension.value, 0.0, f64::MAX)?;
    Ok(newtons(f + 2.0 * h))
}

/// Resultant of the pulls of two strands that wrap `wrap` of the sprocket.
///
/// # Formula
/// `R = √(T₁² + T₂² − 2 T₁ T₂ cos θ)`; with a wrap of 180° it is `T₁ + T₂`.
///
/// # Source
/// Law of cosines (statics).
///
/// # Errors
/// [`Error::OutOfRange`] for a negative tension or a wrap outside 0 to 360°.
pub fn strand_resultant(tight: Force, slack: Force, wrap: Angle) -> Result<Force> {
    let t1 = within("tight-side tension", tight.value, 0.0, f64::MAX)?;
    let t2 = within("slack-side tension", slack.value, 0.0, f64::MAX)?;
    let theta = within("wrap", wrap.value, 0.0, core::f64::consts::TAU)?;
    // T₁² + T₂² − 2 T₁T₂ cos θ = (T₁ − T₂)² + 4 T₁T₂ sin²(θ/2): never negative, exact at half a turn
    let s = math::sin(0.5 * theta);
    Ok(newtons(((t1 - t2) * (t1 - t2) + 4.0 * t1 * t2 * s * s).sqrt()))
}

/// An overhung-load rating, and the place on the shaft it holds for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rating {
    /// Load allowed at [`Rating::at`].
    pub load: Force,
    /// Distance between the two bearings of the shaft, centre to centre.
    pub span: Length,
    /// Distance from the centre of the near bearing to the place of the rating (usually the middle of the shaft end).
    pub at: Length,
}

/// Load allowed at `location`, measured from the centre of the near bearing, by a rating made elsewhere on the shaft.
///
/// # Formula
/// `F(x) = F_mid (s + c) / (s + x)`: the load that gives the near bearing the same reaction `F (s + x) / s`.
///
/// # Source
/// Equal near-bearing reaction: closed form of the overhanging beam, R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical
/// Engineering Design*, Table A-9, case 10 (from memory).
///
/// # Errors
/// [`Error::OutOfRange`] unless rating and span are greater than nought and both places are not negative.
///
/// # Example
/// 5000 N at 60 mm from a bearing whose partner is 200 mm away; the sprocket sits 100 mm out:
/// ```
/// use drivecourse_calc::{load::overhung::*, units::*};
/// let mm = Length::new::<length::millimeter>;
/// let rating = Rating { load: Force::new::<force::newton>(5000.0), span: mm(200.0), at: mm(60.0) };
/// let allowed = allowable_load(&rating, mm(100.0))?;
/// approx::assert_abs_diff_eq!(allowed.get::<force::newton>(), 4333.33, epsilon = 0.01);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// It holds while the near bearing governs. Far out the bending of the shaft governs and the load allowed is smaller:
/// see [`bending_moment`](super::shaft::bending_moment). Trap: scaling with `c / x`.
pub fn allowable_load(rating: &Rating, location: Length) -> Result<Force> {
    let x = within("load location", location.value, 0.0, f64::MAX)?;
    Ok(newtons(rating_moment(rating)? / (rating.span.value + x)))
}

/// Farthest place from the near bearing at which `load` is still allowed: the inverse of [`allowable_load`].
///
/// # Formula
/// `x = F_mid (s + c) / F − s`
///
/// # Source
/// As [`allowable_load`].
///
/// # Errors
/// [`Error::OutOfRange`] as [`allowable_load`], and for a load not greater than nought; [`Error::NoSolution`] when the load
/// is too great at any place outside the bearing.
pub fn farthest_location(rating: &Rating, load: Force) -> Result<Length> {
    let x = rating_moment(rating)? / positive("load", load.value)? - rating.span.value;
    if x >= 0.0 { Ok(metres(x)) } else { Err(Error::none("sprocket location")) }
}

/// Moment of the rated load about the far bearing, `F_mid (s + c)`.
fn rating_moment(rating: &Rating) -> Result<f64> {
    let f = positive("rated load", rating.load.value)?;
    let s = positive("bearing span", rating.span.value)?;
    Ok(f * (s + within("rating location", rating.at.value, 0.0, f64::MAX)?))
}

fn newtons(value: f64) -> Force {
    Force::new::<force::newton>(value)
}

fn metres(value: f64) -> Length {
    Length::new::<length::meter>(value)
}

#[cfg(test)]
mod tests;
