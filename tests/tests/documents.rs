//! Documents whose numbers and figures are computed when they are built: a book of Markdown, an article in
//! AsciiDoc, one in LaTeX. What stands in them is what the core answers, and follows the scenario file.
#![allow(
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test stops where a value is missing"
)]

use axlewright_core::topic::find;
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_site::scenario_file;
use axlewright_tests::{file, program, run_in};
use axlewright_widgets::table::value_text;
use serde_json::{Value, json};
use std::io::Write;
use std::path::Path;
use std::process::{Command, Stdio};

/// A copy of the documents, so that nothing is written among them.
fn copy() -> tempfile::TempDir {
    fn copy_into(from: &Path, to: &Path) {
        std::fs::create_dir_all(to).unwrap();
        for entry in std::fs::read_dir(from).unwrap() {
            let entry = entry.unwrap();
            let target = to.join(entry.file_name());
            if entry.path().is_dir() {
                copy_into(&entry.path(), &target);
            } else {
                std::fs::copy(entry.path(), target).unwrap();
            }
        }
    }
    let folder = tempfile::tempdir().unwrap();
    copy_into(&file("documents"), folder.path());
    folder
}

fn filled(folder: &Path, document: &str) -> String {
    let run = run_in(folder, &["fill", document]);
    assert_eq!(run.code, Some(0), "{document}: {}", run.stderr);
    run.stdout
}

/// What the core answers to the documents' scenario, as people read it.
fn said(folder: &Path, path: &str) -> String {
    let scenario = scenario_file::read(&folder.join("book/src/saloon.toml")).unwrap();
    let report = find("traction").unwrap().brief(&scenario).unwrap();
    let reading = report.readings.iter().find(|r| r.path == path).unwrap();
    value_text(&report, reading, Lang::English, System::Si)
}

#[test]
fn the_numbers_are_those_of_the_core_and_follow_the_scenario() {
    let folder = copy();
    let documents = ["article.adoc", "article.tex", "book/src/layouts.md"];
    let front = said(folder.path(), "limits.F1.acceleration");
    let before = documents.map(|document| filled(folder.path(), document));
    let scenario = folder.path().join("book/src/saloon.toml");
    let text = std::fs::read_to_string(&scenario).unwrap();
    std::fs::write(&scenario, text.replace("asphalt_wet", "snow")).unwrap();
    let snow = said(folder.path(), "limits.F1.acceleration");
    assert_ne!(front, snow);
    for (document, before) in documents.iter().zip(before) {
        let written = |value: &str| match *document {
            "article.tex" => value.replace('\u{2009}', "\\,"),
            _ => value.to_owned(),
        };
        let after = filled(folder.path(), document);
        assert!(before.contains(&written(&front)), "{document}: {before}");
        assert!(after.contains(&written(&snow)), "{document}: {after}");
        assert!(!after.contains(&written(&front)), "{document}: {after}");
        for left in ["{{", "{%", "<%"] {
            assert!(!after.contains(left), "{document}: {left} is left");
        }
        assert_ne!(
            figure_of(&before),
            figure_of(&after),
            "{document}: the old figure"
        );
    }
}

/// The name of the figure in a document.
fn figure_of(text: &str) -> &str {
    let from = text.find("figures/").unwrap();
    let rest = &text[from..];
    let end = rest.find([')', '[', '}']).unwrap();
    &rest[..end]
}

