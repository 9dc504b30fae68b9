//! A talk in the hand: ink at every width, fingers, keys.

use crate::hands::{goes, perform};
use crate::talk::{opened, stroke, within};
use axlewright_tests::camera::REST;
use axlewright_tests::session::Window;
use serde_json::{Value, json};
use thirtyfour::Key;

/// Knows the picture on the stage, the hub of its first wheel, and where the first stroke begins.
const PLACES: &str = "
    const picture = () => root.querySelector('axle-load-transfer').shadowRoot.querySelector('.figure svg');
    const hub = () => { const b = picture().querySelector('circle').getBoundingClientRect();
      return [b.left + b.width / 2, b.top + b.height / 2]; };
    const inked = () => { const path = root.querySelector('.board path');
      const p = path.getPointAtLength(0).matrixTransform(path.getScreenCTM()); return [p.x, p.y]; };
    const apart = (a, b) => Math.hypot(a[0] - b[0], a[1] - b[1]);";

/// How far the start of the ink is from the hub of the wheel: on the stage in CSS pixels, in the file that is
/// saved and in the handout in units of the figure; and the width that the file was laid out for.
async fn ink_off_hub(window: &Window) -> Value {
    let script = format!(
        "{PLACES} {REST} const file = (svg) => {{\
           const circle = svg.querySelector('circle'); const d = [...svg.querySelectorAll('g[stroke-linecap] path')][0].getAttribute('d');\
           const [x, y] = d.slice(1).split(/[L ]/).map(Number); const m = svg.querySelector('g[stroke-linecap]').parentNode.transform.baseVal.consolidate()?.matrix;\
           const by = m ? m.a : 1;\
           return [apart([by * x, by * y], [circle.cx.baseVal.value, circle.cy.baseVal.value]), svg.viewBox.baseVal.width]; }};\
         const saved = new DOMParser().parseFromString(await talk.figure(), 'image/svg+xml').documentElement;\
         const printed = (await talk.handout()).querySelector('.block svg');\
         return {{ stage: apart(inked(), hub()), saved: file(saved), printed: file(printed), stages: picture().viewBox.baseVal.width,\
           letters: 13 * picture().getBoundingClientRect().width / picture().viewBox.baseVal.width }};"
    );
    within(window, &script).await
}

async fn as_wide_as(window: &Window, width: u32) {
    let size = json!({ "width": width, "height": 900, "deviceScaleFactor": 1, "mobile": false });
    window
        .debug("Emulation.setDeviceMetricsOverride", size)
        .await;
}

/// Draws from the hub of the first wheel to a place beside it.
async fn draw_from_hub(window: &Window) {
    let script = format!(
        "{PLACES} {REST} root.querySelector('.board').scrollIntoView({{ block: 'center' }}); return hub();"
    );
    let hub = within(window, &script).await;
    let (x, y) = (hub[0].as_f64().expect("x"), hub[1].as_f64().expect("y"));
    let press = |name: &str| json!({ "type": name, "button": 0 });
    let steps = vec![
        goes((x, y)),
        press("pointerDown"),
        goes((x + 20.0, y - 20.0)),
        goes((x + 30.0, y - 10.0)),
        press("pointerUp"),
    ];
    perform(window, "mouse", steps).await;
}

