//! Responses: what candidates wrote, from CSV and JSON files of any make.
//!
//! CSV has the headings `paper, question, part, answer` in any order, and `steps` where results on the way are asked for ([`template`] writes one with
//! reminders besides); JSON is a list of objects with the same names, or
//! `{"responses": [{"paper": "...", "answers": [{"question": 1, "part": "a", "answer": "..."}]}]}`.
//!
//! Decisions, each reported as a [`Notice`] with its line:
//!
//! * an unknown paper code, question or part: the row is left out; a code with a slip in it is told
//!   from one that belongs to another exam, and the code that was meant is named, never assumed; what is
//!   wrong with a code is said once a file, with all its lines;
//! * the same part answered twice: identical answers count once, else the later one counts; a blank
//!   never wipes an answer;
//! * a part without its letter is part a of a question with one part; of any other it is left out;
//! * a row whose candidate is not the paper's is left out: papers were swapped, or a code miscopied;
//! * a later file is a later answer: a late one changes marks only here, never in records without a reason;
//! * line breaks inside quotation marks belong to the cell; a quotation mark that is never closed is said at its line;
//! * bytes: a mark at the beginning decides, else UTF-8 if it is sound, else UTF-16 or Windows-1252, which is said;
//! * columns and members of other names are left alone; cells beyond the last heading are joined
//!   to the answer if that is the last column (a comma inside an answer), else the row is left out.

pub(crate) mod json;
pub(crate) mod table;

pub use table::{Writer, decode};

use std::collections::BTreeMap;

use drivecourse_machine::language::Message;
use drivecourse_machine::messages;

use crate::code::{Code, NoCode};
use crate::exam::{Exam, Record};
use crate::explain::part_letter;
use crate::marking::Written;
use crate::paper::Paper;
use table::Table;

messages! { pub(crate) SAYS {
    NO_NEW = "notice-no-new", "This file holds no new answers.";
    NO_COLUMN = "notice-no-column", "This file has no column {columns}: its first row must read paper,question,part,answer. Nothing was taken from it.";
    UNCLOSED = "notice-unclosed", "A quotation mark opens here and is never closed: the rest was read as one cell.";
    TOO_MANY_CELLS = "notice-too-many-cells", "This row has more cells than the headings; it was left out.";
    SEVERAL_CELLS = "notice-several-cells", "The answer runs over several cells; it was read as {answer}.";
    SWAPPED = "notice-swapped", "Paper {code} is {name}'s, but the row says {said}: swapped papers, or a code miscopied.";
    NO_QUESTION = "notice-no-question", "Paper {code} has questions 1 to {count}, and no {said}; the row was left out.";
    NO_PART = "notice-no-part", "Question {question} of paper {code} has parts a to {last}, and no {said}; the row was left out.";
    PLACE = "notice-place", "question {question} ({part}) of paper {code}";
    LINE = "notice-line", "line {line}";
    OTHER_STEPS = "notice-other-steps", "Other results on the way to {place} than at {line}; the later ones count.";
    SAME_ANSWER = "notice-same-answer", "The same answer to {place} as at {line}; it counts once.";
    ANSWER_STANDS = "notice-answer-stands", "Blank, but {place} was answered at {line}; that answer stands.";
    OTHER_ANSWER = "notice-other-answer", "Another answer to {place} than at {line}: {later} counts, {earlier} does not.";
    NAMES_NO_PAPER = "notice-names-no-paper", "This row names no paper; it was left out.";
    NO_PAPER = "notice-no-paper", "There is no paper {code} in the exam {exam}: it belongs to another exam or sitting.";
    SLIP = "notice-slip", "{said} has a slip in it: a character is wrong, or two are swapped.";
    NO_CODE = "notice-no-code", "{said} is no paper code: that has ten letters and figures, never 0 or O.";
    WAS_MEANT = "notice-was-meant", "Was {code} meant?";
    LEFT_OUT = "notice-left-out", "The row was left out.";
    LINES_LEFT_OUT = "notice-lines-left-out", "Lines {lines} were left out.";
    /// Of a file that has no lines, but answers one after another.
    ANSWERS_LEFT_OUT = "notice-answers-left-out", "Answers {lines} were left out.";
    FROM_TO = "notice-from-to", "{first} to {last}";
    AND = "notice-and", "and";
    DAMAGED = "notice-damaged", "Some characters of this file are damaged; they are shown as \u{fffd}.";
    UTF_16 = "notice-utf-16", "Read as UTF-16, without its mark.";
    NO_UTF_8 = "notice-no-utf-8", "This file is not UTF-8; it was read as Windows-1252.";
} }

