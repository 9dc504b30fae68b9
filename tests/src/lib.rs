//! Axlewright.
