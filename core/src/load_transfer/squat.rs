//! How far the body squats. The springs have no part in the axle loads; they set only this.

use super::AxleLoads;
use crate::math;
use crate::scenario::Scenario;
use crate::vehicle::Chassis;

/// Springs, dampers and link geometry, as far as squat is concerned.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Suspension {
    /// Ride frequency of the front axle's share of the body, f_1 \[Hz\].
    pub ride_frequency_front_hz: f64,
    /// Ride frequency of the rear axle's share of the body, f_2 \[Hz\].
    pub ride_frequency_rear_hz: f64,
    /// Share of the front load change that the links carry, 0 to 1.
    pub anti_lift_front: f64,
    /// Share of the rear load change that the links carry, 0 to 1.
    pub anti_squat_rear: f64,
    /// Damping ratio ζ of both ends, between 0 and 1.
    pub damping_ratio: f64,
}

/// How the body stands on its springs in steady state, against its height at rest on the level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Squat {
    /// Rise of the body over the front axle \[m\], upward positive.
    pub rise_front_m: f64,
    /// Drop of the body over the rear axle \[m\], downward positive.
    pub drop_rear_m: f64,
    /// Pitch angle \[rad\], nose down positive (ISO 8855: about the y axis, which points left).
    pub pitch_rad: f64,
    /// Heave of the CG \[m\], upward positive.
    pub heave_m: f64,
}

impl Suspension {
    /// Reads the springs of a scenario; none unless both ride frequencies are given.
    #[must_use]
    pub fn from_scenario(scenario: &Scenario) -> Option<Self> {
        let number = |path| scenario.number(path);
        Some(Self {
            ride_frequency_front_hz: number("vehicle.ride_frequency_front")?,
            ride_frequency_rear_hz: number("vehicle.ride_frequency_rear")?,
            anti_lift_front: number("vehicle.anti_lift_front").unwrap_or(0.0),
            anti_squat_rear: number("vehicle.anti_squat_rear").unwrap_or(0.0),
            damping_ratio: number("vehicle.damping_ratio").unwrap_or(0.3),
        })
    }
}

/// Body attitude in steady state.
///
/// Each axle's share of the body stands on its own spring of stiffness k = (2π·f)²·m_axle, with the
/// pitch inertia m·a·b that makes the two ends independent (common practice, no source).
#[must_use]
pub fn steady_squat(
    chassis: &Chassis,
    springs: &Suspension,
    static_loads: &AxleLoads,
    loads: &AxleLoads,
) -> Squat {
    let (a, b, wheelbase_m) = (
        chassis.cg_to_front_axle_m(),
        chassis.cg_to_rear_axle_m(),
        chassis.wheelbase_m(),
    );
    let stiffness = |frequency_hz: f64, load_n: f64| {
        let omega_rad_s = core::f64::consts::TAU * frequency_hz;
        omega_rad_s * omega_rad_s * load_n / crate::GRAVITY_M_S2
    };
    let front_n_m = stiffness(springs.ride_frequency_front_hz, static_loads.front_n);
    let rear_n_m = stiffness(springs.ride_frequency_rear_hz, static_loads.rear_n);
    let rise_front_m =
        (1.0 - springs.anti_lift_front) * (static_loads.front_n - loads.front_n) / front_n_m;
    let drop_rear_m =
        (1.0 - springs.anti_squat_rear) * (loads.rear_n - static_loads.rear_n) / rear_n_m;
    Squat {
        rise_front_m,
        drop_rear_m,
        pitch_rad: -math::atan((rise_front_m + drop_rear_m) / wheelbase_m),
        heave_m: (rise_front_m * b - drop_rear_m * a) / wheelbase_m,
    }
}

/// Body attitude a time t \[s\] after a step in acceleration from rest.
///
/// With pitch inertia m·a·b each end is an oscillator of its own, so its path is the damped step
/// response x(t) = x_s·(1 − e^(−ζωt)·(cos ω_d t + ζ/√(1−ζ²)·sin ω_d t)).
#[must_use]
pub fn squat_after_step(
    chassis: &Chassis,
    springs: &Suspension,
    steady: &Squat,
    time_s: f64,
) -> Squat {
    let wheelbase_m = chassis.wheelbase_m();
    let front = steady.rise_front_m
        * step_response(
            springs.ride_frequency_front_hz,
            springs.damping_ratio,
            time_s,
        );
    let rear = steady.drop_rear_m
        * step_response(
            springs.ride_frequency_rear_hz,
            springs.damping_ratio,
            time_s,
        );
    Squat {
        rise_front_m: front,
        drop_rear_m: rear,
        pitch_rad: -math::atan((front + rear) / wheelbase_m),
        heave_m: (front * chassis.cg_to_rear_axle_m() - rear * chassis.cg_to_front_axle_m())
            / wheelbase_m,
    }
}

fn step_response(frequency_hz: f64, damping_ratio: f64, time_s: f64) -> f64 {
    if time_s <= 0.0 {
        return 0.0;
    }
    let omega = core::f64::consts::TAU * frequency_hz;
    let root = math::sqrt(1.0 - damping_ratio * damping_ratio);
    let damped = omega * root;
    1.0 - math::exp(-damping_ratio * omega * time_s)
        * (math::cos(damped * time_s) + damping_ratio / root * math::sin(damped * time_s))
}
