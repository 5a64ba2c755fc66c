//! What a page asks, and what it is told.

use drivecourse_course::view::{GivenRow, HintRow, PartRow, SolutionRow};
use drivecourse_machine::System;
use drivecourse_quiz::{CaseName, Verdict};
use serde::{Serialize, Serializer};

use crate::progress::{self, Noted, Progress};

/// In which units a machine is asked about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Units {
    /// In both, about the same machine.
    Both,
    /// In SI units.
    Si,
    /// In US customary units.
    Us,
}

impl Units {
    fn read(word: &str) -> Option<Self> {
        Some(match word {
            "both" => Self::Both,
            "si" => Self::Si,
            "us" => Self::Us,
            _ => return None,
        })
    }

    /// The systems, SI first.
    #[must_use]
    pub fn systems(self) -> &'static [System] {
        match self {
            Self::Both => &System::ALL,
            Self::Si => &[System::Si],
            Self::Us => &[System::Us],
        }
    }
}

/// One question about one machine, by its names.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Spot {
    /// The item.
    pub item: String,
    /// The family; the first that fits where it is empty, or where the one named does not fit.
    pub family: String,
    /// The case.
    #[serde(rename = "seed", serialize_with = "in_a_word")]
    pub case: CaseName,
    /// In which units.
    pub units: Units,
}

fn in_a_word<S: Serializer>(case: &CaseName, to: S) -> Result<S::Ok, S::Error> {
    to.serialize_str(&case.to_string())
}

/// A question to the desk, a packed list of words: what to do, then the four words of the [`Spot`], then the rest.
#[derive(Debug, Clone, PartialEq)]
pub enum Request {
    /// `put, item, family, case, units, id`: everything a card shows; `id` begins the ids inside its pictures.
    Put {
        /// Which question.
        spot: Spot,
        /// Beginning of ids.
        id: String,
    },
    /// `read, item, family, case, units, system, part, text`: how an answer would be understood.
    Read {
        /// Which question.
        spot: Spot,
        /// Which face of it.
        system: System,
        /// Which part, counted from 0.
        part: usize,
        /// What was written.
        text: String,
    },
    /// `mark, item, family, case, units, system, answer ...`: what answers earn.
    Mark {
        /// Which question.
        spot: Spot,
        /// Which face of it.
        system: System,
        /// What was written, part by part.
        answers: Vec<String>,
    },
    /// `progress, now, (skill, at, right, hinted) ...`: where a person stands; times in minutes since 1970.
    Progress {
        /// Now, in days.
        now: f64,
        /// The answers noted.
        noted: Vec<Noted>,
    },
}

impl Request {
    /// Reads a request; nothing where it is none.
    #[must_use]
    pub fn read(words: Vec<String>) -> Option<Self> {
        if let [what, now, noted @ ..] = words.as_slice()
            && what == "progress"
        {
            return Some(Self::Progress { now: progress::days(now)?, noted: progress::read(noted)? });
        }
        let mut words = words.into_iter();
        let mut word = || words.next();
        let what = word()?;
        let (item, family, case, units) = (word()?, word()?, word()?, word()?);
        let spot = Spot { item, family, case: CaseName::read(&case)?, units: Units::read(&units)? };
        let place = word()?;
        let system = || System::ALL.into_iter().find(|system| system.code() == place);
        Some(match what.as_str() {
            "put" => Self::Put { spot, id: place },
            "read" => Self::Read { spot, system: system()?, part: word()?.parse().ok()?, text: word()? },
            "mark" => Self::Mark { spot, system: system()?, answers: words.collect() },
            _ => return None,
        })
    }
}

/// A card in one system of units.
#[derive(Debug, Serialize)]
pub struct Face {
    /// `si` or `us`.
    pub system: &'static str,
    /// What the page's switch of units looks for; empty where there is nothing to switch.
    pub class: &'static str,
    /// What the face is called where both stand below each other.
    pub name: &'static str,
    /// Paragraphs.
    pub story: Vec<String>,
    /// What the easel draws the picture from; empty where the item has none.
    pub figure: String,
    /// The same with everything labelled, for the solution.
    pub solved_figure: String,
    /// What can be seen and measured.
    pub givens: Vec<GivenRow>,
    /// What is asked.
    pub parts: Vec<PartRow>,
    /// Hints of each part.
    pub hints: Vec<Vec<HintRow>>,
    /// Answers of each part, with their steps.
    pub solutions: Vec<SolutionRow>,
}

/// Everything a card shows.
#[derive(Debug, Serialize)]
pub struct Card {
    /// Which question, with the family that was taken.
    pub spot: Spot,
    /// Which skill it practises.
    pub skill: String,
    /// As a heading.
    pub title: String,
    /// The machine.
    pub machine: String,
    /// The number of its case.
    pub number: String,
    /// A question of the same skill that asks less; empty where there is none.
    pub easier: String,
    /// A question of the same skill that asks more.
    pub harder: String,
    /// Its faces.
    pub faces: Vec<Face>,
}

/// What an answer earns.
#[derive(Debug, Serialize)]
pub struct Marked {
    /// How it turned out.
    pub verdict: Verdict,
    /// Marks earned.
    pub earned: u32,
    /// Marks to be had.
    pub of: u32,
    /// How it was understood; empty if it was not.
    pub read_as: String,
    /// One or two sentences to the person.
    pub says: String,
    /// Short names of what went wrong.
    pub causes: Vec<String>,
}

/// What the answers to a question earn.
#[derive(Debug, Serialize)]
pub struct Sheet {
    /// Part by part.
    pub marks: Vec<Marked>,
    /// Which skill they tell about.
    pub skill: String,
    /// Whether a first try counts for it, and as right or wrong.
    pub counts: Option<bool>,
}

/// What the desk answers.
#[derive(Debug, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Reply {
    /// To [`Request::Put`].
    Card(Box<Card>),
    /// To [`Request::Read`]: as it was understood; empty where nothing was written.
    Read(String),
    /// To [`Request::Read`]: why it cannot be read.
    Refused(String),
    /// To [`Request::Mark`].
    Marks(Sheet),
    /// To [`Request::Progress`].
    Skills(Progress),
    /// To any: these modules of calculations are to be connected, and the request made again.
    Needs(Vec<String>),
    /// What is wrong with the request.
    Error(String),
}
