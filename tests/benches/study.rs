//! How many answers a second a study gives, the table written and summed up, beside the same study in numpy
//! and scipy. `cargo bench -p axlewright-tests --bench study` prints a table.
#![allow(clippy::unwrap_used, reason = "a bench stops where a value is missing")]

use axlewright_tests::{python, run_in};
use serde_json::{Value, json};
use std::path::Path;
use std::time::Instant;

/// A study, its count of rows, and the least answers a second.
struct Case {
    name: &'static str,
    arguments: &'static [&'static str],
    rows: u64,
    wanted: f64,
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

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let csv = folder.path().join("numpy.csv");
    println!("study          ours, rows/s   wanted   Python, rows/s   ratio   numbers");
    for case in &CASES {
        let ours = answers_per_second(folder.path(), case);
        let reference = match case.name {
            "launch" => None,
            "traction" => Some(json!({"study": "traction", "rows": case.rows, "csv": csv})),
            _ => Some(json!({"study": "launch", "rows": 100})),
        };
        let [theirs, apart] = reference.map_or([f64::NAN; 2], |asked| {
            let got: Value = serde_json::from_str(&python("study.py", &asked.to_string())).unwrap();
            let number = |name: &str| got[name].as_f64().unwrap();
            let apart = ends(folder.path())
                .into_iter()
                .zip(["first", "last"])
                .map(|(ours, name)| (ours / number(name) - 1.0).abs())
                .fold(0.0, f64::max);
            [number("rows") / number("with_file"), apart]
        });
        println!(
            "{:14} {ours:12.0} {:8.0} {theirs:16.0} {:7.1}   {apart:.1e} apart",
            case.name,
            case.wanted,
            ours / theirs
        );
    }
}
