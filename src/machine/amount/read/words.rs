//! Numbers and joining words written out, in the language spoken: `twelve`, `1 hour and 30 minutes`.

use super::Wanted;
use super::error::{AND, NUMBERS};
use super::number::Number;
use super::parts::strip_end;
use crate::instrument::Figures;

/// The number in words that begins `text`, up to twenty, and what follows it; nothing where none may be written so.
pub(super) fn number<'a>(text: &'a str, wanted: &Wanted) -> Option<(Number, &'a str)> {
    if !wanted.spoken || !text.starts_with(char::is_alphabetic) {
        return None;
    }
    let end = text.find(|c: char| !c.is_alphabetic()).unwrap_or(text.len());
    let (word, rest) = text.split_at(end);
    let word: String = word.chars().flat_map(char::to_lowercase).collect();
    let value = NUMBERS.text().split(' ').position(|number| number.split('/').any(|name| name == word))?;
    let figures = if value < 10 { 1 } else { 2 };
    Some((Number { value: value as f64, figures, shown: Figures::Places(0) }, rest))
}

/// `text` without an `and` at its end, if one stands there.
pub(super) fn without_and<'a>(text: &'a str, wanted: &Wanted) -> Option<&'a str> {
    let spoken = || wanted.spoken.then(|| strip_end(text, AND.text())).flatten();
    strip_end(text, "and").or_else(spoken).filter(|rest| rest.ends_with(' '))
}
