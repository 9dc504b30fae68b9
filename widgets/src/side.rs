//! The side view of a car in steady acceleration, which several topics show.

use crate::figure::{AxleForces, Drag, ForceScale, SideView, ValueLabel, arrows_fit};
use crate::visual::{Look, Voice, body, scale_step};
use axlewright_core::Scenario;
use axlewright_core::load_transfer::AxleLoads;
use axlewright_core::units::Dimension as D;
use axlewright_core::vehicle::{AirForces, Chassis, Slope};

/// What acts on the car.
pub(crate) struct SideState<'a> {
    pub(crate) scenario: &'a Scenario,
    pub(crate) chassis: &'a Chassis,
    pub(crate) air: &'a AirForces,
    pub(crate) slope: Slope,
    pub(crate) acceleration_m_s2: f64,
    pub(crate) loads: AxleLoads,
    /// Tractive force of the front and of the rear axle \[N\]; braking is negative.
    pub(crate) forces_n: (f64, f64),
}

impl SideState<'_> {
    /// The inertial force m·a \[N\].
    pub(crate) fn inertia_n(&self) -> f64 {
        self.chassis.mass_kg() * self.acceleration_m_s2
    }

    /// The view with all that acts; title, subtitle and description are the topic's own.
    pub(crate) fn view(&self, look: &Look) -> SideView {
        let voice = Voice::of(look);
        let (chassis, air) = (self.chassis, self.air);
        let (weight_n, inertia_n) = (chassis.weight_n(), self.inertia_n());
        let total_n = self.loads.front_n + self.loads.rear_n;
        let axle = |load_n: f64, force_n: f64, key: &str| AxleForces {
            load_n,
            load_label: ValueLabel {
                value: voice.force(load_n),
                words: voice.fill(key, &[&voice.percent(load_n / total_n)]),
            },
            tractive_n: force_n,
            tractive_label: match force_n {
                0.0 => ValueLabel::default(),
                _ if force_n < 0.0 => named_force(voice, -force_n, "figure.braking"),
                _ => named_force(voice, force_n, "figure.tractive"),
            },
        };
        let metres = |value: f64| voice.quantity(value, D::Length, 3);
        let mut view = SideView {
            width: look.width,
            body: body(self.scenario),
            wheelbase_m: chassis.wheelbase_m(),
            wheel_radius_m: wheel_radius(self.scenario, chassis.wheelbase_m()),
            cg_behind_front_m: chassis.cg_to_front_axle_m(),
            cg_height_m: chassis.cg_height_m(),
            front: axle(self.loads.front_n, self.forces_n.0, "figure.front_load"),
            rear: axle(self.loads.rear_n, self.forces_n.1, "figure.rear_load"),
            inertia_n,
            inertia_label: ValueLabel {
                value: voice.word("figure.inertia"),
                words: voice.force(inertia_n.abs()),
            },
            drag: (air.drag_n > 0.0).then(|| Drag {
                force_n: air.drag_n,
                height_m: air.drag_height_m,
                label: named_force(voice, air.drag_n, "figure.drag"),
            }),
            grade_rad: self.slope.angle_rad,
            grade_label: grade_label(voice, self.scenario),
            weight_n,
            weight_label: named_force(voice, weight_n, "figure.weight"),
            pitch_exaggeration: 1.0,
            wheelbase_label: voice.fill("figure.wheelbase", &[&metres(chassis.wheelbase_m())]),
            cg_height_label: voice.fill("figure.cg_height", &[&metres(chassis.cg_height_m())]),
            cg_inputs: Some(["vehicle.cg_to_front_axle", "vehicle.cg_height"]),
            ..SideView::default()
        };
        // The scale is that of the axle loads, and coarser only where another force would leave the
        // page.
        let mut largest_n = 0.85 * weight_n;
        for _ in 0..12 {
            largest_n = scale_step(1.001 * largest_n);
            view.scale = ForceScale::fit(largest_n, look.width);
            if arrows_fit(&view) {
                break;
            }
        }
        view.scale_bar = voice.scale_bar(&view.scale);
        view
    }
}

fn named_force(voice: Voice, force_n: f64, key: &str) -> ValueLabel {
    ValueLabel {
        value: voice.force(force_n),
        words: voice.word(key),
    }
}

fn grade_label(voice: Voice, scenario: &Scenario) -> String {
    let grade = scenario.number("surface.grade").unwrap_or(0.0);
    if grade == 0.0 {
        return String::new();
    }
    voice.fill("figure.grade", &[&voice.quantity(grade, D::Slope, 2)])
}

/// Wheel radius of a scenario, or one in proportion to the wheelbase where none is given.
pub(crate) fn wheel_radius(scenario: &Scenario, wheelbase_m: f64) -> f64 {
    scenario
        .number("vehicle.wheel_radius")
        .unwrap_or(0.115 * wheelbase_m)
}
