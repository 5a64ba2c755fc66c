//! `build`: the course as a folder of pages.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use anyhow::Result;
use drivecourse_browser::Bundle;
use drivecourse_course::book::{self, Built, Live, Options, Units};
use drivecourse_course::expand::{CourseData, Expander};
use drivecourse_course::pages::Pages;
use drivecourse_quiz::Bank;

use crate::assets::Assets;
use crate::{bank, cli, files};

/// Title of the built-in course.
const TITLE: &str = "Commissioning chain drives";

pub(crate) fn run(options: &cli::Build) -> Result<()> {
    let assets = Assets::load(options.module.module.as_deref())?;
    let bank = bank::load(&assets)?;
    let units = match options.units {
        None => Units::Both,
        Some(cli::Units::Si) => Units::Si,
        Some(cli::Units::Us) => Units::Us,
    };
    let built = build(&assets, bank, &options.out, units, options.module.module.as_deref())?;
    for warning in &built.warnings {
        eprintln!("drivecourse: {warning}");
    }
    let out = &options.out;
    println!("{} chapters in {}; open {}", built.chapters, out.display(), out.join("index.html").display());
    Ok(())
}

/// Builds the course of `assets` into `out`.
pub(crate) fn build(assets: &Assets, bank: Bank, out: &Path, units: Units, module: Option<&Path>) -> Result<Built> {
    let pages = pages(assets)?;
    let bundle = Bundle::pack(&bank);
    let wasm = |name: &str| assets.theme.get(&format!("live/{name}.wasm")).cloned().unwrap_or_default();
    let live = Live {
        practice: wasm("practice"),
        pictures: wasm("pictures"),
        words: bundle.words().to_owned(),
        bank: bundle.bank().to_owned(),
    };
    let expander = Expander::new(CourseData { items: bank.items, plans: bank.plans, pages });
    let options = Options {
        title: TITLE.into(),
        description: "Practise the checks and the numbers of a newly installed gear reducer with a chain drive.".into(),
        units,
        search: true,
        live: Some(live),
        sources: sources(module),
    };
    let book = book::Assets { chapters: assets.book.clone(), theme: assets.theme.clone() };
    Ok(book::build(&book, out, vec![Box::new(expander)], &options)?)
}

/// The page templates of the theme.
pub(crate) fn pages(assets: &Assets) -> Result<Pages> {
    let mut templates = BTreeMap::new();
    for (path, bytes) in &assets.theme {
        if let Some(name) = path.strip_prefix("pages/") {
            let text = files::text(&assets.shown(&format!("theme/{path}")), bytes.clone())?;
            templates.insert(name.to_owned(), text);
        }
    }
    Ok(Pages::new(&templates)?)
}

/// Folders that the output must never overwrite.
fn sources(module: Option<&Path>) -> Vec<PathBuf> {
    let roots = module.map(Path::to_path_buf).into_iter().chain([PathBuf::new()]);
    roots
        .flat_map(|root| ["book", "theme", "scenarios", "src", "tests"].map(|name| root.join(name)))
        .filter(|folder| folder.is_dir())
        .collect()
}
