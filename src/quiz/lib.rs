//! Questions about drive cases: items, answers, marking and diagnosis.
//!
//! * [`Bank`]: the families and items of a module, read and checked together
//! * [`item`]: what is asked, from what, in which words
//! * [`setting`]: an item made ready for one family and one system of units
//! * [`question`]: an item put about one machine, with its key and the wrong answers it foresees
//! * [`judge`]: faults told from readings, the odd one out, accept, adjust or stop
//! * [`mark()`]: what a written answer earns, what went wrong, carried errors
//! * [`marking`]: how an exam is marked: near misses, figures, units, method
//! * [`progress`]: how sure it is that a skill sits, and when it should come back
//! * [`simulate`]: apprentices with habits, for the demonstration and the tests
//! * [`blueprint`], [`roster`]: what a paper is made of, and for whom
//! * [`seal`], [`code`]: where a paper's chance comes from, and what a paper is called
//! * [`paper`], [`exam`]: papers drawn, written down, and made again
//! * [`response`], [`grade()`]: answers handed in, and what they earn

// The tests read the built-in scenarios as the benchmarks do.
#[cfg(test)]
extern crate self as drivecourse_quiz;
#[cfg(test)]
#[path = "../../tests/built_in/mod.rs"]
mod built_in;

use drivecourse_machine::language::Message;

mod bank;
pub mod blueprint;
mod case_name;
pub mod code;
mod difficulty;
pub mod exam;
pub mod explain;
pub mod grade;
pub mod item;
pub mod judge;
mod manifest;
pub mod mark;
pub mod marking;
mod mend;
pub mod paper;
pub mod predict;
pub mod progress;
pub mod question;
pub mod response;
pub mod roster;
pub mod schema;
pub mod seal;
pub mod setting;
pub mod simulate;
pub mod tolerance;
pub mod twin;

pub use bank::{Bank, FileProblem, hint};

pub use blueprint::Blueprint;
pub use case_name::{CaseName, Chosen};
pub use code::Code;
pub use exam::Exam;
pub use grade::{Graded, grade};
pub use item::{Ask, Item, PartSpec, When, read_items, read_skills};
pub use judge::{Call, Finding, Judge};
pub use manifest::Manifest;
pub use mark::{Mark, Verdict, mark, mark_by};
pub use marking::{Marking, Written};
pub use paper::{Draw, Paper, Placed, Settings, Used};
pub use predict::{Cause, Predicted};
pub use question::{Body, Key, Part, Question};
pub use response::{Notice, Responses};
pub use roster::{Person, Roster};
pub use seal::Secret;
pub use setting::{Setting, Unsettled};
pub use twin::{about, twins};

pub use drivecourse_machine::amount::letter;

/// What this crate says of answers: to whoever practises, in the browser too.
pub fn messages() -> Vec<Message> {
    [explain::SAYS, question::SAYS, judge::decide::SAYS, judge::diagnose::SAYS, judge::odd::SAYS].concat()
}

/// What this crate says on papers and results, and of what was handed in.
pub fn paper_messages() -> Vec<Message> {
    [blueprint::CAUTIONS, code::SAYS, grade::SAYS, marking::SAYS, response::SAYS].concat()
}

/// What this crate tells the author of a file, or whoever runs a command, of what cannot be used: none of it is said in
/// the browser.
#[cfg(not(wordless))]
pub fn author_messages() -> Vec<Message> {
    let judged =
        [judge::AUTHOR_SAYS, judge::decide::AUTHOR_SAYS, judge::diagnose::AUTHOR_SAYS, judge::odd::AUTHOR_SAYS];
    let files = [
        mend::SAYS,
        bank::SAYS,
        blueprint::SAYS,
        blueprint::ROW_SAYS,
        blueprint::DOUBT_SAYS,
        marking::AUTHOR_SAYS,
        roster::SAYS,
    ];
    let exams = [manifest::SAYS, exam::SAYS, seal::SAYS, setting::SAYS, twin::SAYS, response::json::SAYS];
    [item::author_messages(), files.concat(), exams.concat(), paper::author_messages(), judged.concat()].concat()
}
