//! Who is ready, and until when.

use std::collections::BTreeMap;

use drivecourse_machine::language::Message;
use drivecourse_machine::messages;
use drivecourse_quiz::Verdict;
use serde::Serialize;

use crate::date::Date;
use crate::error::Error;
use crate::read::{Filter, PaperRow};
use crate::store::Store;

/// Whether a person is ready for what an exam is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum State {
    /// The latest paper passes, and holds.
    Ready,
    /// It holds, but lapses soon.
    Due,
    /// It passed, and has lapsed.
    Lapsed,
    /// The latest paper does not pass.
    NotPassed,
    /// No paper was ever handed in.
    NothingHandedIn,
}

messages! { pub(crate) SAYS {
    READY = "standing-ready", "ready";
    DUE = "standing-due", "ready, lapses soon";
    LAPSED = "standing-lapsed", "lapsed";
    NOT_PASSED = "standing-not-passed", "not passed";
    NOTHING_HANDED_IN = "standing-nothing-handed-in", "nothing handed in";
    HAS_LAPSED = "standing-has-lapsed", "Passed, but that lapsed after {day}: due for a new paper.";
    HOLDS = "standing-holds", "It holds until {day}.";
} }

impl State {
    /// Whether the person may work alone as far as this exam says.
    pub fn alone(self) -> bool {
        matches!(self, Self::Ready | Self::Due)
    }

    /// In a few words: tables have them in English, people in the language spoken.
    pub fn says(self) -> Message {
        match self {
            Self::Ready => READY,
            Self::Due => DUE,
            Self::Lapsed => LAPSED,
            Self::NotPassed => NOT_PASSED,
            Self::NothingHandedIn => NOTHING_HANDED_IN,
        }
    }
}

/// How one person stands in one exam.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Standing {
    /// The roster's id.
    pub person: String,
    /// Name on the latest paper.
    pub name: String,
    /// Group on the latest paper; may be empty.
    pub group: String,
    /// Number of the exam's row.
    #[serde(skip)]
    pub exam_row: i64,
    /// Short name of the exam.
    pub exam: String,
    /// As a heading.
    pub title: String,
    /// The state.
    pub state: State,
    /// Whether the person may work alone as far as this exam says.
    pub alone: bool,
    /// On how many papers that rests: the latest and those right before it that pass and still hold. Nought where the
    /// person may not work alone.
    pub papers: usize,
    /// How many answers stand on those papers, blanks left out.
    pub answers: usize,
    /// Day of the latest paper handed in.
    pub sat: Option<Date>,
    /// Last day on which a pass holds; nothing where it holds for ever or there is none.
    pub until: Option<Date>,
    /// Code of the latest paper.
    pub code: String,
    /// Marks of the latest paper as a share.
    pub share: f64,
    /// Numbers of the safety questions missed on the latest paper.
    pub safety_missed: Vec<usize>,
    /// Why, in a sentence.
    pub says: String,
}

/// How everyone on `papers` stands on the day `as_of`; a pass that lapses within `within` months is [`State::Due`].
///
/// The latest paper that was handed in decides, passed or not; one not handed in decides only where there is no other.
pub fn standings(papers: &[PaperRow], as_of: Date, within: u32) -> Vec<Standing> {
    let mut of_each: BTreeMap<(&str, &str), Vec<&PaperRow>> = BTreeMap::new();
    for paper in papers {
        of_each.entry((&paper.person, &paper.exam.name)).or_default().push(paper);
    }
    let stands = |mut papers: Vec<&PaperRow>| {
        // Nothing handed in sorts before every day.
        papers.sort_by_key(|paper| (paper.sat, paper.sitting));
        let (latest, before) = papers.split_last()?;
        Some(standing(latest, before, as_of, within))
    };
    of_each.into_values().filter_map(stands).collect()
}

/// How a person stands whose latest paper is `paper`; `before` are the others in this exam, the latest last.
fn standing(paper: &PaperRow, before: &[&PaperRow], as_of: Date, within: u32) -> Standing {
    let until = paper.holds_until();
    let state = match (paper.sat, paper.passed, until) {
        (None, ..) => State::NothingHandedIn,
        (_, false, _) => State::NotPassed,
        (.., Some(until)) if until < as_of => State::Lapsed,
        (.., Some(until)) if until <= as_of.plus_months(within) => State::Due,
        _ => State::Ready,
    };
    let holds =
        |paper: &&PaperRow| paper.sat.is_some() && paper.passed && paper.holds_until().is_none_or(|day| day >= as_of);
    // The latest paper decides; what those before it say counts as far back as they say the same.
    let rests_on: Vec<&PaperRow> = match state.alone() {
        true => std::iter::once(paper).chain(before.iter().rev().copied().take_while(holds)).collect(),
        false => Vec::new(),
    };
    let answers = |paper: &&PaperRow| {
        let parts = paper.questions.iter().flat_map(|question| &question.parts);
        parts.filter(|part| part.verdict != Verdict::Blank.name()).count()
    };
    let says = match (state, until) {
        (State::Lapsed, Some(until)) => HAS_LAPSED.say(&[("day", &until.said())]),
        (State::Due, Some(until)) => format!("{} {}", paper.says, HOLDS.say(&[("day", &until.said())])),
        _ => paper.says.clone(),
    };
    Standing {
        person: paper.person.clone(),
        name: paper.name.clone(),
        group: paper.group.clone(),
        exam_row: paper.exam.id,
        exam: paper.exam.name.clone(),
        title: paper.exam.title.clone(),
        state,
        alone: state.alone(),
        papers: rests_on.len(),
        answers: rests_on.iter().map(answers).sum(),
        sat: paper.sat,
        until,
        code: paper.code.clone(),
        share: paper.share,
        safety_missed: paper.safety_missed.clone(),
        says,
    }
}

/// Who is due for a new paper.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct DueReport {
    /// The day it is drawn up for.
    pub as_of: Date,
    /// How many months ahead it looks.
    pub within: u32,
    /// Lapsed and soon to lapse, the earliest first.
    pub due: Vec<Standing>,
}

impl Store {
    /// Whose competence has lapsed or lapses within `within` months of `as_of`.
    ///
    /// # Errors
    /// [`Error`].
    pub fn due(&self, filter: &Filter, as_of: Date, within: u32) -> Result<DueReport, Error> {
        let papers = self.all_papers(&Filter { until: Some(as_of), ..filter.clone() })?;
        let mut due = standings(&papers, as_of, within);
        due.retain(|standing| matches!(standing.state, State::Lapsed | State::Due));
        due.sort_by(|a, b| (a.until, &a.name, &a.exam).cmp(&(b.until, &b.name, &b.exam)));
        Ok(DueReport { as_of, within, due })
    }
}
