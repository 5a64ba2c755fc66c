//! Values of a plant's own table that are far from those of the family that it is like: a whole column, mostly in a wrong
//! unit, or one machine's, mostly a slip.

use super::{Draw, Family};
use crate::registry::QuantityId;
use crate::unit::Kind;

/// From how many times more, or how many times less, on a value is strange. Inch for millimetre is 25.4 times, a motor of
/// another class no more than this.
const TIMES: f64 = 8.0;

/// The same for one machine, where the others of the table are as usual, or are all alike another way.
const TIMES_ALONE: f64 = 4.0;

/// A column of a table all of whose values are far from what is usual, or one machine's value in it.
#[derive(Debug, Clone, PartialEq)]
pub struct Strange {
    /// What stands in the column.
    pub quantity: QuantityId,
    /// The row, where it is only this one.
    pub row: Option<usize>,
    /// The least and the largest value that is strange (SI).
    pub own: (f64, f64),
    /// The least and the largest value that machines of the other family have, and the other ones of the table where only
    /// one is strange (SI).
    pub usual: (f64, f64),
    /// The other family.
    pub of: String,
}

/// What is strange in `pool`, a table that takes the place of that of `other`.
pub(super) fn values(pool: &[Vec<(QuantityId, f64)>], other: &Family) -> Vec<Strange> {
    let ids = pool.first().into_iter().flatten().map(|(id, _)| *id);
    // Choices are no amounts, and a temperature has its nought anywhere.
    let ids = ids.filter(|id| !matches!(id.get().kind, Kind::Choice | Kind::Temperature));
    let mut out = Vec::new();
    for quantity in ids {
        let of = |row: &Vec<(QuantityId, f64)>| row.iter().find(|(id, _)| *id == quantity).map(|(_, value)| *value);
        let drawn = other.roots.iter().filter(|(id, _)| *id == quantity).flat_map(|(_, draw)| drawn(draw));
        let Some(usual) = ends(other.pool.iter().filter_map(of).chain(drawn)) else { continue };
        let mut strange = |row: Option<usize>, own: Option<(f64, f64)>, usual: (f64, f64), times: f64| {
            let Some(own) = own.filter(|own| own.0 > 0.0 && usual.0 > 0.0) else { return false };
            let is_strange = own.0 > times * usual.1 || own.1 * times < usual.0;
            if is_strange {
                out.push(Strange { quantity, row, own, usual, of: other.id.clone() });
            }
            is_strange
        };
        if strange(None, ends(pool.iter().filter_map(of)), usual, TIMES) {
            continue;
        }
        for (place, row) in pool.iter().enumerate() {
            let others = pool.iter().enumerate().filter(|(other, _)| *other != place).filter_map(|(_, row)| of(row));
            let usual = ends(others.chain([usual.0, usual.1])).unwrap_or(usual);
            strange(Some(place), of(row).map(|value| (value, value)), usual, TIMES_ALONE);
        }
    }
    // A column says more than a cell.
    out.sort_by_key(|strange| strange.row.is_some());
    out
}

impl Family {
    /// Values that the family's own file fixes or draws and that are far from those of `other`.
    pub fn strange_beside(&self, other: &Self) -> Vec<Strange> {
        let own = self.roots.iter().filter(|(id, _)| self.place(*id, None).is_some());
        let own = own.filter(|(id, _)| !matches!(id.get().kind, Kind::Choice | Kind::Temperature));
        let strange = |(quantity, draw): &(QuantityId, Draw)| {
            let own = ends(drawn(draw).into_iter())?;
            let of = |row: &Vec<(QuantityId, f64)>| row.iter().find(|(id, _)| id == quantity).map(|(_, value)| *value);
            let roots = other.roots.iter().filter(|(id, _)| id == quantity).flat_map(|(_, draw)| drawn(draw));
            let usual = ends(other.pool.iter().filter_map(of).chain(roots))?;
            let is_strange = own.0 > 0.0 && usual.0 > 0.0 && (own.0 > TIMES * usual.1 || own.1 * TIMES < usual.0);
            is_strange.then(|| Strange { quantity: *quantity, row: None, own, usual, of: other.id.clone() })
        };
        own.filter_map(strange).collect()
    }
}

/// What a quantity may be drawn as.
fn drawn(draw: &Draw) -> Vec<f64> {
    match draw {
        Draw::Fixed(value) => vec![*value],
        Draw::Between(low, high) => vec![*low, *high],
        Draw::Choose(values) => values.clone(),
        Draw::About { middle, .. } => vec![*middle],
        Draw::Share { .. } | Draw::ShareAmong { .. } => Vec::new(),
    }
}

fn ends(values: impl Iterator<Item = f64>) -> Option<(f64, f64)> {
    values.fold(None, |ends: Option<(f64, f64)>, value| {
        let (low, high) = ends.unwrap_or((value, value));
        Some((low.min(value), high.max(value)))
    })
}
