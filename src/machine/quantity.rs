//! A quantity: one thing about a drive that has a value.

use crate::instrument::{Display, Figures, Instrument};
use crate::unit::{Kind, System, Unit};

/// The ends of what may have any value.
#[cfg(not(wordless))]
pub(crate) const ANY: (f64, f64) = (f64::NEG_INFINITY, f64::INFINITY);

/// How a person comes to know a quantity's value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Known {
    /// Only by working it out.
    Worked,
    /// Printed on a plate, a drawing or a catalogue page; rounded as it is shown.
    Plate,
    /// Read with an instrument, rounded to its step.
    Read(Instrument),
}

/// One thing about a drive that has a value: its name, symbol, kind, units and how it is known.
///
/// Built as a constant beside the relations of its topic:
/// ```
/// use drivecourse_machine::{Instrument, Kind, Quantity};
/// const SAG: Quantity =
///     Quantity::new("chain.sag", "δ", Kind::Length, "sag at mid-span below the straightedge").read(Instrument::Scale);
/// assert_eq!(SAG.topic(), "chain");
/// ```
#[derive(Debug, Clone, Copy)]
pub struct Quantity {
    /// `topic.name`, as families, items and `solve` write it.
    pub id: &'static str,
    /// Symbol in formulas; a part after `_` is printed as a subscript.
    pub symbol: &'static str,
    /// What sort of quantity it is.
    pub kind: Kind,
    /// Its name in a sentence, without article.
    pub name: &'static str,
    /// Shown in SI so.
    pub si: Display,
    /// Shown in US customary units so.
    pub us: Display,
    /// How a person comes to know it.
    pub known: Known,
    /// Of what is worked out: the instrument that it is set or checked with on the machine.
    pub set_with: Option<Instrument>,
    /// Whether it belongs to the build of a machine: the same each time that a machine of this name is met.
    pub built: bool,
    /// The possibilities of a [`Kind::Choice`], in the order of its values, as files and tables name them.
    pub choices: &'static [&'static str],
    /// The same as people are shown them: in the language spoken.
    pub labels: &'static [&'static str],
    /// The least and the largest value (SI) that it can have by what it is; the browser reads no files and has none.
    #[cfg(not(wordless))]
    pub ends: (f64, f64),
}

impl Quantity {
    /// A quantity that is worked out, shown in the usual units of its kind to three figures.
    pub const fn new(id: &'static str, symbol: &'static str, kind: Kind, name: &'static str) -> Self {
        let (si, us) = usual(kind);
        Self {
            id,
            symbol,
            kind,
            name,
            si,
            us,
            known: Known::Worked,
            set_with: None,
            built: false,
            choices: &[],
            labels: &[],
            #[cfg(not(wordless))]
            ends: ANY,
        }
    }

    /// Whether this choice (its place, as a value) calls for the machine to stop: its label says "stop".
    pub fn is_stop(&self, choice: f64) -> bool {
        let label = self.choices.get(choice as usize).filter(|_| choice >= 0.0);
        label.is_some_and(|label| label.split(|c: char| !c.is_alphabetic()).any(|word| word == "stop"))
    }

