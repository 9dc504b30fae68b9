//! What every element knows of question mode: whether a question is open, and where its form stands. The
//! rest (`question.rs`) is a part of the wasm that is fetched when a page asks a question.

use super::erase::{Place, follow, tag};
use super::model::Model;
use super::parts;
use axlewright_core::question::{Asked, Setting, Verdict};
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_core::{Problem, Scenario};
use leptos::prelude::*;
use web_sys::Event;

/// The part of question mode.
pub(crate) struct Mode {
    /// Takes the attribute `question`; without it there is no question.
    pub(super) set: fn(&Model, Option<&str>) -> Result<(), Problem>,
    /// Asks the question, unless it is asked already of what the page has set.
    pub(super) ask: fn(&Model),
    /// Writes the form, unless it stands there as it was last written.
    pub(super) write: fn(&Model, Place, &mut Written),
    /// Takes what the reader commits.
    pub(super) submit: Hear,
    /// Takes what the reader presses.
    pub(super) press: Hear,
    /// Says what a moved handle of a line says.
    pub(super) drawn: Hear,
}

/// Takes an event of the form.
type Hear = fn(&Model, Place, &Event);

/// Which question was written last, how, and for which width where that counts.
pub(super) type Written = Option<(u32, Lang, System, u32)>;

/// A question on the page, open or answered.
pub(super) struct Quiz {
    pub(super) setting: Setting,
    pub(super) asked: Option<Asked>,
    /// What the page had set when it was asked.
    pub(super) base: Scenario,
    /// What the reader typed or chose, kept while the form is written anew.
    pub(super) typed: String,
    pub(super) refused: Option<Problem>,
    pub(super) hinted: bool,
    pub(super) verdict: Option<Verdict>,
    /// Counts changes, so that the form is written anew only for one of its own.
    pub(super) turn: u32,
    /// Where the focus goes after the next change: a selector, or nothing.
    pub(super) focus: &'static str,
}

impl Quiz {
    pub(super) fn is_open(&self) -> bool {
        self.verdict.is_none()
    }

    /// The scenario that shows the answer, once there is a verdict.
    pub(super) fn answered(&self) -> Option<&Scenario> {
        let asked = self.asked.as_ref()?;
        self.verdict.as_ref().map(|_| &asked.solved)
    }
}

impl Model {
    /// Takes the attribute `question`. The script brings the part first.
    pub(super) fn set_question(&self, text: Option<&str>) -> Result<(), Problem> {
        parts::question().map_or(Ok(()), |mode| (mode.set)(self, text))
    }

    /// Asks the question.
    pub(super) fn ask(&self) {
        if let Some(mode) = parts::question() {
            (mode.ask)(self);
        }
    }
}

/// The form of the question.
pub(super) fn question(model: Model) -> AnyView {
    let place = Place::new();
    let mut written = None;
    follow(move || {
        let _ = place.get(); // again once it stands
        model.read(|_| ());
        if let Some(mode) = parts::question() {
            (mode.write)(&model, place, &mut written);
        }
    });
    let heard = move |event: &Event, take: fn(&Mode) -> Hear| {
        if let Some(mode) = parts::question() {
            take(mode)(&model, place, event);
        }
    };
    tag("form", "question")
        .fixed("part", "question")
        .fixed("novalidate", "")
        .at(place)
        .on("submit", move |event| heard(&event, |mode| mode.submit))
        .on("click", move |event| heard(&event, |mode| mode.press))
        .on("input", move |event| heard(&event, |mode| mode.drawn))
        .view()
}