#[test]
fn figures_are_written_once_and_can_be_made_again() {
    let folder = copy();
    for (document, figures) in [
        ("article.tex", "figures"),
        ("book/src/layouts.md", "book/src/figures"),
    ] {
        let name = figure_of(&filled(folder.path(), document)).to_owned();
        let path = folder
            .path()
            .join(figures)
            .join(name.trim_start_matches("figures/"));
        let written = std::fs::metadata(&path).unwrap().modified().unwrap();
        assert_eq!(figure_of(&filled(folder.path(), document)), name);
        assert_eq!(
            std::fs::metadata(&path).unwrap().modified().unwrap(),
            written,
            "{document}"
        );
        let again = folder
            .path()
            .join("again")
            .with_extension(path.extension().unwrap());
        let names = [path.to_str().unwrap(), again.to_str().unwrap()];
        let run = run_in(
            folder.path(),
            &["figure", "--again", names[0], "-o", names[1]],
        );
        assert_eq!(run.code, Some(0), "{}", run.stderr);
        assert!(
            std::fs::read(&path).unwrap() == std::fs::read(&again).unwrap(),
            "{document}"
        );
    }
}

/// Sends a text to the program.
fn asked(folder: &Path, arguments: &[&str], input: &str) -> (bool, String, String) {
    let mut child = Command::new(program())
        .args(arguments)
        .current_dir(folder)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    child
        .stdin
        .take()
        .unwrap()
        .write_all(input.as_bytes())
        .unwrap();
    let output = child.wait_with_output().unwrap();
    let text = |bytes: &[u8]| String::from_utf8(bytes.to_vec()).unwrap();
    (
        output.status.success(),
        text(&output.stdout),
        text(&output.stderr),
    )
}

/// The book as a builder of version 0.4 sends it (`sections`), and as one of 0.5 does (`items`).
#[test]
fn a_book_is_filled_by_the_protocol_of_its_builder() {
    let folder = copy();
    let root = folder.path().join("book");
    let chapter = std::fs::read_to_string(root.join("src/layouts.md")).unwrap();
    let context = json!({"root": root, "config": {"book": {"src": "src"}}, "renderer": "html", "mdbook_version": "0.4.52"});
    for list in ["sections", "items"] {
        let draft =
            json!({"Chapter": {"name": "Later", "content": "", "path": null, "sub_items": []}});
        let inner = json!({"Chapter": {"name": "Inner", "content": chapter, "path": "layouts.md", "sub_items": []}});
        let outer = json!({"Chapter": {"name": "Layouts", "content": chapter, "path": "layouts.md", "sub_items": [inner]}});
        let mut book = json!({"__non_exhaustive": null});
        book[list] = json!(["Separator", {"PartTitle": "One"}, outer, draft]);
        let (good, out, told) = asked(
            folder.path(),
            &["mdbook"],
            &json!([context, book]).to_string(),
        );
        assert!(good, "{told}");
        let got: Value = serde_json::from_str(&out).unwrap();
        let front = said(folder.path(), "limits.F1.acceleration");
        for pointer in ["", "/sub_items/0/Chapter"] {
            let place = format!("/{list}/2/Chapter{pointer}/content");
            let text = got.pointer(&place).and_then(Value::as_str).unwrap();
            assert!(text.contains(&front) && !text.contains("{{"), "{text}");
            assert!(root.join("src").join(figure_of(text)).exists());
        }
        // All the rest comes back as it went.
        for pointer in [
            format!("/{list}/0"),
            format!("/{list}/1"),
            format!("/{list}/3"),
        ] {
            assert_eq!(got.pointer(&pointer), book.pointer(&pointer));
        }
    }
    assert!(asked(folder.path(), &["mdbook", "supports", "epub"], "").0);
    for input in ["", "{}", "[1]"] {
        let (good, out, told) = asked(folder.path(), &["mdbook"], input);
        assert!(
            !good && out.is_empty() && told.lines().count() == 1,
            "{told}"
        );
    }
}

