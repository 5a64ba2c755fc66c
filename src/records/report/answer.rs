//! One answer in an appeal: how it was read, what was expected, why the mark, and every change since.

use drivecourse_quiz::explain::part_letter;
use rusqlite::params;
use serde::Serialize;

use crate::change::{Place, attempt_of, no_place};
use crate::error::Error;
use crate::store::Store;

/// The answer as one revision has it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Revision {
    /// Which, from 1.
    pub revision: u32,
    /// The day of the exam.
    pub sat: String,
    /// The day it was recorded.
    pub recorded: String,
    /// Why it was corrected; empty for the first.
    pub reason: String,
    /// By whom; empty for the first.
    pub by: String,
    /// As written.
    pub written: String,
    /// Results on the way as written; empty where there are none.
    pub steps: String,
    /// How it was read; empty if it was not.
    pub read_as: String,
    /// How it turned out.
    pub verdict: String,
    /// Marks earned.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
    /// What was expected.
    pub expected: String,
    /// How far off it may be; empty where it must be exact.
    pub tolerance: String,
    /// Why the mark.
    pub says: String,
    /// Short name of the likeliest cause, if one was recognised.
    pub cause: Option<String>,
    /// Marks changed by an assessor, the earliest first.
    pub changes: Vec<Change>,
}

/// A mark changed by an assessor.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Change {
    /// Marks that count from then on.
    pub earned: u32,
    /// Why.
    pub reason: String,
    /// By whom.
    pub by: String,
    /// When.
    pub made: String,
}

/// All about one answer.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct AnswerReport {
    /// The exam, as a heading.
    pub exam: String,
    /// The person's name.
    pub name: String,
    /// The paper's code.
    pub code: String,
    /// The question's number.
    pub question: usize,
    /// The part's letter.
    pub part: char,
    /// The item, as a heading.
    pub title: String,
    /// Whether missing it fails the paper.
    pub safety: bool,
    /// What was asked.
    pub asked: String,
    /// Marks that count now.
    pub counts: u32,
    /// Marks to be had.
    pub of: u32,
    /// Every revision, the earliest first; the last one counts.
    pub revisions: Vec<Revision>,
}

impl Store {
    /// All about the answer at `place`.
    ///
    /// # Errors
    /// [`Error::Refused`] where there is none.
    pub fn answer(&self, place: &Place) -> Result<AnswerReport, Error> {
        let none = || no_place(place);
        let paper: i64 =
            self.db.query_row("SELECT paper FROM attempt WHERE id = ?1", [attempt_of(&self.db, place)?], |row| {
                row.get(0)
            })?;
        let (exam, name): (String, String) = self.db.query_row(
            "SELECT title, name FROM (SELECT exam.title, paper.name, paper.id FROM paper JOIN exam ON exam.id = paper.exam) \
             WHERE id = ?1",
            [paper],
            |row| Ok((row.get(0)?, row.get(1)?)),
        )?;
        let mut list = self.db.prepare(
            "SELECT attempt.id, revision, sat, recorded, reason, author, written, read_as, verdict, earned, most, \
             expected, tolerance, answer.says, cause.name, asked, title, safety, steps \
             FROM attempt JOIN answer ON answer.attempt = attempt.id JOIN item ON item.id = answer.item \
             LEFT JOIN cause ON cause.id = answer.cause \
             WHERE paper = ?1 AND question = ?2 AND part = ?3 ORDER BY revision",
        )?;
        let mut rows = list.query(params![paper, place.question as i64, place.part as i64])?;
        let mut revisions = Vec::new();
        let mut about = None;
        while let Some(row) = rows.next()? {
            let changes = self.changes(row.get(0)?, place)?;
            about = Some((row.get::<_, String>(15)?, row.get::<_, String>(16)?, row.get::<_, bool>(17)?));
            revisions.push(Revision {
                revision: row.get(1)?,
                sat: row.get(2)?,
                recorded: row.get(3)?,
                reason: row.get(4)?,
                by: row.get(5)?,
                written: row.get(6)?,
                steps: row.get(18)?,
                read_as: row.get(7)?,
                verdict: row.get(8)?,
                earned: row.get(9)?,
                of: row.get(10)?,
                expected: row.get(11)?,
                tolerance: row.get(12)?,
                says: row.get(13)?,
                cause: row.get(14)?,
                changes,
            });
        }
        let (asked, title, safety) = about.ok_or_else(none)?;
        let last = revisions.last().ok_or_else(none)?;
        Ok(AnswerReport {
            exam,
            name,
            code: place.code.clone(),
            question: place.question,
            part: part_letter(place.part),
            title,
            safety,
            asked,
            counts: last.changes.last().map_or(last.earned, |change| change.earned),
            of: last.of,
            revisions,
        })
    }

    fn changes(&self, attempt: i64, place: &Place) -> Result<Vec<Change>, Error> {
        let mut list = self.db.prepare_cached(
            "SELECT earned, reason, author, made FROM changed WHERE attempt = ?1 AND question = ?2 AND part = ?3 ORDER BY id",
        )?;
        let rows = list.query_map(params![attempt, place.question as i64, place.part as i64], |row| {
            Ok(Change { earned: row.get(0)?, reason: row.get(1)?, by: row.get(2)?, made: row.get(3)? })
        })?;
        Ok(rows.collect::<Result<_, _>>()?)
    }
}
