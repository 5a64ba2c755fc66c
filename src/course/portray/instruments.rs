//! One reading on the face of its instrument.

use drivecourse_machine::amount::{number, with_unit};
use drivecourse_machine::face::{
    DIAL_DIVISIONS, DialHands, VibrationRange, feeler_leaves, other_degrees, thermometer_range, thinnest_leaf,
};
use drivecourse_machine::language::Message;
use drivecourse_machine::{Face, Figures, QuantityId, System, Unit, amount, messages};

use super::{Board, PortrayError};
use crate::figures::{
    DialFace, FeelerFace, Figure, FigureError, ScaleFace, SightGlassFace, ThermometerFace, VibrationFace,
};

/// Marks of a sight glass, with the word that a label begins with.
const OIL_MARKS: [(&str, Message); 2] = [("oil.low_mark", LOW_MARK), ("oil.high_mark", HIGH_MARK)];

messages! { pub(super) SAYS {
    LOW_MARK = "sight-glass-low-mark", "low mark";
    HIGH_MARK = "sight-glass-high-mark", "high mark";
    RANGE = "vibration-range", "0 to {full}";
    DIAL_IN = "how-read-dial-plus", "The small hand stands on the plus side, so the outer row counts, and {turns}; the long hand adds {divisions} divisions: {reading}.";
    DIAL_OUT = "how-read-dial-minus", "The small hand stands on the minus side, so the inner row counts, and {turns}; the long hand adds {divisions} divisions: {reading}.";
    NO_TURN = "how-read-no-turn", "less than one turn was made";
    ONE_TURN = "how-read-one-turn", "one whole turn was made";
    TURNS = "how-read-turns", "{turns} whole turns were made";
    LEAVES = "how-read-leaves", "The leaves that go in together, added: {sum} = {reading}.";
    LOWER_ROW = "how-read-lower-row", "The switch says that the lower row, 0 to 3, counts: {reading}.";
    UPPER_ROW = "how-read-upper-row", "The switch says that the upper row, 0 to 10, counts: {reading}.";
    OUTER_ROW = "how-read-outer-row", "The outer row counts, a degree a division: {reading}.";
    TO_EDGE = "how-read-to-edge", "From the last number passed, count the divisions up to the edge: {reading}.";
    TO_OIL = "how-read-to-oil", "From the last number passed, count the divisions up to the flat of the oil: {reading}.";
} }

/// Draws `quantity` on `face`.
pub(super) fn face(board: &Board<'_>, face: Face, quantity: QuantityId) -> Result<Figure, PortrayError> {
    let reading = Reading::of(board, face, quantity)?;
    match face {
        Face::Dial => reading.dial(board),
        Face::Scale => reading.scale(board),
        Face::Feeler => reading.feeler(board),
        Face::SightGlass => reading.sight_glass(board),
        Face::Thermometer => reading.thermometer(board),
        Face::VibrationMeter => reading.vibration(board),
    }
}

/// A value as it is to be read.
struct Reading {
    quantity: QuantityId,
    unit: &'static Unit,
    system: System,
    /// In the instrument's unit.
    shown: f64,
    /// One division there.
    division: f64,
    /// What is told about it: nothing while it is asked.
    label: Option<String>,
}

impl Reading {
    fn of(board: &Board<'_>, face: Face, quantity: QuantityId) -> Result<Self, PortrayError> {
        let system = board.system();
        let unit = quantity.get().unit(system);
        let shown = unit.from_base(board.need(quantity.get().id)?);
        let division = face.division(system, shown);
        let label = board.label(quantity.get().id).filter(|_| !board.asks(quantity.get().id));
        Ok(Self { quantity, unit, system, shown, division, label })
    }

    /// `value` in the instrument's unit, with that unit.
    fn written(&self, value: f64) -> String {
        with_unit(&number(value, Figures::Significant(1)), self.unit)
    }

    fn divisions(&self, value: f64) -> f64 {
        // A reading stands on a mark; what the last bit of a conversion says is no part of it.
        (value / self.division * 1e6).round() / 1e6
    }

    fn dial(self, board: &Board<'_>) -> Result<Figure, PortrayError> {
        board.finish(
            DialFace {
                id: board.id(),
                hands: DialHands::at(self.system, self.shown),
                division: self.written(self.division),
                turn: self.written(self.division * f64::from(DIAL_DIVISIONS)),
                reading: self.label,
            }
            .draw(),
        )
    }

