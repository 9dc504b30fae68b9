//! What an element shows: settings, scenario, last good answer, refusal, and the drawings made of
//! them.

use super::history::History;
use super::quiz::Quiz;
use crate::figure::number::within;
use crate::figure::{Chart, Grip, NARROW, SvgOptions, Theme, WIDE, svg};
use crate::visual::{Drawing, Look, View, Visual};
use axlewright_core::talk::Parts;
use axlewright_core::topic::Report;
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_core::{Problem, Scenario};

/// Which parts an element shows.
#[derive(Clone, Copy)]
pub(super) struct Show {
    pub(super) figure: bool,
    pub(super) chart: bool,
    pub(super) readouts: bool,
    pub(super) working: bool,
    pub(super) tools: bool,
    pub(super) data: bool,
}

impl Show {
    pub(super) const ALL: Self = Self {
        figure: true,
        chart: true,
        readouts: true,
        working: true,
        tools: true,
        data: true,
    };

    pub(super) fn from_words(text: &str) -> Self {
        let has = |word: &str| text.split(' ').any(|given| given == word);
        Self {
            figure: has("figure"),
            chart: has("chart"),
            readouts: has("readouts"),
            working: has("working"),
            tools: has("tools"),
            data: has("data"),
        }
    }
}

/// The state of one element.
pub(super) struct State {
    /// What the page set: attributes and the scenario property. "Reset all" returns to it.
    pub(super) author: Scenario,
    /// What is shown.
    pub(super) current: Scenario,
    /// What the reader did before, and took back.
    pub(super) history: History,
    /// The state that the reader pinned, and its answer.
    pub(super) pinned: Option<Report>,
    /// The last good answer.
    pub(super) report: Option<Report>,
    /// What was refused.
    pub(super) problem: Option<Problem>,
    pub(super) lang: Lang,
    pub(super) system: System,
    pub(super) show: Show,
    /// The view that the figure shows; the chart has its own place.
    pub(super) view: View,
    /// The parts of the figure that are drawn.
    pub(super) parts: Parts,
    /// Attribute names of the controls; `None` for the topic's own.
    pub(super) controls: Option<Vec<String>>,
    /// Width of the element in CSS pixels.
    pub(super) width: f64,
    /// Paths of the results that are open.
    pub(super) opened: Vec<String>,
    /// The figure as SVG, and its finding.
    pub(super) svg: String,
    pub(super) title: String,
    /// What can be taken hold of in the figure, and the figure's width and height.
    pub(super) grips: Vec<Grip>,
    pub(super) size: (f64, f64),
    /// The chart, and how many there have been.
    pub(super) chart: Option<Chart>,
    pub(super) charts: u32,
    /// Whether an answer is being worked on.
    pub(super) working: bool,
    /// Whether what was asked for has no answer yet, because it is worked on.
    pub(super) ahead: bool,
    /// The question that the page asks, if it asks one.
    pub(super) quiz: Option<Quiz>,
}

impl State {
    pub(super) fn new(visual: &Visual) -> Self {
        Self {
            author: Scenario::default(),
            current: Scenario::default(),
            history: History::default(),
            pinned: None,
            report: None,
            problem: None,
            lang: Lang::English,
            system: System::Si,
            show: Show::ALL,
            view: visual.views[0],
            parts: Parts::FIGURE,
            controls: None,
            width: 720.0,
            opened: Vec::new(),
            svg: String::new(),
            title: String::new(),
            grips: Vec::new(),
            size: (0.0, 0.0),
            chart: None,
            charts: 0,
            working: false,
            ahead: false,
            quiz: None,
        }
    }

    /// Whether a question is open: then nothing that shows its answer may be there.
    pub(super) fn is_asking(&self) -> bool {
        self.quiz.as_ref().is_some_and(Quiz::is_open)
    }

    /// Draws figure and chart of the last good answer. A view that has no picture for this answer
    /// keeps the last one.
    pub(super) fn redraw(&mut self, visual: &Visual) {
        self.redraw_figure(visual);
        if let Some(Drawing::Chart(chart)) = self.drawn(visual, View::Chart) {
            self.chart = Some(chart);
            self.charts = self.charts.wrapping_add(1);
        }
    }

    /// Draws the figure alone.
    pub(super) fn redraw_figure(&mut self, visual: &Visual) {
        let Some(Drawing::Scene(scene)) = self.drawn(visual, self.view) else {
            return; // a chart has its own place
        };
        self.svg = svg(
            &scene,
            &SvgOptions {
                prefix: "figure",
                theme: Theme::Live,
                ..SvgOptions::default()
            },
        );
        self.title = scene.title;
        self.size = (scene.width, scene.height);
        self.grips = scene.grips;
    }

    fn drawn(&self, visual: &Visual, view: View) -> Option<Drawing> {
        let report = self.report.as_ref()?;
        // Text of 13 units must not fall below 11 px on screen; a wide element gets the full drawing.
        let look = Look {
            width: within(self.width, NARROW, WIDE),
            lang: self.lang,
            system: self.system,
            pinned: self.pinned.as_ref().map(|report| &report.scenario),
            parts: self.parts,
            caution: false,
        };
        visual.draw(&report.scenario, view, &look).ok()
    }

    /// Paths of the inputs that the reader may move.
    pub(super) fn control_paths(&self, visual: &Visual) -> Vec<&'static str> {
        match &self.controls {
            None => visual.topic.controls.to_vec(),
            Some(names) => names
                .iter()
                .filter_map(|name| {
                    visual
                        .topic
                        .input_of_attribute(name)
                        .map(|input| input.path)
                })
                .collect(),
        }
    }

    /// Whether the reader may change an input in the figure: the page names the controls, or names none.
    pub(super) fn offers(&self, visual: &Visual, path: &str) -> bool {
        self.controls.is_none() || self.control_paths(visual).contains(&path)
    }

    /// Value of an input as it is shown, SI. While its answer is worked on, a slider stays where the reader
    /// has put it.
    pub(super) fn number(&self, path: &str) -> Option<f64> {
        if self.ahead
            && let Some(number) = self.current.number(path)
        {
            return Some(number);
        }
        self.report.as_ref()?.scenario.number(path)
    }
}
