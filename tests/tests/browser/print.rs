//! Each topic on paper: what can be moved is gone, all workings are there, nothing is cut off.

use axlewright_core::topic::TOPICS;
use axlewright_tests::session::Window;
use base64::Engine as _;
use serde_json::json;

/// A paper: its name, width and height in inches.
const PAPERS: [(&str, f64, f64); 2] = [("a4", 8.27, 11.69), ("letter", 8.5, 11.0)];

/// Left and right margin together, as the style sets them: twice 15 mm, in inches.
const MARGINS: f64 = 30.0 / 25.4;

/// Prints the page that is shown. With the variable `AXLEWRIGHT_PICTURES` the PDF is kept in that folder.
pub(crate) async fn printed(window: &Window, name: &str, parameters: serde_json::Value) -> Vec<u8> {
    let printed = window.debug("Page.printToPDF", parameters).await;
    let pdf = base64::engine::general_purpose::STANDARD
        .decode(printed["data"].as_str().expect("data"))
        .expect("a PDF");
    if let Some(keep) = std::env::var_os("AXLEWRIGHT_PICTURES") {
        let file = std::path::Path::new(&keep).join(format!("{name}.pdf"));
        std::fs::write(file, &pdf).expect("kept");
    }
    pdf
}

/// Count of the pages of a PDF.
pub(crate) fn page_count(pdf: &[u8]) -> usize {
    let count = |text: &[u8]| pdf.windows(text.len()).filter(|part| *part == text).count();
    count(b"/Type /Page") - count(b"/Type /Pages")
}

/// What a sheet of paper would cut off, and what only a screen can use.
const LOOK: &str = "
const wide = [], controls = []; let steps = 0;
const visit = (root, inside) => {
  for (const e of root.querySelectorAll('*')) {
    if (e.shadowRoot) visit(e.shadowRoot, inside || e.closest('.practice') !== null);
    if (!e.checkVisibility() || (e instanceof SVGElement && e.tagName !== 'svg')) continue;
    const box = e.getBoundingClientRect();
    const name = e.tagName.toLowerCase() + '.' + (e.getAttribute('class') ?? '') + ' ' + e.textContent.trim().slice(0, 30);
    // What is for the ear alone is a pixel wide.
    if (box.width > 1 && box.right > document.documentElement.clientWidth + 1) wide.push(name);
    const hides = getComputedStyle(e).overflowX !== 'visible';
    if (hides && e.clientWidth > 1 && e.scrollWidth > e.clientWidth + 1) wide.push('cut: ' + name);
    // The field of a question stays: it can be filled in by hand.
    const style = getComputedStyle(e); // a button that looks like a word is the head of its column or row
    const word = e.matches('th button') && style.borderStyle === 'none' && style.backgroundColor === 'rgba(0, 0, 0, 0)' && style.padding === '0px';
    if (e.matches('input, button, select, textarea, nav') && box.width > 1 && !e.closest('.question') && !word) controls.push(name);
    if (!inside && e.matches('ol.working > li') && !e.closest('.practice')) steps += 1;
  }
};
visit(document, false);
return { wide, controls, steps, figures: [...document.querySelectorAll('figure, AXLES')].filter(e => e.checkVisibility()).length };
";

#[tokio::test]
async fn each_topic_prints_whole_on_both_papers() {
    let window = Window::open().await;
    let tags: Vec<String> = TOPICS.iter().map(|topic| topic.tag()).collect();
    let look = LOOK.replace("AXLES", &tags.join(", "));
    for topic in TOPICS {
        let slug = topic.slug();
        window.visit(&format!("{slug}.html")).await;
        // Once: what is far from the view starts when a page is printed.
        printed(&window, &slug, json!({})).await;
        window
            .run(&format!(
                "for (const e of document.querySelectorAll('{}')) await e.updateComplete;",
                tags.join(", ")
            ))
            .await;
        for (paper, width, height) in PAPERS {
            let print = json!({ "media": "print" });
            window.debug("Emulation.setEmulatedMedia", print).await;
            let sheet = json!({
                "width": (96.0 * (width - MARGINS)) as u32, "height": 900,
                "deviceScaleFactor": 1, "mobile": false,
            });
            window
                .debug("Emulation.setDeviceMetricsOverride", sheet)
                .await;
            window
                .run("await new Promise(r => setTimeout(r, 400));")
                .await;
            let seen = window.run(&look).await;
            assert_eq!(seen["wide"], json!([]), "{slug} on {paper}");
            assert_eq!(seen["controls"], json!([]), "{slug} on {paper}");
            assert!(seen["steps"].as_u64() >= Some(3), "{slug}: {seen}");
            assert!(seen["figures"].as_u64() >= Some(1), "{slug}: {seen}");
            window
                .debug("Emulation.clearDeviceMetricsOverride", json!({}))
                .await;
            let none = json!({ "media": "" });
            window.debug("Emulation.setEmulatedMedia", none).await;
            let name = format!("{slug}-{paper}");
            let size = json!({ "paperWidth": width, "paperHeight": height });
            let pdf = printed(&window, &name, size).await;
            let pages = page_count(&pdf);
            println!("{name}: {pages} pages");
            assert!((3..=20).contains(&pages), "{name}: {pages} pages");
        }
    }
    window.close().await;
}
