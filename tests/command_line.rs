//! The program as a new user runs it: the real binary, in a folder of its own.

#![allow(clippy::unwrap_used)]

#[path = "command_line/bad_input.rs"]
mod bad_input;
#[path = "command_line/check.rs"]
mod check;
#[path = "command_line/course.rs"]
mod course;
#[path = "command_line/demo.rs"]
mod demo;
#[path = "command_line/doubts.rs"]
mod doubts;
#[path = "command_line/enter.rs"]
mod enter;
#[path = "command_line/exam.rs"]
mod exam;
#[path = "command_line/german.rs"]
mod german;
#[path = "command_line/grade.rs"]
mod grade;
#[path = "command_line/help.rs"]
mod help;
#[path = "command_line/kill.rs"]
mod kill;
#[path = "command_line/new.rs"]
mod new;
#[path = "command_line/papers.rs"]
mod papers;
#[path = "command_line/practise.rs"]
mod practise;
#[path = "command_line/print.rs"]
mod print;
#[path = "command_line/records.rs"]
mod records;
#[path = "command_line/serve.rs"]
mod serve;
#[path = "command_line/slips.rs"]
mod slips;
#[path = "command_line/solve.rs"]
mod solve;
#[path = "command_line/tables.rs"]
mod tables;
#[path = "command_line/words.rs"]
mod words;

use std::collections::BTreeMap;
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// The program.
const PROGRAM: &str = env!("CARGO_BIN_EXE_drivecourse");

/// A folder to work in, gone with the test.
struct Place(tempfile::TempDir);

/// What a run gave back.
struct Ran {
    code: i32,
    out: String,
    err: String,
}

impl Place {
    fn new() -> Self {
        Self(tempfile::tempdir().unwrap())
    }

    fn path(&self, name: &str) -> PathBuf {
        self.0.path().join(name)
    }

    fn write(&self, name: &str, bytes: impl AsRef<[u8]>) {
        let path = self.path(name);
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(path, bytes).unwrap();
    }

    fn text(&self, name: &str) -> String {
        std::fs::read_to_string(self.path(name)).unwrap()
    }

    fn run(&self, arguments: &[&str]) -> Ran {
        self.run_with(arguments, b"")
    }

    /// Runs the program here with `input`; paths are said as they were given, and nothing panics.
    fn run_with(&self, arguments: &[&str], input: &[u8]) -> Ran {
        let mut command = Command::new(PROGRAM);
        command.args(arguments).current_dir(self.0.path()).env("COLUMNS", "100");
        let mut child = command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
        let mut pipe = child.stdin.take().unwrap();
        // The program may stop before it has read everything.
        let _ = pipe.write_all(input);
        drop(pipe);
        let output = child.wait_with_output().unwrap();
        let ran = Ran {
            code: output.status.code().expect("no signal ended it"),
            out: String::from_utf8(output.stdout).unwrap(),
            err: String::from_utf8(output.stderr).unwrap(),
        };
        let here = self.0.path().display().to_string();
        for text in [&ran.out, &ran.err] {
            assert!(!text.contains("panicked"), "{text}");
            assert!(!text.contains(&here), "{arguments:?} says an absolute path: {text}");
            assert!(!text.contains(".drivecourse-"), "{arguments:?} says a temporary path: {text}");
        }
        ran
    }

    /// A module of the built-in scenarios, to break something in.
    fn module(&self, name: &str) {
        copy(&Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios"), &self.path(name).join("scenarios"));
    }

    /// Replaces `from` by `to` in a file, once; it must be there.
    fn mend(&self, name: &str, from: &str, to: &str) {
        let text = self.text(name);
        assert!(text.contains(from), "{name} has no {from:?}");
        self.write(name, text.replacen(from, to, 1));
    }

    fn is_empty(&self, name: &str) -> bool {
        tree(&self.path(name)).is_empty()
    }
}

impl Ran {
    /// All went well; what was printed.
    fn done(self) -> String {
        assert_eq!(self.code, 0, "{}{}", self.out, self.err);
        self.out
    }

    /// The request cannot be met, and this is what is said about it.
    #[track_caller]
    fn refused(self, says: &[&str]) {
        assert_eq!(self.code, 1, "{}{}", self.out, self.err);
        for part in says {
            assert!(self.err.contains(part), "{part:?} is not in:\n{}", self.err);
        }
    }

    /// The arguments make no sense.
    #[track_caller]
    fn misused(self, says: &str) {
        assert_eq!(self.code, 2, "{}{}", self.out, self.err);
        assert!(self.err.contains(says) && self.err.contains("--help"), "{}", self.err);
        assert_eq!(self.out, "");
    }
}

fn copy(from: &Path, to: &Path) {
    for (path, bytes) in tree(from) {
        let path = to.join(path);
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(path, bytes).unwrap();
    }
}

/// Every file below `folder` by its path, with its bytes; empty folders count too.
fn tree(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut out = BTreeMap::new();
    let mut open = vec![folder.to_path_buf()];
    while let Some(next) = open.pop() {
        let Ok(entries) = std::fs::read_dir(&next) else { continue };
        for entry in entries {
            let path = entry.unwrap().path();
            if path.is_dir() {
                open.push(path);
            } else {
                out.insert(path.strip_prefix(folder).unwrap().to_path_buf(), std::fs::read(&path).unwrap());
            }
        }
    }
    out
}

/// Plain spaces for those that do not break.
fn plain(text: &str) -> String {
    text.replace(['\u{a0}', '\u{202f}'], " ")
}

#[test]
fn help_and_version_and_usage() {
    let place = Place::new();
    let help = place.run(&["--help"]).done();
    for command in [
        "demo", "build", "serve", "papers", "grade", "enter", "record", "report", "override", "forget", "look",
        "practise", "solve", "check",
    ] {
        assert!(help.contains(&format!("\n  {command}")), "{help}");
        let own = place.run(&[command, "--help"]).done();
        assert!(own.contains("Usage: drivecourse ") && own.contains("--"), "{own}");
    }
    assert!(help.contains("drivecourse demo"), "a new user is told where to start");
    assert_eq!(place.run(&["--version"]).done(), format!("drivecourse {}\n", env!("CARGO_PKG_VERSION")));
    place.run(&["frobnicate"]).misused("frobnicate");
    place.run(&["papers"]).misused("--roster");
    place.run(&["grade", "exam"]).misused("RESPONSES");
    place.run(&["look", "mixer", "--seed", "-1"]).misused("-1");
    place.run(&["look", "mixer", "--seed", "18446744073709551616"]).misused("from 0 to 18446744073709551615");
    place.run(&["practise", "--count", "0"]).misused("0");
    place.run(&["look", "--units", "metric"]).misused("possible values: si, us");
    assert_eq!(place.run(&[]).code, 2);
    assert!(place.is_empty("."), "nothing was written");
}

#[cfg(unix)]
#[test]
fn a_reader_that_goes_away_is_no_failure() {
    for arguments in [&["demo"][..], &["build"], &["solve", "--list"], &["look", "mixer"], &["check"]] {
        let place = Place::new();
        let mut command = Command::new(PROGRAM);
        command.args(arguments).current_dir(place.path("")).stdin(Stdio::null());
        let mut child = command.stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
        drop(child.stdout.take());
        let output = child.wait_with_output().unwrap();
        let err = String::from_utf8(output.stderr).unwrap();
        assert!(output.status.success() && !err.contains("panicked"), "{arguments:?}: {err}");
    }
}
