//! Which items a paper asks: rows met exactly, no item twice where that can be, difficulty in its band, and no quantity twice
//! where that can be besides.

use drivecourse_machine::QuantityId;
use drivecourse_machine::chance::Stream;

/// Picks whose difficulty is taken for the mean of what a blueprint can give.
const SAMPLES: u64 = 1_000;
/// Fresh starts before a band is called out of reach.
const STARTS: u32 = 200;
/// Improving exchanges from one start.
const EXCHANGES: u32 = 60;

/// Papers in the band among which one is looked for that asks no quantity twice.
const VARIED: u32 = 20;

/// What a row can take.
#[derive(Debug, Clone)]
pub(super) struct Pool {
    /// How many it takes.
    pub(super) count: usize,
    /// From which candidates.
    pub(super) from: Vec<usize>,
}

/// The rows of a blueprint with what they can take, for one set of units.
#[derive(Debug, Clone)]
pub(super) struct Pools {
    pools: Vec<Pool>,
    /// Difficulty of each candidate.
    difficulty: Vec<f64>,
    /// What each candidate asks for, each quantity once.
    asks: Vec<Vec<QuantityId>>,
    /// The row of each place on the paper.
    rows: Vec<usize>,
    /// The mean difficulty of a paper.
    pub(super) target: f64,
    /// How far from it a paper may lie.
    pub(super) band: f64,
}

impl Pools {
    pub(super) fn new(pools: Vec<Pool>, difficulty: Vec<f64>, share: f64) -> Self {
        let rows = pools.iter().enumerate().flat_map(|(row, pool)| vec![row; pool.count]).collect();
        let asks = vec![Vec::new(); difficulty.len()];
        let mut this = Self { pools, difficulty, asks, rows, target: 0.0, band: 0.0 };
        let sum: f64 = (0..SAMPLES).map(|sample| this.sum(&this.start(&mut Stream::new(sample, "mean paper")))).sum();
        this.target = sum / SAMPLES as f64;
        // A hair for sums of decimals.
        this.band = share * this.target + 1e-9;
        this
    }

    /// With what each candidate asks for: a paper then avoids asking it twice.
    pub(super) fn asking(self, asks: Vec<Vec<QuantityId>>) -> Self {
        Self { asks, ..self }
    }

    /// How often a paper asks for what it has asked for already.
    fn repeats(&self, picked: &[usize]) -> usize {
        let mut asked: Vec<QuantityId> = picked.iter().flat_map(|candidate| self.asks[*candidate].clone()).collect();
        let all = asked.len();
        asked.sort_unstable();
        asked.dedup();
        all - asked.len()
    }

    fn sum(&self, picked: &[usize]) -> f64 {
        picked.iter().map(|candidate| self.difficulty[*candidate]).sum()
    }

    /// Of row `row`: how many it takes, and from how many items.
    pub(super) fn supply(&self, row: usize) -> (usize, usize) {
        (self.pools[row].count, self.pools[row].from.len())
    }

    /// The candidates of row `row`.
    pub(super) fn from(&self, row: usize) -> &[usize] {
        &self.pools[row].from
    }

    /// The row whose items differ most in difficulty.
    pub(super) fn widest(&self) -> usize {
        let spread = |pool: &Pool| {
            let all = pool.from.iter().map(|candidate| self.difficulty[*candidate]);
            let (least, most) =
                all.fold((f64::INFINITY, 0.0), |(least, most): (f64, f64), x| (least.min(x), most.max(x)));
            most - least
        };
        let all = self.pools.iter().map(spread).enumerate();
        all.max_by(|a, b| a.1.total_cmp(&b.1).then(b.0.cmp(&a.0))).map_or(0, |(row, _)| row)
    }

    /// A candidate for each place on the paper, its difficulty in the band; of some such papers, one that asks for the fewest
    /// quantities twice.
    ///
    /// # Errors
    /// The nearest difficulty that was found, where none lies in the band.
    pub(super) fn pick(&self, stream: &mut Stream) -> Result<Vec<usize>, f64> {
        let mut nearest = f64::INFINITY;
        let mut best: Option<(usize, Vec<usize>)> = None;
        let mut found = 0;
        for _ in 0..STARTS {
            let Some(picked) = self.in_band(stream, &mut nearest) else { continue };
            let picked = self.varied(picked, stream);
            let repeats = self.repeats(&picked);
            found += 1;
            if best.as_ref().is_none_or(|(least, _)| repeats < *least) {
                best = Some((repeats, picked));
            }
            if found == VARIED || best.as_ref().is_some_and(|(least, _)| *least == 0) {
                break;
            }
        }
        best.map(|(_, picked)| picked).ok_or(nearest)
    }

