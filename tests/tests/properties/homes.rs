//! Words that live in a part of the wasm are said by that part alone.

use axlewright_core::topic::TOPICS;
use axlewright_core::words::{self, Lang};
use std::path::{Path, PathBuf};

/// The sources of a crate; tests, questions and what only the program says are left out.
fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let name = path
            .file_name()
            .and_then(|name| name.to_str())
            .unwrap_or("");
        if ["tests.rs", "words", "question", "question.rs"].contains(&name) {
            continue;
        }
        if path.is_dir() {
            sources(&path, found);
        } else if name.ends_with(".rs") {
            found.push(path);
        }
    }
}

#[test]
fn no_topic_says_the_words_of_another() {
    let keys: Vec<&str> = words::keys(Lang::English).collect();
    let mut files = Vec::new();
    for folder in ["../core/src", "../widgets/src"] {
        sources(&axlewright_tests::file(folder), &mut files);
    }
    let mut told = 0;
    for file in files {
        let text = std::fs::read_to_string(&file).unwrap();
        let place = file.to_string_lossy().into_owned();
        let own = TOPICS.iter().find(|topic| {
            let in_folder = place.contains(&format!("/{}/", topic.name));
            in_folder || place.ends_with(&format!("/{}.rs", topic.name))
        });
        for literal in text.split('"').skip(1).step_by(2) {
            if !keys.contains(&literal) {
                continue;
            }
            let home = words::home(literal);
            if TOPICS.iter().any(|topic| topic.name == home) {
                told += 1;
                assert_eq!(
                    own.map(|topic| topic.name),
                    Some(home),
                    "{place} says {literal}, which a page has only with the topic {home}"
                );
            }
        }
    }
    assert!(told > 20, "only {told} words of topics were found");
}
