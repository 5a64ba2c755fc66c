//! The chain drive seen from the side.

use super::geometry::{Area, Pt, outside_circle, polar, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::{Anchor, SIZE, width};
use super::{Figure, FigureError, magnification, positive, rows, within};
use core::f64::consts::{FRAC_PI_2, PI, TAU};

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

/// The drive on the sheet: centres, pitch radii and the strand ends.
struct Layout {
    pitch: f64,
    along: Pt,
    centres: [Pt; 2],
    radii: [f64; 2],
    /// Half the difference of the two wraps, radians.
    spread: f64,
    slack: [Pt; 2],
    tight: [Pt; 2],
    /// Away from the drive, square to each strand.
    slack_out: Pt,
    tight_out: Pt,
    sag: f64,
    magnified: f64,
    /// From the tangent line towards the sagging chain.
    sag_way: Pt,
}

/// Sag drawn smaller than this is magnified, in user units.
const LEAST_SAG: f64 = 9.0;

impl Layout {
    fn of(drive: &DriveSide) -> Result<Self, FigureError> {
        let pitch = positive("pitch", drive.pitch)?;
        let mut real = [0.0; 2];
        for (radius, teeth) in real.iter_mut().zip([drive.driver_teeth, drive.driven_teeth]) {
            let teeth = within("teeth", f64::from(teeth), 6.0, 400.0)?;
            *radius = 0.5 * pitch / libm::sin(PI / teeth);
        }
        let centres = within("centre distance", drive.centres, real[0] + real[1] + pitch, 2_000.0 * pitch)?;
        let incline = within("incline", drive.incline, 0.0, 90.0)?.to_radians();
        let span = (centres * centres - (real[1] - real[0]) * (real[1] - real[0])).sqrt();
        let sag = within("sag", drive.sag, 0.0, 0.4 * span)?;

        let along = pt(libm::cos(incline), -libm::sin(incline));
        let outer = [real[0] + 0.5 * pitch, real[1] + 0.5 * pitch];
        let reach = |move_by: f64| (move_by + outer[1]).max(outer[0]) - (move_by - outer[1]).min(-outer[0]);
        let scale = (370.0 / reach(centres * along.x)).min(330.0 / reach(centres * -along.y));

        let radii = real.map(|radius| radius * scale);
        let at = [pt(0.0, 0.0), along * (centres * scale)];
        let sine = (real[1] - real[0]) / centres;
        let up = pt(along.y, -along.x);
        let normal = |side: f64| along * -sine + up * (side * (1.0 - sine * sine).sqrt());
        let side = if drive.turning == Turning::Clockwise { 1.0 } else { -1.0 };
        let (slack_out, tight_out) = (normal(side), normal(-side));
        let strand = |out: Pt| [at[0] + out * radii[0], at[1] + out * radii[1]];
        let magnified = magnification(sag * scale, LEAST_SAG);
        // On a strand that stands upright gravity has no say: the chain is drawn slack inwards.
        let sag_way = if slack_out.y <= 1e-9 { slack_out * -1.0 } else { slack_out };
        Ok(Self {
            pitch: pitch * scale,
            along,
            centres: at,
            radii,
            spread: 2.0 * libm::asin(sine),
            slack: strand(slack_out),
            tight: strand(tight_out),
            slack_out,
            tight_out,
            sag: sag * scale * magnified,
            magnified,
            sag_way,
        })
    }

    fn sags_outwards(&self) -> bool {
        self.sag_way.dot(self.slack_out) > 0.0
    }

    /// Outside radius of the toothed sprocket.
    fn tip(&self, which: usize) -> f64 {
        self.radii[which] + 0.3 * self.pitch
    }
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
        if layout.magnified > 1.0 {
            sketch.note(&format!("Sag drawn {} times its size.", layout.magnified));
        }
        let title = "Chain drive from the side";
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
        let named = if self.name_strands { room("tight strand", out) } else { 0.0 };
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
            sketch.label(place(layout.tight, 0.62), 5.0, layout.tight_out, "tight strand");
            let part = 0.25;
            let drop = layout.sag_way * (4.0 * part * (1.0 - part) * layout.sag);
            let inward = if layout.sags_outwards() { layout.sag_way } else { layout.slack_out * -1.0 };
            sketch.label(place(layout.slack, part) + drop, 5.0, inward, "slack strand");
        }
        if self.straightedge {
            let (part, way) = if layout.sags_outwards() { (0.3, -1.0) } else { (0.75, 1.0) };
            let way = layout.slack_out * way;
            sketch.label(place(layout.slack, part) + way * 6.0, 4.0, way, "straightedge");
        }
    }

    fn table(&self) -> Vec<(String, String)> {
        rows(&[
            ("Driving sprocket", &self.driver_label),
            ("Driven sprocket", &self.driven_label),
            ("Centre distance", &self.centres_label),
            ("Free span", &self.span_label),
            ("Sag at mid-span", &self.sag_label),
            ("Inclination", &self.incline_label),
        ])
    }

    fn description(&self, layout: &Layout) -> String {
        let place = if self.incline < 10.0 {
            "level with it at the right"
        } else if self.incline > 80.0 {
            "above it"
        } else {
            "above it to the right"
        };
        let (turn, strand) = match self.turning {
            Turning::Clockwise => ("clockwise", "upper"),
            Turning::Anticlockwise => ("anticlockwise", "lower"),
        };
        let edge = if self.straightedge { " A straightedge lies along it." } else { "" };
        let scale = if layout.magnified > 1.0 {
            format!(" The sag is drawn {} times its size.", layout.magnified)
        } else {
            String::new()
        };
        format!(
            "The reducer's output sprocket at the left drives a sprocket {place}. It turns {turn}, so the {strand} strand is the slack one.{edge}{scale}"
        )
    }
}

