//! Shares of a whole: bars beside one another, and a run over days.

use plotters::drawing::DrawingAreaErrorKind;
use plotters::prelude::{ChartBuilder, Circle, IntoDrawingArea, LineSeries, PathElement, Rectangle};

use super::geometry::pt;
use super::kit::{Line, Sketch};
use super::label::{Anchor, LEADING, breaks};
use super::plot::{Board, pen, points};
use super::{Figure, FigureError, within};

/// Width of the field from 0 to 100 %.
const FIELD: f64 = 260.0;
/// Room below a scale for its numbers.
const NUMBERS: f64 = 22.0;
/// Width of a chart that has no names beside it.
const WIDTH: f64 = 400.0;
/// Its height.
const HEIGHT: f64 = 150.0;
/// Room beside an upright scale for its numbers.
const PERCENTS: f64 = 44.0;
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
        for bar in &self.bars {
            within("share", bar.share, 0.0, 1.0)?;
            if let Some((low, high)) = bar.between {
                within("least", low, 0.0, 1.0)?;
                within("most", high, 0.0, 1.0)?;
            }
        }
        let enough = self.enough.as_ref().map(|(share, _)| within("enough", *share, 0.0, 1.0)).transpose()?;
        // A board that takes everything has no reason to refuse any of it.
        self.plot(Board::new(&mut sketch, FIELD, height + NUMBERS), height, enough).map_err(|_| TOO_SMALL)?;
        for (place, bar) in self.bars.iter().enumerate() {
            let middle = step * (place as f64 + 0.5);
            sketch.text(pt(-6.0, middle), Anchor::End, &shortened(&bar.name));
            sketch.text(pt(FIELD + 8.0, middle), Anchor::Start, &bar.note);
        }
        if let (Some(share), Some((_, name))) = (enough, &self.enough) {
            sketch.text(pt(FIELD * share, -12.0), Anchor::Middle, name);
        }
        let table = self.bars.iter().map(|bar| (bar.name.clone(), said(percent(bar.share), &bar.note))).collect();
        let each: Vec<String> = self.bars.iter().map(|bar| format!("{} {}", bar.name, percent(bar.share))).collect();
        Ok(sketch.finish(&self.id, &self.title, &format!("{}.", each.join("; ")), table))
    }

    fn plot(&self, board: Board<'_>, height: f64, enough: Option<f64>) -> Plotted {
        let root = board.into_drawing_area();
        // A row for each bar, the first on top.
        let rows = self.bars.len() as f64;
        let mut chart =
            ChartBuilder::on(&root).x_label_area_size(points(NUMBERS)).build_cartesian_2d(0.0..1.0, rows..0.0)?;
        chart
            .configure_mesh()
            .disable_mesh()
            .disable_y_axis()
            .x_labels(5)
            .x_label_formatter(&|share| percent(*share))
            .set_all_tick_mark_size(points(5.0))
            .axis_style(pen(Line::Thin))
            .draw()?;
        let half = 7.0 * rows / height;
        chart.draw_series(self.bars.iter().enumerate().map(|(place, bar)| {
            let middle = place as f64 + 0.5;
            Rectangle::new([(0.0, middle - half), (bar.share, middle + half)], pen(Line::Thin).filled())
        }))?;
        let between = self.bars.iter().enumerate().filter_map(|(place, bar)| Some((place as f64 + 0.5, bar.between?)));
        for (middle, (low, high)) in between {
            let cap = 4.0 * rows / height;
            let ends = [low, high].map(|end| vec![(end, middle - cap), (end, middle + cap)]);
            let lines = [vec![(low, middle), (high, middle)]].into_iter().chain(ends);
            chart.draw_series(lines.map(|line| PathElement::new(line, pen(Line::Outline))))?;
        }
        let upright = |share: f64, line: Line| PathElement::new(vec![(share, 0.0), (share, rows)], pen(line));
        chart.draw_series([upright(0.0, Line::Outline)])?;
        chart.draw_series(enough.map(|share| upright(share, Line::Hidden)))?;
        Ok(())
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
        for (_, _, share) in &self.days {
            within("share", *share, 0.0, 1.0)?;
        }
        let enough = self.enough.as_ref().map(|(share, _)| within("enough", *share, 0.0, 1.0)).transpose()?;
        let span = (last.0 - first.0).max(1.0);
        // Some room before the first day and behind the last.
        let days = first.0 - 0.1 * span..first.0 + 1.2 * span;
        let mut sketch = Sketch::new();
        self.plot(Board::new(&mut sketch, WIDTH, HEIGHT), days.clone(), enough).map_err(|_| TOO_SMALL)?;
        let across = |day: f64| PERCENTS + (WIDTH - PERCENTS) * (day - days.start) / (days.end - days.start);
        let mut named = f64::NEG_INFINITY;
        for (place, (day, name, _)) in self.days.iter().enumerate() {
            let (x, final_one) = (across(*day), place + 1 == self.days.len());
            // Names of days that lie close together would run into each other.
            if x - named > 90.0 || (final_one && x - named > 75.0) {
                sketch.text(pt(x, HEIGHT + 14.0), Anchor::Middle, name);
                named = x;
            }
        }
        if let (Some(share), Some((_, name))) = (enough, &self.enough) {
            sketch.text(pt(WIDTH + 6.0, HEIGHT * (1.0 - share)), Anchor::Start, name);
        }
        let table: Vec<(String, String)> =
            self.days.iter().map(|(_, name, share)| (name.clone(), percent(*share))).collect();
        let each: Vec<String> = table.iter().map(|(name, share)| format!("{name} {share}")).collect();
        Ok(sketch.finish(&self.id, &self.title, &format!("{}.", each.join("; ")), table))
    }

    fn plot(&self, board: Board<'_>, days: core::ops::Range<f64>, enough: Option<f64>) -> Plotted {
        let root = board.into_drawing_area();
        let mut chart =
            ChartBuilder::on(&root).y_label_area_size(points(PERCENTS)).build_cartesian_2d(days.clone(), 0.0..1.0)?;
        chart
            .configure_mesh()
            .disable_mesh()
            .disable_x_axis()
            .y_labels(5)
            .y_label_formatter(&|share| percent(*share))
            .set_all_tick_mark_size(points(5.0))
            .axis_style(pen(Line::Thin))
            .draw()?;
        let right_across =
            |share: f64, line: Line| PathElement::new(vec![(days.start, share), (days.end, share)], pen(line));
        chart.draw_series([right_across(0.0, Line::Outline)])?;
        chart.draw_series(enough.map(|share| right_across(share, Line::Hidden)))?;
        let marks = || self.days.iter().map(|(day, _, share)| (*day, *share));
        if self.days.len() > 1 {
            chart.draw_series(LineSeries::new(marks(), pen(Line::Outline)))?;
        }
        chart.draw_series(marks().map(|mark| Circle::new(mark, points(4.0), pen(Line::Thin).filled())))?;
        Ok(())
    }
}

