//! What the figures look like: no label in the way of anything, and nothing changed unseen.
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "in a test, stopping is the right answer"
)]

mod clear;
mod grid;
mod kept;
mod read;
mod shape;
