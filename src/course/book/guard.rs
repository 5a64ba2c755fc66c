//! Keeps a build from deleting anything that is not an earlier build.

use std::fs;
use std::path::{Path, PathBuf};

use drivecourse_machine::language::Message;

use super::BuildError;
use super::error::{
    CONTAINS_CURRENT, CONTAINS_SOURCE, FIND, INSIDE_SOURCE, IS_CURRENT, IS_SOURCE, LOOK_INTO, MOVE_AWAY, MOVE_NEW,
    WRITE,
};

/// Name of the file that says a folder was written by us and may be replaced.
pub const MARKER: &str = ".drivecourse-book";

const MARKER_TEXT: &str =
    "This folder is made by a build and replaced whole by the next one. Keep nothing else in it.\n";

/// Checks that a build may replace the folder `out`, and returns it as an absolute path.
///
/// # Errors
/// When `out` is a source folder, contains one or lies inside one; is the current folder or contains it; is a file; or
/// is a folder with files in it that carries no [`MARKER`].
pub fn check_output(out: &Path, sources: &[PathBuf]) -> Result<PathBuf, BuildError> {
    // Messages name the folder as it was given; comparisons follow links.
    let named = || out.to_path_buf();
    let place = settle(out)?;
    if place.parent().is_none() || place.file_name().is_none() {
        return Err(BuildError::OutputNotFolder(named()));
    }
    let here = settle(Path::new("."))?;
    let collides = |kept: PathBuf, how: Message| Err(BuildError::OutputCollides { out: named(), kept, how });
    if here.starts_with(&place) {
        let how = if here == place { IS_CURRENT } else { CONTAINS_CURRENT };
        return collides(PathBuf::from("."), how);
    }
    for source in sources {
        let settled = settle(source)?;
        if settled == place {
            return collides(source.clone(), IS_SOURCE);
        } else if settled.starts_with(&place) {
            return collides(source.clone(), CONTAINS_SOURCE);
        } else if place.starts_with(&settled) {
            return collides(source.clone(), INSIDE_SOURCE);
        }
    }
    match fs::read_dir(&place) {
        Ok(entries) => {
            let is_empty = entries.count() == 0;
            if is_empty || place.join(MARKER).is_file() { Ok(place) } else { Err(BuildError::OutputNotOurs(named())) }
        }
        Err(e) if e.kind() == std::io::ErrorKind::NotFound => Ok(place),
        Err(_) if place.ancestors().any(Path::is_file) => Err(BuildError::OutputNotFolder(named())),
        Err(e) => Err(BuildError::file(LOOK_INTO, out, e)),
    }
}

/// The absolute path with links followed, for a path that need not exist yet.
fn settle(path: &Path) -> Result<PathBuf, BuildError> {
    let absolute = std::path::absolute(path).map_err(|e| BuildError::file(FIND, path, e))?;
    // Take names off the end until what is left exists, follow links there, and put the names back.
    let mut existing = absolute.as_path();
    let mut missing = Vec::new();
    let mut settled = loop {
        match existing.canonicalize() {
            Ok(found) => break found,
            Err(e) => match (existing.parent(), existing.components().next_back()) {
                (Some(parent), Some(name)) => {
                    missing.push(name);
                    existing = parent;
                }
                _ => return Err(BuildError::file(FIND, path, e)),
            },
        }
    };
    for name in missing.into_iter().rev() {
        match name {
            std::path::Component::ParentDir => {
                settled.pop();
            }
            other => settled.push(other),
        }
    }
    Ok(settled)
}

/// Marks a finished build as ours.
pub(super) fn mark(folder: &Path) -> Result<(), BuildError> {
    let path = folder.join(MARKER);
    fs::write(&path, MARKER_TEXT).map_err(|e| BuildError::file(WRITE, &path, e))
}

/// Puts `fresh` in the place of `out`; the earlier build goes to `attic`, and comes back if the move fails.
pub(super) fn swap(fresh: &Path, out: &Path, attic: &Path) -> Result<(), BuildError> {
    let earlier = attic.join("earlier");
    let had_earlier = out.exists();
    if had_earlier {
        fs::rename(out, &earlier).map_err(|e| BuildError::file(MOVE_AWAY, out, e))?;
    }
    fs::rename(fresh, out).map_err(|e| {
        if had_earlier {
            // Nothing better can be done if this fails too; the first error is the one to report.
            let _ = fs::rename(&earlier, out);
        }
        BuildError::file(MOVE_NEW, out, e)
    })
}
