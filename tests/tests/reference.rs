//! The core against independent solutions in Python: sympy for the closed forms, numpy and scipy for
//! the general problems.
#![allow(clippy::unwrap_used, reason = "a test stops where a value is missing")]
#![allow(
    clippy::disallowed_methods,
    reason = "the wanted values come from the standard library, not from the core's own functions"
)]

use axlewright_core::Scenario;
use axlewright_core::layout::Layout;
use axlewright_core::traction::{self, LimitedBy};
use axlewright_core::turn_in_place;
use axlewright_tests::{Comparison, Draw, Reference, python, show};
use serde_json::{Value, json};

const CASES: usize = 200;
const RELATIVE: f64 = 1e-9;

#[test]
fn sympy_derives_the_closed_forms_again() {
    let printed = python("closed_forms.py", "");
    let lines: Vec<&str> = printed.lines().collect();
    for line in &lines {
        assert!(line.starts_with("OK "), "{line}");
    }
    for form in [
        "front drive",
        "rear drive",
        "all-wheel drive",
        "fixed split",
        "W3, rear drive",
        "W3, front drive",
        "solid axle",
        "turn in place",
        "lateral scrub",
        "K5, disc",
        "K5, square",
        "like motors match",
        "P1, brush: F",
        "P1, brush: M_z",
        "P1, brush: the aligning moment",
    ] {
        let said = format!("OK {form}");
        assert!(
            lines.iter().any(|line| line.starts_with(&said)),
            "{form}: {printed}"
        );
    }
    Reference {
        what: "closed forms",
        against: "sympy, derived from the balances",
        cases: lines.len(),
        // What does not vanish for all symbols is no derivation; the script then stops.
        bound: 0.0,
        largest: 0.0,
    }
    .keep();
}

/// Largest difference so far, relative, with what it was.
#[derive(Default)]
struct Largest(f64, String);

impl Largest {
    fn compare(&mut self, quantity: &str, case: &str, (got, want): (f64, f64), size: f64) {
        let size = size.max(want.abs());
        let relative = (got - want).abs() / size;
        let comparison = Comparison {
            quantity,
            case,
            got,
            want,
            tolerance: RELATIVE * size,
            unit: "",
            source: "scipy, independent formulation",
        };
        assert!(comparison.holds(), "{comparison}");
        if relative > self.0 {
            *self = Self(relative, format!("{quantity} [{case}]"));
        }
    }
}

fn draw_traction(draw: &mut Draw) -> Scenario {
    let mut scenario = Scenario::default();
    let wheelbase = draw.between(1.8, 4.0);
    let mass = draw.between(600.0, 4000.0);
    let layout = draw.one_of(Layout::NAMES);
    // Some cars are tall and on sticky tyres, so that the front axle lifts.
    let tall = draw.chance(0.2);
    let (low, high) = if tall { (1.0, 1.6) } else { (0.2, 1.0) };
    let stick = if tall { 3.0 } else { 1.0 };
    let fields = [
        ("vehicle.mass", mass),
        ("vehicle.wheelbase", wheelbase),
        (
            "vehicle.cg_to_front_axle",
            wheelbase * draw.between(0.3, 0.7),
        ),
        ("vehicle.cg_height", draw.between(low, high)),
        ("vehicle.drag_area", draw.between(0.3, 1.5)),
        ("vehicle.drag_height", draw.between(0.3, 1.2)),
        ("vehicle.lift_area_front", draw.between(-1.0, 0.2)),
        ("vehicle.lift_area_rear", draw.between(-1.0, 0.2)),
        ("vehicle.rolling_resistance", draw.between(0.0, 0.03)),
        ("vehicle.tyre_load_sensitivity", draw.between(0.0, 0.15)),
        (
            "vehicle.tyre_reference_load",
            mass * 9.81 * draw.between(0.2, 0.35),
        ),
        ("surface.friction_peak_left", stick * draw.between(0.1, 1.6)),
        (
            "surface.friction_peak_right",
            stick * draw.between(0.1, 1.6),
        ),
        ("surface.grade", draw.between(-0.2, 0.2)),
        ("air.density", draw.between(1.0, 1.3)),
        ("traction.speed", draw.between(0.0, 60.0)),
    ];
    for (path, value) in fields {
        scenario.set_number(path, value).unwrap();
    }
    if draw.chance(0.5) {
        let share = draw.between(0.0, 1.0);
        scenario.set_number("traction.front_share", share).unwrap();
    }
    for path in ["traction.front_differential", "traction.rear_differential"] {
        scenario
            .set(path, draw.one_of(&["open", "locked"]))
            .unwrap();
    }
    scenario.set("layouts", layout).unwrap();
    scenario
}

