//! Columns of a plant's own table whose values are far from those of the family that it is like: mostly a wrong unit.

use super::{Draw, Family};
use crate::registry::QuantityId;
use crate::unit::Kind;

/// From how many times more, or how many times less, on a value is strange. Inch for millimetre is 25.4 times, a motor of
/// another class no more than this.
const TIMES: f64 = 8.0;

/// A column of a table all of whose values are far from what is usual.
#[derive(Debug, Clone, PartialEq)]
pub struct Strange {
    /// What stands in the column.
    pub quantity: QuantityId,
    /// The least and the largest value in it (SI).
    pub own: (f64, f64),
    /// The least and the largest value that machines of the other family have (SI).
    pub usual: (f64, f64),
    /// The other family.
    pub of: String,
}

/// The strange columns of `pool`, a table that takes the place of that of `other`.
pub(super) fn columns(pool: &[Vec<(QuantityId, f64)>], other: &Family) -> Vec<Strange> {
    let ids = pool.first().into_iter().flatten().map(|(id, _)| *id);
    // Choices are no amounts, and a temperature has its nought anywhere.
    let ids = ids.filter(|id| !matches!(id.get().kind, Kind::Choice | Kind::Temperature));
    ids.filter_map(|quantity| {
        let of = |row: &Vec<(QuantityId, f64)>| row.iter().find(|(id, _)| *id == quantity).map(|(_, value)| *value);
        let own = ends(pool.iter().filter_map(of))?;
        let drawn = other.roots.iter().filter(|(id, _)| *id == quantity).flat_map(|(_, draw)| values(draw));
        let usual = ends(other.pool.iter().filter_map(of).chain(drawn))?;
        let is_strange = own.0 > TIMES * usual.1 || own.1 * TIMES < usual.0;
        (is_strange && own.0 > 0.0 && usual.0 > 0.0).then(|| Strange { quantity, own, usual, of: other.id.clone() })
    })
    .collect()
}

fn values(draw: &Draw) -> Vec<f64> {
    match draw {
        Draw::Fixed(value) => vec![*value],
        Draw::Between(low, high) => vec![*low, *high],
        Draw::Choose(values) => values.clone(),
        Draw::About { middle, .. } => vec![*middle],
        Draw::Share { .. } => Vec::new(),
    }
}

fn ends(values: impl Iterator<Item = f64>) -> Option<(f64, f64)> {
    values.fold(None, |ends: Option<(f64, f64)>, value| {
        let (low, high) = ends.unwrap_or((value, value));
        Some((low.min(value), high.max(value)))
    })
}
