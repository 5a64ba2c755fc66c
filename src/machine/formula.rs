//! Formulas as people write them: read once, then shown with symbols, shown with numbers, or evaluated.
//!
//! ```text
//! H[lbf] = w[lb/ft] * L[ft]^2 / (8 * d[ft])
//! ```
//! A name stands for an input of the relation; the unit in square brackets says in which unit its
//! number enters (without it, the unit in which the quantity is shown). `^` raises to a power;
//! `sqrt`, `abs`, `exp`, `ln`, `log10`, `min`, `max`, `ceil` and the trigonometric functions are
//! known, the latter in **degrees**, as tables and pocket calculators give them.
//!
//! The registry's test evaluates every formula with the numbers of random machines and holds the
//! outcome against the calculation crate, so that what people are shown cannot drift from what
//! the program computes.

mod display;
mod eval;
mod parse;

use core::fmt;

use crate::packed::{Packed, Reader as Unpacker};
pub use display::{symbol_mathml, symbol_text};
pub(crate) use parse::SAYS;

use crate::unit::Unit;

/// A formula, read.
#[derive(Debug, Clone, PartialEq)]
pub struct Formula {
    /// Unit of the result, if one is named.
    pub unit: Option<String>,
    /// The right-hand side.
    pub body: Node,
}

/// A part of a formula.
#[derive(Debug, Clone, PartialEq)]
pub enum Node {
    /// A number, as written.
    Number(f64, String),
    /// An input, and the unit in which its number enters.
    Name(String, Option<String>),
    /// Two parts joined by `+ - * / ^`.
    Join(char, Box<Self>, Box<Self>),
    /// The negative.
    Minus(Box<Self>),
    /// A function of its arguments.
    Call(&'static str, Vec<Self>),
}

impl Packed for Node {
    fn pack(&self, out: &mut String) {
        match self {
            Self::Number(value, written) => (0_u8, (*value, written.clone())).pack(out),
            Self::Name(name, unit) => (1_u8, (name.clone(), unit.clone())).pack(out),
            Self::Join(op, a, b) => {
                (2_u8, *op as u64).pack(out);
                a.pack(out);
                b.pack(out);
            }
            Self::Minus(inner) => {
                3_u8.pack(out);
                inner.pack(out);
            }
            Self::Call(function, args) => {
                let place = parse::FUNCTIONS.iter().position(|known| known == function);
                (4_u8, place.unwrap_or(usize::MAX)).pack(out);
                args.pack(out);
            }
        }
    }

    fn unpack(from: &mut Unpacker<'_>) -> Self {
        match u8::unpack(from) {
            0 => Self::Number(Packed::unpack(from), Packed::unpack(from)),
            1 => Self::Name(Packed::unpack(from), Packed::unpack(from)),
            2 => {
                let op = char::from(u8::unpack(from));
                Self::Join(op, Box::new(Self::unpack(from)), Box::new(Self::unpack(from)))
            }
            3 => Self::Minus(Box::new(Self::unpack(from))),
            _ => Self::Call(from.choose(&parse::FUNCTIONS), Packed::unpack(from)),
        }
    }
}

/// Why a formula cannot be read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FormulaError {
    /// Where, counted in characters from 0.
    pub at: usize,
    /// What is wrong, as a sentence without a full stop.
    pub what: String,
}

impl fmt::Display for FormulaError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} (character {})", self.what, self.at + 1)
    }
}

impl core::error::Error for FormulaError {}

impl Formula {
    /// Every input named on the right-hand side: see [`Node::names`].
    pub fn names_of_body(&self) -> Vec<(&str, Option<&str>)> {
        self.body.names()
    }
}

impl Node {
    /// Every input named, in order of first appearance.
    pub fn names(&self) -> Vec<(&str, Option<&str>)> {
        let mut out = Vec::new();
        self.visit(&mut |name, unit| {
            if !out.contains(&(name, unit)) {
                out.push((name, unit));
            }
        });
        out
    }

    fn visit<'a>(&'a self, see: &mut impl FnMut(&'a str, Option<&'a str>)) {
        match self {
            Self::Number(..) => {}
            Self::Name(name, unit) => see(name, unit.as_deref()),
            Self::Minus(inner) => inner.visit(see),
            Self::Join(_, a, b) => {
                a.visit(see);
                b.visit(see);
            }
            Self::Call(_, args) => args.iter().for_each(|arg| arg.visit(see)),
        }
    }
}

