//! What chapters refer to: other chapters, places in them, pictures.

use core::ops::Range;
use std::collections::BTreeSet;

use drivecourse_machine::registry::nearest;
use drivecourse_machine::{Problem, did_you_mean, messages, quoted, told};
use pulldown_cmark::{BlockQuoteKind, CodeBlockKind, Event, Options, Parser, Tag, TagEnd};

use crate::expand::DIRECTIVES;

messages! { pub(crate) SAYS {
    LEFT_OUT = "problem-link-left-out", "The book has no file {path}: SUMMARY.md does not list this chapter of the program.";
    LEFT_OUT_MEND = "problem-link-left-out-mend", "Add a line such as - [Title]({path}) to book/SUMMARY.md, or take the link out.";
    NO_FILE = "problem-link-no-file", "The book has no file {path}.";
    NO_FILE_MEND = "problem-link-no-file-mend", "Put the file into the folder book, or mend its name.";
    NO_PICTURE = "problem-link-no-picture", "The book has no picture {path}.";
    NO_PICTURE_MEND = "problem-link-no-picture-mend", "Put the picture into the folder book, or mend its name.";
    NO_HEADING = "problem-link-no-heading", "No heading there is called {name}.";
    NO_CAUTION = "problem-link-no-caution", "This chapter asks about work on a machine and has said no caution yet.";
    NO_CAUTION_MEND = "problem-link-no-caution-mend", "Put a box above it: a line > [!CAUTION], and below it, each line after a >, what can hurt and what is done first.";
} }

/// A link or a picture in a chapter.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Link {
    /// Where it stands, in bytes.
    pub span: Range<usize>,
    /// The file it leads to, from the book's folder; empty for the chapter itself.
    pub path: String,
    /// The place in it, if one is named.
    pub place: Option<String>,
    /// Whether it is a picture.
    pub picture: bool,
    /// The words that are a link, in bytes; empty for none.
    words: Range<usize>,
}

impl Link {
    /// The words of `text` that are the link.
    #[must_use]
    pub fn words<'a>(&self, text: &'a str) -> &'a str {
        text.get(self.words.clone()).unwrap_or_default()
    }
}

fn options() -> Options {
    Options::ENABLE_TABLES | Options::ENABLE_FOOTNOTES | Options::ENABLE_GFM | Options::ENABLE_DEFINITION_LIST
}

/// Every link and picture in the chapter `text` at `path` that leads to a file of the book.
pub fn links(text: &str, path: &str) -> Vec<Link> {
    let folder = path.rsplit_once('/').map_or("", |(folder, _)| folder);
    let mut found: Vec<Link> = Vec::new();
    let mut open: Vec<usize> = Vec::new();
    for (event, span) in Parser::new_ext(text, options()).into_offset_iter() {
        let (target, picture) = match &event {
            Event::Start(Tag::Link { dest_url, .. }) => (dest_url.to_string(), false),
            Event::Start(Tag::Image { dest_url, .. }) => (dest_url.to_string(), true),
            Event::End(TagEnd::Link | TagEnd::Image) => {
                open.pop();
                continue;
            }
            _ => {
                if let Some(link) = open.last().and_then(|place| found.get_mut(*place)) {
                    let from = if link.words.is_empty() { span.start } else { link.words.start };
                    link.words = from..span.end;
                }
                continue;
            }
        };
        let (file, place) = match target.split_once('#') {
            Some((file, place)) => (file, Some(place.to_owned())),
            None => (target.as_str(), None),
        };
        let outside = file.contains(':') || file.starts_with("//");
        open.push(if outside { usize::MAX } else { found.len() });
        if !outside {
            let path = if file.is_empty() { String::new() } else { joined(folder, file) };
            found.push(Link { words: span.start..span.start, span, path, place, picture });
        }
    }
    found
}

/// `file` as it is named from the book's folder, seen from `folder`.
fn joined(folder: &str, file: &str) -> String {
    let mut parts: Vec<&str> = if file.starts_with('/') { Vec::new() } else { folder.split('/').collect() };
    for part in file.split('/') {
        match part {
            ".." => {
                parts.pop();
            }
            "." => {}
            part => parts.push(part),
        }
    }
    parts.retain(|part| !part.is_empty());
    parts.join("/").replace("%20", " ")
}

/// The chapter without its links to files that are `gone`: their words stay.
pub fn without(text: &str, path: &str, gone: impl Fn(&str) -> bool) -> String {
    let mut out = String::with_capacity(text.len());
    let mut done = 0;
    for link in links(text, path).into_iter().filter(|link| !link.picture && gone(&link.path)) {
        out.push_str(&text[done..link.span.start]);
        out.push_str(&text[link.words]);
        done = link.span.end;
    }
    out.push_str(&text[done..]);
    out
}

/// The names of the places in a chapter to which a link may lead: its headings.
pub fn places(text: &str) -> BTreeSet<String> {
    let (mut out, mut heading) = (BTreeSet::new(), None);
    for event in Parser::new_ext(text, options()) {
        match event {
            Event::Start(Tag::Heading { .. }) => heading = Some(String::new()),
            Event::End(TagEnd::Heading(_)) => {
                let name = heading.take().unwrap_or_default();
                let name = name.trim().to_lowercase();
                let name = name.chars().filter(|c| c.is_alphanumeric() || c.is_whitespace() || matches!(c, '-' | '_'));
                out.insert(name.map(|c| if c.is_whitespace() { '-' } else { c }).collect());
            }
            Event::Text(text) | Event::Code(text) => {
                if let Some(heading) = &mut heading {
                    heading.push_str(&text);
                }
            }
            _ => {}
        }
    }
    out
}

