//! The folder that a build writes into, and what it holds.

use crate::elements::short_hash;
use crate::output::write_whole;
use crate::site::SiteError;
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

/// The files of one build.
#[derive(Debug)]
pub struct Folder {
    out: PathBuf,
    files: BTreeMap<String, String>,
}

impl Folder {
    /// A folder that holds nothing of this build yet.
    #[must_use]
    pub fn new(out: &Path) -> Self {
        Self {
            out: out.to_path_buf(),
            files: BTreeMap::new(),
        }
    }

    /// Path of every file from the folder's root, with the hash of its content.
    #[must_use]
    pub fn files(&self) -> &BTreeMap<String, String> {
        &self.files
    }

    /// Writes a file; one that is there with the same content is left alone.
    ///
    /// # Errors
    /// [`SiteError::File`].
    pub fn write(&mut self, name: &str, bytes: &[u8]) -> Result<(), SiteError> {
        self.files.insert(name.into(), short_hash(bytes));
        let path = self.out.join(name);
        if fs::read(&path).is_ok_and(|old| old == bytes) {
            return Ok(());
        }
        let failed = |error| SiteError::File(path.clone(), error);
        if let Some(folder) = path.parent() {
            fs::create_dir_all(folder).map_err(failed)?;
        }
        write_whole(&path, bytes).map_err(failed)
    }

    /// Takes note of a file that is there already.
    ///
    /// # Errors
    /// [`SiteError::File`].
    pub fn note(&mut self, name: &str) -> Result<(), SiteError> {
        let bytes = self.read(name)?;
        self.files.insert(name.into(), short_hash(&bytes));
        Ok(())
    }

    /// The content of a file.
    ///
    /// # Errors
    /// [`SiteError::File`].
    pub fn read(&self, name: &str) -> Result<Vec<u8>, SiteError> {
        let path = self.out.join(name);
        fs::read(&path).map_err(|error| SiteError::File(path, error))
    }
}
