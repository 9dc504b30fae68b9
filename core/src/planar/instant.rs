//! The car at one instant: what its tyres do, and the rates of its state.

use super::loads::{self, Balance, Loads};
use super::{
    Car, Controls, FORWARD, HEADING, LEFTWARD, SLIP_ACROSS, SLIP_ALONG, STATES, State, WHEEL, X, Y,
    YAW_RATE,
};
use crate::math;
use crate::tyre::combined;

/// Time over which a tyre's own damping acts \[s\]: the force answers the deflection and this much of
/// its rate. Without it a car at rest would swing on its tyres for ever.
const DAMPING_TIME_S: f64 = 0.005;

/// Shortest time in which a patch is renewed \[s\].
const RENEWAL_S: f64 = 5e-4;

/// Time in which a brake that is strong enough stops what is left of a wheel's turning \[s\].
const HOLDING_TIME_S: f64 = 0.004;

/// How the tread of one wheel moves over the ground.
#[derive(Clone, Copy)]
pub(super) struct Slide {
    /// Speed of the tread over the ground, against which friction acts: along the wheel \[m/s\].
    pub(super) along_m_s: f64,
    /// Across the wheel \[m/s\].
    pub(super) across_m_s: f64,
    /// Speed at which fresh tread comes into the patch or is dragged through it \[m/s\].
    pub(super) carry_m_s: f64,
}

/// How a tread moves.
#[inline]
pub(super) fn slide(car: &Car, controls: &Controls, state: &State, wheel: usize) -> Slide {
    let (cos, sin) = controls.directions[wheel];
    let (forward, left) = car.hub_m_s(state, wheel);
    let tread = car.radius_m * state[WHEEL + wheel];
    // The force on the car points where the tread slides to, seen from the ground.
    let along_m_s = tread - (cos * forward + sin * left);
    let across_m_s = sin * forward - cos * left;
    Slide {
        along_m_s,
        across_m_s,
        carry_m_s: tread.abs().max(math::hypot(along_m_s, across_m_s)),
    }
}

/// What acts on the car at one instant. Wheels: front left, front right, rear left, rear right.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Instant {
    /// Wheel loads and the sum of the tyre forces.
    pub loads: Loads,
    /// Force of each tyre in the frame of its wheel: along and across \[N\].
    pub tyre_n: [[f64; 2]; 4],
    /// Force of each tyre in the frame of the car: forward and to the left \[N\].
    pub body_n: [[f64; 2]; 4],
    /// Share of its peak friction that each tyre uses \[1\].
    pub used: [f64; 4],
    /// Torque of brake and rolling resistance on each wheel \[N·m\].
    pub held_n_m: [f64; 4],
    /// Acceleration of the CG: forward and to the left \[m/s²\].
    pub acceleration_m_s2: [f64; 2],
    /// Yaw moment of tyres and of what acts from outside \[N·m\].
    pub yaw_moment_n_m: f64,
    /// Power that sliding tyres turn into heat \[W\].
    pub slip_heat_w: f64,
}

impl Car {
    /// What acts on the car.
    #[must_use]
    pub fn instant(&self, controls: &Controls, state: &State) -> Instant {
        let mut rates = [0.0; STATES];
        self.work(controls, state, &mut rates)
    }

    /// Rates of a state.
    pub fn rates(&self, controls: &Controls, state: &State, rates: &mut State) {
        self.work(controls, state, rates);
    }

    /// Rates of a state, and what acts on the car.
    pub fn rates_and_instant(
        &self,
        controls: &Controls,
        state: &State,
        rates: &mut State,
    ) -> Instant {
        self.work(controls, state, rates)
    }

