//! One angled foot: four corner gaps, the best plane through them, and what it says.

use drivecourse_calc::Error;
use drivecourse_calc::mount::{self, Fit, FootPlane};
use drivecourse_calc::units::Length;

use super::{ROUNDING, one_foot, one_metre};
use crate::relation::{Relation, relation};
use crate::source::Source::{self, CommonPractice, Derived};
use crate::typed::{Choice, Slope, Typed};

const PLANE: Source = Derived("least-squares plane through four corners");
const CORNERS_RULE: &str =
    "corners numbered clockwise seen from above, 1 to 2 along the shaft; slopes count from corner 1";
const WEDGE_LIMIT: &str = "a plain shim fills a foot whose wedge is at most 0.05 mm (0.002 in), common practice";

/// Gaps at the corners of a foot whose best plane and misfit are known: the other way round from
/// [`mount::corner_plane`]. The misfit counts positive where corners 1 and 3 stand open.
fn corners(mean: Length, along: Slope, across: Slope, misfit: Length, length: Length, width: Length) -> [Length; 4] {
    let half_along = 0.5 * mount::height_change(along.0, length);
    let half_across = 0.5 * mount::height_change(across.0, width);
    [
        mean - half_along - half_across + misfit,
        mean + half_along - half_across - misfit,
        mean + half_along + half_across + misfit,
        mean - half_along + half_across - misfit,
    ]
}

/// Refuses a gap below nought: the foot would stand inside its pad.
fn open(gap: Length) -> Result<Length, Error> {
    if gap.value >= -ROUNDING {
        Ok(if gap.value > 0.0 { gap } else { Length::default() })
    } else {
        Err(Error::outside("corner gap", gap.value, 0.0, f64::MAX))
    }
}

/// The plane of a foot one metre square: mean, wedge, misfit and fit do not depend on its size.
fn plane(gaps: [Length; 4]) -> Result<FootPlane, Error> {
    mount::corner_plane(gaps, one_metre(), one_metre())
}

fn fit(gaps: [Length; 4], limit: Length) -> Result<Choice, Error> {
    Ok(Choice(match plane(gaps)?.fit(limit) {
        Fit::Sits => 0,
        Fit::Parallel => 1,
        Fit::Wedge => 2,
        Fit::Uneven => 3,
    }))
}

/// The best plane's own gaps at the corners, the misfit left out.
fn flattened(gaps: [Length; 4]) -> Result<[Length; 4], Error> {
    let plane = plane(gaps)?;
    let (along, across) = (Slope(plane.slope_along), Slope(plane.slope_across));
    Ok(corners(plane.mean, along, across, Length::default(), one_metre(), one_metre()))
}

fn largest(gaps: [Length; 4]) -> Length {
    mount::worst_rise(gaps)
}

fn smallest(gaps: [Length; 4]) -> Length {
    -mount::worst_rise(gaps.map(|gap| -gap))
}

/// Slope along; it does not depend on the width.
fn along(gaps: [Length; 4], length: Length) -> Result<Slope, Error> {
    mount::corner_plane(gaps, length, length).map(|plane| Slope(plane.slope_along))
}

/// Slope across; it does not depend on the length.
fn across(gaps: [Length; 4], width: Length) -> Result<Slope, Error> {
    mount::corner_plane(gaps, width, width).map(|plane| Slope(plane.slope_across))
}

fn level() -> Slope {
    Slope::from_base(0.0)
}