    fn scale(self, board: &Board<'_>) -> Result<Figure, PortrayError> {
        board.finish(
            ScaleFace {
                id: board.id(),
                name: self.quantity.get().name.to_owned(),
                edge: self.divisions(self.shown),
                inch: self.system == System::Us,
                reading: self.label,
            }
            .draw(),
        )
    }

    fn feeler(self, board: &Board<'_>) -> Result<Figure, PortrayError> {
        let figures = Face::Feeler.figures(self.system);
        let mark = |leaf: f64| with_unit(&number(leaf, figures), self.unit);
        let Some(leaves) = feeler_leaves(self.system, self.shown) else {
            let (value, most) = (self.shown, self.division * 60.0);
            return board.finish(Err(FigureError::OutOfRange { input: "gap", value, min: 0.0, max: most }));
        };
        board.finish(
            FeelerFace {
                id: board.id(),
                leaves: leaves.into_iter().map(mark).collect(),
                refused: mark(thinnest_leaf(self.system)),
                reading: self.label,
            }
            .draw(),
        )
    }

    fn sight_glass(self, board: &Board<'_>) -> Result<Figure, PortrayError> {
        let mut marks = Vec::new();
        for (id, word) in OIL_MARKS {
            if let Some(value) = board.value(id).filter(|_| board.tells(id)) {
                marks.push((word.text().to_owned(), self.divisions(self.unit.from_base(value))));
            }
        }
        board.finish(
            SightGlassFace {
                id: board.id(),
                level: self.divisions(self.shown),
                inch: self.system == System::Us,
                marks,
                reading: self.label,
            }
            .draw(),
        )
    }

    fn thermometer(self, board: &Board<'_>) -> Result<Figure, PortrayError> {
        let range = thermometer_range(self.shown);
        let other = match self.system {
            System::Si => System::Us,
            System::Us => System::Si,
        };
        board.finish(
            ThermometerFace {
                id: board.id(),
                degrees: self.divisions(self.shown),
                range,
                unit: self.unit.symbol.to_owned(),
                inner_range: (other_degrees(self.system, range.0), other_degrees(self.system, range.1)),
                inner_unit: self.quantity.get().unit(other).symbol.to_owned(),
                reading: self.label,
            }
            .draw(),
        )
    }

    fn vibration(self, board: &Board<'_>) -> Result<Figure, PortrayError> {
        let range = VibrationRange::of(self.shown);
        board.finish(
            VibrationFace {
                id: board.id(),
                share: self.shown / range.full,
                range,
                range_label: RANGE.say(&[("full", &self.written(range.full))]),
                reading: self.label,
            }
            .draw(),
        )
    }
}

/// What is to be read of `quantity`, in words: for a worked solution.
pub(crate) fn how_read(quantity: QuantityId, base: f64, system: System) -> Option<String> {
    let drivecourse_machine::Known::Read(instrument) = quantity.get().known else { return None };
    let face = Face::of(instrument)?;
    let shown = quantity.get().unit(system).from_base(base);
    let written = amount::write(quantity.get(), base, system);
    let reading = ("reading", written.as_str());
    Some(match face {
        Face::Dial => {
            let hands = DialHands::at(system, shown);
            let turns = match hands.turns {
                0 => NO_TURN.text().to_owned(),
                1 => ONE_TURN.text().to_owned(),
                turns => TURNS.say(&[("turns", &turns.to_string())]),
            };
            let divisions = format!("{:.0}", hands.divisions);
            let says = if hands.out { DIAL_OUT } else { DIAL_IN };
            says.say(&[("turns", &turns), ("divisions", &divisions), reading])
        }
        Face::Feeler => {
            let leaves = feeler_leaves(system, shown)?;
            let sum: Vec<_> = leaves.iter().map(|leaf| number(*leaf, face.figures(system))).collect();
            LEAVES.say(&[("sum", &sum.join(" + ")), reading])
        }
        Face::VibrationMeter => {
            let says = if VibrationRange::of(shown).threes { LOWER_ROW } else { UPPER_ROW };
            says.say(&[reading])
        }
        Face::Thermometer => OUTER_ROW.say(&[reading]),
        Face::Scale => TO_EDGE.say(&[reading]),
        Face::SightGlass => TO_OIL.say(&[reading]),
    })
}

#[cfg(test)]
mod tests;
