//! The rules of axe-core on every page, in light and dark and on a narrow screen.

use axlewright_tests::session::{Window, needed};

/// Pages, and the tag of the element on each; empty where there is none.
const PAGES: &[(&str, &str)] = &[
    ("index.html", "axle-traction"),
    ("load-transfer.html", "axle-load-transfer"),
    ("traction.html", "axle-traction"),
    ("motor-split.html", "axle-motor-split"),
    ("launch.html", "axle-launch"),
    ("cornering.html", "axle-cornering"),
    ("turn-in-place.html", "axle-turn-in-place"),
    ("talks.html", ""),
    ("idle-drag.html", "axle-idle-drag"),
    ("packaging.html", "axle-packaging"),
    ("choice.html", "axle-choice"),
    ("cases.html", "axle-choice"),
    ("reference.html", ""),
    ("embed/traction.html", "axle-traction"),
];

pub(crate) async fn check(window: &Window, page: &str, tag: &str) {
    let axe = needed(&axlewright_tests::file("node_modules/axe-core/axe.min.js"));
    window.visit(page).await;
    if !tag.is_empty() {
        window.ready(tag).await;
        // Open the menu and one result, so that its working is checked too.
        window
            .run(&format!(
                "const root = document.querySelector('{tag}').shadowRoot;\
                 for (const part of ['.share', '.readout']) root.querySelector('details' + part).open = true;\
                 await new Promise(r => setTimeout(r, 200));"
            ))
            .await;
    }
    window
        .driver
        .execute(&axe, Vec::new())
        .await
        .expect("axe-core loads");
    no_violation(window, page).await;
}

/// What axe-core, which the page has loaded, says of a part of it: how many rules it found kept, and
/// those that are broken.
pub(crate) async fn judged(window: &Window, part: &str) -> serde_json::Value {
    let script = format!(
        "const r = await axe.run({part}, {{ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }});\
         return [r.passes.length, r.violations.map(v => [v.id, v.nodes.map(n => n.target.join(' ') + ' | ' + n.failureSummary)])];"
    );
    window.run(&script).await
}

/// Asks axe-core about the page as it is.
pub(crate) async fn no_violation(window: &Window, page: &str) {
    let found = judged(window, "document").await;
    assert!(
        found[0].as_u64() > Some(20),
        "{page}: axe-core checked too little: {found}"
    );
    assert_eq!(found[1], serde_json::json!([]), "{page}");
}

/// Moves the first slider that gives another finding, and tells what the live region says at once, half a
/// pause later, and once the reader has paused; with the finding before and after.
const LISTEN: &str = "
    const pause = (time) => new Promise((done) => setTimeout(done, time));
    const region = root.querySelector('.unseen');
    const title = () => root.querySelector('.figure svg title').textContent;
    const before = title();
    await pause(800);
    const first = region.textContent;
    for (const slider of root.querySelectorAll('.controls input[type=range]')) {
      for (const end of ['max', 'min']) {
        slider.value = slider[end];
        slider.dispatchEvent(new Event('input'));
        for (let i = 0; i < 10 && title() === before; i++) await pause(20);
        if (title() === before) continue;
        const moved = region.textContent;
        await pause(350);
        slider.value = Number(slider.value) + (end === 'max' ? -3 : 3) * slider.step; // the reader goes on
        slider.dispatchEvent(new Event('input'));
        await pause(450);
        const early = region.textContent;
        for (let i = 0; i < 60 && !region.textContent; i++) await pause(50);
        return [before, first, moved, early, region.textContent, title()];
      }
    }
    return null;";

#[tokio::test]
async fn the_finding_is_spoken_once_the_reader_pauses() {
    let window = Window::open().await;
    for topic in axlewright_core::topic::TOPICS {
        window.visit("one.html").await;
        let heard = window
            .run(&format!(
                "const e = document.createElement('{}'); document.querySelector('#place').replaceChildren(e);\
                 await e.updateComplete; const root = e.shadowRoot; {LISTEN}",
                topic.tag()
            ))
            .await;
        let text = |at: usize| {
            heard[at]
                .as_str()
                .unwrap_or_else(|| panic!("{}: {heard}", topic.name))
        };
        assert_eq!(text(1), "", "{}: it speaks of itself: {heard}", topic.name);
        assert_eq!(text(2), "", "{}: it speaks at once: {heard}", topic.name);
        assert_eq!(
            text(4),
            text(5),
            "{}: the finding is spoken: {heard}",
            topic.name
        );
        assert_ne!(text(4), text(0), "{}: it is a new one: {heard}", topic.name);
        assert!(!text(4).is_empty(), "{}: {heard}", topic.name);
    }
    window.close().await;
}

#[tokio::test]
async fn no_violation_in_light() {
    let window = Window::open().await;
    for (page, tag) in PAGES {
        check(&window, page, tag).await;
    }
    window.close().await;
}

#[tokio::test]
async fn no_violation_in_dark() {
    let window = Window::open_with(
        1280,
        &[
            "--force-dark-mode",
            "--blink-settings=preferredColorScheme=0",
        ],
    )
    .await;
    let dark = window
        .run("return matchMedia('(prefers-color-scheme: dark)').matches;")
        .await;
    assert_eq!(dark, true, "the browser is not dark");
    for (page, tag) in PAGES {
        check(&window, page, tag).await;
    }
    window.close().await;
}

#[tokio::test]
async fn no_violation_and_no_sideways_scrolling_on_a_narrow_screen() {
    let window = Window::open_with(500, &["--force-device-scale-factor=1"]).await;
    for (page, tag) in PAGES {
        check(&window, page, tag).await;
        // A frame may hold no frame; it has a journey of its own at that width.
        if page.starts_with("embed/") {
            continue;
        }
        // The window of a headless browser is not narrower than 500 px; a frame is.
        let wide = window
            .run(
                "const f = document.createElement('iframe'); f.width = 320; f.height = 800; f.title = 'narrow';\
                 f.src = location.href; document.body.append(f);\
                 await new Promise(r => f.addEventListener('load', r));\
                 await new Promise(r => setTimeout(r, 1200));\
                 const d = f.contentDocument.documentElement; return [d.scrollWidth, d.clientWidth];",
            )
            .await;
        assert!(
            wide[0].as_u64() <= wide[1].as_u64(),
            "{page} scrolls sideways: {wide}"
        );
    }
    window.close().await;
}
