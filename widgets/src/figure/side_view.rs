//! The side view: axle loads, tractive forces and the inertial force, to scale.

use super::number::within;
use super::outline::BodyKind;
use super::scene::{Caution, ForceScale, ScaleBar, Scene, ValueLabel, margin};
use super::side_layout::Side;

/// The forces at one axle, and their labels.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct AxleForces {
    /// Axle load, pushing up on the wheels.
    pub load_n: f64,
    /// Its label: "6 830 N", "front axle load, 38 %".
    pub load_label: ValueLabel,
    /// Tractive force: forward is positive, braking negative, 0 draws nothing.
    pub tractive_n: f64,
    /// Its label; leave both strings empty for an arrow without one.
    pub tractive_label: ValueLabel,
}

/// Aerodynamic drag, drawn rearward.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Drag {
    /// Drag force, positive rearward.
    pub force_n: f64,
    /// Height of its line of action above the ground.
    pub height_m: f64,
    /// Its label.
    pub label: ValueLabel,
}

/// Loads of a pinned state, drawn as faint outlined arrows.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct GhostLoads {
    /// Front axle load.
    pub front_n: f64,
    /// Rear axle load.
    pub rear_n: f64,
}

/// What the side view shows. Front of the car to the right.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SideView {
    /// Width of the figure in scene units: [`super::WIDE`], [`super::NARROW`], or between.
    pub width: f64,
    /// The finding, drawn as headline.
    pub title: String,
    /// One soft line below it.
    pub subtitle: String,
    /// The text description, for `<desc>`.
    pub description: String,
    /// Which of the four outlines.
    pub body: BodyKind,
    /// Wheelbase.
    pub wheelbase_m: f64,
    /// Wheel radius.
    pub wheel_radius_m: f64,
    /// Distance of the centre of gravity behind the front axle.
    pub cg_behind_front_m: f64,
    /// Height of the centre of gravity above the ground.
    pub cg_height_m: f64,
    /// Force scale, the same for all states that are to be compared.
    pub scale: ForceScale,
    /// Scale bar.
    pub scale_bar: ScaleBar,
    /// Front axle.
    pub front: AxleForces,
    /// Rear axle.
    pub rear: AxleForces,
    /// Pinned loads.
    pub ghost: Option<GhostLoads>,
    /// m·a; positive when the car accelerates forward, drawn rearward at the CG.
    pub inertia_n: f64,
    /// Its label.
    pub inertia_label: ValueLabel,
    /// Drag, where shown.
    pub drag: Option<Drag>,
    /// Grade angle, positive uphill to the front.
    pub grade_rad: f64,
    /// Label of the grade at the slope; empty for none.
    pub grade_label: String,
    /// Weight, drawn straight down at the CG where the grade is not 0.
    pub weight_n: f64,
    /// Its label.
    pub weight_label: ValueLabel,
    /// Pitch of the body, positive when the front rises (squat).
    pub pitch_rad: f64,
    /// Factor by which the pitch is drawn too large.
    pub pitch_exaggeration: f64,
    /// "wheelbase 2.86 m"; empty for no dimension line.
    pub wheelbase_label: String,
    /// "CG height 0.54 m"; empty for no dimension line.
    pub cg_height_label: String,
    /// The caution, where the physics can hurt someone.
    pub caution: Option<Caution>,
    /// Inputs that follow the CG: its distance behind the front axle, its height.
    pub cg_inputs: Option<[&'static str; 2]>,
    /// Input that follows the inertial force, and the newtons for one SI unit of it.
    pub inertia_input: Option<(&'static str, f64)>,
}

/// Whether the forces along the road stay on the page at the scale of the view.
pub fn arrows_fit(view: &SideView) -> bool {
    let width = within(view.width, 300.0, 2000.0);
    let side = Side::new(view, width, width < super::NARROW_BELOW, 0.0);
    side.ends_along()
        .iter()
        .all(|end| end.x >= 4.0 && end.x <= width - 4.0)
}

/// Lays out the side view.
pub fn side_view(view: &SideView) -> Scene {
    let width = within(view.width, 300.0, 2000.0);
    let narrow = width < super::NARROW_BELOW;
    let bar_room = if narrow { 0.0 } else { 180.0 };
    let (mut scene, mut top) = Scene::headed(
        width,
        &view.title,
        &view.subtitle,
        &view.description,
        bar_room,
    );
    scene.newtons_per_unit = view.scale.newtons_per_unit;
    let right = width - margin(width);
    if narrow {
        top += 24.0;
        scene.scale_bar(&view.scale_bar, right, top);
    } else {
        scene.scale_bar(&view.scale_bar, right, 30.0);
    }
    let mut side = Side::new(view, width, narrow, top);
    side.ground(&mut scene);
    side.car(&mut scene);
    side.dimensions(&mut scene);
    side.forces(&mut scene);
    side.labels(&mut scene);
    let mut bottom = side.bottom + 10.0;
    if narrow {
        bottom = side.list(&mut scene, bottom + 12.0);
    }
    if let Some(caution) = &view.caution {
        let left = margin(width);
        bottom = scene.caution(caution, left, bottom + 8.0, right - left) + 10.0;
    }
    scene.height = bottom.ceil();
    scene
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::outline::BODIES;
    use crate::figure::scene::{ForceKind, Mark};

    fn label(force_n: f64, words: &str) -> ValueLabel {
        ValueLabel {
            value: format!("{force_n:.0} N"),
            words: words.into(),
        }
    }

    /// A car of 1850 kg at an acceleration in g and a grade.
    fn case(body: BodyKind, a_g: f64, grade: f64, width: f64) -> SideView {
        let (weight, wheelbase_m, height) = (18_142.0, 2.86, 0.54);
        let grade_rad = axlewright_core::math::atan(grade);
        let push = weight * (a_g + axlewright_core::math::sin(grade_rad));
        let rear =
            weight * axlewright_core::math::cos(grade_rad) * 0.51 + push * height / wheelbase_m;
        let front = weight * axlewright_core::math::cos(grade_rad) - rear;
        let axle = |load_n: f64, share: f64, name: &str| AxleForces {
            load_n,
            load_label: label(load_n, &format!("{name} axle load, 38 %")),
            tractive_n: push * share,
            tractive_label: label(push * share, &format!("{name} tractive force")),
        };
        SideView {
            width,
            title: "Accelerating, the rear axle carries 1.66 times the front".into(),
            subtitle: "Squat drawn 3 times larger than it is.".into(),
            body,
            wheelbase_m,
            wheel_radius_m: 0.335,
            cg_behind_front_m: 1.46,
            cg_height_m: height,
            scale: ForceScale::fit(15_000.0, width),
            scale_bar: ScaleBar {
                force_n: 5000.0,
                label: "5 000 N".into(),
            },
            front: axle(front, 0.4, "front"),
            rear: axle(rear, 0.6, "rear"),
            ghost: Some(GhostLoads {
                front_n: 8900.0,
                rear_n: 9242.0,
            }),
            inertia_n: weight * a_g,
            inertia_label: label(weight * a_g, "inertial force"),
            drag: Some(Drag {
                force_n: 1200.0,
                height_m: 0.6,
                label: label(1200.0, "drag"),
            }),
            grade_rad,
            grade_label: "grade 30 %".into(),
            weight_n: weight,
            weight_label: label(weight, "weight"),
            pitch_rad: a_g * 0.012,
            pitch_exaggeration: 3.0,
            wheelbase_label: "wheelbase 2.86 m".into(),
            cg_height_label: "CG height 0.54 m".into(),
            ..SideView::default()
        }
    }

    fn grid(mut check: impl FnMut(&SideView, &Scene, &str)) {
        for body in BODIES {
            for tenths in (-10..=14).step_by(2) {
                for grade in [-0.3, -0.12, 0.0, 0.05, 0.3] {
                    for width in [340.0, 420.0, 720.0, 1000.0] {
                        let view = case(body, f64::from(tenths) / 10.0, grade, width);
                        let name = format!("{body:?} {tenths} {grade} {width}");
                        check(&view, &side_view(&view), &name);
                    }
                }
            }
        }
    }

    #[test]
    fn labels_never_overlap_and_stay_on_the_page() {
        grid(|_, scene, name| {
            let boxes = scene.label_boxes();
            for (index, one) in boxes.iter().enumerate() {
                assert!(one.x0 >= 0.0 && one.x1 <= scene.width, "{name} {one:?}");
                assert!(one.y0 >= 0.0 && one.y1 <= scene.height, "{name} {one:?}");
                for other in &boxes[index + 1..] {
                    assert!(!one.overlaps(other), "{name} {one:?} {other:?}");
                }
            }
        });
    }

    #[test]
    fn arrows_are_the_forces_given_and_stay_on_the_page() {
        grid(|view, scene, name| {
            let mut loads = 0.0;
            for mark in &scene.marks {
                if let Mark::ForceArrow {
                    kind,
                    from,
                    vector_n,
                    ghost: false,
                } = mark
                {
                    if matches!(kind, ForceKind::FrontLoad | ForceKind::RearLoad) {
                        loads += axlewright_core::math::hypot(vector_n.x, vector_n.y);
                    }
                    let per_unit = scene.newtons_per_unit;
                    let tip = from.plus(vector_n.x / per_unit, vector_n.y / per_unit);
                    for p in [*from, tip] {
                        assert!(p.x >= 0.0 && p.x <= scene.width, "{name} {kind:?} {p:?}");
                        assert!(p.y >= 0.0 && p.y <= scene.height, "{name} {kind:?} {p:?}");
                    }
                }
            }
            assert!((loads - view.front.load_n - view.rear.load_n).abs() < 1e-6);
        });
    }

    #[test]
    fn on_the_level_the_height_does_not_change_with_acceleration() {
        for width in [340.0, 1000.0] {
            let heights: Vec<f64> = [-0.6, 0.2, 0.8]
                .iter()
                .map(|a_g| side_view(&case(BodyKind::Saloon, *a_g, 0.0, width)).height)
                .collect();
            assert!((heights[0] - heights[1]).abs() < 1e-9, "{heights:?}");
            assert!((heights[1] - heights[2]).abs() < 1e-9, "{heights:?}");
        }
    }

    #[test]
    fn numbers_that_are_none_draw_nothing_wild() {
        let mut view = case(BodyKind::Saloon, 0.5, 0.0, 1000.0);
        view.front.load_n = f64::NAN;
        view.inertia_n = f64::INFINITY;
        view.grade_rad = f64::NAN;
        view.cg_height_m = f64::NAN;
        let scene = side_view(&view);
        assert!(scene.height > 0.0 && scene.height < 2000.0);
    }
}
