//! JSON Schema of the files that authors write, for editors that complete and check as one types.

use drivecourse_machine::schema::{self, of};
use serde_json::Value;

use crate::{blueprint, item, manifest, roster};

/// A kind of file, with its schema.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sort {
    /// Drive families.
    Family,
    /// Items.
    Item,
    /// Exams.
    Exam,
    /// Rosters in TOML.
    Roster,
    /// A module's own settings.
    Module,
}

impl Sort {
    /// Every kind of file.
    pub const ALL: [Self; 5] = [Self::Family, Self::Item, Self::Exam, Self::Roster, Self::Module];

    /// As a person and a file name call it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Family => "family",
            Self::Item => "item",
            Self::Exam => "exam",
            Self::Roster => "roster",
            Self::Module => "module",
        }
    }

    /// Its schema, made from the types that read the file.
    pub fn schema(self) -> Value {
        match self {
            Self::Family => schema::family(),
            Self::Item => of::<item::File>(),
            Self::Exam => of::<blueprint::File>(),
            Self::Roster => of::<roster::File>(),
            Self::Module => of::<manifest::File>(),
        }
    }
}
