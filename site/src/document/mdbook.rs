//! Books of Markdown: the preprocessor protocol of mdBook, a general-purpose book builder.
//!
//! The builder asks `axlewright mdbook supports RENDERER`, then sends its context and the book as JSON on
//! the standard input and takes the book back. Chapters are filled as documents are; figures are written
//! into the folder of the chapter's source, which the builder copies.

use super::{FillError, fill};
use serde_json::Value;
use std::path::{Path, PathBuf};

/// Fills every chapter of a book.
///
/// # Errors
/// A [`FillError`] that names the chapter and the line.
pub fn preprocess(input: &str) -> Result<Value, FillError> {
    let unread = |reason: String| FillError {
        document: "book".into(),
        line: 0,
        reason,
    };
    let parts: Value = serde_json::from_str(input).map_err(|e| unread(e.to_string()))?;
    let (Some(context), Some(book)) = (parts.get(0), parts.get(1)) else {
        return Err(unread("it is not the context and the book as JSON".into()));
    };
    let text = |pointer: &str| context.pointer(pointer).and_then(Value::as_str);
    let root = PathBuf::from(text("/root").unwrap_or("."));
    let sources = root.join(text("/config/book/src").unwrap_or("src"));
    let mut book = book.clone();
    chapters(&mut book, &sources)?;
    Ok(book)
}

/// Fills the chapters of a part of the book, and those in them.
fn chapters(part: &mut Value, sources: &Path) -> Result<(), FillError> {
    match part {
        Value::Array(items) => items
            .iter_mut()
            .try_for_each(|item| chapters(item, sources)),
        Value::Object(fields) => {
            if let Some(chapter) = fields.get_mut("Chapter") {
                fill_chapter(chapter, sources)?;
            }
            fields
                .values_mut()
                .try_for_each(|value| chapters(value, sources))
        }
        _ => Ok(()),
    }
}

fn fill_chapter(chapter: &mut Value, sources: &Path) -> Result<(), FillError> {
    // A draft has no file.
    let Some(path) = chapter.get("path").and_then(Value::as_str) else {
        return Ok(());
    };
    let path = sources.join(path);
    let Some(content) = chapter.get("content").and_then(Value::as_str) else {
        return Ok(());
    };
    let folder = path.parent().unwrap_or(sources);
    let filled = fill(&path, content, folder, folder)?;
    chapter["content"] = Value::String(filled);
    Ok(())
}
