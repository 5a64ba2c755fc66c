//! A round thermometer.

use core::f64::consts::TAU;

use super::super::axis::{Axis, Steps};
use super::super::geometry::{polar, pt};
use super::super::kit::{Fill, Line, Sketch};
use super::super::label::Anchor;
use super::super::{Figure, FigureError, within};
use super::{READING, READING_NAME, hand, inward, past};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    TITLE = "thermometer-title", "Thermometer";
    OUTER = "thermometer-outer", "outer {unit}";
    INNER = "thermometer-inner", "inner {unit}";
    ROWS = "thermometer-rows", "outer row in {unit}, one degree a division, from {low} to {high}; inner row in {inner}";
    ABOUT = "thermometer-about", "Round thermometer: {rows}. The hand stands {place} on the outer row.";
    ON_OUTER = "thermometer-on-outer", "{place} on the outer row";
    ROWS_NAME = "thermometer-rows-name", "Rows";
    HAND = "thermometer-hand", "Hand";
} }

/// A round thermometer: a hundred degrees on the outer row, the same in another unit on the inner one.
#[derive(Debug, Clone)]
pub struct ThermometerFace {
    /// Identifier, unique in the page.
    pub id: String,
    /// Where the hand stands, in degrees of the outer row.
    pub degrees: f64,
    /// First and last number of the outer row.
    pub range: (f64, f64),
    /// Unit of the outer row.
    pub unit: String,
    /// The ends of the outer row in the unit of the inner one.
    pub inner_range: (f64, f64),
    /// Unit of the inner row.
    pub inner_unit: String,
    /// The reading, if it is to be told.
    pub reading: Option<String>,
}

/// Radius of the face.
const RADIUS: f64 = 172.0;
/// The row begins at the lower left and goes three quarters round.
const START: f64 = 0.375 * TAU;
const SWEEP: f64 = 0.75 * TAU;

impl ThermometerFace {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for a hand off the row, or a row that does not run upwards.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let (low, high) = self.range;
        let low = within("range", low, -1000.0, 5000.0)?;
        let high = within("range", high, low + 10.0, low + 200.0)?;
        let degrees = within("degrees", self.degrees, low, high)?;
        let inner_low = within("inner range", self.inner_range.0, -5000.0, 10_000.0)?;
        let inner_high = within("inner range", self.inner_range.1, inner_low + 1.0, inner_low + 500.0)?;
        let angle = |value: f64, low: f64, high: f64| START + SWEEP * (value - low) / (high - low);

        let mut sketch = Sketch::new();
        let middle = pt(0.0, 0.0);
        sketch.circle(middle, RADIUS + 8.0, Line::Outline, Fill::Open);
        let (mut long, mut short) = (Vec::new(), Vec::new());
        let mut degree = low;
        while degree <= high + 1e-9 {
            let mark = (degree - low).round() as u32;
            let (list, length) = match mark {
                _ if mark.is_multiple_of(10) => (&mut long, 20.0),
                _ if mark.is_multiple_of(5) => (&mut short, 15.0),
                _ => (&mut short, 9.0),
            };
            list.push(inward(middle, RADIUS, length, angle(degree, low, high)));
            if mark.is_multiple_of(10) {
                let at = polar(middle, RADIUS - 34.0, angle(degree, low, high));
                sketch.text(at, Anchor::Middle, &minus(degree));
            }
            degree += 1.0;
        }
        sketch.marks(&short, Line::Thin);
        sketch.marks(&long, Line::Outline);
        // The inner row has round numbers of its own inside the same sweep.
        let ring = RADIUS - 60.0;
        sketch.arc(middle, ring, START, START + SWEEP, Line::Thin);
        let axis = Axis::covering(inner_low, inner_high, 12, Steps::Decimal);
        for (value, words) in axis.marks() {
            if value >= inner_low - 1e-9 && value <= inner_high + 1e-9 {
                let at = angle(value, inner_low, inner_high);
                sketch.marks(&[inward(middle, ring, 7.0, at)], Line::Thin);
                sketch.text(polar(middle, ring - 20.0, at), Anchor::Middle, &words);
            }
        }
        sketch.text(pt(0.0, 106.0), Anchor::Middle, &OUTER.say(&[("unit", &self.unit)]));
        sketch.text(pt(0.0, 126.0), Anchor::Middle, &INNER.say(&[("unit", &self.inner_unit)]));
        hand(&mut sketch, middle, RADIUS - 3.0, angle(degrees, low, high), 7.0);
        if let Some(reading) = &self.reading {
            sketch.note(&READING.say(&[("reading", reading)]));
        }
        let below = ((degrees - low) / 10.0 + 1e-9).floor() * 10.0;
        let place = past((degrees - low - below).max(0.0), &minus(low + below));
        let rows = ROWS.say(&[
            ("unit", &self.unit),
            ("low", &minus(low)),
            ("high", &minus(high)),
            ("inner", &self.inner_unit),
        ]);
        let description = ABOUT.say(&[("rows", &rows), ("place", &place)]);
        let stands = ON_OUTER.say(&[("place", &place)]);
        let mut table = vec![(ROWS_NAME.text().to_owned(), rows), (HAND.text().to_owned(), stands)];
        table.extend(self.reading.iter().map(|reading| (READING_NAME.text().to_owned(), reading.clone())));
        Ok(sketch.finish(&self.id, TITLE.text(), &description, table))
    }
}

/// A whole number with a true minus sign.
fn minus(value: f64) -> String {
    format!("{:.0}", value + 0.0).replace('-', "\u{2212}")
}
