//! How many answers a second a study gives, the table written and summed up, beside the same study in numpy
//! and scipy. `cargo bench -p axlewright-tests --bench study` prints a table, and fails where fewer answers
//! come than are wanted, or where the numbers are not those of the partner.
#![allow(clippy::unwrap_used, reason = "a bench stops where a value is missing")]

use axlewright_core::Scenario;
use axlewright_tests::{launch_case, python, run_in};
use serde_json::{Value, json};
use std::path::Path;
use std::process::ExitCode;
use std::time::Instant;

/// A study, its count of rows, the least answers a second, and how far the first and the last answer may be
/// from the partner's, relative.
struct Case {
    name: &'static str,
    arguments: &'static [&'static str],
    rows: u64,
    wanted: f64,
    apart: f64,
}

const CASES: [Case; 3] = [
    Case {
        name: "traction",
        arguments: &[
            "study",
            "traction",
            "--set",
            "vehicle.base=esker",
            "--set",
            "layouts=R1",
            "--set",
            "layout=R1",
            "--want",
            "limits.R1.acceleration",
            "--vary",
            "vehicle.cg_height=0.4m:0.7m:2000",
            "--vary",
            "surface.grade=0:0.1:2000",
        ],
        rows: 4_000_000,
        wanted: 1e6,
        // The same closed form.
        apart: 1e-12,
    },
    Case {
        name: "launch",
        arguments: &[
            "study",
            "launch",
            "--set",
            "vehicle.base=esker",
            "--set",
            "layouts=F1R1",
            "--set",
            "layout=F1R1",
            "--want",
            "layouts.F1R1.time_to_60_mph",
            "--vary",
            "vehicle.cg_height=0.4m:0.7m:8000",
        ],
        rows: 8000,
        wanted: 2e3,
        // The bound of the reference runs.
        apart: 1e-4,
    },
    Case {
        name: "launch, ideal",
        arguments: &[
            "study",
            "launch",
            "--set",
            "vehicle.base=esker",
            "--set",
            "layouts=F1R1",
            "--set",
            "layout=F1R1",
            "--set",
            "launch.model=ideal",
            "--set",
            "vehicle.rotor_inertia=0",
            "--set",
            "vehicle.wheel_inertia=0.01 kg m^2",
            "--want",
            "layouts.F1R1.time_to_60_mph",
            "--vary",
            "vehicle.cg_height=0.4m:0.7m:8000",
        ],
        rows: 8000,
        wanted: 2e3,
        // The partner has no wheels to spin up; here they have 2 parts in 10 000 of the mass.
        apart: 3e-4,
    },
];

/// Answers a second, the best of three runs: others work on the machine too.
fn answers_per_second(folder: &Path, case: &Case) -> f64 {
    (0..3)
        .map(|_| {
            let start = Instant::now();
            let run = run_in(folder, &[case.arguments, &["-o", "out.csv"]].concat());
            assert_eq!(run.code, Some(0), "{}", run.stderr);
            case.rows as f64 / start.elapsed().as_secs_f64()
        })
        .fold(0.0, f64::max)
}

/// First and last value of the table.
fn ends(folder: &Path) -> [f64; 2] {
    let table = std::fs::read_to_string(folder.join("out.csv")).unwrap();
    let value = |line: &str| line.split(',').rev().nth(1).unwrap().parse().unwrap();
    [
        value(table.lines().nth(1).unwrap()),
        value(table.lines().last().unwrap()),
    ]
}

/// Rows a second in Python, and its first and last value.
type Partner = (f64, [f64; 2]);

/// A study of `study.py`, which times itself.
fn study(asked: &Value) -> Partner {
    let got: Value = serde_json::from_str(&python("study.py", &asked.to_string())).unwrap();
    let number = |name: &str| got[name].as_f64().unwrap();
    (
        number("rows") / number("with_file"),
        ["first", "last"].map(number),
    )
}

/// The launches of the case in scipy, as the reference runs have them. What the interpreter takes to start
/// is taken off.
fn launches(rows: u32) -> Partner {
    let cases = (0..rows).map(|row| {
        let mut scenario = Scenario::default();
        for (path, text) in [("vehicle.base", "esker"), ("layout", "F1R1")] {
            scenario.set(path, text).unwrap();
        }
        let height = 0.4 + 0.3 * f64::from(row) / f64::from(rows - 1);
        scenario.set_number("vehicle.cg_height", height).unwrap();
        launch_case(&scenario)
    });
    let cases: Vec<Value> = cases.collect();
    let timed = |cases: Vec<Value>| {
        let start = Instant::now();
        let printed = python("launch.py", &Value::from(cases).to_string());
        (start.elapsed().as_secs_f64(), printed)
    };
    let (start_s, _) = timed(Vec::new());
    let (all_s, printed) = timed(cases);
    // Rollout, 60 mph, 100 km/h, quarter mile.
    let times: Vec<[Option<f64>; 4]> = serde_json::from_str(&printed).unwrap();
    let to_60 = [times.first(), times.last()].map(|times| times.unwrap()[1].unwrap());
    (f64::from(rows) / (all_s - start_s), to_60)
}

fn main() -> ExitCode {
    let folder = tempfile::tempdir().unwrap();
    let csv = folder.path().join("numpy.csv");
    let mut missed = Vec::new();
    println!("study          ours, rows/s   wanted   Python, rows/s   ratio   numbers");
    for case in &CASES {
        let ours = answers_per_second(folder.path(), case);
        let (theirs, values) = match case.name {
            "traction" => study(&json!({"study": "traction", "rows": case.rows, "csv": csv})),
            "launch" => launches(60),
            _ => study(&json!({"study": "launch", "rows": 100})),
        };
        let apart = ends(folder.path())
            .into_iter()
            .zip(values)
            .map(|(ours, theirs)| (ours / theirs - 1.0).abs())
            .fold(0.0, f64::max);
        println!(
            "{:14} {ours:12.0} {:8.0} {theirs:16.0} {:7.1}   {apart:.1e} apart",
            case.name,
            case.wanted,
            ours / theirs
        );
        if ours < case.wanted {
            missed.push(format!(
                "{}: {ours:.0} answers a second, wanted {:.0}",
                case.name, case.wanted
            ));
        }
        if apart.is_nan() || apart > case.apart {
            missed.push(format!(
                "{}: {apart:.1e} from Python's numbers, allowed {:.0e}",
                case.name, case.apart
            ));
        }
    }
    for line in &missed {
        eprintln!("MISSED {line}");
    }
    if missed.is_empty() {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    }
}
