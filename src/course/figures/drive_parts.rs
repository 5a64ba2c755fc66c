//! The parts of the chain drive: where they lie on the sheet, and how each is drawn.

use super::drive_side::{DriveSide, Turning};
use super::geometry::{Area, Pt, outside_circle, polar, pt};
use super::kit::{Fill, Line, Sketch};
use super::{FigureError, magnification, positive, within};
use core::f64::consts::{FRAC_PI_2, PI, TAU};

/// The drive on the sheet: centres, pitch radii and the strand ends.
pub(super) struct Layout {
    pub(super) pitch: f64,
    pub(super) along: Pt,
    pub(super) centres: [Pt; 2],
    pub(super) radii: [f64; 2],
    /// Half the difference of the two wraps, radians.
    spread: f64,
    pub(super) slack: [Pt; 2],
    pub(super) tight: [Pt; 2],
    /// Away from the drive, square to each strand.
    pub(super) slack_out: Pt,
    pub(super) tight_out: Pt,
    pub(super) sag: f64,
    pub(super) magnified: f64,
    /// From the tangent line towards the sagging chain.
    pub(super) sag_way: Pt,
}

/// Sag drawn smaller than this is magnified, in user units.
pub(super) const LEAST_SAG: f64 = 9.0;

impl Layout {
    pub(super) fn of(drive: &DriveSide) -> Result<Self, FigureError> {
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

    pub(super) fn sags_outwards(&self) -> bool {
        self.sag_way.dot(self.slack_out) > 0.0
    }

    /// Outside radius of the toothed sprocket.
    pub(super) fn tip(&self, which: usize) -> f64 {
        self.radii[which] + 0.3 * self.pitch
    }
}

/// The reducer's housing on the sheet, behind the driving sprocket.
pub(super) fn housing(layout: &Layout) -> Area {
    let half = (0.7 * layout.radii[0]).clamp(34.0, 70.0);
    let low = (layout.tip(0) + 12.0).max(46.0);
    Area { low: pt(-half, -half.min(0.8 * low)), high: pt(half, low) }
}

pub(super) fn reducer(sketch: &mut Sketch, layout: &Layout) {
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
pub(super) fn bore(layout: &Layout, which: usize) -> f64 {
    (0.3 * layout.radii[which]).clamp(3.0, 14.0)
}

pub(super) fn sprocket(sketch: &mut Sketch, layout: &Layout, which: usize, teeth: u32) {
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

pub(super) fn chain(sketch: &mut Sketch, layout: &Layout, turning: Turning) {
    let beads = |from: Pt, to: Pt| {
        let length = (to - from).length();
        let count = (length / layout.pitch).round().max(1.0);
        (layout.pitch >= 4.0).then(|| ((0.55 * layout.pitch).min(7.0), length / count))
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

pub(super) fn straightedge(sketch: &mut Sketch, layout: &Layout) {
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

pub(super) fn rotation(sketch: &mut Sketch, layout: &Layout, turning: Turning) {
    let back = libm::atan2(-layout.along.y, -layout.along.x);
    let radius = layout.tip(0) + 8.0;
    // Long enough for its arrowhead on a small sprocket too.
    let half = (18.0 / radius).clamp(0.6, 1.0) * if turning == Turning::Clockwise { 1.0 } else { -1.0 };
    sketch.arc(layout.centres[0], radius, back - half, back + half, Line::Outline);
    let tip = back + half + half.signum() * 0.5 * 10.0 / radius;
    let way = pt(1.0, 0.0).turned(back + half + half.signum() * FRAC_PI_2);
    sketch.head(polar(layout.centres[0], radius, tip) + way * 2.0, way, 10.0);
}
