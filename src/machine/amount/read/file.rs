//! Amounts as files state them: the same whatever the language, and only where they have one meaning.

use super::{Amount, ReadError, Wanted, read, with_other_mark};
use crate::instrument::Figures;
use crate::messages;
use crate::problem::quoted;
use crate::quantity::Quantity;
use crate::unit::{Kind, System, Unit};

messages! { pub(crate) SAYS {
    PERCENT = "problem-file-percent", "The unit is missing: this is a share in %.";
    PERCENT_MEND = "problem-file-percent-mend", "Write {percent}, or {share} for {written} of the whole.";
    PART = "problem-file-part", "This is counted, and there is no part of one.";
    PART_MEND = "problem-file-part-mend", "Write a whole number.";
    COMMA = "problem-file-thousands", "Its comma may part thousands or decimals.";
    COMMA_MEND = "problem-file-thousands-mend", "Write {whole} or {decimal}.";
    PER_LENGTH = "problem-file-per-length", "This holds for each metre or foot of something, so it is another length on every machine.";
    PER_LENGTH_MEND = "problem-file-per-length-mend", "Work the length out for each machine, and write it in a column of the table of machines in place of this: {column}.";
} }

/// Why an amount that a file states cannot be taken.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unstated {
    /// A sentence.
    pub why: String,
    /// What to write instead, where there is more to say than what kind of amount is wanted.
    pub mend: Option<String>,
}

/// The amount of `kind` that `text` states in a file, for the quantity `of` if it is one's own value.
///
/// A file is read the same whatever the language, and nobody is asked how it is meant. So it is stricter than answers are:
///
/// * a share that people are shown in % bears its sign, because `1.5` may be meant for 1.5 % or for 150 %;
/// * what is counted is a whole number: 19.5 teeth are a slip, and 20 of them a guess;
/// * a comma before exactly three figures (`1,200`) is refused, because it may be twelve hundred or one point two. Where the
///   number has a decimal point too (`1,234.5`), or the comma can part nothing but decimals (`30,5`, `0,125`), it is read.
/// * a ratio that is never below 1, such as a reducer's, is read whichever way up it stands: `25`, `25:1`, `1 : 25`, `1/25`,
///   `25 to 1`; `20 to 25` is no ratio but a range;
/// * a diameter may have its sign before it and its fit behind it (`Ø50 k6`), which is left out;
/// * an angle may be a slope (`0.5 mm/m`, `1 mm/100 mm`), of which it is the arctangent.
///
/// # Errors
/// [`Unstated`], with the reason as people are told it.
///
/// # Example
/// ```
/// use drivecourse_machine::{Kind, amount::stated};
/// assert_eq!(stated("30,5 mm", Kind::Length, None).unwrap(), 0.0305);
/// assert!(stated("1,200 mm", Kind::Length, None).is_err());
/// ```
pub fn stated(text: &str, kind: Kind, of: Option<&Quantity>) -> Result<f64, Unstated> {
    stated_in(text, kind, of, None)
}

/// As [`stated`], in a column that has its unit: a number without one is in that.
///
/// # Errors
/// [`Unstated`], with the reason as people are told it.
pub(crate) fn stated_in(
    text: &str,
    kind: Kind,
    of: Option<&Quantity>,
    unit: Option<&'static Unit>,
) -> Result<f64, Unstated> {
    let refused = |why: String, mend: String| Err(Unstated { why, mend: Some(mend) });
    let wanted = Wanted { default_unit: unit, ..Wanted::new(kind) };
    let value = of.map_or(text, |of| without_symbol(text, of));
    if of.is_some_and(Quantity::is_either_way_up)
        && let Some(ratio) = either_way_up(value)
    {
        return ratio;
    }
    let value = if kind == Kind::Length { without_fit(value) } else { value };
    let amount = match checked(value, &wanted)? {
        Ok(amount) => amount,
        Err(error) => {
            return match slope(value) {
                Some(slope) if kind == Kind::Slope => slope,
                Some(slope) if kind == Kind::Angle => Ok(libm::atan(slope?)),
                _ if kind == Kind::Length && is_per_length(value) => {
                    let column =
                        of.map_or_else(String::new, |of| format!("{} [{}]", of.id, of.unit(System::Si).symbol));
                    refused(told!(PER_LENGTH), told!(PER_LENGTH_MEND, "column" = column))
                }
                _ => Err(Unstated { why: error.to_string(), mend: None }),
            };
        }
    };
    if kind == Kind::Count && amount.base.fract() != 0.0 {
        return refused(told!(PART), told!(PART_MEND));
    }
    // `1 : 50` is a share as it stands.
    let has_unit = amount.unit_given || unit.is_some();
    if !has_unit && of.is_some_and(Quantity::is_percent) && !text.contains(':') {
        let written = text.trim();
        let percent = quoted(&format!("{written} %"));
        let share = quoted(&format!("{} %", Figures::Significant(6).round(amount.base * 100.0)));
        return refused(told!(PERCENT), told!(PERCENT_MEND, "percent" = percent, "share" = share, "written" = written));
    }
    Ok(amount.base)
}

