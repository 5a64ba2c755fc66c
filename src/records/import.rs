//! Graded papers taken into the records.
//!
//! One import is one transaction: all of it counts or nothing does. Repeating an import changes nothing. Answers or
//! marks that differ from what is recorded of a paper (a late file, a mended slip, another marking) do not count
//! unless they come as a correction with a reason and a name; then they are a new revision, and the old one stays.

use std::collections::BTreeMap;

use drivecourse_machine::messages;
use drivecourse_quiz::grade::{GradedPaper, GradedPart, GradedQuestion};
use rusqlite::{OptionalExtension, Transaction, params};
use sha2::{Digest, Sha256};

use crate::date::Date;
use crate::error::Error;
use crate::store::Store;

messages! { pub(crate) SAYS {
    NO_REASON = "records-problem-no-reason", "a change of records needs a reason, of at most {most} characters";
    NO_AUTHOR = "records-problem-no-author", "a change of records needs a name of who decides, of at most {most} characters";
    RENAMED = "records-problem-renamed", "{id} is {known} in the records, but {name} in this exam: if that is one person under a new name, say so with {option}; if not, give one of them another id in the roster";
    NOT_THEIRS = "records-problem-not-theirs", "paper {code} is another person's in the records than {id}'s";
} }

/// Why something was changed, and by whom.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Reason {
    /// Why.
    pub says: String,
    /// By whom.
    pub by: String,
}

impl Reason {
    /// A reason with a name to it.
    ///
    /// # Errors
    /// [`Error::Refused`] where one of them is empty or longer than 500 characters.
    pub fn new(says: &str, by: &str) -> Result<Self, Error> {
        const MOST: usize = 500;
        for (lacking, text) in [(NO_REASON, says), (NO_AUTHOR, by)] {
            if text.trim().is_empty() || text.chars().count() > MOST {
                return Err(Error::Refused(lacking.say(&[("most", &MOST.to_string())])));
            }
        }
        Ok(Self { says: says.trim().to_owned(), by: by.trim().to_owned() })
    }
}

/// A sitting of an exam whose graded papers come in.
#[derive(Debug, Clone, PartialEq)]
pub struct Sitting {
    /// Digest of the exam record, all of it.
    pub digest: String,
    /// Short name of the exam.
    pub exam: String,
    /// As a heading.
    pub title: String,
    /// Share of the marks that passes.
    pub pass: f64,
    /// For how many months a pass holds; `None` for ever.
    pub months: Option<u32>,
    /// The tag of the language its papers speak; `None` for English.
    pub language: Option<String>,
    /// The day of the exam.
    pub sat: Date,
    /// Today.
    pub recorded: Date,
    /// Why answers that differ from recorded ones shall count; without it they do not.
    pub correction: Option<Reason>,
    /// Ids of people whose name has changed.
    pub renamed: Vec<String>,
}

/// What became of a paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Taken {
    /// Recorded.
    New,
    /// It was recorded before.
    Same,
    /// It was recorded before, and a correction has taken its place since.
    Superseded,
    /// Recorded as a correction.
    Corrected,
    /// Other answers or marks than recorded: they do not count.
    Changed,
    /// Nothing was handed in.
    Absent,
    /// Its data was taken out on request, and stays out.
    Forgotten,
}

/// An import at work; it counts once [`Import::finish`] is through.
#[derive(Debug)]
pub struct Import<'s> {
    write: Transaction<'s>,
    sitting: Sitting,
    exam: i64,
    items: BTreeMap<(String, String), i64>,
    causes: BTreeMap<(String, String), i64>,
    counts: BTreeMap<Taken, usize>,
    left_behind: Vec<String>,
}

/// The languages of exams have a table of their own, made with the first that is not English: files without it stay as they
/// are, and earlier versions of the program read those with it.
const LANGUAGES: &str = include_str!("languages.sql");

impl Store {
    /// Begins an import; it waits for another one to end.
    ///
    /// # Errors
    /// [`Error`].
    pub fn import(&mut self, sitting: Sitting) -> Result<Import<'_>, Error> {
        let write = self.write()?;
        write.execute(
            "INSERT INTO exam (digest, name, title, pass, months) VALUES (?1, ?2, ?3, ?4, ?5) ON CONFLICT DO NOTHING",
            params![sitting.digest, sitting.exam, sitting.title, sitting.pass, sitting.months],
        )?;
        let exam = write.query_row("SELECT id FROM exam WHERE digest = ?1", [&sitting.digest], |row| row.get(0))?;
        if let Some(tag) = &sitting.language {
            write.execute_batch(LANGUAGES)?;
            write.execute(
                "INSERT INTO exam_language (exam, tag) VALUES (?1, ?2) ON CONFLICT DO NOTHING",
                params![exam, tag],
            )?;
        }
        let (items, causes, counts) = (BTreeMap::new(), BTreeMap::new(), BTreeMap::new());
        Ok(Import { write, sitting, exam, items, causes, counts, left_behind: Vec::new() })
    }
}

