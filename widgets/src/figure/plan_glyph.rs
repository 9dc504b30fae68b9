//! A tiny plan view: the sign of a layout.

use super::outline::{self, BodyKind};
use super::palette::Role;
use super::scene::{Mark, Point, Scene, at};

use super::plan_layout::{Frame, half_width};
use super::plan_view::PlanView;

/// Marks of a tiny plan view around `centre`: a layout's sign.
pub(super) fn push_glyph(
    scene: &mut Scene,
    body: BodyKind,
    front_motors: u8,
    rear_motors: u8,
    centre: Point,
    per_m: f64,
) {
    let view = PlanView {
        body,
        wheelbase_m: 2.8,
        track_front_m: 1.6,
        track_rear_m: 1.6,
        wheel_radius_m: 0.36,
        tyre_width_front_m: 0.3,
        tyre_width_rear_m: 0.3,
        front_motors,
        rear_motors,
        ..PlanView::default()
    };
    let (rear, front) = body.ends();
    let frame = Frame {
        pivot: centre,
        pivot_m: at((rear + front) / 2.0 * view.wheelbase_m, 0.0),
        per_m,
        heading_rad: 0.0,
    };
    let (outline, _) = outline::plan(body, view.wheelbase_m, half_width(&view));
    let place = |p: Point| frame.place(p.x, p.y);
    scene
        .marks
        .push(Mark::BodyLines(outline::moved(&outline, &place)));
    for (x_m, motors, role) in [
        (view.wheelbase_m, front_motors, Role::Front),
        (0.0, rear_motors, Role::Rear),
    ] {
        for side in [0.8, -0.8] {
            scene.marks.push(Mark::WheelAbove {
                centre: frame.place(x_m, side),
                length: 0.78 * per_m,
                width: 0.34 * per_m,
                angle_rad: 0.0,
            });
        }
        // Larger than true: at this size a motor must still be counted.
        let middles: &[f64] = match motors {
            0 => &[],
            1 => &[0.0],
            _ => &[0.33, -0.33],
        };
        if !middles.is_empty() {
            for side in [1.0, -1.0] {
                scene.marks.push(Mark::HalfShaft {
                    from: frame.place(x_m, side * 0.3),
                    to: frame.place(x_m, side * 0.62),
                    role,
                });
            }
        }
        for middle in middles {
            scene.marks.push(Mark::Motor {
                centre: frame.place(x_m, *middle),
                length: 0.62 * per_m,
                width: 0.46 * per_m,
                angle_rad: 0.0,
                role,
            });
        }
    }
}

/// A tiny plan view that shows only body, wheels and motors: a layout's sign.
pub fn plan_glyph(body: BodyKind, front_motors: u8, rear_motors: u8, description: &str) -> Scene {
    let mut scene = Scene {
        width: 80.0,
        height: 40.0,
        title: String::from(description),
        description: String::from(description),
        ..Scene::default()
    };
    push_glyph(
        &mut scene,
        body,
        front_motors,
        rear_motors,
        at(40.0, 20.0),
        15.0,
    );
    scene
}
