//! A page asks a question: nothing of the answer is there before the reader has committed a
//! prediction, and then everything is.

use crate::access::judged;
use axlewright_core::question::{Question, Right};
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_core::{Scenario, topic};
use axlewright_tests::session::{Window, answer_of_program, needed};
use serde_json::{Value, json};
use thirtyfour::Key;
use thirtyfour::TypingData;
use thirtyfour::prelude::*;

/// Everything that an element tells: text, attributes (labels, descriptions, values), form values.
const TOLD: &str = "const told = (e) => { const r = e.shadowRoot; const out = [r.textContent];\
     for (const n of r.querySelectorAll('*')) { for (const a of n.attributes) out.push(a.value);\
     if ('value' in n) out.push(String(n.value)); }\
     return out.join(' ').replace(/[\\u2009\\u202f\\u00a0]/g, ' '); };";

async fn open(window: &Window) {
    window.visit("question.html").await;
    let script = "await customElements.whenDefined('axle-traction');\
         globalThis.scores = []; globalThis.answers = []; globalThis.problems = [];\
         addEventListener('axle-score', e => scores.push([e.target.id, JSON.parse(JSON.stringify(e.detail))]));\
         addEventListener('axle-answer', e => answers.push(e.target.id));\
         addEventListener('axle-problem', e => problems.push(e.detail.message));\
         for (const e of document.querySelectorAll('main > [question]')) if (!await e.updateComplete) return e.id;\
         return 'ready';";
    assert_eq!(window.run(script).await, "ready");
}

async fn of(window: &Window, id: &str, script: &str) -> Value {
    let script =
        format!("{TOLD} const e = document.querySelector('#{id}'), root = e.shadowRoot; {script}");
    window.run(&script).await
}

async fn inside(window: &Window, id: &str, selector: &str) -> WebElement {
    window.inside(&format!("#{id}"), selector).await
}

/// Every number of an answer, as the element would show it with some digits.
fn shown_numbers(answer: &Value) -> Vec<String> {
    let mut all = Vec::new();
    for (name, value) in answer.as_object().expect("an answer") {
        if let Some(number) = value.as_f64() {
            for digits in [3, 4] {
                let number = if name.ends_with("acceleration") {
                    number / 9.81
                } else {
                    number
                };
                let text = axlewright_core::format::significant(
                    number,
                    digits,
                    axlewright_core::words::Lang::English,
                );
                all.push(text.replace('\u{2009}', " "));
            }
        }
    }
    all
}

