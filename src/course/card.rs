//! What practice cards, worked examples, self-checks and papers share: givens, workings, answers.
//!
//! Everything goes through the templates below `theme/pages`, which escape all text; only formulas and drawings, which
//! our own code makes, go in as they are.

mod paper;
mod results;

use serde::Serialize;

use drivecourse_machine::formula::symbol_mathml;
use drivecourse_machine::working::Line;
use drivecourse_machine::{Known, QuantityId, Registry, Source, System, Working, amount};
use drivecourse_quiz::explain::{self, part_letter};
use drivecourse_quiz::{Body, Item, Part, Question, letter};

use crate::figures::Figure;
use crate::pages::model::Trusted;
use crate::pages::{PageError, Pages};
use crate::portray::how_read;

pub use paper::{Sheet, ask_for_the_way, key_model, paper_model};
pub use results::{candidate_result, class_results};

/// Wrong answers listed in a solution, at most.
const MOST_WRONG: usize = 6;

/// Fills the templates of cards.
#[derive(Debug, Clone, Copy)]
pub struct Cards<'a> {
    pages: &'a Pages,
}

#[derive(Debug, Serialize)]
struct GivenRow {
    name: String,
    how: String,
    symbol: Option<Trusted>,
    value: String,
}

#[derive(Debug, Serialize)]
struct LineRow {
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

#[derive(Debug, Serialize)]
struct PartRow {
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

#[derive(Debug, Serialize)]
struct HintRow {
    letter: Option<char>,
    text: String,
    steps: Vec<&'static str>,
    formulas: Vec<Trusted>,
}

#[derive(Debug, Serialize)]
struct SolutionRow {
    letter: Option<char>,
    text: String,
    answer: String,
    tolerance: String,
    because: String,
    order: Vec<String>,
    working: Option<Trusted>,
    also: Vec<String>,
    wrong: Vec<WrongRow>,
}

#[derive(Debug, Serialize)]
struct WrongRow {
    answer: String,
    says: String,
}

impl<'a> Cards<'a> {
    /// Cards from these templates.
    #[must_use]
    pub fn new(pages: &'a Pages) -> Self {
        Self { pages }
    }

    /// Fills the template `name` and closes the gaps in it: a blank line would end an HTML block in Markdown.
    ///
    /// # Errors
    /// As [`Pages::render`].
    pub fn fill(&self, name: &str, data: &impl Serialize) -> Result<Trusted, PageError> {
        let html = self.pages.render(name, data)?;
        let lines: Vec<&str> = html.lines().map(str::trim).filter(|line| !line.is_empty()).collect();
        Ok(Trusted::made_by_us(lines.join("\n")))
    }

    /// What the learner can see and measure: for one part, or for the whole question.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn givens_table(&self, question: &Question, part: Option<&Part>) -> Result<Trusted, PageError> {
        let parts = part.map_or_else(|| question.parts.as_slice(), core::slice::from_ref);
        let rows: Vec<GivenRow> = givens(parts)
            .into_iter()
            .map(|(id, value)| {
                let quantity = id.get();
                GivenRow {
                    name: capital(quantity.name),
                    how: match question.stated(id) {
                        Some(stated) => stated.source.clone(),
                        None if matches!(quantity.known, Known::Read(_)) => how_known(quantity.known).to_owned(),
                        None => String::new(),
                    },
                    symbol: symbol(id),
                    value: amount::write(quantity, value, question.system),
                }
            })
            .collect();
        self.fill("card-givens.html", &Rows { rows })
    }

    /// A working, step by step: symbols, numbers, result, source.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn working_html(&self, working: &Working) -> Result<Trusted, PageError> {
        let rows: Vec<LineRow> = working.lines.iter().map(line_row).collect();
        self.fill("card-working.html", &Rows { rows })
    }

