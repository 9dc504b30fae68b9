//! How many motors: plan view with the motors where the layout has them, the split of the load against
//! the split of the torque, and what each further motor buys.

use crate::figure::{
    Axis, Caution, Chart, ChartPoint, Dash, ForceScale, Line, Marker, PlanView, PlanWheel, Role,
    Scene, ValueLabel, Vertical, plan_view,
};
use crate::load_transfer::chart_height;
use crate::motors::motor_turns;
use crate::side::wheel_radius;
use crate::visual::{Drawing, Look, View, Visual, Voice, body, scale_step};
use axlewright_core::layout::Layout;
use axlewright_core::motor_split::{
    Answer, Question, TOPIC, front_share, matching_acceleration, solve,
};
use axlewright_core::units::Dimension as D;
use axlewright_core::{GRAVITY_M_S2, Problem, Scenario};

/// The looks of the topic.
pub const VISUAL: Visual = Visual {
    views: &[View::Plan, View::Chart],
    table: axlewright_core::motor_split::COLUMNS,
    ..Visual::of_topic(&TOPIC, draw)
};

fn draw(scenario: &Scenario, view: View, look: &Look) -> Result<Drawing, Problem> {
    let question = Question::from_scenario(scenario)?;
    Ok(match view {
        View::Chart => Drawing::Chart(chart(scenario, &question, look)?),
        _ => Drawing::Scene(plan(scenario, &question, look)?),
    })
}

fn motors(layout: Layout) -> [u8; 2] {
    [layout.front().motors(), layout.rear().motors()]
}

/// The acceleration at which torque and load match, for a layout that drives both axles.
fn matched(question: &Question, layout: Layout) -> Option<f64> {
    let [front, rear] = motors(layout);
    let found = matching_acceleration(&question.rest.chassis, front, rear);
    (front > 0 && rear > 0 && found.is_finite()).then_some(found)
}

/// The finding in one sentence.
fn title(voice: Voice, question: &Question, layout: Layout, answer: &Answer) -> String {
    let limit = voice.acceleration(answer.limit.acceleration_m_s2);
    let name = layout.name();
    let Some(found) = matched(question, layout) else {
        return voice.fill("figure.motor_split.title_one_axle", &[name, &limit]);
    };
    let at = voice.acceleration(found.abs());
    if found < 0.0 {
        voice.fill("figure.motor_split.title_braking", &[name, &at])
    } else if found > answer.limit.acceleration_m_s2 {
        voice.fill("figure.motor_split.title_beyond", &[name, &at, &limit])
    } else {
        voice.fill("figure.motor_split.title", &[name, &at])
    }
}

/// Two shares that make a whole: "33 : 67".
fn split(voice: Voice, front: f64) -> String {
    let front = axlewright_core::math::round(100.0 * front);
    let rear = 100.0 - front;
    [
        &voice.fixed(front, 0),
        "\u{2009}:\u{2009}",
        &voice.fixed(rear, 0),
    ]
    .concat()
}

fn plan(scenario: &Scenario, question: &Question, look: &Look) -> Result<Scene, Problem> {
    let voice = Voice::of(look);
    let layout = scenario.layout();
    let [front_motors, rear_motors] = motors(layout);
    let answer = solve(question, layout)?;
    let chassis = &question.rest.chassis;
    let limit = &answer.limit;
    let wheel = |front: bool| {
        let (axle, load_n, force_n) = if front {
            (
                &question.rest.front,
                limit.loads.front_n,
                limit.front_force_n,
            )
        } else {
            (&question.rest.rear, limit.loads.rear_n, limit.rear_force_n)
        };
        let load_n = 0.5 * load_n.max(0.0);
        let peak = axle.friction.peak_left.min(axle.friction.peak_right);
        PlanWheel {
            friction_n: Some(load_n * axle.friction_at(peak, load_n)),
            force_n: (force_n != 0.0).then_some((0.5 * force_n, 0.0)),
            ..PlanWheel::default()
        }
    };
    let (front, rear) = (wheel(true), wheel(false));
    let peak = question.rest.front.friction.peak_left;
    let scale = ForceScale::fit_plan(scale_step(0.4 * peak * chassis.weight_n()), look.width);
    let load = limit.loads.front_n / (limit.loads.front_n + limit.loads.rear_n);
    let torque = front_share(front_motors, rear_motors);
    let acceleration = voice.acceleration(limit.acceleration_m_s2);
    let equal = voice.acceleration(answer.equal.acceleration_m_s2);
    let note = |value: &str, key: &str, part: &str| ValueLabel {
        value: value.into(),
        words: voice.fill(key, &[part]),
    };
    let (load_text, torque_text) = (split(voice, load), split(voice, torque));
    let mut notes = vec![
        note(&load_text, "figure.motor_split.note_load", &acceleration),
        note(&torque_text, "figure.motor_split.note_torque", ""),
    ];
    if front_motors > 0 && rear_motors > 0 {
        notes.push(note(&equal, "figure.motor_split.note_equal", &acceleration));
    }
    Ok(plan_view(&PlanView {
        motor_turns: Some(motor_turns(voice, layout)),
        width: look.width,
        title: title(voice, question, layout, &answer),
        subtitle: voice.whose(scenario),
        description: voice.fill(
            "figure.motor_split.describe",
            &[
                layout.name(),
                &voice.fixed(f64::from(front_motors), 0),
                &voice.fixed(f64::from(rear_motors), 0),
                &acceleration,
                &load_text,
                &torque_text,
            ],
        ),
        body: body(scenario),
        wheelbase_m: chassis.wheelbase_m(),
        track_front_m: track(scenario, "vehicle.track_front"),
        track_rear_m: track(scenario, "vehicle.track_rear"),
        wheel_radius_m: wheel_radius(scenario, chassis.wheelbase_m()),
        tyre_width_front_m: scenario.number("vehicle.tyre_width_front").unwrap_or(0.22),
        tyre_width_rear_m: scenario.number("vehicle.tyre_width_rear").unwrap_or(0.22),
        cg_behind_front_m: chassis.cg_to_front_axle_m(),
        front_motors,
        rear_motors,
        scale,
        scale_bar: Some(voice.scale_bar(&scale)),
        wheels: [front.clone(), front, rear.clone(), rear],
        legend: vec![
            voice.word("figure.motor_split.circle"),
            voice.word("figure.motor_split.arrow"),
        ],
        notes,
        caution: look.caution.then(|| Caution {
            word: voice.word("figure.caution"),
            text: voice.word("caution.motor_split"),
        }),
        ..PlanView::default()
    }))
}

