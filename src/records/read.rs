//! Papers as they count: the latest revision of each, with marks as assessors changed them.

use std::collections::BTreeMap;

use drivecourse_machine::messages;
use drivecourse_quiz::grade::outcome;
use rusqlite::{Connection, params};
use serde::Serialize;

use crate::date::Date;
use crate::error::Error;
use crate::store::Store;

messages! { pub(crate) SAYS {
    LOST_ROW = "records-problem-lost-row", "the records are damaged: a row points to nothing";
} }

/// Which papers to read; nothing set reads all.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Filter {
    /// Of the person with this id.
    pub person: Option<String>,
    /// Of exams of this short name.
    pub exam: Option<String>,
    /// Of this group.
    pub group: Option<String>,
    /// Sat on this day or before.
    pub until: Option<Date>,
}

/// An exam as it was printed.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ExamRow {
    /// Number of its row.
    #[serde(skip)]
    pub id: i64,
    /// Short name.
    pub name: String,
    /// As a heading.
    pub title: String,
    /// Share that passes.
    pub pass: f64,
    /// Months a pass holds.
    pub months: Option<u32>,
}

/// One part as it counts.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PartRow {
    /// Place, from 0.
    pub part: usize,
    /// A verdict's name.
    pub verdict: String,
    /// Marks that count.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
    /// Name and sentence of the likeliest cause, if one was recognised.
    pub cause: Option<(String, String)>,
}

/// One question as it counts.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct QuestionRow {
    /// Number on the paper.
    pub number: usize,
    /// Number of the item's row.
    #[serde(skip)]
    pub item_row: i64,
    /// The item.
    pub item: String,
    /// The family of its machine.
    pub family: String,
    /// As a heading.
    pub title: String,
    /// The topic.
    pub topic: String,
    /// The skill.
    pub skill: String,
    /// Whether missing it fails the paper.
    pub safety: bool,
    /// Marks that count.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
    /// Its parts.
    pub parts: Vec<PartRow>,
}

impl QuestionRow {
    /// Earned marks as a share, 0 to 1.
    pub fn share(&self) -> f64 {
        if self.of == 0 { 0.0 } else { f64::from(self.earned) / f64::from(self.of) }
    }
}

/// A paper as it counts.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PaperRow {
    /// The exam.
    pub exam: ExamRow,
    /// Its code.
    pub code: String,
    /// The roster's id of its person.
    pub person: String,
    /// The person's name, as printed on this paper.
    pub name: String,
    /// Shift or class; may be empty.
    pub group: String,
    /// Which sitting.
    pub sitting: u32,
    /// The day it was sat; nothing where it was not handed in.
    pub sat: Option<Date>,
    /// Which revision counts; 0 where it was not handed in.
    pub revision: u32,
    /// How many marks were changed by an assessor.
    pub changed: u32,
    /// Marks that count.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
    /// Earned marks as a share.
    pub share: f64,
    /// Whether it passes.
    pub passed: bool,
    /// Numbers of the safety questions that were missed.
    pub safety_missed: Vec<usize>,
    /// The result in a sentence.
    pub says: String,
    /// The questions.
    pub questions: Vec<QuestionRow>,
}

impl PaperRow {
    /// The last day on which a pass of it holds; nothing where it holds for ever, or is no pass.
    pub fn holds_until(&self) -> Option<Date> {
        let (sat, months) = (self.sat?, self.exam.months?);
        self.passed.then(|| sat.plus_months(months))
    }
}

/// The mark that counts in place of `answer.earned`, if an assessor changed it.
pub(crate) const CHANGED: &str = "(SELECT changed.earned FROM changed WHERE changed.attempt = answer.attempt \
     AND changed.question = answer.question AND changed.part = answer.part ORDER BY changed.id DESC LIMIT 1)";

impl Store {
    /// Hands out every paper that `filter` lets through, by day, exam and order of import; papers not handed in come last.
    ///
    /// # Errors
    /// [`Error`].
    pub fn papers(&self, filter: &Filter, take: impl FnMut(PaperRow)) -> Result<(), Error> {
        papers(&self.db, filter, take)
    }

    /// The tag of the language in which every exam of the papers that `filter` lets through was held, of one paper where
    /// its `code` is given; nothing for English, or where there are several.
    ///
    /// # Errors
    /// [`Error`].
    pub fn language(&self, filter: &Filter, code: Option<&str>) -> Result<Option<String>, Error> {
        let known = "SELECT EXISTS (SELECT 1 FROM sqlite_schema WHERE name = 'exam_language')";
        if !self.db.query_row(known, [], |row| row.get::<_, bool>(0))? {
            return Ok(None);
        }
        let mut list = self.db.prepare(
            "SELECT DISTINCT tag FROM exam LEFT JOIN exam_language ON exam_language.exam = exam.id \
             WHERE (?2 IS NULL OR exam.name = ?2) AND EXISTS (SELECT 1 FROM paper JOIN person ON person.id = paper.person \
             WHERE paper.exam = exam.id AND (?1 IS NULL OR person.key = ?1) AND (?3 IS NULL OR paper.team = ?3) \
             AND (?4 IS NULL OR paper.code = ?4))",
        )?;
        let tags = list.query_map(params![filter.person, filter.exam, filter.group, code], |row| row.get(0))?;
        let tags: Vec<Option<String>> = tags.collect::<Result<_, _>>()?;
        Ok(if let [tag] = tags.as_slice() { tag.clone() } else { None })
    }

    /// All of them at once.
    ///
    /// # Errors
    /// [`Error`].
    pub fn all_papers(&self, filter: &Filter) -> Result<Vec<PaperRow>, Error> {
        let mut out = Vec::new();
        self.papers(filter, |paper| out.push(paper))?;
        Ok(out)
    }
}

