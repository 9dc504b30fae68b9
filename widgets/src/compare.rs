//! The layouts side by side in a table that can be sorted.

use crate::figure::svg::push_escaped;
use crate::table::value_text;
use axlewright_core::topic::{Reading, ReadingValue, Report};
use axlewright_core::units::System;
use axlewright_core::words::{self, Lang};

/// By which column a table is sorted, and whether the largest value stands first.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Sort {
    /// Position among the columns.
    pub column: usize,
    /// Largest first.
    pub descending: bool,
}

impl Sort {
    /// The sort after a press on the head of a column: by that column, or the other way round.
    #[must_use]
    pub fn pressed(now: Option<Self>, column: usize) -> Self {
        let again = now.is_some_and(|sort| sort.column == column && !sort.descending);
        Self {
            column,
            descending: again,
        }
    }
}

/// The reading of a layout for an output.
fn reading<'a>(report: &'a Report, layout: &str, output: &str) -> Option<&'a Reading> {
    report
        .readings
        .iter()
        .find(|r| r.layout == layout && report.topic.outputs[r.output].name == output)
}

/// The layout that is looked at: the one given, or else the one that the answer recommends.
#[must_use]
pub fn shown_layout(report: &Report) -> &'static str {
    let recommended = report
        .readings
        .iter()
        .find_map(|reading| match reading.value {
            ReadingValue::Layout(layout) if reading.path == "recommended" => Some(layout),
            _ => None,
        });
    let given = report.scenario.layout();
    match recommended {
        Some(layout) if report.scenario.text("layout").is_none() => layout.name(),
        _ => given.name(),
    }
}

/// Layouts in the order of a sort; those without a value stand last.
fn order(report: &Report, columns: &[&str], sort: Option<Sort>) -> Vec<&'static str> {
    let mut names: Vec<&'static str> = Vec::new();
    for reading in &report.readings {
        if !reading.layout.is_empty() && !names.contains(&reading.layout) {
            names.push(reading.layout);
        }
    }
    let Some((output, sort)) = sort.and_then(|sort| Some((columns.get(sort.column)?, sort))) else {
        return names;
    };
    let key = |name: &str| {
        let value = report.number(&output.replace('*', name));
        value.map_or(f64::INFINITY, |v| if sort.descending { -v } else { v })
    };
    // Few rows: each is put in before those that come after it.
    let mut sorted: Vec<&'static str> = Vec::new();
    for name in names {
        let at = sorted.iter().position(|other| key(other) > key(name));
        sorted.insert(at.unwrap_or(sorted.len()), name);
    }
    sorted
}

/// The table as HTML: a row for each layout, a column for each output, heads that are buttons.
///
/// Every text comes from the catalogue or from numbers and is escaped.
#[must_use]
pub fn compare_html(
    report: &Report,
    columns: &[&str],
    sort: Option<Sort>,
    (lang, system): (Lang, System),
) -> String {
    let mut html = String::from("<table><thead><tr><th scope=\"col\">");
    push_escaped(&mut html, words::get(lang, "input.layouts"));
    html.push_str("</th>");
    for (at, output) in columns.iter().enumerate() {
        let position = report.topic.outputs.iter().position(|o| o.name == *output);
        let label = position.map_or("", |p| words::get(lang, &report.topic.output_key(p)));
        html.push_str("<th scope=\"col\"");
        if let Some(sort) = sort.filter(|sort| sort.column == at) {
            html.push_str(if sort.descending {
                " aria-sort=\"descending\""
            } else {
                " aria-sort=\"ascending\""
            });
        }
        html.push_str("><button type=\"button\" data-column=\"");
        html.push_str(&axlewright_core::format::plain(at as f64));
        html.push_str("\">");
        push_escaped(&mut html, label);
        html.push_str("</button></th>");
    }
    html.push_str("</tr></thead><tbody>");
    let shown = shown_layout(report);
    let picks = report.topic.inputs.contains(&"layout");
    for name in order(report, columns, sort) {
        html.push_str(if name == shown {
            "<tr class=\"shown\"><th scope=\"row\">"
        } else {
            "<tr><th scope=\"row\">"
        });
        if picks {
            let pressed = if name == shown { "true" } else { "false" };
            for part in [
                "<button type=\"button\" aria-pressed=\"",
                pressed,
                "\" data-layout=\"",
                name,
                "\">",
                name,
                "</button>",
            ] {
                html.push_str(part);
            }
        } else {
            push_escaped(&mut html, name);
        }
        html.push_str("</th>");
        for output in columns {
            html.push_str("<td>");
            if let Some(reading) = reading(report, name, output) {
                push_escaped(&mut html, &value_text(report, reading, lang, system));
            } else {
                html.push('–');
            }
            html.push_str("</td>");
        }
        html.push_str("</tr>");
    }
    html.push_str("</tbody></table>");
    html
}

#[cfg(test)]
mod tests {
    use super::*;
    use axlewright_core::motor_split::{COLUMNS, TOPIC};

    fn report() -> Report {
        TOPIC.report(&TOPIC.example().unwrap()).unwrap()
    }

    #[test]
    fn a_press_sorts_and_a_second_one_turns_it_round() {
        let report = report();
        let time = COLUMNS
            .iter()
            .position(|c| c.ends_with("time_to_60_mph"))
            .unwrap();
        let once = Sort::pressed(None, time);
        let rising = order(&report, COLUMNS, Some(once));
        assert_eq!(rising.last(), Some(&"F1"), "the slowest");
        let mut falling = order(&report, COLUMNS, Some(Sort::pressed(Some(once), time)));
        assert_eq!(falling[0], "F1");
        falling.reverse();
        let times = |names: &[&str]| -> Vec<Option<f64>> {
            let of = |name: &&str| report.number(&COLUMNS[time].replace('*', name));
            names.iter().map(of).collect()
        };
        assert_eq!(times(&rising), times(&falling));
        assert_eq!(order(&report, COLUMNS, None)[0], "F1");
    }

    #[test]
    fn every_layout_has_a_row_and_every_column_a_button() {
        let html = compare_html(&report(), COLUMNS, None, (Lang::English, System::Si));
        assert_eq!(html.matches("data-column").count(), COLUMNS.len());
        assert_eq!(html.matches("data-layout").count(), 5);
        assert_eq!(html.matches("<th scope=\"row\">").count(), 5);
        assert!(html.contains("class=\"shown\""));
        assert_eq!(
            html.matches('–').count(),
            6,
            "the first motor saves and gains nothing: three columns of two layouts"
        );
    }
}
