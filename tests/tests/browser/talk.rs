//! A talk as a speaker gives it: forward and back, what if, ink, the presenter's window, paper, keys.

use crate::access::{judged, no_violation};
use crate::hands::{goes, perform};
use crate::print::{page_count, printed};
use axlewright_tests::run;
use axlewright_tests::session::{Window, answer_of_program, needed, site};
use serde_json::{Value, json};
use thirtyfour::{By, Key};

const PAGE: &str = "talks.html";

/// Runs a script that knows the first talk of the page as `talk`, its shadow root as `root`, and how to
/// wait until a step is shown.
pub(crate) async fn within(window: &Window, script: &str) -> Value {
    let all = format!(
        "const talk = document.querySelector('axle-talk'); const root = talk.shadowRoot;\
         const press = (name) => root.querySelector(`[data-name=\"${{name}}\"]`).click();\
         const shown = (act) => new Promise((done) => {{\
           talk.addEventListener('axle-step', (event) => done(event.detail), {{ once: true }}); act(); }});\
         {script}"
    );
    window.run(&all).await
}

/// Opens the page and waits for the first step of its first talk.
pub(crate) async fn opened(window: &Window) {
    window.visit(PAGE).await;
    begun(window).await;
}

pub(crate) async fn begun(window: &Window) {
    let script = "await customElements.whenDefined('axle-talk');\
        for (let i = 0; i < 400 && !talk.said; i++) await new Promise(r => setTimeout(r, 50));\
        return talk.said;";
    let said = within(window, script).await;
    assert_ne!(said, "", "the talk does not begin");
}

fn talk_data() -> toml::Table {
    let path = axlewright_tests::file("../site/talks/where-the-weight-goes.toml");
    let text = std::fs::read_to_string(path).expect("the talk");
    toml::from_str(&text).expect("TOML")
}

#[tokio::test]
async fn a_talk_goes_forward_and_back_and_says_what_the_program_computes() {
    let window = Window::open().await;
    opened(&window).await;
    assert_eq!(
        within(&window, "return [talk.step, talk.steps];").await,
        json!([1, 6])
    );
    let second = within(&window, "return await shown(() => talk.forward());").await;
    assert_eq!(second["step"], 2);
    let scenario =
        json!({ "vehicle": { "base": "esker" }, "load_transfer": { "acceleration": "0 g" } });
    let answer = answer_of_program("load_transfer", &scenario);
    let rear = answer["rear_axle_load"].as_f64().expect("a number") / 1000.0;
    let said = second["said"].as_str().expect("a sentence");
    assert!(
        said.contains(&format!("{rear:.2}\u{2009}kN")),
        "{said}, program {rear}"
    );
    // The figure shows what is said: the element on the stage has the same answer.
    let shown = within(
        &window,
        "return root.querySelector('axle-load-transfer').answer;",
    )
    .await;
    assert_eq!(shown["rear_axle_load"], answer["rear_axle_load"]);
    let third = within(&window, "return await shown(() => press('forward'));").await;
    assert_eq!(third["step"], 3);
    let back = within(&window, "return await shown(() => press('back'));").await;
    assert_eq!(back, second, "back to the same words");
    let first = within(
        &window,
        "return (await shown(() => { talk.step = 1; })).step;",
    )
    .await;
    assert_eq!(first, 1);
    assert_eq!(window.complaints().await, Vec::<String>::new());
    assert_eq!(window.foreign_requests().await, json!([]));
    window.close().await;
}

#[tokio::test]
async fn between_two_steps_every_picture_is_solved() {
    let window = Window::open().await;
    opened(&window).await;
    within(&window, "await shown(() => talk.goTo(1));").await;
    // Every picture on the way has loads that add up to the weight and rise with the acceleration.
    let script = "const element = root.querySelector('axle-load-transfer'); const seen = [];\
        const watch = new MutationObserver(() => { const a = element.answer;\
          seen.push([a.front_axle_load + a.rear_axle_load, a.rear_axle_load]); });\
        watch.observe(element.shadowRoot.querySelector('.figure'), { attributes: true, characterData: true, childList: true, subtree: true });\
        await shown(() => talk.forward()); watch.disconnect(); return seen;";
    let seen = within(&window, script).await;
    let seen = seen.as_array().expect("a list");
    assert!(seen.len() > 5, "only {} pictures on the way", seen.len());
    let weight = 1850.0 * 9.81;
    let mut last = 0.0;
    for pair in seen {
        let (sum, rear) = (
            pair[0].as_f64().unwrap_or(0.0),
            pair[1].as_f64().unwrap_or(0.0),
        );
        assert!((sum - weight).abs() < 1e-6, "{sum} of {weight}");
        assert!(rear >= last, "{rear} after {last}");
        last = rear;
    }
    window.close().await;
}

