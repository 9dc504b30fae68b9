//! What goes wrong around an element stays quiet and clear: what was there stays, one sentence says
//! what is the matter, and the page sees no error.

use crate::life::the_fallback_stays;
use crate::routes::routes;
use axlewright_tests::session::Window;
use serde_json::{Value, json};
use std::sync::atomic::Ordering;

/// What an element shows besides its picture: its fallback, its notice, its refusal, and both what
/// the page and the console have seen.
const STATE: &str = "
    const e = document.querySelector('#first');
    const text = (selector) => e.shadowRoot?.querySelector(selector)?.textContent ?? '';
    return {
      fallback: e.querySelector('p').checkVisibility(),
      notice: text('[part~=notice]'), refusal: text('.problem'),
      base: e.answer?.scenario?.vehicle?.base ?? null,
      errors: seen.errors, warnings: seen.warnings,
    };";

/// Opens a page of the second server and waits until its first element has tried.
async fn open(window: &Window, mode: &str) {
    window
        .go(&format!("{}{mode}/watched.html", routes().url))
        .await;
    window
        .run(
            "await Promise.race([customElements.whenDefined('axle-load-transfer')\
               .then(() => document.querySelector('#first').updateComplete), new Promise((r) => setTimeout(r, 1000))]);",
        )
        .await;
}

#[tokio::test]
async fn without_the_wasm_the_fallback_stays_with_one_sentence_and_one_warning() {
    let window = Window::open().await;
    for mode in ["wasm-missing", "wasm-wrong", "wasm-other", "no-wasm-eval"] {
        open(&window, mode).await;
        // Two more elements change nothing: the page is warned once.
        window
            .run(
                "const more = ['axle-traction', 'axle-turn-in-place'].map((tag) => document.createElement(tag));\
                 document.body.append(...more); await Promise.all(more.map((e) => e.updateComplete));\
                 document.querySelector('#first').setAttribute('acceleration', '0.1 g');\
                 document.querySelector('#first').scenario = { vehicle: { base: 'kame' } };",
            )
            .await;
        let state = window.run(STATE).await;
        assert_eq!(state["fallback"], true, "{mode}: {state}");
        let notice = state["notice"].as_str().unwrap_or_default();
        assert!(notice.contains("could not start"), "{mode}: {state}");
        assert_eq!(notice.matches('.').count(), 1, "{mode}: one sentence");
        assert_eq!(state["errors"], json!([]), "{mode}");
        let warnings = state["warnings"].as_array().map_or(0, Vec::len);
        assert_eq!(warnings, 1, "{mode}: {state}");
    }
    window.close().await;
}

#[tokio::test]
async fn without_its_part_of_the_wasm_an_element_keeps_its_fallback_and_one_sentence() {
    let window = Window::open().await;
    open(&window, "part-missing").await;
    window
        .run("await document.querySelector('#first').updateComplete;")
        .await;
    let state = window.run(STATE).await;
    assert_eq!(state["fallback"], true, "{state}");
    let notice = state["notice"].as_str().unwrap_or_default();
    assert!(notice.contains("could not start"), "{state}");
    assert_eq!(notice.matches('.').count(), 1, "one sentence: {notice}");
    assert_eq!(state["errors"], json!([]), "{state}");
    let told = |state: &Value| state["warnings"].as_array().map_or(0, Vec::len);
    assert_eq!(told(&state), 1, "the page's maker is told: {state}");
    // Two more of the same topic miss the same part, and three of another topic another one.
    for (tag, count, wanted) in [("axle-load-transfer", 2, 1), ("axle-traction", 3, 2)] {
        let notices = window
            .run(&format!(
                "const more = Array.from({{ length: {count} }}, () => document.createElement('{tag}'));\
                 document.body.append(...more); await Promise.all(more.map((e) => e.updateComplete));\
                 return more.map((e) => e.shadowRoot.querySelector('[part~=notice]').textContent);"
            ))
            .await;
        let all_say = notices.as_array().is_some_and(|all| {
            all.len() == count && all.iter().all(|text| text.as_str() == Some(notice))
        });
        assert!(all_say, "{notices}");
        let state = window.run(STATE).await;
        assert_eq!(told(&state), wanted, "one for each part: {state}");
        assert_eq!(state["errors"], json!([]), "{state}");
    }
    window.close().await;
}

