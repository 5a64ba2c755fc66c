//! Builds the course book: chapters and theme in, a folder of pages out.
//!
//! The book program is embedded as a library. It empties its output folder before it writes, so it never sees the
//! real one: it builds into a fresh folder beside it, and only a whole, good build is moved into place.

mod contents;
mod error;
mod finish;
mod frame;
mod guard;
mod live;
mod parts;
mod slots;
mod summary;
mod tie;
mod warnings;

#[cfg(test)]
mod tests;

use std::collections::BTreeMap;
use std::fs;
use std::path::{Component, Path, PathBuf};
use std::sync::Arc;

use drivecourse_machine::told;
use mdbook_core::book::Book;
use mdbook_core::config::{Config, HtmlConfig, Search};
use mdbook_core::errors::Result as AnyResult;
use mdbook_driver::MDBook;
use mdbook_preprocessor::{Preprocessor, PreprocessorContext};

pub use error::BuildError;
pub(crate) use error::SAYS;
pub use guard::{MARKER, check_output};
pub use live::Live;
pub use slots::Slots;
pub(crate) use summary::SAYS as SUMMARY_SAYS;
pub use summary::summary_problems;

use crate::words::Words;

/// The theme's script that keeps a course on the reader's device.
const WORKER: &str = "live/worker.js";

/// Files of the theme that hold words of the frame by their ids.
const SAYING: [&str; 3] = ["index.hbs", "toc.html.hbs", "book.js"];

/// The files a book is made of, each under its name with `/` between folders.
#[derive(Debug, Clone, Default)]
pub struct Assets {
    /// Chapters and whatever stands beside them (pictures); `SUMMARY.md` lists the chapters in order.
    pub chapters: BTreeMap<String, Vec<u8>>,
    /// Page templates, styles and scripts. `scripts/*.js` and `css/*.css` beyond the four named by the book program
    /// are added to every page in order of name; everything below `pages/` belongs to
    /// [`crate::pages`], everything below `live/` to the live cards and the course kept on the device.
    pub theme: BTreeMap<String, Vec<u8>>,
}

/// What a coordinator decides about a book.
#[derive(Debug, Clone)]
pub struct Options {
    /// Name of the course, at the top of every page.
    pub title: String,
    /// One sentence about the course, for lists of search results.
    pub description: String,
    /// Units first shown to a reader who has not chosen yet.
    pub units: Units,
    /// Whether readers can search the words of the course; costs an index of about the size of the chapters.
    pub search: bool,
    /// What the preprocessors keep back from the chapters, for the finished pages.
    pub slots: Slots,
    /// What makes the practice cards live; without it they stay as they are written.
    pub live: Option<Live>,
    /// What the pages' frame and scripts say, and in which language.
    pub words: Arc<Words>,
    /// Folders the chapters and the theme were read from, which the output must stay clear of.
    pub sources: Vec<PathBuf>,
}

impl Default for Options {
    fn default() -> Self {
        Self {
            title: "Drive check course".into(),
            description: "Checking a newly installed gear reducer with a chain drive".into(),
            units: Units::default(),
            search: true,
            slots: Slots::default(),
            live: None,
            words: Arc::default(),
            sources: Vec::new(),
        }
    }
}

/// Units a page shows first; a reader can always switch.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub enum Units {
    /// US customary and SI side by side.
    #[default]
    Both,
    /// US customary.
    Us,
    /// SI.
    Si,
    /// No choice: nothing on the pages has units of two systems.
    Nowhere,
}

impl Units {
    /// The word in the page's `data-units-default` attribute.
    fn word(self) -> &'static str {
        match self {
            Self::Both => "both",
            Self::Us => "us",
            Self::Si => "si",
            Self::Nowhere => "none",
        }
    }
}

/// A finished build.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Built {
    /// The folder the book stands in now.
    pub folder: PathBuf,
    /// Pages of chapters in the book.
    pub chapters: usize,
    /// What a course author should look at, one sentence each; empty when all is well.
    pub warnings: Vec<String>,
}

