//! Reactions of the two bearings, and the life of the near one.

use core::f64::consts::TAU;

use drivecourse_calc::Error;
use drivecourse_calc::load::bearing::{self as calc, BearingKind, Exponent};
use drivecourse_calc::load::overhung;
use drivecourse_calc::units::{AngularVelocity, Force, Length, Ratio, Time, ratio, time};

use crate::relation::{Relation, relation};
use crate::source::Source::Derived;
use crate::typed::{Choice, Turns};

const BEAM: crate::Source = Derived("statics of an overhanging beam");
pub(super) const ISO_281: crate::Source = crate::Source::published("ISO 281", "basic rating life");

fn kind(choice: Choice) -> Result<BearingKind, Error> {
    match choice.0 {
        0 => Ok(BearingKind::Ball),
        1 => Ok(BearingKind::Roller),
        other => Err(Error::outside("kind of bearing", f64::from(other), 0.0, 1.0)),
    }
}

/// The other kind of bearing than the one whose life exponent is `p`: 3 or 10/3, forgiving a rounded 3.33.
pub(super) fn other(p: Ratio) -> BearingKind {
    if p.value < 3.1 { BearingKind::Roller } else { BearingKind::Ball }
}

fn turns(capacity: Force, load: Force, exponent: impl Into<Exponent>) -> Result<Turns, Error> {
    calc::l10_revolutions(capacity, load, exponent).map(Turns)
}

fn time_for(turns: Turns, speed: AngularVelocity) -> Time {
    Time::new::<time::second>(turns.0.value * TAU / speed.value)
}

