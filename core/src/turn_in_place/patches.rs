//! The slow turn of any four patches: friction of its own under each, steered wheels, wheels that roll
//! freely.
//!
//! While every patch slides, friction takes the power Φ = Σ μN·|v_s|, with v_s the sliding velocity of
//! each patch, which is a straight line in the car's motion (u, v, r). The forces on the car are the
//! slopes of −Φ, so where wheel speeds are given the car settles to the motion that loses least power.
//! Φ is convex: there is one least power. A wheel that rolls freely slides only sideways. A moment that
//! resists turning adds M·|r|.
//!
//! [`steady`](super::steady) solves the same for a car whose left and right are alike; the tests hold
//! the two against each other.

use crate::math;

/// One contact patch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Patch {
    /// Distance ahead of the CG \[m\].
    pub ahead_m: f64,
    /// Distance to the left of the CG \[m\].
    pub left_m: f64,
    /// Friction that it has, μN \[N\].
    pub grip_n: f64,
    /// Steer angle of its wheel, positive to the left \[rad\].
    pub steer_rad: f64,
    /// Speed of the tread R·ω where the motors hold it \[m/s\]; `None`: the wheel rolls freely.
    pub tread_m_s: Option<f64>,
}

/// A plane motion of the car, in its own axes.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Motion {
    /// Speed of the CG forward, u \[m/s\].
    pub forward_m_s: f64,
    /// Speed of the CG to the left, v \[m/s\].
    pub left_m_s: f64,
    /// Yaw rate, anticlockwise, r \[rad/s\].
    pub yaw_rad_s: f64,
}

impl Motion {
    /// The turning centre, ahead and to the left of the CG \[m\]; none where the car does not yaw.
    #[must_use]
    pub fn centre_m(&self) -> Option<(f64, f64)> {
        let yaw = self.yaw_rad_s;
        let fast = self.forward_m_s.abs() + self.left_m_s.abs();
        // Beyond a kilometre a centre is none.
        if yaw.abs() <= 1e-3 * fast || yaw == 0.0 {
            return None;
        }
        Some((-self.left_m_s / yaw, self.forward_m_s / yaw))
    }
}

impl Patch {
    /// Sliding velocity over the ground, forward and to the left \[m/s\].
    #[must_use]
    pub fn slide_m_s(&self, motion: &Motion) -> (f64, f64) {
        let (sin, cos) = (math::sin(self.steer_rad), math::cos(self.steer_rad));
        let along = motion.forward_m_s - motion.yaw_rad_s * self.left_m;
        let across = motion.left_m_s + motion.yaw_rad_s * self.ahead_m;
        match self.tread_m_s {
            Some(tread) => (along - tread * cos, across - tread * sin),
            None => {
                let sideways = across * cos - along * sin;
                (-sideways * sin, sideways * cos)
            }
        }
    }

    /// Rows of v_s = A·(u, v, r) + b, one for each direction in which the patch may slide.
    fn rows(&self) -> ([[f64; 3]; 2], [f64; 2]) {
        let (sin, cos) = (math::sin(self.steer_rad), math::cos(self.steer_rad));
        match self.tread_m_s {
            Some(tread) => (
                [[1.0, 0.0, -self.left_m], [0.0, 1.0, self.ahead_m]],
                [-tread * cos, -tread * sin],
            ),
            None => (
                [
                    [-sin, cos, sin * self.left_m + cos * self.ahead_m],
                    [0.0; 3],
                ],
                [0.0; 2],
            ),
        }
    }
}

/// Widths over which a force changes sides, of the fastest tread: from blunt to sharp.
const WIDTHS: [f64; 10] = [1.0, 0.3, 0.1, 0.03, 0.01, 1e-3, 1e-4, 1e-5, 1e-6, 1e-8];

/// Slopes of the power lost to sliding, and the slopes of those.
type Slopes = ([f64; 3], [[f64; 3]; 3]);

fn slopes(patches: &[Patch], resisting_n_m: f64, motion: &[f64; 3], width: f64) -> Slopes {
    let mut gradient = [0.0; 3];
    let mut bend = [[0.0; 3]; 3];
    for patch in patches {
        let (rows, offset) = patch.rows();
        let slide: [f64; 2] = core::array::from_fn(|at| {
            offset[at] + (0..3).map(|k| rows[at][k] * motion[k]).sum::<f64>()
        });
        let size = math::sqrt(slide[0] * slide[0] + slide[1] * slide[1] + width * width);
        let n = patch.grip_n / size;
        for i in 0..3 {
            let along_i = rows[0][i] * slide[0] + rows[1][i] * slide[1];
            gradient[i] += n * along_i;
            for j in 0..3 {
                let along_j = rows[0][j] * slide[0] + rows[1][j] * slide[1];
                let plain = rows[0][i] * rows[0][j] + rows[1][i] * rows[1][j];
                bend[i][j] += n * (plain - along_i / size * (along_j / size));
            }
        }
    }
    let size = math::hypot(motion[2], width);
    gradient[2] += resisting_n_m * motion[2] / size;
    bend[2][2] += resisting_n_m * width * width / (size * size * size);
    (gradient, bend)
}

