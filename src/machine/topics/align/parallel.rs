//! Parallel shafts by two centre distances.

use drivecourse_calc::align::Line;
use drivecourse_calc::align::sprockets::{out_of_parallel, swing};
use drivecourse_calc::math;
use drivecourse_calc::units::{Angle, Length, Ratio, angle::radian, ratio::ratio};

use super::TRIANGLES;
use crate::relation::{Relation, relation};
use crate::source::Source::Derived;
use crate::typed::Slope;

const SAME: &str = "both centre distances taken alike, square to the shafts, at the height of the shafts";

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "align.centres_near/centres": "Centre distance measured at the sprockets",
        "align.centres_near": Length = c,
        from { c: Length = "chain.centres" },
        formula ["C = c"],
        source Derived("the sprockets' centres are the shafts'"),
        turns {},
    }
    .model(),
    relation! {
        "align.centres_far/twist": "Centre distance measured farther behind",
        "align.centres_far": Length = Line { offset: c, slope: Ratio::new::<ratio>(-math::tan(t.value)) }.at(a),
        from { c: Length = "chain.centres", t: Angle = "align.twist", a: Length = "align.apart" },
        formula ["C2 = c - a * tan(t[°])"],
        source TRIANGLES,
        turns {},
    }
    .model()
    .method("A sprocket whose far rim lies farther behind sits on a shaft that comes nearer behind."),
    relation! {
        "align.parallel/centres": "How much the shafts run apart",
        "align.parallel": Slope = out_of_parallel(c1, c2, a).map(Slope),
        from { c1: Length = "align.centres_near", c2: Length = "align.centres_far", a: Length = "align.apart" },
        formula ["m[mm/m] = 1000 * (c2[mm] - c1[mm]) / a[mm]", "m[mil/in] = 1000 * (c2[in] - c1[in]) / a[in]"],
        source TRIANGLES,
        turns {
            "wrong sign": out_of_parallel(c2, c1, a).map(Slope) => "You took the first centre distance less the second; positive means apart farther behind, so it is the second less the first.";
            "halved": out_of_parallel(c1, c2, a * 2.0).map(Slope) => "You halved it; the difference of the two centre distances is the whole of it.";
            "over the centres": out_of_parallel(c1, c2, c1).map(Slope) => "You divided by the centre distance; divide by the distance along the shafts between the two places.";
            "difference alone": out_of_parallel(c1, c2, Length::new::<drivecourse_calc::units::length::meter>(1.0)).map(Slope) => "You gave the difference as it was measured; a slope is that difference over the distance between the two places.";
        },
    }
    .limits(SAME),
    relation! {
        "align.twist/parallel": "Twist of the sprockets from how much the shafts run apart",
        "align.twist": Angle = Angle::new::<radian>(-math::atan(m.0.value)),
        from { m: Slope = "align.parallel" },
        formula ["t[°] = -atan(m[mm/m] / 1000)", "t[°] = -atan(m[mil/in] / 1000)"],
        source TRIANGLES,
        turns {
            "wrong sign": Angle::new::<radian>(math::atan(m.0.value)) => "You kept the sign; shafts that run apart behind bring the far rim of the sprocket forward, so it turns over.";
            "radians": Angle::new::<radian>(-m.0.value / 57.295_779_513) => "You gave the slope itself as degrees; take its arc tangent in degrees.";
        },
    }
    .question()
    .rank(1)
    .limits("sprockets square on their shafts"),
    relation! {
        "align.swing/pivot": "Move of the bearing that swings the shaft parallel",
        "align.swing": Length = swing(m.0, x),
        from { m: Slope = "align.parallel", x: Length = "align.pivot" },
        formula ["u[mm] = -m[mm/m] * x[mm] / 1000", "u[in] = -m[mil/in] * x[in] / 1000"],
        source TRIANGLES,
        turns {
            "wrong way": swing(m.0, -x) => "You moved the bearing the wrong way; shafts that run apart are closed, so the move is negative.";
            "measured distance" with { a: Length = "align.apart" }: swing(m.0, a) => "You moved it by what was measured between the two places; the bearing stands its own distance from the one that stays.";
            "halved": swing(m.0, x / 2.0) => "You halved the move; the bearing that stays is the pivot, so the other one makes the whole of it.";
        },
    }
    .limits("positive away from the other shaft; the bearing to be moved lies behind the one that stays"),
];
