//! Line drawings made from numbers: scalable, black and white, the same bytes every time.
//!
//! Each figure is a struct of plain values with a `draw` method that gives a [`Figure`]: the SVG
//! element to put in a page, a title and description for a screen reader, and the shown values
//! as a table. Lengths may be in any unit so long as one figure keeps to one unit; the caller
//! writes the labels, so it also chooses units and digits.
//!
//! A label that is `None` leaves its mark out, and its value is in neither the description nor the
//! table, so a question does not give its answer away; `Some("?".into())` asks for the value. The drawing itself is
//! still to scale: where even the proportion must stay hidden, give a nominal value.
//!
//! The element inherits the page's text colour. [`STYLE`], put once in the page's style sheet,
//! adds a clear margin round the letters and black ink on paper; without it the figures still work.

mod axis;
mod baseline_chart;
mod bolt_pattern;
mod calendar;
mod dials;
mod drive_parts;
mod drive_side;
mod faces;
mod foot_corners;
mod foot_plan;
mod geometry;
mod key_section;
mod kit;
mod label;
#[cfg(feature = "book")]
mod plot;
mod power_chain;
mod shaft_load;
#[cfg(feature = "book")]
mod shares;
mod shim_pack;
mod spectrum;
mod straightedge;
mod warm_up;
mod zone_bar;

#[cfg(test)]
mod tests;

pub use axis::Steps;
pub use baseline_chart::{Across, BaselineChart, Logged};
pub use bolt_pattern::BoltPattern;
pub use calendar::{Calendar, CalendarRow};
pub use dials::{Dials, Sweep};
pub use drive_side::{DriveSide, Turning};
pub use faces::{DialFace, FeelerFace, ScaleFace, SightGlassFace, ThermometerFace, VibrationFace};
pub use foot_corners::FootCorners;
pub use foot_plan::{Foot, FootPlan};
pub use key_section::KeySection;
#[cfg(feature = "pdf")]
pub(crate) use kit::PAPER_STYLE;
pub use kit::STYLE;
#[cfg(feature = "pdf")]
pub(crate) use label::SIZE as LETTER;
pub use power_chain::PowerChain;
pub use shaft_load::ShaftLoad;
#[cfg(feature = "book")]
pub use shares::{Bar, Bars, Columns, Run};
pub use shim_pack::{Leaf, ShimPack};
pub use spectrum::{Spectrum, Stem};
pub use straightedge::Straightedge;
pub use warm_up::{Level, Reading, WarmUp};
pub use zone_bar::ZoneBar;

use core::fmt;

use drivecourse_machine::language::{Message, with_decimal_mark};
use drivecourse_machine::{Figures, messages, told};

/// A finished drawing and the words that go with it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Figure {
    /// One `svg` element on a single line, to be put into a page as it is.
    pub svg: String,
    /// What the figure shows, in a few words.
    pub title: String,
    /// The same in a sentence or two, for those who cannot see it.
    pub description: String,
    /// Every value shown: its name and its label, for a data table beside the figure.
    pub table: Vec<(String, String)>,
}

impl Figure {
    /// The figure as a file of its own, with its style inside and a background that suits the reader's light or dark setting.
    #[must_use]
    pub fn standalone(&self) -> String {
        let (head, rest) = self.svg.split_once('>').unwrap_or((&self.svg, ""));
        format!("{head}><style>{STYLE}{}</style>{rest}", kit::STANDALONE_STYLE)
    }
}

/// What figures say.
pub(crate) fn messages() -> Vec<Message> {
    [
        baseline_chart::SAYS,
        bolt_pattern::SAYS,
        calendar::SAYS,
        dials::SAYS,
        drive_side::SAYS,
        foot_corners::SAYS,
        foot_plan::SAYS,
        key_section::SAYS,
        power_chain::SAYS,
        shaft_load::SAYS,
        shim_pack::SAYS,
        spectrum::SAYS,
        straightedge::SAYS,
        warm_up::SAYS,
        zone_bar::SAYS,
        &faces::messages(),
    ]
    .concat()
}

