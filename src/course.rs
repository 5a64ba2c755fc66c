//! `build`: the course as a folder of pages.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use anyhow::{Result, bail};
use drivecourse_browser::{Bundle, Chapter};
use drivecourse_course::book::{self, Built, Live, Options, Slots, Units};
use drivecourse_course::expand::{self, CourseData, Expander};
use drivecourse_course::links;
use drivecourse_course::pages::{Pages, template_name};
use drivecourse_machine::{System, messages};
use drivecourse_quiz::Bank;

use crate::assets::{Assets, Files};
use crate::{bank, cli, files, words};

messages! { pub(crate) SAYS {
    MADE = "build-made", "{count} chapters in {folder}; open {file}";
} }

pub(crate) fn run(options: &cli::Build, speech: &cli::Speech) -> Result<()> {
    let assets = words::begin(&options.module, speech)?;
    let bank = bank::load(&assets)?;
    let units = units(&assets, options.units);
    let built = build(&assets, bank, &options.out, units, options.module.folder().as_deref())?;
    for warning in &built.warnings {
        eprintln!("drivecourse: {warning}");
    }
    let out = &options.out;
    let (folder, file) = (out.display().to_string(), out.join("index.html").display().to_string());
    files::say(MADE.say(&[("count", &built.chapters.to_string()), ("folder", &folder), ("file", &file)]))
}

/// The units that pages show first: those that are asked for, else those of the module, else both.
pub(crate) fn units(assets: &Assets, asked: Option<cli::Units>) -> Units {
    match bank::units(assets, asked) {
        Some(System::Si) => Units::Si,
        Some(System::Us) => Units::Us,
        None => Units::Both,
    }
}

/// Builds the course of `assets` into `out`.
pub(crate) fn build(assets: &Assets, bank: Bank, out: &Path, units: Units, module: Option<&Path>) -> Result<Built> {
    let list = assets.book.get("SUMMARY.md").map_or("".into(), |bytes| String::from_utf8_lossy(bytes));
    let broken = book::summary_problems(&list);
    if !broken.is_empty() {
        let file = assets.shown("book/SUMMARY.md");
        bail!(broken.iter().map(|problem| problem.report(&file, &list)).collect::<Vec<_>>().join("\n"));
    }
    let pages = pages(assets)?;
    let own = bank.plans.iter().map(|plan| plan.family.id.clone()).filter(|id| bank::is_own(assets, id)).collect();
    let bank = bank::for_chapters(assets, bank);
    let manifest = bank::manifest(assets).unwrap_or_default();
    let chapters = chapters(assets);
    let bundle = Bundle::pack(&bank, &asked(&chapters));
    let shipped = |(path, bytes): (&String, &Vec<u8>)| {
        Some((path.strip_prefix("live/")?.strip_suffix(".wasm")?.to_owned(), bytes.clone()))
    };
    let live = Live {
        modules: assets.theme.iter().filter_map(shipped).collect(),
        words: bundle.words().to_owned(),
        bank: bundle.bank().to_owned(),
    };
    let slots = Slots::default();
    let expander = Expander::new(CourseData { items: bank.items, plans: bank.plans, pages });
    let expander = expander.of_module(own).keeping(&slots);
    let or_usual = |own: String, usual: &str| if own.is_empty() { assets.words.say(usual, &[]) } else { own };
    let options = Options {
        title: or_usual(manifest.title, "course-title"),
        description: or_usual(manifest.description, "course-about"),
        units,
        search: true,
        slots,
        live: Some(live),
        sources: sources(module),
        words: Arc::clone(&assets.words),
    };
    let book = book::Assets { chapters, theme: assets.theme.clone() };
    Ok(book::build(&book, out, vec![Box::new(expander)], &options)?)
}

/// The chapters of the course; those of the program without their links to chapters that the module leaves out.
fn chapters(assets: &Assets) -> Files {
    let gone = |target: &str| target.ends_with(".md") && !assets.book.contains_key(target);
    let chapter = |(path, bytes): (&String, &Vec<u8>)| {
        let bytes = match std::str::from_utf8(bytes) {
            Ok(text) if path.ends_with(".md") && path != "SUMMARY.md" && !assets.is_own(&format!("book/{path}")) => {
                links::without(text, path, gone).into_bytes()
            }
            _ => bytes.clone(),
        };
        (path.clone(), bytes)
    };
    assets.book.iter().filter(|(path, _)| !path.starts_with("manual/")).map(chapter).collect()
}

/// What the chapters ask about, in the order of the course.
fn asked(chapters: &Files) -> Vec<Chapter> {
    let text = |path: &str| chapters.get(path).map(|bytes| String::from_utf8_lossy(bytes));
    let Some(list) = text("SUMMARY.md") else { return Vec::new() };
    let chapter = |link: links::Link| {
        Some(Chapter { title: link.words(&list).to_owned(), items: expand::asked(&text(&link.path)?) })
    };
    links::links(&list, "SUMMARY.md").into_iter().filter_map(chapter).collect()
}

/// The page templates of the theme.
pub(crate) fn pages(assets: &Assets) -> Result<Pages> {
    let mut templates = BTreeMap::new();
    for (path, bytes) in &assets.theme {
        if let Some(name) = template_name(path) {
            let text = files::text(&assets.shown(&format!("theme/{path}")), bytes.clone())?;
            templates.insert(name.to_owned(), text);
        }
    }
    Ok(Pages::new(&templates, &assets.words)?)
}

/// Folders that the output must never overwrite.
fn sources(module: Option<&Path>) -> Vec<PathBuf> {
    let roots = module.map(Path::to_path_buf).into_iter().chain([PathBuf::new()]);
    roots
        .flat_map(|root| ["book", "theme", "scenarios", "src", "tests"].map(|name| root.join(name)))
        .filter(|folder| folder.is_dir())
        .collect()
}
