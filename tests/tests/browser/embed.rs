//! The page that makes lines to embed: each line works in an empty page from disk and from another origin.

use axlewright_tests::session::{Window, site};
use serde_json::{Value, json};
use std::io::{Read, Write};
use std::net::TcpListener;

/// Serves one text from an origin of its own; gives its address.
fn elsewhere(html: String) -> String {
    let listener = TcpListener::bind("127.0.0.1:0").expect("a port is free");
    let address = listener.local_addr().expect("an address");
    std::thread::spawn(move || {
        for mut stream in listener.incoming().flatten() {
            let mut request = [0; 4096];
            let _ = stream.read(&mut request);
            let head = format!(
                "HTTP/1.1 200 OK\r\nContent-Type: text/html; charset=utf-8\r\nContent-Length: {}\r\nConnection: close\r\n\r\n",
                html.len()
            );
            let _ = stream.write_all(head.as_bytes());
            let _ = stream.write_all(html.as_bytes());
        }
    });
    format!("http://{address}/")
}

fn empty_page(line: &str) -> String {
    format!(
        "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><link rel=\"icon\" href=\"data:,\"><title>Mine</title></head><body>\n{line}\n</body></html>\n"
    )
}

/// Sets an element up on the page and gives its four lines, its answer and the figure to save.
async fn lines(window: &Window) -> Value {
    window.visit("embed.html").await;
    window.ready("axle-load-transfer").await;
    window
        .run(
            "const topic = document.getElementById('topic'); topic.value = 'axle-traction';\
             topic.dispatchEvent(new Event('change'));",
        )
        .await;
    window.ready("axle-traction").await;
    window
        .run(
            "const e = document.querySelector('axle-traction'); const slider = e.shadowRoot.querySelector('#friction-peak-slider');\
             slider.value = '0.5'; slider.dispatchEvent(new Event('input')); slider.dispatchEvent(new Event('change'));\
             await new Promise(r => setTimeout(r, 500));\
             const still = document.getElementById('still');\
             const saved = await (await fetch(still.href).catch(() => null))?.text();\
             return { lines: ['module', 'classic', 'frame', 'image'].map(id => document.getElementById(id).value),\
               answer: e.answer.limits, name: still.download, svg: saved ?? await e.figure('svg') };",
        )
        .await
}

async fn shows(window: &Window, limits: &Value, place: &str) {
    window.ready("axle-traction").await;
    let answer = window.answer("axle-traction").await;
    assert_eq!(answer["limits"], *limits, "{place}");
    assert_eq!(
        answer["scenario"]["surface"]["friction_peak"], "0.5",
        "{place}"
    );
}

#[tokio::test]
async fn every_copied_line_works_from_disk_and_from_another_origin() {
    let window = Window::open().await;
    let made = lines(&window).await;
    let line = |at: usize| made["lines"][at].as_str().expect("a line").to_owned();
    assert!(line(0).contains("integrity=\"sha384-"), "{}", line(0));
    assert!(line(2).contains("sandbox=\"allow-scripts\""), "{}", line(2));
    let folder = tempfile::tempdir().expect("a folder");
    for at in 0..3 {
        let page = empty_page(&line(at));
        let file = folder.path().join(format!("mine-{at}.html"));
        std::fs::write(&file, &page).expect("a file");
        for address in [format!("file://{}", file.display()), elsewhere(page)] {
            window.go(&address).await;
            let place = format!("line {at} at {address}");
            if at == 2 {
                window.driver.enter_frame(0).await.expect("a frame");
                shows(&window, &made["answer"], &place).await;
                window.driver.enter_default_frame().await.expect("back");
            } else {
                shows(&window, &made["answer"], &place).await;
            }
        }
    }
    // The still image stands beside its page.
    let name = made["name"].as_str().expect("a name");
    std::fs::write(
        folder.path().join(name),
        made["svg"].as_str().expect("a figure"),
    )
    .expect("a file");
    let file = folder.path().join("image.html");
    std::fs::write(&file, empty_page(&line(3))).expect("a file");
    window.go(&format!("file://{}", file.display())).await;
    let seen = window
        .run("const i = document.querySelector('img'); await i.decode(); return [i.naturalWidth > 300, i.alt.length > 60];")
        .await;
    assert_eq!(seen, json!([true, true]));
    window.close().await;
}

#[tokio::test]
async fn a_changed_script_is_not_run_under_the_hash_of_the_old_one() {
    let window = Window::open().await;
    let made = lines(&window).await;
    let line = made["lines"][0]
        .as_str()
        .expect("a line")
        .replace("sha384-", "sha384-AAAA");
    window.go(&elsewhere(empty_page(&line))).await;
    let known = window
        .run("await new Promise(r => setTimeout(r, 1500)); return customElements.get('axle-traction') !== undefined;")
        .await;
    assert_eq!(known, false);
    assert!(
        line.contains(&site().url),
        "the script is that of the site: {line}"
    );
    window.close().await;
}
