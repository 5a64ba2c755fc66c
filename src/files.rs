//! Files written whole or not at all.

use std::io::{ErrorKind, Write};
use std::path::Path;

use anyhow::{Context, Result};
use drivecourse_machine::language::Message;
use drivecourse_machine::messages;

messages! { pub(crate) ERRORS {
    CANNOT_READ = "error-cannot-read", "cannot read {file}";
    NO_FILE = "error-no-file", "there is no file {file}; look at its name, and at the folder you are in";
    IS_FOLDER = "error-is-folder", "{file} is a folder; name a file in it";
    CANNOT_LIST = "error-cannot-list", "cannot list {folder}";
    CANNOT_WRITE = "error-cannot-write", "cannot write {file}; nothing was changed there";
    CANNOT_WRITE_IN = "error-cannot-write-in", "cannot write in {folder}; nothing was changed there";
    CANNOT_PLACE = "error-cannot-place", "cannot put {file} in its place";
    CANNOT_MAKE = "error-cannot-make-folder", "cannot make the folder {folder}";
    FILE_IN_THE_WAY = "error-file-in-the-way", "cannot make the folder {folder}: {file} is a file; choose another folder";
    NOT_TEXT = "error-not-text", "{file}:{line}: the file is not UTF-8 text; save it as UTF-8";
} }

/// That `file` cannot be read; the system says why.
pub(crate) fn cannot_read(file: &Path) -> String {
    CANNOT_READ.say(&[("file", &file.display().to_string())])
}

/// That `folder` cannot be listed; the system says why.
pub(crate) fn cannot_list(folder: &Path) -> String {
    CANNOT_LIST.say(&[("folder", &folder.display().to_string())])
}

/// Fills `folder` whole or not at all: `work` writes into a fresh folder inside it, and what stands there at the end
/// takes the place of what bears the same name; `last`, which says that the rest is whole, comes last.
///
/// # Errors
/// Those of `work`, with the paths the files would have had; `folder` is as it was then.
pub(crate) fn fill<T>(folder: &Path, last: &str, work: impl FnOnce(&Path) -> Result<T>) -> Result<T> {
    let was_there = folder.exists();
    make_folder(folder)?;
    let outcome = fill_in(folder, last, work);
    if outcome.is_err() && !was_there {
        // Only an empty folder goes; the error to report is the first one.
        let _ = std::fs::remove_dir(folder);
    }
    outcome
}

fn fill_in<T>(folder: &Path, last: &str, work: impl FnOnce(&Path) -> Result<T>) -> Result<T> {
    let cannot = || CANNOT_WRITE_IN.say(&[("folder", &folder.display().to_string())]);
    let stage = tempfile::Builder::new().prefix(".drivecourse-").tempdir_in(folder).with_context(cannot)?;
    // A folder inside it, because a temporary folder itself is closed to other users.
    let (fresh, old) = (stage.path().join("new"), stage.path().join("old"));
    for inside in [&fresh, &old] {
        std::fs::create_dir(inside).with_context(cannot)?;
    }
    let hide = |error: anyhow::Error| {
        anyhow::anyhow!(format!("{error:#}").replace(&fresh.display().to_string(), &folder.display().to_string()))
    };
    let made = work(&fresh).map_err(hide)?;
    let mut names = Vec::new();
    for entry in std::fs::read_dir(&fresh).with_context(cannot)? {
        names.push(entry.with_context(cannot)?.file_name());
    }
    names.sort_by_key(|name| (name == last, name.clone()));
    for name in names {
        let place = folder.join(&name);
        let failed = || CANNOT_PLACE.say(&[("file", &place.display().to_string())]);
        if place.exists() {
            std::fs::rename(&place, old.join(&name)).with_context(failed)?;
        }
        std::fs::rename(fresh.join(&name), &place).with_context(failed)?;
    }
    Ok(made)
}

/// Makes a folder and those above it.
fn make_folder(folder: &Path) -> Result<()> {
    let named = folder.display().to_string();
    std::fs::create_dir_all(folder).map_err(|error| match folder.ancestors().find(|above| above.is_file()) {
        Some(file) => {
            anyhow::anyhow!(FILE_IN_THE_WAY.say(&[("folder", &named), ("file", &file.display().to_string())]))
        }
        None => anyhow::Error::new(error).context(CANNOT_MAKE.say(&[("folder", &named)])),
    })
}

/// Writes `bytes` to `path`: to a temporary file beside it, synced, then renamed into place.
///
/// # Errors
/// Says which file and why; the old file, if there was one, is untouched then.
pub(crate) fn write(path: &Path, bytes: &[u8]) -> Result<()> {
    write_as(path, bytes, 0o644)
}

