//! Weight transfer under acceleration: side view and chart.

use crate::figure::{
    Axis, Chart, ChartPoint, Dash, GhostLoads, Line, Role, Scene, SideView, Vertical, WIDE,
    side_view,
};
use crate::side::SideState;
use crate::visual::{Drawing, Look, View, Visual, Voice, scale_step};
use axlewright_core::load_transfer::{Answer, Question, TOPIC, axle_loads, solve};
use axlewright_core::units::Dimension as D;
use axlewright_core::{GRAVITY_M_S2, Problem, Scenario, format};

/// The looks of the topic.
pub const VISUAL: Visual = Visual {
    views: &[View::Side, View::Chart],
    ..Visual::of_topic(&TOPIC, draw)
};

/// How many times larger than it is the squat is drawn.
const SQUAT_DRAWN: f64 = 3.0;

fn draw(scenario: &Scenario, view: View, look: &Look) -> Result<Drawing, Problem> {
    let question = Question::from_scenario(scenario)?;
    let answer = solve(&question)?;
    Ok(match view {
        View::Chart => Drawing::Chart(chart(scenario, &question, &answer, look)),
        _ => Drawing::Scene(side(scenario, &question, &answer, look)),
    })
}

/// The finding in one sentence.
fn title(voice: Voice, question: &Question, answer: &Answer) -> String {
    let acceleration = question.acceleration_m_s2;
    let loads = answer.loads;
    let (key, ratio) = if acceleration < 0.0 {
        (
            "figure.load_transfer.title_braking",
            loads.front_n / loads.rear_n,
        )
    } else if acceleration > 0.0 {
        ("figure.load_transfer.title", loads.rear_n / loads.front_n)
    } else {
        (
            "figure.load_transfer.title_steady",
            loads.rear_n / loads.front_n,
        )
    };
    voice.fill(
        key,
        &[
            &voice.acceleration(acceleration.abs()),
            &format::significant(ratio, 3, voice.lang),
        ],
    )
}

fn side(scenario: &Scenario, question: &Question, answer: &Answer, look: &Look) -> Scene {
    let voice = Voice::of(look);
    let chassis = &question.chassis;
    let loads = answer.loads;
    let weight_n = chassis.weight_n();
    // Tractive force in proportion to load: every axle uses the same friction.
    let needed_n = chassis.mass_kg() * question.acceleration_m_s2
        + question.air.drag_n
        + weight_n * question.slope.sin;
    let total_n = loads.front_n + loads.rear_n;
    let state = SideState {
        scenario,
        chassis,
        air: &question.air,
        slope: question.slope,
        acceleration_m_s2: question.acceleration_m_s2,
        loads,
        forces_n: (
            needed_n * loads.front_n / total_n,
            needed_n * loads.rear_n / total_n,
        ),
    };
    let mut subtitle = voice.whose(scenario);
    if answer.squat.is_some_and(|squat| squat.pitch_rad != 0.0) {
        let times = voice.fixed(SQUAT_DRAWN, 0);
        subtitle = format!("{} {subtitle}", voice.fill("figure.squat", &[&times]));
    }
    let description = voice.fill(
        "figure.load_transfer.describe",
        &[
            &voice.force(loads.front_n),
            &voice.force(loads.rear_n),
            &voice.force(state.inertia_n()),
            &voice.quantity(chassis.cg_height_m(), D::Length, 3),
        ],
    );
    side_view(&SideView {
        title: title(voice, question, answer),
        subtitle,
        description,
        ghost: look.pinned.and_then(ghost),
        pitch_rad: answer.squat.map_or(0.0, |squat| -squat.pitch_rad),
        pitch_exaggeration: SQUAT_DRAWN,
        inertia_input: Some(("load_transfer.acceleration", chassis.mass_kg())),
        ..state.view(look)
    })
}

fn ghost(pinned: &Scenario) -> Option<GhostLoads> {
    let answer = solve(&Question::from_scenario(pinned).ok()?).ok()?;
    Some(GhostLoads {
        front_n: answer.loads.front_n,
        rear_n: answer.loads.rear_n,
    })
}