const COLUMNS: &[&str] = &["paper", "candidate", "question", "part", "asked", "steps", "answer"];

/// Something about a response file that the assessor should know.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize)]
pub struct Notice {
    /// Which file.
    pub file: String,
    /// Line, counted from 1; for JSON the number of the answer.
    pub line: Option<usize>,
    /// Whether an answer was left out because of it.
    pub lost: bool,
    /// A sentence or two.
    pub says: String,
}

impl core::fmt::Display for Notice {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self.line {
            Some(line) => write!(f, "{}:{line}: {}", self.file, self.says),
            None => write!(f, "{}: {}", self.file, self.says),
        }
    }
}

/// One row, as written.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
struct Row {
    paper: String,
    candidate: String,
    question: String,
    part: String,
    steps: String,
    answer: String,
}

/// An answer and where it was found.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Given {
    text: String,
    steps: String,
    file: usize,
    line: usize,
}

/// The answers of every paper of an exam.
#[derive(Debug, Clone)]
pub struct Responses<'e> {
    exam: &'e Exam,
    papers: BTreeMap<Code, &'e Record>,
    given: BTreeMap<(Code, usize, usize), Given>,
    /// How often an answer was new, or took the place of another.
    kept: usize,
    files: Vec<String>,
    /// What was noticed, in the order of the files.
    pub notices: Vec<Notice>,
    /// What is wrong with the codes of the file that is being read: what is said of each, and whose rows.
    codes: BTreeMap<String, Refused>,
}

/// Rows of a file that are left out for what is wrong with their code.
#[derive(Debug, Clone)]
struct Refused {
    /// Which notice tells of them.
    notice: usize,
    lines: Vec<usize>,
}

/// Why a row is left out.
enum Why {
    /// For what is wrong with its code, as with every row of that paper.
    Code(String),
    /// For something of its own.
    Row(String),
}

impl<'e> Responses<'e> {
    /// None yet.
    pub fn new(exam: &'e Exam) -> Self {
        let papers = exam.papers.iter().map(|record| (record.code, record)).collect();
        Self {
            exam,
            papers,
            given: BTreeMap::new(),
            kept: 0,
            files: Vec::new(),
            notices: Vec::new(),
            codes: BTreeMap::new(),
        }
    }

    /// Adds a file, CSV or JSON as its first character says; later files count as later answers.
    pub fn add(&mut self, file: &str, bytes: &[u8]) {
        self.files.push(file.to_owned());
        let (text, note) = decode(bytes);
        if let Some(note) = note {
            self.say(None, false, note);
        }
        let before = self.kept;
        let is_json = text.trim_start_matches('\u{feff}').trim_start().starts_with(['{', '[']);
        if is_json {
            self.json(&text);
        } else {
            self.csv(&text);
        }
        self.tell_codes(if is_json { ANSWERS_LEFT_OUT } else { LINES_LEFT_OUT });
        if self.kept == before && !self.notices.iter().any(|notice| notice.file == file) {
            self.say(None, false, NO_NEW.text());
        }
    }

    fn say(&mut self, line: Option<usize>, lost: bool, says: impl Into<String>) {
        let file = self.files.last().cloned().unwrap_or_default();
        self.notices.push(Notice { file, line, lost, says: says.into() });
    }

