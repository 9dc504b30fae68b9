//! The launch: speed against time from rest, for any layout.
//!
//! The run has two halves. First the tyres limit: as much force as they hold. Then the motors do: as
//! much power as they have. Each layout moves the corner between the two.
//!
//! Model: straight road, left and right alike. The body heaves and pitches on its springs, so load
//! arrives at the rear as fast as they let it; tyres need slip for their force and some way to build it
//! up; wheels and rotors must be spun up; all motors share one battery. What a scenario does not give
//! is not applied: without springs the load moves at once, without a peak slip the tyre grips at once.

mod car;
mod course;
mod drive;
mod quick;
mod report;
mod run;
mod state;
#[cfg(test)]
mod tests;

pub use course::{Course, Point, course};
pub use quick::time_to_60_mph_s;
pub use report::TOPIC;

pub use run::{
    LONGEST_S, MARK_60_MPH, MARK_100_KM_H, MARK_160_KM_H, MARK_QUARTER_MILE, MARK_ROLLOUT, Mark,
    Outcome, Run, Watch, at_time, follow, follow_run, run,
};
pub use state::{Attitude, AxleLimit, Instant};

use crate::error::Problem;
use crate::load_transfer::Suspension;
use crate::motor::Envelope;
use crate::scenario::Scenario;
use crate::surface;
use crate::tyre::SlipCurve;
use crate::vehicle::{Air, Chassis, Slope};

/// How a tyre slips.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slip {
    /// Share of the friction against slip.
    pub curve: SlipCurve,
    /// Relaxation length λ \[m\].
    pub relaxation_m: f64,
    /// Slip that traction control holds; `None`: there is no traction control.
    pub target: Option<f64>,
}

/// What the topic asks, for any layout.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Question {
    /// Mass, wheelbase, CG.
    pub chassis: Chassis,
    /// Drag and lift areas, density.
    pub air: Air,
    /// Slope of the road.
    pub slope: Slope,
    /// Rolling-resistance coefficient f_r \[1\].
    pub rolling_resistance: f64,
    /// Peak friction μ \[1\].
    pub friction: f64,
    /// Load sensitivity k \[1\].
    pub load_sensitivity: f64,
    /// Reference load of one wheel N_0 \[N\].
    pub reference_load_n: f64,
    /// Slip; `None`: tyres grip at once and never more than their peak friction is asked of them.
    pub slip: Option<Slip>,
    /// Springs; `None`: load moves at once.
    pub springs: Option<Suspension>,
    /// One motor.
    pub motor: Envelope,
    /// Ratio between a motor and its wheels, i.
    pub ratio: f64,
    /// Efficiency of the gears η.
    pub gear_efficiency: f64,
    /// Rolling radius R \[m\].
    pub radius_m: f64,
    /// Inertia of one wheel J_w \[kg·m²\].
    pub wheel_inertia_kg_m2: f64,
    /// Inertia of one rotor J_m \[kg·m²\].
    pub rotor_inertia_kg_m2: f64,
    /// Most power of the battery P_b \[W\]; infinite where none is given.
    pub battery_w: f64,
}

impl Question {
    /// Reads the question of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let chassis = Chassis::from_scenario(scenario)?;
        let number = |path| scenario.number(path);
        let full = scenario.word("launch.model") != Some("ideal");
        let friction = scenario.require("surface.friction_peak")?;
        let controlled = scenario.word("launch.traction_control") != Some("off");
        let slip = number("vehicle.tyre_peak_slip")
            .filter(|_| full && number("vehicle.wheel_inertia").is_some())
            .map(|peak_slip| Slip {
                curve: SlipCurve::new(peak_slip, surface::sliding_over_peak(scenario, friction)),
                relaxation_m: number("vehicle.tyre_relaxation_length").unwrap_or(0.3),
                target: controlled.then(|| number("launch.slip_target").unwrap_or(peak_slip)),
            });
        Ok(Self {
            chassis,
            air: Air::from_scenario(scenario),
            slope: Slope::from_grade(number("surface.grade").unwrap_or(0.0)),
            rolling_resistance: number("vehicle.rolling_resistance").unwrap_or(0.0),
            friction,
            load_sensitivity: number("vehicle.tyre_load_sensitivity").unwrap_or(0.0),
            reference_load_n: number("vehicle.tyre_reference_load")
                .unwrap_or(0.25 * chassis.weight_n()),
            slip,
            springs: Suspension::from_scenario(scenario).filter(|_| full),
            motor: Envelope::from_scenario(scenario)?,
            ratio: scenario.require("vehicle.motor_ratio")?,
            gear_efficiency: number("vehicle.gear_efficiency").unwrap_or(1.0),
            radius_m: scenario.require("vehicle.wheel_radius")?,
            wheel_inertia_kg_m2: number("vehicle.wheel_inertia").unwrap_or(0.0),
            rotor_inertia_kg_m2: number("vehicle.rotor_inertia").unwrap_or(0.0),
            battery_w: number("vehicle.battery_power").unwrap_or(f64::INFINITY),
        })
    }

    /// The same question as the first sums on paper have it: ideal grip, load that moves at once, and
    /// nothing that must be spun up.
    #[must_use]
    pub fn on_paper(mut self) -> Self {
        self.slip = None;
        self.springs = None;
        self.wheel_inertia_kg_m2 = 0.0;
        self.rotor_inertia_kg_m2 = 0.0;
        self
    }
}
