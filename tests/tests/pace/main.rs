//! What the elements cost in a real browser: the bench, which prints every budget as one table, and a
//! short form of it that fails when one is far exceeded.
//!
//! It is a test program of its own, so that no journey and no compiler runs beside it.
#![allow(
    clippy::expect_used,
    clippy::panic,
    reason = "in a test, stopping is the right answer"
)]

mod bench;
mod measure;
mod short;
