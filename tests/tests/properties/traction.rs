//! Traction limits: the equation of motion balances, no wheel pushes more than it can, and what is
//! said to limit does.

use crate::scenarios::{Reach, config, topic, whole};
use axlewright_core::Scenario;
use axlewright_core::layout::{AxleDrive, Layout};
use axlewright_core::load_transfer::axle_loads;
use axlewright_core::traction::{Limit, LimitedBy, Question, limit};
use axlewright_tests::{assert_equal_relative, show};
use proptest::prelude::*;

/// Most that an axle can push at a load, tyres and motors together.
fn most_n(question: &Question, front: bool, layout: Layout, load_n: f64) -> (f64, f64) {
    let (axle, drive) = if front {
        (&question.front, layout.front())
    } else {
        (&question.rear, layout.rear())
    };
    let motors_n = question
        .motor_force_n
        .map_or(f64::INFINITY, |force| force * f64::from(drive.motors()));
    (axle.capacity_n(drive, load_n.max(0.0)), motors_n)
}

/// A size for the forces of a question, to measure differences by.
fn size_n(question: &Question) -> f64 {
    let air = &question.air;
    question.chassis.weight_n() + air.drag_n + air.lift_front_n.abs() + air.lift_rear_n.abs()
}

fn motion_balances(question: &Question, layout: Layout, limit: &Limit, case: &str) {
    let (chassis, air, slope) = (&question.chassis, &question.air, question.slope);
    let Limit { loads, .. } = limit;
    let pushed = limit.front_force_n + limit.rear_force_n;
    let lost = air.drag_n
        + chassis.weight_n() * slope.sin
        + question.rolling_resistance * (loads.front_n + loads.rear_n);
    let needed = chassis.mass_kg() * limit.acceleration_m_s2 + lost;
    let size = size_n(question) + pushed.abs();
    assert_equal_relative("F = m·a_x + R", case, (pushed, needed), 1e-10, size);
    let want = axle_loads(chassis, air, slope, limit.acceleration_m_s2);
    assert_eq!(*loads, want, "axle loads at the limit: {case}");
    if layout.front() == AxleDrive::Undriven {
        assert!(limit.front_force_n == 0.0, "front axle pushes: {case}");
    }
    if layout.rear() == AxleDrive::Undriven {
        assert!(limit.rear_force_n == 0.0, "rear axle pushes: {case}");
    }
}

fn within_what_tyres_and_motors_can(
    question: &Question,
    layout: Layout,
    limit: &Limit,
    case: &str,
) {
    let size = size_n(question);
    let slack = 1e-8 * size;
    for (front, load_n, force_n) in [
        (true, limit.loads.front_n, limit.front_force_n),
        (false, limit.loads.rear_n, limit.rear_force_n),
    ] {
        let (grip_n, motors_n) = most_n(question, front, layout, load_n);
        assert!(
            force_n <= grip_n + slack && force_n <= motors_n + slack,
            "front {front}: pushes {force_n} N of {grip_n} N grip and {motors_n} N motors: {case}"
        );
        assert!(load_n >= -slack, "front {front}: load {load_n} N: {case}");
    }
}

fn limited_by_what_is_said(question: &Question, layout: Layout, limit: &Limit, case: &str) {
    let (front_grip, front_motors) = most_n(question, true, layout, limit.loads.front_n);
    let (rear_grip, rear_motors) = most_n(question, false, layout, limit.loads.rear_n);
    let slack = 1e-7 * size_n(question);
    let front_slips = (limit.front_force_n - front_grip).abs() <= slack;
    let rear_slips = (limit.rear_force_n - rear_grip).abs() <= slack;
    let out_of_torque = (layout.front() != AxleDrive::Undriven
        && (limit.front_force_n - front_motors).abs() <= slack)
        || (layout.rear() != AxleDrive::Undriven
            && (limit.rear_force_n - rear_motors).abs() <= slack);
    let agrees = match limit.limited_by {
        LimitedBy::FrontSlip => layout.front() != AxleDrive::Undriven && front_slips,
        LimitedBy::RearSlip => layout.rear() != AxleDrive::Undriven && rear_slips,
        LimitedBy::AllSlip => front_slips && rear_slips,
        LimitedBy::FrontLift => limit.loads.front_n.abs() <= slack,
        LimitedBy::MotorTorque => out_of_torque,
    };
    assert!(
        agrees,
        "{:?}, but front {} N of {front_grip} N and {front_motors} N, rear {} N of {rear_grip} N and \
         {rear_motors} N, front load {} N: {case}",
        limit.limited_by, limit.front_force_n, limit.rear_force_n, limit.loads.front_n
    );
}

fn holds(scenario: &Scenario) {
    let Ok(question) = Question::from_scenario(scenario) else {
        return;
    };
    for layout in scenario.layouts() {
        if let Ok(limit) = limit(&question, layout) {
            let case = format!("{layout:?}, {}, {limit:?}", show(scenario));
            motion_balances(&question, layout, &limit, &case);
            within_what_tyres_and_motors_can(&question, layout, &limit, &case);
            limited_by_what_is_said(&question, layout, &limit, &case);
        }
    }
}

proptest! {
    #![proptest_config(config(800))]

    #[test]
    fn usual_limits_balance_and_are_limited_by_what_is_said(
        scenario in whole(topic("traction"), Reach::Usual, &[])
    ) {
        holds(&scenario);
    }

    #[test]
    fn usual_ideal_limits_balance_and_are_limited_by_what_is_said(
        scenario in whole(topic("traction"), Reach::Usual, &["traction.front_share"])
    ) {
        holds(&scenario);
    }

    #[test]
    fn all_accepted_limits_balance_and_are_limited_by_what_is_said(
        scenario in whole(topic("traction"), Reach::Accepted, &[])
    ) {
        holds(&scenario);
    }
}
