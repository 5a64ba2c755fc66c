//! Tightening order and rounds, as far as they are numbers; what the torque found at a check says.

use drivecourse_calc::Error;
use drivecourse_calc::fasten::{bushing, order};
use drivecourse_calc::units::{Ratio, Torque, ratio};

use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::Choice;

pub(super) const HELD: &[&str] = &["tight enough", "tighten again in order"];

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

/// Torque left of what was set.
pub(super) fn left(set: Torque, lost: Ratio) -> Torque {
    set * (Ratio::new::<ratio::ratio>(1.0) - lost).value
}

/// Loose when more was lost than allowed; a loss right on the limit passes.
fn held(lost: Ratio, limit: Ratio) -> Choice {
    const ROUNDING: f64 = 1e-9;
    Choice(u16::from(lost.value > limit.value + ROUNDING))
}

macro_rules! held {
    ($id:literal, $title:literal, $gives:literal, $lost:literal, $other:literal) => {
        relation! {
            $id: $title,
            $gives: Choice = held(s, limit),
            from { s: Ratio = $lost, limit: Ratio = "fasten.loss_limit" },
            formula [],
            source CommonPractice,
            turns {
                "share kept": held(Ratio::new::<ratio::ratio>(1.0) - s, limit) => "You held the share that is left against the limit; the limit is for the share that is missing.";
                "turned round": Choice(1 - held(s, limit).0) => "You turned the limit round; a loss above it means that the screws are drawn up again.";
                "other screws" with { o: Ratio = $other }: held(o, limit) => "You judged the other screws; base bolts and bushing screws settle each in their own way.";
            },
        }
        .method("A loss above the limit: tighten again, crosswise, with the drive locked out. A loss on the limit passes.")
        .limits("the limit is the course's own or the maker's; a screw that loses torque a second time has another fault")
    };
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
    relation! {
        "fasten.bolt_found/lost": "Torque found in the base bolt at the check",
        "fasten.bolt_found": Torque = left(t, s),
        from { t: Torque = "fasten.card_torque", s: Ratio = "fasten.bolt_lost" },
        formula ["T = t * (1 - s[%] / 100)"],
        source Derived("definition of a share"),
        turns {},
    }
    .model(),
    relation! {
        "fasten.bolt_lost/found": "Share of the base bolt's torque lost since it was set",
        "fasten.bolt_lost": Ratio = bushing::torque_lost(t, f),
        from { t: Torque = "fasten.card_torque", f: Torque = "fasten.bolt_found" },
        formula ["s[%] = 100 * (t - f) / t"],
        source CommonPractice,
        turns {
            "share kept": (f / t) => "You gave the share that is left; the loss is what is missing from the torque set.";
            "over the torque found": ((t - f) / f) => "You divided by the torque found; a loss is a share of the torque that was set.";
            "bushing screw's torque" with { n: Torque = "fasten.screw_torque" }: bushing::torque_lost(n, f) => "You compared with the bushing screws' torque; a base bolt is set by its own card.";
        },
    }
    .question()
    .limits("the wrench read as the bolt just moves on in the tightening direction"),
    held!(
        "fasten.base_verdict/limit",
        "Verdict on the base bolt at the check",
        "fasten.base_verdict",
        "fasten.bolt_lost",
        "fasten.torque_lost"
    ),
    held!(
        "fasten.screw_verdict/limit",
        "Verdict on the bushing's screws after the first run",
        "fasten.screw_verdict",
        "fasten.torque_lost",
        "fasten.bolt_lost"
    ),
];