/// Motion in which the car settles, for the tread speeds of the patches.
///
/// `resisting_n_m`: moment that resists turning besides; `mass_kg`: mass m whose turning takes force,
/// m·u·r to the left and −m·v·r forward; 0 for a turn so slow that it takes none.
#[must_use]
pub fn settled(patches: &[Patch], resisting_n_m: f64, mass_kg: f64) -> Motion {
    let fastest = patches
        .iter()
        .filter_map(|patch| patch.tread_m_s)
        .fold(0.0, |most: f64, tread| most.max(tread.abs()));
    if fastest == 0.0 {
        return Motion::default();
    }
    let mut at = [0.0; 3];
    for width in WIDTHS {
        at = sharpened(patches, resisting_n_m, 0.0, at, width * fastest);
    }
    if mass_kg > 0.0 {
        // The force that the turning takes is put on little by little.
        for part in 1..=8 {
            let mass_kg = mass_kg * f64::from(part) / 8.0;
            at = sharpened(patches, resisting_n_m, mass_kg, at, 1e-8 * fastest);
        }
    }
    Motion {
        forward_m_s: at[0],
        left_m_s: at[1],
        yaw_rad_s: at[2],
    }
}

/// Newton's steps at one width, each halved until the forces that are left over grow less.
fn sharpened(
    patches: &[Patch],
    resisting_n_m: f64,
    mass_kg: f64,
    mut at: [f64; 3],
    width: f64,
) -> [f64; 3] {
    let reach_m = patches.iter().fold(0.1, |most: f64, patch| {
        most.max(patch.ahead_m.abs()).max(patch.left_m.abs())
    });
    let scale = |rest: &[f64; 3]| {
        let turn = rest[2] / reach_m;
        rest[0] * rest[0] + rest[1] * rest[1] + turn * turn
    };
    let left_over = |at: &[f64; 3]| {
        let (mut rest, mut bend) = slopes(patches, resisting_n_m, at, width);
        let [u, v, r] = *at;
        rest[0] -= mass_kg * v * r;
        rest[1] += mass_kg * u * r;
        bend[0][1] -= mass_kg * r;
        bend[0][2] -= mass_kg * v;
        bend[1][0] += mass_kg * r;
        bend[1][2] += mass_kg * u;
        (rest, bend)
    };
    let grip_n: f64 = patches.iter().map(|patch| patch.grip_n).sum();
    let (mut rest, mut bend) = left_over(&at);
    for _ in 0..60 {
        if scale(&rest) <= 1e-30 * grip_n * grip_n {
            break;
        }
        for (k, row) in bend.iter_mut().enumerate() {
            // Where nothing opposes a motion at all, the step stays finite.
            row[k] += 1e-13 * grip_n / width * if k == 2 { reach_m * reach_m } else { 1.0 };
        }
        let Some(step) = solved(bend, rest) else {
            break;
        };
        let mut share = 1.0;
        let mut moved = false;
        for _ in 0..40 {
            let next = core::array::from_fn(|k| at[k] - share * step[k]);
            let (next_rest, next_bend) = left_over(&next);
            if scale(&next_rest) < scale(&rest) {
                (at, rest, bend) = (next, next_rest, next_bend);
                moved = true;
                break;
            }
            share *= 0.5;
        }
        if !moved {
            break;
        }
    }
    at
}

