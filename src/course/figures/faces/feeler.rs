//! Leaves of a feeler gauge in a gap.

use super::super::geometry::{Area, pt};
use super::super::kit::{Fill, Line, Sketch};
use super::super::label::Anchor;
use super::super::{Figure, FigureError, within};
use super::{READING, READING_NAME};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    FOOT = "feeler-foot", "foot";
    BASE = "feeler-base", "base";
    TITLE = "feeler-title", "Feeler leaves";
    NOT_IN = "feeler-not-in", "does not go in";
    NOT_IN_TOO = "feeler-not-in-too", "this one more does not go in";
    ONE_LEAF = "feeler-one-leaf", "The leaf marked {leaf} goes in with a light drag";
    LEAVES = "feeler-leaves", "The leaves marked {leaves} and {last} go in together with a light drag";
    NO_LEAF = "feeler-no-leaf", "Not even the thinnest leaf goes in";
    ABOUT = "feeler-about", "Feeler leaves at a gap. {leaves}; one of {refused} does not.";
    ABOUT_MORE = "feeler-about-more", "Feeler leaves at a gap. {leaves}; one of {refused} more does not.";
    IN = "feeler-in", "Leaf that goes in";
    REFUSED = "feeler-refused", "Leaf that does not go in as well";
} }

/// The leaves that go into a gap together, and one that no longer does.
#[derive(Debug, Clone)]
pub struct FeelerFace {
    /// Identifier, unique in the page.
    pub id: String,
    /// Marks of the leaves that go in together, from the top; none where there is no gap to feel.
    pub leaves: Vec<String>,
    /// Mark of the leaf that no longer goes in with them.
    pub refused: String,
    /// The reading, if it is to be told.
    pub reading: Option<String>,
}

/// Height of a drawn leaf, and its length.
const LEAF: (f64, f64) = (24.0, 330.0);
/// How far the leaves go in.
const DEPTH: f64 = 130.0;

impl FeelerFace {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for more than ten leaves.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        within("leaves", self.leaves.len() as f64, 0.0, 10.0)?;
        let mut sketch = Sketch::new();
        let high = LEAF.0 * self.leaves.len() as f64;
        for (y, word) in [(-52.0, FOOT.text()), (high, BASE.text())] {
            let block = Area { low: pt(-16.0, y), high: pt(DEPTH, y + 52.0) };
            sketch.rect(block, Line::Outline, Fill::Open);
            sketch.hatch(&block.corners(), 11.0);
            sketch.text(block.centre(), Anchor::Middle, word);
        }
        for (place, mark) in self.leaves.iter().enumerate() {
            let y = LEAF.0 * place as f64;
            leaf(&mut sketch, 0.0, y, mark);
        }
        leaf(&mut sketch, DEPTH + 22.0, -LEAF.0 - 18.0, &self.refused);
        sketch.text(
            pt(DEPTH + 22.0, -LEAF.0 - 32.0),
            Anchor::Start,
            if self.leaves.is_empty() { NOT_IN.text() } else { NOT_IN_TOO.text() },
        );
        if let Some(reading) = &self.reading {
            sketch.note(&READING.say(&[("reading", reading)]));
        }
        let leaves = match self.leaves.as_slice() {
            [one] => ONE_LEAF.say(&[("leaf", one)]),
            [first @ .., last] => LEAVES.say(&[("leaves", &first.join(", ")), ("last", last)]),
            [] => NO_LEAF.text().to_owned(),
        };
        let about = if self.leaves.is_empty() { ABOUT } else { ABOUT_MORE };
        let description = about.say(&[("leaves", &leaves), ("refused", &self.refused)]);
        let mut table: Vec<(String, String)> =
            self.leaves.iter().map(|leaf| (IN.text().to_owned(), leaf.clone())).collect();
        table.push((REFUSED.text().to_owned(), self.refused.clone()));
        table.extend(self.reading.iter().map(|reading| (READING_NAME.text().to_owned(), reading.clone())));
        Ok(sketch.finish(&self.id, TITLE.text(), &description, table))
    }
}

/// One leaf with its mark near the far, rounded end.
fn leaf(sketch: &mut Sketch, x: f64, y: f64, mark: &str) {
    let right = LEAF.1;
    let (top, bottom) = (y + 2.0, y + LEAF.0 - 2.0);
    let tip = 0.5 * (top + bottom);
    sketch.polygon(
        &[pt(x, top), pt(right - 8.0, top), pt(right, tip), pt(right - 8.0, bottom), pt(x, bottom)],
        Line::Thin,
        Fill::Tint,
    );
    sketch.text(pt(right - 60.0, tip), Anchor::Middle, mark);
}
