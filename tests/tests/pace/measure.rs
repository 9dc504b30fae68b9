//! What the elements cost in the browser. The bench prints it in full; a test runs a short form of it.

use axlewright_tests::session::Window;
use serde_json::{Value, json};

/// Each topic's page part: its tag, and the slider that is moved.
pub(crate) const SLIDERS: [(&str, &str); 9] = [
    ("axle-load-transfer", "acceleration"),
    ("axle-traction", "cg-height"),
    ("axle-motor-split", "cg-height"),
    ("axle-launch", "mass"),
    ("axle-cornering", "roll-stiffness-front-share"),
    ("axle-turn-in-place", "mass"),
    ("axle-idle-drag", "mass"),
    ("axle-packaging", "motor-power"),
    (IN_PARTS, "motor-torque"),
];

/// The element that works on its answer a little in every frame.
pub(crate) const IN_PARTS: &str = "axle-choice";

pub(crate) fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or(f64::INFINITY)
}

/// A page that holds one element and what measures it; how long the element took from the script on,
/// which the browser has in its store by then \[ms\].
pub(crate) async fn place(window: &Window, tag: &str) -> f64 {
    window.visit("blank.html").await;
    let began = window
        .run(&format!(
            "await new Promise((done, fail) => {{ const script = document.createElement('script');\
               Object.assign(script, {{ src: 'measure.js', onload: done, onerror: fail }}); document.head.append(script); }});\
             globalThis.element = document.createElement('{tag}'); document.body.append(element);\
             const began = performance.now(); await import(new URL('axlewright.js', location));\
             if (!await element.updateComplete) throw new Error('not started');\
             return performance.now() - began;"
        ))
        .await;
    number(&began)
}

/// Slows the page's processor down by a factor; 1 is full speed.
pub(crate) async fn slow_down(window: &Window, factor: u32) {
    let rate = json!({ "rate": factor });
    window.debug("Emulation.setCPUThrottlingRate", rate).await;
}

/// Times of slider steps \[ms\]: `{ script: { median, p99, most }, all: …, answers, steps }`.
pub(crate) async fn slide(window: &Window, slider: &str, steps: u32) -> Value {
    let seen = window
        .run(&format!(
            "await measure.slide(element, '{slider}', 30); return await measure.slide(element, '{slider}', {steps});"
        ))
        .await;
    assert_eq!(seen["answers"], seen["steps"], "a step without an answer");
    seen
}

/// Bytes that the page holds after the garbage has gone: script, then wasm.
pub(crate) async fn held(window: &Window) -> (f64, f64) {
    window.debug("Performance.enable", json!({})).await;
    for _ in 0..3 {
        window.debug("HeapProfiler.collectGarbage", json!({})).await;
        window.run("await measure.frame();").await;
    }
    let metrics = window.debug("Performance.getMetrics", json!({})).await;
    let heap = metrics["metrics"].as_array().and_then(|list| {
        let found = list.iter().find(|m| m["name"] == "JSHeapUsedSize")?;
        found["value"].as_f64()
    });
    let wasm = window
        .run("return seen.memories[0].buffer.byteLength;")
        .await;
    (heap.unwrap_or(f64::INFINITY), number(&wasm))
}

/// Random input for some seconds; tells how many inputs there were.
pub(crate) async fn fumble(window: &Window, seconds: u32) -> f64 {
    let count = window
        .run(&format!(
            "return await measure.fumble(element, {seconds}, 7);"
        ))
        .await;
    number(&count)
}

/// Microseconds of each part of `core/examples/pace.rs`, natively in a release build.
pub(crate) fn native_pace() -> Vec<(String, u32, f64)> {
    let printed = cargo(&["run", "--release", "--example", "pace"]);
    let list: Vec<Value> = serde_json::from_str(&printed).expect("pace prints JSON");
    let parts = list.iter().map(|part| {
        let times = part["times"].as_u64().expect("a count") as u32;
        let name = part["name"].as_str().expect("a name");
        (name.to_owned(), times, number(&part["us"]))
    });
    parts.collect()
}

/// Instructions of one go of a part, counted by valgrind where that is installed: what a second go adds.
pub(crate) fn instructions(part: usize) -> Option<f64> {
    let program = axlewright_tests::file("../target/release/examples/pace");
    let counted = |goes: &str| {
        let done = std::process::Command::new("valgrind")
            .args(["--tool=callgrind", "--callgrind-out-file=/dev/null"])
            .arg(&program)
            .args([part.to_string().as_str(), goes])
            .output()
            .ok()?;
        let told = String::from_utf8_lossy(&done.stderr).into_owned();
        let (_, after) = told.split_once("Collected :")?;
        after.split_whitespace().next()?.parse::<f64>().ok()
    };
    Some(counted("2")? - counted("1")?)
}

/// The same in the browser, built and made smaller as the elements are.
pub(crate) async fn wasm_pace(window: &Window, native: &[(String, u32, f64)]) -> Vec<f64> {
    let build = [
        "build",
        "--example",
        "pace",
        "--target",
        "wasm32-unknown-unknown",
        "--profile",
        "elements",
    ];
    cargo(&build);
    let root = axlewright_tests::file("..");
    let built = root.join("target/wasm32-unknown-unknown/elements/examples/pace.wasm");
    let small = axlewright_tests::session::site().folder.join("pace.wasm");
    let program = axlewright_site::toolchain::find_wasm_opt(&root).expect("tests/run installs it");
    let done = std::process::Command::new(program)
        .args(["-Oz", "-o"])
        .args([&small, &built])
        .status();
    assert!(done.expect("wasm-opt starts").success());
    window.visit("blank.html").await;
    let times: Vec<u32> = native.iter().map(|(_, times, _)| *times).collect();
    let seen = window
        .run(&format!(
            "const {{ instance }} = await WebAssembly.instantiate(await (await fetch('pace.wasm')).arrayBuffer(), {{}});\
             const times = {times:?}; const least = times.map(() => Infinity);\
             for (let round = 0; round < 9; round += 1) {{\
               for (const [at, count] of times.entries()) {{\
                 const began = performance.now();\
                 if (instance.exports.main(0, 0)) throw new Error('no answer');\
                 least[at] = Math.min(least[at], 1000 * (performance.now() - began) / count);\
               }}\
             }}\
             return least;"
        ))
        .await;
    let seen = seen.as_array().expect("a list");
    assert_eq!(seen.len(), native.len());
    seen.iter().map(number).collect()
}

/// Runs cargo on the core and gives what it printed.
fn cargo(arguments: &[&str]) -> String {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let output = std::process::Command::new(cargo)
        .args(arguments)
        .args(["--quiet", "--package", "axlewright-core", "--manifest-path"])
        .arg(axlewright_tests::file("../Cargo.toml"))
        .arg("--target-dir")
        .arg(axlewright_tests::file("../target"))
        .output()
        .expect("cargo can be run");
    let told = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{told}");
    String::from_utf8_lossy(&output.stdout).into_owned()
}
