//! What a card says of a question, row by row and before any markup: the pages fill templates with it, the browser build
//! hands it out as JSON.

use serde::Serialize;

use drivecourse_machine::formula::symbol_mathml;
use drivecourse_machine::working::Line;
use drivecourse_machine::{Known, QuantityId, Registry, Source, System, Working, amount, messages};
use drivecourse_quiz::explain::{self, part_letter};
use drivecourse_quiz::{Body, Item, Part, Question, letter};

use crate::portray::how_read;
use crate::trusted::Trusted;

messages! { pub(crate) SAYS {
    IN_SI = "card-in-si", "In SI units";
    IN_US = "card-in-us", "In US units";
    WORKED = "card-worked-out", "worked out";
    PLATE = "card-plate", "plate, drawing or data sheet";
    SOURCE = "card-source", "Source: {source}";
} }

/// Wrong answers listed in a solution, at most.
const MOST_WRONG: usize = 6;

/// Something given: what, how it is known, its value.
#[derive(Debug, Serialize)]
pub struct GivenRow {
    name: String,
    how: String,
    symbol: Option<Trusted>,
    value: String,
}

/// A step of a worked solution.
#[derive(Debug, Serialize)]
pub struct LineRow {
    title: &'static str,
    method: &'static str,
    symbols: Option<Trusted>,
    left: Option<Trusted>,
    numbers: String,
    result: String,
    limits: String,
    own: Vec<String>,
    source: String,
}

/// What is asked in a part, without its answer.
#[derive(Debug, Serialize)]
pub struct PartRow {
    letter: Option<char>,
    text: String,
    marks: u32,
    unit: String,
    ordering: bool,
    options: Vec<Choice>,
    carried: String,
}

#[derive(Debug, Serialize)]
struct Choice {
    letter: char,
    text: String,
}

/// A hint: the author's words, or the steps, or the formulas.
#[derive(Debug, Serialize)]
pub struct HintRow {
    letter: Option<char>,
    text: String,
    steps: Vec<&'static str>,
    formulas: Vec<Trusted>,
}

/// The answer to a part, its steps, what is accepted and which wrong answers to expect.
#[derive(Debug, Serialize)]
pub struct SolutionRow {
    letter: Option<char>,
    text: String,
    answer: String,
    tolerance: String,
    because: String,
    order: Vec<String>,
    pub(crate) lines: Vec<LineRow>,
    also: Vec<String>,
    wrong: Vec<WrongRow>,
}

#[derive(Debug, Serialize)]
pub(crate) struct WrongRow {
    pub(crate) answer: String,
    pub(crate) says: String,
}

/// What the learner can see and measure: for one part, or for the whole question.
#[must_use]
pub fn given_rows(question: &Question, part: Option<&Part>) -> Vec<GivenRow> {
    let parts = part.map_or_else(|| question.parts.as_slice(), core::slice::from_ref);
    let row = |(id, value): (QuantityId, f64)| {
        let quantity = id.get();
        GivenRow {
            name: capital(quantity.name),
            how: match question.stated(id, value) {
                Some(stated) => stated.source.clone(),
                None if matches!(quantity.known, Known::Read(_)) => how_known(quantity.known).to_owned(),
                None => String::new(),
            },
            symbol: symbol(id),
            value: amount::write(quantity, value, question.system),
        }
    };
    givens(parts).into_iter().map(row).collect()
}

/// A working, step by step: symbols, numbers, result, source.
#[must_use]
pub fn line_rows(working: &Working) -> Vec<LineRow> {
    working.lines.iter().map(line_row).collect()
}

/// What is asked in part `index`.
#[must_use]
pub fn part_row(question: &Question, index: usize) -> PartRow {
    let part = &question.parts[index];
    let options = part.options().into_iter().enumerate();
    PartRow {
        letter: lettered(question, index),
        text: part.text.clone(),
        marks: part.marks,
        unit: answer_unit(part, question.system),
        ordering: matches!(part.body, Body::Order { .. }),
        options: options.map(|(place, text)| Choice { letter: letter(place), text }).collect(),
        carried: explain::earlier_parts(part),
    }
}

