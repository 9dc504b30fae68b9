//! Wheel loads from tyre forces, and tyre forces from wheel loads: solved together.
//!
//! The loads move with the sums S_x and S_y of the tyre forces, and each tyre's force grows with its
//! load. Without load sensitivity this is a linear pair of equations and one step solves it.

use super::Car;
use crate::math;
use crate::surface::LEAST_FACTOR;

/// Loads of the four wheels and the forces of their tyres, in the frame of the car.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Loads {
    /// Wheel loads \[N\], never negative.
    pub loads_n: [f64; 4],
    /// Sum of the tyre forces: forward and to the left \[N\].
    pub sum_n: [f64; 2],
    /// Factor of the friction of each tyre at its load \[1\].
    pub factors: [f64; 4],
    /// Whether a wheel has left the ground.
    pub lifted: bool,
    /// Whether the car tips over: both wheels of one side carry nothing.
    pub tipped: bool,
}

/// Loads without tyre forces, and how they move with the sums of the forces.
#[derive(Clone, Copy)]
pub(super) struct Balance {
    /// Axle loads \[N\].
    still_n: [f64; 2],
    /// Load that the rear axle gains for each newton of S_x.
    rearward: f64,
    /// Load that the right wheel of each axle gains for each newton of S_y.
    rightward: [f64; 2],
    /// Track of one axle over that of the other: what one cannot carry the other must.
    passed_on: [f64; 2],
}

/// A ratio; none where there is no track to divide by: a single track leans on nothing.
#[inline]
fn over(what: f64, track_m: f64) -> f64 {
    if track_m > 0.0 { what / track_m } else { 0.0 }
}

impl Balance {
    /// The car with the wind at a speed \[m/s\].
    #[inline]
    pub(super) fn new(car: &Car, speed_m_s: f64) -> Self {
        let chassis = &car.chassis;
        let air = car.air.forces(speed_m_s);
        let weight_n = chassis.weight_n() * car.slope.cos;
        let per_length = 1.0 / chassis.wheelbase_m();
        let height = chassis.cg_height_m();
        // About the CG: the drag has only the height by which it acts above or below it.
        let pitch_n = air.drag_n * (air.drag_height_m - height) * per_length;
        let front = weight_n * chassis.cg_to_rear_axle_m() * per_length;
        let [front_m, rear_m] = car.tracks_m;
        Self {
            still_n: [
                front - pitch_n - air.lift_front_n,
                weight_n - front + pitch_n - air.lift_rear_n,
            ],
            rearward: height * per_length,
            rightward: [
                over(car.roll_front_share * height, front_m),
                over((1.0 - car.roll_front_share) * height, rear_m),
            ],
            passed_on: [over(front_m, rear_m), over(rear_m, front_m)],
        }
    }

    /// Wheel loads at sums of the tyre forces. What a lifted wheel no longer carries, the other axle
    /// takes over, until the car tips.
    #[inline]
    fn loads(&self, sum_n: [f64; 2]) -> Loads {
        let mut loads = Loads {
            sum_n,
            ..Loads::default()
        };
        let moved_n = self.rearward * sum_n[0];
        let total_n = self.still_n[0] + self.still_n[1];
        let front_n = math::smaller(
            math::larger(self.still_n[0] - moved_n, 0.0),
            total_n.max(0.0),
        );
        let half_n = [0.5 * front_n, 0.5 * (total_n - front_n).max(0.0)];
        let mut right_n = [self.rightward[0] * sum_n[1], self.rightward[1] * sum_n[1]];
        for axle in [0, 1] {
            let held = math::smaller(math::larger(right_n[axle], -half_n[axle]), half_n[axle]);
            if held.to_bits() != right_n[axle].to_bits() {
                right_n[1 - axle] += (right_n[axle] - held) * self.passed_on[axle];
                right_n[axle] = held;
                loads.lifted = true;
            }
        }
        if loads.lifted {
            let held = math::smaller(math::larger(right_n[0], -half_n[0]), half_n[0]);
            loads.tipped = right_n[0].abs() > half_n[0] * (1.0 + 1e-9);
            right_n[0] = held;
        }
        loads.loads_n = [
            half_n[0] - right_n[0],
            half_n[0] + right_n[0],
            half_n[1] - right_n[1],
            half_n[1] + right_n[1],
        ];
        loads
    }
}

