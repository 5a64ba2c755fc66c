//! The exam record, the assessor's: from it and the bank every paper is made again.
//!
//! It holds what every paper's questions come from, so it is kept as safe as a key. It does not hold
//! the secret, only a value by which a wrong one is recognised.

use core::fmt;

use drivecourse_machine::{Problem, System, messages};
use serde::{Deserialize, Serialize};

use crate::bank::Bank;
use crate::blueprint::Blueprint;
use crate::code::Code;
use crate::mend::{SOUND_COPY, quoted};
use crate::paper::{Paper, Placed, Settings, why};
use crate::roster::Person;
use crate::seal::Secret;

const FORMAT: u32 = 1;

messages! { pub(crate) SAYS {
    UNGRADED = "problem-record-ungraded", "Paper {code} of {candidate} cannot be graded: {because}";
    UNSOUND = "problem-record-unsound", "This is no sound exam record: {why}.";
    FORMAT_IS = "problem-record-format-is", "This exam record has format {format}; this program reads format {known}.";
    ITS_VERSION = "problem-record-its-version", "Use the version of the program that wrote it.";
    CODE_TWICE = "problem-record-code-twice", "The code {code} stands twice.";
    SCENARIOS = "problem-record-scenarios", "{because} Grade it with the scenarios it was made from: where the papers were made with --module, name the same module.";
    VERSION = "problem-record-version", "{because} It was made by version {made} of this program; this is version {this}. Grade it with that version and the scenarios it was made from.";
    ITEM_GONE = "problem-record-item-gone", "the item {item} is gone.";
    FAMILY_GONE = "problem-record-family-gone", "the family {family} is gone.";
    NO_FIT = "problem-record-no-fit", "the item {item} no longer fits the family {family}.";
    NOT_DRAWN = "problem-record-not-drawn", "a question cannot be drawn ({why}).";
    OTHER_PAPER = "problem-record-other-paper", "made again, it is not the paper that was printed.";
    NOT_HEX = "problem-record-not-hex", "not 16 hexadecimal figures";
} }

/// What is written down of one question.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Reference {
    /// The item.
    pub item: String,
    /// The family.
    pub family: String,
    /// The question's seed.
    #[serde(with = "hex64")]
    pub seed: u64,
    /// A number for the hidden machine.
    #[serde(with = "hex64")]
    pub case: u64,
    /// How many parts it has.
    pub parts: usize,
    /// What it is worth, where that is not what its item says.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weight: Option<u32>,
}

/// What is written down of one paper.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Record {
    /// Whose it is.
    pub candidate: Person,
    /// Its code.
    pub code: Code,
    /// Which sitting, counted from 1.
    pub sitting: u32,
    /// In which units.
    pub system: System,
    /// [`Paper::digest`].
    pub digest: String,
    /// Its difficulty.
    pub difficulty: f64,
    /// Marks that can be earned.
    pub marks: u32,
    /// Its questions.
    pub questions: Vec<Reference>,
}

/// The record of an exam.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Exam {
    /// Format of this record.
    pub format: u32,
    /// Version of the program that made it.
    pub program: String,
    /// Short name of the exam; papers' seeds depend on it.
    pub id: String,
    /// Digest of the scenarios (families, items) it was made from.
    pub scenario: String,
    /// [`Secret::key_check`].
    pub key_check: String,
    /// The language that the papers are in; left out where it is English.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub language: Option<Spoken>,
    /// The plant that is printed on the papers; left out where there is none.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub plant: String,
    /// The date that is printed on them, as it reads there; left out where there is none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub date: Option<String>,
    /// What papers are made of.
    pub blueprint: Blueprint,
    /// The papers, in the order they were drawn.
    pub papers: Vec<Record>,
}

/// The language of an exam's papers, and which words they were made with.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Spoken {
    /// Its tag.
    pub tag: String,
    /// Digest of the files of words.
    pub words: String,
}

/// Why a paper cannot be made again as it was printed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Mismatch {
    /// Its code.
    pub code: Code,
    /// Whose it is.
    pub candidate: String,
    /// What happened, as a sentence.
    pub because: String,
}

