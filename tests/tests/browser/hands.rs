//! Hands on the figure and on the chart: by mouse, finger, pen and keyboard, with the program's numbers.

use crate::access::no_violation;
use crate::sliders::{agrees_with_program, program_answer};
use axlewright_core::words::Lang;
use axlewright_tests::session::{Window, needed};
use serde_json::{Value, json};
use thirtyfour::Key;

const TAG: &str = "axle-load-transfer";
const LOADS: &[&str] = &["front_axle_load", "rear_axle_load"];

/// A gesture of one pointer: mouse, pen or touch.
#[derive(Debug)]
struct Gesture {
    kind: &'static str,
    steps: Vec<Value>,
}

impl thirtyfour::common::command::ExtensionCommand for Gesture {
    fn parameters_json(&self) -> Option<Value> {
        Some(json!({ "actions": [{
            "type": "pointer", "id": self.kind,
            "parameters": { "pointerType": self.kind }, "actions": self.steps,
        }] }))
    }

    fn method(&self) -> http::Method {
        http::Method::POST
    }

    fn endpoint(&self) -> std::sync::Arc<str> {
        "/actions".into()
    }
}

pub(crate) async fn perform(window: &Window, kind: &'static str, steps: Vec<Value>) {
    let command =
        thirtyfour::common::command::Command::ExtensionCommand(Box::new(Gesture { kind, steps }));
    window.driver.handle.cmd(command).await.expect("a gesture");
}

pub(crate) fn goes(to: (f64, f64)) -> Value {
    json!({ "type": "pointerMove", "duration": 40, "x": to.0.round() as i64, "y": to.1.round() as i64 })
}

/// Presses at a place, moves there and then by a way, and lets go.
async fn drag(window: &Window, kind: &'static str, from: (f64, f64), way: (f64, f64)) {
    let on = |share: f64| goes((from.0 + share * way.0, from.1 + share * way.1));
    let press = |name: &str| json!({ "type": name, "button": 0 });
    let steps = vec![
        on(0.0),
        press("pointerDown"),
        on(0.4),
        on(1.2),
        on(1.0),
        press("pointerUp"),
    ];
    perform(window, kind, steps).await;
}

async fn point_at(window: &Window, to: (f64, f64)) {
    perform(window, "mouse", vec![goes(to)]).await;
}

/// Runs a script that knows the first element of a tag as `element` and its shadow root as `root`.
async fn within(window: &Window, tag: &str, script: &str) -> Value {
    let all = format!(
        "const element = document.querySelector('{tag}'); const root = element.shadowRoot; {script}"
    );
    window.run(&all).await
}

/// Middle of a part of the element, brought into the view.
async fn middle(window: &Window, tag: &str, selector: &str) -> (f64, f64) {
    let script = format!("root.querySelector('{selector}').scrollIntoView({{ block: 'center' }});");
    within(window, tag, &script).await;
    place(window, tag, selector).await
}

/// Middle of a part of the element in the view as it is.
async fn place(window: &Window, tag: &str, selector: &str) -> (f64, f64) {
    let script = format!(
        "const b = root.querySelector('{selector}').getBoundingClientRect();\
         return [b.left + b.width / 2, b.top + b.height / 2];"
    );
    let found = within(window, tag, &script).await;
    let number = |at: usize| found[at].as_f64().expect("a place");
    (number(0), number(1))
}

async fn value_of(window: &Window, tag: &str, selector: &str) -> f64 {
    let script = format!("return Number(root.querySelector('{selector}').value);");
    within(window, tag, &script)
        .await
        .as_f64()
        .expect("a value")
}

/// Text of what has the focus inside the element: its name and its value.
async fn focused(window: &Window, tag: &str) -> Value {
    within(
        window,
        tag,
        "const a = root.activeElement; return a && [a.getAttribute('aria-label'), a.getAttribute('aria-valuetext')];",
    )
    .await
}

/// Gives keys to whatever has the focus.
async fn press(window: &Window, keys: &[Key]) {
    let mut chain = window.driver.action_chain();
    for key in keys {
        chain = chain
            .key_down(char::from(key.clone()))
            .key_up(char::from(key.clone()));
    }
    chain.perform().await.expect("keys");
}

