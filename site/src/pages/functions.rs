//! The functions that a page's text may use.

use super::interface::interface;
use super::{Context, glossary, practice, reference, teach};
use crate::published::{self, Check};
use crate::serve::CONTENT_SECURITY_POLICY;
use axlewright_core::input::{self, Kind, nearest};
use axlewright_core::topic::{Report, TOPICS, Topic};
use axlewright_core::units::System;
use axlewright_core::words::{self, Lang};
use axlewright_core::{Scenario, format};
use axlewright_widgets::element::working_html::working_html;
use axlewright_widgets::figure::svg::push_escaped;
use axlewright_widgets::figure::{NARROW, Theme, WIDE};
use axlewright_widgets::figure_file::figure_file;
use axlewright_widgets::table::{label_text, value_text};
use axlewright_widgets::visual::{Look, Visual};
use minijinja::value::{Kwargs, Rest};
use minijinja::{Environment, Error, ErrorKind};
use std::sync::Arc;

pub(super) const LANG: Lang = Lang::English;

pub(super) fn wrong(reason: impl Into<String>) -> Error {
    Error::new(ErrorKind::InvalidOperation, reason.into())
}

pub(super) fn escaped(text: &str) -> String {
    let mut out = String::new();
    push_escaped(&mut out, text);
    out
}

/// Adds the functions to an environment.
pub(super) fn add(environment: &mut Environment, context: &Arc<Context>) {
    let c = context.clone();
    environment.add_function("say", move |path: &str| say(&c, path));
    let c = context.clone();
    environment.add_function("label", move |path: &str| label(&c, path));
    let c = context.clone();
    environment.add_function("given", move |path: &str| given(&c, path));
    let c = context.clone();
    environment.add_function(
        "say_with",
        move |topic: &str, path: &str, settings: Kwargs| say_with(&c, topic, path, &settings),
    );
    let c = context.clone();
    environment.add_function("working", move |path: &str| working(&c, path));
    let c = context.clone();
    environment.add_function("results", move || results(&c));
    let c = context.clone();
    environment.add_function("figure", move |view: Option<&str>| {
        figure(&c, view.unwrap_or(""))
    });
    let c = context.clone();
    environment.add_function("element", move |attributes: Kwargs| {
        element(&c, &attributes)
    });
    let c = context.clone();
    environment.add_function("talk", move |name: &str| talk(&c, name));
    let c = context.clone();
    environment.add_function("checks", move |ids: Rest<String>| checks(&c, &ids));
    let c = context.clone();
    environment.add_function("caution", move || caution(&c));
    environment.add_function("surfaces", surfaces);
    environment.add_function("interface", interface);
    let c = context.clone();
    environment.add_function("practice", move || practice::practice(&c));
    let c = context.clone();
    environment.add_function("questions", move || practice::sheet(&c));
    let c = context.clone();
    environment.add_function("answers", move || practice::key(&c));
    let c = context.clone();
    environment.add_function("doors", move |section: &str| doors(&c, section));
    let c = context.clone();
    environment.add_function("glossary", move || glossary::list(&c.common));
    let c = context.clone();
    environment.add_function("lesson", move |part: &str| teach::lesson(&c, part));
    let c = context.clone();
    environment.add_function("slides", move || slides(&c));
    let c = context.clone();
    environment.add_function("course", move || teach::course(&c.common));
    let c = context.clone();
    environment.add_function("follower", move |topic: &str| follower(&c, topic));
    let c = context.clone();
    environment.add_function("builder", move || builder(&c));
    let c = context.clone();
    environment.add_function("hosting", move |name: &str| hosting(&c, name));
    environment.add_function("version", || env!("CARGO_PKG_VERSION"));
    environment.add_function("header", |_: &str| {
        format!("<code>{}</code>", escaped(CONTENT_SECURITY_POLICY))
    });
    let c = context.clone();
    environment.add_function("reference", move |what: &str| {
        reference::reference(&c.common, what)
    });
}

