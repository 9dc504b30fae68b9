//! Each language as one text, a line for each key: `key`, tab, text.
//!
//! One text is smaller in the browser than a table of many: a table holds two addresses and two
//! lengths for each of its lines. It is also the file that a browser fetches for a language.

use super::home::is_of;
use super::{Lang, en};
use core::cmp::Ordering;

/// A list of keys and texts as one text, put together when this program is compiled: all of it, or what
/// has one home.
macro_rules! joined {
    ($words:expr, $home:expr) => {
        match core::str::from_utf8(&join::<{ size($words, $home) }>($words, $home)) {
            Ok(text) => text,
            Err(_) => "",
        }
    };
}

/// The home of whatever runs without parts.
#[cfg(not(target_arch = "wasm32"))]
const HERE: &str = super::home::ALL;
#[cfg(target_arch = "wasm32")]
const HERE: &str = super::home::MAIN;

const ENGLISH: &str = joined!(en::WORDS, HERE);

/// Length of [`english_of`].
#[must_use]
pub const fn english_size(home: &str) -> usize {
    size(en::WORDS, home)
}

/// The English words of one home, a line for each key. `english!` makes a text of it.
#[must_use]
pub const fn english_of<const SIZE: usize>(home: &str) -> [u8; SIZE] {
    join(en::WORDS, home)
}

/// The English words of a part of the wasm as one text: of a topic, or of another home.
#[macro_export]
macro_rules! english {
    ($home:expr) => {{
        const TEXT: [u8; $crate::words::english_size($home)] = $crate::words::english_of($home);
        match core::str::from_utf8(&TEXT) {
            Ok(text) => text,
            Err(_) => "",
        }
    }};
}

const fn size(words: &[(&str, &str)], home: &str) -> usize {
    let mut size = 0;
    let mut at = 0;
    while at < words.len() {
        if is_of(words[at].0, home) {
            size += words[at].0.len() + words[at].1.len() + 2;
        }
        at += 1;
    }
    size
}

const fn join<const SIZE: usize>(words: &[(&str, &str)], home: &str) -> [u8; SIZE] {
    let mut text = [0; SIZE];
    let mut end = 0;
    let mut at = 0;
    while at < words.len() {
        if is_of(words[at].0, home) {
            end = put(&mut text, end, words[at].0, b'\t');
            end = put(&mut text, end, words[at].1, b'\n');
        }
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

/// Takes the English words of a part of the wasm into use, once. Natively they are here already.
pub fn add_english(part: &'static str) {
    here::keep_english(part);
}

/// The English text of a key.
pub(super) fn find_english(key: &str) -> Option<&'static str> {
    find_in(ENGLISH, key).or_else(|| here::find_in_parts(key))
}

/// Looks for two lines far apart: a page that a server sends in place of a missing file has neither,
/// and half a file lacks one.
pub(super) fn is_whole(catalogue: &str) -> bool {
    let mut keys = ["allowed.any", "why.slope_slides"].iter();
    keys.all(|key| find_in(catalogue, key).is_some())
}

#[cfg(not(target_arch = "wasm32"))]
mod here {
    use super::{HERE, Lang, join, size};
    use crate::words::{de, es};

    const GERMAN: &str = joined!(de::WORDS, HERE);
    const SPANISH: &str = joined!(es::WORDS, HERE);

    pub(super) fn text(lang: Lang) -> &'static str {
        match lang {
            Lang::English => "",
            Lang::German => GERMAN,
            Lang::Spanish => SPANISH,
        }
    }

    /// Every language is compiled in.
    pub(super) fn keep(_lang: Lang, _catalogue: &str) {}

    /// And every word.
    pub(super) fn keep_english(_part: &'static str) {}

    pub(super) fn find_in_parts(_key: &str) -> Option<&'static str> {
        None
    }
}

#[cfg(target_arch = "wasm32")]
mod here {
    use super::{Lang, find_in};
    use std::cell::RefCell;
    use std::sync::OnceLock;

    static GIVEN: [OnceLock<&'static str>; 3] = [const { OnceLock::new() }; 3];

    thread_local! {
        static PARTS: RefCell<Vec<&'static str>> = const { RefCell::new(Vec::new()) };
    }

    pub(super) fn text(lang: Lang) -> &'static str {
        GIVEN[lang as usize].get().copied().unwrap_or("")
    }

    /// Kept for as long as this program runs, and once for a language: texts are borrowed from it.
    pub(super) fn keep(lang: Lang, catalogue: &str) {
        let _ = GIVEN[lang as usize].set(String::from(catalogue).leak());
    }

    pub(super) fn keep_english(part: &'static str) {
        PARTS.with_borrow_mut(|parts| parts.push(part));
    }

    pub(super) fn find_in_parts(key: &str) -> Option<&'static str> {
        PARTS.with_borrow(|parts| parts.iter().find_map(|text| find_in(text, key)))
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
