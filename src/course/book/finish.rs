//! Finishes the pages the book program writes: contents list, cautions, headings of the whole-course page.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use aho_corasick::AhoCorasick;
use mdbook_core::book::Book;
use mdbook_core::errors::Result as AnyResult;
use mdbook_html::HtmlHandlebars;
use mdbook_renderer::{RenderContext, Renderer};

use super::tie::tie;
use super::{Slots, Units, contents, parts};
use crate::words::{ENGLISH, Words};

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
const MAIN: &str = "<main id=\"text\"";
const NOT_TRANSLATED: &str = "frame-not-translated";
const TEXT_START: &str = "<!--text-->";
const TEXT_END: &str = "<!--/text-->";

/// The book program's page writer, followed by our finish.
pub(super) struct Site {
    pub(super) units: Units,
    pub(super) words: Arc<Words>,
    pub(super) slots: Slots,
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
        let (mender, whole) =
            (Mender::new(&self.slots, &self.words, false)?, Mender::new(&self.slots, &self.words, true)?);
        for (page, chapter) in pages {
            let path = context.destination.join(&page);
            let html = fs::read_to_string(&path)?;
            let mender = if page == Path::new("print.html") { &whole } else { &mender };
            fs::write(&path, self.finish(&html, &context.book, &page, chapter.as_deref(), mender))?;
        }
        Ok(())
    }
}

impl Site {
    fn finish(&self, html: &str, book: &Book, page: &Path, chapter: Option<&Path>, mender: &Mender<'_>) -> String {
        let root = "../".repeat(page.components().count().saturating_sub(1));
        let frame = |part: &str| {
            part.replacen(UNITS_SLOT, self.units.word(), 1)
                .replacen(LIVE_SLOT, &self.live, 1)
                .replacen(CONTENTS_SLOT, &contents::list(book, &root, chapter, 3), 1)
                .replacen(CONTENTS_PAGE_SLOT, &contents::list(book, &root, chapter, 2), 1)
        };
        let parts = html.split_once(TEXT_START).and_then(|(before, rest)| {
            let (text, after) = rest.rsplit_once(TEXT_END)?;
            Some((before, text, after))
        });
        let Some((before, text, after)) = parts else { return frame(html) };
        let mut out = frame(before);
        let mut mended = String::with_capacity(text.len());
        // A chapter that says it is not translated is in English, and what we put into it is not.
        let note = format!("<p>{}</p>", self.words.say(NOT_TRANSLATED, &[]));
        let ours = (chapter.is_some() && text.contains(&note)).then(|| format!(" lang=\"{}\"", self.words.code()));
        if let Some(ours) = &ours {
            out = out.replacen(MAIN, &format!("{MAIN} lang=\"{ENGLISH}\""), 1);
            mender.mend(&text.replacen(&note, &note.replacen("<p", &format!("<p{ours}"), 1), 1), ours, &mut mended);
        } else {
            mender.mend(text, "", &mut mended);
        }
        // The page with the whole course has no list of its own: each chapter is in the contents.
        if chapter.is_some() {
            parts::put_list(&mut mended, &self.words, ours.as_deref().unwrap_or(""));
        }
        out.push_str(&tie(&mended));
        out.push_str(&frame(after));
        out
    }
}

/// What the book program writes, and what our pages have instead: boxes of the form `> [!CAUTION]` with our own classes;
/// the alignment of table cells in classes, so that a strict content policy may forbid styles.
const MENDS: &[(&str, &str)] = &[
    ("<blockquote class=\"blockquote-tag blockquote-tag-caution\">", "<blockquote class=\"caution\">"),
    ("<blockquote class=\"blockquote-tag blockquote-tag-warning\">", "<blockquote class=\"caution\">"),
    ("<blockquote class=\"blockquote-tag blockquote-tag-note\">", "<blockquote class=\"aside\">"),
    ("<blockquote class=\"blockquote-tag blockquote-tag-tip\">", "<blockquote class=\"aside\">"),
    ("<blockquote class=\"blockquote-tag blockquote-tag-important\">", "<blockquote class=\"aside\">"),
    (BOX_WORD, "<p class=\"box-word\">"),
    (Slots::START, Slots::START),
    ("<td style=\"text-align: left\">", "<td class=\"to-left\">"),
    ("<th style=\"text-align: left\">", "<th class=\"to-left\">"),
    ("<td style=\"text-align: center\">", "<td class=\"to-centre\">"),
    ("<th style=\"text-align: center\">", "<th class=\"to-centre\">"),
    ("<td style=\"text-align: right\">", "<td class=\"to-right\">"),
    ("<th style=\"text-align: right\">", "<th class=\"to-right\">"),
];

