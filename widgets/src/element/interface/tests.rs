//! The tables against the code: what one of them has and the other lacks fails here.

use super::*;
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

fn folder(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(name)
}

/// The text of every file of a folder whose name has the ending.
fn sources(name: &str, ending: &str) -> Vec<(String, String)> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder(name)).unwrap() {
        let path = entry.unwrap().path();
        if path.extension().is_some_and(|e| e == ending) {
            let text = fs::read_to_string(&path).unwrap();
            found.push((path.file_name().unwrap().to_string_lossy().into(), text));
        }
    }
    assert!(!found.is_empty(), "{name} holds no {ending} file");
    found
}

/// What draws, answers and listens: all but the tables themselves.
fn code() -> String {
    let rust = sources("src/element", "rs");
    let rust = rust
        .into_iter()
        .filter(|(file, _)| !matches!(file.as_str(), "interface.rs" | "embed.rs"));
    rust.chain(sources("js", "js"))
        .map(|(_, text)| text)
        .collect()
}

fn styles() -> String {
    sources("js", "css").remove(0).1
}

/// Every text that stands between two others.
fn between(text: &str, before: &str, after: &str) -> BTreeSet<String> {
    text.split(before)
        .skip(1)
        .filter_map(|rest| rest.split_once(after))
        .map(|(found, _)| found.to_owned())
        .collect()
}

fn names<'a>(all: impl Iterator<Item = &'a str>) -> BTreeSet<String> {
    all.map(str::to_owned).collect()
}

#[test]
fn every_attribute_is_read_and_none_is_read_in_secret() {
    // Attributes of the model, then one that the script reads and one that only the styles read.
    let model = fs::read_to_string(folder("src/element/model.rs")).unwrap();
    let (_, body) = model.split_once("fn set_attribute(").unwrap();
    let (arms, _) = body.split_once("            _ => {").unwrap();
    let mut read = BTreeSet::new();
    for line in arms
        .lines()
        .filter(|line| line.starts_with("            \""))
    {
        let (names, _) = line.split_once(" =>").expect("an arm of the match");
        read.extend(names.split('"').skip(1).step_by(2).map(str::to_owned));
    }
    if code().contains("if (name === \"scenario\")") {
        read.insert("scenario".into());
    }
    let styled = between(&styles(), ":host([", "]");
    read.extend(
        styled
            .iter()
            .filter_map(|found| Some(found.split_once('=')?.0.to_owned())),
    );
    assert_eq!(read, names(ATTRIBUTES.iter().map(|a| a.name)));
}

#[test]
fn every_part_is_made_and_none_is_made_in_secret() {
    let code = code();
    let mut made = between(&code, "fixed(\"part\", \"", "\"");
    made.extend(between(&code, "setAttribute(\"part\", \"", "\""));
    made.extend(between(&code, "part=\"", "\""));
    assert_eq!(made, names(PARTS.iter().map(|p| p.name)));
    let styled = between(&styles(), "[part~=\"", "\"");
    assert!(styled.is_subset(&made), "{styled:?}");
}

#[test]
fn every_event_is_sent_and_none_is_sent_in_secret() {
    let sent: BTreeSet<String> = between(&code(), "\"axle-", "\"")
        .iter()
        .map(|rest| format!("axle-{rest}"))
        .collect();
    assert_eq!(sent, names(EVENTS.iter().map(|e| e.name)));
    for event in EVENTS {
        let known = matches!(event.detail, "Scenario" | "Answer")
            || DETAILS.iter().any(|(name, _)| *name == event.detail);
        assert!(known, "{} has a detail of no known type", event.name);
    }
}

/// Name and value of every custom property that a block of the styles sets.
fn set_in(block: &str) -> Vec<(String, String)> {
    let body = block.split_once('}').unwrap().0;
    body.split("  --")
        .skip(1)
        .map(|line| {
            let (name, rest) = line.split_once(": ").unwrap();
            let value = rest.split_once(';').unwrap().0;
            (format!("--{name}"), value.to_owned())
        })
        .collect()
}

#[test]
fn every_custom_property_has_the_value_that_is_told() {
    let styles = styles();
    let block = |head: &str| {
        let (_, body) = styles
            .split_once(head)
            .unwrap_or_else(|| panic!("no {head}"));
        set_in(body)
    };
    let told = |value: fn(&Style) -> &'static str| -> Vec<(String, String)> {
        let pair = |style: &Style| (style.name.to_owned(), value(style).to_owned());
        STYLES.iter().map(pair).collect()
    };
    assert_eq!(block(":host {"), told(|s| s.light));
    assert_eq!(
        block(":host(:is([theme=\"dark\"], [background=\"dark\"])) {"),
        told(|s| s.dark)
    );
    assert_eq!(block(":host(:not([theme=\"light\"])) {"), told(|s| s.dark));
    let mut used = between(&(code() + &styles), "var(--axle-", ")");
    used.extend(between(&styles, "  --axle-", ":"));
    let used: BTreeSet<String> = used.iter().map(|rest| format!("--axle-{rest}")).collect();
    assert_eq!(used, names(STYLES.iter().map(|s| s.name)));
}

#[test]
fn the_script_exports_what_is_told() {
    let module = fs::read_to_string(folder("js/module.js")).unwrap();
    let (_, list) = module.split_once("export const { ").unwrap();
    let mut exported: BTreeSet<String> = list
        .split_once(" }")
        .unwrap()
        .0
        .split(", ")
        .map(str::to_owned)
        .collect();
    assert!(module.contains("export default api.init;"));
    exported.insert("init".into());
    assert_eq!(exported, names(FUNCTIONS.iter().map(|f| f.name)));
}

#[test]
fn every_text_is_a_sentence() {
    let helps = ATTRIBUTES
        .iter()
        .map(|a| a.help)
        .chain(MEMBERS.iter().chain(FUNCTIONS).map(|m| m.help))
        .chain(EVENTS.iter().map(|e| e.help))
        .chain(PARTS.iter().map(|p| p.help))
        .chain(STYLES.iter().map(|s| s.help))
        .chain(
            DETAILS
                .iter()
                .flat_map(|(_, fields)| fields.iter().map(|f| f.help)),
        );
    for help in helps {
        assert!(help.ends_with('.') && !help.contains("*/"), "{help}");
    }
}
