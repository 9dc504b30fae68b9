//! Runs a study on all cores and writes its rows in order.

use super::design::Level;
use super::plan::{Plan, Values};
use super::table::{push_answer, push_inputs, push_problem};
use super::{StudyError, Tally};
use crate::scenario_file::one_line;
use crate::words as program_words;
use axlewright_core::input::INPUTS;
use axlewright_core::quick::Quick;
use axlewright_core::topic::ReadingValue;
use axlewright_core::words::{self, Lang};
use axlewright_core::{Problem, Scenario};
use std::io::Write;
use std::sync::mpsc::{Receiver, SyncSender, sync_channel};
use std::thread;
use std::time::{Duration, Instant};

/// How long a core should work on a block of rows: long enough that handing it over costs nothing, short
/// enough that a kill loses little.
const BLOCK_TIME: Duration = Duration::from_millis(10);
/// Least and most rows of a block.
const BLOCK_ROWS: (u64, u64) = (1, 8192);
/// Blocks that a core may be ahead of the file. With the size of a block this bounds the memory.
const AHEAD: usize = 4;

/// Rows as text.
struct Block {
    text: Vec<u8>,
    rows: u64,
}

/// Count of threads where none is asked for: one for each core that this process may use.
#[must_use]
pub fn usual_threads() -> usize {
    thread::available_parallelism().map_or(1, std::num::NonZero::get)
}

/// Computes the rows of a plan from `first` on, and writes them in order. `progress` is told the count of
/// rows that are written. What the rows hold is added to `tally`.
///
/// # Errors
/// [`StudyError::File`] where a row cannot be written. What was written before is whole rows.
pub fn run(
    plan: &Plan,
    first: u64,
    threads: usize,
    out: &mut dyn Write,
    tally: &mut Tally,
    progress: &mut dyn FnMut(u64),
) -> Result<(), StudyError> {
    let threads = threads.max(1);
    let block = block_rows(plan, first);
    let names: Vec<String> = tally.columns.iter().map(|c| c.name.clone()).collect();
    thread::scope(|scope| {
        let mut workers = Vec::new();
        let mut blocks: Vec<Receiver<Block>> = Vec::new();
        for worker in 0..threads as u64 {
            let (send, receive) = sync_channel(AHEAD);
            let names = &names;
            let start = first + worker * block;
            let step = threads as u64 * block;
            workers.push(scope.spawn(move || {
                let mut tally = Tally::new(names);
                work(plan, start, (block, step), &send, &mut tally);
                tally
            }));
            blocks.push(receive);
        }
        let mut written = first;
        // Workers take blocks in turn, so the next block is always the next worker's.
        for receive in blocks.iter().cycle() {
            let Ok(block) = receive.recv() else {
                break;
            };
            out.write_all(&block.text)
                .map_err(|error| StudyError::file(std::path::Path::new("output"), error))?;
            written += block.rows;
            progress(written);
        }
        drop(blocks);
        for worker in workers {
            if let Ok(counted) = worker.join() {
                tally.add(&counted);
            }
        }
        Ok(())
    })
}

/// Rows that take about [`BLOCK_TIME`]; the rows do not depend on it.
fn block_rows(plan: &Plan, first: u64) -> u64 {
    let mut rows = Rows::new(plan);
    let mut tally = Tally::default();
    let (start, mut count) = (Instant::now(), 0);
    while count < 64.min(plan.rows - first) && start.elapsed() < BLOCK_TIME {
        rows.push(&mut Vec::new(), first + count, &mut tally);
        count += 1;
    }
    let each = start.elapsed().as_secs_f64() / count.max(1) as f64;
    let fit = BLOCK_TIME.as_secs_f64() / each.max(1e-9);
    (fit as u64).clamp(BLOCK_ROWS.0, BLOCK_ROWS.1)
}

/// Computes every block of a worker and hands it over. Ends when all are done or nobody takes them.
fn work(
    plan: &Plan,
    start: u64,
    (block, step): (u64, u64),
    send: &SyncSender<Block>,
    tally: &mut Tally,
) {
    let mut rows = Rows::new(plan);
    let mut from = start;
    while from < plan.rows {
        let to = (from + block).min(plan.rows);
        let mut text = Vec::with_capacity(64 * block as usize);
        for row in from..to {
            rows.push(&mut text, row, tally);
        }
        let rows = to - from;
        if send.send(Block { text, rows }).is_err() {
            return;
        }
        from += step;
    }
}

