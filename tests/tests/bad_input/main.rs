//! Bad input: one clear line that names field, value and what is allowed, exit code 2, nothing on the
//! standard output, nothing written, and what was there before left as it was.
#![allow(
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test stops where a value is missing"
)]

mod cases;

use axlewright_core::topic::TOPICS;
use axlewright_tests::{Run, run_in};
use cases::CASES;
use std::path::Path;

/// Asserts that a run was refused as the reader deserves it.
fn refused(run: &Run, names: &[&str], case: &str) {
    assert_eq!(
        run.code,
        Some(2),
        "{case}: exit code; stderr: {}",
        run.stderr
    );
    assert_eq!(run.stdout, "", "{case}: standard output");
    let line = run.stderr.strip_suffix('\n').unwrap_or_else(|| {
        panic!("{case}: no line end: {:?}", run.stderr);
    });
    let control = line.chars().find(|c| c.is_control());
    assert_eq!(control, None, "{case}: not one plain line: {line:?}");
    assert!(!line.contains("panicked"), "{case}: {line}");
    for name in names {
        assert!(line.contains(name), "{case}: {name:?} is not named: {line}");
    }
}

/// Asserts that neither a number nor a figure comes of it, and that files stay as they are.
fn refused_everywhere(folder: &Path, topic: &str, arguments: &[&str], names: &[&str]) {
    let case = format!("{topic} {}", arguments.join(" "));
    let mut answer = vec!["answer", topic];
    answer.extend_from_slice(arguments);
    refused(&run_in(folder, &answer), names, &case);

    let before = listing(folder);
    let old = folder.join("old.svg");
    std::fs::write(&old, "the old figure").unwrap();
    for output in ["new.svg", "old.svg"] {
        let mut figure = vec!["figure", topic, "-o", output];
        figure.extend_from_slice(arguments);
        refused(&run_in(folder, &figure), names, &case);
    }
    assert_eq!(
        std::fs::read_to_string(&old).unwrap(),
        "the old figure",
        "{case}"
    );
    std::fs::remove_file(&old).unwrap();
    assert_eq!(listing(folder), before, "{case}: a file was left");
}

