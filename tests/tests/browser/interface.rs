//! The tables of the interface against the living elements.

use axlewright_core::topic::TOPICS;
use axlewright_tests::session::Window;
use axlewright_widgets::element::attributes;
use axlewright_widgets::element::interface::{ATTRIBUTES, DETAILS, FUNCTIONS, MEMBERS, talk};
use serde_json::{Value, json};
use std::collections::BTreeSet;

fn set(names: impl IntoIterator<Item = impl Into<String>>) -> BTreeSet<String> {
    names.into_iter().map(Into::into).collect()
}

fn texts(list: &Value) -> BTreeSet<String> {
    let list = list.as_array().expect("a list");
    list.iter()
        .filter_map(|name| name.as_str())
        .map(str::to_owned)
        .collect()
}

fn camel(attribute: &str) -> String {
    let mut name = String::new();
    let mut raise = false;
    for letter in attribute.chars() {
        match letter {
            '-' => raise = true,
            _ if raise => {
                name.push(letter.to_ascii_uppercase());
                raise = false;
            }
            _ => name.push(letter),
        }
    }
    name
}

#[tokio::test]
async fn every_public_member_of_an_element_is_in_the_tables_and_the_other_way_round() {
    let window = Window::open().await;
    window.visit("one.html").await;
    for topic in TOPICS {
        let tag = topic.tag();
        let made = format!(
            "document.querySelector('#place').replaceChildren(document.createElement('{tag}'));"
        );
        window.run(&made).await;
        window.ready(&tag).await;
        let seen = window
            .run(&format!(
                "const element = document.querySelector('{tag}'); const names = [];\
                 for (let p = Object.getPrototypeOf(element); p !== HTMLElement.prototype; p = Object.getPrototypeOf(p)) \
                   names.push(...Object.getOwnPropertyNames(p));\
                 return [names, Object.getOwnPropertyNames(element), element.constructor.observedAttributes];"
            ))
            .await;
        // What the browser calls is no part of what a page may rely on.
        let platform = [
            "constructor",
            "connectedCallback",
            "disconnectedCallback",
            "attributeChangedCallback",
        ];
        let mut wanted = set(platform);
        wanted.extend(set(MEMBERS.iter().map(|member| member.name)));
        let mirrored = attributes(topic).into_iter().filter(|name| name != "lang");
        wanted.extend(mirrored.map(|name| camel(&name)));
        assert_eq!(texts(&seen[0]), wanted, "{tag}");
        assert_eq!(seen[1], json!([]), "{tag}");
        assert_eq!(texts(&seen[2]), set(attributes(topic)), "{tag}");
    }
    let exported = window
        .run("return Object.keys(await import('./axlewright.js'));")
        .await;
    let mut wanted = set(FUNCTIONS.iter().map(|function| function.name));
    wanted.remove("init");
    wanted.insert("default".into());
    assert_eq!(texts(&exported), wanted);
    window.visit_file("traction.html").await;
    window.ready("axle-traction").await;
    let classic = window.run("return Object.keys(axlewright);").await;
    assert_eq!(texts(&classic), set(FUNCTIONS.iter().map(|f| f.name)));
    window.close().await;
}

#[tokio::test]
async fn every_public_member_of_a_talk_is_in_its_tables_and_the_other_way_round() {
    let window = Window::open().await;
    window.visit("talking.html").await;
    let seen = window
        .run(
            "const talk = document.querySelector('axle-talk'); await customElements.whenDefined('axle-talk');\
             for (let i = 0; i < 200 && !talk.shadowRoot.querySelector('.said')?.textContent; i++) await new Promise(r => setTimeout(r, 50));\
             return [Object.getOwnPropertyNames(Object.getPrototypeOf(talk)), Object.getOwnPropertyNames(talk),\
               [...talk.shadowRoot.querySelectorAll('[part]')].filter(e => !e.matches('[part] .working *')).map(e => e.getAttribute('part')),\
               talk.constructor.observedAttributes];",
        )
        .await;
    let mut wanted = set([
        "constructor",
        "connectedCallback",
        "disconnectedCallback",
        "attributeChangedCallback",
    ]);
    wanted.extend(set(talk::MEMBERS.iter().map(|member| member.name)));
    assert_eq!(texts(&seen[0]), wanted);
    assert_eq!(seen[1], json!([]));
    assert_eq!(texts(&seen[2]), set(talk::PARTS.iter().map(|p| p.name)));
    let told = set(talk::ATTRIBUTES.iter().map(|a| a.name));
    assert!(texts(&seen[3]).is_subset(&told), "{seen}");
    window.close().await;
}

