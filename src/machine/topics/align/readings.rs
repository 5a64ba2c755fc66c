//! What the dials show on shafts that stand so: every reading from one hidden position.

use drivecourse_calc::Error;
use drivecourse_calc::align::dials::{Clock, offset};
use drivecourse_calc::align::{reverse, rim_face};
use drivecourse_calc::units::{Length, Ratio, length::meter};

use super::{CIRCLE, SEEN, line, set_up};
use crate::relation::{Relation, relation};
use crate::typed::Slope;

/// The four readings of a dial set to nought at the top, from what it reads across the vertical and the horizontal.
///
/// On a round rim the readings at the sides stand half the horizontal reading either side of half the vertical one.
fn clock(vertical: Length, horizontal: Length) -> Result<Clock, Error> {
    let (v, h) = (offset(vertical)?, offset(horizontal)?);
    Ok(Clock { top: Length::default(), right: v - h, bottom: vertical, left: v + h })
}

/// The same readings on a bar that sags.
fn sagging(read: Clock, sag: Length) -> Result<Clock, Error> {
    let added = Clock::default().without_sag(sag)?;
    let Clock { top, right, bottom, left } = read;
    Ok(Clock { top, right: right - added.right, bottom: bottom - added.bottom, left: left - added.left })
}

/// Rim of the stationary hub; the face dial's circle does not matter to it.
fn rim(y: Length, z: Length, sag: Length) -> Result<Clock, Error> {
    let any = set_up(Length::new::<meter>(1.0));
    let across = |offset| rim_face::readings(&line(offset, Slope(Ratio::default())), &any).map(|both| both.0);
    sagging(clock(across(y)?, across(z)?)?, sag)
}

/// Face of the stationary hub. Sag hardly reaches a face dial and is left out.
fn face(m: Slope, n: Slope, circle: Length) -> Result<Clock, Error> {
    let across = |slope| rim_face::readings(&line(Length::default(), slope), &set_up(circle)).map(|both| both.1);
    clock(across(m)?, across(n)?)
}

/// Rim of the movable hub, the bracket on the stationary shaft.
fn own(v: (Length, Slope), h: (Length, Slope), apart: Length, sag: Length) -> Result<Clock, Error> {
    let across = |(y, m)| reverse::readings(&line(y, m), apart).map(|both| both.1);
    sagging(clock(across(v)?, across(h)?)?, sag)
}

macro_rules! reading {
    ($id:literal, $title:literal, $gives:literal, rim, $side:ident, [$($formula:literal),*]) => {
        relation! {
            $id: $title,
            $gives: Length = rim(y, z, s).map(|read| read.$side),
            from { y: Length = "align.offset_v", z: Length = "align.offset_h", s: Length = "align.sag" },
            formula [$($formula),*],
            source CIRCLE,
            turns {},
        }
        .model()
        .limits(SEEN)
    };
    ($id:literal, $title:literal, $gives:literal, face, $side:ident, [$($formula:literal),*]) => {
        relation! {
            $id: $title,
            $gives: Length = face(m, n, d).map(|read| read.$side),
            from { m: Slope = "align.angle_v", n: Slope = "align.angle_h", d: Length = "align.circle" },
            formula [$($formula),*],
            source CIRCLE,
            turns {},
        }
        .model()
        .limits(SEEN)
    };
    ($id:literal, $title:literal, $gives:literal, own, $side:ident, [$($formula:literal),*]) => {
        relation! {
            $id: $title,
            $gives: Length = own((y, m), (z, n), c, s).map(|read| read.$side),
            from {
                y: Length = "align.offset_v", m: Slope = "align.angle_v", z: Length = "align.offset_h",
                n: Slope = "align.angle_h", c: Length = "align.dials_apart", s: Length = "align.sag",
            },
            formula [$($formula),*],
            source CIRCLE,
            turns {},
        }
        .model()
        .limits(SEEN)
    };
}

pub(super) const RELATIONS: &[Relation] = &[
    reading!("align.rim_right/position", "Rim reading at 3 o'clock", "align.rim_right", rim, right, ["R = y - z - s"]),
    reading!(
        "align.rim_bottom/position",
        "Rim reading at 6 o'clock",
        "align.rim_bottom",
        rim,
        bottom,
        ["R = 2 * y - 2 * s"]
    ),
    reading!("align.rim_left/position", "Rim reading at 9 o'clock", "align.rim_left", rim, left, ["R = y + z - s"]),
    reading!(
        "align.face_right/position",
        "Face reading at 3 o'clock",
        "align.face_right",
        face,
        right,
        ["F[mm] = d[mm] * (n[mm/m] - m[mm/m]) / 2000", "F[in] = d[in] * (n[mil/in] - m[mil/in]) / 2000"]
    ),
    reading!(
        "align.face_bottom/position",
        "Face reading at 6 o'clock",
        "align.face_bottom",
        face,
        bottom,
        ["F[mm] = -d[mm] * m[mm/m] / 1000", "F[in] = -d[in] * m[mil/in] / 1000"]
    ),
    reading!(
        "align.face_left/position",
        "Face reading at 9 o'clock",
        "align.face_left",
        face,
        left,
        ["F[mm] = -d[mm] * (m[mm/m] + n[mm/m]) / 2000", "F[in] = -d[in] * (m[mil/in] + n[mil/in]) / 2000"]
    ),
    reading!(
        "align.own_right/position",
        "Movable hub's rim reading at 3 o'clock",
        "align.own_right",
        own,
        right,
        [
            "R[mm] = (z[mm] + n[mm/m] * c[mm] / 1000) - (y[mm] + m[mm/m] * c[mm] / 1000) - s[mm]",
            "R[in] = (z[in] + n[mil/in] * c[in] / 1000) - (y[in] + m[mil/in] * c[in] / 1000) - s[in]"
        ]
    ),
    reading!(
        "align.own_bottom/position",
        "Movable hub's rim reading at 6 o'clock",
        "align.own_bottom",
        own,
        bottom,
        [
            "R[mm] = -2 * (y[mm] + m[mm/m] * c[mm] / 1000) - 2 * s[mm]",
            "R[in] = -2 * (y[in] + m[mil/in] * c[in] / 1000) - 2 * s[in]"
        ]
    ),
    reading!(
        "align.own_left/position",
        "Movable hub's rim reading at 9 o'clock",
        "align.own_left",
        own,
        left,
        [
            "R[mm] = -(z[mm] + n[mm/m] * c[mm] / 1000) - (y[mm] + m[mm/m] * c[mm] / 1000) - s[mm]",
            "R[in] = -(z[in] + n[mil/in] * c[in] / 1000) - (y[in] + m[mil/in] * c[in] / 1000) - s[in]"
        ]
    ),
];
