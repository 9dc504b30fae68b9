//! The grid of inputs that the figures are tried on, wider than what the sliders reach.

use axlewright_core::Scenario;
use axlewright_core::input::Kind;
use axlewright_core::layout::Layout;
use axlewright_core::topic;
use axlewright_core::units::System;
use axlewright_tests::{Draw, scenario, show};
use axlewright_widgets::visual::{Drawing, Look, View, Visual};

/// Own vehicles at the ends of what rolls: wheelbase, CG behind the front axle, CG height, mass, track,
/// wheel radius, outline.
const OWN: [(f64, f64, f64, f64, f64, f64, &str); 8] = [
    (1.8, 0.2, 1.2, 700.0, 1.2, 0.25, "small_car"),
    (1.8, 1.6, 0.2, 700.0, 1.2, 0.25, "sports_car"),
    (4.0, 0.3, 1.2, 4000.0, 2.0, 0.5, "utility"),
    (4.0, 3.7, 0.1, 4000.0, 2.0, 0.5, "saloon"),
    (2.9, 1.45, 0.0, 2500.0, 1.65, 0.3, "saloon"),
    (2.4, 1.2, 1.6, 1500.0, 1.5, 0.45, "utility"),
    (0.9, 0.45, 0.5, 60.0, 0.7, 0.15, "small_car"),
    (12.0, 6.0, 2.0, 40_000.0, 2.4, 0.55, "utility"),
];
const DEMOS: [&str; 4] = ["kame", "esker", "moraine", "corrie"];
pub(crate) const VEHICLES: usize = DEMOS.len() + OWN.len();

/// Widths of a figure: a telephone, half a page, where the views change, a whole page.
pub(crate) const WIDTHS: [f64; 6] = [320.0, 340.0, 480.0, 640.0, 760.0, 1000.0];
const ACCELERATIONS_G: [f64; 13] = [
    -1.5, -1.25, -1.0, -0.75, -0.5, -0.25, 0.0, 0.25, 0.5, 0.75, 1.0, 1.25, 1.5,
];
const GRADES: [f64; 7] = [-0.3, -0.12, -0.05, 0.0, 0.05, 0.12, 0.3];
const SPEEDS_M_S: [f64; 3] = [0.0, 30.0, 70.0];
const FRICTIONS: [(f64, f64); 6] = [
    (0.05, 0.05),
    (0.3, 0.3),
    (0.85, 0.85),
    (1.2, 1.2),
    (1.8, 1.8),
    (0.9, 0.2),
];
const LISTS: [&str; 3] = ["F1 R1 F1R1 F2R2", "R1", "F1 R1 F2 R2 F1R1 F1R2 F2R1 F2R2"];

fn vehicle(index: usize) -> Scenario {
    let Some((base, angle, height, mass, track, radius, body)) =
        index.checked_sub(DEMOS.len()).map(|own| OWN[own])
    else {
        return scenario(&[("vehicle.base", DEMOS[index])]);
    };
    let mut own = scenario(&[("vehicle.body", body)]);
    for (path, value, unit) in [
        ("wheelbase", base, "m"),
        ("cg_to_front_axle", angle, "m"),
        ("cg_height", height, "m"),
        ("mass", mass, "kg"),
        ("track_front", track, "m"),
        ("track_rear", track, "m"),
        ("wheel_radius", radius, "m"),
        ("drag_area", 1.0, "m^2"),
        ("drag_height", 2.2 * height + 0.1, "m"),
        ("ride_frequency_front", 1.0, "Hz"),
        ("ride_frequency_rear", 1.1, "Hz"),
        ("motor_torque", 300.0, "N m"),
        ("motor_power", 150_000.0, "W"),
        ("motor_ratio", 9.0, ""),
        ("max_steer_angle", 35.0, "deg"),
        ("cornering_stiffness_front", 30.0 * mass, "N/rad"),
        ("cornering_stiffness_rear", 32.0 * mass, "N/rad"),
    ] {
        set(&mut own, &format!("vehicle.{path}"), value, unit);
    }
    own
}