/// A paper in the records whose code another exam uses too.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Holder {
    /// The code.
    pub code: String,
    /// Short name of the exam that has it already.
    pub exam: String,
    /// As a heading.
    pub title: String,
}

impl Store {
    /// Papers of other exams than that of this `digest` that have one of `codes`, in the order of `codes`. Nothing is lost by
    /// that: an exam is known by its digest; but a code alone no longer says which paper is meant.
    ///
    /// # Errors
    /// [`Error`].
    pub fn holders<'c>(&self, digest: &str, codes: impl Iterator<Item = &'c str>) -> Result<Vec<Holder>, Error> {
        let mut list = self.db.prepare(
            "SELECT exam.name, exam.title FROM paper JOIN exam ON exam.id = paper.exam \
             WHERE paper.code = ?1 AND exam.digest <> ?2 ORDER BY exam.id",
        )?;
        let mut out = Vec::new();
        for code in codes {
            let held = list.query_map([code, digest], |row| {
                Ok(Holder { code: code.to_owned(), exam: row.get(0)?, title: row.get(1)? })
            })?;
            for holder in held {
                out.push(holder?);
            }
        }
        Ok(out)
    }
}

/// What stands in for a removed paper.
pub(crate) fn removal_mark(exam_digest: &str, code: &str) -> String {
    hex(Sha256::new().chain_update(exam_digest).chain_update([0]).chain_update(code))
}

