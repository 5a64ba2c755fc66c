//! Which modules of calculations the practice module still waits for.

#[cfg(wordless)]
pub(crate) use drivecourse_machine::relation::away::{RELATIONS, is_connected, lacking};
use drivecourse_machine::topics;

/// A program that has its calculations inside waits for none.
#[cfg(not(wordless))]
mod inside {
    pub(crate) const RELATIONS: usize = 0;

    pub(crate) fn is_connected(_: usize) -> bool {
        true
    }

    pub(crate) fn lacking() -> impl Iterator<Item = usize> {
        core::iter::empty()
    }
}
#[cfg(not(wordless))]
pub(crate) use inside::{RELATIONS, is_connected, lacking};

/// The name of the module of `place`: that of the relations that make machines, or of what else a topic has.
#[must_use]
pub fn name(place: usize) -> String {
    let topic = place.checked_sub(1).and_then(|topic| topics::titles().nth(topic));
    topic.map_or_else(|| "relations".into(), |(id, _)| turns(id))
}

/// The name of the module that holds the wrong turns of `topic`, and what only asks and answers.
#[must_use]
pub fn turns(topic: &str) -> String {
    ["turns_", topic].concat()
}
