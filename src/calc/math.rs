//! Transcendental functions with the same bits on every platform, and a bracketed root finder.

use crate::{Error, Result};

pub use libm::{acos, asin, asinh, atan, atan2, cos, cosh, exp, expm1, log as ln, log10, pow, sin, sinh, tan};

/// Standard acceleration of free fall in m/s² (exact by definition: 3rd CGPM, 1901; ISO 80000-3).
pub const STANDARD_GRAVITY: f64 = 9.806_65;

/// Finds `x` in `low..=high` with `f(x) = 0`, where `f` changes sign between the ends.
///
/// Halves the bracket (at most 200 times) until it is as small as the numbers allow, so the
/// answer depends on nothing but `f` and the bracket.
///
/// # Errors
/// [`Error::NoSolution`] with `sought` when `f` has one sign at both ends or is not a number.
pub fn root(sought: &'static str, low: f64, high: f64, f: impl Fn(f64) -> f64) -> Result<f64> {
    let (mut a, mut b) = (low, high);
    let (fa, fb) = (f(a), f(b));
    if fa == 0.0 {
        return Ok(a);
    }
    if fb == 0.0 {
        return Ok(b);
    }
    if fa.is_nan() || fb.is_nan() || (fa < 0.0) == (fb < 0.0) {
        return Err(Error::NoSolution { sought });
    }
    for _ in 0..200 {
        let middle = 0.5 * (a + b);
        if middle <= a.min(b) || middle >= a.max(b) {
            break;
        }
        let value = f(middle);
        if value == 0.0 {
            return Ok(middle);
        }
        if (value < 0.0) == (fa < 0.0) {
            a = middle;
        } else {
            b = middle;
        }
    }
    Ok(0.5 * (a + b))
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
    fn no_sign_change_is_refused() {
        assert_eq!(root("root", 2.0, 3.0, |x| x * x - 2.0), Err(Error::NoSolution { sought: "root" }));
        assert!(root("root", 0.0, 1.0, |_| f64::NAN).is_err());
    }
}
