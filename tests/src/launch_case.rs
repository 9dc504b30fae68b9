//! A launch as the reference script is asked for it.
#![allow(
    clippy::disallowed_methods,
    reason = "the script's numbers come from the standard library, not from the core's own functions"
)]

use axlewright_core::Scenario;
use serde_json::{Value, json};

/// A launch as `reference/launch.py` reads it, from the scenario and not from the core's own sums.
///
/// # Panics
/// When the scenario lacks something that a launch reads.
#[must_use]
pub fn launch_case(scenario: &Scenario) -> Value {
    let number = |path: &str| {
        let given = scenario.number(path);
        given.unwrap_or_else(|| panic!("the launch lacks {path}"))
    };
    let weight_n = 9.81 * number("vehicle.mass");
    let layout = scenario.layout();
    let full = scenario.word("launch.model") != Some("ideal");
    let peak = number("surface.friction_peak");
    let sliding = scenario.given_number("surface.friction_sliding");
    let peak_slip = number("vehicle.tyre_peak_slip");
    let target = match scenario.word("launch.traction_control") {
        Some("off") => None,
        _ => scenario.number("launch.slip_target").or(Some(peak_slip)),
    };
    let springs = json!({
        "f_front": number("vehicle.ride_frequency_front"),
        "f_rear": number("vehicle.ride_frequency_rear"),
        "zeta": number("vehicle.damping_ratio"),
        "anti_lift": number("vehicle.anti_lift_front"),
        "anti_squat": number("vehicle.anti_squat_rear"),
    });
    json!({
        "m": number("vehicle.mass"),
        "L": number("vehicle.wheelbase"),
        "a": number("vehicle.cg_to_front_axle"),
        "h": number("vehicle.cg_height"),
        "R": number("vehicle.wheel_radius"),
        "J_w": number("vehicle.wheel_inertia"),
        "J_m": number("vehicle.rotor_inertia"),
        "T": number("vehicle.motor_torque"),
        "P": number("vehicle.motor_power"),
        "i": number("vehicle.motor_ratio"),
        "eta": number("vehicle.gear_efficiency"),
        "P_b": scenario.number("vehicle.battery_power").unwrap_or(1e12),
        "CdA": number("vehicle.drag_area"),
        "h_d": scenario.number("vehicle.drag_height").unwrap_or(number("vehicle.cg_height")),
        "ClA_f": number("vehicle.lift_area_front"),
        "ClA_r": number("vehicle.lift_area_rear"),
        "rho": number("air.density"),
        "f_r": number("vehicle.rolling_resistance"),
        "k": number("vehicle.tyre_load_sensitivity"),
        "N_0": scenario.number("vehicle.tyre_reference_load").unwrap_or(0.25 * weight_n),
        "mu": peak,
        // Without a word on sliding friction, the ratio of dry asphalt in the adhesion table.
        "sliding": sliding.map_or(0.75 / 0.85, |sliding| sliding / peak),
        "peak_slip": full.then_some(peak_slip),
        "relaxation": number("vehicle.tyre_relaxation_length"),
        "target": target,
        "springs": full.then_some(springs),
        "theta": number("surface.grade").atan(),
        "motors": [layout.front().motors(), layout.rear().motors()],
    })
}
