//! Why a text could not be read, in words that say what to write instead.

use std::fmt;

use crate::language::{Message, with_decimal_mark};
use crate::messages;
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
    /// Degrees, and nothing says of which scale: `37 degrees`.
    WhichDegrees {
        /// Kind asked for.
        wanted: Kind,
    },
    /// A number in words where figures are wanted: `twelve mm`.
    NumberInWords {
        /// What was found, cut short.
        what: String,
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
            | Self::WhichDegrees { wanted }
            | Self::NumberInWords { wanted, .. }
            | Self::WrongKind { wanted, .. } => *wanted,
            _ => Kind::Choice,
        }
    }
}

/// Amounts of `kind` as they may be written: `11 mm or 7/16 in`.
pub fn examples(kind: Kind) -> String {
    let both = match kind {
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
    };
    with_decimal_mark(both.replace(" or ", &format!(" {} ", OR.text())))
}

messages! { pub(crate) SAYS {
    READ_AS = "read-understood", "read as {amount}";
    /// Between the last two of several things.
    OR = "read-or", "or";
    AND = "read-and", "and";
    INSTEAD_COUNT = "read-write-count", "a whole number, such as {examples}";
    INSTEAD_CHOICE = "read-write-choice", "the letter, such as {examples}";
    INSTEAD_RATIO = "read-write-ratio", "a number or a percentage, such as {examples}";
    INSTEAD_AMOUNT = "read-write-amount", "a number and its unit, such as {examples}";
    EMPTY = "read-empty", "Nothing is written here: write {instead}.";
    TOO_LONG = "read-too-long", "This is longer than {limit} characters: write only {instead}.";
    CONTROL = "read-control", "This holds a character that cannot be seen: type it again as {instead}.";
    NOT_A_NUMBER = "read-not-a-number", "“{written}” cannot be read as one number: write {instead}.";
    NOT_FINITE = "read-not-finite", "This number is too large or too small, or is no number at all: write {instead}.";
    OVER_NOUGHT = "read-over-nought", "A fraction cannot be over nought: write {instead}.";
    RANGE = "read-range", "Give one value, not a range or a limit: write {instead}.";
    SEVERAL = "read-several", "There is more than one number here: write only {instead}.";
    NUMBER_FIRST = "read-number-first", "The number comes first: write {instead}.";
    UNIT_FIRST = "read-unit-first", "The unit {unit} stands before the number: write {instead}.";
    UNIT_MISSING = "read-unit-missing", "The unit is missing: write {instead}.";
    WHICH_DEGREES = "read-which-degrees", "It is left open which degrees are meant: write {instead}.";
    IN_WORDS = "read-in-words", "“{written}” has its number in words: write it in figures, as {instead}.";
    /// The numbers from nought to twenty, with spaces between, and strokes between names of one.
    NUMBERS = "read-numbers", "nought/zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty";
    UNIT_MEANT = "read-unit-meant", "“{written}” is not a unit known here; if you mean {unit}, write that: {instead}.";
    UNIT_UNKNOWN = "read-unit-unknown", "“{written}” is not a unit known here: write {instead}.";
    BARE_KIND = "read-bare-kind", "This is {is}, but {wanted} is wanted: write {instead}.";
    UNIT_KIND = "read-unit-kind", "{unit} is the unit of {is}, but {wanted} is wanted: write {instead}.";
    NO_CHOICE = "read-no-choice", "“{written}” is not one of the choices: write the letter of one of them.";
    NO_CHOICE_OF = "read-no-choice-of", "“{written}” is not one of the choices: write {letters}.";
    AMBIGUOUS = "read-ambiguous", "“{written}” may mean {choices}: write the whole of the one you mean.";
    NO_ITEM = "read-no-item", "“{written}” is none of the {items} items: write the letters in order, such as {examples}.";
    ITEM_TWICE = "read-item-twice", "{item} stands twice in the order: write every letter once.";
    ITEMS_MISSING = "read-items-missing", "The order leaves out {items}: write every letter once.";
} }

/// Letters of choices that are named one by one, at most.
const MOST_LETTERS: usize = 8;

