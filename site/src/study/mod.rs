//! Studies: a topic over many scenarios, in bounded memory and on all cores.
//!
//! Each row of a study is a pure function of its number. So rows are computed by any core in any order
//! and written in theirs, and a study that was killed goes on at the first row that is missing.
//!
//! ```
//! use axlewright_core::Scenario;
//! use axlewright_core::topic;
//! use axlewright_core::words::Lang;
//! use axlewright_site::study::{Asked, Plan, Tally, run};
//!
//! let asked = Asked {
//!     vary: vec![("vehicle.cg_height".into(), "0.4m:0.7m:4".into())],
//!     want: vec!["limits.R1.acceleration".into()],
//!     ..Asked::default()
//! };
//! let mut scenario = Scenario::default();
//! scenario.set("vehicle.base", "esker")?;
//! let plan = Plan::new(topic::find("traction")?, scenario, &asked, Lang::English)?;
//! let (mut table, mut tally) = (Vec::new(), Tally::new(&["limits.R1.acceleration".into()]));
//! run(&plan, 0, 2, &mut table, &mut tally, &mut |_| {})?;
//! assert_eq!(String::from_utf8(table)?.lines().count(), 4);
//! // A higher CG loads the rear axle more: the last row has the greatest limit.
//! assert!(tally.columns[0].max > tally.columns[0].min);
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

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

use crate::scenario_file::one_line;
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
    /// On one line: names and values may come from a table that others have edited.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let told = match self {
            Self::Refused {
                field,
                value,
                allowed,
            } => format!("{field} = \"{value}\" is not possible; allowed: {allowed}"),
            Self::Scenario(problem) => problem.to_string(),
            Self::File { path, reason } => format!("{}: {reason}", path.display()),
        };
        f.write_str(&one_line(&told))
    }
}

impl std::error::Error for StudyError {}
