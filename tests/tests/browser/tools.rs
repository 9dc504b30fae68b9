//! What a reader does with the whole element: steps back and forth, pins a state, takes files, copies
//! and a print along.

use axlewright_tests::run;
use axlewright_tests::session::Window;
use serde_json::{Value, json};
use thirtyfour::Key;

const TAG: &str = "axle-load-transfer";

/// Script that reads the shown acceleration, and nothing more.
const ACCELERATION: &str =
    "return document.querySelector('axle-load-transfer').scenario.load_transfer.acceleration;";

/// A script that clicks the button of a label in the first element of a tag.
fn click(tag: &str, label: &str) -> String {
    format!(
        "const root = document.querySelector('{tag}').shadowRoot;\
         const button = [...root.querySelectorAll('button, summary')].find(b => b.textContent === '{label}');\
         button.click(); await new Promise(r => setTimeout(r, 100));"
    )
}

async fn text(window: &Window, tag: &str, selector: &str) -> String {
    let part = window.inside(tag, selector).await;
    part.text().await.expect("a text")
}

/// Keeps what would be downloaded: name and text of each file.
const CATCH_FILES: &str = "window.caught = [];\
    const old = URL.createObjectURL;\
    let blob;\
    URL.createObjectURL = (given) => { blob = given; return old.call(URL, given); };\
    HTMLAnchorElement.prototype.click = async function () {\
      const file = { name: this.download, type: blob.type };\
      if (file.type === 'image/png') {\
        const { width, height } = await createImageBitmap(blob);\
        file.size = [width, height];\
      } else file.text = await blob.text();\
      window.caught.push(file);\
    };";

async fn caught(window: &Window, act: &str) -> Value {
    window
        .run(&format!(
            "window.caught.length = 0;\
             const root = document.querySelector('{TAG}').shadowRoot;\
             root.querySelector('[data-do=\"{act}\"]').click();\
             for (let i = 0; i < 100 && !window.caught.length; i++) await new Promise(r => setTimeout(r, 50));\
             return window.caught[0];"
        ))
        .await
}

