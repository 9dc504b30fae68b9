//! A tab that the browser suspends and wakes again, and one whose server is gone.

use axlewright_tests::host::Host;
use axlewright_tests::session::{Window, answer_of_program, site};
use serde_json::{Value, json};

/// Sets the acceleration of the first element as its slider does, and gives its rear axle load.
async fn pull(window: &Window, acceleration: &str) -> Value {
    window
        .run(&format!(
            "const e = document.querySelector('axle-load-transfer'); const slider = e.shadowRoot.querySelector('#acceleration-slider');\
             slider.value = '{acceleration}'; for (const type of ['input', 'change']) slider.dispatchEvent(new Event(type, {{ bubbles: true }}));\
             return [e.answer.rear_axle_load, e.scenario];"
        ))
        .await
}

/// The element answers as the program does.
async fn lives(window: &Window, acceleration: &str) {
    let seen = pull(window, acceleration).await;
    let want = answer_of_program("load_transfer", &seen[1]);
    assert_eq!(seen[0], want["rear_axle_load"], "{acceleration}: {seen}");
    assert_eq!(
        seen[1]["load_transfer"]["acceleration"],
        json!(format!("{acceleration} g"))
    );
}

#[tokio::test]
async fn a_suspended_tab_goes_on_where_it_was() {
    let window = Window::open().await;
    window.visit("watched.html").await;
    window.ready("axle-load-transfer").await;
    lives(&window, "0.2").await;
    // A launch that plays while the tab falls asleep.
    window
        .run(
            "globalThis.states = []; addEventListener('freeze', () => states.push('frozen'));\
             document.addEventListener('freeze', () => states.push('freeze')); document.addEventListener('resume', () => states.push('resume'));\
             const e = document.createElement('axle-launch'); e.setAttribute('vehicle', 'corrie'); document.body.append(e); await e.updateComplete;\
             e.shadowRoot.querySelector('[data-act=play], .run button')?.click();",
        )
        .await;
    for _ in 0..3 {
        for state in ["frozen", "active"] {
            window
                .debug("Page.setWebLifecycleState", json!({ "state": state }))
                .await;
            std::thread::sleep(std::time::Duration::from_millis(700));
        }
    }
    let states = window
        .run("return states.filter((state) => state !== 'frozen');")
        .await;
    assert_eq!(
        states,
        json!(["freeze", "resume", "freeze", "resume", "freeze", "resume"]),
        "the tab was asleep"
    );
    lives(&window, "0.4").await;
    let launch = window
        .run("const e = document.querySelector('axle-launch'); e.setAttribute('vehicle', 'kame'); return e.answer.scenario.vehicle.base;")
        .await;
    assert_eq!(launch, "kame");
    let seen = window.run("return seen.memories.length;").await;
    assert_eq!(seen, 1, "the same instance");
    assert_eq!(window.errors().await, json!([]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn with_the_server_gone_what_is_there_goes_on_and_what_is_not_says_so() {
    let host = Host::of(&site().folder);
    let window = Window::open().await;
    window.go(&format!("{}watched.html", host.url)).await;
    window.ready("axle-load-transfer").await;
    // What writes files is fetched when the first is asked for; from then on it is there.
    window
        .run(
            "await document.querySelector('axle-load-transfer').figure('svg');\
             const there = () => performance.getEntriesByType('resource').some((e) => e.name.includes('parts/working'));\
             for (let n = 0; n < 100 && !there(); n += 1) await new Promise((r) => setTimeout(r, 50));\
             await new Promise((r) => setTimeout(r, 500));",
        )
        .await;
    host.show(None);
    lives(&window, "0.3").await;
    // Another element of the topic needs nothing more.
    let second = window
        .run(
            "const e = document.createElement('axle-load-transfer'); e.setAttribute('vehicle', 'kame'); document.body.append(e);\
             return [await e.updateComplete, e.answer?.scenario.vehicle.base, (await e.figure('svg')).startsWith('<svg')];",
        )
        .await;
    assert_eq!(second, json!([true, "kame", true]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    // A topic, a language and a file that were not fetched before: one sentence each, nothing lost.
    let seen = window
        .run(
            "const text = (e, part) => e.shadowRoot.querySelector(part).textContent;\
             const other = document.createElement('axle-traction'); other.innerHTML = '<p>fixed picture</p>'; document.body.append(other);\
             await other.updateComplete; const out = { fallback: other.querySelector('p').checkVisibility(), notice: text(other, '[part~=notice]') };\
             const e = document.querySelector('#first'); const before = JSON.stringify(e.answer);\
             e.lang = 'de'; await new Promise((r) => setTimeout(r, 500)); out.kept = JSON.stringify(e.answer) === before;\
             out.figure = e.shadowRoot.querySelector('.figure svg') !== null; e.removeAttribute('lang');\
             e.setAttribute('scenario', 'good.json'); await new Promise((r) => setTimeout(r, 500));\
             out.file = text(e, '[part~=notice]'); out.after = JSON.stringify(e.answer) === before; e.removeAttribute('scenario');\
             out.errors = seen.errors; out.other = other.shadowRoot.querySelectorAll('svg').length; return out;",
        )
        .await;
    assert_eq!(seen["fallback"], true, "{seen}");
    assert!(
        seen["notice"]
            .as_str()
            .is_some_and(|text| text.contains("could not start")),
        "{seen}"
    );
    assert_eq!(seen["kept"], true, "{seen}");
    assert_eq!(seen["figure"], true, "{seen}");
    assert_ne!(seen["file"], "", "{seen}");
    assert_eq!(seen["after"], true, "{seen}");
    assert_eq!(seen["errors"], json!([]), "{seen}");
    lives(&window, "0.5").await;
    // Back again, the next element of the topic starts.
    host.show(Some(&site().folder));
    let back = window
        .run(
            "const e = document.createElement('axle-traction'); document.body.append(e); return [await e.updateComplete, e.answer !== null];",
        )
        .await;
    assert_eq!(back, json!([true, true]));
    assert_eq!(window.errors().await, json!([]));
    window.close().await;
}