#[tokio::test]
async fn elements_that_miss_what_their_reader_asks_for_warn_once_together() {
    let window = Window::open().await;
    open(&window, "question-missing").await;
    let seen = window
        .run(
            "const all = ['axle-load-transfer', 'axle-traction', 'axle-turn-in-place'].map((tag) => document.createElement(tag));\
             document.body.append(...all); await Promise.all(all.map((e) => e.updateComplete));\
             const before = seen.warnings.length; all.forEach((e) => e.setAttribute('question', 'any 7'));\
             const notice = (e) => e.shadowRoot.querySelector('[part~=notice]').textContent;\
             for (let i = 0; i < 100 && !all.every(notice); i++) await new Promise((r) => setTimeout(r, 50));\
             return [before, all.every(notice), all.map((e) => !!e.answer), seen.warnings, seen.errors];",
        )
        .await;
    assert_eq!(seen[0], 0, "{seen}");
    assert_eq!(seen[1], true, "each says it: {seen}");
    assert_eq!(seen[2], json!([true, true, true]), "{seen}");
    assert_eq!(seen[3].as_array().map(Vec::len), Some(1), "{seen}");
    assert!(seen[3].to_string().contains("question"), "{seen}");
    assert_eq!(seen[4], json!([]), "{seen}");
    window.close().await;
}

#[tokio::test]
async fn where_script_is_not_allowed_the_fallback_is_all_there_is() {
    let window = Window::open().await;
    open(&window, "no-script").await;
    let seen = window
        .run(
            "const e = document.querySelector('#first');\
             return [e.shadowRoot, e.querySelector('p').checkVisibility(), typeof seen];",
        )
        .await;
    assert_eq!(seen, json!([null, true, "undefined"]));
    window.close().await;
}

#[tokio::test]
async fn nothing_is_stored_on_the_reader_s_machine() {
    let window = Window::open().await;
    open(&window, "site").await;
    let seen = window
        .run(
            "document.querySelector('#first').setAttribute('mass', '2 t');\
             return [localStorage.length, sessionStorage.length, document.cookie,\
               (await indexedDB.databases()).length, (await navigator.storage.estimate()).usage];",
        )
        .await;
    assert_eq!(seen, json!([0, 0, "", 0, 0]));
    // Where storage is refused altogether, nothing is missed.
    let seen = window
        .run(
            "const frame = document.createElement('iframe'); frame.sandbox = 'allow-scripts'; frame.src = 'refused.html';\
             const told = new Promise((done) => addEventListener('message', (event) => done(event.data), { once: true }));\
             document.body.append(frame); return told;",
        )
        .await;
    let want = json!({ "live": true, "refused": true, "errors": [], "warnings": [] });
    assert_eq!(seen, want);
    window.close().await;
}