/// A live element of another topic with what it shares of the page's scenario.
fn follower(context: &Context, name: &str) -> Result<String, Error> {
    let topic = axlewright_core::topic::find(name).map_err(|p| wrong(p.to_string()))?;
    let refused = |p: axlewright_core::Problem| wrong(p.to_string());
    let mut scenario = topic.example().map_err(refused)?;
    for (path, text) in report(context)?.scenario.entries() {
        if topic.inputs.contains(&path) {
            scenario.set(path, text).map_err(refused)?;
        }
    }
    let mut opening = format!("<{} controls=\"layout\"", topic.tag());
    for (path, text) in scenario.entries() {
        if let Some(input) = input::find(path)
            && topic.inputs.contains(&path)
        {
            opening.push_str(&format!(" {}=\"{}\"", input.attribute(), escaped(text)));
        }
    }
    let picture = picture_of(context, topic, &scenario, "")?;
    Ok(format!("{opening}>\n{picture}\n</{}>", topic.tag()))
}

/// The builder of lines to embed: a topic to pick, its element, and the lines. Without script the
/// lines of each topic's example stand there to be copied.
fn builder(context: &Context) -> Result<String, Error> {
    let mut options = String::new();
    let mut rows = String::new();
    for topic in TOPICS {
        let title = words::get(LANG, &format!("topic.{}", topic.name));
        options.push_str(&format!(
            "<option value=\"{}\">{}</option>",
            topic.tag(),
            escaped(title)
        ));
        let frame = format!(
            "<iframe src=\"https://example.org/axlewright/embed/{}.html\" title=\"{title}\" sandbox=\"allow-scripts\" width=\"100%\" height=\"900\"></iframe>",
            topic.slug()
        );
        let page = context
            .common
            .pages
            .iter()
            .any(|page| page.slug == topic.slug());
        let name = if page {
            format!("<a href=\"{}.html\">{}</a>", topic.slug(), escaped(title))
        } else {
            escaped(title)
        };
        rows.push_str(&format!(
            "<dt>{name}</dt><dd><code>{}</code></dd>",
            escaped(&frame)
        ));
    }
    let word = |name: &str| escaped(words::get(LANG, &format!("site.embed_{name}")));
    let line = |id: &str| {
        format!(
            "<div class=\"line\"><label for=\"{id}\">{0}</label><textarea id=\"{id}\" rows=\"4\" readonly spellcheck=\"false\"></textarea><button type=\"button\" data-copy=\"{id}\">{1}</button></div>",
            word(id),
            word("copy")
        )
    };
    let lines: String = ["module", "classic", "frame", "image"].map(line).concat();
    Ok(format!(
        "<div id=\"builder\" data-copied=\"{copied}\" hidden>\n<p><label for=\"topic\">{topic}</label> <select id=\"topic\">{options}</select></p>\n<div id=\"set-up\"></div>\n{lines}<p><a id=\"still\">{save}</a></p>\n<p id=\"copied\" role=\"status\"></p>\n</div>\n<noscript><p>{no_script}</p><dl>{rows}</dl></noscript>",
        copied = word("copied"),
        topic = word("topic"),
        save = word("save"),
        no_script = word("no_script"),
    ))
}

/// An example of a server's settings, as it stands in the source tree.
fn hosting(context: &Context, name: &str) -> Result<String, Error> {
    let found = context.common.hosting.iter().find(|(own, _)| own == name);
    let (_, text) = found.ok_or_else(|| wrong(format!("there is no site/hosting/{name}")))?;
    Ok(format!("```\n{}\n```", text.trim_end()))
}

/// Links to the pages of a group: the short title, and the question that the page answers.
fn doors(context: &Context, section: &str) -> String {
    let mut html = String::from("<ul class=\"doors\">");
    for page in &context.common.pages {
        if page.section == section && page.slug != context.slug && page.slug != "index" {
            html.push_str(&format!(
                "<li><a href=\"{}.html\">{}</a><p>{}</p></li>",
                page.slug,
                escaped(&page.short),
                escaped(if section == "topics" {
                    &page.heading
                } else {
                    &page.summary
                })
            ));
        }
    }
    html + "</ul>"
}

