//! In what a pinned scenario differs from the present one, in words.

use axlewright_core::input::{self, Input, Kind};
use axlewright_core::topic::Topic;
use axlewright_core::units::System;
use axlewright_core::words::{self, Lang};
use axlewright_core::{Scenario, format};

/// An input that differs.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Difference {
    /// The input.
    pub path: &'static str,
    /// What it is.
    pub label: String,
    /// Its pinned value.
    pub pinned: String,
    /// Its present value.
    pub present: String,
}

/// The inputs of a topic that one of the two scenarios gives and that differ as people read them.
#[must_use]
pub fn differences(
    topic: &Topic,
    pinned: &Scenario,
    present: &Scenario,
    lang: Lang,
    system: System,
) -> Vec<Difference> {
    let given = |input: &&Input| {
        let gives = |scenario: &Scenario| scenario.entries().any(|(path, _)| path == input.path);
        gives(pinned) || gives(present)
    };
    topic
        .inputs()
        .filter(given)
        .map(|input| Difference {
            path: input.path,
            label: words::get(lang, &input.label_key()).into(),
            pinned: text(input, pinned, lang, system),
            present: text(input, present, lang, system),
        })
        .filter(|found| found.pinned != found.present)
        .collect()
}

/// The value of an input as people read it; a dash where there is none.
fn text(input: &Input, scenario: &Scenario, lang: Lang, system: System) -> String {
    const NONE: &str = "–";
    match &input.kind {
        Kind::Quantity { dimension, .. } => scenario.number(input.path).map_or_else(
            || NONE.into(),
            |v| format::quantity(v, *dimension, system, 3, lang),
        ),
        Kind::Choice { .. } if input.path == "layout" => scenario.layout().name().into(),
        Kind::Choice { .. } => scenario.word(input.path).map_or_else(
            || NONE.into(),
            |word| choice_text(input.path, word, lang).into(),
        ),
        // The lines of a file are no value to show in a row.
        Kind::Text { .. } => scenario.text(input.path).map_or(NONE, |_| "CSV").into(),
        Kind::Layouts => {
            let names: Vec<_> = scenario.layouts().iter().map(|l| l.name()).collect();
            names.join(" ")
        }
    }
}

/// A choice in words where the catalogue has some, or the word itself: a layout is named by its letters.
#[must_use]
pub fn choice_text<'a>(path: &str, word: &'a str, lang: Lang) -> &'a str {
    input::find(path)
        .and_then(|input| words::find(lang, &input.choice_key(word)))
        .unwrap_or(word)
}

/// The differences as one sentence: what was pinned, and what it is now.
#[must_use]
pub fn sentence(found: &[Difference], lang: Lang) -> String {
    if found.is_empty() {
        return words::get(lang, "ui.pinned_same").into();
    }
    let parts: Vec<String> = found
        .iter()
        .map(|one| {
            words::fill(
                lang,
                "ui.pinned_part",
                &[&one.label, &one.pinned, &one.present],
            )
        })
        .collect();
    words::fill(lang, "ui.pinned", &[&parts.join("; ")])
}

/// A short name for a file that shows a scenario: `traction-corrie-r1-side`.
#[must_use]
pub fn file_name(topic: &Topic, scenario: &Scenario, what: &str) -> String {
    let mut name = topic.slug();
    name.push('-');
    name.push_str(scenario.word("vehicle.base").unwrap_or("own-vehicle"));
    if input::find("layout").is_some_and(|i| topic.inputs.contains(&i.path)) {
        name.push('-');
        name.push_str(&scenario.layout().name().to_ascii_lowercase());
    }
    name.push('-');
    name + what
}

#[cfg(test)]
mod tests {
    use super::*;
    use axlewright_core::traction;

    fn scenario(pairs: &[(&str, &str)]) -> Scenario {
        let mut scenario = Scenario::default();
        for (path, text) in pairs {
            scenario.set(path, text).unwrap();
        }
        scenario
    }

    #[test]
    fn only_what_differs_is_told() {
        let pinned = scenario(&[("vehicle.base", "esker"), ("layout", "R1")]);
        let mut present = pinned.clone();
        let found = |present: &Scenario| {
            differences(
                &traction::TOPIC,
                &pinned,
                present,
                Lang::English,
                System::Si,
            )
        };
        assert_eq!(found(&present), Vec::new());
        present.set("vehicle.cg_height", "0.9 m").unwrap();
        present.set("layout", "F1").unwrap();
        let two = found(&present);
        let paths: Vec<_> = two.iter().map(|d| d.path).collect();
        assert_eq!(paths, ["vehicle.cg_height", "layout"]);
        // The pinned value comes from the demo vehicle, which the pinned scenario names.
        assert_eq!(two[0].pinned, "0.540\u{2009}m");
        assert_eq!(two[1].pinned, "R1");
        assert!(sentence(&two, Lang::English).contains("0.900\u{2009}m"));
    }

    #[test]
    fn every_choice_has_words() {
        for input in input::INPUTS.iter().filter(|input| input.path != "layout") {
            let Kind::Choice { words: choices, .. } = input.kind else {
                continue;
            };
            for word in choices {
                let key = input.choice_key(word);
                assert!(words::find(Lang::English, &key).is_some(), "{key}");
            }
        }
    }

    #[test]
    fn a_file_is_named_by_what_it_shows() {
        let own = scenario(&[("vehicle.mass", "900 kg")]);
        assert_eq!(
            file_name(&traction::TOPIC, &own, "chart"),
            format!(
                "traction-own-vehicle-{}-chart",
                own.layout().name().to_ascii_lowercase()
            )
        );
        let demo = scenario(&[("vehicle.base", "corrie")]);
        assert_eq!(
            file_name(&axlewright_core::load_transfer::TOPIC, &demo, "side"),
            "load-transfer-corrie-side"
        );
    }
}
