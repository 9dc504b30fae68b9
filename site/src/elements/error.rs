//! Why the elements could not be built, a line each.

use crate::toolchain::ToolchainError;
use std::fmt;
use std::path::PathBuf;

/// Why the elements could not be built.
#[derive(Debug)]
#[non_exhaustive]
pub enum BuildError {
    /// The compiler or its wasm target cannot be had.
    Toolchain(ToolchainError),
    /// A file cannot be read or written.
    File {
        /// Which.
        path: PathBuf,
        /// Why.
        source: std::io::Error,
    },
    /// A program cannot be started.
    NotStarted {
        /// Which.
        program: String,
        /// Why.
        source: std::io::Error,
    },
    /// A program ended with an error; its own message is on the terminal.
    Failed {
        /// Which.
        program: String,
    },
    /// The glue cannot be written for this wasm file.
    Glue(String),
    /// The wasm file cannot be split into its parts.
    Split(String),
    /// The table of elements is not JSON.
    Table(serde_json::Error),
    /// What a program wrote is not a wasm file.
    NotWasm(PathBuf),
}

impl fmt::Display for BuildError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Toolchain(error) => error.fmt(f),
            Self::File { path, source } => write!(f, "{}: {source}", path.display()),
            Self::NotStarted { program, source } => {
                write!(f, "{program} cannot be started: {source}")
            }
            Self::Failed { program } => {
                write!(f, "{program} ended with an error; its own message is above")
            }
            Self::Glue(reason) => {
                write!(f, "the glue for the wasm file cannot be written: {reason}")
            }
            Self::Split(reason) => {
                write!(f, "the wasm file cannot be split into its parts: {reason}")
            }
            Self::Table(error) => write!(f, "the table of elements is not JSON: {error}"),
            Self::NotWasm(path) => write!(f, "{} is not a whole wasm file", path.display()),
        }
    }
}

impl std::error::Error for BuildError {}

impl From<ToolchainError> for BuildError {
    fn from(error: ToolchainError) -> Self {
        Self::Toolchain(error)
    }
}
