//! A rear pair with the front wheels steered to full lock: does it then turn in place?
//!
//! The front wheels roll freely and are steered so that their axes meet on the line of the rear axle, at
//! L/tan δ from its middle. Around that point the front tyres slide nowhere, so a car whose rear wheels
//! are driven apart settles there, unless its rear tyres grip enough to drag the front ones along.

use super::Question;
use super::patches::settled;
use crate::layout::{AxleDrive, Layout};
use crate::math;

/// Where the car turns with its front wheels at full lock.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FullLock {
    /// Distance of the turning centre behind the front axle \[m\].
    pub centre_behind_front_m: f64,
    /// Its distance to the left of the car's middle \[m\].
    pub centre_to_left_m: f64,
    /// Radius of the circle that the middle of the front axle goes round \[m\].
    pub sweep_radius_m: f64,
    /// Whether the centre lies between the four wheels.
    pub in_place: bool,
}

/// Where a layout with a rear pair alone turns with its front wheels at full lock to the left; none for
/// other layouts, without a steer angle, and where the car does not turn.
#[must_use]
pub fn full_lock(question: &Question, layout: Layout) -> Option<FullLock> {
    let angle_rad = question.max_steer_rad.filter(|angle| *angle > 0.0)?;
    let pair =
        layout.rear() == AxleDrive::MotorPerWheel && layout.front() != AxleDrive::MotorPerWheel;
    if !pair {
        return None;
    }
    let wheelbase_m = question.chassis.wheelbase_m();
    let out_m = wheelbase_m / math::tan(angle_rad);
    let mut patches = question.patches([false, true], 1.0);
    for patch in &mut patches[..2] {
        // tan δ_i = L/(L/tan δ − y_i); the sign holds also for a wheel beyond the centre.
        let across_m = out_m - patch.left_m;
        patch.steer_rad = math::atan(wheelbase_m / across_m);
    }
    let (ahead_m, left_m) = settled(&patches, 0.0, 0.0).centre_m()?;
    let behind_m = question.chassis.cg_to_front_axle_m() - ahead_m;
    let half_m = 0.5 * question.front.track_m.max(question.rear.track_m);
    Some(FullLock {
        centre_behind_front_m: behind_m,
        centre_to_left_m: left_m,
        sweep_radius_m: math::hypot(behind_m, left_m),
        in_place: (0.0..=wheelbase_m).contains(&behind_m) && left_m.abs() <= half_m,
    })
}
