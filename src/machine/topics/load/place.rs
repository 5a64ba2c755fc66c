//! Where on the shaft end the load is allowed.

use drivecourse_calc::load::overhung::{self as calc, Rating};
use drivecourse_calc::units::{Force, Length, Ratio, ratio};

use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::Choice;

const SAME_REACTION: crate::Source =
    Derived("statics of an overhanging beam: the same reaction of the near bearing as under the rating");

const ACCEPT: Choice = Choice(0);
const MOVE_IN: Choice = Choice(1);
const STOP: Choice = Choice(2);

/// A load allowed at its place is accepted; one allowed only at the middle of the shaft end asks for moving in.
fn verdict(load: Force, allowed: Force, rating: Force) -> Choice {
    if load <= allowed {
        ACCEPT
    } else if load <= rating {
        MOVE_IN
    } else {
        STOP
    }
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "load.rating_middle/share": "Overhung load rating from the share of it in use",
        "load.rating_middle": Force = f / j,
        from { f: Force = "load.overhung", j: Ratio = "load.rating_share" },
        formula ["F = f / j"],
        source Derived("definition of the share"),
        turns {},
    }
    .model(),
    relation! {
        "load.allowable/place": "Load allowed at the sprocket's place",
        "load.allowable": Force = calc::allowable_load(&Rating { load: fc, span: s, at: c }, x),
        from {
            fc: Force = "load.rating_middle", s: Length = "load.bearing_span", c: Length = "load.shaft_middle",
            x: Length = "load.sprocket_distance",
        },
        formula ["F = fc * (s + c) / (s + x)"],
        source SAME_REACTION,
        turns {
            "rating as it stands": fc => "You took the rating as it stands; it holds for the middle of the shaft end, and the sprocket sits elsewhere.";
            "distances alone": fc * (c / x) => "You scaled with the distances from the near bearing alone; the bearing span belongs to both, since the shaft levers about the far bearing.";
            "upside down": fc * ((s + x) / (s + c)) => "You turned the ratio upside down; farther out less is allowed, closer in more.";
            "straight line": fc * (2.0 - (x / c).value) => "You let the load fall in a straight line with the distance; it falls with one over the bearing span plus the distance.";
            "span alone": fc * (s / (s + x)) => "You left the rating's own place out; the rating holds at the middle of the shaft end, so that distance is added to the span above the line.";
            "at the bearing": fc * ((s + c) / s) => "You left the sprocket's distance out and gave the load allowed in the near bearing's plane.";
            "distance as factor": fc * (s / x) => "You divided by the sprocket's distance alone; divide by the bearing span plus that distance.";
        },
    }
    .limits("while the near bearing governs; far out the bending of the shaft governs and less is allowed"),
    relation! {
        "load.margin/loads": "Load allowed over the whole load",
        "load.margin": Ratio = a / f,
        from { a: Force = "load.allowable", f: Force = "load.total" },
        formula ["N = a / f"],
        source Derived("definition of the margin"),
        turns {
            "inverted": f / a => "You divided the load by what is allowed; the margin is what is allowed over the load, and above 1 it is safe.";
            "rating as it stands" with { fc: Force = "load.rating_middle" }: fc / f => "You used the rating at the middle of the shaft end; use the load allowed at the sprocket's place.";
            "slack tension left out" with { o: Force = "load.overhung" }: a / o => "You divided by the running load only; the tension of the slack strand pulls on the shaft too.";
            "surplus": plain((a / f).value - 1.0) => "You gave the surplus over the load; the margin asked for is the whole ratio.";
        },
    }
    .limits("at least 1"),
    relation! {
        "load.verdict/place": "Verdict on the load at the shaft end",
        "load.verdict": Choice = verdict(f, a, fc),
        from { f: Force = "load.total", a: Force = "load.allowable", fc: Force = "load.rating_middle" },
        formula [],
        source CommonPractice,
        turns {
            "rating as it stands": verdict(f, fc, fc) => "You held the load against the rating as it stands; the rating is for the middle of the shaft end, so use the load allowed at the sprocket's place.";
            "slack tension left out" with { o: Force = "load.overhung" }: verdict(o, a, fc) => "You judged the running load only; the tension of the slack strand pulls on the shaft too.";
            "other way round": verdict(a, f, fc) => "You held the two loads against each other the wrong way round; what pulls must not be greater than what is allowed.";
            "moving in cannot help": if f <= a { ACCEPT } else { MOVE_IN } => "You sent the sprocket inwards, but the load is too great even at the middle of the shaft end: the drive must not run so.";
            "stopped too soon": if f <= a { ACCEPT } else { STOP } => "You stopped the drive, but the same load is allowed at the middle of the shaft end: move the sprocket in.";
        },
    }
    .method("Accept the load if it is allowed at the sprocket's place; if it is allowed only at the middle of the shaft end, have the sprocket moved in; if not even there, stop: the shaft end is overloaded.")
    .limits("the whole load, slack tension included; moved only with the drive locked out, and what the maker states comes first"),
    relation! {
        "load.farthest/load": "Farthest place from the near bearing where the load is allowed",
        "load.farthest": Length = calc::farthest_location(&Rating { load: fc, span: s, at: c }, f),
        from {
            fc: Force = "load.rating_middle", s: Length = "load.bearing_span", c: Length = "load.shaft_middle",
            f: Force = "load.total",
        },
        formula ["x = fc * (s + c) / f - s"],
        source SAME_REACTION,
        turns {
            "span not taken off": (s + c) * (fc / f).value => "You stopped at the distance from the far bearing; take the bearing span off to measure from the near one.";
            "distances alone": c * (fc / f).value => "You scaled the distance alone; the bearing span belongs to it, since the shaft levers about the far bearing.";
            "upside down": (s + c) * (f / fc).value - s => "You turned the ratio of the loads upside down; a smaller load may sit farther out.";
            "slack tension left out" with { o: Force = "load.overhung" }: calc::farthest_location(&Rating { load: fc, span: s, at: c }, o) => "You placed the running load only; the tension of the slack strand pulls on the shaft too.";
            "middle taken off": (s + c) * (fc / f).value - s - c => "You measured from the middle of the shaft end; the place is asked from the near bearing.";
            "moved load" with { a: Force = "load.allowable" }: calc::farthest_location(&Rating { load: a, span: s, at: c }, f) => "You took the load allowed at the sprocket's place together with the middle's distance; a rating and its own place belong together.";
        },
    }
    .inverse()
    .limits("while the near bearing governs, and never past the end of the shaft"),
];

fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}
