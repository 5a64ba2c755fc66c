//! `schema`: the JSON Schema of a kind of file, for editors that complete and check as one types.

use anyhow::Result;
use drivecourse_quiz::schema::Sort;

use crate::{cli, files};

pub(crate) fn run(options: &cli::Schema) -> Result<()> {
    match (&options.out, options.sort) {
        (Some(folder), None) => {
            for sort in Sort::ALL {
                files::write(&folder.join(format!("{}.json", sort.name())), text(sort)?.as_bytes())?;
            }
            files::say(format!("{} schemas in {}", Sort::ALL.len(), folder.display()))
        }
        (Some(folder), Some(sort)) => {
            let path = folder.join(format!("{}.json", Sort::from(sort).name()));
            files::write(&path, text(sort.into())?.as_bytes())?;
            files::say(path.display())
        }
        (None, Some(sort)) => files::say(text(sort.into())?.trim_end()),
        (None, None) => {
            let names: Vec<_> = Sort::ALL.iter().map(|sort| sort.name()).collect();
            anyhow::bail!("name a kind of file ({}), or a folder for all of them with --out", names.join(", "))
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
