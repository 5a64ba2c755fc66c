//! Shares of a whole: bars beside one another, and a run over days.

use super::geometry::{Area, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::{Anchor, LEADING, breaks};
use super::{Figure, FigureError, within};

/// Width of the field from 0 to 100 %.
const FIELD: f64 = 260.0;
/// Longest name beside a bar, in characters.
const LONGEST: usize = 34;

/// One bar.
#[derive(Debug, Clone)]
pub struct Bar {
    /// Its name.
    pub name: String,
    /// From 0 to 1.
    pub share: f64,
    /// Between which shares the true one lies, if that is known.
    pub between: Option<(f64, f64)>,
    /// Written behind the bar.
    pub note: String,
}

/// Shares as bars, in the order given, with a line where they are enough.
#[derive(Debug, Clone)]
pub struct Bars {
    /// Identifier, unique in the page.
    pub id: String,
    /// Title of the figure.
    pub title: String,
    /// The bars, at least one.
    pub bars: Vec<Bar>,
    /// A line right across at this share, and its name.
    pub enough: Option<(f64, String)>,
}

impl Bars {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::Empty`] without bars; [`FigureError::OutOfRange`] for a share that is none.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        if self.bars.is_empty() {
            return Err(FigureError::Empty { input: "bars" });
        }
        let mut sketch = Sketch::new();
        let step = LEADING + 8.0;
        let height = step * self.bars.len() as f64;
        for (place, bar) in self.bars.iter().enumerate() {
            let share = within("share", bar.share, 0.0, 1.0)?;
            let middle = step * (place as f64 + 0.5);
            let box_of = |high: f64| Area { low: pt(0.0, middle - 7.0), high: pt(FIELD * high, middle + 7.0) };
            sketch.rect(box_of(share), Line::Thin, Fill::Tint);
            if let Some((low, high)) = bar.between {
                let (low, high) = (within("least", low, 0.0, 1.0)?, within("most", high, 0.0, 1.0)?);
                sketch.line(pt(FIELD * low, middle), pt(FIELD * high, middle), Line::Outline);
                for end in [low, high] {
                    sketch.line(pt(FIELD * end, middle - 4.0), pt(FIELD * end, middle + 4.0), Line::Outline);
                }
            }
            sketch.text(pt(-6.0, middle), Anchor::End, &shortened(&bar.name));
            sketch.text(pt(FIELD + 8.0, middle), Anchor::Start, &bar.note);
        }
        sketch.line(pt(0.0, 0.0), pt(0.0, height), Line::Outline);
        for quarter in 0..=4 {
            let share = f64::from(quarter) / 4.0;
            sketch.line(pt(FIELD * share, height), pt(FIELD * share, height + 5.0), Line::Thin);
            sketch.text(pt(FIELD * share, height + 14.0), Anchor::Middle, &percent(share));
        }
        if let Some((share, name)) = &self.enough {
            let x = FIELD * within("enough", *share, 0.0, 1.0)?;
            sketch.line(pt(x, -4.0), pt(x, height), Line::Hidden);
            sketch.text(pt(x, -12.0), Anchor::Middle, name);
        }
        let table = self.bars.iter().map(|bar| (bar.name.clone(), said(percent(bar.share), &bar.note))).collect();
        let each: Vec<String> = self.bars.iter().map(|bar| format!("{} {}", bar.name, percent(bar.share))).collect();
        Ok(sketch.finish(&self.id, &self.title, &format!("{}.", each.join("; ")), table))
    }
}

/// A share on each of several days.
#[derive(Debug, Clone)]
pub struct Run {
    /// Identifier, unique in the page.
    pub id: String,
    /// Title of the figure.
    pub title: String,
    /// Day (any count of days, rising), its name, and the share from 0 to 1; at least one.
    pub days: Vec<(f64, String, f64)>,
    /// A line right across at this share, and its name.
    pub enough: Option<(f64, String)>,
}

impl Run {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::Empty`] without days; [`FigureError::OutOfRange`] for a share that is none.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let (Some(first), Some(last)) = (self.days.first(), self.days.last()) else {
            return Err(FigureError::Empty { input: "days" });
        };
        const HEIGHT: f64 = 150.0;
        let mut sketch = Sketch::new();
        let span = (last.0 - first.0).max(1.0);
        let up = |share: f64| HEIGHT * (1.0 - share);
        let at = |day: f64, share: f64| pt(30.0 + (FIELD + 40.0) * (day - first.0) / span, up(share));
        for quarter in 0..=4 {
            let share = f64::from(quarter) / 4.0;
            sketch.line(pt(-5.0, up(share)), pt(0.0, up(share)), Line::Thin);
            sketch.text(pt(-9.0, up(share)), Anchor::End, &percent(share));
        }
        sketch.line(pt(0.0, 0.0), pt(0.0, HEIGHT), Line::Outline);
        sketch.line(pt(0.0, HEIGHT), pt(FIELD + 100.0, HEIGHT), Line::Outline);
        if let Some((share, name)) = &self.enough {
            let y = up(within("enough", *share, 0.0, 1.0)?);
            sketch.line(pt(0.0, y), pt(FIELD + 100.0, y), Line::Hidden);
            sketch.text(pt(FIELD + 106.0, y), Anchor::Start, name);
        }
        let mut points = Vec::new();
        let mut named = f64::NEG_INFINITY;
        for (place, (day, name, share)) in self.days.iter().enumerate() {
            let point = at(*day, within("share", *share, 0.0, 1.0)?);
            points.push(point);
            sketch.dot(point, 4.0);
            let final_one = place + 1 == self.days.len();
            // Names of days that lie close together would run into each other.
            if point.x - named > 90.0 || (final_one && point.x - named > 75.0) {
                sketch.text(pt(point.x, HEIGHT + 14.0), Anchor::Middle, name);
                named = point.x;
            }
        }
        if points.len() > 1 {
            sketch.polyline(&points, Line::Outline);
        }
        let table: Vec<(String, String)> =
            self.days.iter().map(|(_, name, share)| (name.clone(), percent(*share))).collect();
        let each: Vec<String> = table.iter().map(|(name, share)| format!("{name} {share}")).collect();
        Ok(sketch.finish(&self.id, &self.title, &format!("{}.", each.join("; ")), table))
    }
}

