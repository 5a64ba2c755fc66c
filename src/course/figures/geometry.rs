//! Points, boxes and clipping on the sheet (y grows downwards, as in SVG).

use core::ops::{Add, Mul, Sub};

/// A point or a vector on the sheet, in user units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Pt {
    pub(super) x: f64,
    pub(super) y: f64,
}

/// Shorthand for a [`Pt`].
pub(super) const fn pt(x: f64, y: f64) -> Pt {
    Pt { x, y }
}

impl Add for Pt {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        pt(self.x + other.x, self.y + other.y)
    }
}

impl Sub for Pt {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        pt(self.x - other.x, self.y - other.y)
    }
}

impl Mul<f64> for Pt {
    type Output = Self;
    fn mul(self, by: f64) -> Self {
        pt(self.x * by, self.y * by)
    }
}

impl Pt {
    pub(super) fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }

    pub(super) fn length(self) -> f64 {
        self.dot(self).sqrt()
    }

    /// The vector of length 1 in the same direction; to the right where there is no direction.
    pub(super) fn unit(self) -> Self {
        let length = self.length();
        if length > 1e-9 { self * (1.0 / length) } else { pt(1.0, 0.0) }
    }

    /// Turned a quarter clockwise on the sheet.
    pub(super) fn quarter(self) -> Self {
        pt(-self.y, self.x)
    }

    /// Turned clockwise on the sheet by `angle` in radians.
    pub(super) fn turned(self, angle: f64) -> Self {
        let (s, c) = (libm::sin(angle), libm::cos(angle));
        pt(self.x * c - self.y * s, self.x * s + self.y * c)
    }

    /// The point halfway to `other`.
    pub(super) fn middle(self, other: Self) -> Self {
        (self + other) * 0.5
    }
}

/// The point at `angle` (radians, clockwise from the right) and `radius` from `centre`.
pub(super) fn polar(centre: Pt, radius: f64, angle: f64) -> Pt {
    centre + pt(radius, 0.0).turned(angle)
}

/// An upright box.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Area {
    pub(super) low: Pt,
    pub(super) high: Pt,
}

impl Area {
    pub(super) fn about(centre: Pt, width: f64, height: f64) -> Self {
        let half = pt(0.5 * width, 0.5 * height);
        Self { low: centre - half, high: centre + half }
    }

    pub(super) fn grown(self, by: f64) -> Self {
        Self { low: self.low - pt(by, by), high: self.high + pt(by, by) }
    }

    pub(super) fn joined(self, other: Self) -> Self {
        Self {
            low: pt(self.low.x.min(other.low.x), self.low.y.min(other.low.y)),
            high: pt(self.high.x.max(other.high.x), self.high.y.max(other.high.y)),
        }
    }

    pub(super) fn centre(self) -> Pt {
        self.low.middle(self.high)
    }

    pub(super) fn width(self) -> f64 {
        self.high.x - self.low.x
    }

    pub(super) fn height(self) -> f64 {
        self.high.y - self.low.y
    }

    pub(super) fn corners(self) -> [Pt; 4] {
        [self.low, pt(self.high.x, self.low.y), self.high, pt(self.low.x, self.high.y)]
    }

    pub(super) fn overlaps(self, other: Self) -> bool {
        self.low.x < other.high.x && other.low.x < self.high.x && self.low.y < other.high.y && other.low.y < self.high.y
    }

    /// Whether the straight line from `a` to `b` enters the box.
    pub(super) fn crossed_by(self, a: Pt, b: Pt) -> bool {
        // Most lines lie clear of the box; the cheap test comes first.
        a.x.min(b.x) < self.high.x
            && a.x.max(b.x) > self.low.x
            && a.y.min(b.y) < self.high.y
            && a.y.max(b.y) > self.low.y
            && clip(a, b, &self.corners()).is_some()
    }
}

/// The part of the line from `a` to `b` inside a convex polygon, whichever way round it is listed.
pub(super) fn clip(a: Pt, b: Pt, polygon: &[Pt]) -> Option<(Pt, Pt)> {
    let centre = polygon.iter().fold(pt(0.0, 0.0), |sum, p| sum + *p) * (1.0 / polygon.len().max(1) as f64);
    let along = b - a;
    let (mut from, mut to) = (0.0_f64, 1.0_f64);
    for (i, &corner) in polygon.iter().enumerate() {
        let edge = polygon[(i + 1) % polygon.len()] - corner;
        let inward = if edge.quarter().dot(centre - corner) >= 0.0 { edge.quarter() } else { edge.quarter() * -1.0 };
        let (start, rate) = (inward.dot(a - corner), inward.dot(along));
        if rate == 0.0 {
            if start < 0.0 {
                return None;
            }
        } else if rate > 0.0 {
            from = from.max(-start / rate);
        } else {
            to = to.min(-start / rate);
        }
    }
    (from < to).then(|| (a + along * from, a + along * to))
}

/// The parts of the line from `a` to `b` that lie outside a circle.
pub(super) fn outside_circle(a: Pt, b: Pt, centre: Pt, radius: f64) -> Vec<(Pt, Pt)> {
    let (along, to_a) = (b - a, a - centre);
    let (square, half) = (along.dot(along), along.dot(to_a));
    let root = half * half - square * (to_a.dot(to_a) - radius * radius);
    if root <= 0.0 || square == 0.0 {
        return vec![(a, b)];
    }
    let (enter, leave) = ((-half - root.sqrt()) / square, (-half + root.sqrt()) / square);
    let part = |from: f64, to: f64| {
        let (from, to) = (from.clamp(0.0, 1.0), to.clamp(0.0, 1.0));
        (to - from > 1e-6).then(|| (a + along * from, a + along * to))
    };
    [part(0.0, enter), part(leave, 1.0)].into_iter().flatten().collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn clip_keeps_the_inner_part() {
        let square = Area::about(pt(0.0, 0.0), 2.0, 2.0).corners();
        assert_eq!(clip(pt(-3.0, 0.0), pt(3.0, 0.0), &square), Some((pt(-1.0, 0.0), pt(1.0, 0.0))));
        assert_eq!(clip(pt(-3.0, 2.0), pt(3.0, 2.0), &square), None);
        assert_eq!(clip(pt(-3.0, 3.5), pt(0.0, 0.5), &square).map(|(_, to)| to), Some(pt(0.0, 0.5)));
    }

    #[test]
    fn a_circle_cuts_a_line_in_two() {
        let parts = outside_circle(pt(-2.0, 0.0), pt(2.0, 0.0), pt(0.0, 0.0), 1.0);
        assert_eq!(parts, vec![(pt(-2.0, 0.0), pt(-1.0, 0.0)), (pt(1.0, 0.0), pt(2.0, 0.0))]);
        assert_eq!(outside_circle(pt(-2.0, 2.0), pt(2.0, 2.0), pt(0.0, 0.0), 1.0).len(), 1);
        assert!(outside_circle(pt(-0.5, 0.0), pt(0.5, 0.0), pt(0.0, 0.0), 1.0).is_empty());
    }
}
