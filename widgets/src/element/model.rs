//! Changes of an element's state, and what the page is told of them.

use super::history::History;
use super::quiz::Quiz;
use super::state::{Show, State};
use crate::visual::{View, Visual, Work};
use axlewright_core::talk::{Part, Parts};
use axlewright_core::topic::Report;
use axlewright_core::units::System;
use axlewright_core::words::{self, Lang};
use axlewright_core::{Problem, Scenario, Tree};
use js_sys::{Array, Function, Object};
use leptos::prelude::*;
use leptos::reactive::graph::Source;
use serde::Serialize;
use wasm_bindgen::{JsCast, JsValue};

/// Plain objects and arrays, as `JSON.stringify` and the page's code expect them.
pub(super) fn to_js(tree: &Tree) -> JsValue {
    tree.serialize(&serde_wasm_bindgen::Serializer::json_compatible())
        .unwrap_or(JsValue::NULL)
}

/// Data of the page, which the script hands over as JSON. What is no JSON becomes nothing.
///
/// A reader through serde would bring all its sentences about wrong types: 5 kB more to fetch.
pub(super) fn tree_of(json: &str) -> Tree {
    js_sys::JSON::parse(json).map_or(Tree::Null, |value| plain(&value))
}

/// The script lets nothing through that is nested deeper than a scenario is.
fn plain(value: &JsValue) -> Tree {
    if let Some(flag) = value.as_bool() {
        return Tree::Bool(flag);
    }
    if let Some(number) = value.as_f64() {
        return Tree::Number(number);
    }
    if let Some(text) = value.as_string() {
        return Tree::Text(text);
    }
    if Array::is_array(value) {
        let list: &Array = value.unchecked_ref();
        return Tree::List(list.iter().map(|part| plain(&part)).collect());
    }
    if !value.is_object() {
        return Tree::Null;
    }
    let entries = Object::entries(value.unchecked_ref());
    let pair = |pair: JsValue| {
        let pair: Array = pair.unchecked_into();
        (
            pair.get(0).as_string().unwrap_or_default(),
            plain(&pair.get(1)),
        )
    };
    Tree::Map(entries.iter().map(pair).collect())
}

/// Time in a frame for work that takes longer than one \[ms\].
const WORK_MS: f64 = 7.0;

/// One element. Copies share the same state.
#[derive(Clone, Copy)]
pub(super) struct Model {
    pub(super) visual: &'static Visual,
    pub(super) state: RwSignal<State>,
    /// Stirs when there are other controls, or the same in other units.
    pub(super) arrangement: RwSignal<u32>,
    emit: StoredValue<Function, LocalStorage>,
}

impl Model {
    pub(super) fn new(visual: &'static Visual, emit: Function) -> Self {
        Self {
            visual,
            state: RwSignal::new(State::new(visual)),
            arrangement: RwSignal::new(0),
            emit: StoredValue::new_local(emit),
        }
    }

    /// Reads the state; what reads it follows it.
    pub(super) fn read<T>(&self, read: impl FnOnce(&State) -> T) -> T {
        self.state.with(read)
    }

    /// Reads the state once.
    pub(super) fn peek<T>(&self, read: impl FnOnce(&State) -> T) -> T {
        self.state.with_untracked(read)
    }

    /// Changes the state; what reads it follows.
    ///
    /// Each reader runs again and enrols again. One that has gone, with a result that was laid out anew,
    /// would stay on the list for ever: the list is emptied.
    pub(super) fn update(&self, change: impl FnOnce(&mut State)) {
        self.state.update(change);
        self.state.clear_subscribers();
    }

    pub(super) fn tell(&self, event: &str, detail: &Tree) {
        let detail = to_js(detail);
        self.emit.with_value(|emit| {
            // A listener that throws is the page's affair, not ours.
            let _ = emit.call2(&JsValue::NULL, &event.into(), &detail);
        });
    }