fn set(scenario: &mut Scenario, path: &str, value: f64, unit: &str) {
    let text = format!("{value} {unit}");
    let outcome = scenario.set(path, text.trim());
    assert!(outcome.is_ok(), "{path} = {text}: {outcome:?}");
}

/// One point of the grid.
pub(crate) struct Case {
    pub(crate) topic: &'static str,
    pub(crate) view: View,
    pub(crate) scenario: Scenario,
    pub(crate) pinned: Option<Scenario>,
    pub(crate) system: System,
    pub(crate) width: f64,
    pub(crate) caution: bool,
}

impl Case {
    /// Draws it; none where the physics has no answer for it.
    pub(crate) fn draw(&self) -> Option<Drawing> {
        let topic = topic::find(self.topic).expect("the topic is there");
        let look = Look {
            width: self.width,
            system: self.system,
            pinned: self.pinned.as_ref(),
            caution: self.caution,
            ..Look::default()
        };
        let visual = Visual::of(topic).expect("every topic has a look");
        visual.draw(&self.scenario, self.view, &look).ok()
    }

    /// The case in one line, as it would be typed.
    pub(crate) fn name(&self) -> String {
        let pinned = self.pinned.as_ref().map(show).unwrap_or_default();
        format!(
            "{} {} {} {:?} {}{}{pinned}",
            self.topic,
            self.view.word(),
            self.width,
            self.system,
            show(&self.scenario),
            if pinned.is_empty() { "" } else { " against " },
        )
    }
}

/// Calls for every point of a topic's grid: every vehicle with every width, and in each of these
/// `draws` states of the rest, drawn with a fixed seed.
pub(crate) fn each(topic: &'static str, draws: u32, mut act: impl FnMut(&Case)) {
    let visual = Visual::of(topic::find(topic).expect("a topic")).expect("a look");
    let mut draw = Draw::seeded(2026);
    for index in 0..VEHICLES {
        for width in WIDTHS {
            for _ in 0..draws {
                let (scenario, pinned) = state(topic, index, &mut draw);
                let system = draw.one_of(&[System::Si, System::Us]);
                let caution = draw.chance(0.5);
                for view in visual.views {
                    act(&Case {
                        topic,
                        view: *view,
                        scenario: scenario.clone(),
                        pinned: pinned.clone(),
                        system,
                        width,
                        caution,
                    });
                }
            }
        }
    }
}

fn state(topic: &str, index: usize, draw: &mut Draw) -> (Scenario, Option<Scenario>) {
    let mut drawn = vehicle(index);
    // Half of the states lie on level ground, where most figures are drawn.
    if draw.chance(0.5) {
        set(&mut drawn, "surface.grade", draw.one_of(&GRADES), "");
    }
    let mut pinned = None;
    match topic {
        "load_transfer" => {
            set(
                &mut drawn,
                "load_transfer.speed",
                draw.one_of(&SPEEDS_M_S),
                "m/s",
            );
            let path = "load_transfer.acceleration";
            if draw.chance(0.3) {
                let mut other = drawn.clone();
                set(&mut other, path, draw.one_of(&ACCELERATIONS_G), "g");
                pinned = Some(other);
            }
            let g = if draw.chance(0.7) {
                draw.one_of(&ACCELERATIONS_G)
            } else {
                draw.between(-1.5, 1.5)
            };
            set(&mut drawn, path, g, "g");
        }
        _ => {
            let state = match topic {
                "traction" => traction,
                "turn_in_place" => turn_in_place,
                _ => newer,
            };
            let other = state(topic, &drawn, draw);
            drawn = state(topic, &drawn, draw);
            pinned = draw.chance(0.3).then_some(other);
        }
    }
    (drawn, pinned)
}

