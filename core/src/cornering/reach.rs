//! The yaw moment that the motors of a layout can add in a steady turn without changing the speed.
//!
//! Each layout is looked at in the turn as its own motors drive it. Slip angles and loads are those of the
//! turn. What a wheel pushes along takes from what it holds across,
//! and that is counted: the moment is that of all tyre forces, less what they make in the turn itself.
//! Motors of one axle may work against each other where each wheel has its own; the axles may work against
//! each other where both are driven.

use super::radius::beyond;
use super::{Question, Trim, trim};
use crate::layout::{AxleDrive, Layout};
use crate::planar::SLIP_ACROSS;

/// A yaw moment, and what it is made of.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Reach {
    /// The moment ΔM_z = t_f·X_f + t_r·X_r + M_y \[N·m\].
    pub moment_n_m: f64,
    /// Half the gain of the right wheel over the left one in force along the car, X, front and rear \[N\].
    pub apart_n: [f64; 2],
    /// What the forces across the car gain or lose, M_y \[N·m\].
    pub across_n_m: f64,
}

/// Points at which the forces of a wheel are known. Between two of them they lie on a straight line, which
/// misses by less than a thousandth.
const POINTS: usize = 41;

/// What one wheel can do at the slip angle that it has, from no force along to the most.
#[derive(Clone, Copy)]
struct Wheel {
    /// Forces along and across \[N\], the first of them rising.
    forces_n: [[f64; 2]; POINTS],
    /// Without a limit one force does not take from the other.
    unlimited: bool,
}

/// What the four wheels can do in a steady turn.
pub struct Reaches<'a> {
    question: &'a Question,
    trim: &'a Trim,
    wheels: [Wheel; 4],
}

/// Times that a search for the best is made narrower, to 0.2 % of the room; the best is flat there.
const NARROWINGS: usize = 13;
const GOLDEN: f64 = 0.618_033_988_749_894_9;

/// The place of the largest value between two ends, the ends among them.
fn best_between(low: f64, high: f64, value: &dyn Fn(f64) -> f64) -> f64 {
    let (mut a, mut b) = (low, high);
    let (mut c, mut d) = (b - GOLDEN * (b - a), a + GOLDEN * (b - a));
    let (mut at_c, mut at_d) = (value(c), value(d));
    for _ in 0..NARROWINGS {
        if at_c > at_d {
            (b, d, at_d) = (d, c, at_c);
            c = b - GOLDEN * (b - a);
            at_c = value(c);
        } else {
            (a, c, at_c) = (c, d, at_d);
            d = a + GOLDEN * (b - a);
            at_d = value(d);
        }
    }
    let middle = 0.5 * (a + b);
    let mut best = (middle, value(middle));
    for end in [low, high] {
        let at_end = value(end);
        if at_end > best.1 {
            best = (end, at_end);
        }
    }
    best.0
}

/// Largest slip that is tried, in slips of most force.
const FAR: f64 = 4.0;

impl Wheel {
    fn new(question: &Question, trim: &Trim, at: usize) -> Self {
        let tyre = &question.car.tyres[at];
        let across = trim.state[SLIP_ACROSS + at];
        let loads = &trim.instant.loads;
        let load_n = loads.loads_n[at] * loads.factors[at];
        let force_n = |slip: f64| {
            let [along, across] = question.car.grip(at, [slip, across]);
            [load_n * along, load_n * across]
        };
        let far = FAR * tyre.peak_slip[0];
        let unlimited = tyre.curve.is_none();
        let most = if unlimited {
            0.0
        } else {
            best_between(0.0, far, &|slip| force_n(slip)[0])
        };
        Self {
            forces_n: core::array::from_fn(|point| {
                // Closer together near the most, where the force across falls fastest.
                let rest = 1.0 - point as f64 / (POINTS - 1) as f64;
                force_n(most * (1.0 - rest * rest))
            }),
            unlimited,
        }
    }

    fn most_n(&self) -> f64 {
        if self.unlimited {
            f64::INFINITY
        } else {
            self.forces_n[POINTS - 1][0]
        }
    }

    /// Force across with a force along \[N\].
    fn across_n(&self, along_n: f64) -> f64 {
        let wanted_n = along_n.abs();
        if self.unlimited {
            return self.forces_n[0][1];
        }
        let (mut low, mut high) = (0, POINTS - 1);
        while high - low > 1 {
            let middle = usize::midpoint(low, high);
            if self.forces_n[middle][0] <= wanted_n {
                low = middle;
            } else {
                high = middle;
            }
        }
        let ([x0, y0], [x1, y1]) = (self.forces_n[low], self.forces_n[high]);
        if x1 <= x0 {
            return y0;
        }
        y0 + (y1 - y0) * ((wanted_n - x0) / (x1 - x0)).min(1.0)
    }
}

/// The largest yaw moment that each layout can add in a turn, each driving the car through it itself.
/// Left out are layouts that cannot hold the turn, and those that neither grip nor motors limit.
#[must_use]
pub fn reaches(question: &Question, turn: &Trim, layouts: &[Layout]) -> Vec<(Layout, Reach)> {
    let mut found = Vec::new();
    for layout in layouts {
        let own = Question {
            layout: *layout,
            ..*question
        };
        let held = trim(&own, &turn.turn, Some(turn));
        if let Some(held) = held.filter(|held| beyond(&own, held).is_none())
            && let Some(reach) = Reaches::new(&own, &held).of(*layout)
        {
            found.push((*layout, reach));
        }
    }
    found
}

