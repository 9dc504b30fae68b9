//! The steady turn: which sideslip, steer angle, drive torque and wheel speeds leave nothing to change.
//!
//! Newton's method on the rates of the planar model itself, with every slip at its steady value. What it
//! finds is therefore what the transient ends at.

use super::Question;
use crate::GRAVITY_M_S2;
use crate::math;
use crate::planar::{Controls, FORWARD, Instant, LEFTWARD, STATES, State, WHEEL, YAW_RATE};

/// Count of unknowns: sideslip, steer angle, drive torque, four wheel speeds.
const COUNT: usize = 7;

/// The unknowns, each of the order of one: β, δ, T/(W·R), and R·ω/V − 1 of each wheel, V the speed with
/// which its hub moves along it.
pub(super) type Unknowns = [f64; COUNT];

/// A turn: how fast, how tight, and what else acts on the wheels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Turn {
    /// Speed \[m/s\].
    pub speed_m_s: f64,
    /// One over the radius of the path of the CG \[1/m\], to the left positive.
    pub curvature: f64,
    /// Torques of the motors beside those that hold the speed \[N·m\].
    pub extra_n_m: [f64; 4],
    /// Torques of the brakes \[N·m\].
    pub brakes_n_m: [f64; 4],
}

impl Turn {
    /// A turn with nothing but the drive that holds the speed.
    #[must_use]
    pub fn plain(speed_m_s: f64, curvature: f64) -> Self {
        Self {
            speed_m_s,
            curvature,
            extra_n_m: [0.0; 4],
            brakes_n_m: [0.0; 4],
        }
    }
}

/// A steady turn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trim {
    /// The turn that was asked for.
    pub turn: Turn,
    /// Steer angle of the front wheels δ \[rad\].
    pub steer_rad: f64,
    /// Sideslip angle at the CG, β \[rad\].
    pub sideslip_rad: f64,
    /// Torque of all motors at the wheels that holds the speed \[N·m\].
    pub drive_n_m: f64,
    /// What the driver and the machines do.
    pub controls: Controls,
    /// The state.
    pub state: State,
    /// What acts on the car.
    pub instant: Instant,
    pub(super) unknowns: Unknowns,
}

impl Trim {
    /// Power of the motors at the wheels, ΣT·ω \[W\].
    #[must_use]
    pub fn wheel_power_w(&self) -> f64 {
        (0..4)
            .map(|wheel| self.controls.torques_n_m[wheel] * self.state[WHEEL + wheel])
            .sum()
    }

    /// Largest share of the friction that a tyre of an axle uses, weighed by its load.
    #[must_use]
    pub fn used(&self, axle: usize) -> f64 {
        let loads_n = &self.instant.loads.loads_n;
        let (left, right) = (2 * axle, 2 * axle + 1);
        let sum_n = loads_n[left] + loads_n[right];
        if sum_n <= 0.0 {
            return 0.0;
        }
        (self.instant.used[left] * loads_n[left] + self.instant.used[right] * loads_n[right])
            / sum_n
    }
}

/// The state and the controls that some unknowns stand for.
fn situation(question: &Question, turn: &Turn, unknowns: &Unknowns) -> (Controls, State) {
    let car = &question.car;
    let [sideslip, steer, torque, ..] = *unknowns;
    let mut controls = Controls::steered(steer, 0.0);
    controls.brakes_n_m = turn.brakes_n_m;
    let drive_n_m = torque * car.chassis.weight_n() * car.radius_m;
    for (wheel, share) in question.drive_shares().into_iter().enumerate() {
        controls.torques_n_m[wheel] = share * drive_n_m + turn.extra_n_m[wheel];
    }
    let mut state = [0.0; STATES];
    state[FORWARD] = turn.speed_m_s * math::cos(sideslip);
    state[LEFTWARD] = turn.speed_m_s * math::sin(sideslip);
    state[YAW_RATE] = turn.speed_m_s * turn.curvature;
    for wheel in 0..4 {
        let (cos, sin) = controls.directions[wheel];
        let (forward, left) = car.hub_m_s(&state, wheel);
        let along = cos * forward + sin * left;
        state[WHEEL + wheel] = along * (1.0 + unknowns[3 + wheel]) / car.radius_m;
    }
    car.settle_slips(&controls, &mut state);
    (controls, state)
}

/// What is left to change, each part over what it is measured by.
fn residual(question: &Question, turn: &Turn, unknowns: &Unknowns) -> Unknowns {
    let (controls, state) = situation(question, turn, unknowns);
    let car = &question.car;
    let mut rates = [0.0; STATES];
    car.rates(&controls, &state, &mut rates);
    let length_m = car.chassis.wheelbase_m();
    let force_n = 0.25 * car.chassis.weight_n();
    let mut left = [0.0; COUNT];
    left[0] = rates[FORWARD] / GRAVITY_M_S2;
    left[1] = rates[LEFTWARD] / GRAVITY_M_S2;
    left[2] = rates[YAW_RATE] * length_m / GRAVITY_M_S2;
    for wheel in 0..4 {
        left[3 + wheel] =
            rates[WHEEL + wheel] * car.wheel_inertias_kg_m2[wheel] / (force_n * car.radius_m);
    }
    left
}

