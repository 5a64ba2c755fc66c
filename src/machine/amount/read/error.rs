//! Why a text could not be read, in words that say what to write instead.

use std::fmt;

use crate::unit::{Kind, Unit};

/// Why a text could not be read as the amount, choice or order that is wanted.
///
/// `wanted` is the kind that was asked for: it picks the examples in the message.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum ReadError {
    /// There is nothing but space.
    Empty {
        /// Kind asked for.
        wanted: Kind,
    },
    /// More than [`LIMIT`](super::LIMIT) characters.
    TooLong {
        /// Kind asked for.
        wanted: Kind,
    },
    /// A character that cannot be seen: line break, null, text direction mark, zero-width space.
    ControlCharacters {
        /// Kind asked for.
        wanted: Kind,
    },
    /// It does not hold one number.
    NotANumber {
        /// What was found instead, cut short.
        what: String,
        /// Kind asked for.
        wanted: Kind,
    },
    /// Not a number, infinite, or of a size that no number here can hold.
    NotFinite {
        /// Kind asked for.
        wanted: Kind,
    },
    /// A fraction over nought.
    DivisionByZero {
        /// Kind asked for.
        wanted: Kind,
    },
    /// A range, a limit or a tolerance where one value is wanted.
    Range {
        /// Kind asked for.
        wanted: Kind,
    },
    /// More than one number.
    SeveralNumbers {
        /// Kind asked for.
        wanted: Kind,
    },
    /// The unit stands before the number.
    UnitFirst {
        /// The unit found there.
        found: &'static Unit,
        /// Kind asked for.
        wanted: Kind,
    },
    /// A number without the unit it needs.
    UnitMissing {
        /// Kind asked for.
        wanted: Kind,
    },
    /// What follows the number is no unit.
    UnknownUnit {
        /// What was found, cut short.
        written: String,
        /// Symbol of the unit it may be a slip for.
        suggestion: Option<&'static str>,
        /// Kind asked for.
        wanted: Kind,
    },
    /// A good amount of another kind: `11 mm` for a force.
    WrongKind {
        /// The unit found; its kind is `found.kind`.
        found: &'static Unit,
        /// Kind asked for.
        wanted: Kind,
    },
    /// None of the choices.
    NoSuchChoice {
        /// What was found, cut short.
        written: String,
        /// The choices there are.
        choices: Vec<String>,
    },
    /// It may mean more than one of the choices.
    Ambiguous {
        /// What was found, cut short.
        written: String,
        /// Those it may mean.
        candidates: Vec<String>,
    },
    /// Something in an order that is none of its items.
    NoSuchItem {
        /// What was found, cut short.
        written: String,
        /// How many items there are.
        items: usize,
    },
    /// An item that stands twice in an order.
    ItemTwice {
        /// Its letter.
        item: char,
    },
    /// Items that an order leaves out.
    ItemsMissing {
        /// Their letters.
        missing: Vec<char>,
    },
}

impl ReadError {
    /// The kind that was asked for; [`Kind::Choice`] for choices and orders.
    pub fn wanted(&self) -> Kind {
        match self {
            Self::Empty { wanted }
            | Self::TooLong { wanted }
            | Self::ControlCharacters { wanted }
            | Self::NotANumber { wanted, .. }
            | Self::NotFinite { wanted }
            | Self::DivisionByZero { wanted }
            | Self::Range { wanted }
            | Self::SeveralNumbers { wanted }
            | Self::UnitFirst { wanted, .. }
            | Self::UnitMissing { wanted }
            | Self::UnknownUnit { wanted, .. }
            | Self::WrongKind { wanted, .. } => *wanted,
            _ => Kind::Choice,
        }
    }
}

/// Amounts of `kind` as they may be written: `11 mm or 7/16 in`.
pub fn examples(kind: Kind) -> &'static str {
    match kind {
        Kind::Count => "19",
        Kind::Choice => "B",
        Kind::Ratio => "1.5 or 4 %",
        Kind::Slope => "0.04 mm/m or 0.0005 in/ft",
        Kind::Turns => "2.5 turns",
        Kind::Length => "11 mm or 7/16 in",
        Kind::Angle => "30°",
        Kind::Mass => "12 kg or 26 lb",
        Kind::MassPerLength => "2.6 kg/m or 1.75 lb/ft",
        Kind::Force => "5500 N or 1250 lbf",
        Kind::Torque => "120 N·m or 90 lbf·ft",
        Kind::Power => "7.5 kW or 10 hp",
        Kind::Speed => "1450 r/min",
        Kind::Velocity => "2.5 m/s or 490 ft/min",
        Kind::Stress => "40 MPa or 5800 psi",
        Kind::Temperature => "75 °C or 167 °F",
        Kind::TemperatureRise => "35 °C or 63 °F",
        Kind::Time => "90 min or 1.5 h",
        Kind::Conductance => "12 W/K or 23 Btu/(h·°F)",
        Kind::Viscosity => "68 mm²/s or 68 cSt",
        Kind::Area => "0.08 m² or 124 in²",
        Kind::Volume => "2.5 L or 2.6 US qt",
        Kind::Density => "890 kg/m³ or 7.43 lb/US gal",
        Kind::Expansion => "0.0007 1/°C or 0.0004 1/°F",
        Kind::Frequency => "29.2 Hz or 1750 cpm",
        Kind::Current => "12.5 A",
        Kind::Voltage => "400 V",
        Kind::Acceleration => "4.9 m/s² or 0.5 g",
        Kind::Level => "85 dB",
    }
}

