//! How many motors: what the page says of the match of torque and load, and of what a further motor buys
//! (`site/pages/motor-split.md`).

use crate::scenarios::{Reach, config, topic, whole, with};
use axlewright_core::layout::Layout;
use axlewright_core::load_transfer::axle_loads;
use axlewright_core::motor_split::{Question, front_share, matching_acceleration, solve};
use axlewright_core::topic::number_of;
use axlewright_core::traction::LimitedBy;
use axlewright_core::vehicle::{AirForces, Slope};
use axlewright_core::{GRAVITY_M_S2, Scenario};
use axlewright_tests::{assert_equal_relative, show};
use proptest::prelude::*;

/// Level ground, a friction that minds no load; without a motor's torque there is no launch to run.
const LEVEL: &[&str] = &[
    "layouts",
    "surface.grade",
    "vehicle.tyre_load_sensitivity",
    "vehicle.motor_torque",
];
const NO_LAUNCH: &[&str] = &["layouts", "vehicle.motor_torque"];
/// Layouts that drive both axles.
const BOTH: [Layout; 4] = [Layout::F1R1, Layout::F1R2, Layout::F2R1, Layout::F2R2];

fn match_of(question: &Question, layout: Layout) -> f64 {
    let (front, rear) = (layout.front().motors(), layout.rear().motors());
    matching_acceleration(&question.rest.chassis, front, rear)
}

fn share_of(layout: Layout) -> f64 {
    front_share(layout.front().motors(), layout.rear().motors())
}

