//! Reference tables, made from the tables that the program computes with.

use super::Common;
use super::functions::{LANG, decimals_of, escaped, head_row, wrong};
use crate::published::{self, Check};
use axlewright_core::format;
use axlewright_core::input::{INPUTS, Kind};
use axlewright_core::topic::{OutputKind, TOPICS, Topic};
use axlewright_core::words;
use axlewright_core::working::Step;
use minijinja::Error;

/// A reference of one kind.
///
/// # Errors
/// When there is no such kind, or a check does not hold.
pub(super) fn reference(common: &Common, what: &str) -> Result<String, Error> {
    match what {
        "symbols" => Ok(symbols()),
        "models" => models(),
        "sources" => sources(&common.checks),
        "checks" => checks(&common.checks),
        other => Err(wrong(format!("there is no reference of {other}"))),
    }
}

/// A symbol with what stands after its underscore set low.
fn symbol(text: &str) -> String {
    match text.split_once('_') {
        Some((letter, low)) => format!("<i>{}</i><sub>{}</sub>", escaped(letter), escaped(low)),
        None => format!("<i>{}</i>", escaped(text)),
    }
}

fn title(topic: &Topic) -> &'static str {
    words::get(LANG, &format!("topic.{}", topic.name))
}

/// Symbols of inputs, then of each topic's outputs.
fn symbols() -> String {
    let row = |sign: &str, name: &str, unit: &str| {
        format!(
            "<tr><th scope=\"row\">{}</th><td>{}</td><td>{}</td></tr>",
            symbol(sign),
            escaped(name),
            escaped(unit)
        )
    };
    let table = |rows: String| {
        let head = head_row(&["symbol", "symbol_name", "symbol_unit"]);
        format!("<table tabindex=\"0\">{head}{rows}</tbody></table>")
    };
    let mut rows = String::new();
    for input in INPUTS {
        if let Kind::Quantity { dimension, .. } = input.kind
            && !input.symbol.is_empty()
        {
            let name = words::get(LANG, &input.label_key());
            rows.push_str(&row(input.symbol, name, dimension.si_unit()));
        }
    }
    let head = words::get(LANG, "site.symbol_inputs");
    let mut html = format!("<h2 id=\"inputs\">{head}</h2>{}", table(rows));
    for topic in TOPICS {
        let mut rows = String::new();
        for (at, output) in topic.outputs.iter().enumerate() {
            if let OutputKind::Quantity(dimension) = output.kind
                && !output.symbol.is_empty()
            {
                let name = words::get(LANG, &topic.output_key(at));
                rows.push_str(&row(output.symbol, name, dimension.si_unit()));
            }
        }
        html.push_str(&format!(
            "<h2 id=\"{}\">{}</h2>{}",
            topic.slug(),
            title(topic),
            table(rows)
        ));
    }
    html
}

/// Every step of a topic's example once.
fn steps_of(topic: &'static Topic) -> Result<Vec<Step>, Error> {
    let refused = |p: axlewright_core::Problem| wrong(p.to_string());
    let report = topic
        .report(&topic.example().map_err(refused)?)
        .map_err(refused)?;
    let mut steps: Vec<Step> = Vec::new();
    for step in report.steps {
        if !steps.iter().any(|other| other.about == step.about) {
            steps.push(step);
        }
    }
    Ok(steps)
}

/// The equations of each topic, as its example uses them.
fn models() -> Result<String, Error> {
    let mut html = String::new();
    for topic in TOPICS {
        html.push_str(&format!(
            "<h2 id=\"{}\">{}</h2><ol class=\"models\" tabindex=\"0\">",
            topic.slug(),
            title(topic)
        ));
        for step in steps_of(topic)? {
            html.push_str(&format!(
                "<li><p>{}</p><p>{}</p><p class=\"source\">{}</p></li>",
                escaped(words::get(LANG, step.about)),
                step.equation_mathml(LANG),
                escaped(words::get(LANG, step.source))
            ));
        }
        html.push_str("</ol>");
    }
    Ok(html)
}