/// Computes rows, one after another.
struct Rows<'a> {
    plan: &'a Plan,
    quick: Quick,
    levels: Vec<Level>,
    /// The words that the scenario now has.
    words: Vec<Option<usize>>,
}

impl<'a> Rows<'a> {
    fn new(plan: &'a Plan) -> Self {
        Self {
            plan,
            quick: plan.quick(),
            levels: vec![Level::Word(0); plan.axes.len()],
            words: vec![None; plan.axes.len()],
        }
    }

    fn push(&mut self, text: &mut Vec<u8>, row: u64, tally: &mut Tally) {
        let plan = self.plan;
        plan.levels(row, &mut self.levels);
        push_inputs(text, row, &plan.axes, &self.levels);
        match self.answer() {
            Ok(values) => push_answer(text, values, tally),
            Err(problem) => {
                let reason = reason(&problem, plan.lang);
                push_problem(text, plan.wanted.len(), &reason, tally);
            }
        }
    }

    fn answer(&mut self) -> Result<&[Option<ReadingValue>], Problem> {
        for (at, (axis, level)) in self.plan.axes.iter().zip(&self.levels).enumerate() {
            match (level, &axis.values) {
                (Level::Number(number), _) => self.quick.vary(axis.input, *number)?,
                (Level::Word(word), Values::Words(words)) if self.words[at] != Some(*word) => {
                    self.quick.choose(axis.input, &words[*word])?;
                    self.words[at] = Some(*word);
                }
                _ => {}
            }
        }
        self.quick.solve()
    }
}

/// Why a row has no answer, without its numbers, so that equal reasons count as one.
fn reason(problem: &Problem, lang: Lang) -> String {
    let field = problem.field();
    let told = match problem {
        Problem::NoAnswer { why, .. } => format!("{field}: {}", words::get(lang, why)),
        Problem::OutOfRange { .. } => program_words::fill(lang, "study.not_in_range", &[field]),
        other => other.sentence(lang),
    };
    one_line(&told)
}