#[tokio::test]
async fn wrong_values_keep_the_last_answer_and_unknown_attributes_are_ignored() {
    let window = Window::open().await;
    open(&window, "site").await;
    for (name, wrong) in [
        ("mass", "-5 kg"),
        ("mass", "heavy"),
        ("mass", "1e999 kg"),
        ("acceleration", "3 furlong"),
        ("vehicle", "nobody"),
        ("view", "sideways"),
        ("mass", "\u{0}\u{202e}💥 kg"),
    ] {
        let script = format!(
            "const e = document.querySelector('#first'); const before = JSON.stringify(e.answer);\
             let told; e.addEventListener('axle-problem', (event) => {{ told = event.detail; }}, {{ once: true }});\
             const old = e.getAttribute('{name}'); e.setAttribute('{name}', {});\
             await new Promise((r) => setTimeout(r, 50));\
             const state = (() => {{ {STATE} }})();\
             state.kept = JSON.stringify(e.answer) === before; state.told = told;\
             if (old === null) e.removeAttribute('{name}'); else e.setAttribute('{name}', old);\
             await new Promise((r) => setTimeout(r, 50));\
             state.after = e.shadowRoot.querySelector('.problem').textContent;\
             return state;",
            json!(wrong)
        );
        let state = window.run(&script).await;
        assert_eq!(state["kept"], true, "{name}={wrong}: {state}");
        assert_ne!(state["refusal"], "", "{name}={wrong}: {state}");
        assert!(
            state["told"]["field"].is_string() && state["told"]["allowed"].is_string(),
            "{state}"
        );
        assert_eq!(
            state["after"], "",
            "{name}={wrong}: a good value clears it: {state}"
        );
    }
    let state = window
        .run(&format!(
            "const first = document.querySelector('#first'); const before = JSON.stringify(first.answer);\
             for (const name of ['colour', 'data-x', 'onclick2', 'masss']) first.setAttribute(name, '1');\
             first.question = '?'; await new Promise((r) => setTimeout(r, 500));\
             first.units = 'cubits'; first.show = 'figure nonsense'; first.controls = 'mass nonsense'; first.theme = 'pink';\
             await new Promise((r) => setTimeout(r, 50));\
             const same = JSON.stringify(first.answer) === before; const state = (() => {{ {STATE} }})(); state.same = same; return state;"
        ))
        .await;
    assert_eq!(state["same"], true, "{state}");
    assert_eq!(state["refusal"], "", "{state}");
    assert_eq!(state["errors"], json!([]));
    assert_eq!(state["warnings"], json!([]));
    window.close().await;
}

/// Gives the first element a scenario by its attribute and says what came of it.
async fn scenario_from(window: &Window, address: &str) -> Value {
    let script = format!(
        "const first = document.querySelector('#first'); const told = [];\
         const note = (event) => told.push(event.detail);\
         first.scenario = {{ vehicle: {{ base: 'esker' }} }};\
         first.addEventListener('axle-problem', note); first.setAttribute('scenario', {});\
         for (let n = 0; n < 100 && !told.length; n += 1) await new Promise((r) => setTimeout(r, 50));\
         first.removeEventListener('axle-problem', note);\
         const state = (() => {{ {STATE} }})(); state.told = told; state.given = first.scenario?.vehicle?.base ?? null; return state;",
        json!(address)
    );
    window.run(&script).await
}

#[tokio::test]
async fn a_scenario_file_that_cannot_be_read_leaves_the_last_answer() {
    let window = Window::open().await;
    open(&window, "site").await;
    let sent_before = routes().huge_sent.load(Ordering::Relaxed);
    for address in [
        "missing.json",
        "text.json",
        "list.json",
        "huge.json",
        "away.json",
        "http://[",
        "http://127.0.0.1:9/closed.json",
        "{\"vehicle\": ",
        "{\"vehicle\": 5}",
        "wrong.json",
        "",
    ] {
        let state = scenario_from(&window, address).await;
        assert_eq!(state["base"], "esker", "{address}: {state}");
        assert_eq!(state["given"], "esker", "{address}: {state}");
        let told = state["told"].as_array().map_or(0, Vec::len);
        assert_eq!(told, 1, "{address}: {state}");
        let (notice, refusal) = (
            state["notice"].as_str().unwrap_or_default(),
            state["refusal"].as_str().unwrap_or_default(),
        );
        assert!(
            notice.is_empty() != refusal.is_empty(),
            "{address}: it is said in one place: {state}"
        );
        assert_eq!(state["fallback"], false, "{address}: {state}");
        assert_eq!(state["errors"], json!([]), "{address}");
        assert_eq!(state["warnings"], json!([]), "{address}");
    }
    let sent = routes().huge_sent.load(Ordering::Relaxed) - sent_before;
    assert!(
        sent < 25_000_000,
        "a file of 50 MB is not read to its end: {sent} bytes went out"
    );
    let state = window
        .run(&format!(
            "const first = document.querySelector('#first'); first.setAttribute('scenario', 'good.json');\
             for (let n = 0; n < 100 && first.scenario.vehicle.base !== 'corrie'; n += 1) await new Promise((r) => setTimeout(r, 20));\
             first.removeAttribute('vehicle'); {STATE}"
        ))
        .await;
    assert_eq!(state["notice"], "", "{state}");
    assert_eq!(state["refusal"], "", "{state}");
    window.close().await;
}