/// Width of a figure for slides: few units, so that its text is large on a wall.
const SLIDE: f64 = 640.0;

/// The topic's figures for slides, each as a file with its description.
fn slides(context: &Context) -> Result<String, Error> {
    let topic = report(context)?.topic;
    let visual = Visual::of(topic).ok_or_else(|| wrong("this topic has no figure"))?;
    let scenario = topic.example().map_err(|p| wrong(p.to_string()))?;
    let refused = |p: axlewright_core::Problem| wrong(p.to_string());
    let look = Look {
        width: SLIDE,
        ..Look::default()
    };
    let mut html = String::from("<ul>");
    for view in visual.views {
        let drawing = visual.draw(&scenario, *view, &look).map_err(refused)?;
        let content =
            figure_file(visual, &scenario, *view, &look, Theme::Print).map_err(refused)?;
        let path = format!("slides/{}-{}.svg", topic.slug(), view.word());
        html.push_str(&format!(
            "<li><a href=\"{path}\" download>{path}</a>: {}</li>",
            escaped(drawing.title())
        ));
        context.keep(path, content)?;
    }
    Ok(html + "</ul>")
}

pub(super) fn report(context: &Context) -> Result<&Report, Error> {
    context
        .report
        .as_ref()
        .ok_or_else(|| wrong("this page names no topic"))
}

fn reading<'a>(
    report: &'a Report,
    path: &str,
) -> Result<&'a axlewright_core::topic::Reading, Error> {
    report
        .readings
        .iter()
        .find(|r| r.path == path)
        .ok_or_else(|| {
            let near = nearest(path, report.readings.iter().map(|r| r.path.as_str()));
            wrong(format!(
                "{path} is not answered here; the nearest is {}",
                near.unwrap_or("none")
            ))
        })
}

/// A value of the answer, as people read it.
pub(super) fn say(context: &Context, path: &str) -> Result<String, Error> {
    let report = report(context)?;
    Ok(value_text(report, reading(report, path)?, LANG, System::Si))
}

/// What a value of the answer is.
fn label(context: &Context, path: &str) -> Result<String, Error> {
    let report = report(context)?;
    Ok(label_text(report, reading(report, path)?, LANG))
}

/// An input of the page's scenario, as people read it.
pub(super) fn given(context: &Context, path: &str) -> Result<String, Error> {
    let scenario = &report(context)?.scenario;
    let input = input::find(path).ok_or_else(|| wrong(format!("{path} is not an input")))?;
    match &input.kind {
        Kind::Quantity { dimension, .. } => scenario
            .number(path)
            .map(|value| format::quantity(value, *dimension, System::Si, 3, LANG)),
        _ => scenario.word(path).map(str::to_owned),
    }
    .ok_or_else(|| wrong(format!("{path} is not given")))
}

/// A value for the page's scenario with some fields changed: `say_with("traction",
/// "limits.F1.acceleration", surface__grade="5 %")`; two underscores stand for the dot.
fn say_with(
    context: &Context,
    topic: &str,
    path: &str,
    settings: &Kwargs,
) -> Result<String, Error> {
    let topic = axlewright_core::topic::find(topic).map_err(|p| wrong(p.to_string()))?;
    let mut scenario = match &context.report {
        Some(report) => report.scenario.clone(),
        None => topic.example().map_err(|p| wrong(p.to_string()))?,
    };
    for name in settings.args() {
        let value: String = settings.get(name)?;
        let field = name.replace("__", ".");
        scenario
            .set(&field, &value)
            .map_err(|p| wrong(p.to_string()))?;
    }
    let report = topic.report(&scenario).map_err(|p| wrong(p.to_string()))?;
    Ok(value_text(
        &report,
        reading(&report, path)?,
        LANG,
        System::Si,
    ))
}

/// The derivation of a value, as HTML.
fn working(context: &Context, path: &str) -> Result<String, Error> {
    let report = report(context)?;
    reading(report, path)?;
    Ok(working_html(&report.derivation(path), LANG))
}