proptest! {
    #![proptest_config(config(500))]

    /// "So there is one acceleration at which both splits are the same. There, all tyres use the same share
    /// of their friction when every motor gives the same torque. Below it the rear tyres use more than the
    /// front ones; above it the front tyres do."
    #[test]
    fn below_the_match_the_rear_tyres_use_more_and_above_it_the_front_ones(
        scenario in whole(topic("motor_split"), Reach::Usual, LEVEL),
        away in 0.01..10.0,
    ) {
        let Ok(question) = Question::from_scenario(&scenario) else { return Ok(()); };
        let chassis = &question.rest.chassis;
        for layout in BOTH {
            let matched = match_of(&question, layout);
            let case = format!("{layout:?}: {}", show(&scenario));
            let used = |acceleration: f64| {
                let level = Slope::from_grade(0.0);
                let loads = axle_loads(chassis, &AirForces::default(), level, acceleration);
                let share = share_of(layout);
                // Of any force: its size has no part in which axle uses more.
                let on_the_ground = loads.front_n > 0.0 && loads.rear_n > 0.0;
                on_the_ground.then(|| (share / loads.front_n, (1.0 - share) / loads.rear_n))
            };
            let weight = chassis.weight_n();
            let (front, rear) = used(matched).unwrap();
            assert_equal_relative("at the match", &case, (front * weight, rear * weight), 1e-11, 1.0);
            if let Some((front, rear)) = used(matched - away) {
                prop_assert!(rear > front, "below: {}", case);
            }
            if let Some((front, rear)) = used(matched + away) {
                prop_assert!(front > rear, "above: {}", case);
            }
        }
    }

    /// The same in the solver: which tyres end it when all motors give the same torque, in proportion to
    /// their number.
    #[test]
    fn like_motors_are_ended_by_the_tyres_that_use_more(
        scenario in whole(topic("motor_split"), Reach::Usual, LEVEL)
    ) {
        let Ok(question) = Question::from_scenario(&scenario) else { return Ok(()); };
        for layout in BOTH {
            let Ok(answer) = solve(&question, layout) else { continue; };
            let (equal, matched) = (answer.equal, match_of(&question, layout));
            let case = format!("{layout:?}: {equal:?}, {matched} m/s²: {}", show(&scenario));
            let all_n = equal.front_force_n + equal.rear_force_n;
            let pair = (equal.front_force_n, share_of(layout) * all_n);
            assert_equal_relative("front force", &case, pair, 1e-12, all_n.abs());
            if (equal.acceleration_m_s2 - matched).abs() > 1e-4 {
                let wanted = if equal.acceleration_m_s2 < matched {
                    LimitedBy::RearSlip
                } else {
                    LimitedBy::FrontSlip
                };
                prop_assert_eq!(equal.limited_by, wanted, "{}", case);
            }
        }
    }

    /// "It is the acceleration at which the load is 2 : 1 on the page on weight transfer."
    #[test]
    fn one_and_two_motors_match_where_the_load_is_two_to_one(
        scenario in whole(topic("motor_split"), Reach::Usual, LEVEL)
    ) {
        let Ok(question) = Question::from_scenario(&scenario) else { return Ok(()); };
        let mut car = Scenario::default();
        for path in ["mass", "wheelbase", "cg_to_front_axle", "cg_height"] {
            let path = format!("vehicle.{path}");
            car.set_number(&path, scenario.number(&path).unwrap()).unwrap();
        }
        let matched = match_of(&question, Layout::F1R2);
        let rolling = with(&car, "load_transfer.acceleration", 0.01);
        let Ok(readings) = topic("load_transfer").solve(&rolling) else { return Ok(()); };
        let two = number_of(&readings, "two_to_one_acceleration").unwrap();
        assert_equal_relative("match", &show(&scenario), (matched, two), 1e-11, GRAVITY_M_S2);
    }

    /// "The tyres could go on to [the limit] if each motor gave just what its axle can use. With the same
    /// torque from all three the car reaches [no more]", and just as much where the friction is that of the
    /// match.
    #[test]
    fn like_motors_reach_no_more_than_a_free_split_and_as_much_at_the_match(
        scenario in whole(topic("motor_split"), Reach::Usual, LEVEL)
    ) {
        let rolling = scenario.number("vehicle.rolling_resistance").unwrap();
        let Ok(question) = Question::from_scenario(&scenario) else { return Ok(()); };
        for layout in BOTH {
            let Ok(answer) = solve(&question, layout) else { continue; };
            let case = format!("{layout:?}: {}", show(&scenario));
            let (like, free) = (answer.equal.acceleration_m_s2, answer.limit.acceleration_m_s2);
            prop_assert!(like <= free + 1e-9 * GRAVITY_M_S2, "{} > {}: {}", like, free, case);
            // All tyres slip at a = g·(μ − f_r).
            let friction = match_of(&question, layout) / GRAVITY_M_S2 + rolling;
            let mut there = scenario.clone();
            if there.set_number("surface.friction_peak", friction).is_err() {
                continue;
            }
            let Ok(answer) = solve(&Question::from_scenario(&there).unwrap(), layout) else { continue; };
            let pair = (answer.equal.acceleration_m_s2, answer.limit.acceleration_m_s2);
            assert_equal_relative("at the match", &case, pair, 1e-9, GRAVITY_M_S2);
        }
    }

    /// "A fourth motor saves [nothing]: the three already use the friction of all four tyres." "How much the
    /// axle may push depends on its load, not on how many motors push it."
    #[test]
    fn a_further_motor_on_a_driven_axle_gains_nothing_at_the_limit(
        scenario in whole(topic("motor_split"), Reach::Usual, NO_LAUNCH)
    ) {
        let Ok(question) = Question::from_scenario(&scenario) else { return Ok(()); };
        let limit_of = |layout| solve(&question, layout).ok().map(|answer| answer.limit);
        for (fewer, more) in [
            (Layout::F1R2, Layout::F2R2),
            (Layout::F1R1, Layout::F1R2),
            (Layout::F1R1, Layout::F2R1),
            (Layout::F1, Layout::F2),
            (Layout::R1, Layout::R2),
        ] {
            let case = format!("{fewer:?}, {more:?}: {}", show(&scenario));
            prop_assert_eq!(limit_of(fewer), limit_of(more), "{}", case);
        }
    }
}
