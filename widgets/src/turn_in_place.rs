//! Turning in place: plan view with the friction of every patch, and a chart of torque against
//! friction.

use crate::figure::{
    Axis, Caution, Chart, ChartPoint, Dash, ForceScale, Line, PlanView, PlanWheel, Role, Scene,
    TurningCentre, ValueLabel, Vertical, YawArrow, plan_view,
};
use crate::load_transfer::chart_height;
use crate::motors::motor_turns;
use crate::side::wheel_radius;
use crate::visual::{Drawing, Look, View, Visual, Voice, body, scale_step};
use axlewright_core::layout::Layout;
use axlewright_core::surface::{SURFACES, Surface};
use axlewright_core::turn_in_place::{LayoutAnswer, Question, TOPIC, Turn, Verdict, judge};
use axlewright_core::units::Dimension as D;
use axlewright_core::{Problem, Scenario};

/// The looks of the topic.
pub const VISUAL: Visual = Visual {
    views: &[View::Plan, View::Chart],
    ..Visual::of_topic(&TOPIC, draw)
};

fn draw(scenario: &Scenario, view: View, look: &Look) -> Result<Drawing, Problem> {
    let question = Question::from_scenario(scenario)?;
    Ok(match view {
        View::Chart => Drawing::Chart(chart(scenario, &question, look)?),
        View::Side | View::Plan => Drawing::Scene(plan(scenario, &question, look)?),
    })
}

fn plan(scenario: &Scenario, question: &Question, look: &Look) -> Result<Scene, Problem> {
    let voice = Voice::of(look);
    let layout = scenario.layout();
    let answer = judge(question, layout);
    let turn = question.four_wheel_turn()?;
    let turns = matches!(
        answer.verdict,
        Verdict::Feasible | Verdict::FeasibleTorqueUnknown | Verdict::TorqueTooSmall
    );
    let chassis = &question.chassis;
    let reason = voice.word(&format!("reason.{}", answer.verdict.word()));
    let largest_n = 0.5 * question.front.friction * question.front.load_n.max(question.rear.load_n);
    let scale = ForceScale::fit_plan(scale_step(largest_n), look.width);
    let shown = answer.turn.unwrap_or(turn);
    let title = if answer.verdict.feasible() {
        voice.word("figure.turn_in_place.title")
    } else {
        voice.fill("figure.turn_in_place.title_cannot", &[layout.name()])
    };
    let ghost = look.pinned.and_then(|pinned| {
        let question = Question::from_scenario(pinned).ok()?;
        question.four_wheel_turn().ok()
    });
    let wheels = if turns {
        wheels(question, &shown, ghost.as_ref())
    } else {
        [(); 4].map(|()| PlanWheel::default())
    };
    Ok(plan_view(&PlanView {
        width: look.width,
        title,
        subtitle: voice.whose(scenario),
        description: describe(voice, question, layout, &answer, &shown, &reason),
        body: body(scenario),
        wheelbase_m: chassis.wheelbase_m(),
        track_front_m: question.front.track_m,
        track_rear_m: question.rear.track_m,
        wheel_radius_m: wheel_radius(scenario, chassis.wheelbase_m()),
        tyre_width_front_m: scenario.number("vehicle.tyre_width_front").unwrap_or(0.22),
        tyre_width_rear_m: scenario.number("vehicle.tyre_width_rear").unwrap_or(0.22),
        cg_behind_front_m: chassis.cg_to_front_axle_m(),
        heading_rad: 0.0,
        turning_room: false,
        front_motors: layout.front().motors(),
        rear_motors: layout.rear().motors(),
        scale,
        scale_bar: Some(voice.scale_bar(&scale)).filter(|_| turns),
        m_s_per_unit: 0.0,
        wheels,
        yaw: turns.then(|| YawArrow {
            anticlockwise: true,
            label: ValueLabel {
                value: String::new(),
                words: String::new(),
            },
        }),
        turning_centre: turns.then(|| TurningCentre {
            forward_m: chassis.cg_to_front_axle_m() - shown.centre_behind_front_m,
            left_m: 0.0,
            label: voice.word("figure.turn_in_place.centre"),
        }),
        path_m: Vec::new(),
        legend: if turns {
            vec![
                voice.word("figure.turn_in_place.circle"),
                voice.word("figure.turn_in_place.arrow"),
            ]
        } else {
            vec![reason]
        },
        notes: notes(voice, question, &answer, &shown, turns),
        caution: look.caution.then(|| Caution {
            word: voice.word("figure.caution"),
            text: voice.word("caution.turn_in_place"),
        }),
        motor_turns: Some(motor_turns(voice, layout)),
    }))
}