    /// A choice among `choices`.
    pub const fn choice(
        id: &'static str,
        symbol: &'static str,
        name: &'static str,
        choices: &'static [&'static str],
    ) -> Self {
        let mut quantity = Self::new(id, symbol, Kind::Choice, name);
        quantity.choices = choices;
        quantity.labels = choices;
        quantity
    }

    /// Whether people are shown it in %.
    pub fn is_percent(&self) -> bool {
        self.kind == Kind::Ratio && self.display(System::Si).unit == "%"
    }

    /// Shown in these units: SI, then US customary.
    #[must_use]
    pub const fn shown(mut self, si: &'static str, si_as: Figures, us: &'static str, us_as: Figures) -> Self {
        self.si = Display { unit: si, figures: si_as };
        self.us = Display { unit: us, figures: us_as };
        self
    }

    /// Printed on a plate, a drawing or a catalogue page.
    #[must_use]
    pub const fn plate(mut self) -> Self {
        self.known = Known::Plate;
        self
    }

    /// Read with `instrument`.
    #[must_use]
    pub const fn read(mut self, instrument: Instrument) -> Self {
        self.known = Known::Read(instrument);
        self
    }

    /// Worked out, and set or checked with `instrument` on the machine: no answer has to be finer than its step.
    #[must_use]
    pub const fn set_with(mut self, instrument: Instrument) -> Self {
        self.set_with = Some(instrument);
        self
    }

    /// Part of the build of a machine, like the number of its bolts.
    #[must_use]
    pub const fn built(mut self) -> Self {
        self.built = true;
        self
    }

    /// Never below `least` nor above `most` (SI), whatever the machine: an efficiency is no more than 1. What is usual is
    /// another matter, and what a calculation holds for is its own.
    #[must_use]
    #[cfg_attr(wordless, allow(unused_mut, unused_variables))]
    pub const fn ends(mut self, least: f64, most: f64) -> Self {
        #[cfg(not(wordless))]
        {
            self.ends = (least, most);
        }
        self
    }

    /// Whether it is one number over another that is never below 1, so that it is known whichever of the two stands first:
    /// the ratio of a reducer, which makers write 25, 25:1, 1:25 and 1/25.
    pub fn is_either_way_up(&self) -> bool {
        self.kind == Kind::Ratio && !self.is_percent() && self.reach().0 >= 1.0
    }

    /// The least and the largest value (SI) that it can have by what it is.
    pub fn reach(&self) -> (f64, f64) {
        #[cfg(not(wordless))]
        return self.ends;
        #[cfg(wordless)]
        (f64::NEG_INFINITY, f64::INFINITY)
    }

    /// The part of the id before the first dot.
    pub fn topic(&self) -> &'static str {
        self.id.split('.').next().unwrap_or(self.id)
    }

    /// How it is shown in `system`: as the instrument shows it, if it is read with one.
    pub fn display(&self, system: System) -> Display {
        if let Known::Read(instrument) = self.known {
            let step = instrument.step(system);
            return Display { unit: step.unit, figures: step.figures };
        }
        match system {
            System::Si => self.si,
            System::Us => self.us,
        }
    }

    /// The unit it is shown in. The registry's own test makes sure that there is one.
    pub fn unit(&self, system: System) -> &'static Unit {
        let symbol = self.display(system).unit;
        Unit::find(self.kind, symbol).unwrap_or_else(|| panic!("{}: no unit {symbol:?} for {:?}", self.id, self.kind))
    }
}

/// The usual units of a kind.
const fn usual(kind: Kind) -> (Display, Display) {
    const fn d(unit: &'static str, figures: Figures) -> Display {
        Display { unit, figures }
    }
    use Figures::{Places, Significant};
    match kind {
        Kind::Count | Kind::Choice => (d("", Places(0)), d("", Places(0))),
        Kind::Ratio => (d("", Significant(3)), d("", Significant(3))),
        Kind::Slope => (d("mm/m", Places(2)), d("in/ft", Places(4))),
        Kind::Turns => (d("turns", Significant(3)), d("turns", Significant(3))),
        Kind::Length => (d("mm", Significant(4)), d("in", Significant(4))),
        Kind::Angle => (d("°", Significant(4)), d("°", Significant(4))),
        Kind::Mass => (d("kg", Significant(3)), d("lb", Significant(3))),
        Kind::MassPerLength => (d("kg/m", Significant(3)), d("lb/ft", Significant(3))),
        Kind::Force => (d("N", Significant(3)), d("lbf", Significant(3))),
        Kind::Torque => (d("N·m", Significant(3)), d("lbf·in", Significant(3))),
        Kind::Power => (d("kW", Significant(3)), d("hp", Significant(3))),
        Kind::Speed => (d("r/min", Significant(4)), d("r/min", Significant(4))),
        Kind::Velocity => (d("m/s", Significant(3)), d("ft/min", Significant(3))),
        Kind::Stress => (d("MPa", Significant(3)), d("psi", Significant(3))),
        Kind::Temperature => (d("°C", Places(1)), d("°F", Places(1))),
        Kind::TemperatureRise => (d("°C", Places(1)), d("°F", Places(1))),
        Kind::Time => (d("min", Significant(3)), d("min", Significant(3))),
        Kind::Conductance => (d("W/K", Significant(3)), d("Btu/(h·°F)", Significant(3))),
        Kind::Viscosity => (d("mm²/s", Significant(3)), d("cSt", Significant(3))),
        Kind::Area => (d("m²", Significant(3)), d("in²", Significant(3))),
        Kind::Volume => (d("L", Significant(3)), d("US gal", Significant(3))),
        Kind::Density => (d("kg/m³", Significant(3)), d("lb/US gal", Significant(3))),
        Kind::Expansion => (d("1/°C", Significant(3)), d("1/°F", Significant(3))),
        Kind::Frequency => (d("Hz", Significant(4)), d("cpm", Significant(4))),
        Kind::Current => (d("A", Significant(3)), d("A", Significant(3))),
        Kind::Voltage => (d("V", Significant(4)), d("V", Significant(4))),
        Kind::Acceleration => (d("m/s²", Significant(3)), d("g", Significant(3))),
        Kind::Level => (d("dB", Places(1)), d("dB", Places(1))),
    }
}

