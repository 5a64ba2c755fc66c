//! The gap under a foot and the shims put into it.

use super::geometry::{Area, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::Anchor;
use super::{Figure, FigureError, LARGEST, rows, within};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    WHOLE = "shims-whole", "Whole pack";
    TITLE = "shims-title", "Shims under a foot";
    NONE = "shims-none", "A foot from the side, standing clear of the base by the gap.";
    ONE = "shims-one", "A foot from the side: the measured gap at the left, one shim under the foot.";
    PACK = "shims-pack", "Pack: {pack}";
    MANY = "shims-many", "A foot from the side: the measured gap at the left, a pack of {count} shims under the foot.";
    GAP = "shims-gap", "Gap";
    LEAF = "shims-leaf", "Leaf {number} from the base";
} }

/// One shim of the pack.
#[derive(Debug, Clone)]
pub struct Leaf {
    /// Thickness.
    pub thickness: f64,
    /// Label of the thickness.
    pub label: Option<String>,
}

/// A foot from the side with the measured gap at the left and the pack of shims at the right.
///
/// Gap and leaves share one upright scale; the foot itself is not to scale. A pack thicker than the
/// gap lifts the foot off a dashed line that shows the gap as measured.
#[derive(Debug, Clone)]
pub struct ShimPack {
    /// Identifier, unique in the page.
    pub id: String,
    /// Measured gap.
    pub gap: f64,
    /// Leaves from the base upwards, same unit. May be empty: the gap alone is drawn.
    pub leaves: Vec<Leaf>,
    /// Label of the gap.
    pub gap_label: Option<String>,
    /// Label of the whole pack.
    pub pack_label: Option<String>,
}

/// Height on the sheet of the gap or the pack, whichever is greater.
const TALL: f64 = 120.0;
/// Width of the foot on the sheet.
const FOOT: f64 = 190.0;

impl ShimPack {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for a negative gap or thickness, more than 20 leaves, or a value that
    /// is no number; [`FigureError::Empty`] when there is neither gap nor leaf.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let gap = within("gap", self.gap, 0.0, LARGEST)?;
        within("number of leaves", self.leaves.len() as f64, 0.0, 20.0)?;
        let mut pack = 0.0;
        for leaf in &self.leaves {
            pack += within("thickness", leaf.thickness, 0.0, LARGEST)?;
        }
        let most = gap.max(pack);
        if most <= 0.0 {
            return Err(FigureError::Empty { input: "gap" });
        }
        let scale = TALL / most;
        let mut sketch = Sketch::new();
        let underside = -most * scale;
        base_and_foot(&mut sketch, underside);
        if pack > gap {
            sketch.line(pt(-24.0, -gap * scale), pt(FOOT, -gap * scale), Line::Hidden);
        }
        let mut level = 0.0;
        let (left, right) = (0.34 * FOOT, FOOT - 6.0);
        // Labels of thin leaves would overlap; they are spread evenly and led to their leaves.
        let shown = self.leaves.iter().filter(|leaf| leaf.label.is_some()).count();
        let room = (17.0 * shown as f64).max(pack * scale);
        let mut row = 0.0;
        for leaf in &self.leaves {
            let top = level - leaf.thickness * scale;
            sketch.rect(Area { low: pt(left, top), high: pt(right, level) }, Line::Outline, Fill::Tint);
            if let Some(words) = &leaf.label {
                let spread = -0.5 * pack * scale + 0.5 * room - room * (row + 0.5) / shown as f64;
                sketch.line(pt(right, 0.5 * (top + level)), pt(FOOT + 30.0, spread), Line::Thin);
                sketch.line(pt(FOOT + 30.0, spread), pt(FOOT + 38.0, spread), Line::Thin);
                sketch.text(pt(FOOT + 42.0, spread), Anchor::Start, words);
                row += 1.0;
            }
            level = top;
        }
        let gap_mark = pt(0.0, -gap * scale);
        if gap > 0.0 {
            sketch.dimension(gap_mark, pt(0.0, 0.0), pt(-24.0, 0.0), self.gap_label.as_deref());
        }
        if let (true, Some(words)) = (pack > 0.0, &self.pack_label) {
            sketch.note(&PACK.say(&[("pack", words)]));
        }
        Ok(sketch.finish(&self.id, TITLE.text(), &self.description(), self.table()))
    }

    fn description(&self) -> String {
        match self.leaves.len() {
            0 => NONE.text().to_owned(),
            1 => ONE.text().to_owned(),
            many => MANY.say(&[("count", &many.to_string())]),
        }
    }

    fn table(&self) -> Vec<(String, String)> {
        let mut table = rows(&[(GAP, &self.gap_label)]);
        for (i, leaf) in self.leaves.iter().enumerate() {
            if let Some(label) = &leaf.label {
                table.push((LEAF.say(&[("number", &(i + 1).to_string())]), label.clone()));
            }
        }
        table.extend(rows(&[(WHOLE, &self.pack_label)]));
        table
    }
}

fn base_and_foot(sketch: &mut Sketch, underside: f64) {
    let base = Area { low: pt(-36.0, 0.0), high: pt(FOOT + 16.0, 16.0) };
    sketch.hatch(&base.corners(), 8.0);
    sketch.line(base.low, pt(base.high.x, 0.0), Line::Outline);
    let foot = Area { low: pt(0.0, underside - 34.0), high: pt(FOOT, underside) };
    sketch.rect(foot, Line::Outline, Fill::Tint);
    let axis = 0.62 * FOOT;
    for side in [-11.0, 11.0] {
        sketch.line(pt(axis + side, foot.low.y), pt(axis + side, foot.high.y), Line::Hidden);
    }
    // The bolt is drawn by its axis alone: it is out while shims go in.
    sketch.line(pt(axis, foot.low.y - 16.0), pt(axis, 22.0), Line::Centre);
}