/// The reducer's housing on the sheet, behind the driving sprocket.
fn housing(layout: &Layout) -> Area {
    let half = (0.7 * layout.radii[0]).clamp(34.0, 70.0);
    let low = (layout.tip(0) + 12.0).max(46.0);
    Area { low: pt(-half, -half.min(0.8 * low)), high: pt(half, low) }
}

fn reducer(sketch: &mut Sketch, layout: &Layout) {
    let (body, tip) = (housing(layout), layout.tip(0) + 1.0);
    let visible = |sketch: &mut Sketch, a: Pt, b: Pt, line: Line| {
        for (from, to) in outside_circle(a, b, layout.centres[0], tip) {
            sketch.line(from, to, line);
        }
    };
    let corners = body.corners();
    for i in 0..3 {
        // The bottom edge is the foot's.
        let (a, b) = [(corners[3], corners[0]), (corners[0], corners[1]), (corners[1], corners[2])][i];
        visible(sketch, a, b, Line::Outline);
    }
    let foot = Area { low: pt(body.low.x - 10.0, body.high.y - 7.0), high: pt(body.high.x + 10.0, body.high.y) };
    sketch.rect(foot, Line::Outline, Fill::Tint);
    let base = Area { low: pt(foot.low.x - 8.0, foot.high.y), high: pt(foot.high.x + 8.0, foot.high.y + 9.0) };
    sketch.hatch(&base.corners(), 7.0);
    sketch.reserve(base);
    sketch.line(base.low, pt(base.high.x, base.low.y), Line::Outline);
}

/// Radius of the shaft hole, not to scale.
fn bore(layout: &Layout, which: usize) -> f64 {
    (0.3 * layout.radii[which]).clamp(3.0, 14.0)
}

