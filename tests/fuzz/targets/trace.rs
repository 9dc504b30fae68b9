//! A cycle that a reader supplies: lines of time and speed.
#![no_main]

libfuzzer_sys::fuzz_target!(|data: &[u8]| axlewright_fuzz::trace(data));
