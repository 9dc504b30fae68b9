//! The charts of cornering: steer angle against lateral acceleration, yaw moment against lateral
//! acceleration, and the response to a step of the steering.

use super::reason;
use crate::figure::{Axis, Chart, ChartPoint, Dash, Line, Marker, Role};
use crate::load_transfer::chart_height;
use crate::visual::{Look, Voice};
use axlewright_core::cornering::{
    Curve, Question, SingleTrack, Trim, constant_radius, diagram, step_steer,
};
use axlewright_core::units::Dimension as D;
use axlewright_core::{Scenario, format};

pub(super) fn chart(scenario: &Scenario, question: &Question, curve: &Curve, look: &Look) -> Chart {
    let voice = Voice::of(look);
    let whose = voice.whose(scenario);
    let mut chart = match (scenario.word("cornering.chart"), curve.shown()) {
        (Some("yaw_moment"), Some(trim)) => moment(voice, question, trim),
        (Some("step_steer"), Some(trim)) => step(voice, question, trim),
        _ => radius(voice, question, curve, look),
    };
    // Said once: the finding of the constant radius ends with the reason.
    let reason_said = chart.title.contains(&reason(voice, curve));
    if curve.asked.is_none() && !reason_said {
        chart.subtitle = [&reason(voice, curve), " ", chart.subtitle.as_str()].concat();
    }
    chart.subtitle = match chart.subtitle.trim_end() {
        "" => whose,
        said => [said, " ", &whose].concat(),
    };
    chart.width = look.width;
    chart.height = chart_height(look.width);
    chart.decimal_mark = look.lang.decimal_mark();
    chart
}

fn lateral(voice: Voice, value: f64) -> f64 {
    voice.in_unit(value, D::Acceleration)
}

fn lateral_axis(voice: Voice, min: f64, max: f64) -> Axis {
    Axis {
        title: voice.word("figure.axis.lateral_acceleration"),
        unit: voice.unit(D::Acceleration),
        min,
        max,
    }
}

fn angle(voice: Voice, value: f64) -> f64 {
    voice.in_unit(value, D::Angle)
}

/// The constant-radius test.
fn radius(voice: Voice, question: &Question, curve: &Curve, look: &Look) -> Chart {
    let track = SingleTrack::of(question);
    let end_m_s2 = curve.points.last().map_or(1.0, |point| point.lateral_m_s2);
    let single = |lateral_m_s2: f64| {
        angle(
            voice,
            track.ackermann_rad() + track.gradient() * lateral_m_s2,
        )
    };
    let mut full: Vec<(f64, f64)> = Vec::with_capacity(curve.points.len());
    for point in &curve.points {
        full.push((
            lateral(voice, point.lateral_m_s2),
            angle(voice, point.steer_rad),
        ));
    }
    let far = lateral(
        voice,
        1.08 * end_m_s2.max(question.lateral_m_s2().min(1.3 * end_m_s2)),
    );
    let top = full.iter().map(|point| point.1).fold(0.0, f64::max);
    let low = full.iter().map(|point| point.1).fold(0.0, f64::min);
    let ackermann = angle(voice, track.ackermann_rad());
    let state = |question: &Question, curve: &Curve| {
        curve.asked.as_ref().map(|trim| ChartPoint {
            x: lateral(voice, question.lateral_m_s2()),
            y: angle(voice, trim.steer_rad),
            role: Role::Front,
        })
    };
    let pinned = look.pinned.and_then(|pinned| {
        let question = Question::from_scenario(pinned).ok()?;
        state(&question, &constant_radius(&question))
    });
    let radius = voice.quantity(question.radius_m, D::Length, 3);
    let limit = voice.acceleration(end_m_s2);
    let end = voice.word(&["reason.", curve.end.word()].concat());
    Chart {
        title: voice.fill("figure.cornering.radius_title", &[&radius, &limit, &end]),
        description: voice.fill(
            "figure.cornering.radius_describe",
            &[
                &radius,
                &voice.quantity(track.ackermann_rad(), D::Angle, 3),
                &limit,
                &voice.quantity(
                    curve.points.last().map_or(0.0, |p| p.steer_rad),
                    D::Angle,
                    3,
                ),
            ],
        ),
        x_axis: lateral_axis(voice, 0.0, far),
        y_axis: Axis {
            title: voice.word("figure.axis.steer_angle"),
            unit: voice.unit(D::Angle),
            min: 1.1 * low,
            max: 1.15 * top.max(single(end_m_s2)).max(ackermann),
        },
        lines: vec![
            Line {
                label: voice.word("figure.cornering.line_full"),
                points: full,
                role: Role::Front,
                ..Line::default()
            },
            Line {
                label: voice.word("figure.cornering.line_single"),
                points: vec![
                    (0.0, single(0.0)),
                    (lateral(voice, end_m_s2), single(end_m_s2)),
                ],
                role: Role::Ink,
                dash: Dash::Long,
                ..Line::default()
            },
            Line {
                label: voice.word("figure.cornering.line_ackermann"),
                points: vec![(0.0, ackermann), (lateral(voice, end_m_s2), ackermann)],
                role: Role::Ink,
                dash: Dash::Dots,
                ..Line::default()
            },
        ],
        present: state(question, curve).into_iter().collect(),
        pinned: pinned.into_iter().collect(),
        ..Chart::default()
    }
}

