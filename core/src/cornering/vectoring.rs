//! The same yaw moment three ways: by the motors of one axle against each other, by braking one wheel,
//! and by brakes in front with motors behind.
//!
//! Motors: ±ΔF at the two wheels, M_z = ΔF·t, no net force. Brakes: F_b at one wheel, M_z = F_b·t/2, and
//! all of F_b holds the car back. Arms are those of straight wheels.

use super::Question;
use super::trim::{Trim, Turn, trim};

/// A way to make a yaw moment.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// Two motors on one axle.
    Motors,
    /// The brake of one wheel.
    Brakes,
    /// The brake of a front wheel and two motors behind.
    Mixed,
}

/// What it takes.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Help {
    /// Force of each motor's wheel, forward right and rearward left \[N\].
    pub motor_force_n: f64,
    /// Axle of the motors: 0 front, 1 rear.
    pub motor_axle: usize,
    /// Force of the braked wheel, rearward \[N\].
    pub brake_force_n: f64,
    /// Axle of the braked wheel.
    pub brake_axle: usize,
    /// Power from the battery that holds the speed \[W\].
    pub power_w: f64,
    /// Heat in the brake \[W\].
    pub brake_heat_w: f64,
    /// Deceleration if nothing holds the speed \[m/s²\].
    pub deceleration_m_s2: f64,
}

/// What a way takes, on paper. `None` where the axle has no track to turn the car with.
#[must_use]
pub fn help(question: &Question, way: Way) -> Option<Help> {
    let tracks_m = question.car.tracks_m;
    let (motors_n_m, motor_axle, brakes_n_m, brake_axle) = match way {
        Way::Motors => (question.moment_n_m, question.axle, 0.0, question.axle),
        Way::Brakes => (0.0, question.axle, question.moment_n_m, question.axle),
        Way::Mixed => {
            let brakes = question.front_share * question.moment_n_m;
            (question.moment_n_m - brakes, 1, brakes, 0)
        }
    };
    if tracks_m.iter().any(|track| *track <= 0.0) {
        return None;
    }
    // ΔF = M_z/t, F_b = 2·M_z/t
    let motor_force_n = motors_n_m / tracks_m[motor_axle];
    let brake_force_n = 2.0 * brakes_n_m / tracks_m[brake_axle];
    let (speed, efficiency) = (question.speed_m_s, question.drive_efficiency);
    Some(Help {
        motor_force_n,
        motor_axle,
        brake_force_n,
        brake_axle,
        // One motor drives, the other gives back; what the brake takes must be driven too.
        // P = ΔF·V·(1/η − η) + F_b·V/η
        power_w: motor_force_n * speed * (1.0 / efficiency - efficiency)
            + brake_force_n * speed / efficiency,
        brake_heat_w: brake_force_n * speed,
        deceleration_m_s2: brake_force_n / question.car.chassis.mass_kg(),
    })
}

impl Help {
    /// The turn with this help.
    #[must_use]
    pub fn turn(&self, question: &Question, turn: &Turn) -> Turn {
        let mut with = *turn;
        let radius_m = question.car.radius_m;
        let motors = 2 * self.motor_axle;
        with.extra_n_m[motors] -= self.motor_force_n * radius_m;
        with.extra_n_m[motors + 1] += self.motor_force_n * radius_m;
        with.brakes_n_m[2 * self.brake_axle] += self.brake_force_n * radius_m;
        with
    }

    /// The steady turn with this help, from the one without it; `None` where the tyres cannot do it.
    #[must_use]
    pub fn trim(&self, question: &Question, plain: &Trim) -> Option<Trim> {
        let mut found = *plain;
        // In a few parts: each begins near the last.
        for part in 1..=4 {
            let share = 0.25 * f64::from(part);
            let some = Self {
                motor_force_n: share * self.motor_force_n,
                brake_force_n: share * self.brake_force_n,
                ..*self
            };
            found = trim(question, &some.turn(question, &plain.turn), Some(&found))?;
        }
        Some(found)
    }
}
