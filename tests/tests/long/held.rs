//! What a page holds in memory, and whether it grows.

use axlewright_tests::session::Window;
use serde_json::{Value, json};
use std::time::{Duration, Instant};

/// What a page holds after the garbage has gone.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Held {
    pub(crate) heap: f64,
    pub(crate) wasm: f64,
    pub(crate) nodes: f64,
    pub(crate) listeners: f64,
}

impl Held {
    pub(crate) async fn by(window: &Window) -> Self {
        window.debug("Performance.enable", json!({})).await;
        // What a collection frees may free more at the next: until nothing goes any more.
        let mut metrics = collected(window).await;
        for _ in 0..MOST_COLLECTIONS {
            let before = metric(&metrics, "JSHeapUsedSize");
            metrics = collected(window).await;
            if metric(&metrics, "JSHeapUsedSize") > 0.999 * before {
                break;
            }
        }
        let wasm = window
            .run("return seen.memories.map((memory) => memory.buffer.byteLength);")
            .await;
        let sizes: Vec<f64> = wasm
            .as_array()
            .into_iter()
            .flatten()
            .filter_map(Value::as_f64)
            .collect();
        assert_eq!(sizes.len(), 1, "one instance, which never trapped: {wasm}");
        Self {
            heap: metric(&metrics, "JSHeapUsedSize"),
            wasm: sizes[0],
            nodes: metric(&metrics, "Nodes"),
            listeners: metric(&metrics, "JSEventListeners"),
        }
    }
}

/// Collections of garbage before a measurement, at most.
const MOST_COLLECTIONS: u32 = 12;

/// What the browser tells of a page after some collections of garbage.
async fn collected(window: &Window) -> Value {
    for _ in 0..2 {
        window.debug("HeapProfiler.collectGarbage", json!({})).await;
        let pause = "await new Promise((r) => setTimeout(r, 100));";
        window.run(pause).await;
    }
    window.debug("Performance.getMetrics", json!({})).await
}

fn metric(metrics: &Value, name: &str) -> f64 {
    let list = metrics["metrics"].as_array();
    let found = list.and_then(|list| list.iter().find(|metric| metric["name"] == name));
    found
        .and_then(|metric| metric["value"].as_f64())
        .unwrap_or_else(|| panic!("no {name}: {metrics}"))
}

impl std::fmt::Display for Held {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Self {
            heap,
            wasm,
            nodes,
            listeners,
        } = self;
        write!(
            f,
            "script {:.0} kB, wasm {:.0} kB, {nodes} nodes, {listeners} listeners",
            heap / 1e3,
            wasm / 1e3
        )
    }
}

/// Minutes of a long form.
pub(crate) fn minutes() -> f64 {
    std::env::var("AXLEWRIGHT_MINUTES").map_or(30.0, |text| {
        text.parse().expect("AXLEWRIGHT_MINUTES is a number")
    })
}

/// How often a long form looks.
const LOOK: Duration = Duration::from_secs(300);

/// Goes on with `act` for some minutes and tells every five what is held. `act` is given the number of
/// its round and tells how many things it did; what is held is measured at rest, after `rest`.
pub(crate) async fn go_on(
    window: &Window,
    minutes: f64,
    rest: &str,
    act: impl AsyncFn(u32) -> f64,
) -> (Held, Held) {
    window.run(rest).await;
    let first = Held::by(window).await;
    println!("start: {first}");
    let began = Instant::now();
    let (mut round, mut count, mut looks) = (0, 0.0, 1);
    while began.elapsed().as_secs_f64() < 60.0 * minutes {
        count += act(round).await;
        round += 1;
        if began.elapsed() > looks * LOOK {
            window.run(rest).await;
            let held = Held::by(window).await;
            println!("{} minutes, {count} acts: {held}", 5 * looks);
            assert_eq!(window.errors().await, json!([]));
            looks += 1;
        }
    }
    window.run(rest).await;
    let last = Held::by(window).await;
    let passed = began.elapsed().as_secs_f64() / 60.0;
    println!("end, {passed:.1} minutes, {count} acts: {last}");
    assert_eq!(window.errors().await, json!([]));
    assert!(count > 100.0, "only {count} acts");
    (first, last)
}
