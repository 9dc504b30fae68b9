//! The web elements: a topic's controls, figure, chart and readouts, driven by the core.
//!
//! The class of each element is made by a small hand-written script (`widgets/js/`); this is the Rust
//! side that it calls. Only [`element_table`] exists natively.

mod table;
pub mod working_html;

#[cfg(target_arch = "wasm32")]
mod compare;
#[cfg(target_arch = "wasm32")]
mod controls;
#[cfg(target_arch = "wasm32")]
mod erase;
#[cfg(target_arch = "wasm32")]
pub mod exports;
#[cfg(target_arch = "wasm32")]
mod model;
#[cfg(target_arch = "wasm32")]
mod motors;
#[cfg(target_arch = "wasm32")]
mod picture;
#[cfg(target_arch = "wasm32")]
mod playback;
#[cfg(target_arch = "wasm32")]
mod readouts;
#[cfg(target_arch = "wasm32")]
mod state;

pub use table::{COMMON_ATTRIBUTES, attributes, element_table};
