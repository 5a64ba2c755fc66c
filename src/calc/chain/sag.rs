//! Sag and slack: how deep a strand hangs, how far a hand moves it, how much length that hides.
//!
//! # Which reading is meant
//! A strand of free span L with excess length e (strand less straight line) shows three depths at mid-span:
//!
//! * **sag** δ, hanging free under its own weight: a flat parabola, e = 8δ²/(3L);
//! * **pressed sag** δₚ, pressed down by hand: two straight halves, e = 2δₚ²/L, so δₚ = (2/√3) δ = 1.155 δ;
//! * **movement**, pressed one way, then pulled the other as far as it goes: 2 δₚ = 2.31 δ.
//!
//! The straight line is the straightedge laid across the two sprockets. A movement is twice a one-sided
//! depth only when that depth is the *pressed* one, measured from the straight line: pressing a strand that
//! already hangs moves it by no more than δₚ − δ. On an upright strand there is no sag, but the pressed sag
//! and the movement are the same as on a level one.
//!
//! Both length formulas are the first term of a series: for a sag of 5 % of the span they are within 0.5 %,
//! see [`catenary`](super::catenary) for the exact curve.

use super::{metres, not_negative, plain, positive_length};
use crate::Result;
use crate::units::{Length, Ratio};

/// Pressed sag over hanging sag for the same slack, 2/√3: from 2δₚ²/L = 8δ²/(3L) follows δₚ/δ = √(4/3).
pub const PRESSED_OVER_HANGING: f64 = 1.154_700_538_379_251_5;

/// Hanging sag over the whole movement for the same slack, √3/4: the movement is twice the pressed sag.
pub const SAG_OVER_MOVEMENT: f64 = 0.433_012_701_892_219_3;

/// How the slack strand lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lie {
    /// Level or nearly so.
    NearLevel,
    /// Vertical or steep.
    Upright,
}

/// Window for the whole movement of mid-span, least and most, as shares of the span (or the centre distance).
///
/// # Formula
/// 4 to 6 % near level; half of that where the drive stands upright, or the load shocks or reverses, or both.
///
/// # Source
/// Common practice, no source.
pub fn movement_window(lie: Lie, shock: bool) -> (Ratio, Ratio) {
    let part = if shock || lie == Lie::Upright { 0.5 } else { 1.0 };
    (plain(part * 0.04), plain(part * 0.06))
}

/// Movement or sag allowed, from a share of the free span.
///
/// # Formula
/// δ = f L, where f is the share (0.04 for 4 %) and L the free span.
///
/// # Source
/// The share is common practice: about 4 % of the span; for the whole movement see [`movement_window`].
///
/// # Errors
/// A negative share, a span not above nought.
pub fn sag_of_span(share: Ratio, span: Length) -> Result<Length> {
    share_of("span", share, span)
}

/// Movement or sag allowed, from a share of the centre distance.
///
/// With equal sprockets this is [`sag_of_span`]; otherwise it gives a little more, since the centre distance
/// is the longer of the two.
///
/// # Formula
/// δ = f C
///
/// # Source
/// Common practice, no source.
///
/// # Errors
/// A negative share, a centre distance not above nought.
pub fn sag_of_centres(share: Ratio, centres: Length) -> Result<Length> {
    share_of("centre distance", share, centres)
}

/// Sag or movement as a share of a length: the free span or the centre distance, as the rule at hand says.
///
/// # Formula
/// f = δ / L
///
/// # Errors
/// A negative sag, a length not above nought.
pub fn sag_share(sag: Length, of: Length) -> Result<Ratio> {
    Ok(plain(not_negative("sag", sag.value)? / positive_length("length", of)?))
}

/// Slack length of a strand that hangs freely.
///
/// # Formula
/// e = 8 δ² / (3 L)
///
/// # Source
/// First term of the arc length of a flat parabola, S ≈ L (1 + (8/3)(δ/L)²): engineering mechanics textbooks.
///
/// # Errors
/// A negative sag, a span not above nought.
///
/// # Example
/// ```
/// use drivecourse_calc::{chain::sag::*, units::{Length, length::millimeter}};
/// let mm = Length::new::<millimeter>;
/// let excess = excess_gravity(mm(30.0), mm(600.0))?;
/// assert!((excess.get::<millimeter>() - 4.0).abs() < 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn excess_gravity(sag: Length, span: Length) -> Result<Length> {
    let (sag, span) = (not_negative("sag", sag.value)?, positive_length("span", span)?);
    Ok(metres(8.0 * sag * sag / (3.0 * span)))
}

