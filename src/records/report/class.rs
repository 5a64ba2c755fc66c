//! The class: who is ready, who must not work alone yet, what the class is weak at.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::standing::{Standing, standings};
use crate::date::Date;
use crate::error::Error;
use crate::read::{Filter, PaperRow, PartRow};
use crate::store::Store;

/// Something that went wrong, and how often.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CauseLine {
    /// Short name.
    pub name: String,
    /// What it says to the person.
    pub says: String,
    /// How often it was met.
    pub times: usize,
    /// How many people met it.
    pub people: usize,
}

/// Causes being counted.
#[derive(Debug, Default, Clone)]
pub(super) struct Causes(BTreeMap<(String, String), (usize, BTreeSet<String>)>);

impl Causes {
    pub(super) fn add(&mut self, part: &PartRow, person: &str) {
        if let Some(cause) = &part.cause {
            let count = self.0.entry(cause.clone()).or_default();
            count.0 += 1;
            if !count.1.contains(person) {
                count.1.insert(person.to_owned());
            }
        }
    }

    /// Adds what is known of removed people.
    pub(super) fn add_kept(&mut self, cause: (String, String), times: usize) {
        self.0.entry(cause).or_default().0 += times;
    }

    /// Most frequent first, then by name.
    pub(super) fn ranked(self) -> Vec<CauseLine> {
        let mut out: Vec<CauseLine> = (self.0.into_iter())
            .map(|((name, says), (times, people))| CauseLine { name, says, times, people: people.len() })
            .collect();
        out.sort_by(|a, b| b.times.cmp(&a.times).then_with(|| (&a.name, &a.says).cmp(&(&b.name, &b.says))));
        out
    }
}

/// What a class earned in one skill.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SkillShare {
    /// Which.
    pub skill: String,
    /// Marks earned on everyone's latest papers.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
    /// As a share.
    pub share: f64,
}

/// Totals of an exam, those of removed people included.
#[derive(Debug, Clone, Default, PartialEq, Serialize)]
pub struct ExamTotals {
    /// Short name.
    pub exam: String,
    /// As a heading.
    pub title: String,
    /// Papers drawn.
    pub papers: u64,
    /// Papers handed in.
    pub handed_in: u64,
    /// Papers that passed.
    pub passed: u64,
    /// Marks earned.
    pub earned: u64,
    /// Marks to be had.
    pub of: u64,
    /// How many of the papers are of people whose data was taken out.
    pub removed: u64,
}

/// All about a class.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ClassReport {
    /// The day it is drawn up for.
    pub as_of: Date,
    /// The group, if only one was asked for.
    pub group: Option<String>,
    /// Everyone in every exam, by exam and name.
    pub standings: Vec<Standing>,
    /// Skills, the weakest first.
    pub skills: Vec<SkillShare>,
    /// What went wrong on everyone's latest papers, most frequent first.
    pub causes: Vec<CauseLine>,
    /// Totals of each exam. Removed people count only where no group was asked for.
    pub totals: Vec<ExamTotals>,
}

/// Title, short name and first day of every exam on `papers`, by its row.
fn exams_of(papers: &[PaperRow]) -> BTreeMap<i64, (String, String, Option<Date>)> {
    let mut out: BTreeMap<i64, (String, String, Option<Date>)> = BTreeMap::new();
    for paper in papers {
        let exam = || (paper.exam.title.clone(), paper.exam.name.clone(), paper.sat);
        let (_, _, day) = out.entry(paper.exam.id).or_insert_with(exam);
        *day = day.iter().copied().chain(paper.sat).min();
    }
    out
}

/// Adds its day to the title of an exam where another has the same title, and its short name where that does not do.
fn tell_apart(title: &mut String, row: i64, exams: &BTreeMap<i64, (String, String, Option<Date>)>) {
    let Some((own, name, day)) = exams.get(&row) else { return };
    let mut alike = exams.iter().filter(|(other, exam)| **other != row && exam.0 == *own).peekable();
    if alike.peek().is_none() {
        return;
    }
    let same_day = alike.any(|(_, exam)| exam.2 == *day);
    match day {
        Some(day) if same_day => title.push_str(&format!(" ({day}, {name})")),
        Some(day) => title.push_str(&format!(" ({day})")),
        None => title.push_str(&format!(" ({name})")),
    }
}

