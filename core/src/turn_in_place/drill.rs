//! The contact patch has a size: it also resists being twisted on its spot, which is called drilling.
//!
//! The moment of a wheel that is twisted while it stands is a bound. Once the patch slides far more than
//! it twists, friction points almost the same way all over it, and little of that moment is left.

use super::{AxleState, Turn};
use crate::{math, scrub};

/// The contact patches of one axle and their drilling moments.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drilling {
    /// Length of a patch, l = N/(2·p·w) \[m\].
    pub patch_length_m: f64,
    /// Width of a patch, that of the tyre, w \[m\].
    pub patch_width_m: f64,
    /// Moment of both patches while the car turns \[N·m\].
    pub moment_n_m: f64,
    /// Moment of both patches if they were only twisted, an upper bound \[N·m\].
    pub bound_n_m: f64,
    /// Whether the patch slides farther than it is long or wide; else the moment is the bound.
    pub slides_far: bool,
}

/// Drilling of one axle in a turn.
///
/// `width_m`: tyre width; `pressure_pa`: tyre pressure; `along_m` and `ahead_m`: sliding of a patch per
/// radian of yaw, along the car and across it.
#[must_use]
pub fn drilling(
    axle: &AxleState,
    width_m: f64,
    pressure_pa: f64,
    (along_m, ahead_m): (f64, f64),
) -> Drilling {
    let wheel_n = 0.5 * axle.load_n;
    let patch_length_m = wheel_n / (pressure_pa * width_m);
    let bound_n_m = 2.0 * scrub::gough_moment_n_m(axle.friction, wheel_n, pressure_pa);
    // Of a patch that slides less than it is long, no more than the bound is known.
    let slides_far = math::hypot(along_m, ahead_m) > patch_length_m.max(width_m);
    let sliding = |patch_m| {
        let slide_m = (along_m, ahead_m);
        2.0 * scrub::sliding_patch_moment_n_m(axle.friction, wheel_n, patch_m, slide_m)
    };
    Drilling {
        patch_length_m,
        patch_width_m: width_m,
        moment_n_m: if slides_far {
            sliding((patch_length_m, width_m))
        } else {
            bound_n_m
        },
        bound_n_m,
        slides_far,
    }
}

/// Sliding of the patches of both axles per radian, along the car and across it, front and rear \[m\].
#[must_use]
pub fn slides_m(
    turn: &Turn,
    (front, rear): (&AxleState, &AxleState),
    wheelbase_m: f64,
) -> [(f64, f64); 2] {
    let along = |axle: &AxleState| axle.speed_factor * turn.speed_ratio_m - 0.5 * axle.track_m;
    [
        (along(front), turn.centre_behind_front_m),
        (along(rear), wheelbase_m - turn.centre_behind_front_m),
    ]
}
