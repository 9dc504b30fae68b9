//! `launch`: whatever the inputs hold within their ranges.
#![no_main]

libfuzzer_sys::fuzz_target!(|data: &[u8]| axlewright_fuzz::topic("launch", data));