#[tokio::test]
async fn nothing_of_the_answer_is_there_before_the_prediction() {
    let window = Window::open().await;
    open(&window).await;
    let scenario = of(&window, "number", "return e.scenario;").await;
    let numbers = shown_numbers(&answer_of_program("load_transfer", &scenario));
    assert!(numbers.len() > 10, "{numbers:?}");
    let told = of(&window, "number", "return told(e);").await;
    let told = told.as_str().expect("text");
    assert!(
        told.contains("0.6 g") && told.contains("1 850 kg"),
        "{told}"
    );
    for number in &numbers {
        assert!(!told.contains(number), "{number} is in: {told}");
    }
    let hidden = of(
        &window,
        "number",
        "await e.undo(); await e.reset();\
         return [e.answer, await e.figure('svg'), await e.figure('png'), await e.table('csv'), await e.table('json'), e.score,\
         ...['.figure', '.toolbar', '.controls', '.readouts', '.chart', '.data'].map(s => root.querySelector(s).checkVisibility()),\
         root.querySelectorAll('svg, math').length, answers];",
    )
    .await;
    assert_eq!(
        hidden,
        json!([
            null,
            null,
            null,
            null,
            null,
            null,
            false,
            false,
            false,
            false,
            false,
            false,
            0,
            []
        ])
    );
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_prediction_by_keyboard_alone() {
    let window = Window::open().await;
    open(&window).await;
    // By keyboard to the field: from the top of the page, Tab by Tab.
    let keys = window.driver.action_chain();
    keys.send_keys(Key::Tab + "")
        .perform()
        .await
        .expect("a key");
    let focus = of(&window, "number", "return root.activeElement?.id;").await;
    assert_eq!(focus, "prediction");
    let type_keys = async |text: TypingData| {
        let chain = window.driver.action_chain();
        chain.send_keys(text).perform().await.expect("typing");
    };

    // A hint, which keeps what was typed; a wrong unit, refused in place.
    type_keys("11".into()).await;
    type_keys(Key::Tab + Key::Tab).await;
    type_keys(Key::Enter + "").await;
    let hint = of(
        &window,
        "number",
        "await new Promise(r => setTimeout(r, 50));\
         return [root.querySelector('.hint').textContent.length > 20, root.activeElement.className,\
         root.querySelector('#prediction').value];",
    )
    .await;
    assert_eq!(hint, json!([true, "hint", "11"]));
    let field = inside(&window, "number", "#prediction").await;
    field
        .send_keys(Key::Control + "a" + Key::Null + "1100 kg" + Key::Enter)
        .await
        .expect("typing");
    let refused = of(
        &window,
        "number",
        "await new Promise(r => setTimeout(r, 50));\
         const f = root.querySelector('#prediction');\
         return [f.getAttribute('aria-invalid'), f.value, root.activeElement === f,\
         root.querySelector('#refusal').textContent, e.answer, problems.length, scores.length];",
    )
    .await;
    assert_eq!(refused[0], "true", "{refused}");
    assert_eq!(refused[1], "1100 kg");
    assert_eq!(refused[2], true);
    let sentence = refused[3].as_str().expect("a sentence");
    assert!(
        sentence.contains("mass") && sentence.contains("kN"),
        "{sentence}"
    );
    assert_eq!(
        [&refused[4], &refused[5], &refused[6]],
        [&json!(null), &json!(1), &json!(0)]
    );

    // The prediction itself.
    let scenario = of(&window, "number", "return e.scenario;").await;
    let answer = answer_of_program("load_transfer", &scenario);
    let right = answer["rear_axle_load"].as_f64().expect("a load");
    let again = inside(&window, "number", "#prediction").await;
    again
        .send_keys(Key::Control + "a" + Key::Null + "12.5 kN" + Key::Enter)
        .await
        .expect("typing");
    let seen = of(
        &window,
        "number",
        "await new Promise(r => setTimeout(r, 200));\
         return [root.querySelector('.verdict').textContent.replace(/\\u2009/g, ' '), root.activeElement.className,\
         ...['.figure', '.controls', '.readouts', '.chart'].map(s => root.querySelector(s).checkVisibility()),\
         root.querySelectorAll('.question math').length > 1, scores, e.score, e.answer.rear_axle_load,\
         (await e.figure('svg')).startsWith('<svg'), [...root.querySelectorAll('button[data-act]')].map(b => b.textContent)];",
    )
    .await;
    let verdict = seen[0].as_str().expect("a verdict");
    for part in ["12 500 N", "11 321 N", "10 % too much", "outside"] {
        assert!(verdict.contains(part), "{verdict}");
    }
    assert_eq!(seen[1], "verdict");
    assert_eq!(
        [&seen[2], &seen[3], &seen[4], &seen[5], &seen[6]],
        [&json!(true); 5]
    );
    let detail = &seen[8];
    assert_eq!(seen[7], json!([["number", detail]]));
    assert_eq!(detail["right"], json!(right), "to the last digit");
    assert_eq!(detail["given"].as_f64(), Some(12_500.0));
    assert_eq!(detail["difference"].as_f64(), Some(12_500.0 - right));
    assert_eq!(detail["relative"], json!((12_500.0 - right) / right));
    for (name, want) in [
        ("topic", json!("load_transfer")),
        ("question", json!("rear_load")),
        ("seed", json!(null)),
        ("unit", json!("N")),
        ("within", json!(false)),
    ] {
        assert_eq!(detail[name], want, "{name}");
    }
    let miss = (12_500.0 - right) / right / 0.05;
    let score = detail["score"].as_f64().expect("a score");
    assert!((score - (4.0 - miss) / 3.0).abs() < 1e-6, "{detail}");
    assert_eq!(seen[9], json!(right));
    assert_eq!(seen[10], true);
    assert_eq!(
        seen[11],
        json!(["Ask again"]),
        "no other one without a seed"
    );

    // Asked again, everything is gone once more; also what was spoken.
    let gone = of(
        &window,
        "number",
        "await new Promise(r => setTimeout(r, 900));\
         root.querySelector('[data-act=again]').click();\
         await new Promise(r => setTimeout(r, 100));\
         return [told(e).includes('11 3'), e.answer, root.activeElement?.id, root.querySelectorAll('svg, math').length];",
    )
    .await;
    assert_eq!(gone, json!([false, null, "prediction", 0]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_choice_and_the_next_question() {
    let window = Window::open().await;
    open(&window).await;
    let asked = |seed| {
        let topic = topic::find("traction").expect("the topic");
        let mut base = Scenario::default();
        base.set("vehicle.base", "esker").expect("a vehicle");
        Question::make(topic, "faster_drive", Some(seed), &base).expect("a question")
    };
    let first = asked(7);
    let Right::Choice { choices, right } = &first.right else {
        panic!("{first:?}");
    };
    // Nothing chosen is no prediction.
    let none = of(
        &window,
        "choice",
        "root.querySelector('[type=submit]').click(); await new Promise(r => setTimeout(r, 50));\
         return [root.querySelector('.statement').textContent, root.querySelector('#refusal').textContent.length > 10, e.answer];",
    )
    .await;
    assert_eq!(none[0], json!(first.statement(Lang::English, System::Si)));
    assert_eq!([&none[1], &none[2]], [&json!(true), &json!(null)]);
    let wrong = choices[1 - right].0;
    let seen = of(
        &window,
        "choice",
        &format!(
            "root.querySelector('[value={wrong}]').click(); root.querySelector('[type=submit]').click();\
             await new Promise(r => setTimeout(r, 100));\
             return [e.score, root.querySelector('.verdict').textContent, Object.keys(e.answer.limits)];"
        ),
    )
    .await;
    assert_eq!(seen[0]["given"], json!(wrong));
    assert_eq!(seen[0]["right"], json!(choices[*right].0));
    assert_eq!(seen[0]["seed"], json!(7));
    assert_eq!(seen[0]["score"].as_f64(), Some(0.0));
    assert_eq!(seen[0]["difference"], json!(null));
    assert!(
        seen[1]
            .as_str()
            .is_some_and(|text| text.contains("Right is")),
        "{seen}"
    );
    assert_eq!(seen[2], json!(["F1", "R1"]));

    // The next one is that of the next seed.
    let second = asked(8);
    let Right::Choice { choices, right } = &second.right else {
        panic!("{second:?}");
    };
    let next = of(
        &window,
        "choice",
        &format!(
            "root.querySelector('[data-act=another]').click(); await new Promise(r => setTimeout(r, 100));\
             const values = [...root.querySelectorAll('dd')].map(d => d.textContent);\
             root.querySelector('[value={}]').click(); root.querySelector('[type=submit]').click();\
             await new Promise(r => setTimeout(r, 100));\
             return [values, e.score.seed, e.score.score];",
            choices[*right].0
        ),
    )
    .await;
    let values: Vec<String> = second
        .given(Lang::English, System::Si)
        .into_iter()
        .map(|(_, value)| value)
        .collect();
    assert_eq!(next, json!([values, 8, 1]));
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn the_same_seed_gives_a_class_the_same_numbers() {
    let window = Window::open().await;
    open(&window).await;
    let question = "return root.querySelector('.question').textContent;";
    let same = of(&window, "same", question).await;
    assert_eq!(same, of(&window, "again", question).await);
    assert_ne!(same, of(&window, "other", question).await);

    // What the reader's value brings about is said, and the page may ask something else.
    let seen = of(
        &window,
        "same",
        "root.querySelector('#prediction').value = '1 m'; root.querySelector('[type=submit]').click();\
         await new Promise(r => setTimeout(r, 100));\
         const out = [e.score.unit, e.score.given, e.answer.front_lift_acceleration, root.querySelector('.verdict').textContent];\
         e.question = 'rear-laod 3'; await new Promise(r => setTimeout(r, 50));\
         out.push(problems.at(-1), e.answer !== null);\
         e.question = 'any 3'; await new Promise(r => setTimeout(r, 50)); out.push(e.answer);\
         e.question = null; await new Promise(r => setTimeout(r, 50));\
         out.push(e.answer !== null, e.scenario.vehicle.base, root.querySelector('.figure svg') !== null, root.querySelector('.question').textContent);\
         return out;",
    )
    .await;
    assert_eq!((&seen[0], seen[1].as_f64()), (&json!("m"), Some(1.0)));
    assert!(seen[2].as_f64().is_some_and(|a| a > 0.0), "{seen}");
    assert!(
        seen[3].as_str().is_some_and(|t| t.contains("instead of")),
        "{seen}"
    );
    assert!(
        seen[4]
            .as_str()
            .is_some_and(|t| t.contains("allowed: rear_load")),
        "the nearest name comes first: {seen}"
    );
    assert_eq!(
        seen.as_array().map(|all| all[5..].to_vec()),
        Some(vec![
            json!(true),
            json!(null),
            json!(true),
            json!("kame"),
            json!(true),
            json!("")
        ])
    );
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn no_violation_while_open_refused_and_answered() {
    let axe = needed(&axlewright_tests::file("node_modules/axe-core/axe.min.js"));
    for dark in [false, true] {
        let arguments: &[&str] = if dark {
            &[
                "--force-dark-mode",
                "--blink-settings=preferredColorScheme=0",
            ]
        } else {
            &[]
        };
        let window = Window::open_with(if dark { 500 } else { 1280 }, arguments).await;
        open(&window).await;
        window
            .driver
            .execute(&axe, Vec::new())
            .await
            .expect("axe-core loads");
        for step in [
            "",
            "root.querySelector('[data-act=hint]').click(); root.querySelector('[type=submit]').click();",
            "root.querySelector('#prediction').value = '11 kN'; root.querySelector('[type=submit]').click();",
        ] {
            of(
                &window,
                "number",
                &format!("{step} await new Promise(r => setTimeout(r, 300));"),
            )
            .await;
            let found = judged(&window, "document").await;
            assert!(
                found[0].as_u64() > Some(15),
                "axe-core checked too little: {found}"
            );
            assert_eq!(found[1], json!([]), "dark {dark}, {step}");
            if let Some(folder) = std::env::var_os("AXLEWRIGHT_PICTURES") {
                let state = ["open", "refused", "answered"][match step {
                    "" => 0,
                    s if s.contains("hint") => 1,
                    _ => 2,
                }];
                let name = format!(
                    "question-{state}-{}.png",
                    if dark { "dark" } else { "light" }
                );
                let path = std::path::Path::new(&folder).join(name);
                window.run("scrollTo(0, 0);").await;
                let png = window.driver.screenshot_as_png().await.expect("a picture");
                std::fs::write(&path, &png).expect("it is written");
            }
        }
        window.close().await;
    }
}

/// Puts an element with a question into the page and waits until it asks.
async fn put(window: &Window, tag: &str, id: &str, question: &str) {
    let script = format!(
        "document.querySelector('main').insertAdjacentHTML('beforeend',\
         '<{tag} id=\"{id}\" vehicle=\"esker\" question=\"{question}\"></{tag}>');\
         return await document.querySelector('#{id}').updateComplete;"
    );
    assert_eq!(window.run(&script).await, true, "{question}");
}

fn made(topic: &str, id: &str, seed: u64) -> axlewright_core::question::Asked {
    let topic = topic::find(topic).expect("a topic");
    let mut base = Scenario::default();
    base.set("vehicle.base", "esker").expect("a demo vehicle");
    Question::make(topic, id, Some(seed), &base).expect("a question")
}

/// Loads axe-core and asks it about the page.
async fn no_rule_is_broken(window: &Window, what: &str) {
    let axe = needed(&axlewright_tests::file("node_modules/axe-core/axe.min.js"));
    let loaded = window.driver.execute(&axe, Vec::new()).await;
    loaded.expect("axe-core loads");
    let found = judged(window, "document").await;
    assert!(
        found[0].as_u64() > Some(15),
        "{what}: axe-core checked too little: {found}"
    );
    assert_eq!(found[1], json!([]), "{what}");
}

#[tokio::test]
async fn the_wrong_line_of_a_solution_is_spotted() {
    let window = Window::open().await;
    open(&window).await;
    put(&window, "axle-load-transfer", "spot", "wrong-line 3").await;
    let asked = made("load_transfer", "wrong_line", 3);
    let Right::Choice { choices, right } = &asked.right else {
        panic!("{asked:?}");
    };
    let seen = of(
        &window,
        "spot",
        "const lines = [...root.querySelectorAll('.question ol.working > li')];\
         return [lines.length, root.querySelectorAll('.question [type=radio]').length,\
         lines.every((line) => line.querySelector('math')), root.querySelectorAll('.derivation').length];",
    )
    .await;
    assert_eq!(seen, json!([choices.len(), choices.len(), true, 0]));
    no_rule_is_broken(&window, "a spoilt solution").await;
    let right = choices[*right].0;
    inside(&window, "spot", &format!("[type=radio][value=\"{right}\"]"))
        .await
        .click()
        .await
        .expect("a choice");
    inside(&window, "spot", "[type=submit]")
        .await
        .click()
        .await
        .expect("a button");
    let told = of(
        &window,
        "spot",
        "return [root.querySelector('.verdict').textContent, e.score?.score, root.querySelectorAll('.question details.derivation').length];",
    )
    .await;
    let slip = asked.told_slip(Lang::English).expect("a slip");
    let verdict = told[0].as_str().expect("a verdict");
    assert!(
        verdict.contains("That is right.") && verdict.contains(&slip),
        "{verdict}"
    );
    assert_eq!([&told[1], &told[2]], [&json!(1), &json!(1)], "{told}");
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}

#[tokio::test]
async fn a_value_is_read_off_a_chart() {
    let window = Window::open().await;
    open(&window).await;
    put(&window, "axle-traction", "read", "read-friction 3").await;
    let asked = made("traction", "read_friction", 3);
    let (title, points) = asked.chart_text(Lang::English, System::Si);
    let seen = of(
        &window,
        "read",
        "const chart = root.querySelector('.question svg');\
         const box = chart.getBoundingClientRect();\
         return [chart.querySelector('title').textContent, chart.querySelector('desc').textContent,\
         box.width > 250 && box.height > 150, root.querySelectorAll('.given').length];",
    )
    .await;
    assert_eq!(seen, json!([title, points, true, 0]));
    no_rule_is_broken(&window, "a chart to read").await;
    let answer = asked.answer(Lang::English, System::Si);
    let field = inside(&window, "read", "#prediction").await;
    field.send_keys(&answer).await.expect("typing");
    field.send_keys(Key::Enter).await.expect("a key");
    let told = of(
        &window,
        "read",
        "return [root.querySelector('.verdict').textContent, e.score?.within];",
    )
    .await;
    assert_eq!(told[1], true, "{told}");
    // What the numbers behind the chart were is told with the answer.
    let scenario = of(&window, "read", "return e.scenario;").await;
    let answer = answer_of_program("traction", &scenario);
    assert!(answer.get("limits").is_some(), "{answer}");
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}
