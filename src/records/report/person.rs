//! One apprentice: papers, skills, trend, what to practise.

use std::collections::BTreeMap;

use drivecourse_machine::messages;
use drivecourse_machine::registry::nearest;
use drivecourse_quiz::grade::ENOUGH;
use serde::Serialize;

use super::class::{CauseLine, Causes};
use super::standing::{Standing, standings};
use crate::date::Date;
use crate::error::Error;
use crate::read::{Filter, PaperRow};
use crate::store::Store;

/// A paper in a list.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PaperLine {
    /// Short name of the exam.
    pub exam: String,
    /// As a heading.
    pub title: String,
    /// Its code.
    pub code: String,
    /// The day.
    pub sat: Option<Date>,
    /// Marks that count.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
    /// As a share.
    pub share: f64,
    /// Share that passes.
    pub pass: f64,
    /// Whether it passes.
    pub passed: bool,
    /// Last day on which it holds.
    pub until: Option<Date>,
    /// Which revision counts.
    pub revision: u32,
    /// Marks changed by an assessor.
    pub changed: u32,
    /// The result in a sentence.
    pub says: String,
}

/// One skill of one person.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SkillLine {
    /// Which.
    pub skill: String,
    /// Share of its marks on each day it was asked, the earliest first.
    pub days: Vec<(Date, f64)>,
    /// Share on the latest day.
    pub last: f64,
    /// Share over all days.
    pub all: f64,
    /// Share on the latest day less that on the first; nothing for one day.
    pub trend: Option<f64>,
    /// Whether it should be practised: less than enough on the latest day.
    pub practise: bool,
    /// What went wrong, most frequent first.
    pub causes: Vec<CauseLine>,
}

/// All about one apprentice.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PersonReport {
    /// The roster's id.
    pub person: String,
    /// Name on the latest paper.
    pub name: String,
    /// Group on the latest paper.
    pub group: String,
    /// The day it is drawn up for.
    pub as_of: Date,
    /// How the person stands in each exam.
    pub standings: Vec<Standing>,
    /// Papers, the earliest first.
    pub papers: Vec<PaperLine>,
    /// Skills, the weakest on its latest day first.
    pub skills: Vec<SkillLine>,
}

impl PersonReport {
    /// Skills to practise, the weakest first.
    pub fn to_practise(&self) -> impl Iterator<Item = &SkillLine> {
        self.skills.iter().filter(|skill| skill.practise)
    }
}

#[derive(Default)]
struct Sums {
    days: BTreeMap<Date, (u32, u32)>,
    causes: Causes,
}

fn share((earned, of): (u32, u32)) -> f64 {
    f64::from(earned) / f64::from(of.max(1))
}

impl Store {
    /// All about the person with this id up to `as_of`; a pass that lapses within `within` months is said to.
    ///
    /// # Errors
    /// [`Error::Refused`] where nobody has this id.
    pub fn person(&self, person: &str, as_of: Date, within: u32) -> Result<PersonReport, Error> {
        let filter = Filter { person: Some(person.to_owned()), until: Some(as_of), ..Filter::default() };
        let papers = self.all_papers(&filter)?;
        // The papers come by day, those not handed in last.
        let latest = papers.iter().rev().find(|paper| paper.sat.is_some()).or(papers.last());
        let Some(latest) = latest else { return Err(self.nobody(person, as_of)?) };
        Ok(PersonReport {
            person: person.to_owned(),
            name: latest.name.clone(),
            group: latest.group.clone(),
            as_of,
            standings: standings(&papers, as_of, within),
            skills: skills(&papers),
            papers: papers.iter().map(line).collect(),
        })
    }
}

messages! { pub(crate) SAYS {
    LATER = "records-problem-later", "nothing of {id} is in the records by {day}, but later";
    SEVERAL_NAMED = "records-problem-several-named", "{count} people in the records are called {name}: {ids}; ask for one by the id";
    NOBODY = "records-problem-nobody-by", "nobody in the records has the id {id} by {day}";
    NOBODY_BUT = "records-problem-nobody-by-but", "nobody in the records has the id {id} by {day}; near it: {near}";
} }

