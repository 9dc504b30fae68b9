//! What a page may do to an element: create it early, move it, clone it, take it away, set it up by
//! properties, listen to it, ask it for files.

use axlewright_core::topic::TOPICS;
use axlewright_tests::run;
use axlewright_tests::session::{Window, site};
use axlewright_widgets::visual::{View, Visual};
use serde_json::{Value, json};

#[tokio::test]
async fn a_page_without_elements_fetches_no_wasm_and_one_far_below_waits() {
    let window = Window::open().await;
    window.visit("none.html").await;
    let fetched = "return performance.getEntriesByType('resource').map(e => new URL(e.name).pathname)\
                     .filter(name => name.endsWith('.wasm')).map(name => name.split('/').pop()).sort();";
    window
        .run("await new Promise(r => setTimeout(r, 500));")
        .await;
    assert_eq!(window.run(fetched).await, json!([]));
    window.visit("far.html").await;
    window
        .run("await new Promise(r => setTimeout(r, 500));")
        .await;
    assert_eq!(
        window.run(fetched).await,
        json!([]),
        "below the fold it waits"
    );
    let shown = window
        .run(
            "const e = document.querySelector('axle-traction');\
             const fallback = e.querySelector('p').checkVisibility();\
             e.scrollIntoView(); await new Promise(r => setTimeout(r, 1500));\
             return [fallback, e.shadowRoot.querySelectorAll('svg').length, e.querySelector('p').checkVisibility()];",
        )
        .await;
    assert_eq!(shown, json!([true, 1, false]));
    let files = window.run(fetched).await;
    let names: Vec<&str> = files
        .as_array()
        .into_iter()
        .flatten()
        .filter_map(Value::as_str)
        .collect();
    for wanted in ["axlewright_bg.wasm", "traction.wasm"] {
        assert!(names.contains(&wanted), "{wanted} among {names:?}");
    }
    for other in TOPICS.iter().filter(|topic| topic.name != "traction") {
        let file = format!("{}.wasm", other.name);
        assert!(!names.contains(&file.as_str()), "{file} among {names:?}");
    }
    for asked in ["question.wasm", "schema.wasm"] {
        assert!(!names.contains(&asked), "{asked} among {names:?}");
    }
    assert!(
        names.windows(2).all(|pair| pair[0] != pair[1]),
        "each once: {names:?}"
    );
    window.close().await;
}

