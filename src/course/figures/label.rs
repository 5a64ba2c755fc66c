//! Lettering: how wide words come out, where they break, and where there is room for them.

use super::geometry::{Area, Pt, clip, pt};
use super::kit::{Sketch, WIDTH};

/// Height of the letters in user units: about 11 pixels on a phone, 17 on a desk.
pub(crate) const SIZE: f64 = 14.0;
/// Distance from one line of words to the next.
pub(super) const LEADING: f64 = 16.0;
/// A label wider than this is broken between words.
const BREAK: f64 = 220.0;

/// Width of `words` in user units, on the generous side, since the reader's typeface is not known.
pub(super) fn width(words: &str) -> f64 {
    let em = |c: char| match c {
        'i' | 'j' | 'l' | 'I' | '.' | ',' | ':' | ';' | '\'' | '|' | '!' | ' ' | '°' | '′' => 0.33,
        'f' | 'r' | 't' | '(' | ')' | '/' | '-' => 0.42,
        'm' | 'w' | 'M' | 'W' | '%' | '@' => 0.95,
        c if c.is_uppercase() => 0.74,
        c if c.is_ascii() => 0.62,
        _ => 0.70,
    };
    SIZE * words.chars().map(em).sum::<f64>()
}

/// Breaks `words` between words into lines of at most `limit` user units (one word may be longer).
/// The lines are made as even as their number allows; a no-break space is kept.
fn broken(words: &str, limit: f64) -> Vec<String> {
    let mut lines = filled(words, limit);
    let mut narrower = limit - 4.0;
    while lines.len() > 1 && narrower > 0.0 {
        let even = filled(words, narrower);
        if even.len() > lines.len() {
            break;
        }
        lines = even;
        narrower -= 4.0;
    }
    lines
}

