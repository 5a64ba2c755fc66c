//! Wrong turns of reading.

use super::{DIAL_DIVISIONS, DialHands, Face, VibrationRange, feeler_leaves, other_degrees, thinnest_leaf};
use crate::instrument::Figures;
use crate::unit::System;

/// A way to misread an instrument.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Slip {
    /// Only the long hand was read, though it has been round before.
    RevolutionMissed,
    /// The small hand was read up to the next number instead of down to the last one.
    RevolutionAdded,
    /// The row of the other direction was read.
    OtherWayRound,
    /// The direction of the hand was not minded.
    SignReversed,
    /// One division too many.
    ParallaxHigh,
    /// One division too few.
    ParallaxLow,
    /// The half division was left out.
    HalfDropped,
    /// Divisions of 1/64 were counted as 1/32.
    SixtyFourthsAsThirtySeconds,
    /// Divisions of 1/32 were counted as 1/16.
    ThirtySecondsAsSixteenths,
    /// Counted on from the number beyond the edge, though the marks run back from it.
    CountedBack,
    /// Counted from the number before the right one.
    NumberMissed,
    /// The thickest leaf alone was taken.
    ThickestOnly,
    /// The thinnest leaf of the pack was left out.
    LeafLeftOut,
    /// The leaf that no longer went in was counted.
    LeafTooMany,
    /// The inner row of the other unit was read.
    OtherUnitsRow,
    /// The row that belongs to another range was read.
    OtherRangeRow,
    /// The oil's edge, drawn up at the glass, was read instead of its level.
    EdgeOfOil,
}

impl Slip {
    /// Short name, for statistics.
    pub fn id(self) -> &'static str {
        match self {
            Self::RevolutionMissed => "revolution missed",
            Self::RevolutionAdded => "revolution added",
            Self::OtherWayRound => "row of the other direction",
            Self::SignReversed => "sign reversed",
            Self::ParallaxHigh => "one division high",
            Self::ParallaxLow => "one division low",
            Self::HalfDropped => "half division dropped",
            Self::SixtyFourthsAsThirtySeconds => "1/64 as 1/32",
            Self::ThirtySecondsAsSixteenths => "1/32 as 1/16",
            Self::CountedBack => "counted back",
            Self::NumberMissed => "number missed",
            Self::ThickestOnly => "thickest leaf only",
            Self::LeafLeftOut => "leaf left out",
            Self::LeafTooMany => "leaf too many",
            Self::OtherUnitsRow => "row of the other unit",
            Self::OtherRangeRow => "row of the other range",
            Self::EdgeOfOil => "edge of the oil",
        }
    }

    /// What it says to the person.
    pub fn says(self) -> &'static str {
        match self {
            Self::RevolutionMissed => {
                "You read the long hand alone; the small hand says that it has been round before, and each turn counts."
            }
            Self::RevolutionAdded => {
                "You took the small hand up to its next number; a turn counts only once the small hand has passed the number."
            }
            Self::OtherWayRound => {
                "You read the row of numbers that runs the other way; the small hand says which way the long hand went."
            }
            Self::SignReversed => {
                "The size is right and the sign is not: the small hand on the plus side means that the plunger was pushed in."
            }
            Self::ParallaxHigh => {
                "That is one division too many, as when the eye is not square in front of the mark; look at it straight and count again."
            }
            Self::ParallaxLow => {
                "That is one division too few, as when the eye is not square in front of the mark; look at it straight and count again."
            }
            Self::HalfDropped => {
                "You left out the half millimetre: the edge stands at a short mark between two whole ones."
            }
            Self::SixtyFourthsAsThirtySeconds => {
                "You counted the divisions as 1/32 in; there are eight of them in an eighth of an inch, so each is 1/64 in."
            }
            Self::ThirtySecondsAsSixteenths => {
                "You counted the divisions as 1/16 in; there are eight of them in a quarter of an inch, so each is 1/32 in."
            }
            Self::CountedBack => {
                "You started at the number beyond and added the marks that lie before it; count up from the last number passed."
            }
            Self::NumberMissed => "You counted from the number before the right one; start at the last number passed.",
            Self::ThickestOnly => {
                "You gave the thickest leaf alone; the gap is the sum of all the leaves that go in together."
            }
            Self::LeafLeftOut => {
                "You left out the thinnest leaf; the gap is the sum of all the leaves that go in together."
            }
            Self::LeafTooMany => "You counted the leaf that no longer goes in; the gap is the sum of those that do.",
            Self::OtherUnitsRow => "You read the inner row, which is marked in the other unit.",
            Self::OtherRangeRow => {
                "You read the row that belongs to another range; the switch says which number stands at full scale."
            }
            Self::EdgeOfOil => {
                "You read the edge that the oil draws up at the glass; the level is the flat of the surface, a division lower."
            }
        }
    }
}

