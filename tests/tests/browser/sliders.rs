//! A reader moves a slider, types a value, makes a mistake; the numbers are those of the program.

use axlewright_core::words::Lang;
use axlewright_tests::session::{Window, answer_of_program};
use serde_json::Value;
use thirtyfour::Key;
use thirtyfour::prelude::*;

const TAG: &str = "axle-load-transfer";

/// The program's answer to the scenario that the element shows.
pub(crate) async fn program_answer(window: &Window, topic: &str, tag: &str) -> Value {
    let script = format!("return document.querySelector('{tag}').scenario;");
    let scenario = window.run(&script).await;
    answer_of_program(topic, &scenario)
}

/// Every number of the element's answer is, to the last digit, the program's.
pub(crate) async fn agrees_with_program(window: &Window, topic: &str, tag: &str, numbers: &[&str]) {
    let ours = window.answer(tag).await;
    let theirs = program_answer(window, topic, tag).await;
    assert!(!numbers.is_empty());
    for name in numbers {
        let pointer = format!("/{}", name.replace('.', "/"));
        let (got, want) = (ours.pointer(&pointer), theirs.pointer(&pointer));
        assert!(
            got.is_some() && got == want,
            "{topic} {name}: element {got:?}, program {want:?}"
        );
    }
}

/// Replaces what a field holds, as a person does: select all, type, Enter.
pub(crate) async fn retype(field: &WebElement, text: &str) {
    // One call: a second one would put the caret at the end again.
    let keys = Key::Control + "a" + Key::Null + text + Key::Enter;
    field.send_keys(keys).await.expect("typing");
}

async fn slider_value(window: &Window, selector: &str) -> f64 {
    let field = window.inside(TAG, selector).await;
    let value = field
        .prop("value")
        .await
        .expect("a value")
        .unwrap_or_default();
    value
        .parse()
        .unwrap_or_else(|_| panic!("{selector}: {value}"))
}

async fn moves_and_types(window: &Window) {
    window.ready(TAG).await;
    let before = window.answer(TAG).await["rear_axle_load"]
        .as_f64()
        .expect("a load");

    // By mouse: pull the acceleration's slider to the right.
    let slider = window.inside(TAG, "#acceleration-slider").await;
    let position = slider_value(window, "#acceleration-slider").await;
    window
        .driver
        .action_chain()
        .drag_and_drop_element_by_offset(&slider, 60, 0)
        .perform()
        .await
        .expect("a drag");
    let moved = slider_value(window, "#acceleration-slider").await;
    assert!(
        moved > position,
        "the mouse moved the slider from {position} to {moved}"
    );
    let after = window.answer(TAG).await["rear_axle_load"]
        .as_f64()
        .expect("a load");
    assert!(
        after > before,
        "more acceleration, more load behind: {before} to {after}"
    );
    agrees_with_program(
        window,
        "load_transfer",
        TAG,
        &["rear_axle_load", "rear_to_front_ratio"],
    )
    .await;

    // By keyboard: one step left, then to the start.
    slider.send_keys(Key::Left + "").await.expect("a key");
    let stepped = slider_value(window, "#acceleration-slider").await;
    assert!(
        (stepped - (moved - 0.01)).abs() < 1e-9,
        "one step from {moved} is {stepped}"
    );
    slider.send_keys(Key::Home + "").await.expect("a key");
    let start = slider_value(window, "#acceleration-slider").await;
    assert!(
        (start + 1.0).abs() < 1e-9,
        "Home goes to full braking: {start}"
    );
    agrees_with_program(window, "load_transfer", TAG, &["front_axle_load"]).await;

    // By typing, in another unit than the one shown.
    let field = window.inside(TAG, "#mass-number").await;
    retype(&field, "4080 lb").await;
    let answer = window.answer(TAG).await;
    let weight = 4080.0 * 0.453_592_37 * 9.81;
    let sum = answer["front_axle_load"].as_f64().unwrap_or(0.0)
        + answer["rear_axle_load"].as_f64().unwrap_or(0.0);
    assert!((sum - weight).abs() < 1e-6, "loads {sum}, weight {weight}");
    agrees_with_program(
        window,
        "load_transfer",
        TAG,
        &["front_axle_load", "rear_axle_load"],
    )
    .await;

    // The readout says what the answer says.
    let shown = window
        .inside(TAG, ".readouts")
        .await
        .text()
        .await
        .expect("text");
    let load = answer["front_axle_load"].as_f64().expect("a load");
    let said = axlewright_core::format::significant(load, 4, Lang::English);
    assert!(shown.contains(&said), "{said} in {shown}");
}

#[tokio::test]
async fn a_reader_moves_a_slider_and_types_on_the_served_page() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    moves_and_types(&window).await;
    assert_eq!(window.complaints().await, Vec::<String>::new());
    assert_eq!(window.foreign_requests().await, serde_json::json!([]));
    window.close().await;
}

