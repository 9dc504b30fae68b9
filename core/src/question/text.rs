//! A question and its verdict in words.

use super::make::Amount;
use super::{Asked, Choice, Course, Kind, PLACES, Right, Said, Verdict};
use crate::input::{self, Kind as InputKind};
use crate::units::System;
use crate::words::{self, Lang};
use crate::{format, scenario::Scenario};

impl Amount {
    /// The amount as people read it.
    #[must_use]
    pub fn text(&self, lang: Lang, system: System) -> String {
        format::quantity(self.value, self.dimension, system, self.digits, lang)
    }

    fn with(&self, value: f64) -> Self {
        Self { value, ..*self }
    }
}

/// A number without the zeros that say nothing: "0.6 g", "1 850 kg".
fn short(value: f64, dimension: crate::units::Dimension, lang: Lang, system: System) -> String {
    let shown = crate::units::from_si(value, dimension, system);
    let text = format::significant(shown, 4, lang);
    let mark = lang.decimal_mark();
    let text = if text.contains(mark) {
        text.trim_end_matches('0').trim_end_matches(mark).into()
    } else {
        text
    };
    format::with_unit(text, dimension.display_unit(system))
}

impl Asked {
    /// Key of the question in the catalogue, with an end.
    pub(super) fn key(&self, end: &str) -> String {
        ["question.", self.topic.name, ".", self.question.id, end].concat()
    }

    /// The question, as a sentence or two.
    #[must_use]
    pub fn statement(&self, lang: Lang, system: System) -> String {
        if let Some(change) = &self.change {
            let text = |scenario: &Scenario| value_text(scenario, change.input, lang, system);
            let input = label(change.input, lang);
            return words::fill(
                lang,
                "question.change",
                &[
                    input,
                    &text(&self.scenario),
                    &text(&self.solved),
                    &self.output_label(lang),
                ],
            );
        }
        if self.spoilt.is_some() {
            return words::fill(lang, "question.spot", &[&self.output_label(lang)]);
        }
        let parts: Vec<String> = self
            .question
            .parts
            .iter()
            .map(|part| match (*part, self.target) {
                ("target", Some(target)) => short(target.value, target.dimension, lang, system),
                ("layout", _) => self.scenario.layout().name().into(),
                ("from", _) => self.place(0, lang, system),
                ("to", _) => self.place(PLACES - 1, lang, system),
                (path, _) => value_text(&self.scenario, path, lang, system),
            })
            .collect();
        let parts: Vec<&str> = parts.iter().map(String::as_str).collect();
        words::fill(lang, &self.key(""), &parts)
    }

    /// What the reader is told: name and value of each input.
    #[must_use]
    pub fn given(&self, lang: Lang, system: System) -> Vec<(&'static str, String)> {
        self.given
            .iter()
            .map(|path| {
                (
                    label(path, lang),
                    value_text(&self.scenario, path, lang, system),
                )
            })
            .collect()
    }

