//! The bench: every budget of speed, size and memory, measured and printed as one table.
//!
//! ```sh
//! cargo test -p axlewright-tests --test pace bench -- --ignored --nocapture
//! ```
//!
//! `AXLEWRIGHT_MINUTES` sets how long random input goes on; ten minutes for each topic are the measure.

use crate::measure::{
    IN_PARTS, SLIDERS, fumble, held, instructions, native_pace, number, place, slide, slow_down,
    wasm_pace,
};
use axlewright_core::topic::TOPICS;
use axlewright_tests::python;
use axlewright_tests::session::{Window, site};
use serde_json::{Value, json};
use std::collections::BTreeMap;
use std::time::Instant;

/// Steps of a slider.
const STEPS: u32 = 400;

fn row(what: &str, budget: &str, measured: &str) {
    println!("| {what} | {budget} | {measured} |");
}

fn step_text(times: &Value) -> String {
    let (median, p99) = (number(&times["median"]), number(&times["p99"]));
    format!("{median:.1} ms median, {p99:.1} ms 99th percentile")
}

/// One case in a reference script, less the start of Python \[ms\].
fn scipy_ms(script: &str, cases: impl Fn(usize) -> Value) -> f64 {
    const CASES: usize = 20;
    let run = |count: usize| {
        let text = cases(count).to_string();
        let began = Instant::now();
        assert!(python(script, &text).starts_with(['[', '{']));
        began.elapsed().as_secs_f64()
    };
    let idle_s = run(0);
    1e3 * (run(CASES) - idle_s) / CASES as f64
}

/// A case of a script that reads a list of them.
fn listed(case: Value) -> impl Fn(usize) -> Value {
    move |count| Value::from(vec![case.clone(); count])
}

/// Esker with a motor behind, as the reference test of the launch writes a case.
fn launch_case() -> Value {
    json!({
        "m": 1850.0, "L": 2.86, "a": 1.46, "h": 0.54, "R": 0.335, "J_w": 1.1, "J_m": 0.05,
        "T": 330.0, "P": 180e3, "i": 9.2, "eta": 1.0, "P_b": 1e12, "CdA": 0.56, "h_d": 0.5,
        "ClA_f": 0.0, "ClA_r": 0.0, "rho": 1.225, "f_r": 0.009, "k": 0.05, "N_0": 4500.0,
        "mu": 1.0, "sliding": 0.88, "peak_slip": 0.1, "relaxation": 0.3, "target": 0.1,
        "springs": { "f_front": 1.3, "f_rear": 1.5, "zeta": 0.3, "anti_lift": 0.1, "anti_squat": 0.2 },
        "theta": 0.0, "motors": [0, 1],
    })
}

/// Esker with a motor on each axle.
fn limit_case() -> Value {
    json!({
        "m": 1850.0, "L": 2.86, "a": 1.46, "h": 0.54, "theta": 0.0, "f_r": 0.009, "drag": 0.0,
        "drag_height": 0.5, "lift_front": 0.0, "lift_rear": 0.0, "k": 0.05, "N_0": 4500.0,
        "mu_left": 1.0, "mu_right": 1.0, "motors": [1, 1], "locked": [false, false], "share": null,
    })
}

/// Esker with a motor for each wheel, turning slowly.
fn turn_case() -> Value {
    json!({ "m": 1850.0, "L": 2.86, "a": 1.46, "t_f": 1.6, "t_r": 1.6, "mu_f": 0.88, "mu_r": 0.88, "q": 1.0 })
}

/// A motor with magnets in front and an induction motor behind, at a part of their torque.
fn split_case() -> Value {
    json!({
        "torque": 330.0, "power": 180e3, "copper_magnet": 0.05, "copper_induction": 0.08, "weakening": 0.02,
        "magnetising": 0.008, "hysteresis": 0.004, "eddy": 0.004, "bearing": 0.001, "windage": 0.001,
        "speed": 400.0, "wanted": 60.0, "drives": true, "machines": ["permanent_magnet", "induction"],
        "motors": [1.0, 1.0], "disconnect": [false, false],
    })
}

