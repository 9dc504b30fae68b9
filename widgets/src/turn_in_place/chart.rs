//! Charts: the yaw rate of the spin-up, and torque against friction.

use crate::figure::{Axis, Chart, ChartPoint, Dash, Line, Role, Vertical};
use crate::load_transfer::chart_height;
use crate::visual::{Look, Voice};
use axlewright_core::surface::{SURFACES, Surface};
use axlewright_core::turn_in_place::{Course, Question, Spin, course};
use axlewright_core::units::Dimension as D;
use axlewright_core::{Problem, Scenario, format};

/// The first of some round times that is not below a time.
fn round_up(time_s: f64) -> f64 {
    [2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 20.0, 30.0]
        .into_iter()
        .find(|max| *max >= time_s)
        .unwrap_or(60.0)
}

/// The first of some round yaw rates that is not below one \[°/s\].
fn round_rate(rate: f64) -> f64 {
    [10.0, 20.0, 40.0, 80.0, 120.0, 200.0, 400.0, 800.0]
        .into_iter()
        .find(|max| *max >= rate)
        .unwrap_or(1.1 * rate)
}

fn points(course: &Course, max_s: f64, rate: &dyn Fn(f64) -> f64) -> Vec<(f64, f64)> {
    let seen = course.points.iter().filter(|point| point.time_s <= max_s);
    seen.map(|point| (point.time_s, rate(point.yaw_rad_s)))
        .collect()
}

/// Yaw rate against time, with the times at which quarter, half and full turn are passed.
pub(super) fn yaw_rate(scenario: &Scenario, spin: &Spin, look: &Look) -> Chart {
    let voice = Voice::of(look);
    let course = course(spin);
    let run = &course.run;
    let seconds = |time_s: f64| format::with_unit(voice.fixed(time_s, 1), "s");
    let rate = |yaw: f64| voice.in_unit(yaw, D::YawRate);
    let asked = rate(spin.yaw_rate_rad_s);
    // A steady turn goes on as it is; any other run is shown as far as it was followed.
    let max_s = match (run.steady_yaw_rad_s, run.marks[2]) {
        (Some(_), Some(mark)) => round_up(1.1 * mark.time_s),
        _ => run.end.time_s,
    };
    let mut reached = points(&course, max_s, &rate);
    if let Some(yaw_rad_s) = run.steady_yaw_rad_s {
        reached.push((max_s, rate(yaw_rad_s)));
    }
    let top = reached.iter().map(|p| p.1).fold(asked, f64::max);
    let mut verticals = Vec::new();
    for (mark, angle) in run.marks.iter().zip(["90°", "180°", "360°"]) {
        if let Some(mark) = mark.filter(|mark| mark.time_s <= max_s) {
            verticals.push(Vertical {
                x: mark.time_s,
                label: [angle, " ", &seconds(mark.time_s)].concat(),
            });
        }
    }
    let outcome = voice.word(&["reason.", run.outcome.word()].concat());
    let title = match run.marks[2] {
        Some(mark) => voice.fill(
            "figure.turn_in_place.spin_title",
            &[
                &seconds(mark.time_s),
                &voice.quantity(spin.yaw_rate_rad_s, D::YawRate, 3),
            ],
        ),
        None => voice.word("figure.turn_in_place.spin_title_plain"),
    };
    let told: Vec<&str> = verticals.iter().map(|v| v.label.as_str()).collect();
    let now_s = scenario.number("turn_in_place.time");
    let present = now_s.filter(|now| *now <= max_s).and_then(|now| {
        let at = reached.iter().rposition(|point| point.0 <= now)?;
        let (before, after) = (reached[at], reached.get(at + 1).unwrap_or(&reached[at]));
        let share = ((now - before.0) / (after.0 - before.0).max(1e-9)).min(1.0);
        Some(ChartPoint {
            x: now,
            y: before.1 + share * (after.1 - before.1),
            role: Role::Inertia,
        })
    });
    Chart {
        width: look.width,
        height: chart_height(look.width),
        title,
        subtitle: [outcome.as_str(), " ", &voice.whose(scenario)].concat(),
        description: voice.fill(
            "figure.turn_in_place.spin_describe",
            &[&[told.join("; ").as_str(), ". ", &outcome].concat()],
        ),
        x_axis: Axis {
            title: voice.word("figure.axis.time"),
            unit: "s".into(),
            min: 0.0,
            max: max_s,
        },
        y_axis: Axis {
            title: voice.word("figure.axis.yaw_rate"),
            unit: voice.unit(D::YawRate),
            min: 0.0,
            max: round_rate(1.1 * top),
        },
        lines: vec![
            Line {
                label: voice.word("figure.line.reached"),
                points: reached,
                role: Role::Inertia,
                ..Line::default()
            },
            Line {
                label: voice.word("figure.line.asked"),
                points: vec![(0.0, asked), (max_s, asked)],
                role: Role::Ink,
                dash: Dash::Long,
                ..Line::default()
            },
        ],
        present: present.into_iter().collect(),
        verticals,
        decimal_mark: look.lang.decimal_mark(),
        ..Chart::default()
    }
}

