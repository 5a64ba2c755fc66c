//! The manual: every command in it is run, and prints what the manual says.
//!
//! With DRIVECOURSE_MANUAL=write in the environment, what the commands print is written into the manual instead.

#![allow(clippy::unwrap_used)]

use std::io::Write as _;
use std::path::Path;
use std::process::{Command, Stdio};

/// The manual's secret is no secret: its papers are the same for every reader.
const SECRET: &str = concat!(
    "drivecourse secret 1\n",
    "793fc09bb82bb020 04eff0a6adb70e7d f463d97f6451d21f b397e4839c8271cf\n",
    "check 8c5c346d\n",
);

/// A fenced block: its line of marks, where its text begins and ends.
struct Block {
    word: String,
    rest: String,
    start: usize,
    end: usize,
}

fn blocks(text: &str) -> Vec<Block> {
    let mut out = Vec::new();
    let (mut at, mut open): (usize, Option<Block>) = (0, None);
    for line in text.split_inclusive('\n') {
        let next = at + line.len();
        open = match (open, line.strip_prefix("```")) {
            (None, Some(info)) => {
                let (word, rest) = info.trim().split_once(' ').unwrap_or((info.trim(), ""));
                Some(Block { word: word.into(), rest: rest.into(), start: next, end: next })
            }
            (Some(mut block), Some(_)) => {
                block.end = at;
                out.push(block);
                None
            }
            (open, _) => open,
        };
        at = next;
    }
    assert!(open.is_none(), "a block is not closed");
    out
}

/// Runs a command line as the manual shows it, types `input` into it, and gives what it prints; `most` lines of it, if it says so.
fn run(folder: &Path, line: &str, input: &str, most: Option<usize>) -> String {
    // What stands between quotation marks is one word, as in any shell.
    let mut words = line.split('"').enumerate().flat_map(|(place, part)| match place % 2 {
        0 => part.split(' ').filter(|word| !word.is_empty()).collect::<Vec<_>>(),
        _ => vec![part],
    });
    assert_eq!(words.next(), Some("drivecourse"), "{line}");
    let mut command = Command::new(env!("CARGO_BIN_EXE_drivecourse"));
    command.args(words).current_dir(folder).env("COLUMNS", "100");
    let mut child = command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
    // The program may end before it reads.
    let _ = writeln!(child.stdin.take().unwrap(), "{input}");
    let output = child.wait_with_output().unwrap();
    let text = String::from_utf8(output.stdout).unwrap() + &String::from_utf8(output.stderr).unwrap();
    assert!(!text.contains("panicked"), "{line}: {text}");
    // No line of a page ends in spaces.
    let mut lines: Vec<&str> = text.trim_end().lines().map(str::trim_end).collect();
    if let Some(most) = most.filter(|most| lines.len() > *most) {
        lines.truncate(most);
        lines.push("...");
    }
    lines.join("\n")
}