/// The unit a formula's bracket names, for an input of `kind`.
pub(crate) fn unit_for(kind: crate::Kind, named: Option<&str>, usual: &'static Unit) -> &'static Unit {
    named.and_then(|name| Unit::find(kind, name)).unwrap_or(usual)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn value(text: &str) -> f64 {
        Formula::read(text).unwrap().body.value(&|name, _| if name == "x" { 3.0 } else { f64::NAN })
    }

    #[test]
    fn evaluates_by_the_usual_precedence() {
        assert_eq!(value("1 + 2 * x"), 7.0);
        assert_eq!(value("2 * x^2"), 18.0);
        assert_eq!(value("-x^2"), -9.0);
        assert_eq!(value("12 / 2 / 3"), 2.0);
        assert_eq!(value("10 - 4 - 3"), 3.0);
        assert_eq!(value("2^-2"), 0.25);
        approx::assert_relative_eq!(value("sin(30) + cot(45) * sqrt(16)"), 4.5, max_relative = 1e-12);
        assert_eq!(value("max(x, 2, 1) + min(x, 2)"), 5.0);
        assert!(value("y").is_nan());
    }

    #[test]
    fn shows_symbols_and_numbers() {
        let formula = Formula::read("H[lbf] = w[lb/ft] * L[ft]^2 / (8 * d[ft])").unwrap();
        assert_eq!(formula.unit.as_deref(), Some("lbf"));
        let symbols = formula.body.text(&|name, _| if name == "d" { "δ".into() } else { name.into() });
        assert_eq!(symbols, "w × L² / (8 × δ)");
        let numbers = formula.body.text(&|_, unit| format!("2 {}", unit.unwrap_or_default()));
        assert_eq!(numbers, "2 lb/ft × (2 ft)² / (8 × 2 ft)");
        assert!(formula.body.mathml(&|name, _| format!("<mi>{name}</mi>")).starts_with("<mfrac><mrow>"));
        assert_eq!(formula.body.names().len(), 3);
    }

    #[test]
    fn brackets_survive_the_round_trip() {
        for text in ["10 − (4 − 3)", "(x + 1) × 2", "x / (2 × x)", "(x + 1)²"] {
            let shown = Formula::read(&text.replace('²', "^2")).unwrap().body.text(&|name, _| name.into());
            assert_eq!(shown, text);
        }
    }

    #[test]
    fn angles_carry_the_sign_of_degrees() {
        let shown = |text: &str| Formula::read(text).unwrap().body.text(&|name, _| name.into());
        assert_eq!(shown("p / sin(180 / z)"), "p / sin(180° / z)");
        assert_eq!(shown("cos(t) * 2"), "cos(t) × 2");
        assert_eq!(shown("sin(90 - t)"), "sin(90° − t)");
        assert_eq!(shown("cos(2 * t)"), "cos(2 × t)");
        assert_eq!(shown("180 - 2 * asin(d / 2)"), "180° − 2 × asin(d / 2)");
        assert_eq!(shown("1 - cos(180 / z)"), "1 − cos(180° / z)");
        assert_eq!(shown("cos(asin(p / (2 * c) * (1 / sin(180 / z))))"), "cos(asin(p / (2 × c) × 1 / sin(180° / z)))");
        let markup = Formula::read("sin(180 / z)").unwrap().body.mathml(&|name, _| format!("<mi>{name}</mi>"));
        assert!(markup.contains("<mn>180°</mn>"), "{markup}");
    }

    #[test]
    fn sizes_and_powers_read_as_people_write_them() {
        let shown = |text: &str| Formula::read(text).unwrap().body.text(&|_, _| "12".into());
        assert_eq!(shown("abs(t)"), "|12|");
        assert_eq!(shown("x^n"), "12¹²");
        assert_eq!(shown("x^2"), "12²");
        assert_eq!(shown("x^-1"), "12^(−1)");
        let scale = Formula::read("4 * m / (a + m)^2").unwrap().body.text(&|_, _| "2 47/64 in".into());
        assert_eq!(scale, "4 × (2 47/64 in) / (2 47/64 in + 2 47/64 in)²");
    }

    #[test]
    fn bad_text_is_refused_with_its_place() {
        for text in ["", "1 +", "(1", "sin 3", "3 ) 4", "x[mm", "1..2", "@"] {
            assert!(Formula::read(text).is_err(), "{text}");
        }
        assert!(Formula::read(&"(".repeat(10_000)).is_err());
        assert_eq!(Formula::read("y = 1 + ?").unwrap_err().at, 8);
    }
}
