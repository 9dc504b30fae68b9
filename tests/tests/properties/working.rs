//! The working cannot lie: every step evaluates to the number that was answered.

use crate::scenarios::{Reach, config, whole};
use axlewright_core::Scenario;
use axlewright_core::topic::{ReadingValue, Report, TOPICS, Topic};
use axlewright_core::words::{self, Lang};
use axlewright_core::working::{Expression, Function, Kind, Operator, Step};
use axlewright_tests::{assert_equal_relative, show};
use proptest::test_runner::TestRunner;

/// Value of an expression and the size that its round-off is measured by: where two large numbers
/// leave a small difference, theirs.
fn value_and_size(expression: &Expression, step: &Step) -> (f64, f64) {
    let of = |inner: &Expression| value_and_size(inner, step);
    match expression {
        Expression::Number(value) => (*value, value.abs()),
        Expression::Symbol(name) => {
            let known = step.inputs.iter().find(|q| q.symbol == *name);
            let known = known
                .unwrap_or_else(|| panic!("{} has no value: {}", name, step.text(Lang::English)));
            (known.value, known.value.abs())
        }
        Expression::Negative(inner) => {
            let (value, size) = of(inner);
            (-value, size)
        }
        Expression::Square(inner) => {
            let (value, size) = of(inner);
            (value * value, size * value.abs())
        }
        Expression::Call(function, inner) => {
            let (value, size) = of(inner);
            match function {
                Function::Sin => (value.sin(), size),
                Function::Cos => (value.cos(), 1.0),
                Function::Atan => (value.atan(), size),
                Function::Sqrt => (value.sqrt(), size / value.sqrt().max(1e-300)),
                Function::Abs => (value.abs(), size),
            }
        }
        Expression::Pair(operator, left, right) => {
            let ((a, size_a), (b, size_b)) = (of(left), of(right));
            match operator {
                Operator::Add => (a + b, size_a.max(size_b)),
                Operator::Sub => (a - b, size_a.max(size_b)),
                Operator::Mul => (a * b, (size_a * b.abs()).max(size_b * a.abs())),
                Operator::Div => {
                    let by = b.abs().max(1e-300);
                    (a / b, (size_a / by).max(size_b * a.abs() / by / by))
                }
                Operator::Min => (a.min(b), size_a.max(size_b)),
            }
        }
    }
}

fn steps_hold(report: &Report) {
    for step in &report.steps {
        let case = format!(
            "{}, {}",
            step.text_with_numbers(Lang::English),
            show(&report.scenario)
        );
        let Some(value) = step.evaluate() else {
            panic!("a symbol has no value: {case}");
        };
        let relative = match step.kind {
            Kind::Computed => 1e-12,
            Kind::Satisfied => 1e-9,
        };
        // Where large numbers leave nothing, as the load of a lifting axle, nothing is round-off.
        let (_, size) = value_and_size(&step.expression, step);
        let size = size * 2e-15 / relative;
        let pair = (value, step.result.value);
        assert_equal_relative("a step", &case, pair, relative, size);
        for key in [step.about, step.source] {
            assert!(
                words::find(Lang::English, key).is_some(),
                "no words for {key}"
            );
        }
    }
}

/// Every number can be opened: its last step gives just that number, and what each step uses was
/// given or computed before.
fn every_number_opens(report: &Report) {
    for reading in &report.readings {
        let ReadingValue::Number(number) = reading.value else {
            continue;
        };
        let derivation = report.derivation(&reading.path);
        let Some(last) = derivation.last() else {
            panic!(
                "{} has no derivation: {}",
                reading.path,
                show(&report.scenario)
            );
        };
        assert_eq!(last.path, reading.path);
        assert_eq!(
            last.result.value.to_bits(),
            number.to_bits(),
            "{}: the working gives {}, the answer {number}",
            reading.path,
            last.result.value
        );
        for step in &derivation {
            for symbol in step.expression.symbols() {
                let known = step.inputs.iter().any(|q| q.symbol == symbol);
                assert!(known, "{}: {symbol} is not known", step.text(Lang::English));
            }
        }
    }
}

