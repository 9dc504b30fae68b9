//! Figures and web elements of Axlewright.

pub mod figure;
