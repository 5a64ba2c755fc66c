//! The trade, one file a topic: its quantities, and its relations with everything said about them.
//!
//! To add a relation, add one entry to its topic's file; nothing else in the program changes.

mod align;
mod chain;
mod drive;
mod fasten;
mod follow_up;
mod heat;
mod load;
mod mount;
mod noise;
mod oil;
mod start;
mod vibrate;

pub(crate) use chain::{size_and_strands, size_called, size_on_papers};

use crate::language::text;
use crate::quantity::Quantity;
use crate::relation::Relation;

/// A topic of the trade.
#[derive(Debug, Clone, Copy)]
pub struct Topic {
    /// First part of the ids of its quantities.
    pub id: &'static str,
    /// As a heading.
    pub title: &'static str,
    /// Its quantities.
    pub quantities: &'static [Quantity],
    /// Its relations, file by file.
    pub relations: &'static [&'static [Relation]],
}

impl Topic {
    /// Its heading in the language spoken.
    pub fn heading(&self) -> &'static str {
        text(&title_id(self.id), self.title)
    }
}

/// The topic that every picture of a machine and every chapter leans on.
pub const DRIVE: &str = "drive";

/// The id of the topic with this word, of four letters or more, in its heading: `heat` of `temperature`.
pub(crate) fn headed(word: &str) -> Option<&'static str> {
    let is_part = |words: &str| words.split_whitespace().any(|part| part.to_lowercase() == word.to_lowercase());
    let mut topics = ALL.iter().filter(|topic| is_part(topic.title) || is_part(topic.heading()));
    topics.next().map(|topic| topic.id).filter(|_| word.chars().count() >= 4)
}

/// Every topic, in the order a learner meets them.
pub static ALL: &[Topic] = LIST;

const LIST: &[Topic] = &[
    Topic { id: "drive", title: "The drive train", quantities: drive::QUANTITIES, relations: drive::RELATIONS },
    Topic { id: "mount", title: "Mounting and soft foot", quantities: mount::QUANTITIES, relations: mount::RELATIONS },
    Topic { id: "oil", title: "Oil, level and breather", quantities: oil::QUANTITIES, relations: oil::RELATIONS },
    Topic { id: "align", title: "Alignment", quantities: align::QUANTITIES, relations: align::RELATIONS },
    Topic {
        id: "fasten",
        title: "Bolts, keys and bushings",
        quantities: fasten::QUANTITIES,
        relations: fasten::RELATIONS,
    },
    Topic { id: "chain", title: "Chain", quantities: chain::QUANTITIES, relations: chain::RELATIONS },
    Topic { id: "load", title: "Overhung load and bearings", quantities: load::QUANTITIES, relations: load::RELATIONS },
    Topic { id: "start", title: "Start-up", quantities: start::QUANTITIES, relations: start::RELATIONS },
    Topic { id: "heat", title: "Warm-up temperature", quantities: heat::QUANTITIES, relations: heat::RELATIONS },
    Topic { id: "vibrate", title: "Vibration", quantities: vibrate::QUANTITIES, relations: vibrate::RELATIONS },
    Topic { id: "noise", title: "Noise", quantities: noise::QUANTITIES, relations: noise::RELATIONS },
    Topic {
        id: "follow",
        title: "Follow-up and sign-off",
        quantities: follow_up::QUANTITIES,
        relations: follow_up::RELATIONS,
    },
];

/// Every relation, in the order of the topics.
#[cfg(not(wordless))]
pub fn relations() -> Vec<&'static Relation> {
    ALL.iter().flat_map(|topic| topic.relations).copied().flatten().collect()
}

#[cfg(wordless)]
pub mod away;

/// The id of the message that is the heading of the topic `id`.
pub(crate) fn title_id(id: &str) -> String {
    format!("topic-{id}")
}

/// Id and heading of every topic, in the language spoken.
pub fn titles() -> impl Iterator<Item = (&'static str, &'static str)> {
    const TITLES: [(&str, &str); LIST.len()] = {
        let mut all = [("", ""); LIST.len()];
        let mut place = 0;
        while place < LIST.len() {
            all[place] = (LIST[place].id, LIST[place].title);
            place += 1;
        }
        all
    };
    TITLES.into_iter().map(|(id, title)| (id, text(&title_id(id), title)))
}
