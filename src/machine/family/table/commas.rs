//! Numbers with a decimal comma in a table whose cells are parted by commas: each is two cells there.

use super::super::reader::Reader;
use super::{Cell, Column, value};
use crate::unit::Kind;

/// So many such numbers of one row are looked for, at most.
const MOST: usize = 64;

/// What a cell costs that cannot be read under its heading. One more of them is put up with in a row; beyond that, nobody
/// knows how its cells were meant.
const WRONG: usize = 100;

/// What a value costs that is of another size than its like in the other rows, or has more than three decimals. It decides
/// between ways that are equal otherwise: `1755,31,4` is 1755 r/min and 31.4 where the other ratios are 20 or so.
const STRANGE: usize = 1;

/// The least and the largest value in each column of the rows that have the right number of cells.
pub(super) type Usual = Vec<Option<(f64, f64)>>;

/// The [`Usual`] values of `rows`.
pub(super) fn usual(rows: &[Vec<Cell>], columns: &[Column]) -> Usual {
    let sound: Vec<_> = rows.iter().filter(|row| row.len() == columns.len()).collect();
    let of = |place: usize| {
        let values = sound.iter().filter_map(|row| read(&row[place], &columns[place]));
        values.fold(None, |ends: Option<(f64, f64)>, value| {
            let (least, most) = ends.unwrap_or((value, value));
            Some((least.min(value), most.max(value)))
        })
    };
    (0..columns.len()).map(of).collect()
}

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

/// The cost where there is no way: far beyond any sum, and far from running over.
const NO_WAY: usize = usize::MAX / 8;

/// The cells of `row` that may be numbers with a decimal comma, in their order, where joining them leaves as many cells as
/// there are `columns` and every joined one can be read under its heading. There are more of them than are wanted where it
/// cannot be told which ones are meant.
pub(super) fn parted(row: &[Cell], columns: &[Column], usual: &Usual, text: &str) -> Vec<Parted> {
    let wanted = row.len().saturating_sub(columns.len());
    if !(1..=MOST.min(columns.len())).contains(&wanted) {
        return Vec::new();
    }
    // `alone[at][joined]`: what the cell costs by itself when so many pairs before it are joined.
    // `together[at][joined]`: what it costs with its neighbour, if it can be read so.
    let under = |at: usize, joined: usize| {
        let place = at.checked_sub(joined)?;
        Some((columns.get(place)?, *usual.get(place)?))
    };
    let pairs: Vec<_> = row.windows(2).map(|pair| join(&pair[0], &pair[1], text)).collect();
    let places = |of: &dyn Fn(usize, usize) -> usize| -> Vec<Vec<usize>> {
        (0..row.len()).map(|at| (0..=wanted).map(|joined| of(at, joined)).collect()).collect()
    };
    let alone = places(&|at, joined| under(at, joined).map_or(WRONG, |(column, usual)| cost(&row[at], column, usual)));
    let together = places(&|at, joined| {
        let pair = pairs.get(at).and_then(Option::as_ref).filter(|_| joined < wanted);
        let cost = pair.zip(under(at, joined)).filter(|(_, (column, _))| holds_decimals(column));
        cost.and_then(|(pair, (column, usual))| cost_joined(pair, column, usual)).unwrap_or(NO_WAY)
    });
    // The least cost before and after each place: every way to join the pairs is one way through.
    let mut before = vec![vec![NO_WAY; wanted + 1]; row.len() + 1];
    let mut after = before.clone();
    before[0][0] = 0;
    after[row.len()][wanted] = 0;
    for at in 0..row.len() {
        for joined in 0..=wanted {
            let so_far = before[at][joined];
            before[at + 1][joined] = before[at + 1][joined].min(so_far + alone[at][joined]);
            if together[at][joined] < NO_WAY {
                before[at + 2][joined + 1] = before[at + 2][joined + 1].min(so_far + together[at][joined]);
            }
        }
    }
    for at in (0..row.len()).rev() {
        for joined in 0..=wanted {
            let mut least = after[at + 1][joined] + alone[at][joined];
            if together[at][joined] < NO_WAY {
                least = least.min(after[at + 2][joined + 1] + together[at][joined]);
            }
            after[at][joined] = least.min(NO_WAY);
        }
    }
    let least = before[row.len()][wanted];
    if least >= 2 * WRONG {
        return Vec::new();
    }
    let is_on_the_way = |at: usize| {
        let goes = |joined: usize| {
            together[at][joined] < NO_WAY
                && before[at][joined] + together[at][joined] + after[at + 2][joined + 1] == least
        };
        (0..wanted).any(goes)
    };
    (0..row.len()).filter(|at| is_on_the_way(*at)).filter_map(|at| pairs.get(at)?.clone()).collect()
}

/// The two cells as one number, where they stand side by side and are figures on both sides of the comma.
fn join(first: &Cell, second: &Cell, text: &str) -> Option<Parted> {
    let whole = first.text.trim_start_matches(['-', '+', '−']);
    let figures = !whole.is_empty() && whole.bytes().all(|byte| byte.is_ascii_digit());
    let decimals = second.text.bytes().take_while(u8::is_ascii_digit).count();
    let span = first.span.start..second.span.end;
    let written = format!("{},{}", first.text, second.text);
    // Without spaces or quotation marks: who parts cells with a comma and a space writes no decimals so.
    if !figures || decimals == 0 || text.get(span.clone()) != Some(&written) {
        return None;
    }
    // Exactly three figures behind may be thousands.
    let thousands = decimals == 3 && whole.len() <= 3 && !whole.starts_with('0');
    let meant = thousands.then(|| written.replacen(',', "", 1)).into_iter().chain([written.replacen(',', ".", 1)]);
    Some(Parted { meant: meant.collect(), written, span })
}

/// Whether what stands under the heading can have decimals.
fn holds_decimals(column: &Column) -> bool {
    match column {
        Column::Name => false,
        Column::Note => true,
        Column::Value(id, _) => !matches!(id.get().kind, Kind::Count | Kind::Choice),
    }
}

/// What the cell costs under this heading.
fn cost(cell: &Cell, column: &Column, usual: Option<(f64, f64)>) -> usize {
    if !matches!(column, Column::Value(..)) {
        return 0;
    }
    if cell.text.is_empty() {
        // A delimiter too many is likelier.
        return 2 * WRONG;
    }
    let Some(value) = read(cell, column) else { return WRONG };
    // Within half of the least and twice the largest, for what is above nought.
    let is_usual = usual.is_none_or(|(least, most)| (least - least.abs() / 2.0..=most + most.abs()).contains(&value));
    if is_usual { 0 } else { STRANGE }
}

/// What two cells cost that are joined, if they can be read so and it is not strange in more than one way.
fn cost_joined(pair: &Parted, column: &Column, usual: Option<(f64, f64)>) -> Option<usize> {
    let cost = |text: &String| {
        let decimals = text.split('.').nth(1).map_or(0, |rest| rest.bytes().take_while(u8::is_ascii_digit).count());
        let cell = Cell { text: text.clone(), span: pair.span.clone() };
        cost(&cell, column, usual) + if decimals > 3 { STRANGE } else { 0 }
    };
    pair.meant.iter().map(cost).min().filter(|cost| *cost <= STRANGE)
}

/// The value of the cell under this heading; nothing where it cannot be read or there is none.
fn read(cell: &Cell, column: &Column) -> Option<f64> {
    let Column::Value(id, unit) = column else { return None };
    value(cell, *id, unit.as_deref(), &mut Reader::default())
}