/// Wedge of a foot of which the slopes and the size are known.
fn wedge(along: Slope, across: Slope, length: Length, width: Length) -> Result<Length, Error> {
    let nought = Length::default();
    plane(corners(nought, along, across, nought, length, width)).map(|plane| plane.wedge())
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "mount.corner_1/plane": "Gap at corner 1 of the angled foot",
        "mount.corner_1": Length = open(corners(m, su, sv, q, u, v)[0]),
        from {
            m: Length = "mount.corner_mean", su: Slope = "mount.slope_along", sv: Slope = "mount.slope_across",
            q: Length = "mount.corner_residual", u: Length = "mount.foot_length", v: Length = "mount.foot_width",
        },
        formula [
            "c_1[mm] = m[mm] - su[mm/m] * u[m] / 2 - sv[mm/m] * v[m] / 2 + q[mm]",
            "c_1[in] = m[in] - su[in/ft] * u[ft] / 2 - sv[in/ft] * v[ft] / 2 + q[in]",
        ],
        source PLANE,
        turns {},
    }
    .model()
    .limits(CORNERS_RULE),
    relation! {
        "mount.corner_2/plane": "Gap at corner 2 of the angled foot",
        "mount.corner_2": Length = open(corners(m, su, sv, q, u, v)[1]),
        from {
            m: Length = "mount.corner_mean", su: Slope = "mount.slope_along", sv: Slope = "mount.slope_across",
            q: Length = "mount.corner_residual", u: Length = "mount.foot_length", v: Length = "mount.foot_width",
        },
        formula [
            "c_2[mm] = m[mm] + su[mm/m] * u[m] / 2 - sv[mm/m] * v[m] / 2 - q[mm]",
            "c_2[in] = m[in] + su[in/ft] * u[ft] / 2 - sv[in/ft] * v[ft] / 2 - q[in]",
        ],
        source PLANE,
        turns {},
    }
    .model()
    .limits(CORNERS_RULE),
    relation! {
        "mount.corner_3/plane": "Gap at corner 3 of the angled foot",
        "mount.corner_3": Length = open(corners(m, su, sv, q, u, v)[2]),
        from {
            m: Length = "mount.corner_mean", su: Slope = "mount.slope_along", sv: Slope = "mount.slope_across",
            q: Length = "mount.corner_residual", u: Length = "mount.foot_length", v: Length = "mount.foot_width",
        },
        formula [
            "c_3[mm] = m[mm] + su[mm/m] * u[m] / 2 + sv[mm/m] * v[m] / 2 + q[mm]",
            "c_3[in] = m[in] + su[in/ft] * u[ft] / 2 + sv[in/ft] * v[ft] / 2 + q[in]",
        ],
        source PLANE,
        turns {},
    }
    .model()
    .limits(CORNERS_RULE),
    relation! {
        "mount.corner_4/plane": "Gap at corner 4 of the angled foot",
        "mount.corner_4": Length = open(corners(m, su, sv, q, u, v)[3]),
        from {
            m: Length = "mount.corner_mean", su: Slope = "mount.slope_along", sv: Slope = "mount.slope_across",
            q: Length = "mount.corner_residual", u: Length = "mount.foot_length", v: Length = "mount.foot_width",
        },
        formula [
            "c_4[mm] = m[mm] - su[mm/m] * u[m] / 2 + sv[mm/m] * v[m] / 2 - q[mm]",
            "c_4[in] = m[in] - su[in/ft] * u[ft] / 2 + sv[in/ft] * v[ft] / 2 - q[in]",
        ],
        source PLANE,
        turns {},
    }
    .model()
    .limits(CORNERS_RULE),
    relation! {
        "mount.corner_mean/corners": "Gap at the middle of the foot from its four corners",
        "mount.corner_mean": Length = plane([c1, c2, c3, c4]).map(|plane| plane.mean),
        from {
            c1: Length = "mount.corner_1", c2: Length = "mount.corner_2",
            c3: Length = "mount.corner_3", c4: Length = "mount.corner_4",
        },
        formula ["c_m = (c1 + c2 + c3 + c4) / 4"],
        source PLANE,
        turns {
            "largest corner": largest([c1, c2, c3, c4]) => "You gave the largest corner; the gap at the middle of the foot is the mean of all four.";
            "not divided": c1 + c2 + c3 + c4 => "You added the four corners and did not divide by four.";
            "smallest corner": smallest([c1, c2, c3, c4]) => "You gave the smallest corner; the gap at the middle of the foot is the mean of all four.";
        },
    }
    .question()
    .limits("alone it hides a wedge: look at the slopes too"),
    relation! {
        "mount.slope_along/corners": "Slope of the foot along the shaft from its four corners",
        "mount.slope_along": Slope = along([c1, c2, c3, c4], u),
        from {
            c1: Length = "mount.corner_1", c2: Length = "mount.corner_2",
            c3: Length = "mount.corner_3", c4: Length = "mount.corner_4",
            u: Length = "mount.foot_length",
        },
        formula [
            "φ[mm/m] = ((c2[mm] + c3[mm]) - (c1[mm] + c4[mm])) / (2 * u[m])",
            "φ[in/ft] = ((c2[in] + c3[in]) - (c1[in] + c4[in])) / (2 * u[ft])",
        ],
        source PLANE,
        turns {
            "not halved": along([c1, c2, c3, c4], u / 2.0) => "You took two corners together against two and forgot to halve the difference; use the mean of each end.";
            "wrong side" with { v: Length = "mount.foot_width" }: along([c1, c2, c3, c4], v) => "You divided by the width of the foot; the slope along the shaft is measured over its length.";
            "largest corner": mount::slope(largest([c1, c2, c3, c4]), u).map(Slope) => "You divided the largest gap by the length; only the difference between the two ends makes a slope, an even gap has none.";
            "run forgotten, metre": along([c1, c2, c3, c4], one_metre()) => "You gave the difference between the two ends in millimetres; a slope is that difference divided by the length of the foot in metres.";
            "run forgotten, foot": along([c1, c2, c3, c4], one_foot()) => "You gave the difference between the two ends in inches; a slope is that difference divided by the length of the foot in feet.";
            "turned round": along([c2, c1, c4, c3], u) => "You counted the slope from the far end; it is positive where the gap grows away from corner 1.";
        },
    }
    .question()
    .limits(CORNERS_RULE),
    relation! {
        "mount.slope_across/corners": "Slope of the foot across the shaft from its four corners",
        "mount.slope_across": Slope = across([c1, c2, c3, c4], v),
        from {
            c1: Length = "mount.corner_1", c2: Length = "mount.corner_2",
            c3: Length = "mount.corner_3", c4: Length = "mount.corner_4",
            v: Length = "mount.foot_width",
        },
        formula [
            "φ[mm/m] = ((c3[mm] + c4[mm]) - (c1[mm] + c2[mm])) / (2 * v[m])",
            "φ[in/ft] = ((c3[in] + c4[in]) - (c1[in] + c2[in])) / (2 * v[ft])",
        ],
        source PLANE,
        turns {
            "not halved": across([c1, c2, c3, c4], v / 2.0) => "You took two corners together against two and forgot to halve the difference; use the mean of each side.";
            "wrong side" with { u: Length = "mount.foot_length" }: across([c1, c2, c3, c4], u) => "You divided by the length of the foot; the slope across the shaft is measured over its width.";
            "largest corner": mount::slope(largest([c1, c2, c3, c4]), v).map(Slope) => "You divided the largest gap by the width; only the difference between the two sides makes a slope, an even gap has none.";
            "run forgotten, metre": across([c1, c2, c3, c4], one_metre()) => "You gave the difference between the two sides in millimetres; a slope is that difference divided by the width of the foot in metres.";
            "run forgotten, foot": across([c1, c2, c3, c4], one_foot()) => "You gave the difference between the two sides in inches; a slope is that difference divided by the width of the foot in feet.";
            "turned round": across([c4, c3, c2, c1], v) => "You counted the slope from the far side; it is positive where the gap grows away from corner 1.";
        },
    }
    .question()
    .limits(CORNERS_RULE),
    relation! {
        "mount.wedge/corners": "Wedge of the foot from its four corners",
        "mount.wedge": Length = plane([c1, c2, c3, c4]).map(|plane| plane.wedge()),
        from {
            c1: Length = "mount.corner_1", c2: Length = "mount.corner_2",
            c3: Length = "mount.corner_3", c4: Length = "mount.corner_4",
        },
        formula ["w_g = abs((c2 + c3) - (c1 + c4)) / 2 + abs((c3 + c4) - (c1 + c2)) / 2"],
        source PLANE,
        turns {
            "averaged": plane([c1, c2, c3, c4]).map(|plane| plane.mean) => "You averaged the corners; the average is the even part of the gap and leaves the wedge out.";
            "along only": plane([c1, c2, c3, c4]).map(|plane| plane.wedge_along.abs()) => "You counted the slope along the shaft only; the slope across adds to the wedge at the corner.";
            "across only": plane([c1, c2, c3, c4]).map(|plane| plane.wedge_across.abs()) => "You counted the slope across the shaft only; the slope along adds to the wedge at the corner.";
            "largest corner": largest([c1, c2, c3, c4]) => "You took the largest gap for the wedge; a plain shim fills the even part, the wedge is the difference from corner to corner.";
            "not halved": plane([c1, c2, c3, c4]).map(|plane| 2.0 * plane.wedge()) => "You took two corners together against two and forgot to halve the differences.";
        },
    }
    .limits(WEDGE_LIMIT),
    relation! {
        "mount.wedge/slopes": "Wedge of the foot from its two slopes",
        "mount.wedge": Length = wedge(su, sv, u, v),
        from {
            su: Slope = "mount.slope_along", sv: Slope = "mount.slope_across",
            u: Length = "mount.foot_length", v: Length = "mount.foot_width",
        },
        formula [
            "w_g[mm] = abs(su[mm/m]) * u[m] + abs(sv[mm/m]) * v[m]",
            "w_g[in] = abs(su[in/ft]) * u[ft] + abs(sv[in/ft]) * v[ft]",
        ],
        source PLANE,
        turns {
            "along only": wedge(su, level(), u, v) => "You counted the slope along the shaft only; the slope across adds to the wedge at the corner.";
            "across only": wedge(level(), sv, u, v) => "You counted the slope across the shaft only; the slope along adds to the wedge at the corner.";
            "sizes swapped": wedge(su, sv, v, u) => "You took the slope along over the width and the slope across over the length; each belongs to its own side.";
            "half": wedge(su, sv, u / 2.0, v / 2.0) => "You reckoned from the middle of the foot to a corner; the wedge runs from corner to corner, over the whole foot.";
        },
    }
    .question()
    .rank(1)
    .limits(WEDGE_LIMIT),
    relation! {
        "mount.corner_residual/corners": "Misfit of the corners from a flat foot",
        "mount.corner_residual": Length = plane([c1, c2, c3, c4]).map(|plane| plane.residual),
        from {
            c1: Length = "mount.corner_1", c2: Length = "mount.corner_2",
            c3: Length = "mount.corner_3", c4: Length = "mount.corner_4",
        },
        formula ["q = abs((c1 + c3) - (c2 + c4)) / 4"],
        source PLANE,
        turns {
            "not shared": plane([c1, c2, c3, c4]).map(|plane| plane.warp()) => "You gave how far one corner stands off the plane of the other three; the best plane shares it among the four corners, a quarter each.";
            "halved": plane([c1, c2, c3, c4]).map(|plane| plane.warp() / 2.0) => "You divided by two; each diagonal has two corners, and the plane splits the difference once more, so divide by four.";
            "spread": largest([c1, c2, c3, c4]) - smallest([c1, c2, c3, c4]) => "You took the smallest corner from the largest; a flat wedge has that spread too, the misfit compares the two diagonals.";
        },
    }
    .question(),
    relation! {
        "mount.foot_fit/limit": "Fit of the angled foot from its four corners",
        "mount.foot_fit": Choice = fit([c1, c2, c3, c4], limit),
        from {
            c1: Length = "mount.corner_1", c2: Length = "mount.corner_2",
            c3: Length = "mount.corner_3", c4: Length = "mount.corner_4",
            limit: Length = "mount.gap_limit",
        },
        formula [],
        source CommonPractice,
        turns {
            "averaged": plane([c1, c2, c3, c4]).and_then(|plane| fit([plane.mean; 4], limit)) => "You judged the average of the corners; it hides a wedge and a bent foot, so compare ends, sides and diagonals first.";
            "largest corner": fit([largest([c1, c2, c3, c4]); 4], limit) => "You judged the largest corner as if the gap were even all round; compare ends, sides and diagonals first.";
            "misfit left out": flattened([c1, c2, c3, c4]).and_then(|gaps| fit(gaps, limit)) => "You did not compare the two diagonals; when their sums differ by more than the limit, no plane fits: look for dirt or a bent foot.";
        },
    }
    .method(
        "Take the worst first. Diagonal sums that differ by more than the limit: dirt, a burr or a bent foot. Else a wedge \
         above the limit: an angled foot, for which plain shims are no cure. Else a mean above the limit: a parallel gap, \
         which plain shims fill. Else it sits flat.",
    )
    .limits("usual limit 0.05 mm (0.002 in), common practice"),
];
