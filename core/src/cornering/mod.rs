//! Cornering, and torque moved from left to right: what two motors on one axle can do that one cannot.
//!
//! Model: the planar model on level ground ([`crate::planar`]), held in a steady turn to the
//! left; right is its mirror image, with the sides of the road changed over. The closed forms of the single track stand beside it. What a
//! scenario does not give is not applied, so a textbook case enters as it is printed.

mod diagram;
mod radius;
mod reach;
mod report;
mod single_track;
mod step_steer;
#[cfg(test)]
mod tests;
mod trim;
mod vectoring;
mod working;

pub use diagram::{Trace, diagram};
pub use radius::{Curve, Held, Point, constant_radius};
pub use reach::{Reach, Reaches, reaches};
pub use report::TOPIC;
pub use single_track::SingleTrack;
pub use step_steer::{Response, Sample, step_steer};
pub use trim::{Trim, Turn, trim};
pub use vectoring::{Help, Way, help};

use crate::error::{Allowed, Problem};
use crate::layout::Layout;
use crate::math;
use crate::motor::Envelope;
use crate::planar::Car;
use crate::scenario::Scenario;
use crate::units::Dimension;

/// The motors, as far as they limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Motor {
    /// Torque against speed of one.
    pub envelope: Envelope,
    /// Ratio between a motor and its wheels, i.
    pub ratio: f64,
    /// Efficiency of the gears η.
    pub gear_efficiency: f64,
}

/// What the topic asks, for one layout.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Question {
    /// The car on its ground.
    pub car: Car,
    /// Where its motors are.
    pub layout: Layout,
    /// Cornering stiffness of one tyre, front and rear \[N/rad\].
    pub stiffness_n_rad: [f64; 2],
    /// Speed V \[m/s\].
    pub speed_m_s: f64,
    /// Radius of the path of the CG, R \[m\].
    pub radius_m: f64,
    /// Yaw moment that is to be made, M_z \[N·m\].
    pub moment_n_m: f64,
    /// Axle that makes it: 0 front, 1 rear.
    pub axle: usize,
    /// Share of the moment that brakes on the front axle make in the mixed case.
    pub front_share: f64,
    /// Efficiency of the drive between battery and wheel, either way.
    pub drive_efficiency: f64,
    /// The motors; `None`: they do not limit.
    pub motor: Option<Motor>,
    /// Steer angle at full lock \[rad\]; `None`: nothing stops the wheels.
    pub max_steer_rad: Option<f64>,
}

impl Question {
    /// Reads the question of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario; [`Problem::OutOfRange`] for a radius below the least that the
    /// steering allows.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let number = |path| scenario.number(path);
        if number("surface.grade").is_some_and(|grade| grade != 0.0) {
            return Err(Problem::NoAnswer {
                field: "surface.grade",
                value: scenario.text("surface.grade").unwrap_or_default().into(),
                why: "why.slope_turns",
                allowed: Allowed::Sentence("allowed.level"),
            });
        }
        let stiffness_n_rad = [
            scenario.require("vehicle.cornering_stiffness_front")?,
            scenario.require("vehicle.cornering_stiffness_rear")?,
        ];
        let layout = scenario.layout();
        let car = Car::from_scenario(scenario, layout)?;
        let radius_m = scenario.require("cornering.radius")?;
        let max_steer_rad = number("vehicle.max_steer_angle");
        let least_m = least_radius_m(&car, max_steer_rad);
        if radius_m <= least_m {
            return Err(Problem::OutOfRange {
                field: "cornering.radius".into(),
                value: scenario
                    .text("cornering.radius")
                    .map_or_else(|| crate::format::plain(radius_m) + " m", ToOwned::to_owned),
                allowed: Allowed::Inside {
                    min: least_m,
                    max: 1e5,
                    dimension: Dimension::Length,
                },
            });
        }
        let motor = match (
            number("vehicle.motor_torque"),
            number("vehicle.motor_ratio"),
        ) {
            (Some(_), Some(ratio)) => Some(Motor {
                envelope: Envelope::from_scenario(scenario)?,
                ratio,
                gear_efficiency: number("vehicle.gear_efficiency").unwrap_or(1.0),
            }),
            _ => None,
        };
        Ok(Self {
            car,
            layout,
            stiffness_n_rad,
            speed_m_s: scenario.require("cornering.speed")?,
            radius_m,
            moment_n_m: number("cornering.yaw_moment").unwrap_or(0.0),
            axle: usize::from(scenario.word("cornering.axle") != Some("front")),
            front_share: number("cornering.front_share").unwrap_or(0.5),
            drive_efficiency: number("vehicle.drive_efficiency").unwrap_or(1.0),
            motor,
            max_steer_rad,
        })
    }

    /// Lateral acceleration of the turn that is asked for, a_y = V²/R \[m/s²\].
    #[must_use]
    pub fn lateral_m_s2(&self) -> f64 {
        self.speed_m_s * self.speed_m_s / self.radius_m
    }

    /// Share of the drive torque that each wheel of a layout gets: like motors give alike.
    #[must_use]
    pub fn drive_shares(&self) -> [f64; 4] {
        let all = f64::from(self.layout.motors());
        let [front, rear] = [self.layout.front(), self.layout.rear()]
            .map(|axle| 0.5 * f64::from(axle.motors()) / all);
        [front, front, rear, rear]
    }

    /// Largest tractive force of one wheel that the motors of an axle of a layout have at a speed
    /// \[N\]; infinite where no motor is given, none on an axle without motors.
    #[must_use]
    pub fn motor_force_n(&self, layout: Layout, axle: usize, speed_m_s: f64) -> f64 {
        let motors = [layout.front(), layout.rear()][axle].motors();
        if motors == 0 {
            return 0.0;
        }
        let Some(motor) = &self.motor else {
            return f64::INFINITY;
        };
        let radius_m = self.car.radius_m;
        let (torque_n_m, _) = motor.envelope.torque(speed_m_s * motor.ratio / radius_m);
        let of_one_n = torque_n_m * motor.ratio * motor.gear_efficiency / radius_m;
        0.5 * f64::from(motors) * of_one_n
    }
}

/// Radius below which the CG cannot turn: √(b² + (L/tan δ_m)²), or b with nothing to stop the wheels.
fn least_radius_m(car: &Car, max_steer_rad: Option<f64>) -> f64 {
    let reach_m = max_steer_rad
        .filter(|angle| *angle > 0.0)
        .map_or(0.0, |angle| car.chassis.wheelbase_m() / math::tan(angle));
    math::hypot(car.chassis.cg_to_rear_axle_m(), reach_m)
}