pub(crate) fn papers(db: &Connection, filter: &Filter, mut take: impl FnMut(PaperRow)) -> Result<(), Error> {
    let exams = exams(db)?;
    let items = items(db)?;
    let causes = causes(db)?;
    let mut list = db.prepare_cached(
        "SELECT paper.exam, paper.code, person.key, paper.name, paper.team, paper.sitting, counted.id, \
         counted.revision, counted.sat \
         FROM paper JOIN person ON person.id = paper.person JOIN exam ON exam.id = paper.exam \
         LEFT JOIN counted ON counted.paper = paper.id \
         WHERE (?1 IS NULL OR person.key = ?1) AND (?2 IS NULL OR exam.name = ?2) AND (?3 IS NULL OR paper.team = ?3) \
         AND (?4 IS NULL OR counted.sat IS NULL OR counted.sat <= ?4) \
         ORDER BY counted.sat IS NULL, counted.sat, paper.exam, paper.id",
    )?;
    let mut answers = db.prepare_cached(&format!(
        "SELECT question, part, item, verdict, earned, most, cause, {CHANGED} FROM answer WHERE attempt = ?1 \
         ORDER BY question, part"
    ))?;
    let until = filter.until.map(|date| date.to_string());
    let mut rows = list.query(params![filter.person, filter.exam, filter.group, until])?;
    while let Some(row) = rows.next()? {
        let lost = || Error::Refused(LOST_ROW.text().into());
        let exam = exams.get(&row.get(0)?).ok_or_else(lost)?;
        let attempt: Option<i64> = row.get(6)?;
        let sat: Option<String> = row.get(8)?;
        let mut paper = PaperRow {
            exam: exam.clone(),
            code: row.get(1)?,
            person: row.get(2)?,
            name: row.get(3)?,
            group: row.get(4)?,
            sitting: row.get(5)?,
            sat: sat.as_deref().map(Date::read).transpose().map_err(|error| Error::Refused(error.to_string()))?,
            revision: row.get::<_, Option<u32>>(7)?.unwrap_or(0),
            changed: 0,
            earned: 0,
            of: 0,
            share: 0.0,
            passed: false,
            safety_missed: Vec::new(),
            says: String::new(),
            questions: Vec::new(),
        };
        if let Some(attempt) = attempt {
            let mut parts = answers.query([attempt])?;
            while let Some(row) = parts.next()? {
                let number = row.get::<_, i64>(0)? as usize;
                let item_row: i64 = row.get(2)?;
                if paper.questions.last().is_none_or(|question| question.number != number) {
                    let blank = items.get(&item_row).ok_or_else(lost)?;
                    paper.questions.push(QuestionRow { number, item_row, ..blank.clone() });
                }
                let changed: Option<u32> = row.get(7)?;
                paper.changed += u32::from(changed.is_some());
                let part = PartRow {
                    part: row.get::<_, i64>(1)? as usize,
                    verdict: row.get(3)?,
                    earned: changed.unwrap_or(row.get(4)?),
                    of: row.get(5)?,
                    cause: row.get::<_, Option<i64>>(6)?.and_then(|cause| causes.get(&cause).cloned()),
                };
                if let Some(question) = paper.questions.last_mut() {
                    question.earned += part.earned;
                    question.of += part.of;
                    question.parts.push(part);
                }
            }
        }
        sum_up(&mut paper, attempt.is_some());
        take(paper);
    }
    Ok(())
}

fn sum_up(paper: &mut PaperRow, present: bool) {
    paper.earned = paper.questions.iter().map(|question| question.earned).sum();
    paper.of = paper.questions.iter().map(|question| question.of).sum();
    let missed = |question: &&QuestionRow| question.safety && question.earned < question.of;
    paper.safety_missed = paper.questions.iter().filter(missed).map(|question| question.number).collect();
    let out = outcome(present, paper.earned, paper.of, paper.exam.pass, &paper.safety_missed);
    (paper.share, paper.passed, paper.says) = (out.share, out.passed, out.says);
}

pub(crate) fn exams(db: &Connection) -> Result<BTreeMap<i64, ExamRow>, Error> {
    let mut list = db.prepare_cached("SELECT id, name, title, pass, months FROM exam")?;
    let rows = list.query_map([], |row| {
        let id = row.get(0)?;
        let exam = ExamRow { id, name: row.get(1)?, title: row.get(2)?, pass: row.get(3)?, months: row.get(4)? };
        Ok((id, exam))
    })?;
    Ok(rows.collect::<Result<_, _>>()?)
}

/// Every item as a question without a number or parts.
pub(crate) fn items(db: &Connection) -> Result<BTreeMap<i64, QuestionRow>, Error> {
    let mut list = db.prepare_cached("SELECT id, item, family, title, topic, skill, safety FROM item")?;
    let rows = list.query_map([], |row| {
        let item_row = row.get(0)?;
        let question = QuestionRow {
            number: 0,
            item_row,
            item: row.get(1)?,
            family: row.get(2)?,
            title: row.get(3)?,
            topic: row.get(4)?,
            skill: row.get(5)?,
            safety: row.get(6)?,
            earned: 0,
            of: 0,
            parts: Vec::new(),
        };
        Ok((item_row, question))
    })?;
    Ok(rows.collect::<Result<_, _>>()?)
}

pub(crate) fn causes(db: &Connection) -> Result<BTreeMap<i64, (String, String)>, Error> {
    let mut list = db.prepare_cached("SELECT id, name, says FROM cause")?;
    let rows = list.query_map([], |row| Ok((row.get(0)?, (row.get(1)?, row.get(2)?))))?;
    Ok(rows.collect::<Result<_, _>>()?)
}
