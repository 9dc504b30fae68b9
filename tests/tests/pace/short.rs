//! The budgets of speed and memory in short: bounds that hold on a busy machine and still catch a
//! regression. The bench beside it measures in full.

use crate::measure::{IN_PARTS, SLIDERS, fumble, held, native_pace, place, slide, wasm_pace};
use axlewright_tests::session::Window;
use serde_json::json;

/// How much longer the same physics may take as wasm than natively; the budget is 1.5.
const WASM_OVER_NATIVE: f64 = 3.0;
/// Median time of a slider step with its layout \[ms\], on the machine that bounds are for; the budget is 4.
const STEP_MS: f64 = 16.7;

/// What one element may take after some hundred inputs; fifty elements may take 64 MB.
const WASM_BYTES: f64 = 16.0 * 1024.0 * 1024.0;

/// A step of the slider fits a frame, on the machine that the bound is for.
async fn quick(window: &Window, tag: &str, slider: &str) {
    if tag == IN_PARTS {
        // Its answer takes several frames; another journey sees that none of them is lost.
        println!("{tag}: {}", slide(window, slider, 8).await);
        return;
    }
    let step = async |window: &Window| {
        let seen = slide(window, slider, 60).await;
        println!("{tag}: {seen}");
        [seen["all"]["median"].as_f64().expect("a time")]
    };
    window.within(tag, [STEP_MS], step).await;
}

#[tokio::test]
async fn wasm_is_not_far_behind_native_code() {
    let window = Window::open().await; // before the compiler runs: the other test has to wait for it
    let native = native_pace();
    assert!(native.len() > SLIDERS.len());
    let wasm = wasm_pace(&window, &native).await;
    let mut ratios = Vec::new();
    for ((name, _, native_us), wasm_us) in native.iter().zip(wasm) {
        let ratio = wasm_us / native_us;
        println!("{name}: {native_us:.1} µs natively, {wasm_us:.1} µs as wasm, {ratio:.2} times");
        // A clock of a tenth of a millisecond says little of the quickest.
        if *native_us > 50.0 {
            ratios.push(ratio);
        }
    }
    ratios.sort_by(f64::total_cmp);
    let median = ratios[ratios.len() / 2];
    assert!(median < WASM_OVER_NATIVE, "{ratios:?}");
    window.close().await;
}

#[tokio::test]
async fn a_slider_step_fits_a_frame_and_random_input_leaves_nothing_behind() {
    let window = Window::open().await;
    for (tag, slider) in SLIDERS {
        place(&window, tag).await;
        quick(&window, tag, slider).await;
        // The first inputs fill what is kept: a hundred steps to take back, the courses of runs.
        fumble(&window, 4).await;
        let before = held(&window).await;
        let count = fumble(&window, 10).await;
        let after = held(&window).await;
        println!("{tag}: {count} inputs, script and wasm {before:?} to {after:?} bytes");
        assert!(count > 100.0, "{tag}: only {count} inputs");
        // A kilobyte for each input would be more.
        assert!(
            after.0 - before.0 < 400_000.0,
            "{tag}: {before:?} {after:?}"
        );
        // It never shrinks, and random input opens ever more workings: only the bench goes on for long
        // enough to tell a leak from that.
        assert!(after.1 < WASM_BYTES, "{tag}: {before:?} {after:?}");
        assert_eq!(window.errors().await, json!([]), "{tag}");
    }
    window.close().await;
}