const DASHES: [Dash; 4] = [Dash::Dots, Dash::Short, Dash::Solid, Dash::Long];
const MARKERS: [Marker; 4] = [
    Marker::Triangle,
    Marker::Square,
    Marker::Circle,
    Marker::Diamond,
];

/// Yaw moment against lateral acceleration.
fn moment(voice: Voice, question: &Question, trim: &Trim) -> Chart {
    let mut lines = Vec::new();
    let (mut far, mut high) = (0.0_f64, 0.0_f64);
    let traces = diagram(question, trim);
    for (index, trace) in traces.iter().enumerate() {
        let mut points: Vec<(f64, f64)> = Vec::new();
        for (across, turning) in &trace.points {
            let point = (lateral(voice, *across), voice.in_unit(*turning, D::Torque));
            // Where sliding takes the lateral acceleration back, the line would fold over itself.
            if points.last().is_some_and(|last| point.0 <= last.0) {
                continue;
            }
            far = far.max(point.0.abs());
            high = high.max(point.1.abs());
            points.push(point);
        }
        lines.push(Line {
            label: voice.quantity(trace.steer_rad, D::Angle, 2),
            points,
            role: if index == 2 { Role::Inertia } else { Role::Ink },
            dash: DASHES[index % 4],
            marker: MARKERS[index % 4],
        });
    }
    let turn_m_s2 = trim.turn.speed_m_s * trim.turn.speed_m_s * trim.turn.curvature;
    let speed = voice.quantity(trim.turn.speed_m_s, D::Speed, 3);
    Chart {
        title: voice.fill(
            "figure.cornering.moment_title",
            &[
                &speed,
                &voice.quantity(trim.steer_rad, D::Angle, 3),
                &voice.acceleration(turn_m_s2),
            ],
        ),
        subtitle: voice.word("figure.cornering.moment_key"),
        description: voice.fill("figure.cornering.moment_describe", &[&speed]),
        x_axis: lateral_axis(voice, -1.15 * far, 1.15 * far),
        y_axis: Axis {
            title: voice.word("figure.axis.yaw_moment"),
            unit: voice.unit(D::Torque),
            min: -1.05 * high,
            max: 1.05 * high,
        },
        lines,
        present: vec![ChartPoint {
            x: lateral(voice, turn_m_s2),
            y: 0.0,
            role: Role::Inertia,
        }],
        ..Chart::default()
    }
}

/// The step steer.
fn step(voice: Voice, question: &Question, trim: &Trim) -> Chart {
    let response = step_steer(question, trim);
    let turn_m_s2 = trim.turn.speed_m_s * trim.turn.speed_m_s * trim.turn.curvature;
    let mut yaw = Vec::with_capacity(response.samples.len());
    let mut across = Vec::with_capacity(response.samples.len());
    let mut top = 1.0_f64;
    for sample in &response.samples {
        let shares = (
            sample.yaw_rate_rad_s / response.steady_rad_s,
            sample.lateral_m_s2 / turn_m_s2,
        );
        yaw.push((sample.time_s, shares.0));
        across.push((sample.time_s, shares.1));
        top = top.max(shares.0).max(shares.1);
    }
    let seconds = |time_s: f64| format::with_unit(voice.fixed(time_s, 2), "s");
    let rise = response.rise_time_s().map_or_else(|| "–".into(), seconds);
    Chart {
        title: voice.fill("figure.cornering.step_title", &[&rise]),
        description: voice.fill(
            "figure.cornering.step_describe",
            &[&rise, &voice.percent(response.overshoot())],
        ),
        x_axis: Axis {
            title: voice.word("figure.axis.time"),
            unit: "s".into(),
            min: 0.0,
            max: response.samples.last().map_or(1.0, |sample| sample.time_s),
        },
        y_axis: Axis {
            title: voice.word("figure.axis.steady_share"),
            unit: String::new(),
            min: 0.0,
            max: 1.1 * top,
        },
        lines: vec![
            Line {
                label: voice.word("figure.cornering.line_yaw"),
                points: yaw,
                role: Role::Inertia,
                ..Line::default()
            },
            Line {
                label: voice.word("figure.cornering.line_lateral"),
                points: across,
                role: Role::Front,
                dash: Dash::Long,
                ..Line::default()
            },
        ],
        ..Chart::default()
    }
}
