//! Writes every view in every theme and width to SVG, for looking.
//!
//! `cargo run -p axlewright-widgets --example gallery -- DIR` writes the files
//! and an `index.html` that shows them.

use axlewright_core::math;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use axlewright_widgets::figure::svg::FILE_FONT;
use axlewright_widgets::figure::*;

fn main() -> io::Result<()> {
    let folder = std::env::args_os()
        .nth(1)
        .map_or_else(|| PathBuf::from("target/gallery"), PathBuf::from);
    fs::create_dir_all(&folder)?;
    let mut index = String::from("<!doctype html><meta charset=\"utf-8\"><title>Gallery</title>\n");
    for (name, scene) in scenes() {
        for (theme_name, theme) in [
            ("light", Theme::Light),
            ("dark", Theme::Dark),
            ("print", Theme::Print),
        ] {
            let text = svg(
                &scene,
                &SvgOptions {
                    prefix: &format!("{name}-"),
                    theme,
                    font_family: FILE_FONT,
                    sized: true,
                    ..SvgOptions::default()
                },
            );
            write(&folder, &format!("{name}-{theme_name}"), &text, &mut index)?;
        }
    }
    for (name, chart) in charts() {
        for (theme_name, theme) in [
            ("light", Theme::Light),
            ("dark", Theme::Dark),
            ("print", Theme::Print),
        ] {
            let text = chart_svg(
                &chart,
                &SvgOptions {
                    prefix: &format!("{name}-"),
                    theme,
                    font_family: FILE_FONT,
                    sized: true,
                    ..SvgOptions::default()
                },
            );
            write(&folder, &format!("{name}-{theme_name}"), &text, &mut index)?;
        }
    }
    fs::write(folder.join("index.html"), index)
}

fn write(folder: &Path, name: &str, text: &str, index: &mut String) -> io::Result<()> {
    fs::write(folder.join(format!("{name}.svg")), text)?;
    index.push_str(&format!("<p><img src=\"{name}.svg\" alt=\"{name}\"></p>\n"));
    Ok(())
}

fn label(value: &str, words: &str) -> ValueLabel {
    ValueLabel {
        value: value.into(),
        words: words.into(),
    }
}

fn newtons(force_n: f64) -> String {
    format!("{}\u{2009}N", number::tick_text(force_n, 10.0, '.'))
}

/// An invented car with numbers close to those of the demo vehicles.
struct Car {
    body: BodyKind,
    mass_kg: f64,
    wheelbase_m: f64,
    cg_behind_front_m: f64,
    cg_height_m: f64,
    track_m: f64,
    wheel_radius_m: f64,
}

const CARS: [(&str, Car); 4] = [
    (
        "kame",
        Car {
            body: BodyKind::SmallCar,
            mass_kg: 1180.0,
            wheelbase_m: 2.46,
            cg_behind_front_m: 1.08,
            cg_height_m: 0.53,
            track_m: 1.48,
            wheel_radius_m: 0.300,
        },
    ),
    (
        "esker",
        Car {
            body: BodyKind::Saloon,
            mass_kg: 1850.0,
            wheelbase_m: 2.86,
            cg_behind_front_m: 1.46,
            cg_height_m: 0.54,
            track_m: 1.60,
            wheel_radius_m: 0.335,
        },
    ),
    (
        "moraine",
        Car {
            body: BodyKind::Utility,
            mass_kg: 2950.0,
            wheelbase_m: 3.05,
            cg_behind_front_m: 1.50,
            cg_height_m: 0.68,
            track_m: 1.72,
            wheel_radius_m: 0.395,
        },
    ),
    (
        "corrie",
        Car {
            body: BodyKind::Sports,
            mass_kg: 1980.0,
            wheelbase_m: 2.75,
            cg_behind_front_m: 1.45,
            cg_height_m: 0.46,
            track_m: 1.66,
            wheel_radius_m: 0.345,
        },
    ),
];