fn sprocket(sketch: &mut Sketch, layout: &Layout, which: usize, teeth: u32) {
    let (centre, radius, pitch) = (layout.centres[which], layout.radii[which], layout.pitch);
    let (tip, root) = (layout.tip(which), radius - 0.3 * pitch);
    if pitch >= 4.0 {
        // One gap lies where the tight strand leaves, so that a roller sits in it.
        let start = libm::atan2(layout.tight_out.y, layout.tight_out.x);
        let step = TAU / f64::from(teeth);
        let mut points = Vec::with_capacity(4 * teeth as usize);
        for tooth in 0..teeth {
            let gap = start + step * f64::from(tooth);
            for (radius, part) in [(root, -0.18), (root, 0.18), (tip, 0.40), (tip, 0.60)] {
                points.push(polar(centre, radius, gap + part * step));
            }
        }
        sketch.polygon(&points, Line::Outline, Fill::Tint);
    } else {
        sketch.circle(centre, tip, Line::Outline, Fill::Tint);
        sketch.circle(centre, root.max(0.6 * radius), Line::Thin, Fill::Open);
    }
    sketch.circle(centre, radius, Line::Centre, Fill::Open);
    let bore = bore(layout, which);
    sketch.circle(centre, bore, Line::Outline, Fill::Open);
    let cross = bore + 5.0;
    sketch.line(centre - pt(cross, 0.0), centre + pt(cross, 0.0), Line::Thin);
    sketch.line(centre - pt(0.0, cross), centre + pt(0.0, cross), Line::Thin);
}

fn chain(sketch: &mut Sketch, layout: &Layout, turning: Turning) {
    let beads = |from: Pt, to: Pt| {
        let length = (to - from).length();
        let count = (length / layout.pitch).round().max(1.0);
        (layout.pitch >= 4.0).then(|| (0.55 * layout.pitch, length / count))
    };
    let [a, b] = layout.tight;
    sketch.parabola(a, a.middle(b), b, Line::Outline, beads(a, b));
    let [a, b] = layout.slack;
    let meet = a.middle(b) + layout.sag_way * (2.0 * layout.sag);
    sketch.parabola(a, meet, b, Line::Outline, beads(a, b));
    // From the slack strand round the back of each sprocket to the tight one.
    let sense = if turning == Turning::Clockwise { -1.0 } else { 1.0 };
    let start = libm::atan2(layout.slack_out.y, layout.slack_out.x);
    for (which, wrap) in [(PI - layout.spread) * sense, -(PI + layout.spread) * sense].into_iter().enumerate() {
        sketch.arc(layout.centres[which], layout.radii[which], start, start + wrap, Line::Outline);
    }
}

fn straightedge(sketch: &mut Sketch, layout: &Layout) {
    let [a, b] = layout.slack;
    let along = (b - a).unit();
    let (from, to, thick) = if layout.sags_outwards() {
        // Inside the drive it must stop short of the sprockets.
        let clear = |which: usize| (12.0 * layout.tip(which)).sqrt().min(0.2 * (b - a).length());
        (a + along * clear(0), b - along * clear(1), layout.slack_out * -6.0)
    } else {
        (a - along * 10.0, b + along * 10.0, layout.slack_out * 6.0)
    };
    // It lies on the chain's rollers, not on their centre line.
    let lift = thick.unit() * (0.3 * layout.pitch);
    sketch.polygon(&[from + lift, to + lift, to + lift + thick, from + lift + thick], Line::Thin, Fill::Tint);
    sketch.line(a, b, Line::Hidden);
}

fn rotation(sketch: &mut Sketch, layout: &Layout, turning: Turning) {
    let back = libm::atan2(-layout.along.y, -layout.along.x);
    let radius = layout.tip(0) + 8.0;
    let half = if turning == Turning::Clockwise { 0.6 } else { -0.6 };
    sketch.arc(layout.centres[0], radius, back - half, back + half, Line::Outline);
    let tip = back + half + half.signum() * 0.5 * 10.0 / radius;
    let way = pt(1.0, 0.0).turned(back + half + half.signum() * FRAC_PI_2);
    sketch.head(polar(layout.centres[0], radius, tip) + way * 2.0, way, 10.0);
}

#[cfg(test)]
mod tests {
    use super::*;
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
