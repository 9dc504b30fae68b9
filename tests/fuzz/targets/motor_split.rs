//! `motor_split`: whatever the inputs hold within their ranges.
#![no_main]

libfuzzer_sys::fuzz_target!(|data: &[u8]| axlewright_fuzz::topic("motor_split", data));
