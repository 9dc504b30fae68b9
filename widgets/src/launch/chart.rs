//! Speed against time: each layout a line, cut where another thing begins to limit.

use super::Phase;
use crate::figure::{Axis, Chart, ChartPoint, Dash, Line, Marker, NARROW_BELOW, Role, Vertical};
use crate::load_transfer::chart_height;
use crate::visual::{Look, MOST_LAYOUTS, Voice, drawn_layouts};
use axlewright_core::launch::{Course, MARK_60_MPH, MARK_100_KM_H, Point, Question, course};
use axlewright_core::layout::Layout;
use axlewright_core::units::Dimension as D;
use axlewright_core::{Scenario, format};
use std::rc::Rc;

/// The course of a layout.
struct Trace {
    layout: Layout,
    course: Rc<Course>,
}

const MARKERS: [Marker; MOST_LAYOUTS] = [
    Marker::Circle,
    Marker::Square,
    Marker::Triangle,
    Marker::Diamond,
];

/// Colour and dash of what limits: the colour of the axle whose tyres do, that of the tractive force
/// where all do, ink where the machines do.
fn style(phase: Phase) -> (Role, Dash) {
    match phase {
        Phase::FrontGrip => (Role::Front, Dash::Short),
        Phase::RearGrip => (Role::Rear, Dash::Long),
        Phase::AllGrip => (Role::Tractive, Dash::DashDot),
        Phase::Torque => (Role::Ink, Dash::Dots),
        Phase::Power => (Role::Ink, Dash::Solid),
        Phase::Battery => (Role::Inertia, Dash::Solid),
        Phase::MotorSpeed => (Role::Soft, Dash::Short),
    }
}

/// The first of some round times that is not below a time.
fn round_up(time_s: f64) -> f64 {
    [4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 20.0, 30.0, 60.0]
        .into_iter()
        .find(|max| *max >= time_s)
        .unwrap_or(120.0)
}

pub(super) fn chart(scenario: &Scenario, question: &Question, look: &Look) -> Chart {
    let voice = Voice::of(look);
    let traces: Vec<Trace> = drawn_layouts(scenario)
        .into_iter()
        .map(|layout| Trace {
            layout,
            course: course(question, layout),
        })
        .collect();
    let slowest_s = traces
        .iter()
        .filter_map(|trace| trace.course.run.marks[MARK_100_KM_H])
        .map(|mark| mark.time_s)
        .fold(0.0, f64::max);
    let max_s = round_up(if slowest_s > 0.0 {
        1.1 * slowest_s
    } else {
        12.0
    });
    let speed = |value: f64| voice.in_unit(value, D::Speed);
    let mut lines: Vec<Line> = Vec::new();
    let mut verticals = Vec::new();
    let mut told = Vec::new();
    let mut top = speed(30.0);
    for (trace, marker) in traces.iter().zip(MARKERS) {
        let name = trace.layout.name();
        cut(trace, marker, (max_s, &speed), &mut lines);
        if let Some(line) = lines.last_mut() {
            line.label = name.into();
            top = line.points.iter().map(|point| point.1).fold(top, f64::max);
        }
        if let Some(mark) = trace.course.run.marks[MARK_60_MPH] {
            let label = [name, " ", &seconds(voice, mark.time_s)].concat();
            told.push(label.clone());
            verticals.push(Vertical {
                x: mark.time_s,
                label,
            });
        } else {
            let reason = voice.word(&["reason.", trace.course.run.outcome.word()].concat());
            told.push([name, ": ", &reason].concat());
        }
    }
    let now_s = scenario.number("launch.time").unwrap_or(0.0);
    let shown = traces
        .iter()
        .find(|trace| trace.layout == scenario.layout());
    let present = shown.and_then(|trace| at(&trace.course.points, now_s));
    let title = match (
        fastest(&traces, |a, b| a < b),
        fastest(&traces, |a, b| a > b),
    ) {
        (Some(first), Some(last)) if first.0 != last.0 => voice.fill(
            "figure.launch.chart_title",
            &[
                first.0.name(),
                &seconds(voice, first.1),
                last.0.name(),
                &seconds(voice, last.1),
            ],
        ),
        _ => voice.word("figure.launch.chart_title_plain"),
    };
    Chart {
        width: look.width,
        // Room for the words that say what limits.
        height: chart_height(look.width)
            + if look.width < NARROW_BELOW {
                160.0
            } else {
                40.0
            },
        title,
        subtitle: [
            voice.word("figure.launch.key").as_str(),
            " ",
            &voice.whose(scenario),
        ]
        .concat(),
        description: voice.fill("figure.launch.chart_describe", &[&told.join("; ")]),
        x_axis: Axis {
            title: voice.word("figure.axis.time"),
            unit: "s".into(),
            min: 0.0,
            max: max_s,
        },
        y_axis: Axis {
            title: voice.word("figure.axis.speed"),
            unit: voice.unit(D::Speed),
            min: 0.0,
            max: top,
        },
        lines,
        present: present
            .filter(|_| now_s > 0.0 && now_s <= max_s)
            .map(|value| ChartPoint {
                x: now_s,
                y: speed(value),
                role: Role::Inertia,
            })
            .into_iter()
            .collect(),
        verticals,
        decimal_mark: look.lang.decimal_mark(),
        ..Chart::default()
    }
}

fn seconds(voice: Voice, time_s: f64) -> String {
    format::with_unit(voice.fixed(time_s, 2), "s")
}

/// The layout that is first (or last) at 60 mph.
fn fastest(traces: &[Trace], better: fn(f64, f64) -> bool) -> Option<(Layout, f64)> {
    let mut best: Option<(Layout, f64)> = None;
    for trace in traces {
        let Some(mark) = trace.course.run.marks[MARK_60_MPH] else {
            continue;
        };
        if best.is_none_or(|(_, time_s)| better(mark.time_s, time_s)) {
            best = Some((trace.layout, mark.time_s));
        }
    }
    best
}

/// Cuts a run into lines, one for each phase, up to a time.
fn cut(
    trace: &Trace,
    marker: Marker,
    (max_s, speed): (f64, &dyn Fn(f64) -> f64),
    lines: &mut Vec<Line>,
) {
    let mut open: Option<(Phase, Vec<(f64, f64)>)> = None;
    let mut last: Option<(f64, f64)> = None;
    let mut done: Vec<(Phase, Vec<(f64, f64)>)> = Vec::new();
    for now in &trace.course.points {
        let point = (now.time_s, speed(now.speed_m_s));
        let phase = Phase::of(now.limits);
        match &mut open {
            Some((known, points)) if *known == phase => points.push(point),
            _ => {
                done.extend(open.take());
                // The new part begins where the old one ended.
                open = Some((phase, last.into_iter().chain([point]).collect()));
            }
        }
        last = Some(point);
        if now.time_s > max_s {
            break;
        }
    }
    done.extend(open);
    for (phase, points) in done {
        let (role, dash) = style(phase);
        lines.push(Line {
            label: String::new(),
            points,
            role,
            dash,
            marker,
        });
    }
}

/// Speed at a time on a drawn line.
fn at(points: &[Point], time_s: f64) -> Option<f64> {
    points.windows(2).find_map(|pair| {
        let (t0, v0) = (pair[0].time_s, pair[0].speed_m_s);
        let (t1, v1) = (pair[1].time_s, pair[1].speed_m_s);
        (t0 <= time_s && time_s <= t1 && t1 > t0)
            .then(|| v0 + (v1 - v0) * (time_s - t0) / (t1 - t0))
    })
}
