//! What a reader takes along: files, tables, links, code to embed. A part of the wasm that is fetched
//! when it is asked for.

use super::embed::{Embed, EmbedKind, embed_code};
use super::exports::{Handle, error_of, unknown_kind};
use super::model::{Model, to_js};
use super::state::State;
use crate::difference::file_name;
use crate::figure::{Chart, Theme};
use crate::figure_file::{figure_file, scenario_toml};
use crate::table::{chart_csv, chart_html, chart_tree, csv};
use crate::visual::{Look, View};
use axlewright_core::link::{link_query, push_parameter};
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use js_sys::{Object, Reflect};
use wasm_bindgen::prelude::*;

/// What the element calls; what each does is said where the script calls it.
pub(crate) struct Take {
    pub(super) figure: fn(&Handle, &str) -> Result<JsValue, JsValue>,
    pub(super) file: fn(&Handle, &str) -> Result<JsValue, JsValue>,
    pub(super) link: fn(&Handle, Option<&str>, Option<&str>, Option<&str>) -> String,
    pub(super) embed: fn(&Handle, &str, &str, &str) -> String,
    pub(super) working: fn(&Handle, &str, &str) -> String,
    pub(super) table: fn(&Handle, &str) -> Result<JsValue, JsValue>,
    pub(super) data: fn(&Handle) -> String,
}

/// All of it.
pub(super) const TAKE: Take = Take {
    figure,
    file,
    link,
    embed,
    working,
    table,
    data,
};

/// Kinds of files, beside the PNG that the script makes of the SVG.
const FILES: &[&str] = &[
    "svg",
    "chart-svg",
    "chart-csv",
    "chart-json",
    "csv",
    "json",
    "toml",
];

/// The figure as a file: SVG text, the same bytes that the program writes for the scenario; null
/// while a question is open.
fn figure(handle: &Handle, kind: &str) -> Result<JsValue, JsValue> {
    if kind != "svg" {
        return Err(unknown_kind("figure", kind, &["svg"]));
    }
    if handle.model.peek(State::is_asking) {
        return Ok(JsValue::NULL);
    }
    drawn(handle, handle.model.peek(|s| s.view))
}

/// A file to save: `{ name, type, content }`; the content is a text, or data to be written as JSON.
fn file(handle: &Handle, kind: &str) -> Result<JsValue, JsValue> {
    let visual = handle.model.visual;
    let (scenario, view) = (handle.model.scenario(), handle.model.peek(|s| s.view));
    let (content, media, what) = match kind {
        "svg" => (figure(handle, "svg")?, "image/svg+xml", view.word()),
        "chart-svg" => (drawn(handle, View::Chart)?, "image/svg+xml", "chart"),
        "chart-csv" => (
            charted(handle, &|chart| chart_csv(chart).into()),
            "text/csv",
            "chart",
        ),
        "chart-json" => (
            charted(handle, &|chart| to_js(&chart_tree(chart))),
            "application/json",
            "chart",
        ),
        "csv" => (table(handle, "csv")?, "text/csv", "numbers"),
        "json" => (handle.answer(), "application/json", "numbers"),
        "toml" => (
            scenario_toml(&scenario).into(),
            "application/toml",
            "scenario",
        ),
        other => return Err(unknown_kind("file", other, FILES)),
    };
    let ending = kind.rsplit('-').next().unwrap_or(kind);
    let name = file_name(visual.topic, &scenario, what) + "." + ending;
    let file = Object::new();
    let set = |key: &str, value: &JsValue| {
        let _ = Reflect::set(&file, &key.into(), value);
    };
    set("name", &name.into());
    set("type", &media.into());
    set("content", &content);
    Ok(file.into())
}

