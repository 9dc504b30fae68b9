//! A reader's way through a page: start, slider by mouse and keyboard, a typed value, a mistake, a
//! question; served, from the file system, and in a frame.

use crate::in_each_engine;
use axlewright_core::topic::TOPICS;
use axlewright_tests::engine::Browser;
use axlewright_tests::session::{Window, answer_of_program, site};
use serde_json::{Value, json};
use thirtyfour::prelude::*;
use thirtyfour::{Key, TypingData};

const TAG: &str = "axle-load-transfer";

async fn slider_value(window: &Window) -> f64 {
    let value = window
        .run(&format!(
            "return Number(document.querySelector('{TAG}').shadowRoot.querySelector('#acceleration-slider').value);"
        ))
        .await;
    value.as_f64().expect("a value")
}

/// Replaces what a field holds, with keys that every driver sends alike: a held Control is let go by the
/// key "null" in Chromium's alone.
async fn retype(field: &WebElement, text: &str) {
    let mut keys = TypingData::from(Key::End);
    for _ in 0..20 {
        keys = keys + Key::Backspace;
    }
    field
        .send_keys(keys + text + Key::Enter)
        .await
        .expect("typing");
}

/// The whole answer of the element, working and all, is the program's.
async fn agrees(window: &Window) {
    let seen = window
        .run(&format!(
            "const e = document.querySelector('{TAG}'); return [e.answer, e.scenario];"
        ))
        .await;
    let want = answer_of_program("load_transfer", &seen[1]);
    for name in ["front_axle_load", "rear_axle_load", "rear_to_front_ratio"] {
        assert!(want[name].is_number(), "{want}");
        assert_eq!(seen[0][name], want[name], "{name}");
    }
}

/// Slider by mouse and keys, typed value, mistake.
async fn moves_and_types(window: &Window) {
    let slider = window.inside(TAG, "#acceleration-slider").await;
    slider.scroll_into_view().await.expect("the slider is seen");
    let before = slider_value(window).await;
    window
        .driver
        .action_chain()
        .drag_and_drop_element_by_offset(&slider, 60, 0)
        .perform()
        .await
        .expect("a drag");
    let moved = slider_value(window).await;
    assert!(moved > before, "by mouse from {before} to {moved}");
    agrees(window).await;
    slider.send_keys(Key::Left + "").await.expect("a key");
    let stepped = slider_value(window).await;
    assert!(
        (stepped - (moved - 0.01)).abs() < 1e-9,
        "one step from {moved} is {stepped}"
    );
    slider.send_keys(Key::Home + "").await.expect("a key");
    let start = slider_value(window).await;
    assert!((start + 1.0).abs() < 1e-9, "full braking: {start}");
    agrees(window).await;

    let field = window.inside(TAG, "#mass-number").await;
    retype(&field, "4080 lb").await;
    let answer = window.answer(TAG).await;
    let load = |name: &str| answer[name].as_f64().expect("a load");
    let weight = 4080.0 * 0.453_592_37 * 9.81;
    let sum = load("front_axle_load") + load("rear_axle_load");
    assert!((sum - weight).abs() < 1e-6, "loads {sum}, weight {weight}");
    agrees(window).await;

    // A mistake: the field is marked, the last answer stays, and a good value clears it.
    retype(&field, "-5 kg").await;
    let marked = "const root = document.querySelector('axle-load-transfer').shadowRoot;\
        return [root.querySelector('#mass-number').getAttribute('aria-invalid') === 'true',\
          [...root.querySelectorAll('.problem, .refusal, [part~=problem]')].some((part) => part.textContent.includes('mass'))];";
    assert_eq!(window.run(marked).await, json!([true, true]));
    assert_eq!(
        window.answer(TAG).await["rear_axle_load"],
        answer["rear_axle_load"]
    );
    retype(&field, "1850 kg").await;
    assert_eq!(window.run(marked).await, json!([false, false]));
    agrees(window).await;
}

