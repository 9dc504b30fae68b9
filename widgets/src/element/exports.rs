//! What the script may call.

use super::compare::compare;
use super::controls::controls;
use super::erase::{Place, follow, tag};
use super::model::{Model, to_js, tree_of};
use super::parts;
use super::picture::{Painted, chart, figure};
use super::playback::playback;
use super::quiz::question;
use super::readouts::readouts;
use super::take::Take;
use super::toolbar::{toolbar, undo_by_key};
use crate::visual::Visual;
use axlewright_core::words::{self, Lang};
use axlewright_core::{Problem, Scenario};
use js_sys::{Array, Function, Object, Reflect};
use leptos::prelude::*;
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use wasm_bindgen::prelude::*;
use web_sys::HtmlElement;

/// The Rust side of one element.
#[wasm_bindgen]
pub struct Handle {
    pub(super) model: Model,
    unmount: RefCell<Option<Box<dyn FnOnce()>>>,
    pub(super) painted: Cell<Option<Painted>>,
}

pub(super) fn error_of(problem: &Problem) -> JsValue {
    let lang = Lang::English;
    let error = js_sys::Error::new(&problem.sentence(lang));
    let set = |name: &str, text: &str| {
        let _ = Reflect::set(&error, &name.into(), &text.into());
    };
    set("field", problem.field());
    set("value", problem.value());
    set("allowed", &problem.allowed(lang));
    error.into()
}

fn text_of(value: &JsValue) -> String {
    value.as_string().unwrap_or_default()
}

fn apply(model: Model, name: &str, value: &JsValue) {
    let absent = value.is_null() || value.is_undefined();
    let applied = if name == "scenario" {
        model.set_scenario((!absent).then(|| tree_of(&text_of(value))).as_ref())
    } else {
        model.set_attribute(name, value.as_string().as_deref())
    };
    match applied {
        Ok(()) => model.refresh(),
        Err(problem) => {
            // The first answer must not wait for a good attribute.
            if model.peek(|s| s.report.is_none() && s.quiz.is_none()) {
                model.refresh();
            }
            model.refuse(problem);
        }
    }
}

/// A topic whose part of the wasm is here.
fn topic_here(name: &str) -> Result<&'static Visual, JsValue> {
    parts::topic(name).map_err(|problem| error_of(&problem))
}

/// Mounts the element of a topic in a part of its shadow root.
///
/// # Errors
/// An `Error` when the topic is not known.
#[wasm_bindgen]
pub fn mount(
    root: HtmlElement,
    topic: &str,
    settings: JsValue,
    emit: Function,
) -> Result<Handle, JsValue> {
    let visual = topic_here(topic)?;
    let made: Rc<RefCell<Option<Model>>> = Rc::default();
    let keep = made.clone();
    let settings: Object = settings.unchecked_into();
    let mounted = leptos::mount::mount_to(root, move || {
        let model = Model::new(visual, emit);
        begin(model, &settings);
        keep.replace(Some(model));
        element(model)
    });
    let model = made.borrow_mut().take().ok_or(JsValue::NULL)?;
    Ok(Handle {
        model,
        unmount: RefCell::new(Some(Box::new(move || drop(mounted)))),
        painted: Cell::default(),
    })
}

/// Applies the settings of the page, the scenario first, so that attributes win.
fn begin(model: Model, settings: &Object) {
    let mut problem = None;
    let entries = Object::entries(settings);
    let mut pairs: Vec<(String, JsValue)> = entries
        .iter()
        .map(|pair| {
            let pair: Array = pair.unchecked_into();
            (pair.get(0).as_string().unwrap_or_default(), pair.get(1))
        })
        .collect();
    if let Some(at) = pairs.iter().position(|(name, _)| name == "scenario") {
        pairs.swap(0, at);
    }
    for (name, value) in pairs {
        let applied = if name == "scenario" {
            model.set_scenario(Some(&tree_of(&text_of(&value))))
        } else if name == "width" {
            model.set_width(value.as_f64().unwrap_or(0.0));
            Ok(())
        } else {
            model.set_attribute(&name, value.as_string().as_deref())
        };
        problem = problem.or(applied.err());
    }
    model.refresh();
    if let Some(problem) = problem {
        model.refuse(problem);
    }
}

