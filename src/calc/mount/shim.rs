//! Shim packs: the fewest leaves of a stock list that fill a gap.

use crate::error::within;
use crate::units::Length;
use crate::units::length::{inch, millimeter};
use crate::{Error, Result};

/// Most leaves a pack may hold: more of them act as a spring under the foot (common practice, no source).
pub const MOST_LEAVES: usize = 5;

/// Most entries a stock list may hold.
pub const MOST_STOCK: usize = 32;

/// Thinnest leaf worked with, in metres.
const THINNEST: f64 = 1e-6;

/// Thickest gap, tolerance or leaf worked with, in metres.
const THICKEST: f64 = 0.1;

/// Precut leaves in metric sizes, thinnest first.
///
/// # Source
/// Common practice, no source: suppliers' lists differ.
pub fn metric_leaves() -> [Length; 10] {
    [0.025, 0.05, 0.10, 0.20, 0.25, 0.40, 0.50, 0.70, 1.00, 2.00].map(Length::new::<millimeter>)
}

/// Precut leaves in inch sizes, thinnest first.
///
/// # Source
/// Common practice, no source: suppliers' lists differ.
pub fn inch_leaves() -> [Length; 13] {
    [0.001, 0.002, 0.003, 0.004, 0.005, 0.010, 0.015, 0.020, 0.025, 0.050, 0.075, 0.100, 0.125].map(Length::new::<inch>)
}

/// A pack of leaves for one foot, by [`shim_pack`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pack {
    leaves: [Length; MOST_LEAVES],
    count: usize,
    total: Length,
}

impl Pack {
    /// The leaves, thickest first, each as it stands in the stock list.
    pub fn leaves(&self) -> &[Length] {
        &self.leaves[..self.count]
    }

    /// Number of leaves; nought when the gap already lies within the tolerance.
    pub const fn count(&self) -> usize {
        self.count
    }

    /// Thickness of the whole pack, to the nanometre.
    pub const fn total(&self) -> Length {
        self.total
    }
}

/// Best pack of leaves for a gap, as leaves and total thickness.
///
/// Of all packs whose total lies within `tolerance` of the gap (either side, ends included), it takes the one with
/// the fewest leaves; of these the one nearest the gap; of these the one with the thickest first leaf, then second
/// leaf, and so on. A leaf may be used more than once. Thicknesses are rounded to the nanometre first, so that ties
/// are true ties in millimetres and in inches.
///
/// # Source
/// Few thick leaves rather than many thin ones: common practice, no source. The search is exact.
///
/// # Errors
/// * [`Error::NoSolution`] when no pack of at most `most_leaves` comes within the tolerance.
/// * [`Error::OutOfRange`] when the gap or tolerance is not 0 to 100 mm, a leaf not 0.001 to 100 mm, `most_leaves`
///   not 1 to [`MOST_LEAVES`], or the stock list has not 1 to [`MOST_STOCK`] entries.
///
/// # Example
/// ```
/// use drivecourse_calc::mount::{metric_leaves, shim_pack};
/// use drivecourse_calc::units::{Length, length::millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let pack = shim_pack(mm(0.62), &metric_leaves(), mm(0.025), 4)?;
/// assert_eq!(pack.leaves(), [mm(0.50), mm(0.10)]); // as near as 0.40 and 0.20, with the thicker first leaf
/// assert!((pack.total().get::<millimeter>() - 0.60).abs() < 1e-9);
/// # Ok::<(), drivecourse_calc::Error>(())
/// ```
pub fn shim_pack(gap: Length, stock: &[Length], tolerance: Length, most_leaves: usize) -> Result<Pack> {
    within("gap", gap.value, 0.0, THICKEST)?;
    within("tolerance", tolerance.value, 0.0, THICKEST)?;
    within("most leaves", most_leaves as f64, 1.0, MOST_LEAVES as f64)?;
    within("stock entries", stock.len() as f64, 1.0, MOST_STOCK as f64)?;
    let mut sorted = [Leaf::default(); MOST_STOCK];
    for (held, &thickness) in stock.iter().enumerate() {
        within("leaf", thickness.value, THINNEST, THICKEST)?;
        let leaf = Leaf { nanometres: nanometres(thickness), thickness };
        let place = sorted[..held].iter().position(|other| other.nanometres < leaf.nanometres).unwrap_or(held);
        sorted.copy_within(place..held, place + 1);
        sorted[place] = leaf;
    }

    let target = nanometres(gap);
    let mut search = Search {
        stock: &sorted[..stock.len()],
        thinnest: sorted[stock.len() - 1].nanometres,
        within: nanometres(tolerance),
        chosen: [0; MOST_LEAVES],
        best: None,
    };
    if target <= search.within {
        return Ok(Pack { leaves: [Length::default(); MOST_LEAVES], count: 0, total: Length::default() });
    }
    for count in 1..=most_leaves {
        search.fill(0, count, 0, target);
        if let Some(places) = search.best {
            let mut leaves = [Length::default(); MOST_LEAVES];
            let mut total = 0;
            for (leaf, &place) in leaves.iter_mut().zip(&places[..count]) {
                *leaf = sorted[place].thickness;
                total += sorted[place].nanometres;
            }
            let total = Length::new::<millimeter>(total as f64 / 1e6);
            return Ok(Pack { leaves, count, total });
        }
    }
    Err(Error::none("shim pack"))
}

