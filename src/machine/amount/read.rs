//! Amounts, choices and orders read as people write them.

mod choice;
mod error;
mod file;
mod number;
mod parts;
#[cfg(test)]
mod tests;
mod text;
mod words;

pub(crate) use choice::SAYS as CHOICE_SAYS;
pub use choice::{called_here, choices_of, letter, read_choice, read_order, stated_choice, strands_behind};
pub(crate) use error::{AND, OR, SAYS, list};
pub use error::{ReadError, examples};
pub(crate) use file::SAYS as FILE_SAYS;
pub(crate) use file::stated_in;
pub use file::{Unstated, stated};
pub use text::LIMIT;

use crate::instrument::Figures;
use crate::language;
use crate::unit::{Kind, Unit};
use number::{Fault, Number, number};
use text::{clean, clip};

/// Which mark parts the decimals where a number could be read in two ways.
///
/// | written | [`Point`](Self::Point) | [`Comma`](Self::Comma) | why |
/// |---|---|---|---|
/// | `11.5`, `11,5` | 11.5 | 11.5 | no group of three figures follows |
/// | `0.125`, `0,125` | 0.125 | 0.125 | a group never begins with nought |
/// | `1250.125`, `1250,125` | 1250.125 | 1250.125 | more than three figures before |
/// | `1,250.5`, `1.250,5` | 1250.5 | 1250.5 | two marks: the last one parts the decimals |
/// | `1 250,125`, `1'250.125` | 1250.125 | 1250.125 | the groups are parted already |
/// | `1,250,000`, `1.250.000` | 1250000 | 1250000 | the same mark twice: groups |
/// | `1,250` | 1250 | 1.25 | the one in doubt: the convention decides |
/// | `1.250` | 1.25 | 1250 | the same |
/// | `1,25.5`, `1.2.3`, `0,125,000`, `1 250.500,5` | refused | refused | neither groups nor decimals |
///
/// Spaces of any width and apostrophes part groups of three figures under either convention.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum DecimalMark {
    /// `1.25`; a comma may part groups.
    #[default]
    Point,
    /// `1,25`; a point may part groups.
    Comma,
}

impl DecimalMark {
    /// The other one.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::Point => Self::Comma,
            Self::Comma => Self::Point,
        }
    }
}

/// What sort of amount is wanted.
#[derive(Debug, Clone, Copy)]
pub struct Wanted {
    /// Its kind. Choices are read with [`read_choice`].
    pub kind: Kind,
    /// The unit of a number without one. If there is none, a unit must be written, save for
    /// counts, plain numbers and turns.
    pub default_unit: Option<&'static Unit>,
    /// Which mark parts the decimals where a number could be read in two ways.
    pub decimal: DecimalMark,
    /// Whether names of units and numbers written out in the language spoken are read too: in answers, not in files,
    /// which are to say the same in every language.
    pub spoken: bool,
    /// The scale of `37 degrees` and `37°`, where the kind is a temperature. If there is none, the scale must be written.
    pub scale: Option<&'static Unit>,
}

impl Wanted {
    /// An amount of `kind` with its unit, decimal point.
    pub fn new(kind: Kind) -> Self {
        Self { kind, default_unit: None, decimal: DecimalMark::Point, spoken: false, scale: None }
    }

    /// An amount of the kind of `unit`; a number without unit is in `unit`.
    pub fn in_unit(unit: &'static Unit) -> Self {
        Self { default_unit: Some(unit), ..Self::new(unit.kind) }.on_scale_of(unit)
    }

    /// With this decimal mark.
    #[must_use]
    pub fn with_mark(mut self, decimal: DecimalMark) -> Self {
        self.decimal = decimal;
        self
    }

    /// As people write it in the language spoken: its decimal mark, its words for units and numbers.
    #[must_use]
    pub fn as_spoken(self) -> Self {
        Self { spoken: true, ..self.with_mark(language::decimal_mark()) }
    }

    /// With `37 degrees` and `37°` on the scale of `unit`, the one that the question is put in.
    ///
    /// An examiner takes them so: who writes degrees has written a unit, and only one scale stands on the sheet. What was
    /// taken is said when the answer is read, and one who thought on the other scale is told that the number would be
    /// right there. For a unit that is not counted in degrees nothing changes.
    #[must_use]
    pub fn on_scale_of(self, unit: &'static Unit) -> Self {
        let in_degrees = matches!(unit.kind, Kind::Temperature | Kind::TemperatureRise) && unit.symbol.starts_with('°');
        Self { scale: Some(unit).filter(|_| in_degrees), ..self }
    }

    /// The units that `text` may mean.
    fn named<'t>(&self, text: &'t str) -> impl Iterator<Item = &'static Unit> + use<'t> {
        Unit::named(text).chain(self.spoken.then_some(text).into_iter().flat_map(Unit::spoken))
    }

    /// The unit of a number without one.
    fn bare_unit(&self) -> Option<&'static Unit> {
        let fixed = self.default_unit.filter(|unit| unit.kind == self.kind);
        fixed.or_else(|| match self.kind {
            Kind::Count | Kind::Ratio => Unit::find(self.kind, ""),
            Kind::Turns => Unit::find(self.kind, "turns"),
            _ => None,
        })
    }
}

