//! The program `axlewright`: what it prints is what the core computes, what it draws is the same to the
//! byte and says what it shows, and files are written whole or not at all.
#![allow(
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test stops where a value is missing"
)]

mod figures;
mod help;
mod languages;
mod notebook;
mod plot;
mod print;
mod study;

use axlewright_core::Scenario;
use axlewright_core::topic::{ReadingValue, TOPICS, Topic};
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_tests::{assert_equal_relative, run, run_in};
use serde_json::Value;

fn stdout_of(arguments: &[&str]) -> String {
    let run = run(arguments);
    assert_eq!(run.code, Some(0), "{arguments:?}: {}", run.stderr);
    run.stdout
}

/// The value at a dotted path.
fn at<'a>(json: &'a Value, path: &str) -> &'a Value {
    path.split('.').fold(json, |value, part| &value[part])
}

/// Asserts that a JSON answer holds just what the core answers.
fn same_as_core(topic: &'static Topic, scenario: &Scenario, json: &Value) {
    let report = topic.report(scenario).unwrap();
    for reading in &report.readings {
        let got = at(json, &reading.path);
        match &reading.value {
            ReadingValue::Number(want) => {
                let got = got.as_f64().unwrap_or(f64::NAN);
                assert_equal_relative(&reading.path, topic.name, (got, *want), 1e-15, 0.0);
            }
            ReadingValue::Word(word) => assert_eq!(got.as_str(), Some(*word), "{}", reading.path),
            ReadingValue::Flag(flag) => assert_eq!(got.as_bool(), Some(*flag), "{}", reading.path),
            ReadingValue::Sentence(sentence) => {
                let text = sentence.text(Lang::English, System::Si);
                assert_eq!(got.as_str(), Some(&*text), "{}", reading.path);
            }
            ReadingValue::Layout(layout) => assert_eq!(got.as_str(), Some(layout.name())),
        }
    }
    assert_eq!(at(json, "topic").as_str(), Some(topic.name));
    let steps = json["working"].as_array().unwrap();
    assert_eq!(steps.len(), report.steps.len());
    for (got, want) in steps.iter().zip(&report.steps) {
        assert_eq!(
            got["equation"].as_str(),
            Some(want.text(Lang::English).as_str())
        );
        let value = got["result"]["value"].as_f64().unwrap_or(f64::NAN);
        let pair = (value, want.result.value);
        assert_equal_relative(&want.text(Lang::English), topic.name, pair, 1e-15, 0.0);
    }
}

#[test]
fn json_holds_the_numbers_of_the_core() {
    for topic in TOPICS {
        for base in axlewright_core::vehicle::DEMO_NAMES {
            let set = format!("vehicle.base={base}");
            let printed = stdout_of(&["answer", topic.name, "--set", &set, "--format", "json"]);
            let json: Value = serde_json::from_str(&printed).unwrap();
            let mut scenario = topic.example().unwrap();
            scenario.set("vehicle.base", base).unwrap();
            same_as_core(topic, &scenario, &json);
            // The scenario comes along, and gives the same answer again.
            let folder = tempfile::tempdir().unwrap();
            let again = folder.path().join("again.json");
            std::fs::write(&again, json["scenario"].to_string()).unwrap();
            let path = again.to_str().unwrap();
            assert_eq!(
                stdout_of(&["answer", topic.name, path, "--format", "json"]),
                printed
            );
        }
    }
}

#[test]
fn hyphens_and_underscores_are_the_same() {
    for topic in TOPICS {
        let (hyphens, underscores) = (topic.slug(), topic.name);
        for format in ["text", "json", "csv", "markdown"] {
            let one = stdout_of(&["answer", &hyphens, "--format", format]);
            assert_eq!(one, stdout_of(&["answer", underscores, "--format", format]));
            assert!(!one.trim().is_empty());
        }
        let one = stdout_of(&["schema", &hyphens]);
        assert_eq!(one, stdout_of(&["schema", underscores]));
    }
}

/// Textbook cases as printed: a scenario that gives only what the topic needs is enough.
#[test]
fn textbook_cases_need_only_what_is_printed() {
    let folder = tempfile::tempdir().unwrap();
    for (topic, text, path, want, rounding) in [
        // J1, Jazar, ch. 2 (read): 2 × 2916.5 N
        (
            "load-transfer",
            "[vehicle]\nmass = \"890 kg\"\nwheelbase = \"2.35 m\"\ncg_to_front_axle = \"0.78 m\"\n",
            "front_axle_load",
            5833.0,
            1.0,
        ),
        // G2c, Gillespie, ch. 2 (memory): 1087 lbf
        (
            "traction",
            "[vehicle]\nmass = \"3100 lb\"\nwheelbase = \"105 in\"\ncg_to_front_axle = \"38.951613 in\"\n\
             cg_height = \"19 in\"\n[surface]\nfriction_peak = 0.62\n",
            "limits.F1.tractive_force",
            1087.0 * 4.448_221_615,
            4.5,
        ),
        // D1 (derived)
        (
            "turn_in_place",
            "[vehicle]\nmass = 2500\nwheelbase = 2.9\ncg_to_front_axle = 1.45\ntrack_front = 1.65\n\
             [surface]\nfriction_sliding = 0.8\n",
            "tractive_force_per_wheel",
            4263.0,
            0.5,
        ),
    ] {
        let file = folder.path().join("case.toml");
        std::fs::write(&file, text).unwrap();
        let printed = stdout_of(&["answer", topic, file.to_str().unwrap(), "--format", "json"]);
        let json: Value = serde_json::from_str(&printed).unwrap();
        let got = at(&json, path).as_f64().unwrap_or(f64::NAN);
        assert!(
            (got - want).abs() <= rounding,
            "{topic} {path}: got {got}, want {want} ± {rounding}"
        );
    }
}

