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

use drivecourse_machine::language::Message;

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

impl fmt::Display for FigureError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::OutOfRange { input, value, min, max } => {
                write!(f, "cannot draw {input} of {value}: it must lie within {min} to {max}")
            }
            Self::Empty { input } => write!(f, "cannot draw the figure: no {input}"),
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