fn filled(words: &str, limit: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in words.split(breaks).filter(|word| !word.is_empty()) {
        match lines.last_mut() {
            Some(line) if width(line) + width(word) + 0.33 * SIZE <= limit => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

/// Whether a line may end at this character.
pub(super) fn breaks(c: char) -> bool {
    c.is_whitespace() && c != '\u{a0}'
}

/// Which edge of the words sits on the given point.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Anchor {
    Start,
    Middle,
    End,
}

/// From where to where a leader is drawn.
type Leader = (Pt, Pt);

impl Sketch {
    /// Writes `words` with their middle height at `at.y`, whether or not there is room.
    pub(super) fn text(&mut self, at: Pt, anchor: Anchor, words: &str) {
        let lines = broken(words, WIDTH - 20.0);
        self.lettered(at, anchor, &lines);
    }

    /// Writes a remark centred below everything drawn so far.
    pub(super) fn note(&mut self, words: &str) {
        let Some(extent) = self.extent() else { return };
        let lines = broken(words, WIDTH - 20.0);
        let height = LEADING * lines.len() as f64;
        self.lettered(pt(extent.centre().x, extent.high.y + 8.0 + 0.5 * height), Anchor::Middle, &lines);
    }

    /// Writes `words` near `at`, at least `clear` away, preferably in the direction `toward`, where
    /// they hide the fewest lines and no other words; a leader is drawn when they had to move off.
    pub(super) fn label(&mut self, at: Pt, clear: f64, toward: Pt, words: &str) {
        // Beside something upright a narrow label keeps the sheet narrow.
        let lines = broken(words, if toward.unit().x.abs() > 0.8 { 0.5 * BREAK } else { BREAK });
        if lines.is_empty() {
            return;
        }
        let (w, h) = (widest(&lines), LEADING * lines.len() as f64);
        let mut best: Option<(f64, Pt, Option<Leader>)> = None;
        for (ring, extra) in [0.0, 8.0, 20.0, 34.0, 50.0, 70.0, 92.0].into_iter().enumerate() {
            for step in 0..17_u32 {
                let turn = f64::from(step.div_ceil(2)) * if step % 2 == 0 { -1.0 } else { 1.0 };
                let moved = 0.5 * turn.abs() + 0.9 * ring as f64;
                if best.is_some_and(|(least, ..)| moved >= least - 1e-9) {
                    continue;
                }
                let direction = toward.unit().turned(turn * core::f64::consts::PI / 8.0);
                let reach = clear + extra + direction.x.abs() * 0.5 * w + direction.y.abs() * 0.5 * h;
                let centre = at + direction * reach;
                let leader = leader(at + direction * clear, centre, (w, h), extra);
                let led = leader.map_or(0.0, |(from, to)| self.led_through(from, to));
                let cost = self.crowding(Area::about(centre, w, h)) + led + moved;
                if best.is_none_or(|(least, ..)| cost < least - 1e-9) {
                    best = Some((cost, centre, leader));
                }
            }
        }
        let Some((_, centre, leader)) = best else { return };
        if let Some((part, edge)) = leader {
            self.leader(part, edge);
        }
        self.lettered(centre, Anchor::Middle, &lines);
    }

    /// What a leader hides: 30 for each of the words that it goes through.
    fn led_through(&self, from: Pt, to: Pt) -> f64 {
        30.0 * self.texts().iter().filter(|words| words.crossed_by(from, to)).count() as f64
    }

    /// How much a label in `area` would hide: 30 for other words, 5 for each line, more for widening the sheet.
    fn crowding(&self, area: Area) -> f64 {
        let words = self.texts().iter().filter(|other| other.overlaps(area.grown(2.0))).count();
        let lines = self.segments().iter().filter(|(a, b)| area.grown(1.0).crossed_by(*a, *b)).count();
        let joined = self.extent().map_or(area, |extent| extent.joined(area));
        30.0 * words as f64 + 5.0 * lines.min(6) as f64 + 0.05 * (joined.width() - WIDTH + 16.0).max(0.0)
    }

    fn lettered(&mut self, at: Pt, anchor: Anchor, lines: &[String]) {
        let (w, h) = (widest(lines), LEADING * lines.len() as f64);
        let centre = match anchor {
            Anchor::Start => at + pt(0.5 * w, 0.0),
            Anchor::Middle => at,
            Anchor::End => at - pt(0.5 * w, 0.0),
        };
        for (i, line) in lines.iter().enumerate() {
            // The letters stand on a baseline about 0.35 of their size below their middle.
            let y = at.y - 0.5 * h + LEADING * (i as f64 + 0.5) + 0.35 * SIZE;
            self.words(pt(at.x, y), anchor, line);
        }
        self.reserve(Area::about(centre, w, h));
    }
}

/// The leader from `part` to words of the size (`w`, `h`) about `centre`, where they stand `extra` away; it ends just
/// short of the words.
fn leader(part: Pt, centre: Pt, (w, h): (f64, f64), extra: f64) -> Option<Leader> {
    let edge = clip(part, centre, &Area::about(centre, w + 5.0, h + 2.0).corners()).map_or(part, |(edge, _)| edge);
    (extra > 5.0 && (edge - part).length() > 12.0).then_some((part, edge))
}

fn widest(lines: &[String]) -> f64 {
    lines.iter().map(|line| width(line)).fold(0.0, f64::max)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_labels_break_between_words() {
        let lines = broken("centre distance between the two shafts 812 mm", 150.0);
        assert!(lines.len() > 1);
        assert!(lines.iter().all(|line| width(line) <= 150.0));
        assert_eq!(lines.join(" "), "centre distance between the two shafts 812 mm");
    }

    #[test]
    fn labels_move_out_of_each_others_way() {
        let mut sketch = Sketch::new();
        for _ in 0..4 {
            sketch.label(pt(0.0, 0.0), 5.0, pt(1.0, 0.0), "12.5 mm");
        }
        let texts = sketch.texts();
        for (i, a) in texts.iter().enumerate() {
            assert!(texts[i + 1..].iter().all(|b| !a.overlaps(*b)));
        }
    }
}
