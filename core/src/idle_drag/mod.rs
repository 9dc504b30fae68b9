//! What an idle motor costs: losses of the motors by their kind, the torque shared between the axles for
//! the least loss, and the energy over a cycle for each layout.
//!
//! A magnet cannot be switched off: its field drags iron past it even at no torque. An induction machine
//! without current has no field, and an axle disconnect stops either.
//!
//! Model: second by second, from the speed at the cycle's whole seconds. Losses of a motor are those of
//! [`crate::motor::Losses`], with its inverter's in the copper. The motors of an axle make the same
//! torque. Every motor is like every other but for its kind; the car weighs the same with any layout. A
//! disconnected rotor is counted among the turning masses all the same: it must be brought up to speed
//! before it is of use. Losses of motors that turn along are met by the battery.

mod course;
mod energy;
mod report;
pub mod split;
#[cfg(test)]
mod tests;
pub mod trace;
pub mod wltc;

pub use course::course;
pub use energy::{Demand, Drive, Moment, Step, Tally, drive, follow, primary};
pub use report::{COLUMNS, TOPIC};

use crate::error::{Allowed, Problem};
use crate::layout::Layout;
use crate::motor::{Envelope, Losses, Machine};
use crate::scenario::Scenario;
use crate::vehicle::Slope;
use std::rc::Rc;
use trace::Trace;

/// The cycles to choose from.
pub const CYCLES: &[&str] = &["wltc", "steady", "own"];

/// What the chart shows.
pub const CHARTS: &[&str] = &["idle_losses", "best_split", "energy", "speed"];

/// Axles that have a disconnect.
pub const DISCONNECTS: &[&str] = &["none", "front", "rear", "both"];

/// What is driven.
#[derive(Clone, Debug, PartialEq)]
pub enum Cycle {
    /// The published cycle, WLTC class 3b.
    Wltc,
    /// A steady speed \[m/s\].
    Steady(f64),
    /// A trace that the reader supplies.
    Own(Rc<Trace>),
}

/// How long a steady speed is held \[s\]; the energy for a distance does not depend on it.
const STEADY_S: f64 = 600.0;

impl Cycle {
    /// Gives every step in order.
    pub fn each(&self, take: &mut dyn FnMut(Step)) {
        match self {
            Self::Wltc => {
                let mut before_m_s = 0.0;
                for speed_km_h in wltc::speeds_km_h().skip(1) {
                    let to_m_s = speed_km_h / 3.6;
                    take(Step {
                        length_s: 1.0,
                        from_m_s: before_m_s,
                        to_m_s,
                    });
                    before_m_s = to_m_s;
                }
            }
            Self::Steady(speed_m_s) => take(Step {
                length_s: STEADY_S,
                from_m_s: *speed_m_s,
                to_m_s: *speed_m_s,
            }),
            Self::Own(trace) => trace.each(take),
        }
    }

    /// Its time \[s\] and distance \[m\].
    #[must_use]
    pub fn length(&self) -> (f64, f64) {
        let (mut time_s, mut distance_m) = (0.0, 0.0);
        self.each(&mut |step| {
            time_s += step.length_s;
            distance_m += 0.5 * (step.from_m_s + step.to_m_s) * step.length_s;
        });
        (time_s, distance_m)
    }
}

/// What the topic asks, for any layout.
#[derive(Clone, Debug, PartialEq)]
pub struct Question {
    /// Mass m \[kg\].
    pub mass_kg: f64,
    /// Drag area C_d·A \[m²\].
    pub drag_area_m2: f64,
    /// Density of the air ρ \[kg/m³\].
    pub density_kg_m3: f64,
    /// Rolling-resistance coefficient f_r \[1\].
    pub rolling_resistance: f64,
    /// Slope of the road.
    pub slope: Slope,
    /// Rolling radius R \[m\].
    pub radius_m: f64,
    /// Ratio between a motor and its wheels, i.
    pub ratio: f64,
    /// Efficiency of the gears η.
    pub gear_efficiency: f64,
    /// Inertia of one wheel J_w \[kg·m²\].
    pub wheel_inertia_kg_m2: f64,
    /// Inertia of one rotor J_m \[kg·m²\].
    pub rotor_inertia_kg_m2: f64,
    /// One motor.
    pub motor: Envelope,
    /// What a motor of the front and of the rear axle loses.
    pub losses: [Losses; 2],
    /// Whether the front and the rear axle have a disconnect.
    pub disconnect: [bool; 2],
    /// Most power at the shafts with which the motors brake, P_r \[W\].
    pub regeneration_w: f64,
    /// Power of all that does not drive, P_a \[W\].
    pub auxiliary_w: f64,
    /// Usable energy of the battery E_b \[J\], where given.
    pub battery_j: Option<f64>,
    /// Speed of the point that is looked at, V \[m/s\].
    pub speed_m_s: f64,
    /// Acceleration of that point, a_x \[m/s²\].
    pub acceleration_m_s2: f64,
    /// What is driven.
    pub cycle: Cycle,
}

