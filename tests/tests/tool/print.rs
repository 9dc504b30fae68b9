//! Figures for print: their size, their lines, their letters, what they say of themselves, and how they
//! look.

use crate::stdout_of;
use axlewright_core::Scenario;
use axlewright_tests::{Picture, picture_differs, run_in};
use axlewright_widgets::visual::{Look, VISUALS};
use std::path::Path;

/// Millimetres of a unit of a figure whose text, 13 units high, is 8 points high.
const MM_PER_UNIT: f64 = 8.0 * 25.4 / 72.0 / 13.0;

/// Every view of every topic.
fn each(mut act: impl FnMut(&str, &str)) {
    for visual in VISUALS {
        for view in visual.views {
            act(visual.topic.name, view.word());
        }
    }
}

/// Draws into a file of a folder, and gives the file's bytes.
fn drawn(folder: &Path, arguments: &[&str], name: &str) -> Vec<u8> {
    let run = run_in(folder, &[&["figure"], arguments, &["-o", name]].concat());
    assert_eq!(run.code, Some(0), "{arguments:?}: {}", run.stderr);
    std::fs::read(folder.join(name)).unwrap()
}

/// Every value of an attribute.
fn values(svg: &str, attribute: &str) -> Vec<f64> {
    svg.split(&format!(" {attribute}=\""))
        .skip(1)
        .map(|rest| rest.split('"').next().unwrap().parse().unwrap())
        .collect()
}

#[test]
fn a_column_has_its_width_and_lines_that_a_printer_holds() {
    each(|topic, view| {
        for width in ["84mm", "174mm"] {
            let svg = stdout_of(&[
                "figure", topic, "--view", view, "--style", "print", "--width", width,
            ]);
            let case = format!("{topic}, {view}, {width}");
            assert!(
                svg.contains(&format!(" width=\"{width}\" height=\"")),
                "{case}"
            );
            // The paper-coloured rim of a label is no line.
            let lines: String = svg
                .lines()
                .filter(|line| !line.contains("paint-order"))
                .collect();
            let strokes = values(&lines, "stroke-width");
            assert!(strokes.len() > 2, "{case}: {strokes:?}");
            for stroke in strokes {
                let mm = stroke * MM_PER_UNIT;
                // A quarter of a point is the thinnest line that journals take; 3 pt is no line any more.
                assert!((0.088..1.06).contains(&mm), "{case}: a line of {mm:.3} mm");
            }
            for size in values(&svg, "font-size") {
                let points = size * MM_PER_UNIT * 72.0 / 25.4;
                assert!(
                    (7.99..11.0).contains(&points),
                    "{case}: text of {points:.2} pt"
                );
            }
        }
    });
}

#[test]
fn a_figure_is_made_again_from_itself_to_the_byte() {
    let folder = tempfile::tempdir().unwrap();
    let ways: [&[&str]; 5] = [
        &[],
        &[
            "--style", "dark", "--width", "480", "--units", "us", "--lang", "de",
        ],
        &[
            "--style",
            "print",
            "--width",
            "84mm",
            "--text-size",
            "7.5pt",
        ],
        &["--width", "174mm", "--outline-text", "--lang", "es"],
        &[
            "--set",
            "vehicle.mass=2 t",
            "--set",
            "surface.kind=gravel",
            "--set",
            "vehicle.base=moraine",
        ],
    ];
    each(|topic, view| {
        for way in ways {
            let arguments = [&[topic, "--view", view], way].concat();
            // On paper as every kind of file; the other ways as text, which is quicker.
            let endings: &[&str] = match way {
                ["--style", "print", ..] => &["svg", "png", "pdf"],
                _ => &["svg"],
            };
            for ending in endings {
                let name = format!("old.{ending}");
                let old = drawn(folder.path(), &arguments, &name);
                let again = drawn(folder.path(), &["--again", &name], &format!("new.{ending}"));
                assert!(
                    old == again,
                    "{arguments:?}: {ending} is another the second time"
                );
                // Any of them gives the others.
                let svg = drawn(folder.path(), &["--again", &name], "third.svg");
                let first = std::fs::read(folder.path().join("old.svg")).unwrap();
                assert!(svg == first, "{arguments:?}: {ending}");
            }
        }
    });
}

#[test]
fn a_height_is_kept_or_refused() {
    let svg = stdout_of(&[
        "figure", "traction", "--view", "chart", "--width", "84mm", "--height", "70mm",
    ]);
    assert!(svg.contains(" width=\"84mm\" height=\"70mm\""), "{svg}");
    for (arguments, names) in [
        (
            &["--width", "84mm", "--height", "10mm"][..],
            &["height", "10 mm", "mm to"][..],
        ),
        (&["--width", "30mm"], &["width", "30 mm", "70 mm"]),
        (&["--width", "wide"], &["width", "wide", "84mm"]),
        (&["--width", "84 kg"], &["width", "84 kg", "84mm"]),
        (&["--height", "60mm"], &["height", "60mm", "--width"]),
        (&["--text-size", "8pt"], &["text-size", "8pt", "--width"]),
        (
            &["--width", "84mm", "--text-size", "40pt"],
            &["text-size", "40pt", "16pt"],
        ),
        (&["--dpi", "1"], &["dpi", "1", "50"]),
        (&["--dpi", "300"], &["dpi", "--width"]),
        (&["-o", "figure.gif"], &["output", "figure.gif", ".pdf"]),
        (&["--again", "none.svg"], &["again", "none.svg"]),
    ] {
        let folder = tempfile::tempdir().unwrap();
        let topic: &[&str] = if arguments[0] == "--again" {
            &[]
        } else {
            &["traction"]
        };
        let run = run_in(folder.path(), &[&["figure"], topic, arguments].concat());
        assert_eq!(run.code, Some(2), "{arguments:?}: {}", run.stderr);
        assert_eq!(
            run.stderr.lines().count(),
            1,
            "{arguments:?}: {}",
            run.stderr
        );
        for name in names {
            assert!(run.stderr.contains(name), "{arguments:?}: {}", run.stderr);
        }
        assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 0);
    }
}

