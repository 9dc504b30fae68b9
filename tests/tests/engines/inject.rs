//! Text from attributes, links and files never reaches the page as markup.

use crate::in_each_engine;
use axlewright_core::topic::TOPICS;
use axlewright_tests::engine::Browser;
use axlewright_tests::session::{Window, site};
use serde_json::{Value, json};

/// What is tried in every place that takes a text. Each would set `harm`, or leave a tag behind.
const STRINGS: [&str; 16] = [
    "<img src=x onerror=globalThis.harm=1>",
    "<script>globalThis.harm=1</script>",
    "\"><script>globalThis.harm=1</script>",
    "'><img src=x onerror='globalThis.harm=1'>",
    "<svg onload=globalThis.harm=1>",
    "</svg><img src=x onerror=globalThis.harm=1>",
    "</title><script>globalThis.harm=1</script>",
    "</style><script>globalThis.harm=1</script>",
    "<iframe srcdoc=\"<script>top.harm=1</script>\">",
    "<a href=\"javascript:globalThis.harm=1\">x</a>",
    "\" onclick=\"globalThis.harm=1\" autofocus onfocus=\"globalThis.harm=1",
    "javascript:globalThis.harm=1",
    "<math><mtext><style><img src=x onerror=globalThis.harm=1></style></mtext></math>",
    "]]><img src=x onerror=globalThis.harm=1><![CDATA[",
    "&lt;img src=x onerror=globalThis.harm=1&gt;",
    "${globalThis.harm=1}{{constructor.constructor('globalThis.harm=1')()}}",
];

/// Counts what could only come from one of the strings, through every shadow root of the page.
const LOOK: &str = "const foreign = (root) => [...root.querySelectorAll('*')].flatMap((node) => {\
        const bad = ['IMG', 'IFRAME', 'SCRIPT', 'OBJECT', 'EMBED'].includes(node.localName.toUpperCase()) && !node.hasAttribute('data-own')\
          || [...node.attributes].some((a) => /^on/i.test(a.name) || /^\\s*javascript:/i.test(a.name.endsWith('href') || a.name === 'src' ? a.value : ''));\
        return [...(bad ? [node.outerHTML.slice(0, 200)] : []), ...(node.shadowRoot ? foreign(node.shadowRoot) : [])]; });\
    const inside = (element) => foreign(element.shadowRoot);";

/// Every attribute of every topic, by attribute and typed into every field.
async fn attributes_and_fields(browser: Browser) {
    let window = Window::open_in(browser, 1280, &[]).await;
    for topic in TOPICS {
        window.visit("blank.html").await;
        window.bring_elements().await;
        let told = window
            .run(&format!(
                "{LOOK} const strings = {strings};\
                 const tag = '{tag}'; const e = document.createElement(tag); e.setAttribute('vehicle', 'esker'); e.setAttribute('show', 'figure chart readouts working data');\
                 document.body.append(e); if (!await e.updateComplete) throw new Error('not started');\
                 const names = customElements.get(tag).observedAttributes; const found = []; let tried = 0;\
                 const texts = ['vehicle', 'scenario', 'surface', 'layout', 'layouts', 'question', 'lang', 'trace', 'cycle', 'show', 'controls', 'theme', 'units', 'view'];\
                 for (const [at, name] of names.entries()) {{ const before = e.getAttribute(name);\
                   const own = texts.includes(name) ? strings : [0, 1, 2].map((n) => strings[(3 * at + n) % strings.length]);\
                   for (const text of own) {{ e.setAttribute(name, text); tried += 1; await null; found.push(...inside(e)); }}\
                   if (before === null) e.removeAttribute(name); else e.setAttribute(name, before); await null; }}\
                 await new Promise((r) => setTimeout(r, 300)); e.scenario = {{ vehicle: {{ base: 'esker' }} }}; await e.updateComplete;\
                 let typed = 0;\
                 for (const [at, field] of [...e.shadowRoot.querySelectorAll('input:not([type=range], [type=checkbox], [type=radio], [type=file]), textarea')].entries())\
                   for (const n of [0, 1]) {{ field.value = strings[(2 * at + n) % strings.length]; typed += 1;\
                     for (const type of ['input', 'change']) field.dispatchEvent(new Event(type, {{ bubbles: true }})); await null; found.push(...inside(e)); }}\
                 await new Promise((r) => setTimeout(r, 300)); found.push(...inside(e));\
                 return {{ found, harm: globalThis.harm ?? null, tried, typed, errors: seen.errors, instances: seen.memories.length, alive: e.answer !== null }};",
                strings = json!(STRINGS),
                tag = topic.tag()
            ))
            .await;
        let name = topic.name;
        assert_eq!(told["found"], json!([]), "{name}");
        assert_eq!(told["harm"], Value::Null, "{name}");
        assert_eq!(told["errors"], json!([]), "{name}");
        assert_eq!(told["instances"], 1, "{name}: nothing trapped");
        assert_eq!(told["alive"], true, "{name}");
        assert!(told["tried"].as_u64() > Some(100), "{name}: {told}");
        assert!(told["typed"].as_u64() > Some(1), "{name}: {told}");
    }
    window.close().await;
}

