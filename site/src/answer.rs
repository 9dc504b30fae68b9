//! Prints an answer with its working: text, JSON, CSV, Markdown.

use axlewright_core::topic::Report;
use axlewright_core::units::System;
use axlewright_core::words::{self, Lang};
use axlewright_widgets::table::{csv, label_text, value_text};

/// How an answer is printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, clap::ValueEnum)]
pub enum AnswerFormat {
    /// For reading on a terminal.
    Text,
    /// Everything, SI, for programs.
    Json,
    /// The numbers, SI, as RFC 4180.
    Csv,
    /// For a document, with the working as LaTeX.
    Markdown,
}

/// Prints an answer.
///
/// # Errors
/// When JSON cannot be made, which no finite answer causes.
pub fn print(
    report: &Report,
    style: AnswerFormat,
    lang: Lang,
    system: System,
) -> Result<String, serde_json::Error> {
    Ok(match style {
        AnswerFormat::Json => serde_json::to_string_pretty(&report.to_tree())? + "\n",
        AnswerFormat::Csv => csv(report, lang),
        AnswerFormat::Text => text(report, lang, system),
        AnswerFormat::Markdown => markdown(report, lang, system),
    })
}

fn text(report: &Report, lang: Lang, system: System) -> String {
    let rows: Vec<(String, String)> = report
        .readings
        .iter()
        .map(|r| {
            (
                label_text(report, r, lang),
                value_text(report, r, lang, system),
            )
        })
        .collect();
    let wide = rows
        .iter()
        .map(|(label, _)| label.chars().count())
        .max()
        .unwrap_or(0);
    let title = words::get(lang, &format!("topic.{}", report.topic.name));
    let mut out = format!("{title}\n\n");
    for (label, value) in rows {
        let gap = wide - label.chars().count();
        out.push_str(&format!("  {label}{}  {value}\n", " ".repeat(gap)));
    }
    out.push_str(&format!("\n{}\n", words::get(lang, "ui.working")));
    let mut scope = "";
    let mut source = "";
    for step in &report.steps {
        if step.scope != scope {
            scope = step.scope;
            let name = if scope.is_empty() {
                String::new()
            } else {
                format!("\n  {scope}\n")
            };
            out.push_str(&name);
        }
        if step.source != source {
            source = step.source;
            out.push_str(&format!("\n  [{}]\n", words::get(lang, source)));
        }
        out.push_str(&format!("  {}\n", words::get(lang, step.about)));
        out.push_str(&format!("    {}\n", step.text(lang)));
        out.push_str(&format!("    {}\n", step.text_with_numbers(lang)));
    }
    out.push_str(&format!(
        "\n{}: {}\n",
        words::get(lang, "figure.caution"),
        words::get(lang, &format!("caution.{}", report.topic.name))
    ));
    out
}

fn markdown(report: &Report, lang: Lang, system: System) -> String {
    let title = words::get(lang, &format!("topic.{}", report.topic.name));
    let mut out = format!(
        "## {title}\n\n| {} | {} |\n| --- | ---: |\n",
        words::get(lang, "ui.quantity"),
        words::get(lang, "ui.value")
    );
    for reading in &report.readings {
        out.push_str(&format!(
            "| {} | {} |\n",
            label_text(report, reading, lang),
            value_text(report, reading, lang, system)
        ));
    }
    out.push_str(&format!("\n### {}\n", words::get(lang, "ui.working")));
    let mut scope = "";
    for step in &report.steps {
        if step.scope != scope {
            scope = step.scope;
            if !scope.is_empty() {
                out.push_str(&format!("\n#### {scope}\n"));
            }
        }
        out.push_str(&format!(
            "\n{} ({}):\n\n$$\n{}\n$$\n\n$$\n{}\n$$\n",
            words::get(lang, step.about),
            words::get(lang, step.source),
            step.latex(lang),
            step.latex_with_numbers(lang)
        ));
    }
    out.push_str(&format!(
        "\n**{}.** {}\n",
        words::get(lang, "figure.caution"),
        words::get(lang, &format!("caution.{}", report.topic.name))
    ));
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use axlewright_core::topic::{ReadingValue, TOPICS};

    #[test]
    fn json_holds_every_number_at_its_path() {
        for topic in TOPICS {
            let report = topic.report(&topic.example().unwrap()).unwrap();
            let json = print(&report, AnswerFormat::Json, Lang::English, System::Si).unwrap();
            let value: serde_json::Value = serde_json::from_str(&json).unwrap();
            for reading in &report.readings {
                let pointer = format!("/{}", reading.path.replace('.', "/"));
                let got = value.pointer(&pointer);
                if let ReadingValue::Number(number) = reading.value {
                    assert_eq!(
                        got.and_then(serde_json::Value::as_f64),
                        Some(number),
                        "{pointer}"
                    );
                } else {
                    assert!(got.is_some(), "{pointer}");
                }
            }
        }
    }

    #[test]
    fn text_and_markdown_name_every_value() {
        let topic = TOPICS[1];
        let report = topic.report(&topic.example().unwrap()).unwrap();
        for style in [AnswerFormat::Text, AnswerFormat::Markdown] {
            let out = print(&report, style, Lang::English, System::Si).unwrap();
            for reading in &report.readings {
                let value = value_text(&report, reading, Lang::English, System::Si);
                assert!(out.contains(&value), "{value} in {out}");
            }
        }
    }
}
