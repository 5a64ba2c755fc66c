//! A key in its shaft and hub, cut across.

use super::geometry::{Area, polar, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, positive, rows, within};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    SHAFT_DIA = "key-section-shaft-dia", "Diameter of the shaft";
    KEY_WIDTH = "key-section-key-width", "Width of the key";
    KEYWAY = "key-section-keyway", "Width of the keyway";
    HEIGHT = "key-section-height", "Height of the key";
    LENGTH = "key-section-length", "Working length of the key";
    TITLE = "key-section-title", "Key in shaft and hub";
    HUB_NAME = "key-section-hub-name", "hub";
    SHAFT_NAME = "key-section-shaft-name", "shaft";
    NOTE = "key-section-note", "Working length of the key: {length}";
    LOWER = "key-section-lower", "A shaft in its hub, cut across. The hatched key, lower than wide, lies half in the shaft and half in the hub.";
    SQUARE = "key-section-square", "A shaft in its hub, cut across. The hatched key, about as high as wide, lies half in the shaft and half in the hub.";
} }

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
        sketch.text(pt(-0.5 * SHAFT, 0.45 * SHAFT), Anchor::Middle, SHAFT_NAME.text());
        sketch.text(polar(centre, 0.5 * (SHAFT + HUB), 2.4), Anchor::Middle, HUB_NAME.text());
        let (left, right) = (pt(key.low.x, key.low.y), pt(key.high.x, key.low.y));
        let top = HUB - SHAFT - 0.5 * height;
        let up = pt(0.0, -top - 16.0);
        let above = if self.width_label.is_some() { 46.0 } else { 0.0 };
        if self.keyway_label.is_some() {
            // The lines up to the keyway's measure would go through a label between them.
            sketch.dimension_beside(left, right, up, self.width_label.as_deref());
        } else {
            sketch.dimension(left, right, up, self.width_label.as_deref());
        }
        sketch.dimension(left, right, pt(0.0, -top - 16.0 - above), self.keyway_label.as_deref());
        sketch.dimension(
            pt(key.high.x, key.low.y),
            pt(key.high.x, key.high.y),
            pt(HUB - key.high.x + 14.0, 0.0),
            self.height_label.as_deref(),
        );
        sketch.dimension(pt(-SHAFT, 0.0), pt(SHAFT, 0.0), pt(0.0, HUB + 16.0), self.shaft_label.as_deref());
        if let Some(words) = &self.length_label {
            sketch.note(&NOTE.say(&[("length", words)]));
        }
        Ok(sketch.finish(&self.id, TITLE.text(), &self.description(), self.table()))
    }

    fn description(&self) -> String {
        if self.height < 0.97 * self.width { LOWER } else { SQUARE }.text().to_owned()
    }

    fn table(&self) -> Vec<(String, String)> {
        rows(&[
            (SHAFT_DIA, &self.shaft_label),
            (KEY_WIDTH, &self.width_label),
            (KEYWAY, &self.keyway_label),
            (HEIGHT, &self.height_label),
            (LENGTH, &self.length_label),
        ])
    }
}
