//! Every whole element as a browser paints it, in light, in dark and for print, against the pictures that
//! are kept in `tests/snapshots`.
//!
//! `AXLEWRIGHT_REFRESH=1 cargo test -p axlewright-tests --test browser kept` keeps what is painted now.

use axlewright_core::topic::TOPICS;
use axlewright_tests::picture_differs;
use axlewright_tests::session::Window;
use base64::Engine;
use serde_json::{Value, json};

/// A look: its name, the medium, the colours that the reader prefers.
const LOOKS: [(&str, &str, &str); 3] = [
    ("light", "screen", "light"),
    ("dark", "screen", "dark"),
    ("print", "print", "light"),
];

/// Letters and lines alike on every machine: no hinting and no colours from the screen's own grid.
const PLAIN: &[&str] = &[
    "--font-render-hinting=none",
    "--disable-lcd-text",
    "--hide-scrollbars",
    "--force-color-profile=srgb",
];

/// Share of the pixels that may differ: soft edges of another version of the browser, and no more than
/// a short word.
const SHARE: f64 = 0.0005;

/// Whether the font of the page is there: with it, letters are as wide whatever comes after it.
const HAS_FONT: &str = "const pen = document.createElement('canvas').getContext('2d');\
     const wide = (font) => { pen.font = `16px ${font}`; return pen.measureText('Traction limit').width; };\
     return wide('\"DejaVu Sans\", monospace') === wide('\"DejaVu Sans\", serif')\
     && wide('monospace') !== wide('serif');";

async fn show(window: &Window, medium: &str, colours: &str) {
    let features = json!([{ "name": "prefers-color-scheme", "value": colours }]);
    let media = json!({ "media": medium, "features": features });
    window.debug("Emulation.setEmulatedMedia", media).await;
}

/// The element alone with the paper around it, as a PNG file.
async fn painted(window: &Window) -> Vec<u8> {
    let place = window
        .run(
            "await document.fonts.ready;\
             for (let i = 0; i < 3; i++) await new Promise(requestAnimationFrame);\
             await new Promise(r => setTimeout(r, 150));\
             const box = document.querySelector('#place').getBoundingClientRect();\
             return { x: 0, y: 0, width: box.width, height: Math.round(box.height), scale: 1 };",
        )
        .await;
    let wanted = json!({ "format": "png", "clip": place, "captureBeyondViewport": true });
    let taken = window.debug("Page.captureScreenshot", wanted).await;
    let data = taken["data"].as_str().expect("a picture");
    let engine = base64::engine::general_purpose::STANDARD;
    engine.decode(data).expect("base64")
}

#[tokio::test]
async fn elements_look_as_kept() {
    let window = Window::open_with(1280, PLAIN).await;
    window
        .debug(
            "Emulation.setDeviceMetricsOverride",
            json!({ "width": 720, "height": 900, "deviceScaleFactor": 1, "mobile": false }),
        )
        .await;
    window.visit("kept.html").await;
    let has_font = window.run(HAS_FONT).await;
    assert_eq!(has_font, true, "fonts-dejavu-core: tests/run installs it");
    let mut wrong = Vec::new();
    for topic in TOPICS {
        let tag = topic.tag();
        window
            .run(&format!(
                "document.querySelector('#place').replaceChildren(document.createElement('{tag}'));"
            ))
            .await;
        window.ready(&tag).await;
        for (look, medium, colours) in LOOKS {
            show(&window, medium, colours).await;
            let name = format!("{}-element-{look}", topic.name).replace('_', "-");
            wrong.extend(picture_differs(&name, &painted(&window).await, SHARE));
        }
        show(&window, "screen", "light").await;
    }
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

/// The comparison sees what a reader would: another colour of one axle, or a control that is gone.
#[tokio::test]
async fn another_look_is_noticed() {
    let window = Window::open_with(1280, PLAIN).await;
    window.visit("kept.html").await;
    window
        .run("document.querySelector('#place').replaceChildren(document.createElement('axle-load-transfer'));")
        .await;
    window.ready("axle-load-transfer").await;
    let before = axlewright_tests::Picture::read(&painted(&window).await);
    for spoil in [
        "e.style.setProperty('--axle-rear', '#0072b2');",
        "e.shadowRoot.querySelector('.control').style.visibility = 'hidden';",
    ] {
        let script = format!(
            "const e = document.querySelector('axle-load-transfer'); {spoil} await new Promise(r => setTimeout(r, 50)); return null;"
        );
        assert_eq!(window.run(&script).await, Value::Null);
        let now = axlewright_tests::Picture::read(&painted(&window).await);
        let (share, _) = before.difference(&now).expect("one size");
        assert!(share > SHARE, "{spoil} {share}");
    }
    window.close().await;
}
