//! The slow steady turn from above: friction circle, friction used and sliding velocity of every patch.

use super::moment::speed_scale;
use crate::figure::{
    Caution, ForceScale, PlanView, PlanWheel, Scene, TurningCentre, ValueLabel, YawArrow, plan_view,
};
use crate::motors::motor_turns;
use crate::side::wheel_radius;
use crate::visual::{Look, Voice, body, scale_step};
use axlewright_core::format;
use axlewright_core::layout::Layout;
use axlewright_core::turn_in_place::{
    LayoutAnswer, Question, Spin, Turn, Verdict, course, full_lock, judge, split_turn, wear,
};
use axlewright_core::units::Dimension as D;
use axlewright_core::{Problem, Scenario};

/// Forces and slides of the four patches in a slow turn, forward and to the left; slides per radian.
#[derive(Clone, Copy)]
struct Patches {
    forces_n: [(f64, f64); 4],
    slides_m: [(f64, f64); 4],
    mean_force_n: f64,
    energy_j: f64,
    behind_front_m: f64,
    to_left_m: f64,
    ratio_m: f64,
}

/// The four patches of the turn that is shown; with other friction left and right as it is under each.
fn patches(question: &Question, turn: &Turn) -> Option<Patches> {
    if question.is_split() {
        let split = split_turn(question).ok()?;
        let slide = |at: usize| {
            let [along, across, _] = split.slides_m[at];
            (if at.is_multiple_of(2) { along } else { -along }, across)
        };
        let mean = split
            .forces_n
            .iter()
            .map(|force| force.0.abs())
            .sum::<f64>()
            / 4.0;
        return Some(Patches {
            forces_n: split.forces_n,
            slides_m: [slide(0), slide(1), slide(2), slide(3)],
            mean_force_n: mean,
            energy_j: core::f64::consts::TAU * split.sliding_n_m(),
            behind_front_m: split.centre_behind_front_m,
            to_left_m: split.centre_to_left_m,
            ratio_m: split.speed_ratio_m,
        });
    }
    let behind_m = turn.centre_behind_front_m;
    let slide = |at: usize| {
        let (axle, across_m) = if at < 2 {
            (&question.front, behind_m)
        } else {
            (&question.rear, behind_m - question.chassis.wheelbase_m())
        };
        let along = axle.speed_factor * turn.speed_ratio_m - 0.5 * axle.track_m;
        (if at.is_multiple_of(2) { along } else { -along }, across_m)
    };
    Some(Patches {
        forces_n: [0, 1, 2, 3].map(|at| force(turn, at < 2, at % 2 == 0)),
        slides_m: [0, 1, 2, 3].map(slide),
        mean_force_n: 0.5 * (turn.front_force_n + turn.rear_force_n),
        energy_j: turn.energy_per_turn_j,
        behind_front_m: behind_m,
        to_left_m: 0.0,
        ratio_m: turn.speed_ratio_m,
    })
}

/// The largest circle of friction \[N\].
fn circle_n(question: &Question) -> f64 {
    0.5 * question.front.friction * question.front.load_n.max(question.rear.load_n)
}

