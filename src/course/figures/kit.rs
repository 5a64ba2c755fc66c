//! The drawing board: lines of three weights, arrows, dimensions, hatching, and the finished SVG.

use super::Figure;
use super::geometry::{Area, Pt, clip, polar, pt};
use super::label::{Anchor, SIZE, breaks};
use core::fmt::Write as _;

/// Least width of a sheet in user units, so that letters have one size in all figures.
pub(super) const WIDTH: f64 = 440.0;

/// The rule for the letters of a drawing: a margin round them in the colour of the paper.
macro_rules! letters_on {
    ($paper:literal) => {
        concat!(".fig-text{paint-order:stroke;stroke:", $paper, ";stroke-width:6px;stroke-linejoin:round}")
    };
}

/// Rules for a page's style sheet. They read `--figure-ink` and `--figure-paper`, and fall back on
/// the colours of the page; on paper the ink is black.
pub const STYLE: &str = concat!(
    ".fig{color:var(--figure-ink,var(--fg,currentColor));display:block;margin:0 auto;max-width:100%;height:auto}",
    letters_on!("var(--figure-paper,var(--bg,Canvas))"),
    "@media print{.fig{--figure-ink:#000;--figure-paper:#fff}}"
);

/// What [`STYLE`] comes to on paper, for a drawing in a PDF, which has no page around it.
#[cfg(feature = "pdf")]
pub(crate) const PAPER_STYLE: &str = letters_on!("#fff");

/// Added to [`STYLE`] in a file of its own.
pub(super) const STANDALONE_STYLE: &str = ".fig{--figure-ink:#111;--figure-paper:#fff;background:var(--figure-paper)}\
@media screen and (prefers-color-scheme:dark){.fig{--figure-ink:#eee;--figure-paper:#15171a}}";

/// What a line means; told apart by weight and dash, never by colour.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Line {
    /// Edge of a part.
    Outline,
    /// Dimension, leader, hatching, construction.
    Thin,
    /// Axis, pitch circle: long dash and dot.
    Centre,
    /// Reference level or hidden edge: short dashes.
    Hidden,
    /// No line round a tinted shape.
    Bare,
}

impl Line {
    fn attributes(self) -> &'static str {
        match self {
            Self::Outline => r#"class="fig-outline" stroke="currentColor" stroke-width="2" stroke-linejoin="round""#,
            Self::Thin => r#"class="fig-thin" stroke="currentColor" stroke-width="1""#,
            Self::Centre => r#"class="fig-centre" stroke="currentColor" stroke-width="1" stroke-dasharray="12 3 3 3""#,
            Self::Hidden => r#"class="fig-hidden" stroke="currentColor" stroke-width="1.2" stroke-dasharray="6 4""#,
            Self::Bare => r#"class="fig-bare""#,
        }
    }
}

/// What is inside a closed shape.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Fill {
    /// Nothing.
    Open,
    /// A faint tint of the ink, light or dark as the page is.
    Tint,
    /// The ink.
    Solid,
}

impl Fill {
    fn attributes(self) -> &'static str {
        match self {
            Self::Open => r#"fill="none""#,
            Self::Tint => r#"fill="currentColor" fill-opacity="0.07""#,
            Self::Solid => r#"fill="currentColor""#,
        }
    }
}

/// A coordinate: at most two decimals, a full stop, never minus nought and never anything but a number.
pub(super) fn num(value: f64) -> String {
    // Whole hundredths: thousands of coordinates make a page, and this is several times as fast as writing decimals.
    let hundredths = if value.is_finite() { (value.clamp(-1e7, 1e7) * 100.0).round() as i64 } else { 0 };
    let sign = if hundredths < 0 { "-" } else { "" };
    let (whole, rest) = (hundredths.unsigned_abs() / 100, hundredths.unsigned_abs() % 100);
    match (rest / 10, rest % 10) {
        (0, 0) => format!("{sign}{whole}"),
        (tenths, 0) => format!("{sign}{whole}.{tenths}"),
        (tenths, last) => format!("{sign}{whole}.{tenths}{last}"),
    }
}

/// `words` for use in XML: marks escaped, apostrophes curved as every page prints them, white space single, characters XML
/// forbids left out. No drawing has feet or quotation marks of one stroke.
pub(super) fn escaped(words: &str) -> String {
    let mut out = String::with_capacity(words.len());
    for (i, word) in words.split(breaks).filter(|word| !word.is_empty()).enumerate() {
        if i > 0 {
            out.push(' ');
        }
        for c in word.chars() {
            match c {
                '&' => out.push_str("&amp;"),
                '<' => out.push_str("&lt;"),
                '>' => out.push_str("&gt;"),
                '"' => out.push_str("&quot;"),
                '\'' => out.push('’'),
                c if c.is_control() || matches!(c, '\u{fffe}' | '\u{ffff}') => {}
                c => out.push(c),
            }
        }
    }
    out
}

