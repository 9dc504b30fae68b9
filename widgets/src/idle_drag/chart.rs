//! The charts: what an idle motor loses against speed, how the torque is best shared over speed and
//! demand, and the energy and the speed along the cycle.

use super::both_from_n;
use crate::figure::{Axis, Chart, ChartPoint, Dash, Line, Marker, NARROW_BELOW, Role, Vertical};
use crate::load_transfer::chart_height;
use crate::visual::{Look, Voice, drawn_layouts};
use axlewright_core::Scenario;
use axlewright_core::idle_drag::wltc::PHASE_ENDS_S;
use axlewright_core::idle_drag::{Cycle, Question, follow, losses};
use axlewright_core::layout::Layout;
use axlewright_core::motor::Machine;
use axlewright_core::units::Dimension as D;

const STYLES: [(Role, Dash, Marker); 4] = [
    (Role::Front, Dash::Solid, Marker::Circle),
    (Role::Rear, Dash::Long, Marker::Square),
    (Role::Tractive, Dash::Short, Marker::Triangle),
    (Role::Inertia, Dash::DashDot, Marker::Diamond),
];

pub(super) fn chart(scenario: &Scenario, question: &Question, look: &Look) -> Chart {
    let voice = Voice::of(look);
    let mut chart = match scenario.word("idle_drag.chart") {
        Some("best_split") => best_split(scenario, question, voice),
        Some("energy") => energy(scenario, question, voice),
        Some("speed") => speed(question, voice),
        _ => idle_losses(scenario, question, voice),
    };
    chart.width = look.width;
    // Room for the labels of five lines.
    chart.height = chart_height(look.width)
        + if look.width < NARROW_BELOW {
            180.0
        } else {
            60.0
        };
    chart.decimal_mark = look.lang.decimal_mark();
    chart.subtitle = [&chart.subtitle, " ", &voice.whose(scenario)].concat();
    chart
}

/// What is driven, in words.
pub(super) fn cycle_text(voice: Voice, question: &Question) -> String {
    match &question.cycle {
        Cycle::Wltc => voice.word("figure.idle_drag.cycle_wltc"),
        Cycle::Own(_) => voice.word("figure.idle_drag.cycle_own"),
        Cycle::Steady(speed_m_s) => {
            let speed = voice.quantity(*speed_m_s, D::Speed, 3);
            voice.fill("figure.idle_drag.cycle_steady", &[&speed])
        }
    }
}

fn axis(voice: Voice, title: &str, dimension: D, max: f64) -> Axis {
    Axis {
        title: voice.word(title),
        unit: voice.unit(dimension),
        min: 0.0,
        max,
    }
}

/// End of the speed axis \[m/s\]: a round one beyond the point that is looked at.
fn speed_end(question: &Question) -> f64 {
    [50.0, 75.0, 100.0]
        .into_iter()
        .find(|end| question.speed_m_s <= *end)
        .unwrap_or(150.0)
}

fn highest(lines: &[Line]) -> f64 {
    let points = lines.iter().flat_map(|line| &line.points);
    points
        .map(|point| point.1)
        .filter(|y| y.is_finite())
        .fold(0.0, f64::max)
}

/// Points of a function of speed, in the units that are read.
fn along(end_m_s: f64, voice: Voice, of: &dyn Fn(f64) -> f64) -> Vec<(f64, f64)> {
    const POINTS: u32 = 60;
    (0..=POINTS)
        .map(|step| {
            let speed_m_s = end_m_s * f64::from(step) / f64::from(POINTS);
            (voice.in_unit(speed_m_s, D::Speed), of(speed_m_s))
        })
        .collect()
}

