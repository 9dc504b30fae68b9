//! Forces: their kinds, and the scale at which they are drawn.

use super::number::{nice_step, within};
use super::palette::Role;

/// A force that the scale bar shows, and its label.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ScaleBar {
    /// Force that the bar is long.
    pub force_n: f64,
    /// "5 000 N".
    pub label: String,
}

/// How forces become lengths. Fixed for all states that are to be compared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ForceScale {
    /// Newtons that one scene unit stands for.
    pub newtons_per_unit: f64,
    /// Space is kept for a force this large, so that the figure keeps its
    /// height while a slider moves.
    pub largest_n: f64,
}

impl Default for ForceScale {
    fn default() -> Self {
        ForceScale::fit(10_000.0, super::WIDE)
    }
}

impl ForceScale {
    /// A scale for axle loads: `largest_n` is drawn as long as a side view of
    /// this width has room for.
    pub fn fit(largest_n: f64, width: f64) -> ForceScale {
        ForceScale::fit_to(largest_n, within(width * 0.19, 84.0, 190.0))
    }

    /// A scale for the forces of single wheels: `largest_n` fits beside the
    /// car in a plan view of this width.
    pub fn fit_plan(largest_n: f64, width: f64) -> ForceScale {
        ForceScale::fit_to(largest_n, within(width * 0.065, 40.0, 64.0))
    }

    fn fit_to(largest_n: f64, longest: f64) -> ForceScale {
        let largest_n = if largest_n.is_finite() {
            largest_n.abs().max(1.0)
        } else {
            1.0
        };
        let rough = largest_n / longest;
        // A scale with few digits reads well in a caption.
        let step = nice_step(rough, 50);
        ForceScale {
            newtons_per_unit: (rough / step).ceil() * step,
            largest_n,
        }
    }

    /// A round force whose bar is 30 to 80 units long.
    pub fn bar_n(&self) -> f64 {
        nice_step(self.newtons_per_unit * 32.0, 1)
    }

    /// Length of a force.
    pub fn units(&self, force_n: f64) -> f64 {
        if force_n.is_finite() && self.newtons_per_unit > 0.0 {
            force_n / self.newtons_per_unit
        } else {
            0.0
        }
    }
}

/// What a force is; decides colour and line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ForceKind {
    /// Load on the front axle.
    FrontLoad,
    /// Load on the rear axle.
    RearLoad,
    /// Tractive or braking force, or the force of the ground on one wheel.
    Tractive,
    /// Inertial force m·a.
    Inertia,
    /// Weight.
    Weight,
    /// Drag of the air.
    Drag,
}

impl ForceKind {
    /// Its colour.
    pub fn role(self) -> Role {
        match self {
            ForceKind::FrontLoad => Role::Front,
            ForceKind::RearLoad => Role::Rear,
            ForceKind::Tractive => Role::Tractive,
            ForceKind::Inertia => Role::Inertia,
            ForceKind::Weight => Role::Ink,
            ForceKind::Drag => Role::Soft,
        }
    }

    /// Whether its shaft is dashed: forces that are no contact are.
    pub fn dashed(self) -> bool {
        matches!(self, ForceKind::Inertia | ForceKind::Drag)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_scale_keeps_the_largest_force_in_its_room() {
        for largest in [800.0, 11_320.0, 18_149.0, 40_000.0] {
            for width in [340.0, 1000.0] {
                let scale = ForceScale::fit(largest, width);
                let length = scale.units(largest);
                assert!(length <= 190.0 && length > 60.0, "{length}");
                let bar = scale.units(scale.bar_n());
                assert!((30.0..=81.0).contains(&bar), "{bar}");
            }
        }
    }
}
