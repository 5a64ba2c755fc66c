//! Runout told from misalignment: both shafts turned half a turn together, the same gap felt again.

use drivecourse_calc::Error;
use drivecourse_calc::align::dials::runout_parts;
use drivecourse_calc::align::rim_face::readings;
use drivecourse_calc::units::Length;

use super::{LOCKED, TRIANGLES, line, set_up};
use crate::relation::{Relation, relation};
use crate::source::Source::{self, Derived};
use crate::typed::Slope;

const TURNS: Source = Derived("runout turns with the shafts, misalignment stays where it is");
const NET: &str = "net gap: gap at the bottom less gap at the top, over the face dial's circle";

/// Gap at the bottom less gap at the top between true hubs: what a face dial reads, the other way round.
fn standing(m: Slope, circle: Length) -> Result<Length, Error> {
    readings(&line(Length::default(), m), &set_up(circle)).map(|both| -both.1)
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "align.gap_before/sum": "Net gap before turning",
        "align.gap_before": Length = standing(m, d).map(|gap| gap + r),
        from { m: Slope = "align.angle_v", d: Length = "align.circle", r: Length = "align.runout" },
        formula ["G[mm] = m[mm/m] * d[mm] / 1000 + r[mm]", "G[in] = m[mil/in] * d[in] / 1000 + r[in]"],
        source TURNS,
        turns {},
    }
    .model()
    .limits(NET),
    relation! {
        "align.gap_after/difference": "Net gap after half a turn of both shafts",
        "align.gap_after": Length = standing(m, d).map(|gap| gap - r),
        from { m: Slope = "align.angle_v", d: Length = "align.circle", r: Length = "align.runout" },
        formula ["G[mm] = m[mm/m] * d[mm] / 1000 - r[mm]", "G[in] = m[mil/in] * d[in] / 1000 - r[in]"],
        source TURNS,
        turns {},
    }
    .model()
    .limits(NET),
    relation! {
        "align.gap_standing/angle": "Net gap that belongs to the alignment",
        "align.gap_standing": Length = standing(m, d),
        from { m: Slope = "align.angle_v", d: Length = "align.circle" },
        formula ["G[mm] = m[mm/m] * d[mm] / 1000", "G[in] = m[mil/in] * d[in] / 1000"],
        source TRIANGLES,
        turns {
            "radius": standing(m, d / 2.0) => "You used the radius; top and bottom lie the whole circle apart.";
            "wrong sign": standing(Slope(-m.0), d) => "You turned the sign; a positive angle leans the shaft's top towards the other, so the gap is wider at the bottom.";
        },
    }
    .limits(NET),
    relation! {
        "align.gap_standing/turned": "Net gap that belongs to the alignment, from two gaps half a turn apart",
        "align.gap_standing": Length = runout_parts(g1, g2).map(|parts| parts.misalignment),
        from { g1: Length = "align.gap_before", g2: Length = "align.gap_after" },
        formula ["G = (g1 + g2) / 2"],
        source TURNS,
        turns {
            "first gap": g1 => "You took the first gap as it was; part of it may be runout of the hub, which turns with the shaft.";
            "second gap": g2 => "You took the second gap as it was; part of it may be runout of the hub, which turns with the shaft.";
            "runout": runout_parts(g1, g2).map(|parts| parts.runout) => "You gave the part that turns with the shafts; that is runout, the alignment is the part that stays.";
            "not halved": g1 + g2 => "You added the two gaps; the part that stays is their mean.";
        },
    }
    .question()
    .rank(1)
    .method(LOCKED)
    .limits(NET),
    relation! {
        "align.runout/turned": "Runout of the hub from two gaps half a turn apart",
        "align.runout": Length = runout_parts(g1, g2).map(|parts| parts.runout),
        from { g1: Length = "align.gap_before", g2: Length = "align.gap_after" },
        formula ["r = (g1 - g2) / 2"],
        source TURNS,
        turns {
            "mean": runout_parts(g1, g2).map(|parts| parts.misalignment) => "You took the mean of the two gaps; that is the part that stays, and it belongs to the alignment.";
            "not halved": g1 - g2 => "You took the whole difference; runout adds before the half turn and takes off after it, so halve it.";
            "wrong sign": runout_parts(g2, g1).map(|parts| parts.runout) => "You took the first gap off the second; it is the first less the second.";
            "first gap": g1 => "You took the first gap as it was; part of it may belong to the alignment.";
        },
    }
    .question()
    .method(LOCKED)
    .limits(NET),
];
