use super::*;

const ALL: [&[(&str, &str)]; 3] = [en::WORDS, de::WORDS, es::WORDS];

/// Keys whose text is the same in another language, and why.
const SAME: &[(&str, &str)] = &[
    ("de es", "figure.inertia"),           // symbols
    ("de es", "figure.mark.two_to_one"),   // digits
    ("de es", "figure.traction.bars_row"), // only values put in
    ("de es", "talk.ui.tall"),             // digits
    ("de es", "talk.ui.wide"),
    ("de es", "ui.as_"),        // names of file formats
    ("de es", "vehicle.name."), // proper names
    ("es", "ui.motors.one"),    // the same word
    ("es", "ui.no"),
];

fn placeholders(text: &str) -> Vec<&str> {
    let mut found: Vec<&str> = text
        .match_indices('{')
        .filter_map(|(at, _)| text.get(at..at + 3))
        .collect();
    found.sort_unstable();
    found
}

#[test]
fn every_catalogue_is_sorted_without_doubles_and_without_holes() {
    for words in ALL {
        for pair in words.windows(2) {
            assert!(pair[0].0 < pair[1].0, "{} before {}", pair[0].0, pair[1].0);
        }
        for (key, text) in words {
            assert!(!text.trim().is_empty(), "{key} is empty");
            for part in [key, text] {
                assert!(!part.contains(['\n', '\t']), "{key} breaks its line");
            }
        }
    }
}

#[test]
fn every_language_has_the_keys_and_the_values_put_in_of_english() {
    for (lang, words) in Lang::ALL.into_iter().zip(ALL) {
        let lacks = |key: &str| !words.iter().any(|(other, _)| *other == key);
        let missing: Vec<_> = en::WORDS.iter().filter(|(key, _)| lacks(key)).collect();
        assert!(missing.is_empty(), "{lang:?} lacks {missing:#?}");
        assert_eq!(
            words.len(),
            en::WORDS.len(),
            "{lang:?} has more keys than English"
        );
        for ((key, english), (_, text)) in en::WORDS.iter().zip(words) {
            assert_eq!(placeholders(text), placeholders(english), "{lang:?} {key}");
            let same = text == english;
            let may = SAME
                .iter()
                .any(|(tags, start)| tags.contains(lang.tag()) && key.starts_with(start));
            assert!(
                !same || may || lang == Lang::English,
                "{lang:?} {key} is not translated: {text}"
            );
        }
    }
}

/// What a language never writes: a straight quotation mark or apostrophe where it has its own, an
/// English decimal point between digits.
#[test]
fn every_language_has_its_own_marks() {
    for (words, quotes) in [(de::WORDS, ['„', '“']), (es::WORDS, ['«', '»'])] {
        for (key, text) in words {
            // A line of a scenario file is written as the file is.
            if *key != "problem.empty" {
                assert!(!text.contains(['"', '\'']), "{key}: {text}");
            }
            let (open, close) = (
                text.matches(quotes[0]).count(),
                text.matches(quotes[1]).count(),
            );
            assert_eq!(open, close, "{key}: {text}");
            // Equations of a book are numbered as the book does.
            let is_number = |part: &str| part.bytes().next().is_some_and(|b| b.is_ascii_digit());
            let pointed = text.split('.').collect::<Vec<_>>().windows(2).any(|pair| {
                pair[0].ends_with(|last: char| last.is_ascii_digit()) && is_number(pair[1])
            });
            let may = key.starts_with("source.") || *key == "site.licence";
            assert!(!pointed || may, "{key}: {text}");
        }
    }
}

#[test]
fn every_key_is_found_and_no_other_is() {
    for (lang, words) in Lang::ALL.into_iter().zip(ALL) {
        for (key, text) in words {
            assert_eq!(find(lang, key), Some(*text));
            assert_eq!(find(lang, &format!("{key}!")), None);
        }
        assert_eq!(keys(lang).count(), words.len());
        for key in ["", "a", "zzz", "\t", "ä"] {
            assert_eq!(find(lang, key), None);
        }
    }
}

#[test]
fn a_language_is_found_by_its_primary_subtag() {
    for (tag, want) in [
        ("de", Lang::German),
        ("de-AT", Lang::German),
        ("DE_ch", Lang::German),
        ("es-419", Lang::Spanish),
        ("en-GB", Lang::English),
        ("fr", Lang::English),
        ("den", Lang::English),
        ("", Lang::English),
    ] {
        assert_eq!(Lang::from_tag(tag), want, "{tag}");
    }
    assert_eq!(Lang::known("fr"), None);
}

#[test]
fn a_text_that_is_no_catalogue_is_told_from_one() {
    for lang in Lang::ALL {
        let whole = text(lang);
        assert!(catalogue::is_whole(whole), "{lang:?}");
        let half = whole.get(..whole.floor_char_boundary(whole.len() / 2));
        assert!(!catalogue::is_whole(half.unwrap()), "{lang:?}: half a file");
        assert!(add(lang, "nothing") && has(lang), "{lang:?} stays");
    }
    let page = "<!doctype html>\n<title>Not found</title>\n";
    assert!(!catalogue::is_whole(page) && !catalogue::is_whole(""));
}

#[test]
fn parts_are_put_in_by_number() {
    let text = fill(
        Lang::English,
        "problem.field_near",
        &["vehicle.mas", "vehicle.mass"],
    );
    assert!(
        text.contains("vehicle.mas") && text.contains("vehicle.mass"),
        "{text}"
    );
    assert!(!text.contains(['{', '}']), "{text}");
}
