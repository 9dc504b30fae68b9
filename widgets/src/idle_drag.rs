//! What an idle motor costs: the car from above with the motors that drive and those that only turn
//! along, the consumption of each layout, and charts of the losses, the best split and the cycle.

mod chart;

use crate::figure::{
    BarReference, BarRow, Bars, Caution, ForceScale, PlanView, PlanWheel, Rest, Role, Scene,
    ValueLabel, bars, plan_view,
};
use crate::motors::motor_turns;
use crate::side::wheel_radius;
use crate::visual::{Drawing, Look, View, Visual, Voice, body, scale_step};
use axlewright_core::idle_drag::split::{Split, changes};
use axlewright_core::idle_drag::{Demand, Question, TOPIC, Tally, counts, course, primary};
use axlewright_core::layout::Layout;
use axlewright_core::units::Dimension as D;
use axlewright_core::{GRAVITY_M_S2, Problem, Scenario};

/// The looks of the topic.
pub const VISUAL: Visual = Visual {
    views: &[View::Plan, View::Bars, View::Chart],
    table: axlewright_core::idle_drag::COLUMNS,
    ..Visual::of_topic(&TOPIC, draw)
};

fn draw(scenario: &Scenario, view: View, look: &Look) -> Result<Drawing, Problem> {
    let question = Question::from_scenario(scenario)?;
    Ok(match view {
        View::Chart => Drawing::Chart(chart::chart(scenario, &question, look)),
        View::Bars => Drawing::Scene(rows(scenario, &question, look)),
        _ => Drawing::Scene(plan(scenario, &question, look)),
    })
}

/// Force at the wheels from which both axles drive; none where they never do.
fn both_from_n(question: &Question, demand: &Demand) -> Option<f64> {
    let changes = changes(&demand.axles);
    let both = changes.iter().find(|(_, running)| *running == [true; 2]);
    both.map(|(torque, _)| question.pull_n(*torque))
}

/// The finding in one sentence.
fn title(voice: Voice, layout: Layout, demand: &Demand, split: Option<&Split>) -> String {
    let speed = voice.quantity(demand.speed_m_s, D::Speed, 3);
    let begin = [layout.name(), &speed];
    let told = |key: &str, more: &[&str]| voice.fill(key, &[&begin[..], more].concat());
    let Some(split) = split else {
        return told("figure.idle_drag.title_weak", &[]);
    };
    let loss = voice.quantity(split.loss_w, D::Power, 3);
    let counts = counts(layout);
    let idle_w: f64 = [0, 1]
        .into_iter()
        .filter(|at| split.torques_n_m[*at] == 0.0)
        .map(|at| demand.axles[at].idle_w)
        .sum();
    let idle = voice.quantity(idle_w, D::Power, 2);
    if split.total_n_m() == 0.0 {
        told("figure.idle_drag.title_none", &[&loss])
    } else if counts[0] == 0.0 || counts[1] == 0.0 {
        told("figure.idle_drag.title_single", &[&loss])
    } else if split.is_both() {
        let share = voice.percent(split.torques_n_m[0] / split.total_n_m());
        told("figure.idle_drag.title_both", &[&share, &loss])
    } else if split.torques_n_m[0] > 0.0 {
        told("figure.idle_drag.title_front", &[&idle])
    } else {
        told("figure.idle_drag.title_rear", &[&idle])
    }
}

