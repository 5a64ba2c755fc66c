//! Bearing reactions of an overhanging load, and rating life after ISO 281.

use crate::error::{positive, within};
use crate::units::{AngularVelocity, Force, Length, Power, Ratio, Time, angular_velocity, force, power, ratio, time};
use crate::{Result, math};
use core::f64::consts::TAU;

#[cfg(any(doc, test))]
use crate::Error;

/// Shape of the rolling elements, which sets the exponent of the life formula.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum BearingKind {
    /// Balls (point contact): exponent 3.
    Ball,
    /// Rollers (line contact): exponent 10/3.
    Roller,
}

impl BearingKind {
    /// Life exponent `p`: 3 for balls, 10/3 for rollers.
    ///
    /// # Source
    /// ISO 281, basic rating life.
    pub const fn exponent(self) -> f64 {
        match self {
            Self::Ball => 3.0,
            Self::Roller => 10.0 / 3.0,
        }
    }
}

/// Exponent `p` of the life formula: a kind's own, or as a person wrote it down (3.33 for 10/3).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Exponent(f64);

impl Exponent {
    /// The exponent as written.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside 3 to 3.4: no rolling bearing has another (ISO 281).
    pub fn new(exponent: Ratio) -> Result<Self> {
        within("life exponent", exponent.value, 3.0, 3.4).map(Self)
    }
}

impl From<BearingKind> for Exponent {
    fn from(kind: BearingKind) -> Self {
        Self(kind.exponent())
    }
}

/// Sizes of the two bearing reactions to a load outside the bearings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reactions {
    /// Reaction of the bearing next to the load; it acts against the load.
    pub near: Force,
    /// Reaction of the other bearing; it acts the opposite way to the near one, that is, with the load.
    pub far: Force,
}

/// Reactions of two bearings `span` apart to a load `overhang` outside the near one, centre to centre.
///
/// # Formula
/// `R_near = F (s + x) / s`, `R_far = F x / s` in the opposite direction; `R_near − R_far = F`.
///
/// # Source
/// R. G. Budynas, J. K. Nisbett, *Shigley's Mechanical Engineering Design*, Table A-9, case 10 (from memory); statics.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative load or overhang, or a span not greater than nought.
///
/// # Example
/// 4000 N at 100 mm outside bearings 200 mm apart:
/// ```
/// use drivecourse_calc::{load::bearing::reactions, units::*};
/// let mm = Length::new::<length::millimeter>;
/// let r = reactions(Force::new::<force::newton>(4000.0), mm(200.0), mm(100.0))?;
/// approx::assert_relative_eq!(r.near.get::<force::newton>(), 6000.0, max_relative = 1e-12);
/// approx::assert_relative_eq!(r.far.get::<force::newton>(), 2000.0, max_relative = 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: an overhanging load is not shared half and half; the near bearing carries more than the load itself.
pub fn reactions(load: Force, span: Length, overhang: Length) -> Result<Reactions> {
    let f = within("load", load.value, 0.0, f64::MAX)?;
    let s = positive("bearing span", span.value)?;
    let x = within("overhang", overhang.value, 0.0, f64::MAX)?;
    Ok(Reactions { near: newtons(f * (s + x) / s), far: newtons(f * x / s) })
}

/// Load at `overhang` that gives the near bearing the reaction `near`: the inverse of [`reactions`].
///
/// # Formula
/// `F = R_near s / (s + x)`
///
/// # Source
/// As [`reactions`].
///
/// # Errors
/// As [`reactions`].
pub fn load_for_near_reaction(near: Force, span: Length, overhang: Length) -> Result<Force> {
    let r = within("reaction", near.value, 0.0, f64::MAX)?;
    let s = positive("bearing span", span.value)?;
    let x = within("overhang", overhang.value, 0.0, f64::MAX)?;
    Ok(newtons(r * s / (s + x)))
}