#[tokio::test]
async fn a_reader_who_wants_no_motion_gets_none() {
    let window = Window::open_with(1280, &["--force-prefers-reduced-motion"]).await;
    opened(&window).await;
    within(&window, "await shown(() => talk.goTo(1));").await;
    let script = "const element = root.querySelector('axle-load-transfer'); const seen = new Set();\
        const rear = () => element.answer.rear_axle_load; const before = rear();\
        element.addEventListener('axle-answer', (e) => seen.add(e.detail.rear_axle_load), { capture: true });\
        await shown(() => talk.forward()); const after = rear();\
        return [before < after, seen.has(after), [...seen].filter((load) => load !== before && load !== after)];";
    let found = within(&window, script).await;
    assert_eq!(
        found,
        json!([true, true, []]),
        "states between the two steps"
    );
    window.close().await;
}

#[tokio::test]
async fn parts_appear_and_a_caution_is_always_there() {
    let window = Window::open().await;
    opened(&window).await;
    let count = "const figure = root.querySelector('axle-load-transfer').shadowRoot.querySelector('.figure svg');\
        const caution = root.querySelector('axle-load-transfer').shadowRoot.querySelector('.caution');\
        return [figure.querySelectorAll('*').length, caution.checkVisibility() && caution.textContent.length > 40];";
    let mut before = 0;
    for step in [0, 1] {
        within(
            &window,
            &format!("if ({step}) await shown(() => talk.goTo({step}));"),
        )
        .await;
        let found = within(&window, count).await;
        let things = found[0].as_u64().expect("a count");
        assert!(things > before, "step {step}: {things} after {before}");
        assert_eq!(found[1], true, "step {step}");
        before = things;
    }
    window.close().await;
}