/// x of A·x = b, by elimination with the largest pivot of each column.
fn solved(mut a: [[f64; 3]; 3], mut b: [f64; 3]) -> Option<[f64; 3]> {
    for column in 0..3 {
        let mut pivot = column;
        for row in column..3 {
            if a[row][column].abs() > a[pivot][column].abs() {
                pivot = row;
            }
        }
        if a[pivot][column] == 0.0 {
            return None;
        }
        a.swap(column, pivot);
        b.swap(column, pivot);
        for row in column + 1..3 {
            let factor = a[row][column] / a[column][column];
            let above = a[column];
            for (value, over) in a[row].iter_mut().zip(above) {
                *value -= factor * over;
            }
            b[row] -= factor * b[column];
        }
    }
    for row in (0..3).rev() {
        for k in row + 1..3 {
            b[row] -= a[row][k] * b[k];
        }
        b[row] /= a[row][row];
    }
    Some(b)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::turn_in_place::steady::{AxleState, Outcome, Steady, steady};

    /// Four patches of a car whose left and right are alike, its CG at the front axle.
    fn alike(input: &Steady) -> [Patch; 4] {
        let patch = |front: bool, side: f64| {
            let axle = if front { &input.front } else { &input.rear };
            let driven = if front {
                input.front_driven
            } else {
                input.rear_driven
            };
            Patch {
                ahead_m: if front { 0.0 } else { -input.wheelbase_m },
                left_m: 0.5 * side * axle.track_m,
                grip_n: 0.5 * axle.friction * axle.load_n,
                steer_rad: 0.0,
                tread_m_s: driven.then_some(-side * axle.speed_factor),
            }
        };
        [
            patch(true, 1.0),
            patch(true, -1.0),
            patch(false, 1.0),
            patch(false, -1.0),
        ]
    }

    fn axle(load_n: f64, track_m: f64) -> AxleState {
        AxleState {
            load_n,
            track_m,
            friction: 0.7,
            speed_factor: 1.0,
        }
    }

    fn car(front_n: f64, rear_n: f64, driven: (bool, bool)) -> Steady {
        Steady {
            wheelbase_m: 2.8,
            front: axle(front_n, 1.6),
            rear: axle(rear_n, 1.5),
            front_driven: driven.0,
            rear_driven: driven.1,
        }
    }

    #[test]
    fn it_finds_the_turn_that_the_axles_give() {
        for (front_n, rear_n) in [(9000.0, 9000.0), (12_500.0, 7500.0), (6000.0, 12_000.0)] {
            let input = car(front_n, rear_n, (true, true));
            let Outcome::InPlace(turn) = steady(&input) else {
                panic!("it turns in place");
            };
            let motion = settled(&alike(&input), 0.0, 0.0);
            let (ahead_m, left_m) = motion.centre_m().unwrap();
            assert!(
                (ahead_m + turn.centre_behind_front_m).abs() < 1e-9,
                "{ahead_m}"
            );
            assert!(left_m.abs() < 1e-9, "{left_m}");
            let ratio_m = 1.0 / motion.yaw_rad_s;
            assert!(
                (ratio_m / turn.speed_ratio_m - 1.0).abs() < 1e-9,
                "{ratio_m}"
            );
        }
    }

    #[test]
    fn a_rear_pair_swings_about_the_front_axle() {
        let input = car(9000.0, 9000.0, (false, true));
        let motion = settled(&alike(&input), 0.0, 0.0);
        let (ahead_m, left_m) = motion.centre_m().unwrap();
        assert!(
            ahead_m.abs() < 1e-6 && left_m.abs() < 1e-6,
            "{ahead_m} {left_m}"
        );
    }

    #[test]
    fn less_grip_on_the_left_draws_the_centre_there_and_a_resisting_moment_slows_the_turn() {
        let input = car(9000.0, 9000.0, (true, true));
        let mut patches = alike(&input);
        let even = settled(&patches, 0.0, 0.0);
        let slower = settled(&patches, 300.0, 0.0);
        assert!(slower.yaw_rad_s < even.yaw_rad_s && slower.yaw_rad_s > 0.0);
        for patch in patches.iter_mut().filter(|patch| patch.left_m > 0.0) {
            patch.grip_n *= 0.9;
        }
        let (_, left_m) = settled(&patches, 0.0, 0.0).centre_m().unwrap();
        assert!(left_m > 0.1, "{left_m}");
    }

    #[test]
    fn the_forces_of_a_fast_turn_carry_the_car_round() {
        let mut patches = alike(&car(11_000.0, 7000.0, (true, true)));
        for patch in &mut patches {
            // The CG where the loads put it.
            patch.ahead_m += 7000.0 / 18_000.0 * 2.8;
            patch.grip_n *= if patch.left_m > 0.0 { 0.9 } else { 1.0 };
            patch.tread_m_s = patch.tread_m_s.map(|tread| 5.0 * tread);
        }
        let mass_kg = 18_000.0 / 9.81;
        let motion = settled(&patches, 0.0, mass_kg);
        let (mut along_n, mut across_n, mut moment_n_m) = (0.0, 0.0, 0.0);
        for patch in &patches {
            let (along, across) = patch.slide_m_s(&motion);
            let size = math::hypot(along, across);
            let force = (-patch.grip_n * along / size, -patch.grip_n * across / size);
            along_n += force.0;
            across_n += force.1;
            moment_n_m += patch.ahead_m * force.1 - patch.left_m * force.0;
        }
        let (u, v, r) = (motion.forward_m_s, motion.left_m_s, motion.yaw_rad_s);
        assert!((along_n + mass_kg * v * r).abs() < 1e-6, "{along_n}");
        assert!((across_n - mass_kg * u * r).abs() < 1e-6, "{across_n}");
        assert!(moment_n_m.abs() < 1e-6, "{moment_n_m}");
        let carried_n = mass_kg * r * math::hypot(u, v);
        assert!(carried_n > 100.0, "it takes force: {motion:?}");
    }
}
