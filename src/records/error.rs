//! Why records could not be read or added to.

use core::fmt;
use std::path::PathBuf;

use drivecourse_machine::messages;

/// Why records could not be read or added to; nothing was changed then.
#[derive(Debug)]
pub enum Error {
    /// There is no such file.
    Missing(PathBuf),
    /// The file is something else, or damaged.
    Foreign(PathBuf, String),
    /// The file was written by a later version of the program.
    Newer(PathBuf, i64),
    /// Another program was writing for longer than we waited.
    Busy,
    /// What was asked for is not in the records, or may not be done; a sentence.
    Refused(String),
    /// The database says no.
    Database(rusqlite::Error),
}

messages! { pub(crate) SAYS {
    MISSING = "records-problem-missing", "there is no records file {file}";
    FOREIGN = "records-problem-foreign", "{file} is no records file of this program, or it is damaged: {why}";
    NEWER = "records-problem-newer", "{file} has records of format {format}, which a later version of this program wrote; use that version";
    BUSY = "records-problem-busy", "another program is writing to the records; try again when it has finished";
    UNUSABLE = "records-problem-unusable", "the records cannot be used: {why}";
} }

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let file = |path: &PathBuf| path.display().to_string();
        f.write_str(&match self {
            Self::Missing(path) => MISSING.say(&[("file", &file(path))]),
            Self::Foreign(path, why) => FOREIGN.say(&[("file", &file(path)), ("why", why)]),
            Self::Newer(path, version) => NEWER.say(&[("file", &file(path)), ("format", &version.to_string())]),
            Self::Busy => BUSY.text().to_owned(),
            Self::Refused(says) => says.clone(),
            Self::Database(error) => UNUSABLE.say(&[("why", &error.to_string())]),
        })
    }
}

impl core::error::Error for Error {}

impl From<rusqlite::Error> for Error {
    fn from(error: rusqlite::Error) -> Self {
        match error.sqlite_error_code() {
            Some(rusqlite::ErrorCode::DatabaseBusy | rusqlite::ErrorCode::DatabaseLocked) => Self::Busy,
            _ => Self::Database(error),
        }
    }
}
