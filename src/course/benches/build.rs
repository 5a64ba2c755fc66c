//! What practice cards, worked examples and tables cost beyond the book program itself.
//!
//! Both sides build the built-in course in turn, in one process: (a) as the program does it, from our chapters, families
//! and items to finished pages, every directive expanded; (b) the plain book program with the same templates, styles and
//! search index, on the same chapters expanded beforehand.

#![allow(missing_docs, clippy::unwrap_used)]

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Instant;

use drivecourse_course::book::{Assets, Options, build};
use drivecourse_course::expand::{CourseData, Expander};
use drivecourse_course::pages::{Pages, template_name};
use drivecourse_course::words::{ENGLISH, Words};
use drivecourse_quiz::Bank;
use mdbook_core::config::{Config, HtmlConfig};
use mdbook_driver::MDBook;

const ROUNDS: usize = 21;

fn main() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let (chapters, theme, scenarios) =
        (files(&root.join("book")), files(&root.join("theme")), files(&root.join("scenarios")));
    let english = theme.iter().filter(|(path, _)| path.starts_with("words/en/"));
    let english = english.map(|(path, bytes)| (path.clone(), String::from_utf8(bytes.clone()).unwrap())).collect();
    let words = Arc::new(Words::read(ENGLISH, &[], &[&english], false).unwrap());
    let chapters: BTreeMap<_, _> = chapters.into_iter().filter(|(path, _)| !path.starts_with("de/")).collect();
    let expander = || {
        let (bank, problems) = Bank::read(scenarios.iter().map(|(path, bytes)| (path.as_str(), bytes.as_slice())));
        assert!(problems.is_empty());
        let text = |bytes: &[u8]| String::from_utf8(bytes.to_vec()).unwrap();
        let templates =
            theme.iter().filter_map(|(path, bytes)| Some((template_name(path)?.to_owned(), text(bytes)))).collect();
        let pages = Pages::new(&templates, &words).unwrap();
        Expander::new(CourseData { items: bank.items, plans: bank.plans, pages })
    };
    let whole = expander();
    let out = tempfile::tempdir().unwrap();
    let source = out.path().join("source");
    for (path, bytes) in &chapters {
        let expanded = match std::str::from_utf8(bytes) {
            Ok(text) if path.ends_with(".md") && path != "SUMMARY.md" => {
                whole.chapter(path, text).unwrap().into_bytes()
            }
            _ => bytes.clone(),
        };
        write(&source.join("src").join(path), &expanded);
    }
    for (path, bytes) in theme.iter().filter(|(path, _)| !path.starts_with("pages/") && !path.starts_with("live/")) {
        write(&source.join(path), bytes);
    }
    let directives: usize =
        chapters.values().map(|bytes| String::from_utf8_lossy(bytes).matches("\n```").count() / 2).sum();
    // As the program builds it: with the search index.
    let options = Options { search: true, words: Arc::clone(&words), ..Options::default() };
    let ours = Assets { chapters, theme: theme.clone() };
    let (mut ratios, mut times) = (Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        let start = Instant::now();
        build(&ours, &out.path().join("ours"), vec![Box::new(expander().keeping(&options.slots))], &options).unwrap();
        let with = start.elapsed().as_secs_f64();
        let start = Instant::now();
        MDBook::load_with_config(&source, plain(&theme, &out.path().join("plain"))).unwrap().build().unwrap();
        ratios.push(with / start.elapsed().as_secs_f64());
        times.push(with);
    }
    ratios.sort_by(f64::total_cmp);
    times.sort_by(f64::total_cmp);
    println!(
        "{directives} directives: course {:.2} s, ratio to the plain book {:.2} (medians of {ROUNDS})",
        times[ROUNDS / 2],
        ratios[ROUNDS / 2]
    );
}

/// The book program's own settings for the same pages.
fn plain(theme: &BTreeMap<String, Vec<u8>>, out: &Path) -> Config {
    let named = |folder: &str| theme.keys().filter(|name| name.starts_with(folder)).map(PathBuf::from).collect();
    let mut html = HtmlConfig::default();
    html.theme = Some(PathBuf::from("."));
    html.additional_css = named("css/course");
    html.additional_js = named("scripts/");
    html.input_404 = Some(String::new());
    let mut config = Config::default();
    config.book.title = Some("Drive check course".into());
    config.build.build_dir = out.to_path_buf();
    config.build.use_default_preprocessors = false;
    config.set("output.html", &html).unwrap();
    config
}

fn write(path: &Path, bytes: &[u8]) {
    fs::create_dir_all(path.parent().unwrap()).unwrap();
    fs::write(path, bytes).unwrap();
}

fn files(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    fn add(folder: &Path, root: &Path, out: &mut BTreeMap<String, Vec<u8>>) {
        let mut entries: Vec<PathBuf> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
        entries.sort();
        for path in entries {
            if path.is_dir() {
                add(&path, root, out);
            } else if !path.file_name().unwrap().to_string_lossy().starts_with('.') {
                out.insert(path.strip_prefix(root).unwrap().to_string_lossy().into_owned(), fs::read(&path).unwrap());
            }
        }
    }
    let mut out = BTreeMap::new();
    add(folder, folder, &mut out);
    out
}