impl Store {
    /// All about the class that `filter` lets through, on the day `as_of`.
    ///
    /// # Errors
    /// [`Error`].
    pub fn class(&self, filter: &Filter, as_of: Date, within: u32) -> Result<ClassReport, Error> {
        let papers = self.all_papers(&Filter { until: Some(as_of), ..filter.clone() })?;
        let mut standings = standings(&papers, as_of, within);
        standings.sort_by(|a, b| (&a.exam, &a.name, &a.person).cmp(&(&b.exam, &b.name, &b.person)));
        let latest: BTreeSet<(i64, String)> =
            standings.iter().map(|standing| (standing.exam_row, standing.code.clone())).collect();
        let mut skills: BTreeMap<&str, (u32, u32)> = BTreeMap::new();
        let mut causes = Causes::default();
        let mut totals: BTreeMap<i64, ExamTotals> = BTreeMap::new();
        for paper in &papers {
            let total = totals.entry(paper.exam.id).or_default();
            total.exam.clone_from(&paper.exam.name);
            total.title.clone_from(&paper.exam.title);
            total.papers += 1;
            total.handed_in += u64::from(paper.sat.is_some());
            total.passed += u64::from(paper.passed);
            total.earned += u64::from(paper.earned);
            total.of += u64::from(paper.of);
            if !latest.contains(&(paper.exam.id, paper.code.clone())) {
                continue;
            }
            for question in &paper.questions {
                let skill = skills.entry(&question.skill).or_default();
                *skill = (skill.0 + question.earned, skill.1 + question.of);
                question.parts.iter().for_each(|part| causes.add(part, &paper.person));
            }
        }
        if filter.group.is_none() && filter.person.is_none() {
            self.add_removed(&mut totals, filter.exam.as_deref())?;
        }
        let mut skills: Vec<SkillShare> = (skills.into_iter())
            .map(|(skill, (earned, of))| {
                let share = f64::from(earned) / f64::from(of.max(1));
                SkillShare { skill: skill.to_owned(), earned, of, share }
            })
            .collect();
        skills.sort_by(|a, b| a.share.total_cmp(&b.share).then_with(|| a.skill.cmp(&b.skill)));
        let exams = exams_of(&papers);
        for (exam, total) in &mut totals {
            tell_apart(&mut total.title, *exam, &exams);
        }
        for standing in &mut standings {
            tell_apart(&mut standing.title, standing.exam_row, &exams);
        }
        let mut totals: Vec<ExamTotals> = totals.into_values().collect();
        totals.sort_by(|a, b| a.exam.cmp(&b.exam));
        Ok(ClassReport { as_of, group: filter.group.clone(), standings, skills, causes: causes.ranked(), totals })
    }

    fn add_removed(&self, totals: &mut BTreeMap<i64, ExamTotals>, only: Option<&str>) -> Result<(), Error> {
        let mut list = self.db.prepare(
            "SELECT exam.id, name, title, papers, handed_in, passed, earned, most FROM kept_exam \
             JOIN exam ON exam.id = kept_exam.exam WHERE ?1 IS NULL OR name = ?1",
        )?;
        let mut rows = list.query([only])?;
        while let Some(row) = rows.next()? {
            let total = totals.entry(row.get(0)?).or_default();
            total.exam = row.get(1)?;
            total.title = row.get(2)?;
            let papers: u64 = row.get::<_, i64>(3)?.unsigned_abs();
            total.papers += papers;
            total.removed += papers;
            total.handed_in += row.get::<_, i64>(4)?.unsigned_abs();
            total.passed += row.get::<_, i64>(5)?.unsigned_abs();
            total.earned += row.get::<_, i64>(6)?.unsigned_abs();
            total.of += row.get::<_, i64>(7)?.unsigned_abs();
        }
        Ok(())
    }
}
