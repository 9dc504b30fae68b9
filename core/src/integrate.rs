//! Integration in time: one adaptive method with dense output, and one with fixed steps.
//!
//! Own code: the crates at hand bring a matrix library, or a copy of themselves for every system, and
//! the browser would pay for either. One state type and one erased function serve every topic.

#![allow(
    clippy::needless_range_loop,
    reason = "built to be small, the adapters of iterators become calls, and a run spends its time here"
)]

use crate::math;

/// Most numbers that a state may have.
pub const MOST: usize = 20;

/// A state: as many numbers as the system uses, then zeros.
pub type State = [f64; MOST];

/// Gives the rates of a state at a time: `rates(t, y, &mut dy)`.
pub type Rates<'a> = &'a mut dyn FnMut(f64, &State, &mut State);

/// Coefficients, a row for each stage, of Dormand and Prince's method of order 5(4): J. R. Dormand and P. J. Prince, A family
/// of embedded Runge–Kutta formulae, J. Comp. Appl. Math. 6 (1980) 19–26 (from memory; the tests
/// measure the order).
const A: [[f64; 7]; 6] = [
    [1.0 / 5.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0],
    [3.0 / 40.0, 9.0 / 40.0, 0.0, 0.0, 0.0, 0.0, 0.0],
    [44.0 / 45.0, -56.0 / 15.0, 32.0 / 9.0, 0.0, 0.0, 0.0, 0.0],
    [
        19372.0 / 6561.0,
        -25360.0 / 2187.0,
        64448.0 / 6561.0,
        -212.0 / 729.0,
        0.0,
        0.0,
        0.0,
    ],
    [
        9017.0 / 3168.0,
        -355.0 / 33.0,
        46732.0 / 5247.0,
        49.0 / 176.0,
        -5103.0 / 18656.0,
        0.0,
        0.0,
    ],
    [
        35.0 / 384.0,
        0.0,
        500.0 / 1113.0,
        125.0 / 192.0,
        -2187.0 / 6784.0,
        11.0 / 84.0,
        0.0,
    ],
];
const C: [f64; 6] = [0.2, 0.3, 0.8, 8.0 / 9.0, 1.0, 1.0];
/// Order five less order four.
const ERROR: [f64; 7] = [
    71.0 / 57600.0,
    0.0,
    -71.0 / 16695.0,
    71.0 / 1920.0,
    -17253.0 / 339_200.0,
    22.0 / 525.0,
    -1.0 / 40.0,
];
/// Dense output of order four: E. Hairer, S. P. Nørsett and G. Wanner, Solving Ordinary Differential
/// Equations I, section II.6 (from memory; the tests measure the order).
const DENSE: [f64; 7] = [
    -12_715_105_075.0 / 11_282_082_432.0,
    0.0,
    87_487_479_700.0 / 32_700_410_799.0,
    -10_690_763_975.0 / 1_880_347_072.0,
    701_980_252_875.0 / 199_316_789_632.0,
    -1_453_857_185.0 / 822_651_844.0,
    69_997_945.0 / 29_380_423.0,
];

/// An accepted step, with the state anywhere inside it.
#[derive(Clone, Debug)]
pub struct Step {
    /// Time at its beginning \[s\].
    pub time_s: f64,
    /// Its length \[s\].
    pub length_s: f64,
    parts: [State; 5],
}

impl Step {
    /// A step in which nothing moves, at time 0.
    #[must_use]
    pub fn still(state: &State) -> Self {
        let none = [0.0; MOST];
        Self {
            time_s: 0.0,
            length_s: 1.0,
            parts: [*state, none, none, none, none],
        }
    }

    /// One number of the state at a share of the step, 0 to 1.
    #[must_use]
    pub fn value(&self, share: f64, at: usize) -> f64 {
        let rest = 1.0 - share;
        let [a, b, c, d, e] = &self.parts;
        a[at] + share * (b[at] + rest * (c[at] + share * (d[at] + rest * e[at])))
    }

    /// The whole state at a share of the step.
    #[must_use]
    pub fn state(&self, share: f64) -> State {
        core::array::from_fn(|at| self.value(share, at))
    }
}

/// An integration under way.
#[derive(Clone, Debug)]
pub struct Adaptive {
    /// Time reached \[s\].
    pub time_s: f64,
    /// State reached.
    pub state: State,
    /// Numbers of the state in use.
    count: usize,
    /// Numbers, from the first on, that rates depend on and whose error sets the step. The others are
    /// integrals along the way.
    watched: usize,
    tolerance: f64,
    /// Size below which an error is measured absolutely.
    scales: State,
    next_s: f64,
    error_before: f64,
    fresh: bool,
    /// The last step: where it began, how long it was, and the rates of its stages.
    before_s: f64,
    before: State,
    length_s: f64,
    stages: [State; 7],
    /// Steps tried so far.
    pub tried: u32,
}

