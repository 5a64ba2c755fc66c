//! Why records could not be read or added to.

use core::fmt;
use std::path::PathBuf;

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

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Missing(path) => write!(f, "there is no records file {}", path.display()),
            Self::Foreign(path, why) => {
                write!(f, "{} is no records file of this program, or it is damaged: {why}", path.display())
            }
            Self::Newer(path, version) => write!(
                f,
                "{} has records of format {version}, which a later version of this program wrote; use that version",
                path.display()
            ),
            Self::Busy => f.write_str("another program is writing to the records; try again when it has finished"),
            Self::Refused(says) => f.write_str(says),
            Self::Database(error) => write!(f, "the records cannot be used: {error}"),
        }
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
