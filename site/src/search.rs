//! The index of the site's search, in the form that MiniSearch writes and loads.
//!
//! It is built here so that a reader's machine only looks up. `site/theme/search.js` cuts a search into
//! words as [`words`] does; a test compares the whole index with one that MiniSearch made.

use crate::html::Section;
use crate::pages::Page;
use serde_json::{Map, Value, json};
use std::collections::BTreeMap;

/// The file of the index, a classic script: a page from the file system may not fetch.
pub const INDEX: &str = "search-index.js";

/// Longest text that is shown with a result.
pub const EXCERPT: usize = 180;

/// Whether the search looks through a page: one of the menus, or a lesson plan.
#[must_use]
pub fn looks_through(page: &Page) -> bool {
    let listed = &page.listed;
    (!listed.section.is_empty() || listed.series == "lesson") && listed.slug != "search"
}

/// A section of a page, to be found.
#[derive(Clone, Debug)]
pub struct Entry {
    /// Address: `traction.html#the-idea`.
    pub address: String,
    /// Title of the page.
    pub page: String,
    /// The section.
    pub section: Section,
}

/// The words of a text, in lower case: letters and figures of any script.
pub fn words(text: &str) -> impl Iterator<Item = String> + '_ {
    text.split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
}

/// What is searched in an entry: its heading with the page's title, and its text.
fn fields(entry: &Entry) -> [String; 2] {
    let title = format!("{} {}", entry.section.heading, entry.page);
    [title, entry.section.text.clone()]
}

/// The index as data.
#[must_use]
pub fn index(entries: &[Entry]) -> Value {
    let mut terms: BTreeMap<String, [BTreeMap<usize, u32>; 2]> = BTreeMap::new();
    let mut average = [0.0_f64; 2];
    let mut lengths = Map::new();
    let mut stored = Map::new();
    let mut ids = Map::new();
    for (at, entry) in entries.iter().enumerate() {
        let mut length = [0_usize; 2];
        for (field, text) in fields(entry).iter().enumerate() {
            let mut distinct: Vec<String> = words(text).collect();
            for word in &distinct {
                let places = terms.entry(word.clone()).or_default();
                *places[field].entry(at).or_default() += 1;
            }
            distinct.sort_unstable();
            distinct.dedup();
            length[field] = distinct.len();
            // A running mean, in the order in which MiniSearch keeps it.
            average[field] =
                (average[field] * at as f64 + distinct.len() as f64) / (at as f64 + 1.0);
        }
        lengths.insert(at.to_string(), json!(length));
        ids.insert(at.to_string(), json!(at));
        stored.insert(
            at.to_string(),
            json!({
                "address": entry.address,
                "page": entry.page,
                "heading": entry.section.heading,
                "excerpt": excerpt(&entry.section.text),
            }),
        );
    }
    let list: Vec<Value> = terms
        .into_iter()
        .map(|(term, fields)| {
            let mut places = Map::new();
            for (field, counts) in fields.iter().enumerate() {
                if !counts.is_empty() {
                    let counts: Map<String, Value> = counts
                        .iter()
                        .map(|(at, count)| (at.to_string(), json!(count)))
                        .collect();
                    places.insert(field.to_string(), counts.into());
                }
            }
            json!([term, places])
        })
        .collect();
    json!({
        "documentCount": entries.len(),
        "nextId": entries.len(),
        "documentIds": ids,
        "fieldIds": { "title": 0, "text": 1 },
        "fieldLength": lengths,
        "averageFieldLength": average,
        "storedFields": stored,
        "dirtCount": 0,
        "index": list,
        "serializationVersion": 2,
    })
}

/// The script that holds the index.
#[must_use]
pub fn script(entries: &[Entry]) -> String {
    // In a string literal it is parsed quicker than as code.
    let text = Value::from(index(entries).to_string()).to_string();
    format!(
        "globalThis.SEARCH_INDEX = {};\n",
        text.replace("</", "<\\/")
    )
}

/// The beginning of a text, cut at a word.
fn excerpt(text: &str) -> String {
    if text.chars().count() <= EXCERPT {
        return text.into();
    }
    let cut: String = text.chars().take(EXCERPT).collect();
    let end = cut.rfind(' ').unwrap_or(cut.len());
    format!("{} …", &cut[..end])
}
