//! One number without sign or unit: decimal, grouped, fraction, mixed fraction, power of ten.

use super::{DecimalMark, text::superscript};
use crate::decimal;
use crate::instrument::Figures;
use crate::quantity::{magnitude, ten_to};

/// A number as it was written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Number {
    pub(super) value: f64,
    pub(super) figures: u8,
    pub(super) shown: Figures,
}

/// Why there is no number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Fault {
    /// The text does not begin with one.
    Missing,
    /// It begins with something like one.
    Malformed,
    DivisionByZero,
    NotFinite,
}

/// The number at the start of `text`, and what follows it.
pub(super) fn number(text: &str, mark: DecimalMark) -> Result<(Number, &str), Fault> {
    if let Some((over, under, rest)) = vulgar(text) {
        return Ok((fraction(0.0, over, under)?, rest));
    }
    let figures = Scanned::new(text)?;
    let places = figures.places(mark)?;
    let token = &text[..figures.end];
    let rest = &text[figures.end..];
    if places.is_none() {
        if let Some((under, rest)) = over(rest)? {
            return Ok((fraction(0.0, figures.whole(), under)?, rest));
        }
        if let Some((top, under, rest)) = mixed(rest)? {
            // More than one in the fraction is a slip, or a range: 3-19/16.
            let proper = top < under || under == 0.0;
            return if proper { Ok((fraction(figures.whole(), top, under)?, rest)) } else { Err(Fault::Malformed) };
        }
    } else if over(rest)?.is_some() {
        return Err(Fault::Malformed);
    }
    // `10^3` alone is a one with three noughts.
    if token == "10"
        && let Some((power, rest)) = exponent(rest)
    {
        return Ok((decimal("1", 1, 0, power)?, rest));
    }
    let (e, rest) = letter_e(rest);
    let (power, rest) = times_ten(rest).map_or((None, rest), |(power, rest)| (Some(power), rest));
    let decimals = places.unwrap_or(0);
    let scaled = e.is_some() || power.is_some();
    let exponent = e.unwrap_or(0).saturating_add(power.unwrap_or(0));
    let mut number = figures.decimal(token, decimals, exponent)?;
    if !scaled {
        number.shown = Figures::Places(u8::try_from(decimals).unwrap_or(u8::MAX));
    }
    Ok((number, rest))
}

/// Figures and marks as they stand, before it is decided which mark means what.
#[derive(Default)]
struct Scanned {
    end: usize,
    count: usize,
    leading_noughts: usize,
    /// The first figures, so many as a double holds without loss.
    value: u64,
    commas: usize,
    points: usize,
    spaces: usize,
    last_mark: u8,
    /// Figures before the last mark.
    before_last: usize,
    /// Whether every mark so far stands where a group mark would.
    grouped: bool,
    first_is_nought: bool,
}

/// So many figures are exact in a double.
const EXACT: usize = 15;

impl Scanned {
    fn new(text: &str) -> Result<Self, Fault> {
        let bytes = text.as_bytes();
        let digit = |at: usize| bytes.get(at).is_some_and(u8::is_ascii_digit);
        let mut s = Self { grouped: true, ..Self::default() };
        while let Some(&byte) = bytes.get(s.end) {
            match byte {
                b'0'..=b'9' => {
                    let figure = u64::from(byte - b'0');
                    s.first_is_nought |= s.count == 0 && figure == 0;
                    s.count += 1;
                    s.leading_noughts += usize::from(figure == 0 && s.leading_noughts + 1 == s.count);
                    if s.count <= EXACT {
                        s.value = s.value * 10 + figure;
                    }
                }
                b',' | b'.' if digit(s.end + 1) => s.mark(byte),
                // A full stop after the number, but not the first of several: 10..12.
                b'.' if s.count > 0 && s.marks() == 0 && bytes.get(s.end + 1) != Some(&b'.') => s.mark(byte),
                b' ' | b'\'' if s.commas + s.points == 0 && s.group_may_end() && group(&bytes[s.end + 1..]) => {
                    s.mark(byte);
                }
                _ => break,
            }
            s.end += 1;
        }
        if s.count == 0 { Err(Fault::Missing) } else { Ok(s) }
    }

    fn marks(&self) -> usize {
        self.commas + self.points + self.spaces
    }

