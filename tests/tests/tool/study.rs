//! Studies: every row is an answer; a kill loses nothing and doubles nothing; memory does not grow; what
//! cannot be is told in one line.

use crate::stdout_of;
use axlewright_core::topic::{TOPICS, find, number_of};
use axlewright_core::words::Lang;
use axlewright_site::study::{Asked, Plan};
use axlewright_tests::{Draw, Run, program, run_in};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

const TRACTION: [&str; 12] = [
    "study",
    "traction",
    "--design",
    "latin",
    "--points",
    "300000",
    "--seed",
    "3",
    "--vary",
    "vehicle.cg_height=0.4m:0.7m",
    "--vary",
    "surface.kind=ice,snow,gravel",
];
const LAUNCH: [&str; 8] = [
    "study",
    "launch",
    "--vary",
    "vehicle.mass=1200kg:2400kg:600",
    "--set",
    "layouts=R1",
    "--set",
    "layout=R1",
];

fn started(folder: &Path, arguments: &[&str]) -> Child {
    Command::new(program())
        .args(arguments)
        .current_dir(folder)
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .unwrap()
}

fn done(folder: &Path, arguments: &[&str]) -> Run {
    let run = run_in(folder, arguments);
    assert_eq!(run.code, Some(0), "{arguments:?}: {}", run.stderr);
    run
}

fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

#[test]
fn a_study_that_is_killed_again_and_again_ends_as_one_that_was_not() {
    for (study, seed) in [(&TRACTION[..], 11), (&LAUNCH[..], 12)] {
        let folder = tempfile::tempdir().unwrap();
        let whole = done(folder.path(), &[study, &["-o", "whole.csv"]].concat());
        let read = |name: &str| std::fs::read(folder.path().join(name)).unwrap();
        let arguments = [study, &["-o", "killed.csv"]].concat();
        let mut draw = Draw::seeded(seed);
        let (mut kills, mut amid) = (0, 0);
        let draft = folder.path().join("killed.csv.unfinished");
        while kills < 12 {
            let mut child = started(folder.path(), &arguments);
            std::thread::sleep(Duration::from_millis((40.0 + 110.0 * draw.unit()) as u64));
            let ended = child.try_wait().unwrap().is_some();
            child.kill().unwrap();
            child.wait().unwrap();
            if ended {
                break;
            }
            kills += 1;
            let written = std::fs::metadata(&draft).map_or(0, |file| file.len());
            amid += usize::from(written > 1000);
            // Killed after its last row, while it told its summary: then the file has its name and is whole.
            if folder.path().join("killed.csv").exists() {
                assert!(
                    read("whole.csv") == read("killed.csv"),
                    "half a study has no name"
                );
                break;
            }
        }
        assert!(amid >= 2, "{kills} kills, {amid} of them amid the rows");
        let last = run_in(folder.path(), &arguments);
        assert_eq!(last.code, Some(0), "{}", last.stderr);
        assert!(
            read("whole.csv") == read("killed.csv"),
            "{kills} kills: another file"
        );
        assert_eq!(whole.stdout, last.stdout, "{kills} kills: another summary");
        assert_eq!(names(folder.path()), ["killed.csv", "whole.csv"]);
    }
}

#[test]
fn what_a_torn_write_left_is_mended_wherever_it_ends() {
    let study = [
        "study",
        "traction",
        "--vary",
        "vehicle.cg_height=0.4m:0.7m:40",
        "-o",
        "a.csv",
    ];
    let folder = tempfile::tempdir().unwrap();
    let summary = done(folder.path(), &study).stdout;
    let path = folder.path().join("a.csv");
    let (draft, plan) = (
        path.with_extension("csv.unfinished"),
        path.with_extension("csv.plan"),
    );
    let whole = std::fs::read(&path).unwrap();
    let topic = find("traction").unwrap();
    let asked = Asked {
        vary: vec![("vehicle.cg_height".into(), "0.4m:0.7m:40".into())],
        ..Asked::default()
    };
    let kept = Plan::new(topic, topic.example().unwrap(), &asked, Lang::English)
        .unwrap()
        .text();
    let mut draw = Draw::seeded(5);
    for case in 0..25 {
        let mut torn = whole[..(draw.unit() * whole.len() as f64) as usize].to_vec();
        if case % 5 == 0 {
            torn.extend_from_slice(&[0; 300]); // blocks that never reached the disk
        }
        if case % 5 == 1 {
            torn.extend_from_slice(b"7,0.1,0.2\r\n");
        }
        std::fs::write(&draft, &torn).unwrap();
        std::fs::write(&plan, &kept).unwrap();
        std::fs::remove_file(&path).unwrap();
        let again = done(folder.path(), &study);
        assert!(
            std::fs::read(&path).unwrap() == whole,
            "case {case}, {} bytes",
            torn.len()
        );
        assert_eq!(again.stdout, summary, "case {case}");
        assert_eq!(names(folder.path()), ["a.csv"]);
    }
}

