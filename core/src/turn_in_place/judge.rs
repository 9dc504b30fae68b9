//! Which layout can turn in place, and why or why not.

use super::steady::{self, AxleState, Outcome, Steady, Turn};
use super::{Question, split};
use crate::layout::{AxleDrive, Layout};

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
    /// The sides grip so differently that the turning centre lies outside the four wheels.
    SidesTooDifferent,
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
            Self::SidesTooDifferent => "sides_too_different",
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

/// Whether each wheel of the front and of the rear axle has a motor of its own.
pub(super) fn driven_apart(layout: Layout) -> [bool; 2] {
    [layout.front(), layout.rear()].map(|axle| axle == AxleDrive::MotorPerWheel)
}

/// What one layout can do.
///
/// An axle with one motor turns both wheels the same way through its differential, or lets them roll
/// freely against each other at no torque; only a motor per wheel can drive them against each other.
/// A single pair is judged at the mean friction where left and right differ.
#[must_use]
pub fn judge(question: &Question, layout: Layout) -> LayoutAnswer {
    let [front_driven, rear_driven] = driven_apart(layout);
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
        Outcome::InPlace(turn) => {
            let needed_n = turn.front_force_n.max(turn.rear_force_n);
            (torque_verdict(question, needed_n), Some(turn))
        }
    };
    let verdict = if front_driven && rear_driven && question.is_split() {
        split_verdict(question)
    } else {
        verdict
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

fn torque_verdict(question: &Question, needed_n: f64) -> Verdict {
    let (Some(radius_m), Some(available_n_m)) =
        (question.wheel_radius_m, question.motor_wheel_torque_n_m)
    else {
        return Verdict::FeasibleTorqueUnknown;
    };
    if radius_m * needed_n <= available_n_m {
        Verdict::Feasible
    } else {
        Verdict::TorqueTooSmall
    }
}

/// Four driven wheels on ground that differs left and right.
fn split_verdict(question: &Question) -> Verdict {
    match split::split_turn(question) {
        Ok(turn) if turn.in_place => {
            let most_n = turn.forces_n.iter().map(|force| force.0.abs());
            torque_verdict(question, most_n.fold(0.0, f64::max))
        }
        _ => Verdict::SidesTooDifferent,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::Scenario;
    use crate::turn_in_place::{full_lock, split_turn};

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
    fn a_slope_that_no_friction_holds_is_refused() {
        let mut scenario = Scenario::default();
        scenario.set("vehicle.base", "moraine").unwrap();
        scenario.set("surface.kind", "snow").unwrap();
        scenario.set("surface.grade", "14 %").unwrap();
        assert!(Question::from_scenario(&scenario).is_ok());
        scenario.set("surface.grade", "-15 %").unwrap();
        let problem = Question::from_scenario(&scenario).unwrap_err();
        assert_eq!(problem.field(), "surface.grade");
    }

    #[test]
    fn full_lock_does_not_let_a_rear_pair_turn_in_place() {
        for base in crate::vehicle::DEMO_NAMES {
            let question = demo(base);
            let lock = full_lock(&question, Layout::R2).unwrap();
            let wheelbase_m = question.chassis.wheelbase_m();
            // The circle of full lock: L/sin δ at the front axle, its centre on the line of the rear one.
            let out_m = wheelbase_m / crate::math::tan(question.max_steer_rad.unwrap());
            assert!(!lock.in_place, "{base}: {lock:?}");
            assert!(
                (lock.centre_behind_front_m - wheelbase_m).abs() < 1e-3,
                "{base}: {lock:?}"
            );
            assert!(
                (lock.centre_to_left_m - out_m).abs() < 1e-3,
                "{base}: {lock:?} {out_m}"
            );
            assert!(full_lock(&question, Layout::F2R2).is_none());
        }
    }

    #[test]
    fn different_friction_left_and_right_moves_the_centre() {
        let mut scenario = Scenario::default();
        scenario.set("vehicle.base", "moraine").unwrap();
        scenario
            .set("surface.friction_sliding_left", "0.5")
            .unwrap();
        scenario
            .set("surface.friction_sliding_right", "0.5")
            .unwrap();
        let even = Question::from_scenario(&scenario).unwrap();
        let turn = even.four_wheel_turn().unwrap();
        let split = split_turn(&even).unwrap();
        assert!((split.speed_ratio_m / turn.speed_ratio_m - 1.0).abs() < 1e-9);
        assert!((split.forces_n[1].0 / turn.front_force_n - 1.0).abs() < 1e-9);
        let mut on_left = |friction: &str| {
            scenario
                .set("surface.friction_sliding_left", friction)
                .unwrap();
            split_turn(&Question::from_scenario(&scenario).unwrap())
        };
        let split = on_left("0.47").unwrap();
        assert!(split.centre_to_left_m > 0.05 && split.in_place, "{split:?}");
        assert!(!on_left("0.4").unwrap().in_place);
        // Below L/√(L² + 4t²) of the other side, 0.66 here, it drives off.
        let problem = on_left("0.32").unwrap_err();
        assert_eq!(problem.field(), "surface.friction_sliding_left");
        let (along, across) = split
            .forces_n
            .iter()
            .fold((0.0, 0.0), |s, f| (s.0 + f.0, s.1 + f.1));
        assert!(
            along.abs() < 1e-6 && across.abs() < 1e-6,
            "{along} {across}"
        );
    }
}
