//! Sprocket faces by straightedge: offset and twist from four gaps.

use drivecourse_calc::Error;
use drivecourse_calc::align::Line;
use drivecourse_calc::align::sprockets::{Faces, Gaps, faces};
use drivecourse_calc::math;
use drivecourse_calc::units::{Angle, Length, Ratio, ratio::ratio};

use super::above;
use crate::relation::{Relation, relation};
use crate::source::Source::{CommonPractice, Derived};
use crate::typed::Choice;

pub(super) const VERDICTS: &[&str] =
    &["within the limits", "slide the sprocket along its shaft", "turn the shafts parallel first"];

const FINE: Choice = Choice(0);
const SLIDE: Choice = Choice(1);
const PARALLEL: Choice = Choice(2);

const LINES: crate::source::Source = Derived("geometry of two straight lines");
const LAY: &str = "The straightedge lies on the outer faces without rocking: flat on the reference sprocket if the other \
                   stands behind it, else flat on the other, else on one point of each. Gaps are felt in order from the \
                   far rim of the reference sprocket to the far rim of the other.";
const FACES: &str = "both faces the same distance from their sprocket's mid-plane; points felt at equal distances either \
                     side of each centre";

/// The four gaps under a straightedge laid on faces that stand so: on the first pair of points it can rest on.
fn laid(offset: Length, twist: Angle, chords: [Length; 2], centres: Length) -> Result<[Length; 4], Error> {
    let none = Length::default();
    let other = Line { offset, slope: Ratio::new::<ratio>(math::tan(twist.value)) };
    let half = chords.map(|chord| chord / 2.0);
    let places = [none, 2.0 * half[0], half[0] + centres - half[1], half[0] + centres + half[1]];
    let behind = [none, none, other.at(-half[1]), other.at(half[1])];
    for (first, second) in [(0, 1), (2, 3), (0, 3), (0, 2), (1, 3), (1, 2)] {
        let edge = Line::through((places[first], behind[first]), (places[second], behind[second]))?;
        let mut gaps = [none; 4];
        for (gap, (place, face)) in gaps.iter_mut().zip(places.into_iter().zip(behind)) {
            *gap = face - edge.at(place);
        }
        if gaps.iter().all(|gap| gap.value > -super::ROUNDING) {
            return Ok(gaps.map(|gap| if gap < none { none } else { gap }));
        }
    }
    Err(Error::none("rest for the straightedge"))
}

fn found(gaps: [Length; 4], chords: [Length; 2], centres: Length) -> Result<Faces, Error> {
    let [g1, g2, g3, g4] = gaps;
    let [reference_chord, other_chord] = chords;
    faces(&Gaps { reference: [g1, g2], other: [g3, g4], reference_chord, other_chord, centres })
}

fn verdict(offset: Length, twist: Angle, offset_limit: Length, twist_limit: Angle) -> Choice {
    if above(twist, twist_limit) {
        PARALLEL
    } else if above(offset, offset_limit) {
        SLIDE
    } else {
        FINE
    }
}

macro_rules! gap {
    ($id:literal, $title:literal, $gives:literal, $index:literal) => {
        relation! {
            $id: $title,
            $gives: Length = laid(e, t, [c1, c2], c).map(|gaps| gaps[$index]),
            from {
                e: Length = "align.sprocket_offset", t: Angle = "align.twist", c1: Length = "align.reference_chord",
                c2: Length = "align.other_chord", c: Length = "chain.centres",
            },
            formula [],
            source LINES,
            turns {},
        }
        .model()
        .method(LAY)
        .limits(FACES)
    };
}

