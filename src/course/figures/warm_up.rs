//! Temperature against time after a start.

use super::axis::{Axis, Steps};
use super::geometry::{Area, Pt, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, LARGEST, within};
use drivecourse_machine::language::with_decimal_mark;
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    CURVE = "warm-up-curve", "a curve";
    DOTS = "warm-up-dots", "readings as dots";
    SURROUNDINGS_LINE = "warm-up-surroundings-line", "the surroundings as a dashed line";
    SETTLED_LINE = "warm-up-settled-line", "the settled temperature as a line of dashes and dots";
    LIMIT_LINES = "warm-up-limit-lines", "limits as lines hatched above";
    ABOUT = "warm-up-about", "{temperature} (upright) against {time} (across): {parts}.";
    SURROUNDINGS = "warm-up-surroundings", "Surroundings";
    SETTLED = "warm-up-settled", "Settled";
    LIMIT = "warm-up-limit-row", "Limit";
} }

/// A reading: when and how hot, with a label if it is to be shown.
#[derive(Debug, Clone)]
pub struct Reading {
    /// Time, in the unit of the time axis.
    pub time: f64,
    /// Temperature, in the unit of the temperature axis.
    pub temperature: f64,
    /// Label beside the mark.
    pub label: Option<String>,
}

/// A named temperature drawn right across.
#[derive(Debug, Clone)]
pub struct Level {
    /// Temperature, in the unit of the temperature axis.
    pub temperature: f64,
    /// Name written on the line, with its value if that is to be shown.
    pub name: String,
}

/// Temperature against time: a curve, readings, and levels told apart by their dashes (ambient short,
/// settled dash and dot, limits full with ticks on the forbidden side).
#[derive(Debug, Clone)]
pub struct WarmUp {
    /// Identifier, unique in the page.
    pub id: String,
    /// Title of the figure.
    pub title: String,
    /// Name and unit of the time axis ("Time, min").
    pub time_name: String,
    /// Which times count as round.
    pub time_steps: Steps,
    /// Name and unit of the temperature axis ("Temperature, °C").
    pub temperature_name: String,
    /// Sampled curve: time and temperature, in rising time. May be empty.
    pub curve: Vec<(f64, f64)>,
    /// Readings. May be empty when there is a curve.
    pub readings: Vec<Reading>,
    /// Temperature of the surroundings.
    pub ambient: Option<Level>,
    /// Where the temperature settles.
    pub settled: Option<Level>,
    /// Upper limits.
    pub limits: Vec<Level>,
}

/// The plotting field on the sheet.
const FIELD: Area = Area { low: pt(0.0, 0.0), high: pt(360.0, 240.0) };

struct Scales {
    time: Axis,
    temperature: Axis,
}

impl Scales {
    fn at(&self, time: f64, temperature: f64) -> Pt {
        pt(
            FIELD.low.x + FIELD.width() * self.time.place(time),
            FIELD.high.y - FIELD.height() * self.temperature.place(temperature),
        )
    }
}