fn percent(share: f64) -> String {
    format!("{:.0} %", share * 100.0)
}

fn said(share: String, note: &str) -> String {
    if note.is_empty() { share } else { format!("{share}, {note}") }
}

fn shortened(name: &str) -> String {
    let plain: String = name.split(breaks).filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" ");
    if plain.chars().count() <= LONGEST {
        return plain;
    }
    plain.chars().take(LONGEST - 1).chain(['…']).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn bar(name: &str, share: f64) -> Bar {
        Bar { name: name.into(), share, between: Some((0.5 * share, 1.0)), note: "3 of 4".into() }
    }

    #[test]
    fn bars_and_runs_are_sound_xml_whatever_their_names() {
        let hostile = "<script>\u{202e}\"&'\u{1b}";
        let bars = Bars {
            id: "a b".into(),
            title: hostile.into(),
            bars: vec![bar(hostile, 0.0), bar(&"long ".repeat(30), 1.0)],
            enough: Some((0.75, "enough".into())),
        };
        let run = Run {
            id: "run".into(),
            title: "Shares".into(),
            days: vec![(1.0, hostile.into(), 0.2), (1.0, "b".into(), 0.4), (400.0, "c".into(), 1.0)],
            enough: None,
        };
        for figure in [bars.draw().unwrap(), run.draw().unwrap()] {
            let mut reader = quick_xml::Reader::from_str(&figure.svg);
            loop {
                match reader.read_event().unwrap() {
                    quick_xml::events::Event::Eof => break,
                    quick_xml::events::Event::Start(start) => assert_ne!(start.name().as_ref(), b"script"),
                    _ => {}
                }
            }
            assert!(!figure.svg.contains('\u{1b}') && figure.table.len() > 1);
        }
        assert_eq!(bars.draw().unwrap(), bars.draw().unwrap());
    }

    #[test]
    fn what_is_no_share_is_refused() {
        for share in [-0.1, 1.1, f64::NAN] {
            let bars = Bars { id: "x".into(), title: "x".into(), bars: vec![bar("x", share)], enough: None };
            assert!(matches!(bars.draw(), Err(FigureError::OutOfRange { .. })));
        }
        let none = Run { id: "x".into(), title: "x".into(), days: Vec::new(), enough: None };
        assert!(matches!(none.draw(), Err(FigureError::Empty { .. })));
    }
}
