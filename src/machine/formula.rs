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

use core::fmt;

use crate::decimal;
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

const FUNCTIONS: [&str; 15] =
    ["sqrt", "abs", "exp", "ln", "log10", "min", "max", "ceil", "sin", "cos", "tan", "asin", "acos", "atan", "cot"];

impl Formula {
    /// Reads `text`, with or without a left-hand side.
    ///
    /// # Errors
    /// A [`FormulaError`] that says what was met and where.
    pub fn read(text: &str) -> Result<Self, FormulaError> {
        if text.len() > 1000 {
            return Err(FormulaError { at: 1000, what: "the formula is longer than 1000 characters".into() });
        }
        let (left, right, offset) = match text.find('=') {
            Some(split) => (Some(&text[..split]), &text[split + 1..], text[..=split].chars().count()),
            None => (None, text, 0),
        };
        let unit =
            left.and_then(|left| left.split_once('[')).map(|(_, unit)| unit.trim().trim_end_matches(']').to_owned());
        let mut reader = Reader { text: right.chars().collect(), at: 0, offset, depth: 0 };
        let body = reader.sum()?;
        reader.space();
        match reader.text.get(reader.at) {
            None => Ok(Self { unit, body }),
            Some(c) => Err(reader.fail(format!("did not expect '{c}' here"))),
        }
    }

    /// Every input named on the right-hand side: see [`Node::names`].
    pub fn names_of_body(&self) -> Vec<(&str, Option<&str>)> {
        self.body.names()
    }
}

impl Node {
    /// The value, with `lookup` giving each input's number in the unit asked for.
    ///
    /// Not a number where an input is unknown or a function has no value.
    pub fn value(&self, lookup: &dyn Fn(&str, Option<&str>) -> f64) -> f64 {
        match self {
            Self::Number(value, _) => *value,
            Self::Name(name, unit) => lookup(name, unit.as_deref()),
            Self::Minus(inner) => -inner.value(lookup),
            Self::Join(op, a, b) => {
                let (a, b) = (a.value(lookup), b.value(lookup));
                match op {
                    '+' => a + b,
                    '-' => a - b,
                    '*' => a * b,
                    '/' => a / b,
                    _ => libm::pow(a, b),
                }
            }
            Self::Call(function, args) => call(function, &args.iter().map(|a| a.value(lookup)).collect::<Vec<_>>()),
        }
    }

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

    /// One line of text, each input replaced by what `word` makes of it.
    pub fn text(&self, word: &dyn Fn(&str, Option<&str>) -> String) -> String {
        match self {
            Self::Number(_, written) => written.clone(),
            Self::Name(name, unit) => word(name, unit.as_deref()),
            Self::Minus(inner) => format!("−{}", inner.inside(word, 3)),
            Self::Join('^', a, b) => {
                let exponent = b.inside(word, 4);
                let power = raised(&exponent).unwrap_or_else(|| format!("^{exponent}"));
                let base = a.inside(word, 4);
                // A number with its unit needs brackets before a power: (2.71 ft)².
                if base.contains(' ') && !base.starts_with('(') {
                    format!("({base}){power}")
                } else {
                    format!("{base}{power}")
                }
            }
            Self::Join(op, ..) => {
                let (a, b) = self.sides();
                let (sign, level) = match op {
                    '+' => (" + ", 1),
                    '-' => (" − ", 1),
                    '*' => (" × ", 2),
                    _ => (" / ", 2),
                };
                // The right-hand side of − and / needs brackets already at the same level.
                let right = if matches!(op, '-' | '/') { level + 1 } else { level };
                format!("{}{sign}{}", a.inside(word, level), b.inside(word, right))
            }
            Self::Call("sqrt", args) => format!("√({})", join(args, word)),
            Self::Call("exp", args) => format!("e^({})", join(args, word)),
            Self::Call("abs", args) => format!("|{}|", join(args, word)),
            Self::Call(function, args) => format!("{function}({})", join(&angled(function, args), word)),
        }
    }