impl Figures {
    /// `value` rounded to these figures, halves away from nought.
    pub fn round(self, value: f64) -> f64 {
        let scale = match self {
            Self::Places(places) => ten_to(i32::from(places)),
            Self::Fraction(parts) => f64::from(parts),
            Self::Significant(figures) => {
                if value == 0.0 || !value.is_finite() {
                    return value;
                }
                ten_to(i32::from(figures) - 1 - magnitude(value))
            }
        };
        let rounded = (value * scale).round() / scale;
        if rounded.is_finite() { rounded } else { value }
    }

    /// With so many figures `more`; a fraction of an inch becomes a decimal one.
    pub fn finer(self, more: u8) -> Self {
        match self {
            Self::Places(places) => Self::Places(places.saturating_add(more)),
            Self::Significant(figures) => Self::Significant(figures.saturating_add(more)),
            Self::Fraction(_) => Self::Significant(3_u8.saturating_add(more)),
        }
    }

    /// The size of one step in the last figure of `value`.
    pub fn step(self, value: f64) -> f64 {
        match self {
            Self::Places(places) => ten_to(-i32::from(places)),
            Self::Fraction(parts) => 1.0 / f64::from(parts),
            Self::Significant(_) if value == 0.0 || !value.is_finite() => 0.0,
            Self::Significant(figures) => ten_to(magnitude(value) + 1 - i32::from(figures)),
        }
    }
}

/// Position of the first figure: 0 for 1 to 9.99, 1 for 10 to 99.9, -1 for 0.1 to 0.999.
pub(crate) fn magnitude(value: f64) -> i32 {
    let mut exponent = libm::floor(libm::log10(value.abs())) as i32;
    // The logarithm of 1000 may come out a hair under 3: settle it with an exact comparison.
    if ten_to(exponent + 1) <= value.abs() {
        exponent += 1;
    } else if ten_to(exponent) > value.abs() {
        exponent -= 1;
    }
    exponent
}

/// Ten to a small whole power, exact where a double can hold it.
pub(crate) fn ten_to(exponent: i32) -> f64 {
    const POWERS: [f64; 23] = [
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22,
    ];
    match POWERS.get(exponent.unsigned_abs() as usize) {
        Some(power) if exponent >= 0 => *power,
        Some(power) => 1.0 / power,
        None => libm::pow(10.0, f64::from(exponent)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_round_halves_away_from_nought() {
        assert_eq!(Figures::Places(1).round(2.25), 2.3);
        assert_eq!(Figures::Significant(3).round(1250.4), 1250.0);
        assert_eq!(Figures::Significant(3).round(0.000_123_449), 0.000_123);
        assert_eq!(Figures::Significant(3).round(0.0), 0.0);
        assert_eq!(Figures::Fraction(64).round(0.4375), 0.4375);
        assert_eq!(Figures::Significant(2).step(1000.0), 100.0);
        for power in -20..20 {
            assert_eq!(magnitude(ten_to(power)), power);
        }
    }
}
