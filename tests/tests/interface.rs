//! The generated documents of the interface, judged by other people's programs: the TypeScript compiler,
//! the schema of the manifest's format, and a JSON Schema validator.
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "in a test, stopping is the right answer"
)]

use axlewright_core::topic::TOPICS;
use axlewright_core::{Scenario, schema};
use axlewright_site::interface::{MANIFEST, TYPES, documents};
use axlewright_tests::{file, node};
use axlewright_widgets::element::interface;
use axlewright_widgets::visual::{VISUALS, View};
use serde_json::{Value, json};
use std::process::Command;

fn document(path: &str) -> String {
    let all = documents("0.0.0").unwrap();
    let found = all.into_iter().find(|asset| asset.path == path);
    found.unwrap_or_else(|| panic!("no {path}")).content
}

/// What the validator says of each document.
fn complaints(questions: &[(Value, Value)]) -> Vec<Vec<String>> {
    let answers = node("validate.mjs", &serde_json::to_string(questions).unwrap());
    let answers: Vec<Vec<String>> = serde_json::from_str(&answers).unwrap();
    assert_eq!(answers.len(), questions.len());
    answers
}

#[test]
fn the_compiler_accepts_a_page_that_uses_the_types() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join(TYPES), document(TYPES)).unwrap();
    for name in ["page.ts", "tsconfig.json"] {
        std::fs::copy(file("interface").join(name), folder.path().join(name)).unwrap();
    }
    let compiler = file("node_modules/.bin/tsc");
    let run = Command::new(&compiler)
        .arg("--project")
        .arg(folder.path())
        .output()
        .unwrap_or_else(|e| panic!("{}: {e}; `bash tests/run` installs it", compiler.display()));
    let told = String::from_utf8_lossy(&run.stdout);
    assert!(run.status.success(), "{told}");
}

#[test]
fn types_and_manifest_tell_the_views_of_each_topic_and_the_element_of_talks() {
    let types = document(TYPES);
    let manifest: Value = serde_json::from_str(&document(MANIFEST)).unwrap();
    let classes = manifest["modules"][0]["declarations"].as_array().unwrap();
    for visual in VISUALS {
        let figures = visual.views.iter().filter(|view| **view != View::Chart);
        let mut words: Vec<&str> = figures.map(|view| view.word()).collect();
        words.sort_unstable();
        let sorted = |list: &str, between: &str| {
            let mut words: Vec<String> = list.split(between).map(str::to_owned).collect();
            words.sort();
            words
        };
        let tag = visual.topic.tag();
        let class = classes
            .iter()
            .find(|class| class["tagName"] == tag)
            .unwrap();
        let attributes = class["attributes"].as_array().unwrap();
        let view = attributes.iter().find(|a| a["name"] == "view").unwrap();
        assert_eq!(
            sorted(view["type"]["text"].as_str().unwrap(), " | "),
            words,
            "{tag}"
        );
        let (_, element) = types.split_once(&format!("`<{tag}>`")).unwrap();
        let (_, set) = element.split_once("set view(value: ").unwrap();
        let (set, _) = set.split_once(" | null").unwrap();
        assert_eq!(sorted(&set.replace('"', ""), " | "), words, "{tag}");
        let (_, markup) = types
            .split_once(&format!("\"{tag}\": AxleAttributes & {{"))
            .unwrap();
        let (_, taken) = markup.split_once("\"view\"?: ").unwrap();
        let (taken, _) = taken.split_once(';').unwrap();
        assert_eq!(sorted(&taken.replace('"', ""), " | "), words, "{tag}");
    }
    let talk = &manifest["modules"][1]["declarations"][0];
    assert_eq!(talk["tagName"], "axle-talk");
    let told = |list: &str| talk[list].as_array().unwrap().len();
    assert_eq!(told("attributes"), interface::talk::ATTRIBUTES.len());
    assert_eq!(told("members"), interface::talk::MEMBERS.len());
    assert_eq!(told("events"), interface::talk::EVENTS.len());
    assert_eq!(told("cssParts"), interface::talk::PARTS.len());
}

