//! What an assessor decides afterwards: a mark changed with a reason, a person's data taken out on request.

use drivecourse_machine::messages;
use drivecourse_quiz::explain::part_letter;
use rusqlite::{OptionalExtension, Transaction, params};
use serde::Serialize;

use crate::date::Date;
use crate::error::Error;
use crate::import::{Reason, removal_mark};
use crate::read::{Filter, papers};
use crate::store::Store;

messages! { pub(crate) SAYS {
    PLACE = "records-problem-place", "question {question} ({part}) of paper {code}";
    NO_PLACE = "records-problem-no-place", "there is no {place} in the records";
    AT_MOST_ONE = "records-problem-at-most-one", "{place} earns at most 1 mark, not {earned}";
    AT_MOST = "records-problem-at-most", "{place} earns at most {of} marks, not {earned}";
    NOBODY = "records-problem-nobody", "nobody in the records has the id {id}";
    NO_EXAM = "records-problem-no-exam", "no exam {exam} in the records has a paper {code}; {exams}";
    NO_ANSWERS = "records-problem-no-answers", "there are no answers to a paper {code} in the records";
    SEVERAL = "records-problem-several", "several exams in the records have a paper {code}: say which with --exam; {exams}";
    CALLED = "records-problem-called", "--exam {called} for {title} ({name}), sat on {day}";
} }

/// A part of a question of a paper.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Place {
    /// The paper's code, as it is written on it.
    pub code: String,
    /// The question's number.
    pub question: usize,
    /// The part, from 0.
    pub part: usize,
    /// Which exam, where several in the records have a paper of this code: its short name, or the beginning of its digest.
    pub exam: Option<String>,
}

impl core::fmt::Display for Place {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        let (question, part) = (self.question.to_string(), part_letter(self.part).to_string());
        f.write_str(&PLACE.say(&[("question", &question), ("part", &part), ("code", &self.code)]))
    }
}

/// A changed mark.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ChangedMark {
    /// What counted before.
    pub was: u32,
    /// Marks to be had.
    pub of: u32,
    /// Whether the same change stood already; then nothing was written.
    pub stood: bool,
}

/// What was taken out.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
pub struct Removed {
    /// Papers.
    pub papers: usize,
    /// Answers, of all revisions.
    pub answers: usize,
    /// Changed marks.
    pub changed: usize,
}

impl Store {
    /// Lets `earned` marks count for the answer at `place`; the original mark stays on record.
    ///
    /// # Errors
    /// [`Error::Refused`]: no such answer, or more marks than there are.
    pub fn change_mark(
        &mut self,
        place: &Place,
        earned: u32,
        reason: &Reason,
        made: Date,
    ) -> Result<ChangedMark, Error> {
        let write = self.write()?;
        let attempt = attempt_of(&write, place)?;
        let answer: Option<(u32, u32)> = write
            .query_row(
                "SELECT earned, most FROM answer WHERE attempt = ?1 AND question = ?2 AND part = ?3",
                params![attempt, place.question as i64, place.part as i64],
                |row| Ok((row.get(0)?, row.get(1)?)),
            )
            .optional()?;
        let (given, of) = answer.ok_or_else(|| no_place(place))?;
        if earned > of {
            let (says, place) = (if of == 1 { AT_MOST_ONE } else { AT_MOST }, place.to_string());
            let words = [("place", &*place), ("of", &of.to_string()), ("earned", &earned.to_string())];
            return Err(Error::Refused(says.say(&words)));
        }
        let last: Option<(u32, String, String)> = write
            .query_row(
                "SELECT earned, reason, author FROM changed WHERE attempt = ?1 AND question = ?2 AND part = ?3 \
                 ORDER BY id DESC LIMIT 1",
                params![attempt, place.question as i64, place.part as i64],
                |row| Ok((row.get(0)?, row.get(1)?, row.get(2)?)),
            )
            .optional()?;
        let was = last.as_ref().map_or(given, |last| last.0);
        let stood = last == Some((earned, reason.says.clone(), reason.by.clone()));
        if !stood {
            write.execute(
                "INSERT INTO changed (attempt, question, part, earned, reason, author, made) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
                params![
                    attempt,
                    place.question as i64,
                    place.part as i64,
                    earned,
                    reason.says,
                    reason.by,
                    made.to_string()
                ],
            )?;
            write.commit()?;
        }
        Ok(ChangedMark { was, of, stood })
    }

    /// Takes out every row of the person with this id: papers, answers, changed marks. Totals of exams, items and
    /// wrong turns are kept, over all removed people together, and a later import does not bring the papers back.
    ///
    /// # Errors
    /// [`Error::Refused`] where nobody has this id.
    pub fn forget(&mut self, person: &str) -> Result<Removed, Error> {
        let write = self.write()?;
        let id: Option<i64> =
            write.query_row("SELECT id FROM person WHERE key = ?1", [person], |row| row.get(0)).optional()?;
        let id = id.ok_or_else(|| Error::Refused(NOBODY.say(&[("id", &format!("{person:?}"))])))?;
        keep_totals(&write, person)?;
        let mut marks = Vec::new();
        {
            let mut list = write.prepare(
                "SELECT exam.digest, paper.code FROM paper JOIN exam ON exam.id = paper.exam WHERE person = ?1",
            )?;
            let mut rows = list.query([id])?;
            while let Some(row) = rows.next()? {
                marks.push(removal_mark(&row.get::<_, String>(0)?, &row.get::<_, String>(1)?));
            }
        }
        for mark in &marks {
            write.execute("INSERT INTO forgotten (mark) VALUES (?1) ON CONFLICT DO NOTHING", [mark])?;
        }
        write.execute("INSERT INTO removal (person) VALUES (?1)", [id])?;
        let attempts =
            "attempt IN (SELECT attempt.id FROM attempt JOIN paper ON paper.id = attempt.paper WHERE person = ?1)";
        let changed = write.execute(&format!("DELETE FROM changed WHERE {attempts}"), [id])?;
        let answers = write.execute(&format!("DELETE FROM answer WHERE {attempts}"), [id])?;
        write.execute("DELETE FROM attempt WHERE paper IN (SELECT id FROM paper WHERE person = ?1)", [id])?;
        let papers = write.execute("DELETE FROM paper WHERE person = ?1", [id])?;
        write.execute("DELETE FROM person WHERE id = ?1", [id])?;
        write.execute("DELETE FROM removal", [])?;
        write.commit()?;
        Ok(Removed { papers, answers, changed })
    }
}

