//! The chain drive seen from the side.

use super::drive_parts::{Layout, bore, chain, housing, reducer, rotation, sprocket, straightedge};
use super::geometry::{Pt, polar, pt};
use super::kit::{Line, Sketch};
use super::label::{Anchor, SIZE, width};
use super::{Figure, FigureError, rows};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    DRIVING = "drive-side-driving", "Driving sprocket";
    DRIVEN = "drive-side-driven", "Driven sprocket";
    CENTRES = "drive-side-centres", "Centre distance";
    SPAN = "drive-side-span", "Free span";
    SAG = "drive-side-sag", "Sag at mid-span";
    INCLINE = "drive-side-incline", "Inclination";
    TITLE = "drive-side-title", "Chain drive from the side";
    TIGHT = "drive-side-tight", "tight strand";
    SLACK = "drive-side-slack", "slack strand";
    EDGE = "drive-side-edge", "straightedge";
    SCALE_NOTE = "drive-side-scale-note", "Sag drawn {times} times its size.";
    NOT_TO_SCALE = "drive-side-not-to-scale", "Not to scale.";
    LEVEL = "drive-side-level", "level with it at the right";
    ABOVE = "drive-side-above", "above it";
    ABOVE_RIGHT = "drive-side-above-right", "above it to the right";
    CLOCKWISE = "drive-side-clockwise", "The reducer's output sprocket at the left drives a sprocket {place}. It turns clockwise, so the upper strand is the slack one.";
    ANTICLOCKWISE = "drive-side-anticlockwise", "The reducer's output sprocket at the left drives a sprocket {place}. It turns anticlockwise, so the lower strand is the slack one.";
    EDGE_ALONG = "drive-side-edge-along", "A straightedge lies along it.";
    SCALE = "drive-side-scale", "The sag is drawn {times} times its size.";
} }

/// Which way the driving sprocket turns, as drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Turning {
    /// With the clock: the upper strand is slack, the lower one pulls.
    Clockwise,
    /// Against the clock: the lower strand is slack, the upper one pulls.
    Anticlockwise,
}

/// The chain drive from the side: the reducer with its output sprocket at the left, the driven
/// sprocket to the right or above, both strands and a straightedge for the sag.
///
/// Sprockets, centres, inclination and strands are to scale. The slack strand is a parabola with
/// the given sag at mid-span, square to the span and towards the ground; a sag too small to see is
/// magnified by a round number stated under the drawing. The reducer's housing is not to scale.
#[derive(Debug, Clone)]
pub struct DriveSide {
    /// Identifier, unique in the page.
    pub id: String,
    /// Teeth of the sprocket on the reducer's output shaft.
    pub driver_teeth: u32,
    /// Teeth of the driven sprocket.
    pub driven_teeth: u32,
    /// Chain pitch.
    pub pitch: f64,
    /// Distance between the shaft centres, same unit as the pitch.
    pub centres: f64,
    /// Angle of the line of centres above the horizontal in degrees, 0 to 90.
    pub incline: f64,
    /// Sag of the slack strand at mid-span below the straightedge, same unit as the pitch.
    pub sag: f64,
    /// Whether one of these lengths is not the machine's, so that the drawing is not to scale.
    pub nominal: bool,
    /// Sense of rotation.
    pub turning: Turning,
    /// Whether a straightedge lies along the slack strand.
    pub straightedge: bool,
    /// Whether the strands are named (slack, tight).
    pub name_strands: bool,
    /// Label of the driving sprocket.
    pub driver_label: Option<String>,
    /// Label of the driven sprocket.
    pub driven_label: Option<String>,
    /// Label of the centre distance.
    pub centres_label: Option<String>,
    /// Label of the free span of the slack strand.
    pub span_label: Option<String>,
    /// Label of the sag.
    pub sag_label: Option<String>,
    /// Label of the inclination.
    pub incline_label: Option<String>,
}

