//! When each check falls due: a row of marks for every check, against the age of the drive.

use super::geometry::{Area, Pt, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, within};
use drivecourse_machine::language::Message;
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    AGE_AXIS = "calendar-age-axis", "Age of the drive since the first start";
    LEGEND = "calendar-legend", "circle: read while it runs; square: locked out; filled: done";
    LAST = "calendar-last", "last";
    NEXT = "calendar-next", "next";
    NOW = "calendar-now", "The age now is an upright dashed line.";
    ABOUT = "calendar-about", "One row for each check, with a mark at every age of the drive at which it is due; time goes to the right, evenly in doublings. Circles are read while the drive runs, squares need it locked out, filled marks are done.";
    AGE = "calendar-age", "Age of the drive";
    WEEKS = "calendar-weeks", "{count} wk";
    DAYS = "calendar-days", "{count} d";
    HOURS = "calendar-hours", "{count} h";
} }

/// One check and its ages.
#[derive(Debug, Clone)]
pub struct CalendarRow {
    /// Name of the check.
    pub name: String,
    /// Ages at which it is due, in hours, in rising order.
    pub ages: Vec<f64>,
    /// Whether the drive is locked out for it.
    pub locked_out: bool,
    /// Age at which it was last done, in hours; marks up to it are filled.
    pub last: Option<f64>,
    /// Label of that age.
    pub last_label: Option<String>,
    /// Label of the age at which it is due next.
    pub next_label: Option<String>,
}

/// A calendar of checks: time goes to the right, evenly in doublings, so that growing intervals look alike.
/// Circles are read while the drive runs, squares need it locked out; filled marks are done.
#[derive(Debug, Clone)]
pub struct Calendar {
    /// Identifier, unique in the page.
    pub id: String,
    /// Title of the figure.
    pub title: String,
    /// The checks, from top to bottom.
    pub rows: Vec<CalendarRow>,
    /// Age of the drive now, in hours, and its label.
    pub now: Option<(f64, String)>,
}

/// Width of the rows on the sheet, and the height each takes.
const WIDE: f64 = 400.0;
const ROW: f64 = 52.0;

/// Ages with a mark on the scale, in hours, and what is written there.
const MARKS: [(f64, Message, &str); 8] = [
    (1.0, HOURS, "1"),
    (4.0, HOURS, "4"),
    (8.0, HOURS, "8"),
    (24.0, DAYS, "1"),
    (72.0, DAYS, "3"),
    (168.0, WEEKS, "1"),
    (672.0, WEEKS, "4"),
    (4368.0, WEEKS, "26"),
];

/// Ages that can be drawn, in hours.
const EARLIEST: f64 = 0.5;
const LATEST: f64 = 8760.0;

/// Most rows that keep the sheet within a phone's height.
const MOST: usize = 8;

impl CalendarRow {
    /// The labels that are there, each with its word.
    fn labels(&self) -> Vec<(&'static str, &String)> {
        let all = [(LAST.text(), &self.last_label), (NEXT.text(), &self.next_label)];
        all.into_iter().filter_map(|(word, label)| label.as_ref().map(|label| (word, label))).collect()
    }
}

impl Calendar {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::Empty`] without a row or in a row without an age; [`FigureError::OutOfRange`] for an age outside
    /// half an hour to a year, or for more than eight rows.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        within("number of rows", self.rows.len() as f64, 0.0, MOST as f64)?;
        if self.rows.is_empty() || self.rows.iter().any(|row| row.ages.is_empty()) {
            return Err(FigureError::Empty { input: "checks" });
        }
        let ages = self.rows.iter().flat_map(|row| row.ages.iter().chain(&row.last)).copied();
        for age in ages.chain(self.now.iter().map(|(age, _)| *age)) {
            within("age", age, EARLIEST, LATEST)?;
        }
        let latest = self.rows.iter().flat_map(|row| &row.ages).copied().fold(1.0, f64::max);
        let place = |age: f64| WIDE * libm::log(age / EARLIEST) / libm::log(latest * 1.25 / EARLIEST);
        let mut sketch = Sketch::new();
        let bottom = ROW * self.rows.len() as f64;
        for (row, record) in self.rows.iter().enumerate() {
            let y = ROW * (row as f64 + 0.62);
            sketch.line(pt(0.0, y), pt(WIDE, y), Line::Thin);
            for age in &record.ages {
                let done = record.last.is_some_and(|last| *age <= last);
                mark(&mut sketch, pt(place(*age), y), record.locked_out, done);
            }
            sketch.text(pt(0.0, y - 18.0), Anchor::Start, &record.name);
            let remark: Vec<String> =
                record.labels().into_iter().map(|(word, label)| format!("{word}\u{a0}{label}")).collect();
            if !remark.is_empty() {
                sketch.text(pt(WIDE, y - 18.0), Anchor::End, &remark.join(", "));
            }
        }
        sketch.line(pt(0.0, bottom), pt(WIDE, bottom), Line::Outline);
        for (age, unit, count) in MARKS.into_iter().filter(|(age, ..)| *age <= latest * 1.2) {
            sketch.line(pt(place(age), bottom), pt(place(age), bottom + 5.0), Line::Thin);
            sketch.text(pt(place(age), bottom + 15.0), Anchor::Middle, &unit.say(&[("count", count)]));
        }
        if let Some((age, words)) = &self.now {
            sketch.upright(place(*age), 0.0, bottom, Line::Hidden);
            let edge = place(*age).clamp(60.0, WIDE - 60.0);
            sketch.text(pt(edge, -10.0), Anchor::Middle, words);
        }
        sketch.text(pt(0.5 * WIDE, bottom + 36.0), Anchor::Middle, AGE_AXIS.text());
        sketch.note(LEGEND.text());
        Ok(sketch.finish(&self.id, &self.title, &self.description(), self.table()))
    }

    fn description(&self) -> String {
        let now = if self.now.is_some() { format!(" {}", NOW.text()) } else { String::new() };
        format!("{}{now}", ABOUT.text())
    }

    fn table(&self) -> Vec<(String, String)> {
        let mut table = Vec::new();
        for row in &self.rows {
            let ages: Vec<String> = row.ages.iter().map(|age| spoken(*age)).collect();
            table.push((row.name.clone(), ages.join(", ")));
            table
                .extend(row.labels().into_iter().map(|(word, label)| (format!("{}, {word}", row.name), label.clone())));
        }
        table.extend(self.now.iter().map(|(_, words)| (AGE.text().to_owned(), words.clone())));
        table
    }
}

fn mark(sketch: &mut Sketch, at: Pt, locked_out: bool, done: bool) {
    let fill = if done { Fill::Solid } else { Fill::Open };
    if locked_out {
        sketch.rect(Area::about(at, 11.0, 11.0), Line::Outline, fill);
    } else {
        sketch.circle(at, 5.5, Line::Outline, fill);
    }
}

/// An age in the largest unit that gives a whole number.
fn spoken(hours: f64) -> String {
    let whole = |unit: f64| (hours / unit - (hours / unit).round()).abs() < 1e-6 && hours >= unit;
    let (unit, name) = if whole(168.0) {
        (168.0, WEEKS)
    } else if whole(24.0) {
        (24.0, DAYS)
    } else {
        (1.0, HOURS)
    };
    name.say(&[("count", &format!("{:.0}", hours / unit))]).replace(' ', "\u{a0}")
}
