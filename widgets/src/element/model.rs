//! Changes of an element's state, and what the page is told of them.

use super::state::{Show, State};
use crate::visual::{View, Visual};
use axlewright_core::topic::Report;
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_core::{Problem, Scenario, Tree};
use js_sys::Function;
use leptos::prelude::*;
use serde::Serialize;
use wasm_bindgen::JsValue;

/// Plain objects and arrays, as `JSON.stringify` and the page's code expect them.
pub(super) fn to_js(tree: &Tree) -> JsValue {
    tree.serialize(&serde_wasm_bindgen::Serializer::json_compatible())
        .unwrap_or(JsValue::NULL)
}

/// Data of the page: a plain value, or JSON. What is neither becomes nothing.
pub(super) fn tree_of(value: &JsValue) -> Tree {
    let parsed = value
        .as_string()
        .map(|text| js_sys::JSON::parse(&text).unwrap_or(JsValue::NULL));
    serde_wasm_bindgen::from_value(parsed.unwrap_or_else(|| value.clone())).unwrap_or(Tree::Null)
}

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

    fn tell(&self, event: &str, detail: &Tree) {
        let detail = to_js(detail);
        self.emit.with_value(|emit| {
            // A listener that throws is the page's affair, not ours.
            let _ = emit.call2(&JsValue::NULL, &event.into(), &detail);
        });
    }

    /// Changes how things are shown, and draws them so.
    pub(super) fn restyle(&self, change: &dyn Fn(&mut State)) {
        let visual = self.visual;
        self.state.update(|state| {
            change(state);
            state.redraw(visual);
        });
    }

    /// Applies an attribute set by the page. Texts of inputs are read as a scenario's are.
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
                let lang = Lang::from_tag(text.unwrap_or("en"));
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
            "controls" => {
                let names = text.map(|text| text.split(' ').map(str::to_owned).collect());
                self.state.update(|state| state.controls = names);
                self.rearrange();
            }
            _ => {
                if let Some(input) = self.visual.topic.input_of_attribute(name) {
                    let change = |scenario: &Scenario| {
                        let mut next = scenario.clone();
                        match text {
                            Some(text) => next.set(input.path, text)?,
                            None => next.unset(input.path),
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
        self.state.update(|state| {
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
    fn solve(&self, scenario: &Scenario) -> Result<Report, Problem> {
        let topic = self.visual.topic;
        if self.peek(|state| state.opened.is_empty()) {
            topic.brief(scenario)
        } else {
            topic.report(scenario)
        }
    }

    /// Solves what is shown. Used when the page changed something: no `axle-change` leaves.
    pub(super) fn refresh(&self) {
        match self.solve(&self.scenario()) {
            Ok(report) => self.accept(report, None),
            Err(problem) => self.refuse(problem),
        }
    }

    fn accept(&self, report: Report, current: Option<Scenario>) {
        let answer = report.numbers_tree();
        let visual = self.visual;
        self.state.update(|state| {
            if let Some(current) = current {
                state.current = current;
            }
            state.problem = None;
            state.report = Some(report);
            state.redraw(visual);
        });
        self.tell("axle-answer", &answer);
    }

    /// Shows a refusal and tells the page; the last good answer stays.
    pub(super) fn refuse(&self, problem: Problem) {
        let lang = self.peek(|state| state.lang);
        let mut detail = Tree::map();
        detail.set("field", Tree::text(problem.field()));
        detail.set("value", Tree::text(problem.value()));
        detail.set("allowed", Tree::text(problem.allowed(lang)));
        detail.set("message", Tree::text(problem.sentence(lang)));
        self.state.update(|state| state.problem = Some(problem));
        self.tell("axle-problem", &detail);
    }

    /// The reader changes an input. A refused change leaves what is shown as it is.
    pub(super) fn change(&self, path: &'static str, text: &str) {
        // From what is shown: the example's vehicle may be there without having been given.
        let mut next = self.scenario();
        if text.is_empty() {
            next.unset(path);
        } else if let Err(problem) = next.set(path, text) {
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
        self.show_next(next);
    }

    /// Shows another moment of the run: nothing is solved again, only the figure is drawn. Once the
    /// reader lets go, the chart follows and the page is told.
    pub(super) fn show_time(&self, path: &'static str, time_s: f64, ended: bool) {
        let visual = self.visual;
        self.state.update(|state| {
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

    /// Returns one input, or all of them, to what the page set.
    pub(super) fn reset(&self, path: Option<&'static str>) {
        let author = self.peek(|state| state.author.clone());
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
        self.show_next(next);
    }

    fn show_next(&self, next: Scenario) {
        let complete = self.complete(&next);
        match self.solve(&complete) {
            Ok(report) => {
                self.tell("axle-change", &complete.to_tree());
                self.accept(report, Some(next));
            }
            Err(problem) => self.refuse(problem),
        }
    }
}
