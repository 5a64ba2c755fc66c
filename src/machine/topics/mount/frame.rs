//! The four-footed frame: twist, loose foot, gap, dial rises.

use drivecourse_calc::Error;
use drivecourse_calc::mount::{self, Foot};
use drivecourse_calc::units::Length;

use super::{FEET, above};
use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice, Derived};
use crate::typed::Choice;

const STATICS: Source = Derived("statics of a rigid frame on four supports");
const THREE_POINTS: Source = Derived("geometry of a plane through three points");
const FEET_RULE: &str = "feet numbered clockwise seen from above, 1 to 2 along the shaft; a high pad counts positive";
const RIGID: &str = "rigid frame, heights small against the plan";
const RISE: &str = "The rigid frame stands at the loosened foot at the height of the plane through the other three; \
                    where the pad is higher than that, nothing moves.";

fn choice(foot: Option<Foot>) -> Choice {
    Choice(foot.map_or(FEET.len() as u16 - 1, |foot| u16::from(foot.number()) - 1))
}

/// The foot that `turned` makes of the chosen one; none stays none.
fn other_foot(foot: Choice, turned: impl FnOnce(Foot) -> Result<Foot, Error>) -> Result<Choice, Error> {
    if foot == choice(None) {
        return Ok(foot);
    }
    let number = u8::try_from(foot.0).unwrap_or(u8::MAX).saturating_add(1);
    Ok(choice(Some(turned(Foot::from_number(number)?)?)))
}

/// The foot across the width: 1 and 4, 2 and 3.
fn across(foot: Foot) -> Result<Foot, Error> {
    Foot::from_number(5 - foot.number())
}

