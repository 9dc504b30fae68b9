//! The planar car against scipy's `solve_ivp` on the same equations, written out anew in Python.
#![allow(clippy::unwrap_used, reason = "a test stops where a value is missing")]
#![allow(
    clippy::disallowed_methods,
    reason = "the wanted values come from the standard library, not from the core's own functions"
)]

use axlewright_core::layout::Layout;
use axlewright_core::planar::{Car, Controls, State, advance};
use axlewright_core::{Scenario, vehicle};
use axlewright_tests::{Draw, Reference, python};
use serde_json::{Value, json};
use std::time::Instant;

const CASES: usize = 100;
const TIME_S: f64 = 1.0;
/// Relative to the number or to its scale, whichever is larger.
const CLOSE: f64 = 1e-4;

struct Case {
    car: Car,
    controls: Controls,
    start: State,
    asked: Value,
}

/// A demo vehicle with everything drawn anew, on any ground, at any speed, also sideways.
fn draw_case(draw: &mut Draw) -> Case {
    let mut scenario = Scenario::default();
    let base = draw.one_of(vehicle::DEMO_NAMES);
    scenario.set("vehicle.base", base).unwrap();
    let layout = draw.one_of(&Layout::ALL);
    scenario.set("layout", layout.name()).unwrap();
    let mut number = |path: &str, low: f64, high: f64| {
        let value = draw.between(low, high);
        scenario.set_number(path, value).unwrap();
        value
    };
    let mu = [
        number("surface.friction_peak_left", 0.2, 1.1),
        number("surface.friction_peak_right", 0.2, 1.1),
    ];
    let mean = 0.5 * (mu[0] + mu[1]);
    let sliding = number("surface.friction_sliding", 0.7 * mean, 0.95 * mean);
    let stiffness = [
        number("vehicle.cornering_stiffness_front", 4e4, 1.3e5),
        number("vehicle.cornering_stiffness_rear", 4e4, 1.3e5),
    ];
    let k = number("vehicle.tyre_load_sensitivity", 0.0, 0.2);
    let phi = number("vehicle.roll_stiffness_front_share", 0.2, 0.8);
    let grade = number("surface.grade", -0.2, 0.2);
    let inertia = number("vehicle.yaw_inertia", 1500.0, 5000.0);
    let relaxation = number("vehicle.tyre_relaxation_length", 0.2, 0.8);
    let lifts = [
        number("vehicle.lift_area_front", -0.8, 0.1),
        number("vehicle.lift_area_rear", -0.8, 0.1),
    ];
    let height = number("vehicle.cg_height", 0.2, 0.7);
    let car = Car::from_scenario(&scenario, layout).unwrap();
    let speed = draw.between(0.0, 45.0);
    let steer = draw.between(-0.15, 0.15);
    let mut controls = Controls::steered(steer, 0.0);
    let most = draw.between(0.0, 1500.0);
    for wheel in 0..4 {
        controls.torques_n_m[wheel] = draw.between(-most, most);
        controls.brakes_n_m[wheel] = if draw.chance(0.3) {
            draw.between(0.0, 900.0)
        } else {
            0.0
        };
    }
    let sideways = draw.between(-0.2, 0.2) * speed;
    let yaw = draw.between(-0.6, 0.6);
    let start = car.rolling(&controls, (speed, sideways, yaw));
    let given = |path: &str| scenario.number(path).unwrap();
    // From the scenario, not from the core's own sums.
    let motors = [layout.front().motors(), layout.rear().motors()];
    let least = 6e-4 * given("vehicle.mass") * given("vehicle.wheel_radius").powi(2);
    let turning = motors.map(|count| {
        let rotors = 0.5 * f64::from(count) * given("vehicle.rotor_inertia");
        (given("vehicle.wheel_inertia") + rotors * given("vehicle.motor_ratio").powi(2)).max(least)
    });
    let asked = json!({
        "m": given("vehicle.mass"),
        "L": given("vehicle.wheelbase"),
        "a": given("vehicle.cg_to_front_axle"),
        "h": height,
        "t_f": given("vehicle.track_front"),
        "t_r": given("vehicle.track_rear"),
        "R": given("vehicle.wheel_radius"),
        "J": [turning[0], turning[0], turning[1], turning[1]],
        "I_z": inertia,
        "phi": phi,
        "f_r": given("vehicle.rolling_resistance"),
        "rho": given("air.density"),
        "CdA": given("vehicle.drag_area"),
        "h_d": height,
        "ClA_f": lifts[0],
        "ClA_r": lifts[1],
        "grade": grade,
        "mu": mu,
        "sliding": sliding / (0.5 * (mu[0] + mu[1])),
        "k": k,
        "N_0": 0.25 * given("vehicle.mass") * 9.81,
        "C": stiffness,
        "peak_slip": given("vehicle.tyre_peak_slip"),
        "relaxation": relaxation,
        "steer": [steer, steer, 0.0, 0.0],
        "torque": controls.torques_n_m,
        "brake": controls.brakes_n_m,
        "time": TIME_S,
        "start": start,
    });
    Case {
        car,
        controls,
        start,
        asked,
    }
}

fn drive(case: &Case, steps: u32) -> State {
    let mut state = case.start;
    for _ in 0..steps {
        advance(
            &case.car,
            &case.controls,
            &mut state,
            TIME_S / f64::from(steps),
        );
    }
    state
}

#[test]
fn scipy_drives_the_planar_car_again() {
    let mut draw = Draw::seeded(2028);
    let cases: Vec<Case> = (0..CASES).map(|_| draw_case(&mut draw)).collect();
    let asked: Vec<&Value> = cases.iter().map(|case| &case.asked).collect();
    let printed = python("cornering.py", &json!(asked).to_string());
    let answered: Value = serde_json::from_str(&printed).unwrap();
    let ends: Vec<Vec<f64>> = serde_json::from_value(answered["ends"].clone()).unwrap();
    assert_eq!(ends.len(), CASES);
    let python_s = answered["seconds"].as_f64().unwrap();
    let mut largest = 0.0_f64;
    for (at, (case, end)) in cases.iter().zip(&ends).enumerate() {
        let ours = drive(case, 8000);
        let scales = [
            10.0, 10.0, 1.0, 10.0, 1.0, 1.0, 30.0, 30.0, 30.0, 30.0, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1,
            0.1, 0.1,
        ];
        for (number, scale) in scales.into_iter().enumerate() {
            let size = ours[number].abs().max(scale);
            let off = (ours[number] - end[number]).abs() / size;
            largest = largest.max(off);
            assert!(
                off <= CLOSE,
                "case {at}, number {number}: {} here, {} in scipy",
                ours[number],
                end[number]
            );
        }
    }
    let began = Instant::now();
    for case in &cases {
        assert!(drive(case, 1000)[0].is_finite());
    }
    let ours_s = began.elapsed().as_secs_f64();
    Reference {
        what: "planar car, steered and driven",
        against: "scipy, DOP853",
        cases: CASES,
        bound: CLOSE,
        largest,
    }
    .keep();
    println!(
        "a second at 1 kHz takes {:.2} ms here (this build), {:.0} ms in scipy: {:.0} times as long",
        1e3 * ours_s / CASES as f64,
        1e3 * python_s / CASES as f64,
        python_s / ours_s
    );
}
