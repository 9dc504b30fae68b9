//! Python: the module that comes along, and the notebook, run as a reader would run them.

use axlewright_core::Scenario;
use axlewright_core::topic::{TOPICS, find, number_of};
use axlewright_tests::{file, program};
use std::process::{Command, Output};

/// Runs Python in the folder of the module.
fn python(arguments: &[&str]) -> Output {
    Command::new("python3")
        .args(arguments)
        .current_dir(file("../site/python"))
        .env("AXLEWRIGHT_PROGRAM", program())
        .env("PYTHONDONTWRITEBYTECODE", "1")
        .output()
        .unwrap()
}

fn printed(arguments: &[&str]) -> String {
    let output = python(arguments);
    let told = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{told}");
    String::from_utf8(output.stdout).unwrap()
}

#[test]
fn the_notebook_runs_and_says_what_the_core_says() {
    let text = printed(&["notebook.py"]);
    let traction = find("traction").unwrap();
    for base in axlewright_core::vehicle::DEMO_NAMES {
        let mut scenario = Scenario::default();
        for (path, value) in [
            ("vehicle.base", *base),
            ("surface.kind", "asphalt_wet"),
            ("layouts", "F1 R1 F1R1"),
        ] {
            scenario.set(path, value).unwrap();
        }
        let readings = traction.solve(&scenario).unwrap();
        let limit =
            |layout: &str| number_of(&readings, &format!("limits.{layout}.acceleration")).unwrap();
        let gain = limit("F1R1") / limit("F1").max(limit("R1"));
        let line = format!("{base:8} {gain:.2} times");
        assert!(text.contains(&line), "{line} is not in\n{text}");
    }
    for part in [
        "vehicle.mass | -5 kg | 10\u{2009}kg",
        ", None]",
        " m\n",
        " = ",
    ] {
        assert!(text.contains(part), "{part:?} is not in\n{text}");
    }
}

#[test]
fn plain_dictionaries_go_in_and_come_out_for_every_topic() {
    let script = "import json, sys, axlewright\n\
        print(json.dumps([axlewright.answer(t, working=True) for t in sys.argv[1:]]))";
    let names: Vec<&str> = TOPICS.iter().map(|topic| topic.name).collect();
    let text = printed(&[&["-c", script], &names[..]].concat());
    let answers: Vec<serde_json::Value> = serde_json::from_str(&text).unwrap();
    for (topic, answer) in TOPICS.iter().zip(&answers) {
        crate::same_as_core(topic, &topic.example().unwrap(), answer);
    }
}

#[test]
fn a_program_that_is_not_there_is_told() {
    let output = Command::new("python3")
        .args(["-c", "import axlewright; axlewright.answer('traction')"])
        .current_dir(file("../site/python"))
        .env_remove("AXLEWRIGHT_PROGRAM")
        .env("PATH", "/usr/bin:/bin")
        .env("PYTHONDONTWRITEBYTECODE", "1")
        .output()
        .unwrap();
    let told = String::from_utf8_lossy(&output.stderr);
    assert!(
        !output.status.success() && told.contains("AXLEWRIGHT_PROGRAM"),
        "{told}"
    );
}
