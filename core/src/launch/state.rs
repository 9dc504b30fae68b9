//! The numbers of the state, and what is told of an instant.

use crate::vehicle::AirForces;

/// Places in the state. The first ten set the step; the others are integrals along the way.
pub(super) const DISTANCE: usize = 0;
pub(super) const SPEED: usize = 1;
/// Tread speed R·ω and slip, front, then rear.
pub(super) const TREAD: [usize; 2] = [2, 4];
pub(super) const SLIP: [usize; 2] = [3, 5];
/// Rise over the front axle, drop over the rear one, each followed by its rate.
pub(super) const SPRING: [usize; 2] = [6, 8];
pub(super) const DRAG_WORK: usize = 10;
pub(super) const ROLLING_WORK: usize = 11;
/// Heat that slip leaves in tyres and road, front, then rear.
pub(super) const SLIP_HEAT: [usize; 2] = [12, 13];
/// Work of the motors at their shafts.
pub(super) const MOTOR_WORK: usize = 14;
/// Impulse of the tractive forces, and of all that holds the car back.
pub(super) const PUSH: usize = 15;
pub(super) const HOLD: usize = 16;
/// Numbers in use, and those of them that set the step.
pub(super) const COUNT: usize = 17;
pub(super) const WATCHED: usize = 10;

/// What keeps an axle from pushing harder.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AxleLimit {
    /// No motor drives it.
    Undriven,
    /// The grip of its tyres.
    Grip,
    /// The front axle would lift.
    FrontLift,
    /// The motors' peak torque.
    Torque,
    /// The motors' power.
    Power,
    /// The motors' highest speed.
    MotorSpeed,
    /// The battery's power.
    Battery,
}

impl AxleLimit {
    /// Word in answers and in the keys of the catalogue.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Undriven => "undriven",
            Self::Grip => "grip",
            Self::FrontLift => "front_lift",
            Self::Torque => "motor_torque",
            Self::Power => "motor_power",
            Self::MotorSpeed => "motor_speed",
            Self::Battery => "battery",
        }
    }

    /// Key of its name in the catalogue.
    #[must_use]
    pub fn key(self) -> &'static str {
        match self {
            Self::Undriven => "figure.launch.by_nothing",
            Self::Grip => "figure.launch.by_grip",
            Self::FrontLift => "figure.launch.by_front_lift",
            Self::Torque => "figure.launch.by_torque",
            Self::Power => "figure.launch.by_power",
            Self::MotorSpeed => "figure.launch.by_motor_speed",
            Self::Battery => "figure.launch.by_battery",
        }
    }

    /// Whether tyres and load limit, not the machines.
    #[must_use]
    pub fn is_of_ground(self) -> bool {
        matches!(self, Self::Grip | Self::FrontLift)
    }
}

/// The car at one instant. Pairs are front, then rear.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Instant {
    /// Acceleration \[m/s²\].
    pub acceleration_m_s2: f64,
    /// Axle loads \[N\].
    pub loads_n: [f64; 2],
    /// Tractive forces \[N\]; an undriven axle's wheels must be spun up, which holds back a little.
    pub forces_n: [f64; 2],
    /// What limits each axle.
    pub limits: [AxleLimit; 2],
    /// Power of all motors at their shafts \[W\].
    pub motor_w: f64,
    /// Forces of the air.
    pub air: AirForces,
    /// Rolling resistance \[N\].
    pub rolling_n: f64,
}

/// How the body stands on its springs.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Attitude {
    /// Rise over the front axle \[m\].
    pub rise_front_m: f64,
    /// Drop over the rear axle \[m\].
    pub drop_rear_m: f64,
}