    /// A hint that is not the answer.
    #[must_use]
    pub fn hint(&self, lang: Lang) -> &'static str {
        words::get(lang, &self.key(".hint"))
    }

    /// Name of what is asked for, for the label of a field.
    #[must_use]
    pub fn label(&self, lang: Lang) -> String {
        match self.question.kind {
            Kind::Find { input, .. } => label(input, lang).into(),
            Kind::Choice(Choice::Spot { .. }) => words::get(lang, "question.wrong_line").into(),
            Kind::Choice(Choice::Rank { .. }) => words::get(lang, "question.order").into(),
            _ => self.output_label(lang),
        }
    }

    /// Unit that a bare number is taken in; empty for pure numbers and choices.
    #[must_use]
    pub fn unit(&self, system: System) -> &'static str {
        match &self.right {
            Right::Number(amount) => amount.dimension.display_unit(system),
            Right::Line(course) => course.most.dimension.display_unit(system),
            Right::Choice { .. } => "",
        }
    }

    /// The choices: word and text; empty where a number is asked for.
    #[must_use]
    pub fn choices(&self, lang: Lang) -> Vec<(&'static str, &'static str)> {
        let Right::Choice { choices, .. } = &self.right else {
            return Vec::new();
        };
        choices
            .iter()
            .map(|(word, key)| (*word, words::find(lang, key).unwrap_or(word)))
            .collect()
    }

    /// How near is right, in words; empty for a choice.
    #[must_use]
    pub fn tolerance(&self, lang: Lang) -> String {
        let key = match self.question.kind {
            Kind::Number { .. } => "question.tolerance",
            Kind::Find { .. } => "question.tolerance_find",
            Kind::Sketch(_) => "question.tolerance_line",
            Kind::Choice(_) => return String::new(),
        };
        words::fill(lang, key, &[&percent(self.question.tolerance, lang)])
    }

    /// The right answer in words.
    #[must_use]
    pub fn answer(&self, lang: Lang, system: System) -> String {
        match &self.right {
            Right::Number(amount) => amount.text(lang, system),
            Right::Line(course) => self.line(&course.places().map(|place| place.1), lang, system),
            Right::Choice { right, .. } => {
                let choices = self.choices(lang);
                choices.get(*right).map_or("", |(_, text)| text).into()
            }
        }
    }

    /// The verdict in words: what was said, what is right, how far off, and whether that is near
    /// enough.
    #[must_use]
    pub fn verdict(&self, verdict: &Verdict, lang: Lang, system: System) -> String {
        let right = self.answer(lang, system);
        let mut text = match (&verdict.given, &self.right) {
            (Said::Number(given), Right::Number(amount)) => {
                let said = amount.with(*given).text(lang, system);
                match self.target {
                    Some(target) => self.found(verdict, [&said, &right], &target, lang, system),
                    None => {
                        let off = off(verdict, amount, lang, system);
                        words::fill(lang, "question.verdict", &[&said, &right, &off])
                    }
                }
            }
            (Said::Line(given), Right::Line(course)) => {
                let at = verdict.furthest.unwrap_or(0);
                let text = |value| self.value(value, lang, system);
                let (said, true_value) = (text(given[at]), text(course.places()[at].1));
                words::fill(
                    lang,
                    "question.verdict_line",
                    &[
                        &text(verdict.difference.unwrap_or(0.0)),
                        &self.place(at, lang, system),
                        &said,
                        &true_value,
                    ],
                )
            }
            (Said::Choice(given), _) => {
                let choices = self.choices(lang);
                let said = choices.iter().find(|(word, _)| word == given);
                // A choice may be a sentence; the verdict has its own stop.
                let said = said.map_or(*given, |(_, text)| text).trim_end_matches('.');
                let right = right.trim_end_matches('.');
                if verdict.within {
                    words::fill(lang, "question.verdict_right", &[said])
                } else {
                    words::fill(lang, "question.verdict_wrong", &[said, right])
                }
            }
            _ => String::new(),
        };
        if let Some(change) = &self.change {
            text.push(' ');
            let (before, after) = (
                change.before.text(lang, system),
                change.after.text(lang, system),
            );
            text.push_str(&words::fill(lang, "question.changed", &[&before, &after]));
        }
        if let Some(told) = self.told_slip(lang) {
            text.push(' ');
            text.push_str(&told);
        }
        if verdict.difference.is_some() {
            text.push(' ');
            let key = if verdict.within {
                "question.inside"
            } else {
                "question.outside"
            };
            text.push_str(&words::fill(
                lang,
                key,
                &[&percent(self.question.tolerance, lang)],
            ));
        }
        text
    }

    /// What the line with the error should be, and why; none where no error was to be found.
    #[must_use]
    pub fn told_slip(&self, lang: Lang) -> Option<String> {
        let spoilt = self.spoilt.as_ref()?;
        let why = words::get(lang, &["question.why.", spoilt.slip.why].concat());
        let parts = [self.wrong_line(), &spoilt.right.text(lang), why];
        Some(words::fill(lang, "question.spotted", &parts))
    }

    /// What the chart of the question shows, in words: a title, and some points of its line.
    #[must_use]
    pub fn chart_text(&self, lang: Lang, system: System) -> (String, String) {
        let Some(traced) = &self.traced else {
            return (String::new(), String::new());
        };
        let title = [&*self.output_label(lang), label(traced.input, lang)];
        let mut points = String::new();
        for (along, amount) in traced.some() {
            let joint = if points.is_empty() { "" } else { "; " };
            let along = short(*along, traced.along, lang, system);
            points = [&points, joint, &along, ": ", &amount.text(lang, system)].concat();
        }
        (
            words::fill(lang, "question.chart", &title),
            words::fill(lang, "question.chart_points", &[&points]),
        )
    }

    /// What came of a value that was to bring about a target.
    fn found(
        &self,
        verdict: &Verdict,
        [said, right]: [&str; 2],
        target: &Amount,
        lang: Lang,
        system: System,
    ) -> String {
        let wanted = short(target.value, target.dimension, lang, system);
        match verdict.reached {
            Some(reached) => words::fill(
                lang,
                "question.verdict_find",
                &[
                    said,
                    &self.output_label(lang),
                    &target.with(reached).text(lang, system),
                    &wanted,
                    &off(verdict, target, lang, system),
                    right,
                ],
            ),
            None => words::fill(lang, "question.verdict_nothing", &[said, right]),
        }
    }

    /// A line in words: begin, middle and end.
    #[must_use]
    pub fn line(&self, values: &[f64; PLACES], lang: Lang, system: System) -> String {
        let told = |at| self.height(at, values[at], lang, system);
        [0, PLACES / 2, PLACES - 1].map(told).join(", ")
    }

    /// Where a place of a line is, as people read it; nothing where there is no line.
    #[must_use]
    pub fn place(&self, at: usize, lang: Lang, system: System) -> String {
        let place = |course: &Course| {
            let (x, _) = course.places()[at.min(PLACES - 1)];
            short(x, course.along, lang, system)
        };
        self.course().map_or_else(String::new, place)
    }

    /// A height of a line, SI, as people read it; nothing where there is no line.
    #[must_use]
    pub fn value(&self, value: f64, lang: Lang, system: System) -> String {
        let text = |course: &Course| course.most.with(value).text(lang, system);
        self.course().map_or_else(String::new, text)
    }

    /// What a line says at a place: "13 300 N at 0.8 g".
    #[must_use]
    pub fn height(&self, at: usize, value: f64, lang: Lang, system: System) -> String {
        let (height, place) = (
            self.value(value, lang, system),
            self.place(at, lang, system),
        );
        words::fill(lang, "question.height", &[&height, &place])
    }

    /// Name of the output that the question turns on, with its layout.
    #[must_use]
    pub fn output_label(&self, lang: Lang) -> String {
        let path = self.shown.first().map_or("", |path| path);
        let last = path.rsplit('.').next().unwrap_or(path);
        let key = ["output.", self.topic.name, ".", last].concat();
        let layout = path.split('.').nth(1).unwrap_or("");
        let joint = if layout.is_empty() { "" } else { ": " };
        [layout, joint, words::get(lang, &key)].concat()
    }
}

