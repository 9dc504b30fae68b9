//! The wasm instance stops on purpose: the page lives on.

use crate::routes::routes;
use axlewright_tests::session::Window;
use serde_json::json;

#[tokio::test]
async fn after_a_trap_every_element_is_put_back_with_its_scenario() {
    let window = Window::open().await;
    window.visit("three.html").await;
    for tag in ["axle-load-transfer", "axle-traction", "axle-turn-in-place"] {
        window.ready(tag).await;
    }
    window
        .run(
            "globalThis.errors = []; addEventListener('error', e => errors.push(e.message));\
             addEventListener('unhandledrejection', e => errors.push(String(e.reason)));\
             document.querySelector('axle-load-transfer').setAttribute('acceleration', '0.8 g');",
        )
        .await;
    let before = window.answer("axle-load-transfer").await;
    for round in 1..=2 {
        let seen = window
            .run(
                "const element = document.querySelector('axle-load-transfer');\
                 const { provokeTrap } = await import('./axlewright.js');\
                 let told = ''; try { await provokeTrap(); } catch (e) { told = String(e); }\
                 const root = element.shadowRoot;\
                 const notice = root.querySelector('[part~=notice]').textContent;\
                 const picture = root.querySelectorAll('svg').length;\
                 return [told, notice, picture];",
            )
            .await;
        assert!(
            seen[0].as_str().is_some_and(|t| t.contains("provoked")),
            "{seen}"
        );
        assert!(
            seen[1].as_str().is_some_and(|t| t.contains("stopped")),
            "round {round}: {seen}"
        );
        assert!(
            seen[2].as_u64() >= Some(1),
            "the last picture stays: {seen}"
        );
        for tag in ["axle-load-transfer", "axle-traction", "axle-turn-in-place"] {
            window.ready(tag).await;
        }
        assert_eq!(
            window.answer("axle-load-transfer").await,
            before,
            "round {round}"
        );
    }
    // It works on: an input still moves it.
    window
        .run("document.querySelector('axle-load-transfer').setAttribute('acceleration', '0.2 g');")
        .await;
    assert_ne!(window.answer("axle-load-transfer").await, before);
    assert_eq!(window.run("return errors;").await, serde_json::json!([]));
    window.close().await;
}

/// Stops the instance on purpose and waits until `after` tells that it may go on.
const TRAP: &str = "
    const { provokeTrap } = await import(new URL('axlewright.js', location));
    const trap = async () => { await provokeTrap().catch(() => {}); };
    const notice = (element) => element.shadowRoot.querySelector('[part~=notice]').textContent;";

#[tokio::test]
async fn fifty_elements_are_put_back_while_the_page_goes_on() {
    let window = Window::open().await;
    window.visit("watched.html").await;
    window.ready("axle-load-transfer").await;
    let seen = window
        .run(&format!(
            "{TRAP} const fifty = Array.from({{ length: 50 }}, (_, at) => {{\
               const e = document.createElement(['axle-load-transfer', 'axle-traction', 'axle-turn-in-place'][at % 3]);\
               e.setAttribute('vehicle', 'esker'); e.setAttribute('mass', 1500 + 10 * at + ' kg'); return e; }});\
             document.body.append(...fifty); await Promise.all(fifty.map((e) => e.updateComplete));\
             const answers = () => fifty.map((e) => JSON.stringify(e.answer));\
             const before = answers(); const different = new Set(before).size; const began = performance.now(); await trap();\
             const said = fifty.every((e) => notice(e).includes('stopped') && e.shadowRoot.querySelector('svg'));\
             const live = await Promise.all(fifty.map((e) => e.updateComplete));\
             return {{ said, different, live: live.every(Boolean), time: performance.now() - began,\
               same: answers().every((answer, at) => answer === before[at]), instances: seen.memories.length, warnings: seen.warnings.length }};"
        ))
        .await;
    println!(
        "fifty elements put back after a trap: {:.0} ms",
        seen["time"].as_f64().unwrap_or(f64::NAN)
    );
    assert_eq!(seen["said"], true, "{seen}");
    assert_eq!(seen["live"], true);
    assert_eq!(seen["different"], 50, "each has values of its own");
    assert_eq!(seen["same"], true);
    assert_eq!(seen["instances"], 2);
    assert_eq!(seen["warnings"], 1, "one warning for the whole page");
    assert_eq!(window.errors().await, json!([]));
    window.close().await;
}