/// The amount that `text` states, or why it cannot be read; refused where its comma may part thousands or decimals.
fn checked(text: &str, wanted: &Wanted) -> Result<Result<Amount, ReadError>, Unstated> {
    let amount = match read(text, wanted) {
        Ok(amount) => amount,
        Err(error) => return Ok(Err(error)),
    };
    match in_doubt(text, &amount, wanted) {
        Some([whole, decimal]) => {
            let mend = told!(COMMA_MEND, "whole" = quoted(&whole), "decimal" = quoted(&decimal));
            Err(Unstated { why: told!(COMMA), mend: Some(mend) })
        }
        None => Ok(Ok(amount)),
    }
}

/// `text` without the quantity's own symbol before it: `i = 25`.
fn without_symbol<'t>(text: &'t str, of: &Quantity) -> &'t str {
    let rest = text.trim_start().strip_prefix(of.symbol).filter(|_| !of.symbol.is_empty());
    rest.and_then(|rest| rest.trim_start().strip_prefix('=')).map_or(text, str::trim_start)
}

/// What `text` states as one number over another, the larger over the smaller; nothing where it is no such thing.
fn either_way_up(text: &str) -> Option<Result<f64, Unstated>> {
    let is_one = |side: &str| side.trim() == "1";
    let in_words = || text.split_once(" to ").filter(|(over, under)| is_one(over) || is_one(under));
    let (over, under) = text.split_once([':', '/']).or_else(in_words)?;
    let number = |side: &str| match checked(side, &Wanted::new(Kind::Ratio)) {
        Ok(amount) => Some(Ok(amount.ok().filter(|amount| amount.base > 0.0 && !amount.unit_given)?.base)),
        Err(refused) => Some(Err(refused)),
    };
    let (over, under) = (number(over)?, number(under)?);
    Some(over.and_then(|over| under.map(|under| over.max(under) / over.min(under))))
}

/// `text` without the sign of a diameter before it and a fit of ISO 286-1 behind it: `Ø50 k6`, `⌀ 50 H7`, `50js6`.
fn without_fit(text: &str) -> &str {
    let text = text.trim();
    let bare = text.strip_prefix(['Ø', 'ø', '⌀', '∅']).map_or(text, str::trim_start);
    let start = bare.trim_end_matches(|c: char| c.is_ascii_digit()).trim_end_matches(|c: char| c.is_ascii_alphabetic());
    let fit = &bare[start.len()..];
    let grade = fit.trim_start_matches(|c: char| c.is_ascii_alphabetic());
    let letters = fit.len() - grade.len();
    // The grades are 01, 0 and 1 to 18. `m2` is an area.
    let is_fit = (1..=2).contains(&letters)
        && (grade == "01" || grade.parse().is_ok_and(|grade: u8| grade <= 18))
        && Unit::named(fit).next().is_none()
        && start.ends_with(|c: char| c.is_ascii_digit() || c == ' ');
    if is_fit { start.trim_end() } else { bare }
}

