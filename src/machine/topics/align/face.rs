//! Face readings: the angle between the shafts.

use drivecourse_calc::Error;
use drivecourse_calc::align::dials::Clock;
use drivecourse_calc::align::rim_face::position;
use drivecourse_calc::units::Length;

use super::{SEEN, TRIANGLES, set_up};
use crate::relation::{Relation, relation};
use crate::source::Source::CommonPractice;
use crate::typed::Slope;

fn angle(face: Length, circle: Length) -> Result<Slope, Error> {
    position(Length::default(), face, &set_up(circle)).map(|line| Slope(line.slope))
}

fn horizontal(right: Length, left: Length) -> Length {
    Clock { right, left, ..Clock::default() }.horizontal()
}

macro_rules! face_angle {
    ($id:literal, $title:literal, $gives:literal, $reading:literal, $rim:literal) => {
        relation! {
            $id: $title,
            $gives: Slope = angle(f, d),
            from { f: Length = $reading, d: Length = "align.circle" },
            formula ["m[mm/m] = -1000 * f[mm] / d[mm]", "m[mil/in] = -1000 * f[in] / d[in]"],
            source TRIANGLES,
            turns {
                "radius": angle(f, d / 2.0) => "You divided by the radius of the dial's circle; the two places of the reading lie the whole circle apart.";
                "halved": angle(f / 2.0, d) => "You halved the face reading; only the rim reading is halved, the face is read over the whole circle.";
                "wrong sign": angle(-f, d) => "You turned the sign; a plunger pushed in on one side means that the gap is wider on the other.";
                "radius and sign": angle(-f, d / 2.0) => "You divided by the radius and turned the sign; the slope is minus the face reading over the whole circle.";
                "rim reading" with { r: Length = $rim }: angle(r, d) => "You used the rim reading; the rim shows the offset, the face the angle.";
            },
        }
        .question()
        .limits(SEEN)
    };
}

pub(super) const RELATIONS: &[Relation] = &[
    relation! {
        "align.face_h/sides": "Face reading across the horizontal",
        "align.face_h": Length = horizontal(r, l),
        from { r: Length = "align.face_right", l: Length = "align.face_left" },
        formula ["F = l - r"],
        source CommonPractice,
        turns {
            "wrong sign": horizontal(l, r) => "You took 3 o'clock less 9 o'clock; it is 9 less 3, as on the rim.";
            "added": horizontal(-r, l) => "You added the two side readings; their difference shows the horizontal, their sum the vertical.";
            "one side": horizontal(Length::default(), l) => "You took one side only; the dial was set to nought at the top, not at 3 o'clock.";
            "halved": horizontal(r, l) / 2.0 => "You halved the reading; the face is read over the whole circle and is not halved.";
        },
    }
    .limits(SEEN),
    face_angle!("align.angle_v/face", "Vertical angle from the face reading", "align.angle_v", "align.face_bottom", "align.rim_bottom"),
    face_angle!("align.angle_h/face", "Horizontal angle from the face reading", "align.angle_h", "align.face_h", "align.rim_h"),
];