    /// The sides of a sum, difference, product or quotient; a bare number added to an angle is one too: 180° − asin(x).
    fn sides(&self) -> (Self, Self) {
        let Self::Join(op, a, b) = self else { return (self.clone(), self.clone()) };
        let angle = matches!(op, '+' | '-') && (a.is_angle() || b.is_angle());
        if angle { (a.in_degrees(), b.in_degrees()) } else { ((**a).clone(), (**b).clone()) }
    }

    /// Whether this is an angle that an inverse function gave.
    fn is_angle(&self) -> bool {
        match self {
            Self::Call(function, _) => matches!(*function, "asin" | "acos" | "atan"),
            Self::Minus(inner) => inner.is_angle(),
            Self::Join('*' | '+' | '-', a, b) => a.is_angle() || b.is_angle(),
            _ => false,
        }
    }

    /// The same with the sign of degrees behind every number that is itself an angle: `180 / z` becomes `180° / z`.
    fn in_degrees(&self) -> Self {
        match self {
            Self::Number(value, written) => Self::Number(*value, format!("{written}°")),
            Self::Minus(inner) => Self::Minus(Box::new(inner.in_degrees())),
            Self::Join(op @ ('+' | '-'), a, b) => Self::Join(*op, Box::new(a.in_degrees()), Box::new(b.in_degrees())),
            // Only a bare number over the line is an angle; a factor is none, and an input brings its own unit.
            Self::Join('/', a, b) if matches!(**a, Self::Number(..)) => {
                Self::Join('/', Box::new(a.in_degrees()), b.clone())
            }
            other => other.clone(),
        }
    }

    fn level(&self) -> u8 {
        match self {
            Self::Join('+' | '-', ..) => 1,
            Self::Join('*' | '/', ..) => 2,
            Self::Minus(_) => 1,
            _ => 4,
        }
    }

    fn inside(&self, word: &dyn Fn(&str, Option<&str>) -> String, level: u8) -> String {
        let text = self.text(word);
        // A reading in fractions, 2 47/64 in, would run together with the signs beside it.
        let mixed = level >= 2 && matches!(self, Self::Name(..)) && has_fraction(&text);
        if self.level() < level || mixed { format!("({text})") } else { text }
    }

    /// Presentation MathML (without the outer `math` element), each input replaced by what `word`
    /// makes of it (markup, already escaped).
    pub fn mathml(&self, word: &dyn Fn(&str, Option<&str>) -> String) -> String {
        match self {
            Self::Number(_, written) => format!("<mn>{written}</mn>"),
            Self::Name(name, unit) => word(name, unit.as_deref()),
            Self::Minus(inner) => format!("<mrow><mo>−</mo>{}</mrow>", inner.fenced(word, 3)),
            Self::Join('/', a, b) => {
                format!("<mfrac><mrow>{}</mrow><mrow>{}</mrow></mfrac>", a.mathml(word), b.mathml(word))
            }
            Self::Join('^', a, b) => {
                format!("<msup><mrow>{}</mrow><mrow>{}</mrow></msup>", a.fenced(word, 4), b.mathml(word))
            }
            Self::Join(op, ..) => {
                let (a, b) = self.sides();
                let (sign, level) = match op {
                    '+' => ("+", 1),
                    '-' => ("−", 1),
                    _ => ("×", 2),
                };
                let right = if *op == '-' { level + 1 } else { level };
                format!("<mrow>{}<mo>{sign}</mo>{}</mrow>", a.fenced(word, level), b.fenced(word, right))
            }
            Self::Call("sqrt", args) => format!("<msqrt>{}</msqrt>", args_mathml(args, word)),
            Self::Call("exp", args) => format!("<msup><mi>e</mi><mrow>{}</mrow></msup>", args_mathml(args, word)),
            Self::Call("abs", args) => format!("<mrow><mo>|</mo>{}<mo>|</mo></mrow>", args_mathml(args, word)),
            Self::Call(function, args) => {
                let args = args_mathml(&angled(function, args), word);
                format!("<mrow><mi>{function}</mi><mo>(</mo>{args}<mo>)</mo></mrow>")
            }
        }
    }

