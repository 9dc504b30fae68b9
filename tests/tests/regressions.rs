//! Cases that were wrong once, found by the properties, each in its smallest form.
#![allow(clippy::unwrap_used, reason = "a test stops where a value is missing")]

use axlewright_core::Scenario;
use axlewright_core::layout::Layout;
use axlewright_core::topic::{self, ReadingValue};
use axlewright_core::traction::{self, LimitedBy};
use axlewright_core::turn_in_place;
use axlewright_core::words::Lang;
use axlewright_tests::{assert_equal_relative, scenario};

fn limit(scenario: &Scenario, layout: Layout) -> Option<traction::Limit> {
    let question = traction::Question::from_scenario(scenario).unwrap();
    traction::limit(&question, layout).ok()
}

/// Load-sensitive friction falls to nothing far above the reference load. Whether that is refused or
/// answered, the motors are not to blame, and no number of the working is NaN.
#[test]
fn tyres_without_friction_slip_and_no_number_is_lost() {
    let scenario = scenario(&[
        ("vehicle.base", "esker"),
        ("vehicle.tyre_load_sensitivity", "0.5"),
        ("vehicle.tyre_reference_load", "1000 N"),
    ]);
    let Ok(report) = topic::find("traction").unwrap().report(&scenario) else {
        return;
    };
    for step in &report.steps {
        assert!(
            step.result.value.is_finite(),
            "{}",
            step.text_with_numbers(Lang::English)
        );
    }
    for layout in Layout::ALL {
        let name = layout.name();
        let path = format!("limits.{name}.tractive_force");
        let force = report.number(&path);
        assert!(force.is_some(), "{path} is missing");
        assert!(
            force.is_some_and(|f| f == 0.0 || f > 1e-6),
            "{path} is {force:?}"
        );
        let path = format!("limits.{name}.limited_by");
        let word = report.readings.iter().find(|r| r.path == path).unwrap();
        assert_ne!(word.value, ReadingValue::Word("motor_torque"), "{path}");
    }
}

/// Rolling resistance slows this car so hard that its light rear axle lifts: it has no steady state
/// with all wheels on the ground, and a limit that claims one claims a force without a load.
#[test]
fn a_rear_axle_that_lifts_while_the_car_slows_is_refused() {
    let scenario = scenario(&[
        ("vehicle.mass", "600 kg"),
        ("vehicle.wheelbase", "1.8 m"),
        ("vehicle.cg_to_front_axle", "0.001 m"),
        ("vehicle.cg_height", "5 m"),
        ("vehicle.rolling_resistance", "0.0055"),
        ("surface.friction_peak", "0.05"),
    ]);
    let got = limit(&scenario, Layout::R1);
    assert_eq!(got, None, "the rear axle pushes without a load");
}

/// The driveshaft torque of a solid axle can move no more load than the axle carries: then one wheel
/// carries it all, and with a locked differential pushes with it.
#[test]
fn a_solid_axle_moves_no_more_load_than_it_carries() {
    let scenario = scenario(&[
        ("vehicle.mass", "600 kg"),
        ("vehicle.wheelbase", "1.8 m"),
        ("vehicle.cg_to_front_axle", "0.6 m"),
        ("vehicle.cg_height", "0 m"),
        ("vehicle.track_front", "1.2 m"),
        ("vehicle.wheel_radius", "0.5 m"),
        ("vehicle.final_drive_ratio", "0.5"),
        ("vehicle.roll_stiffness_front_share", "0"),
        ("surface.friction_peak_left", "1.8"),
        ("surface.friction_peak_right", "0.05"),
        ("traction.front_axle_type", "solid"),
        ("traction.front_differential", "locked"),
    ]);
    let got = limit(&scenario, Layout::F1).unwrap();
    let axle_n = 600.0 * 9.81 * 1.2 / 1.8;
    let pair = (got.front_force_n, 1.8 * axle_n);
    assert_equal_relative(
        "force of the left wheel",
        "right wheel in the air",
        pair,
        1e-9,
        0.0,
    );
    assert_eq!(got.limited_by, LimitedBy::FrontSlip);
}

