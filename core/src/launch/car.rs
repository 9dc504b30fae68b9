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
use crate::math;
use crate::motor;
use crate::tyre;
use crate::vehicle::{AirForces, Slope};
use core::f64::consts::TAU;

/// Least mass of the spinning parts of an axle, as a share of the car's: below it the equations say
/// nothing more and only take longer.
const LEAST_SPINNING: f64 = 5e-4;

/// A layout of the question, with all that does not change during a run.
pub(super) struct Car<'a> {
    pub(super) question: &'a Question,
    pub(super) driven: [bool; 2],
    /// Mass of the spinning parts of each axle, J/R² \[kg\].
    pub(super) spinning_kg: [f64; 2],
    /// Force at the rims of an axle for a torque at the shaft of each of its motors, n·i·η/R \[1/m\].
    pub(super) rims_per_m: [f64; 2],
    /// Speed of a motor's shaft for a speed of the tread, i/R \[rad/m\].
    pub(super) shaft_per_m: f64,
    /// Axle loads at rest on the level, and on the slope \[N\].
    level_n: [f64; 2],
    slope_n: [f64; 2],
    /// Load that a newton of drag moves, h_d/L.
    drag_moves: f64,
    /// Load that a metre per second squared moves, m·h/L \[kg\].
    moved_kg: f64,
    /// Grade resistance W·sin θ \[N\].
    pub(super) grade_n: f64,
    springs: Option<[Spring; 2]>,
}

/// The springs of an end, for the mass that stands on it.
#[derive(Clone, Copy)]
struct Spring {
    /// Stiffness over mass ω² \[1/s²\], and damping over mass 2·ζ·ω \[1/s\].
    stiffness: f64,
    damping: f64,
    /// Share of a load change that the springs carry; links pass on the rest at once.
    share: f64,
    /// Mass of the end \[kg\], and the rate of the springs' speed for each newton that moves \[1/kg\].
    mass_kg: f64,
    share_per_kg: f64,
}

/// Loads as straight lines in the acceleration: N = at_rest + per_m_s2·a.
#[derive(Clone, Copy)]
pub(super) struct LoadLines {
    pub(super) at_rest_n: [f64; 2],
    pub(super) per_m_s2: [f64; 2],
}

