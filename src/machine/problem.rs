//! Problems in a file someone wrote: what, where, and how to mend it.

use core::fmt;
use core::ops::Range;

use crate::amount;
use crate::instrument::Figures;
use crate::language::with_decimal_mark;
use crate::messages;
use crate::registry::QuantityId;
use crate::unit::System;

/// Something wrong in a file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// Where in the text, in bytes; `None` when no single place is at fault.
    pub span: Option<Range<usize>>,
    /// What is wrong: a sentence.
    pub what: String,
    /// How to mend it: a sentence, and on further lines what may be copied; empty when `what` says it.
    pub mend: String,
}

impl Problem {
    /// At `span`: `what`, and how to mend it.
    pub fn at(span: Range<usize>, what: impl Into<String>, mend: impl Into<String>) -> Self {
        Self { span: Some(span), what: what.into(), mend: mend.into() }
    }

    /// Of the file as a whole.
    pub fn whole(what: impl Into<String>, mend: impl Into<String>) -> Self {
        Self { span: None, what: what.into(), mend: mend.into() }
    }

    /// Line and column, counted from 1 (columns in characters), of the problem in `text`.
    pub fn line_column(&self, text: &str) -> Option<(usize, usize)> {
        let at = floor_char_boundary(text, self.span.as_ref()?.start);
        let start = text[..at].rfind('\n').map_or(0, |newline| newline + 1);
        Some((line_number(text, at), text[start..at].chars().count() + 1))
    }

    /// The problem as a person reads it: `file:line:column`, the sentence, the line with a pointer,
    /// and the mend.
    pub fn report(&self, file: &str, text: &str) -> String {
        let mut out = match self.line_column(text) {
            Some((line, column)) => format!("{file}:{line}:{column}: {}", self.what),
            None => format!("{file}: {}", self.what),
        };
        if let (Some((line, column)), Some(span)) = (self.line_column(text), &self.span) {
            // A line of a hostile file must not steer the terminal or turn its text.
            let plain = |c: char| match c {
                '\t' => ' ',
                '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' => '\u{fffd}',
                c if c.is_control() => '\u{fffd}',
                c => c,
            };
            let shown: Vec<char> = text.lines().nth(line - 1).unwrap_or("").chars().map(plain).collect();
            let length = text.get(span.clone()).map_or(1, |part| part.lines().next().unwrap_or("").chars().count());
            let (cut, before) = window(&shown, column - 1);
            let width = cut.chars().count().saturating_sub(before);
            let marks = "^".repeat(length.clamp(1, width.max(1)));
            out.push_str(&format!("\n  {line:>4} | {cut}\n       | {}{marks}", " ".repeat(before)));
        }
        if !self.mend.is_empty() {
            // What can be copied from a mend stands on lines of its own.
            self.mend.lines().for_each(|line| out.push_str(&format!("\n       {line}")));
        }
        out
    }
}

/// Which line of `text`, counted from 1, the byte `at` stands in.
pub fn line_number(text: impl AsRef<[u8]>, at: usize) -> usize {
    text.as_ref().iter().take(at).filter(|byte| **byte == b'\n').count() + 1
}

/// Characters of a line that are shown at most; of a longer one what stands round the place.
const WIDEST: usize = 120;
/// How many of them stand before the place, where there are as many.
const BEFORE: usize = 40;

/// What is shown of a line, and how many characters of that stand before its `place`-th.
fn window(line: &[char], place: usize) -> (String, usize) {
    let most = line.len().saturating_sub(WIDEST);
    let from = place.saturating_sub(BEFORE).min(most);
    let to = (from + WIDEST).min(line.len());
    let [left, right] = [from > 0, to < line.len()].map(|cut| if cut { "…" } else { "" });
    let inside: String = line[from..to].iter().collect();
    (format!("{left}{inside}{right}"), place - from + usize::from(from > 0))
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.what)?;
        if self.mend.is_empty() { Ok(()) } else { write!(f, " {}", self.mend) }
    }
}

impl core::error::Error for Problem {}

messages! { pub(crate) SAYS {
    DID_YOU_MEAN = "problem-file-did-you-mean", "Did you mean {name}?";
    NO_QUANTITY = "problem-file-no-quantity", "There is no quantity called {name}.";
    LIST_QUANTITIES = "problem-file-list-quantities", "`drivecourse solve --list` names every quantity.";
    OUTSIDE = "problem-result-outside", "{input} is {value}, outside {min} to {max} (SI units)";
    TOO_SMALL = "problem-result-too-small", "{input} is {value}, and the least possible is {min} (SI units)";
    NOT_ABOVE = "problem-result-not-above", "{input} is {value}, and must be more than {min}";
    NOT_BELOW = "problem-result-not-below", "{input} is {value}, and must be less than {max}";
    BELOW = "problem-result-below", "{input} is {value}, and the least possible is {min}";
    ABOVE = "problem-result-above", "{input} is {value}, and the most possible is {max}";
    TOO_LARGE = "problem-result-too-large", "{input} is {value}, and the most possible is {max} (SI units)";
    NOT_SETTLING = "problem-result-not-settling", "the readings are not settling yet";
    NO_SOLUTION = "problem-result-no-solution", "no {sought} meets the request";
    NO_POSSIBILITY = "problem-file-no-possibility", "{written} is none of the possibilities of {name}.";
} }

/// Suggests the name `near`, which is there, for one that is not: `Did you mean "chain.sag"?`.
pub fn did_you_mean(near: &str) -> String {
    did_you_mean_as(&quoted(near))
}

/// As [`did_you_mean`], with the name as it is to stand there.
pub fn did_you_mean_as(written: &str) -> String {
    told!(DID_YOU_MEAN, "name" = written)
}

