//! A new version of the site arrives while a reader is at work.

use axlewright_tests::host::{Host, next_version};
use axlewright_tests::session::{Window, site};
use serde_json::json;

const PAGE: &str = "load-transfer.html";

#[tokio::test]
async fn a_new_version_arrives_under_a_moving_slider_and_nothing_stops() {
    let host = Host::of(&site().folder);
    let window = Window::open().await;
    window.go(&format!("{}{PAGE}", host.url)).await;
    let kept = window
        .run(
            "for (let i = 0; i < 1200 && !navigator.serviceWorker.controller; i += 1) await new Promise((r) => setTimeout(r, 50));\
             return navigator.serviceWorker.controller !== null;",
        )
        .await;
    assert_eq!(kept, true, "the first version is kept");
    window.go(&format!("{}{PAGE}", host.url)).await;
    window.ready("axle-load-transfer").await;
    let folder = tempfile::tempdir().expect("a folder");
    next_version(folder.path());
    host.show(Some(folder.path()));
    // The reader pulls the slider from before the update until the new version waits and is offered, now
    // and then holding it still. Chromium answers a look at once or, in some runs, only after a minute. A look
    // that began before the new version was served finds none, and one asked for meanwhile is the same look:
    // so it is asked for again until a version is found.
    let seen = window
        .run(
            "const e = document.querySelector('axle-load-transfer'); const slider = e.shadowRoot.querySelector('#acceleration-slider');\
             const errors = []; addEventListener('error', (event) => errors.push(event.message));\
             addEventListener('unhandledrejection', (event) => errors.push(String(event.reason)));\
             const controller = navigator.serviceWorker.controller; const held = await navigator.serviceWorker.getRegistration();\
             let answers = 0; let wrong = 0; e.addEventListener('axle-answer', () => { answers += 1; });\
             const step = async (at) => { const g = (at % 60) / 100; slider.value = String(g);\
               for (const type of ['input', 'change']) slider.dispatchEvent(new Event(type, { bubbles: true }));\
               const { mass, front_axle_load: front, rear_axle_load: rear } = e.answer;\
               if (!(Math.abs(front + rear - 1850 * 9.81) < 1e-6) || e.scenario.load_transfer.acceleration !== `${slider.value} g`) wrong += 1;\
               await new Promise(requestAnimationFrame); if (at % 10 === 0) await new Promise((r) => setTimeout(r, 300)); };\
             let looks = 0; let looking = true; const look = async () => { while (looking) { looks += 1; await held.update();\
               if (held.installing || held.waiting) return; await new Promise((r) => setTimeout(r, 2000)); } };\
             const looked = look(); let at = 1; const began = performance.now();\
             while (!document.querySelector('.version button') && performance.now() - began < 85000) await step(at++);\
             looking = false; await looked; const offered = document.querySelector('.version button') !== null;\
             for (let n = 0; n < 60; n += 1) await step(at++);\
             return { offered, same: navigator.serviceWorker.controller === controller, waiting: held.waiting !== null, installing: held.installing !== null, looks,\
               answers, wrong, steps: at - 1, errors, acceleration: e.scenario.load_transfer.acceleration };",
        )
        .await;
    println!("update in use: {seen}");
    assert_eq!(seen["offered"], true, "{seen}");
    assert_eq!(
        seen["same"], true,
        "the page stays with its version: {seen}"
    );
    assert_eq!(seen["waiting"], true, "{seen}");
    assert_eq!(seen["wrong"], 0, "{seen}");
    assert_eq!(
        seen["answers"], seen["steps"],
        "each step its answer: {seen}"
    );
    assert_eq!(seen["errors"], json!([]), "{seen}");
    // Its own files still come from the version that it began with: a part that was not fetched yet.
    let other = window
        .run(
            "const e = document.createElement('axle-traction'); document.querySelector('main').append(e); e.scrollIntoView();\
             return [await e.updateComplete, e.answer !== null];",
        )
        .await;
    assert_eq!(other, json!([true, true]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}
