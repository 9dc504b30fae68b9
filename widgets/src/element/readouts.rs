//! The results: each opens to its derivation, which follows the sliders while it is open.

use super::erase::{on, part, target};
use super::model::Model;
use super::state::State;
use super::working_html::working_html;
use crate::table::{label_text, value_text};
use axlewright_core::topic::{Reading, ReadingValue, Report};
use leptos::prelude::*;
use web_sys::{Element, Event};

/// All results of an element.
pub(super) fn readouts(model: Model) -> AnyView {
    let all = part(move || {
        model.read(|state| match &state.report {
            Some(report) if state.show.readouts => report
                .readings
                .iter()
                .filter(|reading| is_shown(report, reading))
                .map(|reading| readout(model, state, report, reading))
                .collect(),
            _ => Vec::new(),
        })
    });
    view! { <div class="readouts" part="readouts">{all}</div> }.into_any()
}

/// Headlines, and everything of the layout that the figure shows.
fn is_shown(report: &Report, reading: &Reading) -> bool {
    let headline = report.topic.outputs[reading.output].headline;
    headline || reading.layout == report.scenario.layout().name()
}

fn readout(model: Model, state: &State, report: &Report, reading: &Reading) -> AnyView {
    let label = label_text(report, reading, state.lang);
    let value = value_text(report, reading, state.lang, state.system);
    let is_number = matches!(reading.value, ReadingValue::Number(_));
    if !is_number || !state.show.working {
        return view! {
            <div class="readout plain"><strong>{value}</strong> " " <span>{label}</span></div>
        }
        .into_any();
    }
    let path = reading.path.clone();
    let html = if state.opened.contains(&path) {
        working_html(&report.derivation(&path), state.lang)
    } else {
        String::new()
    };
    let toggle = on(move |event: Event| {
        let open = target::<Element>(&event).is_some_and(|details| details.has_attribute("open"));
        if model.peek(|state| state.opened.contains(&path)) != open {
            model.state.update(|state| {
                state.opened.retain(|other| *other != path);
                if open {
                    state.opened.push(path.clone());
                }
            });
        }
    });
    view! {
        <details class="readout" on:toggle=toggle>
            <summary><strong>{value}</strong> " " <span>{label}</span></summary>
            <div class="derivation" part="working" inner_html=html></div>
        </details>
    }
    .into_any()
}
