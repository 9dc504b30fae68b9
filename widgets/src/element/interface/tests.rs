//! The tables against the code: what one of them has and the other lacks fails here.

use super::*;
use axlewright_core::talk::{Part, Parts};
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
        let colours = STYLES.iter().filter(|style| style.syntax == "<color>");
        colours.map(pair).collect()
    };
    let mut own = told(|s| s.light);
    // A word such as `inherit` would be about the property itself: it stands where the property is used.
    let used_with = |s: &&Style| styles.contains(&format!("var({}, {})", s.name, s.light));
    let measures: Vec<&Style> = STYLES.iter().filter(|s| s.syntax != "<color>").collect();
    let set = measures.iter().filter(|s| !used_with(s));
    own.extend(set.map(|s| (s.name.to_owned(), s.light.to_owned())));
    assert!(measures.iter().any(used_with), "the font is the page's");
    assert_eq!(block(":host {"), own);
    assert_eq!(
        block(":host(:is([theme=\"dark\"], [background=\"dark\"])) {"),
        told(|s| s.dark)
    );
    assert_eq!(block(":host(:not([theme=\"light\"])) {"), told(|s| s.dark));
    let mut used = between(&(code() + &styles), "var(--axle-", ")");
    used.extend(between(&styles, "  --axle-", ":"));
    let name = |rest: &String| format!("--axle-{}", rest.split(',').next().unwrap_or(rest));
    let used: BTreeSet<String> = used.iter().map(name).collect();
    assert_eq!(used, names(STYLES.iter().map(|s| s.name)));
}

/// The words that an attribute takes.
fn words(name: &str) -> BTreeSet<String> {
    let attribute = ATTRIBUTES.iter().find(|a| a.name == name).unwrap();
    match attribute.takes {
        Takes::Word(words) | Takes::Words(words) => names(words.iter().copied()),
        Takes::View => names(view_words(None).into_iter()),
        Takes::Text(_) => panic!("{name} takes no words"),
    }
}

#[test]
fn every_word_of_an_attribute_is_read_and_none_is_read_in_secret() {
    let read = |file: &str| fs::read_to_string(folder("src/element").join(file)).unwrap();
    assert_eq!(words("show"), between(&read("state.rs"), "has(\"", "\")"));
    // The working of a talk is no part of a figure.
    let parts = Part::ALL.into_iter();
    let parts = parts.filter(|part| Parts::FIGURE.has(*part));
    assert_eq!(words("reveal"), names(parts.map(Part::word)));
    let mut themes = between(&styles(), "[theme=\"", "\"]");
    themes.insert("auto".into());
    assert_eq!(words("theme"), themes);
    let model = read("model.rs");
    let units = model.split_once("\"units\" => {").unwrap().1;
    let units = units.split_once("\"lang\"").unwrap().0;
    let mut units = between(units, "Some(\"", "\")");
    units.insert("si".into());
    assert_eq!(words("units"), units);
    let mut views = BTreeSet::new();
    for visual in crate::visual::VISUALS {
        let figures = visual.views.iter().filter(|view| **view != View::Chart);
        let own: Vec<&str> = view_words(Some(visual.topic));
        assert_eq!(
            names(own.iter().copied()),
            names(figures.map(|view| view.word()))
        );
        assert!(!own.is_empty(), "{}", visual.topic.name);
        views.extend(names(own.into_iter()));
    }
    assert_eq!(words("view"), views);
}

/// What the script of the talks is made of, without comments.
fn talk_code() -> String {
    sources("js/talk", "js")
        .into_iter()
        .map(|(_, text)| text)
        .collect()
}

#[test]
fn every_attribute_and_part_of_a_talk_is_used_and_none_is_used_in_secret() {
    let script = fs::read_to_string(folder("js/talk/talk.js")).unwrap();
    let styles = fs::read_to_string(folder("js/talk/talk.css")).unwrap();
    let mut read = between(&script, "this.getAttribute(\"", "\")");
    read.extend(between(&script, "this.hasAttribute(\"", "\")"));
    read.extend(between(&script, " toggle(\"", "\""));
    let observed = script.split_once("observedAttributes = [").unwrap().1;
    let observed = observed.split_once(']').unwrap().0;
    read.extend(observed.split('"').skip(1).step_by(2).map(str::to_owned));
    assert_eq!(read, names(talk::ATTRIBUTES.iter().map(|a| a.name)));
    // What only the styles tell apart, with each word.
    for attribute in talk::ATTRIBUTES {
        let styled = between(&styles, &format!("[{}=\"", attribute.name), "\"]");
        let Takes::Word(words) = attribute.takes else {
            assert!(styled.is_empty(), "{}: {styled:?}", attribute.name);
            continue;
        };
        let told = names(words.iter().copied());
        let toggled = between(&script, &format!("toggle(\"{}\", \"", attribute.name), "\"");
        assert!(styled.is_subset(&told), "{}: {styled:?}", attribute.name);
        if !toggled.is_empty() {
            assert_eq!(toggled, told, "{}", attribute.name);
        }
    }
    let made = between(&talk_code(), "\"part\": \"", "\"");
    assert_eq!(made, names(talk::PARTS.iter().map(|p| p.name)));
}

#[test]
fn every_event_of_a_talk_is_sent_with_the_fields_that_are_told() {
    let code = talk_code();
    let sent = between(&code, "new CustomEvent(\"", "\"");
    assert_eq!(sent, names(talk::EVENTS.iter().map(|e| e.name)));
    for event in talk::EVENTS {
        let (_, fields) = talk::DETAILS
            .iter()
            .find(|(name, _)| *name == event.detail)
            .expect("a detail of a known type");
        let mut given = BTreeSet::new();
        for rest in code
            .split(&format!("new CustomEvent(\"{}\"", event.name))
            .skip(1)
        {
            let (_, detail) = rest.split_once("detail: { ").unwrap();
            let detail = detail.split_once(" }").unwrap().0;
            let pairs = detail.split(", ").filter_map(|pair| pair.split_once(':'));
            given.extend(pairs.map(|(name, _)| name.to_owned()));
        }
        let told = fields.iter().map(|f| f.name.trim_end_matches('?'));
        assert_eq!(given, names(told), "{}", event.name);
    }
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
        .chain(talk::ATTRIBUTES)
        .map(|a| a.help)
        .chain([talk::HELP])
        .chain(
            MEMBERS
                .iter()
                .chain(FUNCTIONS)
                .chain(talk::MEMBERS)
                .map(|m| m.help),
        )
        .chain(EVENTS.iter().chain(talk::EVENTS).map(|e| e.help))
        .chain(PARTS.iter().chain(talk::PARTS).map(|p| p.help))
        .chain(STYLES.iter().map(|s| s.help))
        .chain(
            DETAILS
                .iter()
                .chain(talk::DETAILS)
                .flat_map(|(_, fields)| fields.iter().map(|f| f.help)),
        );
    for help in helps {
        assert!(help.ends_with('.') && !help.contains("*/"), "{help}");
    }
}
