//! A steel scale with an edge to read at.

use super::super::geometry::{Area, Pt, pt};
use super::super::kit::{Fill, Line, Sketch};
use super::super::label::Anchor;
use super::super::{Figure, FigureError, LARGEST, within};
use super::past;
use super::{READING, READING_NAME};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    EDGE = "scale-edge", "edge";
    INCH = "scale-inch", "1/64 in a division, numbered every 8 divisions";
    METRIC = "scale-metric", "0.5 mm a division, numbered every 10 mm";
    ABOUT = "scale-about", "Steel scale, {each}, nought at the left. The edge stands {place}.";
    SCALE = "scale-scale", "Scale";
    EDGE_ROW = "scale-edge-row", "Edge";
    TITLE = "scale-title", "Steel scale: {what}";
    AFTER = "scale-after", "the {number} after {inches} in";
    THE = "scale-the", "the {number}";
} }

/// Part of a steel scale, nought at the left, and the edge of a part that is read against it.
#[derive(Debug, Clone)]
pub struct ScaleFace {
    /// Identifier, unique in the page.
    pub id: String,
    /// What is measured, for the title.
    pub name: String,
    /// Where the edge stands, in divisions from nought.
    pub edge: f64,
    /// Whether it is an inch scale of 1/64; otherwise one of half millimetres.
    pub inch: bool,
    /// The reading, if it is to be told.
    pub reading: Option<String>,
}

/// Width of the sheet that the scale fills.
const WIDE: f64 = 400.0;
/// Height of the scale.
const HIGH: f64 = 84.0;

impl ScaleFace {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for an edge before nought, or a value that is no number.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let edge = within("edge", self.edge, 0.0, LARGEST)?;
        let (span, numbered) = if self.inch { (72.0, 8.0) } else { (60.0, 20.0) };
        // The edge lies near the middle, and the picture begins at a number.
        let low = (((edge - 0.5 * span) / numbered).ceil() * numbered).max(0.0);
        let at = |division: f64| WIDE * (division - low) / span;

        let mut sketch = Sketch::new();
        let blade = Area { low: pt(-8.0, -HIGH), high: pt(WIDE + 8.0, 0.0) };
        // The scale goes on beyond the picture on the right, and on the left unless it begins there.
        sketch.polygon(&blade.corners(), Line::Bare, Fill::Tint);
        let start = if low == 0.0 { at(0.0) } else { blade.low.x };
        sketch.line(pt(start, 0.0), blade.high, Line::Outline);
        sketch.line(pt(start, -HIGH), pt(blade.high.x, -HIGH), Line::Outline);
        if low == 0.0 {
            sketch.line(pt(start, 0.0), pt(start, -HIGH), Line::Outline);
        }
        let mut long: Vec<(Pt, Pt)> = Vec::new();
        let mut short: Vec<(Pt, Pt)> = Vec::new();
        for mark in 0..=span as u32 {
            let division = low + f64::from(mark);
            let height = self.height(division);
            let line = (pt(at(division), 0.0), pt(at(division), -height));
            if height >= 34.0 { long.push(line) } else { short.push(line) }
        }
        sketch.marks(&short, Line::Thin);
        sketch.marks(&long, Line::Outline);
        let mut number = low;
        while number <= low + span {
            let words = self.number(number);
            // At the very start the number would hang over the end of the scale.
            if number > 0.0 {
                sketch.text(
                    pt(at(number), -46.0 - if self.whole(number) { 20.0 } else { 0.0 }),
                    Anchor::Middle,
                    &words,
                );
            }
            number += numbered;
        }
        // The part: its left face is the edge, and it touches the scale's marks.
        let part = Area { low: pt(at(edge), 0.0), high: pt(at(edge) + 120.0, 46.0) };
        sketch.rect(part, Line::Outline, Fill::Open);
        sketch.hatch(&part.corners(), 9.0);
        sketch.label(pt(at(edge), 40.0), 4.0, pt(-1.0, 0.3), EDGE.text());
        if let Some(reading) = &self.reading {
            sketch.note(&READING.say(&[("reading", reading)]));
        }
        let each = if self.inch { INCH.text() } else { METRIC.text() };
        let description = ABOUT.say(&[("each", each), ("place", &self.place())]);
        let mut table = vec![(SCALE.text().to_owned(), each.to_owned()), (EDGE_ROW.text().to_owned(), self.place())];
        table.extend(self.reading.iter().map(|reading| (READING_NAME.text().to_owned(), reading.clone())));
        Ok(sketch.finish(&self.id, &TITLE.say(&[("what", &self.name)]), &description, table))
    }

    /// Whether a whole inch stands here.
    fn whole(&self, division: f64) -> bool {
        self.inch && division % 64.0 == 0.0
    }

    /// Length of the mark at a division.
    fn height(&self, division: f64) -> f64 {
        let steps: &[(f64, f64)] = if self.inch {
            &[(64.0, 52.0), (8.0, 34.0), (4.0, 26.0), (2.0, 19.0), (1.0, 12.0)]
        } else {
            &[(20.0, 34.0), (10.0, 28.0), (2.0, 20.0), (1.0, 12.0)]
        };
        steps.iter().find(|(step, _)| division % step == 0.0).map_or(12.0, |(_, height)| *height)
    }

    /// What is printed at a numbered division: millimetres, or sixty-fourths and whole inches.
    fn number(&self, division: f64) -> String {
        match self.inch {
            true if self.whole(division) => format!("{:.0} in", division / 64.0),
            true => format!("{:.0}", division % 64.0),
            false => format!("{:.0}", 0.5 * division),
        }
    }

    /// Where the edge stands, in divisions past a number.
    fn place(&self) -> String {
        let numbered = if self.inch { 8.0 } else { 20.0 };
        let below = (self.edge / numbered + 1e-9).floor() * numbered;
        let number = match self.inch {
            true if below == 0.0 => "0".to_owned(),
            true if !self.whole(below) && below > 64.0 => {
                AFTER.say(&[("number", &self.number(below)), ("inches", &format!("{:.0}", (below / 64.0).floor()))])
            }
            true if !self.whole(below) => THE.say(&[("number", &self.number(below))]),
            _ => self.number(below),
        };
        past((self.edge - below).max(0.0), &number)
    }
}
