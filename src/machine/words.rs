//! The sentences of the registry, apart from its numbers.
//!
//! Titles, methods, limits, sources and what is said of wrong turns make up a good part of the program. The browser
//! build is made without them (`--cfg wordless`) and is handed them by the page, from the course it belongs to: the
//! same sentences, kept in one place.

use serde::{Deserialize, Serialize};

use crate::registry::Registry;
use crate::relation::Relation;
use crate::source::Source;

/// What is said about one relation.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Said {
    title: String,
    method: String,
    limits: String,
    /// Sort of source, and its words.
    source: (u8, String, String),
    /// What is said of each wrong turn.
    turns: Vec<String>,
}

/// What is said about every relation, in the order of the registry.
pub fn said() -> Vec<Said> {
    Registry::get().relations().iter().map(|linked| Said::of(linked.relation)).collect()
}

impl Said {
    fn of(relation: &Relation) -> Self {
        let source = match relation.source {
            Source::Published { document, place } => (0, document, place),
            Source::Derived(from) => (1, from, ""),
            Source::CommonPractice => (2, "", ""),
            Source::FromMemory(what) => (3, what, ""),
        };
        Self {
            title: relation.title.into(),
            method: relation.method.into(),
            limits: relation.limits.into(),
            source: (source.0, source.1.into(), source.2.into()),
            turns: relation.turns.iter().map(|turn| turn.says.into()).collect(),
        }
    }
}

#[cfg(not(wordless))]
mod place {
    use super::*;

    /// Does nothing: the sentences are part of the program.
    pub fn learn(_: Vec<Said>) {}

    /// The relation as it stands.
    pub(crate) fn put_in(relation: &'static Relation, _: usize) -> &'static Relation {
        relation
    }
}

#[cfg(wordless)]
mod place {
    use std::sync::OnceLock;

    use super::*;
    use crate::relation::WrongTurn;

    static WORDS: OnceLock<Vec<Said>> = OnceLock::new();

    /// Takes on the sentences; to be called before anything else is asked of the registry.
    pub fn learn(words: Vec<Said>) {
        // Those learnt first stay.
        let _ = WORDS.set(words);
    }

    /// The relation with its sentences. The registry is made once and stays, and so do these.
    pub(crate) fn put_in(relation: &'static Relation, index: usize) -> &'static Relation {
        let Some(said) = WORDS.get().and_then(|words| words.get(index)) else { return relation };
        let turn = |(turn, says): (&WrongTurn, &'static String)| WrongTurn { says, ..*turn };
        let turns: Vec<WrongTurn> = relation.turns.iter().zip(&said.turns).map(turn).collect();
        let (sort, first, second) = &said.source;
        let source = match sort {
            0 => Source::Published { document: first, place: second },
            1 => Source::Derived(first),
            2 => Source::CommonPractice,
            _ => Source::FromMemory(first),
        };
        let (title, method, limits) = (&said.title, &said.method, &said.limits);
        Box::leak(Box::new(Relation { title, method, limits, source, turns: turns.leak(), ..*relation }))
    }
}

pub use place::learn;
pub(crate) use place::put_in;
