//! Documents of the interface, made from the tables that the code itself is held against: TypeScript
//! types, the custom-elements manifest, and a JSON Schema for each topic.

mod manifest;
mod types;

use crate::pages::Asset;
use axlewright_core::schema;
use axlewright_core::topic::TOPICS;
use serde::Serialize;

/// The TypeScript types of the module beside them.
pub const TYPES: &str = "axlewright.d.ts";
/// The manifest of the elements.
pub const MANIFEST: &str = "custom-elements.json";

/// Every document, with its path from the site's root.
///
/// # Errors
/// When a document cannot be written as JSON.
pub fn documents(version: &str) -> Result<Vec<Asset>, serde_json::Error> {
    let mut all = vec![
        Asset {
            path: TYPES.into(),
            content: types::types(version),
        },
        Asset {
            path: MANIFEST.into(),
            content: pretty(&manifest::manifest())?,
        },
    ];
    for topic in TOPICS {
        all.push(Asset {
            path: format!("schema/{}.json", topic.slug()),
            content: pretty(&schema::of_topic(topic))?,
        });
    }
    Ok(all)
}

fn pretty(document: &impl Serialize) -> Result<String, serde_json::Error> {
    Ok(serde_json::to_string_pretty(document)? + "\n")
}

/// Name of an attribute as a property: `friction-peak` is `frictionPeak`.
fn camel(attribute: &str) -> String {
    let mut parts = attribute.split('-');
    let first = parts.next().unwrap_or("").to_owned();
    parts.fold(first, |name, part| name + &capital(part))
}

/// Name of a topic as the beginning of a type: `load_transfer` is `LoadTransfer`.
fn pascal(name: &str) -> String {
    name.split('_').map(capital).collect()
}

fn capital(word: &str) -> String {
    let mut letters = word.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

/// Words as a union of TypeScript literals.
fn union(words: &[&str]) -> String {
    let quoted: Vec<String> = words.iter().map(|word| format!("\"{word}\"")).collect();
    quoted.join(" | ")
}