impl fmt::Display for Mismatch {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let code = self.code.to_string();
        let words = [("code", &*code), ("candidate", &self.candidate), ("because", &self.because)];
        f.write_str(&UNGRADED.say(&words))
    }
}

impl core::error::Error for Mismatch {}

impl Exam {
    /// An exam without papers yet. `scenario` is a digest of the families and items in use.
    pub fn new(id: &str, scenario: &str, secret: &Secret, blueprint: Blueprint) -> Self {
        Self {
            format: FORMAT,
            program: env!("CARGO_PKG_VERSION").to_owned(),
            id: id.to_owned(),
            scenario: scenario.to_owned(),
            key_check: secret.key_check(id),
            language: None,
            plant: String::new(),
            date: None,
            blueprint,
            papers: Vec::new(),
        }
    }

    /// With papers in this language.
    #[must_use]
    pub fn spoken(mut self, language: Option<Spoken>) -> Self {
        self.language = language;
        self
    }

    /// With papers that name this plant and date.
    #[must_use]
    pub fn headed(mut self, plant: &str, date: Option<String>) -> Self {
        plant.clone_into(&mut self.plant);
        self.date = date;
        self
    }

    /// Writes a paper down.
    pub fn push(&mut self, paper: &Paper) {
        let reference = |placed: &Placed| Reference {
            item: placed.item.id.clone(),
            family: placed.plan.family.id.clone(),
            seed: placed.question.seed,
            case: placed.case(),
            parts: placed.question.parts.len(),
            weight: placed.weight,
        };
        self.papers.push(Record {
            candidate: paper.candidate.clone(),
            code: paper.code,
            sitting: paper.sitting,
            system: paper.system,
            digest: paper.digest(),
            difficulty: paper.difficulty,
            marks: paper.marks,
            questions: paper.questions.iter().map(reference).collect(),
        });
    }

    /// Whether `secret` is the one its papers were sealed with.
    pub fn fits(&self, secret: &Secret) -> bool {
        secret.fits(&self.id, &self.key_check)
    }

    /// The record as JSON, a paper a line.
    pub fn write(&self) -> String {
        let head = Self { papers: Vec::new(), ..self.head() };
        // Strings, numbers and lists: nothing in it that JSON cannot hold.
        let mut out = serde_json::to_string_pretty(&head).unwrap_or_default();
        let end = out.rfind("[]").unwrap_or(out.len());
        out.truncate(end);
        out.push('[');
        for (place, record) in self.papers.iter().enumerate() {
            out.push_str(if place == 0 { "\n    " } else { ",\n    " });
            out.push_str(&serde_json::to_string(record).unwrap_or_default());
        }
        out.push_str("\n  ]\n}\n");
        out
    }

    fn head(&self) -> Self {
        Self {
            format: self.format,
            program: self.program.clone(),
            id: self.id.clone(),
            scenario: self.scenario.clone(),
            key_check: self.key_check.clone(),
            language: self.language.clone(),
            plant: self.plant.clone(),
            date: self.date.clone(),
            blueprint: self.blueprint.clone(),
            papers: Vec::new(),
        }
    }

    /// Reads a record.
    ///
    /// # Errors
    /// A [`Problem`]: not JSON, not a record, of a later format, or with one code twice.
    pub fn read(text: &str) -> Result<Self, Problem> {
        let text = text.trim_start_matches('\u{feff}');
        #[derive(Deserialize)]
        struct Head {
            format: u32,
        }
        let problem = |error: &serde_json::Error| {
            let at = offset(text, error.line(), error.column());
            Problem::at(at..at + 1, UNSOUND.say(&[("why", &error.to_string())]), SOUND_COPY.text())
        };
        let head: Head = serde_json::from_str(text).map_err(|error| problem(&error))?;
        if head.format != FORMAT {
            return Err(Problem::whole(
                FORMAT_IS.say(&[("format", &head.format.to_string()), ("known", &FORMAT.to_string())]),
                ITS_VERSION.text(),
            ));
        }
        let exam: Self = serde_json::from_str(text).map_err(|error| problem(&error))?;
        let mut codes: Vec<Code> = exam.papers.iter().map(|record| record.code).collect();
        codes.sort_unstable();
        match codes.windows(2).find(|pair| pair[0] == pair[1]) {
            Some(pair) => Err(Problem::whole(CODE_TWICE.say(&[("code", &pair[0].to_string())]), SOUND_COPY.text())),
            None => Ok(exam),
        }
    }

