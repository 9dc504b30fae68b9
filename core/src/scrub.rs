//! Moments that resist a contact patch being turned: parking scrub, jacking, drilling, and the
//! turning resistance of a tracked vehicle, which a car turning in place resembles.

use crate::math;
use core::f64::consts::PI;

/// Arm of the parking scrub moment, √(d² + (a/3)²) \[m\].
///
/// `offset_m`: distance d of the patch centre from the steering axis at the ground; `patch_m`: length
/// a of the patch.
/// Source: A. J. Barton and J. D. Fieldhouse, Automotive Chassis Engineering, example 2.1 (read).
///
/// ```
/// let arm_m = axlewright_core::scrub::parking_scrub_arm_m(0.025, 0.25);
/// assert!((arm_m - 0.087).abs() < 0.0005);
/// ```
#[must_use]
pub fn parking_scrub_arm_m(offset_m: f64, patch_m: f64) -> f64 {
    math::hypot(offset_m, patch_m / 3.0)
}

/// Parking scrub moment of one wheel, M = μ·W·√(d² + (a/3)²) \[N·m\]. Source as
/// [`parking_scrub_arm_m`].
#[must_use]
pub fn parking_scrub_moment_n_m(friction: f64, load_n: f64, offset_m: f64, patch_m: f64) -> f64 {
    friction * load_n * parking_scrub_arm_m(offset_m, patch_m)
}

/// Moment that lifts the car on its inclined steering axis, M = W·d·sin λ·cos λ·sin α \[N·m\].
///
/// `inclination_rad`: λ, inclination of the steering axis; `steer_rad`: α, steer angle.
/// Source: Barton and Fieldhouse, Automotive Chassis Engineering (read).
#[must_use]
pub fn jacking_moment_n_m(load_n: f64, offset_m: f64, inclination_rad: f64, steer_rad: f64) -> f64 {
    load_n
        * offset_m
        * math::sin(inclination_rad)
        * math::cos(inclination_rad)
        * math::sin(steer_rad)
}

/// Moment that turns a standing wheel about its patch, M = (μ·W/3)·√(W/p) \[N·m\].
///
/// `pressure_pa`: inflation pressure p. Source: formula after Gough (from memory). It falls as the
/// wheel rolls (Tire Science and Technology, 10.2346/tire.23.21017, read), so it is an upper bound
/// while the wheels are driven.
///
/// ```
/// let moment = axlewright_core::scrub::gough_moment_n_m(0.7, 4000.0, 220e3);
/// assert!((moment - 125.85).abs() < 0.01);
/// ```
#[must_use]
pub fn gough_moment_n_m(friction: f64, load_n: f64, pressure_pa: f64) -> f64 {
    friction * load_n / 3.0 * math::sqrt(load_n / pressure_pa)
}

/// Factor c of the drilling moment M = c·μ·W·√(W/p) of a round patch with uniform pressure:
/// 2/(3·√π).
#[must_use]
pub fn round_patch_factor() -> f64 {
    2.0 / (3.0 * math::sqrt(PI))
}

/// Factor c of the drilling moment M = c·μ·W·√(W/p) of a square patch with uniform pressure: the mean
/// distance of a unit square from its centre, (√2 + ln(1 + √2))/6.
#[must_use]
pub fn square_patch_factor() -> f64 {
    let root = math::sqrt(2.0);
    (root + libm::log(1.0 + root)) / 6.0
}

/// Turning resistance of a tracked vehicle with uniform ground pressure, M_r = μ_t·W·l/4 \[N·m\].
///
/// `length_m`: length l of track on the ground. Source: J. Y. Wong, Theory of Ground Vehicles, ch. 6
/// (from memory).
#[must_use]
pub fn tracked_turning_moment_n_m(friction: f64, weight_n: f64, length_m: f64) -> f64 {
    friction * weight_n * length_m / 4.0
}

/// Forces of the outer and the inner track in a slow steady turn \[N\]: f_r·W/2 ± M_r/B.
///
/// `tread_m`: distance B between the track centres. Source as [`tracked_turning_moment_n_m`].
#[must_use]
pub fn tracked_turning_forces_n(
    rolling_resistance: f64,
    weight_n: f64,
    moment_n_m: f64,
    tread_m: f64,
) -> (f64, f64) {
    let straight_n = 0.5 * rolling_resistance * weight_n;
    (
        straight_n + moment_n_m / tread_m,
        straight_n - moment_n_m / tread_m,
    )
}

/// Moment that resists turning when all four patches scrub straight sideways, μ·(N_f·x_f + N_r·x_r)
/// \[N·m\], with x the distances of the axles from the turning centre.
///
/// For a CG midway between equal axles it is μ·W·L/2, twice a tracked vehicle's of the same length
/// (derived).
#[must_use]
pub fn lateral_scrub_moment_n_m(friction: f64, front: (f64, f64), rear: (f64, f64)) -> f64 {
    friction * (front.0 * front.1.abs() + rear.0 * rear.1.abs())
}

/// Moment that resists the turning of a patch which slides far more than it turns \[N·m\].
///
/// The patch is a rectangle with uniform pressure; per radian of turning it slides by a along its length
/// l and by b across it, s = √(a² + b²) in all. To the first order in its size over s friction leaves
/// M = μ·N/(12·s)·((l·a/s)² + (w·b/s)²). `patch_m`: l and w; `slide_m`: a and b. Derived.
///
/// ```
/// use axlewright_core::scrub::{gough_moment_n_m, sliding_patch_moment_n_m};
/// let sliding = sliding_patch_moment_n_m(0.7, 4000.0, (0.08, 0.23), (2.6, 1.4));
/// assert!(sliding < 0.1 * gough_moment_n_m(0.7, 4000.0, 220e3));
/// ```
#[must_use]
pub fn sliding_patch_moment_n_m(
    friction: f64,
    load_n: f64,
    patch_m: (f64, f64),
    slide_m: (f64, f64),
) -> f64 {
    let slide = math::hypot(slide_m.0, slide_m.1);
    let (along, across) = (patch_m.0 * slide_m.0 / slide, patch_m.1 * slide_m.1 / slide);
    friction * load_n / (12.0 * slide) * (along * along + across * across)
}