/// Why a figure cannot be drawn.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum FigureError {
    /// A value lies outside what can be drawn, or is not a number.
    OutOfRange {
        /// Which value, by its plain name (`"sag"`).
        input: &'static str,
        /// The value, in the caller's unit.
        value: f64,
        /// Smallest value that can be drawn.
        min: f64,
        /// Largest value that can be drawn.
        max: f64,
    },
    /// There is nothing to draw.
    Empty {
        /// What is missing (`"readings"`).
        input: &'static str,
    },
}

messages! { pub(crate) PROBLEMS {
    CANNOT = "problem-figure-cannot", "cannot draw {input} of {value}: it must lie within {min} to {max}";
    EMPTY = "problem-figure-empty", "cannot draw the figure: no {input}";
} }

messages! { pub(crate) INPUTS {
    INPUT_AGE = "problem-figure-input-age", "age";
    INPUT_BARS = "problem-figure-input-bars", "bars";
    INPUT_BEARING_DISTANCE = "problem-figure-input-bearing-distance", "bearing distance";
    INPUT_BOLT_IN_THE_ORDER = "problem-figure-input-bolt-in-the-order", "bolt in the order";
    INPUT_CENTRE_DISTANCE = "problem-figure-input-centre-distance", "centre distance";
    INPUT_CHECKS = "problem-figure-input-checks", "checks";
    INPUT_COLUMNS = "problem-figure-input-columns", "columns";
    INPUT_DAYS = "problem-figure-input-days", "days";
    INPUT_DEGREES = "problem-figure-input-degrees", "degrees";
    INPUT_DIVISIONS = "problem-figure-input-divisions", "divisions";
    INPUT_EDGE = "problem-figure-input-edge", "edge";
    INPUT_ENOUGH = "problem-figure-input-enough", "enough";
    INPUT_FAR_REACTION = "problem-figure-input-far-reaction", "far reaction";
    INPUT_FORCES = "problem-figure-input-forces", "forces";
    INPUT_FREQUENCY = "problem-figure-input-frequency", "frequency";
    INPUT_GAP = "problem-figure-input-gap", "gap";
    INPUT_HEIGHT = "problem-figure-input-height", "height";
    INPUT_HEIGHT_OF_THE_KEY = "problem-figure-input-height-of-the-key", "height of the key";
    INPUT_INCLINE = "problem-figure-input-incline", "incline";
    INPUT_INNER_RANGE = "problem-figure-input-inner-range", "inner range";
    INPUT_LEAST = "problem-figure-input-least", "least";
    INPUT_LEAVES = "problem-figure-input-leaves", "leaves";
    INPUT_LENGTH = "problem-figure-input-length", "length";
    INPUT_LEVEL = "problem-figure-input-level", "level";
    INPUT_LIMIT_BETWEEN_A_AND_B = "problem-figure-input-limit-between-a-and-b", "limit between A and B";
    INPUT_LIMIT_BETWEEN_B_AND_C = "problem-figure-input-limit-between-b-and-c", "limit between B and C";
    INPUT_LIMIT_BETWEEN_C_AND_D = "problem-figure-input-limit-between-c-and-d", "limit between C and D";
    INPUT_LINES = "problem-figure-input-lines", "lines";
    INPUT_LOAD = "problem-figure-input-load", "load";
    INPUT_MARK = "problem-figure-input-mark", "mark";
    INPUT_MOST = "problem-figure-input-most", "most";
    INPUT_NEAR_REACTION = "problem-figure-input-near-reaction", "near reaction";
    INPUT_NUMBER_OF_BOLTS = "problem-figure-input-number-of-bolts", "number of bolts";
    INPUT_NUMBER_OF_LEAVES = "problem-figure-input-number-of-leaves", "number of leaves";
    INPUT_NUMBER_OF_READINGS = "problem-figure-input-number-of-readings", "number of readings";
    INPUT_NUMBER_OF_ROWS = "problem-figure-input-number-of-rows", "number of rows";
    INPUT_NUMBER_OF_SWEEPS = "problem-figure-input-number-of-sweeps", "number of sweeps";
    INPUT_OVERHANG = "problem-figure-input-overhang", "overhang";
    INPUT_PITCH = "problem-figure-input-pitch", "pitch";
    INPUT_POWER_AT_THE_MOTOR_S_SHAFT = "problem-figure-input-power-at-the-motor-s-shaft", "power at the motor's shaft";
    INPUT_POWER_AT_THE_OUTPUT_SHAFT = "problem-figure-input-power-at-the-output-shaft", "power at the output shaft";
    INPUT_POWER_DRAWN = "problem-figure-input-power-drawn", "power drawn";
    INPUT_RANGE = "problem-figure-input-range", "range";
    INPUT_READING = "problem-figure-input-reading", "reading";
    INPUT_READINGS = "problem-figure-input-readings", "readings";
    INPUT_ROOM_ON_THE_SHEET = "problem-figure-input-room-on-the-sheet", "room on the sheet";
    INPUT_SAG = "problem-figure-input-sag", "sag";
    INPUT_SHAFT = "problem-figure-input-shaft", "shaft";
    INPUT_SHARE = "problem-figure-input-share", "share";
    INPUT_SHARE_OF_FULL_SCALE = "problem-figure-input-share-of-full-scale", "share of full scale";
    INPUT_TEETH = "problem-figure-input-teeth", "teeth";
    INPUT_TEMPERATURE = "problem-figure-input-temperature", "temperature";
    INPUT_THICKNESS = "problem-figure-input-thickness", "thickness";
    INPUT_TIME = "problem-figure-input-time", "time";
    INPUT_TURNS = "problem-figure-input-turns", "turns";
    INPUT_WEIGHT_S_LINE = "problem-figure-input-weight-s-line", "weight's line";
    INPUT_WIDTH = "problem-figure-input-width", "width";
    INPUT_WIDTH_OF_THE_KEY = "problem-figure-input-width-of-the-key", "width of the key";
} }

