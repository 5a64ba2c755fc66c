//! Settled readings with their mean and control limits, and the readings held against them.

use super::axis::{Axis, Steps};
use super::geometry::{Area, Pt, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, LARGEST, within};
use drivecourse_machine::language::Message;
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    UPPER = "baseline-upper", "Upper limit";
    MEAN = "baseline-mean", "Mean";
    LOWER = "baseline-lower", "Lower limit";
    UPPER_NAME = "baseline-upper-name", "upper limit";
    MEAN_NAME = "baseline-mean-name", "mean";
    LOWER_NAME = "baseline-lower-name", "lower limit";
    SETTLED_SIDE = "baseline-settled-side", "settled";
    LATER_SIDE = "baseline-later-side", "later";
    READING = "baseline-reading", "Reading";
    DOTS = "baseline-dots", "settled readings as solid dots joined by a line";
    RINGS = "baseline-rings", "later readings as rings, to the right of an upright line";
    MEAN_LINE = "baseline-mean-line", "the mean of the settled ones as a line of dashes and dots";
    LIMIT_LINES = "baseline-limit-lines", "control limits as dashed lines";
    ABOUT = "baseline-about", "{value} (upright) of readings in their order (across): {parts}.";
    SETTLED_READING = "baseline-settled-reading", "Settled reading {number}";
    LATER_READING = "baseline-later-reading", "Later reading {number}";
} }

/// One reading in the log, with a label if its value is to be shown.
#[derive(Debug, Clone)]
pub struct Logged {
    /// Value, in the unit of the axis; `None` leaves its place in the row empty.
    pub value: Option<f64>,
    /// Label beside the mark.
    pub label: Option<String>,
}

/// A value drawn right across, with the label that tells it.
#[derive(Debug, Clone)]
pub struct Across {
    /// Value, in the unit of the axis.
    pub value: f64,
    /// Label at the end of its line, without its name.
    pub label: String,
}

/// Readings in their order: the settled ones as solid dots, later ones as rings, the mean as a line of dashes and dots,
/// control limits as dashed lines.
#[derive(Debug, Clone)]
pub struct BaselineChart {
    /// Identifier, unique in the page.
    pub id: String,
    /// Title of the figure.
    pub title: String,
    /// Name and unit of the upright axis ("Rise over ambient, °C").
    pub value_name: String,
    /// Readings from which the baseline is made.
    pub settled: Vec<Logged>,
    /// Readings that are held against it.
    pub later: Vec<Logged>,
    /// Mean of the settled readings.
    pub mean: Option<Across>,
    /// Upper control limit.
    pub upper: Option<Across>,
    /// Lower control limit.
    pub lower: Option<Across>,
}

/// The plotting field on the sheet.
const FIELD: Area = Area { low: pt(0.0, 0.0), high: pt(310.0, 220.0) };

/// Height that the name and the value of a level take.
const NAME: f64 = 36.0;

/// Most readings that find room beside one another.
const MOST: usize = 12;