fn traction_case(scenario: &Scenario) -> Value {
    let number = |path: &str| scenario.number(path).unwrap();
    let layout = scenario.layouts()[0];
    let locked = |path: &str| scenario.word(path) == Some("locked");
    // ½·ρ·V², from the scenario and not from the core's own sums
    let pressure = 0.5 * number("air.density") * number("traction.speed").powi(2);
    json!({
        "m": number("vehicle.mass"),
        "L": number("vehicle.wheelbase"),
        "a": number("vehicle.cg_to_front_axle"),
        "h": number("vehicle.cg_height"),
        "theta": number("surface.grade").atan(),
        "f_r": number("vehicle.rolling_resistance"),
        "drag": pressure * number("vehicle.drag_area"),
        "drag_height": number("vehicle.drag_height"),
        "lift_front": pressure * number("vehicle.lift_area_front"),
        "lift_rear": pressure * number("vehicle.lift_area_rear"),
        "k": number("vehicle.tyre_load_sensitivity"),
        "N_0": number("vehicle.tyre_reference_load"),
        "mu_left": number("surface.friction_peak_left"),
        "mu_right": number("surface.friction_peak_right"),
        "motors": [layout.front().motors(), layout.rear().motors()],
        "locked": [locked("traction.front_differential"), locked("traction.rear_differential")],
        "share": scenario.number("traction.front_share"),
    })
}

fn draw_turn(draw: &mut Draw) -> Scenario {
    let mut scenario = Scenario::default();
    let wheelbase = draw.between(1.8, 4.0);
    let mass = draw.between(600.0, 4000.0);
    let fields = [
        ("vehicle.mass", mass),
        ("vehicle.wheelbase", wheelbase),
        (
            "vehicle.cg_to_front_axle",
            wheelbase * draw.between(0.35, 0.65),
        ),
        ("vehicle.track_front", draw.between(1.2, 2.0)),
        ("vehicle.track_rear", draw.between(1.2, 2.0)),
        ("vehicle.tyre_load_sensitivity", draw.between(0.0, 0.2)),
        (
            "vehicle.tyre_reference_load",
            mass * 9.81 * draw.between(0.2, 0.35),
        ),
        ("surface.friction_sliding", draw.between(0.05, 1.2)),
        (
            "turn_in_place.front_to_rear_wheel_speed",
            draw.between(0.9, 1.1),
        ),
    ];
    for (path, value) in fields {
        scenario.set_number(path, value).unwrap();
    }
    scenario
}

fn turn_case(scenario: &Scenario) -> Value {
    let number = |path: &str| scenario.number(path).unwrap();
    let (length, a) = (
        number("vehicle.wheelbase"),
        number("vehicle.cg_to_front_axle"),
    );
    // μ(N) = μ_0·(1 − k·(N − N_0)/N_0) at the static load of one wheel
    let friction = |arm: f64| {
        let wheel_n = 0.5 * number("vehicle.mass") * 9.81 * arm / length;
        let reference_n = number("vehicle.tyre_reference_load");
        let drop = number("vehicle.tyre_load_sensitivity") * (wheel_n / reference_n - 1.0);
        number("surface.friction_sliding") * (1.0 - drop)
    };
    json!({
        "m": number("vehicle.mass"),
        "L": length,
        "a": a,
        "t_f": number("vehicle.track_front"),
        "t_r": number("vehicle.track_rear"),
        "mu_f": friction(length - a),
        "mu_r": friction(a),
        "q": number("turn_in_place.front_to_rear_wheel_speed"),
    })
}