/// What `text` states as a rise over a run, in one unit (`0.5 mm/m`) or in two lengths (`1 mm/100 mm`).
fn slope(text: &str) -> Option<Result<f64, Unstated>> {
    let base = |text: &str, kind: Kind| match checked(text, &Wanted::new(kind)) {
        Ok(amount) => amount.ok().map(|amount| Ok(amount.base)),
        Err(refused) => Some(Err(refused)),
    };
    base(text, Kind::Slope).or_else(|| {
        let (rise, run) = text.split_once('/')?;
        let (rise, run) = (base(rise, Kind::Length)?, base(run, Kind::Length)?);
        Some(rise.and_then(|rise| run.map(|run| rise / run)))
            .filter(|slope| slope.as_ref().map_or(true, |it| it.is_finite()))
    })
}

/// Whether a unit of a slope stands in `text`: `0,8 mm/m, at most 1,0 mm`.
fn is_per_length(text: &str) -> bool {
    let unit = |word: &str| {
        let word = word.trim_start_matches(|c: char| c.is_ascii_digit() || matches!(c, '.' | ','));
        Unit::named(word.trim_end_matches([',', ';', '.', ')'])).any(|unit| unit.kind == Kind::Slope)
    };
    text.split_whitespace().any(unit)
}

/// `text` with its comma taken for a mark between thousands and for a decimal mark, where both are possible; `amount` is
/// what it is with the former.
fn in_doubt(text: &str, amount: &Amount, wanted: &Wanted) -> Option<[String; 2]> {
    if !text.contains(',') {
        return None;
    }
    let other = with_other_mark(text, wanted, amount)?;
    Some([amount, &other].map(|amount| plainly(amount, wanted)))
}

