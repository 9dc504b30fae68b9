//! What every answer and every refusal must be, whatever was asked. The properties and the fuzz targets
//! share it, so it knows the core alone.

use axlewright_core::topic::{ReadingValue, Report, Topic};
use axlewright_core::units::System;
use axlewright_core::words::{self, Lang};
use axlewright_core::{Problem, Scenario, input};

/// Asserts that a topic answers a scenario with finite numbers, or refuses it with one clear line.
///
/// # Panics
/// When it does neither.
pub fn answers_or_refuses(topic: &'static Topic, scenario: &Scenario) {
    match topic.report(scenario) {
        Ok(report) => {
            every_reading_has_a_value(topic, &report);
            every_step_is_finite(&report);
        }
        Err(problem) => {
            let field = problem.field();
            assert!(
                input::find(field).is_some(),
                "{}: no field {field:?}",
                topic.name
            );
            refuses_clearly(&problem);
            let sentence = problem.to_string();
            for sign in ["\n", "{", "NaN", "inf"] {
                assert!(!sentence.contains(sign), "{sign:?} in {sentence:?}");
            }
        }
    }
}

fn every_reading_has_a_value(topic: &Topic, report: &Report) {
    let case = || show(&report.scenario);
    assert!(!report.readings.is_empty(), "{}: no reading", topic.name);
    for reading in &report.readings {
        let output = &topic.outputs[reading.output];
        assert_eq!(reading.path, output.name.replace('*', reading.layout));
        match &reading.value {
            ReadingValue::Number(n) => {
                assert!(n.is_finite(), "{}: {n}: {}", reading.path, case());
            }
            ReadingValue::Word(word) => {
                let key = format!("reason.{word}");
                let found = words::find(Lang::English, &key);
                assert!(found.is_some(), "{}: no words for {key}", reading.path);
            }
            ReadingValue::Flag(_) | ReadingValue::Layout(_) => {}
            ReadingValue::Sentence(sentence) => {
                let text = sentence.text(Lang::English, System::Si);
                assert!(!text.is_empty() && !text.contains(['{', '}']), "{text}");
                for word in ["NaN", "inf "] {
                    assert!(!text.contains(word), "{text}: {}", case());
                }
            }
        }
    }
}

fn every_step_is_finite(report: &Report) {
    for step in &report.steps {
        let value = step.result.value;
        assert!(
            value.is_finite(),
            "{} = {value}: {}",
            step.text_with_numbers(Lang::English),
            show(&report.scenario)
        );
    }
}

/// Asserts that a refusal is a sentence that names field, value and what is allowed.
///
/// # Panics
/// When it is not.
pub fn refuses_clearly(problem: &Problem) {
    let sentence = problem.to_string();
    assert!(!sentence.trim().is_empty(), "{problem:?} says nothing");
    for part in [problem.field(), problem.value()] {
        assert!(sentence.contains(part), "{part:?}: {sentence}");
    }
    let allowed = problem.allowed(Lang::English);
    let is_said =
        !allowed.is_empty() || matches!(problem, Problem::Empty | Problem::UnknownField { .. });
    assert!(is_said && sentence.contains(&allowed), "{sentence}");
}

/// A scenario in one line, as it would be typed.
#[must_use]
pub fn show(scenario: &Scenario) -> String {
    let fields: Vec<String> = scenario
        .entries()
        .map(|(path, text)| format!("{path} = {text}"))
        .collect();
    fields.join("; ")
}