fn for_topic(name: &str, reach: Reach, cases: u32, without: &'static [&'static str]) {
    let topic: &'static Topic = TOPICS.iter().find(|t| t.name == name).unwrap();
    let mut runner = TestRunner::new(config(cases));
    let outcome = runner.run(&whole(topic, reach, without), |scenario: Scenario| {
        if let Ok(report) = topic.report(&scenario) {
            steps_hold(&report);
            every_number_opens(&report);
        }
        Ok(())
    });
    if let Err(error) = outcome {
        panic!("{name}, {reach:?}: {error}");
    }
}

#[test]
fn load_transfer_usual() {
    for_topic("load_transfer", Reach::Usual, 500, &[]);
}

#[test]
fn load_transfer_accepted() {
    for_topic("load_transfer", Reach::Accepted, 500, &[]);
}

#[test]
fn traction_usual() {
    for_topic("traction", Reach::Usual, 250, &[]);
}

#[test]
fn traction_usual_ideal_split() {
    for_topic("traction", Reach::Usual, 250, &["traction.front_share"]);
}

/// The textbook's own case: no air, no rolling resistance, one friction.
#[test]
fn traction_textbook() {
    for_topic("traction", Reach::Usual, 250, TEXTBOOK);
}

#[test]
fn traction_accepted() {
    for_topic("traction", Reach::Accepted, 250, &[]);
}

#[test]
fn motor_split_usual() {
    for_topic("motor_split", Reach::Usual, 60, &[]);
}

#[test]
fn motor_split_accepted() {
    for_topic("motor_split", Reach::Accepted, 60, &[]);
}

#[test]
fn launch_usual() {
    for_topic("launch", Reach::Usual, 40, &[]);
}

#[test]
fn launch_accepted() {
    for_topic("launch", Reach::Accepted, 20, &[]);
}

#[test]
fn idle_drag_usual() {
    for_topic("idle_drag", Reach::Usual, 40, &[]);
}

#[test]
fn idle_drag_accepted() {
    for_topic("idle_drag", Reach::Accepted, 40, &[]);
}

#[test]
fn cornering_usual() {
    for_topic("cornering", Reach::Usual, 40, &["surface.grade"]);
}

#[test]
fn cornering_accepted() {
    for_topic("cornering", Reach::Accepted, 20, &["surface.grade"]);
}

#[test]
fn turn_in_place_usual() {
    for_topic("turn_in_place", Reach::Usual, 250, &["surface.grade"]);
}

#[test]
fn turn_in_place_accepted() {
    for_topic("turn_in_place", Reach::Accepted, 250, &["surface.grade"]);
}

#[test]
fn packaging_usual() {
    for_topic("packaging", Reach::Usual, 250, &[]);
}

#[test]
fn packaging_accepted() {
    for_topic("packaging", Reach::Accepted, 250, &[]);
}

#[test]
fn choice_usual() {
    for_topic("choice", Reach::Usual, 6, &["choice.least_range"]);
}

/// One track, a CG that may lie midway: the closed forms.
#[test]
fn turn_in_place_even() {
    let topic = *TOPICS.iter().find(|t| t.name == "turn_in_place").unwrap();
    for (wheelbase, track, friction) in [(2.9, 1.65, 0.8), (2.46, 1.48, 0.95), (4.0, 1.2, 0.07)] {
        let mut scenario = Scenario::default();
        for (path, value) in [
            ("vehicle.mass", 2500.0),
            ("vehicle.wheelbase", wheelbase),
            ("vehicle.cg_to_front_axle", 0.5 * wheelbase),
            ("vehicle.track_front", track),
            ("vehicle.wheel_radius", 0.33),
            ("surface.friction_sliding", friction),
        ] {
            scenario.set_number(path, value).unwrap();
        }
        let report = topic.report(&scenario).unwrap();
        steps_hold(&report);
        every_number_opens(&report);
    }
}

const TEXTBOOK: &[&str] = &[
    "surface.grade",
    "traction.speed",
    "vehicle.base",
    "vehicle.rolling_resistance",
    "vehicle.tyre_load_sensitivity",
    "surface.friction_peak_left",
    "surface.friction_peak_right",
    "traction.front_axle_type",
    "traction.rear_axle_type",
    "traction.motor_limit",
];
