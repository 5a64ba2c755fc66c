//! Instruments drawn to be read: plain faces with the divisions of [`drivecourse_machine::face`].
//!
//! The words that go with a face say where the hand or the edge stands, in divisions past a number, and leave the
//! reading to the reader: whoever cannot see the picture has the same work to do as whoever can.

mod dial;
mod feeler;
mod scale;
mod sight_glass;
mod thermometer;
mod vibration;

#[cfg(test)]
pub(super) mod tests;

pub use dial::DialFace;
pub use feeler::FeelerFace;
pub use scale::ScaleFace;
pub use sight_glass::SightGlassFace;
pub use thermometer::ThermometerFace;
pub use vibration::VibrationFace;

use super::geometry::{Pt, polar};
use super::kit::{Fill, Line, Sketch};
use drivecourse_machine::language::Message;
use drivecourse_machine::messages;

messages! { FACES {
    HALF = "face-half", "half a division";
    ONE = "face-one", "1 division";
    SOME = "face-some", "{count} divisions";
    SOME_AND_HALF = "face-some-and-half", "{count} and a half divisions";
    AT = "face-at", "at {number}";
    PAST = "face-past", "{divisions} past {number}";
    READING = "face-reading", "reading {reading}";
    READING_NAME = "face-reading-name", "Reading";
} }

/// What faces say.
pub(super) fn messages() -> Vec<Message> {
    [FACES, dial::SAYS, feeler::SAYS, scale::SAYS, sight_glass::SAYS, thermometer::SAYS, vibration::SAYS].concat()
}

/// `count` things in words: `1 division`, `3 divisions`, `half a division`, `2 and a half divisions`.
fn divisions(count: f64) -> String {
    let halves = (2.0 * count).round();
    let whole = (0.5 * halves).floor();
    match (whole, halves % 2.0 != 0.0) {
        (0.0, true) => HALF.text().into(),
        (1.0, false) => ONE.text().into(),
        (whole, false) => SOME.say(&[("count", &format!("{whole:.0}"))]),
        (whole, true) => SOME_AND_HALF.say(&[("count", &format!("{whole:.0}"))]),
    }
}

/// Where something stands among the numbers of a row: `at 40`, `3 divisions past 40`.
fn past(count: f64, number: &str) -> String {
    if (2.0 * count).round() == 0.0 {
        AT.say(&[("number", number)])
    } else {
        PAST.say(&[("divisions", &divisions(count)), ("number", number)])
    }
}

/// A hand from `centre` towards `angle`: a long wedge with a short tail and a hub.
fn hand(sketch: &mut Sketch, centre: Pt, length: f64, angle: f64, hub: f64) {
    let tip = polar(centre, length, angle);
    let along = (tip - centre).unit();
    let side = along.quarter() * (0.45 * hub);
    let tail = centre - along * (2.2 * hub);
    sketch.polygon(&[tip, centre + side, tail + side * 0.5, tail - side * 0.5, centre - side], Line::Bare, Fill::Solid);
    sketch.circle(centre, hub, Line::Thin, Fill::Solid);
}

/// A mark that runs inwards from a circle.
fn inward(centre: Pt, radius: f64, length: f64, angle: f64) -> (Pt, Pt) {
    (polar(centre, radius, angle), polar(centre, radius - length, angle))
}