pub(super) fn plain(value: f64) -> Ratio {
    Ratio::new::<ratio::ratio>(value)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "load.reaction_near/beam": "Reaction of the near bearing",
        "load.reaction_near": Force = calc::reactions(f, s, x).map(|r| r.near),
        from { f: Force = "load.total", s: Length = "load.bearing_span", x: Length = "load.sprocket_distance" },
        formula ["R = f * (s + x) / s"],
        source BEAM,
        turns {
            "equal split": f / 2.0 => "You shared the load half and half; a load outside the bearings puts more than itself on the near one.";
            "load itself": f => "You gave the near bearing the load itself; it carries the far bearing's pull besides.";
            "near and far swapped": calc::reactions(f, s, x).map(|r| r.far) => "You gave the far bearing's reaction; the near one sits next to the sprocket and carries more.";
            "far reaction subtracted": f - calc::reactions(f, s, x)?.far => "You subtracted the far bearing's reaction; it pulls the same way as the chain, so the near bearing carries both.";
            "between the bearings": calc::load_for_near_reaction(f, s, x) => "You turned the lever upside down, as for a load between the bearings; outside them the near reaction is greater than the load.";
            "over the distance": f * ((s + x) / x) => "You divided by the sprocket's distance; the levers are taken about the far bearing, so divide by the bearing span.";
            "middle" with { c: Length = "load.shaft_middle" }: calc::reactions(f, s, c).map(|r| r.near) => "You used the middle of the shaft end; use the distance to the sprocket's centre plane.";
            "slack tension left out" with { o: Force = "load.overhung" }: calc::reactions(o, s, x).map(|r| r.near) => "You used the running load only; the tension of the slack strand pulls on the shaft too.";
        },
    }
    .limits("the chain's load alone; gear forces inside the reducer are left out"),
    relation! {
        "load.reaction_far/beam": "Reaction of the far bearing",
        "load.reaction_far": Force = calc::reactions(f, s, x).map(|r| r.far),
        from { f: Force = "load.total", s: Length = "load.bearing_span", x: Length = "load.sprocket_distance" },
        formula ["R = f * x / s"],
        source BEAM,
        turns {
            "equal split": f / 2.0 => "You shared the load half and half; take the levers about the near bearing.";
            "near and far swapped": calc::reactions(f, s, x).map(|r| r.near) => "You gave the near bearing's reaction; the far one sits away from the sprocket and carries less.";
            "upside down": f * (s / x) => "You turned the lever upside down; the load has the short arm x and the far bearing the long arm s.";
            "whole length": f * (x / (s + x)) => "You divided by the whole length from far bearing to sprocket; the far bearing's arm is the bearing span alone.";
            "what is left": f - calc::reactions(f, s, x)?.far => "You took the far reaction off the load; the reaction itself is asked.";
            "middle" with { c: Length = "load.shaft_middle" }: calc::reactions(f, s, c).map(|r| r.far) => "You used the middle of the shaft end; use the distance to the sprocket's centre plane.";
            "slack tension left out" with { o: Force = "load.overhung" }: calc::reactions(o, s, x).map(|r| r.far) => "You used the running load only; the tension of the slack strand pulls on the shaft too.";
        },
    }
    .limits("it acts the same way as the load, against the near bearing's reaction"),
    relation! {
        "load.reaction_near/balance": "Reaction of the near bearing from the balance of forces",
        "load.reaction_near": Force = f + r,
        from { f: Force = "load.total", r: Force = "load.reaction_far" },
        formula ["R = f + r"],
        source BEAM,
        turns {
            "far reaction subtracted": f - r => "You subtracted the far bearing's reaction; it pulls the same way as the chain, so the near bearing carries both.";
            "load itself": f => "You gave the near bearing the load itself; it carries the far bearing's pull besides.";
            "slack tension left out" with { o: Force = "load.overhung" }: o + r => "You used the running load only; the tension of the slack strand pulls on the shaft too.";
        },
    }
    .question()
    .rank(1),
    relation! {
        "load.reaction_far/balance": "Reaction of the far bearing from the balance of forces",
        "load.reaction_far": Force = r - f,
        from { f: Force = "load.total", r: Force = "load.reaction_near" },
        formula ["R = r - f"],
        source BEAM,
        turns {
            "added": r + f => "You added load and near reaction; the near reaction holds the load and the far one together, so take the load off it.";
            "near reaction": r => "You gave the near bearing's reaction; take the load off it.";
            "slack tension left out" with { o: Force = "load.overhung" }: r - o => "You took off the running load only; the tension of the slack strand pulls on the shaft too.";
        },
    }
    .question()
    .rank(1),
    relation! {
        "load.life_exponent/kind": "Life exponent of the bearing",
        "load.life_exponent": Ratio = kind(k).map(|kind| plain(kind.exponent())),
        from { k: Choice = "load.bearing_kind" },
        formula [],
        source ISO_281,
        turns {
            "other kind": kind(k).map(|kind| plain(other(plain(kind.exponent())).exponent())) => "You took the exponent of the other kind of bearing; it is 3 for balls and 10/3 for rollers.";
        },
    }
    .method("Balls touch in a point: 3. Rollers touch along a line: 10/3.")
    .lookup(),
    relation! {
        "load.bearing_capacity/design": "Dynamic capacity from the life the bearing was chosen for",
        "load.bearing_capacity": Force = calc::capacity_for_life(calc::reactions(f, s, c)?.near, l, Exponent::new(p)?, n),
        from {
            f: Force = "load.overhung", s: Length = "load.bearing_span", c: Length = "load.shaft_middle",
            l: Time = "load.design_life", p: Ratio = "load.life_exponent", n: AngularVelocity = "drive.output_speed",
        },
        formula [
            "C[N] = f[N] * (s[mm] + c[mm]) / s[mm] * (60 * n[r/min] * l[h] / 1000000)^(1 / p)",
            "C[lbf] = f[lbf] * (s[in] + c[in]) / s[in] * (60 * n[r/min] * l[h] / 1000000)^(1 / p)",
        ],
        source ISO_281,
        turns {},
    }
    .model(),
    relation! {
        "load.life_turns/capacity": "Rating life of the near bearing in revolutions",
        "load.life_turns": Turns = turns(c, r, Exponent::new(p)?),
        from { c: Force = "load.bearing_capacity", r: Force = "load.reaction_near", p: Ratio = "load.life_exponent" },
        formula ["L[Mrev] = (c[N] / r[N])^p", "L[Mrev] = (c[lbf] / r[lbf])^p"],
        source ISO_281,
        turns {
            "exponent of the other kind": turns(c, r, other(p)) => "You used the exponent of the other kind of bearing; it is 3 for balls and 10/3 for rollers.";
            "load itself" with { f: Force = "load.total" }: turns(c, f, Exponent::new(p)?) => "You used the load at the sprocket; the bearing feels its own reaction.";
            "far bearing" with { rf: Force = "load.reaction_far" }: turns(c, rf, Exponent::new(p)?) => "You used the far bearing's reaction; the capacity belongs to the near one.";
            "upside down": turns(r, c, Exponent::new(p)?) => "You divided the load by the capacity; a greater load must shorten the life, so the capacity goes on top.";
            "no exponent": Turns(plain((c / r).value * 1e6)) => "You left the exponent out; life follows the ratio of capacity and load raised to it.";
            "exponent multiplied": Turns(plain((c / r).value * p.value * 1e6)) => "You multiplied by the exponent; raise the ratio to that power.";
            "squared": Turns(plain((c / r).value * (c / r).value * 1e6)) => "You squared the ratio; the exponent is 3 for balls and 10/3 for rollers.";
        },
    }
    .limits("nine of ten bearings last at least so long; load up to about half the capacity, clean oil of the right grade"),
    relation! {
        "load.life/capacity": "Rating life of the near bearing in hours",
        "load.life": Time = calc::l10_life(c, r, Exponent::new(p)?, n),
        from {
            c: Force = "load.bearing_capacity", r: Force = "load.reaction_near", p: Ratio = "load.life_exponent",
            n: AngularVelocity = "drive.output_speed",
        },
        formula [
            "L[h] = 1000000 / (60 * n[r/min]) * (c[N] / r[N])^p",
            "L[h] = 1000000 / (60 * n[r/min]) * (c[lbf] / r[lbf])^p",
        ],
        source ISO_281,
        turns {
            "minutes": calc::l10_life(c, r, Exponent::new(p)?, n).map(|l| l * 60.0) => "You gave minutes; the speed counts revolutions a minute, so divide by 60 for hours.";
            "seconds in an hour": calc::l10_life(c, r, Exponent::new(p)?, n).map(|l| l / 60.0) => "You divided by 3600; the speed counts revolutions a minute, so 60 minutes make the hour.";
            "exponent of the other kind": calc::l10_life(c, r, other(p), n) => "You used the exponent of the other kind of bearing; it is 3 for balls and 10/3 for rollers.";
            "load itself" with { f: Force = "load.total" }: calc::l10_life(c, f, Exponent::new(p)?, n) => "You used the load at the sprocket; the bearing feels its own reaction.";
            "far bearing" with { rf: Force = "load.reaction_far" }: calc::l10_life(c, rf, Exponent::new(p)?, n) => "You used the far bearing's reaction; the capacity belongs to the near one.";
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: calc::l10_life(c, r, Exponent::new(p)?, nm) => "You used the motor's speed; the bearing turns with the output shaft.";
            "no exponent": time_for(Turns(plain((c / r).value * 1e6)), n) => "You left the exponent out; life follows the ratio of capacity and load raised to it.";
            "upside down": calc::l10_life(r, c, Exponent::new(p)?, n) => "You divided the load by the capacity; a greater load must shorten the life, so the capacity goes on top.";
        },
    }
    .limits("nine of ten bearings last at least so long; load up to about half the capacity, clean oil of the right grade"),
    relation! {
        "load.life/turns": "Rating life in hours from the revolutions",
        "load.life": Time = time_for(l, n),
        from { l: Turns = "load.life_turns", n: AngularVelocity = "drive.output_speed" },
        formula ["L[h] = 1000000 * l[Mrev] / (60 * n[r/min])"],
        source ISO_281,
        turns {
            "minutes": time_for(l, n) * 60.0 => "You gave minutes; the speed counts revolutions a minute, so divide by 60 for hours.";
            "seconds in an hour": time_for(l, n) / 60.0 => "You divided by 3600; the speed counts revolutions a minute, so 60 minutes make the hour.";
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: time_for(l, nm) => "You used the motor's speed; the bearing turns with the output shaft.";
        },
    }
    .question()
    .rank(1),
    relation! {
        "load.life_share/loads": "Share of the bearing life that the slack strand's tension leaves",
        "load.life_share": Ratio = calc::life_ratio(o, f, Exponent::new(p)?),
        from { o: Force = "load.overhung", f: Force = "load.total", p: Ratio = "load.life_exponent" },
        formula ["q = (o / f)^p"],
        source ISO_281,
        turns {
            "inverted": calc::life_ratio(f, o, Exponent::new(p)?) => "You turned the ratio upside down; a greater load leaves less life, so the share is below 1.";
            "no exponent": o / f => "You left the exponent out; life falls with the load raised to it, far faster than the load grows.";
            "exponent of the other kind": calc::life_ratio(o, f, other(p)) => "You used the exponent of the other kind of bearing; it is 3 for balls and 10/3 for rollers.";
            "lost part": calc::life_ratio(o, f, Exponent::new(p)?).map(|q| plain(1.0 - q.value)) => "You gave the part of the life that is lost; the part that is left is asked.";
            "slack tension once" with { h: Force = "chain.slack_tension" }: calc::life_ratio(o, o + h, Exponent::new(p)?) => "You added the slack strand's tension once; both strands carry it, so it counts twice.";
            "slack tension four times" with { h: Force = "chain.slack_tension" }: calc::life_ratio(o, overhung::with_slack_tension(o, h * 2.0)?, Exponent::new(p)?) => "You counted the slack strand's tension four times; it counts once for each of the two strands.";
        },
    }
    .limits("same place, same speed: both loads have the same lever"),
];