    /// Changes how things are shown, and draws them so.
    pub(super) fn restyle(&self, change: &dyn Fn(&mut State)) {
        let visual = self.visual;
        self.update(|state| {
            change(state);
            state.redraw(visual);
        });
    }

    /// Takes the width of the element's place on the page, in CSS pixels; an element that is not laid
    /// out has none, and keeps the last one.
    pub(super) fn set_width(&self, width: f64) {
        if width > 0.0 && self.peek(|state| (state.width - width).abs() > 0.5) {
            self.restyle(&|state| state.width = width);
        }
    }

    /// Applies an attribute set by the page. Texts of inputs are read as a scenario's are; an empty one
    /// takes the input away, as a link does with what its reader had taken away.
    pub(super) fn set_attribute(&self, name: &str, text: Option<&str>) -> Result<(), Problem> {
        match name {
            "units" => {
                let system = if text == Some("us") {
                    System::Us
                } else {
                    System::Si
                };
                self.restyle(&|state| state.system = system);
                self.rearrange();
            }
            "lang" => {
                let wanted = Lang::from_tag(text.unwrap_or("en"));
                let lang = if words::has(wanted) {
                    wanted
                } else {
                    Lang::English
                };
                self.restyle(&|state| state.lang = lang);
            }
            "show" => {
                let show = text.map_or(Show::ALL, Show::from_words);
                self.restyle(&|state| state.show = show);
            }
            "view" => {
                let view = self.visual.view(text.unwrap_or(""))?;
                if view != View::Chart {
                    self.restyle(&|state| state.view = view);
                }
            }
            "reveal" => {
                let parts = text.map_or(Ok(Parts::FIGURE), Parts::read);
                let parts = parts.map_err(|word| Problem::UnknownWord {
                    field: "reveal".into(),
                    value: word.chars().take(40).collect(),
                    allowed: Part::ALL.map(Part::word).to_vec(),
                })?;
                self.restyle(&|state| state.parts = parts);
            }
            "controls" => {
                let names = text.map(|text| text.split(' ').map(str::to_owned).collect());
                self.update(|state| state.controls = names);
                self.rearrange();
            }
            "question" => self.set_question(text)?,
            _ => {
                if let Some(input) = self.visual.topic.input_of_attribute(name) {
                    let change = |scenario: &Scenario| {
                        let mut next = scenario.clone();
                        match text {
                            None | Some("") => next.unset(input.path),
                            Some(text) => next.set(input.path, text)?,
                        }
                        Ok(next)
                    };
                    let author = self.peek(|state| change(&state.author))?;
                    let current = self.peek(|state| change(&state.current))?;
                    self.put(author, current);
                }
            }
        }
        Ok(())
    }

    fn rearrange(&self) {
        self.arrangement
            .set(self.arrangement.get_untracked().wrapping_add(1));
    }

    fn put(&self, author: Scenario, current: Scenario) {
        self.update(|state| {
            state.history.clear();
            state.author = author;
            state.current = current;
        });
    }

    /// Takes a whole scenario from the page.
    pub(super) fn set_scenario(&self, tree: Option<&Tree>) -> Result<(), Problem> {
        let scenario = match tree {
            None => Scenario::default(),
            Some(Tree::Map(entries)) if entries.is_empty() => Scenario::default(),
            Some(tree) => Scenario::from_tree(tree)?,
        };
        self.put(scenario.clone(), scenario);
        Ok(())
    }

    /// A scenario completed with the example where it names no vehicle of its own.
    pub(super) fn complete(&self, scenario: &Scenario) -> Scenario {
        self.visual.topic.completed(scenario).unwrap_or_default()
    }

    /// The shown scenario.
    pub(super) fn scenario(&self) -> Scenario {
        self.peek(|state| self.complete(&state.current))
    }

