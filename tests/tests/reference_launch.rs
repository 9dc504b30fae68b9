//! Launches against scipy's `solve_ivp` on the same equations, written out anew in Python.
#![allow(clippy::unwrap_used, reason = "a test stops where a value is missing")]
#![allow(
    clippy::disallowed_methods,
    reason = "the wanted values come from the standard library, not from the core's own functions"
)]

use axlewright_core::Scenario;
use axlewright_core::launch::{self, Question};
use axlewright_core::layout::Layout;
use axlewright_tests::{Comparison, Draw, Reference, launch_case, python, show};
use serde_json::Value;
use std::time::Instant;

const CASES: usize = 200;
/// What the two may differ by; the core claims 3e-6.
const RELATIVE: f64 = 1e-4;
/// The marks that are compared, in the order of the script.
const MARKS: [usize; 4] = [
    launch::MARK_ROLLOUT,
    launch::MARK_60_MPH,
    launch::MARK_100_KM_H,
    launch::MARK_QUARTER_MILE,
];

/// A vehicle with everything that a launch reads, or, one in three, with ideal grip.
fn draw_launch(draw: &mut Draw) -> Scenario {
    let mut scenario = Scenario::default();
    let wheelbase = draw.between(2.2, 3.4);
    let mass = draw.between(900.0, 3200.0);
    let fields = [
        ("vehicle.mass", mass),
        ("vehicle.wheelbase", wheelbase),
        (
            "vehicle.cg_to_front_axle",
            wheelbase * draw.between(0.4, 0.6),
        ),
        ("vehicle.cg_height", draw.between(0.35, 0.8)),
        ("vehicle.wheel_radius", draw.between(0.28, 0.4)),
        ("vehicle.wheel_inertia", draw.between(0.6, 2.5)),
        ("vehicle.rotor_inertia", draw.between(0.01, 0.08)),
        ("vehicle.motor_torque", draw.between(180.0, 600.0)),
        ("vehicle.motor_power", draw.between(80e3, 350e3)),
        ("vehicle.motor_ratio", draw.between(8.0, 13.0)),
        ("vehicle.gear_efficiency", draw.between(0.9, 1.0)),
        ("vehicle.drag_area", draw.between(0.3, 1.2)),
        ("vehicle.drag_height", draw.between(0.3, 0.8)),
        ("vehicle.lift_area_front", draw.between(-0.8, 0.1)),
        ("vehicle.lift_area_rear", draw.between(-0.8, 0.1)),
        ("vehicle.rolling_resistance", draw.between(0.0, 0.02)),
        ("vehicle.tyre_load_sensitivity", draw.between(0.0, 0.1)),
        (
            "vehicle.tyre_reference_load",
            mass * 9.81 * draw.between(0.22, 0.3),
        ),
        ("vehicle.tyre_peak_slip", draw.between(0.06, 0.15)),
        ("vehicle.tyre_relaxation_length", draw.between(0.15, 0.5)),
        ("vehicle.ride_frequency_front", draw.between(1.0, 2.0)),
        ("vehicle.ride_frequency_rear", draw.between(1.1, 2.2)),
        ("vehicle.anti_lift_front", draw.between(0.0, 0.4)),
        ("vehicle.anti_squat_rear", draw.between(0.0, 0.5)),
        ("vehicle.damping_ratio", draw.between(0.2, 0.5)),
        ("surface.friction_peak", draw.between(0.5, 1.2)),
        ("surface.grade", draw.between(-0.05, 0.05)),
        ("air.density", draw.between(1.0, 1.3)),
    ];
    for (path, value) in fields {
        scenario.set_number(path, value).unwrap();
    }
    if draw.chance(0.5) {
        let sliding = scenario.number("surface.friction_peak").unwrap() * draw.between(0.7, 0.95);
        scenario
            .set_number("surface.friction_sliding", sliding)
            .unwrap();
    }
    if draw.chance(0.4) {
        let power = draw.between(120e3, 400e3);
        scenario.set_number("vehicle.battery_power", power).unwrap();
    }
    if draw.chance(0.33) {
        scenario.set("launch.model", "ideal").unwrap();
    }
    if draw.chance(0.3) {
        scenario.set("launch.traction_control", "off").unwrap();
    } else if draw.chance(0.3) {
        let target = draw.between(0.04, 0.2);
        scenario.set_number("launch.slip_target", target).unwrap();
    }
    scenario.set("layouts", draw.one_of(Layout::NAMES)).unwrap();
    let layout = scenario.layouts()[0];
    scenario.set("layout", layout.name()).unwrap();
    scenario
}

#[test]
fn scipy_runs_the_launches_again() {
    let mut draw = Draw::seeded(2027);
    let scenarios: Vec<Scenario> = (0..CASES).map(|_| draw_launch(&mut draw)).collect();
    let asked: Vec<Value> = scenarios.iter().map(launch_case).collect();
    let began = Instant::now();
    let printed = python("launch.py", &Value::from(asked).to_string());
    let python_s = began.elapsed().as_secs_f64();
    let answered: Vec<[Option<f64>; 4]> = serde_json::from_str(&printed).unwrap();
    assert_eq!(answered.len(), CASES);
    let (mut largest, mut compared) = (0.0_f64, 0);
    let mut ours_s = 0.0;
    for (scenario, again) in scenarios.iter().zip(&answered) {
        let question = Question::from_scenario(scenario).unwrap();
        let began = Instant::now();
        let run = launch::run(&question, scenario.layout());
        ours_s += began.elapsed().as_secs_f64();
        for (mark, want) in MARKS.into_iter().zip(again) {
            let got = run.marks[mark].map(|mark| mark.time_s);
            // The script ends at the quarter mile, the core goes on to 160 km/h.
            let Some(want) = *want else { continue };
            let got = got.unwrap_or(f64::NAN);
            let comparison = Comparison {
                quantity: "time",
                case: &format!("mark {mark}: {}", show(scenario)),
                got,
                want,
                tolerance: RELATIVE * want,
                unit: "s",
                source: "scipy, LSODA",
            };
            assert!(comparison.holds(), "{comparison}");
            largest = largest.max((got - want).abs() / want);
            compared += 1;
        }
    }
    assert!(compared > 3 * CASES, "only {compared} times compared");
    println!("{compared} times compared");
    Reference {
        what: "launch, times at its marks",
        against: "scipy, LSODA",
        cases: CASES,
        bound: RELATIVE,
        largest,
    }
    .keep();
    println!(
        "a launch takes {:.2} ms here (this build), {:.0} ms in scipy: {:.0} times as long",
        1e3 * ours_s / CASES as f64,
        1e3 * python_s / CASES as f64,
        python_s / ours_s
    );
}