/// The title of a box; the book program puts a picture behind it.
const BOX_WORD: &str = "<p class=\"blockquote-tag-title\">";

/// What the book program calls the boxes, and our words for them.
const BOX_WORDS: &[(&str, &str)] = &[
    ("Caution", "frame-caution"),
    ("Warning", "frame-warning"),
    ("Note", "frame-note"),
    ("Tip", "frame-tip"),
    ("Important", "frame-important"),
];

/// Besides, for the page that holds the whole course: every heading one level down, and page turns by name.
const WHOLE_MENDS: &[(&str, &str)] = &[
    ("<div style=\"break-before: page; page-break-before: always;\"></div>", "<div class=\"page-turn\"></div>"),
    ("<h1>", "<h2>"),
    ("<h1 ", "<h2 "),
    ("</h1>", "</h2>"),
    ("<h2>", "<h3>"),
    ("<h2 ", "<h3 "),
    ("</h2>", "</h3>"),
    ("<h3>", "<h4>"),
    ("<h3 ", "<h4 "),
    ("</h3>", "</h4>"),
    ("<h4>", "<h5>"),
    ("<h4 ", "<h5 "),
    ("</h4>", "</h5>"),
    ("<h5>", "<h6>"),
    ("<h5 ", "<h6 "),
    ("</h5>", "</h6>"),
];

/// Mends the text of a page in one pass: the page with the whole course is long.
struct Mender<'a> {
    slots: &'a Slots,
    words: &'a Words,
    finder: AhoCorasick,
    mends: Vec<(&'static str, &'static str)>,
}

impl<'a> Mender<'a> {
    fn new(slots: &'a Slots, words: &'a Words, whole: bool) -> AnyResult<Self> {
        let mends = if whole { [MENDS, WHOLE_MENDS].concat() } else { MENDS.to_vec() };
        Ok(Self { slots, words, finder: AhoCorasick::new(mends.iter().map(|(written, _)| written))?, mends })
    }

    /// `ours` is the attribute that names the language of what we put into `text`, where it is another; else empty.
    fn mend(&self, text: &str, ours: &str, out: &mut String) {
        let mut done = 0;
        for found in self.finder.find_iter(text) {
            let (written, instead) = self.mends[found.pattern().as_usize()];
            out.push_str(&text[done..found.start()]);
            done = found.end();
            if written == Slots::START
                && let Some((name, rest)) = text[done..].split_once(Slots::END)
                && let Some(html) = self.slots.get(name)
            {
                if ours.is_empty() {
                    self.mend(html.as_str(), "", out);
                } else {
                    out.push_str(&format!("<div{ours}>\n"));
                    self.mend(html.as_str(), "", out);
                    out.push_str("\n</div>");
                }
                done = text.len() - rest.len();
                continue;
            }
            out.push_str(instead);
            if written == BOX_WORD {
                out.truncate(out.len() - 1);
                out.push_str(&format!("{ours}>"));
                let picture = text[done..].strip_prefix("<svg").and_then(|rest| rest.split_once("</svg>"));
                done = picture.map_or(done, |(_, words)| text.len() - words.len());
                // The book program says it in English.
                if let Some((word, rest)) = text[done..].split_once("</p>")
                    && let Some((_, id)) = BOX_WORDS.iter().find(|(english, _)| *english == word)
                {
                    out.push_str(&self.words.say(id, &[]));
                    done = text.len() - rest.len() - "</p>".len();
                }
            }
        }
        out.push_str(&text[done..]);
    }
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