#[tokio::test]
async fn an_element_whose_mount_traps_is_left_out_and_the_others_go_on() {
    let window = Window::open().await;
    window.visit("blank.html").await;
    let seen = window
        .run(&format!(
            "const plain = WebAssembly.instantiate; let traps = 1;\
             WebAssembly.instantiate = async (...given) => {{\
               const instance = await plain(...given); const exports = {{ ...instance.exports }}; const mount = exports.mount;\
               exports.mount = (...parts) => {{\
                 if (traps > 0) {{ traps -= 1; throw new WebAssembly.RuntimeError('unreachable'); }} return mount(...parts); }};\
               return {{ exports }}; }};\
             document.body.innerHTML = '<axle-traction><p>fixed</p></axle-traction><axle-load-transfer></axle-load-transfer>';\
             {TRAP} const [first, second] = document.body.children; const out = {{}};\
             out.live = [await first.updateComplete, await second.updateComplete];\
             await new Promise((r) => setTimeout(r, 300)); out.second = await second.updateComplete;\
             out.first = [first.querySelector('p').checkVisibility(), notice(first), first.answer];\
             first.setAttribute('vehicle', 'kame'); out.retried = [await first.updateComplete, notice(first), first.answer !== null, first.querySelector('p').checkVisibility()];\
             traps = 1; const third = document.createElement('axle-turn-in-place'); third.innerHTML = '<p>fixed</p>'; document.body.append(third);\
             await third.updateComplete; await new Promise((r) => setTimeout(r, 300));\
             out.others = [await first.updateComplete, await second.updateComplete, first.answer.scenario.vehicle.base];\
             out.third = [third.querySelector('p').checkVisibility(), notice(third).includes('stopped')]; return out;"
        ))
        .await;
    assert_eq!(seen["live"][0], false, "{seen}");
    assert_eq!(seen["second"], true, "{seen}");
    assert_eq!(seen["first"][0], true, "the fallback stays: {seen}");
    assert!(
        seen["first"][1]
            .as_str()
            .is_some_and(|t| t.contains("stopped")),
        "{seen}"
    );
    assert_eq!(seen["first"][2], json!(null));
    assert_eq!(seen["retried"], json!([true, "", true, false]), "{seen}");
    assert_eq!(seen["others"], json!([true, true, "kame"]), "{seen}");
    assert_eq!(seen["third"], json!([true, true]), "{seen}");
    assert_eq!(window.errors().await, json!([]));
    window.close().await;
}

#[tokio::test]
async fn focus_scroll_and_what_was_open_are_kept_over_a_trap() {
    let window = Window::open().await;
    window.visit("three.html").await;
    for tag in ["axle-load-transfer", "axle-traction", "axle-turn-in-place"] {
        window.ready(tag).await;
    }
    let seen = window
        .run(&format!(
            "{TRAP} const e = document.querySelector('axle-traction'); const root = e.shadowRoot; const out = {{}};\
             root.querySelectorAll('details')[1].open = true; await new Promise((r) => setTimeout(r, 100));\
             const field = root.querySelector('#mass-number') ?? root.querySelector('.number'); field.focus();\
             field.scrollIntoView({{ block: 'center' }}); await new Promise((r) => setTimeout(r, 100));\
             const state = () => [scrollY, Math.round(root.activeElement?.getBoundingClientRect().top ?? -1), root.activeElement?.id,\
               [...root.querySelectorAll('details')].map((d) => d.open), root.querySelectorAll('math').length, document.documentElement.scrollHeight];\
             out.before = state(); await trap(); await e.updateComplete; await new Promise((r) => setTimeout(r, 300)); out.after = state();\
             out.notice = notice(e); return out;"
        ))
        .await;
    assert!(seen["before"][0].as_f64() > Some(100.0), "scrolled: {seen}");
    assert!(
        seen["before"][4].as_u64() > Some(0),
        "a working is open: {seen}"
    );
    assert_ne!(seen["before"][2], json!(null), "{seen}");
    for part in 1..=4 {
        if part == 1 {
            // The sentence of the restart may push what is below it down by its own height.
            continue;
        }
        assert_eq!(seen["after"][part], seen["before"][part], "{seen}");
    }
    let moved = |part: usize| {
        (seen["after"][part].as_f64().unwrap_or(0.0) - seen["before"][part].as_f64().unwrap_or(0.0))
            .abs()
    };
    assert!(moved(1) <= 2.0, "what is read stays where it is: {seen}");
    window.close().await;
}

