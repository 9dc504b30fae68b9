//! The whole journey through each element by keyboard alone: every key is pressed in the browser, nothing
//! is clicked and nothing is focused by script.

use axlewright_core::topic::{TOPICS, Topic};
use axlewright_tests::session::{Window, answer_of_program};
use serde_json::Value;
use std::time::Duration;
use thirtyfour::Key;

/// Stops of the tabulator that an element has at most; more is a reader who does not get through.
const MOST_STOPS: usize = 150;

/// Longer than changes of one input that count as one step to take back.
const A_STEP_LATER: Duration = Duration::from_millis(800);

struct Reader<'a> {
    window: &'a Window,
    tag: String,
}

impl Reader<'_> {
    /// Runs a script that knows the element, its shadow root and what has the focus.
    async fn sees(&self, script: &str) -> Value {
        let tag = &self.tag;
        let all = format!(
            "const element = document.querySelector('{tag}'); const root = element.shadowRoot;\
             const focus = root.activeElement; {script}"
        );
        self.window.run(&all).await
    }

    /// Presses keys one after the other, all of them while the first ones of `held` are down.
    async fn press(&self, held: &[Key], keys: &str) {
        let held: Vec<char> = held.iter().map(|key| char::from(key.clone())).collect();
        let mut chain = self.window.driver.action_chain();
        for key in &held {
            chain = chain.key_down(*key);
        }
        for key in keys.chars() {
            chain = chain.key_down(key).key_up(key);
        }
        for key in &held {
            chain = chain.key_up(*key);
        }
        chain.perform().await.expect("keys");
    }

    async fn key(&self, key: Key) {
        self.press(&[], &char::from(key).to_string()).await;
    }

    /// Goes on by Tab, or back by Shift and Tab, until something has the focus that a selector names. Every
    /// stop on the way shows that it has the focus.
    async fn reach(&self, selector: &str, back: bool) {
        let held: &[Key] = if back { &[Key::Shift] } else { &[] };
        for _ in 0..MOST_STOPS {
            self.press(held, &char::from(Key::Tab).to_string()).await;
            let seen = self
                .sees(&format!(
                    "const shown = focus && focus.matches(':focus-visible') && getComputedStyle(focus);\
                     return [focus?.matches('{selector}') ?? false, !focus || parseFloat(shown.outlineWidth) >= 2, focus?.outerHTML.slice(0, 120) ?? ''];"
                ))
                .await;
            assert_eq!(
                seen[1], true,
                "{}: the focus is not seen: {}",
                self.tag, seen[2]
            );
            if seen[0] == true {
                return;
            }
        }
        panic!("{}: Tab does not reach {selector}", self.tag);
    }

    /// Waits until something holds.
    async fn until(&self, what: &str, script: &str) -> Value {
        for _ in 0..200 {
            let seen = self.sees(script).await;
            if !matches!(seen, Value::Null | Value::Bool(false)) {
                return seen;
            }
            tokio::time::sleep(Duration::from_millis(25)).await;
        }
        panic!("{}: {what} does not come", self.tag);
    }

    /// The scenario that is shown, once it has its answer; the answer is the program's.
    async fn agrees(&self, topic: &Topic) -> Value {
        let text = self
            .until(
                "an answer to what is shown",
                "const flat = (o) => JSON.stringify(o); const now = element.scenario;\
                 return flat(element.answer?.scenario) === flat(now) && [now, element.answer];",
            )
            .await;
        let (scenario, ours) = (text[0].clone(), &text[1]);
        let theirs = answer_of_program(topic.name, &scenario);
        same(ours, &theirs, topic.name);
        scenario
    }
}

/// Two answers are the same to the last digit; a number without a fraction may be written as an integer.
fn same(ours: &Value, theirs: &Value, place: &str) {
    match (ours, theirs) {
        (Value::Object(one), Value::Object(other)) => {
            let names = |map: &serde_json::Map<String, Value>| -> Vec<String> {
                let mut names: Vec<String> = map.keys().cloned().collect();
                names.sort();
                names
            };
            assert_eq!(names(one), names(other), "{place}");
            for (name, value) in one {
                same(value, &other[name], &format!("{place}.{name}"));
            }
        }
        (Value::Array(one), Value::Array(other)) => {
            assert_eq!(one.len(), other.len(), "{place}");
            for (at, (value, wanted)) in one.iter().zip(other).enumerate() {
                same(value, wanted, &format!("{place}.{at}"));
            }
        }
        (Value::Number(one), Value::Number(other)) => {
            assert_eq!(one.as_f64(), other.as_f64(), "{place}");
        }
        _ => assert_eq!(ours, theirs, "{place}"),
    }
}

/// A slider as it stands: value, ends, step, and the decimals of the step.
const SLIDER: &str = "return [focus.value, focus.min, focus.max, focus.step, (focus.step.split('.')[1] ?? '').length].map(Number);";

