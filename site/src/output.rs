//! Writes output files whole or not at all.

use std::io::{self, Write};
use std::path::Path;

/// Writes a file: the old one is replaced only when the new one is complete on disk.
///
/// # Errors
/// What the system says; the old file is then as it was.
pub fn write_whole(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let folder = match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    };
    let mut draft = tempfile::Builder::new()
        .prefix(".axlewright-")
        .tempfile_in(folder)?;
    draft.write_all(bytes)?;
    draft.as_file().sync_all()?;
    set_usual_permissions(draft.path(), path)?;
    draft.persist(path).map_err(|e| e.error)?;
    Ok(())
}

/// A temporary file is private; a result is as readable as the file that it replaces, or as usual.
#[cfg(unix)]
fn set_usual_permissions(draft: &Path, path: &Path) -> io::Result<()> {
    use std::os::unix::fs::PermissionsExt;
    let permissions = std::fs::metadata(path).map_or_else(
        |_| std::fs::Permissions::from_mode(0o644),
        |old| old.permissions(),
    );
    std::fs::set_permissions(draft, permissions)
}

#[cfg(not(unix))]
fn set_usual_permissions(_: &Path, _: &Path) -> io::Result<()> {
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_that_cannot_be_written_leaves_the_old_one() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.svg");
        write_whole(&path, b"one").unwrap();
        write_whole(&path, b"two").unwrap();
        assert_eq!(std::fs::read(&path).unwrap(), b"two");
        assert!(write_whole(&folder.path().join("no/such/folder.svg"), b"x").is_err());
        assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1);
    }
}
