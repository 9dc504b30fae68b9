//! Links that were once given out: they still open, and show what they showed.
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "in a test, stopping is the right answer"
)]

use axlewright_core::topic::{self, TOPICS};
use axlewright_core::{Scenario, link};
use axlewright_tests::file;
use axlewright_widgets::element::attributes;
use axlewright_widgets::element::interface::ATTRIBUTES;

fn list() -> toml::Table {
    let text = std::fs::read_to_string(file("links.toml")).unwrap();
    text.parse().unwrap()
}

fn text<'a>(table: &'a toml::Value, name: &str) -> &'a str {
    table[name].as_str().unwrap_or_else(|| panic!("{name}"))
}

fn number(value: &toml::Value) -> f64 {
    let whole = value.as_integer().map(|whole| whole as f64);
    value.as_float().or(whole).unwrap()
}

#[test]
fn every_old_link_gives_the_answer_that_it_gave() {
    let list = list();
    let links = list["link"].as_array().unwrap();
    assert!(links.len() >= TOPICS.len());
    for entry in links {
        let topic = topic::find(text(entry, "topic")).unwrap();
        let (page, other) =
            link::read_query(topic, text(entry, "page"), &Scenario::default()).unwrap();
        assert_eq!(other, Vec::<String>::new());
        let query = text(entry, "query");
        let (scenario, other) = link::read_query(topic, query, &page).unwrap();
        assert_eq!(other, Vec::<String>::new(), "{query}");
        let report = topic.report(&scenario).unwrap();
        let got = report.number(text(entry, "path")).unwrap();
        let want = number(&entry["value"]);
        // An integration answers within its stated error, not to the last bit.
        let within = entry.get("within").map_or(1e-9, number);
        assert!(
            (got - want).abs() <= within * want.abs(),
            "{query}: {got}, not {want}"
        );
        // The link of what is shown leads to the same again.
        let again = link::link_query(topic, &scenario, &page);
        let (back, _) = link::read_query(topic, &again, &page).unwrap();
        assert_eq!(back, scenario, "{again}");
    }
}

#[test]
fn no_name_of_a_parameter_is_ever_taken_away_and_every_new_one_is_listed() {
    let list = list();
    let names = list["names"].as_table().unwrap();
    let named = |key: &str| -> Vec<String> {
        let listed = names.get(key).and_then(toml::Value::as_array);
        let listed = listed.unwrap_or_else(|| panic!("no names of {key}"));
        listed
            .iter()
            .map(|n| n.as_str().unwrap().to_owned())
            .collect()
    };
    let every = named("every");
    let known: Vec<&str> = ATTRIBUTES.iter().map(|a| a.name).collect();
    assert_eq!(every, known);
    for topic in TOPICS {
        let mut listed = [every.clone(), named(topic.name)].concat();
        let mut known = attributes(topic);
        listed.sort();
        known.sort();
        assert_eq!(known, listed, "{}", topic.name);
    }
}