/// Builds the book into `out`, which is replaced whole on success and left untouched on failure.
///
/// # Errors
/// When `out` is not a safe place to write (see [`check_output`]), when a name in `assets` leads out of its folder, when
/// `SUMMARY.md` is missing, broken or names a missing chapter, when a preprocessor or template fails, or on a file error.
pub fn build(
    assets: &Assets,
    out: &Path,
    preprocessors: Vec<Box<dyn Preprocessor>>,
    options: &Options,
) -> Result<Built, BuildError> {
    let out = check_output(out, &options.sources)?;
    let workshop = tempfile::Builder::new()
        .prefix("drivecourse-")
        .tempdir()
        .map_err(|e| BuildError::file(error::TEMPORARY, &std::env::temp_dir(), e))?;
    let source = workshop.path();
    write_sources(assets, source, &options.words)?;

    // `check_output` refuses a path without a parent, so the file system root cannot get here.
    let beside = out.parent().unwrap_or(Path::new("."));
    fs::create_dir_all(beside).map_err(|e| BuildError::file(error::MAKE_FOLDER, beside, e))?;
    let staging = tempfile::Builder::new()
        .prefix(".drivecourse-new-")
        .tempdir_in(beside)
        .map_err(|e| BuildError::file(error::MAKE_IN, beside, e))?;
    // A folder inside it, because a temporary folder itself is closed to other users.
    let fresh = staging.path().join("book");

    let config = configure(assets, options, &fresh).map_err(|e| BuildError::book(&e, source))?;
    let (result, mut warnings) = warnings::gather(|| run(assets, source, config, preprocessors, options));
    let chapters = result.map_err(|e| BuildError::book(&e, source))?;
    warnings.iter_mut().for_each(|w| *w = error::hide(w, source));

    finish::remove_unused(&fresh).map_err(|e| BuildError::file(error::TIDY, &fresh, e))?;
    if let Some(live) = &options.live {
        live.write(&fresh).map_err(|e| BuildError::file(error::WRITE_LIVE, &fresh, e))?;
    }
    if let Some(template) = assets.theme.get(WORKER) {
        live::write_worker(&fresh, &String::from_utf8_lossy(template))
            .map_err(|e| BuildError::file(error::WRITE_LIST, &fresh, e))?;
    }
    guard::mark(&fresh)?;
    guard::swap(&fresh, &out, staging.path())?;
    Ok(Built { folder: out, chapters, warnings })
}

/// Writes chapters and theme where the book program expects them.
fn write_sources(assets: &Assets, root: &Path, words: &Words) -> Result<(), BuildError> {
    if !assets.chapters.contains_key("SUMMARY.md") {
        return Err(BuildError::NoSummary);
    }
    let theme = assets
        .theme
        .iter()
        .filter(|(name, _)| ["pages/", "print/", "live/", "words/"].iter().all(|inside| !name.starts_with(inside)));
    let stock = finish::STOCK_FILES.iter().filter(|name| !assets.theme.contains_key(**name));
    // The theme folder is the root itself: a script is then called `scripts/look.js` both here and in the output.
    let files = assets
        .chapters
        .iter()
        .map(|(name, bytes)| (Path::new("src").join(name), name, bytes.as_slice()))
        .chain(theme.map(|(name, bytes)| (PathBuf::from(name), name, bytes.as_slice())));
    for (place, name, bytes) in files {
        if name.is_empty() || !Path::new(name).components().all(|c| matches!(c, Component::Normal(_))) {
            return Err(BuildError::BadName(name.clone()));
        }
        if SAYING.contains(&name.as_str()) {
            write(&root.join(place), frame::say(&String::from_utf8_lossy(bytes), words).as_bytes())?;
        } else {
            write(&root.join(place), bytes)?;
        }
    }
    for name in stock {
        write(&root.join(name), b"")?;
    }
    Ok(())
}