#[tokio::test]
async fn spacing_font_and_size_of_text_follow_the_page() {
    let window = Window::open().await;
    window.visit("one.html").await;
    let look = "const base = root.querySelector('[part=base]'); const axle = base.querySelector('.axle');\
        const style = (s, p) => parseFloat(getComputedStyle(base.querySelector(s))[p]);\
        const looks = () => [style('.caution', 'paddingTop'), style('.controls', 'columnGap'), style('.readouts', 'marginTop'),\
          style('.axle', 'fontSize'), style('.number', 'fontSize'), getComputedStyle(axle).fontFamily,\
          getComputedStyle(root.querySelector('canvas')).fontFamily, getComputedStyle(root.querySelector('.figure svg text')).fontFamily];";
    let seen = window
        .run(&format!(
            "const e = document.createElement('axle-traction'); document.querySelector('#place').append(e);\
             await e.updateComplete; const root = e.shadowRoot; {look} const all = [looks()];\
             const set = (on, name, value) => {{ on.style.setProperty(name, value); all.push(looks()); on.style.removeProperty(name); }};\
             set(e, '--axle-space', '0.5'); set(e, '--axle-text-size', '1.5em'); set(e, '--axle-font', 'monospace');\
             set(document.body, '--axle-font', 'fantasy'); all.push(looks()); return all;"
        ))
        .await;
    let number = |at: usize, what: usize| seen[at][what].as_f64().expect("a length");
    for what in 0..3 {
        let (own, half) = (number(0, what), number(1, what));
        assert!(own > 1.0 && (half - own / 2.0).abs() < 0.01, "{seen}");
    }
    for what in 3..5 {
        assert!((number(1, what) - number(0, what)).abs() < 0.01, "{seen}");
        assert!(
            (number(2, what) - 1.5 * number(0, what)).abs() < 0.01,
            "{seen}"
        );
    }
    for what in 5..8 {
        assert_eq!(seen[3][what], "monospace", "{seen}");
        assert_eq!(seen[4][what], "fantasy", "{seen}");
        assert_ne!(seen[0][what], "monospace", "{seen}");
    }
    assert_eq!(seen[5], seen[0], "taken away again");
    window.close().await;
}

#[tokio::test]
async fn every_common_attribute_changes_what_is_shown() {
    let window = Window::open().await;
    window.visit("three.html").await;
    window.ready("axle-traction").await;
    for attribute in ATTRIBUTES {
        let value = match attribute.name {
            "scenario" => r#"{"vehicle":{"base":"kame"}}"#,
            "units" => "us",
            "controls" => "mass",
            "show" => "readouts",
            "view" => "side",
            "reveal" => "wheels",
            "theme" => "dark",
            "lang" => "de",
            "question" => "any 7",
            other => panic!("no value to try for {other}"),
        };
        let seen = window
            .run(&format!(
                "const e = document.createElement('axle-traction'); document.body.append(e); await e.updateComplete;\
                 const look = () => e.shadowRoot.querySelector('[part=base]').innerHTML + getComputedStyle(e).getPropertyValue('--axle-ink');\
                 await new Promise(r => setTimeout(r, 60)); const before = look();\
                 e.setAttribute('{}', '{value}'); await e.updateComplete; await new Promise(r => setTimeout(r, 400));\
                 const after = look(); e.remove(); return before !== after;",
                attribute.name
            ))
            .await;
        assert_eq!(seen, true, "{} changes nothing", attribute.name);
    }
    window.close().await;
}

#[tokio::test]
async fn a_refusal_has_the_shape_that_is_told() {
    let window = Window::open().await;
    window.visit("three.html").await;
    window.ready("axle-traction").await;
    let seen = window
        .run(
            "const e = document.querySelector('axle-traction'); const heard = [];\
             document.addEventListener('axle-problem', x => heard.push(x.detail));\
             e.setAttribute('mass', 'heavy'); e.setAttribute('scenario', '{ no json');\
             await new Promise(r => setTimeout(r, 100)); return heard;",
        )
        .await;
    let heard = seen.as_array().expect("a list");
    assert_eq!(heard.len(), 2, "{seen}");
    let (_, fields) = DETAILS
        .iter()
        .find(|(name, _)| *name == "AxleProblem")
        .expect("a shape");
    for detail in heard {
        let detail = detail.as_object().expect("an object");
        for field in *fields {
            let name = field.name.trim_end_matches('?');
            let there = detail.get(name).is_some_and(Value::is_string);
            assert!(there || field.name.ends_with('?'), "{name}: {detail:?}");
        }
        for name in detail.keys() {
            let known = fields.iter().any(|f| f.name.trim_end_matches('?') == name);
            assert!(known, "{name} is not told");
        }
    }
    let thrown = window
        .run(
            "const { solve } = await import('./axlewright.js');\
             try { solve('traction', { vehicle: { mass: 'heavy' } }); return null; }\
             catch (e) { return [e instanceof Error, e.field, typeof e.value, typeof e.allowed]; }",
        )
        .await;
    assert_eq!(thrown, json!([true, "vehicle.mass", "string", "string"]));
    window.close().await;
}
