//! The numbers of an answer, and those of a chart, as tables.

use crate::figure::chart_read::{axis_head, round_x, series, value_at, x_text, y_text};
use crate::figure::svg::push_escaped;
use crate::figure::{Axis, Chart, Line};
use axlewright_core::Tree;
use axlewright_core::format;
use axlewright_core::topic::{OutputKind, Reading, ReadingValue, Report};
use axlewright_core::units::{Dimension, System};
use axlewright_core::words::{self, Lang};

/// The value of a reading as people read it.
#[must_use]
pub fn value_text(report: &Report, reading: &Reading, lang: Lang, system: System) -> String {
    let output = &report.topic.outputs[reading.output];
    match (&reading.value, output.kind) {
        (ReadingValue::Number(number), OutputKind::Quantity(dimension)) => {
            format::quantity(*number, dimension, system, output.digits, lang)
        }
        (ReadingValue::Number(number), _) => format::significant(*number, output.digits, lang),
        (ReadingValue::Word(word), _) => words::get(lang, &format!("reason.{word}")).into(),
        (ReadingValue::Flag(flag), _) => {
            words::get(lang, if *flag { "ui.yes" } else { "ui.no" }).into()
        }
        (ReadingValue::Sentence(sentence), _) => sentence.text(lang, system),
        (ReadingValue::Layout(layout), _) => layout.name().into(),
    }
}

/// What a reading is, with its layout.
#[must_use]
pub fn label_text(report: &Report, reading: &Reading, lang: Lang) -> String {
    let label = words::get(lang, &report.topic.output_key(reading.output));
    match reading.layout {
        "" => label.into(),
        // A layout has its name, a surface a word.
        of => {
            let word = words::find(lang, &["surface.short.", of].concat()).unwrap_or(of);
            [word, ": ", label].concat()
        }
    }
}

/// One row: path, what it is, value in SI, unit.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// Path in the answer.
    pub path: String,
    /// What it is, in words.
    pub label: String,
    /// Value; SI where it is a number.
    pub value: String,
    /// Unit; empty for pure numbers and words.
    pub unit: &'static str,
}

/// The rows of an answer, named in a language. Numbers are for programs: with a decimal point.
#[must_use]
pub fn rows(report: &Report, lang: Lang) -> Vec<Row> {
    report
        .readings
        .iter()
        .map(|reading| {
            let output = &report.topic.outputs[reading.output];
            let (value, unit) = match &reading.value {
                ReadingValue::Number(number) => (
                    format::plain(*number),
                    match output.kind {
                        OutputKind::Quantity(dimension) => Dimension::si_unit(dimension),
                        _ => "",
                    },
                ),
                ReadingValue::Word(word) => ((*word).to_owned(), ""),
                ReadingValue::Flag(flag) => (flag.to_string(), ""),
                ReadingValue::Sentence(sentence) => (sentence.text(lang, System::Si), ""),
                ReadingValue::Layout(layout) => (layout.name().to_owned(), ""),
            };
            Row {
                path: reading.path.clone(),
                label: words::get(lang, &report.topic.output_key(reading.output)).into(),
                value,
                unit,
            }
        })
        .collect()
}

/// The rows as CSV (RFC 4180) with a header: path, quantity, value, unit.
#[must_use]
pub fn csv(report: &Report, lang: Lang) -> String {
    let mut text = String::from("path,quantity,value,unit\r\n");
    for row in rows(report, lang) {
        let cells = [row.path, row.label, row.value, row.unit.to_owned()];
        push_record(&mut text, cells.into_iter());
    }
    text
}

/// What a chart shows, as CSV (RFC 4180): x, then one column for each line, with units in the head.
/// A line that has no value at an x leaves its cell empty.
#[must_use]
pub fn chart_csv(chart: &Chart) -> String {
    let lines = series(chart);
    let mut text = String::new();
    let unit = &chart.y_axis.unit;
    let head = |name: &str| match unit.as_str() {
        "" => name.to_owned(),
        unit => [name, ", ", unit].concat(),
    };
    push_record(
        &mut text,
        core::iter::once(axis_head(&chart.x_axis))
            .chain(lines.iter().map(|line| head(&line.label))),
    );
    for x in chart_rows(chart, &lines) {
        let values = lines
            .iter()
            .map(|line| value_at(line, x).map_or_else(String::new, format::plain));
        push_record(&mut text, core::iter::once(format::plain(x)).chain(values));
    }
    text
}

