//! Turning in place: forces, moments and energy balance; what must scale scales; where the centre goes
//! (`site/pages/turn-in-place.md`).

use crate::scenarios::{Reach, config, topic, whole, with};
use axlewright_core::layout::Layout;
use axlewright_core::planar::{Car, Controls};
use axlewright_core::turn_in_place::{
    AxleState, Question, Turn, Verdict, drilling, judge, slides_m, split_turn,
};
use axlewright_core::vehicle::DEMO_NAMES;
use axlewright_core::{Problem, Scenario};
use axlewright_tests::{assert_equal_relative, show};
use core::f64::consts::TAU;
use proptest::prelude::*;

/// Too steep a slope is refused, so it is left out; left and right are alike; the layouts are all judged.
const LEVEL: &[&str] = &[
    "surface.grade",
    "surface.friction_sliding_left",
    "surface.friction_sliding_right",
    "layouts",
];
/// The same, without a reference load that would not scale with the car.
const SCALING: &[&str] = &[
    "surface.grade",
    "surface.friction_sliding_left",
    "surface.friction_sliding_right",
    "layouts",
    "vehicle.tyre_reference_load",
];
/// Left and right as they come.
const SPLIT: &[&str] = &["surface.grade", "layouts"];

fn turn_of(scenario: &Scenario) -> Option<(Question, Turn)> {
    let question = Question::from_scenario(scenario).ok()?;
    let turn = question.four_wheel_turn().ok()?;
    Some((question, turn))
}

fn balances(scenario: &Scenario, relative: f64) {
    let Some((question, turn)) = turn_of(scenario) else {
        return;
    };
    let case = format!("{}, {turn:?}", show(scenario));
    let near = |what: &str, got: f64, want: f64, size: f64| {
        assert_equal_relative(what, &case, (got, want), relative, size);
    };
    let (front, rear) = (&question.front, &question.rear);
    let grip_n = front.friction * front.load_n + rear.friction * rear.load_n;
    // Sideways: nothing accelerates.
    near(
        "lateral",
        turn.front_lateral_n + turn.rear_lateral_n,
        0.0,
        grip_n,
    );
    // About the turning centre: left and right push against each other.
    let drive = turn.front_force_n * front.track_m + turn.rear_force_n * rear.track_m;
    let reach_m = question.chassis.wheelbase_m() + front.track_m + rear.track_m;
    near("moment", drive, turn.resisting_moment_n_m, grip_n * reach_m);
    let centre_m = turn.centre_behind_front_m;
    let rear_arm_m = question.chassis.wheelbase_m() - centre_m;
    let lateral = 2.0 * (-turn.front_lateral_n * centre_m + turn.rear_lateral_n * rear_arm_m);
    near(
        "resisting moment",
        turn.resisting_moment_n_m,
        lateral,
        grip_n * reach_m,
    );
    // Per radian: what the wheels put in is what sliding takes out.
    let wheels = 2.0
        * turn.speed_ratio_m
        * (front.speed_factor * turn.front_force_n + rear.speed_factor * turn.rear_force_n);
    let lost = turn.energy_per_turn_j / TAU;
    near(
        "energy per radian",
        wheels,
        lost,
        grip_n * turn.speed_ratio_m,
    );
    // No patch gives more than its friction.
    for (axle, along, across) in [
        (front, turn.front_force_n, turn.front_lateral_n),
        (rear, turn.rear_force_n, turn.rear_lateral_n),
    ] {
        let used = along.hypot(across);
        let has = 0.5 * axle.friction * axle.load_n;
        assert!(
            used <= has * (1.0 + 1e-9),
            "a wheel gives {used} N of {has} N: {case}"
        );
    }
    let inside = (0.0..=question.chassis.wheelbase_m()).contains(&centre_m);
    assert!(inside, "the centre is not between the axles: {case}");
}

