//! The program's talk commands, and the talks of the site.
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "in a test, stopping is the right answer"
)]

use axlewright_core::talk::{STARTER, Talk};
use axlewright_core::units::System;
use axlewright_core::{Scenario, Tree, words};
use axlewright_tests::run;
use std::path::PathBuf;

fn talks() -> Vec<PathBuf> {
    let folder = axlewright_tests::file("../site/talks");
    let mut found: Vec<PathBuf> = std::fs::read_dir(folder)
        .expect("the talks")
        .map(|entry| entry.expect("a talk").path())
        .collect();
    found.sort();
    assert!(found.len() >= 3, "{found:?}");
    found
}

#[test]
fn a_fault_is_refused_by_step_and_field_and_nothing_is_written() {
    let folder = tempfile::tempdir().unwrap();
    let talk = folder.path().join("talk.toml");
    let html = folder.path().join("talk.html");
    std::fs::write(
        &talk,
        STARTER.replace("rear_to_front_ratio:2", "rear_to_frnt_ratio"),
    )
    .unwrap();
    let (talk, html) = (talk.to_str().unwrap(), html.to_str().unwrap());
    for arguments in [
        vec!["talk", "check", talk],
        vec!["talk", "build", talk, "-o", html],
    ] {
        let done = run(&arguments);
        assert_eq!(done.code, Some(2), "{arguments:?}");
        let wanted = "Step 2: question: \"rear_to_frnt_ratio\" is not a value of this step; the nearest is \"rear_to_front_ratio\".";
        assert!(done.stderr.contains(wanted), "{}", done.stderr);
        assert_eq!(done.stderr.lines().count(), 1, "{}", done.stderr);
    }
    assert!(!std::path::Path::new(html).exists());
}

#[test]
fn a_new_talk_does_not_replace_a_file_and_can_be_given_as_it_is() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("talk.toml");
    let path = path.to_str().unwrap();
    assert_eq!(run(&["talk", "new", path]).code, Some(0));
    assert_eq!(
        run(&["talk", "new", path]).code,
        Some(2),
        "it is there already"
    );
    let done = run(&["talk", "check", path]);
    assert_eq!((done.code, done.stderr.as_str()), (Some(0), ""));
}

#[test]
fn what_is_no_talk_is_refused_in_one_line() {
    let folder = tempfile::tempdir().unwrap();
    for (name, text) in [
        ("empty.toml", String::new()),
        ("prose.toml", "Once upon a time.".into()),
        ("list.json", "[1, 2]".into()),
        ("deep.json", "[".repeat(100_000)),
        ("steps.toml", "title = \"T\"\nsteps = 3\n".into()),
    ] {
        let path = folder.path().join(name);
        std::fs::write(&path, text).unwrap();
        let done = run(&["talk", "check", path.to_str().unwrap()]);
        assert_eq!(done.code, Some(2), "{name}");
        assert_eq!(
            done.stderr.trim_end().lines().count(),
            1,
            "{name}: {}",
            done.stderr
        );
    }
    let done = run(&["talk", "check", "/nowhere/talk.toml"]);
    assert_eq!(done.code, Some(2), "{}", done.stderr);
}

/// A sentence that is to be spoken must be sayable in one breath.
const LONGEST_WORDS: usize = 36;

#[test]
fn every_talk_of_the_site_can_be_spoken() {
    for path in talks() {
        let text = std::fs::read_to_string(&path).unwrap();
        let tree: Tree = toml::from_str(&text).unwrap();
        assert_eq!(
            axlewright_widgets::talk::checked(
                &tree,
                axlewright_core::topic::find,
                axlewright_widgets::visual::Visual::of
            )
            .1,
            Vec::new(),
            "{}",
            path.display()
        );
        let talk = Talk::from_tree(&tree).unwrap();
        for step in &talk.steps {
            let report = step.report(&Scenario::default()).unwrap();
            for lang in words::Lang::ALL {
                let said = step.said(&report, lang, System::Si).unwrap();
                let count = said.split_whitespace().count();
                let place = format!("{}, step {}: {said}", path.display(), step.number);
                assert!(
                    (5..=LONGEST_WORDS).contains(&count),
                    "{count} words. {place}"
                );
                assert!(said.ends_with(['.', '?']), "{place}");
            }
        }
    }
}

#[test]
fn the_talks_hold_no_typed_results() {
    // A figure in a sentence comes from the core; the few typed numbers are conventions of the trade.
    let conventions = ["60 mph"];
    for path in talks() {
        let text = std::fs::read_to_string(&path).unwrap();
        for line in text
            .lines()
            .filter(|line| line.starts_with("say = ") || line.starts_with("note = "))
        {
            let mut plain = String::new();
            let mut depth = 0;
            for letter in line.chars() {
                match letter {
                    '{' => depth += 1,
                    '}' => depth -= 1,
                    _ if depth == 0 => plain.push(letter),
                    _ => {}
                }
            }
            for convention in conventions {
                plain = plain.replace(convention, "");
            }
            assert!(
                !plain.contains(|c: char| c.is_ascii_digit()),
                "{}: {line}",
                path.display()
            );
        }
    }
}
