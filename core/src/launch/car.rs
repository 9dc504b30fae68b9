//! The car at one instant of the run: its loads, its forces, and the rates of its state.

use super::Question;
use super::drive::Surroundings;
use super::state::{
    Attitude, AxleLimit, DISTANCE, DRAG_WORK, HOLD, Instant, MOTOR_WORK, PUSH, ROLLING_WORK, SLIP,
    SLIP_HEAT, SPEED, SPRING, TREAD,
};
use crate::GRAVITY_M_S2;
use crate::integrate::State;
use crate::layout::Layout;
use crate::load_transfer::{self, AxleLoads};
use crate::tyre;
use crate::vehicle::{AirForces, Slope};
use core::f64::consts::TAU;

/// Least mass of the spinning parts of an axle, as a share of the car's: below it the equations say
/// nothing more and only take longer.
const LEAST_SPINNING: f64 = 5e-4;

/// A layout of the question, with all that does not change during a run.
pub(super) struct Car<'a> {
    pub(super) question: &'a Question,
    /// Motors of each axle.
    pub(super) motors: [f64; 2],
    /// Mass of the spinning parts of each axle, J/R² \[kg\].
    pub(super) spinning_kg: [f64; 2],
    /// Axle loads at rest on the level \[N\].
    level_n: [f64; 2],
    /// Load that a metre per second squared moves, m·h/L \[kg\].
    moved_kg: f64,
    /// Grade resistance W·sin θ \[N\].
    pub(super) grade_n: f64,
}

/// Loads as straight lines in the acceleration: N = at_rest + per_m_s2·a.
#[derive(Clone, Copy)]
struct LoadLines {
    at_rest_n: [f64; 2],
    per_m_s2: [f64; 2],
}

impl<'a> Car<'a> {
    pub(super) fn new(question: &'a Question, layout: Layout) -> Self {
        let chassis = &question.chassis;
        let motors = [layout.front(), layout.rear()].map(|axle| f64::from(axle.motors()));
        let square = question.radius_m * question.radius_m;
        let least_kg = if question.slip.is_some() {
            LEAST_SPINNING * chassis.mass_kg()
        } else {
            0.0
        };
        let level =
            load_transfer::axle_loads(chassis, &AirForces::default(), Slope::from_grade(0.0), 0.0);
        Self {
            question,
            motors,
            spinning_kg: motors.map(|count| {
                // J = 2·J_w + n·J_m·i²
                let inertia = 2.0 * question.wheel_inertia_kg_m2
                    + count * question.rotor_inertia_kg_m2 * question.ratio * question.ratio;
                (inertia / square).max(least_kg)
            }),
            level_n: [level.front_n, level.rear_n],
            moved_kg: chassis.mass_kg() * chassis.cg_height_m() / chassis.wheelbase_m(),
            grade_n: chassis.weight_n() * question.slope.sin,
        }
    }

    pub(super) fn driven(&self, axle: usize) -> bool {
        self.motors[axle] > 0.0
    }

    /// Loads in steady state, front and rear, at an acceleration \[N\].
    fn steady_n(&self, air: &AirForces, acceleration_m_s2: f64) -> [f64; 2] {
        let question = self.question;
        let AxleLoads { front_n, rear_n } =
            load_transfer::axle_loads(&question.chassis, air, question.slope, acceleration_m_s2);
        [front_n, rear_n]
    }

    /// ω, 2·ζ·ω, and the share of a load change that the springs carry, at each end.
    fn springs(&self) -> Option<[(f64, f64, f64); 2]> {
        self.question.springs.map(|springs| {
            let end = |frequency_hz: f64, anti: f64| {
                let omega = TAU * frequency_hz;
                (omega, 2.0 * springs.damping_ratio * omega, 1.0 - anti)
            };
            [
                end(springs.ride_frequency_front_hz, springs.anti_lift_front),
                end(springs.ride_frequency_rear_hz, springs.anti_squat_rear),
            ]
        })
    }

    /// The state at rest, with the body on its springs as the slope has it.
    pub(super) fn at_rest(&self) -> State {
        let mut state = [0.0; crate::integrate::MOST];
        if let Some(springs) = self.springs() {
            let steady = self.steady_n(&self.question.air.forces(0.0), 0.0);
            for (axle, (omega, _, share)) in springs.into_iter().enumerate() {
                let end_kg = self.level_n[axle] / GRAVITY_M_S2;
                let moved_n = self.gained_n(axle, steady);
                state[SPRING[axle]] = share * moved_n / (end_kg * omega * omega);
            }
        }
        state
    }

    /// Load that moves the springs of an axle: lost by the front, gained by the rear.
    fn gained_n(&self, axle: usize, steady_n: [f64; 2]) -> f64 {
        if axle == 0 {
            self.level_n[0] - steady_n[0]
        } else {
            steady_n[1] - self.level_n[1]
        }
    }

    fn load_lines(&self, state: &State, still_n: [f64; 2]) -> LoadLines {
        let steady = LoadLines {
            at_rest_n: still_n,
            per_m_s2: [-self.moved_kg, self.moved_kg],
        };
        let Some(springs) = self.springs() else {
            return steady;
        };
        let mut lines = steady;
        for (axle, (omega, damping, share)) in springs.into_iter().enumerate() {
            let end_kg = self.level_n[axle] / GRAVITY_M_S2;
            let at = SPRING[axle];
            // Springs and dampers press with k·x + c·dx/dt; the links pass on the rest at once.
            let pressed_n = end_kg * (omega * omega * state[at] + damping * state[at + 1]);
            let linked_n = (1.0 - share) * self.gained_n(axle, still_n);
            let sign = if axle == 0 { -1.0 } else { 1.0 };
            lines.at_rest_n[axle] = self.level_n[axle] + sign * (pressed_n + linked_n);
            lines.per_m_s2[axle] *= 1.0 - share;
        }
        lines
    }

