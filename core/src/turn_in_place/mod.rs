//! Turning in place: wheels on the left turn one way, wheels on the right the other, nothing is
//! steered, and every contact patch slides.
//!
//! Model of the slow turn: level ground, Coulomb friction that opposes the sliding velocity of each
//! patch (taken as a point; what its size adds is told apart, as a bound), loads at rest. Solved for any
//! position of the CG and for other friction left and right: the turning centre and the wheel speed
//! follow from the balance of forces and moments. "In place" means that the turning centre lies between
//! the wheels; a car that swings about one axle has left its place. On a slope there is no steady turn:
//! every patch slides already, so nothing holds the car against the hill.

mod drill;
mod judge;
mod lock;
pub mod patches;
mod report;
mod sheet;
mod sheet_more;
mod spin;
mod spin_run;
mod split;
mod steady;
mod table;
#[cfg(test)]
mod tests;
pub mod wear;

pub use drill::{Drilling, drilling, slides_m};
pub use judge::{LayoutAnswer, Verdict, judge};
pub use lock::{FullLock, full_lock};
pub use report::{OnSurface, on_surfaces};
pub use spin::Spin;
pub use spin_run::{
    Course, LONGEST_S, Mark, Moment, Point, Run, SpinOutcome, at_time, course, follow,
};
pub use split::{SplitTurn, split_turn};
pub use steady::{AxleState, End, Outcome, Steady, Turn, steady};
pub use table::TOPIC;

use crate::error::{Allowed, Problem};
use crate::load_transfer;
use crate::math;
use crate::scenario::Scenario;
use crate::surface;
use crate::units::Dimension;
use crate::vehicle::{AirForces, Chassis, Slope};
use patches::{Patch, settled};

/// What the topic asks, for any layout.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Question {
    /// Mass, wheelbase, CG.
    pub chassis: Chassis,
    /// Front and rear axle: load, track, friction (the mean of left and right).
    pub front: AxleState,
    /// Rear axle.
    pub rear: AxleState,
    /// Sliding coefficient of friction before load sensitivity, the mean of left and right \[1\].
    pub friction: f64,
    /// The same left and right \[1\].
    pub sides: [f64; 2],
    /// Slope of the ground, uphill ahead of the car as it stands at first.
    pub slope: Slope,
    /// Rolling radius R \[m\], where given.
    pub wheel_radius_m: Option<f64>,
    /// Torque that one motor gives its wheel, T·i·η \[N·m\], where given.
    pub motor_wheel_torque_n_m: Option<f64>,
    /// Tyre widths, front and rear \[m\].
    pub tyre_widths_m: [f64; 2],
    /// Tyre pressure p \[Pa\], where given.
    pub pressure_pa: Option<f64>,
    /// Largest steer angle of the front wheels δ_m \[rad\], where given.
    pub max_steer_rad: Option<f64>,
    /// Volume worn off per friction energy, where the reader gives it \[m³/J\].
    pub wear_m3_j: Option<f64>,
}

