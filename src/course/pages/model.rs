//! What the page templates are filled with: plain strings, ready to be read by people.
//!
//! Numbers arrive as text with their unit, because rounding belongs to the calculation, not to a page.

use serde::Serialize;

pub use crate::trusted::Trusted;

/// What stands at the head of every page about one candidate.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Head {
    /// Name of the plant or school.
    pub plant: String,
    /// Title of the exam.
    pub exam: String,
    /// Name of the candidate.
    pub candidate: String,
    /// Code of the paper, printed on every sheet.
    pub code: String,
    /// Day of the exam as people write it, when it is known.
    pub date: Option<String>,
}

/// One reading or nameplate figure handed to the candidate.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Given {
    /// What it is, as in "Centre distance".
    pub name: String,
    /// Its symbol in the formulas, what stands after `_` as a subscript; empty when it has none.
    pub symbol: String,
    /// The figure as read, with its unit.
    pub value: String,
    /// The same in the other system of units, when it differs.
    pub also: Option<String>,
}

/// A candidate's paper; template `paper.html`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Paper {
    /// Who and what.
    #[serde(flatten)]
    pub head: Head,
    /// Time allowed, as in "60 minutes".
    pub time: Option<String>,
    /// Sum of all marks.
    pub marks: String,
    /// Cautions, printed before anything else; a sentence each.
    pub cautions: Vec<String>,
    /// How the paper is marked, a sentence each.
    pub policy: Vec<String>,
    /// The questions in order.
    pub questions: Vec<Question>,
    /// Whether it is printed large.
    pub large: bool,
}

/// Papers or keys one after another in one file; template `bundle.html`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Bundle {
    /// Title of the file.
    pub title: String,
    /// Whether it is printed large.
    pub large: bool,
    /// Always true: a page cannot say how many there are of its own paper.
    pub several: bool,
    /// The papers or keys.
    pub sheets: Vec<BundleSheet>,
}

/// One paper or key in a bundle.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct BundleSheet {
    /// Title of the exam.
    pub exam: String,
    /// Name of the candidate.
    pub candidate: String,
    /// Code of the paper.
    pub code: String,
    /// The body, rendered by `paper-body.html` or `key-body.html`.
    pub body: Trusted,
}

/// Papers or keys one after another in a PDF, each numbered from page 1; template `print/sheets.typ`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Printout {
    /// Title of the file.
    pub title: String,
    /// Whether it is printed large.
    pub large: bool,
    /// The papers or keys.
    pub sheets: Vec<Leaf>,
}

/// A paper or a key.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
pub enum Leaf {
    /// A candidate's paper; template `print/paper.typ`.
    Paper(Paper),
    /// The key to one; template `print/key.typ`.
    Key(Key),
}

/// One question of a paper.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Question {
    /// Its number, from 1.
    pub number: usize,
    /// A few words that name it.
    pub title: String,
    /// What has happened, a paragraph each.
    pub story: Vec<String>,
    /// Readings and nameplate figures.
    pub givens: Vec<Given>,
    /// A drawing with its caption inside, as a whole `figure` element.
    pub figure: Option<Trusted>,
    /// What is asked, in order.
    pub parts: Vec<Part>,
}

/// One thing asked.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Part {
    /// Its letter; empty when a question has one part only.
    pub label: String,
    /// The question itself.
    pub prompt: String,
    /// Unit of the answer, as printed behind the answer line; empty when the answer is a word.
    pub unit: String,
    /// A word or two on how to write the answer, as in "to 0.1 mm"; may be empty.
    pub hint: String,
    /// Marks for it.
    pub marks: String,
    /// Choices to tick; empty when the answer is written.
    pub choices: Vec<String>,
    /// Height of the room to work, in lines.
    pub room: usize,
    /// Whether results on the way earn marks, and so have a line of their own.
    pub way: bool,
}

/// The examiner's key to one paper; template `key.html`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Key {
    /// Who and what.
    #[serde(flatten)]
    pub head: Head,
    /// Sum of all marks.
    pub marks: String,
    /// Versions of program and question files the paper was made with.
    pub made_with: String,
    /// The questions in order.
    pub questions: Vec<KeyQuestion>,
}

/// The answers to one question.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct KeyQuestion {
    /// Its number, from 1.
    pub number: usize,
    /// A few words that name it.
    pub title: String,
    /// The machine it is about, by what its family calls it and its own name, if it has one.
    pub machine: String,
    /// What the candidate was shown.
    pub givens: Vec<Given>,
    /// The answers in order.
    pub parts: Vec<KeyPart>,
}

