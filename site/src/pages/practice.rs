//! Questions on pages: three to practise on a topic's page, all of them on the teacher's sheets.
//!
//! A question is printed from the question table of its topic, so that a reader without script has it
//! too, with its answer and working below. Where script runs, the element asks the same question.

use super::Context;
use super::functions::{LANG, escaped, report, wrong};
use axlewright_core::Scenario;
use axlewright_core::question::{self, Asked, Choice, Kind, Question};
use axlewright_core::topic::Topic;
use axlewright_core::units::System;
use axlewright_core::words;
use axlewright_core::working::Step;
use axlewright_widgets::element::working_html::working_html;
use axlewright_widgets::figure::svg::FILE_FONT;
use axlewright_widgets::figure::{NARROW, SvgOptions, Theme, chart_svg};
use axlewright_widgets::question_chart::question_chart;
use axlewright_widgets::sketch::{self, Drawn};
use minijinja::Error;

/// How many questions a topic's page has.
const ON_PAGE: usize = 3;

/// The seed of the questions on a page; the sheets for a class have another.
const PAGE_SEED: u64 = 1;

/// The seed of the sheets.
const SHEET_SEED: u64 = 2;

/// Puts the section into a topic's text, unless it is there: before the checks, or where the limits of
/// the model are told, or at the end.
pub(super) fn add_section(body: &mut String) {
    if body.contains("{{ practice() }}") {
        return;
    }
    let section = "## Practice\n\n{{ practice() }}\n\n";
    let heads = [
        "\n## Check against published values",
        "\n## Where the model stops being true",
    ];
    match heads.iter().find_map(|head| body.find(head)) {
        Some(at) => body.insert_str(at + 1, section),
        None => {
            body.push_str("\n\n");
            body.push_str(section);
        }
    }
}

fn word(name: &str) -> &'static str {
    words::get(LANG, &format!("site.{name}"))
}

/// What a question is asked of: the page's invented vehicle and nothing else.
fn base_of(scenario: &Scenario) -> Scenario {
    let mut base = Scenario::default();
    if let Some(name) = scenario.word("vehicle.base") {
        // A name that a scenario holds is known.
        let _ = base.set("vehicle.base", name);
    }
    base
}

fn kind_of(question: &Question) -> u8 {
    match question.kind {
        _ if question.curve.is_some() => 5,
        Kind::Number { .. } => 0,
        Kind::Find { .. } => 1,
        Kind::Sketch(_) => 2,
        Kind::Choice(Choice::Change(_)) => 3,
        Kind::Choice(Choice::Spot { .. }) => 6,
        Kind::Choice(Choice::Rank { .. }) => 7,
        Kind::Choice(_) => 4,
    }
}

/// Questions of different kinds first, as far as they go.
fn chosen(topic: &Topic) -> Vec<&'static Question> {
    let all = question::of(topic);
    let mut chosen: Vec<&Question> = Vec::new();
    for question in all {
        if chosen
            .iter()
            .all(|other| kind_of(other) != kind_of(question))
        {
            chosen.push(question);
        }
    }
    for question in all {
        if chosen.iter().all(|other| other.id != question.id) {
            chosen.push(question);
        }
    }
    chosen.truncate(ON_PAGE);
    chosen.sort_by_key(|question| kind_of(question));
    chosen
}

fn make(
    topic: &'static Topic,
    question: &Question,
    seed: u64,
    base: &Scenario,
) -> Result<Asked, Error> {
    Question::make(topic, question.id, Some(seed), base).map_err(|p| wrong(p.to_string()))
}

/// The questions of a topic's page: each an element that asks it, with the printed question inside.
pub(super) fn practice(context: &Context) -> Result<String, Error> {
    let report = report(context)?;
    let topic = report.topic;
    let base = base_of(&report.scenario);
    let chosen = chosen(topic);
    if chosen.is_empty() {
        return Ok(format!("<p>{}</p>", escaped(word("no_questions"))));
    }
    let mut html = format!("<p>{}</p>", escaped(word("practice_how")));
    for (at, question) in chosen.into_iter().enumerate() {
        let asked = make(topic, question, PAGE_SEED, &base)?;
        let vehicle = base
            .word("vehicle.base")
            .map_or(String::new(), |name| format!(" vehicle=\"{name}\""));
        let tag = topic.tag();
        html.push_str(&format!(
            "<section class=\"practice\"><h3 id=\"practice-{0}\">{1}</h3><{tag}{vehicle} controls=\"\" question=\"{2} {PAGE_SEED}\"><div>{3}{4}</div></{tag}></section>",
            at + 1,
            words::fill(LANG, "site.question_number", &[&(at + 1).to_string()]),
            question.id.replace('_', "-"),
            printed(context, &asked)?,
            solution(&asked, true)?,
        ));
    }
    Ok(html)
}

/// All questions of a topic on one sheet, without answers.
pub(super) fn sheet(context: &Context) -> Result<String, Error> {
    list(context, &mut |asked| printed(context, asked))
}

/// The answers to the sheet, with their workings.
pub(super) fn key(context: &Context) -> Result<String, Error> {
    list(context, &mut |asked| {
        let statement = escaped(&asked.statement(LANG, System::Si));
        Ok(format!("<p>{statement}</p>{}", solution(asked, false)?))
    })
}

