//! The run of a spin-up: integrated from rest until it has gone once round and is steady, or until it is
//! clear that it will not be.

use super::spin::{HEAT, MOTOR_WORK, Spin, body_of};
use crate::integrate::{Adaptive, MOST, State, Step};
use crate::math;
use crate::planar::{self, Instant};
use crate::root;
use core::f64::consts::{FRAC_PI_2, PI, TAU};
use std::cell::RefCell;
use std::rc::Rc;

/// Longest time that is simulated \[s\].
pub const LONGEST_S: f64 = 60.0;
/// Time after which a car that has not begun to turn is taken not to turn at all \[s\].
const PATIENCE_S: f64 = 3.0;
/// Steps after which a run is given up.
const MOST_STEPS: u32 = 8000;
/// Error of a step, relative. Times and energies are then right to some hundred-thousandths.
const TOLERANCE: f64 = 1e-6;
/// Time between two points that are kept \[s\].
const APART_S: f64 = 0.05;
/// Change of the motion in a second, over the motion, below which a turn is steady.
const STEADY: f64 = 1e-3;
/// Angles that are marked.
const ANGLES_RAD: [f64; 3] = [FRAC_PI_2, PI, TAU];

/// How a spin-up ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SpinOutcome {
    /// It turns steadily about a point between its wheels.
    Settles,
    /// It turns about a point that is not between its wheels, and goes off.
    LeavesPlace,
    /// It turns and drifts downhill.
    Drifts,
    /// The car does not turn.
    NeverStarts,
    /// It turns and is not steady in the time that is simulated.
    NeverSettles,
    /// No axle drives its wheels against each other.
    NoCounterRotation,
}

impl SpinOutcome {
    /// Word in answers.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Settles => "spin_settles",
            Self::LeavesPlace => "spin_leaves_place",
            Self::Drifts => "spin_drifts",
            Self::NeverStarts => "spin_never_starts",
            Self::NeverSettles => "spin_never_settles",
            Self::NoCounterRotation => "no_counter_rotation",
        }
    }
}

/// The car at an angle, or at a time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mark {
    /// Time from the start \[s\].
    pub time_s: f64,
    /// Angle turned \[rad\].
    pub heading_rad: f64,
    /// Yaw rate \[rad/s\].
    pub yaw_rad_s: f64,
    /// Place of the CG, from where it stood \[m\].
    pub place_m: (f64, f64),
    /// Kinetic energy of body and wheels \[J\].
    pub kinetic_j: f64,
    /// Heat of sliding \[J\].
    pub heat_j: f64,
    /// Work against the slope \[J\].
    pub climb_j: f64,
    /// Work of the motors at the wheels \[J\].
    pub work_j: f64,
}

impl Mark {
    fn of(spin: &Spin, time_s: f64, state: &State) -> Self {
        let body = body_of(state);
        Self {
            time_s,
            heading_rad: body[planar::HEADING],
            yaw_rad_s: body[planar::YAW_RATE],
            place_m: (body[planar::X], body[planar::Y]),
            kinetic_j: spin.car.kinetic_j(&body),
            heat_j: state[HEAT],
            climb_j: spin.car.chassis.weight_n() * spin.car.slope.sin * body[planar::X],
            work_j: state[MOTOR_WORK],
        }
    }

    /// Distance of the CG from where it stood \[m\].
    #[must_use]
    pub fn way_off_m(&self) -> f64 {
        let (x, y) = self.place_m;
        math::sqrt(x * x + y * y)
    }
}

/// A spin-up.
#[derive(Clone, Debug)]
pub struct Run {
    /// How it ended.
    pub outcome: SpinOutcome,
    /// The car at 90°, 180° and 360°.
    pub marks: [Option<Mark>; 3],
    /// The car at the end of the run.
    pub end: Mark,
    /// The motion at the end: forward, to the left, yaw rate.
    pub motion: (f64, f64, f64),
    /// Yaw rate once it is steady \[rad/s\].
    pub steady_yaw_rad_s: Option<f64>,
    /// Time after which the yaw rate stays within a hundredth of that \[s\].
    pub steady_after_s: Option<f64>,
    /// Steps tried.
    pub steps: u32,
}