/// The answer to one thing asked.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct KeyPart {
    /// Its letter; may be empty.
    pub label: String,
    /// The question itself.
    pub prompt: String,
    /// The expected answer with its unit.
    pub answer: String,
    /// The same in the other system of units, when it differs.
    pub also: Option<String>,
    /// What is accepted, as in "± 0.4 mm".
    pub tolerance: String,
    /// Marks for it.
    pub marks: String,
    /// The solution step by step.
    pub steps: Vec<Step>,
    /// Why it is right, where there are no steps; may be empty.
    pub because: String,
    /// Wrong answers to expect.
    pub wrong_turns: Vec<WrongTurn>,
}

/// One step of a worked solution.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Step {
    /// What is found, in words.
    pub what: String,
    /// The formula in symbols, as MathML.
    pub symbols: Trusted,
    /// The formula with numbers and units, as MathML.
    pub numbers: Trusted,
    /// The outcome with its unit.
    pub result: String,
    /// Where the formula is published; may be empty.
    pub source: String,
}

/// A wrong answer and how people come by it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct WrongTurn {
    /// The wrong answer with its unit.
    pub answer: String,
    /// What was done, in a sentence.
    pub sentence: String,
}

/// Summary of a class; template `results.html`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Results {
    /// Name of the plant or school.
    pub plant: String,
    /// Title of the exam.
    pub exam: String,
    /// Day of the exam as people write it, when it is known.
    pub date: Option<String>,
    /// Heads of the columns of marks, as in "Q1 (of 4)".
    pub columns: Vec<String>,
    /// A line for each candidate, with as many marks as there are columns.
    pub candidates: Vec<ResultRow>,
    /// What went wrong, most frequent first.
    pub faults: Vec<Fault>,
    /// Who should practise what.
    pub practice: Vec<Practice>,
    /// Remarks of the program, such as papers not handed in.
    pub remarks: Vec<String>,
}

/// One candidate in a class summary.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ResultRow {
    /// Name of the candidate.
    pub name: String,
    /// Code of the paper.
    pub code: String,
    /// Marks for each column.
    pub marks: Vec<String>,
    /// Sum, as in "14 of 20".
    pub total: String,
    /// The outcome in a word, as in "Pass".
    pub outcome: String,
}

/// One thing that went wrong in a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Fault {
    /// What was done wrong, in a sentence.
    pub sentence: String,
    /// Where, as in "Q2 b".
    pub place: String,
    /// Who did it.
    pub candidates: Vec<String>,
}

/// What one candidate should practise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Practice {
    /// Name of the candidate.
    pub candidate: String,
    /// Topics, most needed first.
    pub topics: Vec<String>,
}

/// One candidate's result; template `candidate.html`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CandidateResult {
    /// Who and what.
    #[serde(flatten)]
    pub head: Head,
    /// Marks earned.
    pub earned: String,
    /// Sum of all marks.
    pub marks: String,
    /// The outcome in a word, as in "Pass".
    pub outcome: String,
    /// Each answer in order.
    pub parts: Vec<PartResult>,
    /// Topics to practise, most needed first.
    pub practice: Vec<String>,
    /// Cautions missed, a sentence each; anything here is to be talked over before work on a machine.
    pub cautions: Vec<String>,
}

/// How one answer was marked.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct PartResult {
    /// Where, as in "1 b".
    pub place: String,
    /// What was asked, in a few words.
    pub asked: String,
    /// The answer as the candidate wrote it; empty when there was none.
    pub answer: String,
    /// The expected answer with its unit.
    pub expected: String,
    /// Marks earned, as in "1 of 2".
    pub marks: String,
    /// What went wrong and what to do about it, a sentence each.
    pub diagnosis: Vec<String>,
}

/// A report from the records; template `report.html`.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
pub struct Report {
    /// Title.
    pub title: String,
    /// What stands at its foot on every page.
    pub foot: String,
    /// Lines under the title.
    pub about: Vec<String>,
    /// What is to be talked over before any work on a machine, a sentence each.
    pub cautions: Vec<String>,
    /// The sections in order.
    pub sections: Vec<ReportSection>,
}

/// A section of a report.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
pub struct ReportSection {
    /// Its heading.
    pub heading: String,
    /// Sentences before the figure.
    pub lines: Vec<String>,
    /// A chart, as a whole `svg` element.
    pub figure: Option<Trusted>,
    /// Headings of the table; empty where there is none.
    pub headings: Vec<String>,
    /// Its rows, as many cells as there are headings.
    pub rows: Vec<Vec<String>>,
}
