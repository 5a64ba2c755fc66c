//! The exact curve of a strand that hangs freely between level supports.
//!
//! Everything follows from one number, u = w L / (2 H) (weight per length w, span L, horizontal pull H):
//!
//! * sag δ = L sinh²(u/2) / u
//! * excess e = L (sinh u / u − 1)
//! * pull H = w L / (2 u), at the support H + w δ
//!
//! The sag is convex in u (as sinh²(u/2) − (δ/L) u), and the first term of the series, the parabola, gives a u
//! that is never too small. Newton's steps from there come down to the root
//! without passing it, so the answer is certain in a handful of steps and always the same.

use super::tension::weight_per_length;
use super::{metres, positive_length};
use crate::Result;
use crate::error::{positive, within};
use crate::math::{cosh, sinh};
use crate::units::{Angle, Force, Length, LinearMassDensity, force::newton};

/// Below this u the series for the excess is exact to the last digit and sinh u / u − 1 is not.
const SERIES_BELOW: f64 = 1.0;

/// Largest u accepted: a sag of little more than one span, far past any chain.
const LARGEST_U: f64 = 2.5;

/// Catenary parameter c, the height of the low point above the curve's own base line.
///
/// # Formula
/// c = H / w = L / (2u)
///
/// # Errors
/// A span not above nought; a sag not above nought or greater than the span.
fn parameter_from_sag(span: Length, sag: Length) -> Result<Length> {
    let l = positive_length("span", span)?;
    Ok(metres(0.5 * l / u_from_sag(l, sag)?))
}

/// Horizontal pull of a level strand from its sag, by the exact curve.
///
/// # Formula
/// H = w L/(2u), where sinh²(u/2)/u = δ/L and w = m g.
///
/// # Source
/// Catenary y = c cosh(x/c), H = w c: engineering mechanics textbooks.
///
/// # Errors
/// A mass or span not above nought; a sag not above nought or greater than the span.
pub fn horizontal_tension(mass: LinearMassDensity, span: Length, sag: Length) -> Result<Force> {
    let w = weight_per_length(mass, Angle::default())?;
    Ok(Force::new::<newton>(w * parameter_from_sag(span, sag)?.value))
}

/// Sag of a level strand from its horizontal pull, by the exact curve.
///
/// # Formula
/// δ = L sinh²(u/2)/u, where u = w L/(2H).
///
/// # Source
/// As [`horizontal_tension`].
///
/// # Errors
/// A mass, span or pull not above nought; a pull so small that the strand would hang deeper than its span.
pub fn sag_from_tension(mass: LinearMassDensity, span: Length, horizontal: Force) -> Result<Length> {
    let half = 0.5 * weight_per_length(mass, Angle::default())? * positive_length("span", span)?;
    let h = within("pull", positive("pull", horizontal.value)?, half / LARGEST_U, f64::MAX)?;
    Ok(span * sag_over_span(half / h))
}

/// Slack length of a level strand, arc less chord, by the exact curve.
///
/// # Formula
/// e = L (sinh u/u − 1), where sinh²(u/2)/u = δ/L.
///
/// # Source
/// Arc s = c sinh(x/c): engineering mechanics textbooks.
///
/// # Errors
/// A span not above nought; a sag negative or greater than the span.
pub fn excess_from_sag(sag: Length, span: Length) -> Result<Length> {
    let l = positive_length("span", span)?;
    if sag.value == 0.0 {
        return Ok(metres(0.0));
    }
    Ok(span * excess_over_span(u_from_sag(l, sag)?))
}

/// sinh²(u/2)/u
fn sag_over_span(u: f64) -> f64 {
    let half = sinh(0.5 * u);
    half * half / u
}

/// sinh u/u − 1
fn excess_over_span(u: f64) -> f64 {
    if u >= SERIES_BELOW {
        return sinh(u) / u - 1.0;
    }
    // u²/3! + u⁴/5! + u⁶/7! + …, folded; the term after the last is below 1e-18 of the sum
    let x = u * u;
    let term = |next: f64, n: f64| x / (n * (n + 1.0)) * (1.0 + next);
    [16.0, 14.0, 12.0, 10.0, 8.0, 6.0, 4.0, 2.0].into_iter().fold(0.0, term)
}

/// u for a sag between nought and one span (`span` in metres, checked by the caller).
fn u_from_sag(span: f64, sag: Length) -> Result<f64> {
    let share = positive("sag", within("sag", sag.value, 0.0, span)?)? / span;
    // u ≤ 4δ/L, since sinh²(u/2)/u ≥ u/4
    let mut u = 4.0 * share;
    for _ in 0..60 {
        let half = sinh(0.5 * u);
        // f = sinh²(u/2) − (δ/L) u, f′ = sinh(u/2) cosh(u/2) − δ/L
        let next = u - (half * half - share * u) / (half * cosh(0.5 * u) - share);
        // no step down is left: the last digit is reached
        if !(0.0..u).contains(&next) {
            break;
        }
        u = next;
    }
    Ok(u)
}

#[cfg(test)]
mod tests {
    use super::super::{sag, tension};
    use super::*;
    use crate::math::{STANDARD_GRAVITY, root};
    use crate::units::linear_mass_density::kilogram_per_meter;
    use approx::{assert_abs_diff_eq, assert_relative_eq};

