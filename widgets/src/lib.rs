//! Figures and web elements of Axlewright.
//!
//! Figures are drawn the same natively and in the browser; no web type appears in their code. The
//! elements exist only in WebAssembly.

pub mod choice;
pub mod compare;
pub mod cornering;
pub mod difference;
pub mod element;
pub mod figure;
pub mod figure_file;
pub mod idle_drag;
pub mod launch;
pub mod load_transfer;
pub mod motor_split;
mod motors;
pub mod packaging;
pub mod question_chart;
mod side;
pub mod sketch;
pub mod table;
pub mod talk;
pub mod traction;
pub mod turn_in_place;
pub mod visual;
