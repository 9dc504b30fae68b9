//! A question that asks for a line: drawn by mouse, by finger and by keyboard over empty axes, then judged
//! and shown beside the true one.

use crate::access::judged;
use axlewright_core::question::{Asked, PLACES, Question};
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_core::{Scenario, topic};
use axlewright_tests::session::{Window, needed};
use serde_json::{Value, json};
use thirtyfour::{Key, TypingData};

/// What the page asks, made natively.
fn asked() -> Asked {
    let topic = topic::find("load_transfer").expect("the topic");
    let mut base = Scenario::default();
    base.set("vehicle.base", "esker").expect("a vehicle");
    Question::make(topic, "sketch_rear_load", Some(7), &base).expect("a question")
}

async fn of(window: &Window, script: &str) -> Value {
    let script = format!(
        "const e = document.querySelector('#line'), root = e.shadowRoot, pad = root.querySelector('.pad'),\
         holds = [...root.querySelectorAll('.pad input')], rest = (ms) => new Promise(r => setTimeout(r, ms)); {script}"
    );
    window.run(&script).await
}

async fn open(window: &Window) {
    window.visit("sketch.html").await;
    window.ready("axle-load-transfer").await;
    of(
        window,
        "globalThis.scores = []; addEventListener('axle-score', e => scores.push(e.detail));\
         globalThis.problems = []; addEventListener('axle-problem', e => problems.push(e.detail.message));\
         pad.scrollIntoView({ block: 'center' }); await rest(100);",
    )
    .await;
}

/// A place on the pad, from shares of the way along and up, in the window.
async fn on_pad(window: &Window, x: f64, y: f64) -> (f64, f64) {
    let script = format!(
        "const b = pad.getBoundingClientRect(); return [b.left + {x} * b.width, b.bottom - {y} * b.height];"
    );
    let at = of(window, &script).await;
    (at[0].as_f64().unwrap(), at[1].as_f64().unwrap())
}

/// Heights of the handles as shares of the axis.
async fn heights(window: &Window) -> Vec<f64> {
    let all = of(window, "return holds.map(h => h.value / h.max);").await;
    all.as_array()
        .unwrap()
        .iter()
        .map(|height| height.as_f64().unwrap())
        .collect()
}

async fn mouse(window: &Window, kind: &str, (x, y): (f64, f64)) {
    let buttons = u32::from(kind != "mouseReleased");
    let event = json!({ "type": kind, "x": x, "y": y, "button": "left", "buttons": buttons, "clickCount": 1 });
    window.debug("Input.dispatchMouseEvent", event).await;
}

async fn touch(window: &Window, kind: &str, place: Option<(f64, f64)>) {
    let points: Vec<Value> = place
        .iter()
        .map(|(x, y)| json!({ "x": x, "y": y }))
        .collect();
    let event = json!({ "type": kind, "touchPoints": points });
    window.debug("Input.dispatchTouchEvent", event).await;
}

/// The true line of the question as shares of the axis.
fn right() -> [f64; PLACES] {
    let asked = asked();
    let course = asked.course().expect("a line");
    let top =
        axlewright_core::units::to_si(course.top(System::Si), course.most.dimension, System::Si);
    course.places().map(|(_, value)| value / top)
}

fn assert_near(got: &[f64], want: &[f64], within: f64) {
    assert_eq!(got.len(), want.len());
    for (got, want) in got.iter().zip(want) {
        assert!((got - want).abs() <= within, "{got} {want}");
    }
}

async fn commit(window: &Window) -> Value {
    of(
        window,
        "root.querySelector('[type=submit]').click(); await rest(250);\
         return [e.score, root.querySelector('.verdict')?.textContent.replace(/\\u2009/g, ' ') ?? null,\
         root.querySelector('.paper desc')?.textContent ?? null, root.querySelectorAll('.question table td').length,\
         root.querySelectorAll('.question math').length > 1, ['.figure', '.readouts', '.chart'].map(s => root.querySelector(s).checkVisibility()),\
         root.activeElement?.className, e.answer?.rear_axle_load];",
    )
    .await
}