async fn focus(window: &Window, tag: &str, selector: &str) {
    let script = format!("root.querySelector('{selector}').focus();");
    within(window, tag, &script).await;
}

async fn clean_up(window: Window) {
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

const CG: &str = ".grip.slide";
const TIP: &str = ".grip.slide + .grip.slide";

/// Drags the grip of the centre of gravity; it follows the pointer, and so do the numbers.
async fn drag_the_centre_of_gravity(window: &Window, kind: &'static str, way: (f64, f64)) {
    let before = middle(window, TAG, CG).await;
    let height = value_of(window, TAG, "#cg-height-slider").await;
    let behind = value_of(window, TAG, "#cg-to-front-axle-slider").await;
    drag(window, kind, before, way).await;
    let after = place(window, TAG, CG).await;
    let moved = (after.0 - before.0, after.1 - before.1);
    // A step of 0.01 m is about one pixel.
    assert!(
        (moved.0 - way.0).abs() < 2.0 && (moved.1 - way.1).abs() < 2.0,
        "{kind}: pulled by {way:?}, moved by {moved:?}"
    );
    let higher = value_of(window, TAG, "#cg-height-slider").await;
    let further = value_of(window, TAG, "#cg-to-front-axle-slider").await;
    assert!((higher > height) == (way.1 < 0.0), "{height} to {higher}");
    assert!((further > behind) == (way.0 < 0.0), "{behind} to {further}");
    agrees_with_program(window, "load_transfer", TAG, LOADS).await;
}

#[tokio::test]
async fn the_centre_of_gravity_follows_the_mouse() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    within(&window, TAG, "globalThis.told = []; element.addEventListener('axle-change', (e) => told.push(e.detail));").await;
    drag_the_centre_of_gravity(&window, "mouse", (-37.0, -21.0)).await;
    drag_the_centre_of_gravity(&window, "mouse", (30.0, 14.0)).await;
    let shown = within(&window, TAG, "return [element.scenario, told.at(-1)];").await;
    assert_eq!(shown[0], shown[1], "the page was told");
    let load = window.answer(TAG).await["front_axle_load"].as_f64();
    let said = axlewright_core::format::significant(load.expect("a load"), 4, Lang::English);
    let readouts = window.inside(TAG, ".readouts").await.text().await;
    assert!(readouts.expect("text").contains(&said), "{said}");
    clean_up(window).await;
}

#[tokio::test]
async fn a_drag_of_the_centre_of_gravity_is_one_step_to_take_back() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    let shown = "return [element.scenario, root.querySelector('.figure svg title').textContent,\
         ...['cg-height', 'cg-to-front-axle'].map((name) => root.querySelector(`#${name}-number`).value)];";
    let before = within(&window, TAG, shown).await;
    drag_the_centre_of_gravity(&window, "mouse", (-37.0, -21.0)).await;
    let after = within(&window, TAG, shown).await;
    for at in 1..4 {
        assert_ne!(before[at], after[at], "the drag moved nothing");
    }
    let pressed = "const [undo, redo] = root.querySelectorAll('.steps button');\
         const can = () => [undo, redo].map((button) => button.getAttribute('aria-disabled') === 'false');\
         const was = can(); (was[0] ? undo : redo).click(); await new Promise((r) => setTimeout(r, 100)); return [was, can()];";
    let undone = within(&window, TAG, pressed).await;
    assert_eq!(undone, json!([[true, false], [false, true]]));
    assert_eq!(
        within(&window, TAG, shown).await,
        before,
        "back to the start by one step"
    );
    let redone = within(&window, TAG, pressed).await;
    assert_eq!(redone, json!([[false, true], [true, false]]));
    assert_eq!(within(&window, TAG, shown).await, after);
    clean_up(window).await;
}

#[tokio::test]
async fn the_same_on_a_right_to_left_page_that_shows_the_figure_smaller() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    within(
        &window,
        TAG,
        "document.documentElement.dir = 'rtl'; element.style.transform = 'scale(0.7)';",
    )
    .await;
    drag_the_centre_of_gravity(&window, "mouse", (-25.0, -12.0)).await;
    clean_up(window).await;
}

