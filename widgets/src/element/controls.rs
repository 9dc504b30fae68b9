//! The inputs that the reader may move: a slider, a number with its unit and a reset for each
//! quantity, a list for each choice.

use super::erase::{flag, on, part, target, text};
use super::model::Model;
use axlewright_core::format;
use axlewright_core::input::{self, Input, Kind};
use axlewright_core::units::{self, Dimension, System};
use axlewright_core::words;
use leptos::prelude::*;
use web_sys::{Event, HtmlInputElement, HtmlSelectElement, MouseEvent};

/// All controls of an element. They are made anew only when the page changes which there are.
pub(super) fn controls(model: Model) -> AnyView {
    let wanted = Memo::new(move |_| {
        model.read(|state| (state.control_paths(model.visual), state.system == System::Us))
    });
    let all = part(move || {
        let (paths, us) = wanted.get();
        let system = if us { System::Us } else { System::Si };
        let mut views: Vec<AnyView> = paths
            .into_iter()
            .filter_map(input::find)
            .map(|input| control(model, input, system))
            .collect();
        if !views.is_empty() {
            views.push(reset_all(model));
        }
        views
    });
    view! { <div class="controls" part="controls">{all}</div> }.into_any()
}

fn reset_all(model: Model) -> AnyView {
    let label = text(move || model.read(|s| words::get(s.lang, "ui.reset_all").into()));
    let reset = on(move |_: MouseEvent| model.reset(None));
    view! { <button type="button" class="reset-all" on:click=reset>{label}</button> }.into_any()
}

fn control(model: Model, input: &'static Input, system: System) -> AnyView {
    match &input.kind {
        Kind::Quantity { .. } => quantity(model, input, system),
        Kind::Choice { words, .. } => choice(model, input, words),
        Kind::Layouts => ().into_any(),
    }
}

/// A number without the noise of binary fractions.
fn tidy(value: f64) -> f64 {
    axlewright_core::math::round(value * 1e6) / 1e6
}

/// Decimals that a slider's step needs.
fn decimals(mut step: f64) -> u8 {
    let mut count = 0;
    while count < 4 && (step - axlewright_core::math::round(step)).abs() > 1e-6 {
        step *= 10.0;
        count += 1;
    }
    count
}

/// A quantity as its control shows it.
#[derive(Clone, Copy)]
struct Scale {
    input: &'static Input,
    dimension: Dimension,
    system: System,
    unit: &'static str,
    decimals: u8,
}

impl Scale {
    fn people(&self, value: f64) -> f64 {
        tidy(units::from_si(value, self.dimension, self.system))
    }

    fn number(&self, model: Model) -> Option<f64> {
        let path = self.input.path;
        model.read(|state| state.number(path)).map(|value| self.people(value))
    }

    fn text(&self, value: Option<f64>) -> String {
        value.map_or_else(String::new, |value| {
            format::with_unit(format::fixed(value, self.decimals), self.unit)
        })
    }
}

