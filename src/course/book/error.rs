//! Why a book could not be built, and how to mend it.

use std::fmt;
use std::io;
use std::path::{Path, PathBuf};

use drivecourse_machine::language::Message;
use drivecourse_machine::{messages, quoted, told};

messages! { pub(crate) SAYS {
    COLLIDES = "problem-build-collides", "the output folder {out} {how}, and a build replaces the output folder whole; choose a folder of its own";
    IS_CURRENT = "problem-build-is-current", "is the current folder {folder}";
    CONTAINS_CURRENT = "problem-build-contains-current", "contains the current folder {folder}";
    IS_SOURCE = "problem-build-is-source", "is the source folder {folder}";
    CONTAINS_SOURCE = "problem-build-contains-source", "contains the source folder {folder}";
    INSIDE_SOURCE = "problem-build-inside-source", "lies inside the source folder {folder}";
    NOT_OURS = "problem-build-not-ours", "the folder {out} holds files that no earlier build put there, and a build would delete them; choose an empty or a new folder, or empty this one by hand if nothing in it is wanted";
    NO_FOLDER = "problem-build-no-folder", "{out} cannot be an output folder: it is a file, lies in one, or has no folder above it; name a new folder or an empty one";
    BAD_NAME = "problem-build-bad-name", "the file name {name} is empty or leads out of its folder; use plain names with `/` between folders";
    NO_SUMMARY = "problem-build-no-summary", "there is no SUMMARY.md among the chapters; add one that lists the chapters in order";
    NO_CHAPTERS = "problem-build-no-chapters", "SUMMARY.md lists no chapter; add a line such as `- [Soft foot](soft-foot.md)`";
    UNKNOWN_CHAPTER = "problem-build-unknown-chapter", "SUMMARY.md names the chapter `{name}`, which is not among the chapters; add the file or mend the line";
    UNLISTED = "problem-build-unlisted", "`{name}` is not listed in SUMMARY.md, so it is not in the course";
    BOOK = "problem-build-book", "the book could not be built: {why}";
    THE_COURSE = "problem-build-the-course", "the course";
    FIND = "problem-build-find", "cannot find {path}";
    LOOK_INTO = "problem-build-look-into", "cannot look into {path}";
    TEMPORARY = "problem-build-temporary", "cannot make a folder for temporary files {path}";
    MAKE_IN = "problem-build-make-in", "cannot make a folder in {path}";
    MAKE_FOLDER = "problem-build-make-folder", "cannot make the folder {path}";
    WRITE = "problem-build-write", "cannot write {path}";
    WRITE_LIVE = "problem-build-write-live", "cannot write the live parts of {path}";
    WRITE_LIST = "problem-build-write-list", "cannot write the list of files of {path}";
    TIDY = "problem-build-tidy", "cannot tidy {path}";
    MOVE_AWAY = "problem-build-move-away", "cannot move away {path}";
    MOVE_NEW = "problem-build-move-new", "cannot move the new book to {path}";
} }

/// Why a book could not be built.
#[derive(Debug)]
#[non_exhaustive]
pub enum BuildError {
    /// The output folder would swallow or disturb a folder that must be kept.
    OutputCollides {
        /// The output folder asked for.
        out: PathBuf,
        /// The folder to be kept.
        kept: PathBuf,
        /// How the two stand to each other, as in "lies inside the source folder".
        how: Message,
    },
    /// The output folder holds files that no earlier build put there.
    OutputNotOurs(PathBuf),
    /// The output is a file, or has no folder above it.
    OutputNotFolder(PathBuf),
    /// A file name handed over is empty or leads out of its folder.
    BadName(String),
    /// There is no `SUMMARY.md` among the chapters.
    NoSummary,
    /// `SUMMARY.md` lists no chapter.
    NoChapters,
    /// `SUMMARY.md` names a chapter that was not handed over.
    UnknownChapter(String),
    /// The book program, a preprocessor or a template refused.
    Book(String),
    /// Reading or writing a file failed.
    File {
        /// What failed, as in "cannot write".
        doing: Message,
        /// The file or folder.
        path: PathBuf,
        /// What the system said.
        cause: io::Error,
    },
}

impl BuildError {
    pub(super) fn file(doing: Message, path: &Path, cause: io::Error) -> Self {
        Self::File { doing, path: path.to_path_buf(), cause }
    }

    /// Keeps our own errors and turns others into text, without the name of the temporary folder.
    pub(super) fn book(error: &mdbook_core::errors::Error, root: &Path) -> Self {
        match error.downcast_ref::<Self>() {
            Some(Self::UnknownChapter(name)) => Self::UnknownChapter(name.clone()),
            Some(Self::NoChapters) => Self::NoChapters,
            _ => Self::Book(hide(&format!("{error:#}"), root)),
        }
    }
}

/// Replaces the temporary source folder in a message by nothing, so that a path reads as the author wrote it.
pub(super) fn hide(message: &str, root: &Path) -> String {
    let root = root.display().to_string();
    message.replace(&format!("{root}/src/"), "").replace(&format!("{root}/"), "").replace(&root, THE_COURSE.text())
}

impl fmt::Display for BuildError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let shown = |path: &Path| path.display().to_string();
        f.write_str(&match self {
            Self::OutputCollides { out, kept, how } => {
                told!(COLLIDES, "out" = shown(out), "how" = told!(how, "folder" = shown(kept)))
            }
            Self::OutputNotOurs(out) => told!(NOT_OURS, "out" = shown(out)),
            Self::OutputNotFolder(out) => told!(NO_FOLDER, "out" = shown(out)),
            Self::BadName(name) => told!(BAD_NAME, "name" = quoted(name)),
            Self::NoSummary => told!(NO_SUMMARY),
            Self::NoChapters => told!(NO_CHAPTERS),
            Self::UnknownChapter(name) => told!(UNKNOWN_CHAPTER, "name" = name),
            Self::Book(message) => told!(BOOK, "why" = message),
            // The cause is the error's source, which whoever prints the chain adds.
            Self::File { doing, path, .. } => told!(doing, "path" = shown(path)),
        })
    }
}

impl std::error::Error for BuildError {
    fn source(&self) -> Option<&(dyn std::error::Error + 'static)> {
        match self {
            Self::File { cause, .. } => Some(cause),
            _ => None,
        }
    }
}
