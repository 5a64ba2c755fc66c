//! Wrong turns of reading.

use super::{DIAL_DIVISIONS, DialHands, Face, VibrationRange, feeler_leaves, other_degrees, thinnest_leaf};
use crate::instrument::Figures;
use crate::messages;
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

    /// The same as people are told it.
    pub fn name(self) -> &'static str {
        match self {
            Self::RevolutionMissed => NAMED_REVOLUTION_MISSED,
            Self::RevolutionAdded => NAMED_REVOLUTION_ADDED,
            Self::OtherWayRound => NAMED_OTHER_WAY_ROUND,
            Self::SignReversed => NAMED_SIGN_REVERSED,
            Self::ParallaxHigh => NAMED_PARALLAX_HIGH,
            Self::ParallaxLow => NAMED_PARALLAX_LOW,
            Self::HalfDropped => NAMED_HALF_DROPPED,
            Self::SixtyFourthsAsThirtySeconds => NAMED_SIXTY_FOURTHS_AS_THIRTY_SECONDS,
            Self::ThirtySecondsAsSixteenths => NAMED_THIRTY_SECONDS_AS_SIXTEENTHS,
            Self::CountedBack => NAMED_COUNTED_BACK,
            Self::NumberMissed => NAMED_NUMBER_MISSED,
            Self::ThickestOnly => NAMED_THICKEST_ONLY,
            Self::LeafLeftOut => NAMED_LEAF_LEFT_OUT,
            Self::LeafTooMany => NAMED_LEAF_TOO_MANY,
            Self::OtherUnitsRow => NAMED_OTHER_UNITS_ROW,
            Self::OtherRangeRow => NAMED_OTHER_RANGE_ROW,
            Self::EdgeOfOil => NAMED_EDGE_OF_OIL,
        }
        .text()
    }

    /// What it says to the person.
    pub fn says(self) -> &'static str {
        match self {
            Self::RevolutionMissed => REVOLUTION_MISSED,
            Self::RevolutionAdded => REVOLUTION_ADDED,
            Self::OtherWayRound => OTHER_WAY_ROUND,
            Self::SignReversed => SIGN_REVERSED,
            Self::ParallaxHigh => PARALLAX_HIGH,
            Self::ParallaxLow => PARALLAX_LOW,
            Self::HalfDropped => HALF_DROPPED,
            Self::SixtyFourthsAsThirtySeconds => SIXTY_FOURTHS_AS_THIRTY_SECONDS,
            Self::ThirtySecondsAsSixteenths => THIRTY_SECONDS_AS_SIXTEENTHS,
            Self::CountedBack => COUNTED_BACK,
            Self::NumberMissed => NUMBER_MISSED,
            Self::ThickestOnly => THICKEST_ONLY,
            Self::LeafLeftOut => LEAF_LEFT_OUT,
            Self::LeafTooMany => LEAF_TOO_MANY,
            Self::OtherUnitsRow => OTHER_UNITS_ROW,
            Self::OtherRangeRow => OTHER_RANGE_ROW,
            Self::EdgeOfOil => EDGE_OF_OIL,
        }
        .text()
    }
}

messages! { pub(crate) SAYS {
    REVOLUTION_MISSED = "slip-revolution-missed", "You read the long hand alone; the small hand says that it has been round before, and each turn counts.";
    REVOLUTION_ADDED = "slip-revolution-added", "You took the small hand up to its next number; a turn counts only once the small hand has passed the number.";
    OTHER_WAY_ROUND = "slip-other-way-round", "You read the row of numbers that runs the other way; the small hand says which way the long hand went.";
    SIGN_REVERSED = "slip-sign-reversed", "The size is right and the sign is not: the small hand on the plus side means that the plunger was pushed in.";
    PARALLAX_HIGH = "slip-parallax-high", "That is one division too many, as when the eye is not square in front of the mark; look at it straight and count again.";
    PARALLAX_LOW = "slip-parallax-low", "That is one division too few, as when the eye is not square in front of the mark; look at it straight and count again.";
    HALF_DROPPED = "slip-half-dropped", "You left out the half millimetre: the edge stands at a short mark between two whole ones.";
    SIXTY_FOURTHS_AS_THIRTY_SECONDS = "slip-sixty-fourths-as-thirty-seconds", "You counted the divisions as 1/32 in; there are eight of them in an eighth of an inch, so each is 1/64 in.";
    THIRTY_SECONDS_AS_SIXTEENTHS = "slip-thirty-seconds-as-sixteenths", "You counted the divisions as 1/16 in; there are eight of them in a quarter of an inch, so each is 1/32 in.";
    COUNTED_BACK = "slip-counted-back", "You started at the number beyond and added the marks that lie before it; count up from the last number passed.";
    NUMBER_MISSED = "slip-number-missed", "You counted from the number before the right one; start at the last number passed.";
    THICKEST_ONLY = "slip-thickest-only", "You gave the thickest leaf alone; the gap is the sum of all the leaves that go in together.";
    LEAF_LEFT_OUT = "slip-leaf-left-out", "You left out the thinnest leaf; the gap is the sum of all the leaves that go in together.";
    LEAF_TOO_MANY = "slip-leaf-too-many", "You counted the leaf that no longer goes in; the gap is the sum of those that do.";
    OTHER_UNITS_ROW = "slip-other-units-row", "You read the inner row, which is marked in the other unit.";
    OTHER_RANGE_ROW = "slip-other-range-row", "You read the row that belongs to another range; the switch says which number stands at full scale.";
    EDGE_OF_OIL = "slip-edge-of-oil", "You read the edge that the oil draws up at the glass; the level is the flat of the surface, a division lower.";
} }

messages! { pub(crate) NAMES {
    NAMED_REVOLUTION_MISSED = "slip-name-revolution-missed", "revolution missed";
    NAMED_REVOLUTION_ADDED = "slip-name-revolution-added", "revolution added";
    NAMED_OTHER_WAY_ROUND = "slip-name-other-way-round", "row of the other direction";
    NAMED_SIGN_REVERSED = "slip-name-sign-reversed", "sign reversed";
    NAMED_PARALLAX_HIGH = "slip-name-parallax-high", "one division high";
    NAMED_PARALLAX_LOW = "slip-name-parallax-low", "one division low";
    NAMED_HALF_DROPPED = "slip-name-half-dropped", "half division dropped";
    NAMED_SIXTY_FOURTHS_AS_THIRTY_SECONDS = "slip-name-sixty-fourths-as-thirty-seconds", "1/64 as 1/32";
    NAMED_THIRTY_SECONDS_AS_SIXTEENTHS = "slip-name-thirty-seconds-as-sixteenths", "1/32 as 1/16";
    NAMED_COUNTED_BACK = "slip-name-counted-back", "counted back";
    NAMED_NUMBER_MISSED = "slip-name-number-missed", "number missed";
    NAMED_THICKEST_ONLY = "slip-name-thickest-only", "thickest leaf only";
    NAMED_LEAF_LEFT_OUT = "slip-name-leaf-left-out", "leaf left out";
    NAMED_LEAF_TOO_MANY = "slip-name-leaf-too-many", "leaf too many";
    NAMED_OTHER_UNITS_ROW = "slip-name-other-units-row", "row of the other unit";
    NAMED_OTHER_RANGE_ROW = "slip-name-other-range-row", "row of the other range";
    NAMED_EDGE_OF_OIL = "slip-name-edge-of-oil", "edge of the oil";
} }

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
