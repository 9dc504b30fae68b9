//! Fitting the motors in: plan view to scale with the room between the wheels, what steered wheels sweep
//! of it, and the drive units; a chart of the room against the steer angle.

use crate::figure::mark::{Mark, Point};
use crate::figure::{
    Axis, Caution, Chart, ChartPoint, Dash, Frame, Line, Marker, PlanView, PlanWheel, Role, Scene,
    ValueLabel, plan_view_with,
};
use crate::load_transfer::chart_height;
use crate::motors::motor_turns;
use crate::visual::{Drawing, Look, View, Visual, Voice, body};
use axlewright_core::layout::Layout;
use axlewright_core::math;
use axlewright_core::packaging::{
    EXTRAORDINARY_W_M3, Room, Surroundings, TOPIC, Unit, Vehicle, Wheel,
};
use axlewright_core::units::Dimension as D;
use axlewright_core::{Problem, Scenario};

/// The looks of the topic.
pub const VISUAL: Visual = Visual {
    views: &[View::Plan, View::Chart],
    ..Visual::of_topic(&TOPIC, draw)
};

fn draw(scenario: &Scenario, view: View, look: &Look) -> Result<Drawing, Problem> {
    let shown = Shown::of(scenario)?;
    Ok(match view {
        View::Chart => Drawing::Chart(chart(scenario, &shown, look)),
        _ => Drawing::Scene(plan(scenario, &shown, look)),
    })
}

/// What the figures show of a vehicle that is given whole.
struct Shown {
    unit: Unit,
    rooms: [Room; 2],
    around: Surroundings,
    density_w_m3: f64,
}

impl Shown {
    fn of(scenario: &Scenario) -> Result<Self, Problem> {
        let vehicle = Vehicle::from_scenario(scenario)?;
        let mut lacking = Problem::Empty;
        for path in [
            "vehicle.motor_power",
            "vehicle.wheel_radius",
            "vehicle.max_steer_angle",
            "vehicle.track_front",
            "vehicle.track_rear",
        ] {
            match scenario.require(path) {
                Ok(_) => {}
                Err(problem) => {
                    lacking = problem;
                    break;
                }
            }
        }
        let ([Some(front), Some(rear)], Some(unit)) = (vehicle.rooms, vehicle.unit) else {
            return Err(lacking);
        };
        Ok(Self {
            unit,
            rooms: [front, rear],
            around: vehicle.around,
            density_w_m3: vehicle.density_w_m3,
        })
    }
}

/// A wheelbase to draw where none is given: room does not depend on it.
const WHEELBASE_M: f64 = 2.7;

fn motors(layout: Layout) -> [u8; 2] {
    [layout.front().motors(), layout.rear().motors()]
}

/// What is left at the driven axle that has least.
fn left_m(shown: &Shown, layout: Layout) -> f64 {
    let axles = shown.rooms.iter().zip(motors(layout));
    let driven = axles.filter(|(_, units)| *units > 0);
    let left = driven.map(|(room, units)| room.free_m - shown.unit.side_by_side_m(units));
    left.fold(f64::INFINITY, f64::min)
}