    /// What is asked in part `index`, without its answer.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn part_html(&self, question: &Question, index: usize) -> Result<Trusted, PageError> {
        let part = &question.parts[index];
        let carried: Vec<String> =
            part.carried.iter().map(|(_, earlier)| format!("({})", part_letter(*earlier))).collect();
        let row = PartRow {
            letter: lettered(question, index),
            text: part.text.clone(),
            marks: part.marks,
            unit: answer_unit(part, question.system),
            ordering: matches!(part.body, Body::Order { .. }),
            options: part
                .options()
                .into_iter()
                .enumerate()
                .map(|(place, text)| Choice { letter: letter(place), text })
                .collect(),
            carried: carried.join(" and "),
        };
        self.fill("card-part.html", &row)
    }

    /// The hints to part `index`: the author's, then the steps, then the formulas.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn hints_html(&self, item: &Item, question: &Question, index: usize) -> Result<Trusted, PageError> {
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
        self.fill("card-hints.html", &Rows { rows })
    }

    /// The answer to part `index` with its working and, for `practice`, what is accepted and which wrong answers to expect.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn solution_html(&self, question: &Question, index: usize, practice: bool) -> Result<Trusted, PageError> {
        let part = &question.parts[index];
        let mut row = SolutionRow {
            letter: lettered(question, index),
            text: part.text.clone(),
            answer: part.right_answer(question.system),
            tolerance: if practice { explain::tolerance(question, part) } else { String::new() },
            because: String::new(),
            order: Vec::new(),
            working: None,
            also: Vec::new(),
            wrong: if practice { wrong_answers(question, part) } else { Vec::new() },
        };
        match &part.body {
            Body::Quantity { keys, .. } => {
                if let Some(key) = keys.first().filter(|key| !key.path.steps.is_empty()) {
                    row.working = Some(self.working_html(
                        &Working::write(&key.path, &key.values, question.system).with(&question.stated),
                    )?);
                }
                row.also = other_methods(question, part);
                if let Some(key) = keys.first().filter(|key| key.path.steps.is_empty()) {
                    row.because = how_read(key.path.asked, key.value, question.system).unwrap_or_default();
                }
            }
            Body::Order { shown, right, because } => {
                row.because.clone_from(because);
                row.order = right.iter().map(|place| shown[*place].clone()).collect();
            }
            Body::Pick { because, .. } => row.because.clone_from(because),
        }
        self.fill("card-solution.html", &row)
    }

    /// A drawing in its frame, with a caption if there is one.
    ///
    /// # Errors
    /// When the template has a fault.
    pub fn figure_html(&self, figure: &Figure, caption: &str) -> Result<Trusted, PageError> {
        #[derive(Serialize)]
        struct Drawn<'a> {
            svg: Trusted,
            caption: &'a str,
        }
        self.fill("card-figure.html", &Drawn { svg: Trusted::made_by_us(figure.svg.clone()), caption })
    }
}

#[derive(Debug, Serialize)]
struct Rows<T> {
    rows: Vec<T>,
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
        source: source_line(line.source),
    }
}

/// The symbol of what a step gives, if it has one.
fn left_of(line: &Line) -> Option<&'static str> {
    let symbol = Registry::get().relation(line.relation)?.gives.get().symbol;
    (!symbol.is_empty()).then_some(symbol)
}

/// What stands behind the first sign of equality, where a symbol stands before it; else the whole, as a sentence.
fn right_of(symbol: Option<&str>, text: &str) -> String {
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
fn answer_unit(part: &Part, system: System) -> String {
    part.asked()
        .filter(|id| id.get().choices.is_empty())
        .map_or_else(String::new, |id| id.get().unit(system).symbol.to_owned())
}

/// Accepted answers by other methods, where they come out differently.
fn other_methods(question: &Question, part: &Part) -> Vec<String> {
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

/// Wrong answers that can be told from the right one as they are written, each once.
fn wrong_answers(question: &Question, part: &Part) -> Vec<WrongRow> {
    if let Body::Pick { against, .. } = &part.body {
        // Each statement with what speaks against it, where the program found that out.
        let wrong = against.iter().enumerate().filter(|(_, says)| !says.is_empty());
        return wrong.map(|(place, says)| WrongRow { answer: letter(place).to_string(), says: says.clone() }).collect();
    }
    let Body::Quantity { asked, keys, predicted } = &part.body else { return Vec::new() };
    let write = |value| amount::write(asked.get(), value, question.system);
    let right = keys.first().map(|key| write(key.value));
    let mut out: Vec<WrongRow> = Vec::new();
    for wrong in predicted {
        let row = WrongRow { answer: write(wrong.value), says: explain::sentence(&wrong.cause) };
        let known = out.iter().any(|other| other.answer == row.answer || other.says == row.says);
        if Some(&row.answer) != right.as_ref() && !known {
            out.push(row);
        }
    }
    out.truncate(MOST_WRONG);
    out
}

/// How a value is come by, in a word or two.
pub(crate) fn how_known(known: Known) -> &'static str {
    match known {
        Known::Worked => "worked out",
        Known::Plate => "plate, drawing or data sheet",
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
        Source::Published { .. } => format!("Source: {source}"),
        other => capital(&other.to_string()),
    }
}

/// `text` with a capital at its beginning.
pub(crate) fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| first.to_uppercase().chain(chars).collect())
}
