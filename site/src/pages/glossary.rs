//! The words of the trade: one list, a page of it, and a link to it where a page first uses a word.

use super::functions::escaped;
use super::{Common, Listed};
use serde::Deserialize;

/// The page of the glossary.
pub(super) const PAGE: &str = "glossary";

/// The words, in the order of the alphabet.
#[derive(Clone, Debug, Default)]
pub struct Glossary {
    terms: Vec<Term>,
}

/// One word and what it means.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Term {
    /// The word.
    name: String,
    /// Other forms of it that a text may use; all in lower case.
    #[serde(default)]
    forms: Vec<String>,
    /// What it means.
    means: String,
    /// The page that explains it, if there is one.
    #[serde(default)]
    page: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    term: Vec<Term>,
}

impl Glossary {
    /// Reads `site/glossary.toml`.
    ///
    /// # Errors
    /// What is wrong with the text.
    pub fn read(text: &str) -> Result<Self, String> {
        let mut terms = toml::from_str::<File>(text)
            .map_err(|e| e.message().to_owned())?
            .term;
        terms.sort_by_key(|term| term.name.to_lowercase());
        for pair in terms.windows(2) {
            if let [one, other] = pair
                && one.name == other.name
            {
                return Err(format!("{} is there twice", one.name));
            }
        }
        Ok(Self { terms })
    }

    /// What is still to be linked on a page.
    pub(super) fn links(&self, page: &Listed) -> Links {
        let mut words = Vec::new();
        // The glossary does not link to itself, and a reference page is full of the words.
        if matches!(page.section.as_str(), "topics" | "start" | "use") {
            for term in &self.terms {
                let own = term.name.to_lowercase();
                for form in std::iter::once(&own).chain(&term.forms) {
                    words.push((form.clone(), anchor(&term.name)));
                }
            }
        }
        // The longest comes first: "slip angle" is not "slip".
        words.sort_by_key(|(form, _)| std::cmp::Reverse(form.chars().count()));
        Links { words }
    }
}

/// Anchor of a word on the page.
fn anchor(name: &str) -> String {
    super::anchor(name)
}

/// The words that a page has not linked yet.
pub(super) struct Links {
    words: Vec<(String, String)>,
}

impl Links {
    /// A text with the first mention of each word linked, as HTML; none if it mentions none.
    pub(super) fn linked(&mut self, text: &str) -> Option<String> {
        let mut html = String::new();
        let mut rest = text;
        let mut before: Option<char> = None;
        'text: while let Some(first) = rest.chars().next() {
            if before.is_none_or(|c| !is_part(c)) {
                for at in 0..self.words.len() {
                    let (form, anchor) = &self.words[at];
                    if let Some(length) = starts_with(rest, form) {
                        let (word, after) = rest.split_at(length);
                        html.push_str(&format!(
                            "<a class=\"term\" href=\"{PAGE}.html#{anchor}\">{}</a>",
                            escaped(word)
                        ));
                        before = word.chars().last();
                        rest = after;
                        let done = anchor.clone();
                        self.words.retain(|(_, anchor)| *anchor != done);
                        continue 'text;
                    }
                }
            }
            html.push_str(&escaped(first.encode_utf8(&mut [0; 4])));
            before = Some(first);
            rest = &rest[first.len_utf8()..];
        }
        html.contains("<a ").then_some(html)
    }
}

fn is_part(c: char) -> bool {
    c.is_alphanumeric() || c == '-'
}

/// Length of the whole word at the start of a text, whatever its case.
fn starts_with(text: &str, form: &str) -> Option<usize> {
    let mut length = 0;
    let mut left = text.chars();
    for wanted in form.chars() {
        let found = left.next()?;
        if !found.to_lowercase().eq(std::iter::once(wanted)) {
            return None;
        }
        length += found.len_utf8();
    }
    (!left.next().is_some_and(is_part)).then_some(length)
}

/// The list as HTML.
pub(super) fn list(common: &Common) -> String {
    let mut html = String::from("<dl class=\"glossary\">");
    for term in &common.glossary.terms {
        html.push_str(&format!(
            "<dt id=\"{}\">{}</dt><dd>{}",
            anchor(&term.name),
            escaped(&term.name),
            escaped(&term.means)
        ));
        let found = common
            .pages
            .iter()
            .find(|page| term.page.as_ref() == Some(&page.slug));
        if let Some(page) = found {
            html.push_str(&format!(
                " <a href=\"{}.html\">{}</a>",
                page.slug,
                escaped(&page.short)
            ));
        }
        html.push_str("</dd>");
    }
    html + "</dl>"
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_mention_is_linked_and_a_longer_word_wins() {
        let text = "[[term]]\nname = \"Slip\"\nmeans = \"a\"\n[[term]]\nname = \"Slip angle\"\nforms = [\"slip angles\"]\nmeans = \"b\"\n";
        let glossary = Glossary::read(text).unwrap();
        let page = super::super::source(
            std::path::Path::new("t.md"),
            "+++\ntitle = \"T\"\nsummary = \"S\"\norder = 1\nsection = \"topics\"\n+++\n# T\n",
            "t",
            "",
        );
        let mut links = glossary.links(&page.unwrap().listed);
        let html = links.linked("Slips & slip angles, slip, slip").unwrap();
        assert_eq!(
            html,
            "Slips &amp; <a class=\"term\" href=\"glossary.html#slip-angle\">slip angles</a>, \
             <a class=\"term\" href=\"glossary.html#slip\">slip</a>, slip"
        );
        assert!(links.linked("slip").is_none());
    }
}
