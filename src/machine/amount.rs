//! Amounts as people write them: numbers with units, written from a value.

mod read;

pub use read::*;

use crate::instrument::Figures;
use crate::language;
use crate::quantity::{Quantity, magnitude, ten_to};
use crate::unit::{Kind, System, Unit};

/// No-break space between number and unit, so that a line never ends between the two.
pub const SPACE: char = '\u{a0}';

/// `base` (SI) of `quantity` as a person is shown it in `system`: `11.0 mm`, `7/16 in`, `foot 2`.
///
/// ```
/// use drivecourse_machine::{Instrument, Kind, Quantity, System, amount};
/// let sag = Quantity::new("chain.sag", "δ", Kind::Length, "sag").read(Instrument::Scale);
/// assert_eq!(amount::write(&sag, 0.4375 * 0.0254, System::Us), "7/16\u{a0}in");
/// assert_eq!(amount::write(&sag, 0.0110, System::Si), "11.0\u{a0}mm");
/// ```
pub fn write(quantity: &Quantity, base: f64, system: System) -> String {
    if quantity.kind == Kind::Choice {
        return choice(quantity, base).unwrap_or("?").to_owned();
    }
    let display = quantity.display(system);
    let unit = quantity.unit(system);
    with_unit(&number(unit.from_base(base), display.figures), unit)
}

/// `base` (SI) of `quantity` as it truly is, with its unit: see [`exact`].
pub fn write_exact(quantity: &Quantity, base: f64, system: System) -> String {
    if quantity.kind == Kind::Choice {
        return choice(quantity, base).unwrap_or("?").to_owned();
    }
    let unit = quantity.unit(system);
    with_unit(&exact(quantity, unit.from_base(base), system, 4), unit)
}

/// `value`, in the unit that `quantity` is shown in, as it truly is: to so many `figures`, and no finer than a hundredth
/// of what people see of it. That is fine enough to show what a reading rounds away, and hides the dust of a calculation,
/// such as 10⁻¹⁷ for nothing at all.
pub fn exact(quantity: &Quantity, value: f64, system: System, figures: u8) -> String {
    if quantity.kind == Kind::Count {
        return number(value, Figures::Places(0));
    }
    // Of what is shown to significant figures nothing is told below a thousand-millionth of its unit.
    const DUST: i32 = 9;
    let shown = match quantity.display(system).figures {
        Figures::Places(places) => i32::from(places) + 2,
        Figures::Fraction(parts) => magnitude(f64::from(parts)) + 2,
        Figures::Significant(_) => DUST,
    };
    let wanted = if value == 0.0 || !value.is_finite() { 0 } else { i32::from(figures) - 1 - magnitude(value) };
    if wanted <= shown {
        return number(value, Figures::Significant(figures));
    }
    // What is nothing to so many places is a plain nought.
    let places = Figures::Places(u8::try_from(shown).unwrap_or(0));
    if places.round(value) == 0.0 { "0".to_owned() } else { number(value, places) }
}

/// The label of a choice as people are shown it, if `base` stands for one.
pub fn choice(quantity: &Quantity, base: f64) -> Option<&'static str> {
    (base >= 0.0 && base.is_finite()).then(|| quantity.labels.get(base.round() as usize).copied()).flatten()
}

/// `text` followed by the unit, spaced as the unit is: `45°`, `4 %`, `11 mm`, `19`.
pub fn with_unit(text: &str, unit: &Unit) -> String {
    match unit.said() {
        "" => text.to_owned(),
        "°" => format!("{text}°"),
        said => format!("{text}{SPACE}{said}"),
    }
}

/// `value` to `figures`, without unit. Never `-0`, never an exponent below 10^15.
pub fn number(value: f64, figures: Figures) -> String {
    if !value.is_finite() {
        return "?".into();
    }
    match figures {
        Figures::Fraction(parts) => fraction(value, parts),
        Figures::Places(places) => plain(figures.round(value), usize::from(places)),
        Figures::Significant(wanted) => {
            let value = figures.round(value);
            if value == 0.0 {
                return "0".into();
            }
            let places = i32::from(wanted) - 1 - magnitude(value);
            plain(value, usize::try_from(places).unwrap_or(0))
        }
    }
}

