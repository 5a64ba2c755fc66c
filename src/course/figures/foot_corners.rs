//! One foot with the gaps at its four corners, from above and from the side.

use super::geometry::{Area, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, magnification, positive, rows, within};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    LENGTH = "corners-length", "Length";
    WIDTH = "corners-width", "Width";
    TITLE = "corners-title", "Gaps under {foot}";
    SIDE = "corners-side", "Below it, the same foot from the side, above the base.";
    ABOUT = "corners-about", "{foot} from above, with the gap at each corner: 1 top left, 2 top right, 3 bottom right, 4 bottom left.";
    NOTE = "corners-note", "Side view: gaps drawn {times} times their size.";
    GAP = "corners-gap", "Gap at corner {corner}";
} }

/// One foot seen from above with the gap measured at each corner, and from the side with its slope.
///
/// The corners are 1 (top left), 2 (top right), 3 (bottom right) and 4 (bottom left). The side view
/// shows the mean gap along each of two opposite edges, those between which the foot slopes more; the
/// gaps are magnified by a stated round number.
#[derive(Debug, Clone)]
pub struct FootCorners {
    /// Identifier, unique in the page.
    pub id: String,
    /// Name of the foot ("foot 2").
    pub name: String,
    /// Length of the foot from left to right.
    pub length: f64,
    /// Width of the foot from top to bottom, same unit.
    pub width: f64,
    /// Gaps at the corners 1 to 4, same unit.
    pub gaps: [f64; 4],
    /// Labels of the gaps at the corners 1 to 4.
    pub gap_labels: [Option<String>; 4],
    /// Label of the length.
    pub length_label: Option<String>,
    /// Label of the width.
    pub width_label: Option<String>,
    /// Whether the side view is drawn (it shows which way the foot slopes).
    pub side_view: bool,
}

const CORNERS: [&str; 4] = ["1", "2", "3", "4"];

impl FootCorners {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for a length or width not above nought, a foot more than five times as
    /// long as wide, a gap below nought or above a fifth of the length, or a value that is no number.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let length = positive("length", self.length)?;
        let width = within("width", self.width, 0.2 * length, 5.0 * length)?;
        for gap in self.gaps {
            within("gap", gap, 0.0, 0.2 * length)?;
        }
        let scale = (190.0 / length).min(140.0 / width);
        let plan = Area { low: pt(0.0, 0.0), high: pt(length * scale, width * scale) };
        let mut sketch = Sketch::new();
        sketch.rect(plan, Line::Outline, Fill::Tint);
        let hole = 0.22 * plan.width().min(plan.height());
        sketch.circle(plan.centre(), hole, Line::Outline, Fill::Open);
        let (across, upright) = (pt(0.5 * plan.width() + 10.0, 0.0), pt(0.0, 0.5 * plan.height() + 10.0));
        sketch.line(plan.centre() - across, plan.centre() + across, Line::Centre);
        sketch.line(plan.centre() - upright, plan.centre() + upright, Line::Centre);
        for (i, corner) in plan.corners().into_iter().enumerate() {
            let outward = pt(if i == 1 || i == 2 { 1.0 } else { -1.0 }, 0.0);
            let inward = (plan.centre() - corner).unit();
            sketch.dot(corner, 4.0);
            sketch.text(
                corner + pt((0.25 * plan.width()).min(14.0) * inward.x.signum(), 13.0 * inward.y.signum()),
                Anchor::Middle,
                CORNERS[i],
            );
            if let Some(words) = &self.gap_labels[i] {
                // Above and below the foot, leaning outwards so that two labels do not meet over a narrow foot.
                let anchor = if outward.x > 0.0 { Anchor::Start } else { Anchor::End };
                sketch.text(corner - outward * 12.0 - pt(0.0, 16.0 * inward.y.signum()), anchor, words);
            }
        }
        let (edge, above) = (plan.corners(), pt(0.0, -24.0));
        sketch.dimension(edge[0] + above, edge[1] + above, pt(0.0, -14.0), self.length_label.as_deref());
        sketch.dimension(edge[1], edge[2], pt(30.0, 0.0), self.width_label.as_deref());
        if self.side_view {
            self.side(&mut sketch, plan, scale);
        }
        let title = TITLE.say(&[("foot", &self.name)]);
        let side = if self.side_view { format!(" {}", SIDE.text()) } else { String::new() };
        let description = format!("{}{side}", ABOUT.say(&[("foot", &self.name)]));
        Ok(sketch.finish(&self.id, &title, &description, self.table()))
    }

    fn side(&self, sketch: &mut Sketch, plan: Area, scale: f64) {
        let [a, b, c, d] = self.gaps;
        // Seen along whichever way the foot slopes more from edge to edge.
        let lengthwise = (a + d - b - c).abs() * plan.height() >= (a + b - c - d).abs() * plan.width();
        let (left, right, names, run) = if lengthwise {
            (a + d, b + c, ["1, 4", "2, 3"], plan.width())
        } else {
            (a + b, c + d, ["1, 2", "4, 3"], plan.height())
        };
        let (left, right) = (0.5 * left * scale, 0.5 * right * scale);
        let (start, stop) = (plan.centre().x - 0.5 * run, plan.centre().x + 0.5 * run);
        let times = magnification(left.max(right), 18.0);
        let ground = plan.high.y + 128.0;
        let bottom = |gap: f64, x: f64| pt(x, ground - gap * times);
        let (from, to) = (bottom(left, start), bottom(right, stop));
        let up = (to - from).unit().quarter() * -20.0;
        sketch.polygon(&[from, to, to + up, from + up], Line::Outline, Fill::Tint);
        let (middle, axis) = (from.middle(to), up.unit());
        for side in [-9.0, 9.0] {
            let edge = middle + (to - from).unit() * side;
            sketch.line(edge, edge + up, Line::Hidden);
        }
        sketch.line(middle - axis * 8.0, middle + axis * 36.0, Line::Centre);
        let base = Area { low: pt(start - 24.0, ground), high: pt(stop + 24.0, ground + 14.0) };
        sketch.hatch(&base.corners(), 8.0);
        sketch.line(base.low, pt(base.high.x, base.low.y), Line::Outline);
        sketch.text(pt(start - 6.0, from.y - 10.0), Anchor::End, names[0]);
        sketch.text(pt(stop + 6.0, to.y - 10.0), Anchor::Start, names[1]);
        if times > 1.0 {
            sketch.note(&NOTE.say(&[("times", &times.to_string())]));
        }
    }

    fn table(&self) -> Vec<(String, String)> {
        let names = CORNERS.map(|corner| GAP.say(&[("corner", corner)]));
        let mut table: Vec<_> = names
            .into_iter()
            .zip(&self.gap_labels)
            .filter_map(|(name, label)| label.as_ref().map(|label| (name, label.clone())))
            .collect();
        table.extend(rows(&[(LENGTH, &self.length_label), (WIDTH, &self.width_label)]));
        table
    }
}
