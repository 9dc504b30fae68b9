//! Whatever is asked, a topic answers with finite numbers or refuses with one clear line.

use crate::scenarios::{Reach, config, partial};
use axlewright_core::topic::TOPICS;
use axlewright_core::words::Lang;
use axlewright_core::{Scenario, input};
use axlewright_tests::answers_or_refuses;
use proptest::prelude::*;

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
            "cornering",
            "turn_in_place",
            "idle_drag",
            "packaging",
            "choice"
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

/// A steady turn is solved many times for one answer.
#[test]
fn cornering_answers_or_refuses() {
    for_topic("cornering", 100);
}

#[test]
fn turn_in_place_answers_or_refuses() {
    for_topic("turn_in_place", 1000);
}

#[test]
fn idle_drag_answers_or_refuses() {
    for_topic("idle_drag", 60);
}

#[test]
fn packaging_answers_or_refuses() {
    for_topic("packaging", 1000);
}

/// Every layout is launched and driven over the cycle, and each input is varied.
#[test]
fn choice_answers_or_refuses() {
    for_topic("choice", 8);
}

/// What a topic does not list among its inputs has no part in its answer.
#[test]
fn only_declared_inputs_change_an_answer() {
    for topic in TOPICS {
        let example = topic.example().unwrap();
        let before = topic.solve(&example).unwrap();
        let mut tried = 0;
        for input in input::INPUTS {
            if topic.inputs.contains(&input.path) {
                continue;
            }
            let text = match &input.kind {
                input::Kind::Quantity { usual, .. } => {
                    let mut other = example.clone();
                    other
                        .set_number(input.path, 0.7 * usual.0 + 0.3 * usual.1)
                        .unwrap();
                    other.text(input.path).unwrap().to_owned()
                }
                input::Kind::Choice { words, .. } => (*words.last().unwrap()).to_owned(),
                _ => continue,
            };
            let mut other = example.clone();
            other.set(input.path, &text).unwrap();
            let after = topic.solve(&other);
            assert_eq!(
                after.as_ref(),
                Ok(&before),
                "{}: {} = {text}",
                topic.name,
                input.path
            );
            tried += 1;
        }
        assert!(tried > 20, "{}: {tried}", topic.name);
    }
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