fn quantity(model: Model, input: &'static Input, system: System) -> AnyView {
    let Kind::Quantity {
        dimension,
        usual,
        step,
        ..
    } = input.kind
    else {
        return ().into_any();
    };
    let mut scale = Scale {
        input,
        dimension,
        system,
        unit: dimension.display_unit(system),
        decimals: 0,
    };
    let step = match system {
        System::Si => scale.people(step),
        System::Us => scale.people(step).max(0.01),
    };
    scale.decimals = decimals(step);
    let plain = |value: f64| format::plain(scale.people(value));
    let shown = text(move || scale.text(scale.number(model)));
    let position = text(move || scale.number(model).map_or_else(String::new, format::plain));
    let label = text(move || model.read(|s| words::get(s.lang, &input.label_key()).into()));
    let help = text(move || model.read(|s| words::get(s.lang, &input.help_key()).into()));
    let reset_label = text(move || {
        let name = label.get();
        model.read(|s| words::fill(s.lang, "ui.reset", &[&name]))
    });
    let refused = flag(move || {
        model.read(|s| s.problem.as_ref().is_some_and(|p| p.field() == input.path))
    });
    let invalid = text(move || if refused.get() { "true".into() } else { "false".into() });
    let slide = on(move |event: Event| {
        if let Some(field) = target::<HtmlInputElement>(&event) {
            model.change(input.path, &with_unit(&field.value(), scale.unit));
        }
    });
    let commit = on(move |event: Event| {
        if let Some(field) = target::<HtmlInputElement>(&event) {
            model.change(input.path, &with_unit(&field.value(), scale.unit));
            // An accepted value is shown in its own form even when it is the same as before.
            if model.peek(|s| s.problem.is_none()) {
                let now = model.peek(|s| s.number(input.path)).map(|value| scale.people(value));
                field.set_value(&scale.text(now));
            }
        }
    });
    let reset = on(move |_: MouseEvent| model.reset(Some(input.path)));
    let name = input.attribute();
    view! {
        <div class="control" class:refused=refused>
            <label for=format!("{name}-slider") title=help>
                {label} " " <i>{symbol(input.symbol)}</i>
            </label>
            <input
                type="range"
                id=format!("{name}-slider")
                min=plain(usual.0)
                max=plain(usual.1)
                step=format::plain(step)
                prop:value=position
                aria-valuetext=shown
                on:input=slide
            />
            <input
                type="text"
                inputmode="decimal"
                autocomplete="off"
                class="number"
                id=format!("{name}-number")
                aria-label=label
                aria-invalid=invalid
                aria-describedby="problem"
                prop:value=shown
                on:change=commit
            />
            <button type="button" class="reset" title=reset_label aria-label=reset_label on:click=reset>
                "↺"
            </button>
        </div>
    }
    .into_any()
}

/// What was typed, with the unit that the field shows where none was typed.
fn with_unit(typed: &str, unit: &str) -> String {
    let bare = typed
        .trim()
        .bytes()
        .all(|byte| byte.is_ascii_digit() || matches!(byte, b'.' | b'-' | b'+'));
    if bare { format!("{typed} {unit}") } else { typed.into() }
}

/// A symbol with its subscript.
fn symbol(name: &'static str) -> AnyView {
    let (base, below) = name.split_once('_').unwrap_or((name, ""));
    view! { {base} <sub>{below}</sub> }.into_any()
}

fn choice(model: Model, input: &'static Input, options: &'static [&'static str]) -> AnyView {
    let name = input.attribute();
    let path = input.path;
    let label = text(move || model.read(|s| words::get(s.lang, &input.label_key()).into()));
    let now = move || {
        model.read(|s| s.report.as_ref().and_then(|r| r.scenario.word(path)).unwrap_or(""))
    };
    let value = text(move || now().into());
    let pick = on(move |event: Event| {
        if let Some(list) = target::<HtmlSelectElement>(&event) {
            model.change(path, &list.value());
        }
    });
    // The empty choice says what holds when nothing is chosen; a chosen vehicle cannot be unchosen.
    let none = match path {
        "vehicle.base" => "ui.own_vehicle",
        "surface.kind" => "ui.own_tyres",
        _ => "",
    };
    let listed = part(move || {
        let now = now();
        let mut views = Vec::new();
        if !none.is_empty() && (path != "vehicle.base" || now.is_empty()) {
            views.push(option(model, "", none.into(), now.is_empty()));
        }
        for word in options {
            let key = match path {
                "vehicle.base" => format!("vehicle.{word}"),
                "surface.kind" => format!("surface.{word}"),
                _ => String::new(),
            };
            views.push(option(model, word, key, now == *word));
        }
        views
    });
    view! {
        <div class="control choice">
            <label for=format!("{name}-list")>{label}</label>
            <select id=format!("{name}-list") prop:value=value on:change=pick>{listed}</select>
        </div>
    }
    .into_any()
}

fn option(model: Model, word: &'static str, key: String, chosen: bool) -> AnyView {
    let label = model.read(|s| words::find(s.lang, &key).unwrap_or(word));
    view! { <option value=word selected=chosen>{label}</option> }.into_any()
}