impl Adaptive {
    /// Begins at time 0.
    ///
    /// `count`: numbers in use; `watched`: how many of them, from the first on, rates depend on and set
    /// the step; `tolerance`: error of a step, relative to the number or to its scale, whichever is
    /// larger.
    #[must_use]
    pub fn new(
        state: State,
        (count, watched): (usize, usize),
        scales: State,
        tolerance: f64,
    ) -> Self {
        Self {
            time_s: 0.0,
            state,
            count: count.min(MOST),
            watched: watched.min(count).min(MOST),
            tolerance,
            scales,
            next_s: 1e-3,
            error_before: 1.0,
            fresh: true,
            before_s: 0.0,
            before: state,
            length_s: 0.0,
            stages: [[0.0; MOST]; 7],
            tried: 0,
        }
    }

    /// One accepted step, no longer than allowed, as [`Self::advance`] makes it.
    pub fn step(&mut self, rates: Rates, longest_s: f64) -> Step {
        self.advance(rates, longest_s);
        self.last()
    }

    /// Goes on by one accepted step, no longer than allowed. Each trial that fails makes the next one
    /// shorter, and a step of a billionth of a second is accepted as it is, so this always ends.
    ///
    /// The rates are given zeros or those of an earlier call to write over.
    pub fn advance(&mut self, rates: Rates, longest_s: f64) {
        if self.fresh {
            rates(self.time_s, &self.state, &mut self.stages[0]);
            self.fresh = false;
        } else {
            // The last stage of a step is the first one of the next.
            self.stages[0] = self.stages[6];
        }
        (self.before_s, self.before) = (self.time_s, self.state);
        let mut length = self.next_s.min(longest_s);
        let mut failed = false;
        loop {
            self.tried += 1;
            for stage in 0..6 {
                // Nothing depends on an integral along the way; the last stage is the step itself.
                let count = if stage == 5 { self.count } else { self.watched };
                self.lean(stage, count, length);
                rates(
                    self.before_s + C[stage] * length,
                    &self.state,
                    &mut self.stages[stage + 1],
                );
            }
            let error = self.error(length);
            let factor = self.factor(error);
            if error <= 1.0 || length <= 1e-9 {
                // A step that was cut short says nothing against a long one after it, and one that
                // failed before nothing for a longer one.
                let cut = length < self.next_s && error <= 1.0;
                let wanted = length * if failed { factor.min(1.0) } else { factor };
                self.next_s = if cut {
                    wanted.max(self.next_s)
                } else {
                    wanted.max(1e-9)
                };
                self.error_before = error.max(1e-4);
                self.length_s = length;
                self.time_s = self.before_s + length;
                return;
            }
            length = (length * factor.min(0.9)).max(1e-9);
            self.next_s = length;
            failed = true;
        }
    }

    /// Puts the state where a stage of the step looks at the rates.
    fn lean(&mut self, stage: usize, count: usize, length: f64) {
        for at in 0..count.min(MOST) {
            let slope = along(&A[stage], &self.stages, stage + 1, at);
            self.state[at] = self.before[at] + length * slope;
        }
    }

    /// How much longer the next step may be. Order five: the error grows with the fifth power of the
    /// step. The error before it damps the hunting where stability, not accuracy, sets the step. The
    /// powers, −1/8 and 1/16, are of square roots: they cost a tenth of any others.
    fn factor(&self, error: f64) -> f64 {
        if error <= 0.0 {
            return 5.0;
        }
        let root = |value: f64| math::sqrt(math::sqrt(value));
        let factor = 0.9 * root(root(self.error_before)) / math::sqrt(root(error));
        if factor.is_finite() {
            factor.clamp(0.2, 5.0)
        } else {
            0.2
        }
    }

    fn error(&self, length: f64) -> f64 {
        let mut squares = 0.0;
        for at in 0..self.watched.min(MOST) {
            let error = along(&ERROR, &self.stages, 7, at);
            let size = math::larger(self.before[at].abs(), self.state[at].abs());
            let share = length * error / (self.tolerance * math::larger(size, self.scales[at]));
            squares += share * share;
        }
        math::sqrt(squares / self.watched.max(1) as f64)
    }

