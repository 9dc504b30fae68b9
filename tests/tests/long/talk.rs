//! A talk that goes to and fro without end.

use crate::held::{Held, go_on, minutes};
use axlewright_tests::session::Window;
use serde_json::json;

/// A page with one talk that has begun.
async fn begun(window: &Window) {
    let talk = axlewright_tests::file("../site/talks/where-the-weight-goes.toml");
    let folder = &axlewright_tests::session::site().folder;
    std::fs::copy(talk, folder.join("where-the-weight-goes.toml")).expect("a copy");
    window.visit("talking.html").await;
    let said = window
        .run(
            "await customElements.whenDefined('axle-talk'); const talk = document.querySelector('axle-talk');\
             for (let i = 0; i < 200 && !talk.said; i += 1) await new Promise((r) => setTimeout(r, 50));\
             globalThis.state = 7; return talk.said;",
        )
        .await;
    assert_ne!(said, "", "the talk does not begin");
}

/// A step is overtaken by the next, as in a hurry; the sequence is the same each time.
async fn steps(window: &Window, count: u32) -> f64 {
    window
        .run(&format!(
            "const talk = document.querySelector('axle-talk');\
             const random = () => (state = state * 48271 % 2147483647) / 2147483647;\
             for (let i = 0; i < {count}; i += 1) {{ talk.goTo(Math.floor(random() * talk.steps));\
               await new Promise((r) => setTimeout(r, 40)); if (i % 5 === 0) talk.forward();\
               if (i % 50 === 0) await new Promise((r) => setTimeout(r, 1200)); }}"
        ))
        .await;
    f64::from(count)
}

/// The same step each time, with its motion over.
const REST: &str =
    "document.querySelector('axle-talk').goTo(0); await new Promise((r) => setTimeout(r, 2000));";

/// Rounds to warm up, at most.
const WARM_UP: u32 = 6;

/// Shows every step to its end, and then steps at random until a round has asked for no more memory than
/// the ones before. Which steps are overtaken depends on how busy the machine is; what all of them hold at
/// once at most is no growth, and is held before the measuring begins. Memory that is lost never stays
/// what it was: it grows in the measured rounds too.
async fn warm(window: &Window) {
    window
        .run(
            "const talk = document.querySelector('axle-talk');\
             for (let at = 0; at < 2 * talk.steps; at += 1) {\
               await talk.goTo(at % talk.steps); if (!talk.said) throw new Error('nothing is said'); await talk.forward(); }",
        )
        .await;
    let mut last = None;
    for _ in 0..WARM_UP {
        steps(window, 150).await;
        let held = Held::by(window).await;
        if last == Some(held.wasm) {
            break;
        }
        last = Some(held.wasm);
    }
}

async fn random_steps(minutes: f64) {
    let window = Window::open().await;
    begun(&window).await;
    warm(&window).await;
    let (first, last) = go_on(&window, minutes, REST, async |_| steps(&window, 200).await).await;
    let told = format!("{first} at the start, {last} in the end");
    assert!(last.heap < 1.25 * first.heap, "{told}");
    // Two pages of 64 kB for what the allocator cannot join.
    assert!(last.wasm - first.wasm <= 131_072.0, "{told}");
    assert!(last.nodes < 1.1 * first.nodes, "{told}");
    assert!(last.listeners < 1.1 * first.listeners, "{told}");
    let alive = window
        .run(
            "const talk = document.querySelector('axle-talk'); const shown = (act) => new Promise((done) => {\
               talk.addEventListener('axle-step', (event) => done(event.detail.step), { once: true }); act(); });\
             return [await shown(() => talk.goTo(1)), talk.said !== ''];",
        )
        .await;
    assert_eq!(alive, json!([2, true]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn random_steps_do_not_let_memory_grow() {
    random_steps(0.3).await;
}

#[tokio::test]
#[ignore = "takes thirty minutes"]
async fn thirty_minutes_of_random_steps() {
    random_steps(minutes()).await;
}
