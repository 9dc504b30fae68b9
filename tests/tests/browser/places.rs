//! Where pages put elements: other people's shadow roots, closed panels, slides, forms, frames, and
//! pages whose styles are meant for something else.

use crate::sliders::retype;
use axlewright_tests::session::Window;
use serde_json::json;

/// Functions that the scripts below share: a pause, a new element, and whether an element is drawn as
/// wide as it stands on the page.
const HELP: &str = "
    const pause = (time) => new Promise((done) => setTimeout(done, time));
    const made = (tag = 'axle-load-transfer') => {
      const element = document.createElement(tag);
      element.setAttribute('vehicle', 'esker');
      return element;
    };
    const started = (element) => element.shadowRoot.querySelector('.figure svg') !== null;
    const fits = (element) => {
      const svg = element.shadowRoot.querySelector('.figure svg');
      const width = element.shadowRoot.querySelector('[part~=base]').clientWidth;
      const drawn = svg.viewBox.baseVal.width;
      const wanted = Math.min(Math.max(width, 340), 1000);
      return width > 0 && Math.abs(drawn - wanted) < 2 && Math.abs(svg.clientWidth - width) < 2;
    };
    const until = async (condition) => {
      for (let tries = 0; tries < 100 && !condition(); tries += 1) await pause(30);
      return condition();
    };
";

async fn run(window: &Window, script: &str) -> serde_json::Value {
    window.run(&format!("{HELP}{script}")).await
}

/// A window with a page that notes trouble and has one running element.
async fn watched() -> Window {
    let window = Window::open().await;
    window.visit("watched.html").await;
    window.ready("axle-load-transfer").await;
    window
}