#[tokio::test]
async fn finger_and_pen_pull_the_inertial_force() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    for kind in ["touch", "pen"] {
        let before = value_of(&window, TAG, "#acceleration-slider").await;
        let tip = middle(&window, TAG, TIP).await;
        let top = window.run("return scrollY;").await;
        drag(&window, kind, tip, (-24.0, 60.0)).await;
        assert_eq!(window.run("return scrollY;").await, top, "the page stays");
        let after = value_of(&window, TAG, "#acceleration-slider").await;
        assert!(after > before + 0.05, "{kind}: {before} to {after}");
        let now = place(&window, TAG, TIP).await;
        assert!(
            (now.0 - tip.0 + 24.0).abs() < 2.5,
            "{kind}: {tip:?} {now:?}"
        );
        agrees_with_program(&window, "load_transfer", TAG, LOADS).await;
    }
    drag_the_centre_of_gravity(&window, "touch", (20.0, -15.0)).await;
    let styles = within(
        &window,
        TAG,
        "return ['.grip.slide', '.figure', '.cursor', 'input[type=range]'].map((s) => getComputedStyle(root.querySelector(s)).touchAction);",
    )
    .await;
    assert_eq!(styles[0], "none", "the grip takes the finger");
    assert_eq!(styles[1], "auto", "the page scrolls elsewhere");
    assert_eq!(styles[2], "pan-y", "and over the chart");
    assert_ne!(styles[3], "none", "sliders are the browser's own");
    let small = within(
        &window,
        TAG,
        "return [...root.querySelectorAll('input, select, button, summary, .grip')].map((e) => [e.className + e.id, e.getBoundingClientRect().width, e.getBoundingClientRect().height]).filter(([, w, h]) => Math.min(w, h) < 23.99);",
    )
    .await;
    assert_eq!(small, json!([]), "targets smaller than 24 px");
    clean_up(window).await;
}

#[tokio::test]
async fn the_keyboard_alone_moves_the_centre_of_gravity() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    let thin = |text: &str| text.replace(' ', "\u{2009}");
    focus(&window, TAG, CG).await;
    press(&window, &[Key::Tab]).await;
    let start = within(
        &window,
        TAG,
        "root.querySelector('.hold').focus(); return 0;",
    )
    .await;
    assert_eq!(start, 0);
    let height = value_of(&window, TAG, "#cg-height-slider").await;
    assert!((height - 0.54).abs() < 1e-9, "the example: {height}");
    for (keys, name, value) in [
        // Arrows follow the picture and the focus follows the value that moves.
        (vec![Key::Up], "CG height", "0.55 m"),
        (vec![Key::Down, Key::Down], "CG height", "0.53 m"),
        (vec![Key::PageUp], "CG height", "0.63 m"),
        (vec![Key::Home], "CG height", "0.20 m"),
        (vec![Key::End], "CG height", "1.20 m"),
        (vec![Key::PageDown, Key::PageDown], "CG height", "1.00 m"),
        (vec![Key::Left], "CG behind front axle", "1.47 m"),
        (
            vec![Key::Right, Key::Right],
            "CG behind front axle",
            "1.45 m",
        ),
        (vec![Key::PageUp], "CG behind front axle", "1.55 m"),
    ] {
        press(&window, &keys).await;
        let now = focused(&window, TAG).await;
        assert_eq!(now, json!([name, thin(value)]), "{keys:?}");
        agrees_with_program(&window, "load_transfer", TAG, LOADS).await;
    }
    // The arrow: its tip goes where the key points.
    focus(&window, TAG, ".grip.slide + .grip.slide .hold").await;
    press(&window, &[Key::Left]).await;
    assert_eq!(focused(&window, TAG).await[1], thin("0.61 g"));
    press(&window, &[Key::Down, Key::Down]).await;
    assert_eq!(focused(&window, TAG).await[1], thin("0.59 g"));
    agrees_with_program(&window, "load_transfer", TAG, LOADS).await;
    // What is refused is told as it is for a slider, and the last good answer stays.
    within(&window, TAG, "element.setAttribute('wheelbase', '1.9 m'); element.setAttribute('cg-to-front-axle', '1.8 m');").await;
    focus(&window, TAG, CG.replace(".slide", ".slide .hold").as_str()).await;
    let good = window.answer(TAG).await;
    press(&window, &[Key::End]).await;
    let problem = window.inside(TAG, ".problem").await.text().await;
    assert!(!problem.expect("text").is_empty(), "a refusal is told");
    assert_eq!(window.answer(TAG).await, good);
    clean_up(window).await;
}