/// Loss of one motor against speed: idle by its kind, and alone at a steady speed.
fn idle_losses(scenario: &Scenario, question: &Question, voice: Voice) -> Chart {
    let end_m_s = speed_end(question);
    let power = |watts: f64| voice.in_unit(watts, D::Power);
    let mut lines = Vec::new();
    let mut present = Vec::new();
    let mut told = Vec::new();
    let kinds = [
        (
            Machine::PermanentMagnet,
            "figure.idle_drag.line_magnet",
            "figure.idle_drag.line_magnet_drives",
            (Role::Rear, Dash::Solid),
            Dash::Long,
        ),
        (
            Machine::Induction,
            "figure.idle_drag.line_induction",
            "figure.idle_drag.line_induction_drives",
            (Role::Front, Dash::Solid),
            Dash::Short,
        ),
    ];
    for (machine, idle, drives, (role, dash), driving) in kinds {
        let losses = losses(scenario, &question.motor, machine);
        let turns = question.ratio / question.radius_m;
        let idle_w = |speed_m_s: f64| losses.at(speed_m_s * turns).idle_w;
        let drive_w = |speed_m_s: f64| {
            let torque = question.shaft_torque_n_m(question.road_load_n(speed_m_s).max(0.0));
            losses.loss_w(torque, speed_m_s * turns)
        };
        lines.push(Line {
            label: voice.word(drives),
            points: along(end_m_s, voice, &|speed| power(drive_w(speed))),
            role,
            dash: driving,
            marker: Marker::None,
        });
        lines.push(Line {
            label: voice.word(idle),
            points: along(end_m_s, voice, &|speed| power(idle_w(speed))),
            role,
            dash,
            marker: if machine == Machine::Induction {
                Marker::Circle
            } else {
                Marker::Square
            },
        });
        let now_w = idle_w(question.speed_m_s);
        told.push(voice.quantity(now_w, D::Power, 3));
        present.push(ChartPoint {
            x: voice.in_unit(question.speed_m_s, D::Speed),
            y: power(now_w),
            role,
        });
    }
    lines.push(Line {
        label: voice.word("figure.idle_drag.line_parted"),
        points: along(end_m_s, voice, &|_| 0.0),
        role: Role::Ink,
        dash: Dash::Dots,
        marker: Marker::None,
    });
    let at = voice.quantity(question.speed_m_s, D::Speed, 3);
    let top = highest(&lines).max(power(100.0));
    let [magnet, induction] = [&told[0], &told[1]];
    Chart {
        title: voice.fill("figure.idle_drag.losses_title", &[&at, magnet, induction]),
        subtitle: voice.word("figure.idle_drag.losses_sub"),
        description: voice.fill(
            "figure.idle_drag.losses_describe",
            &[&at, magnet, induction],
        ),
        x_axis: axis(
            voice,
            "figure.axis.speed",
            D::Speed,
            voice.in_unit(end_m_s, D::Speed),
        ),
        y_axis: axis(voice, "figure.idle_drag.axis_loss", D::Power, top),
        lines,
        present,
        x_input: Some("idle_drag.speed"),
        ..Chart::default()
    }
}