/// The hints to part `index`: the author's, then the steps, then the formulas.
#[must_use]
pub fn hint_rows(item: &Item, question: &Question, index: usize) -> Vec<HintRow> {
    let letter = lettered(question, index);
    let row = |text: String, steps, formulas| HintRow { letter, text, steps, formulas };
    let own = item.parts.get(index).map_or(&[][..], |part| &part.hints);
    let mut rows: Vec<HintRow> = own.iter().map(|hint| row(hint.clone(), Vec::new(), Vec::new())).collect();
    if let Some(key) = question.parts[index].key() {
        let working = Working::write(&key.path, &key.values, question.system);
        let titles: Vec<_> = working.lines.iter().map(|line| line.title).collect();
        let formulas: Vec<_> = working.lines.iter().filter_map(formula).collect();
        if titles.len() > 1 {
            rows.push(row(String::new(), titles, Vec::new()));
        }
        if !formulas.is_empty() {
            rows.push(row(String::new(), Vec::new(), formulas));
        }
    }
    rows
}

/// The answer to part `index` with its steps and, for `practice`, what is accepted and which wrong answers to expect.
#[must_use]
pub fn solution_row(question: &Question, index: usize, practice: bool) -> SolutionRow {
    let part = &question.parts[index];
    let mut row = SolutionRow {
        letter: lettered(question, index),
        text: part.text.clone(),
        answer: part.right_answer(question.system),
        tolerance: if practice { explain::tolerance(question, part) } else { String::new() },
        because: String::new(),
        order: Vec::new(),
        lines: Vec::new(),
        also: Vec::new(),
        wrong: if practice { wrong_answers(question, part) } else { Vec::new() },
    };
    match &part.body {
        Body::Quantity { keys, .. } => {
            if let Some(key) = keys.first() {
                let working = question.working(key);
                row.lines = line_rows(&working);
                if key.path.steps.is_empty() {
                    row.because = how_read(key.path.asked, key.value, question.system).unwrap_or_default();
                }
            }
            row.also = other_methods(question, part);
        }
        Body::Order { shown, right, because } => {
            row.because.clone_from(because);
            row.order = right.iter().map(|place| shown[*place].clone()).collect();
        }
        Body::Pick { because, .. } => row.because.clone_from(because),
    }
    row
}

/// The paragraphs of a question's story; the first names the machine, where a table does.
#[must_use]
pub fn story(question: &Question) -> Vec<String> {
    let lines = question.text.split("\n\n").map(str::trim).filter(|line| !line.is_empty()).map(str::to_owned);
    question.machine_says().into_iter().chain(lines).collect()
}

/// The questions about one machine that differ in their units: one alone where nothing in them depends on the units.
#[must_use]
pub fn faces(questions: &[Question]) -> &[Question] {
    let same = questions.len() > 1 && questions.windows(2).all(|pair| alike(&pair[0], &pair[1]));
    if same { &questions[..1] } else { questions }
}

/// Whether two questions read the same: nothing in them depends on the units.
fn alike(a: &Question, b: &Question) -> bool {
    let plain = |question: &Question| {
        question.parts.iter().all(|part| part.givens.is_empty() && !matches!(part.body, Body::Quantity { .. }))
    };
    a.text == b.text
        && plain(a)
        && plain(b)
        && a.parts.iter().zip(&b.parts).all(|(a, b)| a.text == b.text && a.options() == b.options())
}

/// The class that the page's switch of units looks for; none where there is nothing to switch.
#[must_use]
pub fn face_class(system: System, both: bool) -> &'static str {
    match system {
        _ if !both => "",
        System::Si => "units-si",
        System::Us => "units-us",
    }
}

/// What a face is called where both stand below each other.
#[must_use]
pub fn face_name(system: System, both: bool) -> &'static str {
    match system {
        _ if !both => "",
        System::Si => IN_SI.text(),
        System::Us => IN_US.text(),
    }
}

/// What the parts show, each thing once, in order.
pub(crate) fn givens(parts: &[Part]) -> Vec<(QuantityId, f64)> {
    let mut out: Vec<(QuantityId, f64)> = Vec::new();
    for (id, value) in parts.iter().flat_map(|part| part.givens.iter().copied()) {
        if !out.iter().any(|(other, _)| *other == id) {
            out.push((id, value));
        }
    }
    out
}

fn line_row(line: &Line) -> LineRow {
    let left = left_of(line);
    LineRow {
        title: line.title,
        method: line.method,
        symbols: formula(line),
        left: left.map(|symbol| Trusted::made_by_us(format!("<math>{}</math>", symbol_mathml(symbol)))),
        numbers: right_of(left, &line.numbers),
        result: right_of(left, &line.result),
        limits: capital(line.limits),
        own: line.own.iter().map(|text| capital(text)).collect(),
        source: if line.own.is_empty() { source_line(line.source) } else { capital(&line.source_said()) },
    }
}

