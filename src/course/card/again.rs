//! A machine that comes a second time on a paper: each question draws its own load and readings, and says so.

use drivecourse_machine::Instrument::Tape;
use drivecourse_machine::{Known, QuantityId, messages};
use drivecourse_quiz::Question;

use super::paper::Sheet;
use crate::view::givens;

messages! { pub(crate) SAYS {
    OTHER_DAY = "paper-other-day", "Machine {name} again, but on another day: its load and readings here hold for this question alone.";
    OTHER_FIGURES = "paper-other-figures", "Machine {name} again, but with other figures: those here hold for this question alone.";
} }

/// Which machine `sheet` is about, where a table names it and a question before it is about the same with other numbers.
/// A load or a reading is that of another day. No day changes a plate or a distance between feet: where one of these is
/// not what it was, all that can be said is that the numbers go with their question.
pub(super) fn told(earlier: &[Sheet<'_>], sheet: &Sheet<'_>) -> Option<String> {
    let name = sheet.question.machine.as_ref()?;
    let same = |other: &&Question| other.machine.as_ref() == Some(name) && is_other(other, sheet.question);
    let others: Vec<&Question> = earlier.iter().map(|sheet| sheet.question).filter(same).collect();
    if others.is_empty() || !has_numbers(sheet.question) {
        return None;
    }
    let lasting = others.iter().any(|other| lasting_differs(other, sheet.question));
    Some(if lasting { OTHER_FIGURES } else { OTHER_DAY }.say(&[("name", name)]))
}

/// Whether it shows a number of its machine, or has one read off.
fn has_numbers(question: &Question) -> bool {
    question.parts.iter().any(|part| !part.givens.is_empty() || part.asked().is_some())
}

/// Whether `earlier` shows numbers, and its machine was drawn with others than that of `later`.
fn is_other(earlier: &Question, later: &Question) -> bool {
    // What is not known of one of the two says nothing: nought is never above NaN.
    let apart = |(a, b): (&f64, &f64)| (a - b).abs() > 0.0;
    has_numbers(earlier) && earlier.case.values.iter().zip(&later.case.values).any(apart)
}

/// Whether both show something of the build of their machine, a plate or what a tape is laid along, and not the same.
fn lasting_differs(earlier: &Question, later: &Question) -> bool {
    let lasting = |id: QuantityId| matches!(id.get().known, Known::Plate | Known::Read(Tape));
    let before = givens(&earlier.parts);
    let differs = |(id, value): &(QuantityId, f64)| {
        before.iter().any(|(other, was)| other == id && (was - value).abs() > 1e-9 * value.abs())
    };
    givens(&later.parts).iter().filter(|(id, _)| lasting(*id)).any(differs)
}
