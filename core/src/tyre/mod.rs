//! The tyre: how much it grips at a load, how it builds up force with slip, and how fast.
//!
//! Grip is Coulomb friction with load sensitivity ([`crate::surface::load_factor`]). Where a tyre has a
//! peak slip, [`SlipCurve`] says which part of the grip it uses at a slip. [`magic_formula`] holds a
//! published set of coefficients, [`brush`] the analytic model that both can be checked against.

pub mod brush;
pub mod magic_formula;

use crate::math;
use crate::root;
use crate::surface::load_factor;
use core::f64::consts::FRAC_PI_2;

/// Grip of the two like wheels of an axle, μ_0·N·(1 − k·(N/2 − N_0)/N_0) \[N\], and its rate with load.
///
/// `friction`: μ_0; `load_n`: load of the axle N \[N\]; `sensitivity`: k; `reference_n`: load of one
/// wheel N_0 \[N\]. An axle in the air has none.
///
/// ```
/// let (grip_n, per_n) = axlewright_core::tyre::axle_grip(0.9, 8000.0, 0.0, 4000.0);
/// assert!((grip_n - 7200.0).abs() < 1e-9 && (per_n - 0.9).abs() < 1e-12);
/// ```
#[must_use]
#[inline(always)]
pub fn axle_grip(friction: f64, load_n: f64, sensitivity: f64, reference_n: f64) -> (f64, f64) {
    if load_n <= 0.0 {
        return (0.0, friction * load_factor(sensitivity, 0.0, reference_n));
    }
    let factor = load_factor(sensitivity, 0.5 * load_n, reference_n);
    // d(μ·N)/dN; where the factor has reached its floor it no longer falls.
    let falls = if factor > 0.1 {
        sensitivity * 0.5 * load_n / reference_n
    } else {
        0.0
    };
    (friction * load_n * factor, friction * (factor - falls))
}

/// The share of its peak friction that a tyre uses at a slip: y(σ) = sin(C·atan(B·σ)).
///
/// The normalised Magic Formula with E = 0. σ = (R·ω − V)/(R·ω) is the slip in driving: 0 for a wheel
/// that rolls, 1 for one that spins on the spot. y is 1 at the peak slip, and at σ = 1 it is the sliding
/// over the peak friction.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SlipCurve {
    stiffness: f64,
    shape: f64,
    peak_slip: f64,
}

impl SlipCurve {
    /// The curve of a peak slip and of sliding over peak friction.
    ///
    /// The ratio is kept below 0.98, where the curve would have a corner, and above the lowest that this
    /// form can have, 2·σ_p/(1 + σ_p²).
    ///
    /// ```
    /// let curve = axlewright_core::tyre::SlipCurve::new(0.1, 0.88);
    /// assert!((curve.share(0.1) - 1.0).abs() < 1e-12);
    /// assert!((curve.share(1.0) - 0.88).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn new(peak_slip: f64, sliding_over_peak: f64) -> Self {
        // B from C: the peak is where C·atan(B·σ_p) = π/2.
        let of_shape = |shape: f64| Self {
            stiffness: math::tan(FRAC_PI_2 / shape) / peak_slip,
            shape,
            peak_slip,
        };
        let wanted = sliding_over_peak.min(0.98);
        if of_shape(2.0).share(1.0) >= wanted {
            return of_shape(2.0);
        }
        // The larger C, the lower the share at full slip.
        of_shape(root::last_not_negative(1.001, 2.0, |shape| {
            of_shape(shape).share(1.0) - wanted
        }))
    }

    /// The curve of a tyre that is taken to have one friction, sliding or not: it rises as in the brush
    /// model, y = 1 − (1 − σ/σ_p)³, and beyond its peak slip it stays 1.
    ///
    /// ```
    /// let curve = axlewright_core::tyre::SlipCurve::flat(0.1);
    /// assert!((curve.share(0.1) - 1.0).abs() < 1e-12 && (curve.share(0.9) - 1.0).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn flat(peak_slip: f64) -> Self {
        Self {
            stiffness: 3.0 / peak_slip,
            shape: 0.0,
            peak_slip,
        }
    }

    /// Share of the peak friction at a slip, y(σ).
    #[must_use]
    pub fn share(&self, slip: f64) -> f64 {
        if self.shape == 0.0 {
            return brush::share(slip / self.peak_slip);
        }
        math::sin(self.shape * math::atan(self.stiffness * slip))
    }

    /// Slip at which the friction is largest, σ_p.
    #[must_use]
    pub fn peak_slip(&self) -> f64 {
        self.peak_slip
    }

    /// The slip below the peak at which a share is used: y⁻¹.
    #[must_use]
    pub fn slip_of(&self, share: f64) -> f64 {
        if share >= 1.0 {
            return self.peak_slip;
        }
        if self.shape == 0.0 {
            return self.peak_slip * (1.0 - math::power(1.0 - share, 1.0 / 3.0));
        }
        // y = sin(C·atan(B·σ)), so σ = tan(arcsin(y)/C)/B; arcsin(y) = atan(y/√(1 − y²)).
        let angle = math::atan(share / math::sqrt(1.0 - share * share));
        math::tan(angle / self.shape) / self.stiffness
    }

    /// Slope at no slip, dy/dσ = B·C.
    #[must_use]
    pub fn slope(&self) -> f64 {
        if self.shape == 0.0 {
            return self.stiffness;
        }
        self.stiffness * self.shape
    }
}