/// The query of a link to what is shown: what differs from the page's own inputs, view, units and
/// language. The last three are given as their attributes; those that the address names already are not,
/// and are written whatever they are.
fn link(handle: &Handle, view: Option<&str>, units: Option<&str>, lang: Option<&str>) -> String {
    let model = handle.model;
    let author = model.peek(|state| state.author.clone());
    let mut query = link_query(model.visual.topic, &model.scenario(), &author);
    let own = [
        view.map(|word| {
            model
                .visual
                .view(word)
                .unwrap_or(model.visual.views[0])
                .word()
        }),
        units.map(|word| if word == "us" { "us" } else { "si" }),
        lang.map(|tag| Lang::from_tag(tag).tag()),
    ];
    for ((name, now), own) in settings(model).into_iter().zip(own) {
        if own != Some(now) {
            push_parameter(&mut query, name, now);
        }
    }
    query
}

/// The settings besides the inputs that a reader may have changed.
fn settings(model: Model) -> [(&'static str, &'static str); 3] {
    let (view, lang, system) = model.peek(|s| (s.view, s.lang, s.system));
    let units = if system == System::Us { "us" } else { "si" };
    [
        ("view", view.word()),
        ("units", units),
        ("lang", lang.tag()),
    ]
}

/// Code that puts the shown state into another page: `frame`, `module` or `classic`, with the
/// address of the folder of the scripts and, where there is one, the hash of the script.
fn embed(handle: &Handle, kind: &str, folder: &str, integrity: &str) -> String {
    let kind = match kind {
        "frame" => EmbedKind::Frame,
        "module" => EmbedKind::Module,
        _ => EmbedKind::Classic,
    };
    let visual = handle.model.visual;
    // What an element has that is told nothing goes without saying.
    let plain = [visual.views[0].word(), "si", "en"];
    let mut settings = settings(handle.model).to_vec();
    settings.retain(|(_, word)| !plain.contains(word));
    let embed = Embed {
        topic: visual.topic,
        scenario: &handle.model.scenario(),
        settings: &settings,
        folder,
        integrity,
        lang: handle.model.peek(|s| s.lang),
    };
    embed_code(kind, &embed)
}

/// The derivation of a result: a step on each line, as LaTeX or as plain text.
fn working(handle: &Handle, path: &str, form: &str) -> String {
    handle.model.peek(|state| {
        let mut report = state.report.clone();
        if let Some(report) = &mut report {
            report.write_working();
        }
        let steps = report.as_ref().map(|report| report.derivation(path));
        let lines = steps.iter().flatten().map(|step| match form {
            "latex" => step.latex(state.lang),
            _ => step.text(state.lang),
        });
        lines.collect::<Vec<_>>().join("\n")
    })
}

/// The numbers of the answer as CSV text or as a plain object; null while a question is open.
fn table(handle: &Handle, kind: &str) -> Result<JsValue, JsValue> {
    match kind {
        "json" => Ok(handle.answer()),
        "csv" => Ok(handle.model.peek(|s| {
            s.report
                .as_ref()
                .map_or(JsValue::NULL, |r| csv(r, s.lang).into())
        })),
        other => Err(unknown_kind("table", other, &["csv", "json"])),
    }
}

fn data(handle: &Handle) -> String {
    let chart = |state: &State| state.chart.as_ref().map_or_else(String::new, chart_html);
    handle.model.peek(chart)
}

fn charted(handle: &Handle, write: &dyn Fn(&Chart) -> JsValue) -> JsValue {
    let chart = handle.model.peek(|s| s.chart.clone());
    chart.as_ref().map_or(JsValue::NULL, write)
}

fn drawn(handle: &Handle, view: View) -> Result<JsValue, JsValue> {
    let (lang, system) = handle.model.peek(|s| (s.lang, s.system));
    let look = Look {
        lang,
        system,
        ..Look::default()
    };
    let scenario = handle.model.scenario();
    figure_file(handle.model.visual, &scenario, view, &look, Theme::Light)
        .map(JsValue::from)
        .map_err(|p| error_of(&p))
}
