//! The numbers of an answer as a table.

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
    }
}

/// What a reading is, with its layout.
#[must_use]
pub fn label_text(report: &Report, reading: &Reading, lang: Lang) -> String {
    let label = words::get(lang, &report.topic.output_key(reading.output));
    if reading.layout.is_empty() {
        label.into()
    } else {
        format!("{}: {label}", reading.layout)
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
        for (at, cell) in [row.path, row.label, row.value, row.unit.to_owned()]
            .iter()
            .enumerate()
        {
            if at > 0 {
                text.push(',');
            }
            if cell.contains([',', '"', '\n']) {
                text.push('"');
                text.push_str(&cell.replace('"', "\"\""));
                text.push('"');
            } else {
                text.push_str(cell);
            }
        }
        text.push_str("\r\n");
    }
    text
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
}
