//! How an exam is marked: what a near miss earns, how figures and units must be written, what a shown method earns.
//!
//! ```toml
//! [marking]                                # all of it may be left out
//! partial = { within = 2, earns = "50 %" } # up to twice the tolerance off; left out: right or wrong
//! figures = { least = 2, most = 5, costs = 1 }  # an answer quoted otherwise loses a mark; left out: not looked at
//! unit = "must"                            # or "may": a number alone is read in the unit printed beside the answer
//! method = "50 %"                          # what results on the way earn when the answer is wrong; left out: nothing
//! ```
//!
//! Decisions:
//!
//! * marks are whole: a share of them is rounded down, so a part of one mark has none of this;
//! * a near miss that is a known wrong turn earns nothing: a wrong method never earns the mark;
//! * figures never cost an answer its last mark, and are not looked at in safety questions, counts, choices and what
//!   is read from an instrument in fixed steps; closing noughts of a whole number may count or not, in its favour;
//! * results on the way count each once, from the person's own earlier numbers as well; the final answer is none of them.

use drivecourse_machine::amount::{self, Amount, Wanted};
use drivecourse_machine::{Figures, Kind, Path, Problem, QuantityId, System, language, messages, schema};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use toml::{Spanned, Value as Toml};

use crate::blueprint::share;
use crate::mend::{WRITE_EITHER, quoted, write_say};
use crate::question::Key;
use crate::tolerance;

/// An answer and, where they were asked for, the results on the way to it.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Written<'a> {
    /// The answer as written.
    pub answer: &'a str,
    /// Results on the way, with semicolons or line breaks between.
    pub steps: &'a str,
}

/// What a near miss earns.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Partial {
    /// How many tolerances off is near.
    pub within: f64,
    /// Share of the marks.
    pub earns: f64,
}

/// How many significant figures an answer is quoted with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Quoted {
    /// At least.
    pub least: u8,
    /// At most.
    pub most: u8,
    /// Marks that another number of figures costs.
    pub costs: u32,
}

/// How an exam is marked.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize)]
pub struct Marking {
    /// What a near miss earns, if anything.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub partial: Option<Partial>,
    /// How answers must be quoted, if that matters.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub figures: Option<Quoted>,
    /// Whether a number without a unit is read in the unit printed beside the answer.
    #[serde(default, skip_serializing_if = "core::ops::Not::not")]
    pub unit_may_miss: bool,
    /// Share of the marks that all results on the way earn, when the answer is wrong.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub method: Option<f64>,
}

/// How answers are marked.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct MarkingFile {
    /// What a near miss earns.
    partial: Option<PartialFile>,
    /// With how many figures an answer is to be written.
    #[schemars(with = "Option<QuotedFile>")]
    figures: Option<Spanned<QuotedFile>>,
    /// Whether an answer must have its unit: "must" or "may".
    #[schemars(with = "Option<String>", regex(pattern = "^(must|may)$"))]
    unit: Option<Spanned<String>>,
    /// Share of the marks for right results on the way, such as "50 %".
    #[schemars(with = "Option<schema::PlainValue>")]
    method: Option<Spanned<Toml>>,
}

/// What a near miss earns.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct PartialFile {
    /// Up to so many tolerances off.
    #[schemars(with = "f64", range(min = 1, max = 10))]
    within: Spanned<f64>,
    /// Share of the marks, such as "50 %".
    #[schemars(with = "schema::PlainValue")]
    earns: Spanned<Toml>,
}

/// With how many figures an answer is to be written.
#[derive(Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct QuotedFile {
    /// At least so many.
    #[schemars(range(min = 1, max = 12))]
    least: u8,
    /// At most so many.
    #[schemars(range(min = 1, max = 12))]
    most: u8,
    /// Marks that other ones cost.
    #[serde(default = "one")]
    costs: u32,
}

fn one() -> u32 {
    1
}

