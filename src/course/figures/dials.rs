//! Dials on two hubs: the set-up from the side, and every sweep's readings round the clock.

use super::geometry::{Area, Pt, polar, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, rows, within};
use core::f64::consts::FRAC_PI_2;
use drivecourse_machine::language::code;
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    TRIAL = "dials-trial", "Bar's trial, at the bottom";
    CIRCLE_NAME = "dials-circle-name", "Diameter of the face dial's circle";
    APART = "dials-apart", "Between the two rim dials";
    FRONT = "dials-front", "Measuring plane to front feet";
    REAR = "dials-rear", "Measuring plane to rear feet";
    TITLE = "dials-title", "Dials on the coupling";
    NOTE = "dials-note", "Bar tried on a stiff pipe: {reading} at the bottom";
    REDUCER = "dials-reducer", "reducer";
    MOTOR = "dials-motor", "motor";
    CIRCLE = "dials-circle", "circle {value}";
    ABOUT = "dials-about", "The reducer at the left and the motor at the right, with hubs and dials from the side; below, a clock face seen from the motor for each sweep: {sweeps}. Every dial stands at nought at 12 o'clock.";
    HOUR = "dials-hour", "{sweep}, {hour} o'clock";
} }

/// The readings of one dial, swept once round.
#[derive(Debug, Clone)]
pub struct Sweep {
    /// What is swept.
    pub name: String,
    /// Labels at 12, 3, 6 and 9 o'clock; `None` where nothing is shown.
    pub readings: [Option<String>; 4],
}

/// A reducer's and a motor's shaft end with their hubs, dials and feet from the side, and the readings of each sweep as
/// seen from the motor. Nothing is to scale.
#[derive(Debug, Clone)]
pub struct Dials {
    /// Identifier, unique in the page.
    pub id: String,
    /// One sweep for each dial: one to four.
    pub sweeps: Vec<Sweep>,
    /// Whether a dial stands on the face of the reducer's hub.
    pub face: bool,
    /// Whether a second rim dial stands on the motor's hub.
    pub reverse: bool,
    /// Label of the diameter of the face dial's circle.
    pub circle_label: Option<String>,
    /// Label of the distance between two rim dials.
    pub apart_label: Option<String>,
    /// Label of the distance from the measuring plane to the front feet.
    pub front_label: Option<String>,
    /// Label of the distance from the measuring plane to the rear feet.
    pub rear_label: Option<String>,
    /// Label of the trial of the bar.
    pub trial_label: Option<String>,
}

const HOURS: [&str; 4] = ["12", "3", "6", "9"];
/// Radius of a clock.
const CLOCK: f64 = 33.0;

