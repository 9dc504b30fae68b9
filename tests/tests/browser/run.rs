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
             new MutationObserver(() => pictures++).observe(r.querySelector('.stage > div'), {{ childList: true }});\
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
async fn motors_are_placed_by_click_and_key_and_the_table_sorts() {
    let window = Window::open().await;
    window.visit("motor-split.html").await;
    window.ready(SPLIT).await;
    let seen = window
        .run(&format!(
            "const e = document.querySelector('{SPLIT}'), r = e.shadowRoot;\
             const wait = () => new Promise(done => setTimeout(done, 150));\
             const layout = () => e.scenario.layout; const out = {{}};\
             out.first = layout();\
             const axles = () => [...r.querySelectorAll('.grip.turn')];\
             const key = async (at, key) => {{ const hold = axles()[at].querySelector('.hold'); hold.focus();\
               hold.dispatchEvent(new KeyboardEvent('keydown', {{ key, bubbles: true, composed: true }})); await wait(); }};\
             out.named = axles().map(a => a.querySelector('.hold').getAttribute('aria-label'));\
             axles()[0].click(); await wait(); out.clicked = layout();\
             await key(0, 'Home'); out.without = layout();\
             await key(1, 'Home'); out.last = layout();\
             await key(0, 'End'); out.key = layout();\
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
    assert_eq!(
        seen["named"],
        json!(["motors on the front axle", "motors on the rear axle"])
    );
    assert_eq!(seen["clicked"], "F2R2", "{seen}");
    assert_eq!(seen["without"], "R2", "{seen}");
    assert_eq!(seen["last"], "R1", "the last motor stays: {seen}");
    assert_eq!(seen["key"], "F2R1", "{seen}");
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
