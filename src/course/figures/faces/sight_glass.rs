//! A sight glass with a scale beside it.

use super::super::geometry::{Area, Pt, pt};
use super::super::kit::{Fill, Line, Sketch};
use super::super::label::Anchor;
use super::super::{Figure, FigureError, LARGEST, within};
use super::past;
use super::{READING, READING_NAME};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    TITLE = "sight-glass-title", "Sight glass";
    INCH = "sight-glass-inch", "1/32 in a division, numbered every 8 divisions";
    METRIC = "sight-glass-metric", "1 mm a division, numbered every 10 mm";
    SCALE = "sight-glass-scale", "Scale";
    FLAT = "sight-glass-flat", "Flat of the oil";
    MARK_IS = "sight-glass-mark-is", "The {mark} is {place}.";
    ABOUT = "sight-glass-about", "Sight glass with a scale, {each}. The flat of the oil stands {place}; at the glass its edge is drawn up by one division.";
    AFTER = "sight-glass-after", "the {number} after {inches} in";
} }

/// A sight glass: the oil with its edge drawn up at the glass, a scale of millimetres or of 1/32 in, and marks.
#[derive(Debug, Clone)]
pub struct SightGlassFace {
    /// Identifier, unique in the page.
    pub id: String,
    /// Where the flat of the oil stands, in divisions from nought.
    pub level: f64,
    /// Whether the scale is one of 1/32 in; otherwise of millimetres.
    pub inch: bool,
    /// Marks on the glass: name, with its value if that is to be shown, and place in divisions.
    pub marks: Vec<(String, f64)>,
    /// The reading, if it is to be told.
    pub reading: Option<String>,
}

/// Height of one division.
const DIVISION: f64 = 6.0;
/// Divisions shown.
const SPAN: f64 = 50.0;
/// Half the width of the glass, and where its middle lies.
const GLASS: (f64, f64) = (48.0, -70.0);

impl SightGlassFace {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for a level below nought, or a value that is no number.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let level = within("level", self.level, 0.0, LARGEST)?;
        let numbered = self.numbered();
        let low = (((level - 0.5 * SPAN) / numbered).ceil() * numbered).max(0.0);
        let y = |division: f64| -DIVISION * (division - low);
        let (half, middle) = GLASS;
        let (left, right) = (middle - half, middle + half);

        let mut sketch = Sketch::new();
        self.oil(&mut sketch, y(level), y(low) + 10.0);
        let tube = Area { low: pt(left, y(low + SPAN) - 10.0), high: pt(right, y(low) + 10.0) };
        sketch.rect(tube, Line::Outline, Fill::Open);
        let (mut long, mut short) = (Vec::new(), Vec::new());
        for mark in 0..=SPAN as u32 {
            let division = low + f64::from(mark);
            let length = self.length(division);
            let line = (pt(right + 8.0, y(division)), pt(right + 8.0 + length, y(division)));
            if length >= 26.0 { long.push(line) } else { short.push(line) }
        }
        sketch.marks(&short, Line::Thin);
        sketch.marks(&long, Line::Outline);
        let mut number = low;
        while number <= low + SPAN {
            sketch.text(pt(right + 44.0, y(number)), Anchor::Start, &self.number(number));
            number += numbered;
        }
        for (name, place) in &self.marks {
            let place = within("mark", *place, 0.0, LARGEST)?;
            if place < low || place > low + SPAN {
                continue;
            }
            // A mark is a line across the glass and an arrow beside it.
            sketch.line(pt(left - 14.0, y(place)), pt(right, y(place)), Line::Hidden);
            sketch.head(pt(left, y(place)), pt(1.0, 0.0), 10.0);
            sketch.label(pt(left - 16.0, y(place)), 2.0, pt(-1.0, 0.0), name);
        }
        if let Some(reading) = &self.reading {
            sketch.note(&READING.say(&[("reading", reading)]));
        }
        let each = if self.inch { INCH.text() } else { METRIC.text() };
        let mut table = vec![(SCALE.text().to_owned(), each.to_owned()), (FLAT.text().to_owned(), self.place(level))];
        table.extend(self.marks.iter().map(|(name, place)| (name.clone(), self.place(*place))));
        table.extend(self.reading.iter().map(|reading| (READING_NAME.text().to_owned(), reading.clone())));
        let marks: Vec<String> = self
            .marks
            .iter()
            .map(|(name, place)| format!(" {}", MARK_IS.say(&[("mark", name), ("place", &self.place(*place))])))
            .collect();
        let about = ABOUT.say(&[("each", each), ("place", &self.place(level))]);
        let description = format!("{about}{}", marks.concat());
        Ok(sketch.finish(&self.id, TITLE.text(), &description, table))
    }

    /// The oil below its level, its edge drawn up by a division at either wall.
    fn oil(&self, sketch: &mut Sketch, level: f64, bottom: f64) {
        let (half, middle) = GLASS;
        let mut surface: Vec<Pt> = Vec::new();
        for step in 0..=8_u32 {
            let off = 12.0 * f64::from(step) / 8.0;
            let up = DIVISION * (1.0 - off / 12.0) * (1.0 - off / 12.0);
            surface.push(pt(middle - half + off, level - up));
        }
        let other: Vec<Pt> = surface.iter().rev().map(|point| pt(2.0 * middle - point.x, point.y)).collect();
        surface.extend(other);
        sketch.polyline(&surface, Line::Outline);
        surface.extend([pt(middle + half, bottom), pt(middle - half, bottom)]);
        // Twice, so that the oil stands out from the glass.
        sketch.polygon(&surface, Line::Bare, Fill::Tint);
        sketch.polygon(&surface, Line::Bare, Fill::Tint);
    }

    fn numbered(&self) -> f64 {
        if self.inch { 8.0 } else { 10.0 }
    }

    fn length(&self, division: f64) -> f64 {
        let steps: &[(f64, f64)] = if self.inch {
            &[(8.0, 28.0), (4.0, 22.0), (2.0, 17.0), (1.0, 12.0)]
        } else {
            &[(10.0, 28.0), (5.0, 20.0), (1.0, 12.0)]
        };
        steps.iter().find(|(step, _)| division % step == 0.0).map_or(12.0, |(_, length)| *length)
    }

    /// What is printed at a numbered division.
    fn number(&self, division: f64) -> String {
        match self.inch {
            true if division % 32.0 == 0.0 => format!("{:.0} in", division / 32.0),
            true => format!("{:.0}", division % 32.0),
            false => format!("{division:.0}"),
        }
    }

    fn place(&self, division: f64) -> String {
        let numbered = self.numbered();
        let below = (division / numbered + 1e-9).floor() * numbered;
        let number = match self.inch {
            true if below % 32.0 != 0.0 => {
                AFTER.say(&[("number", &self.number(below)), ("inches", &format!("{:.0}", (below / 32.0).floor()))])
            }
            _ => self.number(below),
        };
        past((division - below).max(0.0), &number)
    }
}
