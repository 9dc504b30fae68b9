//! A talk on camera in each engine: a frame zooms its figure, and zoom is where engines differ.

use crate::in_each_engine;
use axlewright_tests::camera::{MEASURE, REST};
use axlewright_tests::engine::Browser;
use axlewright_tests::session::Window;
use serde_json::json;

/// A figure, a question, a chart, another topic: talk on the page, and step from 0.
const STATES: [(usize, usize); 4] = [(0, 1), (0, 3), (0, 5), (2, 3)];

async fn a_frame_holds_its_step_at_the_width_that_it_is_laid_out_for(browser: Browser) {
    let window = Window::open_in(browser, 1280, &[]).await;
    window.visit("talks.html").await;
    for (frame, laid) in [("16:9", 16.0 / 9.0), ("9:16", 9.0 / 16.0)] {
        for (talk, step) in STATES {
            let found = window
                .run(&format!(
                    "await customElements.whenDefined('axle-talk');\
                     const talk = document.querySelectorAll('axle-talk')[{talk}]; const root = talk.shadowRoot;\
                     talk.style.cssText = 'position: fixed; inset: 0; z-index: 9; max-inline-size: none; margin: 0';\
                     for (let i = 0; i < 200 && !talk.said; i++) await new Promise(r => setTimeout(r, 50));\
                     talk.setAttribute('frame', '{frame}'); talk.setAttribute('clean', '');\
                     await talk.goTo({step}); {REST}\
                     const found = await (async () => {{ {MEASURE} }})();\
                     talk.removeAttribute('frame'); talk.removeAttribute('clean'); talk.style.cssText = ''; return found;"
                ))
                .await;
            let place = format!(
                "{browser:?}, {frame}, talk {talk}, step {}: {found}",
                step + 1
            );
            assert_eq!(found["faults"], json!([]), "{place}");
            let side = |at: usize| found["size"][at].as_f64().expect("a size");
            assert!((side(0) / side(1) / laid - 1.0).abs() < 0.01, "{place}");
            assert!(found["share"].as_f64() > Some(0.4), "{place}");
        }
    }
    window.close().await;
}

in_each_engine!(a_frame_holds_its_step_at_the_width_that_it_is_laid_out_for);