#[test]
fn settings_go_on_top_of_the_file_and_toml_says_what_json_says() {
    let folder = tempfile::tempdir().unwrap();
    let toml = folder.path().join("case.toml");
    let json = folder.path().join("case.json");
    std::fs::write(&toml, "[vehicle]\nbase = \"esker\"\nmass = \"2 t\"\n").unwrap();
    std::fs::write(
        &json,
        "{\"vehicle\": {\"base\": \"esker\", \"mass\": \"2 t\"}}",
    )
    .unwrap();
    let (toml, json) = (toml.to_str().unwrap(), json.to_str().unwrap());
    let answer = |file: &str, more: &[&str]| {
        stdout_of(&[&["answer", "load-transfer", file, "--format", "json"], more].concat())
    };
    assert_eq!(answer(toml, &[]), answer(json, &[]));
    let changed = answer(toml, &["--set", "vehicle.mass=4 t"]);
    let load = |text: &str| {
        let json: Value = serde_json::from_str(text).unwrap();
        json["front_axle_load"].as_f64().unwrap()
    };
    let pair = (load(&changed), 2.0 * load(&answer(toml, &[])));
    assert_equal_relative("front axle load", "twice the mass", pair, 1e-12, 0.0);
}

/// Splits a line of CSV (RFC 4180) into its cells.
fn cells(line: &str) -> Vec<String> {
    let mut cells = vec![String::new()];
    let mut quoted = false;
    for letter in line.chars() {
        match letter {
            '"' => quoted = !quoted,
            ',' if !quoted => cells.push(String::new()),
            other => cells.last_mut().unwrap().push(other),
        }
    }
    cells
}

#[test]
fn csv_has_a_row_for_each_reading() {
    for topic in TOPICS {
        let printed = stdout_of(&["answer", topic.name, "--format", "csv"]);
        let lines: Vec<&str> = printed.split_terminator("\r\n").collect();
        let readings = topic.solve(&topic.example().unwrap()).unwrap();
        assert_eq!(lines.len(), readings.len() + 1, "{}", topic.name);
        for (line, reading) in lines[1..].iter().zip(&readings) {
            let cells = cells(line);
            assert_eq!(cells.len(), 4, "{line}");
            assert_eq!(cells[0], reading.path);
            if let ReadingValue::Number(want) = reading.value {
                let got: f64 = cells[2].parse().unwrap();
                assert_equal_relative(&reading.path, "CSV", (got, want), 1e-15, 0.0);
            }
        }
    }
}

#[test]
fn text_and_markdown_show_every_equation() {
    for topic in TOPICS {
        let report = topic.report(&topic.example().unwrap()).unwrap();
        let text = stdout_of(&["answer", topic.name]);
        let markdown = stdout_of(&["answer", topic.name, "--format", "markdown"]);
        for step in &report.steps {
            let equation = step.expression.text(&|_| None, Lang::English);
            assert!(
                text.contains(&equation),
                "{}: {equation} is not in the text",
                topic.name
            );
            let latex = step.expression.latex(&|_| None, Lang::English);
            assert!(
                markdown.contains(&latex),
                "{}: {latex} is not in the Markdown",
                topic.name
            );
        }
        // In LaTeX a zero over something is "{0}" too.
        assert!(!text.contains("{0}"), "{text}");
        for printed in [&text, &markdown] {
            assert!(!printed.contains("NaN"), "{printed}");
        }
    }
}

#[test]
fn a_new_scenario_answers_and_the_schemas_are_json() {
    let folder = tempfile::tempdir().unwrap();
    for topic in TOPICS {
        let file = format!("{}.toml", topic.name);
        let run = run_in(folder.path(), &["new", &file, "--topic", topic.name]);
        assert_eq!(run.code, Some(0), "{}", run.stderr);
        let answered = run_in(
            folder.path(),
            &["answer", topic.name, &file, "--format", "json"],
        );
        assert_eq!(answered.code, Some(0), "{file}: {}", answered.stderr);
        let json: Value = serde_json::from_str(&answered.stdout).unwrap();
        same_as_core(topic, &topic.example().unwrap(), &json);
        let schema: Value = serde_json::from_str(&stdout_of(&["schema", topic.name])).unwrap();
        for reading in topic.solve(&topic.example().unwrap()).unwrap() {
            let mut place = &schema["properties"]["answer"];
            for part in reading.path.split('.') {
                let named = &place["properties"][part];
                place = if named.is_null() {
                    &place["additionalProperties"]
                } else {
                    named
                };
            }
            assert!(
                place["type"].is_string(),
                "{}: {} is not in the schema",
                topic.name,
                reading.path
            );
        }
    }
    let all: Value = serde_json::from_str(&stdout_of(&["schema"])).unwrap();
    assert_eq!(
        all["properties"]["vehicle"]["properties"]["mass"]["x-unit"],
        "kg"
    );
}