    fn weighing(w: f64) -> LinearMassDensity {
        LinearMassDensity::new::<kilogram_per_meter>(w / STANDARD_GRAVITY)
    }

    /// Printed exercise on catenaries: cable of 140 m over 120 m, 3 kg/m, g 9.81: c 61.45 m, sag 31.70 m,
    /// greatest pull 2740 N (three figures).
    #[test]
    fn printed_catenary() {
        let (mass, span) = (weighing(3.0 * 9.81), metres(120.0));
        let sag = metres(31.70);
        assert_abs_diff_eq!(excess_from_sag(sag, span).unwrap().value, 20.0, epsilon = 0.01);
        assert_abs_diff_eq!(parameter_from_sag(span, sag).unwrap().value, 61.45, epsilon = 0.01);
        let h = horizontal_tension(mass, span, sag).unwrap();
        // The pull at a support is that of mid-span and the weight of a chain as long as the sag.
        assert_abs_diff_eq!(h.value + 3.0 * 9.81 * sag.value, 2740.0, epsilon = 2.0);
    }

    /// The curve y = c cosh(x/c) walked in short chords: its length, and its sag, without the closed forms.
    #[test]
    fn arc_length_by_adding_chords() {
        for share in [0.005, 0.02, 0.04, 0.1, 0.3, 0.9] {
            let (l, n) = (0.8_f64, 200_000);
            let depth = share * l;
            let c = parameter_from_sag(metres(l), metres(depth)).unwrap().value;
            let y = |x: f64| c * cosh(x / c);
            assert_relative_eq!(y(0.5 * l) - y(0.0), depth, max_relative = 1e-9);
            let dx = 0.5 * l / f64::from(n);
            let chord = |k: i32| {
                let dy = y(f64::from(k + 1) * dx) - y(f64::from(k) * dx);
                // chord less its run, so that the small slack keeps its digits
                dy * dy / ((dx * dx + dy * dy).sqrt() + dx)
            };
            let walked: f64 = 2.0 * (0..n).map(chord).sum::<f64>();
            let excess = excess_from_sag(metres(depth), metres(l)).unwrap().value;
            assert_relative_eq!(excess, walked, max_relative = 1e-6);
        }
    }

    /// Newton's steps against halving a bracket.
    #[test]
    fn newton_agrees_with_bisection() {
        for share in [1e-6, 1e-3, 0.03, 0.2, 1.0] {
            let u = root("u", 1e-9, LARGEST_U, |u| sag_over_span(u) - share).unwrap();
            assert_relative_eq!(u_from_sag(1.0, metres(share)).unwrap(), u, max_relative = 1e-12);
        }
    }

    #[test]
    fn round_trips() {
        let (mass, span) = (weighing(25.0), metres(1.1));
        for share in [1e-7, 1e-4, 0.01, 0.04, 0.3, 0.7] {
            let depth = span * share;
            let h = horizontal_tension(mass, span, depth).unwrap();
            assert_relative_eq!(sag_from_tension(mass, span, h).unwrap().value, depth.value, max_relative = 1e-12);
        }
    }

    #[test]
    fn series_meets_the_closed_form() {
        for u in [0.9, 0.99, 0.999_999] {
            assert_relative_eq!(excess_over_span(u), sinh(u) / u - 1.0, max_relative = 1e-14);
        }
    }

    /// The parabola is within 0.2 % of the catenary for sags up to 2 % of the span.
    #[test]
    fn parabola_against_catenary() {
        let (mass, span) = (weighing(25.0), metres(0.7));
        let off = |share: f64| {
            let depth = span * share;
            let exact = horizontal_tension(mass, span, depth).unwrap();
            let rule = tension::horizontal_tension(mass, span, depth, Angle::default()).unwrap();
            let exact_excess = excess_from_sag(depth, span).unwrap();
            let rule_excess = sag::excess_gravity(depth, span).unwrap();
            ((rule / exact).value - 1.0, (rule_excess / exact_excess).value - 1.0)
        };
        for share in [0.001, 0.005, 0.01, 0.02] {
            let (pull, excess) = off(share);
            assert!(pull.abs() < 0.002 && excess.abs() < 0.002, "{share}: {pull} {excess}");
        }
        // first terms of the differences: −(4/3)(δ/L)² in the pull, (28/15)(δ/L)² in the slack
        let (pull, excess) = off(0.05);
        assert_relative_eq!(pull, -4.0 / 3.0 * 0.0025, max_relative = 0.01);
        assert_relative_eq!(excess, 28.0 / 15.0 * 0.0025, max_relative = 0.01);
    }

    #[test]
    fn bad_input_is_refused() {
        let (m, span) = (weighing(10.0), metres(1.0));
        assert!(excess_from_sag(metres(-0.1), span).is_err() && excess_from_sag(metres(1.1), span).is_err());
        assert!(sag_from_tension(m, span, Force::new::<newton>(0.1)).is_err());
        assert!(horizontal_tension(m, span, metres(0.0)).is_err());
        assert_eq!(excess_from_sag(metres(0.0), span), Ok(metres(0.0)));
    }
}
