//! What the script of a talk may ask. A talk comes as JSON text each time: reading it takes less than a
//! frame, and an instance that starts afresh after a trap has nothing to be told again.

use super::exports::error_of;
use super::model::{to_js, tree_of};
use super::parts;
use crate::figure::number::within;
use crate::figure::{NARROW, Theme, WIDE};
use crate::talk::{checked, sheet, sizes, working};
use crate::visual::Visual;
use axlewright_core::talk::{Fault, Right, Step, Talk, between};
use axlewright_core::topic::Topic;
use axlewright_core::units::System;
use axlewright_core::words::{self, Lang};
use axlewright_core::{Problem, Scenario, Tree};
use js_sys::Reflect;
use wasm_bindgen::JsValue;

/// Says and draws a step: the talk as JSON, which step, what was changed, units, what is wanted besides, width.
type SayStep = fn(&str, usize, &str, &str, &str, f64) -> Result<JsValue, JsValue>;

/// What a talk asks, as the part of the wasm that holds it brings it.
pub(crate) struct Asked {
    pub(super) outline: fn(&str) -> Result<JsValue, JsValue>,
    pub(super) step: SayStep,
    pub(super) between: fn(&str, usize, usize, f64) -> Result<JsValue, JsValue>,
}

/// What a talk asks.
pub(crate) const TALK: Asked = Asked {
    outline,
    step,
    between: between_steps,
};

/// A topic that is here. The script has fetched those that the talk names.
fn find(name: &str) -> Result<&'static Topic, Problem> {
    parts::topic(name).map(|visual| visual.topic)
}

fn look(topic: &Topic) -> Option<&'static Visual> {
    parts::topic(topic.name).ok()
}

/// Reads a talk: its title, its language and what each step shows.
///
/// # Errors
/// An `Error` whose `faults` tell every fault, each with `step` (0 is the head), `field` and `message`.
fn outline(json: &str) -> Result<JsValue, JsValue> {
    let tree = tree_of(json);
    let (talk, faults) = checked(&tree, find, look);
    if !faults.is_empty() {
        return Err(faulty(&faults, talk.lang));
    }
    let mut outline = Tree::map();
    outline.set("title", Tree::text(talk.title.as_str()));
    outline.set("lang", Tree::text(talk.lang.tag()));
    outline.set(
        "steps",
        Tree::List(talk.steps.iter().map(step_tree).collect()),
    );
    Ok(to_js(&outline))
}

/// The error of a talk that cannot be given.
fn faulty(faults: &[Fault], lang: Lang) -> JsValue {
    let told = faults.iter().map(|fault| {
        let mut told = Tree::map();
        told.set("step", Tree::Number(fault.place().number() as f64));
        told.set("field", Tree::text(fault.field()));
        told.set("message", Tree::text(fault.sentence(lang)));
        told
    });
    let first = faults.first().map(|fault| fault.sentence(lang));
    let error = js_sys::Error::new(&first.unwrap_or_default());
    let told = to_js(&Tree::List(told.collect()));
    let _ = Reflect::set(&error, &"faults".into(), &told);
    error.into()
}

fn step_tree(step: &Step) -> Tree {
    let mut tree = Tree::map();
    tree.set("topic", Tree::text(step.topic.name));
    tree.set("tag", Tree::text(step.topic.tag()));
    tree.set("view", Tree::text(step.show.word()));
    tree.set("reveal", Tree::text(step.parts.words()));
    if let Some(question) = &step.question {
        let mut asked = Tree::map();
        asked.set("text", Tree::text(question.text.as_str()));
        if let Right::Extreme { words, .. } = &question.right {
            let words = words.iter().map(|word| Tree::text(word.as_str()));
            asked.set("choices", Tree::List(words.collect()));
        }
        tree.set("question", asked);
    }
    tree
}

/// One step with its numbers: scenario, sentence, note, the right answer of its question. `changed` is
/// what the speaker has changed, as JSON; empty for nothing. With a theme (`light`, `print`) also the figure
/// as SVG, laid out for `width` (0: as on paper), and its description; in `print` the working too. With
/// `sizes` instead widths of the picture, each with its height.
///
/// # Errors
/// An `Error` of the scenario or the talk.
fn step(
    json: &str,
    at: usize,
    changed: &str,
    units: &str,
    theme: &str,
    width: f64,
) -> Result<JsValue, JsValue> {
    let talk = read(json)?;
    let step = talk.steps.get(at).ok_or(JsValue::NULL)?;
    let system = if units == "us" {
        System::Us
    } else {
        System::Si
    };
    let changed = match tree_of(changed) {
        Tree::Map(entries) if !entries.is_empty() => {
            Scenario::from_tree(&Tree::Map(entries)).map_err(|p| error_of(&p))?
        }
        _ => Scenario::default(),
    };
    let mut report = step.report(&changed).map_err(|p| error_of(&p))?;
    // A talk that was read has every value; what the speaker has changed may take one away.
    let tell = |said: Result<String, _>| {
        said.unwrap_or_else(|_| words::get(talk.lang, "talk.gone").into())
    };
    let mut tree = Tree::map();
    tree.set("scenario", report.scenario.to_tree());
    tree.set(
        "said",
        Tree::Text(tell(step.said(&report, talk.lang, system))),
    );
    tree.set(
        "note",
        Tree::Text(tell(step.noted(&report, talk.lang, system))),
    );
    if let Some((words, choice)) = step.answer(&report, talk.lang, system) {
        tree.set("answer", Tree::Text(words));
        if let Some(choice) = choice {
            tree.set("choice", Tree::Number(choice as f64));
        }
    }
    if theme == "sizes" {
        let visual = look(step.topic).ok_or(JsValue::NULL)?;
        let found = sizes(visual, step, &report, talk.lang, system).map_err(|p| error_of(&p))?;
        let pairs = found
            .iter()
            .map(|pair| Tree::List(pair.map(Tree::Number).into()));
        tree.set("sizes", Tree::List(pairs.collect()));
    } else if !theme.is_empty() {
        let theme = if theme == "light" {
            Theme::Light
        } else {
            Theme::Print
        };
        let visual = look(step.topic).ok_or(JsValue::NULL)?;
        let width = if width > 0.0 {
            within(width, NARROW, WIDE)
        } else {
            WIDE
        };
        let sheet = sheet(visual, step, &report, talk.lang, system, theme, width);
        let sheet = sheet.map_err(|p| error_of(&p))?;
        tree.set("svg", Tree::Text(sheet.svg));
        tree.set("description", Tree::Text(sheet.description));
        if theme == Theme::Print {
            let working = working(step, &mut report, talk.lang);
            tree.set("working", Tree::Text(working));
        }
    }
    Ok(to_js(&tree))
}

/// The scenario at a share of the way between two steps.
///
/// # Errors
/// An `Error` of the talk.
fn between_steps(json: &str, from: usize, to: usize, share: f64) -> Result<JsValue, JsValue> {
    let talk = read(json)?;
    let at = |index: usize| talk.steps.get(index).ok_or(JsValue::NULL);
    let (from, to) = (at(from)?, at(to)?);
    let none = Scenario::default();
    let asked = |step: &Step| step.asked(&none).map_err(|p| error_of(&p));
    Ok(to_js(&between(&asked(from)?, &asked(to)?, share).to_tree()))
}

fn read(json: &str) -> Result<Talk, JsValue> {
    Talk::with_topics(&tree_of(json), find)
        .map_err(|fault| js_sys::Error::new(&fault.to_string()).into())
}
