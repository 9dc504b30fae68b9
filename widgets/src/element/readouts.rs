//! The results: each opens to its derivation, which follows the sliders while it is open.

use super::erase::{Tag, follow, tag, target};
use super::model::Model;
use super::parts;
use super::state::State;
use crate::compare::shown_layout;
use crate::table::{label_text, value_text};
use axlewright_core::topic::{Reading, ReadingValue, Report};
use axlewright_core::{Tree, words};
use leptos::prelude::*;
use web_sys::Element;

/// All results of an element. They are made anew when there are others or one is opened; otherwise
/// only what they say changes.
pub(super) fn readouts(model: Model) -> AnyView {
    let shape = RwSignal::new(model.peek(shape));
    follow(move || {
        let now = model.read(self::shape);
        if shape.with_untracked(|shape| *shape != now) {
            shape.set(now);
        }
    });
    let all = move || {
        shape.with(|shape| {
            let rows = shape.iter();
            rows.map(|row| readout(model, row.clone())).collect()
        })
    };
    tag("div", "readouts")
        .fixed("part", "readouts")
        .part(all)
        .view()
}

/// A result as it is laid out.
#[derive(Clone, PartialEq)]
struct Row {
    path: String,
    /// Whether it has a working that can be opened, and whether that is open.
    opens: bool,
    open: bool,
    /// Whether the pinned state reads otherwise.
    pinned: bool,
}

fn shape(state: &State) -> Vec<Row> {
    let Some(report) = state.report.as_ref().filter(|_| state.show.readouts) else {
        return Vec::new();
    };
    let shown = report.readings.iter();
    shown
        .filter(|reading| is_shown(report, reading))
        .map(|reading| Row {
            path: reading.path.clone(),
            opens: state.show.working && matches!(reading.value, ReadingValue::Number(_)),
            open: state.opened.contains(&reading.path),
            pinned: !pinned_text(state, report, reading).is_empty(),
        })
        .collect()
}

/// A result in the pinned state, where it reads otherwise.
fn pinned_text(state: &State, report: &Report, reading: &Reading) -> String {
    let Some(pinned) = &state.pinned else {
        return String::new();
    };
    let old = pinned.readings.iter().find(|r| r.path == reading.path);
    let old = old.map(|old| value_text(pinned, old, state.lang, state.system));
    let now = value_text(report, reading, state.lang, state.system);
    match old {
        Some(old) if old != now => words::fill(state.lang, "ui.pinned_value", &[&old]),
        _ => String::new(),
    }
}

/// What a result says, for as long as there is one.
fn told(
    model: Model,
    path: &str,
    tell: fn(&State, &Report, &Reading) -> String,
) -> impl FnMut() -> String + Send + 'static {
    let path = path.to_owned();
    move || {
        model.read(|state| {
            let found = state.report.as_ref().and_then(|report| {
                let reading = report.readings.iter().find(|r| r.path == path)?;
                Some(tell(state, report, reading))
            });
            found.unwrap_or_default()
        })
    }
}

/// Headlines, and everything of the layout that the figure shows.
fn is_shown(report: &Report, reading: &Reading) -> bool {
    let headline = report.topic.outputs[reading.output].headline;
    headline || reading.layout == shown_layout(report)
}

fn readout(model: Model, row: Row) -> AnyView {
    let Row {
        path, opens, open, ..
    } = row.clone();
    if !opens {
        return said(model, &row, tag("div", "readout plain")).view();
    }
    let toggle = {
        let path = path.clone();
        move |event| {
            if parts::working().is_none() {
                model.tell("part", &Tree::text("working"));
            }
            let open =
                target::<Element>(&event).is_some_and(|details| details.has_attribute("open"));
            if model.peek(|state| state.opened.contains(&path)) != open {
                model.update(|state| {
                    state.opened.retain(|other| *other != path);
                    if open {
                        state.opened.push(path.clone());
                        if let Some(report) = &mut state.report {
                            report.write_working();
                        }
                    }
                });
            }
        }
    };
    let mut derivation = tag("div", "derivation").fixed("part", "working");
    if open {
        // Until its part is here, nothing stands in the opened result.
        let steps = told(model, &path, |state, report, reading| {
            parts::working().map_or_else(String::new, |html| {
                html(&report.derivation(&reading.path), state.lang)
            })
        });
        let copy = |form: &str, key: &'static str| {
            tag("button", "")
                .fixed("type", "button")
                .fixed("data-do", &[form, " ", &path].concat())
                .says(move || model.read(|s| words::get(s.lang, key).into()))
                .view()
        };
        let copies = tag("p", "copies")
            .with(copy("latex", "ui.copy_latex"))
            .word(" ")
            .with(copy("text", "ui.copy_text"));
        derivation = derivation
            .with(tag("div", "").html(steps).view())
            .with(copies.view());
    }
    tag("details", "readout")
        .on("toggle", toggle)
        .with(said(model, &row, tag("summary", "")).view())
        .with(derivation.view())
        .view()
}

/// The value of a result, then what it is, then what it is in the pinned state.
fn said(model: Model, row: &Row, around: Tag) -> Tag {
    let value = told(model, &row.path, |state, report, reading| {
        value_text(report, reading, state.lang, state.system)
    });
    let label = told(model, &row.path, |state, report, reading| {
        label_text(report, reading, state.lang)
    });
    let around = around
        .with(tag("strong", "").says(value).view())
        .word(" ")
        .with(tag("span", "").says(label).view());
    if !row.pinned {
        return around;
    }
    around.word(" ").with(
        tag("em", "")
            .fixed("part", "pinned-value")
            .says(told(model, &row.path, pinned_text))
            .view(),
    )
}