/// A drawing in the making. The sheet grows to hold whatever is drawn, so nothing is cut off.
pub(super) struct Sketch {
    shapes: String,
    letters: String,
    extent: Option<Area>,
    segments: Vec<(Pt, Pt)>,
    texts: Vec<Area>,
}

impl Sketch {
    pub(super) fn new() -> Self {
        Self { shapes: String::new(), letters: String::new(), extent: None, segments: Vec::new(), texts: Vec::new() }
    }

    pub(super) fn extent(&self) -> Option<Area> {
        self.extent
    }

    pub(super) fn segments(&self) -> &[(Pt, Pt)] {
        &self.segments
    }

    pub(super) fn texts(&self) -> &[Area] {
        &self.texts
    }

    fn cover(&mut self, area: Area) {
        self.extent = Some(self.extent.map_or(area, |extent| extent.joined(area)));
    }

    /// Keeps other labels away from `area`.
    pub(super) fn reserve(&mut self, area: Area) {
        self.cover(area);
        self.texts.push(area);
    }

    fn trace(&mut self, points: &[Pt]) {
        for point in points {
            self.cover(Area::about(*point, 2.0, 2.0));
        }
        self.segments.extend(points.windows(2).map(|pair| (pair[0], pair[1])));
    }

    fn element(&mut self, element: core::fmt::Arguments<'_>) {
        // Writing to a String cannot fail.
        let _ = self.shapes.write_fmt(element);
    }