#[tokio::test]
async fn the_same_on_the_page_opened_from_the_file_system() {
    let window = Window::open().await;
    window.visit_file("load-transfer.html").await;
    moves_and_types(&window).await;
    assert_eq!(window.complaints().await, Vec::<String>::new());
    assert_eq!(window.foreign_requests().await, serde_json::json!([]));
    window.close().await;
}

#[tokio::test]
async fn every_topic_answers_as_the_program_does() {
    let window = Window::open().await;
    for (page, topic, tag, numbers) in [
        (
            "traction.html",
            "traction",
            "axle-traction",
            ["limits.F1.acceleration", "limits.R1.rear_axle_load"],
        ),
        (
            "motor-split.html",
            "motor_split",
            "axle-motor-split",
            [
                "layouts.F1R2.matching_acceleration",
                "layouts.F1R2.motor_torque_needed",
            ],
        ),
        (
            "launch.html",
            "launch",
            "axle-launch",
            [
                "layouts.F1R1.time_to_60_mph",
                "layouts.R1.quarter_mile_time",
            ],
        ),
        (
            "cornering.html",
            "cornering",
            "axle-cornering",
            ["steer_angle", "vectoring.brakes.power"],
        ),
        (
            "turn-in-place.html",
            "turn_in_place",
            "axle-turn-in-place",
            ["wheel_torque", "energy_per_turn"],
        ),
        (
            "idle-drag.html",
            "idle_drag",
            "axle-idle-drag",
            [
                "layouts.F1R1.energy_per_km",
                "layouts.F1R1.range_lost_to_idle",
            ],
        ),
        (
            "packaging.html",
            "packaging",
            "axle-packaging",
            ["front_room", "layouts.F1R2.room_left"],
        ),
        (
            "choice.html",
            "choice",
            "axle-choice",
            ["layouts.R1.score", "layouts.F1.time_to_60_mph"],
        ),
    ] {
        window.visit(page).await;
        window.ready(tag).await;
        agrees_with_program(&window, topic, tag, &numbers).await;
        assert_eq!(window.complaints().await, Vec::<String>::new(), "{page}");
        assert_eq!(
            window.foreign_requests().await,
            serde_json::json!([]),
            "{page}"
        );
    }
    window.close().await;
}

#[tokio::test]
async fn a_refused_value_marks_its_field_and_keeps_the_last_good_answer() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    window
        .run(&format!(
            "globalThis.told = []; document.addEventListener('axle-problem', e => told.push(JSON.stringify(e.detail)));\
             return document.querySelector('{TAG}').answer;"
        ))
        .await;
    let before = window.answer(TAG).await;
    for (typed, part) in [
        ("1850 km", "mass"),
        ("heavy", "not a number"),
        ("0 kg", "out of range"),
        ("1e9", "out of range"),
    ] {
        let field = window.inside(TAG, "#mass-number").await;
        retype(&field, typed).await;
        let invalid = field.attr("aria-invalid").await.expect("an attribute");
        assert_eq!(invalid.as_deref(), Some("true"), "{typed}");
        let sentence = window
            .inside(TAG, ".problem")
            .await
            .text()
            .await
            .expect("text");
        assert!(
            sentence.contains("vehicle.mass") && sentence.contains(part),
            "{typed}: {sentence}"
        );
        assert_eq!(window.answer(TAG).await, before, "{typed}");
    }
    let told = window.run("return told;").await;
    let last = told
        .as_array()
        .and_then(|list| list.last())
        .and_then(Value::as_str)
        .unwrap_or("");
    assert!(
        last.contains("\"field\":\"vehicle.mass\"") && last.contains("allowed"),
        "{told}"
    );

    // A good value clears the mark.
    let field = window.inside(TAG, "#mass-number").await;
    retype(&field, "2 t").await;
    let invalid = field.attr("aria-invalid").await.expect("an attribute");
    assert_eq!(invalid.as_deref(), Some("false"));
    assert_ne!(window.answer(TAG).await, before);
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_result_opens_to_its_working_and_follows_the_slider() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    let details = window.inside(TAG, "details.readout").await;
    let summary = details.find(By::Css("summary")).await.expect("a summary");
    summary.click().await.expect("a click");
    let script = format!(
        "const d = document.querySelector('{TAG}').shadowRoot.querySelector('details.readout');\
         await new Promise(r => setTimeout(r, 100));\
         return [d.open, d.querySelectorAll('math').length, d.textContent];"
    );
    let first = window.run(&script).await;
    assert_eq!(first[0], true);
    assert!(first[1].as_u64() > Some(1), "{first}");
    let slider = window.inside(TAG, "#acceleration-slider").await;
    slider.send_keys(Key::Right + "").await.expect("a key");
    let second = window.run(&script).await;
    assert_eq!(second[0], true, "it stays open");
    assert_ne!(first[2], second[2], "it follows the slider");
    window.close().await;
}