fn side_of(car: &Car, a_g: f64, grade: f64, width: f64) -> Scene {
    let g = 9.80665;
    let weight = car.mass_kg * g;
    let grade_rad = math::atan(grade);
    let moved =
        (car.mass_kg * a_g * g + weight * math::sin(grade_rad)) * car.cg_height_m / car.wheelbase_m;
    let rear = weight * math::cos(grade_rad) * car.cg_behind_front_m / car.wheelbase_m + moved;
    let front = weight * math::cos(grade_rad) - rear;
    let tractive = car.mass_kg * a_g * g + weight * math::sin(grade_rad);
    let scale = ForceScale::fit(weight * 0.85, width);
    let inertia = car.mass_kg * a_g * g;
    side_view(&SideView {
        cg_inputs: None,
        inertia_input: None,
        width,
        title: format!(
            "Accelerating at {a_g:.2}\u{2009}g, the rear axle carries {:.2} times the front",
            rear / front
        ),
        subtitle: "Pitch drawn 3 times larger than it is. Invented vehicle.".into(),
        description: "Side view of the car with its axle loads.".into(),
        body: car.body,
        wheelbase_m: car.wheelbase_m,
        wheel_radius_m: car.wheel_radius_m,
        cg_behind_front_m: car.cg_behind_front_m,
        cg_height_m: car.cg_height_m,
        scale,
        scale_bar: ScaleBar {
            force_n: scale.bar_n(),
            label: newtons(scale.bar_n()),
        },
        front: AxleForces {
            load_n: front,
            load_label: label(
                &newtons(front),
                &format!(
                    "front axle load, {:.0}\u{2009}%",
                    100.0 * front / (front + rear)
                ),
            ),
            tractive_n: tractive * 0.35,
            tractive_label: label(&newtons(tractive * 0.35), "front tractive force"),
        },
        rear: AxleForces {
            load_n: rear,
            load_label: label(
                &newtons(rear),
                &format!(
                    "rear axle load, {:.0}\u{2009}%",
                    100.0 * rear / (front + rear)
                ),
            ),
            tractive_n: tractive * 0.65,
            tractive_label: label(&newtons(tractive * 0.65), "rear tractive force"),
        },
        ghost: (a_g > 0.0).then_some(GhostLoads {
            front_n: weight * (1.0 - car.cg_behind_front_m / car.wheelbase_m),
            rear_n: weight * car.cg_behind_front_m / car.wheelbase_m,
        }),
        inertia_n: inertia,
        inertia_label: label(&newtons(inertia), "inertial force"),
        drag: (a_g > 0.5).then(|| Drag {
            force_n: 900.0,
            height_m: 0.6,
            label: label(&newtons(900.0), "drag"),
        }),
        grade_rad,
        grade_label: format!("grade {:.0}\u{2009}%", grade * 100.0),
        weight_n: weight,
        weight_label: label(&newtons(weight), "weight"),
        pitch_rad: a_g * 0.012,
        pitch_exaggeration: 3.0,
        wheelbase_label: format!("wheelbase {:.2}\u{2009}m", car.wheelbase_m),
        cg_height_label: format!("CG height {:.2}\u{2009}m", car.cg_height_m),
        caution: (a_g > 0.9).then(caution),
    })
}

fn caution() -> Caution {
    Caution {
        word: "Caution".into(),
        text: "Closed ground only, no bystanders. Tears tyres and ground; drifts on slopes.".into(),
    }
}

fn plan_of(car: &Car, width: f64, turning: bool, motors: (u8, u8), heading_rad: f64) -> Scene {
    let friction = car.mass_kg * 9.80665 / 4.0;
    let scale = ForceScale::fit_plan(friction, width);
    let wheel = |forward: f64, left: f64, steer_rad: f64| {
        let far = (forward * forward + left * left).sqrt();
        PlanWheel {
            steer_rad,
            friction_n: Some(friction),
            force_n: Some(if turning {
                (-(-left) / far * friction, -forward / far * friction)
            } else {
                (friction * 0.35, friction * 0.6)
            }),
            ghost_n: None,
            sliding_m_s: turning.then_some((-left, forward)),
            label: if turning {
                ValueLabel::default()
            } else {
                label(&newtons(friction * 0.69), "")
            },
            ..PlanWheel::default()
        }
    };
    let (f, r, h) = (
        car.cg_behind_front_m,
        car.cg_behind_front_m - car.wheelbase_m,
        car.track_m / 2.0,
    );
    let steer = if turning { 0.0 } else { 0.12 };
    plan_view(&PlanView {
        reach_aside_m: 0.0,
        motor_turns: None,
        width,
        title: if turning {
            "Turning in place: every contact patch slides".into()
        } else {
            "Torque moved to the outer wheels turns the car in".into()
        },
        subtitle: "Invented vehicle.".into(),
        description: "Plan view of the car with the forces at its wheels.".into(),
        body: car.body,
        wheelbase_m: car.wheelbase_m,
        track_front_m: car.track_m,
        track_rear_m: car.track_m,
        wheel_radius_m: car.wheel_radius_m,
        tyre_width_front_m: 0.235,
        tyre_width_rear_m: 0.235,
        cg_behind_front_m: car.cg_behind_front_m,
        heading_rad,
        turning_room: heading_rad.abs() > 0.0,
        front_motors: motors.0,
        rear_motors: motors.1,
        scale,
        scale_bar: Some(ScaleBar {
            force_n: scale.bar_n(),
            label: newtons(scale.bar_n()),
        }),
        m_s_per_unit: 0.05,
        wheels: [
            wheel(f, h, steer),
            wheel(f, -h, steer),
            wheel(r, h, 0.0),
            wheel(r, -h, 0.0),
        ],
        yaw: Some(YawArrow {
            anticlockwise: true,
            label: label("0.6\u{2009}rad/s", "yaw rate"),
        }),
        turning_centre: Some(if turning {
            TurningCentre {
                forward_m: 0.4,
                left_m: 0.3,
                label: "turning centre".into(),
            }
        } else {
            TurningCentre {
                forward_m: -1.0,
                left_m: 24.0,
                label: "to the turning centre, 24 m".into(),
            }
        }),
        traces_m: Vec::new(),
        path_m: if turning {
            Vec::new()
        } else {
            (-40..=40)
                .map(|i| {
                    let s = f64::from(i) * 0.1;
                    (s, s * s / 48.0)
                })
                .collect()
        },
        legend: vec![
            "circle: all the friction that the patch has".into(),
            "arrow: the friction it uses, opposing the slide".into(),
            "dashed: how fast the patch slides".into(),
        ],
        notes: vec![
            label("87\u{2009}%", "of it pushes the wheel along"),
            label(
                "1326\u{2009}N\u{b7}m",
                "at each wheel on dry asphalt (has 3036\u{2009}N\u{b7}m)",
            ),
            label("334\u{2009}kJ", "into tyres and ground for one full turn"),
        ],
        caution: Some(caution()),
    })
}

