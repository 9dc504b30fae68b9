//! What the pages look like. `AXLEWRIGHT_PICTURES=FOLDER` keeps the pictures; the one in the README is
//! made so.

use axlewright_tests::session::Window;

#[tokio::test]
async fn every_page_paints_its_element() {
    let window = Window::open().await;
    for (page, tag) in [
        ("index.html", "axle-traction"),
        ("load-transfer.html", "axle-load-transfer"),
        ("traction.html", "axle-traction"),
        ("motor-split.html", "axle-motor-split"),
        ("launch.html", "axle-launch"),
        ("cornering.html", "axle-cornering"),
        ("turn-in-place.html", "axle-turn-in-place"),
        ("idle-drag.html", "axle-idle-drag"),
        ("packaging.html", "axle-packaging"),
        ("choice.html", "axle-choice"),
    ] {
        window.visit(page).await;
        window.ready(tag).await;
        window
            .run(&format!(
                "document.querySelector('{tag}').scrollIntoView();\
                 await new Promise(r => setTimeout(r, 300));"
            ))
            .await;
        let png = window.driver.screenshot_as_png().await.expect("a picture");
        assert!(
            png.len() > 30_000,
            "{page}: {} bytes are hardly a picture",
            png.len()
        );
        // Something is on the canvas, and it is as fine as the screen asks for.
        let ink = window
            .run(&format!(
                "const c = document.querySelector('{tag}').shadowRoot.querySelector('canvas');\
                 if (c.closest('[hidden]')) return [1, 2];\
                 const d = c.getContext('2d').getImageData(0, 0, c.width, c.height).data;\
                 const first = d.slice(0, 4).join(); let n = 0;\
                 for (let i = 0; i < d.length; i += 4) if (d.slice(i, i + 4).join() !== first) n++;\
                 return [n, c.width / c.clientWidth];"
            ))
            .await;
        assert!(ink[0].as_f64() >= Some(1.0), "{page}: the chart is blank");
        assert!(
            ink[1].as_f64() >= Some(1.9),
            "{page}: the chart is coarse: {ink}"
        );
        if let Some(folder) = std::env::var_os("AXLEWRIGHT_PICTURES") {
            let path = std::path::Path::new(&folder)
                .join(page)
                .with_extension("png");
            std::fs::write(&path, &png).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
        }
    }
    window.close().await;
}
