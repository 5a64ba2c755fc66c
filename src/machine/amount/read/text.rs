//! Text made plain before it is read: limits, hidden characters, one sign for each purpose.

use std::borrow::Cow;

use super::ReadError;
use crate::unit::Kind;

/// Longest text that is read, in characters.
pub const LIMIT: usize = 200;

/// `text` without outer space, with full-width signs, dashes, quotes and spaces made plain.
/// Nothing is copied when it is plain already.
pub(super) fn clean(text: &str, wanted: Kind) -> Result<Cow<'_, str>, ReadError> {
    // No character takes more than four bytes: a very long text is refused without counting.
    if text.len() > 4 * LIMIT || (text.len() > LIMIT && text.chars().count() > LIMIT) {
        return Err(ReadError::TooLong { wanted });
    }
    let text = text.trim();
    if text.is_empty() {
        return Err(ReadError::Empty { wanted });
    }
    if text.bytes().all(|byte| (b' '..=b'~').contains(&byte)) {
        return Ok(Cow::Borrowed(text));
    }
    let mut out = String::with_capacity(text.len());
    for (at, c) in text.char_indices() {
        match c {
            '\t' => out.push(' '),
            c if c.is_control() || hidden(c) => return Err(ReadError::ControlCharacters { wanted }),
            c if c.is_whitespace() => out.push(' '),
            // Full-width forms stand in the order of ASCII.
            '\u{ff01}'..='\u{ff5e}' => out.extend(char::from_u32(c as u32 - 0xfee0)),
            '−' | '–' | '—' | '‐' | '‑' | '‒' => out.push('-'),
            '’' | '‘' | '′' => out.push('\''),
            '”' | '“' | '″' | '„' => out.push('"'),
            '⁄' | '∕' => out.push('/'),
            '…' => out.push_str("..."),
            '℃' => out.push_str("°C"),
            '℉' => out.push_str("°F"),
            c => match (superscript(c), subscript(c)) {
                (Some(figure), _) if over_follows(&text[at..]) => {
                    if out.ends_with(|last: char| last.is_ascii_digit()) && !follows_superscript(&text[..at]) {
                        out.push(' ');
                    }
                    out.push(figure);
                }
                (_, Some(figure)) => out.push(figure),
                _ => out.push(c),
            },
        }
    }
    Ok(Cow::Owned(out))
}

/// Characters that show nothing, or turn the direction of what follows.
fn hidden(c: char) -> bool {
    matches!(
        c,
        '\u{ad}' | '\u{61c}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{feff}'
    )
}

/// The figure that a raised one stands for.
pub(super) fn superscript(c: char) -> Option<char> {
    match c {
        '⁰' => Some('0'),
        '¹' => Some('1'),
        '²' => Some('2'),
        '³' => Some('3'),
        '⁴'..='⁹' => char::from_digit(c as u32 - '⁴' as u32 + 4, 10),
        _ => None,
    }
}

fn subscript(c: char) -> Option<char> {
    char::from_digit((c as u32).checked_sub('₀' as u32).filter(|figure| *figure < 10)?, 10)
}

/// Whether raised figures are the upper part of a fraction: `³⁄₁₆`.
fn over_follows(text: &str) -> bool {
    text.trim_start_matches(|c| superscript(c).is_some()).starts_with(['⁄', '∕', '/'])
}

fn follows_superscript(text: &str) -> bool {
    text.ends_with(|c| superscript(c).is_some())
}

/// At most the first 40 characters, for a message.
pub(super) fn clip(text: &str) -> String {
    match text.char_indices().nth(40) {
        Some((end, _)) => format!("{} …", text[..end].trim_end()),
        None => text.to_owned(),
    }
}
