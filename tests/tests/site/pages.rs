//! What holds for every page.

use crate::{is_frame, pages, read, site};
use axlewright_core::question::{self, Choice, Kind, Question};
use axlewright_core::topic::TOPICS;
use axlewright_site::elements::CLASSIC;
use axlewright_site::html::{Part, attribute, name, parts, sections};
use axlewright_tests::host::short_hash;
use std::collections::{BTreeMap, BTreeSet};

/// The tags of a page.
fn tags(html: &str) -> impl Iterator<Item = &str> {
    parts(html).filter_map(|part| match part {
        Part::Tag(tag) if !tag.starts_with(['/', '!']) => Some(tag),
        _ => None,
    })
}

fn anchors(html: &str) -> Vec<String> {
    tags(html)
        .filter_map(|tag| attribute(tag, "id"))
        .map(str::to_owned)
        .collect()
}

/// An address as seen from the root. The page for lost addresses asks for its script in folders above it,
/// because it is read at any depth. A frame lies in a folder.
fn from_root(page: &str, address: &str) -> String {
    match page.split_once('/') {
        _ if page == "404.html" => address.trim_start_matches("../").into(),
        Some((folder, _)) => match address.strip_prefix("../") {
            Some(above) => above.into(),
            None => format!("{folder}/{address}"),
        },
        None => address.into(),
    }
}

#[test]
fn no_link_and_no_anchor_is_dead() {
    let site = site();
    let pages = pages();
    let ids: BTreeMap<&str, BTreeSet<String>> = pages
        .iter()
        .map(|(name, html)| (*name, anchors(html).into_iter().collect()))
        .collect();
    let mut counted = 0;
    let mut dead = Vec::new();
    for (page, html) in &pages {
        for tag in tags(html) {
            let addresses = ["href", "src", "srcset", "action"];
            for address in addresses.iter().filter_map(|kind| attribute(tag, kind)) {
                counted += 1;
                let address = address.replace("&amp;", "&");
                if address.starts_with("https://") || address.starts_with("data:") {
                    // Nothing of another origin is loaded; a reader may be sent there.
                    assert_eq!(name(tag), "a", "{page}: {address}");
                    continue;
                }
                let address = from_root(page, &address);
                let (rest, anchor) = address.split_once('#').unwrap_or((address.as_str(), ""));
                let file = match rest.split('?').next().unwrap_or("") {
                    "" => *page,
                    file => file,
                };
                if !site.files.iter().any(|known| known == file) {
                    dead.push(format!("{page}: {address}"));
                } else if !anchor.is_empty()
                    && !ids.get(file).is_some_and(|ids| ids.contains(anchor))
                {
                    dead.push(format!("{page}: {address} has no such anchor"));
                }
            }
        }
    }
    assert!(counted > 500, "{counted} links");
    assert!(dead.is_empty(), "{dead:#?}");
}

#[test]
fn a_hash_in_an_address_is_that_of_the_file() {
    let site = site();
    let mut counted = 0;
    for (page, html) in pages() {
        for tag in tags(&html) {
            for address in ["href", "src", "srcset"]
                .iter()
                .filter_map(|kind| attribute(tag, kind))
            {
                let address = from_root(page, address);
                let Some((file, hash)) = address.split_once('?') else {
                    continue;
                };
                let bytes = std::fs::read(site.out.join(file)).unwrap();
                assert_eq!(hash, short_hash(&bytes), "{page}: {file}");
                counted += 1;
            }
        }
    }
    assert!(counted > 100, "{counted}");
}

#[test]
fn headings_are_in_order_and_no_anchor_is_there_twice() {
    for (page, html) in pages() {
        let levels: Vec<u8> = sections(&html)
            .iter()
            .map(|section| section.level)
            .filter(|level| *level < 4)
            .collect();
        assert_eq!(levels.first(), Some(&1), "{page}");
        assert_eq!(
            levels.iter().filter(|level| **level == 1).count(),
            1,
            "{page}"
        );
        for pair in levels.windows(2) {
            assert!(pair[1] <= pair[0] + 1, "{page}: {levels:?}");
        }
        let mut ids = anchors(&html);
        let count = ids.len();
        ids.sort();
        ids.dedup();
        assert_eq!(ids.len(), count, "{page}: an anchor is there twice");
    }
}

