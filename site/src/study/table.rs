//! Rows of a study as CSV (RFC 4180), SI.

use super::design::Level;
use super::plan::{Axis, Values};
use super::tally::{Cell, Tally};
use axlewright_core::topic::ReadingValue;
use std::io::Write;

/// The head of the table.
pub(super) fn head(columns: &[String]) -> String {
    columns.join(",") + "\r\n"
}

/// Writes a number so that it reads back as the same number.
fn push_number(out: &mut Vec<u8>, value: f64) {
    let magnitude = value.abs();
    // Writing to memory cannot fail.
    let _written = if magnitude == 0.0 || (1e-5..1e16).contains(&magnitude) {
        write!(out, "{value}")
    } else {
        write!(out, "{value:e}")
    };
}

/// Writes the number of a row and what varies in it.
pub(super) fn push_inputs(out: &mut Vec<u8>, row: u64, axes: &[Axis], levels: &[Level]) {
    let _written = write!(out, "{row}");
    for (axis, level) in axes.iter().zip(levels) {
        out.push(b',');
        match (level, &axis.values) {
            (Level::Number(number), _) => push_number(out, *number),
            (Level::Word(at), Values::Words(words)) => out.extend_from_slice(words[*at].as_bytes()),
            (Level::Word(_), _) => {}
        }
    }
}

/// Writes the answer of a row, and counts it.
pub(super) fn push_answer(out: &mut Vec<u8>, values: &[Option<ReadingValue>], tally: &mut Tally) {
    for (at, value) in values.iter().enumerate() {
        out.push(b',');
        match value {
            // A sentence says in words what the other columns hold.
            None | Some(ReadingValue::Sentence(_)) => tally.count(at, Cell::Nothing),
            Some(ReadingValue::Layout(layout)) => {
                out.extend_from_slice(layout.name().as_bytes());
                tally.count(at, Cell::Word(layout.name()));
            }
            Some(ReadingValue::Number(number)) => {
                push_number(out, *number);
                tally.count(at, Cell::Number(*number));
            }
            Some(ReadingValue::Word(word)) => {
                out.extend_from_slice(word.as_bytes());
                tally.count(at, Cell::Word(word));
            }
            Some(ReadingValue::Flag(flag)) => {
                let word = if *flag { "true" } else { "false" };
                out.extend_from_slice(word.as_bytes());
                tally.count(at, Cell::Word(word));
            }
        }
    }
    out.extend_from_slice(b",\r\n");
}

/// Writes why a row has no answer, and counts it.
pub(super) fn push_problem(out: &mut Vec<u8>, columns: usize, reason: &str, tally: &mut Tally) {
    out.extend(std::iter::repeat_n(b',', columns));
    let reason = reason.replace('"', "'");
    let _written = write!(out, ",\"{reason}\"\r\n");
    tally.fail(&reason);
}

/// Counts a row that was written before. `None` where the line is not the whole row of that number.
pub(super) fn read_row(
    line: &str,
    row: u64,
    columns: usize,
    inputs: usize,
    tally: &mut Tally,
) -> Option<()> {
    let line = line.strip_suffix("\r\n")?;
    // The last cell alone may hold commas.
    let cells: Vec<&str> = line.splitn(columns, ',').collect();
    if cells.len() != columns || cells[0].parse() != Ok(row) {
        return None;
    }
    let problem = cells[columns - 1];
    if !problem.is_empty() {
        tally.fail(problem.strip_prefix('"')?.strip_suffix('"')?);
        return Some(());
    }
    for (at, cell) in cells[1 + inputs..columns - 1].iter().enumerate() {
        tally.count(at, Cell::read(cell));
    }
    Some(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_reads_back_as_itself() {
        for value in [
            0.0,
            -0.0,
            0.1,
            1850.0,
            -4.2e-9,
            1e-300,
            1.7e308,
            1.0 / 3.0,
            123_456_789.123,
        ] {
            let mut out = Vec::new();
            push_number(&mut out, value);
            let text = String::from_utf8(out).unwrap();
            assert_eq!(
                text.parse::<f64>().unwrap().to_bits(),
                value.to_bits(),
                "{text}"
            );
            assert!(text.len() < 26, "{text}");
        }
    }

    #[test]
    fn a_written_row_is_counted_as_it_was_when_it_was_written() {
        let values = [
            Some(ReadingValue::Number(1.0 / 3.0)),
            None,
            Some(ReadingValue::Word("front_slip")),
            Some(ReadingValue::Flag(true)),
        ];
        let names = ["a", "b", "c", "d"].map(str::to_owned);
        let (mut written, mut read) = (Tally::new(&names), Tally::new(&names));
        for (row, reason) in [(7, None), (8, Some("vehicle.mass: \"odd\", so it is"))] {
            let mut line = Vec::new();
            push_inputs(&mut line, row, &[], &[]);
            match reason {
                None => push_answer(&mut line, &values, &mut written),
                Some(reason) => push_problem(&mut line, 4, reason, &mut written),
            }
            let line = String::from_utf8(line).unwrap();
            assert_eq!(read_row(&line, row, 6, 0, &mut read), Some(()), "{line}");
            let mut other = Tally::new(&names);
            for torn in [&line[..line.len() - 1], &line[..3], "", &line[1..]] {
                assert_eq!(read_row(torn, row, 6, 0, &mut other), None, "{torn:?}");
            }
            assert_eq!(
                read_row(&line, row + 1, 6, 0, &mut other),
                None,
                "another row"
            );
        }
        assert_eq!(read, written);
    }
}
