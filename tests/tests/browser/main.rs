//! Journeys through the site in a real browser.
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "in a test, stopping is the right answer"
)]

mod access;
mod frame;
mod interface;
mod life;
mod link;
mod look;
mod session;
mod sliders;
mod trap;