#[test]
fn scipy_solves_the_general_problems_again() {
    let mut draw = Draw::seeded(2026);
    let tractions: Vec<Scenario> = (0..CASES).map(|_| draw_traction(&mut draw)).collect();
    let turns: Vec<Scenario> = (0..CASES).map(|_| draw_turn(&mut draw)).collect();
    let asked = json!({
        "traction": tractions.iter().map(traction_case).collect::<Vec<_>>(),
        "turn_in_place": turns.iter().map(turn_case).collect::<Vec<_>>(),
    });
    let answered: Value = serde_json::from_str(&python("numeric.py", &asked.to_string())).unwrap();
    let list = |name: &str| answered[name].as_array().unwrap().clone();
    let (tractions_again, turns_again) = (list("traction"), list("turn_in_place"));
    assert_eq!((tractions_again.len(), turns_again.len()), (CASES, CASES));

    let mut largest = Largest::default();
    let mut lifted = 0;
    for (scenario, again) in tractions.iter().zip(&tractions_again) {
        lifted += usize::from(compare_traction(scenario, again, &mut largest));
    }
    assert!(
        lifted > 0 && lifted < CASES / 2,
        "{lifted} cases end with a lifting axle"
    );
    println!("{lifted} of {CASES} lift; largest at {}", largest.1);
    Reference {
        what: "traction limits",
        against: "scipy, `brentq` on the tractive force",
        cases: CASES,
        bound: RELATIVE,
        largest: largest.0,
    }
    .keep();

    let mut largest = Largest::default();
    for (scenario, again) in turns.iter().zip(&turns_again) {
        compare_turn(scenario, again, &mut largest);
    }
    println!("largest at {}", largest.1);
    Reference {
        what: "steady turn in place",
        against: "scipy, `root` of four wheels in balance",
        cases: CASES,
        bound: RELATIVE,
        largest: largest.0,
    }
    .keep();
}

/// Compares one traction limit; tells whether the front axle lifts.
fn compare_traction(scenario: &Scenario, again: &Value, largest: &mut Largest) -> bool {
    let want = |name: &str| again[name].as_f64().unwrap();
    let question = traction::Question::from_scenario(scenario).unwrap();
    let limit = traction::limit(&question, scenario.layouts()[0]).unwrap();
    let case = show(scenario);
    let weight = question.chassis.weight_n();
    let mut compare = |quantity: &str, got: f64, name: &str, size: f64| {
        largest.compare(quantity, &case, (got, want(name)), size);
    };
    compare("a_x", limit.acceleration_m_s2, "acceleration", 1.0);
    compare("N_f", limit.loads.front_n, "front_load", 0.1 * weight);
    compare("N_r", limit.loads.rear_n, "rear_load", 0.1 * weight);
    let force = limit.front_force_n + limit.rear_force_n;
    compare("F", force, "force", 0.1 * weight);
    let lifts = limit.limited_by == LimitedBy::FrontLift;
    assert_eq!(
        lifts,
        again["front_lift"].as_bool().unwrap(),
        "front lift: {case}"
    );
    lifts
}

fn compare_turn(scenario: &Scenario, again: &Value, largest: &mut Largest) {
    let want = |name: &str| again[name].as_f64().unwrap();
    let question = turn_in_place::Question::from_scenario(scenario).unwrap();
    let turn = question.four_wheel_turn().unwrap();
    let case = show(scenario);
    let mut compare = |quantity: &str, got: f64, name: &str| {
        largest.compare(quantity, &case, (got, want(name)), 0.0);
    };
    compare("x", turn.centre_behind_front_m, "centre_behind_front");
    compare("κ", turn.speed_ratio_m, "speed_ratio");
    compare("F_f", turn.front_force_n, "front_force");
    compare("F_r", turn.rear_force_n, "rear_force");
    compare("E", turn.energy_per_turn_j, "energy");
}
