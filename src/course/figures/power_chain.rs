//! Power on its way from the supply to the reducer's output shaft.

use super::geometry::{Area, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, positive, rows, within};
use drivecourse_machine::language::Message;
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    TITLE = "power-chain-title", "Power from the supply to the output shaft";
    HEAT = "power-chain-heat", "heat";
    DRAWN = "power-chain-drawn", "Power drawn";
    AT_MOTOR = "power-chain-at-motor", "Power at the motor's shaft";
    AT_OUTPUT = "power-chain-at-output", "Power at the output shaft";
    DRAWN_PLACE = "power-chain-drawn-place", "drawn";
    MOTOR_PLACE = "power-chain-motor-place", "motor shaft";
    OUTPUT_PLACE = "power-chain-output-place", "output shaft";
    MOTOR_BOX = "power-chain-motor-box", "motor";
    REDUCER_BOX = "power-chain-reducer-box", "reducer";
    SUPPLY_BOX = "power-chain-supply-box", "supply";
    ABOUT = "power-chain-about", "Power drawn from the supply passes the motor and the reducer; each turns a part of it into heat, and the band becomes narrower.";
    SUPPLY = "power-chain-supply", "Supply";
    MOTOR = "power-chain-motor", "Motor";
    REDUCER = "power-chain-reducer", "Reducer";
} }

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
const NAMES: [Message; 3] = [DRAWN, AT_MOTOR, AT_OUTPUT];
const PLACES: [Message; 3] = [DRAWN_PLACE, MOTOR_PLACE, OUTPUT_PLACE];

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
            [(MOTOR_BOX.text(), &self.motor_label), (REDUCER_BOX.text(), &self.reducer_label)].into_iter().enumerate()
        {
            let top = STEP * place as f64 + BAND;
            let area = Area { low: pt(BOX.low.x, top), high: pt(BOX.high.x, top + BOX.height()) };
            sketch.rect(area, Line::Outline, Fill::Open);
            let words = label.as_ref().map_or_else(|| name.to_owned(), |label| format!("{name}, {label}"));
            sketch.text(area.centre(), Anchor::Middle, &words);
            let from = pt(BOX.high.x, area.centre().y);
            sketch.arrow(from, from + pt(34.0, 0.0));
            sketch.text(from + pt(40.0, 0.0), Anchor::Start, HEAT.text());
        }
        let head = self
            .supply_label
            .as_ref()
            .map_or_else(|| SUPPLY_BOX.text().to_owned(), |label| format!("{}, {label}", SUPPLY_BOX.text()));
        sketch.text(pt(0.0, -14.0), Anchor::Middle, &head);
        for (place, label) in self.power_labels.iter().enumerate() {
            if let Some(label) = label {
                let y = STEP * place as f64 + 0.45 * BAND;
                sketch.text(pt(-half[0] - 12.0, y - 8.0), Anchor::End, PLACES[place].text());
                sketch.text(pt(-half[0] - 12.0, y + 8.0), Anchor::End, label);
            }
        }
        let words = ABOUT.text();
        Ok(sketch.finish(&self.id, TITLE.text(), words, self.table()))
    }

    fn table(&self) -> Vec<(String, String)> {
        let [drawn, shaft, out] = &self.power_labels;
        rows(&[
            (SUPPLY, &self.supply_label),
            (NAMES[0], drawn),
            (MOTOR, &self.motor_label),
            (NAMES[1], shaft),
            (REDUCER, &self.reducer_label),
            (NAMES[2], out),
        ])
    }
}
