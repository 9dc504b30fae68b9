//! The script of `<axle-talk>`. It stands beside that of the elements, so that a page without a talk
//! fetches nothing of it.

use super::BuildError;
use super::script::{script_literal, strip_styles};
use super::strip::strip_script;
use axlewright_core::words::{self, Lang};
use axlewright_widgets::figure::{Role, Theme};
use std::path::Path;

/// Keys of the catalogue that the script says begin so.
const WORDS: &str = "talk.ui.";

/// The folders of the hand-written parts, and what was written by others.
const PARTS: [&str; 4] = [
    "talk/ink.js",
    "talk/handout.js",
    "talk/presenter.js",
    "talk/talk.js",
];
const READER: &str = "vendor/smol-toml.js";

/// The two scripts.
pub(super) struct TalkScripts {
    /// The module, which imports that of the elements.
    pub module: String,
    /// The classic script, which comes after that of the elements.
    pub classic: String,
}

/// Puts the scripts together from the folder of the hand-written parts.
pub(super) fn talk_scripts(folder: &Path, version: &str) -> Result<TalkScripts, BuildError> {
    let read = |name: &str| {
        let path = folder.join(name);
        std::fs::read_to_string(&path).map_err(|source| BuildError::File { path, source })
    };
    let reader = read(READER)?;
    // The licence of the reader goes wherever the reader goes.
    let licence_ends = reader.find("*/").map_or(0, |at| at + 2);
    let (licence, reader) = reader.split_at(licence_ends);
    let text = |value: &str| script_literal(&serde_json::Value::from(value));
    let own_styles = strip_styles(&(read("element.css")? + &read("talk/talk.css")?));
    let mut body = format!(
        "const VERSION = {};\nconst TALK_WORDS = {};\nconst INK_COLOURS = {};\nconst TALK_CSS = {};\nconst PAPER_CSS = {};\nconst PRESENTER_CSS = {};\n",
        text(version),
        script_literal(&talk_words()),
        script_literal(&ink_colours()),
        text(&own_styles),
        text(&strip_styles(&read("talk/paper.css")?)),
        text(&strip_styles(&read("talk/presenter.css")?)),
    );
    body += reader;
    for name in PARTS {
        body += &read(name)?;
    }
    let body = strip_script(&body);
    let banner =
        format!("/* Axlewright {version}, MIT or Apache-2.0. It holds smol-toml: */\n{licence}\n");
    Ok(TalkScripts {
        module: format!(
            "{banner}import {{ talk }} from \"./axlewright.js\";\nconst elements = {{ talk }};\n{body}"
        ),
        classic: format!(
            "{banner}(() => {{\n\"use strict\";\nconst elements = globalThis.axlewright;\n{body}}})();\n"
        ),
    })
}

/// The words of the script by language, without the beginning of their keys.
fn talk_words() -> serde_json::Value {
    let languages = Lang::ALL.into_iter().map(|lang| {
        let words: serde_json::Map<_, _> = words::keys(Lang::English)
            .filter_map(|key| {
                let name = key.strip_prefix(WORDS)?;
                Some((name.to_owned(), words::get(lang, key).into()))
            })
            .collect();
        (lang.tag().to_owned(), words.into())
    });
    serde_json::Value::Object(languages.collect())
}

/// The colours of ink in a file, which is on white paper.
fn ink_colours() -> serde_json::Value {
    let colours = [
        ("ink", Role::Ink),
        ("front", Role::Front),
        ("rear", Role::Rear),
        ("tractive", Role::Tractive),
        ("inertia", Role::Inertia),
    ];
    let colours = colours
        .into_iter()
        .map(|(name, role)| (name.to_owned(), Theme::Light.stroke(role).into()));
    serde_json::Value::Object(colours.collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn scripts() -> TalkScripts {
        let root = crate::toolchain::workspace_root().expect("the source tree");
        talk_scripts(&root.join("widgets/js"), "9.8.7").expect("the parts are there")
    }

    #[test]
    fn every_word_that_the_script_says_is_in_the_catalogue() {
        let root = crate::toolchain::workspace_root().expect("the source tree");
        let words = talk_words();
        let english = words["en"].as_object().expect("English");
        let mut said = 0;
        for name in PARTS {
            let path = root.join("widgets/js").join(name);
            let text = std::fs::read_to_string(path).expect("a part");
            for rest in text.split("words.").skip(1) {
                let word: String = rest
                    .chars()
                    .take_while(|c| c.is_ascii_lowercase() || *c == '_')
                    .collect();
                assert!(english.contains_key(&word), "{name}: words.{word}");
                said += 1;
            }
        }
        assert!(said > 20, "only {said} words were found");
        for lang in Lang::ALL {
            let count = words[lang.tag()].as_object().map(serde_json::Map::len);
            assert_eq!(count, Some(english.len()), "{}", lang.tag());
        }
    }

    #[test]
    fn the_licence_of_what_others_wrote_goes_along() {
        let TalkScripts { module, classic } = scripts();
        for script in [module, classic] {
            assert!(script.contains("SPDX-License-Identifier: BSD-3-Clause"));
            assert!(script.contains("Redistributions in binary form"));
            assert!(script.starts_with("/* Axlewright 9.8.7"));
        }
    }

    #[test]
    fn the_module_imports_its_neighbour_and_the_classic_script_nothing() {
        let TalkScripts { module, classic } = scripts();
        assert!(module.contains("from \"./axlewright.js\""));
        assert!(
            !classic.contains("import "),
            "a page from a folder cannot import"
        );
    }
}
