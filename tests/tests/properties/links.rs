//! A link leads to the state that it was made from.

use crate::scenarios::{Reach, config, partial};
use axlewright_core::topic::TOPICS;
use axlewright_core::{Scenario, link};
use proptest::prelude::*;

/// What was given, as texts: a number that was set is read back from its text.
fn texts(scenario: &Scenario) -> Vec<(&'static str, String)> {
    let owned = |(path, text): (&'static str, &str)| (path, text.to_owned());
    scenario.entries().map(owned).collect()
}

#[test]
fn reading_a_link_undoes_writing_it() {
    for topic in TOPICS {
        let pair = (
            partial(topic, Reach::Accepted),
            partial(topic, Reach::Accepted),
        );
        proptest!(config(300), |((scenario, page) in pair)| {
            let query = link::link_query(topic, &scenario, &page);
            prop_assert!(query.is_ascii() && !query.contains(['<', '>', '"', '\'', ' ', '#']));
            let (back, other) = link::read_query(topic, &query, &page).unwrap();
            prop_assert_eq!(other, Vec::<String>::new());
            prop_assert_eq!(texts(&back), texts(&scenario), "{}", query);
            for input in topic.inputs() {
                let (want, got) = (scenario.number(input.path), back.number(input.path));
                let same = match (want, got) {
                    (Some(want), Some(got)) => (want - got).abs() <= 1e-12 * want.abs(),
                    (want, got) => want == got,
                };
                prop_assert!(same, "{}: {:?}, not {:?}", query, got, want);
            }
            prop_assert_eq!(link::link_query(topic, &back, &page), query);
            prop_assert_eq!(link::link_query(topic, &scenario, &scenario), "");
        });
    }
}

#[test]
fn any_text_in_an_address_is_read_without_harm() {
    let config = config(500);
    proptest!(config, |(query in ".{0,200}")| {
        for topic in TOPICS {
            // Most of it is no parameter of ours; what is one is accepted or refused in one line.
            if let Err(problem) = link::read_query(topic, &query, &Scenario::default()) {
                prop_assert!(!problem.to_string().contains('\n'));
            }
        }
    });
}
