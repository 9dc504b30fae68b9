//! Weight transfer: forces and moments balance for every accepted input, and what the page says of the
//! load that moves is so (`site/pages/load-transfer.md`).

use crate::scenarios::{Reach, config, topic, whole, with};
use axlewright_core::layout::Layout;
use axlewright_core::load_transfer::{Question, axle_loads, solve};
use axlewright_core::{GRAVITY_M_S2, Scenario, topic::number_of, traction};
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

/// Load that the acceleration moves from the front axle to the rear \[N\], told by both.
fn moved_n(scenario: &Scenario) -> Option<[f64; 2]> {
    let question = Question::from_scenario(scenario).ok()?;
    let at = |acceleration| {
        axle_loads(
            &question.chassis,
            &question.air,
            question.slope,
            acceleration,
        )
    };
    let (still, now) = (at(0.0), at(question.acceleration_m_s2));
    Some([still.front_n - now.front_n, now.rear_n - still.rear_n])
}

/// The readings that are loads or tell how the body stands; none where an axle lifts.
fn read(scenario: &Scenario, names: &[&str]) -> Option<Vec<f64>> {
    let readings = topic("load_transfer").solve(scenario).ok()?;
    Some(
        names
            .iter()
            .map(|name| number_of(&readings, name).unwrap())
            .collect(),
    )
}

const LOADS: &[&str] = &["front_axle_load", "rear_axle_load"];

proptest! {
    #![proptest_config(config(500))]

    /// "The load that moves is m·a·h/L: more for a heavier car, a higher acceleration, a higher CG or a
    /// shorter wheelbase. Nothing else has a part in it."
    #[test]
    fn the_load_that_moves_follows_mass_acceleration_height_and_wheelbase_alone(
        scenario in whole(topic("load_transfer"), Reach::Usual, &[]),
        factor in 1.0..1.5,
    ) {
        let Some([from_front, moved]) = moved_n(&scenario) else { return Ok(()); };
        let of = |path: &str| scenario.number(path).unwrap();
        let weight = of("vehicle.mass") * GRAVITY_M_S2;
        let case = format!("× {factor}: {}", show(&scenario));
        assert_equal_relative("front and rear", &case, (from_front, moved), 1e-11, weight);
        for (path, want) in [
            ("vehicle.mass", factor * moved),
            ("load_transfer.acceleration", factor * moved),
            ("vehicle.cg_height", factor * moved),
            ("vehicle.wheelbase", moved / factor),
            ("vehicle.cg_to_front_axle", moved),
            ("surface.grade", moved),
            ("load_transfer.speed", moved),
            ("vehicle.lift_area_rear", moved),
        ] {
            // A CG behind the rear axle is refused.
            let Some([_, got]) = moved_n(&with(&scenario, path, factor * of(path))) else { continue; };
            let air = 0.5 * 1.4 * 105.0 * 105.0 * 10.0;
            assert_equal_relative(path, &case, (got, want), 1e-11, weight + air);
        }
    }

    /// "Both loads are straight lines in the acceleration."
    #[test]
    fn loads_are_straight_lines_in_the_acceleration(
        scenario in whole(topic("load_transfer"), Reach::Usual, &[]),
        other in -9.0..14.0,
        share in 0.0..1.0,
    ) {
        let one = scenario.number("load_transfer.acceleration").unwrap();
        let at = |a: f64| read(&with(&scenario, "load_transfer.acceleration", a), LOADS);
        let (Some(first), Some(last)) = (at(one), at(other)) else { return Ok(()); };
        // Between two accelerations that leave both axles down no axle lifts.
        let between = at(one + share * (other - one)).unwrap();
        let weight = scenario.number("vehicle.mass").unwrap() * GRAVITY_M_S2;
        for (axle, name) in LOADS.iter().enumerate() {
            let want = first[axle] + share * (last[axle] - first[axle]);
            assert_equal_relative(name, &show(&scenario), (between[axle], want), 1e-11, weight);
        }
    }

    /// "Soft springs cause load transfer. They do not." "With springs twice as stiff it would squat half as
    /// far and carry the same loads."
    #[test]
    fn springs_set_the_squat_and_no_load(
        scenario in whole(topic("load_transfer"), Reach::Usual, &[]),
        stiffness in 0.3..4.0,
        anti in 0.0..1.0,
    ) {
        let Some(loads) = read(&scenario, LOADS) else { return Ok(()); };
        let mut stiffer = scenario.clone();
        for path in ["vehicle.ride_frequency_front", "vehicle.ride_frequency_rear"] {
            let frequency = scenario.number(path).unwrap() * f64::sqrt(stiffness);
            if stiffer.set_number(path, frequency).is_err() {
                return Ok(());
            }
        }
        let squat = ["rise_front", "drop_rear"];
        let (soft, stiff) = (read(&scenario, &squat).unwrap(), read(&stiffer, &squat).unwrap());
        for (at, name) in squat.iter().enumerate() {
            let pair = (stiff[at] * stiffness, soft[at]);
            assert_equal_relative(name, &show(&scenario), pair, 1e-12, 0.0);
        }
        let linked = with(&with(&stiffer, "vehicle.anti_lift_front", anti), "vehicle.anti_squat_rear", anti);
        let damped = with(&linked, "vehicle.damping_ratio", 0.9);
        prop_assert_eq!(read(&damped, LOADS).unwrap(), loads);
    }

    /// "It depends on which wheels drive. Not in steady acceleration": at its own limit each layout has the
    /// loads that this topic finds at that acceleration, which asks for no layout.
    #[test]
    fn the_loads_do_not_know_which_wheels_drive(
        scenario in whole(topic("traction"), Reach::Usual, &["layouts"]),
    ) {
        let Ok(question) = traction::Question::from_scenario(&scenario) else { return Ok(()); };
        let mut same = Scenario::default();
        for path in topic("load_transfer").inputs().map(|input| input.path) {
            if let Some(value) = scenario.given_number(path) {
                same.set_number(path, value).unwrap();
            }
        }
        let same = with(&same, "load_transfer.speed", scenario.number("traction.speed").unwrap());
        for layout in Layout::ALL {
            let Ok(limit) = traction::limit(&question, layout) else { continue; };
            let mut there = same.clone();
            if there.set_number("load_transfer.acceleration", limit.acceleration_m_s2).is_err() {
                continue;
            }
            // At the lift of the front axle there is no answer.
            let Some(loads) = read(&there, LOADS) else { continue; };
            let case = format!("{layout:?}: {}", show(&scenario));
            let size = question.chassis.weight_n();
            for (got, want) in loads.into_iter().zip([limit.loads.front_n, limit.loads.rear_n]) {
                assert_equal_relative("a load", &case, (got, want), 1e-12, size);
            }
        }
    }
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
