//! The query of an address.
#![no_main]

libfuzzer_sys::fuzz_target!(|data: &[u8]| axlewright_fuzz::link(data));
