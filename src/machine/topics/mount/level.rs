//! Levelness of the base.

use drivecourse_calc::mount;
use drivecourse_calc::units::Length;

use super::{above, one_foot, one_metre};
use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::{Choice, Slope};

fn steepness(slope: Slope) -> Slope {
    Slope(slope.0.abs())
}

/// The height change in the reading's small unit, taken for a slope in the same unit.
fn taken_for_slope(level: Slope, run: Length, unit: Length) -> Slope {
    steepness(Slope(mount::height_change(level.0, run) / unit))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "mount.height_change/slope": "Height change over the base from its slope",
        "mount.height_change": Length = mount::height_change(s.0, l),
        from { s: Slope = "mount.level", l: Length = "mount.level_run" },
        formula ["h[mm] = s[mm/m] * l[m]", "h[in] = s[in/ft] * l[ft]"],
        source Derived("definition of slope"),
        turns {
            "run forgotten, metre": mount::height_change(s.0, one_metre()) => "You gave the level's reading as it stands; it is the change over one metre, so multiply by the length of the base in metres.";
            "run forgotten, foot": mount::height_change(s.0, one_foot()) => "You gave the level's reading as it stands; it is the change over one foot, so multiply by the length of the base in feet.";
            "half the run": mount::height_change(s.0, l / 2.0) => "You reckoned from the middle of the base; the height change runs from end to end.";
            "between feet" with { a: Length = "mount.along" }: mount::height_change(s.0, a) => "You took the distance between the feet; the question asks over the length of the base levelled.";
        },
    },
    relation! {
        "mount.level/height": "Slope of the base from its height change",
        "mount.level": Slope = mount::slope(h, l).map(Slope),
        from { h: Length = "mount.height_change", l: Length = "mount.level_run" },
        formula ["s[mm/m] = h[mm] / l[m]", "s[in/ft] = h[in] / l[ft]"],
        source Derived("definition of slope"),
        turns {
            "run forgotten, metre": mount::slope(h, one_metre()).map(Slope) => "You gave the height change itself; a slope is the height change in millimetres divided by the run in metres.";
            "run forgotten, foot": mount::slope(h, one_foot()).map(Slope) => "You gave the height change itself; a slope is the height change in inches divided by the run in feet.";
            "half the run": mount::slope(h, l / 2.0).map(Slope) => "You divided by half the base; the height change is over the whole of it.";
            "between feet" with { a: Length = "mount.along" }: mount::slope(h, a).map(Slope) => "You divided by the distance between the feet; the height change is over the length of the base levelled.";
        },
    }
    .inverse(),
    relation! {
        "mount.level_verdict/limit": "Verdict on the level of the base",
        "mount.level_verdict": Choice = above(steepness(s), limit),
        from { s: Slope = "mount.level", limit: Slope = "mount.level_limit" },
        formula [],
        source CommonPractice,
        turns {
            "sign kept": above(s, limit) => "You let a slope below nought pass; falling away is as far from level as rising.";
            "height judged, metre" with { l: Length = "mount.level_run" }: above(taken_for_slope(s, l, one_metre()), limit) => "You compared the height change over the whole base with a limit per metre; compare the slope itself.";
            "height judged, foot" with { l: Length = "mount.level_run" }: above(taken_for_slope(s, l, one_foot()), limit) => "You compared the height change over the whole base with a limit per foot; compare the slope itself.";
        },
    }
    .method("Compare the slope, rising or falling, with the largest slope allowed; right on the limit is level enough.")
    .limits("the gear maker's limit for the oil level; read the level again turned end for end"),
];
