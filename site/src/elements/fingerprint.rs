//! Tells whether anything that the elements are made from has changed since the last build.

use super::BuildError;
use sha2::{Digest, Sha256};
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

/// A short name for the content of all `inputs` (files, and folders with all that is in them) and `settings`.
///
/// Content is compared, not times: a fresh checkout or a touched file changes nothing.
pub(super) fn fingerprint(inputs: &[PathBuf], settings: &[&str]) -> Result<String, BuildError> {
    let mut hash = Sha256::new();
    for setting in settings {
        add(&mut hash, setting.as_bytes());
    }
    for path in inputs {
        // The place of an input in the list names it, so that a moved source tree changes nothing.
        add_path(&mut hash, path, path)?;
    }
    Ok(hex(&hash.finalize()))
}

/// The first characters of the content's hash.
pub(crate) fn short_hash(content: &[u8]) -> String {
    hex(&Sha256::digest(content))[..12].to_string()
}

fn add_path(hash: &mut Sha256, root: &Path, path: &Path) -> Result<(), BuildError> {
    let failed = |source| BuildError::File {
        path: path.to_path_buf(),
        source,
    };
    if path.is_dir() {
        let entries = std::fs::read_dir(path).map_err(failed)?;
        let mut children = entries
            .map(|entry| entry.map(|entry| entry.path()))
            .collect::<Result<Vec<_>, _>>()
            .map_err(failed)?;
        children.sort();
        return children
            .iter()
            .try_for_each(|child| add_path(hash, root, child));
    }
    let name = path.strip_prefix(root).unwrap_or(path);
    add(hash, name.to_string_lossy().as_bytes());
    add(hash, &std::fs::read(path).map_err(failed)?);
    Ok(())
}

/// The length goes first, so that two parts cannot be mistaken for two others that join to the same.
fn add(hash: &mut Sha256, bytes: &[u8]) {
    hash.update(bytes.len().to_le_bytes());
    hash.update(bytes);
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |mut text, byte| {
        let _ = write!(text, "{byte:02x}"); // writing to a String cannot fail
        text
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn content_counts_and_time_and_place_do_not() {
        let made = |content: &str| {
            let folder = tempfile::tempdir().expect("a temporary folder");
            std::fs::create_dir(folder.path().join("src")).expect("a folder");
            std::fs::write(folder.path().join("src/lib.rs"), content).expect("a file");
            let inputs = [folder.path().join("src")];
            fingerprint(&inputs, &["1"]).expect("a fingerprint")
        };
        assert_eq!(made("a"), made("a"), "same content elsewhere");
        assert_ne!(made("a"), made("b"), "other content");
        assert_ne!(
            fingerprint(&[], &["ab", "c"]).expect("a fingerprint"),
            fingerprint(&[], &["a", "bc"]).expect("a fingerprint"),
            "settings are kept apart"
        );
    }

    #[test]
    fn a_missing_input_is_named() {
        let error = fingerprint(&[PathBuf::from("/nowhere/at/all")], &[]).expect_err("missing");
        assert!(error.to_string().contains("/nowhere/at/all"), "{error}");
    }
}
