//! Turning in place: wheels on the left turn one way, wheels on the right the other, nothing is
//! steered, and every contact patch slides.
//!
//! Model: level uniform ground, Coulomb friction that opposes the sliding velocity of each patch
//! (taken as a point), loads at rest, steady yaw. Solved for any position of the CG: the turning
//! centre and the wheel speed follow from the balance of forces and moments. "In place" means that
//! the turning centre lies between the axles; a car that swings about one axle has left its place.

mod report;
mod steady;

pub use report::TOPIC;
pub use steady::{AxleState, End, Outcome, Steady, Turn, steady};

use crate::error::{Allowed, Problem};
use crate::layout::{AxleDrive, Layout};
use crate::load_transfer;
use crate::scenario::Scenario;
use crate::surface;
use crate::vehicle::{AirForces, Chassis, Slope};

/// What the topic asks, for any layout.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Question {
    /// Mass, wheelbase, CG.
    pub chassis: Chassis,
    /// Front and rear axle: load, track, friction.
    pub front: AxleState,
    /// Rear axle.
    pub rear: AxleState,
    /// Sliding coefficient of friction before load sensitivity \[1\].
    pub friction: f64,
    /// Rolling radius R \[m\], where given.
    pub wheel_radius_m: Option<f64>,
    /// Torque that one motor gives its wheel, T·i \[N·m\], where given.
    pub motor_wheel_torque_n_m: Option<f64>,
}

/// Whether a layout can turn in place, and why or why not.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// It can: every wheel is driven by its own motor, and the motors have the torque.
    Feasible,
    /// The force balance allows it; whether the motors have the torque was not asked.
    FeasibleTorqueUnknown,
    /// The motors are too weak.
    TorqueTooSmall,
    /// No axle can turn its two wheels against each other.
    NoCounterRotation,
    /// The driven pair makes too small a moment to drag the other axle sideways; with its wheels
    /// spinning it can only swing about the other axle.
    OtherAxleHolds,
    /// The driven pair could make the moment if it had nothing else to do, but it must also hold its
    /// own axle against the side force, and what is left of its friction does not suffice.
    PairHoldsItself,
}

impl Verdict {
    /// Whether the layout can turn in place.
    #[must_use]
    pub fn feasible(self) -> bool {
        matches!(self, Self::Feasible | Self::FeasibleTorqueUnknown)
    }

    /// Word in answers.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Feasible => "wheels_driven_apart",
            Self::FeasibleTorqueUnknown => "wheels_driven_apart_torque_unknown",
            Self::TorqueTooSmall => "motor_torque_too_small",
            Self::NoCounterRotation => "no_counter_rotation",
            Self::OtherAxleHolds => "undriven_axle_holds",
            Self::PairHoldsItself => "pair_holds_itself",
        }
    }
}

/// What one layout can do.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LayoutAnswer {
    /// The verdict.
    pub verdict: Verdict,
    /// Largest yaw moment about the driven axle that a driven pair can make \[N·m\], and the moment
    /// with which the other axle resists there; only for a single pair.
    pub pair_moments_n_m: Option<(f64, f64)>,
    /// The steady turn, where there is one.
    pub turn: Option<Turn>,
}

impl Question {
    /// Reads the question of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario; [`Problem::NoAnswer`] on a slope, where a car whose patches all
    /// slide has no friction left to hold itself.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let grade = scenario.number("surface.grade").unwrap_or(0.0);
        if grade != 0.0 {
            return Err(Problem::NoAnswer {
                field: "surface.grade",
                value: scenario.text("surface.grade").unwrap_or_default().into(),
                why: "why.slope_slides",
                allowed: Allowed::Sentence("allowed.level"),
            });
        }
        let chassis = Chassis::without_height(scenario)?;
        let level = Slope::from_grade(0.0);
        let loads = load_transfer::axle_loads(&chassis, &AirForces::default(), level, 0.0);
        let friction = surface::sliding(scenario)?;
        let track_front = scenario.number("vehicle.track_front");
        let track_rear = scenario.number("vehicle.track_rear");
        // One track width, as textbooks give it, serves for both axles.
        let track = |own: Option<f64>, other: Option<f64>| {
            own.or(other)
                .map_or_else(|| scenario.require("vehicle.track_front"), Ok)
        };
        let sensitivity = scenario
            .number("vehicle.tyre_load_sensitivity")
            .unwrap_or(0.0);
        let reference_n = scenario
            .number("vehicle.tyre_reference_load")
            .unwrap_or(0.25 * chassis.weight_n());
        let axle = |load_n: f64, track_m: f64, speed_factor: f64| AxleState {
            load_n,
            track_m,
            friction: friction * surface::load_factor(sensitivity, 0.5 * load_n, reference_n),
            speed_factor,
        };
        let front_factor = scenario
            .number("turn_in_place.front_to_rear_wheel_speed")
            .unwrap_or(1.0);
        Ok(Self {
            chassis,
            front: axle(loads.front_n, track(track_front, track_rear)?, front_factor),
            rear: axle(loads.rear_n, track(track_rear, track_front)?, 1.0),
            friction,
            wheel_radius_m: scenario.number("vehicle.wheel_radius"),
            motor_wheel_torque_n_m: scenario
                .number("vehicle.motor_torque")
                .zip(scenario.number("vehicle.motor_ratio"))
                .map(|(torque_n_m, ratio)| torque_n_m * ratio),
        })
    }

    /// The steady turn with all four wheels driven.
    ///
    /// # Errors
    /// [`Problem::NoAnswer`] when the wheel speeds asked for cannot make the car turn.
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
            Outcome::AboutUndrivenAxle(_) | Outcome::None => Err(Problem::NoAnswer {
                field: "turn_in_place.front_to_rear_wheel_speed",
                value: crate::format::plain(self.front.speed_factor),
                why: "why.no_turn",
                allowed: Allowed::Sentence("allowed.nearer_one"),
            }),
        }
    }
}

