//! What the hand-written script must know: tags, topics, attributes, and its own few sentences.

use super::interface::ATTRIBUTES;
use crate::visual::VISUALS;
use axlewright_core::Tree;
use axlewright_core::topic::Topic;
use axlewright_core::words::{self, Lang};

/// Sentences that the script says before the physics is there, or after it stopped.
const SENTENCES: &[&str] = &[
    "unavailable",
    "restarted",
    "stopped",
    "scenario",
    "copied",
    "saved",
    "refused",
];

/// Every attribute of a topic's element.
#[must_use]
pub fn attributes(topic: &Topic) -> Vec<String> {
    let own = topic.inputs().map(axlewright_core::input::Input::attribute);
    let common = ATTRIBUTES.iter().map(|common| common.name.to_owned());
    common.chain(own).collect()
}

/// The table for the script: `{ elements: [{ tag, topic, attributes }], words: { en: { … } } }`.
#[must_use]
pub fn element_table() -> Tree {
    let elements = VISUALS
        .iter()
        .map(|visual| {
            let mut element = Tree::map();
            element.set("tag", Tree::text(visual.topic.tag()));
            element.set("topic", Tree::text(visual.topic.name));
            let names = attributes(visual.topic)
                .into_iter()
                .map(Tree::Text)
                .collect();
            element.set("attributes", Tree::List(names));
            element
        })
        .collect();
    let mut languages = Tree::map();
    for lang in Lang::ALL {
        let mut sentences = Tree::map();
        for name in SENTENCES {
            let text = words::get(lang, &format!("script.{name}"));
            sentences.set(name, Tree::text(text));
        }
        languages.set(lang.tag(), sentences);
    }
    let mut table = Tree::map();
    table.set("elements", Tree::List(elements));
    table.set("words", languages);
    table
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_two_attributes_of_an_element_are_the_same() {
        for visual in VISUALS {
            let mut names = attributes(visual.topic);
            let count = names.len();
            names.sort();
            names.dedup();
            assert_eq!(names.len(), count, "{}", visual.topic.name);
        }
    }

    #[test]
    fn the_script_has_all_its_sentences() {
        let table = element_table();
        for lang in Lang::ALL {
            let sentences = table.get("words").and_then(|w| w.get(lang.tag()));
            for name in SENTENCES {
                let text = sentences.and_then(|w| w.get(name));
                let want = words::get(lang, &format!("script.{name}"));
                assert!(
                    matches!(text, Some(Tree::Text(t)) if t == want && !t.is_empty()),
                    "{lang:?} {name}"
                );
            }
        }
    }
}
