//! Files written whole or not at all.

use std::io::{ErrorKind, Write};
use std::path::Path;

use anyhow::{Context, Result};

/// Writes `bytes` to `path`: to a temporary file beside it, synced, then renamed into place.
///
/// # Errors
/// Says which file and why; the old file, if there was one, is untouched then.
pub(crate) fn write(path: &Path, bytes: &[u8]) -> Result<()> {
    write_as(path, bytes, 0o644)
}

/// [`write`], readable by its owner alone.
pub(crate) fn write_private(path: &Path, bytes: &[u8]) -> Result<()> {
    write_as(path, bytes, 0o600)
}

fn write_as(path: &Path, bytes: &[u8], mode: u32) -> Result<()> {
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    std::fs::create_dir_all(folder).with_context(|| format!("cannot make the folder {}", folder.display()))?;
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
    attempt().with_context(|| format!("cannot write {}; nothing was changed there", path.display()))
}

/// Text of a file that a person named.
///
/// # Errors
/// Says which file and why.
pub(crate) fn read_text(path: &Path) -> Result<String> {
    let bytes = std::fs::read(path).with_context(|| format!("cannot read {}", path.display()))?;
    String::from_utf8(bytes).map_err(|error| {
        let line =
            error.as_bytes()[..error.utf8_error().valid_up_to()].iter().filter(|byte| **byte == b'\n').count() + 1;
        anyhow::anyhow!("{}:{line}: the file is not UTF-8 text; save it as UTF-8", path.display())
    })
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
