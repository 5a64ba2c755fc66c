//! The pull of the chain on the shaft end.

use drivecourse_calc::Error;
use drivecourse_calc::load::overhung::{self as calc, DriveElement, FactorList};
use drivecourse_calc::load::torque;
use drivecourse_calc::units::{Angle, AngularVelocity, Force, Length, Power, Ratio, Torque, angle::degree, ratio};

use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "load.connection_factor/teeth": "Connection factor of a chain from the list by teeth",
        "load.connection_factor": Ratio = by_teeth(DriveElement::Chain { teeth: z }),
        from { z: u32 = "chain.teeth_small" },
        formula [],
        source CommonPractice,
        turns {
            "large sprocket" with { z2: u32 = "chain.teeth_large" }: by_teeth(DriveElement::Chain { teeth: z2 }) => "You looked up the large sprocket's teeth; the factor goes by the sprocket on this shaft.";
            "first row": by_teeth(DriveElement::Chain { teeth: 12 }) => "You took the row for fewer than 13 teeth.";
            "middle row": by_teeth(DriveElement::Chain { teeth: 13 }) => "You took the row for 13 to 19 teeth.";
            "last row": by_teeth(DriveElement::Chain { teeth: 20 }) => "You took the row for 20 teeth and more.";
            "gear": by_teeth(DriveElement::Gear { teeth: z }) => "You took the factor of a gear; a chain has rows of its own.";
            "V-belt": by_teeth(DriveElement::VBelt) => "You took the factor of a V-belt; a chain needs no pretension and has a smaller one.";
        },
    }
    .method("Fewer than 13 teeth: 1.40. 13 to 19 teeth: 1.30. 20 teeth and more: 1.00.")
    .limits("lists differ from maker to maker: name the list, and follow the maker of the reducer")
    .lookup()
    .question(),
    relation! {
        "load.overhung/torque": "Overhung load from the torque on the output shaft",
        "load.overhung": Force = calc::overhung_load(t, d, kc, kl, ks),
        from {
            t: Torque = "drive.output_torque", d: Length = "chain.pitch_dia_small",
            kc: Ratio = "load.connection_factor", kl: Ratio = "load.location_factor", ks: Ratio = "load.service_factor",
        },
        formula [
            "F[N] = 2000 * t[N·m] * kc * kl * ks / d[mm]",
            "F[lbf] = 2 * t[lbf·in] * kc * kl * ks / d[in]",
        ],
        source CommonPractice,
        turns {
            "radius for diameter": calc::overhung_load(t, d / 2.0, kc, kl, ks) => "You divided twice the torque by the radius; the 2 in the formula already turns the pitch diameter into a radius.";
            "diameter for radius": calc::overhung_load(t / 2.0, d, kc, kl, ks) => "You divided the torque by the whole diameter; the chain pulls at the radius, so twice the torque goes over the diameter.";
            "motor torque" with { tm: Torque = "drive.motor_torque" }: calc::overhung_load(tm, d, kc, kl, ks) => "You used the motor's torque; the sprocket sits on the output shaft, whose torque is greater by the ratio.";
            "ratio again" with { i: Ratio = "drive.ratio" }: calc::overhung_load(t * i.value, d, kc, kl, ks) => "You multiplied the output torque by the ratio once more; it already holds the ratio.";
            "efficiency again" with { e: Ratio = "drive.efficiency" }: calc::overhung_load(t * e.value, d, kc, kl, ks) => "You took the efficiency off again; the output torque already has the losses taken off.";
            "connection factor left out": calc::overhung_load(t, d, one(), kl, ks) => "You left the connection factor out; multiply the load by it.";
            "location factor left out": calc::overhung_load(t, d, kc, one(), ks) => "You left the location factor out; multiply the load by it.";
            "service factor left out": calc::overhung_load(t, d, kc, kl, one()) => "You left the service factor out; multiply the load by it.";
            "all factors left out": calc::overhung_load(t, d, one(), one(), one()) => "You gave the bare pull of the chain; the overhung load is the pull times the connection, location and service factors.";
            "divided by the factors": calc::overhung_load(t, d, one() / kc, one() / kl, one() / ks) => "You divided by the factors; each of them makes the load greater, so multiply.";
            "factors added": calc::overhung_load(t, d, kc + kl + ks, one(), one()) => "You added the three factors up; multiply them with each other.";
            "outside diameter" with { da: Length = "chain.outside_dia_small" }: calc::overhung_load(t, da, kc, kl, ks) => "You used the outside diameter of the sprocket; the chain pulls at the pitch circle.";
            "large sprocket" with { d2: Length = "chain.pitch_dia_large" }: calc::overhung_load(t, d2, kc, kl, ks) => "You used the large sprocket's diameter; the one on the reducer's shaft is the small sprocket.";
            "shaft diameter" with { ds: Length = "load.shaft_diameter" }: calc::overhung_load(t, ds, kc, kl, ks) => "You used the diameter of the shaft; the chain pulls at the pitch circle of the sprocket.";
            "arm along the shaft" with { x: Length = "load.sprocket_distance" }: calc::overhung_load(t / 2.0, x, kc, kl, ks) => "You divided the torque by the distance along the shaft; the arm of the torque is the radius of the sprocket.";
        },
    }
    .limits("pitch diameter, never outside diameter; factors from the list of the reducer's maker, since lists differ; use the location factor or the rating at the sprocket's place, not both"),
    relation! {
        "load.overhung/power": "Overhung load straight from power and speed",
        "load.overhung": Force = calc::overhung_load(torque::torque(torque::output_power(p, e)?, n)?, d, kc, kl, ks),
        from {
            p: Power = "drive.power", e: Ratio = "drive.efficiency", n: AngularVelocity = "drive.output_speed",
            d: Length = "chain.pitch_dia_small",
            kc: Ratio = "load.connection_factor", kl: Ratio = "load.location_factor", ks: Ratio = "load.service_factor",
        },
        formula [
            "F[N] = 19100000 * p[kW] * e * kc * kl * ks / (n[r/min] * d[mm])",
            "F[lbf] = 126000 * p[hp] * e * kc * kl * ks / (n[r/min] * d[in])",
        ],
        source CommonPractice,
        turns {
            "motor speed" with { nm: AngularVelocity = "drive.motor_speed" }: calc::overhung_load(torque::torque(torque::output_power(p, e)?, nm)?, d, kc, kl, ks) => "You used the motor's speed; the sprocket turns with the output shaft.";
            "efficiency left out": calc::overhung_load(torque::torque(p, n)?, d, kc, kl, ks) => "You left the efficiency out; the reducer's losses never reach the chain.";
            "efficiency divided": calc::overhung_load(torque::torque(p / e, n)?, d, kc, kl, ks) => "You divided by the efficiency; the losses make the load smaller, so multiply.";
            "plate power" with { pm: Power = "drive.motor_power" }: calc::overhung_load(torque::torque(torque::output_power(pm, e)?, n)?, d, kc, kl, ks) => "You used the power on the plate; this step wants the power the motor delivers, read at the power meter.";
            "radius for diameter": calc::overhung_load(torque::torque(torque::output_power(p, e)?, n)?, d / 2.0, kc, kl, ks) => "You divided by the radius; the constant of this formula is made for the pitch diameter.";
            "torque's constant": calc::overhung_load(torque::torque(torque::output_power(p, e)?, n)?, d * 2.0, kc, kl, ks) => "You took the constant of the torque formula; with the diameter below, the constant is twice as great.";
            "connection factor left out": calc::overhung_load(torque::torque(torque::output_power(p, e)?, n)?, d, one(), kl, ks) => "You left the connection factor out; multiply the load by it.";
            "location factor left out": calc::overhung_load(torque::torque(torque::output_power(p, e)?, n)?, d, kc, one(), ks) => "You left the location factor out; multiply the load by it.";
            "service factor left out": calc::overhung_load(torque::torque(torque::output_power(p, e)?, n)?, d, kc, kl, one()) => "You left the service factor out; multiply the load by it.";
            "all factors left out": calc::overhung_load(torque::torque(torque::output_power(p, e)?, n)?, d, one(), one(), one()) => "You gave the bare pull of the chain; the overhung load is the pull times the connection, location and service factors.";
        },
    }
    .question()
    .rank(1)
    .limits("126 000 is rounded down by 0.04 %"),
    relation! {
        "load.overhung/pull": "Overhung load from the running pull of the chain",
        "load.overhung": Force = f * kc * kl * ks,
        from {
            f: Force = "chain.pull",
            kc: Ratio = "load.connection_factor", kl: Ratio = "load.location_factor", ks: Ratio = "load.service_factor",
        },
        formula ["F = f * kc * kl * ks"],
        source CommonPractice,
        turns {
            "connection factor left out": f * kl * ks => "You left the connection factor out; multiply the pull by it.";
            "location factor left out": f * kc * ks => "You left the location factor out; multiply the pull by it.";
            "service factor left out": f * kc * kl => "You left the service factor out; multiply the pull by it.";
            "all factors left out": f => "You gave the bare pull of the chain; the overhung load is the pull times the connection, location and service factors.";
            "divided by the factors": f / (kc * kl * ks) => "You divided by the factors; each of them makes the load greater, so multiply.";
            "both strands": f * kc * kl * ks * 2.0 => "You doubled the pull for two strands; only the tight strand carries the running pull.";
        },
    }
    .question()
    .rank(2),
    relation! {
        "load.total/slack": "Whole load on the shaft end, with the tension of the slack strand",
        "load.total": Force = calc::with_slack_tension(f, h),
        from { f: Force = "load.overhung", h: Force = "chain.slack_tension" },
        formula ["F = f + 2 * h"],
        source Derived("statics of two parallel strands: the slack one pulls with its tension, the tight one with the running pull on top of it"),
        turns {
            "slack tension once": f + h => "You added the slack strand's tension once; both strands carry it, so it counts twice.";
            "slack tension left out": f => "You left the slack strand's tension out; both strands pull with it, so it adds twice.";
            "slack tension subtracted": f - h * 2.0 => "You subtracted the slack strand's tension; both strands pull the shaft the same way, so it adds.";
            "strands' difference": f - h => "You took the difference of the two strands; that makes the torque, but the shaft feels their sum.";
            "slack tension four times": f + h * 4.0 => "You added the slack strand's tension four times; it counts once for each of the two strands.";
            "doubled": (f + h) * 2.0 => "You doubled the running load as well; only the slack strand's tension counts twice.";
            "slack tension alone": h * 2.0 => "You gave only the tension that the chain is set with; the running load comes on top.";
        },
    }
    .limits("strands taken as parallel"),
    relation! {
        "load.resultant/wrap": "Pull of both strands together from the angle between them",
        "load.resultant": Force = calc::strand_resultant(f + h, h, w),
        from { f: Force = "chain.pull", h: Force = "chain.slack_tension", w: Angle = "chain.wrap_small" },
        formula ["R = sqrt((f + h)^2 + h^2 - 2 * (f + h) * h * cos(w[°]))"],
        source Derived("law of cosines: the strands leave the sprocket at 180° less the wrap to each other"),
        turns {
            "difference": f => "You gave the running pull; the slack strand pulls on the shaft as well, and so does the tight one by as much more.";
            "tight strand without the slack pull": calc::strand_resultant(f, h, w) => "You gave the tight strand the running pull alone; it carries the slack strand's pull on top of it.";
            "slack strand left out": f + h => "You left the slack strand out; both pull on the shaft.";
            "right angle": calc::strand_resultant(f + h, h, Angle::new::<degree>(90.0)) => "You added the squares as if the strands stood at right angles; they are all but parallel.";
            "plus for minus": calc::strand_resultant(f + h, h, Angle::new::<degree>(180.0) - w) => "You put a plus before the cosine of the wrap; it is more than a right angle, so its cosine is negative already.";
            "half the wrap": calc::strand_resultant(f + h, h, w / 2.0) => "You took half the wrap; the strands leave at both ends of the whole of it.";
            "angle left out": calc::with_slack_tension(f, h) => "You added the two pulls straight; the strands are not quite parallel.";
        },
    }
    .limits("the bare pulls, without factors; for a wrap of 180° it is the running pull and twice the slack strand's"),
    relation! {
        "load.slack_allowed/loads": "Tension of the slack strand that the shaft end would still bear",
        "load.slack_allowed": Force = half_of_what_is_left(a, f),
        from { a: Force = "load.allowable", f: Force = "load.overhung" },
        formula ["H = (a - f) / 2"],
        source Derived("whole load set equal to the load allowed"),
        turns {
            "not halved": a - f => "You gave the slack strand all that is left; both strands carry its tension, so each may take half.";
            "rating as it stands" with { fc: Force = "load.rating_middle" }: half_of_what_is_left(fc, f) => "You used the rating at the middle of the shaft end; use the load allowed at the sprocket's place.";
            "running load left out": a / 2.0 => "You gave the slack strand the whole load allowed; the running load takes its part first.";
            "whole load" with { t: Force = "load.total" }: half_of_what_is_left(a, t) => "You took off the whole load, in which the present slack tension already is; take off the running load.";
        },
    }
    .inverse()
    .limits("a bound of the shaft end and no setting: the chain is set by the window of its sag, which is reached long before"),
    relation! {
        "load.smallest_sprocket/allowed": "Smallest pitch diameter that keeps to the load allowed",
        "load.smallest_sprocket": Length = calc::smallest_pitch_diameter(t, a - h * 2.0, kc, kl, ks),
        from {
            t: Torque = "drive.output_torque", a: Force = "load.allowable", h: Force = "chain.slack_tension",
            kc: Ratio = "load.connection_factor", kl: Ratio = "load.location_factor", ks: Ratio = "load.service_factor",
        },
        formula [
            "D[mm] = 2000 * t[N·m] * kc * kl * ks / (a[N] - 2 * h[N])",
            "D[in] = 2 * t[lbf·in] * kc * kl * ks / (a[lbf] - 2 * h[lbf])",
        ],
        source Derived("overhung load and slack tension set equal to the load allowed"),
        turns {
            "radius": calc::smallest_pitch_diameter(t / 2.0, a - h * 2.0, kc, kl, ks) => "You worked out the radius; the step asks for the pitch diameter.";
            "slack tension left out": calc::smallest_pitch_diameter(t, a, kc, kl, ks) => "You gave the whole load allowed to the running chain; twice the slack strand's tension comes off it first.";
            "slack tension once": calc::smallest_pitch_diameter(t, a - h, kc, kl, ks) => "You took the slack strand's tension off once; both strands carry it, so it comes off twice.";
            "rating" with { fc: Force = "load.rating_middle" }: calc::smallest_pitch_diameter(t, fc - h * 2.0, kc, kl, ks) => "You used the rating at the middle of the shaft end; use the load allowed at the sprocket's place.";
            "motor torque" with { tm: Torque = "drive.motor_torque" }: calc::smallest_pitch_diameter(tm, a - h * 2.0, kc, kl, ks) => "You used the motor's torque; the sprocket sits on the output shaft, whose torque is greater by the ratio.";
            "connection factor left out": calc::smallest_pitch_diameter(t, a - h * 2.0, one(), kl, ks) => "You left the connection factor out; it makes the sprocket greater.";
            "location factor left out": calc::smallest_pitch_diameter(t, a - h * 2.0, kc, one(), ks) => "You left the location factor out; it makes the sprocket greater.";
            "service factor left out": calc::smallest_pitch_diameter(t, a - h * 2.0, kc, kl, one()) => "You left the service factor out; it makes the sprocket greater.";
            "all factors left out": calc::smallest_pitch_diameter(t, a - h * 2.0, one(), one(), one()) => "You left the connection, location and service factors out; they make the sprocket greater.";
            "upside down" with { f: Force = "load.total", d: Length = "chain.pitch_dia_small" }: d * (a / f).value => "You scaled the diameter with the load; a smaller sprocket makes a greater load, so the ratio goes the other way up.";
        },
    }
    .inverse()
    .limits("torque and slack tension unchanged; take the next greater sprocket"),
];

fn half_of_what_is_left(allowed: Force, running: Force) -> Result<Force, Error> {
    if running <= allowed { Ok((allowed - running) / 2.0) } else { Err(Error::none("slack tension")) }
}

/// The list by teeth; the smaller factor where it gives a range.
fn by_teeth(element: DriveElement) -> Result<Ratio, Error> {
    calc::connection_factor(FactorList::E, element).map(|range| range.low)
}

fn one() -> Ratio {
    Ratio::new::<ratio::ratio>(1.0)
}
