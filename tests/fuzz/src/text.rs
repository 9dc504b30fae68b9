//! Texts that come from outside: quantities, scenario files, queries, cycles, talks.

use crate::answers::refuses_clearly;
use crate::clock::within;
use crate::scenario_file::{self, ScenarioError};
use crate::{TEXT_S, answers, longest_s};
use axlewright_core::idle_drag::trace::Trace;
use axlewright_core::input::{INPUTS, Kind};
use axlewright_core::talk::{Fault, Step, Talk};
use axlewright_core::topic::TOPICS;
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_core::{Scenario, format, link as query, typed, units};
use std::path::Path;

/// A first byte that chooses, and the text after it.
fn choice_and_text(data: &[u8]) -> Option<(usize, &str)> {
    let (first, rest) = data.split_first()?;
    Some((usize::from(*first), std::str::from_utf8(rest).ok()?))
}

/// Reads a quantity; what is read can be written and read again.
///
/// # Panics
/// When a number is not finite, or changes on its way.
pub fn quantity(data: &[u8]) {
    let Some((choice, text)) = choice_and_text(data) else {
        return;
    };
    let quantities: Vec<_> = INPUTS
        .iter()
        .filter_map(|input| match input.kind {
            Kind::Quantity { dimension, .. } => Some((input.path, dimension)),
            _ => None,
        })
        .collect();
    let (path, dimension) = quantities[choice % quantities.len()];
    let shown = || format!("{path} = {text:?}");
    within(TEXT_S, shown, || {
        if let Ok(value) = units::parse(text, dimension) {
            assert!(value.is_finite(), "{text:?} read as {value}");
            let again = units::parse(&format::plain(value), dimension);
            let is_near = |again: f64| (again - value).abs() <= error(value);
            assert!(
                again.as_ref().is_ok_and(|again| is_near(*again)),
                "{value:e} read as {again:?}"
            );
        }
        for lang in Lang::ALL {
            let mut scenario = Scenario::default();
            if let Err(problem) = scenario.set_typed(path, text, lang) {
                refuses_clearly(&problem);
                assert_eq!(scenario, Scenario::default(), "a refusal changes nothing");
            }
            // Nothing but the mark is another.
            if let Ok(plain) = typed::with_point(text, lang) {
                assert_eq!(plain.replace('.', ","), text.trim().replace('.', ","));
            }
        }
    });
}

/// Largest error of a number that is written and read again: some units in the last place, and more where
/// no quantity of a vehicle lies and powers of ten are no longer exact. What is too small is zero.
fn error(value: f64) -> f64 {
    match value.abs() {
        size @ 0.0..1e-290 => size,
        size @ 1e-30..1e30 => size * 1e-15,
        size => size * 1e-13,
    }
}

/// Reads a scenario file; what is read can be written as TOML and JSON and read again.
///
/// # Panics
/// When a scenario changes on its way, or a refusal is unclear.
pub fn scenario(data: &[u8]) {
    let Ok(text) = std::str::from_utf8(data) else {
        return;
    };
    within(
        TEXT_S,
        || text.to_owned(),
        || match scenario_file::parse(Path::new("nowhere/case"), text) {
            Ok(scenario) => survives(&scenario),
            Err(ScenarioError::Refused(problem)) => refuses_clearly(&problem),
            Err(other) => {
                let told = other.to_string();
                assert!(!told.contains(char::is_control), "{told:?}");
            }
        },
    );
}

fn survives(scenario: &Scenario) {
    let json = serde_json::to_string(scenario).map_err(|e| e.to_string());
    let toml = toml::to_string(scenario).map_err(|e| e.to_string());
    let from_json = json.and_then(|text| serde_json::from_str(&text).map_err(|e| e.to_string()));
    let from_toml = toml.and_then(|text| toml::from_str(&text).map_err(|e| e.to_string()));
    let case = answers::show(scenario);
    assert_eq!(from_json.as_ref(), Ok(scenario), "JSON: {case}");
    assert_eq!(from_toml.as_ref(), Ok(scenario), "TOML: {case}");
}

