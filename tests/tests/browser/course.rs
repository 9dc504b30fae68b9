//! The site as a course: every page obeys the rules of axe-core, the search finds, the comparison follows.

use crate::access::no_violation;
use axlewright_tests::session::{Window, answer_of_program, needed, site};
use serde_json::json;
use thirtyfour::prelude::*;
use thirtyfour::{Key, TypingData};

/// Every page and every frame of the built site; the offline file has journeys of its own.
pub(crate) fn pages() -> Vec<String> {
    let files = |folder: &str| {
        let files = std::fs::read_dir(site().folder.join(folder)).expect("the site");
        files.filter_map(|entry| entry.ok()?.file_name().into_string().ok())
    };
    let frames = files("embed").map(|name| format!("embed/{name}"));
    let mut all: Vec<String> = files("")
        .chain(frames)
        .filter(|name| name.ends_with(".html") && !name.contains("offline"))
        // The pages of the tests lie beside those of the site.
        .filter(|name| !axlewright_tests::file("pages").join(name).exists())
        .collect();
    all.sort();
    assert!(all.len() > 60, "{all:?}");
    all
}

/// What makes the browser dark.
const DARK: [&str; 2] = [
    "--force-dark-mode",
    "--blink-settings=preferredColorScheme=0",
];

/// Makes the view as narrow as the narrowest telephone.
async fn narrow(window: &Window) {
    let narrow = json!({ "width": 320, "height": 800, "deviceScaleFactor": 1, "mobile": false });
    window
        .debug("Emulation.setDeviceMetricsOverride", narrow)
        .await;
}

async fn judge_all(window: &Window) {
    let axe = needed(&axlewright_tests::file("node_modules/axe-core/axe.min.js"));
    for page in pages() {
        window.visit(&page).await;
        // The menu and every fold are open, so that what is in them is judged too.
        window
            .run("document.querySelectorAll('main details').forEach((d) => { d.open = true; });")
            .await;
        window
            .driver
            .execute(&axe, Vec::new())
            .await
            .expect("axe-core loads");
        no_violation(window, &page).await;
        let wide = window
            .run("const d = document.documentElement; return [d.scrollWidth, d.clientWidth];")
            .await;
        assert!(
            wide[0].as_u64() <= wide[1].as_u64(),
            "{page} scrolls sideways: {wide}"
        );
    }
}

