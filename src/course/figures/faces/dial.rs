//! A dial indicator.

use core::f64::consts::TAU;

use drivecourse_machine::face::{DIAL_DIVISIONS, DialHands};

use super::super::geometry::{polar, pt};
use super::super::kit::{Fill, Line, Sketch};
use super::super::label::Anchor;
use super::super::{Figure, FigureError, within};
use super::{READING, READING_NAME};
use super::{hand, inward, past};
use drivecourse_machine::messages;

messages! { pub(super) SAYS {
    TITLE = "dial-title", "Dial indicator";
    ABOUT = "dial-about", "Dial indicator, {division} a division, 100 divisions or {turn} a turn. The outer row runs clockwise from 0 to 90 for the plunger pushed in, plus; the inner row runs anticlockwise for the plunger let out, minus. The long hand stands {long}. The small hand stands {small}.";
    LONG_PLACE = "dial-long-place", "{outer} on the outer row, {inner} on the inner row";
    BETWEEN = "dial-between", "between {low} and {high}";
    AT_NUMBER = "dial-at-number", "at {number}";
    DIVISION = "dial-division", "One division";
    TURN = "dial-turn", "One turn";
    LONG = "dial-long", "Long hand";
    SMALL_HAND = "dial-small-hand", "Small hand";
} }

/// A dial indicator: a long hand over 100 divisions, numbered clockwise for the plunger pushed in and anticlockwise
/// for the plunger let out, and a small hand that counts the turns to either side.
#[derive(Debug, Clone)]
pub struct DialFace {
    /// Identifier, unique in the page.
    pub id: String,
    /// Where the hands stand.
    pub hands: DialHands,
    /// One division with its unit, as it is printed on the face (`0.01 mm`).
    pub division: String,
    /// One turn with its unit (`1 mm`).
    pub turn: String,
    /// The reading, if it is to be told.
    pub reading: Option<String>,
}

/// Radius of the face.
const RADIUS: f64 = 172.0;
/// Where the small dial lies below the middle, and its radius.
const SMALL: (f64, f64) = (56.0, 44.0);
/// Places round the small dial; the hand may go half of them to either side.
const PLACES: u32 = 8;

impl DialFace {
    /// Draws the figure.
    ///
    /// # Errors
    /// [`FigureError::OutOfRange`] for more turns than the small dial counts.
    pub fn draw(&self) -> Result<Figure, FigureError> {
        let DialHands { out, turns, divisions } = self.hands;
        let all = f64::from(DIAL_DIVISIONS);
        let divisions = within("divisions", divisions, 0.0, all)?;
        let sign = if out { -1.0 } else { 1.0 };
        let made = sign * within("turns", f64::from(turns) + divisions / all, 0.0, f64::from(PLACES / 2 - 1))?;

        let mut sketch = Sketch::new();
        let middle = pt(0.0, 0.0);
        let top = -0.25 * TAU;
        sketch.circle(middle, RADIUS + 8.0, Line::Outline, Fill::Open);
        let (mut long, mut short) = (Vec::new(), Vec::new());
        for mark in 0..DIAL_DIVISIONS {
            let angle = top + TAU * f64::from(mark) / all;
            let (list, length) = match mark {
                _ if mark % 10 == 0 => (&mut long, 20.0),
                _ if mark % 5 == 0 => (&mut short, 15.0),
                _ => (&mut short, 9.0),
            };
            list.push(inward(middle, RADIUS, length, angle));
        }
        sketch.marks(&short, Line::Thin);
        sketch.marks(&long, Line::Outline);
        for number in (0..DIAL_DIVISIONS).step_by(10) {
            let turn = TAU * f64::from(number) / all;
            sketch.text(polar(middle, RADIUS - 32.0, top + turn), Anchor::Middle, &number.to_string());
            if number > 0 {
                let words = format!("\u{2212}{number}");
                sketch.text(polar(middle, RADIUS - 62.0, top - turn), Anchor::Middle, &words);
            }
        }
        sketch.text(pt(0.0, -76.0), Anchor::Middle, &self.division);
        let centre = pt(0.0, SMALL.0);
        sketch.circle(centre, SMALL.1, Line::Thin, Fill::Open);
        for place in 0..PLACES {
            let angle = top + TAU * f64::from(place) / f64::from(PLACES);
            sketch.marks(&[inward(centre, SMALL.1, 5.0, angle)], Line::Thin);
            let words = match place {
                _ if place < PLACES / 2 => place.to_string(),
                _ if place == PLACES / 2 => continue,
                _ => format!("\u{2212}{}", PLACES - place),
            };
            sketch.text(polar(centre, SMALL.1 - 14.0, angle), Anchor::Middle, &words);
        }
        hand(&mut sketch, centre, 24.0, top + TAU * made / f64::from(PLACES), 3.5);
        hand(&mut sketch, middle, RADIUS - 3.0, top + sign * TAU * divisions / all, 7.0);
        if let Some(reading) = &self.reading {
            sketch.note(&READING.say(&[("reading", reading)]));
        }
        let description = ABOUT.say(&[
            ("division", &self.division),
            ("turn", &self.turn),
            ("long", &self.long_hand()),
            ("small", &self.small_hand()),
        ]);
        Ok(sketch.finish(&self.id, TITLE.text(), &description, self.table()))
    }

    /// Where the long hand stands, on both rows.
    fn long_hand(&self) -> String {
        let all = f64::from(DIAL_DIVISIONS);
        let clockwise = if self.hands.out { (all - self.hands.divisions) % all } else { self.hands.divisions };
        let row = |divisions: f64, sign: &str| {
            let number = (divisions / 10.0 + 1e-9).floor() * 10.0;
            let sign = if number == 0.0 { "" } else { sign };
            past((divisions - number).max(0.0), &format!("{sign}{number:.0}"))
        };
        let (outer, inner) = (row(clockwise, ""), row((all - clockwise) % all, "\u{2212}"));
        LONG_PLACE.say(&[("outer", &outer), ("inner", &inner)])
    }

    /// Between which numbers the small hand stands.
    fn small_hand(&self) -> String {
        let sign = if self.hands.out { "\u{2212}" } else { "" };
        let number = |turns: u32| if turns == 0 { "0".to_owned() } else { format!("{sign}{turns}") };
        let low = number(self.hands.turns);
        if self.hands.divisions == 0.0 {
            AT_NUMBER.say(&[("number", &low)])
        } else {
            BETWEEN.say(&[("low", &low), ("high", &number(self.hands.turns + 1))])
        }
    }

    fn table(&self) -> Vec<(String, String)> {
        let mut table = vec![
            (DIVISION.text().to_owned(), self.division.clone()),
            (TURN.text().to_owned(), self.turn.clone()),
            (LONG.text().to_owned(), self.long_hand()),
            (SMALL_HAND.text().to_owned(), self.small_hand()),
        ];
        table.extend(self.reading.iter().map(|reading| (READING_NAME.text().to_owned(), reading.clone())));
        table
    }
}
