//! The parts of a drive layout, and what they cost.

use crate::layout::{AxleDrive, Layout};

/// Inputs of the unit costs, in the order of [`Parts::counts`].
pub const COSTS: [&str; 6] = [
    "choice.motor_cost",
    "choice.inverter_cost",
    "choice.gear_set_cost",
    "choice.half_shaft_cost",
    "choice.differential_cost",
    "choice.disconnect_cost",
];

/// How many of each part a layout has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Parts {
    /// Motors.
    pub motors: u8,
    /// Inverters: one for each motor.
    pub inverters: u8,
    /// Gear sets: one for each motor.
    pub gear_sets: u8,
    /// Half shafts: two for each driven axle.
    pub half_shafts: u8,
    /// Differentials: one where a motor drives two wheels.
    pub differentials: u8,
    /// Disconnects: one for each motor of an axle that has them.
    pub disconnects: u8,
}

impl Parts {
    /// The parts of a layout; `disconnect` says which axles have one, front and rear.
    ///
    /// ```
    /// use axlewright_core::{choice::Parts, layout::Layout};
    /// let parts = Parts::of(Layout::F1R2, [true, false]);
    /// assert_eq!(parts.counts(), [3, 3, 3, 4, 1, 1]);
    /// ```
    #[must_use]
    pub fn of(layout: Layout, disconnect: [bool; 2]) -> Self {
        let motors = layout.motors();
        let mut parts = Self {
            motors,
            inverters: motors,
            gear_sets: motors,
            half_shafts: 0,
            differentials: 0,
            disconnects: 0,
        };
        for (axle, cut) in [layout.front(), layout.rear()].into_iter().zip(disconnect) {
            if axle != AxleDrive::Undriven {
                parts.half_shafts += 2;
            }
            if axle == AxleDrive::OneMotor {
                parts.differentials += 1;
            }
            if cut {
                parts.disconnects += axle.motors();
            }
        }
        parts
    }

    /// Counts, in the order of [`COSTS`].
    #[must_use]
    pub fn counts(&self) -> [u8; 6] {
        [
            self.motors,
            self.inverters,
            self.gear_sets,
            self.half_shafts,
            self.differentials,
            self.disconnects,
        ]
    }

    /// Count of all parts.
    #[must_use]
    pub fn total(&self) -> u8 {
        self.counts().iter().sum()
    }

    /// Cost: Σn·c, in the unit of the costs.
    #[must_use]
    pub fn cost(&self, costs: &[f64; 6]) -> f64 {
        let each = self.counts().into_iter().zip(costs);
        each.map(|(count, cost)| f64::from(count) * cost).sum()
    }
}