    fn group_may_end(&self) -> bool {
        if self.marks() == 0 { (1..=3).contains(&self.count) } else { self.count - self.before_last == 3 }
    }

    fn mark(&mut self, byte: u8) {
        self.grouped &= self.group_may_end();
        match byte {
            b',' => self.commas += 1,
            b'.' => self.points += 1,
            _ => self.spaces += 1,
        }
        self.last_mark = byte;
        self.before_last = self.count;
    }

    /// How many figures are decimals: the table at [`DecimalMark`].
    fn places(&self, mark: DecimalMark) -> Result<Option<usize>, Fault> {
        let after = self.count - self.before_last;
        let decimals = Ok(Some(after));
        let grouped = self.grouped && after == 3 && !self.first_is_nought;
        match (self.commas, self.points) {
            (0, 0) => Ok(None),
            // Spaces part the groups already, or one mark parts the groups and the other the decimals.
            (1, 0) | (0, 1) if self.spaces > 0 => decimals,
            (1.., 1) if self.spaces == 0 && self.last_mark == b'.' && self.grouped => decimals,
            (1, 1..) if self.spaces == 0 && self.last_mark == b',' && self.grouped => decimals,
            (1, 0) if mark == DecimalMark::Comma || !grouped => decimals,
            (0, 1) if mark == DecimalMark::Point || !grouped => decimals,
            (1.., 0) | (0, 1..) if self.spaces == 0 && grouped => Ok(None),
            _ => Err(Fault::Malformed),
        }
    }

    /// As a whole number; only asked where there are no decimals.
    fn whole(&self) -> f64 {
        if self.count <= EXACT { self.value as f64 } else { f64::INFINITY }
    }

    fn decimal(&self, token: &str, places: usize, power: i32) -> Result<Number, Fault> {
        let figures = (self.count - self.leading_noughts).max(1);
        let exponent = power.saturating_sub(i32::try_from(places).unwrap_or(i32::MAX));
        let small = self.count <= EXACT && exponent.unsigned_abs() <= 22;
        if !small {
            let figures_only: String = token.chars().filter(char::is_ascii_digit).collect();
            return decimal(&figures_only, figures, 0, exponent);
        }
        // Both are exact, so one multiplication or division rounds correctly.
        let value = self.value as f64;
        let value = if exponent < 0 { value / ten_to(-exponent) } else { value * ten_to(exponent) };
        Ok(significant(value, figures))
    }
}

/// Whether exactly three figures follow, and they are not the upper part of a fraction.
fn group(bytes: &[u8]) -> bool {
    let count = bytes.iter().take(4).take_while(|byte| byte.is_ascii_digit()).count();
    count == 3 && !(bytes.get(3) == Some(&b'/') && bytes.get(4).is_some_and(u8::is_ascii_digit))
}

/// Any number of figures, rounded correctly.
fn decimal(figures_only: &str, figures: usize, places: i32, power: i32) -> Result<Number, Fault> {
    let value = decimal::value(figures_only, power.saturating_sub(places)).ok_or(Fault::Malformed)?;
    let lost = value == 0.0 && figures_only.bytes().any(|figure| figure != b'0');
    if value.is_finite() && !lost { Ok(significant(value, figures)) } else { Err(Fault::NotFinite) }
}

fn significant(value: f64, figures: usize) -> Number {
    let figures = u8::try_from(figures).unwrap_or(u8::MAX);
    Number { value, figures, shown: Figures::Significant(figures) }
}

/// `whole` and `over`/`under`.
fn fraction(whole: f64, over: f64, under: f64) -> Result<Number, Fault> {
    if under == 0.0 {
        return Err(Fault::DivisionByZero);
    }
    let value = whole + over / under;
    if !value.is_finite() {
        return Err(Fault::NotFinite);
    }
    // One part is the last figure, so to say: 7/16 is known about as well as 0.44.
    let figures = if value == 0.0 { 1 } else { (magnitude(value) - magnitude(1.0 / under) + 1).clamp(1, 17) as u8 };
    let shown = if (1.0..=f64::from(u16::MAX)).contains(&under) {
        Figures::Fraction(under as u16)
    } else {
        Figures::Significant(figures)
    };
    Ok(Number { value, figures, shown })
}

