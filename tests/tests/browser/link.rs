//! A link sets the element of a page, and does nothing else to it.

use axlewright_tests::session::Window;
use serde_json::json;

/// A query with marks, a script and a picture in every place that takes a text.
const WILD: &str = "vehicle=%3Cimg+src%3Dx+onerror%3DglobalThis.harm%3D1%3E\
    &mass=%22%3E%3Cscript%3EglobalThis.harm%3D1%3C/script%3E\
    &show=figure+readouts+%3Csvg+onload%3DglobalThis.harm%3D1%3E\
    &lang=%22+onclick%3D%22globalThis.harm%3D1&onclick=globalThis.harm%3D1\
    &innerHTML=%3Cb%3E&%3Cscript%3E=1&scenario=https://example.org/a.json";

#[tokio::test]
async fn a_link_sets_the_element_and_what_means_nothing_is_told_once() {
    let window = Window::open().await;
    let query =
        "?vehicle=corrie&friction-peak=1.6&layout=F1&rolling-resistance=&from=mail&hidden=1";
    for from_disk in [false, true] {
        let page = format!("traction.html{query}");
        if from_disk {
            window.visit_file(&page).await;
        } else {
            window.visit(&page).await;
        }
        window.ready("axle-traction").await;
        let seen = window
            .run(
                "const e = document.querySelector('axle-traction');\
                 return [e.answer.limits.F1R1.acceleration, e.scenario.layout, e.getAttribute('vehicle'), e.hidden, e.scenario.vehicle];",
            )
            .await;
        // (1.6 − 0.01)·9.81: the page's own rolling resistance of nothing is taken away again.
        let limit = seen[0].as_f64().expect("a number");
        assert!((limit - 15.5979).abs() < 1e-9, "{seen}");
        assert_eq!(seen[1], "F1");
        assert_eq!(seen[2], "corrie");
        assert_eq!(seen[3], false);
        assert_eq!(seen[4], json!({ "base": "corrie" }));
        let told = window.complaints().await;
        assert_eq!(told.len(), 1, "{told:?}");
        assert!(told[0].contains("from, hidden"), "{told:?}");
    }
    window.close().await;
}

/// Copies a link to what the first element shows, as its button does.
async fn copied_link(window: &Window) -> String {
    let link = window
        .run(
            "Object.defineProperty(navigator, 'clipboard', { configurable: true, value: { writeText: async t => { window.copied = t; } } });\
             window.copied = undefined;\
             document.querySelector('axle-traction').shadowRoot.querySelector('[data-do=link]').click();\
             for (let i = 0; i < 100 && !window.copied; i++) await new Promise(r => setTimeout(r, 50)); return window.copied;",
        )
        .await;
    link.as_str().expect("a link").to_owned()
}

fn query(link: &str) -> &str {
    link.split_once('?').map_or("", |(_, query)| query)
}

/// What the element shows, without the names that differ from one drawing to the next.
const SHOWN: &str = "const e = document.querySelector('axle-traction'); await e.updateComplete; await new Promise(r => setTimeout(r, 200));\
    const root = e.shadowRoot; return [root.querySelector('.figure svg').outerHTML, root.querySelector('.readouts').textContent,\
    root.querySelector('.views [aria-pressed=true]').textContent];";