fn list(
    context: &Context,
    print: &mut dyn FnMut(&Asked) -> Result<String, Error>,
) -> Result<String, Error> {
    let report = report(context)?;
    let base = base_of(&report.scenario);
    let all = question::of(report.topic);
    if all.is_empty() {
        return Ok(format!("<p>{}</p>", escaped(word("no_questions"))));
    }
    let mut html = String::from("<ol class=\"sheet\">");
    for question in all {
        let asked = make(report.topic, question, SHEET_SEED, &base)?;
        let key = format!("{} {SHEET_SEED}", question.id.replace('_', "-"));
        html.push_str(&format!(
            "<li id=\"{}\"><p class=\"source\"><code>{key}</code></p>{}</li>",
            question.id,
            print(&asked)?
        ));
    }
    Ok(html + "</ol>")
}

/// Statement, what is given or is to be read, and the choices or how near is right.
fn printed(context: &Context, asked: &Asked) -> Result<String, Error> {
    let mut html = format!("<p>{}</p>", escaped(&asked.statement(LANG, System::Si)));
    let given = asked.given(LANG, System::Si);
    if !given.is_empty() {
        html.push_str("<dl class=\"given\">");
        for (name, value) in given {
            html.push_str(&format!(
                "<div><dt>{}</dt><dd>{}</dd></div>",
                escaped(name),
                escaped(&value)
            ));
        }
        html.push_str("</dl>");
    }
    html.push_str(&chart(context, asked)?);
    if let Some(spoilt) = &asked.spoilt {
        let lines: Vec<&Step> = spoilt.lines.iter().collect();
        html.push_str(&working_html(&lines, LANG));
    }
    html.push_str(&axes(asked, Drawn::Nothing));
    let choices = asked.choices(LANG);
    if choices.is_empty() {
        html.push_str(&format!(
            "<p class=\"source\">{}</p>",
            escaped(&asked.tolerance(LANG))
        ));
    } else {
        html.push_str("<ul class=\"choices\">");
        for (_, text) in choices {
            html.push_str(&format!("<li>{}</li>", escaped(text)));
        }
        html.push_str("</ul>");
    }
    Ok(html)
}

/// The chart that a question is read off, in light and dark; nothing where there is none.
fn chart(context: &Context, asked: &Asked) -> Result<String, Error> {
    let Some(chart) = question_chart(asked, NARROW, LANG, System::Si) else {
        return Ok(String::new());
    };
    let (topic, id) = (asked.topic.slug(), asked.question.id.replace('_', "-"));
    let seed = asked.seed.unwrap_or(0);
    let name = format!("figures/question-{topic}-{id}-{seed}");
    let file = |theme, dark: &str| -> Result<String, Error> {
        let content = chart_svg(
            &chart,
            &SvgOptions {
                prefix: "question",
                theme,
                font_family: FILE_FONT,
                metadata: "",
                sized: true,
            },
        );
        context.keep(format!("{name}{dark}.svg"), content)
    };
    let (light, dark) = (file(Theme::Light, "")?, file(Theme::Dark, "-dark")?);
    let alt = escaped(&format!("{}. {}", chart.title, chart.description));
    Ok(format!(
        "<picture><source media=\"screen and (prefers-color-scheme: dark)\" srcset=\"{dark}\"><img src=\"{light}\" alt=\"{alt}\"></picture>"
    ))
}

/// Width of the axes of a line, in units of its text: as wide as a column of a printed sheet.
const AXES: f64 = 560.0;

/// The axes of a question that asks for a line, to draw on or with the true line; nothing for others.
fn axes(asked: &Asked, drawn: Drawn) -> String {
    let end = if matches!(drawn, Drawn::Nothing) {
        ""
    } else {
        "-right"
    };
    let drawing = sketch::chart(asked, drawn, AXES, (LANG, System::Si)).map(|chart| {
        chart_svg(
            &chart,
            &SvgOptions {
                prefix: &[asked.question.id, end].concat(),
                theme: Theme::Live,
                ..SvgOptions::default()
            },
        )
    });
    drawing.map_or_else(String::new, |svg| {
        format!("<div class=\"axes\">{svg}</div>")
    })
}

/// Hint, answer and working; folded where a reader is to think first.
fn solution(asked: &Asked, folded: bool) -> Result<String, Error> {
    let report = asked.report().map_err(|p| wrong(p.to_string()))?;
    let steps = report.derivations(&asked.shown);
    let answer = format!(
        "<p><strong>{}</strong> {}</p>{}{}",
        escaped(word("answer")),
        escaped(&told(asked)),
        axes(asked, Drawn::Right),
        working_html(&steps, LANG)
    );
    let hint = escaped(asked.hint(LANG));
    let hint_head = words::get(LANG, "question.hint");
    Ok(if folded {
        format!(
            "<details><summary>{hint_head}</summary><p>{hint}</p></details><details><summary>{}</summary>{answer}</details>",
            escaped(word("answer_and_working"))
        )
    } else {
        format!("<p><strong>{hint_head}.</strong> {hint}</p>{answer}")
    })
}

/// The right answer, and what came of a change, or what an error should be.
fn told(asked: &Asked) -> String {
    let mut text = asked.answer(LANG, System::Si);
    if let Some(change) = &asked.change {
        let [before, after] =
            [&change.before, &change.after].map(|amount| amount.text(LANG, System::Si));
        text.push_str(". ");
        text.push_str(&words::fill(LANG, "question.changed", &[&before, &after]));
    }
    if let Some(slip) = asked.told_slip(LANG) {
        text.push_str(". ");
        text.push_str(&slip);
    }
    text
}