impl Plan {
    /// The scenario of a row, as a reader would give it.
    ///
    /// # Errors
    /// A [`Problem`] where a value is refused, which a plan does not hold.
    pub fn scenario_of(&self, row: u64) -> Result<Scenario, Problem> {
        let mut levels = vec![Level::Word(0); self.axes.len()];
        self.levels(row, &mut levels);
        let mut scenario = self.scenario.clone();
        for (axis, level) in self.axes.iter().zip(levels) {
            let path = INPUTS[axis.input].path;
            match (level, &axis.values) {
                (Level::Number(number), _) => scenario.set_number(path, number)?,
                (Level::Word(at), Values::Words(words)) => scenario.set(path, &words[at])?,
                (Level::Word(_), _) => {}
            }
        }
        Ok(scenario)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::study::{Asked, Column};
    use axlewright_core::topic::{TOPICS, Topic, find, number_of};

    fn plan(
        topic: &'static Topic,
        vary: &[(&str, &str)],
        want: &[&str],
        points: Option<u64>,
    ) -> Plan {
        let asked = Asked {
            vary: vary
                .iter()
                .map(|(p, v)| ((*p).to_owned(), (*v).to_owned()))
                .collect(),
            want: want.iter().map(|w| (*w).to_owned()).collect(),
            design: points.map(|_| "latin".into()),
            points,
            ..Asked::default()
        };
        Plan::new(topic, topic.example().unwrap(), &asked, Lang::English).unwrap()
    }

    fn rows(plan: &Plan, first: u64, threads: usize) -> (String, Tally) {
        let names: Vec<String> = plan.wanted.iter().map(|w| w.path(plan.topic)).collect();
        let (mut out, mut tally, mut told) = (Vec::new(), Tally::new(&names), first);
        let mut progress = |rows| {
            assert!(rows > told, "{rows} after {told}");
            told = rows;
        };
        run(plan, first, threads, &mut out, &mut tally, &mut progress).unwrap();
        assert_eq!(told, plan.rows);
        (String::from_utf8(out).unwrap(), tally)
    }

    #[test]
    fn every_row_is_the_answer_to_its_scenario_for_every_topic() {
        for topic in TOPICS {
            let path = topic
                .inputs
                .iter()
                .find(|path| ["vehicle.mass", "vehicle.tyre_width_front"].contains(path))
                .unwrap();
            let range = match *path {
                "vehicle.mass" => "900 kg:2400 kg:5",
                _ => "160 mm:240 mm:5",
            };
            let plan = plan(
                topic,
                &[(path, range), ("vehicle.base", "kame,esker")],
                &[],
                None,
            );
            let (text, tally) = rows(&plan, 0, 2);
            assert_eq!(
                (text.lines().count(), tally.rows, tally.failed()),
                (10, 10, 0),
                "{text}"
            );
            for (row, line) in text.lines().enumerate() {
                let cells: Vec<&str> = line.split(',').collect();
                let readings = topic.solve(&plan.scenario_of(row as u64).unwrap()).unwrap();
                for (wanted, cell) in plan.wanted.iter().zip(&cells[3..]) {
                    let want = number_of(&readings, &wanted.path(topic));
                    let got = cell.parse().ok();
                    assert_eq!(got.map(f64::to_bits), want.map(f64::to_bits), "{line}");
                }
            }
        }
    }

    #[test]
    fn the_rows_do_not_depend_on_the_cores_nor_on_where_a_run_begins() {
        let traction = find("traction").unwrap();
        let vary = [
            ("vehicle.cg_height", "0.3 m:0.8 m:7"),
            ("surface.kind", "ice,snow,gravel"),
            ("traction.speed", "0 m/s:120 m/s:40"),
        ];
        let plan = plan(
            traction,
            &vary,
            &["limits.R1.acceleration", "limits.R1.limited_by"],
            Some(20_000),
        );
        let (one, tally) = rows(&plan, 0, 1);
        for threads in [2, 3, 7] {
            assert_eq!(
                rows(&plan, 0, threads),
                (one.clone(), tally.clone()),
                "{threads} threads"
            );
        }
        let (rest, _) = rows(&plan, 12_345, 2);
        assert!(one.ends_with(&rest) && rest.starts_with("12345,"));
        let Column { words, count, .. } = &tally.columns[1];
        assert_eq!((words.values().sum::<u64>(), *count), (20_000, 0));
    }

    #[test]
    fn a_row_without_an_answer_says_why() {
        let traction = find("traction").unwrap();
        let vary = [
            ("vehicle.lift_area_front", "0 m^2:10 m^2:11"),
            ("traction.speed", "100 m/s, 150 m/s"),
        ];
        let plan = plan(traction, &vary, &["limits.R1.acceleration"], None);
        let (text, tally) = rows(&plan, 0, 2);
        assert!((1..22).contains(&tally.failed()), "{text}");
        assert_eq!(tally.problems.len(), 1, "{:?}", tally.problems);
        for (row, line) in text.lines().enumerate() {
            let refused = traction
                .solve(&plan.scenario_of(row as u64).unwrap())
                .is_err();
            assert_eq!(line.contains(",,\"traction.speed: "), refused, "{line}");
        }
    }

    /// A writer that has no room after some bytes.
    struct Full(usize);

    impl Write for Full {
        fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
            self.0 = self
                .0
                .checked_sub(bytes.len())
                .ok_or(std::io::ErrorKind::StorageFull)?;
            Ok(bytes.len())
        }

        fn flush(&mut self) -> std::io::Result<()> {
            Ok(())
        }
    }

    #[test]
    fn a_full_disk_ends_the_run_at_once() {
        let traction = find("traction").unwrap();
        let plan = plan(
            traction,
            &[("vehicle.cg_height", "0.3 m:0.8 m:1000000000")],
            &["limits.R1.acceleration"],
            None,
        );
        let told = run(
            &plan,
            0,
            2,
            &mut Full(2_000_000),
            &mut Tally::default(),
            &mut |_| {},
        );
        assert!(told.unwrap_err().to_string().contains("space"));
    }
}
