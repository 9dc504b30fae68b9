//! A cycle that the reader supplies: lines of time and speed.
//!
//! Two columns parted by a comma, a semicolon or a tab: time in seconds, speed in km/h. The first line
//! may be a head; one that names m/s or mph sets the unit. Lines that begin with `#` are passed over.
//! Where semicolons or tabs part the columns, a comma may be the decimal mark. Everything else is
//! refused by the number of its line.

use super::Step;
use crate::decimal;
use crate::error::{Allowed, Problem};
use std::cell::RefCell;
use std::rc::Rc;

/// Most rows: a day at two seconds apart.
pub const MOST_ROWS: usize = 43_200;
/// Highest speed \[m/s\].
const FASTEST_M_S: f64 = 150.0;
/// Largest change of speed \[m/s²\]: more is a slip of a unit or a lost row.
const MOST_M_S2: f64 = 30.0;
/// A step longer than the shortest so far by more than this factor is a gap, and so were those before one
/// that is shorter by more.
const GAP: f64 = 1.5;

/// Times \[s\] and speeds \[m/s\].
#[derive(Clone, Debug, PartialEq)]
pub struct Trace {
    points: Vec<(f64, f64)>,
}

impl Trace {
    /// Reads a trace.
    ///
    /// # Errors
    /// [`Problem::Line`] with the line that is at fault, counted from 1.
    pub fn read(text: &str) -> Result<Self, Problem> {
        let mut points: Vec<(f64, f64)> = Vec::new();
        let mut unit_m_s = 1.0 / 3.6;
        let (mut shortest_s, mut longest_s) = (f64::INFINITY, 0.0_f64);
        let mut last = (1, "");
        let text = text.trim_start_matches('\u{feff}');
        for (at, line) in text.lines().enumerate() {
            let line = line.trim();
            if line.is_empty() || line.starts_with('#') {
                continue;
            }
            last = (at + 1, line);
            let refused = |why| Err(refusal(at + 1, line, why));
            let (mark, comma) = match line.find([';', '\t']) {
                Some(place) => (line.get(place..=place).unwrap_or(";"), '.'),
                None => (",", ','),
            };
            let Some((time, speed)) = line.split_once(mark) else {
                return refused("why.trace_cells");
            };
            let number = |cell: &str| {
                let plain = cell
                    .trim()
                    .replace(',', if comma == '.' { "." } else { "," });
                match plain.strip_prefix('-') {
                    Some(rest) => decimal::parse(rest).map(|value| -value),
                    None => decimal::parse(&plain),
                }
            };
            if speed.contains(mark) {
                return refused("why.trace_cells");
            }
            let (time_s, speed) = match (number(time), number(speed)) {
                (Some(time_s), Some(speed)) => (time_s, speed * unit_m_s),
                (None, None) if points.is_empty() => {
                    let head = speed.to_ascii_lowercase().replace('_', "/");
                    if head.contains("mph") {
                        unit_m_s = 0.447_04;
                    } else if head.contains("m/s") {
                        unit_m_s = 1.0;
                    }
                    continue;
                }
                _ => return refused("why.trace_number"),
            };
            if speed < 0.0 {
                return refused("why.trace_negative");
            }
            if speed > FASTEST_M_S {
                return refused("why.trace_fast");
            }
            if let [.., before] = points[..] {
                let step_s = time_s - before.0;
                if step_s <= 0.0 {
                    return refused("why.trace_time");
                }
                (shortest_s, longest_s) = (shortest_s.min(step_s), longest_s.max(step_s));
                if longest_s > GAP * shortest_s {
                    return refused("why.trace_gap");
                }
                if (speed - before.1).abs() > MOST_M_S2 * step_s {
                    return refused("why.trace_jump");
                }
            }
            if points.len() >= MOST_ROWS {
                return refused("why.trace_long");
            }
            points.push((time_s, speed));
        }
        if points.len() < 2 || points.iter().all(|point| point.1 == 0.0) {
            return Err(refusal(last.0, last.1, "why.trace_short"));
        }
        Ok(Self { points })
    }

    /// Gives every step in order.
    pub fn each(&self, take: &mut dyn FnMut(Step)) {
        for pair in self.points.windows(2) {
            take(Step {
                length_s: pair[1].0 - pair[0].0,
                from_m_s: pair[0].1,
                to_m_s: pair[1].1,
            });
        }
    }
}