/// Over speed and force at the wheels: from where on both axles drive, what the road asks for, what the
/// cycle asks for at most, and what the motors have.
fn best_split(scenario: &Scenario, question: &Question, voice: Voice) -> Chart {
    let layout = scenario.layout();
    let end_m_s = speed_end(question);
    let force = |newtons: f64| voice.in_unit(newtons, D::Force);
    let demand = |speed_m_s: f64| question.demand(layout, speed_m_s, 0.0);
    let all_n = |speed_m_s: f64| {
        let [front, rear] = demand(speed_m_s).axles;
        question.pull_n(front.most_n_m + rear.most_n_m)
    };
    let line = |key: &str, points, role, dash, marker| Line {
        label: voice.word(key),
        points,
        role,
        dash,
        marker,
    };
    let most = along(end_m_s, voice, &|speed| force(all_n(speed)));
    let road = along(end_m_s, voice, &|speed| force(question.road_load_n(speed)));
    let mut lines = vec![line(
        "figure.idle_drag.line_most",
        most,
        Role::Ink,
        Dash::Long,
        Marker::None,
    )];
    let [front, rear] = [layout.front().motors(), layout.rear().motors()];
    let both = front > 0 && rear > 0;
    let now = question.demand(layout, question.speed_m_s, question.acceleration_m_s2);
    let from_n = both_from_n(question, &now);
    if both {
        let from = along(end_m_s, voice, &|speed| {
            both_from_n(question, &demand(speed)).map_or(f64::NAN, force)
        });
        lines.push(line(
            "figure.idle_drag.line_both",
            from,
            Role::Tractive,
            Dash::Solid,
            Marker::Diamond,
        ));
        for (axle, key, role, dash) in [
            (0, "figure.idle_drag.line_front", Role::Front, Dash::Short),
            (1, "figure.idle_drag.line_rear", Role::Rear, Dash::DashDot),
        ] {
            let from = along(end_m_s, voice, &|speed| {
                alone_from_n(question, layout, speed, axle).map_or(f64::NAN, force)
            });
            if from.iter().any(|point| point.1.is_finite()) {
                lines.push(line(key, from, role, dash, Marker::None));
            }
        }
    }
    let hardest = hardest(question, layout, voice);
    if !hardest.is_empty() {
        lines.push(line(
            "figure.idle_drag.line_hardest",
            hardest,
            Role::Inertia,
            Dash::Dots,
            Marker::None,
        ));
    }
    lines.push(line(
        "figure.idle_drag.line_road",
        road,
        Role::Ink,
        Dash::Solid,
        Marker::None,
    ));
    let at = voice.quantity(question.speed_m_s, D::Speed, 3);
    let title = match from_n {
        _ if !both => voice.fill("figure.idle_drag.split_title_single", &[layout.name()]),
        Some(from_n) if from_n > 0.0 => voice.fill(
            "figure.idle_drag.split_title",
            &[layout.name(), &at, &voice.force(from_n)],
        ),
        Some(_) => voice.fill("figure.idle_drag.split_title_always", &[layout.name(), &at]),
        None => voice.fill("figure.idle_drag.split_title_never", &[layout.name(), &at]),
    };
    let now_n = voice.force(now.force_n);
    let top = highest(&lines[..1]).max(1.0);
    Chart {
        subtitle: voice.word("figure.idle_drag.split_sub"),
        description: voice.fill(
            "figure.idle_drag.split_describe",
            &[&title, &now_n, &voice.force(all_n(question.speed_m_s))],
        ),
        title,
        x_axis: axis(
            voice,
            "figure.axis.speed",
            D::Speed,
            voice.in_unit(end_m_s, D::Speed),
        ),
        y_axis: axis(voice, "figure.idle_drag.axis_force", D::Force, top),
        lines,
        present: vec![ChartPoint {
            x: voice.in_unit(question.speed_m_s, D::Speed),
            y: force(now.force_n),
            role: Role::Inertia,
        }],
        x_input: Some("idle_drag.speed"),
        ..Chart::default()
    }
}

/// Force from which an axle drives alone, where a smaller force is better left to the other; none else.
fn alone_from_n(question: &Question, layout: Layout, speed_m_s: f64, axle: usize) -> Option<f64> {
    let demand = question.demand(layout, speed_m_s, 0.0);
    let changes = axlewright_core::idle_drag::split::changes(&demand.axles);
    let mut wanted = [false; 2];
    wanted[axle] = true;
    let found = changes.iter().skip(1).find(|(_, runs)| *runs == wanted);
    found.map(|(torque, _)| question.pull_n(*torque))
}

/// The hardest pull of the cycle in each band of speed; none for a steady speed, which is the road load.
fn hardest(question: &Question, layout: Layout, voice: Voice) -> Vec<(f64, f64)> {
    const BAND_M_S: f64 = 2.5;
    if matches!(question.cycle, Cycle::Steady(_)) {
        return Vec::new();
    }
    let mut bands: Vec<f64> = Vec::new();
    let mut before_m_s = 0.0;
    let _ = follow(question, layout, &mut |moment| {
        let band = (0.5 * (before_m_s + moment.speed_m_s) / BAND_M_S) as usize;
        before_m_s = moment.speed_m_s;
        if bands.len() <= band {
            bands.resize(band + 1, 0.0);
        }
        bands[band] = bands[band].max(moment.force_n);
    });
    let mut points = Vec::new();
    for (band, force_n) in bands.iter().enumerate() {
        let middle_m_s = (band as f64 + 0.5) * BAND_M_S;
        points.push((
            voice.in_unit(middle_m_s, D::Speed),
            voice.in_unit(*force_n, D::Force),
        ));
    }
    points
}