    fn csv(&mut self, text: &str) {
        let table = Table::read(text, COLUMNS);
        let missing: Vec<&str> =
            ["paper", "question", "answer"].into_iter().filter(|name| table.column(name).is_none()).collect();
        if !missing.is_empty() {
            self.say(Some(1), true, NO_COLUMN.say(&[("columns", &missing.join(", "))]));
            return;
        }
        if let Some((line, _)) = table.unclosed {
            self.say(Some(line), true, UNCLOSED.text());
        }
        let columns: Vec<_> = COLUMNS.iter().map(|name| table.column(name)).collect();
        for row in &table.rows {
            let cell = |place: usize| row.cell(columns[place]).to_owned();
            let mut written = Row {
                paper: cell(0),
                candidate: cell(1),
                question: cell(2),
                part: cell(3),
                steps: cell(5),
                answer: cell(6),
            };
            if row.overflows(table.headings.len()) {
                if columns[6] != Some(table.headings.len() - 1) {
                    self.say(Some(row.line), true, TOO_MANY_CELLS.text());
                    continue;
                }
                let rest: Vec<&str> = row.cells[table.headings.len() - 1..].iter().map(String::as_str).collect();
                written.answer = rest.join(",");
                let says = SEVERAL_CELLS.say(&[("answer", &quoted(&written.answer))]);
                self.say(Some(row.line), false, says);
            }
            self.take(row.line, written);
        }
    }

    fn json(&mut self, text: &str) {
        match json::read(text) {
            Ok(rows) => rows.into_iter().for_each(|(number, row)| match row {
                Ok(row) => self.take(number, row),
                Err(says) => self.say(Some(number), true, says),
            }),
            Err((line, says)) => self.say(line, true, says),
        }
    }

    fn take(&mut self, line: usize, written: Row) {
        let lost = !(written.answer.trim().is_empty() && written.steps.trim().is_empty());
        match self.place(line, &written) {
            Ok(()) => {}
            Err(Why::Row(says)) => self.say(Some(line), lost, says),
            Err(Why::Code(says)) => match self.codes.get_mut(&says) {
                Some(refused) => {
                    refused.lines.push(line);
                    self.notices[refused.notice].lost |= lost;
                }
                None => {
                    let refused = Refused { notice: self.notices.len(), lines: vec![line] };
                    self.codes.insert(says, refused);
                    self.say(Some(line), lost, String::new());
                }
            },
        }
    }

    /// Says what is wrong with the codes of a file that is read to its end, once for each; `several` names the rows where
    /// more than one is left out.
    fn tell_codes(&mut self, several: Message) {
        for (says, Refused { notice, lines }) in std::mem::take(&mut self.codes) {
            let left_out = match lines[..] {
                [_] => LEFT_OUT.text().to_owned(),
                _ => several.say(&[("lines", &runs(&lines))]),
            };
            self.notices[notice].says = format!("{says} {left_out}");
        }
    }

