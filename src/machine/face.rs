//! Instruments that are read off a face: how the face is divided, what it shows, and how it is misread.
//!
//! Everything here is in the unit the instrument is marked in. Drawings and questions both take the divisions from
//! here, so that a picture, its words and the foreseen wrong readings belong to the same face. The faces are plain ones
//! of the usual divisions (common practice, no source).

pub(crate) mod slip;

pub use slip::{Misreading, Slip};

use crate::instrument::{Figures, Instrument};
use crate::unit::System;

/// A face that a value is read off.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Face {
    /// Dial indicator with a small hand that counts the revolutions; two rows of numbers, one for each way round.
    Dial,
    /// Steel scale with an edge to read at.
    Scale,
    /// Marked leaves, of which some go into the gap together.
    Feeler,
    /// Sight glass with a scale beside it.
    SightGlass,
    /// Round thermometer with the other system's degrees on an inner row.
    Thermometer,
    /// Vibration meter with a range switch and a row of numbers for each kind of range.
    VibrationMeter,
}

impl Face {
    /// Every face.
    pub const ALL: [Self; 6] =
        [Self::Dial, Self::Scale, Self::Feeler, Self::SightGlass, Self::Thermometer, Self::VibrationMeter];

    /// The face of `instrument`, if it has one that is drawn.
    pub fn of(instrument: Instrument) -> Option<Self> {
        match instrument {
            Instrument::Dial => Some(Self::Dial),
            Instrument::Scale => Some(Self::Scale),
            Instrument::Feeler => Some(Self::Feeler),
            Instrument::SightGlass => Some(Self::SightGlass),
            Instrument::Thermometer => Some(Self::Thermometer),
            Instrument::VibrationMeter => Some(Self::VibrationMeter),
            _ => None,
        }
    }

    /// The instrument that has it.
    pub fn instrument(self) -> Instrument {
        match self {
            Self::Dial => Instrument::Dial,
            Self::Scale => Instrument::Scale,
            Self::Feeler => Instrument::Feeler,
            Self::SightGlass => Instrument::SightGlass,
            Self::Thermometer => Instrument::Thermometer,
            Self::VibrationMeter => Instrument::VibrationMeter,
        }
    }

    /// What its picture is called in items and chapters.
    pub fn picture(self) -> &'static str {
        match self {
            Self::Dial => "dial",
            Self::Scale => "scale",
            Self::Feeler => "feeler",
            Self::SightGlass => "sight-glass",
            Self::Thermometer => "thermometer",
            Self::VibrationMeter => "vibration-meter",
        }
    }

    /// The face whose picture is called `name`.
    pub fn from_picture(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|face| face.picture() == name)
    }

    /// Distance between two marks of the face where `shown` is read.
    pub fn division(self, system: System, shown: f64) -> f64 {
        match self {
            Self::VibrationMeter => VibrationRange::of(shown).division(),
            other => other.instrument().step(system).step,
        }
    }

    /// How readings are written.
    pub fn figures(self, system: System) -> Figures {
        self.instrument().step(system).figures
    }

    /// Divisions from one number of the face to the next.
    pub fn divisions_numbered(self, system: System) -> u32 {
        match (self, system) {
            // Centimetres of half millimetres; eighths and quarters of an inch.
            (Self::Scale, System::Si) => 20,
            (Self::Scale | Self::SightGlass, System::Us) => 8,
            _ => 10,
        }
    }

    /// The ways people misread `shown` on it, each with what they come to; no two come to the same.
    pub fn misreadings(self, system: System, shown: f64) -> Vec<Misreading> {
        slip::misreadings(self, system, shown)
    }
}

/// One turn of a dial indicator's long hand: 100 divisions.
pub const DIAL_DIVISIONS: u32 = 100;

/// Where the hands of a dial indicator stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DialHands {
    /// Whether the plunger was let out: the long hand went round anticlockwise, and the inner row counts.
    pub out: bool,
    /// Whole turns made.
    pub turns: u32,
    /// Divisions past nought on the row that counts.
    pub divisions: f64,
}

impl DialHands {
    /// The hands at `shown`.
    pub fn at(system: System, shown: f64) -> Self {
        let all = (shown.abs() / Face::Dial.division(system, shown) * 1e6).round() / 1e6;
        let turns = (all / f64::from(DIAL_DIVISIONS)).floor();
        Self { out: shown < 0.0, turns: turns as u32, divisions: all - turns * f64::from(DIAL_DIVISIONS) }
    }
}

/// The leaves of a feeler gauge, in steps of the instrument: 0.05 mm to 0.50 mm, or 0.002 in to 0.020 in.
const LEAVES: [u32; 6] = [1, 2, 3, 4, 6, 10];
/// More leaves than this do not lie flat in a gap.
const MOST_LEAVES: usize = 6;

/// The leaves that fill a gap of `shown`, thickest first, in the instrument's unit; `None` where it takes too many.
pub fn feeler_leaves(system: System, shown: f64) -> Option<Vec<f64>> {
    let step = Face::Feeler.division(system, shown);
    let mut left = (shown / step).round();
    if !(left >= 0.0 && left <= f64::from(LEAVES[LEAVES.len() - 1]) * MOST_LEAVES as f64) {
        return None;
    }
    let mut leaves = Vec::new();
    for leaf in LEAVES.into_iter().rev() {
        while left >= f64::from(leaf) {
            leaves.push(Face::Feeler.figures(system).round(f64::from(leaf) * step));
            left -= f64::from(leaf);
        }
    }
    (leaves.len() <= MOST_LEAVES).then_some(leaves)
}

/// The thinnest leaf: with it on top of the others, the pack no longer goes in.
pub fn thinnest_leaf(system: System) -> f64 {
    Face::Feeler.division(system, 0.0)
}

/// Least and greatest number of a round thermometer that shows `shown`: a hundred divisions, the hand well inside.
pub fn thermometer_range(shown: f64) -> (f64, f64) {
    let low = 50.0 * ((shown - 25.0) / 50.0).floor();
    (low, low + 100.0)
}

/// A thermometer's degrees in the other system's.
pub fn other_degrees(system: System, shown: f64) -> f64 {
    match system {
        System::Si => shown * 1.8 + 32.0,
        System::Us => (shown - 32.0) / 1.8,
    }
}

/// Where a vibration meter's range switch stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct VibrationRange {
    /// Value at full scale.
    pub full: f64,
    /// Whether the row from 0 to 3 counts; otherwise that from 0 to 10.
    pub threes: bool,
}

impl VibrationRange {
    /// The smallest range that holds `shown`.
    pub fn of(shown: f64) -> Self {
        const RANGES: [f64; 7] = [0.1, 0.3, 1.0, 3.0, 10.0, 30.0, 100.0];
        let place = RANGES.iter().position(|full| shown <= *full).unwrap_or(RANGES.len() - 1);
        Self { full: RANGES[place], threes: place % 2 == 1 }
    }

    /// Marks from nought to full scale on the row that counts.
    pub fn divisions(self) -> u32 {
        if self.threes { 30 } else { 50 }
    }

    /// Distance between two marks of that row.
    pub fn division(self) -> f64 {
        self.full / f64::from(self.divisions())
    }

    /// The same place of the hand read on the other row.
    pub fn other_row(self, shown: f64) -> f64 {
        if self.threes { shown / 0.3 } else { shown * 0.3 }
    }
}

#[cfg(test)]
mod tests;