/// What to write: `a number and its unit, such as 11 mm`.
fn instead(kind: Kind) -> String {
    let what = match kind {
        Kind::Count => INSTEAD_COUNT,
        Kind::Choice => INSTEAD_CHOICE,
        Kind::Ratio => INSTEAD_RATIO,
        _ => INSTEAD_AMOUNT,
    };
    what.say(&[("examples", &examples(kind))])
}

impl fmt::Display for ReadError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let instead = instead(self.wanted());
        let say = |message: Message, words: &[(&str, &str)]| message.say(&[words, &[("instead", &instead)]].concat());
        f.write_str(&match self {
            Self::Empty { .. } => say(EMPTY, &[]),
            Self::TooLong { .. } => say(TOO_LONG, &[("limit", &super::LIMIT.to_string())]),
            Self::ControlCharacters { .. } => say(CONTROL, &[]),
            Self::NotANumber { what, .. } => say(NOT_A_NUMBER, &[("written", what)]),
            Self::NotFinite { .. } => say(NOT_FINITE, &[]),
            Self::DivisionByZero { .. } => say(OVER_NOUGHT, &[]),
            Self::Range { .. } => say(RANGE, &[]),
            Self::SeveralNumbers { .. } => say(SEVERAL, &[]),
            Self::UnitFirst { found, .. } if found.is_bare() => say(NUMBER_FIRST, &[]),
            Self::UnitFirst { found, .. } => say(UNIT_FIRST, &[("unit", found.said())]),
            Self::UnitMissing { .. } => say(UNIT_MISSING, &[]),
            Self::WhichDegrees { .. } => say(WHICH_DEGREES, &[]),
            Self::NumberInWords { what, .. } => say(IN_WORDS, &[("written", what)]),
            Self::UnknownUnit { written, suggestion: Some(unit), .. } if !unit.is_empty() => {
                say(UNIT_MEANT, &[("written", written), ("unit", unit)])
            }
            Self::UnknownUnit { written, .. } => say(UNIT_UNKNOWN, &[("written", written)]),
            Self::WrongKind { found, wanted } => {
                let message = if found.symbol.is_empty() { BARE_KIND } else { UNIT_KIND };
                say(message, &[("unit", found.said()), ("is", found.kind.name()), ("wanted", wanted.name())])
            }
            // Wherever choices are shown, a letter stands before each.
            Self::NoSuchChoice { written, choices } if (1..=MOST_LETTERS).contains(&choices.len()) => {
                let letters: Vec<char> = (0..choices.len()).map(super::letter).collect();
                say(NO_CHOICE_OF, &[("written", written), ("letters", &list(&letters, OR))])
            }
            Self::NoSuchChoice { written, .. } => say(NO_CHOICE, &[("written", written)]),
            Self::Ambiguous { written, candidates } => {
                say(AMBIGUOUS, &[("written", written), ("choices", &list(candidates, OR))])
            }
            Self::NoSuchItem { written, items } => {
                let (example, items) = (example_order(*items), items.to_string());
                say(NO_ITEM, &[("written", written), ("items", &items), ("examples", &example)])
            }
            Self::ItemTwice { item } => say(ITEM_TWICE, &[("item", &item.to_string())]),
            Self::ItemsMissing { missing } => say(ITEMS_MISSING, &[("items", &list(missing, AND))]),
        })
    }
}

impl std::error::Error for ReadError {}

/// The first letters, last first: any order will do, so long as it is not the right one by habit.
fn example_order(items: usize) -> String {
    let letters: Vec<String> = (0..items.min(4)).rev().map(|index| super::letter(index).to_string()).collect();
    letters.join(" ")
}

/// `A, B or C`.
pub(crate) fn list(items: &[impl fmt::Display], last: Message) -> String {
    let mut out = String::new();
    for (index, item) in items.iter().enumerate() {
        match index {
            0 => {}
            _ if index + 1 == items.len() => out.push_str(&format!(" {} ", last.text())),
            _ => out.push_str(", "),
        }
        out.push_str(&item.to_string());
    }
    out
}