/// Every x at which a line has a point, in order; where the lines are straight and so have few, round
/// x between them too.
fn chart_rows(chart: &Chart, lines: &[Line]) -> Vec<f64> {
    let mut rows: Vec<f64> = lines
        .iter()
        .flat_map(|line| line.points.iter().map(|point| point.0))
        .filter(|x| x.is_finite())
        .collect();
    if rows.len() < 10 * lines.len() {
        rows.extend(round_x(chart));
    }
    rows.sort_by(f64::total_cmp);
    let near = 1e-9 * (chart.x_axis.max - chart.x_axis.min).abs();
    rows.dedup_by(|a, b| (*a - *b).abs() <= near);
    rows
}

/// What a chart shows as plain data: its titles, its axes with units, and the points of its lines.
/// A point where a line is broken has `null` for a value.
#[must_use]
pub fn chart_tree(chart: &Chart) -> Tree {
    let number = |value: f64| match value.is_finite() {
        true => Tree::Number(value),
        false => Tree::Null,
    };
    let axis = |axis: &Axis| {
        let mut tree = Tree::map();
        tree.set("title", Tree::text(axis.title.as_str()));
        tree.set("unit", Tree::text(axis.unit.as_str()));
        tree
    };
    let line = |line: &Line| {
        let mut tree = Tree::map();
        tree.set("label", Tree::text(line.label.as_str()));
        let points = line.points.iter();
        let points = points.map(|(x, y)| Tree::List(vec![number(*x), number(*y)]));
        tree.set("points", Tree::List(points.collect()));
        tree
    };
    let mut tree = Tree::map();
    tree.set("title", Tree::text(chart.title.as_str()));
    tree.set("subtitle", Tree::text(chart.subtitle.as_str()));
    tree.set("x_axis", axis(&chart.x_axis));
    tree.set("y_axis", axis(&chart.y_axis));
    tree.set(
        "lines",
        Tree::List(series(chart).iter().map(line).collect()),
    );
    tree
}

/// What a chart shows as a table of HTML: at most 25 rows of round x, with the texts of the read-out.
/// Every text is escaped.
#[must_use]
pub fn chart_html(chart: &Chart) -> String {
    let lines = series(chart);
    let mut html = String::from("<table><caption>");
    push_escaped(&mut html, &chart.title);
    html.push_str("</caption><thead><tr>");
    let mut head = |name: &str, unit: &str| {
        html.push_str("<th scope=\"col\">");
        push_escaped(&mut html, name);
        if !unit.is_empty() {
            html.push_str(", ");
            push_escaped(&mut html, unit);
        }
        html.push_str("</th>");
    };
    head(&chart.x_axis.title, &chart.x_axis.unit);
    for line in &lines {
        head(&line.label, &chart.y_axis.unit);
    }
    html.push_str("</tr></thead><tbody>");
    let told = |x: &f64| lines.iter().any(|line| value_at(line, *x).is_some());
    for x in round_x(chart).into_iter().filter(told) {
        html.push_str("<tr><th scope=\"row\">");
        push_escaped(&mut html, &x_text(chart, x));
        html.push_str("</th>");
        for line in &lines {
            html.push_str("<td>");
            if let Some(y) = value_at(line, x) {
                push_escaped(&mut html, &y_text(chart, y));
            }
            html.push_str("</td>");
        }
        html.push_str("</tr>");
    }
    html.push_str("</tbody></table>");
    html
}

/// One record of CSV.
fn push_record(text: &mut String, cells: impl Iterator<Item = String>) {
    for (at, cell) in cells.enumerate() {
        if at > 0 {
            text.push(',');
        }
        if cell.contains([',', '"', '\n', '\r']) {
            text.push('"');
            text.push_str(&cell.replace('"', "\"\""));
            text.push('"');
        } else {
            text.push_str(&cell);
        }
    }
    text.push_str("\r\n");
}

#[cfg(test)]
mod tests {
    use super::*;
    use axlewright_core::topic::TOPICS;