    fn fenced(&self, word: &dyn Fn(&str, Option<&str>) -> String, level: u8) -> String {
        let inner = self.mathml(word);
        // A fraction is drawn with its own bar and needs no brackets, save under a power.
        let bare = matches!(self, Self::Join('/', ..)) && level < 4;
        if self.level() < level && !bare { format!("<mrow><mo>(</mo>{inner}<mo>)</mo></mrow>") } else { inner }
    }
}

/// The arguments of `function` as they are shown: those of the trigonometric functions are angles in degrees.
fn angled(function: &str, args: &[Node]) -> Vec<Node> {
    let angle = matches!(function, "sin" | "cos" | "tan" | "cot");
    args.iter().map(|arg| if angle { arg.in_degrees() } else { arg.clone() }).collect()
}

/// Whether a stroke stands between two figures, as in 47/64.
fn has_fraction(text: &str) -> bool {
    text.as_bytes().windows(3).any(|at| at[0].is_ascii_digit() && at[1] == b'/' && at[2].is_ascii_digit())
}

/// A whole number in raised figures; nothing for anything else.
fn raised(number: &str) -> Option<String> {
    const FIGURES: [char; 10] = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];
    number.chars().map(|c| c.to_digit(10).map(|digit| FIGURES[digit as usize])).collect()
}

fn join(args: &[Node], word: &dyn Fn(&str, Option<&str>) -> String) -> String {
    args.iter().map(|arg| arg.text(word)).collect::<Vec<_>>().join(", ")
}

fn args_mathml(args: &[Node], word: &dyn Fn(&str, Option<&str>) -> String) -> String {
    args.iter().map(|arg| arg.mathml(word)).collect::<Vec<_>>().join("<mo>,</mo>")
}

fn call(function: &str, args: &[f64]) -> f64 {
    const DEGREE: f64 = core::f64::consts::PI / 180.0;
    let x = args[0];
    match function {
        "sqrt" => x.sqrt(),
        "abs" => x.abs(),
        "exp" => libm::exp(x),
        "ln" => libm::log(x),
        "log10" => libm::log10(x),
        "ceil" => x.ceil(),
        "min" => args.iter().copied().fold(f64::INFINITY, f64::min),
        "max" => args.iter().copied().fold(f64::NEG_INFINITY, f64::max),
        "sin" => libm::sin(x * DEGREE),
        "cos" => libm::cos(x * DEGREE),
        "tan" => libm::tan(x * DEGREE),
        "cot" => 1.0 / libm::tan(x * DEGREE),
        "asin" => libm::asin(x) / DEGREE,
        "acos" => libm::acos(x) / DEGREE,
        _ => libm::atan(x) / DEGREE,
    }
}

/// Reads by the usual precedence: sums of products of signed powers.
struct Reader {
    text: Vec<char>,
    at: usize,
    offset: usize,
    depth: u8,
}

impl Reader {
    fn fail(&self, what: String) -> FormulaError {
        FormulaError { at: self.at + self.offset, what }
    }

    fn space(&mut self) {
        while self.text.get(self.at).is_some_and(|c| c.is_whitespace()) {
            self.at += 1;
        }
    }

    fn take(&mut self, wanted: &[char]) -> Option<char> {
        self.space();
        let c = *self.text.get(self.at)?;
        wanted.contains(&c).then(|| {
            self.at += 1;
            c
        })
    }

    fn sum(&mut self) -> Result<Node, FormulaError> {
        // Text from a file must not be able to exhaust the stack.
        self.depth += 1;
        if self.depth > 40 {
            return Err(self.fail("brackets are nested too deeply".into()));
        }
        let mut left = self.product()?;
        while let Some(op) = self.take(&['+', '-', '−']) {
            let op = if op == '−' { '-' } else { op };
            left = Node::Join(op, Box::new(left), Box::new(self.product()?));
        }
        self.depth -= 1;
        Ok(left)
    }

