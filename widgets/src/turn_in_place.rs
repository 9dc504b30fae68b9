//! Turning in place: plan view with sliding and friction of every patch, still or at a moment of the
//! spin-up; bars of the torque on each surface; charts of the yaw rate and of torque against friction.

mod chart;
mod moment;
mod plan;
mod surfaces;

use crate::visual::{Drawing, Look, View, Visual};
use axlewright_core::turn_in_place::{Question, Spin, TOPIC};
use axlewright_core::{Problem, Scenario};

/// The looks of the topic.
pub const VISUAL: Visual = Visual {
    views: &[View::Plan, View::Bars, View::Chart],
    playback: Some("turn_in_place.time"),
    playback_to: "spin.time_to_360",
    ..Visual::of_topic(&TOPIC, draw)
};

fn draw(scenario: &Scenario, view: View, look: &Look) -> Result<Drawing, Problem> {
    let question = Question::from_scenario(scenario)?;
    let any = Spin::from_scenario(scenario, &question)?;
    // Only a layout that drives wheels against each other has a spin-up to show. The room that it takes
    // is kept for every layout, so that nothing moves away from under the hand that changes it.
    let room = any.is_some();
    let spin = any.filter(|spin| spin.driven != [false; 2]);
    Ok(match (view, spin) {
        (View::Chart, Some(spin)) => Drawing::Chart(chart::yaw_rate(scenario, &spin, look)),
        (View::Chart, None) => Drawing::Chart(chart::torque(scenario, &question, look)?),
        (View::Side | View::Bars, _) => {
            Drawing::Scene(surfaces::surfaces(scenario, &question, look)?)
        }
        (View::Plan, Some(spin)) if scenario.number("turn_in_place.time").is_some() => {
            Drawing::Scene(moment::moment(scenario, &question, &spin, look))
        }
        (View::Plan, spin) => Drawing::Scene(plan::plan(
            scenario,
            &question,
            (room, spin.as_ref()),
            look,
        )?),
    })
}