/// Sag of a freely hanging strand from its slack length, the inverse of [`excess_gravity`].
///
/// # Formula
/// δ = √(3 e L / 8)
///
/// # Errors
/// A negative excess, a span not above nought.
pub fn sag_from_excess_gravity(excess: Length, span: Length) -> Result<Length> {
    let (excess, span) = (not_negative("excess", excess.value)?, positive_length("span", span)?);
    Ok(metres((0.375 * excess * span).sqrt()))
}

/// Slack length of a strand pressed (or pulled) to two straight halves at mid-span.
///
/// # Formula
/// e = 2 δₚ² / L, where δₚ is the depth from the straight line.
///
/// # Source
/// First term of Pythagoras on the two halves, √(L² + 4δₚ²) − L.
///
/// # Errors
/// A negative depth, a span not above nought.
pub fn excess_pressed(pressed: Length, span: Length) -> Result<Length> {
    let (pressed, span) = (not_negative("sag", pressed.value)?, positive_length("span", span)?);
    Ok(metres(2.0 * pressed * pressed / span))
}

/// Pressed sag (one side, from the straight line) from the slack length, the inverse of [`excess_pressed`].
///
/// # Formula
/// δₚ = √(e L / 2)
///
/// # Errors
/// A negative excess, a span not above nought.
pub fn sag_pressed_from_excess(excess: Length, span: Length) -> Result<Length> {
    let (excess, span) = (not_negative("excess", excess.value)?, positive_length("span", span)?);
    Ok(metres((0.5 * excess * span).sqrt()))
}

/// Pressed sag of a strand that hangs freely to `sag`.
///
/// # Formula
/// δₚ = (2/√3) δ, see [`PRESSED_OVER_HANGING`].
///
/// # Errors
/// A negative sag.
pub fn pressed_from_sag(sag: Length) -> Result<Length> {
    Ok(metres(PRESSED_OVER_HANGING * not_negative("sag", sag.value)?))
}

/// Freely hanging sag of a strand that can be pressed to `pressed`, the inverse of [`pressed_from_sag`].
///
/// # Formula
/// δ = (√3/2) δₚ
///
/// # Errors
/// A negative depth.
pub fn sag_from_pressed(pressed: Length) -> Result<Length> {
    Ok(metres(not_negative("sag", pressed.value)? / PRESSED_OVER_HANGING))
}

/// Whole movement of mid-span, pulled both ways, from the pressed sag on one side.
///
/// # Formula
/// m = 2 δₚ, both sides measured from the straight line.
///
/// # Source
/// Geometry: the two triangles are mirror images.
///
/// # Errors
/// A negative depth.
pub fn movement_from_pressed(pressed: Length) -> Result<Length> {
    Ok(metres(2.0 * not_negative("sag", pressed.value)?))
}

/// Pressed sag on one side from the whole movement, the inverse of [`movement_from_pressed`].
///
/// # Formula
/// δₚ = m / 2
///
/// # Errors
/// A negative movement.
pub fn pressed_from_movement(movement: Length) -> Result<Length> {
    Ok(metres(0.5 * not_negative("movement", movement.value)?))
}

/// Whole movement of mid-span, pulled both ways, of a strand that hangs freely to `sag`.
///
/// # Formula
/// m = 2 (2/√3) δ = 2.31 δ
///
/// # Errors
/// A negative sag.
pub fn movement_from_sag(sag: Length) -> Result<Length> {
    movement_from_pressed(pressed_from_sag(sag)?)
}

/// Freely hanging sag from the whole movement, the inverse of [`movement_from_sag`].
///
/// # Formula
/// δ = (√3/4) m
///
/// # Errors
/// A negative movement.
pub fn sag_from_movement(movement: Length) -> Result<Length> {
    sag_from_pressed(pressed_from_movement(movement)?)
}

