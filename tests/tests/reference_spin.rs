//! Spin-ups against scipy's `solve_ivp` on the same equations, written out anew in Python.
#![allow(clippy::unwrap_used, reason = "a test stops where a value is missing")]

use axlewright_core::Scenario;
use axlewright_core::turn_in_place::{LONGEST_S, Question, Spin, follow};
use axlewright_tests::{Comparison, Draw, Reference, python, show};
use serde_json::{Value, json};
use std::time::Instant;

const CASES: usize = 100;
/// What the two may differ by.
const RELATIVE: f64 = 1e-4;

/// A car with everything that a spin-up reads: level or on a slope, alike left and right or not quite.
fn draw_spin(draw: &mut Draw) -> Scenario {
    let mut scenario = Scenario::default();
    let wheelbase = draw.between(2.3, 3.2);
    let mass = draw.between(1000.0, 3000.0);
    let friction = draw.between(0.2, 0.9);
    let fields = [
        ("vehicle.mass", mass),
        ("vehicle.wheelbase", wheelbase),
        (
            "vehicle.cg_to_front_axle",
            wheelbase * draw.between(0.42, 0.58),
        ),
        ("vehicle.cg_height", draw.between(0.4, 0.7)),
        ("vehicle.track_front", draw.between(1.45, 1.75)),
        ("vehicle.track_rear", draw.between(1.45, 1.75)),
        ("vehicle.wheel_radius", draw.between(0.29, 0.4)),
        ("vehicle.wheel_inertia", draw.between(0.7, 2.0)),
        ("vehicle.rotor_inertia", draw.between(0.02, 0.07)),
        ("vehicle.motor_torque", draw.between(300.0, 500.0)),
        ("vehicle.motor_power", draw.between(40e3, 250e3)),
        ("vehicle.motor_ratio", draw.between(9.0, 13.0)),
        ("vehicle.tyre_load_sensitivity", draw.between(0.0, 0.15)),
        (
            "vehicle.tyre_reference_load",
            mass * 9.81 * draw.between(0.22, 0.3),
        ),
        ("vehicle.tyre_peak_slip", draw.between(0.07, 0.15)),
        ("vehicle.tyre_relaxation_length", draw.between(0.2, 0.45)),
        ("vehicle.roll_stiffness_front_share", draw.between(0.4, 0.7)),
        ("surface.friction_sliding_left", friction),
        ("turn_in_place.yaw_rate", draw.between(0.5, 1.8)),
        (
            "turn_in_place.front_to_rear_wheel_speed",
            draw.between(0.9, 1.1),
        ),
    ];
    for (path, value) in fields {
        scenario.set_number(path, value).unwrap();
    }
    let right = if draw.chance(0.4) {
        friction * draw.between(0.93, 1.07)
    } else {
        friction
    };
    scenario
        .set_number("surface.friction_sliding_right", right)
        .unwrap();
    if draw.chance(0.3) {
        scenario
            .set_number("surface.grade", draw.between(-0.02, 0.02))
            .unwrap();
    }
    scenario.set("layout", "F2R2").unwrap();
    scenario
}

/// The case as the script reads it. Only the wheel speeds that are asked for come from the core: they are
/// those of the slow turn, which its own reference test holds.
fn case_of(scenario: &Scenario, spin: &Spin) -> Value {
    let number = |path: &str| scenario.number(path).unwrap();
    json!({
        "m": number("vehicle.mass"),
        "L": number("vehicle.wheelbase"),
        "a": number("vehicle.cg_to_front_axle"),
        "h": number("vehicle.cg_height"),
        "t_f": number("vehicle.track_front"),
        "t_r": number("vehicle.track_rear"),
        "R": number("vehicle.wheel_radius"),
        "J_w": number("vehicle.wheel_inertia"),
        "J_m": number("vehicle.rotor_inertia"),
        "T": number("vehicle.motor_torque"),
        "P": number("vehicle.motor_power"),
        "i": number("vehicle.motor_ratio"),
        "eta": number("vehicle.gear_efficiency"),
        "k": number("vehicle.tyre_load_sensitivity"),
        "N_0": number("vehicle.tyre_reference_load"),
        "peak_slip": number("vehicle.tyre_peak_slip"),
        "relaxation": number("vehicle.tyre_relaxation_length"),
        "phi": number("vehicle.roll_stiffness_front_share"),
        "mu": [number("surface.friction_sliding_left"), number("surface.friction_sliding_right")],
        "grade": scenario.number("surface.grade").unwrap_or(0.0),
        "driven": [true, true],
        "omega": spin.wheel_speeds_rad_s,
    })
}

#[test]
fn scipy_spins_the_cars_again() {
    let mut draw = Draw::seeded(2031);
    let mut spins = Vec::new();
    while spins.len() < CASES {
        let scenario = draw_spin(&mut draw);
        let question = Question::from_scenario(&scenario).unwrap();
        let spin = Spin::from_scenario(&scenario, &question).unwrap().unwrap();
        spins.push((scenario, spin));
    }
    let asked: Vec<Value> = spins
        .iter()
        .map(|(scenario, spin)| case_of(scenario, spin))
        .collect();
    let began = Instant::now();
    let printed = python("spin.py", &Value::from(asked).to_string());
    let python_s = began.elapsed().as_secs_f64();
    let answered: Vec<Value> = serde_json::from_str(&printed).unwrap();
    assert_eq!(answered.len(), CASES);
    let (mut largest, mut compared, mut ours_s) = (0.0_f64, 0, 0.0);
    for ((scenario, spin), again) in spins.iter().zip(&answered) {
        let began = Instant::now();
        let run = follow(spin, LONGEST_S, 1e-6, &mut |_| {});
        ours_s += began.elapsed().as_secs_f64();
        let turned = run.marks[2].map(|mark| mark.time_s);
        assert_eq!(
            turned.is_none(),
            again.is_null(),
            "{run:?}: {}",
            show(scenario)
        );
        let Some(last) = run.marks[2] else { continue };
        let wanted = |name: &str, at: usize| again[name][at].as_f64().unwrap();
        let mut pairs = vec![
            (
                "yaw rate",
                last.yaw_rad_s,
                again["yaw"].as_f64().unwrap(),
                spin.yaw_rate_rad_s,
            ),
            ("x", last.place_m.0, wanted("place", 0), 1.0),
            ("y", last.place_m.1, wanted("place", 1), 1.0),
        ];
        for (at, mark) in run.marks.iter().flatten().enumerate() {
            let want = wanted("times", at);
            pairs.push(("time", mark.time_s, want, want));
        }
        for (quantity, got, want, size) in pairs {
            let comparison = Comparison {
                quantity,
                case: &show(scenario),
                got,
                want,
                tolerance: RELATIVE * size,
                unit: "SI",
                source: "scipy, LSODA",
            };
            assert!(comparison.holds(), "{comparison}");
            largest = largest.max((got - want).abs() / size);
            compared += 1;
        }
    }
    assert!(compared > 4 * CASES, "only {compared} numbers compared");
    println!("{compared} numbers compared");
    Reference {
        what: "spin-up of a turn in place",
        against: "scipy, LSODA",
        cases: CASES,
        bound: RELATIVE,
        largest,
    }
    .keep();
    println!(
        "a spin-up takes {:.2} ms here (this build), {:.0} ms in scipy: {:.0} times as long",
        1e3 * ours_s / CASES as f64,
        1e3 * python_s / CASES as f64,
        python_s / ours_s
    );
}
