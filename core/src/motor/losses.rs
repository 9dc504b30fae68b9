//! What a motor loses, by its kind: with torque, without, and with its field weakened.

/// Kind of machine, as far as its losses differ.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Machine {
    /// Permanent magnets: the flux is there whether torque is asked for or not.
    PermanentMagnet,
    /// Induction: without current there is no flux, and no loss in the iron.
    Induction,
}

impl Machine {
    /// The words of the input, in the order of [`Machine`].
    pub const NAMES: &'static [&'static str] = &["permanent_magnet", "induction"];

    /// The machine of a word; permanent magnets for any other.
    #[must_use]
    pub fn from_name(name: &str) -> Self {
        if name == "induction" {
            Self::Induction
        } else {
            Self::PermanentMagnet
        }
    }
}

/// Loss coefficients of a motor with its inverter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Losses {
    /// Kind of machine.
    pub machine: Machine,
    /// Base speed ω_b \[rad/s\], above which the field is weakened.
    pub base_rad_s: f64,
    /// Copper, k_c \[W/(N·m)²\], at full flux.
    pub copper: f64,
    /// Copper loss of the field current \[W\]: of an induction machine, of the current that makes the
    /// full flux; of a permanent-magnet machine, of the current that would cancel it.
    pub field_w: f64,
    /// Hysteresis, k_h \[W·s/rad\] at full flux.
    pub hysteresis: f64,
    /// Eddy currents, k_e \[W·s²/rad²\] at full flux.
    pub eddy: f64,
    /// Bearings, k_b \[W·s/rad\].
    pub bearing: f64,
    /// Windage, k_w \[W·s³/rad³\].
    pub windage: f64,
}

/// The losses at one speed. With a torque T they are `run_w` + `copper`·T².
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LossesAt {
    /// Loss that does not depend on the torque, while the motor makes some \[W\].
    pub run_w: f64,
    /// Loss while it makes none and turns along \[W\].
    pub idle_w: f64,
    /// Copper, \[W/(N·m)²\].
    pub copper: f64,
}

impl Losses {
    /// Flux as a share of the full one: B = min(1, ω_b/ω).
    #[must_use]
    pub fn flux(&self, speed_rad_s: f64) -> f64 {
        (self.base_rad_s / speed_rad_s.abs()).min(1.0)
    }

    /// Iron loss at full flux, k_h·ω + k_e·ω² \[W\].
    #[must_use]
    pub fn iron_w(&self, speed_rad_s: f64) -> f64 {
        let speed = speed_rad_s.abs();
        (self.hysteresis + self.eddy * speed) * speed
    }

    /// Bearings and windage, k_b·ω + k_w·ω³ \[W\].
    #[must_use]
    pub fn drag_w(&self, speed_rad_s: f64) -> f64 {
        let speed = speed_rad_s.abs();
        (self.bearing + self.windage * speed * speed) * speed
    }

    /// The losses at a speed.
    ///
    /// A permanent-magnet machine keeps its flux when it makes no torque, and above its base speed it
    /// needs a current against the magnets: (k_h·ω + k_e·ω²)·B² + P_f·(1 − B)² + k_b·ω + k_w·ω³, with
    /// and without torque. An induction machine has flux only while it makes torque; then its field
    /// current costs P_f·B², and where the flux is weak the same torque takes more current: k_c·(T/B)².
    #[must_use]
    pub fn at(&self, speed_rad_s: f64) -> LossesAt {
        let flux = self.flux(speed_rad_s);
        let drag_w = self.drag_w(speed_rad_s);
        let squared = flux * flux;
        match self.machine {
            Machine::PermanentMagnet => {
                let weaker = 1.0 - flux;
                let run_w = self.iron_w(speed_rad_s) * squared + self.field_w * weaker * weaker;
                LossesAt {
                    run_w: run_w + drag_w,
                    idle_w: run_w + drag_w,
                    copper: self.copper,
                }
            }
            Machine::Induction => LossesAt {
                run_w: (self.iron_w(speed_rad_s) + self.field_w) * squared + drag_w,
                idle_w: drag_w,
                copper: self.copper / squared,
            },
        }
    }

    /// Loss at a torque and a speed \[W\].
    ///
    /// ```
    /// use axlewright_core::motor::{Losses, Machine};
    /// let magnets = Losses { machine: Machine::PermanentMagnet, base_rad_s: 600.0, copper: 0.05,
    ///     field_w: 200.0, hysteresis: 0.5, eddy: 5e-4, bearing: 0.1, windage: 1e-8 };
    /// let induction = Losses { machine: Machine::Induction, ..magnets };
    /// assert!(magnets.loss_w(0.0, 500.0) > 5.0 * induction.loss_w(0.0, 500.0));
    /// ```
    #[must_use]
    pub fn loss_w(&self, torque_n_m: f64, speed_rad_s: f64) -> f64 {
        let at = self.at(speed_rad_s);
        if torque_n_m == 0.0 {
            at.idle_w
        } else {
            at.run_w + at.copper * torque_n_m * torque_n_m
        }
    }
}