    /// From one start, a paper in the band; `nearest` is kept up.
    fn in_band(&self, stream: &mut Stream, nearest: &mut f64) -> Option<Vec<usize>> {
        let mut picked = self.start(stream);
        for _ in 0..EXCHANGES {
            let off = self.sum(&picked) - self.target;
            if off.abs() < (*nearest - self.target).abs() {
                *nearest = off + self.target;
            }
            if off.abs() <= self.band {
                return Some(picked);
            }
            let (place, candidate) = self.exchange(&picked, off, stream)?;
            picked[place] = candidate;
        }
        None
    }

    /// A paper in the band, with candidates exchanged for such as ask for less again, as long as it stays there.
    fn varied(&self, mut picked: Vec<usize>, stream: &mut Stream) -> Vec<usize> {
        for _ in 0..picked.len() {
            let repeats = self.repeats(&picked);
            if repeats == 0 {
                break;
            }
            let off = self.sum(&picked) - self.target;
            let fewer = |place: usize, new: usize| {
                let mut other = picked.clone();
                other[place] = new;
                (off + self.difficulty[new] - self.difficulty[picked[place]]).abs() <= self.band
                    && self.repeats(&other) < repeats
            };
            let Some((place, new)) =
                self.exchanges(&picked, stream).into_iter().find(|(place, new)| fewer(*place, *new))
            else {
                break;
            };
            picked[place] = new;
        }
        picked
    }

    /// The exchanges of one candidate that ask no item more often than before, from a random place on.
    fn exchanges(&self, picked: &[usize], stream: &mut Stream) -> Vec<(usize, usize)> {
        let mut uses = vec![0_u32; self.difficulty.len()];
        picked.iter().for_each(|candidate| uses[*candidate] += 1);
        let first = stream.below(picked.len());
        let turn = stream.below(usize::MAX);
        let mut out = Vec::new();
        for place in (0..picked.len()).map(|step| (first + step) % picked.len()) {
            let old = picked[place];
            let from = &self.pools[self.rows[place]].from;
            let others = (0..from.len()).map(|step| from[(turn % from.len() + step) % from.len()]);
            out.extend(others.filter(|new| *new != old && uses[*new] < uses[old]).map(|new| (place, new)));
        }
        out
    }

    /// A random choice with as few repeats as can be: a largest matching of places and candidates
    /// (augmenting paths; Kuhn 1955), what is left over filled with the candidates least used.
    fn start(&self, stream: &mut Stream) -> Vec<usize> {
        let mut orders: Vec<Vec<usize>> = self.pools.iter().map(|pool| pool.from.clone()).collect();
        orders.iter_mut().for_each(|order| stream.shuffle(order));
        let mut places: Vec<usize> = (0..self.rows.len()).collect();
        stream.shuffle(&mut places);
        let mut owner: Vec<Option<usize>> = vec![None; self.difficulty.len()];
        let mut left = Vec::new();
        for place in places {
            let mut seen = vec![false; self.difficulty.len()];
            if !self.augment(place, &orders, &mut owner, &mut seen) {
                left.push(place);
            }
        }
        let mut picked = vec![usize::MAX; self.rows.len()];
        let mut uses: Vec<usize> = owner.iter().map(|owner| usize::from(owner.is_some())).collect();
        for (candidate, place) in owner.iter().enumerate().filter_map(|(candidate, place)| Some((candidate, (*place)?)))
        {
            picked[place] = candidate;
        }
        for place in left {
            let order = &orders[self.rows[place]];
            if let Some(candidate) = order.iter().copied().min_by_key(|candidate| uses[*candidate]) {
                uses[candidate] += 1;
                picked[place] = candidate;
            }
        }
        picked
    }

    fn augment(&self, place: usize, orders: &[Vec<usize>], owner: &mut [Option<usize>], seen: &mut [bool]) -> bool {
        let order = &orders[self.rows[place]];
        if let Some(free) = order.iter().copied().find(|candidate| owner[*candidate].is_none()) {
            owner[free] = Some(place);
            return true;
        }
        for candidate in order.iter().copied() {
            if core::mem::replace(&mut seen[candidate], true) {
                continue;
            }
            let Some(other) = owner[candidate] else { continue };
            if self.augment(other, orders, owner, seen) {
                owner[candidate] = Some(place);
                return true;
            }
        }
        false
    }