fn listing(folder: &Path) -> Vec<String> {
    let mut names: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

#[test]
fn bad_files_are_refused_by_every_topic() {
    let folder = tempfile::tempdir().unwrap();
    for case in CASES {
        std::fs::write(folder.path().join(case.file), case.bytes).unwrap();
    }
    for (at, case) in CASES.iter().enumerate() {
        // Reading is the same for all; one topic each keeps the test quick.
        let topic = TOPICS[at % TOPICS.len()].name;
        refused_everywhere(folder.path(), topic, &[case.file], case.names);
    }
}

#[test]
fn the_same_on_the_command_line() {
    let folder = tempfile::tempdir().unwrap();
    for (settings, names) in [
        (
            &["vehicle.mass=1850 m"][..],
            &["vehicle.mass", "1850 m", "100\u{2009}000\u{2009}kg"][..],
        ),
        (
            &["vehicle.mass=nan"],
            &["vehicle.mass", "nan", "10\u{2009}kg"],
        ),
        (&["vehicle.mass=0"], &["vehicle.mass", "0", "10\u{2009}kg"]),
        (
            &["vehicle.mass=-5 kg"],
            &["vehicle.mass", "-5 kg", "10\u{2009}kg"],
        ),
        (
            &["surface.friction_peak=1e9"],
            &["surface.friction_peak", "1e9", "0.001"],
        ),
        (&["vehicle.mas=1850 kg"], &["vehicle.mas", "vehicle.mass"]),
        (&["mass=1850 kg"], &["mass", "vehicle.mass"]),
        (&["vehicle.base=lorry"], &["vehicle.base", "lorry", "esker"]),
        (&["layouts=F1 F3"], &["layouts", "F3", "F2R2"]),
        (&["vehicle.mass"], &["vehicle.mass", "field=value"]),
        (&["vehicle.mass=\u{1b}[2J"], &["vehicle.mass"]),
        (&["vehicle.mass=1\n2"], &["vehicle.mass"]),
    ] {
        for topic in TOPICS {
            let mut arguments = Vec::new();
            for setting in settings {
                arguments.extend_from_slice(&["--set", *setting]);
            }
            refused_everywhere(folder.path(), topic.name, &arguments, names);
        }
    }
}

/// Values that are each in range but not together.
#[test]
fn values_that_do_not_go_together_are_refused() {
    let folder = tempfile::tempdir().unwrap();
    let esker = ["--set", "vehicle.base=esker"];
    for (topic, setting, names) in [
        (
            "load_transfer",
            "vehicle.cg_to_front_axle=3 m",
            &["vehicle.cg_to_front_axle", "3 m", "2.86\u{2009}m"][..],
        ),
        (
            "traction",
            "vehicle.cg_to_front_axle=2.86 m",
            &["vehicle.cg_to_front_axle", "2.86 m"],
        ),
        (
            "turn_in_place",
            "vehicle.cg_to_front_axle=19 m",
            &["vehicle.cg_to_front_axle", "19 m", "2.86\u{2009}m"],
        ),
        (
            "load_transfer",
            "load_transfer.acceleration=3.5 g",
            &["load_transfer.acceleration", "2.593\u{2009}g"],
        ),
        (
            "turn_in_place",
            "surface.grade=100 %",
            &["surface.grade", "100 %", "less than"],
        ),
    ] {
        let arguments = [&esker[..], &["--set", setting]].concat();
        refused_everywhere(folder.path(), topic, &arguments, names);
    }
}

/// A scenario file is taken at its word: what it leaves out is told, not made up.
#[test]
fn a_missing_field_is_named() {
    let folder = tempfile::tempdir().unwrap();
    let text = "[vehicle]\nmass = \"1850 kg\"\nwheelbase = \"2.86 m\"\n";
    std::fs::write(folder.path().join("part.toml"), text).unwrap();
    for topic in TOPICS {
        let names = match topic.name {
            "cornering" => ["vehicle.cornering_stiffness_front", "kN/rad"],
            "idle_drag" => ["vehicle.motor_torque", "20\u{2009}000\u{2009}N·m"],
            "choice" => ["vehicle.max_steer_angle", "60°"],
            // It answers what it can, and draws only a vehicle that is given whole.
            "packaging" => {
                let answer = run_in(folder.path(), &["answer", "packaging", "part.toml"]);
                assert_eq!(answer.code, Some(0), "{}", answer.stderr);
                let figure = ["figure", "packaging", "part.toml", "-o", "new.svg"];
                let figure = run_in(folder.path(), &figure);
                refused(&figure, &["vehicle.motor_power", "kW"], "packaging");
                assert_eq!(listing(folder.path()), ["part.toml"]);
                continue;
            }
            _ => ["vehicle.cg_to_front_axle", "20\u{2009}m"],
        };
        refused_everywhere(folder.path(), topic.name, &["part.toml"], &names);
    }
}

#[test]
fn a_file_of_50_megabytes_is_refused_unread() {
    let folder = tempfile::tempdir().unwrap();
    let text =
        "# all comment, and nothing but a comment, as far as the eye can see\n".repeat(750_000);
    assert!(text.len() > 50_000_000);
    std::fs::write(folder.path().join("large.toml"), text).unwrap();
    // The first use may build the program, which is not what is timed here.
    let _ = axlewright_tests::program();
    let begun = std::time::Instant::now();
    refused_everywhere(
        folder.path(),
        "traction",
        &["large.toml"],
        &["large.toml", "bytes"],
    );
    let seconds = begun.elapsed().as_secs_f64();
    assert!(seconds < 10.0, "three runs took {seconds} s");
}

#[test]
fn a_directory_and_a_missing_file_are_refused() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::create_dir(folder.path().join("folder.toml")).unwrap();
    refused_everywhere(
        folder.path(),
        "traction",
        &["folder.toml"],
        &["folder.toml", "directory"],
    );
    refused_everywhere(folder.path(), "traction", &["none.toml"], &["none.toml"]);
    refused_everywhere(folder.path(), "traction", &["-"], &["empty"]);
}