fn bars_of(width: f64) -> Scene {
    let rows = [
        (
            "F1",
            1,
            0,
            0.41,
            "The front axle loses load just when it is to push.",
        ),
        (
            "R1",
            0,
            1,
            0.63,
            "The rear axle gains load; tyres set the limit.",
        ),
        (
            "F1R1",
            1,
            1,
            0.74,
            "Both axles push; the front motor reaches its torque first.",
        ),
        (
            "F1R2",
            1,
            2,
            0.98,
            "Two motors behind match the load at 0.83\u{2009}g.",
        ),
        (
            "F2R2",
            2,
            2,
            0.98,
            "One motor per wheel: no more grip, but torque can be moved left to right.",
        ),
    ];
    bars(&Bars {
        width,
        title: "Two motors behind and one in front use nearly all the grip".into(),
        subtitle: "Largest acceleration from rest, dry asphalt, invented vehicle.".into(),
        description: "Bars.".into(),
        body: BodyKind::Saloon,
        axis_title: "acceleration, g".into(),
        axis_max: 1.2,
        decimal_mark: '.',
        role: Role::Tractive,
        rows: rows
            .iter()
            .map(|(name, f, r, value, reason)| BarRow {
                name: (*name).into(),
                front_motors: *f,
                rear_motors: *r,
                value: *value,
                value_text: format!("{value:.2}\u{2009}g"),
                reason: (*reason).into(),
                pinned: Some(0.8 * value),
                chosen: *name == "F1R2",
                ..BarRow::default()
            })
            .collect(),
        references: vec![
            BarReference {
                value: 1.0,
                label: "friction 1.00".into(),
            },
            BarReference {
                value: 0.83,
                label: "load 2\u{2009}:\u{2009}1".into(),
            },
        ],
        caution: None,
    })
}

fn scenes() -> Vec<(String, Scene)> {
    let mut all = Vec::new();
    for (name, car) in &CARS {
        for (case, a_g, grade) in [
            ("plain", 0.6, 0.0),
            ("brake", -1.0, 0.0),
            ("limit", 1.4, 0.0),
            ("up", 0.2, 0.3),
            ("down", -0.4, -0.3),
            ("still", 0.0, 0.0),
        ] {
            for (size, width) in [("wide", WIDE), ("narrow", NARROW)] {
                all.push((
                    format!("side-{name}-{case}-{size}"),
                    side_of(car, a_g, grade, width),
                ));
            }
        }
        for (size, width) in [("wide", WIDE), ("narrow", NARROW)] {
            all.push((
                format!("plan-{name}-turn-{size}"),
                plan_of(car, width, true, (2, 2), 0.0),
            ));
            all.push((
                format!("plan-{name}-turned-{size}"),
                plan_of(car, width, true, (2, 2), 0.6),
            ));
            all.push((
                format!("plan-{name}-corner-{size}"),
                plan_of(car, width, false, (1, 2), 0.0),
            ));
        }
    }
    for (size, width) in [("wide", WIDE), ("narrow", NARROW)] {
        all.push((format!("bars-{size}"), bars_of(width)));
    }
    all.push(("glyph".into(), plan_glyph(BodyKind::Saloon, 1, 2, "F1R2")));
    all
}