/// Basic rating life in revolutions (not in millions): nine of ten like bearings last at least this long.
///
/// # Formula
/// `L10 = (C / P)ᵖ × 10⁶`, `p` = 3 for balls, 10/3 for rollers.
///
/// # Source
/// ISO 281.
///
/// # Errors
/// [`Error::OutOfRange`] unless both loads are greater than nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{load::bearing::*, units::*};
/// let kn = Force::new::<force::kilonewton>;
/// let life = l10_revolutions(kn(16.0), kn(2.0), BearingKind::Ball)?;
/// approx::assert_relative_eq!(life.get::<ratio::ratio>(), 512e6, max_relative = 1e-12);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: the wrong exponent. The formula holds up to a load of about half the rating, with clean oil of the right grade.
pub fn l10_revolutions(capacity: Force, load: Force, exponent: impl Into<Exponent>) -> Result<Ratio> {
    let (c, p) = (positive("capacity", capacity.value)?, positive("load", load.value)?);
    Ok(plain(power_of(c / p, exponent.into()) * 1e6))
}

/// Basic rating life at a constant speed, in hours or any other unit of time.
///
/// # Formula
/// `L10h = 10⁶ (C / P)ᵖ / (60 n)` hours with n in rev/min; inside, revolutions over `ω / 2π`.
///
/// # Source
/// ISO 281.
///
/// # Errors
/// [`Error::OutOfRange`] unless all inputs are greater than nought.
///
/// # Example
/// 55.3 kN of capacity, 10 kN of load, balls, 3000 rev/min (a bearing catalogue prints 940 h):
/// ```
/// use drivecourse_calc::{load::bearing::*, units::*};
/// let kn = Force::new::<force::kilonewton>;
/// let speed = AngularVelocity::new::<angular_velocity::revolution_per_minute>(3000.0);
/// let life = l10_life(kn(55.3), kn(10.0), BearingKind::Ball, speed)?;
/// approx::assert_abs_diff_eq!(life.get::<time::hour>(), 940.0, epsilon = 5.0);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
///
/// Trap: leaving out the 60 gives minutes.
pub fn l10_life(capacity: Force, load: Force, exponent: impl Into<Exponent>, speed: AngularVelocity) -> Result<Time> {
    let revolutions = l10_revolutions(capacity, load, exponent)?.value;
    Ok(Time::new::<time::second>(revolutions * TAU / positive("speed", speed.value)?))
}

/// What is left of the life, as a factor, when the load changes from `before` to `after`.
///
/// # Formula
/// `L₂ / L₁ = (P₁ / P₂)ᵖ`
///
/// # Source
/// ISO 281.
///
/// # Errors
/// [`Error::OutOfRange`] unless both loads are greater than nought.
///
/// # Example
/// Twice the load leaves a ball bearing an eighth of its life:
/// ```
/// use drivecourse_calc::{load::bearing::*, units::*};
/// let n = Force::new::<force::newton>;
/// let factor = life_ratio(n(1000.0), n(2000.0), BearingKind::Ball)?;
/// assert_eq!(factor.get::<ratio::ratio>(), 0.125);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn life_ratio(before: Force, after: Force, exponent: impl Into<Exponent>) -> Result<Ratio> {
    let (p1, p2) = (positive("load before", before.value)?, positive("load after", after.value)?);
    Ok(plain(power_of(p1 / p2, exponent.into())))
}

/// Load under which a bearing reaches the wanted life: the inverse of [`l10_life`].
///
/// # Formula
/// `P = C / (L / 10⁶)^(1/p)`, `L = n t` revolutions.
///
/// # Source
/// ISO 281.
///
/// # Errors
/// [`Error::OutOfRange`] unless all inputs are greater than nought.
pub fn load_for_life(
    capacity: Force,
    life: Time,
    exponent: impl Into<Exponent>,
    speed: AngularVelocity,
) -> Result<Force> {
    Ok(newtons(positive("capacity", capacity.value)? / capacity_over_load(life, exponent.into(), speed)?))
}

/// Capacity a bearing needs to carry `load` for the wanted life.
///
/// # Formula
/// `C = P (L / 10⁶)^(1/p)`, `L = n t` revolutions.
///
/// # Source
/// ISO 281.
///
/// # Errors
/// [`Error::OutOfRange`] unless all inputs are greater than nought.
pub fn capacity_for_life(
    load: Force,
    life: Time,
    exponent: impl Into<Exponent>,
    speed: AngularVelocity,
) -> Result<Force> {
    Ok(newtons(positive("load", load.value)? * capacity_over_load(life, exponent.into(), speed)?))
}