#[tokio::test]
async fn a_trap_while_a_scenario_is_fetched_loses_nothing() {
    let window = Window::open().await;
    window
        .go(&format!("{}site/watched.html", routes().url))
        .await;
    window.ready("axle-load-transfer").await;
    let seen = window
        .run(&format!(
            "{TRAP} const first = document.querySelector('#first'); first.removeAttribute('vehicle');\
             first.setAttribute('scenario', 'slow.json');\
             const second = document.createElement('axle-traction'); second.setAttribute('scenario', 'slow.json'); document.body.append(second);\
             await new Promise((r) => setTimeout(r, 300)); await trap(); const at_once = await first.updateComplete;\
             for (let n = 0; n < 60 && first.scenario.vehicle?.base !== 'corrie'; n += 1) await new Promise((r) => setTimeout(r, 50));\
             await second.updateComplete;\
             return [at_once, first.scenario.vehicle.base, first.answer.scenario.load_transfer.acceleration, second.answer.scenario.vehicle.base];"
        ))
        .await;
    assert_eq!(seen, json!([true, "corrie", "0.3 g", "corrie"]));
    assert_eq!(window.errors().await, json!([]));
    window.close().await;
}

#[tokio::test]
async fn the_fourth_trap_within_a_minute_ends_it_with_one_sentence() {
    let window = Window::open().await;
    window.visit("watched.html").await;
    window.ready("axle-load-transfer").await;
    let seen = window
        .run(&format!(
            "{TRAP} const first = document.querySelector('#first'); const out = {{ live: [] }};\
             const second = document.createElement('axle-traction'); document.body.append(second); await second.updateComplete;\
             for (let round = 0; round < 4; round += 1) {{ await trap(); out.live.push(await first.updateComplete); await second.updateComplete; }}\
             await new Promise((r) => setTimeout(r, 200));\
             out.notices = [notice(first), notice(second)]; out.pictures = [first, second].map((e) => e.shadowRoot.querySelectorAll('.figure svg').length);\
             out.disabled = [...first.shadowRoot.querySelectorAll('input')].every((input) => input.disabled);\
             out.scenario = first.scenario.vehicle.base; first.setAttribute('acceleration', '0.1 g'); first.scenario = {{ vehicle: {{ base: 'kame' }} }};\
             const third = document.createElement('axle-traction'); third.innerHTML = '<p>fixed</p>'; document.body.append(third);\
             out.third = [await third.updateComplete, third.querySelector('p').checkVisibility(), notice(third)];\
             out.figure = await first.figure().catch((error) => error.message); first.remove(); document.body.append(first); await first.updateComplete;\
             out.instances = seen.memories.length; out.warnings = seen.warnings; return out;"
        ))
        .await;
    assert_eq!(seen["live"], json!([true, true, true, false]), "{seen}");
    let sentence =
        "This element stopped; the last picture is shown. Reload the page to start it again.";
    assert_eq!(seen["notices"], json!([sentence, sentence]));
    assert_eq!(seen["pictures"], json!([1, 1]));
    assert_eq!(seen["disabled"], true);
    assert_eq!(seen["scenario"], "esker");
    assert_eq!(seen["third"], json!([false, true, sentence]));
    assert_eq!(seen["figure"], sentence);
    assert_eq!(seen["instances"], 4);
    assert_eq!(
        seen["warnings"].as_array().map(Vec::len),
        Some(4),
        "one for each trap: {seen}"
    );
    assert_eq!(window.errors().await, json!([]));
    window.close().await;
}
