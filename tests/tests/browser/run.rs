//! A run that is played, and motors that are placed: what only these two elements have.

use axlewright_tests::session::Window;
use serde_json::json;

const LAUNCH: &str = "axle-launch";
const SPLIT: &str = "axle-motor-split";
const TURN: &str = "axle-turn-in-place";

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
             new MutationObserver(() => pictures++).observe(r.querySelector('.drawing'),\
               {{ attributes: true, characterData: true, childList: true, subtree: true }});\
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
async fn a_turn_in_place_stands_still_until_it_is_played_and_leaves_its_traces() {
    let window = Window::open().await;
    window.visit("turn-in-place.html").await;
    window.ready(TURN).await;
    let seen = window
        .run(&format!(
            "const e = document.querySelector('{TURN}'), r = e.shadowRoot;\
             const wait = (ms) => new Promise(done => setTimeout(done, ms));\
             const title = () => r.querySelector('svg title').textContent;\
             const play = r.querySelector('.playback button');\
             const scrub = r.querySelector('#playback-time');\
             const out = {{ still: title(), given: e.scenario.turn_in_place ?? null }};\
             out.label = scrub.getAttribute('aria-label'); out.end = Number(scrub.max);\
             const marks = () => r.querySelectorAll('.stage svg path').length;\
             out.before = marks();\
             play.click(); await wait(900); out.later = Number(scrub.value); play.click(); await wait(100);\
             const to = async (value) => {{ scrub.value = value;\
               for (const kind of ['input', 'change']) scrub.dispatchEvent(new Event(kind, {{ bubbles: true }}));\
               await wait(150); return title(); }};\
             out.two = await to('2'); out.turned = r.querySelector('svg desc').textContent;\
             out.traces = marks(); out.four = await to('4');\
             const caution = r.querySelector('.caution'); out.caution = caution ? caution.textContent : '';\
             const button = [...r.querySelectorAll('.views button')].at(-1); button.click(); await wait(200);\
             out.surfaces = title();\
             return out;"
        ))
        .await;
    let text = |name: &str| seen[name].as_str().unwrap_or("").to_owned();
    let still = "Turning in place takes ";
    assert!(text("still").starts_with(still), "{seen}");
    assert_eq!(seen["given"], json!(null), "no time is given: {seen}");
    assert_eq!(text("label"), "time shown");
    assert!(seen["end"].as_f64() > Some(6.0), "{seen}");
    assert!(seen["later"].as_f64() > Some(0.3), "{seen}");
    assert!(text("two").contains("2.00\u{2009}s"), "{seen}");
    assert_ne!(seen["two"], seen["four"]);
    assert!(text("turned").contains("yaw rate"), "{seen}");
    assert!(
        seen["traces"].as_u64() > seen["before"].as_u64(),
        "the tyres leave traces: {seen}"
    );
    assert!(text("caution").contains("no bystanders"), "{seen}");
    assert!(text("surfaces").contains("times the torque"), "{seen}");
    assert_eq!(window.complaints().await, Vec::<String>::new());
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
