//! A key in its shaft and hub, cut across.

use super::geometry::{Area, polar, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, positive, rows, within};

/// Shaft, hub and key in section; shaft and key share one scale.
#[derive(Debug, Clone)]
pub struct KeySection {
    /// Identifier, unique in the page.
    pub id: String,
    /// Diameter of the shaft.
    pub shaft: f64,
    /// Width of the key, same unit.
    pub width: f64,
    /// Height of the key, same unit.
    pub height: f64,
    /// Label of the shaft's diameter.
    pub shaft_label: Option<String>,
    /// Label of the key's width.
    pub width_label: Option<String>,
    /// Label of the keyway's width.
    pub keyway_label: Option<String>,
    /// Label of the key's height.
    pub height_label: Option<String>,
    /// Label of the key's working length.
    pub length_label: Option<String>,
}

/// Radius of the shaft on the sheet.
const SHAFT: f64 = 92.0;
/// Radius of the hub on the sheet.
const HUB: f64 = 140.0;

impl KeySection {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for a shaft not above nought, or a key wider or higher than three quarters of it.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let shaft = positive("shaft", self.shaft)?;
        let scale = 2.0 * SHAFT / shaft;
        let width = within("width of the key", self.width, 0.02 * shaft, 0.75 * shaft)? * scale;
        let height = within("height of the key", self.height, 0.02 * shaft, 0.75 * shaft)? * scale;
        let mut sketch = Sketch::new();
        let centre = pt(0.0, 0.0);
        sketch.circle(centre, HUB, Line::Outline, Fill::Open);
        sketch.circle(centre, SHAFT, Line::Outline, Fill::Tint);
        // Half the key in the shaft, half in the hub.
        let key = Area::about(pt(0.0, -SHAFT), width, height);
        sketch.rect(key, Line::Outline, Fill::Open);
        sketch.hatch(&key.corners(), 7.0);
        sketch.line(pt(-HUB - 12.0, 0.0), pt(HUB + 12.0, 0.0), Line::Centre);
        sketch.line(pt(0.0, -HUB - 10.0), pt(0.0, HUB + 10.0), Line::Centre);
        sketch.text(pt(-0.5 * SHAFT, 0.45 * SHAFT), Anchor::Middle, "shaft");
        sketch.text(polar(centre, 0.5 * (SHAFT + HUB), 2.4), Anchor::Middle, "hub");
        let (left, right) = (pt(key.low.x, key.low.y), pt(key.high.x, key.low.y));
        let top = HUB - SHAFT - 0.5 * height;
        sketch.dimension(left, right, pt(0.0, -top - 16.0), self.width_label.as_deref());
        let above = if self.width_label.is_some() { 46.0 } else { 0.0 };
        sketch.dimension(left, right, pt(0.0, -top - 16.0 - above), self.keyway_label.as_deref());
        sketch.dimension(
            pt(key.high.x, key.low.y),
            pt(key.high.x, key.high.y),
            pt(HUB - key.high.x + 14.0, 0.0),
            self.height_label.as_deref(),
        );
        sketch.dimension(pt(-SHAFT, 0.0), pt(SHAFT, 0.0), pt(0.0, HUB + 16.0), self.shaft_label.as_deref());
        if let Some(words) = &self.length_label {
            sketch.note(&format!("Working length of the key: {words}"));
        }
        Ok(sketch.finish(&self.id, "Key in shaft and hub", &self.description(), self.table()))
    }

    fn description(&self) -> String {
        let shape = if self.height < 0.97 * self.width { "lower than wide" } else { "about as high as wide" };
        format!("A shaft in its hub, cut across. The hatched key, {shape}, lies half in the shaft and half in the hub.")
    }

    fn table(&self) -> Vec<(String, String)> {
        rows(&[
            ("Diameter of the shaft", &self.shaft_label),
            ("Width of the key", &self.width_label),
            ("Width of the keyway", &self.keyway_label),
            ("Height of the key", &self.height_label),
            ("Working length of the key", &self.length_label),
        ])
    }
}