#[tokio::test]
async fn a_row_chooses_its_layout() {
    const TAG: &str = "axle-traction";
    let window = Window::open().await;
    window.visit("traction.html").await;
    window.ready(TAG).await;
    let rows = "input.grip.choose";
    let count = within(
        &window,
        TAG,
        &format!("return root.querySelectorAll('{rows}').length;"),
    )
    .await;
    let layouts = within(&window, TAG, "return element.scenario.layouts.length;").await;
    assert_eq!(count, layouts);
    let place = middle(&window, TAG, &format!("{rows}:nth-child(3)")).await;
    perform(
        &window,
        "mouse",
        vec![
            goes(place),
            json!({ "type": "pointerDown", "button": 0 }),
            json!({ "type": "pointerUp", "button": 0 }),
        ],
    )
    .await;
    let chosen = "return [element.scenario.layout, root.querySelector('#layout-list').value, root.activeElement?.checked];";
    let now = within(&window, TAG, chosen).await;
    assert_eq!(now, json!(["F1R1", "F1R1", true]));
    agrees_with_program(&window, "traction", TAG, &["limits.F1R1.acceleration"]).await;
    // By keyboard: an arrow takes the row above, and the focus stays in the figure.
    press(&window, &[Key::Up]).await;
    assert_eq!(within(&window, TAG, chosen).await[0], "R1");
    // A layout that is not among the compared adds its row and takes it away again.
    within(&window, TAG, "element.layout = 'F1R2';").await;
    focus(&window, TAG, &format!("{rows}:checked")).await;
    press(&window, &[Key::Down]).await;
    assert_eq!(
        within(&window, TAG, chosen).await,
        json!(["F1", "F1", true])
    );
    clean_up(window).await;
}

#[tokio::test]
async fn motors_are_placed_and_taken_away_by_keyboard_and_by_click() {
    const TAG: &str = "axle-turn-in-place";
    let window = Window::open().await;
    window.visit("turn-in-place.html").await;
    window.ready(TAG).await;
    let layout = "return element.scenario.layout;";
    assert_eq!(
        within(&window, TAG, layout).await,
        "F2R2",
        "the page begins so"
    );
    focus(&window, TAG, ".grip.turn + .grip.turn .hold").await;
    for (key, name) in [
        (Key::Down, "F2R1"),
        (Key::Home, "F2"),
        (Key::Left, "F2"),
        (Key::Up, "F2R1"),
        (Key::Enter, "F2R2"),
        (Key::Enter, "F2"),
    ] {
        press(&window, std::slice::from_ref(&key)).await;
        assert_eq!(within(&window, TAG, layout).await, name, "{key:?}");
        let ours = window.answer(TAG).await;
        let theirs = program_answer(&window, "turn_in_place", TAG).await;
        let at = format!("/layouts/{name}");
        assert_eq!(ours.pointer(&at), theirs.pointer(&at), "{name}");
    }
    let said = focused(&window, TAG).await;
    assert_eq!(said, json!(["motors on the rear axle", "no motor"]));
    // The front axle now has the only motors: they can become one, not none.
    let place = middle(&window, TAG, ".grip.turn").await;
    for name in ["F1", "F2", "F1"] {
        let click = |kind: &str| json!({ "type": kind, "button": 0 });
        let steps = vec![goes(place), click("pointerDown"), click("pointerUp")];
        perform(&window, "touch", steps).await;
        assert_eq!(within(&window, TAG, layout).await, name);
    }
    clean_up(window).await;
}

