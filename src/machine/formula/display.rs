//! A formula as people see it: a line of text, or presentation MathML.

use super::Node;
use crate::language::with_decimal_mark;

impl Node {
    /// One line of text, each input replaced by what `word` makes of it.
    pub fn text(&self, word: &dyn Fn(&str, Option<&str>) -> String) -> String {
        match self {
            Self::Number(_, written) => with_decimal_mark(written.clone()),
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
            Self::Number(_, written) => format!("<mn>{}</mn>", with_decimal_mark(written.clone())),
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