async fn starts_moves_and_types(browser: Browser) {
    let window = Window::open_in(browser, 1280, &[]).await;
    window.visit("watched.html").await;
    window.ready(TAG).await;
    let started = window
        .run(&format!(
            "const e = document.querySelector('{TAG}');\
             return [e.querySelector('p').checkVisibility(), e.shadowRoot.querySelectorAll('.figure svg').length, seen.memories.length];"
        ))
        .await;
    assert_eq!(started, json!([false, 1, 1]), "one instance, one figure");
    moves_and_types(&window).await;
    assert_eq!(window.errors().await, json!([]));
    let warned = window.run("return seen.warnings;").await;
    assert_eq!(warned, json!([]));
    assert_eq!(window.foreign_requests().await, json!([]));
    window.close().await;
}

/// A page of the site from the disk, then every topic in the one file.
async fn works_from_the_file_system(browser: Browser) {
    let window = Window::open_in(browser, 1280, &[]).await;
    window.visit_file("load-transfer.html").await;
    window.ready(TAG).await;
    moves_and_types(&window).await;
    let folder = tempfile::tempdir().expect("a folder");
    // Alone in its folder: nothing beside it can help.
    let file = folder.path().join("axlewright-offline.html");
    std::fs::copy(site().folder.join("axlewright-offline.html"), &file).expect("a copy");
    window.go(&format!("file://{}", file.display())).await;
    for topic in TOPICS {
        let slug = topic.slug();
        let told = window
            .run(&format!(
                "await customElements.whenDefined('{tag}'); location.hash = '{slug}';\
                 const e = document.getElementById('{slug}').querySelector('{tag}');\
                 for (let n = 0; n < 100 && !e.checkVisibility(); n += 1) await new Promise((r) => setTimeout(r, 20));\
                 return [await e.updateComplete, e.answer !== null, e.checkVisibility()];",
                tag = topic.tag()
            ))
            .await;
        assert_eq!(told, json!([true, true, true]), "{}", topic.name);
    }
    assert_eq!(window.foreign_requests().await, json!([]));
    window.close().await;
}

/// A number is predicted by keyboard; only then is there an answer.
async fn asks_a_question(browser: Browser) {
    let window = Window::open_in(browser, 1280, &[]).await;
    window.visit("question.html").await;
    window.ready(TAG).await;
    let state = "const e = document.querySelector('#number'); const root = e.shadowRoot;\
        return [e.answer?.rear_axle_load ?? null, root.querySelectorAll('.figure svg').length, e.score, e.scenario];";
    let hidden = window.run(state).await;
    assert_eq!([&hidden[0], &hidden[2]], [&Value::Null, &Value::Null]);
    assert_eq!(hidden[1], 0, "nothing is drawn");
    let field = window.inside("#number", "#prediction").await;
    field
        .send_keys("12.5 kN" + Key::Enter)
        .await
        .expect("typing");
    window
        .run("await new Promise((r) => setTimeout(r, 300));")
        .await;
    let shown = window.run(state).await;
    let right = answer_of_program("load_transfer", &hidden[3])["rear_axle_load"].clone();
    assert!(right.is_number());
    assert_eq!(shown[0], right);
    assert_eq!(shown[1], 1);
    assert_eq!(shown[2]["right"], right, "{shown}");
    assert_eq!(shown[2]["given"].as_f64(), Some(12_500.0), "{shown}");
    // The same seed asks every engine the same.
    let asked = window
        .run(
            "const [one, two] = ['same', 'again'].map((id) => document.getElementById(id)); await one.updateComplete; await two.updateComplete;\
             return [one, two].map((e) => e.shadowRoot.querySelector('.statement').textContent);",
        )
        .await;
    assert_eq!(asked[0], asked[1]);
    window.close().await;
}