/// What one layout can do.
///
/// An axle with one motor turns both wheels the same way through its differential, or lets them roll
/// freely against each other at no torque; only a motor per wheel can drive them against each other.
#[must_use]
pub fn judge(question: &Question, layout: Layout) -> LayoutAnswer {
    let front_driven = layout.front() == AxleDrive::MotorPerWheel;
    let rear_driven = layout.rear() == AxleDrive::MotorPerWheel;
    let outcome = steady::steady(&Steady {
        wheelbase_m: question.chassis.wheelbase_m(),
        front: question.front,
        rear: question.rear,
        front_driven,
        rear_driven,
    });
    let pair_moments_n_m = match (front_driven, rear_driven) {
        (true, false) => Some(pair_moments(question, &question.front, &question.rear)),
        (false, true) => Some(pair_moments(question, &question.rear, &question.front)),
        _ => None,
    };
    let (verdict, turn) = match outcome {
        Outcome::None => (Verdict::NoCounterRotation, None),
        Outcome::AboutUndrivenAxle(turn) => {
            let enough = pair_moments_n_m.is_some_and(|(drives, holds)| drives > holds);
            let verdict = if enough {
                Verdict::PairHoldsItself
            } else {
                Verdict::OtherAxleHolds
            };
            (verdict, Some(turn))
        }
        Outcome::InPlace(turn) => (torque_verdict(question, &turn), Some(turn)),
    };
    LayoutAnswer {
        verdict,
        pair_moments_n_m,
        turn,
    }
}

/// Moment of a driven pair about its own axle at full friction, μ·N·t/2, and the moment with which
/// the other axle, dragged sideways, resists: μ·N·L.
fn pair_moments(question: &Question, driven: &AxleState, other: &AxleState) -> (f64, f64) {
    (
        driven.friction * driven.load_n * 0.5 * driven.track_m,
        other.friction * other.load_n * question.chassis.wheelbase_m(),
    )
}

fn torque_verdict(question: &Question, turn: &Turn) -> Verdict {
    let (Some(radius_m), Some(available_n_m)) =
        (question.wheel_radius_m, question.motor_wheel_torque_n_m)
    else {
        return Verdict::FeasibleTorqueUnknown;
    };
    let needed_n_m = radius_m * turn.front_force_n.max(turn.rear_force_n);
    if needed_n_m <= available_n_m {
        Verdict::Feasible
    } else {
        Verdict::TorqueTooSmall
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn demo(base: &str) -> Question {
        let mut scenario = Scenario::default();
        scenario.set("vehicle.base", base).unwrap();
        Question::from_scenario(&scenario).unwrap()
    }

    #[test]
    fn four_driven_wheels_can_and_a_pair_cannot() {
        for base in crate::vehicle::DEMO_NAMES {
            let question = demo(base);
            for layout in Layout::ALL {
                let answer = judge(&question, layout);
                let want = layout == Layout::F2R2;
                assert_eq!(
                    answer.verdict.feasible(),
                    want,
                    "{base} {layout:?}: {answer:?}"
                );
            }
            let pair = judge(&question, Layout::R2);
            assert_eq!(pair.verdict, Verdict::OtherAxleHolds);
            let (drive, resist) = pair.pair_moments_n_m.unwrap();
            assert!(drive < resist, "{base}: {drive} {resist}");
        }
    }

    #[test]
    fn a_pair_under_nearly_all_the_load_can_and_the_solver_finds_it() {
        let mut scenario = Scenario::default();
        for (path, text) in [
            ("vehicle.mass", "1000 kg"),
            ("vehicle.wheelbase", "2 m"),
            ("vehicle.cg_to_front_axle", "1.9 m"),
            ("vehicle.track_front", "1.6 m"),
            ("surface.friction_sliding", "0.8"),
        ] {
            scenario.set(path, text).unwrap();
        }
        let question = Question::from_scenario(&scenario).unwrap();
        assert!(judge(&question, Layout::R2).verdict.feasible());
        assert!(!judge(&question, Layout::F2).verdict.feasible());
    }

    #[test]
    fn the_rough_marks_of_the_demo_vehicles_come_out() {
        for (base, torque_n_m) in [
            ("kame", 707.0),
            ("esker", 1326.0),
            ("moraine", 2365.0),
            ("corrie", 1578.0),
        ] {
            let question = demo(base);
            let turn = question.four_wheel_turn().unwrap();
            let mean_n = 0.5 * (turn.front_force_n + turn.rear_force_n);
            let got = mean_n * question.wheel_radius_m.unwrap();
            assert!((got / torque_n_m - 1.0).abs() < 0.01, "{base}: {got}");
        }
    }

    #[test]
    fn a_slope_is_refused_because_nothing_holds_the_car() {
        let mut scenario = Scenario::default();
        scenario.set("vehicle.base", "moraine").unwrap();
        scenario.set("surface.grade", "2 %").unwrap();
        let problem = Question::from_scenario(&scenario).unwrap_err();
        assert_eq!(problem.field(), "surface.grade");
    }
}