#[test]
fn every_command_prints_what_the_manual_says() {
    let book = Path::new(env!("CARGO_MANIFEST_DIR")).join("book/manual");
    let folder = tempfile::tempdir().unwrap();
    let here = folder.path();
    std::fs::write(here.join("secret"), SECRET).unwrap();
    let write = std::env::var("DRIVECOURSE_MANUAL").is_ok_and(|how| how == "write");
    let summary = std::fs::read_to_string(book.join("SUMMARY.md")).unwrap();
    let pages = summary.lines().filter_map(|line| Some(line.split_once("](")?.1.trim_end_matches(')')));
    let (mut commands, mut wrong) = (0, Vec::new());
    for page in pages {
        let path = book.join(page);
        let text = std::fs::read_to_string(&path).unwrap();
        let mut written = String::new();
        let mut done = 0;
        for block in blocks(&text) {
            let inside = &text[block.start..block.end];
            let file = |key: &str| block.rest.strip_prefix(key).map(|file| here.join(file));
            match block.word.as_str() {
                "console" => {
                    let line = inside.lines().next().and_then(|line| line.strip_prefix("$ ")).unwrap();
                    let input = block.rest.strip_prefix("input=").unwrap_or("");
                    let printed = run(here, line, input, block.rest.parse().ok());
                    let now = format!("$ {line}\n{printed}\n");
                    if now != inside && !write {
                        wrong.push(format!("{page}: {line}\n--- the manual\n{inside}--- the program\n{now}"));
                    }
                    written.push_str(&text[done..block.start]);
                    written.push_str(&now);
                    done = block.end;
                    commands += 1;
                }
                "remove" => inside.lines().for_each(|file| std::fs::remove_file(here.join(file)).unwrap()),
                _ if file("file=").is_some() => {
                    let path = file("file=").unwrap();
                    std::fs::create_dir_all(path.parent().unwrap()).unwrap();
                    std::fs::write(path, inside.replace("~~~", "```")).unwrap();
                }
                _ if file("replace=").is_some() => {
                    let inside = inside.replace("~~~", "```");
                    let (from, to) = inside.split_once("---\n").unwrap();
                    // The beginning of a long line may be replaced alone.
                    let (from, to) = (from.trim_end_matches('\n'), to.trim_end_matches('\n'));
                    let path = file("replace=").unwrap();
                    let held = std::fs::read_to_string(&path).unwrap();
                    assert!(held.contains(from), "{page}: {} has no {from}", path.display());
                    std::fs::write(path, held.replacen(from, to, 1)).unwrap();
                }
                _ => {}
            }
        }
        if write {
            written.push_str(&text[done..]);
            std::fs::write(path, written).unwrap();
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
    assert!(commands >= 15, "{commands} commands");
}

#[test]
fn the_manual_builds_without_a_warning() {
    let folder = tempfile::tempdir().unwrap();
    let output = Command::new(env!("CARGO_BIN_EXE_drivecourse"))
        .args(["manual", "--out", "pages"])
        .current_dir(folder.path())
        .output()
        .unwrap();
    assert!(output.status.success() && output.stderr.is_empty(), "{}", String::from_utf8_lossy(&output.stderr));
    let page = std::fs::read_to_string(folder.path().join("pages/module.html")).unwrap();
    assert!(page.contains("drivecourse new my-plant"), "{page}");
    assert!(!page.contains('\u{27e6}') && page.contains("Contents"), "every word of the frame is there: {page}");
}

/// The table of blocks says the keys that each can have, no more and no fewer.
#[test]
fn the_table_of_blocks_is_that_of_the_program() {
    use drivecourse_course::expand::{DIRECTIVES, keys};
    let text = include_str!("../book/manual/chapters.md");
    let words = |cell: &str| -> Vec<String> { cell.split('`').skip(1).step_by(2).map(str::to_owned).collect() };
    let mut told = std::collections::BTreeMap::new();
    for line in text.lines().filter(|line| line.starts_with("| `")) {
        let cells: Vec<&str> = line.trim_matches('|').split('|').collect();
        let mut keys = words(cells[1]);
        keys.sort();
        told.insert(words(cells[0]).remove(0), keys);
    }
    let known: std::collections::BTreeMap<String, Vec<String>> = DIRECTIVES
        .iter()
        .map(|word| {
            let mut keys: Vec<String> = keys(word).iter().map(|key| (*key).to_owned()).collect();
            keys.sort();
            assert!(!keys.is_empty(), "{word}");
            ((*word).to_owned(), keys)
        })
        .collect();
    assert_eq!(told, known);
}

/// The keys that a schema of a file knows, under the keys that lead to them; those in lists of tables after the list's own.
fn keys_of(schema: &serde_json::Value, at: &serde_json::Value, before: &str, out: &mut Vec<(String, bool)>) {
    let Some(properties) = at["properties"].as_object() else { return };
    let required: Vec<_> = at["required"].as_array().into_iter().flatten().filter_map(|key| key.as_str()).collect();
    for (key, about) in properties {
        let name = format!("{before}{key}");
        // A key whose value is a table stands as that table's own keys.
        let places = [about, &about["items"], &about["anyOf"][0]];
        let inner = places.iter().find_map(|place| place["$ref"].as_str()?.strip_prefix("#/definitions/"));
        let inner = inner.map(|name| &schema["definitions"][name]).filter(|inner| inner["properties"].is_object());
        if inner.is_none() || about["items"].is_object() {
            out.push((name.clone(), required.contains(&key.as_str())));
        }
        if let Some(inner) = inner {
            keys_of(schema, inner, &format!("{name}."), out);
        }
    }
}

/// The tables of an exam's keys say those that the program reads, no more and no fewer.
#[test]
fn the_tables_of_an_exam_are_those_of_the_program() {
    let text = include_str!("../book/manual/exam.md");
    let (mut told, mut in_row) = (Vec::new(), false);
    for line in text.lines() {
        in_row = if line.starts_with("| key") { line.contains("[[row]]") } else { in_row };
        let Some(cell) = line.strip_prefix("| ").and_then(|line| line.split('|').next()).map(str::trim) else {
            continue;
        };
        let Some(key) = cell.trim_matches('*').strip_prefix('`').and_then(|key| key.strip_suffix('`')) else {
            continue;
        };
        told.push((format!("{}{key}", if in_row { "row." } else { "" }), cell.starts_with('*')));
    }
    told.sort();
    let schema = drivecourse_quiz::schema::Sort::Exam.schema();
    let mut known = Vec::new();
    keys_of(&schema, &schema, "", &mut known);
    // Of the tables that may be left out, nothing must be there.
    known.iter_mut().filter(|(key, _)| key.starts_with("marking.")).for_each(|(_, must)| *must = false);
    // The reader of rows wants one, whatever the shape of the file says.
    known.iter_mut().filter(|(key, _)| key == "row").for_each(|(_, must)| *must = true);
    known.sort();
    assert!(known.len() > 20, "{known:?}");
    assert_eq!(told, known);
}
