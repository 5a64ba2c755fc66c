//! A reading on a bar of severity zones.

use super::geometry::{Area, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, positive, rows, within};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    A_B = "zones-a-b", "Limit between A and B";
    B_C = "zones-b-c", "Limit between B and C";
    C_D = "zones-c-d", "Limit between C and D";
    READING = "zones-reading", "Reading";
    ABOUT = "zones-about", "A bar of the severity zones A, B, C and D from left to right.";
    ABOUT_READING = "zones-about-reading", "A bar of the severity zones A, B, C and D from left to right, with an arrow at the reading.";
} }

/// A bar from nought upwards, cut into the zones A to D, with a reading pointed out above it. The zones are told apart by letters and by
/// ever closer hatching.
#[derive(Debug, Clone)]
pub struct ZoneBar {
    /// Identifier, unique in the page.
    pub id: String,
    /// Title of the figure.
    pub title: String,
    /// Limits between A and B, B and C, C and D, in rising order.
    pub limits: [f64; 3],
    /// Labels of the limits.
    pub limit_labels: [Option<String>; 3],
    /// The reading, if it is to be pointed out.
    pub reading: Option<f64>,
    /// Label of the reading.
    pub reading_label: Option<String>,
}

const ZONES: [&str; 4] = ["A", "B", "C", "D"];
/// Distance between hatching lines in each zone; none in the first two.
const HATCHING: [Option<f64>; 4] = [None, None, Some(16.0), Some(7.0)];
const WIDTH: f64 = 400.0;
const HEIGHT: f64 = 44.0;

impl ZoneBar {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] unless the limits rise from above nought, and for a reading that is negative or no number.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let [a_b, b_c, c_d] = self.limits;
        positive("limit between A and B", a_b)?;
        positive("limit between B and C", b_c)?;
        positive("limit between C and D", c_d)?;
        within("limit between A and B", a_b, 0.0, b_c)?;
        within("limit between B and C", b_c, 0.0, c_d)?;
        let reading = self.reading.map(|reading| within("reading", reading, 0.0, super::LARGEST)).transpose()?;
        // A reading far beyond the last limit stands at the end of the bar.
        let most = reading.map_or(1.35 * c_d, |reading| (1.12 * reading).clamp(1.35 * c_d, 3.0 * c_d));
        let x = |value: f64| WIDTH * (value / most).min(1.0);
        let mut sketch = Sketch::new();
        let ends = [0.0, x(a_b), x(b_c), x(c_d), WIDTH];
        for (zone, pair) in ends.windows(2).enumerate() {
            let area = Area { low: pt(pair[0], 0.0), high: pt(pair[1], HEIGHT) };
            sketch.rect(area, Line::Outline, if zone == 1 { Fill::Tint } else { Fill::Open });
            if let Some(spacing) = HATCHING[zone] {
                sketch.hatch(&area.corners(), spacing);
            }
            sketch.text(area.centre(), Anchor::Middle, ZONES[zone]);
        }
        if let Some(reading) = reading {
            let tip = pt(x(reading), 0.0);
            sketch.arrow(pt(tip.x, -34.0), tip);
            if let Some(words) = &self.reading_label {
                sketch.label(pt(tip.x, -34.0), 4.0, pt(0.0, -1.0), words);
            }
        }
        for (limit, words) in self.limits.iter().zip(&self.limit_labels) {
            let foot = pt(x(*limit), HEIGHT);
            if let Some(words) = words {
                sketch.line(foot, pt(foot.x, HEIGHT + 8.0), Line::Thin);
                sketch.label(pt(foot.x, HEIGHT + 8.0), 3.0, pt(0.0, 1.0), words);
            }
        }
        Ok(sketch.finish(&self.id, &self.title, &self.description(), self.table()))
    }

    fn description(&self) -> String {
        if self.reading.is_some() { ABOUT_READING } else { ABOUT }.text().to_owned()
    }

    fn table(&self) -> Vec<(String, String)> {
        let [a_b, b_c, c_d] = &self.limit_labels;
        rows(&[(A_B, a_b), (B_C, b_c), (C_D, c_d), (READING, &self.reading_label)])
    }
}
