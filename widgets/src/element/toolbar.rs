//! What a reader does with the whole element: compare with a pinned state, take it along as a file, a
//! link or a print, see it on the full screen.
//!
//! A button with `data-do` is carried out by the hand-written script, which knows the browser; the
//! words, the files and their names come from here.

use super::erase::{Tag, tag};
use super::model::Model;
use crate::difference::{differences, sentence};
use axlewright_core::words;
use leptos::prelude::*;
use web_sys::{HtmlElement, KeyboardEvent, wasm_bindgen::JsCast};

/// What can be saved or copied: a heading, then the script's word for each act and the key of its name.
const MENU: &[(&str, &[(&str, &str)])] = &[
    (
        "ui.save_figure",
        &[
            ("svg", "ui.as_svg"),
            ("png 1", "ui.as_png_1"),
            ("png 2", "ui.as_png_2"),
            ("png 3", "ui.as_png_3"),
            ("png 4", "ui.as_png_4"),
        ],
    ),
    (
        "ui.save_chart",
        &[
            ("chart-svg", "ui.as_svg"),
            ("chart-csv", "ui.as_csv"),
            ("chart-json", "ui.as_json"),
        ],
    ),
    (
        "ui.save_numbers",
        &[
            ("csv", "ui.as_csv"),
            ("json", "ui.as_json"),
            ("toml", "ui.as_toml"),
        ],
    ),
    (
        "ui.copy",
        &[
            ("link", "ui.copy_link"),
            ("embed classic", "ui.copy_element"),
            ("embed module", "ui.copy_module"),
            ("embed frame", "ui.copy_frame"),
        ],
    ),
];

fn button(class: &str) -> Tag {
    tag("button", class).fixed("type", "button")
}

/// A text of the catalogue that follows the language.
fn word(model: Model, key: &'static str) -> impl FnMut() -> String + Send + 'static {
    move || model.read(|s| words::get(s.lang, key).into())
}

/// The row below the figure, and what the pinned state was.
pub(super) fn toolbar(model: Model) -> AnyView {
    let is_pinned = move || model.read(|s| s.pinned.is_some());
    let pin = button("")
        .live("aria-pressed", move || is_pinned().to_string())
        .on("click", move |_| {
            model.pin(model.peek(|s| s.pinned.is_none()))
        })
        .says(move || {
            let key = if is_pinned() { "ui.unpin" } else { "ui.pin" };
            model.read(|s| words::get(s.lang, key).into())
        });
    let act = |name: &str, key| {
        button("")
            .fixed("data-do", name)
            .says(word(model, key))
            .view()
    };
    let mut menu = tag("div", "menu");
    for (heading, acts) in MENU {
        let mut row = tag("div", "").fixed("role", "group");
        row = row
            .live("aria-label", word(model, heading))
            .with(tag("span", "").says(word(model, heading)).view());
        for (name, key) in *acts {
            row = row.with(act(name, key));
        }
        menu = menu.with(row.view());
    }
    let share = tag("details", "share")
        .with(tag("summary", "").says(word(model, "ui.share")).view())
        .with(menu.view());
    let told = move || {
        model.read(|s| match (&s.pinned, &s.report) {
            (Some(pinned), Some(report)) => {
                let found = differences(
                    report.topic,
                    &pinned.scenario,
                    &report.scenario,
                    s.lang,
                    s.system,
                );
                sentence(&found, s.lang)
            }
            _ => String::new(),
        })
    };
    let row = tag("div", "tools")
        .fixed("part", "tools")
        .with(pin.view())
        .with(act("screen", "ui.screen"))
        .with(act("print", "ui.print"))
        .with(share.view());
    tag("div", "")
        .live("class", move || {
            let shown = model.read(|s| s.show.tools);
            if shown { "toolbar" } else { "toolbar off" }.into()
        })
        .with(row.view())
        .with(
            tag("p", "done")
                .fixed("role", "status")
                .fixed("part", "done")
                .view(),
        )
        .with(tag("p", "pinned").fixed("part", "pinned").says(told).view())
        .view()
}

/// Undo, redo and reset of all inputs.
pub(super) fn steps(model: Model) -> Vec<AnyView> {
    let step = |key, can: fn(Model) -> bool, act: fn(&Model)| {
        button("")
            // A disabled button would lose the focus of who steps back by keyboard.
            .live("aria-disabled", move || (!can(model)).to_string())
            .on("click", move |_| act(&model))
            .says(word(model, key))
            .view()
    };
    vec![
        step(
            "ui.undo",
            |model| model.read(|s| s.history.can_undo()),
            Model::undo,
        ),
        step(
            "ui.redo",
            |model| model.read(|s| s.history.can_redo()),
            Model::redo,
        ),
        step("ui.reset_all", |_| true, |model| model.reset(None)),
    ]
}

/// Ctrl or Cmd with Z takes a step back, with Shift or with Y does it again. A text field keeps its own.
pub(super) fn undo_by_key(model: Model, event: &web_sys::Event) {
    let Some(key) = event.dyn_ref::<KeyboardEvent>() else {
        return;
    };
    let target = event
        .target()
        .and_then(|t| t.dyn_into::<HtmlElement>().ok());
    let types = target.is_some_and(|t| t.class_name() == "number");
    if types || !(key.ctrl_key() || key.meta_key()) {
        return;
    }
    match key.key().to_ascii_lowercase().as_str() {
        "z" if key.shift_key() => model.redo(),
        "z" => model.undo(),
        "y" => model.redo(),
        _ => return,
    }
    event.prevent_default();
}
