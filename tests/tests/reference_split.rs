//! The best split of the torque against scipy's minimisers, with the losses written out anew in Python.
#![allow(clippy::unwrap_used, reason = "a test stops where a value is missing")]

use axlewright_core::Scenario;
use axlewright_core::idle_drag::split::{best, recovering};
use axlewright_core::idle_drag::{DISCONNECTS, Question, counts};
use axlewright_core::layout::Layout;
use axlewright_core::motor::Machine;
use axlewright_tests::{Draw, Reference, python};
use serde_json::{Value, json};

const CASES: usize = 200;
/// What the two may differ by. The minimisers end near the best torque, and the loss is flat there.
const RELATIVE: f64 = 1e-9;

/// A car, its motors, a speed and a torque, as the core has them and as the script reads them.
fn draw_case(draw: &mut Draw) -> (Question, Layout, f64, f64, bool, Value) {
    let mut scenario = Scenario::default();
    scenario.set("vehicle.base", "esker").unwrap();
    let shares = [
        ("vehicle.copper_loss_magnet", "copper_magnet", (0.02, 0.12)),
        (
            "vehicle.copper_loss_induction",
            "copper_induction",
            (0.03, 0.15),
        ),
        ("vehicle.weakening_loss", "weakening", (0.0, 0.05)),
        ("vehicle.magnetising_loss", "magnetising", (0.001, 0.02)),
        ("vehicle.hysteresis_loss", "hysteresis", (0.001, 0.01)),
        ("vehicle.eddy_loss", "eddy", (0.0005, 0.01)),
        ("vehicle.bearing_loss", "bearing", (0.0002, 0.003)),
        ("vehicle.windage_loss", "windage", (0.0, 0.002)),
    ];
    let (torque, power) = (draw.between(80.0, 600.0), draw.between(40e3, 350e3));
    let mut case = json!({ "torque": torque, "power": power });
    for (path, name, (least, most)) in shares {
        let share = draw.between(least, most);
        scenario.set_number(path, share).unwrap();
        case[name] = json!(share);
    }
    scenario.set_number("vehicle.motor_torque", torque).unwrap();
    scenario.set_number("vehicle.motor_power", power).unwrap();
    let machines = [draw.one_of(Machine::NAMES), draw.one_of(Machine::NAMES)];
    scenario.set("vehicle.front_machine", machines[0]).unwrap();
    scenario.set("vehicle.rear_machine", machines[1]).unwrap();
    let disconnect = draw.one_of(DISCONNECTS);
    scenario.set("vehicle.disconnect", disconnect).unwrap();
    let layout = draw.one_of(&Layout::ALL);
    let speed = draw.between(0.05, 2.8) * power / torque;
    let drives = draw.chance(0.6);
    let question = Question::from_scenario(&scenario).unwrap();
    let axles = question.axles(layout, speed);
    let all = axles[0].most_n_m + axles[1].most_n_m;
    // Small torques are what a car drives with; the upper ones saturate an axle.
    let part = draw.between(0.0, 1.0);
    let wanted = all * if draw.chance(0.5) { 0.2 * part } else { part };
    case["speed"] = json!(speed);
    case["wanted"] = json!(wanted);
    case["drives"] = json!(drives);
    case["machines"] = json!(machines);
    case["motors"] = json!(counts(layout));
    case["disconnect"] = json!([
        disconnect == "front" || disconnect == "both",
        disconnect == "rear" || disconnect == "both"
    ]);
    (question, layout, speed, wanted, drives, case)
}

#[test]
fn the_best_split_is_what_scipy_finds() {
    let mut draw = Draw::seeded(0x5711);
    let drawn: Vec<_> = (0..CASES).map(|_| draw_case(&mut draw)).collect();
    let cases: Vec<&Value> = drawn.iter().map(|case| &case.5).collect();
    let found = python("split.py", &serde_json::to_string(&cases).unwrap());
    let found: Vec<Value> = serde_json::from_str(&found).unwrap();
    assert_eq!(found.len(), CASES);
    let (mut both, mut worst) = (0, 0.0_f64);
    for ((question, layout, speed, wanted, drives, case), theirs) in drawn.iter().zip(&found) {
        let axles = question.axles(*layout, *speed);
        let split = if *drives {
            best(&axles, *wanted).unwrap()
        } else {
            recovering(&axles, *wanted, *speed)
        };
        let value = |split_total: f64| split.loss_w - split_total * speed;
        let ours = if *drives {
            split.loss_w
        } else {
            value(split.total_n_m())
        };
        let theirs_w = theirs[0].as_f64().unwrap();
        let scale = split.loss_w + split.total_n_m() * speed + 1e-6;
        let off = (ours - theirs_w) / scale;
        worst = worst.max(off.abs());
        assert!(off.abs() <= RELATIVE, "{ours}, not {theirs_w}: {case}");
        both += usize::from(split.is_both());
    }
    assert!(both > 30, "only {both} cases share the torque");
    println!("{both} of {CASES} points are shared");
    Reference {
        what: "best split of the torque",
        against: "scipy, `minimize_scalar` and `minimize`",
        cases: CASES,
        bound: RELATIVE,
        largest: worst,
    }
    .keep();
}
