//! Unit names as people spell them: one sorted index over every symbol and alias.

use std::sync::OnceLock;

use super::{Kind, UNITS, Unit};

/// Longest spelling that can name a unit, in bytes, once what is forgivable has been taken out.
const LONGEST: usize = 40;

/// A spelling with everything forgivable taken out, held on the stack: units are looked up for
/// every answer that is marked.
struct Plain {
    bytes: [u8; LONGEST],
    len: usize,
}

impl Plain {
    /// `None` if `text` is longer than any unit's name.
    fn new(text: &str) -> Option<Self> {
        let mut plain = Self { bytes: [0; LONGEST], len: 0 };
        // A times sign alone means "times"; between two units it is only a dot.
        let text = if text == "×" { "x" } else { text };
        for c in text.chars() {
            match c {
                ' ' | '\u{a0}' | '\u{202f}' | '.' | '-' | '·' | '⋅' | '*' | '×' | '_' => {}
                '²' => plain.push('2')?,
                'º' | '˚' => plain.push('°')?,
                c if c.is_ascii() => plain.push(c.to_ascii_lowercase())?,
                c => c.to_lowercase().try_for_each(|c| plain.push(c))?,
            }
        }
        // A plural s goes, but not the second of `mm/s`.
        if let [.., before, b's'] = plain.bytes()
            && plain.len > 3
            && *before != b'/'
        {
            plain.len -= 1;
        }
        Some(plain)
    }

    fn push(&mut self, c: char) -> Option<()> {
        let end = self.len + c.len_utf8();
        c.encode_utf8(self.bytes.get_mut(self.len..end)?);
        self.len = end;
        Some(())
    }

    fn bytes(&self) -> &[u8] {
        &self.bytes[..self.len]
    }
}

/// A plain spelling and a unit that it names.
pub(super) type Spelling = (Box<[u8]>, &'static Unit);

/// `name` made plain, for `unit`; nothing where nothing is left of it, or it is too long.
pub(super) fn spelling(name: &str, unit: &'static Unit) -> Option<Spelling> {
    let plain = Plain::new(name.trim()).filter(|plain| plain.len > 0)?;
    Some((plain.bytes().into(), unit))
}

/// Every spelling with its unit, by spelling and then in table order.
fn index() -> &'static [Spelling] {
    static INDEX: OnceLock<Vec<Spelling>> = OnceLock::new();
    INDEX.get_or_init(|| {
        let mut index: Vec<Spelling> = Vec::new();
        for unit in UNITS {
            for name in unit.aliases.iter().chain([&unit.symbol]) {
                let Some(spelling) = spelling(name, unit) else { continue };
                if !index.contains(&spelling) {
                    index.push(spelling);
                }
            }
        }
        index.sort_by(|a, b| a.0.cmp(&b.0));
        index
    })
}

/// The units that `text` may mean, in table order.
pub(super) fn meanings(text: &str) -> impl Iterator<Item = &'static Unit> {
    found(index(), text)
}

/// The units of `index` that `text` may mean.
pub(super) fn found<'i>(index: &'i [Spelling], text: &str) -> impl Iterator<Item = &'static Unit> + use<'i> {
    let found = match Plain::new(text.trim()) {
        Some(plain) if plain.len > 0 => {
            let start = index.partition_point(|(known, _)| **known < *plain.bytes());
            let count = index[start..].iter().take_while(|(known, _)| **known == *plain.bytes()).count();
            &index[start..start + count]
        }
        _ => &[],
    };
    found.iter().map(|(_, unit)| *unit)
}

/// The unit of `kind` whose spelling is nearest to `text`, if a slip or two of the finger away.
pub(super) fn nearest(text: &str, kind: Kind) -> Option<&'static Unit> {
    let plain = Plain::new(text.trim()).filter(|plain| plain.len > 1)?;
    let allowed = if plain.len > 4 { 2 } else { 1 };
    index()
        .iter()
        .filter(|(known, unit)| unit.kind == kind && known.len() > 1 && known.len().abs_diff(plain.len) <= allowed)
        .map(|(known, unit)| (slips(known, plain.bytes()), *unit))
        .filter(|(slips, _)| *slips <= allowed)
        .min_by_key(|(slips, _)| *slips)
        .map(|(_, unit)| unit)
}

/// Letters left out, put in, changed or swapped with their neighbour between `a` and `b`
/// (optimal string alignment).
fn slips(a: &[u8], b: &[u8]) -> usize {
    let mut rows = [[0_usize; LONGEST + 1]; 3];
    for (j, cell) in rows[0].iter_mut().enumerate() {
        *cell = j;
    }
    for i in 1..=a.len() {
        let (this, last, before) = (i % 3, (i + 2) % 3, (i + 1) % 3);
        rows[this][0] = i;
        for j in 1..=b.len() {
            let changed = rows[last][j - 1] + usize::from(a[i - 1] != b[j - 1]);
            let mut best = changed.min(rows[last][j] + 1).min(rows[this][j - 1] + 1);
            if i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] {
                best = best.min(rows[before][j - 2] + 1);
            }
            rows[this][j] = best;
        }
    }
    rows[a.len() % 3][b.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_spelling_names_two_units_of_one_kind() {
        for pair in index().windows(2) {
            let same = pair[0].0 == pair[1].0 && pair[0].1.kind == pair[1].1.kind;
            assert!(!same, "{} and {}", pair[0].1.symbol, pair[1].1.symbol);
        }
    }

    #[test]
    fn every_symbol_and_alias_is_found() {
        for unit in UNITS {
            for name in unit.aliases.iter().chain([&unit.symbol]).filter(|name| !name.is_empty()) {
                assert!(meanings(name).any(|found| found == unit), "{name:?} for {:?}", unit.kind);
            }
        }
    }

    #[test]
    fn slips_are_counted() {
        for (a, b, count) in
            [("", "", 0), ("mm", "mm", 0), ("inhc", "inch", 1), ("lbsf", "lbf", 1), ("kitten", "sitting", 3)]
        {
            assert_eq!(slips(a.as_bytes(), b.as_bytes()), count, "{a} {b}");
        }
        assert_eq!(nearest("inhces", Kind::Length).map(|unit| unit.symbol), Some("in"));
        assert_eq!(nearest("furlong", Kind::Length), None);
    }
}
