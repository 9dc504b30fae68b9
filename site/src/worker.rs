//! The service worker: a script that keeps every file of one version of the site.

use crate::site::{SiteError, read};
use std::collections::BTreeMap;
use std::path::Path;

/// The file of the worker. It stands at the root: a worker serves what lies beside and below it.
pub const WORKER: &str = "sw.js";

/// The worker that keeps the files, given by path and hash.
///
/// # Errors
/// When `site/theme/worker.js` cannot be read.
pub fn script(root: &Path, files: &BTreeMap<String, String>) -> Result<String, SiteError> {
    let list = serde_json::to_string(files).map_err(|e| SiteError::Layout(e.to_string()))?;
    Ok(read(&root.join("site/theme/worker.js"))?.replace("FILES_OF_THIS_VERSION", &list))
}