fn size(values: &Unknowns) -> f64 {
    values.iter().fold(0.0, |most: f64, value| {
        if value.is_finite() {
            most.max(value.abs())
        } else {
            f64::INFINITY
        }
    })
}

/// The single track's answer, to begin with.
pub(super) fn first_guess(question: &Question, turn: &Turn) -> Unknowns {
    let track = super::SingleTrack {
        speed_m_s: turn.speed_m_s,
        radius_m: 1.0 / turn.curvature,
        ..super::SingleTrack::of(question)
    };
    let mut guess = [0.0; COUNT];
    guess[0] = track.sideslip_rad();
    guess[1] = track.steer_rad();
    guess
}

/// Residual at which a turn counts as steady. The forces are sums of numbers of the order of one.
const STEADY: f64 = 1e-11;

/// The steady turn nearest to a guess, if there is one that the wheels stay on the ground in.
pub(super) fn from_guess(question: &Question, turn: &Turn, guess: Unknowns) -> Option<Trim> {
    let mut unknowns = guess;
    let mut left = residual(question, turn, &unknowns);
    let mut now = size(&left);
    for _ in 0..16 {
        if now <= STEADY {
            break;
        }
        let mut rows = [[0.0; COUNT + 1]; COUNT];
        for at in 0..COUNT {
            let step = 1e-7;
            let mut aside = unknowns;
            aside[at] += step;
            let beside = residual(question, turn, &aside);
            for row in 0..COUNT {
                rows[row][at] = (beside[row] - left[row]) / step;
            }
        }
        for row in 0..COUNT {
            rows[row][COUNT] = -left[row];
        }
        let change = eliminate(&mut rows)?;
        // A step that makes things worse is halved; far from a solution none may help.
        let mut share = 1.0;
        loop {
            let ahead = core::array::from_fn(|at| unknowns[at] + share * change[at]);
            let there = residual(question, turn, &ahead);
            let then = size(&there);
            if then < now || share < 0.06 {
                (unknowns, left, now) = (ahead, there, then);
                break;
            }
            share *= 0.5;
        }
    }
    // What rounding leaves of the wheels' part is larger where they slip little.
    if now > 1e-9 || unknowns[1].abs() > 1.3 || unknowns[0].abs() > 1.3 {
        return None;
    }
    let (controls, state) = situation(question, turn, &unknowns);
    let instant = question.car.instant(&controls, &state);
    if instant.loads.tipped {
        return None;
    }
    let car = &question.car;
    Some(Trim {
        turn: *turn,
        steer_rad: unknowns[1],
        sideslip_rad: unknowns[0],
        drive_n_m: unknowns[2] * car.chassis.weight_n() * car.radius_m,
        controls,
        state,
        instant,
        unknowns,
    })
}

/// The steady turn, if it can be held. `near`: a steady turn that differs little, where one is known.
///
/// ```
/// use axlewright_core::{Scenario, cornering};
/// let mut scenario = Scenario::default();
/// scenario.set("vehicle.base", "esker")?;
/// scenario.set("cornering.speed", "15 m/s")?;
/// let question = cornering::Question::from_scenario(&scenario)?;
/// let turn = cornering::Turn::plain(question.speed_m_s, 1.0 / question.radius_m);
/// let steer_rad = cornering::trim(&question, &turn, None).map(|trim| trim.steer_rad);
/// // It understeers: more than the wheels need at walking pace.
/// let slow_rad = cornering::SingleTrack::of(&question).ackermann_rad();
/// assert!(steer_rad.is_some_and(|angle| angle > slow_rad));
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
#[must_use]
pub fn trim(question: &Question, turn: &Turn, near: Option<&Trim>) -> Option<Trim> {
    let guess = near.map_or_else(|| first_guess(question, turn), |trim| trim.unknowns);
    from_guess(question, turn, guess)
}

/// Gaussian elimination with row exchange; none where the equations do not decide.
fn eliminate(rows: &mut [[f64; COUNT + 1]; COUNT]) -> Option<Unknowns> {
    for at in 0..COUNT {
        let mut best = at;
        for row in at + 1..COUNT {
            if rows[row][at].abs() > rows[best][at].abs() {
                best = row;
            }
        }
        rows.swap(at, best);
        let pivot = rows[at][at];
        if pivot.is_nan() || pivot.abs() < 1e-12 {
            return None;
        }
        let top = rows[at];
        for row in rows.iter_mut().skip(at + 1) {
            let factor = row[at] / pivot;
            for column in at..=COUNT {
                row[column] -= factor * top[column];
            }
        }
    }
    let mut found = [0.0; COUNT];
    for at in (0..COUNT).rev() {
        let mut rest = rows[at][COUNT];
        for after in at + 1..COUNT {
            rest -= rows[at][after] * found[after];
        }
        found[at] = rest / rows[at][at];
    }
    Some(found)
}