/// What is wrong with the chapter's references and cautions; where it is `standard`, links to files that are not there are
/// no fault, as they are taken out when the course is built. `file` gives the text of a file of the book, empty for one
/// that is no chapter, and `None` where there is no such file; `left_out` are chapters of the program that a module's list
/// of chapters leaves out.
pub fn problems(
    text: &str,
    path: &str,
    file: impl Fn(&str) -> Option<String>,
    left_out: &BTreeSet<String>,
    names: &[&str],
    standard: bool,
) -> Vec<Problem> {
    let mut out = Vec::new();
    for link in links(text, path) {
        let there = if link.path.is_empty() { Some(text.to_owned()) } else { file(&link.path) };
        let near = |name: &str, known: &mut dyn Iterator<Item = &str>| {
            let known: Vec<&str> = known.collect();
            nearest(name, known.into_iter()).map(did_you_mean)
        };
        match (there, &link.place) {
            (None, _) if standard && !link.picture => {}
            (None, _) if left_out.contains(&link.path) => {
                out.push(Problem::at(
                    link.span,
                    told!(LEFT_OUT, "path" = link.path),
                    told!(LEFT_OUT_MEND, "path" = link.path),
                ));
            }
            (None, _) => {
                let (what, mend) = if link.picture { (NO_PICTURE, NO_PICTURE_MEND) } else { (NO_FILE, NO_FILE_MEND) };
                let mend = near(&link.path, &mut names.iter().copied()).unwrap_or_else(|| told!(mend));
                out.push(Problem::at(link.span, told!(what, "path" = link.path), mend));
            }
            (Some(text), Some(place)) if !text.is_empty() && !place.starts_with("d-") => {
                let places = places(&text);
                if !places.contains(place) {
                    let mend = near(place, &mut places.iter().map(String::as_str)).unwrap_or_default();
                    out.push(Problem::at(link.span, told!(NO_HEADING, "name" = quoted(place)), mend));
                }
            }
            _ => {}
        }
    }
    out.extend(uncautioned(text));
    out
}

/// A chapter about work that asks before it warns: wherever people are sent to a machine, cautions stand first.
fn uncautioned(text: &str) -> Option<Problem> {
    const WORK: [&str; 4] = ["practice", "worked", "self-check", "one-machine"];
    debug_assert!(WORK.iter().all(|word| DIRECTIVES.contains(word)));
    for (event, span) in Parser::new_ext(text, options()).into_offset_iter() {
        match event {
            Event::Start(Tag::BlockQuote(Some(BlockQuoteKind::Caution | BlockQuoteKind::Warning))) => return None,
            Event::Start(Tag::CodeBlock(CodeBlockKind::Fenced(info))) => {
                let word = info.split([' ', ',']).next().unwrap_or_default();
                if WORK.contains(&word) {
                    return Some(Problem::at(span, told!(NO_CAUTION), told!(NO_CAUTION_MEND)));
                }
            }
            _ => {}
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    const TEXT: &str = "# Feet\n\nSee [the *chain*](../chain.md#how-it-is-done), [here](#feet) and [a standard](https://x.invalid/a.md).\n\n![Pads](pads.svg)\n";

    #[test]
    fn links_are_found_and_taken_out() {
        let found = links(TEXT, "mount/feet.md");
        let paths: Vec<_> =
            found.iter().map(|link| (link.path.as_str(), link.place.as_deref(), link.picture)).collect();
        assert_eq!(
            paths,
            [("chain.md", Some("how-it-is-done"), false), ("", Some("feet"), false), ("mount/pads.svg", None, true)]
        );
        let text = without(TEXT, "mount/feet.md", |path| path == "chain.md");
        assert!(text.contains("See the *chain*, [here](#feet)"), "{text}");
    }

    #[test]
    fn what_leads_nowhere_is_said() {
        let file = |path: &str| match path {
            "chain.md" => Some("# Chain\n\n## How it is done\n".to_owned()),
            "mount/pads.svg" => Some(String::new()),
            _ => None,
        };
        let told = |text: &str| {
            problems(
                text,
                "mount/feet.md",
                file,
                &BTreeSet::from(["heat.md".to_owned()]),
                &["chain.md", "mount/pads.svg"],
                false,
            )
            .into_iter()
            .map(|problem| (problem.line_column(text).unwrap(), problem.to_string()))
            .collect::<Vec<_>>()
        };
        assert_eq!(told(TEXT), []);
        let broken =
            TEXT.replace("how-it-is-done", "how-its-done").replace("pads.svg", "pad.svg").replace("#feet", "#foot");
        let said = told(&broken);
        assert_eq!(said.iter().map(|(place, _)| place.0).collect::<Vec<_>>(), [3, 3, 5], "{said:?}");
        assert!(said[0].1.contains("Did you mean \"how-it-is-done\"?"), "{said:?}");
        assert!(said[2].1.contains("no picture mount/pad.svg") && said[2].1.contains("mount/pads.svg"), "{said:?}");
        let gone = told("# Feet\n\nSee [heat](../heat.md).\n");
        assert!(gone.len() == 1 && gone[0].1.contains("SUMMARY.md does not list this"), "{gone:?}");
        let work = "# Feet\n\n```practice\nitem = \"a\"\n```\n";
        assert_eq!(told(work)[0].0, (3, 1));
        assert_eq!(told(&work.replace("\n\n", "\n\n> [!CAUTION]\n> Lock out.\n\n")), []);
    }
}