/// The friction that a wheel uses, along and to the left of the car.
fn force(turn: &Turn, front: bool, left: bool) -> (f64, f64) {
    let (along_n, lateral_n) = if front {
        (turn.front_force_n, turn.front_lateral_n)
    } else {
        (turn.rear_force_n, turn.rear_lateral_n)
    };
    (if left { -along_n } else { along_n }, lateral_n)
}

/// Front left, front right, rear left, rear right: friction circle and the friction used.
fn wheels(question: &Question, turn: &Turn, ghost: Option<&Turn>) -> [PlanWheel; 4] {
    let wheel = |front: bool, left: bool| {
        let axle = if front {
            &question.front
        } else {
            &question.rear
        };
        PlanWheel {
            friction_n: Some(0.5 * axle.friction * axle.load_n),
            force_n: Some(force(turn, front, left)),
            ghost_n: ghost.map(|ghost| force(ghost, front, left)),
            ..PlanWheel::default()
        }
    };
    [
        wheel(true, true),
        wheel(true, false),
        wheel(false, true),
        wheel(false, false),
    ]
}

/// Mean tractive force per wheel and the share of the friction that it is.
fn mean(question: &Question, turn: &Turn) -> (f64, f64) {
    let force_n = 0.5 * (turn.front_force_n + turn.rear_force_n);
    let grip_n = question.front.friction * question.front.load_n
        + question.rear.friction * question.rear.load_n;
    (force_n, 4.0 * force_n / grip_n)
}

fn notes(
    voice: Voice,
    question: &Question,
    answer: &LayoutAnswer,
    turn: &Turn,
    turns: bool,
) -> Vec<ValueLabel> {
    let label = |value: String, words: String| ValueLabel { value, words };
    let moment = |value: f64| voice.quantity(value, D::Torque, 4);
    if let Some((drives_n_m, holds_n_m)) = answer.pair_moments_n_m {
        return vec![
            label(
                moment(drives_n_m),
                voice.word("figure.turn_in_place.note_drives"),
            ),
            label(
                moment(holds_n_m),
                voice.word("figure.turn_in_place.note_holds"),
            ),
        ];
    }
    if !turns {
        return Vec::new();
    }
    let (force_n, share) = mean(question, turn);
    let mut notes = vec![label(
        voice.percent(share),
        voice.word("figure.turn_in_place.note_share"),
    )];
    if let Some(radius_m) = question.wheel_radius_m {
        let words = match question.motor_wheel_torque_n_m {
            Some(has) => voice.fill("figure.turn_in_place.note_torque", &[&moment(has)]),
            None => voice.word("figure.turn_in_place.note_torque_alone"),
        };
        notes.push(label(moment(radius_m * force_n), words));
    }
    notes.push(label(
        voice.quantity(turn.energy_per_turn_j, D::Energy, 3),
        voice.word("figure.turn_in_place.note_energy"),
    ));
    notes
}

fn describe(
    voice: Voice,
    question: &Question,
    layout: Layout,
    answer: &LayoutAnswer,
    turn: &Turn,
    reason: &str,
) -> String {
    if !answer.verdict.feasible() {
        return voice.fill(
            "figure.turn_in_place.describe_cannot",
            &[layout.name(), reason],
        );
    }
    let (force_n, _) = mean(question, turn);
    let torque = question
        .wheel_radius_m
        .map_or_else(String::new, |radius_m| {
            voice.quantity(radius_m * force_n, D::Torque, 4)
        });
    voice.fill(
        "figure.turn_in_place.describe",
        &[
            &voice.force(turn.front_force_n),
            &voice.force(turn.rear_force_n),
            &torque,
            &voice.quantity(turn.energy_per_turn_j, D::Energy, 3),
        ],
    )
}

/// Torque at a wheel against sliding friction; both are in proportion, so two points make the line.
fn chart(scenario: &Scenario, question: &Question, look: &Look) -> Result<Chart, Problem> {
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
        decimal_mark: look.lang.decimal_mark(),
        x_input: Some("surface.friction_sliding"),
    })
}
