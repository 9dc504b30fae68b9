//! Elements in the language of their page, and on a page that reads from right to left.

use crate::access;
use axlewright_core::format::significant;
use axlewright_core::topic::TOPICS;
use axlewright_core::words::{self, Lang};
use axlewright_tests::session::{Window, site};
use serde_json::json;
use thirtyfour::Key;

const TAG: &str = "axle-load-transfer";
const ELEMENTS: [&str; 3] = ["axle-load-transfer", "axle-traction", "axle-turn-in-place"];

/// The text of a part of an element.
async fn said(window: &Window, tag: &str, selector: &str) -> String {
    let part = window.inside(tag, selector).await;
    part.text().await.expect("a text")
}

async fn value(window: &Window, tag: &str, selector: &str) -> String {
    let field = window.inside(tag, selector).await;
    field
        .prop("value")
        .await
        .expect("a value")
        .expect("a value")
}

async fn retype(window: &Window, tag: &str, selector: &str, text: &str) {
    let keys = Key::Control + "a" + Key::Null + text + Key::Enter;
    let field = window.inside(tag, selector).await;
    field.send_keys(keys).await.expect("typing");
}

async fn answer(window: &Window, tag: &str, number: &str) -> f64 {
    window.answer(tag).await[number].as_f64().expect("a number")
}

/// Files of words that the page has asked for.
async fn fetched(window: &Window) -> serde_json::Value {
    window
        .run(
            "return performance.getEntriesByType('resource').map(e => new URL(e.name).pathname)\
             .filter(name => name.includes('/words/')).sort();",
        )
        .await
}

async fn speaks(window: &Window, tag: &str, lang: Lang) {
    let caution = said(window, tag, ".caution strong").await;
    assert_eq!(caution, words::get(lang, "figure.caution"), "{tag}");
    let load = answer(window, TAG, "front_axle_load").await;
    if tag == TAG {
        let shown = said(window, tag, ".readouts").await;
        let label = words::get(lang, "output.load_transfer.front_axle_load");
        assert!(shown.contains(label), "{label} in {shown}");
        let number = significant(load, 4, lang);
        assert!(shown.contains(&number), "{number} in {shown}");
        let ratio = answer(window, tag, "rear_to_front_ratio").await;
        let number = significant(ratio, 3, lang);
        assert!(shown.contains(&number), "{number} in {shown}");
        let title = window.inside(tag, "svg title").await;
        let title = title.inner_html().await.expect("a title");
        assert!(title.contains(&number), "{number} in {title}");
    }
}

