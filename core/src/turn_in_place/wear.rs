//! What a turn costs the tyres: rubber worn off by the energy of friction, with a coefficient that is an
//! assumption.
//!
//! The coefficient is volume over friction energy. Its order is known, no more: 10⁻³ to 10⁻² mm³/J on
//! roads, more on sharp grit (K. A. Grosch 2008, from memory). The default is set so that ordinary
//! driving wears off what was measured on roads, 110 mg/km from the four tyres of a car together
//! (B. Giechaskiel et al., Sustainability 16(2) 522, 2024, read), if its tyres use a tenth of the load as
//! force on the mean of squares. That share is an assumption, so the result is one too.

use crate::GRAVITY_M_S2;
use crate::tyre::magic_formula;
use core::f64::consts::PI;

/// Worn off in ordinary driving per kilometre, all four tyres \[kg\].
pub const WORN_PER_KM_KG: f64 = 110e-6;
/// The same per kilometre and tonne of car \[kg\].
pub const WORN_PER_KM_AND_TONNE_KG: f64 = 68e-6;
/// Force of the tyres over their load in ordinary driving, root of the mean of squares \[1\].
pub const ORDINARY_USE: f64 = 0.1;
/// Density of tread rubber \[kg/m³\] (from memory).
pub const TREAD_DENSITY_KG_M3: f64 = 1150.0;
/// Least and most wear coefficient on roads, 10⁻³ and 10⁻² mm³/J \[m³/J\].
pub const RANGE_M3_J: (f64, f64) = (1e-12, 1e-11);
/// Load of a wheel for which the slip stiffness is taken \[N\].
const WHEEL_LOAD_N: f64 = 4000.0;

/// The calibration, number by number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Calibration {
    /// Mass of the mean car of the measurements \[kg\].
    pub car_kg: f64,
    /// Lateral force over load, per unit of slip: initial slope of the 1987 tyre at 4 kN \[1\].
    pub slip_stiffness: f64,
    /// Force that slip loses all along the way, m·g·s²/c \[N\].
    pub slip_drag_n: f64,
    /// The coefficient \[m³/J\].
    pub coefficient_m3_j: f64,
}

/// The wear coefficient with which ordinary driving wears off what was measured.
///
/// A tyre that uses the share s of its load slips by s/c, so it loses s²/c of its load all along the way.
///
/// ```
/// let wear = axlewright_core::turn_in_place::wear::calibrated();
/// let mm3_per_j = wear.coefficient_m3_j * 1e9;
/// assert!((1e-3..1e-2).contains(&mm3_per_j), "{mm3_per_j}");
/// ```
#[must_use]
pub fn calibrated() -> Calibration {
    let car_kg = 1000.0 * WORN_PER_KM_KG / WORN_PER_KM_AND_TONNE_KG;
    let tyre = magic_formula::factors(magic_formula::Force::Lateral, WHEEL_LOAD_N / 1000.0);
    let slip_stiffness = tyre.slope() * (180.0 / PI) / WHEEL_LOAD_N;
    let slip_drag_n = car_kg * GRAVITY_M_S2 * ORDINARY_USE * ORDINARY_USE / slip_stiffness;
    Calibration {
        car_kg,
        slip_stiffness,
        slip_drag_n,
        coefficient_m3_j: WORN_PER_KM_KG / (TREAD_DENSITY_KG_M3 * slip_drag_n * 1000.0),
    }
}

/// Mass that a friction energy wears off \[kg\].
#[must_use]
pub fn worn_kg(coefficient_m3_j: f64, energy_j: f64) -> f64 {
    TREAD_DENSITY_KG_M3 * coefficient_m3_j * energy_j
}

/// Mass that a car wears off in ordinary driving \[kg\], by the same equations: the calibration read
/// backward.
///
/// ```
/// use axlewright_core::turn_in_place::wear;
/// let tonne = wear::worn_on_the_road_kg(1000.0, 1000.0);
/// assert!((tonne / 68e-6 - 1.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn worn_on_the_road_kg(car_kg: f64, distance_m: f64) -> f64 {
    let wear = calibrated();
    let drag_n = car_kg * GRAVITY_M_S2 * ORDINARY_USE * ORDINARY_USE / wear.slip_stiffness;
    worn_kg(wear.coefficient_m3_j, drag_n * distance_m)
}