fn plan(scenario: &Scenario, question: &Question, look: &Look) -> Scene {
    let voice = Voice::of(look);
    let layout = scenario.layout();
    let [front_motors, rear_motors] = [layout.front().motors(), layout.rear().motors()];
    let demand = question.demand(layout, question.speed_m_s, question.acceleration_m_s2);
    let split = question.best(&demand);
    let braking = demand.force_n < 0.0;
    // What the wheels of an axle push with; braking, what they give to the gears.
    let axle_n = |at: usize| {
        let torque = split.as_ref().map_or(0.0, |split| split.torques_n_m[at]);
        if braking {
            let gears = question.gear_efficiency * question.gear_efficiency;
            -question.pull_n(torque) / gears
        } else {
            question.pull_n(torque)
        }
    };
    let rest = [0, 1].map(|at| match &split {
        Some(split) if split.torques_n_m[at] > 0.0 => Rest::Drives,
        _ if question.disconnect[at] => Rest::Parted,
        _ => Rest::Idles,
    });
    let wheel = |at: usize| {
        let force_n = 0.5 * axle_n(at);
        PlanWheel {
            force_n: (force_n != 0.0).then_some((force_n, 0.0)),
            rest: rest[at],
            ..PlanWheel::default()
        }
    };
    let weight_n = question.mass_kg * GRAVITY_M_S2;
    let largest_n = (0.5 * axle_n(0).abs().max(axle_n(1).abs())).max(0.05 * weight_n);
    let scale = ForceScale::fit_plan(scale_step(largest_n), look.width);
    let wheelbase_m = scenario.number("vehicle.wheelbase").unwrap_or(2.8);
    let or = |path, otherwise: f64| scenario.number(path).unwrap_or(otherwise);
    let title = title(voice, layout, &demand, split.as_ref());
    let notes = notes(voice, question, layout, &demand, split.as_ref());
    let told: Vec<String> = notes
        .iter()
        .map(|note| [&note.words, ": ", &note.value].concat())
        .collect();
    plan_view(&PlanView {
        motor_turns: Some(motor_turns(voice, layout)),
        width: look.width,
        title,
        subtitle: voice.whose(scenario),
        description: voice.fill("figure.idle_drag.describe", &[&told.join("; ")]),
        body: body(scenario),
        wheelbase_m,
        track_front_m: or("vehicle.track_front", 1.6),
        track_rear_m: or("vehicle.track_rear", 1.6),
        wheel_radius_m: wheel_radius(scenario, wheelbase_m),
        tyre_width_front_m: or("vehicle.tyre_width_front", 0.22),
        tyre_width_rear_m: or("vehicle.tyre_width_rear", 0.22),
        cg_behind_front_m: or("vehicle.cg_to_front_axle", 0.5 * wheelbase_m),
        front_motors,
        rear_motors,
        scale,
        scale_bar: Some(voice.scale_bar(&scale)),
        wheels: [wheel(0), wheel(0), wheel(1), wheel(1)],
        legend: vec![voice.word("figure.idle_drag.legend")],
        notes,
        caution: look.caution.then(|| Caution {
            word: voice.word("figure.caution"),
            text: voice.word("caution.idle_drag"),
        }),
        ..PlanView::default()
    })
}

/// What each axle does and loses, and from where on both drive.
fn notes(
    voice: Voice,
    question: &Question,
    layout: Layout,
    demand: &Demand,
    split: Option<&Split>,
) -> Vec<ValueLabel> {
    let note = |value: String, key: &str| ValueLabel {
        value,
        words: voice.word(key),
    };
    let mut notes = vec![note(
        voice.force(demand.force_n),
        "figure.idle_drag.note_force",
    )];
    let keys = [
        [
            "figure.idle_drag.note_front_drives",
            "figure.idle_drag.note_front_idles",
            "figure.idle_drag.note_front_parted",
        ],
        [
            "figure.idle_drag.note_rear_drives",
            "figure.idle_drag.note_rear_idles",
            "figure.idle_drag.note_rear_parted",
        ],
    ];
    if let Some(split) = split {
        for (at, axle) in demand.axles.iter().enumerate() {
            if counts(layout)[at] == 0.0 {
                continue;
            }
            let torque = split.torques_n_m[at];
            let [drives, idles, parted] = keys[at];
            let lost = voice.quantity(axle.loss_w(torque), D::Power, 3);
            if torque > 0.0 {
                let torque = voice.quantity(torque, D::Torque, 3);
                notes.push(ValueLabel {
                    value: lost,
                    words: voice.fill(drives, &[&torque]),
                });
            } else if question.disconnect[at] {
                notes.push(note(lost, parted));
            } else {
                notes.push(note(lost, idles));
            }
        }
    }
    if let Some(force_n) = both_from_n(question, demand).filter(|force_n| *force_n > 0.0) {
        notes.push(note(voice.force(force_n), "figure.idle_drag.note_both"));
    }
    notes
}