    /// Solves a scenario; the working is written only while the reader looks at one.
    pub(super) fn solve(&self, scenario: &Scenario) -> Result<Report, Problem> {
        let topic = self.visual.topic;
        if self.peek(|state| state.opened.is_empty()) {
            topic.brief(scenario)
        } else {
            topic.report(scenario)
        }
    }

    /// Solves what is shown. Used when the page changed something: no `axle-change` leaves. Where the
    /// page asks a question, that is asked instead.
    pub(super) fn refresh(&self) {
        if self.peek(|state| state.quiz.is_some()) {
            return self.ask();
        }
        match self.solve(&self.scenario()) {
            Ok(report) => self.accept(report, None),
            Err(problem) => self.refuse(problem),
        }
    }

    pub(super) fn accept(&self, report: Report, current: Option<Scenario>) {
        let answer = report.numbers_tree();
        let visual = self.visual;
        self.update(|state| {
            if let Some(current) = current {
                state.current = current;
            }
            state.problem = None;
            state.ahead = false;
            state.report = Some(report);
            state.redraw(visual);
        });
        self.tell("axle-answer", &answer);
    }

    /// Shows a refusal and tells the page; the last good answer stays.
    pub(super) fn refuse(&self, problem: Problem) {
        self.tell_problem(&problem);
        self.update(|state| {
            state.ahead = false;
            state.problem = Some(problem);
        });
    }

    /// Tells the page of a refusal.
    pub(super) fn tell_problem(&self, problem: &Problem) {
        let lang = self.peek(|state| state.lang);
        let mut detail = Tree::map();
        detail.set("field", Tree::text(problem.field()));
        detail.set("value", Tree::text(problem.value()));
        detail.set("allowed", Tree::text(problem.allowed(lang)));
        detail.set("message", Tree::text(problem.sentence(lang)));
        self.tell("axle-problem", &detail);
    }

    /// The reader changes an input, by typing in a language or in another way. A refused change leaves
    /// what is shown as it is.
    pub(super) fn change(&self, path: &'static str, text: &str, typed: Option<Lang>) {
        self.change_in_step(path, text, typed, path);
    }

    /// The same, where several inputs that move together are one step to take back, under one name.
    pub(super) fn change_in_step(
        &self,
        path: &'static str,
        text: &str,
        typed: Option<Lang>,
        step: &'static str,
    ) {
        // From what is shown: the example's vehicle may be there without having been given.
        let mut next = self.scenario();
        let set = match typed {
            _ if text.is_empty() => {
                next.unset(path);
                Ok(())
            }
            Some(lang) => next.set_typed(path, text, lang),
            None => next.set(path, text),
        };
        if let Err(problem) = set {
            return self.refuse(problem);
        }
        // Another vehicle or surface comes with its own values: those of the old one go.
        let goes = |known: &str| match path {
            "vehicle.base" => known.starts_with("vehicle.") && known != path,
            "surface.kind" => known.starts_with("surface.friction"),
            _ => false,
        };
        let old: Vec<&'static str> = next.entries().map(|(known, _)| known).collect();
        for known in old.into_iter().filter(|known| goes(known)) {
            next.unset(known);
        }
        self.show_next(next, Some(step));
    }

    /// Shows another moment of the run: nothing is solved again, only the figure is drawn. Once the
    /// reader lets go, the chart follows and the page is told.
    pub(super) fn show_time(&self, path: &'static str, time_s: f64, ended: bool) {
        let visual = self.visual;
        self.update(|state| {
            // Within the range of the input, so it is not refused.
            let _ = state.current.set_number(path, time_s);
            if let Some(report) = &mut state.report {
                let _ = report.scenario.set_number(path, time_s);
            }
            if ended {
                state.redraw(visual);
            } else {
                state.redraw_figure(visual);
            }
        });
        if ended {
            self.tell("axle-change", &self.scenario().to_tree());
        }
    }

