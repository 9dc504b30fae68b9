//! Weight transfer: forces and moments balance for every accepted input.

use crate::scenarios::{Reach, config, topic, whole, with};
use axlewright_core::load_transfer::{Question, solve};
use axlewright_core::{GRAVITY_M_S2, Scenario, topic::number_of};
use axlewright_tests::{assert_equal_relative, show};
use proptest::prelude::*;

fn balances(scenario: &Scenario) {
    let Ok(question) = Question::from_scenario(scenario) else {
        return;
    };
    let Ok(answer) = solve(&question) else {
        return;
    };
    let (chassis, air, slope) = (&question.chassis, &question.air, question.slope);
    let (m, w) = (chassis.mass_kg(), chassis.weight_n());
    let (a, b, h) = (
        chassis.cg_to_front_axle_m(),
        chassis.cg_to_rear_axle_m(),
        chassis.cg_height_m(),
    );
    let (n_f, n_r) = (answer.loads.front_n, answer.loads.rear_n);
    let case = show(scenario);
    // Across the road: nothing accelerates.
    let up = n_f + n_r + air.lift_front_n + air.lift_rear_n;
    let size = w + air.lift_front_n.abs() + air.lift_rear_n.abs();
    assert_equal_relative("forces across", &case, (up, w * slope.cos), 1e-12, size);
    // About the CG, nose up: the tractive force less rolling resistance acts at the ground.
    let along = m * question.acceleration_m_s2 + w * slope.sin + air.drag_n;
    let moment = along * h + air.drag_n * (air.drag_height_m - h) + (n_f + air.lift_front_n) * a
        - (n_r + air.lift_rear_n) * b;
    let size = size * chassis.wheelbase_m()
        + (m * question.acceleration_m_s2).abs() * h
        + (w * slope.sin).abs() * h
        + air.drag_n * (air.drag_height_m + h);
    assert_equal_relative("moments about the CG", &case, (moment, 0.0), 1e-12, size);
    assert!(n_f > 0.0 && n_r > 0.0, "an axle is off the ground: {case}");
}

proptest! {
    #![proptest_config(config(1500))]

    #[test]
    fn forces_and_moments_balance(
        scenario in prop_oneof![
            whole(topic("load_transfer"), Reach::Accepted, &[]),
            whole(topic("load_transfer"), Reach::Usual, &[]),
        ]
    ) {
        balances(&scenario);
    }

    /// At the accelerations that the topic names, what it says of them is so.
    #[test]
    fn landmarks_are_where_they_are_said_to_be(
        scenario in whole(topic("load_transfer"), Reach::Usual, &["load_transfer.acceleration"])
    ) {
        let solve = |scenario: &Scenario| topic("load_transfer").solve(scenario);
        if let Ok(readings) = solve(&scenario) {
            let weight = scenario.number("vehicle.mass").unwrap() * GRAVITY_M_S2;
            let case = show(&scenario);
            let two = number_of(&readings, "two_to_one_acceleration").unwrap();
            if (-30.0..40.0).contains(&two) {
                let there = solve(&with(&scenario, "load_transfer.acceleration", two)).unwrap();
                let load = |name| number_of(&there, name).unwrap();
                let pair = (load("rear_axle_load"), 2.0 * load("front_axle_load"));
                assert_equal_relative("rear = 2·front", &case, pair, 1e-12, weight);
            }
            let lift = number_of(&readings, "front_lift_acceleration").unwrap();
            if (-30.0..39.0).contains(&lift) {
                let above = with(&scenario, "load_transfer.acceleration", lift + 0.01);
                prop_assert!(solve(&above).is_err(), "the front axle is in the air: {}", case);
            }
        }
    }

    /// Twice the mass, twice the loads, the same ratio; without air.
    #[test]
    fn loads_scale_with_mass(
        scenario in whole(topic("load_transfer"), Reach::Usual, &["load_transfer.speed"]),
        factor in 0.1..10.0,
    ) {
        let heavy = scenario.number("vehicle.mass").unwrap() * factor;
        let heavier = with(&scenario, "vehicle.mass", heavy);
        let (Ok(light), Ok(heavy)) = (
            topic("load_transfer").solve(&scenario),
            topic("load_transfer").solve(&heavier),
        ) else {
            prop_assert_eq!(topic("load_transfer").solve(&scenario).is_ok(), topic("load_transfer").solve(&heavier).is_ok());
            return Ok(());
        };
        let weight = factor * scenario.number("vehicle.mass").unwrap() * GRAVITY_M_S2;
        for (one, other) in light.iter().zip(&heavy) {
            prop_assert_eq!(&one.path, &other.path);
            let (Some(one_n), Some(other_n)) = (number_of(&light, &one.path), number_of(&heavy, &one.path)) else {
                continue;
            };
            let is_load = one.path.ends_with("_load");
            let (want, size) = if is_load { (factor * one_n, weight) } else { (one_n, 1.0) };
            // A light axle makes a large ratio out of a small difference.
            let size = if one.path.ends_with("_ratio") { one_n * one_n } else { size };
            assert_equal_relative(&one.path, &format!("{} × {factor}", show(&scenario)), (other_n, want), 1e-11, size);
        }
    }
}