impl MarkingFile {
    pub(crate) fn read(self, problems: &mut Vec<Problem>) -> Marking {
        let partial = self.partial.map(|partial| {
            let within = *partial.within.get_ref();
            if !(within > 1.0 && within <= 10.0) {
                problems.push(Problem::at(partial.within.span(), NEAR_MISS.text(), write_say("within = 2")));
            }
            Partial { within, earns: share(problems, &partial.earns, "earns", 1.0) }
        });
        let figures = self.figures.map(|figures| {
            let QuotedFile { least, most, costs } = *figures.get_ref();
            if least == 0 || least > most || most > 12 || costs == 0 {
                problems.push(Problem::at(
                    figures.span(),
                    FIGURES.text(),
                    write_say("figures = { least = 2, most = 5, costs = 1 }"),
                ));
            }
            Quoted { least, most, costs }
        });
        let unit_may_miss = self.unit.is_some_and(|unit| {
            if !matches!(unit.get_ref().as_str(), "must" | "may") {
                let what = NO_UNIT_RULE.say(&[("word", &quoted(unit.get_ref()))]);
                let mend = WRITE_EITHER.say(&[("one", "unit = \"must\""), ("other", "unit = \"may\"")]);
                problems.push(Problem::at(unit.span(), what, mend));
            }
            unit.get_ref() == "may"
        });
        let method = self.method.as_ref().map(|method| share(problems, method, "method", 1.0));
        Marking { partial, figures, unit_may_miss, method }
    }
}

impl Marking {
    /// The same, for a question that fails a paper which misses it: nothing but the answer counts.
    #[must_use]
    pub fn for_safety(self) -> Self {
        Self { figures: None, ..self }
    }

    /// Whether results on the way are asked for.
    pub fn asks_steps(&self) -> bool {
        self.method.is_some()
    }

    /// How papers are marked, in general terms, a sentence or two each; `safety` where a missed safety question fails,
    /// `more` where a part asks for more than three figures.
    pub fn policy(&self, safety: bool, more: bool) -> Vec<String> {
        let percent = |share: f64| format!("{:.0} %", share * 100.0);
        let three = !more && self.figures.is_none_or(|Quoted { least, most, .. }| (least..=most).contains(&3));
        let mut close = POLICY_CLOSE.text().to_owned();
        if three {
            close = format!("{close} {}", POLICY_THREE.text());
        }
        let mut out = vec![if self.unit_may_miss { POLICY_UNIT_PRINTED } else { POLICY_UNIT }.text().to_owned(), close];
        if let Some(Partial { within, earns }) = self.partial {
            let within = language::with_decimal_mark(within.to_string());
            out.push(POLICY_PARTIAL.say(&[("within", &within), ("share", &percent(earns))]));
        }
        if let Some(Quoted { least, most, costs }) = self.figures {
            let says = if costs == 1 { POLICY_FIGURES_ONE } else { POLICY_FIGURES };
            let words = [("least", least.to_string()), ("most", most.to_string()), ("costs", costs.to_string())];
            out.push(says.say(&words.each_ref().map(|(name, word)| (*name, word.as_str()))));
        }
        if let Some(method) = self.method {
            out.push(POLICY_METHOD.say(&[("share", &percent(method))]));
        }
        out.push(POLICY_CARRIED.text().into());
        if safety {
            out.push(POLICY_SAFETY.text().into());
        }
        out.push(POLICY_WORKING.text().into());
        out
    }

    pub(crate) fn wanted(&self, quantity: QuantityId, system: System) -> Wanted {
        let quantity = quantity.get();
        let wanted =
            if self.unit_may_miss { Wanted::in_unit(quantity.unit(system)) } else { Wanted::new(quantity.kind) };
        wanted.on_scale_of(quantity.unit(system)).as_spoken()
    }

    /// Marks that a near miss earns.
    pub(crate) fn near(&self, keys: &[Key], base: f64, marks: u32) -> u32 {
        let Some(Partial { within, earns }) = self.partial else { return 0 };
        let near = |key: &Key| (base - key.value).abs() <= within * key.tolerance * (1.0 + 1e-9);
        if keys.iter().any(near) { part_of(marks, earns) } else { 0 }
    }

    /// Marks left of `earned` for an answer quoted as `read` is.
    pub(crate) fn quoted(&self, asked: QuantityId, read: &Amount, system: System, earned: u32) -> u32 {
        let Some(Quoted { least, most, costs }) = self.figures else { return earned };
        let figures = asked.get().display(system).figures;
        let exempt =
            matches!(asked.get().kind, Kind::Count | Kind::Choice) || !matches!(figures, Figures::Significant(_));
        let settled = settled(read);
        if exempt || earned == 0 || (read.figures >= least && settled <= most) {
            earned
        } else {
            earned.saturating_sub(costs).max(1)
        }
    }

