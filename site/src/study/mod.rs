//! Studies: a topic over many scenarios, in bounded memory and on all cores.
//!
//! Each row of a study is a pure function of its number. So rows are computed by any core in any order
//! and written in theirs, and a study that was killed goes on at the first row that is missing.

mod design;
mod keep;
mod plan;
mod plot;
mod run;
mod summary;
mod table;
mod tally;

pub use design::Design;
pub use keep::Kept;
pub use plan::{Asked, Axis, MOST_ROWS, Plan, Values};
pub use plot::{PlotAsked, PlotKind, Plotted, plot};
pub use run::{run, usual_threads};
pub use summary::summary;
pub use tally::{Column, Tally};

use std::fmt;
use std::path::PathBuf;

/// Why a study cannot be.
#[derive(Debug)]
#[non_exhaustive]
pub enum StudyError {
    /// A field of the study is refused: field, value, what is allowed.
    Refused {
        /// Name of the option or of the field of the file.
        field: String,
        /// Its value.
        value: String,
        /// What is allowed.
        allowed: String,
    },
    /// A field of the scenario is refused.
    Scenario(axlewright_core::Problem),
    /// A file cannot be read or written.
    File {
        /// The file.
        path: PathBuf,
        /// What the system says.
        reason: String,
    },
}

impl StudyError {
    pub(crate) fn refused(
        field: impl Into<String>,
        value: impl Into<String>,
        allowed: impl Into<String>,
    ) -> Self {
        Self::Refused {
            field: field.into(),
            value: value.into(),
            allowed: allowed.into(),
        }
    }

    fn file(path: &std::path::Path, reason: impl fmt::Display) -> Self {
        Self::File {
            path: path.to_path_buf(),
            reason: reason.to_string(),
        }
    }
}

impl fmt::Display for StudyError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Refused {
                field,
                value,
                allowed,
            } => write!(
                f,
                "{field} = \"{value}\" is not possible; allowed: {allowed}"
            ),
            Self::Scenario(problem) => write!(f, "{problem}"),
            Self::File { path, reason } => write!(f, "{}: {reason}", path.display()),
        }
    }
}

impl std::error::Error for StudyError {}
