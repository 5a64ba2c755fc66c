//! Records: what people earned, kept in one file that is only added to, and what can be read from it.
//!
//! * [`Store`]: one embedded SQLite file with a versioned schema
//! * [`import`]: graded papers in; a repeated import changes nothing, a correction is a new row
//! * [`change`]: a mark changed by an assessor with a reason; one person's data taken out on request
//! * [`read`]: papers as they count, corrections and changed marks taken in
//! * [`report`]: one apprentice, the class, the items, what is due, one answer in an appeal
//! * [`statistics`]: difficulty, discrimination, reliability, intervals, from published formulas
//! * [`Date`]: days; there is no clock here, every date is given
//!
//! # Decisions
//! * Rows are never changed: triggers in the file refuse it, whatever program tries.
//! * Of several attempts at one paper the latest revision counts, the others stay.
//! * The latest paper of an exam decides whether a person is ready: a failed later one ends an earlier pass.
//! * Past one machine these records go to a shared database server; only `store`, `import`, `change` and `read`
//!   speak to the database.

pub mod change;
mod date;
mod error;
pub mod import;
pub mod read;
pub mod report;
pub mod statistics;
mod store;

pub use date::{Date, NoDate};
pub use error::Error;
pub use import::{Holder, Import, Reason, Sitting, Taken};
pub use read::Filter;
pub use store::Store;

use drivecourse_machine::language::Message;

/// What this crate says in reports.
pub fn messages() -> Vec<Message> {
    [date::SAYS, report::STANDING_SAYS].concat()
}

/// What this crate tells the author of a file, or whoever runs a command, of what cannot be used: none of it is said in
/// the browser.
pub fn author_messages() -> Vec<Message> {
    let file = [error::SAYS, store::SAYS, read::SAYS, date::AUTHOR_SAYS].concat();
    [file, [import::SAYS, change::SAYS, report::AUTHOR_SAYS].concat()].concat()
}
