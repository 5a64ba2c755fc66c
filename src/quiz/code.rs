//! Paper codes: short, readable aloud, and checked.
//!
//! A code is eight characters of data and two of check, written `7KQ4M-2HX9D`. The alphabet leaves
//! out 0, 1, I and O. The characters are elements of the field of 32, and the code is a shortened
//! Reed-Solomon code with two check characters (Reed and Solomon 1960, *Polynomial Codes over
//! Certain Finite Fields*): any two codes differ in three characters or more. So every single wrong
//! character, every two wrong characters, and every swap of two characters is caught.

use core::fmt;

use drivecourse_machine::messages;
use serde::{Deserialize, Serialize};

/// Upper-case letters and figures without 0, 1, I and O.
const ALPHABET: &[u8; 32] = b"23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
const DATA: usize = 8;
const LENGTH: usize = DATA + 2;

/// A paper's code.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(into = "String", try_from = "String")]
pub struct Code([u8; LENGTH]);

/// Why a text is no paper code.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoCode {
    /// Not ten characters of the alphabet.
    Shape,
    /// The check characters do not fit: a character is wrong, or two are swapped.
    Slip,
}

messages! { pub(crate) SAYS {
    SHAPE = "code-shape", "A paper code has ten letters and figures, such as 7KQ4M-2HX9D, and never 0, 1, I or O.";
    SLIP = "code-slip", "This paper code has a slip in it: a character is wrong, or two are swapped.";
} }

impl fmt::Display for NoCode {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Shape => SHAPE.text(),
            Self::Slip => SLIP.text(),
        })
    }
}

impl core::error::Error for NoCode {}

/// The product in the field of 32 elements, by the primitive polynomial x⁵ + x² + 1.
const fn times(a: u8, b: u8) -> u8 {
    let (mut a, mut b, mut out) = (a, b, 0);
    while b > 0 {
        if b & 1 == 1 {
            out ^= a;
        }
        b >>= 1;
        a <<= 1;
        if a & 32 > 0 {
            a ^= 0b10_0101;
        }
    }
    out
}

/// The word's polynomial at `x` (Horner); the two roots of every code are 2 and 4.
fn at(word: &[u8], x: u8) -> u8 {
    word.iter().fold(0, |sum, character| times(sum, x) ^ character)
}

impl Code {
    /// The code whose data are the lowest 40 bits of `number`.
    pub fn new(number: u64) -> Self {
        let mut word = [0; LENGTH];
        for (place, character) in word[..DATA].iter_mut().enumerate() {
            *character = (number >> (5 * (DATA - 1 - place)) & 31) as u8;
        }
        // The remainder on division by (x + 2)(x + 4) = x² + 6x + 8.
        let (mut first, mut second) = (0, 0);
        for character in &word[..DATA] {
            let top = first ^ character;
            (first, second) = (second ^ times(6, top), times(8, top));
        }
        word[DATA] = first;
        word[DATA + 1] = second;
        Self(word)
    }

    /// Reads a code as people write it: capitals, hyphens and spaces do not matter, and a 1 or I stands for L.
    ///
    /// # Errors
    /// [`NoCode`].
    pub fn read(text: &str) -> Result<Self, NoCode> {
        let mut word = [0; LENGTH];
        let mut length = 0;
        for c in text.chars().filter(|c| !c.is_whitespace() && !matches!(c, '-' | '‐' | '‑' | '–' | '−' | '.'))
        {
            let c = match c.to_ascii_uppercase() {
                '1' | 'I' => 'L',
                other => other,
            };
            let place = ALPHABET.iter().position(|known| char::from(*known) == c).ok_or(NoCode::Shape)?;
            *word.get_mut(length).ok_or(NoCode::Shape)? = place as u8;
            length += 1;
        }
        if length < LENGTH {
            return Err(NoCode::Shape);
        }
        if at(&word, 2) == 0 && at(&word, 4) == 0 { Ok(Self(word)) } else { Err(NoCode::Slip) }
    }

