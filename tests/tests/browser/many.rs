//! Fifty elements on a page, and one element mounted five hundred times.

use axlewright_tests::session::Window;
use serde_json::{Value, json};

/// Fifty elements of three kinds, one below the other.
const FIFTY: &str = "
    const tags = ['axle-load-transfer', 'axle-traction', 'axle-turn-in-place'];
    const fifty = Array.from({ length: 50 }, (_, at) => {
      const element = document.createElement(tags[at % 3]);
      element.setAttribute('vehicle', ['kame', 'esker', 'moraine', 'corrie'][at % 4]);
      return element;
    });";

/// What fifty elements may take of the page's thread until all are ready, in seconds. Its own time, not
/// that of the clock: other work on the machine is no finding. As below, on the machine that bounds are for.
const READY_S: f64 = 1.5;
/// How long a reader's key may have to wait, in milliseconds.
const BLOCKED_MS: f64 = 200.0;

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or(f64::INFINITY)
}

/// Some of the browser's counts for the page.
async fn metrics<const N: usize>(window: &Window, names: [&str; N]) -> [f64; N] {
    let all = window.debug("Performance.getMetrics", json!({})).await;
    let list = all["metrics"].as_array().cloned().unwrap_or_default();
    names.map(|name| {
        let found = list.iter().find(|metric| metric["name"] == name);
        number(&found.unwrap_or_else(|| panic!("no {name}: {all}"))["value"])
    })
}

/// How long fifty elements hold up the page \[ms\]: while they start, and while all are drawn narrower; and
/// what they take of the page's thread until all are ready \[s\]. Finds and leaves a blank page.
async fn fifty_elements(window: &Window) -> [f64; 3] {
    let own_time = json!({ "timeDomain": "threadTicks" });
    window.debug("Performance.enable", own_time).await;
    let [before] = metrics(window, ["TaskDuration"]).await;
    let seen = window
        .run(&format!(
            "{FIFTY} document.body.append(...fifty);\
             const began = performance.now(); seen.long.length = 0;\
             await import(new URL('axlewright.js', location));\
             const first = await fifty[0].updateComplete; const one = performance.now() - began;\
             const live = await Promise.all(fifty.map((e) => e.updateComplete)); const all = performance.now() - began;\
             \
             return {{ one, all, live: first && live.every(Boolean), answers: fifty.every((e) => e.answer !== null),\
               instances: seen.memories.length, wasm: seen.memories[0].buffer.byteLength, errors: seen.errors, warnings: seen.warnings }};"
        ))
        .await;
    let [after] = metrics(window, ["TaskDuration"]).await;
    let long = window
        .run("await new Promise((r) => setTimeout(r, 500)); return Math.max(0, ...seen.long.map(([, time]) => time));")
        .await;
    let narrower = window
        .run(
            "seen.long.length = 0; document.body.style.width = '600px'; const began = performance.now();\
             const all = [...document.querySelectorAll('body > *')];\
             const drawn = () => all.every((e) => Math.abs(e.shadowRoot.querySelector('.figure svg').viewBox.baseVal.width - 600) < 2);\
             while (!drawn() && performance.now() - began < 10000) await new Promise((r) => setTimeout(r, 20));\
             await new Promise((r) => setTimeout(r, 300)); return [drawn(), Math.max(0, ...seen.long.map(([, time]) => time))];",
        )
        .await;
    let times = [number(&long), number(&narrower[1]), after - before];
    println!(
        "fifty elements: first after {:.0} ms, all after {:.0} ms, {:.2} s of the page's thread, longest task {:.0} ms, {:.0} ms when made narrower, wasm memory {:.0} kB",
        number(&seen["one"]),
        number(&seen["all"]),
        times[2],
        times[0],
        times[1],
        number(&seen["wasm"]) / 1024.0
    );
    assert_eq!(narrower[0], true, "all drawn anew: {narrower}");
    assert_eq!(seen["live"], true);
    assert_eq!(seen["answers"], true);
    assert_eq!(seen["instances"], 1);
    assert!(number(&seen["wasm"]) < 64.0 * 1024.0 * 1024.0, "{seen}");
    assert_eq!(seen["errors"], json!([]));
    assert_eq!(seen["warnings"], json!([]));
    window.visit("blank.html").await;
    times
}

#[tokio::test]
async fn fifty_elements_share_one_instance_and_never_hold_up_the_reader() {
    let bounds = [BLOCKED_MS, BLOCKED_MS, READY_S];
    let window = Window::open().await;
    window.visit("blank.html").await;
    window
        .within("fifty elements", bounds, fifty_elements)
        .await;
    window.close().await;
}

/// What the page holds after everything that can go has gone.
async fn held(window: &Window) -> (f64, f64, f64, f64) {
    for _ in 0..3 {
        window.debug("HeapProfiler.collectGarbage", json!({})).await;
        window
            .run("await new Promise((r) => setTimeout(r, 100));")
            .await;
    }
    let wasm = window
        .run("return seen.memories[0].buffer.byteLength;")
        .await;
    let [heap, listeners, nodes] =
        metrics(window, ["JSHeapUsedSize", "JSEventListeners", "Nodes"]).await;
    (heap, listeners, nodes, number(&wasm))
}

#[tokio::test]
async fn five_hundred_mounts_leave_nothing_behind() {
    let window = Window::open().await;
    window.visit("watched.html").await;
    window.ready("axle-load-transfer").await;
    window.debug("Performance.enable", json!({})).await;
    window.debug("HeapProfiler.enable", json!({})).await;
    let mount = |times: u32| {
        format!(
            "const tags = ['axle-load-transfer', 'axle-traction', 'axle-turn-in-place'];\
             for (let n = 0; n < {times}; n += 1) {{\
               const e = document.createElement(tags[n % 3]); e.setAttribute('acceleration', '0.5 g'); document.body.append(e);\
               if (!await e.updateComplete) throw new Error('not started');\
               if (n % 5 === 0) await new Promise(requestAnimationFrame);\
               await e.figure(); e.scenario = {{ vehicle: {{ base: 'kame' }} }};\
               e.remove(); await null;\
             }}"
        )
    };
    window.run(&mount(100)).await;
    let before = held(&window).await;
    window.run(&mount(250)).await;
    window.run(&mount(250)).await;
    let after = held(&window).await;
    println!(
        "500 mounts: heap {:.0} -> {:.0} kB, listeners {} -> {}, nodes {} -> {}, wasm {:.0} -> {:.0} kB",
        before.0 / 1024.0,
        after.0 / 1024.0,
        before.1,
        after.1,
        before.2,
        after.2,
        before.3 / 1024.0,
        after.3 / 1024.0
    );
    // A kilobyte for each mount would be 500.
    assert!(after.0 - before.0 < 250_000.0, "heap {before:?} {after:?}");
    assert!(after.1 <= before.1, "listeners {before:?} {after:?}");
    assert!(after.2 - before.2 < 50.0, "nodes {before:?} {after:?}");
    // Two pages of 64 kB for what the allocator cannot join.
    assert!(after.3 - before.3 <= 131_072.0, "wasm {before:?} {after:?}");
    assert_eq!(window.errors().await, json!([]));
    window.close().await;
}
