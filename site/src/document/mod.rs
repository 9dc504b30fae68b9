//! Documents that pull numbers and figures from scenario files when they are built, so that text and
//! figure cannot disagree.
//!
//! A document is text in any markup with places to fill: `{{ value("traction",
//! "limits.R1.acceleration", scenario="car.toml") }}`. LaTeX uses `<< >>` and `<% %>`, since braces are its
//! own. Files are named from the folder of the document; figures are written beside the result.

mod functions;
mod markup;
mod mdbook;

pub use markup::Markup;
pub use mdbook::preprocess;

use crate::scenario_file::one_line;
use functions::Place;
use minijinja::syntax::SyntaxConfig;
use minijinja::{Environment, ErrorKind};
use std::fmt;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Why a document cannot be filled: one line that names the document and the line in it.
#[derive(Clone, Debug, PartialEq)]
pub struct FillError {
    /// The document.
    pub document: PathBuf,
    /// Line, from 1; 0 where it is not known.
    pub line: usize,
    /// What is wrong.
    pub reason: String,
}

impl fmt::Display for FillError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (document, reason) = (self.document.display(), &self.reason);
        write!(f, "{document}, line {}: {reason}", self.line)
    }
}

impl std::error::Error for FillError {}

/// Fills the places of a document. Scenario files are looked for in `sources`, figures are written into
/// `out` and named from there.
///
/// # Errors
/// A [`FillError`].
pub fn fill(document: &Path, text: &str, sources: &Path, out: &Path) -> Result<String, FillError> {
    let markup = Markup::of(document);
    let place = Arc::new(Place {
        sources: sources.to_path_buf(),
        out: out.to_path_buf(),
        markup,
    });
    let mut environment = Environment::new();
    environment.set_keep_trailing_newline(true);
    environment.set_undefined_behavior(minijinja::UndefinedBehavior::Strict);
    // What the functions give is already written as the markup wants it.
    environment.set_auto_escape_callback(|_| minijinja::AutoEscape::None);
    environment.set_syntax(syntax(markup));
    functions::add(&mut environment, &place);
    let filled = environment.render_str(text, ());
    filled.map_err(|error| FillError {
        document: document.to_path_buf(),
        line: error.line().unwrap_or(0),
        reason: reason(&error),
    })
}

fn syntax(markup: Markup) -> SyntaxConfig {
    let braces = SyntaxConfig::default();
    if markup != Markup::Latex {
        return braces;
    }
    let own = SyntaxConfig::builder()
        .variable_delimiters("<<", ">>")
        .block_delimiters("<%", "%>")
        .comment_delimiters("<#", "#>")
        .build();
    own.unwrap_or(braces)
}

fn reason(error: &minijinja::Error) -> String {
    let detail = error.detail().map(one_line);
    match (error.kind(), detail) {
        (ErrorKind::InvalidOperation, Some(detail)) => detail,
        (kind, Some(detail)) => format!("{kind}: {detail}"),
        (kind, None) => kind.to_string(),
    }
}