/// A name or a text as it stands in a file, in quotation marks.
pub fn quoted(text: &str) -> String {
    format!("{text:?}")
}

/// Why a calculation has no result, in the language that is spoken; its inputs are named as the calculation does.
#[cfg(not(wordless))]
pub fn refusal(error: &drivecourse_calc::Error) -> String {
    use drivecourse_calc::Error;
    // No more figures than can be compared at a glance.
    let written = |number: f64| match number {
        // The least that is more than nothing.
        f64::MIN_POSITIVE => "0".to_owned(),
        _ => with_decimal_mark(Figures::Significant(6).round(number).to_string()),
    };
    match error {
        Error::OutOfRange { input, value, min, max } if *max == f64::MAX => {
            told!(TOO_SMALL, "input" = input, "value" = written(*value), "min" = written(*min))
        }
        Error::OutOfRange { input, value, min, max } if *min == f64::MIN => {
            told!(TOO_LARGE, "input" = input, "value" = written(*value), "max" = written(*max))
        }
        Error::OutOfRange { input, value, min, max } => {
            told!(OUTSIDE, "input" = input, "value" = written(*value), "min" = written(*min), "max" = written(*max))
        }
        Error::NotSettling => told!(NOT_SETTLING),
        Error::NoSolution { sought } => told!(NO_SOLUTION, "sought" = sought),
        other => other.to_string(),
    }
}

/// As [`refusal`], where it is one of these `inputs` (SI) that is refused: by its id, in the units of `system`. That input too;
/// of two alike, the later one.
#[cfg(not(wordless))]
pub(crate) fn refusal_of(
    error: &drivecourse_calc::Error,
    inputs: &[(QuantityId, f64)],
    system: System,
) -> (String, Option<QuantityId>) {
    let drivecourse_calc::Error::OutOfRange { value, min, max, .. } = error else { return (refusal(error), None) };
    let Some((id, _)) = inputs.iter().rfind(|(_, input)| input == value) else { return (refusal(error), None) };
    let written = |base: f64| amount::write_exact(id.get(), if base == f64::MIN_POSITIVE { 0.0 } else { base }, system);
    let (input, value_text) = (id.get().id, written(*value));
    // What is no more than rounding away is at its bound.
    let is_at = |bound: f64| (value - bound).abs() <= 1e-12 * bound.abs();
    let why = match () {
        () if value < min && *min == f64::MIN_POSITIVE => {
            told!(NOT_ABOVE, "input" = input, "value" = value_text, "min" = written(*min))
        }
        () if is_at(*max) => told!(NOT_BELOW, "input" = input, "value" = value_text, "max" = written(*max)),
        () if value < min => told!(BELOW, "input" = input, "value" = value_text, "min" = written(*min)),
        () if value == min => told!(NOT_ABOVE, "input" = input, "value" = value_text, "min" = written(*min)),
        () => told!(ABOVE, "input" = input, "value" = value_text, "max" = written(*max)),
    };
    (why, Some(*id))
}

/// Nothing: the browser shows no such thing.
#[cfg(wordless)]
pub(crate) fn refusal_of(
    _: &drivecourse_calc::Error,
    _: &[(QuantityId, f64)],
    _: System,
) -> (String, Option<QuantityId>) {
    (String::new(), None)
}

/// Nothing: the browser shows no such thing.
#[cfg(wordless)]
pub fn refusal(_: &drivecourse_calc::Error) -> String {
    String::new()
}

/// What to do about a quantity that is not there: the name that may be meant, or where all names stand.
pub(crate) fn other_quantity(near: Option<&str>) -> String {
    near.map_or_else(|| told!(LIST_QUANTITIES), did_you_mean)
}

fn floor_char_boundary(text: &str, at: usize) -> usize {
    let mut at = at.min(text.len());
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    at
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_report_points_at_the_place() {
        let text = "a = 1\nname = \"Öl\" # oops\n";
        let start = text.find("\"Öl\"").unwrap();
        let problem = Problem::at(start..start + 5, "No such name.", "Choose another.");
        assert_eq!(
            problem.report("x.toml", text),
            "x.toml:2:8: No such name.\n     2 | name = \"Öl\" # oops\n       |        ^^^^\n       Choose another."
        );
        assert_eq!(Problem::at(999..1000, "Late.", "").line_column(text), Some((3, 1)));
    }

    #[test]
    fn of_a_long_line_is_shown_what_stands_round_the_place() {
        let text = format!("{}here{}", "a".repeat(300), "b".repeat(300));
        let report = |span: Range<usize>| Problem::at(span, "There.", "").report("x.csv", &text);
        let shown = report(300..304);
        let lines: Vec<&str> = shown.lines().collect();
        assert!(lines[0].starts_with("x.csv:1:301: "), "{shown}");
        assert_eq!(lines[1].chars().filter(|c| *c == '…').count(), 2, "{shown}");
        assert!(lines.iter().all(|line| line.chars().count() < 140), "{shown}");
        let at = lines[1].chars().position(|c| c == 'h').unwrap();
        assert_eq!(lines[2].chars().position(|c| c == '^'), Some(at), "{shown}");
        assert!(lines[2].ends_with("^^^^") && !lines[2].ends_with("^^^^^"), "{shown}");
        // At an end of the line nothing is cut there; what is longer than is shown is marked as far as that.
        assert!(report(0..1).lines().nth(1).unwrap().ends_with("a…"), "{}", report(0..1));
        assert!(report(603..604).lines().nth(1).unwrap().ends_with('b'), "{}", report(603..604));
        assert!(report(0..604).lines().nth(2).unwrap().matches('^').count() <= 121, "{}", report(0..604));
    }
}