/// Longitudinal and lateral share of the friction in combined slip, by similarity: both slips are
/// measured in their peak slips, and the force points against the combined slip.
///
/// `curve`: of pure slip, alike both ways; `x` and `y`: σ_x and σ_y, each over its peak slip.
///
/// ```
/// use axlewright_core::tyre::{SlipCurve, combined};
/// let curve = SlipCurve::new(0.1, 0.9);
/// let [x, y] = combined(&curve, 0.6, 0.8);
/// assert!((x * x + y * y - 1.0).abs() < 1e-12, "at the peak all the friction is used");
/// ```
#[must_use]
#[inline]
pub fn combined(curve: &SlipCurve, x: f64, y: f64) -> [f64; 2] {
    let size = math::hypot(x, y);
    let share_per_slip = if size < 1e-9 {
        curve.slope() * curve.peak_slip
    } else {
        curve.share(size * curve.peak_slip) / size
    };
    [share_per_slip * x, share_per_slip * y]
}

/// Rate of the slip that a tyre has built up, dσ/dt \[1/s\]: λ·dσ/dt = (u − V) − |u|·σ.
///
/// `relaxation_m`: relaxation length λ \[m\]; `tread_m_s`: speed of the tread u = R·ω \[m/s\];
/// `speed_m_s`: speed V \[m/s\]; `slip`: σ. In steady rolling σ = (u − V)/u. At rest a turning wheel
/// winds its tyre up, so the form holds from the first instant on.
#[must_use]
pub fn relaxation_rate(relaxation_m: f64, tread_m_s: f64, speed_m_s: f64, slip: f64) -> f64 {
    (tread_m_s - speed_m_s - tread_m_s.abs() * slip) / relaxation_m
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_curve_has_its_peak_and_its_sliding_end() {
        for peak_slip in [0.05, 0.1, 0.2] {
            for ratio in [0.65, 0.75, 0.88, 0.97] {
                let curve = SlipCurve::new(peak_slip, ratio);
                assert!((curve.share(peak_slip) - 1.0).abs() < 1e-12);
                assert!(
                    (curve.share(1.0) - ratio).abs() < 1e-9,
                    "{peak_slip} {ratio}"
                );
                for share in [0.1, 0.5, 0.9, 0.999] {
                    let back = curve.share(curve.slip_of(share));
                    assert!((back - share).abs() < 1e-12, "{back}, want {share}");
                }
                let slope = curve.share(1e-7) / 1e-7;
                assert!((slope / curve.slope() - 1.0).abs() < 1e-6);
                assert!((curve.share(-0.03) + curve.share(0.03)).abs() < 1e-15);
            }
        }
    }

    #[test]
    fn a_flat_curve_rises_to_its_peak_and_stays() {
        let curve = SlipCurve::flat(0.08);
        for share in [0.1, 0.5, 0.999] {
            assert!((curve.share(curve.slip_of(share)) - share).abs() < 1e-12);
        }
        assert!((curve.share(1e-9) / 1e-9 / curve.slope() - 1.0).abs() < 1e-6);
        assert!((curve.share(-0.5) + 1.0).abs() < 1e-15);
    }

    /// The brush model is the check from first principles: it begins as steeply as three times the slip
    /// over the slip of full sliding, and a curve that rises to the same peak stays near it.
    #[test]
    fn the_curves_of_slip_are_near_the_brush_model() {
        for peak_slip in [0.06, 0.1, 0.15] {
            let flat = SlipCurve::flat(peak_slip);
            for s in [0.05, 0.2, 0.4, 0.6, 0.8, 1.0, 1.5] {
                let (got, want) = (flat.share(s * peak_slip), brush::share(s));
                assert!((got - want).abs() < 1e-12, "{s}: {got}, {want}");
                // The Magic Formula of road tyres has the same rise to within a seventh of the friction.
                let curve = SlipCurve::new(peak_slip, 0.85);
                let got = curve.share(s * peak_slip);
                assert!(s > 1.0 || (got - want).abs() < 0.15, "{s}: {got}, {want}");
            }
        }
        // The aligning moment is largest, 27/256, at a quarter of full sliding.
        let (mut most, mut at) = (0.0, 0.0);
        for step in 0..=1000 {
            let s = f64::from(step) * 1e-3;
            let share = brush::aligning_share(s);
            if share > most {
                (most, at) = (share, s);
            }
        }
        assert!((most - 27.0 / 256.0).abs() < 1e-12 && (at - 0.25).abs() < 1e-12);
        assert!((brush::trail_share(0.0) - 1.0 / 3.0).abs() < 1e-15);
    }

    #[test]
    fn combined_slip_points_along_itself_and_is_pure_slip_along_an_axis() {
        let curve = SlipCurve::new(0.1, 0.9);
        for (x, y) in [(0.3, 0.4), (-0.9, 1.2), (2.0, -5.0), (1e-12, 2e-12)] {
            let [along, across] = combined(&curve, x, y);
            assert!((along * y - across * x).abs() < 1e-12, "{x} {y}");
            let want = curve.share(0.1 * math::hypot(x, y));
            assert!((math::hypot(along, across) - want).abs() < 1e-12);
        }
        let [along, across] = combined(&curve, 0.7, 0.0);
        assert!((along - curve.share(0.07)).abs() < 1e-15 && across == 0.0);
    }

    #[test]
    fn a_ratio_out_of_reach_is_brought_to_the_nearest_in_reach() {
        let flat = SlipCurve::new(0.1, 1.2);
        assert!((flat.share(1.0) - 0.98).abs() < 1e-9);
        let steep = SlipCurve::new(0.1, 0.01);
        assert!((steep.share(1.0) - 0.2 / 1.01).abs() < 1e-6);
    }

    #[test]
    fn grip_grows_less_than_its_load_where_the_tyre_is_sensitive() {
        let (plain, _) = axle_grip(1.0, 10_000.0, 0.0, 4000.0);
        let (sensitive, rate) = axle_grip(1.0, 10_000.0, 0.2, 4000.0);
        assert!((plain - 10_000.0).abs() < 1e-9);
        assert!((sensitive - 9500.0).abs() < 1e-9, "{sensitive}");
        let (more, _) = axle_grip(1.0, 10_001.0, 0.2, 4000.0);
        assert!((more - sensitive - rate).abs() < 1e-3, "{rate}");
        assert_eq!(axle_grip(1.0, -5.0, 0.2, 4000.0).0.to_bits(), 0);
    }

    #[test]
    fn a_rolling_tyre_relaxes_to_its_steady_slip() {
        assert!(relaxation_rate(0.3, 20.0, 18.0, 0.1).abs() < 1e-12);
        assert!(
            relaxation_rate(0.3, 1.0, 0.0, 0.0) > 0.0,
            "it winds up at rest"
        );
    }
}
