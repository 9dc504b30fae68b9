//! The run: the car's state integrated from rest, and the marks that it passes.

use super::Question;
use super::car::Car;
use super::state::{self as place, Attitude, Instant};
use crate::integrate::{Adaptive, MOST, State, Step};
use crate::layout::Layout;
use crate::root;

/// Place of each mark in [`Run::marks`].
pub const MARK_ROLLOUT: usize = 0;
/// 60 mph.
pub const MARK_60_MPH: usize = 1;
/// 100 km/h.
pub const MARK_100_KM_H: usize = 2;
/// 160 km/h.
pub const MARK_160_KM_H: usize = 3;
/// A quarter of a mile.
pub const MARK_QUARTER_MILE: usize = 4;

/// What is marked: place in the state and value. Speeds in m/s, distances in m.
pub(super) const MARKS: [(usize, f64); 5] = [
    (place::DISTANCE, 0.3048),
    (place::SPEED, 60.0 * 0.447_04),
    (place::SPEED, 100.0 / 3.6),
    (place::SPEED, 160.0 / 3.6),
    (place::DISTANCE, 402.336),
];

/// Longest time that is simulated \[s\].
pub const LONGEST_S: f64 = 120.0;
/// Time after which a car that has not moved is taken not to move at all \[s\].
const PATIENCE_S: f64 = 3.0;
/// Steps after which a run is given up; a run of a road vehicle needs some hundreds.
const MOST_STEPS: u32 = 20_000;
/// Error of a step, relative. Tyres that grip at once leave corners in the speed but few steps; slip
/// makes many steps, each far more exact than it must be. Every time is then right to 3 millionths.
fn tolerance(question: &Question) -> f64 {
    if question.slip.is_some() { 7e-7 } else { 1e-10 }
}

/// How a run ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// Every mark was passed.
    Done,
    /// The motors are too weak to move the car.
    TooWeak,
    /// The tyres cannot hold what it takes to move the car.
    NoGrip,
    /// The car goes no faster, below the highest speed that is marked.
    TopSpeed,
    /// The air lifts the front wheels: what the car does then is not computed.
    AirLifts,
    /// The time ran out.
    TimeOver,
}

impl Mark {
    /// What the motors gave up to here, as the sum of all that it went into \[J\]: motion of the car and
    /// of its spinning parts, drag, rolling resistance, grade, slip.
    #[must_use]
    pub fn taken_j(&self, mass_kg: f64) -> f64 {
        0.5 * mass_kg * self.speed_m_s * self.speed_m_s
            + self.spinning_j
            + self.drag_work_j
            + self.rolling_work_j
            + self.grade_work_j
            + self.slip_heat_j[0]
            + self.slip_heat_j[1]
    }
}

impl Outcome {
    /// Word in answers.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Done => "launch_done",
            Self::TooWeak => "launch_too_weak",
            Self::NoGrip => "launch_no_grip",
            Self::TopSpeed => "launch_top_speed",
            Self::AirLifts => "launch_air_lifts",
            Self::TimeOver => "launch_time_over",
        }
    }
}

/// The car as it passes a mark.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mark {
    /// Time from the start \[s\].
    pub time_s: f64,
    /// Distance \[m\].
    pub distance_m: f64,
    /// Speed \[m/s\].
    pub speed_m_s: f64,
    /// Impulse of the tractive forces \[N·s\].
    pub push_n_s: f64,
    /// Impulse of all that holds the car back \[N·s\].
    pub hold_n_s: f64,
    /// Work of the motors at their shafts \[J\].
    pub motor_work_j: f64,
    /// Work against drag \[J\].
    pub drag_work_j: f64,
    /// Work against rolling resistance \[J\].
    pub rolling_work_j: f64,
    /// Work against the grade \[J\].
    pub grade_work_j: f64,
    /// Heat from slip, front and rear \[J\].
    pub slip_heat_j: [f64; 2],
    /// Kinetic energy of wheels and rotors \[J\].
    pub spinning_j: f64,
    /// Forces and loads there.
    pub instant: Instant,
}

