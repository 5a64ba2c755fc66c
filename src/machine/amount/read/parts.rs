//! What stands before and behind the number: sign, words, unit, further numbers.

use super::number::{Number, is_vulgar, number};
use super::text::clip;
use super::{ReadError, Wanted, words};
use crate::instrument::Figures;
use crate::quantity::magnitude;
use crate::unit::{Kind, Unit};

/// Words that soften a value and leave it what it is.
const HEDGES: [&str; 9] = ["approximately", "approx.", "approx", "about", "around", "roughly", "circa", "ca.", "ca"];
/// Words before a number that make it a limit.
const LIMITS: [&str; 20] = [
    "<",
    ">",
    "≤",
    "≥",
    "±",
    "+/-",
    "+-",
    "between",
    "from",
    "at least",
    "at most",
    "up to",
    "less than",
    "more than",
    "under",
    "over",
    "max",
    "maximum",
    "min",
    "minimum",
];
/// Words after a unit that make it a limit.
const LIMITS_AFTER: [&str; 10] =
    ["max", "max.", "maximum", "min", "min.", "minimum", "or less", "or more", "at most", "at least"];
/// Marks and words between the two ends of a range.
const BETWEEN: [&str; 8] = ["-", "to", "till", "until", "through", "..", "±", "~"];

/// `text` without `about`, `~`, `=` before the number.
pub(super) fn without_hedge(text: &str) -> &str {
    if text.starts_with(|c: char| c.is_ascii_digit()) {
        return text;
    }
    let text = text.trim_start_matches(['~', '≈', '≅', '=', ' ']);
    let hedge = HEDGES.iter().find_map(|hedge| {
        let rest = strip_start(text, hedge)?;
        (hedge.ends_with('.') || rest.starts_with(' ')).then(|| rest.trim_start())
    });
    hedge.unwrap_or(text)
}

/// `text` without what an answer is often begun with, as it stands on the sheet: `n₂ = 36.3 r/min`, `sag: 11 mm`. A unit of
/// what is wanted stands at the wrong end of its number, a limit is no name, and with a second `=` nobody can tell.
pub(super) fn without_name(text: &str, kind: Kind) -> &str {
    let Some((name, rest)) = text.split_once(['=', '≈', ':']) else { return text };
    let name = name.trim_end();
    let is_name = name.starts_with(char::is_alphabetic)
        && before_second_number(name).is_none()
        && !rest.contains(['=', '≈'])
        && Unit::named(name).all(|unit| unit.kind != kind)
        && !LIMITS.iter().any(|limit| name.eq_ignore_ascii_case(limit));
    if is_name { rest.trim_start() } else { text }
}

fn strip_start<'a>(text: &'a str, start: &str) -> Option<&'a str> {
    let (head, rest) = text.split_at_checked(start.len())?;
    head.eq_ignore_ascii_case(start).then_some(rest)
}

pub(super) fn strip_end<'a>(text: &'a str, end: &str) -> Option<&'a str> {
    let (rest, tail) = text.split_at_checked(text.len().checked_sub(end.len())?)?;
    tail.eq_ignore_ascii_case(end).then_some(rest)
}

/// Whether a minus stands first, and what follows the sign.
pub(super) fn sign(text: &str) -> (bool, &str) {
    match text.as_bytes() {
        [b'-', ..] => (true, text[1..].trim_start()),
        [b'+', ..] => (false, text[1..].trim_start()),
        _ => (false, text),
    }
}

/// The unit that `rest` names, and whether it was written; `None` if it is no unit alone.
pub(super) fn unit(rest: &str, wanted: &Wanted) -> Option<Result<(&'static Unit, bool), ReadError>> {
    let kind = wanted.kind;
    let missing = || wanted.bare_unit().map(|unit| (unit, false)).ok_or(ReadError::UnitMissing { wanted: kind });
    if rest.is_empty() || rest == "." {
        return Some(missing());
    }
    let mut other = None;
    for unit in wanted.named(rest) {
        if unit.kind == kind {
            return Some(Ok((unit, true)));
        }
        other = other.or(Some(unit));
    }
    match other {
        // `75°` beside a thermometer leaves open which degrees.
        Some(unit) if unit.symbol == "°" && matches!(kind, Kind::Temperature | Kind::TemperatureRise) => {
            let scale = wanted.scale.filter(|scale| scale.kind == kind);
            Some(scale.map(|scale| (scale, true)).ok_or(ReadError::WhichDegrees { wanted: kind }))
        }
        // `35.1 pitches` is a plain number of them.
        Some(found) if found.kind == Kind::Count && kind == Kind::Ratio => Some(missing()),
        Some(found) => Some(Err(ReadError::WrongKind { found, wanted: kind })),
        None => {
            let rest = HEDGES.iter().find_map(|hedge| strip_end(rest, hedge))?;
            let apart = rest.is_empty() || rest.ends_with([' ', ',']);
            if apart { unit(rest.trim_end_matches([' ', ',']), wanted) } else { None }
        }
    }
}

/// Units that are written one after the other, each in whole numbers save the last.
const CHAINS: [&[&str]; 4] = [&["ft", "in"], &["m", "cm", "mm"], &["d", "h", "min", "s"], &["kg", "g"]];

/// `12 ft 3 in`, `12' 3-1/2"`, `1 h 30 min`: the whole in its finest unit.
pub(super) fn compound(first: Number, rest: &str, wanted: &Wanted) -> Option<(Number, &'static Unit)> {
    compound_of(first, rest, wanted, wanted.kind)
}