fn traction(_: &str, vehicle: &Scenario, draw: &mut Draw) -> Scenario {
    let mut drawn = vehicle.clone();
    let speed = draw.one_of(&SPEEDS_M_S);
    set(&mut drawn, "traction.speed", speed, "m/s");
    friction(
        &mut drawn,
        draw,
        "surface.friction_peak_left",
        "surface.friction_peak_right",
    );
    drawn.set("layouts", draw.one_of(&LISTS)).expect("layouts");
    drawn
        .set("layout", draw.one_of(Layout::NAMES))
        .expect("a layout");
    drawn
}

/// The slow turn, and moments of the spin-up.
fn turn_in_place(_: &str, vehicle: &Scenario, draw: &mut Draw) -> Scenario {
    let mut drawn = vehicle.clone();
    friction(
        &mut drawn,
        draw,
        "surface.friction_peak",
        "surface.friction_sliding",
    );
    if draw.chance(0.2) {
        friction(
            &mut drawn,
            draw,
            "surface.friction_sliding_left",
            "surface.friction_sliding_right",
        );
    }
    drawn
        .set("layout", draw.one_of(Layout::NAMES))
        .expect("a layout");
    let ratio = draw.one_of(&[0.5, 0.8, 1.0, 1.25, 2.0]);
    let path = "turn_in_place.front_to_rear_wheel_speed";
    set(&mut drawn, path, ratio, "");
    let rate = draw.one_of(&[0.2, 1.0, 3.0]);
    set(&mut drawn, "turn_in_place.yaw_rate", rate, "rad/s");
    if draw.chance(0.5) {
        let time = draw.one_of(&[0.0, 0.3, 1.0, 2.5, 7.0, 30.0]);
        set(&mut drawn, "turn_in_place.time", time, "s");
    }
    drawn
}

/// Inputs of a vehicle that are varied too, in topics that are about them.
const FITTED: [&str; 4] = [
    "vehicle.max_steer_angle",
    "vehicle.motor_power",
    "vehicle.tyre_width_front",
    "vehicle.tyre_width_rear",
];

/// A state of one of the topics that read a list of layouts and words of their own.
fn newer(topic: &str, vehicle: &Scenario, draw: &mut Draw) -> Scenario {
    let mut drawn = vehicle.clone();
    if draw.chance(0.7) {
        let (peak, _) = draw.one_of(&FRICTIONS);
        set(&mut drawn, "surface.friction_peak", peak, "");
    }
    drawn.set("layouts", draw.one_of(&LISTS)).expect("layouts");
    drawn
        .set("layout", draw.one_of(Layout::NAMES))
        .expect("a layout");
    for path in topic::find(topic).expect("a topic").inputs {
        let own = path.split('.').next() == Some(topic)
            || path.ends_with("machine")
            || topic == "packaging" && FITTED.contains(path) && draw.chance(0.5);
        let choice = topic::find(topic).is_ok_and(|t| t.name == "choice");
        match &axlewright_core::input::find(path).expect("an input").kind {
            // An own cycle needs its lines.
            Kind::Choice { words, .. } if own => {
                let words: Vec<&str> = words.iter().copied().filter(|w| *w != "own").collect();
                drawn.set(path, draw.one_of(&words)).expect("a word");
            }
            Kind::Quantity { usual, .. } if own && !(choice && draw.chance(0.6)) => {
                let value = draw.between(usual.0, usual.1);
                drawn
                    .set_number(path, value)
                    .expect("the slider's range is accepted");
            }
            _ => {}
        }
    }
    if topic == "cornering" {
        drawn.unset("surface.grade");
    }
    drawn
}

fn friction(scenario: &mut Scenario, draw: &mut Draw, one: &str, other: &str) {
    let (left, right) = draw.one_of(&FRICTIONS);
    set(scenario, one, left, "");
    set(scenario, other, right, "");
}