/// Ten seconds of the planar car in scipy, from the reference script's own clock \[ms\].
fn scipy_planar_ms() -> f64 {
    // Esker with a motor for each wheel, as the reference test writes a case, in the turn that
    // `core/examples/pace.rs` drives.
    let (speed, radius) = (20.0, 0.335);
    let (mut start, none) = (vec![0.0; 18], vec![0.0; 4]);
    start[3] = speed;
    start[6..10].fill(speed / radius);
    let case = json!({
        "m": 1850.0, "L": 2.86, "a": 1.46, "h": 0.54, "t_f": 1.6, "t_r": 1.6, "R": radius,
        "J": [3.2, 3.2, 3.2, 3.2], "I_z": 3100.0, "phi": 0.58, "f_r": 0.009, "rho": 1.225,
        "CdA": 0.56, "h_d": 0.5, "ClA_f": 0.0, "ClA_r": 0.0, "grade": 0.0, "mu": [1.0, 1.0],
        "sliding": 0.88, "k": 0.05, "N_0": 4500.0, "C": [8e4, 1e5], "peak_slip": 0.1,
        "relaxation": 0.3, "steer": [0.03, 0.03, 0.0, 0.0], "torque": none, "brake": none,
        "time": 10.0, "start": start,
    });
    let printed = python("cornering.py", &json!([case]).to_string());
    let answered: Value = serde_json::from_str(&printed).expect("the script prints JSON");
    1e3 * number(&answered["seconds"])
}

/// What a page fetches for one element of each topic, as a server would send it.
fn bytes() {
    let root = axlewright_tests::file("..").canonicalize();
    let folder = tempfile::tempdir().expect("a folder");
    let root = root.expect("the workspace is there");
    let built = axlewright_site::site::build(&root, folder.path(), &mut |line| eprintln!("{line}"));
    let elements = built.expect("the site builds").elements;
    for topic in TOPICS {
        let needed = elements.needed_brotli(topic.name) as f64 / 1e3;
        let what = format!("`<{}>`: script and wasm, with brotli", topic.tag());
        row(&what, "150 kB", &format!("{needed:.0} kB"));
    }
}

async fn steps(window: &Window) {
    for (tag, slider) in SLIDERS {
        place(window, tag).await;
        // The second start finds the script in the browser's store.
        let first_ms = place(window, tag).await;
        row(
            &format!("`{tag}`, first interactive"),
            "100 ms",
            &format!("{first_ms:.0} ms"),
        );
        // What is worked on over several frames answers when it is done.
        let steps = if tag == IN_PARTS { STEPS / 10 } else { STEPS };
        let seen = slide(window, slider, steps).await;
        let budget = match tag {
            IN_PARTS => "150 ms, and no frame lost",
            _ => "4 ms median, 8 ms 99th percentile",
        };
        row(
            &format!("`{tag}`, slider step: script"),
            budget,
            &step_text(&seen["script"]),
        );
        row("with style and layout", budget, &step_text(&seen["all"]));
        if tag == IN_PARTS {
            continue;
        }
        slow_down(window, 4).await;
        let seen = slide(window, slider, STEPS).await;
        slow_down(window, 1).await;
        row(
            "with style and layout, slowed four times",
            "16.7 ms",
            &step_text(&seen["all"]),
        );
    }
}

async fn fifty(window: &Window) {
    window.visit("blank.html").await;
    let seen = window
        .run(
            "const tags = ['load-transfer', 'traction', 'motor-split', 'launch', 'cornering', 'turn-in-place', 'idle-drag', 'packaging', 'choice'];\
             const fifty = Array.from({ length: 50 }, (_, at) => document.createElement(`axle-${tags[at % tags.length]}`));\
             document.body.append(...fifty); const began = performance.now();\
             await import(new URL('axlewright.js', location));\
             const live = await Promise.all(fifty.map((element) => element.updateComplete));\
             return { ms: performance.now() - began, live: live.every(Boolean), wasm: seen.memories[0].buffer.byteLength, instances: seen.memories.length };",
        )
        .await;
    assert_eq!(seen["live"], true);
    assert_eq!(seen["instances"], 1);
    row(
        "fifty elements of nine topics, all ready",
        "1500 ms",
        &format!("{:.0} ms", number(&seen["ms"])),
    );
    row(
        "their wasm memory",
        "64 MB",
        &format!("{:.1} MB", number(&seen["wasm"]) / 1e6),
    );
}

