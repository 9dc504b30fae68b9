//! An axle as a place where tyres push: friction left and right, load sensitivity, differential,
//! solid axle.

use crate::error::Problem;
use crate::layout::AxleDrive;
use crate::root;
use crate::scenario::Scenario;
use crate::surface::{Friction, load_factor};
use crate::vehicle::Chassis;

/// How one motor's torque reaches the two wheels of its axle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Differential {
    /// Both wheels get the same torque: the axle pushes twice what the weaker side can.
    Open,
    /// Both wheels turn at the same speed: the axle pushes what both sides can.
    Locked,
    /// Open, with a brake that holds the spinning wheel: as locked, for the price of heat.
    OpenWithBrakes,
}

/// Whether the axle's motor torque reacts on the axle itself.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum AxleType {
    /// Final drive fixed to the body: its torque moves no load from side to side.
    Independent,
    /// Solid driven axle: the driveshaft torque T_d = F·R/i_0 moves load from one wheel to the other.
    Solid {
        /// Load moved from wheel to wheel per newton of tractive force \[1\]: R/(i_0·t)·(share of
        /// the other axle in the roll stiffness).
        shift_per_force: f64,
    },
}

/// One axle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Axle {
    /// Peak friction left and right.
    pub friction: Friction,
    /// Load sensitivity k \[1\]: μ(N) = μ_0·(1 − k·(N − N_0)/N_0).
    pub load_sensitivity: f64,
    /// Reference load of one wheel, N_0 \[N\].
    pub reference_load_n: f64,
    /// Differential, where one motor drives the axle.
    pub differential: Differential,
    /// Independent or solid.
    pub axle_type: AxleType,
}

impl Axle {
    /// Reads the front or the rear axle of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] when a solid axle lacks its final drive ratio, track or wheel radius.
    pub fn from_scenario(
        scenario: &Scenario,
        chassis: &Chassis,
        friction: Friction,
        front: bool,
    ) -> Result<Self, Problem> {
        let (differential, axle_type, track) = if front {
            (
                "traction.front_differential",
                "traction.front_axle_type",
                "vehicle.track_front",
            )
        } else {
            (
                "traction.rear_differential",
                "traction.rear_axle_type",
                "vehicle.track_rear",
            )
        };
        let axle_type = if scenario.word(axle_type) == Some("solid") {
            let front_roll = scenario
                .number("vehicle.roll_stiffness_front_share")
                .unwrap_or(0.5);
            // The body carries the driveshaft torque into both axles by their roll stiffness; what
            // goes to the other axle is missing here.
            let others_roll = if front { 1.0 - front_roll } else { front_roll };
            let radius_m = scenario.require("vehicle.wheel_radius")?;
            let ratio = scenario.require("vehicle.final_drive_ratio")?;
            let track_m = scenario.require(track)?;
            AxleType::Solid {
                shift_per_force: radius_m / (ratio * track_m) * others_roll,
            }
        } else {
            AxleType::Independent
        };
        Ok(Self {
            friction,
            load_sensitivity: scenario
                .number("vehicle.tyre_load_sensitivity")
                .unwrap_or(0.0),
            reference_load_n: scenario
                .number("vehicle.tyre_reference_load")
                .unwrap_or(0.25 * chassis.weight_n()),
            differential: match scenario.word(differential) {
                Some("locked") => Differential::Locked,
                Some("open_with_brakes") => Differential::OpenWithBrakes,
                _ => Differential::Open,
            },
            axle_type,
        })
    }

    /// Whether friction is one constant for the whole axle.
    #[must_use]
    pub fn is_plain(&self) -> bool {
        self.load_sensitivity == 0.0
            && self.friction.peak_left.to_bits() == self.friction.peak_right.to_bits()
            && self.axle_type == AxleType::Independent
    }

    /// Coefficient of friction of a wheel that carries N \[N\]: μ_0 times [`load_factor`].
    #[must_use]
    pub fn friction_at(&self, peak: f64, load_n: f64) -> f64 {
        peak * load_factor(self.load_sensitivity, load_n, self.reference_load_n)
    }

    /// Most that the axle can push when it carries a load \[N\]; 0 when it is not driven.
    ///
    /// An open differential passes twice the smaller side; any other arrangement passes the sum.
    #[must_use]
    pub fn capacity_n(&self, drive: AxleDrive, load_n: f64) -> f64 {
        let open = match drive {
            AxleDrive::Undriven => return 0.0,
            AxleDrive::OneMotor => self.differential == Differential::Open,
            AxleDrive::MotorPerWheel => false,
        };
        let at_shift = |shift_n: f64| {
            // A wheel in the air has no load left to give.
            let shift_n = shift_n.min(0.5 * load_n);
            let left_n = (0.5 * load_n + shift_n).max(0.0);
            let right_n = (0.5 * load_n - shift_n).max(0.0);
            let left_n = left_n * self.friction_at(self.friction.peak_left, left_n);
            let right_n = right_n * self.friction_at(self.friction.peak_right, right_n);
            if open {
                2.0 * left_n.min(right_n)
            } else {
                left_n + right_n
            }
        };
        match self.axle_type {
            // Motors at the wheels have no driveshaft: nothing shifts.
            AxleType::Solid { shift_per_force } if drive == AxleDrive::OneMotor => {
                // F = capacity at the shift that F itself makes.
                let most_n = 4.0
                    * load_n
                    * self.friction.peak_left.max(self.friction.peak_right)
                    * (1.0 + self.load_sensitivity)
                    + 1.0;
                root::last_not_negative(0.0, most_n, |force_n| {
                    at_shift(shift_per_force * force_n) - force_n
                })
            }
            _ => at_shift(0.0),
        }
    }
}
