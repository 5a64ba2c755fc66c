//! `manual`: the manual as a folder of pages.

use std::sync::Arc;

use anyhow::Result;
use drivecourse_course::book::{self, Options, Units};
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
    let inside = |(path, bytes): (&String, &Vec<u8>)| {
        let path = path.strip_prefix(FOLDER)?;
        let named = || name_blocks(&String::from_utf8_lossy(bytes)).into_bytes();
        Some((path.to_owned(), if path.ends_with(".md") { named() } else { bytes.clone() }))
    };
    let chapters: Files = assets.book.iter().filter_map(inside).collect();
    let how = Options {
        title: "drivecourse, the manual".into(),
        description: "One page for each job: a module of your own, an exam, marking, reports.".into(),
        words: Arc::clone(&assets.words),
        units: Units::Nowhere,
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

/// `text` with a line over each of its blocks that says what the block is: a command with what it prints, a file, or what
/// stands in a file and what is written instead, which become two blocks.
fn name_blocks(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut within: Option<&str> = None;
    for line in text.split_inclusive('\n') {
        match (within, line.strip_prefix("```")) {
            (None, Some(info)) => {
                let (word, rest) = info.trim().split_once(' ').unwrap_or((info.trim(), ""));
                out.push_str(&over(&name(word, rest)));
                out.push_str(&format!("```{word}\n"));
                within = Some(if rest.starts_with(REPLACE) { REPLACE } else { "" });
            }
            (Some(_), Some(_)) => {
                out.push_str(line);
                within = None;
            }
            (Some(REPLACE), None) if line.trim_end() == "---" => {
                out.push_str(&format!("```\n\n{}```\n", over("Write instead")));
            }
            _ => out.push_str(line),
        }
    }
    out
}

/// The mark of a block that says what is written over what stands in a file.
const REPLACE: &str = "replace=";

fn over(name: &str) -> String {
    format!("<p class=\"block-name\">{name}</p>\n\n")
}

/// What a block is, from its word and what stands behind it.
fn name(word: &str, rest: &str) -> String {
    let file = |name: &str| format!("<code>{name}</code>");
    match (word, rest.strip_prefix("file="), rest.strip_prefix(REPLACE)) {
        (_, Some(name), _) => format!("The file {}", file(name)),
        (_, _, Some(name)) => format!("What stands in {}", file(name)),
        ("console", ..) if rest.parse::<usize>().is_ok() => "The command, and how begins what it prints".into(),
        ("console", ..) => "The command, and what it prints".into(),
        ("remove", ..) => "Files to delete".into(),
        _ => "Such as".into(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_block_says_what_it_is() {
        let text = "a\n```console 8\n$ x\n```\n```toml replace=a/b.toml\nold\n---\nnew\n```\n```text\n    ```practice\n---\n```\n";
        let named = name_blocks(text);
        assert_eq!(named.matches("<p class=\"block-name\">").count(), 4, "{named}");
        assert!(named.contains("What stands in <code>a/b.toml</code></p>\n\n```toml\nold\n```\n"), "{named}");
        assert!(named.contains("Write instead</p>\n\n```\nnew\n```\n"), "{named}");
        assert!(named.ends_with("Such as</p>\n\n```text\n    ```practice\n---\n```\n"), "{named}");
    }
}