pub(super) fn plan(
    scenario: &Scenario,
    question: &Question,
    (room, spin): (bool, Option<&Spin>),
    look: &Look,
) -> Result<Scene, Problem> {
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
    // The pinned circles are drawn to the same scale, so they must have room too.
    let pinned = look
        .pinned
        .and_then(|pinned| Question::from_scenario(pinned).ok());
    let largest_n = pinned
        .iter()
        .map(circle_n)
        .fold(circle_n(question), f64::max);
    let scale = ForceScale::fit_plan(scale_step(largest_n), look.width);
    let shown = answer.turn.unwrap_or(turn);
    let patches = patches(question, &shown);
    let yaw_rad_s = spin.map_or(1.0, |spin| spin.yaw_rate_rad_s);
    let title = match (
        answer.verdict.feasible(),
        wheel_torque(voice, question, &shown),
    ) {
        (true, Some(torque)) => voice.fill("figure.turn_in_place.title_torque", &[&torque]),
        (true, None) => voice.word("figure.turn_in_place.title"),
        _ => voice.fill("figure.turn_in_place.title_cannot", &[layout.name()]),
    };
    let ghost = pinned.as_ref().and_then(patches_of);
    let wheels = match &patches {
        Some(patches) if turns => wheels(question, patches, ghost.as_ref(), yaw_rad_s),
        _ => [(); 4].map(|()| PlanWheel::default()),
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
        tyre_width_front_m: question.tyre_widths_m[0],
        tyre_width_rear_m: question.tyre_widths_m[1],
        cg_behind_front_m: chassis.cg_to_front_axle_m(),
        heading_rad: 0.0,
        // The same room as while it turns, so that nothing jumps when it begins to.
        turning_room: room,
        front_motors: layout.front().motors(),
        rear_motors: layout.rear().motors(),
        scale,
        scale_bar: Some(voice.scale_bar(&scale)).filter(|_| turns),
        m_s_per_unit: speed_scale(
            question,
            patches.map_or(shown.speed_ratio_m, |patches| patches.ratio_m),
            yaw_rad_s,
            look.width,
        ),
        wheels,
        yaw: turns.then(|| YawArrow {
            anticlockwise: true,
            label: ValueLabel {
                value: String::new(),
                words: String::new(),
            },
        }),
        turning_centre: patches.filter(|_| turns).map(|patches| TurningCentre {
            forward_m: chassis.cg_to_front_axle_m() - patches.behind_front_m,
            left_m: patches.to_left_m,
            label: voice.word("figure.turn_in_place.centre"),
        }),
        path_m: Vec::new(),
        traces_m: Vec::new(),
        legend: if turns {
            vec![
                voice.word("figure.turn_in_place.circle"),
                voice.word("figure.turn_in_place.arrow"),
                voice.word("figure.turn_in_place.slide"),
            ]
        } else {
            vec![reason]
        },
        notes: notes(
            voice,
            question,
            (layout, &answer),
            patches.filter(|_| turns),
            spin,
        ),
        caution: look.caution.then(|| Caution {
            word: voice.word("figure.caution"),
            text: voice.word("caution.turn_in_place"),
        }),
        reach_aside_m: 0.0,
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

fn patches_of(question: &Question) -> Option<Patches> {
    patches(question, &question.four_wheel_turn().ok()?)
}

/// Front left, front right, rear left, rear right: friction circle, friction used, sliding velocity.
fn wheels(
    question: &Question,
    shown: &Patches,
    ghost: Option<&Patches>,
    yaw_rad_s: f64,
) -> [PlanWheel; 4] {
    [0, 1, 2, 3].map(|at| {
        let axle = if at < 2 {
            &question.front
        } else {
            &question.rear
        };
        let side = question.sides[at % 2] / question.friction;
        let (along_m, across_m) = shown.slides_m[at];
        PlanWheel {
            friction_n: Some(0.5 * axle.friction * side * axle.load_n),
            force_n: Some(shown.forces_n[at]),
            ghost_n: ghost.map(|ghost| ghost.forces_n[at]),
            sliding_m_s: Some((along_m * yaw_rad_s, across_m * yaw_rad_s)),
            ..PlanWheel::default()
        }
    })
}

/// Share of the friction that the mean tractive force is.
fn share(question: &Question, mean_force_n: f64) -> f64 {
    let grip_n = question.front.friction * question.front.load_n
        + question.rear.friction * question.rear.load_n;
    4.0 * mean_force_n / grip_n
}

fn notes(
    voice: Voice,
    question: &Question,
    (layout, answer): (Layout, &LayoutAnswer),
    patches: Option<Patches>,
    spin: Option<&Spin>,
) -> Vec<ValueLabel> {
    let label = |value: String, words: String| ValueLabel { value, words };
    let said = |value: String, key: &str| label(value, voice.word(key));
    let moment = |value: f64| voice.quantity(value, D::Torque, 4);
    let metres = |value: f64| format::with_unit(voice.fixed(value, 2), "m");
    if let Some((drives_n_m, holds_n_m)) = answer.pair_moments_n_m {
        let mut notes = vec![
            said(moment(drives_n_m), "figure.turn_in_place.note_drives"),
            said(moment(holds_n_m), "figure.turn_in_place.note_holds"),
        ];
        if let Some(lock) = full_lock(question, layout).filter(|lock| !lock.in_place) {
            let radius = metres(lock.sweep_radius_m);
            notes.push(said(radius, "figure.turn_in_place.note_lock"));
        }
        return notes;
    }
    let Some(patches) = patches else {
        return Vec::new();
    };
    let used = voice.percent(share(question, patches.mean_force_n));
    let mut notes = vec![said(used, "figure.turn_in_place.note_share")];
    if let Some(radius_m) = question.wheel_radius_m {
        let words = match question.motor_wheel_torque_n_m {
            Some(has) => voice.fill("figure.turn_in_place.note_torque", &[&moment(has)]),
            None => voice.word("figure.turn_in_place.note_torque_alone"),
        };
        notes.push(label(moment(radius_m * patches.mean_force_n), words));
    }
    let energy = voice.quantity(patches.energy_j, D::Energy, 3);
    notes.push(said(energy, "figure.turn_in_place.note_energy"));
    let tread = |coefficient: f64, digits: u8| {
        let worn_kg = wear::worn_kg(coefficient, patches.energy_j);
        voice.quantity(worn_kg, D::WornMass, digits)
    };
    let assumed = question
        .wear_m3_j
        .unwrap_or_else(|| wear::calibrated().coefficient_m3_j);
    let (least, most) = wear::RANGE_M3_J;
    notes.push(label(
        tread(assumed, 2),
        voice.fill(
            "figure.turn_in_place.note_tread",
            &[&tread(least, 1), &tread(most, 1)],
        ),
    ));
    let full_turn = spin.and_then(|spin| course(spin).run.marks[2]);
    if let Some(mark) = full_turn {
        let time = format::with_unit(voice.fixed(mark.time_s, 1), "s");
        notes.push(said(time, "figure.turn_in_place.note_full_turn"));
    }
    if question.is_split() {
        let left = metres(patches.to_left_m);
        notes.push(said(left, "figure.turn_in_place.note_left"));
    } else if let Some(drift_m) = answer
        .turn
        .and_then(|turn| question.drift_per_turn_m(&turn))
    {
        notes.push(said(metres(drift_m), "figure.turn_in_place.note_drift"));
    }
    notes
}

/// What a motor gives at its wheel, where the wheel's radius is known.
fn wheel_torque(voice: Voice, question: &Question, turn: &Turn) -> Option<String> {
    let force_n = 0.5 * (turn.front_force_n + turn.rear_force_n);
    let radius_m = question.wheel_radius_m?;
    Some(voice.quantity(radius_m * force_n, D::Torque, 4))
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
    let torque = wheel_torque(voice, question, turn).unwrap_or_default();
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
