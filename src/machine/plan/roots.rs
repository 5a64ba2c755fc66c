//! What a machine starts from: the row of its table, what is drawn, and what its faults change.

use std::borrow::Cow;

use super::{Case, Like, Needs, Plan, share};
use crate::chance::{Stream, derive, name_hash};
use crate::family::{Draw, Family};
use crate::registry::QuantityId;
use crate::unit::Kind;

impl Plan {
    /// The row of the table that an attempt's seed draws; the table must have rows.
    pub(super) fn row(&self, seed: u64) -> usize {
        Stream::new(seed, "pool").below(self.family.pool.len())
    }

    /// Empties `case` and draws what one attempt starts from.
    pub(super) fn draw_roots(&self, seed: u64, like: Option<Like<'_>>, needs: Option<&Needs>, case: &mut Case) {
        let values = &mut case.values;
        values.fill(f64::NAN);
        let row = (!self.family.pool.is_empty()).then(|| self.row(seed));
        let mut plates = |plates: &[(QuantityId, f64)]| {
            for (id, value) in plates {
                values[id.index()] = like.map_or(*value, |like| like.values[id.index()]);
            }
        };
        row.iter().for_each(|row| plates(&self.family.pool[*row]));
        for (place, (topic, roots)) in self.topics.iter().enumerate() {
            if needs.is_some_and(|needs| !needs.topics[place]) {
                continue;
            }
            let mut stream = Stream::new(seed, topic);
            for (id, draw) in &self.family.roots[roots.clone()] {
                values[id.index()] = sample(*id, draw, &mut stream);
            }
        }
        // Of another machine's row, the one that has most of what that one has: a fault may have changed some.
        let alike = |like: Like<'_>, row: usize| {
            let has = self.family.pool[row].iter().chain(&self.built[row]);
            has.filter(|(id, value)| like.values[id.index()] == *value).count()
        };
        let built = match like {
            Some(like) => (0..self.built.len()).max_by_key(|row| alike(like, *row)),
            None => row,
        };
        for (id, value) in built.and_then(|row| self.built.get(row)).into_iter().flatten() {
            if !values[id.index()].is_nan() {
                values[id.index()] = *value;
            }
        }
        // A fault draws some roots again, as a share or no longer as one.
        let mut shares = Cow::Borrowed(&self.shares);
        for (index, fault) in case.faults.iter().enumerate() {
            let mut stream = Stream::new(derive(seed, index as u64), "fault draws");
            for drawn @ (id, draw) in &self.family.faults[*fault].draws {
                values[id.index()] = sample(*id, draw, &mut stream);
                if shares.iter().any(|(share, _)| share == id) {
                    shares.to_mut().retain(|(share, _)| share != id);
                }
                if let Some(share) = share(drawn) {
                    shares.to_mut().push(share);
                }
            }
        }
        for (share, of) in shares.iter() {
            values[share.index()] *= values[of.index()];
        }
        if let Some(Like { values: other, held }) = like {
            held.iter().for_each(|id| values[id.index()] = other[id.index()]);
        }
    }
}

/// What belongs to the build of the machine `name` and the family draws: by its name, so that an apprentice who meets the
/// machine again meets the same one.
pub(super) fn build_of(family: &Family, name: &str) -> Vec<(QuantityId, f64)> {
    let drawn = family.roots.iter().filter(|(id, draw)| id.get().built && !matches!(draw, Draw::Fixed(_)));
    let seed = name_hash(name);
    drawn.map(|(id, draw)| (*id, sample(*id, draw, &mut Stream::new(seed, id.get().id)))).collect()
}

fn sample(id: QuantityId, draw: &Draw, stream: &mut Stream) -> f64 {
    match draw {
        Draw::Fixed(value) => *value,
        Draw::Between(low, high) if id.get().kind == Kind::Count => {
            (low + stream.below((high - low) as usize + 1) as f64).round()
        }
        // The share itself; the quantity that it is a share of comes in later.
        Draw::Share { low, high, .. } | Draw::Between(low, high) => stream.between(*low, *high),
        Draw::ShareAmong { shares: choices, .. } | Draw::Choose(choices) => choices[stream.below(choices.len())],
        Draw::About { middle, spread } => middle + spread * stream.normal(),
    }
}