impl Question {
    /// Reads the question of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario; [`Problem::NoAnswer`] on a slope so steep that the car slides away
    /// whatever its wheels do.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let chassis = Chassis::without_height(scenario)?;
        let sides = sides(scenario)?;
        let friction = 0.5 * (sides[0] + sides[1]);
        let grade = scenario.number("surface.grade").unwrap_or(0.0);
        if grade.abs() >= friction {
            return Err(Problem::NoAnswer {
                field: "surface.grade",
                value: scenario.text("surface.grade").unwrap_or_default().into(),
                why: "why.slope_slides",
                allowed: Allowed::Inside {
                    min: -friction,
                    max: friction,
                    dimension: Dimension::Slope,
                },
            });
        }
        let level = Slope::from_grade(0.0);
        let loads = load_transfer::axle_loads(&chassis, &AirForces::default(), level, 0.0);
        let number = |path| scenario.number(path);
        let (track_front, track_rear) =
            (number("vehicle.track_front"), number("vehicle.track_rear"));
        // One track width, as textbooks give it, serves for both axles.
        let track = |own: Option<f64>, other: Option<f64>| {
            own.or(other)
                .map_or_else(|| scenario.require("vehicle.track_front"), Ok)
        };
        let sensitivity = number("vehicle.tyre_load_sensitivity").unwrap_or(0.0);
        let reference_n =
            number("vehicle.tyre_reference_load").unwrap_or(0.25 * chassis.weight_n());
        let axle = |load_n: f64, track_m: f64, speed_factor: f64| AxleState {
            load_n,
            track_m,
            friction: friction * surface::load_factor(sensitivity, 0.5 * load_n, reference_n),
            speed_factor,
        };
        let front_factor = number("turn_in_place.front_to_rear_wheel_speed").unwrap_or(1.0);
        let width = |path| number(path).unwrap_or(0.22);
        Ok(Self {
            chassis,
            front: axle(loads.front_n, track(track_front, track_rear)?, front_factor),
            rear: axle(loads.rear_n, track(track_rear, track_front)?, 1.0),
            friction,
            sides,
            slope: Slope::from_grade(grade),
            wheel_radius_m: number("vehicle.wheel_radius"),
            motor_wheel_torque_n_m: number("vehicle.motor_torque")
                .zip(number("vehicle.motor_ratio"))
                .map(|(torque_n_m, ratio)| {
                    torque_n_m * ratio * number("vehicle.gear_efficiency").unwrap_or(1.0)
                }),
            tyre_widths_m: [
                width("vehicle.tyre_width_front"),
                width("vehicle.tyre_width_rear"),
            ],
            pressure_pa: number("vehicle.tyre_pressure"),
            max_steer_rad: number("vehicle.max_steer_angle"),
            wear_m3_j: scenario.given_number("turn_in_place.wear_coefficient"),
        })
    }

    /// Whether the friction differs left and right.
    #[must_use]
    pub fn is_split(&self) -> bool {
        let [left, right] = self.sides;
        (left - right).abs() > 1e-9 * (left + right)
    }

    /// The same question on ground of another friction, the same under every wheel.
    #[must_use]
    pub fn on_friction(mut self, friction: f64) -> Self {
        for axle in [&mut self.front, &mut self.rear] {
            axle.friction *= friction / self.friction;
        }
        self.friction = friction;
        self.sides = [friction; 2];
        self
    }

    /// The four patches, front left, front right, rear left, rear right, for a car that turns
    /// anticlockwise: wheels of a driven axle tread with a common speed, those of another roll freely.
    #[must_use]
    pub fn patches(&self, driven: [bool; 2], tread_m_s: f64) -> [Patch; 4] {
        let patch = |at: usize| {
            let (axle, ahead_m) = if at < 2 {
                (&self.front, self.chassis.cg_to_front_axle_m())
            } else {
                (&self.rear, -self.chassis.cg_to_rear_axle_m())
            };
            let side = if at.is_multiple_of(2) { 1.0 } else { -1.0 };
            Patch {
                ahead_m,
                left_m: 0.5 * side * axle.track_m,
                grip_n: 0.5 * axle.friction * axle.load_n * self.sides[at % 2] / self.friction,
                steer_rad: 0.0,
                tread_m_s: driven[at / 2].then_some(-side * axle.speed_factor * tread_m_s),
            }
        };
        [patch(0), patch(1), patch(2), patch(3)]
    }

    /// The steady turn with all four wheels driven, for left and right alike.
    ///
    /// # Errors
    /// [`Problem::NoAnswer`] when the wheel speeds asked for cannot make the car turn.
    ///
    /// ```
    /// use axlewright_core::{Scenario, turn_in_place};
    /// let mut scenario = Scenario::default();
    /// scenario.set("vehicle.base", "moraine")?;
    /// scenario.set("surface.kind", "gravel")?;
    /// let question = turn_in_place::Question::from_scenario(&scenario)?;
    /// let turn = question.four_wheel_turn()?;
    /// // The wheels drive just what the sliding tyres resist.
    /// let [front, rear] = [question.front.track_m, question.rear.track_m];
    /// let driven_n_m = turn.front_force_n * front + turn.rear_force_n * rear;
    /// assert!((driven_n_m / turn.resisting_moment_n_m - 1.0).abs() < 1e-9);
    /// # Ok::<(), axlewright_core::Problem>(())
    /// ```
    pub fn four_wheel_turn(&self) -> Result<Turn, Problem> {
        let steady = Steady {
            wheelbase_m: self.chassis.wheelbase_m(),
            front: self.front,
            rear: self.rear,
            front_driven: true,
            rear_driven: true,
        };
        match steady::steady(&steady) {
            Outcome::InPlace(turn) => Ok(turn),
            Outcome::AboutUndrivenAxle(_) | Outcome::None => Err(self.no_turn()),
        }
    }

    pub(crate) fn no_turn(&self) -> Problem {
        Problem::NoAnswer {
            field: "turn_in_place.front_to_rear_wheel_speed",
            value: crate::format::plain(self.front.speed_factor),
            why: "why.no_turn",
            allowed: Allowed::Sentence("allowed.nearer_one"),
        }
    }

    /// The turning centre behind the front axle and the speed ratio κ, if a moment resists besides \[m\];
    /// none where the wheels cannot turn the car against it.
    #[must_use]
    pub fn turn_against(&self, resisting_n_m: f64) -> Option<(f64, f64)> {
        let motion = settled(&self.patches([true, true], 1.0), resisting_n_m, 0.0);
        let (ahead_m, _) = motion.centre_m()?;
        let turns = motion.yaw_rad_s > 1e-6 / self.chassis.wheelbase_m();
        turns.then(|| {
            (
                self.chassis.cg_to_front_axle_m() - ahead_m,
                1.0 / motion.yaw_rad_s,
            )
        })
    }

    /// Force that answers a drift of one metre in each radian of a slow turn, along the car and across it
    /// \[N\]: H_x = Σ μN·X²/s³ and H_y = Σ μN·e²/s³, with a sliding by e along and X across. Friction that
    /// already points against the sliding gives way to a push across it.
    #[must_use]
    pub fn drift_answers_n(&self, turn: &Turn) -> [f64; 2] {
        let slides = slides_m(turn, (&self.front, &self.rear), self.chassis.wheelbase_m());
        let all_m = [turn.front_slide_m, turn.rear_slide_m];
        let mut answers = [0.0; 2];
        for (at, axle) in [&self.front, &self.rear].into_iter().enumerate() {
            let grip_n = axle.friction * axle.load_n;
            let (along, across) = (slides[at].0 / all_m[at], slides[at].1 / all_m[at]);
            answers[0] += grip_n * (across * across) / all_m[at];
            answers[1] += grip_n * (along * along) / all_m[at];
        }
        answers
    }

    /// Way that the car drifts downhill in one slow turn, to the first order in the slope \[m\]:
    /// d = π·W·sin θ·(1/H_x + 1/H_y).
    ///
    /// The car meets the hill from all sides alike, so the mean of 1/H counts. In a fast turn its inertia
    /// evens that out and the drift is less; the spin-up computes it.
    #[must_use]
    pub fn drift_per_turn_m(&self, turn: &Turn) -> Option<f64> {
        let push_n = self.chassis.weight_n() * self.slope.sin.abs();
        let [along_n, across_n] = self.drift_answers_n(turn);
        let drift_m = core::f64::consts::PI * push_n * (1.0 / along_n + 1.0 / across_n);
        (push_n > 0.0 && turn.rolling.is_none() && drift_m.is_finite()).then_some(drift_m)
    }
}

/// Sliding friction left and right: what is given for a side, or for both.
fn sides(scenario: &Scenario) -> Result<[f64; 2], Problem> {
    let side = |path| {
        scenario
            .number(path)
            .map_or_else(|| surface::sliding(scenario), Ok)
    };
    Ok([
        side("surface.friction_sliding_left")?,
        side("surface.friction_sliding_right")?,
    ])
}

/// Distance of the turning centre from the CG: the radius of the path of the CG \[m\].
pub(crate) fn path_radius_m(question: &Question, behind_front_m: f64, left_m: f64) -> f64 {
    math::hypot(
        question.chassis.cg_to_front_axle_m() - behind_front_m,
        left_m,
    )
}