/// Where equations and checks come from, each with what rests on it.
fn sources(checks: &[Check]) -> Result<String, Error> {
    let mut equations: Vec<(&str, Vec<&str>)> = Vec::new();
    for topic in TOPICS {
        for step in steps_of(topic)? {
            let source = words::get(LANG, step.source);
            let at = equations.iter().position(|(s, _)| *s == source);
            let topics = match at {
                Some(at) => &mut equations[at].1,
                None => {
                    equations.push((source, Vec::new()));
                    &mut equations.last_mut().ok_or_else(|| wrong("no source"))?.1
                }
            };
            if !topics.contains(&title(topic)) {
                topics.push(title(topic));
            }
        }
    }
    equations.sort_unstable();
    let mut html = String::from("<h2 id=\"equations\">");
    html.push_str(words::get(LANG, "site.source_equations"));
    html.push_str("</h2><table class=\"stack\">");
    html.push_str(&head_row(&["check_source", "source_used"]));
    for (source, topics) in equations {
        html.push_str(&format!(
            "<tr><th scope=\"row\">{}</th><td>{}</td></tr>",
            escaped(source),
            escaped(&topics.join(", "))
        ));
    }
    html.push_str("</tbody></table><h2 id=\"published-values\">");
    html.push_str(words::get(LANG, "site.source_values"));
    html.push_str("</h2><table class=\"stack\">");
    html.push_str(&head_row(&["check_source", "check_label", "check_ids"]));
    let mut values: Vec<(&str, &str, Vec<&str>)> = Vec::new();
    for check in checks {
        let label = words::get(LANG, &format!("check.{}", check.label.word()));
        match values
            .iter_mut()
            .find(|(s, l, _)| *s == check.source && *l == label)
        {
            Some((_, _, ids)) if ids.contains(&check.id.as_str()) => {}
            Some((_, _, ids)) => ids.push(&check.id),
            None => values.push((&check.source, label, vec![&check.id])),
        }
    }
    values.sort_unstable();
    for (source, label, ids) in values {
        let links: Vec<String> = ids
            .iter()
            .map(|id| {
                format!(
                    "<a href=\"published.html#{}\">{}</a>",
                    anchor(id),
                    escaped(id)
                )
            })
            .collect();
        html.push_str(&format!(
            "<tr><th scope=\"row\">{}</th><td>{}</td><td>{}</td></tr>",
            escaped(source),
            escaped(label),
            links.join(", ")
        ));
    }
    Ok(html + "</tbody></table>")
}

fn anchor(id: &str) -> String {
    format!("check-{}", super::anchor(id))
}

/// Every published value beside ours, with the difference and the tolerance that the tests hold.
fn checks(checks: &[Check]) -> Result<String, Error> {
    let mut html = String::from("<table class=\"published\" tabindex=\"0\">");
    html.push_str(&head_row(&[
        "check_ids",
        "check_case",
        "check_published",
        "check_here",
        "check_difference",
        "check_tolerance",
        "check_source",
    ]));
    let mut seen: Vec<&str> = Vec::new();
    for check in checks {
        let ours = published::compute(check).map_err(|e| wrong(e.to_string()))?;
        if !check.holds(ours) {
            return Err(wrong(format!("check {} does not hold: {ours}", check.id)));
        }
        let decimals = decimals_of(check.tolerance);
        let show = |value: f64, more: u8| {
            let text = format::fixed(value, decimals + more, LANG);
            escaped(&format::with_unit(text, &check.unit))
        };
        let id = if seen.contains(&check.id.as_str()) {
            String::new()
        } else {
            seen.push(&check.id);
            format!(" id=\"{}\"", anchor(&check.id))
        };
        html.push_str(&format!(
            "<tr{id}><th scope=\"row\">{}</th><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{} ({})</td></tr>",
            escaped(&check.id),
            escaped(&check.what),
            show(check.expected, 0),
            show(ours, 1),
            show(ours - check.expected, 1),
            escaped(&format::with_unit(format::significant(check.tolerance, 2, LANG), &check.unit)),
            escaped(&check.source),
            escaped(words::get(LANG, &format!("check.{}", check.label.word())))
        ));
    }
    Ok(html + "</tbody></table>")
}