    /// The rates, and all that led to them.
    #[inline(always)]
    fn work(&self, controls: &Controls, state: &State, rates: &mut State) -> Instant {
        let (u, v, r) = (state[FORWARD], state[LEFTWARD], state[YAW_RATE]);
        // Force over load of each tyre, in the frames of wheel and car.
        let mut grips = [[0.0; 2]; 4];
        let mut pushes = [[0.0; 2]; 4];
        let mut slides = [(0.0, 0.0); 4];
        for wheel in 0..4 {
            let slide = slide(self, controls, state, wheel);
            slides[wheel] = (slide.along_m_s, slide.across_m_s);
            let slip = [state[SLIP_ALONG + wheel], state[SLIP_ACROSS + wheel]];
            // λ(σ)·dσ/dt = v_s − c·σ
            let per_length = self.per_length(wheel, slip, slide.carry_m_s);
            let rate = [
                (slide.along_m_s - slide.carry_m_s * slip[0]) * per_length,
                (slide.across_m_s - slide.carry_m_s * slip[1]) * per_length,
            ];
            rates[SLIP_ALONG + wheel] = rate[0];
            rates[SLIP_ACROSS + wheel] = rate[1];
            // Where the patch is renewed sooner than the damping would act, the force answers at once.
            let renewed_per_s = slide.carry_m_s * per_length;
            let lead_s = if renewed_per_s * DAMPING_TIME_S > 1.0 {
                1.0 / renewed_per_s
            } else {
                DAMPING_TIME_S
            };
            grips[wheel] = self.grip(
                wheel,
                [slip[0] + lead_s * rate[0], slip[1] + lead_s * rate[1]],
            );
            let [along, across] = grips[wheel];
            let (cos, sin) = controls.directions[wheel];
            pushes[wheel] = [cos * along - sin * across, sin * along + cos * across];
        }
        let speed = math::sqrt(u * u + v * v);
        let loads = loads::solve(self, &Balance::new(self, speed), &pushes);

        let mut instant = Instant {
            loads,
            tyre_n: [[0.0; 2]; 4],
            body_n: [[0.0; 2]; 4],
            used: [0.0; 4],
            held_n_m: [0.0; 4],
            acceleration_m_s2: [0.0; 2],
            yaw_moment_n_m: controls.yaw_moment_n_m,
            slip_heat_w: 0.0,
        };
        for wheel in 0..4 {
            let n = loads.loads_n[wheel] * loads.factors[wheel];
            let tyre = [n * grips[wheel][0], n * grips[wheel][1]];
            let body = [n * pushes[wheel][0], n * pushes[wheel][1]];
            let (ahead, left) = self.place_m(wheel);
            instant.yaw_moment_n_m += ahead * body[1] - left * body[0];
            instant.slip_heat_w += tyre[0] * slides[wheel].0 + tyre[1] * slides[wheel].1;
            instant.used[wheel] =
                math::hypot(grips[wheel][0], grips[wheel][1]) / self.tyres[wheel].friction;
            let inertia = self.wheel_inertias_kg_m2[wheel];
            let omega = state[WHEEL + wheel];
            let free_n_m = controls.torques_n_m[wheel] - self.radius_m * tyre[0];
            let capacity_n_m = controls.brakes_n_m[wheel]
                + self.rolling_resistance * loads.loads_n[wheel] * self.radius_m;
            let held_n_m = held(free_n_m, inertia, omega, capacity_n_m);
            // J·dω/dt = T − R·F_x + T_held
            rates[WHEEL + wheel] = (free_n_m + held_n_m) / inertia;
            instant.held_n_m[wheel] = held_n_m;
            instant.tyre_n[wheel] = tyre;
            instant.body_n[wheel] = body;
        }

        let (sin, cos) = math::sin_cos(state[HEADING]);
        let mass = self.chassis.mass_kg();
        let downhill_n = self.chassis.weight_n() * self.slope.sin;
        let drag = 0.5 * self.air.density_kg_m3 * self.air.drag_area_m2 * speed;
        // m·a = ΣF − D − W·sin θ, the slope falling against the x axis of the ground.
        let forward = (loads.sum_n[0] - drag * u - downhill_n * cos) / mass;
        let left = (loads.sum_n[1] - drag * v + downhill_n * sin) / mass;
        instant.acceleration_m_s2 = [forward, left];
        rates[X] = u * cos - v * sin;
        rates[Y] = u * sin + v * cos;
        rates[HEADING] = r;
        // du/dt = a_x + v·r, dv/dt = a_y − u·r, I_z·dr/dt = M_z
        rates[FORWARD] = forward + v * r;
        rates[LEFTWARD] = left - u * r;
        rates[YAW_RATE] = instant.yaw_moment_n_m / self.yaw_inertia_kg_m2;
        instant
    }

    /// One over the relaxation length of a tyre at a slip, √(1 + s²)/λ with s the slip over the slip of
    /// most force \[1/m\].
    ///
    /// A tyre that slides is deflected by what its force bends it, not by its slip, so the length falls
    /// as the slip grows. `carry_m_s`: no patch is renewed sooner than in half a millisecond, which is
    /// shorter than anything that a car does, and keeps the equations from being stiff.
    #[inline]
    #[must_use]
    pub fn per_length(&self, wheel: usize, slip: [f64; 2], carry_m_s: f64) -> f64 {
        let peak = &self.tyres[wheel].peak_slip;
        let (x, y) = (slip[0] / peak[0], slip[1] / peak[1]);
        let per_length = math::sqrt(1.0 + x * x + y * y) / self.relaxation_m;
        if carry_m_s * per_length * RENEWAL_S > 1.0 {
            1.0 / (carry_m_s * RENEWAL_S)
        } else {
            per_length
        }
    }

    /// Force over load of a tyre at a slip, by similarity: both slips are measured in their peak
    /// slips, and the share of the friction is that of their length.
    #[inline]
    #[must_use]
    pub fn grip(&self, wheel: usize, slip: [f64; 2]) -> [f64; 2] {
        let tyre = &self.tyres[wheel];
        let (x, y) = (slip[0] / tyre.peak_slip[0], slip[1] / tyre.peak_slip[1]);
        let [along, across] = match &tyre.curve {
            None => [x, y],
            Some(curve) => combined(curve, x, y),
        };
        [tyre.friction * along, tyre.friction * across]
    }
}

/// Torque with which brake and rolling resistance hold a wheel: against its turning, or, once it
/// stands, what it takes to keep it there. It never drives.
#[inline]
fn held(free_n_m: f64, inertia: f64, omega: f64, capacity_n_m: f64) -> f64 {
    let wanted = -free_n_m - inertia * omega / HOLDING_TIME_S;
    let torque = crate::math::smaller(crate::math::larger(wanted, -capacity_n_m), capacity_n_m);
    if torque * omega > 0.0 { 0.0 } else { torque }
}