/// Axle loads against acceleration, from rest or hard braking up to the lift of an axle.
fn chart(scenario: &Scenario, question: &Question, answer: &Answer, look: &Look) -> Chart {
    let voice = Voice::of(look);
    let present_g = question.acceleration_m_s2 / GRAVITY_M_S2;
    let lift_g = answer
        .front_lift_acceleration_m_s2
        .map(|a| a / GRAVITY_M_S2);
    let min = if present_g < 0.0 {
        -1.0_f64.max(-present_g * 1.2)
    } else {
        0.0
    };
    let max = 1.2_f64
        .max(present_g * 1.15)
        .min(lift_g.unwrap_or(f64::INFINITY));
    let force = |value: f64| voice.in_unit(value, D::Force);
    let loads_at = |acceleration_g: f64| {
        let acceleration = acceleration_g * GRAVITY_M_S2;
        axle_loads(
            &question.chassis,
            &question.air,
            question.slope,
            acceleration,
        )
    };
    let line =
        |pick: fn(&axlewright_core::load_transfer::AxleLoads) -> f64, key: &str, role, dash| Line {
            label: voice.word(key),
            points: [min, max].map(|g| (g, force(pick(&loads_at(g))))).to_vec(),
            role,
            dash,
            ..Line::default()
        };
    let point = |g: f64, load_n: f64, role| ChartPoint {
        x: g,
        y: force(load_n),
        role,
    };
    let pinned = look
        .pinned
        .and_then(|p| Some((p.number("load_transfer.acceleration")?, ghost(p)?)))
        .map_or_else(Vec::new, |(acceleration, loads)| {
            let g = acceleration / GRAVITY_M_S2;
            vec![
                point(g, loads.front_n, Role::Front),
                point(g, loads.rear_n, Role::Rear),
            ]
        });
    let two_g = answer
        .two_to_one_acceleration_m_s2
        .map(|a| a / GRAVITY_M_S2);
    let mut verticals = Vec::new();
    for (at, key) in [
        (two_g, "figure.mark.two_to_one"),
        (lift_g, "figure.mark.front_lift"),
    ] {
        if let Some(x) = at.filter(|x| min < *x && *x <= max) {
            verticals.push(Vertical {
                x,
                label: voice.word(key),
            });
        }
    }
    let say = |a: Option<f64>| a.map_or_else(String::new, |a| voice.acceleration(a));
    Chart {
        width: look.width,
        height: chart_height(look.width),
        title: voice.word("figure.load_transfer.chart_title"),
        subtitle: voice.whose(scenario),
        description: voice.fill(
            "figure.load_transfer.chart_describe",
            &[
                &voice.acceleration(question.acceleration_m_s2),
                &voice.force(answer.loads.front_n),
                &voice.force(answer.loads.rear_n),
                &say(answer.two_to_one_acceleration_m_s2),
                &say(answer.front_lift_acceleration_m_s2),
            ],
        ),
        x_axis: Axis {
            title: voice.word("figure.axis.acceleration"),
            unit: voice.unit(D::Acceleration),
            min,
            max,
        },
        y_axis: Axis {
            title: voice.word("figure.axis.axle_load"),
            unit: voice.unit(D::Force),
            min: 0.0,
            max: force(scale_step(1.05 * question.chassis.weight_n())),
        },
        lines: vec![
            line(
                |loads| loads.front_n,
                "figure.line.front",
                Role::Front,
                Dash::Solid,
            ),
            line(
                |loads| loads.rear_n,
                "figure.line.rear",
                Role::Rear,
                Dash::Long,
            ),
        ],
        present: vec![
            point(present_g, answer.loads.front_n, Role::Front),
            point(present_g, answer.loads.rear_n, Role::Rear),
        ],
        pinned,
        verticals,
        names: Vec::new(),
        decimal_mark: look.lang.decimal_mark(),
        x_input: Some("load_transfer.acceleration"),
    }
}

/// Height of a chart of a width.
pub(crate) fn chart_height(width: f64) -> f64 {
    if width >= WIDE { 380.0 } else { 280.0 }
}
