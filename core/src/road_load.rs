//! What a vehicle must overcome on a straight road: drag, rolling resistance, grade; and the
//! elementary kinematics of a steady acceleration.

use crate::math;

/// Aerodynamic drag D = ½·ρ·C_d·A·V² \[N\].
///
/// ```
/// let drag_n = axlewright_core::road_load::drag_n(1.225, 0.56, 30.0);
/// assert!((drag_n - 308.7).abs() < 0.1);
/// ```
#[must_use]
pub fn drag_n(density_kg_m3: f64, drag_area_m2: f64, speed_m_s: f64) -> f64 {
    0.5 * density_kg_m3 * drag_area_m2 * speed_m_s * speed_m_s
}

/// Rolling-resistance coefficient that grows with speed, f_r = 0.01·(1 + V/147), V in ft/s \[1\].
///
/// Source: Mannering and Washburn, Principles of Highway Engineering and Traffic Analysis, ch. 2
/// (read).
///
/// ```
/// let f_r = axlewright_core::road_load::highway_rolling_resistance(0.0);
/// assert!((f_r - 0.01).abs() < 1e-12);
/// ```
#[must_use]
pub fn highway_rolling_resistance(speed_m_s: f64) -> f64 {
    0.01 * (1.0 + speed_m_s / 0.3048 / 147.0)
}

/// Rolling-resistance coefficient by tyre pressure p \[bar\] and speed \[m/s\]:
/// c = 0.005 + (1/p)·(0.01 + 0.0095·(v/100)²), v in km/h.
///
/// Source: handbook formula (read).
///
/// ```
/// let c = axlewright_core::road_load::pressure_rolling_resistance(2.4, 100.0 / 3.6);
/// assert!((c - 0.013125).abs() < 1e-9);
/// ```
#[must_use]
pub fn pressure_rolling_resistance(pressure_bar: f64, speed_m_s: f64) -> f64 {
    let hundreds = speed_m_s * 3.6 / 100.0;
    0.005 + (0.01 + 0.0095 * hundreds * hundreds) / pressure_bar
}

/// Time t = V/a to reach a speed from rest at a steady acceleration \[s\].
#[must_use]
pub fn time_to_speed_s(speed_m_s: f64, acceleration_m_s2: f64) -> f64 {
    speed_m_s / acceleration_m_s2
}

/// Speed V = √(2·a·s) after a distance from rest at a steady acceleration \[m/s\].
#[must_use]
pub fn speed_after_distance_m_s(acceleration_m_s2: f64, distance_m: f64) -> f64 {
    math::sqrt(2.0 * acceleration_m_s2 * distance_m)
}