    fn place(&mut self, line: usize, written: &Row) -> Result<(), Why> {
        let record = self.record(&written.paper)?;
        let code = record.code;
        let same = |name: &str| written.candidate.trim().to_lowercase() == name.to_lowercase();
        if !written.candidate.trim().is_empty() && !same(&record.candidate.name) && !same(&record.candidate.id) {
            let words = [("code", &*code.to_string()), ("name", &record.candidate.name), ("said", &written.candidate)];
            return Err(Why::Code(SWAPPED.say(&words)));
        }
        let count = record.questions.len();
        let question = number(&written.question).filter(|number| (1..=count).contains(number)).ok_or_else(|| {
            let words =
                [("code", &*code.to_string()), ("count", &count.to_string()), ("said", &quoted(&written.question))];
            Why::Row(NO_QUESTION.say(&words))
        })?;
        let parts = record.questions[question - 1].parts;
        let part = part(&written.part, parts).ok_or_else(|| {
            let last = part_letter(parts.saturating_sub(1));
            let (code, question, last) = (code.to_string(), question.to_string(), last.to_string());
            let words = [("question", &*question), ("code", &code), ("last", &last), ("said", &quoted(&written.part))];
            Why::Row(NO_PART.say(&words))
        })?;
        let place = (code, question - 1, part);
        let given = Given { text: written.answer.clone(), steps: written.steps.clone(), file: self.files.len(), line };
        let name = PLACE.say(&[
            ("question", &question.to_string()),
            ("part", &part_letter(part).to_string()),
            ("code", &code.to_string()),
        ]);
        let Some(old) = self.given.get(&place) else {
            self.keep(place, given);
            return Ok(());
        };
        let at = match old.file == given.file {
            true => LINE.say(&[("line", &old.line.to_string())]),
            false => format!("{}:{}", self.files[old.file - 1], old.line),
        };
        let (was, is) = (old.text.trim(), given.text.trim());
        let told = |message: Message| message.say(&[("place", &name), ("line", &at)]);
        let other_steps = !given.steps.trim().is_empty() && old.steps.trim() != given.steps.trim();
        let says = if was == is && other_steps {
            let says = (!old.steps.trim().is_empty()).then(|| told(OTHER_STEPS));
            self.keep(place, given);
            says
        } else if was == is {
            (!is.is_empty()).then(|| told(SAME_ANSWER))
        } else if is.is_empty() {
            Some(told(ANSWER_STANDS))
        } else if was.is_empty() {
            self.keep(place, given);
            None
        } else {
            let words = [("place", &*name), ("line", &at), ("later", &quoted(is)), ("earlier", &quoted(was))];
            let says = OTHER_ANSWER.say(&words);
            self.keep(place, given);
            Some(says)
        };
        if let Some(says) = says {
            self.say(Some(line), false, says);
        }
        Ok(())
    }

    fn keep(&mut self, place: (Code, usize, usize), given: Given) {
        self.kept += 1;
        self.given.insert(place, given);
    }

    fn record(&self, text: &str) -> Result<&'e Record, Why> {
        if text.trim().is_empty() {
            return Err(Why::Row(NAMES_NO_PAPER.text().into()));
        }
        match Code::read(text) {
            Ok(code) => self.papers.get(&code).copied().ok_or_else(|| {
                Why::Code(NO_PAPER.say(&[("code", &code.to_string()), ("exam", &quoted(&self.exam.id))]))
            }),
            Err(error) => {
                let meant = Code::meant(text, self.papers.keys().copied());
                let hint = meant
                    .map_or_else(String::new, |code| format!(" {}", WAS_MEANT.say(&[("code", &code.to_string())])));
                let why = match error {
                    NoCode::Slip => SLIP,
                    NoCode::Shape => NO_CODE,
                };
                Err(Why::Code(format!("{}{hint}", why.say(&[("said", &quoted(text))]))))
            }
        }
    }

    /// Whether anything was handed in for a paper. Rows that are all blank are those of the file that was made with the
    /// papers: nobody has answered there.
    pub fn has(&self, code: Code) -> bool {
        let mut rows = self.given.range((code, 0, 0)..=(code, usize::MAX, usize::MAX));
        rows.any(|(_, given)| !given.text.trim().is_empty() || !given.steps.trim().is_empty())
    }

    /// Whether no paper has as much as a blank row.
    pub fn is_empty(&self) -> bool {
        self.given.is_empty()
    }

    /// The answers to the first `parts` parts of a question (counted from 0); blank where nothing was handed in.
    pub fn answers(&self, code: Code, question: usize, parts: usize) -> Vec<Written<'_>> {
        (0..parts)
            .map(|part| match self.given.get(&(code, question, part)) {
                Some(given) => Written { answer: &given.text, steps: &given.steps },
                None => Written::default(),
            })
            .collect()
    }
}