/// Torque at a wheel against sliding friction; both are in proportion, so two points make the line.
pub(super) fn torque(
    scenario: &Scenario,
    question: &Question,
    look: &Look,
) -> Result<Chart, Problem> {
    let voice = Voice::of(look);
    let turn = question.four_wheel_turn()?;
    let radius_m = scenario.require("vehicle.wheel_radius")?;
    let torque = |value: f64| voice.in_unit(value, D::Torque);
    let needed_n_m = radius_m * turn.front_force_n.max(turn.rear_force_n);
    let friction = question.friction;
    let max = [1.2, 2.0, 3.0, 5.0]
        .into_iter()
        .find(|m| friction * 1.05 < *m)
        .unwrap_or(5.25);
    let mut lines = vec![Line {
        label: voice.word("figure.line.needed"),
        points: vec![(0.0, 0.0), (max, torque(needed_n_m / friction * max))],
        role: Role::Tractive,
        ..Line::default()
    }];
    let mut top = torque(needed_n_m / friction * max);
    if let Some(has_n_m) = question.motor_wheel_torque_n_m {
        lines.push(Line {
            label: voice.word("figure.line.available"),
            points: vec![(0.0, torque(has_n_m)), (max, torque(has_n_m))],
            role: Role::Ink,
            dash: Dash::Long,
            ..Line::default()
        });
        top = top.max(torque(has_n_m));
    }
    let marks = ["ice", "snow", "gravel", "asphalt_dry"];
    // The pinned state has its own vehicle and so its own line: only its point is shown.
    let pinned = look.pinned.and_then(|scenario| {
        let question = Question::from_scenario(scenario).ok()?;
        let turn = question.four_wheel_turn().ok()?;
        let force_n = turn.front_force_n.max(turn.rear_force_n);
        Some(ChartPoint {
            x: question.friction,
            y: torque(question.wheel_radius_m? * force_n),
            role: Role::Tractive,
        })
    });
    Ok(Chart {
        width: look.width,
        height: chart_height(look.width),
        title: voice.word("figure.turn_in_place.chart_title"),
        subtitle: voice.whose(scenario),
        description: voice.fill(
            "figure.turn_in_place.chart_describe",
            &[
                &voice.fixed(friction, 2),
                &voice.quantity(needed_n_m, D::Torque, 4),
            ],
        ),
        x_axis: Axis {
            title: voice.word("figure.axis.sliding_friction"),
            unit: String::new(),
            min: 0.0,
            max,
        },
        y_axis: Axis {
            title: voice.word("figure.axis.wheel_torque"),
            unit: voice.unit(D::Torque),
            min: 0.0,
            max: 1.05 * top,
        },
        lines,
        present: vec![ChartPoint {
            x: friction,
            y: torque(needed_n_m),
            role: Role::Tractive,
        }],
        pinned: pinned.into_iter().collect(),
        verticals: SURFACES
            .iter()
            .filter(|s| marks.contains(&s.name))
            .map(|s| Vertical {
                x: Surface::friction_sliding(s),
                label: voice.word(&format!("surface.short.{}", s.name)),
            })
            .collect(),
        names: Vec::new(),
        decimal_mark: look.lang.decimal_mark(),
        x_input: Some("surface.friction_sliding"),
    })
}
