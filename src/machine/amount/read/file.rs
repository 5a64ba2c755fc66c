//! Amounts as files state them: the same whatever the language, and only where they have one meaning.

use super::{Amount, Wanted, read, with_other_mark};
use crate::instrument::Figures;
use crate::messages;
use crate::problem::quoted;
use crate::quantity::Quantity;
use crate::unit::Kind;

messages! { pub(crate) SAYS {
    PERCENT = "problem-file-percent", "The unit is missing: this is a share in %.";
    PERCENT_MEND = "problem-file-percent-mend", "Write {percent}, or {share} for {written} of the whole.";
    PART = "problem-file-part", "This is counted, and there is no part of one.";
    PART_MEND = "problem-file-part-mend", "Write a whole number.";
    COMMA = "problem-file-thousands", "Its comma may part thousands or decimals.";
    COMMA_MEND = "problem-file-thousands-mend", "Write {whole} or {decimal}.";
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
    let amount = read(text, &Wanted::new(kind)).map_err(|error| Unstated { why: error.to_string(), mend: None })?;
    let refused = |why: String, mend: String| Err(Unstated { why, mend: Some(mend) });
    if let Some([whole, decimal]) = in_doubt(text, &amount) {
        return refused(told!(COMMA), told!(COMMA_MEND, "whole" = quoted(&whole), "decimal" = quoted(&decimal)));
    }
    if kind == Kind::Count && amount.base.fract() != 0.0 {
        return refused(told!(PART), told!(PART_MEND));
    }
    // `1 : 50` is a share as it stands.
    if !amount.unit_given && of.is_some_and(Quantity::is_percent) && !text.contains(':') {
        let written = text.trim();
        let percent = quoted(&format!("{written} %"));
        let share = quoted(&format!("{} %", Figures::Significant(6).round(amount.base * 100.0)));
        return refused(told!(PERCENT), told!(PERCENT_MEND, "percent" = percent, "share" = share, "written" = written));
    }
    Ok(amount.base)
}

/// `text` with its comma taken for a mark between thousands and for a decimal mark, where both are possible; `amount` is
/// what it is with the former.
fn in_doubt(text: &str, amount: &Amount) -> Option<[String; 2]> {
    if !text.contains(',') {
        return None;
    }
    let other = with_other_mark(text, &Wanted::new(amount.unit.kind), amount)?;
    Some([amount, &other].map(plainly))
}

/// `amount` without any mark but the decimal point.
fn plainly(amount: &Amount) -> String {
    match amount.unit.symbol {
        symbol if amount.unit_given && !symbol.is_empty() => format!("{} {symbol}", amount.written),
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
