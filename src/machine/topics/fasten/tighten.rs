//! Tightening order and rounds, as far as they are numbers.

use drivecourse_calc::Error;
use drivecourse_calc::fasten::order;
use drivecourse_calc::units::{Ratio, Torque, ratio};

use crate::relation::{Relation, relation};
use crate::source::Source::CommonPractice;

/// The bolt at a place (from 1) of the crosswise order.
fn at_place(bolts: u32, place: u32) -> Result<u32, Error> {
    let order = order::star(bolts as usize)?;
    let found = (place as usize).checked_sub(1).and_then(|at| order.get(at)).copied();
    let (value, max) = (f64::from(place), f64::from(bolts));
    let bolt = found.ok_or(Error::outside("place in the order", value, 1.0, max))?;
    // No circle has more than a few hundred bolts.
    Ok(bolt as u32)
}

/// The bolt at a place when every other bolt is skipped, then the rest taken.
fn every_other(bolts: u32, place: u32) -> u32 {
    let straight = place.saturating_mul(2).saturating_sub(1);
    if straight <= bolts { straight } else { straight - bolts + (1 - bolts % 2) }
}

/// Torque of a round at `share` of the full one.
fn round_torque(full: Torque, share: Ratio) -> Result<Torque, Error> {
    let whole = Ratio::new::<ratio::ratio>(1.0);
    let shares = [share, whole];
    let shares = if share == whole { &shares[1..] } else { &shares[..] };
    // Three bolts are the fewest; all of them get the same torque in a round.
    let steps = order::rounds(&[1, 2, 3], full, shares)?;
    steps.first().map(|step| step.torque).ok_or(Error::none("round"))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "fasten.bolt_at_place/star": "Bolt at a place of the crosswise order",
        "fasten.bolt_at_place": u32 = at_place(n, k),
        from { n: u32 = "fasten.bolts", k: u32 = "fasten.turn_place" },
        formula [],
        source CommonPractice,
        turns {
            "round the circle": k => "You went round the circle; that cocks the part and loosens the first bolts, so go crosswise.";
            "next place": at_place(n, k.saturating_add(1)) => "You gave the bolt after this one; the first bolt counts as place one.";
            "place before": at_place(n, k.saturating_sub(1)) => "You gave the bolt before this one; the first bolt counts as place one.";
            "backwards": n.saturating_add(1) - k.min(n) => "You went round the circle backwards; go crosswise, each bolt opposite the last.";
            "every other bolt": every_other(n, k) => "You skipped one bolt each time; go to the bolt opposite, then to the widest gap between tight ones.";
        },
    }
    .method("Number the bolts round the circle and start with bolt 1. An even number goes in opposite pairs, each pair in the widest gap left; an odd number steps on by just under half a circle.")
    .limits("3 bolts or more; bring every bolt up in rounds, and go round once more at full torque"),
    relation! {
        "fasten.stage_torque/share": "Torque of this round",
        "fasten.stage_torque": Torque = round_torque(t, f),
        from { f: Ratio = "fasten.stage_share", t: Torque = "fasten.torque" },
        formula ["T = f[%] / 100 * t"],
        source CommonPractice,
        turns {
            "full torque at once": t => "You gave the full torque; the first rounds pull the part down evenly at a share of it.";
            "what is left": t * (1.0 - f.value) => "You gave what is still missing to full torque; the wrench is set to the share of this round.";
            "share divided": t / f.value => "You divided by the share; multiply by it.";
        },
    }
    .limits("usual rounds: 30 %, 70 %, 100 %, and once more round the circle at 100 %"),
];