#[test]
fn the_rows_of_another_study_are_not_gone_on_with() {
    let folder = tempfile::tempdir().unwrap();
    let endless = [
        "study",
        "traction",
        "--vary",
        "vehicle.cg_height=0.4m:0.7m:1000000000",
        "-o",
        "a.csv",
    ];
    let mut child = started(folder.path(), &endless);
    let draft = folder.path().join("a.csv.unfinished");
    let begun = || std::fs::metadata(&draft).map_or(0, |file| file.len()) > 5000;
    while !begun() {
        std::thread::sleep(Duration::from_millis(10));
    }
    let other = [
        "study",
        "traction",
        "--vary",
        "vehicle.cg_height=0.4m:0.7m:5",
        "-o",
        "a.csv",
    ];
    for (arguments, names) in [(&other, "one run"), (&endless, "one run")] {
        let run = run_in(folder.path(), arguments);
        assert_eq!(run.code, Some(2), "{}", run.stderr);
        assert!(
            run.stderr.contains(names) && run.stderr.contains("a.csv"),
            "{}",
            run.stderr
        );
    }
    child.kill().unwrap();
    child.wait().unwrap();
    let run = run_in(folder.path(), &other);
    assert_eq!(
        (run.code, run.stderr.lines().count()),
        (Some(2), 1),
        "{}",
        run.stderr
    );
    assert!(run.stderr.contains("--fresh"), "{}", run.stderr);
    done(folder.path(), &[&other[..], &["--fresh"]].concat());
    assert_eq!(names(folder.path()), ["a.csv"]);
}

#[cfg(target_os = "linux")]
#[test]
fn memory_does_not_grow_with_the_rows() {
    let folder = tempfile::tempdir().unwrap();
    let mut child = started(
        folder.path(),
        &[
            "study",
            "traction",
            "--vary",
            "vehicle.cg_height=0.4m:0.7m:1000000000",
            "-o",
            "a.csv",
        ],
    );
    let most_kb = || {
        let status = std::fs::read_to_string(format!("/proc/{}/status", child.id())).unwrap();
        let line = status
            .lines()
            .find(|line| line.starts_with("VmHWM:"))
            .unwrap();
        line.split_whitespace()
            .nth(1)
            .unwrap()
            .parse::<u64>()
            .unwrap()
    };
    let rows = || std::fs::metadata(folder.path().join("a.csv.unfinished")).map_or(0, |f| f.len());
    let wait_for = |bytes: u64| {
        while rows() < bytes {
            std::thread::sleep(Duration::from_millis(20));
        }
        most_kb()
    };
    let (early, late) = (wait_for(2_000_000), wait_for(12_000_000));
    child.kill().unwrap();
    child.wait().unwrap();
    assert!(
        late < early + 4_000,
        "{early} kB after 2 MB of rows, {late} kB after 12 MB"
    );
}

#[test]
fn a_study_works_for_every_topic_and_says_the_same_in_a_file_and_by_options() {
    let folder = tempfile::tempdir().unwrap();
    for topic in TOPICS {
        // A drive unit fits or not whatever the car weighs.
        let (path, most, vary) = match topic.name {
            "packaging" => (
                "vehicle.wheel_radius",
                "0.4 m",
                "vehicle.wheel_radius=0.3 m:0.4 m:3",
            ),
            _ => ("vehicle.mass", "2000 kg", "vehicle.mass=1500 kg:2000 kg:3"),
        };
        let text = stdout_of(&["study", topic.name, "--vary", vary]);
        assert_eq!(text.lines().count(), 4, "{text}");
        let mut scenario = topic.example().unwrap();
        scenario.set(path, most).unwrap();
        let readings = topic.solve(&scenario).unwrap();
        let (head, last) = (text.lines().next().unwrap(), text.lines().last().unwrap());
        let mut found = 0;
        for (name, cell) in head.split(',').zip(last.split(',')).skip(2) {
            if name != "problem" {
                let want = number_of(&readings, name);
                assert_eq!(cell.parse().ok(), want, "{}: {name}", topic.name);
                found += 1;
            }
        }
        assert!(found > 0, "{head}");
    }
    let file = "layouts = [\"F1\", \"R2\"]\n[vehicle]\nbase = \"kame\"\n[study]\nwant = [\"limits.*.acceleration\"]\n\
                design = \"latin\"\npoints = 9\nseed = 4\n[study.vary]\nvehicle.cg_height = \"0.4 m:0.6 m\"\n\
                \"surface.kind\" = [\"ice\", \"gravel\"]\n";
    std::fs::write(folder.path().join("study.toml"), file).unwrap();
    let by_file = done(folder.path(), &["study", "traction", "study.toml"]).stdout;
    let by_options = stdout_of(&[
        "study",
        "traction",
        "--set",
        "vehicle.base=kame",
        "--set",
        "layouts=F1 R2",
        "--set",
        "layout=F1",
        "--want",
        "limits.*.acceleration",
        "--design",
        "latin",
        "--points",
        "9",
        "--seed",
        "4",
        "--vary",
        "vehicle.cg_height=0.4m:0.6m",
        "--vary",
        "surface.kind=ice, gravel",
    ]);
    assert_eq!(by_file, by_options);
    assert_eq!(by_file.lines().count(), 10);
    // To the other commands it is a scenario like any other.
    let answer = done(
        folder.path(),
        &["answer", "traction", "study.toml", "--format", "csv"],
    )
    .stdout;
    let readings = find("traction").unwrap();
    assert!(answer.contains("limits.R2.acceleration") && readings.name == "traction");
}

