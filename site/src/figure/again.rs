//! What a figure says that it was made from, so that it can be made again from itself.

use super::{element_text, raster};
use crate::scenario_file::{self, ScenarioError};
use axlewright_core::Scenario;
use std::fmt;
use std::path::{Path, PathBuf};

/// Largest figure that is read.
const LARGEST_BYTES: u64 = 200_000_000;

/// Begins what a figure says of itself; the version, and the command that made it, follow.
const BEGIN: &str = "# axlewright ";

/// What a figure was made from.
#[derive(Clone, Debug, PartialEq)]
pub struct Made {
    /// Version of the program that made it.
    pub version: String,
    /// Arguments of the command `figure`, the topic first.
    pub arguments: Vec<String>,
    /// The scenario.
    pub scenario: Scenario,
}

/// Why a figure cannot be made again.
#[derive(Debug)]
#[non_exhaustive]
pub enum AgainError {
    /// The file cannot be read.
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system says.
        reason: String,
    },
    /// The file does not say what it was made from.
    Silent(PathBuf),
    /// Its scenario is refused.
    Scenario(ScenarioError),
}

impl fmt::Display for AgainError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unreadable { path, reason } => {
                write!(f, "again = {}: it cannot be read: {reason}", path.display())
            }
            Self::Silent(path) => write!(
                f,
                "again = {}: it does not say what it was made from; \
                 allowed: an SVG, PNG or PDF that this program wrote",
                path.display()
            ),
            Self::Scenario(error) => write!(f, "{error}"),
        }
    }
}

impl std::error::Error for AgainError {}

/// Reads what a figure was made from.
///
/// # Errors
/// An [`AgainError`]: one line that names the file and what is allowed.
pub fn read(path: &Path) -> Result<Made, AgainError> {
    let unreadable = |reason: String| AgainError::Unreadable {
        path: path.to_path_buf(),
        reason,
    };
    let size = std::fs::metadata(path).map_err(|e| unreadable(e.to_string()))?;
    if size.len() > LARGEST_BYTES {
        return Err(unreadable(format!("more than {LARGEST_BYTES} bytes")));
    }
    let bytes = std::fs::read(path).map_err(|e| unreadable(e.to_string()))?;
    let silent = || AgainError::Silent(path.to_path_buf());
    let said = said(&bytes).ok_or_else(silent)?;
    let (first, rest) = said.split_once('\n').ok_or_else(silent)?;
    let mut words = first.strip_prefix(BEGIN).ok_or_else(silent)?.split(' ');
    let version = words.next().unwrap_or_default().to_owned();
    if words.next() != Some("figure") {
        return Err(silent());
    }
    let arguments: Vec<String> = words.map(str::to_owned).collect();
    let scenario = scenario_file::parse(path, rest).map_err(AgainError::Scenario)?;
    Ok(Made {
        version,
        arguments,
        scenario,
    })
}

/// What a file says of itself: the metadata of an SVG, the text of a PNG, the source of a PDF.
fn said(bytes: &[u8]) -> Option<String> {
    let said = if bytes.starts_with(b"\x89PNG") {
        let reader = png::Decoder::new(bytes).read_info().ok()?;
        let texts = &reader.info().utf8_text;
        let text = texts.iter().find(|text| text.keyword == raster::KEY)?;
        text.get_text().ok()?
    } else if bytes.starts_with(b"%PDF") {
        element_text(&String::from_utf8_lossy(bytes), "dc:source")
    } else {
        element_text(std::str::from_utf8(bytes).ok()?, "metadata")
    };
    said.starts_with(BEGIN).then_some(said)
}