#[tokio::test]
async fn an_element_speaks_the_language_of_its_place() {
    let window = Window::open().await;
    window.visit("de.html").await;
    for tag in ELEMENTS {
        window.ready(tag).await;
    }
    speaks(&window, TAG, Lang::German).await;
    speaks(&window, "axle-traction", Lang::German).await;
    speaks(&window, "axle-turn-in-place", Lang::Spanish).await;
    assert_eq!(
        fetched(&window).await,
        json!(["/words/de.txt", "/words/es.txt"])
    );
    // Controls, the working and their numbers.
    let wheelbase = words::get(Lang::German, "input.vehicle.wheelbase");
    assert!(said(&window, TAG, ".controls").await.contains(wheelbase));
    assert_eq!(
        value(&window, TAG, "#acceleration-number").await,
        "0,60\u{2009}g"
    );
    let opened = window
        .run(&format!(
            "const root = document.querySelector('{TAG}').shadowRoot;\
             root.querySelector('details.readout').open = true; await new Promise(r => setTimeout(r, 300));\
             return root.querySelector('.working').textContent;"
        ))
        .await;
    let opened = opened.as_str().unwrap_or_default();
    assert!(
        opened.contains(words::get(Lang::German, "step.front_load")),
        "{opened}"
    );
    assert!(opened.contains("5,886"), "{opened}");
    assert!(!opened.contains("5.886"), "{opened}");
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_comma_is_typed_and_what_can_be_read_in_two_ways_is_asked_about() {
    let window = Window::open().await;
    window.visit("de.html").await;
    window.ready(TAG).await;
    retype(&window, TAG, "#acceleration-number", "0,7 g").await;
    let scenario = format!("return document.querySelector('{TAG}').scenario;");
    let given = window.run(&scenario).await["load_transfer"]["acceleration"].clone();
    assert_eq!(given, "0.7 g", "what is kept has a point");
    assert_eq!(
        value(&window, TAG, "#acceleration-number").await,
        "0,70\u{2009}g"
    );
    assert_eq!(value(&window, TAG, "#acceleration-slider").await, "0.7");
    // Three decimals and no unit, as the field shows them.
    retype(&window, TAG, "#wheelbase-number", "2,865").await;
    assert_eq!(
        window.run(&scenario).await["vehicle"]["wheelbase"],
        "2.865 m"
    );
    // A slider's value has a point, and means what it says in every language.
    let slider = window.inside(TAG, "#acceleration-slider").await;
    slider.send_keys(Key::Right + "").await.expect("a key");
    assert_eq!(
        value(&window, TAG, "#acceleration-number").await,
        "0,71\u{2009}g"
    );

    let before = answer(&window, TAG, "front_axle_load").await;
    retype(&window, TAG, "#mass-number", "1.850 kg").await;
    let told = said(&window, TAG, ".problem").await;
    let why = words::fill(
        Lang::German,
        "problem.two_readings",
        &["1.850", "1850", "1,850"],
    );
    assert!(told.contains(&why), "{why} in {told}");
    assert_eq!(
        value(&window, TAG, "#mass-number").await,
        "1.850 kg",
        "it stays to be corrected"
    );
    assert!((answer(&window, TAG, "front_axle_load").await - before).abs() < 1e-9);
    retype(&window, TAG, "#mass-number", "1850").await;
    assert_eq!(said(&window, TAG, ".problem").await, "");

    // In English it is the comma that is asked about.
    let script = format!("document.querySelector('{TAG}').lang = 'en';");
    window.run(&script).await;
    speaks(&window, TAG, Lang::English).await;
    retype(&window, TAG, "#mass-number", "1,900 kg").await;
    let told = said(&window, TAG, ".problem").await;
    let why = words::fill(
        Lang::English,
        "problem.two_readings",
        &["1,900", "1900", "1.900"],
    );
    assert!(told.contains(&why), "{why} in {told}");
    retype(&window, TAG, "#acceleration-number", "0,5 g").await;
    assert_eq!(
        value(&window, TAG, "#acceleration-number").await,
        "0.50\u{2009}g"
    );
    window.close().await;
}

#[tokio::test]
async fn the_language_can_change_and_survives_a_trap() {
    let window = Window::open().await;
    window.visit("three.html").await;
    for tag in ELEMENTS {
        window.ready(tag).await;
    }
    speaks(&window, TAG, Lang::English).await;
    assert_eq!(
        fetched(&window).await,
        json!([]),
        "an English page fetches no words"
    );

    // The page changes; a moment later the words are there.
    let settle = "await new Promise(r => setTimeout(r, 500));";
    window
        .run(&format!("document.documentElement.lang = 'es'; {settle}"))
        .await;
    speaks(&window, TAG, Lang::Spanish).await;
    speaks(&window, "axle-traction", Lang::Spanish).await;
    let script = format!("document.querySelector('{TAG}').lang = 'de'; {settle}");
    window.run(&script).await;
    speaks(&window, TAG, Lang::German).await;
    speaks(&window, "axle-traction", Lang::Spanish).await;

    let notice = window
        .run(&format!(
            "const {{ provokeTrap }} = await import('./axlewright.js');\
             try {{ await provokeTrap(); }} catch {{}}\
             return document.querySelector('{TAG}').shadowRoot.querySelector('[part~=notice]').textContent;"
        ))
        .await;
    assert_eq!(notice, words::get(Lang::German, "script.restarted"));
    for tag in ELEMENTS {
        window.ready(tag).await;
    }
    speaks(&window, TAG, Lang::German).await;
    speaks(&window, "axle-traction", Lang::Spanish).await;
    assert_eq!(
        fetched(&window).await,
        json!(["/words/de.txt", "/words/es.txt"]),
        "once each"
    );

    // Back to the page's language, and to one that nobody has.
    window
        .run(&format!(
            "document.querySelector('{TAG}').removeAttribute('lang'); {settle}"
        ))
        .await;
    speaks(&window, TAG, Lang::Spanish).await;
    window
        .run(&format!("document.documentElement.lang = 'fr'; {settle}"))
        .await;
    speaks(&window, TAG, Lang::English).await;
    let base = window.inside(TAG, ".axle").await;
    let tag = base.attr("lang").await.expect("an attribute");
    assert_eq!(
        tag.as_deref(),
        Some("en"),
        "a screen reader is told what it reads"
    );
    window.close().await;
}

#[tokio::test]
async fn without_its_words_an_element_is_english_and_says_so_once() {
    let window = Window::open().await;
    window.visit("none.html").await;
    window
        .run(
            "const real = fetch; globalThis.asked = 0;\
             globalThis.fetch = (url, more) => String(url).includes('/words/')\
             ? (asked += 1, Promise.resolve(new Response('gone', { status: asked > 1 ? 200 : 404 }))) : real(url, more);\
             globalThis.told = []; console.warn = (text) => told.push(text);\
             document.documentElement.lang = 'de';\
             for (const tag of ['axle-load-transfer', 'axle-traction']) document.body.append(document.createElement(tag));\
             await import('./axlewright.js');",
        )
        .await;
    window.ready(TAG).await;
    window.ready("axle-traction").await;
    speaks(&window, TAG, Lang::English).await;
    assert_eq!(
        window.run("return [asked, told.length];").await,
        json!([1, 1])
    );
    // An answer that is no catalogue is no better.
    window
        .run(&format!(
            "document.querySelector('{TAG}').lang = 'es'; await new Promise(r => setTimeout(r, 300));"
        ))
        .await;
    speaks(&window, TAG, Lang::English).await;
    assert_eq!(
        window.run("return [asked, told.length];").await,
        json!([2, 2])
    );
    window.close().await;
}

#[tokio::test]
async fn a_page_from_the_file_system_speaks_german_too() {
    let window = Window::open().await;
    window.visit_file("de-file.html").await;
    window.ready(TAG).await;
    speaks(&window, TAG, Lang::German).await;
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn no_violation_on_a_german_page() {
    let window = Window::open().await;
    access::check(&window, "de.html", "axle-traction").await;
    window.close().await;
}

/// What lies on what, and what leaves its element, among the parts that hold text or take input.
const MISPLACED: &str = "
    const found = [];
    const elements = [...document.querySelectorAll('main > *')].filter(e => e.shadowRoot);
    if (elements.length < 9) found.push(['elements', elements.length]);
    for (const element of elements) {
      const root = element.shadowRoot;
      const all = [...root.querySelectorAll('.control > *, button, summary strong, summary span, .caution, canvas, .figure')]
        .filter(part => part.checkVisibility());
      const frame = element.getBoundingClientRect();
      const boxes = all.flatMap(part => [...part.getClientRects()].map(box => [part, box])); // a text may fill two lines
      for (const [part, box] of boxes) {
        if (part.closest('.compare')) continue; // a table of layouts scrolls in its own box
        if (box.left < frame.left - 1 || box.right > frame.right + 1) found.push(['out', part.outerHTML.slice(0, 90)]);
      }
      for (const [one, a] of boxes) for (const [other, b] of boxes) {
        if (one === other || one.contains(other) || other.contains(one)) continue;
        const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
        const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
        if (wide > 1 && high > 1) found.push(['over', one.outerHTML.slice(0, 90), other.outerHTML.slice(0, 90)]);
      }
      if (boxes.length < 20) found.push(['too few', boxes.length]);
    }
    return found;";

#[tokio::test]
async fn a_right_to_left_page_keeps_physics_and_numbers_the_right_way_round() {
    let window = Window::open_with(1280, &["--force-device-scale-factor=1"]).await;
    window.visit("rtl.html").await;
    for topic in TOPICS {
        window.ready(&topic.tag()).await;
    }
    window
        .run("await new Promise(r => setTimeout(r, 500));")
        .await;
    assert_eq!(window.run(MISPLACED).await, json!([]), "1280 px");
    // The layout is turned round: the label is right of its number.
    let sides = window
        .run(&format!(
            "const root = document.querySelector('{TAG}').shadowRoot;\
             const row = root.querySelector('#acceleration-number').parentElement;\
             const x = (part) => row.querySelector(part).getBoundingClientRect().x;\
             const field = getComputedStyle(row.querySelector('.number'));\
             const svg = root.querySelector('.figure svg');\
             return [x('label') > x('.number'), x('.number') > x('.reset'), field.direction,\
             getComputedStyle(svg).direction, getComputedStyle(root.querySelector('canvas')).direction];"
        ))
        .await;
    assert_eq!(sides, json!([true, true, "ltr", "ltr", "ltr"]));
    // The minus sign stands before its number, and the arrow key to the right accelerates.
    assert_eq!(
        value(&window, TAG, "#acceleration-number").await,
        "−0.60\u{2009}g"
    );
    let slider = window.inside(TAG, "#acceleration-slider").await;
    slider.send_keys(Key::Right + "").await.expect("a key");
    assert_eq!(
        value(&window, TAG, "#acceleration-number").await,
        "−0.59\u{2009}g"
    );
    // The figure is the same as on a page from left to right: every text hangs where it did.
    let drawn = "const svg = document.querySelector('axle-load-transfer').shadowRoot.querySelector('.figure svg');\
                 const left = svg.getBoundingClientRect().x;\
                 return [...svg.querySelectorAll('text')].map(t => [t.textContent, Math.round(t.getBoundingClientRect().x - left)]);";
    let rtl = window.run(drawn).await;
    window.run("document.documentElement.dir = 'ltr';").await;
    let ltr = window.run(drawn).await;
    assert_eq!(rtl, ltr);
    assert!(rtl.as_array().is_some_and(|texts| texts.len() > 8), "{rtl}");

    // In a narrow frame.
    let narrow = window
        .run(&format!(
            "const f = document.createElement('iframe'); f.width = 320; f.height = 900; f.title = 'narrow';\
             f.src = '{}rtl.html'; document.body.append(f);\
             await new Promise(r => f.addEventListener('load', r));\
             for (const e of f.contentDocument.querySelectorAll('main > *')) await e.updateComplete;\
             await new Promise(r => setTimeout(r, 300));\
             const d = f.contentDocument.documentElement;\
             const found = (document => {{ {MISPLACED} }})(f.contentDocument);\
             return [found, d.scrollWidth <= d.clientWidth];",
            site().url
        ))
        .await;
    assert_eq!(narrow, json!([[], true]), "320 px");
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}