/// Names of the published phases where they end, and the end of the time axis \[s\].
fn phases(question: &Question, voice: Voice) -> Vec<Vertical> {
    if question.cycle != Cycle::Wltc {
        return Vec::new();
    }
    let keys = [
        "figure.idle_drag.phase_low",
        "figure.idle_drag.phase_medium",
        "figure.idle_drag.phase_high",
    ];
    PHASE_ENDS_S
        .into_iter()
        .zip(keys)
        .map(|(second, key)| Vertical {
            x: second as f64,
            label: voice.word(key),
        })
        .collect()
}

/// Energy out of the battery along the cycle, a line for each layout.
fn energy(scenario: &Scenario, question: &Question, voice: Voice) -> Chart {
    let (time_s, _) = question.cycle.length();
    // A point for each pixel is enough.
    let apart_s = time_s / 400.0;
    let stored = |joules: f64| voice.in_unit(joules, D::StoredEnergy);
    let mut lines = Vec::new();
    let mut told = Vec::new();
    for (layout, (role, dash, marker)) in drawn_layouts(scenario).into_iter().zip(STYLES) {
        let mut points = vec![(0.0, 0.0)];
        let mut next_s = apart_s;
        let mut last = (0.0, 0.0);
        let followed = follow(question, layout, &mut |moment| {
            last = (moment.time_s, stored(moment.battery_j));
            if moment.time_s >= next_s {
                points.push(last);
                next_s = moment.time_s + apart_s;
            }
        });
        let Some(drive) = followed else {
            continue;
        };
        points.push(last);
        let used = voice.quantity(drive.best.battery_j, D::StoredEnergy, 3);
        told.push([layout.name(), " ", &used].concat());
        lines.push(Line {
            label: layout.name().into(),
            points,
            role,
            dash,
            marker,
        });
    }
    let told = told.join("; ");
    Chart {
        title: voice.fill("figure.idle_drag.energy_title", &[&told]),
        subtitle: cycle_text(voice, question),
        description: voice.fill("figure.idle_drag.energy_describe", &[&told]),
        x_axis: Axis {
            title: voice.word("figure.axis.time"),
            unit: "s".into(),
            min: 0.0,
            max: time_s,
        },
        y_axis: axis(
            voice,
            "figure.idle_drag.axis_battery",
            D::StoredEnergy,
            1.02 * highest(&lines).max(1e-3),
        ),
        lines,
        verticals: phases(question, voice),
        ..Chart::default()
    }
}

/// Speed along the cycle.
fn speed(question: &Question, voice: Voice) -> Chart {
    let (mut time_s, mut most_m_s) = (0.0, 0.0_f64);
    let mut points = Vec::new();
    question.cycle.each(&mut |step| {
        let shown = |speed_m_s| voice.in_unit(speed_m_s, D::Speed);
        if points.is_empty() {
            points.push((0.0, shown(step.from_m_s)));
        }
        time_s += step.length_s;
        most_m_s = most_m_s.max(step.to_m_s);
        points.push((time_s, shown(step.to_m_s)));
    });
    let (_, distance_m) = question.cycle.length();
    let parts = [
        voice.quantity(distance_m, D::Distance, 3),
        voice.quantity(most_m_s, D::Speed, 4),
        voice.fixed(time_s, 0),
    ];
    let parts = [&*parts[0], &*parts[1], &*parts[2]];
    Chart {
        title: voice.fill("figure.idle_drag.speed_title", &parts),
        subtitle: cycle_text(voice, question),
        description: voice.fill("figure.idle_drag.speed_describe", &parts),
        x_axis: Axis {
            title: voice.word("figure.axis.time"),
            unit: "s".into(),
            min: 0.0,
            max: time_s,
        },
        y_axis: axis(
            voice,
            "figure.axis.speed",
            D::Speed,
            1.05 * voice.in_unit(most_m_s, D::Speed).max(1.0),
        ),
        lines: vec![Line {
            label: voice.word("figure.idle_drag.line_speed"),
            points,
            role: Role::Ink,
            ..Line::default()
        }],
        verticals: phases(question, voice),
        ..Chart::default()
    }
}