#[tokio::test]
async fn a_copied_link_brings_back_view_units_and_language() {
    let window = Window::open().await;
    window.visit("traction.html").await;
    window.ready("axle-traction").await;
    let plain = copied_link(&window).await;
    assert_eq!(query(&plain), "", "nothing differs from the page");
    let first = window.run(SHOWN).await;
    // The reader turns the figure; the page lets them choose units and language.
    let turn = |at: usize| {
        format!(
            "const e = document.querySelector('axle-traction'); e.shadowRoot.querySelectorAll('.views button')[{at}].click();"
        )
    };
    window.run(&turn(1)).await;
    let link = copied_link(&window).await;
    assert_eq!(query(&link), "view=side");
    window
        .run("const e = document.querySelector('axle-traction'); e.units = 'us'; e.lang = 'de';")
        .await;
    let shown = window.run(SHOWN).await;
    assert_ne!(shown, first);
    let link = copied_link(&window).await;
    assert_eq!(query(&link), "view=side&units=us&lang=de");
    window.visit("none.html").await;
    window.go(&link).await;
    window.ready("axle-traction").await;
    assert_eq!(window.run(SHOWN).await, shown, "{link}");
    // What the address says is said again, and may be what the page has of itself.
    assert_eq!(copied_link(&window).await, link);
    window.run(&turn(0)).await;
    window
        .run("const e = document.querySelector('axle-traction'); e.units = 'si'; e.lang = 'en';")
        .await;
    let back = copied_link(&window).await;
    assert_eq!(query(&back), "view=plan&units=si&lang=en");
    window.visit("none.html").await;
    window.go(&back).await;
    window.ready("axle-traction").await;
    assert_eq!(window.run(SHOWN).await, first);
    // A page whose own view is another.
    window.visit("one.html").await;
    window
        .run(
            "document.querySelector('#place').innerHTML = '<axle-traction vehicle=esker layouts=\"F1 R1 F1R1\" layout=R1 view=side units=us></axle-traction>';",
        )
        .await;
    window.ready("axle-traction").await;
    assert_eq!(query(&copied_link(&window).await), "");
    window.run(&turn(0)).await;
    assert_eq!(query(&copied_link(&window).await), "view=plan");
    window
        .run("document.querySelector('axle-traction').units = 'si';")
        .await;
    assert_eq!(query(&copied_link(&window).await), "view=plan&units=si");
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn the_part_after_the_hash_names_the_element() {
    let window = Window::open().await;
    let accelerations = "await Promise.all([one.updateComplete, two.updateComplete]);\
        return [one, two].map(e => e.answer.scenario.load_transfer.acceleration);";
    for (hash, wanted) in [
        ("", ["0.2 g", "0.6 g"]),
        ("#two", ["0.6 g", "0.2 g"]),
        ("#elsewhere", ["0.2 g", "0.6 g"]),
    ] {
        window.visit("none.html").await;
        window
            .visit(&format!("two.html?acceleration=0.2+g{hash}"))
            .await;
        window.ready("axle-load-transfer").await;
        assert_eq!(window.run(accelerations).await, json!(wanted), "{hash}");
    }
    window.close().await;
}

#[tokio::test]
async fn nothing_in_a_link_becomes_markup_or_a_request() {
    let window = Window::open().await;
    for page in ["traction.html", "embed/traction.html"] {
        window.visit(&format!("{page}?{WILD}")).await;
        window.ready("axle-traction").await;
        let seen = window
            .run(
                "await new Promise(r => setTimeout(r, 300)); const e = document.querySelector('axle-traction');\
                 const said = e.shadowRoot.querySelector('#problem').textContent;\
                 return [globalThis.harm ?? null, e.onclick, e.shadowRoot.querySelectorAll('img, script').length,\
                   document.querySelectorAll('script:not([src])').length, said, !!e.answer];",
            )
            .await;
        assert_eq!(seen[0], json!(null));
        assert_eq!(seen[1], json!(null));
        assert_eq!(seen[2], 0, "{seen}");
        assert_eq!(seen[3], 0, "{seen}");
        let said = seen[4].as_str().expect("a text");
        assert!(
            said.contains("vehicle.base") || said.contains("vehicle.mass"),
            "{said}"
        );
        // The frame gives nothing of its own, so the example is shown. The page gives a rolling resistance,
        // which without a vehicle has no answer.
        assert_eq!(seen[5], page.starts_with("embed"), "{seen}");
        assert_eq!(window.foreign_requests().await, json!([]));
        let told = window.complaints().await;
        assert_eq!(told.len(), 1, "{told:?}");
    }
    window.close().await;
}