/// A fraction that is one character.
fn vulgar(text: &str) -> Option<(f64, f64, &str)> {
    let first = text.chars().next().filter(|c| !c.is_ascii())?;
    let (over, under) = match first {
        '½' => (1, 2),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '¼' => (1, 4),
        '¾' => (3, 4),
        '⅕'..='⅘' => (first as u32 - '⅕' as u32 + 1, 5),
        '⅙' => (1, 6),
        '⅚' => (5, 6),
        '⅐' => (1, 7),
        '⅛'..='⅞' => ((first as u32 - '⅛' as u32) * 2 + 1, 8),
        '⅑' => (1, 9),
        '⅒' => (1, 10),
        _ => return None,
    };
    Some((f64::from(over), f64::from(under), &text[first.len_utf8()..]))
}

/// Whether `c` is a fraction in itself.
pub(super) fn is_vulgar(c: char) -> bool {
    vulgar(c.encode_utf8(&mut [0; 4])).is_some()
}

/// `/16` and what follows, space around the stroke or not.
fn over(text: &str) -> Result<Option<(f64, &str)>, Fault> {
    let Some(under) = text.trim_start().strip_prefix('/') else { return Ok(None) };
    part(under.trim_start())
}

/// The fraction after a whole number: ` 3/16`, `-3/16`, `⅜`, ` ⅜`, `-⅜`, ` and 3/16`.
fn mixed(text: &str) -> Result<Option<(f64, f64, &str)>, Fault> {
    let after = match text.strip_prefix('-') {
        Some(after) => after,
        None => {
            let spaced = text.trim_start();
            spaced.strip_prefix("and ").or_else(|| spaced.strip_prefix("& ")).unwrap_or(spaced)
        }
    };
    if let Some(found) = vulgar(after) {
        return Ok(Some(found));
    }
    if after.len() == text.len() {
        return Ok(None);
    }
    let Some((top, rest)) = part(after)? else { return Ok(None) };
    Ok(over(rest)?.map(|(under, rest)| (top, under, rest)))
}

/// Figures only, and what follows them.
fn part(text: &str) -> Result<Option<(f64, &str)>, Fault> {
    let end = text.bytes().take_while(u8::is_ascii_digit).count();
    match end {
        0 => Ok(None),
        1..=EXACT => Ok(decimal::value(&text[..end], 0).map(|value| (value, &text[end..]))),
        _ => Err(Fault::NotFinite),
    }
}

/// `e3`, `E-3`, straight behind the number.
fn letter_e(text: &str) -> (Option<i32>, &str) {
    match text.strip_prefix(['e', 'E']).and_then(signed) {
        Some((power, rest)) => (Some(power), rest),
        None => (None, text),
    }
}

/// `× 10^3`, `x10³`, `*10^-3`, `·10⁻³`.
fn times_ten(text: &str) -> Option<(i32, &str)> {
    let after = text.trim_start().strip_prefix(['×', 'x', 'X', '*', '·', '⋅'])?;
    exponent(after.trim_start().strip_prefix("10")?)
}

/// `^3` or `³`.
fn exponent(text: &str) -> Option<(i32, &str)> {
    if let Some(after) = text.strip_prefix('^') {
        return signed(after);
    }
    let (negative, mut rest) = match text.strip_prefix('⁻') {
        Some(rest) => (true, rest),
        None => (false, text.strip_prefix('⁺').unwrap_or(text)),
    };
    let mut power = None;
    while let Some((c, figure)) = rest.chars().next().and_then(|c| Some((c, superscript(c)?.to_digit(10)?))) {
        power = Some(add_figure(power.unwrap_or(0), figure));
        rest = &rest[c.len_utf8()..];
    }
    power.map(|power| (if negative { -power } else { power }, rest))
}

/// A whole number with or without sign.
fn signed(text: &str) -> Option<(i32, &str)> {
    let (negative, text) = match text.strip_prefix('-') {
        Some(rest) => (true, rest),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    let end = text.bytes().take_while(u8::is_ascii_digit).count();
    if end == 0 {
        return None;
    }
    let power = text.bytes().take(end).fold(0, |power, byte| add_figure(power, u32::from(byte - b'0')));
    Some((if negative { -power } else { power }, &text[end..]))
}

/// Exponents beyond any double stay there instead of overflowing.
fn add_figure(power: i32, figure: u32) -> i32 {
    (power * 10 + figure as i32).min(100_000)
}
