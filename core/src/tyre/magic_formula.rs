//! The Magic Formula with the coefficients that were published with it, for pure slip.
//!
//! Source: E. Bakker, L. Nyborg and H. B. Pacejka, Tyre modelling for use in vehicle dynamics studies,
//! SAE paper 870421, 1987 (coefficients quoted; many quotations agree). Loads are in kN, slip angles in
//! degrees and longitudinal slip in per cent, as the paper has them. The longitudinal set was measured
//! in braking; using it for driving is an assumption.

use crate::math;

/// Which force of the tyre.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Force {
    /// Longitudinal force F_x \[N\] against slip \[%\].
    Longitudinal,
    /// Lateral force F_y \[N\] against slip angle \[°\].
    Lateral,
    /// Aligning moment M_z \[N·m\] against slip angle \[°\].
    Aligning,
}

/// a1 to a8 and C of the 1987 table.
struct Set {
    a: [f64; 8],
    shape: f64,
}

#[rustfmt::skip] // The table as it was printed.
const LATERAL: Set = Set { a: [-22.1, 1011.0, 1078.0, 1.82, 0.208, 0.0, -0.354, 0.707], shape: 1.30 };
#[rustfmt::skip]
const ALIGNING: Set = Set { a: [-2.72, -2.28, -1.86, -2.73, 0.110, -0.070, 0.643, -4.04], shape: 2.40 };
#[rustfmt::skip]
const LONGITUDINAL: Set = Set { a: [-21.3, 1144.0, 49.6, 226.0, 0.069, -0.006, 0.056, 0.486], shape: 1.65 };

/// The factors of the formula at one load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factors {
    /// Stiffness factor B.
    pub b: f64,
    /// Shape factor C.
    pub c: f64,
    /// Peak value D.
    pub d: f64,
    /// Curvature factor E.
    pub e: f64,
}

/// The factors of a force at a wheel load \[kN\].
///
/// D = a1·F_z² + a2·F_z; E = a6·F_z² + a7·F_z + a8; B·C·D = a3·sin(a4·atan(a5·F_z)) for the lateral
/// force and (a3·F_z² + a4·F_z)/e^(a5·F_z) for the other two.
#[must_use]
pub fn factors(force: Force, load_kn: f64) -> Factors {
    let Set { a, shape } = match force {
        Force::Longitudinal => LONGITUDINAL,
        Force::Lateral => LATERAL,
        Force::Aligning => ALIGNING,
    };
    let d = (a[0] * load_kn + a[1]) * load_kn;
    let bcd = match force {
        Force::Lateral => a[2] * math::sin(a[3] * math::atan(a[4] * load_kn)),
        _ => (a[2] * load_kn + a[3]) * load_kn / math::exp(a[4] * load_kn),
    };
    Factors {
        b: bcd / (shape * d),
        c: shape,
        d,
        e: (a[5] * load_kn + a[6]) * load_kn + a[7],
    }
}

impl Factors {
    /// y = D·sin(C·atan(B·x − E·(B·x − atan(B·x)))).
    ///
    /// ```
    /// use axlewright_core::tyre::magic_formula::{Force, factors};
    /// let at_4_kn = factors(Force::Longitudinal, 4.0);
    /// assert!((at_4_kn.at(10.348) - 4235.2).abs() < 0.01);
    /// ```
    #[must_use]
    pub fn at(&self, slip: f64) -> f64 {
        let x = self.b * slip;
        self.d * math::sin(self.c * math::atan(x - self.e * (x - math::atan(x))))
    }

    /// Slope at no slip, B·C·D \[N/% or N/°\].
    #[must_use]
    pub fn slope(&self) -> f64 {
        self.b * self.c * self.d
    }

    /// The positive slip at which the size of the force is largest, up to a bound.
    ///
    /// A scan, then a search by thirds around the best: the curve has one peak.
    #[must_use]
    pub fn peak_slip(&self, bound: f64) -> f64 {
        let size = |slip: f64| self.at(slip).abs();
        let mut best = 0.0;
        for step in 1..=400 {
            let slip = bound * f64::from(step) / 400.0;
            if size(slip) > size(best) {
                best = slip;
            }
        }
        let (mut low, mut high) = ((best - bound / 400.0).max(0.0), best + bound / 400.0);
        for _ in 0..100 {
            let (a, b) = (low + (high - low) / 3.0, high - (high - low) / 3.0);
            if size(a) < size(b) {
                low = a;
            } else {
                high = b;
            }
        }
        0.5 * (low + high)
    }
}