/// A motor is carried by mouse and by finger: to the other axle, out to a wheel, off the car.
#[tokio::test]
async fn motors_are_carried_from_place_to_place() {
    const SPLIT: &str = "axle-motor-split";
    let window = Window::open().await;
    window.visit("motor-split.html").await;
    window.ready(SPLIT).await;
    // Middle and size of each axle's handle.
    let axles = async || {
        let script = "root.querySelector('.figure').scrollIntoView({ block: 'center' });\
            return [...root.querySelectorAll('.grip.turn')].map((g) => { const b = g.getBoundingClientRect();\
              return [b.left + b.width / 2, b.top + b.height / 2, b.width, b.height]; });";
        let found = within(&window, SPLIT, script).await;
        [0, 1].map(|axle: usize| {
            [0, 1, 2, 3].map(|at: usize| found[axle][at].as_f64().expect("a place"))
        })
    };
    let layout = async || {
        within(
            &window,
            SPLIT,
            "await new Promise((r) => setTimeout(r, 200)); return element.scenario.layout;",
        )
        .await
    };
    assert_eq!(layout().await, "F1R2");
    for kind in ["mouse", "touch"] {
        let [front, rear] = axles().await;
        let way = (rear[0] - front[0], rear[1] - front[1]);
        // Two are as many as an axle takes: the third is gone.
        drag(&window, kind, (front[0], front[1]), way).await;
        assert_eq!(layout().await, "R2", "{kind}");
        let [front, rear] = axles().await;
        drag(
            &window,
            kind,
            (rear[0], rear[1]),
            (front[0] - rear[0], front[1] - rear[1]),
        )
        .await;
        assert_eq!(layout().await, "F1R1", "{kind}");
        // Out to a wheel: then each wheel has its own.
        let [_, rear] = axles().await;
        let out = if rear[2] < rear[3] {
            (0.0, 0.4 * rear[3])
        } else {
            (0.4 * rear[2], 0.0)
        };
        drag(&window, kind, (rear[0], rear[1]), out).await;
        assert_eq!(layout().await, "F1R2", "{kind}");
        // Off the car, along it, away from the other axle; and back by a click.
        let [front, rear] = axles().await;
        let gap = (front[0] - rear[0], front[1] - rear[1]);
        drag(
            &window,
            kind,
            (front[0], front[1]),
            (0.45 * gap.0, 0.45 * gap.1),
        )
        .await;
        assert_eq!(layout().await, "R2", "{kind}");
        let [front, _] = axles().await;
        let here = goes((front[0], front[1]));
        let press = |name: &str| json!({ "type": name, "button": 0 });
        perform(
            &window,
            kind,
            vec![here, press("pointerDown"), press("pointerUp")],
        )
        .await;
        assert_eq!(layout().await, "F1R2", "{kind}");
    }
    clean_up(window).await;
}

#[tokio::test]
async fn only_what_the_page_offers_can_be_moved() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    let seen = "await new Promise((r) => setTimeout(r, 50));\
                return [[...root.querySelectorAll('.hold')].map((e) => e.ariaLabel), root.querySelector('canvas').ariaLabel.includes('click')];";
    for (controls, holds, clicks) in [
        ("acceleration mass", json!(["acceleration"]), true),
        ("cg-height", json!(["CG height"]), false),
        ("", json!([]), false),
    ] {
        within(
            &window,
            TAG,
            &format!("element.setAttribute('controls', '{controls}');"),
        )
        .await;
        let now = within(&window, TAG, seen).await;
        assert_eq!(now, json!([holds, clicks]), "controls=\"{controls}\"");
    }
    let before = window.answer(TAG).await;
    let chart = middle(&window, TAG, ".cursor").await;
    let click = |kind: &str| json!({ "type": kind, "button": 0 });
    let steps = vec![goes(chart), click("pointerDown"), click("pointerUp")];
    perform(&window, "mouse", steps).await;
    assert_eq!(window.answer(TAG).await, before, "a click sets nothing");
    within(&window, TAG, "element.removeAttribute('controls');").await;
    assert_eq!(
        within(&window, TAG, seen).await[0].as_array().map(Vec::len),
        Some(3)
    );
    clean_up(window).await;
}

const TOLD: &str = "return root.querySelector('.read').textContent;";

/// What the read-out says of the loads of an answer, in whole newtons.
fn said_of(answer: &Value) -> String {
    let load = |name: &str| {
        let value = answer[name].as_f64().expect("a load");
        axlewright_core::format::with_unit(
            axlewright_core::format::fixed(value, 0, Lang::English),
            "N",
        )
    };
    let (front, rear) = (load("front_axle_load"), load("rear_axle_load"));
    format!("front axle {front}, rear axle {rear}")
}

