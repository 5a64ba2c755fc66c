//! Power on its way from the supply to the reducer's output shaft.

use super::geometry::{Area, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, positive, rows, within};

/// Three powers one below the other, as bands whose widths go with them; what each machine loses leaves to the right.
#[derive(Debug, Clone)]
pub struct PowerChain {
    /// Identifier, unique in the page.
    pub id: String,
    /// Power drawn, at the motor's shaft, and at the output shaft; all in one unit.
    pub powers: [f64; 3],
    /// Labels of the three powers.
    pub power_labels: [Option<String>; 3],
    /// What is known of the supply (volts, amps, power factor).
    pub supply_label: Option<String>,
    /// What is known of the motor (its efficiency).
    pub motor_label: Option<String>,
    /// What is known of the reducer (its efficiency).
    pub reducer_label: Option<String>,
}

/// Width of the band of the power drawn.
const WIDEST: f64 = 120.0;
const BAND: f64 = 58.0;
const BOX: Area = Area { low: pt(-90.0, 0.0), high: pt(90.0, 40.0) };
const STEP: f64 = BAND + 40.0;
const NAMES: [&str; 3] = ["Power drawn", "Power at the motor's shaft", "Power at the output shaft"];
const PLACES: [&str; 3] = ["drawn", "motor shaft", "output shaft"];

impl PowerChain {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] unless every power is above nought and none is larger than the one before.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let [drawn, shaft, out] = self.powers;
        positive("power drawn", drawn)?;
        within("power at the motor's shaft", positive("power at the motor's shaft", shaft)?, 0.0, drawn)?;
        within("power at the output shaft", positive("power at the output shaft", out)?, 0.0, shaft)?;
        let half = self.powers.map(|power| 0.5 * WIDEST * power / drawn);
        let mut sketch = Sketch::new();
        for (place, half) in half.iter().enumerate() {
            let top = STEP * place as f64;
            let area = Area { low: pt(-half, top), high: pt(*half, top + BAND) };
            sketch.polygon(&area.corners(), Line::Bare, Fill::Tint);
            sketch.line(area.low, pt(-half, top + BAND), Line::Outline);
            sketch.line(pt(*half, top), area.high, Line::Outline);
            sketch.head(pt(0.0, top + BAND - 4.0), pt(0.0, 1.0), 14.0);
        }
        for (place, (name, label)) in
            [("motor", &self.motor_label), ("reducer", &self.reducer_label)].into_iter().enumerate()
        {
            let top = STEP * place as f64 + BAND;
            let area = Area { low: pt(BOX.low.x, top), high: pt(BOX.high.x, top + BOX.height()) };
            sketch.rect(area, Line::Outline, Fill::Open);
            let words = label.as_ref().map_or_else(|| name.to_owned(), |label| format!("{name}, {label}"));
            sketch.text(area.centre(), Anchor::Middle, &words);
            let from = pt(BOX.high.x, area.centre().y);
            sketch.arrow(from, from + pt(34.0, 0.0));
            sketch.text(from + pt(40.0, 0.0), Anchor::Start, "heat");
        }
        let head = self.supply_label.as_ref().map_or_else(|| "supply".to_owned(), |label| format!("supply, {label}"));
        sketch.text(pt(0.0, -14.0), Anchor::Middle, &head);
        for (place, label) in self.power_labels.iter().enumerate() {
            if let Some(label) = label {
                let y = STEP * place as f64 + 0.45 * BAND;
                sketch.text(pt(-half[0] - 12.0, y - 8.0), Anchor::End, PLACES[place]);
                sketch.text(pt(-half[0] - 12.0, y + 8.0), Anchor::End, label);
            }
        }
        let words = "Power drawn from the supply passes the motor and the reducer; each turns a part of it into heat, and the band \
                     becomes narrower.";
        Ok(sketch.finish(&self.id, "Power from the supply to the output shaft", words, self.table()))
    }

    fn table(&self) -> Vec<(String, String)> {
        let [drawn, shaft, out] = &self.power_labels;
        rows(&[
            ("Supply", &self.supply_label),
            (NAMES[0], drawn),
            ("Motor", &self.motor_label),
            (NAMES[1], shaft),
            ("Reducer", &self.reducer_label),
            (NAMES[2], out),
        ])
    }
}
