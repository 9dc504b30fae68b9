//! What goes wrong while a talk is given: it is told in a sentence, and the last picture stays.

use crate::routes::routes;
use crate::talk::{begun, opened, within};
use axlewright_tests::session::Window;
use serde_json::{Value, json};
use std::sync::atomic::Ordering;

/// Puts a talk of the site onto a page that notes every error, after `before` has run.
async fn on_watched_page(window: &Window, url: &str, before: &str) {
    window.go(&format!("{url}blank.html")).await;
    let talk = axlewright_tests::file("../site/talks/where-the-weight-goes.toml");
    let talk = std::fs::read_to_string(talk).expect("the talk");
    let script = format!(
        "{before} const made = document.createElement('axle-talk'); const text = document.createElement('script');\
         text.type = 'application/toml'; text.textContent = {}; made.append(text); document.body.append(made);\
         const script = Object.assign(document.createElement('script'), {{ type: 'module', src: 'axlewright-talk.js' }});\
         const loaded = new Promise((done, failed) => {{ script.onload = done; script.onerror = failed; }});\
         document.head.append(script); await loaded;",
        json!(talk)
    );
    window.run(&script).await;
}

/// The next steps of a talk that are asked of Rust stop the instance, as many as `window.traps` says.
const TRAPS: &str = "
    const plain = WebAssembly.instantiate; window.traps = 0;
    WebAssembly.instantiate = async (...given) => {
      const instance = await plain(...given);
      const step = instance.exports?.talk_step;
      if (!step) return instance;
      const talk_step = (...parts) => {
        if (window.traps > 0) { window.traps -= 1; throw new WebAssembly.RuntimeError('unreachable'); }
        return step(...parts);
      };
      return { exports: { ...instance.exports, talk_step } };
    };";

#[tokio::test]
async fn a_trap_during_a_talk_is_told_and_the_next_key_goes_on() {
    let window = Window::open().await;
    on_watched_page(&window, &routes_site(), TRAPS).await;
    begun(&window).await;
    let state = "const state = () => { const element = root.querySelector('axle-load-transfer');\
        return { step: talk.step, said: talk.said, notice: root.querySelector('.notice').textContent,\
          count: root.querySelector('.count').textContent,\
          pictures: element.shadowRoot.querySelectorAll('.figure svg').length }; };";
    let seen = within(
        &window,
        &format!(
            "{state} const out = {{ before: state() }}; window.traps = 1; await talk.forward(); out.trapped = state();\
             await root.querySelector('axle-load-transfer').updateComplete; out.after = await shown(() => talk.forward());\
             out.shown = state();\
             press('what'); await new Promise((r) => setTimeout(r, 400));\
             window.traps = 1; const element = root.querySelector('axle-load-transfer');\
             const slider = element.shadowRoot.querySelector('#cg-height-slider'); slider.value = '0.7';\
             slider.dispatchEvent(new Event('input', {{ bubbles: true }})); slider.dispatchEvent(new Event('change', {{ bubbles: true }}));\
             for (let i = 0; i < 40 && !state().notice; i += 1) await new Promise((r) => setTimeout(r, 50));\
             out.asked = state(); await element.updateComplete; await talk.restore(); out.restored = state(); return out;"
        ),
    )
    .await;
    let sentence = "This step cannot be shown; the last picture stays.";
    assert_eq!(seen["before"]["notice"], "", "{seen}");
    assert_eq!(seen["trapped"]["notice"], sentence, "{seen}");
    for kept in ["step", "said", "count"] {
        assert_eq!(
            seen["trapped"][kept], seen["before"][kept],
            "{kept}: {seen}"
        );
    }
    assert_eq!(seen["trapped"]["pictures"], 1, "{seen}");
    assert_eq!(seen["after"]["step"], 2, "{seen}");
    assert_eq!(seen["shown"]["notice"], "", "{seen}");
    assert_eq!(seen["asked"]["notice"], sentence, "{seen}");
    assert_eq!(seen["asked"]["pictures"], 1, "{seen}");
    assert_eq!(seen["restored"]["notice"], "", "{seen}");
    assert_eq!(seen["restored"]["said"], seen["shown"]["said"], "{seen}");
    assert_eq!(window.errors().await, json!([]));
    window.close().await;
}

fn routes_site() -> String {
    format!("{}site/", routes().url)
}

