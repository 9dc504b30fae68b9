//! Journeys through the site in a real browser.
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "in a test, stopping is the right answer"
)]

mod access;
mod life;
mod look;
mod run;
mod session;
mod sliders;
mod trap;
