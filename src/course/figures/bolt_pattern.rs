//! Bolts round a circle, numbered, with the order in which they are drawn up.

use super::geometry::{Pt, outside_circle, polar, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, rows, within};
use core::f64::consts::{FRAC_PI_2, TAU};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    IN_CIRCLE = "bolts-in-circle", "Bolts in the circle";
    PLACE = "bolts-place", "Place in the order";
    AT_PLACE = "bolts-at-place", "Bolt at that place";
    TITLE = "bolts-title", "Bolts round a circle";
    NOTE = "bolts-note", "Place {place} in the order: bolt {bolt}";
    LINES = "bolts-lines", "Lines lead from bolt to bolt in the order {order}.";
    ABOUT = "bolts-about", "A flange with {count} bolts, numbered clockwise from the top.";
    ORDER = "bolts-order", "Order";
} }

/// A flange with its bolts, numbered clockwise from the top.
#[derive(Debug, Clone)]
pub struct BoltPattern {
    /// Identifier, unique in the page.
    pub id: String,
    /// How many bolts.
    pub bolts: u32,
    /// Bolts in the order in which they are drawn up, as far as it is shown.
    pub order: Vec<u32>,
    /// Label of the number of bolts.
    pub bolts_label: Option<String>,
    /// Label of the place in the order that is asked or found.
    pub place_label: Option<String>,
    /// Label of the bolt at that place.
    pub bolt_label: Option<String>,
}

/// Radius of the bolt circle on the sheet.
const CIRCLE: f64 = 118.0;
/// Radius of a bolt's head.
const HEAD: f64 = 13.0;

impl BoltPattern {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] unless there are 3 to 24 bolts, or for a bolt in the order that is not one of them.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let count = within("number of bolts", f64::from(self.bolts), 3.0, 24.0)?;
        for bolt in &self.order {
            within("bolt in the order", f64::from(*bolt), 1.0, count)?;
        }
        let at = |bolt: u32| polar(pt(0.0, 0.0), CIRCLE, TAU * (f64::from(bolt) - 1.0) / count - FRAC_PI_2);
        let mut sketch = Sketch::new();
        sketch.circle(pt(0.0, 0.0), CIRCLE + 24.0, Line::Outline, Fill::Tint);
        // The bolt circle, clear of the numbers.
        let (step, clear) = (TAU / count, (HEAD + 3.0) / CIRCLE);
        for bolt in 0..self.bolts {
            let from = step * f64::from(bolt) - FRAC_PI_2;
            sketch.arc(pt(0.0, 0.0), CIRCLE, from + clear, from + step - clear, Line::Centre);
        }
        sketch.circle(pt(0.0, 0.0), 40.0, Line::Outline, Fill::Open);
        for pair in self.order.windows(2) {
            path(&mut sketch, at(pair[0]), at(pair[1]));
        }
        for bolt in 1..=self.bolts {
            let centre = at(bolt);
            sketch.circle(centre, HEAD, Line::Outline, Fill::Open);
            sketch.text(centre, Anchor::Middle, &bolt.to_string());
        }
        for (place, bolt) in self.order.iter().enumerate() {
            let out = at(*bolt) * ((CIRCLE + 38.0) / CIRCLE);
            let anchor = if out.x > 20.0 {
                Anchor::Start
            } else if out.x < -20.0 {
                Anchor::End
            } else {
                Anchor::Middle
            };
            sketch.text(
                out - pt(out.x.signum() * f64::from(u8::from(out.x.abs() > 20.0)) * 8.0, 0.0),
                anchor,
                &ordinal(place + 1),
            );
        }
        if let Some(place) = &self.place_label {
            let bolt = self.bolt_label.as_deref().unwrap_or("?");
            sketch.note(&NOTE.say(&[("place", place), ("bolt", bolt)]));
        }
        Ok(sketch.finish(&self.id, TITLE.text(), &self.description(), self.table()))
    }

    fn description(&self) -> String {
        let order = match self.order.as_slice() {
            [] | [_] => String::new(),
            order => {
                let words: Vec<String> = order.iter().map(u32::to_string).collect();
                format!(" {}", LINES.say(&[("order", &words.join(", "))]))
            }
        };
        format!("{}{order}", ABOUT.say(&[("count", &self.bolts.to_string())]))
    }

    fn table(&self) -> Vec<(String, String)> {
        let mut table =
            rows(&[(IN_CIRCLE, &self.bolts_label), (PLACE, &self.place_label), (AT_PLACE, &self.bolt_label)]);
        if self.order.len() > 1 {
            let words: Vec<String> = self.order.iter().map(u32::to_string).collect();
            table.push((ORDER.text().to_owned(), words.join(", ")));
        }
        table
    }
}

/// A thin arrow from one bolt's head to another's that goes round the hole in the middle only by being cut.
fn path(sketch: &mut Sketch, from: Pt, to: Pt) {
    let way = (to - from).unit();
    let (tail, tip) = (from + way * (HEAD + 2.0), to - way * (HEAD + 2.0));
    for (a, b) in outside_circle(tail, tip, pt(0.0, 0.0), 40.0) {
        sketch.line(a, b, Line::Thin);
    }
    sketch.head(tip, way, 9.0);
}

/// `1st`, `2nd`, `3rd`, `4th` and so on.
fn ordinal(place: usize) -> String {
    let ending = match (place % 10, place % 100) {
        (1, hundred) if hundred != 11 => "st",
        (2, hundred) if hundred != 12 => "nd",
        (3, hundred) if hundred != 13 => "rd",
        _ => "th",
    };
    format!("{place}{ending}")
}

#[cfg(test)]
mod tests {
    use super::ordinal;

    #[test]
    fn places_are_written_as_people_say_them() {
        assert_eq!(
            [1, 2, 3, 4, 11, 12, 13, 21, 22].map(ordinal),
            ["1st", "2nd", "3rd", "4th", "11th", "12th", "13th", "21st", "22nd"]
        );
    }
}