/// Where one axle's wheels stick, the others still push: both count in the balance of moments, and the
/// sticking axle takes up just what the other drags sideways.
#[test]
fn an_axle_that_sticks_takes_up_what_the_other_leaves() {
    let scenario = scenario(&[
        ("vehicle.mass", "600 kg"),
        ("vehicle.wheelbase", "3 m"),
        ("vehicle.cg_to_front_axle", "0.6 m"),
        ("vehicle.track_front", "1.7 m"),
        ("vehicle.track_rear", "1.2 m"),
        ("surface.friction_sliding", "0.8"),
    ]);
    let question = turn_in_place::Question::from_scenario(&scenario).unwrap();
    let turn = question.four_wheel_turn().unwrap();
    let case = format!("{turn:?}");
    let drive = turn.front_force_n * 1.7 + turn.rear_force_n * 1.2;
    assert_equal_relative(
        "moment",
        &case,
        (drive, turn.resisting_moment_n_m),
        1e-9,
        0.0,
    );
    let lateral = turn.front_lateral_n + turn.rear_lateral_n;
    let size = turn.rear_lateral_n.abs();
    assert_equal_relative("lateral", &case, (lateral, 0.0), 1e-9, size);
    // The working says the same.
    let report = topic::find("turn_in_place")
        .unwrap()
        .report(&scenario)
        .unwrap();
    for step in &report.steps {
        let value = step.evaluate().unwrap();
        let pair = (value, step.result.value);
        assert_equal_relative(
            "a step",
            &step.text_with_numbers(Lang::English),
            pair,
            1e-9,
            1e-9,
        );
    }
}

/// A pair must also hold its own axle against the drag of the other, so its full moment can be the
/// larger of the two and still not be enough. The reason then says just that: the two moments that are
/// shown and the verdict must not contradict each other.
#[test]
fn the_moments_shown_for_a_pair_agree_with_its_reason() {
    for (cg, reason) in [
        ("0.633 m", "pair_holds_itself"),
        ("1.1 m", "undriven_axle_holds"),
    ] {
        let scenario = scenario(&[
            ("vehicle.mass", "600 kg"),
            ("vehicle.wheelbase", "2.15 m"),
            ("vehicle.cg_to_front_axle", cg),
            ("vehicle.track_front", "1.9 m"),
            ("surface.friction_sliding", "0.8"),
            ("layouts", "F2"),
        ]);
        let report = topic::find("turn_in_place")
            .unwrap()
            .report(&scenario)
            .unwrap();
        let moment = |name: &str| report.number(&format!("layouts.F2.{name}")).unwrap();
        let (drives, holds) = (moment("driving_moment"), moment("holding_moment"));
        assert_eq!(
            drives > holds,
            reason == "pair_holds_itself",
            "{drives} N·m drive, {holds} N·m hold"
        );
        let value = |path: &str| {
            let found = report.readings.iter().find(|r| r.path == path);
            found.map(|r| r.value.clone())
        };
        assert_eq!(
            value("layouts.F2.reason"),
            Some(ReadingValue::Word(reason)),
            "CG at {cg}"
        );
        assert_eq!(
            value("layouts.F2.feasible"),
            Some(ReadingValue::Flag(false)),
            "CG at {cg}"
        );
    }
}

/// A value is told as it was given.
#[test]
fn infinity_is_not_called_something_else() {
    let problem = Scenario::default().set_number("vehicle.mass", f64::INFINITY);
    let told = problem.unwrap_err().to_string();
    assert!(!told.contains("NaN"), "{told}");
}

/// A scenario that is written and read again is the same, in whatever spelling its words were given; a fuzz
/// target found a list of layouts that was not.
#[test]
fn layouts_and_words_are_kept_in_their_own_spelling() {
    let mut scenario = Scenario::default();
    scenario.set("layouts", "F1, f1R2 r2").unwrap();
    scenario.set("layout", "f1r2").unwrap();
    let again = Scenario::from_tree(&scenario.to_tree()).unwrap();
    assert_eq!(again, scenario);
}
