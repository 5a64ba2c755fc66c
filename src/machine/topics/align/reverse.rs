//! Reverse indicators: a second rim in place of a face.

use drivecourse_calc::Error;
use drivecourse_calc::align::{Line, reverse};
use drivecourse_calc::units::Length;

use super::{CIRCLE, SEEN, TRIANGLES, line};
use crate::relation::{Relation, relation};
use crate::typed::Slope;

/// Offset at the movable hub from its own reading; the distance does not matter to it.
fn far(own: Length) -> Result<Length, Error> {
    let apart = Length::new::<drivecourse_calc::units::length::meter>(1.0);
    reverse::position(Length::default(), own, apart).map(|line| line.at(apart))
}

/// Angle between the shafts from the offsets at the two hubs.
fn angle(near: Length, far: Length, apart: Length) -> Result<Slope, Error> {
    Line::through((Length::default(), near), (apart, far)).map(|line| Slope(line.slope))
}

macro_rules! far_offset {
    ($id:literal, $title:literal, $gives:literal, $y:literal, $m:literal) => {
        relation! {
            $id: $title,
            $gives: Length = line(y, m).at(c),
            from { y: Length = $y, m: Slope = $m, c: Length = "align.dials_apart" },
            formula ["y2[mm] = y[mm] + m[mm/m] * c[mm] / 1000", "y2[in] = y[in] + m[mil/in] * c[in] / 1000"],
            source TRIANGLES,
            turns {
                "angle left out": y => "You took the offset at the measuring plane; the shafts stand at an angle, so it changes on the way to the movable hub.";
                "wrong sign": line(y, m).at(-c) => "You took the angle's part off; a positive angle makes the offset grow towards the feet.";
                "angle's part alone": line(Length::default(), m).at(c) => "You gave the angle's part alone; add it to the offset at the measuring plane.";
            },
        }
        .limits(SEEN)
    };
}

macro_rules! own_rim {
    ($id:literal, $title:literal, $gives:literal, $own:literal) => {
        relation! {
            $id: $title,
            $gives: Length = far(r),
            from { r: Length = $own },
            formula ["y2 = -r / 2"],
            source CIRCLE,
            turns {
                "not halved": Ok(2.0 * far(r)?) => "You took the whole reading for the offset; the dial sweeps the offset twice, so halve it.";
                "sign not turned": far(-r) => "You kept the sign; this dial reads the movable hub from the stationary shaft, so the movable shaft high reads negative.";
                "neither": Ok(2.0 * far(-r)?) => "You neither halved the reading nor turned its sign; the offset at the movable hub is minus half of it.";
            },
        }
        .question()
        .limits(SEEN)
    };
}

macro_rules! two_rims {
    ($id:literal, $title:literal, $gives:literal, $near:literal, $far:literal) => {
        relation! {
            $id: $title,
            $gives: Slope = angle(y1, y2, c),
            from { y1: Length = $near, y2: Length = $far, c: Length = "align.dials_apart" },
            formula ["m[mm/m] = 1000 * (y2[mm] - y1[mm]) / c[mm]", "m[mil/in] = 1000 * (y2[in] - y1[in]) / c[in]"],
            source TRIANGLES,
            turns {
                "sign not turned": angle(y1, -y2, c) => "You did not turn the movable hub's sign; that makes a plain offset look like an angle.";
                "wrong sign": angle(y2, y1, c) => "You took the offset at the movable hub off the other; the slope counts from the stationary hub towards the feet.";
                "not halved": angle(2.0 * y1, 2.0 * y2, c) => "You used the whole readings; halve each before the slope is taken.";
                "distance to the feet" with { x: Length = "align.front" }: angle(y1, y2, x) => "You divided by the distance of the front feet; the two offsets lie as far apart as the dials.";
                "face circle" with { d: Length = "align.circle" }: angle(y1, y2, d) => "You divided by the face dial's circle; here the two rim dials' distance takes its place.";
            },
        }
        .question()
        .rank(1)
        .limits(SEEN)
    };
}

pub(super) const RELATIONS: &[Relation] = &[
    far_offset!(
        "align.far_v/line",
        "Vertical offset at the movable hub",
        "align.far_v",
        "align.offset_v",
        "align.angle_v"
    ),
    far_offset!(
        "align.far_h/line",
        "Horizontal offset at the movable hub",
        "align.far_h",
        "align.offset_h",
        "align.angle_h"
    ),
    own_rim!(
        "align.far_v/rim",
        "Vertical offset at the movable hub from its rim reading",
        "align.far_v",
        "align.own_v"
    ),
    own_rim!(
        "align.far_h/rim",
        "Horizontal offset at the movable hub from its rim reading",
        "align.far_h",
        "align.own_h"
    ),
    two_rims!(
        "align.angle_v/reverse",
        "Vertical angle from the offsets at both hubs",
        "align.angle_v",
        "align.offset_v",
        "align.far_v"
    ),
    two_rims!(
        "align.angle_h/reverse",
        "Horizontal angle from the offsets at both hubs",
        "align.angle_h",
        "align.offset_h",
        "align.far_h"
    ),
];