/// There is no answer at `place`.
pub(crate) fn no_place(place: &Place) -> Error {
    Error::Refused(NO_PLACE.say(&[("place", &place.to_string())]))
}

/// The attempt that counts of the paper at `place`; two exams may have papers of one code.
pub(crate) fn attempt_of(db: &rusqlite::Connection, place: &Place) -> Result<i64, Error> {
    let code = &place.code;
    let mut list = db.prepare(
        "SELECT counted.id, exam.name, exam.title, exam.digest, counted.sat FROM counted \
         JOIN paper ON paper.id = counted.paper JOIN exam ON exam.id = paper.exam WHERE code = ?1 ORDER BY exam.id",
    )?;
    let found: Vec<(i64, Candidate)> = list
        .query_map([code], |row| {
            let exam = Candidate { name: row.get(1)?, title: row.get(2)?, digest: row.get(3)?, sat: row.get(4)? };
            Ok((row.get(0)?, exam))
        })?
        .collect::<Result<_, _>>()?;
    let meant: Vec<_> =
        found.iter().filter(|(_, exam)| place.exam.as_deref().is_none_or(|text| exam.is(text))).collect();
    match (meant.as_slice(), place.exam.as_deref()) {
        ([(id, _)], _) => Ok(*id),
        ([], Some(exam)) if !found.is_empty() => {
            let exams = tell_apart(found.iter().map(|(_, exam)| exam));
            let words = [("exam", &*format!("{exam:?}")), ("code", code), ("exams", &exams)];
            Err(Error::Refused(NO_EXAM.say(&words)))
        }
        ([], _) => Err(Error::Refused(NO_ANSWERS.say(&[("code", code)]))),
        (several, _) => {
            let exams = tell_apart(several.iter().map(|(_, exam)| exam));
            Err(Error::Refused(SEVERAL.say(&[("code", code), ("exams", &exams)])))
        }
    }
}

/// An exam whose paper may be meant.
struct Candidate {
    name: String,
    title: String,
    digest: String,
    sat: String,
}

impl Candidate {
    /// Figures of a digest that name an exam, at least.
    const LEAST: usize = 4;

    /// Whether `text` names it.
    fn is(&self, text: &str) -> bool {
        let text = text.trim();
        text == self.name || (text.len() >= Self::LEAST && self.digest.starts_with(&text.to_ascii_lowercase()))
    }
}

/// What each of `exams` is called with `--exam`: its name, or its digest where another has the same name.
fn tell_apart<'c>(exams: impl Iterator<Item = &'c Candidate>) -> String {
    let exams: Vec<&Candidate> = exams.collect();
    let says = exams.iter().map(|exam| {
        let alone = exams.iter().filter(|other| other.name == exam.name).count() == 1;
        let called = if alone { exam.name.as_str() } else { exam.digest.get(..12).unwrap_or(&exam.digest) };
        let day = Date::read(&exam.sat).map_or_else(|_| exam.sat.clone(), Date::said);
        CALLED.say(&[("called", called), ("title", &exam.title), ("name", &exam.name), ("day", &day)])
    });
    says.collect::<Vec<_>>().join(", ")
}

fn keep_totals(write: &Transaction<'_>, person: &str) -> Result<(), Error> {
    let filter = Filter { person: Some(person.to_owned()), ..Filter::default() };
    let mut list = Vec::new();
    papers(write, &filter, |paper| list.push(paper))?;
    for paper in &list {
        let handed_in = paper.sat.is_some();
        write.execute(
            "INSERT INTO kept_exam VALUES (?1, 1, ?2, ?3, ?4, ?5) ON CONFLICT DO UPDATE SET papers = papers + 1, \
             handed_in = handed_in + ?2, passed = passed + ?3, earned = earned + ?4, most = most + ?5",
            params![paper.exam.id, handed_in, paper.passed, paper.earned, paper.of],
        )?;
        for question in &paper.questions {
            write.execute(
                "INSERT INTO kept_item VALUES (?1, 1, ?2, ?3, ?4) ON CONFLICT DO UPDATE SET asked = asked + 1, \
                 full = full + ?2, earned = earned + ?3, most = most + ?4",
                params![question.item_row, question.earned == question.of, question.earned, question.of],
            )?;
            for (name, says) in question.parts.iter().filter_map(|part| part.cause.as_ref()) {
                write.execute(
                    "INSERT INTO kept_cause SELECT ?1, id, 1 FROM cause WHERE name = ?2 AND says = ?3 \
                     ON CONFLICT DO UPDATE SET times = times + 1",
                    params![question.item_row, name, says],
                )?;
            }
        }
    }
    Ok(())
}
