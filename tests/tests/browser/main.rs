//! Journeys through the site in a real browser.
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "in a test, stopping is the right answer"
)]

mod access;
mod errors;
mod frame;
mod frameworks;
mod hands;
mod interface;
mod languages;
mod life;
mod link;
mod look;
mod many;
mod places;
mod question;
mod routes;
mod run;
mod session;
mod sliders;
mod states;
mod tools;
mod trap;
