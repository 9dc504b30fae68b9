//! The slow turn where the friction differs left and right.
//!
//! The side that grips more pushes the car along until the other side slides so much faster that the two
//! balance: the turning centre moves towards the side that grips less, and the CG goes round it. Where
//! the friction of one side is little more than half that of the other, the car no longer turns at all.
//! It drives off straight, its better side rolling.

use super::Question;
use super::patches::settled;
use crate::error::{Allowed, Problem};
use crate::math;

/// A slow turn with its own friction under each wheel. Wheels: front left, front right, rear left, rear
/// right.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SplitTurn {
    /// Distance of the turning centre behind the front axle \[m\].
    pub centre_behind_front_m: f64,
    /// Its distance to the left of the car's middle \[m\].
    pub centre_to_left_m: f64,
    /// Common wheel speed over yaw rate, κ = R·ω/r \[m\].
    pub speed_ratio_m: f64,
    /// Sliding speed of each patch per unit of yaw rate, along the car, across it, and in all \[m\].
    pub slides_m: [[f64; 3]; 4],
    /// Friction of each patch, μN \[N\].
    pub grips_n: [f64; 4],
    /// Force of each wheel along the car, forward positive, and to the left \[N\].
    pub forces_n: [(f64, f64); 4],
    /// Whether the centre lies between the four wheels.
    pub in_place: bool,
}

impl SplitTurn {
    /// Power lost to sliding per unit of yaw rate, Σ μN·s \[N·m\].
    #[must_use]
    pub fn sliding_n_m(&self) -> f64 {
        (0..4)
            .map(|at| self.grips_n[at] * self.slides_m[at][2])
            .sum()
    }
}

/// Why a car does not turn on these two frictions.
fn drives_off(question: &Question) -> Problem {
    if let Err(problem) = question.four_wheel_turn() {
        return problem;
    }
    let [left, right] = question.sides;
    let (field, value) = if left < right {
        ("surface.friction_sliding_left", left)
    } else {
        ("surface.friction_sliding_right", right)
    };
    Problem::NoAnswer {
        field,
        value: crate::format::plain(value),
        why: "why.sides_too_different",
        allowed: Allowed::Sentence("allowed.nearer_other_side"),
    }
}

/// The slow turn with all four wheels driven and friction of its own on each side.
///
/// # Errors
/// [`Problem::NoAnswer`] when the wheels cannot make the car turn.
pub fn split_turn(question: &Question) -> Result<SplitTurn, Problem> {
    let patches = question.patches([true, true], 1.0);
    let motion = settled(&patches, 0.0, 0.0);
    let centre = motion.centre_m().filter(|_| motion.yaw_rad_s > 0.0);
    let (ahead_m, left_m) = centre.ok_or_else(|| drives_off(question))?;
    let ratio_m = 1.0 / motion.yaw_rad_s;
    let chassis = &question.chassis;
    let behind_m = chassis.cg_to_front_axle_m() - ahead_m;
    let mut turn = SplitTurn {
        centre_behind_front_m: behind_m,
        centre_to_left_m: left_m,
        speed_ratio_m: ratio_m,
        slides_m: [[0.0; 3]; 4],
        grips_n: patches.map(|patch| patch.grip_n),
        forces_n: [(0.0, 0.0); 4],
        in_place: (0.0..=chassis.wheelbase_m()).contains(&behind_m)
            && left_m.abs() <= 0.5 * question.front.track_m.max(question.rear.track_m),
    };
    for (at, patch) in patches.iter().enumerate() {
        // Against the left wheels the ground runs forward: both sides slide with κ_i − t/2 ± y.
        let axle = if at < 2 {
            &question.front
        } else {
            &question.rear
        };
        let toward_m = if at.is_multiple_of(2) {
            left_m
        } else {
            -left_m
        };
        let along_m = axle.speed_factor * ratio_m - 0.5 * axle.track_m + toward_m;
        let across_m = if at < 2 {
            behind_m
        } else {
            behind_m - chassis.wheelbase_m()
        };
        let slide_m = math::hypot(along_m, across_m);
        turn.slides_m[at] = [along_m, across_m, slide_m];
        let share = patch.grip_n / slide_m.max(1e-12);
        let push_n = share * along_m;
        turn.forces_n[at] = (
            if at.is_multiple_of(2) {
                -push_n
            } else {
                push_n
            },
            -share * across_m,
        );
    }
    Ok(turn)
}
