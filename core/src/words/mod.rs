//! The language catalogue: every string that a person reads, one file per language.

mod en;

use core::cmp::Ordering;

/// A language of the catalogue.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Lang {
    /// English, complete, and what other languages fall back to.
    #[default]
    English,
}

impl Lang {
    /// The language whose tag (BCP 47) is most like the given one; English when none is.
    #[must_use]
    pub fn from_tag(_tag: &str) -> Self {
        Self::English
    }

    /// Tag (BCP 47) of this language.
    #[must_use]
    pub fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
        }
    }
}

/// The catalogue as one text, a line for each key: `key`, tab, text. One text is smaller in the
/// browser than a table of many: a table holds two addresses and two lengths for each of its lines.
const ENGLISH: &str = match core::str::from_utf8(&joined::<{ size(en::WORDS) }>(en::WORDS)) {
    Ok(text) => text,
    Err(_) => "",
};

const fn size(words: &[(&str, &str)]) -> usize {
    let mut size = 0;
    let mut at = 0;
    while at < words.len() {
        size += words[at].0.len() + words[at].1.len() + 2;
        at += 1;
    }
    size
}

const fn joined<const SIZE: usize>(words: &[(&str, &str)]) -> [u8; SIZE] {
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

fn catalogue(lang: Lang) -> &'static str {
    match lang {
        Lang::English => ENGLISH,
    }
}

/// The text of a key, or `None` where the catalogue has none.
#[must_use]
pub fn find(lang: Lang, key: &str) -> Option<&'static str> {
    let text = catalogue(lang);
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

/// The text of a key. A missing key shows as an empty text; the tests see to it that none is.
#[must_use]
pub fn get(lang: Lang, key: &str) -> &'static str {
    find(lang, key).unwrap_or("")
}

/// The text of a key with `{0}`, `{1}`, … replaced.
#[must_use]
pub fn fill(lang: Lang, key: &str, parts: &[&str]) -> String {
    let mut text = String::new();
    let mut rest = get(lang, key);
    while let Some((before, after)) = rest.split_once('{') {
        text.push_str(before);
        let (number, tail) = after.split_once('}').unwrap_or((after, ""));
        if let [digit @ b'0'..=b'9'] = number.as_bytes()
            && let Some(part) = parts.get(usize::from(digit - b'0'))
        {
            text.push_str(part);
        }
        rest = tail;
    }
    text.push_str(rest);
    text
}

/// Every key of a language, for tests and translators.
pub fn keys(lang: Lang) -> impl Iterator<Item = &'static str> {
    catalogue(lang)
        .lines()
        .filter_map(|line| line.split_once('\t'))
        .map(|(key, _)| key)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_catalogue_is_sorted_without_doubles_and_without_holes() {
        for pair in en::WORDS.windows(2) {
            assert!(pair[0].0 < pair[1].0, "{} before {}", pair[0].0, pair[1].0);
        }
        for (key, text) in en::WORDS {
            assert!(!text.trim().is_empty(), "{key} is empty");
            for part in [key, text] {
                assert!(!part.contains(['\n', '\t']), "{key} breaks its line");
            }
        }
    }

    #[test]
    fn every_key_is_found_and_no_other_is() {
        for (key, text) in en::WORDS {
            assert_eq!(find(Lang::English, key), Some(*text));
            assert_eq!(find(Lang::English, &format!("{key}!")), None);
        }
        assert_eq!(keys(Lang::English).count(), en::WORDS.len());
        for key in ["", "a", "zzz", "\t", "ä"] {
            assert_eq!(find(Lang::English, key), None);
        }
    }

    #[test]
    fn parts_are_put_in_by_number() {
        let text = fill(
            Lang::English,
            "problem.field_near",
            &["vehicle.mas", "vehicle.mass"],
        );
        assert!(
            text.contains("vehicle.mas") && text.contains("vehicle.mass"),
            "{text}"
        );
        assert!(!text.contains(['{', '}']), "{text}");
    }
}
