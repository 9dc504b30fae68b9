//! The figure as inline SVG and the chart on a canvas, both redrawn when the answer, the width, the theme
//! or the device-pixel ratio changes; the script watches the last three.

use super::canvas::Canvas;
use super::erase::{follow, tag};
use super::exports::Handle;
use super::model::Model;
use crate::figure::palette::{Palette, rgb};
use crate::figure::{Theme, draw_chart};
use crate::visual::View;
use axlewright_core::{Tree, words};
use leptos::prelude::*;
use wasm_bindgen::prelude::*;
use web_sys::{CssStyleDeclaration, HtmlCanvasElement};

/// The figure, with a choice of view where the topic has more than one.
pub(super) fn figure(model: Model) -> AnyView {
    let grips = tag("div", "grips")
        .fixed("dir", "ltr")
        .fixed("role", "group")
        .live("aria-label", move || {
            model.read(|s| words::get(s.lang, "ui.grips").into())
        });
    let stage = tag("div", "stage")
        .with(tag("div", "drawing").view())
        .with(grips.view());
    let figure = tag("div", "figure")
        .fixed("part", "figure")
        .with(stage.view())
        .view();
    // The script writes what has changed of the figure, lays its handles over it anew, and has the chart
    // painted.
    follow(move || {
        model.arrangement.get();
        model.read(|_| ());
        model.tell("redraw", &Tree::Null);
    });
    match views(model) {
        Some(views) => vec![views, figure].into_any(),
        None => figure,
    }
}

/// Buttons that choose the view; none where the topic has only one besides its chart.
fn views(model: Model) -> Option<AnyView> {
    let choices: Vec<View> = model
        .visual
        .views
        .iter()
        .copied()
        .filter(|view| *view != View::Chart)
        .collect();
    if choices.len() < 2 {
        return None;
    }
    let group = tag("div", "views")
        .fixed("part", "views")
        .fixed("role", "group")
        .live("aria-label", move || {
            model.read(|s| words::get(s.lang, "ui.view").into())
        });
    let buttons = choices.into_iter().map(|view| view_button(model, view));
    Some(
        buttons
            .fold(group, |group, button| group.with(button))
            .view(),
    )
}

fn view_button(model: Model, view: View) -> AnyView {
    // A topic may have a word of its own for a view.
    let own = format!("ui.view.{}.{}", model.visual.topic.name, view.word());
    let key = format!("ui.view.{}", view.word());
    let pressed = move || {
        let chosen = model.read(|s| s.view == view && s.show.figure);
        if chosen {
            "true".into()
        } else {
            "false".into()
        }
    };
    tag("button", "")
        .fixed("type", "button")
        .live("aria-pressed", pressed)
        .on("click", move |_| model.restyle(&|state| state.view = view))
        .says(move || {
            model.read(|s| {
                let word = words::find(s.lang, &own).unwrap_or_else(|| words::get(s.lang, &key));
                word.into()
            })
        })
        .view()
}

/// The chart. The script has it painted after everything else is written: text on a canvas makes the
/// browser lay out the page, which it should do once.
pub(super) fn chart(model: Model) -> AnyView {
    let description = move || {
        model.read(|s| {
            let Some(chart) = &s.chart else {
                return String::new();
            };
            let told = [&chart.title, ". ", &chart.description].concat();
            match chart.x_input.filter(|path| s.offers(model.visual, path)) {
                Some(path) => {
                    let input = words::get(s.lang, &["input.", path].concat());
                    [&told, " ", &words::fill(s.lang, "ui.chart_set", &[input])].concat()
                }
                None => told,
            }
        })
    };
    let reads = move || {
        model.read(|s| {
            let along = s.chart.as_ref().map_or("", |c| &c.x_axis.title);
            words::fill(s.lang, "ui.chart_read", &[along])
        })
    };
    let canvas = tag("canvas", "")
        .fixed("dir", "ltr")
        .fixed("role", "img")
        .live("aria-label", description)
        .view();
    let cursor = tag("div", "cursor")
        .fixed("role", "slider")
        .fixed("tabindex", "0")
        .fixed("aria-valuenow", "0")
        .live("aria-label", reads);
    let stage = tag("div", "stage")
        .fixed("dir", "ltr")
        .with(canvas)
        .with(cursor.view());
    let chart = tag("div", "chart")
        .fixed("part", "chart")
        .with(tag("p", "read").fixed("aria-live", "polite").view())
        .with(stage.view());
    vec![chart.view(), data(model)].into_any()
}

/// The chart's numbers as a table, which the script fills while it is open.
fn data(model: Model) -> AnyView {
    let class = move || {
        if model.read(|s| s.show.data) {
            "data".into()
        } else {
            "data gone".into()
        }
    };
    let name = move || model.read(|s| words::get(s.lang, "ui.data").into());
    // A wide table scrolls sideways; the keyboard must reach it.
    let sheet = tag("div", "sheet")
        .fixed("tabindex", "0")
        .fixed("role", "group")
        .live("aria-label", name);
    tag("details", "")
        .live("class", class)
        .fixed("part", "data")
        .with(tag("summary", "").says(name).view())
        .with(sheet.view())
        .view()
}