/// Decimal text with the language's decimal mark, thin no-break spaces in long whole numbers, and a true minus sign.
fn plain(value: f64, places: usize) -> String {
    if value.abs() >= 1e15 {
        // Written so, because the exponents of the standard library are much code for the browser to load.
        let power = magnitude(value);
        return language::with_decimal_mark(format!("{:.2}e{power}", value / ten_to(power)));
    }
    let text = format!("{:.places$}", value.abs());
    let (whole, rest) = text.split_at(text.find('.').unwrap_or(text.len()));
    let mut grouped = String::with_capacity(text.len() + 4);
    for (index, figure) in whole.chars().enumerate() {
        // Four figures stand together; five and more are set in threes (ISO 80000-1, 7.3.1).
        if whole.len() > 4 && index > 0 && (whole.len() - index) % 3 == 0 {
            grouped.push('\u{202f}');
        }
        grouped.push(figure);
    }
    let negative = value < 0.0 && text.bytes().any(|b| b.is_ascii_digit() && b != b'0');
    language::with_decimal_mark(format!("{}{grouped}{rest}", if negative { "−" } else { "" }))
}

/// `1 3/16`, `7/16`, `2`: lowest terms.
fn fraction(value: f64, parts: u16) -> String {
    let units = (value.abs() * f64::from(parts)).round();
    if units >= 1e12 {
        return plain(value, 0);
    }
    let (units, parts) = (units as u64, u64::from(parts));
    let sign = if value < 0.0 && units > 0 { "−" } else { "" };
    let (whole, over) = (units / parts, units % parts);
    if over == 0 {
        return format!("{sign}{whole}");
    }
    let divisor = gcd(over, parts);
    let small = format!("{}/{}", over / divisor, parts / divisor);
    if whole == 0 { format!("{sign}{small}") } else { format!("{sign}{whole} {small}") }
}

fn gcd(a: u64, b: u64) -> u64 {
    if b == 0 { a } else { gcd(b, a % b) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_truly_is_shows_no_dust() {
        let dial = Quantity::new("x", "x", Kind::Length, "x").read(crate::Instrument::Dial);
        let ratio = Quantity::new("x", "x", Kind::Ratio, "x");
        let scale = Quantity::new("x", "x", Kind::Length, "x").read(crate::Instrument::Scale);
        let count = Quantity::new("x", "x", Kind::Count, "x");
        for (quantity, value, system, text) in [
            (&dial, 0.007_501, System::Si, "0.0075"),
            (&dial, 5.42e-17, System::Si, "0"),
            (&dial, -0.000_03, System::Si, "0"),
            (&dial, 12.345_6, System::Si, "12.35"),
            (&ratio, 0.000_010_6, System::Si, "0.00001060"),
            (&ratio, -2e-17, System::Si, "0"),
            (&scale, 0.437_51, System::Us, "0.438"),
            (&count, 3.0, System::Si, "3"),
            (&count, 12_345.0, System::Si, "12\u{202f}345"),
        ] {
            assert_eq!(exact(quantity, value, system, 4), text);
        }
    }

    #[test]
    fn numbers_are_written_as_people_do() {
        for (value, figures, text) in [
            (11.04, Figures::Places(1), "11.0"),
            (-0.001, Figures::Places(1), "0.0"),
            (-2.5, Figures::Places(1), "−2.5"),
            (0.034_56, Figures::Significant(3), "0.0346"),
            (1234.0, Figures::Significant(3), "1230"),
            (1_234_567.0, Figures::Significant(4), "1\u{202f}235\u{202f}000"),
            (1.1875, Figures::Fraction(64), "1 3/16"),
            (-0.4375, Figures::Fraction(64), "−7/16"),
            (0.001, Figures::Fraction(64), "0"),
            (f64::NAN, Figures::Places(2), "?"),
            (0.0, Figures::Significant(3), "0"),
        ] {
            assert_eq!(number(value, figures), text);
        }
    }
}
