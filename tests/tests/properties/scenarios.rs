//! Scenarios drawn from the input table.

use axlewright_core::Scenario;
use axlewright_core::input::{Input, Kind};
use axlewright_core::layout::Layout;
use axlewright_core::topic::{self, Topic};
use proptest::prelude::*;
use proptest::test_runner::{Config, RngSeed};

/// One field, as it is set.
#[derive(Clone, Debug)]
enum Field {
    Number(&'static str, f64),
    Text(&'static str, String),
}

/// How far from everyday values the drawn ones may lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Reach {
    /// Where road vehicles lie: the range of the sliders.
    Usual,
    /// Anything that is accepted, with the ends of the range drawn often.
    Accepted,
}

/// Settings of a run: repeatable unless the environment asks for another seed.
pub(crate) fn config(cases: u32) -> Config {
    let default = Config::default();
    let asked = std::env::var_os("PROPTEST_CASES").is_some();
    let rng_seed = match default.rng_seed {
        RngSeed::Random => RngSeed::Fixed(20_260_101),
        fixed => fixed,
    };
    Config {
        cases: if asked { default.cases } else { cases },
        rng_seed,
        failure_persistence: None,
        max_global_rejects: 100_000,
        ..default
    }
}

/// The topic of a name.
pub(crate) fn topic(name: &str) -> &'static Topic {
    topic::find(name).unwrap()
}

/// Scenarios of a topic in which every field is given that matters to it, except those listed.
pub(crate) fn whole(
    topic: &'static Topic,
    reach: Reach,
    without: &'static [&'static str],
) -> BoxedStrategy<Scenario> {
    let fields = topic
        .inputs()
        .filter(|input| !without.contains(&input.path))
        .map(|input| field(input, reach).prop_map(Some).boxed());
    assemble(fields.collect())
}

/// Scenarios of a topic in which any field may be missing.
pub(crate) fn partial(topic: &'static Topic, reach: Reach) -> BoxedStrategy<Scenario> {
    let fields = topic.inputs().map(|input| {
        prop_oneof![
            1 => Just(None),
            4 => field(input, reach).prop_map(Some),
        ]
        .boxed()
    });
    assemble(fields.collect())
}

fn assemble(fields: Vec<BoxedStrategy<Option<Field>>>) -> BoxedStrategy<Scenario> {
    fields
        .prop_map(|fields| {
            let mut scenario = Scenario::default();
            for field in fields.into_iter().flatten() {
                let outcome = match &field {
                    Field::Number(path, value) => scenario.set_number(path, *value),
                    Field::Text(path, text) => scenario.set(path, text),
                };
                // The table says that it accepts this: a refusal is a fault of the core.
                assert_eq!(outcome, Ok(()), "{field:?}");
            }
            scenario
        })
        .boxed()
}

fn field(input: &'static Input, reach: Reach) -> BoxedStrategy<Field> {
    let path = input.path;
    match &input.kind {
        Kind::Quantity {
            accepted, usual, ..
        } => {
            let (accepted, usual) = (*accepted, *usual);
            let number = match reach {
                Reach::Usual => (usual.0..=usual.1).boxed(),
                Reach::Accepted => prop_oneof![
                    4 => usual.0..=usual.1,
                    2 => accepted.0..=accepted.1,
                    1 => Just(accepted.0),
                    1 => Just(accepted.1),
                ]
                .boxed(),
            };
            number.prop_map(move |n| Field::Number(path, n)).boxed()
        }
        Kind::Choice { words, .. } => prop::sample::select(*words)
            .prop_map(move |word| Field::Text(path, word.to_owned()))
            .boxed(),
        Kind::Text { .. } => (1_u32..40)
            .prop_map(move |speed| Field::Text(path, format!("0,0\n1,{speed}\n2,{speed}\n3,0")))
            .boxed(),
        Kind::Layouts => prop::sample::subsequence(Layout::NAMES, 1..=Layout::NAMES.len())
            .prop_map(move |names| Field::Text(path, names.join(" ")))
            .boxed(),
    }
}

/// The scenario with one number changed.
pub(crate) fn with(scenario: &Scenario, path: &str, value: f64) -> Scenario {
    let mut changed = scenario.clone();
    changed.set_number(path, value).unwrap();
    changed
}

/// The scenario with one word changed.
pub(crate) fn with_word(scenario: &Scenario, path: &str, word: &str) -> Scenario {
    let mut changed = scenario.clone();
    changed.set(path, word).unwrap();
    changed
}