#[tokio::test]
async fn a_bad_file_at_the_start_does_not_hinder_the_element() {
    let window = Window::open().await;
    open(&window, "site").await;
    let seen = window
        .run(
            "const out = {};\
             for (const file of ['missing.json', 'text.json', 'wrong.json', 'away.json', 'list.json']) {\
               const e = document.createElement('axle-traction'); e.setAttribute('scenario', file); e.innerHTML = '<p>fixed</p>';\
               document.body.append(e); const live = await e.updateComplete;\
               const texts = ['[part~=notice]', '.problem'].map((s) => e.shadowRoot.querySelector(s).textContent).filter(Boolean);\
               out[file] = [live, e.answer !== null, texts.length];\
             }\
             return [out, seen.errors, seen.warnings];",
        )
        .await;
    for (file, state) in seen[0].as_object().expect("files") {
        assert_eq!(*state, json!([true, true, 1]), "{file}: {seen}");
    }
    assert_eq!(seen[1], json!([]));
    assert_eq!(seen[2], json!([]));
    window.close().await;
}

#[tokio::test]
async fn a_slow_file_never_overtakes_what_came_after_it_nor_holds_it_up() {
    let window = Window::open().await;
    open(&window, "site").await;
    let seen = window
        .run(
            "const first = document.querySelector('#first'); const out = {};\
             first.removeAttribute('vehicle');\
             first.setAttribute('scenario', 'slow.json'); first.scenario = { vehicle: { base: 'kame' } };\
             out.at_once = first.scenario.vehicle.base;\
             const fresh = document.createElement('axle-traction'); fresh.setAttribute('scenario', 'never.json');\
             document.body.append(fresh); await new Promise((r) => setTimeout(r, 200));\
             const began = performance.now(); fresh.scenario = { vehicle: { base: 'moraine' } };\
             out.fresh = [await fresh.updateComplete, fresh.scenario.vehicle.base, performance.now() - began < 5000];\
             const gone = document.createElement('axle-traction'); gone.setAttribute('scenario', 'never.json');\
             document.body.append(gone); await new Promise((r) => setTimeout(r, 100)); gone.remove();\
             const away = document.createElement('axle-traction'); away.setAttribute('scenario', 'slow.json');\
             document.body.append(away); await new Promise((r) => setTimeout(r, 100)); away.remove();\
             await new Promise((r) => setTimeout(r, 2000));\
             document.body.append(away); await away.updateComplete; out.away = away.scenario.vehicle.base;\
             out.later = first.scenario.vehicle.base; out.notice = first.shadowRoot.querySelector('[part~=notice]').textContent;\
             out.trouble = [...seen.errors, ...seen.warnings]; return out;",
        )
        .await;
    assert_eq!(seen["at_once"], "kame");
    assert_eq!(seen["fresh"], json!([true, "moraine", true]), "{seen}");
    assert_eq!(seen["later"], "kame", "the old file came late: {seen}");
    assert_eq!(seen["away"], "corrie", "it came while the element was away");
    assert_eq!(seen["notice"], "");
    assert_eq!(seen["trouble"], json!([]));
    window.close().await;
}

