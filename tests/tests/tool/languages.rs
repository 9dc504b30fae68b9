//! The program in each language of the catalogue.

use crate::stdout_of;
use axlewright_core::topic::{OutputKind, TOPICS};
use axlewright_core::words::{self, Lang};
use axlewright_tests::run;

/// What is English in a text and would be another word in this language.
fn english_lines(text: &str, lang: Lang) -> Vec<&str> {
    let only_english: Vec<&str> = words::keys(Lang::English)
        .filter(|key| !key.starts_with("vehicle.name"))
        .filter(|key| words::get(lang, key) != words::get(Lang::English, key))
        .map(|key| words::get(Lang::English, key))
        .filter(|words| words.len() > 6 && !words.contains('{'))
        .collect();
    text.lines()
        .filter(|line| only_english.iter().any(|words| line.contains(words)))
        .collect()
}

#[test]
fn an_answer_is_wholly_in_its_language() {
    for lang in Lang::ALL {
        for topic in TOPICS {
            for format in ["text", "markdown"] {
                let arguments = [
                    "answer",
                    topic.name,
                    "--format",
                    format,
                    "--lang",
                    lang.tag(),
                ];
                let text = stdout_of(&arguments);
                assert!(text.contains(words::get(lang, "figure.caution")), "{text}");
                assert!(text.contains(words::get(lang, "ui.working")), "{text}");
                if lang == Lang::English {
                    let plain = stdout_of(&arguments[..4]);
                    assert_eq!(
                        plain, text,
                        "English is what is spoken when nothing is said"
                    );
                } else {
                    let english = english_lines(&text, lang);
                    assert!(english.is_empty(), "{lang:?}: {english:#?}");
                }
            }
        }
    }
}

#[test]
fn numbers_for_programs_are_the_same_in_every_language() {
    for topic in TOPICS {
        let print = |format: &str, tag: &str| {
            stdout_of(&["answer", topic.name, "--format", format, "--lang", tag])
        };
        assert_eq!(print("json", "de"), print("json", "en"));
        let values = |table: &str| -> Vec<String> {
            // A sentence says the numbers in words.
            let is_sentence = |line: &&str| {
                let path = line.split(',').next().unwrap_or_default();
                topic.outputs.iter().any(|output| {
                    let mut parts = output.name.split('.').zip(path.split('.'));
                    let is_named = output.name.split('.').count() == path.split('.').count()
                        && parts.all(|(name, part)| name == "*" || name == part);
                    matches!(output.kind, OutputKind::Sentence) && is_named
                })
            };
            let lines = table.lines().filter(|line| !is_sentence(line));
            lines
                .map(|line| line.rsplit(',').take(2).collect::<Vec<_>>().join(","))
                .collect()
        };
        let (german, english) = (print("csv", "de"), print("csv", "en"));
        assert_eq!(values(&german), values(&english));
        assert_ne!(german, english, "the quantities have German names");
    }
}

#[test]
fn a_figure_and_its_description_are_in_their_language() {
    for (tag, mark) in [
        ("en", "0.60\u{2009}g"),
        ("de", "0,60\u{2009}g"),
        ("es", "0,60\u{2009}g"),
    ] {
        let lang = Lang::from_tag(tag);
        let alt = stdout_of(&["figure", "load-transfer", "--alt", "--lang", tag]);
        assert!(alt.contains(mark), "{alt}");
        let svg = stdout_of(&["figure", "load-transfer", "--lang", tag]);
        let wheelbase = words::fill(lang, "figure.wheelbase", &[""]);
        assert!(
            svg.contains(wheelbase.trim()) && svg.contains(mark),
            "{svg}"
        );
        let told = svg.contains(&format!("--lang {tag}"));
        assert_eq!(told, tag != "en", "the file says how it was made");
    }
}

#[test]
fn a_refusal_is_in_the_language_asked_for() {
    let refused = |arguments: &[&str]| {
        let run = run(arguments);
        assert_eq!(run.code, Some(2), "{}", run.stderr);
        assert_eq!(run.stderr.lines().count(), 1, "{}", run.stderr);
        run.stderr
    };
    let long = "vehicle.wheelbase=90 m";
    let german = refused(&["answer", "traction", "--lang", "de", "--set", long]);
    for part in [
        "außerhalb",
        "vehicle.wheelbase",
        "90 m",
        "0,2\u{2009}m bis 20\u{2009}m",
    ] {
        assert!(german.contains(part), "{part} in {german}");
    }
    // A setting is a line of a file: its decimal point is a point in every language.
    let comma = refused(&[
        "answer",
        "traction",
        "--lang",
        "de",
        "--set",
        "vehicle.wheelbase=2,9 m",
    ]);
    assert!(
        comma.contains(words::get(Lang::German, "problem.not_a_number")),
        "{comma}"
    );
    let unknown = refused(&["answer", "traction", "--lang", "fr"]);
    assert!(
        unknown.contains("fr") && unknown.contains("en, de, es"),
        "{unknown}"
    );
    assert!(stdout_of(&["answer", "traction", "--lang", "de-AT"]).contains("Traktionsgrenze"));
}
