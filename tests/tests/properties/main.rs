//! Properties that hold for every scenario that the input table accepts.
//!
//! The scenarios are drawn from the table itself: usual values, the whole accepted range, and its
//! ends. The seed is fixed so that a run can be repeated; `PROPTEST_RNG_SEED` and `PROPTEST_CASES`
//! change seed and number.
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test stops where a value is missing"
)]
#![allow(
    clippy::disallowed_methods,
    reason = "the wanted values come from the standard library, not from the core's own functions"
)]

mod choice;
mod cornering;
mod every_topic;
mod homes;
mod idle_drag;
mod languages;
mod launch;
mod links;
mod load_transfer;
mod motor_split;
mod packaging;
mod scenarios;
mod tables;
mod text;
mod traction;
mod traction_order;
mod turn_in_place;
mod working;
