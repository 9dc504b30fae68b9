//! The inputs that the reader may move: a slider, a number with its unit and a reset for each
//! quantity, a list for each choice.

use super::erase::{tag, target};
use super::model::Model;
use super::toolbar::steps;
use crate::difference::choice_text;
use crate::figure::svg::push_escaped;
use axlewright_core::format;
use axlewright_core::input::{self, Input, Kind};
use axlewright_core::layout::Layout;
use axlewright_core::units::{self, Dimension, System};
use axlewright_core::words::{self, Lang};
use leptos::prelude::*;
use web_sys::{HtmlInputElement, HtmlSelectElement};

/// All controls of an element. They are made anew only when the page changes which there are.
pub(super) fn controls(model: Model) -> AnyView {
    let mut turn = false;
    let all = move || {
        model.arrangement.get();
        let (paths, system) = model.peek(|s| (s.control_paths(model.visual), s.system));
        let mut views: Vec<AnyView> = paths
            .into_iter()
            .filter_map(input::find)
            .map(|input| control(model, input, system))
            .collect();
        if !views.is_empty() {
            let steps = steps(model).into_iter();
            let row = tag("div", "steps").fixed("role", "group");
            views.push(steps.fold(row, |row, step| row.with(step)).view());
        }
        // Another set of controls gets another wrapper: Leptos then makes all anew instead of
        // patching one kind of control into another.
        turn = !turn;
        let wrapper = tag(if turn { "div" } else { "section" }, "set");
        let wrapper = views.into_iter().fold(wrapper, |all, view| all.with(view));
        vec![wrapper.view()]
    };
    tag("div", "controls")
        .fixed("part", "controls")
        .part(all)
        .view()
}

fn control(model: Model, input: &'static Input, system: System) -> AnyView {
    match &input.kind {
        Kind::Quantity { .. } => quantity(model, input, system),
        Kind::Choice { words, .. } => choice(model, input, words),
        Kind::Layouts => layouts(model, input),
        Kind::Text { .. } => file(model, input),
    }
}

/// A number without the noise of binary fractions.
fn tidy(value: f64) -> f64 {
    axlewright_core::math::round(value * 1e6) / 1e6
}