#[tokio::test]
async fn steps_are_taken_back_and_done_again() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    let page_set = window.run(ACCELERATION).await;
    let slider = window.inside(TAG, "#acceleration-slider").await;
    slider
        .send_keys(Key::Right + Key::Right)
        .await
        .expect("keys");
    let first = window.run(ACCELERATION).await;
    assert_ne!(first, page_set);
    // A pause begins another step.
    window
        .run("await new Promise(r => setTimeout(r, 900));")
        .await;
    slider.send_keys(Key::Right + "").await.expect("keys");
    let second = window.run(ACCELERATION).await;
    assert_ne!(second, first);

    slider.send_keys(Key::Control + "z").await.expect("keys");
    assert_eq!(
        window.run(ACCELERATION).await,
        first,
        "one step back by key"
    );
    window.run(&click(TAG, "Undo")).await;
    assert_eq!(
        window.run(ACCELERATION).await,
        page_set,
        "a drag is one step"
    );
    window.run(&click(TAG, "Undo")).await;
    assert_eq!(window.run(ACCELERATION).await, page_set, "nothing is left");
    window.run(&click(TAG, "Redo")).await;
    assert_eq!(window.run(ACCELERATION).await, first);
    slider
        .send_keys(Key::Control + Key::Shift + "z")
        .await
        .expect("keys");
    assert_eq!(window.run(ACCELERATION).await, second, "forth by key");
    window.run(&click(TAG, "Reset all")).await;
    assert_eq!(window.run(ACCELERATION).await, page_set);
    // By script too, and a reset can be taken back.
    let by_script = format!(
        "const e = document.querySelector('{TAG}'); await e.undo(); const one = e.scenario;\
         await e.redo(); return [one.load_transfer.acceleration, e.scenario.load_transfer.acceleration];"
    );
    assert_eq!(window.run(&by_script).await, json!([second, page_set]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn an_element_fills_the_screen_and_gives_it_back() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    let state = format!(
        "const e = document.querySelector('{TAG}'); await new Promise(r => setTimeout(r, 500));\
         const box = e.getBoundingClientRect(); const svg = e.shadowRoot.querySelector('.figure svg').getBoundingClientRect();\
         return [document.fullscreenElement === e, box.left === 0 && box.top === 0 && box.width === innerWidth && box.height === innerHeight,\
           svg.left > 0 && svg.right < innerWidth && svg.width > 300, getComputedStyle(e).backgroundColor, e.answer.rear_axle_load];"
    );
    let before = window.run(&state).await;
    assert_eq!(before[0], false);
    // By hand: a browser lets no script do it.
    let button = window.inside(TAG, "[data-do=screen]").await;
    button.click().await.expect("a click");
    let filled = window.run(&state).await;
    assert_eq!(filled[0], true, "{filled}");
    assert_eq!(filled[1], true, "it fills the screen: {filled}");
    assert_eq!(filled[2], true, "the figure is in it: {filled}");
    assert_eq!(
        filled[3], "rgb(255, 255, 255)",
        "on its own paper: {filled}"
    );
    assert_eq!(filled[4], before[4]);
    let slider = window.inside(TAG, "#acceleration-slider").await;
    slider.send_keys(Key::Right + "").await.expect("a key");
    let moved = window.run(&state).await;
    assert_ne!(moved[4], before[4], "it works on there");
    let button = window.inside(TAG, "[data-do=screen]").await;
    button.click().await.expect("a click");
    let given_back = window.run(&state).await;
    assert_eq!(given_back[0], false, "{given_back}");
    assert_eq!(given_back[4], moved[4]);
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_pinned_state_stays_in_figure_chart_and_readouts() {
    let window = Window::open().await;
    window.visit("traction.html").await;
    window.ready("axle-traction").await;
    let rings = "return document.querySelector('axle-traction').shadowRoot.querySelectorAll('.figure circle').length;";
    let before = window.run(rings).await.as_u64().expect("a count");
    window.run(&click("axle-traction", "Pin this state")).await;
    assert!(
        text(&window, "axle-traction", ".pinned")
            .await
            .contains("the state that is shown"),
        "nothing differs yet"
    );
    let field = window
        .inside("axle-traction", "#friction-peak-number")
        .await;
    field
        .send_keys(Key::Control + "a" + Key::Null + "0.5" + Key::Enter)
        .await
        .expect("typing");
    let told = text(&window, "axle-traction", ".pinned").await;
    assert!(told.contains("1.00") && told.contains("0.500"), "{told}");
    let compared = window
        .run("return document.querySelector('axle-traction').answer.scenario.layouts.length;")
        .await;
    let after = window.run(rings).await.as_u64().expect("a count");
    assert_eq!(
        Some(after - before),
        compared.as_u64(),
        "a ring for each bar"
    );
    // The pinned number is the answer of the pinned scenario.
    let readout = text(&window, "axle-traction", ".readout em").await;
    let done = run(&[
        "answer",
        "traction",
        "--set",
        "vehicle.base=esker",
        "--set",
        "vehicle.rolling_resistance=0",
        "--set",
        "layouts=F1",
        "--format",
        "json",
    ]);
    let answer: Value = serde_json::from_str(&done.stdout).expect("JSON");
    let limit_g = answer["limits"]["F1"]["acceleration"]
        .as_f64()
        .expect("a number")
        / 9.81;
    assert!(
        readout.contains(&format!("{limit_g:.3}")),
        "{readout}, want {limit_g}"
    );
    window.run(&click("axle-traction", "Remove the pin")).await;
    assert_eq!(window.run(rings).await.as_u64(), Some(before));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn four_layouts_at_most_are_compared() {
    let window = Window::open().await;
    window.visit("traction.html").await;
    window.ready("axle-traction").await;
    let shown = "const root = document.querySelector('axle-traction').shadowRoot;\
        const boxes = [...root.querySelectorAll('.boxes label')];\
        return boxes.map(l => [l.textContent, l.firstElementChild.checked, l.firstElementChild.disabled]);";
    let boxes = window.run(shown).await;
    assert_eq!(boxes[0], json!(["F1", true, false]), "{boxes}");
    assert_eq!(
        boxes[1],
        json!(["R1", true, true]),
        "the layout of the figure stays"
    );
    assert_eq!(
        boxes[2],
        json!(["F2", false, true]),
        "four are ticked already"
    );
    window
        .run("document.querySelector('axle-traction').shadowRoot.querySelectorAll('.boxes input')[0].click();")
        .await;
    window
        .run("document.querySelector('axle-traction').shadowRoot.querySelectorAll('.boxes input')[5].click();")
        .await;
    let compared = window
        .run("return document.querySelector('axle-traction').answer.scenario.layouts;")
        .await;
    assert_eq!(compared, json!(["R1", "F1R1", "F1R2", "F2R2"]));
    window.close().await;
}

#[tokio::test]
async fn files_hold_what_is_shown_and_are_named_by_it() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    window.run(CATCH_FILES).await;
    let slider = window.inside(TAG, "#acceleration-slider").await;
    slider.send_keys(Key::Right + "").await.expect("keys");

    let scenario = caught(&window, "toml").await;
    assert_eq!(scenario["name"], "load-transfer-esker-scenario.toml");
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("taken.toml");
    std::fs::write(&path, scenario["text"].as_str().expect("a text")).expect("it is written");
    let path = path.to_str().expect("a path");

    // The scenario file gives the very same figure, chart and numbers by the program.
    for (act, name, view) in [
        ("svg", "load-transfer-esker-side.svg", "side"),
        ("chart-svg", "load-transfer-esker-chart.svg", "chart"),
    ] {
        let file = caught(&window, act).await;
        assert_eq!(file["name"], name);
        assert_eq!(file["type"], "image/svg+xml");
        let drawn = folder.path().join(name);
        let drawn = drawn.to_str().expect("a path");
        let done = run(&["figure", "load_transfer", path, "--view", view, "-o", drawn]);
        assert_eq!(done.code, Some(0), "{}", done.stderr);
        let by_program = std::fs::read_to_string(drawn).expect("the figure");
        assert!(
            file["text"] == by_program,
            "{name} differs from the program's"
        );
    }
    let file = caught(&window, "json").await;
    assert_eq!(file["name"], "load-transfer-esker-numbers.json");
    let ours: Value = serde_json::from_str(file["text"].as_str().expect("a text")).expect("JSON");
    let done = run(&["answer", "load_transfer", path, "--format", "json"]);
    let theirs: Value = serde_json::from_str(&done.stdout).expect("JSON");
    assert_eq!(ours["rear_axle_load"], theirs["rear_axle_load"]);
    let file = caught(&window, "csv").await;
    assert_eq!(file["name"], "load-transfer-esker-numbers.csv");
    assert!(
        file["text"]
            .as_str()
            .is_some_and(|t| t.starts_with("path,quantity,value,unit\r\n"))
    );

    let file = caught(&window, "chart-csv").await;
    assert_eq!(file["name"], "load-transfer-esker-chart.csv");
    let lines = file["text"].as_str().expect("a text").lines().count();
    assert!(lines > 2, "{file}");
    let file = caught(&window, "chart-json").await;
    let chart: Value = serde_json::from_str(file["text"].as_str().expect("a text")).expect("JSON");
    assert!(
        chart["lines"].as_array().is_some_and(|l| l.len() == 2),
        "{chart}"
    );

    // A picture of each size.
    let one = caught(&window, "png 1").await;
    for scale in 2..=4_u64 {
        let file = caught(&window, &format!("png {scale}")).await;
        assert_eq!(
            file["name"],
            format!("load-transfer-esker-side.{scale}x.png")
        );
        let side = |file: &Value, at: usize| file["size"][at].as_u64().expect("pixels");
        for at in 0..2 {
            assert_eq!(side(&file, at), scale * side(&one, at));
        }
    }
    assert!(
        text(&window, TAG, ".done").await.contains("4x.png"),
        "it says what it did"
    );
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_working_is_copied_and_a_print_holds_the_element_alone() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    window
        .run(&format!(
            "Object.defineProperty(navigator, 'clipboard', {{ value: {{ writeText: async t => {{ window.copied = t; }} }} }});\
             const root = document.querySelector('{TAG}').shadowRoot;\
             root.querySelectorAll('.readout')[1].open = true;\
             await new Promise(r => setTimeout(r, 200));"
        ))
        .await;
    window.run(&click(TAG, "Copy as LaTeX")).await;
    let done = run(&["answer", "load_transfer", "--format", "json"]);
    let answer: Value = serde_json::from_str(&done.stdout).expect("JSON");
    let steps = answer["working"].as_array().expect("steps");
    let last = |form: &str| {
        let step = steps.iter().find(|s| s["gives"] == "rear_axle_load");
        step.expect("the step")[form]
            .as_str()
            .expect("a text")
            .to_owned()
    };
    let copied = window.run("return window.copied;").await;
    let latex = copied.as_str().expect("a text");
    assert!(latex.contains("\\frac"), "{latex}");
    // The page's own acceleration is the example's: the program writes the same line.
    assert_eq!(latex.lines().last(), last("latex").lines().last());
    window.run(&click(TAG, "Copy as text")).await;
    let copied = window.run("return window.copied;").await;
    assert_eq!(
        copied.as_str().and_then(|t| t.lines().last()),
        last("equation").lines().last()
    );
    assert_eq!(text(&window, TAG, ".done").await, "Copied.");

    // Printing is caught in the frame that holds the element alone.
    let printed = window
        .run(&format!(
            "const seen = new Promise(done => {{\
               document.body.append = frame => {{\
                 document.body.appendChild(frame);\
                 const w = frame.contentWindow;\
                 w.print = () => {{\
                   const shown = w.getComputedStyle(w.document.querySelector('.figure')).display;\
                   done([w.document.body.textContent.includes('Caution'), w.document.querySelectorAll('svg').length,\
                     w.document.title, shown]);\
                   w.dispatchEvent(new Event('afterprint'));\
                 }};\
               }};\
             }});\
             document.querySelector('{TAG}').shadowRoot.querySelector('[data-do=print]').click();\
             const result = await seen; await new Promise(r => setTimeout(r, 100));\
             return [...result, document.querySelectorAll('iframe').length];"
        ))
        .await;
    assert_eq!(printed[0], true, "the caution is printed too: {printed}");
    assert_eq!(printed[1], 1, "{printed}");
    assert!(
        printed[2].as_str().is_some_and(|t| t.contains("rear axle")),
        "{printed}"
    );
    assert_eq!(printed[4], 0, "the frame goes: {printed}");
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}
