//! How items did: difficulty, discrimination, wrong turns, whether the variants of one are equally hard; and how far
//! the marks of each exam can be relied on.

use std::collections::{BTreeMap, BTreeSet};

use drivecourse_quiz::grade::{correlation, mean};
use serde::Serialize;

use super::class::{CauseLine, Causes};
use crate::error::Error;
use crate::read::{self, Filter, QuestionRow};
use crate::statistics::{Alike, alike, alpha, interval};
use crate::store::Store;

/// Which items to report on; nothing set reports on all.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct ItemFilter {
    /// Only this item.
    pub item: Option<String>,
    /// Only questions about machines of this family.
    pub family: Option<String>,
}

impl ItemFilter {
    fn takes(&self, question: &QuestionRow) -> bool {
        self.item.as_ref().is_none_or(|item| *item == question.item)
            && self.family.as_ref().is_none_or(|family| *family == question.family)
    }
}

/// An item about machines of one family.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Variant {
    /// The family.
    pub family: String,
    /// How often it was asked, those of removed people included.
    pub asked: usize,
    /// How often it earned all its marks.
    pub full: usize,
    /// Share that earned all its marks.
    pub share: f64,
    /// 95 % interval of that share (Wilson).
    pub interval: Option<(f64, f64)>,
}

/// How one item did.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ItemLine {
    /// The item.
    pub item: String,
    /// As a heading.
    pub title: String,
    /// The skill.
    pub skill: String,
    /// Whether missing it fails a paper.
    pub safety: bool,
    /// How often it was asked, those of removed people included.
    pub asked: usize,
    /// How many of them are of removed people.
    pub removed: usize,
    /// Share of its marks that was earned: the larger, the easier.
    pub facility: f64,
    /// How often it earned all its marks.
    pub full: usize,
    /// 95 % interval of the share that earned all its marks (Wilson).
    pub interval: Option<(f64, f64)>,
    /// Correlation of the share earned here with the share earned in the rest of the paper (corrected: the item itself
    /// is left out); nothing for fewer than three, or where all did alike. Removed people are not in it.
    pub discrimination: Option<f64>,
    /// Parts left blank.
    pub blank: usize,
    /// Parts that could not be read, or bore a unit of another kind.
    pub unread: usize,
    /// Parts credited from an earlier error.
    pub carried: usize,
    /// What went wrong, most frequent first.
    pub causes: Vec<CauseLine>,
    /// By family of machine.
    pub variants: Vec<Variant>,
    /// Whether the variants are equally hard (chi-square of all marks or not).
    pub alike: Option<Alike>,
}

/// How far the marks of an exam can be relied on.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Reliability {
    /// Short name of the exam.
    pub exam: String,
    /// As a heading.
    pub title: String,
    /// Papers handed in.
    pub papers: usize,
    /// Questions on each.
    pub questions: usize,
    /// Mean of the papers' shares of their marks, each paper counting alike.
    pub mean: f64,
    /// Alpha of the shares earned at each place of the paper; every variance with divisor n.
    pub alpha: Option<f64>,
    /// The same of all marks or not: KR-20, both variances with divisor n.
    pub kr20: Option<f64>,
}

/// How items and exams did.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ItemsReport {
    /// Items in order of name.
    pub items: Vec<ItemLine>,
    /// Exams; papers draw different items at each place, so that a place stands for an item of its row.
    pub exams: Vec<Reliability>,
}

#[derive(Default)]
struct Sums {
    about: Option<QuestionRow>,
    /// Share here, share in the rest of the paper.
    pairs: Vec<(f64, f64)>,
    /// Earned and most, over all marks, for what is kept of removed people.
    kept: (usize, u64, u64),
    blank: usize,
    unread: usize,
    carried: usize,
    causes: Causes,
    families: BTreeMap<String, (usize, usize)>,
}

#[derive(Default)]
struct Test {
    name: (String, String),
    shares: Vec<Vec<f64>>,
    totals: Vec<f64>,
}

