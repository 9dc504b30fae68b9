//! The closed forms of the textbooks, as fractions of g: level road, no drag, constant friction.
//!
//! Source: J. Y. Wong, Theory of Ground Vehicles, ch. 3 (from memory); T. D. Gillespie, Fundamentals
//! of Vehicle Dynamics, ch. 2 (from memory). sympy derives them again in `tests/reference/`.

/// Limit of front drive: a_x/g = μ·(b/L)/(1 + μ·h/L).
///
/// μ: peak friction; a, h, L: CG behind the front axle, CG height, wheelbase \[m\].
///
/// ```
/// let limit = axlewright_core::traction::front_drive(1.0, 1.46, 0.54, 2.86);
/// assert!((limit - 0.41).abs() < 0.005);
/// ```
#[must_use]
pub fn front_drive(friction: f64, a_m: f64, h_m: f64, wheelbase_m: f64) -> f64 {
    friction * (1.0 - a_m / wheelbase_m) / (1.0 + friction * h_m / wheelbase_m)
}

/// Limit of rear drive: a_x/g = μ·(a/L)/(1 − μ·h/L), up to the lift of the front axle at b/h.
///
/// ```
/// let limit = axlewright_core::traction::rear_drive(1.0, 1.46, 0.54, 2.86);
/// assert!((limit - 0.63).abs() < 0.005);
/// ```
#[must_use]
pub fn rear_drive(friction: f64, a_m: f64, h_m: f64, wheelbase_m: f64) -> f64 {
    let lift = (wheelbase_m - a_m) / h_m;
    let denominator = 1.0 - friction * h_m / wheelbase_m;
    if denominator <= 0.0 {
        return lift;
    }
    lift.min(friction * (a_m / wheelbase_m) / denominator)
}

/// Limit of all-wheel drive with a fixed front share p_f of the force: the axle that slips first
/// ends it. Front: a_x/g = μ·(b/L)/(p_f + μ·h/L); rear: μ·(a/L)/(1 − p_f − μ·h/L), where positive.
#[must_use]
pub fn all_wheel_fixed_split(
    friction: f64,
    front_share: f64,
    a_m: f64,
    h_m: f64,
    wheelbase_m: f64,
) -> f64 {
    let couple = friction * h_m / wheelbase_m;
    let front = friction * (1.0 - a_m / wheelbase_m) / (front_share + couple);
    let rear_denominator = 1.0 - front_share - couple;
    let lift = (wheelbase_m - a_m) / h_m;
    if rear_denominator <= 0.0 {
        return front.min(lift);
    }
    front
        .min(friction * (a_m / wheelbase_m) / rear_denominator)
        .min(lift)
}

/// Front share of the force at which both axles use the same friction: p_f = b/L − (a_x/g)·h/L.
///
/// ```
/// let at_rest = axlewright_core::traction::ideal_front_share(0.0, 1.46, 0.54, 2.86);
/// assert!((at_rest - 1.40 / 2.86).abs() < 1e-12);
/// ```
#[must_use]
pub fn ideal_front_share(acceleration_g: f64, a_m: f64, h_m: f64, wheelbase_m: f64) -> f64 {
    1.0 - a_m / wheelbase_m - acceleration_g * h_m / wheelbase_m
}

/// Adhesion utilisation of the front and rear axle in braking: f = x·z·P/(F ± P·z·h/L).
///
/// `front_share`: share of the braking force on the front axle; `deceleration_g`: z, deceleration
/// over g; `front_load_share`: static front load over weight; `h_over_wheelbase`: h/L.
///
/// Source: D. A. Crolla (ed.), Automotive Engineering, eq. 12.1.61–64 (read); UN R13-H, Annex 5, uses
/// the same form (from memory).
///
/// ```
/// use axlewright_core::traction::adhesion_utilisation_braking;
/// // With the share equal to the dynamic load share both axles use z exactly.
/// let (z, front_load, h_over_l) = (0.7, 0.55, 0.2);
/// let (f, r) = adhesion_utilisation_braking(front_load + z * h_over_l, z, front_load, h_over_l);
/// assert!((f - z).abs() < 1e-12 && (r - z).abs() < 1e-12);
/// ```
#[must_use]
pub fn adhesion_utilisation_braking(
    front_share: f64,
    deceleration_g: f64,
    front_load_share: f64,
    h_over_wheelbase: f64,
) -> (f64, f64) {
    let transfer = deceleration_g * h_over_wheelbase;
    (
        front_share * deceleration_g / (front_load_share + transfer),
        (1.0 - front_share) * deceleration_g / (1.0 - front_load_share - transfer),
    )
}

/// Adhesion utilisation of the front and rear axle in driving, the mirror image of braking.
#[must_use]
pub fn adhesion_utilisation_driving(
    front_share: f64,
    acceleration_g: f64,
    front_load_share: f64,
    h_over_wheelbase: f64,
) -> (f64, f64) {
    let (front, rear) = adhesion_utilisation_braking(
        front_share,
        -acceleration_g,
        front_load_share,
        h_over_wheelbase,
    );
    (-front, -rear)
}
