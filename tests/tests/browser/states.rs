//! Every element in every state and every way of showing it: no rule of axe-core is broken, and nothing
//! makes the page scroll sideways.

use crate::access::judged;
use axlewright_core::topic::TOPICS;
use axlewright_tests::session::{Window, needed};
use serde_json::json;
use thirtyfour::extensions::cdp::ChromeDevTools;

/// A state, and the script that brings a fresh element `e` into it; `root` is its shadow root.
const STATES: &[(&str, &str)] = &[
    ("default", ""),
    (
        "changed",
        "const r = root.querySelector('input[type=range]'); r.value = r.max;\
         r.dispatchEvent(new Event('input'));",
    ),
    (
        "error",
        "const n = root.querySelector('.number'); n.value = 'heavy';\
         n.dispatchEvent(new Event('change'));",
    ),
    (
        "compare",
        "await e.pin(); root.querySelector('.share').open = true;\
         const r = root.querySelector('input[type=range]'); r.value = r.min;\
         r.dispatchEvent(new Event('input'));",
    ),
    (
        "working",
        "root.querySelector('details.readout').open = true;",
    ),
    ("data", "root.querySelector('.data').open = true;"),
    (
        "question",
        "e.setAttribute('question', 'any 7'); await new Promise(r => setTimeout(r, 50));\
         root.querySelector('.hint')?.click();",
    ),
];

/// Media features: name and value.
type Features = &'static [(&'static str, &'static str)];

/// A way of showing: its name, the width, the media features, the size of the text in per cent.
const WAYS: &[(&str, u32, Features, u32)] = &[
    ("light", 1280, &[("prefers-color-scheme", "light")], 100),
    ("dark", 1280, &[("prefers-color-scheme", "dark")], 100),
    ("forced colours", 1024, &[("forced-colors", "active")], 100),
    ("320 px", 320, &[("prefers-color-scheme", "light")], 100),
    ("200 % text", 640, &[("prefers-color-scheme", "light")], 200),
];

async fn show(window: &Window, width: u32, features: &[(&str, &str)]) {
    let tools = ChromeDevTools::new(window.driver.handle.clone());
    let features: Vec<_> = features
        .iter()
        .map(|(name, value)| json!({ "name": name, "value": value }))
        .collect();
    for (command, parameters) in [
        (
            "Emulation.setEmulatedMedia",
            json!({ "features": features }),
        ),
        (
            "Emulation.setDeviceMetricsOverride",
            json!({ "width": width, "height": 900, "deviceScaleFactor": 1, "mobile": false }),
        ),
    ] {
        let done = tools.execute_cdp_with_params(command, parameters).await;
        done.unwrap_or_else(|e| panic!("{command}: {e}"));
    }
}

#[tokio::test]
async fn no_rule_is_broken_in_any_state() {
    let axe = needed(&axlewright_tests::file("node_modules/axe-core/axe.min.js"));
    let window = Window::open().await;
    for (way, width, features, text) in WAYS {
        show(&window, *width, features).await;
        window.visit("one.html").await;
        let axe_loaded = window.driver.execute(&axe, Vec::new()).await;
        axe_loaded.expect("axe-core loads");
        for topic in TOPICS {
            for (state, script) in STATES {
                let wide = window
                    .run(&format!(
                        "document.documentElement.style.fontSize = '{text}%';\
                         const e = document.createElement('{}');\
                         document.querySelector('#place').replaceChildren(e);\
                         await e.updateComplete; const root = e.shadowRoot;\
                         {script} await new Promise(r => setTimeout(r, 120));\
                         const d = document.documentElement; return d.scrollWidth - d.clientWidth;",
                        topic.tag()
                    ))
                    .await;
                let found = judged(&window, "'#place'").await;
                let case = format!("{} {state}, {way}", topic.name);
                assert!(
                    found[0].as_u64() > Some(12),
                    "{case}: axe-core checked too little: {found}"
                );
                assert_eq!(found[1], json!([]), "{case}");
                assert!(
                    wide.as_i64().is_some_and(|wide| wide <= 0),
                    "{case} scrolls sideways: {wide}"
                );
            }
        }
    }
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}
