//! The torque that a turn in place takes on each surface, beside what a motor gives.

use crate::figure::{BarReference, BarRow, Bars, Caution, Role, Scene, bars};
use crate::visual::{Look, Voice, body, scale_step};
use axlewright_core::turn_in_place::{Question, on_surfaces};
use axlewright_core::units::Dimension as D;
use axlewright_core::{Problem, Scenario};

pub(super) fn surfaces(
    scenario: &Scenario,
    question: &Question,
    look: &Look,
) -> Result<Scene, Problem> {
    let voice = Voice::of(look);
    let layout = scenario.layout();
    let radius_m = scenario.require("vehicle.wheel_radius")?;
    let rows = on_surfaces(question, layout)?;
    let short = |name: &str| voice.word(&["surface.short.", name].concat());
    let torque = |value: f64| voice.quantity(value, D::Torque, 4);
    let ghosts = look.pinned.and_then(|pinned| {
        let question = Question::from_scenario(pinned).ok()?;
        let rows = on_surfaces(&question, pinned.layout()).ok()?;
        Some((question.wheel_radius_m?, rows))
    });
    let chosen = scenario.word("surface.kind");
    let mut told = Vec::new();
    let mut most_n_m = question.motor_wheel_torque_n_m.unwrap_or(0.0);
    let mut list = Vec::new();
    for (at, row) in rows.iter().enumerate() {
        let needed_n_m = radius_m * row.mean_force_n;
        most_n_m = most_n_m.max(needed_n_m);
        let energy = voice.quantity(row.energy_j, D::Energy, 3);
        let reason = voice.fill(
            if row.feasible {
                "figure.turn_in_place.surface_yes"
            } else {
                "figure.turn_in_place.surface_no"
            },
            &[&energy],
        );
        let name = short(row.name);
        told.push([name.as_str(), " ", &torque(needed_n_m), ", ", &reason].concat());
        list.push(BarRow {
            name,
            front_motors: layout.front().motors(),
            rear_motors: layout.rear().motors(),
            value: voice.in_unit(needed_n_m, D::Torque),
            value_text: torque(needed_n_m),
            reason,
            pinned: ghosts
                .as_ref()
                .and_then(|(radius, rows)| Some(radius * rows.get(at)?.mean_force_n))
                .map(|value| voice.in_unit(value, D::Torque)),
            chosen: chosen == Some(row.name),
            choice: Some(("surface.kind", row.name)),
        });
    }
    let ends =
        [rows.first(), rows.last()].map(|row| row.map_or(("", 1.0), |r| (r.name, r.mean_force_n)));
    let axis_max = voice.in_unit(scale_step(1.02 * most_n_m), D::Torque);
    Ok(bars(&Bars {
        width: look.width,
        title: voice.fill(
            "figure.turn_in_place.surfaces_title",
            &[
                &capital(&short(ends[0].0)),
                &voice.fixed(ends[0].1 / ends[1].1, 0),
                &short(ends[1].0),
            ],
        ),
        subtitle: [
            voice
                .fill("figure.turn_in_place.surfaces_sub", &[layout.name()])
                .as_str(),
            " ",
            &voice.whose(scenario),
        ]
        .concat(),
        description: voice.fill(
            "figure.turn_in_place.surfaces_describe",
            &[&told.join("; ")],
        ),
        body: body(scenario),
        axis_title: [
            voice.word("figure.axis.torque_needed").as_str(),
            ", ",
            &voice.unit(D::Torque),
        ]
        .concat(),
        axis_max,
        decimal_mark: look.lang.decimal_mark(),
        role: Role::Tractive,
        rows: list,
        references: question
            .motor_wheel_torque_n_m
            .map(|has_n_m| BarReference {
                value: voice.in_unit(has_n_m, D::Torque),
                label: voice.fill("figure.line.has", &[&torque(has_n_m)]),
            })
            .into_iter()
            .collect(),
        caution: look.caution.then(|| Caution {
            word: voice.word("figure.caution"),
            text: voice.word("caution.turn_in_place"),
        }),
    }))
}

/// A word at the beginning of a sentence. The names of surfaces begin with a letter of ASCII.
fn capital(word: &str) -> String {
    let (first, rest) = word.split_at_checked(1).unwrap_or(("", word));
    [&first.to_ascii_uppercase(), rest].concat()
}