#[tokio::test]
async fn what_if_moves_the_inputs_and_one_key_brings_the_talk_back() {
    let window = Window::open().await;
    opened(&window).await;
    let said = within(&window, "return (await shown(() => talk.goTo(1))).said;").await;
    within(
        &window,
        "press('what'); await new Promise(r => setTimeout(r, 200));",
    )
    .await;
    let slider = window
        .driver
        .find(By::Css("axle-talk"))
        .await
        .expect("a talk");
    let root = slider.get_shadow_root().await.expect("its root");
    let element = root
        .find(By::Css("axle-load-transfer"))
        .await
        .expect("the stage");
    let inner = element.get_shadow_root().await.expect("its root");
    let field = inner
        .find(By::Css("#cg-height-slider"))
        .await
        .expect("a slider");
    field
        .send_keys(Key::Right + Key::Right + Key::Right)
        .await
        .expect("keys");
    let changed = within(
        &window,
        "await new Promise(r => setTimeout(r, 300)); return talk.said;",
    )
    .await;
    assert_ne!(changed, said, "the sentence follows the inputs");
    // The sentence agrees with the answer on the stage.
    let height = within(
        &window,
        "return root.querySelector('axle-load-transfer').scenario.vehicle.cg_height;",
    )
    .await;
    let height = height.as_str().expect("a text").trim_end_matches(" m");
    assert!(
        changed.as_str().is_some_and(|s| s.contains(&height[..4])),
        "{changed}, {height}"
    );
    within(&window, "root.querySelector('[data-name=what]').focus();").await;
    let active = window.driver.active_element().await.expect("the focus");
    active.send_keys("r").await.expect("a key");
    let back = within(
        &window,
        "await new Promise(r => setTimeout(r, 500)); return talk.said;",
    )
    .await;
    assert_eq!(back, said);
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_question_waits_for_a_prediction() {
    let window = Window::open().await;
    opened(&window).await;
    within(&window, "await shown(() => talk.goTo(2));").await;
    let asked = within(&window, "return await shown(() => talk.forward());").await;
    assert_eq!(
        (&asked["step"], &asked["question"]),
        (&json!(4), &json!(true))
    );
    // Nothing that is shown gives the answer away.
    let text = within(&window, "return root.querySelector('.talk').innerText;").await;
    assert!(!text.as_str().expect("a text").contains("1.66"), "{text}");
    let guess = "const field = root.querySelector('.question input'); field.value = '2';\
        field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, composed: true }));\
        return [talk.step, root.querySelector('.told').textContent];";
    assert_eq!(within(&window, guess).await, json!([4, "2"]));
    within(
        &window,
        "await shown(() => root.querySelector('.question .main').click());\
        await new Promise(r => setTimeout(r, 200));",
    )
    .await;
    let verdict = within(
        &window,
        "return root.querySelector('.verdict').textContent;",
    )
    .await;
    assert_eq!(verdict, "Answer: 1.66. Predicted: 2.");
    // It is asked once.
    within(&window, "await shown(() => talk.back());").await;
    let again = within(&window, "return await shown(() => talk.forward());").await;
    assert_eq!(again["question"], Value::Null);
    // Hands are counted where there are choices: the second talk asks for the larger of two.
    let hands = "const talk = document.querySelectorAll('axle-talk')[1]; const root = talk.shadowRoot;\
        for (let i = 0; i < 400 && !talk.said; i++) await new Promise(r => setTimeout(r, 50));\
        const shown = (act) => new Promise((done) => talk.addEventListener('axle-step', (e) => done(e.detail), { once: true }, act()));\
        await shown(() => talk.goTo(2));\
        const more = root.querySelectorAll('.question .hand button'); more[0].click(); more[1].click(); more[1].click();\
        await shown(() => talk.forward()); await new Promise(r => setTimeout(r, 300));\
        return root.querySelector('.verdict').textContent;";
    let told = window.run(hands).await;
    assert_eq!(
        told,
        "Answer: what it has. Predicted: what it needs 1; what it has 2."
    );
    window.close().await;
}

/// Draws on the figure with a pointer: presses, goes along a way, holds as long as told, lets go.
pub(crate) async fn stroke(window: &Window, kind: &'static str, way: &[(f64, f64)], hold_ms: u64) {
    let script = "root.querySelector('.board').scrollIntoView({ block: 'center' });\
        const box = root.querySelector('.board').getBoundingClientRect();\
        return [box.left, box.top, box.width, box.height];";
    let found = within(window, script).await;
    let side = |at: usize| found[at].as_f64().expect("a length");
    let place = |share: &(f64, f64)| (side(0) + share.0 * side(2), side(1) + share.1 * side(3));
    let mut steps = vec![
        goes(place(&way[0])),
        json!({ "type": "pointerDown", "button": 0 }),
    ];
    steps.extend(way[1..].iter().map(|share| goes(place(share))));
    steps.push(json!({ "type": "pause", "duration": hold_ms }));
    steps.push(json!({ "type": "pointerUp", "button": 0 }));
    perform(window, kind, steps).await;
}

#[tokio::test]
async fn ink_is_drawn_straightened_rubbed_out_and_kept_with_its_step() {
    let window = Window::open().await;
    opened(&window).await;
    let strokes = "return root.querySelectorAll('.board > g').length;";
    within(&window, "press('pen');").await;
    for kind in ["mouse", "touch", "pen"] {
        stroke(&window, kind, &[(0.2, 0.2), (0.3, 0.3), (0.4, 0.25)], 0).await;
    }
    assert_eq!(
        within(&window, strokes).await,
        3,
        "by mouse, finger and pen"
    );
    within(&window, "press('undo');").await;
    assert_eq!(within(&window, strokes).await, 2);
    // Held still, a stroke becomes a line, then an arrow.
    stroke(&window, "mouse", &[(0.5, 0.6), (0.6, 0.7), (0.8, 0.6)], 800).await;
    stroke(
        &window,
        "mouse",
        &[(0.5, 0.8), (0.6, 0.9), (0.8, 0.8)],
        1600,
    )
    .await;
    let paths = within(
        &window,
        "return [...root.querySelectorAll('.board > g:nth-last-child(-n+2) path')]\
        .map(path => path.getAttribute('d').replace(/[-\\d. ]+/g, ''));",
    )
    .await;
    assert_eq!(paths, json!(["ML", "MLMLL"]), "a line and an arrow");
    // In the file the ink lies on the figure in a fixed colour.
    let file = within(&window, "return await talk.figure();").await;
    let file = file.as_str().expect("an SVG");
    let strokes_in_file = file.matches("stroke=\"#1d2433\"").count();
    assert!(strokes_in_file >= 4, "{file}");
    assert!(file.contains("<title"), "{file}");
    // Each step has its own.
    within(&window, "await shown(() => talk.goTo(1));").await;
    assert_eq!(within(&window, strokes).await, 0);
    within(&window, "await shown(() => talk.goTo(0));").await;
    assert_eq!(within(&window, strokes).await, 4);
    within(&window, "press('rubber');").await;
    stroke(&window, "mouse", &[(0.65, 0.5), (0.65, 0.75)], 0).await;
    assert_eq!(within(&window, strokes).await, 3, "the line is rubbed out");
    within(&window, "press('clear');").await;
    assert_eq!(within(&window, strokes).await, 0);
    within(&window, "press('undo');").await;
    assert_eq!(within(&window, strokes).await, 3);
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn ink_appears_within_a_frame() {
    let window = Window::open().await;
    opened(&window).await;
    within(&window, "press('pen');").await;
    // The stroke is in the page when the handler returns, so the next picture has it.
    let script = "const board = root.querySelector('.board'); const box = board.getBoundingClientRect(); const took = [];\
        const at = (x) => ({ clientX: box.left + x, clientY: box.top + 100, pointerId: 1, isPrimary: true, bubbles: true, pointerType: 'mouse' });\
        board.setPointerCapture = () => {};\
        board.dispatchEvent(new PointerEvent('pointerdown', at(100)));\
        board.dispatchEvent(new PointerEvent('pointermove', at(101)));\
        let before = board.innerHTML.length, grew = true;\
        for (let x = 102; x < 400; x++) { const start = performance.now();\
          board.dispatchEvent(new PointerEvent('pointermove', at(x))); took.push(performance.now() - start);\
          grew &&= board.innerHTML.length > before; before = board.innerHTML.length; }\
        board.dispatchEvent(new PointerEvent('pointerup', at(400)));\
        took.sort((a, b) => a - b); return [grew, took[Math.floor(took.length * 0.95)]];";
    let found = within(&window, script).await;
    assert_eq!(found[0], true, "every movement adds to the stroke at once");
    let slowest = found[1].as_f64().expect("a time");
    assert!(
        slowest < 8.0,
        "{slowest} ms for one movement: more than half a frame"
    );
    window.close().await;
}

#[tokio::test]
async fn the_presenters_window_follows_and_leads() {
    let window = Window::open().await;
    opened(&window).await;
    let main = window.driver.window().await.expect("a window");
    within(
        &window,
        "press('presenter'); await new Promise(r => setTimeout(r, 600));",
    )
    .await;
    let all = window.driver.windows().await.expect("windows");
    assert_eq!(all.len(), 2);
    let other = all
        .into_iter()
        .find(|handle| *handle != main)
        .expect("the presenter's");
    let text = "return document.body.innerText;";
    window
        .driver
        .switch_to_window(other.clone())
        .await
        .expect("it");
    let told = window
        .run(text)
        .await
        .as_str()
        .unwrap_or_default()
        .to_owned();
    assert!(
        told.contains("Esker is an invented saloon"),
        "its note: {told}"
    );
    assert!(told.contains("Its mass sits"), "the next step: {told}");
    assert!(
        told.contains("Step 1 of 6") && told.contains("0:0"),
        "{told}"
    );
    // A key in it turns the page in the main window, and it follows.
    let body = window.driver.find(By::Css("body")).await.expect("a body");
    body.send_keys(Key::PageDown + "").await.expect("a key");
    window
        .run("await new Promise(r => setTimeout(r, 2500));")
        .await;
    let told = window
        .run(text)
        .await
        .as_str()
        .unwrap_or_default()
        .to_owned();
    assert!(
        told.contains("Step 2 of 6") && told.contains("The two loads add up"),
        "{told}"
    );
    window
        .driver
        .switch_to_window(main)
        .await
        .expect("the main window");
    assert_eq!(within(&window, "return talk.step;").await, 2);
    // One that cannot be opened: the note stands below the talk.
    within(
        &window,
        "talk.remove(); document.querySelector('main').append(talk);",
    )
    .await;
    window.run("window.open = () => null;").await;
    window.visit(PAGE).await;
    begun(&window).await;
    let noted = within(&window, "window.open = () => null; press('presenter');\
        await new Promise(r => setTimeout(r, 300)); return root.querySelector('.notes').checkVisibility();").await;
    assert_eq!(noted, true);
    window.close().await;
}

#[tokio::test]
async fn a_talk_can_be_given_by_keyboard_alone() {
    let window = Window::open().await;
    opened(&window).await;
    let step = "await new Promise(r => setTimeout(r, 2600)); return talk.step;";
    within(
        &window,
        "root.querySelector('[data-name=forward]').focus();",
    )
    .await;
    let keys = [
        (Key::PageDown, 2),
        (Key::Right, 3),
        (Key::PageUp, 2),
        (Key::Left, 1),
        (Key::End, 6),
        (Key::Home, 1),
    ];
    for (key, wanted) in keys {
        let active = window.driver.active_element().await.expect("the focus");
        active.send_keys(key + "").await.expect("a key");
        assert_eq!(within(&window, step).await, wanted, "step {wanted}");
    }
    // Every button is reached by Tab, and the letters press it.
    let active = window.driver.active_element().await.expect("the focus");
    active.send_keys("n").await.expect("a key");
    assert_eq!(
        within(&window, "return !root.querySelector('.notes').hidden;").await,
        true
    );
    let focusable = "return [...root.querySelectorAll('.bar button, .tools button, select')]\
        .filter(b => b.tabIndex < 0).length;";
    assert_eq!(within(&window, focusable).await, 0);
    active.send_keys("c").await.expect("a key");
    assert_eq!(
        within(
            &window,
            "return root.querySelector('.bar').checkVisibility();"
        )
        .await,
        false
    );
    // With nothing of the talk in focus, one talk alone on a page takes the keys of a remote.
    window
        .run("for (const other of [...document.querySelectorAll('axle-talk')].slice(1)) other.remove(); document.activeElement.blur();")
        .await;
    let body = window.driver.find(By::Css("body")).await.expect("a body");
    body.send_keys(Key::PageDown + "").await.expect("a key");
    assert_eq!(within(&window, step).await, 2, "a remote");
    window.close().await;
}

#[tokio::test]
async fn a_swipe_turns_the_page() {
    let window = Window::open().await;
    opened(&window).await;
    let script = "const stage = root.querySelector('.stage');\
        const swipe = (from, to) => { const at = (x) => ({ clientX: x, clientY: 300, pointerType: 'touch', bubbles: true, isPrimary: true });\
          stage.dispatchEvent(new PointerEvent('pointerdown', at(from))); stage.dispatchEvent(new PointerEvent('pointerup', at(to))); };\
        const on = (await shown(() => swipe(400, 250))).step;\
        const back = (await shown(() => swipe(250, 400))).step;\
        swipe(250, 270); return [on, back, talk.step];";
    assert_eq!(within(&window, script).await, json!([2, 1, 1]));
    window.close().await;
}

#[tokio::test]
async fn the_handout_has_a_block_for_each_step_and_page_numbers() {
    let window = Window::open().await;
    opened(&window).await;
    let blocks = within(
        &window,
        "const handout = await talk.handout();\
        return [...handout.querySelectorAll('.block')].map(b => [b.querySelectorAll('svg').length,\
          b.querySelector('.said').textContent.length > 20, Boolean(b.querySelector('.note')),\
          b.querySelectorAll('.working math').length > 0, /step\\.|source\\./.test(b.querySelector('.working').textContent)]);",
    )
    .await;
    assert_eq!(blocks.as_array().map(Vec::len), Some(6));
    for block in blocks.as_array().expect("blocks") {
        // Figure, sentence, note, equations; no key of the catalogue in place of its words.
        assert_eq!(*block, json!([1, true, true, true, false]));
    }
    // What goes to the printer, made a PDF instead: the frame's content on a page of its own.
    let html = within(&window, "const print = HTMLIFrameElement.prototype;\
        let page; const append = document.body.append.bind(document.body);\
        document.body.append = (frame) => { append(frame); frame.contentWindow.print = () => {\
          const css = [...frame.contentDocument.adoptedStyleSheets[0].cssRules].map(r => r.cssText).join('\\n');\
          page = `<!doctype html><meta charset=utf-8><style>${css}</style>` + frame.contentDocument.body.innerHTML;\
          frame.contentWindow.dispatchEvent(new Event('afterprint')); }; };\
        await talk.print(); return page;").await;
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("handout.html");
    std::fs::write(&path, html.as_str().expect("a page")).expect("written");
    window.go(&format!("file://{}", path.display())).await;
    let size = json!({ "preferCSSPageSize": true });
    let pdf = printed(&window, "handout", size).await;
    let pages = page_count(&pdf);
    assert!((2..=9).contains(&pages), "{pages} pages for six steps");
    // What is read on each page: its number and how many there are, and every equation of a step.
    let file = folder.path().join("handout.pdf");
    std::fs::write(&file, &pdf).expect("written");
    let told = std::process::Command::new("pdftotext")
        .args(["-layout", "-enc", "UTF-8"])
        .args([file.as_os_str(), "-".as_ref()])
        .output()
        .expect("pdftotext (tests/run installs it)");
    let text = String::from_utf8(told.stdout).expect("UTF-8");
    let leaves: Vec<&str> = text.split_terminator('\u{c}').collect();
    assert_eq!(leaves.len(), pages, "{text}");
    for (at, leaf) in leaves.iter().enumerate() {
        let last = leaf.lines().rev().find(|line| !line.trim().is_empty());
        // The text of a PDF has places instead of spaces.
        let last = last.map(|line| line.replace(' ', ""));
        assert_eq!(last, Some(format!("{}/{pages}", at + 1)), "{leaf}");
    }
    for said in [
        "Step 1 of 6",
        "Step 6 of 6",
        "Esker is an invented saloon",
        "11.3",
    ] {
        assert!(text.contains(said), "{said}: {text}");
    }
    window.close().await;
}

#[tokio::test]
async fn the_text_of_a_talk_is_always_reachable() {
    let window = Window::open().await;
    opened(&window).await;
    let items = within(&window, "root.querySelector('.transcript').open = true;\
        for (let i = 0; i < 50 && !root.querySelector('.transcript li'); i++) await new Promise(r => setTimeout(r, 50));\
        return [...root.querySelectorAll('.transcript li')].map(li => li.innerText);").await;
    let items = items.as_array().expect("a list");
    assert_eq!(items.len(), 6);
    assert!(
        items[3].to_string().contains("11.3"),
        "what is said: {}",
        items[3]
    );
    assert!(
        items[3].to_string().contains("rear axle"),
        "what is drawn: {}",
        items[3]
    );
    // Without script it stands in the page.
    let html = std::fs::read_to_string(site().folder.join(PAGE)).expect("the page");
    assert!(html.contains("<ol class=\"transcript\">") && html.contains("11.3\u{2009}kN"));
    // What a screen reader is told when the step changes.
    let live = within(
        &window,
        "return root.querySelector('[aria-live]').textContent === talk.said;",
    )
    .await;
    assert_eq!(live, true);
    window.close().await;
}

#[tokio::test]
async fn no_violation_in_any_state_of_a_talk() {
    for arguments in [
        &[][..],
        &[
            "--force-dark-mode",
            "--blink-settings=preferredColorScheme=0",
        ],
    ] {
        let window = Window::open_with(1280, arguments).await;
        let axe = needed(&axlewright_tests::file("node_modules/axe-core/axe.min.js"));
        opened(&window).await;
        window
            .driver
            .execute(&axe, Vec::new())
            .await
            .expect("axe-core");
        let states = [
            ("at first", ""),
            (
                "what if",
                "press('what'); await new Promise(r => setTimeout(r, 300));",
            ),
            ("pen and notes", "press('pen'); press('notes_open');"),
            ("asking", "await shown(() => talk.goTo(3));"),
            (
                "answered",
                "await shown(() => talk.forward()); await new Promise(r => setTimeout(r, 300));",
            ),
            (
                "open texts",
                "root.querySelectorAll('details').forEach(d => { d.open = true; }); await new Promise(r => setTimeout(r, 500));",
            ),
            ("a chart", "await shown(() => talk.goTo(5));"),
            (
                "large and dark",
                "press('large'); press('dark'); await new Promise(r => setTimeout(r, 300));",
            ),
            (
                "framed",
                "press('wide'); await new Promise(r => setTimeout(r, 300));",
            ),
            (
                "upright, and seen through",
                "press('tall'); press('clear_paper'); await new Promise(r => setTimeout(r, 300));",
            ),
            (
                "clean",
                "press('clean'); await new Promise(r => setTimeout(r, 300));",
            ),
            (
                "large text",
                "for (const name of ['clean', 'frame', 'background', 'size']) talk.removeAttribute(name);\
                 document.documentElement.style.fontSize = '200%'; await shown(() => talk.goTo(1));",
            ),
            (
                "large text, what if",
                "press('what'); await new Promise(r => setTimeout(r, 300));",
            ),
        ];
        for (state, act) in states {
            within(&window, act).await;
            let found = judged(&window, "document.querySelector('axle-talk')").await;
            assert!(found[0].as_u64() > Some(10), "{state}: {found}");
            assert_eq!(found[1], json!([]), "{state}");
        }
        no_violation(&window, PAGE).await;
        window.close().await;
    }
}

#[tokio::test]
async fn no_violation_on_a_telephone_nor_with_forced_colours_nor_in_what_is_rare() {
    let window = Window::open().await;
    let axe = needed(&axlewright_tests::file("node_modules/axe-core/axe.min.js"));
    let size = json!({ "width": 320, "height": 700, "deviceScaleFactor": 1, "mobile": false });
    window
        .debug("Emulation.setDeviceMetricsOverride", size)
        .await;
    opened(&window).await;
    let bring = async || {
        let brought = window.driver.execute(&axe, Vec::new()).await;
        brought.expect("axe-core");
    };
    let judge = async |state: &str, part: &str| {
        let found = judged(&window, part).await;
        assert!(found[0].as_u64() > Some(8), "{state}: {found}");
        assert_eq!(found[1], json!([]), "{state}");
    };
    let talk = "document.querySelector('axle-talk')";
    bring().await;
    for (state, act) in [
        ("320 px", ""),
        (
            "320 px, what if",
            "press('what'); await new Promise(r => setTimeout(r, 300));",
        ),
        ("320 px, asking", "await shown(() => talk.goTo(3));"),
        ("320 px, a chart", "await shown(() => talk.goTo(5));"),
        (
            "320 px, upright",
            "press('tall'); await new Promise(r => setTimeout(r, 300));",
        ),
    ] {
        within(&window, act).await;
        judge(state, talk).await;
        let wide = "const d = document.documentElement; return [d.scrollWidth, d.clientWidth];";
        let wide = window.run(wide).await;
        assert_eq!(wide[0], wide[1], "{state} scrolls sideways");
    }
    window
        .debug("Emulation.clearDeviceMetricsOverride", json!({}))
        .await;
    let features = json!({ "features": [{ "name": "forced-colors", "value": "active" }] });
    window.debug("Emulation.setEmulatedMedia", features).await;
    within(
        &window,
        "press('tall'); press('pen'); await shown(() => talk.goTo(1));",
    )
    .await;
    let forced = window
        .run("return matchMedia('(forced-colors: active)').matches;")
        .await;
    assert_eq!(forced, true);
    judge("forced colours", talk).await;
    window
        .debug("Emulation.setEmulatedMedia", json!({ "features": [] }))
        .await;
    // A step that shows its working, and a talk that cannot be shown.
    for (state, steps) in [
        (
            "working",
            r#"[{"topic":"load_transfer","parts":"all working","say":"It is {rear_to_front_ratio}."}]"#,
        ),
        (
            "refused",
            r#"[{"topic":"load_transfer","say":"It is {rear_to_frnt_ratio}."}]"#,
        ),
    ] {
        let script = format!(
            "const made = document.createElement('axle-talk'); made.id = '{state}'; const text = document.createElement('script');\
             text.type = 'application/json'; text.textContent = JSON.stringify({{ title: 'T', vehicle: 'esker', steps: {steps} }}); made.append(text);\
             const over = new Promise((done) => ['axle-step', 'axle-problem'].forEach((name) => made.addEventListener(name, (e) => done(e.type))));\
             document.querySelector('main').append(made); const how = await over; await new Promise(r => setTimeout(r, 300));\
             return [how, made.shadowRoot.querySelectorAll('.workings math').length > 0];"
        );
        let how = window.run(&script).await;
        let wanted = if state == "working" {
            json!(["axle-step", true])
        } else {
            json!(["axle-problem", false])
        };
        assert_eq!(how, wanted);
        let found = judged(&window, &format!("document.querySelector('#{state}')")).await;
        assert!(found[0].as_u64() > Some(3), "{state}: {found}");
        assert_eq!(found[1], json!([]), "{state}");
    }
    // The speaker's own window.
    let main = window.driver.window().await.expect("a window");
    within(
        &window,
        "press('presenter'); await new Promise(r => setTimeout(r, 600));",
    )
    .await;
    let all = window.driver.windows().await.expect("windows");
    let other = all.into_iter().find(|handle| *handle != main);
    window
        .driver
        .switch_to_window(other.expect("the presenter's"))
        .await
        .expect("it");
    bring().await;
    judge("presenter", "document").await;
    window.close().await;
}

#[tokio::test]
async fn the_built_file_is_whole_and_small() {
    let folder = tempfile::tempdir().expect("a folder");
    let place = |name: &str| folder.path().join(name).display().to_string();
    let (talk, html) = (place("talk.toml"), place("talk.html"));
    let made = run(&["talk", "new", &talk]);
    assert_eq!(made.code, Some(0), "{}", made.stderr);
    let checked = run(&["talk", "check", &talk]);
    assert_eq!(checked.code, Some(0), "{}", checked.stderr);
    // The largest that there can be: every topic, in a language that brings its own words.
    let all = place("all.toml");
    let steps: String = axlewright_core::topic::TOPICS
        .iter()
        .map(|topic| {
            format!(
                "[[steps]]\ntopic = \"{}\"\nsay = \"Ein Bild.\"\n",
                topic.name
            )
        })
        .collect();
    std::fs::write(&all, format!("title = \"T\"\nlang = \"de\"\n{steps}")).expect("written");
    let site = |name: &str| {
        axlewright_tests::file(&format!("../site/talks/{name}.toml"))
            .display()
            .to_string()
    };
    let others = [
        "where-the-weight-goes",
        "turning-on-the-spot",
        "why-more-than-one-motor",
    ]
    .map(site);
    for from in others.iter().chain([&all, &talk]) {
        let built = run(&["talk", "build", from, "-o", &html]);
        assert_eq!(built.code, Some(0), "{}", built.stderr);
        let size = std::fs::metadata(&html).expect("a file").len();
        println!("{from}: {size} bytes");
        assert!(size < 1_000_000, "{from}: {size} bytes");
    }
    let window = Window::open().await;
    window.debug("Network.enable", json!({})).await;
    window
        .debug("Network.emulateNetworkConditions", json!({ "offline": true, "latency": 0, "downloadThroughput": 0, "uploadThroughput": 0 }))
        .await;
    window.go(&format!("file://{html}")).await;
    begun(&window).await;
    let said = within(
        &window,
        "await shown(() => talk.forward()); return (await shown(() => talk.forward())).said;",
    )
    .await;
    assert!(said.as_str().is_some_and(|s| s.contains("1.66")), "{said}");
    let equations = "return (await talk.handout()).querySelectorAll('.working math').length > 2;";
    assert_eq!(within(&window, equations).await, true);
    // What the file leaves out is not missed: every topic is shown, in the language of the talk.
    let built = run(&["talk", "build", &all, "-o", &html]);
    assert_eq!(built.code, Some(0), "{}", built.stderr);
    window.go(&format!("file://{html}")).await;
    begun(&window).await;
    let shown = within(
        &window,
        "const seen = []; for (let at = 0; at < talk.steps; at += 1) {\
           await talk.goTo(at); const one = [...root.querySelector('.stage').children].find(e => e.localName.startsWith('axle-') && !e.hidden);\
           seen.push([one.localName, one.answer !== null, root.querySelector('.notice').textContent, one.shadowRoot.querySelector('[part~=notice]').textContent]); }\
         press('what'); await new Promise(r => setTimeout(r, 500));\
         return [seen, root.querySelector('axle-choice').shadowRoot.querySelector('.controls').textContent];",
    )
    .await;
    let shown_topics = shown[0].as_array().expect("a list");
    assert_eq!(shown_topics.len(), axlewright_core::topic::TOPICS.len());
    for (topic, one) in axlewright_core::topic::TOPICS.iter().zip(shown_topics) {
        assert_eq!(*one, json!([topic.tag(), true, "", ""]));
    }
    assert!(
        shown[1]
            .as_str()
            .is_some_and(|words| words.contains("Motormoment")),
        "{shown}"
    );
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_talk_with_a_fault_is_told_in_a_sentence_and_its_text_stays() {
    let mut data = talk_data();
    let step = data["steps"][1].as_table_mut().expect("a step");
    step.insert("say".into(), "It is {rear_axle_lod}.".into());
    let window = Window::open().await;
    opened(&window).await;
    let json = serde_json::to_string(&data).expect("JSON");
    let script = format!(
        "const made = document.createElement('axle-talk'); const text = document.createElement('script');\
         text.type = 'application/json'; text.textContent = JSON.stringify({json});\
         const kept = document.createElement('p'); kept.textContent = 'kept'; made.append(text, kept);\
         const problem = new Promise(r => made.addEventListener('axle-problem', e => r(e.detail)));\
         document.querySelector('main').append(made); const detail = await problem;\
         return [detail.faults, made.shadowRoot.querySelector('.notice').textContent, kept.checkVisibility()];"
    );
    let found = window.run(&script).await;
    assert_eq!(found[0][0]["step"], 2);
    assert_eq!(found[0][0]["field"], "say");
    assert!(
        found[1]
            .as_str()
            .is_some_and(|s| s.contains("rear_axle_load")),
        "{found}"
    );
    assert_eq!(found[2], true, "what the page put inside stays");
    // A file that is not there, and one that is no TOML.
    for src in ["no-such.toml", "style.css"] {
        let script = format!(
            "const made = document.createElement('axle-talk'); made.setAttribute('src', '{src}');\
             const problem = new Promise(r => made.addEventListener('axle-problem', e => r(e.detail.message)));\
             document.querySelector('main').append(made); return await problem;"
        );
        let told = window.run(&script).await;
        assert!(
            told.as_str().is_some_and(|s| !s.is_empty()),
            "{src}: {told}"
        );
    }
    window.close().await;
}

#[tokio::test]
async fn a_talk_comes_from_a_toml_file() {
    let window = Window::open().await;
    opened(&window).await;
    let script = "const made = document.createElement('axle-talk'); made.setAttribute('src', 'talks/turning-on-the-spot.toml');\
        document.querySelector('main').append(made);\
        for (let i = 0; i < 100 && !made.said; i++) await new Promise(r => setTimeout(r, 50));\
        return [made.steps, made.said];";
    let found = window.run(script).await;
    assert_eq!(found[0], 6, "{found}");
    assert!(
        found[1].as_str().is_some_and(|s| s.contains("Moraine")),
        "{found}"
    );
    window.close().await;
}