/// The run of one layout.
#[derive(Clone, Debug)]
pub struct Run {
    /// How it ended.
    pub outcome: Outcome,
    /// The marks passed, in the order of the constants.
    pub marks: [Option<Mark>; 5],
    /// Time up to which the ground limits each axle, front and rear \[s\]; none for an axle that it
    /// never does.
    pub grip_until_s: [Option<f64>; 2],
    /// Largest slip of each axle.
    pub peak_slip: [f64; 2],
    /// Time of the end \[s\].
    pub end_s: f64,
    /// Speed at the end \[m/s\].
    pub end_speed_m_s: f64,
    /// Steps tried.
    pub steps: u32,
}

/// What is told of each accepted step: the integration at its end, and the car there.
pub type Watch<'a> = &'a mut dyn FnMut(&Adaptive, &Instant);

/// Runs a layout from rest until it has passed every mark, or cannot.
///
/// ```
/// use axlewright_core::{Scenario, launch, layout::Layout};
/// let mut scenario = Scenario::default();
/// scenario.set("vehicle.base", "esker")?;
/// let question = launch::Question::from_scenario(&scenario)?;
/// let runs = [Layout::F1R1, Layout::R1].map(|layout| launch::run(&question, layout));
/// let [both, rear] = runs.map(|run| run.marks[launch::MARK_60_MPH].map_or(f64::NAN, |mark| mark.time_s));
/// assert!(both < rear, "{both} s and {rear} s");
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
#[must_use]
pub fn run(question: &Question, layout: Layout) -> Run {
    follow_run(question, layout, &mut |_, _| {})
}

/// As [`run`], with each step told.
#[must_use]
pub fn follow_run(question: &Question, layout: Layout, watch: Watch) -> Run {
    follow(question, layout, tolerance(question), watch)
}

pub(super) fn begin(car: &Car, tolerance: f64) -> Adaptive {
    // A metre, a metre per second, a hundredth of slip; of the springs a centimetre and its rate.
    let mut scales = [1.0; MOST];
    for at in 0..2 {
        scales[place::SLIP[at]] = 0.01;
        scales[place::SPRING[at]] = 0.01;
        scales[place::SPRING[at] + 1] = 0.1;
    }
    Adaptive::new(
        car.at_rest(),
        (place::COUNT, place::WATCHED),
        scales,
        tolerance,
    )
}

/// As [`follow_run`], with the tolerance of a step given.
#[must_use]
pub fn follow(question: &Question, layout: Layout, tolerance: f64, watch: Watch) -> Run {
    let car = Car::new(question, layout);
    let mut way = begin(&car, tolerance);
    let first = car.instant(&way.state, None);
    let mut run = Run {
        outcome: Outcome::TimeOver,
        marks: [None; 5],
        grip_until_s: [None; 2],
        peak_slip: [0.0; 2],
        end_s: 0.0,
        end_speed_m_s: 0.0,
        steps: 0,
    };
    let mut before = first;
    let mut now = first;
    loop {
        let longest_s = LONGEST_S - way.time_s;
        way.advance(
            &mut |_, state, rates| now = car.instant(state, Some(rates)),
            longest_s,
        );
        watch(&way, &now);
        for (mark, (at, value)) in run.marks.iter_mut().zip(MARKS) {
            if mark.is_none() && way.state[at] >= value {
                let step = way.last();
                // The last share of the step at which the mark is not yet passed.
                let share =
                    root::last_not_negative(0.0, 1.0, |share| value - step.value(share, at));
                *mark = Some(mark_at(&car, &step, share));
            }
        }
        for axle in 0..2 {
            let slip = way.state[place::SLIP[axle]];
            run.peak_slip[axle] = run.peak_slip[axle].max(slip);
            if before.limits[axle].is_of_ground() {
                run.grip_until_s[axle] = Some(if now.limits[axle].is_of_ground() {
                    way.time_s
                } else {
                    end_of_grip(&car, &way.last(), axle)
                });
            } else if now.limits[axle].is_of_ground() {
                run.grip_until_s[axle] = Some(way.time_s);
            }
        }
        before = now;
        if let Some(outcome) = ended(&car, &run, &way, &now) {
            run.outcome = outcome;
            break;
        }
    }
    run.end_s = way.time_s;
    run.end_speed_m_s = way.state[place::SPEED];
    run.steps = way.tried;
    run
}