/// One key on the slider of the frame. WebKit's driver cannot give the focus to a part of a frame with an
/// origin of its own, so there it is reached as a reader reaches it: key by key from the page.
async fn press_left_in_the_frame(browser: Browser, window: &Window) {
    let place =
        "return document.querySelector('axle-traction').shadowRoot.activeElement?.id ?? null;";
    if browser != Browser::WebKit {
        window.driver.enter_frame(0).await.expect("the frame");
        let slider = window.inside("axle-traction", "#friction-peak-slider");
        let pressed = slider.await.send_keys(Key::Left + "").await;
        pressed.expect("a key");
        window.driver.enter_default_frame().await.expect("back");
        return;
    }
    let press = async |key: Key| {
        let keys = window.driver.action_chain().send_keys(key + "");
        keys.perform().await.expect("a key");
    };
    for _ in 0..60 {
        press(Key::Tab).await;
        window.driver.enter_frame(0).await.expect("the frame");
        let at = window.run(place).await;
        window.driver.enter_default_frame().await.expect("back");
        if at == "friction-peak-slider" {
            return press(Key::Left).await;
        }
    }
    panic!("the slider is not reached by keys");
}

/// The frame in its sandbox tells its height, and what is done in it.
async fn works_in_a_frame(browser: Browser) {
    let window = Window::open_in(browser, 1280, &[]).await;
    window.visit("blank.html").await;
    let heard = window
        .run(
            "const heard = window.heard = []; addEventListener('message', (event) => heard.push([event.data, event.origin]));\
             const frame = Object.assign(document.createElement('iframe'), { src: 'embed/traction.html?vehicle=corrie&friction-peak=1.6&layout=F1', title: 'Traction', width: 900, height: 400 });\
             frame.sandbox = 'allow-scripts'; document.body.append(frame);\
             const find = (name) => heard.findLast(([data]) => data.event === name || data.height > 300 && data.type === name);\
             for (let n = 0; n < 400 && !(find('axle-answer') && find('axlewright-height')); n += 1) await new Promise((r) => setTimeout(r, 50));\
             return [find('axle-answer'), find('axlewright-height')];",
        )
        .await;
    assert_eq!(heard[0][1], "null", "an origin of its own: {heard}");
    let limit = heard[0][0]["detail"]["limits"]["F1R1"]["acceleration"].as_f64();
    // (1.6 − 0.01)·9.81: the example has a rolling resistance.
    assert!(
        (limit.expect("a limit") - 15.5979).abs() < 1e-9,
        "{limit:?}"
    );
    let height = heard[1][0]["height"].as_f64();
    assert!(height > Some(300.0), "{heard}");
    press_left_in_the_frame(browser, &window).await;
    window.driver.enter_frame(0).await.expect("the frame");
    let own = window.answer("axle-traction").await;
    // Its policy stands in the page itself: no tag without its mark, and no script in an attribute.
    let kept_out = window
        .run(
            "const inline = document.createElement('script'); inline.textContent = 'window.harm = 1;';\
             const other = Object.assign(document.createElement('script'), { src: '../watch.js' });\
             const told = new Promise((done) => { other.onload = () => done('loaded'); other.onerror = () => done('refused'); });\
             const place = document.createElement('div'); place.innerHTML = '<img src=data:x onerror=\"window.harm = 2\">';\
             document.body.append(inline, other, place); const answer = await told; await new Promise((r) => setTimeout(r, 200));\
             return [answer, window.harm ?? null, window.seen ?? null];",
        )
        .await;
    assert_eq!(kept_out, json!(["refused", null, null]));
    window.driver.enter_default_frame().await.expect("back");
    let change = window
        .run(
            "const find = () => heard.findLast(([data]) => data.event === 'axle-change');\
             for (let n = 0; n < 100 && !find(); n += 1) await new Promise((r) => setTimeout(r, 50));\
             return find()[0].detail;",
        )
        .await;
    assert_eq!(change["surface"]["friction_peak"], "1.59", "{change}");
    assert_eq!(own["scenario"]["surface"]["friction_peak"], "1.59");
    window.close().await;
}

in_each_engine! { starts_moves_and_types works_from_the_file_system asks_a_question works_in_a_frame }