impl BaselineChart {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::Empty`] without a reading; [`FigureError::OutOfRange`] for a value that is no number, or for more
    /// than a dozen readings.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let axis = self.axis()?;
        let mut sketch = Sketch::new();
        self.axes(&mut sketch, &axis);
        for (level, line) in self.levels().into_iter().map(|(_, level, line)| (level, line)) {
            let y = height(&axis, level.value);
            sketch.line(pt(FIELD.low.x, y), pt(FIELD.high.x, y), line);
        }
        let settled: Vec<Pt> = self.places(&axis).into_iter().take(self.settled.len()).flatten().collect();
        if settled.len() > 1 {
            sketch.polyline(&settled, Line::Thin);
        }
        let readings = || self.settled.iter().chain(&self.later);
        for (place, at) in self.places(&axis).into_iter().enumerate() {
            if let Some(at) = at {
                let fill = if place < self.settled.len() { Fill::Solid } else { Fill::Open };
                sketch.circle(at, 5.0, Line::Outline, fill);
            }
        }
        for (at, reading) in self.places(&axis).into_iter().zip(readings()) {
            if let (Some(at), Some(words)) = (at, &reading.label) {
                // Above the mean upwards, below it downwards: the line between the dots stays clear.
                let mean = self.mean.as_ref().map_or(0.5 * (axis.low + axis.high), |mean| mean.value);
                let up = if reading.value.is_some_and(|value| value >= mean) { -1.0 } else { 1.0 };
                sketch.label(at, 8.0, pt(0.0, up), words);
            }
        }
        self.name_levels(&mut sketch, &axis);
        Ok(sketch.finish(&self.id, &self.title, &self.description(), self.table()))
    }

    /// Mean and limits that are there, with what each is called and how its line looks.
    fn levels(&self) -> Vec<(Message, &Across, Line)> {
        let all =
            [(UPPER, &self.upper, Line::Hidden), (MEAN, &self.mean, Line::Centre), (LOWER, &self.lower, Line::Hidden)];
        all.into_iter().filter_map(|(name, level, line)| level.as_ref().map(|level| (name, level, line))).collect()
    }

    /// Writes mean and limits at the ends of their lines, moved apart where those lie close together.
    fn name_levels(&self, sketch: &mut Sketch, axis: &Axis) {
        let mean = self.mean.as_ref().map(|mean| height(axis, mean.value));
        for (name, level, _) in self.levels() {
            let line = height(axis, level.value);
            let (y, written) = match (name, mean) {
                (UPPER, Some(mean)) => (line.min(mean - NAME), UPPER_NAME),
                (LOWER, Some(mean)) => (line.max(mean + NAME), LOWER_NAME),
                (UPPER, None) => (line, UPPER_NAME),
                (LOWER, None) => (line, LOWER_NAME),
                _ => (line, MEAN_NAME),
            };
            let end = pt(FIELD.high.x, line);
            sketch.line(end, pt(FIELD.high.x + 8.0, y), Line::Thin);
            sketch.text(pt(FIELD.high.x + 12.0, y - 8.0), Anchor::Start, written.text());
            sketch.text(pt(FIELD.high.x + 12.0, y + 8.0), Anchor::Start, &level.label);
        }
    }

    fn axis(&self) -> Result<Axis, FigureError> {
        let count = self.settled.len() + self.later.len();
        within("number of readings", count as f64, 0.0, MOST as f64)?;
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        let values = self.settled.iter().chain(&self.later).filter_map(|reading| reading.value);
        if values.clone().next().is_none() {
            return Err(FigureError::Empty { input: "readings" });
        }
        for value in values.chain(self.levels().into_iter().map(|(_, level, _)| level.value)) {
            let value = within("reading", value, -LARGEST, LARGEST)?;
            (low, high) = (low.min(value), high.max(value));
        }
        // Room for the labels above the highest and below the lowest mark.
        let room = 0.12 * (high - low);
        Ok(Axis::covering(low - room, high + room, 8, Steps::Decimal))
    }

    /// Where each reading stands, in order; nothing for one without a value.
    fn places(&self, axis: &Axis) -> Vec<Option<Pt>> {
        let count = self.settled.len() + self.later.len();
        let step = FIELD.width() / count.max(1) as f64;
        let readings = self.settled.iter().chain(&self.later).enumerate();
        readings
            .map(|(place, reading)| {
                reading.value.map(|value| pt(FIELD.low.x + step * (place as f64 + 0.5), height(axis, value)))
            })
            .collect()
    }

    fn axes(&self, sketch: &mut Sketch, axis: &Axis) {
        let (low, high) = (FIELD.low, FIELD.high);
        sketch.line(pt(low.x, high.y), high, Line::Outline);
        sketch.line(low, pt(low.x, high.y), Line::Outline);
        for (value, words) in axis.marks() {
            let y = height(axis, value);
            sketch.line(pt(low.x - 5.0, y), pt(low.x, y), Line::Thin);
            sketch.text(pt(low.x - 9.0, y), Anchor::End, &words);
        }
        let count = self.settled.len() + self.later.len();
        let step = FIELD.width() / count.max(1) as f64;
        for place in 0..count {
            let x = low.x + step * (place as f64 + 0.5);
            sketch.line(pt(x, high.y), pt(x, high.y + 5.0), Line::Thin);
            sketch.text(pt(x, high.y + 14.0), Anchor::Middle, &(place + 1).to_string());
        }
        sketch.reserve(Area { low: pt(low.x, high.y + 2.0), high: pt(high.x, high.y + 22.0) });
        sketch.reserve(Area { low: pt(low.x - 24.0, low.y), high: pt(low.x - 2.0, high.y) });
        if !self.later.is_empty() && !self.settled.is_empty() {
            let x = low.x + step * self.settled.len() as f64;
            sketch.line(pt(x, low.y), pt(x, high.y), Line::Thin);
            sketch.text(pt(0.5 * (low.x + x), high.y + 32.0), Anchor::Middle, SETTLED_SIDE.text());
            sketch.text(pt(0.5 * (high.x + x), high.y + 32.0), Anchor::Middle, LATER_SIDE.text());
        }
        sketch.text(pt(FIELD.centre().x, high.y + 52.0), Anchor::Middle, READING.text());
        let left = sketch.extent().map_or(0.0, |extent| extent.low.x);
        sketch.text(pt(left, low.y - 18.0), Anchor::Start, &self.value_name);
    }

    fn description(&self) -> String {
        let parts = [
            (!self.settled.is_empty(), DOTS),
            (!self.later.is_empty(), RINGS),
            (self.mean.is_some(), MEAN_LINE),
            (self.upper.is_some() || self.lower.is_some(), LIMIT_LINES),
        ];
        let parts: Vec<&str> = parts.iter().filter(|(there, _)| *there).map(|(_, words)| words.text()).collect();
        ABOUT.say(&[("value", &self.value_name), ("parts", &parts.join(", "))])
    }

    fn table(&self) -> Vec<(String, String)> {
        let named = |name: Message, from: usize, readings: &[Logged]| {
            let rows = readings.iter().enumerate().filter_map(move |(place, reading)| {
                reading
                    .label
                    .as_ref()
                    .map(|label| (name.say(&[("number", &(from + place + 1).to_string())]), label.clone()))
            });
            rows.collect::<Vec<_>>()
        };
        let mut table = named(SETTLED_READING, 0, &self.settled);
        table.extend(named(LATER_READING, self.settled.len(), &self.later));
        table.extend(self.levels().into_iter().map(|(name, level, _)| (name.text().to_owned(), level.label.clone())));
        table
    }
}

/// How far down the sheet `value` lies.
fn height(axis: &Axis, value: f64) -> f64 {
    FIELD.high.y - FIELD.height() * axis.place(value)
}