    pub(super) fn line(&mut self, a: Pt, b: Pt, line: Line) {
        self.trace(&[a, b]);
        let (x1, y1, x2, y2) = (num(a.x), num(a.y), num(b.x), num(b.y));
        self.element(format_args!(r#"<line x1="{x1}" y1="{y1}" x2="{x2}" y2="{y2}" {}/>"#, line.attributes()));
    }

    /// An upright line at `x` from `top` to `bottom` that leaves out what stands in its way in words.
    pub(super) fn upright(&mut self, x: f64, top: f64, bottom: f64, line: Line) {
        let in_the_way = self.texts.iter().filter(|words| words.low.x - 3.0 <= x && x <= words.high.x + 3.0);
        let mut gaps: Vec<(f64, f64)> = in_the_way.map(|words| (words.low.y, words.high.y)).collect();
        gaps.sort_by(|a, b| a.0.total_cmp(&b.0));
        gaps.push((bottom, bottom));
        let mut from = top;
        for (low, high) in gaps {
            let to = low.min(bottom);
            if to > from {
                self.line(pt(x, from), pt(x, to), line);
            }
            from = from.max(high);
        }
    }

    /// Short separate lines, such as the marks of a scale, as one shape.
    pub(super) fn marks(&mut self, marks: &[(Pt, Pt)], line: Line) {
        let mut data = String::new();
        for (a, b) in marks {
            self.trace(&[*a, *b]);
            let _ = write!(data, "M{} {}L{} {}", num(a.x), num(a.y), num(b.x), num(b.y));
        }
        if !data.is_empty() {
            self.element(format_args!(r#"<path d="{data}" fill="none" {}/>"#, line.attributes()));
        }
    }

    /// An open run of straight lines.
    pub(super) fn polyline(&mut self, points: &[Pt], line: Line) {
        self.trace(points);
        self.element(format_args!(r#"<polyline points="{}" fill="none" {}/>"#, listed(points), line.attributes()));
    }

    /// A closed shape.
    pub(super) fn polygon(&mut self, points: &[Pt], line: Line, fill: Fill) {
        self.trace(points);
        if line == Line::Bare {
            // Words may stand on a tint.
            self.segments.truncate(self.segments.len() - points.len().saturating_sub(1));
        } else if let (Some(&first), Some(&last)) = (points.first(), points.last()) {
            self.segments.push((last, first));
        }
        let (points, line) = (listed(points), line.attributes());
        self.element(format_args!(r#"<polygon points="{points}" {} {line}/>"#, fill.attributes()));
    }

    pub(super) fn rect(&mut self, area: Area, line: Line, fill: Fill) {
        self.polygon(&area.corners(), line, fill);
    }

    pub(super) fn circle(&mut self, centre: Pt, radius: f64, line: Line, fill: Fill) {
        let round: Vec<Pt> =
            (0..=24).map(|i| polar(centre, radius, f64::from(i) * core::f64::consts::TAU / 24.0)).collect();
        self.trace(&round);
        let (x, y, r) = (num(centre.x), num(centre.y), num(radius));
        let (fill, line) = (fill.attributes(), line.attributes());
        self.element(format_args!(r#"<circle cx="{x}" cy="{y}" r="{r}" {fill} {line}/>"#));
    }

    /// The arc round `centre` from angle `from` to angle `to` (radians, clockwise from the right).
    pub(super) fn arc(&mut self, centre: Pt, radius: f64, from: f64, to: f64, line: Line) {
        let points: Vec<Pt> =
            (0..=16).map(|i| polar(centre, radius, from + (to - from) * f64::from(i) / 16.0)).collect();
        self.trace(&points);
        let (large, sweep) = (i32::from((to - from).abs() > core::f64::consts::PI), i32::from(to > from));
        let (a, b, r) = (points[0], points[16], num(radius));
        let (x1, y1, x2, y2) = (num(a.x), num(a.y), num(b.x), num(b.y));
        self.element(format_args!(
            r#"<path d="M{x1} {y1}A{r} {r} 0 {large} {sweep} {x2} {y2}" fill="none" {}/>"#,
            line.attributes()
        ));
    }

    /// The parabola from `a` to `b` whose tangents there meet at `meet`: a true one, being a
    /// quadratic curve. `beads` strings round beads of that diameter and spacing along it.
    pub(super) fn parabola(&mut self, a: Pt, meet: Pt, b: Pt, line: Line, beads: Option<(f64, f64)>) {
        let at = |t: f64| a * ((1.0 - t) * (1.0 - t)) + meet * (2.0 * t * (1.0 - t)) + b * (t * t);
        let points: Vec<Pt> = (0..=16).map(|i| at(f64::from(i) / 16.0)).collect();
        self.trace(&points);
        let data = format!("M{} {}Q{} {} {} {}", num(a.x), num(a.y), num(meet.x), num(meet.y), num(b.x), num(b.y));
        self.element(format_args!(r#"<path d="{data}" fill="none" {}/>"#, line.attributes()));
        if let Some((diameter, spacing)) = beads {
            let (w, gap) = (num(diameter), num(spacing));
            self.element(format_args!(
                r#"<path d="{data}" class="fig-rollers" fill="none" stroke="currentColor" stroke-width="{w}" stroke-linecap="round" stroke-dasharray="0 {gap}"/>"#
            ));
        }
    }

    /// A mark that fills a small circle.
    pub(super) fn dot(&mut self, at: Pt, radius: f64) {
        self.circle(at, radius, Line::Thin, Fill::Solid);
    }

    /// A solid arrowhead with its tip at `tip`, pointing along `direction`.
    pub(super) fn head(&mut self, tip: Pt, direction: Pt, length: f64) {
        let (back, side) = (direction.unit() * -length, direction.unit().quarter() * (0.32 * length));
        self.polygon(&[tip, tip + back + side, tip + back - side], Line::Thin, Fill::Solid);
    }

    /// A heavy arrow from `tail` to `tip`, for forces.
    pub(super) fn arrow(&mut self, tail: Pt, tip: Pt) {
        let length = (tip - tail).length();
        let head = length.min(11.0);
        self.line(tail, tip - (tip - tail).unit() * (0.8 * head), Line::Outline);
        self.head(tip, tip - tail, head);
    }

    /// A thin line that leads from a label to its part.
    pub(super) fn leader(&mut self, part: Pt, label: Pt) {
        self.line(part, label, Line::Thin);
    }

    /// The distance from `a` to `b`, measured on a line moved by `offset`, with its label beyond it.
    /// The arrows stand outside where there is no room within. Nothing is drawn without a label.
    pub(super) fn dimension(&mut self, a: Pt, b: Pt, offset: Pt, label: Option<&str>) {
        self.measured(a, b, offset, label, (b - a).length() >= 26.0);
    }

    /// As [`Self::dimension`], the arrows outside and the label beside them, where something else is measured beyond.
    pub(super) fn dimension_beside(&mut self, a: Pt, b: Pt, offset: Pt, label: Option<&str>) {
        self.measured(a, b, offset, label, false);
    }

    fn measured(&mut self, a: Pt, b: Pt, offset: Pt, label: Option<&str>, within: bool) {
        let Some(words) = label else { return };
        let (from, to, out) = (a + offset, b + offset, offset.unit());
        if offset.length() > 4.0 {
            for (part, end) in [(a, from), (b, to)] {
                self.line(part + out * 3.0, end + out * 4.0, Line::Thin);
            }
        }
        let along = (to - from).unit();
        let (mut end, mut beyond) = (from.middle(to), out);
        if within {
            self.line(from, to, Line::Thin);
            self.head(from, along * -1.0, 9.0);
            self.head(to, along, 9.0);
        } else {
            self.line(from - along * 16.0, to + along * 16.0, Line::Thin);
            self.head(from, along, 8.0);
            self.head(to, along * -1.0, 8.0);
            (end, beyond) = (to + along * 16.0, along);
        }
        self.label(end, 4.0, beyond, words);
    }

    /// Parallel lines at 45 degrees inside a convex polygon: cut material, or a part that carries.
    pub(super) fn hatch(&mut self, polygon: &[Pt], spacing: f64) {
        let along = |p: &Pt| p.x + p.y;
        let low = polygon.iter().map(along).fold(f64::INFINITY, f64::min);
        let high = polygon.iter().map(along).fold(f64::NEG_INFINITY, f64::max);
        let reach = polygon.iter().map(|p| p.x.abs() + p.y.abs()).fold(0.0, f64::max);
        let count = ((high - low) / spacing.max(1.0)).min(400.0);
        let mut data = String::new();
        for i in 1..400 {
            let level = low + spacing.max(1.0) * f64::from(i);
            if !count.is_finite() || f64::from(i) >= count {
                break;
            }
            let middle = pt(0.5 * level, 0.5 * level);
            if let Some((a, b)) = clip(middle + pt(reach, -reach), middle - pt(reach, -reach), polygon) {
                let _ = write!(data, "M{} {}L{} {}", num(a.x), num(a.y), num(b.x), num(b.y));
            }
        }
        for corner in polygon {
            self.cover(Area::about(*corner, 0.0, 0.0));
        }
        if !data.is_empty() {
            self.element(format_args!(r#"<path d="{data}" fill="none" {}/>"#, Line::Thin.attributes()));
        }
    }

    /// One line of words standing on `at`.
    pub(super) fn words(&mut self, at: Pt, anchor: Anchor, words: &str) {
        let anchor = match anchor {
            Anchor::Start => "start",
            Anchor::Middle => "middle",
            Anchor::End => "end",
        };
        let _ = write!(
            self.letters,
            r#"<text class="fig-text" x="{}" y="{}" text-anchor="{anchor}" fill="currentColor">{}</text>"#,
            num(at.x),
            num(at.y),
            escaped(words)
        );
    }

    /// Closes the drawing. `id` must be unique in the page; characters an id cannot have become hyphens.
    pub(super) fn finish(self, id: &str, title: &str, description: &str, table: Vec<(String, String)>) -> Figure {
        let id: String = id.chars().map(|c| if c.is_ascii_alphanumeric() || c == '_' { c } else { '-' }).collect();
        let extent = self.extent.unwrap_or(Area::about(pt(0.0, 0.0), WIDTH, 100.0)).grown(8.0);
        let width = extent.width().max(WIDTH).ceil();
        let (left, top) = ((extent.centre().x - 0.5 * width).floor(), extent.low.y.floor());
        let (view_width, view_height) = (width + 1.0, extent.height().ceil() + 1.0);
        let (x, y, w, h) = (num(left), num(top), num(view_width), num(view_height));
        let most = num((view_width * 1.35).round());
        let (heading, text) = (escaped(title), escaped(description));
        let svg = format!(
            r#"<svg xmlns="http://www.w3.org/2000/svg" class="fig" role="img" aria-labelledby="fig-{id}-title fig-{id}-desc" viewBox="{x} {y} {w} {h}" width="{most}" font-family="sans-serif" font-size="{size}" fill="none"><title id="fig-{id}-title">{heading}</title><desc id="fig-{id}-desc">{text}</desc>{shapes}{letters}</svg>"#,
            size = num(SIZE),
            shapes = self.shapes,
            letters = self.letters,
        );
        Figure { svg, title: title.to_owned(), description: description.to_owned(), table }
    }
}

fn listed(points: &[Pt]) -> String {
    let mut out = String::new();
    for (i, point) in points.iter().enumerate() {
        let _ = write!(out, "{}{},{}", if i > 0 { " " } else { "" }, num(point.x), num(point.y));
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_plain() {
        let given = [1.0, -0.001, 2.346, f64::NAN, f64::NEG_INFINITY, 100.0, -12.5, -0.05];
        assert_eq!(given.map(num), ["1", "0", "2.35", "0", "0", "100", "-12.5", "-0.05"]);
    }

    #[test]
    fn words_are_escaped() {
        assert_eq!(escaped("a<b & \"c\"\n\u{1} d's"), "a&lt;b &amp; &quot;c&quot;  d’s");
    }

    #[test]
    fn a_dimension_without_label_leaves_no_mark() {
        let mut sketch = Sketch::new();
        sketch.dimension(pt(0.0, 0.0), pt(50.0, 0.0), pt(0.0, 20.0), None);
        assert!(sketch.extent().is_none());
    }
}