#[test]
fn a_file_that_says_nothing_of_itself_cannot_be_made_again() {
    let folder = tempfile::tempdir().unwrap();
    let files: [(&str, &[u8]); 4] = [
        ("plain.svg", b"<svg xmlns=\"http://www.w3.org/2000/svg\"/>"),
        ("text.pdf", b"%PDF-1.7\n"),
        ("half.png", b"\x89PNG\r\n\x1a\n"),
        ("noise.svg", &[0xff, 0xfe, 0, 1]),
    ];
    for (name, bytes) in files {
        std::fs::write(folder.path().join(name), bytes).unwrap();
        let run = run_in(folder.path(), &["figure", "--again", name]);
        assert_eq!(run.code, Some(2), "{name}: {}", run.stderr);
        assert!(
            run.stderr.contains("does not say what it was made from"),
            "{}",
            run.stderr
        );
        assert_eq!(run.stderr.lines().count(), 1, "{}", run.stderr);
    }
    let other = stdout_of(&["figure", "traction"]).replacen(
        "figure traction",
        "figure traction --colour red",
        1,
    );
    std::fs::write(folder.path().join("later.svg"), other).unwrap();
    let run = run_in(folder.path(), &["figure", "--again", "later.svg"]);
    assert_eq!(run.code, Some(2), "{}", run.stderr);
    assert!(run.stderr.contains("later.svg"), "{}", run.stderr);
}

#[test]
fn letters_can_be_shapes() {
    each(|topic, view| {
        let svg = stdout_of(&["figure", topic, "--view", view, "--outline-text"]);
        assert!(
            !svg.contains("<text") && !svg.contains("font-family"),
            "{topic}, {view}"
        );
        for kept in ["<title", "<desc", "<metadata", "role=\"img\""] {
            assert!(svg.contains(kept), "{topic}, {view}: {kept}");
        }
    });
}

#[test]
fn the_caption_and_the_alt_text_are_of_the_answer() {
    let folder = tempfile::tempdir().unwrap();
    each(|topic, view| {
        let visual = VISUALS.iter().find(|v| v.topic.name == topic).unwrap();
        let scenario = visual.topic.completed(&Scenario::default()).unwrap();
        let drawing = visual
            .draw(&scenario, visual.view(view).unwrap(), &Look::default())
            .unwrap();
        let said = |option: &str| stdout_of(&["figure", topic, "--view", view, option]);
        let (alt, caption) = (said("--alt"), said("--caption"));
        assert!(
            alt.contains(drawing.title()) && alt.contains(drawing.description()),
            "{alt}"
        );
        assert!(caption.starts_with(drawing.title()), "{caption}");
        assert!(
            caption.contains("Invented vehicle") && caption.contains(env!("CARGO_PKG_VERSION")),
            "{caption}"
        );
        assert_eq!(caption.lines().count(), 1, "{caption}");
    });
    // Both, and the figure with them, in one call.
    let run = run_in(
        folder.path(),
        &["figure", "traction", "--alt", "--caption", "-o", "a.svg"],
    );
    assert_eq!(
        (run.code, run.stdout.lines().count()),
        (Some(0), 2),
        "{}",
        run.stdout
    );
    assert!(folder.path().join("a.svg").exists());
}

#[test]
fn a_png_says_its_dots_and_a_pdf_its_text() {
    let folder = tempfile::tempdir().unwrap();
    let arguments = [
        "traction", "--view", "chart", "--width", "84mm", "--dpi", "600",
    ];
    let png = drawn(folder.path(), &arguments, "figure.png");
    let picture = Picture::read(&png);
    assert_eq!(picture.width, (84.0_f64 / 25.4 * 600.0).ceil() as u32);
    let at = png.windows(4).position(|name| name == b"pHYs").unwrap();
    let per_metre = u32::from_be_bytes(png[at + 4..at + 8].try_into().unwrap());
    assert_eq!(per_metre, 23_622);
    let pdf = drawn(folder.path(), &arguments[..5], "figure.pdf");
    let text = String::from_utf8_lossy(&pdf);
    // 84 mm are 238.11 points.
    assert!(text.contains("/MediaBox [0 0 238.11"), "{}", &text[..600]);
    for part in ["/FontFile2", "/ToUnicode", "<dc:source># axlewright "] {
        assert!(text.contains(part), "{part}");
    }
    let shapes = drawn(
        folder.path(),
        &[&arguments[..5], &["--outline-text"]].concat(),
        "shapes.pdf",
    );
    assert!(!String::from_utf8_lossy(&shapes).contains("/FontFile2"));
}

#[test]
fn figures_for_a_column_are_those_that_are_kept() {
    let folder = tempfile::tempdir().unwrap();
    let mut wrong = Vec::new();
    each(|topic, view| {
        let arguments = [
            topic, "--view", view, "--style", "print", "--width", "84mm", "--dpi", "120",
        ];
        let png = drawn(folder.path(), &arguments, "figure.png");
        let name = format!("{topic}-{view}-column-print").replace('_', "-");
        wrong.extend(picture_differs(&name, &png, 0.0005));
    });
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}