fn share_of(input: &'static str, share: Ratio, of: Length) -> Result<Length> {
    Ok(metres(not_negative("share", share.value)? * positive_length(input, of)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::length::{inch, millimeter};
    use crate::units::ratio::percent;
    use approx::assert_relative_eq;

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }

    #[test]
    fn pressed_factor_is_root_of_four_thirds() {
        assert_relative_eq!(PRESSED_OVER_HANGING, (4.0_f64 / 3.0).sqrt(), max_relative = 1e-15);
        // the same slack, read both ways
        let (e, span) = (mm(4.0), mm(600.0));
        let hanging = sag_from_excess_gravity(e, span).unwrap();
        let pressed = sag_pressed_from_excess(e, span).unwrap();
        assert_relative_eq!((pressed / hanging).value, PRESSED_OVER_HANGING, max_relative = 1e-15);
        assert_relative_eq!(pressed_from_sag(hanging).unwrap().value, pressed.value, max_relative = 1e-15);
    }

    /// Slack of the parabola y = 4δ x(L−x)/L², its length added up from 100 000 short chords.
    #[test]
    fn slack_of_a_parabola_by_adding_chords() {
        for share in [0.01, 0.02, 0.04, 0.06] {
            let (span, n) = (0.6_f64, 100_000);
            let sag = share * span;
            let y = |k: i32| {
                let x = span * f64::from(k) / f64::from(n);
                4.0 * sag * x * (span - x) / (span * span)
            };
            let dx = span / f64::from(n);
            let arc: f64 = (0..n).map(|k| (dx * dx + (y(k + 1) - y(k)) * (y(k + 1) - y(k))).sqrt()).sum();
            let rule = excess_gravity(metres(sag), metres(span)).unwrap().value;
            // next term of the series: −(12/5)(δ/L)² of the first
            let next = 2.4 * share * share;
            assert!((rule / (arc - span) - 1.0).abs() < 1.05 * next, "{share}: {rule} {}", arc - span);
        }
    }

    #[test]
    fn slack_of_a_triangle_against_pythagoras() {
        for share in [0.01, 0.04, 0.06] {
            let span = 0.6_f64;
            let depth = share * span;
            let exact = (span * span + 4.0 * depth * depth).sqrt() - span;
            let rule = excess_pressed(metres(depth), metres(span)).unwrap().value;
            assert!(rule > exact && rule / exact - 1.0 < 1.05 * share * share);
        }
    }

    #[test]
    fn inverses() {
        let (sag, span) = (mm(23.7), mm(611.0));
        let e = excess_gravity(sag, span).unwrap();
        assert_relative_eq!(sag_from_excess_gravity(e, span).unwrap().value, sag.value, max_relative = 1e-14);
        let e = excess_pressed(sag, span).unwrap();
        assert_relative_eq!(sag_pressed_from_excess(e, span).unwrap().value, sag.value, max_relative = 1e-14);
        let m = movement_from_sag(sag).unwrap();
        assert_relative_eq!(m.value / sag.value, 2.309_401_076_758_503, max_relative = 1e-14);
        assert_relative_eq!(sag_from_movement(m).unwrap().value, sag.value, max_relative = 1e-14);
        let share = sag_share(sag, span).unwrap();
        assert_relative_eq!(sag_of_span(share, span).unwrap().value, sag.value, max_relative = 1e-14);
    }

    #[test]
    fn shares() {
        let four = Ratio::new::<percent>(4.0);
        assert_relative_eq!(sag_of_span(four, Length::new::<inch>(25.0)).unwrap().get::<inch>(), 1.0);
        assert_relative_eq!(sag_of_centres(four, mm(500.0)).unwrap().get::<millimeter>(), 20.0);
    }

    /// Published practice: 4-6 % near level; 2-3 % for impulse, reversing or vertical drives.
    #[test]
    fn windows() {
        let window = |lie, shock| {
            let (least, most) = movement_window(lie, shock);
            (least.get::<percent>(), most.get::<percent>())
        };
        assert_eq!(window(Lie::NearLevel, false), (4.0, 6.0));
        assert_eq!(window(Lie::NearLevel, true), (2.0, 3.0));
        assert_eq!(window(Lie::Upright, false), (2.0, 3.0));
        assert_eq!(window(Lie::Upright, true), (2.0, 3.0), "the two are not multiplied");
    }

    #[test]
    fn bad_input_is_refused() {
        assert!(excess_gravity(mm(-1.0), mm(600.0)).is_err());
        assert!(sag_from_excess_gravity(mm(1.0), mm(0.0)).is_err());
        assert!(sag_of_span(Ratio::new::<percent>(f64::NAN), mm(600.0)).is_err());
        assert!(movement_from_sag(mm(f64::INFINITY)).is_err());
        assert_eq!(excess_pressed(mm(0.0), mm(600.0)), Ok(mm(0.0)));
    }
}