async fn random_input(window: &Window) {
    let minutes = std::env::var("AXLEWRIGHT_MINUTES").map_or(10.0, |text| {
        text.parse::<f64>().expect("AXLEWRIGHT_MINUTES is a number")
    });
    for (tag, _) in SLIDERS {
        place(window, tag).await;
        fumble(window, 20).await; // fills what is kept: a hundred steps to take back, the courses of runs
        let before = held(window).await;
        let mut count = 0.0;
        let parts = (6.0 * minutes).ceil() as u32; // a script may take half a minute
        for _ in 0..parts {
            count += fumble(window, (60.0 * minutes / f64::from(parts)) as u32).await;
        }
        let after = held(window).await;
        let kb = |bytes: f64| bytes / 1e3;
        let measured = format!(
            "{count} inputs, script {:.0} to {:.0} kB, wasm {:.0} to {:.0} kB",
            kb(before.0),
            kb(after.0),
            kb(before.1),
            kb(after.1)
        );
        row(
            &format!("`{tag}`, {minutes} minutes of random input"),
            "no growth, no error",
            &measured,
        );
        assert_eq!(window.errors().await, json!([]), "{tag}");
    }
}

async fn physics(window: &Window) {
    let native = native_pace();
    let wasm = wasm_pace(window, &native).await;
    let planar_ms = scipy_planar_ms();
    // In milliseconds; each script's first clock is its own.
    let scipy: BTreeMap<&str, f64> = BTreeMap::from([
        ("esker R1", scipy_ms("launch.py", listed(launch_case()))),
        ("planar 10 s", planar_ms),
        (
            "one traction limit",
            scipy_ms(
                "numeric.py",
                |count| json!({ "traction": vec![limit_case(); count], "turn_in_place": [] }),
            ),
        ),
        (
            "one steady turn",
            scipy_ms(
                "numeric.py",
                |count| json!({ "traction": [], "turn_in_place": vec![turn_case(); count] }),
            ),
        ),
        ("one best split", scipy_ms("split.py", listed(split_case()))),
    ]);
    for (at, ((name, times, native_us), wasm_us)) in native.iter().zip(wasm).enumerate() {
        let ratio = wasm_us / native_us;
        let mut measured =
            format!("{native_us:.1} µs natively, {wasm_us:.1} µs as wasm: {ratio:.2} times");
        if let Some(ms) = scipy.get(name.as_str()) {
            let longer = 1e3 * ms / native_us;
            measured += &format!("; scipy {ms:.2} ms, {longer:.0} times as long");
        }
        if let Some(count) = instructions(at) {
            let each = count / f64::from(*times) / 1e3;
            measured += &format!("; {each:.1} thousand instructions");
        }
        row(&format!("physics: {name}"), "1.5 times", &measured);
    }
    let planar = native.iter().find(|(name, ..)| name == "planar 10 s");
    let rate_ns = planar.map_or(f64::INFINITY, |part| 1e3 * part.2 / 40_000.0);
    row(
        "one planar derivative",
        "300 ns",
        &format!("{rate_ns:.0} ns natively"),
    );
}

#[tokio::test]
#[ignore = "takes an hour; it is a measurement, not a test"]
async fn bench() {
    site(); // built before anything is timed
    println!("| what | budget | measured |\n| --- | --- | --- |");
    bytes();
    let window = Window::open().await;
    physics(&window).await;
    steps(&window).await;
    fifty(&window).await;
    random_input(&window).await;
    window.close().await;
}