/// All values of the answer as a table.
fn results(context: &Context) -> Result<String, Error> {
    let report = report(context)?;
    let mut html = format!(
        "<table class=\"results\" tabindex=\"0\"><thead><tr><th scope=\"col\">{}</th><th scope=\"col\">{}</th></tr></thead><tbody>",
        words::get(LANG, "ui.quantity"),
        words::get(LANG, "ui.value")
    );
    for reading in &report.readings {
        html.push_str(&format!(
            "<tr><th scope=\"row\">{}</th><td>{}</td></tr>",
            escaped(&label_text(report, reading, LANG)),
            escaped(&value_text(report, reading, LANG, System::Si))
        ));
    }
    html.push_str("</tbody></table>");
    Ok(html)
}

/// Draws the page's figure in light and dark, wide and narrow, and returns the picture's HTML.
pub(super) fn picture(context: &Context, scenario: &Scenario, view: &str) -> Result<String, Error> {
    picture_of(context, report(context)?.topic, scenario, view)
}

fn picture_of(
    context: &Context,
    topic: &Topic,
    scenario: &Scenario,
    view: &str,
) -> Result<String, Error> {
    let visual = Visual::of(topic).ok_or_else(|| wrong("this topic has no figure"))?;
    let refused = |p: axlewright_core::Problem| wrong(p.to_string());
    let view = visual.view(view).map_err(refused)?;
    let look = |width: f64| Look {
        width,
        ..Look::default()
    };
    let drawing = visual.draw(scenario, view, &look(WIDE)).map_err(refused)?;
    // Beside the page's own topic another may have a view of the same name.
    let own = context.report.as_ref();
    let other = if own.is_some_and(|report| report.topic.name == topic.name) {
        String::new()
    } else {
        format!("{}-", topic.slug())
    };
    let name = format!("figures/{}-{other}{}", context.slug, view.word());
    let file = |theme, dark: &str, width: f64, narrow: &str| -> Result<String, Error> {
        let content = figure_file(visual, scenario, view, &look(width), theme).map_err(refused)?;
        context.keep(format!("{name}{narrow}{dark}.svg"), content)
    };
    let wide = file(Theme::Light, "", WIDE, "")?;
    let wide_dark = file(Theme::Dark, "-dark", WIDE, "")?;
    let narrow = file(Theme::Light, "", NARROW, "-narrow")?;
    let narrow_dark = file(Theme::Dark, "-dark", NARROW, "-narrow")?;
    let alt = escaped(&format!("{}. {}", drawing.title(), drawing.description()));
    Ok(format!(
        "<picture><source media=\"screen and (max-width: 599px) and (prefers-color-scheme: dark)\" srcset=\"{narrow_dark}\">\
         <source media=\"(max-width: 599px)\" srcset=\"{narrow}\">\
         <source media=\"screen and (prefers-color-scheme: dark)\" srcset=\"{wide_dark}\">\
         <img src=\"{wide}\" alt=\"{alt}\"></picture>"
    ))
}

/// A figure of the page's scenario.
fn figure(context: &Context, view: &str) -> Result<String, Error> {
    let report = report(context)?;
    let picture = picture(context, &report.scenario, view)?;
    Ok(format!("<figure>{picture}</figure>"))
}

/// The live element with the page's scenario; inside it the picture that stays without script.
pub(super) fn element(context: &Context, attributes: &Kwargs) -> Result<String, Error> {
    let report = report(context)?;
    let topic = report.topic;
    let mut opening = format!("<{}", topic.tag());
    for (path, text) in report.scenario.entries() {
        if topic.inputs.contains(&path)
            && let Some(input) = input::find(path)
        {
            opening.push_str(&format!(" {}=\"{}\"", input.attribute(), escaped(text)));
        }
    }
    for name in attributes.args() {
        let value: String = attributes.get(name)?;
        opening.push_str(&format!(
            " {}=\"{}\"",
            name.replace('_', "-"),
            escaped(&value)
        ));
    }
    let view: Option<String> = attributes.get("view").ok();
    let picture = picture(context, &report.scenario, view.as_deref().unwrap_or(""))?;
    // The opening tag stands alone on its line: so Markdown takes the element as a block.
    Ok(format!("{opening}>\n{picture}\n</{}>", topic.tag()))
}