#[tokio::test]
async fn every_page_obeys_in_light() {
    let window = Window::open().await;
    judge_all(&window).await;
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn every_page_obeys_in_dark_at_320_pixels() {
    let window = Window::open_with(500, &DARK).await;
    narrow(&window).await;
    window.visit("index.html").await;
    let seen = window
        .run("return [innerWidth, matchMedia('(prefers-color-scheme: dark)').matches];")
        .await;
    assert_eq!(seen, json!([320, true]));
    judge_all(&window).await;
    window.close().await;
}

#[tokio::test]
async fn the_menu_opens_by_keyboard_and_closes_with_escape() {
    let window = Window::open().await;
    window.visit("traction.html").await;
    let seen = window
        .run(
            "const menu = document.querySelector('.top details'); const summary = menu.querySelector('summary');\
             summary.click(); const open = menu.open; menu.querySelector('a').focus();\
             menu.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));\
             const here = menu.querySelector('[aria-current]').textContent;\
             return [open, menu.open, document.activeElement === summary, here];",
        )
        .await;
    assert_eq!(seen, json!([true, false, true, "Traction limits"]));
    window.close().await;
}

/// Looks a word up and follows the first result.
async fn look_up(window: &Window) {
    let found = window
        .run(
            "const field = document.getElementById('q'); const before = document.querySelectorAll('#results li').length;\
             field.value = 'counter-rot'; field.dispatchEvent(new Event('input'));\
             const list = [...document.querySelectorAll('#results a')].map(a => a.getAttribute('href'));\
             field.value = 'xyzzyq'; field.dispatchEvent(new Event('input'));\
             return [before, list, document.getElementById('results').textContent];",
        )
        .await;
    assert!(
        found[0].as_u64() > Some(0),
        "the query of the address is looked up: {found}"
    );
    let list = found[1].as_array().expect("a list");
    let is_there = |link: &serde_json::Value| {
        link.as_str()
            .is_some_and(|l| l.starts_with("turn-in-place.html"))
    };
    assert!(list.iter().any(is_there), "{found}");
    assert!(
        found[2]
            .as_str()
            .is_some_and(|text| text.starts_with("Nothing was found")),
        "{found}"
    );
}

#[tokio::test]
async fn the_search_works_on_a_server_and_from_a_folder() {
    let window = Window::open().await;
    window.visit("index.html").await;
    let field = window.driver.find(By::Css(".top input")).await;
    let typed = TypingData::from("friction circle") + Key::Enter;
    field
        .expect("a field")
        .send_keys(typed)
        .await
        .expect("typed");
    window
        .run("await new Promise(r => setTimeout(r, 1000));")
        .await;
    let place = window
        .run("return location.pathname + location.search;")
        .await;
    assert_eq!(place, "/search.html?q=friction+circle");
    look_up(&window).await;
    window.visit_file("search.html").await;
    let address = format!(
        "file://{}?q=wheelbase",
        site().folder.join("search.html").display()
    );
    window.go(&address).await;
    look_up(&window).await;
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn what_is_set_in_the_first_figure_of_the_comparison_holds_in_the_others() {
    let window = Window::open().await;
    window.visit("compare.html").await;
    for tag in ["axle-traction", "axle-motor-split", "axle-launch"] {
        window.ready(tag).await;
    }
    let before = window.answer("axle-launch").await;
    window
        .run(
            "const slider = document.querySelector('axle-traction').shadowRoot.querySelector('#mass-slider');\
             slider.value = '2400'; slider.dispatchEvent(new Event('input')); slider.dispatchEvent(new Event('change'));\
             await new Promise(r => setTimeout(r, 600));",
        )
        .await;
    for (tag, topic, path) in [
        ("axle-launch", "launch", "/layouts/R1/time_to_60_mph"),
        (
            "axle-motor-split",
            "motor_split",
            "/layouts/F1R2/motor_torque_needed",
        ),
    ] {
        let answer = window.answer(tag).await;
        assert_eq!(answer["scenario"]["vehicle"]["mass"], "2400 kg", "{tag}");
        let own = answer_of_program(topic, &answer["scenario"]);
        assert_eq!(answer.pointer(path), own.pointer(path), "{tag}");
    }
    let after = window.answer("axle-launch").await;
    assert_ne!(before["layouts"], after["layouts"]);
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_practice_question_is_the_printed_one_and_is_judged() {
    let window = Window::open().await;
    window.visit("traction.html").await;
    let seen = window
        .run(
            "const all = [...document.querySelectorAll('.practice > [question]')]; const out = [];\
             for (const e of all) { const printed = e.querySelector('p').textContent;\
               if (!await e.updateComplete) throw new Error('does not start');\
               out.push([printed, e.shadowRoot.textContent.includes(printed), e.answer === null && !e.firstElementChild.checkVisibility()]); }\
             return out;",
        )
        .await;
    let all = seen.as_array().expect("a list");
    assert_eq!(all.len(), 3);
    for question in all {
        assert_eq!(question[1], true, "{question}");
        assert_eq!(question[2], true, "nothing is told before: {question}");
    }
    window.close().await;
}

#[tokio::test]
async fn a_lost_address_at_any_depth_gets_a_page_with_its_style_and_links() {
    let window = Window::open().await;
    let look = "if (document.readyState !== 'complete') await new Promise(r => addEventListener('load', r));\
         const of = (s, p) => getComputedStyle(document.querySelector(s))[p];\
         return [of('body', 'fontFamily'), of('body', 'maxWidth'), of('.skip', 'position'), of('footer', 'color'),\
         of('.top', 'display'), [...document.querySelectorAll('a[href]')].map((link) => link.href.split('#')[0]), document.forms[0].action];";
    window.visit("404.html").await;
    let mut near = window.run(look).await;
    assert!(near[5].as_array().expect("links").len() > 20, "{near}");
    assert_eq!(near[6], json!(format!("{}search.html", site().url)));
    for lost in ["lost.html", "a/lost.html", "a/b/c/", "a/b/c/d/e?query=7"] {
        window
            .driver
            .goto(format!("{}{lost}", site().url))
            .await
            .expect("an answer");
        let mut far = window.run(look).await;
        // A link inside the page names the page where it is read.
        for links in [&mut near[5], &mut far[5]] {
            let links = links.as_array_mut().expect("links");
            links.retain(|link| {
                let link = link.as_str().unwrap_or("");
                !link.ends_with("404.html") && !link.ends_with(lost)
            });
        }
        assert_eq!(near, far, "{lost}");
    }
    // Without script the links cannot be put right, but the page looks the same.
    let off = json!({ "value": true });
    window
        .debug("Emulation.setScriptExecutionDisabled", off)
        .await;
    let mut pictures = Vec::new();
    for page in ["404.html", "lost.html", "a/b/c/lost.html"] {
        window.visit(page).await;
        let picture = window.driver.screenshot_as_png().await;
        pictures.push(picture.expect("a picture"));
    }
    assert!(pictures[0].len() > 20_000, "{} bytes", pictures[0].len());
    assert!(pictures[0] == pictures[1], "one folder down");
    assert!(pictures[0] == pictures[2], "three folders down");
    window.close().await;
}