#[test]
fn every_topic_has_its_page_with_all_its_parts_and_its_sheets() {
    let site = site();
    for topic in TOPICS {
        let slug = topic.slug();
        let html = read(&site.out.join(format!("{slug}.html")));
        let heads: Vec<String> = sections(&html).into_iter().map(|s| s.heading).collect();
        assert!(
            heads[0].ends_with('?'),
            "{slug} opens with no question: {}",
            heads[0]
        );
        for part in [
            "The idea",
            "A worked example",
            "Common mistakes",
            "Practice",
            "Check against published values",
            "Where the model stops being true",
            "Sources",
        ] {
            assert!(heads.iter().any(|head| head == part), "{slug} lacks {part}");
        }
        assert!(html.contains("class=\"caution\""), "{slug} has no caution");
        let asked = html.matches("<section class=\"practice\">").count();
        assert_eq!(asked, 3, "{slug}: questions");
        for series in ["lesson", "questions", "answers"] {
            let page = format!("{series}-{slug}.html");
            assert!(site.files.contains(&page), "{page} is missing");
        }
    }
}

/// The bank of a topic, and that sheet and key tell the same questions.
#[test]
fn the_sheets_hold_every_question_and_the_keys_every_answer() {
    let site = site();
    for topic in TOPICS {
        let bank = question::of(topic);
        println!("{}: {} questions", topic.name, bank.len());
        assert!(bank.len() >= 10, "{}", topic.name);
        let sheet = read(&site.out.join(format!("questions-{}.html", topic.slug())));
        let key = read(&site.out.join(format!("answers-{}.html", topic.slug())));
        for question in bank {
            let name = format!("<code>{} 2</code>", question.id.replace('_', "-"));
            assert!(
                sheet.contains(&name) && key.contains(&name),
                "{} {name}",
                topic.name
            );
        }
        assert_eq!(key.matches("<strong>Answer.</strong>").count(), bank.len());
        assert!(!sheet.contains("Answer."), "{}", topic.name);
        // The only workings on a sheet are those that have an error to be found.
        let is_spot = |q: &&Question| matches!(q.kind, Kind::Choice(Choice::Spot { .. }));
        assert_eq!(
            sheet.matches("<ol class=\"working\"").count(),
            bank.iter().filter(is_spot).count(),
            "{}",
            topic.name
        );
    }
}

/// Without script nothing is lost: each element holds a picture with its description or a printed
/// question with its answer.
#[test]
fn every_element_holds_something_for_readers_without_script() {
    for (page, html) in pages() {
        for topic in TOPICS {
            let tag = topic.tag();
            for piece in html.split(&format!("<{tag} ")).skip(1) {
                let inside = piece.split(&format!("</{tag}>")).next().unwrap();
                let has_picture = inside.contains("<img ") && !inside.contains("alt=\"\"");
                let has_question = inside.contains("<details>") && inside.contains("<math");
                // What a frame has besides stands in the page around it.
                let is_told = is_frame(page) && html.contains("<noscript>");
                assert!(
                    has_picture || has_question || is_told,
                    "{page}: <{tag}> is empty without script"
                );
            }
        }
        assert!(!html.contains("NaN") && !html.contains("{{"), "{page}");
    }
}

/// Bytes that a page asks for before its elements load: itself, style, scripts and the first pictures. The
/// script of the elements, which a frame names itself, has a budget of its own.
fn weight(page: &str, html: &str) -> u64 {
    let site = site();
    let mut files: BTreeSet<String> = BTreeSet::new();
    for tag in tags(html) {
        let address = match name(tag) {
            "img" | "script" => attribute(tag, "src"),
            "link" => attribute(tag, "href"),
            _ => None,
        };
        let file = address.map(|a| from_root(page, a.split('?').next().unwrap_or(a)));
        files.extend(file.filter(|file| file != CLASSIC && !file.contains("data:")));
    }
    let size = |file: &String| {
        let data = std::fs::metadata(site.out.join(file));
        data.unwrap_or_else(|e| panic!("{page}: {file}: {e}")).len()
    };
    html.len() as u64 + files.iter().map(size).sum::<u64>()
}

