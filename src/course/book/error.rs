//! Why a book could not be built, and how to mend it.

use std::fmt;
use std::io;
use std::path::{Path, PathBuf};

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
        /// How the two stand to each other, as in "lies inside".
        how: &'static str,
        /// What the kept folder is.
        what: &'static str,
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
        /// What was tried, as in "write".
        doing: &'static str,
        /// The file or folder.
        path: PathBuf,
        /// What the system said.
        cause: io::Error,
    },
}

impl BuildError {
    pub(super) fn file(doing: &'static str, path: &Path, cause: io::Error) -> Self {
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
    message.replace(&format!("{root}/src/"), "").replace(&format!("{root}/"), "").replace(&root, "the course")
}

impl fmt::Display for BuildError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::OutputCollides { out, kept, how, what } => write!(
                f,
                "the output folder {} {how} {what} {}, and a build replaces the output folder whole; \
                 choose a folder of its own",
                out.display(),
                kept.display()
            ),
            Self::OutputNotOurs(out) => write!(
                f,
                "the folder {} holds files that no earlier build put there, and a build would delete them; \
                 choose an empty or a new folder, or empty this one by hand if nothing in it is wanted",
                out.display()
            ),
            Self::OutputNotFolder(out) => {
                write!(
                    f,
                    "{} cannot be an output folder: it is a file, lies in one, or has no folder above it; \
                     name a new folder or an empty one",
                    out.display()
                )
            }
            Self::BadName(name) => write!(
                f,
                "the file name {name:?} is empty or leads out of its folder; use plain names with `/` between folders"
            ),
            Self::NoSummary => {
                write!(f, "there is no SUMMARY.md among the chapters; add one that lists the chapters in order")
            }
            Self::NoChapters => {
                write!(f, "SUMMARY.md lists no chapter; add a line such as `- [Soft foot](soft-foot.md)`")
            }
            Self::UnknownChapter(name) => write!(
                f,
                "SUMMARY.md names the chapter `{name}`, which is not among the chapters; add the file or mend the line"
            ),
            Self::Book(message) => write!(f, "the book could not be built: {message}"),
            // The cause is the error's source, which whoever prints the chain adds.
            Self::File { doing, path, .. } => write!(f, "cannot {doing} {}", path.display()),
        }
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
