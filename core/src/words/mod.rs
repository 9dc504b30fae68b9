//! The language catalogue: every string that a person reads, one file per language.

mod en;

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

fn catalogue(lang: Lang) -> &'static [(&'static str, &'static str)] {
    match lang {
        Lang::English => en::WORDS,
    }
}

/// The text of a key, or `None` where the catalogue has none.
#[must_use]
pub fn find(lang: Lang, key: &str) -> Option<&'static str> {
    let words = catalogue(lang);
    words
        .binary_search_by(|(name, _)| (*name).cmp(key))
        .ok()
        .map(|at| words[at].1)
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
    while let Some(open) = rest.find('{') {
        text.push_str(&rest[..open]);
        let after = &rest[open + 1..];
        let Some(close) = after.find('}') else { break };
        let number = after[..close].parse::<usize>().ok();
        if let Some(part) = number.and_then(|n| parts.get(n)) {
            text.push_str(part);
        }
        rest = &after[close + 1..];
    }
    text.push_str(rest);
    text
}

/// Every key of a language, for tests and translators.
pub fn keys(lang: Lang) -> impl Iterator<Item = &'static str> {
    catalogue(lang).iter().map(|(key, _)| *key)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_catalogue_is_sorted_without_doubles_and_without_holes() {
        let words = catalogue(Lang::English);
        for pair in words.windows(2) {
            assert!(pair[0].0 < pair[1].0, "{} before {}", pair[0].0, pair[1].0);
        }
        for (key, text) in words {
            assert!(!text.trim().is_empty(), "{key} is empty");
        }
    }
}