fn compound_of(first: Number, rest: &str, wanted: &Wanted, kind: Kind) -> Option<(Number, &'static Unit)> {
    let of_kind = |name: &str| wanted.named(name).find(|unit| unit.kind == kind);
    let (name, mut rest) = at_next_number(rest)?;
    let name = name.trim_end();
    let name = name.strip_suffix([',', '-', '&']).or_else(|| words::without_and(name, wanted)).unwrap_or(name);
    let mut unit = of_kind(name)?;
    let mut total = first;
    loop {
        if total.shown != Figures::Places(0) {
            return None;
        }
        let (next, after) = number(rest, wanted.decimal).ok()?;
        let (name, following) = match at_next_number(after) {
            Some((name, following)) if of_kind(name).is_some() => (name, Some(following)),
            _ => (after, None),
        };
        let name = name.trim();
        let finer = match of_kind(name) {
            // The inch mark is often left out.
            None if matches!(name, "" | ".") && unit.symbol == "ft" => Unit::find(kind, "in")?,
            found => found?,
        };
        let place = |unit: &Unit| {
            let at = |chain: &[&str]| chain.iter().position(|symbol| *symbol == unit.symbol);
            CHAINS.iter().enumerate().find_map(|(index, chain)| Some((index, at(chain)?)))
        };
        let ((chain, above), (same, below)) = (place(unit)?, place(finer)?);
        // Every unit of a chain is a whole number of those below.
        let parts = (unit.size() / finer.size()).round();
        if chain != same || above >= below || next.value >= parts {
            return None;
        }
        let value = total.value * parts + next.value;
        total = Number { value, figures: figures_of(value, &next), shown: next.shown };
        unit = finer;
        match following {
            Some(following) => rest = following,
            None => return Some((total, unit)),
        }
    }
}

/// Figures of a whole that ends where `last` ends.
fn figures_of(value: f64, last: &Number) -> u8 {
    let step = last.shown.step(last.value);
    if step > 0.0 && value > 0.0 { (magnitude(value) - magnitude(step) + 1).clamp(1, 17) as u8 } else { last.figures }
}

/// `text` split where the next number begins.
fn at_next_number(text: &str) -> Option<(&str, &str)> {
    let at = text.find(|c: char| c.is_ascii_digit() || is_vulgar(c))?;
    Some(text.split_at(at))
}

/// Why `rest`, behind a good number, is neither a unit nor a further part of the amount.
pub(super) fn explain(first: Number, rest: &str, whole: &str, wanted: &Wanted) -> ReadError {
    let kind = wanted.kind;
    if let Some(between) = before_second_number(rest) {
        let between = between.trim_end();
        if BETWEEN.iter().any(|mark| {
            let lead = strip_end(between, mark);
            lead.is_some_and(|lead| !mark.ends_with('o') || lead.is_empty() || lead.ends_with(' '))
        }) {
            return ReadError::Range { wanted: kind };
        }
        let found = wanted.named(at_next_number(rest).map_or("", |(name, _)| name)).next();
        if let Some(found) = found.filter(|found| compound_of(first, rest, wanted, found.kind).is_some()) {
            return ReadError::WrongKind { found, wanted: kind };
        }
        return ReadError::SeveralNumbers { wanted: kind };
    }
    let limit = LIMITS_AFTER.iter().any(|limit| {
        strip_end(rest, limit).is_some_and(|unit| unit.is_empty() || (unit.ends_with(' ') && is_unit(unit)))
    });
    if limit {
        return ReadError::Range { wanted: kind };
    }
    if !rest.contains(char::is_alphabetic) {
        return ReadError::NotANumber { what: clip(whole), wanted: kind };
    }
    let first_word = || {
        let word = rest.split([' ', ',', '(']).next()?;
        wanted.named(word).find(|unit| unit.kind == kind)
    };
    let near = first_word().or_else(|| Unit::nearest(kind, rest));
    ReadError::UnknownUnit { written: clip(rest), suggestion: near.map(|unit| unit.symbol), wanted: kind }
}

fn is_unit(text: &str) -> bool {
    Unit::named(text).next().is_some()
}

/// What stands before a figure that begins a number of its own, not one that belongs to a unit (`mm2`).
fn before_second_number(text: &str) -> Option<&str> {
    let mut last = ' ';
    for (at, c) in text.char_indices() {
        if (c.is_ascii_digit() || is_vulgar(c)) && !last.is_alphanumeric() && last != '^' {
            return Some(&text[..at]);
        }
        last = c;
    }
    None
}

/// Why a text that does not begin with a number holds none that can be taken.
pub(super) fn no_number(text: &str, kind: Kind) -> ReadError {
    let first = text.split(' ').next().unwrap_or(text);
    if ["nan", "inf", "infinity", "infinite", "∞"].iter().any(|word| first.eq_ignore_ascii_case(word)) {
        return ReadError::NotFinite { wanted: kind };
    }
    if let Some((before, _)) = at_next_number(text) {
        if LIMITS
            .iter()
            .any(|limit| strip_start(before, limit).is_some_and(|rest| !rest.starts_with(char::is_alphabetic)))
        {
            return ReadError::Range { wanted: kind };
        }
        let name = before.trim_end_matches([' ', '=', ':', '-', '+', '.']);
        let mut found = Unit::named(name);
        if let Some(first) = found.next() {
            let found = if first.kind == kind { first } else { found.find(|unit| unit.kind == kind).unwrap_or(first) };
            return ReadError::UnitFirst { found, wanted: kind };
        }
    }
    ReadError::NotANumber { what: clip(text), wanted: kind }
}
