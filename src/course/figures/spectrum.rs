//! A velocity spectrum: lines over a scale of frequencies by tens.

use super::axis::{Axis, Steps};
use super::geometry::{Area, Pt, pt};
use super::kit::{Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, LARGEST, positive, within};
use drivecourse_machine::language::with_decimal_mark;
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    TALLEST = "spectrum-tallest", "The tallest is marked {name}.";
    ABOUT = "spectrum-about", "{height} (upright) over {frequency} (across, by tens): {count} upright lines.";
} }

/// A line of a spectrum.
#[derive(Debug, Clone)]
pub struct Stem {
    /// Frequency, in the unit of the frequency axis.
    pub frequency: f64,
    /// Height, in the unit of the upright axis.
    pub height: f64,
    /// Short name written at its tip.
    pub name: Option<String>,
    /// Row of the table: what it is, and what is known of it.
    pub row: Option<(String, String)>,
}

/// Lines over their frequencies; the scale of frequencies goes by tens, so that a slow shaft and a gear mesh share one sheet.
#[derive(Debug, Clone)]
pub struct Spectrum {
    /// Identifier, unique in the page.
    pub id: String,
    /// Title of the figure.
    pub title: String,
    /// Name and unit of the frequency axis ("Frequency, Hz").
    pub frequency_name: String,
    /// Name and unit of the upright axis ("Velocity, mm/s r.m.s.").
    pub height_name: String,
    /// The lines.
    pub stems: Vec<Stem>,
}

/// The plotting field on the sheet.
const FIELD: Area = Area { low: pt(0.0, 0.0), high: pt(370.0, 210.0) };
/// Most decades of frequency on one sheet.
const MOST_DECADES: i32 = 7;

/// A scale by tens, from one whole power of ten to another.
struct Tens {
    low: i32,
    high: i32,
}

impl Tens {
    fn covering(low: f64, high: f64) -> Self {
        let power = |value: f64| libm::log10(value);
        let low = (power(low) - 0.02).floor() as i32;
        let high = ((power(high) + 0.02).ceil() as i32).clamp(low + 1, low + MOST_DECADES);
        Self { low, high }
    }

    fn place(&self, value: f64) -> f64 {
        ((libm::log10(value) - f64::from(self.low)) / f64::from(self.high - self.low)).clamp(0.0, 1.0)
    }

    /// Every whole power with its number, and 2 to 9 times it without.
    fn marks(&self) -> Vec<(f64, Option<String>)> {
        let mut marks = Vec::new();
        for power in self.low..=self.high {
            let whole = libm::pow(10.0, f64::from(power));
            let decimals = usize::try_from(-power).unwrap_or(0);
            marks.push((whole, Some(with_decimal_mark(format!("{whole:.decimals$}")))));
            if power < self.high {
                marks.extend((2..10).map(|times| (whole * f64::from(times), None)));
            }
        }
        marks
    }
}

impl Spectrum {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::Empty`] without lines; [`FigureError::OutOfRange`] for a frequency not above nought or a negative height.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let (mut low, mut high, mut tallest) = (f64::INFINITY, 0.0_f64, 0.0_f64);
        for stem in &self.stems {
            let frequency = positive("frequency", stem.frequency)?;
            (low, high) = (low.min(frequency), high.max(frequency));
            tallest = tallest.max(within("height", stem.height, 0.0, LARGEST)?);
        }
        if self.stems.is_empty() {
            return Err(FigureError::Empty { input: "lines" });
        }
        let (across, upright) = (Tens::covering(low, high), Axis::covering(0.0, 1.15 * tallest, 6, Steps::Decimal));
        let at = |frequency: f64, height: f64| {
            let x = FIELD.low.x + FIELD.width() * across.place(frequency);
            pt(x, FIELD.high.y - FIELD.height() * upright.place(height))
        };
        let mut sketch = Sketch::new();
        self.axes(&mut sketch, &across, &upright, &at);
        for stem in &self.stems {
            sketch.line(at(stem.frequency, upright.low), at(stem.frequency, stem.height), Line::Outline);
            sketch.dot(at(stem.frequency, stem.height), 2.5);
        }
        // The tallest is named first: it is the one that is looked for.
        let mut named: Vec<&Stem> = self.stems.iter().filter(|stem| stem.name.is_some()).collect();
        named.sort_by(|a, b| b.height.total_cmp(&a.height));
        for stem in named {
            let name = stem.name.as_deref().unwrap_or_default();
            sketch.label(at(stem.frequency, stem.height), 6.0, pt(0.0, -1.0), name);
        }
        let table = self.stems.iter().filter_map(|stem| stem.row.clone()).collect();
        Ok(sketch.finish(&self.id, &self.title, &self.description(), table))
    }

    fn axes(&self, sketch: &mut Sketch, across: &Tens, upright: &Axis, at: &impl Fn(f64, f64) -> Pt) {
        let (low, high) = (FIELD.low, FIELD.high);
        sketch.line(pt(low.x, high.y), high, Line::Outline);
        sketch.line(low, pt(low.x, high.y), Line::Outline);
        for (value, words) in across.marks() {
            let x = at(value, upright.low).x;
            sketch.line(pt(x, high.y), pt(x, high.y + if words.is_some() { 7.0 } else { 3.0 }), Line::Thin);
            if let Some(words) = words {
                sketch.text(pt(x, high.y + 16.0), Anchor::Middle, &words);
            }
        }
        for (value, words) in upright.marks() {
            let y = at(1.0, value).y;
            sketch.line(pt(low.x - 5.0, y), pt(low.x, y), Line::Thin);
            sketch.text(pt(low.x - 9.0, y), Anchor::End, &words);
        }
        // No name may stand among the numbers of the scales.
        sketch.reserve(Area { low: pt(low.x, high.y + 2.0), high: pt(high.x, high.y + 24.0) });
        sketch.reserve(Area { low: pt(low.x - 24.0, low.y), high: pt(low.x - 2.0, high.y) });
        sketch.text(pt(FIELD.centre().x, high.y + 38.0), Anchor::Middle, &self.frequency_name);
        // The name of the upright axis lies above it: sideways letters are hard to read on a phone.
        let left = sketch.extent().map_or(0.0, |extent| extent.low.x);
        sketch.text(pt(left, low.y - 18.0), Anchor::Start, &self.height_name);
    }

    fn description(&self) -> String {
        let strongest = self.stems.iter().max_by(|a, b| a.height.total_cmp(&b.height));
        let tallest = strongest.and_then(|stem| stem.name.as_deref());
        let tallest = tallest.map_or_else(String::new, |name| format!(" {}", TALLEST.say(&[("name", name)])));
        let about = ABOUT.say(&[
            ("height", &self.height_name),
            ("frequency", &self.frequency_name),
            ("count", &self.stems.len().to_string()),
        ]);
        format!("{about}{tallest}")
    }
}
