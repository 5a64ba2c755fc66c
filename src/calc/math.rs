//! Transcendental functions with the same bits on every platform, and a bracketed root finder.

use crate::{Error, Result};

pub use libm::{acos, asin, asinh, atan, atan2, cos, cosh, exp, expm1, log as ln, log10, pow, sin, sinh, tan};

/// Standard acceleration of free fall in m/s² (exact by definition: 3rd CGPM, 1901; ISO 80000-3).
pub const STANDARD_GRAVITY: f64 = 9.806_65;

/// Finds `x` in `low..=high` with `f(x) = 0`, where `f` changes sign between the ends.
///
/// Narrows the bracket by inverse quadratic interpolation where that is safe and by halving where it
/// is not (T. R. Chandrupatla, *Advances in Engineering Software* 28, 1997, 145-149; from memory),
/// until it is as small as the numbers allow. The answer depends on nothing but `f` and the bracket.
///
/// # Errors
/// [`Error::NoSolution`] with `sought` when `f` has one sign at both ends or is not a number.
pub fn root(sought: &'static str, low: f64, high: f64, f: impl Fn(f64) -> f64) -> Result<f64> {
    root_within(sought, low, high, 2.0 * f64::EPSILON, f)
}

/// [`root`], satisfied with a bracket of the share `within` of the root: for functions whose own
/// rounding hides the last figures.
///
/// # Errors
/// As [`root`].
pub fn root_within(sought: &'static str, low: f64, high: f64, within: f64, f: impl Fn(f64) -> f64) -> Result<f64> {
    // x1 is the newest point, x2 the other end of the bracket, x3 the point before.
    let (mut x1, mut x2) = (low, high);
    let (mut f1, mut f2) = (f(x1), f(x2));
    if f1 == 0.0 {
        return Ok(x1);
    }
    if f2 == 0.0 {
        return Ok(x2);
    }
    if f1.is_nan() || f2.is_nan() || (f1 < 0.0) == (f2 < 0.0) {
        return Err(Error::none(sought));
    }
    let mut share = 0.5;
    for _ in 0..400 {
        let x = x1 + share * (x2 - x1);
        let fx = f(x);
        if fx.is_nan() {
            return Err(Error::none(sought));
        }
        let (x3, f3);
        if (fx < 0.0) == (f1 < 0.0) {
            (x3, f3) = (x1, f1);
        } else {
            (x3, f3) = (x2, f2);
            (x2, f2) = (x1, f1);
        }
        (x1, f1) = (x, fx);
        let (best, least) = if f1.abs() < f2.abs() { (x1, f1) } else { (x2, f2) };
        let smallest = (within * best.abs() + f64::MIN_POSITIVE) / (x2 - x1).abs();
        if smallest > 0.5 || least == 0.0 {
            return Ok(best);
        }
        let (xi, phi) = ((x1 - x2) / (x3 - x2), (f1 - f2) / (f3 - f2));
        share = if phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi {
            f1 / (f2 - f1) * f3 / (f2 - f3) + (x3 - x1) / (x2 - x1) * f1 / (f3 - f1) * f2 / (f3 - f2)
        } else {
            0.5
        };
        share = share.clamp(smallest, 1.0 - smallest);
    }
    Ok(x1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn root_of_two() {
        let x = root("root", 1.0, 2.0, |x| x * x - 2.0).unwrap();
        approx::assert_relative_eq!(x, core::f64::consts::SQRT_2, max_relative = 1e-15);
    }

    #[test]
    fn hard_brackets_end_too() {
        // Flat, steep, far from the root, and a jump.
        assert!((root("root", -1.0, 4.0, |x| x * x * x).unwrap()).abs() < 1e-100);
        approx::assert_relative_eq!(
            root("root", 0.0, 1e9, |x| exp(x.min(700.0)) - 5.0).unwrap(),
            ln(5.0),
            max_relative = 1e-14
        );
        let jump = root("root", 0.0, 1.0, |x| if x < 0.3 { -1.0 } else { 1.0 }).unwrap();
        approx::assert_relative_eq!(jump, 0.3, max_relative = 1e-14);
        let calls = core::cell::Cell::new(0);
        root("root", 1.0, 2.0, |x| {
            calls.set(calls.get() + 1);
            x * x - 2.0
        })
        .unwrap();
        assert!(calls.get() < 14, "{}", calls.get());
    }

    #[test]
    fn no_sign_change_is_refused() {
        assert_eq!(root("root", 2.0, 3.0, |x| x * x - 2.0), Err(Error::none("root")));
        assert!(root("root", 0.0, 1.0, |_| f64::NAN).is_err());
    }
}