/// [`write()`], readable by its owner alone.
pub(crate) fn write_private(path: &Path, bytes: &[u8]) -> Result<()> {
    write_as(path, bytes, 0o600)
}

fn write_as(path: &Path, bytes: &[u8], mode: u32) -> Result<()> {
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    make_folder(folder)?;
    let attempt = || -> std::io::Result<()> {
        let mut file = tempfile::NamedTempFile::new_in(folder)?;
        file.write_all(bytes)?;
        file.as_file().sync_all()?;
        #[cfg(unix)]
        {
            use std::os::unix::fs::PermissionsExt;
            file.as_file().set_permissions(std::fs::Permissions::from_mode(mode))?;
        }
        #[cfg(not(unix))]
        let _ = mode;
        file.persist(path).map_err(|error| error.error)?;
        Ok(())
    };
    attempt().with_context(|| CANNOT_WRITE.say(&[("file", &path.display().to_string())]))
}

/// Bytes of a file that a person named.
///
/// # Errors
/// Says which file and why.
pub(crate) fn read(path: &Path) -> Result<Vec<u8>> {
    let why = |message: Message| anyhow::anyhow!(message.say(&[("file", &path.display().to_string())]));
    std::fs::read(path).map_err(|error| match error.kind() {
        ErrorKind::NotFound => why(NO_FILE),
        _ if path.is_dir() => why(IS_FOLDER),
        _ => anyhow::Error::new(error).context(cannot_read(path)),
    })
}

/// Text of a file that a person named.
///
/// # Errors
/// Those of [`read`], and the first line that is not UTF-8.
pub(crate) fn read_text(path: &Path) -> Result<String> {
    let bytes = read(path)?;
    text(&path.display().to_string(), bytes)
}

/// The text that the bytes of `file` hold.
///
/// # Errors
/// Says which file, and the first line that is not UTF-8.
pub(crate) fn text(file: &str, bytes: Vec<u8>) -> Result<String> {
    String::from_utf8(bytes).map_err(|error| {
        let line =
            error.as_bytes()[..error.utf8_error().valid_up_to()].iter().filter(|byte| **byte == b'\n').count() + 1;
        anyhow::anyhow!(NOT_TEXT.say(&[("file", file), ("line", &line.to_string())]))
    })
}

/// Prints a line of results. `println!` would panic where the reader has gone away (`| head`).
///
/// # Errors
/// Those of standard output.
pub(crate) fn say(line: impl std::fmt::Display) -> Result<()> {
    Ok(writeln!(std::io::stdout(), "{line}")?)
}

/// Whether the error is that the reader of our output went away.
pub(crate) fn is_broken_pipe(error: &anyhow::Error) -> bool {
    error
        .chain()
        .any(|cause| cause.downcast_ref::<std::io::Error>().is_some_and(|io| io.kind() == ErrorKind::BrokenPipe))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_folder_is_filled_whole_or_left_alone() {
        let above = tempfile::tempdir().unwrap();
        let folder = above.path().join("made");
        let failed = fill(&folder, "last", |fresh| {
            write(&fresh.join("papers/a"), b"a")?;
            write(&fresh.join("papers/a/b"), b"b")
        });
        let said = format!("{:#}", failed.unwrap_err());
        assert!(said.contains("made/papers/a is a file") && !said.contains(".drivecourse-"), "{said}");
        assert!(!folder.exists());
        for text in ["one", "two"] {
            fill(&folder, "last", |fresh| {
                write(&fresh.join("last"), text.as_bytes())?;
                write(&fresh.join("papers").join(text), b"x")
            })
            .unwrap();
        }
        assert_eq!(read_text(&folder.join("last")).unwrap(), "two");
        assert!(folder.join("papers/two").exists() && !folder.join("papers/one").exists());
        assert_eq!(std::fs::read_dir(&folder).unwrap().count(), 2);
    }

    #[test]
    fn a_file_is_replaced_whole_or_left_alone() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("deep/er/file.txt");
        write(&path, b"one").unwrap();
        write(&path, b"two").unwrap();
        assert_eq!(read_text(&path).unwrap(), "two");
        assert_eq!(std::fs::read_dir(path.parent().unwrap()).unwrap().count(), 1, "no temporary file stays behind");
        let error = write(&path.join("below a file"), b"x").unwrap_err();
        assert!(format!("{error:#}").contains("file.txt"));
        assert_eq!(read_text(&path).unwrap(), "two");
    }
}