/// Milliseconds for which the colours of the page are taken to be what they were.
const COLOURS_MS: f64 = 500.0;

/// What is known of a chart that was painted.
pub(super) struct Painted {
    /// Which drawing of the chart it was.
    count: u32,
    at_ms: f64,
    colours: Colours,
}

#[wasm_bindgen]
impl Handle {
    /// Paints the chart if there is another, or if the colours of the page or the device-pixel ratio may
    /// have changed; tells whether a chart is shown.
    pub fn paint(&self, canvas: &HtmlCanvasElement, stirred: bool) -> bool {
        self.model.peek(|state| {
            let (Some(chart), true) = (&state.chart, state.show.chart) else {
                return state.show.chart;
            };
            // Reading colours makes the browser style the whole page. While a slider moves, those of
            // half a second ago will do.
            let now_ms = js_sys::Date::now();
            let before = self.painted.take().filter(|_| !stirred);
            let before = match before {
                Some(before) if before.count == state.charts => Some(before),
                Some(before) if now_ms - before.at_ms < COLOURS_MS => {
                    paint(canvas, chart, &before.colours);
                    Some(before)
                }
                _ => Colours::of(canvas).map(|colours| {
                    paint(canvas, chart, &colours);
                    Painted {
                        count: 0,
                        at_ms: now_ms,
                        colours,
                    }
                }),
            };
            self.painted.set(before.map(|painted| Painted {
                count: state.charts,
                ..painted
            }));
            true
        })
    }
}

/// What a chart takes from the page's style.
struct Colours {
    palette: Palette,
    family: String,
}

impl Colours {
    fn of(canvas: &HtmlCanvasElement) -> Option<Self> {
        let style = window().get_computed_style(canvas).ok()??;
        Some(Self {
            palette: palette(&style),
            family: style.get_property_value("font-family").unwrap_or_default(),
        })
    }
}

/// Draws a chart so that its store is as fine as the screen, and never coarser than two to one.
fn paint(canvas: &HtmlCanvasElement, chart: &crate::figure::Chart, colours: &Colours) {
    let scale = window().device_pixel_ratio().clamp(2.0, 4.0);
    let size = ((chart.width * scale) as u32, (chart.height * scale) as u32);
    // A new size is a new store, even if it is the old one. The paper covers what was drawn before.
    if (canvas.width(), canvas.height()) != size {
        canvas.set_width(size.0);
        canvas.set_height(size.1);
    }
    let Some(mut backend) = Canvas::of(canvas) else {
        return;
    };
    // A chart that cannot be drawn stays blank; its description is still there.
    let _ = draw_chart(
        &mut backend,
        chart,
        &colours.palette,
        &colours.family,
        scale,
    );
}

/// The page's colours: its custom properties where they are plain hex, or the system's own colours
/// where the reader forces them.
fn palette(style: &CssStyleDeclaration) -> Palette {
    let mut palette = Theme::Light.palette();
    let names = [
        "ink", "soft", "hair", "fine", "paper", "front", "rear", "tractive", "inertia",
    ];
    let colour = |name: &str| {
        let value = style.get_property_value(name).unwrap_or_default();
        let value = value.trim();
        (value.len() == 7 && value.starts_with('#')).then(|| rgb(value))
    };
    for (at, name) in names.iter().enumerate() {
        if let Some(stroke) = colour(&format!("--axle-{name}")) {
            palette.stroke[at] = stroke;
            palette.text[at] = stroke;
        }
        if let Some(text) = colour(&format!("--axle-{name}-text")) {
            palette.text[at] = text;
        }
    }
    let forced = window()
        .match_media("(forced-colors: active)")
        .ok()
        .flatten();
    if forced.is_some_and(|list| list.matches()) {
        let ink = computed_rgb(style, "color").unwrap_or((0, 0, 0));
        for (at, name) in names.iter().enumerate() {
            if *name != "paper" {
                palette.stroke[at] = ink;
                palette.text[at] = ink;
            }
        }
        if let Some(paper) = computed_rgb(style, "background-color") {
            palette.stroke[4] = paper;
            palette.text[4] = paper;
        }
    }
    palette
}

/// A computed colour, `rgb(r, g, b)`.
fn computed_rgb(style: &CssStyleDeclaration, property: &str) -> Option<(u8, u8, u8)> {
    let value = style.get_property_value(property).ok()?;
    let inside = value.strip_prefix("rgb(")?.strip_suffix(')')?;
    let mut parts = inside
        .split(',')
        .filter_map(|part| part.trim().parse().ok());
    Some((parts.next()?, parts.next()?, parts.next()?))
}