#[tokio::test]
async fn objects_that_are_no_data_are_refused_and_trap_nothing() {
    let window = Window::open().await;
    open(&window, "site").await;
    let seen = window
        .run(
            "const first = document.querySelector('#first'); const out = {};\
             const circle = { vehicle: { base: 'kame' } }; circle.vehicle.own = circle;\
             let deep = {}; for (let n = 0; n < 20000; n += 1) deep = { vehicle: deep };\
             const nasty = { get vehicle() { throw new Error('mine'); } };\
             const deep_text = '{\"vehicle\":'.repeat(20000) + '1' + '}'.repeat(20000);\
             const wrong = { circle, deep, nasty, deep_text, number: 7, truth: true, list: [1], big: { vehicle: { mass: 10n } },\
               call: () => 1, nan: { vehicle: { mass: NaN } }, date: new Date(0), word: Symbol.iterator };\
             for (const [name, value] of Object.entries(wrong)) {\
               let told = 0; const note = () => { told += 1; };\
               first.addEventListener('axle-problem', note);\
               let thrown = ''; try { first.scenario = value; } catch (error) { thrown = String(error); }\
               for (let n = 0; n < 60 && !told; n += 1) await new Promise((r) => setTimeout(r, 25));\
               first.removeEventListener('axle-problem', note);\
               out[name] = [told, thrown, first.answer?.scenario.vehicle.base];\
             }\
             const m = await import(new URL('axlewright.js', location)); out.solve = [];\
             for (const value of [circle, deep, nasty, 7, null, undefined]) {\
               try { m.solve('traction', value); out.solve.push('nothing'); } catch (error) { out.solve.push(error instanceof Error); }\
             }\
             out.proxy = new Proxy({ vehicle: new Proxy({ base: 'kame' }, {}) }, {}); first.removeAttribute('vehicle');\
             first.scenario = out.proxy; out.proxy = first.answer.scenario.vehicle.base;\
             const mine = { vehicle: { base: 'moraine' } }; first.scenario = mine; mine.vehicle.base = 'corrie';\
             first.remove(); await new Promise((r) => setTimeout(r, 20)); document.body.append(first); await first.updateComplete;\
             out.own_copy = first.answer.scenario.vehicle.base;\
             out.instances = seen.memories.length; out.trouble = [...seen.errors, ...seen.warnings]; return out;",
        )
        .await;
    for name in [
        "circle",
        "deep",
        "nasty",
        "deep_text",
        "number",
        "truth",
        "list",
        "big",
        "call",
        "nan",
        "date",
        "word",
    ] {
        assert_eq!(seen[name], json!([1, "", "esker"]), "{name}: {seen}");
    }
    assert_eq!(
        seen["solve"],
        json!([true, true, true, true, true, true]),
        "{seen}"
    );
    assert_eq!(seen["proxy"], "kame");
    assert_eq!(seen["own_copy"], "moraine");
    assert_eq!(seen["instances"], 1, "nothing trapped: {seen}");
    assert_eq!(seen["trouble"], json!([]));
    window.close().await;
}

#[tokio::test]
async fn offline_the_running_element_works_on_and_a_new_page_keeps_its_fallback() {
    let window = Window::open().await;
    open(&window, "site").await;
    // What its reader is likely to ask for comes in an idle moment after the start.
    window
        .run(
            "const has = (name) => performance.getEntriesByType('resource').some(e => e.name.includes(name));\
             for (let i = 0; i < 200 && !(has('parts/take') && has('parts/working')); i++) await new Promise(r => setTimeout(r, 50));\
             await new Promise(r => setTimeout(r, 500));",
        )
        .await;
    let offline = |offline: bool| json!({ "offline": offline, "latency": 0, "downloadThroughput": -1, "uploadThroughput": -1 });
    window.debug("Network.enable", json!({})).await;
    window
        .debug("Network.emulateNetworkConditions", offline(true))
        .await;
    let state = scenario_from(&window, "good.json").await;
    assert_eq!(state["base"], "esker", "{state}");
    assert_ne!(state["notice"], "", "{state}");
    let seen = window
        .run(
            "const first = document.querySelector('#first'); const before = first.answer.rear_to_front_ratio;\
             first.setAttribute('acceleration', '0.1 g'); const e = document.createElement(first.localName);\
             document.body.append(e); return [await e.updateComplete, first.answer.rear_to_front_ratio !== before,\
               (await e.table()).startsWith('path,'), seen.errors, seen.warnings];",
        )
        .await;
    assert_eq!(seen, json!([true, true, true, [], []]));
    // A topic that was never fetched cannot start; once the network is back, it can.
    let seen = window
        .run(
            "const e = document.createElement('axle-traction'); e.textContent = 'kept'; e.style.display = 'block';\
             document.body.append(e); globalThis.late = e; const shown = await e.updateComplete;\
             const root = e.shadowRoot; return [shown, root.querySelector('[part~=notice]').textContent.length > 20,\
               !root.querySelector('slot').hidden && e.offsetHeight > 0, seen.errors, seen.warnings.length];",
        )
        .await;
    assert_eq!(seen, json!([false, true, true, [], 1]));
    window
        .debug("Network.emulateNetworkConditions", offline(false))
        .await;
    let again = window
        .run("return [await late.updateComplete, late.shadowRoot.querySelector('[part~=notice]').textContent];")
        .await;
    assert_eq!(again, json!([true, ""]));
    // The script came; the network went before the wasm was asked for.
    window.go(&format!("{}site/far.html", routes().url)).await;
    window
        .debug("Network.emulateNetworkConditions", offline(true))
        .await;
    the_fallback_stays(&window).await;
    window
        .debug("Network.emulateNetworkConditions", offline(false))
        .await;
    window.close().await;
}

