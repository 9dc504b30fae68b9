//! The language catalogue: every string that a person reads, one file per language.
//!
//! English is always here; in the browser, the words of a part of the wasm come with the part. The other
//! languages are fetched by a browser when a page needs them and handed in with [`add`]; everywhere else
//! they are compiled in.

mod catalogue;
#[cfg(not(target_arch = "wasm32"))]
mod de;
mod en;
#[cfg(not(target_arch = "wasm32"))]
mod es;
mod home;

pub use catalogue::{add, add_english, english_of, english_size, has, text};
pub use home::of as home;

use catalogue::{find_english, find_in, lines};

/// A language of the catalogue.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Lang {
    /// English, complete, and what other languages fall back to.
    #[default]
    English,
    /// German.
    German,
    /// Spanish.
    Spanish,
}

impl Lang {
    /// Every language.
    pub const ALL: [Self; 3] = [Self::English, Self::German, Self::Spanish];

    /// The language whose tag (BCP 47) has the same primary subtag as the given one, in any case;
    /// English when none has: "de-AT" is German, "fr" is English.
    #[must_use]
    pub fn from_tag(tag: &str) -> Self {
        Self::known(tag).unwrap_or_default()
    }

    /// As [`Lang::from_tag`]; `None` when the catalogue has no such language.
    #[must_use]
    pub fn known(tag: &str) -> Option<Self> {
        let primary = tag.split(['-', '_']).next().unwrap_or("");
        Self::ALL
            .into_iter()
            .find(|lang| lang.tag().eq_ignore_ascii_case(primary))
    }

    /// Tag (BCP 47) of this language.
    #[must_use]
    pub fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
            Self::Spanish => "es",
        }
    }

    /// What stands between the whole part of a number and its decimals.
    ///
    /// The SI Brochure (9th edition, 5.4.4) and ISO 80000-1, both from memory, leave it to the language.
    /// They part thousands by a thin space in all of them, never by a point or a comma.
    #[must_use]
    pub fn decimal_mark(self) -> char {
        match self {
            Self::English => '.',
            Self::German | Self::Spanish => ',',
        }
    }
}

/// The text of a key, or `None` where the catalogue has none. What a language lacks is English.
#[must_use]
pub fn find(lang: Lang, key: &str) -> Option<&'static str> {
    let own = match lang {
        Lang::English => None,
        other => find_in(text(other), key),
    };
    own.or_else(|| find_english(key))
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
    lines(text(lang)).map(|(key, _)| key)
}

#[cfg(test)]
mod tests;