fn number(list: &Value, at: usize) -> f64 {
    list[at].as_f64().expect("a number")
}

async fn journey(window: &Window, topic: &Topic) {
    let tag = topic.tag();
    let made = format!(
        "const e = document.createElement('{tag}'); document.querySelector('#place').replaceChildren(e);\
         document.querySelector('main').insertAdjacentHTML('beforeend', '<a id=after href=#place>after</a>');"
    );
    window.visit("one.html").await;
    window.run(&made).await;
    window.ready(&tag).await;
    let reader = Reader { window, tag };
    let first = reader.agrees(topic).await;

    // A slider, by an arrow key.
    reader.reach(".controls input[type=range]", false).await;
    let before = reader.sees(SLIDER).await;
    let (value, most, step) = (number(&before, 0), number(&before, 2), number(&before, 3));
    let up = value + 4.0 * step <= most;
    reader.key(if up { Key::Right } else { Key::Left }).await;
    let way = if up { step } else { -step };
    let now = number(&reader.sees(SLIDER).await, 0);
    assert!(
        (now - (value + way)).abs() < 1e-6,
        "{}: one step of {step} from {value} is {now}",
        topic.name
    );
    let slid = reader.agrees(topic).await;
    assert_ne!(
        slid, first,
        "{}: the slider changes the scenario",
        topic.name
    );

    // The number beside it, typed with its unit.
    tokio::time::sleep(A_STEP_LATER).await;
    reader.reach(".controls .number", false).await;
    let unit = reader
        .sees("return focus.value.replace(/^[-−+\\d.,\\u2009\\u202f\\u00a0 ]+/, '');")
        .await;
    let decimals = number(&before, 4) as usize;
    let wanted = value + 3.0 * way;
    let typed = format!("{wanted:.decimals$} {}", unit.as_str().expect("a unit"));
    reader.press(&[Key::Control], "a").await;
    reader.press(&[], typed.trim()).await;
    reader.key(Key::Enter).await;
    let typed_in = reader.agrees(topic).await;
    assert_ne!(
        typed_in, slid,
        "{}: {typed} changes the scenario",
        topic.name
    );
    let slider = "const slider = focus.parentElement.querySelector('[type=range]'); return [Number(slider.value)];";
    let now = number(&reader.sees(slider).await, 0);
    assert!(
        (now - wanted).abs() < 1e-6,
        "{}: {typed} was typed, the slider stands at {now}",
        topic.name
    );

    // The working of a result.
    reader
        .reach(".readouts details.readout > summary", false)
        .await;
    let closed = reader.sees("return focus.parentElement.open;").await;
    assert_eq!(closed, false, "{}", topic.name);
    reader.key(Key::Enter).await;
    let steps = reader
        .until(
            "the working",
            "return focus.parentElement.open && focus.parentElement.querySelectorAll('.working math').length || null;",
        )
        .await;
    assert!(steps.as_u64() > Some(0), "{}: {steps}", topic.name);

    // The values of the chart under its cursor.
    reader.reach(".chart .cursor", false).await;
    let read = "const told = root.querySelector('.read').textContent;\
                return told && [focus.getAttribute('aria-valuetext'), told];";
    let here = reader.until("a reading", read).await;
    reader.key(Key::Home).await;
    let start = reader.until("a reading", read).await;
    reader.key(Key::Right).await;
    let next = reader.until("a reading", read).await;
    assert_ne!(start, next, "{}: the cursor moves from {here}", topic.name);
    for reading in [&here, &start, &next] {
        let (place, told) = (&reading[0], &reading[1]);
        let (place, told) = (
            place.as_str().expect("a place"),
            told.as_str().expect("a text"),
        );
        assert!(
            !place.is_empty() && told.contains(place) && told.len() > place.len() + 3,
            "{}: at {place} it says {told}",
            topic.name
        );
    }
    assert_eq!(
        reader.agrees(topic).await,
        typed_in,
        "{}: reading changes nothing",
        topic.name
    );

    // Back to the button that takes the last step back.
    reader
        .reach(".controls .steps button:first-child", true)
        .await;
    reader.key(Key::Space).await;
    assert_eq!(reader.agrees(topic).await, slid, "{}: undo", topic.name);
    reader.key(Key::Enter).await;
    assert_eq!(reader.agrees(topic).await, first, "{}: undo", topic.name);

    // And out of the element again, at its other end.
    for _ in 0..MOST_STOPS {
        reader.key(Key::Tab).await;
        let on = window.run("return document.activeElement?.id ?? '';").await;
        if on == "after" {
            return;
        }
    }
    panic!("{}: Tab does not leave the element", topic.name);
}

#[tokio::test]
async fn every_element_works_by_keyboard_alone() {
    let window = Window::open().await;
    for topic in TOPICS {
        let began = std::time::Instant::now();
        journey(&window, topic).await;
        println!("{}: {:.1} s", topic.name, began.elapsed().as_secs_f64());
    }
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}
