//! What the trade would recommend comes out of the case studies with the default weights, and goes when
//! its reason is taken away.
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "in a test, stopping is the right answer"
)]

use axlewright_core::choice::{self, Verdict};
use axlewright_core::layout::Layout;
use axlewright_core::{Scenario, input};
use axlewright_site::scenario_file;

fn case(name: &str) -> Scenario {
    let path = axlewright_tests::file(&format!("../site/cases/{name}.toml"));
    scenario_file::read(&path).expect("a case is a scenario")
}

fn recommended(scenario: &Scenario) -> Option<Layout> {
    let answer = choice::answer(scenario);
    answer.expect("a case has an answer").decision.recommended
}

/// The case, the layout that the trade would build, and the change that takes its reason away.
const CASES: &[(&str, Layout, (&str, &str))] = &[
    ("city-car", Layout::F1, ("choice.weight_room", "0")),
    ("saloon", Layout::R1, ("choice.target_time", "9 s")),
    ("sports-car", Layout::F1R1, ("choice.target_time", "5.5 s")),
    (
        "same-motor-three-times",
        Layout::F1R2,
        ("choice.target_time", "3.5 s"),
    ),
    ("utility", Layout::F2R2, ("choice.turn_in_place", "off")),
];

#[test]
fn the_trades_recommendations_come_out_and_each_flips_without_its_reason() {
    for (name, want, (path, text)) in CASES {
        let mut scenario = case(name);
        assert_eq!(recommended(&scenario), Some(*want), "{name}");
        scenario.set(path, text).unwrap();
        let without = recommended(&scenario);
        assert!(
            without.is_some() && without != Some(*want),
            "{name}: {without:?}"
        );
    }
}

/// The case files ask for things; they weigh nothing. So the weights are the defaults in all of them.
#[test]
fn no_case_brings_weights_or_costs_of_its_own() {
    for (name, ..) in CASES {
        let scenario = case(name);
        for path in choice::WEIGHTS.iter().chain(&choice::COSTS) {
            assert!(input::index(path).is_some());
            assert_eq!(scenario.text(path), None, "{name} {path}");
        }
        let vehicle: Vec<&str> = scenario.entries().map(|(path, _)| path).collect();
        let own = vehicle.iter().filter(|path| path.starts_with("vehicle."));
        assert_eq!(own.collect::<Vec<_>>(), [&"vehicle.base"], "{name}");
    }
}

/// Every layout that is refused fails the demand that it is said to fail.
#[test]
fn a_refused_layout_meets_the_brief_once_its_demand_is_dropped_or_fails_another() {
    for (name, ..) in CASES {
        let scenario = case(name);
        let answer = choice::answer(&scenario).unwrap();
        for judged in &answer.decision.judged {
            let path = match judged.verdict {
                Verdict::Meets | Verdict::DoesNotFit => continue,
                Verdict::TooSlow => "choice.target_time",
                Verdict::CannotStart => "choice.start_grade",
                Verdict::CannotTurn => "choice.turn_in_place",
                Verdict::CannotVector => "choice.torque_vectoring",
                Verdict::RangeTooShort => "choice.least_range",
            };
            let mut dropped = scenario.clone();
            dropped.unset(path);
            let again = choice::answer(&dropped).unwrap();
            let now = again.decision.of(judged.layout).unwrap().verdict;
            assert_ne!(now, judged.verdict, "{name} {:?}", judged.layout);
        }
    }
}