    /// The one of `codes` from which `text` is one wrong character or one swap away, if there is just one.
    pub fn meant(text: &str, codes: impl Iterator<Item = Self>) -> Option<Self> {
        let written: Vec<char> =
            text.chars().filter(char::is_ascii_alphanumeric).map(|c| c.to_ascii_uppercase()).collect();
        let near = |code: &Self| {
            let code: Vec<char> = code.characters().collect();
            let differ: Vec<usize> = (0..LENGTH).filter(|place| written.get(*place) != code.get(*place)).collect();
            written.len() == LENGTH
                && match differ[..] {
                    [] | [_] => true,
                    [a, b] => b == a + 1 && written[a] == code[b] && written[b] == code[a],
                    _ => false,
                }
        };
        let mut near = codes.filter(near);
        near.next().filter(|_| near.next().is_none())
    }

    fn characters(&self) -> impl Iterator<Item = char> + '_ {
        self.0.iter().map(|place| char::from(ALPHABET[usize::from(*place)]))
    }
}

impl fmt::Display for Code {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let text: String = self.characters().collect();
        write!(f, "{}-{}", &text[..LENGTH / 2], &text[LENGTH / 2..])
    }
}

impl From<Code> for String {
    fn from(code: Code) -> Self {
        code.to_string()
    }
}

impl TryFrom<String> for Code {
    type Error = NoCode;

    fn try_from(text: String) -> Result<Self, NoCode> {
        Self::read(&text)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use drivecourse_machine::chance::derive;

    fn codes() -> impl Iterator<Item = Code> {
        [0, u64::MAX, 1].into_iter().chain((0..400).map(|index| derive(3, index))).map(Code::new)
    }

    #[test]
    fn the_field_is_a_field() {
        let mut power = 1;
        let mut seen = std::collections::BTreeSet::new();
        for _ in 0..31 {
            assert!(seen.insert(power));
            power = times(power, 2);
        }
        assert_eq!(power, 1, "2 generates all 31 elements but nought");
    }

    #[test]
    fn every_wrong_character_and_every_swap_is_caught() {
        let mut tried = 0;
        for code in codes() {
            for place in 0..LENGTH {
                for other in (0..32).filter(|other| *other != code.0[place]) {
                    let mut word = code;
                    word.0[place] = other;
                    assert_eq!(Code::read(&word.to_string()), Err(NoCode::Slip), "{code} -> {word}");
                    tried += 1;
                }
            }
            for a in 0..LENGTH {
                for b in (a + 1..LENGTH).filter(|b| code.0[a] != code.0[*b]) {
                    let mut word = code;
                    word.0.swap(a, b);
                    assert_eq!(Code::read(&word.to_string()), Err(NoCode::Slip), "{code} -> {word}");
                }
            }
        }
        assert_eq!(tried, 403 * 310);
    }

    #[test]
    fn two_wrong_characters_are_caught() {
        // The code is linear: it is enough that no word of weight two is a code.
        for a in 0..LENGTH {
            for b in a + 1..LENGTH {
                for (x, y) in (1..32).flat_map(|x| (1..32).map(move |y| (x, y))) {
                    let mut word = [0; LENGTH];
                    (word[a], word[b]) = (x, y);
                    assert!(at(&word, 2) != 0 || at(&word, 4) != 0);
                }
            }
        }
    }

    #[test]
    fn codes_are_read_as_people_write_them() {
        for code in codes() {
            let text = code.to_string();
            assert_eq!(text.len(), 11);
            assert_eq!(Code::read(&text), Ok(code));
            assert_eq!(Code::read(&format!(" {} ", text.to_lowercase().replace('-', " "))), Ok(code));
            assert_eq!(Code::read(&text.replace('L', "1")), Ok(code));
        }
        for bad in ["", "7KQ4M", "7KQ4M-2HX9D7", "OOOOO-OOOOO", "ÄÖ", "=1+1"] {
            assert_eq!(Code::read(bad), Err(NoCode::Shape));
        }
    }

    #[test]
    fn the_code_that_was_meant_is_found() {
        let all: Vec<Code> = codes().collect();
        let text = all[5].to_string();
        let mut swapped: Vec<char> = text.chars().collect();
        swapped.swap(0, 1);
        let swapped: String = swapped.into_iter().collect();
        if swapped != text {
            assert_eq!(Code::meant(&swapped, all.iter().copied()), Some(all[5]));
        }
        assert_eq!(Code::meant(&format!("{}?", &text[..10]), all.iter().copied()), None);
        let last = if text.ends_with('Z') { "Y" } else { "Z" };
        assert_eq!(Code::meant(&format!("{}{last}", &text[..10]), all.iter().copied()), Some(all[5]));
    }
}