fn plan(scenario: &Scenario, shown: &Shown, look: &Look) -> Scene {
    let voice = Voice::of(look);
    let layout = scenario.layout();
    let left_m = left_m(shown, layout);
    let length = |value_m: f64| voice.quantity(value_m, D::Length, 3);
    let spare = voice.quantity(left_m.abs(), D::Length, 2);
    let key = if left_m >= 0.0 {
        "figure.packaging.title"
    } else {
        "figure.packaging.title_cannot"
    };
    let title = voice.fill(key, &[layout.name(), &spare]);
    let [front, rear] = &shown.rooms;
    let wheelbase_m = scenario.number("vehicle.wheelbase").unwrap_or(WHEELBASE_M);
    let steered = PlanWheel {
        steer_rad: front.wheel.steer_rad,
        ..PlanWheel::default()
    };
    let straight = PlanWheel::default;
    let wide = motors(layout).map(|units| 0.5 * shown.unit.side_by_side_m(units));
    let wide_m = wide[0].max(wide[1]);
    let key_unit = if wide_m > farthest_m(shown) {
        "figure.packaging.key_unit_cut"
    } else {
        "figure.packaging.key_unit"
    };
    let view = PlanView {
        width: look.width,
        subtitle: voice.whose(scenario),
        description: voice.fill(
            "figure.packaging.describe",
            &[
                &voice.quantity(front.wheel.steer_rad, D::Angle, 2),
                &title,
                &voice.quantity(shown.unit.volume_m3, D::Volume, 3),
                &length(shown.unit.width_m),
                &length(front.free_m),
                &length(rear.free_m),
            ],
        ),
        title,
        body: body(scenario),
        wheelbase_m,
        track_front_m: front.track_m,
        track_rear_m: rear.track_m,
        wheel_radius_m: front.wheel.radius_m,
        tyre_width_front_m: front.wheel.width_m,
        tyre_width_rear_m: rear.wheel.width_m,
        cg_behind_front_m: scenario
            .number("vehicle.cg_to_front_axle")
            .unwrap_or(0.5 * wheelbase_m),
        wheels: [steered.clone(), steered, straight(), straight()],
        legend: vec![
            voice.word(key_unit),
            voice.word("figure.packaging.key_room"),
            voice.word("figure.packaging.key_swept"),
        ],
        notes: notes(voice, shown, layout),
        caution: look.caution.then(|| Caution {
            word: voice.word("figure.caution"),
            text: voice.word("caution.packaging"),
        }),
        reach_aside_m: wide_m.min(farthest_m(shown)),
        motor_turns: Some(motor_turns(voice, layout)),
        ..PlanView::default()
    };
    plan_view_with(&view, &|scene, frame| {
        for (axle, forward_m) in [(0, wheelbase_m), (1, 0.0)] {
            room(scene, frame, shown, (axle, forward_m));
            let units = motors(layout)[axle];
            drive_units(scene, frame, shown, (axle, forward_m, units));
        }
        for left in [1.0, -1.0] {
            let place = |p: Point| {
                let (ahead_m, inward_m) = (p.x, p.y);
                let left_m = left * (0.5 * front.track_m - inward_m);
                frame.place(wheelbase_m + ahead_m, left_m)
            };
            let points = swept_outline(&front.wheel).into_iter().map(place).collect();
            scene.marks.push(Mark::Path { points });
        }
    })
}

/// Units are drawn no farther aside than this, so that the car keeps its size on the page.
fn farthest_m(shown: &Shown) -> f64 {
    let [front, rear] = &shown.rooms;
    0.8 * front.track_m.max(rear.track_m)
}

fn notes(voice: Voice, shown: &Shown, layout: Layout) -> Vec<ValueLabel> {
    let length = |value_m: f64| voice.quantity(value_m, D::Length, 3);
    let mut notes = Vec::new();
    let keys = [
        (
            "figure.packaging.note_front",
            "figure.packaging.note_front_free",
        ),
        (
            "figure.packaging.note_rear",
            "figure.packaging.note_rear_free",
        ),
    ];
    for (axle, (key, free_key)) in keys.into_iter().enumerate() {
        let units = motors(layout)[axle];
        let words = if units == 0 {
            voice.word(free_key)
        } else {
            voice.fill(key, &[&length(shown.unit.side_by_side_m(units))])
        };
        notes.push(ValueLabel {
            value: length(shown.rooms[axle].free_m),
            words,
        });
    }
    let density = voice.quantity(shown.density_w_m3, D::PowerDensity, 3);
    notes.push(ValueLabel {
        value: voice.quantity(shown.unit.volume_m3, D::Volume, 3),
        words: voice.fill("figure.packaging.note_unit", &[&density]),
    });
    if shown.density_w_m3 > EXTRAORDINARY_W_M3 {
        notes.push(ValueLabel {
            value: density,
            words: voice.word("figure.packaging.note_extraordinary"),
        });
    }
    notes
}

