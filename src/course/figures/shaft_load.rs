//! The output shaft as a free body, with its bending moment.

use super::geometry::{Pt, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, LARGEST, positive, rows, within};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    BETWEEN = "shaft-load-between", "Between bearings";
    NEAR_TO_LOAD = "shaft-load-near-to-load", "Near bearing to load";
    NEAR = "shaft-load-near", "Near bearing reaction";
    FAR = "shaft-load-far", "Far bearing reaction";
    MOMENT = "shaft-load-moment", "Greatest bending moment";
    NO_SCALE = "shaft-load-no-scale", "Distances along the shaft not to scale.";
    TITLE = "shaft-load-title", "Loads on the output shaft";
    ALONG = "shaft-load-along", "bending moment along the shaft";
    LOAD = "shaft-load-load", "Load";
    UP = "shaft-load-up", "up";
    DOWN = "shaft-load-down", "down";
    REACTIONS = "shaft-load-reactions", "The near bearing pushes {near}, the far bearing {far}.";
    MOST = "shaft-load-most", "The bending moment is greatest at the near bearing.";
    ABOUT = "shaft-load-about", "Output shaft in two bearings with a sprocket beyond the near one. The load acts {way} at the sprocket.";
} }

/// The output shaft set free: far bearing at the left, near bearing, then the sprocket on the
/// overhang with its load; the reactions; and the bending moment below.
///
/// Forces are to one scale, upwards positive; the caller gives them all, so they come from the same
/// calculation as the numbers in the text. The moment rises in a straight line from the far bearing to the near
/// one and falls in a straight line to the load, whatever its size.
#[derive(Debug, Clone)]
pub struct ShaftLoad {
    /// Identifier, unique in the page.
    pub id: String,
    /// Distance between the bearings.
    pub bearings: f64,
    /// Distance from the near bearing to the load, same unit.
    pub overhang: f64,
    /// Whether one of these lengths is not the machine's.
    pub nominal: bool,
    /// Load at the sprocket, upwards positive.
    pub load: f64,
    /// Reaction of the near bearing, same unit, upwards positive.
    pub near: f64,
    /// Reaction of the far bearing, same unit, upwards positive.
    pub far: f64,
    /// Label of the distance between the bearings.
    pub bearings_label: Option<String>,
    /// Label of the overhang.
    pub overhang_label: Option<String>,
    /// Label of the load.
    pub load_label: Option<String>,
    /// Label of the near reaction.
    pub near_label: Option<String>,
    /// Label of the far reaction.
    pub far_label: Option<String>,
    /// Label of the greatest bending moment.
    pub moment_label: Option<String>,
    /// Whether the two reactions are drawn (their directions may be the question).
    pub reactions: bool,
    /// Whether the bending moment is drawn.
    pub moment: bool,
}

/// Length of the longest force arrow.
const ARROW: f64 = 78.0;
/// Half the height of the shaft.
const HALF: f64 = 8.0;
/// Half the height of a bearing and of the sprocket.
const BEARING: f64 = 19.0;
const SPROCKET: f64 = 40.0;
/// Least distance on the sheet between bearings and load, so that the parts stay apart.
const APART: f64 = 62.0;

impl ShaftLoad {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for a distance not above nought or a value that is no number;
    /// [`FigureError::Empty`] when all forces are nought.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let bearings = positive("bearing distance", self.bearings)?;
        let overhang = positive("overhang", self.overhang)?;
        let mut most = 0.0_f64;
        for (name, force) in [("load", self.load), ("near reaction", self.near), ("far reaction", self.far)] {
            most = most.max(within(name, force, -LARGEST, LARGEST)?.abs());
        }
        if most <= 0.0 {
            return Err(FigureError::Empty { input: "forces" });
        }
        let scale = 300.0 / (bearings + overhang);
        let (span, arm) = ((bearings * scale).max(APART), (overhang * scale).max(APART));
        let stretched = bearings * scale < APART || overhang * scale < APART;
        let (far, near, end) = (pt(0.0, 0.0), pt(span, 0.0), pt(span + arm, 0.0));