/// A thickness in whole nanometres: 0.001 in is 25 400 of them, so both unit systems come out exact.
fn nanometres(thickness: Length) -> i64 {
    (thickness.value * 1e9).round() as i64
}

#[derive(Debug, Clone, Copy, Default)]
struct Leaf {
    nanometres: i64,
    thickness: Length,
}

/// Walks the packs of one count in order, thickest leaves first, keeping the nearest.
struct Search<'a> {
    /// Thickest first.
    stock: &'a [Leaf],
    thinnest: i64,
    /// How near the next pack must come to be kept: the tolerance, then nearer than the best so far.
    within: i64,
    chosen: [usize; MOST_LEAVES],
    best: Option<[usize; MOST_LEAVES]>,
}

impl Search<'_> {
    /// Chooses leaves `depth..count` from place `from` of the stock on, with `left` nanometres still to fill.
    fn fill(&mut self, depth: usize, count: usize, from: usize, left: i64) {
        let after = (count - depth - 1) as i64;
        for place in from..self.stock.len() {
            let leaf = self.stock[place].nanometres;
            if leaf + after * self.thinnest > left + self.within {
                continue; // too much whatever follows
            }
            if leaf + after * leaf < left - self.within {
                break; // too little whatever follows, and thinner ones too
            }
            self.chosen[depth] = place;
            if after == 0 {
                // Only nearer packs are kept from here on: of equals, the first met has the thicker leaves.
                self.within = (left - leaf).abs() - 1;
                self.best = Some(self.chosen);
            } else {
                self.fill(depth + 1, count, place, left - leaf);
            }
            if self.within < 0 {
                return; // exact
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::tests::Numbers;
    use super::*;
    use crate::units::length::micrometer;

    fn mm(value: f64) -> Length {
        Length::new::<millimeter>(value)
    }

    fn microns(value: i64) -> Length {
        Length::new::<micrometer>(value as f64)
    }

    /// Every multiset of up to `most` leaves, ranked as the rules say, in whole micrometres.
    fn brute(gap: i64, stock: &[i64], tolerance: i64, most: usize) -> Option<Vec<i64>> {
        let mut packs: Vec<Vec<i64>> = vec![vec![]];
        let mut grown = packs.clone();
        for _ in 0..most {
            grown = grown
                .iter()
                .flat_map(|pack| stock.iter().map(move |leaf| [pack.as_slice(), &[*leaf]].concat()))
                .filter(|pack| pack.is_sorted_by(|a, b| a >= b))
                .collect();
            packs.extend(grown.iter().cloned());
        }
        packs.into_iter().filter(|pack| (pack.iter().sum::<i64>() - gap).abs() <= tolerance).min_by_key(|pack| {
            let thick_first: Vec<i64> = pack.iter().map(|leaf| -leaf).collect();
            (pack.len(), (pack.iter().sum::<i64>() - gap).abs(), thick_first)
        })
    }

    #[test]
    fn agrees_with_trying_every_pack() {
        let mut numbers = Numbers(21);
        let mut none = 0;
        for _ in 0..3000 {
            let stock: Vec<i64> =
                (0..=numbers.below(6)).map(|_| [1, 5, 25][numbers.below(3)] * (1 + numbers.below(20) as i64)).collect();
            let gap = numbers.below(1500) as i64;
            let tolerance = numbers.below(30) as i64;
            let most = 1 + numbers.below(4);
            let lengths: Vec<Length> = stock.iter().copied().map(microns).collect();
            let found = shim_pack(microns(gap), &lengths, microns(tolerance), most);
            match brute(gap, &stock, tolerance, most) {
                None => {
                    none += 1;
                    assert_eq!(found, Err(Error::none("shim pack")));
                }
                Some(pack) => {
                    let found = found.unwrap();
                    assert_eq!(found.leaves(), pack.iter().copied().map(microns).collect::<Vec<_>>());
                    assert_eq!(found.count(), pack.len());
                    let total = pack.iter().sum::<i64>() as f64;
                    approx::assert_abs_diff_eq!(found.total().get::<micrometer>(), total, epsilon = 1e-9);
                }
            }
        }
        assert!((100..2900).contains(&none), "both outcomes are met: {none} without a pack");
    }

    #[test]
    fn inch_leaves_meet_inch_gaps_exactly() {
        let stock = inch_leaves();
        for thousandths in 1..=150_u32 {
            let gap = Length::new::<inch>(f64::from(thousandths) / 1000.0);
            let pack = shim_pack(gap, &stock, Length::default(), 4).unwrap();
            approx::assert_relative_eq!(pack.total().value, gap.value, max_relative = 1e-14);
            assert!(pack.leaves().is_sorted_by(|a, b| a >= b));
        }
    }

    #[test]
    fn order_and_repeats_in_the_stock_do_not_matter() {
        let stock = metric_leaves();
        let mut shuffled: Vec<Length> = stock.iter().rev().copied().chain(stock).collect();
        shuffled.swap(3, 11);
        for micron in (0..4000).step_by(7) {
            let gap = microns(micron);
            assert_eq!(shim_pack(gap, &stock, mm(0.03), 5), shim_pack(gap, &shuffled, mm(0.03), 5));
        }
    }

    #[test]
    fn rules_in_turn() {
        let stock = metric_leaves();
        let leaves = |gap, tolerance| shim_pack(mm(gap), &stock, mm(tolerance), 4).unwrap().leaves().to_vec();
        assert_eq!(leaves(0.03, 0.05), [], "within the tolerance already");
        assert_eq!(leaves(0.45, 0.05), [mm(0.50)], "one leaf before two, of two as near the thicker");
        assert_eq!(leaves(0.45, 0.02), [mm(0.40), mm(0.05)], "the nearest of two leaves");
        assert_eq!(leaves(0.90, 0.0), [mm(0.70), mm(0.20)], "0.70 and 0.20 before 0.50 and 0.40");
    }

    #[test]
    fn bad_input_is_refused() {
        let stock = metric_leaves();
        let refused = |result: Result<Pack>| match result {
            Err(Error::OutOfRange { input, .. }) => input,
            other => panic!("{other:?}"),
        };
        assert_eq!(refused(shim_pack(mm(-0.1), &stock, mm(0.05), 4)), "gap");
        assert_eq!(refused(shim_pack(mm(f64::NAN), &stock, mm(0.05), 4)), "gap");
        assert_eq!(refused(shim_pack(mm(0.1), &stock, mm(-0.05), 4)), "tolerance");
        assert_eq!(refused(shim_pack(mm(0.1), &stock, mm(0.05), 0)), "most leaves");
        assert_eq!(refused(shim_pack(mm(0.1), &stock, mm(0.05), 6)), "most leaves");
        assert_eq!(refused(shim_pack(mm(0.1), &[], mm(0.05), 4)), "stock entries");
        assert_eq!(refused(shim_pack(mm(0.1), &[mm(0.1); 33], mm(0.05), 4)), "stock entries");
        assert_eq!(refused(shim_pack(mm(0.1), &[mm(0.0)], mm(0.05), 4)), "leaf");
        assert_eq!(shim_pack(mm(90.0), &stock, mm(0.05), 5), Err(Error::none("shim pack")));
    }
}