/// A point of a run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Time \[s\].
    pub time_s: f64,
    /// Yaw rate \[rad/s\].
    pub yaw_rad_s: f64,
    /// Place of the CG \[m\].
    pub place_m: (f64, f64),
    /// Angle turned \[rad\].
    pub heading_rad: f64,
}

/// A run and its points.
#[derive(Clone, Debug)]
pub struct Course {
    /// How it went.
    pub run: Run,
    /// Points of it, a twentieth of a second apart.
    pub points: Vec<Point>,
}

thread_local! {
    /// The last courses. An answer, its working, its figure and its chart ask for the same ones; the same
    /// spin-up has the same course, so nothing but time depends on what is kept.
    static COURSES: RefCell<Vec<(Spin, Rc<Course>)>> = const { RefCell::new(Vec::new()) };
}

/// The course of a spin-up.
#[must_use]
pub fn course(spin: &Spin) -> Rc<Course> {
    let known = COURSES.with_borrow(|kept| {
        let same = kept.iter().find(|(known, _)| known == spin);
        same.map(|(_, course)| course.clone())
    });
    known.unwrap_or_else(|| {
        let mut points: Vec<Point> = Vec::new();
        let run = follow(spin, LONGEST_S, TOLERANCE, &mut |step| {
            keep(step, &mut points)
        });
        let course = Rc::new(Course { run, points });
        COURSES.with_borrow_mut(|kept| {
            if kept.len() >= 2 {
                kept.remove(0);
            }
            kept.push((*spin, course.clone()));
        });
        course
    })
}

/// Keeps the points of a step that are due.
fn keep(step: &Step, points: &mut Vec<Point>) {
    loop {
        let time_s = APART_S * points.len() as f64;
        let share = (time_s - step.time_s) / step.length_s;
        if share > 1.0 {
            return;
        }
        let at = |place| step.value(share.max(0.0), place);
        points.push(Point {
            time_s,
            yaw_rad_s: at(planar::YAW_RATE),
            place_m: (at(planar::X), at(planar::Y)),
            heading_rad: at(planar::HEADING),
        });
    }
}

fn begin(spin: &Spin, tolerance: f64) -> Adaptive {
    let mut scales: State = [1.0; MOST];
    for slip in &mut scales[planar::SLIP_ALONG..planar::SLIP_ALONG + 8] {
        *slip = 0.1;
    }
    let most = spin
        .wheel_speeds_rad_s
        .iter()
        .fold(0.0, |most: f64, speed| most.max(speed.abs()));
    for wheel in &mut scales[planar::WHEEL..planar::WHEEL + 4] {
        *wheel = most.max(0.1);
    }
    scales[planar::YAW_RATE] = spin.yaw_rate_rad_s;
    Adaptive::new([0.0; MOST], (MOST, planar::STATES), scales, tolerance)
}

/// Follows a spin-up from rest. `longest_s`: where it ends at the latest; `tolerance`: error of a step.
#[must_use]
pub fn follow(spin: &Spin, longest_s: f64, tolerance: f64, watch: &mut dyn FnMut(&Step)) -> Run {
    let mut way = begin(spin, tolerance);
    let mut marks = [None; 3];
    let mut yaws: Vec<(f64, f64)> = Vec::new();
    let outcome = if spin.driven == [false; 2] {
        SpinOutcome::NoCounterRotation
    } else {
        loop {
            let left_s = longest_s - way.time_s;
            let mut last: State = [0.0; MOST];
            let step = way.step(
                &mut |_, state, rates| {
                    spin.rates(state, rates);
                    last = *rates;
                },
                left_s,
            );
            watch(&step);
            yaws.push((way.time_s, way.state[planar::YAW_RATE]));
            for (mark, angle) in marks.iter_mut().zip(ANGLES_RAD) {
                if mark.is_none() && way.state[planar::HEADING] >= angle {
                    let share = root::last_not_negative(0.0, 1.0, |share| {
                        angle - step.value(share, planar::HEADING)
                    });
                    let time_s = step.time_s + share * step.length_s;
                    *mark = Some(Mark::of(spin, time_s, &step.state(share)));
                }
            }
            let steady = is_steady(spin, &way.state, &last);
            if let Some(outcome) = ended(spin, &way, (marks[2].is_some(), steady), longest_s) {
                break outcome;
            }
        }
    };
    let settled = outcome == SpinOutcome::Settles;
    let end_yaw = way.state[planar::YAW_RATE];
    let near = |yaw: f64| (yaw - end_yaw).abs() <= 0.01 * end_yaw.abs();
    let before = yaws.iter().rposition(|(_, yaw)| !near(*yaw));
    Run {
        outcome,
        marks,
        end: Mark::of(spin, way.time_s, &way.state),
        motion: (
            way.state[planar::FORWARD],
            way.state[planar::LEFTWARD],
            end_yaw,
        ),
        steady_yaw_rad_s: settled.then_some(end_yaw),
        steady_after_s: before
            .and_then(|at| yaws.get(at + 1))
            .filter(|_| settled)
            .map(|(time_s, _)| *time_s),
        steps: way.tried,
    }
}

