//! What a reader takes along: files by the buttons, a link, and what a page asks of an element.

use crate::in_each_engine;
use axlewright_tests::engine::Browser;
use axlewright_tests::run;
use axlewright_tests::session::Window;
use serde_json::{Value, json};

const TAG: &str = "axle-load-transfer";

/// Keeps what would be downloaded: name, type and text of each file, or the size of a picture.
const CATCH: &str = "window.caught = []; let blob; const old = URL.createObjectURL;\
    URL.createObjectURL = (given) => { blob = given; return old.call(URL, given); };\
    HTMLAnchorElement.prototype.click = async function () {\
      const file = { name: this.download, type: blob.type };\
      if (blob.type === 'image/png') { const { width, height } = await createImageBitmap(blob); file.size = [width, height]; }\
      else file.text = await blob.text();\
      window.caught.push(file); };";

async fn caught(window: &Window, act: &str) -> Value {
    window
        .run(&format!(
            "window.caught.length = 0; document.querySelector('{TAG}').shadowRoot.querySelector('[data-do=\"{act}\"]').click();\
             for (let n = 0; n < 200 && !window.caught.length; n += 1) await new Promise((r) => setTimeout(r, 50));\
             return window.caught[0] ?? null;"
        ))
        .await
}

async fn files_are_the_program_s(browser: Browser) {
    let window = Window::open_in(browser, 1280, &[]).await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    window.run(CATCH).await;
    let scenario = caught(&window, "toml").await;
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("taken.toml");
    std::fs::write(&path, scenario["text"].as_str().expect("a text")).expect("it is written");
    let path = path.to_str().expect("a path");
    let drawn = folder.path().join("drawn.svg");
    let drawn = drawn.to_str().expect("a path");

    let figure = caught(&window, "svg").await;
    let done = run(&["figure", "load_transfer", path, "-o", drawn]);
    assert_eq!(done.code, Some(0), "{}", done.stderr);
    let by_program = std::fs::read_to_string(drawn).expect("the figure");
    assert_eq!(figure["type"], "image/svg+xml", "{figure}");
    assert!(by_program.len() > 2000);
    assert!(figure["text"] == by_program, "the figure, byte by byte");

    let numbers = caught(&window, "json").await;
    let ours: Value =
        serde_json::from_str(numbers["text"].as_str().expect("a text")).expect("JSON");
    let done = run(&["answer", "load_transfer", path, "--format", "json"]);
    let theirs: Value = serde_json::from_str(&done.stdout).expect("JSON");
    assert!(theirs["rear_axle_load"].is_number());
    assert_eq!(ours["rear_axle_load"], theirs["rear_axle_load"]);
    let table = caught(&window, "csv").await;
    let text = table["text"].as_str().expect("a text");
    assert!(text.starts_with("path,quantity,value,unit\r\n"), "{text}");

    let png = caught(&window, "png 2").await;
    let side = |at: usize| png["size"][at].as_f64().expect("pixels");
    assert!(side(0) > 1000.0 && side(1) > 400.0, "{png}");
    let asked = window
        .run(
            "const e = document.querySelector('axle-load-transfer'); const picture = await e.figure('png');\
             const { width, height } = await createImageBitmap(picture); return [await e.table('csv'), picture.type, width, height];",
        )
        .await;
    assert_eq!(asked[0], table["text"]);
    assert_eq!(asked[1], "image/png");
    assert_eq!(json!([asked[2], asked[3]]), png["size"]);
    window.close().await;
}

in_each_engine! { files_are_the_program_s }