/// `amount` without any mark but the decimal point.
fn plainly(amount: &Amount, wanted: &Wanted) -> String {
    match amount.unit.symbol {
        symbol if (amount.unit_given || wanted.default_unit.is_some()) && !symbol.is_empty() => {
            format!("{} {symbol}", amount.written)
        }
        _ => amount.written.to_string(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const SHARE: Quantity =
        Quantity::new("test.share", "s", Kind::Ratio, "share").shown("%", Figures::Places(1), "%", Figures::Places(1));
    const NUMBER: Quantity = Quantity::new("test.number", "n", Kind::Ratio, "number");

    #[test]
    fn a_share_in_percent_bears_its_sign() {
        for (text, mend) in [
            ("1.5", "Write \"1.5 %\", or \"150 %\" for 1.5 of the whole."),
            ("4,05", "Write \"4,05 %\", or \"405 %\" for 4,05 of the whole."),
            ("0.07", "Write \"0.07 %\", or \"7 %\" for 0.07 of the whole."),
            ("1/50", "Write \"1/50 %\", or \"2 %\" for 1/50 of the whole."),
        ] {
            let told = stated(text, Kind::Ratio, Some(&SHARE)).unwrap_err();
            assert_eq!(told.why, "The unit is missing: this is a share in %.", "{text}");
            assert_eq!(told.mend.as_deref(), Some(mend), "{text}");
            assert!(stated(text, Kind::Ratio, Some(&NUMBER)).is_ok(), "{text} as a plain number");
            assert!(stated(text, Kind::Ratio, None).is_ok(), "{text} of nothing");
        }
        for (text, share) in [("1.5 %", 0.015), ("1,5%", 0.015), ("150 percent", 1.5), ("1 : 50", 0.02), ("1.5x", 1.5)]
        {
            approx::assert_relative_eq!(stated(text, Kind::Ratio, Some(&SHARE)).unwrap(), share, max_relative = 1e-12);
        }
    }

    #[test]
    fn a_ratio_is_read_whichever_way_up_it_stands() {
        let ratio = crate::Registry::get().find("drive.ratio").unwrap().get();
        for (text, value) in [
            ("1/25", 25.0),
            ("1:25", 25.0),
            ("25:1", 25.0),
            ("25 : 1", 25.0),
            ("20 to 1", 20.0),
            ("1 to 24.6", 24.6),
            ("i = 31.5 to 1", 31.5),
            ("25", 25.0),
            ("1/31,5", 31.5),
            ("i = 1/31,5", 31.5),
            ("i=1 : 24.6", 24.6),
            ("59/19", 59.0 / 19.0),
        ] {
            assert_eq!(stated(text, Kind::Ratio, Some(ratio)).unwrap(), value, "{text}");
        }
        // What can be below 1 stays as it is written.
        assert_eq!(stated("1:25", Kind::Ratio, Some(&NUMBER)).unwrap(), 0.04);
        for text in ["1:0", "1:1,250", "1/x", "i 25", "20 to 25", "to 1", "1 to 1,250"] {
            assert!(stated(text, Kind::Ratio, Some(ratio)).is_err(), "{text}");
        }
    }

    #[test]
    fn a_diameter_has_its_sign_and_its_fit() {
        const SHAFT: Quantity = Quantity::new("test.shaft", "d", Kind::Length, "diameter of the shaft");
        let mm = Unit::find(Kind::Length, "mm");
        for text in ["Ø50 k6", "50 k6", "⌀ 50 H7", "50js6", "Ø50", "50", "50 mm m6", "d = 50 h7", "Ø 50 h11"] {
            approx::assert_relative_eq!(stated_in(text, Kind::Length, Some(&SHAFT), mm).unwrap(), 0.05);
        }
        for text in ["Ø50 k6 x 100", "50 m2", "50 k66", "50 abc6", "k6"] {
            assert!(stated_in(text, Kind::Length, Some(&SHAFT), mm).is_err(), "{text}");
        }
        assert!(stated("Ø50 k6", Kind::Length, None).unwrap_err().why.starts_with("The unit is missing"));
    }

    #[test]
    fn an_angle_may_be_a_slope() {
        for (text, slope) in [
            ("0,5 mm/m", 5e-4),
            ("0.006 in/ft", 5e-4),
            ("0,5 mm/100 mm", 5e-3),
            ("1 mm / 1 m", 1e-3),
            ("-2 mm/m", -2e-3),
        ] {
            let angle = stated(text, Kind::Angle, None).unwrap();
            approx::assert_relative_eq!(libm::tan(angle), slope, max_relative = 1e-12);
            approx::assert_relative_eq!(stated(text, Kind::Slope, None).unwrap(), slope, max_relative = 1e-12);
        }
        for text in ["1,200 mm/m", "1 mm/0 mm", "1 mm/x", "0.5 mm"] {
            assert!(stated(text, Kind::Angle, None).is_err(), "{text}");
        }
    }

    #[test]
    fn a_length_for_each_metre_belongs_in_a_column() {
        const OFFSET: Quantity = Quantity::new("test.offset", "s", Kind::Length, "offset");
        for text in ["0,8 mm/m, max. 1,0 mm", "0.8 mm/m", "0.01 in/ft", "max. 0,8mm/m"] {
            let told = stated(text, Kind::Length, Some(&OFFSET)).unwrap_err();
            assert!(
                told.why.starts_with("This holds for each metre")
                    && told.mend.unwrap().ends_with(": test.offset [mm].")
            );
        }
        assert!(!stated("5 N", Kind::Length, Some(&OFFSET)).unwrap_err().why.contains("each metre"));
    }

    #[test]
    fn a_comma_that_may_part_thousands_is_refused() {
        for (text, kind, mend) in [
            ("1,200 °C", Kind::Temperature, "Write \"1200 °C\" or \"1.2 °C\"."),
            ("1,350", Kind::Count, "Write \"1350\" or \"1.35\"."),
            ("-12,345 mm", Kind::Length, "Write \"-12345 mm\" or \"-12.345 mm\"."),
            ("1,200 %", Kind::Ratio, "Write \"1200 %\" or \"1.2 %\"."),
        ] {
            let told = stated(text, kind, None).unwrap_err();
            assert_eq!(
                (told.why.as_str(), told.mend.as_deref()),
                ("Its comma may part thousands or decimals.", Some(mend))
            );
        }
        for (text, value) in [
            ("30,5", 30.5),
            ("0,125", 0.125),
            ("1,234.5", 1234.5),
            ("1.234,5", 1234.5),
            ("1,250,000", 1.25e6),
            ("1250,125", 1250.125),
            ("1 250,125", 1250.125),
            ("1.250", 1.25),
            ("1,2500", 1.25),
        ] {
            assert_eq!(stated(text, Kind::Ratio, None).unwrap(), value, "{text}");
        }
        let told = stated("much", Kind::Length, None).unwrap_err();
        assert!(told.why.contains("cannot be read as one number") && told.mend.is_none(), "{told:?}");
    }
}