/// Ends a journey: the page must have seen no error and the console no complaint.
async fn quiet(window: Window) {
    assert_eq!(window.errors().await, json!([]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn an_element_may_be_made_in_every_way_that_html_has() {
    let window = watched().await;
    let seen = run(
        &window,
        "const out = {};\
         const holder = document.createElement('div'); document.body.append(holder);\
         const one = made(); holder.append(one);\
         const two = document.createElement('div');\
         two.innerHTML = '<axle-load-transfer vehicle=\"esker\"><p>fixed</p></axle-load-transfer>';\
         holder.append(two);\
         const template = document.createElement('template'); template.innerHTML = two.innerHTML;\
         holder.append(document.importNode(template.content, true));\
         holder.append(template.content.cloneNode(true));\
         const fragment = new DocumentFragment(); fragment.append(made(), made()); holder.append(fragment);\
         const parsed = new DOMParser().parseFromString(two.innerHTML, 'text/html');\
         holder.append(parsed.querySelector('axle-load-transfer'));\
         const all = [...holder.querySelectorAll('axle-load-transfer')];\
         out.live = await Promise.all(all.map(e => e.updateComplete));\
         out.loads = [...new Set(all.map(e => e.answer.static_front_axle_load))].length;\
         const never = made(); out.never = [await never.updateComplete, never.answer, never.scenario];\
         return out;",
    )
    .await;
    assert_eq!(
        seen["live"],
        json!([true, true, true, true, true, true, true])
    );
    assert_eq!(seen["loads"], 1);
    assert_eq!(
        seen["never"],
        json!([false, null, null]),
        "outside a document nothing starts"
    );
    quiet(window).await;
}

#[tokio::test]
async fn elements_that_are_there_before_the_script_start_when_it_comes() {
    let window = Window::open().await;
    window.visit("blank.html").await;
    let seen = run(
        &window,
        "document.body.innerHTML = '<axle-load-transfer acceleration=\"0.5 g\"><p>fixed</p></axle-load-transfer>';\
         const early = document.querySelector('axle-load-transfer');\
         const second = made('axle-traction'); second.scenario = { vehicle: { base: 'corrie' } };\
         document.body.append(second); second.surface = 'snow';\
         const away = made('axle-traction'); away.vehicle = 'kame';\
         const before = document.querySelector('p').checkVisibility();\
         await import(new URL('axlewright.js', location));\
         await Promise.all([early.updateComplete, second.updateComplete]);\
         document.body.append(away); await away.updateComplete;\
         return [before, early.answer.scenario.load_transfer.acceleration, second.answer.scenario.vehicle.base,\
           second.getAttribute('surface'), second.answer.scenario.surface.kind, away.answer.scenario.vehicle.base];",
    )
    .await;
    assert_eq!(
        seen,
        json!([true, "0.5 g", "esker", "snow", "snow", "kame"]),
        "an attribute wins over the scenario"
    );
    quiet(window).await;
}

#[tokio::test]
async fn the_module_and_the_classic_script_share_one_instance() {
    let window = Window::open().await;
    window.visit("twice.html").await;
    window.ready("axle-load-transfer").await;
    window.ready("axle-traction").await;
    let seen = window
        .run(
            "const module = await import('./axlewright.js');\
             const scenario = { vehicle: { base: 'kame' } };\
             const [one, two] = [module, axlewright].map((m) => m.solve('traction', scenario));\
             return [seen.memories.length, JSON.stringify(one) === JSON.stringify(two), Object.keys(one.limits).length > 0];",
        )
        .await;
    assert_eq!(seen, json!([1, true, true]));
    quiet(window).await;
}

#[tokio::test]
async fn elements_of_another_version_stay_and_each_script_that_comes_later_warns_once() {
    let window = Window::open().await;
    window.visit("none.html").await;
    let seen = window
        .run(
            "const told = []; const warn = console.warn; console.warn = (...words) => told.push(words.join(' '));\
             class Early extends HTMLElement { static version = '0.0.1'; }\
             customElements.define('axle-traction', Early);\
             const [one, two] = ['axle-traction', 'axle-load-transfer'].map((tag) => document.createElement(tag));\
             document.body.append(one, two);\
             const module = await import('./axlewright.js'); const live = await two.updateComplete;\
             const again = document.createElement('script'); again.src = 'axlewright.classic.js';\
             const loaded = new Promise((done) => { again.onload = done; }); document.head.append(again); await loaded;\
             console.warn = warn;\
             return [told, one instanceof Early && one.shadowRoot === null, live, module.version];",
        )
        .await;
    let told = seen[0].as_array().expect("a list");
    // One for each script: that of the module, and the classic one, which comes later.
    assert_eq!(told.len(), 2, "{seen}");
    for text in told {
        let text = text.as_str().expect("a text");
        let version = seen[3].as_str().expect("a version");
        assert!(
            text.contains("version 0.0.1 came first") && text.contains(version),
            "{text}"
        );
    }
    assert_eq!(seen[1], true, "the first ones stay: {seen}");
    assert_eq!(seen[2], true, "and what is not theirs works: {seen}");
    window.close().await;
}

#[tokio::test]
async fn a_reader_s_values_survive_moves_and_a_clone_shows_the_attributes() {
    let window = watched().await;
    let field = window.inside("#first", "#mass-number").await;
    retype(&field, "2100 kg").await;
    let seen = run(
        &window,
        "const e = document.querySelector('#first'); const out = {};\
         const mass = (element) => element.answer.scenario.vehicle.mass;\
         out.typed = mass(e);\
         const places = ['div', 'section', 'article'].map((tag) => document.body.appendChild(document.createElement(tag)));\
         const svg = e.shadowRoot.querySelector('.figure svg').outerHTML;\
         for (let n = 0; n < 60; n += 1) places[n % 3].append(e);\
         out.moved = [mass(e), e.shadowRoot.querySelector('.figure svg').outerHTML === svg];\
         places[0].replaceChildren(e); places[0].insertBefore(document.createElement('p'), e);\
         const clone = places[0].cloneNode(true).querySelector('axle-load-transfer');\
         clone.id = 'clone'; document.body.append(clone); await clone.updateComplete;\
         out.clone = [mass(clone), clone.shadowRoot !== e.shadowRoot, mass(e)];\
         e.remove(); await pause(50); out.away = [e.answer, e.scenario.vehicle.mass];\
         e.acceleration = '0.2 g';\
         document.body.append(e); await e.updateComplete;\
         out.back = [mass(e), e.answer.scenario.load_transfer.acceleration];\
         e.remove(); document.body.append(e); e.remove(); await pause(50); document.body.append(e); await e.updateComplete;\
         out.again = mass(e);\
         return out;",
    )
    .await;
    assert_eq!(seen["typed"], "2100 kg");
    assert_eq!(seen["moved"], json!(["2100 kg", true]), "a move keeps all");
    assert_ne!(seen["clone"][0], "2100 kg", "as with every HTML element");
    assert_eq!(seen["clone"][1], true);
    assert_eq!(seen["clone"][2], "2100 kg");
    assert_eq!(seen["away"], json!([null, "2100 kg"]));
    assert_eq!(seen["back"], json!(["2100 kg", "0.2 g"]));
    assert_eq!(seen["again"], "2100 kg");
    quiet(window).await;
}

#[tokio::test]
async fn attributes_may_change_many_times_in_one_go() {
    let window = watched().await;
    let seen = run(
        &window,
        "const e = document.querySelector('#first'); const answers = [];\
         e.addEventListener('axle-answer', (event) => answers.push(event.detail.rear_to_front_ratio));\
         const started_at = performance.now();\
         for (let n = 0; n < 200; n += 1) {\
           e.setAttribute('acceleration', (n % 7) / 10 + ' g');\
           if (n % 3 === 0) e.removeAttribute('vehicle'); else e.setAttribute('vehicle', n % 2 ? 'kame' : 'moraine');\
           if (n % 5 === 0) e.toggleAttribute('units'); if (n % 11 === 0) e.setAttribute('theme', n % 2 ? 'dark' : 'light');\
         }\
         const time = performance.now() - started_at;\
         e.setAttribute('vehicle', 'corrie'); e.setAttribute('acceleration', '0.4 g');\
         const fresh = made(); fresh.vehicle = 'corrie'; fresh.acceleration = '0.4 g'; document.body.append(fresh);\
         await fresh.updateComplete; await pause(50);\
         console.info(`200 rounds of attributes: ${time} ms`);\
         return [e.answer.rear_to_front_ratio === fresh.answer.rear_to_front_ratio, answers.at(-1) === e.answer.rear_to_front_ratio, time];",
    )
    .await;
    println!("200 rounds of two or three attributes: {} ms", seen[2]);
    assert_eq!(seen[0], true);
    assert_eq!(seen[1], true);
    quiet(window).await;
}

#[tokio::test]
async fn an_element_may_go_to_another_document_and_come_back() {
    let window = watched().await;
    let seen = run(
        &window,
        "const e = document.querySelector('#first'); const out = {};\
         const frame = document.body.appendChild(document.createElement('iframe')); frame.width = 500; frame.height = 900;\
         const inner = frame.contentDocument;\
         e.setAttribute('mass', '1999 kg');\
         inner.body.append(e); await pause(300);\
         out.inside = [e.answer.scenario.vehicle.mass, await until(() => fits(e)),\
           e.shadowRoot.adoptedStyleSheets.length, inner.defaultView.getComputedStyle(e).display];\
         const born = inner.createElement('axle-load-transfer'); inner.body.append(born);\
         out.unknown_there = born.shadowRoot;\
         const second = made(); inner.body.append(second); await second.updateComplete; out.second = started(second);\
         document.body.prepend(e); await e.updateComplete; out.back = [e.answer.scenario.vehicle.mass, await until(() => fits(e))];\
         e.setAttribute('mass', '1888 kg'); out.works = e.answer.scenario.vehicle.mass;\
         frame.remove(); await pause(50);\
         const inert = document.implementation.createHTMLDocument();\
         inert.body.append(e); await pause(50); document.body.prepend(e);\
         out.after_inert = [await e.updateComplete, e.answer?.scenario.vehicle.mass];\
         inert.body.append(made()); await pause(50);\
         return out;",
    )
    .await;
    assert_eq!(
        seen["inside"],
        json!(["1999 kg", true, 1, "block"]),
        "{seen}"
    );
    assert_eq!(seen["unknown_there"], json!(null));
    assert_eq!(seen["second"], true);
    assert_eq!(seen["back"], json!(["1999 kg", true]));
    assert_eq!(seen["works"], "1888 kg");
    assert_eq!(seen["after_inert"], json!([true, "1888 kg"]));
    quiet(window).await;
}

#[tokio::test]
async fn hidden_places_start_an_element_when_they_open_and_at_their_width() {
    let window = watched().await;
    let seen = run(
        &window,
        "const out = {};\
         const place = (tag, style) => {\
           const box = document.createElement(tag); Object.assign(box.style, style);\
           const e = made(); box.append(e); document.body.prepend(box); return [box, e];\
         };\
         const [details, one] = place('details', {});\
         const [panel, two] = place('div', { display: 'none', width: '640px' });\
         const [tab, three] = place('section', { width: '500px' }); tab.hidden = true;\
         const [unseen, four] = place('div', { contentVisibility: 'hidden', width: '450px' });\
         const [row, five] = place('div', { display: 'flex', width: '0px', overflow: 'hidden' }); five.style.flex = '1';\
         const host = document.createElement('div'); const root = host.attachShadow({ mode: 'closed' });\
         const six = made(); root.append(six); document.body.prepend(host);\
         const [own, seven] = place('div', { width: '700px' }); seven.hidden = true;\
         await pause(500);\
         out.closed = [one, two, three, four, seven].map(started);\
         details.open = true; panel.style.display = ''; tab.hidden = false; unseen.style.contentVisibility = '';\
         row.style.width = '600px'; seven.hidden = false;\
         const all = [one, two, three, four, five, six, seven];\
         out.opened = []; for (const e of all) { e.scrollIntoView(); out.opened.push(await until(() => started(e) && fits(e))); }\
         details.open = false; tab.hidden = true; row.style.width = '0px'; await pause(100);\
         tab.style.width = '380px'; row.style.width = '390px'; details.open = true; tab.hidden = false;\
         out.again = []; for (const e of all) out.again.push(await until(() => fits(e)));\
         seven.hidden = true; out.hidden = seven.checkVisibility();\
         return out;",
    )
    .await;
    assert_eq!(
        seen["closed"],
        json!([false, false, false, false, false]),
        "{seen}"
    );
    assert_eq!(
        seen["opened"],
        json!([true, true, true, true, true, true, true]),
        "{seen}"
    );
    assert_eq!(
        seen["again"],
        json!([true, true, true, true, true, true, true]),
        "{seen}"
    );
    assert_eq!(seen["hidden"], false);
    quiet(window).await;
}

#[tokio::test]
async fn boxes_that_fit_their_content_are_filled_and_not_burst() {
    let window = watched().await;
    let seen = run(
        &window,
        "const out = {};\
         for (const [name, style] of Object.entries({\
           flex: { display: 'flex' }, centred: { display: 'flex', alignItems: 'center', flexDirection: 'column' },\
           grid: { display: 'grid', gridTemplateColumns: 'auto auto' }, float: {}, inline: {}, table: { display: 'table' },\
           narrow: { display: 'flex', width: '340px' },\
         })) {\
           const box = document.createElement('div'); Object.assign(box.style, style);\
           const e = made(); if (name === 'float') e.style.float = 'left'; if (name === 'inline') e.style.display = 'inline-block';\
           box.append(e); document.body.prepend(box); await e.updateComplete; await until(() => fits(e));\
           out[name] = [e.clientWidth >= Math.min(320, box.clientWidth), e.clientWidth <= document.body.clientWidth && e.clientWidth <= box.clientWidth, fits(e)];\
           box.remove();\
         }\
         return out;",
    )
    .await;
    for (name, widths) in seen.as_object().expect("boxes") {
        assert_eq!(
            *widths,
            json!([true, true, true]),
            "{name}: wide enough, not too wide, drawn so; {seen}"
        );
    }
    quiet(window).await;
}

#[tokio::test]
async fn in_a_deck_each_slide_starts_when_shown_and_is_drawn_at_its_own_width() {
    let window = watched().await;
    let seen = run(
        &window,
        "const deck = document.createElement('div');\
         Object.assign(deck.style, { position: 'relative', width: '960px', height: '700px', overflow: 'hidden',\
           transform: 'scale(0.6)', transformOrigin: '0 0' });\
         const slides = [0, 1, 2].map((at) => {\
           const slide = document.createElement('section');\
           Object.assign(slide.style, { position: 'absolute', inset: '0', visibility: at ? 'hidden' : 'visible', display: at ? 'none' : 'block', opacity: at ? '0' : '1' });\
           slide.append(made()); deck.append(slide); return slide;\
         });\
         document.body.prepend(deck);\
         const elements = slides.map((slide) => slide.firstChild);\
         const out = [];\
         out.push(await until(() => started(elements[0]) && fits(elements[0])), elements[0].clientWidth, started(elements[1]));\
         Object.assign(slides[0].style, { display: 'none' });\
         Object.assign(slides[1].style, { display: 'block', visibility: 'visible', opacity: '1' });\
         out.push(await until(() => started(elements[1]) && fits(elements[1])));\
         deck.style.transform = 'scale(1.5)'; await pause(100);\
         out.push(fits(elements[1]), Math.round(elements[1].getBoundingClientRect().width));\
         return out;",
    )
    .await;
    assert_eq!(seen, json!([true, 960, false, true, true, 1440]));
    // A slider under a scaled deck goes where the pointer is.
    let dragged = run(
        &window,
        "const e = document.querySelectorAll('section')[1].firstChild;\
         const slider = e.shadowRoot.querySelector('#acceleration-slider'); slider.scrollIntoView({ block: 'center' });\
         const box = slider.getBoundingClientRect();\
         return [Math.round(box.left + box.width / 2), Math.round(box.top + box.height / 2), Number(slider.min), Number(slider.max)];",
    )
    .await;
    for kind in ["mousePressed", "mouseReleased"] {
        let click = json!({ "type": kind, "x": dragged[0], "y": dragged[1], "button": "left", "clickCount": 1 });
        window.debug("Input.dispatchMouseEvent", click).await;
    }
    let value = run(
        &window,
        "return Number(document.querySelectorAll('section')[1].firstChild.shadowRoot.querySelector('#acceleration-slider').value);",
    )
    .await;
    let (low, high) = (
        dragged[2].as_f64().expect("a number"),
        dragged[3].as_f64().expect("a number"),
    );
    let place = (value.as_f64().expect("a number") - low) / (high - low);
    assert!(
        (place - 0.5).abs() < 0.02,
        "the middle of the slider: {place}"
    );
    quiet(window).await;
}

#[tokio::test]
async fn an_element_in_a_form_is_no_part_of_it() {
    let window = watched().await;
    run(
        &window,
        "const form = document.createElement('form'); form.innerHTML = '<input name=\"own\" value=\"1\"><button>Send</button>';\
         form.prepend(document.querySelector('#first')); document.body.append(form);\
         globalThis.sent = 0; form.addEventListener('submit', (event) => { event.preventDefault(); sent += 1; });",
    )
    .await;
    let field = window.inside("#first", "#mass-number").await;
    retype(&field, "2 t").await;
    let reset = window.inside("#first", ".steps button:last-child").await;
    let mass = run(
        &window,
        "return document.querySelector('#first').answer.scenario.vehicle.mass;",
    )
    .await;
    reset.click().await.expect("a click");
    let seen = run(
        &window,
        "const form = document.querySelector('form'); form.reset();\
         return [sent, [...new FormData(form).keys()], form.elements.length, form.checkValidity()];",
    )
    .await;
    assert_eq!(mass, "2 t", "Enter commits the value");
    assert_eq!(seen, json!([0, ["own"], 2, true]));
    quiet(window).await;
}

#[tokio::test]
async fn inside_editable_text_the_controls_work_and_nothing_else_can_be_typed_over() {
    let window = watched().await;
    run(
        &window,
        "const text = document.createElement('div'); text.contentEditable = 'true'; text.textContent = 'before ';\
         document.body.prepend(text); text.append(document.querySelector('#first'));",
    )
    .await;
    let field = window.inside("#first", "#mass-number").await;
    retype(&field, "2 t").await;
    let heading = window.inside("#first", "[part~=caution] span").await;
    heading.click().await.expect("a click");
    let active = self::type_blindly(&window).await;
    let seen = run(
        &window,
        "const e = document.querySelector('#first');\
         return [e.answer.scenario.vehicle.mass, e.shadowRoot.textContent.includes('zzz')];",
    )
    .await;
    assert_eq!(seen, json!(["2 t", false]), "{active}");
    quiet(window).await;
}

/// Types three letters at whatever has the focus.
async fn type_blindly(window: &Window) -> serde_json::Value {
    for _ in 0..3 {
        let key = json!({ "type": "char", "text": "z" });
        window.debug("Input.dispatchKeyEvent", key).await;
    }
    window.run("return document.activeElement.localName;").await
}

#[tokio::test]
async fn a_page_with_hostile_styles_cannot_reach_inside() {
    let window = Window::open().await;
    window.visit("hostile.html").await;
    window.ready("axle-load-transfer").await;
    let seen = run(
        &window,
        "const e = document.querySelector('axle-load-transfer'); await until(() => fits(e));\
         const root = e.shadowRoot; const style = (selector) => getComputedStyle(root.querySelector(selector));\
         const out = {};\
         out.shown = ['svg', 'canvas', 'input', 'button', 'details'].map((s) => root.querySelector(s).checkVisibility({ visibilityProperty: true }));\
         out.fits = fits(e); out.caution = root.querySelector('.caution').checkVisibility({ visibilityProperty: true });\
         out.position = style('.caution').position;\
         const text = style('.caution');\
         out.text = [text.whiteSpace, text.textTransform, text.textIndent, text.textAlign];\
         out.line = parseFloat(text.lineHeight) >= parseFloat(text.fontSize);\
         out.colour = text.color;\
         out.wide = root.querySelector('.axle').scrollWidth <= root.querySelector('.axle').clientWidth;\
         return out;",
    )
    .await;
    assert_eq!(
        seen["shown"],
        json!([true, true, true, true, true]),
        "{seen}"
    );
    assert_eq!(seen["fits"], true);
    assert_eq!(seen["caution"], true);
    assert_eq!(seen["position"], "static");
    assert_eq!(
        seen["text"],
        json!(["normal", "none", "0px", "start"]),
        "{seen}"
    );
    assert_eq!(seen["line"], true, "{seen}");
    assert_eq!(
        seen["colour"], "rgb(29, 36, 51)",
        "ink on paper, whatever the page's text is"
    );
    assert_eq!(seen["wide"], true, "{seen}");
    quiet(window).await;
}

#[tokio::test]
async fn language_direction_zoom_and_print_change_what_they_should() {
    let window = watched().await;
    let seen = run(
        &window,
        "const e = document.querySelector('#first'); const root = e.shadowRoot; const out = {};\
         const answer = JSON.stringify(e.answer);\
         document.documentElement.dir = 'rtl'; document.documentElement.lang = 'ar'; e.lang = 'zz-ZZ'; await pause(100);\
         out.rtl = [getComputedStyle(root.querySelector('.controls')).direction, getComputedStyle(root.querySelector('canvas')).direction, fits(e)];\
         out.right = root.querySelector('.axle').scrollWidth <= root.querySelector('.axle').clientWidth;\
         e.removeAttribute('lang'); document.documentElement.dir = 'ltr'; document.documentElement.lang = 'en'; await pause(50);\
         document.documentElement.style.zoom = '2'; out.zoom = await until(() => fits(e));\
         out.zoomed = root.querySelector('.axle').scrollWidth <= root.querySelector('.axle').clientWidth;\
         document.documentElement.style.zoom = ''; await until(() => fits(e));\
         out.same = JSON.stringify(e.answer) === answer;\
         return out;",
    )
    .await;
    assert_eq!(seen["rtl"], json!(["rtl", "ltr", true]), "{seen}");
    assert_eq!(seen["right"], true);
    assert_eq!(seen["zoom"], true);
    assert_eq!(seen["zoomed"], true);
    assert_eq!(seen["same"], true);
    // A browser's own zoom of 200 %: half as many CSS pixels, each twice as fine.
    let zoomed = json!({ "width": 640, "height": 450, "deviceScaleFactor": 2, "mobile": false });
    window
        .debug("Emulation.setDeviceMetricsOverride", zoomed)
        .await;
    let seen = run(
        &window,
        "const e = document.querySelector('#first'); const fitted = await until(() => fits(e)); await pause(100);\
         const canvas = e.shadowRoot.querySelector('canvas');\
         return [fitted, e.clientWidth < 640, document.documentElement.scrollWidth <= 640, canvas.width >= 2 * canvas.clientWidth - 2];",
    )
    .await;
    assert_eq!(seen, json!([true, true, true, true]));
    window
        .debug("Emulation.clearDeviceMetricsOverride", json!({}))
        .await;
    // On paper there is nothing to move; what was never near the view is there all the same.
    let far = run(
        &window,
        "const gap = document.createElement('div'); gap.style.height = '6000px';\
         const far = made(); far.id = 'far'; document.body.append(gap, far); await pause(300); return started(far);",
    )
    .await;
    assert_eq!(far, false);
    let media = |media: &str| json!({ "media": media });
    window
        .debug("Emulation.setEmulatedMedia", media("print"))
        .await;
    let seen = run(
        &window,
        "const root = document.querySelector('#first').shadowRoot;\
         return [root.querySelector('.controls').checkVisibility(), root.querySelector('.figure svg').checkVisibility(),\
           root.querySelector('.caution').checkVisibility(), getComputedStyle(root.querySelector('.caution')).color];",
    )
    .await;
    assert_eq!(seen, json!([false, true, true, "rgb(0, 0, 0)"]));
    window.debug("Emulation.setEmulatedMedia", media("")).await;
    window.debug("Page.printToPDF", json!({})).await;
    let seen = run(&window, "return started(document.querySelector('#far'));").await;
    assert_eq!(seen, true, "started by printing");
    quiet(window).await;
}
