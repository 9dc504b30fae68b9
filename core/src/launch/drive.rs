//! What motors and tyres make of an instant: the force of each axle and what limits it.

use super::Slip;
use super::car::{Car, LoadLines};
use super::state::{AxleLimit, Instant, SLIP, SPEED, TREAD};
use crate::integrate::State;
use crate::math;
use crate::motor::EndOf;
use crate::tyre;

/// Time in which traction control brings the slip of the tyre to its target \[s\].
const SLIP_TIME_S: f64 = 0.03;
/// Time in which it brings the speed of the wheel there \[s\].
const WHEEL_TIME_S: f64 = 0.01;

/// Share of the acceleration that lifts the front wheels over which torque is taken back.
const LIFT_ROOM: f64 = 0.05;

/// What the forces of an instant depend on besides the state.
pub(super) struct Surroundings {
    /// All that holds the car back \[N\].
    pub(super) resistance_n: f64,
    /// Acceleration that lifts the front axle \[m/s²\].
    pub(super) lift_m_s2: f64,
    /// Axle loads at an acceleration.
    pub(super) lines: LoadLines,
}

impl Car<'_> {
    /// Tractive force that the motors of an axle have at a tread speed \[N\], and what ends it.
    fn motor_force_n(&self, axle: usize, tread_m_s: f64) -> (f64, AxleLimit) {
        let (torque_n_m, end) = self.question.motor.torque(tread_m_s * self.shaft_per_m);
        let limit = match end {
            EndOf::Torque => AxleLimit::Torque,
            EndOf::Power => AxleLimit::Power,
            EndOf::Speed => AxleLimit::MotorSpeed,
        };
        (torque_n_m * self.rims_per_m[axle], limit)
    }

    /// Grip of an axle at an acceleration \[N\], and its slope there \[kg\].
    #[inline(always)]
    fn grip(&self, axle: usize, around: &Surroundings, acceleration_m_s2: f64) -> (f64, f64) {
        let question = self.question;
        let (grip_n, per_n) = tyre::axle_grip(
            question.friction,
            around.lines.at(acceleration_m_s2)[axle],
            question.load_sensitivity,
            question.reference_load_n,
        );
        (grip_n, per_n * around.lines.per_m_s2[axle])
    }

    /// What the battery leaves of the motors' force, 0 to 1.
    fn battery_share(&self, wheel_forces_n: [f64; 2], treads_m_s: [f64; 2]) -> f64 {
        let asked_w = (wheel_forces_n[0] * treads_m_s[0] + wheel_forces_n[1] * treads_m_s[1])
            / self.question.gear_efficiency;
        if asked_w > self.question.battery_w {
            self.question.battery_w / asked_w
        } else {
            1.0
        }
    }

    /// Acceleration at which ΣF(a) = m·a + R, from a function that gives ΣF and its slope in a.
    ///
    /// ΣF is concave in a while both axles carry load: each tyre's grip is, and so is the smaller of grip and
    /// motor. Newton's steps from above therefore come down to the largest root without passing it. Where lift
    /// has taken an axle off the ground, ΣF has a corner the other way; there a step that leaves what is known
    /// to hold the root is taken to the middle of it.
    fn balance(
        &self,
        start: f64,
        around: &Surroundings,
        forces: &dyn Fn(f64) -> (f64, f64),
    ) -> f64 {
        let mass_kg = self.question.chassis.mass_kg();
        let mut acceleration = start;
        let (mut low, mut high) = (f64::NEG_INFINITY, f64::INFINITY);
        for _ in 0..40 {
            let (force_n, slope_kg) = forces(acceleration);
            if force_n > mass_kg * acceleration + around.resistance_n {
                low = acceleration;
            } else {
                high = acceleration;
            }
            let falls_kg = mass_kg - slope_kg;
            if falls_kg <= 0.0 {
                // Every push brings more grip than it costs: only the lift of the front axle ends it.
                return around.lift_m_s2;
            }
            let mut next = (force_n - slope_kg * acceleration - around.resistance_n) / falls_kg;
            let done = (next - acceleration).abs() <= 1e-13 * (1.0 + next.abs());
            let middle = 0.5 * (low + high);
            if !done && middle.is_finite() && !(low < next && next < high) {
                next = middle;
            }
            acceleration = next;
            if done {
                break;
            }
        }
        acceleration
    }

    /// As [`Self::balance`], for tyres that use a share of their grip, where both axles stay on the
    /// ground and their grip falls with load in a straight line: then ΣF(a) is a parabola.
    ///
    /// An axle gives y·μ·N·(1 + k − k·N/(2·N_0)) with N = n + n'·a, an undriven one −J/R²·a.
    #[allow(clippy::needless_range_loop, reason = "as in `integrate`")]
    fn pushed(&self, used: [f64; 2], around: &Surroundings) -> Option<f64> {
        let question = self.question;
        let (whole, falls) = (
            1.0 + question.load_sensitivity,
            0.5 * question.load_sensitivity / question.reference_load_n,
        );
        let mut square = 0.0;
        let mut slope = question.chassis.mass_kg();
        let mut rest = -around.resistance_n;
        for axle in 0..2 {
            if self.driven[axle] {
                let (load_n, per) = (around.lines.at_rest_n[axle], around.lines.per_m_s2[axle]);
                let friction = used[axle] * question.friction;
                square += friction * falls * per * per;
                slope -= friction * per * (whole - 2.0 * falls * load_n);
                rest += friction * load_n * (whole - falls * load_n);
            } else {
                slope += self.spinning_kg[axle];
            }
        }
        // square·a² + slope·a − rest = 0: the larger root of ΣF(a) − m·a − R.
        let found = 2.0 * rest / (slope + math::sqrt(slope * slope + 4.0 * square * rest));
        let loads_n = around.lines.at(found);
        let holds = |axle: usize| {
            !self.driven[axle] || loads_n[axle] > 0.0 && whole - falls * loads_n[axle] > 0.1
        };
        (slope > 0.0 && found.is_finite() && holds(0) && holds(1)).then_some(found)
    }

    /// Tyres that grip at once: each axle pushes with the smaller of motor and grip.
    pub(super) fn gripping(
        &self,
        instant: &mut Instant,
        rims_n: &mut [f64; 2],
        speed: f64,
        around: &Surroundings,
    ) {
        let lift = around.lift_m_s2;
        let mut motor = [0, 1].map(|axle| self.motor_force_n(axle, speed));
        let one = |motor_n: f64, axle: usize, a: f64| {
            // F = T/R − J/R²·a, but no more than the tyres hold.
            let spun_n = motor_n - self.spinning_kg[axle] * a;
            let (grip_n, grip_slope) = self.grip(axle, around, a);
            if self.driven[axle] && grip_n < spun_n {
                (grip_n, grip_slope, true)
            } else {
                (spun_n, -self.spinning_kg[axle], false)
            }
        };
        let solve = |motor: &[(f64, AxleLimit); 2]| {
            let start = if lift.is_finite() {
                lift
            } else {
                (motor[0].0 + motor[1].0 + around.resistance_n.abs())
                    / self.question.chassis.mass_kg()
            };
            let found = self.balance(start, around, &|a| {
                let (front, rear) = (one(motor[0].0, 0, a), one(motor[1].0, 1, a));
                (front.0 + rear.0, front.1 + rear.1)
            });
            found.min(lift)
        };
        let mut found = solve(&motor);
        let asked = |motor: &[(f64, AxleLimit); 2], a: f64| {
            [0, 1].map(|axle| {
                if self.driven[axle] {
                    one(motor[axle].0, axle, a).0 + self.spinning_kg[axle] * a
                } else {
                    0.0
                }
            })
        };
        let share = self.battery_share(asked(&motor, found), [speed; 2]);
        if share < 1.0 {
            let now = asked(&motor, found);
            motor = [0, 1].map(|axle| (share * now[axle], AxleLimit::Battery));
            found = solve(&motor);
        }
        *rims_n = asked(&motor, found);
        instant.acceleration_m_s2 = found;
        instant.loads_n = around.lines.at(found);
        let lifting = found >= lift;
        for (axle, (motor_n, end)) in motor.into_iter().enumerate() {
            let (force_n, _, gripped) = one(motor_n, axle, found);
            instant.forces_n[axle] = force_n;
            if self.driven[axle] {
                instant.limits[axle] = match (lifting, gripped) {
                    (true, _) => AxleLimit::FrontLift,
                    (_, true) => AxleLimit::Grip,
                    _ => end,
                };
            }
        }
        if self.settle(instant, around) {
            *rims_n = [0, 1].map(|axle| {
                if self.driven[axle] {
                    instant.forces_n[axle] + self.spinning_kg[axle] * found
                } else {
                    0.0
                }
            });
        }
    }

    /// Where the lift of an axle ends what the forces ask for, the driven axles give what the
    /// acceleration needs and no more, each in proportion to its load. Tells whether that was so.
    fn settle(&self, instant: &mut Instant, around: &Surroundings) -> bool {
        let chassis = &self.question.chassis;
        let needed_n = chassis.mass_kg() * instant.acceleration_m_s2 + around.resistance_n;
        let over_n = instant.forces_n[0] + instant.forces_n[1] - needed_n;
        if over_n.abs() <= 1e-11 * (chassis.weight_n() + needed_n.abs()) {
            return false;
        }
        let weights = [0, 1].map(|axle| {
            if self.driven[axle] {
                instant.loads_n[axle] + 1e-9
            } else {
                0.0
            }
        });
        for (force_n, weight) in instant.forces_n.iter_mut().zip(weights) {
            *force_n -= over_n * weight / (weights[0] + weights[1]);
        }
        true
    }

    /// Tyres that need slip: their force follows from the state, and the motors follow it.
    pub(super) fn slipping(
        &self,
        instant: &mut Instant,
        rims_n: &mut [f64; 2],
        state: &State,
        slip: &Slip,
        around: &Surroundings,
    ) {
        let mut used = [0.0; 2];
        for axle in 0..2 {
            if self.driven[axle] {
                used[axle] = slip.curve.share(state[SLIP[axle]]);
            }
        }
        let one = |axle: usize, a: f64| {
            if self.driven[axle] {
                let (grip_n, slope) = self.grip(axle, around, a);
                (used[axle] * grip_n, used[axle] * slope)
            } else {
                (-self.spinning_kg[axle] * a, -self.spinning_kg[axle])
            }
        };
        let found = self.pushed(used, around).unwrap_or_else(|| {
            self.balance(0.0, around, &|a| {
                let (front, rear) = (one(0, a), one(1, a));
                (front.0 + rear.0, front.1 + rear.1)
            })
        });
        instant.acceleration_m_s2 = found;
        instant.loads_n = around.lines.at(found);
        let held = if state[SPEED] <= 0.0 {
            found.max(0.0)
        } else {
            found
        };
        instant.forces_n = [one(0, found).0, one(1, found).0];
        self.settle(instant, around);
        for axle in 0..2 {
            if !self.driven[axle] {
                continue;
            }
            let tread = state[TREAD[axle]];
            let (mut rim_n, mut limit) = self.motor_force_n(axle, tread);
            let spinning_kg = self.spinning_kg[axle];
            if let Some(target) = slip.target {
                // The slip speed that brings the tyre to its target, and the force that brings the
                // wheel to that slip speed: T/R = F + J/R²·(a + (v* − v)/τ).
                let now = state[SLIP[axle]];
                let wanted = tread.abs() * now + slip.relaxation_m * (target - now) / SLIP_TIME_S;
                let change = (wanted - (tread - state[SPEED])) / WHEEL_TIME_S;
                let hold_n =
                    math::larger(instant.forces_n[axle] + spinning_kg * (held + change), 0.0);
                if hold_n < rim_n {
                    (rim_n, limit) = (hold_n, AxleLimit::Grip);
                }
            }
            // Near the acceleration that lifts the front wheels, torque is taken back to what the tyres
            // push with already.
            let room =
                (around.lift_m_s2 - found) / (LIFT_ROOM * math::larger(around.lift_m_s2, 1.0));
            if room < 1.0 {
                let steady_n = (instant.forces_n[axle] + spinning_kg * held).max(0.0);
                let most_n = steady_n + room.max(0.0) * (rim_n - steady_n);
                if most_n < rim_n {
                    (rim_n, limit) = (most_n, AxleLimit::FrontLift);
                }
            }
            (rims_n[axle], instant.limits[axle]) = (rim_n, limit);
        }
        let share = self.battery_share(*rims_n, TREAD.map(|at| state[at]));
        if share < 1.0 {
            *rims_n = rims_n.map(|rim_n| share * rim_n);
            instant.limits = instant.limits.map(|limit| match limit {
                AxleLimit::Undriven => limit,
                _ => AxleLimit::Battery,
            });
        }
        // Past its peak slip a tyre is at its limit whatever the motor does.
        for axle in 0..2 {
            if self.driven[axle] && state[SLIP[axle]] > slip.curve.peak_slip() {
                instant.limits[axle] = AxleLimit::Grip;
            }
        }
    }
}