proptest! {
    #![proptest_config(config(500))]

    #[test]
    fn usual_turns_balance(scenario in whole(topic("turn_in_place"), Reach::Usual, LEVEL)) {
        balances(&scenario, 1e-9);
    }

    #[test]
    fn all_accepted_turns_balance(
        scenario in whole(topic("turn_in_place"), Reach::Accepted, LEVEL)
    ) {
        balances(&scenario, 1e-6);
    }

    /// The geometry of the turn does not know the mass; forces and energy are in proportion to it.
    #[test]
    fn forces_scale_with_mass(
        scenario in whole(topic("turn_in_place"), Reach::Usual, SCALING),
        factor in 0.1..10.0,
    ) {
        let mass = scenario.number("vehicle.mass").unwrap() * factor;
        scales(&scenario, &with(&scenario, "vehicle.mass", mass), factor);
    }

    /// Nor the friction.
    #[test]
    fn forces_scale_with_friction(
        scenario in whole(topic("turn_in_place"), Reach::Usual, LEVEL),
        factor in 0.2..2.0,
    ) {
        let friction = scenario.number("surface.friction_sliding").unwrap() * factor;
        let other = with(&scenario, "surface.friction_sliding", friction);
        scales(&scenario, &other, factor);
    }

    /// A car seen from its other end turns the same way.
    #[test]
    fn front_and_rear_may_change_places(
        scenario in whole(topic("turn_in_place"), Reach::Usual, LEVEL)
    ) {
        let number = |path: &str| scenario.number(path).unwrap();
        let q = number("turn_in_place.front_to_rear_wheel_speed");
        let wheelbase = number("vehicle.wheelbase");
        let mut other = scenario.clone();
        for (path, value) in [
            ("vehicle.cg_to_front_axle", wheelbase - number("vehicle.cg_to_front_axle")),
            ("vehicle.track_front", number("vehicle.track_rear")),
            ("vehicle.track_rear", number("vehicle.track_front")),
            ("turn_in_place.front_to_rear_wheel_speed", 1.0 / q),
        ] {
            if other.set_number(path, value).is_err() {
                return Ok(());
            }
        }
        let (Some((_, one)), Some((_, other))) = (turn_of(&scenario), turn_of(&other)) else {
            return Ok(());
        };
        let case = show(&scenario);
        let near = |what: &str, got: f64, want: f64, size: f64| {
            assert_equal_relative(what, &case, (got, want), 1e-8, size);
        };
        near("x", other.centre_behind_front_m, wheelbase - one.centre_behind_front_m, wheelbase);
        near("κ", other.speed_ratio_m, q * one.speed_ratio_m, wheelbase);
        near("energy", other.energy_per_turn_j, one.energy_per_turn_j, 0.0);
        let size = one.front_force_n.abs() + one.rear_force_n.abs();
        near("F_f", other.front_force_n, one.rear_force_n, size);
        near("F_r", other.rear_force_n, one.front_force_n, size);
    }

    /// A driven pair must hold its own axle against the sideways drag of the other, G_o, and turns the
    /// car with what is left of its grip: t/2·√(G_d² − G_o²) against G_o·L. The solver finds just that.
    #[test]
    fn a_pair_is_feasible_exactly_when_what_is_left_of_its_grip_drags_the_other_axle(
        scenario in whole(topic("turn_in_place"), Reach::Usual, LEVEL)
    ) {
        if let Ok(question) = Question::from_scenario(&scenario) {
            for layout in Layout::ALL {
                let answer = judge(&question, layout);
                if let Some((drives, holds)) = answer.pair_moments_n_m {
                    let (driven, other) = if layout.front().motors() == 2 {
                        (&question.front, &question.rear)
                    } else {
                        (&question.rear, &question.front)
                    };
                    let grip = |axle: &AxleState| axle.friction * axle.load_n;
                    let left_sq = grip(driven).powi(2) - grip(other).powi(2);
                    let turns = 0.5 * driven.track_m * left_sq.max(0.0).sqrt();
                    let clear = (turns - holds).abs() > 1e-6 * holds;
                    let can = !matches!(answer.verdict, Verdict::OtherAxleHolds | Verdict::PairHoldsItself);
                    let case = format!("{layout:?}: {answer:?}, {}", show(&scenario));
                    prop_assert!(!clear || can == (turns > holds), "{}", case);
                    prop_assert!(!can || drives > holds, "{}", case);
                } else if layout != Layout::F2R2 {
                    prop_assert_eq!(answer.verdict, Verdict::NoCounterRotation);
                }
            }
        }
    }
}