        let mut sketch = Sketch::new();
        shaft(&mut sketch, far, near, end);
        let mut force = |at: Pt, half: f64, value: f64, label: Option<&str>| {
            let length = ARROW * value.abs() / most;
            let up = if value > 0.0 { -1.0 } else { 1.0 };
            // The arrow points at the part it acts on: a push from below points up at its underside.
            let tip = at - pt(0.0, up * (half + 2.0));
            if length >= 1.0 {
                sketch.arrow(tip - pt(0.0, up * length), tip);
            }
            if let Some(words) = label {
                sketch.label(tip - pt(0.0, up * length), 5.0, pt(0.0, -up), words);
            }
        };
        force(end, SPROCKET, self.load, self.load_label.as_deref());
        if self.reactions {
            force(near, BEARING, self.near, self.near_label.as_deref());
            force(far, BEARING, self.far, self.far_label.as_deref());
        }
        let mut below = SPROCKET + 30.0;
        if let Some(extent) = sketch.extent() {
            below = below.max(extent.high.y + 14.0);
        }
        for (a, b, label) in [(far, near, &self.bearings_label), (near, end, &self.overhang_label)] {
            sketch.dimension(pt(a.x, below - 12.0), pt(b.x, below - 12.0), pt(0.0, 12.0), label.as_deref());
        }
        if self.moment {
            self.moment_diagram(&mut sketch, [far, near, end]);
        }
        if stretched || self.nominal {
            sketch.note(NO_SCALE.text());
        }
        Ok(sketch.finish(&self.id, TITLE.text(), &self.description(), self.table()))
    }

    fn moment_diagram(&self, sketch: &mut Sketch, [far, near, end]: [Pt; 3]) {
        let Some(extent) = sketch.extent() else { return };
        let level = extent.high.y + 96.0;
        let peak = pt(near.x, level - 62.0);
        let (start, stop) = (pt(far.x, level), pt(end.x, level));
        sketch.polygon(&[start, peak, stop], Line::Outline, Fill::Tint);
        sketch.line(start - pt(14.0, 0.0), stop + pt(14.0, 0.0), Line::Thin);
        sketch.line(pt(near.x, level), peak, Line::Thin);
        if let Some(words) = &self.moment_label {
            sketch.label(peak, 5.0, pt(0.0, -1.0), words);
        }
        sketch.text(pt(start.x.midpoint(stop.x), level + 14.0), Anchor::Middle, ALONG.text());
    }

    fn description(&self) -> String {
        let way = |force: f64| if force > 0.0 { UP } else { DOWN }.text();
        let mut out = ABOUT.say(&[("way", way(self.load))]);
        if self.reactions {
            out.push_str(&format!(" {}", REACTIONS.say(&[("near", way(self.near)), ("far", way(self.far))])));
        }
        if self.moment {
            out.push_str(&format!(" {}", MOST.text()));
        }
        out
    }

    fn table(&self) -> Vec<(String, String)> {
        rows(&[
            (BETWEEN, &self.bearings_label),
            (NEAR_TO_LOAD, &self.overhang_label),
            (LOAD, &self.load_label),
            (NEAR, &self.near_label.clone().filter(|_| self.reactions)),
            (FAR, &self.far_label.clone().filter(|_| self.reactions)),
            (MOMENT, &self.moment_label.clone().filter(|_| self.moment)),
        ])
    }
}

fn shaft(sketch: &mut Sketch, far: Pt, near: Pt, end: Pt) {
    let body = [pt(far.x - 22.0, -HALF), pt(end.x + 20.0, -HALF), pt(end.x + 20.0, HALF), pt(far.x - 22.0, HALF)];
    sketch.polygon(&body, Line::Outline, Fill::Tint);
    sketch.line(pt(far.x - 34.0, 0.0), pt(end.x + 32.0, 0.0), Line::Centre);
    for at in [far, near] {
        for side in [-1.0, 1.0] {
            // A rolling bearing in section: a box with a cross, above and below the shaft.
            let (inner, outer) = (side * HALF, side * BEARING);
            let corners = [pt(at.x - 9.0, inner), pt(at.x + 9.0, inner), pt(at.x + 9.0, outer), pt(at.x - 9.0, outer)];
            sketch.polygon(&corners, Line::Outline, Fill::Open);
            sketch.line(corners[0], corners[2], Line::Thin);
            sketch.line(corners[1], corners[3], Line::Thin);
        }
    }
    for side in [-1.0, 1.0] {
        let rim = [
            pt(end.x - 11.0, side * HALF),
            pt(end.x + 11.0, side * HALF),
            pt(end.x + 11.0, side * 18.0),
            pt(end.x + 4.0, side * 18.0),
            pt(end.x + 2.0, side * SPROCKET),
            pt(end.x - 2.0, side * SPROCKET),
            pt(end.x - 4.0, side * 18.0),
            pt(end.x - 11.0, side * 18.0),
        ];
        sketch.polygon(&rim, Line::Outline, Fill::Tint);
    }
}
