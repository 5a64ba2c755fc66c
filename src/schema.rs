//! `schema`: the JSON Schema of a kind of file, for editors that complete and check as one types.

use anyhow::Result;
use drivecourse_machine::messages;
use drivecourse_quiz::schema::Sort;

use crate::{cli, files, words};

messages! { pub(crate) SAYS {
    MADE = "schema-made", "{count} schemas in {folder}";
} }

messages! { pub(crate) ERRORS {
    WHICH = "error-which-schema", "name a kind of file ({kinds}), or a folder for all of them with --out";
} }

pub(crate) fn run(options: &cli::Schema, speech: &cli::Speech) -> Result<()> {
    words::begin_built_in(speech)?;
    match (&options.out, options.sort) {
        (Some(folder), None) => {
            for sort in Sort::ALL {
                files::write(&folder.join(format!("{}.json", sort.name())), text(sort)?.as_bytes())?;
            }
            let (count, folder) = (Sort::ALL.len().to_string(), folder.display().to_string());
            files::say(MADE.say(&[("count", &count), ("folder", &folder)]))
        }
        (Some(folder), Some(sort)) => {
            let path = folder.join(format!("{}.json", Sort::from(sort).name()));
            files::write(&path, text(sort.into())?.as_bytes())?;
            files::say(path.display())
        }
        (None, Some(sort)) => files::say(text(sort.into())?.trim_end()),
        (None, None) => {
            let names: Vec<_> = Sort::ALL.iter().map(|sort| sort.name()).collect();
            anyhow::bail!(WHICH.say(&[("kinds", &names.join(", "))]))
        }
    }
}

/// The schema of a kind of file as text.
pub(crate) fn text(sort: Sort) -> Result<String> {
    Ok(serde_json::to_string_pretty(&sort.schema())? + "\n")
}

impl From<cli::Sort> for Sort {
    fn from(sort: cli::Sort) -> Self {
        match sort {
            cli::Sort::Family => Self::Family,
            cli::Sort::Item => Self::Item,
            cli::Sort::Exam => Self::Exam,
            cli::Sort::Roster => Self::Roster,
            cli::Sort::Module => Self::Module,
        }
    }
}