/// An amount as it was read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Amount {
    /// The value in the SI unit of its kind.
    pub base: f64,
    /// The number in [`unit`](Self::unit).
    pub written: f64,
    /// The unit it was written in; the finest one of `12 ft 3 in`.
    pub unit: &'static Unit,
    /// Significant figures written. Closing noughts of a whole number count, as nobody can tell;
    /// a fraction counts as many as one of its parts settles.
    pub figures: u8,
    /// The form it was written in: decimals, figures before a power of ten, parts of a fraction.
    pub shown: Figures,
    /// Whether the unit was written too, rather than taken from the question.
    pub unit_given: bool,
}

impl Amount {
    /// One step of the last figure (or one part of the fraction) written, in the SI unit.
    pub fn step(&self) -> f64 {
        self.shown.step(self.written) * self.unit.size().abs()
    }

    /// The number and its unit: `11.1 mm`.
    pub fn as_read(&self) -> String {
        super::with_unit(&super::number(self.written, self.shown), self.unit)
    }

    /// How it was understood: `read as 11.1 mm`.
    pub fn understood(&self) -> String {
        error::READ_AS.say(&[("amount", &self.as_read())])
    }
}

/// `text` as one reads it who parts decimals with the other mark, where that is another number: `1.250` for 1250. `amount` is
/// what it is as `wanted`.
pub fn with_other_mark(text: &str, wanted: &Wanted, amount: &Amount) -> Option<Amount> {
    let other = read(text, &wanted.with_mark(wanted.decimal.other())).ok()?;
    (other.written != amount.written).then_some(other)
}

/// The amount that `text` states, in words and marks as people write them.
///
/// Whole and decimal numbers, groups of three, powers of ten (`1.2e3`, `1.2 × 10³`), fractions
/// (`7/16`, `1-3/16`, `1⅜`), feet and inches (`12' 3-1/2"`), hours and minutes, a sign, any
/// spelling of the unit that [`Unit::named`] knows. A ratio may be `15:1`. A word such as `about`
/// or `approx`, `~` and `=` are passed over, in answers also a name before `=` or `:` (`F₀ = 1880 lbf`): they do not change
/// which value is stated. A range,
/// a limit (`max`, `<`, `±`) or a second number is refused, because it states no single value.
///
/// Where a unit's name has two meanings (`lb`, `°C`) the wanted kind decides; `75°` or `75 degrees` as a
/// temperature is on the scale of the question, if that is known ([`Wanted::on_scale_of`]). Units may be written out
/// (`83 minutes`, and in answers as the language has it: `83 Minuten`), and a small count in words (`twelve`); any other
/// number is wanted in figures, because how many of them are given matters.
///
/// # Errors
/// [`ReadError`] says what is wrong and, read aloud, what to write instead.
///
/// # Example
/// ```
/// use drivecourse_machine::{Kind, amount::{Wanted, read}};
/// let sag = read("7/16\"", &Wanted::new(Kind::Length)).unwrap();
/// assert_eq!(sag.base, 0.4375 * 0.0254);
/// assert_eq!(sag.understood(), "read as 7/16\u{a0}in");
/// let slip = read("11 mm", &Wanted::new(Kind::Force)).unwrap_err();
/// assert_eq!(
///     slip.to_string(),
///     "mm is the unit of a length, but a force is wanted: write a number and its unit, such as 5500 N or 1250 lbf."
/// );
/// ```
pub fn read(text: &str, wanted: &Wanted) -> Result<Amount, ReadError> {
    let kind = wanted.kind;
    let clean = clean(text, kind)?;
    if kind == Kind::Choice {
        return Err(ReadError::NoSuchChoice { written: clip(&clean), choices: Vec::new() });
    }
    let named = if wanted.spoken { parts::without_name(&clean, kind) } else { &*clean };
    let (negative, start) = parts::sign(parts::without_hedge(named));
    let in_words = words::number(start, wanted);
    if in_words.is_some() && kind != Kind::Count {
        return Err(ReadError::NumberInWords { what: clip(&clean), wanted: kind });
    }
    let fault = |fault| match fault {
        Fault::Missing => parts::no_number(start, kind),
        Fault::Malformed => ReadError::NotANumber { what: clip(&clean), wanted: kind },
        Fault::DivisionByZero => ReadError::DivisionByZero { wanted: kind },
        Fault::NotFinite => ReadError::NotFinite { wanted: kind },
    };
    let (mut value, mut rest) = match in_words {
        Some(found) => found,
        None => number(start, wanted.decimal).map_err(fault)?,
    };
    if kind == Kind::Ratio
        && let Some(under) = rest.trim_start().strip_prefix(':')
    {
        let (under, after) = number(under.trim_start(), wanted.decimal).map_err(|_| fault(Fault::Malformed))?;
        if under.value == 0.0 {
            return Err(fault(Fault::DivisionByZero));
        }
        let figures = value.figures;
        let shown = if under.value == 1.0 { value.shown } else { Figures::Significant(figures) };
        (value, rest) = (Number { value: value.value / under.value, figures, shown }, after);
    }
    let rest = rest.trim_end_matches([' ', ',', ';']).trim_start();
    let (value, unit, unit_given) = match parts::unit(rest, wanted) {
        Some(Ok((unit, given))) => (value, unit, given),
        Some(Err(error)) => return Err(error),
        None => match parts::compound(value, rest, wanted) {
            Some((value, unit)) => (value, unit, true),
            None => return Err(parts::explain(value, rest, &clean, wanted)),
        },
    };
    let written = if negative { 0.0 - value.value } else { value.value };
    let base = unit.to_base(written);
    if !base.is_finite() {
        return Err(fault(Fault::NotFinite));
    }
    Ok(Amount { base, written, unit, figures: value.figures, shown: value.shown, unit_given })
}