#[tokio::test]
async fn the_chart_reads_out_under_the_pointer_and_a_click_sets_its_input() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    let middle = middle(&window, TAG, ".cursor").await;
    assert_eq!(within(&window, TAG, TOLD).await, "", "quiet at first");
    // At the dot of the present state, whose place the keyboard shows.
    focus(&window, TAG, ".cursor").await;
    let hair = "return root.querySelector('.hair').getBoundingClientRect().left;";
    let at = within(&window, TAG, hair).await.as_f64().expect("a place");
    within(&window, TAG, "root.activeElement.blur();").await;
    assert_eq!(within(&window, TAG, TOLD).await, "", "quiet again");
    point_at(&window, (at, middle.1)).await;
    let told = within(&window, TAG, TOLD).await;
    let answer = window.answer(TAG).await;
    let want = format!("acceleration 0.60\u{2009}g: {}", said_of(&answer));
    assert_eq!(told, want);
    agrees_with_program(&window, "load_transfer", TAG, LOADS).await;

    // Elsewhere: what was read before the click is the answer after it.
    point_at(&window, (at - 170.0, middle.1)).await;
    let told = within(&window, TAG, TOLD).await;
    let told = told.as_str().expect("a text").to_owned();
    assert_ne!(told, want);
    let click = |kind: &str| json!({ "type": kind, "button": 0 });
    perform(
        &window,
        "mouse",
        vec![click("pointerDown"), click("pointerUp")],
    )
    .await;
    let answer = window.answer(TAG).await;
    assert!(told.ends_with(&said_of(&answer)), "{told}: {answer}");
    agrees_with_program(&window, "load_transfer", TAG, LOADS).await;
    point_at(&window, (2.0, 2.0)).await;
    within(&window, TAG, "root.activeElement?.blur();").await;
    assert_eq!(
        within(&window, TAG, TOLD).await,
        "",
        "it goes with the pointer"
    );

    // A finger reads too.
    drag(&window, "touch", (at, middle.1), (60.0, 0.0)).await;
    let told = within(&window, TAG, TOLD).await;
    assert!(
        told.as_str().is_some_and(|t| t.contains("rear axle")),
        "{told}"
    );
    clean_up(window).await;
}

#[tokio::test]
async fn the_keyboard_reads_along_the_chart_and_the_table_says_the_same() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    focus(&window, TAG, ".cursor").await;
    for (key, at) in [
        (Key::Right, "0.61"),
        (Key::PageUp, "0.71"),
        (Key::Left, "0.70"),
        (Key::End, "1.20"),
        (Key::Right, "1.20"),
        (Key::Home, "0.00"),
        (Key::PageUp, "0.10"),
    ] {
        press(&window, std::slice::from_ref(&key)).await;
        let told = within(&window, TAG, TOLD).await;
        let start = format!("acceleration {at}\u{2009}g: front axle ");
        assert!(
            told.as_str().is_some_and(|t| t.starts_with(&start)),
            "{key:?}: {told}"
        );
        assert_eq!(focused(&window, TAG).await[1], format!("{at}\u{2009}g"));
    }
    let told = within(&window, TAG, TOLD).await;
    press(&window, &[Key::Enter]).await;
    let answer = window.answer(TAG).await;
    let told = told.as_str().expect("a text");
    assert!(told.ends_with(&said_of(&answer)), "{told}: {answer}");
    let live = within(&window, TAG, "return root.querySelector('.read').ariaLive;").await;
    assert_eq!(live, "polite");
    press(&window, &[Key::Escape]).await;
    let left = within(
        &window,
        TAG,
        "return [root.activeElement, root.querySelector('.read').textContent];",
    )
    .await;
    assert_eq!(left, json!([null, ""]), "Escape leaves");

    // Every row of the table is what the read-out says there.
    let rows = within(
        &window,
        TAG,
        "const data = root.querySelector('.data'); const before = data.querySelector('table');\
         data.open = true; await new Promise((r) => setTimeout(r, 100));\
         return [before, [...data.querySelectorAll('tr')].map((row) => [...row.children].map((cell) => cell.textContent)), data.querySelector('caption').textContent];",
    )
    .await;
    assert_eq!(rows[0], Value::Null, "built only while open");
    assert_eq!(rows[2], "Axle loads against acceleration");
    let rows = rows[1].as_array().expect("rows");
    assert_eq!(
        rows[0],
        json!(["acceleration, g", "front axle, N", "rear axle, N"])
    );
    assert!((11..=26).contains(&rows.len()), "{} rows", rows.len());
    focus(&window, TAG, ".cursor").await;
    press(&window, &[Key::Home]).await;
    let apart = rows[2][0].as_str().and_then(|x| x.parse::<f64>().ok());
    let apart = (apart.expect("a number") / 0.01).round() as usize;
    for row in &rows[1..] {
        let cell = |at: usize| row[at].as_str().unwrap_or("");
        let want = format!(
            "acceleration {}\u{2009}g: front axle {}\u{2009}N, rear axle {}\u{2009}N",
            cell(0),
            cell(1),
            cell(2)
        );
        assert_eq!(within(&window, TAG, TOLD).await, want);
        press(&window, &vec![Key::Right; apart]).await;
    }
    // It follows a slider while it is open, and `show` can leave it out.
    let first = "return root.querySelector('.sheet td').textContent;";
    let before = within(&window, TAG, first).await;
    within(
        &window,
        TAG,
        "element.setAttribute('mass', '2 t'); await new Promise((r) => setTimeout(r, 50));",
    )
    .await;
    assert_ne!(within(&window, TAG, first).await, before);
    within(&window, TAG, "element.setAttribute('show', 'figure chart'); await new Promise((r) => setTimeout(r, 50));").await;
    let shown = within(
        &window,
        TAG,
        "return root.querySelector('.data').checkVisibility();",
    )
    .await;
    assert_eq!(shown, false);
    clean_up(window).await;
}