/// Writes one file and the folders above it.
fn write(path: &Path, bytes: &[u8]) -> Result<(), BuildError> {
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).map_err(|e| BuildError::file(error::MAKE_FOLDER, folder, e))?;
    }
    fs::write(path, bytes).map_err(|e| BuildError::file(error::WRITE, path, e))
}

/// Every setting of the book program, in code: nothing is read from a file or the environment.
fn configure(assets: &Assets, options: &Options, destination: &Path) -> AnyResult<Config> {
    let mut search = Search::default();
    search.enable = options.search;
    search.copy_js = options.search;

    let mut html = HtmlConfig::default();
    html.theme = Some(PathBuf::from("."));
    html.mathjax_support = false;
    html.playground.editable = false;
    html.playground.copyable = false;
    html.playground.copy_js = false;
    html.playground.runnable = false;
    html.fold.enable = false;
    html.sidebar_header_nav = false;
    html.search = Some(search);
    // A "not found" page needs an absolute address, which a folder of files does not have.
    html.input_404 = Some(String::new());
    let named = |folder: &str, ending: &str| {
        let names = assets.theme.keys().filter(|n| n.starts_with(folder) && n.ends_with(ending));
        names.filter(|n| !finish::PLACED_STYLES.contains(&n.as_str())).map(PathBuf::from).collect::<Vec<_>>()
    };
    html.additional_css = named("css/", ".css");
    html.additional_js = named("scripts/", ".js");

    let mut config = Config::default();
    config.book.title = Some(options.title.clone());
    config.book.description = Some(options.description.clone());
    config.book.language = Some(options.words.code().into());
    config.build.build_dir = destination.to_path_buf();
    config.build.create_missing = false;
    config.build.use_default_preprocessors = false;
    config.set("output.html", &html)?;
    Ok(config)
}

/// Loads, checks and renders; returns the number of chapters.
fn run(
    assets: &Assets,
    root: &Path,
    config: Config,
    preprocessors: Vec<Box<dyn Preprocessor>>,
    options: &Options,
) -> AnyResult<usize> {
    let mut book = MDBook::load_with_config(root, config)?;
    let chapters = check_chapters(assets, &book.book)?;
    for preprocessor in preprocessors {
        book.with_preprocessor(Handed(preprocessor));
    }
    book.with_renderer(finish::Site {
        units: options.units,
        words: Arc::clone(&options.words),
        slots: options.slots.clone(),
        live: options.live.as_ref().map(Live::addresses).unwrap_or_default(),
    });
    book.build()?;
    Ok(chapters)
}

/// Refuses a list that names a file it was not handed, and warns of a chapter nobody can reach.
fn check_chapters(assets: &Assets, book: &Book) -> AnyResult<usize> {
    let mut listed = Vec::new();
    for chapter in book.chapters() {
        let path = chapter.path.as_deref().unwrap_or(Path::new("")).to_string_lossy().replace('\\', "/");
        if !assets.chapters.contains_key(&path) {
            return Err(BuildError::UnknownChapter(path).into());
        }
        listed.push(path);
    }
    if listed.is_empty() {
        return Err(BuildError::NoChapters.into());
    }
    for name in assets.chapters.keys().filter(|n| n.ends_with(".md") && *n != "SUMMARY.md") {
        if !listed.contains(name) {
            tracing::warn!("{}", told!(error::UNLISTED, "name" = name));
        }
    }
    Ok(listed.len())
}

/// A boxed preprocessor as a preprocessor.
struct Handed(Box<dyn Preprocessor>);

impl Preprocessor for Handed {
    fn name(&self) -> &str {
        self.0.name()
    }

    fn run(&self, context: &PreprocessorContext, book: Book) -> AnyResult<Book> {
        self.0.run(context, book)
    }

    fn supports_renderer(&self, renderer: &str) -> AnyResult<bool> {
        self.0.supports_renderer(renderer)
    }
}