/// The step of 1, 2 or 5 times a power of ten that is next below a converted one.
fn round_step(step: f64) -> f64 {
    let mut decade = 0.001;
    while decade * 10.0 <= step {
        decade *= 10.0;
    }
    let of_decade = if step >= 5.0 * decade {
        5.0
    } else if step >= 2.0 * decade {
        2.0
    } else {
        1.0
    };
    tidy(of_decade * decade)
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
pub(super) struct Scale {
    input: &'static Input,
    dimension: Dimension,
    system: System,
    pub(super) unit: &'static str,
    /// Step of its slider, and where that ends: on steps, so that a step never stops short of a round
    /// value.
    pub(super) step: f64,
    pub(super) ends: (f64, f64),
    pub(super) decimals: u8,
}

impl Scale {
    /// How an input is shown; `None` for what is no quantity.
    pub(super) fn of(input: &'static Input, system: System) -> Option<Self> {
        let Kind::Quantity {
            dimension,
            usual,
            step,
            ..
        } = input.kind
        else {
            return None;
        };
        let mut scale = Self {
            input,
            dimension,
            system,
            unit: dimension.display_unit(system),
            step,
            ends: (0.0, 0.0),
            decimals: 0,
        };
        scale.step = match system {
            System::Si => scale.people(step),
            System::Us => round_step(scale.people(step)),
        };
        scale.decimals = decimals(scale.step);
        let end = |value: f64| {
            let steps = axlewright_core::math::round(scale.people(value) / scale.step);
            tidy(steps * scale.step)
        };
        scale.ends = (end(usual.0), end(usual.1));
        Some(scale)
    }

    pub(super) fn people(&self, value: f64) -> f64 {
        tidy(units::from_si(value, self.dimension, self.system))
    }

    fn number(&self, model: Model) -> Option<f64> {
        let path = self.input.path;
        model
            .read(|state| state.number(path))
            .map(|value| self.people(value))
    }

    pub(super) fn text(&self, value: Option<f64>, lang: Lang) -> String {
        value.map_or_else(String::new, |value| {
            format::with_unit(format::fixed(value, self.decimals, lang), self.unit)
        })
    }
}

fn quantity(model: Model, input: &'static Input, system: System) -> AnyView {
    let Some(scale) = Scale::of(input, system) else {
        return ().into_any();
    };
    // What was refused stays in its field, to be corrected there.
    let refused_text = move || {
        model.read(|s| {
            let problem = s.problem.as_ref();
            problem
                .filter(|p| p.field() == input.path)
                .map(|p| p.value().to_owned())
        })
    };
    let lang = move || model.read(|s| s.lang);
    let shown = move || refused_text().unwrap_or_else(|| scale.text(scale.number(model), lang()));
    let name = move || model.read(|s| words::get(s.lang, &input.label_key()).to_owned());
    let reset_name = move || {
        let name = name();
        model.read(|s| words::fill(s.lang, "ui.reset", &[&name]))
    };
    let refused =
        move || model.read(|s| s.problem.as_ref().is_some_and(|p| p.field() == input.path));
    let slide = move |event| {
        if let Some(field) = target::<HtmlInputElement>(&event) {
            model.change(input.path, &with_unit(&field.value(), scale.unit), None);
        }
    };
    let commit = move |event| {
        if let Some(field) = target::<HtmlInputElement>(&event) {
            let lang = model.peek(|s| s.lang);
            let typed = with_unit(&field.value(), scale.unit);
            model.change(input.path, &typed, Some(lang));
            // An accepted value is shown in its own form even when it is the same as before.
            if model.peek(|s| s.problem.is_none()) {
                let now = model
                    .peek(|s| s.number(input.path))
                    .map(|value| scale.people(value));
                field.set_value(&scale.text(now, lang));
            }
        }
    };
    let attribute = input.attribute();
    let slider = format!("{attribute}-slider");
    // The range comes before the value, which the browser would otherwise force into 0 to 100.
    let range = tag("input", "")
        .fixed("type", "range")
        .fixed("id", &slider)
        .fixed("min", &format::plain(scale.ends.0))
        .fixed("max", &format::plain(scale.ends.1))
        .fixed("step", &format::plain(scale.step))
        .value(move || scale.number(model).map_or_else(String::new, format::plain))
        .live("aria-valuetext", shown)
        .on("input", slide);
    let number = tag("input", "number")
        .fixed("type", "text")
        .fixed("inputmode", "decimal")
        .fixed("autocomplete", "off")
        .fixed("id", &format!("{attribute}-number"))
        .live("aria-label", name)
        .live("aria-invalid", move || {
            if refused() {
                "true".into()
            } else {
                "false".into()
            }
        })
        .fixed("aria-describedby", "problem")
        .value(shown)
        .on("change", commit);
    let reset = tag("button", "reset")
        .fixed("type", "button")
        .live("title", reset_name)
        .live("aria-label", reset_name)
        .on("click", move |_| model.reset(Some(input.path)))
        .word("↺");
    let label = tag("label", "")
        .fixed("for", &slider)
        .live("title", move || {
            model.read(|s| words::get(s.lang, &input.help_key()).into())
        })
        .with(tag("span", "").says(name).view())
        .word(" ")
        .with(symbol(input.symbol));
    let class = move || {
        if refused() {
            "control refused".into()
        } else {
            "control".into()
        }
    };
    [label, range, number, reset]
        .into_iter()
        .fold(tag("div", "").live("class", class), |row, part| {
            row.with(part.view())
        })
        .view()
}

/// What was typed, with the unit that the field shows where none was typed.
fn with_unit(typed: &str, unit: &str) -> String {
    let bare = typed
        .trim()
        .chars()
        .all(|letter| letter.is_ascii_digit() || ".,+-−\u{2009}\u{202f}\u{a0}".contains(letter));
    if bare {
        format!("{typed} {unit}")
    } else {
        typed.into()
    }
}

/// A symbol with its subscript.
fn symbol(name: &'static str) -> AnyView {
    let (base, below) = name.split_once('_').unwrap_or((name, ""));
    let below = tag("sub", "").word(below).view();
    tag("i", "").word(base).with(below).view()
}

fn choice(model: Model, input: &'static Input, options: &'static [&'static str]) -> AnyView {
    let path = input.path;
    // The empty choice says what holds when nothing is chosen; a chosen vehicle cannot be unchosen.
    let none = match path {
        "vehicle.base" => "ui.own_vehicle",
        "surface.kind" => "ui.own_tyres",
        _ => "",
    };
    let listed = move || {
        model.read(|s| {
            let now = s
                .report
                .as_ref()
                .and_then(|r| match path {
                    // The layout that is shown need not have been named.
                    "layout" => Some(r.scenario.layout().name()),
                    _ => r.scenario.word(path),
                })
                .unwrap_or("");
            let mut html = String::new();
            if !none.is_empty() && (path != "vehicle.base" || now.is_empty()) {
                push_option(&mut html, "", words::get(s.lang, none), now.is_empty());
            }
            for word in options {
                let label = choice_text(path, word, s.lang);
                push_option(&mut html, word, label, now == *word);
            }
            html
        })
    };
    let pick = move |event| {
        if let Some(list) = target::<HtmlSelectElement>(&event) {
            model.change(path, &list.value(), None);
            // What was refused is not shown as chosen.
            if model.peek(|s| s.problem.is_some()) {
                list.set_inner_html(&listed());
            }
        }
    };
    let id = format!("{}-list", input.attribute());
    let label = tag("label", "")
        .fixed("for", &id)
        .says(move || model.read(|s| words::get(s.lang, &input.label_key()).into()));
    let list = tag("select", "")
        .fixed("id", &id)
        .options(listed)
        .on("change", pick);
    tag("div", "control choice")
        .with(label.view())
        .with(list.view())
        .view()
}

/// How many layouts a reader compares at most; more lines in a chart cannot be told apart.
const COMPARED: usize = 4;

/// A box to tick for each layout.
fn layouts(model: Model, input: &'static Input) -> AnyView {
    let compared = move || model.read(|s| s.report.as_ref().map(|r| r.scenario.layouts()));
    let chosen = move |layout| compared().is_some_and(|all| all.contains(&layout));
    // The layout that the figure shows is always among them.
    let shown = move || model.read(|s| s.report.as_ref().map(|r| r.scenario.layout()));
    let full = move || compared().is_some_and(|all| all.len() >= COMPARED);
    let pick = move |layout: Layout| {
        let mut all = compared().unwrap_or_default();
        if chosen(layout) {
            all.retain(|other| *other != layout);
        } else {
            all.push(layout);
        }
        let names: Vec<_> = Layout::ALL
            .iter()
            .filter(|layout| all.contains(layout))
            .map(|layout| layout.name())
            .collect();
        if !names.is_empty() {
            model.change(input.path, &names.join(" "), None);
        }
    };
    let name = move || model.read(|s| words::get(s.lang, &input.label_key()).into());
    let mut boxes = tag("div", "boxes")
        .fixed("role", "group")
        .live("aria-label", name);
    for layout in Layout::ALL {
        let on = move || {
            if chosen(layout) {
                "1".into()
            } else {
                String::new()
            }
        };
        let off = move || {
            if shown() == Some(layout) || full() && !chosen(layout) {
                "1".into()
            } else {
                String::new()
            }
        };
        let field = tag("input", "")
            .fixed("type", "checkbox")
            .flag("checked", on)
            .flag("disabled", off)
            .on("change", move |_| pick(layout));
        boxes = boxes.with(
            tag("label", "")
                .with(field.view())
                .word(layout.name())
                .view(),
        );
    }
    tag("div", "control choice")
        .with(tag("span", "").says(name).view())
        .with(boxes.view())
        .view()
}

/// A file to read a text from; the script reads it and hands it over.
fn file(model: Model, input: &'static Input) -> AnyView {
    let id = input.attribute() + "-file";
    let label = tag("label", "")
        .fixed("for", &id)
        .live("title", move || {
            model.read(|s| words::get(s.lang, &input.help_key()).into())
        })
        .says(move || model.read(|s| words::get(s.lang, &input.label_key()).into()));
    let field = tag("input", "")
        .fixed("type", "file")
        .fixed("accept", ".csv,.txt,text/*")
        .fixed("id", &id)
        .fixed("data-path", input.path);
    tag("div", "control choice")
        .with(label.view())
        .with(field.view())
        .view()
}

fn push_option(html: &mut String, word: &str, label: &str, chosen: bool) {
    html.push_str("<option value=\"");
    html.push_str(word);
    html.push_str(if chosen { "\" selected>" } else { "\">" });
    push_escaped(html, label);
    html.push_str("</option>");
}
