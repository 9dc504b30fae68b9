//! What is handed out whole: the offline file, the package for course systems, the package for npm.

pub mod npm;
mod offline;
mod rewrite;
mod scorm;
mod zip;

use crate::folder::Folder;
use crate::site::{Made, SiteError};
use std::path::Path;

/// The offline file.
pub const OFFLINE: &str = "axlewright-offline.html";
/// The package for course systems.
pub const COURSE: &str = "axlewright-scorm12.zip";

/// Builds all of them into the folder that holds the site; gives names and sizes.
///
/// # Errors
/// When a file cannot be read or written.
pub fn build(
    root: &Path,
    folder: &mut Folder,
    made: &Made,
) -> Result<Vec<(String, usize)>, SiteError> {
    let offline = offline::file(root, folder, made)?;
    folder.write(OFFLINE, offline.as_bytes())?;
    let course = scorm::package(root, folder, made)?;
    folder.write(COURSE, &course)?;
    npm::package(root, folder)?;
    Ok(vec![
        (OFFLINE.into(), offline.len()),
        (COURSE.into(), course.len()),
    ])
}
