//! What the tests share: comparisons that say everything, the built program, the Python reference
//! scripts, and numbers drawn with a fixed seed.
#![allow(
    clippy::expect_used,
    clippy::panic,
    reason = "this crate exists for the tests, where stopping is the right answer"
)]

mod answers;
pub mod camera;
mod compare;
mod draw;
pub mod engine;
pub mod host;
mod launch_case;
mod node;
mod picture;
mod program;
mod python;
mod reference;
pub mod session;
mod snapshot;

pub use answers::{answers_or_refuses, refuses_clearly, show};
pub use compare::{Comparison, assert_close, assert_equal_relative, scenario};
pub use draw::Draw;
pub use launch_case::launch_case;
pub use node::node;
pub use picture::Picture;
pub use program::{Run, program, run, run_in};
pub use python::python;
pub use reference::Reference;
pub use snapshot::{picture_differs, text_differs};

use std::path::PathBuf;

/// Path of a file of this crate.
#[must_use]
pub fn file(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(name)
}