    /// Marks that results on the way earn, and how many of how many were found.
    pub(crate) fn way(&self, keys: &[Key], steps: &str, system: System, marks: u32) -> (u32, usize, usize) {
        let Some(method) = self.method else { return (0, 0, 0) };
        let best =
            keys.iter().map(|key| found(key, steps, system)).max_by_key(|(found, of)| (*found * 1000) / (*of).max(1));
        let (found, of) = best.unwrap_or_default();
        let share = if of == 0 { 0.0 } else { method * found as f64 / of as f64 };
        (part_of(marks, share), found, of)
    }
}

/// A share of whole marks, rounded down; a hair for shares that no binary number hits.
fn part_of(marks: u32, share: f64) -> u32 {
    (f64::from(marks) * share + 1e-9) as u32
}

/// Significant figures without the closing noughts of a whole number, which may be there for their place only.
fn settled(read: &Amount) -> u8 {
    if !matches!(read.shown, Figures::Places(0)) {
        return read.figures;
    }
    let mut number = read.written.abs();
    let mut figures = read.figures;
    while figures > 1 && number >= 10.0 && number % 10.0 == 0.0 {
        number /= 10.0;
        figures -= 1;
    }
    figures
}

/// How many results on the way of `key` stand among `steps`, and how many there are.
fn found(key: &Key, steps: &str, system: System) -> (usize, usize) {
    let written: Vec<&str> = steps
        .split([';', '\n', '\r', '→'])
        .map(|step| step.rsplit('=').next().unwrap_or("").trim())
        .filter(|step| !step.is_empty())
        .collect();
    let on_the_way = key.path.steps.iter().enumerate().take(key.path.steps.len().saturating_sub(1));
    let (mut found, mut of) = (0, 0);
    for (place, step) in on_the_way {
        let gives = step.get().gives;
        let quantity = gives.get();
        of += 1;
        let value = key.values[gives.index()];
        let path = Path { steps: key.path.steps[..=place].to_vec(), asked: gives };
        let tolerance = tolerance::of(&path, &key.values, &[], system);
        found += usize::from(written.iter().any(|text| {
            if quantity.kind == Kind::Choice {
                return amount::read_choice(text, quantity.labels).is_ok_and(|choice| choice as f64 == value);
            }
            amount::read(text, &Wanted::new(quantity.kind).on_scale_of(quantity.unit(system)).as_spoken())
                .is_ok_and(|read| (read.base - value).abs() <= tolerance * (1.0 + 1e-9) + 1e-12 * value.abs())
        }));
    }
    (found, of)
}

messages! { pub(crate) AUTHOR_SAYS {
    NEAR_MISS = "problem-marking-near-miss", "A near miss lies between 1 and 10 tolerances off.";
    FIGURES = "problem-marking-figures", "Answers have at least 1 and at most 12 figures, and other ones cost at least a mark.";
    NO_UNIT_RULE = "problem-marking-no-unit-rule", "{word} says nothing about units.";
} }

messages! { pub(crate) SAYS {
    POLICY_UNIT_PRINTED = "policy-unit-printed", "Write each answer with its unit; any unit of the right kind will do. A number without a unit is read in the unit printed beside the answer.";
    POLICY_UNIT = "policy-unit", "Write each answer with its unit. Any unit of the right kind will do.";
    POLICY_CLOSE = "policy-close", "An answer is right when it lies as close as the instruments and sensible rounding on the way allow.";
    POLICY_THREE = "policy-three", "Three figures are enough where the question does not ask for more.";
    POLICY_PARTIAL = "policy-partial", "An answer up to {within} times as far off earns {share} of the marks, rounded down to whole marks, unless it comes from a known mistake.";
    POLICY_FIGURES_ONE = "policy-figures-one", "Quote results with {least} to {most} significant figures: fewer or more cost a mark, but never the last one.";
    POLICY_FIGURES = "policy-figures", "Quote results with {least} to {most} significant figures: fewer or more cost {costs} marks, but never the last one.";
    POLICY_METHOD = "policy-method", "Where the way takes several steps, write the result of each with its unit in the room to work: right results on the way earn up to {share} of the marks, rounded down, when the answer is wrong.";
    POLICY_CARRIED = "policy-carried", "A later part is also marked from your own earlier answer: a slip is charged once.";
    POLICY_SAFETY = "policy-safety", "Questions about safety must be right, whatever the score; and whoever calls a machine fit to run that must stop does not pass.";
    POLICY_WORKING = "policy-working", "Show your working: it helps you, and the assessor if an answer is in doubt.";
} }

#[cfg(test)]
mod tests;