#[test]
fn what_cannot_be_is_told_in_one_line() {
    let folder = tempfile::tempdir().unwrap();
    let file = |name: &str, text: &str| std::fs::write(folder.path().join(name), text).unwrap();
    file(
        "word.toml",
        "[study]\ncolour = \"red\"\n[study.vary]\nvehicle.mass = \"1 t:2 t:2\"\n",
    );
    file("flat.toml", "study = 5\n");
    file("points.toml", "[study]\npoints = 1.5\n");
    let vary = ["--vary", "vehicle.mass=1 t:2 t:3"];
    for (arguments, named) in [
        (
            &["traction"][..],
            &["vary", "range", "vehicle.cg_height"][..],
        ),
        (
            &["traction", "--vary", "vehicle.mass"],
            &["vehicle.mass", "from:to:count"],
        ),
        (
            &["traction", "--vary", "vehicle.mas=1:2:3"],
            &["vehicle.mas", "vehicle.mass"],
        ),
        (
            &["traction", "--vary", "vehicle.mass=1 t:2 t"],
            &["vehicle.mass", "1 t:2 t", "count"],
        ),
        (
            &["traction", "--vary", "vehicle.mass=1 t:2 t:0"],
            &["vehicle.mass", "whole count"],
        ),
        (
            &["traction", "--vary", "vehicle.mass=1 kg:2 t:3"],
            &["vehicle.mass", "1 kg", "10"],
        ),
        (
            &["traction", "--vary", "vehicle.mass=1 m:2 t:3"],
            &["vehicle.mass", "1 m", "10"],
        ),
        (
            &["traction", "--vary", "surface.kind=mud"],
            &["surface.kind", "mud", "gravel"],
        ),
        (
            &["traction", "--vary", "launch.time=1:2:3"],
            &["launch.time", "traction"],
        ),
        (
            &["traction", vary[0], vary[1], vary[0], vary[1]],
            &["vehicle.mass", "once"],
        ),
        (
            &["traction", vary[0], vary[1], "--want", "limits.F9.speed"],
            &["limits.F9.speed", "limits.*.acceleration"],
        ),
        (
            &["traction", vary[0], vary[1], "--design", "star"],
            &["design", "star", "latin"],
        ),
        (
            &["traction", vary[0], vary[1], "--points", "5"],
            &["points", "5", "latin"],
        ),
        (
            &[
                "traction", "--design", "latin", "--points", "0", vary[0], vary[1],
            ],
            &["rows", "0", "1 to"],
        ),
        (
            &[
                "traction",
                "--vary",
                "vehicle.mass=1 t:2 t:999999999",
                "--vary",
                "vehicle.wheelbase=2:3:999999999",
            ],
            &["rows", "1 to"],
        ),
        (
            &["traction", vary[0], vary[1], "--threads", "0"],
            &["threads", "0", "1 to"],
        ),
        (&["traction", "word.toml"], &["study.colour", "vary, want"]),
        (&["traction", "flat.toml"], &["study", "table"]),
        (&["traction", "points.toml"], &["study.points", "whole"]),
        (&["tractoin", vary[0], vary[1]], &["topic", "tractoin"]),
    ] {
        let before = names(folder.path());
        let run = run_in(
            folder.path(),
            &[&["study"], arguments, &["-o", "out.csv"]].concat(),
        );
        assert_eq!(run.code, Some(2), "{arguments:?}: {}", run.stderr);
        assert_eq!(
            (run.stderr.lines().count(), run.stdout.as_str()),
            (1, ""),
            "{arguments:?}: {}",
            run.stderr
        );
        for name in named {
            assert!(run.stderr.contains(name), "{arguments:?}: {}", run.stderr);
        }
        assert_eq!(names(folder.path()), before, "{arguments:?} left a file");
    }
    let run = run_in(
        folder.path(),
        &[
            "study",
            "traction",
            vary[0],
            vary[1],
            "-o",
            "no/such/out.csv",
        ],
    );
    assert_eq!(
        (run.code, run.stderr.lines().count()),
        (Some(1), 1),
        "{}",
        run.stderr
    );
    assert!(run.stderr.contains("no/such/out.csv"), "{}", run.stderr);
}