/// The room of an axle: as long as a unit, as wide as the wheels leave it.
fn room(scene: &mut Scene, frame: &Frame, shown: &Shown, (axle, forward_m): (usize, f64)) {
    let (ahead_m, left_m) = (
        0.5 * shown.around.unit_length_m,
        0.5 * shown.rooms[axle].free_m.max(0.0),
    );
    let corner = |ahead: f64, left: f64| frame.place(forward_m + ahead * ahead_m, left * left_m);
    let corners = [
        (1.0, 1.0),
        (1.0, -1.0),
        (-1.0, -1.0),
        (-1.0, 1.0),
        (1.0, 1.0),
    ];
    for pair in corners.windows(2) {
        if let [from, to] = pair {
            scene.marks.push(Mark::Reference {
                from: corner(from.0, from.1),
                to: corner(to.0, to.1),
            });
        }
    }
}

/// The drive units of an axle side by side, with their half shafts.
fn drive_units(
    scene: &mut Scene,
    frame: &Frame,
    shown: &Shown,
    (axle, forward_m, units): (usize, f64, u8),
) {
    if units == 0 {
        return;
    }
    let role = [Role::Front, Role::Rear][axle];
    let unit = &shown.unit;
    let hub_m = 0.5 * shown.rooms[axle].track_m;
    let outer_m = 0.5 * unit.side_by_side_m(units);
    for side in [1.0, -1.0] {
        scene.marks.push(Mark::HalfShaft {
            from: frame.place(forward_m, side * outer_m.min(hub_m)),
            to: frame.place(forward_m, side * hub_m),
            role,
        });
    }
    let middle_m = 0.5 * (unit.width_m + unit.gap_m);
    let middles: &[f64] = if units == 1 {
        &[0.0]
    } else {
        &[middle_m, -middle_m]
    };
    let far_m = farthest_m(shown);
    for middle in middles {
        let from_m = (middle - 0.5 * unit.width_m).max(-far_m).min(far_m);
        let to_m = (middle + 0.5 * unit.width_m).max(-far_m).min(far_m);
        scene.marks.push(Mark::Motor {
            centre: frame.place(forward_m, 0.5 * (from_m + to_m)),
            length: shown.around.unit_length_m * frame.per_m,
            width: (to_m - from_m) * frame.per_m,
            angle_rad: frame.heading_rad,
            role,
        });
    }
}

/// The outline of all places of a wheel from lock to lock, ahead of its middle and inward of it: the
/// farthest corner or face in every direction.
fn swept_outline(wheel: &Wheel) -> Vec<Point> {
    const STEPS: u32 = 96;
    let half_m = 0.5 * wheel.width_m;
    let corner_rad = math::atan(half_m / wheel.radius_m);
    let quarter = core::f64::consts::FRAC_PI_2;
    // How far the straight wheel reaches in a direction, given as the angle from its plane.
    let reach = |angle_rad: f64| {
        let (sin, cos) = (math::sin(angle_rad).abs(), math::cos(angle_rad).abs());
        if sin * wheel.radius_m <= cos * half_m {
            wheel.radius_m / cos
        } else {
            half_m / sin
        }
    };
    (0..=STEPS)
        .map(|step| {
            let angle_rad = f64::from(step) * 4.0 * quarter / f64::from(STEPS);
            // Folded into the first quarter: the wheel is alike in all four.
            let turns = math::round(angle_rad / (2.0 * quarter));
            let folded = (angle_rad - turns * 2.0 * quarter).abs();
            let far = (folded - corner_rad).abs() - wheel.steer_rad;
            let radius_m = if far <= 0.0 {
                reach(corner_rad)
            } else if folded < corner_rad {
                reach(folded + wheel.steer_rad)
            } else {
                reach(folded - wheel.steer_rad)
            };
            Point {
                x: radius_m * math::cos(angle_rad),
                y: radius_m * math::sin(angle_rad),
            }
        })
        .collect()
}