proptest! {
    #![proptest_config(config(500))]

    /// Friction of its own left and right: forces and moments balance, and no patch gives more than it
    /// has.
    #[test]
    fn split_turns_balance(scenario in whole(topic("turn_in_place"), Reach::Usual, SPLIT)) {
        let Ok(question) = Question::from_scenario(&scenario) else {
            return Ok(());
        };
        let Ok(turn) = split_turn(&question) else {
            return Ok(());
        };
        let case = format!("{turn:?}, {}", show(&scenario));
        let grip_n: f64 = turn.grips_n.iter().sum();
        let reach_m = question.chassis.wheelbase_m() + question.front.track_m;
        let (mut along, mut across, mut moment) = (0.0, 0.0, 0.0);
        for (at, force) in turn.forces_n.iter().enumerate() {
            let axle = if at < 2 { &question.front } else { &question.rear };
            let left_m = if at % 2 == 0 { 0.5 } else { -0.5 } * axle.track_m;
            let ahead_m = if at < 2 { 0.0 } else { -question.chassis.wheelbase_m() };
            along += force.0;
            across += force.1;
            moment += ahead_m * force.1 - left_m * force.0;
            prop_assert!(force.0.hypot(force.1) <= turn.grips_n[at] * (1.0 + 1e-9), "{}", case);
        }
        // Where a patch hardly slides its force hangs on a hair.
        let least = turn.slides_m.iter().fold(f64::INFINITY, |least, slide| least.min(slide[2]));
        if least > 1e-3 {
            assert_equal_relative("along", &case, (along, 0.0), 1e-8, grip_n);
            assert_equal_relative("across", &case, (across, 0.0), 1e-8, grip_n);
            assert_equal_relative("moment", &case, (moment, 0.0), 1e-8, grip_n * reach_m);
        }
    }

    /// Left and right may change places: a turn the other way round has the same centre, and its mirror
    /// image is the turn of the mirrored ground.
    #[test]
    fn left_and_right_may_change_places(
        scenario in whole(topic("turn_in_place"), Reach::Usual, SPLIT)
    ) {
        let number = |path: &str| scenario.number(path).unwrap();
        let (left, right) = (
            number("surface.friction_sliding_left"),
            number("surface.friction_sliding_right"),
        );
        let other = with(&scenario, "surface.friction_sliding_left", right);
        let other = with(&other, "surface.friction_sliding_right", left);
        let turn = |scenario: &Scenario| {
            Question::from_scenario(scenario).ok().and_then(|q| split_turn(&q).ok())
        };
        let (Some(one), Some(two)) = (turn(&scenario), turn(&other)) else {
            return Ok(());
        };
        // Where a patch hardly slides its force hangs on a hair, and so does the centre.
        let slides = one.slides_m.iter().chain(&two.slides_m);
        if slides.fold(f64::INFINITY, |least, slide| least.min(slide[2])) < 0.02 {
            return Ok(());
        }
        let case = show(&scenario);
        let size = number("vehicle.wheelbase") + one.centre_to_left_m.abs();
        let near = |what: &str, got: f64, want: f64| {
            assert_equal_relative(what, &case, (got, want), 1e-6, size);
        };
        near("x", two.centre_behind_front_m, one.centre_behind_front_m);
        near("y", two.centre_to_left_m, -one.centre_to_left_m);
        near("κ", two.speed_ratio_m, one.speed_ratio_m);
    }

    /// "Put one side on better ground [...] the turning centre moves towards the side that grips less."
    #[test]
    fn the_centre_moves_towards_the_side_that_grips_less(
        scenario in whole(topic("turn_in_place"), Reach::Usual, SPLIT),
        less in 0.6..0.99,
    ) {
        let right = scenario.number("surface.friction_sliding_right").unwrap();
        let Ok(there) = with_left(&scenario, less * right) else { return Ok(()); };
        let Ok(question) = Question::from_scenario(&there) else { return Ok(()); };
        // With far less friction on one side the car drives off.
        let Ok(turn) = split_turn(&question) else { return Ok(()); };
        let case = format!("{turn:?}, {}", show(&there));
        prop_assert!(turn.centre_to_left_m > 0.0, "{}", case);
        let Ok(even) = with_left(&scenario, right) else { return Ok(()); };
        let even = split_turn(&Question::from_scenario(&even).unwrap()).unwrap();
        let size = question.chassis.wheelbase_m();
        assert_equal_relative("y, even", &case, (even.centre_to_left_m, 0.0), 1e-6, size);
    }

    /// "No motor torque mends that: both sides grow with the same friction": whether one driven pair can turn
    /// the car against the other axle does not depend on the ground.
    #[test]
    fn no_ground_lets_a_pair_drag_the_other_axle(
        scenario in whole(topic("turn_in_place"), Reach::Usual, LEVEL),
        factor in 0.2..2.0,
    ) {
        let friction = scenario.number("surface.friction_sliding").unwrap() * factor;
        let other = with(&scenario, "surface.friction_sliding", friction);
        let questions = [&scenario, &other].map(Question::from_scenario);
        let [Ok(one), Ok(two)] = questions else { return Ok(()); };
        for layout in [Layout::F2, Layout::R2, Layout::F1R2, Layout::F2R1] {
            let (one, two) = (judge(&one, layout), judge(&two, layout));
            let (Some((drives, holds)), Some(other)) = (one.pair_moments_n_m, two.pair_moments_n_m) else {
                continue;
            };
            let case = format!("{layout:?} × {factor}: {}", show(&scenario));
            assert_equal_relative("driving", &case, (other.0, factor * drives), 1e-11, 0.0);
            assert_equal_relative("holding", &case, (other.1, factor * holds), 1e-11, 0.0);
        }
    }

    /// K7 (read): the pivoting moment of a patch falls once the wheel is driven, so the bound is one.
    #[test]
    fn k7_a_sliding_patch_resists_less_than_its_bound(
        scenario in whole(topic("turn_in_place"), Reach::Usual, LEVEL)
    ) {
        let Some((question, turn)) = turn_of(&scenario) else {
            return Ok(());
        };
        let axles = (&question.front, &question.rear);
        let slides = slides_m(&turn, axles, question.chassis.wheelbase_m());
        let pressure_pa = question.pressure_pa.unwrap();
        for (at, axle) in [axles.0, axles.1].into_iter().enumerate() {
            let of = |factor: f64| {
                let slide_m = (factor * slides[at].0, factor * slides[at].1);
                drilling(axle, question.tyre_widths_m[at], pressure_pa, slide_m)
            };
            let (now, faster) = (of(1.0), of(2.0));
            if now.slides_far {
                prop_assert!(now.moment_n_m < now.bound_n_m, "{:?}: {}", now, show(&scenario));
                prop_assert!(faster.moment_n_m < now.moment_n_m);
            }
        }
    }

    /// F9 (read): a wheel that is not steered is tangent to its path only if the car does not yaw. So of a car
    /// that yaws at most one axle rolls without scrub.
    #[test]
    fn f9_wheels_are_tangent_to_their_paths_only_without_yaw(
        u in -30.0..30.0_f64, v in -10.0..10.0_f64, r in -3.0..3.0_f64, at in 0..4_usize,
    ) {
        let mut scenario = Scenario::default();
        scenario.set("vehicle.base", DEMO_NAMES[at]).unwrap();
        let car = Car::from_scenario(&scenario, Layout::F2R2).unwrap();
        let length_m = car.chassis.wheelbase_m();
        let across = |velocity: (f64, f64, f64)| {
            let state = car.rolling(&Controls::steered(0.0, 0.0), velocity);
            [0, 1, 2, 3].map(|wheel| car.hub_m_s(&state, wheel).1)
        };
        let [front_left, front_right, rear_left, rear_right] = across((u, v, r));
        let case = format!("{u} {v} {r}");
        // Both wheels of an axle cross their paths alike, and the axles differ by the yaw over the wheelbase.
        assert_equal_relative("front", &case, (front_left, front_right), 1e-12, 1.0);
        assert_equal_relative("rear", &case, (rear_left, rear_right), 1e-12, 1.0);
        assert_equal_relative("yaw", &case, (front_left - rear_left, r * length_m), 1e-12, 10.0);
        prop_assert!(front_left.abs().max(rear_left.abs()) >= 0.5 * r.abs() * length_m * (1.0 - 1e-9));
        prop_assert!(across((u, 0.0, 0.0)).iter().all(|across| across.abs() < 1e-12));
    }
}

