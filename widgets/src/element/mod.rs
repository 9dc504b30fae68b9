//! The web elements: a topic's controls, figure, chart and readouts, driven by the core.
//!
//! The class of each element is made by a small hand-written script (`widgets/js/`); this is the Rust
//! side that it calls. Natively there are only the tables and the texts that are made from them.

pub mod embed;
#[cfg(any(test, target_arch = "wasm32"))]
mod history;
pub mod interface;
mod table;
pub mod working_html;

#[cfg(target_arch = "wasm32")]
mod canvas;
#[cfg(target_arch = "wasm32")]
mod compare;
#[cfg(target_arch = "wasm32")]
mod controls;
#[cfg(target_arch = "wasm32")]
mod erase;
#[cfg(target_arch = "wasm32")]
pub mod exports;
#[cfg(target_arch = "wasm32")]
pub mod hands;
#[cfg(target_arch = "wasm32")]
mod model;
#[cfg(target_arch = "wasm32")]
pub(crate) mod parts;
#[cfg(target_arch = "wasm32")]
mod picture;
#[cfg(target_arch = "wasm32")]
mod playback;
#[cfg(target_arch = "wasm32")]
mod question;
#[cfg(target_arch = "wasm32")]
mod quiz;
#[cfg(target_arch = "wasm32")]
mod readouts;
#[cfg(target_arch = "wasm32")]
mod sketch;
#[cfg(target_arch = "wasm32")]
mod state;
#[cfg(target_arch = "wasm32")]
mod take;
#[cfg(target_arch = "wasm32")]
pub mod talk;
#[cfg(target_arch = "wasm32")]
mod toolbar;

pub use table::{attributes, element_table};