#[test]
fn no_page_is_heavier_than_its_budget() {
    let text = read(&axlewright_tests::file("budgets.toml"));
    let budgets: toml::Table = text.parse().unwrap();
    let budget = |name: &str| {
        let number = budgets["page_bytes"][name].as_integer().unwrap();
        u64::try_from(number).unwrap()
    };
    for (page, html) in pages() {
        let series = page.split(['-', '.']).next().unwrap_or("");
        let bound = match page {
            "index.html" => budget("first"),
            "search.html" => budget("search"),
            _ if is_frame(page) => budget("frame"),
            _ if series == "answers" => budget("answers"),
            _ => budget("other"),
        };
        let weight = weight(page, &html);
        println!("{weight:>8} of {bound:>8} bytes: {page}");
        assert!(
            weight <= bound,
            "{page} weighs {weight} bytes, {bound} may be"
        );
    }
}

/// Reading level of the prose, by the formula of Flesch and Kincaid (from memory):
/// 0.39·words/sentences + 11.8·syllables/words − 15.59, in years of school.
fn reading_level(text: &str) -> (usize, f64) {
    let sentences = text.matches(['.', '?', '!', ':']).count().max(1) as f64;
    let is_word = |word: &&str| word.chars().any(char::is_alphabetic);
    let words: Vec<&str> = text.split_whitespace().filter(is_word).collect();
    let syllables: usize = words.iter().map(|word| syllables(word)).sum();
    let count = words.len().max(1) as f64;
    let level = 0.39 * count / sentences + 11.8 * syllables as f64 / count - 15.59;
    (words.len(), level)
}

/// Groups of vowels; a silent e at the end does not count.
fn syllables(word: &str) -> usize {
    let word = word.to_lowercase();
    let mut count = 0;
    let mut was = false;
    for c in word.chars() {
        let is = "aeiouy".contains(c);
        count += usize::from(is && !was);
        was = is;
    }
    let silent = word.ends_with('e') && !word.ends_with("le") && count > 1;
    (count - usize::from(silent)).max(1)
}

#[test]
fn a_first_year_student_can_read_the_pages_on_topics() {
    for topic in TOPICS {
        let html = read(&site().out.join(format!("{}.html", topic.slug())));
        let told = ["Sources", "Check against published values"];
        let prose: Vec<String> = sections(&html)
            .into_iter()
            .filter(|s| !told.contains(&s.heading.as_str()) && !s.heading.starts_with("Question"))
            .map(|s| s.text)
            .collect();
        let (words, level) = reading_level(&prose.join(" "));
        println!(
            "{:>5} words, {level:.1} years of school: {}",
            words, topic.name
        );
        assert!((2.0..12.0).contains(&level), "{}: {level}", topic.name);
        assert!(
            (300..4000).contains(&words),
            "{}: {words} words",
            topic.name
        );
    }
}

#[test]
fn the_reading_level_of_a_known_text() {
    // 9 words in 2 sentences with 10 syllables, by hand: 0.39·4.5 + 11.8·10/9 − 15.59 = −0.72.
    let (words, level) = reading_level("The car stands on the road. It has load.");
    assert_eq!(words, 9);
    assert!(
        (level - (0.39 * 4.5 + 11.8 * 9.0 / 9.0 - 15.59)).abs() < 1e-9,
        "{level}"
    );
}

#[test]
fn every_page_is_valid_html() {
    let site = site();
    let mut files: Vec<String> = pages()
        .iter()
        .map(|(name, _)| site.out.join(name).display().to_string())
        .collect();
    files.push(
        site.out
            .join("axlewright-offline.html")
            .display()
            .to_string(),
    );
    let told = axlewright_tests::node("html.mjs", &serde_json::json!(files).to_string());
    assert!(told.is_empty(), "{told}");
    // The judge is awake.
    let folder = tempfile::tempdir().unwrap();
    let bad = folder.path().join("bad.html");
    std::fs::write(&bad, "<!doctype html><html lang=\"en\"><head><title>a</title></head><body><p><div></div></p></body></html>").unwrap();
    let told = axlewright_tests::node("html.mjs", &serde_json::json!([bad]).to_string());
    assert!(told.contains("error"), "{told}");
}

#[test]
fn the_glossary_is_linked_and_the_course_table_counts_the_questions() {
    let site = site();
    for topic in TOPICS {
        let html = read(&site.out.join(format!("{}.html", topic.slug())));
        assert!(
            html.matches("class=\"term\"").count() >= 3,
            "{}",
            topic.name
        );
    }
    let teachers = read(&site.out.join("teachers.html"));
    for topic in TOPICS {
        let count = question::of(topic).len();
        assert!(
            teachers.contains(&format!("{count} questions</a>")),
            "{}",
            topic.name
        );
    }
}
