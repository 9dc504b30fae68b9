//! Play, pause, step and scrub a run. Nothing starts by itself. Each picture is the run at its moment,
//! computed again; where the reader asks for less motion, still pictures follow each other once a
//! second.

use super::erase::{tag, target};
use super::model::Model;
use axlewright_core::format;
use axlewright_core::words;
use leptos::prelude::*;
use web_sys::HtmlInputElement;

/// Length of a step \[s\].
const STEP_S: f64 = 0.05;
/// Pause between two pictures where less motion is asked for \[ms\].
const STILL_MS: f64 = 1000.0;

/// What is played: an input that is a time.
#[derive(Clone, Copy)]
struct Player {
    model: Model,
    path: &'static str,
    playing: RwSignal<bool>,
}

/// The row of buttons and the slider, where the topic has a run.
pub(super) fn playback(model: Model) -> Option<AnyView> {
    let player = Player {
        model,
        path: model.visual.playback?,
        playing: RwSignal::new(false),
    };
    let says = move |key: &'static str| move || model.read(|s| words::get(s.lang, key).to_owned());
    let play = move || {
        let key = if player.playing.get() {
            "ui.pause"
        } else {
            "ui.play"
        };
        model.read(|s| words::get(s.lang, key).to_owned())
    };
    let step = move |by: f64| {
        move |_| {
            player.playing.set(false);
            player.go(player.now() + by, true);
        }
    };
    let button = || tag("button", "").fixed("type", "button");
    let slide = move |ended: bool| {
        move |event| {
            if let Some(field) = target::<HtmlInputElement>(&event) {
                player.playing.set(false);
                player.go(field.value_as_number(), ended);
            }
        }
    };
    let shown = move || {
        let lang = model.read(|s| s.lang);
        format::with_unit(format::fixed(player.shown(), 2, lang), "s")
    };
    let row = [
        button().on("click", move |_| player.toggle()).says(play),
        button()
            .live("aria-label", says("ui.step_back"))
            .on("click", step(-STEP_S))
            .word("−\u{2009}0.05\u{2009}s"),
        button()
            .live("aria-label", says("ui.step_forward"))
            .on("click", step(STEP_S))
            .word("+\u{2009}0.05\u{2009}s"),
        tag("input", "")
            .fixed("type", "range")
            .fixed("id", "playback-time")
            .fixed("min", "0")
            .live("max", move || format::plain(player.end()))
            .fixed("step", "0.05")
            .live("aria-label", move || {
                let key = ["input.", player.path].concat();
                model.read(|s| words::get(s.lang, &key).to_owned())
            })
            .live("aria-valuetext", shown)
            .value(move || format::plain(player.shown()))
            .on("input", slide(false))
            .on("change", slide(true)),
        tag("output", "").says(shown),
    ];
    Some(
        row.into_iter()
            .fold(
                tag("div", "playback").fixed("part", "playback"),
                |all, part| all.with(part.view()),
            )
            .view(),
    )
}

impl Player {
    /// The time shown; what reads it follows it.
    fn shown(self) -> f64 {
        self.model.read(|s| s.number(self.path)).unwrap_or(0.0)
    }

    /// The time shown, once; none after the element has gone.
    fn peek(self) -> Option<f64> {
        let state = self.model.state.try_with_untracked(|s| s.number(self.path));
        state.flatten()
    }

    fn now(self) -> f64 {
        self.peek().unwrap_or(0.0)
    }

    /// Where the run that is shown has shown all: some way after what it is played for.
    fn end(self) -> f64 {
        let far_s = self.model.state.with(|s| {
            let report = s.report.as_ref()?;
            let layout = report.scenario.layout().name();
            report.number(&self.model.visual.playback_to.replace('*', layout))
        });
        axlewright_core::math::round(1.25 * far_s.unwrap_or(8.0)).max(1.0)
    }

    fn go(self, time_s: f64, ended: bool) {
        let end_s = untrack(|| self.end());
        let time_s = time_s.max(0.0).min(end_s);
        // A round number of hundredths reads and links well.
        let time_s = axlewright_core::math::round(100.0 * time_s) / 100.0;
        self.model.show_time(self.path, time_s, ended);
    }

    fn toggle(self) {
        let begin = !self.playing.get_untracked();
        self.playing.set(begin);
        if begin {
            // From the beginning where the run has ended, or where no time was shown yet.
            if self.peek().is_none() || self.now() >= untrack(|| self.end()) - 0.005 {
                self.go(0.0, false);
            }
            self.frame(js_sys::Date::now(), self.now());
        } else {
            self.go(self.now(), true);
        }
    }

    /// Shows the next picture in the next frame, and goes on while it plays.
    fn frame(self, began_ms: f64, began_s: f64) {
        let least_ms = if asks_for_less_motion() {
            STILL_MS
        } else {
            0.0
        };
        let mut last_ms = began_ms;
        self.wait(Box::new(move || {
            let now_ms = js_sys::Date::now();
            if now_ms - last_ms < least_ms {
                return true;
            }
            last_ms = now_ms;
            let time_s = began_s + (now_ms - began_ms) / 1000.0;
            let goes_on = time_s < untrack(|| self.end());
            self.go(time_s, !goes_on);
            goes_on
        }));
    }

    /// Calls an act in each frame until it is done, the run is paused or the element has gone.
    fn wait(self, mut act: Box<dyn FnMut() -> bool>) {
        request_animation_frame(move || {
            if self.playing.try_get_untracked() != Some(true) || self.peek().is_none() {
                return;
            }
            if act() {
                self.wait(act);
            } else {
                self.playing.set(false);
            }
        });
    }
}

fn asks_for_less_motion() -> bool {
    let query = window().match_media("(prefers-reduced-motion: reduce)");
    query.ok().flatten().is_some_and(|list| list.matches())
}
