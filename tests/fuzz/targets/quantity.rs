//! A number with a unit, as a file gives it and as a reader types it.
#![no_main]

libfuzzer_sys::fuzz_target!(|data: &[u8]| axlewright_fuzz::quantity(data));