#[test]
fn the_manifest_follows_its_format() {
    let manifest: Value = serde_json::from_str(&document(MANIFEST)).unwrap();
    // The format takes a class that is no element too, and then looks at no attribute: so each element is
    // held against the definition of elements besides.
    let format = json!("custom-elements-manifest/schema.json#");
    let of_element =
        json!("custom-elements-manifest/schema.json#/definitions/CustomElementDeclaration");
    let element = &manifest["modules"][0]["declarations"][0];
    let mut broken = (manifest.clone(), element.clone());
    broken.0["modules"][0]["exports"][0]["declaration"] = json!(7);
    broken.1["attributes"][0]["name"] = json!(7);
    let found = complaints(&[(format.clone(), broken.0), (of_element.clone(), broken.1)]);
    assert!(found.iter().all(|told| !told.is_empty()), "{found:?}");
    let mut questions = vec![(format, manifest.clone())];
    let classes = manifest["modules"][0]["declarations"].as_array().unwrap();
    for topic in TOPICS {
        let class = classes
            .iter()
            .find(|class| class["tagName"] == topic.tag())
            .unwrap_or_else(|| panic!("no {}", topic.tag()));
        questions.push((of_element.clone(), class.clone()));
        let listed: Vec<&str> = class["attributes"]
            .as_array()
            .unwrap()
            .iter()
            .filter_map(|attribute| attribute["name"].as_str())
            .collect();
        assert_eq!(listed, axlewright_widgets::element::attributes(topic));
    }
    questions.push((
        of_element,
        manifest["modules"][1]["declarations"][0].clone(),
    ));
    for told in complaints(&questions) {
        assert_eq!(told, Vec::<String>::new());
    }
}

#[test]
fn the_schemas_accept_real_scenarios_and_answers_and_refuse_wrong_ones() {
    let mut questions = Vec::new();
    let mut wanted = Vec::new();
    for topic in TOPICS {
        let schema = serde_json::to_value(schema::of_topic(topic)).unwrap();
        let report = topic.report(&topic.example().unwrap()).unwrap();
        let scenario = serde_json::to_value(report.scenario.to_tree()).unwrap();
        let whole = serde_json::to_value(report.to_tree()).unwrap();
        let brief = serde_json::to_value(report.numbers_tree()).unwrap();
        assert!(whole["working"].as_array().is_some_and(|w| !w.is_empty()));
        let mut ask = |document: Value, accepted: bool| {
            questions.push((schema.clone(), document.clone()));
            wanted.push((accepted, format!("{}: {document:.400}", topic.name)));
        };
        ask(json!({ "scenario": scenario }), true);
        ask(json!({ "answer": whole, "scenario": scenario }), true);
        ask(json!({ "answer": brief }), true);
        ask(
            json!({ "scenario": { "layouts": "F1 R1" } }),
            topic.inputs.contains(&"layouts"),
        );
        ask(
            json!({ "scenario": { "vehicle": { "mass": 1850 } } }),
            topic.inputs.contains(&"vehicle.mass"),
        );
        // A wrong field, a wrong word, a wrong kind, a number out of range.
        ask(
            json!({ "scenario": { "vehicle": { "weight": "1 t" } } }),
            false,
        );
        ask(
            json!({ "scenario": { "vehicle": { "base": "lorry" } } }),
            false,
        );
        ask(
            json!({ "scenario": { "vehicle": { "wheelbase": true } } }),
            false,
        );
        ask(
            json!({ "scenario": { "vehicle": { "wheelbase": -1 } } }),
            false,
        );
        let change = |field: &str, value: Value| {
            let mut answer = whole.clone();
            *answer
                .pointer_mut(field)
                .unwrap_or_else(|| panic!("no {field}")) = value;
            json!({ "answer": answer })
        };
        ask(change("/topic", json!("flight")), false);
        ask(change("/working/0/result/value", json!("much")), false);
        ask(change("/working/0/inputs", json!({})), false);
        ask(
            change("/scenario", json!({ "vehicle": { "base": "lorry" } })),
            false,
        );
        for output in topic.outputs {
            let wild = output.name.replace('*', "F2R2").replace('.', "/");
            if whole.pointer(&format!("/{wild}")).is_some() {
                ask(change(&format!("/{wild}"), json!([])), false);
            }
        }
        let mut strange = whole.clone();
        strange["opinion"] = json!(1);
        ask(json!({ "answer": strange }), false);
    }
    for ((accepted, case), found) in wanted.iter().zip(complaints(&questions)) {
        assert_eq!(found.is_empty(), *accepted, "{case}: {found:?}");
    }
}

#[test]
fn every_starter_file_follows_its_schema() {
    let mut questions = Vec::new();
    for topic in TOPICS {
        let table: toml::Table = schema::starter(topic).parse().unwrap();
        let starter = serde_json::to_value(table).unwrap();
        let tree: axlewright_core::Tree = serde_json::from_value(starter.clone()).unwrap();
        assert!(Scenario::from_tree(&tree).is_ok());
        let schema = serde_json::to_value(schema::of_topic(topic)).unwrap();
        questions.push((schema, json!({ "scenario": starter })));
    }
    for (topic, found) in TOPICS.iter().zip(complaints(&questions)) {
        assert_eq!(found, Vec::<String>::new(), "{}", topic.name);
    }
}