fn element(model: Model) -> AnyView {
    let problem = move || {
        model.read(|s| match &s.problem {
            Some(p) if s.report.is_some() => {
                p.sentence(s.lang) + " " + words::get(s.lang, "ui.stale")
            }
            Some(p) => p.sentence(s.lang),
            None => String::new(),
        })
    };
    let caution = move || {
        let key = format!("caution.{}", model.visual.topic.name);
        model.read(|s| words::get(s.lang, &key).into())
    };
    let caution_word =
        tag("strong", "").says(move || model.read(|s| words::get(s.lang, "figure.caution").into()));
    let said = Place::new();
    speak_when_still(model, said);
    let class = move || {
        let (stale, asking) = model.read(|s| (s.problem.is_some(), s.is_asking()));
        let stale = if stale { " stale" } else { "" };
        let asking = if asking { " asking" } else { "" };
        ["axle", stale, asking].concat()
    };
    let refusal = tag("p", "problem")
        .fixed("id", "problem")
        .fixed("role", "alert")
        .says(problem);
    let caution = tag("p", "caution")
        .fixed("part", "caution")
        .with(caution_word.view())
        .word(" ")
        .with(tag("span", "").says(caution).view());
    tag("div", "")
        .live("class", class)
        // The page may be in a language that the catalogue has not.
        .live("lang", move || model.read(|s| s.lang.tag().into()))
        .on("keydown", move |event| undo_by_key(model, &event))
        .with(question(model))
        .with(figure(model))
        .some(playback(model))
        .with(toolbar(model))
        .with(controls(model))
        .with(refusal.view())
        .with(readouts(model))
        .some(compare(model))
        .with(chart(model))
        .with(caution.view())
        .with(
            tag("p", "unseen")
                .fixed("aria-live", "polite")
                .at(said)
                .view(),
        )
        .view()
}

/// Speaks the headline once the reader pauses, so that a moving slider does not talk without end.
fn speak_when_still(model: Model, said: Place) {
    let mut spoken: Option<String> = None;
    let mut timer: Option<TimeoutHandle> = None;
    follow(move || {
        let title = model.read(|s| s.title.clone());
        let before = spoken.replace(title.clone());
        // What an element says first is on the page already.
        if before.is_none() || before.as_ref() == Some(&title) {
            return;
        }
        if let Some(waiting) = timer {
            waiting.clear();
        }
        // A question was opened: what was said before must not answer it.
        if title.is_empty()
            && let Some(place) = said.get_untracked()
        {
            return place.set_text_content(None);
        }
        let speak = move || {
            if let Some(place) = said.try_get_untracked().flatten() {
                place.set_text_content(Some(&title));
            }
        };
        let pause = std::time::Duration::from_millis(700);
        timer = set_timeout_with_handle(speak, pause).ok();
    });
}

#[wasm_bindgen]
impl Handle {
    /// Sets an attribute (a text, or nothing) or the scenario (JSON, or nothing).
    pub fn set(&self, name: &str, value: JsValue) {
        apply(self.model, name, &value);
    }

    /// Draws figure and chart as wide as the element's place on the page, in CSS pixels.
    pub fn fit(&self, width: f64) {
        self.model.set_width(width);
    }

    /// The shown scenario as a plain object.
    #[must_use]
    pub fn scenario(&self) -> JsValue {
        to_js(&self.model.scenario().to_tree())
    }

    /// The last good answer with its working as a plain object; null before the first, and while a
    /// question is open: the reader commits a prediction first.
    #[must_use]
    pub fn answer(&self) -> JsValue {
        let report = self.model.peek(|s| s.report.clone());
        report.map_or(JsValue::NULL, |mut report| {
            report.write_working();
            to_js(&report.to_tree())
        })
    }

    /// The figure as a file: SVG text, the same bytes that the program writes for the scenario; null
    /// while a question is open.
    ///
    /// # Errors
    /// An `Error` when the kind is not known or the scenario has no answer.
    pub fn figure(&self, kind: &str) -> Result<JsValue, JsValue> {
        (taking()?.figure)(self, kind)
    }

    /// A file to save: `{ name, type, content }`; the content is a text, or data to be written as JSON.
    ///
    /// # Errors
    /// An `Error` when the kind is not known or the scenario has no answer.
    pub fn file(&self, kind: &str) -> Result<JsValue, JsValue> {
        (taking()?.file)(self, kind)
    }

    /// The query of a link to what is shown. The page's own view, units and language are given as their
    /// attributes, where the link need not name them.
    ///
    /// # Errors
    /// None once the part is here.
    pub fn link(
        &self,
        view: Option<String>,
        units: Option<String>,
        lang: Option<String>,
    ) -> Result<String, JsValue> {
        Ok((taking()?.link)(
            self,
            view.as_deref(),
            units.as_deref(),
            lang.as_deref(),
        ))
    }

    /// Code that puts the shown state into another page: `frame`, `module` or `classic`, with the
    /// address of the folder of the scripts and, where there is one, the hash of the script.
    ///
    /// # Errors
    /// None once the part is here.
    pub fn embed(&self, kind: &str, folder: &str, integrity: &str) -> Result<String, JsValue> {
        Ok((taking()?.embed)(self, kind, folder, integrity))
    }

    /// The derivation of a result: a step on each line, as LaTeX or as plain text.
    ///
    /// # Errors
    /// None once the part is here.
    pub fn working(&self, path: &str, form: &str) -> Result<String, JsValue> {
        Ok((taking()?.working)(self, path, form))
    }

