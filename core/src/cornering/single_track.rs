//! The single track: both wheels of an axle as one, tyre forces in proportion to slip angles, small
//! angles. It holds at low lateral acceleration and gives the closed forms.
//!
//! Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 6 (from memory).

use super::Question;
use crate::{GRAVITY_M_S2, math};

/// A single track, and the turn that it is asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SingleTrack {
    /// Wheelbase L \[m\].
    pub wheelbase_m: f64,
    /// Distance b of the CG ahead of the rear axle \[m\].
    pub cg_to_rear_m: f64,
    /// Axle loads \[N\].
    pub loads_n: [f64; 2],
    /// Cornering stiffness of each axle, two tyres \[N/rad\].
    pub axles_n_rad: [f64; 2],
    /// Speed V \[m/s\].
    pub speed_m_s: f64,
    /// Radius R \[m\].
    pub radius_m: f64,
}

impl SingleTrack {
    /// The single track of a question.
    #[must_use]
    pub fn of(question: &Question) -> Self {
        let chassis = &question.car.chassis;
        let front_n = chassis.weight_n() * chassis.cg_to_rear_axle_m() / chassis.wheelbase_m();
        Self {
            wheelbase_m: chassis.wheelbase_m(),
            cg_to_rear_m: chassis.cg_to_rear_axle_m(),
            loads_n: [front_n, chassis.weight_n() - front_n],
            axles_n_rad: question.stiffness_n_rad.map(|one| 2.0 * one),
            speed_m_s: question.speed_m_s,
            radius_m: question.radius_m,
        }
    }

    /// Ackermann angle L/R \[rad\]: what the wheels must be steered by at walking pace.
    #[must_use]
    pub fn ackermann_rad(&self) -> f64 {
        self.wheelbase_m / self.radius_m
    }

    /// Lateral acceleration V²/R \[m/s²\].
    #[must_use]
    pub fn lateral_m_s2(&self) -> f64 {
        self.speed_m_s * self.speed_m_s / self.radius_m
    }

    /// Understeer gradient K = (W_f/C_f − W_r/C_r)/g \[rad·s²/m\], C of an axle.
    #[must_use]
    pub fn gradient(&self) -> f64 {
        let [front, rear] = [0, 1].map(|axle| self.loads_n[axle] / self.axles_n_rad[axle]);
        (front - rear) / GRAVITY_M_S2
    }

    /// Steer angle δ = L/R + K·a_y \[rad\].
    #[must_use]
    pub fn steer_rad(&self) -> f64 {
        self.ackermann_rad() + self.gradient() * self.lateral_m_s2()
    }

    /// Sideslip angle at the CG, β = b/R − W_r·a_y/(g·C_r) \[rad\].
    #[must_use]
    pub fn sideslip_rad(&self) -> f64 {
        let rear_slip =
            self.loads_n[1] * self.lateral_m_s2() / (GRAVITY_M_S2 * self.axles_n_rad[1]);
        self.cg_to_rear_m / self.radius_m - rear_slip
    }

    /// Speed at which the steer angle is twice the Ackermann angle, √(L/K) \[m/s\]; none unless the car
    /// understeers.
    #[must_use]
    pub fn characteristic_m_s(&self) -> Option<f64> {
        let gradient = self.gradient();
        (gradient > 0.0).then(|| math::sqrt(self.wheelbase_m / gradient))
    }

    /// Speed above which the car does not hold its course, √(−L/K) \[m/s\]; none unless it oversteers.
    #[must_use]
    pub fn critical_m_s(&self) -> Option<f64> {
        let gradient = self.gradient();
        (gradient < 0.0).then(|| math::sqrt(-self.wheelbase_m / gradient))
    }

    /// Lateral acceleration for each steer angle, V²/(L + K·V²) \[m/(s²·rad)\]; none at the critical speed
    /// and above.
    #[must_use]
    pub fn acceleration_gain(&self) -> Option<f64> {
        let square = self.speed_m_s * self.speed_m_s;
        let below = self.wheelbase_m + self.gradient() * square;
        (below > 0.0).then(|| square / below)
    }

    /// Yaw rate for each steer angle, V/(L + K·V²) \[1/s\].
    #[must_use]
    pub fn yaw_gain(&self) -> Option<f64> {
        self.acceleration_gain().map(|gain| gain / self.speed_m_s)
    }
}
