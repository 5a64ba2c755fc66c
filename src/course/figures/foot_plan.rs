//! The four feet of a reducer seen from above.

use super::geometry::{Area, Pt, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::{Anchor, LEADING};
use super::{Figure, FigureError, positive, within};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    ONE_TWO = "feet-one-two", "Foot 1 to foot 2";
    ONE_FOUR = "feet-one-four", "Foot 1 to foot 4";
    TITLE = "feet-title", "The four feet from above";
    WEIGHT_LINE = "feet-weight-line", "line of the weight";
    GAP = "feet-gap", "gap {value}";
    CARRIES = "feet-carries", "Foot {foot} is hatched: it carries.";
    CARRY = "feet-carry", "Feet {feet} and {last} are hatched: they carry.";
    WEIGHT = "feet-weight", "A mark shows the line of the weight.";
    ABOUT = "feet-about", "Plan of the reducer's feet, numbered clockwise from the top left, output shaft at the right.";
    FOOT_GAP = "feet-foot-gap", "Foot {foot}, gap";
    FOOT_READING = "feet-foot-reading", "Foot {foot}, reading";
    SHAFT = "feet-shaft", "shaft";
    OUTPUT = "feet-output", "output";
} }

/// One foot of the plan.
#[derive(Debug, Clone, Default)]
pub struct Foot {
    /// Whether it rests on the base and carries weight (hatched).
    pub carries: bool,
    /// Label of the gap under it.
    pub gap: Option<String>,
    /// Label of a reading taken at it, such as the height of its pad.
    pub reading: Option<String>,
}

/// The four feet from above, numbered clockwise from the top left, the output shaft at the right.
/// Where exactly three feet carry, their triangle is drawn round the weight's line.
#[derive(Debug, Clone)]
pub struct FootPlan {
    /// Identifier, unique in the page.
    pub id: String,
    /// Distance from foot 1 to foot 2, along the output shaft.
    pub length: f64,
    /// Distance from foot 1 to foot 4, across the shaft, same unit.
    pub width: f64,
    /// Feet 1 to 4.
    pub feet: [Foot; 4],
    /// Where the weight's line meets the plan: distance from foot 1 towards foot 2 and towards foot 4, same unit.
    pub weight: Option<(f64, f64)>,
    /// Whether both diagonals are drawn.
    pub diagonals: bool,
    /// Label of the length.
    pub length_label: Option<String>,
    /// Label of the width.
    pub width_label: Option<String>,
}

/// Half the side of a foot on the sheet.
const PAD: f64 = 22.0;

impl FootPlan {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for a length or width not above nought, a plan more than ten times as
    /// long as wide, a weight's line far outside the feet, or a value that is no number.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let length = positive("length", self.length)?;
        let width = within("width", self.width, 0.1 * length, 10.0 * length)?;
        let scale = (225.0 / length).min(210.0 / width);
        // Feet closer than two pads would overlap; a narrow plan is spread to that.
        let (right, down) = ((length * scale).max(3.2 * PAD), (width * scale).max(3.2 * PAD));
        let feet = [pt(0.0, 0.0), pt(right, 0.0), pt(right, down), pt(0.0, down)];
        let centre = feet[0].middle(feet[2]);