impl Store {
    /// How the items that `which` lets through did on the papers that `filter` lets through.
    ///
    /// # Errors
    /// [`Error`].
    pub fn items(&self, filter: &Filter, which: &ItemFilter) -> Result<ItemsReport, Error> {
        let mut items: BTreeMap<String, Sums> = BTreeMap::new();
        let mut tests: BTreeMap<i64, Test> = BTreeMap::new();
        self.papers(filter, |paper| {
            if paper.sat.is_none() {
                return;
            }
            let test = tests.entry(paper.exam.id).or_default();
            test.name = (paper.exam.name.clone(), paper.exam.title.clone());
            test.shares.push(paper.questions.iter().map(QuestionRow::share).collect());
            test.totals.push(paper.share);
            for question in paper.questions.iter().filter(|question| which.takes(question)) {
                let sums = items.entry(question.item.clone()).or_default();
                let (earned, of) = (paper.earned - question.earned, paper.of - question.of);
                let rest = if of == 0 { 0.0 } else { f64::from(earned) / f64::from(of) };
                sums.pairs.push((question.share(), rest));
                let family = sums.families.entry(question.family.clone()).or_default();
                *family = (family.0 + usize::from(question.earned == question.of), family.1 + 1);
                for part in &question.parts {
                    match part.verdict.as_str() {
                        "blank" => sums.blank += 1,
                        "unreadable" | "wrong-unit" => sums.unread += 1,
                        "carried" => sums.carried += 1,
                        _ => {}
                    }
                    sums.causes.add(part, &paper.person);
                }
                if sums.about.is_none() {
                    sums.about = Some(QuestionRow { parts: Vec::new(), ..question.clone() });
                }
            }
        })?;
        if *filter == (Filter { until: filter.until, ..Filter::default() }) {
            self.add_kept_items(&mut items, which)?;
        }
        let items = items.into_iter().filter_map(|(item, sums)| line(item, sums)).collect();
        Ok(ItemsReport { items, exams: tests.into_values().map(reliability).collect() })
    }

    fn add_kept_items(&self, items: &mut BTreeMap<String, Sums>, which: &ItemFilter) -> Result<(), Error> {
        let (known, causes) = (read::items(&self.db)?, read::causes(&self.db)?);
        let mut list = self.db.prepare("SELECT item, asked, full, earned, most FROM kept_item")?;
        let mut rows = list.query([])?;
        while let Some(row) = rows.next()? {
            let Some(about) = known.get(&row.get(0)?).filter(|about| which.takes(about)) else { continue };
            let sums = items.entry(about.item.clone()).or_default();
            let number = |place: usize| row.get::<_, i64>(place).map(i64::unsigned_abs);
            let (asked, full) = (number(1)? as usize, number(2)? as usize);
            sums.kept = (sums.kept.0 + asked, sums.kept.1 + number(3)?, sums.kept.2 + number(4)?);
            let family = sums.families.entry(about.family.clone()).or_default();
            *family = (family.0 + full, family.1 + asked);
            sums.about.get_or_insert_with(|| about.clone());
        }
        let mut list = self.db.prepare("SELECT item, cause, times FROM kept_cause")?;
        let mut rows = list.query([])?;
        while let Some(row) = rows.next()? {
            let about = known.get(&row.get(0)?).filter(|about| which.takes(about));
            let cause = causes.get(&row.get(1)?);
            if let (Some(about), Some(cause)) = (about, cause) {
                let times = row.get::<_, i64>(2)?.unsigned_abs() as usize;
                items.entry(about.item.clone()).or_default().causes.add_kept(cause.clone(), times);
            }
        }
        Ok(())
    }
}

fn line(item: String, sums: Sums) -> Option<ItemLine> {
    let about = sums.about?;
    let (removed, kept_earned, kept_of) = sums.kept;
    let asked = sums.pairs.len() + removed;
    let kept_share = if kept_of == 0 { 0.0 } else { kept_earned as f64 / kept_of as f64 };
    let sum: f64 = sums.pairs.iter().map(|pair| pair.0).sum();
    let full = sums.families.values().map(|family| family.0).sum();
    let groups: Vec<(usize, usize)> = sums.families.values().copied().collect();
    let variants = (sums.families.into_iter())
        .map(|(family, (full, asked))| Variant {
            family,
            asked,
            full,
            share: full as f64 / asked.max(1) as f64,
            interval: interval(full, asked),
        })
        .collect();
    Some(ItemLine {
        item,
        title: about.title,
        skill: about.skill,
        safety: about.safety,
        asked,
        removed,
        facility: (sum + kept_share * removed as f64) / asked.max(1) as f64,
        full,
        interval: interval(full, asked),
        discrimination: correlation(&sums.pairs),
        blank: sums.blank,
        unread: sums.unread,
        carried: sums.carried,
        causes: sums.causes.ranked(),
        variants,
        alike: alike(&groups),
    })
}

fn reliability(test: Test) -> Reliability {
    let lengths: BTreeSet<usize> = test.shares.iter().map(Vec::len).collect();
    // Papers of one exam have equally many questions; else there is nothing to compare.
    let same = lengths.len() == 1;
    let full: Vec<Vec<f64>> =
        test.shares.iter().map(|shares| shares.iter().map(|share| f64::from(*share >= 1.0)).collect()).collect();
    Reliability {
        exam: test.name.0,
        title: test.name.1,
        papers: test.shares.len(),
        questions: lengths.last().copied().unwrap_or(0),
        mean: mean(test.totals.iter().copied()),
        alpha: alpha(&test.shares).filter(|_| same),
        kr20: alpha(&full).filter(|_| same),
    }
}