impl Store {
    /// Everybody in the records: ids and names, of which the one on the latest paper stands.
    fn people(&self) -> Result<BTreeMap<String, String>, Error> {
        let mut list = self.db.prepare(
            "SELECT person.key, paper.name FROM person JOIN paper ON paper.person = person.id ORDER BY person.key, paper.id",
        )?;
        Ok(list.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?.collect::<Result<_, _>>()?)
    }

    /// The id of whoever is meant by `asked`, an id or the whole name of one person; `asked` itself where it is neither.
    ///
    /// # Errors
    /// [`Error::Refused`] where several people have the name.
    pub fn id_of(&self, asked: &str) -> Result<String, Error> {
        let people = self.people()?;
        let plain = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase();
        let named = people.iter().filter(|(_, name)| plain(name) == plain(asked)).map(|(id, _)| id.as_str());
        match named.collect::<Vec<_>>().as_slice() {
            _ if people.contains_key(asked) => Ok(asked.to_owned()),
            [] => Ok(asked.to_owned()),
            [id] => Ok((*id).to_owned()),
            ids => {
                let (name, count) = (format!("{asked:?}"), ids.len().to_string());
                Err(Error::Refused(SEVERAL_NAMED.say(&[("name", &name), ("count", &count), ("ids", &ids.join(", "))])))
            }
        }
    }

    /// Why there is nothing about `person` by `as_of`, and whose id may be meant.
    fn nobody(&self, person: &str, as_of: Date) -> Result<Error, Error> {
        /// Ids that are named, at most.
        const MOST: usize = 5;
        let people = self.people()?;
        if people.contains_key(person) {
            return Ok(Error::Refused(LATER.say(&[("id", &format!("{person:?}")), ("day", &as_of.said())])));
        }
        let plain = |text: &str| text.trim().to_lowercase();
        let wanted = plain(person);
        let named = |(id, name): &(&String, &String)| {
            !wanted.is_empty() && (plain(name).contains(&wanted) || plain(id).contains(&wanted))
        };
        let mut near: Vec<&str> = people.iter().filter(named).map(|(id, _)| id.as_str()).collect();
        while let Some(id) = nearest(person, people.keys().map(String::as_str).filter(|id| !near.contains(id))) {
            near.push(id);
        }
        let near: Vec<String> = near.into_iter().take(MOST).map(|id| format!("{id} ({})", people[id])).collect();
        let says = if near.is_empty() { NOBODY } else { NOBODY_BUT };
        let words = [("id", &*format!("{person:?}")), ("day", &as_of.said()), ("near", &near.join(", "))];
        Ok(Error::Refused(says.say(&words)))
    }
}

fn line(paper: &PaperRow) -> PaperLine {
    PaperLine {
        exam: paper.exam.name.clone(),
        title: paper.exam.title.clone(),
        code: paper.code.clone(),
        sat: paper.sat,
        earned: paper.earned,
        of: paper.of,
        share: paper.share,
        pass: paper.exam.pass,
        passed: paper.passed,
        until: paper.holds_until(),
        revision: paper.revision,
        changed: paper.changed,
        says: paper.says.clone(),
    }
}

fn skills(papers: &[PaperRow]) -> Vec<SkillLine> {
    let mut sums: BTreeMap<&str, Sums> = BTreeMap::new();
    for (paper, sat) in papers.iter().filter_map(|paper| Some((paper, paper.sat?))) {
        for question in &paper.questions {
            let sum = sums.entry(&question.skill).or_default();
            let day = sum.days.entry(sat).or_default();
            *day = (day.0 + question.earned, day.1 + question.of);
            question.parts.iter().for_each(|part| sum.causes.add(part, &paper.person));
        }
    }
    let mut out: Vec<SkillLine> = (sums.into_iter())
        .map(|(skill, sum)| {
            let days: Vec<(Date, f64)> = sum.days.iter().map(|(day, marks)| (*day, share(*marks))).collect();
            let all = sum.days.values().fold((0, 0), |all, day| (all.0 + day.0, all.1 + day.1));
            let last = days.last().map_or(0.0, |day| day.1);
            SkillLine {
                skill: skill.to_owned(),
                last,
                all: share(all),
                trend: days.first().filter(|_| days.len() > 1).map(|first| last - first.1),
                practise: last < ENOUGH,
                causes: sum.causes.ranked(),
                days,
            }
        })
        .collect();
    out.sort_by(|a, b| a.last.total_cmp(&b.last).then_with(|| a.skill.cmp(&b.skill)));
    out
}
