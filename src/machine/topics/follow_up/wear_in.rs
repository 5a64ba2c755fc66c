//! How a new chain stretches, what that does to its sag, and how long it lasts.

use drivecourse_calc::Error;
use drivecourse_calc::chain::{sag, wear};
use drivecourse_calc::follow_up::wear_in::WearIn;
use drivecourse_calc::units::{Length, Ratio, Time, ratio, time};
use drivecourse_calc::vibrate::trend::{Dated, Shape, fit};

use crate::relation::{Relation, relation};
use crate::source::Source::{self, Derived};

const CURVE: Source = Derived(
    "this course's own curve: bedding in that dies away, and steady wear; that a new chain stretches soonest is common practice",
);
const SAME: Source = Derived("every link grows by the same share, and all of it hangs in the slack strand");

/// Running time that the steady wear is given for.
fn thousand_hours() -> Time {
    Time::new::<time::hour>(1000.0)
}

fn curve(bedding: Ratio, time_constant: Time, steady: Ratio, run: Time) -> Result<Ratio, Error> {
    WearIn { bedding, time_constant, steady, steady_time: thousand_hours() }.elongation(run)
}

fn none() -> Ratio {
    Ratio::new::<ratio::ratio>(0.0)
}

fn growth(links: u32, pitch: Length, wear: Ratio) -> Result<Length, Error> {
    wear::worn_pitch(pitch, wear).and_then(|worn| wear::excess_in_span(links, worn, pitch * f64::from(links)))
}