    #[test]
    fn every_line_has_four_cells() {
        for topic in TOPICS {
            let report = topic.report(&topic.example().unwrap()).unwrap();
            let text = csv(&report, Lang::Spanish);
            assert_eq!(text.lines().count(), report.readings.len() + 1);
            for line in text.lines() {
                let outside_quotes: String = line.split('"').step_by(2).collect();
                assert_eq!(outside_quotes.matches(',').count(), 3, "{line}");
            }
        }
    }

    fn chart() -> Chart {
        let line = |label: &str, points: &[(f64, f64)]| Line {
            label: label.into(),
            points: points.to_vec(),
            ..Line::default()
        };
        let mut chart = Chart {
            title: "Load <against> a".into(),
            decimal_mark: '.',
            lines: vec![
                line(
                    "front, \"left\"",
                    &[(0.0, 0.1), (0.5, f64::NAN), (1.0, 3.0)],
                ),
                line("rear", &[(0.0, 1.0), (1.0, 2.0)]),
            ],
            ..Chart::default()
        };
        chart.x_axis.title = "acceleration".into();
        chart.x_axis.unit = "g".into();
        chart.x_axis.max = 1.0;
        chart.y_axis.unit = "N".into();
        chart.y_axis.max = 3.0;
        chart
    }

    #[test]
    fn a_chart_as_csv_has_units_in_its_head_and_keeps_every_digit() {
        let text = chart_csv(&chart());
        let lines: Vec<&str> = text.split("\r\n").collect();
        assert_eq!(
            lines[0],
            "\"acceleration, g\",\"front, \"\"left\"\", N\",\"rear, N\""
        );
        assert_eq!(lines[1], "0,0.1,1");
        assert!(lines.contains(&"0.5,,1.5"), "a broken line: {text}");
        assert!(lines.contains(&"1,3,2"), "{text}");
        assert_eq!(lines.last(), Some(&""), "the last record ends too");
        for line in &lines[1..lines.len() - 1] {
            assert_eq!(line.matches(',').count(), 2, "{line}");
        }
    }

    #[test]
    fn the_csv_of_a_curve_holds_the_points_that_are_drawn() {
        let topic = axlewright_core::topic::find("traction").unwrap();
        let visual = crate::visual::Visual::of(topic).unwrap();
        let look = crate::visual::Look::default();
        let scenario = topic.example().unwrap();
        let drawn = visual.draw(&scenario, crate::visual::View::Chart, &look);
        let Ok(crate::visual::Drawing::Chart(chart)) = drawn else {
            panic!("a chart")
        };
        let text = chart_csv(&chart);
        let records: Vec<&str> = text.lines().skip(1).collect();
        assert_eq!(records.len(), chart.lines[0].points.len());
        for (record, (x, y)) in records.iter().zip(&chart.lines[0].points) {
            let mut cells = record.split(',').map(|cell| cell.parse::<f64>().unwrap());
            for want in [x, y] {
                // To the last digits: two units of the seventeenth may go in writing.
                let got = cells.next().unwrap();
                assert!((got - want).abs() <= 5e-16 * want.abs(), "{got} {want}");
            }
        }
    }

    #[test]
    fn a_chart_as_data_holds_its_points_and_its_gaps() {
        let tree = chart_tree(&chart());
        let Some(Tree::List(lines)) = tree.get("lines") else {
            panic!("lines: {tree:?}")
        };
        let gap = Tree::List(vec![Tree::Number(0.5), Tree::Null]);
        let Some(Tree::List(points)) = lines[0].get("points") else {
            panic!("points: {tree:?}")
        };
        assert_eq!(points[1], gap);
        let unit = tree.get("x_axis").and_then(|axis| axis.get("unit"));
        assert_eq!(unit, Some(&Tree::text("g")));
    }

    #[test]
    fn the_table_of_a_chart_has_a_head_a_caption_and_few_rows() {
        let html = chart_html(&chart());
        assert!(
            html.contains("<caption>Load &lt;against&gt; a</caption>"),
            "{html}"
        );
        assert!(
            html.contains("<th scope=\"col\">acceleration, g</th>"),
            "{html}"
        );
        assert!(html.contains("<th scope=\"col\">rear, N</th>"), "{html}");
        let rows = html.matches("<th scope=\"row\">").count();
        assert!((10..=25).contains(&rows), "{rows}");
        assert!(
            html.contains("<th scope=\"row\">0.50</th><td></td><td>1.50</td>"),
            "{html}"
        );
    }
}
