//! Shim packs and what they leave open.

use drivecourse_calc::Error;
use drivecourse_calc::mount::{self, MOST_LEAVES, Pack};
use drivecourse_calc::units::Length;

use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::Choice;

const RULES: &str = "Of all packs whose total comes within the limit of the gap take the one with the fewest leaves; of \
                     these the one nearest the gap; of these the one with the thickest leaf. A leaf may be used more \
                     than once.";
const FEW: &str = "at most 3 to 5 leaves a pack, few thick rather than many thin; hold only while the bolts stay tight, \
                   so recheck after run-in";

/// Hands the chosen stock list, thinnest leaf first, to `work`.
fn with_leaves<T>(stock: Choice, work: impl FnOnce(&[Length]) -> Result<T, Error>) -> Result<T, Error> {
    match stock.0 {
        0 => work(&mount::metric_leaves()),
        1 => work(&mount::inch_leaves()),
        other => Err(Error::outside("shim stock", f64::from(other), 0.0, 1.0)),
    }
}

fn pack(gap: Length, stock: Choice, limit: Length, most: u32) -> Result<Pack, Error> {
    with_leaves(stock, |leaves| mount::shim_pack(gap, leaves, limit, usize::try_from(most).unwrap_or(usize::MAX)))
}

/// The pack of a person who has only the thinnest third of the stock at hand, and stacks it.
fn thin_pack(gap: Length, stock: Choice, limit: Length) -> Result<Pack, Error> {
    with_leaves(stock, |leaves| mount::shim_pack(gap, &leaves[..leaves.len() / 3], limit, MOST_LEAVES))
}

/// The thinnest single leaf that is not thinner than the gap.
fn rounded_up(gap: Length, stock: Choice) -> Result<Length, Error> {
    with_leaves(stock, |leaves| {
        (leaves.iter().copied().find(|leaf| *leaf >= gap)).ok_or(Error::none("leaf thick enough"))
    })
}

fn count(pack: Pack) -> u32 {
    pack.count() as u32
}

fn total(pack: Pack) -> Length {
    pack.total()
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "mount.shim_leaves/pack": "Number of leaves in the shim pack",
        "mount.shim_leaves": u32 = pack(g, stock, limit, most).map(count),
        from {
            g: Length = "mount.gap", stock: Choice = "mount.shim_stock",
            limit: Length = "mount.gap_limit", most: u32 = "mount.shim_most",
        },
        formula [],
        source CommonPractice,
        turns {
            "many thin leaves": thin_pack(g, stock, limit).map(count) => "You stacked thin leaves; many thin ones act as a spring under the foot, so start from the thickest leaf that fits.";
            "one leaf past the limit": rounded_up(g, stock).map(|_| 1_u32) => "You took the next thicker single leaf; it lifts the foot past the limit, so build the pack from more leaves.";
            "exact fit": pack(g, stock, Length::default(), MOST_LEAVES as u32).map(count) => "You filled the gap to the last bit; fewer leaves already come within the limit, and fewer leaves hold better.";
            "halved": pack(g / 2.0, stock, limit, most).map(count) => "You packed half the gap; the one foot that hangs clear needs the whole of it.";
            "both feet added": pack(g * 2.0, stock, limit, most).map(count) => "You packed the gaps of both feet of the diagonal together; one foot needs one gap's worth.";
        },
    }
    .method(RULES)
    .lookup()
    .limits(FEW),
    relation! {
        "mount.shim_total/pack": "Thickness of the shim pack",
        "mount.shim_total": Length = pack(g, stock, limit, most).map(total),
        from {
            g: Length = "mount.gap", stock: Choice = "mount.shim_stock",
            limit: Length = "mount.gap_limit", most: u32 = "mount.shim_most",
        },
        formula [],
        source CommonPractice,
        turns {
            "rounded up": rounded_up(g, stock) => "You took the next leaf thicker than the gap; a pack too thick opens the other diagonal, so stay within the limit.";
            "gap itself": g => "You gave the gap itself; the pack is built of the leaves in stock, as few as come within the limit.";
            "halved": pack(g / 2.0, stock, limit, most).map(total) => "You packed half the gap; the one foot that hangs clear needs the whole of it.";
            "both feet added": pack(g * 2.0, stock, limit, most).map(total) => "You packed the gaps of both feet of the diagonal together; one foot needs one gap's worth.";
        },
    }
    .method(RULES)
    .lookup()
    .limits(FEW),
    relation! {
        "mount.gap_left/shim": "Gap left after the shim has gone in",
        "mount.gap_left": Length = mount::gap_left(g, s),
        from { g: Length = "mount.gap", s: Length = "mount.shim_total" },
        formula ["g_left = abs(g - s)"],
        source Derived("a shim under a foot of the low diagonal takes its thickness from the twist"),
        turns {
            "wrong diagonal": mount::gap_left(g, -s) => "You put the shim under a foot of the high diagonal; that adds its thickness to the gap.";
            "both feet of a side": mount::gap_left(g, Length::default()) => "You shimmed both feet of a side; that tilts the frame and leaves the twist as it was.";
            "both feet of the diagonal": mount::gap_left(g, 2.0 * s) => "You put the pack under both feet of the low diagonal; that takes its thickness from the twist twice.";
        },
    }
    .limits("usual limit 0.05 mm (0.002 in), common practice"),
];