#[tokio::test]
async fn without_a_canvas_the_chart_s_words_and_numbers_are_still_there() {
    let window = Window::open().await;
    for refusal in [
        "return null;",
        "throw new DOMException('refused', 'SecurityError');",
    ] {
        window.go(&format!("{}site/blank.html", routes().url)).await;
        let seen = window
            .run(&format!(
                "HTMLCanvasElement.prototype.getContext = function () {{ {refusal} }};\
                 document.body.innerHTML = '<axle-load-transfer vehicle=\"esker\"></axle-load-transfer>';\
                 const m = await import(new URL('axlewright.js', location)); const e = document.body.firstChild; await e.updateComplete;\
                 await new Promise((r) => setTimeout(r, 100)); e.setAttribute('acceleration', '0.7 g');\
                 const label = () => e.shadowRoot.querySelector('canvas').getAttribute('aria-label'); const first = label();\
                 m.provokeTrap().catch(() => {{}}); await new Promise((r) => setTimeout(r, 300)); await e.updateComplete;\
                 const png = await e.figure('png').then(() => 'made', (error) => error instanceof Error);\
                 return [first.length > 40, label().length > 40, (await e.table('csv')).split('\\n').length > 5, png, seen.errors, seen.warnings.length];"
            ))
            .await;
        assert_eq!(
            seen,
            json!([true, true, true, true, [], 1]),
            "{refusal}: one warning, of the trap"
        );
    }
    window.close().await;
}

#[tokio::test]
async fn the_fallback_stays_until_there_is_an_answer() {
    let window = Window::open().await;
    open(&window, "site").await;
    let seen = window
        .run(
            "const e = document.createElement('axle-traction'); e.setAttribute('mass', '1500 kg'); e.innerHTML = '<p>fixed</p>';\
             document.body.append(e); const state = () => [e.querySelector('p').checkVisibility(), e.answer !== null,\
               e.shadowRoot.querySelector('.problem').textContent !== '', e.shadowRoot.querySelectorAll('.figure svg').length];\
             const out = [await e.updateComplete, state()]; await new Promise((r) => setTimeout(r, 50));\
             e.vehicle = 'esker'; await new Promise((r) => setTimeout(r, 50)); out.push(state());\
             e.mass = 'none'; await new Promise((r) => setTimeout(r, 50)); out.push(state()); return out;",
        )
        .await;
    assert_eq!(
        seen,
        json!([
            true,
            [true, false, true, 0],
            [false, true, false, 1],
            [false, true, true, 1]
        ]),
        "an own vehicle without its wheelbase has no answer"
    );
    assert_eq!(window.errors().await, json!([]));
    window.close().await;
}