fn charts() -> Vec<(String, Chart)> {
    let launch = |full: f64, limit: f64| -> Vec<(f64, f64)> {
        let mut speed = 0.0f64;
        let mut points = Vec::new();
        for step in 0..=80 {
            points.push((f64::from(step) * 0.1, speed * 3.6));
            speed += 0.1 * limit.min(full / speed.max(1.0)) * 9.80665;
        }
        points
    };
    let line = |label: &str, role, dash, marker, full, limit| Line {
        label: label.into(),
        points: launch(full, limit),
        role,
        dash,
        marker,
    };
    let mut all = Vec::new();
    for (size, width, height) in [("wide", 720.0, 360.0), ("narrow", 320.0, 380.0)] {
        let chart = Chart {
            names: Vec::new(),
            width,
            height,
            title: "The second motor saves more time than the third".into(),
            subtitle: "Launch on dry asphalt, invented vehicle.".into(),
            description: "Speed against time for four layouts.".into(),
            x_axis: Axis {
                title: "time".into(),
                unit: "s".into(),
                min: 0.0,
                max: 8.0,
            },
            y_axis: Axis {
                title: "speed".into(),
                unit: "km/h".into(),
                min: 0.0,
                max: 200.0,
            },
            lines: vec![
                line(
                    "F1, front",
                    Role::Front,
                    Dash::Solid,
                    Marker::None,
                    9.5,
                    0.41,
                ),
                line(
                    "R1, rear",
                    Role::Rear,
                    Dash::Long,
                    Marker::Circle,
                    9.6,
                    0.63,
                ),
                line(
                    "F1R1, both axles",
                    Role::Tractive,
                    Dash::Short,
                    Marker::Square,
                    18.0,
                    0.74,
                ),
                line(
                    "F1R2, two behind",
                    Role::Inertia,
                    Dash::DashDot,
                    Marker::Triangle,
                    25.0,
                    0.98,
                ),
            ],
            present: vec![ChartPoint {
                x: 3.5,
                y: 86.7,
                role: Role::Tractive,
            }],
            pinned: vec![ChartPoint {
                x: 5.0,
                y: 102.0,
                role: Role::Rear,
            }],
            verticals: vec![
                Vertical {
                    x: 2.8,
                    label: "60 mph, F1R2".into(),
                },
                Vertical {
                    x: 3.5,
                    label: "60 mph, F1R1".into(),
                },
            ],
            decimal_mark: '.',
            x_input: None,
        };
        all.push((format!("chart-launch-{size}"), chart));
        let loads = Chart {
            names: Vec::new(),
            width,
            height,
            title: "Load moves in proportion to acceleration".into(),
            subtitle: String::new(),
            description: "Axle loads against acceleration.".into(),
            x_axis: Axis {
                title: "acceleration".into(),
                unit: "g".into(),
                min: -1.0,
                max: 1.4,
            },
            y_axis: Axis {
                title: "axle load".into(),
                unit: "N".into(),
                min: 0.0,
                max: 15_000.0,
            },
            lines: vec![
                Line {
                    label: "front axle".into(),
                    points: vec![(-1.0, 12_300.0), (1.4, 4085.0)],
                    role: Role::Front,
                    dash: Dash::Solid,
                    marker: Marker::None,
                },
                Line {
                    label: "rear axle".into(),
                    points: vec![(-1.0, 5836.0), (1.4, 14_057.0)],
                    role: Role::Rear,
                    dash: Dash::Long,
                    marker: Marker::Circle,
                },
            ],
            present: vec![
                ChartPoint {
                    x: 0.6,
                    y: 6826.0,
                    role: Role::Front,
                },
                ChartPoint {
                    x: 0.6,
                    y: 11_317.0,
                    role: Role::Rear,
                },
            ],
            pinned: vec![
                ChartPoint {
                    x: 0.0,
                    y: 8880.0,
                    role: Role::Front,
                },
                ChartPoint {
                    x: 0.0,
                    y: 9262.0,
                    role: Role::Rear,
                },
            ],
            verticals: vec![Vertical {
                x: 0.83,
                label: "rear 2 : front 1".into(),
            }],
            decimal_mark: '.',
            x_input: None,
        };
        all.push((format!("chart-loads-{size}"), loads));
    }
    all
}
