//! Charts by a plotting library, drawn on the same board as everything else: the library lays out scales, grid and
//! series; lines, letters, description and table are those of [`Sketch`].
//!
//! Only charts that no browser draws are made so: the library needs a browser's own interface wherever it is built for
//! one, and is several times as large as all our drawings.

use core::convert::Infallible;

use plotters::prelude::{DrawingBackend, RGBColor, ShapeStyle};
use plotters::style::text_anchor::{HPos, VPos};
use plotters_backend::{BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingErrorKind};

use super::geometry::{Area, Pt, pt};
use super::kit::{Fill, Line, Sketch};
use super::label::{Anchor, SIZE, width};

/// The library counts in whole points; a hundredth of ours is fine enough for any sheet.
const FINE: f64 = 100.0;

/// `length` in the library's points.
pub(super) fn points(length: f64) -> i32 {
    (length * FINE).round() as i32
}

/// What the library is told for one of our lines: it carries a width, which [`Board`] reads back. There are no colours.
pub(super) fn pen(line: Line) -> ShapeStyle {
    let stroke_width = match line {
        Line::Thin => 1,
        Line::Outline => 2,
        Line::Hidden => 3,
        Line::Centre => 4,
        Line::Bare => 0,
    };
    ShapeStyle { color: RGBColor(0, 0, 0).into(), filled: false, stroke_width }
}

fn line(style: &impl BackendStyle) -> Line {
    match style.stroke_width() {
        0 => Line::Bare,
        2 => Line::Outline,
        3 => Line::Hidden,
        4 => Line::Centre,
        _ => Line::Thin,
    }
}

fn at((x, y): BackendCoord) -> Pt {
    pt(f64::from(x) / FINE, f64::from(y) / FINE)
}

type Drawn = Result<(), DrawingErrorKind<Infallible>>;

/// A sketch that the library draws on.
pub(super) struct Board<'a> {
    sketch: &'a mut Sketch,
    size: (u32, u32),
}

impl<'a> Board<'a> {
    /// The part of `sketch` from its origin to `width` and `height`.
    pub(super) fn new(sketch: &'a mut Sketch, width: f64, height: f64) -> Self {
        Self { sketch, size: (points(width).unsigned_abs(), points(height).unsigned_abs()) }
    }
}

impl DrawingBackend for Board<'_> {
    type ErrorType = Infallible;

    fn get_size(&self) -> (u32, u32) {
        self.size
    }

    fn ensure_prepared(&mut self) -> Drawn {
        Ok(())
    }

    fn present(&mut self) -> Drawn {
        Ok(())
    }

    fn draw_pixel(&mut self, point: BackendCoord, _: BackendColor) -> Drawn {
        self.sketch.dot(at(point), 0.5);
        Ok(())
    }

    fn draw_line<S: BackendStyle>(&mut self, from: BackendCoord, to: BackendCoord, style: &S) -> Drawn {
        self.sketch.line(at(from), at(to), line(style));
        Ok(())
    }

    fn draw_rect<S: BackendStyle>(&mut self, one: BackendCoord, other: BackendCoord, style: &S, fill: bool) -> Drawn {
        let (one, other) = (at(one), at(other));
        let area =
            Area { low: pt(one.x.min(other.x), one.y.min(other.y)), high: pt(one.x.max(other.x), one.y.max(other.y)) };
        self.sketch.rect(area, line(style), if fill { Fill::Tint } else { Fill::Open });
        Ok(())
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(&mut self, path: I, style: &S) -> Drawn {
        let path: Vec<Pt> = path.into_iter().map(at).collect();
        match path[..] {
            [from, to] => self.sketch.line(from, to, line(style)),
            _ => self.sketch.polyline(&path, line(style)),
        }
        Ok(())
    }

    fn draw_circle<S: BackendStyle>(&mut self, centre: BackendCoord, radius: u32, style: &S, fill: bool) -> Drawn {
        let fill = if fill { Fill::Solid } else { Fill::Open };
        self.sketch.circle(at(centre), f64::from(radius) / FINE, line(style), fill);
        Ok(())
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(&mut self, corners: I, _: &S) -> Drawn {
        let corners: Vec<Pt> = corners.into_iter().map(at).collect();
        self.sketch.polygon(&corners, Line::Bare, Fill::Tint);
        Ok(())
    }

    fn draw_text<T: BackendTextStyle>(&mut self, words: &str, style: &T, place: BackendCoord) -> Drawn {
        let anchor = match style.anchor().h_pos {
            HPos::Left => Anchor::Start,
            HPos::Center => Anchor::Middle,
            HPos::Right => Anchor::End,
        };
        let down = match style.anchor().v_pos {
            VPos::Top => 0.5 * SIZE,
            VPos::Center => 0.0,
            VPos::Bottom => -0.5 * SIZE,
        };
        self.sketch.text(at(place) + pt(0.0, down), anchor, words);
        Ok(())
    }

    fn estimate_text_size<T: BackendTextStyle>(
        &self,
        words: &str,
        _: &T,
    ) -> Result<(u32, u32), DrawingErrorKind<Infallible>> {
        Ok((points(width(words)).unsigned_abs(), points(SIZE).unsigned_abs()))
    }
}