    /// The numbers of the answer as CSV text or as a plain object; null while a question is open.
    ///
    /// # Errors
    /// An `Error` when the kind is not known.
    pub fn table(&self, kind: &str) -> Result<JsValue, JsValue> {
        (taking()?.table)(self, kind)
    }

    /// The chart as a table of HTML.
    ///
    /// # Errors
    /// None once the part is here.
    pub fn data(&self) -> Result<String, JsValue> {
        Ok((taking()?.data)(self))
    }

    /// Shows what waited for a part of the wasm that is here now.
    pub fn show_part(&self) {
        self.model.update(|_| ());
    }

    /// Takes the reader's last step back.
    pub fn undo(&self) {
        self.model.undo();
    }

    /// Does again what was taken back.
    pub fn redo(&self) {
        self.model.redo();
    }

    /// Returns every input to what the page set.
    pub fn reset(&self) {
        self.model.reset(None);
    }

    /// Pins the shown state to compare with, or takes the pin away.
    pub fn pin(&self, on: bool) {
        self.model.pin(on);
    }

    /// Takes the element's content out of the page.
    pub fn unmount(self) {
        if let Some(unmount) = self.unmount.borrow_mut().take() {
            unmount();
        }
    }
}

/// The part that writes what a reader takes along. The script brings it first.
fn taking() -> Result<&'static Take, JsValue> {
    parts::take().ok_or(JsValue::NULL)
}

pub(super) fn unknown_kind(field: &str, value: &str, allowed: &[&'static str]) -> JsValue {
    error_of(&Problem::UnknownWord {
        field: field.into(),
        value: value.chars().take(40).collect(),
        allowed: allowed.to_vec(),
    })
}

/// Solves a scenario, given as JSON: the answer with its working as a plain object.
///
/// # Errors
/// An `Error` whose `field`, `value` and `allowed` say what was wrong.
#[wasm_bindgen]
pub fn solve(topic: &str, scenario: &str) -> Result<JsValue, JsValue> {
    let found = topic_here(topic)?.topic;
    let answer = Scenario::from_tree(&tree_of(scenario))
        .and_then(|scenario| found.report(&scenario))
        .map_err(|p| error_of(&p))?;
    Ok(to_js(&answer.to_tree()))
}

/// Hands in the words of a language, the text of `words/TAG.txt`. Tells whether they are now here.
#[wasm_bindgen]
#[must_use]
pub fn add_words(tag: &str, text: &str) -> bool {
    words::add(Lang::from_tag(tag), text)
}

/// Takes a part of the wasm into use that the script has put beside this instance.
#[wasm_bindgen]
#[must_use]
pub fn add_part(name: &str) -> bool {
    parts::add(name)
}

/// JSON Schema of a topic's scenario and answer.
///
/// # Errors
/// An `Error` when the topic is not known.
#[wasm_bindgen]
pub fn schema(topic: &str) -> Result<JsValue, JsValue> {
    let topic = topic_here(topic)?.topic;
    let schema = parts::schema().ok_or(JsValue::NULL)?;
    Ok(to_js(&schema(topic)))
}

fn talk_here() -> Result<&'static super::talk::Asked, JsValue> {
    parts::talk().ok_or(JsValue::NULL)
}

/// Reads a talk, given as JSON: title, language, what each step shows.
///
/// # Errors
/// An `Error` whose `faults` tell every fault.
#[wasm_bindgen]
pub fn talk(json: &str) -> Result<JsValue, JsValue> {
    (talk_here()?.outline)(json)
}

/// One step of a talk with its numbers.
///
/// # Errors
/// An `Error` of the scenario or the talk.
#[wasm_bindgen]
pub fn talk_step(
    json: &str,
    at: usize,
    changed: &str,
    units: &str,
    theme: &str,
    width: f64,
) -> Result<JsValue, JsValue> {
    (talk_here()?.step)(json, at, changed, units, theme, width)
}

/// The scenario at a share of the way between two steps of a talk.
///
/// # Errors
/// An `Error` of the talk.
#[wasm_bindgen]
pub fn talk_between(json: &str, from: usize, to: usize, share: f64) -> Result<JsValue, JsValue> {
    (talk_here()?.between)(json, from, to, share)
}

/// Stops this instance on purpose, so that the page's recovery can be tested.
#[wasm_bindgen]
#[allow(clippy::panic, reason = "the panic is the purpose")]
pub fn provoke_trap() {
    panic!("provoked");
}

/// Names the function that is told of a panic before the instance stops.
#[wasm_bindgen]
pub fn set_panic_callback(told: Function) {
    std::panic::set_hook(Box::new(move |info| {
        let reason = info.payload_as_str().unwrap_or("panic");
        let _ = told.call1(&JsValue::NULL, &reason.into());
    }));
}
