//! A run that is played, and motors that are placed: what only these two elements have.

use crate::session::Window;
use serde_json::json;

const LAUNCH: &str = "axle-launch";
const SPLIT: &str = "axle-motor-split";

#[tokio::test]
async fn a_launch_never_starts_by_itself_and_plays_pauses_steps_and_scrubs() {
    let window = Window::open().await;
    window.visit("launch.html").await;
    window.ready(LAUNCH).await;
    let seen = window
        .run(&format!(
            "const e = document.querySelector('{LAUNCH}'), r = e.shadowRoot;\
             const wait = (ms) => new Promise(done => setTimeout(done, ms));\
             const [play, back, on] = r.querySelectorAll('.playback button');\
             const scrub = r.querySelector('#playback-time');\
             const time = () => Number(scrub.value);\
             const out = {{}}; let changes = 0; e.addEventListener('axle-change', () => changes++);\
             await wait(600); out.still = time();\
             on.click(); on.click(); await wait(100); out.stepped = time();\
             back.click(); await wait(100); out.back = time();\
             out.told = changes;\
             const before = r.querySelector('.figure').innerHTML;\
             play.click(); out.pressed = play.textContent; await wait(900); out.later = time();\
             out.moved = r.querySelector('.figure').innerHTML !== before;\
             play.click(); await wait(100); out.paused = time(); await wait(400); out.stays = time();\
             scrub.value = '2'; scrub.dispatchEvent(new Event('input', {{ bubbles: true }}));\
             scrub.dispatchEvent(new Event('change', {{ bubbles: true }})); await wait(100);\
             out.scrubbed = e.scenario.launch.time; out.title = r.querySelector('svg title').textContent;\
             e.setAttribute('time', '1.5 s'); await wait(100); out.attribute = time();\
             return out;"
        ))
        .await;
    assert_eq!(seen["still"], json!(0), "{seen}");
    assert_eq!(seen["stepped"], json!(0.1), "{seen}");
    assert_eq!(seen["back"], json!(0.05), "{seen}");
    assert_eq!(seen["told"], json!(3), "each step is told");
    assert_eq!(
        seen["pressed"], "Play",
        "the word follows in the next moment"
    );
    assert!(seen["later"].as_f64() > Some(0.3), "{seen}");
    assert_eq!(seen["moved"], true);
    assert_eq!(seen["paused"], seen["stays"], "paused means still");
    assert_eq!(seen["scrubbed"], "2 s", "{seen}");
    let title = seen["title"].as_str().unwrap_or("");
    assert!(title.contains("2.00\u{2009}s"), "{title}");
    assert_eq!(seen["attribute"], json!(1.5));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn where_less_motion_is_asked_for_still_pictures_follow_each_other() {
    let window = Window::open_with(1280, &["--force-prefers-reduced-motion"]).await;
    window.visit("launch.html").await;
    window.ready(LAUNCH).await;
    let seen = window
        .run(&format!(
            "const r = document.querySelector('{LAUNCH}').shadowRoot; let pictures = 0;\
             new MutationObserver(() => pictures++).observe(r.querySelector('.figure'), {{ childList: true }});\
             r.querySelector('.playback button').click();\
             await new Promise(done => setTimeout(done, 2600));\
             r.querySelector('.playback button').click();\
             return [pictures, matchMedia('(prefers-reduced-motion: reduce)').matches];"
        ))
        .await;
    assert_eq!(seen[1], true, "the browser does not ask for less motion");
    let pictures = seen[0].as_u64().unwrap_or(0);
    assert!((1..=4).contains(&pictures), "{pictures} pictures in 2.6 s");
    window.close().await;
}

#[tokio::test]
async fn motors_are_placed_by_button_click_and_drag_and_the_table_sorts() {
    let window = Window::open().await;
    window.visit("motor-split.html").await;
    window.ready(SPLIT).await;
    let seen = window
        .run(&format!(
            "const e = document.querySelector('{SPLIT}'), r = e.shadowRoot;\
             const wait = () => new Promise(done => setTimeout(done, 150));\
             const layout = () => e.scenario.layout; const out = {{}};\
             out.first = layout();\
             const buttons = () => [...r.querySelectorAll('.motors button')];\
             buttons()[2].click(); await wait(); out.button = layout();\
             out.pressed = buttons().map(b => b.getAttribute('aria-pressed'));\
             buttons()[0].click(); await wait(); buttons()[3].click(); await wait(); out.none = layout();\
             e.setAttribute('layout', 'F1R2'); await wait();\
             const spots = () => [...r.querySelectorAll('.figure svg')].map(s => s.getBoundingClientRect())[0];\
             const press = async (from, to) => {{\
               const box = spots(), at = ([x, y]) => ({{ bubbles: true, clientX: box.left + x * box.width, clientY: box.top + y * box.width }});\
               const svg = r.querySelector('.figure svg');\
               svg.dispatchEvent(new PointerEvent('pointerdown', at(from)));\
               svg.dispatchEvent(new PointerEvent('pointerup', at(to))); await wait(); }};\
             const motor = (fill) => {{ const b = [...r.querySelectorAll('.figure svg rect, .figure svg path')]\
               .filter(m => (m.getAttribute('fill') || '').includes(fill)).map(m => m.getBoundingClientRect())\
               .filter(b => b.width > 10 && b.height > 10)[0], box = spots();\
               return [(b.left + b.width / 2 - box.left) / box.width, (b.top + b.height / 2 - box.top) / box.width]; }};\
             const front = motor('--axle-front'), rear = motor('--axle-rear'); rear[1] = front[1];\
             out.places = [front, rear];\
             await press(rear, front); out.dragged = layout();\
             await press(front, front); out.clicked = layout();\
             const rows = () => [...r.querySelectorAll('.compare tbody th')].map(t => t.textContent);\
             out.rows = rows();\
             const head = r.querySelectorAll('.compare button')[3]; head.focus(); head.click(); await wait();\
             out.sorted = rows(); out.sort = r.querySelectorAll('.compare thead th')[4].getAttribute('aria-sort');\
             await wait(); out.focus = r.activeElement?.dataset.column;\
             r.querySelectorAll('.compare button')[3].click(); await wait(); out.turned = rows();\
             return out;"
        ))
        .await;
    assert_eq!(seen["first"], "F1R2", "{seen}");
    assert_eq!(seen["button"], "F2R2", "{seen}");
    assert_eq!(
        seen["pressed"],
        json!(["false", "false", "true", "false", "false", "true"])
    );
    assert_eq!(seen["none"], "R2", "the last motor stays");
    assert_eq!(seen["dragged"], "F2R1", "{seen}");
    assert_eq!(seen["clicked"], "F1R1", "one for both wheels: {seen}");
    assert_eq!(seen["sort"], "ascending");
    assert_eq!(seen["focus"], "3", "the head keeps the focus");
    assert_ne!(seen["rows"], seen["sorted"]);
    let rows = |name: &str| -> Vec<String> {
        serde_json::from_value(seen[name].clone()).unwrap_or_default()
    };
    assert_eq!(rows("sorted").last(), Some(&"F1".to_owned()), "the slowest");
    assert_eq!(rows("turned").first(), Some(&"F1".to_owned()));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}
