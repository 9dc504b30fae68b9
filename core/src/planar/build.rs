//! The car of a scenario. What the scenario does not give is not applied: without a CG height no load
//! moves, without a friction the tyres are as stiff as they are at first for ever.

use super::{Car, Tyre};
use crate::error::Problem;
use crate::layout::Layout;
use crate::scenario::Scenario;
use crate::surface::{self, Friction};
use crate::tyre::SlipCurve;
use crate::vehicle::{Air, Chassis, Slope};

/// Least inertia of a wheel over m·R²: below it the equations say nothing more and only take longer.
const LEAST_INERTIA: f64 = 6e-4;

/// Slip of most force where none is given.
const USUAL_PEAK_SLIP: f64 = 0.1;

impl Car {
    /// The car of a scenario with the motors of a layout.
    ///
    /// Where the scenario gives a cornering stiffness, the tyre has it at its load at rest on the level.
    /// Where it gives no friction, `curve` is `None` and a cornering stiffness is needed.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario.
    pub fn from_scenario(scenario: &Scenario, layout: Layout) -> Result<Self, Problem> {
        let chassis = Chassis::without_height(scenario)?;
        let number = |path| scenario.number(path);
        let radius_m = number("vehicle.wheel_radius").unwrap_or(0.3);
        let track_front = number("vehicle.track_front");
        let track_rear = number("vehicle.track_rear");
        let wheel = number("vehicle.wheel_inertia").unwrap_or(0.0);
        let rotor = number("vehicle.rotor_inertia").unwrap_or(0.0);
        let ratio = number("vehicle.motor_ratio").unwrap_or(0.0);
        let least = LEAST_INERTIA * chassis.mass_kg() * radius_m * radius_m;
        let [front, rear] = [layout.front(), layout.rear()].map(|axle| {
            // Half of what turns with the axle: J_w + n·J_m·i²/2
            let driven = 0.5 * f64::from(axle.motors()) * rotor * ratio * ratio;
            (wheel + driven).max(least)
        });
        let (a, b) = (chassis.cg_to_front_axle_m(), chassis.cg_to_rear_axle_m());
        Ok(Self {
            chassis,
            yaw_inertia_kg_m2: number("vehicle.yaw_inertia").unwrap_or(chassis.mass_kg() * a * b),
            // One track width, as textbooks give it, serves for both axles; none is a single track.
            tracks_m: [
                track_front.or(track_rear).unwrap_or(0.0),
                track_rear.or(track_front).unwrap_or(0.0),
            ],
            roll_front_share: number("vehicle.roll_stiffness_front_share").unwrap_or(0.5),
            radius_m,
            wheel_inertias_kg_m2: [front, front, rear, rear],
            rolling_resistance: number("vehicle.rolling_resistance").unwrap_or(0.0),
            air: Air::from_scenario(scenario),
            slope: Slope::from_grade(number("surface.grade").unwrap_or(0.0)),
            tyres: tyres(scenario, &chassis)?,
            relaxation_m: number("vehicle.tyre_relaxation_length").unwrap_or(0.3),
        })
    }
}

fn tyres(scenario: &Scenario, chassis: &Chassis) -> Result<[Tyre; 4], Problem> {
    let number = |path| scenario.number(path);
    let weight_n = chassis.weight_n();
    let front_n = 0.5 * weight_n * chassis.cg_to_rear_axle_m() / chassis.wheelbase_m();
    let wheel_loads_n = [front_n, 0.5 * weight_n - front_n];
    let stiffness = [
        "vehicle.cornering_stiffness_front",
        "vehicle.cornering_stiffness_rear",
    ];
    let known = number("surface.friction_peak").is_some()
        || (number("surface.friction_peak_left").is_some()
            && number("surface.friction_peak_right").is_some());
    if !known {
        let tyre = |axle: usize| -> Result<Tyre, Problem> {
            // F = N·σ/σ_1 with σ_1 = N_0/C: at the load at rest it is C·σ.
            let unit_slip = wheel_loads_n[axle] / scenario.require(stiffness[axle])?;
            Ok(Tyre {
                friction: 1.0,
                sensitivity: 0.0,
                reference_n: wheel_loads_n[axle],
                peak_slip: [unit_slip; 2],
                curve: None,
            })
        };
        let (front, rear) = (tyre(0)?, tyre(1)?);
        return Ok([front, front, rear, rear]);
    }
    let friction = Friction::peak(scenario)?;
    let sides = [friction.peak_left, friction.peak_right];
    let mean = 0.5 * (sides[0] + sides[1]);
    let along = number("vehicle.tyre_peak_slip").unwrap_or(USUAL_PEAK_SLIP);
    let curve = SlipCurve::new(along, surface::sliding_over_peak(scenario, mean));
    let sensitivity = number("vehicle.tyre_load_sensitivity").unwrap_or(0.0);
    let reference_n = number("vehicle.tyre_reference_load").unwrap_or(0.25 * weight_n);
    let tyre = |axle: usize, friction: f64| {
        let load_n = wheel_loads_n[axle];
        let grip_n = friction * load_n * surface::load_factor(sensitivity, load_n, reference_n);
        // The slope at no slip, y'(0)·μ·N/σ_p, is the cornering stiffness.
        let across = number(stiffness[axle]).map_or(along, |stiff| {
            grip_n * curve.slope() * curve.peak_slip() / stiff
        });
        Tyre {
            friction,
            sensitivity,
            reference_n,
            peak_slip: [along, across],
            curve: Some(curve),
        }
    };
    Ok([
        tyre(0, sides[0]),
        tyre(0, sides[1]),
        tyre(1, sides[0]),
        tyre(1, sides[1]),
    ])
}
