//! The search's index.

use crate::{read, site};
use axlewright_site::html::Section;
use axlewright_site::search::{Entry, index};
use serde_json::{Value, json};

fn index_of_site() -> Value {
    let script = read(&site().out.join("search-index.js"));
    let text = script
        .split_once("= ")
        .unwrap()
        .1
        .trim_end()
        .trim_end_matches(';');
    let inner: String = serde_json::from_str(&text.replace("<\\/", "</")).unwrap();
    serde_json::from_str(&inner).unwrap()
}

#[test]
fn the_index_is_the_one_that_the_library_makes() {
    let entry = |address: &str, heading: &str, text: &str| Entry {
        address: address.into(),
        page: "Traction limits".into(),
        section: Section {
            level: 2,
            anchor: String::new(),
            heading: heading.into(),
            text: text.into(),
        },
    };
    let entries = [
        entry(
            "a.html",
            "The idea",
            "A tyre pushes as hard as its load; load, LOAD. μ·N",
        ),
        entry("b.html", "", "Straße 20 % wheel-base Ünder"),
        entry("c.html", "Friction", ""),
    ];
    let fields: Vec<Value> = entries
        .iter()
        .map(|e| {
            json!({
                "title": format!("{} {}", e.section.heading, e.page),
                "text": e.section.text,
                "address": e.address,
                "page": e.page,
                "heading": e.section.heading,
                "excerpt": e.section.text,
            })
        })
        .collect();
    let input = json!({ "entries": fields, "index": index(&entries), "words": "load" });
    let told: Value =
        serde_json::from_str(&axlewright_tests::node("search.mjs", &input.to_string())).unwrap();
    assert_eq!(told["same"], true, "{told}");
    assert!(told["terms"].as_u64().unwrap() > 12, "{told}");
    assert_eq!(told["found"], json!(["a.html"]));
}

#[test]
fn words_of_every_page_are_found() {
    let index = index_of_site();
    for (words, page) in [
        ("counter-rotation", "turn-in-place.html"),
        ("wheelbase couple", "load-transfer.html"),
        ("differential one side ice", "traction.html"),
        ("rollout", "launch.html"),
        ("integrity", "embed.html"),
    ] {
        let input = json!({ "entries": [], "index": index, "words": words });
        let told = axlewright_tests::node("search.mjs", &input.to_string());
        let told: Value = serde_json::from_str(&told).unwrap();
        let found = told["found"].as_array().unwrap();
        let is_there = found
            .iter()
            .any(|address| address.as_str().unwrap().starts_with(page));
        assert!(is_there, "{words}: {found:?}");
    }
}
