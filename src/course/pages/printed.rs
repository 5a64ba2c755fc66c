//! Text as a page prints it: what is easy to type is made what is good to read, at one place for every page.

use drivecourse_machine::amount::SPACE;
use drivecourse_machine::unit::UNITS;

/// An apostrophe as it is printed.
const APOSTROPHE: char = '’';

/// `text` with every plain space between a figure and the symbol of a unit, or between a number and its fraction, made one
/// that does not break, and every straight apostrophe after a letter made a curved one. Feet, `5'`, stay as they are.
#[must_use]
pub fn printed(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut before = ' ';
    for (at, c) in text.char_indices() {
        let rest = &text[at + c.len_utf8()..];
        let c = match c {
            ' ' if before.is_numeric() && (begins_with_unit(rest) || begins_with_fraction(rest)) => SPACE,
            '\'' if before.is_alphabetic() => APOSTROPHE,
            other => other,
        };
        out.push(c);
        before = c;
    }
    out
}

/// Whether the first word of `text` is the symbol of a unit; "in" counts, which does no harm where it is no unit.
fn begins_with_unit(text: &str) -> bool {
    UNITS.iter().any(|unit| {
        let after = if unit.symbol.is_empty() { None } else { text.strip_prefix(unit.symbol) };
        after.is_some_and(|after| !after.starts_with(|c: char| c.is_alphanumeric() || c == '²' || c == '³'))
    })
}

/// Whether `text` begins with a fraction, as in `9/64`.
fn begins_with_fraction(text: &str) -> bool {
    let digits = |text: &str| text.bytes().take_while(u8::is_ascii_digit).count();
    let over = digits(text);
    over > 0 && text[over..].strip_prefix('/').is_some_and(|under| digits(under) > 0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_and_units_stay_together() {
        assert_eq!(printed("10 kW at 5 °C (41 °F), ½ in"), "10\u{a0}kW at 5\u{a0}°C (41\u{a0}°F), ½\u{a0}in");
        assert_eq!(printed("3 mm² and 3 minutes of 2 links"), "3\u{a0}mm² and 3 minutes of 2 links");
        assert_eq!(printed("4 9/64 in, 4 9 in, 4 /6"), "4\u{a0}9/64\u{a0}in, 4 9\u{a0}in, 4 /6");
        assert_eq!(printed("70 % are needed"), "70\u{a0}% are needed");
    }

    #[test]
    fn apostrophes_are_curved() {
        assert_eq!(printed("the motor's plate, the makers' lists"), "the motor’s plate, the makers’ lists");
        assert_eq!(printed("5' 3\" and 'quoted"), "5' 3\" and 'quoted");
    }
}