/// The symbol of what a step gives, if it has one.
pub(crate) fn left_of(line: &Line) -> Option<&'static str> {
    let symbol = Registry::get().relation(line.relation)?.gives.get().symbol;
    (!symbol.is_empty()).then_some(symbol)
}

/// What stands behind the first sign of equality, where a symbol stands before it; else the whole, as a sentence.
pub(crate) fn right_of(symbol: Option<&str>, text: &str) -> String {
    match text.split_once(" = ") {
        Some((_, right)) if symbol.is_some() => right.to_owned(),
        _ => capital(text),
    }
}

fn formula(line: &Line) -> Option<Trusted> {
    (!line.symbols_mathml.is_empty()).then(|| Trusted::made_by_us(line.symbols_mathml.clone()))
}

/// The letter of a part, where there is more than one.
fn lettered(question: &Question, index: usize) -> Option<char> {
    (question.parts.len() > 1).then(|| part_letter(index))
}

/// Unit of a written answer; empty for a choice, a count or a plain number.
pub(crate) fn answer_unit(part: &Part, system: System) -> String {
    part.asked()
        .filter(|id| id.get().choices.is_empty())
        .map_or_else(String::new, |id| id.get().unit(system).said().to_owned())
}

/// Accepted answers by other methods, where they come out differently.
pub(crate) fn other_methods(question: &Question, part: &Part) -> Vec<String> {
    let Body::Quantity { asked, keys, .. } = &part.body else { return Vec::new() };
    let write = |value| amount::write(asked.get(), value, question.system);
    let usual = keys.first().map(|key| write(key.value));
    let mut out: Vec<String> = Vec::new();
    for key in keys.iter().skip(1) {
        let text = write(key.value);
        if Some(&text) != usual.as_ref() && !out.contains(&text) {
            out.push(text);
        }
    }
    out
}

/// Wrong answers that can be told from the right one as they are written, each once, the author's own first.
pub(crate) fn wrong_answers(question: &Question, part: &Part) -> Vec<WrongRow> {
    if let Body::Pick { against, .. } = &part.body {
        // Each statement with what speaks against it, where the program found that out.
        let wrong = against.iter().enumerate().filter(|(_, says)| !says.is_empty());
        return wrong.map(|(place, says)| WrongRow { answer: letter(place).to_string(), says: says.clone() }).collect();
    }
    let Body::Quantity { asked, keys, predicted } = &part.body else { return Vec::new() };
    let write = |value| amount::write(asked.get(), value, question.system);
    let right = keys.first().map(|key| write(key.value));
    let given = givens(&question.parts);
    let seen: Vec<_> = given.iter().map(|(id, value)| amount::write(id.get(), *value, question.system)).collect();
    let mut out: Vec<WrongRow> = Vec::new();
    // What the item's author foresees comes first: of the many others only some are listed.
    let own = predicted.iter().filter(|wrong| wrong.is_own());
    for wrong in own.chain(predicted.iter().filter(|wrong| !wrong.is_own())) {
        let row = WrongRow { answer: write(wrong.value), says: explain::sentence(&wrong.cause) };
        if Some(&row.answer) == right.as_ref() || out.iter().any(|other| other.answer == row.answer) {
            continue;
        }
        match out.iter_mut().find(|other| other.says == row.says) {
            // Of two ways to the same mistake, such as a reading in °C and one in °F taken for a difference, the one whose
            // number stands among what is given.
            Some(other) if seen.contains(&row.answer) && !seen.contains(&other.answer) => *other = row,
            Some(_) => {}
            None => out.push(row),
        }
    }
    out.truncate(MOST_WRONG);
    out
}

/// How a value is come by, in a word or two.
pub(crate) fn how_known(known: Known) -> &'static str {
    match known {
        Known::Worked => WORKED.text(),
        Known::Plate => PLATE.text(),
        Known::Read(instrument) => instrument.name(),
    }
}

/// A quantity's symbol in a line of text, if it has one.
pub(crate) fn symbol(id: QuantityId) -> Option<Trusted> {
    let symbol = id.get().symbol;
    (!symbol.is_empty()).then(|| Trusted::made_by_us(format!("<math>{}</math>", symbol_mathml(symbol))))
}

/// Where a step comes from, as a line of its own.
pub(crate) fn source_line(source: Source) -> String {
    match source {
        Source::Published { .. } => SOURCE.say(&[("source", &source.to_string())]),
        other => capital(&other.to_string()),
    }
}

/// `text` with a capital at its beginning.
pub fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| first.to_uppercase().chain(chars).collect())
}