#[test]
fn unknown_topics_views_formats_and_endings_are_refused() {
    let folder = tempfile::tempdir().unwrap();
    let topics = ["load_transfer", "traction", "turn_in_place"];
    refused_everywhere(
        folder.path(),
        "tractoin",
        &[],
        &[&["topic", "tractoin"], &topics[..]].concat(),
    );
    for (arguments, names) in [
        (
            &["schema", "tractoin"][..],
            &["topic", "tractoin", "traction"][..],
        ),
        (
            &["figure", "traction", "--view", "above"],
            &["view", "above"],
        ),
        (
            &["figure", "traction", "-o", "figure.gif"],
            &["figure.gif", ".svg", ".png"],
        ),
        (
            &["figure", "traction", "--width", "1e9"],
            &["width", "1000000000", "320"],
        ),
        (
            &["figure", "traction", "--width", "nan"],
            &["width", "NaN", "320"],
        ),
        (&["figure", "traction", "--scale", "1e9"], &["scale", "8"]),
        (
            &["answer", "traction", "--format", "yaml"],
            &["yaml", "json"],
        ),
        (&["answer", "traction", "--color"], &["--color"]),
        (&["answer"], &["TOPIC"]),
        (&["explain", "traction"], &["explain"]),
        (&["new", "old.toml"], &["old.toml"]),
    ] {
        std::fs::write(folder.path().join("old.toml"), "the old scenario").unwrap();
        let run = run_in(folder.path(), arguments);
        refused(&run, names, &arguments.join(" "));
        assert_eq!(
            listing(folder.path()),
            ["old.toml"],
            "{arguments:?}: a file was left"
        );
        let old = std::fs::read_to_string(folder.path().join("old.toml")).unwrap();
        assert_eq!(old, "the old scenario", "{arguments:?}");
    }
}

/// A cycle of the reader's own: what is wrong with it is told by the number of its line.
#[test]
fn a_cycle_is_refused_by_the_line_that_is_at_fault() {
    let folder = tempfile::tempdir().unwrap();
    let scenario =
        "[vehicle]\nbase = \"esker\"\n[idle_drag]\ncycle = \"own\"\ntrace = \"cycle.csv\"\n";
    std::fs::write(folder.path().join("case.toml"), scenario).unwrap();
    for (lines, names) in [
        (
            "0,0\n1,5\n2,6\n4,8\n",
            ["line 4", "4,8", "rows are missing"],
        ),
        ("0,0\n1,10\n2,-3\n", ["line 3", "2,-3", "below 0"]),
        (
            "time,speed\n0,0\n1,ten\n",
            ["line 3", "1,ten", "not two numbers"],
        ),
        ("0,0\n1,nan\n", ["line 2", "1,nan", "not two numbers"]),
        ("0,0\n1,inf\n", ["line 2", "1,inf", "not two numbers"]),
        ("0,0\n1,2,3\n", ["line 2", "1,2,3", "two cells"]),
        ("0,0\n1,5\n1,6\n", ["line 3", "1,6", "does not rise"]),
        ("0,0\n1,700\n", ["line 2", "1,700", "540"]),
        ("# nothing driven\n0,0\n1,0\n", ["line 3", "1,0", "43"]),
    ] {
        std::fs::write(folder.path().join("cycle.csv"), lines).unwrap();
        let last = if lines.starts_with('#') {
            "idle_drag.trace"
        } else {
            names[2]
        };
        let names = ["idle_drag.trace", names[0], names[1], last];
        refused_everywhere(folder.path(), "idle_drag", &["case.toml"], &names);
    }
    std::fs::remove_file(folder.path().join("cycle.csv")).unwrap();
    refused_everywhere(folder.path(), "idle_drag", &["case.toml"], &["cycle.csv"]);
}

/// No more of ten million rows is read than is needed to refuse them by a line.
#[test]
fn a_cycle_of_ten_million_rows_is_refused_at_once() {
    let folder = tempfile::tempdir().unwrap();
    let scenario =
        "[vehicle]\nbase = \"esker\"\n[idle_drag]\ncycle = \"own\"\ntrace = \"cycle.csv\"\n";
    std::fs::write(folder.path().join("case.toml"), scenario).unwrap();
    std::fs::write(folder.path().join("cycle.csv"), "0,50\n".repeat(10_000_000)).unwrap();
    let _ = axlewright_tests::program();
    let begun = std::time::Instant::now();
    let names = ["idle_drag.trace", "line 120001", "43 200 rows"];
    refused_everywhere(folder.path(), "idle_drag", &["case.toml"], &names);
    let seconds = begun.elapsed().as_secs_f64();
    assert!(seconds < 10.0, "three runs took {seconds} s");
}