/// Room at each axle against the steer angle, and what one unit and two need.
fn chart(scenario: &Scenario, shown: &Shown, look: &Look) -> Chart {
    const STEPS: u32 = 30;
    let voice = Voice::of(look);
    let in_unit = |value_m: f64| voice.in_unit(value_m, D::Length);
    let [front, rear] = &shown.rooms;
    let steer_rad = front.wheel.steer_rad;
    let degrees = |angle_rad: f64| angle_rad.to_degrees();
    let max = if degrees(steer_rad) > 44.0 {
        60.0
    } else {
        45.0
    };
    let front_m = |angle: f64| {
        let wheel = Wheel {
            steer_rad: angle.to_radians(),
            ..front.wheel
        };
        Room::new(wheel, front.track_m, &shown.around).free_m
    };
    let level = |key: &str, value_m: f64, role: Role, dash: Dash, marker: Marker| Line {
        label: voice.word(key),
        points: vec![(0.0, in_unit(value_m)), (max, in_unit(value_m))],
        role,
        dash,
        marker,
    };
    let [one_m, two_m] = [1, 2].map(|units| shown.unit.side_by_side_m(units));
    let (front_now_m, rear_m) = (front.free_m, rear.free_m);
    let lines = vec![
        Line {
            label: voice.word("figure.line.front_room"),
            points: (0..=STEPS)
                .map(|step| f64::from(step) * max / f64::from(STEPS))
                .map(|angle| (angle, in_unit(front_m(angle))))
                .collect(),
            role: Role::Front,
            ..Line::default()
        },
        level(
            "figure.line.rear_room",
            rear_m,
            Role::Ink,
            Dash::Long,
            Marker::None,
        ),
        level(
            "figure.line.one_unit",
            one_m,
            Role::Ink,
            Dash::Dots,
            Marker::None,
        ),
        level(
            "figure.line.two_units",
            two_m,
            Role::Ink,
            Dash::DashDot,
            Marker::None,
        ),
    ];
    let angle = voice.quantity(steer_rad, D::Angle, 2);
    let length = |value_m: f64| voice.quantity(value_m, D::Length, 3);
    let pinned = look.pinned.and_then(|pinned| {
        let [front, _] = Shown::of(pinned).ok()?.rooms;
        Some(ChartPoint {
            x: degrees(front.wheel.steer_rad),
            y: in_unit(front.free_m),
            role: Role::Front,
        })
    });
    let top_m = [front_m(0.0), rear_m, one_m, two_m]
        .into_iter()
        .fold(0.0, f64::max);
    Chart {
        width: look.width,
        height: chart_height(look.width),
        title: voice.fill(
            "figure.packaging.chart_title",
            &[&length(front_m(0.0) - front_now_m), &angle],
        ),
        subtitle: voice.whose(scenario),
        description: voice.fill(
            "figure.packaging.chart_describe",
            &[
                &angle,
                &length(front_now_m),
                &length(rear_m),
                &length(one_m),
                &length(two_m),
            ],
        ),
        x_axis: Axis {
            title: voice.word("figure.axis.steer_angle"),
            unit: "°".into(),
            min: 0.0,
            max,
        },
        y_axis: Axis {
            title: voice.word("figure.axis.width"),
            unit: voice.unit(D::Length),
            min: 0.0,
            max: 1.1 * in_unit(top_m),
        },
        lines,
        present: vec![ChartPoint {
            x: degrees(steer_rad),
            y: in_unit(front_now_m),
            role: Role::Front,
        }],
        pinned: pinned.into_iter().collect(),
        decimal_mark: look.lang.decimal_mark(),
        x_input: Some("vehicle.max_steer_angle"),
        ..Chart::default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_outline_encloses_the_area_that_the_wheel_sweeps() {
        for steer_rad in [0.0, 0.1, 0.35, 0.66, 1.04] {
            let wheel = Wheel {
                radius_m: 0.335,
                width_m: 0.235,
                steer_rad,
            };
            let points = swept_outline(&wheel);
            let doubled: f64 = points
                .windows(2)
                .map(|pair| pair[0].x * pair[1].y - pair[1].x * pair[0].y)
                .sum();
            let share = 0.5 * doubled / wheel.swept_area_m2();
            assert!((0.97..=1.001).contains(&share), "{steer_rad}: {share}");
        }
    }
}
