//! The step steer (ISO 7401): from straight ahead, the wheels are steered at once to the angle of the
//! turn, and the car needs a moment to follow.

use super::{Question, Trim};
use crate::planar::{Controls, State, YAW_RATE, advance};

/// Time in which the wheels are steered \[s\].
pub(super) const RAMP_S: f64 = 0.1;
/// How long the response is followed \[s\].
pub(super) const LENGTH_S: f64 = 1.5;
const STEP_S: f64 = 0.0025;
/// A sample is kept every so many steps.
const KEEP: u32 = 10;

/// Into how many parts a step is cut at most.
const MOST_PARTS: u32 = 64;
/// A yaw rate that no car has: the integration has run away \[rad/s\].
const RUNAWAY_RAD_S: f64 = 100.0;

/// One moment of the response.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// Time \[s\].
    pub time_s: f64,
    /// Yaw rate r \[rad/s\].
    pub yaw_rate_rad_s: f64,
    /// Lateral acceleration a_y \[m/s²\].
    pub lateral_m_s2: f64,
}

/// The response.
#[derive(Clone, Debug, PartialEq)]
pub struct Response {
    /// Samples along the way.
    pub samples: Vec<Sample>,
    /// Yaw rate of the steady turn \[rad/s\].
    pub steady_rad_s: f64,
    /// Largest yaw rate \[rad/s\].
    pub most_rad_s: f64,
    /// Time at which the wheels are half steered \[s\].
    pub half_steered_s: f64,
    /// Time at which the yaw rate first is nine tenths of the steady one \[s\]; `None`: not while it is
    /// followed.
    pub nine_tenths_s: Option<f64>,
}

/// Controls at a time of the step.
pub(super) fn controls_at(trim: &Trim, time_s: f64) -> Controls {
    if time_s >= RAMP_S {
        return trim.controls;
    }
    let mut controls = Controls::steered(trim.steer_rad * time_s.max(0.0) / RAMP_S, 0.0);
    controls.torques_n_m = trim.controls.torques_n_m;
    controls
}

/// The state before the step: straight ahead at the speed of the turn.
pub(super) fn straight(question: &Question, trim: &Trim) -> State {
    let controls = Controls::steered(0.0, 0.0);
    question
        .car
        .rolling(&controls, (trim.turn.speed_m_s, 0.0, 0.0))
}

/// The response of the car of a steady turn to being steered as in it.
///
/// Light wheels on stiff tyres answer faster than the usual step can follow; then it is taken shorter.
#[must_use]
pub fn step_steer(question: &Question, trim: &Trim) -> Response {
    let mut parts = 1;
    loop {
        let (response, whole) = followed(question, trim, parts);
        if whole || parts >= MOST_PARTS {
            return response;
        }
        parts *= 4;
    }
}

/// The response with each step in some parts, and whether it stayed among numbers that a car can have.
fn followed(question: &Question, trim: &Trim, parts: u32) -> (Response, bool) {
    let mut state = straight(question, trim);
    let steady = trim.state[YAW_RATE];
    let mut response = Response {
        samples: Vec::with_capacity((LENGTH_S / STEP_S) as usize / KEEP as usize + 1),
        steady_rad_s: steady,
        most_rad_s: 0.0,
        half_steered_s: 0.5 * RAMP_S,
        nine_tenths_s: None,
    };
    let steps = (LENGTH_S / STEP_S) as u32;
    let mut before = 0.0;
    for step in 0..=steps {
        let time_s = f64::from(step) * STEP_S;
        let yaw_rate = state[YAW_RATE];
        if !(yaw_rate.abs() < RUNAWAY_RAD_S && state.iter().all(|value| value.is_finite())) {
            return (response, false);
        }
        response.most_rad_s = response.most_rad_s.max(yaw_rate);
        let wanted = 0.9 * steady;
        if response.nine_tenths_s.is_none() && yaw_rate >= wanted && yaw_rate > before {
            let share = (wanted - before) / (yaw_rate - before);
            response.nine_tenths_s = Some(time_s - STEP_S * (1.0 - share));
        }
        before = yaw_rate;
        // The middle of the step stands for all of it while the wheels are being steered.
        let controls = controls_at(trim, time_s + 0.5 * STEP_S);
        if step % KEEP == 0 {
            let instant = question.car.instant(&controls_at(trim, time_s), &state);
            response.samples.push(Sample {
                time_s,
                yaw_rate_rad_s: yaw_rate,
                lateral_m_s2: instant.acceleration_m_s2[1],
            });
        }
        for _ in 0..parts {
            advance(
                &question.car,
                &controls,
                &mut state,
                STEP_S / f64::from(parts),
            );
        }
    }
    (response, true)
}
