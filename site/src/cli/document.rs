//! The commands `fill` and `mdbook`.

use super::figure::write;
use super::{Failure, print};
use axlewright_site::document::{fill, preprocess};
use std::io::{self, Read};
use std::path::Path;

/// Fills a document.
pub(super) fn fill_file(document: &Path, output: Option<&Path>) -> Result<(), Failure> {
    let text = std::fs::read_to_string(document).map_err(|error| {
        Failure::Input(format!("{} cannot be read: {error}", document.display()))
    })?;
    let folder = |path: &Path| match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder.to_path_buf(),
        _ => Path::new(".").to_path_buf(),
    };
    let sources = folder(document);
    let out = output.map_or_else(|| sources.clone(), folder);
    let filled = fill(document, &text, &sources, &out).map_err(Failure::input)?;
    match output {
        Some(path) => write(path, filled.as_bytes()),
        None => print(&filled),
    }
}

/// Speaks with the builder of a book: says that it serves any renderer, or fills the book.
pub(super) fn mdbook(asked: &[String]) -> Result<(), Failure> {
    if asked.first().is_some_and(|word| word == "supports") {
        return Ok(());
    }
    if !asked.is_empty() {
        return Err(Failure::Input(format!(
            "mdbook = \"{}\" is not known; allowed: supports RENDERER, or nothing",
            asked.join(" ")
        )));
    }
    let mut input = String::new();
    io::stdin()
        .read_to_string(&mut input)
        .map_err(Failure::machine)?;
    let book = preprocess(&input).map_err(Failure::input)?;
    print(&serde_json::to_string(&book).map_err(Failure::machine)?)
}