pub(super) const RELATIONS: &[Relation] = &[
    gap!("align.gap_1/laid", "Gap at the reference sprocket's far rim", "align.gap_1", 0),
    gap!("align.gap_2/laid", "Gap at the reference sprocket's near rim", "align.gap_2", 1),
    gap!("align.gap_3/laid", "Gap at the other sprocket's near rim", "align.gap_3", 2),
    gap!("align.gap_4/laid", "Gap at the other sprocket's far rim", "align.gap_4", 3),
    relation! {
        "align.sprocket_offset/gaps": "Offset of the sprockets from the four gaps",
        "align.sprocket_offset": Length = found([g1, g2, g3, g4], [c1, c2], c).map(|faces| faces.offset),
        from {
            g1: Length = "align.gap_1", g2: Length = "align.gap_2", g3: Length = "align.gap_3", g4: Length = "align.gap_4",
            c1: Length = "align.reference_chord", c2: Length = "align.other_chord", c: Length = "chain.centres",
        },
        formula ["e = (g3 + g4) / 2 - (g1 + g2) / 2 - (g2 - g1) / c1 * c"],
        source LINES,
        turns {
            "far rim gap": found([g1, g2, g4, g4], [c1, c2], c).map(|faces| faces.offset) => "You took the gap at the far rim for the offset; part of it is twist, so take the mean of the two gaps on the sprocket.";
            "near rim gap": found([g1, g2, g3, g3], [c1, c2], c).map(|faces| faces.offset) => "You took the gap at the near rim for the offset; part of it is twist, so take the mean of the two gaps on the sprocket.";
            "twist for offset": g4 - g3 => "You gave the difference of the two gaps; that shows twist, the offset is their mean.";
            "gaps added": found([g1, g2, g3 * 2.0, g4 * 2.0], [c1, c2], c).map(|faces| faces.offset) => "You added the two gaps on the sprocket; the offset at its centre is their mean.";
            "reference lay left out": (g3 + g4) / 2.0 => "You left out how the straightedge lies on the reference sprocket; its slope carries over the whole centre distance.";
            "wrong side": found([g3, g4, g1, g2], [c2, c1], c).map(|faces| faces.offset) => "You changed the sprockets over; the offset counts from the reference sprocket to the other.";
        },
    }
    .question()
    .limits(FACES),
    relation! {
        "align.twist/gaps": "Twist of the sprockets from the four gaps",
        "align.twist": Angle = found([g1, g2, g3, g4], [c1, c2], c).map(|faces| faces.twist),
        from {
            g1: Length = "align.gap_1", g2: Length = "align.gap_2", g3: Length = "align.gap_3", g4: Length = "align.gap_4",
            c1: Length = "align.reference_chord", c2: Length = "align.other_chord", c: Length = "chain.centres",
        },
        formula ["t[°] = atan((g4 - g3) / c2) - atan((g2 - g1) / c1)"],
        source LINES,
        turns {
            "offset for twist": found([g1, g2, Length::default(), (g3 + g4) / 2.0], [c1, c2], c).map(|faces| faces.twist) => "You took the offset for twist; equal gaps on one sprocket are offset, only their difference is twist.";
            "far rim gap": found([g1, g2, Length::default(), g4], [c1, c2], c).map(|faces| faces.twist) => "You took the far gap alone; twist is the difference of the two gaps over the distance between them.";
            "over the centres": found([g1, g2, g3, g4], [c, c], c).map(|faces| faces.twist) => "You divided by the centre distance; the two gaps lie the sprocket's own chord apart.";
            "radius": found([g1, g2, g3, g4], [c1 / 2.0, c2 / 2.0], c).map(|faces| faces.twist) => "You divided by half the chord; the two gaps lie the whole chord apart.";
            "wrong sprocket's chord": found([g1, g2, g3, g4], [c2, c1], c).map(|faces| faces.twist) => "You divided by the chord of the wrong sprocket; each pair of gaps goes with its own chord.";
            "wrong sign": found([g1, g2, g3, g4], [c1, c2], c).map(|faces| -faces.twist) => "You took the gaps the wrong way round; twist counts positive when the far rim lies farther behind.";
        },
    }
    .question()
    .limits(FACES),
    relation! {
        "align.sprocket_verdict/limits": "Verdict on the sprockets",
        "align.sprocket_verdict": Choice = verdict(e, t, el, tl),
        from {
            e: Length = "align.sprocket_offset", t: Angle = "align.twist",
            el: Length = "align.sprocket_offset_limit", tl: Angle = "align.twist_limit",
        },
        formula [],
        source CommonPractice,
        turns {
            "offset only": verdict(e, Angle::default(), el, tl) => "You judged the offset only; twist wears the chain's side plates too, and sliding the sprocket cannot cure it.";
            "twist only": verdict(Length::default(), t, el, tl) => "You judged the twist only; parallel shafts may still carry sprockets out of one plane.";
            "offset taken for twist": if above(e, el) { PARALLEL } else { FINE } => "You took offset for twist; with the twist within its limit the shafts are parallel enough and the sprocket is slid.";
            "twist taken for offset": if above(t, tl) { SLIDE } else { verdict(e, t, el, tl) } => "You took twist for offset; sliding the sprocket cannot cure it, so turn the shafts parallel first.";
            "sign": verdict(if e.value < 0.0 { Length::default() } else { e }, if t.value < 0.0 { Angle::default() } else { t }, el, tl) => "You let a negative figure pass; its sign tells only the side, its size is what the limit is for.";
        },
    }
    .method("Twist above its limit, of either sign: turn the shafts parallel first. Otherwise offset above its limit: slide the sprocket. Otherwise within the limits. A value on the limit passes.")
    .limits("limits as the drawing or the maker gives them"),
];