/// A talk of `site/talks`, with its text for readers without script.
fn talk(context: &Context, name: &str) -> Result<String, Error> {
    let found = context.common.talks.iter().find(|talk| talk.name == name);
    let held = found.ok_or_else(|| wrong(format!("there is no talk {name}")))?;
    Ok(held.html.clone())
}

/// Published checks as a table: what the source says, what the core says.
fn checks(context: &Context, ids: &[String]) -> Result<String, Error> {
    let mut html = String::from("<table class=\"checks\" tabindex=\"0\">");
    let heads = [
        "check_case",
        "check_published",
        "check_here",
        "check_source",
    ];
    html.push_str(&head_row(&heads));
    for id in ids {
        let mut found = context
            .common
            .checks
            .iter()
            .filter(|check| check.id == *id)
            .peekable();
        if found.peek().is_none() {
            return Err(wrong(format!("there is no published check {id}")));
        }
        for check in found {
            html.push_str(&check_row(check)?);
        }
    }
    html.push_str("</tbody></table>");
    Ok(html)
}

/// The head of a table and the start of its body.
pub(super) fn head_row(keys: &[&str]) -> String {
    let mut html = String::from("<thead><tr>");
    for key in keys {
        let text = words::get(LANG, &format!("site.{key}"));
        html.push_str(&format!("<th scope=\"col\">{text}</th>"));
    }
    html + "</tr></thead><tbody>"
}

/// Decimals that show a difference of the size of the tolerance.
pub(super) fn decimals_of(tolerance: f64) -> u8 {
    let mut decimals = 0;
    let mut step = 1.0;
    while step > tolerance && decimals < 6 {
        step /= 10.0;
        decimals += 1;
    }
    decimals
}

fn check_row(check: &Check) -> Result<String, Error> {
    let ours = published::compute(check).map_err(|e| wrong(e.to_string()))?;
    if !check.holds(ours) {
        return Err(wrong(format!("check {} does not hold: {ours}", check.id)));
    }
    let decimals = decimals_of(check.tolerance);
    let show = |value: f64| {
        let text = format::fixed(value, decimals, LANG);
        escaped(&format::with_unit(text, &check.unit))
    };
    Ok(format!(
        "<tr><th scope=\"row\">{}</th><td>{}</td><td>{}</td><td>{} ({})</td></tr>",
        escaped(&check.what),
        show(check.expected),
        show(ours),
        escaped(&check.source),
        escaped(words::get(LANG, &format!("check.{}", check.label.word())))
    ))
}

fn caution(context: &Context) -> Result<String, Error> {
    let topic = report(context)?.topic;
    Ok(format!(
        "<p class=\"caution\"><strong>{}</strong> {}</p>",
        words::get(LANG, "figure.caution"),
        escaped(words::get(LANG, &format!("caution.{}", topic.name)))
    ))
}

/// The adhesion table.
fn surfaces() -> String {
    use axlewright_core::surface::{Label, SURFACES};
    let range = |(low, high): (f64, f64)| {
        let low_text = format::fixed(low, 2, LANG);
        if (high - low).abs() < 1e-9 {
            low_text
        } else {
            format!("{low_text} – {}", format::fixed(high, 2, LANG))
        }
    };
    let mut html = String::from("<table tabindex=\"0\">");
    let heads = [
        "surface",
        "surface_peak",
        "surface_sliding",
        "surface_known",
    ];
    html.push_str(&head_row(&heads));
    for surface in SURFACES {
        let known = match surface.label {
            Label::Quoted => words::get(LANG, "site.surface_quoted"),
            Label::Memory => words::get(LANG, "site.surface_memory"),
        };
        html.push_str(&format!(
            "<tr><th scope=\"row\">{}</th><td>{}</td><td>{}</td><td>{known}</td></tr>",
            words::get(LANG, &surface.label_key()),
            range(surface.peak),
            range(surface.sliding)
        ));
    }
    html.push_str("</tbody></table>");
    html
}