#[test]
fn a_place_that_cannot_be_filled_is_told_with_its_line() {
    let folder = copy();
    for (text, names) in [
        (
            "a\n{{ value(\"traction\", \"limits.F1.speed\") }}\n",
            &["line 2", "limits.F1.speed", "limits."][..],
        ),
        (
            "{{ value(\"tractoin\", \"x\") }}",
            &["line 1", "tractoin", "traction"],
        ),
        (
            "{{ value(\"traction\", \"x\", scenario=\"none.toml\") }}",
            &["line 1", "none.toml"],
        ),
        (
            "{{ value(\"traction\", \"x\", set={\"vehicle.mas\": 1}) }}",
            &["vehicle.mas", "vehicle.mass"],
        ),
        (
            "{{ value(\"traction\", \"x\", units=\"uk\") }}",
            &["units", "uk", "si, us"],
        ),
        (
            "{{ figure(\"traction\", width=\"9 kg\") }}",
            &["width", "9 kg", "84mm"],
        ),
        (
            "{{ figure(\"traction\", view=\"top\") }}",
            &["view", "top", "side"],
        ),
        (
            "{{ figure(\"traction\", format=\"gif\") }}",
            &["format", "gif", "pdf"],
        ),
        (
            "{{ figure(\"traction\", colour=\"red\") }}",
            &["line 1", "colour"],
        ),
        ("\n\n{{ nothing }}", &["line 3"]),
        ("{% for %}", &["line 1"]),
    ] {
        std::fs::write(folder.path().join("bad.md"), text).unwrap();
        let run = run_in(folder.path(), &["fill", "bad.md", "-o", "out.md"]);
        assert_eq!(
            (run.code, run.stderr.lines().count()),
            (Some(2), 1),
            "{text:?}: {}",
            run.stderr
        );
        assert!(run.stderr.contains("bad.md"), "{}", run.stderr);
        for name in names {
            assert!(run.stderr.contains(name), "{text:?}: {}", run.stderr);
        }
        assert!(!folder.path().join("out.md").exists());
    }
}

/// Runs a converter of `tests/run`'s list, with its whole output if it fails.
fn converted(folder: &Path, line: &[&str]) {
    let output = Command::new(line[0])
        .args(&line[1..])
        .current_dir(folder)
        .output()
        .unwrap_or_else(|error| panic!("{} cannot be run: {error}", line[0]));
    let told = [output.stdout, output.stderr].concat();
    let told = String::from_utf8_lossy(&told);
    assert!(output.status.success(), "{line:?}: {told}");
}

#[test]
fn the_asciidoc_article_becomes_a_page() {
    let folder = copy();
    let run = run_in(folder.path(), &["fill", "article.adoc", "-o", "out.adoc"]);
    assert_eq!(run.code, Some(0), "{}", run.stderr);
    converted(
        folder.path(),
        &[
            "asciidoctor",
            "--failure-level",
            "WARN",
            "-o",
            "out.html",
            "out.adoc",
        ],
    );
    let page = std::fs::read_to_string(folder.path().join("out.html")).unwrap();
    let front = said(folder.path(), "limits.F1.acceleration");
    assert!(page.contains(&front), "{page}");
    let image = page
        .split("<img src=\"")
        .nth(1)
        .unwrap()
        .split('"')
        .next()
        .unwrap();
    assert!(folder.path().join(image).exists(), "{image}");
    for part in ["<table", "alt=\"", "Computed with Axlewright", "\\frac"] {
        assert!(page.contains(part), "{part}");
    }
}

#[test]
fn the_latex_article_becomes_a_pdf() {
    let folder = copy();
    let run = run_in(folder.path(), &["fill", "article.tex", "-o", "out.tex"]);
    assert_eq!(run.code, Some(0), "{}", run.stderr);
    converted(
        folder.path(),
        &[
            "pdflatex",
            "-interaction=nonstopmode",
            "-halt-on-error",
            "out.tex",
        ],
    );
    let log = std::fs::read_to_string(folder.path().join("out.log")).unwrap_or_default();
    assert!(!log.contains("Missing character"), "{log}");
    let pdf = std::fs::read(folder.path().join("out.pdf")).unwrap();
    assert!(
        pdf.starts_with(b"%PDF") && pdf.len() > 20_000,
        "{} bytes",
        pdf.len()
    );
}
