//! The built-in scenarios, read from disk: for the tests, benchmarks and examples of every crate.

#![allow(dead_code, clippy::unwrap_used, reason = "each of them wants some of this, and stops where it goes wrong")]

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use drivecourse_quiz::Bank;

/// Paths inside the scenarios, and what the files hold.
pub(crate) type Files = BTreeMap<String, Vec<u8>>;

/// Where the scenarios are, whichever crate asks.
pub(crate) fn scenarios() -> PathBuf {
    let above = Path::new(env!("CARGO_MANIFEST_DIR")).ancestors().map(|folder| folder.join("scenarios"));
    above.into_iter().find(|folder| folder.is_dir()).unwrap()
}

/// Every file right inside these folders of the scenarios.
pub(crate) fn files(folders: &[&str]) -> Files {
    let mut out = Files::new();
    for folder in folders {
        for entry in std::fs::read_dir(scenarios().join(folder)).unwrap() {
            let path = entry.unwrap().path();
            let name = format!("{folder}/{}", path.file_name().unwrap().to_string_lossy());
            out.insert(name, std::fs::read(&path).unwrap());
        }
    }
    out
}

/// Every family and item.
pub(crate) fn bank() -> Bank {
    bank_with(&[])
}

/// Every family and item, and some more files: path and text.
pub(crate) fn bank_with(more: &[(&str, &str)]) -> Bank {
    let mut files = files(&["families", "items"]);
    files.extend(more.iter().map(|(name, text)| ((*name).to_owned(), text.as_bytes().to_vec())));
    bank_of(&files)
}

/// The families and items among `files`.
pub(crate) fn bank_of(files: &Files) -> Bank {
    let (bank, problems) = Bank::read(files.iter().map(|(path, bytes)| (path.as_str(), bytes.as_slice())));
    assert!(problems.is_empty(), "{}", problems.iter().map(|p| p.report.as_str()).collect::<Vec<_>>().join("\n"));
    assert!(bank.plans.len() >= 3 && bank.items.len() >= 40, "the scenarios are all there");
    bank
}
