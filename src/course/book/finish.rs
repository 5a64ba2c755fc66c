//! Finishes the pages the book program writes: contents list, cautions, headings of the whole-course page.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use mdbook_core::book::Book;
use mdbook_core::errors::Result as AnyResult;
use mdbook_html::HtmlHandlebars;
use mdbook_renderer::{RenderContext, Renderer};

use super::{Units, contents};

/// Files of the stock look. Those the theme does not bring are written empty and taken away after the build.
pub(super) const STOCK_FILES: &[&str] = &[
    "book.js",
    "clipboard.min.js",
    "highlight.js",
    "highlight.css",
    "ayu-highlight.css",
    "tomorrow-night.css",
    "toc.js.hbs",
    "fonts/fonts.css",
    "css/chrome.css",
    "css/general.css",
    "css/print.css",
    "css/variables.css",
];

/// Styles the page template names itself.
pub(super) const PLACED_STYLES: &[&str] = &["css/chrome.css", "css/general.css", "css/print.css", "css/variables.css"];

const CONTENTS_SLOT: &str = "<!--contents-->";
const CONTENTS_PAGE_SLOT: &str = "<!--contents-page-->";
const UNITS_SLOT: &str = "units-to-be-set";
const LIVE_SLOT: &str = "live-to-be-set";
const TEXT_START: &str = "<!--text-->";
const TEXT_END: &str = "<!--/text-->";

/// The book program's page writer, followed by our finish.
pub(super) struct Site {
    pub(super) units: Units,
    /// Where a page finds what makes its cards live; empty where they are not.
    pub(super) live: String,
}

impl Renderer for Site {
    fn name(&self) -> &str {
        "html"
    }

    fn render(&self, context: &RenderContext) -> AnyResult<()> {
        HtmlHandlebars::new().render(context)?;
        let first = context.book.chapters().next().and_then(|c| c.path.clone());
        let mut pages: Vec<(PathBuf, Option<PathBuf>)> = context
            .book
            .chapters()
            .filter_map(|c| c.path.clone())
            .map(|p| (p.with_extension("html"), Some(p)))
            .collect();
        pages.push(("index.html".into(), first));
        pages.push(("toc.html".into(), None));
        pages.push(("print.html".into(), None));
        pages.sort();
        // A chapter may itself be called index.md; its page is finished once.
        pages.dedup_by(|a, b| a.0 == b.0);
        for (page, chapter) in pages {
            let path = context.destination.join(&page);
            let html = fs::read_to_string(&path)?;
            fs::write(&path, self.finish(&html, &context.book, &page, chapter.as_deref()))?;
        }
        Ok(())
    }
}

impl Site {
    fn finish(&self, html: &str, book: &Book, page: &Path, chapter: Option<&Path>) -> String {
        let root = "../".repeat(page.components().count().saturating_sub(1));
        let html = html
            .replacen(UNITS_SLOT, self.units.word(), 1)
            .replacen(LIVE_SLOT, &self.live, 1)
            .replacen(CONTENTS_SLOT, &contents::list(book, &root, chapter, 3), 1)
            .replacen(CONTENTS_PAGE_SLOT, &contents::list(book, &root, chapter, 2), 1);
        let Some((before, rest)) = html.split_once(TEXT_START) else { return html };
        let Some((text, after)) = rest.rsplit_once(TEXT_END) else { return html };
        let mut text = name_alignment(&name_boxes(text));
        if page == Path::new("print.html") {
            text = lower_headings(&text);
        }
        format!("{before}{text}{after}")
    }
}

/// Gives the boxes of the form `> [!CAUTION]` our own classes and takes their pictures out.
fn name_boxes(text: &str) -> String {
    let mut text = text.to_string();
    for (kind, class) in
        [("caution", "caution"), ("warning", "caution"), ("note", "aside"), ("tip", "aside"), ("important", "aside")]
    {
        text = text.replace(
            &format!("<blockquote class=\"blockquote-tag blockquote-tag-{kind}\">"),
            &format!("<blockquote class=\"{class}\">"),
        );
    }
    let title = "<p class=\"blockquote-tag-title\">";
    let mut finished = String::with_capacity(text.len());
    let mut rest = text.as_str();
    while let Some((before, after)) = rest.split_once(title) {
        finished.push_str(before);
        finished.push_str("<p class=\"box-word\">");
        rest = match after.strip_prefix("<svg").and_then(|a| a.split_once("</svg>")) {
            Some((_, words)) => words,
            None => after,
        };
    }
    finished.push_str(rest);
    finished
}

/// Turns the alignment of table cells from styles into classes, so that a strict content policy may forbid styles.
fn name_alignment(text: &str) -> String {
    let mut text = text.to_string();
    for (word, class) in [("left", "to-left"), ("center", "to-centre"), ("right", "to-right")] {
        for cell in ["td", "th"] {
            text =
                text.replace(&format!("<{cell} style=\"text-align: {word}\">"), &format!("<{cell} class=\"{class}\">"));
        }
    }
    text
}

/// Moves every heading one level down and names page turns, for the page that holds the whole course.
fn lower_headings(text: &str) -> String {
    let mut text = text.replace(
        "<div style=\"break-before: page; page-break-before: always;\"></div>",
        "<div class=\"page-turn\"></div>",
    );
    for level in (1..=5).rev() {
        let below = level + 1;
        text = text
            .replace(&format!("<h{level}>"), &format!("<h{below}>"))
            .replace(&format!("<h{level} "), &format!("<h{below} "))
            .replace(&format!("</h{level}>"), &format!("</h{below}>"));
    }
    text
}

/// Parts of the stock search that our own search does without.
const STOCK_SEARCH: &[&str] = &["mark.min.js", "searcher.js"];

/// Takes away what is left of the stock look: its files where the theme has none, its search page's scripts, and the
/// hint for one particular host. A course author's own files stay, whatever their names.
pub(super) fn remove_unused(folder: &Path) -> io::Result<()> {
    let hint = folder.join(".nojekyll");
    if hint.is_file() {
        fs::remove_file(hint)?;
    }
    for name in STOCK_FILES {
        for path in written_as(folder, name.trim_end_matches(".hbs"))? {
            if fs::metadata(&path)?.len() == 0 {
                fs::remove_file(path)?;
            }
        }
    }
    for name in STOCK_SEARCH {
        for path in written_as(folder, name)? {
            fs::remove_file(path)?;
        }
    }
    Ok(())
}

/// The files written for `name`, which stand under `stem-` and eight digits of their digest, as in `book-0123abcd.js`.
fn written_as(folder: &Path, name: &str) -> io::Result<Vec<PathBuf>> {
    let place = folder.join(name);
    let (Some(parent), Some((stem, ending))) =
        (place.parent(), place.file_name().and_then(|n| n.to_str()).and_then(|n| n.split_once('.')))
    else {
        return Ok(Vec::new());
    };
    if !parent.is_dir() {
        return Ok(Vec::new());
    }
    let mut found = Vec::new();
    for entry in fs::read_dir(parent)? {
        let entry = entry?;
        let name = entry.file_name().to_string_lossy().into_owned();
        let digest = name.strip_prefix(stem).and_then(|n| n.strip_prefix('-')).and_then(|n| n.strip_suffix(ending));
        let is_digest = |d: &str| {
            d.strip_suffix('.').is_some_and(|hex| hex.len() == 8 && hex.bytes().all(|b| b.is_ascii_hexdigit()))
        };
        if digest.is_some_and(is_digest) {
            found.push(entry.path());
        }
    }
    Ok(found)
}
