//! The form of a question that asks for a line: axes with nine handles, which are sliders; the script lays
//! them over the axes and moves them under the pointer (`widgets/js/sketch.js`).

use super::erase::{Place, target};
use super::model::Model;
use super::question::Writer;
use super::quiz::Quiz;
use super::state::State;
use crate::figure::number::within;
use crate::figure::{Chart, SvgOptions, Theme, chart_layout, chart_svg};
use crate::sketch::{Drawn, chart};
use axlewright_core::format::plain;
use axlewright_core::question::{Asked, PLACES, Said, Verdict};
use axlewright_core::units::{self, Dimension, to_si};
use axlewright_core::words;
use leptos::prelude::GetUntracked;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, HtmlInputElement};

/// Steps from the foot of the axis to its top.
const STEPS: f64 = 100.0;

/// Width of the axes in an element of a width, in CSS pixels; 0 where no line is asked for.
pub(super) fn width(quiz: &Quiz, element: f64) -> f64 {
    let asked = quiz.asked.as_ref();
    match asked.and_then(Asked::course) {
        Some(_) => within(element - 44.0, 240.0, 640.0),
        None => 0.0,
    }
}

fn put_chart(writer: &mut Writer, chart: &Chart) {
    writer.html.push_str(&chart_svg(
        chart,
        &SvgOptions {
            prefix: "line",
            theme: Theme::Live,
            ..SvgOptions::default()
        },
    ));
}

/// Empty axes, and a handle at each place.
pub(super) fn put_axes(
    writer: &mut Writer,
    quiz: &Quiz,
    asked: &Asked,
    (label, state): (&str, &State),
) {
    let (lang, system) = (state.lang, state.system);
    let wide = width(quiz, state.width);
    let (Some(chart), Some(course)) = (
        chart(asked, Drawn::Nothing, wide, (lang, system)),
        asked.course(),
    ) else {
        return;
    };
    writer.put(
        "<fieldset aria-describedby=\"help refusal\"><legend>",
        label,
    );
    writer.word(
        "</legend><p class=\"help\" id=\"help\">",
        "question.sketch_how",
    );
    writer.put(" ", &asked.tolerance(lang));
    writer
        .html
        .push_str("</p><p class=\"told\"></p><div class=\"paper\" dir=\"ltr\">");
    put_chart(writer, &chart);
    let plot = chart_layout(&chart).plot;
    let (width, height) = (chart.width, chart.height);
    let shares = [
        plot.x0 / width,
        plot.y0 / height,
        (plot.x1 - plot.x0) / width,
        (plot.y1 - plot.y0) / height,
    ];
    writer.put(
        "<div class=\"pad\" data-plot=\"",
        &shares.map(plain).join(" "),
    );
    let top = course.top(system);
    let middle = plain(top / 2.0);
    writer.put("\" data-first=\"", &middle);
    writer.html.push_str("\">");
    let mut drawn = quiz.typed.split(' ').filter(|word| !word.is_empty());
    for at in 0..PLACES {
        let value = drawn.next().unwrap_or(&middle);
        writer.put("<input type=\"range\" min=\"0\" max=\"", &plain(top));
        writer.put("\" step=\"", &plain(top / STEPS));
        writer.put("\" value=\"", value);
        writer.put("\" aria-label=\"", &asked.place(at, lang, system));
        let height = units::parse(value, Dimension::Ratio).unwrap_or(top / 2.0);
        let si = to_si(height, course.most.dimension, system);
        writer.put(
            "\" aria-orientation=\"vertical\" aria-valuetext=\"",
            &asked.height(at, si, lang, system),
        );
        writer.html.push_str("\">");
    }
    writer.html.push_str("</div></div></fieldset>");
}

/// The true line beside the reader's, and both as a table.
pub(super) fn put_lines(
    writer: &mut Writer,
    quiz: &Quiz,
    asked: &Asked,
    (verdict, state): (&Verdict, &State),
) {
    let (lang, system) = (state.lang, state.system);
    let (Said::Line(given), Said::Line(right)) = (&verdict.given, &verdict.right) else {
        return;
    };
    let wide = width(quiz, state.width);
    let Some(chart) = chart(asked, Drawn::Both(given), wide, (lang, system)) else {
        return;
    };
    writer.html.push_str("<div class=\"paper\" dir=\"ltr\">");
    put_chart(writer, &chart);
    writer.word("</div><details><summary>", "ui.data");
    writer.html.push_str("</summary>");
    writer.word(
        "<div class=\"sheet\" tabindex=\"0\" role=\"group\" aria-label=\"",
        "ui.data",
    );
    writer.put(
        "\"><table><thead><tr><th scope=\"col\">",
        words::get(lang, &["input.", asked.asked_for()].concat()),
    );
    for key in ["question.line_yours", "question.line_right"] {
        writer.word("</th><th scope=\"col\">", key);
    }
    writer.html.push_str("</th></tr></thead><tbody>");
    for at in 0..PLACES {
        writer.put("<tr><th scope=\"row\">", &asked.place(at, lang, system));
        writer.html.push_str("</th>");
        for value in [given[at], right[at]] {
            writer.put("<td>", &asked.value(value, lang, system));
            writer.html.push_str("</td>");
        }
        writer.html.push_str("</tr>");
    }
    writer.html.push_str("</tbody></table></div></details>");
}

fn handles(form: &Element) -> Vec<HtmlInputElement> {
    let Ok(found) = form.query_selector_all(".pad input") else {
        return Vec::new();
    };
    let handles = (0..found.length()).filter_map(|at| found.get(at)?.dyn_into().ok());
    handles.collect()
}

/// What has been drawn in a form that asks for a line: its heights, or nothing where all of them are
/// still as they were.
pub(super) fn drawn(form: &Element) -> Option<String> {
    let pad = form.query_selector(".pad").ok()??;
    let first = pad.get_attribute("data-first").unwrap_or_default();
    let heights: Vec<String> = handles(form).iter().map(HtmlInputElement::value).collect();
    if heights.iter().all(|height| *height == first) {
        return Some(String::new());
    }
    Some(heights.join(" "))
}

/// Says what a handle says that the reader has moved.
pub(super) fn heard(model: &Model, place: Place, event: &Event) {
    let (Some(form), Some(handle)) = (place.get_untracked(), target::<HtmlInputElement>(event))
    else {
        return;
    };
    let Some(at) = handles(&form).iter().position(|other| *other == handle) else {
        return;
    };
    let told = model.peek(|state| {
        let asked = state.quiz.as_ref()?.asked.as_ref()?;
        let dimension = asked.course()?.most.dimension;
        let value = to_si(handle.value_as_number(), dimension, state.system);
        Some(asked.height(at, value, state.lang, state.system))
    });
    let told = told.unwrap_or_default();
    let _ = handle.set_attribute("aria-valuetext", &told);
    if let Ok(Some(line)) = form.query_selector(".told") {
        line.set_text_content(Some(&told));
    }
}
