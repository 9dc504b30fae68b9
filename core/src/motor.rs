//! The motor: what torque it has at a speed, and what it loses.

mod losses;

pub use losses::{Losses, LossesAt, Machine};

use crate::error::Problem;
use crate::scenario::Scenario;

/// Torque–speed envelope: constant torque up to the base speed, constant power above it, and where
/// given a decline above a second corner speed and an end at the highest speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Envelope {
    /// Peak torque T_max \[N·m\].
    pub torque_n_m: f64,
    /// Peak power P_max \[W\]; infinite where none is given.
    pub power_w: f64,
    /// Second corner speed ω_2 \[rad/s\], above which the power falls as 1/ω; infinite where none.
    pub decline_rad_s: f64,
    /// Highest speed \[rad/s\]; infinite where none is given.
    pub max_rad_s: f64,
}

/// Share of the highest speed over which the torque goes down to nothing.
const LAST: f64 = 0.02;

/// What ends a motor's torque at a speed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EndOf {
    /// Its peak torque.
    Torque,
    /// Its power: field weakening.
    Power,
    /// Its highest speed.
    Speed,
}

impl Envelope {
    /// Reads the motor of a scenario; what is not given does not limit.
    ///
    /// # Errors
    /// [`Problem::Missing`] without a peak torque.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let or_none = |path| scenario.number(path).unwrap_or(f64::INFINITY);
        Ok(Self {
            torque_n_m: scenario.require("vehicle.motor_torque")?,
            power_w: or_none("vehicle.motor_power"),
            decline_rad_s: or_none("vehicle.motor_decline_speed"),
            max_rad_s: or_none("vehicle.motor_max_speed"),
        })
    }

    /// Base speed ω_b = P_max/T_max \[rad/s\].
    #[must_use]
    pub fn base_speed_rad_s(&self) -> f64 {
        self.power_w / self.torque_n_m
    }

    /// Torque that the motor has at a speed \[N·m\], and what ends it:
    /// T(ω) = min(T_max, P_max/ω), times ω_2/ω above ω_2.
    ///
    /// Over the last 2 % below its highest speed the torque goes down in a straight line, as a
    /// controller does it; a cliff would throw the car against it.
    ///
    /// ```
    /// use axlewright_core::motor::Envelope;
    /// let motor = Envelope { torque_n_m: 300.0, power_w: 150e3, decline_rad_s: 1000.0, max_rad_s: 1500.0 };
    /// assert!((motor.torque(0.0).0 - 300.0).abs() < 1e-12);
    /// assert!((motor.torque(750.0).0 - 200.0).abs() < 1e-12);
    /// assert!((motor.torque(1250.0).0 - 96.0).abs() < 1e-12);
    /// assert!(motor.torque(1500.0).0.abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn torque(&self, speed_rad_s: f64) -> (f64, EndOf) {
        let speed = speed_rad_s.abs();
        let mut power_w = self.power_w;
        if speed > self.decline_rad_s {
            power_w *= self.decline_rad_s / speed;
        }
        let (torque, end) = if self.torque_n_m * speed <= power_w {
            (self.torque_n_m, EndOf::Torque)
        } else {
            (power_w / speed, EndOf::Power)
        };
        let left = (self.max_rad_s - speed) / (LAST * self.max_rad_s);
        if left < 1.0 {
            return (torque * left.max(0.0), EndOf::Speed);
        }
        (torque, end)
    }
}

/// Tractive force of a torque at a motor's shaft, F = T·i·η/R \[N\].
///
/// `ratio`: i; `efficiency`: η of the gears; `radius_m`: R.
///
/// ```
/// let force_n = axlewright_core::motor::tractive_force_n(325.0, 4.28, 0.85, 0.33);
/// assert!((force_n - 3583.0).abs() < 1.0);
/// ```
#[must_use]
pub fn tractive_force_n(torque_n_m: f64, ratio: f64, efficiency: f64, radius_m: f64) -> f64 {
    torque_n_m * ratio * efficiency / radius_m
}

/// Speed of the car at a speed of a motor's shaft, V = ω·R/i·(1 − σ) \[m/s\], with slip σ.
#[must_use]
pub fn road_speed_m_s(speed_rad_s: f64, ratio: f64, radius_m: f64, slip: f64) -> f64 {
    speed_rad_s * radius_m / ratio * (1.0 - slip)
}

/// Mass factor 1 + ΣI·i²/(m·r²): how much heavier the car seems to its motors because parts turn
/// faster than the wheels.
///
/// `parts`: moment of inertia \[kg·m²\] and ratio to the wheels of each; `radius_m`: wheel radius.
///
/// ```
/// let factor = axlewright_core::motor::mass_factor(1850.0, 0.335, &[(4.4, 1.0), (0.05, 9.2)]);
/// assert!((factor - 1.0416).abs() < 1e-3);
/// ```
#[must_use]
pub fn mass_factor(mass_kg: f64, radius_m: f64, parts: &[(f64, f64)]) -> f64 {
    let turning: f64 = parts
        .iter()
        .map(|(inertia, ratio)| inertia * ratio * ratio)
        .sum();
    1.0 + turning / (mass_kg * radius_m * radius_m)
}