    /// The car at a state, and the rates of that state where they are wanted.
    pub(super) fn instant(&self, state: &State, rates: Option<&mut State>) -> Instant {
        let question = self.question;
        let speed = state[SPEED];
        let air = question.air.forces(speed);
        let still_n = self.steady_n(&air, 0.0);
        let lines = self.load_lines(state, still_n);
        let loads =
            |a: f64| [0, 1].map(|axle| (lines.at_rest_n[axle] + lines.per_m_s2[axle] * a).max(0.0));
        let along_n = air.drag_n + self.grade_n;
        let rolling_n =
            question.rolling_resistance * (lines.at_rest_n[0] + lines.at_rest_n[1]).max(0.0);
        let resistance_n = along_n + rolling_n;
        // Highest acceleration with the front wheels on the ground.
        let lift = if self.moved_kg > 0.0 {
            still_n[0] / self.moved_kg
        } else {
            f64::INFINITY
        };
        let mut instant = Instant {
            acceleration_m_s2: 0.0,
            loads_n: [0.0; 2],
            forces_n: [0.0; 2],
            limits: [AxleLimit::Undriven; 2],
            motor_w: 0.0,
            air,
            rolling_n,
        };
        let treads = match question.slip {
            None => [speed; 2],
            Some(_) => TREAD.map(|at| state[at]),
        };
        let grip = |axle: usize, load_n: f64| {
            let (grip_n, per_n) = tyre::axle_grip(
                question.friction,
                load_n,
                question.load_sensitivity,
                question.reference_load_n,
            );
            (grip_n, per_n * lines.per_m_s2[axle])
        };
        let around = Surroundings {
            resistance_n,
            lift_m_s2: lift,
            loads: &loads,
            grip: &grip,
        };
        // Force that the motors bring to the rims of the wheels.
        let mut rims_n = [0.0; 2];
        match &question.slip {
            None => self.gripping(&mut instant, &mut rims_n, speed, &around),
            Some(slip) => self.slipping(&mut instant, &mut rims_n, state, slip, &around),
        }
        // The brake holds the car until the tyres push harder than the hill.
        if speed <= 0.0 && instant.acceleration_m_s2 < 0.0 {
            instant.acceleration_m_s2 = 0.0;
        }
        let asked = rims_n[0] * treads[0] + rims_n[1] * treads[1];
        instant.motor_w = asked / question.gear_efficiency;
        if let Some(rates) = rates {
            self.rates(state, &instant, (rims_n, treads), still_n, rates);
        }
        instant
    }

    fn rates(
        &self,
        state: &State,
        instant: &Instant,
        (rims_n, treads_m_s): ([f64; 2], [f64; 2]),
        still_n: [f64; 2],
        rates: &mut State,
    ) {
        let speed = state[SPEED];
        let acceleration = instant.acceleration_m_s2;
        *rates = [0.0; crate::integrate::MOST];
        rates[DISTANCE] = speed;
        rates[SPEED] = acceleration;
        if let Some(slip) = &self.question.slip {
            for axle in 0..2 {
                if self.driven(axle) {
                    let tread = state[TREAD[axle]];
                    // J/R²·du/dt = T/R − F
                    rates[TREAD[axle]] =
                        (rims_n[axle] - instant.forces_n[axle]) / self.spinning_kg[axle];
                    rates[SLIP[axle]] =
                        tyre::relaxation_rate(slip.relaxation_m, tread, speed, state[SLIP[axle]]);
                    rates[SLIP_HEAT[axle]] = instant.forces_n[axle] * (tread - speed);
                }
            }
        }
        if let Some(springs) = self.springs() {
            for (axle, (omega, damping, share)) in springs.into_iter().enumerate() {
                let end_kg = self.level_n[axle] / GRAVITY_M_S2;
                let at = SPRING[axle];
                let gained_n = self.gained_n(axle, still_n) + self.moved_kg * acceleration;
                // d²x/dt² = (1 − anti)·ΔN/m_end − ω²·x − 2·ζ·ω·dx/dt
                rates[at] = state[at + 1];
                rates[at + 1] =
                    share * gained_n / end_kg - omega * omega * state[at] - damping * state[at + 1];
            }
        }
        rates[DRAG_WORK] = instant.air.drag_n * speed;
        rates[ROLLING_WORK] = instant.rolling_n * speed;
        rates[MOTOR_WORK] =
            (rims_n[0] * treads_m_s[0] + rims_n[1] * treads_m_s[1]) / self.question.gear_efficiency;
        rates[PUSH] = instant.forces_n[0] + instant.forces_n[1];
        // While the brake holds the car, it takes up what the tyres push.
        rates[HOLD] = if acceleration > 0.0 || speed > 0.0 {
            instant.air.drag_n + self.grade_n + instant.rolling_n
        } else {
            rates[PUSH]
        };
    }

    /// How the body stands at a state.
    pub(super) fn attitude(&self, state: &State) -> Attitude {
        Attitude {
            rise_front_m: state[SPRING[0]],
            drop_rear_m: state[SPRING[1]],
        }
    }

    /// Kinetic energy of the spinning parts at a state \[J\].
    pub(super) fn spinning_j(&self, state: &State) -> f64 {
        let speed = state[SPEED];
        let mut sum = 0.0;
        for axle in 0..2 {
            let tread = if self.driven(axle) && self.question.slip.is_some() {
                state[TREAD[axle]]
            } else {
                speed
            };
            sum += 0.5 * self.spinning_kg[axle] * tread * tread;
        }
        sum
    }
}