    fn product(&mut self) -> Result<Node, FormulaError> {
        let mut left = self.signed()?;
        while let Some(op) = self.take(&['*', '×', '/']) {
            let op = if op == '/' { '/' } else { '*' };
            left = Node::Join(op, Box::new(left), Box::new(self.signed()?));
        }
        Ok(left)
    }

    fn signed(&mut self) -> Result<Node, FormulaError> {
        if self.take(&['-', '−']).is_some() {
            return Ok(Node::Minus(Box::new(self.power()?)));
        }
        self.power()
    }

    fn power(&mut self) -> Result<Node, FormulaError> {
        let base = self.atom()?;
        if self.take(&['^']).is_some() {
            let exponent =
                if self.take(&['-', '−']).is_some() { Node::Minus(Box::new(self.atom()?)) } else { self.atom()? };
            return Ok(Node::Join('^', Box::new(base), Box::new(exponent)));
        }
        Ok(base)
    }

    fn atom(&mut self) -> Result<Node, FormulaError> {
        self.space();
        let start = self.at;
        match self.text.get(self.at) {
            Some('(') => {
                self.at += 1;
                let inner = self.sum()?;
                self.close()?;
                Ok(inner)
            }
            Some(c) if c.is_ascii_digit() || *c == '.' => {
                while self.text.get(self.at).is_some_and(|c| c.is_ascii_digit() || *c == '.') {
                    self.at += 1;
                }
                let written: String = self.text[start..self.at].iter().collect();
                match decimal::value(&written, 0) {
                    Some(value) => Ok(Node::Number(value, written)),
                    None => Err(self.fail(format!("{written} is not a number"))),
                }
            }
            Some(c) if c.is_alphabetic() => {
                while self.text.get(self.at).is_some_and(|c| c.is_alphanumeric() || matches!(c, '_' | '.')) {
                    self.at += 1;
                }
                let name: String = self.text[start..self.at].iter().collect();
                self.named(name)
            }
            Some(c) => Err(self.fail(format!("did not expect '{c}' here"))),
            None => Err(self.fail("the formula stops too early".into())),
        }
    }

    fn named(&mut self, name: String) -> Result<Node, FormulaError> {
        if let Some(function) = FUNCTIONS.iter().find(|function| **function == name) {
            if self.take(&['(']).is_none() {
                return Err(self.fail(format!("{name} needs its argument in brackets")));
            }
            let mut args = vec![self.sum()?];
            while self.take(&[',']).is_some() {
                args.push(self.sum()?);
            }
            self.close()?;
            return Ok(Node::Call(function, args));
        }
        if name == "pi" {
            return Ok(Node::Number(core::f64::consts::PI, "π".into()));
        }
        let mut unit = None;
        if self.text.get(self.at) == Some(&'[') {
            let close = self.text[self.at..].iter().position(|c| *c == ']');
            let Some(length) = close else {
                return Err(self.fail("the unit's bracket is not closed".into()));
            };
            unit = Some(self.text[self.at + 1..self.at + length].iter().collect::<String>());
            self.at += length + 1;
        }
        Ok(Node::Name(name, unit))
    }

    fn close(&mut self) -> Result<(), FormulaError> {
        if self.take(&[')']).is_some() { Ok(()) } else { Err(self.fail("a bracket is not closed".into())) }
    }
}

/// A symbol such as `D_2` as MathML, the part after `_` as a subscript.
pub fn symbol_mathml(symbol: &str) -> String {
    match symbol.split_once('_') {
        Some((main, sub)) => format!("<msub><mi>{main}</mi><mi>{sub}</mi></msub>"),
        None => format!("<mi>{symbol}</mi>"),
    }
}

/// A symbol such as `D_2` as plain text, with subscript figures where there are any.
pub fn symbol_text(symbol: &str) -> String {
    let Some((main, sub)) = symbol.split_once('_') else { return symbol.to_owned() };
    let lowered: Option<String> =
        sub.chars().map(|c| c.to_digit(10).and_then(|digit| char::from_u32(0x2080 + digit))).collect();
    match lowered {
        Some(figures) => format!("{main}{figures}"),
        None => format!("{main}_{sub}"),
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