/// Forces along the four wheels \[N\].
type Along = [f64; 4];

impl<'a> Reaches<'a> {
    /// What the wheels can do in a steady turn.
    #[must_use]
    pub fn new(question: &'a Question, trim: &'a Trim) -> Self {
        Self {
            question,
            trim,
            wheels: core::array::from_fn(|at| Wheel::new(question, trim, at)),
        }
    }

    /// The largest yaw moment into the turn that a layout can add; `None` where neither grip nor motors
    /// limit it.
    #[must_use]
    pub fn of(&self, layout: Layout) -> Option<Reach> {
        let drives = [layout.front(), layout.rear()];
        let pairs = drives.contains(&AxleDrive::MotorPerWheel);
        if pairs && self.question.motor.is_none() && self.wheels[0].unlimited {
            return None;
        }
        let most_n: [f64; 4] = core::array::from_fn(|at| {
            let speed_m_s = self.trim.turn.speed_m_s;
            let motor_n = self.question.motor_force_n(layout, at / 2, speed_m_s);
            motor_n.min(self.wheels[at].most_n())
        });
        // By how much the front axle may push more, and the rear less, or the other way round.
        let mut room = (0.0, 0.0);
        let both = !drives.contains(&AxleDrive::Undriven);
        if both && !self.wheels[0].unlimited {
            let [front_up, front_down] = self.room(&most_n, 0);
            let [rear_up, rear_down] = self.room(&most_n, 1);
            room = (-front_down.min(rear_up), front_up.min(rear_down));
        }
        let shift_n = if room.0 < room.1 {
            best_between(room.0, room.1, &|shift_n| {
                self.moment(&self.best(&drives, &most_n, shift_n))
            })
        } else {
            0.0
        };
        let found = self.best(&drives, &most_n, shift_n);
        let still = self.still();
        if self.moment(&found) <= self.moment(&still) {
            return Some(Reach::default());
        }
        let (forward, across) = self.parts(&found);
        let (forward_still, across_still) = self.parts(&still);
        let apart_n = [0, 2].map(|left| {
            let gained = |at: usize| forward[at] - forward_still[at];
            0.5 * (gained(left + 1) - gained(left))
        });
        let across_n_m = across - across_still;
        let tracks_m = self.question.car.tracks_m;
        Some(Reach {
            // ΔM_z = t_f·X_f + t_r·X_r + M_y
            moment_n_m: tracks_m[0] * apart_n[0] + tracks_m[1] * apart_n[1] + across_n_m,
            apart_n,
            across_n_m,
        })
    }

    fn still(&self) -> Along {
        core::array::from_fn(|at| self.trim.instant.tyre_n[at][0])
    }

    /// How much more, and how much less, an axle can push, half of it at each wheel \[N\].
    fn room(&self, most_n: &[f64; 4], axle: usize) -> [f64; 2] {
        let still = self.still();
        let (left, right) = (2 * axle, 2 * axle + 1);
        let up = |at: usize| 2.0 * (most_n[at] - still[at]).max(0.0);
        let down = |at: usize| 2.0 * (most_n[at] + still[at]).max(0.0);
        [up(left).min(up(right)), down(left).min(down(right))]
    }

    /// The best forces with so much more pushed in front and less behind.
    fn best(&self, drives: &[AxleDrive; 2], most_n: &[f64; 4], shift_n: f64) -> Along {
        let mut along = self.still();
        for (axle, more_n) in [shift_n, -shift_n].into_iter().enumerate() {
            let (left, right) = (2 * axle, 2 * axle + 1);
            along[left] += 0.5 * more_n;
            along[right] += 0.5 * more_n;
            if drives[axle] == AxleDrive::MotorPerWheel {
                let room_n = (most_n[left] + along[left]).min(most_n[right] - along[right]);
                let gained = |apart_n: f64| {
                    self.one(left, along[left] - apart_n) + self.one(right, along[right] + apart_n)
                };
                let apart_n = best_between(0.0, room_n.max(0.0), &gained);
                along[left] -= apart_n;
                along[right] += apart_n;
            }
        }
        along
    }

    /// Force of a wheel forward and to the left in the frame of the car \[N\].
    fn body_n(&self, at: usize, along_n: f64) -> [f64; 2] {
        let across_n = self.wheels[at].across_n(along_n);
        let (cos, sin) = self.trim.controls.directions[at];
        [
            cos * along_n - sin * across_n,
            sin * along_n + cos * across_n,
        ]
    }

    /// Yaw moment of one wheel \[N·m\].
    fn one(&self, at: usize, along_n: f64) -> f64 {
        let [forward, leftward] = self.body_n(at, along_n);
        let (ahead, left) = self.question.car.place_m(at);
        ahead * leftward - left * forward
    }

    fn moment(&self, along: &Along) -> f64 {
        (0..4).map(|at| self.one(at, along[at])).sum()
    }

    /// Forces along the car \[N\], and the moment of those across it \[N·m\].
    fn parts(&self, along: &Along) -> ([f64; 4], f64) {
        let mut forward = [0.0; 4];
        let mut across = 0.0;
        for at in 0..4 {
            let body = self.body_n(at, along[at]);
            forward[at] = body[0];
            across += self.question.car.place_m(at).0 * body[1];
        }
        (forward, across)
    }
}
