//! What an element shows: settings, scenario, last good answer, refusal, and the drawings made of
//! them.

use super::motors::Axles;
use crate::figure::number::within;
use crate::figure::{Chart, NARROW, SvgOptions, Theme, WIDE};
use crate::visual::{Drawing, Look, View, Visual};
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
}

impl Show {
    pub(super) const ALL: Self = Self {
        figure: true,
        chart: true,
        readouts: true,
        working: true,
    };

    pub(super) fn from_words(text: &str) -> Self {
        let has = |word: &str| text.split(' ').any(|given| given == word);
        Self {
            figure: has("figure"),
            chart: has("chart"),
            readouts: has("readouts"),
            working: has("working"),
        }
    }
}

/// The state of one element.
pub(super) struct State {
    /// What the page set: attributes and the scenario property. "Reset all" returns to it.
    pub(super) author: Scenario,
    /// What is shown.
    pub(super) current: Scenario,
    /// The last good answer.
    pub(super) report: Option<Report>,
    /// What was refused.
    pub(super) problem: Option<Problem>,
    pub(super) lang: Lang,
    pub(super) system: System,
    pub(super) show: Show,
    /// The view that the figure shows; the chart has its own place.
    pub(super) view: View,
    /// Attribute names of the controls; `None` for the topic's own.
    pub(super) controls: Option<Vec<String>>,
    /// Width of the element in CSS pixels.
    pub(super) width: f64,
    /// Paths of the results that are open.
    pub(super) opened: Vec<String>,
    /// The figure as SVG, and its finding.
    pub(super) svg: String,
    pub(super) title: String,
    /// The chart.
    pub(super) chart: Option<Chart>,
    /// Where the axles lie in the figure, where motors may be placed in it.
    pub(super) axles: Option<Axles>,
}

impl State {
    pub(super) fn new(visual: &Visual) -> Self {
        Self {
            author: Scenario::default(),
            current: Scenario::default(),
            report: None,
            problem: None,
            lang: Lang::English,
            system: System::Si,
            show: Show::ALL,
            view: visual.views[0],
            controls: None,
            width: 720.0,
            opened: Vec::new(),
            svg: String::new(),
            title: String::new(),
            chart: None,
            axles: None,
        }
    }

    /// Draws figure and chart of the last good answer. A view that has no picture for this answer
    /// keeps the last one.
    pub(super) fn redraw(&mut self, visual: &Visual) {
        self.redraw_figure(visual);
        if let Some(Drawing::Chart(chart)) = self.drawn(visual, View::Chart) {
            self.chart = Some(chart);
        }
    }

    /// Draws the figure alone.
    pub(super) fn redraw_figure(&mut self, visual: &Visual) {
        let Some(drawing) = self.drawn(visual, self.view) else {
            return;
        };
        if let (true, Drawing::Scene(scene)) = (visual.places_motors, &drawing) {
            self.axles = Axles::of(scene);
        }
        self.title = drawing.title().to_owned();
        self.svg = drawing.svg(&SvgOptions {
            prefix: "figure",
            theme: Theme::Live,
            ..SvgOptions::default()
        });
    }

    fn drawn(&self, visual: &Visual, view: View) -> Option<Drawing> {
        let report = self.report.as_ref()?;
        // Text of 13 units must not fall below 11 px on screen; a wide element gets the full drawing.
        let look = Look {
            width: within(self.width, NARROW, WIDE),
            lang: self.lang,
            system: self.system,
            pinned: None,
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

    /// Value of an input as it is shown, SI.
    pub(super) fn number(&self, path: &str) -> Option<f64> {
        self.report.as_ref()?.scenario.number(path)
    }
}