/// A wrong reading and how people come by it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Misreading {
    /// How.
    pub slip: Slip,
    /// What they read, in the unit of the instrument.
    pub value: f64,
}

pub(super) fn misreadings(face: Face, system: System, shown: f64) -> Vec<Misreading> {
    let division = face.division(system, shown);
    let numbered = division * f64::from(face.divisions_numbered(system));
    let mut list = Vec::new();
    match face {
        Face::Dial => dial(system, shown, &mut list),
        Face::Scale | Face::SightGlass => {
            if face == Face::SightGlass {
                list.push((Slip::EdgeOfOil, shown + division));
            }
            match system {
                System::Si if face == Face::Scale => list.push((Slip::HalfDropped, (shown + 1e-9).floor())),
                System::Si => {}
                System::Us => {
                    let whole = (shown + 1e-9).floor();
                    let slip = match face {
                        Face::Scale => Slip::SixtyFourthsAsThirtySeconds,
                        _ => Slip::ThirtySecondsAsSixteenths,
                    };
                    list.push((slip, whole + 2.0 * (shown - whole)));
                }
            }
            from_number(shown, numbered, &mut list);
        }
        Face::Feeler => {
            let leaves = feeler_leaves(system, shown).unwrap_or_default();
            if let [thickest, .., thinnest] = leaves[..] {
                list.push((Slip::ThickestOnly, thickest));
                list.push((Slip::LeafLeftOut, shown - thinnest));
            }
            list.push((Slip::LeafTooMany, shown + thinnest_leaf(system)));
        }
        Face::Thermometer => {
            list.push((Slip::OtherUnitsRow, other_degrees(system, shown)));
            from_number(shown, numbered, &mut list);
        }
        Face::VibrationMeter => list.push((Slip::OtherRangeRow, VibrationRange::of(shown).other_row(shown))),
    }
    if face != Face::Feeler {
        list.push((Slip::ParallaxHigh, shown + division));
        list.push((Slip::ParallaxLow, shown - division));
    }
    tidied(face, system, shown, list)
}

/// Counting from the wrong number of a scale.
fn from_number(shown: f64, numbered: f64, list: &mut Vec<(Slip, f64)>) {
    let below = (shown / numbered + 1e-9).floor() * numbered;
    if shown - below > 1e-9 {
        list.push((Slip::CountedBack, below + numbered + (below + numbered - shown)));
    }
    list.push((Slip::NumberMissed, shown - numbered));
}

fn dial(system: System, shown: f64, list: &mut Vec<(Slip, f64)>) {
    let hands = DialHands::at(system, shown);
    let division = Face::Dial.division(system, shown);
    let turn = division * f64::from(DIAL_DIVISIONS);
    let sign = if hands.out { -1.0 } else { 1.0 };
    if hands.turns > 0 {
        list.push((Slip::RevolutionMissed, sign * hands.divisions * division));
    }
    list.push((Slip::RevolutionAdded, shown + sign * turn));
    if hands.divisions > 0.0 {
        let other = f64::from(DIAL_DIVISIONS) - hands.divisions;
        list.push((Slip::OtherWayRound, sign * (f64::from(hands.turns) * turn + other * division)));
    }
    list.push((Slip::SignReversed, -shown));
}

/// Readings as they would be written down: rounded, none below nought on a face without sign, each value once.
fn tidied(face: Face, system: System, shown: f64, list: Vec<(Slip, f64)>) -> Vec<Misreading> {
    let figures = match face {
        Face::VibrationMeter => Figures::Places(4),
        _ => face.figures(system),
    };
    let close = 0.5 * face.division(system, shown);
    let signed = matches!(face, Face::Dial | Face::Thermometer);
    let mut out: Vec<Misreading> = Vec::new();
    for (slip, value) in list {
        let value = figures.round(value);
        let known = out.iter().any(|other| (other.value - value).abs() < close);
        if !known && (value - shown).abs() > close && (signed || value > 0.0) {
            out.push(Misreading { slip, value });
        }
    }
    out
}
