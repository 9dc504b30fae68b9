//! Figures as files: the same to the byte, sound XML, and they say what they show.

use crate::stdout_of;
use axlewright_core::topic::TOPICS;
use axlewright_tests::{python, run_in};
use axlewright_widgets::visual::{VISUALS, View, Visual};
use serde_json::Value;
use std::collections::BTreeSet;
use std::path::Path;

/// Every figure that the program draws: topic, view, SVG.
fn figures(folder: &Path, more: &[&str]) -> Vec<(&'static str, &'static str, Vec<u8>)> {
    let mut figures = Vec::new();
    for topic in TOPICS {
        let views = Visual::of(topic).unwrap().views;
        for view in View::ALL {
            let has = views.contains(&view);
            let view = view.word();
            let arguments = [
                &["figure", topic.name, "--view", view, "-o", "figure.svg"],
                more,
            ]
            .concat();
            let run = run_in(folder, &arguments);
            if has {
                assert_eq!(run.code, Some(0), "{arguments:?}: {}", run.stderr);
                assert_eq!(run.stdout, "", "{arguments:?}");
                figures.push((
                    topic.name,
                    view,
                    std::fs::read(folder.join("figure.svg")).unwrap(),
                ));
                std::fs::remove_file(folder.join("figure.svg")).unwrap();
            } else {
                // A topic need not have every view; then it says so.
                assert_eq!(run.code, Some(2), "{arguments:?}: {}", run.stderr);
                assert!(run.stderr.contains(view), "{arguments:?}: {}", run.stderr);
            }
        }
    }
    figures
}

#[test]
fn figures_are_the_same_to_the_byte() {
    let folder = tempfile::tempdir().unwrap();
    let one = figures(folder.path(), &[]);
    let other = figures(folder.path(), &[]);
    assert_eq!(one.len(), other.len());
    for ((topic, view, one), (_, _, other)) in one.iter().zip(&other) {
        assert!(one == other, "{topic}, {view}: two runs differ");
    }
    let different: BTreeSet<_> = one.iter().map(|(_, _, svg)| svg).collect();
    assert_eq!(different.len(), one.len(), "two figures are the same");
    for visual in VISUALS {
        let of_topic = one.iter().filter(|(name, ..)| *name == visual.topic.name);
        assert_eq!(
            of_topic.count(),
            visual.views.len(),
            "{}",
            visual.topic.name
        );
    }
    // Another car, another picture.
    for (topic, view, svg) in figures(folder.path(), &["--set", "vehicle.base=moraine"]) {
        let first = one
            .iter()
            .find(|(t, v, _)| (*t, *v) == (topic, view))
            .unwrap();
        assert!(
            first.2 != svg,
            "{topic}, {view}: the figure does not show its car"
        );
    }
}

#[test]
fn figures_are_xml_and_say_what_they_show() {
    let folder = tempfile::tempdir().unwrap();
    for (topic, view, svg) in figures(folder.path(), &[]) {
        let case = format!("{topic}, {view}");
        let text = String::from_utf8(svg).unwrap();
        let said: Value = serde_json::from_str(&python("svg.py", &text)).unwrap();
        assert_eq!(said["root"], true, "{case}");
        let (title, description) = (&said["title"][0], &said["desc"][0]);
        let title = title.as_str().unwrap_or_default();
        let description = description.as_str().unwrap_or_default();
        assert!(title.len() > 10, "{case}: title {title:?}");
        assert!(
            description.len() > 40,
            "{case}: description {description:?}"
        );
        assert_eq!(said["title"].as_array().unwrap().len(), 1, "{case}");
        assert_eq!(said["role"], "img", "{case}");
        assert_eq!(said["labels_known"], true, "{case}");
        assert_eq!(
            said["outside"],
            serde_json::json!([]),
            "{case}: refers outside"
        );
        assert_eq!(said["scripts"], 0, "{case}: carries a script");
        assert_eq!(said["numbers"], true, "{case}: a number is not finite");
        let alt = stdout_of(&["figure", topic, "--view", view, "--alt"]);
        assert!(
            alt.contains(title) && alt.contains(description),
            "{case}: {alt}"
        );
    }
}

#[test]
fn a_png_is_drawn_and_is_the_same_to_the_byte() {
    let folder = tempfile::tempdir().unwrap();
    let draw = |name: &str| {
        let run = run_in(
            folder.path(),
            &["figure", "traction", "--scale", "1", "-o", name],
        );
        assert_eq!(run.code, Some(0), "{}", run.stderr);
        std::fs::read(folder.path().join(name)).unwrap()
    };
    let one = draw("one.png");
    assert_eq!(&one[..8], b"\x89PNG\r\n\x1a\n");
    assert!(one == draw("two.png"), "two runs differ");
}

#[test]
fn an_output_is_replaced_whole_and_a_failure_leaves_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let output = folder.path().join("figure.svg");
    std::fs::write(&output, "the old figure").unwrap();
    let run = run_in(folder.path(), &["figure", "traction", "-o", "figure.svg"]);
    assert_eq!(run.code, Some(0), "{}", run.stderr);
    assert!(
        std::fs::read_to_string(&output)
            .unwrap()
            .ends_with("</svg>\n")
    );
    // A folder stands where the file should go: the machine's failure, told in one line.
    std::fs::create_dir(folder.path().join("taken.svg")).unwrap();
    for name in ["taken.svg", "no/such/folder.svg"] {
        let run = run_in(folder.path(), &["figure", "traction", "-o", name]);
        assert_eq!(run.code, Some(1), "{name}: {}", run.stderr);
        assert_eq!(run.stderr.lines().count(), 1, "{name}: {}", run.stderr);
        assert!(run.stderr.contains(name), "{name}: {}", run.stderr);
    }
    let mut left: Vec<_> = std::fs::read_dir(folder.path())
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    left.sort();
    assert_eq!(left, ["figure.svg", "taken.svg"]);
}
