//! The brush model with a parabolic pressure distribution: bristles that stick to the road until their
//! pressure no longer holds them.
//!
//! Source: H. B. Pacejka, Tire and Vehicle Dynamics, ch. 3 (from memory; sympy proves it again).

/// Share of the friction that is used, F/(μ·N), at a normalised slip θσ: 3·s·(1 − s + s²/3), all of it
/// once every bristle slides at θσ = 1.
///
/// ```
/// use axlewright_core::tyre::brush::share;
/// assert!((share(1.0) - 1.0).abs() < 1e-15 && (share(0.001) - 0.003).abs() < 1e-5);
/// ```
#[must_use]
pub fn share(normalised_slip: f64) -> f64 {
    let s = normalised_slip.abs().min(1.0);
    (3.0 * s * (1.0 - s + s * s / 3.0)).min(1.0) * normalised_slip.signum()
}

/// Aligning moment over μ·N·a, a the half length of the patch: s·(1 − s)³.
///
/// Its peak is 27/256 at s = 1/4.
#[must_use]
pub fn aligning_share(normalised_slip: f64) -> f64 {
    let s = normalised_slip.abs().min(1.0);
    let rest = 1.0 - s;
    s * rest * rest * rest * normalised_slip.signum()
}

/// Pneumatic trail over the half length of the patch; 1/3 without slip, none in full slide.
#[must_use]
pub fn trail_share(normalised_slip: f64) -> f64 {
    let s = normalised_slip.abs().min(1.0);
    let rest = 1.0 - s;
    rest * rest * rest / (3.0 - 3.0 * s + s * s)
}
