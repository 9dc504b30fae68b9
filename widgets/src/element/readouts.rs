//! The results: each opens to its derivation, which follows the sliders while it is open.

use super::erase::{Tag, tag, target};
use super::model::Model;
use super::state::State;
use super::working_html::working_html;
use crate::table::{label_text, value_text};
use axlewright_core::topic::{Reading, ReadingValue, Report};
use axlewright_core::words;
use leptos::prelude::*;
use web_sys::Element;

/// All results of an element.
pub(super) fn readouts(model: Model) -> AnyView {
    let all = move || {
        model.read(|state| match &state.report {
            Some(report) if state.show.readouts => report
                .readings
                .iter()
                .filter(|reading| is_shown(report, reading))
                .map(|reading| readout(model, state, report, reading))
                .collect(),
            _ => Vec::new(),
        })
    };
    tag("div", "readouts")
        .fixed("part", "readouts")
        .part(all)
        .view()
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
    // A pinned state is told where it reads otherwise.
    let pinned = state.pinned.as_ref().and_then(|pinned| {
        let old = pinned.readings.iter().find(|r| r.path == reading.path)?;
        let text = value_text(pinned, old, state.lang, state.system);
        (text != value).then(|| words::fill(state.lang, "ui.pinned_value", &[&text]))
    });
    let said = |around: Tag| said(around, &value, &label, pinned.as_deref());
    if !is_number || !state.show.working {
        return said(tag("div", "readout plain")).view();
    }
    let path = reading.path.clone();
    let is_open = state.opened.contains(&path);
    let toggle = move |event| {
        let open = target::<Element>(&event).is_some_and(|details| details.has_attribute("open"));
        if model.peek(|state| state.opened.contains(&path)) != open {
            model.state.update(|state| {
                state.opened.retain(|other| *other != path);
                if open {
                    state.opened.push(path.clone());
                    if let Some(report) = &mut state.report {
                        report.write_working();
                    }
                }
            });
        }
    };
    let mut derivation = tag("div", "derivation").fixed("part", "working");
    if is_open {
        let html = working_html(&report.derivation(&reading.path), state.lang);
        let copy = |form: &str, key: &str| {
            tag("button", "")
                .fixed("type", "button")
                .fixed("data-do", &format!("{form} {}", reading.path))
                .word(words::get(state.lang, key))
                .view()
        };
        let copies = tag("p", "copies")
            .with(copy("latex", "ui.copy_latex"))
            .word(" ")
            .with(copy("text", "ui.copy_text"));
        derivation = derivation
            .with(tag("div", "").html(move || html.clone()).view())
            .with(copies.view());
    }
    tag("details", "readout")
        .on("toggle", toggle)
        .with(said(tag("summary", "")).view())
        .with(derivation.view())
        .view()
}

/// The value of a result, then what it is, then what it is in the pinned state.
fn said(around: Tag, value: &str, label: &str, pinned: Option<&str>) -> Tag {
    let around = around
        .with(tag("strong", "").word(value).view())
        .word(" ")
        .with(tag("span", "").word(label).view());
    match pinned {
        Some(text) => around.word(" ").with(
            tag("em", "")
                .fixed("part", "pinned-value")
                .word(text)
                .view(),
        ),
        None => around,
    }
}
