//! Pull of the slack strand from its sag.

use drivecourse_calc::chain::length::{self, Strand};
use drivecourse_calc::chain::{catenary, tension};
use drivecourse_calc::math::{self, STANDARD_GRAVITY};
use drivecourse_calc::units::{Angle, Force, Length, LinearMassDensity, angle::degree};

use crate::relation::{Relation, relation};
use crate::source::Source::{self, Derived};

fn level() -> Angle {
    Angle::new::<degree>(0.0)
}

/// Mass per length as it lies across a strand at `incline`.
fn across(mass: LinearMassDensity, incline: Angle) -> LinearMassDensity {
    mass * math::cos(incline.value)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "chain.strand_incline/lower": "Incline of the slack strand",
        "chain.strand_incline": Angle = length::strand_incline(b, a, Strand::Lower),
        from { b: Angle = "chain.incline", a: Angle = "chain.tangent_angle" },
        formula ["t = b - a"],
        source Derived("common tangents of two circles"),
        turns {
            "upper": length::strand_incline(b, a, Strand::Upper) => "You added the strand's angle; the lower strand climbs less than the line of centres.";
            "line of centres": b => "You took the incline of the line of centres; the strand lies at an angle to it.";
            "doubled": length::strand_incline(b, 2.0 * a, Strand::Lower) => "You took off the angle between the two strands; only half of it lies between a strand and the line of centres.";
        },
    }
    .limits("slack strand below, line of centres climbing towards the large sprocket"),
    relation! {
        "chain.slack_tension/parabola": "Pull of the slack strand from its sag",
        "chain.slack_tension": Force = tension::horizontal_tension(q, l, s, t),
        from {
            q: LinearMassDensity = "chain.mass", l: Length = "chain.span", s: Length = "chain.sag",
            t: Angle = "chain.strand_incline",
        },
        formula [
            "H[N] = 9.80665 * q[kg/m] * cos(t) * l[m]^2 / (8 * s[m])",
            "H[lbf] = q[lb/ft] * cos(t) * l[ft]^2 / (8 * s[ft])",
        ],
        source Source::published("A. K. Tayal, Engineering Mechanics", "ch. 10, parabolic cable"),
        turns {
            "no eight": tension::horizontal_tension(q, l, s, t).map(|h| 8.0 * h) => "You forgot the 8 under the line.";
            "mass for weight": tension::horizontal_tension(q, l, s, t).map(|h| h / STANDARD_GRAVITY) => "You used the mass per metre as a weight; multiply by 9.81 m/s² to get newtons per metre.";
            "four": tension::horizontal_tension(q, l, s, t).map(|h| 2.0 * h) => "You divided by 4 instead of 8.";
            "half span": tension::horizontal_tension(q, l / 2.0, s, t) => "You took half the span; the 8 already allows for that, so put the whole span in.";
            "movement" with { m: Length = "chain.movement" }: tension::horizontal_tension(q, l, m, t) => "You put the total movement where the hanging sag belongs.";
            "pressed" with { p: Length = "chain.sag_pressed" }: tension::horizontal_tension(q, l, p, t) => "You put the pressed depth where the hanging sag belongs.";
            "incline left out": tension::horizontal_tension(q, l, s, level()) => "You left the incline out; only the part of the weight across the strand makes it sag.";
            "sine": tension::horizontal_tension(q, l, s, Angle::new::<degree>(90.0) - t) => "You took the sine of the incline; the weight across the strand goes with its cosine.";
            "whole weight": tension::horizontal_tension(q, l, l / 8.0, t) => "You worked out the weight of the strand; its pull is far larger, the flatter it hangs.";
            "sag and span swapped": tension::horizontal_tension(q, s, l, t) => "You swapped sag and span.";
        },
    }
    .limits("one strand; within 0.2 % up to a sag of 2 % of the span; strand no steeper than 85°"),
    relation! {
        "chain.slack_tension/catenary": "Pull of the slack strand by the exact curve",
        "chain.slack_tension": Force = catenary::horizontal_tension(across(q, t), l, s),
        from {
            q: LinearMassDensity = "chain.mass", l: Length = "chain.span", s: Length = "chain.sag",
            t: Angle = "chain.strand_incline",
        },
        formula [],
        source Derived("catenary y = c cosh(x/c), H = w c"),
        turns {
            "mass for weight": catenary::horizontal_tension(across(q, t), l, s).map(|h| h / STANDARD_GRAVITY) => "You used the mass per metre as a weight; multiply by 9.81 m/s² to get newtons per metre.";
            "movement" with { m: Length = "chain.movement" }: catenary::horizontal_tension(across(q, t), l, m) => "You put the total movement where the hanging sag belongs.";
            "incline left out": catenary::horizontal_tension(q, l, s) => "You left the incline out; only the part of the weight across the strand makes it sag.";
        },
    }
    .method("Find u from sinh²(u/2)/u = δ/L by trial; the pull is w L/(2u), with w the weight per length across the strand.")
    .limits("one strand; exact when level")
    .rank(1)
    .question(),
    relation! {
        "chain.sag/tension": "Sag at which the slack strand pulls so hard",
        "chain.sag": Length = tension::sag_from_tension(q, l, h, t),
        from {
            q: LinearMassDensity = "chain.mass", l: Length = "chain.span", h: Force = "chain.slack_tension",
            t: Angle = "chain.strand_incline",
        },
        formula [
            "s[mm] = 9806.65 * q[kg/m] * cos(t) * l[m]^2 / (8 * h[N])",
            "s[in] = 12 * q[lb/ft] * cos(t) * l[ft]^2 / (8 * h[lbf])",
        ],
        source Source::published("A. K. Tayal, Engineering Mechanics", "ch. 10, parabolic cable"),
        turns {
            "no eight": tension::sag_from_tension(q, l, h, t).map(|s| 8.0 * s) => "You forgot the 8 under the line.";
            "four": tension::sag_from_tension(q, l, h, t).map(|s| 2.0 * s) => "You divided by 4 instead of 8.";
            "mass for weight": tension::sag_from_tension(q, l, h, t).map(|s| s / STANDARD_GRAVITY) => "You used the mass per metre as a weight; multiply by 9.81 m/s² to get newtons per metre.";
            "half span": tension::sag_from_tension(q, l / 2.0, h, t) => "You took half the span; the 8 already allows for that, so put the whole span in.";
            "incline left out": tension::sag_from_tension(q, l, h, level()) => "You left the incline out; only the part of the weight across the strand makes it sag.";
            "sine": tension::sag_from_tension(q, l, h, Angle::new::<degree>(90.0) - t) => "You took the sine of the incline; the weight across the strand goes with its cosine.";
            "both strands": tension::sag_from_tension(q, l, h * 2.0, t) => "You doubled the pull for two strands; each strand pulls with its own tension, and this one hangs by it alone.";
            "sag wanted" with { w: Length = "chain.sag_wanted" }: w => "You gave the sag wanted; the sag that belongs to this pull is asked.";
        },
    }
    .limits("one strand; within 0.2 % up to a sag of 2 % of the span; strand no steeper than 85°")
    .rank(2)
    .inverse(),
    relation! {
        "chain.sag/tension, exact curve": "Sag at which the slack strand pulls so hard, exact curve",
        "chain.sag": Length = catenary::sag_from_tension(across(q, t), l, h),
        from {
            q: LinearMassDensity = "chain.mass", l: Length = "chain.span", h: Force = "chain.slack_tension",
            t: Angle = "chain.strand_incline",
        },
        formula [],
        source Derived("catenary y = c cosh(x/c), H = w c"),
        turns {
            "mass for weight": catenary::sag_from_tension(across(q, t), l, h * STANDARD_GRAVITY) => "You used the mass per metre as a weight; multiply by 9.81 m/s² to get newtons per metre.";
            "incline left out": catenary::sag_from_tension(q, l, h) => "You left the incline out; only the part of the weight across the strand makes it sag.";
            "half span": catenary::sag_from_tension(across(q, t), l / 2.0, h) => "You put half the span where the formula has the whole; it halves it itself.";
        },
    }
    .method("With u = w L/(2 H), w the weight per length across the strand, the sag is L sinh²(u/2)/u.")
    .limits("one strand; exact when level")
    .rank(3)
    .inverse(),
];
