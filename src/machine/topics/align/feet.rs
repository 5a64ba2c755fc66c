//! Moves of the feet, and the verdict against the limits.

use drivecourse_calc::align::Line;
use drivecourse_calc::units::{Length, Ratio};

use super::{SEEN, TRIANGLES, above, line, way};
use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::{Choice, Slope};

pub(super) const SIDEWAYS: &[&str] = &["towards 3 o'clock", "towards 9 o'clock", "leave them"];
pub(super) const SHIMS: &[&str] = &["add shims", "take shims out", "leave them"];
pub(super) const VERDICTS: &[&str] = &["within the limits", "align again"];

/// Move that brings a line onto the other shaft, at a distance from the measuring plane.
fn onto(line: Line, at: Length) -> Length {
    Line::default().at(at) - line.at(at)
}

fn verdict(offset: Length, slope: Slope, offset_limit: Length, slope_limit: Slope) -> Choice {
    Choice(u16::from(above(offset, offset_limit) || above(slope, slope_limit)))
}

macro_rules! foot_move {
    ($id:literal, $title:literal, $gives:literal, $y:literal, $m:literal, $x:literal, $other:literal) => {
        relation! {
            $id: $title,
            $gives: Length = onto(line(y, m), x),
            from { y: Length = $y, m: Slope = $m, x: Length = $x },
            formula ["u[mm] = -(y[mm] + m[mm/m] * x[mm] / 1000)", "u[in] = -(y[in] + m[mil/in] * x[in] / 1000)"],
            source TRIANGLES,
            turns {
                "feet swapped" with { o: Length = $other }: onto(line(y, m), o) => "You used the distance of the other pair of feet; front and rear each go by their own.";
                "wrong sign": -onto(line(y, m), x) => "You gave where the shaft stands; the move goes the other way.";
                "not halved": onto(line(2.0 * y, m), x) => "You took the whole rim reading for the offset; halve it first.";
                "radius": onto(line(y, Slope(2.0 * m.0)), x) => "You doubled the angle, as if the dial's circle were its radius; the face reading is taken over the whole circle.";
                "offset only": onto(line(y, Slope(Ratio::default())), x) => "You moved the feet by the offset only; the angle carries on to the feet.";
                "angle only": onto(line(Length::default(), m), x) => "You moved the feet by the angle's part only; add the offset at the measuring plane.";
                "angle's sign": onto(line(y, m), -x) => "You turned the sign of the angle's part; a positive angle makes the offset grow towards the feet.";
            },
        }
        .limits(SEEN)
    };
}

macro_rules! sideways {
    ($id:literal, $title:literal, $gives:literal, $u:literal) => {
        relation! {
            $id: $title,
            $gives: Choice = way(u, least),
            from { u: Length = $u, least: Length = "align.shim_least" },
            formula [],
            source CommonPractice,
            turns {
                "wrong way": way(-u, least) => "You went the wrong way; a positive move goes towards 3 o'clock, seen from the movable machine.";
            },
        }
        .method("A move no larger than the smallest one worth making is left. Otherwise positive goes towards 3 o'clock, negative towards 9 o'clock.")
        .limits(SEEN)
    };
}

macro_rules! judged {
    ($id:literal, $title:literal, $gives:literal, $y:literal, $m:literal) => {
        relation! {
            $id: $title,
            $gives: Choice = verdict(y, m, yl, ml),
            from {
                y: Length = $y, m: Slope = $m, yl: Length = "align.offset_limit", ml: Slope = "align.angle_limit",
            },
            formula [],
            source CommonPractice,
            turns {
                "offset only": verdict(y, Slope(Ratio::default()), yl, ml) => "You judged the offset only; the angle has a limit of its own.";
                "angle only": verdict(Length::default(), m, yl, ml) => "You judged the angle only; the offset has a limit of its own.";
                "not halved": verdict(2.0 * y, m, yl, ml) => "You held the whole dial reading against the limit; the limit is for the offset, half the reading.";
                "sign": verdict(if y.value < 0.0 { Length::default() } else { y }, if m.0.value < 0.0 { Slope(Ratio::default()) } else { m }, yl, ml) => "You let a negative figure pass; its sign tells only the side, its size is what the limit is for.";
            },
        }
        .method("Hold the size of the offset and the size of the angle each against its limit; both must meet it. A value on the limit passes.")
        .limits("with both machines as warm as they run, or with no growth to allow for; limits as the coupling's maker gives them")
    };
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "align.rear/feet": "Distance of the rear feet from the measuring plane",
        "align.rear": Length = x + d,
        from { x: Length = "align.front", d: Length = "align.feet_apart" },
        formula ["x_r = x + d"],
        source Derived("distances along one line"),
        turns {},
    }
    .model(),
    foot_move!(
        "align.move_front_v/line",
        "Vertical move of the front feet",
        "align.move_front_v",
        "align.offset_v",
        "align.angle_v",
        "align.front",
        "align.rear"
    ),
    foot_move!(
        "align.move_rear_v/line",
        "Vertical move of the rear feet",
        "align.move_rear_v",
        "align.offset_v",
        "align.angle_v",
        "align.rear",
        "align.front"
    ),
    foot_move!(
        "align.move_front_h/line",
        "Sideways move of the front feet",
        "align.move_front_h",
        "align.offset_h",
        "align.angle_h",
        "align.front",
        "align.rear"
    ),
    foot_move!(
        "align.move_rear_h/line",
        "Sideways move of the rear feet",
        "align.move_rear_h",
        "align.offset_h",
        "align.angle_h",
        "align.rear",
        "align.front"
    ),
    sideways!("align.way_front_h/sign", "Which way the front feet go", "align.way_front_h", "align.move_front_h"),
    sideways!("align.way_rear_h/sign", "Which way the rear feet go", "align.way_rear_h", "align.move_rear_h"),
    judged!(
        "align.verdict_v/limits",
        "Verdict on the vertical alignment",
        "align.verdict_v",
        "align.offset_v",
        "align.angle_v"
    ),
    judged!(
        "align.verdict_h/limits",
        "Verdict on the horizontal alignment",
        "align.verdict_h",
        "align.offset_h",
        "align.angle_h"
    ),
];
