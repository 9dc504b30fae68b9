//! What a page goes through in an hour: long random input, a talk without end, an update under way, sleep,
//! a server that is gone.
//!
//! The long forms are ignored. `AXLEWRIGHT_MINUTES` sets their length; thirty minutes are the measure.
//!
//! ```sh
//! cargo test -p axlewright-tests --test long thirty_minutes -- --ignored --nocapture
//! ```
#![allow(
    clippy::expect_used,
    clippy::panic,
    reason = "in a test, stopping is the right answer"
)]

mod asleep;
mod elements;
mod held;
mod talk;
mod update;
