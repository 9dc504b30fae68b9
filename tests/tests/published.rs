//! Every row of `published.toml`: our value is the published one within its rounding.
#![allow(clippy::unwrap_used, reason = "a test stops where a value is missing")]

use axlewright_site::published::{self, Check};
use axlewright_tests::Comparison;

fn checks() -> Vec<Check> {
    let text = std::fs::read_to_string(axlewright_tests::file("published.toml")).unwrap();
    published::read(&text).unwrap()
}

/// What the rows must cover, and the labels that they may carry: no row may claim more than we know.
const WANTED: &[(&str, &[&str])] = &[
    ("G6a", &["memory"]),
    ("G6b", &["memory"]),
    ("G6c", &["memory"]),
    ("G6d", &["memory"]),
    ("G6e", &["memory"]),
    ("V7", &["derived"]),
    ("V4", &["read"]),
    ("G2a", &["memory"]),
    ("G2b", &["memory"]),
    ("G2c", &["memory"]),
    ("J1", &["read"]),
    ("J2", &["read"]),
    ("J4", &["read"]),
    ("J6", &["derived"]),
    ("B1", &["read"]),
    ("S1", &["derived"]),
    ("W3", &["derived"]),
    ("W6", &["derived"]),
    ("D1", &["derived"]),
    ("K1", &["read"]),
    ("K3", &["read"]),
    ("K4", &["memory"]),
    ("K5", &["derived"]),
    ("K7", &["read"]),
    ("K8", &["read"]),
    ("M3", &["read"]),
    ("R1", &["derived"]),
    ("W4", &["memory"]),
    ("A6", &["read"]),
    ("P1", &["memory"]),
    ("magic_formula_1987", &["derived"]),
    ("rule_three_motors", &["practice"]),
    ("E6", &["read"]),
    ("E8", &["memory"]),
    ("E9", &["read"]),
    ("packaging_mark", &["practice"]),
    ("adhesion", &["quoted", "memory"]),
    ("rolling_resistance_by_pressure", &["read"]),
    ("C1", &["quoted"]),
    ("C2", &["quoted"]),
    ("C3", &["quoted"]),
    ("E1", &["read"]),
    ("E5", &["memory"]),
    ("rule_two_to_one", &["practice"]),
    ("rule_four_driven_wheels", &["practice"]),
    ("rule_rear_pair", &["practice"]),
];

#[test]
fn every_published_value_is_met() {
    let mut missed = Vec::new();
    let mut met = 0;
    for check in checks() {
        let got = match published::compute(&check) {
            Ok(got) => got,
            Err(fault) => {
                missed.push(fault.to_string());
                continue;
            }
        };
        let comparison = Comparison {
            quantity: &check.what,
            case: &check.id,
            got,
            want: check.expected,
            tolerance: check.tolerance,
            unit: &check.unit,
            source: &format!("{}, {}", check.source, check.label.word()),
        };
        assert_eq!(check.holds(got), comparison.holds(), "{comparison}");
        println!("{comparison}");
        if comparison.holds() {
            met += 1;
        } else {
            missed.push(comparison.to_string());
        }
    }
    assert!(missed.is_empty(), "not met:\n{}", missed.join("\n"));
    assert!(met > 0, "there is no row");
    println!("{met} published values met");
}

#[test]
fn every_wanted_check_has_its_rows_and_no_label_claims_more_than_we_know() {
    let checks = checks();
    for (id, _) in WANTED {
        assert!(checks.iter().any(|c| c.id == *id), "no row for {id}");
    }
    for check in &checks {
        let wanted = WANTED.iter().find(|(id, _)| *id == check.id);
        let labels = wanted.map_or(&[][..], |(_, labels)| labels);
        let label = check.label.word();
        assert!(labels.contains(&label), "{}: label {label}", check.id);
    }
}

#[test]
fn every_row_is_one_number_with_a_sentence_and_a_source() {
    let checks = checks();
    for (at, check) in checks.iter().enumerate() {
        assert!(check.what.ends_with('.'), "{}: {}", check.id, check.what);
        assert!(!check.source.trim().is_empty(), "{}: no source", check.id);
        assert!(check.tolerance >= 0.0, "{}: tolerance", check.id);
        let first = checks
            .iter()
            .position(|c| c.id == check.id && c.what == check.what);
        assert_eq!(first, Some(at), "{}: twice: {}", check.id, check.what);
    }
}

#[test]
fn the_whole_adhesion_table_is_there() {
    let checks = checks();
    let rows = checks.iter().filter(|c| c.id == "adhesion").count();
    let printed: usize = axlewright_core::surface::SURFACES
        .iter()
        .flat_map(|s| [s.peak, s.sliding])
        .map(|(least, most)| if least < most { 2 } else { 1 })
        .sum();
    assert_eq!(rows, printed);
}
