//! Without a network: the one file, and the site after one visit.

use axlewright_core::topic::TOPICS;
use axlewright_tests::host::{Host, next_version};
use axlewright_tests::session::{Window, site};
use serde_json::json;

async fn wait(window: &Window, what: &str) {
    window
        .run(&format!(
            "for (let i = 0; i < 400 && !({what}); i += 1) await new Promise(r => setTimeout(r, 50));\
             if (!({what})) throw new Error('never: ' + {what:?});"
        ))
        .await;
}

const HEADING: &str = "return document.querySelector('h1').textContent;";

#[tokio::test]
async fn after_one_visit_the_site_works_without_a_network_and_a_new_version_is_taken_whole() {
    let host = Host::of(&site().folder);
    let window = Window::open().await;
    window.go(&format!("{}index.html", host.url)).await;
    wait(&window, "navigator.serviceWorker.controller").await;
    host.show(None);
    for topic in TOPICS {
        window
            .go(&format!("{}{}.html", host.url, topic.slug()))
            .await;
        window.ready(&topic.tag()).await;
        let answer = window.answer(&topic.tag()).await;
        assert!(answer.is_object(), "{}: {answer}", topic.name);
    }
    // A language that was not shown before, a sheet, the search, a frame, the folder itself.
    window
        .run("document.documentElement.lang = 'de'; await new Promise(r => setTimeout(r, 800));")
        .await;
    for page in [
        "answers-traction.html",
        "search.html?q=load",
        "embed/traction.html?vehicle=kame",
        "",
    ] {
        window.go(&format!("{}{page}", host.url)).await;
        let heading = window.run(HEADING).await;
        assert!(
            heading.as_str().is_some_and(|text| !text.is_empty()),
            "{page}: {heading}"
        );
    }
    let text = window
        .run("return document.querySelector('main').textContent.length;")
        .await;
    assert!(text.as_u64() > Some(500), "{text}");

    let folder = tempfile::tempdir().expect("a folder");
    next_version(folder.path());
    host.show(Some(folder.path()));
    window.go(&format!("{}index.html", host.url)).await;
    assert_eq!(
        window.run(HEADING).await,
        "One motor or four?",
        "the old version stays until it is left"
    );
    wait(&window, "document.querySelector('.version button')").await;
    assert_eq!(window.run(HEADING).await, "One motor or four?");
    window
        .run("document.querySelector('.version button').click();")
        .await;
    wait(
        &window,
        "document.querySelector('h1')?.textContent.startsWith('Second edition')",
    )
    .await;
    wait(&window, "!document.querySelector('.version')").await;
    // The new version is whole: it too needs no network, and has no copy of the old page.
    host.show(None);
    window.go(&format!("{}index.html", host.url)).await;
    assert_eq!(
        window.run(HEADING).await,
        "Second edition: One motor or four?"
    );
    window.ready("axle-traction").await;
    window.close().await;
}

#[tokio::test]
async fn a_half_updated_server_does_not_break_the_kept_version() {
    let host = Host::of(&site().folder);
    let window = Window::open().await;
    window.go(&format!("{}index.html", host.url)).await;
    wait(&window, "navigator.serviceWorker.controller").await;
    // The worker of the new version is there, its first page is not yet.
    let folder = tempfile::tempdir().expect("a folder");
    next_version(folder.path());
    std::fs::copy(
        site().folder.join("index.html"),
        folder.path().join("index.html"),
    )
    .expect("a copy");
    host.show(Some(folder.path()));
    // The new worker is found, cannot bring its version together, and gives up.
    let states = window
        .run(
            "const held = await navigator.serviceWorker.getRegistration(); const states = [];\
             const found = new Promise(done => held.addEventListener('updatefound', () => {\
               const fresh = held.installing; states.push(fresh.state);\
               fresh.addEventListener('statechange', () => { states.push(fresh.state); if (fresh.state !== 'installing') done(); });\
             }, { once: true }));\
             held.update().catch(() => {});\
             await Promise.race([found, new Promise(r => setTimeout(r, 20000))]);\
             return states;",
        )
        .await;
    assert_eq!(
        states,
        json!(["installing", "redundant"]),
        "a version with a file of another one is not taken"
    );
    window.go(&format!("{}index.html", host.url)).await;
    let seen = window
        .run("const held = await navigator.serviceWorker.getRegistration(); return [held.waiting === null, document.querySelector('.version') === null];")
        .await;
    assert_eq!(seen, json!([true, true]), "no broken version is offered");
    assert_eq!(window.run(HEADING).await, "One motor or four?");
    host.show(None);
    window.go(&format!("{}traction.html", host.url)).await;
    window.ready("axle-traction").await;
    window.close().await;
}

