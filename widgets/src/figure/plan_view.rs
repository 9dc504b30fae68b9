//! The plan view: forces per wheel, friction circles and yaw, seen from above.

use super::grip::Turn;
use super::number::within;
use super::outline::BodyKind;
use super::plan_layout::{Frame, Plan};
use super::scene::{Caution, ForceScale, ScaleBar, Scene, ValueLabel, margin};

/// What the motors of an axle do.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Rest {
    /// They make torque, or the figure does not tell.
    #[default]
    Drives,
    /// They make none and turn along: drawn grey.
    Idles,
    /// They make none and are disconnected: drawn grey, the half shafts cut.
    Parted,
}

/// One wheel in the plan view. Vectors are (forward, left) in car axes (ISO 8855).
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PlanWheel {
    /// Steer angle, positive to the left.
    pub steer_rad: f64,
    /// All the friction that the contact patch has; draws the circle.
    pub friction_n: Option<f64>,
    /// Force of the ground on the wheel.
    pub force_n: Option<(f64, f64)>,
    /// The same in the pinned state, drawn as an outline.
    pub ghost_n: Option<(f64, f64)>,
    /// Velocity at which the contact patch slides over the ground.
    pub sliding_m_s: Option<(f64, f64)>,
    /// Label beside the wheel; empty for none.
    pub label: ValueLabel,
    /// What the motors of its axle do; that of the left wheel counts.
    pub rest: Rest,
    /// Whether its brake holds it.
    pub braked: bool,
}

/// The yaw arrow around the centre of gravity.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct YawArrow {
    /// Anticlockwise seen from above, which is positive.
    pub anticlockwise: bool,
    /// Its label.
    pub label: ValueLabel,
}

/// The point about which the car turns.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TurningCentre {
    /// Distance ahead of the centre of gravity.
    pub forward_m: f64,
    /// Distance to the left of the centre of gravity.
    pub left_m: f64,
    /// Its label.
    pub label: String,
}

/// What the plan view shows. Front of the car to the right, its left side up.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PlanView {
    /// Width of the figure in scene units.
    pub width: f64,
    /// The finding, drawn as headline.
    pub title: String,
    /// One soft line below it.
    pub subtitle: String,
    /// The text description.
    pub description: String,
    /// Which of the four outlines.
    pub body: BodyKind,
    /// Wheelbase.
    pub wheelbase_m: f64,
    /// Front track width.
    pub track_front_m: f64,
    /// Rear track width.
    pub track_rear_m: f64,
    /// Wheel radius.
    pub wheel_radius_m: f64,
    /// Front tyre width.
    pub tyre_width_front_m: f64,
    /// Rear tyre width.
    pub tyre_width_rear_m: f64,
    /// Distance of the centre of gravity behind the front axle.
    pub cg_behind_front_m: f64,
    /// Heading, positive anticlockwise; the whole car is drawn turned by it.
    pub heading_rad: f64,
    /// Keeps room for any heading, for a figure that is to turn.
    pub turning_room: bool,
    /// Motors on the front axle: 0, 1 or 2.
    pub front_motors: u8,
    /// Motors on the rear axle: 0, 1 or 2.
    pub rear_motors: u8,
    /// Force scale.
    pub scale: ForceScale,
    /// Scale bar; `None` where no force is drawn.
    pub scale_bar: Option<ScaleBar>,
    /// Sliding speed drawn as one scene unit.
    pub m_s_per_unit: f64,
    /// Front left, front right, rear left, rear right.
    pub wheels: [PlanWheel; 4],
    /// Yaw arrow.
    pub yaw: Option<YawArrow>,
    /// Turning centre.
    pub turning_centre: Option<TurningCentre>,
    /// Path of the centre of gravity, (along the page, up the page) from it in metres.
    pub path_m: Vec<(f64, f64)>,
    /// Traces of the tyres on the ground, (along the page, up the page) from the centre of gravity in
    /// metres.
    pub traces_m: Vec<Vec<(f64, f64)>>,
    /// Soft lines that explain the signs: "circle: all the friction that the patch has".
    pub legend: Vec<String>,
    /// Values beside the car.
    pub notes: Vec<ValueLabel>,
    /// The caution, where the physics can hurt someone.
    pub caution: Option<Caution>,
    /// How far to either side of the middle something reaches that is wider than the car.
    pub reach_aside_m: f64,
    /// Choices of motors on the front and on the rear axle.
    pub motor_turns: Option<[Turn; 2]>,
}

/// Lays out the plan view.
pub fn plan_view(view: &PlanView) -> Scene {
    plan_view_with(view, &|_, _| {})
}

