//! The frame, in its sandbox, on a page of another origin.

use axlewright_tests::session::{Window, site};
use serde_json::{Value, json};
use std::io::{Read, Write};
use std::net::TcpListener;

/// The lines for the holder that the reference page tells.
fn snippet() -> String {
    let page = std::fs::read_to_string(axlewright_tests::file("../site/pages/reference.md"));
    let page = page.expect("the reference page");
    let (_, rest) = page
        .split_once("```html\n<script>\n")
        .expect("the lines for the holder");
    rest.split_once("</script>")
        .expect("their end")
        .0
        .to_owned()
}

/// Serves a page from an origin of its own, which knows nothing of the site, and gives its address. It
/// holds one frame and keeps every message.
fn hold(query: &str, width: u32, page_width: &str) -> String {
    let html = format!(
        "<!doctype html><html lang=en><meta charset=utf-8><link rel=icon href=\"data:,\"><title>Holder</title>\
         <script>globalThis.heard = []; addEventListener('message', e => heard.push([e.data, e.origin]));\n{}</script>\
         <body style=\"margin:0;width:{page_width}\">\
         <iframe src=\"{}embed/traction.html?{query}\" sandbox=\"allow-scripts\" width=\"{width}\" height=\"100\" title=\"Traction\"></iframe>",
        snippet(),
        site().url
    );
    let listener = TcpListener::bind("127.0.0.1:0").expect("a port is free");
    let address = listener.local_addr().expect("it has an address");
    std::thread::spawn(move || {
        for stream in listener.incoming() {
            let Ok(mut stream) = stream else { continue };
            let mut request = [0; 4096];
            let _ = stream.read(&mut request);
            let head = format!(
                "HTTP/1.1 200 OK\r\nContent-Type: text/html\r\nContent-Length: {}\r\nConnection: close\r\n\r\n",
                html.len()
            );
            let _ = stream.write_all(head.as_bytes());
            let _ = stream.write_all(html.as_bytes());
        }
    });
    format!("http://{address}/")
}

/// Waits until the holder has heard a message that fulfils a condition; gives all heard so far.
async fn heard(window: &Window, condition: &str) -> Value {
    window
        .run(&format!(
            "for (let i = 0; i < 200 && !heard.some(([m, from]) => {condition}); i += 1) \
               await new Promise(r => setTimeout(r, 50));\
             if (!heard.some(([m, from]) => {condition})) throw new Error('never heard: ' + JSON.stringify(heard).slice(0, 400));\
             return heard;"
        ))
        .await
}

const HEIGHT: &str = "m.type === 'axlewright-height' && m.height > 300";

