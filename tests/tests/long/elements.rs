//! Thirty elements of every topic on one page, and a reader who presses, pulls and types at random.

use crate::held::{go_on, minutes};
use axlewright_core::topic::TOPICS;
use axlewright_tests::session::Window;
use serde_json::json;

/// How much more the script may hold in the end: a reader may have opened what was closed at the start.
const SCRIPT_GROWTH: f64 = 1.2;

/// A page of thirty elements, of every topic in turn.
async fn thirty(window: &Window) {
    window.visit("blank.html").await;
    let tags: Vec<String> = TOPICS.iter().map(|topic| topic.tag()).collect();
    let started = window
        .run(&format!(
            "await new Promise((done, fail) => {{ const script = document.createElement('script');\
               Object.assign(script, {{ src: 'measure.js', onload: done, onerror: fail }}); document.head.append(script); }});\
             const tags = {}; const vehicles = ['kame', 'esker', 'moraine', 'corrie'];\
             globalThis.thirty = Array.from({{ length: 30 }}, (_, at) => {{\
               const element = document.createElement(tags[at % tags.length]);\
               element.setAttribute('vehicle', vehicles[at % 4]); return element; }});\
             document.body.append(...thirty); await import(new URL('axlewright.js', location));\
             const live = await Promise.all(thirty.map((element) => element.updateComplete));\
             return live.every(Boolean);",
            json!(tags)
        ))
        .await;
    assert_eq!(started, true);
}

/// Random input at ten elements, chosen at random, for `seconds` each, with as long a pause.
async fn fumble(window: &Window, seed: u32, seconds: f64) -> f64 {
    let count = window
        .run(&format!(
            "let state = {seed} + 1; let count = 0;\
             for (let n = 0; n < 10; n += 1) {{\
               state = state * 48271 % 2147483647;\
               count += await measure.fumble(thirty[state % thirty.length], {seconds}, state);\
               await new Promise((r) => setTimeout(r, 1000 * {seconds}));\
             }} return count;"
        ))
        .await;
    count.as_f64().expect("a count")
}

/// Every element as the page has set it, with all that opens closed: so what is held can be compared.
const REST: &str = "for (const element of thirty) { await element.reset();\
      for (const part of element.shadowRoot.querySelectorAll('details[open]')) part.open = false; }\
    await measure.frame();";

/// Opens all that can be opened, and what that brings: a working is built when it is first opened, and
/// stays.
const OPEN: &str = "for (const element of thirty) {\
      for (let closed; (closed = [...element.shadowRoot.querySelectorAll('details:not([open])')]).length;) {\
        for (const part of closed) part.open = true; await measure.frame(); await measure.frame(); } }";

async fn random_input(minutes: f64, seconds: f64) {
    let window = Window::open().await;
    thirty(&window).await;
    window.run(OPEN).await;
    // What is kept fills first: a hundred steps to take back for each element, the courses of runs.
    for seed in 0..6 {
        fumble(&window, 1000 + seed, seconds).await;
    }
    let act = async |round| fumble(&window, round, seconds).await;
    let (first, last) = go_on(&window, minutes, REST, act).await;
    let alive = window
        .run(
            "const answers = thirty.map((element) => element.answer !== null); const e = thirty[0];\
             e.scenario = { vehicle: { base: 'corrie' }, load_transfer: { acceleration: '0.3 g' } };\
             return [answers.every(Boolean), e.answer.scenario.vehicle.base];",
        )
        .await;
    assert_eq!(alive, json!([true, "corrie"]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    assert!(
        last.heap < SCRIPT_GROWTH * first.heap,
        "{first} at the start, {last} in the end"
    );
    // Wasm memory never shrinks, so its most counts; two pages of 64 kB for each element would be a leak
    // that an hour makes felt.
    let room = 30.0 * 131_072.0;
    assert!(
        last.wasm - first.wasm <= room,
        "{first} at the start, {last} in the end"
    );
    let share = |more: f64, before: f64| more / before;
    assert!(
        share(last.nodes, first.nodes) < SCRIPT_GROWTH,
        "{first} {last}"
    );
    assert!(
        share(last.listeners, first.listeners) < SCRIPT_GROWTH,
        "{first} {last}"
    );
    window.close().await;
}

#[tokio::test]
async fn random_input_at_thirty_elements_leaves_nothing_behind() {
    random_input(0.3, 0.5).await;
}

#[tokio::test]
#[ignore = "takes thirty minutes"]
async fn thirty_minutes_of_random_input_at_thirty_elements() {
    random_input(minutes(), 1.0).await;
}