fn hex(hash: Sha256) -> String {
    hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Digest of answers and marks.
fn digest(paper: &GradedPaper) -> String {
    let mut hash = Sha256::new();
    let mut text = |text: &str| {
        hash.update((text.len() as u64).to_be_bytes());
        hash.update(text);
    };
    for question in &paper.questions {
        text(&question.number.to_string());
        for part in &question.parts {
            text(&part.part.to_string());
            text(&part.answer);
            text(&part.steps);
            text(part.verdict.name());
            text(&part.earned.to_string());
        }
    }
    hex(hash)
}

impl Import<'_> {
    /// Takes a paper in.
    ///
    /// # Errors
    /// [`Error`]; the whole import must be dropped then.
    pub fn paper(&mut self, paper: &GradedPaper) -> Result<Taken, Error> {
        let taken = self.take(paper)?;
        *self.counts.entry(taken).or_default() += 1;
        Ok(taken)
    }

    /// Codes of corrected papers on which an assessor had changed marks: those changes stay with the earlier revision.
    pub fn left_behind(&self) -> &[String] {
        &self.left_behind
    }

    /// Makes it count; how many papers met which fate.
    ///
    /// # Errors
    /// [`Error`]; nothing was recorded then.
    pub fn finish(self) -> Result<BTreeMap<Taken, usize>, Error> {
        self.write.commit()?;
        Ok(self.counts)
    }

    fn take(&mut self, paper: &GradedPaper) -> Result<Taken, Error> {
        let code = paper.code.to_string();
        let mark = removal_mark(&self.sitting.digest, &code);
        let gone = self.write.prepare_cached("SELECT 1 FROM forgotten WHERE mark = ?1")?.exists([&mark])?;
        if gone {
            return Ok(Taken::Forgotten);
        }
        let id = self.paper_row(paper, &code)?;
        if !paper.present {
            return Ok(Taken::Absent);
        }
        let digest = digest(paper);
        let last: Option<(i64, String)> = self
            .write
            .prepare_cached("SELECT revision, digest FROM counted WHERE paper = ?1")?
            .query_row([id], |row| Ok((row.get(0)?, row.get(1)?)))
            .optional()?;
        let (revision, taken, reason) = match last {
            None => (1, Taken::New, None),
            Some((_, known)) if known == digest => return Ok(Taken::Same),
            Some((revision, _)) => match self.sitting.correction.clone() {
                Some(reason) => (revision + 1, Taken::Corrected, Some(reason)),
                None => {
                    let old = "SELECT 1 FROM attempt WHERE paper = ?1 AND digest = ?2";
                    let old = self.write.prepare_cached(old)?.exists(params![id, digest])?;
                    return Ok(if old { Taken::Superseded } else { Taken::Changed });
                }
            },
        };
        if taken == Taken::Corrected {
            let changes = "SELECT 1 FROM changed JOIN counted ON counted.id = changed.attempt WHERE counted.paper = ?1";
            if self.write.prepare_cached(changes)?.exists([id])? {
                self.left_behind.push(code.clone());
            }
        }
        let (says, by) = reason.map_or_else(Default::default, |reason| (reason.says, reason.by));
        self.write
            .prepare_cached(
                "INSERT INTO attempt (paper, revision, digest, sat, recorded, reason, author) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
            )?
            .execute(params![
                id,
                revision,
                digest,
                self.sitting.sat.to_string(),
                self.sitting.recorded.to_string(),
                says,
                by
            ])?;
        let attempt = self.write.last_insert_rowid();
        for question in &paper.questions {
            let item = self.item(question)?;
            for (place, part) in question.parts.iter().enumerate() {
                self.answer(attempt, question.number, place, item, part)?;
            }
        }
        Ok(taken)
    }

    /// The row of the paper, made if it is not there; its person too.
    fn paper_row(&self, paper: &GradedPaper, code: &str) -> Result<i64, Error> {
        let person = &paper.candidate;
        self.write
            .prepare_cached("INSERT INTO person (key) VALUES (?1) ON CONFLICT DO NOTHING")?
            .execute([&person.id])?;
        let owner: i64 = self
            .write
            .prepare_cached("SELECT id FROM person WHERE key = ?1")?
            .query_row([&person.id], |row| row.get(0))?;
        let known: Option<String> = self
            .write
            .prepare_cached("SELECT name FROM paper WHERE person = ?1 ORDER BY id DESC LIMIT 1")?
            .query_row([owner], |row| row.get(0))
            .optional()?;
        if let Some(known) = known
            && known.to_lowercase() != person.name.to_lowercase()
            && !self.sitting.renamed.contains(&person.id)
        {
            let option = format!("--renamed {}", person.id);
            let words = [("id", &*person.id), ("known", &known), ("name", &person.name), ("option", &option)];
            return Err(Error::Refused(RENAMED.say(&words)));
        }
        let team = person.group.as_deref().unwrap_or("");
        self.write
            .prepare_cached(
                "INSERT INTO paper (exam, code, person, name, team, sitting) VALUES (?1, ?2, ?3, ?4, ?5, ?6) \
                 ON CONFLICT DO NOTHING",
            )?
            .execute(params![self.exam, code, owner, person.name, team, paper.sitting])?;
        let (id, of): (i64, i64) = self
            .write
            .prepare_cached("SELECT id, person FROM paper WHERE exam = ?1 AND code = ?2")?
            .query_row(params![self.exam, code], |row| Ok((row.get(0)?, row.get(1)?)))?;
        if of == owner { Ok(id) } else { Err(Error::Refused(NOT_THEIRS.say(&[("code", code), ("id", &person.id)]))) }
    }

    fn item(&mut self, question: &GradedQuestion) -> Result<i64, Error> {
        let key = (question.item.clone(), question.family.clone());
        if let Some(id) = self.items.get(&key) {
            return Ok(*id);
        }
        let GradedQuestion { item, family, title, topic, skill, safety, .. } = question;
        let row = params![item, family, title, topic, skill, safety];
        self.write.execute(
            "INSERT INTO item (item, family, title, topic, skill, safety) VALUES (?1, ?2, ?3, ?4, ?5, ?6) \
             ON CONFLICT DO NOTHING",
            row,
        )?;
        let id = self.write.query_row(
            "SELECT id FROM item WHERE item = ?1 AND family = ?2 AND title = ?3 AND topic = ?4 AND skill = ?5 AND safety = ?6",
            row,
            |row| row.get(0),
        )?;
        self.items.insert(key, id);
        Ok(id)
    }

    /// The likeliest cause only: one slip is counted once.
    fn cause(&mut self, part: &GradedPart) -> Result<Option<i64>, Error> {
        let Some(name) = part.causes.first() else { return Ok(None) };
        let key = (name.clone(), part.because.clone());
        if let Some(id) = self.causes.get(&key) {
            return Ok(Some(*id));
        }
        let row = params![key.0, key.1];
        self.write.execute("INSERT INTO cause (name, says) VALUES (?1, ?2) ON CONFLICT DO NOTHING", row)?;
        let id = self.write.query_row("SELECT id FROM cause WHERE name = ?1 AND says = ?2", row, |row| row.get(0))?;
        self.causes.insert(key, id);
        Ok(Some(id))
    }

    fn answer(&mut self, attempt: i64, number: usize, place: usize, item: i64, part: &GradedPart) -> Result<(), Error> {
        let cause = self.cause(part)?;
        self.write
            .prepare_cached(
                "INSERT INTO answer VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15)",
            )?
            .execute(params![
                attempt,
                number as i64,
                place as i64,
                item,
                part.asked,
                part.answer,
                part.steps,
                part.read_as,
                part.verdict.name(),
                part.earned,
                part.of,
                part.expected,
                part.tolerance,
                part.says,
                cause
            ])?;
        Ok(())
    }
}