    /// The paper of this code.
    pub fn find(&self, code: Code) -> Option<&Record> {
        self.papers.iter().find(|record| record.code == code)
    }

    /// Makes ready what its papers ask. What the bank lacks is said by [`Exam::paper`].
    pub fn settings<'a>(&self, bank: &'a Bank) -> Settings<'a> {
        let mut settings = Settings::new(bank);
        for record in &self.papers {
            for reference in &record.questions {
                if let (Some(item), Some(plan)) = (bank.item_place(&reference.item), bank.plan_place(&reference.family))
                {
                    let _ = settings.settle(item, plan, record.system);
                }
            }
        }
        settings
    }

    /// Makes a paper again, and checks that it is the one that was printed.
    ///
    /// # Errors
    /// [`Mismatch`]: the bank has changed, or the program. Nothing is graded against other numbers.
    pub fn paper<'a>(&self, record: &Record, settings: &Settings<'a>) -> Result<Paper<'a>, Mismatch> {
        let fail = |because: String| Mismatch {
            code: record.code,
            candidate: record.candidate.name.clone(),
            because: match self.program == env!("CARGO_PKG_VERSION") {
                true => SCENARIOS.say(&[("because", &because)]),
                false => {
                    let words = [("because", &*because), ("made", &self.program), ("this", env!("CARGO_PKG_VERSION"))];
                    VERSION.say(&words)
                }
            },
        };
        let bank = settings.bank;
        let mut questions = Vec::with_capacity(record.questions.len());
        for reference in &record.questions {
            let item = bank.item_place(&reference.item);
            let item = item.ok_or_else(|| fail(ITEM_GONE.say(&[("item", &quoted(&reference.item))])))?;
            let plan = bank.plan_place(&reference.family);
            let plan = plan.ok_or_else(|| fail(FAMILY_GONE.say(&[("family", &quoted(&reference.family))])))?;
            let ready = settings.get(item, plan, record.system).ok_or_else(|| {
                let [item, family] = [&reference.item, &reference.family].map(|id| quoted(id));
                fail(NO_FIT.say(&[("item", &item), ("family", &family)]))
            })?;
            let question = ready.setting.question(reference.seed);
            let question = question.map_err(|error| fail(NOT_DRAWN.say(&[("why", &why(&error))])))?;
            questions.push(Placed::new(&bank.items[item], &bank.plans[plan], question, reference.weight));
        }
        let paper = Paper::new(record.candidate.clone(), record.code, record.sitting, record.system, questions);
        if paper.digest() == record.digest { Ok(paper) } else { Err(fail(OTHER_PAPER.text().into())) }
    }
}

/// Place in bytes of a line and column counted from 1.
fn offset(text: &str, line: usize, column: usize) -> usize {
    let start: usize = text.split_inclusive('\n').take(line.saturating_sub(1)).map(str::len).sum();
    (start + column.saturating_sub(1)).min(text.len())
}

/// 64 bits as 16 hexadecimal figures: many readers of JSON keep only 53 bits of a number.
mod hex64 {
    use serde::{Deserialize, Deserializer, Serializer, de::Error};

    pub(super) fn serialize<S: Serializer>(number: &u64, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&format!("{number:016x}"))
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(deserializer: D) -> Result<u64, D::Error> {
        let text = String::deserialize(deserializer)?;
        u64::from_str_radix(&text, 16).map_err(|_| D::Error::custom(super::NOT_HEX.text()))
    }
}