/// Numbers in the order of a file, runs of three and more as such: `2 to 9, 12 and 14`.
fn runs(numbers: &[usize]) -> String {
    let mut out: Vec<String> = Vec::new();
    for run in numbers.chunk_by(|one, next| one + 1 == *next) {
        match run {
            [first, _, .., last] => {
                out.push(FROM_TO.say(&[("first", &first.to_string()), ("last", &last.to_string())]));
            }
            few => out.extend(few.iter().map(usize::to_string)),
        }
    }
    match out.split_last() {
        Some((last, before)) if !before.is_empty() => format!("{} {} {last}", before.join(", "), AND.text()),
        _ => out.concat(),
    }
}

/// Between quotation marks, with what cannot be seen written out.
fn quoted(text: &str) -> String {
    format!("{text:?}")
}

/// `3`, `Q3`, `question 3`, `3.`
fn number(text: &str) -> Option<usize> {
    let text = text.trim().to_lowercase();
    let text = text.trim_start_matches("question").trim_start_matches(['q', '#', ' ', '.']);
    let text = text.trim_end_matches(['.', ')', ' ']);
    // A spreadsheet may have made 3.0 of 3.
    let text = text.strip_suffix(".0").unwrap_or(text);
    text.parse().ok().filter(|_| text.len() < 6)
}

/// `b`, `B)`, `(b)`, `2`; nothing where there is but one part.
fn part(text: &str, parts: usize) -> Option<usize> {
    let text = text.trim().to_lowercase();
    let text = text.trim_start_matches("part").trim_matches(['(', ')', '.', ' ']);
    let place = match text.as_bytes() {
        [] => return (parts == 1).then_some(0),
        [letter @ b'a'..=b'z'] => usize::from(letter - b'a'),
        _ => number(text)?.checked_sub(1)?,
    };
    (place < parts).then_some(place)
}

/// A response file to fill in: a row a part, with a reminder of what is asked.
pub fn template<'p, 'a: 'p>(papers: impl IntoIterator<Item = &'p Paper<'a>>) -> String {
    let mut out = Template::new(false);
    papers.into_iter().for_each(|paper| out.add(paper));
    out.finish()
}

/// [`template`], paper by paper.
pub struct Template {
    table: Writer,
    steps: bool,
}

impl Template {
    /// An empty one; with a column for results on the way where `steps` are asked for.
    pub fn new(steps: bool) -> Self {
        let headings: Vec<&str> = COLUMNS.iter().copied().filter(|name| steps || *name != "steps").collect();
        Self { table: Writer::new(&headings), steps }
    }

    /// Adds the rows of a paper.
    pub fn add(&mut self, paper: &Paper) {
        self.add_answered(paper, |_, _| Written::default());
    }

    /// Adds the rows of a paper with what was `written` for each question and part, both counted from 0.
    pub fn add_answered<'w>(&mut self, paper: &Paper, written: impl Fn(usize, usize) -> Written<'w>) {
        for (place, placed) in paper.questions.iter().enumerate() {
            for (index, part) in placed.question.parts.iter().enumerate() {
                let asked = part.text.split_whitespace().collect::<Vec<_>>().join(" ");
                let Written { answer, steps } = written(place, index);
                let mut row = vec![
                    paper.code.to_string(),
                    paper.candidate.name.clone(),
                    (place + 1).to_string(),
                    part_letter(index).to_string(),
                    shorten(&asked),
                ];
                row.extend(self.steps.then(|| steps.to_owned()));
                row.push(answer.to_owned());
                self.table.row(&row);
            }
        }
    }

    /// The file.
    pub fn finish(self) -> String {
        self.table.finish()
    }
}

fn shorten(text: &str) -> String {
    const MOST: usize = 80;
    if text.chars().count() <= MOST {
        return text.to_owned();
    }
    let mut short: String = text.chars().take(MOST - 1).collect();
    short.push('…');
    short
}

#[cfg(test)]
mod tests;