    /// The last step, with the state anywhere inside it.
    #[must_use]
    pub fn last(&self) -> Step {
        let length = self.length_s;
        let mut parts = [[0.0; MOST]; 5];
        for at in 0..self.count.min(MOST) {
            let change = self.state[at] - self.before[at];
            let bend = length * self.stages[0][at] - change;
            let last = along(&DENSE, &self.stages, 7, at);
            parts[0][at] = self.before[at];
            parts[1][at] = change;
            parts[2][at] = bend;
            parts[3][at] = change - length * self.stages[6][at] - bend;
            parts[4][at] = length * last;
        }
        Step {
            time_s: self.before_s,
            length_s: length,
            parts,
        }
    }
}

/// A number's rates in the first stages, each times its factor, added up.
#[inline(always)]
fn along(factors: &[f64; 7], stages: &[State; 7], count: usize, at: usize) -> f64 {
    let mut sum = 0.0;
    for stage in 0..count.min(7) {
        sum += factors[stage] * stages[stage][at];
    }
    sum
}

/// One step of the classical Runge–Kutta method of order four, for models that are shown as they run.
pub fn fixed_step(rates: Rates, time_s: f64, state: &mut State, count: usize, length_s: f64) {
    let mut slope = [0.0; MOST];
    let mut sum = [0.0; MOST];
    let mut ahead = *state;
    for (share, weight) in [(0.0, 1.0), (0.5, 2.0), (0.5, 2.0), (1.0, 1.0)] {
        if share > 0.0 {
            for at in 0..count.min(MOST) {
                ahead[at] = state[at] + share * length_s * slope[at];
            }
        }
        rates(time_s + share * length_s, &ahead, &mut slope);
        for at in 0..count.min(MOST) {
            sum[at] += weight * slope[at];
        }
    }
    for at in 0..count.min(MOST) {
        state[at] += length_s / 6.0 * sum[at];
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// y'' = −y with y(0) = 1: a cosine.
    fn cosine(_: f64, y: &State, dy: &mut State) {
        dy[0] = y[1];
        dy[1] = -y[0];
    }

    fn begin() -> State {
        let mut state = [0.0; MOST];
        state[0] = 1.0;
        state
    }

    /// Largest error at the end of each step and inside the steps, with steps of one length.
    fn errors(length: f64) -> (f64, f64) {
        let mut run = Adaptive::new(begin(), (2, 2), [1.0; MOST], 1e30);
        run.next_s = length;
        let (mut ends, mut inside) = (0.0_f64, 0.0_f64);
        while run.time_s < 10.0 {
            let step = run.step(&mut cosine, length);
            ends = ends.max((run.state[0] - math::cos(run.time_s)).abs());
            for share in [0.2, 0.5, 0.8] {
                let time = step.time_s + share * step.length_s;
                inside = inside.max((step.value(share, 0) - math::cos(time)).abs());
            }
        }
        (ends, inside)
    }

    #[test]
    fn halving_the_step_shows_order_five_and_a_dense_output_of_order_four() {
        let (coarse, fine) = (errors(0.2), errors(0.1));
        let order = |a: f64, b: f64| libm::log2(a / b);
        assert!(
            (order(coarse.0, fine.0) - 5.0).abs() < 0.3,
            "{coarse:?} {fine:?}"
        );
        assert!(order(coarse.1, fine.1) > 3.8, "{coarse:?} {fine:?}");
    }

    #[test]
    fn halving_the_fixed_step_shows_order_four() {
        let error = |steps: u32| {
            let mut state = begin();
            let length = 10.0 / f64::from(steps);
            for _ in 0..steps {
                fixed_step(&mut cosine, 0.0, &mut state, 2, length);
            }
            (state[0] - math::cos(10.0)).abs()
        };
        let order = libm::log2(error(100) / error(200));
        assert!((order - 4.0).abs() < 0.2, "{order}");
    }

    #[test]
    fn a_kink_costs_at_most_fifty_times_the_tolerance() {
        // dy/dt = min(1, 2 − t): the rate has a corner at t = 1.
        let mut rates = |t: f64, _: &State, dy: &mut State| dy[0] = (2.0 - t).min(1.0);
        let mut run = Adaptive::new([0.0; MOST], (1, 1), [1.0; MOST], 1e-8);
        while run.time_s < 2.0 {
            let left = 2.0 - run.time_s;
            run.step(&mut rates, left);
        }
        assert!((run.state[0] - 1.5).abs() < 5e-7, "{}", run.state[0]);
    }

    #[test]
    fn a_rate_that_is_no_number_ends_all_the_same() {
        let mut rates = |_: f64, _: &State, dy: &mut State| dy[0] = f64::NAN;
        let mut run = Adaptive::new([0.0; MOST], (1, 1), [1.0; MOST], 1e-6);
        let step = run.step(&mut rates, 1.0);
        assert!(step.length_s <= 1e-9);
    }
}
