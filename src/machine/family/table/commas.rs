//! Numbers with a decimal comma in a table whose cells are parted by commas: each is two cells there.

use super::super::read::Reader;
use super::{Cell, Column, value};
use crate::unit::Kind;

/// So many such numbers of one row are looked for, at most.
const MOST: usize = 64;

/// So many other cells of a row may be wrong, at most; beyond that, nobody knows how its cells were meant.
const OTHERS: usize = 1;

/// Two neighbouring cells that may be one number.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Parted {
    /// As it stands in the table: `31,4`.
    pub(super) written: String,
    /// What may be meant: `31.4`, or `1350` and `1.35`.
    pub(super) meant: Vec<String>,
    /// From the first cell to the end of the second.
    pub(super) span: core::ops::Range<usize>,
}

/// The cells of `row` that may be numbers with a decimal comma, in their order, where joining them leaves as many cells as
/// there are `columns` and every joined one can be read under its heading. There are more of them than are wanted where it
/// cannot be told which ones are meant.
pub(super) fn parted(row: &[Cell], columns: &[Column], text: &str) -> Vec<Parted> {
    let wanted = row.len().saturating_sub(columns.len());
    if !(1..=MOST.min(columns.len())).contains(&wanted) {
        return Vec::new();
    }
    // `alone[at][joined]`: whether the cell is wrong by itself when so many pairs before it are joined.
    // `together[at][joined]`: whether it can be read with its neighbour.
    let under = |at: usize, joined: usize| at.checked_sub(joined).and_then(|place| columns.get(place));
    let pairs: Vec<_> = row.windows(2).map(|pair| join(&pair[0], &pair[1], text)).collect();
    let alone = |at: usize, joined: usize| under(at, joined).is_none_or(|column| !is_sound(&row[at], column));
    let together = |at: usize, joined: usize| {
        let pair = pairs.get(at).and_then(Option::as_ref);
        pair.zip(under(at, joined)).is_some_and(|(pair, column)| holds_decimals(column) && is_sound(pair, column))
    };
    let table = |test: &dyn Fn(usize, usize) -> bool| -> Vec<Vec<bool>> {
        (0..row.len()).map(|at| (0..=wanted).map(|joined| test(at, joined)).collect()).collect()
    };
    let (alone, together) = (table(&alone), table(&together));
    // The fewest wrong cells before and after each place: every way to join the pairs is one way through.
    const NO_WAY: usize = usize::MAX / 4;
    let mut before = vec![vec![NO_WAY; wanted + 1]; row.len() + 1];
    let mut after = before.clone();
    before[0][0] = 0;
    after[row.len()][wanted] = 0;
    for at in 0..row.len() {
        for joined in 0..=wanted {
            let so_far = before[at][joined];
            before[at + 1][joined] = before[at + 1][joined].min(so_far + usize::from(alone[at][joined]));
            if together[at][joined] && joined < wanted {
                before[at + 2][joined + 1] = before[at + 2][joined + 1].min(so_far);
            }
        }
    }
    for at in (0..row.len()).rev() {
        for joined in 0..=wanted {
            let mut fewest = after[at + 1][joined] + usize::from(alone[at][joined]);
            if together[at][joined] && joined < wanted {
                fewest = fewest.min(after[at + 2][joined + 1]);
            }
            after[at][joined] = fewest;
        }
    }
    let fewest = before[row.len()][wanted];
    if fewest > OTHERS {
        return Vec::new();
    }
    let is_on_the_way = |at: usize| {
        (0..wanted).any(|joined| together[at][joined] && before[at][joined] + after[at + 2][joined + 1] == fewest)
    };
    (0..row.len()).filter(|at| is_on_the_way(*at)).filter_map(|at| told(pairs.get(at)?.as_ref()?, text)).collect()
}

/// The two cells as one with a decimal point, where they stand side by side and are figures on both sides of the comma.
fn join(first: &Cell, second: &Cell, text: &str) -> Option<Cell> {
    let whole = first.text.strip_prefix(['-', '+', '−']).unwrap_or(&first.text);
    let figures = !whole.is_empty() && whole.bytes().all(|byte| byte.is_ascii_digit());
    let decimals = second.text.starts_with(|c: char| c.is_ascii_digit());
    let span = first.span.start..second.span.end;
    // Without spaces or quotation marks: who parts cells with a comma and a space writes no decimals so.
    let side_by_side = text.get(span.clone()) == Some(&format!("{},{}", first.text, second.text));
    (figures && decimals && side_by_side).then(|| Cell { text: format!("{}.{}", first.text, second.text), span })
}

/// What is told of a joined cell.
fn told(pair: &Cell, text: &str) -> Option<Parted> {
    let written = text.get(pair.span.clone())?.to_owned();
    let (whole, rest) = written.split_once(',')?;
    let figures = rest.bytes().take_while(u8::is_ascii_digit).count();
    // Exactly three figures behind may be thousands.
    let thousands = figures == 3 && whole.len() <= 3 && !whole.starts_with('0');
    let thousands = thousands.then(|| format!("{whole}{rest}"));
    Some(Parted { meant: thousands.into_iter().chain([pair.text.clone()]).collect(), written, span: pair.span.clone() })
}

/// Whether what stands under the heading can have decimals.
fn holds_decimals(column: &Column) -> bool {
    match column {
        Column::Name => false,
        Column::Note => true,
        Column::Value(id, _) => !matches!(id.get().kind, Kind::Count | Kind::Choice),
    }
}

/// Whether the cell can be read under this heading.
fn is_sound(cell: &Cell, column: &Column) -> bool {
    match column {
        Column::Name | Column::Note => true,
        Column::Value(id, unit) => value(cell, *id, unit.as_deref(), &mut Reader::default()).is_some(),
    }
}
