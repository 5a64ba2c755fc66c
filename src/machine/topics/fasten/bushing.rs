//! Taper bushings: draw and gap, pull of the screws, retorque, runout of an unevenly drawn flange.

use drivecourse_calc::fasten::{bolt, bushing as calc};
use drivecourse_calc::units::{Force, Length, Ratio, Torque, ratio};

use super::tighten::left;
use crate::relation::{Relation, relation};
use crate::source::Source;
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::Choice;

const CONE: Source = Derived("geometry of a cone");
const TILT: Source = Derived("a tilted flange stands as much wider at one side as narrower at the other");

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

/// Bottomed when the gap is smaller than the least; a nanometre is rounding in the last digits.
fn bottomed(gap: Length, least: Length) -> Choice {
    Choice(u16::from(gap.value < least.value - 1e-9))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "fasten.draw/clearance": "Draw that takes up the clearance",
        "fasten.draw": Length = calc::draw_for(c, k),
        from { c: Length = "fasten.clearance", k: Ratio = "fasten.taper" },
        formula ["x = c / k"],
        source CONE,
        turns {
            "multiplied": calc::closing(c, k) => "You multiplied by the taper; the bushing draws in much farther than it closes, so divide.";
            "taper a side": calc::draw_for(c * 2.0, k) => "You took the taper for that of one side; it is stated on the diameter.";
            "clearance a side": calc::draw_for(c / 2.0, k) => "You took half the clearance; taper and clearance both go by the diameter.";
        },
    }
    .limits("clean and dry faces; free play first, grip after"),
    relation! {
        "fasten.clearance/draw": "Clearance that a draw takes up",
        "fasten.clearance": Length = calc::closing(x, k),
        from { x: Length = "fasten.draw", k: Ratio = "fasten.taper" },
        formula ["c = x * k"],
        source CONE,
        turns {
            "divided": x / k => "You divided by the taper; the bore closes much less than the bushing draws in, so multiply.";
            "one side": calc::closing(x / 2.0, k) => "You gave the clearance of one side; taper and clearance both go by the diameter.";
            "both sides": calc::closing(x * 2.0, k) => "You doubled for two sides; the taper is stated on the diameter already.";
        },
    }
    .inverse(),
    relation! {
        "fasten.gap_left/draw": "Gap left between flange and hub",
        "fasten.gap_left": Length = calc::gap_left(g, x),
        from { g: Length = "fasten.loose_gap", x: Length = "fasten.draw" },
        formula ["g_left = g - x"],
        source Derived("geometry: the flange moves as far as the bushing draws in"),
        turns {
            "draw itself": x => "You gave the draw; the gap left is the loose gap less the draw.";
            "clearance taken off" with { c: Length = "fasten.clearance" }: calc::gap_left(g, c) => "You took the clearance off the gap; the bushing draws in farther, by the clearance over the taper.";
            "loose gap": g => "You gave the gap of the loose bushing; drawing up closes it.";
            "added": g + x => "You added the draw; drawing up closes the gap.";
        },
    },
    relation! {
        "fasten.gap_verdict/least": "Verdict on the bushing's gap",
        "fasten.gap_verdict": Choice = bottomed(g, least),
        from { g: Length = "fasten.gap_left", least: Length = "fasten.gap_least" },
        formula [],
        source CommonPractice,
        turns {
            "closed is tight": bottomed(least, g) => "You took a closed gap for a tight bushing; when the flange touches it carries the screws and the taper does not grip.";
            "loose gap judged" with { loose: Length = "fasten.loose_gap" }: bottomed(loose, least) => "You judged the gap before drawing up; judge what is left of it.";
            "draw judged" with { x: Length = "fasten.draw" }: bottomed(x, least) => "You judged the draw; judge the gap that it leaves.";
        },
    }
    .method("A gap of at least the least one must stay all round; just that much will do.")
    .limits("the maker's least gap; a worn or wrong bushing, or a shaft too small, closes it"),
    relation! {
        "fasten.screw_pull/torque": "Pull of all bushing screws together",
        "fasten.screw_pull": Force = calc::screw_pull(n as usize, t, d, k),
        from {
            n: u32 = "fasten.screws", t: Torque = "fasten.screw_torque", k: Ratio = "fasten.nut_factor",
            d: Length = "fasten.screw_dia",
        },
        formula ["F[N] = n * t[N·m] / (k * d[m])", "F[lbf] = n * t[lbf·in] / (k * d[in])"],
        source Source::published("R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design", "chapter 8"),
        turns {
            "one screw": calc::screw_pull(1, t, d, k) => "You gave the pull of one screw; all of them draw the bushing in.";
            "radius": calc::screw_pull(n as usize, t, d / 2.0, k) => "You used the radius; the formula takes the screw's nominal diameter.";
            "nut factor left out": calc::screw_pull(n as usize, t, d, plain(0.5)).map(|pull| pull / 2.0) => "You left the nut factor out; divide by K and by the diameter.";
            "base bolt" with { b: Length = "fasten.bolt_dia" }: calc::screw_pull(n as usize, t, b, k) => "You used the base bolt's diameter; use the bushing screw's.";
            "base bolt's torque" with { b: Torque = "fasten.torque" }: bolt::preload_from_torque(b * f64::from(n), d, k) => "You used the base bolt's torque; the bushing's screws have their own.";
        },
    }
    .limits("the maker's torque; screws drawn up evenly in turn"),
    relation! {
        "fasten.torque_found/lost": "Screw torque found after the first run",
        "fasten.torque_found": Torque = left(t, s),
        from { t: Torque = "fasten.screw_torque", s: Ratio = "fasten.torque_lost" },
        formula ["T = t * (1 - s[%] / 100)"],
        source Derived("definition of a share"),
        turns {},
    }
    .model(),
    relation! {
        "fasten.torque_lost/found": "Share of the screw torque lost in the first run",
        "fasten.torque_lost": Ratio = calc::torque_lost(t, f),
        from { t: Torque = "fasten.screw_torque", f: Torque = "fasten.torque_found" },
        formula ["s[%] = 100 * (t - f) / t"],
        source CommonPractice,
        turns {
            "share kept": (f / t) => "You gave the share that is left; the loss is what is missing from the torque set.";
            "over the torque found": ((t - f) / f) => "You divided by the torque found; a loss is a share of the torque that was set.";
        },
    }
    .question()
    .limits("retorque every screw after the first run, in the same crosswise order"),
    relation! {
        "fasten.flange_gap_widest/uneven": "Widest gap round the bushing's flange",
        "fasten.flange_gap_widest": Length = g + u / 2.0,
        from { g: Length = "fasten.gap_left", u: Length = "fasten.flange_uneven" },
        formula ["g_w = g + u / 2"],
        source TILT,
        turns {},
    }
    .model(),
    relation! {
        "fasten.flange_gap_narrowest/uneven": "Narrowest gap round the bushing's flange",
        "fasten.flange_gap_narrowest": Length = g - u / 2.0,
        from { g: Length = "fasten.gap_left", u: Length = "fasten.flange_uneven" },
        formula ["g_n = g - u / 2"],
        source TILT,
        turns {},
    }
    .model(),
    relation! {
        "fasten.rim_wobble/gaps": "Face runout from an unevenly drawn flange",
        "fasten.rim_wobble": Length = calc::rim_wobble(&[a, b], df, d),
        from {
            a: Length = "fasten.flange_gap_widest", b: Length = "fasten.flange_gap_narrowest",
            d: Length = "chain.pitch_dia_small", df: Length = "fasten.flange_dia",
        },
        formula ["w = abs(a - b) * d / df"],
        source Derived("similar triangles"),
        turns {
            "difference alone": a - b => "You gave the difference at the flange; it grows with the diameter out to the sprocket's pitch circle.";
            "turned over": calc::rim_wobble(&[a, b], d, df) => "You turned the diameters over; the larger circle wobbles more.";
            "widest gap": calc::rim_wobble(&[a, Length::default()], df, d) => "You used the widest gap; only the difference between widest and narrowest tilts the hub.";
            "half": calc::rim_wobble(&[a, b], df, d / 2.0) => "You reckoned from the centre to the rim; an indicator swings over the whole diameter.";
            "shaft diameter" with { s: Length = "load.shaft_diameter" }: calc::rim_wobble(&[a, b], s, d) => "You used the shaft's diameter; the gaps were felt round the flange.";
        },
    },
];