/// The friction of a tyre falls with its load along a straight line, down to the least.
#[derive(Clone, Copy)]
struct Line {
    /// Factor without load.
    unloaded: f64,
    /// What each newton takes away.
    per_n: f64,
}

impl Line {
    /// [`crate::surface::load_factor`], with its one division made beforehand.
    #[inline]
    fn factor(self, load_n: f64) -> f64 {
        let factor = self.unloaded - self.per_n * load_n;
        if factor > LEAST_FACTOR {
            factor
        } else {
            LEAST_FACTOR
        }
    }
}

/// Sums of the tyre forces that the loads at given sums make.
#[inline]
fn forces(lines: &[Line; 4], loads: &mut Loads, pushes: &[[f64; 2]; 4]) -> [f64; 2] {
    let mut sum = [0.0; 2];
    for wheel in 0..4 {
        let load_n = loads.loads_n[wheel];
        loads.factors[wheel] = lines[wheel].factor(load_n);
        let n = load_n * loads.factors[wheel];
        sum[0] += n * pushes[wheel][0];
        sum[1] += n * pushes[wheel][1];
    }
    sum
}

/// Loads and forces that agree. `pushes`: force of each tyre over its load, in the frame of the car.
pub(super) fn solve(car: &Car, balance: &Balance, pushes: &[[f64; 2]; 4]) -> Loads {
    let scale_n = car.chassis.weight_n();
    let lines = car.tyres.map(|tyre| Line {
        unloaded: 1.0 + tyre.sensitivity,
        per_n: tyre.sensitivity / tyre.reference_n,
    });
    let lines = &lines;
    let mut sum_n = [0.0; 2];
    let mut loads = balance.loads(sum_n);
    // A linear pair is done after one step; a sensitive tyre takes three or four; at the point where a
    // wheel lifts the slope jumps, and a few more are needed.
    for _ in 0..24 {
        let made_n = forces(lines, &mut loads, pushes);
        let off = [made_n[0] - sum_n[0], made_n[1] - sum_n[1]];
        if off[0].abs() + off[1].abs() <= 1e-13 * scale_n {
            break;
        }
        let slopes = if loads.lifted {
            // Piecewise linear but for the sensitivity: a small step tells the slope.
            let step_n = 1e-6 * scale_n;
            let slope = |at: usize| {
                let mut aside = sum_n;
                aside[at] += step_n;
                let beside = forces(lines, &mut balance.loads(aside), pushes);
                [
                    (beside[0] - made_n[0]) / step_n,
                    (beside[1] - made_n[1]) / step_n,
                ]
            };
            [slope(0), slope(1)]
        } else {
            slopes(lines, balance, &loads, pushes)
        };
        // (1 − dF/dS)·ΔS = F(S) − S
        let (a, b) = (1.0 - slopes[0][0], -slopes[1][0]);
        let (c, d) = (-slopes[0][1], 1.0 - slopes[1][1]);
        let determinant = a * d - b * c;
        if determinant.abs() < 1e-9 {
            break;
        }
        sum_n[0] += (off[0] * d - b * off[1]) / determinant;
        sum_n[1] += (a * off[1] - c * off[0]) / determinant;
        loads = balance.loads(sum_n);
    }
    loads.sum_n = forces(lines, &mut loads, pushes);
    loads
}

/// Rates of the force sums with S_x and with S_y while every wheel is on the ground.
#[inline]
fn slopes(
    lines: &[Line; 4],
    balance: &Balance,
    loads: &Loads,
    pushes: &[[f64; 2]; 4],
) -> [[f64; 2]; 2] {
    let mut slopes = [[0.0; 2]; 2];
    for wheel in 0..4 {
        // d(N·factor)/dN; at its floor the factor no longer falls.
        let falls = if loads.factors[wheel] > LEAST_FACTOR {
            lines[wheel].per_n * loads.loads_n[wheel]
        } else {
            0.0
        };
        let grows = loads.factors[wheel] - falls;
        let along = if wheel < 2 { -0.5 } else { 0.5 } * balance.rearward;
        let across =
            if wheel.is_multiple_of(2) { -1.0 } else { 1.0 } * balance.rightward[wheel / 2];
        for part in [0, 1] {
            let push = pushes[wheel][part] * grows;
            slopes[0][part] += push * along;
            slopes[1][part] += push * across;
        }
    }
    slopes
}
