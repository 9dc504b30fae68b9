//! The summary of a study as a table for people.

use super::tally::{Column, Tally};
use crate::words::{fill, get};
use axlewright_core::format;
use axlewright_core::words::{self, Lang};

/// Shares of the values below the quantiles that are shown.
const SHARES: [f64; 4] = [0.05, 0.25, 0.75, 0.95];

/// Digits of a value: quantiles are known to a thousandth.
const DIGITS: u8 = 4;

/// Least and greatest value, quantiles and counts of every column, and why rows have no answer.
#[must_use]
pub fn summary(tally: &Tally, lang: Lang) -> String {
    let mut out = String::new();
    let numbers: Vec<&Column> = tally.columns.iter().filter(|c| c.count > 0).collect();
    if !numbers.is_empty() {
        let mut table = vec![head(lang)];
        table.extend(numbers.iter().map(|column| row(column, lang)));
        push_table(&mut out, &table);
    }
    for column in tally.columns.iter().filter(|c| !c.words.is_empty()) {
        out.push_str(&format!("\n{}\n", column.name));
        let mut table: Vec<Vec<String>> = Vec::new();
        for (word, count) in &column.words {
            let said = match word.as_str() {
                "true" => words::get(lang, "ui.yes"),
                "false" => words::get(lang, "ui.no"),
                word => words::find(lang, &format!("reason.{word}")).unwrap_or(word),
            };
            table.push(vec![format!("  {said}"), count.to_string()]);
        }
        push_table(&mut out, &table);
    }
    if !tally.problems.is_empty() {
        out.push_str(&format!("\n{}\n", get(lang, "study.without")));
        let table: Vec<Vec<String>> = tally
            .problems
            .iter()
            .map(|(reason, count)| vec![format!("  {reason}"), count.to_string()])
            .collect();
        push_table(&mut out, &table);
    }
    let counts = [tally.rows, tally.failed()].map(|count| count.to_string());
    let done = fill(lang, "study.done", &[&counts[0], &counts[1]]);
    out + "\n" + &done + "\n"
}

fn head(lang: Lang) -> Vec<String> {
    let percent = |share: f64| {
        let percent = format::fixed(100.0 * share, 0, lang);
        fill(lang, "study.quantile", &[&percent])
    };
    let word = |key: &str| get(lang, key).to_owned();
    let [low, lower, upper, high] = SHARES.map(percent);
    let (least, greatest) = (word("study.least"), word("study.greatest"));
    let quantiles = [
        least,
        low,
        lower,
        word("study.median"),
        upper,
        high,
        greatest,
    ];
    let mut cells = vec![word("study.quantity")];
    cells.extend(quantiles);
    cells.extend([word("study.count"), word("study.absent")]);
    cells
}

fn row(column: &Column, lang: Lang) -> Vec<String> {
    let shown = |value: f64| format::significant(value, DIGITS, lang);
    let quantile = |share: f64| column.quantile(share).map_or_else(String::new, shown);
    let [low, lower, upper, high] = SHARES.map(quantile);
    let mut cells = vec![column.name.clone(), shown(column.min), low, lower];
    cells.extend([quantile(0.5), upper, high, shown(column.max)]);
    cells.extend([column.count.to_string(), column.absent.to_string()]);
    cells
}

/// Columns set under each other, the first to the left, numbers to the right.
fn push_table(out: &mut String, rows: &[Vec<String>]) {
    let columns = rows.iter().map(Vec::len).max().unwrap_or(0);
    let wide = |at: usize| {
        let cells = rows.iter().filter_map(|row| row.get(at));
        cells.map(|cell| cell.chars().count()).max().unwrap_or(0)
    };
    let widths: Vec<usize> = (0..columns).map(wide).collect();
    for row in rows {
        let mut line = String::new();
        for (at, (cell, width)) in row.iter().zip(&widths).enumerate() {
            let gap = " ".repeat(width - cell.chars().count());
            let text = if at == 0 {
                format!("{cell}{gap}")
            } else {
                format!("  {gap}{cell}")
            };
            line.push_str(&text);
        }
        out.push_str(line.trim_end());
        out.push('\n');
    }
}