/// One part of a duty cycle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Duty {
    /// Equivalent load in this part.
    pub load: Force,
    /// Speed in this part.
    pub speed: AngularVelocity,
    /// Share of the time this part takes (the shares need not sum to one: only their proportion counts).
    pub share: Ratio,
}

/// The constant load and speed that wear a bearing out as fast as a duty cycle does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeanDuty {
    /// Equivalent constant load.
    pub load: Force,
    /// Mean speed.
    pub speed: AngularVelocity,
}

/// Equivalent constant load and mean speed of a duty cycle.
///
/// # Formula
/// `P = (Σ Pᵢᵖ nᵢ tᵢ / Σ nᵢ tᵢ)^(1/p)`, `n = Σ nᵢ tᵢ / Σ tᵢ`
///
/// # Source
/// Linear damage over the lives of ISO 281; U. C. Jindal, *Machine Design*, Example 18-9, p. 512.
///
/// # Errors
/// [`Error::OutOfRange`] for an empty cycle or an input not greater than nought.
pub fn mean_duty(duties: &[Duty], exponent: impl Into<Exponent>) -> Result<MeanDuty> {
    let exponent = exponent.into();
    // loads are taken relative to the first one, so that no power of a load in newtons gets out of hand
    let first = positive("load", duties.first().map_or(f64::NAN, |duty| duty.load.value))?;
    let (mut damage, mut angle, mut time) = (0.0, 0.0, 0.0);
    for duty in duties {
        let share = positive("share", duty.share.value)?;
        let turned = positive("speed", duty.speed.value)? * share;
        damage += power_of(positive("load", duty.load.value)? / first, exponent) * turned;
        angle += turned;
        time += share;
    }
    Ok(MeanDuty {
        load: newtons(first * root_of(damage / angle, exponent)),
        speed: AngularVelocity::new::<angular_velocity::radian_per_second>(angle / time),
    })
}

/// Power a bearing turns into heat, from its coefficient of friction.
///
/// # Formula
/// `P = μ F (d / 2) ω`, `d` the bore.
///
/// # Source
/// U. C. Jindal, *Machine Design*, Example 18-1, p. 507.
///
/// # Errors
/// [`Error::OutOfRange`] for a negative coefficient or load, or a bore or speed not greater than nought.
///
/// # Example
/// The source's case, 53.08 W:
/// ```
/// use drivecourse_calc::{load::bearing::friction_power, units::*};
/// let speed = AngularVelocity::new::<angular_velocity::revolution_per_minute>(1440.0);
/// let bore = Length::new::<length::millimeter>(40.0);
/// let power =
///     friction_power(Ratio::new::<ratio::ratio>(0.0011), Force::new::<force::kilonewton>(16.0), bore, speed)?;
/// approx::assert_abs_diff_eq!(power.get::<power::watt>(), 53.08, epsilon = 0.01);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn friction_power(coefficient: Ratio, load: Force, bore: Length, speed: AngularVelocity) -> Result<Power> {
    let mu = within("coefficient of friction", coefficient.value, 0.0, f64::MAX)?;
    let f = within("load", load.value, 0.0, f64::MAX)?;
    let (d, omega) = (positive("bore", bore.value)?, positive("speed", speed.value)?);
    Ok(Power::new::<power::watt>(mu * f * 0.5 * d * omega))
}

/// `C / P` that a life asks for: `(L / 10⁶)^(1/p)`.
fn capacity_over_load(life: Time, exponent: Exponent, speed: AngularVelocity) -> Result<f64> {
    let revolutions = positive("life", life.value)? * positive("speed", speed.value)? / TAU;
    Ok(root_of(revolutions * 1e-6, exponent))
}

/// `xᵖ`; the cube by multiplication, which is exact for whole ratios and fast.
fn power_of(x: f64, Exponent(p): Exponent) -> f64 {
    if p == 3.0 { x * x * x } else { math::pow(x, p) }
}

/// `x^(1/p)`.
fn root_of(x: f64, Exponent(p): Exponent) -> f64 {
    math::pow(x, 1.0 / p)
}

fn newtons(value: f64) -> Force {
    Force::new::<force::newton>(value)
}

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

#[cfg(test)]
mod tests;