#[tokio::test]
async fn an_element_survives_what_a_page_does_to_it() {
    let window = Window::open().await;
    window.visit("early.html").await;
    window.ready("axle-load-transfer").await;
    let seen = window
        .run(
            "const e = document.querySelector('#early');\
             const out = {};\
             out.before_upgrade = e.scenario.vehicle.base;\
             e.acceleration = '0.5 g'; out.attribute = e.getAttribute('acceleration');\
             out.ratio = e.answer.rear_to_front_ratio;\
             const changed = []; e.addEventListener('axle-change', x => changed.push(x.detail));\
             document.querySelector('#there').append(e); await e.updateComplete;\
             out.after_move = e.answer.rear_to_front_ratio;\
             const clone = e.cloneNode(true); document.body.append(clone); await clone.updateComplete;\
             out.clone = clone.answer.scenario.load_transfer.acceleration;\
             e.remove(); await new Promise(r => setTimeout(r, 50)); out.removed = e.answer;\
             document.body.append(e); await e.updateComplete; out.back = e.answer.rear_to_front_ratio;\
             e.removeAttribute('acceleration'); out.reset = e.scenario.load_transfer?.acceleration ?? null;\
             e.scenario = { vehicle: { base: 'corrie' }, load_transfer: { acceleration: '0.3 g' } };\
             out.given = e.answer.scenario.vehicle.base;\
             out.changed = changed.length;\
             return out;",
        )
        .await;
    assert_eq!(seen["before_upgrade"], "kame", "{seen}");
    assert_eq!(seen["attribute"], "0.5 g");
    assert_eq!(seen["after_move"], seen["ratio"]);
    assert_eq!(seen["clone"], "0.5 g");
    assert_eq!(seen["removed"], json!(null));
    assert_eq!(seen["back"], seen["ratio"]);
    assert_eq!(seen["given"], "corrie");
    assert_eq!(
        seen["changed"],
        json!(0),
        "only the reader's changes are told"
    );
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn controls_chosen_by_script_are_whole_and_the_shown_layout_is_compared() {
    let window = Window::open().await;
    window.visit("three.html").await;
    window.ready("axle-traction").await;
    let seen = window
        .run(
            "const e = document.querySelector('axle-traction');\
             e.setAttribute('controls', 'mass speed layout'); await e.updateComplete;\
             await new Promise(r => setTimeout(r, 100));\
             const labels = [...e.shadowRoot.querySelectorAll('.controls label')].map(l => l.textContent.trim());\
             e.setAttribute('layout', 'F1R2');\
             return [labels, Object.keys(e.answer.limits)];",
        )
        .await;
    assert_eq!(seen[0], json!(["mass m", "speed V", "layout shown"]));
    assert_eq!(seen[1], json!(["F1", "R1", "F2R2", "F1R2"]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn functions_of_the_script_answer_and_refuse_by_name() {
    let window = Window::open().await;
    window.visit("none.html").await;
    let seen = window
        .run(
            "const m = await import('./axlewright.js'); await m.default();\
             const out = { topics: m.topics() };\
             out.answer = m.solve('turn-in-place', { vehicle: { mass: '2500 kg', wheelbase: 2.9, cg_to_front_axle: 1.45,\
               track_front: 1.65 }, surface: { friction_sliding: 0.8 } }).tractive_force_per_wheel;\
             try { m.solve('traction', { vehicle: { mass: '-5 kg' } }); } catch (e) { out.error = [e instanceof Error, e.field, e.allowed, e.message]; }\
             try { m.solve('traction', { vehicle: { weelbase: '2 m' } }); } catch (e) { out.near = e.message; }\
             out.schema = m.schema('traction').properties.scenario.properties.vehicle.properties.mass['x-unit'];\
             return out;",
        )
        .await;
    assert_eq!(
        seen["topics"],
        json!([
            "load_transfer",
            "traction",
            "motor_split",
            "launch",
            "cornering",
            "turn_in_place",
            "idle_drag",
            "packaging",
            "choice"
        ])
    );
    let force = seen["answer"].as_f64().unwrap_or(0.0);
    assert!((force - 4263.0).abs() < 1.0, "published case D1: {seen}");
    assert_eq!(seen["error"][0], true);
    assert_eq!(seen["error"][1], "vehicle.mass");
    assert!(
        seen["error"][2].as_str().is_some_and(|a| a.contains("kg")),
        "{seen}"
    );
    assert!(
        seen["near"]
            .as_str()
            .is_some_and(|m| m.contains("vehicle.wheelbase")),
        "{seen}"
    );
    assert_eq!(seen["schema"], "kg");
    window.close().await;
}

/// Keeps what would be saved: the texts of the files.
const CATCH: &str = "window.caught = []; let blob; const make = URL.createObjectURL;\
    URL.createObjectURL = (given) => { blob = given; return make.call(URL, given); };\
    HTMLAnchorElement.prototype.click = async function () { window.caught.push(await blob.text()); };";

/// A view of an element as a file: the figure by its method, the chart by its button.
async fn figure_of(window: &Window, view: View) -> Value {
    let ask = if view == View::Chart {
        "e.shadowRoot.querySelector('[data-do=chart-svg]').click();\
         for (let i = 0; i < 100 && !window.caught.length; i++) await new Promise(r => setTimeout(r, 50));\
         return window.caught.pop();"
            .to_owned()
    } else {
        let word = view.word();
        format!("e.setAttribute('view', '{word}'); return await e.figure('svg');")
    };
    let script = format!("const e = document.querySelector('#place > *'); {ask}");
    window.run(&script).await
}

#[tokio::test]
async fn the_browser_writes_the_same_figures_and_numbers_as_the_program() {
    let window = Window::open().await;
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("scenario.json");
    let path = file.to_str().expect("a path");
    for topic in TOPICS {
        let name = topic.name;
        window.visit("one.html").await;
        window.run(CATCH).await;
        let scenario = window
            .run(&format!(
                "const e = document.createElement('{}'); document.querySelector('#place').append(e);\
                 globalThis.problems = []; e.addEventListener('axle-problem', x => problems.push(x.detail));\
                 await e.updateComplete; for (let i = 0; i < 200 && !e.answer; i++) await new Promise(r => setTimeout(r, 50));\
                 return e.scenario;",
                topic.tag()
            ))
            .await;
        std::fs::write(&file, scenario.to_string()).expect("it is written");
        for view in Visual::of(topic).expect("a look").views {
            let ours = figure_of(&window, *view).await;
            let word = view.word();
            let done = run(&["figure", name, path, "--view", word]);
            assert_eq!(done.code, Some(0), "{}", done.stderr);
            assert!(done.stdout.starts_with("<svg"), "{name} {word}");
            assert!(
                ours.as_str() == Some(&done.stdout),
                "{name} {word}: the figures differ"
            );
        }
        assert_eq!(window.run("return problems;").await, json!([]), "{name}");
        let png = window
            .run(
                "const b = await document.querySelector('#place > *').figure('png');\
                 const i = await createImageBitmap(b);\
                 return [b.type, i.width, String.fromCharCode(...new Uint8Array(await b.slice(1, 4).arrayBuffer()))];",
            )
            .await;
        assert_eq!(png, json!(["image/png", 2000, "PNG"]), "{name}");
        let table = window
            .run("return await document.querySelector('#place > *').table('csv');")
            .await;
        let done = run(&["answer", name, path, "--format", "csv"]);
        assert!(
            table.as_str() == Some(&done.stdout),
            "{name}: the tables differ"
        );
    }
    window.close().await;
}

/// The element cannot start: its fixed content is there, and one sentence says so.
pub(crate) async fn the_fallback_stays(window: &Window) {
    let seen = window
        .run(
            "await customElements.whenDefined('axle-traction');\
             const e = document.querySelector('axle-traction'); const ok = await e.updateComplete;\
             return [ok, e.querySelector('p').checkVisibility(), e.shadowRoot.querySelector('[part~=notice]').textContent];",
        )
        .await;
    assert_eq!(seen[0], false);
    assert_eq!(seen[1], true);
    assert!(
        seen[2]
            .as_str()
            .is_some_and(|text| text.contains("could not start")),
        "{seen}"
    );
}

#[tokio::test]
async fn without_wasm_the_fixed_picture_stays_with_one_sentence() {
    let window = Window::open().await;
    // The script of a build whose wasm file is not beside it.
    let folder = site().folder.join("without-wasm");
    std::fs::create_dir_all(&folder).expect("a folder");
    std::fs::copy(
        site().folder.join("axlewright.js"),
        folder.join("axlewright.js"),
    )
    .expect("the script");
    let page = "<!doctype html><html lang=en><title>x</title><axle-traction><p>fixed picture</p></axle-traction>\
                <script type=module src=axlewright.js></script>";
    std::fs::write(folder.join("page.html"), page).expect("a page");
    window.visit("without-wasm/page.html").await;
    the_fallback_stays(&window).await;
    window.close().await;
}