#[tokio::test]
async fn a_part_that_does_not_come_is_told_and_the_text_stays() {
    let window = Window::open().await;
    let url = format!("{}part-missing/", routes().url);
    on_watched_page(&window, &url, "").await;
    let notice = within(
        &window,
        "for (let i = 0; i < 100 && !root.querySelector('.notice')?.textContent; i++) await new Promise(r => setTimeout(r, 50));\
         return root.querySelector('.notice').textContent;",
    )
    .await;
    assert!(
        notice
            .as_str()
            .is_some_and(|n| n.starts_with("This talk cannot be shown.")),
        "{notice}"
    );
    assert_eq!(window.errors().await, json!([]));
    window.close().await;
}

/// Gives a talk that cannot be read and gets the sentence that is shown for it.
async fn refusal(window: &Window, furnish: &str) -> Value {
    let script = format!(
        "const made = document.createElement('axle-talk'); {furnish}\
         const problem = new Promise(r => made.addEventListener('axle-problem', e => r(e.detail.message)));\
         document.body.append(made); await problem; return made.shadowRoot.querySelector('.notice').textContent;"
    );
    window.run(&script).await
}

#[tokio::test]
async fn a_file_that_is_too_long_is_not_read_to_its_end() {
    let window = Window::open().await;
    on_watched_page(&window, &routes_site(), "").await;
    begun(&window).await;
    let before = routes().huge_sent.load(Ordering::Relaxed);
    let told = refusal(&window, "made.setAttribute('src', 'huge.json');").await;
    let allowed = "A talk is a TOML or JSON file of 1 MB at most.";
    assert!(
        told.as_str()
            .is_some_and(|t| t.contains(allowed) && t.contains("huge.json")),
        "{told}"
    );
    let sent = routes().huge_sent.load(Ordering::Relaxed) - before;
    assert!(sent < 20_000_000, "{sent} bytes were read");
    // The same inside the element, and a text of brackets alone, which would stop the instance.
    for text in [
        "'#'.repeat(1_000_001)",
        "'{\"steps\":' + '['.repeat(5000) + ']'.repeat(5000) + '}'",
    ] {
        let furnish = format!(
            "const text = document.createElement('script'); text.type = 'application/json';\
             text.textContent = {text}; made.append(text);"
        );
        let told = refusal(&window, &furnish).await;
        assert!(
            told.as_str()
                .is_some_and(|t| t.contains(allowed) && t.len() < 300),
            "{text}: {told}"
        );
    }
    assert_eq!(window.errors().await, json!([]));
    assert_eq!(
        window.run("return seen.memories.length;").await,
        1,
        "one instance, which never trapped"
    );
    window.close().await;
}

#[tokio::test]
async fn a_value_that_a_what_if_takes_away_is_told_in_its_place() {
    let window = Window::open().await;
    opened(&window).await;
    // Step 13 of the third talk names what two layouts use; the one that is not shown can be left out.
    let script = "const talk = document.querySelectorAll('axle-talk')[2]; const root = talk.shadowRoot;\
        for (let i = 0; i < 200 && !talk.said; i++) await new Promise(r => setTimeout(r, 50));\
        const shown = (act) => new Promise((done) => talk.addEventListener('axle-step', (e) => done(e.detail), { once: true }, act()));\
        const out = {}; await shown(() => talk.goTo(12)); out.said = (await shown(() => talk.forward())).said;\
        root.querySelector('[data-name=what]').click(); await new Promise((r) => setTimeout(r, 500));\
        const inner = root.querySelector('axle-idle-drag').shadowRoot;\
        const boxes = [...inner.querySelectorAll('.boxes input')]; \
        boxes.find((b) => b.closest('label').textContent.trim() === 'R1').click(); await new Promise((r) => setTimeout(r, 2500));\
        out.without = talk.said; out.listed = root.querySelector('axle-idle-drag').scenario.layouts;\
        await talk.restore(); await new Promise((r) => setTimeout(r, 300)); out.back = talk.said; return out;";
    let seen = window.run(script).await;
    assert_eq!(seen["listed"], json!(["F1R1", "F1R2"]), "{seen}");
    assert_eq!(
        seen["without"], "With these inputs there is no value for this sentence.",
        "{seen}"
    );
    assert_eq!(seen["back"], seen["said"], "{seen}");
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}
