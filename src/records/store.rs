//! The file: opened, made, checked.

use std::path::{Path, PathBuf};
use std::time::Duration;

use drivecourse_machine::messages;
use rusqlite::{Connection, OpenFlags, Transaction, TransactionBehavior};

use crate::error::Error;

/// Marks the file as ours ("drve").
const APPLICATION: i64 = 0x6472_7665;
/// The format of the schema.
const FORMAT: i64 = 1;
/// How long to wait for another program that is writing.
const PATIENCE: Duration = Duration::from_secs(60);
const SCHEMA: &str = include_str!("schema.sql");

messages! { pub(crate) SAYS {
    OTHER_TABLES = "records-problem-other-tables", "it holds other tables";
    DAMAGED = "records-problem-damaged", "the records are damaged: {why}";
    ONE_LOOSE = "records-problem-one-loose", "1 row of the records hangs loose";
    LOOSE = "records-problem-loose", "{count} rows of the records hang loose";
    NOT_MADE = "records-problem-not-made", "cannot make the records file {file}: {why}";
} }

/// The records, in one SQLite file.
///
/// The file keeps a rollback journal, not a write-ahead log: it is one whole file between writes, which can be copied,
/// put on a network drive and taken away; there are few writers; and nothing of a person stays behind in a side file
/// when the person's data is taken out. Freed space is overwritten (`secure_delete`). Every write is one transaction,
/// synced before it counts.
#[derive(Debug)]
pub struct Store {
    pub(crate) db: Connection,
}

impl Store {
    /// Opens the records at `path`; they are made, readable by their owner alone, if there are none.
    ///
    /// # Errors
    /// [`Error`]: the file is something else, damaged, or of a later format, or cannot be written.
    pub fn open(path: &Path) -> Result<Self, Error> {
        if !path.exists() {
            make_private(path)?;
        }
        Self::connect(path)
    }

    /// Opens records that must be there.
    ///
    /// # Errors
    /// [`Error`], as for [`Store::open`]; and where there is no such file.
    pub fn existing(path: &Path) -> Result<Self, Error> {
        if path.is_file() { Self::connect(path) } else { Err(Error::Missing(path.to_path_buf())) }
    }

    /// Records in memory, for tests and simulations.
    ///
    /// # Errors
    /// [`Error::Database`].
    pub fn in_memory() -> Result<Self, Error> {
        Self::prepare(Connection::open_in_memory()?, Path::new("(memory)"))
    }

    fn connect(path: &Path) -> Result<Self, Error> {
        let foreign = |error: rusqlite::Error| Error::Foreign(path.to_path_buf(), error.to_string());
        let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
        Self::prepare(Connection::open_with_flags(path, flags).map_err(foreign)?, path)
    }

    fn prepare(db: Connection, path: &Path) -> Result<Self, Error> {
        let path: PathBuf = path.to_path_buf();
        let foreign = |error: rusqlite::Error| match Error::from(error) {
            Error::Database(error) => Error::Foreign(path.clone(), error.to_string()),
            other => other,
        };
        db.busy_timeout(PATIENCE)?;
        db.execute_batch(
            "PRAGMA foreign_keys = ON; PRAGMA secure_delete = ON; PRAGMA synchronous = FULL; PRAGMA cell_size_check = ON;",
        )
        .map_err(foreign)?;
        let mut store = Self { db };
        if store.format().map_err(foreign)? == (0, 0) {
            // Two programs may come here at once: look again when nobody else writes.
            let write = store.write()?;
            let tables: i64 =
                write.query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0)).map_err(foreign)?;
            if tables == 0 {
                write.execute_batch(SCHEMA)?;
                write.pragma_update(None, "application_id", APPLICATION)?;
                write.pragma_update(None, "user_version", FORMAT)?;
            }
            write.commit()?;
        }
        match store.format().map_err(foreign)? {
            (APPLICATION, FORMAT) => Ok(store),
            (APPLICATION, version) if version > FORMAT => Err(Error::Newer(path, version)),
            _ => Err(Error::Foreign(path, OTHER_TABLES.text().into())),
        }
    }

    fn format(&self) -> Result<(i64, i64), rusqlite::Error> {
        let pragma = |name: &str| self.db.pragma_query_value(None, name, |row| row.get::<_, i64>(0));
        Ok((pragma("application_id")?, pragma("user_version")?))
    }

    /// A transaction that writes; waits for other writers.
    pub(crate) fn write(&mut self) -> Result<Transaction<'_>, Error> {
        Ok(self.db.transaction_with_behavior(TransactionBehavior::Immediate)?)
    }

    /// Looks through the whole file.
    ///
    /// # Errors
    /// [`Error::Refused`] with what is damaged.
    pub fn check(&self) -> Result<(), Error> {
        let says: String = self.db.query_row("PRAGMA integrity_check(1)", [], |row| row.get(0))?;
        if says != "ok" {
            return Err(Error::Refused(DAMAGED.say(&[("why", &says)])));
        }
        let loose =
            self.db.query_row("SELECT count(*) FROM pragma_foreign_key_check", [], |row| row.get::<_, i64>(0))?;
        match loose {
            0 => Ok(()),
            1 => Err(Error::Refused(ONE_LOOSE.text().into())),
            _ => Err(Error::Refused(LOOSE.say(&[("count", &loose.to_string())]))),
        }
    }
}

fn make_private(path: &Path) -> Result<(), Error> {
    let mut options = std::fs::OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    {
        use std::os::unix::fs::OpenOptionsExt;
        options.mode(0o600);
    }
    match options.open(path) {
        Ok(_) => Ok(()),
        // Another program was quicker.
        Err(error) if error.kind() == std::io::ErrorKind::AlreadyExists => Ok(()),
        Err(error) => {
            Err(Error::Refused(NOT_MADE.say(&[("file", &path.display().to_string()), ("why", &error.to_string())])))
        }
    }
}
