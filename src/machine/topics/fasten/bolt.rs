//! Preload, torque, what a wrong torque card does, stretch, and outside loads.

use drivecourse_calc::Error;
use drivecourse_calc::fasten::bolt as calc;
use drivecourse_calc::fasten::nut_factors::{DRY, LUBRICATED};
use drivecourse_calc::units::{Angle, Area, Force, Length, Pressure, Ratio, Torque, ratio};

use super::lookup::{factor, strength};
use crate::relation::{Relation, relation};
use crate::source::Source;
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::Choice;

const SHIGLEY_8: Source =
    Source::published("R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design", "chapter 8");
const WENTZELL_6: Source = Source::published("T. H. Wentzell, Machine Design", "Example 6.2, p. 121");

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

/// `K D F` without the K.
fn no_factor(f: Force, d: Length) -> Result<Torque, Error> {
    // The calculation refuses a nut factor of one: two times a half is the same.
    calc::torque(f, d, plain(0.5)).map(|torque| torque * 2.0)
}

/// Within, below or above two limits; a share off by the last digits is on its limit.
fn verdict(used: Ratio, least: Ratio, most: Ratio) -> Choice {
    const ROUNDING: f64 = 1e-9;
    if used.value < least.value - ROUNDING {
        Choice(1)
    } else {
        Choice(if used.value > most.value + ROUNDING { 2 } else { 0 })
    }
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "fasten.preload/proof": "Preload of the bolt from proof stress and stress area",
        "fasten.preload": Force = calc::preload(s, a, f),
        from { f: Ratio = "fasten.proof_share", s: Pressure = "fasten.proof", a: Area = "fasten.stress_area" },
        formula ["F[N] = f * s[MPa] * a[mm²]", "F[lbf] = f * s[psi] * a[in²]"],
        source SHIGLEY_8,
        turns {
            "whole proof load": calc::preload(s, a, plain(1.0)) => "You loaded the bolt to its whole proof load; aim at the share that is asked for.";
            "share divided": calc::preload(s, a, plain(1.0)).map(|load| load / f) => "You divided by the share of the proof load; multiply by it.";
        },
    }
    .limits("0.75 of the proof load for bolts that will be taken out again"),
    relation! {
        "fasten.torque/preload": "Tightening torque of the bolt",
        "fasten.torque": Torque = calc::torque(f, d, k),
        from { k: Ratio = "fasten.nut_factor", d: Length = "fasten.bolt_dia", f: Force = "fasten.preload" },
        formula ["T[N·m] = k * d[m] * f[N]", "T[lbf·in] = k * d[in] * f[lbf]"],
        source SHIGLEY_8,
        turns {
            "dry torque": calc::torque(f, d, DRY) => "You used the nut factor of a dry bolt; on a lubricated one that torque pulls a third too hard.";
            "lubricated torque": calc::torque(f, d, LUBRICATED) => "You used the nut factor of a lubricated bolt; a dry one stays a quarter too loose at that torque.";
            "radius": calc::torque(f, d / 2.0, k) => "You used the radius; the formula K D F takes the nominal diameter.";
            "nut factor left out": no_factor(f, d) => "You left the nut factor out; the torque is K times diameter times preload.";
            "pitch" with { p: Length = "fasten.pitch" }: calc::torque(f, p, k) => "You used the pitch; the formula K D F takes the nominal diameter.";
        },
    }
    .limits("scatters by a quarter either way; a maker's torque goes first"),
    relation! {
        "fasten.preload/torque": "Preload that a tightening torque gives",
        "fasten.preload": Force = calc::preload_from_torque(t, d, k),
        from { t: Torque = "fasten.torque", k: Ratio = "fasten.nut_factor", d: Length = "fasten.bolt_dia" },
        formula ["F[N] = t[N·m] / (k * d[m])", "F[lbf] = t[lbf·in] / (k * d[in])"],
        source SHIGLEY_8,
        turns {
            "radius": calc::preload_from_torque(t, d / 2.0, k) => "You used the radius; the formula takes the nominal diameter.";
            "nut factor left out": calc::preload_from_torque(t, d, plain(0.5)).map(|pull| pull / 2.0) => "You left the nut factor out; divide by K and by the diameter.";
            "dry bolt": calc::preload_from_torque(t, d, DRY) => "You used the nut factor of a dry bolt; this one is lubricated and is pulled harder.";
            "lubricated bolt": calc::preload_from_torque(t, d, LUBRICATED) => "You used the nut factor of a lubricated bolt; this one is dry and is pulled less.";
        },
    }
    .inverse()
    .rank(1),
    relation! {
        "fasten.card_torque/state": "Torque on the card for the state it was written for",
        "fasten.card_torque": Torque = calc::torque(f, d, factor(state)?),
        from {
            state: Choice = "fasten.card_lubrication", d: Length = "fasten.bolt_dia", f: Force = "fasten.preload",
        },
        formula [],
        source SHIGLEY_8,
        turns {},
    }
    .method("The torque K D F with the nut factor of the state that the card names.")
    .model(),
    relation! {
        "fasten.card_pull/torque": "Pull that the card's torque gives in the bolt as it is fitted",
        "fasten.card_pull": Force = calc::preload_from_torque(t, d, k),
        from { t: Torque = "fasten.card_torque", k: Ratio = "fasten.nut_factor", d: Length = "fasten.bolt_dia" },
        formula ["F[N] = t[N·m] / (k * d[m])", "F[lbf] = t[lbf·in] / (k * d[in])"],
        source SHIGLEY_8,
        turns {
            "card's state" with { state: Choice = "fasten.card_lubrication" }: calc::preload_from_torque(t, d, factor(state)?) => "You used the nut factor that the card was written for; the bolt's own state decides what the torque pulls.";
            "radius": calc::preload_from_torque(t, d / 2.0, k) => "You used the radius; the formula takes the nominal diameter.";
            "nut factor left out": calc::preload_from_torque(t, d, plain(0.5)).map(|pull| pull / 2.0) => "You left the nut factor out; divide by K and by the diameter.";
        },
    },
    relation! {
        "fasten.card_stress/pull": "Stress in the bolt from its pull",
        "fasten.card_stress": Pressure = calc::stress(f, a),
        from { f: Force = "fasten.card_pull", a: Area = "fasten.stress_area" },
        formula ["s[MPa] = f[N] / a[mm²]", "s[psi] = f[lbf] / a[in²]"],
        source Derived("definition of stress"),
        turns {
            "preload aimed at" with { aimed: Force = "fasten.preload" }: calc::stress(aimed, a) => "You used the preload aimed at; use the pull that the card's torque really gives.";
        },
    },
    relation! {
        "fasten.proof_used/stress": "Share of the proof stress used",
        "fasten.proof_used": Ratio = s / p,
        from { s: Pressure = "fasten.card_stress", p: Pressure = "fasten.proof" },
        formula ["u[%] = 100 * s / p"],
        source Derived("definition of a share"),
        turns {
            "turned over": p / s => "You divided the proof stress by the stress; the share used is the stress over the proof stress.";
            "tensile strength" with { size: Choice = "fasten.thread", grade: Choice = "fasten.grade" }: s / strength(size, grade)?.tensile => "You compared with the tensile strength; the bolt stretches for good at the proof stress already.";
            "share aimed at" with { f: Ratio = "fasten.proof_share" }: f => "You gave the share aimed at; work out what the card's torque really does.";
        },
    },
    relation! {
        "fasten.bolt_verdict/limits": "Verdict on the tightened bolt",
        "fasten.bolt_verdict": Choice = verdict(u, least, most),
        from {
            u: Ratio = "fasten.proof_used", least: Ratio = "fasten.proof_least", most: Ratio = "fasten.proof_most",
        },
        formula [],
        source CommonPractice,
        turns {
            "card trusted": Choice(0) => "You trusted the card; its torque was written for another state, so work out what it does to this bolt.";
            "turned round": match verdict(u, least, most) { Choice(0) => Choice(0), Choice(one) => Choice(3 - one) } => "You turned loose and tight round; a lubricated bolt is pulled harder by the same torque, a dry one less.";
            "tensile strength" with { size: Choice = "fasten.thread", grade: Choice = "fasten.grade" }: { let row = strength(size, grade)?; verdict(u * (row.proof / row.tensile), least, most) } => "You judged by the tensile strength; the limits are shares of the proof stress.";
            "lower limit left out": verdict(u, Ratio::default(), most) => "You looked at the upper limit only; a bolt that pulls too little works loose.";
        },
    }
    .method("Compare the share of the proof stress used with the least and the greatest share allowed; right on a limit is within.")
    .limits("about 0.9 of proof at most for joints that stay together, common practice; a bolt pulled past proof is not used again"),
    relation! {
        "fasten.stretch/hooke": "Stretch of the bolt over its grip",
        "fasten.stretch": Length = calc::stretch(f, l, a, e),
        from {
            f: Force = "fasten.preload", l: Length = "fasten.grip", a: Area = "fasten.stress_area",
            e: Pressure = "fasten.elasticity",
        },
        formula ["δ[mm] = f[N] * l[mm] / (a[mm²] * e[MPa])", "δ[in] = f[lbf] * l[in] / (a[in²] * e[psi])"],
        source WENTZELL_6,
        turns {
            "diameter for grip" with { d: Length = "fasten.bolt_dia" }: calc::stretch(f, d, a, e) => "You used the bolt's diameter as its length; the grip stretches.";
        },
    }
    .limits("threaded over the whole grip; the joint itself gives too and is left out"),
    relation! {
        "fasten.turn/stretch": "Turn of the nut past snug",
        "fasten.turn": Angle = calc::turn(x, p),
        from { x: Length = "fasten.stretch", p: Length = "fasten.pitch" },
        formula ["θ = 360 * x / p"],
        source WENTZELL_6,
        turns {
            "half a turn for a pitch": calc::turn(x, p * 2.0) => "You reckoned 180° for one pitch; the nut moves on one pitch in a full turn of 360°.";
            "diameter for pitch" with { d: Length = "fasten.bolt_dia" }: calc::turn(x, d) => "You divided by the diameter; the nut moves on one pitch in a turn.";
        },
    }
    .limits("the joint taken as rigid; count from snug"),
    relation! {
        "fasten.bolt_pull/joint": "Pull in the bolt under an outside load",
        "fasten.bolt_pull": Force = calc::pull_under_load(f, p, c),
        from { c: Ratio = "fasten.joint_share", p: Force = "fasten.outside_load", f: Force = "fasten.preload" },
        formula ["F = f + c * p"],
        source Source::published(
            "R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, 9th ed.",
            "Example 8-3, p. 439",
        ),
        turns {
            "whole load added": f + p => "You added the whole outside load; in a tight joint only its share reaches the bolt.";
            "load alone": p => "You gave the outside load alone; the preload stays in the bolt.";
            "members' share": f + p * (plain(1.0) - c) => "You added the share that the clamped parts take; the bolt takes the rest.";
            "taken off": f - p * c => "You took the load's share off; an outside pull adds to the bolt's preload.";
            "preload alone": f => "You gave the preload alone; a part of the outside load adds to it.";
        },
    }
    .limits("while the joint stays closed"),
    relation! {
        "fasten.area_needed/load": "Stress area that the outside pull needs",
        "fasten.area_needed": Area = calc::area_needed(p, s * f),
        from { p: Force = "fasten.outside_load", s: Pressure = "fasten.proof", f: Ratio = "fasten.proof_share" },
        formula ["A[mm²] = p[N] / (f * s[MPa])", "A[in²] = p[lbf] / (f * s[psi])"],
        source Source::published("R. L. Mott, Machine Elements in Mechanical Design", "chapter 19"),
        turns {
            "whole proof stress": calc::area_needed(p, s) => "You allowed the whole proof stress; allow the share of it that is aimed at.";
            "share multiplied": calc::area_needed(p, s).map(|area| area * f) => "You multiplied the area by the share; less stress allowed needs more area, so divide by it.";
        },
    },
];
