//! Plots of studies: drawn from the table alone, the same every time, and what they say is in the table.

use axlewright_tests::{picture_differs, python, run_in};
use serde_json::Value;
use std::path::Path;

fn study(folder: &Path, name: &str, arguments: &[&str]) {
    let run = run_in(folder, &[&["study"], arguments, &["-o", name]].concat());
    assert_eq!(run.code, Some(0), "{}", run.stderr);
}

fn grid(folder: &Path) {
    let vary = [
        "--vary",
        "vehicle.cg_height=0.4m:0.7m:16",
        "--vary",
        "surface.grade=0%:20%:11",
        "--vary",
        "surface.kind=ice,gravel",
    ];
    study(folder, "grid.csv", &[&["traction"], &vary[..]].concat());
}

fn latin(folder: &Path) {
    let vary = [
        "--vary",
        "vehicle.mass=1200kg:2400kg",
        "--vary",
        "vehicle.cg_height=0.4m:0.7m",
        "--vary",
        "surface.kind=ice,snow,gravel",
    ];
    let design = ["--design", "latin", "--points", "600", "--seed", "5"];
    study(
        folder,
        "latin.csv",
        &[&["traction"], &vary[..], &design].concat(),
    );
}

const WAYS: [(&str, &[&str]); 3] = [
    (
        "contour",
        &[
            "plot",
            "traction",
            "grid.csv",
            "--z",
            "limits.R1.acceleration",
            "--where",
            "surface.kind=gravel",
        ],
    ),
    (
        "scatter",
        &[
            "plot",
            "traction",
            "latin.csv",
            "--kind",
            "scatter",
            "--x",
            "vehicle.cg_height",
            "--y",
            "limits.R1.acceleration",
        ],
    ),
    (
        "parallel",
        &[
            "plot",
            "traction",
            "latin.csv",
            "--kind",
            "parallel",
            "--z",
            "limits.F1.acceleration",
        ],
    ),
];

#[test]
fn plots_are_those_that_are_kept_and_the_same_to_the_byte() {
    let folder = tempfile::tempdir().unwrap();
    grid(folder.path());
    latin(folder.path());
    let mut wrong = Vec::new();
    for (name, arguments) in WAYS {
        for (size, look) in [
            (
                "column-print",
                &["--width", "84mm", "--dpi", "120", "--style", "print"][..],
            ),
            (
                "wide-dark",
                &["--width", "900", "--scale", "0.6", "--style", "dark"],
            ),
        ] {
            let draw = |output: &str| {
                let run = run_in(folder.path(), &[arguments, look, &["-o", output]].concat());
                assert_eq!(run.code, Some(0), "{name}: {}", run.stderr);
                std::fs::read(folder.path().join(output)).unwrap()
            };
            let png = draw("one.png");
            wrong.extend(picture_differs(
                &format!("plot-{name}-{size}"),
                &png,
                0.0005,
            ));
            if look.contains(&"--dpi") {
                continue;
            }
            assert!(png == draw("two.png"), "{name}: two runs differ");
        }
        let svg = run_in(folder.path(), arguments).stdout;
        let said: Value = serde_json::from_str(&python("svg.py", &svg)).unwrap();
        assert_eq!(
            (&said["root"], &said["numbers"]),
            (&Value::Bool(true), &Value::Bool(true)),
            "{name}"
        );
        assert_eq!(said["role"], "img", "{name}");
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn what_a_plot_says_is_in_the_table() {
    let folder = tempfile::tempdir().unwrap();
    grid(folder.path());
    let alt = run_in(folder.path(), &[WAYS[0].1, &["--alt"]].concat()).stdout;
    let table = std::fs::read_to_string(folder.path().join("grid.csv")).unwrap();
    let mut values: Vec<f64> = table
        .lines()
        .filter(|line| line.contains(",gravel,"))
        .map(|line| line.split(',').nth(5).unwrap().parse::<f64>().unwrap() / 9.81)
        .collect();
    values.sort_by(f64::total_cmp);
    for value in [values[0], values[values.len() - 1]] {
        let text = format!("{value:.3}\u{2009}g");
        assert!(alt.contains(&text), "{text}: {alt}");
    }
    assert!(alt.contains(&format!("{} rows", 16 * 11)), "{alt}");
    for (lang, word) in [("de", "Zeilen"), ("es", "filas")] {
        let alt = run_in(
            folder.path(),
            &[WAYS[0].1, &["--alt", "--lang", lang]].concat(),
        )
        .stdout;
        assert!(alt.contains(word) && alt.contains("0,"), "{alt}");
    }
}

#[test]
fn what_cannot_be_plotted_is_told_in_one_line() {
    let folder = tempfile::tempdir().unwrap();
    grid(folder.path());
    latin(folder.path());
    std::fs::write(
        folder.path().join("empty.csv"),
        "row,vehicle.mass,limits.R1.acceleration,problem\r\n",
    )
    .unwrap();
    for (arguments, code, names) in [
        (
            &["traction", "grid.csv"][..],
            2,
            &["where", "surface.kind"][..],
        ),
        (
            &["traction", "grid.csv", "--x", "vehicle.mass"],
            2,
            &["x", "vehicle.mass", "vehicle.cg_height"],
        ),
        (
            &["traction", "grid.csv", "--x", "surface.kind"],
            2,
            &["x", "word"],
        ),
        (
            &["traction", "grid.csv", "--where", "surface.kind=mud"],
            2,
            &["grid.csv", "rows"],
        ),
        (
            &["traction", "grid.csv", "--where", "surface.kind"],
            2,
            &["where", "column=value"],
        ),
        (
            &["traction", "grid.csv", "--where", "speed=1"],
            2,
            &["where", "speed", "vehicle.cg_height"],
        ),
        (
            &["traction", "grid.csv", "--kind", "pie"],
            2,
            &["pie", "contour"],
        ),
        (
            &["traction", "empty.csv", "--kind", "scatter"],
            2,
            &["empty.csv", "rows"],
        ),
        (&["traction", "none.csv"], 1, &["none.csv"]),
        (
            &["traction", "grid.csv", "--width", "9mm"],
            2,
            &["width", "9 mm"],
        ),
    ] {
        let run = run_in(
            folder.path(),
            &[&["plot"], arguments, &["-o", "out.svg"]].concat(),
        );
        assert_eq!(
            (run.code, run.stderr.lines().count()),
            (Some(code), 1),
            "{arguments:?}: {}",
            run.stderr
        );
        for name in names {
            assert!(run.stderr.contains(name), "{arguments:?}: {}", run.stderr);
        }
        assert!(!folder.path().join("out.svg").exists());
    }
}
