//! Reads a formula's text: sums of products of signed powers.

use super::{Formula, FormulaError, Node};
use crate::messages;

messages! { pub(crate) SAYS {
    TOO_LONG = "problem-formula-too-long", "the formula is longer than 1000 characters";
    UNEXPECTED = "problem-formula-unexpected", "did not expect '{sign}' here";
    TOO_DEEP = "problem-formula-too-deep", "brackets are nested too deeply";
    NO_NUMBER = "problem-formula-no-number", "{written} is not a number";
    TOO_EARLY = "problem-formula-too-early", "the formula stops too early";
    NO_ARGUMENT = "problem-formula-no-argument", "{name} needs its argument in brackets";
    UNIT_OPEN = "problem-formula-unit-open", "the unit's bracket is not closed";
    OPEN = "problem-formula-open", "a bracket is not closed";
} }

pub(super) const FUNCTIONS: [&str; 15] =
    ["sqrt", "abs", "exp", "ln", "log10", "min", "max", "ceil", "sin", "cos", "tan", "asin", "acos", "atan", "cot"];

impl Formula {
    /// Reads `text`, with or without a left-hand side.
    ///
    /// # Errors
    /// A [`FormulaError`] that says what was met and where.
    pub fn read(text: &str) -> Result<Self, FormulaError> {
        if text.len() > 1000 {
            return Err(FormulaError { at: 1000, what: told!(TOO_LONG) });
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
            Some(c) => Err(reader.fail(told!(UNEXPECTED, "sign" = c.to_string()))),
        }
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
            return Err(self.fail(told!(TOO_DEEP)));
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
                match crate::decimal::value(&written, 0) {
                    Some(value) => Ok(Node::Number(value, written)),
                    None => Err(self.fail(told!(NO_NUMBER, "written" = written))),
                }
            }
            Some(c) if c.is_alphabetic() => {
                while self.text.get(self.at).is_some_and(|c| c.is_alphanumeric() || matches!(c, '_' | '.')) {
                    self.at += 1;
                }
                let name: String = self.text[start..self.at].iter().collect();
                self.named(name)
            }
            Some(c) => Err(self.fail(told!(UNEXPECTED, "sign" = c.to_string()))),
            None => Err(self.fail(told!(TOO_EARLY))),
        }
    }

    fn named(&mut self, name: String) -> Result<Node, FormulaError> {
        if let Some(function) = FUNCTIONS.iter().find(|function| **function == name) {
            if self.take(&['(']).is_none() {
                return Err(self.fail(told!(NO_ARGUMENT, "name" = name)));
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
                return Err(self.fail(told!(UNIT_OPEN)));
            };
            unit = Some(self.text[self.at + 1..self.at + length].iter().collect::<String>());
            self.at += length + 1;
        }
        Ok(Node::Name(name, unit))
    }

    fn close(&mut self) -> Result<(), FormulaError> {
        if self.take(&[')']).is_some() { Ok(()) } else { Err(self.fail(told!(OPEN))) }
    }
}