#[tokio::test]
async fn ink_stays_on_what_it_marks_whatever_the_width() {
    let window = Window::open_with(1280, &["--force-prefers-reduced-motion"]).await;
    // Where it is drawn, and every place that it is then looked at: a window, a telephone, two frames.
    let places = [
        (1280, ""),
        (400, ""),
        (760, ""),
        (1280, "9:16"),
        (1280, "16:9"),
    ];
    for (width, frame) in places {
        as_wide_as(&window, 1280).await;
        opened(&window).await;
        let go_to = async |width: u32, frame: &str| {
            as_wide_as(&window, width).await;
            let script = format!(
                "if ('{frame}') talk.setAttribute('frame', '{frame}'); else talk.removeAttribute('frame');\
                 window.dispatchEvent(new Event('resize')); {REST}"
            );
            within(&window, &script).await;
        };
        go_to(width, frame).await;
        within(&window, "press('pen');").await;
        draw_from_hub(&window).await;
        within(&window, "press('pen');").await;
        let mut laid = Value::Null;
        for (other, other_frame) in [(width, frame)].into_iter().chain(places) {
            go_to(other, other_frame).await;
            let found = ink_off_hub(&window).await;
            let told = format!("drawn at {width} {frame}, shown at {other} {other_frame}: {found}");
            let number = |value: &Value| value.as_f64().unwrap_or(f64::NAN);
            assert!(number(&found["stage"]) < 2.5, "{told}");
            assert!(number(&found["saved"][0]) < 2.5, "{told}");
            assert!(number(&found["printed"][0]) < 2.5, "{told}");
            if laid.is_null() {
                laid = found["saved"][1].clone();
                assert_eq!(laid, found["stages"], "{told}");
            }
            assert_eq!(found["saved"][1], laid, "{told}");
            assert_eq!(found["printed"][1], laid, "{told}");
        }
        // Without ink the picture is laid out for its place again.
        go_to(400, "").await;
        let script =
            format!("{PLACES} press('clear'); {REST} return picture().viewBox.baseVal.width;");
        let width = within(&window, &script).await;
        assert!(
            width.as_f64().is_some_and(|w| (300.0..400.0).contains(&w)),
            "{width}"
        );
    }
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

/// Draws a finger over a part of the stage, as quickly as a hand does.
async fn finger(window: &Window, from: (f64, f64), to: (f64, f64)) {
    let step = |share: f64| {
        let x = from.0 + share * (to.0 - from.0);
        let y = from.1 + share * (to.1 - from.1);
        json!({ "type": "pointerMove", "duration": 30, "x": x.round() as i64, "y": y.round() as i64 })
    };
    let press = |name: &str| json!({ "type": name, "button": 0 });
    let mut steps = vec![step(0.0), press("pointerDown")];
    steps.extend((1..=6).map(|at| step(f64::from(at) / 6.0)));
    steps.push(press("pointerUp"));
    perform(window, "touch", steps).await;
}

#[tokio::test]
async fn a_finger_turns_the_page_and_scrolls_it() {
    let window = Window::open_with(1280, &["--force-prefers-reduced-motion"]).await;
    opened(&window).await;
    within(
        &window,
        "window.cancelled = 0; root.querySelector('.stage').addEventListener('pointercancel', () => { window.cancelled += 1; });\
         root.querySelector('.stage').scrollIntoView({ block: 'center' });",
    )
    .await;
    let middle = within(
        &window,
        "const b = root.querySelector('.stage').getBoundingClientRect(); return [b.left + b.width / 2, b.top + b.height / 2];",
    )
    .await;
    let (x, y) = (
        middle[0].as_f64().expect("x"),
        middle[1].as_f64().expect("y"),
    );
    let state = "await new Promise(r => setTimeout(r, 900)); return [talk.step, window.cancelled];";
    finger(&window, (x + 120.0, y), (x - 120.0, y + 15.0)).await;
    assert_eq!(within(&window, state).await, json!([2, 0]), "on");
    finger(&window, (x - 120.0, y), (x + 120.0, y + 15.0)).await;
    assert_eq!(within(&window, state).await, json!([1, 0]), "back");
    // Along the page the finger scrolls it, as anywhere.
    let before = window.run("return scrollY;").await;
    finger(&window, (x, y + 100.0), (x, y - 150.0)).await;
    let after = within(
        &window,
        "await new Promise(r => setTimeout(r, 900)); return [talk.step, scrollY];",
    )
    .await;
    assert_eq!(after[0], 1, "{after}");
    assert!(
        after[1].as_f64() > before.as_f64().map(|y| y + 50.0),
        "{before}, {after}"
    );
    // Who moves a slider turns no page.
    let slider = within(
        &window,
        "press('what'); await new Promise(r => setTimeout(r, 500)); const s = root.querySelector('axle-load-transfer').shadowRoot.querySelector('#cg-height-slider');\
         s.scrollIntoView({ block: 'center' }); window.value = s.value; const b = s.getBoundingClientRect(); return [b.left, b.top + b.height / 2, b.width];",
    )
    .await;
    let (left, top, width) = (
        slider[0].as_f64().expect("x"),
        slider[1].as_f64().expect("y"),
        slider[2].as_f64().expect("width"),
    );
    finger(
        &window,
        (left + 0.8 * width, top),
        (left + 0.1 * width, top),
    )
    .await;
    let moved = within(
        &window,
        "await new Promise(r => setTimeout(r, 600)); const s = root.querySelector('axle-load-transfer').shadowRoot.querySelector('#cg-height-slider');\
         return [talk.step, s.value !== window.value];",
    )
    .await;
    assert_eq!(moved, json!([1, true]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

/// Gives keys to whatever has the focus.
async fn press(window: &Window, keys: &[char]) {
    let mut chain = window.driver.action_chain();
    for key in keys {
        chain = chain.key_down(*key).key_up(*key);
    }
    chain.perform().await.expect("keys");
}

#[tokio::test]
async fn every_function_has_its_key() {
    let window = Window::open_with(1280, &["--force-prefers-reduced-motion"]).await;
    opened(&window).await;
    window
        .run("for (const other of [...document.querySelectorAll('axle-talk')].slice(1)) other.remove();")
        .await;
    let state = format!(
        "{REST} const pressed = (name) => root.querySelector(`[data-name=${{name}}]`).getAttribute('aria-pressed') === 'true';\
         return {{ step: talk.step, what: pressed('what'), pen: pressed('pen'), rubber: pressed('rubber'), notes: !root.querySelector('.notes').hidden,\
           clean: !root.querySelector('.bar').checkVisibility(), full: document.fullscreenElement === talk,\
           strokes: root.querySelectorAll('.board > g').length,\
           inputs: root.querySelector('axle-load-transfer').shadowRoot.querySelectorAll('input[type=range]').length > 0 }};"
    );
    let after = async |key: char, wanted: Value| {
        press(&window, &[key]).await;
        let found = within(&window, &state).await;
        for (name, value) in wanted.as_object().expect("an object") {
            assert_eq!(found[name], *value, "{name} after {key:?}: {found}");
        }
    };
    // Nothing has the focus: one talk alone on its page takes the keys.
    after(' ', json!({ "step": 2 })).await;
    after(char::from(Key::End), json!({ "step": 6 })).await;
    after(char::from(Key::Home), json!({ "step": 1 })).await;
    after(char::from(Key::PageDown), json!({ "step": 2 })).await;
    after(char::from(Key::Right), json!({ "step": 3 })).await;
    after(char::from(Key::Left), json!({ "step": 2 })).await;
    after(char::from(Key::PageUp), json!({ "step": 1 })).await;
    after('w', json!({ "what": true, "inputs": true })).await;
    after('W', json!({ "what": false, "inputs": false })).await;
    after('n', json!({ "notes": true })).await;
    after('N', json!({ "notes": false })).await;
    after('p', json!({ "pen": true })).await;
    stroke(&window, "mouse", &[(0.2, 0.2), (0.3, 0.3), (0.4, 0.25)], 0).await;
    stroke(&window, "mouse", &[(0.6, 0.2), (0.7, 0.3), (0.8, 0.25)], 0).await;
    after('e', json!({ "pen": false, "rubber": true, "strokes": 2 })).await;
    after('u', json!({ "strokes": 1 })).await;
    after('e', json!({ "rubber": false })).await;
    after('c', json!({ "clean": true })).await;
    after(char::from(Key::Escape), json!({ "clean": false })).await;
    after('f', json!({ "full": true })).await;
    after(char::from(Key::Right), json!({ "step": 2, "full": true })).await;
    after('f', json!({ "full": false })).await;
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_changed_input_goes_back_by_key() {
    let window = Window::open_with(1280, &["--force-prefers-reduced-motion"]).await;
    opened(&window).await;
    let said = within(&window, "return (await shown(() => talk.goTo(1))).said;").await;
    within(
        &window,
        "root.querySelector('[data-name=forward]').focus();",
    )
    .await;
    press(&window, &['w']).await;
    // Tab leads to the inputs; an arrow moves the first slider that it meets.
    let active = "let a = root.activeElement; while (a?.shadowRoot?.activeElement) a = a.shadowRoot.activeElement; return a?.type ?? '';";
    within(&window, "root.querySelector('axle-load-transfer').shadowRoot.querySelector('.controls input').focus();").await;
    for _ in 0..40 {
        if within(&window, active).await == "range" {
            break;
        }
        press(&window, &[char::from(Key::Tab)]).await;
    }
    assert_eq!(within(&window, active).await, "range");
    press(&window, &[char::from(Key::Right), char::from(Key::Right)]).await;
    let changed = within(
        &window,
        "await new Promise(r => setTimeout(r, 400)); return talk.said;",
    )
    .await;
    assert_ne!(changed, said);
    // A slider keeps the letters to itself; from a button they are the talk's.
    within(&window, "root.querySelector('[data-name=what]').focus();").await;
    press(&window, &['r']).await;
    let back = within(
        &window,
        "await new Promise(r => setTimeout(r, 500)); return talk.said;",
    )
    .await;
    assert_eq!(back, said);
    window.close().await;
}

#[tokio::test]
async fn tab_reaches_every_button_in_the_order_of_reading() {
    let window = Window::open_with(1280, &["--force-prefers-reduced-motion"]).await;
    opened(&window).await;
    within(&window, "root.querySelector('[data-name=back]').focus();").await;
    let name = "const a = root.activeElement; return a ? a.dataset.name ?? a.className + a.localName : '';";
    let mut reached = Vec::new();
    for _ in 0..40 {
        let at = within(&window, name).await;
        let at = at.as_str().unwrap_or_default().to_owned();
        if at.is_empty() {
            break;
        }
        reached.push(at);
        press(&window, &[char::from(Key::Tab)]).await;
    }
    let wanted = [
        "back",
        "forward",
        "select",
        "what",
        "restore",
        "pen",
        "select",
        "rubber",
        "undo",
        "clear",
        "notes_open",
        "presenter",
        "screen",
        "large",
        "wide",
        "tall",
        "dark",
        "clear_paper",
        "clean",
        "save",
        "print",
        "summary",
        "summary",
    ];
    assert_eq!(reached, wanted);
    // Enter and Space press what has the focus, and nothing else happens.
    for (key, large) in [(char::from(Key::Enter), true), (' ', false)] {
        within(&window, "root.querySelector('[data-name=large]').focus();").await;
        press(&window, &[key]).await;
        let found = within(
            &window,
            "return [talk.getAttribute('size') === 'large', talk.step];",
        )
        .await;
        assert_eq!(found, json!([large, 1]), "{key:?}");
    }
    window.close().await;
}