#[tokio::test]
async fn no_violation_with_any_of_them_focused_and_the_table_open() {
    let window = Window::open().await;
    let axe = needed(&axlewright_tests::file("node_modules/axe-core/axe.min.js"));
    for (page, tag) in [
        ("load-transfer.html", "axle-load-transfer"),
        ("traction.html", "axle-traction"),
        ("turn-in-place.html", "axle-turn-in-place"),
    ] {
        window.visit(page).await;
        window.ready(tag).await;
        window
            .driver
            .execute(&axe, Vec::new())
            .await
            .expect("axe-core loads");
        within(&window, tag, "root.querySelector('.data').open = true;").await;
        let focusable = "root.querySelectorAll('.hold, .grip.choose:checked, .cursor, .sheet')";
        let count = within(&window, tag, &format!("return {focusable}.length;")).await;
        let count = count.as_u64().expect("a count");
        assert!(count >= 3, "{page}: {count}");
        for at in 0..count {
            let script = format!(
                "{focusable}[{at}].focus(); return root.activeElement === {focusable}[{at}];"
            );
            assert_eq!(within(&window, tag, &script).await, true, "{page} {at}");
            no_violation(&window, page).await;
        }
    }
    clean_up(window).await;
}

#[tokio::test]
async fn handles_cost_a_slider_step_little() {
    let window = Window::open().await;
    window.visit("load-transfer.html").await;
    window.ready(TAG).await;
    // The same element with no handle and with all three, in turn; a step of the same slider.
    let script = "
        const after = () => new Promise((done) => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = done; port2.postMessage(0);
        });
        const times = { 'mass': [], 'mass acceleration cg-height cg-to-front-axle': [] };
        for (let round = 0; round < 8; round += 1) {
            for (const controls of Object.keys(times)) {
                element.setAttribute('controls', controls);
                await new Promise((r) => setTimeout(r, 30));
                const slider = root.querySelector('#mass-slider');
                for (let step = 0; step < 40; step += 1) {
                    slider.value = 1500 + 10 * step;
                    const start = performance.now();
                    slider.dispatchEvent(new Event('input', { bubbles: true }));
                    await after();
                    if (step > 5) times[controls].push(performance.now() - start);
                }
            }
        }
        const median = (list) => list.sort((a, b) => a - b)[list.length >> 1];
        return Object.values(times).map(median);";
    let found = within(&window, TAG, script).await;
    let [without, with] = [0, 1].map(|at| found[at].as_f64().expect("a time"));
    eprintln!("a slider step takes {without:.2} ms without handles, {with:.2} ms with three");
    assert!(without > 0.0 && with < 1.5 * without + 0.5, "{found}");
    clean_up(window).await;
}