        let mut sketch = Sketch::new();
        body(&mut sketch, feet);
        let carrying: Vec<Pt> =
            feet.iter().zip(&self.feet).filter(|(_, foot)| foot.carries).map(|(at, _)| *at).collect();
        if carrying.len() == 3 {
            sketch.polygon(&carrying, Line::Bare, Fill::Tint);
            for (i, at) in carrying.iter().enumerate() {
                between(&mut sketch, *at, carrying[(i + 1) % 3], Line::Hidden);
            }
        }
        for (from, to) in [(0, 2), (1, 3)] {
            // A diagonal that is already an edge of the triangle is not drawn twice.
            let edge = carrying.len() == 3 && self.feet[from].carries && self.feet[to].carries;
            if self.diagonals && !edge {
                between(&mut sketch, feet[from], feet[to], Line::Centre);
            }
        }
        for (i, (at, foot)) in feet.iter().zip(&self.feet).enumerate() {
            pad(&mut sketch, *at, foot.carries, i + 1);
        }
        if let Some((x, y)) = self.weight {
            let x = within("weight's line", x, -length, 2.0 * length)?;
            let y = within("weight's line", y, -width, 2.0 * width)?;
            let at = pt(x / length * right, y / width * down);
            mark(&mut sketch, at);
            sketch.label(at, 13.0, pt(0.0, 1.0), WEIGHT_LINE.text());
        }
        for (at, foot) in feet.iter().zip(&self.feet) {
            let words = [foot.gap.as_ref().map(|gap| GAP.say(&[("value", gap)])), foot.reading.clone()];
            // Outwards above and below the feet, so that the sheet stays narrow.
            let out = if at.y < centre.y { pt(0.0, -1.0) } else { pt(0.0, 1.0) };
            for (row, words) in words.iter().flatten().enumerate() {
                sketch.text(*at + out * (PAD + 12.0 + 17.0 * row as f64), Anchor::Middle, words);
            }
        }
        let rows = self.feet.iter().map(|foot| usize::from(foot.gap.is_some()) + usize::from(foot.reading.is_some()));
        // The dimension starts below what is written under the feet.
        let below = pt(0.0, PAD + 17.0 * rows.max().unwrap_or(0) as f64);
        sketch.dimension(feet[3] + below, feet[2] + below, pt(0.0, 18.0), self.length_label.as_deref());
        let beside = pt(-PAD, 0.0);
        sketch.dimension(feet[0] + beside, feet[3] + beside, pt(-24.0, 0.0), self.width_label.as_deref());
        Ok(sketch.finish(&self.id, TITLE.text(), &self.description(), self.table()))
    }

    fn description(&self) -> String {
        let carrying: Vec<String> =
            self.feet.iter().enumerate().filter(|(_, f)| f.carries).map(|(i, _)| (i + 1).to_string()).collect();
        let load = match carrying.as_slice() {
            [] => String::new(),
            [one] => format!(" {}", CARRIES.say(&[("foot", one)])),
            [first @ .., last] => format!(" {}", CARRY.say(&[("feet", &first.join(", ")), ("last", last)])),
        };
        let weight = if self.weight.is_some() { format!(" {}", WEIGHT.text()) } else { String::new() };
        format!("{}{load}{weight}", ABOUT.text())
    }

    fn table(&self) -> Vec<(String, String)> {
        let mut table = Vec::new();
        for (i, foot) in self.feet.iter().enumerate() {
            for (name, label) in [(FOOT_GAP, &foot.gap), (FOOT_READING, &foot.reading)] {
                if let Some(label) = label {
                    table.push((name.say(&[("foot", &(i + 1).to_string())]), label.clone()));
                }
            }
        }
        table.extend(super::rows(&[(ONE_TWO, &self.length_label), (ONE_FOUR, &self.width_label)]));
        table
    }
}

/// The housing between the feet and its output shaft.
fn body(sketch: &mut Sketch, feet: [Pt; 4]) {
    let (low, high) = (feet[0], feet[2]);
    let inset = pt(0.0, PAD);
    let area = Area { low: low - pt(PAD + 4.0, 0.0) + inset, high: high + pt(PAD + 4.0, 0.0) - inset };
    let middle = area.centre().y;
    sketch.rect(area, Line::Thin, Fill::Open);
    let shaft = Area { low: pt(area.high.x, middle - 8.0), high: pt(area.high.x + 34.0, middle + 8.0) };
    sketch.rect(shaft, Line::Outline, Fill::Tint);
    sketch.line(pt(area.high.x - 26.0, middle), pt(shaft.high.x + 8.0, middle), Line::Centre);
    for (line, word) in [SHAFT.text(), OUTPUT.text()].into_iter().enumerate() {
        let above = pt(shaft.low.x + 5.0, shaft.low.y - 10.0 - LEADING * line as f64);
        sketch.text(above, Anchor::Start, word);
    }
}

/// A line between two feet that stops at their edges.
fn between(sketch: &mut Sketch, from: Pt, to: Pt, line: Line) {
    let way = (to - from).unit();
    let edge = way * (PAD / way.x.abs().max(way.y.abs()));
    sketch.line(from + edge, to - edge, line);
}

/// One foot with its bolt hole; the number stands in the hole.
fn pad(sketch: &mut Sketch, at: Pt, carries: bool, number: usize) {
    let area = Area::about(at, 2.0 * PAD, 2.0 * PAD);
    sketch.rect(area, Line::Outline, Fill::Open);
    if carries {
        // Four strips round the hole, so that the number stays clear.
        let hole = 13.0;
        let (l, h) = (area.low, area.high);
        for strip in [
            Area { low: l, high: pt(h.x, at.y - hole) },
            Area { low: pt(l.x, at.y + hole), high: h },
            Area { low: pt(l.x, at.y - hole), high: pt(at.x - hole, at.y + hole) },
            Area { low: pt(at.x + hole, at.y - hole), high: pt(h.x, at.y + hole) },
        ] {
            sketch.hatch(&strip.corners(), 6.0);
        }
    }
    sketch.circle(at, 11.0, Line::Outline, Fill::Open);
    sketch.text(at, Anchor::Middle, &number.to_string());
}

/// A point of the plan: a ring quartered by a cross.
fn mark(sketch: &mut Sketch, at: Pt) {
    sketch.circle(at, 8.0, Line::Outline, Fill::Open);
    sketch.line(at - pt(12.0, 0.0), at + pt(12.0, 0.0), Line::Thin);
    sketch.line(at - pt(0.0, 12.0), at + pt(0.0, 12.0), Line::Thin);
    sketch.dot(at, 2.5);
}