impl WarmUp {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::Empty`] without curve and readings; [`FigureError::OutOfRange`] for a value that is no number.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let scales = self.scales()?;
        let mut sketch = Sketch::new();
        self.axes(&mut sketch, &scales);
        for (level, line) in [(&self.ambient, Line::Hidden), (&self.settled, Line::Centre)] {
            if let Some(level) = level {
                across(&mut sketch, &scales, level, line);
            }
        }
        for level in &self.limits {
            let y = across(&mut sketch, &scales, level, Line::Thin);
            let band = Area { low: pt(FIELD.low.x, y - 7.0), high: pt(FIELD.high.x, y) };
            sketch.hatch(&band.corners(), 10.0);
        }
        let points: Vec<Pt> = self.curve.iter().map(|(time, temperature)| scales.at(*time, *temperature)).collect();
        if points.len() > 1 {
            sketch.polyline(&points, Line::Outline);
        }
        for reading in &self.readings {
            sketch.circle(scales.at(reading.time, reading.temperature), 4.5, Line::Thin, Fill::Solid);
        }
        for reading in &self.readings {
            if let Some(words) = &reading.label {
                sketch.label(scales.at(reading.time, reading.temperature), 8.0, pt(0.6, 1.0), words);
            }
        }
        let levels = self.ambient.iter().chain(&self.settled).chain(&self.limits);
        for level in levels {
            // Names stand on their lines at the right, where the curve has flattened; the highest keep to the top.
            let y = scales.at(0.0, level.temperature).y;
            let half = 0.5 * super::label::width(&level.name).min(FIELD.width());
            sketch.label(pt(FIELD.high.x - half - 4.0, y - 8.0), 1.0, pt(0.0, -1.0), &level.name);
        }
        Ok(sketch.finish(&self.id, &self.title, &self.description(), self.table(&scales)))
    }

    fn scales(&self) -> Result<Scales, FigureError> {
        let mut points = self.curve.clone();
        points.extend(self.readings.iter().map(|reading| (reading.time, reading.temperature)));
        if points.is_empty() {
            return Err(FigureError::Empty { input: "readings" });
        }
        let (mut times, mut heats) = ((f64::INFINITY, f64::NEG_INFINITY), (f64::INFINITY, f64::NEG_INFINITY));
        let take = |range: &mut (f64, f64), value: f64| *range = (range.0.min(value), range.1.max(value));
        for (time, temperature) in points {
            take(&mut times, within("time", time, -LARGEST, LARGEST)?);
            take(&mut heats, within("temperature", temperature, -LARGEST, LARGEST)?);
        }
        for level in self.ambient.iter().chain(&self.settled).chain(&self.limits) {
            take(&mut heats, within("temperature", level.temperature, -LARGEST, LARGEST)?);
        }
        let time = Axis::covering(times.0, times.1, 8, self.time_steps);
        // A little room above the highest line for its name and below the lowest reading for its label.
        let room = 0.06 * (heats.1 - heats.0);
        Ok(Scales { time, temperature: Axis::covering(heats.0 - room, heats.1 + room, 8, Steps::Decimal) })
    }

    fn axes(&self, sketch: &mut Sketch, scales: &Scales) {
        let (low, high) = (FIELD.low, FIELD.high);
        sketch.line(pt(low.x, high.y), high, Line::Outline);
        sketch.line(low, pt(low.x, high.y), Line::Outline);
        for (value, words) in scales.time.marks() {
            let x = scales.at(value, scales.temperature.low).x;
            sketch.line(pt(x, high.y), pt(x, high.y + 5.0), Line::Thin);
            sketch.text(pt(x, high.y + 14.0), Anchor::Middle, &words);
        }
        for (value, words) in scales.temperature.marks() {
            let y = scales.at(scales.time.low, value).y;
            sketch.line(pt(low.x - 5.0, y), pt(low.x, y), Line::Thin);
            sketch.text(pt(low.x - 9.0, y), Anchor::End, &words);
        }
        // No reading's label may stand among the numbers of the scales.
        sketch.reserve(Area { low: pt(low.x, high.y + 2.0), high: pt(high.x, high.y + 22.0) });
        sketch.reserve(Area { low: pt(low.x - 24.0, low.y), high: pt(low.x - 2.0, high.y) });
        sketch.text(pt(FIELD.centre().x, high.y + 34.0), Anchor::Middle, &self.time_name);
        // The name of the upright axis lies above it: sideways letters are hard to read on a phone.
        let left = sketch.extent().map_or(0.0, |extent| extent.low.x);
        sketch.text(pt(left, low.y - 18.0), Anchor::Start, &self.temperature_name);
    }

    fn description(&self) -> String {
        let parts = [
            (!self.curve.is_empty(), CURVE),
            (!self.readings.is_empty(), DOTS),
            (self.ambient.is_some(), SURROUNDINGS_LINE),
            (self.settled.is_some(), SETTLED_LINE),
            (!self.limits.is_empty(), LIMIT_LINES),
        ];
        let parts: Vec<&str> = parts.iter().filter(|(there, _)| *there).map(|(_, words)| words.text()).collect();
        ABOUT.say(&[("temperature", &self.temperature_name), ("time", &self.time_name), ("parts", &parts.join(", "))])
    }

    fn table(&self, scales: &Scales) -> Vec<(String, String)> {
        let decimals = scales.time.decimals;
        let mut table: Vec<(String, String)> = self
            .readings
            .iter()
            .filter_map(|reading| {
                let time = with_decimal_mark(format!("{:.decimals$}", reading.time + 0.0));
                let time = format!("{}: {time}", self.time_name);
                reading.label.as_ref().map(|label| (time, label.clone()))
            })
            .collect();
        let ambient = self.ambient.iter().map(|level| (SURROUNDINGS, level));
        let settled = self.settled.iter().map(|level| (SETTLED, level));
        let limits = self.limits.iter().map(|level| (LIMIT, level));
        table.extend(
            ambient.chain(settled).chain(limits).map(|(kind, level)| (kind.text().to_owned(), level.name.clone())),
        );
        table
    }
}

/// Draws `level` right across the field and gives its height on the sheet.
fn across(sketch: &mut Sketch, scales: &Scales, level: &Level, line: Line) -> f64 {
    let y = scales.at(scales.time.low, level.temperature).y;
    sketch.line(pt(FIELD.low.x, y), pt(FIELD.high.x, y), line);
    y
}
