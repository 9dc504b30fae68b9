//! The planar model: a car on four tyres, seen from above, on any path and at any speed, also at rest.
//!
//! State: position and heading, the velocity of the CG in the car's own frame, yaw rate, the speeds of
//! the four wheels, and the slip that each tyre has built up. Wheel loads follow the tyre forces at
//! once (quasi-static), lengthwise and across, with the roll stiffness shared between the axles. Axes
//! and signs are those of ISO 8855.
//!
//! Slip is a state with a relaxation length. At rest it is the deflection of the tyre, so the car hangs
//! on springs: it holds on a slope and does not creep, and nothing is divided by the speed. Drilling
//! and aligning moments of the patches are left out.

mod build;
mod instant;
mod loads;
mod step;
#[cfg(test)]
mod tests;

pub use instant::Instant;
pub use loads::Loads;
pub use step::{advance, run};

use crate::math;
use crate::tyre::SlipCurve;
use crate::vehicle::{Air, Chassis, Slope};

/// Count of numbers of a state.
pub const STATES: usize = 18;

/// A state: position x, y \[m\] and heading ψ \[rad\]; velocity u forward and v to the left \[m/s\]; yaw
/// rate r \[rad/s\]; wheel speeds ω \[rad/s\]; slips σ along and across each wheel \[1\].
///
/// Wheels stand in the order front left, front right, rear left, rear right.
pub type State = [f64; STATES];

/// Places in the state.
pub const X: usize = 0;
/// To the left of the x axis of the ground.
pub const Y: usize = 1;
/// Heading ψ, anticlockwise from the x axis of the ground.
pub const HEADING: usize = 2;
/// Velocity forward, u.
pub const FORWARD: usize = 3;
/// Velocity to the left, v.
pub const LEFTWARD: usize = 4;
/// Yaw rate r.
pub const YAW_RATE: usize = 5;
/// Wheel speeds ω, four of them from here.
pub const WHEEL: usize = 6;
/// Slips along the wheels, four from here.
pub const SLIP_ALONG: usize = 10;
/// Slips across the wheels, four from here.
pub const SLIP_ACROSS: usize = 14;

/// The tyre of one wheel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tyre {
    /// Peak friction μ of this tyre on the ground under it, at its reference load \[1\].
    pub friction: f64,
    /// Load sensitivity k \[1\].
    pub sensitivity: f64,
    /// Reference load N_0 \[N\].
    pub reference_n: f64,
    /// Slip of most force, along and across \[1\].
    pub peak_slip: [f64; 2],
    /// Share of the friction against slip; `None`: force grows with slip without end, as in the first
    /// sums of a textbook, and `peak_slip` is where it would be μ·N.
    pub curve: Option<SlipCurve>,
}

/// A car with its tyres on its ground: all that does not change on the way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Car {
    /// Mass, wheelbase, CG.
    pub chassis: Chassis,
    /// Moment of inertia about the vertical axis, I_z \[kg·m²\].
    pub yaw_inertia_kg_m2: f64,
    /// Track widths, front and rear \[m\].
    pub tracks_m: [f64; 2],
    /// Share of the roll moment that the front axle carries, φ \[1\].
    pub roll_front_share: f64,
    /// Rolling radius R \[m\].
    pub radius_m: f64,
    /// Inertia that turns with each wheel \[kg·m²\].
    pub wheel_inertias_kg_m2: [f64; 4],
    /// Rolling-resistance coefficient f_r \[1\].
    pub rolling_resistance: f64,
    /// Drag and lift areas, density.
    pub air: Air,
    /// Slope of the ground, uphill along its x axis.
    pub slope: Slope,
    /// The tyres.
    pub tyres: [Tyre; 4],
    /// Relaxation length λ \[m\].
    pub relaxation_m: f64,
}

/// What the driver and the machines ask for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Controls {
    /// Cosine and sine of the steer angle of each wheel, to the left positive.
    pub directions: [(f64, f64); 4],
    /// Torques that drive the wheels \[N·m\].
    pub torques_n_m: [f64; 4],
    /// Torques that the brakes can hold \[N·m\], not negative.
    pub brakes_n_m: [f64; 4],
    /// A yaw moment from outside \[N·m\].
    pub yaw_moment_n_m: f64,
}

impl Controls {
    /// Nothing driven, nothing braked, the axles steered by these angles \[rad\].
    #[must_use]
    pub fn steered(front_rad: f64, rear_rad: f64) -> Self {
        let direction = |angle: f64| (math::cos(angle), math::sin(angle));
        let (front, rear) = (direction(front_rad), direction(rear_rad));
        Self {
            directions: [front, front, rear, rear],
            torques_n_m: [0.0; 4],
            brakes_n_m: [0.0; 4],
            yaw_moment_n_m: 0.0,
        }
    }
}

impl Car {
    /// Place of a wheel: ahead of the CG and to the left of it \[m\].
    #[must_use]
    pub fn place_m(&self, wheel: usize) -> (f64, f64) {
        let chassis = &self.chassis;
        let (ahead, track) = if wheel < 2 {
            (chassis.cg_to_front_axle_m(), self.tracks_m[0])
        } else {
            (-chassis.cg_to_rear_axle_m(), self.tracks_m[1])
        };
        let side = if wheel.is_multiple_of(2) { 0.5 } else { -0.5 };
        (ahead, side * track)
    }

    /// Velocity of a hub in the frame of the car: forward and to the left \[m/s\].
    #[must_use]
    pub fn hub_m_s(&self, state: &State, wheel: usize) -> (f64, f64) {
        let (ahead, left) = self.place_m(wheel);
        let yaw = state[YAW_RATE];
        (state[FORWARD] - yaw * left, state[LEFTWARD] + yaw * ahead)
    }

    /// Kinetic energy of body and wheels \[J\].
    #[must_use]
    pub fn kinetic_j(&self, state: &State) -> f64 {
        let (u, v, r) = (state[FORWARD], state[LEFTWARD], state[YAW_RATE]);
        let mut twice = self.chassis.mass_kg() * (u * u + v * v) + self.yaw_inertia_kg_m2 * r * r;
        for (wheel, inertia) in self.wheel_inertias_kg_m2.iter().enumerate() {
            twice += inertia * state[WHEEL + wheel] * state[WHEEL + wheel];
        }
        0.5 * twice
    }

    /// A state with the wheels rolling as the ground under them moves, and every slip what it is in
    /// steady rolling.
    #[must_use]
    pub fn rolling(&self, controls: &Controls, (u, v, r): (f64, f64, f64)) -> State {
        let mut state = [0.0; STATES];
        state[FORWARD] = u;
        state[LEFTWARD] = v;
        state[YAW_RATE] = r;
        for wheel in 0..4 {
            let (cos, sin) = controls.directions[wheel];
            let (forward, left) = self.hub_m_s(&state, wheel);
            state[WHEEL + wheel] = (cos * forward + sin * left) / self.radius_m;
        }
        self.settle_slips(controls, &mut state);
        state
    }

    /// Sets every slip to what it becomes at these speeds.
    pub fn settle_slips(&self, controls: &Controls, state: &mut State) {
        for wheel in 0..4 {
            let slide = instant::slide(self, controls, state, wheel);
            let share = if slide.carry_m_s > 0.0 {
                1.0 / slide.carry_m_s
            } else {
                0.0
            };
            state[SLIP_ALONG + wheel] = slide.along_m_s * share;
            state[SLIP_ACROSS + wheel] = slide.across_m_s * share;
        }
    }
}
