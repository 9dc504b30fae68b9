//! Journeys through the site in a real browser.
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "in a test, stopping is the right answer"
)]

mod access;
mod boxes;
mod course;
mod cycle;
mod embed;
mod errors;
mod frame;
mod frameworks;
#[path = "../look/grid.rs"]
mod grid;
mod hands;
mod interface;
mod kept;
mod keys;
mod languages;
mod life;
mod link;
mod look;
mod many;
mod offline;
mod packages;
mod places;
mod print;
mod question;
mod routes;
mod run;
mod sketch;
mod sliders;
mod states;
mod talk;
mod talk_camera;
mod talk_faults;
mod talk_hands;
mod tools;
mod trap;