#[tokio::test]
async fn a_line_drawn_by_mouse_is_judged_and_shown_beside_the_true_one() {
    let window = Window::open().await;
    open(&window).await;
    let told = of(
        &window,
        "return [root.querySelector('.statement').textContent, holds.length, e.answer, root.querySelectorAll('.paper path[stroke-width=\"2\"]').length,\
         pad.classList.contains('fresh'), ['.figure', '.readouts', '.chart'].some(s => root.querySelector(s).checkVisibility())];",
    )
    .await;
    let asked = asked();
    assert_eq!(
        told,
        json!([
            asked.statement(Lang::English, System::Si),
            PLACES,
            null,
            0,
            true,
            false
        ]),
        "nothing of the line is there"
    );
    // Nothing drawn is no prediction.
    let refused = of(
        &window,
        "root.querySelector('[type=submit]').click(); await rest(80);\
         return [root.querySelector('#refusal').textContent, e.answer, scores.length];",
    )
    .await;
    assert!(
        refused[0]
            .as_str()
            .unwrap()
            .contains("No line has been drawn yet. Draw a line"),
        "{refused}"
    );
    assert_eq!([&refused[1], &refused[2]], [&json!(null), &json!(0)]);

    // One stroke from the first place to the last, along the truth but a twentieth of the axis too high.
    let right = right();
    let high = right.map(|height| height + 0.05);
    let start = on_pad(&window, 0.0, high[0]).await;
    mouse(&window, "mousePressed", start).await;
    for (at, height) in high.iter().enumerate().skip(1) {
        let next = on_pad(&window, at as f64 / 8.0, *height).await;
        mouse(&window, "mouseMoved", next).await;
    }
    mouse(
        &window,
        "mouseReleased",
        on_pad(&window, 1.0, high[8]).await,
    )
    .await;
    // A handle has a hundred steps, and a pixel is half of one.
    assert_near(&heights(&window).await, &high, 0.011);
    let told = of(
        &window,
        "return [root.querySelector('.told').textContent === holds[8].getAttribute('aria-valuetext'), pad.classList.contains('fresh'),\
         root.activeElement === holds[0]];",
    )
    .await;
    assert_eq!(told, json!([true, false, true]));

    let seen = commit(&window).await;
    let score = &seen[0];
    let given: Vec<f64> = serde_json::from_value(score["given"].clone()).unwrap();
    let true_line: Vec<f64> = serde_json::from_value(score["right"].clone()).unwrap();
    let course = asked.course().unwrap();
    assert_eq!(
        true_line,
        course.places().map(|place| place.1),
        "to the last digit"
    );
    let at: Vec<f64> = serde_json::from_value(score["at"].clone()).unwrap();
    assert_eq!(at, course.places().map(|place| place.0));
    let mean = given
        .iter()
        .zip(&true_line)
        .map(|(a, b)| (a - b).abs())
        .sum::<f64>()
        / 9.0;
    assert!(
        (score["difference"].as_f64().unwrap() - mean).abs() < 1e-6 * mean,
        "{score}"
    );
    let share = mean / true_line.iter().copied().fold(0.0, f64::max);
    assert!(
        (score["relative"].as_f64().unwrap() - share).abs() < 1e-9,
        "{score}"
    );
    let wanted = ((4.0 - share / 0.05) / 3.0).clamp(0.0, 1.0);
    assert!(
        (score["score"].as_f64().unwrap() - wanted).abs() < 1e-6,
        "{score}"
    );
    assert_eq!(
        [&score["question"], &score["seed"]],
        [&json!("sketch_rear_load"), &json!(7)]
    );
    let verdict = seen[1].as_str().unwrap();
    assert!(
        verdict.contains("On average your line is") && verdict.contains("right is"),
        "{verdict}"
    );
    assert!(seen[2].as_str().unwrap().contains("Your line"), "{seen}");
    assert_eq!(seen[3], json!(2 * PLACES));
    assert_eq!(
        [&seen[4], &seen[5]],
        [&json!(true), &json!([true, true, true])]
    );
    assert_eq!(seen[6], "verdict");
    // What is shown then is the place where the line was furthest off.
    let shown = seen[7].as_f64().unwrap();
    assert!(
        true_line
            .iter()
            .any(|value| (value - shown).abs() < 1e-6 * shown),
        "{seen}"
    );

    // Asked again, the axes are empty.
    let again = of(
        &window,
        "root.querySelector('[data-act=again]').click(); await rest(80);\
         return [root.querySelector('.pad').classList.contains('fresh'), e.answer, root.querySelectorAll('.paper path[stroke-width=\"2\"]').length];",
    )
    .await;
    assert_eq!(again, json!([true, null, 0]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_finger_draws_and_does_not_scroll_and_one_handle_can_be_set() {
    let window = Window::open_with(500, &["--touch-events=enabled"]).await;
    open(&window).await;
    let before = of(&window, "return scrollY;").await;
    let wave = [0.2, 0.8, 0.3, 0.7, 0.4, 0.6, 0.1, 0.9, 0.5];
    touch(
        &window,
        "touchStart",
        Some(on_pad(&window, 0.0, wave[0]).await),
    )
    .await;
    for (at, height) in wave.iter().enumerate().skip(1) {
        let next = on_pad(&window, at as f64 / 8.0, *height).await;
        touch(&window, "touchMove", Some(next)).await;
    }
    touch(&window, "touchEnd", None).await;
    assert_near(&heights(&window).await, &wave, 0.013);
    assert_eq!(of(&window, "return scrollY;").await, before);
    // A touch near one handle, then up, moves that one and no other.
    touch(
        &window,
        "touchStart",
        Some(on_pad(&window, 0.51, 0.4).await),
    )
    .await;
    touch(&window, "touchMove", Some(on_pad(&window, 0.5, 0.75).await)).await;
    touch(
        &window,
        "touchMove",
        Some(on_pad(&window, 0.49, 0.95).await),
    )
    .await;
    touch(&window, "touchEnd", None).await;
    let mut one = wave;
    one[4] = 0.95;
    assert_near(&heights(&window).await, &one, 0.025);
    // A hint and another language leave what was drawn.
    of(
        &window,
        "root.querySelector('[data-act=hint]').click(); await rest(80);",
    )
    .await;
    assert_near(&heights(&window).await, &one, 0.025);
    of(&window, "e.lang = 'de'; await rest(600);").await;
    let words = of(&window, "return root.querySelector('#help').textContent;").await;
    assert!(words.as_str().unwrap().contains("Finger"), "{words}");
    assert_near(&heights(&window).await, &one, 0.025);
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_line_by_keyboard_alone_reaches_full_marks() {
    let window = Window::open().await;
    open(&window).await;
    let keys = async |text: TypingData| {
        let chain = window.driver.action_chain();
        chain.send_keys(text).perform().await.expect("a key");
    };
    of(&window, "document.body.focus(); scrollTo(0, 0);").await;
    let right = right();
    for (at, height) in right.iter().enumerate() {
        keys(Key::Tab + "").await;
        let focus = of(
            &window,
            "const now = root.activeElement; return [holds.indexOf(now), now.getAttribute('aria-label')];",
        )
        .await;
        assert_eq!(focus[0], json!(at));
        let place = asked().place(at, Lang::English, System::Si);
        assert_eq!(focus[1], json!(place));
        // From the middle in hundredths of the axis.
        let steps = (100.0 * height).round() as i32 - 50;
        for _ in 0..steps.abs() {
            keys(if steps > 0 { Key::Up } else { Key::Down } + "").await;
        }
    }
    assert_near(&heights(&window).await, &right, 0.006);
    let said = of(
        &window,
        "return holds[8].getAttribute('aria-valuetext').replace(/\\u2009/g, ' ');",
    )
    .await;
    assert!(said.as_str().unwrap().ends_with("at 0.8 g"), "{said}");
    // Enter in a handle commits, as in every field of a form.
    keys(Key::Enter + "").await;
    let score = of(&window, "await rest(250); return e.score;").await;
    assert_eq!(score["within"], true, "{score}");
    assert_eq!(score["score"].as_f64(), Some(1.0));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn no_violation_while_empty_drawn_and_judged_and_paper_has_empty_axes() {
    let axe = needed(&axlewright_tests::file("node_modules/axe-core/axe.min.js"));
    for (width, dark) in [(1280, false), (768, true), (500, false)] {
        let arguments: &[&str] = if dark {
            &[
                "--force-dark-mode",
                "--blink-settings=preferredColorScheme=0",
            ]
        } else {
            &[]
        };
        let window = Window::open_with(width, arguments).await;
        let metrics = json!({ "width": if width == 500 { 320 } else { width }, "height": 900, "deviceScaleFactor": 1, "mobile": false });
        window
            .debug("Emulation.setDeviceMetricsOverride", metrics)
            .await;
        open(&window).await;
        window
            .driver
            .execute(&axe, Vec::new())
            .await
            .expect("axe-core loads");
        for (state, step) in [
            ("empty", ""),
            (
                "drawn",
                "holds.forEach((h, at) => { h.value = h.max * (0.2 + 0.07 * at); h.dispatchEvent(new Event('input', { bubbles: true })); }); holds[3].focus();",
            ),
            ("judged", "root.querySelector('[type=submit]').click();"),
        ] {
            of(&window, &format!("{step} await rest(300); scrollTo(0, 0);")).await;
            let found = judged(&window, "document").await;
            assert!(
                found[0].as_u64() > Some(15),
                "axe-core checked too little: {found}"
            );
            assert_eq!(found[1], json!([]), "{state} at {width}");
            let wide = of(
                &window,
                "const d = document.documentElement; return d.scrollWidth - d.clientWidth;",
            )
            .await;
            assert_eq!(wide, 0, "{state} at {width} scrolls sideways");
            if let Some(folder) = std::env::var_os("AXLEWRIGHT_PICTURES") {
                let name = format!(
                    "sketch-{state}-{width}{}.png",
                    if dark { "-dark" } else { "" }
                );
                let png = window.driver.screenshot_as_png().await.expect("a picture");
                std::fs::write(std::path::Path::new(&folder).join(name), &png)
                    .expect("it is written");
            }
            if state == "drawn" {
                let media = json!({ "media": "print" });
                window.debug("Emulation.setEmulatedMedia", media).await;
                let paper = of(
                    &window,
                    "return [root.querySelector('.paper svg').checkVisibility(), pad.checkVisibility(), root.querySelector('.told').checkVisibility()];",
                )
                .await;
                assert_eq!(paper, json!([true, false, false]), "axes to draw on");
                window
                    .debug("Emulation.setEmulatedMedia", json!({ "media": "" }))
                    .await;
            }
        }
        assert_eq!(window.complaints().await, Vec::<String>::new());
        window.close().await;
    }
}
