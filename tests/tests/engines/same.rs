//! The same numbers and the same drawings, to the bit, whatever the engine.

use axlewright_core::topic::TOPICS;
use axlewright_tests::engine::Browser;
use axlewright_tests::session::Window;
use serde_json::{Value, json};

/// Some scenarios of a topic, as attributes. Each has its own slope, friction and mass, so that no number
/// is round.
const SETTINGS: [&str; 3] = [
    "{ vehicle: 'esker' }",
    "{ vehicle: 'corrie', mass: '1437.3 kg', grade: '3.7 %' }",
    "{ vehicle: 'moraine', 'friction-peak': '0.61', lang: 'de', units: 'us' }",
];

/// Text of the answer, every figure and table of each topic in each setting.
async fn everything(browser: Browser) -> Vec<(String, Value)> {
    let window = Window::open_in(browser, 1280, &[]).await;
    let mut all = Vec::new();
    for topic in TOPICS {
        window.visit("blank.html").await;
        window.bring_elements().await;
        for setting in SETTINGS {
            // A steady turn is on level ground, and refuses any other.
            let setting = match topic.name {
                "cornering" => setting.replace("grade: '3.7 %'", "speed: '61.3 km/h'"),
                _ => setting.to_owned(),
            };
            let told = window
                .run(&format!(
                    "document.body.replaceChildren();\
                     const e = document.createElement('{}'); e.style.width = '900px';\
                     for (const [name, value] of Object.entries({setting})) e.setAttribute(name, value);\
                     document.body.append(e); if (!await e.updateComplete) throw new Error('not started');\
                     return {{ answer: JSON.stringify(e.answer), svg: await e.figure('svg'),\
                       csv: await e.table('csv'), said: e.shadowRoot.querySelector('.readouts').textContent }};",
                    topic.tag()
                ))
                .await;
            assert!(told["answer"].as_str().is_some_and(|text| text.len() > 500));
            assert!(
                told["svg"]
                    .as_str()
                    .is_some_and(|text| text.starts_with("<svg"))
            );
            assert!(told["csv"].as_str().is_some_and(|text| text.len() > 100));
            all.push((format!("{} {setting}", topic.name), told));
        }
    }
    assert_eq!(window.errors().await, json!([]), "{browser:?}");
    window.close().await;
    all
}

#[tokio::test]
async fn numbers_figures_and_tables_are_the_same_to_the_bit() {
    let first = everything(Browser::Chromium).await;
    for browser in [Browser::Firefox, Browser::WebKit] {
        let other = everything(browser).await;
        assert_eq!(first.len(), other.len());
        for ((name, ours), (_, theirs)) in first.iter().zip(&other) {
            for part in ["answer", "svg", "csv", "said"] {
                assert!(
                    ours[part] == theirs[part],
                    "{browser:?} {name} {part}:\n{}\n{}",
                    ours[part],
                    theirs[part]
                );
            }
        }
    }
}
