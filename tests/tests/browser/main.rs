//! Journeys through the site in a real browser.

mod access;
mod life;
mod look;
mod session;
mod sliders;
mod trap;