impl Question {
    /// Reads the question of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let or_zero = |path| scenario.number(path).unwrap_or(0.0);
        let motor = Envelope::from_scenario(scenario)?;
        scenario.require("vehicle.motor_power")?;
        let machine = |path| Machine::from_name(scenario.word(path).unwrap_or_default());
        let disconnect = scenario.word("vehicle.disconnect").unwrap_or_default();
        let speed_m_s = scenario.require("idle_drag.speed")?;
        // A trace that is given is read also while another cycle is driven: what is wrong with it is
        // told at once.
        let own = scenario.text("idle_drag.trace").map(trace::known);
        let own = own.transpose()?;
        let cycle = match scenario.word("idle_drag.cycle") {
            Some("own") => Cycle::Own(own.ok_or_else(no_trace)?),
            Some("steady") => Cycle::Steady(moving(speed_m_s)?),
            _ => Cycle::Wltc,
        };
        Ok(Self {
            mass_kg: scenario.require("vehicle.mass")?,
            drag_area_m2: or_zero("vehicle.drag_area"),
            density_kg_m3: or_zero("air.density"),
            rolling_resistance: or_zero("vehicle.rolling_resistance"),
            slope: Slope::from_grade(or_zero("surface.grade")),
            radius_m: scenario.require("vehicle.wheel_radius")?,
            ratio: scenario.require("vehicle.motor_ratio")?,
            gear_efficiency: scenario.number("vehicle.gear_efficiency").unwrap_or(1.0),
            wheel_inertia_kg_m2: or_zero("vehicle.wheel_inertia"),
            rotor_inertia_kg_m2: or_zero("vehicle.rotor_inertia"),
            losses: ["vehicle.front_machine", "vehicle.rear_machine"]
                .map(|path| losses(scenario, &motor, machine(path))),
            motor,
            disconnect: ["front", "rear"].map(|axle| disconnect == axle || disconnect == "both"),
            regeneration_w: or_zero("idle_drag.regeneration_power"),
            auxiliary_w: or_zero("idle_drag.auxiliary_power"),
            battery_j: scenario.number("vehicle.battery_energy"),
            speed_m_s,
            acceleration_m_s2: or_zero("idle_drag.acceleration"),
            cycle,
        })
    }

    /// Speed of the motors at the speed looked at, ω = V·i/R \[rad/s\].
    #[must_use]
    pub fn motor_rad_s(&self) -> f64 {
        self.speed_m_s * self.ratio / self.radius_m
    }

    /// Loss of one motor that makes no torque at the speed looked at \[W\], by its kind.
    #[must_use]
    pub fn idle_w(&self, machine: Machine, scenario: &Scenario) -> f64 {
        losses(scenario, &self.motor, machine)
            .at(self.motor_rad_s())
            .idle_w
    }
}

fn no_trace() -> Problem {
    Problem::NoAnswer {
        field: "idle_drag.cycle",
        value: "own".into(),
        why: "why.no_trace",
        allowed: Allowed::Sentence("allowed.own_cycle"),
    }
}

/// A speed that is more than nothing: at rest no distance is covered.
fn moving(speed_m_s: f64) -> Result<f64, Problem> {
    if speed_m_s > 0.0 {
        return Ok(speed_m_s);
    }
    Err(Problem::NoAnswer {
        field: "idle_drag.speed",
        value: crate::format::plain(speed_m_s) + " m/s",
        why: "why.no_distance",
        allowed: Allowed::Sentence("allowed.some_speed"),
    })
}

/// The loss coefficients of a motor: each input is a share of the peak power, reached at peak torque
/// (copper) or at the base speed (iron, bearings, windage) with full flux.
#[must_use]
pub fn losses(scenario: &Scenario, motor: &Envelope, machine: Machine) -> Losses {
    let part = |path| scenario.number(path).unwrap_or(0.0) * motor.power_w;
    let base_rad_s = motor.base_speed_rad_s();
    let (copper, field) = match machine {
        Machine::PermanentMagnet => ("vehicle.copper_loss_magnet", "vehicle.weakening_loss"),
        Machine::Induction => ("vehicle.copper_loss_induction", "vehicle.magnetising_loss"),
    };
    Losses {
        machine,
        base_rad_s,
        copper: part(copper) / (motor.torque_n_m * motor.torque_n_m),
        field_w: part(field),
        hysteresis: part("vehicle.hysteresis_loss") / base_rad_s,
        eddy: part("vehicle.eddy_loss") / (base_rad_s * base_rad_s),
        bearing: part("vehicle.bearing_loss") / base_rad_s,
        windage: part("vehicle.windage_loss") / (base_rad_s * base_rad_s * base_rad_s),
    }
}

/// Motors of the front and of the rear axle.
#[must_use]
pub fn counts(layout: Layout) -> [f64; 2] {
    [layout.front(), layout.rear()].map(|axle| f64::from(axle.motors()))
}