fn ended(car: &Car, run: &Run, way: &Adaptive, now: &Instant) -> Option<Outcome> {
    if run.marks.iter().all(Option::is_some) {
        return Some(Outcome::Done);
    }
    // The front axle's load without the part that the acceleration takes. A car that holds its acceleration
    // to what this load allows comes ever nearer to none.
    let front_n = car.steady_n(&now.air)[0];
    let weight_n = car.question.chassis.weight_n();
    if front_n <= 0.0 || front_n < 1e-3 * weight_n && now.acceleration_m_s2 < 1e-2 {
        return Some(Outcome::AirLifts);
    }
    let still = way.state[place::DISTANCE] < 0.01;
    if still && way.time_s > PATIENCE_S {
        let gripped = now.limits.iter().any(|limit| limit.is_of_ground());
        return Some(if gripped {
            Outcome::NoGrip
        } else {
            Outcome::TooWeak
        });
    }
    let far = run.marks[MARK_QUARTER_MILE].is_some();
    if far && now.acceleration_m_s2 < 1e-4 {
        return Some(Outcome::TopSpeed);
    }
    let over = way.time_s >= LONGEST_S || way.tried > MOST_STEPS;
    let steady = now.acceleration_m_s2 < 1e-3 && !still;
    over.then_some(if steady {
        Outcome::TopSpeed
    } else {
        Outcome::TimeOver
    })
}

/// Time within a step at which the ground ceases to limit an axle.
fn end_of_grip(car: &Car, step: &Step, axle: usize) -> f64 {
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..20 {
        let middle = 0.5 * (low + high);
        if car.instant(&step.state(middle), None).limits[axle].is_of_ground() {
            low = middle;
        } else {
            high = middle;
        }
    }
    step.time_s + low * step.length_s
}

fn mark_at(car: &Car, step: &Step, share: f64) -> Mark {
    let state = step.state(share);
    Mark {
        time_s: step.time_s + share * step.length_s,
        distance_m: state[place::DISTANCE],
        speed_m_s: state[place::SPEED],
        push_n_s: state[place::PUSH],
        hold_n_s: state[place::HOLD],
        motor_work_j: state[place::MOTOR_WORK],
        drag_work_j: state[place::DRAG_WORK],
        rolling_work_j: state[place::ROLLING_WORK],
        grade_work_j: car.grade_n * state[place::DISTANCE],
        slip_heat_j: place::SLIP_HEAT.map(|at| state[at]),
        spinning_j: car.spinning_j(&state),
        instant: car.instant(&state, None),
    }
}

/// The car at a moment of its run: what it is doing, its speed, distance, slip, and how its body
/// stands. The run is computed again up to that moment, so a picture of it is the run and not a
/// picture between two others. Beyond the end of a run the car stands as it was there.
#[must_use]
pub fn at_time(question: &Question, layout: Layout, time_s: f64) -> (Mark, Attitude, [f64; 2]) {
    let car = Car::new(question, layout);
    let mut way = begin(&car, tolerance(question));
    while way.time_s < time_s && way.tried < MOST_STEPS && way.time_s < LONGEST_S {
        let longest_s = LONGEST_S - way.time_s;
        way.advance(
            &mut |_, state, rates| {
                car.instant(state, Some(rates));
            },
            longest_s,
        );
    }
    if way.tried == 0 {
        // Before the first step: at rest.
        let still = Step::still(&way.state);
        return (
            mark_at(&car, &still, 0.0),
            car.attitude(&way.state),
            [0.0; 2],
        );
    }
    let step = way.last();
    let share = ((time_s - step.time_s) / step.length_s).clamp(0.0, 1.0);
    let state: State = step.state(share);
    (
        mark_at(&car, &step, share),
        car.attitude(&state),
        place::SLIP.map(|at| state[at]),
    )
}
