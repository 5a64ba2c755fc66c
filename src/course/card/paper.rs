//! Papers and keys filled from questions.

use drivecourse_machine::formula::symbol_mathml;
use drivecourse_machine::{Figures, Kind, Known, QuantityId, System, amount, messages};
use drivecourse_quiz::explain::{self, part_letter};
use drivecourse_quiz::{Body, Item, Part, Question, letter};

use super::again;
use crate::pages::model::{self, Given, Head, Key, KeyPart, KeyQuestion, Paper, Step, Trusted};
use crate::portray::{Portrait, PortrayError};
use crate::view::{answer_unit, capital, givens, left_of, other_methods, right_of, story, wrong_answers};

/// One question on a paper, with the item it came from.
#[derive(Debug, Clone, Copy)]
pub struct Sheet<'a> {
    /// The item.
    pub item: &'a Item,
    /// The question.
    pub question: &'a Question,
    /// What the machines of its family are called.
    pub family: &'a str,
}

impl Sheet<'_> {
    /// The machine it is about: what it is called, and its own name where a table names it.
    fn machine(&self) -> String {
        let own = self.question.machine.iter().map(String::as_str);
        capital(&core::iter::once(self.family).chain(own).collect::<Vec<_>>().join(", "))
    }
}

messages! { pub(crate) SAYS {
    ORDER = "answer-order", "letters in order";
    TO_FIGURES = "answer-to-figures", "to {figures} figures";
    TO_WHOLE = "answer-to-whole", "to a whole number";
    TO_STEP = "answer-to-step", "to {step}";
    TWO = "answer-two", "two";
    THREE = "answer-three", "three";
    FOUR = "answer-four", "four";
    OR = "answer-or", "or";
    OTHER_METHOD = "answer-other-method", "by another accepted method {answers}";
} }

/// Lines of room the paper template knows.
const ROOMS: [usize; 6] = [2, 4, 6, 8, 10, 12];