impl LoadLines {
    /// Axle loads at an acceleration; an axle in the air carries none \[N\].
    pub(super) fn at(&self, acceleration_m_s2: f64) -> [f64; 2] {
        let [front, rear] = self.at_rest_n;
        [
            math::larger(front + self.per_m_s2[0] * acceleration_m_s2, 0.0),
            math::larger(rear + self.per_m_s2[1] * acceleration_m_s2, 0.0),
        ]
    }
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
        let still = |slope| {
            let AxleLoads { front_n, rear_n } =
                load_transfer::axle_loads(chassis, &AirForces::default(), slope, 0.0);
            [front_n, rear_n]
        };
        let level_n = still(Slope::from_grade(0.0));
        let rims_per_m = motor::tractive_force_n(
            1.0,
            question.ratio,
            question.gear_efficiency,
            question.radius_m,
        );
        let springs = question.springs.map(|springs| {
            let end = |frequency_hz: f64, anti: f64, level_n: f64| {
                let omega = TAU * frequency_hz;
                Spring {
                    stiffness: omega * omega,
                    damping: 2.0 * springs.damping_ratio * omega,
                    share: 1.0 - anti,
                    mass_kg: level_n / GRAVITY_M_S2,
                    share_per_kg: (1.0 - anti) * GRAVITY_M_S2 / level_n,
                }
            };
            [
                end(
                    springs.ride_frequency_front_hz,
                    springs.anti_lift_front,
                    level_n[0],
                ),
                end(
                    springs.ride_frequency_rear_hz,
                    springs.anti_squat_rear,
                    level_n[1],
                ),
            ]
        });
        Self {
            question,
            driven: motors.map(|count| count > 0.0),
            spinning_kg: motors.map(|count| {
                // J = 2·J_w + n·J_m·i²
                let inertia = 2.0 * question.wheel_inertia_kg_m2
                    + count * question.rotor_inertia_kg_m2 * question.ratio * question.ratio;
                (inertia / square).max(least_kg)
            }),
            rims_per_m: motors.map(|count| count * rims_per_m),
            shaft_per_m: question.ratio / question.radius_m,
            level_n,
            slope_n: still(question.slope),
            drag_moves: question.air.drag_height_m / chassis.wheelbase_m(),
            moved_kg: chassis.mass_kg() * chassis.cg_height_m() / chassis.wheelbase_m(),
            grade_n: chassis.weight_n() * question.slope.sin,
            springs,
        }
    }

    /// Loads in steady state without acceleration, front and rear \[N\].
    pub(super) fn steady_n(&self, air: &AirForces) -> [f64; 2] {
        let moved_n = self.drag_moves * air.drag_n;
        [
            self.slope_n[0] - moved_n - air.lift_front_n,
            self.slope_n[1] + moved_n - air.lift_rear_n,
        ]
    }

    /// The state at rest, with the body on its springs as the slope has it.
    pub(super) fn at_rest(&self) -> State {
        let mut state = [0.0; crate::integrate::MOST];
        if let Some(springs) = &self.springs {
            for (axle, spring) in springs.iter().enumerate() {
                let moved_n = self.gained_n(axle, self.slope_n);
                state[SPRING[axle]] = spring.share_per_kg * moved_n / spring.stiffness;
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
        let mut lines = LoadLines {
            at_rest_n: still_n,
            per_m_s2: [-self.moved_kg, self.moved_kg],
        };
        let Some(springs) = &self.springs else {
            return lines;
        };
        for axle in 0..2 {
            let (spring, at) = (&springs[axle], SPRING[axle]);
            // Springs and dampers press with k·x + c·dx/dt; the links pass on the rest at once.
            let pressed = spring.stiffness * state[at] + spring.damping * state[at + 1];
            let linked_n = (1.0 - spring.share) * self.gained_n(axle, still_n);
            let moved_n = spring.mass_kg * pressed + linked_n;
            lines.at_rest_n[axle] = if axle == 0 {
                self.level_n[0] - moved_n
            } else {
                self.level_n[1] + moved_n
            };
            lines.per_m_s2[axle] *= 1.0 - spring.share;
        }
        lines
    }

    /// The car at a state, and the rates of that state where they are wanted.
    pub(super) fn instant(&self, state: &State, rates: Option<&mut State>) -> Instant {
        let question = self.question;
        let speed = state[SPEED];
        let air = question.air.forces(speed);
        let still_n = self.steady_n(&air);
        let lines = self.load_lines(state, still_n);
        let rolling_n = question.rolling_resistance
            * math::larger(lines.at_rest_n[0] + lines.at_rest_n[1], 0.0);
        let around = Surroundings {
            resistance_n: air.drag_n + self.grade_n + rolling_n,
            // Highest acceleration with the front wheels on the ground.
            lift_m_s2: if self.moved_kg > 0.0 {
                still_n[0] / self.moved_kg
            } else {
                f64::INFINITY
            },
            lines,
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
        // Force that the motors bring to the rims of the wheels.
        let mut rims_n = [0.0; 2];
        let treads = match &question.slip {
            None => {
                self.gripping(&mut instant, &mut rims_n, speed, &around);
                [speed; 2]
            }
            Some(slip) => {
                self.slipping(&mut instant, &mut rims_n, state, slip, &around);
                [state[TREAD[0]], state[TREAD[1]]]
            }
        };
        // The brake holds the car until the tyres push harder than the hill.
        if speed <= 0.0 && instant.acceleration_m_s2 < 0.0 {
            instant.acceleration_m_s2 = 0.0;
        }
        instant.motor_w =
            (rims_n[0] * treads[0] + rims_n[1] * treads[1]) / question.gear_efficiency;
        if let Some(rates) = rates {
            self.rates(state, &instant, rims_n, still_n, rates);
        }
        instant
    }

    /// Writes the rates that this car has; the others stay zero.
    fn rates(
        &self,
        state: &State,
        instant: &Instant,
        rims_n: [f64; 2],
        still_n: [f64; 2],
        rates: &mut State,
    ) {
        let speed = state[SPEED];
        let acceleration = instant.acceleration_m_s2;
        rates[DISTANCE] = speed;
        rates[SPEED] = acceleration;
        if let Some(slip) = &self.question.slip {
            for axle in 0..2 {
                if self.driven[axle] {
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
        if let Some(springs) = &self.springs {
            for axle in 0..2 {
                let (spring, at) = (&springs[axle], SPRING[axle]);
                let gained_n = self.gained_n(axle, still_n) + self.moved_kg * acceleration;
                // d²x/dt² = (1 − anti)·ΔN/m_end − ω²·x − 2·ζ·ω·dx/dt
                rates[at] = state[at + 1];
                rates[at + 1] = spring.share_per_kg * gained_n
                    - spring.stiffness * state[at]
                    - spring.damping * state[at + 1];
            }
        }
        rates[DRAG_WORK] = instant.air.drag_n * speed;
        rates[ROLLING_WORK] = instant.rolling_n * speed;
        rates[MOTOR_WORK] = instant.motor_w;
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
            let tread = if self.driven[axle] && self.question.slip.is_some() {
                state[TREAD[axle]]
            } else {
                speed
            };
            sum += 0.5 * self.spinning_kg[axle] * tread * tread;
        }
        sum
    }
}