#[tokio::test]
async fn the_one_file_works_from_disk_with_the_network_cut() {
    let cut = [
        "--host-resolver-rules=MAP * ~NOTFOUND",
        "--proxy-server=127.0.0.1:9",
    ];
    let window = Window::open_with(1280, &cut).await;
    let folder = tempfile::tempdir().expect("a folder");
    // Alone in its folder: nothing beside it can help.
    let file = folder.path().join("axlewright-offline.html");
    std::fs::copy(site().folder.join("axlewright-offline.html"), &file).expect("a copy");
    let address = format!("file://{}", file.display());
    window.go(&address).await;
    wait(&window, "customElements.get('axle-traction')").await;
    for topic in TOPICS {
        let slug = topic.slug();
        let told = window
            .run(&format!(
                "location.hash = '{slug}'; await new Promise(r => setTimeout(r, 100));\
                 const page = document.getElementById('{slug}'); const e = page.querySelector('{}');\
                 const ready = await e.updateComplete; const shown = [...document.querySelectorAll('article')].filter(a => !a.hidden).map(a => a.id);\
                 return [ready, e.answer !== null, shown, document.title.includes('Axlewright')];",
                topic.tag()
            ))
            .await;
        assert_eq!(told, json!([true, true, [slug], true]), "{}", topic.name);
    }
    // Every page is inside, its links lead to pages, its pictures are there.
    let seen = window
        .run(
            "const dead = []; let count = 0;\
             for (const a of document.querySelectorAll('a[href^=\"#\"]')) { count += 1;\
               if (a.hash !== '#content' && !document.getElementById(decodeURIComponent(a.hash.slice(1)))) dead.push(a.getAttribute('href')); }\
             const outside = [...document.querySelectorAll('img')].filter(i => !i.src.startsWith('data:')).length;\
             return [dead, count, outside, [...document.querySelectorAll('article')].map(a => a.id)];",
        )
        .await;
    assert_eq!(seen[0], json!([]));
    assert!(seen[1].as_u64() > Some(150), "{seen}");
    assert_eq!(seen[2], 0);
    let mut articles: Vec<String> = serde_json::from_value(seen[3].clone()).expect("a list");
    articles.sort();
    // The page for lost addresses has no place in a file that has one address.
    let mut pages = crate::course::pages();
    pages.retain(|page| page != "404.html" && !page.contains('/'));
    let mut slugs: Vec<&str> = pages
        .iter()
        .filter_map(|p| p.strip_suffix(".html"))
        .collect();
    slugs.sort_unstable();
    assert_eq!(articles, slugs);
    let found = window
        .run(
            "const form = document.querySelector('.top form'); form.querySelector('input').value = 'counter-rotation'; form.requestSubmit();\
             await new Promise(r => setTimeout(r, 500));\
             const link = [...document.querySelectorAll('#results a')].find(a => a.getAttribute('href').startsWith('turn-in-place.html#'));\
             link.click(); await new Promise(r => setTimeout(r, 200));\
             return [location.hash.startsWith('#turn-in-place--'), !document.getElementById('turn-in-place').hidden];",
        )
        .await;
    assert_eq!(found, json!([true, true]));
    // What the search looks through is what the builder's index holds, in its order.
    let listed = window
        .run("return SEARCH_ENTRIES.map(({ address, page, heading, excerpt }) => ({ address, page, heading, excerpt }));")
        .await;
    let index = std::fs::read_to_string(site().folder.join("search-index.js")).expect("the index");
    let (_, literal) = index.split_once(" = ").expect("a script");
    let text: String =
        serde_json::from_str(literal.trim_end().trim_end_matches(';')).expect("a text");
    let index: serde_json::Value = serde_json::from_str(&text).expect("JSON");
    let stored = index["storedFields"].as_object().expect("entries");
    let stored: Vec<_> = stored.values().cloned().collect();
    assert!(stored.len() > 200, "{}", stored.len());
    let listed = listed.as_array().expect("a list");
    for (listed, stored) in listed.iter().zip(&stored) {
        assert_eq!(listed, stored);
    }
    assert_eq!(listed.len(), stored.len());
    let frame = window
        .run("location.hash = 'embed'; await new Promise(r => setTimeout(r, 1500)); return document.getElementById('frame').value;")
        .await;
    assert!(
        frame
            .as_str()
            .is_some_and(|line| line.contains("src=\"https://example.org/axlewright/embed/")),
        "{frame}"
    );
    assert_eq!(window.foreign_requests().await, json!([]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn without_script_the_one_file_and_the_pages_still_teach() {
    let window = Window::open().await;
    let off = json!({ "value": true });
    window
        .debug("Emulation.setScriptExecutionDisabled", off)
        .await;
    window.visit_file("axlewright-offline.html").await;
    let source = window.driver.source().await.expect("the page");
    for topic in TOPICS {
        assert!(
            source.contains(&format!("<article id=\"{}\">", topic.slug())),
            "{}",
            topic.name
        );
    }
    let picture = window.driver.screenshot_as_png().await.expect("a picture");
    assert!(
        picture.len() > 20_000,
        "something is painted: {} bytes",
        picture.len()
    );
    window.visit("traction.html").await;
    for css in ["axle-traction img", ".practice details", ".working math"] {
        let part = window
            .driver
            .find(thirtyfour::By::Css(css))
            .await
            .expect(css);
        assert!(part.is_displayed().await.expect("known"), "{css} is hidden");
    }
    window.close().await;
}
