//! Forward in time by fixed steps: the classical Runge–Kutta method of order four.

use super::{Car, Controls, STATES, State};

/// One step of a car under controls that do not change during it.
pub fn advance(car: &Car, controls: &Controls, state: &mut State, length_s: f64) {
    let mut slope = [0.0; STATES];
    let mut sum = [0.0; STATES];
    let mut ahead = *state;
    for (share, weight) in [(0.0, 1.0), (0.5, 2.0), (0.5, 2.0), (1.0, 1.0)] {
        if share > 0.0 {
            for at in 0..STATES {
                ahead[at] = state[at] + share * length_s * slope[at];
            }
        }
        car.rates(controls, &ahead, &mut slope);
        for at in 0..STATES {
            sum[at] += weight * slope[at];
        }
    }
    for at in 0..STATES {
        state[at] += length_s / 6.0 * sum[at];
    }
}

/// A whole number of steps. `controls` may change from step to step: it is told the time and the state.
pub fn run(
    car: &Car,
    state: &mut State,
    length_s: f64,
    steps: u32,
    controls: &mut dyn FnMut(f64, &State) -> Controls,
) {
    for step in 0..steps {
        let controls = controls(f64::from(step) * length_s, state);
        advance(car, &controls, state, length_s);
    }
}