/// A string as a part of an address.
fn encoded(text: &str) -> String {
    text.bytes().map(|byte| format!("%{byte:02X}")).collect()
}

/// The query of a page's address and of a frame's.
async fn links(browser: Browser) {
    let window = Window::open_in(browser, 1280, &[]).await;
    for (at, text) in STRINGS.iter().enumerate() {
        let text = encoded(text);
        let names = [
            "vehicle",
            "mass",
            "surface",
            "layout",
            "lang",
            "show",
            "question",
            "title",
            "onclick",
            "innerHTML",
            "scenario",
        ];
        // All at once; and one by one, so that a refused one does not hide the rest.
        let all: Vec<String> = names.iter().map(|name| format!("{name}={text}")).collect();
        let one = format!("vehicle=esker&{}={text}&{text}={text}", names[1 + at % 10]);
        for page in ["traction.html", "embed/traction.html"] {
            for query in [&all.join("&"), &one] {
                // From an empty page: Firefox's driver takes an address with "#" for a place on the page
                // that is open, and does not wait for it.
                window.go("about:blank").await;
                window.visit(&format!("{page}?{query}#{text}")).await;
                let told = window
                    .run(&format!(
                        "{LOOK} await customElements.whenDefined('axle-traction'); const e = document.querySelector('axle-traction');\
                         await Promise.race([e.updateComplete, new Promise((r) => setTimeout(r, 3000))]);\
                         return [inside(e), globalThis.harm ?? null, document.querySelectorAll('[onclick], [onerror], [onload], [onfocus]').length, e.onclick,\
                           location.search === '?{query}'];"
                    ))
                    .await;
                assert_eq!(told, json!([[], null, 0, null, true]), "{page}?{query}");
            }
        }
    }
    window.close().await;
}

/// Scenarios as a file, as inline JSON and as an object; a cycle as a file; figures made of them.
async fn files(browser: Browser) {
    let window = Window::open_in(browser, 1280, &[]).await;
    let folder = &site().folder;
    for (at, text) in STRINGS.iter().enumerate() {
        let text = *text;
        let scenario = json!({ "vehicle": { "base": text, "name": text, "mass": text }, text: text, "layouts": [text] });
        std::fs::write(folder.join(format!("wild-{at}.json")), scenario.to_string())
            .expect("a file");
        let cycle = format!("time,speed\n0,0\n1,{text}\n{text},5\n");
        std::fs::write(folder.join(format!("wild-{at}.csv")), cycle).expect("a file");
    }
    window.visit("blank.html").await;
    window.bring_elements().await;
    let told = window
        .run(&format!(
            "{LOOK} const strings = {}; const found = []; let told = 0;\
             addEventListener('axle-problem', () => {{ told += 1; }});\
             const wait = (ms) => new Promise((r) => setTimeout(r, ms));\
             const make = async (tag) => {{ const e = document.createElement(tag); e.setAttribute('vehicle', 'esker'); document.body.append(e); await e.updateComplete; return e; }};\
             const all = [await make('axle-traction'), await make('axle-idle-drag')];\
             for (const [at, text] of strings.entries()) for (const e of all) {{\
               const wild = [{{ vehicle: {{ base: text }} }}, {{ vehicle: {{ base: 'esker', name: text }} }}, {{ vehicle: {{ base: 'esker', [text]: text }} }}, {{ [text]: {{ a: text }} }},\
                 {{ vehicle: {{ base: 'esker' }}, layouts: [text] }}, {{ vehicle: {{ base: 'esker' }}, surface: {{ kind: text }} }}, {{ idle_drag: {{ trace: text }} }}];\
               for (const object of wild) {{ e.scenario = object; await null; found.push(...inside(e)); e.setAttribute('scenario', JSON.stringify(object)); await null; found.push(...inside(e)); }}\
               e.setAttribute('scenario', text); await wait(10); found.push(...inside(e));\
               e.setAttribute('scenario', `wild-${{at}}.json`); await wait(120); found.push(...inside(e));\
               e.removeAttribute('scenario');\
               if (e === all[1]) for (const cycle of [`wild-${{at}}.csv`, `time,speed\\n0,0\\n1,${{text}}\\n`]) {{ e.setAttribute('cycle', 'own'); e.setAttribute('trace', cycle); await wait(60); found.push(...inside(e)); e.removeAttribute('trace'); e.removeAttribute('cycle'); }}\
               e.scenario = {{ vehicle: {{ base: 'esker' }} }}; const svg = await e.figure('svg');\
               const page = new DOMParser().parseFromString(svg, 'image/svg+xml'); if (page.querySelector('parsererror')) found.push(svg.slice(0, 300)); found.push(...foreign(page));\
             }}\
             return {{ found, told, harm: globalThis.harm ?? null, errors: seen.errors, instances: seen.memories.length, alive: all.map((e) => e.answer !== null) }};",
            json!(STRINGS)
        ))
        .await;
    assert_eq!(told["found"], json!([]));
    assert_eq!(told["harm"], Value::Null);
    assert_eq!(told["errors"], json!([]));
    assert_eq!(told["instances"], 1, "nothing trapped");
    assert_eq!(told["alive"], json!([true, true]));
    assert!(told["told"].as_u64() > Some(100), "refused by name: {told}");
    window.close().await;
}