    /// The exchange of one candidate that brings the sum into the band (the first found, from a
    /// random place on), or else nearest to it; never one that asks an item more often than before.
    fn exchange(&self, picked: &[usize], off: f64, stream: &mut Stream) -> Option<(usize, usize)> {
        let mut best: Option<(f64, usize, usize)> = None;
        for (place, new) in self.exchanges(picked, stream) {
            let left = (off + self.difficulty[new] - self.difficulty[picked[place]]).abs();
            if left <= self.band {
                return Some((place, new));
            }
            if left < off.abs() && best.is_none_or(|(least, ..)| left < least) {
                best = Some((left, place, new));
            }
        }
        best.map(|(_, place, new)| (place, new))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_matching_is_found_wherever_there_is_one() {
        // Only one way: the narrow rows must get theirs.
        let pools = vec![
            Pool { count: 2, from: vec![0, 1, 2, 3] },
            Pool { count: 1, from: vec![0] },
            Pool { count: 1, from: vec![0, 1] },
        ];
        let pools = Pools::new(pools, vec![1.0; 4], 0.05);
        for seed in 0..200 {
            let picked = pools.pick(&mut Stream::new(seed, "test")).unwrap();
            assert_eq!(picked[2..], [0, 1]);
            assert!(picked[..2] == [2, 3] || picked[..2] == [3, 2]);
        }
    }

    #[test]
    fn repeats_are_spread_where_they_must_be() {
        let pools = Pools::new(vec![Pool { count: 7, from: vec![0, 1, 2] }], vec![1.0; 3], 0.05);
        let picked = pools.pick(&mut Stream::new(1, "test")).unwrap();
        let mut uses = [0; 3];
        picked.iter().for_each(|candidate| uses[*candidate] += 1);
        uses.sort_unstable();
        assert_eq!(uses, [2, 2, 3]);
    }

    #[test]
    fn the_band_is_kept_and_the_choice_stays_wide() {
        let from: Vec<usize> = (0..30).collect();
        let difficulty: Vec<f64> = (0..30).map(|item| 1.0 + f64::from(item % 7)).collect();
        let pools = Pools::new(vec![Pool { count: 10, from }], difficulty.clone(), 0.05);
        let mut uses = vec![0; 30];
        for seed in 0..600 {
            let picked = pools.pick(&mut Stream::new(seed, "test")).unwrap();
            let sum: f64 = picked.iter().map(|candidate| difficulty[*candidate]).sum();
            assert!((sum - pools.target).abs() <= 0.05 * pools.target + 1e-9);
            picked.iter().for_each(|candidate| uses[*candidate] += 1);
        }
        // 200 uses each if all were equal.
        assert!(uses.iter().all(|count| (120..280).contains(count)), "{uses:?}");
    }

    #[test]
    fn no_quantity_is_asked_twice_where_that_can_be_and_the_band_is_kept() {
        use drivecourse_machine::Registry;
        let quantity = |place: usize| Registry::get().quantities().nth(place).unwrap();
        let from: Vec<usize> = (0..30).collect();
        let difficulty: Vec<f64> = (0..30).map(|item| 1.0 + f64::from(item % 7)).collect();
        // Each quantity belongs to two items, or to three besides one of another.
        let asks: Vec<Vec<QuantityId>> = (0..30)
            .map(|item| if item % 5 == 0 { vec![quantity(item / 2), quantity(20)] } else { vec![quantity(item / 2)] })
            .collect();
        let plain = Pools::new(vec![Pool { count: 10, from }], difficulty.clone(), 0.05);
        let pools = plain.clone().asking(asks);
        let mut before = 0;
        for seed in 0..300 {
            let picked = pools.pick(&mut Stream::new(seed, "test")).unwrap();
            assert_eq!(pools.repeats(&picked), 0, "seed {seed}: {picked:?}");
            let sum: f64 = picked.iter().map(|candidate| difficulty[*candidate]).sum();
            assert!((sum - pools.target).abs() <= 0.05 * pools.target + 1e-9);
            before += pools.repeats(&plain.pick(&mut Stream::new(seed, "test")).unwrap());
        }
        assert!(before > 300, "{before} repeats where nobody looks");
        // Where it cannot be, the paper is drawn all the same.
        let alike = vec![vec![quantity(0)]; 30];
        let picked = plain.asking(alike).pick(&mut Stream::new(1, "test")).unwrap();
        assert_eq!(picked.len(), 10);
    }

    #[test]
    fn a_band_out_of_reach_is_said() {
        let pools = Pools::new(vec![Pool { count: 1, from: vec![0, 1] }], vec![1.0, 9.0], 0.05);
        let nearest = pools.pick(&mut Stream::new(1, "test")).unwrap_err();
        assert!(nearest == 1.0 || nearest == 9.0);
    }
}