fn track(scenario: &Scenario, path: &str) -> f64 {
    scenario.number(path).unwrap_or(1.6)
}

/// Front share of the load against acceleration, and the shares of torque that like motors can have.
fn chart(scenario: &Scenario, question: &Question, look: &Look) -> Result<Chart, Problem> {
    let voice = Voice::of(look);
    let chassis = &question.rest.chassis;
    let limit = solve(question, Layout::F1R1)?.limit.acceleration_m_s2 / GRAVITY_M_S2;
    let max = [0.5, 1.2, 2.0, 3.0]
        .into_iter()
        .find(|max| limit * 1.05 < *max)
        .unwrap_or(5.0);
    let weight_n = chassis.weight_n();
    let share = |acceleration_g: f64| {
        let level = axlewright_core::vehicle::Slope::from_grade(0.0);
        let air = axlewright_core::vehicle::AirForces::default();
        let acceleration = acceleration_g * GRAVITY_M_S2;
        let loads = axlewright_core::load_transfer::axle_loads(chassis, &air, level, acceleration);
        loads.front_n / weight_n
    };
    let mut lines = vec![Line {
        label: voice.word("figure.motor_split.line_load"),
        points: vec![(0.0, 100.0 * share(0.0)), (max, 100.0 * share(max))],
        role: Role::Ink,
        ..Line::default()
    }];
    let styles = [
        (Role::Front, Dash::Long, Marker::Circle),
        (Role::Rear, Dash::Short, Marker::Square),
        (Role::Tractive, Dash::DashDot, Marker::Triangle),
        (Role::Inertia, Dash::Long, Marker::Diamond),
    ];
    let mut present = Vec::new();
    let mut told = Vec::new();
    for layout in scenario.layouts() {
        let [front, rear] = motors(layout);
        let torque = 100.0 * front_share(front, rear);
        let Some(found) = matched(question, layout) else {
            continue;
        };
        let same = |line: &&mut Line| (line.points[0].1 - torque).abs() < 1e-9;
        // Layouts that share torque alike share a line.
        if let Some(line) = lines.iter_mut().skip(1).find(same) {
            line.label = [&line.label, ", ", layout.name()].concat();
            continue;
        }
        let (role, dash, marker) = styles[(lines.len() - 1) % styles.len()];
        let at = found / GRAVITY_M_S2;
        told.push([layout.name(), " ", &voice.acceleration(found)].concat());
        if (0.0..=max).contains(&at) {
            present.push(ChartPoint {
                x: at,
                y: torque,
                role,
            });
        }
        lines.push(Line {
            label: layout.name().into(),
            points: vec![(0.0, torque), (max, torque)],
            role,
            dash,
            marker,
        });
    }
    Ok(Chart {
        width: look.width,
        height: chart_height(look.width),
        title: voice.word("figure.motor_split.chart_title"),
        subtitle: voice.whose(scenario),
        description: voice.fill(
            "figure.motor_split.chart_describe",
            &[&voice.percent(share(0.0)), &told.join("; ")],
        ),
        x_axis: Axis {
            title: voice.word("figure.axis.acceleration"),
            unit: voice.unit(D::Acceleration),
            min: 0.0,
            max,
        },
        y_axis: Axis {
            title: voice.word("figure.axis.front_share"),
            unit: "%".into(),
            min: 0.0,
            max: 80.0,
        },
        lines,
        present,
        verticals: vec![Vertical {
            x: limit,
            label: voice.word("figure.motor_split.mark_limit"),
        }],
        decimal_mark: look.lang.decimal_mark(),
        ..Chart::default()
    })
}