/// What to write: `a number and its unit, such as 11 mm`.
struct Instead(Kind);

impl fmt::Display for Instead {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let what = match self.0 {
            Kind::Count => "a whole number",
            Kind::Choice => "the letter",
            Kind::Ratio => "a number or a percentage",
            _ => "a number and its unit",
        };
        write!(f, "{what}, such as {}", examples(self.0))
    }
}

impl fmt::Display for ReadError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let instead = Instead(self.wanted());
        match self {
            Self::Empty { .. } => write!(f, "Nothing is written here: write {instead}."),
            Self::TooLong { .. } => {
                write!(f, "This is longer than {} characters: write only {instead}.", super::LIMIT)
            }
            Self::ControlCharacters { .. } => {
                write!(f, "This holds a character that cannot be seen: type it again as {instead}.")
            }
            Self::NotANumber { what, .. } => write!(f, "“{what}” cannot be read as one number: write {instead}."),
            Self::NotFinite { .. } => {
                write!(f, "This number is too large or too small, or is no number at all: write {instead}.")
            }
            Self::DivisionByZero { .. } => write!(f, "A fraction cannot be over nought: write {instead}."),
            Self::Range { .. } => write!(f, "Give one value, not a range or a limit: write {instead}."),
            Self::SeveralNumbers { .. } => write!(f, "There is more than one number here: write only {instead}."),
            Self::UnitFirst { found, .. } if found.is_bare() => write!(f, "The number comes first: write {instead}."),
            Self::UnitFirst { found, .. } => {
                write!(f, "The unit {} stands before the number: write {instead}.", found.symbol)
            }
            Self::UnitMissing { .. } => write!(f, "The unit is missing: write {instead}."),
            Self::UnknownUnit { written, suggestion: Some(unit), .. } if !unit.is_empty() => {
                write!(f, "“{written}” is not a unit known here; if you mean {unit}, write that: {instead}.")
            }
            Self::UnknownUnit { written, .. } => {
                write!(f, "“{written}” is not a unit known here: write {instead}.")
            }
            Self::WrongKind { found, wanted } => {
                let (is, want) = (found.kind.name(), wanted.name());
                match found.symbol {
                    "" => write!(f, "This is {is}, but {want} is wanted: write {instead}."),
                    unit => write!(f, "{unit} is the unit of {is}, but {want} is wanted: write {instead}."),
                }
            }
            Self::NoSuchChoice { written, choices } if choices.is_empty() => {
                write!(f, "“{written}” is not one of the choices: write the letter of one of them.")
            }
            Self::NoSuchChoice { written, choices } => {
                write!(f, "“{written}” is not one of the choices: write one of {}.", List(choices, "or"))
            }
            Self::Ambiguous { written, candidates } => {
                write!(f, "“{written}” may mean {}: write the whole of the one you mean.", List(candidates, "or"))
            }
            Self::NoSuchItem { written, items } => {
                let example = example_order(*items);
                write!(f, "“{written}” is none of the {items} items: write the letters in order, such as {example}.")
            }
            Self::ItemTwice { item } => write!(f, "{item} stands twice in the order: write every letter once."),
            Self::ItemsMissing { missing } => {
                write!(f, "The order leaves out {}: write every letter once.", List(missing, "and"))
            }
        }
    }
}

impl std::error::Error for ReadError {}

/// The first letters, last first: any order will do, so long as it is not the right one by habit.
fn example_order(items: usize) -> String {
    let letters: Vec<String> = (0..items.min(4)).rev().map(|index| super::letter(index).to_string()).collect();
    letters.join(" ")
}

/// `A, B or C`.
struct List<'a, T>(&'a [T], &'static str);

impl<T: fmt::Display> fmt::Display for List<'_, T> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (index, item) in self.0.iter().enumerate() {
            match index {
                0 => {}
                _ if index + 1 == self.0.len() => write!(f, " {} ", self.1)?,
                _ => write!(f, ", ")?,
            }
            write!(f, "{item}")?;
        }
        Ok(())
    }
}
