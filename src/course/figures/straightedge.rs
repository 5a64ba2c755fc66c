//! Two sprockets from above under a straightedge, with the gaps at four points.

use super::geometry::{Pt, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, LARGEST, rows, within};
use drivecourse_machine::language::Message;
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    GAP_1 = "straightedge-gap-1", "Gap 1, reference sprocket's far rim";
    GAP_2 = "straightedge-gap-2", "Gap 2, reference sprocket's near rim";
    GAP_3 = "straightedge-gap-3", "Gap 3, other sprocket's near rim";
    GAP_4 = "straightedge-gap-4", "Gap 4, other sprocket's far rim";
    ON_REFERENCE = "straightedge-on-reference", "Between the points on the reference sprocket";
    ON_OTHER = "straightedge-on-other", "Between the points on the other sprocket";
    CENTRES = "straightedge-centres", "Centre distance";
    OFFSET = "straightedge-offset", "Offset at the centre";
    TWIST = "straightedge-twist", "Twist";
    TITLE = "straightedge-title", "Straightedge across two sprockets";
    TOUCHES_NONE = "straightedge-touches-none", "It touches at none of them.";
    REFERENCE = "straightedge-reference", "reference";
    OTHER = "straightedge-other", "other";
    TOUCHES_ONE = "straightedge-touches-one", "It touches at point {point}.";
    TOUCHES = "straightedge-touches", "It touches at points {points} and {last}.";
    ABOUT = "straightedge-about", "Two sprockets from above, the reference sprocket at the left, under a straightedge; the gaps at four points, numbered from the left, are magnified.";
} }

/// The faces of two sprockets seen from above, a straightedge across them, and the gap at each of four points.
///
/// Gaps share one scale and are much magnified; lengths along the straightedge are not to scale.
#[derive(Debug, Clone)]
pub struct Straightedge {
    /// Identifier, unique in the page.
    pub id: String,
    /// Gaps in order: reference sprocket's far rim and near rim, other sprocket's near rim and far rim.
    pub gaps: [f64; 4],
    /// Label of each gap.
    pub gap_labels: [Option<String>; 4],
    /// Label of the distance between the points on the reference sprocket.
    pub reference_label: Option<String>,
    /// Label of the distance between the points on the other sprocket.
    pub other_label: Option<String>,
    /// Label of the centre distance.
    pub centres_label: Option<String>,
    /// Label of the other sprocket's offset.
    pub offset_label: Option<String>,
    /// Label of the other sprocket's twist.
    pub twist_label: Option<String>,
}

/// The four points along the straightedge on the sheet.
const PLACES: [f64; 4] = [0.0, 122.0, 258.0, 360.0];
/// The widest gap on the sheet.
const WIDEST: f64 = 44.0;
/// Thickness of a sprocket on the sheet.
const PLATE: f64 = 20.0;
const NAMES: [Message; 4] = [GAP_1, GAP_2, GAP_3, GAP_4];

impl Straightedge {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for a negative gap or one that is no number.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let mut most = 0.0_f64;
        for gap in self.gaps {
            most = most.max(within("gap", gap, 0.0, LARGEST)?);
        }
        let scale = if most > 0.0 { WIDEST / most } else { 0.0 };
        let at = |place: usize| pt(PLACES[place], self.gaps[place] * scale);
        let mut sketch = Sketch::new();
        edge(&mut sketch);
        sprocket(&mut sketch, at(0), at(1), REFERENCE.text());
        sprocket(&mut sketch, at(2), at(3), OTHER.text());
        for (place, label) in self.gap_labels.iter().enumerate() {
            let foot = at(place);
            sketch.line(pt(foot.x, 0.0), foot, Line::Thin);
            sketch.dot(foot, 2.5);
            // Neighbours stand in two rows, so that long labels clear each other.
            let row = if place % 2 == 0 { -52.0 } else { -34.0 };
            sketch.line(pt(foot.x, -16.0), pt(foot.x, row + 8.0), Line::Thin);
            let words =
                label.as_ref().map_or_else(|| format!("{}", place + 1), |label| format!("{}: {label}", place + 1));
            sketch.text(pt(foot.x, row), Anchor::Middle, &words);
        }
        let floor = WIDEST + PLATE + 64.0;
        let down = |place: usize| pt(PLACES[place], floor);
        sketch.dimension(down(0), down(1), pt(0.0, 4.0), self.reference_label.as_deref());
        sketch.dimension(down(2), down(3), pt(0.0, 4.0), self.other_label.as_deref());
        let centre = |a: usize, b: usize| pt(0.5 * (PLACES[a] + PLACES[b]), floor + 26.0);
        sketch.dimension(centre(0, 1), centre(2, 3), pt(0.0, 4.0), self.centres_label.as_deref());
        for (name, label) in [(OFFSET, &self.offset_label), (TWIST, &self.twist_label)] {
            if let Some(words) = label {
                sketch.note(&format!("{}: {words}", name.text()));
            }
        }
        Ok(sketch.finish(&self.id, TITLE.text(), &self.description(), self.table()))
    }

    fn description(&self) -> String {
        let touching: Vec<String> =
            (0..4).filter(|&place| self.gaps[place] <= 0.0).map(|place| (place + 1).to_string()).collect();
        let rest = match touching.as_slice() {
            [] => TOUCHES_NONE.text().to_owned(),
            [one] => TOUCHES_ONE.say(&[("point", one)]),
            [first @ .., last] => TOUCHES.say(&[("points", &first.join(", ")), ("last", last)]),
        };
        format!("{} {rest}", ABOUT.text())
    }

    fn table(&self) -> Vec<(String, String)> {
        let mut table: Vec<_> = NAMES
            .iter()
            .zip(&self.gap_labels)
            .filter_map(|(name, label)| label.as_ref().map(|label| (name.text().to_owned(), label.clone())))
            .collect();
        table.extend(rows(&[
            (ON_REFERENCE, &self.reference_label),
            (ON_OTHER, &self.other_label),
            (CENTRES, &self.centres_label),
            (OFFSET, &self.offset_label),
            (TWIST, &self.twist_label),
        ]));
        table
    }
}

/// The straightedge, its working edge at nought.
fn edge(sketch: &mut Sketch) {
    let (left, right) = (PLACES[0] - 18.0, PLACES[3] + 18.0);
    sketch.polygon(&[pt(left, 0.0), pt(left, -14.0), pt(right, -14.0), pt(right, 0.0)], Line::Outline, Fill::Tint);
}

/// A sprocket edge on, its face through `from` and `to`, with its shaft behind it.
fn sprocket(sketch: &mut Sketch, from: Pt, to: Pt, name: &str) {
    let along = (to - from).unit();
    let (behind, beyond) = (along.quarter() * PLATE, along * 8.0);
    let corners = [from - beyond, to + beyond, to + beyond + behind, from - beyond + behind];
    sketch.polygon(&corners, Line::Outline, Fill::Tint);
    let root = from.middle(to) + behind;
    let tail = root + along.quarter() * 30.0;
    for side in [-10.0, 10.0] {
        sketch.line(root + along * side, tail + along * side, Line::Outline);
    }
    sketch.line(from.middle(to) - along.quarter() * 4.0, tail + along.quarter() * 8.0, Line::Centre);
    sketch.label(tail + along * 10.0 - along.quarter() * 12.0, 6.0, pt(1.0, 0.0), name);
}
