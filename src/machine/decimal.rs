//! Decimal text as a number.
//!
//! The standard library's reader carries ten kilobytes of tables, too much for the browser build; and what reads an
//! answer must be the same code on both sides.

use crate::quantity::ten_to;

/// Figures that a mantissa of 64 bits always holds.
const MOST_FIGURES: u32 = 19;

/// The value of `figures`, which may hold one point, times ten to `power`; `None` where it is no number.
///
/// Rounded correctly for up to 19 figures and powers of ten from −19 to 19. Beyond that every 22 powers of ten cost one
/// rounding, of at most one unit in the last place, besides that of the figures themselves; beyond what a double holds it
/// is nought or infinity.
pub fn value(figures: &str, power: i32) -> Option<f64> {
    let (mut mantissa, mut kept, mut power, mut point, mut any) = (0_u64, 0, power, false, false);
    for c in figures.bytes() {
        match c {
            b'0'..=b'9' if kept < MOST_FIGURES => {
                any = true;
                mantissa = mantissa * 10 + u64::from(c - b'0');
                kept += u32::from(mantissa != 0);
                power = power.saturating_sub(i32::from(point));
            }
            b'0'..=b'9' => {
                // Too small to count, except that it is there.
                mantissa |= u64::from(c != b'0');
                power = power.saturating_add(i32::from(!point));
            }
            b'.' if !point => point = true,
            _ => return None,
        }
    }
    any.then(|| scaled(mantissa, power))
}

fn scaled(mantissa: u64, power: i32) -> f64 {
    const EXACT: u64 = 1 << 53;
    if mantissa == 0 {
        return 0.0;
    }
    if mantissa <= EXACT && power.unsigned_abs() <= 22 {
        // Both are held exactly, so one rounding is all there is.
        let ten = ten_to(power.abs());
        return if power < 0 { mantissa as f64 / ten } else { mantissa as f64 * ten };
    }
    match power {
        0..=19 => (u128::from(mantissa) * 10_u128.pow(power.unsigned_abs())) as f64,
        -19..=-1 => {
            let shift = 64 + mantissa.leading_zeros();
            let ten = 10_u128.pow(power.unsigned_abs());
            let whole = u128::from(mantissa) << shift;
            // What is left over only decides which way a tie is rounded.
            let quotient = (whole / ten) | u128::from(!whole.is_multiple_of(ten));
            libm::scalbn(quotient as f64, -(shift as i32))
        }
        _ => {
            // Powers of ten up to the twenty-second are held exactly.
            const HELD: i32 = 22;
            let (mut value, mut left) = (mantissa as f64, power.saturating_abs().min(400));
            while left > 0 {
                let ten = ten_to(left.min(HELD));
                value = if power < 0 { value / ten } else { value * ten };
                left -= HELD;
            }
            value
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chance::Stream;

    #[test]
    fn it_reads_as_the_standard_library_does() {
        let mut stream = Stream::new(1, "decimal");
        for _ in 0..200_000 {
            let figures = 1 + stream.below(19);
            let mut text: String = (0..figures).map(|_| char::from(b'0' + stream.below(10) as u8)).collect();
            let places = stream.below(figures + 1);
            text.insert(figures - places, '.');
            let power = stream.below(60) as i32 - 30;
            let theirs: f64 = format!("{text}e{power}").parse().unwrap();
            let ours = value(&text, power).unwrap();
            let exact = (-19..=19).contains(&(power - places as i32));
            let off = ours.to_bits().abs_diff(theirs.to_bits());
            // Nineteen figures are rounded once, and three times for a power of ten beyond the forty-fourth.
            assert!(off <= if exact { 0 } else { 4 }, "{text}e{power}: {ours:e} for {theirs:e}");
        }
        for (text, power) in [("", 0), (".", 0), ("1.2.3", 0), ("1e3", 0), ("-1", 0)] {
            assert_eq!(value(text, power), None, "{text}");
        }
        assert_eq!(value("1", 400), Some(f64::INFINITY));
        assert_eq!(value("1", -400), Some(0.0));
        assert_eq!(value("0.1000000000000000055511151231257827", 0), Some(0.1));
    }
}