/// The scenario with its own sliding friction under the left wheels.
fn with_left(scenario: &Scenario, friction: f64) -> Result<Scenario, Problem> {
    let mut changed = scenario.clone();
    changed.set_number("surface.friction_sliding_left", friction)?;
    Ok(changed)
}

fn scales(scenario: &Scenario, other: &Scenario, factor: f64) {
    let (Some((_, one)), Some((_, other))) = (turn_of(scenario), turn_of(other)) else {
        return;
    };
    let case = format!("× {factor}: {}", show(scenario));
    let near = |what: &str, got: f64, want: f64, size: f64| {
        assert_equal_relative(what, &case, (got, want), 1e-8, size);
    };
    near(
        "x",
        other.centre_behind_front_m,
        one.centre_behind_front_m,
        1.0,
    );
    near("κ", other.speed_ratio_m, one.speed_ratio_m, 0.0);
    let size = factor * (one.front_force_n.abs() + one.rear_force_n.abs());
    near("F_f", other.front_force_n, factor * one.front_force_n, size);
    near("F_r", other.rear_force_n, factor * one.rear_force_n, size);
    near(
        "M_r",
        other.resisting_moment_n_m,
        factor * one.resisting_moment_n_m,
        0.0,
    );
    near(
        "E",
        other.energy_per_turn_j,
        factor * one.energy_per_turn_j,
        0.0,
    );
}
