//! A talk on camera: both frames, every step of every talk of the site.

use axlewright_tests::camera::{MEASURE, REST};
use axlewright_tests::session::Window;
use serde_json::{Value, json};

/// Runs a script that knows one talk of the page as `talk` and its shadow root as `root`.
async fn within(window: &Window, talk: usize, script: &str) -> Value {
    let all = format!(
        "const talk = document.querySelectorAll('axle-talk')[{talk}]; const root = talk.shadowRoot;\
         const shown = (act) => new Promise((done) => {{\
           talk.addEventListener('axle-step', (event) => done(event.detail), {{ once: true }}); act(); }});\
         {script}"
    );
    window.run(&all).await
}

/// Opens the page of the talks and waits until one of them has begun; gives its number of steps.
async fn begun(window: &Window, talk: usize) -> u64 {
    let script = "await customElements.whenDefined('axle-talk');\
        for (let i = 0; i < 200 && !talk.said; i++) await new Promise(r => setTimeout(r, 50));\
        return talk.steps;";
    let steps = within(window, talk, script).await;
    steps.as_u64().expect("a number of steps")
}

/// A screen of the size that a camera takes at the least, with the talk over all of it.
async fn screen(window: &Window, talk: usize, frame: &str) {
    let (width, height) = if frame == "16:9" {
        (1280, 720)
    } else {
        (720, 1280)
    };
    let size = json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": false });
    window
        .debug("Emulation.setDeviceMetricsOverride", size)
        .await;
    let script = format!(
        "talk.setAttribute('frame', '{frame}'); talk.setAttribute('clean', '');\
         talk.style.cssText = 'position: fixed; inset: 0; z-index: 9; max-inline-size: none; margin: 0'; {REST}"
    );
    within(window, talk, &script).await;
}

#[tokio::test]
async fn nothing_of_a_step_leaves_the_safe_area_or_is_too_small() {
    let window = Window::open_with(1280, &["--force-prefers-reduced-motion"]).await;
    let mut faults = Vec::new();
    let mut seen = 0;
    for talk in 0..3 {
        for frame in ["16:9", "9:16"] {
            // A question is asked once: a page of its own for each frame.
            window.visit("talks.html").await;
            let steps = begun(&window, talk).await;
            screen(&window, talk, frame).await;
            for step in 0..steps {
                // A question is a state of its own; its answer follows.
                let script = format!(
                    "const told = await shown(() => talk.goTo({step})); {REST} return told;"
                );
                let told = within(&window, talk, &script).await;
                let mut states = vec!["shown"];
                if told["question"] == true {
                    states.insert(0, "asked");
                }
                for (at, state) in states.iter().enumerate() {
                    if at > 0 {
                        let script = format!("await shown(() => talk.forward()); {REST}");
                        within(&window, talk, &script).await;
                    }
                    let found = within(&window, talk, MEASURE).await;
                    let place = format!("talk {talk}, {frame}, step {} {state}", step + 1);
                    println!(
                        "{place}: {} texts, letters from {:.1} px, {:.2} of the width, {}",
                        found["texts"],
                        found["smallest"].as_f64().unwrap_or(0.0),
                        found["share"].as_f64().unwrap_or(0.0),
                        found["size"],
                    );
                    for fault in found["faults"].as_array().expect("a list") {
                        faults.push(format!("{place}: {fault}"));
                    }
                    seen += 1;
                }
            }
        }
    }
    assert!(seen >= 2 * (6 + 6 + 12), "only {seen} states");
    assert!(
        faults.is_empty(),
        "{} faults\n{}",
        faults.len(),
        faults.join("\n")
    );
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

/// Keeps pictures of every step in both frames, light, dark and transparent, to be looked at.
#[tokio::test]
#[ignore = "pictures for `AXLEWRIGHT_PICTURES=DIR`, to be looked at"]
async fn pictures_of_every_step() {
    let folder = std::env::var_os("AXLEWRIGHT_PICTURES").expect("AXLEWRIGHT_PICTURES is a folder");
    let window = Window::open_with(1280, &["--force-prefers-reduced-motion"]).await;
    window.visit("talks.html").await;
    for talk in 0..3 {
        let steps = begun(&window, talk).await;
        for (frame, name) in [("16:9", "wide"), ("9:16", "tall")] {
            for background in ["light", "dark", "transparent"] {
                screen(&window, talk, frame).await;
                let script = format!(
                    "talk.setAttribute('background', '{background}'); talk.style.backgroundImage = '{}';",
                    if background == "transparent" {
                        "linear-gradient(#9fd0a0, #d0b090)"
                    } else {
                        "none"
                    }
                );
                within(&window, talk, &script).await;
                for step in 0..steps {
                    let script = format!(
                        "const told = await shown(() => talk.goTo({step}));\
                         if (told.question) await shown(() => talk.forward()); {REST}\
                         const box = root.querySelector('.area').getBoundingClientRect();\
                         return {{ x: box.left, y: box.top, width: box.width, height: box.height, scale: 1 }};"
                    );
                    let clip = within(&window, talk, &script).await;
                    let taken = window
                        .debug(
                            "Page.captureScreenshot",
                            json!({ "clip": clip, "captureBeyondViewport": false }),
                        )
                        .await;
                    use base64::Engine as _;
                    let png = base64::engine::general_purpose::STANDARD
                        .decode(taken["data"].as_str().expect("data"))
                        .expect("a picture");
                    let file = format!("talk{talk}-{name}-{background}-{:02}.png", step + 1);
                    std::fs::write(std::path::Path::new(&folder).join(file), png).expect("kept");
                }
            }
        }
        within(
            &window,
            talk,
            "for (const name of ['frame', 'clean', 'background', 'style']) talk.removeAttribute(name);",
        )
        .await;
    }
    window.close().await;
}
