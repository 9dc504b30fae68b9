//! The figure as inline SVG and the chart on a canvas, both redrawn when the answer, the width, the
//! theme or the device-pixel ratio changes.

use super::erase::{Place, at_end, follow, tag};
use super::model::Model;
use super::motors;
use crate::figure::palette::{Palette, rgb};
use crate::figure::{Theme, draw_chart};
use crate::visual::View;
use axlewright_core::words;
use leptos::prelude::*;
use plotters_canvas::CanvasBackend;
use wasm_bindgen::prelude::*;
use web_sys::{CssStyleDeclaration, EventTarget, HtmlCanvasElement, ResizeObserver};

/// The figure, with a choice of view where the topic has more than one.
pub(super) fn figure(model: Model) -> AnyView {
    let place = Place::new();
    watch_width(model, place);
    let svg = move || {
        model.read(|s| {
            if s.show.figure {
                s.svg.clone()
            } else {
                String::new()
            }
        })
    };
    let mut figure = tag("div", "figure")
        .fixed("part", "figure")
        .at(place)
        .html(svg);
    if model.visual.places_motors {
        for (event, listener) in motors::on_figure(model, place) {
            figure = figure.on(event, listener);
        }
    }
    let figure = figure.view();
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

/// Keeps the model's width that of a place on the page.
fn watch_width(model: Model, place: Place) {
    follow(move || {
        let Some(div) = place.get() else { return };
        let measured = div.clone();
        let measure = Closure::<dyn FnMut()>::new(move || {
            let measured = measured.clone();
            // In the next frame: a new drawing has another height, and the observer must not see its
            // own doing.
            request_animation_frame(move || {
                let width = f64::from(measured.client_width());
                let old = model.state.try_with_untracked(|s| s.width);
                if width > 0.0 && old.is_some_and(|old| (old - width).abs() > 0.5) {
                    model.restyle(&|state| state.width = width);
                }
            });
        });
        let Ok(observer) = ResizeObserver::new(measure.as_ref().unchecked_ref()) else {
            return;
        };
        observer.observe(&div);
        at_end(move || {
            observer.disconnect();
            drop(measure);
        });
    });
}

/// The chart.
pub(super) fn chart(model: Model) -> AnyView {
    let place = Place::new();
    let stirred = repaint_signal();
    let mut colours: Option<(u32, f64, Colours)> = None;
    follow(move || {
        let stirs = stirred.get();
        let Some(div) = place.get() else { return };
        div.set_hidden(model.read(|s| !s.show.chart));
        let canvas = div.first_element_child();
        let Some(canvas) = canvas.and_then(|c| c.dyn_into::<HtmlCanvasElement>().ok()) else {
            return;
        };
        model.read(|state| {
            let (Some(chart), true) = (&state.chart, state.show.chart) else {
                return;
            };
            // Reading colours makes the browser style the whole page. While a slider moves, those of
            // half a second ago will do.
            let now = js_sys::Date::now();
            let fresh = colours
                .as_ref()
                .is_some_and(|(at, read, _)| *at == stirs && now - read < 500.0);
            if !fresh {
                colours = Colours::of(&canvas).map(|read| (stirs, now, read));
            }
            if let Some((_, _, colours)) = &colours {
                paint(&canvas, chart, colours);
            }
        });
    });
    let description = move || {
        model.read(|s| {
            s.chart
                .as_ref()
                .map_or_else(String::new, |c| c.title.clone() + ". " + &c.description)
        })
    };
    let canvas = tag("canvas", "")
        .fixed("dir", "ltr")
        .fixed("role", "img")
        .live("aria-label", description)
        .view();
    tag("div", "chart")
        .fixed("part", "chart")
        .at(place)
        .with(canvas)
        .view()
}

/// A signal that stirs when the colours of the page or the device-pixel ratio may have changed.
fn repaint_signal() -> RwSignal<u32> {
    let stirred = RwSignal::new(0_u32);
    let stir = move || {
        if let Some(count) = stirred.try_get_untracked() {
            stirred.set(count.wrapping_add(1));
        }
    };
    let changed = Closure::<dyn FnMut()>::new(stir);
    let mut watched: Vec<(EventTarget, &str)> = vec![(window().into(), "resize")];
    for query in [
        "(prefers-color-scheme: dark)",
        "(forced-colors: active)",
        "print",
    ] {
        if let Ok(Some(list)) = window().match_media(query) {
            watched.push((list.into(), "change"));
        }
    }
    for (place, event) in &watched {
        let listener: &js_sys::Function = changed.as_ref().unchecked_ref();
        let _ = place.add_event_listener_with_callback(event, listener);
    }
    at_end(move || {
        for (place, event) in &watched {
            let listener: &js_sys::Function = changed.as_ref().unchecked_ref();
            let _ = place.remove_event_listener_with_callback(event, listener);
        }
    });
    stirred
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
    canvas.set_width(size.0);
    canvas.set_height(size.1);
    let Some(mut backend) = CanvasBackend::with_canvas_object(canvas.clone()) else {
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