/// Why a layout takes what it takes.
fn reason(voice: Voice, question: &Question, layout: Layout, tally: &Tally) -> String {
    let who = voice.word(&["reason.", primary(layout, tally)].concat());
    let idle = tally.idle_j / tally.distance_m;
    let idle = voice.quantity(idle, D::EnergyPerDistance, 2);
    let told = voice.fill("figure.idle_drag.bars_reason", &[&who, &idle]);
    match question.range_m(tally) {
        Some(range) => {
            let range = voice.quantity(range, D::Distance, 3);
            [&range, ". ", &told].concat()
        }
        None => told,
    }
}

fn rows(scenario: &Scenario, question: &Question, look: &Look) -> Scene {
    let voice = Voice::of(look);
    let ghost = look.pinned.and_then(|p| Question::from_scenario(p).ok());
    let per = |value: f64| voice.in_unit(value, D::EnergyPerDistance);
    let mut rows = Vec::new();
    let mut told = Vec::new();
    let mut most: f64 = 0.0;
    let mut road = None;
    let mut ends: [Option<(Layout, f64)>; 2] = [None; 2];
    for layout in scenario.layouts() {
        let best = course(question, layout).map(|drive| drive.best);
        let (value, value_text, reason) = match &best {
            Some(best) => {
                let value = best.per_distance();
                road = Some(best.road_j / best.distance_m);
                for (end, better) in ends
                    .iter_mut()
                    .zip([f64::lt as fn(&f64, &f64) -> bool, f64::gt])
                {
                    if end.is_none_or(|(_, now)| better(&value, &now)) {
                        *end = Some((layout, value));
                    }
                }
                let text = voice.quantity(value, D::EnergyPerDistance, 3);
                (per(value), text, reason(voice, question, layout, best))
            }
            None => (0.0, "–".into(), voice.word("figure.idle_drag.bars_weak")),
        };
        most = most.max(value);
        told.push([layout.name(), " ", &value_text, ", ", &reason].concat());
        rows.push(BarRow {
            name: layout.name().into(),
            front_motors: layout.front().motors(),
            rear_motors: layout.rear().motors(),
            value: value.max(0.0),
            value_text,
            reason,
            pinned: ghost
                .as_ref()
                .and_then(|pinned| course(pinned, layout))
                .map(|drive| per(drive.best.per_distance()).max(0.0)),
            chosen: layout == scenario.layout(),
            choice: Some(("layout", layout.name())),
        });
    }
    let title = match ends {
        [Some((least, low)), Some((worst, high))] if high > 1.005 * low => voice.fill(
            "figure.idle_drag.bars_title",
            &[
                least.name(),
                &voice.quantity(low, D::EnergyPerDistance, 3),
                worst.name(),
                &voice.quantity(high, D::EnergyPerDistance, 3),
            ],
        ),
        _ => voice.word("figure.idle_drag.bars_title_plain"),
    };
    // A few fixed lengths of the axis, so that bars are seen to grow while a slider moves.
    let axis_max = [50.0, 100.0, 150.0, 200.0, 300.0, 500.0, 1000.0]
        .into_iter()
        .find(|max| *max >= most * 1.02)
        .unwrap_or(most * 1.1);
    let road = road.filter(|road| *road > 0.0);
    bars(&Bars {
        width: look.width,
        title,
        subtitle: [
            &chart::cycle_text(voice, question),
            " ",
            &voice.whose(scenario),
        ]
        .concat(),
        description: voice.fill("figure.idle_drag.bars_describe", &[&told.join("; ")]),
        body: body(scenario),
        axis_title: [
            voice.word("figure.idle_drag.axis_energy").as_str(),
            ", ",
            &voice.unit(D::EnergyPerDistance),
        ]
        .concat(),
        axis_max,
        decimal_mark: look.lang.decimal_mark(),
        role: Role::Tractive,
        rows,
        references: road
            .map(|road| BarReference {
                value: per(road),
                label: voice.fill(
                    "figure.idle_drag.bars_road",
                    &[&voice.quantity(road, D::EnergyPerDistance, 3)],
                ),
            })
            .into_iter()
            .collect(),
        caution: look.caution.then(|| Caution {
            word: voice.word("figure.caution"),
            text: voice.word("caution.idle_drag"),
        }),
    })
}