/// As [`plan_view`], with more things drawn to the scale of the car and over it.
pub(crate) fn plan_view_with(view: &PlanView, more: &dyn Fn(&mut Scene, &Frame)) -> Scene {
    let width = within(view.width, 300.0, 2000.0);
    let narrow = width < super::NARROW_BELOW;
    let kept = if narrow || view.scale_bar.is_none() {
        0.0
    } else {
        180.0
    };
    let (mut scene, mut top) =
        Scene::headed(width, &view.title, &view.subtitle, &view.description, kept);
    scene.newtons_per_unit = view.scale.newtons_per_unit;
    let right = width - margin(width);
    if let Some(bar) = &view.scale_bar {
        if narrow {
            top += 24.0;
            scene.scale_bar(bar, right, top);
        } else {
            scene.scale_bar(bar, right, 30.0);
        }
    }
    let mut plan = Plan::new(view, width, narrow, top);
    plan.traces(&mut scene);
    plan.circles(&mut scene);
    plan.car(&mut scene);
    more(&mut scene, &plan.frame);
    plan.grips(&mut scene);
    plan.forces(&mut scene);
    plan.labels(&mut scene);
    let bottom = plan.bounds.y1;
    let side_text = if narrow {
        plan.text(
            &mut scene,
            margin(width),
            bottom + 8.0,
            width - 2.0 * margin(width),
        )
    } else {
        let left = plan.bounds.x1 + 40.0;
        // Centred beside the car: measured once, then drawn.
        let height = plan.text(&mut Scene::default(), left, 0.0, right - left);
        let start = ((top + 16.0 + bottom - height) / 2.0).max(top + 16.0);
        plan.text(&mut scene, left, start, right - left)
    };
    scene.height = (bottom.max(side_text) + 12.0).ceil();
    scene
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::outline::BODIES;
    use crate::figure::scene::Mark;

    fn case(body: BodyKind, heading_rad: f64, width: f64, far: f64) -> PlanView {
        let friction = 4500.0;
        let wheel = |force_n: (f64, f64)| PlanWheel {
            steer_rad: 0.2,
            friction_n: Some(friction),
            force_n: Some(force_n),
            ghost_n: None,
            sliding_m_s: Some((0.8, -0.6)),
            label: ValueLabel {
                value: "3 349 N".into(),
                words: String::new(),
            },
            rest: Rest::Drives,
            braked: true,
        };
        PlanView {
            width,
            title: "Turning in place: every contact patch slides".into(),
            subtitle: "Invented vehicle.".into(),
            body,
            wheelbase_m: 2.86,
            track_front_m: 1.6,
            track_rear_m: 1.6,
            wheel_radius_m: 0.335,
            tyre_width_front_m: 0.235,
            tyre_width_rear_m: 0.235,
            cg_behind_front_m: 1.46,
            heading_rad,
            turning_room: heading_rad.abs() > 0.0,
            front_motors: 1,
            rear_motors: 2,
            scale: ForceScale::fit_plan(friction, width),
            scale_bar: Some(ScaleBar {
                force_n: 5000.0,
                label: "5 000 N".into(),
            }),
            m_s_per_unit: 0.04,
            wheels: [
                wheel((2000.0, 3000.0)),
                wheel((-2000.0, 3000.0)),
                wheel((0.0, 4500.0)),
                wheel((4500.0, 0.0)),
            ],
            yaw: Some(YawArrow {
                anticlockwise: true,
                label: ValueLabel {
                    value: "0.60 rad/s".into(),
                    words: "yaw rate".into(),
                },
            }),
            turning_centre: Some(TurningCentre {
                forward_m: -0.4,
                left_m: far,
                label: "turning centre".into(),
            }),
            legend: vec!["circle: all the friction that the patch has".into()],
            notes: vec![ValueLabel {
                value: "1 326 N·m".into(),
                words: "at each wheel on dry asphalt (has 3 036 N·m)".into(),
            }],
            caution: Some(Caution {
                word: "Caution".into(),
                text: "Closed ground only. Tears tyres and ground; drifts on slopes.".into(),
            }),
            ..PlanView::default()
        }
    }

    #[test]
    fn labels_never_overlap_and_stay_on_the_page() {
        for body in BODIES {
            for eighth in 0..16 {
                for width in [340.0, 420.0, 720.0, 1000.0] {
                    for far in [0.0, 0.3, 30.0] {
                        let heading = f64::from(eighth) * core::f64::consts::FRAC_PI_8;
                        let scene = plan_view(&case(body, heading, width, far));
                        let name = format!("{body:?} {eighth} {width} {far}");
                        let boxes = scene.label_boxes();
                        for (index, one) in boxes.iter().enumerate() {
                            assert!(one.x0 >= 0.0 && one.x1 <= width, "{name} {one:?}");
                            assert!(one.y0 >= 0.0 && one.y1 <= scene.height, "{name} {one:?}");
                            for other in &boxes[index + 1..] {
                                assert!(!one.overlaps(other), "{name} {one:?} {other:?}");
                            }
                        }
                    }
                }
            }
        }
    }

    #[test]
    fn the_left_side_is_up_and_the_front_is_right() {
        let scene = plan_view(&case(BodyKind::Saloon, 0.0, 1000.0, 0.3));
        let wheels: Vec<_> = scene
            .marks
            .iter()
            .filter_map(|mark| match mark {
                Mark::WheelAbove { centre, .. } => Some(*centre),
                _ => None,
            })
            .collect();
        assert_eq!(wheels.len(), 4);
        assert!(wheels[0].y < wheels[1].y && wheels[0].x > wheels[2].x);
        // A force to the left points up the page.
        let up = scene.marks.iter().any(|mark| {
            matches!(mark, Mark::ForceArrow { from, vector_n, .. }
                if *from == wheels[2] && vector_n.y < -4499.0 && vector_n.x.abs() < 1e-6)
        });
        assert!(up);
    }

    #[test]
    fn a_quarter_turn_to_the_left_points_the_front_up() {
        let heading = core::f64::consts::FRAC_PI_2;
        let scene = plan_view(&case(BodyKind::Saloon, heading, 1000.0, 0.0));
        let wheels: Vec<_> = scene
            .marks
            .iter()
            .filter_map(|mark| match mark {
                Mark::WheelAbove { centre, .. } => Some(*centre),
                _ => None,
            })
            .collect();
        assert!(wheels[0].y < wheels[2].y && wheels[0].x < wheels[1].x);
    }

    #[test]
    fn a_figure_that_is_to_turn_keeps_its_height() {
        let height = |heading: f64| {
            let mut view = case(BodyKind::Utility, heading, 1000.0, 0.3);
            view.turning_room = true;
            plan_view(&view).height
        };
        for eighth in 1..16 {
            assert!((height(f64::from(eighth) * 0.4) - height(0.0)).abs() < 1e-9);
        }
    }
}