/// The name of an input as it is spoken.
#[cfg(not(wordless))]
fn spoken(input: &'static str) -> &'static str {
    INPUTS.iter().find(|message| message.english == input).map_or(input, Message::text)
}

/// The browser names no inputs.
#[cfg(wordless)]
fn spoken(input: &'static str) -> &'static str {
    input
}

impl fmt::Display for FigureError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::OutOfRange { input, value, min, max } => {
                // No more figures than can be compared at a glance.
                let written = |number: &f64| with_decimal_mark(Figures::Significant(6).round(*number).to_string());
                let [value, min, max] = [value, min, max].map(written);
                f.write_str(&told!(CANNOT, "input" = spoken(input), "value" = value, "min" = min, "max" = max))
            }
            Self::Empty { input } => f.write_str(&told!(EMPTY, "input" = spoken(input))),
        }
    }
}

impl core::error::Error for FigureError {}

/// Largest magnitude drawn; beyond it, scaling to the sheet would lose the digits.
const LARGEST: f64 = 1e9;

/// Gives `value` back when it lies in `min..=max`, an error otherwise (NaN included).
fn within(input: &'static str, value: f64, min: f64, max: f64) -> Result<f64, FigureError> {
    if value >= min && value <= max { Ok(value) } else { Err(FigureError::OutOfRange { input, value, min, max }) }
}

/// [`within`] for a length that must be greater than nought.
fn positive(input: &'static str, value: f64) -> Result<f64, FigureError> {
    within(input, value, 1.0 / LARGEST, LARGEST)
}

/// The smallest of 1, 2, 5, 10, 20, 50 ... by which `length` must be multiplied to reach `least`
/// (1 for a length of nought: nothing can be magnified).
fn magnification(length: f64, least: f64) -> f64 {
    let mut decade = 1.0;
    while length > 0.0 && decade < 1e12 {
        for step in [1.0, 2.0, 5.0] {
            if length * step * decade >= least {
                return step * decade;
            }
        }
        decade *= 10.0;
    }
    1.0
}

/// Collects the rows of a table from labels that are shown.
fn rows(pairs: &[(Message, &Option<String>)]) -> Vec<(String, String)> {
    pairs
        .iter()
        .filter_map(|(name, label)| label.as_ref().map(|label| (name.text().to_owned(), label.clone())))
        .collect()
}
