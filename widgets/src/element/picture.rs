//! The figure as inline SVG and the chart on a canvas, both redrawn when the answer, the width, the
//! theme or the device-pixel ratio changes.

use super::erase::{flag, follow, on, text};
use super::model::Model;
use crate::figure::palette::{Palette, rgb};
use crate::figure::{Theme, draw_chart};
use crate::visual::View;
use axlewright_core::words;
use leptos::html::{Canvas, Div};
use leptos::prelude::*;
use plotters_canvas::CanvasBackend;
use wasm_bindgen::prelude::*;
use web_sys::{CssStyleDeclaration, HtmlCanvasElement, MediaQueryList, MouseEvent, ResizeObserver};

/// The figure, with a choice of view where the topic has more than one.
pub(super) fn figure(model: Model) -> AnyView {
    let place = NodeRef::<Div>::new();
    watch_width(model, place);
    let svg = text(move || {
        model.read(|s| if s.show.figure { s.svg.clone() } else { String::new() })
    });
    view! {
        {views(model)}
        <div class="figure" part="figure" node_ref=place inner_html=svg></div>
    }
    .into_any()
}

/// Buttons that choose the view; none where the topic has only one besides its chart.
fn views(model: Model) -> Vec<AnyView> {
    let choices: Vec<View> = model
        .visual
        .views
        .iter()
        .copied()
        .filter(|view| *view != View::Chart)
        .collect();
    if choices.len() < 2 {
        return Vec::new();
    }
    let label = text(move || model.read(|s| words::get(s.lang, "ui.view").into()));
    let buttons: Vec<AnyView> = choices.into_iter().map(|view| view_button(model, view)).collect();
    vec![view! { <div class="views" role="group" aria-label=label>{buttons}</div> }.into_any()]
}

fn view_button(model: Model, view: View) -> AnyView {
    let key = format!("ui.view.{}", view.word());
    let label = text(move || model.read(|s| words::get(s.lang, &key).into()));
    let pressed = text(move || {
        let chosen = model.read(|s| s.view == view && s.show.figure);
        if chosen { "true".into() } else { "false".into() }
    });
    let choose = on(move |_: MouseEvent| model.restyle(&|state| state.view = view));
    view! { <button type="button" aria-pressed=pressed on:click=choose>{label}</button> }.into_any()
}

/// Keeps the model's width that of a place on the page.
fn watch_width(model: Model, place: NodeRef<Div>) {
    follow(move || {
        let Some(div) = place.get() else { return };
        let measured = div.clone();
        let measure = Closure::<dyn FnMut()>::new(move || {
            let width = f64::from(measured.client_width());
            let old = model.state.try_with_untracked(|s| s.width);
            if width > 0.0 && old.is_some_and(|old| (old - width).abs() > 0.5) {
                model.restyle(&|state| state.width = width);
            }
        });
        let Ok(observer) = ResizeObserver::new(measure.as_ref().unchecked_ref()) else {
            return;
        };
        observer.observe(&div);
        let kept = StoredValue::new_local(Some((observer, measure)));
        on_cleanup(move || {
            if let Some((observer, _)) = kept.try_update_value(Option::take).flatten() {
                observer.disconnect();
            }
        });
    });
}

/// The chart.
pub(super) fn chart(model: Model) -> AnyView {
    let canvas = NodeRef::<Canvas>::new();
    let stirred = repaint_signal();
    follow(move || {
        stirred.get();
        let Some(canvas) = canvas.get() else { return };
        model.read(|state| {
            if let (Some(chart), true) = (&state.chart, state.show.chart) {
                paint(&canvas, chart);
            }
        });
    });
    let description = text(move || {
        model.read(|s| {
            s.chart.as_ref().map_or_else(String::new, |c| c.title.clone() + ". " + &c.description)
        })
    });
    let hidden = flag(move || model.read(|s| !s.show.chart));
    view! {
        <div class="chart" part="chart" hidden=hidden>
            <canvas node_ref=canvas dir="ltr" role="img" aria-label=description></canvas>
        </div>
    }
    .into_any()
}

/// A signal that stirs when the colours of the page or the device-pixel ratio may have changed.
fn repaint_signal() -> RwSignal<u32> {
    let stirred = RwSignal::new(0_u32);
    let stir = move || {
        if let Some(count) = stirred.try_get_untracked() {
            stirred.set(count.wrapping_add(1));
        }
    };
    let resized = window_event_listener(leptos::ev::resize, move |_| stir());
    on_cleanup(move || resized.remove());
    let changed = Closure::<dyn FnMut()>::new(stir);
    let lists: Vec<MediaQueryList> = [
        "(prefers-color-scheme: dark)",
        "(forced-colors: active)",
        "print",
    ]
    .iter()
    .filter_map(|query| window().match_media(query).ok().flatten())
    .collect();
    for list in &lists {
        let listener: &js_sys::Function = changed.as_ref().unchecked_ref();
        let _ = list.add_event_listener_with_callback("change", listener);
    }
    let kept = StoredValue::new_local((lists, changed));
    on_cleanup(move || {
        kept.with_value(|(lists, changed)| {
            for list in lists {
                let listener: &js_sys::Function = changed.as_ref().unchecked_ref();
                let _ = list.remove_event_listener_with_callback("change", listener);
            }
        });
    });
    stirred
}

/// Draws a chart so that its store is as fine as the screen, and never coarser than two to one.
fn paint(canvas: &HtmlCanvasElement, chart: &crate::figure::Chart) {
    let scale = window().device_pixel_ratio().clamp(2.0, 4.0);
    canvas.set_width((chart.width * scale) as u32);
    canvas.set_height((chart.height * scale) as u32);
    let Ok(Some(style)) = window().get_computed_style(canvas) else {
        return;
    };
    let family = style.get_property_value("font-family").unwrap_or_default();
    let Some(mut backend) = CanvasBackend::with_canvas_object(canvas.clone()) else {
        return;
    };
    // A chart that cannot be drawn stays blank; its description is still there.
    let _ = draw_chart(&mut backend, chart, &palette(&style), &family, scale);
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
    let forced = window().match_media("(forced-colors: active)").ok().flatten();
    if forced.is_some_and(|list| list.matches()) {
        let ink = computed_rgb(style, "color").unwrap_or((0, 0, 0));
        for at in 0..names.len() {
            if names[at] != "paper" {
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
    let mut parts = inside.split(',').filter_map(|part| part.trim().parse().ok());
    Some((parts.next()?, parts.next()?, parts.next()?))
}
