//! One reading on the face of its instrument.

use drivecourse_machine::amount::{number, with_unit};
use drivecourse_machine::face::{
    DIAL_DIVISIONS, DialHands, VibrationRange, feeler_leaves, other_degrees, thermometer_range, thinnest_leaf,
};
use drivecourse_machine::{Face, Figures, QuantityId, System, Unit, amount};

use super::{Board, PortrayError};
use crate::figures::{
    DialFace, FeelerFace, Figure, FigureError, ScaleFace, SightGlassFace, ThermometerFace, VibrationFace,
};

/// Marks of a sight glass, with the word that a label begins with.
const OIL_MARKS: [(&str, &str); 2] = [("oil.low_mark", "low mark"), ("oil.high_mark", "high mark")];

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
                marks.push((word.to_owned(), self.divisions(self.unit.from_base(value))));
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
                range_label: format!("0 to {}", self.written(range.full)),
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
    Some(match face {
        Face::Dial => {
            let hands = DialHands::at(system, shown);
            let side =
                if hands.out { "minus side, so the inner row counts" } else { "plus side, so the outer row counts" };
            let turns = match hands.turns {
                0 => "less than one turn was made".to_owned(),
                1 => "one whole turn was made".to_owned(),
                turns => format!("{turns} whole turns were made"),
            };
            format!(
                "The small hand stands on the {side}, and {turns}; the long hand adds {:.0} divisions: {written}.",
                hands.divisions
            )
        }
        Face::Feeler => {
            let leaves = feeler_leaves(system, shown)?;
            let sum: Vec<_> = leaves.iter().map(|leaf| number(*leaf, face.figures(system))).collect();
            format!("The leaves that go in together, added: {} = {written}.", sum.join(" + "))
        }
        Face::VibrationMeter => {
            let row = if VibrationRange::of(shown).threes { "lower row, 0 to 3" } else { "upper row, 0 to 10" };
            format!("The switch says that the {row}, counts: {written}.")
        }
        Face::Thermometer => format!("The outer row counts, a degree a division: {written}."),
        Face::Scale | Face::SightGlass => {
            format!(
                "From the last number passed, count the divisions up to the {}: {written}.",
                match face {
                    Face::Scale => "edge",
                    _ => "flat of the oil",
                }
            )
        }
    })
}

#[cfg(test)]
mod tests;