/// Whether the motion hardly changes any more.
fn is_steady(spin: &Spin, state: &State, rates: &State) -> bool {
    let yaw = state[planar::YAW_RATE].abs();
    let reach_m = spin.car.chassis.wheelbase_m();
    let moves = rates[planar::FORWARD].abs() + rates[planar::LEFTWARD].abs();
    yaw > 0.0 && moves / reach_m + rates[planar::YAW_RATE].abs() < STEADY * yaw
}

fn ended(
    spin: &Spin,
    way: &Adaptive,
    (round, steady): (bool, bool),
    longest_s: f64,
) -> Option<SpinOutcome> {
    let yaw = way.state[planar::YAW_RATE];
    let over = way.time_s >= longest_s || way.tried > MOST_STEPS;
    if yaw < 0.02 * spin.yaw_rate_rad_s && (way.time_s > PATIENCE_S || over) && !round {
        return Some(SpinOutcome::NeverStarts);
    }
    if spin.car.slope.sin != 0.0 {
        return (round || over).then_some(SpinOutcome::Drifts);
    }
    let (x_m, y_m) = (way.state[planar::X], way.state[planar::Y]);
    if math::hypot(x_m, y_m) > spin.car.chassis.wheelbase_m() {
        return Some(SpinOutcome::LeavesPlace);
    }
    if steady && (round || over) {
        let (ahead_m, left_m) = (
            -way.state[planar::LEFTWARD] / yaw,
            way.state[planar::FORWARD] / yaw,
        );
        let chassis = &spin.car.chassis;
        let near_m = 1e-3 * chassis.wheelbase_m();
        let [front_m, rear_m] = spin.car.tracks_m;
        let inside = ahead_m < chassis.cg_to_front_axle_m() - near_m
            && -ahead_m < chassis.cg_to_rear_axle_m() - near_m
            && left_m.abs() <= 0.5 * front_m.max(rear_m);
        return Some(if inside {
            SpinOutcome::Settles
        } else {
            SpinOutcome::LeavesPlace
        });
    }
    over.then_some(SpinOutcome::NeverSettles)
}

/// The car at a moment of its spin-up.
#[derive(Clone, Copy, Debug)]
pub struct Moment {
    /// Time, angle, place and energies.
    pub mark: Mark,
    /// State of the planar model.
    pub state: planar::State,
    /// What acts on the car.
    pub instant: Instant,
}

/// The car at a moment of its spin-up. The run is computed again up to that moment, so a picture of it is
/// the run and not a picture between two others.
#[must_use]
pub fn at_time(spin: &Spin, time_s: f64) -> Moment {
    let mut way = begin(spin, TOLERANCE);
    let mut step = Step::still(&way.state);
    let runs = spin.driven != [false; 2];
    while runs && way.time_s < time_s && way.tried < MOST_STEPS && way.time_s < LONGEST_S {
        let left_s = LONGEST_S - way.time_s;
        step = way.step(&mut |_, state, rates| spin.rates(state, rates), left_s);
    }
    let share = ((time_s - step.time_s) / step.length_s).clamp(0.0, 1.0);
    let state: State = step.state(share);
    let body = body_of(&state);
    let free = planar::Controls::steered(0.0, 0.0);
    Moment {
        mark: Mark::of(spin, step.time_s + share * step.length_s, &state),
        state: body,
        instant: spin.car.instant(&free, &body),
    }
}