/// Reads a query on top of a topic's example; the link of what is read gives the same.
///
/// # Panics
/// When it does not.
pub fn link(data: &[u8]) {
    let Some((choice, text)) = choice_and_text(data) else {
        return;
    };
    let topic = TOPICS[choice % TOPICS.len()];
    let Ok(base) = topic.example() else {
        panic!("{} has no example", topic.name);
    };
    within(
        TEXT_S,
        || text.to_owned(),
        || match query::read_query(topic, text, &base) {
            Ok((scenario, _)) => {
                let link = query::link_query(topic, &scenario, &base);
                let again = query::read_query(topic, &link, &base);
                assert_eq!(again, Ok((scenario, Vec::new())), "{link}");
            }
            Err(problem) => refuses_clearly(&problem),
        },
    );
}

/// Reads a cycle; its steps follow one another and its time and distance are finite.
///
/// # Panics
/// When they are not.
pub fn trace(data: &[u8]) {
    let Ok(text) = std::str::from_utf8(data) else {
        return;
    };
    within(
        TEXT_S,
        || text.to_owned(),
        || match Trace::read(text) {
            Ok(trace) => {
                let mut before = None;
                trace.each(&mut |step| {
                    assert!(step.length_s > 0.0 && step.length_s.is_finite(), "{step:?}");
                    assert!((0.0..=150.0).contains(&step.to_m_s), "{step:?}");
                    assert!(
                        before.is_none_or(|speed| speed == step.from_m_s),
                        "{step:?}"
                    );
                    before = Some(step.to_m_s);
                });
                assert!(before.is_some(), "a cycle without a step: {text:?}");
            }
            Err(problem) => refuses_clearly(&problem),
        },
    );
}

/// Most steps of a talk that are said: each is solved, and one of the choice takes its time.
const MOST_SAID: usize = 3;

/// Reads a talk; what is read can be said, and every fault is told with its step and field.
///
/// # Panics
/// When a fault is unclear, or a sentence holds what is no number.
pub fn talk(data: &[u8]) {
    let Ok(text) = std::str::from_utf8(data) else {
        return;
    };
    let shown = || text.to_owned();
    let mut read = None;
    within(TEXT_S, shown, || {
        match scenario_file::parse_tree(Path::new("nowhere/talk"), text) {
            Ok(tree) => match Talk::from_tree(&tree) {
                Ok(talk) => read = Some(talk),
                Err(fault) => tells_clearly(&fault),
            },
            Err(ScenarioError::Refused(problem)) => refuses_clearly(&problem),
            Err(other) => {
                let told = other.to_string();
                assert!(!told.contains(char::is_control), "{told:?}");
            }
        }
    });
    let Some(talk) = read else { return };
    assert!(!talk.steps.is_empty(), "a talk without a step: {text:?}");
    for step in talk.steps.iter().take(MOST_SAID) {
        within(longest_s(step.topic.name), shown, || say(step, talk.lang));
    }
}

fn say(step: &Step, lang: Lang) {
    let report = match step.report(&Scenario::default()) {
        Ok(report) => report,
        Err(problem) => return refuses_clearly(&problem),
    };
    for said in [
        step.said(&report, lang, System::Si),
        step.noted(&report, lang, System::Us),
    ] {
        if let Err(fault) = said {
            tells_clearly(&fault);
        }
    }
    if let Some((right, at)) = step.answer(&report, lang, System::Si) {
        assert!(at.is_some() || !right.is_empty(), "{step:?}");
    }
}

/// A fault names its field in every language.
fn tells_clearly(fault: &Fault) {
    for lang in Lang::ALL {
        let told = fault.sentence(lang);
        assert!(told.contains(fault.field()), "{:?}: {told}", fault.field());
    }
    if let Fault::Refused { problem, .. } = fault {
        refuses_clearly(problem);
    }
}