/// How far off, in words: "11 % too much", or the difference itself where the right value is near
/// zero.
fn off(verdict: &Verdict, amount: &Amount, lang: Lang, system: System) -> String {
    let difference = verdict.difference.unwrap_or(0.0);
    let (size, share) = match verdict.relative {
        Some(share) if share.abs() < 0.005 => {
            return words::fill(lang, "question.close", &[]);
        }
        Some(share) if share.abs() > 10.0 => (String::new(), share),
        Some(share) => (percent(share.abs(), lang), share),
        None => (amount.with(difference.abs()).text(lang, system), difference),
    };
    let key = match (size.is_empty(), share > 0.0) {
        (true, _) => "question.far",
        (_, true) => "question.too_much",
        (_, false) => "question.too_little",
    };
    words::fill(lang, key, &[&size])
}

/// A share as whole per cent.
fn percent(share: f64, lang: Lang) -> String {
    format::with_unit(format::fixed(100.0 * share, 0, lang), "%")
}

fn label(path: &str, lang: Lang) -> &'static str {
    words::get(lang, &["input.", path].concat())
}

/// The value of an input as the reader is told it.
fn value_text(scenario: &Scenario, path: &str, lang: Lang, system: System) -> String {
    if let Some(InputKind::Quantity { dimension, .. }) = input::find(path).map(|i| &i.kind) {
        return match scenario.number(path) {
            Some(value) => short(value, *dimension, lang, system),
            None => String::new(),
        };
    }
    let word = scenario.word(path).unwrap_or("");
    let section = path.split('.').next().unwrap_or("");
    words::find(lang, &[section, ".", word].concat())
        .unwrap_or(word)
        .into()
}