fn refusal(line: usize, text: &str, why: &'static str) -> Problem {
    Problem::Line {
        field: "idle_drag.trace",
        line,
        value: text.chars().take(40).collect(),
        why,
        allowed: Allowed::Sentence("allowed.trace"),
    }
}

type Known = Option<(String, Result<Rc<Trace>, Problem>)>;

thread_local! {
    /// The last text that was read. A moving slider asks for it again and again.
    static LAST: RefCell<Known> = const { RefCell::new(None) };
}

/// The trace of a text, read once.
///
/// # Errors
/// As [`Trace::read`].
pub(super) fn known(text: &str) -> Result<Rc<Trace>, Problem> {
    let found = LAST.with_borrow(|last| {
        let same = last.as_ref().filter(|(known, _)| known == text);
        same.map(|(_, trace)| trace.clone())
    });
    found.unwrap_or_else(|| {
        let trace = Trace::read(text).map(Rc::new);
        LAST.set(Some((text.into(), trace.clone())));
        trace
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(text: &str) -> (usize, &'static str) {
        match Trace::read(text) {
            Err(Problem::Line { line, why, .. }) => (line, why),
            other => panic!("{text:?}: {other:?}"),
        }
    }

    #[test]
    fn columns_units_and_marks_are_read() {
        let want = Trace {
            points: vec![(0.0, 0.0), (1.0, 10.0), (2.5, 5.0)],
        };
        for text in [
            "0,0\n1,36\n2.5,18",
            "time,speed\n0,0\n1,36\n2.5,18\n",
            "\u{feff}# a comment\r\ntime_s;speed_km_h\r\n0;0\r\n1;36,0\r\n2,5;18\r\n\r\n",
            "t\tspeed m/s\n0\t0\n1\t10\n2.5\t5",
            "time_s,speed_m_s\n0,0\n1,1e1\n2.5,5.0",
        ] {
            assert_eq!(Trace::read(text), Ok(want.clone()), "{text:?}");
        }
        let mph = Trace::read("time,mph\n0,0\n1,10\n").unwrap();
        assert!((mph.points[1].1 - 4.4704).abs() < 1e-12);
    }

    #[test]
    fn every_fault_is_told_by_its_line() {
        for (text, want) in [
            ("", (1, "why.trace_short")),
            ("time,speed\n", (1, "why.trace_short")),
            ("0,0\n", (1, "why.trace_short")),
            ("0,0\n1,0\n2,0\n", (3, "why.trace_short")),
            ("0,0\n1,10\n2,-3\n", (3, "why.trace_negative")),
            ("0,0\n1,ten\n", (2, "why.trace_number")),
            ("0,0\n1,\n2,5\n", (2, "why.trace_number")),
            ("0,0\ntime,speed\n", (2, "why.trace_number")),
            ("0,0\n1,nan\n", (2, "why.trace_number")),
            ("0,0\n1,inf\n", (2, "why.trace_number")),
            ("0,0\n1\n", (2, "why.trace_cells")),
            ("0,0,0\n", (1, "why.trace_cells")),
            ("0,0\n1,5\n1,6\n", (3, "why.trace_time")),
            ("0,0\n1,5\n0,6\n", (3, "why.trace_time")),
            ("0,0\n1,5\n2,6\n4,8\n", (4, "why.trace_gap")),
            ("0,0\n1,600\n", (2, "why.trace_fast")),
            ("0,0\n1,120\n", (2, "why.trace_jump")),
            ("what is this\n", (1, "why.trace_cells")),
        ] {
            assert_eq!(told(text), want, "{text:?}");
        }
        let mut long = String::new();
        for second in 0..=MOST_ROWS {
            long.push_str(&format!("{second},50\n"));
        }
        assert_eq!(told(&long), (MOST_ROWS + 1, "why.trace_long"));
    }

    #[test]
    fn the_published_cycle_as_a_file_gives_the_published_cycle() {
        let text = include_str!("../../data/wltc_class3b.csv");
        let (mut own, mut built_in) = (Vec::new(), Vec::new());
        Trace::read(text).unwrap().each(&mut |step| own.push(step));
        super::super::Cycle::Wltc.each(&mut |step| built_in.push(step));
        assert_eq!(own.len(), built_in.len());
        for (one, other) in own.iter().zip(&built_in) {
            assert!((one.to_m_s - other.to_m_s).abs() < 1e-12, "{one:?}");
            assert!((one.length_s - other.length_s).abs() < 1e-12, "{one:?}");
        }
    }
}