/// How often each of several ranges of a number came: columns side by side, without letters, for a place beside words.
#[derive(Debug, Clone)]
pub struct Columns {
    /// Identifier, unique in the page.
    pub id: String,
    /// Title of the figure.
    pub title: String,
    /// What is shown, in words.
    pub description: String,
    /// How often each came, in order.
    pub counts: Vec<u32>,
}

impl Columns {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::Empty`] without columns.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        if self.counts.is_empty() {
            return Err(FigureError::Empty { input: "columns" });
        }
        let mut sketch = Sketch::new();
        self.plot(Board::new(&mut sketch, WIDTH, 0.25 * WIDTH)).map_err(|_| TOO_SMALL)?;
        Ok(sketch.finish(&self.id, &self.title, &self.description, Vec::new()))
    }

    fn plot(&self, board: Board<'_>) -> Plotted {
        let root = board.into_drawing_area();
        let most = f64::from(self.counts.iter().copied().max().unwrap_or(1).max(1));
        let columns = self.counts.len() as f64;
        let mut chart = ChartBuilder::on(&root).build_cartesian_2d(0.0..columns, 0.0..most)?;
        let some = self.counts.iter().enumerate().filter(|(_, count)| **count > 0);
        chart.draw_series(some.map(|(place, count)| {
            let left = place as f64;
            Rectangle::new([(left + 0.05, 0.0), (left + 0.95, f64::from(*count))], pen(Line::Outline).filled())
        }))?;
        chart.draw_series([PathElement::new(vec![(0.0, 0.0), (columns, 0.0)], pen(Line::Outline))])?;
        Ok(())
    }
}

/// The library's own refusal: a sheet without room for its scales.
const TOO_SMALL: FigureError = FigureError::Empty { input: "room on the sheet" };

type Plotted = Result<(), DrawingAreaErrorKind<core::convert::Infallible>>;

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
