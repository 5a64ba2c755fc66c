//! `manual`: the manual as a folder of pages.

use anyhow::Result;
use drivecourse_course::book::{self, Options};

use crate::assets::{Assets, Files};
use crate::{cli, files};

/// The folder of its chapters, beside those of the course.
const FOLDER: &str = "manual/";

pub(crate) fn run(options: &cli::Manual) -> Result<()> {
    let assets = Assets::load(None)?;
    let inside = |(path, bytes): (&String, &Vec<u8>)| Some((path.strip_prefix(FOLDER)?.to_owned(), bytes.clone()));
    let chapters: Files = assets.book.iter().filter_map(inside).collect();
    let how = Options {
        title: "drivecourse, the manual".into(),
        description: "One page for each job: a module of your own, an exam, marking, reports.".into(),
        ..Options::default()
    };
    let built = book::build(&book::Assets { chapters, theme: assets.theme.clone() }, &options.out, Vec::new(), &how)?;
    for warning in &built.warnings {
        eprintln!("drivecourse: {warning}");
    }
    let out = &options.out;
    files::say(format!("{} pages in {}; open {}", built.chapters, out.display(), out.join("index.html").display()))
}
