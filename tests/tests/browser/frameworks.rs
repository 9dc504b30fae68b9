//! A plain React page and a plain Vue page, bundled from npm, drive the elements as such pages do.

use crate::sliders::retype;
use axlewright_tests::session::{Window, answer_of_program, site};
use serde_json::{Value, json};
use std::process::Command;

/// Bundles a script of the test pages with what it imports, into the served site.
fn bundle(source: &str) {
    let program = axlewright_tests::file("node_modules/.bin/esbuild");
    assert!(
        program.exists(),
        "{} is not there; `bash tests/run` installs it",
        program.display()
    );
    let name = source.split('.').next().unwrap_or(source);
    let out = site().folder.join(format!("{name}.bundle.js"));
    let done = Command::new(program)
        .arg(axlewright_tests::file("pages").join(source))
        .args([
            "--bundle",
            "--minify",
            "--format=iife",
            "--jsx=automatic",
            "--log-level=warning",
        ])
        .args([
            "--define:process.env.NODE_ENV=\"production\"",
            "--define:__VUE_OPTIONS_API__=true",
        ])
        .args([
            "--define:__VUE_PROD_DEVTOOLS__=false",
            "--define:__VUE_PROD_HYDRATION_MISMATCH_DETAILS__=false",
        ])
        .arg(format!("--outfile={}", out.display()))
        .output()
        .expect("esbuild runs");
    assert!(
        done.status.success(),
        "{}",
        String::from_utf8_lossy(&done.stderr)
    );
}

/// The program's number for a scenario.
fn program_number(topic: &str, scenario: &Value, pointer: &str) -> Value {
    answer_of_program(topic, scenario)
        .pointer(pointer)
        .cloned()
        .expect("a number")
}

fn ratio(acceleration: &str) -> Value {
    let scenario = json!({ "vehicle": { "base": "esker" }, "load_transfer": { "acceleration": acceleration } });
    program_number("load_transfer", &scenario, "/rear_to_front_ratio")
}

fn limit(base: &str) -> Value {
    let scenario = json!({ "vehicle": { "base": base } });
    program_number("traction", &scenario, "/limits/R1/acceleration")
}

fn turning(base: &str, mass: &str) -> Value {
    let scenario = json!({ "vehicle": { "base": base, "mass": mass } });
    program_number("turn_in_place", &scenario, "/tractive_force_per_wheel")
}

const READ: &str = "
    await customElements.whenDefined('axle-traction');
    const all = [...document.querySelectorAll('#app *')].filter((e) => e.localName.startsWith('axle-'));
    for (const e of all) if (!await e.updateComplete) throw new Error('not started');
    await new Promise((r) => setTimeout(r, 50));
    return {
      ratio: document.querySelector('#attributes').answer.rear_to_front_ratio,
      limit: document.querySelector('#property')?.answer.limits.R1.acceleration ?? null,
      list: [...document.querySelectorAll('li > *')].map((e) => e.answer.scenario.vehicle.base),
      forces: [...document.querySelectorAll('li > *')].map((e) => e.answer.tractive_force_per_wheel),
    };";

async fn set(window: &Window, change: Value) -> Value {
    window
        .run(&format!("await page.set({change}); {READ}"))
        .await
}

async fn journey(page: &str, source: &str) {
    bundle(source);
    let window = Window::open().await;
    window.visit(page).await;
    let seen = window.run(READ).await;
    assert_eq!(
        seen["ratio"],
        ratio("0.4 g"),
        "attributes reach the element"
    );
    assert_eq!(
        seen["limit"],
        limit("kame"),
        "the property reaches it as an object"
    );
    assert_eq!(seen["list"], json!(["kame", "corrie", "moraine"]));
    let forces = seen["forces"].clone();
    assert!(forces[0].as_f64() > Some(0.0), "{seen}");

    let seen = set(
        &window,
        json!({ "acceleration": "0.7 g", "base": "corrie" }),
    )
    .await;
    assert_eq!(seen["ratio"], ratio("0.7 g"), "state reaches the attribute");
    assert_eq!(seen["limit"], limit("corrie"), "and the property");
    assert_ne!(limit("corrie"), limit("kame"));
    assert_ne!(
        limit("kame"),
        limit("esker"),
        "the example must not pass for it"
    );

    // The reader changes one of the list; a keyed list that is put in another order keeps that.
    let field = window.inside("#kame", "#mass-number").await;
    retype(&field, "1234 kg").await;
    let seen = set(&window, json!({ "order": ["moraine", "kame", "corrie"] })).await;
    assert_eq!(seen["list"], json!(["moraine", "kame", "corrie"]));
    assert_eq!(seen["forces"][0], forces[2]);
    assert_eq!(seen["forces"][1], turning("kame", "1234 kg"));
    assert_eq!(seen["forces"][2], forces[1]);

    // The page hears the reader, and the reader's value gives way to the page's next one.
    let field = window.inside("#attributes", "#acceleration-number").await;
    retype(&field, "0.3 g").await;
    let heard = window
        .run("await new Promise((r) => setTimeout(r, 50)); return [page.heard.changes.length, page.heard.changes.at(-1)?.load_transfer.acceleration, page.heard.answers.at(-1)];")
        .await;
    assert_eq!(heard, json!([1, "0.3 g", ratio("0.3 g")]));
    let seen = set(&window, json!({ "acceleration": "0.2 g", "open": false })).await;
    assert_eq!(seen["ratio"], ratio("0.2 g"));
    assert_eq!(seen["limit"], json!(null));
    let seen = set(&window, json!({ "open": true, "order": ["corrie"] })).await;
    assert_eq!(
        seen["limit"],
        limit("corrie"),
        "rendered again with its property"
    );
    assert_eq!(seen["list"], json!(["corrie"]));

    let seen = window
        .run(
            "const kept = [...document.querySelectorAll('axle-load-transfer, axle-traction')];\
             page.unmount(); await new Promise((r) => setTimeout(r, 50));\
             return [document.querySelector('#app').childElementCount, kept.map((e) => e.answer), seen.memories.length];",
        )
        .await;
    assert_eq!(
        seen,
        json!([0, [null, null], 1]),
        "all unmounted, one instance"
    );
    assert_eq!(window.errors().await, json!([]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_react_page_drives_the_elements() {
    journey("react.html", "react.jsx").await;
}

#[tokio::test]
async fn a_vue_page_drives_the_elements() {
    journey("vue.html", "vue.js").await;
}