#[tokio::test]
async fn a_sandboxed_frame_on_a_foreign_page_works_tells_its_height_and_passes_events_on() {
    let window = Window::open().await;
    let query = "vehicle=corrie&amp;friction-peak=1.6&amp;layout=F1&amp;controls=mass+friction-peak&amp;view=side&amp;units=us";
    let address = hold(query, 900, "auto");
    window
        .driver
        .goto(&address)
        .await
        .expect("the holder opens");
    let first = heard(&window, HEIGHT).await;
    assert!(
        first
            .as_array()
            .expect("a list")
            .iter()
            .all(|entry| entry[1] == "null"),
        "the frame has an origin of its own: {first}"
    );
    heard(
        &window,
        "m.event === 'axle-answer' && m.detail.limits.F1R1.acceleration > 15",
    )
    .await;
    let height = "return Number(document.querySelector('iframe').height);";
    let before = window.run(height).await.as_f64().expect("a height");
    assert!(before > 300.0, "the holder's lines have set it: {before}");

    window
        .driver
        .enter_frame(0)
        .await
        .expect("the frame is there");
    let seen = window
        .run(
            "const e = document.querySelector('axle-traction'); await e.updateComplete;\
             return [self.origin, e.getAttribute('units'), e.shadowRoot.querySelectorAll('.number').length,\
               e.scenario.layout,\
               performance.getEntriesByType('resource').map(r => r.name)];",
        )
        .await;
    assert_eq!(seen[0], "null");
    assert_eq!(seen[1], "us");
    assert_eq!(seen[2], 2, "the chosen controls");
    assert_eq!(seen[3], "F1");
    // The holder answers each message about the height, the last of them perhaps only now.
    window
        .run(
            "const page = document.documentElement;\
             for (let i = 0; i < 100 && page.scrollHeight > innerHeight; i += 1) await new Promise(r => setTimeout(r, 50));\
             if (page.scrollHeight > innerHeight) throw new Error(`the frame scrolls: ${page.scrollHeight} in ${innerHeight}`);",
        )
        .await;
    let files: Vec<&str> = seen[4]
        .as_array()
        .expect("a list")
        .iter()
        .filter_map(Value::as_str)
        .collect();
    assert!(
        files
            .iter()
            .any(|name| name.ends_with("axlewright.classic.js")),
        "{files:?}"
    );
    for name in files {
        let own =
            name.starts_with(&site().url) || name.starts_with("blob:") || name.starts_with("data:");
        assert!(own, "{name}");
    }
    window
        .run(
            "const e = document.querySelector('axle-traction');\
             e.shadowRoot.querySelector('details').open = true;\
             const slider = e.shadowRoot.querySelector('#friction-peak-slider'); slider.value = '0.5';\
             slider.dispatchEvent(new Event('input'));",
        )
        .await;
    window
        .driver
        .enter_default_frame()
        .await
        .expect("back to the holder");
    heard(
        &window,
        &format!("m.type === 'axlewright-height' && m.height > {before} && m.topic === 'traction'"),
    )
    .await;
    let changed = heard(&window, "m.event === 'axle-change'").await;
    let change = changed
        .as_array()
        .expect("a list")
        .iter()
        .find(|entry| entry[0]["event"] == "axle-change");
    let change = &change.expect("a change")[0];
    assert_eq!(change["type"], "axlewright-event");
    assert_eq!(change["detail"]["vehicle"]["base"], "corrie");
    assert_eq!(change["detail"]["surface"]["friction_peak"], "0.5");
    let after = window.run(height).await.as_f64().expect("a height");
    assert!(after > before, "{before} {after}");
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_wild_query_does_nothing_in_the_frame_nor_to_its_holder() {
    let window = Window::open().await;
    let query = "vehicle=esker&amp;surface=%3Cimg+src%3Dx+onerror%3Dparent.postMessage('harm','*')%3E&amp;onload=parent.postMessage('harm','*')\
        &amp;scenario=%7B%22vehicle%22%3A%7B%22base%22%3A%22%3Cb%3E%22%7D%7D";
    window
        .driver
        .goto(&hold(query, 900, "auto"))
        .await
        .expect("the holder opens");
    heard(&window, "m.event === 'axle-problem'").await;
    let all = heard(&window, HEIGHT).await;
    let ours = all.as_array().expect("a list").iter().all(|entry| {
        matches!(
            entry[0]["type"].as_str(),
            Some("axlewright-height" | "axlewright-event")
        )
    });
    assert!(ours, "{all}");
    window
        .driver
        .enter_frame(0)
        .await
        .expect("the frame is there");
    let seen = window
        .run(
            "const e = document.querySelector('axle-traction');\
             return [e.shadowRoot.querySelectorAll('img, b, script').length, document.querySelector('main').children.length];",
        )
        .await;
    assert_eq!(
        seen,
        json!([0, 3]),
        "the title, the sentence for no script, and the element"
    );
    window.close().await;
}

#[tokio::test]
async fn a_frame_of_320_pixels_does_not_scroll_sideways_in_any_topic_or_theme() {
    let window = Window::open().await;
    window
        .driver
        .goto(&hold("theme=dark", 320, "320px"))
        .await
        .expect("the holder opens");
    heard(&window, HEIGHT).await;
    for topic in axlewright_core::topic::TOPICS {
        let (slug, tag) = (topic.slug(), topic.tag());
        window
            .run(&format!(
                "heard.length = 0; const f = document.querySelector('iframe');\
                 f.src = f.src.replace(/embed\\/.*/, 'embed/{slug}.html?theme=dark');"
            ))
            .await;
        heard(&window, &format!("{HEIGHT} && m.topic === '{slug}'")).await;
        window
            .driver
            .enter_frame(0)
            .await
            .expect("the frame is there");
        let seen = window
            .run(&format!(
                "const e = document.querySelector('{tag}'); await e.updateComplete;\
                 await new Promise(r => setTimeout(r, 200)); const page = document.documentElement;\
                 return [page.scrollWidth <= page.clientWidth, page.clientWidth, getComputedStyle(page).backgroundColor];"
            ))
            .await;
        assert_eq!(seen[0], true, "{slug}: {seen}");
        assert!(seen[1].as_u64().is_some_and(|width| width >= 300), "{seen}");
        assert_eq!(
            seen[2], "rgb(18, 22, 31)",
            "the ground is that of the element"
        );
        window
            .driver
            .enter_default_frame()
            .await
            .expect("back to the holder");
    }
    window.close().await;
}
