//! A vibration meter with a hand.

use core::f64::consts::TAU;

use drivecourse_machine::face::VibrationRange;

use super::super::geometry::{polar, pt};
use super::super::kit::{Line, Sketch};
use super::super::label::Anchor;
use super::super::{Figure, FigureError, within};
use super::{READING, READING_NAME};
use super::{hand, past};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    TITLE = "vibration-meter-title", "Vibration meter";
    RANGE = "vibration-meter-range", "range {range}";
    UPPER = "vibration-meter-upper", "{place} on the upper row, 0 to 10";
    LOWER = "vibration-meter-lower", "{place} on the lower row, 0 to 3";
    ABOUT = "vibration-meter-about", "Vibration meter with two rows over one arc, 0 to 10 in 50 divisions and 0 to 3 in 30 divisions. The range switch stands at {range}. The hand stands about {upper}, {lower}.";
    SWITCH = "vibration-meter-switch", "Range switch";
    HAND = "vibration-meter-hand", "Hand";
} }

/// A vibration meter: two rows of numbers over the same arc, 0 to 10 above and 0 to 3 below, and a range switch that
/// says what full scale means.
#[derive(Debug, Clone)]
pub struct VibrationFace {
    /// Identifier, unique in the page.
    pub id: String,
    /// Where the hand stands, as a share of full scale.
    pub share: f64,
    /// What the switch is set to.
    pub range: VibrationRange,
    /// The range as the switch says it (`0 to 10 mm/s`).
    pub range_label: String,
    /// The reading, if it is to be told.
    pub reading: Option<String>,
}

/// Radius of the arc between the two rows.
const RADIUS: f64 = 205.0;
/// The arc begins at the left and spans a third of a turn.
const START: f64 = TAU * 7.0 / 12.0;
const SWEEP: f64 = TAU / 3.0;

impl VibrationFace {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for a hand off the rows.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let share = within("share of full scale", self.share, 0.0, 1.0)?;
        let mut sketch = Sketch::new();
        let middle = pt(0.0, 0.0);
        sketch.arc(middle, RADIUS, START, START + SWEEP, Line::Thin);
        let (mut long, mut short) = (Vec::new(), Vec::new());
        // The upper row: 50 divisions, a number every ten; the lower row: 30 divisions, likewise.
        for (marks, most, out) in [(50_u32, 10.0, 1.0), (30, 3.0, -1.0)] {
            for mark in 0..=marks {
                let angle = START + SWEEP * f64::from(mark) / f64::from(marks);
                let (list, length) = match mark {
                    _ if mark % 10 == 0 => (&mut long, 16.0),
                    _ if mark % 5 == 0 => (&mut short, 12.0),
                    _ => (&mut short, 8.0),
                };
                list.push((polar(middle, RADIUS, angle), polar(middle, RADIUS + out * length, angle)));
                if mark % 10 == 0 {
                    let number = most * f64::from(mark) / f64::from(marks);
                    let at = polar(middle, RADIUS + out * 28.0, angle);
                    sketch.text(at, Anchor::Middle, &format!("{number:.0}"));
                }
            }
        }
        sketch.marks(&short, Line::Thin);
        sketch.marks(&long, Line::Outline);
        hand(&mut sketch, middle, RADIUS + 6.0, START + SWEEP * share, 8.0);
        sketch.text(pt(0.0, 34.0), Anchor::Middle, &RANGE.say(&[("range", &self.range_label)]));
        if let Some(reading) = &self.reading {
            sketch.note(&READING.say(&[("reading", reading)]));
        }
        let rows = [(50.0, 2.0, UPPER), (30.0, 1.0, LOWER)].map(|(marks, each, name)| {
            // To the nearest half: finer no eye reads it.
            let divisions = 0.5 * (2.0 * share * marks).round();
            let number = (divisions / 10.0).floor();
            let place = past((divisions - 10.0 * number).max(0.0), &format!("{:.0}", number * each));
            name.say(&[("place", &place)])
        });
        let description = ABOUT.say(&[("range", &self.range_label), ("upper", &rows[0]), ("lower", &rows[1])]);
        let mut table =
            vec![(SWITCH.text().to_owned(), self.range_label.clone()), (HAND.text().to_owned(), rows.join("; "))];
        table.extend(self.reading.iter().map(|reading| (READING_NAME.text().to_owned(), reading.clone())));
        Ok(sketch.finish(&self.id, TITLE.text(), &description, table))
    }
}
