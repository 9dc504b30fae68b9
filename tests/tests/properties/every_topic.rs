//! Whatever is asked, a topic answers with finite numbers or refuses with one clear line.

use crate::scenarios::{Reach, config, partial};
use axlewright_core::topic::{ReadingValue, TOPICS, Topic};
use axlewright_core::words::{self, Lang};
use axlewright_core::{Problem, Scenario, input};
use axlewright_tests::show;
use proptest::prelude::*;

fn answers_or_refuses(topic: &'static Topic, scenario: &Scenario) {
    let case = show(scenario);
    match topic.report(scenario) {
        Ok(report) => {
            assert!(!report.readings.is_empty(), "{}: no reading", topic.name);
            for reading in &report.readings {
                let output = &topic.outputs[reading.output];
                assert_eq!(reading.path, output.name.replace('*', reading.layout));
                match &reading.value {
                    ReadingValue::Number(n) => {
                        assert!(n.is_finite(), "{}: {n}: {case}", reading.path)
                    }
                    ReadingValue::Word(word) => {
                        let key = format!("reason.{word}");
                        let found = words::find(Lang::English, &key);
                        assert!(found.is_some(), "{}: no words for {key}", reading.path);
                    }
                    ReadingValue::Flag(_) => {}
                }
            }
            for step in &report.steps {
                let value = step.result.value;
                assert!(
                    value.is_finite(),
                    "{} = {value}: {case}",
                    step.text_with_numbers(Lang::English)
                );
            }
        }
        Err(problem) => refuses_clearly(topic, &problem),
    }
}

fn refuses_clearly(topic: &Topic, problem: &Problem) {
    let sentence = problem.to_string();
    assert!(
        !sentence.trim().is_empty() && !sentence.contains('\n'),
        "{sentence:?}"
    );
    assert!(!sentence.contains('{'), "an unfilled place: {sentence}");
    for word in ["NaN", "inf"] {
        assert!(!sentence.contains(word), "{sentence}");
    }
    let field = problem.field();
    assert!(
        input::find(field).is_some(),
        "{}: no field {field:?}",
        topic.name
    );
    assert!(sentence.contains(field), "{sentence}");
    assert!(sentence.contains(problem.value()), "{sentence}");
    let allowed = problem.allowed(Lang::English);
    assert!(
        !allowed.is_empty() && sentence.contains(&allowed),
        "{sentence}"
    );
}

/// Runs a property for each topic by its name, so that a failure names the topic.
fn for_topic(name: &str, cases: u32) {
    let topic = *TOPICS.iter().find(|t| t.name == name).unwrap();
    for reach in [Reach::Usual, Reach::Accepted] {
        let mut runner = proptest::test_runner::TestRunner::new(config(cases));
        let outcome = runner.run(&partial(topic, reach), |scenario| {
            answers_or_refuses(topic, &scenario);
            Ok(())
        });
        if let Err(error) = outcome {
            panic!("{name}, {reach:?}: {error}");
        }
    }
}

#[test]
fn every_topic_is_tried() {
    let names: Vec<_> = TOPICS.iter().map(|t| t.name).collect();
    assert_eq!(
        names,
        [
            "load_transfer",
            "traction",
            "motor_split",
            "launch",
            "turn_in_place"
        ]
    );
}

#[test]
fn load_transfer_answers_or_refuses() {
    for_topic("load_transfer", 1000);
}

#[test]
fn traction_answers_or_refuses() {
    for_topic("traction", 1000);
}

#[test]
fn motor_split_answers_or_refuses() {
    for_topic("motor_split", 100);
}

/// A run takes a thousand times as long as a closed form.
#[test]
fn launch_answers_or_refuses() {
    for_topic("launch", 40);
}

#[test]
fn turn_in_place_answers_or_refuses() {
    for_topic("turn_in_place", 1000);
}

proptest! {
    #![proptest_config(config(500))]

    /// A number that is not finite, or beyond the range, is refused by its name.
    #[test]
    fn numbers_out_of_range_are_refused_by_name(
        at in 0..input::INPUTS.len(),
        beyond in prop_oneof![Just(f64::NAN), Just(f64::INFINITY), Just(-f64::INFINITY), Just(1e9), Just(-1e9)],
    ) {
        let input = &input::INPUTS[at];
        if let input::Kind::Quantity { accepted, .. } = input.kind {
            let inside = accepted.0 <= beyond && beyond <= accepted.1;
            let outcome = Scenario::default().set_number(input.path, beyond);
            prop_assert_eq!(outcome.is_ok(), inside);
            if let Err(problem) = outcome {
                prop_assert_eq!(problem.field(), input.path);
                prop_assert!(problem.to_string().contains(&problem.allowed(Lang::English)));
            }
        }
    }
}