fn lowest_pad(heights: [Length; 4]) -> Choice {
    let mut lowest = Foot::One;
    for foot in Foot::ALL {
        if heights[foot.index()] < heights[lowest.index()] {
            lowest = foot;
        }
    }
    choice(Some(lowest))
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "mount.twist/diagonals": "Twist of the base from the four pad heights",
        "mount.twist": Length = mount::twist([e1, e2, e3, e4]),
        from {
            e1: Length = "mount.height_1", e2: Length = "mount.height_2",
            e3: Length = "mount.height_3", e4: Length = "mount.height_4",
        },
        formula ["t = (e1 + e3) - (e2 + e4)"],
        source STATICS,
        turns {
            "sides": mount::twist([e1, e3, e2, e4]) => "You paired feet along a side; the twist compares the two diagonals, 1 with 3 and 2 with 4.";
            "all added": e1 + e2 + e3 + e4 => "You added all four heights; one diagonal counts positive, the other negative.";
            "halved": mount::twist([e1, e2, e3, e4]) / 2.0 => "You halved the twist; the fourth foot shows the whole of it.";
            "one diagonal": e1 + e3 => "You added the heights of one diagonal and left out the other; the twist is the difference of the two sums.";
            "other way round": mount::twist([e2, e3, e4, e1]) => "You took diagonal 1-3 from diagonal 2-4; the twist counts diagonal 1-3 positive.";
        },
    }
    .limits(FEET_RULE),
    relation! {
        "mount.loose_foot/weight": "Foot that does not touch, from the pad heights and the line of the weight",
        "mount.loose_foot": Choice = mount::seat([e1, e2, e3, e4], a, b, x, y).map(|seat| choice(seat.loose)),
        from {
            e1: Length = "mount.height_1", e2: Length = "mount.height_2",
            e3: Length = "mount.height_3", e4: Length = "mount.height_4",
            a: Length = "mount.along", b: Length = "mount.across",
            x: Length = "mount.weight_along", y: Length = "mount.weight_across",
        },
        formula [],
        source STATICS,
        turns {
            "wrong diagonal": mount::seat([-e1, -e2, -e3, -e4], a, b, x, y).map(|seat| choice(seat.loose))
                => "You looked for the loose foot on the high diagonal; both feet of the high diagonal carry the frame, so it hangs clear on the low one.";
            "weight side": mount::seat([e1, e2, e3, e4], a, b, x, y).map(|seat| choice(seat.opens_when_rocked))
                => "You named the foot the weight presses down; that one touches, and the opposite foot of the same diagonal hangs clear.";
            "lowest pad": lowest_pad([e1, e2, e3, e4])
                => "You took the lowest pad; a tilted base has a lowest pad too, so first compare the diagonals, then see on which side the weight lies.";
        },
    }
    .method(
        "Add the heights of each diagonal. Both feet of the higher diagonal touch. Of the lower diagonal, the foot on \
         the weight's side touches and its opposite hangs clear. Equal sums: none is loose.",
    )
    .limits(RIGID),
    relation! {
        "mount.rocked_foot/opposite": "Foot that opens when the frame is rocked",
        "mount.rocked_foot": Choice = other_foot(loose, |foot| Ok(foot.opposite())),
        from { loose: Choice = "mount.loose_foot" },
        formula [],
        source STATICS,
        turns {
            "same foot": loose => "You named the loose foot itself; pressed down, it closes, and the gap moves to the other end of its diagonal.";
            "foot beside it": other_foot(loose, |foot| across(foot.opposite())) => "You named the next foot along the side; that one stands on the high diagonal and keeps touching.";
            "foot across": other_foot(loose, across) => "You named the foot across the frame; that one stands on the high diagonal and keeps touching.";
        },
    }
    .method("The frame rocks over the high diagonal, so the gap moves to the opposite foot of the low diagonal."),
    relation! {
        "mount.gap/twist": "Gap under the loose foot from the twist",
        "mount.gap": Length = mount::gap(t),
        from { t: Length = "mount.twist" },
        formula ["g = abs(t)"],
        source STATICS,
        turns {
            "halved": mount::gap(t) / 2.0 => "You halved the gap; one foot hangs clear by the whole twist while the other three touch.";
            "both feet added": mount::gap(t) * 2.0 => "You added the gaps of both feet of the diagonal; only one opens at a time, and each shows the whole gap.";
        },
    }
    .limits(RIGID),
    relation! {
        "mount.gap/worst_rise": "Gap under the loose foot from the largest dial rise",
        "mount.gap": Length = mount::gap(r),
        from { r: Length = "mount.worst_rise" },
        formula ["g = r"],
        source THREE_POINTS,
        turns {
            "both feet added": mount::gap(r) * 2.0 => "You added the rises of both feet of the diagonal; each shows the whole gap, and one shim under one of them cures both.";
            "halved": mount::gap(r) / 2.0 => "You halved the rise; the whole rise is the gap to fill under one foot.";
            "averaged" with { r1: Length = "mount.rise_1", r2: Length = "mount.rise_2", r3: Length = "mount.rise_3", r4: Length = "mount.rise_4" }: mount::gap(r1 + r2 + r3 + r4) / 4.0 => "You averaged the four rises; the feet that stay down hide the one that lifts.";
        },
    }
    .question()
    .rank(1)
    .limits("tight bolts had drawn the frame down on all four pads"),
    relation! {
        "mount.gap_verdict/limit": "Verdict on the gap under a foot",
        "mount.gap_verdict": Choice = above(g, limit),
        from { g: Length = "mount.gap", limit: Length = "mount.gap_limit" },
        formula [],
        source CommonPractice,
        turns {
            "halved": above(g / 2.0, limit) => "You shared the gap between two feet before judging it; one foot shows the whole gap and is judged by it.";
            "both feet added": above(g * 2.0, limit) => "You added the gaps of both feet of the diagonal before judging; each foot is judged by its own gap.";
            "pad heights" with { e1: Length = "mount.height_1", e2: Length = "mount.height_2", e3: Length = "mount.height_3", e4: Length = "mount.height_4" }: above(mount::worst_rise([e1.abs(), e2.abs(), e3.abs(), e4.abs()]), limit) => "You judged a pad's height; a base that is only tilted leaves no gap, so judge the gap under the foot.";
        },
    }
    .method("At or below the limit the foot may stay as it is; above it, machine the base flat or, second best, shim.")
    .limits("usual limit 0.05 mm (0.002 in), stricter 0.025 mm (0.001 in), common practice"),
    relation! {
        "mount.rise_1/loosened": "Dial rise on loosening foot 1 alone",
        "mount.rise_1": Length = mount::rise_on_loosening([e1, e2, e3, e4], Foot::One),
        from {
            e1: Length = "mount.height_1", e2: Length = "mount.height_2",
            e3: Length = "mount.height_3", e4: Length = "mount.height_4",
        },
        formula ["r_1 = max(0, (e2 + e4) - (e1 + e3))"],
        source THREE_POINTS,
        turns {},
    }
    .model()
    .method(RISE)
    .limits(FEET_RULE),
    relation! {
        "mount.rise_2/loosened": "Dial rise on loosening foot 2 alone",
        "mount.rise_2": Length = mount::rise_on_loosening([e1, e2, e3, e4], Foot::Two),
        from {
            e1: Length = "mount.height_1", e2: Length = "mount.height_2",
            e3: Length = "mount.height_3", e4: Length = "mount.height_4",
        },
        formula ["r_2 = max(0, (e1 + e3) - (e2 + e4))"],
        source THREE_POINTS,
        turns {},
    }
    .model()
    .method(RISE)
    .limits(FEET_RULE),
    relation! {
        "mount.rise_3/loosened": "Dial rise on loosening foot 3 alone",
        "mount.rise_3": Length = mount::rise_on_loosening([e1, e2, e3, e4], Foot::Three),
        from {
            e1: Length = "mount.height_1", e2: Length = "mount.height_2",
            e3: Length = "mount.height_3", e4: Length = "mount.height_4",
        },
        formula ["r_3 = max(0, (e2 + e4) - (e1 + e3))"],
        source THREE_POINTS,
        turns {},
    }
    .model()
    .method(RISE)
    .limits(FEET_RULE),
    relation! {
        "mount.rise_4/loosened": "Dial rise on loosening foot 4 alone",
        "mount.rise_4": Length = mount::rise_on_loosening([e1, e2, e3, e4], Foot::Four),
        from {
            e1: Length = "mount.height_1", e2: Length = "mount.height_2",
            e3: Length = "mount.height_3", e4: Length = "mount.height_4",
        },
        formula ["r_4 = max(0, (e1 + e3) - (e2 + e4))"],
        source THREE_POINTS,
        turns {},
    }
    .model()
    .method(RISE)
    .limits(FEET_RULE),
    relation! {
        "mount.worst_rise/largest": "Largest dial rise, foot by foot",
        "mount.worst_rise": Length = mount::worst_rise([r1, r2, r3, r4]),
        from {
            r1: Length = "mount.rise_1", r2: Length = "mount.rise_2",
            r3: Length = "mount.rise_3", r4: Length = "mount.rise_4",
        },
        formula ["r_max = max(r1, r2, r3, r4)"],
        source CommonPractice,
        turns {
            "largest total": r1 + r2 + r3 + r4 => "You added the rises; each foot is judged by its own rise, read with the other three bolts tight.";
            "averaged": (r1 + r2 + r3 + r4) / 4.0 => "You averaged the four rises; the feet that stay down hide the one that lifts.";
        },
    }
    .method(
        "With the drive isolated and locked out, loosen one bolt at a time with the others tight, read the rise, tighten \
         it again, go to the next foot.",
    )
    .limits("usual limit 0.05 mm (0.002 in) at any one foot, common practice"),
];
