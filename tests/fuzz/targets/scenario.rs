//! A scenario file, TOML or JSON.
#![no_main]

libfuzzer_sys::fuzz_target!(|data: &[u8]| axlewright_fuzz::scenario(data));