fn left(first: (Time, Ratio), second: (Time, Ratio), limit: Ratio, now: Time) -> Result<Time, Error> {
    let dated = |(at, value)| Dated { at, value };
    fit(&[dated(first), dated(second)], Shape::Line)?.time_to(limit, now)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "follow.wear_in/curve": "Elongation of a new chain while it beds in",
        "follow.wear_in": Ratio = curve(bedding, tau, steady, run),
        from {
            bedding: Ratio = "follow.bedding", tau: Time = "follow.bedding_time", steady: Ratio = "follow.steady",
            run: Time = "follow.run",
        },
        formula ["e[] = bedding[] * (1 - exp(-run[h] / tau[h])) + steady[] * run[h] / 1000"],
        source CURVE,
        turns {
            "steady alone": curve(none(), tau, steady, run) => "You left the bedding in out; in its first hours a new chain stretches by it more than by wear.";
            "bedding alone": curve(bedding, tau, none(), run) => "You left the steady wear out.";
            "bedding at once": bedding + curve(none(), tau, steady, run)? => "You took the whole bedding in at once; it comes with its time constant.";
            "still to come": curve(none(), tau, steady, run)? + bedding - curve(bedding, tau, none(), run)? => "You took the part of the bedding in that is still to come; what has come is 1 less it.";
        },
    }
    .limits("pins and bushings that bed in under the usual load"),
    relation! {
        "follow.growth_in/links": "Growth of the whole chain in its first hours",
        "follow.growth_in": Length = growth(x, p, e),
        from { e: Ratio = "follow.wear_in", x: u32 = "chain.links", p: Length = "chain.pitch" },
        formula ["g = x * p * e[]"],
        source SAME,
        turns {
            "one strand": growth(x / 2, p, e) => "You took half the chain; the growth of both strands hangs in the slack one.";
            "one pitch": wear::worn_pitch(p, e).map(|worn| worn - p) => "You gave the growth of one pitch; multiply by the number of links.";
            "of the span" with { l: Length = "chain.span" }: l * e.value => "You took the elongation of the span; the whole chain has grown, and all of it hangs in the slack strand.";
        },
    },
    relation! {
        "follow.excess_in/sum": "Slack length after the first hours",
        "follow.excess_in": Length = e + g,
        from { e: Length = "chain.excess_wanted", g: Length = "follow.growth_in" },
        formula ["e = e + g"],
        source SAME,
        turns {
            "growth alone": g => "You gave the growth alone; the strand had its slack from the setting already.";
            "shared": e + g / 2.0 => "You gave half the growth to each strand; the working strand is pulled straight, so all of it hangs in the slack one.";
            "taken off": (e - g).abs() => "You took the growth off; a longer chain has more slack.";
        },
    },
    relation! {
        "follow.sag_in/excess": "Sag after the first hours",
        "follow.sag_in": Length = sag::sag_from_excess_gravity(e, l),
        from { e: Length = "follow.excess_in", l: Length = "chain.span" },
        formula ["s = sqrt(3 * e * l / 8)"],
        source Derived("first term of the arc length of a flat parabola"),
        turns {
            "growth added to the sag" with { s: Length = "chain.sag_wanted", g: Length = "follow.growth_in" }: s + g => "You added the growth to the sag; go through the slack length, for a little growth deepens the sag many times over.";
            "in step" with { s: Length = "chain.sag_wanted", before: Length = "chain.excess_wanted" }: s * (e / before) => "You scaled the sag in step with the slack; it goes with the square root.";
            "pressed": sag::sag_pressed_from_excess(e, l) => "You used the formula for a strand pressed to two straight halves; this one hangs in a curve.";
            "as set" with { s: Length = "chain.sag_wanted" }: s => "You gave the sag as it was set; the chain has grown since.";
        },
    }
    .limits("a chain set to the wanted sag when new, and not taken up since"),
    relation! {
        "follow.wear_1/curve": "Elongation at the first measurement",
        "follow.wear_1": Ratio = curve(bedding, tau, steady, t),
        from {
            bedding: Ratio = "follow.bedding", tau: Time = "follow.bedding_time", steady: Ratio = "follow.steady",
            t: Time = "follow.time_1",
        },
        formula ["e[] = bedding[] * (1 - exp(-t[h] / tau[h])) + steady[] * t[h] / 1000"],
        source CURVE,
        turns {},
    }
    .model(),
    relation! {
        "follow.wear_2/curve": "Elongation at the second measurement",
        "follow.wear_2": Ratio = curve(bedding, tau, steady, t),
        from {
            bedding: Ratio = "follow.bedding", tau: Time = "follow.bedding_time", steady: Ratio = "follow.steady",
            t: Time = "follow.time_2",
        },
        formula ["e[] = bedding[] * (1 - exp(-t[h] / tau[h])) + steady[] * t[h] / 1000"],
        source CURVE,
        turns {},
    }
    .model(),
    relation! {
        "follow.chain_hours/line": "Running time left to the wear limit",
        "follow.chain_hours": Time = left((t1, e1), (t2, e2), limit, t2),
        from {
            t1: Time = "follow.time_1", e1: Ratio = "follow.wear_1", t2: Time = "follow.time_2",
            e2: Ratio = "follow.wear_2", limit: Ratio = "chain.wear_limit",
        },
        formula ["t[h] = (limit[] - e2[]) * (t2[h] - t1[h]) / (e2[] - e1[])"],
        source Derived("a straight line through two measurements"),
        turns {
            "from new": left((t1 * 0.0, none()), (t2, e2), limit, t2) => "You drew the line from the new chain; the bedding in of the first hours lies in it and makes the wear look faster than it is.";
            "from the first measurement": left((t1, e1), (t2, e2), limit, t1) => "You counted from the first measurement; what is left counts from the second.";
            "life of the chain": left((t1, e1), (t2, e2), limit, t1 * 0.0) => "You gave the whole life of the chain; what is left counts from the second measurement.";
            "whole limit": left((t1, e1), (t2, e2), limit + e2, t2) => "You divided the whole limit by the wear an hour; only what is left of it counts.";
            "spent": left((t1, e1), (t2, e2), e2 + e2, t2) => "You worked out the time for the wear that is there already; what is left up to the limit counts.";
        },
    }
    .limits("both measured after bedding in, at the usual load and with the usual lubrication; the farther it reaches, the less it is worth"),
];
