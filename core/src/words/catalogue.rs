//! Each language as one text, a line for each key: `key`, tab, text.
//!
//! One text is smaller in the browser than a table of many: a table holds two addresses and two
//! lengths for each of its lines. It is also the file that a browser fetches for a language.

use super::{Lang, en};
use core::cmp::Ordering;

/// A list of keys and texts as one text, put together when this program is compiled.
macro_rules! joined {
    ($words:expr) => {
        match core::str::from_utf8(&join::<{ size($words) }>($words)) {
            Ok(text) => text,
            Err(_) => "",
        }
    };
}

const ENGLISH: &str = joined!(en::WORDS);

const fn size(words: &[(&str, &str)]) -> usize {
    let mut size = 0;
    let mut at = 0;
    while at < words.len() {
        size += words[at].0.len() + words[at].1.len() + 2;
        at += 1;
    }
    size
}

const fn join<const SIZE: usize>(words: &[(&str, &str)]) -> [u8; SIZE] {
    let mut text = [0; SIZE];
    let mut end = 0;
    let mut at = 0;
    while at < words.len() {
        end = put(&mut text, end, words[at].0, b'\t');
        end = put(&mut text, end, words[at].1, b'\n');
        at += 1;
    }
    text
}

const fn put(text: &mut [u8], mut end: usize, part: &str, stop: u8) -> usize {
    let mut at = 0;
    while at < part.len() {
        text[end] = part.as_bytes()[at];
        end += 1;
        at += 1;
    }
    text[end] = stop;
    end + 1
}

/// The catalogue of a language as one text; empty where it is not here.
#[must_use]
pub fn text(lang: Lang) -> &'static str {
    match lang {
        Lang::English => ENGLISH,
        other => here::text(other),
    }
}

/// Whether a language is here. Where it is not, its keys give English.
#[must_use]
pub fn has(lang: Lang) -> bool {
    !text(lang).is_empty()
}

/// Hands in the catalogue of a language, as [`text`] gave it where it was compiled in. Tells whether
/// the language is now here; a text that is no catalogue is not taken.
pub fn add(lang: Lang, catalogue: &str) -> bool {
    if is_whole(catalogue) && !has(lang) {
        here::keep(lang, catalogue);
    }
    has(lang)
}

/// Looks for two lines far apart: a page that a server sends in place of a missing file has neither,
/// and half a file lacks one.
pub(super) fn is_whole(catalogue: &str) -> bool {
    let mut keys = ["allowed.any", "why.slope_slides"].iter();
    keys.all(|key| find_in(catalogue, key).is_some())
}

#[cfg(not(target_arch = "wasm32"))]
mod here {
    use super::{Lang, join, size};
    use crate::words::{de, es};

    const GERMAN: &str = joined!(de::WORDS);
    const SPANISH: &str = joined!(es::WORDS);

    pub(super) fn text(lang: Lang) -> &'static str {
        match lang {
            Lang::English => "",
            Lang::German => GERMAN,
            Lang::Spanish => SPANISH,
        }
    }

    /// Every language is compiled in.
    pub(super) fn keep(_lang: Lang, _catalogue: &str) {}
}

#[cfg(target_arch = "wasm32")]
mod here {
    use super::Lang;
    use std::sync::OnceLock;

    static GIVEN: [OnceLock<&'static str>; 3] = [const { OnceLock::new() }; 3];

    pub(super) fn text(lang: Lang) -> &'static str {
        GIVEN[lang as usize].get().copied().unwrap_or("")
    }

    /// Kept for as long as this program runs, and once for a language: texts are borrowed from it.
    pub(super) fn keep(lang: Lang, catalogue: &str) {
        let _ = GIVEN[lang as usize].set(String::from(catalogue).leak());
    }
}

/// The text of a key in a catalogue whose lines are sorted.
pub(super) fn find_in<'a>(text: &'a str, key: &str) -> Option<&'a str> {
    let is_end = |at: usize| text.as_bytes().get(at).is_none_or(|byte| *byte == b'\n');
    let (mut low, mut high) = (0, text.len());
    while low < high {
        // The line that holds the middle.
        let mut start = low + (high - low) / 2;
        let mut end = start;
        while start > low && !is_end(start - 1) {
            start -= 1;
        }
        while !is_end(end) {
            end += 1;
        }
        let (name, found) = text.get(start..end)?.split_once('\t')?;
        match name.cmp(key) {
            Ordering::Equal => return Some(found),
            Ordering::Less => low = end + 1,
            Ordering::Greater => high = start,
        }
    }
    None
}

/// The keys and texts of a catalogue.
pub(super) fn lines(text: &'static str) -> impl Iterator<Item = (&'static str, &'static str)> {
    text.lines().filter_map(|line| line.split_once('\t'))
}