/// A talk whose every sentence, note, question and title is one of the strings.
async fn talks(browser: Browser) {
    let window = Window::open_in(browser, 1280, &[]).await;
    for (at, text) in STRINGS.iter().enumerate() {
        // In a sentence a brace opens a value.
        let said = text.replace(['{', '}', '$'], "");
        let quoted = json!(said).to_string();
        let talk = format!(
            "title = {quoted}\nlang = \"en\"\nvehicle = \"esker\"\n\
             [[steps]]\ntopic = \"load_transfer\"\nset = {{ load_transfer.acceleration = \"0.2 g\" }}\nview = \"side\"\nsay = {quoted}\nnote = {quoted}\n\
             [[steps]]\nsay = {quoted}\nnote = {quoted}\n[steps.question]\ntext = {quoted}\nvalue = \"rear_to_front_ratio:3\"\n"
        );
        std::fs::write(site().folder.join(format!("wild-{at}.toml")), talk).expect("a file");
    }
    window.visit("talking.html").await;
    let told = window
        .run(&format!(
            "{LOOK} await customElements.whenDefined('axle-talk'); const strings = {}; const found = []; const said = [];\
             for (const at of strings.keys()) {{ document.body.replaceChildren(); const talk = document.createElement('axle-talk');\
               talk.setAttribute('src', `wild-${{at}}.toml`); document.body.append(talk);\
               for (let n = 0; n < 200 && !talk.said; n += 1) await new Promise((r) => setTimeout(r, 20));\
               said.push(talk.said); found.push(...inside(talk));\
               for (const step of [1, 0]) {{ await new Promise((done) => {{ talk.addEventListener('axle-step', done, {{ once: true }}); talk.goTo(step); setTimeout(done, 1500); }}); found.push(...inside(talk)); }}\
               const paper = await talk.handout(); const part = paper.documentElement ?? paper; if (part.querySelectorAll) found.push(...foreign(part).map((x) => `paper ${{x}}`));\
               const file = new DOMParser().parseFromString(await talk.figure(), 'image/svg+xml'); if (file.querySelector('parsererror')) found.push('no XML'); found.push(...foreign(file)); }}\
             return {{ found, said, harm: globalThis.harm ?? null, errors: seen.errors }};",
            json!(STRINGS)
        ))
        .await;
    assert_eq!(told["found"], json!([]));
    assert_eq!(told["harm"], Value::Null);
    assert_eq!(told["errors"], json!([]));
    let want = STRINGS.map(|text| text.replace(['{', '}', '$'], ""));
    assert_eq!(told["said"], json!(want), "said as it is written");
    window.close().await;
}

in_each_engine! { attributes_and_fields links files talks }