impl DriveSide {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for fewer than 6 or more than 400 teeth, sprockets that touch, an
    /// incline outside 0 to 90 degrees, a sag beyond 0.4 of the span, or a value that is no number.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let layout = Layout::of(self)?;
        let mut sketch = Sketch::new();
        reducer(&mut sketch, &layout);
        for (which, teeth) in [self.driver_teeth, self.driven_teeth].into_iter().enumerate() {
            sprocket(&mut sketch, &layout, which, teeth);
        }
        sketch.line(layout.centres[0] - layout.along * 8.0, layout.centres[1] + layout.along * 8.0, Line::Centre);
        chain(&mut sketch, &layout, self.turning);
        if self.straightedge {
            straightedge(&mut sketch, &layout);
        }
        rotation(&mut sketch, &layout, self.turning);
        self.dimensions(&mut sketch, &layout);
        self.names(&mut sketch, &layout);
        if self.nominal {
            sketch.note(NOT_TO_SCALE.text());
        } else if layout.magnified > 1.0 {
            sketch.note(&SCALE_NOTE.say(&[("times", &layout.magnified.to_string())]));
        }
        let title = TITLE.text();
        Ok(sketch.finish(&self.id, title, &self.description(&layout), self.table()))
    }

    fn dimensions(&self, sketch: &mut Sketch, layout: &Layout) {
        let middle = layout.slack[0].middle(layout.slack[1]);
        let deep = middle + layout.sag_way * layout.sag;
        let outwards = if layout.sags_outwards() { layout.sag } else { 0.0 };
        if let Some(words) = self.sag_label.as_deref() {
            // The arrows stand outside the gap; the label goes on the free side of the strand.
            let (near, far) = if layout.sags_outwards() { (middle, deep) } else { (deep, middle) };
            let out = layout.slack_out;
            let edge = if self.straightedge && outwards == 0.0 { 6.0 } else { 0.0 };
            sketch.line(near - out * 17.0, far + out * (edge + 15.0), Line::Thin);
            sketch.head(near, out, 8.0);
            sketch.head(far, out * -1.0, 8.0);
            sketch.label(far + out * (edge + 15.0), 2.0, out, words);
        }
        // Room for what is written between the strand and the dimension: more where the strand is steep.
        let room = |words: &str, out: Pt| 0.8 * out.x.abs() * width(words);
        let clear = self.sag_label.as_deref().map_or(26.0, |words| 50.0 + room(words, layout.slack_out));
        let beyond = layout.slack_out * (outwards + clear);
        sketch.dimension(layout.slack[0], layout.slack[1], beyond, self.span_label.as_deref());

        let tight_reach = layout.radii.iter().fold(0.0_f64, |most, r| most.max(*r)) + 0.5 * layout.pitch;
        // Below the drive the dimension must also pass under the reducer's feet.
        let square = pt(layout.along.y, -layout.along.x);
        let out = if square.dot(layout.tight_out) > 0.0 { square } else { square * -1.0 };
        let feet = housing(layout).corners().iter().map(|c| c.dot(out)).fold(0.0, f64::max);
        let named = if self.name_strands { room(TIGHT.text(), out) } else { 0.0 };
        let offset = (tight_reach + 22.0 + named).max(if out.y > 0.3 { feet + 22.0 } else { 0.0 });
        sketch.dimension(layout.centres[0], layout.centres[1], out * offset, self.centres_label.as_deref());

        if let Some(words) = self.incline_label.as_deref() {
            let (start, radius) =
                (layout.centres[0], (0.3 * (layout.centres[1] - layout.centres[0]).length()).clamp(45.0, 90.0));
            sketch.line(start, start + pt(radius + 14.0, 0.0), Line::Thin);
            let angle = libm::atan2(layout.along.y, layout.along.x);
            if angle < -0.02 {
                sketch.arc(start, radius, 0.0, angle, Line::Thin);
                sketch.head(polar(start, radius, angle), (layout.along * -1.0).quarter() * -1.0, 8.0);
            }
            sketch.label(polar(start, radius, 0.5 * angle), 5.0, pt(1.0, 0.0).turned(0.5 * angle), words);
        }
    }

    fn names(&self, sketch: &mut Sketch, layout: &Layout) {
        let ends = [layout.along * -1.0, layout.along];
        for (which, label) in [&self.driver_label, &self.driven_label].into_iter().enumerate() {
            let Some(words) = label else { continue };
            // On a sprocket large enough the label stands on its disc, on the side of the slack strand.
            let (centre, inner) = (layout.centres[which], layout.radii[which] - 0.3 * layout.pitch - 4.0);
            let (drop, half) = (0.58 * inner, 0.5 * width(words));
            let inside = centre + pt(0.0, if layout.slack_out.y < 0.0 { -drop } else { drop });
            if drop - 0.5 * SIZE > bore(layout, which) + 3.0
                && half * half + (drop + 0.4 * SIZE) * (drop + 0.4 * SIZE) < inner * inner
            {
                sketch.text(inside, Anchor::Middle, words);
            } else {
                sketch.label(centre, layout.tip(which) + 4.0, ends[which] + layout.tight_out * 0.5, words);
            }
        }
        let place = |strand: [Pt; 2], part: f64| strand[0] + (strand[1] - strand[0]) * part;
        if self.name_strands {
            sketch.label(place(layout.tight, 0.62), 5.0, layout.tight_out, TIGHT.text());
            let part = 0.25;
            let drop = layout.sag_way * (4.0 * part * (1.0 - part) * layout.sag);
            let inward = if layout.sags_outwards() { layout.sag_way } else { layout.slack_out * -1.0 };
            sketch.label(place(layout.slack, part) + drop, 5.0, inward, SLACK.text());
        }
        if self.straightedge {
            let (part, way) = if layout.sags_outwards() { (0.3, -1.0) } else { (0.79, 1.0) };
            let way = layout.slack_out * way;
            sketch.label(place(layout.slack, part) + way * 6.0, 4.0, way, EDGE.text());
        }
    }

    fn table(&self) -> Vec<(String, String)> {
        rows(&[
            (DRIVING, &self.driver_label),
            (DRIVEN, &self.driven_label),
            (CENTRES, &self.centres_label),
            (SPAN, &self.span_label),
            (SAG, &self.sag_label),
            (INCLINE, &self.incline_label),
        ])
    }

    fn description(&self, layout: &Layout) -> String {
        let place = if self.incline < 10.0 {
            LEVEL
        } else if self.incline > 80.0 {
            ABOVE
        } else {
            ABOVE_RIGHT
        };
        let says = match self.turning {
            Turning::Clockwise => CLOCKWISE,
            Turning::Anticlockwise => ANTICLOCKWISE,
        };
        let mut out = says.say(&[("place", place.text())]);
        if self.straightedge {
            out.push_str(&format!(" {}", EDGE_ALONG.text()));
        }
        if self.nominal {
            out.push_str(&format!(" {}", NOT_TO_SCALE.text()));
        } else if layout.magnified > 1.0 {
            out.push_str(&format!(" {}", SCALE.say(&[("times", &layout.magnified.to_string())])));
        }
        out
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figures::drive_parts::LEAST_SAG;
    use crate::figures::tests::drive;

    #[test]
    fn the_drawn_sag_is_the_given_sag_to_scale() {
        let given = drive();
        let layout = Layout::of(&given).unwrap();
        let scale = layout.pitch / given.pitch;
        // The parabola passes half-way between the chord and its control point.
        assert!((layout.sag - given.sag * scale * layout.magnified).abs() < 1e-9);
        assert!(layout.sag >= LEAST_SAG);
        let [a, b] = layout.slack;
        let low = (a + b) * 0.25 + (a.middle(b) + layout.sag_way * (2.0 * layout.sag)) * 0.5;
        assert!(((low - a.middle(b)).length() - layout.sag).abs() < 1e-9);
        let control = a.middle(b) + layout.sag_way * (2.0 * layout.sag);
        let q = format!("Q{} {}", super::super::kit::num(control.x), super::super::kit::num(control.y));
        assert!(given.draw().unwrap().svg.contains(&q));
    }

    #[test]
    fn strands_touch_both_pitch_circles_square_to_the_radius() {
        for incline in [0.0, 30.0, 60.0, 90.0] {
            let layout = Layout::of(&DriveSide { incline, ..drive() }).unwrap();
            for strand in [layout.slack, layout.tight] {
                for which in 0..2 {
                    let radius = strand[which] - layout.centres[which];
                    assert!((radius.length() - layout.radii[which]).abs() < 1e-9);
                    assert!(radius.dot(strand[1] - strand[0]).abs() < 1e-6);
                }
            }
            let scale = layout.pitch / drive().pitch;
            let span = (layout.slack[1] - layout.slack[0]).length() / scale;
            let difference = (layout.radii[1] - layout.radii[0]) / scale;
            assert!((span * span + difference * difference - drive().centres * drive().centres).abs() < 1e-3);
        }
    }

    #[test]
    fn the_slack_strand_leaves_the_driver_and_hangs_down() {
        let upper = Layout::of(&drive()).unwrap();
        assert!(upper.slack[0].y < upper.tight[0].y && upper.sag_way.y > 0.0);
        let lower = Layout::of(&DriveSide { turning: Turning::Anticlockwise, ..drive() }).unwrap();
        assert!(lower.slack[0].y > lower.tight[0].y && lower.sag_way.y > 0.0);
    }

    #[test]
    fn a_hidden_sag_is_nowhere_in_the_words() {
        let figure = DriveSide { sag_label: None, ..drive() }.draw().unwrap();
        assert!(!figure.svg.contains("33 mm") && !figure.table.iter().any(|(name, _)| name.contains("Sag")));
    }
}