    /// Returns one input, or all of them, to what the page set; after a question, to what it asked.
    pub(super) fn reset(&self, path: Option<&'static str>) {
        let author = self.peek(|state| {
            let quiz = state.quiz.as_ref();
            let answered = quiz.and_then(Quiz::answered);
            answered.unwrap_or(&state.author).clone()
        });
        let next = match path {
            None => author,
            Some(path) => {
                let mut next = self.peek(|state| state.current.clone());
                match author.text(path).map(|text| next.set(path, text)) {
                    Some(Ok(())) => {}
                    _ => next.unset(path),
                }
                next
            }
        };
        self.show_next(next, None);
    }

    /// Takes the last step back.
    pub(super) fn undo(&self) {
        self.travel(History::undo);
    }

    /// Does again what was taken back.
    pub(super) fn redo(&self) {
        self.travel(History::redo);
    }

    fn travel(&self, step: fn(&mut History, &Scenario) -> Option<Scenario>) {
        if self.peek(State::is_asking) {
            return; // a state of before would show the answer
        }
        let found = self
            .state
            .try_update_untracked(|state| step(&mut state.history, &state.current));
        // Every state of the history had an answer.
        if let Some(next) = found.flatten() {
            self.show(next);
        }
    }

    /// Pins the shown state as a ghost to compare with, or takes the pin away.
    pub(super) fn pin(&self, on: bool) {
        self.restyle(&|state| state.pinned = state.report.clone().filter(|_| on));
    }

    /// Shows another state if it has an answer, and remembers the one before.
    fn show_next(&self, next: Scenario, path: Option<&'static str>) {
        if self.peek(State::is_asking) {
            return;
        }
        let before = self.peek(|state| state.current.clone());
        if self.show(next) {
            let now_ms = js_sys::Date::now();
            self.update(|state| state.history.record(&before, path, now_ms));
        }
    }

    /// Shows another state and tells the page; whether it has an answer.
    fn show(&self, next: Scenario) -> bool {
        let complete = self.complete(&next);
        if let Some(work) = self.visual.work {
            match work(&complete) {
                Err(problem) => {
                    self.refuse(problem);
                    return false;
                }
                Ok(false) => {
                    self.tell("axle-change", &complete.to_tree());
                    self.update(|state| {
                        state.current = next;
                        state.ahead = true;
                    });
                    self.work_on(work);
                    return true;
                }
                Ok(true) => {}
            }
        }
        match self.solve(&complete) {
            Ok(report) => {
                self.tell("axle-change", &complete.to_tree());
                self.accept(report, Some(next));
                true
            }
            Err(problem) => {
                self.refuse(problem);
                false
            }
        }
    }

    /// Works on what is to be shown, a little in every frame, and shows it once it is there. What is
    /// asked for meanwhile takes its place.
    fn work_on(&self, work: Work) {
        let model = *self;
        if self
            .state
            .try_update_untracked(|state| std::mem::replace(&mut state.working, true))
            != Some(false)
        {
            return;
        }
        request_animation_frame(move || model.work_in_frame(work));
    }

    fn work_in_frame(&self, work: Work) {
        let Some(current) = self.state.try_with_untracked(|state| state.current.clone()) else {
            return; // the element is gone
        };
        let complete = self.complete(&current);
        let until_ms = js_sys::Date::now() + WORK_MS;
        while js_sys::Date::now() < until_ms {
            match work(&complete) {
                Ok(false) => {}
                Ok(true) => {
                    self.work_done();
                    return match self.solve(&complete) {
                        Ok(report) => self.accept(report, None),
                        Err(problem) => self.refuse(problem),
                    };
                }
                Err(problem) => {
                    self.work_done();
                    return self.refuse(problem);
                }
            }
        }
        let model = *self;
        request_animation_frame(move || model.work_in_frame(work));
    }

    fn work_done(&self) {
        let _ = self
            .state
            .try_update_untracked(|state| state.working = false);
    }
}