/// A candidate's paper: `head` names the exam, plant, candidate and code.
///
/// # Errors
/// When an item's picture cannot be drawn.
pub fn paper_model(
    head: Head,
    sheets: &[Sheet<'_>],
    time: Option<String>,
    cautions: Vec<String>,
    policy: Vec<String>,
) -> Result<Paper, PortrayError> {
    let questions = sheets
        .iter()
        .enumerate()
        .map(|(place, sheet)| question(&head.code, place + 1, *sheet, again::told(&sheets[..place], sheet)))
        .collect::<Result<_, _>>()?;
    Ok(Paper { head, time, marks: total(sheets).to_string(), cautions, policy, questions, large: false })
}

/// Lets every part of `paper` whose way takes several steps ask for the results on it.
pub fn ask_for_the_way(paper: &mut Paper, sheets: &[Sheet<'_>]) {
    for (shown, sheet) in paper.questions.iter_mut().zip(sheets) {
        for (shown, part) in shown.parts.iter_mut().zip(&sheet.question.parts) {
            shown.way = part.key().is_some_and(|key| key.path.steps.len() > 1);
        }
    }
}

/// Whether a part of a paper asks for more than three figures: what is said of three in general does not stand beside that.
#[must_use]
pub fn asks_for_more(sheets: &[Sheet<'_>]) -> bool {
    let more = |question: &Question, part: &Part| {
        let Some(key) = part.key().filter(|key| !hint(key.path.asked, question.system).is_empty()) else {
            return false;
        };
        let quantity = key.path.asked.get();
        let shown = quantity.unit(question.system).from_base(key.value);
        let step = |figures: Figures| figures.step(shown);
        // A hair below, for steps that are alike but for their last bit.
        shown != 0.0 && step(quantity.display(question.system).figures) < 0.999 * step(Figures::Significant(3))
    };
    sheets.iter().any(|sheet| sheet.question.parts.iter().any(|part| more(sheet.question, part)))
}

/// The examiner's key to the same paper; `made_with` names the versions of program and question files.
#[must_use]
pub fn key_model(head: Head, sheets: &[Sheet<'_>], made_with: String) -> Key {
    let questions = (sheets.iter().enumerate())
        .map(|(place, sheet)| KeyQuestion {
            number: place + 1,
            title: sheet.item.title.clone(),
            machine: sheet.machine(),
            givens: given_list(sheet.question),
            parts: (0..sheet.question.parts.len()).map(|index| key_part(sheet.question, index)).collect(),
        })
        .collect();
    Key { head, marks: total(sheets).to_string(), made_with, questions }
}

fn total(sheets: &[Sheet<'_>]) -> u32 {
    sheets.iter().map(|sheet| sheet.question.marks()).sum()
}

/// A question as it is printed; `again` says which machine it is about, where that is not said as for the first time.
fn question(
    code: &str,
    number: usize,
    sheet: Sheet<'_>,
    again: Option<String>,
) -> Result<model::Question, PortrayError> {
    let Sheet { item, question, .. } = sheet;
    let mut story = story(question);
    // A machine that has a name stands in the first line.
    if let (Some(again), Some(first)) = (again, story.first_mut()) {
        *first = again;
    }
    let figure = item.figure.as_deref().map(|name| {
        let drawing = Portrait::of_question(&format!("{code}-q{number}"), question).draw(name)?;
        Ok(Trusted::made_by_us(format!("<figure>{}</figure>", drawing.svg)))
    });
    Ok(model::Question {
        number,
        title: item.title.clone(),
        story,
        givens: given_list(question),
        figure: figure.transpose()?,
        parts: question.parts.iter().enumerate().map(|(index, part)| paper_part(question, index, part)).collect(),
    })
}

fn paper_part(question: &Question, index: usize, part: &Part) -> model::Part {
    let options: Vec<String> =
        part.options().iter().enumerate().map(|(place, text)| format!("{}: {text}", letter(place))).collect();
    let ordering = matches!(part.body, Body::Order { .. });
    let steps = part.key().map_or(0, |key| key.path.steps.len());
    let room = ROOMS.into_iter().find(|lines| *lines >= 2 * steps).unwrap_or(ROOMS[ROOMS.len() - 1]);
    model::Part {
        label: label(question, index),
        prompt: part.text.clone(),
        unit: answer_unit(part, question.system),
        hint: if ordering {
            ORDER.text().into()
        } else {
            part.asked().map_or_else(String::new, |id| hint(id, question.system))
        },
        marks: part.marks.to_string(),
        room: if options.is_empty() { room } else { 0 },
        choices: options,
        way: false,
    }
}

/// How an answer is to be rounded, in words.
fn hint(id: QuantityId, system: System) -> String {
    let quantity = id.get();
    if matches!(quantity.kind, Kind::Choice | Kind::Count) {
        return String::new();
    }
    let figures = quantity.display(system).figures;
    match figures {
        Figures::Significant(wanted) => TO_FIGURES.say(&[("figures", &in_words(wanted))]),
        Figures::Places(0) => TO_WHOLE.text().into(),
        Figures::Places(_) => TO_STEP.say(&[("step", &amount::number(figures.step(1.0), figures))]),
        Figures::Fraction(parts) => TO_STEP.say(&[("step", &format!("1/{parts}"))]),
    }
}

fn in_words(number: u8) -> String {
    match number {
        2 => TWO.text().into(),
        3 => THREE.text().into(),
        4 => FOUR.text().into(),
        other => other.to_string(),
    }
}

fn label(question: &Question, index: usize) -> String {
    if question.parts.len() > 1 { part_letter(index).to_string() } else { String::new() }
}

fn given_list(question: &Question) -> Vec<Given> {
    let given = |(id, value): (QuantityId, f64)| {
        let quantity = id.get();
        Given {
            name: capital(quantity.name),
            symbol: quantity.symbol.to_owned(),
            value: amount::write(quantity, value, question.system),
            also: limit_in_the_other(id, question).or_else(|| in_the_other(id, value, question.system)),
        }
    };
    givens(&question.parts).into_iter().map(given).collect()
}

fn other(system: System) -> System {
    match system {
        System::Si => System::Us,
        System::Us => System::Si,
    }
}

/// A printed value that its source states in one system of units, in the other one: one limit, one pair. It stands exactly
/// as the source has it in the source's unit. A temperature is rounded in the other as its own papers round it; what loses
/// more by that keeps four figures. Nothing for what no source states in round figures of one system alone.
fn limit_in_the_other(id: QuantityId, question: &Question) -> Option<String> {
    let quantity = id.get();
    let there = other(question.system);
    let stated = question.case.values[id.index()];
    if quantity.known != Known::Plate || quantity.kind == Kind::Choice || stated.is_nan() {
        return None;
    }
    let exact = |system: System| {
        let shown = quantity.unit(system).from_base(stated);
        (quantity.display(system).figures.round(shown) - shown).abs() <= 1e-9 * shown.abs().max(1.0)
    };
    let degrees = matches!(quantity.kind, Kind::Temperature | Kind::TemperatureRise);
    match (exact(question.system), exact(there)) {
        (false, true) => Some(amount::write(quantity, stated, there)),
        (true, false) if degrees => Some(amount::write(quantity, stated, there)),
        _ => None,
    }
}

/// The same value in the other system's unit, to four figures: changing the unit costs no accuracy. What fewer figures say
/// exactly is not drawn out with noughts: 0.002 in is 0.0508 mm. It is the same number, so no tolerance needs them.
fn in_the_other(id: QuantityId, value: f64, system: System) -> Option<String> {
    let quantity = id.get();
    let other = other(system);
    let unit = quantity.unit(other);
    let differs = quantity.kind != Kind::Choice && unit != quantity.unit(system);
    differs.then(|| {
        let there = unit.from_base(value);
        let says = |figures: &Figures| (figures.round(there) - there).abs() <= 1e-9 * there.abs();
        // Two at least, so that a size reads as one: 2.0 in.
        let figures = [2, 3].map(Figures::Significant).into_iter().find(says).unwrap_or(Figures::Significant(4));
        amount::with_unit(&amount::number(there, figures), unit)
    })
}

fn key_part(question: &Question, index: usize) -> KeyPart {
    let part = &question.parts[index];
    let key = part.key();
    let steps = key.map_or_else(Vec::new, |key| {
        let working = question.working(key);
        (working.lines.into_iter())
            .map(|line| {
                let left = left_of(&line);
                let own = line.own.iter().map(|own| format!("{own}; ")).collect::<String>();
                let source = own + &line.source_said();
                Step {
                    what: if line.symbols.is_empty() {
                        format!("{}. {}", line.title, line.method)
                    } else {
                        line.title.into()
                    },
                    symbols: Trusted::made_by_us(line.symbols_mathml),
                    numbers: Trusted::made_by_us(numbers_line(left, &line.numbers)),
                    result: right_of(left, &line.result),
                    source,
                }
            })
            .collect()
    });
    let wrong = wrong_answers(question, part).into_iter();
    let other = other_methods(question, part);
    let mut tolerance = explain::tolerance(question, part);
    if !other.is_empty() {
        let other = other.join(&format!(" {} ", OR.text()));
        tolerance.push_str(&format!("; {}", OTHER_METHOD.say(&[("answers", &other)])));
    }
    KeyPart {
        label: label(question, index),
        prompt: part.text.clone(),
        answer: part.right_answer(question.system),
        also: key.and_then(|key| in_the_other(key.path.asked, key.value, question.system)),
        tolerance,
        marks: part.marks.to_string(),
        steps,
        because: match &part.body {
            Body::Order { because, .. } | Body::Pick { because, .. } => because.clone(),
            Body::Quantity { .. } => String::new(),
        },
        wrong_turns: wrong.map(|row| model::WrongTurn { answer: row.answer, sentence: row.says }).collect(),
    }
}

/// A line of numbers, its symbol as a `math` element and the rest as text, which can break at the edge of a phone; empty
/// for none.
fn numbers_line(left: Option<&str>, numbers: &str) -> String {
    if numbers.is_empty() {
        return String::new();
    }
    let right = right_of(left, numbers).replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;");
    left.map_or_else(|| right.clone(), |symbol| format!("<math>{}</math> = {right}", symbol_mathml(symbol)))
}

#[cfg(test)]
mod tests {
    use drivecourse_machine::Registry;

    use super::*;

    #[test]
    fn the_other_unit_costs_no_accuracy_and_draws_nothing_out() {
        let inch = 0.0254;
        for (id, value, system, text) in [
            ("mount.gap_limit", 0.002 * inch, System::Us, "0.0508 mm"),
            ("mount.gap_limit", 0.000_05, System::Si, "0.001969 in"),
            ("load.bearing_span", 10.0 * inch, System::Us, "254 mm"),
            ("load.bearing_span", 2.0 * inch, System::Si, "2.0 in"),
            ("load.bearing_span", 2.5 * inch, System::Si, "2.5 in"),
            // A nought that rounding has left is a figure like any other.
            ("load.bearing_span", 0.150_37, System::Si, "5.920 in"),
            ("drive.motor_power", 7_500.0, System::Si, "10.06 hp"),
        ] {
            let id = Registry::get().find(id).unwrap();
            let said = in_the_other(id, value, system).unwrap().replace(amount::SPACE, " ");
            assert_eq!(said, text, "{}", id.get().id);
        }
    }
}
