//! `manual`: the manual as a folder of pages.

use std::sync::Arc;

use anyhow::Result;
use drivecourse_course::book::{self, Options};
use drivecourse_course::words::ENGLISH;
use drivecourse_machine::messages;

use crate::assets::{Assets, Files};
use crate::{cli, files, words};

messages! { pub(crate) SAYS {
    MADE = "manual-made", "{count} pages in {folder}; open {file}";
} }

/// The folder of its chapters, beside those of the course.
const FOLDER: &str = "manual/";

pub(crate) fn run(options: &cli::Manual, speech: &cli::Speech) -> Result<()> {
    words::begin_built_in(speech)?;
    let mut assets = Assets::load(None)?;
    // The manual is written in English, and so is its frame.
    let english = words::read(&assets, ENGLISH, false)?;
    assets.speak(english, true);
    let inside = |(path, bytes): (&String, &Vec<u8>)| Some((path.strip_prefix(FOLDER)?.to_owned(), bytes.clone()));
    let chapters: Files = assets.book.iter().filter_map(inside).collect();
    let how = Options {
        title: "drivecourse, the manual".into(),
        description: "One page for each job: a module of your own, an exam, marking, reports.".into(),
        words: Arc::clone(&assets.words),
        ..Options::default()
    };
    let built = book::build(&book::Assets { chapters, theme: assets.theme.clone() }, &options.out, Vec::new(), &how)?;
    for warning in &built.warnings {
        eprintln!("drivecourse: {warning}");
    }
    let out = &options.out;
    let (folder, file) = (out.display().to_string(), out.join("index.html").display().to_string());
    files::say(MADE.say(&[("count", &built.chapters.to_string()), ("folder", &folder), ("file", &file)]))
}