impl Dials {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] unless there are one to four sweeps.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        within("number of sweeps", self.sweeps.len() as f64, 1.0, 4.0)?;
        let mut sketch = Sketch::new();
        self.side(&mut sketch);
        let below = sketch.extent().map_or(0.0, |extent| extent.high.y);
        let middle = 205.0;
        for (index, sweep) in self.sweeps.iter().enumerate() {
            let alone = index % 2 == 0 && index + 1 == self.sweeps.len();
            let x = if alone { middle } else { middle + if index % 2 == 0 { -117.0 } else { 117.0 } };
            let y = below + 52.0 + 132.0 * (index / 2) as f64;
            clock(&mut sketch, pt(x, y), sweep);
        }
        if let Some(words) = &self.trial_label {
            sketch.note(&NOTE.say(&[("reading", words)]));
        }
        Ok(sketch.finish(&self.id, TITLE.text(), &self.description(), self.table()))
    }

    /// Both machines from the side, the motor at the right.
    fn side(&self, sketch: &mut Sketch) {
        let axis = 0.0;
        let reducer = Area { low: pt(0.0, -44.0), high: pt(86.0, 52.0) };
        let motor = Area { low: pt(276.0, -44.0), high: pt(410.0, 36.0) };
        for (area, name) in [(reducer, REDUCER), (motor, MOTOR)] {
            sketch.rect(area, Line::Outline, Fill::Tint);
            sketch.text(area.centre() - pt(0.0, 22.0), Anchor::Middle, name.text());
        }
        let (plane, far) = (132.0, 200.0);
        let near_hub = Area { low: pt(110.0, -28.0), high: pt(plane, 28.0) };
        let far_hub = Area { low: pt(far, -28.0), high: pt(far + 22.0, 28.0) };
        for hub in [near_hub, far_hub] {
            sketch.rect(hub, Line::Outline, Fill::Open);
        }
        for (from, to) in [(reducer.high.x, near_hub.low.x), (far_hub.high.x, motor.low.x)] {
            sketch.rect(Area { low: pt(from, axis - 7.0), high: pt(to, axis + 7.0) }, Line::Outline, Fill::Tint);
        }
        sketch.line(pt(-8.0, axis), pt(418.0, axis), Line::Centre);
        // The bracket stands on the motor's hub; its dial sweeps the reducer's.
        let post = pt(far + 11.0, -28.0);
        sketch.polyline(&[post, post - pt(0.0, 40.0), pt(121.0, -68.0), pt(121.0, -60.0)], Line::Outline);
        dial(sketch, pt(121.0, -49.0), pt(0.0, 1.0), 21.0);
        if self.face {
            sketch.line(pt(152.0, -68.0), pt(152.0, -20.0), Line::Outline);
            dial(sketch, pt(152.0, -18.0), pt(-1.0, 0.0), 20.0);
        }
        if self.reverse {
            let foot = pt(121.0, 28.0);
            sketch.polyline(&[foot, foot + pt(0.0, 40.0), pt(far + 11.0, 68.0), pt(far + 11.0, 60.0)], Line::Outline);
            dial(sketch, pt(far + 11.0, 49.0), pt(0.0, -1.0), 21.0);
        }
        let floor = 78.0;
        let feet = [pt(296.0, motor.high.y), pt(390.0, motor.high.y)];
        for foot in feet {
            sketch.rect(Area { low: foot - pt(12.0, 0.0), high: foot + pt(12.0, 12.0) }, Line::Outline, Fill::Tint);
            sketch.line(foot - pt(0.0, 8.0), foot + pt(0.0, 18.0), Line::Centre);
        }
        let mut level = floor;
        for (from, to, label) in [
            (plane, far, &self.apart_label),
            (plane, feet[0].x, &self.front_label),
            (plane, feet[1].x, &self.rear_label),
        ] {
            if label.is_some() {
                sketch.dimension(pt(from, level), pt(to, level), pt(0.0, 3.0), label.as_deref());
                level += 26.0;
            }
        }
        if level > floor {
            sketch.line(pt(plane, 30.0), pt(plane, level - 22.0), Line::Hidden);
        }
        if let (true, Some(words)) = (self.face, &self.circle_label) {
            sketch.label(pt(152.0, -20.0), 12.0, pt(0.4, 1.0), &CIRCLE.say(&[("value", words)]));
        }
    }

    fn description(&self) -> String {
        // English says them small inside a sentence; other languages have capitals of their own.
        let english = code().starts_with("en");
        let inside = |name: &str| if english { name.to_lowercase() } else { name.to_owned() };
        let what: Vec<String> = self.sweeps.iter().map(|sweep| inside(&sweep.name)).collect();
        ABOUT.say(&[("sweeps", &what.join(", "))])
    }

    fn table(&self) -> Vec<(String, String)> {
        let mut table = Vec::new();
        for sweep in &self.sweeps {
            for (hour, reading) in HOURS.iter().zip(&sweep.readings) {
                if let Some(reading) = reading {
                    table.push((HOUR.say(&[("sweep", &sweep.name), ("hour", hour)]), reading.clone()));
                }
            }
        }
        table.extend(rows(&[
            (TRIAL, &self.trial_label),
            (CIRCLE_NAME, &self.circle_label),
            (APART, &self.apart_label),
            (FRONT, &self.front_label),
            (REAR, &self.rear_label),
        ]));
        table
    }
}

/// A dial indicator with its plunger towards `way`, the tip `reach` away.
fn dial(sketch: &mut Sketch, centre: Pt, way: Pt, reach: f64) {
    sketch.line(centre, centre + way * reach, Line::Outline);
    sketch.circle(centre, 10.0, Line::Outline, Fill::Open);
    sketch.line(centre, centre + pt(4.0, -5.0), Line::Thin);
    sketch.dot(centre, 1.5);
}

/// One sweep: a circle with a tick at each quarter, and what the dial read there.
fn clock(sketch: &mut Sketch, centre: Pt, sweep: &Sweep) {
    sketch.circle(centre, CLOCK, Line::Outline, Fill::Open);
    for (quarter, (hour, reading)) in HOURS.iter().zip(&sweep.readings).enumerate() {
        let angle = FRAC_PI_2 * (quarter as f64 - 1.0);
        sketch.line(polar(centre, CLOCK, angle), polar(centre, CLOCK - 7.0, angle), Line::Thin);
        sketch.text(polar(centre, CLOCK - 14.5, angle), Anchor::Middle, hour);
        let Some(words) = reading else { continue };
        let (clear, anchor) = match quarter {
            1 => (7.0, Anchor::Start),
            3 => (7.0, Anchor::End),
            _ => (12.0, Anchor::Middle),
        };
        sketch.text(polar(centre, CLOCK + clear, angle), anchor, words);
    }
    sketch.text(centre + pt(0.0, CLOCK + 31.0), Anchor::Middle, &sweep.name);
}
